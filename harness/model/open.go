package model

import (
	"legwork/harness/diag"
	"legwork/harness/draft"
	"legwork/harness/part"
)

// openWord is written where an end is left bare on purpose.
const openWord = "open"

// openEnd makes the end of a wire that leads nowhere on purpose: a cap of its
// own, called by the wire's number. No user's name holds a dot.
func (b *builder) openEnd(w *Wire, at diag.Span) *Terminal {
	kind, ok := part.Of("cap")
	if !ok {
		return nil
	}
	d := &Device{
		Device: &part.Device{Name: w.Number + "." + openWord, Kind: kind, At: at, SystemV: b.m.SystemV},
		Stmt:   w.Stmt, open: true,
	}
	for i := range kind.Settings {
		if s := &kind.Settings[i]; s.Name == "end" {
			d.Values = []part.Value{{Setting: s, Word: "bare", At: at}}
		}
	}
	d.Pins = []part.Pin{{Name: kind.Terminals[0].Name, Landing: kind.Terminals[0].Landing, Line: -1, At: at, Quiet: true}}
	t := &Terminal{Device: d, Name: d.Pins[0].Name, Shown: d.Name, Landing: d.Pins[0].Landing, At: at}
	d.Terminals = []*Terminal{t}
	return t
}

// keepOpen takes the bare ends of a wire into the model, once it is known to
// be one.
func (b *builder) keepOpen(w *Wire) {
	for _, t := range []*Terminal{w.From, w.To} {
		d := t.Device
		if !d.open {
			continue
		}
		d.ID, t.ID = len(b.m.Devices), len(b.m.Terminals)
		b.m.Devices, b.m.Terminals = append(b.m.Devices, d), append(b.m.Terminals, t)
		b.m.deviceNamed[d.Name] = d
	}
}

// settleOpen puts bare ends where they are: at the other end of their cable,
// or else where the wire begins.
func (b *builder) settleOpen() {
	for _, w := range b.m.Wires {
		if w.To.Device.open {
			b.spotOpen(w, w.To.Device, w.From.Device)
		}
		if w.From.Device.open {
			b.spotOpen(w, w.From.Device, w.To.Device)
		}
	}
}

func (b *builder) spotOpen(w *Wire, d, other *Device) {
	d.Spot = other.Spot
	if w.Cable != nil {
		for _, core := range w.Cable.Cores {
			for _, end := range []*Device{core.From.Device, core.To.Device} {
				if d.Spot == other.Spot && !end.open && end.Spot != other.Spot {
					d.Spot = end.Spot
				}
			}
		}
	}
	d.AmbientC, d.Wet = d.Spot.Place.AmbientC, d.Spot.Place.Wet
}

// isOpen reports whether an end is the word open, and no device of that name.
func (b *builder) isOpen(it draft.Item) bool {
	return it.Is(openWord) && b.m.deviceNamed[openWord] == nil
}
