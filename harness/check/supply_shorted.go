package check

import (
	"fmt"
	"slices"
	"strings"

	"legwork/harness/diag"
	"legwork/harness/model"
	"legwork/harness/quantity"
	"legwork/harness/size"
)

var _ = define(Rule{
	ID:       "supply-shorted",
	Severity: diag.Fault,
	Title:    "A way from the battery to ground is closed with no load on it: a short.",
	Why: "A diode across a coil takes its kick only if its bar points to the fed side; the other way round it conducts, " +
		"and whatever switches the coil burns, or the fuse opens. A contact that joins feed and ground does the same. " +
		"A larger fuse or a thicker wire is never the cure: find the short. " +
		"All else is worked out without such a diode, and without the steps in which another short is closed. " +
		"Where no fuse lies on the way it is a danger.",
	Equation: "between a source and its return, through closed contacts and diodes that conduct, there is a load",
	Figures:  []string{"suppress-polarity"},
	Misses:   "A diode that the wrong way round conducts through a load: it draws no more than that. A battery whose posts a wire joins.",
	Needs:    Played,
	Bad: `battery G1  grounds-to frame
fuse    F1  15A  from G1 6in
switch  S1  closed when running
relay   K1  suppress diode
stud    E1  on frame  M6
wire 1  G1.+   F1.1   6in
wire 2  F1.2   S1.1   1ft
wire 3  S1.2   K1.85  1ft
wire 4  K1.86  E1     1ft
`,
	Good: `battery G1  grounds-to frame
fuse    F1  15A  from G1 6in
switch  S1  closed when running
relay   K1  suppress diode
stud    E1  on frame  M6
wire 1  G1.+   F1.1   6in
wire 2  F1.2   S1.1   1ft
wire 3  S1.2   K1.86  1ft
wire 4  K1.85  E1     1ft
`,
	Run: func(p *Pass) {
		for _, s := range p.Sizes.Shorts {
			if s.Diode != nil {
				p.reportDiode(s)
			} else {
				p.reportShort(s)
			}
		}
	},
})

// reportDiode tells of a diode that lies across the supply the wrong way.
func (p *Pass) reportDiode(s size.Short) {
	d := s.Diode
	what := d.Name
	if len(d.Passes()) == 0 {
		what += "'s diode" // it only lies beside something
	}
	p.Report(diag.Finding{
		At: d.At,
		Msg: fmt.Sprintf("%s conducts %s in %s and shorts the supply: %s must be the positive side", what,
			quantity.Text(s.Amps, quantity.Current), s.Step.Name, sideName(s.Cathode)),
		Detail:  exchange(s.Anode, s.Cathode) + "Never fit a larger fuse or a thicker wire for this current. All else is worked out without that diode.",
		Values:  []diag.Value{{Name: "current", Got: s.Amps, Unit: "A"}},
		Related: slices.Concat(feedingWires(d, s.Anode.Name), feedingWires(d, s.Cathode.Name)),
	})
}

// sideName names a terminal within its device.
func sideName(t *model.Terminal) string {
	if t.Metal != nil {
		return t.Metal.Name
	}
	return t.Name
}

// exchange says which wires to move where.
func exchange(a, b *model.Terminal) string {
	if len(a.Ends) == 0 || len(b.Ends) == 0 {
		return fmt.Sprintf("Exchange what lies at %s and at %s. ", a.Shown, b.Shown)
	}
	return fmt.Sprintf("Exchange its wires: %s to %s, %s to %s. ", wiresAt(a), b.Shown, wiresAt(b), a.Shown)
}

// wiresAt lists the numbers of the wires at a terminal.
func wiresAt(t *model.Terminal) string {
	var list []string
	for _, e := range t.Ends {
		list = append(list, e.Wire.Number)
	}
	return strings.Join(list, ", ")
}

// reportShort tells of a short through fuses, contacts and outputs alone.
func (p *Pass) reportShort(s size.Short) {
	f := diag.Finding{
		At:     p.Model.Devices[0].At,
		Msg:    fmt.Sprintf("the battery is shorted in %s: %s flow to ground with no load on the way", s.Step.Name, quantity.Text(s.Amps, quantity.Current)),
		Detail: "Find the short; never fit a larger fuse or a thicker wire for this current. What flows in that step is judged no further.",
		Values: []diag.Value{{Name: "current", Got: s.Amps, Unit: "A"}},
	}
	fused := false
	var names []string
	for _, d := range s.Through {
		fused = fused || len(d.Protects()) > 0
		f.At = d.At
		names = append(names, d.Name)
		f.Related = append(f.Related, diag.Related{At: d.At, Msg: d.Name + " is on the way"})
	}
	if len(names) > 0 && len(names) <= 4 {
		f.Msg = fmt.Sprintf("%s lead to ground in %s with no load on the way: %s", strings.Join(names, ", "), s.Step.Name,
			quantity.Text(s.Amps, quantity.Current))
		if len(names) == 1 {
			f.Msg = strings.Replace(f.Msg, " lead ", " leads ", 1)
		}
	}
	if !fused {
		f.Severity = diag.Danger
	}
	p.Report(f)
}
