package main

import (
	"encoding/xml"
	"errors"
	"io"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// Every paper and every sheet of the whole vehicles can be made, of the faulty
// ones too as far as they can be worked out.
func TestPapersOfTheVehicles(t *testing.T) {
	for _, args := range [][]string{
		{"forestry-carrier"}, {"forestry-carrier", "--with", "lights", "--with", "crane"}, {"forestry-carrier-faults"},
		{"lake-workboat"}, {"lake-workboat", "--with", "winch"}, {"lake-workboat-faults"},
		{"utility-trailer"}, {"utility-trailer-faults"}, {"track-car"}, {"track-car-faults"},
		{"camper-leisure"}, {"camper-leisure-faults"},
	} {
		t.Run(strings.Join(args, " "), func(t *testing.T) {
			path, with := filepath.Join(root, "testdata", args[0]+".draft"), args[1:]
			for _, paper := range []string{"cut", "spools", "pins", "volts"} {
				got := legwork(t, append([]string{"list", path, paper}, with...)...)
				require.Equal(t, exitClean, got.code, got.err)
				require.Greater(t, strings.Count(got.out, "\n"), 5, paper)
			}
			dir := t.TempDir() + string(filepath.Separator)
			got := legwork(t, append([]string{"draw", path, "schematic", "-o", dir}, with...)...)
			require.Equal(t, exitClean, got.code, got.err)
			sheets, err := filepath.Glob(dir + "*.svg")
			require.NoError(t, err)
			require.NotEmpty(t, sheets)
			for _, sheet := range sheets {
				wellFormed(t, sheet)
			}
		})
	}
}

// wellFormed reads a drawing to its end as XML.
func wellFormed(t *testing.T, path string) {
	t.Helper()
	f, err := os.Open(path)
	require.NoError(t, err)
	defer func() { require.NoError(t, f.Close()) }()
	r := xml.NewDecoder(f)
	for {
		_, err := r.Token()
		if errors.Is(err, io.EOF) {
			return
		}
		require.NoError(t, err, path)
	}
}
