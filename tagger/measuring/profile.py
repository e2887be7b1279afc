"""The thread's edges and crests near lines that somebody has drawn roughly: to be shown and confirmed, never taken.

In every column of pixels the edge is where the brightness changes most across the axis. The outermost of it is the
line over the crests; how it goes in and out along the axis gives the pitch, by autocorrelation, and to a hundredth of
it by the phase over all the crests.
"""

from __future__ import annotations

import math
from dataclasses import replace
from typing import Final

import numpy as np
from PIL import Image

from tagger.errors import LinkError, Problem
from tagger.measuring import card, view
from tagger.measuring.card import Array
from tagger.measuring.reading import Lines
from tagger.messages import Message

REACH: Final = 1.6  # mm to either side of a line within which its edge is looked for
PITCHES: Final = (
    0.7,
    3.4,
)  # mm, beyond both ends of the tables' pitches (0.907 and 3.175 mm), as seen from near
SURE: Final = 0.35  # of autocorrelation, of each edge by itself, from which crests are taken to be there
_FEWEST: Final = 3  # crests
_OFF_CREST = 0.25  # pitches from the line, beyond which no crest stands there
_CUT = 0.5  # mm, by which a card may be cut too large
_CLEAR = 0.5  # of the usual column's strongest change
_BINS = 24  # of one pitch, in which the edge is laid over itself


def find(strip: Image.Image, lines: Lines) -> Lines:
    """The lines moved onto the edges and crests. Raises LinkError where none are seen."""
    grey = _without_card(strip)
    for _ in range(3):
        turned = _turned(grey, lines)
        edges = [_edge(turned, y, sign, lines) for y, sign in _sides(lines)]
        pitch, phase = _pitch(edges)
        before, lines = lines, _straightened(lines, edges, pitch)
    x, y = edges[0]
    upper = x, y - math.tan(math.radians(lines.tilt - before.tilt)) * (x - lines.x)
    return _on_crests(lines, pitch, phase, upper)


def _sides(lines: Lines) -> tuple[tuple[float, float], tuple[float, float]]:
    """y of the upper and the lower edge, and which way is outside."""
    upper, lower = sorted((lines.edge_1, lines.edge_2))
    return (upper, -1.0), (lower, 1.0)


def _without_card(strip: Image.Image) -> Image.Image:
    """The strip with its table, or what else lies there, drawn on over the card: the card's edge is no thread's."""
    grey = np.asarray(strip.convert("L")).copy()
    [(_, edge)] = view.to_px(np.array([[0.0, card.HEIGHT + _CUT]]))
    grey[: round(edge)] = grey[round(edge)]
    return Image.fromarray(grey)


def _turned(strip: Image.Image, lines: Lines) -> Array:
    """The strip with the axis along x: round the same point that the lines are turned round."""
    [(x, y)] = view.to_px(np.array([[lines.x, lines.y]]))
    turned = strip.rotate(lines.tilt, Image.Resampling.BICUBIC, center=(x, y))
    return np.asarray(turned, dtype=np.float32)


def _edge(grey: Array, y: float, outside: float, lines: Lines) -> tuple[Array, Array]:
    """x and y in mm of the edge near a line, a column of pixels each."""
    left, right = sorted((lines.crest_1, lines.crest_2))
    [(first, at), (last, _)] = view.to_px(np.array([[left, y], [right, y]]))
    reach = round(REACH * view.PX)
    top = max(0, round(at) - reach)
    columns = np.arange(max(0, round(first)), min(grey.shape[1], round(last) + 1))
    below = max(top, round(at) + reach + 1)
    box = grey[top:below, columns[0] : columns[-1] + 1] if len(columns) else grey[:0, :0]
    if box.shape[0] < reach or box.shape[1] < _FEWEST * PITCHES[0] * view.PX:
        raise LinkError(Problem("edges", None, Message("measure-not-found")))
    change = np.abs(np.diff(_smooth(_smooth(_smooth(box, 1), 1), 0), axis=0))
    rows = _outer_edge(change, outside)
    return view.LEFT + (columns + 0.5) / view.PX, view.TOP + (top + 1 + rows) / view.PX


def _smooth(box: Array, axis: int) -> Array:
    """Each pixel with its neighbours, a quarter of each."""
    pad = [(1, 1) if n == axis else (0, 0) for n in (0, 1)]
    wide = np.pad(box, pad, mode="edge")
    size = box.shape[axis]
    parts = [np.take(wide, range(n, n + size), axis=axis) for n in (0, 1, 2)]
    return np.asarray(parts[0] / 4 + parts[1] / 2 + parts[2] / 4)


def _outer_edge(change: Array, outside: float) -> Array:
    """The row of the outermost clear change of each column, to a fraction of a pixel; the column's strongest where
    none is clear. What is inside the thread changes too, and a shadow's edge little.
    """
    if outside > 0:
        return np.asarray(change.shape[0] - 1 - _outer_edge(change[::-1], -1.0))
    clear = _CLEAR * float(np.median(change.max(axis=0)))
    inner = change[1:-1]
    peak = (inner >= clear) & (inner > change[:-2]) & (inner >= change[2:])
    row = np.where(peak.any(axis=0), peak.argmax(axis=0), inner.argmax(axis=0)) + 1
    columns = np.arange(change.shape[1])
    before, here, after = (change[row + n, columns] for n in (-1, 0, 1))
    curve = before - 2 * here + after
    return np.asarray(row + np.where(curve < 0, 0.5 * (before - after) / np.where(curve < 0, curve, 1), 0.0))


