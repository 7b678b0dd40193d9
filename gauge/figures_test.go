package gauge

import (
	"flag"
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

var update = flag.Bool("update", false, "write docs/sources.md anew")

// figurePage is docs/sources.md in the making: tables whose last two columns
// are the source of each row and how far it may be trusted.
type figurePage struct{ strings.Builder }

func (p *figurePage) table(title, about string, columns ...string) {
	fmt.Fprintf(p, "\n## %s\n\n%s\n\n| %s | source | confidence |\n|%s\n", title, about, strings.Join(columns, " | "),
		strings.Repeat("---|", len(columns)+2))
}

func (p *figurePage) row(key string, cells ...any) {
	for _, c := range cells {
		fmt.Fprintf(p, "| %v ", c)
	}
	fmt.Fprintf(p, "| [%s](#%s) | %s |\n", key, key, confidenceOf(key))
}

func TestSourcesPage(t *testing.T) {
	p := new(figurePage)
	p.WriteString("# Figures and sources\n\nEvery figure that legwork carries, with its source and how far it may be trusted. Low and memory figures are\n" +
		"shown and never decide a size or a verdict. The tables are printed from the program; the documents, with clause or\n" +
		"table, stand under [sources](#sources): the key beside a figure leads there.\n")
	p.conductors()
	p.devices()
	p.practice()
	p.outside()
	p.sources()
	name := filepath.Join("..", "docs", "sources.md")
	if *update {
		require.NoError(t, os.WriteFile(name, []byte(p.String()), 0o644))
	}
	have, err := os.ReadFile(name)
	require.NoError(t, err)
	require.Equal(t, p.String(), string(have), "stale page: go test ./gauge -run TestSourcesPage -update")
	for _, line := range strings.Split(p.String(), "\n") {
		require.NotContains(t, line, "invalid")
	}
}

// plain prints six digits without an exponent.
func plain(v float64) string {
	return strings.TrimSuffix(strings.TrimRight(fmt.Sprintf("%.6f", v), "0"), ".")
}

func (p *figurePage) devices() {
	p.table("Fuse resistance", "Regular blade, cold. Warm: x (1 + 0.42 (I/In)^2). Other styles: 56 mV over the rating.", "A", "mohm")
	for _, r := range bladeOhm {
		p.row("blade-resistance", r.ratedA, r.mohm)
	}
	p.row("blade-resistance", "mini 10", 7.42)
	p.row("blade58-resistance", "58 V, 30", 1.85)
	p.row("blade-resistance", "maxi 40", 1.4)
	p.row("blade-resistance", "maxi 50", 1.1)
	p.table("Fuse series", "Ratings in which a style is made, and what it breaks at its volts (0: no d.c. figure known).", "style", "what", "standard", "A", "V d.c.", "breaks A")
	for _, f := range fuseStyles {
		p.row(f.Source, f.Name, f.Title, f.Standard, strings.Trim(fmt.Sprint(f.RatingsA), "[]"), f.RatedV, f.BreakA)
	}
	p.table("Fuse colors", "The printed figure rules. Mini blades have the colors of regular ones.", "style", "A", "color", "note")
	for _, r := range fuseColorings {
		p.row(r.Source, r.Style, r.RatedA, r.Color, r.Note)
	}
	p.table("Fuse opening", "At a multiple of its rating a fuse holds at least and opens within (seconds; 0: no figure).", "style", "x rating", "holds", "opens")
	for _, o := range openings {
		for _, g := range o.gates {
			p.row(g.Source, o.family, g.Share, g.MinS, g.MaxS)
		}
	}
	p.protection()
	p.electric()
	p.table("Breaking capacity", "Of the first device after the battery and of one in a branch.", "up to CCA", "main A", "branch A")
	for _, r := range breaking {
		p.row("breaking-capacity", r.upToCCA, r.mainA, r.branchA)
	}
	p.table("Mated blade pair", "By blade width, after test; nominal figures only.", "mm", "mohm")
	for _, r := range connectorPair {
		p.row("connector-pair", r.bladeMM, r.mohm)
	}
}

func (p *figurePage) practice() {
	p.table("Taken where the draft is silent", "Each one is listed as a guess wherever it counts.", "figure", "value", "unit")
	for _, d := range Defaults() {
		p.row(d.Source, d.Name, plain(d.Value), d.Unit)
	}
	p.table("Profiles", "Named sets of limits.", "profile", "load of fuse", "chosen at", "fuse over wire", "drop critical", "drop other", "smallest AWG dry / wet / alone", "ampacity", "areas")
	for _, r := range profiles {
		p.row(r.Source, r.Name, r.LoadOfFuse, r.ChooseAt, r.FuseOverWire, fmt.Sprintf("%.2f %%", 100*r.DropCritical), fmt.Sprintf("%.2f %%", 100*r.DropOther), fmt.Sprintf("%d / %d / %d (%s)", r.Dry.AWG, r.Wet.AWG, r.Alone.AWG, r.SizeSource), r.Ampacity, r.Area)
	}
	p.profileLimits()
	p.placement()
	p.table("What a meter may read", "Volts across a part under load, 12 V.", "part", "V", "note")
	for _, m := range meterLimits {
		p.row(m.Source, m.Part, m.Volts, m.Note)
	}
	p.joints()
	p.bundles()
	p.layout()
	p.schemes()
	p.table("Colors", "IEC letters and what US shops write (source shop-colors).", "color", "IEC", "shop")
	for _, c := range colors {
		p.row(c.Source, c.Name, c.Code, c.Shop)
	}
	p.table("Terminals of vehicles", "DIN 72552.", "number", "meaning")
	for _, r := range din72552 {
		p.row(r.Source, r.Number, r.Meaning)
	}
	p.table("Terminals of relay bases", "ISO 7588; the older number in brackets.", "number", "meaning")
	for _, r := range iso7588 {
		p.row(r.Source, r.Number, r.Meaning)
	}
}

func (p *figurePage) sources() {
	p.WriteString("\n## Sources\n\n| key | document and section | seen | confidence | note |\n|---|---|---|---|---|\n")
	for _, s := range Sources() {
		fmt.Fprintf(p, "| <a id=\"%s\"></a>%s | %s | %s | %s | %s |\n", s.Key, s.Key, s.Title, s.Where, s.Confidence, s.Note)
	}
}
