"""The shop's own hoses on the command line."""

from __future__ import annotations

import json
from pathlib import Path

import pytest

from tests.cli.test_cli import Shell
from tests.test_spec import EXAMPLE

HEADING = "part,standard,dash,max_working_bar,bend_radius_mm,fluids,max_temperature_c,source\n"
ROW = "TW 2W 12,SAE 100R2,-12,1500 psi,10 in,mineral_oil; water_glycol,100,data sheet 7\n"


@pytest.fixture
def tagger(tmp_path: Path) -> Shell:
    return Shell(tmp_path)


def _file(tagger: Shell, name: str, text: str) -> Path:
    path = tagger.folder / name
    path.write_text(text, encoding="utf-8")
    return path


def test_a_list_of_hoses_is_kept_rates_a_spec_and_is_withdrawn(tagger: Shell) -> None:
    [kept] = tagger.json("hoses", "--import", _file(tagger, "hoses.csv", HEADING + ROW))["hoses"]
    assert (kept["dash"], kept["bend_radius_mm"], kept["fluids"]) == (
        12,
        254,
        ["mineral_oil", "water_glycol"],
    )
    assert "TW 2W 12: SAE 100R2 -12, up to 103" in tagger("hoses").stdout
    spec = {**EXAMPLE, "hose": {"standard": "SAE 100R2", "dash": 12, "part": "tw-2w-12"}}
    checked = tagger.json("check", _file(tagger, "spec.json", json.dumps(spec)))
    assert round(checked["working_pressure"]["value_bar"]) == 103
    tagger("hoses", "--drop", "TW 2W 12", "--dash", "12", code=1)
    tagger("hoses", "--drop", "TW 2W 12", "--dash", "12", "--reason", "not stocked")
    assert tagger.json("hoses")["hoses"] == []


def test_every_wrong_row_is_named_and_nothing_is_kept(tagger: Shell) -> None:
    wrong = ROW.replace("data sheet 7", "") + ROW.replace("-12", "70")
    told = tagger.json("hoses", "--import", _file(tagger, "hoses.csv", HEADING + ROW + wrong), code=1)[
        "refused"
    ]
    assert [problem["field"] for problem in told] == ["row 3.source", "row 4.dash"]
    twice = _file(tagger, "twice.csv", HEADING + ROW + "\n,,,\n" + ROW)
    told = tagger.json("hoses", "--import", twice, code=1)["refused"]
    assert [problem["field"] for problem in told] == ["row 5.part"], "blank rows count as in the spreadsheet"
    assert tagger.json("hoses")["hoses"] == []
