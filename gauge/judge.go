package gauge

// WireCase is everything that is asked of one wire. Zero values mean "not
// asked", save for Size and Family, which must be set.
type WireCase struct {
	Size     Size
	Family   Family
	Profile  Profile
	AmbientC float64 // hottest place on its way
	Loaded   int     // conductors loaded together in its bundle, itself included; 0 or 1: alone
	LengthM  float64

	HeatA    float64 // r.m.s. current over duty
	FuseA    float64 // smallest device that protects it on the worst source path; 0: none asked
	FuseName string
	Exempt   string // why no protection is asked (starter cable), "" if asked

	ShortA   float64 // least current of a short at its far end; 0: not known
	FuseKind string  // blade, bolt-down, link, breaker: for its opening gate

	MaxOhm float64 // largest resistance allowed by drop, at conductor temperature; 0: not asked
	Wet    bool
	Single bool // runs alone, outside a bundle
}

// Limit is one floor of a judged wire: what the wire gives against what is asked.
type Limit struct {
	Name  string // ampacity, protection, short circuit, drop, mechanical
	Got   float64
	Asked float64
	Unit  string
	OK    bool
	Hint  bool // rests on a figure that may not decide: shown, never a verdict
	Why   []Step
}

// Judgement is the outcome of [JudgeWire]: every floor with its working.
type Judgement struct {
	Case    WireCase
	Limits  []Limit
	OK      bool
	Governs string  // floor with the least margin
	TempC   float64 // conductor temperature
}
