package gauge

import "slices"

// Figures taken where the draft states none. Each is listed with its source
// and confidence by [Defaults].
const (
	LoadOfFuse   = 0.80 // largest load over fuse rating before a warning
	ChooseAt     = 0.75 // a chosen fuse is at least load / this
	DropCritical = 0.03 // controller, pump, ignition: fraction of nominal volts
	DropOther    = 0.10 // everything else

	RelayContactOhm     = 0.005
	RelayCoilOhm        = 85.0
	PullInV             = 8.0       // surely in at 20 C
	ReleaseV            = 1.2       // surely out below, at 20 C
	CoilRise12C         = 52.0      // K at 12 V, see [CoilRiseC]
	OperateS            = 0.010     // relay closes
	ReleaseS            = 0.007     // relay opens
	MotorShareOfContact = 17.0 / 30 // motor or lamp rating over the resistive rating
	DriverDropV         = 0.5       // low-side driver at rated current, linear
	SwitchContactOhm    = 0.010     // key or switch contact
	RingJointOhm        = 0.0003    // bolted ring or stud
	CrimpOhm            = 0.0       // crimp, splice

	OffLeakOhm   = 1e6  // beside every load
	DiodeLeakOhm = 10e6 // diode, reverse
	DiodeV       = 0.6  // where it begins to conduct
	DiodeRatedV  = 0.7  // at rated current
	AsleepA      = 0.002
	LampRatedV   = 13.5 // volts at which a load without stated volts draws its rating

	RestEMF        = 12.65 // volts, 12 V battery
	CrankEMF       = 12.6
	ChargeCurrentA = 2.0
	ColdC          = -18.0 // corner of a cold start
	ColdStarter    = 2.0   // starter current there over the stated
	EngageShortS   = 0.015 // engage lasts from
	EngageLongS    = 0.040 // to
	GapS           = 0.050 // key travel where the draft is silent

	FirstFuseM    = 0.1778 // 7 in
	SheathedM     = 1.016  // 40 in, branch in a sheath, 33 CFR 183.455(b)(2)
	SheathedFeedM = 1.8288 // 72 in, battery conductor in a sheath
	TailM         = 0.0762 // 3 in at a device
	SpliceTailM   = 0.0
	ReterminateM  = 0.024  // two re-terminations of 12 mm at an end
	CutStepInchM  = 0.0127 // cut lengths go up to the next 1/2 in
	CutStepM      = 0.010  // or 10 mm

	SmallestDryAWG = 20
	SmallestWetAWG = 18
	LoadedShare    = 0.20 // a conductor counts as loaded from this share of its ampacity
	DesignMM2      = 10.0 // every unsized wire, for the design current
	MostSystemV    = 60.0 // above, no advice is given

	MostOfRatedVolts  = 4.0 / 3 // of system or rated volts: more is another system
	LeastOfRatedVolts = 0.75    // of system volts, from all sources together at rest
)

// Default is one figure that is taken where the draft states none.
type Default struct {
	Name   string
	Value  float64
	Unit   string
	Source string
}

// Defaults lists the figures taken where the draft states none, by topic.
func Defaults() []Default {
	return slices.Concat(electricDefaults(), buildDefaults(), usualDefaults())
}

func electricDefaults() []Default {
	return []Default{
		{"load on a fuse, most", LoadOfFuse, "", "load-on-fuse"},
		{"load on a fuse, when choosing", ChooseAt, "", "fuse-margin"},
		{"drop, controller pump ignition", DropCritical, "", "drop-3"},
		{"drop, other", DropOther, "", "drop-10"},
		{"fuse element rise", FuseRise, "", "blade-resistance"},
		{"bolt-down fuse, cold", BoltDownV, "V", "bolt-down-resistance"},
		{"relay contact", RelayContactOhm, "ohm", "relay-contact"},
		{"relay coil", RelayCoilOhm, "ohm", "relay-coil"},
		{"relay pull-in", PullInV, "V", "relay-pull-in"},
		{"relay release", ReleaseV, "V", "relay-release"},
		{"relay coil rise at 12 V", CoilRise12C, "K", "relay-coil-rise"},
		{"relay operate", OperateS, "s", "relay-times"},
		{"relay release time", ReleaseS, "s", "relay-times"},
		{"motor share of contact", MotorShareOfContact, "", "relay-motor"},
		{"low-side driver", DriverDropV, "V", "driver-drop"},
		{"key or switch contact", SwitchContactOhm, "ohm", "switch-contact"},
		{"ring or stud joint", RingJointOhm, "ohm", "ring-joint"},
		{"crimp or splice", CrimpOhm, "ohm", "crimp-joint"},
		{"leak beside a load", OffLeakOhm, "ohm", "off-leak"},
		{"leak of a diode", DiodeLeakOhm, "ohm", "off-leak"},
		{"diode, start", DiodeV, "V", "diode"},
		{"diode, rated", DiodeRatedV, "V", "diode"},
		{"module asleep", AsleepA, "A", "asleep"},
		{"rated volts of a load", LampRatedV, "V", "rated-volts"},
		{"battery at rest", RestEMF, "V", "battery-ocv"},
		{"battery while cranking", CrankEMF, "V", "crank-emf"},
		{"charge current", ChargeCurrentA, "A", "charge-current"},
		{"cold start", ColdC, "C", "battery-cca"},
		{"starter draw at cold start", ColdStarter, "", "cold-starter"},
		{"engage, from", EngageShortS, "s", "engage"},
		{"engage, to", EngageLongS, "s", "engage"},
		{"key gap", GapS, "s", "key-gap"},
		{"highest system volts", MostSystemV, "V", "sixty-volts"},
		{"most of rated volts", MostOfRatedVolts, "", "system-volts"},
		{"least of system volts", LeastOfRatedVolts, "", "system-volts"},
	}
}

func buildDefaults() []Default {
	return []Default{
		{"first fuse from source", FirstFuseM, "m", "cfr-183-455-place"},
		{"first fuse, branch in a sheath", SheathedM, "m", "cfr-183-455-place"},
		{"first fuse, battery conductor in a sheath", SheathedFeedM, "m", "abyc-feed"},
		{"tail at a device", TailM, "m", "tail"},
		{"tail at a splice", SpliceTailM, "m", "tail"},
		{"two re-terminations", ReterminateM, "m", "cut-allowance"},
		{"cut step, US", CutStepInchM, "m", "cut-step"},
		{"cut step, metric", CutStepM, "m", "cut-step"},
		{"smallest gauge, dry bundle", SmallestDryAWG, "AWG", "smallest-wire"},
		{"smallest gauge, wet or alone", SmallestWetAWG, "AWG", "smallest-wire"},
		{"share from which a conductor is loaded", LoadedShare, "", "loaded-share"},
		{"size for the design current", DesignMM2, "mm2", "design-size"},
	}
}
