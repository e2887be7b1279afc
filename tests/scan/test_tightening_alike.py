"""What is said of tightening: the server's page, the phone without a signal, the command and REST say the same of every end."""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import suppress
from itertools import cycle
from pathlib import Path
from typing import Any

import pytest

from api.scan import fit
from api.scan.kit import shared_tables, words_of
from api.scan.visitor import Reader
from tagger import phrases
from tagger.cli import commands
from tagger.code import payload
from tagger.errors import TaggerError
from tagger.i18n import LANGUAGES
from tagger.messages import Figure, Message, Unit
from tagger.spec import AssemblySpec, Basis, Connection, Form, TagContent, Tightening
from tagger.trade import assess, given, guide, tightened
from tagger.trade.tables import tables
from tests.code.phone import Phone
from tests.trade.specs import end
from tests.volume import volume

SHAPES = ({}, {"shape": "elbow_90", "drop_mm": 56}, {"shape": "elbow_45"})
OF_THE_PHONE = """
const [{ decode }, { tighten }, { guide }, { bendOf }, { Kit }, phrases] = await Promise.all(
  ["payload", "tighten", "fit", "limits", "kit", "phrases"].map((name) => import(`./scripts/${name}.js`)));
const [digits, tables, words] = asked, kit = new Kit(words, tables);
console.log(JSON.stringify(digits.map((each) => {
  const content = decode(each, tables), { spec } = content, bend = bendOf(spec.hose, tables);
  const ends = [[content.tighten_a, spec.end_a], [content.tighten_b, spec.end_b]];
  const { screens } = guide(content, bend ? bend[0] : null, kit);
  return [
    ends.map(([tightening, end]) => tighten(tightening, end, tables).map((line) => kit.t(line))),
    ends.map(([, end]) => [phrases.endTitle(end, tables), phrases.end(end, tables)].map((said) => kit.t(said))),
    screens.map(({ title, end, lines }) => [title, end, lines]),
  ];
})));
"""
JOINED = ("join", "tighten")


def _ends() -> Iterator[dict[str, Any]]:
    """An end of every family, form and size of the tables; metal, bend and jump to the hose's size differ from each to the next."""
    known, turns = tables(), cycle((*SHAPES, {}, {"material": "stainless_steel"}, {"material": "brass"}))
    for family, about in known.families.items():
        sizes = ("Tr 30x3, own nut",) if family is Connection.OTHER else known.sizes(family)
        for form in about.forms:
            for size in sizes[:: volume(3, 1)]:
                for series in (None, *sorted(known.series_of(family, size))):
                    yield end(family, size, form, hose_dash=8, **next(turns)) | (
                        {"series": series} if series else {}
                    )


def _pairs() -> Iterator[TagContent]:
    """Each end as end A, the one after it as end B."""
    every = list(_ends())
    for a, b in zip(every, [*every[1:], every[0]], strict=True):
        two = {"clocking_deg": 90} if "shape" in a and "shape" in b else {}
        with suppress(TaggerError):
            spec = AssemblySpec.read(
                {
                    "hose": {"standard": "SAE 100R2", "dash": 8},
                    "end_a": a,
                    "end_b": b,
                    "length_mm": 1000,
                    **two,
                }
            )
            yield assess(spec).content_of(spec)


def _as_older_tags_carry_it(content: TagContent, place: int) -> TagContent:
    """Torque and flats together, a torque without its lubrication, a count whose start no source states."""
    both = {"torque_min_nm": 60.0, "torque_max_nm": 66.0, "flats_min": 1.0, "flats_max": 1.5}
    starts = (Basis.FINGER_TIGHT, Basis.WRENCH_RESISTANCE, Basis.NOT_STATED)
    older = Tightening(**both, flats_basis=starts[place % 3])
    if place % 4 == 3 and content.spec.end_a.form in (Form.MALE, Form.FEMALE_SWIVEL):
        older = Tightening(flats_min=1, flats_max=1.5, flats_basis=starts[place % 3])
    return content.model_copy(update={"tighten_a": older, "tighten_b": None})


