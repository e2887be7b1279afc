"""A hose by its layers, and an end by looking, on the command line."""

from __future__ import annotations

import json

import pytest

from tagger.cli import main


def test_a_hose_is_told_what_it_cannot_be_and_first_that_nothing_of_it_is_a_rating(
    capsys: pytest.CaptureFixture[str],
) -> None:
    asked = [
        "hose-by-layers",
        "--od",
        "22 mm",
        "--kind",
        "wire_braid",
        "--layers",
        "2",
        "--lay-line",
        "4SP -12",
    ]
    assert main(asked) == 0
    lines = capsys.readouterr().out.splitlines()
    assert lines[0].startswith("This only excludes standards. It never rates a hose")
    assert any(line.startswith("EN 853 2SN: Sizes: -8 (outside diameter") for line in lines)
    assert any("Do not use the hose until this is explained" in line for line in lines)
    assert main([*asked, "--json"]) == 0
    answer = json.loads(capsys.readouterr().out)
    assert "EN 853 1SN" in {one["standard"] for one in answer["excluded"]}
    assert main(["hose-by-layers"]) != 0
    assert "At least one value is required." in capsys.readouterr().err


def test_what_the_eye_sees_narrows_identify(capsys: pytest.CaptureFixture[str]) -> None:
    asked = ["identify", "--side", "male", "--shape", "taper", "--thread-od", "21", "--tpi", "14", "--json"]
    assert main(asked) == 0
    found = [c for c in json.loads(capsys.readouterr().out)["candidates"] if not c["contradicts"]]
    assert {c["connection"] for c in found} == {"npt", "nptf", "bspt"}
