package figures_test

import (
	"testing"

	"github.com/stretchr/testify/require"
)

// served is a site with one buried service.
func served(service string) entries {
	return entries{"site": `{"grid": {"unit": "m"}, "boundary": [[0, 0], [60, 0], [60, 40], [0, 40]],
		"services": [{"id": "line-1", "path": [[17, 20], [17, 39]], ` + service + `}]}`}
}

func TestServices(t *testing.T) {
	f := compute(t, served(`"kind": "gas", "located": true, "private": false, "depth": "0.4 m"`))
	requireKnown(t, f, "services", "line-1", map[string]any{"kind": "gas", "located": true, "private": false, "cover": 0.4, "wiring": "none"})

	f = compute(t, served(`"kind": "line voltage"`))
	requireLacks(t, f, "services", "line-1", "located", "/site/services/0/located")
	requireLacks(t, f, "services", "line-1", "private", "/site/services/0/private")
	requireLacks(t, f, "services", "line-1", "cover", "/site/services/0/depth")
	requireLacks(t, f, "services", "line-1", "wiring", "/site/services/0/wiring_method")
}

func TestWiring(t *testing.T) {
	for _, method := range []string{"direct burial cable", "PVC conduit", "metal conduit", "GFCI-protected cable"} {
		line := compute(t, served(`"kind": "line voltage", "wiring_method": "`+method+`"`))
		require.Equal(t, method, known(t, line, "services", "line-1", "wiring"))
		low := compute(t, served(`"kind": "low voltage", "wiring_method": "`+method+`"`))
		require.Equal(t, "low voltage", known(t, low, "services", "line-1", "wiring"))
	}
	require.Equal(t, "low voltage", known(t, compute(t, served(`"kind": "low voltage"`)), "services", "line-1", "wiring"))
	contradiction := compute(t, served(`"kind": "line voltage", "wiring_method": "low-voltage cable"`))
	requireLacks(t, contradiction, "services", "line-1", "wiring", "/site/services/0/wiring_method")
}
