package gauge

import "slices"

// AmpRow is one published current: by the area on the label, or by gauge.
type AmpRow struct {
	MM2  float64 // label; 0 in lists by gauge
	AWG  int     // in lists by gauge only
	Amps float64
	Low  float64 // another copy prints less: this; else 0
}

// AmpList is a published list of currents with what it says of its basis.
type AmpList struct {
	Name   string
	Title  string
	Basis  string
	ByAWG  bool
	Source string
	Rows   []AmpRow // ascending
}

// Careful is the lower of the printed currents of a row.
func (r AmpRow) Careful() float64 {
	if r.Low > 0 {
		return r.Low
	}
	return r.Amps
}

var ampLists = [...]AmpList{
	{
		Name: "body-builder", Title: "Strict metric table of a truck body-builder guide", Source: "body-builder-metric",
		Basis: "continuous current at 40 C, seven tenths of the fuse",
		Rows: []AmpRow{
			{MM2: 0.5, Amps: 5, Low: 3.5}, {MM2: 0.85, Amps: 7}, {MM2: 1.25, Amps: 10.5}, {MM2: 2, Amps: 14},
			{MM2: 3, Amps: 17.5}, {MM2: 5, Amps: 21}, {MM2: 8, Amps: 28}, {MM2: 10, Amps: 35}, {MM2: 15, Amps: 42},
			{MM2: 20, Amps: 56}, {MM2: 30, Amps: 70}, {MM2: 40, Amps: 87.5}, {MM2: 60, Amps: 105}, {MM2: 85, Amps: 140},
		},
	},
	{
		Name: "body-builder-gauge", Title: "Table by gauge of a truck body-builder guide", Source: "body-builder-gauge", ByAWG: true,
		Basis: "largest current of cross-linked wire, ambient not stated",
		Rows: []AmpRow{
			{AWG: 20, Amps: 14}, {AWG: 18, Amps: 18}, {AWG: 16, Amps: 24}, {AWG: 14, Amps: 34},
			{AWG: 12, Amps: 42}, {AWG: 10, Amps: 58}, {AWG: 8, Amps: 80}, {AWG: 6, Amps: 110},
		},
	},
	{
		Name: "thin-wall", Title: "Thin-wall vehicle cable, maker's list", Source: "thin-wall-list",
		Basis: "not stated; a rise of 40 K by the heat balance",
		Rows:  thinWallRows(),
	},
	{
		Name: "vde", Title: "Single PVC core in air", Source: "vde-group3",
		Basis: "70 C conductor in air at 30 C; the lower of two copies counts",
		Rows: []AmpRow{
			{MM2: 0.75, Amps: 15}, {MM2: 1, Amps: 19}, {MM2: 1.5, Amps: 24, Low: 21}, {MM2: 2.5, Amps: 32, Low: 29},
			{MM2: 4, Amps: 42, Low: 39}, {MM2: 6, Amps: 54, Low: 51}, {MM2: 10, Amps: 73}, {MM2: 16, Amps: 98, Low: 94},
			{MM2: 25, Amps: 129}, {MM2: 35, Amps: 158}, {MM2: 50, Amps: 198}, {MM2: 70, Amps: 245}, {MM2: 95, Amps: 292},
			{MM2: 120, Amps: 344}, {MM2: 150, Amps: 391}, {MM2: 185, Amps: 448},
		},
	},
	{
		Name: "uk-pvc", Title: "Standard PVC vehicle cable, UK list", Source: "uk-cable-list",
		Basis: "continuous; loses about 0.8 V over 5 m",
		Rows: []AmpRow{
			{MM2: 0.65, Amps: 5.75}, {MM2: 1, Amps: 8.75}, {MM2: 1.5, Amps: 12.75}, {MM2: 2, Amps: 17.5},
			{MM2: 2.5, Amps: 21.75}, {MM2: 3, Amps: 25.5},
		},
	},
	{
		Name: "australian", Title: "Australian vehicle cable, sold by outside diameter", Source: "australian-cable-list",
		Basis: "not stated; 3, 4, 5 and 6 mm on the label",
		Rows:  []AmpRow{{MM2: 1.13, Amps: 20}, {MM2: 1.84, Amps: 28}, {MM2: 2.9, Amps: 37}, {MM2: 4.59, Amps: 48}},
	},
	{
		Name: "space", Title: "Space agency parts list", Source: "space-list", ByAWG: true,
		Basis: "200 C wire in a bundle of 15 and more, 70 C, vacuum",
		Rows:  []AmpRow{{AWG: 20, Amps: 3.7}},
	},
}

func thinWallRows() (rows []AmpRow) {
	for _, w := range thinWallCable {
		rows = append(rows, AmpRow{MM2: w.mm2, Amps: w.amps})
	}
	return rows
}

// AmpLists gives the published lists of currents beside 33 CFR 183.425 table
// 5 and FAA AC 43.13-1B table 11-9: they differ up to 3.6 times on the same
// copper, since each has its own basis.
func AmpLists() []AmpList { return slices.Clone(ampLists[:]) }

// AmpListOf finds a list by its name.
func AmpListOf(name string) (l AmpList, ok bool) {
	i := slices.IndexFunc(ampLists[:], func(l AmpList) bool { return l.Name == name })
	if i < 0 {
		return AmpList{}, false
	}
	return ampLists[i], true
}

// At is the careful current for an area of mm2: the last row whose label is
// no more than slack above it (0.05: five hundredths). Below the list the
// first row shrinks with the area, which is less than any law of heat gives;
// above it the last row stands. 0 for lists by gauge and areas not above zero.
func (l AmpList) At(mm2, slack float64) float64 {
	if l.ByAWG || !(mm2 > 0) {
		return 0
	}
	first := l.Rows[0]
	amps := first.Careful() * min(1, mm2/first.MM2)
	for _, r := range l.Rows {
		if r.MM2 <= mm2*(1+slack) {
			amps = max(amps, r.Careful())
		}
	}
	return amps
}
