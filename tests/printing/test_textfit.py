"""Texts in a box are as large as they can be, and broken only where no part loses its sense."""

from __future__ import annotations

import random
import re

import numpy as np
import pytest

from tagger.i18n import LANGUAGES, Translator
from tagger.messages import Message
from tagger.printing.fonts import widths
from tagger.printing.textfit import (
    _CLOSE,
    _USUAL,
    Fitted,
    Paragraph,
    _paragraph,
    fit,
    look,
    read_back,
    stack,
    stack_height,
)

TEXT = "1250 mm (49 1/4 in), SAE 100R2AT-12 hose finger-tight swivel 1 1/16-12 UNF 103–115 N·m elbow 90°"


def one_by_one(
    paragraphs: tuple[Paragraph, ...], width: float, height: float
) -> tuple[Fitted | None, ...] | None:
    """Every size from the largest down until one fits."""
    for shares in _CLOSE if paragraphs[0].close else _USUAL:
        sizes = [p.smallest + (p.largest - p.smallest) * shares[0 if p.main else 1] for p in paragraphs]
        found = [_paragraph(p, width, round(size, 3)) for p, size in zip(paragraphs, sizes, strict=True)]
        whole = [one for one in found if one is not None]
        if len(whole) == len(found) and stack_height(whole) <= height + 1e-6:
            return tuple(found)
    return None


@pytest.mark.parametrize("close", [False, True])
def test_no_larger_size_of_a_stack_fits_than_the_one_that_is_found(close: bool) -> None:
    chance = random.Random(7)
    outcomes = set()
    for _ in range(400):
        paragraphs = tuple(
            Paragraph(
                " ".join(chance.choices(TEXT.split(), k=chance.randint(1, 9))),
                chance.choice((2.3, 3.1, 4.5, 7.0)),
                chance.choice((1.6, 1.9, 2.2)),
                chance.random() < 0.4,
                chance.random() < 0.4,
                close=close,
            )
            for _ in range(chance.randint(1, 6))
        )
        width, height = round(chance.uniform(14, 60), 3), round(chance.uniform(3, 45), 3)
        found = stack(paragraphs, width, height)
        assert found == one_by_one(paragraphs, width, height)
        full = found is not None and all(
            one.size == p.largest for one, p in zip(found, paragraphs, strict=True)
        )
        outcomes.add("none" if found is None else "full" if full else "smaller")
    assert outcomes == {"none", "full", "smaller"}


def test_digits_are_as_wide_as_one_another() -> None:
    """So texts that differ in digits alone are broken and sized alike (``look``)."""
    for bold in (False, True):
        assert len({widths(bold)[ord(digit)] for digit in "0123456789"}) == 1


def test_lines_get_the_digits_of_their_text_back_or_are_refused() -> None:
    for text, width in (("-12 37° flare", 10.0), ("103–115 N·m (76–85 lbf·ft)", 15.0), ("1 to 1 1/4", 4.5)):
        found = fit((text,), width, 20.0, 3.0, 1.9, False)
        alike = fit((look(text),), width, 20.0, 3.0, 1.9, False)
        assert found is not None and alike is not None and len(found.lines) > 1
        assert tuple(read_back(alike.lines, [text])) == found.lines
    assert read_back(["000 0", "0 N·m"], ["125 7", "9 N·m"]) == ["125 7", "9 N·m"]
    for wrong in (["000 00"], ["000 0", "0 N·m", "0"], ["000", "0 N·m"], ["000 0", "0 bar"]):
        with pytest.raises(ValueError, match="set as"):
            read_back(wrong, ["125 7", "9 N·m"])


def test_a_word_with_a_hyphen_is_broken_after_it_where_it_finds_no_room() -> None:
    found = fit(("Wasserfest-Armaturen Käßler",), 24.0, 60.0, 3.9, 3.9, False)
    assert found is not None and found.lines == ("Wasserfest-", "Armaturen", "Käßler")


