package gauge

// Family is a kind of insulation.
type Family struct {
	Name   string  // GXL, TXL, SXL, GPT, SGX ...
	Title  string  // what it is, in words
	TempC  float64 // class temperature of the conductor
	ShortC float64 // highest conductor temperature at the end of a short of up to 5 s
	Source string
}

// Profile is a named set of limits with sources.
type Profile struct {
	Name         string // road, boat, aircraft
	Title        string
	LoadOfFuse   float64 // largest share of a fuse's rating that the load may take before a warning: 0.80
	ChooseAt     float64 // a chosen fuse is at least load / ChooseAt: 0.75
	FuseOverWire float64 // largest rating over the wire's ampacity
	DropCritical float64 // fraction of nominal volts: controller, pump, ignition
	DropOther    float64

	FirstFuseM  float64 // conductor from the source to the first device; road only notes it
	SheathedM   float64 // the same where the conductor is sheathed all the way
	NearMust    bool    // a longer one breaks the rule of this profile
	SmallestAWG int     // smallest gauge in a dry bundle
	AloneAWG    int     // smallest gauge alone or in the wet
	SmallestMM2 float64 // smallest nominal area in a dry bundle
	AloneMM2    float64 // smallest nominal area alone or in the wet
	SizeSource  string  // source of the four smallest sizes
	Source      string
}
