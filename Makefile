# Everything is made from a fresh clone with Go alone; the browser tests need
# Chromium as well and install it where they may.

# The compiler's flags stand here and nowhere else. Without the tag, validator
# calls methods by name, and the linker can drop none: 0.4 MB more to send.
export GOFLAGS := -trimpath -buildvcs=false -tags=validator_novalidatefn
LDFLAGS := -s -w
# What these packages call stays a call: 0.19 MB less to send, and no key takes
# measurably longer. With the runtime and the packages of bytes and strings so
# too, a key takes a third longer.
CALLED  := roofside encoding compress net time fmt slices sort reflect golang.org/x/text \
           github.com/go-playground github.com/google github.com/maxence-charriere rsc.io
CALLS   := $(foreach package,$(CALLED),-gcflags=$(package)/...=-l)
WASM    := GOOS=js GOARCH=wasm go build -ldflags="$(LDFLAGS)"
BASE    ?= /
ADDR    ?= localhost:8080
FUZZ    ?= 30s

.PHONY: help run site wasm test test-all vet unit rules browser wide tools nginx axe jsqr chromium firefox-webkit lighthouse-npm size vuln bench fuzz nightly mutate counts golden engines startup lighthouse

help: ## what can be made
	@sed -n 's/^\([a-z-]*\):.*## /\1\t/p' Makefile | expand -t 12

run: wasm ## build the site quickly and serve it on localhost
	go run ./app site -out dist -brotli 0
	go run ./app serve -dir dist -addr $(ADDR)

site: wasm ## write the site into dist/, for any static host; BASE=/tools/fans/ for a path
	go run ./app site -out dist -base $(BASE)

wasm: ## compile the program for the browser, against modules without what it never calls
	go run ./app/thin .build
	$(WASM) $(CALLS) -modfile=.build/thin.mod -o .build/app.wasm ./app

test: vet unit site browser ## everything that must hold before a change goes in

vet: ## the compiler's and gofmt's complaints
	test -z "$$(gofmt -l app calc | tee /dev/stderr)"
	go vet ./...
	go vet -tags e2e,wide,speed,engines,startup ./app/e2e
	GOOS=js GOARCH=wasm go vet ./...

unit: ## tests that need no browser
	go test ./...

browser: chromium axe jsqr ## tests of the site in dist/ in headless Chromium
	go test -tags e2e -count=1 -timeout 25m ./app/e2e

# What fails soonest stands first, the bringing of what the tests need among it.
test-all: vet unit tools size test wide engines lighthouse vuln ## test, and what takes longer: its weight, other hosts and engines, known vulnerabilities

rules: ## the rules that every verdict keeps, over every record
	go test -count=1 -timeout 60m -run "LessKnown|MissingIs" ./calc/sheet -every

tools: chromium axe jsqr nginx firefox-webkit lighthouse-npm ## bring what the tests need, where it isn't there

wide: chromium nginx ## the site in dist/ and below a path on nginx, every page in every form
	PATH="$$PATH:/usr/sbin" go test -tags e2e,wide -count=1 -timeout 20m -run Wide ./app/e2e

nginx:
	@command -v nginx >/dev/null || test -x /usr/sbin/nginx || app/e2e/install-nginx

engines: chromium firefox-webkit ## the main job in Firefox and WebKitGTK, on the site in dist/
	go test -tags e2e,engines -count=1 -timeout 15m -run InOtherEngines ./app/e2e

startup: chromium ## how long a cheap phone waits, next to the floor; of the site in dist/
	$(WASM) -tags= -o .build/floor.wasm ./app/e2e/floor
	go test -tags e2e,startup -count=1 -timeout 15m -v -run StartUp ./app/e2e

lighthouse: chromium lighthouse-npm ## Lighthouse's figures of the site in dist/
	go run ./app/e2e/lighthouse dist .build/lighthouse/node_modules/.bin/lighthouse

axe:
	@test -f .build/axe-core/axe.min.js || app/e2e/install-axe

jsqr:
	@test -f .build/jsqr/jsQR.js || app/e2e/install-jsqr

chromium:
	@command -v chromium >/dev/null || app/e2e/install-chromium

firefox-webkit:
	@command -v firefox-esr >/dev/null && command -v WebKitWebDriver >/dev/null && command -v Xvfb >/dev/null || app/e2e/install-engines

lighthouse-npm:
	@test -x .build/lighthouse/node_modules/.bin/lighthouse || app/e2e/install-lighthouse

size: site ## the program as served, next to a go-app page that only says hello: 1.5 times at most
	$(WASM) -tags= -o .build/floor.wasm ./app/e2e/floor
	go run ./app/e2e/weigh dist/web/app.wasm .build/floor.wasm

# The database of the Go team as a module: the server that govulncheck asks else is not
# within reach everywhere. Newer entries come with another version of it.
VULNDB  := golang.org/x/vulndb@v0.0.0-20261105234957-e22db6528018

vuln: wasm ## known vulnerabilities: what ships may call none, those of the tools are told
	GOBIN=$(CURDIR)/.build go install golang.org/x/vuln/cmd/govulncheck@v1.9.0
	GOBIN=$(CURDIR)/.build go install $(subst @,/cmd/indexdb@,$(VULNDB))
	rm -rf .build/vulndb .build/shipped
	.build/indexdb -out .build/vulndb -vulns "$$(go mod download -json $(VULNDB) | sed -n 's/.*"Dir": "\(.*\)".*/\1/p')/data/osv"
	mkdir -p .build/shipped/.build
	cp -r app calc .build/shipped
	cp .build/thin.mod .build/shipped/go.mod
	cp .build/thin.sum .build/shipped/go.sum
	ln -s ../../thin .build/shipped/.build/thin
	cd .build/shipped && GOOS=js GOARCH=wasm ../govulncheck -db file://$(CURDIR)/.build/vulndb ./app
	.build/govulncheck -db file://$(CURDIR)/.build/vulndb ./... || test $$? -eq 3

bench: ## benchmarks
	go test -run '^$$' -bench . -benchmem ./...

# Without a bound the fuzzer makes a find of a large file smaller for a minute, and tries
# next to nothing.
fuzz: ## each fuzz target for 30 s; FUZZ=5m for longer, FUZZ=1000000x for as many tries
	@set -e; for package in $$(go list ./...); do \
	  for target in $$(go test -list '^Fuzz' $$package | grep '^Fuzz'); do \
	    echo "$$package $$target"; \
	    go test -run '^$$' -fuzz "^$$target$$" -fuzztime $(FUZZ) -fuzzminimizetime 50x $$package; \
	  done; \
	done

nightly: ## a million tries of each fuzz target, and the slow rules over every record
	$(MAKE) fuzz FUZZ=1000000x
	$(MAKE) rules

mutate: ## change figures by 1 %, turn conditions about, one at a time: a test must fail; MUTATE=-all for every one
	go run ./calc/internal/mutate $(MUTATE)

counts: ## how many published, derived and recalled cases each formula has
	@go test -count=1 -run Counts -v ./calc/internal/published

golden: ## rewrite our own kept output; review the difference
	go test $$(grep -rl --include='*_test.go' 'flag.Bool("update"' . | xargs -rn1 dirname | sort -u) -update
