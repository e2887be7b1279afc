"""A pytest plugin: how long each test takes, which test failed first, and only the tests that are wanted, in order."""

from __future__ import annotations

import json
from collections import Counter
from pathlib import Path

import pytest


class Durations:
    """Writes the seconds of each passed test as JSON when the run ends."""

    def __init__(self, file: Path) -> None:
        self._file, self._took = file, Counter[str]()
        self.failed: list[str] = []

    def pytest_runtest_logreport(self, report: pytest.TestReport) -> None:
        self._took[report.nodeid] += report.duration  # type: ignore[assignment]
        if report.failed:
            self.failed.append(report.nodeid)

    def pytest_sessionfinish(self) -> None:
        self._file.write_text(json.dumps(self._took))


class Wanted:
    """Runs these tests and no others, in this order; remembers the first that failed."""

    def __init__(self, wanted: list[str]) -> None:
        self._wanted = {name: at for at, name in enumerate(wanted)}
        self.failed = ""

    @pytest.hookimpl(trylast=True)
    def pytest_collection_modifyitems(self, items: list[pytest.Item]) -> None:
        items[:] = sorted(
            (i for i in items if i.nodeid in self._wanted), key=lambda i: self._wanted[i.nodeid]
        )

    def pytest_collectreport(self, report: pytest.CollectReport) -> None:
        if report.failed:
            self.failed = self.failed or report.nodeid

    def pytest_runtest_logreport(self, report: pytest.TestReport) -> None:
        if report.failed:
            self.failed = self.failed or report.nodeid
