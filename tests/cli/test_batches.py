"""A run on the command line: crimps, flushing, proof test and certificates in one act each; customers."""

from __future__ import annotations

import json
from datetime import date
from pathlib import Path

import pypdfium2
import pytest

from tagger.store import Store
from tests.cli.test_cli import Shell
from tests.test_spec import EXAMPLE

CARDS = (
    "hose_standard,hose_dash,shell,diameter_mm,minus_mm,plus_mm,source\n"
    "EN 853 2SN,12,TW two-wire,31,0.2,0.2,an invented chart\n"
)
TEST = ("--result", "passed", "--hold", "60", "--medium", "water", "--tester", "Bela")
GAUGE = ("--gauge", "G-7", "--gauge-until", "2099-06-30", "--method", "work sheet 3")


@pytest.fixture
def tagger(tmp_path: Path) -> Shell:
    spec = {**EXAMPLE, "hose": {"standard": "EN 853 2SN", "dash": 12}}
    (tmp_path / "spec.json").write_text(json.dumps(spec), encoding="utf-8")
    return Shell(tmp_path)


def _text(file: Path) -> str:
    return " ".join(
        word for page in pypdfium2.PdfDocument(file) for word in page.get_textpage().get_text_range().split()
    )


def test_a_run_is_crimped_flushed_tested_and_certified_in_one_act_each(tagger: Shell) -> None:
    folder = tagger.folder
    made = ("register", "spec.json", "--count", 2, "--customer", "Quarry North", "--cleanliness", "18/16/13")
    one, two = tagger.json(*made)["numbers"]
    (folder / "cards.csv").write_text(CARDS, encoding="utf-8")
    [card] = tagger.json("crimp-cards", "--import", "cards.csv")["crimp_cards"]
    measured = f"number,end,measured_mm,shell\n{one},a,31.1,TW two-wire\n{two},B,31.3,TW two-wire\n"
    (folder / "wrong.csv").write_text(measured + ",,,\n\n7K3MQ-9XW2R1,a,31,TW two-wire\n", encoding="utf-8")
    told = tagger.json("crimp", "--import", "wrong.csv", code=1)["refused"]
    assert [problem["field"] for problem in told] == ["row 6.number"], "as the spreadsheet counts"
    (folder / "crimps.csv").write_text(measured, encoding="utf-8")
    crimps = tagger.json("crimp", "--import", "crimps.csv")["crimps"]
    assert [(c["number"], c["end"], c["holds"]) for c in crimps] == [(one, "a", True), (two, "b", False)]
    again = tagger("crimp", two, "--b", "31.1", "--shell-b", "TW two-wire").stdout
    assert f"{two}: end B, 31.1 mm, required 30.8 to 31.2 mm" in again
    assert tagger.json("crimp-cards", "--drop", card["id"])["crimp_cards"][0]["shell"] == "TW two-wire"

    assert tagger.json("flush", one, "--run", "--method", "filtered oil", "--by", "Ines")["numbers"] == [
        one,
        two,
    ]
    over = tagger("proof", one, "--run", *TEST, "--pressure", "500", code=1).stderr
    assert "nothing of the batch is recorded" in over
    batch = tagger.json("proof", one, "--run", *TEST, *GAUGE, "--pressure", "6000 psi")
    assert [(m["number"], m["result"]) for m in batch["members"]] == [(one, "passed"), (two, "passed")]
    tagger("certificate", two, "--batch", "--out", "batch.pdf", TAGGER_SHOP_ADDRESS="1 Quay Road")
    said = _text(folder / "batch.pdf")
    for told in (
        batch["batch"],
        one,
        two,
        "1 Quay Road",
        "18/16/13",
        "filtered oil",
        "Ines",
        "G-7",
        "work sheet 3",
    ):
        assert told in said, told
    tagger("certificate", one, "--run", "--out", "each.pdf", "--lang", "de")
    assert len(pypdfium2.PdfDocument(folder / "each.pdf")) == 2 and "Prüfzeugnis" in _text(
        folder / "each.pdf"
    )
    assert "not a .pdf" in tagger("certificate", one, "--out", "one.png", code=1).stderr


