package gauge

import (
	"cmp"
	"math"
)

// WireCase is everything that is asked of one wire. Zero values mean "not
// asked", save for Size and Family, which must be set.
type WireCase struct {
	Size     Size
	Family   Family
	Profile  Profile
	AmbientC float64 // hottest place on its way
	Loaded   int     // conductors loaded together in its bundle, itself included; 0 or 1: alone
	LengthM  float64

	HeatA    float64 // r.m.s. current over duty
	FuseA    float64 // smallest device that protects it on the worst source path; 0: none asked
	FuseName string
	Behind   string // load through which FuseA reaches it, for a return; "": it is fed directly
	Source   bool   // FuseA is what a machine gives at most by itself, and FuseName its name
	Exempt   string // why no protection is asked (starter cable), "" if asked

	ShortA   float64 // least current of a short at its far end; 0: not known
	FuseKind string  // blade, bolt-down, link, breaker: for its opening gate

	StartA float64 // current of a start, over in seconds; 0: none
	StartS float64 // how long it lasts at most

	MaxOhm float64 // largest resistance allowed by drop, at conductor temperature; 0: not asked
	Wet    bool
	Single bool // runs alone, outside a bundle
}

// Names of the floors of a wire.
const (
	FloorAmpacity   = "ampacity"
	FloorProtection = "protection"
	FloorShort      = "short circuit"
	FloorDrop       = "drop"
	FloorMechanical = "mechanical"
	FloorStart      = "start heat"

	floors = 6 // how many there are
)

// Limit is one floor of a judged wire: what the wire gives against what is asked.
type Limit struct {
	Name   string // ampacity, protection, short circuit, drop, mechanical, start heat
	Got    float64
	Asked  float64
	Unit   string
	AtMost bool // Got has to stay at or below Asked (drop); else it has to reach it
	OK     bool
	Hint   bool // rests on a figure that may not decide: shown, never a verdict
	Why    []Step
}

// Margin is how far a floor is met, relative to what is asked: 0 exactly, 0.1
// with a tenth to spare, negative when it fails.
func (l Limit) Margin() float64 {
	if l.AtMost {
		return l.Asked/l.Got - 1
	}
	return l.Got/l.Asked - 1
}

// Judgement is the outcome of [JudgeWire]: every floor with its working.
type Judgement struct {
	Case      WireCase
	Limits    []Limit
	OK        bool    // every floor that may decide is met
	Governs   string  // floor with the least margin among those that may decide; "" if none was asked
	TempC     float64 // conductor temperature
	NotJudged []Step  // floors that were not judged, and why

	base           base       // ampacity at 30 C, found once
	sizeConfidence Confidence // of the conducting area
	fails          string     // first floor that may decide and is not met
	quiet          bool       // leave the working out
	bare           bool       // leave the limits out too
}

// Limit finds a floor by name; ok is false when it was not asked.
func (j Judgement) Limit(name string) (l Limit, ok bool) {
	for _, l := range j.Limits {
		if l.Name == name {
			return l, true
		}
	}
	return Limit{}, false
}

// JudgeWire is the one judge of a wire: it holds a size against the floors
// ampacity, protection, short circuit, drop, mechanical and start heat, each
// with its working. Floors that rest on figures from memory are marked as hints and
// decide nothing. It has no side effects and never fails: a floor that cannot
// be judged stands in NotJudged. A case without size or insulation is never
// OK.
func JudgeWire(c WireCase) Judgement {
	j := Judgement{Case: c, base: baseOf(c.Size, c.Family), sizeConfidence: confidenceOf(c.Size.Source)}
	j.run()
	return j
}

// Fits reports whether every floor that may decide is met: the OK of
// [JudgeWire] without its working, for the many trials of sizing.
func Fits(c WireCase) bool { return RatingOf(c.Size, c.Family).Fits(&c) }

// run holds the case of a judgement that is otherwise new against its floors.
func (j *Judgement) run() {
	c := &j.Case
	j.TempC, j.OK = j.base.tempC(c.AmbientC, c.HeatA), true
	if c.Size.Source == "" || c.Family.Source == "" {
		j.OK = false
		j.skip("wire", "size or insulation is not given")
		return
	}
	j.ampacity()
	j.protection()
	j.short()
	j.drop()
	j.mechanical()
	j.start()
	least := math.Inf(1)
	for i := range j.Limits {
		l := &j.Limits[i]
		if l.Hint {
			continue
		}
		if m := l.Margin(); m < least || math.IsNaN(m) {
			least, j.Governs = m, l.Name
		}
	}
}

// add files a floor; conf is the weakest figure behind it.
func (j *Judgement) add(l Limit, conf Confidence, why func() []Step) {
	l.OK = l.Got >= l.Asked
	if l.AtMost {
		l.OK = l.Got <= l.Asked
	}
	l.Hint = !conf.MayDecide()
	if !l.OK && !l.Hint {
		j.OK = false
		j.fails = cmp.Or(j.fails, l.Name)
	}
	if j.bare {
		return
	}
	if !j.quiet {
		l.Why = why()
	}
	j.Limits = append(j.Limits, l)
}

// sizeConf is how far the conducting area of the size may be trusted.
func (j *Judgement) sizeConf() Confidence { return j.sizeConfidence }

// wireConf is how far its ampacity may be trusted: area, class and table.
func (j *Judgement) wireConf() Confidence { return min(j.base.conf, j.sizeConf()) }
