package gauge

// checkRules are about tests of a finished harness.
var checkRules = []BuildRule{
	{"test", "electrical clearance, uninsulated, up to 64 V, set A/B/C", "1.6 / 3.2 / 3.2", "mm", "electronics harness", "test-part"},
	{"test", "which tests, continuity", "required, classes 1-3", "", "electronics harness", "test-which"},
	{"test", "which tests, shorts (low-voltage isolation)", "required unless DWV or IR is run", "", "electronics harness", "test-which"},
	{"test", "which tests, DWV", "class 3 and some class 2", "", "electronics harness", "test-which"},
	{"test", "which tests, insulation resistance", "class 3 and some class 2", "", "electronics harness", "test-which"},
	{"test", "continuity, default", "2 or wire resistance + 1", "ohm", "electronics harness", "test-memory"},
	{"test", "insulation resistance, default, up to 3 m / longer", "100 / 10", "Mohm", "electronics harness", "test-memory"},
	{"test", "dielectric withstanding, default", "1000", "V dc", "electronics harness", "test-memory"},
	{"test", "dielectric withstanding, leakage", "1", "mA", "electronics harness", "test-memory"},
	{"test", "insulation resistance, 200-1000 V dc, max 1 min, each wire to all others and shields", "100", "Mohm", "government equipment", "test-read"},
	{"test", "insulation resistance, hot correction, above 82 F", "-2 per F", "percent", "government equipment", "test-read"},
	{"test", "insulation resistance, cold correction, below 60 F", "+2 per F", "percent", "government equipment", "test-read"},
	{"test", "insulation resistance, temperature ceiling", "100", "F", "government equipment", "test-read"},
	{"test", "DWV voltage ramp, maximum", "500", "V/s", "government equipment", "test-read"},
	{"test", "dielectric, low-voltage circuits of a commercial coach, 1 min / 1 s", "500 / 600", "V", "commercial coach, US state rule", "test-read"},
	{"test", "isolation of dc bus from structure, per circuit", "1", "Mohm", "spacecraft practice", "test-read"},
	{"test", "shield braid strands nicked", "10 max, none severed", "percent", "space", "test-read"},
	{"test", "contact seating, push or pull each retained contact", "100", "percent", "space", "test-read"},
	{"test", "visual, every connector", "100", "percent", "space", "test-read"},
	{"test", "harness short test, ohmmeter from one pin to every other pin of the same connector", "no continuity", "", "army vehicle", "test-read"},
	{"test", "grounded wire test, isolate both ends, wire to frame", "high resistance (infinity)", "", "army", "test-read"},
	{"test", "charging positive / negative side, under load", "0.5 / 0.2", "V", "shop practice", "test-memory"},
	{"test", "star-ground connection resistance in transit equipment", "0.5", "ohm", "bus equipment manual", "test-part"},
	{"test", "safety-critical marine circuits (pumps, blowers, navigation), full load", "3", "percent of nominal", "ISO 10133", "test-read"},
}
