package diagram

import (
	"strings"

	"legwork/harness/model"
	"legwork/harness/part"
	"legwork/render/scene"
)

// keyForm draws a switch with positions of its own: all pins up, a common bar
// below, one blade for each terminal that the positions join with the feed.
// ok is false where one terminal does not feed all others.
func (p *plan) keyForm(d *model.Device) (form, bool) {
	feed, joined := keyJoins(d)
	if feed == "" {
		return form{}, false
	}
	pins, closed := []string{feed}, map[string]bool{}
	for _, t := range d.Terminals {
		if !attached(t) || t.Name == feed {
			continue
		}
		if len(joined[t.Name]) == 0 {
			return form{}, false
		}
		pins = append(pins, t.Name)
		closed[t.Name] = p.closed(d, feed, t.Name)
	}
	return keyMarks(pins, joined, closed), len(pins) > 1
}

// keyJoins finds the terminal that most positions join to something, and for
// every other one the positions that join it to this one. The gap between two
// positions is passed, not taken: it is left out.
func keyJoins(d *model.Device) (feed string, joined map[string][]string) {
	count := map[string]int{}
	for _, l := range d.Lines {
		for _, r := range l.Refs {
			count[r]++
		}
	}
	for _, t := range d.Terminals {
		if count[t.Name] > count[feed] {
			feed = t.Name
		}
	}
	joined = map[string][]string{}
	for _, l := range d.Lines {
		if l.Name == "gap" || !contains(l.Refs, feed) {
			continue
		}
		for _, r := range l.Refs {
			if r != feed {
				joined[r] = append(joined[r], l.Name)
			}
		}
	}
	return feed, joined
}

func contains(list []string, word string) bool {
	for _, w := range list {
		if w == word {
			return true
		}
	}
	return false
}

func keyMarks(pins []string, joined map[string][]string, closed map[string]bool) form {
	last := float64(len(pins) - 1)
	f := form{half: 4, cols: len(pins), row: part.SwitchRow}
	edge := 2.0
	add := func(k part.StrokeKind, r float64, pts ...spot) {
		f.marks = append(f.marks, mark{kind: k, pts: pts, r: r})
	}
	add(part.Thin, 0, spot{0, -4, 0}, spot{0, 2.4, 0}, spot{0, 2.4, last})
	for i, name := range pins {
		c := float64(i)
		f.pins = append(f.pins, formPin{name, i, 0, -4})
		if i == 0 {
			continue
		}
		add(part.Thin, 0, spot{0, 2.4, c}, spot{0, 1.2, c})
		add(part.Dot, 0.22, spot{0, 1.2, c})
		add(part.Dot, 0.2, spot{0, 2.4, c})
		add(part.Thin, 0, spot{0, -1, c}, spot{0, -4, c})
		if closed[name] {
			add(part.Bold, 0, spot{0, 1.2, c}, spot{-0.12, -1.1, c})
		} else {
			add(part.Blade, 0, spot{0, 1.2, c}, spot{-1.35, -0.75, c})
		}
		for n, w := range stack(joined[name]) {
			f.marks = append(f.marks, mark{kind: part.Text, pts: []spot{{0.5, -1.9 + 1.15*float64(n), c}}, s: w, right: true})
			edge = max(edge, 0.9+scene.Width(w, sizeSmall, false)/module)
		}
	}
	f.body = [2]spot{{-3.4, -3.2, 0}, {edge, 3.6, last}}
	f.marks = append([]mark{{kind: part.Unit, pts: f.body[:]}}, f.marks...)
	add(part.Dashed, 0, spot{-1.6, 0.1, 0}, spot{-0.75, 0.1, last})
	add(part.Circle, 0.5, spot{-2.2, 0.1, 0})
	add(part.Thin, 0, spot{-2.2, 0.6, 0}, spot{-2.2, 1.5, 0})
	add(part.Thin, 0, spot{-2.2, 1.2, 0}, spot{-1.8, 1.2, 0})
	return f
}

// stack sets the names of positions in at most two lines.
func stack(words []string) []string {
	if len(words) < 2 {
		return words
	}
	half := (len(words) + 1) / 2
	return []string{strings.Join(words[:half], " "), strings.Join(words[half:], " ")}
}

// sensorForm draws a sensor by what is attached to it: a box with an arrow,
// signal or feed above, return below. A third pin stands in a second column.
func (p *plan) sensorForm(d *model.Device, groundUp bool) form {
	var names []string
	for _, t := range d.Terminals {
		if attached(t) && t.Name != d.Kind.Ground {
			names = append(names, t.Name)
		}
	}
	ground := terminalOf(d, d.Kind.Ground)
	if groundUp {
		names = append(names, ground.Name)
	}
	f := form{half: 3, cols: 1, row: part.SensorRow, body: [2]spot{{-1.6, -1.6, 0}, {1.6, 1.6, 0}}}
	line := func(pts ...spot) { f.marks = append(f.marks, mark{kind: part.Thin, pts: pts}) }
	f.marks = append(f.marks, mark{kind: part.Rect, pts: []spot{{-1.6, -1.6, 0}, {1.6, 1.6, 0}}})
	line(spot{-1, 1, 0}, spot{1, -1, 0})
	line(spot{0.4, -1, 0}, spot{1, -1, 0}, spot{1, -0.4, 0})
	for i, name := range names {
		f.pins = append(f.pins, formPin{name, i, 0, -3})
		if i == 0 {
			line(spot{0, -3, 0}, spot{0, -1.6, 0})
			continue
		}
		y := 1.6*float64(i-1)/float64(len(names)) + 0.2
		line(spot{1.6, y, 0}, spot{0, y, float64(i)}, spot{0, -3, float64(i)})
		f.body[1] = spot{0.4, 1.6, float64(i)}
	}
	if attached(ground) && !groundUp {
		f.pins = append(f.pins, formPin{ground.Name, 0, 0, 3})
		line(spot{0, 1.6, 0}, spot{0, 3, 0})
	}
	f.cols = max(len(names), 1)
	f.simple = len(f.pins) == 2 && f.cols == 1
	return f
}

// spread gives an attached pin that stands beside its column a column of its
// own, so that its wire has room for a label.
func spread(f form, d *model.Device) form {
	for i, q := range f.pins {
		if q.dx == 0 || !attached(terminalOf(d, q.name)) {
			continue
		}
		c := f.cols
		f.marks = append(f.marks, mark{kind: part.Thin, pts: []spot{{q.dx, q.y, float64(q.col)}, {q.dx, q.y * 0.75, float64(q.col)}, {0, q.y * 0.75, float64(c)}, {0, q.y, float64(c)}}})
		f.pins[i] = formPin{q.name, c, 0, q.y}
		f.cols++
	}
	return f
}
