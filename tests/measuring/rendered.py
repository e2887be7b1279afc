"""Photos with known truth: an end of the tables beside the scale card, as a pinhole camera sees them.

The end is points on its surface, each projected by the camera: the thread as a helix of flats and flanks, behind it the
hexagon or ring that it may rest on, before it a smooth nose. The camera has a tilt, a focal length, a little barrel
distortion, blur, noise, uneven light, and JPEG's losses. Nothing of ``tagger.measuring`` but the card's drawing is used.
"""

from __future__ import annotations

import io
import math
from dataclasses import dataclass
from functools import cache

import numpy as np
import numpy.typing as npt
from PIL import Image, ImageDraw, ImageFilter

from tagger.measuring import card

Array = npt.NDArray[np.float64]
Picture = npt.NDArray[np.float32]
DPMM = 20  # of the card's print
_PARTS = 3  # of a pixel, in each direction, in which the end is drawn
_STEP = 0.036  # mm from point to point of its surface: no part of a pixel is left out


@dataclass(frozen=True)
class Scene:
    """What lies there and how it is taken. Lengths in mm, angles in degrees, brightness 0 to 255."""

    diameter: float = 26.7
    pitch: float = 2.117
    flank: float = 60.0
    length: float = 18.0
    rest: float | None = None  # across the hexagon's flats, where that touches the table
    x: float = 40.0  # where the thread begins, mm of the card
    gap: float = 6.0  # between the card's lower edge and the nearest edge of the part
    turn: float = 0.0  # of its axis from the card's edge
    camera: tuple[float, float, float] = (62.0, 75.0, 260.0)
    aim: tuple[float, float] = (60.0, 80.0)
    roll: float = 0.0
    film: float = 26.0
    told: bool = True
    size: tuple[int, int] = (2000, 1500)
    table: float = 205.0
    metal: float = 130.0
    light: float = 0.3  # how uneven
    blur: float = 1.0
    noise: float = 3.0
    barrel: float = 0.0
    quality: int = 85
    print_scale: float = 1.0
    seed: int = 1


@cache
def printed() -> Image.Image:
    """The card as it comes from the printer."""
    side = (round(card.WIDTH * DPMM), round(card.HEIGHT * DPMM))
    sheet = Image.new("L", side, 245)
    pen = ImageDraw.Draw(sheet)
    for corner, (x, y) in card.CORNERS.items():
        for row, line in enumerate(card.symbol(corner).modules):
            for column, dark in enumerate(line):
                if dark:
                    left, top = (x + column) * DPMM, (y + row) * DPMM
                    pen.rectangle((left, top, left + DPMM - 1, top + DPMM - 1), fill=25)
    (x, y), length = card.CHECK_FROM, card.CHECK_LINE
    pen.line((x * DPMM, y * DPMM, (x + length) * DPMM, y * DPMM), fill=25, width=6)
    return sheet


def _look(scene: Scene) -> tuple[Array, Array, float]:
    """Rotation (rows: right, down, forward) and place of the camera in mm (z up is negative), focal length in px."""
    place = np.array([scene.camera[0], scene.camera[1], -scene.camera[2]])
    forward = np.array([scene.aim[0], scene.aim[1], 0.0]) - place
    forward /= np.linalg.norm(forward)
    up = np.array([math.sin(math.radians(scene.roll)), -math.cos(math.radians(scene.roll)), 0.0])
    right = np.cross(forward, up)
    right /= np.linalg.norm(right)
    down = np.cross(forward, right)
    return np.stack((right, down, forward)), place, scene.film / 43.27 * math.hypot(*scene.size)


def project(scene: Scene, points: Array) -> tuple[Array, Array]:
    """Points in mm (x, y of the card, z up) as px of the photo, and how far away they are."""
    turn, place, focal = _look(scene)
    seen = (points * (1, 1, -1) - place) @ turn.T
    flat = seen[:, :2] / seen[:, 2:]
    radius = (flat**2).sum(axis=1, keepdims=True)
    flat = flat * (1 - scene.barrel * radius)
    return flat * focal + np.array(scene.size) / 2, seen[:, 2]


