package model

import (
	"slices"
	"strconv"
	"strings"

	"legwork/harness/draft"
	"legwork/harness/part"
	"legwork/harness/quantity"
)

// threadMM reads a stud's thread that does not begin with a digit, and gives
// its diameter in mm: M8 is 8; No10 is 0.060 in + 10 x 0.013 in (the number
// series of unified threads, ASME B1.1; from memory).
func threadMM(word string) (mm float64, ok bool) {
	if number, numbered := strings.CutPrefix(word, "No"); numbered {
		n, err := strconv.ParseUint(number, 10, 8)
		return (0.060 + 0.013*float64(n)) * 25.4, err == nil && n <= 12
	}
	q, err := quantity.Parse(word)
	return q.Value, err == nil && q.Dim == quantity.Thread
}

// readThread reads a bare thread where a setting takes one.
func (b *builder) readThread(f *form, it draft.Item, word string) bool {
	i := slices.IndexFunc(f.settings, func(s part.Setting) bool {
		return s.Bare && len(s.Figures) > 0 && s.Figures[0].Dim == quantity.Thread
	})
	if i < 0 {
		return false
	}
	mm, ok := threadMM(word)
	if !ok {
		return false
	}
	s := &f.settings[i]
	v := b.newValue(s, it.At)
	v.Nums[0], v.Set[0] = mm, true
	fig := figure{Quantity: quantity.Quantity{Value: mm, Dim: quantity.Thread, Raw: word}, at: it.At}
	if b.inRange(s.Name+" of "+f.name, s.Figures[0], fig) {
		b.keep(f, v)
	} else {
		f.broken = true
		f.given.set(s, it.At)
	}
	return true
}

// threadOf gives a stud's thread as it stands in the draft.
func (b *builder) threadOf(d *Device) string {
	if !d.Kind.Self {
		return ""
	}
	for _, v := range d.Values {
		if len(v.Set) == 0 || !v.Set[0] {
			continue
		}
		dim := v.Setting.Figures[0].Dim
		if (dim == quantity.Thread || dim == quantity.Length) && v.At.Off >= 0 && v.At.EndOff <= len(b.srcOf(v.At)) && v.At.Off < v.At.EndOff {
			return string(b.srcOf(v.At)[v.At.Off:v.At.EndOff])
		}
	}
	return ""
}
