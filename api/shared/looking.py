"""Identifying an end by looking, as a page shows it: the question with its pictures, the answers given, what remains.

The answers stand in the address, each picture is a link: so it needs no script, and going back works.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from functools import cache
from typing import Any
from urllib.parse import urlencode

from tagger import phrases
from tagger.drawing.choices import choice
from tagger.drawing.svg import svg
from tagger.errors import Speaks
from tagger.messages import Message
from tagger.trade.identifying import guided
from tagger.trade.identifying.guided import Kind, Looked, Told
from tagger.trade.tables import Tables

_HANGS_ON = {"side": ("form",), "seals": ("cone", "seat")}
"""Questions that are asked because of the answer to another, so that they go with it."""


@dataclass(frozen=True)
class Addresses:
    """Where the questions stand, where the end is measured, and what else both keep in their address."""

    look: str
    measure: str
    keeps: Mapping[str, str]

    def of(self, answers: Mapping[str, str]) -> str:
        return address(self.look, {**self.keeps, **answers})

    def without(self, answers: Mapping[str, str], step: str) -> str:
        gone = (step, *_HANGS_ON.get(step, ()))
        return self.of({name: word for name, word in answers.items() if name not in gone})

    def measuring(self, looked: Looked) -> str:
        return address(self.measure, {**self.keeps, **guided.measured(looked)})


def shown(answers: Mapping[str, str], at: Addresses, tables: Tables, t: Speaks) -> dict[str, Any]:
    """What a page fills ``looking.html`` with."""
    looked = guided.look(answers, tables)
    side = answers.get("side", "")
    return {
        "step": looked.step,
        "question": t(guided.question(looked.step)) if looked.step else "",
        "choices": [
            {
                "href": at.of({**answers, looked.step: answer}),
                "picture": picture(looked.step, answer, side),
                "words": t(guided.in_words(looked.step, answer)),
            }
            for answer in looked.choices
            if looked.step
        ],
        "unsure": at.of({**answers, looked.step: guided.UNKNOWN}) if looked.step else "",
        "answers": [
            {"words": t(guided.told(step, (answer,))), "change": at.without(answers, step)}
            for step, answer in answers.items()
        ],
        "count": t(Message("identify-looking-count", count=len(looked.remaining))),
        "remaining": [_kind(told, t) for told in looked.remaining],
        "ruled_out": [
            {"name": _name(kind, t), "by": t(guided.told(step, (answers[step],)))}
            for kind, step in looked.ruled_out
        ],
        "measure": at.measuring(looked),
        "again": address(at.look, at.keeps),
    }


@cache
def picture(step: str, answer: str, side: str) -> str:
    """The picture of an answer as SVG, black on white in any light."""
    drawn = svg(choice(step, answer, side)).replace("currentColor", "#111")
    start, inside = drawn.split(">", 1)
    return f'{start}><rect width="34" height="20" rx="1" fill="#fff"/>{inside}'


def pictures() -> list[tuple[str, str, str, str]]:
    """Every picture once, for a page that a phone keeps: question, answer, the sides it is shown for, SVG."""
    found: dict[tuple[str, str, str], list[str]] = {}
    for step in guided.STEPS:
        for answer in guided.WORDS[step]:
            for side in ("", *guided.WORDS["side"]):
                found.setdefault((step, answer, picture(step, answer, side)), []).append(
                    side or guided.UNKNOWN
                )
    return [(step, answer, " ".join(sides), drawn) for (step, answer, drawn), sides in found.items()]


def _kind(told: Told, t: Speaks) -> dict[str, Any]:
    return {
        "name": _name(told.kind, t),
        "sizes": t(guided.sizes(told.kind)),
        "facts": [t(guided.told(step, words)) for step, words in told.facts],
        "alike": [t(alike) for alike in told.alike],
    }


def _name(kind: Kind, t: Speaks) -> str:
    return t(
        Message(
            "identify-looking-kind", connection=phrases.connection(kind.family), form=phrases.form(kind.form)
        )
    )


def address(page: str, names: Mapping[str, str]) -> str:
    """A page with what it is asked, without what says nothing."""
    asked = urlencode({name: value for name, value in names.items() if value})
    return f"{page}?{asked}" if asked else page
