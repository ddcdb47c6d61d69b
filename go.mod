module roofside

go 1.26.0

require (
	github.com/go-playground/validator/v10 v10.30.6
	github.com/maxence-charriere/go-app/v10 v10.1.11
	golang.org/x/text v0.44.0
)
