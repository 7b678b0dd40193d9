package proof

var joints = chapter{"Plugs, splices, terminals", []slip{
	{what: "A terminal does not fit its wire.", rules: "terminal-does-not-fit"},
	{what: "Two wires are in one crimp or cavity.", rules: "two-wires-in-cavity"},
	{what: "More than four rings are on one stud, or the small ones lie lowest.", rules: "crowded-stud",
		cannot: "the order of rings on a stud is not drawn."},
	{what: "An unsealed plug, or an open cavity, is in a wet place.", rules: "unsealed-in-wet seal-does-not-fit",
		notYet: "an empty cavity without a plug is not told."},
	{what: "The live half of a plug is the one with the bare pins.",
		notYet: "halves say sockets or pins, and the volts are known; no rule joins the two."},
	{what: "The halves of a plug do not agree cavity by cavity, or one is read mirrored.", rules: "plug-wires-crossed loose-end"},
	{what: "A splice is too close to the next one, or in a wet or hot spot.",
		notYet: "splices have a spot on the leg; distances are not judged."},
	{what: "One color is twice in the same plug.",
		notYet: "colors that legwork chooses avoid it; colors of the draft are not told."},
	{what: "A wire is too short, without slack or a drip loop.", rules: "wire-shorter-than-path",
		cannot: "the loop is laid in the vehicle, not in the draft."},
	{what: "A sensitive wire sits in the cavity beside one that is always live.",
		notYet: "neighbors in a plug are known, and no rule compares them."},
	{what: "Fork or push-on terminals are where everything shakes.",
		cannot: "forks are not in the language, nor is how much a place shakes."},
	{what: "Wires run too close to an exhaust or a moving part, or are clipped too seldom.",
		cannot: "legs have a length and ends, not a way through space."},
}}

var signals = chapter{"Signals", []slip{
	{what: "The sensors' 5 V is shorted or has too much on it.", rules: "supply-shorted wrong-volts",
		notYet: "how much a controller's 5 V may carry is not in the language."},
	{what: "Feed, return and signal of a sensor are exchanged.", rules: "load-reversed wrong-volts sensor-landed-wrong signal-ground-tied load-without-return load-without-feed supply-shorted"},
	{what: "A crank or cam signal runs beside ignition or motor wires.",
		notYet: "legs are shared, cables are twisted or shielded; no rule compares the two."},
	{what: "A shield is grounded at both ends.", rules: "signal-ground-tied"},
	{what: "The tachometer is on a wire that gives it no pulse, or too strong a one.",
		cannot: "a gauge's signal has no sort in the language."},
	{what: "Two coils' primaries are joined where the tachometer taps them.", rules: "outputs-joined"},
	{what: "Feed and return of a pulsed heavy load run apart.",
		notYet: "wires on a leg are known, pairs are not asked for."},
}}

var papers = chapter{"Use and papers", []slip{
	{what: "Too much is drawn with the key off.", rules: "key-off-drain"},
	{what: "A fan runs on with the key off and nothing ends it.", rules: "key-off-drain"},
	{what: "Something works in the wrong position of the key, or not in the right one.", rules: "feed-dead-in-use load-never-on",
		notYet: "a load that is on where nobody asked for it is told only as drain or by the starter and pump rules."},
	{what: "A live end goes nowhere, a load has no return, a net has one pin.", rules: "loose-end load-without-return load-without-feed"},
	{what: "A fuse, relay or wire has no label.",
		notYet: "a fuse without a label in the draft gets its name on every paper, and nothing asks for more."},
	{what: "The drawing is not the vehicle: wires were added and not written down.",
		cannot: "only the vehicle shows it; `existing` and `measured` mark what was looked at, and `legwork diff` compares two drafts."},
	{what: "A relay that is held in falls out in a deep sag.", rules: "relay-out-while-cranking",
		cannot: "sheets say when a relay has surely let go, not down to what it surely holds."},
}}
