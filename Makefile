# `make` with no target lists what there is.
.DEFAULT_GOAL := help
SHELL := /bin/bash
.SHELLFLAGS := -eu -o pipefail -c

# What a bare Debian machine with Rust and Node 20 lacks. Versions and reasons: DEVELOPERS.md.
APP_PACKAGES := build-essential pkg-config file curl libwebkit2gtk-4.1-dev libgtk-3-dev librsvg2-dev libssl-dev
# A display that nobody sees, the driver of the web view, and fonts for what our own do not have.
DISPLAY_PACKAGES := xvfb xauth xdotool webkit2gtk-driver dbus dbus-x11 x11-utils fonts-dejavu-core
# The circuits, the screens and the printed pages are held against these.
TEST_PACKAGES := ngspice chromium poppler-utils
BENCH_PACKAGES := libvips-tools
# The package finds by these what its programs are linked against, and is checked as a desktop and Debian would.
DEB_PACKAGES := dpkg-dev
DEB_TEST_PACKAGES := lintian desktop-file-utils appstream libgtk-3-bin

# What needs neither a window nor WebKit.
HEADLESS := -p coldchassis-core -p coldchassis-cli -p coldchassis-tests -p coldchassis-figures
# The app and what drives it. The checks drive an app with the core that the other checks have built, which takes much
# less time than to build what is released; that is timed, killed and packaged (`make bench kills test-package`).
APP := -p coldchassis-app -p coldchassis-app-tests

# `make run` opens what is released; `make run PROFILE=dev` what the checks drive.
PROFILE ?= release
APP_BUILT = target/$(if $(filter dev,$(PROFILE)),debug,$(PROFILE))/coldchassis-app

UI_MODULES := ui/node_modules/.package-lock.json
BROWSER_MODULES := tests/browser/node_modules/.package-lock.json

# Where cargo builds.
TARGET := $(or $(CARGO_TARGET_DIR),target)
# Installed beside what is built, so that the machine is left as it is.
CARGO_DEB_VERSION := 3.8.0
CARGO_DEB := $(TARGET)/tools/cargo-deb-$(CARGO_DEB_VERSION)/bin/cargo-deb
# Makes the package of what is built and says where it is. The moment of the commit is that of every file in it.
DEB = SOURCE_DATE_EPOCH=$$(git log -1 --format=%ct 2> /dev/null || date +%s) \
  $(CARGO_DEB) --quiet --no-build --no-strip --package coldchassis-app

.PHONY: help run demo test test-core test-ui test-app test-browser truth metered remedies decisions strings fuzz kills bench pace goldens looks walks format \
  package test-package

help: ## list the targets
	@grep -hE '^[a-z-]+:.*##' $(MAKEFILE_LIST) | sed -E 's/:.*## /\t/' | expand -t 14

run: setup-run screens ## build the app and open it; with no display, walk through it and leave pictures
	cargo build --profile $(PROFILE) --quiet -p coldchassis-app
ifneq ($(DISPLAY)$(WAYLAND_DISPLAY),)
	./$(APP_BUILT)
else
	@echo "No display here: a scripted inspection runs in the app on one that nobody sees. Its pictures:"
	@$(MAKE) --no-print-directory setup-display
	COLDCHASSIS_APP=$(APP_BUILT) cargo run --quiet -p coldchassis-app-tests --bin walk
endif

demo: ## play the guided demonstration in the terminal
	cargo run --release --quiet --bin coldchassis -- demo

test: setup-test test-core test-ui test-app test-browser ## pass every check; needs no display

# The program is built with its own check: the others take that one, so that the core is not compiled once more.
test-core: setup-test
	cargo fmt --all --check
	cargo clippy $(HEADLESS) --all-targets --quiet -- -D warnings
	COLDCHASSIS_BIN=$(CURDIR)/target/debug/coldchassis cargo test $(HEADLESS) --no-fail-fast
	RUSTDOCFLAGS="-D warnings" cargo doc $(HEADLESS) --no-deps --document-private-items --quiet

test-ui: $(UI_MODULES)
	npm --prefix ui run --silent check
	npm --prefix ui run --silent lint

