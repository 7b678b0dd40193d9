package layout

import (
	"fmt"
	"slices"
	"strconv"
	"strings"

	"legwork/harness/model"
	"legwork/harness/part"
	"legwork/render/scene"
)

// marks are the sorts of things, in the order of a card.
var marks = []string{"plug", "box", "device", "stud", "splice", "end"}

func markOf(d *model.Device) string {
	k := d.Kind
	switch {
	case k.Lines != nil && k.Lines.Shape == part.HalfLines:
		return "plug"
	case k.Lines != nil && k.Lines.Shape == part.BusLines:
		return "box"
	case k.Self && !k.Joins:
		return "end"
	case k.Self && d.Terminals[0].Landing == part.Post:
		return "stud"
	case k.Self:
		return "splice"
	}
	return "device"
}

func rowOf(d *model.Device, held []string) row {
	r := row{dev: d, mark: markOf(d), name: d.Name, label: d.Label}
	ends := 0
	for _, t := range d.Terminals {
		ends += len(t.Ends)
	}
	r.right = count(ends, "wire")
	switch r.mark {
	case "plug":
		ways := int(d.Num("ways"))
		r.right = strconv.Itoa(ways) + "-way"
		for i := range d.Lines {
			r.halfs = append(r.halfs, halfOf(d, &d.Lines[i], ways))
		}
	case "stud":
		r.right = count(ends, "ring")
		on := ""
		if d.BoltedTo != nil {
			on = "on " + d.BoltedTo.Name
		}
		r.label = joined(d.Label, on, d.Thread)
	}
	if d.Existing {
		r.right = "existing, " + r.right
	}
	if d.Option != nil {
		r.right = "option " + d.Option.Name + ", " + r.right
	}
	r.addNotes(held)
	return r
}

// addNotes gives lines below the row to what is too long for it, to the plugs
// of the device, and to what a box holds.
func (r *row) addNotes(held []string) {
	note := func(s string) {
		r.notes = append(r.notes, scene.Wrap(s, small, false, colW-5, 3)...)
	}
	if scene.Width(r.label, small, false) > r.room() {
		note(r.label)
		r.label = ""
	}
	var plugs []string
	for _, g := range r.dev.Plugs {
		plugs = append(plugs, fmt.Sprintf("%s %d-way", g.Name, g.Ways))
	}
	if len(plugs) > 0 {
		note("plugs " + strings.Join(plugs, ", "))
	}
	if len(held) > 0 {
		note("holds " + strings.Join(ranges(held), ", "))
	}
}

// room is the width left for the label between name and figures.
func (r *row) room() float64 {
	return colW - 7 - min(scene.Width(r.name, small, true), colW*0.35) - min(scene.Width(r.right, small, false), colW*0.6)
}

// ranges shortens names that count up, three or more, to "F3 to F9".
func ranges(names []string) []string {
	var out []string
	for i := 0; i < len(names); {
		k := i + 1
		for k < len(names) && follows(names[k-1], names[k]) {
			k++
		}
		if k-i >= 3 {
			out = append(out, names[i]+" to "+names[k-1])
		} else {
			out = append(out, names[i:k]...)
		}
		i = k
	}
	return out
}

// follows reports whether two names differ by one in the figures at their end.
func follows(a, b string) bool {
	stem := strings.TrimRight(a, "0123456789")
	n, err := strconv.Atoi(a[len(stem):])
	return err == nil && b == stem+strconv.Itoa(n+1)
}

func joined(parts ...string) string {
	return strings.Join(slices.DeleteFunc(parts, func(s string) bool { return s == "" }), ", ")
}

func halfOf(d *model.Device, l *part.Line, ways int) half {
	h := half{line: l, name: l.Name, cavities: make([]*model.Wire, ways)}
	for _, v := range l.Values {
		if v.Word != "" {
			h.name += " " + v.Word
			break
		}
	}
	for n := range ways {
		name := l.CavityName(n + 1)
		for _, t := range d.Terminals {
			if t.Name == name && len(t.Ends) > 0 {
				h.cavities[n] = t.Ends[0].Wire
			}
		}
	}
	return h
}
