"""Identifying without a signal: the phone's own answers against Python's, over invented measurements."""

from __future__ import annotations

import gzip
import random
from typing import Any, Literal

import numpy as np
import pytest
from fastapi.testclient import TestClient

from api.app import create_app
from api.scan import identify_kit
from api.scan.identify import MEASURED, _in_unit, _measurements
from api.settings import Settings
from tagger.errors import TaggerError
from tagger.spec import Form, Series
from tagger.store import Store
from tagger.trade.identifying import guided, likelihood, readings
from tagger.trade.identifying.identify import identify
from tagger.trade.identifying.readings import CONES, FLANKS, SAID, SEATS, Measurements
from tagger.trade.tables import tables
from tests.scan.in_node import in_node
from tests.volume import volume

MODULES = {"ranker.js": "identify, unpacked", "measures.js": "read"}
ROUGHLY = likelihood.CONTINUOUS  # of what may be said how far off it may be
MOST = 42_000  # bytes, packed, of all that identifying without a signal adds to what a phone keeps

GUIDED = {"ranker.js": "unpacked", "guided.js": "answersOf, look, measured, told, inWords, sizes"}
LOOKED = """
const [pool, all] = given, known = unpacked(pool);
answer(all.map((asked) => {
  const { answers, problems } = answersOf(asked, known);
  if (problems.length) return problems.map(({ field, value, message }) => [field, value, message]);
  const found = look(answers, known), { step, choices, remaining, ruledOut } = found;
  return [
    Object.entries(answers).map(([one, word]) => [one, word, told(one, [word], known)]), step, choices.map((word) => [word, inWords(step, word, known)]),
    remaining.map(({ kind, facts, alike }) => [kind.family, kind.form, sizes(kind, known), facts, alike]),
    ruledOut.map(([kind, by]) => [kind.family, kind.form, by]), measured(answers, found),
  ];
}));"""
RANKED = """
const [pool, all] = given, known = unpacked(pool);
const told = ({ row, contradicts, series, lookAlikes }) => [row.family, row.size, row.form, row.thread, [...contradicts].sort(), series, lookAlikes];
answer(all.map((each) => {
  const { candidates, next, remaining, summary, tie, lacks } = identify(each, known);
  return [candidates.map(told), next, remaining, summary, tie, lacks, candidates.map(({ likelihood }) => likelihood)];
}));"""
READ = """
const [pool, all] = given, known = unpacked(pool);
answer(all.map(([asked, unit]) => read(asked, unit, known)));"""


def test_the_phone_ranks_names_and_asks_as_python_does() -> None:
    """Order, contradictions, series, look-alikes, the sentence, the tie and the next question."""
    asked = [_invented(random.Random(seed)) for seed in range(volume(200, 6000))]
    found = _in_node_ranked(asked)
    for one, phone in zip(asked, found, strict=True):
        *said, likelihoods = _in_python(one)
        assert _plain(said) == _plain(phone[:-1]), one
        assert phone[-1] == pytest.approx(likelihoods, abs=1e-9), one


def test_the_phone_asks_and_narrows_by_looking_as_python_does() -> None:
    """Questions, pictures' words, what remains with its sizes, facts and look-alikes, what one answer rules out."""
    asked = [{}, *(_looked_at(random.Random(seed)) for seed in range(volume(150, 4000)))]
    for one, phone in zip(
        asked, in_node(GUIDED, LOOKED, [identify_kit.candidates(tables()), asked]), strict=True
    ):
        assert _plain(_look_in_python(one)) == _plain(phone), one


def _looked_at(chance: random.Random) -> dict[str, str]:
    """Answers true and false, some left, some that are none."""
    kind = chance.choice(guided.kinds(tables()))
    found = {}
    for step in guided.STEPS:
        of = sorted(kind.words[step] if chance.random() < 0.8 else guided.WORDS[step]) or ["?"]
        found[step] = chance.choice(["", "", "unknown", *of, *of, *of, *of])
        if step == "seat" and chance.random() < 0.2:
            found[step] = chance.choice(SEATS)
        if chance.random() < 0.02:
            found[step] = chance.choice(["x", "<b>", "Male", " NONE ", "don't know"])
    return found


def _look_in_python(asked: dict[str, str]) -> list[Any]:
    try:
        answers = guided.read(asked)
    except TaggerError as error:
        return [[p.field, p.value, p.message.as_json()] for p in error.problems]
    found = guided.look(answers, tables())
    step = found.step
    return [
        [[one, word, guided.told(one, (word,)).as_json()] for one, word in answers.items()],
        step,
        [[word, guided.in_words(step, word).as_json()] for word in found.choices if step],
        [
            [
                told.kind.family,
                told.kind.form,
                guided.sizes(told.kind).as_json(),
                told.facts,
                _messages(told.alike),
            ]
            for told in found.remaining
        ],
        [[kind.family, kind.form, by] for kind, by in found.ruled_out],
        guided.measured(found),
    ]


