package harness_test

import (
	"context"
	"encoding/json"
	"errors"
	"fmt"
	"maps"
	"math"
	"slices"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"legwork/harness"
	"legwork/harness/check"
	"legwork/harness/diag"
	"legwork/harness/solve"
)

const (
	maxFuzzBytes = 20 << 10
	maxFuzzTime  = 10 * time.Second // far above what a draft of that size takes
)

// seeds are the drafts that fuzzing starts from.
func seeds(tb testing.TB) []string {
	drafts := shipped(tb)
	var list []string
	for _, name := range slices.Sorted(maps.Keys(drafts)) {
		list = append(list, drafts[name])
	}
	for _, r := range check.Rules() {
		list = append(list, r.Bad, r.Good)
	}
	return append(list, generated(60, 1))
}

// FuzzCheck sends drafts through the whole chain. Whatever the text says,
// legwork must not panic, must end in time, must print finite numbers and
// sorted findings, and its currents must add up.
func FuzzCheck(f *testing.F) {
	for _, src := range seeds(f) {
		f.Add(src, uint64(0))
		f.Add(src, uint64(1))
	}
	f.Fuzz(func(t *testing.T, src string, seed uint64) {
		if len(src) > maxFuzzBytes {
			return
		}
		if seed != 0 {
			src = scrambled(src, seed)
		}
		requireOutcome(t, src)
	})
}

// Drafts that read well but say nonsense get farther than those whose bytes
// were changed.
func TestScrambledDrafts(t *testing.T) {
	for i, src := range seeds(t) {
		for seed := range uint64(12) {
			text := scrambled(src, uint64(i)*1000+seed+1)
			t.Run(fmt.Sprint(i, "-", seed), func(t *testing.T) { requireOutcome(t, text) })
		}
	}
}

// requireOutcome checks a draft and what holds for every outcome.
func requireOutcome(t *testing.T, src string) {
	t.Helper()
	ctx, cancel := context.WithTimeout(t.Context(), maxFuzzTime)
	defer cancel()
	d := besideShelf(t, "fuzz.draft", src)
	requireSound(t, d.Findings, src)
	r, err := d.Check(ctx, harness.Options{})
	if errors.Is(err, harness.ErrProfile) {
		return
	}
	require.NoError(t, err, src)
	requireSound(t, r.Findings, src)
	out, err := json.Marshal(r.Report()) // fails on a number that is not finite
	require.NoError(t, err, src)
	require.NotEmpty(t, out)
	if r.Sizes == nil {
		return
	}
	for _, w := range r.Sizes.Wires {
		require.False(t, math.IsNaN(w.DesignA+w.HeatA+w.DropV+w.Conductor.Ohm+w.Conductor.TempC), "wire %s of\n%s", w.Wire.Number, src)
	}
	for _, h := range []*solve.History{r.Sizes.Hot, r.Sizes.Cold, r.Sizes.Usual} {
		requireSettled(t, h, src)
	}
}

// requireSound wants findings in order, each with a rule that is explained and
// a place that is in the text.
func requireSound(t *testing.T, list diag.List, src string) {
	t.Helper()
	sorted := slices.Clone(list)
	sorted.Sort()
	require.Equal(t, sorted, list)
	for _, f := range list {
		_, known := check.RuleOf(f.Rule)
		require.True(t, known, f.Rule)
		require.NotEmpty(t, f.Msg)
		require.NotEqual(t, "program-fault", f.Rule, "%s\n%s", f.Msg, src)
		require.True(t, f.At.Off >= 0 && f.At.Off <= f.At.EndOff && f.At.EndOff <= len(src), "%s: %v", f.Rule, f.At)
		for _, v := range f.Values {
			require.False(t, math.IsNaN(v.Got+v.Limit) || math.IsInf(v.Got+v.Limit, 0), "%s: %v", f.Rule, v)
		}
	}
}

func requireSettled(t *testing.T, h *solve.History, src string) {
	t.Helper()
	for _, s := range h.States {
		if s.Skipped != "" {
			continue
		}
		require.True(t, s.Met, "%s: currents are off by %g A\n%s", s.Step.Name, s.Residual, src)
		for _, term := range h.Model.Terminals {
			r := s.Reading(term)
			require.False(t, math.IsInf(r.Volts, 0) || math.IsNaN(r.Volts))
			require.Equal(t, r.OK, r.Reason == "", "a reason where it floats, and only there")
		}
	}
}
