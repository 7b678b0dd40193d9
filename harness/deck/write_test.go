package deck

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

func written(t *testing.T, k Deck) string {
	t.Helper()
	var b strings.Builder
	require.NoError(t, k.Write(&b))
	return b.String()
}
