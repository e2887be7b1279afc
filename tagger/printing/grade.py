"""Print-quality grade of a QR symbol from an image, by the parameters of ISO/IEC 15415.

Computed: decode, symbol contrast, modulation, fixed-pattern damage, axial and grid non-uniformity,
unused error correction; the symbol's grade is the lowest. Not a verifier: a picture has no
calibrated reflectance, so white is taken as 100 % and black as 0 %.

Limits: symbol contrast, modulation and unused error correction as a public verifier manual prints
them; axial and grid non-uniformity from memory, agreeing with a public digest of the standard where
that gives a figure; fixed-pattern damage from memory (ISO/IEC 18004, annex on print quality).
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
import numpy.typing as npt
import zxingcpp
from PIL import Image

from tagger.code.symbol import Modules, Symbol, codeword_blocks, codeword_of_module, qr
from tagger.errors import Problem, SymbolError
from tagger.messages import Message
from tagger.printing.plane import mapped, projective
from tagger.printing.readers import Grey, grey

LETTERS = "FDCBA"  # by grade 0 to 4
_CONTRAST = (0.20, 0.40, 0.55, 0.70)
_MODULATION = (0.20, 0.30, 0.40, 0.50)
_UNUSED = (0.25, 0.37, 0.50, 0.62)
_AXIAL = (0.12, 0.10, 0.08, 0.06)
_GRID = (0.75, 0.63, 0.50, 0.38)
_APERTURE = 0.8  # of a module

Floats = npt.NDArray[np.float64]


@dataclass(frozen=True)
class Parameter:
    """One parameter: its value (a share, or modules) and its grade from 4 down to 0."""

    name: str
    value: float
    grade: int

    @property
    def letter(self) -> str:
        return LETTERS[self.grade]


@dataclass(frozen=True)
class Grade:
    """The grade of one symbol."""

    text: str
    version: int
    level: str
    parameters: tuple[Parameter, ...]

    @property
    def grade(self) -> int:
        return min(parameter.grade for parameter in self.parameters)

    @property
    def letter(self) -> str:
        return LETTERS[self.grade]

    def as_dict(self) -> dict[str, object]:
        """As plain JSON values."""
        parts = {p.name: {"value": round(p.value, 3), "grade": p.letter} for p in self.parameters}
        return {"grade": self.letter, "version": self.version, "level": self.level, "parameters": parts}


def grade(image: Image.Image | Grey) -> Grade:
    """The grade of the worst QR symbol in an image; raises SymbolError where none can be read."""
    return min(grades(image), key=lambda one: one.grade)


def grades(image: Image.Image | Grey) -> list[Grade]:
    """The grades of all QR symbols in an image; raises SymbolError where none can be read."""
    levels = grey(image)
    levels = np.pad(levels, max(8, min(levels.shape) // 20), constant_values=int(levels.max()))
    formats = zxingcpp.BarcodeFormats(zxingcpp.BarcodeFormat.QRCode)
    found = zxingcpp.read_barcodes(levels, formats=formats)
    if not found:
        raise SymbolError(Problem("image", None, Message("printing-grade-none")))
    return [_grade(levels.astype(float) / 255, barcode) for barcode in found]


def _grade(image: Floats, barcode: zxingcpp.Barcode) -> Grade:
    details: dict[str, str] = dict(barcode.extra)  # type: ignore[call-overload]
    version, mask = int(details["Version"]), int(details["DataMask"])
    symbol = qr(barcode.text, barcode.ec_level, version=version, mask=mask)
    grid, axial, uneven = _fitted_grid(image, _corners(barcode), symbol)
    reflectance = _sampled(image, grid, symbol.size)
    expected = np.pad(symbol.modules, symbol.quiet)
    high, low = float(reflectance.max()), float(reflectance.min())
    contrast, threshold = high - low, (high + low) / 2
    inside = reflectance[4:-4, 4:-4]
    wrong = (inside < threshold) != symbol.modules
    parameters = (
        Parameter("decode", 1.0, 4),
        Parameter("symbol contrast", contrast, _at_least(contrast, _CONTRAST)),
        _modulation(inside, wrong, threshold, contrast, symbol),
        _fixed_patterns((reflectance < threshold) != expected, symbol),
        Parameter("axial non-uniformity", axial, _at_most(axial, _AXIAL)),
        Parameter("grid non-uniformity", uneven, _at_most(uneven, _GRID)),
        _unused(wrong, symbol),
    )
    return Grade(symbol.text, symbol.version, symbol.level, parameters)


def _at_least(value: float, limits: tuple[float, ...]) -> int:
    return sum(value >= limit for limit in limits)


def _at_most(value: float, limits: tuple[float, ...]) -> int:
    return sum(value <= limit for limit in limits)


# Finding the modules ------------------------------------------------------------------------


def _corners(barcode: zxingcpp.Barcode) -> Floats:
    """Outer corners as the reader gives them: top left, top right, bottom right, bottom left."""
    where = barcode.position
    points = (where.top_left, where.top_right, where.bottom_right, where.bottom_left)
    return np.array([(point.x, point.y) for point in points], dtype=float)


def _pixel(image: Floats, points: Floats) -> Floats:
    """Grey levels at points (x, y), between pixels by straight lines."""
    x = np.clip(points[..., 0] - 0.5, 0, image.shape[1] - 1.001)
    y = np.clip(points[..., 1] - 0.5, 0, image.shape[0] - 1.001)
    left, top = x.astype(int), y.astype(int)
    fx, fy = x - left, y - top
    upper = image[top, left] * (1 - fx) + image[top, left + 1] * fx
    lower = image[top + 1, left] * (1 - fx) + image[top + 1, left + 1] * fx
    between: Floats = upper * (1 - fy) + lower * fy
    return between


def _sampled(image: Floats, matrix: Floats, size: int) -> Floats:
    """Mean reflectance in the aperture of every module, quiet zone included."""
    centres = np.stack(np.meshgrid(np.arange(-4, size + 4) + 0.5, np.arange(-4, size + 4) + 0.5), axis=-1)
    reach = _APERTURE / 2
    offsets = [
        (dx, dy)
        for dx in np.linspace(-reach, reach, 7)
        for dy in np.linspace(-reach, reach, 7)
        if dx * dx + dy * dy <= reach * reach + 1e-9
    ]
    samples = [_pixel(image, mapped(matrix, centres + np.array(offset))) for offset in offsets]
    mean: Floats = np.mean(samples, axis=0)
    return mean


def _fitted_grid(image: Floats, corners: Floats, symbol: Symbol) -> tuple[Floats, float, float]:
    """(map from modules to pixels, axial non-uniformity, grid non-uniformity), from the edges themselves."""
    square = np.array([(0, 0), (1, 0), (1, 1), (0, 1)], dtype=float) * symbol.size
    matrix = projective(square, corners)
    for _ in range(2):
        grid, seen = _edges(image, matrix, symbol.modules)
        matrix = projective(grid, seen)
    grid, seen = _edges(image, matrix, symbol.modules)
    across = mapped(matrix, np.array([[0.0, symbol.size / 2], [symbol.size, symbol.size / 2]]))
    down = mapped(matrix, np.array([[symbol.size / 2, 0.0], [symbol.size / 2, symbol.size]]))
    x, y = (float(np.linalg.norm(ends[1] - ends[0])) / symbol.size for ends in (across, down))
    return matrix, abs(x - y) / ((x + y) / 2), _unevenness(grid, seen, matrix, symbol.size, (x + y) / 2)


def _edges(image: Floats, matrix: Floats, modules: Modules) -> tuple[Floats, Floats]:
    """Where neighbouring modules differ: (place on the grid, place in the image) of each edge found."""
    grids, places = [], []
    for axis in (0, 1):
        change = np.argwhere(
            modules[:, 1:] != modules[:, :-1] if axis == 0 else (modules[1:] != modules[:-1]).T
        )
        line, step = change[:, 0] + 0.5, change[:, 1] + 1.0
        reach = np.linspace(-0.6, 0.6, 25)
        along = step[:, None] + reach
        aside = np.broadcast_to(line[:, None], along.shape)
        points = np.stack([along, aside] if axis == 0 else [aside, along], axis=-1)
        profile = _pixel(image, mapped(matrix, points))
        ends = (profile[:, 0] + profile[:, -1]) / 2
        dark_after = profile[:, -1] < profile[:, 0]
        over = np.where(dark_after[:, None], profile < ends[:, None], profile > ends[:, None])
        first = np.argmax(over, axis=1)
        clear = (np.abs(profile[:, 0] - profile[:, -1]) > 0.2) & (first > 0)
        rows = np.arange(len(first))
        before, after = profile[rows, first - 1], profile[rows, first]
        share = (ends - before) / np.where(after == before, 1.0, after - before)
        found = reach[first - 1] + share * (reach[1] - reach[0])
        at = step + found
        exact = np.stack([at, line] if axis == 0 else [line, at], axis=-1)[clear]
        nominal = np.stack([step, line] if axis == 0 else [line, step], axis=-1)[clear]
        grids.append(nominal)
        places.append(mapped(matrix, exact))
    return np.concatenate(grids), np.concatenate(places)


def _unevenness(grid: Floats, seen: Floats, matrix: Floats, size: int, module: float) -> float:
    """The largest distance of a part of the grid from where an even grid has it, in modules.

    Edges are averaged over patches of a few modules, so that ink that spreads (dark grows on both
    sides alike) does not count as unevenness.
    """
    off = (seen - mapped(matrix, grid)) / module
    patches = 6
    cell = np.minimum((grid / size * patches).astype(int), patches - 1)
    index = cell[:, 0] * patches + cell[:, 1]
    count = np.bincount(index, minlength=patches**2)
    sums = [np.bincount(index, weights=off[:, axis], minlength=patches**2) for axis in (0, 1)]
    enough = count >= 6
    mean = np.stack(sums, axis=1)[enough] / count[enough][:, None]
    return float(np.linalg.norm(mean, axis=1).max()) if len(mean) else 0.0


# Grading ------------------------------------------------------------------------------------


def _spoilt_share(bad: Modules, symbol: Symbol) -> float:
    """Unused error correction, the least of all blocks, if these modules were misread."""
    codewords = codeword_of_module(symbol.version)
    blocks, restores = codeword_blocks(symbol.version, symbol.level)
    hit = np.zeros(len(blocks), dtype=bool)
    touched = codewords[bad & (codewords >= 0)]
    hit[touched[touched < len(blocks)]] = True
    errors = np.bincount(blocks[hit], minlength=len(restores))
    return float((1 - errors / restores).min())


def _unused(wrong: Modules, symbol: Symbol) -> Parameter:
    unused = _spoilt_share(wrong, symbol)
    return Parameter("unused error correction", unused, _at_least(unused, _UNUSED))


def _modulation(
    inside: Floats, wrong: Modules, threshold: float, contrast: float, symbol: Symbol
) -> Parameter:
    """The highest grade at which the modules below it could still all be misread."""
    each = np.where(wrong, 0.0, 2 * np.abs(inside - threshold) / contrast)
    best = 0
    for level, limit in enumerate(_MODULATION, 1):
        unused = _at_least(_spoilt_share(each < limit, symbol), _UNUSED)
        best = max(best, min(level, unused))
    return Parameter("modulation", float(each.min()), best)


def _fixed_patterns(wrong: Modules, symbol: Symbol) -> Parameter:
    """Finder patterns with their quiet zones: 0, 1, 2, 3 wrong modules are 4, 3, 2, 1; then timing
    and alignment patterns by the share that is wrong."""
    size, full = symbol.size, symbol.full_size
    corner = 7 + 4 + 1
    finders = (wrong[:corner, :corner], wrong[:corner, full - corner :], wrong[full - corner :, :corner])
    grades = [max(0, 4 - int(part.sum())) for part in finders]
    data = codeword_of_module(symbol.version) >= 0
    rest = ~data
    for rows, columns in (
        (slice(0, 9), slice(0, 9)),
        (slice(0, 9), slice(size - 8, size)),
        (slice(size - 8, size), slice(0, 9)),
    ):
        rest[rows, columns] = False
    share = float(wrong[4:-4, 4:-4][rest].mean()) if rest.any() else 0.0
    grades.append(_at_most(share, (0.14, 0.11, 0.07, 0.0)))
    return Parameter("fixed pattern damage", share, min(grades))
