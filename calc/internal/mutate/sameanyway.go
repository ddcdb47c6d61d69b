package main

// Reasons that stand for many.
const (
	rounding   = "the edge of an allowance for rounding: no reading and no limit stands there"
	chosen     = "the edge of a nearness that was chosen: no rule says on which side of it its last binary digit is"
	oneSetting = "a fixed sheave has one pitch at any setting"
	noSheave   = "a pitch that isn't known counts as none, over which or of which there is no share in the range"
	oneSize    = "two of one rank are one size"
	oneAmps    = "equal amps are one current"
	none       = "what isn't known counts as none, which decides nothing here"
	meter      = "the edge of a computed error: but for an exact meter, of which the conditions before have judged, nothing stands there by right"
)

// sameAnyway are changed conditions that make no difference, as a survivor is
// reported.
var sameAnyway = []struct{ File, In, From, To, Why string }{
	{"calc/phase/balance.go", "three.greatest", "sum > 0", "sum >= 0", "no sum is zero: a meter that could take the largest reading away lifts the others"},
	{"calc/phase/balance.go", "three.least", "t.low[i] > t.low[top]", "t.low[i] >= t.low[top]", "of two that tie the other is the third, whose least is the same"},
	{"calc/phase/balance.go", "three.least", "t.high[i] < t.high[bottom]", "t.high[i] <= t.high[bottom]", "of two that tie the other is the third, whose greatest is the same"},
	{"calc/phase/derating.go", "ExtraHeating", "unbalance > UnbalanceMost*(1+slack)", "unbalance >= UnbalanceMost*(1+slack)", rounding},
	{"calc/phase/lost.go", "LostPhase", "x > t.value[high]", "x >= t.value[high]", "where two tie at the top, neither stands alone as the pattern of a pair or of 1 : 1 : 2 has it"},
	{"calc/phase/lost.go", "near", "math.Abs(x-y) <= aheadNear*math.Max(x, y)", "math.Abs(x-y) < aheadNear*math.Max(x, y)", chosen},
	{"calc/phase/overload.go", "OverloadClassOf", "serviceFactor >= ServiceFactorLeast*(1-slack)", "serviceFactor > ServiceFactorLeast*(1-slack)", rounding},
	{"calc/phase/phase.go", "VoltageDerating", "unbalance > UnbalanceMost*(1+slack)", "unbalance >= UnbalanceMost*(1+slack)", rounding},
	{"calc/phase/roll.go", "greatest", "math.Abs(x) > most+rounding", "math.Abs(x) >= most+rounding", rounding},
	{"calc/phase/roll.go", "Roll.count", "math.Abs(x) < float64(most)-1e-9", "math.Abs(x) <= float64(most)-1e-9", rounding},
	{"calc/phase/roll.go", "Roll.conclude", "r.Drift > DriftMost*(1+slack)", "r.Drift >= DriftMost*(1+slack)", rounding},
	{"calc/phase/roll.go", "Roll.conclude", "r.Rest >= more", "r.Rest > more", "both are sums of thirds: which is greater of two that are equal is for rounding to say"},
	{"calc/phase/roll.go", "Roll.conclude", "less > r.Meter", "less >= r.Meter", meter},
	{"calc/phase/roll.go", "Roll.conclude", "more+r.Meter < dominates*(less-r.Meter)", "more+r.Meter <= dominates*(less-r.Meter)", meter},
	{"calc/phase/roll.go", "Roll.conclude", "more-less > 2*r.Meter", "more-less >= 2*r.Meter", meter},
	{"calc/phase/roll.go", "Roll.conclude", "r.Motor > r.Supply", "r.Motor >= r.Supply", "two equal parts are within the meter or mixed, and were judged before"},
	{"calc/phase/sequence.go", "SequenceFactor", "x+y+z < 2-slack", "x+y+z <= 2-slack", rounding},
	{"calc/phase/sequence.go", "TriangleCheck", "t.low[i] <= (t.high[j]+t.high[k])*(1+slack)", "t.low[i] < (t.high[j]+t.high[k])*(1+slack)", rounding},
	{"calc/phase/sequence.go", "TriangleCheck", "t.high[i] <= (t.low[j]+t.low[k])*(1+slack)", "t.high[i] < (t.low[j]+t.low[k])*(1+slack)", rounding},
	{"calc/phase/standing.go", "place", "x <= watch*(1+slack)", "x < watch*(1+slack)", rounding},
	{"calc/phase/standing.go", "place", "x <= stop*(1+slack)", "x < stop*(1+slack)", rounding},
	{"calc/phase/supply.go", "VoltsAgainstPlate", "s.Low <= 1", "s.Low < 1", "an end on the plate is no way off it, which is what it is found to be otherwise too"},
	{"calc/phase/supply.go", "VoltsAgainstPlate", "s.High >= 1", "s.High > 1", "an end on the plate is no way off it, which is what it is found to be otherwise too"},
	{"calc/phase/supply.go", "ConnectionHint", "math.Abs(x-2) <= 2*connectionNear", "math.Abs(x-2) < 2*connectionNear", chosen},
	{"calc/phase/supply.go", "ConnectionHint", "math.Abs(x-0.5) <= 0.5*connectionNear", "math.Abs(x-0.5) < 0.5*connectionNear", chosen},
	{"calc/phase/system.go", "SystemNear", "apart(v, systems[i].Nominal) < apart(v, systems[best].Nominal)", "apart(v, systems[i].Nominal) <= apart(v, systems[best].Nominal)", "the middle of two systems is no number that is read"},
	{"calc/phase/system.go", "VoltsAtMotor", "rank(best) > rank(worst)", "rank(best) >= rank(worst)", "two of one rank are one standing"},
	{"calc/phase/system.go", "VoltsAtMotor", "low <= s.UseA.High", "low < s.UseA.High", "an end on the window's is within it by itself"},
	{"calc/phase/system.go", "VoltsAtMotor", "high >= s.UseA.Low", "high > s.UseA.Low", "an end on the window's is within it by itself"},
	{"calc/phase/system.go", "System.standing", "v >= w.Low*(1-slack)", "v > w.Low*(1-slack)", rounding},
	{"calc/phase/system.go", "System.standing", "v <= w.High*(1+slack)", "v < w.High*(1+slack)", rounding},
	{"calc/phase/system.go", "PlateOnSystem", "off > float64(PlateTolerance)*(1+1e-9)", "off >= float64(PlateTolerance)*(1+1e-9)", rounding},

	{"calc/sheet/air.go", "settingSpeed", "l != nil", "true", "rows stand only where there is a line"},
	{"calc/sheet/adapter.go", "inRow", "errors.As(row.Err, &l)", "true", "what is wrong in a row is a limit's error"},
	{"calc/sheet/adapter.go", "toGround", "volts >= 260", "volts > 260", chosen},
	{"calc/sheet/adapter.go", "toGround", "volts <= 290", "volts < 290", chosen},
	{"calc/sheet/ampacity.go", "mostCarried", "i < most.Value", "i <= most.Value", oneAmps},
	{"calc/sheet/box.go", "boxed", "rank(row.Size) > rank(largest)", "rank(row.Size) >= rank(largest)", oneSize},
	{"calc/sheet/bringpipe.go", "bringing.joint", "rank(size) > rank(largest)", "rank(size) >= rank(largest)", oneSize},
	{"calc/sheet/device.go", "Circuit.judgeDevice", "rating.Value <= o.Last*(1+slack)", "rating.Value < o.Last*(1+slack)", rounding},
	{"calc/sheet/device.go", "Circuit.drawn", "s.MotorAmps.Value() > c.Current.Value", "s.MotorAmps.Value() >= c.Current.Value", oneAmps},
	{"calc/sheet/fill.go", "IsNipple", "length.Known()", "true", none},
	{"calc/sheet/fill.go", "IsNipple", "length.High() > raceway.NippleMost*(1+slack)", "length.High() >= raceway.NippleMost*(1+slack)", rounding},
	{"calc/sheet/fill.go", "Jam", "err != nil || err2 != nil", "err != nil && err2 != nil", "no ratio is of a diameter that isn't known"},
	{"calc/sheet/fill.go", "Jam", "err != nil", "false", "no ratio is of a diameter that isn't known"},
	{"calc/sheet/fill.go", "Jam", "err2 != nil", "false", "no ratio is of a diameter that isn't known"},
	{"calc/sheet/fill.go", "Jam", "err == nil", "true", "the ratio is known, by the same formula"},
	{"calc/sheet/ground.go", "Circuit.leastGround", "rank(raised) > rank(size)", "rank(raised) >= rank(size)", oneSize},
	{"calc/sheet/rowamps.go", "worksheet.judgeMotor", "high > beyond*m.amps", "high >= beyond*m.amps", chosen},
	{"calc/sheet/rowamps.go", "worksheet.judgeMotor", "w.frozen > 0", "true", "in air of no density there are no amps, which are within"},
	{"calc/sheet/rowamps.go", "worksheet.judgeMotor", "w.frozen > 0", "w.frozen >= 0", "in air of no density there are no amps, which are within"},
	{"calc/sheet/rowamps.go", "worksheet.judgeMotor", "err != nil", "false", "what contradicts itself does so in any air, and was told before"},
	{"calc/sheet/unsaid.go", "nippleUnsaid", "length.Low() > raceway.NippleMost", "length.Low() >= raceway.NippleMost", rounding},
	{"calc/sheet/unsaid.go", "amid", "other.Level < mildest.Level", "other.Level <= mildest.Level", "of verdicts of one level any is the mildest"},
	{"calc/sheet/wires.go", "Circuit.judgePlate", "plate.Value > own.Value", "plate.Value >= own.Value", oneAmps},
	{"calc/sheet/wires.go", "judgeMotorPlate", "share >= plateLeast", "share > plateLeast", chosen},
	{"calc/sheet/wires.go", "judgeMotorPlate", "share <= plateMost", "share < plateMost", chosen},
	{"calc/sheet/bringdrive.go", "bringing.belt", "len(fits) > 0", "len(fits) >= 0", "a belt of the standard's is always among them but where one has just the length asked for, to the last digit, and is the one entered"},
	{"calc/sheet/bringdrive.go", "bringing.belt", "m.Fault == nil", "true", "what is at fault has a place, which the first belt asks for"},
	{"calc/sheet/bringdrive.go", "suiting", "!x.Length.Known()", "false", "a belt without a length is judged neither within nor watch"},
	{"calc/sheet/bringdrive.go", "suiting", "abs(float64(x.Move.Value)) < abs(float64(best.Move.Value))", "abs(float64(x.Move.Value)) <= abs(float64(best.Move.Value))", "no two belts move the base alike to the last digit"},
	{"calc/sheet/bringdrive.go", "bringing.buySheave", "most.Known() && f.New.Sheave.Value() == record.Adjustable", "most.Known() || f.New.Sheave.Value() == record.Adjustable", oneSetting},
	{"calc/sheet/bringdrive.go", "bringing.buySheave", "f.New.Sheave.Value() == record.Adjustable", "true", oneSetting},
	{"calc/sheet/bringdrive.go", "bringing.buySheave", "most.Known()", "true", "the fan sheave is only offered over a motor sheave half open, which takes the most turns"},
	{"calc/sheet/bringdrive.go", "bringing.buySheave", "old.Known() && need.Known()", "old.Known() || need.Known()", noSheave},
	{"calc/sheet/bringdrive.go", "bringing.buySheave", "old.Known()", "true", noSheave},
	{"calc/sheet/bringdrive.go", "bringing.buySheave", "need.Known()", "true", noSheave},
	{"calc/sheet/bringdrive.go", "bringing.buySheave", "low >= 1-slack", "low > 1-slack", rounding},
	{"calc/sheet/bringdrive.go", "bringing.buySheave", "high <= 1+float64(over(f))+slack", "high < 1+float64(over(f))+slack", rounding},
	{"calc/sheet/bringdrive.go", "bringing.reuse", "!bore.Known()", "false", "a bore that isn't known counts as none, which goes on no shaft"},
	{"calc/sheet/bringdrive.go", "bringing.reuse", "apart < -within-slack", "apart <= -within-slack", rounding},
	{"calc/sheet/bringdrive.go", "bringing.reuse", "apart > within+slack", "apart >= within+slack", rounding},
	{"calc/sheet/likeforlike.go", "LikeForLike", "abs(float64(f.New.MotorVolts.Value()/f.Old.MotorVolts.Value())-1) > float64(voltsApart)+slack", "abs(float64(f.New.MotorVolts.Value()/f.Old.MotorVolts.Value())-1) >= float64(voltsApart)+slack", rounding},
	{"calc/sheet/likeforlike.go", "comparer.line", "d > apart+slack", "d >= apart+slack", rounding},
	{"calc/sheet/likeforlike.go", "comparer.line", "d < -apart-slack", "d <= -apart-slack", rounding},
	{"calc/sheet/materials.go", "bringing.put", "m.Fault.Place != nil", "true", "nothing that is no place is ever wanted"},
	{"calc/sheet/materials.go", "Material.lacks", "fault != nil", "true", "no fault in the place of none"},
	{"calc/sheet/fit.go", "fit", "x.Toward.Low() <= 0", "x.Toward.Low() < 0", "no belt leaves just nothing to the last digit"},
	{"calc/sheet/answer.go", "Term.root", "t.Place != nil", "false", "a term with a place has no working"},
	{"calc/sheet/fit.go", "Fit.LengthSpread", "!ok", "false", "a name that is none has no number of the table's either"},
}
