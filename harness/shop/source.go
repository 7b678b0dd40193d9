package shop

import (
	"legwork/harness/model"
	"legwork/harness/route"
	"legwork/harness/size"
)

// Source is what the papers are made from.
type Source struct {
	Model  *model.Model
	Routes *route.Routes
	Sizes  *size.Sizes
}

// Paper is one sort of paper that can be asked for by name.
type Paper struct {
	Name  string
	Title string
	Make  func(Source) Table
}

// Papers lists the papers in the order in which a builder needs them.
func Papers() []Paper {
	return []Paper{
		{"cut", "Cut list: every wire to cut and crimp, with its ends", Cut},
		{"spools", "Spool list: how much wire of each size and color the cut list takes", Spools},
		{"pins", "Pin list: what sits in every cavity and on every post", Pins},
		{"volts", "Volts sheet: what a meter reads at every terminal in every step", Volts},
	}
}

// PaperOf finds a paper by its name.
func PaperOf(name string) (Paper, bool) {
	for _, p := range Papers() {
		if p.Name == name {
			return p, true
		}
	}
	return Paper{}, false
}
