# `make` with no target lists what there is.
.DEFAULT_GOAL := help
SHELL := /bin/bash

# A bare Debian machine with Rust has no outside circuit solver; the checks need it.
DEBIAN_PACKAGES := ngspice build-essential pkg-config

# What needs neither a window nor WebKit.
HEADLESS := -p coldchassis-core -p coldchassis-cli -p coldchassis-tests

.PHONY: help run test truth bench format setup-run setup-test

help: ## list the targets
	@grep -hE '^[a-z-]+:.*##' $(MAKEFILE_LIST) | sed -E 's/:.*## /\t/' | expand -t 12

run: setup-run ## build, and run the guided demonstration in the terminal
	cargo run --release --quiet --bin coldchassis -- demo

test: setup-test ## pass every check; needs no display
	cargo fmt --all --check
	cargo clippy $(HEADLESS) --all-targets --quiet -- -D warnings
	cargo test $(HEADLESS) --no-fail-fast
	RUSTDOCFLAGS="-D warnings" cargo doc $(HEADLESS) --no-deps --document-private-items --quiet

truth: setup-test ## a million physical units against the evidence logic (about 20 minutes on two cores)
	COLDCHASSIS_UNITS=1000000 cargo test --release --package coldchassis-tests --test truth -- --nocapture

bench: setup-test ## print how fast it is, with the ratio to ngspice in the same run
	cargo bench --package coldchassis-tests --bench speed

format: ## format all code
	cargo fmt --all

setup-run:
	@command -v cc > /dev/null || $(MAKE) --no-print-directory install-packages

setup-test: setup-run
	@command -v ngspice > /dev/null || $(MAKE) --no-print-directory install-packages

.PHONY: install-packages
install-packages:
	@echo "installing: $(DEBIAN_PACKAGES)"
	@sudo=""; if [ "$$(id -u)" != 0 ]; then sudo=sudo; fi; \
	$$sudo apt-get update -qq && \
	DEBIAN_FRONTEND=noninteractive $$sudo apt-get install -y -qq --no-install-recommends $(DEBIAN_PACKAGES)
