package harness_test

import (
	"fmt"
	"strings"
	"testing"
	"testing/fstest"

	"github.com/stretchr/testify/require"

	"legwork/harness"
	"legwork/harness/diag"
)

const shelf = `# invented
part relay small-relay  "Small relay"  coil 90ohm  pull-in 6V 7V  contact 30A  motor 17A  suppress resistor
part module pump-driver
  FEED  feed 0.3A  above 7V
  OUT   low-side 1A  when running
  GND   ground
`

const usesShelf = `include "parts/shelf.draft"
battery G1  cca 540A  grounds-to frame
fuse    F1  10A  from G1 6in
switch  S1  closed when running
relay   K1  part small-relay
relay   K2  part small-relay  coil 75ohm
module  A1  part pump-driver
stud    E1  on frame  M6
lamp    P1  5W  grounds-to frame
splice  J1
wire 1  G1.+     F1.1     6in
wire 2  F1.2     S1.1     1ft
wire 11 S1.2     J1       1ft
wire 3  J1       A1.FEED  1ft
wire 4  J1       K1.86    1ft
wire 5  K1.85    A1.OUT   1ft
wire 6  A1.GND   E1       1ft
wire 7  J1       K1.30    1ft
wire 8  K1.87    P1.1     1ft
wire 9  K2.86    K1.87    1ft
wire 10 K2.85    E1       1ft
  accept two-wires-in-cavity "test"
`

func files(pairs ...string) fstest.MapFS {
	fsys := fstest.MapFS{}
	for i := 0; i < len(pairs); i += 2 {
		fsys[pairs[i]] = &fstest.MapFile{Data: []byte(pairs[i+1])}
	}
	return fsys
}

// A part is defined once, in an included file, and used by name; what a
// device's own line says wins.
func TestPartsFromAShelf(t *testing.T) {
	d := harness.Load(files("car.draft", usesShelf, "parts/shelf.draft", shelf), "car.draft")
	require.Empty(t, d.Findings)
	k1, _ := d.Model.DeviceByName("K1")
	k2, _ := d.Model.DeviceByName("K2")
	require.Equal(t, "Small relay", k1.Label)
	require.Equal(t, "small-relay", k1.Part)
	require.InDelta(t, 90, k1.Num("coil"), 0)
	require.InDelta(t, 75, k2.Num("coil"), 0)
	require.InDelta(t, 7, k2.NumAt("pull-in", 1), 0)
	r, err := d.Check(t.Context(), harness.Options{})
	require.NoError(t, err)
	require.Less(t, r.Findings.Worst(), diag.Warning, "%v", r.Findings)
	require.InDelta(t, 12, r.Step("running").Volts("P1.1").Volts, 3)
	require.Equal(t, shelf, string(d.Source("parts/shelf.draft")))
}

// A finding in an included file carries that file's name and place.
func TestMistakeInAnIncludedFile(t *testing.T) {
	bad := strings.Replace(shelf, "90ohm", "90V", 1)
	d := harness.LoadAs(files("car.draft", usesShelf, "parts/shelf.draft", bad), "car.draft", "cars/car.draft")
	require.NotEmpty(t, d.Findings)
	f := d.Findings[len(d.Findings)-1]
	require.Equal(t, "cars/parts/shelf.draft", f.At.File)
	require.Equal(t, 2, f.At.Line)
	require.Equal(t, bad, string(d.Source(f.At.File)))
}

// What may not be included is answered where it is named, once each.
func TestIncludesStayInTheirFolder(t *testing.T) {
	deep := []string{"car.draft", `include "d1.draft"`}
	for i := 1; i <= 9; i++ {
		deep = append(deep, fmt.Sprintf("d%d.draft", i), fmt.Sprintf("include \"d%d.draft\"\n", i+1))
	}
	many := []string{"car.draft", ""}
	for i := range 65 {
		many[1] += fmt.Sprintf("include \"m%d.draft\"\n", i)
		many = append(many, fmt.Sprintf("m%d.draft", i), "# nothing\n")
	}
	for name, c := range map[string]struct {
		fsys fstest.MapFS
		want string
	}{
		"above":    {files("car.draft", `include "../shelf.draft"`), "outside the draft's folder"},
		"root":     {files("car.draft", `include "/etc/shelf.draft"`), "outside the draft's folder"},
		"backward": {files("car.draft", `include "parts\shelf.draft"`), "outside the draft's folder"},
		"missing":  {files("car.draft", `include "shelf.draft"`), "can't read shelf.draft"},
		"folder":   {files("car.draft", `include "parts"`, "parts/a.draft", ""), "a folder, not a draft"},
		"bare":     {files("car.draft", `include shelf`), "include takes the name of one file"},
		"itself":   {files("car.draft", `include "car.draft"`), "car.draft includes itself"},
		"circle":   {files("car.draft", `include "a.draft"`, "a.draft", `include "car.draft"`), "by way of a.draft"},
		"deep":     {files(deep...), "at most 8 files deep"},
		"many":     {files(many...), "at most 64 files"},
	} {
		t.Run(name, func(t *testing.T) {
			d := harness.Load(c.fsys, "car.draft")
			var told []string
			for _, f := range d.Findings {
				if f.Rule == "draft-include" {
					told = append(told, f.Msg)
				}
			}
			require.Len(t, told, 1, "%v", d.Findings)
			require.Contains(t, told[0], c.want)
		})
	}
	twice := harness.Load(files("car.draft", "include \"a.draft\"\ninclude \"a.draft\"\n", "a.draft", "# nothing\n"), "car.draft")
	require.Empty(t, twice.Findings)
}
