"""The scale card in a photo: from the photo's pixels to mm of the card, and where the camera stood.

zxing-cpp finds the symbols to a pixel; then every side of their modules is found in the photo to a fraction of one,
and a homography is fitted to them all by least squares. What they differ from it is the error of the card.

The camera's distance follows from the card's perspective once the focal length is known: from the photo's own record
(EXIF), else from the perspective itself together with what cameras of phones usually have (``ASSUMED_35``).
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import Final

import numpy as np
import zxingcpp
from PIL import Image

from tagger.errors import LinkError, Problem
from tagger.measuring import card
from tagger.measuring.card import Array
from tagger.messages import Message

LEAST_SYMBOLS: Final = 3
LEAST_PX: Final = 4  # px a mm of the card, below which the pitch of a thread is not seen
MOST_RESIDUAL: Final = 0.06  # mm rms: beyond, the card is not flat or the photo not sharp
MOST_SLANT: Final = 40  # degrees from straight above
ASSUMED_35: Final = (26.0, 0.15)
"""Focal length as of a 35 mm film, and how far it may be off as a share: an assumption, where the photo says nothing."""
_TOLD = 0.04  # share by which a focal length that the photo names may be off
_FORMATS = zxingcpp.BarcodeFormats((zxingcpp.BarcodeFormat.QRCode,))
_EXIF, _FOCAL_35 = 0x8769, 0xA405  # the tags of EXIF 2.3: FocalLengthIn35mmFilm
_FILM = 43.27  # mm, the diagonal of a 35 mm film's picture, which such a focal length is told by
_REACH, _STEPS = 0.9, 25  # modules looked at on either side of an edge, and in how many steps
_LEAST_FITTING = 0.7  # of the modules' sides: a bent card has them elsewhere
_TRUST = 3.0  # errors of the edges are not independent: their covariance is taken so many times as wide
_LENS = 0.004  # share by which a lens may draw the card out of square


@dataclass(frozen=True)
class Camera:
    """Where the camera stood, mm of the card (z above it), and how sure its height is (one standard deviation)."""

    x: float
    y: float
    z: float
    z_sd: float


@dataclass(frozen=True, eq=False)
class Sight:
    """A card in a photo. ``to_card``: 3 x 3, from pixels to mm of the card as drawn; ``residual``: mm rms."""

    to_card: Array
    camera: Camera
    residual: float
    symbols: tuple[str, ...]
    focal_told: bool
    px_per_mm: float

    def at(self, pixels: Array) -> Array:
        """Pixels as mm of the card; n x 2."""
        return project(self.to_card, pixels)


def find(photo: Image.Image) -> Sight:
    """The one card in a photo in shades of grey. Raises LinkError with what to do where there is none to be used."""
    seen = _symbols(photo)
    try:
        return _found(photo, seen)
    except (
        np.linalg.LinAlgError,
        IndexError,
        ValueError,
    ):  # symbols that somebody has laid as no card has them
        raise LinkError(Problem("photo", None, Message("measure-not-flat"))) from None


def _found(photo: Image.Image, seen: dict[str, Array]) -> Sight:
    grey = np.asarray(photo)
    size = np.array(photo.size, dtype=float)
    rough = _fit_corners(seen, size)
    points, axes, wanted = _found_edges(grey, rough, tuple(seen))
    to_card, residual, covariance, fitting = _fit_edges(points, axes, wanted, size)
    px_per_mm = _px_per_mm(to_card)
    if residual > MOST_RESIDUAL or fitting < _LEAST_FITTING:
        raise LinkError(Problem("photo", None, Message("measure-not-flat")))
    focal, spread, told = _focal(photo)
    camera = _camera(to_card, covariance, size, focal, spread)
    slant = math.degrees(
        math.atan2(math.hypot(camera.x - card.WIDTH / 2, camera.y - card.HEIGHT / 2), camera.z)
    )
    if slant > MOST_SLANT:
        raise LinkError(
            Problem("photo", None, Message("measure-slanted", degrees=round(slant), most=MOST_SLANT))
        )
    if px_per_mm < LEAST_PX:
        raise LinkError(
            Problem("photo", None, Message("measure-too-far", least=LEAST_PX, found=round(px_per_mm, 1)))
        )
    return Sight(to_card, camera, residual, tuple(seen), told, px_per_mm)


def _inverse(matrix: Array) -> Array:
    return np.asarray(np.linalg.inv(matrix), dtype=np.float64)


def project(matrix: Array, points: Array) -> Array:
    """Points through a homography; n x 2."""
    out = np.column_stack((points, np.ones(len(points)))) @ matrix.T
    return np.asarray(out[:, :2] / out[:, 2:])


def _symbols(photo: Image.Image) -> dict[str, Array]:
    """The corners in px of each symbol of the card, upper left first. Raises LinkError."""
    found: dict[str, Array] = {}
    other = 0
    for one in zxingcpp.read_barcodes(photo, formats=_FORMATS):
        corner, at = card.corner_of(one.text), one.position
        if corner is None:
            other += 1
            continue
        if corner in found:
            raise LinkError(Problem("photo", None, Message("measure-two-cards")))
        points = (at.top_left, at.top_right, at.bottom_right, at.bottom_left)
        found[corner] = np.array([(p.x, p.y) for p in points], dtype=float)
    if len(found) < LEAST_SYMBOLS:
        if not found:
            raise LinkError(
                Problem("photo", None, Message("measure-other-code" if other else "measure-no-card"))
            )
        raise LinkError(
            Problem("photo", None, Message("measure-few-symbols", found=len(found), least=LEAST_SYMBOLS))
        )
    return found


def _fit_corners(seen: dict[str, Array], size: Array) -> Array:
    """The homography of the symbols' corners, px to mm."""
    points = np.concatenate(list(seen.values()))
    wanted = np.concatenate([card.outline(corner) for corner in seen])
    twice = np.repeat(points, 2, axis=0)
    axes = np.tile([0, 1], len(points))
    matrix, residual, _, _ = _fit_edges(twice, axes, wanted.ravel(), size)
    if np.linalg.det(matrix) < 0:
        raise LinkError(Problem("photo", None, Message("measure-mirrored")))
    if residual > 1.0:  # mm: the symbols are not those of one flat card
        raise LinkError(Problem("photo", None, Message("measure-not-flat")))
    return matrix


