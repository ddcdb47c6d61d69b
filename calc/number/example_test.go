package number_test

import (
	"fmt"

	"golang.org/x/text/language"

	"roofside/calc/number"
	"roofside/calc/unit"
)

func ExampleParse() {
	x, err := number.Parse("3-1/2")
	fmt.Println(x, err)
	_, err = number.Parse("1e308")
	fmt.Println(err)
	// Output:
	// 3.5 <nil>
	// "1e308" has an exponent; write the number out
}

func ExampleParseQuantity() {
	base, canonical, err := number.ParseQuantity("90mm", unit.Length(0).Kind())
	fmt.Printf("%.3f m, %q, %v\n", base, canonical, err)
	_, _, err = number.ParseQuantity("90 psi", unit.Length(0).Kind())
	fmt.Println(err)
	// Output:
	// 0.090 m, "90 mm", <nil>
	// "psi" is a unit of something else
}

func ExampleQuantity() {
	l, err := number.Quantity[unit.Length]("5 ft 6-1/2 in")
	fmt.Printf("%.1f in, %v\n", l.In(unit.Inch), err) // 60 + 6.5
	// Output: 66.5 in, <nil>
}

func ExampleSplit() {
	for _, canonical := range []string{"3-1/2 in", "0.85", "5 ft 6 in"} {
		n, symbol := number.Split(canonical)
		fmt.Printf("%q %q\n", n, symbol)
	}
	// Output:
	// "3-1/2" "in"
	// "0.85" ""
	// "5 ft 6 in" "ft"
}

func ExampleCanonical() {
	span := 90 * unit.Millimeter // 90 / 25.4 = 3.5433… in
	fmt.Println(number.Canonical(float64(span), unit.Shop.US, 4))
	fmt.Println(number.Canonical(float64(span), unit.Shop.SI, 4))
	// Output:
	// 3.543 in
	// 90 mm
}

func ExampleLocale_Write() {
	us, de := number.For(language.AmericanEnglish), number.For(language.German)
	fmt.Println(us.Write(1234.56, 5), de.Write(1234.56, 5), us.Write(9.996, 3))
	// Output: 1,234.6 1.234,6 10.0
}

func ExampleLocale_WriteFixed() {
	us := number.For(language.AmericanEnglish)
	fmt.Println(us.WriteFixed(2.675, 2), us.WriteFixed(-0.125, 2), us.WriteFixed(-0.001, 2))
	// Output: 2.68 -0.13 0.00
}

func ExampleLocale_Number() {
	us, de := number.For(language.AmericanEnglish), number.For(language.German)
	for _, l := range []*number.Locale{us, de} {
		r, err := l.Number("1,725")
		fmt.Println(r.Text, r.Value, r.Echo, r.Other, err)
	}
	_, err := us.Number("1.234,5")
	fmt.Println(err)
	// Output:
	// 1725 1725 true 1.725 <nil>
	// 1.725 1.725 true 1725 <nil>
	// "1.234,5" mixes marks in a way this language does not
}

func ExampleLocale_Quantity() {
	us, length := number.For(language.AmericanEnglish), unit.Length(0).Kind()
	for _, typed := range []string{"3½", "90mm", `5' 6"`} {
		r, err := us.Quantity(typed, length, unit.Shop.US)
		fmt.Printf("%s = %.4f m, %v\n", r.Text, r.Value, err) // 3.5·25.4 mm, 66·25.4 mm
	}
	// Output:
	// 3-1/2 in = 0.0889 m, <nil>
	// 90 mm = 0.0900 m, <nil>
	// 5 ft 6 in = 1.6764 m, <nil>
}

func ExampleLocale_Localize() {
	de := number.For(language.German)
	fmt.Println(de.Localize("1.725 in"), "|", de.Localize("3-1/2 in"), "|", de.Localize("-40 F"))
	// Output: 1,725 in | 3-1/2 in | -40 °F
}
