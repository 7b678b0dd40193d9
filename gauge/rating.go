package gauge

// Rating is what a size in an insulation family carries, looked up once for
// the many questions that sizing asks of the same few. It is read-only.
type Rating struct {
	Size   Size
	Family Family

	base     base
	sizeConf Confidence
}

// RatingOf looks a size and family up.
func RatingOf(s Size, f Family) *Rating {
	return &Rating{Size: s, Family: f, base: baseOf(s, f), sizeConf: confidenceOf(s.Source)}
}

// Amps30 is the ampacity alone in air at 30 C, in amperes, as [Ampacity30].
func (r *Rating) Amps30() float64 { return r.base.amps }

// TempC is the temperature of the conductor in Celsius, as [ConductorTempC].
func (r *Rating) TempC(ambientC, amps float64) float64 { return r.base.tempC(ambientC, amps) }

// Fits is [Fits] for the rating's own size and family, whatever the case
// names. It allocates nothing.
func (r *Rating) Fits(c *WireCase) bool {
	j := r.judgement(c)
	j.bare = true
	j.run()
	return j.OK
}

// Fails names the first floor in the order of judging that the rating does
// not meet in a case, "" where it fits.
func (r *Rating) Fails(c *WireCase) string {
	j := r.judgement(c)
	j.bare = true
	j.run()
	return j.fails
}

// Judge is [JudgeWire] for the rating's own size and family, without the
// working: Why and NotJudged are empty. The case in the judgement names the
// rating's size and family, so that JudgeWire gives the working of it later.
func (r *Rating) Judge(c *WireCase) Judgement {
	j := r.judgement(c)
	j.Limits = make([]Limit, 0, floors)
	j.run()
	return j
}

// judgement is one that has not been run.
func (r *Rating) judgement(c *WireCase) Judgement {
	j := Judgement{Case: *c, base: r.base, sizeConfidence: r.sizeConf, quiet: true}
	j.Case.Size, j.Case.Family = r.Size, r.Family
	return j
}
