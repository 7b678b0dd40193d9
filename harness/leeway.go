package harness

import (
	"context"
	"math"

	"legwork/harness/diag"
	"legwork/harness/model"
)

// Bounds of the search for leeway: a guess is moved by this factor at most,
// and halved towards the change so many times (to a tenth of the way).
const (
	leewayFactor = 4
	leewaySteps  = 4
	leewayMost   = 100 // guesses that are tried
	leewayWires  = 500 // in a draft of more none is
)

// Leeway says how far one guess can move before a wire, a fuse or a verdict
// changes. Figures are in base units.
type Leeway struct {
	Guess   model.Guess
	Tried   bool    // false: it is no figure, or too many are
	Down    float64 // lowest figure that was tried and changes nothing
	DownTo  string  // what changes below it, "" where nothing does down to a quarter or the least allowed
	Up      float64 // highest figure that was tried and changes nothing
	UpTo    string  // what changes above it, "" where nothing does up to four times or the most allowed
	Changes bool    // something changes either way
}

// Leeways moves each guess of a checked draft up and down, by a factor of four
// at most, and finds the nearest figures at which the outcome changes. It
// checks the draft anew for each figure, so it takes a while for a large one.
// A guess that is no figure, and any beyond the first hundred, is not tried;
// in a draft of more than 500 wires none is.
func (r *Result) Leeways(ctx context.Context) ([]Leeway, error) {
	if r.Sizes == nil {
		return nil, nil
	}
	was := r.outcome()
	list := make([]Leeway, 0, len(r.Model.Guesses))
	tried := 0
	for _, g := range r.Model.Guesses {
		l := Leeway{Guess: g}
		if !(g.Num > 0) || tried == leewayMost || len(r.Model.Wires) > leewayWires {
			list = append(list, l)
			continue
		}
		tried++
		l.Tried = true
		var err error
		if l.Down, l.DownTo, err = r.edge(ctx, was, g, math.Max(g.Num/leewayFactor, g.Least)); err != nil {
			return nil, err
		}
		if l.Up, l.UpTo, err = r.edge(ctx, was, g, math.Min(g.Num*leewayFactor, g.Most)); err != nil {
			return nil, err
		}
		l.Changes = l.DownTo != "" || l.UpTo != ""
		list = append(list, l)
	}
	return list, nil
}

// edge gives the figure farthest towards end that changes nothing, and what
// the next one tried changes; "" where nothing changes as far as end.
func (r *Result) edge(ctx context.Context, was outcome, g model.Guess, end float64) (figure float64, change string, err error) {
	if end == g.Num {
		return end, "", nil
	}
	change, err = r.changeAt(ctx, was, g, end)
	if change == "" || err != nil {
		return end, "", err
	}
	good, bad := g.Num, end
	for range leewaySteps {
		mid := math.Sqrt(good * bad)
		if !(bad > 0) {
			mid = (good + bad) / 2
		}
		what, err := r.changeAt(ctx, was, g, mid)
		switch {
		case err != nil:
			return 0, "", err
		case what == "":
			good = mid
		default:
			bad, change = mid, what
		}
	}
	return good, change, nil
}

// changeAt checks the draft with a guess at another figure and gives the first
// thing that comes out otherwise, "" for nothing.
func (r *Result) changeAt(ctx context.Context, was outcome, g model.Guess, to float64) (string, error) {
	setup := r.Draft.setup
	setup.Move = model.Move{Key: g.Key, To: to}
	m, found := r.Draft.rebuilt(setup)
	if found.Worst() >= diag.Fault {
		return "the draft can't be read so", nil
	}
	moved, err := r.Draft.check(ctx, m, r.Profile, r.Start)
	if err != nil {
		return "", err
	}
	return was.against(moved.outcome()), nil
}

// outcome is what a builder acts on: sizes, ratings and verdicts.
type outcome struct {
	order []string          // names in the order of report
	is    map[string]string // "wire 202": "10 AWG"
	found map[string]string // findings of warning and above: by what they say, without figures
	first []string          // their keys in order
}

func (r *Result) outcome() outcome {
	o := outcome{is: map[string]string{}, found: map[string]string{}}
	put := func(name, is string) {
		if _, known := o.is[name]; !known {
			o.order = append(o.order, name)
		}
		o.is[name] = is
	}
	for i := range r.Sizes.Wires {
		w := &r.Sizes.Wires[i]
		put("wire "+w.Wire.Number, w.Conductor.Size.Name)
	}
	for _, f := range r.Sizes.Fuses {
		put("fuse "+f.Device.Name, amps(f.RatedA))
	}
	for f := range r.Findings.AtLeast(diag.Warning) {
		key := f.Rule + f.At.String()
		if _, known := o.found[key]; !known {
			o.first = append(o.first, key)
			o.found[key] = f.Severity.String() + " " + f.Rule + " on line " + lineText(f.At)
		}
	}
	return o
}

// against gives the first thing that another outcome has otherwise.
func (o outcome) against(n outcome) string {
	for _, key := range n.first {
		if _, was := o.found[key]; !was {
			return n.found[key]
		}
	}
	for _, key := range o.first {
		if _, still := n.found[key]; !still {
			return "no " + o.found[key]
		}
	}
	for _, name := range o.order {
		if n.is[name] != o.is[name] {
			return name + " becomes " + n.is[name]
		}
	}
	return ""
}