def _found_edges(grey: Array, rough: Array, corners: tuple[str, ...]) -> tuple[Array, Array, Array]:
    """Where the sides of modules are: their pixels, the axis along which each was crossed, and its mm on that axis."""
    to_photo = _inverse(rough)
    parts = [card.edges(corner) for corner in corners]
    places, axes, turns = (np.concatenate(part) for part in zip(*parts, strict=True))
    offsets = np.linspace(-_REACH, _REACH, _STEPS) * card.MODULE
    along = places[:, None, :] + offsets[None, :, None] * np.eye(2)[axes][:, None, :]
    light = _bilinear(grey, project(to_photo, along.reshape(-1, 2))).reshape(len(places), _STEPS)
    rise = np.diff(light, axis=1) * turns[:, None]
    middle = (offsets[1:] + offsets[:-1]) / 2
    near = np.exp(-0.5 * (middle / (0.3 * card.MODULE)) ** 2)  # the next side lies a module away
    weight = np.clip(rise, 0, None) * near
    total = weight.sum(axis=1)
    clear = total > 0.25 * np.median(total)
    shift = (weight @ middle)[clear] / total[clear]
    shift = _recentred(rise[clear], middle, shift)
    at = places[clear] + shift[:, None] * np.eye(2)[axes[clear]]
    return project(to_photo, at), axes[clear], places[clear][np.arange(clear.sum()), axes[clear]]


def _recentred(rise: Array, middle: Array, shift: Array) -> Array:
    """The middles of the rises again, each looked at around where it was found: the window pulls no more."""
    for _ in range(3):
        near = np.exp(-0.5 * ((middle[None, :] - shift[:, None]) / (0.3 * card.MODULE)) ** 2)
        weight = np.clip(rise, 0, None) * near
        shift = (weight * middle).sum(axis=1) / np.maximum(weight.sum(axis=1), 1e-9)
    return shift


def _bilinear(grey: Array, at: Array) -> Array:
    """Brightness at fractions of pixels; the photo's margin goes on beyond it. Pixel 0 has its middle at 0.5."""
    height, width = grey.shape
    x = np.clip(at[:, 0] - 0.5, 0, width - 1.001)
    y = np.clip(at[:, 1] - 0.5, 0, height - 1.001)
    left, top = x.astype(int), y.astype(int)
    fx, fy = x - left, y - top
    upper = grey[top, left] * (1 - fx) + grey[top, left + 1] * fx
    lower = grey[top + 1, left] * (1 - fx) + grey[top + 1, left + 1] * fx
    return np.asarray(upper * (1 - fy) + lower * fy)


def _fit_edges(points: Array, axes: Array, wanted: Array, size: Array) -> tuple[Array, float, Array, float]:
    """Pixels to mm by least squares, where of each point one coordinate is known: the matrix, the residual in mm
    rms, the covariance of the matrix's nine figures as they are returned, and the share of the points that fit, of
    the axis where they fit worse.

    What is far off (a hidden module, glare) is left out in a second and a third round.
    """
    into, out = _unit(size), np.array([[60.0, 0, 60.0], [0, 60.0, 40.0], [0, 0, 1.0]])
    p = project(into, points)
    middle = np.array([60.0, 40.0])[axes]
    value = (wanted - middle) / 60.0
    kept = np.ones(len(p), dtype=bool)
    weight = np.ones(len(p))
    matrix, off, rows = np.eye(3), np.zeros(len(p)), np.zeros((len(p), 9))
    for _ in range(4):
        rows = _rows(p, axes, value) * weight[:, None]
        matrix = np.linalg.svd(rows[kept], full_matrices=False)[2][-1].reshape(3, 3)
        matrix = matrix / np.linalg.norm(matrix) * np.sign(matrix[2, 2] or 1.0)
        depth = np.column_stack((p, np.ones(len(p)))) @ matrix[2]
        weight = 1 / depth
        off = project(matrix, p)[np.arange(len(p)), axes] - value
        kept = np.abs(off) <= max(3.5 * 1.4826 * float(np.median(np.abs(off))), 1e-4)
    residual = float(np.sqrt(np.mean(off[kept] ** 2)))
    spread = np.linalg.pinv(rows[kept].T @ rows[kept], rcond=1e-12) * residual**2
    whole = out @ matrix @ into
    change = np.kron(out, into.T)  # vec of out @ M @ into, row by row
    fitting = min(float(kept[axes == axis].mean()) for axis in (0, 1))
    return whole, residual * 60.0, change @ spread @ change.T, fitting


