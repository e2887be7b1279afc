"""The traveller: what to build and how, one sheet for each spec of a run, with a row of boxes for each hose.

The picture has the ends as they are clocked, with the view along the hose beside it.
"""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date
from typing import Any

from reportlab.lib import colors
from reportlab.platypus import PageBreak, TableStyle

from api.settings import Settings
from tagger.code import number as tag_number
from tagger.drawing import ends_picture
from tagger.i18n import Translator
from tagger.i18n.figures import show_date
from tagger.messages import Message, least_pressure, length
from tagger.papers import document
from tagger.spec import AssemblySpec, End
from tagger.store import Assembly, Store
from tagger.store.crimps import EndCard, inserted
from tagger.trade.cutting import Cut, cut
from tagger.trade.tables import Tables
from tagger.words import Words

_WIDTHS, _BOXES = (48, 122), (36, 22, 26, 26, 30, 30)


def of_run(store: Store, run: int, settings: Settings, tables: Tables, language: str | None = None) -> bytes:
    """The PDF's bytes. Raises StoreError for a run that is not here."""
    t = Translator(language or settings.language)
    sheets: dict[str, list[Assembly]] = {}
    for item in store.run(run):
        sheets.setdefault(str((item.spec, item.order_reference, item.cleanliness)), []).append(item)
    story: list[Any] = []
    for made in sheets.values():
        story += [PageBreak()] if story else []
        story += _sheet(store, made, settings, tables, t)
    title = t("stock-traveller-title")
    return document.to_pdf(story, title=title, settings=settings)


def _sheet(
    store: Store, made: list[Assembly], settings: Settings, tables: Tables, t: Translator
) -> list[Any]:
    known, spec = made[0], made[0].spec
    fittings = store.fittings_of(spec)
    cards = store.crimp_cards(spec, fittings)
    rows = [
        *_order(store, known, t),
        *_parts(spec, t),
        (t("words-record-cleanliness"), known.cleanliness or ""),
        *_cutting(cut(spec, inserted(fittings, cards, spec)), spec, t),
        *_cards(cards, t),
        (t("stock-traveller-proof"), t(_proof(known, tables))),
    ]
    boxes = document.table(_boxes(made, t), _BOXES, heading=True)
    boxes.setStyle(TableStyle([("GRID", (0, 0), (-1, -1), 0.5, colors.black)]))
    return [
        *document.head(settings),
        document.text(t("stock-traveller-title"), 18, bold=True),
        document.text(t("stock-traveller-count", count=len(made)), 12, bold=True),
        document.gap(3),
        document.picture(ends_picture(spec, 150, 20, length_text=t.figure(length(spec.length_mm)))),
        document.table([row for row in rows if row[1]], _WIDTHS),
        document.gap(3),
        *(document.text(t(card.why), 10, bold=True) for card in cards if card.wrong and card.why),
        document.text(t("stock-traveller-clean")),
        document.gap(3),
        boxes,
    ]


def _order(store: Store, known: Assembly, t: Translator) -> list[tuple[str, str]]:
    if known.order_reference is None:
        return []
    due: date | None = store.order(known.order_reference).needed_by
    return [
        (t("stock-traveller-order"), known.order_reference),
        (t("stock-traveller-due"), show_date(due, t) if due else ""),
    ]


def _parts(spec: AssemblySpec, t: Translator) -> list[tuple[str, str]]:
    words = Words(t.language)
    part = ", ".join(filter(None, (spec.hose.part, spec.hose.lot)))
    return [
        (t("stock-traveller-hose"), words.hose(spec.hose)),
        (t("stock-traveller-part"), part),
        (t("stock-traveller-end", end="A"), _end(spec.end_a, words)),
        (t("stock-traveller-end", end="B"), _end(spec.end_b, words)),
        (t("stock-traveller-clocking"), words.clocking(spec) or ""),
    ]


def _end(end: End, words: Words) -> str:
    return ", ".join(filter(None, (end.fitting, words.end(end), end.lot)))


def _cutting(found: Cut, spec: AssemblySpec, t: Translator) -> list[tuple[str, str]]:
    cut_mm = t.figure(length(found.length_mm)) if found.length_mm is not None else ""
    return [
        (t("stock-traveller-overall"), Words(t.language).length(spec)),
        (t("stock-cut-title"), cut_mm or "\n".join(t(why) for why in found.unknown)),
        (t("stock-traveller-arithmetic"), t(found.arithmetic) if found.arithmetic else ""),
        (t("stock-traveller-marks"), "\n".join(t(mark) for mark in found.marks)),
    ]


def _cards(cards: Sequence[EndCard], t: Translator) -> list[tuple[str, str]]:
    """A row for each end's card, the caption at the first."""
    said = ["\n".join(t(line) for line in card.lines()) for card in cards]
    return [
        (t("stock-card-title") if not place else "", card) for place, card in enumerate(filter(None, said))
    ]


def _proof(known: Assembly, tables: Tables) -> Message:
    called = known.assessment.test_pressure_bar
    if called is None:
        return Message("stock-traveller-proof-unknown")
    hold = tables.rule("proof_hold_min").value
    return Message("stock-traveller-proof-value", pressure=least_pressure(called), hold=hold)


def _boxes(made: list[Assembly], t: Translator) -> list[list[str]]:
    heading = [
        t("stock-traveller-tag"),
        t("stock-traveller-cut"),
        t("stock-traveller-crimped", end="A"),
        t("stock-traveller-crimped", end="B"),
        t("stock-traveller-proved"),
        t("stock-traveller-cleaned"),
    ]
    return [heading, *([tag_number.format(one.number), "", "", "", "", ""] for one in made)]
