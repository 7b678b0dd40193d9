package gauge

import "slices"

// SupplyCase is one case of the supply that equipment has to stand.
type SupplyCase struct {
	SystemV       float64
	Name          string
	LeastV, MostV float64 // 0: no figure
	Lasts         string
	Note          string
	Source        string
}

var supplyCases = [...]SupplyCase{
	{12, "code A", 6, 16, "continuous", "", "iso16750-codes"},
	{12, "code B", 8, 16, "", "", "iso16750-codes"},
	{12, "code C", 9, 16, "", "", "iso16750-codes"},
	{12, "code D", 10.5, 16, "", "", "iso16750-codes"},
	{24, "code E", 10, 32, "", "", "iso16750-codes"},
	{24, "code F", 16, 32, "", "", "iso16750-codes"},
	{24, "code G", 22, 32, "", "", "iso16750-codes"},
	{24, "code H", 18, 32, "", "", "iso16750-codes"},
	{12, "test volts, running", 0, 14, "", "", "iso16750-dump"},
	{24, "test volts, running", 0, 28, "", "", "iso16750-dump"},
	{12, "regulator fault", 0, 18, "60 min, hot", "", "iso16750-codes"},
	{24, "regulator fault", 0, 36, "60 min", "", "iso16750-codes"},
	{12, "jump start", 0, 24, "60 s", "", "iso16750-codes"},
	{12, "jump start, maker's", 0, 26, "", "", "jump-oem"},
	{12, "reverse battery", -14, 0, "60 s", "", "iso16750-codes"},
	{24, "reverse battery", -28, 0, "60 s", "", "iso16750-codes"},
	{12, "load dump A, peak", 79, 101, "40 to 400 ms", "0.5 to 4 ohm, ten, a minute apart", "iso16750-dump"},
	{24, "load dump A, peak", 151, 202, "100 to 350 ms", "1 to 8 ohm", "iso16750-dump"},
	{12, "load dump B, clamped", 0, 35, "as A", "five", "iso16750-dump"},
	{24, "load dump B, clamped", 0, 58, "as A", "customer's value, usual", "iso16750-dump"},
	{12, "pulse 1", -100, 0, "2 ms", "10 ohm", "iso7637-pulses"},
	{12, "pulse 2", 0, 100, "0.2 ms", "10 ohm", "iso7637-pulses"},
	{12, "pulse 3a", -150, 0, "0.1 us", "", "iso7637-pulses"},
	{12, "pulse 4", -7, 0, "100 ms", "below the battery's volts, 0.01 ohm", "iso7637-pulses"},
	{12, "cold crank, worst dip", 3, 0, "15 to 50 ms", "then about 6 V for seconds", "crank-primer"},
	{12, "normal, trucks", 9, 16, "", "", "j1455"},
	{24, "normal, trucks", 18, 32, "", "", "j1455"},
	{12, "cold crank at -40 C, trucks", 4.5, 0, "", "", "j1455-low"},
	{12, "jump start, trucks", 0, 24, "", "", "j1455"},
	{12, "reverse polarity, trucks", -12, 0, "5 min", "", "j1455-low"},
}

// SupplyCases lists what the supply of a vehicle may do to equipment (sources
// iso16750-codes, iso16750-dump, iso7637-pulses, crank-primer, jump-oem,
// j1455, j1455-low).
func SupplyCases() []SupplyCase { return slices.Clone(supplyCases[:]) }

// CrankLevel is a starting profile: the supply dips to DipV, then cranks at
// RunV.
type CrankLevel struct {
	SystemV    float64
	Level      string
	DipV, RunV float64
	FallMS     float64
	DipMS      float64 // lasts
	RiseMS     float64 // from the dip
	RunMS      float64 // lasts
	EndMS      float64 // rise to normal
	Source     string
}

var crankLevels = [...]CrankLevel{
	{12, "I", 8.0, 9.5, 5, 15, 50, 1000, 40, "iso16750-crank"},
	{12, "II", 4.5, 6.5, 5, 15, 50, 10000, 100, "iso16750-crank"},
	{12, "III", 3.0, 5.0, 5, 15, 50, 1000, 100, "iso16750-crank"},
	{12, "IV", 6.0, 6.5, 5, 15, 50, 10000, 100, "iso16750-crank"},
	{24, "I", 10, 20, 10, 50, 50, 1000, 40, "iso16750-crank"},
	{24, "II", 8, 15, 10, 50, 50, 10000, 100, "iso16750-crank"},
	{24, "III", 6, 10, 10, 50, 50, 1000, 40, "iso16750-crank"},
}

// CrankLevels lists starting profiles. They are from memory and only hint
// (source iso16750-crank).
func CrankLevels() []CrankLevel { return slices.Clone(crankLevels[:]) }

// CrankLevelOf finds a starting profile for a system of 12 or 24 V by its
// level I to IV (source iso16750-crank).
func CrankLevelOf(systemV float64, level string) (CrankLevel, Confidence, bool) {
	i := slices.IndexFunc(crankLevels[:], func(l CrankLevel) bool { return l.SystemV == systemV && l.Level == level })
	if i < 0 {
		return CrankLevel{}, 0, false
	}
	return crankLevels[i], confidenceOf(crankLevels[i].Source), true
}

// CrankFigure is one figure of cranking practice.
type CrankFigure struct {
	Subject     string
	Least, Most float64 // 0: no figure
	Unit        string
	Note        string
	Source      string
}

var crankFigures = [...]CrankFigure{
	{"starter, four cylinders, most at test", 150, 185, "A", "normally below 100 A", "starter-handout"},
	{"starter, six cylinders, most at test", 160, 200, "A", "normally below 125 A", "starter-handout"},
	{"starter, eight cylinders, most at test", 185, 250, "A", "normally below 150 A", "starter-handout"},
	{"starter, four cylinders", 100, 200, "A", "warm", "starter-article"},
	{"starter, six cylinders", 150, 250, "A", "", "starter-article"},
	{"starter, eight cylinders", 300, 0, "A", "and above", "starter-article"},
	{"starter, diesel", 400, 0, "A", "and above", "starter-article"},
	{"starter, cold over warm", 2, 2, "x", "150 A warm, 300 A cold", "starter-article"},
	{"battery while cranking, least", 9.6, 10.5, "V", "usual acceptance at 20 C", "crank-accept"},
	{"battery while cranking, maker's limit", 9.5, 0, "V", "below it the battery is tested", "crank-accept"},
	{"sag of ISO 7637 pulse 4, lasts", 15, 40, "ms", "12 V; 50 to 100 ms at 24 V", "iso7637-crank"},
}

// CrankFigures lists figures of cranking practice (sources starter-handout,
// starter-article, crank-accept, iso7637-crank).
func CrankFigures() []CrankFigure { return slices.Clone(crankFigures[:]) }
