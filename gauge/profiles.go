package gauge

import "slices"

// bodyBuilderLoad is the continuous current of the body-builder table over
// its fuse: 10.5 A on 15 A, 14 on 20, 17.5 on 25, 21 on 30, 28 on 40, 42 on 60
// (source body-builder-metric).
const bodyBuilderLoad = 0.7

const (
	trackLoad     = 1 / 1.5  // fuse at 150 % of the largest load (source fuse-load-150)
	fireWireShare = 1 / 1.25 // wire carries 125 % of its protection (source fire-wire)
)

// profiles is in the order in which they are offered.
var profiles = [...]Profile{
	{
		Name: "road", Title: "Road vehicle",
		LoadOfFuse: LoadOfFuse, ChooseAt: ChooseAt, FuseOverWire: 1,
		DropCritical: DropCritical, DropOther: DropOther,
		FirstFuseM: FirstFuseM, SheathedM: SheathedFeedM,
		Dry: Smallest{SmallestDryAWG, 0.5}, Wet: Smallest{SmallestWetAWG, 0.75}, Alone: Smallest{SmallestWetAWG, 0.75},
		SizeSource: "smallest-wire", Source: "profile-road",
	},
	{
		Name: "boat", Title: "Boat",
		LoadOfFuse: LoadOfFuse, ChooseAt: ChooseAt, FuseOverWire: 1.5,
		DropCritical: DropCritical, DropOther: DropOther,
		FirstFuseM: FirstFuseM, SheathedM: SheathedFeedM, NearMust: true,
		Dry: Smallest{18, 0.75}, Wet: Smallest{18, 0.75}, Alone: Smallest{16, 1},
		SizeSource: "cfr-183-425-smallest", Source: "profile-boat",
		Area: AreaAWG, DropBy: DropChart, InsulationC: 105,
	},
	{
		Name: "aircraft", Title: "Aircraft practice, conservative",
		LoadOfFuse: ChooseAt, ChooseAt: ChooseAt, FuseOverWire: 1,
		DropCritical: DropCritical, DropOther: 0.5 / 14,
		FirstFuseM: FirstFuseM, SheathedM: FirstFuseM,
		Dry: Smallest{SmallestDryAWG, 0.5}, Wet: Smallest{SmallestWetAWG, 0.75}, Alone: Smallest{SmallestWetAWG, 0.75},
		SizeSource: "smallest-wire", Source: "profile-aircraft",
		Ampacity: AmpacityAircraft, Area: AreaAWG, InsulationC: 105,
	},
	{
		Name: "body-builder", Title: "Truck body builder, strict metric table",
		LoadOfFuse: bodyBuilderLoad, ChooseAt: bodyBuilderLoad, FuseOverWire: 1 / bodyBuilderLoad,
		DropCritical: DropCritical, DropOther: DropOther,
		FirstFuseM: FirstFuseM, SheathedM: SheathedFeedM,
		Dry: Smallest{SmallestDryAWG, 0.5}, Wet: Smallest{SmallestWetAWG, 0.75}, Alone: Smallest{SmallestWetAWG, 0.75},
		SizeSource: "smallest-wire", Source: "profile-body-builder",
		Ampacity: AmpacityBodyBuilder,
	},
	{
		Name: "fire", Title: "Fire apparatus",
		LoadOfFuse: LoadOfFuse, ChooseAt: ChooseAt, FuseOverWire: fireWireShare,
		DropCritical: DropCritical, DropOther: DropOther,
		FirstFuseM: FirstFuseM, SheathedM: SheathedFeedM,
		Dry: Smallest{SmallestDryAWG, 0.5}, Wet: Smallest{SmallestWetAWG, 0.75}, Alone: Smallest{SmallestWetAWG, 0.75},
		SizeSource: "smallest-wire", Source: "profile-fire",
	},
	{
		Name: "track", Title: "Track and race car",
		LoadOfFuse: trackLoad, ChooseAt: trackLoad, FuseOverWire: 1,
		DropCritical: DropCritical, DropOther: 0.05,
		FirstFuseM: FirstFuseM, SheathedM: FirstFuseM, NearMust: true,
		Dry: Smallest{SmallestDryAWG, 0.5}, Wet: Smallest{SmallestWetAWG, 0.75}, Alone: Smallest{SmallestWetAWG, 0.75},
		SizeSource: "smallest-wire", Source: "profile-track",
	},
	{
		Name: "thin-wall", Title: "Road vehicle, thin-wall cable at a rise of 40 K",
		LoadOfFuse: LoadOfFuse, ChooseAt: ChooseAt, FuseOverWire: 1,
		DropCritical: DropCritical, DropOther: DropOther,
		FirstFuseM: FirstFuseM, SheathedM: SheathedFeedM,
		Dry: Smallest{SmallestDryAWG, 0.5}, Wet: Smallest{SmallestWetAWG, 0.75}, Alone: Smallest{SmallestWetAWG, 0.75},
		SizeSource: "smallest-wire", Source: "profile-thin-wall",
		Ampacity: AmpacityThinWall, Area: AreaISO,
	},
	{
		Name: "vde", Title: "Single cores and cables, VDE 0298-4",
		LoadOfFuse: LoadOfFuse, ChooseAt: ChooseAt, FuseOverWire: 1,
		DropCritical: DropCritical, DropOther: DropOther,
		FirstFuseM: FirstFuseM, SheathedM: SheathedFeedM,
		Dry: Smallest{SmallestDryAWG, 0.5}, Wet: Smallest{SmallestWetAWG, 0.75}, Alone: Smallest{SmallestWetAWG, 0.75},
		SizeSource: "smallest-wire", Source: "profile-vde",
		Ampacity: AmpacityVDE, Area: AreaISO,
	},
}

// ProfileOf finds a set of limits by name.
func ProfileOf(name string) (Profile, bool) {
	i := slices.IndexFunc(profiles[:], func(p Profile) bool { return p.Name == name })
	if i < 0 {
		return Profile{}, false
	}
	return profiles[i], true
}

// Profiles lists the sets of limits; the first is the default.
func Profiles() []Profile { return slices.Clone(profiles[:]) }

// FuseCeilingA is the largest fuse that a conductor of a table ampacity may
// have below 50 V on a boat: 1.5 x ampacity (source cfr-183-455-rating).
func FuseCeilingA(ampacityA float64) float64 { return 1.5 * ampacityA }
