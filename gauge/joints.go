package gauge

// connectorPair is the resistance of a mated blade pair after test by blade
// width in mm (source connector-pair, low).
var connectorPair = [...]struct{ bladeMM, mohm float64 }{
	{0.64, 20}, {1.5, 10}, {2.8, 5}, {6.3, 1.5}, {9.5, 1.0},
}

// ConnectorPairOhm is the resistance in ohm of a mated pair of blades of a
// width in mm. It is from memory and only counts in nominal figures; ok is
// false for other widths (source connector-pair).
func ConnectorPairOhm(bladeMM float64) (ohm float64, ok bool) {
	for _, row := range connectorPair {
		if row.bladeMM == bladeMM {
			return row.mohm / 1000, true
		}
	}
	return 0, false
}
