# `make` with no target lists what there is.
.DEFAULT_GOAL := help
SHELL := /bin/bash
.SHELLFLAGS := -eu -o pipefail -c

# What a bare Debian machine with Rust and Node 20 lacks. Versions and reasons: DEVELOPERS.md.
APP_PACKAGES := build-essential pkg-config file curl libwebkit2gtk-4.1-dev libgtk-3-dev librsvg2-dev libssl-dev
# A display that nobody sees, the driver of the web view, and fonts for what our own do not have.
DISPLAY_PACKAGES := xvfb xauth webkit2gtk-driver dbus dbus-x11 x11-utils fonts-dejavu-core
TEST_PACKAGES := ngspice chromium
BENCH_PACKAGES := libvips-tools

# What needs neither a window nor WebKit.
HEADLESS := -p coldchassis-core -p coldchassis-cli -p coldchassis-tests
# The app and what drives it. The checks drive the released app, which `make run` opens: WebKit's side is built once.
APP := -p coldchassis-app -p coldchassis-app-tests

UI_MODULES := ui/node_modules/.package-lock.json
BROWSER_MODULES := tests/browser/node_modules/.package-lock.json

.PHONY: help run demo test test-core test-ui test-app test-browser truth metered decisions strings bench pace goldens format

help: ## list the targets
	@grep -hE '^[a-z-]+:.*##' $(MAKEFILE_LIST) | sed -E 's/:.*## /\t/' | expand -t 14

run: setup-run screens ## build the app and open it; with no display, walk through it and leave pictures
	cargo build --release --quiet -p coldchassis-app
ifneq ($(DISPLAY)$(WAYLAND_DISPLAY),)
	./target/release/coldchassis-app
else
	@echo "No display here: a scripted inspection runs in the app on one that nobody sees. Its pictures:"
	@$(MAKE) --no-print-directory setup-display
	COLDCHASSIS_APP=target/release/coldchassis-app cargo run --quiet -p coldchassis-app-tests --bin walk
endif

demo: ## play the guided demonstration in the terminal
	cargo run --release --quiet --bin coldchassis -- demo

test: setup-test test-core test-ui test-app test-browser ## pass every check; needs no display

test-core: setup-test
	cargo fmt --all --check
	cargo clippy $(HEADLESS) --all-targets --quiet -- -D warnings
	cargo test $(HEADLESS) --no-fail-fast
	RUSTDOCFLAGS="-D warnings" cargo doc $(HEADLESS) --no-deps --document-private-items --quiet

test-ui: $(UI_MODULES)
	npm --prefix ui run --silent check
	npm --prefix ui run --silent lint

test-app: setup-test screens $(BROWSER_MODULES)
	cargo clippy $(APP) --all-targets --quiet -- -D warnings
	cargo build --release --quiet -p coldchassis-app
	cargo test --release -p coldchassis-app --no-fail-fast
	COLDCHASSIS_APP=$(CURDIR)/target/release/coldchassis-app cargo test -p coldchassis-app-tests --no-fail-fast
	RUSTDOCFLAGS="-D warnings" cargo doc $(APP) --no-deps --document-private-items --quiet

test-browser: setup-test screens $(BROWSER_MODULES)
	cargo build -p coldchassis-cli -p coldchassis-tests --bin coldchassis --bin bridge
	npm --prefix tests/browser run --silent lint
	npm --prefix tests/browser test

goldens: setup-test screens $(BROWSER_MODULES) ## take the kept pictures of every screen anew: look at them before keeping them
	cargo build -p coldchassis-cli -p coldchassis-tests --bin coldchassis --bin bridge
	npm --prefix tests/browser run goldens

truth: setup-test ## a million physical units against the evidence logic (about a minute on two cores)
	COLDCHASSIS_UNITS=1000000 cargo test --release --package coldchassis-tests --test truth -- --nocapture

metered: setup-test ## 20,000 measured physical units against the evidence of readings (about two minutes)
	COLDCHASSIS_METERED=20000 cargo test --package coldchassis-tests --test readings -- --nocapture

decisions: setup-test ## the engine against the optimum, other orders and wrong answers, in large numbers (an hour or more)
	COLDCHASSIS_SUB_PROBLEMS=500 COLDCHASSIS_GUIDED=20000 COLDCHASSIS_SLIPS=100000 COLDCHASSIS_SIMULATED=500 \
	  COLDCHASSIS_LEAST=500 \
	  cargo test --release --package coldchassis-tests --test decisions -- --nocapture
	$(MAKE) --no-print-directory truth

strings: setup-test ## ten million random strings through the reading of tubes (a few minutes)
	COLDCHASSIS_STRINGS=10000000 cargo test --release --package coldchassis-tests --test heaters odd_text -- --nocapture

bench: setup-bench ## print how fast the core is, with the ratio to ngspice and vipsthumbnail in the same run
	cargo bench --package coldchassis-tests --bench speed
	cargo bench --package coldchassis-tests --bench heaters
	cargo bench --package coldchassis-tests --bench readings
	cargo bench --package coldchassis-tests --bench photo
	cargo bench --package coldchassis-tests --bench records

pace: setup-bench screens ## print how fast the app starts and goes from question to question
	cargo build --release -p coldchassis-app
	COLDCHASSIS_APP=target/release/coldchassis-app cargo run --release --quiet -p coldchassis-app-tests --bin pace

format: ## format all code
	cargo fmt --all

# The screens are baked into the app when it is built.
.PHONY: screens
screens: $(UI_MODULES)
	npm --prefix ui run --silent build -- --logLevel warn

$(UI_MODULES): ui/package-lock.json
	npm --prefix ui ci --no-audit --no-fund
	@touch $@

$(BROWSER_MODULES): tests/browser/package-lock.json
	npm --prefix tests/browser ci --no-audit --no-fund
	@touch $@

.PHONY: setup-run setup-display setup-test setup-bench
setup-run:
	@pkg-config --exists webkit2gtk-4.1 librsvg-2.0 2> /dev/null || $(call install,$(APP_PACKAGES))

setup-display:
	@{ command -v Xvfb && command -v WebKitWebDriver && command -v dbus-launch; } > /dev/null || $(call install,$(DISPLAY_PACKAGES))

setup-test: setup-run setup-display
	@{ command -v ngspice && command -v chromium; } > /dev/null || $(call install,$(TEST_PACKAGES))

setup-bench: setup-test
	@command -v vipsthumbnail > /dev/null || $(call install,$(BENCH_PACKAGES))

define install
{ echo "installing: $(1)"; \
  sudo=""; if [ "$$(id -u)" != 0 ]; then sudo=sudo; fi; \
  $$sudo apt-get update -qq && \
  DEBIAN_FRONTEND=noninteractive $$sudo apt-get install -y -qq --no-install-recommends $(1); }
endef
