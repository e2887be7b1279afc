"""Text that fits its box: it shrinks within limits, then wraps, and is never silently cut."""

from __future__ import annotations

import re
from dataclasses import dataclass
from functools import lru_cache

from tagger.printing.fonts import text_width

LEADING = 1.18  # from baseline to baseline, in ems
TOP = 0.77  # from the top of the first line's capitals to its baseline
BOTTOM = 0.22  # what hangs below the last baseline
_STEP = 0.96  # each size tried is this much smaller than the one before
_UNWRAPPED_FROM = 0.85  # a line stays whole where wrapping would gain less than this
# A figure is never parted from its fraction or its unit: "1 1/4 flats" broken after the 1 reads as 1.
_TOGETHER = re.compile(r"(?<=\d) (?=\d+/\d|(?:mm|in|bar|psi|N·m|lbf·ft|°[CF]?)(?!\w))")


@dataclass(frozen=True, slots=True)
class Fitted:
    """Lines as they are set, at ``size`` (the em in mm)."""

    lines: tuple[str, ...]
    size: float

    @property
    def height(self) -> float:
        return block_height(len(self.lines), self.size)


def block_height(count: int, size: float) -> float:
    """Height of ``count`` lines set at ``size``."""
    return size * (TOP + BOTTOM + LEADING * (count - 1)) if count else 0.0


@lru_cache(maxsize=8192)
def fit(
    lines: tuple[str, ...], width: float, height: float, largest: float, smallest: float, bold: bool
) -> Fitted | None:
    """The lines at the largest size between the limits at which they fit; None where they don't.

    >>> fit(("1250 mm to the sealing faces",), 30.0, 8.0, 3.0, 1.9, False).lines
    ('1250 mm to the', 'sealing faces')
    """
    if not lines:
        return Fitted((), largest)
    lines = tuple(_TOGETHER.sub("\u00a0", line) for line in lines)
    whole = _unwrapped_size(lines, width, height, largest, bold)
    best = None if whole >= largest else _wrapped(lines, width, height, largest, smallest, bold)
    if whole >= smallest and (best is None or whole >= best.size * _UNWRAPPED_FROM):
        best = Fitted(lines, whole)
    if best is None:
        return None
    return Fitted(tuple(line.replace("\u00a0", " ") for line in best.lines), best.size)


def _unwrapped_size(lines: tuple[str, ...], width: float, height: float, largest: float, bold: bool) -> float:
    broadest = max(text_width(line, 1.0, bold) for line in lines)
    return min(largest, width / max(broadest, 1e-9), height / block_height(len(lines), 1.0))


def _wrapped(
    lines: tuple[str, ...], width: float, height: float, largest: float, smallest: float, bold: bool
) -> Fitted | None:
    words = [[(word, text_width(word, 1.0, bold)) for word in line.split(" ") if word] for line in lines]
    space = text_width(" ", 1.0, bold)
    size = largest
    while True:
        set_lines = _broken(words, width / size, space)
        if set_lines is not None and block_height(len(set_lines), size) <= height + 1e-6:
            return Fitted(tuple(set_lines), size)
        if size <= smallest:
            return None
        size = max(smallest, size * _STEP)


def _broken(lines: list[list[tuple[str, float]]], room: float, space: float) -> list[str] | None:
    """Greedy line breaking between words; None where one word alone is too wide."""
    out = []
    for words in lines:
        line: list[str] = []
        used = 0.0
        for word, width in words:
            if width > room:
                return None
            if line and used + space + width > room:
                out.append(" ".join(line))
                line, used = [], 0.0
            used += (space if line else 0.0) + width
            line.append(word)
        out.append(" ".join(line))
    return out
