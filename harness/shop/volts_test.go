package shop_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"legwork/harness/shop"
)

// columnNames gives what heads the columns after the first.
func columnNames(t shop.Table) []string {
	var names []string
	for _, c := range t.Columns[1:] {
		names = append(names, c.Name)
	}
	return names
}

// Where there is neither key nor starter, steps that read alike are one
// column, and a note names them; a step of the draft's own always stays.
func TestVoltsSheetWithoutKeyAndStarter(t *testing.T) {
	text := shipped(t, "least.draft")
	table := shop.Volts(source(t, text))
	square(t, table)
	require.Equal(t, []string{"off", "acc", "coast"}, columnNames(table), "S1 is closed where the key is not at off")
	require.Contains(t, strings.Join(table.Notes, "\n"), "engage as acc, crank as acc")

	own := columnNames(shop.Volts(source(t, text+"step night like running\n")))
	require.Contains(t, own, "night")
	require.NotContains(t, own, "crank")

	keyed := columnNames(shop.Volts(source(t, text+"keyswitch S9\n  run B IGN\n")))
	require.Len(t, keyed, 11, "a key makes the steps differ for its owner")
}
