package main

import (
	"cmp"
	"fmt"
	"strings"

	"legwork/gauge"
	"legwork/harness"
	"legwork/harness/quantity"
	"legwork/harness/shop"
)

// sizeSheet is an answer as it is printed.
type sizeSheet struct {
	gauge.Answer
	asked sizeAsk
}

const notInSize = "contacts, joints, the fuse's and the battery's own drop, fit in terminal and seal, and the heat of a short: draw the circuit and let check look at the whole"

func (p *printer) sizeSheet(s sizeSheet) {
	p.wrapped("", "  ", s.headline())
	p.line("")
	for _, r := range s.summary() {
		p.wrapped(fmt.Sprintf("  %-9s ", r[0]), strings.Repeat(" ", 12), r[1])
	}
	p.line("")
	p.table("  ", s.neighbors())
	for _, n := range s.Notes {
		p.line("")
		p.wrapped("  note: ", "    ", n)
	}
	p.line("")
	w := harness.Working{Title: "Working"}
	for _, g := range s.Working() {
		w.Groups = append(w.Groups, harness.Group{Title: g.Title, Steps: g.Steps})
	}
	p.working(w)
	p.line("")
	for _, a := range s.asked.assumed {
		p.wrapped("Taken as not said: ", "  ", a)
	}
	p.wrapped("Not looked at: ", "  ", notInSize)
}

func (s sizeSheet) headline() string {
	c := s.Chosen
	switch {
	case s.Fault != "" && c.OK:
		return fmt.Sprintf("%s, but %s", c.Size.Name, s.Fault)
	case s.Fault != "":
		return "No wire: " + s.Fault
	}
	return fmt.Sprintf("%s, insulation %s, behind a %.4g A %s fuse (%s governs)", c.Size.Name, s.insulation(), s.FuseA, cmp.Or(s.FuseStyle, "given"), s.Governs)
}

func (s sizeSheet) insulation() string {
	f := s.Chosen.Family
	if f.Source == "asked" {
		return f.Name
	}
	return fmt.Sprintf("%s (%g C)", f.Name, f.TempC)
}

// summary is the answer in lines of a name and a text.
func (s sizeSheet) summary() [][2]string {
	q, c := &s.Ask, s.Chosen
	length := func(m float64) string { return quantity.LengthText(m, s.asked.metric) }
	out := [][2]string{
		{"Asked", fmt.Sprintf("%.4g A over %s one way, back by %s: %s of conductor; %.4g V", q.LoadA, length(float64(q.OneWay)), q.Return, length(float64(s.Conductor)), q.SystemV)},
		{"Limits", fmt.Sprintf("profile %s, drop at most %.3g %% (%.3g V) by %s, place of %.4g C, loaded conductors: %d", q.Profile.Name, 100*q.DropShare, s.MostV(), q.DropBy, q.AmbientC, q.Loaded)},
		{"Copper", fmt.Sprintf("%.4g mm2, %s", c.Size.AreaMM2, q.Area.Title())},
		{"Drop", fmt.Sprintf("%.3g V, %.2f %%: %.4g V are left for the load", c.DropV, 100*s.DropShare, q.SystemV-c.DropV)},
		{"Carries", fmt.Sprintf("%.4g A in its place and bundle; at %.4g A the copper is at %.0f C", c.AmpacityA, q.LoadA, c.ConductorC)},
		{"Fuse", s.fuseText()},
	}
	if q.StartA > 0 {
		out = append(out, [2]string{"Start", s.startText()})
	}
	return out
}

func (s sizeSheet) fuseText() string {
	window := fmt.Sprintf("the load asks for %.4g A at least, the wire allows %.4g A at most", s.FuseMinA, s.FuseMaxA)
	switch {
	case s.FuseA == 0:
		return "none is made; " + window
	case s.Ask.FuseA > 0:
		return fmt.Sprintf("%.4g A as given; %s", s.FuseA, window)
	}
	return fmt.Sprintf("%.4g A %s; %s", s.FuseA, s.FuseStyle, window)
}

func (s sizeSheet) startText() string {
	st := s.Start
	text := fmt.Sprintf("%.4g A leaves %.3g V for the load", s.Ask.StartA, max(st.LeftV, 0))
	if st.HoldS > 0 {
		text += fmt.Sprintf("; the fuse holds it %s at least", quantity.Text(st.HoldS, quantity.Time))
		if !st.Sure {
			text += " (from memory)"
		}
	}
	if st.OpenS > 0 {
		text += fmt.Sprintf("; it opens within %s", quantity.Text(st.OpenS, quantity.Time))
	}
	return text
}

// neighbors is the table of the chosen size and those beside it.
func (s sizeSheet) neighbors() shop.Table {
	t := shop.Table{Columns: []shop.Column{
		{Key: "size", Name: "Size"},
		{Key: "area_mm2", Name: "Copper", Unit: "mm2", Kind: shop.Number},
		{Key: "drop_v", Name: "Drop", Unit: "V", Kind: shop.Number},
		{Key: "drop_percent", Name: "Drop", Unit: "%", Kind: shop.Number},
		{Key: "ampacity_a", Name: "Carries", Unit: "A", Kind: shop.Number},
		{Key: "why", Name: "Why"},
	}}
	for _, n := range s.beside() {
		c := n.Candidate
		t.Rows = append(t.Rows, []shop.Cell{
			shop.Word(c.Size.Name), shop.Figure(c.Size.AreaMM2, 3), shop.Figure(c.DropV, 3), shop.Figure(100*c.DropV/s.Ask.SystemV, 2),
			shop.Figure(c.AmpacityA, 1), shop.Word(n.why),
		})
	}
	return t
}

// neighbor is a size of the table with why it was taken or not.
type neighbor struct {
	gauge.Candidate
	why string
}

func (s sizeSheet) beside() (out []neighbor) {
	if s.HasDown {
		out = append(out, neighbor{s.Down, strings.Join(s.WhyNot(s.Down), "; ")})
	}
	why := "chosen"
	if !s.Chosen.OK {
		why = strings.Join(s.WhyNot(s.Chosen), "; ")
	}
	out = append(out, neighbor{s.Chosen, why})
	if s.HasUp {
		more := 100 * (s.Up.Size.AreaMM2/s.Chosen.Size.AreaMM2 - 1)
		out = append(out, neighbor{s.Up, fmt.Sprintf("serves too, with %.0f %% more copper than is needed", more)})
	}
	return out
}
