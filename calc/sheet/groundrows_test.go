package sheet_test

import (
	"errors"
	"testing"

	"roofside/calc/limit"
	"roofside/calc/sheet"
)

// A ground too small for any circuit is listed all the same: 14 AWG is the least of Table
// 250.122, and the metal of the conduit doesn't make it right.
func TestTheLeastOfGrounds(t *testing.T) {
	for _, conduit := range []string{"EMT", "LFMC", "PVC-40"} {
		v := sheet.CircuitOf(wired(t, "&wire.b.size=18&raceway.conduit="+conduit)).GroundVerdict
		if v.Level != sheet.Stop || v.Rule != sheet.RuleGround {
			t.Errorf("18 AWG in %s: %s by %s", conduit, levelNames[v.Level], v.Rule)
		}
	}
}

// Beyond the table's 6000 A no ground is told, and none is within.
func TestAGroundBeyondItsTable(t *testing.T) {
	f := wired(t, "&circuit.device-rating=6001A")
	c := sheet.CircuitOf(f)
	var e *limit.Error
	if c.Ground.Known() || c.Ground.Fault == nil || !errors.As(c.Ground.Fault.Err, &e) || e.Rule != limit.NotTabulated {
		t.Errorf("%+v", c.Ground)
	}
	if c.GroundVerdict.Level != sheet.Unjudged {
		t.Errorf("%s", levelNames[c.GroundVerdict.Level])
	}
}

// A conduit that isn't told may be the ground or not; one that isn't read is what is wrong.
func TestTheGroundOfAnUnknownConduit(t *testing.T) {
	f := wired(t, noGround+"&raceway.conduit=")
	if v := sheet.CircuitOf(f).GroundVerdict; v.Level != sheet.Unjudged || wantedOf(f, v) != "raceway.conduit" || v.Fault != nil {
		t.Errorf("%+v", v)
	}
	f = wired(t, noGround+"&raceway.conduit=!tube")
	if v := sheet.CircuitOf(f).GroundVerdict; v.Level != sheet.Unjudged || v.Fault == nil || f.KeyOf(v.Fault.Place) != "raceway.conduit" {
		t.Errorf("%+v", v)
	}
}

// The fan's plate allows 12 A: a breaker of 10 since 2023, and none before (240.6(A)). A
// ground of 12 is enough for either.
func TestAGroundWhoseDeviceNotEveryEditionHas(t *testing.T) {
	f := wired(t, "&new.motor-power=1/2hp&new.motor-volts=460V&new.motor-amps=1A&new.volts-12=480V&new.minimum-circuit-ampacity=5A&new.maximum-overcurrent=12A&circuit.device-rating=&code-edition=")
	if v := sheet.CircuitOf(f).GroundVerdict; v.Level != sheet.Within {
		t.Errorf("%s, wants %q, %+v", levelNames[v.Level], wantedOf(f, v), v.Fault)
	}
}
