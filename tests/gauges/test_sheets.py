"""The sheets as somebody gets them: whole in every language, nothing cut off, and a code that opens identify."""

from __future__ import annotations

import io

import numpy as np
import pypdfium2
import pytest

from tagger.errors import SpecError
from tagger.gauges import KINDS, PAPERS, sheets
from tagger.gauges.threads import families
from tagger.i18n import LANGUAGES, Translator
from tagger.messages import Message
from tagger.printing.readers import qr_readers
from tagger.settings import ShopSettings
from tagger.trade.identifying.marks import mark
from tagger.trade.tables import tables
from tests.gauges.vectors import Page, pages
from tests.volume import volume

SHOP = ShopSettings(base_url="https://tags.example.com", shop_name="Hose shop")
FAMILIES = [str(family) for family in families(tables())]
SOME = volume(["npt", "metric_60_cone"], FAMILIES)
NO_PRESSURE = {
    "en": "says nothing of pressure",
    "fr": "ne dit rien de la pression",
    "es": "no dice nada de la presión",
    "de": "sagt nichts über den Druck",
}


@pytest.mark.parametrize("paper", PAPERS)
@pytest.mark.parametrize("language", LANGUAGES)
def test_in_every_language_nothing_is_cut_off_and_the_cautions_stand_on_every_page(
    language: str, paper: str
) -> None:
    chosen = [(kind, "") for kind in KINDS if kind != "threads"] + [("threads", family) for family in SOME]
    t = Translator(language)
    for kind, family in chosen:
        pdf = sheets.to_pdf(kind, SHOP, tables(), paper=paper, family=family, language=language)
        for page in pages(pdf):
            said = "".join(page.text.split())
            assert "".join(t("gauges-check").split()) in said
            assert "".join(t("gauges-cautions").split()) in said
            assert "".join(NO_PRESSURE[language].split()) in said
            for left, top, right, bottom in page.letters():
                assert left > 5 and top > 5 and right < page.width - 5 and bottom < page.height - 5


def test_the_marks_beside_the_gauges_do_not_touch_one_another() -> None:
    """Of the families with the most sizes, and those whose sizes are nearest to one another."""
    for family in ("sae_37_flare", "metric_flat_stud", "metric_60_cone", "bspp"):
        for page in pages(sheets.to_pdf("threads", SHOP, tables(), family=family)):
            boxes = [box for letter in "DF" for box in marks_of(page, letter, family)]
            for place, one in enumerate(boxes):
                for other in boxes[place + 1 :]:
                    apart = (
                        one[2] <= other[0] or other[2] <= one[0] or one[3] <= other[1] or other[3] <= one[1]
                    )
                    assert apart, (family, one, other)


def marks_of(page: Page, letter: str, family: str) -> list[tuple[float, float, float, float]]:
    rows = [row for row in tables().threads.values() if str(row.family) == family]
    known = {mark(letter, row.thread_od_mm if letter == "D" else row.female_minor_mm) for row in rows}
    return [box for words in sorted(known) for box in page.places(words)]


@pytest.mark.parametrize("kind", KINDS)
def test_the_code_opens_identify_with_the_sheet_that_it_stands_on(kind: str) -> None:
    family = "orfs" if kind == "threads" else ""
    pdf = sheets.to_pdf(kind, SHOP, tables(), family=family)
    seen = pypdfium2.PdfDocument(io.BytesIO(pdf))[0].render(scale=200 / 72).to_pil().convert("L")
    image = np.asarray(seen)
    for read in qr_readers().values():
        [text] = read(image)
        assert text.startswith(f"https://tags.example.com/identify?sheet={kind}")
        if family:
            assert text.endswith("&family=orfs")


def test_the_sheet_of_hoses_says_that_it_only_excludes() -> None:
    for language in LANGUAGES:
        pdf = sheets.to_pdf("hoses", SHOP, tables(), language=language)
        said = "".join(pages(pdf)[0].text.split())
        assert "".join(Translator(language)("gauges-use-hoses").split()) in said
    assert "only excludes. It never gives a pressure." in Translator()("gauges-use-hoses")


def test_every_figure_is_told_with_its_source_and_an_unverified_one_as_such() -> None:
    [page, *_] = pages(sheets.to_pdf("threads", SHOP, tables(), family="sae_flareless"))
    assert "unverified: no published source at hand" in " ".join(page.text.split())
    [page, *_] = pages(sheets.to_pdf("flanges", SHOP, tables()))
    said = " ".join(page.text.split())
    assert "[1]" in said and "[2]" in said
    assert "SAE J518 / ISO 6162; unverified" in said


def test_a_viewer_that_heeds_it_prints_without_scaling() -> None:
    assert b"/PrintScaling /None" in sheets.to_pdf("seats", SHOP, tables())


@pytest.mark.parametrize(
    ("given", "field"),
    [
        ({"kind": "spanners"}, "sheet"),
        ({"kind": "seats", "paper": "a5"}, "paper"),
        ({"kind": "threads", "family": "banjo_metric"}, "family"),
        ({"kind": "threads", "family": "../etc"}, "family"),
    ],
)
def test_what_there_is_no_sheet_of_is_refused_by_its_field_with_what_there_is(
    given: dict[str, str], field: str
) -> None:
    with pytest.raises(SpecError) as refused:
        sheets.to_pdf(given.pop("kind"), SHOP, tables(), **given)  # type: ignore[arg-type]
    [problem] = refused.value.problems
    assert problem.field == field
    for language in LANGUAGES:
        assert Translator(language).mend(problem.message)


def test_a_shops_own_thread_is_on_its_sheet_and_said_to_be_the_shops(tmp_path: object) -> None:
    from dataclasses import replace

    raw = {name: tuple(rows) for name, rows in tables().raw.items()}
    row = next(r for r in raw["connections"] if str(r.family) == "orfs" and r.size == "4")
    own = replace(row, thread_od_mm=14.4, source="our drawing 7", confidence="shop")
    changed = tuple(own if r is row else r for r in raw["connections"])
    from tagger.trade.tables import Tables

    [page, *_] = pages(
        sheets.to_pdf("threads", SHOP, Tables.of({**raw, "connections": changed}), family="orfs")
    )
    assert page.places("D14.40")
    assert f"our drawing 7; {Translator()(Message('trade-grade-shop'))}" in " ".join(page.text.split())
