"""Pages of running text as PDF: what the certificate and the letters share.

reportlab's platypus sets them: text and tables that flow, unlike a tag.
"""

from __future__ import annotations

import io
import re
from collections.abc import Sequence
from html import escape
from typing import Any

from reportlab.lib import colors
from reportlab.lib.pagesizes import A4
from reportlab.lib.styles import ParagraphStyle
from reportlab.lib.units import mm
from reportlab.pdfbase import pdfmetrics
from reportlab.pdfbase.ttfonts import TTFont
from reportlab.platypus import Flowable, Paragraph, SimpleDocTemplate, Spacer, Table, TableStyle

from tagger.drawing import Circle, Drawing, Grid, Item, Line, Text
from tagger.printing import fonts
from tagger.printing.textfit import together
from tagger.settings import ShopSettings

_INKS = {"black": colors.black, "white": colors.white}
# Before what is counted on a nut, in every language.
_COUNT = re.compile(
    r"(?<=\d) (?=(?:flats?|turns?|pans?|tours?|caras?|vueltas?)\b|Umdrehung|Fläche|Schlüsselfläche)"
)
_PLAIN, _BOLD = "Paper", "Paper-Bold"


def to_pdf(story: Sequence[Any], *, title: str, settings: ShopSettings, numbered: bool = False) -> bytes:
    """The story on A4; ``numbered``: its title and the page's number at the foot of every page after the first."""
    out = io.BytesIO()

    def foot(canvas: Any, made: Any) -> None:
        register_fonts()
        canvas.setFont(_PLAIN, 8)
        canvas.drawString(20 * mm, 10 * mm, title)
        canvas.drawRightString(A4[0] - 20 * mm, 10 * mm, str(made.page))

    SimpleDocTemplate(
        out,
        pagesize=A4,
        leftMargin=20 * mm,
        rightMargin=20 * mm,
        topMargin=12 * mm,
        bottomMargin=13 * mm,
        title=title,
        author=settings.shop_name,
    ).build(list(story), **({"onLaterPages": foot} if numbered else {}))
    return out.getvalue()


def head(settings: ShopSettings) -> list[Any]:
    """The letterhead: name, address, phone, email."""
    lines = (settings.shop_address, settings.shop_phone, settings.shop_email)
    return [text(settings.shop_name, 12, bold=True), *(text(line, 9) for line in lines if line), gap(4)]


def text(words: str, size: float = 10, *, bold: bool = False) -> Paragraph:
    """A paragraph; no figure is parted from its unit at a line's end, nor a count from what is counted."""
    register_fonts()
    style = ParagraphStyle("p", fontName=_BOLD if bold else _PLAIN, fontSize=size, leading=size * 1.35)
    return Paragraph(escape(together(_COUNT.sub("\u00a0", words))).replace("\n", "<br/>"), style)


def gap(millimetres: float) -> Spacer:
    return Spacer(1, millimetres * mm)


def beside(left: Sequence[Any], right: Any, width: float) -> Table:
    """A stack of paragraphs, and at its right a drawing ``width`` mm wide."""
    made = Table([[list(left), right]], colWidths=[(170 - width) * mm, width * mm])
    made.setStyle(TableStyle([("VALIGN", (0, 0), (-1, -1), "TOP")]))
    return made


def table(rows: Sequence[Sequence[str]], widths: Sequence[float], *, heading: bool = False) -> Table:
    """Cells of text; ``widths`` in mm; the first row repeats on every page when it is a heading."""
    cells = [[text(cell, 9, bold=heading and not place) for cell in row] for place, row in enumerate(rows)]
    made = Table(cells, colWidths=[width * mm for width in widths], repeatRows=int(heading))
    above, below = (
        (1.5, 2.5) if heading else (0.5, 1.8)
    )  # facts stand closer: they are not written in by hand
    made.setStyle(
        TableStyle(
            [
                ("LINEBELOW", (0, 0), (-1, -1), 0.4, colors.grey),
                ("VALIGN", (0, 0), (-1, -1), "TOP"),
                ("TOPPADDING", (0, 0), (-1, -1), above),
                ("BOTTOMPADDING", (0, 0), (-1, -1), below),
            ]
        )
    )
    return made


def picture(drawing: Drawing) -> Flowable:
    """A drawing in its own size."""
    return _Picture(drawing)


class _Picture(Flowable):  # type: ignore[misc]
    """Draws primitives, whose y points down, on reportlab's canvas, whose y points up."""

    def __init__(self, drawing: Drawing) -> None:
        super().__init__()
        self.drawing = drawing
        self.width, self.height = drawing.width * mm, drawing.height * mm

    def wrap(self, *_: float) -> tuple[float, float]:
        return self.width, self.height

    def draw(self) -> None:
        register_fonts()
        for item in self.drawing.items:
            self._paint(item)

    def _at(self, x: float, y: float) -> tuple[float, float]:
        return x * mm, (self.drawing.height - y) * mm

    def _paint(self, item: Item) -> None:
        pen = self.canv
        if isinstance(item, Text):
            pen.setFillColor(_INKS[item.ink])
            pen.setFont(_BOLD if item.bold else _PLAIN, item.size * mm)
            show = {"start": pen.drawString, "middle": pen.drawCentredString, "end": pen.drawRightString}
            show[item.anchor](*self._at(item.x, item.y), item.text)
            return
        if isinstance(item, Grid):
            raise TypeError("papers show no symbols")
        pen.setLineWidth(item.width * mm)
        pen.setStrokeColor(_INKS[item.ink])
        pen.setDash([item.dash * mm] if isinstance(item, Line) and item.dash else [])
        if isinstance(item, Line):
            pen.line(*self._at(item.x1, item.y1), *self._at(item.x2, item.y2))
            return
        pen.setFillColor(_INKS[item.fill or "white"])
        stroke, fill = int(item.width > 0), int(item.fill is not None)
        if isinstance(item, Circle):
            pen.circle(*self._at(item.x, item.y), item.radius * mm, stroke=stroke, fill=fill)
            return
        path = pen.beginPath()
        path.moveTo(*self._at(*item.points[0]))
        for point in item.points[1:]:
            path.lineTo(*self._at(*point))
        if item.closed:
            path.close()
        pen.drawPath(path, stroke=stroke, fill=fill)


def register_fonts() -> None:
    """The faces of papers, "Paper" and "Paper-Bold", known to reportlab."""
    if _PLAIN not in pdfmetrics.getRegisteredFontNames():
        folder = fonts.__path__[0]
        pdfmetrics.registerFont(TTFont(_PLAIN, f"{folder}/DejaVuSansCondensed.ttf"))
        pdfmetrics.registerFont(TTFont(_BOLD, f"{folder}/DejaVuSansCondensed-Bold.ttf"))
