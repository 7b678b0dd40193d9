package gauge

import "slices"

// profiles is in the order in which they are offered.
var profiles = [...]Profile{
	{
		Name: "road", Title: "Road vehicle",
		LoadOfFuse: LoadOfFuse, ChooseAt: ChooseAt, FuseOverWire: 1,
		DropCritical: DropCritical, DropOther: DropOther,
		FirstFuseM: FirstFuseM, SheathedM: SheathedFeedM,
		SmallestAWG: SmallestDryAWG, AloneAWG: SmallestWetAWG, SmallestMM2: 0.5, AloneMM2: 0.75,
		SizeSource: "smallest-wire", Source: "profile-road",
	},
	{
		Name: "boat", Title: "Boat",
		LoadOfFuse: LoadOfFuse, ChooseAt: ChooseAt, FuseOverWire: 1.5,
		DropCritical: DropCritical, DropOther: DropOther,
		FirstFuseM: FirstFuseM, SheathedM: SheathedFeedM, NearMust: true,
		SmallestAWG: 18, AloneAWG: 16, SmallestMM2: 0.75, AloneMM2: 1,
		SizeSource: "cfr-183-425-smallest", Source: "profile-boat",
	},
	{
		Name: "aircraft", Title: "Aircraft practice, conservative",
		LoadOfFuse: ChooseAt, ChooseAt: ChooseAt, FuseOverWire: 1,
		DropCritical: DropCritical, DropOther: 0.5 / 14,
		FirstFuseM: FirstFuseM, SheathedM: FirstFuseM,
		SmallestAWG: SmallestDryAWG, AloneAWG: SmallestWetAWG, SmallestMM2: 0.5, AloneMM2: 0.75,
		SizeSource: "smallest-wire", Source: "profile-aircraft",
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