@pytest.fixture(scope="module")
def contents() -> list[TagContent]:
    built = list(_pairs())
    older = [_as_older_tags_carry_it(each, place) for place, each in enumerate(built)]
    nuts = [
        each.model_copy(update={"tighten_a": Tightening(torque_min_nm=84, torque_max_nm=84)})
        for each in built
        if each.spec.end_a.connection == "bspp"
    ]
    told = (*built, *older[:: volume(3, 1)], *nuts)
    carried = [payload.decode(digits) for digits in dict.fromkeys(map(payload.encode, told))]
    assert {each.spec.end_a.connection for each in carried} == set(tables().families)
    return carried


@pytest.mark.parametrize("language", LANGUAGES)
def test_page_phone_and_command_say_the_same_of_every_family_form_and_size(
    language: str, contents: list[TagContent], tmp_path: Path
) -> None:
    """Figures, order, "or", condition and basis, at both ends, and the whole guide."""
    reader, some = Reader(language, tables()), contents[[*LANGUAGES].index(language) :: volume(4, 1)]
    asked = [[payload.encode(each) for each in some], shared_tables(tables()), words_of(language, tables())]
    for content, (lines, named, screens) in zip(some, Phone(tmp_path).run(OF_THE_PHONE, asked), strict=True):
        page = [[reader.t(line) for line in each] for each in _lines(content)]
        assert page == lines, content
        ends = (content.spec.end_a, content.spec.end_b)
        assert [[reader.t(phrases.end_title(e)), reader.t(phrases.end(e))] for e in ends] == named, content
        radius = assess(given.as_registered(content.spec, tables()), tables(), made=True).bend_radius_mm
        shown = fit.guide(content, radius, None, reader)["screens"]
        assert [[each["title"], each["end"], each["lines"]] for each in shown] == screens, content
        command = commands._content_text(content, reader.t).splitlines()
        for name, each in zip("AB", page, strict=True):
            assert reader.t("cli-tightening", end=name, how="; ".join(each)) in command, content


def _lines(content: TagContent) -> list[tuple[Message, ...]]:
    spec = content.spec
    ends = ((content.tighten_a, spec.end_a), (content.tighten_b, spec.end_b))
    return [tightened.lines(tightening, end, tables()) for tightening, end in ends]


def test_no_guide_turns_by_flats_what_is_tightened_by_torque_and_none_leaves_its_figures_out(
    contents: list[TagContent],
) -> None:
    """Of two figures each step of the second says that it takes the place of the first; a line to count from is drawn before."""
    met = set()
    for content in contents:
        screens = guide.screens(content, 100, None, tables())
        for letter, lines in zip("AB", _lines(content), strict=True):
            mine = [line for s in screens for line in s.lines if letter in line.ends and s.name in JOINED]
            ids = [line.step.step_id for line in mine]
            told = {name for line in mine for name in line.step.figures}
            counts = [i for i in ids if i.startswith("flats")]
            marks = [place for place, i in enumerate(ids) if i.startswith("mark_")]
            both = lines[-1].id == "words-counted-or"
            met.add((both, "torque" in told, bool(counts)))
            assert both == ("choose_method" in ids) == any(i.endswith("_instead") for i in ids), content
            assert bool(counts) == ("flats" in told), content
            assert not (counts and "torque" in told) or both, content
            assert not marks or max(marks) < ids.index(counts[0]), content
            said = {unit for line in lines for unit in _figures(line)}
            assert ("flats" in said) == bool(counts), content
            assert ("torque" in said) == ("torque" in told), content
            assert ("turns" in said) == ("turns" in told), content
    assert met >= {(True, True, True), (False, True, False), (False, False, True), (False, False, False)}


def _figures(line: Message) -> Iterator[str]:
    """What a line speaks of: a torque, flats or turns."""
    if line.id in ("words-flats", "words-turns"):
        yield line.id.removeprefix("words-")
    for value in line.values.values():
        if isinstance(value, Message):
            yield from _figures(value)
        elif isinstance(value, Figure) and value.unit is Unit.TORQUE:
            yield "torque"
