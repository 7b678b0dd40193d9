package model

import (
	"legwork/gauge"
	"legwork/harness/diag"
	"legwork/harness/draft"
	"legwork/harness/part"
	"legwork/harness/quantity"
)

var sizeSettings = []part.Setting{
	{Name: "size", Bare: true, Doc: "size of the conductor by gauge; chosen when not said",
		Figures: []part.Figure{{Name: "size", Dim: quantity.Gauge, Min: -3, Max: 30, Doc: "gauge"}}},
	{Name: "metric size", Bare: true, Doc: "size of the conductor by area; chosen when not said",
		Figures: []part.Figure{{Name: "size", Dim: quantity.Area, Min: 0.1, Max: 240, Doc: "area"}}},
}

var circuitSettings = append(append([]part.Setting{}, sizeSettings...),
	part.Setting{Name: "drop", Doc: "share of the system's volts that may be lost on the way to a load and back; the profile's when not said",
		Figures: []part.Figure{{Name: "drop", Dim: quantity.Percent, Min: 0.1, Max: 50, Doc: "share of the volts"}}})

var wireSettings = append(append([]part.Setting{}, sizeSettings...),
	part.Setting{Name: "length", Bare: true, Doc: "length as cut; found from the legs when not said",
		Figures: []part.Figure{{Name: "length", Dim: quantity.Length, Min: 0.005, Max: 200, Doc: "length"}}},
	part.Setting{Name: "drop", Doc: "volts lost along an existing wire, and the current at which they were read", Figures: []part.Figure{
		{Name: "volts", Dim: quantity.Voltage, Min: 0.001, Max: 12, Doc: "volts lost"}, {Name: "current", Dim: quantity.Current, Min: 0.1, Max: 2000, Doc: "current then"}}})

// Positions of the settings of a wire behind its two sizes.
const (
	lengthSetting = iota + 2
	dropSetting
)

func (b *builder) buildCircuits() {
	for _, s := range b.circuits {
		c := newCursor(s)
		name, ok := b.firstName(s, c, "circuit")
		if !ok {
			name = "unnamed"
		}
		circuit := &Circuit{ID: len(b.m.Circuits), Name: name, At: s.Head.At}
		if ok {
			circuit.At = s.Items[0].At
			b.declare(b.circSet, name, "circuit", circuit.At)
		}
		f := &form{owner: "circuit " + name, name: name, settings: circuitSettings, label: &circuit.Label}
		f.words = map[string]func(*cursor, draft.Item){
			"color":  func(c *cursor, w draft.Item) { b.colorBehind(c, w, f.owner, &circuit.Color) },
			"option": b.optionWord(f.owner, &circuit.Option),
		}
		f.bare = familyWord(&circuit.Family)
		f.expected = familyNames
		b.read(f, c)
		circuit.Size, circuit.Sized, _ = b.sizeOf(f)
		if drop := b.said(f, 2); drop != nil {
			circuit.DropFrac = drop.Nums[0] / 100
		}
		b.m.Circuits = append(b.m.Circuits, circuit)
		b.circuit[s] = circuit
	}
}

// loose gives the circuit of wires that stand outside any.
func (b *builder) loose() *Circuit {
	if c := b.circuit[nil]; c != nil {
		return c
	}
	c, named := b.m.CircuitByName("loose")
	if !named {
		c = &Circuit{ID: len(b.m.Circuits), Name: "loose", At: diag.Span{File: b.f.Name}}
		b.m.Circuits = append(b.m.Circuits, c)
	}
	b.circuit[nil] = c
	return c
}

func (b *builder) colorBehind(c *cursor, w draft.Item, owner string, to *Color) {
	word := c.word()
	if word == "" {
		b.say(missingRule, w.At, "%s: color needs letters such as RD or GN/WH", owner)
		return
	}
	it := c.take()
	color, ok := readColor(word)
	if !ok {
		b.sayUnknown(wordRule, it.At, word, colorWords(), "%s: no color %q", owner, clip(word))
		return
	}
	*to = color
}

// familyWord reads a bare kind of insulation.
func familyWord(to *string) func(draft.Item, string) bool {
	return func(_ draft.Item, word string) bool {
		f, ok := gauge.FamilyOf(word)
		if ok {
			*to = f.Name
		}
		return ok
	}
}

func familyNames() []string {
	var names []string
	for _, f := range gauge.Families() {
		names = append(names, f.Name)
	}
	return names
}

// said gives the i-th setting of a form if the draft says it, and lists it as
// a guess if it is marked as one.
func (b *builder) said(f *form, i int) *part.Value {
	for k := range f.values {
		if v := &f.values[k]; v.Setting == &f.settings[i] {
			b.guessed(f, *v)
			return v
		}
	}
	return nil
}

// sizeOf gives the size among the first two settings: in AWG or in mm2.
func (b *builder) sizeOf(f *form) (s gauge.Size, sized bool, at diag.Span) {
	awg, metric := b.said(f, 0), b.said(f, 1)
	if awg != nil && metric != nil {
		b.say(duplicateRule, metric.At, "%s has two sizes", f.owner)
	}
	switch {
	case awg != nil:
		n := int(awg.Nums[0])
		if s, sized = gauge.AWGSize(n); !sized {
			b.say(rangeRule, awg.At, "%s: %s is not made as stranded cable; nearest is %s", f.owner, gauge.AWGName(n), nearestSize(gauge.AWGAreaMM2(n), false))
		}
		return s, sized, awg.At
	case metric != nil:
		mm2 := metric.Nums[0]
		if s, sized = gauge.MetricSize(mm2); !sized {
			b.say(rangeRule, metric.At, "%s: no cable of %s; nearest is %s", f.owner, quantity.Text(mm2, quantity.Area), nearestSize(mm2, true))
		}
		return s, sized, metric.At
	}
	return s, false, diag.Span{}
}

// nearestSize names the smallest size of the ladder that is not thinner.
func nearestSize(areaMM2 float64, metric bool) string {
	ladder := gauge.Ladder(metric)
	for _, s := range ladder {
		if s.Nominal >= areaMM2 || !metric && s.AreaMM2 >= 0.9*areaMM2 {
			return s.Name
		}
	}
	return ladder[len(ladder)-1].Name
}
