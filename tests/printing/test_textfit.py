"""Texts in a box are as large as they can be."""

from __future__ import annotations

import random

import pytest

from tagger.printing.fonts import widths
from tagger.printing.textfit import (
    _TRIES,
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
    for shares in _TRIES:
        sizes = [p.smallest + (p.largest - p.smallest) * shares[0 if p.main else 1] for p in paragraphs]
        found = [_paragraph(p, width, round(size, 3)) for p, size in zip(paragraphs, sizes, strict=True)]
        whole = [one for one in found if one is not None]
        if len(whole) == len(found) and stack_height(whole) <= height + 1e-6:
            return tuple(found)
    return None


def test_no_larger_size_of_a_stack_fits_than_the_one_that_is_found() -> None:
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
