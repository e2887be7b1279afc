"""The commands that prove assemblies: proof tests, the manufacturers' allowance, flushing, certificates."""

from __future__ import annotations

import argparse
from typing import TYPE_CHECKING, Any

from tagger import whole_files
from tagger.cli.commands import Answer, open_store, shop_settings, shop_tables
from tagger.i18n import Translator
from tagger.messages import Message, pressure

if TYPE_CHECKING:
    from tagger.store import Event, ProofTest, Store, Verdict
    from tagger.trade.proof import Required


def proof(a: argparse.Namespace, t: Translator) -> Answer:
    """Records a proof test and tells what it proves; without a result, what a test must be and what the last proves.

    Several assemblies are tested in one act: all of them, or none.
    """
    from tagger.code import number
    from tagger.errors import Problem, StoreError

    if not a.result and (a.pressure_bar or a.hold_s):
        raise StoreError(Problem("result", None, Message("cli-proof-no-result")))
    with open_store() as store:
        numbers = members(store, a)
        if len(numbers) > 1 or a.run:
            return _batch(store, numbers, a, t)
        [known] = numbers
        if a.result:
            store.record_proof_test(known, _test(a), tables=shop_tables(store), confirmed=a.confirmed)
        return _told(store, known, number.format(known), t)


def members(store: Store, a: argparse.Namespace) -> list[str]:
    """The numbers that a command names; with ``--run`` every one registered together with one of them, but void ones."""
    named = store.assemblies(a.numbers)
    if not a.run:
        return [one.number for one in named]
    runs = dict.fromkeys(one.run for one in named)
    return [one.number for run in runs for one in store.run(run) if one.void is None]


def _batch(store: Store, numbers: list[str], a: argparse.Namespace, t: Translator) -> Answer:
    """One proof test of several assemblies, or what a test of each must be."""
    from tagger.code.number import format as shown

    if not a.result:
        told = [_told(store, number, shown(number), t) for number in numbers]
        texts = [f"{shown(number)}\n{text}" for number, (_, text) in zip(numbers, told, strict=True)]
        return {"members": [answer for answer, _ in told]}, "\n".join(texts)
    batch = store.record_proof_batch(numbers, _test(a), tables=shop_tables(store), confirmed=a.confirmed)
    proved = store.proved_of(batch.numbers)
    rows = [{"number": shown(number), "result": str(proved[number][1].result)} for number in batch.numbers]
    lines = [t("cli-proof-batch", batch=batch.reference, count=len(rows))]
    for number in batch.numbers:
        event, said = proved[number]
        bar, hold = pressure(event.data["pressure_bar"]), event.data["hold_s"]
        tested = Message("cli-proof-line", result=str(said.result), pressure=bar, hold=hold)
        lines.append(t("cli-of-tag", number=shown(number), what=tested))
    return {"batch": batch.reference, "members": rows}, "\n".join(lines)


def flush(a: argparse.Namespace, t: Translator) -> Answer:
    """Records that assemblies were cleaned inside, how and by whom."""
    from pydantic import ValidationError

    from tagger.code.number import format as shown
    from tagger.errors import StoreError, problems_of
    from tagger.store import Flushing

    try:
        done = Flushing(method=a.method, flushed_by=a.flushed_by)
    except ValidationError as error:
        raise StoreError(problems_of(error)) from None
    with open_store() as store:
        events = store.record_flushing(members(store, a), done)
    numbers = [shown(event.number) for event in events]
    return {"numbers": numbers, **done.model_dump()}, t("cli-flush-done", count=len(numbers))


def certificate(a: argparse.Namespace, t: Translator) -> Answer:
    """Writes the certificate of the last proof test of each assembly, or of the batch one was tested in."""
    from tagger.errors import Problem, StoreError
    from tagger.intake import unusable
    from tagger.papers.batch_certificate import of_batch
    from tagger.papers.certificate import of_each, of_last_test

    if a.out.suffix.lower() != ".pdf":
        raise StoreError(Problem("--out", str(a.out), Message("cli-out-not-pdf")))
    with open_store() as store:
        numbers, shop, tables = members(store, a), shop_settings(), shop_tables(store)
        if a.batch:
            body = of_batch(store, numbers[0], shop, tables, t.language)
        elif len(numbers) == 1:
            body = of_last_test(store, numbers[0], shop, tables, t.language)
        else:
            body = of_each(store, numbers, shop, tables, t.language)
    try:
        whole_files.write(a.out, body)
    except OSError as error:
        raise StoreError(Problem("--out", str(a.out), unusable(error))) from None
    return {"file": str(a.out)}, str(a.out)


def _test(a: argparse.Namespace) -> ProofTest:
    """The test that the options say. Raises StoreError naming every field that is wrong."""
    from pydantic import ValidationError

    from tagger.errors import StoreError, problems_of
    from tagger.store import ProofTest

    names = ("medium", "tester", "note", "lower_source", "rating_bar", "rating_source", "rating_confirmed",
             "gauge", "gauge_valid_until", "method")  # fmt: skip
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
