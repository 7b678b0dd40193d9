package model

import "legwork/gauge"

// assumedAWG is taken for an existing wire whose size nobody knows: the
// thinnest that is sold for vehicles in general, so that nothing passes by luck.
const assumedAWG = 18

// measured reads what was measured on a wire that is in the vehicle.
func (b *builder) measured(w *Wire, f *form) {
	drop := b.said(f, dropSetting)
	switch {
	case drop == nil:
	case !w.Existing && w.Cable == nil:
		b.say(wordRule, drop.At, "%s has a measured drop but is not existing", f.owner)
	default:
		w.Ohm, w.OhmAt = drop.Nums[0]/drop.Nums[1], drop.At
	}
}

// assumeSize gives an existing wire without a size one, and says so.
func (b *builder) assumeSize(w *Wire) {
	if w.Sized || !w.Existing {
		return
	}
	w.Size, w.Sized = gauge.AWGSize(assumedAWG)
	w.SizeAt = w.At
	b.guess("size of existing wire "+w.Number, w.Size.Name, "", w.At)
}
