package gauge

import "slices"

// TrailerPin is one pin of a trailer connector.
type TrailerPin struct {
	Connector string
	Pin       string
	Function  string
	Color     string
	Source    string
}

var trailerPins = [...]TrailerPin{
	{"ISO 1724", "1 / L", "left turn", "yellow", "trailer-memory"},
	{"ISO 1724", "2 / 54g", "fog or 12 V", "blue", "trailer-memory"},
	{"ISO 1724", "3 / 31", "ground", "white", "trailer-memory"},
	{"ISO 1724", "4 / R", "right turn", "green", "trailer-memory"},
	{"ISO 1724", "5 / 58R", "right side and tail", "brown", "trailer-memory"},
	{"ISO 1724", "6 / 54", "stop", "red", "trailer-memory"},
	{"ISO 1724", "7 / 58L", "left side and tail", "black", "trailer-memory"},
	{"SAE J560", "1", "ground", "white", "trailer-memory"},
	{"SAE J560", "2", "clearance and side marker", "black", "trailer-memory"},
	{"SAE J560", "3", "left turn", "yellow", "trailer-memory"},
	{"SAE J560", "4", "stop", "red", "trailer-memory"},
	{"SAE J560", "5", "right turn", "green", "trailer-memory"},
	{"SAE J560", "6", "tail and license plate", "brown", "trailer-memory"},
	{"SAE J560", "7", "auxiliary, anti-lock", "blue", "trailer-memory"},
	{"four-way flat", "1", "ground", "white", "trailer-memory"},
	{"four-way flat", "2", "tail", "brown", "trailer-memory"},
	{"four-way flat", "3", "left turn and stop", "yellow", "trailer-memory"},
	{"four-way flat", "4", "right turn and stop", "green", "trailer-memory"},
}

// TrailerPins lists the pins of trailer connectors. They are from memory and
// only hint (source trailer-memory).
func TrailerPins() []TrailerPin { return slices.Clone(trailerPins[:]) }
