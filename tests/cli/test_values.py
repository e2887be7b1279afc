"""A manufacturer's value is asked once: kept by one command, it rates every later spec of another."""

from __future__ import annotations

import json
from pathlib import Path
from typing import Any

import pytest

from tests.cli.test_cli import Shell
from tests.trade.specs import both, end

RATING = {"value_bar": 210, "source": "fitting catalogue, page 7"}


@pytest.fixture
def tagger(tmp_path: Path) -> Shell:
    return Shell(tmp_path)


def written(folder: Path, name: str, **more: Any) -> Path:
    """A spec whose ends no source rates."""
    path = folder / f"{name}.json"
    spec = both("EN 853 2SN", 8, end("jis_30", "M22x1.5", **more))
    path.write_text(json.dumps(spec.as_dict()), encoding="utf-8")
    return path


def test_a_value_is_asked_for_then_kept_then_held_for_every_later_spec(tagger: Shell, tmp_path: Path) -> None:
    bare, told = written(tmp_path, "bare"), written(tmp_path, "told", rating=RATING)
    asked = tagger.json("check", bare)
    assert asked["working_pressure"]["value_bar"] is None
    assert [ask["field"] for ask in asked["asks"]] == ["end_a.rating", "end_b.rating"]
    assert all(ask["id"] and ask["text"] for ask in asked["asks"])
    assert tagger.json("check", told)["working_pressure"]["value_bar"] == 210
    assert tagger.json("check", bare)["working_pressure"]["value_bar"] is None  # nothing was kept
    [kept] = tagger.json("check", told, "--keep")["kept"]
    later = tagger.json("check", bare)
    assert (later["working_pressure"]["value_bar"], later["asks"]) == (210, [])
    assert [p["confidence"] for p in later["working_pressure"]["parts"]] == ["published", "shop", "shop"]
    assert "your shop's value (source: fitting catalogue, page 7)" in tagger("check", bare).stdout
    [number] = tagger.json("register", bare)["numbers"]
    assert tagger.json("show", number)["working_pressure_bar"] == 210
    [listed] = tagger.json("values")["values"]
    assert (listed["id"], listed["cells"]["max_working_bar"]) == (kept, "210")
    assert tagger.json("overrated")["overrated"] == []
    tagger("values", "--withdraw", kept, code=1)
    tagger("values", "--withdraw", kept, "--reason", "read from the wrong column")
    assert tagger.json("check", bare)["working_pressure"]["value_bar"] is None
    assert [one["was_bar"] for one in tagger.json("overrated")["overrated"]] == [210]
    assert "read from the wrong column" in tagger("values", "--all").stdout


def test_registering_keeps_it_too_or_nothing_at_all(tagger: Shell, tmp_path: Path) -> None:
    slip = written(tmp_path, "slip", rating={**RATING, "value_bar": 900})  # psi, most likely
    refused = tagger("register", slip, "--keep", code=1)
    assert "end_a.rating.value_bar" in refused.stderr
    assert tagger.json("values")["values"] == []
    tagger("register", written(tmp_path, "told", rating=RATING), "--keep")
    assert tagger.json("check", written(tmp_path, "bare"))["working_pressure"]["value_bar"] == 210


def test_no_check_makes_a_database(tagger: Shell, tmp_path: Path) -> None:
    tagger("check", written(tmp_path, "bare"))
    assert not (tmp_path / "tags.sqlite3").exists()
