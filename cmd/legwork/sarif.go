package main

import (
	"net/url"
	"path/filepath"
	"slices"

	"legwork/harness"
	"legwork/harness/check"
	"legwork/harness/diag"
)

// What follows is the part of the Static Analysis Results Interchange Format,
// version 2.1.0, an OASIS standard, that findings need.

type sarifLog struct {
	Schema  string     `json:"$schema"`
	Version string     `json:"version"`
	Runs    []sarifRun `json:"runs"`
}

type sarifRun struct {
	Tool       sarifTool     `json:"tool"`
	ColumnKind string        `json:"columnKind"`
	Results    []sarifResult `json:"results"`
}

type sarifTool struct {
	Driver sarifDriver `json:"driver"`
}

type sarifDriver struct {
	Name  string      `json:"name"`
	Rules []sarifRule `json:"rules"`
}

type sarifRule struct {
	ID     string       `json:"id"`
	Short  sarifText    `json:"shortDescription"`
	Full   sarifText    `json:"fullDescription"`
	Help   sarifText    `json:"help"`
	Config sarifDefault `json:"defaultConfiguration"`
}

type sarifDefault struct {
	Level string `json:"level"`
}

type sarifText struct {
	Text string `json:"text"`
}

type sarifResult struct {
	RuleID     string             `json:"ruleId"`
	RuleIndex  *int               `json:"ruleIndex,omitempty"`
	Level      string             `json:"level"`
	Message    sarifText          `json:"message"`
	Locations  []sarifLocation    `json:"locations,omitempty"`
	Related    []sarifLocation    `json:"relatedLocations,omitempty"`
	Suppressed []sarifSuppression `json:"suppressions,omitempty"`
	Properties map[string]string  `json:"properties"`
}

type sarifSuppression struct {
	Kind   string `json:"kind"`
	Reason string `json:"justification"`
}

type sarifLocation struct {
	Physical sarifPhysical `json:"physicalLocation"`
	Message  *sarifText    `json:"message,omitempty"`
}

type sarifPhysical struct {
	Artifact sarifArtifact `json:"artifactLocation"`
	Region   *sarifRegion  `json:"region,omitempty"`
}

type sarifArtifact struct {
	URI string `json:"uri"`
}

type sarifRegion struct {
	Line int `json:"startLine"`
	Col  int `json:"startColumn"`
	End  int `json:"endColumn,omitempty"`
}

// sarifOf writes the findings of a check as one run. What the draft accepts
// is in it too, marked as suppressed there with the reason.
func sarifOf(r *harness.Result) sarifLog {
	run := sarifRun{ColumnKind: "unicodeCodePoints", Results: []sarifResult{}}
	run.Tool.Driver = sarifDriver{Name: "legwork", Rules: []sarifRule{}}
	for _, rule := range check.Rules() {
		run.Tool.Driver.Rules = append(run.Tool.Driver.Rules, sarifRule{
			rule.ID, sarifText{rule.Title}, sarifText{rule.Why}, sarifText{rule.Page("")}, sarifDefault{sarifLevel(rule.Severity)},
		})
	}
	for _, f := range r.Findings {
		run.Results = append(run.Results, sarifFinding(f))
	}
	for _, a := range r.Accepted {
		one := sarifFinding(a.Finding)
		one.Suppressed = []sarifSuppression{{"inSource", a.Reason}}
		run.Results = append(run.Results, one)
	}
	const schema = "https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/os/schemas/sarif-schema-2.1.0.json"
	return sarifLog{Schema: schema, Version: "2.1.0", Runs: []sarifRun{run}}
}

func sarifFinding(f diag.Finding) sarifResult {
	out := sarifResult{
		RuleID: f.Rule, Level: sarifLevel(f.Severity), Message: sarifText{f.Msg},
		Properties: map[string]string{"severity": f.Severity.String()}, // danger and fault are both errors there
	}
	if f.Detail != "" {
		out.Message.Text += ". " + f.Detail
	}
	if i := slices.IndexFunc(check.Rules(), func(r *check.Rule) bool { return r.ID == f.Rule }); i >= 0 {
		out.RuleIndex = &i
	}
	if f.At.File != "" {
		out.Locations = []sarifLocation{sarifPlace(f.At, "")}
	}
	for _, x := range f.Related {
		if x.At.File != "" {
			out.Related = append(out.Related, sarifPlace(x.At, x.Msg))
		}
	}
	return out
}

func sarifPlace(at diag.Span, msg string) sarifLocation {
	uri := url.URL{Path: filepath.ToSlash(at.File)}
	out := sarifLocation{Physical: sarifPhysical{Artifact: sarifArtifact{uri.String()}}}
	if !at.IsZero() {
		out.Physical.Region = &sarifRegion{Line: at.Line, Col: at.Col, End: at.End}
	}
	if msg != "" {
		out.Message = &sarifText{msg}
	}
	return out
}

func sarifLevel(s diag.Severity) string {
	switch s {
	case diag.Note:
		return "note"
	case diag.Warning:
		return "warning"
	}
	return "error"
}
