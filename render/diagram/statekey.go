package diagram

import "legwork/render/scene"

// stateLines are the sentences of the key in the state view.
func (p *plan) stateLines() []string {
	return []string{
		"Contacts, outputs as then. Live rail: whole line.",
		"At a wire: its current; without one, its volts.",
		"Thin black: inside a device. Bar: one joint.",
		"Boxed number: goes on at that path; 2/29: sheet 2.",
	}
}

// drawStateKey shows the lines of the classes, from y down.
func (c *canvas) drawStateKey(y float64) {
	for i, l := range classLooks {
		n, at := string(l.class), y+legendRow*float64(i)
		c.legend.Add(scene.Line("ins s-"+n, legendX, at-0.9, legendX+9, at-0.9))
		if l.core > 0 {
			c.legend.Add(scene.Line("ins rs-"+n, legendX, at-0.9, legendX+9, at-0.9))
		}
		t := fitted(small(l.says), railsX-legendX-12)
		c.legend.Add(scene.Words(t.class(), legendX+10.5, at, scene.Start, t.text))
	}
}

// keyTitle heads the key.
func (p *plan) keyTitle() string {
	if p.now == nil {
		return "Reading this sheet"
	}
	return "Reading this sheet: step " + p.now.st.Step.Name
}
