package gauge_test

import (
	"testing"

	"legwork/gauge"
)

func BenchmarkJudgeWire(b *testing.B) {
	road, _ := gauge.ProfileOf("road")
	for name, s := range map[string]gauge.Size{"table": gauge.Ladder(false)[4], "model": gauge.Ladder(true)[4]} {
		b.Run(name, func(b *testing.B) {
			b.ReportAllocs()
			for b.Loop() {
				gauge.JudgeWire(gauge.WireCase{
					Size: s, Family: gauge.FamilyFor(s), Profile: road, AmbientC: 60, Loaded: 3, LengthM: 4,
					HeatA: 8.5, FuseA: 15, FuseKind: "blade", ShortA: 270, MaxOhm: 0.03,
				})
			}
		})
	}
}
