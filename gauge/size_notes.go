package gauge

import "fmt"

// note adds what a builder should know beside the size.
func (a *Answer) note() {
	q := &a.Ask
	say := func(format string, args ...any) { a.Notes = append(a.Notes, fmt.Sprintf(format, args...)) }
	if share := q.LoadA / a.FuseA; a.FuseA > 0 && share > q.Profile.LoadOfFuse && share <= 1 {
		say("the load takes %.0f %% of the %.4g A fuse; profile %s asks for %.0f %% at most", 100*share, a.FuseA, q.Profile.Name, 100*q.Profile.LoadOfFuse)
	}
	if q.FuseA > 0 && a.FuseStyle == "" {
		say("no usual fuse for %.4g V is made with %.4g A: name its style, or take a rating that is made", q.SystemV, q.FuseA)
	}
	if q.FuseA > 0 && a.OK {
		a.givenFuse(say)
	}
	if q.DropBy == DropChart && a.Chosen.WarmDropV > a.mostV()*(1+1e-9) && a.OK {
		say("the charts reckon with cool copper; at %.0f C it loses %.3g V, %.1f %%", a.Chosen.ConductorC, a.Chosen.WarmDropV, 100*a.Chosen.WarmDropV/q.SystemV)
	}
	a.startNotes(say)
	if q.Profile.Ampacity == AmpacityAircraft {
		a.aircraftNote(say)
	}
	if q.Return == ByMetal {
		say("metal and its joints are taken as nothing: add the drop you measure across them")
	}
	a.familyNote(say)
	a.shortNote(say)
}

// givenFuse tells when a smaller fuse would have let a thinner wire serve.
func (a *Answer) givenFuse(say func(string, ...any)) {
	free := a.Ask
	free.FuseA = 0
	if b, err := SizeWire(free); err == nil && b.OK && b.Chosen.Size.AreaMM2 < a.Chosen.Size.AreaMM2 {
		say("behind a %.4g A fuse %s would do", b.FuseA, b.Chosen.Size.Name)
	}
}

func (a *Answer) startNotes(say func(string, ...any)) {
	q, s := &a.Ask, &a.Start
	if q.StartA == 0 || a.FuseA == 0 {
		return
	}
	grade := " (opening times from memory)"
	if s.WantsSure || s.Sure && s.WantsA == 0 {
		grade = ""
	}
	switch {
	case s.HoldS == 0 && s.WantsA == 0:
		say("no opening times are known for %.4g A on this fuse: ask its maker", q.StartA)
	case q.StartS > 0 && s.HoldS < q.StartS && s.WantsA > a.FuseMaxA:
		say("the fuse may open at the start, and the %.4g A that would hold it is more than this wire allows%s", s.WantsA, grade)
	case q.StartS > 0 && s.HoldS < q.StartS && s.WantsA > 0:
		say("the fuse may open at the start: %.4g A would hold it, and this wire allows it%s", s.WantsA, grade)
	case q.StartS > 0 && s.HoldS < q.StartS:
		say("the fuse may open at the start, and no larger one of its style is known to hold it%s", grade)
	}
	if s.LeftV < q.SystemV*0.8 {
		say("the start leaves %.3g V of %.4g V at the load", max(s.LeftV, 0), q.SystemV)
	}
}

func (a *Answer) aircraftNote(say func(string, ...any)) {
	breakerA, fuseA, ok := AircraftDevice(a.Chosen.Size.AWG)
	if !ok || a.Chosen.Size.Metric {
		return
	}
	if breakerA == 0 {
		say("FAA AC 43.13-1B table 11-3, %s: fuse of at most %.4g A", a.Chosen.Size.Name, fuseA)
		return
	}
	say("FAA AC 43.13-1B table 11-3, %s: breaker of at most %.4g A, fuse of at most %.4g A", a.Chosen.Size.Name, breakerA, fuseA)
}

// shortNote warns of a run so long that its own resistance keeps a short from
// opening the fuse; the source only makes it worse.
func (a *Answer) shortNote(say func(string, ...any)) {
	if a.FuseA == 0 {
		return
	}
	ohm := a.Chosen.Size.OhmPerM(a.Chosen.ConductorC) * float64(a.Conductor)
	if f, ok := FarEndShort(a.Ask.SystemV, a.FuseStyle, a.FuseA, Ohms{"this wire", ohm}); ok && !f.Wanted {
		say("a short at the far end draws %.3g A at most, %.2g x the fuse: it may take long to open", f.ShortA, f.Times)
	}
}
