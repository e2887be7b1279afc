"""The vectors of a PDF as pdfium reads them, in mm from the top left: what a printer is given, not what we meant."""

from __future__ import annotations

import ctypes
import io
from dataclasses import dataclass
from functools import cached_property
from typing import Any

import numpy as np
import pypdfium2
import pypdfium2.raw as raw

Point = tuple[float, float]
MM = 25.4 / 72
FOOT = 64.0  # mm


@dataclass(frozen=True)
class Path:
    """Points of one path in order (of a curve its ends and handles); grey from 0 to 255; filled or a line."""

    points: tuple[Point, ...]
    grey: int
    filled: bool

    @property
    def left(self) -> float:
        return min(x for x, _ in self.points)

    @property
    def right(self) -> float:
        return max(x for x, _ in self.points)

    @property
    def top(self) -> float:
        return min(y for _, y in self.points)

    @property
    def bottom(self) -> float:
        return max(y for _, y in self.points)

    @property
    def across(self) -> float:
        return self.right - self.left

    @property
    def down(self) -> float:
        return self.bottom - self.top


class Page:
    """One page: its size in mm, its paths, and its words with their places."""

    def __init__(self, page: Any) -> None:
        self._page = page
        self.width, self.height = page.get_width() * MM, page.get_height() * MM

    @cached_property
    def paths(self) -> list[Path]:
        return [self._path(one) for one in self._page.get_objects() if one.type == raw.FPDF_PAGEOBJ_PATH]

    @cached_property
    def fills(self) -> list[Path]:
        """Without the code's modules, which are one path of many rectangles."""
        return [one for one in self.paths if one.filled and len(one.points) < 400]

    @cached_property
    def lines(self) -> list[Path]:
        return [one for one in self.paths if not one.filled]

    @cached_property
    def text(self) -> str:
        return str(self._page.get_textpage().get_text_range())

    def places(self, words: str) -> list[tuple[float, float, float, float]]:
        """Where these words stand above the foot, which names a mark as an example: left, top, right, bottom."""
        found, text = [], self._page.get_textpage()
        searcher = text.search(words, match_case=True)
        while (at := searcher.get_next()) is not None:
            boxes = [text.get_charbox(at[0] + place) for place in range(at[1])]
            left, right = min(b[0] for b in boxes) * MM, max(b[2] for b in boxes) * MM
            top, bottom = max(b[3] for b in boxes) * MM, min(b[1] for b in boxes) * MM
            found.append((left, self.height - top, right, self.height - bottom))
        return [box for box in found if box[3] < self.height - FOOT]

    def letters(self) -> list[tuple[float, float, float, float]]:
        """The box of every letter that shows."""
        text = self._page.get_textpage()
        shown = (at for at in range(text.count_chars()) if chr(raw.FPDFText_GetUnicode(text, at)).strip())
        boxes = [text.get_charbox(at) for at in shown]
        return [(b[0] * MM, self.height - b[3] * MM, b[2] * MM, self.height - b[1] * MM) for b in boxes]

    def seen(self, left: float, top: float, right: float, bottom: float, dpi: int) -> Any:
        """A part of the page as a printer of ``dpi`` would blacken it: rows x columns, 0 is black."""
        crop = (left / MM, (self.height - bottom) / MM, (self.width - right) / MM, top / MM)
        return np.asarray(
            self._page.render(scale=dpi / 72, crop=crop, no_smoothpath=True).to_pil().convert("L")
        )

    def _path(self, one: Any) -> Path:
        matrix = one.get_matrix()
        points = []
        for place in range(raw.FPDFPath_CountSegments(one)):
            x, y = ctypes.c_float(), ctypes.c_float()
            raw.FPDFPathSegment_GetPoint(raw.FPDFPath_GetPathSegment(one, place), x, y)
            px, py = matrix.on_point(x.value, y.value)
            points.append((px * MM, self.height - py * MM))
        mode, stroke = ctypes.c_int(), ctypes.c_int()
        raw.FPDFPath_GetDrawMode(one, mode, stroke)
        shade = [ctypes.c_uint() for _ in range(4)]
        read = raw.FPDFPageObj_GetFillColor if mode.value else raw.FPDFPageObj_GetStrokeColor
        read(one, *shade)
        return Path(tuple(points), shade[0].value, bool(mode.value))


def pages(pdf: bytes) -> list[Page]:
    return [Page(page) for page in pypdfium2.PdfDocument(io.BytesIO(pdf))]