def test_a_figure_is_never_parted_from_its_fraction_or_unit() -> None:
    line = "Tighten A: 103–115 N·m (76–85 lbf·ft); 1 to 1 1/4 flats, drop 56 mm, up to 3000 psi"
    for width in np.arange(20, 90, 0.5):
        found = fit((line,), float(width), 60.0, 3.0, 1.7, False)
        for part in ("115 N·m", "85 lbf·ft", "1 1/4", "56 mm", "3000 psi"):
            assert any(part in piece for piece in found.lines), (width, part, found.lines)


@pytest.mark.parametrize(
    "text",
    [
        "Hose, B: ≤ 130 bar (1885 psi)",
        "Pression de service max. : ≤ 130 bar",
        "hembra con tuerca loca, codo 90°",
        "female swivel, 45° elbow, drop 30 mm",
        "visto desde el extremo A, codo A",
        "lettre « A »",
        "-16 Flansch Code 62",
        "-16 brida código 61",
        "Flexibles du Quai, tél. 01 55 50 10 00, 2026-11-25",
        "emulsión de agua y aceite (HFA, HFB), máx. 100 °C (212 °F)",
        "EN 857 2SC -16 (1 in)",
        "SAE 100R13 -16 (1 in)",
        "Hose, A, B: __________ bar (hose manufacturer)",
        "Überwurfmutter, 90°-Bogen",
    ],
)
def test_a_sign_an_angle_and_an_ends_letter_stay_with_what_they_belong_to(text: str) -> None:
    """Broken after "≤" a limit reads as the value; a line that begins with a colon, an angle or A says nothing."""
    together = re.findall(
        r"≤ \d+ bar|max\. :|codo 90°|45° elbow|extremo A|codo A|« A »|(?:Code|código) 6.|01 55 50 10 00"
        r"|máx\. 100 °C|EN 857 2SC|SAE 100R13|_ bar|90°-Bogen",
        text,
    )
    assert together
    for width in np.arange(16, 60, 0.5):
        one = fit((text,), float(width), 60.0, 3.0, 2.2, False)
        other = stack((Paragraph(text, 3.0, 2.2),), float(width), 60.0)
        alike = stack((Paragraph(look(text), 3.0, 2.2),), float(width), 60.0)
        for lines in (
            one and one.lines,
            other and other[0].lines,
            alike and read_back(alike[0].lines, [text]),
        ):
            assert not lines or all(any(part in line for line in lines) for part in together), (width, lines)


@pytest.mark.parametrize("language", LANGUAGES)
def test_a_count_of_flats_or_turns_is_never_parted_from_its_word(language: str) -> None:
    """As it is set on a tag: "1 1/4 to 1 1/2" with "flats" on a line of its own.

    "Umdrehungen" may stand below its count: beside it both would be too small to read at arm's length.
    """
    for name in ("printing-flats", "printing-turns")[: 1 if language == "de" else 2]:
        for count in ("1 1/2", "1 1/4 to 1 1/2", "2"):
            text = Translator(language)(Message(name, count=count, many=2.0))
            figure, word = re.split(r"\s+(?=\D+$)", text)
            for width in np.arange(16, 60, 0.5):
                found = stack((Paragraph(text, 4.4, 2.2, True, True),), float(width), 60.0)
                last = figure.split(" to ")[-1]
                assert not found or any(f"{last} {word}" in line for line in found[0].lines), found


@pytest.mark.parametrize("whole", ["HFD-R),", "O-ring"])
def test_a_single_letter_is_never_parted_at_its_hyphen(whole: str) -> None:
    for width in np.arange(12, 40, 0.5):
        found = stack((Paragraph(f"phosphate ester ({whole} metric", 2.6, 2.2),), float(width), 60.0)
        assert found is None or any(whole in line for line in found[0].lines), (width, found)


def test_no_word_is_lost_when_text_wraps() -> None:
    line = "one two three four five six seven eight nine ten"
    assert " ".join(fit((line,), 22.0, 30.0, 3.0, 1.7, False).lines) == line


def test_text_shrinks_before_it_wraps_but_not_for_a_crumb() -> None:
    assert len(fit(("just a little too long",), 26.0, 9.0, 3.0, 1.7, False).lines) == 1
    assert len(fit(("a good deal too long for one line of this box",), 26.0, 9.0, 3.0, 1.7, False).lines) > 1
