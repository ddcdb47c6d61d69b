package raceway_test

import (
	"testing"

	"roofside/calc/internal/hostile"
	"roofside/calc/raceway"
	"roofside/calc/unit"
)

func TestHostileInput(t *testing.T) {
	words := []string{"", "EMT", "FMC", "LFNC-B", "3/8", "1/2", "1", "14", "8", "4/0", "THHN", "THWN-2", "bare", "unmarked",
		"run", "nipple", "inside", "circuit", "ground", "copper", "aluminum", "solid", "stranded", "dry", "wet", "2017", "2023",
		"three", "single", "steel", "shaded", "rooftop", "nontime-fuse", "inverse-time-breaker", "squirrel-cage",
		"square", "any", "4 x 1-1/2", "conductor", "clamps", "device", "hub", "knockout", "conduit", "outdoors", "over-250", "still"}
	hostile.Run(t, ".", words, map[string]any{
		"Designator": raceway.Designator, "SizeOf": raceway.SizeOf, "BoreOf": raceway.BoreOf, "ConductorOf": raceway.ConductorOf,
		"PropertyOf": raceway.PropertyOf, "WireForArea": raceway.WireForArea,
		"UseOf": raceway.UseOf, "FillLimit": raceway.FillLimit, "RoundCount": raceway.RoundCount, "MostAlike": raceway.MostAlike,
		"Fill": func(r raceway.Raceway, row raceway.Row) (raceway.Filling, error) {
			return raceway.Fill(r, []raceway.Row{row})
		},
		"Smallest": func(c raceway.Conduit, u raceway.Use, row raceway.Row) (raceway.Choice, error) {
			return raceway.Smallest(c, u, []raceway.Row{row})
		},
		"SmallestOfEach": func(u raceway.Use, row raceway.Row) (raceway.Choice, error) {
			all, err := raceway.SmallestOfEach(u, []raceway.Row{row})
			if err != nil {
				return raceway.Choice{}, err
			}
			return all[0], nil
		},
		"Room": func(r raceway.Raceway, row raceway.Row, size raceway.WireSize, insulation raceway.Insulation, role raceway.Role) (int, error) {
			return raceway.Room(r, []raceway.Row{row}, size, insulation, role)
		},
		"JamRatio": raceway.JamRatio, "Interior": raceway.Interior, "Allowed": raceway.Allowed, "MarkedTerminals": raceway.MarkedTerminals, "MotorWires": raceway.MotorWires, "RatingOf": raceway.RatingOf,
		"UnsecuredMost": raceway.UnsecuredMost, "FlexAsGround": raceway.FlexAsGround, "OutsideOf": raceway.OutsideOf,
		"SupportOf": raceway.SupportOf, "Straps": raceway.Straps, "Sticks": raceway.Sticks, "WireCut": raceway.WireCut,

		"BoxOf": raceway.BoxOf, "SmallestBox": raceway.SmallestBox, "Allowance": raceway.Allowance, "MostConductors": raceway.MostConductors,
		"ConduitBodyLeast": raceway.ConduitBodyLeast, "BushingAsked": raceway.BushingAsked,
		"FillBox": func(volume unit.Volume, row raceway.BoxRow, edition raceway.Edition) (raceway.BoxFill, error) {
			return raceway.FillBox(volume, []raceway.BoxRow{row}, edition)
		},
		"SmallestBoxFor": func(shape raceway.Shape, row raceway.BoxRow, edition raceway.Edition) (raceway.Box, raceway.BoxFill, error) {
			return raceway.SmallestBoxFor(shape, []raceway.BoxRow{row}, edition)
		},

		"BoxNeeded": func(row raceway.BoxRow, edition raceway.Edition) (raceway.BoxFill, error) {
			return raceway.BoxNeeded([]raceway.BoxRow{row}, edition)
		},

		"TableAmpacity": raceway.TableAmpacity, "AmbientFactor": raceway.AmbientFactor, "AmbientFactorByEquation": raceway.AmbientFactorByEquation,
		"AdjustmentFactor": raceway.AdjustmentFactor, "RooftopAdder": raceway.RooftopAdder, "RooftopAdderByHeight": raceway.RooftopAdderByHeight,
		"AmpacityOf": raceway.AmpacityOf, "SmallestWire": raceway.SmallestWire,
		"CheckConductor": raceway.CheckConductor,
		"WallOf":         raceway.WallOf, "ImpedanceOf": raceway.ImpedanceOf, "EffectiveImpedance": raceway.EffectiveImpedance,
		"VoltageDrop": raceway.VoltageDrop, "DropShare": raceway.DropShare, "ResistivityOf": raceway.ResistivityOf,
		"ResistanceOf": raceway.ResistanceOf, "VoltageDropByK": raceway.VoltageDropByK, "AreaForDrop": raceway.AreaForDrop, "ResistanceAt": raceway.ResistanceAt,
		"TableCurrent": raceway.TableCurrent, "DemandFromPlate": raceway.DemandFromPlate, "DemandFromTable": raceway.DemandFromTable,
		"DisconnectLeast": raceway.DisconnectLeast, "LargestOvercurrent": raceway.LargestOvercurrent,
		"OvercurrentFromPlate": raceway.OvercurrentFromPlate, "InstantaneousTrip": raceway.InstantaneousTrip, "StandardRating": raceway.StandardRating,
		"SmallConductorLimit": raceway.SmallConductorLimit, "GroundFor": raceway.GroundFor, "GroundRaised": raceway.GroundRaised,
		"ThreadOf": raceway.ThreadOf, "HoleOf": raceway.HoleOf, "GaugeDiameter": raceway.GaugeDiameter, "GaugeArea": raceway.GaugeArea,
		"NearestMetric": raceway.NearestMetric, "ToGroundOf": raceway.ToGroundOf, "Join": raceway.Join,
	})
}
