package diagram

import (
	"slices"
	"strings"

	"legwork/harness/model"
	"legwork/harness/part"
)

// captions says for every track what it is for: the load on it, or else what
// tells most.
func (p *plan) captions() {
	for _, a := range p.panels {
		for _, t := range a.tracks {
			best, rank := "", 0
			for _, it := range t.items {
				if text, r := captionOf(it, t); r > rank {
					best, rank = text, r
				}
			}
			for _, s := range t.strands {
				if rank == 0 && s.run.w.Label != "" {
					best = s.run.w.Label
				}
				if s.bridges() || s.run.strap && best == "" {
					best = bridgeCaption(s)
				}
				if j := s.upper.joint; best == "" && j != nil {
					best = j.name
				}
				if j := s.lower.joint; best == "" && s.upper.box && j != nil {
					best = j.name
				}
			}
			t.caption = best
		}
	}
}

// captionOf gives the words of one item and how much they tell.
func captionOf(it *item, t *track) (string, int) {
	d := it.dev
	label := calledIn(d)
	switch {
	case isDeadEnd(d.Kind):
		return calledOn(d), 2
	case it.unit:
		return d.Name + " " + it.sub, 6
	case it.sub == "coil":
		return label + " coil", 9
	case it.mate != nil:
		return label, 4
	case it.form.cols > 1 && !it.form.lying:
		return label + it.pinOn(t), 5
	case d.Kind.Supplies != nil || d.Kind.Draws != nil:
		return label, 10
	case it.form.row == part.SensorRow || it.form.row == part.LoadRow:
		return label, 8
	case d.Kind.Couples != nil:
		return label, 1
	case d.Kind.Protects != nil:
		return label, 3
	}
	return label, 7
}

// calledIn gives the label of a device, or else the word of its kind.
func calledIn(d *model.Device) string {
	if d.Label != "" {
		return d.Label
	}
	r := []rune(d.Kind.Name)
	if len(r) == 0 {
		return d.Name
	}
	return strings.ToUpper(string(r[:1])) + string(r[1:])
}

// pinOn names the pin of a wide item that stands on the track, with a blank
// before it; the first column of a load speaks for the whole.
func (it *item) pinOn(t *track) string {
	for _, q := range it.pins {
		if attached(q.term) && it.cols[q.col].track() == t && (q.col > 0 || !isLoad(it)) && q.term.Metal == nil {
			return " " + q.term.Name
		}
	}
	return ""
}

// entry is one row of the device index.
type entry struct{ name, label, paths string }

// indexOf lists the devices of a sheet with their paths.
func (c *canvas) indexOf() []entry {
	paths := map[string][]int{}
	labels := map[string]string{}
	var names []string
	for _, it := range c.p.items {
		for _, q := range it.cols {
			t := q.track()
			if t.page != c.g {
				continue
			}
			if !named(it.dev) {
				continue
			}
			if paths[it.dev.Name] == nil {
				names = append(names, it.dev.Name)
				labels[it.dev.Name] = calledIn(it.dev)
			}
			paths[it.dev.Name] = append(paths[it.dev.Name], t.path)
		}
	}
	slices.SortFunc(names, byNumber)
	var out []entry
	for _, n := range names {
		out = append(out, entry{n, labels[n], ranges(paths[n])})
	}
	return out
}

// byNumber orders K2 before K10.
func byNumber(a, b string) int {
	cut := func(s string) (string, string) {
		i := len(s)
		for i > 0 && s[i-1] >= '0' && s[i-1] <= '9' {
			i--
		}
		return s[:i], s[i:]
	}
	wa, na := cut(a)
	wb, nb := cut(b)
	if wa != wb {
		return strings.Compare(wa, wb)
	}
	if len(na) != len(nb) {
		return len(na) - len(nb)
	}
	return strings.Compare(na, nb)
}

// ranges prints path numbers: 3-5, 9.
func ranges(list []int) string {
	slices.Sort(list)
	list = slices.Compact(list)
	var parts []string
	for i := 0; i < len(list); {
		k := i
		for k+1 < len(list) && list[k+1] == list[k]+1 {
			k++
		}
		if k > i {
			parts = append(parts, itoa(list[i])+"-"+itoa(list[k]))
		} else {
			parts = append(parts, itoa(list[i]))
		}
		i = k + 1
	}
	return strings.Join(parts, ", ")
}
