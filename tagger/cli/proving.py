"""The commands over one assembly's proof tests: a test as it was made, and the manufacturers' allowance."""

from __future__ import annotations

import argparse
from typing import TYPE_CHECKING, Any

from tagger.cli.commands import Answer, open_store, shop_tables
from tagger.i18n import Translator
from tagger.messages import Message, pressure

if TYPE_CHECKING:
    from tagger.store import Event, ProofTest, Store, Verdict
    from tagger.trade.proof import Required


def proof(a: argparse.Namespace, t: Translator) -> Answer:
    """Records a proof test and tells what it proves; without a result, what a test must be and what the last proves."""
    from tagger.code import number
    from tagger.errors import Problem, StoreError

    if not a.result and (a.pressure_bar or a.hold_s):
        raise StoreError(Problem("result", None, Message("cli-proof-no-result")))
    with open_store() as store:
        known = store.assembly(a.number)
        if a.result:
            store.record_proof_test(known.number, _test(a), tables=shop_tables(store), confirmed=a.confirmed)
        return _told(store, known.number, number.format(known.number), t)


def _test(a: argparse.Namespace) -> ProofTest:
    """The test that the options say. Raises StoreError naming every field that is wrong."""
    from pydantic import ValidationError

    from tagger.errors import StoreError, problems_of
    from tagger.store import ProofTest

    names = ("medium", "tester", "note", "lower_source", "rating_bar", "rating_source", "rating_confirmed")
    given = {name: value for name in names if (value := getattr(a, name)) is not None}
    values = given | {"pressure_bar": a.pressure_bar, "hold_s": a.hold_s, "passed": a.result == "passed"}
    try:
        return ProofTest.model_validate({name: value for name, value in values.items() if value is not None})
    except ValidationError as error:
        raise StoreError(problems_of(error)) from None


def _told(store: Store, compact: str, shown: str, t: Translator) -> Answer:
    """What a proof test of the assembly must be, and what the last one proves."""
    from tagger.store import proof_required

    asked = proof_required(store.assembly(compact), shop_tables(store))
    proved = store.proved(compact)
    answer: dict[str, Any] = {
        "number": shown,
        "required": {
            "pressure_bar": asked.pressure_bar,
            "most_bar": asked.most_bar,
            "burst_bar": asked.burst_bar,
            "hold_min_s": asked.hold_min.value,
            "hold_max_s": asked.hold_max.value,
            "unknown": list(asked.unknown),
            "unverified": list(asked.unverified),
        },
        "result": str(proved[1].result) if proved else None,
        "why": t.as_json(proved[1].why) if proved and proved[1].why else None,
    }
    return answer, "\n".join(t(line) for line in _lines(asked, proved))


def _lines(asked: Required, proved: tuple[Event, Verdict] | None) -> list[Message]:
    from tagger import phrases
    from tagger.messages import least_pressure

    hold = {"low": asked.hold_min.value, "high": asked.hold_max.value}
    lines = [Message("cli-proof-unknown", **hold)]
    if asked.pressure_bar is not None and not asked.rating_missing:
        lines = [Message("cli-proof-required", pressure=least_pressure(asked.pressure_bar), **hold)]
    if missing := asked.unknown + asked.unverified:
        lines.append(Message("cli-proof-ask-rating", parts=tuple(phrases.part(name) for name in missing)))
    if proved is not None:
        event, said = proved
        bar = pressure(event.data["pressure_bar"])
        lines.append(
            Message("cli-proof-line", result=str(said.result), pressure=bar, hold=event.data["hold_s"])
        )
        lines += [said.why] if said.why else []
    return lines


def allow(a: argparse.Namespace, t: Translator) -> Answer:
    """Records the manufacturers' written allowance for an assembly that a proof test loaded too high."""
    from pydantic import ValidationError

    from tagger.code import number
    from tagger.errors import StoreError, problems_of
    from tagger.store import ProofAllowance

    try:
        given = {"allowed_by": a.allowed_by, "allowed_on": a.allowed_on, "document": a.document}
        letter = ProofAllowance.model_validate(given)
    except ValidationError as error:
        raise StoreError(problems_of(error)) from None
    with open_store() as store:
        known = store.allow_proof_test(a.number, letter).number
    shown = number.format(known)
    return {"number": shown, "allowed": letter.model_dump(mode="json")}, t("cli-allow-done", number=shown)
