"""The certificate of a proof test, as one A4 page; the shop's own statement, never an independent body's."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from datetime import date
from typing import Any

from reportlab.graphics.barcode.qr import QrCodeWidget
from reportlab.graphics.shapes import Drawing
from reportlab.lib.units import mm
from reportlab.platypus import PageBreak

from tagger import phrases, rated
from tagger.code import link
from tagger.code import number as tag_number
from tagger.errors import Problem, StoreError
from tagger.i18n import Translator
from tagger.i18n.figures import show_date
from tagger.messages import Figure, Message, least_pressure, pressure, temperature, torque
from tagger.papers import document
from tagger.record import RECORD_FIELDS
from tagger.settings import ShopSettings
from tagger.store import Assembly, Event, Kind, Result, Store, Verdict
from tagger.store.overrated import as_of_today
from tagger.trade import grades
from tagger.trade.results import EndAdvice
from tagger.trade.tables import Tables

Crimps = Sequence[Mapping[str, Any]]  # the last one of each end, as the history keeps it
_CODE, _WIDTHS = 26 * mm, (48, 122)


def of_last_test(
    store: Store, number: str, settings: ShopSettings, tables: Tables, language: str | None = None
) -> bytes:
    """The certificate of a tag's last proof test, in ``language`` (default: the shop's).

    Its pressure is the lower of that registered and that of ``tables``. Raises StoreError where there is no record, or no test.
    """
    t = Translator(language or settings.language)
    story, title = (
        _story_of(store, number, settings, tables, t),
        t("papers-proof-file-title", number=tag_number.format(tag_number.compact(number))),
    )
    return document.to_pdf(story, title=title, settings=settings, numbered=True)


def of_each(
    store: Store, numbers: Sequence[str], settings: ShopSettings, tables: Tables, language: str | None = None
) -> bytes:
    """A certificate for each of these tags, each on a page of its own. Raises StoreError as ``of_last_test``."""
    t = Translator(language or settings.language)
    story: list[Any] = []
    for number in numbers:
        story += [PageBreak()] if story else []
        story += _story_of(store, number, settings, tables, t)
    return document.to_pdf(story, title=t("papers-proof-title"), settings=settings)


def _story_of(store: Store, number: str, settings: ShopSettings, tables: Tables, t: Translator) -> list[Any]:
    [known] = as_of_today([store.assembly(number)], tables)
    proved = store.proved(known.number)
    if proved is None:
        shown = tag_number.format(known.number)
        raise StoreError(Problem("number", number, Message("papers-no-proof-test", number=shown)))
    crimps = store.crimped([known.number]).get(known.number, ())
    allowed = store.last([known.number], Kind.PROOF_ALLOWED).get(known.number)
    flushed = store.flushed([known.number]).get(known.number)
    since = [
        event
        for event in store.history(known.number)
        if event.kind is Kind.CORRECTED and event.id > proved[0].id
    ]
    story = _story(known, Proved(*proved, allowed, tuple(since), flushed), crimps, settings, t)
    return [*story, chain_line(store, t)]


def chain_line(store: Store, t: Translator) -> Any:
    """Up to which link of the chain the records went when the paper was made."""
    return document.text(t("papers-chain", head=store.head().short), 7)


@dataclass(frozen=True)
class Proved:
    """A test, what it proves today, the last allowance and flushing, and corrections of the record since."""

    test: Event
    verdict: Verdict
    allowed: Event | None
    corrected: tuple[Event, ...] = ()
    flushed: Event | None = None


def _story(
    known: Assembly, proved: Proved, crimps: Crimps, settings: ShopSettings, t: Translator
) -> list[Any]:
    """Says plainly what the test proves: never more than was asked of it and held."""
    number = tag_number.format(known.number)
    said: dict[str, str | Figure] = {
        "result": str(proved.verdict.result),
        "pressure": pressure(proved.test.data["pressure_bar"]),
    }
    title = (
        "papers-tested-title"
        if proved.verdict.result in (Result.TESTED, Result.OUTDATED)
        else "papers-proof-title"
    )
    code = _code(link.build(settings.base_url, known.number, known.digits))
    heading = [
        *document.head(settings),
        document.text(t(Message(title)), 15, bold=True),
        document.text(t("papers-batch-number", batch=f"{number}/{proved.test.id}"), 10),
        document.text(t(_first_line(known, number, crimps, said)), 13, bold=True),
    ]
    story = [
        document.beside(heading, code, 30),
        document.gap(2),
        table([(Message("papers-tag-number"), number), *of_the_assembly(known, proved.flushed)], t),
        document.gap(3),
        document.text(t("papers-test"), 12, bold=True),
        table(_of_the_test(proved, said), t),
    ]
    if crimps:
        story += [document.gap(3), document.text(t("papers-crimps"), 12, bold=True)]
        story += [table(_of_the_crimps(crimps), t)]
    for event in proved.corrected:
        anew = Message("papers-issued-anew", day=event.at.date(), fields=corrections(event))
        story += [document.gap(3), document.text(t(anew), 9, bold=True)]
    story += [
        document.gap(3),
        document.text(t("papers-proof-limits"), 9),
        document.text(t("papers-own-statement", shop=settings.shop_name), 9),
    ]
    return story


def _first_line(known: Assembly, number: str, crimps: Crimps, said: dict[str, str | Figure]) -> Message:
    """What everybody reads: no test passed stands above a withdrawal or a crimp out of its band."""
    if known.withdrawn:
        reasons = tuple(withdrawal.reason for withdrawal in known.withdrawals)
        return Message("papers-proof-withdrawn-line", number=number, reasons=reasons)
    if not all(crimp["holds"] for crimp in crimps):
        return Message("papers-proof-crimp-line", number=number)
    return Message("papers-proof-result-line", number=number, **said)


Row = tuple[Message, Message | Figure | date | str | None]
"""A caption and what stands beside it; a row with nothing beside it is left out."""


def table(rows: list[Row], t: Translator) -> Any:
    """The rows as a table, each value in the reader's language."""

    def shown(cell: Message | Figure | date | str) -> str:
        if isinstance(cell, Figure):
            return t.figure(cell)
        if isinstance(cell, date):
            return show_date(cell, t)
        return t(cell) if isinstance(cell, Message) else cell

    return document.table([(t(caption), shown(cell)) for caption, cell in rows if cell], _WIDTHS)


