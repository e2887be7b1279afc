"""What a printer's state reasons mean, in plain words."""

from __future__ import annotations

import csv
from collections.abc import Iterable
from functools import lru_cache
from importlib import resources

_SUFFIXES = ("-error", "-warning", "-report")  # RFC 8011, 5.4.12: how grave it is


_USUAL = {
    "job-completed-successfully",
    "job-printing",
    "job-incoming",
    "job-interpreting",
    "job-transforming",
}


def in_words(reasons: Iterable[str]) -> tuple[str, ...]:
    """Each reason in words, none twice; one without words here is shown as the printer spells it.

    >>> in_words(["media-empty-error", "door-open"])
    ('it is out of labels or paper', 'a door is open')
    """
    return tuple(dict.fromkeys(_words(reason) for reason in reasons if reason != "none"))


def notable(reasons: Iterable[str]) -> list[str]:
    """The reasons that are more than the usual course of a job."""
    return [reason for reason in reasons if reason not in _USUAL]


def _words(reason: str) -> str:
    known = _table()
    for suffix in ("", *_SUFFIXES):
        if reason.endswith(suffix) and (found := known.get(reason.removesuffix(suffix))):
            return found
    return reason[:80]


@lru_cache(maxsize=1)
def _table() -> dict[str, str]:
    text = resources.files("tagger.printing.ipp").joinpath("reasons.csv").read_text(encoding="utf-8")
    return {row["keyword"]: row["words"] for row in csv.DictReader(text.splitlines())}
