package gauge

import (
	"fmt"
	"math"
)

// Candidate is one size held against an [Ask].
type Candidate struct {
	Size       Size
	Family     Family
	DropV      float64 // lost out and back, by the drop rule of the ask
	WarmDropV  float64 // the same with the copper at ConductorC
	AmpacityA  float64 // in its place and bundle
	AloneA     float64 // in its place without the bundle: what its fuse is held against
	ConductorC float64
	Limits     []Limit
	OK         bool // every limit that may decide is met
}

// Fails lists the limits that may decide and are not met.
func (c Candidate) Fails() (out []Limit) {
	for _, l := range c.Limits {
		if !l.OK && !l.Hint {
			out = append(out, l)
		}
	}
	return out
}

// Limit finds a limit by name; ok is false when it was not asked.
func (c Candidate) Limit(name string) (l Limit, ok bool) {
	return Judgement{Limits: c.Limits}.Limit(name)
}

// Answer is a sized wire with its working.
type Answer struct {
	Ask       Ask
	Conductor ConductorM // all of it, out and back
	Chosen    Candidate
	Down, Up  Candidate // the neighbors of the ladder
	HasDown   bool
	HasUp     bool
	Governs   string  // floor that keeps the next size down from serving; [FloorMechanical] for the smallest of the ladder
	DropShare float64 // of the system volts

	FuseMinA, FuseMaxA float64 // window: for the load, by the wire
	FuseA              float64 // chosen or given; 0: none is made
	FuseStyle          string
	Start              Start // zero when the ask has no first current

	OK    bool
	Fault string   // why no size serves, or why the given fuse does not
	Notes []string // what a builder should know beside it
}

// SizeWire is the front door for one wire: the first size of the ladder that
// carries the load in its place and bundle, keeps the drop, is protected by
// its fuse and survives handling; with its neighbors and why not. It is pure.
// The error is [Refusals] for an ask that cannot be worked with; an ask that
// no size meets is an answer with OK false. More current, length or heat never
// gives a thinner wire (sources ampacity-33cfr183, copper-temperature,
// circular-mil, fuse-margin; limits of the profile).
func SizeWire(a Ask) (Answer, error) {
	if no := a.Check(); len(no) > 0 {
		return Answer{}, no
	}
	out := Answer{Ask: a, Conductor: a.OneWay.Conductor(a.Return)}
	out.fuse()
	ladder := a.Area.Ladder()
	at := len(ladder) - 1
	for i, s := range ladder {
		if out.try(s).OK {
			at, out.OK = i, true
			break
		}
	}
	out.Chosen = out.try(ladder[at])
	if at > 0 {
		out.Down, out.HasDown = out.try(ladder[at-1]), true
	}
	if at < len(ladder)-1 {
		out.Up, out.HasUp = out.try(ladder[at+1]), true
	}
	out.finish()
	return out, nil
}

// try holds one size against the ask.
func (a *Answer) try(s Size) Candidate {
	c := a.wireCase(s)
	j := JudgeWire(c)
	out := Candidate{Size: s, Family: c.Family, ConductorC: j.TempC, Limits: j.Limits, OK: j.OK}
	out.AmpacityA, _, _ = c.Profile.Ampacity.Ampacity(s, c.Family, c.AmbientC, c.Loaded)
	out.AloneA, _, _ = c.Profile.Ampacity.Ampacity(s, c.Family, c.AmbientC, 1)
	out.WarmDropV = DropV(s.OhmPerM(j.TempC), c.LengthM, c.HeatA)
	out.DropV = out.WarmDropV
	if a.Ask.DropBy == DropChart {
		a.chart(&out)
	}
	return out
}

// wireCase is what the judge is asked of one size. The chart rule has a limit
// of its own, see chart.
func (a *Answer) wireCase(s Size) WireCase {
	q := &a.Ask
	c := WireCase{
		Size: s, Family: q.Family, Profile: q.Profile, AmbientC: q.AmbientC, Loaded: q.Loaded,
		LengthM: float64(a.Conductor), HeatA: q.LoadA, FuseA: a.FuseA, FuseKind: a.FuseStyle,
		FuseName: fmt.Sprintf("fuse of %.4g A", a.FuseA),
		Single:   q.Loaded <= 1 && q.Return == ByMetal,
	}
	if q.Family.Source == "" {
		c.Family = FamilyFor(s)
	}
	if q.DropBy == DropCopper {
		c.MaxOhm = MaxOhmFor(q.LoadA, a.mostV())
	}
	return c
}

// mostV is the largest drop in volts.
func (a *Answer) mostV() float64 { return a.Ask.DropShare * a.Ask.SystemV }

// chart judges a candidate by the circular-mil rule.
func (a *Answer) chart(c *Candidate) {
	have, need := a.Ask.Area.Cmil(c.Size), CmilFor(a.Conductor, KRoom, a.Ask.LoadA, a.mostV())
	c.DropV = a.mostV() * need / have
	l := Limit{Name: FloorDrop, Got: have, Asked: need, Unit: "cmil"}
	l.OK = have >= need
	l.Why = []Step{
		{fmt.Sprintf("%.4g A over %.4g ft out and back within %.4g V", a.Ask.LoadA, a.Conductor.Feet(), a.mostV()), "CM = 10.75 I L / E", need, "cmil", "circular-mil"},
		{c.Size.Name + " has", "CM", have, "cmil", a.Ask.Area.Source()},
		{"so it loses", "10.75 I L / CM", c.DropV, "V", "circular-mil"},
		{fmt.Sprintf("with the copper at %.4g C", c.ConductorC), "I R L", c.WarmDropV, "V", "copper-temperature"},
	}
	c.Limits = append(c.Limits, l)
	c.OK = c.OK && l.OK
}

// finish fills in what follows from the chosen size.
func (a *Answer) finish() {
	a.DropShare = a.Chosen.DropV / a.Ask.SystemV
	a.FuseMaxA = a.Ask.Profile.FuseOverWire * a.Chosen.AloneA
	a.Governs = FloorMechanical
	against := a.Down
	if !a.OK {
		against = a.Chosen
	}
	worst := math.Inf(1)
	for _, l := range against.Fails() {
		if m := l.Margin(); m < worst || math.IsNaN(m) {
			worst, a.Governs = m, l.Name
		}
	}
	a.verdict()
	a.start()
	a.note()
}
