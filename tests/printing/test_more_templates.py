"""The labels beside the tag: "do not use", and the job card with a stub."""

from __future__ import annotations

from dataclasses import replace
from datetime import date
from pathlib import Path

import pytest

from tagger.code import link
from tagger.drawing import Text
from tagger.errors import TemplateError
from tagger.i18n import LANGUAGES, Translator
from tagger.messages import Message
from tagger.printing import proof, raster, template
from tagger.printing.content import Tag
from tagger.printing.layout import lay_out
from tagger.printing.readers import grey, qr_readers
from tagger.record import Stop
from tests.printing.conftest import a_tag

READERS = qr_readers(frames=1)
BRIEF = Message("store-stop-withdrawn-short")
WITHDRAWN = Stop(
    (Message("store-stop-withdrawn", reason="tube swells"),), BRIEF, date(2026, 11, 26), "Ada Fitter"
)


def said(tag: Tag, name: str, language: str = "en") -> str:
    items = lay_out(tag, template.load(name).in_languages([language])).drawing.items
    return " ".join(item.text for item in items if isinstance(item, Text))


@pytest.mark.parametrize("language", LANGUAGES)
def test_the_do_not_use_tag_says_it_large_with_number_reason_day_and_person(language: str) -> None:
    tag, label = a_tag(stop=WITHDRAWN), template.load("do_not_use").in_languages([language])
    items = [i for i in lay_out(tag, label).drawing.items if isinstance(i, Text)]
    words = Translator(language)("printing-stop-words")
    large = [item for item in items if item.ink == "white"]
    assert " ".join(item.text for item in large) == words
    assert min(item.size for item in large) > 2 * max(i.size for i in items if i not in large)
    text = " ".join(item.text for item in items)
    for part in (tag.shown_number, "tube swells", "2026-11-26", "Ada Fitter", "SAE 100R2 -12"):
        assert part in text, part
    assert " bar" not in text and "N·m" not in text, "nothing by which it could be installed"


@pytest.mark.parametrize("language", LANGUAGES)
@pytest.mark.parametrize("why", [WITHDRAWN.why, (BRIEF,)], ids=["in full", "briefly"])
def test_letters_that_hang_below_the_reason_are_clear_of_the_day(
    language: str, why: tuple[Message, ...]
) -> None:
    """They were a tenth of a millimetre above its capitals; a letter hangs 0.236 of an em, by the font."""
    tag, label = a_tag(stop=replace(WITHDRAWN, why=why)), template.load("do_not_use").in_languages([language])
    items = [i for i in lay_out(tag, label).drawing.items if isinstance(i, Text)]
    [day] = [item for item in items if "2026-11-26" in item.text]
    above = max((item for item in items if item.y < day.y and item.x == day.x), key=lambda item: item.y)
    assert above.bold and day.y - 0.729 * day.size - (above.y + 0.236 * above.size) >= 0.3


@pytest.mark.parametrize("dpi", [203, 300, 600])
def test_the_code_of_the_do_not_use_tag_leads_to_the_record_and_carries_no_spec(dpi: int) -> None:
    tag = a_tag(stop=WITHDRAWN)
    page = lay_out(tag, template.load("do_not_use"), dpi)
    proof.prove(tag, page)
    dots = grey(raster.draw(page.drawing, dpi))
    for name, read in READERS.items():
        assert read(dots) == {link.number_only(tag.link)}, name


@pytest.mark.parametrize("language", LANGUAGES)
@pytest.mark.parametrize(
    "reason", ["r" * 60 + " " + "why " * 100, "漢字の理由"], ids=["too long", "other letters"]
)
def test_no_reason_however_typed_keeps_the_do_not_use_tag_from_being_printed(
    reason: str, language: str
) -> None:
    stop = replace(WITHDRAWN, why=(Message("store-stop-withdrawn", reason=reason),), by="B" * 80)
    text = said(a_tag(stop=stop), "do_not_use", language)
    assert " ".join(Translator(language)(BRIEF).split()) in " ".join(text.split()) and reason[:8] not in text
    assert "2026-11-26" in text


PAPER = {"customer": "Northfield Quarry", "machine": "Loader 7", "position": "boom", "order": "PO 4711-2"}


@pytest.mark.parametrize("language", LANGUAGES)
def test_the_stub_of_the_job_card_tells_the_job_and_nothing_to_build_by(language: str) -> None:
    tag, label = a_tag(extra=PAPER), template.load("traveller_stub").in_languages([language])
    [line] = [box.at[1] for box in label.box if box.kind == "cut"]
    items = [item for item in lay_out(tag, label).drawing.items if isinstance(item, Text)]
    card, stub = (
        " ".join(item.text for item in items if (item.y > line) is below) for below in (False, True)
    )
    for part in (tag.shown_number, *PAPER.values(), "SAE 100R2 -12", "1250 mm"):
        assert part in stub and part in card, part
    assert "207 bar" in card and "207 bar" not in stub and "N·m" not in stub
    whole = {box.model_dump_json() for box in template.load("traveller_a5").box}
    assert whole < {box.model_dump_json() for box in template.load("traveller_stub").box}, "the card itself"


@pytest.mark.parametrize("more", ['more = "words"', "[more]\nkind = 'hole'", "[[more]]\nkind = 'oval'"])
def test_added_boxes_that_are_wrong_are_named_by_their_file(more: str, tmp_path: Path) -> None:
    (tmp_path / "own.toml").write_text(f'base = "hang_tag"\n{more}\n')
    with pytest.raises(TemplateError, match=r"own\.toml"):
        template.load("own", [tmp_path])
