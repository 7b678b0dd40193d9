package gauge

// What a device usually is when its draft says nothing. Every one of these
// is a guess that legwork prints; none decides anything a draft has stated.
const (
	UsualCCA          = 500.0 // A, battery
	UsualStarterA     = 150.0 // turning a warm four-cylinder engine
	UsualStall        = 2.6   // locked over turning current of a starter
	UsualPullInA      = 40.0  // starter solenoid, both windings
	UsualHoldA        = 10.0  // starter solenoid, holding winding
	SolenoidPullInV   = 8.0   // starter solenoid closes, 12 V
	SolenoidReleaseV  = 3.0   // starter solenoid has let go
	UsualSetpointV    = 14.2  // charging regulator, 12 V
	UsualAlternatorA  = 65.0
	UsualFieldOhm     = 4.0    // rotor of an alternator, at its lamp terminal while still
	UsualLampW        = 21.0   // signal lamp
	UsualMotorA       = 8.0    // pump or small fan
	UsualHeaterW      = 120.0  // seat, window or sensor element
	UsualValveA       = 0.9    // solenoid valve at 13.5 V
	UsualInjectorA    = 1.0    // high-resistance injector at 13.5 V
	UsualCoilA        = 3.0    // ignition coil, average while firing
	UsualSensorA      = 0.010  // fed sensor
	UsualSignalOhm    = 2500.0 // sensor, signal to return
	UsualOxygenW      = 10.0   // heater of a wideband oxygen sensor
	UsualInstrumentA  = 0.1    // dash instrument
	UsualReferenceV   = 5.0    // reference output of a controller
	UsualReferenceOhm = 1.0    // behind it
	UsualSuppressOhm  = 680.0  // resistor across a 12 V relay coil
	UsualDiodeA       = 3.0    // diode in the wiring
	UsualLinkM        = 0.1524 // fusible link, 6 in
)

// usualSources are the documents behind them.
var usualSources = []Source{
	{"usual-battery", "Starting battery of a small engine: 500 A by the SAE test", practice, Low, "a guess"},
	{"usual-starter", "Workshop article on starter draw: 100 to 200 A, four cylinders, warm", read, Medium, "150 A taken"},
	{"usual-stall", "Starter held fast draws 2.6 times its turning current", memory, Low, "a guess"},
	{"usual-solenoid", "Starter solenoids: 30 to 60 A pulling in, 8 to 12 A holding", memory, Low, "40 and 10 A taken"},
	{"solenoid-volts", "Starter solenoids close by 8 V and let go under 3 V", memory, Low, ""},
	{"usual-setpoint", "Maker's regulator data: 13.5 to 14.5 V", read, High, "14.2 V taken"},
	{"usual-alternator", "Alternator of a small engine: 65 A; rotor 4 ohm", memory, Low, "a guess"},
	{"usual-lamp", "Measuring reference: 21 W signal lamp draws 1.75 A at 12 V", readSecond, High, ""},
	{"usual-motor", "Workshop articles on fuel pumps: 3 to 10 A", read, Medium, "8 A taken"},
	{"usual-heater", "Heating elements: 120 W", memory, Low, "a guess"},
	{"usual-valve", "Measuring reference: solenoid valves 0.2 to 0.9 A at 13.5 V", readSecond, Medium, "0.9 A taken"},
	{"usual-injector", "Measuring reference: high-resistance injectors 0.9 to 1.1 A at 13.5 V", readSecond, High, "1 A taken"},
	{"usual-coil", "Ignition coils: 0.7 to 3 A on average", memory, Medium, "3 A taken"},
	{"usual-sensor", "Fed sensors draw about 10 mA; 2.5 kohm between signal and return", memory, Low, "a guess"},
	{"usual-oxygen", "Heaters of wideband oxygen sensors: about 10 W on average once warm", memory, Low, "a guess"},
	{"usual-instrument", "Dash instruments draw about 0.1 A", memory, Low, "a guess"},
	{"usual-reference", "Controllers give their sensors 5 V", memory, Medium, ""},
	{"usual-suppress", "Resistor across a 12 V relay coil: 680 ohm", memory, Low, ""},
	{"usual-diode", "Diode in the wiring: 3 A", practice, Low, "a guess"},
}

// usualDefaults lists what a device usually is, with the source of each.
func usualDefaults() []Default {
	return []Default{
		{"battery, cold cranking amperes", UsualCCA, "A", "usual-battery"},
		{"starter, turning", UsualStarterA, "A", "usual-starter"},
		{"starter, locked over turning", UsualStall, "", "usual-stall"},
		{"starter solenoid, pulling in", UsualPullInA, "A", "usual-solenoid"},
		{"starter solenoid, holding", UsualHoldA, "A", "usual-solenoid"},
		{"starter solenoid closes", SolenoidPullInV, "V", "solenoid-volts"},
		{"starter solenoid lets go", SolenoidReleaseV, "V", "solenoid-volts"},
		{"charging setpoint", UsualSetpointV, "V", "usual-setpoint"},
		{"alternator", UsualAlternatorA, "A", "usual-alternator"},
		{"alternator rotor", UsualFieldOhm, "ohm", "usual-alternator"},
		{"lamp", UsualLampW, "W", "usual-lamp"},
		{"motor", UsualMotorA, "A", "usual-motor"},
		{"heater", UsualHeaterW, "W", "usual-heater"},
		{"solenoid valve", UsualValveA, "A", "usual-valve"},
		{"injector", UsualInjectorA, "A", "usual-injector"},
		{"ignition coil", UsualCoilA, "A", "usual-coil"},
		{"sensor, feed", UsualSensorA, "A", "usual-sensor"},
		{"sensor, signal to return", UsualSignalOhm, "ohm", "usual-sensor"},
		{"heater of a wideband oxygen sensor", UsualOxygenW, "W", "usual-oxygen"},
		{"instrument", UsualInstrumentA, "A", "usual-instrument"},
		{"reference output", UsualReferenceV, "V", "usual-reference"},
		{"behind the reference output", UsualReferenceOhm, "ohm", "usual-sensor"},
		{"resistor across a coil", UsualSuppressOhm, "ohm", "usual-suppress"},
		{"diode, rated", UsualDiodeA, "A", "usual-diode"},
		{"fusible link, length", UsualLinkM, "m", "fusible-link"},
	}
}