test-app: setup-test screens $(BROWSER_MODULES)
	cargo clippy $(APP) --all-targets --quiet -- -D warnings
	cargo build --quiet -p coldchassis-app
	cargo test -p coldchassis-app --no-fail-fast
	COLDCHASSIS_APP=$(CURDIR)/target/debug/coldchassis-app cargo test -p coldchassis-app-tests --no-fail-fast
	RUSTDOCFLAGS="-D warnings" cargo doc $(APP) --no-deps --document-private-items --quiet

test-browser: setup-test screens $(BROWSER_MODULES)
	cargo test $(HEADLESS) --no-run --quiet
	npm --prefix tests/browser run --silent lint
	npm --prefix tests/browser test

goldens: setup-test screens $(BROWSER_MODULES) ## take the kept pictures of every screen anew: look at them before keeping them
	cargo test $(HEADLESS) --no-run --quiet
	npm --prefix tests/browser run goldens

looks: setup-test screens $(BROWSER_MODULES) ## every screen in every width, theme and language (half an hour and more)
	cargo test $(HEADLESS) --no-run --quiet
	COLDCHASSIS_LOOK=all npm --prefix tests/browser test -- screens german

walks: setup-test screens ## the ways of a buyer, a technician and a shop through the app, with taps, times and pictures
	cargo build --release --quiet -p coldchassis-app
	COLDCHASSIS_APP=target/release/coldchassis-app cargo run --quiet -p coldchassis-app-tests --bin walks

truth: setup-test ## a million physical units against the evidence logic (about a minute on two cores)
	COLDCHASSIS_UNITS=1000000 cargo test --release --package coldchassis-tests --test truth -- --nocapture

kills: setup-test screens ## kill the core a thousand times and the app fifty, and look for what was lost (about a quarter of an hour)
	COLDCHASSIS_KILLS=1000 cargo test --package coldchassis-tests --test killed -- --nocapture
	cargo build --release --quiet -p coldchassis-app
	COLDCHASSIS_APP=$(CURDIR)/target/release/coldchassis-app COLDCHASSIS_APP_KILLS=50 \
	  cargo test --package coldchassis-app-tests --test killed -- --nocapture

metered: setup-test ## 20,000 measured physical units against the evidence of readings (about two minutes)
	COLDCHASSIS_METERED=20000 cargo test --package coldchassis-tests --test readings -- --nocapture

remedies: setup-test ## the best repair of all 6,945 arrangements against trying every sequence (about a minute)
	COLDCHASSIS_REMEDIES=all cargo test --release --package coldchassis-tests --test remedies -- --nocapture

decisions: setup-test ## the engine against the optimum, other orders and wrong answers, in large numbers (an hour or more)
	COLDCHASSIS_SUB_PROBLEMS=500 COLDCHASSIS_GUIDED=20000 COLDCHASSIS_SLIPS=100000 COLDCHASSIS_SIMULATED=500 \
	  COLDCHASSIS_LEAST=500 \
	  cargo test --release --package coldchassis-tests --test decisions -- --nocapture
	$(MAKE) --no-print-directory truth

strings: setup-test ## ten million random strings through the reading of tubes (a few minutes)
	COLDCHASSIS_STRINGS=10000000 cargo test --release --package coldchassis-tests --test heaters odd_text -- --nocapture

fuzz: setup-test ## arbitrary findings, arrangements, tubes, readings, bundles, photos and records (a minute each)
	COLDCHASSIS_FUZZ_SECONDS=$${COLDCHASSIS_FUZZ_SECONDS:-60} \
	  cargo test --package coldchassis-tests --test fuzz -- --nocapture --test-threads=1

# Every bench runs, though one is over its bound: the sheet is of the whole run, and make fails after it.
FIGURES := $(CURDIR)/target/figures.jsonl
BENCHES := speed heaters readings remedies photo plain records report
PACE := COLDCHASSIS_APP=target/release/coldchassis-app cargo run --release --quiet -p coldchassis-app-tests --bin pace

