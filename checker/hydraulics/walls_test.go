package hydraulics_test

import (
	"testing"

	"github.com/stretchr/testify/require"

	"greysill/checker/hydraulics"
)

func TestWallOf(t *testing.T) {
	for material, want := range map[string]hydraulics.Roughness{
		"ABS": hydraulics.PlasticPipe, "Schedule 40 PVC": hydraulics.PlasticPipe, "uPVC": hydraulics.UPVCPipe, "HDPE, smooth inside": hydraulics.PlasticPipe,
		"corrugated HDPE": hydraulics.CorrugatedPlastic, "corrugated metal": hydraulics.CorrugatedPipe, "galvanized steel, corrugated": hydraulics.CorrugatedPipe,
		"vitrified clay": hydraulics.VitrifiedClayPipe, "concrete": hydraulics.OldDrain,
	} {
		wall, known := hydraulics.WallOf(material)
		require.True(t, known, material)
		require.Equal(t, want, wall, material)
	}
	for _, material := range []string{"", "cast iron", "absorbent", "pvcx"} {
		_, known := hydraulics.WallOf(material)
		require.False(t, known, material)
	}
}
