package picture

import "github.com/maxence-charriere/go-app/v10/pkg/app"

// marker draws a point's sign: each class of point has its own shape, so that
// color is never the only difference.
func (p Point) marker(at spot, r float64) app.UI {
	var d pen
	x, y := at.x, at.y
	class := "picture-marker picture-" + p.class()
	switch p.Class {
	case "report":
		d = d.shape(spot{x - 0.9*r, y - 0.9*r}, spot{x + 0.9*r, y - 0.9*r}, spot{x + 0.9*r, y + 0.9*r}, spot{x - 0.9*r, y + 0.9*r})
	case "planned":
		d = d.shape(spot{x, y - 1.25*r}, spot{x + 1.25*r, y}, spot{x, y + 1.25*r}, spot{x - 1.25*r, y})
	case "left":
		d = d.shape(spot{x, y - 1.2*r}, spot{x + 1.15*r, y + 0.8*r}, spot{x - 1.15*r, y + 0.8*r})
	default:
		return element("circle").Class(class).Attr("cx", number(x)).Attr("cy", number(y)).Attr("r", number(1.1*r))
	}
	return path(class, d)
}

// class is the point's class if it is one that is known, for it goes into an
// attribute.
func (p Point) class() string {
	switch p.Class {
	case "report", "planned", "left":
		return p.Class
	}
	return "found"
}
