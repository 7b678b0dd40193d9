package diagram

import "legwork/harness/model"

// puzzle states what matters for the order of a section's tracks.
func (p *plan) puzzle(s *section) *puzzle {
	z := &puzzle{n: len(s.tracks)}
	p.addItems(z, s)
	for _, j := range p.joints {
		if b := j.barIn(s); b != nil {
			z.bars = append(z.bars, barSet{tracks: b.trackSet(), crossed: crossedBy(s, b)})
		}
	}
	studs := map[*joint]int{}
	for _, d := range s.strands {
		for _, j := range []*joint{d.upper.joint, d.lower.joint} {
			if j == nil || j.kind != studJoint {
				continue
			}
			if _, ok := studs[j]; !ok {
				studs[j] = len(z.studs)
				z.studs = append(z.studs, nil)
			}
			z.studs[studs[j]] = append(z.studs[studs[j]], d.col.track().index)
		}
	}
	addDrains(z, s)
	return z
}

// addDrains wants the drain of a cable beside one of its cores, so that one
// ring goes round both.
func addDrains(z *puzzle, s *section) {
	for _, d := range s.strands {
		if !d.run.w.Drain || d.run.w.Cable == nil || d.run.strap {
			continue
		}
		var cores set
		for _, o := range s.strands {
			if o.run.w.Cable == d.run.w.Cable && !o.run.w.Drain && !o.run.strap && o.col.track() != d.col.track() {
				cores = append(cores, o.col.track().index)
			}
		}
		if len(cores) > 0 {
			z.mates = append(z.mates, [2]set{{d.col.track().index}, cores})
		}
	}
}

func (p *plan) addItems(z *puzzle, s *section) {
	type key struct {
		dev  *model.Device
		slot int
	}
	units := map[key]int{}
	for _, it := range s.items {
		tracks := make(set, len(it.cols))
		for i, c := range it.cols {
			tracks[i] = c.track().index
		}
		if len(tracks) > 1 {
			z.groups = append(z.groups, tracks)
		}
		if it.mate != nil && it.mate.id < it.id && it.mate.sect == s {
			var others set
			for _, c := range it.mate.cols {
				others = append(others, c.track().index)
			}
			z.mates = append(z.mates, [2]set{tracks, others})
		}
		if !it.unit {
			continue
		}
		k := key{it.dev, it.slot}
		if _, ok := units[k]; !ok {
			units[k] = len(z.units)
			z.units = append(z.units, nil)
		}
		z.units[units[k]] = append(z.units[units[k]], tracks[0])
	}
}

// trackSet lists the tracks of everything that ends at the bar.
func (b *bar) trackSet() set {
	var out set
	for _, list := range [][]*member{b.uppers, b.lowers} {
		for _, m := range list {
			out = append(out, m.col().track().index)
		}
	}
	return out
}

// crossedBy lists the tracks of a section with a strand through the bar's gap
// that does not end there.
func crossedBy(s *section, b *bar) set {
	level := 10*b.gap + 5
	var out set
	for i, t := range s.tracks {
		for _, d := range t.strands {
			if d.top() < level && d.bottom() > level {
				out = append(out, i)
				break
			}
		}
	}
	return out
}
