package part

import (
	"testing"

	"github.com/stretchr/testify/require"
)

// The kinds that the language promises, with their terminals.
func TestEveryPromisedKindIsThere(t *testing.T) {
	var names []string
	for _, k := range Kinds() {
		names = append(names, k.Name)
	}
	require.Equal(t, []string{
		"alternator", "battery", "box", "breaker", "cap", "coil", "connector", "diode", "fuse", "gauge", "heater", "keyswitch", "lamp",
		"link", "module", "motor", "relay", "resistor", "sensor", "solenoid", "splice", "starter", "stud", "switch",
	}, names)
}
