"""Text that fits its box: it shrinks within limits, then wraps, and is never silently cut."""

from __future__ import annotations

import re
from collections.abc import Iterable
from functools import lru_cache
from typing import NamedTuple

from tagger.printing.fonts import text_width

LEADING = 1.18  # from baseline to baseline, in ems
LEADING_DENSE = (
    1.12  # where a label would be refused else: descenders still stand clear of the capitals below
)
LEADING_MAIN = 1.0  # of what is main: digits and units, which have nothing above a capital
LEADING_CLOSE = 0.92  # of the same where it would be small else: a comma still stands clear of the line below
TOP = 0.77  # from the top of the first line's capitals to its baseline
BOTTOM = 0.22  # what hangs below the last baseline
_STEP = 0.96  # each size tried is this much smaller than the one before
_UNWRAPPED_FROM = 0.85  # a line stays whole where wrapping would gain less than this
# A figure is never parted from its fraction or its unit ("1 1/4 flats" broken after the 1 reads as 1), nor from the
# word that makes it the first of a range, "≤", "max." or the elbow it is the angle of, an end from its letter, a flange's
# code from its number, a hose's standard from its kind, a sign from the word before it; nor is a telephone number. No
# digit counts for what it is: a text is set by its look.
_TOGETHER = re.compile(
    r"(?<=_) (?=bar\b)|(?<=\b\d\d) (?=\d\d\b(?!°))|(?<=\d) (?=\d+/\d|\d{3,}\b|(?:mm|in|bar|psi|N·m|lbf·ft|°[CF]?)(?!\w))"
    r"|(?<=[≤≥«]) |(?<=m[aá]x\.) (?=\d)|(?<=\bSAE) (?=\d{3}R)|(?<=\bEN) (?=\d{3}\b)|(?<=\bEN.\d{3}) (?=[\dR])"
    r"|(?<=[Cc]ode) (?=\d)|(?<=código) (?=\d)|(?<=\d°) (?=elbow\b)| (?=[:;?!»](?:\s|$))"
    r"|(?<=\d) (?=(?:to|à|a|bis) \d)"
    r"|(?<=[^\W\d_]) (?=[AB](?![\w'’])|\d+°(?!\s?[CF]))"
)
_DEEP = re.compile(r"[()gjpqy]")  # letters that reach farther below their baseline than a comma
_HANGING = re.compile(r"_|^[^\W\d_][a-zß-ÿ]")  # a line to write on, or words: they hang below their baseline
_NOUGHTS = str.maketrans("123456789", "0" * 9)
_DIGIT = re.compile("[0-9]")
# Nor is "counter-clockwise", of which the second line alone would turn an elbow the other way, nor "90°-Bogen".
_HYPHEN = re.compile(r"(?:(?<=[^\W\d_]{2}-)|(?<=-\d\d°-))(?!clockwise)(?=[^\W\d_]{2})")


Piece = tuple[str, float, bool]  # a piece of a text, its width in ems, and whether a space stands before it


class Fitted(NamedTuple):
    """Lines as they are set, at ``size`` (the em in mm); ``leading`` in ems.

    ``beside``: mm to the right of where the text before it begins, on its line; 0 on lines of its own.
    """

    lines: tuple[str, ...]
    size: float
    leading: float = LEADING
    beside: float = 0.0

    @property
    def height(self) -> float:
        return block_height(len(self.lines), self.size)


def look(text: str) -> str:
    """The text with each digit as 0. Digits are as wide as one another, so texts of one look are set alike.

    >>> look("1250 mm") == look("3175 mm")
    True
    """
    return text.translate(_NOUGHTS)


def read_back(lines: Iterable[str], texts: Iterable[str]) -> list[str]:
    """The lines in which the looks of these texts were set, one text after the other, with the texts' own digits.

    Raises ValueError where the lines do not say then what the texts say.

    >>> read_back(["0000 mm to the", "sealing faces"], ["1250 mm to the sealing faces"])
    ['1250 mm to the', 'sealing faces']
    """
    whole = "".join(texts)
    digits = iter(_DIGIT.findall(whole))
    told = [_DIGIT.sub(lambda _: next(digits, "?"), line) for line in lines]
    if "".join("".join(told).split()) != "".join(whole.split()):
        raise ValueError(f"set as {told}: {whole}")
    return told


