# `make` lists the targets. Each does its own set-up; nothing needs to be there but Python and make.

PYTHON ?= python3
VENV   := .venv
BIN    := $(VENV)/bin
READY  := $(VENV)/.ready
TOOLS  := $(VENV)/.tools
SYSTEM := $(VENV)/.system
INSTALL := $(BIN)/python -m pip install -qq

.DEFAULT_GOAL := help
.PHONY: help run test types compiled prove coverage lint speed survive tables audit clean

# Where the environment forbids it, each of the tests' many processes would compile the whole program for itself.
export PYTHONDONTWRITEBYTECODE :=

help: ## list the targets
	@awk -F':.*## ' '/^[a-z]+:.*## / {printf "  make %-9s %s\n", $$1, $$2}' $(MAKEFILE_LIST)

run: $(READY) ## load the example shop's week and serve it on 127.0.0.1:8000
	$(BIN)/tagger demo

test: $(TOOLS) $(SYSTEM) ## lint, type-check and run all tests
	$(BIN)/ruff check .
	$(BIN)/ruff format --check .
	@$(MAKE) --no-print-directory --jobs 2 types compiled
	$(BIN)/pytest -n 4 --dist worksteal

types: $(TOOLS) ## type-check only
	$(BIN)/mypy

# One process compiles what the four of the tests would each compile; what is wrong with a test, those say.
compiled: $(TOOLS) ## compile the tests, once for all their processes
	@$(BIN)/pytest --collect-only -qq >/dev/null 2>&1 || true

prove: $(TOOLS) $(SYSTEM) ## what is proved by volume: kills, fuzz, requests at once, small changes that a test must notice
	TAGGER_TEST_VOLUME=full $(BIN)/pytest -n 2 --dist worksteal --hypothesis-profile=default tests/test_*.py tests/code tests/trade tests/store tests/rest tests/cli tests/bench tests/browser \
	  tests/printing tests/scan tests/gauges tests/measuring tests/web
	$(BIN)/python -m tests.mutants --again

coverage: $(TOOLS) $(SYSTEM) ## lines and branches of tagger and api that the tests run in their own processes
	$(BIN)/pytest -n 4 --dist worksteal --cov=tagger --cov=api --cov-branch --cov-report=term:skip-covered

lint: $(TOOLS) ## lint and type-check only
	$(BIN)/ruff check .
	$(BIN)/ruff format --check .
	$(BIN)/mypy

speed: $(TOOLS) $(SYSTEM) ## every benchmark in one table, kept and held against the last one (about half an hour)
	$(BIN)/python -m tests.speed

survive: $(TOOLS) $(SYSTEM) ## damage the printed symbols and count what still reads
	$(BIN)/python -m tests.speed.survive

tables: $(READY) ## check the trade's tables
	$(BIN)/tagger tables check

audit: $(READY) ## ask for known faults in the packages that the tests passed with (needs a network)
	@$(PYTHON) -m venv $(VENV)/audit
	$(VENV)/audit/bin/pip install -qq 'pip-audit>=2.7,<3'
	$(VENV)/audit/bin/pip-audit --requirement tests/constraints.txt --no-deps --disable-pip --strict

clean: ## remove the virtual environment and caches
	rm -rf $(VENV) .pytest_cache .mypy_cache .ruff_cache .hypothesis build *.egg-info

$(VENV)/pyvenv.cfg:
	@$(PYTHON) -c 'import sys; sys.exit(sys.version_info < (3, 11))' || \
	  { echo "Python 3.11 or newer is needed; $(PYTHON) is $$($(PYTHON) -V 2>&1). Try: make PYTHON=python3.12 ..."; exit 1; }
	@$(PYTHON) -m venv $(VENV) || \
	  { echo "The venv module is missing. On Debian: apt-get install python3-venv"; exit 1; }

# What running needs, and nothing else.
$(READY): pyproject.toml tests/constraints.txt | $(VENV)/pyvenv.cfg
	@echo "Setting up $(VENV): a Python environment of its own (some 330 MB, about a minute) ..."
	@$(INSTALL) --constraint tests/constraints.txt --editable .
	@touch $@

# That and the tests' tools, in one go.
$(TOOLS): pyproject.toml tests/constraints.txt | $(VENV)/pyvenv.cfg
	@echo "Setting up $(VENV) with what the tests need (some 700 MB, about a minute) ..."
	@$(INSTALL) --constraint tests/constraints.txt --editable '.[dev]'
	@touch $(READY) $@

$(SYSTEM): tests/system-packages.sh tests/node-packages.sh | $(VENV)/pyvenv.cfg
	@sh tests/system-packages.sh
	@sh tests/node-packages.sh $(VENV)
	@touch $@