def corrections(event: Event) -> tuple[Message, ...]:
    """What was corrected, with the value that an earlier certificate has."""
    none = Message("papers-not-recorded")
    return tuple(
        Message("papers-corrected", field=_field(name), old=value["old"] or none, new=value["new"] or none)
        for name, value in event.data["fields"].items()
    )


def _field(name: str) -> Message:
    """What a corrected field is called on paper."""
    if name in RECORD_FIELDS:
        return Message(f"words-record-{name}")
    return Message(f"papers-field-{name.replace('.', '-')}")


def of_the_assembly(known: Assembly, flushed: Event | None = None) -> list[Row]:
    """What was tested, with its ratings, fluid, lots and cleanliness; ``flushed``: the last flushing."""
    spec = known.spec
    place = ", ".join(part for part in (known.machine, known.position) if part)
    return [
        (Message("papers-hose"), _with_lot(phrases.hose(spec.hose), spec.hose.lot)),
        (Message("papers-end-a"), _with_lot(phrases.end(spec.end_a), spec.end_a.lot)),
        (Message("papers-end-b"), _with_lot(phrases.end(spec.end_b), spec.end_b.lot)),
        (Message("papers-length"), phrases.overall_length(spec)),
        (Message("papers-clocking"), phrases.clocking(spec)),
        (Message("papers-working-pressure"), rated.message(known.content)),
        (Message("papers-working-pressure-source"), _source(known)),
        (Message("papers-tighten-a"), _torque(known.assessment.end_a)),
        (Message("papers-tighten-b"), _torque(known.assessment.end_b)),
        (Message("papers-fluid"), phrases.fluid_of(spec)),
        (Message("papers-temperature"), _hottest(known)),
        *((Message("papers-danger"), danger) for danger in rated.dangers(known.content)),
        *((Message("papers-danger"), above) for above in known.assessment.above_published),
        (Message("words-record-cleanliness"), known.cleanliness),
        (Message("papers-flushing"), flushing(flushed)),
        (Message("papers-built-on"), known.built_on),
        (Message("papers-customer"), known.customer),
        (Message("papers-machine-position"), place),
        (Message("papers-order"), known.order_reference),
    ]


