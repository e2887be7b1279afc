"""What was found on a printed gauge sheet: marks such as "D26.99", and how large the sheet was printed.

A mark is a letter and the figure that its gauge has, in mm (an angle in degrees), so nothing has to be looked up. A
sheet that was printed at 97 % is 3 % too small in all its lengths: what was found on it is corrected by what its
check line measures. What a caliper read needs no correction, and is entered as ever.
"""

from __future__ import annotations

import math
import re
from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any, Final

from tagger.errors import Problem, SpecError, UnitError
from tagger.messages import Message
from tagger.trade.identifying.likelihood import Errors
from tagger.units import MM_PER_INCH, read_length_mm

FIELDS: Final = {
    "D": "thread_od",
    "F": "thread_id",
    "P": "pitch",
    "A": "seat",
    "H": "hex",
    "R": "flange_od",
    "B": "bolt_spacing",
}
"""What each letter is a reading of. Permanent: sheets that are printed are used for years."""
DECIMALS: Final = {"P": 3, "A": 0}  # the others have two
CHECK_MM, CHECK_IN = 100.0, 4.0  # the two check lines of a sheet
LEAST, MOST = 0.97, 1.03  # of true size: what is corrected; beyond it the sheet is printed again
PAPER: Final = Errors(diameter_mm=0.3, hex_mm=0.5, flange_mm=0.8)
"""How paper is read: by judgement, twice as roughly as a caliper; the pitch as by a thread gauge."""
_MARK = re.compile(r"(?P<letter>[A-Z])\s*(?P<figure>\d{1,3}(?:[.,]\d{1,3})?)", re.ASCII)
_BARE = re.compile(r"\d{1,3}(?:[.,]\d+)?", re.ASCII)
_MOST_MARKS = 8


def mark(letter: str, figure: float) -> str:
    """What is printed beside a gauge.

    >>> mark("D", 26.987), mark("P", 1.8143), mark("A", 37)
    ('D26.99', 'P1.814', 'A37')
    """
    return f"{letter}{figure:.{DECIMALS.get(letter, 2)}f}"


def scale(check_line: object) -> float:
    """How large the sheet was printed, as a share of true size, by what a check line measures.

    A length in mm is that of the 100 mm line, one in inches that of the 4 in line; a number alone is whichever it is
    near. Raises SpecError where it cannot be read, is off by more than 3 %, or is the other line's.

    >>> scale("97 mm"), scale("4 in"), round(scale("3,95"), 4)
    (0.97, 1.0, 0.9875)
    """
    text = str(check_line).strip()
    inches = text.casefold().endswith(("in", "in.", "inch", "inches", '"', "\u2033"))
    try:
        read = read_length_mm(text)
    except UnitError as error:
        raise SpecError([Problem("scale", check_line, one.message) for one in error.problems]) from None
    if _BARE.fullmatch(text) and read < CHECK_MM / 10:
        read, inches = read * MM_PER_INCH, True
    if not inches and abs(read - CHECK_IN * MM_PER_INCH) < 0.15:
        raise SpecError(Problem("scale", check_line, Message("identify-scale-other-line")))
    found = round(read / (CHECK_IN * MM_PER_INCH if inches else CHECK_MM), 6)
    if not LEAST <= found <= MOST:
        raise SpecError(Problem("scale", check_line, Message("identify-scale-beyond", given=text[:20])))
    return found


@dataclass(frozen=True)
class Read:
    """Values for ``Measurements.read``, and how far off they may be; None: as a caliper's."""

    values: dict[str, Any]
    errors: Errors | None


def read(found: str, check_line: object, given: Mapping[str, Any]) -> Read:
    """What was measured, with what was found on a sheet, corrected to true size.

    ``found``: marks with spaces or commas between them; ``given``: what was measured otherwise, by the names that
    ``Measurements.read`` has. Raises SpecError: marks that cannot be read or say the same thing twice, a check line
    without a mark, and a mark of a length without the check line, for nobody would know how large it was printed.
    """
    problems: list[Problem] = []
    marked: dict[str, tuple[str, str]] = {}
    for letter, figure in _split(found, problems):
        name = FIELDS[letter]
        same = ("thread_od", "thread_id") if letter in "DF" else (name,)
        if any(one in marked or _is_given(given.get(one)) for one in same):
            problems.append(Problem("found", found, Message("identify-mark-twice", mark=f"{letter}{figure}")))
        marked[name] = letter, figure
    lengths = any(letter != "A" for letter, _ in marked.values())
    true = _true_size(marked, lengths, check_line, problems)
    if problems:
        raise SpecError(problems)
    values = {
        name: figure if letter == "A" else round(float(figure.replace(",", ".")) * true, 4)
        for name, (letter, figure) in marked.items()
    }
    return Read({**given, **values}, PAPER if lengths else None)


def _split(found: str, problems: list[Problem]) -> list[tuple[str, str]]:
    text = found.strip().upper()
    if len(text) > 12 * _MOST_MARKS:
        problems.append(Problem("found", found[:100], Message("identify-marks-many", most=_MOST_MARKS)))
        return []
    marks, rest = [], text
    while rest:
        match = _MARK.match(rest)
        if not match or match["letter"] not in FIELDS:
            problems.append(Problem("found", found, Message("identify-mark-unreadable", given=rest[:20])))
            break
        marks.append((match["letter"], match["figure"]))
        rest = re.sub(r"^[\s,;+]+", "", rest[match.end() :])
    return marks


def _true_size(
    marked: Mapping[str, object], lengths: bool, check_line: object, problems: list[Problem]
) -> float:
    """How large the sheet was printed; not a number where nothing is to be corrected by it, or something is wrong."""
    if not _is_given(check_line):
        if lengths:
            problems.append(Problem("scale", None, Message("identify-scale-missing")))
    elif not marked and not problems:
        problems.append(Problem("scale", str(check_line), Message("identify-scale-alone")))
    else:
        try:
            return scale(check_line)
        except SpecError as error:
            problems += error.problems
    return math.nan


def _is_given(value: object) -> bool:
    return value is not None and str(value).strip() != ""
