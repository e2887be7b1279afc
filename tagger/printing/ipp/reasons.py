"""What a printer's state reasons mean: the message of each keyword (reasons.csv)."""

from __future__ import annotations

import csv
from collections.abc import Iterable
from functools import lru_cache
from importlib import resources

from tagger.messages import Message, as_is

_SUFFIXES = ("-error", "-warning", "-report")  # RFC 8011, 5.4.12: how grave it is
_USUAL = {
    "job-completed-successfully",
    "job-printing",
    "job-incoming",
    "job-interpreting",
    "job-transforming",
}


def remarks_of(reasons: Iterable[str]) -> tuple[Message, ...]:
    """The message of each reason, none twice; an unknown one is shown as the printer spells it.

    >>> [str(remark) for remark in remarks_of(["media-empty-error", "door-open", "x-odd"])]
    ['out of labels or paper', 'door open', 'x-odd']
    """
    return tuple(dict.fromkeys(_remark(reason) for reason in reasons if reason != "none"))


def notable(reasons: Iterable[str]) -> list[str]:
    """The reasons that are more than the usual course of a job."""
    return [reason for reason in reasons if reason not in _USUAL]


def _remark(reason: str) -> Message:
    known = _table()
    for suffix in ("", *_SUFFIXES):
        if reason.endswith(suffix) and (found := known.get(reason.removesuffix(suffix))):
            return found
    return as_is(reason[:80])


@lru_cache(maxsize=1)
def _table() -> dict[str, Message]:
    text = resources.files("tagger.printing.ipp").joinpath("reasons.csv").read_text(encoding="utf-8")
    return {row["keyword"]: Message(row["message"]) for row in csv.DictReader(text.splitlines())}
