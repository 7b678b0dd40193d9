package check_test

import (
	"context"
	"fmt"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"legwork/harness"
	"legwork/harness/check"
)

// large is a draft of n units of ten wires each: a fused motor on a relay,
// with a lamp, both worked by a controller. The relay is overloaded, so that
// the rule about contacts has to look behind each of them.
func large(n int) string {
	var b strings.Builder
	b.WriteString("battery G1  cca 650A  grounds-to frame\nfuse F0  500A  bolt-down  from G1 6in\nbox A0\n  bus BAT ")
	for i := range n {
		fmt.Fprintf(&b, " F%d.1", i+1)
	}
	b.WriteString("\nwire main1  G1.+  F0.1  2/0AWG  6in\nwire main2  F0.2  A0.BAT  2/0AWG  6in\n")
	for i := range n {
		u := i + 1
		fmt.Fprintf(&b, "fuse F%d  15A  in A0\nrelay K%d  contact 10A  motor 3A\nmotor M%d  draws 4A 13.5V\nlamp P%d  5W\n", u, u, u, u)
		fmt.Fprintf(&b, "splice J%d\nstud E%d  on frame  M6\nmodule A%d\n  BAT  feed 0.1A\n  OUT  low-side 1A  clamps  when running\n  GND  ground\n", u, u, u)
		for w, ends := range []string{"F%d.2 J%d", "J%d K%d.30", "K%d.87 M%d.+", "M%d.- E%d", "J%d K%d.86", "K%d.85 A%d.OUT", "J%d A%d.BAT", "A%d.GND E%d", "J%d P%d.1", "P%d.2 E%d"} {
			fmt.Fprintf(&b, "wire %d  %s  14AWG  2ft\n", 10*i+w+1, fmt.Sprintf(ends, u, u))
		}
	}
	return b.String()
}

// All rules on 500 and on 5,000 wires: ten times the wires should take about
// ten times as long; a rule that looks at every pair takes a hundred times.
func BenchmarkRules(b *testing.B) {
	for _, units := range []int{50, 500} {
		d := harness.Parse("large.draft", []byte(large(units)))
		r, err := d.Check(context.Background(), harness.Options{})
		require.NoError(b, err)
		require.NotNil(b, r.Sizes, "%v", r.Findings)
		b.Run(fmt.Sprint(10*units), func(b *testing.B) {
			for b.Loop() {
				p := &check.Pass{Model: r.Model, Nets: r.Model.Nets(), Routes: r.Routes, Sizes: r.Sizes, Profile: r.Profile}
				_, skipped, err := check.Run(context.Background(), p)
				require.NoError(b, err)
				require.Empty(b, skipped)
			}
		})
	}
}
