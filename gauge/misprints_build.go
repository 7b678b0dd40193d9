package gauge

// deviceMisprints are those about devices, bundles and joints.
var deviceMisprints = [...]Misprint{
	{"table of k factors, aluminum PVC 70 C above 300 mm2", "78", "68", "thick cores end at 140 C, so k falls below the 76 of thin ones", "k-factors"},
	{"relay note, 290 ohm coil from 25 to 125 C", "403.31 ohm", "401.75 ohm", "read off a chart as x 1.39; the law gives x 1.3854", "relay-temperature"},
	{"color chart of blades, 5 A", "orange", "tan", "all others say tan; orange is 40 A", "fuse-colors"},
	{"derating guideline for fuses", "base of the slope misprinted", "25 C", "its own table starts at 25 C", "fuse-ambient-slope"},
	{"application specification of terminals, 2/0", "1235.0 N", "1334.5 N", "300 lbf beside it", "crimp-ul486a-large"},
	{"page on IEC 60352-2", "0.5 mm2 40 N, 10 mm2 420 N", "60 N, 380 N", "machine-written text against a table long reprinted; neither was seen in the standard", "crimp-iec60352"},
	{"introduction to conduit, six equal wires", "2.9", "3.0", "six circles need 3.0 diameters", "bundle-tubing"},
	{"technical note on bundle size, twelve equal wires", "4.00", "4.03", "eleven and twelve circles need 3.924 and 4.030", "bundle-layup"},
	{"technical note on bundle size, 3 x 1.19, 5 x 1.40, 1.65 mm", "4.95 mm", "4.914 mm", "squares rounded, and 16.9 to 17", "bundle-rule"},
	{"introduction to conduit, 15 x 0.045 and 15 x 0.135 in", "0.603 in", "0.661 in", "averages the diameters: too small for mixed wires", "bundle-tubing"},
	{"contact loading, 24 AWG at 26 %", "0.342", "0.331", "all other cells are size x loading: 0.536 x 0.618", "contact-loading"},
	{"trade table of tabs, 6.3 mm", "50 A", "24 A", "UL 310 stops at 24 A with 10 AWG", "tab-guide-high"},
}