def _straightened(lines: Lines, edges: list[tuple[Array, Array]], pitch: float) -> Lines:
    """The lines along both edges' crests: their common slope is taken off the tilt."""
    slope = _slope(edges, pitch)
    crests = [
        _crest(x, y - slope * (x - lines.x), sign, pitch)
        for (x, y), (_, sign) in zip(edges, _sides(lines), strict=True)
    ]
    tilt = lines.tilt + math.degrees(math.atan(slope))
    return replace(lines, edge_1=crests[0], edge_2=crests[1], tilt=tilt, found=True)


def _slope(edges: list[tuple[Array, Array]], pitch: float) -> float:
    """The slope that both edges share beside their own waves; columns that saw something else are left out."""
    x = np.concatenate([x - x.mean() for x, _ in edges])
    y = np.concatenate([_steady(y) for _, y in edges])
    first = np.repeat([1.0, 0.0], [len(edges[0][0]), len(edges[1][0])])
    turns = [2 * math.pi * x * n / pitch for n in (1, 2)]
    waves = [np.ones_like(x), *(wave(turn) for turn in turns for wave in (np.cos, np.sin))]
    table = np.column_stack([x, *(wave * first for wave in waves), *(wave * (1 - first) for wave in waves)])
    kept = np.ones(len(x), dtype=bool)
    found = np.zeros(table.shape[1])
    for _ in range(3):
        found = np.linalg.lstsq(table[kept], y[kept], rcond=None)[0]
        off = np.abs(y - table @ found)
        kept = off <= max(3 * float(np.median(off)), 0.05)
    return float(found[0])


def _steady(y: Array) -> Array:
    """Without single columns that saw something else."""
    middle = np.median(y)
    return np.clip(y, middle - 1.2, middle + 1.2)


def _crest(x: Array, y: Array, sign: float, pitch: float) -> float:
    """y of the crests: the edge laid over itself pitch by pitch, the middle of what stands farthest out."""
    place = ((x / pitch) % 1 * _BINS).astype(int)
    middles = np.array([np.median(y[place == n] * sign) for n in range(_BINS) if (place == n).any()])
    return float(np.sort(middles)[-3:].mean() * sign)


def _pitch(edges: list[tuple[Array, Array]]) -> tuple[float, float]:
    """The pitch in mm, and x of one crest of the upper edge. Raises LinkError where nothing repeats."""
    waves = [(x, _level(x, _steady(y) * sign)) for (x, y), sign in zip(edges, (-1.0, 1.0), strict=True)]
    each = [_autocorrelation(wave) for _, wave in waves]
    lags = np.arange(len(each[0])) / view.PX
    peak = _first_peak(np.mean(each, axis=0), lags, float(np.ptp(waves[0][0])))
    if peak is None or any(same[np.abs(lags / peak - 1) < 0.08].max() < SURE for same in each):
        raise LinkError(Problem("crests", None, Message("measure-no-crests")))
    near = np.linspace(0.88, 1.12, 481) / peak
    often = [float(near[int(np.argmax(np.abs(_spectrum(x, wave, near))))]) for x, wave in waves]
    turn = np.angle(_spectrum(*waves[0], np.array(often[:1])))[0]
    pitch = (1 / often[0] + 1 / often[1]) / 2  # the two edges are not as high as each other
    return pitch, float(turn / (2 * math.pi * often[0]))


def _level(x: Array, y: Array) -> Array:
    """In and out of the edge, without its slope."""
    return np.asarray(y - np.polyval(np.polyfit(x, y, 1), x))


def _autocorrelation(wave: Array) -> Array:
    """How alike the wave is to itself, by how far it is shifted; 1 for not at all."""
    size = len(wave)
    power = np.abs(np.fft.rfft(wave, 2 * size)) ** 2
    same = np.fft.irfft(power)[:size] / np.arange(size, 0, -1)
    return np.asarray(same / max(same[0], 1e-9))


def _first_peak(same: Array, lags: Array, width: float) -> float | None:
    """The first shift at which the wave is as alike as anywhere, within 20 %; None where nowhere."""
    inside = (lags >= PITCHES[0]) & (lags <= min(PITCHES[1], width / _FEWEST))
    places = [
        n for n in np.flatnonzero(inside) if 0 < n < len(same) - 1 and same[n - 1] < same[n] >= same[n + 1]
    ]
    best = max((same[n] for n in places), default=0.0)
    if best < SURE:
        return None
    n = next(n for n in places if same[n] >= 0.8 * best)
    return float(lags[n])


def _spectrum(x: Array, wave: Array, often: Array) -> Array:
    """How much of the wave goes so often a mm; its angle is that of the crest nearest to x = 0."""
    window = np.hanning(len(x))
    return np.asarray(np.exp(2j * math.pi * np.outer(often, x)) @ (wave * window))


def _on_crests(lines: Lines, pitch: float, phase: float, upper: tuple[Array, Array]) -> Lines:
    """The crest lines on the first and the last crest of the upper edge between those that were drawn; none stands
    where the thread has ended already.
    """
    left, right = sorted((lines.crest_1, lines.crest_2))
    places = np.arange(phase + math.ceil((left - phase) / pitch) * pitch, right + 1e-9, pitch)
    if len(places) < _FEWEST:
        raise LinkError(Problem("crests", None, Message("measure-no-crests")))
    line = min(lines.edge_1, lines.edge_2)
    off = [abs(np.median(upper[1][np.abs(upper[0] - place) <= pitch / 8]) - line) for place in places]
    there = np.flatnonzero(np.array(off) < _OFF_CREST * pitch)
    ends = (there[0], there[-1]) if len(there) >= _FEWEST else (0, len(places) - 1)
    return replace(
        lines,
        crest_1=float(places[ends[0]]),
        crest_2=float(places[ends[1]]),
        threads=int(ends[1] - ends[0]),
    )
