"""The proof of every label that is printed: its symbols, as dots, say what the tag says.

Each symbol is taken from the printer's dots, at whatever place the drawing has it. Every module must be
all dark or all light and as the symbol was made, the quiet zone white, no codeword wrong, and the modules
alone, one dot each, are decoded by zxing-cpp to the very link or number. No camera is simulated: that
``preflight`` does, once for each kind of label in a run (``kinds``).
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
import numpy.typing as npt
import zxingcpp
from PIL import Image

from tagger.code import link
from tagger.code.symbol import Symbol, whole
from tagger.drawing import Grid
from tagger.errors import Problem, SymbolError
from tagger.messages import Message
from tagger.printing.boxes import Placed
from tagger.printing.content import Tag
from tagger.printing.layout import Page
from tagger.printing.painter import Region, draw_near
from tagger.printing.sizing import dot_mm

Dots = npt.NDArray[np.bool_]  # True where dark

_FORMATS = {
    "qr": zxingcpp.BarcodeFormats(zxingcpp.BarcodeFormat.QRCode),
    "code128": zxingcpp.BarcodeFormats(zxingcpp.BarcodeFormat.Code128),
}
_BAR_ROWS = 8  # dots that bars are tall when they are decoded


def prove(tag: Tag, page: Page, *, forced: bool = False) -> None:
    """Raises SymbolError naming the tag number where a symbol of the page does not say what the tag says.

    ``forced``: a quiet zone that is not clear is let pass; a phone may read the symbol all the same.
    """
    grids = [part for part in page.drawing.parts if isinstance(part, Grid)]
    if len(grids) != len(page.symbols):
        raise _wrong(tag, "qr", "drawn")
    places = [_Place.of(*both, page.dpi) for both in zip(page.symbols, grids, strict=True)]
    drawn = draw_near(page.drawing, [place.whole for place in places], page.dpi)
    decoded: set[tuple[str, bytes]] = set()  # a symbol that stands twice on a label is decoded once
    for place in places:
        symbol = place.symbol
        why = place.difference(drawn)
        if why is not None and not (forced and why == "quiet"):
            raise _wrong(tag, symbol.kind, why)
        if (modules := (symbol.kind, symbol.modules.tobytes())) in decoded:
            continue
        prove_symbol(tag, symbol)
        decoded.add(modules)


def prove_symbol(tag: Tag, symbol: Symbol) -> None:
    """Raises SymbolError where a symbol, which a paper draws itself, does not say what the tag says."""
    if (symbol.kind == "qr" and not whole(symbol)) or not _says(_decoded(symbol), symbol.kind, tag):
        raise _wrong(tag, symbol.kind, "text")


def _says(text: str | None, kind: str, tag: Tag) -> bool:
    """Whether a symbol says what the tag says: its number, its link, signed or not, or the link of the number alone."""
    if kind == "code128":
        return text == tag.number
    return bool(text) and (text in (tag.link, tag.signed_link) or text == link.number_only(tag.link))


@dataclass(frozen=True, slots=True)
class _Place:
    """Where a symbol must stand, in dots, and what it must look like: ``modules`` as they are turned."""

    symbol: Symbol
    modules: Dots
    own: Region
    whole: Region  # with the quiet zone
    across: int  # dots of a module
    down: int

    @classmethod
    def of(cls, placed: Placed, grid: Grid, dpi: int) -> _Place:
        """Of the grid only how tall bars are is believed."""
        dot, symbol, turned = dot_mm(dpi), placed.symbol, placed.turn in (90, 270)
        modules = placed.modules
        across = down = placed.dots
        if symbol.kind == "code128" and turned:
            across = round(grid.pitch_x / dot)
        elif symbol.kind == "code128":
            down = round(grid.pitch_y / dot)
        left, top = round(placed.x / dot), round(placed.y / dot)
        own = (left, top, left + modules.shape[1] * across, top + modules.shape[0] * down)
        beside, above = symbol.quiet * across, symbol.quiet * down
        if symbol.kind == "code128":  # bars need room at their ends alone
            beside, above = (0, above) if turned else (beside, 0)
        around = (own[0] - beside, own[1] - above, own[2] + beside, own[3] + above)
        return cls(symbol, modules, own, around, across, down)

    def difference(self, drawn: Image.Image) -> str | None:
        """What is wrong with the symbol in the label's picture: "drawn" or "quiet"; None: nothing."""
        if self.own != _within(self.own, drawn):
            return "drawn"
        region = _within(self.whole, drawn)
        dots: Dots = ~np.asarray(drawn.crop(region))
        left, top = region[:2]
        own = dots[self.own[1] - top : self.own[3] - top, self.own[0] - left : self.own[2] - left]
        expected = self.modules.repeat(self.down, axis=0).repeat(self.across, axis=1)
        if not np.array_equal(own, expected):
            return "drawn"
        clear = np.count_nonzero(dots) == np.count_nonzero(expected)
        return None if region == self.whole and clear else "quiet"


def _within(region: Region, image: Image.Image) -> Region:
    """The part of a region that the image has."""
    left, top, right, bottom = region
    return max(left, 0), max(top, 0), min(right, image.width), min(bottom, image.height)


def _decoded(symbol: Symbol) -> str | None:
    """What zxing-cpp reads from the modules alone, one dot each."""
    modules = symbol.modules if symbol.kind == "qr" else symbol.modules.repeat(_BAR_ROWS, axis=0)
    (rows, columns), edge = modules.shape, symbol.quiet
    light = np.full((rows + 2 * edge, columns + 2 * edge), 255, dtype=np.uint8)
    light[edge : edge + rows, edge : edge + columns][modules] = 0
    found = zxingcpp.read_barcodes(
        light,
        formats=_FORMATS[symbol.kind],
        is_pure=True,
        try_rotate=False,
        try_downscale=False,
        binarizer=zxingcpp.Binarizer.FixedThreshold,
    )
    return found[0].text if len(found) == 1 else None


def _wrong(tag: Tag, kind: str, why: str) -> SymbolError:
    return SymbolError(Problem("number", tag.shown_number, Message(f"printing-proof-{why}", kind=kind)))
