package harness_test

import "strings"

// apply renames what a statement names.
func (r *renamer) apply(owner, x row) {
	w := x.words
	switch {
	case x.head() == "place":
		r.places.swap(&w[1])
	case x.head() == "leg":
		r.places.swap(&w[1])
		r.places.swap(&w[2])
	case x.head() == "metal":
		r.metals.swap(&w[1])
	case x.head() == "option":
		r.options.swap(&w[1])
	case x.head() == "step":
		r.steps.swap(&w[1])
		r.settings("", w[2:])
	case x.head() == "circuit":
		r.circuits.swap(&w[1])
		r.settings("", w[2:])
	case x.isWire():
		r.numbers.swap(&w[1])
		r.refs(w[2:4])
		r.settings("", w[4:])
	case x.head() == "cable":
		r.numbers.swap(&w[1])
		r.settings("", w[2:])
	case x.head() == "together":
		r.ref(&w[1])
		for i := range w[2:] {
			r.numbers.swap(&w[2+i])
		}
	default:
		r.applyDevice(owner, x)
	}
}

// applyDevice renames what a device, a part or a line below one names.
func (r *renamer) applyDevice(owner, x row) {
	w := x.words
	kind, prefix := belongs(owner)
	switch {
	case x.head() == "accept" || x.head() == "note" || x.head() == "include":
	case x.head() == "spare":
		for i := range w[1:] {
			if short := w[1+i]; kind == "" {
				r.ref(&w[1+i])
			} else if r.pins.swapOf(prefix, &w[1+i]); short == w[1+i] {
				r.ref(&w[1+i])
			}
		}
	case x.level == 0 && x.head() == "part":
		r.own(prefix, w)
		r.parts.swap(&w[2])
		r.settings(prefix, w[3:])
	case x.isDevice():
		r.own(prefix, w)
		r.devices.swap(&w[1])
		r.settings(prefix, w[2:])
	case kind == "module" && x.head() == "plug":
		r.plugs.swapOf(prefix, &w[1])
		r.settings(prefix, w[2:])
	case kind == "module":
		r.pins.swapOf(prefix, &w[0])
		r.settings(prefix, w[1:])
	case kind == "box":
		r.pins.swapOf(prefix, &w[1])
		r.refs(w[2:])
	case kind == "connector":
		r.pins.swapOf(prefix, &w[1])
		r.settings(prefix, w[2:])
	}
}

// own renames what is marked on a device.
func (r *renamer) own(prefix string, w []string) {
	for _, i := range markedAt(w) {
		r.pins.swapOf(prefix, &w[i])
	}
}

// settings renames what settings and words name; prefix is that of what
// belongs to the device that says it.
func (r *renamer) settings(prefix string, w []string) {
	for i := 0; i+1 < len(w); i++ {
		to := &w[i+1]
		switch w[i] {
		case "at":
			r.spot(prefix, to)
		case "via":
			*to = listed(*to, r.places.swap)
		case "on", "grounds-to", "ground-wanted":
			r.metals.swap(to)
		case "in":
			r.devices.swap(to)
		case "from":
			r.ref(to)
		case "fed-by":
			r.pins.swapOf(prefix, to)
		case "part":
			r.parts.swap(to)
		case "terminals", "seals":
			*to = listed(*to, r.parts.swap)
		case "option":
			r.options.swap(to)
		case "when":
			*to = listed(*to, r.steps.swap)
		case "like", "after":
			r.steps.swap(to)
		}
	}
}

// spot renames a place, a leg by its two places, or the plug of a cavity.
func (r *renamer) spot(prefix string, word *string) {
	if strings.Contains(*word, ".") {
		r.plugs.swapOf(prefix, word)
		return
	}
	places := strings.Split(*word, "-")
	for i := range places {
		r.places.swap(&places[i])
	}
	*word = strings.Join(places, "-")
}
