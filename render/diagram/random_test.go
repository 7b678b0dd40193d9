package diagram_test

import (
	"fmt"
	"math/rand"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// wild is a draft in which anything is wired to anything: no vehicle, but
// every shape that the layout may meet.
func wild(r *rand.Rand) string {
	var b strings.Builder
	b.WriteString("draft 1\nmetal frame\nmetal block\nbattery G1 grounds-to frame\nstud E1 on frame M8\nstud E2 on block M8\nstrap 900 E1 E2 4AWG 1ft\n")
	ends := []string{"G1.+", "G1.+", "E1", "E2", "E1"}
	add := func(line string, pins ...string) {
		b.WriteString(line + "\n")
		ends = append(ends, pins...)
	}
	for i := range 2 + r.Intn(7) {
		n := fmt.Sprint(i)
		add("fuse F"+n+" 10A", "F"+n+".1", "F"+n+".2")
		switch r.Intn(9) {
		case 0:
			add("relay K"+n, "K"+n+".30", "K"+n+".87", "K"+n+".85", "K"+n+".86")
		case 1:
			add("relay K"+n+" change-over", "K"+n+".30", "K"+n+".87", "K"+n+".87a", "K"+n+".85", "K"+n+".86")
		case 2:
			add("keyswitch S"+n+"\n  off\n  run B IGN\n  crank B IGN ST", "S"+n+".B", "S"+n+".IGN", "S"+n+".ST")
		case 3:
			add("module A"+n+"\n  V feed 1A always\n  L low-side 1A when running\n  H high-side 1A when running\n  I input\n  G ground\n  SG sensor-ground",
				"A"+n+".V", "A"+n+".L", "A"+n+".H", "A"+n+".I", "A"+n+".G", "A"+n+".SG")
		case 4:
			add("sensor B"+n, "B"+n+".+", "B"+n+".-", "B"+n+".S")
		case 5:
			add("connector X"+n+" 4way\n  half a pins\n  half b sockets", "X"+n+".a.1", "X"+n+".b.1", "X"+n+".a.2", "X"+n+".b.2")
		case 6:
			add("splice J"+n, "J"+n, "J"+n, "J"+n)
		case 7:
			add("lamp P"+n+" 21W grounds-to block", "P"+n+".1")
		default:
			add("motor M"+n+" draws 5A 13V", "M"+n+".+", "M"+n+".-")
		}
		if r.Intn(3) == 0 {
			add("diode D"+n, "D"+n+".A", "D"+n+".K")
		}
	}
	for i := range len(ends) {
		if i%9 == 0 {
			fmt.Fprintf(&b, "circuit c%d \"Circuit %d\"\n", i, i)
		}
		a, z := ends[r.Intn(len(ends))], ends[r.Intn(len(ends))]
		if a != z {
			fmt.Fprintf(&b, "  wire %d %s %s\n", i+1, a, z)
		}
	}
	return b.String()
}

// TestWild draws a hundred such tangles. Whatever is drawn has to be true:
// every wire there, both ends where they belong, every terminal tied to its
// joint, no symbol crossed, no wire on another. Boxes and texts may run out of
// room now and then: the counts are a ratchet, of some 2600 boxes and
// 58000 texts, legends among them.
func TestWild(t *testing.T) {
	boxes, texts := 0, 0
	for seed := range 100 {
		src := wild(rand.New(rand.NewSource(int64(seed))))
		m := build(t, "wild", src)
		r := judged(t, m, draw(t, m))
		for _, rule := range []string{"missing", "end", "lead", "joint", "id", "through", "over", "frame", "size", "name"} {
			require.False(t, r.has(rule), "seed %d: %v\n%s", seed, r.errors, src)
		}
		for _, e := range r.errors {
			if strings.HasPrefix(e, "box:") {
				boxes++
			} else {
				texts++
			}
		}
	}
	require.LessOrEqual(t, boxes, 1, "boxes on something")
	require.LessOrEqual(t, texts, 3, "texts on something")
}

// aged adds what an old vehicle has to a tangle: existing things, caps, bare
// ends, cables with a drain.
func aged(r *rand.Rand) string {
	var b strings.Builder
	for l := range strings.Lines(wild(r)) {
		l = strings.TrimSuffix(l, "\n")
		if head := strings.TrimSpace(l); r.Intn(3) == 0 && (strings.HasPrefix(head, "wire") || strings.HasPrefix(head, "fuse") || strings.HasPrefix(head, "lamp")) {
			l += " existing"
		}
		b.WriteString(l + "\n")
	}
	b.WriteString("cap X90\ncap X91\nwire 901 F0.1 X90\nwire 902 X91 E1\nwire 903 F1.2 open\nwire 904 open E2\n")
	b.WriteString("sensor B90\nfuse F90 5A\nlamp P90\n")
	b.WriteString("cable 950 20AWG shielded\n  core 951 F0.2 B90.+\n  core 952 F1.1 B90.S\n  drain 953 E1 open\n")
	b.WriteString("cable 960 16AWG existing\n  core 961 F90.2 P90.1\n  core 962 E2 P90.2\n  core 963 open open2\n")
	return strings.ReplaceAll(b.String(), "open2", "X91")
}

// TestAged holds such tangles to the same rules, without a budget for what is
// false; texts that run out of room are a ratchet.
func TestAged(t *testing.T) {
	texts := 0
	for seed := range 60 {
		src := aged(rand.New(rand.NewSource(int64(seed + 5000))))
		m := build(t, "aged", src)
		sheets := draw(t, m)
		r := judged(t, m, sheets)
		for _, rule := range []string{"missing", "end", "lead", "joint", "id", "through", "over", "frame", "size", "name"} {
			require.False(t, r.has(rule), "seed %d: %v\n%s", seed+5000, r.errors, src)
		}
		require.NoError(t, numbers(m, sheets), "seed %d\n%s", seed+5000, src)
		texts += len(r.errors)
	}
	require.LessOrEqual(t, texts, 3, "texts and boxes on something")
}
