"""What happens to a tag in the field, as operations on a picture of its symbol.

Every operation takes a picture (grey levels), the symbol's place in it and a source of chance, and
answers a new picture. Lengths are in millimetres on the label or shares of the symbol's side, as each
says: dirt does not know how large a module is.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

import cv2
import numpy as np
import numpy.typing as npt

from tagger.printing.around import printed_mm
from tagger.printing.boxes import Placed
from tagger.printing.layout import Page
from tagger.printing.sizing import dot_mm
from tagger.printing.template import Template

Picture = npt.NDArray[np.uint8]
Chance = np.random.Generator
Rays = npt.NDArray[np.float64]

PAPER, INK = 235, 25
PIXELS_PER_MM = 16.0  # a 12-megapixel phone about 20 cm away
FINDER = 9  # modules kept clear at each finder corner: pattern, separator, format information


@dataclass(frozen=True)
class Shot:
    """A picture of one symbol with some of what is round it; ``left``, ``top``, ``side`` in pixels."""

    picture: Picture
    left: float
    top: float
    side: float
    modules: int
    scale: float = PIXELS_PER_MM  # pixels a millimetre

    @property
    def module(self) -> float:
        return self.side / self.modules

    def with_picture(self, picture: Picture) -> Shot:
        return Shot(picture, self.left, self.top, self.side, self.modules, self.scale)


def aim(dots: Picture, page: Page, placed: Placed) -> Shot:
    """A camera's view of a symbol printed as ``dots``: it and a third of its side round it."""
    dot = dot_mm(page.dpi)
    side = placed.symbol.size * placed.dots
    margin = side // 3
    x, y = round(placed.x / dot), round(placed.y / dot)
    padded = np.pad(dots, margin, constant_values=255)
    cut = padded[y : y + side + 2 * margin, x : x + side + 2 * margin]
    scale = PIXELS_PER_MM * dot
    smooth = cv2.INTER_AREA if scale < 1 else cv2.INTER_LINEAR
    picture = cv2.resize(cut, None, fx=scale, fy=scale, interpolation=smooth)
    levels = (picture / 255.0 * (PAPER - INK) + INK).astype(np.uint8)
    return Shot(levels, margin * scale, margin * scale, side * scale, placed.symbol.size)


def camera(shot: Shot, chance: Chance, blur: float = 0.05, noise: float = 4.0) -> Picture:
    """The last step: a slightly soft lens (``blur`` in mm, standard deviation) and sensor noise."""
    soft = cv2.GaussianBlur(shot.picture, (0, 0), blur * shot.scale)
    return np.clip(soft + chance.normal(0, noise, soft.shape), 0, 255).astype(np.uint8)


def printed(dots: Picture, dpi: float) -> Picture:
    """Dots as ink on paper: ink spreads by 0.025 mm all round, a lens blurs by 0.05 mm; ``dpi`` of ``dots``."""
    per_mm = dpi / 25.4
    spread = 2 * max(1, round(0.025 * per_mm)) + 1
    inked = cv2.erode(dots, cv2.getStructuringElement(cv2.MORPH_ELLIPSE, (spread, spread)))
    soft = cv2.GaussianBlur(inked, (0, 0), 0.05 * per_mm)
    return (soft / 255.0 * (PAPER - INK) + INK).astype(np.uint8)


def _off_finders(x: float, y: float, radius: float, modules: int) -> bool:
    """Whether a circle (in shares of the side) keeps clear of the three finder corners."""
    reach = FINDER / modules
    for left, top in ((0.0, 0.0), (1 - reach, 0.0), (0.0, 1 - reach)):
        dx = max(left - x, 0.0, x - left - reach)
        dy = max(top - y, 0.0, y - top - reach)
        if math.hypot(dx, dy) < radius:
            return False
    return True


def blobs(shot: Shot, chance: Chance, share: float, small: float = 0.02, large: float = 0.05) -> Shot:
    """Light and dark blobs, radius 2 to 5 % of the side, off the finders, till ``share`` is hit."""
    picture = shot.picture.copy()
    hit = np.zeros((400, 400), dtype=np.uint8)
    while hit.mean() < share:
        x, y, radius = chance.uniform(0, 1), chance.uniform(0, 1), chance.uniform(small, large)
        if not _off_finders(x, y, radius, shot.modules):
            continue
        cv2.circle(hit, (round(x * 400), round(y * 400)), round(radius * 400), 1, -1)
        centre = (round(shot.left + x * shot.side), round(shot.top + y * shot.side))
        level = PAPER if chance.random() < 0.5 else INK
        cv2.circle(picture, centre, round(radius * shot.side), int(level), -1, cv2.LINE_AA)
    return shot.with_picture(picture)


def stain(shot: Shot, chance: Chance, share: float) -> Shot:
    """One round stain of ``share`` of the symbol's area, wholly on it and off the finders."""
    radius = math.sqrt(share / math.pi)
    while True:
        x, y = chance.uniform(radius, 1 - radius), chance.uniform(radius, 1 - radius)
        if _off_finders(x, y, radius, shot.modules):
            break
    picture = shot.picture.copy()
    level = PAPER if chance.random() < 0.5 else INK
    centre = (round(shot.left + x * shot.side), round(shot.top + y * shot.side))
    cv2.circle(picture, centre, round(radius * shot.side), int(level), -1, cv2.LINE_AA)
    return shot.with_picture(picture)


