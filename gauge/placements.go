package gauge

import "slices"

// Placement is one published rule on which conductors need a protective
// device, where it sits and how large it may be. Rule-books disagree: each
// row names its document.
type Placement struct {
	ID          string
	Subject     string
	Limit       float64
	Unit        string // m, V, A, Ah, or share of the wire's ampacity, of the load or of the machine's current; empty: no figure
	Requirement string
	Source      string
	Document    string
	Exception   string
}

const (
	cfr33 = "33 CFR 183"
	abyc  = "ABYC E-11"
	iso   = "ISO 10133"
)

var placements = [...]Placement{
	{"who", "who needs protection", 0, "", "every ungrounded current-carrying conductor, by a fuse or a manually reset trip-free breaker", "cfr-183-455-who", cfr33 + ".455(a)", ""},
	{"source", "place of the first device", FirstFuseM, "m", "within 7 in of the source of power, along the conductor", "cfr-183-455-place", cfr33 + ".455(b)(1)", "at the source itself where that is practical"},
	{"source-sheathed", "place of the first device", SheathedM, "m", "within 40 in where the wire is in a sheath or enclosure all the way", "cfr-183-455-place", cfr33 + ".455(b)(2)", "only where 7 in is not practical"},
	{"rating-below-50v", "rating over ampacity", 1.5, "share", "at most 150 % of the table ampacity below 50 V", "cfr-183-455-rating", cfr33 + ".455(c)(1)", "no next-larger clause"},
	{"rating-from-50v", "rating over ampacity", 1, "share", "at most 100 % at 50 V and above, next standard size to 150 %", "cfr-183-455-50v", cfr33 + ".455(c)(2)", ""},
	{"volts", "rated volts", 0, "", "not below the volts of the circuit", "cfr-183-455-volts", cfr33 + ".455(d)", ""},
	{"exempt", "exemptions", FirstFuseM, "m", "pigtails under 7 in, resistance conductors, ignition high voltage", "cfr-183-455-exempt", cfr33 + ".455(e)", ""},
	{"battery", "battery conductor", SheathedFeedM, "m", "within 72 in of the battery", "cfr-183-460", cfr33 + ".460(a)", "main feed of a cranking motor"},
	{"alternator", "alternator output", 1.2, "share", "at most 120 % of the machine's rated current", "cfr-183-460", cfr33 + ".460(b)", "self-limiting machines"},
	{"stud", "live studs", 0, "", "protected as 183.455 asks, or an insulating boot or cover", "cfr-183-445", cfr33 + ".445(b)", ""},
	{"smallest", "smallest conductor", 16, "AWG", "16 AWG single, 18 AWG in a sheath", "cfr-183-425-smallest", cfr33 + ".425(d)-(e)", "18 AWG may leave its sheath by 30 in"},
	{"abyc-source", "place of the first device", FirstFuseM, "m", "within 7 in of the battery post", "abyc-feed", abyc, "engine and generator starting circuits"},
	{"battery-sheathed", "battery conductor", SheathedFeedM, "m", "within 72 in where sheathed or in conduit", "abyc-feed", abyc, "engine and generator starting circuits"},
	{"abyc-alternator", "alternator output", 1.016, "m", "no device where the machine limits itself and the lead is under 40 in, sheathed and not to the battery", "abyc-alternator", abyc, ""},
	{"abyc-rating", "rating over ampacity", 1, "share", "at most 100 %, next standard size to 150 %", "abyc-rating", abyc, ""},
	{"abyc-banks", "parallel banks", 500, "Ah", "above, a device of high breaking capacity between each battery and the main device", "abyc-banks", abyc + " (2025) 11.10.1.4.1", ""},
	{"iso-source", "battery conductor", 0.2, "m", "within 200 mm of the source, 1.8 m sheathed", "iso10133-memory", iso + " clause 8", "starting circuits"},
	{"iso-smallest", "smallest conductor", 1, "mm2", "1 mm2 single over 200 mm, 0.75 mm2 in a sheath", "iso10133-read", iso + " clause 7.7", "sheath exit to 800 mm"},
	{"iso-support", "support", 0.45, "m", "every 450 mm, battery conductors every 300 mm, the first within 1 m of the terminal", "iso10133-read", iso + " clauses 7.3 and 7.4", ""},
	{"iso-fuel", "battery and fuel", 0.3, "m", "metal fuel parts above and within 300 mm of a battery top are insulated; no battery over or under a tank or filter", "iso10133-read", iso + " clause 5", ""},
	{"rating-coast-guard", "rating over ampacity", 1.5, "share", "next larger device up to 150 % of the conductor's capacity", "cfr46-rating", "46 CFR 183.380", "lighting branches at most 30 A; motor devices carry the start"},
	{"rating-coast-guard-electric", "rating over ampacity", 1.5, "share", "next larger device up to 150 % of the conductor's capacity", "cfr46-rating", "46 CFR 111.50-3", "the heat of the place counts for the device too"},
	{"battery-each", "battery conductor", 0, "", "an overload device in each battery conductor", "cfr46-battery", "46 CFR 111.15-25", "cranking batteries, and 6 V or less"},
	{"truck", "who needs protection", 0, "", "every feed but cranking, battery and alternator leads, close to the source; those well insulated and routed", "rp111c", "TMC RP 111C", "headlamps on a device of their own"},
	{"truck-law", "who needs protection", 0, "", "wiring to SAE J1292 (1981)", "cfr49-393-28", "49 CFR 393.28", "asks for no trailer protection; a frame channel is no sheath"},
	{"rating-state", "rating over ampacity", 1.25, "share", "next larger device up to 125 % of the conductor's capacity", "state-dot-rating", "state standard for equipment, 3.4", ""},
	{"lamp-volts", "volts at a lamp", 0.85, "share", "at least 85 % of the bulb's design volts, engine running", "ccr13-1249", "13 CCR 1249(c)", ""},
	{"mine", "who needs protection", 0, "", "the starter lead too, close to the battery; nothing that resets itself", "cfr30-75-1910", "30 CFR 75.1910", "the starter's exemption is not universal"},
	{"load-side", "rating over load", 1.25, "share", "fuse at least 125 % of the load, at most the derated ampacity", "fuse-load-125", "practice", ""},
}

// Placements lists published rules on need, place and rating of protective
// devices (sources cfr-183-455-who, cfr-183-455-place, cfr-183-455-rating,
// cfr-183-455-50v, cfr-183-455-volts, cfr-183-455-exempt, cfr-183-460,
// cfr-183-445, cfr-183-425-smallest, abyc-feed, abyc-alternator, abyc-rating,
// abyc-banks, iso10133-memory, iso10133-read, cfr46-rating, cfr46-battery,
// rp111c, cfr49-393-28, state-dot-rating, ccr13-1249, cfr30-75-1910,
// fuse-load-125).
func Placements() []Placement { return slices.Clone(placements[:]) }

// PlacementOf finds a rule by its id.
func PlacementOf(id string) (Placement, bool) {
	i := slices.IndexFunc(placements[:], func(p Placement) bool { return p.ID == id })
	if i < 0 {
		return Placement{}, false
	}
	return placements[i], true
}
