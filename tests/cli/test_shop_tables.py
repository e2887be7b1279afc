"""A shop's own tables change what is advised, never what a tag's digits mean."""

from __future__ import annotations

import json
from pathlib import Path

import pytest

from tagger.cli import main
from tagger.code import number, payload
from tagger.spec import Connection, Sizing

GOLDEN = json.loads((Path(__file__).parents[1] / "golden/payload_v1.json").read_text(encoding="utf-8"))
EXAMPLE = Path(__file__).parents[2] / "examples/week/boom_rod_side.json"
COLUMNS = "family,forms,tighten_by,tube_od,swivel_family,source,confidence"


@pytest.fixture
def turned_about(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    """A shop that takes every family for a flange with screws whose sizes are tube diameters in mm."""
    rows = [f"{family},flange_head,screws,mm,,our own,shop" for family in Connection]
    (tmp_path / "families.csv").write_text("\n".join([COLUMNS, *rows]) + "\n", encoding="utf-8")
    monkeypatch.setenv("TAGGER_TABLES_DIR", str(tmp_path))
    return tmp_path


def test_golden_tags_read_the_same_whatever_a_shops_tables_claim(
    turned_about: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    for vector in GOLDEN:
        link = f"https://tags.example.com/T/{number.make()}/{vector['digits']}"
        assert main(["read", link, "--json"]) == 0, vector["name"]
        assert json.loads(capsys.readouterr().out)["spec"] == vector["spec"], vector["name"]


def test_a_shops_table_cannot_name_how_a_family_is_sized_or_joined(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    text = f"{COLUMNS},sized_by,joint\nnpt,male,nut,,,our own,shop,tube,parallel\n"
    (tmp_path / "families.csv").write_text(text, encoding="utf-8")
    monkeypatch.setenv("TAGGER_TABLES_DIR", str(tmp_path))
    assert main(["tables", "check"]) == 1
    assert "joint, sized_by" in "".join(capsys.readouterr())


def test_sizes_and_joints_stand_beside_the_code_points() -> None:
    assert {c.value for c in Connection} == set(payload.points("connection"))
    assert {c for c in Connection if c.is_taper} == {"npt", "nptf", "bspt"}
    assert {c for c in Connection if c.is_flange} == {"flange_code61", "flange_code62"}
    assert {c for c in Connection if c.is_latched} == {
        "qd_iso7241_a",
        "qd_iso7241_b",
        "qd_iso16028",
        "staple",
    }
    tubes = {"din24_very_light", "din24_light", "din24_heavy", "din_standpipe"}
    assert {c for c in Connection if c.sized_by is Sizing.TUBE} == tubes


def test_a_row_that_contradicts_itself_stops_every_command_that_rates(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    (tmp_path / "hose_pressure.csv").write_text(
        "standard,edition,dash,max_working_bar,printed,in_standard,source,confidence,note\n"
        "SAE 100R2,S,12,3000,3000 psi,yes,data sheet 7,shop,\n",
        encoding="utf-8",
    )
    monkeypatch.setenv("TAGGER_TABLES_DIR", str(tmp_path))
    assert main(["check", str(EXAMPLE)]) == 1
    said = "".join(capsys.readouterr())
    assert "hose_pressure.csv, line 2, max_working_bar" in said and "3000 psi is 206.8" in said
