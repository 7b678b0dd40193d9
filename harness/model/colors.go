package model

import (
	"slices"
	"strings"

	"legwork/harness/part"
)

// colorLetters are the IEC 60757 letters of insulation colors, and the
// letters that US shops write for them (common practice). TN, tan, is not in
// the standard.
var colorLetters = map[string]string{
	"BK": "BK", "BN": "BN", "RD": "RD", "OG": "OG", "YE": "YE", "GN": "GN", "BU": "BU", "VT": "VT",
	"GY": "GY", "WH": "WH", "PK": "PK", "GD": "GD", "TQ": "TQ", "SR": "SR", "GNYE": "GNYE", "TN": "TN",
	"BLK": "BK", "BRN": "BN", "RED": "RD", "ORN": "OG", "ORG": "OG", "YEL": "YE", "GRN": "GN", "BLU": "BU",
	"VIO": "VT", "PUR": "VT", "GRY": "GY", "GRA": "GY", "WHT": "WH", "PNK": "PK", "TRQ": "TQ", "TAN": "TN",
}

// rotation is the order in which circuits get a color when the draft gives none.
var rotation = []string{"YE", "GN", "BU", "VT", "OG", "PK", "BN", "GY", "TQ", "WH"}

// readColor reads RD, RED, VT/WH; ok is false for anything else.
func readColor(word string) (c Color, ok bool) {
	base, tracer, striped := strings.Cut(word, "/")
	c = Color{Base: colorLetters[base], Tracer: colorLetters[tracer], Shown: word}
	return c, c.Base != "" && striped == (c.Tracer != "")
}

// colorWords lists what is read as a color.
func colorWords() []string {
	words := make([]string, 0, len(colorLetters))
	for w := range colorLetters {
		words = append(words, w)
	}
	slices.Sort(words)
	return words
}

// chooseColors gives every wire without a color one: its circuit's, black on
// the way to ground, red in the battery's own net, else one by circuit.
func (b *builder) chooseColors() {
	hot := b.batteryNets()
	for _, w := range b.m.Wires {
		if w.Color.Base != "" {
			continue
		}
		w.Chosen = true
		base := rotation[w.Circuit.ID%len(rotation)]
		switch {
		case w.Circuit.Color.Base != "":
			w.Color = w.Circuit.Color
			continue
		case w.Role == Strap || isGround(w.From) || isGround(w.To):
			base = "BK"
		case hot[b.m.nets.Of[w.From.ID]] || onBus(w.From) || onBus(w.To):
			base = "RD"
		}
		w.Color = Color{Base: base, Shown: base}
	}
}

// batteryNets tells which nets hold the positive post of a battery.
func (b *builder) batteryNets() map[int]bool {
	hot := map[int]bool{}
	for _, d := range b.m.Devices {
		for _, s := range d.Supplies() {
			if t := d.Terminal(s.Plus); s.Battery && t != nil {
				hot[b.m.nets.Of[t.ID]] = true
			}
		}
	}
	return hot
}

// isGround reports whether a terminal is a way back: metal, a stud on it, a
// battery's negative post, or a ground of a device.
func isGround(t *Terminal) bool {
	if t.Metal != nil {
		return true
	}
	d := t.Device
	for _, s := range d.Supplies() {
		if s.Battery && s.Minus == t.Name {
			return true
		}
	}
	for _, g := range d.Grounds() {
		if g.Pin == t.Name && !g.Sensor {
			return true
		}
	}
	return false
}

// onBus reports whether a terminal is a bus of a box.
func onBus(t *Terminal) bool {
	lines := t.Device.Kind.Lines
	return lines != nil && lines.Shape == part.BusLines
}