def profile(scene: Scene, phase: Array) -> Array:
    """The thread's radius at a phase of 0 to 1 along one pitch: a flat crest, straight flanks, a flat root."""
    depth = 0.6134 * scene.pitch if scene.flank == 60 else 0.6403 * scene.pitch
    crest, root = (0.125, 0.25) if scene.flank == 60 else (0.16, 0.16)
    rise = np.clip((np.abs(phase - 0.5) - crest / 2) / (0.5 - crest / 2 - root / 2), 0, 1)
    return np.asarray(scene.diameter / 2 - depth * rise)


def axis(scene: Scene) -> tuple[float, float]:
    """y of the axis where the thread begins, and its height, both in mm."""
    height = (scene.rest or scene.diameter) / 2
    widest = scene.rest / math.sqrt(3) if scene.rest else scene.diameter / 2
    return card.HEIGHT * scene.print_scale + scene.gap + widest, height


def _part(scene: Scene) -> tuple[Array, Array]:
    """Points of the end and their brightness."""
    rng = np.random.default_rng(scene.seed)
    y0, height = axis(scene)
    light = np.array([0.35, -0.45, 0.82])
    pieces, shades = [], []

    def add(s: Array, angle: Array, radius: Array, normal: Array, tone: float) -> None:
        """``s`` along the axis; angle round it from the table upwards; the normal as (along, outward)."""
        across, up = np.cos(angle) * radius, np.sin(angle) * radius
        out = np.stack((normal[0], np.cos(angle) * normal[1], np.sin(angle) * normal[1]), axis=-1)
        facing = out @ light
        shine = np.clip(facing, 0, 1) ** 12 * 90
        pieces.append(np.stack((s, across, up + height), axis=-1).reshape(-1, 3))
        shades.append((tone * (0.35 + 0.65 * np.clip(facing, 0, 1)) + shine).ravel())

    step = _STEP
    angles = np.arange(-0.6, math.pi + 0.6, step / (scene.diameter / 2))
    s = np.arange(0, scene.length, step)
    along, round_ = np.meshgrid(s, angles)
    phase = (along / scene.pitch + round_ / (2 * math.pi)) % 1
    radius = profile(scene, phase)
    slope = (profile(scene, (phase + 0.02) % 1) - profile(scene, (phase - 0.02) % 1)) / (0.04 * scene.pitch)
    size = np.sqrt(1 + slope**2)
    add(along, round_, radius, np.stack((-slope / size, 1 / size)), scene.metal)
    nose = np.arange(-0.35 * scene.diameter, 0, step)  # a smooth cone before the thread
    along, round_ = np.meshgrid(nose, angles)
    add(
        along,
        round_,
        scene.diameter * (0.44 + 0.35 * along / scene.diameter),
        np.stack((0 * along, 1 + 0 * along)),
        scene.metal,
    )
    flats = (scene.rest or 0.86 * scene.diameter) / 2  # a hexagon behind it, or a neck
    behind = np.arange(scene.length, scene.length + 12, step)
    along, round_ = np.meshgrid(behind, np.arange(-0.6, math.pi + 0.6, step / flats / 1.3))
    sixth = (round_ + math.pi / 6) % (math.pi / 3) - math.pi / 6  # a flat faces the table
    edge = flats / np.cos(sixth) if scene.rest else np.full_like(round_, flats)
    add(along, round_, edge, np.stack((0 * along, 1 + 0 * along)), scene.metal * 0.9)
    points, shade = np.concatenate(pieces), np.concatenate(shades)
    cos, sin = math.cos(math.radians(scene.turn)), math.sin(math.radians(scene.turn))
    x, y = points[:, 0].copy(), points[:, 1].copy()
    points[:, 0], points[:, 1] = scene.x + x * cos - y * sin, y0 + x * sin + y * cos
    return points, shade + rng.standard_normal(len(shade)) * 4


