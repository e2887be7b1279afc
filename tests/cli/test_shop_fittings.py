"""The shop's fittings and the cut length on the command line."""

from __future__ import annotations

import json
from pathlib import Path
from typing import Any

import pytest

from tagger.store import CrimpValue, Store
from tests.cli.test_cli import Shell
from tests.test_spec import EXAMPLE

HEADING = "stock_number,fitting_series,end.connection,end.dash,end.form,end.shape,end.drop_mm,cut_off_mm,cut_off_kind,insertion_depth_mm,source"
ROWS = [
    "TW-1204,TW two-wire,sae_37_flare,-12,female_swivel,,,48.5,seat_to_hose_butt,30,an invented chart",
    "1290,TW two-wire,sae_37_flare,12,female_swivel,elbow_90,56,85,seat_to_shell_mouth,24,an invented chart",
]


@pytest.fixture
def tagger(tmp_path: Path) -> Shell:
    return Shell(tmp_path)


def _file(tagger: Shell, name: str, text: str) -> Path:
    path = tagger.folder / name
    path.write_text(text, encoding="utf-8")
    return path


def _spec(tagger: Shell, **changes: Any) -> Path:
    return _file(tagger, "spec.json", json.dumps({**EXAMPLE, **changes}))


def test_a_list_of_fittings_is_kept_found_and_taken_out(tagger: Shell) -> None:
    listed = _file(tagger, "fittings.csv", "\n".join([HEADING, *ROWS]))
    assert [one["stock_number"] for one in tagger.json("fittings", "--import", listed)["fittings"]] == [
        "TW-1204",
        "1290",
    ]
    assert "TW-1204: -12 37° flare (JIC)" in tagger("fittings", "1204").stdout
    assert tagger.json("fittings", "--drop", "tw-1204")["fittings"][0]["cut_off_mm"] == 48.5
    assert [one["stock_number"] for one in tagger.json("fittings")["fittings"]] == ["1290"]


def test_every_wrong_row_of_a_list_is_named_and_nothing_is_kept(tagger: Shell) -> None:
    wrong = ["TW-7,,sae_37_flare,7,female_swivel,,,,,,", "TW-8,,sae_37_flare,8,female_swivel,,,50,,,a chart"]
    listed = _file(tagger, "fittings.csv", "\n".join([HEADING, ROWS[0], *wrong]))
    told = tagger.json("fittings", "--import", listed, code=1)["refused"]
    assert [problem["field"] for problem in told] == ["row 3.end.dash", "row 4.cut_off_kind"]
    assert tagger.json("fittings")["fittings"] == []
    listed = _file(tagger, "other.csv", "stock_number,cut length\nTW-1,50\n")
    assert tagger.json("fittings", "--import", listed, code=1)["refused"][0]["value"] == "cut length"


def test_check_shows_the_cut_length_with_its_arithmetic(tagger: Shell) -> None:
    tagger("fittings", "--import", _file(tagger, "fittings.csv", "\n".join([HEADING, *ROWS])))
    spec = _spec(tagger, end_a={"fitting": "tw-1204"}, end_b={"fitting": "1290"}, length_mm=1250)
    found = tagger.json("check", spec)["cut_length"]
    assert found["length_mm"] == 1140.5 and found["unknown"] == []
    assert found["arithmetic"]["text"] == "1250 mm − 48.5 mm (A) − (85 mm − 24 mm insertion) (B) = 1140.5 mm"
    assert found["ends"]["b"] == {"fitting": "1290", "cut_off_mm": 85, "cut_off_kind": "seat_to_shell_mouth",
                                  "insertion_depth_mm": 24, "adds_mm": 61, "source": "an invented chart"}  # fmt: skip
    said = tagger("check", spec).stdout
    assert "Cut length: 1140.5 mm" in said
    assert "Insertion mark of end A: 30 mm" in said
    assert "= 1140,5 mm" in tagger("check", spec, "--lang", "de").stdout


def test_check_names_a_cut_off_that_is_not_known(tagger: Shell) -> None:
    tagger("fittings", "--import", _file(tagger, "fittings.csv", "\n".join([HEADING, *ROWS])))
    spec = _spec(tagger, end_a={"fitting": "TW-1204"})
    found = tagger.json("check", spec)["cut_length"]
    assert (found["length_mm"], found["arithmetic"]) == (None, None)
    assert "The cut-off of end B is not known" in found["unknown"][0]["text"]
    assert "Cut length: not known. The cut-off of end B" in tagger("check", spec).stdout


def test_a_stock_number_of_another_end_is_refused_at_check_and_at_register(tagger: Shell) -> None:
    tagger("fittings", "--import", _file(tagger, "fittings.csv", "\n".join([HEADING, *ROWS])))
    spec = _spec(tagger, end_a={**EXAMPLE["end_a"], "dash": 10, "fitting": "TW-1204"})
    for verb in ("check", "register"):
        [told] = tagger.json(verb, spec, code=1)["refused"]
        assert told["field"] == "end_a.fitting" and "is another fitting" in told["why"]


def test_what_is_exported_of_a_record_keeps_the_stock_numbers(tagger: Shell) -> None:
    tagger("fittings", "--import", _file(tagger, "fittings.csv", "\n".join([HEADING, *ROWS])))
    spec = _spec(
        tagger, end_a={"fitting": "TW-1204"}, hose={"standard": "SAE 100R2", "dash": 12, "part": "TW 2W"}
    )
    [number] = tagger.json("register", spec)["numbers"]
    kept = tagger.json("show", number)["spec"]
    assert (kept["hose"]["part"], kept["end_a"]["fitting"]) == ("TW 2W", "TW-1204")


def test_check_says_which_parts_are_not_approved_together(tagger: Shell) -> None:
    tagger("fittings", "--import", _file(tagger, "fittings.csv", "\n".join([HEADING, *ROWS])))
    hose = {"standard": "SAE 100R2", "dash": 12, "part": "TW 2W"}
    spec = _spec(tagger, hose=hose, end_a={"fitting": "TW-1204"})
    assert (
        "TW two-wire have no crimp card of their own. They are not approved together."
        in tagger("check", spec).stdout
    )
    assert tagger.json("check", spec)["crimp_cards"]["a"]["approved"] is False
    with Store.open(tagger.env["TAGGER_DATABASE_URL"]) as store:
        store.keep_crimp(
            CrimpValue("SAE 100R2", 12, "TW two-wire", 31, 0.2, 0.2, "an invented chart", hose_part="TW 2W")
        )
    said = tagger("check", spec).stdout
    assert "End A: crimp diameter 31 mm" in said and "not approved together" not in said