bench: setup-bench screens ## print how fast and how large all is beside its bounds and peers; writes tests/benches/FIGURES.md
	cargo build --release -p coldchassis-app
	rm -f $(FIGURES)
	status=0; \
	COLDCHASSIS_FIGURES=$(FIGURES) cargo bench --no-fail-fast -p coldchassis-tests $(BENCHES:%=--bench %) || status=1; \
	COLDCHASSIS_FIGURES=$(FIGURES) $(PACE) || status=1; \
	cargo run --release --quiet -p coldchassis-figures -- $(FIGURES) tests/benches/FIGURES.md; \
	exit $$status

pace: setup-bench screens ## print how fast the app starts and goes from question to question, and what memory it takes
	cargo build --release -p coldchassis-app
	$(PACE)

# The page of licences in the app, anew: after a library was added, raised or taken out.
.PHONY: licences deny advisories
licences: $(UI_MODULES) ## write the page of licences of all that is built in (fetches packages for phones the first time)
	cargo run --quiet --package coldchassis-tests --bin licences

deny: setup-deny ## look whether licences, versions and sources of all libraries may be used
	cargo deny --locked --config src-tauri/deny.toml --log-level error check --allow duplicate licenses bans sources

advisories: setup-deny ## ask for known flaws of the libraries (needs github.com)
	cargo deny --locked --config src-tauri/deny.toml check advisories

package: setup-package screens $(CARGO_DEB) ## build the Debian package with the app and the command line
	cargo build --release --quiet -p coldchassis-app -p coldchassis-cli
	$(DEB)

test-package: package setup-test-package ## install, upgrade and remove the package on this machine, with a record that must stay
	# The second run takes the first one's file away where it has the name of a package: the newer one has another.
	newer=$$($(DEB) --deb-revision 2 --output $(TARGET)/debian/newer.deb); \
	  COLDCHASSIS_APP=/usr/bin/coldchassis-app cargo run --quiet -p coldchassis-app-tests --bin package -- "$$($(DEB))" "$$newer"

format: ## format all code
	cargo fmt --all

# The screens are baked into the app when it is built.
.PHONY: screens
screens: $(UI_MODULES)
	npm --prefix ui run --silent build -- --logLevel warn

$(UI_MODULES): ui/package-lock.json
	npm --prefix ui ci --no-audit --no-fund
	@touch $@

$(CARGO_DEB):
	cargo install --quiet --locked --root $(TARGET)/tools/cargo-deb-$(CARGO_DEB_VERSION) cargo-deb@$(CARGO_DEB_VERSION)

$(BROWSER_MODULES): tests/browser/package-lock.json
	npm --prefix tests/browser ci --no-audit --no-fund
	@touch $@

.PHONY: setup-run setup-display setup-test setup-bench setup-package setup-test-package
setup-run:
	@pkg-config --exists webkit2gtk-4.1 librsvg-2.0 2> /dev/null || $(call install,$(APP_PACKAGES))

setup-display:
	@{ command -v Xvfb && command -v xdotool && command -v WebKitWebDriver && command -v dbus-launch; } > /dev/null || $(call install,$(DISPLAY_PACKAGES))

setup-test: setup-run setup-display
	@{ command -v ngspice && command -v chromium && command -v pdftotext; } > /dev/null || $(call install,$(TEST_PACKAGES))

setup-bench: setup-test
	@command -v vipsthumbnail > /dev/null || $(call install,$(BENCH_PACKAGES))

.PHONY: setup-deny
setup-deny:
	@cargo deny --version > /dev/null 2>&1 || cargo install --locked --quiet cargo-deny

setup-package: setup-run
	@command -v dpkg-shlibdeps > /dev/null || $(call install,$(DEB_PACKAGES))

setup-test-package: setup-package setup-display
	@{ command -v lintian && command -v desktop-file-validate && command -v appstreamcli && command -v gtk-launch; } > /dev/null || $(call install,$(DEB_TEST_PACKAGES))

define install
{ echo "installing: $(1)"; \
  sudo=""; if [ "$$(id -u)" != 0 ]; then sudo=sudo; fi; \
  $$sudo apt-get update -qq && \
  DEBIAN_FRONTEND=noninteractive $$sudo apt-get install -y -qq --no-install-recommends $(1); }
endef
