// Command icon draws Roofside's icon, a belt drive seen from the side, as SVG
// and as PNG from the same numbers. Run it from the top of the repository after
// a change: go run ./app/site/icon
package main

import (
	"bytes"
	"fmt"
	"image"
	"image/color"
	"image/png"
	"log"
	"math"
	"os"
)

// A disk is a sheave in a picture of side 1.
type disk struct{ x, y, r float64 }

var (
	fan   = disk{0.60, 0.41, 0.235}
	motor = disk{0.275, 0.715, 0.105}

	ground = color.NRGBA{0x22, 0x30, 0x3a, 0xff}
	steel  = color.NRGBA{0xf4, 0xf1, 0xea, 0xff}
	rubber = color.NRGBA{0xe8, 0xa3, 0x3d, 0xff}
)

const (
	belt   = 0.055 // its thickness
	hub    = 0.28  // of the sheave's radius
	corner = 0.18
	safe   = 0.80 // a maskable icon may be cut down to a circle of this diameter
)

func main() {
	for name, content := range files() {
		if err := os.WriteFile("web/"+name, content, 0o644); err != nil {
			log.Fatal(err)
		}
	}
}

func files() map[string][]byte {
	return map[string][]byte{
		"icon.svg":          []byte(drawing()),
		"icon-192.png":      pixels(192, 1, corner),
		"icon-512.png":      pixels(512, 1, corner),
		"icon-maskable.png": pixels(512, safe, 0),
	}
}

// drawing is the icon as SVG: the belt is the outline of both sheaves together.
func drawing() string {
	k, b, ux, uy := tangent()
	point := func(d disk, side float64) string { // where the belt leaves d
		nx, ny := k*ux-side*b*uy, k*uy+side*b*ux
		return fmt.Sprintf("%.2f %.2f", 100*(d.x+d.r*nx), 100*(d.y+d.r*ny))
	}
	arc := func(d disk) string { return fmt.Sprintf("%.2f %.2f", 100*d.r, 100*d.r) }
	sheave := func(d disk) string {
		return fmt.Sprintf("<circle cx=\"%.2f\" cy=\"%.2f\" r=\"%.2f\" fill=\"%s\"/>\n<circle cx=\"%.2f\" cy=\"%.2f\" r=\"%.2f\" fill=\"%s\"/>\n",
			100*d.x, 100*d.y, 100*(d.r-0.75*belt), hex(steel), 100*d.x, 100*d.y, 100*d.r*hub, hex(ground))
	}
	return fmt.Sprintf("<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 100 100\">\n<rect width=\"100\" height=\"100\" rx=\"%.2f\" fill=\"%s\"/>\n", 100*corner, hex(ground)) +
		fmt.Sprintf("<path d=\"M%s A%s 0 1 0 %s L%s A%s 0 0 0 %s Z\" fill=\"none\" stroke=\"%s\" stroke-width=\"%.2f\"/>\n",
			point(fan, -1), arc(fan), point(fan, 1), point(motor, 1), arc(motor), point(motor, -1), hex(rubber), 100*belt) +
		sheave(fan) + sheave(motor) + "</svg>\n"
}

// tangent gives the direction u from the fan's sheave to the motor's, and the
// parts along and across u of the normal where the belt leaves either.
func tangent() (k, b, ux, uy float64) {
	d := math.Hypot(motor.x-fan.x, motor.y-fan.y)
	k = (fan.r - motor.r) / d
	return k, math.Sqrt(1 - k*k), (motor.x - fan.x) / d, (motor.y - fan.y) / d
}

// pixels is the icon as PNG, with the drawing shrunk toward the middle.
func pixels(side int, scale, corner float64) []byte {
	const finer = 4 // samples per pixel each way, for smooth edges
	picture := image.NewNRGBA(image.Rect(0, 0, side, side))
	for py := range side {
		for px := range side {
			var r, g, b, a int
			for s := range finer * finer {
				x := (float64(px) + (float64(s%finer)+0.5)/finer) / float64(side)
				y := (float64(py) + (float64(s/finer)+0.5)/finer) / float64(side)
				if outsideCorner(x, y, corner) {
					continue
				}
				c := at((x-0.5)/scale+0.5, (y-0.5)/scale+0.5)
				r, g, b, a = r+int(c.R), g+int(c.G), b+int(c.B), a+1
			}
			if a > 0 {
				picture.SetNRGBA(px, py, color.NRGBA{uint8(r / a), uint8(g / a), uint8(b / a), uint8(255 * a / (finer * finer))})
			}
		}
	}
	var out bytes.Buffer
	encoder := png.Encoder{CompressionLevel: png.BestCompression}
	if err := encoder.Encode(&out, picture); err != nil {
		log.Fatal(err) // a picture in memory always encodes
	}
	return out.Bytes()
}

func outsideCorner(x, y, r float64) bool {
	dx, dy := math.Abs(x-0.5)-(0.5-r), math.Abs(y-0.5)-(0.5-r)
	return dx > 0 && dy > 0 && math.Hypot(dx, dy) > r
}

func at(x, y float64) color.NRGBA {
	for _, d := range []disk{fan, motor} {
		switch from := math.Hypot(x-d.x, y-d.y); {
		case from < d.r*hub:
			return ground
		case from < d.r-0.75*belt:
			return steel
		}
	}
	if math.Abs(fromOutline(x, y)) < belt/2 {
		return rubber
	}
	return ground
}

// fromOutline is the distance of a point from the outline of both sheaves
// together, negative inside it.
func fromOutline(x, y float64) float64 {
	k, b, ux, uy := tangent()
	along, across := (x-fan.x)*ux+(y-fan.y)*uy, math.Abs(-(x-fan.x)*uy+(y-fan.y)*ux)
	d := math.Hypot(motor.x-fan.x, motor.y-fan.y)
	switch s := along*b - across*k; {
	case s < 0:
		return math.Hypot(along, across) - fan.r
	case s > b*d:
		return math.Hypot(along-d, across) - motor.r
	}
	return along*k + across*b - fan.r
}

func hex(c color.NRGBA) string { return fmt.Sprintf("#%02x%02x%02x", c.R, c.G, c.B) }
