"""One change tried in processes of its own, forked from one that has imported what the tests need."""

from __future__ import annotations

import importlib.abc
import importlib.machinery
import importlib.util
import json
import os
import resource
import signal
import sys
from collections.abc import Sequence
from dataclasses import dataclass
from importlib import import_module
from itertools import accumulate
from pathlib import Path
from types import CodeType, ModuleType

import pytest

from tests.mutants.changes import ROOT, Change
from tests.mutants.covering import Covering
from tests.mutants.watching import Wanted

FIRST = 40  # tests of the first turn, which fails most changes
ENOUGH_S = 15  # what the tests of one change take without it: of 284 that were noticed, all were within 7
CPU_S = 20  # beyond what the tests take without a change: a change may make a loop endless
MEMORY = 6_000_000_000
WARM = (
    "hypothesis", "numpy", "pydantic", "sqlalchemy.orm", "fluent.runtime", "babel.dates", "PIL.Image", "zxingcpp",
    "cv2", "pypdfium2", "reportlab.pdfgen.canvas", "qrcode", "jsonschema", "cryptography.hazmat.primitives", "openpyxl",
    "ezdxf", "fontTools.ttLib", "alembic.config", "psycopg",
)  # fmt: skip


@dataclass(frozen=True)
class Tried:
    noticed: bool
    by: str  # the test that failed first; "" where none did, "too long" where it did not end


def warm() -> None:
    """Import what others wrote, and nothing of ours."""
    for name in WARM:
        import_module(name)
    assert not any(name == "tagger" or name.startswith("tagger.") for name in sys.modules)


def tried(change: Change, covering: Covering, folder: Path) -> Tried:
    tests, source = covering.tests(change), change.source()
    for turn in (tests[:FIRST], soon_enough(tests[FIRST:], covering)):
        if not turn:
            continue
        expected = sum(covering.took_s[test] for test in turn)
        result = _run(change.file, source, turn, round(CPU_S + 3 * expected), folder)
        if result.noticed:
            return result
    return Tried(False, "")


def soon_enough(tests: list[str], covering: Covering) -> list[str]:
    sums = accumulate(covering.took_s[test] for test in tests)
    return [test for test, took in zip(tests, sums, strict=True) if took < ENOUGH_S]


def _run(file: str, source: str, tests: list[str], cpu_s: int, folder: Path) -> Tried:
    told = folder / f"{os.getpid()}.json"
    told.unlink(missing_ok=True)
    child = os.fork()
    if child == 0:
        try:
            _within(file, source, tests, cpu_s, told)
        finally:
            os._exit(3)
    _, status = os.waitpid(child, 0)
    if os.WIFSIGNALED(status):
        return Tried(True, f"ended by {signal.Signals(os.WTERMSIG(status)).name}")
    done = json.loads(told.read_text()) if told.exists() else {"code": 3, "failed": "pytest itself"}
    return Tried(done["code"] != 0, done["failed"])


def _within(file: str, source: str, tests: list[str], cpu_s: int, told: Path) -> None:
    resource.setrlimit(resource.RLIMIT_CPU, (cpu_s, cpu_s + 5))
    resource.setrlimit(resource.RLIMIT_AS, (MEMORY, MEMORY))
    nothing = os.open(os.devnull, os.O_RDWR)
    os.dup2(nothing, 1)
    os.dup2(nothing, 2)
    sys.meta_path.insert(0, _Changed(file, source))
    wanted = Wanted(tests)
    files = sorted({_asked(test.partition("::")[0]) for test in tests})
    options = [
        "-x",
        "-q",
        "-p",
        "no:cacheprovider",
        "-p",
        "no:xdist",
        "-p",
        "no:cov",
        "--hypothesis-seed=0",
        "--tb=no",
    ]
    code = pytest.main([*options, *files], plugins=[wanted])
    told.write_text(json.dumps({"code": int(code), "failed": wanted.failed}))
    os._exit(0)


def _asked(file: str) -> str:
    """A doctest is asked for by its room: pytest imports a file that is named to it past every finder."""
    return file if file.startswith("tests/") else "/".join(file.split("/")[:2])


class _Changed(importlib.abc.MetaPathFinder):
    """Imports one module from a changed text."""

    def __init__(self, file: str, source: str) -> None:
        self._name = file.removesuffix(".py").removesuffix("/__init__").replace("/", ".")
        self._path, self._source = str(ROOT / file), source

    def find_spec(
        self, name: str, path: Sequence[str] | None, target: ModuleType | None = None
    ) -> importlib.machinery.ModuleSpec | None:
        if name != self._name:
            return None
        loader = _Loader(name, self._path, self._source)
        return importlib.util.spec_from_file_location(name, self._path, loader=loader)


class _Loader(importlib.machinery.SourceFileLoader):
    def __init__(self, name: str, path: str, source: str) -> None:
        super().__init__(name, path)
        self._source = source

    def get_code(self, fullname: str) -> CodeType:
        code: CodeType = compile(self._source, self.path, "exec", dont_inherit=True)
        return code
