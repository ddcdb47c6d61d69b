module roofside

go 1.26.0

require (
	github.com/BurntSushi/toml v1.6.0
	github.com/andybalholm/brotli v1.2.8
	github.com/chromedp/cdproto v0.159.0
	github.com/chromedp/chromedp v0.23.0
	github.com/go-playground/validator/v10 v10.30.6
	github.com/maxence-charriere/go-app/v10 v10.1.11
	golang.org/x/net v0.62.0
	golang.org/x/text v0.44.0
	rsc.io/qr v0.2.0
)

require (
	github.com/gabriel-vasile/mimetype v1.4.16 // indirect
	github.com/go-json-experiment/json v0.0.0-20260213210345-44df1a37e875 // indirect
	github.com/go-playground/locales v0.14.2 // indirect
	github.com/go-playground/universal-translator v0.18.2 // indirect
	github.com/google/uuid v1.6.0 // indirect
	github.com/leodido/go-urn v1.5.0 // indirect
	golang.org/x/crypto v0.58.0 // indirect
	golang.org/x/sys v0.49.0 // indirect
)
