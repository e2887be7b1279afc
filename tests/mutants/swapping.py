"""Changes within functions: tried in forks of a process that has collected the tests, where the function gets new code.

What was remembered before (``lru_cache``, ``Tables.once``) is forgotten in the fork. What a test module worked out as
it was imported stays as it was without the change: such a change may count as not noticed though it would be.
"""

from __future__ import annotations

import functools
import gc
import json
import os
import resource
import signal
import sys
import tempfile
from collections import defaultdict
from collections.abc import Callable, Iterator
from pathlib import Path
from types import CodeType, FunctionType
from typing import Any

import pytest

from tests.mutants.changes import ROOT, Change
from tests.mutants.covering import Covering
from tests.mutants.trying import CPU_S, MEMORY, soon_enough

Place = tuple[str, int, str]  # a function's file, first line and name
Changed = tuple[Change, dict[Place, CodeType]]


def new_codes(change: Change) -> dict[Place, CodeType] | None:
    """The functions that are other with the change; None where more is, such as a default or a decorator."""
    path = str(ROOT / change.file)
    was = compile((ROOT / change.file).read_text(encoding="utf-8"), path, "exec", dont_inherit=True)
    found: dict[Place, CodeType] = {}
    if not _compare(was, compile(change.source(), path, "exec", dont_inherit=True), found):
        return None
    return found


def _compare(was: CodeType, now: CodeType, found: dict[Place, CodeType]) -> bool:
    """Modules and classes must be the same but for the functions in them."""
    if was.co_code != now.co_code or was.co_names != now.co_names or len(was.co_consts) != len(now.co_consts):
        return False
    for one, other in zip(was.co_consts, now.co_consts, strict=True):
        if not isinstance(one, CodeType):
            if type(one) is not type(other) or one != other:
                return False
        elif one != other:
            if one.co_flags & 0x02:  # CO_NEWLOCALS: a function; a class has none
                found[one.co_filename, one.co_firstlineno, one.co_name] = other
            elif not _compare(one, other, found):
                return False
    return True


class Swapping:
    """A pytest plugin that tries the changes instead of running the tests."""

    def __init__(
        self,
        changes: list[Changed],
        covering: Covering,
        keep: Callable[..., None],
        at_once: int,
    ) -> None:
        self._changes, self._covering, self._keep, self._at_once = changes, covering, keep, at_once

    @pytest.hookimpl(tryfirst=True)
    def pytest_runtestloop(self, session: pytest.Session) -> bool:
        living, forgetful = _living(), list(_forgetful())
        gc.freeze()
        unfit = _failing_unchanged(session.items, forgetful)
        print(
            f"{len(unfit)} tests compare with what was remembered: left out", file=sys.__stderr__, flush=True
        )
        items = {item.nodeid: item for item in session.items if item.nodeid not in unfit}
        for at, (change, codes) in enumerate(self._changes):
            if at >= self._at_once:
                os.wait()
            print(f"{at + 1} of {len(self._changes)}", file=sys.__stderr__, flush=True)
            if os.fork() == 0:
                try:
                    self._try(change, codes, items, living, forgetful)
                finally:
                    os._exit(0)
        while _waited():
            pass
        return True

    def _try(
        self,
        change: Change,
        codes: dict[Place, CodeType],
        items: dict[str, pytest.Item],
        living: dict[Place, list[FunctionType]],
        forgetful: list[Callable[[], None]],
    ) -> None:
        """In a process between: the fork that runs the tests may be ended by its limits."""
        told = Path(tempfile.gettempdir()) / f"mutant-{os.getpid()}.json"
        told.unlink(missing_ok=True)
        child = os.fork()
        if child == 0:
            try:
                names = soon_enough(self._covering.tests(change), self._covering)
                wanted = [items[name] for name in names if name in items]
                _limit(round(CPU_S + 3 * sum(self._covering.took_s[item.nodeid] for item in wanted)))
                for place, code in codes.items():
                    for function in living[place]:
                        function.__code__ = code
                for forget in forgetful:
                    forget()
                told.write_text(json.dumps(_first_failed(wanted)))
            finally:
                os._exit(0)
        _, status = os.waitpid(child, 0)
        if told.exists():
            by = json.loads(told.read_text())
            told.unlink()
        elif os.WIFSIGNALED(status):
            by = f"ended by {signal.Signals(os.WTERMSIG(status)).name}"
        else:  # an error of this bench, so nothing is known of the change
            print(f"{change.file}:{change.line} could not be tried", file=sys.__stderr__, flush=True)
            return
        self._keep(change, bool(by), by)


def _failing_unchanged(items: list[pytest.Item], forgetful: list[Callable[[], None]]) -> set[str]:
    """The tests that fail once memories are forgotten, without any change: they can notice nothing."""
    told = Path(tempfile.gettempdir()) / f"unchanged-{os.getpid()}.json"
    told.unlink(missing_ok=True)
    child = os.fork()
    if child == 0:
        try:
            _quiet()
            for forget in forgetful:
                forget()
            told.write_text(json.dumps(_failed(items, stop=False)))
        finally:
            os._exit(0)
    os.waitpid(child, 0)
    failed = set(json.loads(told.read_text()))
    told.unlink()
    return failed


def _waited() -> bool:
    try:
        os.wait()
    except ChildProcessError:
        return False
    return True


def _limit(cpu_s: int) -> None:
    resource.setrlimit(resource.RLIMIT_CPU, (cpu_s, cpu_s + 5))
    resource.setrlimit(resource.RLIMIT_AS, (MEMORY, MEMORY))
    _quiet()


def _quiet() -> None:
    nothing = os.open(os.devnull, os.O_RDWR)
    os.dup2(nothing, 1)
    os.dup2(nothing, 2)


def _first_failed(items: list[pytest.Item]) -> str:
    """The first test that fails, in this order; "" where none does."""
    return next(iter(_failed(items, stop=True)), "")


def _failed(items: list[pytest.Item], *, stop: bool) -> list[str]:
    """The tests that fail, in this order; the first alone where it is to stop there."""
    failed: list[str] = []

    class Watch:
        def pytest_runtest_logreport(self, report: pytest.TestReport) -> None:
            if report.failed:
                failed.append(report.nodeid)

    for item, after in zip(items, [*items[1:], None], strict=True):
        if not item.config.pluginmanager.has_plugin("mutants-watch"):
            item.config.pluginmanager.register(Watch(), "mutants-watch")
        item.config.hook.pytest_runtest_protocol(item=item, nextitem=after)
        if failed and stop:
            break
    return failed


def _living() -> dict[Place, list[FunctionType]]:
    found: dict[Place, list[FunctionType]] = defaultdict(list)
    for one in gc.get_objects():
        if isinstance(one, FunctionType):
            code = one.__code__
            found[code.co_filename, code.co_firstlineno, code.co_name].append(one)
    return found


def _forgetful() -> Iterator[Callable[[], Any]]:
    """What makes each memory of ours forget."""
    from tagger.trade.tables import Tables

    for one in gc.get_objects():
        if isinstance(one, functools._lru_cache_wrapper) and one.__module__.startswith(("tagger", "tests")):
            yield one.cache_clear
        elif type(one) is Tables:
            yield one._found.clear
