package part

// Stand-ins until gauge has these figures; none stays here.
const (
	gaugeRestEMF          = 12.65
	gaugeCrankEMF         = 12.6
	gaugeChargeCurrentA   = 2.0
	gaugeDefaultCCA       = 500.0
	gaugeSwitchContactOhm = 0.010
	gaugeRelayContactOhm  = 0.005
	gaugeRelayCoilOhm     = 85.0
	gaugePullInV          = 8.0
	gaugeReleaseV         = 1.2
	gaugeOperateS         = 0.010
	gaugeReleaseS         = 0.007
	gaugeDriverDropV      = 0.5
	gaugeFuseRise         = 0.42
	gaugeLoadRatedV       = 13.5
	gaugeLampW            = 21.0
	gaugeLoadLeakOhm      = 1e6
	gaugeDiodeLeakOhm     = 1e7
	gaugeDiodeForwardV    = 0.65
	gaugeAsleepA          = 0.002
	gaugeColdStartC       = -18.0
	gaugeColdDrawFactor   = 2.0
	gaugeSuppressOhm      = 680.0
)

func gaugeBatteryOhm(cca float64) (warm, cold float64) { return 6.0 / cca, 5.4 / cca }

func gaugeFuseOhm(family string, ratedA float64) (cold float64, sure bool) {
	if family == "bolt-down" {
		return 0.056 / ratedA, false
	}
	return 0.072 / ratedA, family == "blade"
}

func gaugeCopperAt(ohm20, tempC float64) float64 { return ohm20 * (234.5 + tempC) / 254.5 }
