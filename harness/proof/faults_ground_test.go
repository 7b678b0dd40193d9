package proof

var grounds = chapter{"Grounds", []slip{
	{what: "The engine has no heavy way back to the battery.", rules: "engine-not-bonded thin-engine-strap"},
	{what: "With one strap lost, the starter's current returns by a thin wire or a shield.", rules: "thin-engine-strap signal-ground-tied",
		notYet: "straps are not opened one after the other."},
	{what: "A sensor's return is joined to power ground or metal.", rules: "signal-ground-tied sensor-landed-wrong"},
	{what: "A controller's power ground goes to other metal than its maker wants.", rules: "ground-elsewhere"},
	{what: "A controller's or a sensor's ground shares a wire with a motor.", rules: "drop-over-limit",
		notYet: "a shared return is told only when its drop is over the limit."},
	{what: "A lost ground sends current backwards through other loads.", rules: "load-without-return fed-through-load",
		notYet: "what would happen with each ground opened in turn is not played."},
	{what: "A device is grounded by its screws, through paint.",
		cannot: "`grounds-to` is taken at its word; paint is not drawn."},
	{what: "One of several grounds of a controller is missing.", rules: "load-without-return"},
	{what: "A wideband sensor's reading is off by the drop that its heater makes in a shared ground.", rules: "signal-ground-tied sensor-landed-wrong",
		notYet: "the offset in millivolts is not figured for the signal."},
	{what: "A controller's ground wire was cut off when the battery moved.", rules: "load-without-return loose-end"},
	{what: "A trailer, door or boom has its hinge or hitch for a return.",
		cannot: "metal is one piece unless the draft names two; between two metals a strap or wire is asked for by load-without-return."},
}}

var protection = chapter{"Protection", []slip{
	{what: "A battery wire has no fuse.", rules: "unprotected-wire"},
	{what: "The fuse sits too far from the battery.", rules: "unprotected-wire"},
	{what: "A fuse is larger than the thinnest wire behind it can carry.", rules: "fuse-above-wire short-outlasts-wire fuses-side-by-side"},
	{what: "A thin branch is spliced on behind a large fuse.", rules: "fuse-above-wire short-outlasts-wire"},
	{what: "The load is close to the fuse's rating.", rules: "fuse-heavily-loaded"},
	{what: "The first rush of a lamp or motor opens the fuse.",
		notYet: "rush is data of the load and not yet held against the fuse."},
	{what: "Loads that keep the vehicle going share one fuse.",
		notYet: "no rule counts what one fuse takes with it."},
	{what: "A main fuse and the fuse behind it are of like size, and both open.",
		notYet: "nobody publishes one ratio for all fuses; it would be a note."},
	{what: "Something is tapped into a controller's own feed.", rules: "drop-over-limit feed-low-while-cranking",
		notYet: "the tap itself is not told while the controller keeps its volts."},
	{what: "A blown fuse was replaced by a larger one.", rules: "fuse-above-wire fuse-far-above-load contact-overloaded"},
}}

var sizing = chapter{"Sizes and heavy ways", []slip{
	{what: "A load loses more volts than its class allows.", rules: "drop-over-limit"},
	{what: "Feed or return of a fuel pump is too thin.", rules: "drop-over-limit"},
	{what: "The charge cable is too thin for the alternator.", rules: "charge-path-drop wire-above-ampacity"},
	{what: "Loads and the point that the regulator senses are on different nodes.", rules: "drop-over-limit charge-path-drop",
		cannot: "where the regulator's own sense wire ends is figured; that it should end elsewhere is a choice."},
	{what: "Loads hang on the battery's side of an ammeter, so that the meter carries them.",
		cannot: "the language has no ammeter; a resistor drawn for it is loaded, and its current is in the volts sheet."},
	{what: "Charge current passes a small blade of the bulkhead plug.",
		notYet: "blades have a width, and no published current for each is in the data."},
	{what: "The solenoid's wire is too thin, or passes too many switches.", rules: "solenoid-starved starter-never-turns"},
	{what: "The neutral or clutch switch is missing or bypassed.", rules: "interlock-bypassed",
		cannot: "a switch that was never drawn is not missed."},
	{what: "Insulation or terminal is too weak for the heat of its place.", rules: "wire-above-ampacity",
		cannot: "the heat of terminals and plugs is not in the data."},
	{what: "The heat of the place and of the other wires in the bundle is ignored.", rules: "wire-above-ampacity fuse-above-wire"},
}}

// beyond holds the rules that answer no single fault of the table, and why
// they are there.
var beyond = map[string]string{
	"charge-below-load":    "what the loads take in a step against what the machine that charges gives",
	"positive-ground":      "what depends on which side is fed must not be judged the wrong way round",
	"source-leads-nowhere": "an alternator or a battery that lost its cable, which mistakes put into sound drafts showed to be missed",
	"wire-too-thin":        "a wire that carries enough but breaks under the hand",
}
