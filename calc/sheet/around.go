package sheet

import "roofside/calc/record"

// An Off is one of three readings, and how far it is off their average as a share of
// it, at its value and at the ends that the meter leaves open.
type Off struct{ Reading, Off, Low, High float64 }

// Around returns the three readings of a kind around their average, which is not
// above zero where there is none: volts, or amps.
func Around(r *record.Reading, volts bool) (all [3]Off, average float64) {
	var read, band [3]float64
	alike, clamp := meterOf(&r.Volts, voltsRepeat), clampOf(r)
	for i := range read {
		if volts {
			v := r.Volts[i].Base()
			read[i], band[i] = v, v*float64(alike.Share)+float64(alike.Floor)
			continue
		}
		a := float64(LegAmps(r, i).Value)
		read[i], band[i] = a, a*float64(clamp.Share)+float64(clamp.Floor)
	}
	average = (read[0] + read[1] + read[2]) / 3
	for i, x := range read {
		all[i].Reading = x
		if average > 0 {
			all[i].Off, all[i].Low, all[i].High = x/average-1, (x-band[i])/average-1, (x+band[i])/average-1
		}
	}
	return all, average
}
