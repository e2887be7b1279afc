"""A whole label as somebody looks at it: printed and flat, as an engraver's tool cuts it, or shrunk round a hose."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

import cv2
import numpy as np
import zxingcpp
from pyzbar import pyzbar  # type: ignore[import-untyped]
from qrcode import constants
from qrcode.main import QRCode

from tagger.drawing import Grid
from tagger.printing import plate, raster, shrunk
from tagger.printing.boxes import Placed
from tagger.printing.content import Tag
from tagger.printing.layout import Page, lay_out
from tagger.printing.readers import grey
from tagger.printing.template import Sleeve, Template
from tests.speed import damage, wounds
from tests.speed.damage import PIXELS_PER_MM, Chance, Picture
from tests.speed.wounds import MARGIN, Label

SLEEVE_OD = (
    30.0  # mm, of the thinnest hose that shrink_sleeve serves: there its codes are squeezed and bent most
)
_CUT_DPI = 40 * 25.4  # of ``plate.cut``

Photos = Callable[[Label, Chance], list[Picture]]


@dataclass(frozen=True)
class Seen:
    """``whole``: the label; ``plain``: with a symbol of ``qrcode`` in the place of its largest, and nothing else.

    ``dots`` tells labels that look the same; ``photos``: a wounded label as it is photographed.
    """

    dots: bytes
    whole: Label
    plain: Label
    page: Page
    photos: Photos


def seen(tag: Tag, template: Template, dpi: int) -> Seen:
    """The label of a tag, sound; a plate has no printer's dots, and ``dpi`` says nothing of it."""
    page = lay_out(tag, template, plate.DPI if template.engraved else dpi)
    if template.engraved:
        cut = plate.cut(plate.plate(tag, template), template.size, template.engraved)
        dots, per_inch = np.asarray(cut, dtype=np.uint8), _CUT_DPI
    else:
        dots, per_inch = grey(raster.draw(page.drawing, dpi)), float(dpi)
    bare = _plain(dots, _largest(page), per_inch)
    if template.sleeve is None:
        whole, plain = (wounds.photographed(each, per_inch) for each in (dots, bare))
        return Seen(dots.tobytes(), whole, plain, page, _flat)
    ratio = shrunk.ratio(template.sleeve, SLEEVE_OD)
    whole, plain = (
        wounds.photographed(_squeezed(each, template.sleeve, ratio), per_inch) for each in (dots, bare)
    )
    return Seen(dots.tobytes(), whole, plain, page, _on_the_hose(page, ratio))


def _flat(label: Label, chance: Chance) -> list[Picture]:
    return [wounds.photo(label, chance)]


def _largest(page: Page) -> Placed:
    return max((one for one in page.symbols if one.symbol.kind == "qr"), key=lambda one: one.module_mm)


def _squeezed(dots: Picture, sleeve: Sleeve, ratio: float) -> Picture:
    assert sleeve.round_hose == "down"
    return cv2.resize(dots, None, fx=1, fy=ratio, interpolation=cv2.INTER_AREA).astype(np.uint8)


def _on_the_hose(page: Page, ratio: float) -> Photos:
    """A shrunk label goes round the hose with its height: each code and the bars photographed from straight above."""

    def photos(label: Label, chance: Chance) -> list[Picture]:
        return [_above(label, placed, page, ratio, chance) for placed in page.symbols]

    return photos


def _above(label: Label, placed: Placed, page: Page, ratio: float, chance: Chance) -> Picture:
    """A band of the label with one symbol, laid round the hose. What is beside the label is hose, grey as a bench."""
    quiet, side = placed.symbol.quiet * placed.module_mm, placed.symbol.size * placed.module_mm
    left, right = ((x + MARGIN) * PIXELS_PER_MM for x in (placed.x - quiet, placed.x + side + quiet))
    band = np.rot90(label.picture[:, round(left) : round(right)])
    round_hose = round(np.pi * SLEEVE_OD * PIXELS_PER_MM)
    surface = np.full((band.shape[0], round_hose), wounds.BENCH, np.uint8)
    surface[:, : band.shape[1]] = band[:, :round_hose]
    [tall] = {
        g.pitch_y * g.modules.shape[0]
        for g in page.drawing.items
        if isinstance(g, Grid) and (g.x, g.y) == (placed.x, placed.y)
    }
    turn = ((placed.y + tall / 2) * ratio + MARGIN) / (SLEEVE_OD / 2)
    return damage.from_side(surface, SLEEVE_OD, turn, chance, per_mm=PIXELS_PER_MM)


def bars(picture: Picture) -> set[str]:
    """What both readers of Code 128 read, in the picture or at half its size, as a phone's preview has it."""
    code128 = zxingcpp.BarcodeFormats(zxingcpp.BarcodeFormat.Code128)
    half = cv2.resize(picture, None, fx=0.5, fy=0.5, interpolation=cv2.INTER_AREA)
    first = {one.text for each in (picture, half) for one in zxingcpp.read_barcodes(each, formats=code128)}
    second = {
        one.data.decode()
        for each in (picture, half)
        for one in pyzbar.decode(each, symbols=[pyzbar.ZBarSymbol.CODE128])
    }
    return first & second


def _plain(dots: Picture, placed: Placed, per_inch: float) -> Picture:
    """A label with a plain symbol in the place of ``placed``, of its side, and nothing else."""
    made = QRCode(error_correction=constants.ERROR_CORRECT_H, border=0)
    made.add_data(placed.symbol.text)
    made.make(fit=True)
    dot = 25.4 / per_inch
    side = round(placed.symbol.size * placed.module_mm / dot)
    dark = np.where(np.array(made.get_matrix()), 0, 255).astype(np.uint8)
    left, top = round(placed.x / dot), round(placed.y / dot)
    bare = np.full_like(dots, 255)
    bare[top : top + side, left : left + side] = cv2.resize(
        dark, (side, side), interpolation=cv2.INTER_NEAREST
    )
    return bare
