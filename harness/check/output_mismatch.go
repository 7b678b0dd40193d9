package check

import (
	"fmt"

	"legwork/harness/diag"
	"legwork/harness/model"
	"legwork/harness/part"
)

var _ = define(Rule{
	ID:       "output-mismatch",
	Severity: diag.Fault,
	Title:    "A controller output is wired to a load whose other end is on the wrong side.",
	Why: "A low-side output can only join its load to ground, so the load's other end has to be fed. " +
		"A high-side output can only feed, so the load's other end has to be grounded. " +
		"The other way round the load never works, or both its ends hang on the same side and the output is destroyed.",
	Equation: "low-side: the load's other end is fed; high-side: the load's other end is grounded",
	Misses:   "An output that the draft calls by the wrong kind.",
	Needs:    Model,
	Run:      outputMismatch,
})

// ends are the two terminals of something that an output can work.
type ends struct {
	device *model.Device
	a, b   string
}

func outputMismatch(p *Pass) {
	sides := p.sides()
	at := p.worked()
	for _, d := range p.Model.Devices {
		if d.Kind.Drives == nil {
			continue
		}
		for _, o := range d.Kind.Drives(d.Device) {
			t := pinOf(d, o.Pin)
			if t == nil {
				continue
			}
			for _, e := range at[p.Nets.Of[t.ID]] {
				p.judgeOutput(d, o, e, sides)
			}
		}
	}
}

func (p *Pass) judgeOutput(d *model.Device, o part.Output, e ends, sides *reach) {
	far := pinOf(e.device, e.b)
	if far == nil {
		return
	}
	fed, grounded := sides.plus[p.Nets.Of[far.ID]], sides.minus[p.Nets.Of[far.ID]]
	kind, side := "low-side", "ground"
	wrong := grounded && !fed
	if !o.Sinks {
		kind, side, wrong = "high-side", "supply", fed && !grounded
	}
	if !wrong {
		return
	}
	p.Report(diag.Finding{
		At:      o.At,
		Msg:     fmt.Sprintf("%s is a %s output, but %s, whose other end %s is on %s, hangs on it", shown(d, o.Pin), kind, e.device.Name, shown(e.device, e.b), side),
		Detail:  "Feed the other end for a low-side output, ground it for a high-side one, or use a relay.",
		Related: []diag.Related{{At: e.device.At, Msg: "the load"}},
	})
}

// sides is reach without outputs: what is fed or grounded by itself.
func (p *Pass) sides() *reach {
	bare := *p
	bare.reached, bare.quiet = nil, true
	return bare.reach()
}

// worked lists, by net, the loads and coils that have one end there, with the
// other end as b.
func (p *Pass) worked() map[int][]ends {
	at := map[int][]ends{}
	add := func(d *model.Device, a, b string) {
		if t := pinOf(d, a); t != nil {
			at[p.Nets.Of[t.ID]] = append(at[p.Nets.Of[t.ID]], ends{d, a, b})
		}
	}
	for _, d := range p.Model.Devices {
		for _, c := range coils(d) {
			add(d, c.A, c.B)
			add(d, c.B, c.A)
		}
		if d.Kind.Draws == nil || d.Kind.Drives != nil {
			continue
		}
		for _, w := range d.Kind.Draws(d.Device) {
			if !w.Coil {
				add(d, w.Plus, w.Minus)
				add(d, w.Minus, w.Plus)
			}
		}
	}
	return at
}

// coils gives the coils that work a contact of a device.
func coils(d *model.Device) []part.Kick {
	if d.Kind.Switches == nil {
		return nil
	}
	var list []part.Kick
	for _, c := range d.Kind.Switches(d.Device) {
		if c.CoilA != "" && (len(list) == 0 || list[0].A != c.CoilA) {
			list = append(list, part.Kick{A: c.CoilA, B: c.CoilB, At: c.At})
		}
	}
	return list
}
