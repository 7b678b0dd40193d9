package main

import (
	"encoding/json"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

const truck = "../../testdata/orchard-truck.draft"

func TestWeakBattery(t *testing.T) {
	usual := legwork(t, "check", truck)
	require.Zero(t, usual.code)
	require.NotContains(t, usual.out, "Cold start at")

	weak := legwork(t, "check", truck, "--battery", "20%", "--temp", "-30C").out
	require.Contains(t, weak, "Cold start at -30 C with batteries at 20%, which just pass a load test there")
	require.Contains(t, weak, "in crank in a cold start but needs 8 V [feed-low-while-cranking]")

	out := legwork(t, "check", truck, "--battery", "50%", "--format", "json").out
	var report struct {
		Start struct {
			TempC   float64 `json:"temp_c"`
			Battery float64 `json:"battery_percent"`
		} `json:"cold_start"`
	}
	require.NoError(t, json.Unmarshal([]byte(out), &report))
	require.InDelta(t, -18, report.Start.TempC, 0)
	require.InDelta(t, 50, report.Start.Battery, 0)
}

func TestColdStartFlags(t *testing.T) {
	got := legwork(t, "check", truck, "--battery", "half", "--temp=-90C")
	require.Equal(t, exitUsage, got.code)
	require.Equal(t, 1, strings.Count(got.err, "--battery: "), got.err)
	require.Contains(t, got.err, "--temp: -90C is not from -40C to 60C")
}
