package main

import (
	"bytes"
	"context"
	"fmt"
	"os"
	"path/filepath"
	"testing"

	"github.com/stretchr/testify/require"
)

// The drawings that README shows are what the command draws today.
func TestShownDrawingsAreFresh(t *testing.T) {
	for _, kind := range []struct{ kind, file string }{{"schematic", "orchard-truck-%d.svg"}, {"layout", "orchard-truck-layout-%d.svg"}} {
		shownAreFresh(t, kind.kind, kind.file)
	}
}

func shownAreFresh(t *testing.T, kind, file string) {
	t.Helper()
	draft := filepath.Join(root, "testdata", "orchard-truck.draft")
	for sheet := 1; ; sheet++ {
		var o, e bytes.Buffer
		code := run(context.Background(), []string{"draw", draft, kind, "--sheet", fmt.Sprint(sheet)}, streams{nil, &o, &e})
		if sheet > 1 && code == exitUsage {
			return // there are no more
		}
		require.Equal(t, exitClean, code, e.String())
		path := filepath.Join(root, "docs", "drawings", fmt.Sprintf(file, sheet))
		if *update {
			require.NoError(t, os.MkdirAll(filepath.Dir(path), 0o755))
			require.NoError(t, os.WriteFile(path, o.Bytes(), 0o644))
		}
		kept, err := os.ReadFile(path)
		require.NoError(t, err)
		require.True(t, bytes.Equal(kept, o.Bytes()), "%s is stale: go test ./cmd/legwork -run Drawings -update", path)
	}
}
