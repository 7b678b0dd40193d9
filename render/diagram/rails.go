package diagram

import (
	"cmp"
	"slices"
	"strconv"
	"strings"

	"legwork/harness/model"
)

// Order of the rails from the top: habit of the trade, battery first.
const (
	battClass = iota
	ignClass
	accClass
	startClass
	otherClass
)

// nameRails gives every rail its tag, its DIN 72552 number and a few words on
// when it is live, and puts them in order.
func (p *plan) nameRails() {
	for _, j := range p.rails {
		p.nameRail(j)
		if p.now != nil {
			j.about = p.now.railText(j)
		}
	}
	slices.SortStableFunc(p.rails, func(a, b *joint) int {
		return cmp.Or(cmp.Compare(a.class, b.class), cmp.Compare(a.far, b.far), cmp.Compare(a.id, b.id))
	})
	used := map[string]int{}
	for i, j := range p.rails {
		j.rank = i
		used[j.tag]++
		if n := used[j.tag]; n > 1 {
			j.tag += " " + strconv.Itoa(n)
		}
	}
}

func (p *plan) nameRail(j *joint) {
	at := j.terms[0]
	for _, t := range j.terms {
		if p.flow.fromPlus[t.ID] < p.flow.fromPlus[at.ID] {
			at = t
		}
	}
	j.far = p.flow.fromPlus[at.ID]
	fuse := ""
	for i := at.ID; i >= 0; {
		s := p.flow.back[i]
		switch s.what {
		case fuseStep:
			if fuse == "" {
				fuse = ", behind " + s.dev.Name
			}
		case contactStep:
			p.nameSwitched(j, s, i)
			return
		case outputStep, loadStep:
			j.class, j.tag, j.about = otherClass, s.dev.Name, "from "+s.dev.Name
			return
		}
		i = s.prev
	}
	j.class, j.tag, j.small, j.about = battClass, "BATT", "30", "always live"+fuse
}

// nameSwitched names a rail by what last switches it: by key position, or
// by the device whose contact it is.
func (p *plan) nameSwitched(j *joint, s step, out int) {
	d := s.dev
	to := p.m.Terminals[out]
	var at []string
	for _, l := range d.Lines {
		if l.Name != "gap" && s.prev >= 0 && contains(l.Refs, to.Name) && contains(l.Refs, p.m.Terminals[s.prev].Name) {
			at = append(at, l.Name)
		}
	}
	if len(at) == 0 {
		j.class, j.tag, j.small, j.about = otherClass, d.Name, to.Name, "from "+describe(d)
		return
	}
	j.about = "live with " + d.Name + " at " + strings.Join(at, ", ")
	run, crank, acc := contains(at, "run"), contains(at, "crank"), contains(at, "acc")
	switch {
	case run && crank:
		j.class, j.tag, j.small = ignClass, "IGN", "15"
	case crank:
		j.class, j.tag, j.small = startClass, "START", "50"
	case acc:
		j.class, j.tag, j.small = accClass, "ACC", "75"
	case run:
		j.class, j.tag, j.small = ignClass, "RUN", "15"
	default:
		j.class, j.tag, j.small = otherClass, d.Name, to.Name
	}
}

// describe gives name and label of a device.
func describe(d *model.Device) string {
	if d.Label == "" {
		return d.Name
	}
	return d.Name + " " + d.Label
}
