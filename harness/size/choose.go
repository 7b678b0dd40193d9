package size

import (
	"context"

	"legwork/gauge"
	"legwork/harness/model"
	"legwork/harness/part"
	"legwork/harness/route"
	"legwork/harness/solve"
)

// rounds bounds the loop of sizing and solving again. Chains only ever grow on
// a finite ladder, so it ends by itself; a harness needs two or three rounds.
const rounds = 12

// referenceMM2 is the conductor that stands in for every unsized wire while
// the design currents are found.
const referenceMM2 = 10

// Choose sizes every wire that the draft leaves open and rates every fuse
// without a rating, then plays the steps with the outcome. Sizes that the
// draft gives are kept and judged. The cold start, which no size hangs on,
// is played as start says. The error is the context's, or a fault of
// the program.
func Choose(ctx context.Context, m *model.Model, r *route.Routes, p gauge.Profile, start part.Start) (*Sizes, error) {
	c := newChooser(m, r, p)
	c.start = start
	ok, err := c.choose(ctx)
	if err == nil && !ok {
		c = newChooser(m, r, p)
		c.start, c.thorough = start, true
		_, err = c.choose(ctx)
	}
	if err != nil {
		return nil, err
	}
	return c.finish(ctx)
}

// choose finds the sizes; ok is false where the rounds took a relay to be
// where it does not get to with them.
func (c *chooser) choose(ctx context.Context) (ok bool, err error) {
	if err := c.design(ctx); err != nil {
		return false, err
	}
	c.link()
	c.floors()
	if err := c.settle(ctx); err != nil {
		return false, err
	}
	return c.follow(ctx)
}

// chooser is one run of sizing. It reads the model and writes nothing into it.
type chooser struct {
	m        *model.Model
	r        *route.Routes
	p        gauge.Profile
	start    part.Start
	plan     *solve.Plan
	thorough bool // follows every relay move by move in every round
	last     bool // what is played now is played once
	ladder   []gauge.Size
	starter  []bool // by wire ID: it lands where a starter motor takes its current
	of       []int  // by wire ID: its chain
	chains   []chain
	fuses    []Fuse
	rating   map[*model.Device][]float64
	guards   []Guard
	backs    []Back
	menus    menus
	menu     []menu          // by wire ID
	stand    []*gauge.Rating // by wire ID: what stands in for it while design currents are found
	base     []*gauge.Rating // by wire ID: the thinnest that heat and protection admit
	cur      currents
	pulses   []pulse
	dead     dead
	history  *solve.History
	charge   *charging         // nil where no machine charges a battery
	pulled   []Pull            // of the last play
	pullA    []float64         // by wire ID: what a starter's solenoid draws through it to pull in
	played   []solve.Conductor // by wire ID: what the history was played with
	short    []*shorts         // by bank
	shorts   []float64         // by wire ID: least current of a short at its far end
	tracer   *tracer
	banks    []bank
	ways     []ways          // by step ID, and within it by bank
	flows    []flow          // of all losses of a division
	taken    []Share         // room for the shares of one path
	stuck    map[judged]bool // loads that no size of the open wires brings within their limit
	spares   []float64       // by wire ID: the largest resistance that drop allows, 0 where not judged
}

func newChooser(m *model.Model, r *route.Routes, p gauge.Profile) *chooser {
	c := &chooser{m: m, r: r, p: p, plan: solve.NewPlan(m), ladder: gauge.Ladder(m.Metric), pulses: pulses(m), banks: banks(m), tracer: newTracer(m)}
	c.ways = make([]ways, len(m.Steps)*len(c.banks))
	c.starter = make([]bool, len(m.Wires))
	for i, w := range m.Wires {
		c.starter[i] = feedsStarter(w)
	}
	c.set()
	return c
}

// link finds what protects each wire and joins the wires into chains.
func (c *chooser) link() {
	at := guarded(c.m, c.rated)
	c.guards, c.backs = wireGuards(c.m, at), c.findBacks(at)
	for _, b := range c.banks {
		c.short = append(c.short, newShorts(c.m, c.rated, b))
	}
	of, members := chains(c.m, c.guards)
	c.of = of
	c.chains = make([]chain, len(members))
	for i, wires := range members {
		most := c.ceiling(wires)
		c.chains[i] = chain{wires: wires, top: c.fitTop(wires, most), most: most, fixed: allGiven(wires), ohm: c.ohmAt}
		c.chains[i].grams = c.weigh(wires)
	}
}

func allGiven(wires []*model.Wire) bool {
	for _, w := range wires {
		if _, given := givenSize(w); !given {
			return false
		}
	}
	return true
}

// weigh gives the copper of a chain's open wires at a rung, in grams.
func (c *chooser) weigh(wires []*model.Wire) func(rung int) float64 {
	lengthM := 0.0
	for _, w := range wires {
		if _, given := givenSize(w); !given {
			lengthM += c.r.Paths[w.ID].LengthM
		}
	}
	return func(rung int) float64 {
		return c.ladder[rung].AreaMM2 * lengthM * 1000 * copperGramPerMM3
	}
}

// conductors lists every wire as it now stands, in the room of an older list;
// pick gives its size.
func (c *chooser) conductors(list []solve.Conductor, pick func(w *model.Wire) *gauge.Rating) []solve.Conductor {
	if list == nil {
		list = make([]solve.Conductor, len(c.m.Wires))
	}
	for i, w := range c.m.Wires {
		s := pick(w)
		temp := c.tempAt(w, s)
		length := c.r.Paths[w.ID].LengthM
		list[i] = solve.Conductor{
			Size: s.Size, Family: s.Family, LengthM: length, TempC: temp, Ohm: c.copperOhm(w, s, temp), Measured: w.Ohm > 0,
		}
	}
	return list
}

func (c *chooser) now(w *model.Wire) *gauge.Rating {
	return c.menu[w.ID].at(c.chains[c.of[w.ID]].rung)
}

// design finds the design currents with every open wire at the reference
// conductor, and rates the fuses from them.
func (c *chooser) design(ctx context.Context) error {
	pick := func(w *model.Wire) *gauge.Rating { return c.stand[w.ID] }
	c.played = c.conductors(nil, pick)
	h, err := c.playOpen(ctx, solve.Case{Corner: part.HotSoak, Grade: part.Sure})
	if err != nil {
		return err
	}
	c.history, c.charge = h, newCharging(c.m, c.tracer, h)
	for range 2 { // the second time with the copper warm
		if err := c.recharge(ctx); err != nil {
			return err
		}
	}
	c.repull()
	c.rateFuses(h)
	return nil
}

func (c *chooser) play(ctx context.Context, wires []solve.Conductor, k solve.Case) (*solve.History, error) {
	k.Fuses, k.Open = c.rating, c.dead.open
	if c.last {
		return c.plan.Last(ctx, wires, k)
	}
	return c.plan.Run(ctx, wires, k)
}
