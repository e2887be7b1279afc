"""The table of all benchmarks tells a goal that is missed and a ratio that got worse; speeds themselves are no test."""

from __future__ import annotations

import ast
from datetime import date
from pathlib import Path

import pytest

from tests.speed import table
from tests.speed.benches import BENCHES
from tests.speed.table import Row

SPEED = Path(__file__).with_name("speed")


def test_every_benchmark_is_in_the_table_and_none_else() -> None:
    with_rows = {
        file.stem
        for file in SPEED.glob("*.py")
        if any(isinstance(node, ast.FunctionDef) and node.name == "rows" for node in ast.parse(file.read_text()).body)
    }  # fmt: skip
    assert with_rows == set(BENCHES)
    measured = {file.stem for file in SPEED.glob("*.py") if "def main(" in file.read_text()}
    assert measured == with_rows | {"__main__", "benches"}, "what can be run by itself is in the table too"


@pytest.mark.parametrize(
    ("goal", "figure", "ratio", "met"),
    [(">= 4", 9.0, 4.0, True), (">= 4", 9.0, 3.9, False), ("<= 1.5", 0.2, 1.6, False), ("<= 1.5", 0.2, 1.5, True),
     ("<= 2.0", 1.4, None, True), ("<= 2.0", 2.1, None, False), ("<=", 2.1, None, None)],
)  # fmt: skip
def test_a_goal_is_of_the_ratio_or_of_the_figure_where_there_is_none(
    goal: str, figure: float, ratio: float | None, met: bool | None
) -> None:
    assert Row("one", figure, "ms", ratio, goal).met is met


@pytest.mark.parametrize("goal", ["4", "> 4", ">= four", ""])
def test_a_goal_that_is_none_is_refused(goal: str) -> None:
    with pytest.raises(ValueError, match="one: a goal is like"):
        Row("one", 1.0, "ms", 1.0, goal)


def test_a_ratio_that_got_worse_shows_in_either_direction_and_the_figure_alone_does_not() -> None:
    before = [Row("speed", 5, "ms", 6.0, ">= 4"), Row("growth", 5, "ms", 1.0, "<= 1.5"), Row("bare", 5, "ms")]
    slower = [
        Row("speed", 5, "ms", 4.5, ">= 4"),
        Row("growth", 5, "ms", 1.3, "<= 1.5"),
        Row("bare", 50, "ms"),
    ]
    busier = [Row("speed", 50, "ms", 6.1, ">= 4"), Row("growth", 50, "ms", 0.9, "<= 1.5")]
    lines = {line.split()[0]: line for line in table.shown(slower, before).splitlines()}
    assert lines["speed"].endswith("WORSE") and lines["growth"].endswith("WORSE")
    assert "WORSE" not in lines["bare"] and "WORSE" not in table.shown(busier, before)
    assert "6" in lines["speed"].split()


def test_results_are_kept_by_day_and_class_of_machine_and_read_back(tmp_path: Path) -> None:
    rows = [Row("a, with a comma", 1.25, "ms", 4.5, ">= 4"), Row("b", 2, "MB")]
    first = table.keep(rows, tmp_path, date(2026, 1, 2), "arm64-4-cores")
    last = table.keep(rows[:1], tmp_path, date(2026, 3, 4), "x86_64-2-cores")
    assert first.name == "2026-01-02-arm64-4-cores.csv" and table.read(first) == rows
    assert table.earlier(tmp_path, "arm64-4-cores") == first, "the same class of machine before a newer one"
    assert table.earlier(tmp_path, "riscv64-1-cores") == last
    assert table.earlier(tmp_path / "none", "x86_64-2-cores") is None


def test_what_is_kept_reads() -> None:
    for file in table.RESULTS.glob("*.csv"):
        assert table.read(file), file
