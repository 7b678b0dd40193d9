package shop_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"legwork/harness"
	"legwork/harness/shop"
)

// What is in the vehicle is not cut, a cable is cut as one, and the pin list
// says the cavity (all invented).
func TestPapersOfAnOldVehicle(t *testing.T) {
	src := `battery G1  grounds-to frame
fuse    F1  10A  from G1 6in
splice  J1
stud    E1  on frame  M6
sensor  B1
module  A1
  plug A  4way
  BAT  feed 0.4A  at A.1
  CRK  input  at A.2
  SG   sensor-ground
  GND  ground
wire 1  G1.+  F1.1  6in
wire 2  F1.2  J1    16AWG  existing  2ft
wire 3  J1    A1.BAT  1ft
wire 4  A1.GND  E1  1ft
cable 300  20AWG  2ft  shielded
  core 301  B1.S  A1.CRK
  core 302  B1.-  A1.SG
  drain 303  A1.SG  open
`
	r, err := harness.Parse("x.draft", []byte(src)).Check(t.Context(), harness.Options{})
	require.NoError(t, err)
	require.NotNil(t, r.Sizes, "%v", r.Findings)
	source := shop.Source{Model: r.Model, Routes: r.Routes, Sizes: r.Sizes}
	cut := shop.Cut(source)
	var numbers []string
	for _, row := range cut.Rows {
		numbers = append(numbers, row[0].Text)
	}
	require.Equal(t, []string{"1", "3", "4"}, numbers)
	notes := strings.Join(cut.Notes, "\n")
	require.Contains(t, notes, "they are in the vehicle: wires 2.")
	// 2 ft and 2 x 12 mm at each end, up to half an inch: 24 + 1.89 is 26 in.
	require.Contains(t, notes, "Cut cable 300 as one, 2 ft 2 in: cores 301, 302, drain 303.")
	found := false
	for _, row := range shop.Pins(source).Rows {
		found = found || row[2].Text == "A1.CRK" && strings.Contains(row[3].Text, "input, cavity A.2")
	}
	require.True(t, found)
}
