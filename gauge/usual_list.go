package gauge

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
		{"instrument", UsualInstrumentA, "A", "usual-instrument"},
		{"reference output", UsualReferenceV, "V", "usual-reference"},
		{"behind the reference output", UsualReferenceOhm, "ohm", "usual-sensor"},
		{"resistor across a coil", UsualSuppressOhm, "ohm", "usual-suppress"},
		{"diode, rated", UsualDiodeA, "A", "usual-diode"},
		{"fusible link, length", UsualLinkM, "m", "fusible-link"},
	}
}