def take(scene: Scene, *, end: bool = True) -> bytes:
    """The photo as a JPEG file; without the end where only the card matters."""
    rng = np.random.default_rng(scene.seed)
    width, height = scene.size
    coarse = rng.normal(0, 1, (height // 40 + 2, width // 40 + 2)) * 6 + scene.table
    ground = Image.fromarray(np.clip(coarse, 0, 255).astype(np.uint8)).resize(
        scene.size, Image.Resampling.BICUBIC
    )
    picture = np.asarray(ground, dtype=np.float32).copy()
    _lay_card(scene, picture, printed())
    if end:
        _shadow(scene, picture)
        _lay_part(scene, picture)
    across, down = np.arange(width, dtype=np.float32), np.arange(height, dtype=np.float32)[:, None]
    picture *= 1 + scene.light * ((across / width - 0.5) + 0.5 * (down / height - 0.5))
    sharp = Image.fromarray(np.clip(picture, 0, 255).astype(np.uint8))
    soft = np.asarray(sharp.filter(ImageFilter.GaussianBlur(scene.blur)), dtype=np.float32)
    soft += rng.standard_normal(soft.shape, dtype=np.float32) * scene.noise
    out = io.BytesIO()
    image = Image.fromarray(np.clip(soft, 0, 255).astype(np.uint8))
    exif = Image.Exif()
    if scene.told:
        exif.get_ifd(0x8769)[0xA405] = round(scene.film)
    image.save(out, "JPEG", quality=scene.quality, exif=exif)
    return out.getvalue()


def _lay_card(scene: Scene, picture: Picture, sheet: Image.Image) -> None:
    """Every pixel that looks at the card has its brightness; distortion is undone to the first order."""
    turn, place, focal = _look(scene)
    corners = np.array([(x, y, 0.0) for x in (0, card.WIDTH) for y in (0, card.HEIGHT)]) * scene.print_scale
    px, _ = project(scene, corners)
    left, top = np.maximum(px.min(axis=0).astype(int) - 2, 0)
    right, bottom = np.minimum(px.max(axis=0).astype(int) + 3, scene.size)
    rows, columns = np.mgrid[top:bottom, left:right].astype(np.float32)
    x, y = (columns + 0.5 - scene.size[0] / 2) / focal, (rows + 0.5 - scene.size[1] / 2) / focal
    radius = x * x + y * y
    x, y = x * (1 + scene.barrel * radius), y * (1 + scene.barrel * radius)
    rays = [turn[0, n] * x + turn[1, n] * y + turn[2, n] for n in range(3)]
    far = -place[2] / rays[2]
    at_x = (place[0] + rays[0] * far) / scene.print_scale * DPMM
    at_y = (place[1] + rays[1] * far) / scene.print_scale * DPMM
    small = np.asarray(sheet.filter(ImageFilter.GaussianBlur(DPMM / 20)), dtype=np.float32)
    inside = (at_x >= 0) & (at_y >= 0) & (at_x < small.shape[1] - 1) & (at_y < small.shape[0] - 1)
    picture[top:bottom, left:right][inside] = small[at_y[inside].astype(int), at_x[inside].astype(int)]


def _shadow(scene: Scene, picture: Picture) -> None:
    """A soft dark patch on the table at the side away from the light."""
    y0, height = axis(scene)
    corners = [(-3.0, -0.2), (scene.length + 12, -0.2), (scene.length + 12, 1.25), (-3.0, 1.25)]
    cos, sin = math.cos(math.radians(scene.turn)), math.sin(math.radians(scene.turn))
    at = [(scene.x + s * cos - v * height * sin, y0 + s * sin + v * height * cos, 0.0) for s, v in corners]
    px, _ = project(scene, np.array(at))
    mask = Image.new("L", scene.size, 0)
    ImageDraw.Draw(mask).polygon([tuple(p) for p in px], fill=255)
    dark = np.asarray(mask.filter(ImageFilter.GaussianBlur(14)), dtype=np.float32) / 255
    picture *= 1 - 0.35 * dark


def _lay_part(scene: Scene, picture: Picture) -> None:
    """The points that are nearest to the camera, each on the ninth of a pixel that it falls on."""
    points, shade = _part(scene)
    px, far = project(scene, points)
    left, top = np.maximum(px.min(axis=0).astype(int) - 1, 0)
    right, bottom = np.minimum(px.max(axis=0).astype(int) + 2, scene.size)
    order = np.argsort(-far, kind="stable")
    columns, rows = ((px[order] - (left, top)) * _PARTS).astype(int).T
    fine = np.full(((bottom - top) * _PARTS, (right - left) * _PARTS), np.nan, dtype=np.float32)
    inside = (columns >= 0) & (rows >= 0) & (columns < fine.shape[1]) & (rows < fine.shape[0])
    fine[rows[inside], columns[inside]] = shade[order][inside]
    blocks = fine.reshape(bottom - top, _PARTS, right - left, _PARTS)
    share = (~np.isnan(blocks)).mean(axis=(1, 3))
    seen = np.nansum(blocks, axis=(1, 3)) / _PARTS**2
    picture[top:bottom, left:right] = picture[top:bottom, left:right] * (1 - share) + seen
