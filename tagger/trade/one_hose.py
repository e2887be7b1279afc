"""Whether two specs name one hose, as far as its reel's lot goes; and lots that are only a date.

A hose carries more than one standard ("EN 853 2SN - SAE 100 R2AT": ``same_hose.csv``), and a builder
types the one that is read first. An edition or a part number that is missing on one side is no difference.
"""

from __future__ import annotations

import re

from tagger.errors import TradeError
from tagger.spec import Hose
from tagger.trade.tables import Tables, compact_name

# Quarter and year, month and year, day, month and year: the forms of SAE J517 and of the German marking
# guide (lay_lines of the public sources), and ISO 8601's. Bare digits may be a lot's number: no date.
_DATE_CODE = re.compile(
    r"[1-4]Q(\d\d|20\d\d)|\d{1,2}/(\d{1,2}/)?(\d\d|20\d\d)|20\d\d-?W\d\d|20\d\d-\d\d(-\d\d)?", re.IGNORECASE
)


def is_date_code(lot: str) -> bool:
    """Whether a lot says only when the hose was made: then it spans sizes.

    >>> is_date_code("2Q26"), is_date_code("2/26"), is_date_code("H-2291"), is_date_code("1606")
    (True, True, False, False)
    """
    return _DATE_CODE.fullmatch(lot.strip()) is not None


def one_hose(one: Hose, other: Hose, tables: Tables) -> bool:
    """Whether both may be cut from one reel.

    >>> from tagger.trade.tables import tables
    >>> one_hose(Hose(standard="2SN", dash=12), Hose(standard="R2AT", dash=12, edition="AT"), tables())
    True
    """
    if one.dash != other.dash or not _agree(one.part, other.part):
        return False
    a, b = (_standard(hose, tables) for hose in (one, other))
    if a == b:
        return _agree(_figures(one, a, tables), _figures(other, b, tables))
    return frozenset((a, b)) in tables.same_hose


def _agree(one: str | None, other: str | None) -> bool:
    """Whether two texts are one, or one of them is missing."""
    return one is None or other is None or compact_name(one) == compact_name(other)


def _standard(hose: Hose, tables: Tables) -> str:
    known = tables.standard_of(hose.standard)
    return known.standard if known else compact_name(hose.standard)


def _figures(hose: Hose, standard: str, tables: Tables) -> str | None:
    """The edition by whose figures it is rated: two names of one edition are one."""
    try:
        edition = tables.edition_of(hose, standard)
    except TradeError:
        return hose.edition
    return edition.figures if edition else None
