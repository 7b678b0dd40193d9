package gauge

// profileSources are the documents behind the profiles, and those that
// disagree with them. Documents without a number of their own are named by
// what they are.
var profileSources = []Source{
	{"asked", "what was asked", stated, High, "a wire sized without a draft"},
	{"profile-fire", "Fire-apparatus specification: wire carries 125 % of its protection, drop at most 10 %; all else as on the road", read, High, "NFPA 1901, chapter on low-voltage systems, is remembered with the same words"},
	{"profile-track", "Course on engine conversions and racing texts: fuse 150 % of the load, every feed fused; all else as on the road", read, Medium, ""},
	{"fire-wire", "Fire-apparatus specification: wire carries 125 % of the current of its protection", read, High, ""},
	{"fuse-load-150", "Trade course on engine conversions: fuse 150 % of the largest load, next size up", read, High, "8 A of injectors behind 15 A"},
	{"fuse-over-rating", "Trade course on engine conversions: a fuse above the wire's continuous rating, since a short clears before the wire heats", read, Medium, "not followed: an overload is no short"},
	{"fuse-under-wire", "Trade and marine texts on fusing: never above the ampacity of the smallest wire it alone protects", read, High, "common practice; FAA AC 43.13-1B, 11-48 asks the same"},
	{"load-on-fuse-bay", "Vehicle guidance for added circuits: load at most 60 % of a fuse in the engine bay", read, High, ""},
	{"fuse-everything", "Hot-rod and racing texts: a fuse or a link on every feed from the battery, the starter's too", read, Medium, "they give no distance: 7 in is taken from boats"},
	{"drop-owner", "Owner's target for an accessory: 2 % of system volts", read, Low, "hints only"},
	{"insulation-zones", "Truck body-builder guide: insulation of 105 C in the cabin, 150 C in the engine bay", read, High, ""},
	{"insulation-cross-linked", "Cross-linked vehicle wire of 125 C in the engine bay", practice, Medium, ""},
	{"engine-strap", "Service texts on grounding: the strap of the engine is sized like the starter cable", practice, Medium, "half its copper is taken for the least"},
	{"starter-stud", "Service bulletin on starting circuits: battery to starter stud at most 0.4 V in a 15 s crank", read, High, ""},
	{"drain-35", "Trade article on key-off drain: 35 mA good, 50 mA the usual limit", read, Medium, ""},
	{"drain-small", "Manual of a small off-road vehicle: at most 10 mA", read, High, ""},
	{"ground-block", "Engine controller manual: power ground on block or head, never on the battery post", read, High, ""},
	{"ground-post", "Throttle-body conversion manual: feed and ground straight to the battery posts", read, Medium, ""},
	{"solder-none", "Engine controller manual: crimped contacts are not soldered", read, High, ""},
	{"solder-after", "Race-shop text: crimped, then soldered", read, Medium, "solder wicks up the strands and makes them brittle"},
}
