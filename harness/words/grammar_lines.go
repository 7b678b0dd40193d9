package words

import (
	"strconv"

	"legwork/harness/model"
	"legwork/harness/part"
)

// Scopes, by the names that color themes know; ".draft" comes behind them.
const (
	headScope     = "keyword.control.statement"
	kindScope     = "storage.type.kind"
	settingScope  = "keyword.other.setting"
	nameScope     = "entity.name"
	useScope      = "variable.other.name"
	terminalScope = "variable.other.terminal"
	wordScope     = "constant.language.word"
	stepScope     = "constant.language.step"
	colorScope    = "support.constant.color"
	familyScope   = "support.constant.insulation"
	markScope     = "storage.modifier.mark"
	figureScope   = "constant.numeric.quantity"
	unitScope     = "keyword.other.unit"
	roleScope     = "storage.type.role"
)

// takenScope is the scope of what stands at a place of a statement.
func takenScope(t model.Takes) string {
	switch t {
	case model.NewName:
		return nameScope
	case model.AnEnd:
		return terminalScope
	case model.AKind:
		return kindScope
	case model.AStep:
		return stepScope
	case model.AColor:
		return colorScope
	case model.AWord, model.ARule:
		return wordScope
	case model.APlace, model.ASpot, model.AMetal, model.ABox, model.ASource, model.APart, model.AnOption, model.AWire, model.ACavity:
		return useScope
	}
	return ""
}

// ofStatement is the rule of a statement of the builder's own.
func ofStatement(s model.Statement) rule {
	begin, captures := `^[ \t]*(`+s.Word+`)`+after, map[string]capture{"1": named(headScope)}
	n, closing, free := 1, "", false
	for _, slot := range s.Slots {
		scope := takenScope(slot.Takes)
		if slot.Several {
			free = free || slot.Takes == model.AnEnd || slot.Takes == model.AWire
			break
		}
		if scope == "" {
			break
		}
		n++
		begin += `(?:[ \t]+(` + item + `)`
		closing += ")?"
		captures[strconv.Itoa(n)] = named(scope)
	}
	body := []rule{include("comment"), include("string")}
	body = append(body, ofWords(s.Words)...)
	body = append(body, ofSettings(s.Settings)...)
	if s.Families {
		body = append(body, include("insulation"))
	}
	if s.Colors {
		body = append(body, include("color"))
	}
	body = append(body, include("mark"), include("quantity"), include("terminal"))
	if free {
		body = append(body, include("name"))
	}
	return rule{Begin: begin + closing, End: "$", BeginCaptures: captures, Patterns: body}
}

// ofKind is the rule of a device, or a part, of a kind. Where it has lines it
// reaches over all that are indented deeper.
func ofKind(k *part.Kind) rule {
	r := rule{
		Begin: `^([ \t]*)(?:(part)[ \t]+)?(` + k.Name + `)` + after + `(?:[ \t]+(` + item + `))?`,
		End:   "$",
		BeginCaptures: map[string]capture{
			"2": named(headScope), "3": named(kindScope), "4": named(nameScope),
		},
		Patterns: []rule{include("comment")},
	}
	if k.Lines != nil {
		r.End = `^(?!\1[ \t]+\S|[ \t]*(?:#.*)?$)`
		r.Patterns = append(r.Patterns, ofLines(k)...)
	}
	r.Patterns = append(r.Patterns, include("string"), include("device-words"))
	if k.Ground != "" {
		r.Patterns = append(r.Patterns, include("grounds-to"))
	}
	r.Patterns = append(r.Patterns, ofSettings(k.Settings)...)
	r.Patterns = append(r.Patterns, include("mark"), include("quantity"), include("terminal"))
	return r
}

// ofLines are the rules of the lines below a device.
func ofLines(k *part.Kind) []rule {
	var rules []rule
	for _, s := range model.Statements() {
		if s.Under == k.Name || belowAny(s.Word, k) {
			rules = append(rules, include("statement-"+s.Word))
		}
	}
	line := func(begin string, body []rule, scopes ...string) {
		captures := map[string]capture{}
		for i, scope := range scopes {
			captures[strconv.Itoa(i+1)] = named(scope)
		}
		body = append([]rule{include("comment"), include("string")}, append(body, include("mark"), include("quantity"), include("terminal"))...)
		if k.Lines.Shape == part.PositionLines || k.Lines.Shape == part.BusLines {
			body = append(body, include("name"))
		}
		rules = append(rules, rule{Begin: `^[ \t]+` + begin, End: "$", BeginCaptures: captures, Patterns: body})
	}
	for _, role := range k.Lines.Roles {
		line(`(`+item+`)[ \t]+(`+role.Word+`)`+after, append(ofWords(model.LineWords(k.Lines.Shape)), ofSettings(role.Settings)...), nameScope, roleScope)
	}
	switch {
	case k.Lines.Head != "":
		line(`(`+k.Lines.Head+`)`+after+`(?:[ \t]+(`+item+`))?`, ofSettings(k.Lines.Settings), headScope, nameScope)
	case k.Lines.Shape == part.PositionLines:
		line(`(`+item+`)`, ofSettings(k.Lines.Settings), "constant.language.position")
	default:
		line(`(`+item+`)`, nil, nameScope)
	}
	return rules
}
