"""Which tests run which line, measured by coverage.py's contexts, and how long each test takes."""

from __future__ import annotations

import json
from dataclasses import dataclass
from pathlib import Path

import coverage
import pytest

from tests.mutants.changes import Change
from tests.mutants.watching import Durations

NEAR = {  # the tests that a change of a room ought to fail
    "tagger/trade": ("tests/trade", "tests/outside", "tests/test_spec.py", "tests/test_rated.py", "tagger/trade"),
    "tagger/code": ("tests/code", "tests/outside", "tests/test_spec.py", "tests/test_signing.py", "tagger/code"),
    "tagger/printing": ("tests/printing/test_preflight.py", "tests/printing/test_shrink_sleeve.py",
                        "tests/printing/test_end_tags.py", "tests/printing/test_around.py",
                        "tests/printing/test_plate.py", "tests/printing/test_more_templates.py"),
}  # fmt: skip
_OUTSIDE_OF_TESTS = ""  # the context of what runs as a module is imported


@dataclass(frozen=True)
class Covering:
    lines: dict[str, dict[int, list[str]]]  # file, line: tests
    took_s: dict[str, float]

    def tests(self, change: Change) -> list[str]:
        """The tests that run the changed line, quickest first; those that run its file where only the import does.

        Then the rest of its room's: what is remembered between tests is run by the first of them alone.
        """
        lines = self.lines.get(change.file, {})
        by_line = set(lines.get(change.line, ()))
        by_file = {test for tests in lines.values() for test in tests}
        room = "/".join(change.file.split("/")[:2])
        near = {test for test in self.took_s if test.startswith(NEAR[room])}
        ordered = self._quickest(by_line) + self._quickest((by_file & near) - by_line)
        return ordered + self._quickest(near - by_line - by_file)

    def _quickest(self, tests: set[str]) -> list[str]:
        return sorted(tests & self.took_s.keys(), key=lambda test: (self.took_s[test], test))


def measure(folder: Path) -> Covering:
    """Run the rooms' tests once, under coverage."""
    data, took = folder / "coverage", folder / "took.json"
    data.unlink(missing_ok=True)
    watching = Durations(took)
    asked = sorted({where for near in NEAR.values() for where in near})
    covered = coverage.Coverage(data_file=str(data), include=["tagger/*"], config_file=False)
    covered.set_option("run:relative_files", True)
    covered.start()
    done = pytest.main(
        ["-q", "-p", "no:cacheprovider", "-p", "no:xdist", *asked], plugins=[watching, _Contexts(covered)]
    )
    covered.stop()
    covered.save()
    assert done == 0, f"the tests fail without any change: {watching.failed}"
    return read(folder)


def read(folder: Path) -> Covering:
    data = coverage.CoverageData(basename=str(folder / "coverage"))
    data.read()
    lines = {
        file: {
            line: [context for context in contexts if context != _OUTSIDE_OF_TESTS]
            for line, contexts in data.contexts_by_lineno(file).items()
        }
        for file in data.measured_files()
    }
    return Covering(lines, json.loads((folder / "took.json").read_text()))


class _Contexts:
    """One context a test, its fixtures among it."""

    def __init__(self, covered: coverage.Coverage) -> None:
        self._covered = covered

    @pytest.hookimpl(wrapper=True)
    def pytest_runtest_protocol(self, item: pytest.Item) -> object:
        self._covered.switch_context(item.nodeid)
        try:
            return (yield)
        finally:
            self._covered.switch_context(_OUTSIDE_OF_TESTS)
