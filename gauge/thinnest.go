package gauge

// Thinnest is the first size of an ascending ladder that meets every floor
// that may decide, with its judgement; MaxOhm is the resistance of the whole
// conductor, LengthM its length. ok is false when even the last does not fit:
// the judgement is then that of the last size. A nil ladder gives nothing.
// More current, length or heat never gives a thinner wire.
func Thinnest(ladder []Size, c WireCase) (j Judgement, ok bool) {
	for i, s := range ladder {
		c.Size = s
		if Fits(c) {
			return JudgeWire(c), true
		}
		if i == len(ladder)-1 {
			j = JudgeWire(c)
		}
	}
	return j, false
}