def test_readings_far_off_everything_are_answered_alike_and_end_as_no_error() -> None:
    """Several at once had come to a likelihood of nothing: an error of the server, and none on the phone."""
    asked: list[dict[str, Any]] = []
    for form in Form:
        for far, tpi in ((999.0, 80.0), (999.0, 4.0), (0.1, 80.0)):
            given = dict.fromkeys(likelihood.CONTINUOUS, far) | {"tpi": tpi}
            asked.append(
                {"form": form.value, "readings": given, "series": None, "origin": None, "cannot": []}
            )
    found = _in_node_ranked(asked)
    for one, phone in zip(asked, found, strict=True):
        *said, likelihoods = _in_python(one)
        assert _plain(said) == _plain(phone[:-1]), one
        assert all(0 <= each <= 1 for each in likelihoods)


def _in_node_ranked(asked: list[dict[str, Any]]) -> Any:
    return in_node(MODULES, RANKED, [identify_kit.candidates(tables()), asked])


def _invented(chance: random.Random) -> dict[str, Any]:
    """An end of the tables as somebody measures it: with slips, sometimes another's figure, sometimes little."""
    pool, errors = likelihood.pool(tables()), likelihood.Errors()
    n = chance.randrange(len(pool))
    found: dict[str, float] = {}
    for name in likelihood.CONTINUOUS:
        known = [k for k, low in enumerate(pool.low[name][n]) if not np.isnan(low)]
        if known and chance.random() < (0.9 if name == "thread" else 0.5):
            k = chance.choice(known)
            true = chance.uniform(float(pool.low[name][n][k]), float(pool.high[name][n][k]))
            found[name] = max(0.5, round(true + chance.gauss(0, errors.of(name)), 2))
        elif chance.random() < 0.06:
            found[name] = round(chance.uniform(2, 60), 2)
    for name, words in (("seat", SEATS), ("cone", CONES), ("flank", FLANKS)):
        if chance.random() < 0.4:
            found[name] = chance.randrange(len(words))
    looked_at = chance.random() < 0.4  # by questions: then the form may be left open
    for name, words in SAID.items() if looked_at else ():
        if chance.random() < 0.6:
            found[name] = chance.randrange(len(words))
    form = None if looked_at and chance.random() < 0.6 else pool.forms[n]
    better = {"side": form, "swivels": form, "seals": found.get("seat")}  # than what the eye says
    found = {name: value for name, value in found.items() if better.get(name) is None}
    return {
        "form": form,
        "forms": _forms(pool.forms[n]) if form is None and "thread" in found else None,
        "readings": found or {"hex": 22.0},
        "slips": {
            name: chance.uniform(0.05, 1.2) for name in found if name in ROUGHLY and chance.random() < 0.2
        },
        "series": chance.choice([None, None, *map(str, Series)]),
        "origin": chance.choice([None, None, *readings.ORIGINS]),
        "cannot": [name for name in readings.ASKED if chance.random() < 0.1],
    }


def _forms(form: Form) -> list[str]:
    """Those with a thread on the same side, as a diameter says it; of an end without a thread all as if inside."""
    return [
        one.value for one in Form if (one.is_male_thread if form.is_male_thread else one.is_female_thread)
    ]


def _in_python(one: dict[str, Any]) -> list[Any]:
    form, given = one["form"] and Form(one["form"]), one["readings"]
    male = form.is_male_thread if form else "male" in (one["forms"] or ())
    words = {"seat": SEATS, "cone": CONES, "flank": FLANKS, **SAID}
    named: Any = {name: words[name][int(given[name])] for name in words if name in given}
    lengths = ("hex", "nose", "tube_od", "flange_od", "bolt_spacing")
    found = identify(
        Measurements(
            form=form,
            thread_od_mm=given.get("thread") if male else None,
            thread_id_mm=None if male else given.get("thread"),
            tpi=given.get("tpi"),
            series=Series(one["series"]) if one["series"] else None,
            origin=one["origin"],
            cannot=frozenset(one["cannot"]),
            slips=tuple(sorted(one.get("slips", {}).items())),
            **named,
            **{f"{name}_mm": given.get(name) for name in lengths},
        ),
        tables(),
    )
    told = [
        [c.connection, c.size, c.form, c.thread, sorted(c.contradicts), c.series, _messages(c.look_alikes)]
        for c in found.candidates
    ]
    following = found.measure_next.feature if found.measure_next else None
    said = _messages((found.summary, found.tie, found.lacks))
    return [told, following, found.remaining, *said, [c.likelihood for c in found.candidates]]


def _messages(all_: tuple[Any, ...]) -> list[Any]:
    return [message and message.as_json() for message in all_]


def _plain(value: Any) -> Any:
    """Without empty values of messages, which one side writes and the other does not."""
    if isinstance(value, dict):
        return {key: _plain(each) for key, each in value.items() if not (key == "values" and not each)}
    if isinstance(value, list | tuple):
        return [_plain(each) for each in value]
    return str(value) if isinstance(value, str) else value


