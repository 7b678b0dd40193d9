package draft

import (
	"os"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// sample reads one of the invented drafts at the root of the project.
func sample(t testing.TB, name string) []byte {
	src, err := os.ReadFile("../../testdata/" + name)
	require.NoError(t, err)
	return src
}

func TestSamplesHaveNoFaults(t *testing.T) {
	for name, statements := range map[string]int{
		"least.draft": 7,
		// draft, harness, 4 places, 3 legs, 2 metals, 3 studs, strap; 4 sources and
		// F1; box with bus; 4 fuses; keyswitch with 5; 2 relays, motor; module with
		// 4, connector with 2; 3 circuits with 10, 3 and 6 wires.
		"small.draft": 15 + 4 + 2 + 4 + 6 + 3 + 5 + 3 + 22,
	} {
		t.Run(name, func(t *testing.T) {
			f, found := Parse(name, sample(t, name))
			require.Empty(t, found)
			n := 0
			for s := range f.All() {
				require.False(t, s.Bad)
				n++
			}
			require.Equal(t, statements, n)
		})
	}
}

// tenThousandWires is a draft of the size that the design asks to be read in
// about 15 ms.
func tenThousandWires() []byte {
	var b strings.Builder
	for c := range 100 {
		b.WriteString("circuit c" + strconv.Itoa(c) + "  \"Load\"  drop 3%\n")
		for w := range 100 {
			n := strconv.Itoa(c*100 + w)
			b.WriteString("  wire " + n + "  F" + n + ".2  K" + n + ".87  14AWG  GN/WH  38in\n")
		}
	}
	return []byte(b.String())
}

func BenchmarkParse(b *testing.B) {
	src := tenThousandWires()
	b.SetBytes(int64(len(src)))
	b.ReportAllocs()
	for b.Loop() {
		Parse("big.draft", src)
	}
}

func BenchmarkTidy(b *testing.B) {
	f, _ := Parse("big.draft", tenThousandWires())
	b.ReportAllocs()
	for b.Loop() {
		Tidy(f)
	}
}
