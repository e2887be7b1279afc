"""The commands over crimps: diameters measured on assemblies, and the shop's crimp cards."""

from __future__ import annotations

import argparse
from typing import TYPE_CHECKING, Any

from tagger.cli.commands import Answer, open_store, shop_tables
from tagger.i18n import Translator
from tagger.messages import Message

if TYPE_CHECKING:
    from tagger.store import Assembly, CrimpMeasured, CrimpValue, Store

COLUMNS = ("number", "end", "measured_mm", "shell")


def crimp(a: argparse.Namespace, t: Translator) -> Answer:
    """Records measured crimp diameters, each held against the shop's card: all of them, or none."""
    from tagger.code.number import format as shown

    rows = _of_the_file(a) if a.file else _of_the_options(a)
    with open_store() as store:
        events = store.record_crimp_batch(_measured(store, rows))
    found = [{"number": shown(event.number), **crimp} for event in events for crimp in event.data["crimps"]]
    return {"crimps": found}, "\n".join(t(_line(one)) for one in found)


def _line(one: dict[str, Any]) -> Message:
    measured = Message(
        "papers-crimp",
        holds="in" if one["holds"] else "out",
        measured=one["measured_mm"],
        low=one["low_mm"],
        high=one["high_mm"],
        shell=one["shell"],
        source=one["source"],
    )
    ended = Message("cli-crimp-of-end", end=one["end"].upper(), crimp=measured)
    return Message("cli-of-tag", number=one["number"], what=ended)


def _of_the_options(a: argparse.Namespace) -> list[dict[str, Any]]:
    """One row for each end that was measured. Raises StoreError where none was."""
    from tagger.errors import Problem, StoreError

    rows = [
        {"number": a.number, "end": end, "measured_mm": given, "shell": getattr(a, f"shell_{end}")}
        for end in ("a", "b")
        if (given := getattr(a, end)) is not None
    ]
    if not a.number or not rows:
        raise StoreError(Problem("crimps", None, Message("cli-crimp-nothing")))
    return rows


def _of_the_file(a: argparse.Namespace) -> list[dict[str, Any]]:
    """The rows of a list, each as ``row N`` in a problem. Raises SpecError."""
    from tagger import shop_lists

    read = shop_lists.read_numbered(shop_lists.table_of(a.file), COLUMNS, dict)
    return [{**row, "place": f"row {number}"} for number, row in read]


def _measured(store: Store, rows: list[dict[str, Any]]) -> dict[str, list[CrimpMeasured]]:
    """Each crimp held against its card, by tag number. Raises StoreError naming every row that is wrong."""
    from tagger.errors import Problem, StoreError, TaggerError

    found: dict[str, list[CrimpMeasured]] = {}
    problems: list[Problem] = []
    for row in rows:
        try:
            known = store.assembly(str(row.get("number") or ""))
            found.setdefault(known.number, []).append(_held_against(store, known, row))
        except TaggerError as error:
            problems += (error.within(row["place"]) if "place" in row else error).problems
    if problems:
        raise StoreError(problems)
    return found


def _held_against(store: Store, known: Assembly, row: dict[str, Any]) -> CrimpMeasured:
    """One measured crimp and its card's band; without a shell, the series of the end's fitting."""
    from pydantic import ValidationError

    from tagger.errors import Problem, StoreError, problems_of
    from tagger.trade.fittings import stock_key
    from tagger.units import read_length_mm

    end, hose = str(row.get("end") or "").strip().lower(), known.spec.hose
    if end not in ("a", "b"):
        raise StoreError(Problem("end", row.get("end"), Message("cli-crimp-end")))
    number = getattr(known.spec, f"end_{end}").fitting
    fitting = store.fittings_of(known.spec).get(stock_key(number)) if number else None
    shell = row.get("shell") or (fitting.fitting_series if fitting else None)
    if not shell:
        raise StoreError(
            Problem("shell", None, Message("cli-crimp-no-shell", end=end.upper(), field="shell"))
        )
    card = store.crimp(hose.standard, hose.dash, str(shell), part=hose.part)
    try:
        return card.measured(end, read_length_mm(row.get("measured_mm")))
    except ValidationError as error:
        raise StoreError(problems_of(error)) from None


def cards(a: argparse.Namespace, t: Translator) -> Answer:
    """The shop's crimp cards; reads a list in, all of it or nothing, or deletes one."""
    from tagger import crimp_cards, shop_lists

    with open_store() as store:
        if a.file:
            read = crimp_cards.read_cards(shop_lists.table_of(a.file), shop_tables(store))
            found = store.keep_crimps(read)
        elif a.drop is not None:
            found = [store.drop_crimp(a.drop)]
        else:
            found = store.crimps()
    answer = {"crimp_cards": [vars(card) for card in found]}
    return answer, "\n".join(t(_card_line(card)) for card in found) or t("cli-crimp-cards-none")


def _card_line(card: CrimpValue) -> Message:
    hose = " ".join(filter(None, (card.hose_standard, f"-{card.hose_dash}", card.hose_part)))
    return Message(
        "cli-crimp-card",
        id=str(card.id),
        hose=hose,
        series=card.shell,
        diameter=card.diameter_mm,
        plus=card.plus_mm,
        minus=card.minus_mm,
        source=card.source,
    )