TYPED = (
    *(
        "26.9",
        "26,9",
        "1 1/16",
        "1 1/16 in",
        '1 1/16"',
        "1-1/16 in",
        "17/16in",
        "1.0625 in",
        "27 mm",
        "2.7 cm",
    ),
    *(
        "",
        "?",
        "don't know",
        "1,234",
        "1/0 in",
        "27 furlongs",
        "about 27",
        "-3",
        "0",
        "2000",
        "-1/2 in",
        ".5 in",
    ),
    *(
        "12",
        "11 1/2",
        "14",
        "100",
        "3",
        "1.5",
        "1,25",
        "0.1",
        "M27",
        "26.9\u00a0mm",
        "1e3",
        "1 / 2 in.",
        "½ in",
    ),
    *(
        "26.9 ± 0.4",
        "26.9 mm ± 0,4 mm",
        "26,9 +/- 0.4 mm",
        "1 1/16 in ± 0.02",
        "1.06 ± 0.02 in",
        "1.814 ± 0.05",
        "14 ± 1",
        "14 ±",
        "± 1",
        "14 ± 7",
        "14 ± 0",
        "14 ± x",
        "14 ± 1 ± 1",
    ),
)


@pytest.mark.parametrize("unit", ["mm", "in"])
def test_the_phone_reads_what_is_typed_as_the_server_does(unit: str) -> None:
    """Refused alike, with the same words; a bare fraction is never read as mm."""
    asked: list[dict[str, str]] = [{"form": "male", "diameter": text} for text in TYPED]
    for field in ("tpi", "pitch", "hex", "nose", "tube_od", "flange_od", "bolt_spacing"):
        asked += [{"form": "female_swivel", field: text} for text in TYPED]
    asked += [
        {"form": "male", "tpi": "14", "pitch": "1.5"},
        {"diameter": "20"},
        {"form": "x", "diameter": "20"},
    ]
    asked += [{"form": "flange_head", "diameter": "20", "flange_od": "50.8"}, {"form": "eye", "nose": "14"}]
    asked += [{"form": "male", "seat": seat} for seat in ("37", "37°", "37 deg", "FACE", "38", "?")]
    asked += [{"form": "male", "series": "s"}, {"form": "male", "origin": "North America", "flank": "55"}]
    asked += [{"form": "male", "cone": "Outside", "origin": "moon"}, {"form": "male", "series": "X"}]
    asked += [{"side": side, "diameter": "20"} for side in ("male", "FEMALE", "none", "unknown", "both", "")]
    asked += [{"form": "male", "side": "female", "swivels": "yes", "diameter": "20"}]
    asked += [
        {"side": "male", "shape": "taper", "seals": "cone", "seat": seat} for seat in ("", "37", "?", "x")
    ]
    asked += [
        {"side": "none", "swivels": "perhaps", "shape": "round", "seals": "glue"},
        {"form": "?", "side": "?"},
    ]
    found = in_node(MODULES, READ, [identify_kit.candidates(tables()), [[each, unit] for each in asked]])
    for each, phone in zip(asked, found, strict=True):
        expected, slips, refused = _read_in_python(each, unit)
        assert [problem["message"]["id"] for problem in phone["problems"]] == refused, each
        if not refused:
            assert phone["measured"]["readings"] == pytest.approx(expected), each
            assert phone["measured"]["slips"] == pytest.approx(slips), each
    bare = next(phone for each, phone in zip(asked, found, strict=True) if each.get("diameter") == "1 1/16")
    assert bare["measured"]["readings"].get("thread") == (26.9875 if unit == "in" else None)


def _read_in_python(asked: dict[str, str], unit: str) -> tuple[dict[str, float], dict[str, float], list[str]]:
    whole = {name: asked.get(name, "") for name in MEASURED}
    try:
        measured = _measurements(_in_unit(whole, unit))
        return measured.readings(), dict(measured.slips), []
    except TaggerError as error:
        return {}, {}, [problem.message.id for problem in error.problems]


@pytest.mark.parametrize("unit", ["mm", "in"])
def test_the_page_a_phone_keeps_reads_lengths_in_the_shops_unit(
    store: Store, unit: Literal["mm", "in"]
) -> None:
    kept = {}
    units: tuple[Literal["mm", "in"], ...] = (unit, "mm")
    for each in units:
        client = TestClient(create_app(Settings(length_unit=each), store=store))
        kept[each] = client.get("/scan/now/identify-en.json").json()
    assert f'data-unit="{unit}"' in kept[unit]["/scan/identify?lang=en"]["text"]
    assert (kept[unit].keys() == kept["mm"].keys()) is (unit == "mm"), "another unit is another version"


def test_all_that_identifies_without_a_signal_is_small(client: TestClient) -> None:
    for lang in ("en", "de"):
        answers = [client.get(f"/scan/now/{name}.json") for name in ("identify", f"identify-{lang}")]
        assert all(answer.status_code == 200 for answer in answers)
        assert sum(len(gzip.compress(answer.content)) for answer in answers) < MOST
    assert client.get("/scan/now/identify-it.json").status_code == 404
