"""The traveller of a run, read from its PDF."""

from __future__ import annotations

import re
from dataclasses import replace

import pypdfium2

from tagger.code import number
from tagger.store import CrimpValue, Store
from tagger.trade import assess
from tagger.trade.fittings import CutOff
from tests.bench.served import Bench
from tests.store.samples import spec
from tests.store.test_fittings import ELBOW, ROW, SWIVEL

CARD = CrimpValue(
    "SAE 100R2", 12, "TW two-wire", 31.0, 0.2, 0.2, "an invented chart", hose_part="TW 2W 12", die="31 set"
)


def _pages(bench: Bench, run: int, **headers: str) -> list[str]:
    body = bench.get(f"/bench/run/{run}/traveller.pdf", headers=headers)
    assert body.status_code == 200 and body.headers["content-type"] == "application/pdf"
    document = pypdfium2.PdfDocument(body.content)
    return [re.sub(r"\s+", " ", page.get_textpage().get_text_range()) for page in document]


def test_twelve_identical_hoses_are_one_sheet_with_twelve_numbers(bench: Bench, store: Store) -> None:
    store.keep_fittings([ROW.model_copy(update={"insertion_depth_mm": 30.0}), ELBOW])
    store.keep_crimp(CARD)
    wanted = spec(
        hose={"standard": "SAE 100R2", "dash": 12, "part": "TW 2W 12", "lot": "H-1"},
        end_a={**SWIVEL, "fitting": "TW-1204"}, end_b={**SWIVEL, "fitting": "TW-1204"},
    )  # fmt: skip
    made = store.register(wanted, assess(wanted), count=12, cleanliness="18/16/13")
    [sheet] = _pages(bench, made[0].run)
    for item in made:
        assert number.format(item.number) in sheet
    for said in ("Quantity: 12", "TW 2W 12, H-1", "TW-1204", "1250 mm − 48.5 mm (A) − 48.5 mm (B) = 1153 mm",
                 "Insertion mark of end A: 30 mm", "crimp diameter 31 mm +0.2 −0.2 mm", "Die: 31 set", "hold at least 30 s",
                 "Cleanliness asked for (ISO 4406) 18/16/13"):  # fmt: skip
        assert said in sheet, said
    assert (
        sheet.count("Crimp card") == sheet.count("Insertion marks") == 1
        and sheet.count("crimp diameter") == 2
    )


def test_what_is_not_known_or_not_approved_stands_on_the_sheet(bench: Bench, store: Store) -> None:
    store.keep_fitting(ROW)
    wanted = spec(
        hose={"standard": "SAE 100R2", "dash": 12, "part": "TW 4W"}, end_a={**SWIVEL, "fitting": "TW-1204"}
    )
    [made] = store.register(wanted, assess(wanted))
    [sheet] = _pages(bench, made.run)
    assert "The cut-off of end B is not known" in sheet and "They are not approved together." in sheet
    assert "= 1" not in sheet


def test_an_order_gives_its_due_date_and_a_run_that_is_not_there_is_told(bench: Bench, store: Store) -> None:
    [old] = store.register(spec(), assess(spec()))
    order = store.request_order(number=old.number, contact={"phone": "1"}, needed_by=store.now().date())
    [made] = store.register(spec(), assess(spec()), order_reference=order.reference)
    [sheet] = _pages(bench, made.run)
    assert order.reference in sheet and store.now().date().isoformat() in sheet
    assert bench.get("/bench/run/999/traveller.pdf").status_code == 404


def test_the_crimp_card_gives_the_insertion_that_a_fitting_lacks_and_the_picture_shows_the_clocking(
    bench: Bench, store: Store
) -> None:
    """A cut-off to the shell's mouth has no cut length without it; the letters of the picture stand on the sheet."""
    kept = {"cut_off_mm": 85.0, "cut_off_kind": CutOff.SHELL_MOUTH, "source": "an invented chart"}
    store.keep_fitting(ELBOW.model_copy(update={**kept, "fitting_series": CARD.shell}))
    store.keep_crimp(replace(CARD, insertion_depth_mm=24.0))
    elbow = {**SWIVEL, "shape": "elbow_90", "drop_mm": 56, "fitting": ELBOW.stock_number}
    wanted = spec(
        hose={"standard": "SAE 100R2", "dash": 12, "part": "TW 2W 12"},
        end_a=elbow,
        end_b=elbow,
        clocking_deg=90,
    )
    [made] = store.register(wanted, assess(wanted))
    [sheet] = _pages(bench, made.run)
    adds = "(85 mm − 24 mm insertion)"
    assert f"1250 mm − {adds} (A) − {adds} (B) = 1128 mm" in sheet
    assert sheet.count("Insertion mark of end") == 2
    document = pypdfium2.PdfDocument(bench.get(f"/bench/run/{made.run}/traveller.pdf").content)
    words = re.findall(r"\b[AB]\b", document[0].get_textpage().get_text_range())
    assert (
        words.count("A") >= 3 and words.count("B") >= 3
    )  # beside the ends, in the view along the hose, in the rows
