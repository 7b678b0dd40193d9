package diag

import (
	"encoding/json"
	"math"
)

type jsonFinding struct {
	Rule     string        `json:"rule"`
	Severity string        `json:"severity"`
	File     string        `json:"file"`
	Line     int           `json:"line"`
	Column   int           `json:"column"`
	Message  string        `json:"message"`
	Detail   string        `json:"detail"`
	Values   []jsonValue   `json:"values"`
	Related  []jsonRelated `json:"related"`
	Fix      *jsonFix      `json:"fix"`
}

type jsonValue struct {
	Name  string   `json:"name"`
	Got   *float64 `json:"got"`
	Limit *float64 `json:"limit"`
	Unit  string   `json:"unit"`
	Bound string   `json:"bound"`
}

type jsonRelated struct {
	File    string `json:"file"`
	Line    int    `json:"line"`
	Column  int    `json:"column"`
	Message string `json:"message"`
}

type jsonFix struct {
	Message string     `json:"message"`
	Edits   []jsonEdit `json:"edits"`
}

type jsonEdit struct {
	File   string `json:"file"`
	Line   int    `json:"line"`
	Column int    `json:"column"`
	Start  int    `json:"start"`
	End    int    `json:"end"`
	Text   string `json:"text"`
}

// MarshalJSON writes every key always: lists are never null, fix is null when
// there is none, line and column are 0 for "no place". A value that is not
// finite, and the limit of a value without one, are null. The start and end
// of an edit are byte offsets.
func (f Finding) MarshalJSON() ([]byte, error) {
	out := jsonFinding{
		Rule: f.Rule, Severity: f.Severity.String(),
		File: f.At.File, Line: f.At.Line, Column: f.At.Col,
		Message: f.Msg, Detail: f.Detail,
		Values: []jsonValue{}, Related: []jsonRelated{},
	}
	for _, v := range f.Values {
		value := jsonValue{Name: v.Name, Got: finite(v.Got), Unit: v.Unit, Bound: string(v.Bound)}
		if v.Bound != NoBound {
			value.Limit = finite(v.Limit)
		}
		out.Values = append(out.Values, value)
	}
	for _, r := range f.Related {
		out.Related = append(out.Related, jsonRelated{r.At.File, r.At.Line, r.At.Col, r.Msg})
	}
	if f.Fix != nil {
		out.Fix = &jsonFix{Message: f.Fix.Msg, Edits: []jsonEdit{}}
		for _, e := range f.Fix.Edits {
			out.Fix.Edits = append(out.Fix.Edits,
				jsonEdit{e.At.File, e.At.Line, e.At.Col, e.At.Off, e.At.EndOff, e.Text})
		}
	}
	return json.Marshal(out)
}

// MarshalJSON writes an array, also for an empty list.
func (l List) MarshalJSON() ([]byte, error) {
	if l == nil {
		l = List{}
	}
	return json.Marshal([]Finding(l))
}

// finite gives a figure as it is written: null where there is no number, and
// 0 for what is only rounding.
func finite(v float64) *float64 {
	if math.IsNaN(v) || math.IsInf(v, 0) {
		return nil
	}
	if math.Abs(v) < least {
		v = 0
	}
	return &v
}