def test_a_customers_data_is_exported_and_a_contact_erased_and_every_tag_stays(tagger: Shell) -> None:
    [number] = tagger.json("register", "spec.json", "--customer", "Quarry North")["numbers"]
    with Store.open(tagger.env["TAGGER_DATABASE_URL"]) as store:
        contact = {"name": "Ines", "phone": "555 0100"}
        order = store.request_order(number=number, contact=contact)
    assert "Ines, 555 0100" in tagger("customer", "quarry north", "--out", "kept.json").stdout
    kept = json.loads((tagger.folder / "kept.json").read_text(encoding="utf-8"))
    assert kept["positions"] == {}
    assert (kept["assemblies"][0]["number"], kept["orders"][0]["reference"]) == (number, order.reference)
    assert tagger.json("erase-contact", order.reference)["orders"] == [order.reference]
    assert "555 0100" not in tagger("customer", "Quarry North").stdout
    assert number in tagger("show", number).stdout
    assert "Nothing is kept" in tagger("customer", "Quarry", code=1).stderr


def test_reports_of_fitting_are_listed_confirmed_rejected_and_erased(tagger: Shell) -> None:
    number = tagger.json("register", "spec.json", "--machine", "Loader 4")["numbers"][0]
    with Store.open(tagger.env["TAGGER_DATABASE_URL"]) as store:
        for machine in ("Loader 4", "Crusher"):
            store.report_fitted(number, fitted_on=date(2026, 3, 4), machine=machine, fitted_by="Bela")
    said = tagger("fitted").stdout
    assert f"2: tag {number}, installed on 2026-03-04, machine Crusher, to confirm" in said
    assert "also said to be on another machine: Loader 4" in said
    assert "needs a reason" in tagger("fitted", "--refuse", "2", code=1).stderr
    [refused] = tagger.json("fitted", "--refuse", "2", "--reason", "a copied tag")["reports"]
    assert (refused["state"], refused["why"]) == ("refused", "a copied tag")
    tagger("fitted", "--agree", "1")
    [agreed] = tagger.json("fitted", "--state", "agreed", "--number", number)["reports"]
    assert (agreed["fitted_on"], agreed["elsewhere"], agreed["fitted_by"]) == ("2026-03-04", [], "Bela")
    assert tagger.json("fitted", "--erase", "1")["erased"] is True
    assert "Bela" not in tagger("fitted", "--number", number).stdout
    assert "TAGGER_KEEP_CONTACTS_DAYS" in tagger("erase-old", code=1).stderr
    assert "at least" not in tagger("erase-old", "--dry-run", TAGGER_KEEP_REPORTS_DAYS="30").stdout
    refused_days = tagger("erase-old", code=1, TAGGER_KEEP_REPORTS_DAYS="3").stderr
    assert "Fewer than 30 days" in refused_days
    old = json.loads(tagger("erase-old", "--json", TAGGER_KEEP_CONTACTS_DAYS="90").stdout)
    assert old == {"contacts": 0, "photos": 0, "reports": 0, "erased": True}


def test_a_plate_is_written_for_one_tag_and_from_a_plates_template_alone(tagger: Shell) -> None:
    [one] = tagger.json("register", "spec.json")["numbers"]
    plate = ("--template", "metal_plate", "--out")
    assert tagger.json("print", one, *plate, "plate.dxf")["files"] == ["plate.dxf"]
    assert (tagger.folder / "plate.dxf").read_text(encoding="utf-8").rstrip().endswith("EOF")
    assert "plates" in tagger("print", one, "--template", "hang_tag", "--out", "tag.svg", code=1).stderr
    assert "one plate" in tagger("print", one, one, *plate, "two.svg", code=1).stderr
    assert not [file.name for file in tagger.folder.iterdir() if file.suffix == ".svg"]
    tagger("card", one, "--out", "card.pdf")
    assert "Tighten" in _text(tagger.folder / "card.pdf")
    tagger("print", one, "--template", "do_not_use", "--out", "stop.pdf", code=1)
