package gauge

// vdeMulticore holds the factors of VDE 0298-4 for loaded cores of a
// multicore cable (source vde-multicore).
var vdeMulticore = [...]struct {
	loaded int
	factor float64
}{{5, 0.75}, {7, 0.65}, {10, 0.55}, {14, 0.50}, {19, 0.45}, {24, 0.40}, {40, 0.35}, {61, 0.30}}

// VDEBundleFactor derates by loaded cores: 1 up to two, then the first row of
// the table with at least as many, 0.30 above it too (source vde-multicore).
func VDEBundleFactor(loaded int) float64 {
	if loaded <= 2 {
		return 1
	}
	for _, r := range vdeMulticore {
		if loaded <= r.loaded {
			return r.factor
		}
	}
	return vdeMulticore[len(vdeMulticore)-1].factor
}

// SpaceBundleFactor is a space agency's law for wires bundled together:
// (29 - N)/28 to 15 wires, 0.5 above. From memory (source space-bundle).
func SpaceBundleFactor(wires int) float64 {
	switch {
	case wires <= 1:
		return 1
	case wires <= 15:
		return float64(29-wires) / 28
	}
	return 0.5
}

// engineSpace holds note 1 of 33 CFR 183.425 table 5 by column, in the order
// of columnC.
var engineSpace = [len(columnC)]float64{0.58, 0.75, 0.78, 0.82, 0.85, 0.89, 1.00}

// EngineSpaceC is the ambient of note 1 in Celsius.
const EngineSpaceC = 50.0

// EngineSpaceFactor is note 1 of 33 CFR 183.425 table 5: what is left of a
// column's current in an engine space of 50 C. The 105 C figure was read, the
// rest are from memory; the square-root rule agrees within 0.01 except at
// 200 C, where the note takes nothing off (sources engine-33cfr183,
// engine-33cfr183-memory).
func EngineSpaceFactor(insulationC float64) (factor float64, c Confidence, ok bool) {
	for i, col := range columnC {
		if col == insulationC {
			key := "engine-33cfr183-memory"
			if col == 105 {
				key = "engine-33cfr183"
			}
			return engineSpace[i], confidenceOf(key), true
		}
	}
	return 0, 0, false
}

// LawAmps is 33 CFR 183.425 table 5 to the letter: the cell, note 1 in an
// engine space, note 2 for loaded conductors bundled. [Ampacity] does the
// same for any ambient. ok is false off the table.
func LawAmps(awg int, insulationC float64, loaded int, engine bool) (amps float64, c Confidence, ok bool) {
	amps, ok = TableAmps(awg, insulationC)
	if !ok {
		return 0, 0, false
	}
	c = confidenceOf("ampacity-33cfr183")
	if engine {
		factor, conf, _ := EngineSpaceFactor(insulationC)
		amps, c = amps*factor, min(c, conf)
	}
	return amps * BundleFactor(loaded), c, true
}

// iso10133 holds annex A of ISO 10133 as remembered, by nominal area: columns
// 60, 70, 85 to 90, 105, 125, 200 C.
var iso10133 = [...]struct {
	mm2  float64
	amps [6]float64
}{
	{0.75, [6]float64{6, 10, 12, 16, 20, 25}}, {1, [6]float64{8, 14, 18, 20, 25, 35}},
	{1.5, [6]float64{12, 18, 21, 25, 30, 40}}, {2.5, [6]float64{17, 25, 30, 35, 40, 45}},
	{4, [6]float64{22, 35, 40, 45, 50, 55}}, {6, [6]float64{29, 45, 50, 60, 70, 75}},
	{10, [6]float64{40, 65, 70, 90, 100, 120}}, {16, [6]float64{54, 90, 100, 130, 150, 170}},
	{25, [6]float64{71, 120, 140, 170, 185, 200}}, {35, [6]float64{87, 160, 185, 210, 225, 240}},
	{50, [6]float64{105, 210, 230, 270, 300, 325}}, {70, [6]float64{135, 265, 285, 330, 360, 375}},
	{95, [6]float64{165, 310, 330, 390, 410, 430}}, {120, [6]float64{190, 360, 400, 450, 480, 520}},
	{150, [6]float64{220, 380, 430, 475, 520, 560}},
}

var iso10133C = [...]float64{60, 70, 85, 105, 125, 200}

// ISO10133Amps is the remembered ampacity of ISO 10133 for a nominal area and
// an insulation class in Celsius, the hottest column it reaches. It only
// hints (source iso10133-ampacity). ok is false off the table.
func ISO10133Amps(mm2, insulationC float64) (amps float64, ok bool) {
	for _, r := range iso10133 {
		if r.mm2 != mm2 {
			continue
		}
		for i, c := range iso10133C {
			if c <= insulationC {
				amps, ok = r.amps[i], true
			}
		}
	}
	return amps, ok
}
