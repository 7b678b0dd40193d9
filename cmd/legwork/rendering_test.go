package main

import (
	"bytes"
	"encoding/xml"
	"errors"
	"fmt"
	"image"
	"image/png"
	"io"
	"os"
	"os/exec"
	"path/filepath"
	"testing"

	"github.com/stretchr/testify/require"
)

// shippedSheets draws every sheet of every shipped draft that has no faults.
func shippedSheets(t *testing.T) map[string]string {
	t.Helper()
	dir := workshop(t)
	sheets := map[string]string{}
	for _, name := range faultless {
		out := filepath.Join(dir, name+"-sheets")
		got := legwork(t, "draw", name, "schematic", "-o", out+"/")
		require.Equal(t, exitClean, got.code, got.err)
		for _, file := range names(t, out) {
			sheets[name+" "+file] = get(t, filepath.Join(out, file))
		}
	}
	require.GreaterOrEqual(t, len(sheets), 3)
	return sheets
}

// Every sheet is well-formed, its root is an SVG element, and it holds no
// script and nothing from elsewhere.
func TestSheetsAreWellFormed(t *testing.T) {
	for name, svg := range shippedSheets(t) {
		d := xml.NewDecoder(bytes.NewReader([]byte(svg)))
		elements := map[string]int{}
		for {
			token, err := d.Token()
			if errors.Is(err, io.EOF) {
				break
			}
			require.NoError(t, err, name)
			if e, ok := token.(xml.StartElement); ok {
				if len(elements) == 0 {
					require.Equal(t, "svg", e.Name.Local, name)
				}
				elements[e.Name.Local]++
				for _, a := range e.Attr {
					require.NotEqual(t, "href", a.Name.Local, "%s refers to %s", name, a.Value)
				}
			}
		}
		require.Zero(t, elements["script"]+elements["foreignObject"]+elements["image"], name)
		require.Greater(t, elements["text"], 5, name)
	}
}

const converter = "rsvg-convert"

// Every sheet is seen by another program's eyes: converted to pixels, it has
// ink, more than a frame and less than a blot. Without the converter that is
// skipped on a bench and fails where CI is set.
func TestSheetsShowSomething(t *testing.T) {
	tool, err := exec.LookPath(converter)
	if err != nil {
		if os.Getenv("CI") != "" {
			require.Fail(t, converter+" is missing: drawings can't be looked at")
		}
		t.Skip(converter + " is missing: drawings were not looked at")
	}
	for name, svg := range shippedSheets(t) {
		cmd := exec.Command(tool, "--width", "1400", "--keep-aspect-ratio", "--background-color", "white")
		var pixels, told bytes.Buffer
		cmd.Stdin, cmd.Stdout, cmd.Stderr = bytes.NewReader([]byte(svg)), &pixels, &told
		require.NoError(t, cmd.Run(), "%s: %s", name, told.String())
		require.Empty(t, told.String(), name)
		img, err := png.Decode(&pixels)
		require.NoError(t, err, name)
		require.NoError(t, inked(img), name)
	}
}

// inked says what is wrong with the ink of a picture, nil if it can be a
// drawing.
func inked(img image.Image) error {
	b := img.Bounds()
	if b.Dx() < 1000 || b.Dy() < 400 {
		return fmt.Errorf("%d x %d pixels are no sheet", b.Dx(), b.Dy())
	}
	dark := 0
	for y := b.Min.Y; y < b.Max.Y; y++ {
		for x := b.Min.X; x < b.Max.X; x++ {
			if r, g, bl, _ := img.At(x, y).RGBA(); r+g+bl < 3*0x8000 {
				dark++
			}
		}
	}
	share := float64(dark) / float64(b.Dx()*b.Dy())
	if !(share > 0.003 && share < 0.3) {
		return fmt.Errorf("%.2f %% of the sheet is dark; a drawing has 0.3 to 30 %%", 100*share)
	}
	return nil
}

// The look at the ink has to bite: a blank sheet, a black one and a stamp fail.
func TestInked(t *testing.T) {
	require.ErrorContains(t, inked(image.NewGray(image.Rect(0, 0, 20, 20))), "no sheet")
	blank := image.NewGray(image.Rect(0, 0, 1400, 990))
	require.ErrorContains(t, inked(blank), "100.00 % of the sheet is dark")
	for i := range blank.Pix {
		blank.Pix[i] = 0xff
	}
	require.ErrorContains(t, inked(blank), "0.00 % of the sheet is dark")
	for i := 0; i < len(blank.Pix); i += 50 {
		blank.Pix[i] = 0
	}
	require.NoError(t, inked(blank))
}

// A sheet has the size of the paper that was asked for (ISO 216; 11 x 17 in).
func TestPaperIsAsAsked(t *testing.T) {
	workshop(t)
	for paper, size := range map[string]string{"a3": `width="420mm" height="297mm"`, "a4": `width="210mm" height="297mm"`, "tabloid": `width="431.8mm" height="279.4mm"`, "auto": `width="210mm" height="297mm"`} {
		got := legwork(t, "draw", "least.draft", "schematic", "--paper", paper)
		require.Equal(t, exitClean, got.code, got.err)
		require.Contains(t, got.out, size, paper)
	}
	got := legwork(t, "draw", "least.draft", "schematic", "--paper", "napkin")
	require.Equal(t, exitUsage, got.code)
	require.Contains(t, got.err, "tabloid")
}
