package gauge

import "fmt"

// protection prints the tables of fuses, breakers, links and shorts.
func (p *figurePage) protection() {
	p.table("How much of its rating a device may carry", "Published rules; they disagree.", "subject", "value", "unit", "note")
	for _, r := range reratings {
		p.row(r.Source, r.Subject, r.Value, r.Unit, r.Note)
	}
	p.table("Pulses", "I^2 t of a pulse: share x peak^2 x time. A straight slope from ib to ip: (ip^2 + ip ib + ib^2) t / 3.", "shape", "share", "time")
	for _, r := range pulseShapes {
		p.row(r.Source, r.Name, fmt.Sprintf("%.3g", r.Share), r.Time)
	}
	p.table("Life in pulses", "Largest I^2 t of a pulse over the melting I^2 t, 10 s of rest between.", "pulses", "share")
	for _, r := range pulseLife {
		p.row("pulse-life", r.pulses, r.share)
	}
	p.table("Breakers", "SAE J553.", "type", "reset", "what it does", "use")
	for _, r := range breakers {
		p.row(r.Source, r.Type, r.Reset, r.Behavior, r.Use)
	}
	p.table("Breaker trip", "Blade breakers; at a multiple of the rating (seconds; 0: no figure).", "x rating", "holds", "trips")
	for _, g := range breakerGates {
		p.row(g.Source, g.Share, g.MinS, g.MaxS)
	}
	p.table("Fusible links", "", "subject", "rule")
	for _, r := range linkRules {
		p.row(r.Source, r.Subject, r.Rule)
	}
	p.shorts()
}

func (p *figurePage) shorts() {
	p.table("Adiabatic constants", "k = K sqrt(ln((T2 + z)/(T1 + z))), A s^0.5/mm2, up to 5 s.", "metal", "K", "z C")
	for _, m := range metals {
		p.row(m.Source, m.Name, m.K, m.ZeroC)
	}
	p.table("Published k", "As printed; the start is the class temperature of the wire, legwork takes the real one.", "insulation", "metal", "from C", "to C", "k", "above 300 mm2")
	for _, r := range kRows {
		p.row(r.Source, r.Insulation, r.Metal, r.StartC, r.FinalC, r.K, r.KAbove300)
	}
	p.table("What insulation stands", "C; 0: none. The 240 h and 6 h figures are ageing tests.", "class", "for ever", "240 h", "6 h", "end of a short")
	for _, r := range endTemps {
		p.row(r.Source, r.Class, r.ClassC, r.Test240hC, r.Overload6h, r.ShortC)
	}
}

// placement prints the rules of place and rating, book by book.
func (p *figurePage) placement() {
	p.table("First device", "Published rules on need, place and rating (limit 0: no figure).", "document", "subject", "limit", "unit", "rule", "except")
	for _, r := range placements {
		p.row(r.Source, r.Document, r.Subject, r.Limit, r.Unit, r.Requirement, r.Exception)
	}
	p.table("Place of the first device, book by book", "Conductor from the source; the first row of a book that fits counts.", "book", "battery only", "sheathed", "within m", "starter exempt")
	for _, r := range placeRules {
		p.row(r.source, r.book, r.battery, r.sheathed, r.limitM, r.exempt)
	}
}
