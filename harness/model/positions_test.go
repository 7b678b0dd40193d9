package model_test

import (
	"testing"

	"github.com/stretchr/testify/require"

	"legwork/harness/draft"
	"legwork/harness/model"
)

// The numbers of DIN 72552 stand in positions as they do on the switch, and so
// does what is marked on it.
func TestPositionsTakeStandardNumbers(t *testing.T) {
	m, found := model.Build(parse(t, `battery G1
keyswitch S1
  run 30 15/54 58
  gap 30 15 lasts 12ms
  crank 30, 15, 50
keyswitch S2 marked B 1 IGN 2
  run 1 2 19
  crank 1 2
`))
	require.Empty(t, found)
	s1, _ := m.DeviceByName("S1")
	s2, _ := m.DeviceByName("S2")
	require.Equal(t, []string{"B", "IGN", "58"}, s1.Lines[0].Refs)
	require.Equal(t, []string{"B", "IGN"}, s1.Lines[1].Refs)
	require.Equal(t, []string{"B", "IGN", "ST"}, s1.Lines[2].Refs)
	require.Equal(t, []string{"B", "IGN", "19"}, s2.Lines[0].Refs)
	require.Equal(t, 0.012, m.Steps[4].LastS)
	for _, name := range []string{"S1.30", "S1.15/54", "S1.15", "S1.50", "S1.58", "S2.1", "S2.2", "S2.19"} {
		_, ok := m.TerminalByName(name)
		require.True(t, ok, name)
	}
	_, found = model.Build(parse(t, "keyswitch S1\n  gap B IGN 12ms\n"))
	require.Len(t, found, 1, "a figure is no terminal: %v", found)
}

// A diesel key has a position to heat in; a step says when it stands there.
func TestKeyWithAPositionOfItsOwn(t *testing.T) {
	const key = "keyswitch S1\n  heat B IGN 19\n  run B IGN\n"
	m, found := model.Build(parse(t, key+"step heat \"Glow plugs\" key heat after acc\n"))
	require.Empty(t, found)
	require.Equal(t, "heat", m.Steps[2].Key)
	require.Contains(t, m.Positions(), "heat")
	_, found = model.Build(parse(t, key))
	require.Len(t, found, 1)
	require.Contains(t, found[0].Detail, "step heat key heat after acc")
	_, found = model.Build(parse(t, key+"step heat key heet\n"))
	require.Contains(t, found[0].Msg+found[1].Msg, "did you mean heat?")
	// The key may come off the shelf.
	f, _ := draft.Parse("x.draft", []byte("part keyswitch diesel\n  heat B 19\nkeyswitch S1 part diesel\nstep heat key heat\n"))
	_, found = model.Build(f)
	require.Empty(t, found)
}