def wrapped(
    modules: npt.NDArray[np.bool_],
    side_mm: float,
    hose_od_mm: float,
    distance_mm: float,
    chance: Chance,
    focal: float = 3100.0,
) -> Picture:
    """A symbol wrapped round a hose, facing a phone at ``distance_mm``; ``focal`` in pixels.

    3100 pixels is a 12-megapixel phone's usual lens. Rays are met with the cylinder one by one.
    """
    fine = 8
    quiet = np.pad(~modules, 4, constant_values=True)
    flat = np.kron(quiet, np.ones((fine, fine), dtype=np.uint8)) * np.uint8(PAPER - INK) + np.uint8(INK)
    module = side_mm / modules.shape[0]
    whole, radius = module * quiet.shape[0], hose_od_mm / 2
    width = int(focal * min(hose_od_mm * 1.1, whole * 1.2) / distance_mm)
    height = int(focal * whole * 1.15 / distance_mm)
    u, v = np.meshgrid(
        (np.arange(width) - width / 2 + 0.5) / focal, (np.arange(height) - height / 2 + 0.5) / focal
    )
    angle, along_hose, hit = _on_hose(u, v, radius, distance_mm)
    round_hose = angle * radius
    x = ((round_hose + whole / 2) / module * fine - 0.5).astype(np.float32)
    y = ((along_hose + whole / 2) / module * fine - 0.5).astype(np.float32)
    x[~hit] = -1e6
    seen = cv2.remap(flat, x, y, cv2.INTER_LINEAR, borderMode=cv2.BORDER_CONSTANT, borderValue=PAPER)
    return _lens(seen, hit, chance)


def applied(dots: Picture, dpi: int, template: Template, od: float, per_mm: float = 24.0) -> Picture:
    """A label that goes round a hose, as it lies on it: the hose's surface, one turn across, its length down.

    The opaque part lies over its own beginning where it is longer than the hose is round; a clear tail
    shows what is below. Where there is no label there is paper, as a hose's marking is not our matter.
    """
    if template.wraps == "down":
        dots = dots.T
    scale = per_mm * dot_mm(dpi)
    label = cv2.resize(dots, None, fx=scale, fy=scale, interpolation=cv2.INTER_NEAREST)
    label = (label / 255.0 * (PAPER - INK) + INK).astype(np.uint8)
    around = np.full((label.shape[0], round(math.pi * od * per_mm)), PAPER, np.uint8)
    reach = min(label.shape[1], round(printed_mm(template) * per_mm))
    for start in range(0, reach, around.shape[1]):
        part = label[:, start : min(start + around.shape[1], reach)]
        around[:, : part.shape[1]] = part
    return around


def from_side(
    surface: Picture, od: float, turn: float, chance: Chance, per_mm: float = 24.0, focal: float = 3100.0
) -> Picture:
    """The hose with ``surface`` round it, seen from ``turn`` radians by a phone 150 mm away."""
    away, radius, length = 150.0, od / 2, surface.shape[0] / per_mm
    width, height = int(focal * od * 1.1 / away), int(focal * length * 1.1 / away)
    u, v = np.meshgrid(
        (np.arange(width) - width / 2 + 0.5) / focal, (np.arange(height) - height / 2 + 0.5) / focal
    )
    round_hose, along_hose, hit = _on_hose(u, v, radius, away)
    x = ((round_hose + turn) % (2 * math.pi) * radius * per_mm - 0.5).astype(np.float32)
    y = ((along_hose + length / 2) * per_mm - 0.5).astype(np.float32)
    closed = np.concatenate([surface, surface[:, :2]], axis=1)  # the turn's end is its beginning
    seen = cv2.remap(closed, x, y, cv2.INTER_LINEAR, borderMode=cv2.BORDER_CONSTANT, borderValue=90)
    return _lens(seen, hit, chance)


def _on_hose(u: Rays, v: Rays, radius: float, away: float) -> tuple[Rays, Rays, npt.NDArray[np.bool_]]:
    """Where a camera's rays meet the hose: the angle round it, mm along it, and whether they do."""
    axis = away + radius
    a, b, c = u * u + 1, -2 * axis, axis * axis - radius * radius
    inside = b * b - 4 * a * c
    hit = inside > 0
    depth = (-b - np.sqrt(np.where(hit, inside, 0))) / (2 * a)
    return np.arctan2(u * depth, axis - depth), v * depth, hit


def _lens(seen: Picture, hit: npt.NDArray[np.bool_], chance: Chance) -> Picture:
    """Grey round the hose, a soft lens, a sensor's noise."""
    seen[~hit] = 90
    framed = np.pad(cv2.GaussianBlur(seen, (0, 0), 0.8), 30, constant_values=90)
    return np.clip(framed + chance.normal(0, 4.0, framed.shape), 0, 255).astype(np.uint8)