def together(text: str) -> str:
    """The text with no-break spaces where no line may end.

    >>> together("at least 100 mm (3 15/16 in)").split(" ")
    ['at', 'least', '100\\xa0mm', '(3\\xa015/16\\xa0in)']
    """
    return _TOGETHER.sub("\u00a0", text)


def block_height(count: int, size: float) -> float:
    """Height of ``count`` lines set at ``size``."""
    return size * (TOP + BOTTOM + LEADING * (count - 1)) if count else 0.0


@lru_cache(maxsize=2048)
def fit(
    lines: tuple[str, ...], width: float, height: float, largest: float, smallest: float, bold: bool
) -> Fitted | None:
    """The lines at the largest size between the limits at which they fit; None where they don't.

    >>> fit(("1250 mm to the sealing faces",), 30.0, 8.0, 3.0, 1.9, False).lines
    ('1250 mm to the', 'sealing faces')
    """
    if not lines:
        return Fitted((), largest)
    lines = tuple(map(together, lines))
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
    pieces = [_measured(line, bold).pieces for line in lines]
    space = text_width(" ", 1.0, bold)
    size = largest
    while True:
        set_lines = _broken(pieces, width / size, space)
        if set_lines is not None and block_height(len(set_lines), size) <= height + 1e-6:
            return Fitted(tuple(set_lines), size)
        if size <= smallest:
            return None
        size = max(smallest, size * _STEP)


def _broken(lines: list[tuple[Piece, ...]], room: float, space: float) -> list[str] | None:
    """Greedy line breaking between the pieces; None where one piece alone is too wide."""
    out = []
    for pieces in lines:
        line, used = "", 0.0
        for piece, width, joint in pieces:
            if width > room:
                return None
            before = space if joint and line else 0.0
            if line and used + before + width > room:
                out.append(line)
                line, used, before = "", 0.0, 0.0
            line += (" " if before else "") + piece
            used += before + width
        out.append(line)
    return out


class Paragraph(NamedTuple):
    """One text of a stack, between its largest and smallest em in mm. What is ``main`` shrinks last.

    ``follows``: it stands on the line of the one before it, where that is one line and leaves it room.
    ``leading`` in ems, of what is not main; ``close``: what is main has its lines closer together.
    """

    text: str
    largest: float
    smallest: float
    bold: bool = False
    main: bool = False
    follows: bool = False
    leading: float = LEADING
    close: bool = False


_ONE_LINE_FROM = 0.85  # what is main stays on one line where it is hardly smaller for it
_Tries = tuple[
    tuple[float, float], ...
]  # shares of the way from the smallest to the largest size: of main, of the rest


def _tries(steps: int) -> _Tries:
    """The rest shrinks first, then what is main, in so many steps."""
    rest = [(1.0, step / 10) for step in range(10, -1, -1)]
    return (*rest, *((step / steps, 0.0) for step in range(steps - 1, -1, -1)))


_USUAL, _CLOSE = _tries(10), _tries(20)


@lru_cache(maxsize=2048)
def stack(paragraphs: tuple[Paragraph, ...], width: float, height: float) -> tuple[Fitted, ...] | None:
    """The paragraphs below one another; None where they do not fit at their smallest.

    Each is wrapped before anything shrinks; then the small ones shrink, and what is main only when that is
    not enough. A word too broad for the width shrinks its own paragraph alone.

    >>> big, small = Paragraph("95 N·m", 5.0, 2.2, main=True), Paragraph("from finger-tight", 3.0, 2.2)
    >>> [(one.lines, one.size) for one in stack((big, small), 22.0, 9.0)]
    [(('95 N·m',), 5.0), (('from finger-tight',), 2.92)]
    """
    if any(width / _measured(one.text, one.bold).broadest < one.smallest - 1e-9 for one in paragraphs):
        return None
    tried: dict[tuple[int, float], Fitted | None] = {}
    tries = _CLOSE if any(one.close for one in paragraphs) else _USUAL

    def at(step: int) -> tuple[Fitted, ...] | None:
        """The stack at one of ``tries``; None where it is too tall, or a word too broad."""
        found: list[Fitted] = []
        for place, one in enumerate(paragraphs):
            key = (place, tries[step][0 if one.main else 1])
            if key not in tried:
                size = one.smallest + (one.largest - one.smallest) * key[1]
                tried[key] = _paragraph(one, width, max(round(size, 3), one.smallest))
            if (fitted := tried[key]) is None:
                return None
            if one.follows and found:
                fitted = _beside(fitted, one, found[-1], paragraphs[place - 1], width)
            found.append(fitted)
        return tuple(found) if stack_height(found) <= height + 1e-6 else None

    if (whole := at(0)) is not None or (least := at(-1)) is None:
        return whole
    large, small = 0, len(tries) - 1  # of each two sizes the smaller is no taller
    while small - large > 1:
        step = (large + small) // 2
        if (found := at(step)) is None:
            large = step
        else:
            small, least = step, found
    return least


