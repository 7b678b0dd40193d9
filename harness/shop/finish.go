package shop

import (
	"strings"

	"legwork/harness/model"
	"legwork/harness/part"
	"legwork/harness/quantity"
)

// finish says how a wire is finished at a terminal: a ring with the thread
// where it is known, a splice, or a crimped terminal with its blade and seal.
func finish(t *model.Terminal, w *model.Wire) string {
	switch t.Landing {
	case part.Post:
		return strings.TrimSpace("ring " + t.Device.Thread)
	case part.Joint:
		return "splice"
	}
	words := []string{"terminal"}
	if c := contact(t); c != "" {
		words = []string{c}
	}
	if t.Device.Said("blade") {
		words = append([]string{quantity.Text(t.Device.Num("blade"), quantity.Length)}, words...)
	}
	if sealed(t.Device) {
		words = append(words, "and seal")
	}
	text := strings.Join(words, " ")
	if others := companions(t, w); others != "" {
		text += " with " + others
	}
	return text
}

// contact names what sits in a cavity of a connector half, "" where the draft
// does not say or the terminal is none.
func contact(t *model.Terminal) string {
	if l := lineOf(t); l != nil && half(t.Device) {
		return strings.TrimSuffix(l.Word("contacts"), "s")
	}
	return ""
}

// half reports whether the lines of a device are halves of a connector.
func half(d *model.Device) bool {
	return d.Kind.Lines != nil && d.Kind.Lines.Shape == part.HalfLines
}

func sealed(d *model.Device) bool { return half(d) && d.Said("sealed") }

// lineOf gives the child line that a terminal comes from, nil for a fixed one.
func lineOf(t *model.Terminal) *part.Line {
	d := t.Device
	if i := d.Pins[t.Pin].Line; i >= 0 && i < len(d.Lines) {
		return &d.Lines[i]
	}
	return nil
}

// companions names the other wires that share one crimped terminal.
func companions(t *model.Terminal, w *model.Wire) string {
	var list []string
	for _, e := range t.Ends {
		if e.Wire != w {
			list = append(list, e.Wire.Number)
		}
	}
	return strings.Join(list, ", ")
}
