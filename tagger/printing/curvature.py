"""How wide a QR symbol may be on a label wrapped round a hose, from geometry alone.

A reader lays a flat grid (a projective map) over the symbol, tied to its three finder patterns and
the last alignment pattern. On a cylinder the modules between them stand elsewhere: where one is
more than half a module off, its neighbour is read instead. The symbol is lost when that spoils more
codewords of a block than its error correction restores. Below version 7 something else comes first:
the version is told from the finder patterns' distance in modules of their own, and these look
narrow at the edge of the cylinder. Versions are four modules apart: when the count comes out nearer
to three modules too many than to two, a reader takes the next version.

A symbol turned away from the viewer is lost sooner, and so there are two rules for how far it may be
turned. Below version 7 the same geometry, turned, and a little less than it says. From version 7 on
readers tie their grid to six and more alignment patterns, and what is lost is the edge that is furthest
round: it must not stand steeper than 38 degrees.

``make survive`` wraps symbols in simulation and compares; see label_templates/README.md.
"""

from __future__ import annotations

import math
from functools import lru_cache

import numpy as np

from tagger.code.symbol import codeword_blocks, codeword_of_module
from tagger.printing.plane import Points, mapped, projective

CLOSEST_MM = 150.0  # a phone held close; common practice, no source
SIDES_AWAY = 6.0  # and no closer than this many sides, so that the symbol fills a sixth of the view
_NEXT_VERSION = 2.5  # modules too many; chosen from simulated version 5 symbols on three hoses
_STEEPEST = 38.0  # degrees; chosen from simulated version 8 symbols at level H on six hoses
_LESS = 0.6  # of the turn that geometry allows; chosen from simulated version 3 symbols on eight hoses
_MISREAD = 0.5  # a module sampled beyond its edge shows its neighbour, which differs half of the time


def distance_mm(side_mm: float) -> float:
    """How far away a phone is held from a symbol of this side."""
    return max(CLOSEST_MM, SIDES_AWAY * side_mm)


def edge_foreshortening(side_mm: float, hose_od_mm: float) -> float:
    """How wide the outermost modules of a facing symbol look, as a share of their width (0 to 1).

    >>> round(edge_foreshortening(18.4, 28), 2)
    0.79
    """
    half = side_mm / hose_od_mm
    return math.cos(half) if half < math.pi / 2 else 0.0


@lru_cache(maxsize=512)
def widest_mm(version: int, level: str, hose_od_mm: float) -> float:
    """The widest symbol (without quiet zone, measured round the hose) that still reads, in mm."""
    radius = hose_od_mm / 2
    low, high = 0.2 * radius, 2.6 * radius
    while high - low > 0.01 * radius:
        middle = (low + high) / 2
        if _reads(version, level, middle, radius):
            low = middle
        else:
            high = middle
    return round(low, 2)


@lru_cache(maxsize=512)
def thinnest_hose_mm(version: int, level: str, side_mm: float) -> float:
    """The least outside diameter on which a symbol of this side still reads, in mm."""
    low, high = side_mm / 1.4, side_mm * 6
    while high - low > 0.05:
        middle = (low + high) / 2
        if widest_mm(version, level, round(middle, 2)) >= side_mm:
            high = middle
        else:
            low = middle
    return round(high, 1)


@lru_cache(maxsize=512)
def widest_turn_deg(version: int, level: str, side_mm: float, hose_od_mm: float) -> float | None:
    """How far a symbol may be turned away round the hose and still read; None where it never reads."""
    radius = hose_od_mm / 2
    if side_mm > widest_mm(version, level, hose_od_mm):
        return None
    if version >= 7:
        return max(0.0, _STEEPEST - math.degrees(side_mm / hose_od_mm))
    low, high = 0.0, 60.0
    while high - low > 0.25:
        middle = (low + high) / 2
        if all(_decodes(version, level, side_mm, radius, math.radians(way * middle)) for way in (1, -1)):
            low = middle
        else:
            high = middle
    return _LESS * low


def _reads(version: int, level: str, side: float, radius: float) -> bool:
    if version < 7 and _version_error(version, side, radius) >= _NEXT_VERSION:
        return False
    return _decodes(version, level, side, radius, 0.0)


def _decodes(version: int, level: str, side: float, radius: float, turn: float) -> bool:
    """Whether error correction restores what a flat grid misreads; ``turn`` away from the viewer, radians."""
    distance = distance_mm(side)
    if abs(turn) + side / 2 / radius >= math.acos(radius / (distance + radius)):
        return False  # an edge is behind the hose
    off = _off_by(version, side, radius, distance, turn) > _MISREAD
    codewords = codeword_of_module(version)
    blocks, restores = codeword_blocks(version, level)
    shown = codewords >= 0
    count = np.bincount(codewords[shown], weights=off[shown].astype(float), minlength=len(blocks))
    wrong = 1 - _MISREAD ** count[: len(blocks)]  # chance that a codeword is misread
    spoilt = np.bincount(blocks, weights=wrong)
    return bool(np.all(spoilt <= restores))


def _version_error(version: int, side: float, radius: float) -> float:
    """How many modules too large the symbol looks, measured in modules of its finder patterns."""
    modules = 4 * version + 17
    between = modules - 7
    angle = side * between / modules / 2 / radius  # from the middle to a finder pattern's centre
    away = distance_mm(side) + radius  # from the phone to the hose's centre
    facing = away * math.cos(angle) - radius
    if facing <= 0:  # a finder pattern is behind the hose's edge
        return math.inf
    # half the distance in the picture, over the picture of a module at the finder's centre
    looks = math.sin(angle) * (away - radius * math.cos(angle)) / facing
    return between * (looks / angle - 1)


def _off_by(version: int, side: float, radius: float, distance: float, turn: float) -> Points:
    """For every module how far the place a reader looks at is from its centre, in modules."""
    size = 4 * version + 17
    anchors = np.array([[3.5, 3.5], [size - 3.5, 3.5], [3.5, size - 3.5], [size - 6.5, size - 6.5]])
    grid = np.stack(np.meshgrid(np.arange(size) + 0.5, np.arange(size) + 0.5), axis=-1).reshape(-1, 2)
    seen = _seen((anchors - size / 2) * side / size, radius, distance, turn)
    looked_at = mapped(projective(anchors, seen), grid)
    found = on_label(looked_at, radius, distance, turn) * size / side + size / 2
    off: Points = np.abs(found - grid).max(axis=1).reshape(size, size)
    return off


def _seen(label: Points, radius: float, distance: float, turn: float) -> Points:
    """Label points (round the hose, along it) in mm as a camera sees them; ``turn`` in radians."""
    angle = label[:, 0] / radius + turn
    depth = distance + radius * (1 - np.cos(angle))
    return np.stack([radius * np.sin(angle) / depth, label[:, 1] / depth], axis=1)


def on_label(seen: Points, radius: float, distance: float, turn: float) -> Points:
    """The inverse of ``_seen``: where a camera's rays meet the label, mm round the hose and along it.

    ``seen``: points of the picture, mm sideways per mm of depth; ``distance`` from the camera to the hose, mm.
    """
    u = seen[:, 0]
    # R sin(t) = u (d + R - R cos(t))  is  A sin(t + p) = u (d + R)  with  A = R sqrt(1 + u²), p = atan(u)
    reach = np.clip(u * (distance + radius) / (radius * np.sqrt(1 + u * u)), -1, 1)
    angle = np.arcsin(reach) - np.arctan(u)
    depth = distance + radius * (1 - np.cos(angle))
    return np.stack([(angle - turn) * radius, seen[:, 1] * depth], axis=1)
