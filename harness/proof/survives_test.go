package proof

// survives says for each sort of mistake why some of them are not answered, or
// what it would mean if one were not.
var survives = map[string]string{
	"wire cut": "A sensor may do without a feed of its own, so one that lost it is taken for the two-wire sort. " +
		"What was in the vehicle already is not asked for wires. A cut diode leaves a circuit without one, which nobody can tell from a circuit that never had one.",
	"strap lost":                   "The loads that lost their way are told with the end of it; where only engine metal is cut off, that metal is told, or where another way back is left, the drop over it.",
	"two sizes thinner":            "Series wires get one size, so a single thinner link may still do. Where the loss passes its limit by a little, the link is told only if it takes a twentieth of the loss or more.",
	"fed ahead of the fuse":        "The thinner wires farther on are told: the fuse that is left is too large for them. The moved wire itself bears it.",
	"fuse far away":                "The draft accepts the rule there, or a starter cable comes first, from which the length counts.",
	"wire too short":               "All have to be answered.",
	"load's feed grounded":         "All have to be answered.",
	"feed and return exchanged":    "A motor may be meant to run either way where nothing else tells; a fan that blows the wrong way is seen on the bench.",
	"fuse doubled":                 "A wire behind is thinner than the doubled fuse asks for, yet it has another fuse that is found worse, or outlasts this one by the milder rules.",
	"fuse halved":                  "All have to be answered.",
	"87 and 87a exchanged":         "A relay of a draft may be meant to rest closed where nothing says when its load works.",
	"coil behind its own contact":  "All have to be answered.",
	"weak relay":                   "All have to be answered.",
	"no suppression":               "All have to be answered.",
	"feed moved to ACC":            "What hangs there is there already, and nothing in the draft says when it has to work.",
	"feed moved to START":          "What hangs there is there already, and nothing in the draft says when it has to work.",
	"feed always live":             "With the battery switch off nothing is drawn, and nothing says which step is the one with the key off alone; or no engine is worked from that wire.",
	"start moved to run":           "The clutch switch on the way is closed only while cranking, says the draft, so nothing turns at the wrong time. Where the starter does turn, it is told, and the way of its current as far as twelve places; the key lies behind them.",
	"key lets go":                  "No controller hangs on that key, so nothing restarts.",
	"diode turned":                 "All have to be answered.",
	"battery turned":               "Beside another battery it is a short, which is told at the fuses on its way; in a row the volts of the whole row are told.",
	"halves crossed":               "Two wires of one color, or of one sort, change places: sensor signals, injectors, lamps. Only the bench shows which is which. Where a short comes of it, the fuses on its way are told; where a load dies, the load and the end of its way.",
	"wire in the neighbor cavity":  "All have to be answered.",
	"unsealed in the wet":          "All have to be answered.",
	"ground on other metal":        "All have to be answered.",
	"sensor ground tied":           "All have to be answered.",
	"sensor returned to metal":     "All have to be answered.",
	"controller's lines exchanged": "Signals have no sort in the language: which input is for which of them only the bench shows. Where a return ends on an input, the sensors are told that lose theirs.",
	"two in a cavity":              "All have to be answered.",
}
