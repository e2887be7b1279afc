"""The scale card on a sheet to print and cut out: A4 or Letter, everything in true size.

What is to be done with it stands below the card; where its parts lie, ``tagger.measuring.card`` says.
"""

from __future__ import annotations

import io
from typing import Any, Final

from reportlab.lib.pagesizes import A4, LETTER
from reportlab.lib.units import mm
from reportlab.pdfgen.canvas import Canvas

from tagger.i18n import Translator
from tagger.measuring import card
from tagger.messages import length
from tagger.papers import document

PAPERS: Final = {"a4": A4, "letter": LETTER}
TOP: Final = 25.0  # mm from the sheet's upper edge to the card
_TEXT = 9.0  # points
STEPS: Final = (
    "measure-step-print",
    "measure-step-check",
    "measure-step-lay",
    "measure-step-beside",
    "measure-step-photo",
)
LIMITS: Final = (
    "measure-limit-flank",
    "measure-limit-inside",
    "measure-limit-worn",
    "measure-limit-seat",
    "measure-limit-pressure",
)


def of(language: str, paper: str = "a4") -> bytes:
    """The sheet as PDF; ``paper``: of PAPERS."""
    document.register_fonts()
    t, out = Translator(language), io.BytesIO()
    width, height = PAPERS[paper]
    pen = Canvas(out, pagesize=(width, height), pageCompression=1)
    pen.setTitle(t("measure-card-title"))
    pen.setViewerPreference("PrintScaling", "None")  # ISO 32000-1, 12.2: the dialog begins with 100 %
    left = (width - card.WIDTH * mm) / 2
    pen.saveState()
    pen.translate(left, height - TOP * mm)
    _draw_card(pen, t)
    pen.restoreState()
    _tell(pen, t, left, height - (TOP + card.HEIGHT + 40) * mm)
    pen.save()
    return out.getvalue()


def _draw_card(pen: Any, t: Translator) -> None:
    """The card with its upper left corner at the origin; y points up."""
    pen.setLineWidth(0.2)
    pen.setDash([2, 2])
    pen.rect(0, -card.HEIGHT * mm, card.WIDTH * mm, card.HEIGHT * mm)
    pen.setDash([])
    for corner in card.CORNERS:
        _draw_symbol(pen, corner)
    middle = card.WIDTH / 2 * mm
    pen.setFont("Paper-Bold", 14)
    pen.drawCentredString(middle, -14 * mm, t("measure-card-title"))
    _draw_check_line(pen, t)
    _fitted(pen, t("measure-card-lay"), 66.0, 60.0)
    pen.setLineWidth(0.8)
    for x in (card.WIDTH / 2 - 20, card.WIDTH / 2, card.WIDTH / 2 + 20):  # arrows to where the thread lies
        pen.line(x * mm, -70 * mm, x * mm, -78 * mm)
        for side in (-1.5, 1.5):
            pen.line(x * mm, -78 * mm, (x + side) * mm, -75.5 * mm)
    pen.setFont("Paper", 6.5)
    pen.drawRightString(card.WIDTH * mm, 1.2 * mm, t("measure-card-cut"))


def _draw_symbol(pen: Any, corner: str) -> None:
    """Runs of dark modules as rectangles: no gap shows between two of a row."""
    x, y = card.CORNERS[corner]
    path = pen.beginPath()
    for row, line in enumerate(card.symbol(corner).modules):
        begun: int | None = None
        for column, dark in enumerate([*line, False]):
            if dark and begun is None:
                begun = column
            elif not dark and begun is not None:
                at = (x + begun * card.MODULE) * mm, -(y + (row + 1) * card.MODULE) * mm
                path.rect(*at, (column - begun) * card.MODULE * mm, card.MODULE * mm)
                begun = None
    pen.setFillColorRGB(0, 0, 0)
    pen.drawPath(path, stroke=0, fill=1)


def _draw_check_line(pen: Any, t: Translator) -> None:
    x, y = card.CHECK_FROM
    pen.setLineWidth(0.5)
    pen.line(x * mm, -y * mm, (x + card.CHECK_LINE) * mm, -y * mm)
    for at in (x, x + card.CHECK_LINE):
        pen.line(at * mm, -(y - 3) * mm, at * mm, -(y + 3) * mm)
    _fitted(pen, t("measure-card-check", length=length(card.CHECK_LINE)), y - 2.0, 90.0)


def _fitted(pen: Any, words: str, y: float, most: float) -> None:
    """Words in the middle of the card, at most so many mm wide."""
    size = 9.5
    while size > 6 and pen.stringWidth(words, "Paper", size) > most * mm:
        size -= 0.25
    pen.setFont("Paper", size)
    pen.drawCentredString(card.WIDTH / 2 * mm, -y * mm, words)


def _tell(pen: Any, t: Translator, left: float, top: float) -> None:
    """What to do, and what a photo cannot tell, below the card and the place of the end."""
    lines = [(t("measure-title"), True)]
    lines += [(f"{n}. {t(step)}", False) for n, step in enumerate(STEPS, 1)]
    lines += [(t("measure-limits"), True), *((f"\u2013 {t(limit)}", False) for limit in LIMITS)]
    lines.append((t("measure-defer"), False))
    for words, bold in lines:
        paragraph = document.text(words, 11 if bold else _TEXT, bold=bold)
        _, tall = paragraph.wrap(card.WIDTH * mm + 30 * mm, top)
        top -= tall + 1.6 * mm
        paragraph.drawOn(pen, left - 15 * mm, top)
