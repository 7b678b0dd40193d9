package gauge

import "fmt"

// electric prints the tables of relays, batteries, cranking and charging.
func (p *figurePage) electric() {
	p.relays()
	p.batteries()
	p.supply()
	p.charging()
}

func (p *figurePage) relays() {
	p.table("First current of a load", "Over its steady current; the one that counts.", "load", "factor")
	for _, r := range inrush {
		p.row(r.source, r.load, r.factor)
	}
	p.table("First currents as published", "They differ.", "load", "from", "to", "lasts", "note")
	for _, r := range inrushFigures {
		p.row(r.Source, r.Load, r.Least, r.Most, r.Lasts, r.Note)
	}
	p.table("Switch rating", "Nominal rating over steady load.", "load", "12 V", "28 V")
	for _, r := range switchFactor {
		p.row("switch-factor", r.load+", "+r.comment, r.at12, r.at28)
	}
	p.table("Relay contact by load", "Over its resistive rating.", "load", "share")
	for _, r := range contactShares {
		p.row(r.source, r.load, fmt.Sprintf("%.3g", r.share))
	}
	p.table("Relays as their sheets print them", "0: no figure. Volts at 20 C.", "relay", "coil V", "ohm", "operates by V", "releases below V", "resistive A", "other A", "which", "mV at 10 A", "operates ms", "releases ms", "place C", "note")
	for _, r := range relayTypes {
		p.row(r.Source, r.Name, r.CoilV, r.CoilOhm, r.OperateV, r.ReleaseV, r.MakeA, r.OtherA, r.Other, r.DropMV, r.OperateMS, r.ReleaseMS, fmt.Sprintf("%g to %g", r.LeastC, r.MostC), r.Note)
	}
	p.table("Hot coil", "Pull-in volts x (234.5 + T)/254.5, and so much more is wanted.", "figure", "value")
	p.row("relay-drive", "coil volts over pull-in volts", coilMargin)
	p.table("Quenching a coil", "Peak and release time; 0: no figure.", "method", "part", "peak V", "release ms", "coil", "effect")
	for _, r := range suppressions {
		p.row(r.Source, r.Method, r.Part, r.PeakV, r.ReleaseMS, r.Coil, r.Effect)
	}
	p.table("Which way round", "Across the coil of a relay base.", "method", "polar", "positive", "negative", "note")
	for _, r := range orientations {
		p.row(r.Source, r.Method, r.Polar, r.Positive, r.Negative, r.Note)
	}
}

func (p *figurePage) batteries() {
	p.table("Rested battery", "12 V, 26.7 C; 0: none printed.", "charge %", "V", "gravity", "freezes C")
	for _, r := range restStates {
		p.row(r.Source, r.Percent, r.Volts, r.Gravity, r.FreezeC)
	}
	p.table("Cranking tests", "12 V battery; resistance (12.6 - V)/rating for one that just meets it.", "test", "C", "s", "V", "note")
	for _, r := range crankTests {
		p.row(r.Source, r.Name, r.TempC, r.Secs, r.EndV, r.Note)
	}
	p.table("Load test", "Least volts after 15 s at half the CCA.", "C", "V")
	for _, r := range loadTestVolts {
		p.row("battery-load-temperature", r.tempC, r.volts)
	}
	p.table("Capacity and drain", "By reserve capacity RC in minutes.", "figure", "rule")
	p.row("battery-reserve-test", "reserve capacity", "minutes at 25 A to 10.5 V, 27 C")
	p.row("reserve-capacity", "ampere-hours", "0.6 RC")
	p.row("reserve-capacity", "may go before a start fails", "0.4 of them")
	p.row("drain-limit", "drain, most", "RC/4 mA")
	p.row("drain-practice", "drain, usual limits", "25 to 50 mA; 35 mA is excessive")
	p.row("bank-short", "short of a bank", "strings in parallel add, batteries in series do not")
	p.row("breaking-capacity-bank", "breaking capacity beyond the table", "the battery's own; 20 kA at 125 V above 10 kA")
}

func (p *figurePage) supply() {
	p.table("What the supply may do", "Volts at equipment; 0: no figure.", "system V", "case", "least V", "most V", "lasts", "note")
	for _, r := range supplyCases {
		p.row(r.Source, r.SystemV, r.Name, r.LeastV, r.MostV, r.Lasts, r.Note)
	}
	p.table("Starting profiles", "Volts and milliseconds.", "system V", "level", "dip V", "cranks V", "falls", "dip lasts", "rises", "cranks for", "ends in")
	for _, r := range crankLevels {
		p.row(r.Source, r.SystemV, r.Level, r.DipV, r.RunV, r.FallMS, r.DipMS, r.RiseMS, r.RunMS, r.EndMS)
	}
	p.table("Cranking practice", "0: no figure.", "subject", "from", "to", "unit", "note")
	for _, r := range crankFigures {
		p.row(r.Source, r.Subject, r.Least, r.Most, r.Unit, r.Note)
	}
}

func (p *figurePage) charging() {
	p.table("Drops that documents allow", "Volts; 0: not printed. They disagree. Area by drop: rho L I / V.", "case", "12 V", "24 V", "%", "scope", "note")
	for _, r := range dropLimits {
		p.row(r.Source, r.Case, r.At12V, r.At24V, r.Percent, r.Scope, r.Note)
	}
	p.row("drop-area", "area by drop", "", "", "", "conductor out and back", "rho 0.018 ohm mm2/m")
	p.table("Charging", "", "subject", "value", "unit", "note")
	for _, r := range alternatorFigures {
		p.row(r.Source, r.Subject, r.Value, r.Unit, r.Note)
	}
	p.table("Regulated volts by temperature", "12 V, one maker.", "C", "least V", "most V")
	for _, r := range regulatorBand {
		p.row("regulator-bands", r.tempC, r.least, r.most)
	}
	p.table("Output of a 50 A machine", "By engine speed; 0: none printed.", "1/min", "hot A", "cold A")
	for _, r := range outputCurve {
		p.row("alternator-curve", r.rpm, r.hotA, r.coldA)
	}
	p.table("Charge budget", "Intermittent loads count a tenth (source budget-factor).", "load", "duty", "W", "A at 14 V", "A at 28 V")
	for _, r := range textBook {
		p.row("budget-loads", r.name, r.duty, r.watts, r.at14, r.at28)
	}
	p.row("watts-amps", "any", "", "P", "P / 14", "P / 28")
}
