package harness

import (
	"strconv"

	"legwork/harness/check"
	"legwork/harness/diag"
	"legwork/harness/part"
	"legwork/harness/solve"
)

// Report is the machine-readable outcome of a check. Its field names are part
// of the promised interface; docs/check.schema.json describes it.
type Report struct {
	Version  int            `json:"version"`
	Harness  string         `json:"harness"`
	Profile  string         `json:"profile"`
	With     []string       `json:"with"` // options of the draft that are fitted
	Start    StartLine      `json:"cold_start"`
	Findings []diag.Finding `json:"findings"`
	Accepted []AcceptedLine `json:"accepted"`
	Guesses  []GuessLine    `json:"guesses"`
	Leeways  []LeewayLine   `json:"leeways,omitempty"` // filled where it is asked for
	Skipped  []SkipLine     `json:"skipped_rules"`
	Wires    []WireLine     `json:"wires"`
	Steps    []StepLine     `json:"steps"`
}

// StartLine is how the cold start was played.
type StartLine struct {
	TempC   float64  `json:"temp_c"`
	Battery *float64 `json:"battery_percent,omitempty"` // nil: a charged one
}

// AcceptedLine is a finding that the draft accepts.
type AcceptedLine struct {
	Finding diag.Finding `json:"finding"`
	Reason  string       `json:"reason"`
}

// GuessLine is a figure that was assumed.
type GuessLine struct {
	What   string `json:"what"`
	Value  string `json:"value"`
	Source string `json:"source,omitempty"`
	Line   int    `json:"line,omitempty"`
}

// SkipLine is a rule that could not run.
type SkipLine struct {
	Rule   string `json:"rule"`
	Reason string `json:"reason"`
}

// WireLine is one wire as sized.
type WireLine struct {
	Number      string  `json:"number"`
	From        string  `json:"from"`
	To          string  `json:"to"`
	Size        string  `json:"size"`
	AreaMM2     float64 `json:"area_mm2"`
	LengthM     float64 `json:"length_m"`
	MaxCurrentA float64 `json:"max_current_a"`
	DropV       float64 `json:"drop_v"`
}

// StepLine is one step with the volts of every terminal; null where a
// terminal floats, with the reason in Floating.
type StepLine struct {
	Name      string              `json:"name"`
	Skipped   string              `json:"skipped,omitempty"`
	Terminals map[string]*float64 `json:"terminals"`
	Floating  map[string]string   `json:"floating"`
}

func startLine(s part.Start) StartLine {
	line := StartLine{TempC: s.Temp()}
	if s.Drained {
		line.Battery = &s.Percent
	}
	return line
}

// Report gives the outcome in machine-readable form. Numbers are rounded to
// a nanovolt, a microampere or six digits, so that they do not depend on the processor.
func (r *Result) Report() Report {
	out := Report{
		Version: 1, Harness: r.Model.Title, Profile: r.Profile.Name, With: r.With(), Start: startLine(r.Start),
		Findings: append([]diag.Finding{}, r.Findings...),
		Accepted: []AcceptedLine{}, Guesses: []GuessLine{}, Skipped: []SkipLine{},
		Wires: []WireLine{}, Steps: []StepLine{},
	}
	for _, a := range r.Accepted {
		out.Accepted = append(out.Accepted, AcceptedLine{a.Finding, a.Reason})
	}
	for _, g := range r.Model.Guesses {
		out.Guesses = append(out.Guesses, GuessLine{g.What, g.Value, g.Source, g.At.Line})
	}
	out.Skipped = skipLines(r.Skipped)
	if r.Sizes == nil {
		return out
	}
	for _, w := range r.Sizes.Wires {
		out.Wires = append(out.Wires, WireLine{
			Number: w.Wire.Number, From: w.Wire.From.Shown, To: w.Wire.To.Shown,
			Size: w.Conductor.Size.Name, AreaMM2: round(w.Conductor.Size.AreaMM2, 4), LengthM: round(w.Conductor.LengthM, 4),
			MaxCurrentA: round(w.DesignA, 6), DropV: round(w.DropV, 6),
		})
	}
	for _, s := range r.Sizes.Usual.States {
		out.Steps = append(out.Steps, r.stepLine(s))
	}
	return out
}

func skipLines(list []check.Skip) []SkipLine {
	lines := []SkipLine{}
	for _, s := range list {
		lines = append(lines, SkipLine{s.Rule, s.Reason})
	}
	return lines
}

func (r *Result) stepLine(s *solve.State) StepLine {
	line := StepLine{Name: s.Step.Name, Skipped: s.Skipped, Terminals: map[string]*float64{}, Floating: map[string]string{}}
	if s.Skipped != "" {
		return line
	}
	for _, t := range r.Model.Terminals {
		reading := s.Shown(t)
		if !reading.OK {
			line.Terminals[t.Shown] = nil
			line.Floating[t.Shown] = reading.Reason
			continue
		}
		v := round(reading.Volts, 9)
		line.Terminals[t.Shown] = &v
	}
	return line
}

// round keeps a number of digits after the point, as they will be printed, and
// never gives -0.
func round(v float64, digits int) float64 {
	r, err := strconv.ParseFloat(strconv.FormatFloat(v, 'f', digits, 64), 64)
	if err != nil || r == 0 {
		return 0
	}
	return r
}
