"""The fitter's card says what the phone's guide says, each value with its source, and leads to the record."""

from __future__ import annotations

import io
import re
from dataclasses import replace
from datetime import date
from itertools import pairwise
from typing import Any

import numpy as np
import pypdfium2
import pytest

from tagger import phrases, rated
from tagger.i18n import LANGUAGES, Translator
from tagger.messages import Message, angle
from tagger.papers import fitters_card
from tagger.printing.content import Tag
from tagger.printing.readers import qr_readers
from tagger.settings import ClockingSense, ShopSettings
from tagger.spec import AssemblySpec
from tagger.trade import assess, guide
from tagger.trade.tables import tables
from tests.printing.conftest import LONGEST, RATED, STRAIGHT, TWO_ELBOWS, a_tag
from tests.trade.specs import end

COUNTED = re.compile("flat|turn|pan|tour|cara|vuelta|Umdrehung|Fläche|Schlüsselfläche")
SPECS: dict[str, Any] = {
    "two elbows, as the record has it": TWO_ELBOWS,
    "an unknown end": (STRAIGHT, RATED["an end not known"]),
    "a danger": (LONGEST["two flanges"], RATED["a fluid and a heat beyond the limits"]),
    "taper and boss": LONGEST["boss and 24 degree cone"],
}


def a_card(name: str) -> Tag:
    chosen = SPECS[name]
    if isinstance(chosen, tuple):
        return a_tag(chosen[0], **chosen[1])
    data = {**chosen, "hose": {key: value for key, value in chosen["hose"].items() if key != "edition"}}
    if "din24" in data["end_b"]["connection"]:
        data["end_b"] = {**data["end_b"], "hose_dash": 16}
    spec = AssemblySpec.read(data)
    found = assess(spec)
    return replace(a_tag(data, assessment=found), content=found.content_of(spec, date(2026, 11, 25)))


def words(body: bytes) -> list[str]:
    """The words of each page, without the places where lines and syllables end."""
    pages = pypdfium2.PdfDocument(body)
    return ["".join(page.get_textpage().get_text_range().split()) for page in pages]


def packed(text: str) -> str:
    return "".join(text.split())


@pytest.mark.parametrize("name", SPECS)
def test_every_step_of_the_guide_stands_on_the_card_with_its_source_in_every_language(name: str) -> None:
    tag = a_card(name)
    advice = (tag.assessment.end_a, tag.assessment.end_b) if tag.assessment else None
    radius = tag.assessment.bend_radius_mm if tag.assessment else None
    lines = [line for screen in guide.screens(tag.content, radius, advice, tables()) for line in screen.lines]
    assert len(lines) > 25
    for language in LANGUAGES:
        t = Translator(language)
        pages = words(fitters_card.of_tag(tag, ShopSettings(), tables(), language))
        assert all(page.count(tag.shown_number) for page in pages), "no page without its hose"
        said = " ".join(pages)  # no step goes over the end of a page
        for line in lines:
            assert packed(t(line.step.message)) in said, (language, t(line.step.message))
            assert packed(t(line.source)) in said, (language, t(line.source))
            if line.step.caution:
                assert "\u26a0" + packed(t(line.step.message)) in said.replace("A:", "").replace("B:", "")
        told = [*rated.lines(tag.content), *rated.dangers(tag.content), phrases.fluid_of(tag.spec)]
        for message in told:
            assert packed(t(message)) in said, (language, t(message))


@pytest.mark.parametrize("dpi", [203, 300, 600])
def test_three_readers_read_the_tags_own_link_from_the_printed_card(dpi: int) -> None:
    tag = a_card("two elbows, as the record has it")
    body = fitters_card.of_tag(tag, ShopSettings(), tables(), "en")
    page = pypdfium2.PdfDocument(io.BytesIO(body))[0].render(scale=dpi / 72, grayscale=True)
    dots = np.where(np.asarray(page.to_pil()) < 128, 0, 255).astype(np.uint8)
    for name, read in qr_readers(frames=1).items():
        assert read(dots) == {tag.link}, name


def test_a_card_of_a_hose_that_is_not_registered_says_specimen() -> None:
    tag = replace(a_card("an unknown end"), specimen=True)
    assert "SPECIMEN" in words(fitters_card.of_tag(tag, ShopSettings(), tables(), "en"))[0]


def test_the_card_counts_the_clocking_angle_as_the_shop_does() -> None:
    """The same way round, and held the same way, as the page and the phone."""
    tag = a_card("two elbows, as the record has it")
    degrees = tag.spec.clocking_deg
    assert degrees not in (None, 0, 180)
    clockwise = ShopSettings(clocking_sense=ClockingSense.CLOCKWISE)
    for language in LANGUAGES:
        t = Translator(language)
        ours, other = (
            packed(t(Message(id, clocking=angle(shown))))
            for id, shown in (
                ("fit-clocking_clockwise", 360 - (degrees or 0)),
                ("fit-clocking", degrees or 0),
            )
        )
        for settings, said, left in ((clockwise, ours, other), (ShopSettings(), other, ours)):
            pages = "".join(words(fitters_card.of_tag(tag, settings, tables(), language)))
            assert said in pages and left not in pages, (language, settings.clocking_sense)
            if settings is clockwise:
                assert f"{degrees}°" not in pages, "one way of counting, in the picture too"


def test_no_figure_of_a_card_is_parted_from_its_unit_and_pressure_and_length_say_what_they_are() -> None:
    """ "56,5" ended a line and "mm (2,22 in)" began the next; a value stood there without "working pressure" before it."""
    for name in SPECS:
        tag = a_card(name)
        for language in LANGUAGES:
            t = Translator(language)
            body = fitters_card.of_tag(tag, ShopSettings(), tables(), language)
            for page in pypdfium2.PdfDocument(body):
                lines = page.get_textpage().get_text_range().splitlines()
                for above, line in pairwise(lines):
                    assert not re.match(r"(mm|in|bar|psi|N·m|lbf·ft|°C|°F)\b", line), (language, line)
                    assert not (COUNTED.match(line) and above[-1:].isdigit()), (language, above, line)
            front = words(body)[0]
            caption = packed(t("printing-field-working_pressure"))
            assert front.index(caption) < front.index(packed(t(rated.lines(tag.content)[0])))
            assert packed(t(phrases.overall_length(tag.spec))) in front


def test_two_pictures_beside_one_step_say_which_end_each_is_of() -> None:
    """Two ends that are alike share their steps; one is straight and one bent."""
    tag = a_card("two elbows, as the record has it")
    alike = {**tag.spec.end_a.model_dump(exclude_none=True), "shape": "straight", "drop_mm": None}
    bent = {**alike, "shape": "elbow_90", "drop_mm": 56}
    for b, wanted in ((bent, ["A", "B"]), (end("npt", "3/4", "male"), [])):
        spec = AssemblySpec.read(tag.spec.as_dict() | {"clocking_deg": None, "end_a": alike, "end_b": b})
        one = replace(tag, content=assess(spec).content_of(spec), assessment=assess(spec))
        pages = pypdfium2.PdfDocument(fitters_card.of_tag(one, ShopSettings(), tables(), "en"))
        title = Translator("en")("fit-screen-match")
        [page] = [p for p in pages if title in p.get_textpage().get_text_range()][:1]
        lines = [line.strip() for line in page.get_textpage().get_text_range().splitlines()]
        assert [line for line in lines if line in ("A", "B")] == wanted
