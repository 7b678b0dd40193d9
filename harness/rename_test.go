package harness_test

import (
	"fmt"
	"maps"
	"slices"
	"strings"
)

// renamer gives everything in a draft another name. What an included file
// names keeps its name: the file is not the draft's own.
type renamer struct {
	places, metals, devices, circuits, options, parts, steps names
	numbers                                                  names // of wires and cables
	pins                                                     names // by owner.pin: terminals, halves, buses, what is marked on a device
	plugs                                                    names // by owner.plug
	back                                                     map[string]string
}

// names holds new names by old ones.
type names map[string]string

// renamed gives the draft with other names, and the way back for wire numbers,
// steps and for terminals as device.terminal.
func renamed(list []row) ([]row, func(string) string) {
	r := renamer{
		places: names{}, metals: names{}, devices: names{}, circuits: names{}, options: names{}, parts: names{}, steps: names{},
		numbers: names{}, pins: names{}, plugs: names{}, back: map[string]string{},
	}
	r.collect(list)
	out := clone(list)
	owner := row{}
	for _, x := range out {
		if x.level == 0 {
			owner = row{0, slices.Clone(x.words)}
		}
		r.apply(owner, x)
	}
	return out, r.original
}

// fresh makes up a name; names count down, so that their order in any sorting
// is reversed as well.
func (r *renamer) fresh(set names, prefix, old string) {
	set[old] = fmt.Sprintf("%s%d", prefix, 90000-len(set))
	r.back[set[old]] = old
}

func (r *renamer) collect(list []row) {
	owner := row{}
	for _, x := range list {
		if x.level == 0 {
			owner = x
		}
		switch {
		case x.head() == "place":
			r.fresh(r.places, "spot", x.words[1])
		case x.head() == "metal":
			r.fresh(r.metals, "mass", x.words[1])
		case x.head() == "circuit":
			r.fresh(r.circuits, "job", x.words[1])
		case x.head() == "option":
			r.fresh(r.options, "extra", x.words[1])
		case x.head() == "step" && !usualStep(x.words[1]):
			r.fresh(r.steps, "moment", x.words[1])
		case x.isWire(), x.head() == "cable":
			r.fresh(r.numbers, "w", x.words[1])
		case x.head() == "part":
			r.fresh(r.parts, "thing", x.words[2])
			r.marks(owner, x.words)
		case x.isDevice():
			r.fresh(r.devices, "Dev", x.words[1])
			r.marks(owner, x.words)
		case x.level > 0:
			r.line(owner, x.words)
		}
	}
	for _, x := range list {
		if i := slices.Index(x.words, "part"); x.isDevice() && i > 0 {
			r.inherit(x.words[1], x.words[i+1])
		}
	}
}

// usualStep reports whether a step is one that every draft has: its name is
// part of the language.
func usualStep(name string) bool {
	return slices.Contains([]string{"off", "acc", "prime", "koeo", "gap", "engage", "crank", "running", "stalled", "coast", "rest"}, name)
}

// belongs gives the kind of a device or a part, and the start of the names
// that belong to it.
func belongs(owner row) (kind, prefix string) {
	switch {
	case owner.head() == "part":
		return owner.words[1], "part " + owner.words[2] + "."
	case owner.isDevice():
		return owner.head(), owner.words[1] + "."
	}
	return "", ""
}

// line renames what a line below a device or a part declares.
func (r *renamer) line(owner row, w []string) {
	kind, prefix := belongs(owner)
	switch {
	case w[0] == "accept" || w[0] == "note" || w[0] == "spare":
	case kind == "module" && w[0] == "plug":
		r.fresh(r.plugs, "port", prefix+w[1])
	case kind == "module":
		r.fresh(r.pins, "pin", prefix+w[0])
	case kind == "connector" || kind == "box":
		r.fresh(r.pins, "side", prefix+w[1])
	}
}

// marks renames what is marked on a device.
func (r *renamer) marks(owner row, w []string) {
	_, prefix := belongs(owner)
	for _, i := range markedAt(w) {
		r.fresh(r.pins, "mark", prefix+w[i])
	}
}

// markedAt gives the places of the names in "marked B 30 ACC 75": each behind
// the kind's own name, which is a number or starts with a capital.
func markedAt(w []string) (at []int) {
	i := slices.Index(w, "marked")
	for i++; i > 0 && i+1 < len(w) && strings.ContainsAny(w[i][:1], "ABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789+-"); i += 2 {
		at = append(at, i+1)
	}
	return at
}

// inherit gives a device the names of the lines and marks of its part.
func (r *renamer) inherit(device, part string) {
	for old, now := range maps.Clone(r.pins) {
		pin, ok := strings.CutPrefix(old, "part "+part+".")
		if _, own := r.pins[device+"."+pin]; ok && !own {
			r.pins[device+"."+pin] = now
		}
	}
}

func (n names) swap(word *string) {
	if name, known := n[*word]; known {
		*word = name
	}
}

// swapOf renames what belongs to an owner, or the first part of it: a half
// before its cavity, a plug before its.
func (n names) swapOf(prefix string, word *string) {
	first, rest, dotted := strings.Cut(*word, ".")
	if name, known := n[prefix+first]; known {
		*word = name
		if dotted {
			*word += "." + rest
		}
	}
}

// ref renames a terminal: device, then a pin, a half or a bus of it.
func (r *renamer) ref(word *string) {
	device, pin, dotted := strings.Cut(*word, ".")
	if dotted {
		r.pins.swapOf(device+".", &pin)
		pin = "." + pin
	}
	r.devices.swap(&device)
	*word = device + pin
}

func (r *renamer) refs(words []string) {
	for i := range words {
		r.ref(&words[i])
	}
}

// original is the old name of a wire, a step, a device or a terminal.
func (r *renamer) original(name string) string {
	device, pin, dotted := strings.Cut(name, ".")
	if old, known := r.back[device]; known {
		device = old
	}
	if !dotted {
		return device
	}
	first, rest, more := strings.Cut(pin, ".")
	for old, now := range r.pins {
		if now == first && strings.HasPrefix(old, device+".") {
			first = strings.TrimPrefix(old, device+".")
		}
	}
	if more {
		first += "." + rest
	}
	return device + "." + first
}
