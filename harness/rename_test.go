package harness_test

import (
	"fmt"
	"slices"
	"strings"
)

// renamer gives everything in a draft another name.
type renamer struct {
	places, metals, devices, pins, numbers, circuits map[string]string
	back                                             map[string]string
}

// renamed gives the draft with other names, and the way back for wire numbers
// and for terminals as device.terminal.
func renamed(list []row) ([]row, func(string) string) {
	r := renamer{
		places: map[string]string{}, metals: map[string]string{}, devices: map[string]string{},
		pins: map[string]string{}, numbers: map[string]string{}, circuits: map[string]string{}, back: map[string]string{},
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

// collect makes up the new names; they count down, so that their order in any
// sorting is reversed as well.
func (r *renamer) collect(list []row) {
	fresh := func(set map[string]string, prefix, old string) {
		set[old] = fmt.Sprintf("%s%d", prefix, 90000-len(set))
		r.back[set[old]] = old
	}
	owner := ""
	for _, x := range list {
		switch {
		case x.head() == "place":
			fresh(r.places, "spot", x.words[1])
		case x.head() == "metal":
			fresh(r.metals, "mass", x.words[1])
		case x.head() == "circuit":
			fresh(r.circuits, "job", x.words[1])
		case x.isNumbered():
			fresh(r.numbers, "w", x.words[1])
		case x.isDevice():
			owner = x.words[1]
			fresh(r.devices, "Dev", owner)
		}
	}
	kind := ""
	for _, x := range list {
		if x.isDevice() {
			kind, owner = x.head(), x.words[1]
		}
		if x.level == 0 {
			if !x.isDevice() {
				kind = ""
			}
			continue
		}
		if x.isOfAny() {
			continue
		}
		switch kind {
		case "module":
			fresh(r.pins, "pin", owner+"."+x.words[0])
		case "connector", "box":
			fresh(r.pins, "side", owner+"."+x.words[1])
		}
	}
}

func swap(set map[string]string, word *string) {
	if name, known := set[*word]; known {
		*word = name
	}
}

// ref renames a terminal: device, then a pin, a half or a bus of it.
func (r *renamer) ref(word *string) {
	parts := strings.Split(*word, ".")
	if len(parts) > 1 {
		swap2(r.pins, parts[0], &parts[1])
	}
	swap(r.devices, &parts[0])
	*word = strings.Join(parts, ".")
}

func swap2(set map[string]string, owner string, word *string) {
	if name, known := set[owner+"."+*word]; known {
		*word = name
	}
}

func (r *renamer) apply(owner, x row) {
	w := x.words
	switch {
	case x.head() == "place":
		swap(r.places, &w[1])
	case x.head() == "leg":
		swap(r.places, &w[1])
		swap(r.places, &w[2])
	case x.head() == "metal":
		swap(r.metals, &w[1])
	case x.head() == "circuit":
		swap(r.circuits, &w[1])
	case x.head() == "cable":
		swap(r.numbers, &w[1])
	case x.isNumbered():
		swap(r.numbers, &w[1])
		r.ref(&w[2])
		r.ref(&w[3])
		if i := slices.Index(w, "via"); i >= 0 {
			swap(r.places, &w[i+1])
		}
	case x.head() == "spare":
		for i := range w[1:] {
			r.spare(owner, &w[1+i])
		}
	case x.isOfAny():
	case x.head() == "together":
		r.ref(&w[1])
		for i := 2; i < len(w); i++ {
			swap(r.numbers, &w[i])
		}
	case x.level > 0 && owner.head() == "module":
		swap2(r.pins, owner.words[1], &w[0])
	case x.level > 0 && (owner.head() == "connector" || owner.head() == "box"):
		swap2(r.pins, owner.words[1], &w[1])
		for i := 2; i < len(w); i++ {
			r.ref(&w[i])
		}
	case x.isDevice():
		r.device(w)
	}
}

// spare renames a terminal that stays free: by its half below a connector.
func (r *renamer) spare(owner row, word *string) {
	if owner.head() != "connector" {
		r.ref(word)
		return
	}
	half, cavity, _ := strings.Cut(*word, ".")
	swap2(r.pins, owner.words[1], &half)
	*word = half + "." + cavity
}

// isNumbered reports whether a row has a name of its own among the wires.
func (r row) isNumbered() bool {
	return r.isWire() || r.head() == "cable" || r.head() == "core" || r.head() == "drain"
}

// isOfAny reports whether a row below a device says no terminal of it.
func (r row) isOfAny() bool {
	return slices.Contains([]string{"spare", "plug", "accept", "note"}, r.head())
}

// device renames what a device's own line names.
func (r *renamer) device(w []string) {
	swap(r.devices, &w[1])
	for i := 2; i+1 < len(w); i++ {
		switch w[i] {
		case "at":
			swap(r.places, &w[i+1])
		case "on", "grounds-to", "ground-wanted":
			swap(r.metals, &w[i+1])
		case "in", "from":
			swap(r.devices, &w[i+1])
		}
	}
}

// original is the old name of a wire, a device or a terminal.
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