def flushing(event: Event | None) -> Message | None:
    """How an assembly was cleaned inside, by whom and when."""
    if event is None:
        return None
    data = event.data
    return Message("papers-flushed", method=data["method"], who=data["flushed_by"], day=event.at.date())


def _source(known: Assembly) -> Message | str:
    """The limiting part's source and its grade."""
    rating = known.assessment.working_pressure
    limiting = [part for part in rating.parts if part.part == rating.limited_by]
    return grades.cited(limiting[0]) if limiting else rating.source


def _torque(advice: EndAdvice) -> Message | None:
    """The torque of an end with what it holds for, what other sources say, and its source."""
    if (found := advice.torque) is None:
        return None
    shown = torque(found.min, found.max)
    return Message("papers-torque", torque=shown, basis=found.basis, source=found.source)


def _hottest(known: Assembly) -> Figure | None:
    """As entered, else what the hose bears with the fluid."""
    celsius = known.spec.max_temperature_c
    if celsius is None:
        celsius = known.assessment.max_temperature_c
    return None if celsius is None else temperature(celsius)


def _with_lot(part: Message, lot: str | None) -> Message:
    return Message("papers-with-lot", part=part, lot=lot) if lot else part


def _of_the_test(proved: Proved, said: dict[str, str | Figure]) -> list[Row]:
    return [
        (Message("papers-result"), Message("papers-result-said", **said)),
        (Message("papers-result-why"), proved.verdict.why),
        *of_the_act(proved.test),
        (Message("papers-allowed"), _allowance(proved.allowed)),
    ]


def of_the_act(test: Event) -> list[Row]:
    """How the test was made, with what and by whom."""
    data = test.data
    called = data.get("called_for_bar")
    medium = str(data["medium"]).replace(" ", "-")
    until = data.get("gauge_valid_until")
    return [
        (Message("papers-pressure"), pressure(data["pressure_bar"])),
        (
            Message("papers-pressure-required"),
            least_pressure(called) if called else Message("papers-not-recorded"),
        ),
        (Message("papers-rating-given"), _rating_given(data)),
        (Message("papers-method"), data.get("method")),
        (Message("papers-hold-time"), _hold(data)),
        (Message("papers-medium"), Message(f"bench-medium-{medium}")),
        (Message("papers-gauge"), data.get("gauge")),
        (Message("papers-gauge-valid-until"), date.fromisoformat(until) if until else None),
        (Message("papers-tested-by"), data["tester"]),
        (
            Message("papers-recorded"),
            Message("papers-recorded-at", day=test.at.date(), time=f"{test.at:%H:%M}"),
        ),
        (Message("papers-note"), data.get("note")),
    ]


def _rating_given(data: dict[str, Any]) -> Message | None:
    if data.get("rating_bar") is None:
        return None
    given = pressure(data["rating_bar"])
    return Message("papers-rating-given-said", pressure=given, source=data["rating_source"])


def _allowance(allowed: Event | None) -> Message | None:
    if allowed is None:
        return None
    data = allowed.data
    day = date.fromisoformat(data["allowed_on"])
    return Message("papers-allowed-said", who=data["allowed_by"], day=day, document=data["document"])


def _hold(data: dict[str, Any]) -> Message:
    held, least, most = data["hold_s"], data.get("called_for_s"), data.get("called_for_most_s")
    if least is None:
        return Message("papers-hold", held=held)
    if most is None:
        return Message("papers-hold-least", held=held, least=least)
    if held > most:
        return Message("papers-hold-longer", held=held, least=least, most=most)
    return Message("papers-hold-range", held=held, least=least, most=most)


def _of_the_crimps(crimps: Crimps) -> list[Row]:
    return [
        (
            Message(f"papers-end-{crimp['end']}"),
            Message(
                "papers-crimp",
                holds="in" if crimp["holds"] else "out",
                measured=float(crimp["measured_mm"]),
                low=float(crimp["low_mm"]),
                high=float(crimp["high_mm"]),
                shell=crimp["shell"],
                source=crimp["source"],
            ),
        )
        for crimp in crimps
    ]


def _code(text: str) -> Drawing:
    widget = QrCodeWidget(text, barLevel="M", barWidth=_CODE, barHeight=_CODE, barBorder=4)
    drawing = Drawing(_CODE, _CODE)
    drawing.add(widget)
    return drawing
