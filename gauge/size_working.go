package gauge

import "fmt"

// WorkGroup is the working of one floor.
type WorkGroup struct {
	Title string
	Steps []Step
}

// Working is the whole working of an answer: drop, ampacity, fuse, handling,
// start. Every step names its source.
func (a Answer) Working() []WorkGroup {
	out := []WorkGroup{
		{"Drop", a.dropWorking()},
		{"Ampacity", a.limitWorking(FloorAmpacity)},
		{"Fuse", a.fuseWorking()},
		{"Handling", a.limitWorking(FloorMechanical)},
	}
	if len(a.Start.Why) > 0 {
		out = append(out, WorkGroup{"Start", a.Start.Why})
	}
	return out
}

// limitWorking is the working of one limit of the chosen size, with what was
// asked.
func (a Answer) limitWorking(name string) []Step {
	l, ok := a.Chosen.Limit(name)
	if !ok {
		return nil
	}
	if name == FloorAmpacity {
		return append(l.Why, Step{Text: "asked: the load", Value: l.Asked, Unit: l.Unit, Source: "asked"})
	}
	return l.Why
}

func (a Answer) dropWorking() []Step {
	q := &a.Ask
	times := "out and back by wire: 2 L"
	if q.Return == ByMetal {
		times = "out by wire, back by metal: L"
	}
	steps := []Step{
		{fmt.Sprintf("%.4g m one way", float64(q.OneWay)), times, float64(a.Conductor), "m", "asked"},
		{fmt.Sprintf("%.4g %% of %.4g V allowed", 100*q.DropShare, q.SystemV), "share V", a.mostV(), "V", a.dropSource()},
	}
	if l, ok := a.Chosen.Limit(FloorDrop); ok {
		steps = append(steps, l.Why...)
	}
	if q.DropBy == DropCopper {
		steps = append(steps, Step{fmt.Sprintf("at %.4g A", q.LoadA), "I R", a.Chosen.DropV, "V", "far-end-short"})
	}
	return append(steps, Step{fmt.Sprintf("of %.4g V", q.SystemV), "100 V / Vsystem", 100 * a.DropShare, "%", "asked"})
}

// dropSource is the source of the drop that was asked, where the profile has
// it.
func (a Answer) dropSource() string {
	for _, id := range []string{LimitDropCritical, LimitDropOther} {
		if l, ok := a.Ask.Profile.LimitOf(id); ok && l.Value == 100*a.Ask.DropShare {
			return l.Source
		}
	}
	return "asked"
}

func (a Answer) fuseWorking() []Step {
	q := &a.Ask
	var steps []Step
	if q.FuseA > 0 {
		steps = []Step{
			{fmt.Sprintf("%.4g A may take %.0f %% of the fuse", q.LoadA, 100*q.Profile.LoadOfFuse), "In >= I / share", a.FuseMinA, "A", q.Profile.citeOf(LimitLoadOfFuse)},
			{Text: "fuse, as given", Value: q.FuseA, Unit: "A", Source: "asked"},
		}
	} else {
		steps = []Step{{fmt.Sprintf("%.4g A may take %.0f %% of a chosen fuse", q.LoadA, 100*q.Profile.ChooseAt), "In >= I / share", a.FuseMinA, "A", q.Profile.citeOf(LimitFuseChoice)}}
		if f, ok := fuseStyleOf(a.FuseStyle); ok {
			steps = append(steps, Step{Text: "next rating of the " + f.Name + " series", Value: a.FuseA, Unit: "A", Source: f.Source})
		}
	}
	if l, ok := a.Chosen.Limit(FloorProtection); ok {
		return append(steps, l.Why[:len(l.Why)-1]...) // the last says what the fuse is
	}
	return steps
}
