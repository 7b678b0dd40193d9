package check

import (
	"fmt"
	"slices"

	"legwork/harness/diag"
	"legwork/harness/model"
	"legwork/harness/part"
)

var _ = define(Rule{
	ID:       "unsealed-in-wet",
	Severity: diag.Warning,
	Title:    "A plug without seals is in a wet place.",
	Why: "Water creeps into an open plug and between its blades; copper turns green under the crimp, the joint grows hot, and a live cavity feeds its neighbor through the water. " +
		"Under the hood, behind wheels and in the open every plug is a sealed one, as common practice has it, or stands in a dry box. " +
		"Move it to a dry place, fit a sealed one, or accept it with what keeps the water away.",
	Equation: "a plug with wires in a place that the draft calls wet has the word sealed",
	Misses:   "Places that are wet and not called so. Cavities that stay empty and want a plug of their own. Plugs that belong to a device, which its maker answers for.",
	Needs:    Model,
	Bad: `place     bay  60C  wet
battery   G1  at bay  grounds-to frame
fuse      F1  10A  at bay  from G1 6in
lamp      P1  21W  at bay  grounds-to frame
connector X1  1way  at bay
  half cab
  half rear
wire 1  G1.+       F1.1      6in
wire 2  F1.2       X1.cab.1  2ft
wire 3  X1.rear.1  P1.1      2ft
`,
	Good: `place     bay  60C  wet
battery   G1  at bay  grounds-to frame
fuse      F1  10A  at bay  from G1 6in
lamp      P1  21W  at bay  grounds-to frame
connector X1  1way  sealed  at bay
  half cab
  half rear
wire 1  G1.+       F1.1      6in
wire 2  F1.2       X1.cab.1  2ft
wire 3  X1.rear.1  P1.1      2ft
`,
	Run: func(p *Pass) {
		for _, d := range p.Model.Devices {
			if !d.Wet || d.Existing || d.Said("sealed") || !maySeal(d) || !anyWire(d) || len(d.Couples()) == 0 {
				continue
			}
			p.Report(diag.Finding{
				At:     d.At,
				Msg:    fmt.Sprintf("%s lies in %s, which is wet, and is not sealed", d.Name, d.Spot.Place.Name),
				Detail: "Fit a sealed one, with a seal on each wire and a plug in each empty cavity.",
				Fix:    p.sealed(d),
			})
		}
	},
})

// maySeal reports whether the draft can say of a device that it is sealed.
func maySeal(d *model.Device) bool {
	return slices.ContainsFunc(d.Kind.Settings, func(s part.Setting) bool { return s.Name == "sealed" })
}

// sealed offers the word, unless a part of the shelf says what it is.
func (p *Pass) sealed(d *model.Device) *diag.Fix {
	if d.Part != "" {
		return nil
	}
	return p.appended(d.At, "take a sealed one for "+d.Name, "sealed")
}
