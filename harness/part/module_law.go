package part

import (
	"slices"

	"legwork/gauge"
	"legwork/harness/circuit"
)

// leastV is the least volts of a feed: as stated, else half the system's.
func (d *Device) leastV(l *Line) float64 {
	if l.Said("above") {
		return l.Num("above")
	}
	return d.halfV()
}

func stampModule(d *Device, s *Stamper) {
	grounds := d.returns()
	if len(grounds) == 0 {
		return // nothing to work against: a rule says so
	}
	gnd := grounds[0]
	for _, other := range grounds[1:] {
		s.Add(Element, gnd, other, resistor(closedOhm), s.All())
	}
	alive := s.Remember(aliveState(d, s, gnd))
	for i := range d.Lines {
		l := &d.Lines[i]
		switch {
		case l.is("feed"):
			stampFeed(d, s, l, gnd, alive)
		case l.is("low-side"):
			stampDriver(s, l, gnd, alive)
			s.Add(LeakElement, l.Name, gnd, leak(), s.All())
		case l.is("high-side"):
			if feed := d.feedOf(l); feed != "" {
				stampDriver(s, l, feed, alive)
			}
			s.Add(LeakElement, l.Name, gnd, leak(), s.All())
		case l.is("reference"):
			law := circuit.Law{Kind: circuit.Source, Volt: l.Num("volts"), Ohm: gauge.UsualReferenceOhm}
			s.AddIf(SourceElement, l.Name, gnd, law, s.All(), alive, false)
			s.Add(LeakElement, l.Name, gnd, leak(), s.All())
		case l.is("input"), l.is("signal"), l.is("can-high"), l.is("can-low"), l.is("unused"):
			stampInput(s, l, gnd, alive)
		}
	}
}

// stampInput adds what holds an input while nothing else does.
func stampInput(s *Stamper, l *Line, gnd string, alive int) {
	s.Add(LeakElement, l.Name, gnd, leak(), s.All())
	if l.Said("pull-up") {
		law := circuit.Law{Kind: circuit.Source, Volt: l.Value("pull-up").num(1), Ohm: l.Num("pull-up")}
		s.AddIf(SourceElement, l.Name, gnd, law, s.All(), alive, false)
	}
	if l.Said("pull-down") {
		s.Add(Element, l.Name, gnd, resistor(l.Num("pull-down")), s.All())
	}
}

// aliveState watches every feed; the shortest bridging time counts.
func aliveState(d *Device, s *Stamper, gnd string) State {
	st := State{Name: d.Name, Kind: AliveState, AmbientC: d.AmbientC}
	for _, l := range d.feeds() {
		st.Watch = append(st.Watch, Watch{Plus: l.Name, Minus: gnd, AtLeastV: d.leastV(l), Steps: s.All()})
		if t := l.Num("holds"); l.Said("holds") && (st.HoldsS == 0 || t < st.HoldsS) {
			st.HoldsS = t
		}
	}
	return st
}

func stampFeed(d *Device, s *Stamper, l *Line, gnd string, alive int) {
	s.Add(LeakElement, l.Name, gnd, leak(), s.All())
	if a := l.Num("current"); a > 0 {
		s.AddIf(LoadElement, l.Name, gnd, constant(a, d.leastV(l)), s.All(), alive, false)
	}
	if a := asleepA(l); a > 0 {
		s.AddIf(LoadElement, l.Name, gnd, constant(a, d.leastV(l)), s.All(), alive, true)
	}
}

// stampDriver joins an output's terminal to the other one while commanded.
func stampDriver(s *Stamper, l *Line, other string, alive int) {
	rated := l.Num("current")
	if !(rated > 0) {
		rated = 1
	}
	a, b := l.Name, other
	if l.is("high-side") {
		a, b = other, l.Name
	}
	s.AddIf(OutputElement, a, b, circuit.Law{Kind: circuit.Resistor, Ohm: gauge.DriverDropV / rated}, l.When()&s.All(), alive, false)
}

// feedOf is the feed that a high-side output takes its current from.
func (d *Device) feedOf(l *Line) string {
	feeds := d.withRole("feed")
	if w := l.Word("fed-by"); slices.Contains(feeds, w) {
		return w
	}
	if len(feeds) == 0 {
		return ""
	}
	return feeds[0]
}

func moduleDraws(d *Device) []Draw {
	grounds := d.returns()
	if len(grounds) == 0 {
		return nil
	}
	var out []Draw
	for _, l := range d.feeds() {
		w := Draw{
			Plus: l.Name, Minus: grounds[0], Amps: l.Num("current"), RatedV: gauge.LampRatedV * d.scale(), Type: ElectronicLoad, Constant: true,
			InrushA: l.Num("inrush"), Works: l.When(), AsleepA: asleepA(l), Asleep: asleepA(l) > 0, Critical: true,
			AmpsKnown: l.Value("current").set(0), DutyFrac: 1, At: l.At,
		}
		if v := l.Value("above"); v.Said {
			w.Needs = []Need{{Volts: v.num(0), Steps: l.When(), Said: true, At: v.At}}
		}
		out = append(out, w)
	}
	return out
}

func moduleOutputs(d *Device) []Output {
	var out []Output
	grounds := d.returns()
	for i := range d.Lines {
		if l := &d.Lines[i]; l.is("low-side") || l.is("high-side") {
			o := Output{Pin: l.Name, Sinks: l.is("low-side"), RatedA: l.Num("current"), Steps: l.When(), Clamps: l.Said("clamps"), DutyFrac: 1, At: l.At}
			switch {
			case !o.Sinks:
				o.Other = d.feedOf(l)
			case len(grounds) > 0:
				o.Other = grounds[0]
			}
			if l.Said("duty") {
				o.DutyFrac = l.Num("duty") / 100
			}
			out = append(out, o)
		}
	}
	return out
}

func moduleReturns(d *Device) []Return {
	var out []Return
	for i := range d.Lines {
		if l := &d.Lines[i]; l.is("ground") || l.is("sensor-ground") || l.is("shield") {
			out = append(out, Return{Pin: l.Name, Wanted: d.Word("ground-wanted"), Sensor: !l.is("ground"), At: l.At})
		}
	}
	return out
}

// moduleInside leads from every feed to the references and joins the grounds.
func moduleInside(d *Device) []Path {
	var out []Path
	for _, ref := range append(d.withRole("reference"), d.pulledUp()...) {
		for _, feed := range d.withRole("feed") {
			out = append(out, Path{A: feed, B: ref, OneWay: true})
		}
	}
	grounds := d.returns()
	for _, other := range grounds[min(1, len(grounds)):] {
		out = append(out, Path{A: grounds[0], B: other})
	}
	return out
}

func moduleHolds(d *Device) []Held {
	var out []Held
	for i := range d.Lines {
		switch l := &d.Lines[i]; {
		case l.is("reference"):
			out = append(out, Held{Pin: l.Name, Volts: l.Num("volts"), At: l.At})
		case l.is("input") && l.Said("pull-up"):
			out = append(out, Held{Pin: l.Name, Volts: l.Value("pull-up").num(1), At: l.At})
		}
	}
	return out
}

// pulledUp lists the inputs that are held up from inside.
func (d *Device) pulledUp() []string {
	var out []string
	for i := range d.Lines {
		if l := &d.Lines[i]; l.is("input") && l.Said("pull-up") {
			out = append(out, l.Name)
		}
	}
	return out
}
