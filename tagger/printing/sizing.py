"""How large a symbol can be: whole printer dots a module, and the most error correction that fits."""

from __future__ import annotations

from dataclasses import dataclass
from functools import lru_cache

from tagger.code.symbol import CODE128_QUIET, QR_QUIET, version_for

LEAST_DOTS = 3  # fewer printer dots a module leave no room for ink or heat that spreads
LEAST_DOTS_BAR = 2
GROWS_TO = 9  # from version 10 on one of three readers gets worse, and length fields grow


def dot_mm(dpi: int) -> float:
    """Side of one printer dot in mm."""
    return 25.4 / dpi


@lru_cache(maxsize=1024)  # the boxes of a template stand where they stand
def snap(mm: float, dpi: int) -> float:
    """The nearest dot edge."""
    return round(mm / dot_mm(dpi)) * dot_mm(dpi)


@dataclass(frozen=True, slots=True)
class QrSize:
    """A QR symbol as it will stand on paper; ``side_mm`` includes the quiet zone."""

    level: str
    version: int
    dots: int
    dpi: int

    @property
    def module_mm(self) -> float:
        return self.dots * dot_mm(self.dpi)

    @property
    def modules(self) -> int:
        """Modules across, quiet zone included."""
        return 4 * self.version + 17 + 2 * QR_QUIET

    @property
    def side_mm(self) -> float:
        return self.modules * self.module_mm


@lru_cache(maxsize=64)  # a label's symbols are sized by one another
def qr_size(
    text: str, side_mm: float, levels: tuple[str, ...], least_module_mm: float, dpi: int, *, grow: bool = True
) -> QrSize | None:
    """The highest level whose modules keep ``least_module_mm`` and 3 dots, at the largest module,
    then, with ``grow``, the largest version that fits at that module.

    ``levels`` from the one liked best; None where none fits in ``side_mm``.
    """
    for level in levels:
        version = _version(text, level)
        dots = int((side_mm + 0.02) / dot_mm(dpi) / (4 * version + 17 + 2 * QR_QUIET))
        if dots >= LEAST_DOTS and dots * dot_mm(dpi) >= least_module_mm - 0.002:
            return QrSize(level, _grown(version, dots, side_mm, dpi) if grow else version, dots, dpi)
    return None


def _grown(version: int, dots: int, side_mm: float, dpi: int) -> int:
    """The largest version that still fits at the same module: room that would else stay white.

    More codewords spread the same wound thinner: label_templates/README.md has what was measured.
    """
    while (
        version < GROWS_TO and (4 * (version + 1) + 17 + 2 * QR_QUIET) * dots * dot_mm(dpi) <= side_mm + 0.02
    ):
        version += 1
    return version


def least_side_mm(text: str, level: str, least_module_mm: float, dpi: int) -> float:
    """The smallest side, quiet zone included, at which ``qr_size`` accepts this level."""
    dots = max(LEAST_DOTS, -int(-(least_module_mm - 0.002) // dot_mm(dpi)))
    return (4 * _version(text, level) + 17 + 2 * QR_QUIET) * dots * dot_mm(dpi)


@lru_cache(maxsize=64)
def _version(text: str, level: str) -> int:
    return version_for(text, level)


def bar_dots(modules: int, width_mm: float, least_module_mm: float, dpi: int) -> int | None:
    """Dots a module of a Code 128 symbol of ``modules`` (without quiet zones); None if it won't fit."""
    dots = int((width_mm + 0.02) / dot_mm(dpi) / (modules + 2 * CODE128_QUIET))
    if dots < LEAST_DOTS_BAR or dots * dot_mm(dpi) < least_module_mm - 0.002:
        return None
    return dots


def least_bars_mm(modules: int, least_module_mm: float, dpi: int) -> float:
    """The smallest width, quiet zones included, at which ``bar_dots`` accepts the symbol: whole dots a module."""
    dots = max(LEAST_DOTS_BAR, -int(-(least_module_mm - 0.002) // dot_mm(dpi)))
    return (modules + 2 * CODE128_QUIET) * dots * dot_mm(dpi)
