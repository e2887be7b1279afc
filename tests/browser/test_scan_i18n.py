"""The phone renders messages as the library does: every one, in every language, as text and as HTML."""

from __future__ import annotations

import random
import re
from collections.abc import Collection, Iterator
from datetime import date
from typing import Any

import pytest
from playwright.sync_api import Page

from api.scan import identify_kit, kit, scripts
from tagger.i18n import LANGUAGES, Translator
from tagger.i18n.catalogue import source
from tagger.messages import (
    Figure,
    Message,
    Unit,
    Value,
    angle,
    count,
    least_pressure,
    length,
    pressure,
    temperature,
    torque,
)
from tagger.trade.tables import tables
from tests.browser.test_scan_reader import reader
from tests.i18n.messages_used import Use, uses
from tests.i18n.test_catalogues import Reads, entries, reads
from tests.volume import volume

__all__ = ["reader"]  # the fixture

RENDER = """async ([messages, base, language, catalogues]) => {
  const { translator } = await import(`${base}/i18n.js`);
  const t = translator(language, catalogues);
  return messages.map((each) => [t(each), t.mend(each), t.html(each)]);
}"""
FIGURES = """async ([figures, base, language, catalogues]) => {
  const { translator } = await import(`${base}/i18n.js`);
  const t = translator(language, catalogues);
  return figures.map((each) => t.figure(each));
}"""
PLURALS = {"zero", "one", "two", "few", "many", "other"}
SAMPLES: tuple[Value, ...] = (
    length(12.5),
    pressure(206.8),
    least_pressure(620.4),
    torque(20, 24.5),
    torque(None, 33),
    temperature(-40),
    count(1, 1.25),
    angle(37.5),
    3,
    1234.5,
    date(2026, 3, 7),
    '5 < 7 & "so" it\'s',
    Message("words-part-end_a"),
    ("-4", "-6", "-8"),
)
"""One value of every kind."""


def test_the_phone_renders_every_message_as_the_library_does(reader: tuple[Page, str]) -> None:
    page, base = reader
    for language in LANGUAGES:
        messages = [message for id in sorted(_ids()) for message in _with_samples(id, language)]
        t = Translator(language)
        texts = [source(language, room) for room in kit.ROOMS]
        found = page.evaluate(RENDER, [[m.as_json() for m in messages], base, language, texts])
        for message, shown in zip(messages, found, strict=True):
            assert shown == [t(message), t.mend(message), t.html(message)], (language, message)


def _ids() -> set[str]:
    return {id for id in entries("en") if id.partition("-")[0] in kit.ROOMS}


def _with_samples(id: str, language: str) -> Iterator[Message]:
    """The message with every choice of each value it reads; a value that is only shown takes four kinds of the
    fourteen, others in each message, and in `make prove` all."""
    read = reads(entries(language)[id])
    names = sorted(read.values)
    most = max((len(_choices(name, read)) for name in names), default=1)
    first = len(id)
    turns = range(first, first + volume(4, most)) if most == len(SAMPLES) else range(most)
    for turn in turns:
        yield Message(id, **{name: _sample(name, read, turn + at) for at, name in enumerate(names)})


def _sample(name: str, read: Reads, turn: int) -> Value:
    choices = _choices(name, read)
    return choices[turn % len(choices)]


def _choices(name: str, read: Reads) -> tuple[Value, ...]:
    keys = sorted(read.variants.get(name, ()))
    if keys and set(keys) <= PLURALS | {str(n) for n in range(10)}:
        return (*keys, 0, 1, 2, 5)
    if keys:
        return (*keys, "none of these")
    if read.called.get(name) == "SAY":
        return Message("words-part-hose"), Message("words-fluid-synthetic_ester"), "typed"
    if read.called.get(name) == "LIST":
        return ("-4",), ("-4", "-6"), ("-4", Message("words-part-hose"), 8, length(12.5))
    return SAMPLES


