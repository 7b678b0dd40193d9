package part

import (
	"legwork/gauge"
	"legwork/harness/circuit"
)

// stallA is the current of the starter held fast on its own battery, warm.
func stallA(d *Device) float64 {
	if d.Said("stall") {
		return d.Num("stall")
	}
	return gauge.UsualStall * d.Num("draws")
}

// starterLaw gives the resistance of the motor and its back e.m.f. while it
// turns the engine. The stated currents hold on the draft's own battery with
// ideal cables; a battery too small for them leaves next to no resistance.
func starterLaw(d *Device, s *Stamper) (ohm, backV float64) {
	emf, rb, stall := gauge.CrankEMF*d.scale(), d.batteryOhm(), stallA(d)
	ohm = max((emf-stall*rb)/stall, closedOhm)
	draws := d.Num("draws")
	if s.Corner == ColdStart {
		draws = s.Start.starter(draws, d)
	}
	return ohm, max(emf-draws*(rb+ohm), 0)
}

func stampStarter(d *Device, s *Stamper) {
	ohm, backV := starterLaw(d, s)
	rated := 12 * d.scale()
	pull, hold := d.Value("pull-in"), d.Value("hold")
	holdOhm := rated / hold.num(0)
	state := s.Remember(State{
		Name: d.Name, Kind: SolenoidState, Watch: []Watch{{Plus: "S", Minus: "-", Steps: s.All()}}, CoilOhm: holdOhm,
		OutBelowV: solenoidOutBelow(pull, hold), InAboveV: pull.num(1), PairSaid: pull.set(1), ReleaseV: hold.num(1), AmbientC: d.AmbientC,
	})
	locked := s.Where(func(st Step) bool { return st.Engine == Locked })
	armature := circuit.Law{Kind: circuit.Resistor, Ohm: ohm}
	turning := circuit.Law{Kind: circuit.Source, Volt: backV, Ohm: ohm}
	s.AddIf(LoadElement, "B", "-", armature, locked, state, false)
	s.AddIf(LoadElement, "B", "-", turning, s.All()&^locked, state, false)
	// The motor as its own terminal sees it: on the feed while the solenoid is
	// closed, else its winding to the return, through which pull-in flows.
	s.AddIf(ContactElement, "B", "M", resistor(closedOhm), s.All(), state, false)
	s.AddIf(Element, "M", "-", armature, s.All(), state, true)
	s.AddIf(ContactElement, "B", "R", resistor(closedOhm), s.All(), state, false)
	s.Add(LeakElement, "B", "-", leak(), s.All())
	s.Add(LeakElement, "M", "-", leak(), s.All())
	s.Add(LeakElement, "R", "-", leak(), s.All())

	s.Add(LoadElement, "S", "-", circuit.Law{Kind: circuit.Resistor, Ohm: holdOhm}, s.All())
	if more := pull.num(0) - hold.num(0); more > 0 {
		s.Add(CoilElement, "S", "M", circuit.Law{Kind: circuit.Resistor, Ohm: rated / more}, s.All())
	}
	stampSuppression(d, s, "S", "-")
}

// solenoidOutBelow is where the solenoid surely stays out: its stated closing
// volts, or its release where they are a guess.
func solenoidOutBelow(pull, hold *Value) float64 {
	if pull.set(1) {
		return pull.num(1)
	}
	return hold.num(1)
}
