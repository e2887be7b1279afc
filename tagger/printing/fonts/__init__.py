"""The two faces on every tag: DejaVu Sans Condensed, book and bold, shipped with the package.

Widths come from the font files themselves, without kerning, so that PDF and dots agree.
"""

from __future__ import annotations

from functools import lru_cache
from pathlib import Path

from reportlab.pdfbase.ttfonts import TTFontFace

FOLDER = Path(__file__).parent
FILES = {False: FOLDER / "DejaVuSansCondensed.ttf", True: FOLDER / "DejaVuSansCondensed-Bold.ttf"}


@lru_cache(maxsize=2)
def widths(bold: bool) -> dict[int, float]:
    """Advance of every character of the face as a share of the em, by code point."""
    face = TTFontFace(str(FILES[bold]))
    return {code: width / 1000 for code, width in face.charWidths.items()}


def text_width(text: str, size: float, bold: bool = False) -> float:
    """Width of one line in the unit of ``size`` (the em).

    >>> round(text_width("3000 psi", 10), 2)
    38.65
    """
    return size * _ems(text, bold)


@lru_cache(maxsize=4096)  # every label of a run has the same words, and each letter is set by its width
def _ems(text: str, bold: bool) -> float:
    table = widths(bold)
    return sum([table.get(ord(letter), 0.54) for letter in text])


@lru_cache(maxsize=2048)
def missing(text: str) -> str:
    """The characters of ``text`` that the faces cannot show.

    >>> missing("Schlauch Ø 19 mm, 漢")
    '漢'
    """
    table = widths(False)
    return "".join(sorted({letter for letter in text if ord(letter) not in table}))
