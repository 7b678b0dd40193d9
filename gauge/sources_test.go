package gauge

import (
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

func TestSourcesAreWholeAndSingle(t *testing.T) {
	seen := map[string]bool{}
	kebab := regexp.MustCompile(`^[a-z0-9]+(-[a-z0-9]+)*$`)
	for _, s := range slices.Concat(sourceLists()...) {
		require.Regexp(t, kebab, s.Key)
		require.False(t, seen[s.Key], "%s twice", s.Key)
		seen[s.Key] = true
		require.NotEmpty(t, s.Title, s.Key)
		require.Contains(t, []string{read, readSecond, computed, memory, practice, stated}, s.Where, s.Key)
		require.NotEqual(t, "invalid", s.Confidence.String(), s.Key)
		if s.Where == memory {
			require.LessOrEqual(t, s.Confidence, Medium, "%s: memory alone is never more than medium", s.Key)
		}
		got, ok := SourceOf(s.Key)
		require.True(t, ok)
		require.Equal(t, s, got)
	}
	_, ok := SourceOf("no-such-source")
	require.False(t, ok)
	require.Equal(t, Memory, confidenceOf("no-such-source"))
}

func TestLowAndMemoryNeverDecide(t *testing.T) {
	require.False(t, Confidence(0).MayDecide())
	require.False(t, Memory.MayDecide())
	require.False(t, Low.MayDecide())
	require.True(t, Medium.MayDecide())
	require.True(t, High.MayDecide())
	require.True(t, Computed.MayDecide())
}

// tests that every "(source x)" of a doc comment, and every key of a table,
// is a source, and that no source is left over.
func TestCitedKeysExist(t *testing.T) {
	files, err := filepath.Glob("*.go")
	require.NoError(t, err)
	note := regexp.MustCompile(`\(sources? ([^()]+)\)`)
	key := regexp.MustCompile(`^[a-z0-9]+(-[a-z0-9]+)+$`)
	text, noted := "", map[string]bool{}
	for _, name := range files {
		if strings.HasSuffix(name, "_test.go") {
			continue
		}
		b, err := os.ReadFile(name)
		require.NoError(t, err)
		text += string(b)
		flat := strings.ReplaceAll(string(b), "\n// ", " ")
		for _, m := range note.FindAllStringSubmatch(flat, -1) {
			for _, word := range strings.FieldsFunc(m[1], func(r rune) bool { return r == ',' || r == ' ' }) {
				_, ok := SourceOf(word)
				require.True(t, ok || !key.MatchString(word), "%s cites %q", name, word)
				noted[word] = ok
			}
		}
	}
	for _, s := range Sources() {
		require.True(t, noted[s.Key] || strings.Count(text, `"`+s.Key+`"`) > 1, "source %s is used nowhere", s.Key)
	}
}

// everyCase walks sizes, families, devices and profiles, so that each kind of
// step is written at least once.
func everyCase(visit func(Judgement)) {
	var sizes []Size
	for _, n := range []int{22, 20, 18, 10, 3, 0} {
		s, _ := AWGSize(n)
		sizes = append(sizes, s)
	}
	for _, mm2 := range []float64{0.5, 6} {
		s, _ := MetricSize(mm2)
		sizes = append(sizes, s)
	}
	for _, s := range sizes {
		for _, f := range append(Families(), Family{Name: "unseen", TempC: 105, ShortC: 160, Source: "inrush-practice"}) {
			for _, p := range Profiles() {
				for _, kind := range []string{"blade", "maxi", "bolt-down", "glass", "breaker", ""} {
					for _, short := range []float64{0, 5, 40, 300} {
						visit(JudgeWire(WireCase{
							Size: s, Family: f, Profile: p, AmbientC: 55, Loaded: 3, LengthM: 2,
							HeatA: 4, FuseA: 15, FuseKind: kind, ShortA: short, MaxOhm: 0.05,
						}))
					}
				}
			}
		}
	}
}

func TestStepsCiteSources(t *testing.T) {
	keys := map[string]bool{}
	count := func(steps []Step) {
		for _, s := range steps {
			require.NotEmpty(t, s.Text)
			keys[s.Source] = true
		}
	}
	everyCase(func(j Judgement) {
		for _, l := range j.Limits {
			require.NotEmpty(t, l.Why, l.Name)
			count(l.Why)
		}
		count(j.NotJudged)
	})
	for _, family := range FuseFamilies() {
		_, why, _ := ChooseFuse(family, 10, Profiles()[0])
		count(why)
	}
	_, why := CutLengthM(1, 2, true)
	count(why)
	for k := range keys {
		_, ok := SourceOf(k)
		require.True(t, ok, "step cites %q", k)
	}
	require.Greater(t, len(keys), 20)
}

// A floor that leans on a figure from memory is a hint, and no hint decides.
func TestHintsDecideNothing(t *testing.T) {
	hints := 0
	everyCase(func(j Judgement) {
		sure := true
		for _, l := range j.Limits {
			weak := false
			for _, s := range l.Why {
				// the usual gate is only told beside a sure one
				if !confidenceOf(s.Source).MayDecide() && !strings.HasPrefix(s.Text, "usual gate") {
					weak = true
				}
			}
			if !confidenceOf(j.Case.Family.Source).MayDecide() && l.Name != FloorDrop && l.Name != FloorMechanical && l.Unit != "" {
				weak = true
			}
			require.Equal(t, weak, l.Hint, "%s of %s %s", l.Name, j.Case.Size.Name, j.Case.Family.Name)
			if l.Hint {
				hints++
				require.NotEqual(t, l.Name, j.Governs)
				continue
			}
			sure = sure && l.OK
		}
		require.Equal(t, sure, j.OK)
		require.Equal(t, j.OK, Fits(j.Case))
	})
	require.Positive(t, hints)
}