def stack_height(stacked: Iterable[Fitted]) -> float:
    """Height of fitted texts set below one another."""
    set_ = [one for one in stacked if one.lines and not one.beside]
    below = sum(one.leading * one.size * len(one.lines) for one in set_)
    return below - (set_[-1].leading - TOP - BOTTOM) * set_[-1].size if set_ else 0.0


def needed(texts: Iterable[str], width: float, smallest: float, bold: bool = True) -> tuple[float, float]:
    """Width and height in mm that these texts take below one another at their smallest, no narrower than ``width``."""
    texts = tuple(texts)
    broadest = max((_measured(text, bold).broadest for text in texts), default=0.0)
    width = max(width, broadest * smallest)
    fitted = [_paragraph(Paragraph(text, smallest, smallest, bold), width + 1e-6, smallest) for text in texts]
    return width, stack_height([one for one in fitted if one is not None])


def _paragraph(one: Paragraph, width: float, size: float) -> Fitted | None:
    """The paragraph at ``size``, or smaller where a word of it is too broad."""
    text = _measured(one.text, one.bold)
    size = min(size, width / text.broadest)
    if size < one.smallest - 1e-9:
        return None
    whole = width / text.width
    if one.main and (one.largest if one.close else size) * _ONE_LINE_FROM <= whole < size:
        size = max(whole, one.smallest)
    room, space = width / size + 1e-9, text_width(" ", 1.0, one.bold)
    lines, used = [""], 0.0
    for piece, across, joint in text.pieces:
        before = space if joint else 0.0
        if lines[-1] and used + before + across > room:
            lines.append(piece)
            used = across
        else:
            lines[-1] += (" " if joint and lines[-1] else "") + piece
            used += (before if used else 0.0) + across
    return Fitted(tuple(line.replace("\u00a0", " ") for line in lines), size, _leading(one))


@lru_cache(maxsize=512)
def _leading(one: Paragraph) -> float:
    if not one.main or _HANGING.search(one.text):
        return one.leading
    return LEADING_CLOSE if one.close and not _DEEP.search(one.text) else LEADING_MAIN


_BETWEEN = 0.7  # ems between two texts on one line


def _beside(mine: Fitted, one: Paragraph, before: Fitted, other: Paragraph, width: float) -> Fitted:
    """The text on the line of the one before it, or as it was where there is no room for that."""
    if len(before.lines) > 1 or before.beside:
        return mine
    taken = text_width(other.text, before.size, other.bold) + _BETWEEN * before.size
    if taken + text_width(one.text, mine.size, one.bold) > width:
        return mine
    return Fitted((one.text,), mine.size, mine.leading, taken)


class _Measured(NamedTuple):
    """A text's width in ems, and what a line of it may be broken between.

    ``pieces``: each with its width in ems, and whether a space stands before it; ``broadest``: of the widest.
    """

    width: float
    pieces: tuple[Piece, ...]
    broadest: float


@lru_cache(maxsize=2048)
def _measured(text: str, bold: bool) -> _Measured:
    """A compound is broken after its hyphen; a dash before a size is none."""
    pieces = tuple(
        (piece, text_width(piece, 1.0, bold), place == 0)
        for word in together(text).split(" ")
        for place, piece in enumerate(_HYPHEN.split(word))
    )
    return _Measured(text_width(text, 1.0, bold), pieces, max(across for _, across, _ in pieces))
