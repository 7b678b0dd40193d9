package gauge

// Family is a kind of insulation.
type Family struct {
	Name   string  // GXL, TXL, SXL, GPT, SGX ...
	TempC  float64 // class temperature of the conductor
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
	Source       string
}
