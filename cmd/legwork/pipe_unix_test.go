//go:build unix

package main

import (
	"syscall"
	"testing"

	"github.com/stretchr/testify/require"
)

// A pipe with no writer would be waited for without end.
func TestNamedPipeIsRefused(t *testing.T) {
	workshop(t)
	require.NoError(t, syscall.Mkfifo("pipe", 0o600))
	got := legwork(t, "check", "pipe")
	require.Equal(t, exitUsage, got.code)
	require.Contains(t, got.err, "can't read pipe: not a regular file")
}