def test_the_phone_rounds_figures_as_the_library_does(reader: tuple[Page, str]) -> None:
    """The languages share the figures out; in `make prove` each takes all."""
    page, base = reader
    figures = list(_figures())
    for place, language in enumerate(LANGUAGES):
        own = figures[volume(place, 0) :: volume(len(LANGUAGES), 1)]
        t = Translator(language)
        given = [[figure.as_json() for figure in own], base, language, kit.catalogues(language, tables())]
        found = page.evaluate(FIGURES, given)
        off = {figure: (t.figure(figure), shown) for figure, shown in zip(own, found, strict=True)}
        assert {figure: pair for figure, pair in off.items() if pair[0] != pair[1]} == {}, language


def _figures() -> Iterator[Figure]:
    """Halves, where languages of programs round differently; steps of a tenth; and any others."""
    chance = random.Random(1)
    plain = [n / 8 for n in range(400)] + [n / 10 for n in range(400)]
    plain += [chance.uniform(0, 3000) for _ in range(400)]
    for value in plain:
        for unit in Unit:
            yield Figure(value, unit)
        yield torque(value * 0.9, value)
        yield torque(None, value)
        yield count(value / 2, value)
    yield from (temperature(-value) for value in plain[1:])


@pytest.mark.parametrize("language", LANGUAGES)
def test_a_phone_keeps_every_message_its_scripts_ask_for_and_no_others(language: str) -> None:
    identifying = {f"api/static/reader/{name}" for name in scripts.IDENTIFYING}
    asked = {use for use in uses() if use.where.startswith("api/static/reader/")} - {
        use for use in uses() if use.where in identifying
    }
    _are_kept(asked, kit.catalogues(language, tables()))
    more = {use for use in uses() if use.where in identifying}
    _are_kept(more, [*kit.catalogues(language, tables()), *identify_kit.words_of(language, tables())], asked)


def _are_kept(asked: set[Use], catalogues: list[str], besides: Collection[Use] = ()) -> None:
    kept = set(re.findall(r"^([a-z]\S*) =", "".join(catalogues), re.MULTILINE))
    for use in asked:
        assert any(id == use.id or (use.start and id.startswith(use.id)) for id in kept), use
    asked = {*asked, *besides}
    named = {use.id for use in asked}
    steps = {id for row in tables().steps for id in (row.message, row.source)}
    steps |= {row.message for row in tables().look_alikes}
    spare = {
        id for id in kept - named - steps if not any(use.start and id.startswith(use.id) for use in asked)
    }
    assert not [id for id in spare if not id.startswith("words-")]


def test_a_nested_message_takes_its_case_and_a_figure_in_it_is_marked(reader: tuple[Page, str]) -> None:
    page, base = reader
    catalogue = (
        "a-part = { $case ->\n   *[plain] der Bogen { $drop }\n    [dat] dem Bogen { $drop }\n }\n"
        'a-whole = mit { SAY($part, case: "dat") } <{ LIST($all, style: "or") }>\n'
    )
    part = {"id": "a-part", "values": {"drop": length(1250).as_json()}}
    message = {"id": "a-whole", "values": {"part": part, "all": ["x", 2]}}
    [[text, _, html]] = page.evaluate(
        RENDER, [[message], base, "de", ["words-decimal-sign = ,\n", catalogue]]
    )
    assert text == "mit dem Bogen 1250 mm (49,21 in) <x oder 2>"
    assert html == (
        'mit dem Bogen <span class="both"><span class="si">1250 mm</span> <span class="us">49,21 in</span></span>'
        " &lt;x oder 2&gt;"
    )


def test_a_page_that_opens_with_a_signal_asks_for_no_catalogue_reader(reader: tuple[Page, str]) -> None:
    page, _ = reader
    script: Any = "() => performance.getEntriesByType('resource').map((entry) => entry.name)"
    asked = page.evaluate(script)
    assert asked and not [address for address in asked if "fluent" in address or "i18n" in address]
