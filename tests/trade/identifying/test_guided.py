"""Identifying by looking: whatever is answered truly, or left, the end's own family stays in the list."""

from __future__ import annotations

from functools import cache
from itertools import product

import pytest

from tagger.errors import SpecError
from tagger.spec import Connection, Form
from tagger.trade.identifying import guided, likelihood
from tagger.trade.identifying.guided import UNKNOWN, WORDS, Kind, Looked, look, read
from tagger.trade.identifying.identify import Errors, Measurements, fits_all, identify
from tagger.trade.tables import tables

ALL = guided.kinds(tables())


@cache
def _page(*answers: tuple[str, str]) -> Looked:
    return look(dict(answers), tables())


def kinds_of(found: Looked) -> list[Kind]:
    return [told.kind for told in found.remaining]


def _asked_in_turn(kind: Kind, leave: frozenset[str]) -> list[Looked]:
    """Every page of somebody who answers what is true of a kind, and leaves some questions."""
    answers: dict[str, str] = {}
    pages = [_page()]
    while pages[-1].step is not None:
        step = pages[-1].step
        own = [word for word in pages[-1].choices if word in kind.words[step]]
        answers = {**answers, step: UNKNOWN if step in leave or not own else own[0]}
        pages.append(_page(*answers.items()))
    return pages


def test_every_kind_of_the_tables_is_known_to_the_questions() -> None:
    pool = likelihood.pool(tables())
    assert {(kind.family, kind.form) for kind in ALL} == set(zip(pool.families, pool.forms, strict=True))
    named = {Connection(str(family)) for family in tables().families} - {Connection("other")}
    assert {kind.family for kind in ALL} == named


def test_ends_without_a_thread_are_neither_male_nor_female() -> None:
    threaded = {form for form in Form if form.is_male_thread or form.is_female_thread}
    assert threaded and set(guided.THREADLESS) == set(Form) - threaded
    assert read({"form": "eye"}) == {"form": "eye"}


def test_what_tells_two_kinds_apart_is_told() -> None:
    found = _page(("side", "male"), ("seals", "flat"))
    assert {(told.kind.family, told.facts) for told in found.remaining} == {
        (Connection.BSPP, (("seat", ("60",)),)),
        (Connection.METRIC_FLAT_STUD, ()),
    }


def test_whoever_answers_truly_or_leaves_any_question_keeps_the_right_kind_at_every_step() -> None:
    """For every kind, and every set of questions that is left."""
    steps = [step for step in guided.STEPS if step != "side"]
    for kind in ALL:
        for left in product((False, True), repeat=len(steps)):
            leave = frozenset(step for step, one in zip(steps, left, strict=True) if one)
            if len(leave) in (0, 1, len(steps)):
                for page in _asked_in_turn(kind, leave):
                    assert kind in kinds_of(page), (kind.family, kind.form, page.answers)
        for page in _asked_in_turn(kind, frozenset(guided.STEPS)):
            assert kind in kinds_of(page)


def test_every_true_answer_keeps_the_kind_in_any_order_and_with_any_other_true_answer() -> None:
    """All that tables say of a kind at once: BSPP seals on a cone or on a washer, and both leave it."""
    for kind in ALL:
        own = [sorted(kind.words[step] & set(WORDS[step])) or [UNKNOWN] for step in guided.STEPS]
        for words in product(*own):
            answers = dict(zip(guided.STEPS, words, strict=True))
            assert kind in kinds_of(look(answers, tables())), answers


def test_one_wrong_answer_leaves_the_right_kind_among_those_it_alone_ruled_out() -> None:
    for kind in ALL:
        true = {
            step: min(kind.words[step] & set(WORDS[step]))
            for step in guided.STEPS
            if kind.words[step] & set(WORDS[step])
        }
        for step, words in WORDS.items():
            for wrong in set(words) - kind.words[step] if kind.words[step] else ():
                found = look({**true, step: wrong}, tables())
                assert kind not in kinds_of(found)
                assert (kind, step) in found.ruled_out


def test_what_is_left_goes_on_to_be_measured_and_the_right_connection_is_not_contradicted() -> None:
    """The answers say the same to identify: no reading of what the eye saw speaks against a true end."""
    for kind in ALL:
        page = _asked_in_turn(kind, frozenset())[-1]
        given = guided.measured(page)
        if given.get("seat") == "24" and kind.form is Form.STANDPIPE:
            continue  # the tables give a plain tube no seat
        found = identify(Measurements.read(**given), tables())
        own = [c for c in found.candidates if (c.connection, c.form) == (kind.family, kind.form)]
        pool = likelihood.pool(tables())
        place = list(zip(pool.families, pool.forms, strict=True)).index((kind.family, kind.form))
        assert fits_all(pool, place, Measurements.read(**given), Errors()), given
        assert all(not c.contradicts for c in own), given


def test_no_answer_is_offered_that_nothing_has_and_no_question_that_tells_nothing() -> None:
    for kind in ALL:
        for page in _asked_in_turn(kind, frozenset()):
            remaining = kinds_of(page)
            for word in page.choices:
                assert page.step is not None
                assert any(word in one.words[page.step] for one in remaining)
            if page.step is not None:
                assert any(not one.allows(page.step, word) for one in remaining for word in page.choices)


def test_the_questions_come_in_the_trades_order() -> None:
    assert look({}, tables()).step == "side"
    for kind in ALL:
        asked = [page.step for page in _asked_in_turn(kind, frozenset()) if page.step]
        assert asked == sorted(asked, key=guided.STEPS.index)


def test_answers_that_are_none_are_refused_by_name() -> None:
    with pytest.raises(SpecError) as refused:
        read({"side": "both", "shape": "round", "seat": "37", "cone": "?"})
    assert [(p.field, p.value) for p in refused.value.problems] == [("side", "both"), ("shape", "round")]
    assert read({"seat": "30", "cone": " Don't know ", "x": "y"}) == {"cone": UNKNOWN, "seat": "60"}
    assert read({"seat": "taper"}) == {"seals": "thread"}
    assert read({"form": "male"}) == {"form": "male"}


def test_a_form_that_is_the_only_one_left_is_passed_on_and_never_one_of_two() -> None:
    assert guided.measured(look({"side": "male", "swivels": "no", "seals": "face"}, tables())) == {
        "form": "male",
        "seals": "face",
    }
    assert guided.measured(look({"side": "female", "shape": "parallel", "seat": "37"}, tables())) == {
        "side": "female",
        "shape": "parallel",
        "seat": "37",
    }


def test_look_alikes_that_remain_are_told_apart_in_words() -> None:
    found = look({"side": "male", "shape": "taper"}, tables())
    alike = {told.family: [message.id for message in told.alike] for told in found.remaining}
    assert alike[Connection("npt")] == ["fit-alike-tapers", "fit-alike-npt_nptf"]
    assert "fit-alike-tapers" in alike[Connection("bspt")]
    assert all("bspp" not in str(told.alike) for told in found.remaining), "told apart already"
