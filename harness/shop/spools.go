package shop

import (
	"cmp"
	"slices"

	"legwork/harness/model"
)

// spool is one sort of wire with what the cut list takes of it.
type spool struct {
	size, family, color string
	areaMM2             float64
	wires               int
	lengthM             float64 // sum of cut lengths
	assumed             bool
}

// Spools adds up the cut list by size, family and color, thick wire first.
// Straps are left out: they are bought or braided as they are.
func Spools(s Source) Table {
	t := Table{
		Name: "spools", Title: "Spool list",
		Notes: []string{"The sum of the cut lengths, nothing added for waste. Straps and leads are left out."},
		Columns: []Column{
			{Key: "size", Name: "Size"},
			{Key: "family", Name: "Family"},
			{Key: "color", Name: "Color"},
			{Key: "wires", Name: "Wires", Kind: Number},
			totalColumn(s.Model.Metric),
			{Key: "length_basis", Name: "Length"},
		},
	}
	for _, p := range spools(s) {
		total, state := p.lengthM, "known"
		if !s.Model.Metric {
			total /= 12 * inchM
		}
		if p.assumed {
			state = "assumed in part"
		}
		t.Rows = append(t.Rows, []Cell{
			Word(p.size), Word(p.family), Word(p.color), Figure(float64(p.wires), 0), Figure(total, 2), Word(state),
		})
	}
	return t
}

func totalColumn(metric bool) Column {
	if metric {
		return Column{Key: "total_m", Name: "Total", Unit: "m", Kind: Number}
	}
	return Column{Key: "total_ft", Name: "Total", Unit: "ft", Kind: Number}
}

func spools(s Source) []spool {
	var list []spool
	at := map[[3]string]int{}
	for _, w := range s.Model.Wires {
		if w.Role != model.Built || w.Existing || w.Cable != nil {
			continue
		}
		k := s.Sizes.Wires[w.ID].Conductor
		key := [3]string{k.Size.Name, k.Family.Name, w.Color.Shown}
		i, ok := at[key]
		if !ok {
			i = len(list)
			at[key] = i
			list = append(list, spool{size: key[0], family: key[1], color: key[2], areaMM2: k.Size.AreaMM2})
		}
		list[i].wires++
		list[i].lengthM += cutM(s, w)
		list[i].assumed = list[i].assumed || basis(s, w) == assumed
	}
	slices.SortStableFunc(list, func(a, b spool) int {
		return cmp.Or(cmp.Compare(b.areaMM2, a.areaMM2), cmp.Compare(a.family, b.family), cmp.Compare(a.color, b.color))
	})
	return list
}
