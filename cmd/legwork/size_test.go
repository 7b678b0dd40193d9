package main

import (
	"bytes"
	"context"
	"encoding/json"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// sized runs a size command line.
func sized(t *testing.T, line string) (out, errs string, code int) {
	t.Helper()
	var o, e bytes.Buffer
	code = run(context.Background(), strings.Fields("size "+line), streams{strings.NewReader(""), &o, &e})
	return o.String(), e.String(), code
}

func sizedJSON(t *testing.T, line string) (got jsonSize, code int) {
	t.Helper()
	out, errs, code := sized(t, line+" --format json")
	require.Empty(t, errs)
	dec := json.NewDecoder(strings.NewReader(out))
	dec.DisallowUnknownFields()
	require.NoError(t, dec.Decode(&got))
	return got, code
}

func TestSizeJSON(t *testing.T) {
	got, code := sizedJSON(t, "--amps 20A --length 15ft")
	require.Equal(t, exitClean, code)
	require.Equal(t, "6 AWG", *got.Size)
	// by hand in gauge: 30 ft of 6 AWG SAE at 32.4 C lose 266 mV
	require.InDelta(t, 0.266, got.DropV, 0.0002)
	require.InDelta(t, 2.217, got.DropPercent, 0.002)
	require.InDelta(t, 9.144, got.Asked.ConductorM, 1e-9)
	require.Equal(t, []any{30.0, 125.0, "drop"}, []any{*got.FuseA, got.FuseMaxA, got.GovernedBy})
	require.Len(t, got.Neighbors, 3)
	require.False(t, got.Neighbors[0].OK)
	require.NotEmpty(t, got.Working)
	for _, st := range got.Working {
		require.NotEmpty(t, st.Document, st.Source)
	}
	require.Nil(t, got.Start)
}

// The same ask in other units gives the same answer.
func TestSizeUnits(t *testing.T) {
	want, _ := sizedJSON(t, "--amps 8.5A --length 16ft --drop 3% --ambient 140F --volts 12V")
	for _, line := range []string{
		"--amps 8500mA --length 192in --drop 0.36V --ambient 60C --volts 12V",
		"--amps=8.5A --length=4.8768m --drop=360mV --ambient=60C --volts 12V",
	} {
		got, code := sizedJSON(t, line)
		require.Equal(t, exitClean, code)
		require.InDelta(t, want.DropV, got.DropV, 1e-12)
		require.InDelta(t, want.AmpacityA, got.AmpacityA, 1e-9)
		require.Equal(t, want.Size, got.Size)
	}
	cold, code := sizedJSON(t, "--amps 8.5A --length 16ft --ambient -20C")
	require.Equal(t, exitClean, code)
	require.InDelta(t, -20, cold.Asked.AmbientC, 1e-12)
	require.Less(t, cold.DropV, want.DropV)
}

func TestSizeProfilesAndAreas(t *testing.T) {
	for line, want := range map[string]string{
		"--amps 20A --length 5ft":                                                             "10 AWG", // published 3 % chart, SAE areas
		"--amps 20A --length 5ft --profile boat":                                              "12 AWG", // published 3 % chart, AWG areas
		"--amps 20A --length 5ft --area awg --drop-by chart":                                  "12 AWG",
		"--amps 20A --length 25ft --profile aircraft --volts 28V --drop 1V --insulation 200C": "8 AWG", // FAA AC 43.13-1B, 11-68 example 1
		"--amps 20A --length 5ft --area iso":                                                  "4 mm2", // 3.048 m at 4.95 mohm/m: 302 mV at 20 C, 2.5 mm2 486 mV
	} {
		got, code := sizedJSON(t, line)
		require.Equal(t, exitClean, code, line)
		require.Equal(t, want, *got.Size, line)
	}
}

func TestSizeFindsNone(t *testing.T) {
	got, code := sizedJSON(t, "--amps 100A --length 200ft")
	require.Equal(t, exitFindings, code)
	require.Nil(t, got.Size)
	require.False(t, got.OK)
	require.Contains(t, got.Fault, "no size keeps the drop")
	out, _, code := sized(t, "--amps 15A --length 5ft --fuse 10A")
	require.Equal(t, exitFindings, code)
	require.Contains(t, out, "a fuse of 10 A opens under a load of 15 A")
}

func TestSizeText(t *testing.T) {
	out, errs, code := sized(t, "--amps 8.5A --length 16ft --ambient 60C --insulation gxl --start-current 30A --start-time 200ms")
	require.Equal(t, exitClean, code, errs)
	for _, want := range []string{
		"10 AWG, insulation GXL (125 C), behind a 15 A blade fuse (drop governs)",
		"12 AWG       2.956   0.565    4.71       41.4  loses 0.565 V, 0.36 V allowed",
		"30 A leaves 10.8 V for the load; the fuse holds it 100 ms at least; it opens within 5 s",
		"note: the fuse may open at the start: 25 A would hold it, and this wire allows it",
		"[ampacity-33cfr183] 33 CFR 183.425 table 5",
		"Taken as not said: volts 12 V",
	} {
		require.Contains(t, out, want)
	}
	require.NotContains(t, out, "Taken as not said: ambient")
	require.NotContains(t, out, "the draft itself")
}

// All mistakes at once, each with its flag, what was expected and the nearest
// word.
func TestSizeTellsAllMistakes(t *testing.T) {
	out, errs, code := sized(t, "--length 15 --drop 3A --insulation GLX --return wier --area sea --ambient 400C --bundle 2.5 --start-current 9X --start-time 5mm2 --profile rode --format jsn")
	require.Equal(t, exitUsage, code)
	require.Empty(t, out)
	for _, want := range []string{
		"--amps: is needed: a current, such as 15A, from 0.01 to 600 A",
		"--length: 15 has no unit; wanted a length",
		"--drop: 3A is a current; wanted a percentage, such as 3%, or a voltage, such as 9.5V, from 0.1 to 50 %",
		`--insulation: "GLX" is no family, did you mean GXL?`,
		`--return: "wier" is not one of wire, metal, did you mean wire?`,
		`--area: "sea" is not one of sae, awg, iso, did you mean sae?`,
		"--ambient: 400C is not from -55 to 200 C",
		"--bundle: 2.5 is no whole number of conductors",
		`--start-current: "9X"`,
		"--start-time: 5mm2 is an area; wanted a time",
		`--profile: "rode" is not one of road, boat`,
		`--format: "jsn" is not one of text, json, did you mean json?`,
	} {
		require.Contains(t, errs, want)
	}
	for _, line := range []string{
		"--amps 1e9A --length 1ft", "--amps 0A --length 1ft", "--amps 20A --length 0ft", "--amps 20A --length 9000ft",
		"--amps 20A --length 1ft --volts 230V", "--amps 20A --length 1ft --drop 90%", "--amps 20A --length 1ft --insulation 5000C",
		"--amps 20A --length 1ft --bundle 999999999999", "--amps 20A --length 1ft --fuse 0.001A", "--amps 20A --length 1ft --start-current 5A",
		"--amps 20A --length 1ft --insulation 60C --ambient 85C", "--amps NaN --length 1ft", "--amps 20A --length 1ft --drop 0%",
		"--amps 20A --length 1ft --start-current 0A", "--amps 20A --length 1ft --fuse 0A",
	} {
		_, errs, code := sized(t, line)
		require.Equal(t, exitUsage, code, "%s: %s", line, errs)
		require.Regexp(t, `(?m)^(legwork:| ) --[a-z-]+: .+`, errs, line)
	}
}

func TestExplainProfiles(t *testing.T) {
	var o bytes.Buffer
	require.Equal(t, exitClean, run(context.Background(), []string{"explain", "profiles"}, streams{strings.NewReader(""), &o, &o}))
	for _, want := range []string{"fuse over ampacity, most", "150 %", "Where rule-books disagree", "Fuse over its wire", "33 CFR 183.455(c)(1)"} {
		require.Contains(t, o.String(), want)
	}
	for _, name := range []string{"road", "boat", "aircraft", "body-builder", "fire", "track", "thin-wall", "vde"} {
		var one bytes.Buffer
		require.Equal(t, exitClean, run(context.Background(), []string{"explain", name}, streams{strings.NewReader(""), &one, &one}))
		require.Contains(t, one.String(), "drop: control, pump, ignition", name)
		require.Contains(t, o.String(), name)
	}
}
