package gauge

import "slices"

// StrandDamage is how many strands of an aircraft wire may be nicked or
// broken at a termination.
type StrandDamage struct {
	MostAWG, LeastAWG int // gauge numbers, thin to thick
	Strands           int // 0: several counts
	Nicked, Broken    int
	Source            string
}

var strandDamages = [...]StrandDamage{
	{24, 14, 19, 2, 0, "strand-damage"},
	{12, 10, 37, 4, 0, "strand-damage"},
	{8, 4, 133, 6, 6, "strand-damage"},
	{2, 1, 0, 6, 6, "strand-damage"},
	{0, -1, 0, 6, 6, "strand-damage"},
}

// StrandDamages lists them, thin to thick; aluminum allows none (source
// strand-damage).
func StrandDamages() []StrandDamage { return slices.Clone(strandDamages[:]) }

// StrandsPass reports whether a stripped wire with so many nicked and broken
// strands may be used; ok is false for a gauge outside the table or counts
// below zero (source strand-damage).
func StrandsPass(awg, nicked, broken int) (pass, ok bool) {
	i := slices.IndexFunc(strandDamages[:], func(d StrandDamage) bool { return awg <= d.MostAWG && awg >= d.LeastAWG })
	if i < 0 || nicked < 0 || broken < 0 {
		return false, false
	}
	return nicked <= strandDamages[i].Nicked && broken <= strandDamages[i].Broken, true
}

// strandClasses is the damage a workmanship draft allows by strand count, in
// its classes 1 and 2, and in class 3 untinned and tinned.
var strandClasses = [...]struct{ from, to, class12, untinned3, tinned3 int }{
	{2, 6, 0, 0, 0}, {7, 15, 1, 0, 1}, {16, 25, 3, 0, 2}, {26, 40, 4, 3, 3}, {41, 60, 5, 4, 4}, {61, 120, 6, 5, 5},
}

// StrandsAllowed is how many damaged strands a draft of IPC/WHMA-A-620B
// allows for a conductor of 2 to 120 strands, in class 1, 2 or 3 (source
// strand-classes).
func StrandsAllowed(strands, class int, tinned bool) (damaged int, ok bool) {
	for _, r := range strandClasses {
		if strands < r.from || strands > r.to {
			continue
		}
		switch {
		case class == 1 || class == 2:
			return r.class12, true
		case class == 3 && tinned:
			return r.tinned3, true
		case class == 3:
			return r.untinned3, true
		}
	}
	return 0, false
}

// InsulationLimitOhm is the least insulation resistance at tempF: 100 Mohm
// from 60 to 82 F, 2 % less for each F above, 2 % more for each below. ok is
// false above 100 F, where no test is made, and below -40 F (source
// insulation-test).
func InsulationLimitOhm(tempF float64) (ohm float64, ok bool) {
	if !(tempF >= -40 && tempF <= 100) {
		return 0, false
	}
	const limit = 100e6
	switch {
	case tempF > 82:
		return limit * (1 - 0.02*(tempF-82)), true
	case tempF < 60:
		return limit * (1 + 0.02*(60-tempF)), true
	}
	return limit, true
}