def _rows(p: Array, axes: Array, value: Array) -> Array:
    """A line of the equations for each point: (row of its axis) . p = value x (last row) . p."""
    ones = np.column_stack((p, np.ones(len(p))))
    rows = np.zeros((len(p), 9))
    for axis in (0, 1):
        rows[axes == axis, 3 * axis : 3 * axis + 3] = ones[axes == axis]
    rows[:, 6:] = -value[:, None] * ones
    return rows


def _unit(size: Array) -> Array:
    """Pixels to the middle of the photo and shares of its long side."""
    long = float(size.max())
    return np.array([[1 / long, 0, -size[0] / 2 / long], [0, 1 / long, -size[1] / 2 / long], [0, 0, 1.0]])


def _px_per_mm(to_card: Array) -> float:
    """Pixels a mm at the card's lower edge, the lesser of both directions."""
    at = np.array([[60.0, 80.0], [61.0, 80.0], [60.0, 81.0]])
    px = project(_inverse(to_card), at)
    return float(min(np.linalg.norm(px[1] - px[0]), np.linalg.norm(px[2] - px[0])))


def _focal(photo: Image.Image) -> tuple[float, float, bool]:
    """The focal length in long sides of the photo, the share by which it may be off, and whether the photo told it."""
    try:
        film = float(photo.getexif().get_ifd(_EXIF).get(_FOCAL_35, 0))
    except Exception:  # a stranger's file: what stands there may be anything
        film = 0.0
    per_mm = math.hypot(*photo.size) / max(photo.size) / _FILM
    if 12 <= film <= 200:
        return film * per_mm, _TOLD, True
    return ASSUMED_35[0] * per_mm, ASSUMED_35[1], False


def _camera(to_card: Array, covariance: Array, size: Array, focal: float, spread: float) -> Camera:
    """The camera's place: of every focal length as likely as the photo's perspective and ``focal`` make it."""
    lengths = focal * np.exp(np.linspace(-4, 4, 161) * spread)
    wrong = np.array([_square_error(to_card, covariance, size, f) for f in lengths])
    chance = np.exp(-0.5 * (wrong - wrong.min()) - 0.5 * (np.log(lengths / focal) / spread) ** 2)
    chance /= chance.sum()
    places = np.array([_place(to_card, size, f) for f in lengths])
    mean = chance @ places
    sd = math.sqrt(float(chance @ (places[:, 2] - mean[2]) ** 2))
    return Camera(float(mean[0]), float(mean[1]), float(mean[2]), sd)


def _columns(to_card: Array, size: Array, focal: float) -> Array:
    """The card's axes and origin as the camera sees them, to a common factor: 3 x 3."""
    seen = np.diag([1 / focal, 1 / focal, 1.0]) @ _unit(size) @ _inverse(to_card)
    return np.asarray(seen * np.sign(seen[2, 2]))


def _unsquare(to_card: Array, size: Array, focal: float) -> Array:
    """How far the card's axes are from being square to each other and equally long."""
    a, b, _ = _columns(to_card, size, focal).T
    both = (a @ a + b @ b) / 2
    return np.asarray(np.array([a @ b, (a @ a - b @ b) / 2]) / both)


def _square_error(to_card: Array, covariance: Array, size: Array, focal: float) -> float:
    """The square of that in its own standard deviations."""
    wrong = _unsquare(to_card, size, focal)
    slope = np.zeros((2, 9))
    for n in range(9):
        step = np.zeros(9)
        step[n] = max(abs(to_card.flat[n]), 1e-9) * 1e-6
        slope[:, n] = (_unsquare(to_card + step.reshape(3, 3), size, focal) - wrong) / step[n]
    spread = slope @ covariance @ slope.T * _TRUST**2 + np.eye(2) * _LENS**2
    return float(wrong @ np.linalg.solve(spread, wrong))


def _place(to_card: Array, size: Array, focal: float) -> Array:
    """The camera in mm of the card, z above it."""
    a, b, origin = _columns(to_card, size, focal).T
    scale = (np.linalg.norm(a) + np.linalg.norm(b)) / 2
    a, b, origin = a / scale, b / scale, origin / scale
    c = np.cross(a, b)
    place = -np.linalg.solve(np.column_stack((a, b, c)), origin)
    return np.array([place[0], place[1], -place[2]])
