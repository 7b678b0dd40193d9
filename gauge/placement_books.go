package gauge

import "fmt"

// FirstDevice is a conductor from a source of power to its first protective
// device.
type FirstDevice struct {
	LengthM  float64 // of conductor from the source
	Battery  bool    // the source is a battery
	Sheathed bool    // in a sheath or enclosure all the way
	Starter  bool    // main feed of a cranking motor
}

// PlaceVerdict is what one rule-book says of the place of a first device.
type PlaceVerdict struct {
	Book   string // 33 CFR 183, ABYC E-11, ISO 10133
	LimitM float64
	Exempt bool
	OK     bool
	Why    Step
}

// placeRule is one row of a book: the first that fits a case counts.
type placeRule struct {
	book             string
	battery          bool // for conductors of a battery only
	sheathed, exempt bool
	limitM           float64
	source           string
}

// placeRules keep the books apart: the 72 in of 33 CFR belongs to the
// battery conductor (183.460), sheathed or not, and its 40 in to other
// sources (183.455); ABYC and ISO ask for the sheath.
var placeRules = [...]placeRule{
	{cfr33, true, false, true, SheathedFeedM, "cfr-183-460"},
	{cfr33, false, true, false, SheathedM, "cfr-183-455-place"},
	{cfr33, false, false, false, FirstFuseM, "cfr-183-455-place"},
	{abyc, true, true, true, SheathedFeedM, "abyc-feed"},
	{abyc, true, false, true, FirstFuseM, "abyc-feed"},
	{abyc, false, false, false, FirstFuseM, "abyc-feed"},
	{iso, true, true, true, 1.8, "iso10133-memory"},
	{iso, true, false, true, 0.2, "iso10133-memory"},
	{iso, false, false, false, 0.2, "iso10133-memory"},
}

// PlaceVerdicts asks each rule-book for the place of a first device; they
// disagree, and that is shown. ok is false unless the length is from 0 to
// 1000 m. A verdict whose source does not decide is a hint (sources
// cfr-183-455-place, cfr-183-460, abyc-feed, iso10133-memory).
func PlaceVerdicts(d FirstDevice) (all []PlaceVerdict, ok bool) {
	if !(d.LengthM >= 0 && d.LengthM <= 1000) {
		return nil, false
	}
	for _, book := range []string{cfr33, abyc, iso} {
		for _, r := range placeRules {
			if r.book != book || r.battery && !d.Battery || r.sheathed && !d.Sheathed {
				continue
			}
			v := PlaceVerdict{Book: book, LimitM: r.limitM, Exempt: r.exempt && d.Starter}
			v.OK = v.Exempt || d.LengthM <= r.limitM*(1+1e-9)
			v.Why = Step{fmt.Sprintf("%s: first device within %.4g m of conductor", book, r.limitM), "L <= limit", d.LengthM, "m", r.source}
			if v.Exempt {
				v.Why.Text = book + ": the starting circuit is exempt"
			}
			all = append(all, v)
			break
		}
	}
	return all, true
}
