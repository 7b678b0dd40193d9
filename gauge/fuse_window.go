package gauge

import "fmt"

// WindowCase is a fuse to be chosen: what it feeds, and the wire behind it.
type WindowCase struct {
	Style    string  // of the fuse, see [FuseStyles]
	LoadA    float64 // continuous
	StartA   float64 // first current, 0: not known
	StartS   float64 // how long it lasts
	WireA    float64 // ampacity of the wire in its place, see [Ampacity]
	AmbientC float64 // place of the fuse, see PlaceKnown
	Known    bool    // AmbientC is stated
	Profile  Profile
}

// Window is what the load asks for at least and the wire allows at most, both
// in amperes, and the ratings between.
type Window struct {
	LeastA, MostA float64
	HintA         float64   // least with the heat of the place and the start counted in, from memory: a hint
	Ratings       []float64 // of the series, from LeastA to MostA
	RatedA        float64   // the smallest of them
	OK            bool      // there is one
	HintOK        bool      // RatedA is at least HintA
	Why           []Step
	Trouble       string // why there is none
}

// FuseWindow is the window of ratings for a load and a wire: at least the
// load over the share of the profile, at most the ampacity of the wire times
// what the profile allows. Heat at the fuse and the first current only hint,
// since their curves are from memory (sources fuse-margin, profile-road,
// profile-boat, profile-aircraft, fuse-ambient-blade, fuse-gates).
func FuseWindow(c WindowCase) Window {
	var w Window
	share, over := c.Profile.ChooseAt, c.Profile.FuseOverWire
	least, ok := LeastFuseA(c.LoadA, share, 1)
	switch {
	case !ok || !(c.LoadA > 0):
		w.Trouble = fmt.Sprintf("load %.4g A is not from 0 to %.4g A", c.LoadA, mostA)
		return w
	case !(c.WireA > 0 && c.WireA <= mostA) || !(over > 0 && over <= 10):
		w.Trouble = fmt.Sprintf("ampacity %.4g A is not from 0 to %.4g A", c.WireA, mostA)
		return w
	}
	w.LeastA, w.MostA = least, over*c.WireA
	w.Why = append(w.Why,
		Step{fmt.Sprintf("%.4g A may take %.0f %% of the fuse", c.LoadA, 100*share), "In >= I / share", w.LeastA, "A", "fuse-margin"},
		Step{fmt.Sprintf("profile %s lets the device be %.4g x the %.4g A of the wire", c.Profile.Name, over, c.WireA), "In <= share x ampacity", w.MostA, "A", c.Profile.Source},
	)
	w.hint(c)
	w.pick(c.Style)
	return w
}

// hint works out what memory adds to the least rating.
func (w *Window) hint(c WindowCase) {
	w.HintA = w.LeastA
	if share, _, ok := FuseAmbientShare(c.AmbientC); c.Known && ok {
		w.HintA = w.LeastA / share
		w.Why = append(w.Why, Step{fmt.Sprintf("usual curve: a blade in a place of %.4g C carries %.3g of its rating", c.AmbientC, share), "In >= I / (share x factor)", w.HintA, "A", "fuse-ambient-blade"})
	}
	if !(c.StartA > 0 && c.StartA <= mostA) || !(c.StartS > 0 && c.StartS <= mostS) {
		return
	}
	var best Gate
	for _, g := range gatesOf(c.Style) { // the largest share that outlasts the start
		if g.MinS >= c.StartS {
			best = g
		}
	}
	if best.Share == 0 {
		return
	}
	start := c.StartA / best.Share
	w.Why = append(w.Why, Step{fmt.Sprintf("first current %.4g A for %.3g s: the fuse holds %.3g x its rating for %.3g s", c.StartA, c.StartS, best.Share, best.MinS), "In >= I / share", start, "A", best.Source})
	w.HintA = max(w.HintA, start)
}

// pick takes the smallest rating of the series in the window.
func (w *Window) pick(style string) {
	f, known := fuseStyleOf(style)
	if !known {
		w.Trouble = "no series known for a fuse of style \"" + style + "\""
		return
	}
	for _, r := range f.RatingsA {
		if r >= w.LeastA && r <= w.MostA {
			w.Ratings = append(w.Ratings, r)
		}
	}
	if len(w.Ratings) == 0 {
		w.Trouble = fmt.Sprintf("no %s fuse from %.4g A, for the load, to %.4g A, for the wire", style, w.LeastA, w.MostA)
		return
	}
	w.RatedA, w.OK = w.Ratings[0], true
	w.HintOK = w.RatedA >= w.HintA
	w.Why = append(w.Why, Step{"smallest rating of the " + style + " series in the window", "", w.RatedA, "A", f.Source})
}

// LargestFuseA is the largest rating of a style that is not above ceilingA;
// ok is false when the series starts above (source as [FuseStyles]).
func LargestFuseA(style string, ceilingA float64) (ratedA float64, ok bool) {
	f, _ := fuseStyleOf(style)
	for _, r := range f.RatingsA {
		if r <= ceilingA {
			ratedA, ok = r, true
		}
	}
	return ratedA, ok
}

// NextSizeA is the largest rating of a style under a rule that lets the next
// size above the ampacity be taken, up to a share of it: 1.5 in 33 CFR
// 183.455(c)(2) at 50 V and above and in 46 CFR, 1.25 in a state standard
// (sources cfr-183-455-50v, cfr46-rating, state-dot-rating).
func NextSizeA(style string, ampacityA, share float64) (ratedA float64, ok bool) {
	f, _ := fuseStyleOf(style)
	for _, r := range f.RatingsA {
		if r > ampacityA {
			if r <= share*ampacityA {
				return r, true
			}
			break
		}
		if r == ampacityA {
			return r, true
		}
	}
	return LargestFuseA(style, ampacityA)
}
