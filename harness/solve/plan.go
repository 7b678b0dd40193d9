package solve

import (
	"context"
	"fmt"
	"slices"
	"sync"

	"legwork/harness/model"
	"legwork/harness/part"
)

// Plan holds what all runs of one model share: which terminals are one node,
// what the devices put into the network, and the order of elimination. It is
// built lazily, once for each corner and grade. A Plan may be used by several
// goroutines at a time; each run borrows a player of its own.
type Plan struct {
	model *model.Model
	cells [2][2]cell // by corner and grade
}

// cell is the network of one corner and grade, and the players that rest.
type cell struct {
	mu    sync.Mutex
	frame *frame
	idle  []*play
}

// NewPlan prepares a model for being played. The model must not change as
// long as the plan is used, save for the rating chosen for a fuse that the
// draft gives none: the next run takes it up.
func NewPlan(m *model.Model) *Plan { return &Plan{model: m} }

// Run plays all steps of one case with the given conductors, one for each
// wire of the model by wire ID. An error is a canceled context, a conductor
// without a sensible resistance, or a network that could not be solved; what
// is wrong with the harness itself is in the states.
func (p *Plan) Run(ctx context.Context, wires []Conductor, c Case) (*History, error) {
	if err := p.admits(wires, c); err != nil {
		return nil, err
	}
	at := &p.cells[c.Corner][c.Grade]
	player := at.borrow(p.model, c)
	defer at.give(player)
	if err := player.fit(wires); err != nil {
		return nil, err
	}
	return player.history(ctx, c)
}

// Last is Run for a case that is played once, when those played before are
// done with: its network takes over what theirs has room for, and their order
// of elimination where it is the same. No other run may be under way.
func (p *Plan) Last(ctx context.Context, wires []Conductor, c Case) (*History, error) {
	if err := p.admits(wires, c); err != nil {
		return nil, err
	}
	var old *play
	for i := range p.cells {
		for k := range p.cells[i] {
			if at := &p.cells[i][k]; len(at.idle) > 0 {
				old = at.idle[0]
			}
			p.cells[i][k] = cell{}
		}
	}
	at := &p.cells[c.Corner][c.Grade]
	at.build(p.model, c)
	player := newPlay(at.frame, old)
	defer at.give(player)
	if err := player.fit(wires); err != nil {
		return nil, err
	}
	return player.history(ctx, c)
}

func (p *Plan) admits(wires []Conductor, c Case) error {
	switch {
	case len(wires) != len(p.model.Wires):
		return fmt.Errorf("solve: %d conductors for %d wires", len(wires), len(p.model.Wires))
	case c.Corner > part.ColdStart || c.Grade > part.Nominal:
		return fmt.Errorf("solve: no corner %d or grade %d", c.Corner, c.Grade)
	case len(p.model.Steps) > maxSteps:
		return fmt.Errorf("solve: %d steps, at most %d", len(p.model.Steps), maxSteps)
	}
	return nil
}

// maxSteps is what a part.StepSet can hold.
const maxSteps = 64

// borrow gives a player that nobody else uses, and builds the network first
// where there is none yet, or a fuse has been given another rating, other
// diodes are open, or a cold start is another one.
func (c *cell) borrow(m *model.Model, k Case) *play {
	c.mu.Lock()
	defer c.mu.Unlock()
	if c.frame == nil || !slices.Equal(chosenRatings(m), c.frame.rated) || !slices.Equal(k.open(), c.frame.open) || k.Start != c.frame.start {
		c.build(m, k)
	}
	if n := len(c.idle); n > 0 {
		p := c.idle[n-1]
		c.idle = c.idle[:n-1]
		return p
	}
	return newPlay(c.frame, nil)
}

func (c *cell) build(m *model.Model, k Case) {
	c.frame, c.idle = newFrame(m, k), nil
	c.frame.rated = chosenRatings(m)
}

func (c *cell) give(p *play) {
	c.mu.Lock()
	defer c.mu.Unlock()
	if p.f == c.frame {
		c.idle = append(c.idle, p)
	}
}

// chosenRatings lists the ratings that were chosen for fuses without one.
func chosenRatings(m *model.Model) []float64 {
	var rated []float64
	for _, d := range m.Devices {
		if d.FuseRatedA != 0 {
			rated = append(rated, float64(d.ID), d.FuseRatedA)
		}
	}
	return rated
}

// Run plays all steps of one case; see [Plan.Run].
func Run(ctx context.Context, m *model.Model, wires []Conductor, c Case) (*History, error) {
	return NewPlan(m).Run(ctx, wires, c)
}
