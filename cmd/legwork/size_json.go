package main

import (
	"encoding/json"
	"io"

	"legwork/gauge"
)

type jsonSize struct {
	OK          bool           `json:"ok"`
	Size        *string        `json:"size"` // null where no size serves
	Insulation  string         `json:"insulation"`
	AreaMM2     float64        `json:"area_mm2"`
	DropV       float64        `json:"drop_v"`
	DropPercent float64        `json:"drop_percent"`
	WarmDropV   float64        `json:"warm_drop_v"`
	AmpacityA   float64        `json:"ampacity_a"`
	ConductorC  float64        `json:"conductor_c"`
	FuseMinA    float64        `json:"fuse_min_a"`
	FuseMaxA    float64        `json:"fuse_max_a"`
	FuseA       *float64       `json:"fuse_a"` // null where none is made
	FuseStyle   string         `json:"fuse_style"`
	GovernedBy  string         `json:"governed_by"`
	Fault       string         `json:"fault"`
	Asked       jsonAsked      `json:"asked"`
	Start       *jsonStart     `json:"start"` // null where no first current was said
	Neighbors   []jsonNeighbor `json:"neighbors"`
	Notes       []string       `json:"notes"`
	Assumed     []string       `json:"assumed"`
	Working     []jsonStep     `json:"working"`
}

type jsonAsked struct {
	Amps        float64 `json:"amps_a"`
	OneWayM     float64 `json:"one_way_m"`
	ConductorM  float64 `json:"conductor_m"`
	Return      string  `json:"return"`
	SystemV     float64 `json:"system_v"`
	DropPercent float64 `json:"drop_percent"`
	DropBy      string  `json:"drop_by"`
	AmbientC    float64 `json:"ambient_c"`
	Bundle      int     `json:"bundle"`
	Profile     string  `json:"profile"`
	Area        string  `json:"area"`
}

type jsonStart struct {
	Amps   float64  `json:"start_a"`
	DropV  float64  `json:"drop_v"`
	HoldS  *float64 `json:"fuse_holds_s"`
	OpenS  *float64 `json:"fuse_opens_s"`
	WantsA *float64 `json:"fuse_wanted_a"`
	Sure   bool     `json:"sure"`
}

type jsonNeighbor struct {
	Size        string  `json:"size"`
	AreaMM2     float64 `json:"area_mm2"`
	DropV       float64 `json:"drop_v"`
	DropPercent float64 `json:"drop_percent"`
	AmpacityA   float64 `json:"ampacity_a"`
	ConductorC  float64 `json:"conductor_c"`
	OK          bool    `json:"ok"`
	Why         string  `json:"why"`
}

type jsonStep struct {
	About      string  `json:"about"`
	Text       string  `json:"text"`
	Equation   string  `json:"equation,omitempty"`
	Value      float64 `json:"value"`
	Unit       string  `json:"unit"`
	Source     string  `json:"source"`
	Document   string  `json:"document"`
	Confidence string  `json:"confidence"`
}

// writeJSON writes the sheet as one object.
func (s sizeSheet) writeJSON(w io.Writer) error {
	c := s.Chosen
	out := jsonSize{
		OK: s.OK, Insulation: c.Family.Name, AreaMM2: c.Size.AreaMM2, DropV: c.DropV, DropPercent: 100 * s.DropShare, WarmDropV: c.WarmDropV,
		AmpacityA: c.AmpacityA, ConductorC: c.ConductorC, FuseMinA: s.FuseMinA, FuseMaxA: s.FuseMaxA, FuseA: some(s.FuseA), FuseStyle: s.FuseStyle,
		GovernedBy: s.Governs, Fault: s.Fault, Asked: s.jsonAsked(), Neighbors: []jsonNeighbor{}, Notes: append([]string{}, s.Notes...),
		Assumed: append([]string{}, s.asked.assumed...), Working: s.jsonWorking(),
	}
	if c.OK {
		out.Size = &c.Size.Name
	}
	if st := s.Start; s.Ask.StartA > 0 {
		out.Start = &jsonStart{s.Ask.StartA, st.DropV, some(st.HoldS), some(st.OpenS), some(st.WantsA), st.Sure}
	}
	for _, n := range s.beside() {
		out.Neighbors = append(out.Neighbors, jsonNeighbor{
			n.Size.Name, n.Size.AreaMM2, n.DropV, 100 * n.DropV / s.Ask.SystemV, n.AmpacityA, n.ConductorC, n.OK, n.why,
		})
	}
	enc := json.NewEncoder(w)
	enc.SetIndent("", "  ")
	enc.SetEscapeHTML(false)
	return enc.Encode(out)
}

func (s sizeSheet) jsonAsked() jsonAsked {
	q := &s.Ask
	return jsonAsked{
		q.LoadA, float64(q.OneWay), float64(s.Conductor), q.Return.String(), q.SystemV, 100 * q.DropShare, q.DropBy.String(),
		q.AmbientC, q.Loaded, q.Profile.Name, q.Area.String(),
	}
}

func (s sizeSheet) jsonWorking() []jsonStep {
	out := []jsonStep{}
	for _, g := range s.Working() {
		for _, st := range g.Steps {
			src, _ := gauge.SourceOf(st.Source)
			out = append(out, jsonStep{g.Title, st.Text, st.Equation, st.Value, st.Unit, st.Source, src.Title, src.Confidence.String()})
		}
	}
	return out
}

// some is nil for a figure that there is none of.
func some(v float64) *float64 {
	if v == 0 {
		return nil
	}
	return &v
}
