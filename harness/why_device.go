package harness

import (
	"fmt"

	"legwork/gauge"
	"legwork/harness/model"
	"legwork/harness/size"
)

func (r *Result) whyDevice(d *model.Device) Working {
	title := d.Kind.Name + " " + d.Name
	if d.Label != "" {
		title += " (" + d.Label + ")"
	}
	out := Working{Title: title}
	for _, f := range r.Sizes.Fuses {
		if f.Device == d {
			out = withGroups(out, r.fuseLoad(f), r.protected(f), r.smallerThan(f))
		}
	}
	for i, relay := range r.Sizes.Hot.Relays {
		if relay.Device == d {
			out = withGroups(out, r.relayGroups(i)...)
		}
	}
	out = withGroups(out, r.chargeOf(d))
	out = withGroups(out, r.lossesOf(d)...)
	return withGroups(out, r.terminalsOf(d))
}

// fuseLoad holds the largest steady load of a protective element against its
// rating.
func (r *Result) fuseLoad(f size.Fuse) Group {
	g := Group{Title: "Load and rating"}
	if f.LoadA < gauge.LeastTellA {
		g.Steps = append(g.Steps, gauge.Step{Text: "carries no steady current in any step", Unit: "A", Source: gauge.NodeLaw})
	} else {
		g.Steps = append(g.Steps, gauge.Step{Text: "largest steady load, in " + f.At, Value: f.LoadA, Unit: "A", Source: gauge.NodeLaw})
	}
	if f.Chosen {
		g.Steps = append(g.Steps, f.Why...)
	}
	switch {
	case f.Chosen && f.RatedA > 0:
		g.Steps = append(g.Steps, gauge.Step{Text: "rating, chosen", Value: f.RatedA, Unit: "A"})
	case !f.Chosen:
		g.Steps = append(g.Steps, gauge.Step{Text: "rating, given by the draft", Value: f.RatedA, Unit: "A", Source: "stated"})
	}
	if !(f.RatedA > 0) {
		return g
	}
	load := f.LoadA
	if load < gauge.LeastTellA {
		load = 0
	}
	share, most := 100*load/f.RatedA, 100*r.Profile.LoadOfFuse
	state := "passes"
	if share > most {
		state = "above it"
	}
	g.Steps = append(g.Steps, gauge.Step{
		Text: fmt.Sprintf("share of its rating, at most %.0f %% by profile %s: %s", most, r.Profile.Name, state), Equation: "load / rating",
		Value: share, Unit: "%", Source: "load-on-fuse",
	})
	return withOhm(g, f)
}

// withOhm adds the resistance of a fuse at its load, where one is known.
func withOhm(g Group, f size.Fuse) Group {
	protects := f.Device.Protects()
	if _, _, link := size.LinkOf(f.Device, f.Index); link || f.Index >= len(protects) {
		return g
	}
	cold, grade := gauge.FuseOhm(protects[f.Index].Family, f.RatedA)
	if !(cold > 0) {
		return g
	}
	source, hint := "blade-resistance", ""
	if !grade.MayDecide() {
		source, hint = "bolt-down-resistance", "; a hint that counts only among usual figures"
	}
	g.Steps = append(g.Steps, gauge.Step{
		Text: "its own resistance at that load" + hint, Equation: "Rcold (1 + 0.42 (I/In)^2)",
		Value: gauge.FuseOhmAt(cold, f.RatedA, f.LoadA), Unit: "ohm", Source: source,
	})
	return g
}

// protected lists the wires that a fuse protects, with what each carries.
func (r *Result) protected(f size.Fuse) Group {
	g := Group{Title: "Wires that it protects: each carries, alone in its place, at least the rating"}
	for i, guard := range r.Sizes.Guards {
		w, b := r.Sizes.Wires[i], r.Sizes.Backs[i]
		back := w.Judgement.Case.Behind != "" && b.Fuse == f.Device && b.Index == f.Index
		if !back && (guard.Fuse != f.Device || guard.Index != f.Index) {
			continue
		}
		l, ok := w.Judgement.Limit(gauge.FloorProtection)
		if !ok {
			continue
		}
		text := fmt.Sprintf("wire %s, %s", w.Wire.Number, w.Conductor.Size.Name)
		if back {
			text += ", back from " + b.Load.Name
		}
		if !l.OK {
			text += ": too little"
		}
		g.Steps = append(g.Steps, gauge.Step{Text: text, Value: l.Got, Unit: "A", Source: lawOf(l.Why)})
	}
	return g
}
