"""What each command of the command line does: a namespace of arguments in, an answer out."""

from __future__ import annotations

import argparse
import json
import os
import sys
from collections.abc import Iterator, Sequence
from importlib import import_module
from pathlib import Path
from typing import TYPE_CHECKING, Any

from tagger import phrases, rated
from tagger.errors import Problem, SpecError
from tagger.i18n import Translator
from tagger.intake import json_value, unusable
from tagger.messages import Message, pressure, temperature
from tagger.record import recorded
from tagger.spec import AssemblySpec, TagContent

if TYPE_CHECKING:  # each command loads only what it needs: `tagger schema` opens no database
    from tagger.code.link import Link
    from tagger.printing.content import Tag
    from tagger.settings import ShopSettings
    from tagger.signing import Signed
    from tagger.store import Assembly, Event, Store
    from tagger.store.crimps import EndCard
    from tagger.trade.fittings import Fittings
    from tagger.trade.tables import Tables

Answer = tuple[dict[str, Any], str]  # the --json answer, and the same for people


# --- what the trade says ------------------------------------------------------------------------


def identify(a: argparse.Namespace, t: Translator) -> Answer:
    """Ranks the connections that fit the measurements."""
    from tagger.cli.report import identification_text
    from tagger.trade import report
    from tagger.trade.identifying import identify, marks

    names = ("form", "thread_od", "thread_id", "tpi", "pitch", "seat", "cone", "hex", "tube_od", "flange_od")
    more = ("bolt_spacing", "flank", "nose", "series", "origin", "side", "swivels", "shape", "seals")
    given = {name: getattr(a, name) for name in (*names, *more)} | {"cannot": ",".join(a.cannot or [])}
    read = marks.read(a.found, a.scale, given)
    measured = identify.Measurements.read(**read.values)
    found = identify.identify(measured, shop_settings().tables(), read.errors)
    return report.identification(found, t), identification_text(found, t)


def identify_hose(a: argparse.Namespace, t: Translator) -> Answer:
    """Excludes hose standards by layers and diameters; rates nothing."""
    from tagger.cli.report import exclusion_text
    from tagger.trade import report
    from tagger.trade.identifying.by_layers import HoseSeen, exclude

    tables = shop_settings().tables()
    seen = HoseSeen.read(od=a.od, bore=a.bore, kind=a.kind, layers=a.layers, lay_line=a.lay_line)
    found = exclude(seen, tables)
    return report.hose_exclusion(found, tables, t), exclusion_text(found, t)


def lay_line(a: argparse.Namespace, t: Translator) -> Answer:
    """Reads the line printed along a hose."""
    from tagger.cli.report import lay_line_text
    from tagger.trade import layline, report

    tables = shop_settings().tables()
    line = layline.read(a.text, tables)
    return report.lay_line(line, tables, t), lay_line_text(line, t)


def check(a: argparse.Namespace, t: Translator) -> Answer:
    """Assesses a spec: rating, limits, tightening, warnings."""
    from tagger.cli.report import assessment_text
    from tagger.store.crimps import inserted
    from tagger.trade import assess, keeping, report
    from tagger.trade.cutting import cut, reaches_mm

    (spec, fittings), kept = _spec_asked(a), []
    if a.keep:
        with open_store() as store:
            kept = store.keep_shop_rows(keeping.rows_of(spec, shop_tables(store)))
    cards = _crimp_cards(spec, fittings)
    deep = inserted(fittings, cards, spec)
    found = assess(spec, shop_tables(), length_bands=a.length_bands, reaches_mm=reaches_mm(spec, deep))
    to_cut = cut(spec, deep)
    answer = report.assessment(spec, found, t) | {"cut_length": report.cut(to_cut, t)}
    answer["crimp_cards"] = {card.end[-1]: card.as_dict(t) for card in cards}
    if a.keep:
        answer["kept"] = [row.id for row in kept]
    lines = [assessment_text(spec, found, t), *map(t, to_cut.lines())]
    lines += [t(line) for card in cards for line in card.lines()]
    lines += [t(Message("report-care", text=card.why)) for card in cards if card.wrong and card.why]
    lines += [t("cli-kept", value=row.message) for row in kept]
    return answer, "\n".join(lines)


def compare(a: argparse.Namespace, t: Translator) -> Answer:
    """Compares two specs: does the second replace the first?"""
    from tagger.cli.report import comparison_text
    from tagger.trade import likeforlike, report

    found = likeforlike.compare(_spec_or_tag(a.a), _spec_or_tag(a.b), shop_tables())
    sealed = {name: _signature_on(what) for name, what in (("a", a.a), ("b", a.b))}
    said = [
        t("cli-compare-signature", which=name.upper(), said=line)
        for name, seal in sealed.items()
        if seal is not None
        for line in seal.lines()
    ]
    signatures = {name: seal.as_dict() if seal else None for name, seal in sealed.items()}
    answer = report.comparison(found, t) | {"signatures": signatures}
    return answer, "\n".join([*said, comparison_text(found, t)])


def tables(a: argparse.Namespace, t: Translator) -> Answer:
    """Checks that the tables of the trade are consistent, or reports how much they know."""
    from tagger.trade import validate

    tables = shop_tables()
    if a.what == "report":
        from tagger.cli import tables_report

        found = tables_report.answer(tables)
        return found, tables_report.text(found, t)
    findings = validate.findings(tables)
    answer = {"ok": not findings, "findings": [t.as_json(finding) for finding in findings]}
    if findings:
        return answer, "\n".join(map(t, findings))
    counted = validate.figures(tables)
    ok = Message(
        "cli-tables-ok",
        count=sum(counted.values()),
        published=counted["published"],
        practice=counted["practice"],
        memory=counted["memory"] + counted["judgement"],
        shop=counted["shop"],
    )
    return answer, t(ok)


def fittings(a: argparse.Namespace, t: Translator) -> Answer:
    """The shop's fittings; reads a list in, all of it or nothing, or takes one out."""
    from tagger import shop_lists

    with open_store() as store:
        if a.file:
            rows = shop_lists.read_fittings(shop_lists.table_of(a.file), shop_settings().tables())
            found = store.keep_fittings(rows)
        elif a.drop:
            found = [store.drop_fitting(a.drop)]
        else:
            found = store.fittings(a.text or "")
    lines = [t("cli-fitting", number=one.stock_number, end=phrases.end(one.end)) for one in found]
    return {"fittings": [one.as_dict() for one in found]}, "\n".join(lines) or t("cli-fittings-none")


def hoses(a: argparse.Namespace, t: Translator) -> Answer:
    """The shop's own hoses; reads a list in, all of it or nothing, or withdraws one."""
    from tagger import shop_lists
    from tagger.trade import own_hoses

    with open_store() as store:
        tables = shop_settings().tables(store.held_rows())
        if a.file:
            rows = shop_lists.read_own_hoses(shop_lists.table_of(a.file), tables)
            found = store.keep_own_hoses(rows)
        elif a.drop:
            found = [store.drop_own_hose(a.drop, a.dash or 0, a.reason or "")]
        else:
            found = store.own_hoses()
    lines = [
        t(
            Message(
                "cli-own-hose",
                part=one.part,
                standard=one.standard,
                dash=one.dash,
                rating=own_hoses.said(one, tables),
            )
        )
        for one in found
    ]
    return {"hoses": [one.model_dump(mode="json") for one in found]}, "\n".join(lines) or t("cli-hoses-none")


def schema(_: argparse.Namespace, t: Translator) -> Answer:
    """The JSON Schema of a spec."""
    schema = AssemblySpec.model_json_schema()
    return schema, json.dumps(schema, indent=2, ensure_ascii=False)


# --- tags ---------------------------------------------------------------------------------------


def register(a: argparse.Namespace, t: Translator) -> Answer:
    """Gives assemblies their tag numbers; dangers and cautions go to the screen."""
    from tagger.code import number
    from tagger.store import Registration, registering
    from tagger.trade import assess, keeping
    from tagger.trade.cutting import reaches_mm

    spec, fittings = _spec_asked(a)
    with open_store() as store:
        tables = shop_tables(store)
        keep = keeping.rows_of(spec, tables) if a.keep else []
        found = assess(spec, keeping.tables_with(tables, keep), reaches_mm=reaches_mm(spec, fittings))
        row = Registration(
            spec,
            found,
            a.count,
            a.built_on,
            a.replaces,
            order_reference=a.order,
            lot_reason=a.lot_reason,
            changes_considered=a.changes_considered,
            listed_row=None,
            **recorded(a),
        )
        made = registering.register(store, [row], by=None, key=a.key, keep=keep)
    for warning in found.warnings:
        if warning.severity != "note":
            print(t(Message(f"report-{warning.severity}", text=warning.message)), file=sys.stderr)
    numbers = [number.format(assembly.number) for assembly in made]
    return {"numbers": numbers}, "\n".join(numbers)


def read(a: argparse.Namespace, t: Translator) -> Answer:
    """What a tag says, without any database, and whether the shop signed it."""
    from tagger import signing
    from tagger.code import number, reading
    from tagger.trade import present

    found = _link_of(a.what)
    content = reading.content_of(found)
    high = present.overrated(content, shop_settings().tables())
    seal = signing.state_of(shop_settings().keys(), found.number, found.digits, content.built_on)
    answer = reading.as_dict(content, found, t)
    answer |= {
        "signature": seal.as_dict() if seal else None,
        "overrated": t.as_json(high.claim) if high else None,
    }
    said = [t("cli-read-signature", said=line) for line in seal.lines()] if seal else []
    said += [t(high.claim)] if high else []
    shown = present.lowered(content, high)
    return answer, "\n".join([number.format(found.number), *said, _content_text(shown, t)])


def show(a: argparse.Namespace, t: Translator) -> Answer:
    """The record of a tag and its history."""
    from tagger.code import number
    from tagger.store.overrated import as_of_today
    from tagger.trade import present

    with open_store() as store:
        known, tables = store.assembly(a.number), shop_tables(store)
        [assembly], high = as_of_today([known], tables), present.overrated(known.content, tables, known.spec)
        history = store.history(a.number)
        (tag,) = tags_here(store, [known], shop_settings(), t)
    withdrawn = [withdrawal.reason for withdrawal in assembly.withdrawals]
    lineage = {
        name: number.format(other)
        for name, other in (
            ("replaces", assembly.replaces),
            ("replaced_by", assembly.replaced_by),
            ("replacement_built", assembly.replacement_built),
        )
        if other
    }
    kept = recorded(assembly)
    record = {
        "number": number.format(assembly.number),
        "link": tag.link,
        "spec": assembly.spec.as_dict(),
        "working_pressure_bar": assembly.content.working_pressure_bar,
        "working_pressure_message": t.as_json(rated.message(assembly.content)),
        "overrated": t.as_json(high.message) if high else None,
        "built_on": assembly.built_on and assembly.built_on.isoformat(),
        **kept,
        **lineage,
        "withdrawn": withdrawn,
        "void": assembly.void.reason if assembly.void else None,
        "history": [
            {"at": event.at.isoformat(), "kind": str(event.kind), "by": event.by, "data": event.data}
            for event in history
        ],
    }
    lines = [
        number.format(assembly.number),
        *(t("cli-withdrawn", reason=reason) for reason in withdrawn),
        *([t("cli-void", reason=assembly.void.reason)] if assembly.void else []),
        *([t(high.message)] if high else []),
        _content_text(assembly.content, t),
        *(_record_line(name, text, t) for name, text in kept.items() if text),
        *(t(Message(f"cli-{name}", value=value)) for name, value in lineage.items()),
        "",
        *(_event_line(event, t) for event in history),
    ]
    return record, "\n".join(lines)


def _record_line(name: str, text: str, t: Translator) -> str:
    return t("cli-recorded", caption=Message(f"words-record-{name}"), value=text)


def _event_line(event: Event, t: Translator) -> str:
    happened = t(_happened(event))
    return f"{event.at:%Y-%m-%d %H:%M}  {happened}  {event.by or ''}".rstrip()


def _happened(event: Event) -> Message:
    from tagger.store import Kind, verdict

    if event.kind is not Kind.PROOF_TESTED:
        return Message(f"cli-event-{event.kind}")
    result, bar = verdict(event.data).result, pressure(event.data["pressure_bar"])
    return Message("cli-proof-line", result=str(result), pressure=bar, hold=event.data["hold_s"])


def void(a: argparse.Namespace, t: Translator) -> Answer:
    """Makes a record void before anything came of it."""
    from tagger.code import number

    with open_store() as store:
        shown = number.format(store.void(a.number, a.reason).number)
    return {"number": shown, "void": True}, t("cli-void-done", number=shown)


def correct(a: argparse.Namespace, t: Translator) -> Answer:
    """Corrects customer, place, lots or note of a record; an empty text removes the value."""
    from tagger.code import number

    lots = {"hose_lot": "hose.lot", "fitting_lot_a": "end_a.lot", "fitting_lot_b": "end_b.lot"}
    given = {name: getattr(a, name) for name in ("customer", "machine", "position", *lots, "note")}
    changes = {lots.get(name, name): text or None for name, text in given.items() if text is not None}
    with open_store() as store:
        done = store.correct(a.number, changes, a.reason, lot_reason=a.lot_reason)
    shown = number.format(done.number)
    return {"number": shown, "corrected": changes}, t("cli-correct-done", number=shown)


def overrated(_: argparse.Namespace, t: Translator) -> Answer:
    """Registered assemblies whose pressure stands above what today's tables allow, with the reason."""
    from tagger.code.number import format as shown
    from tagger.store.overrated import every_overrated

    rows, lines = [], []
    with open_store() as store:
        for item, high in every_overrated(store, shop_tables(store)):
            number = shown(item.number)
            rows.append(
                {
                    "number": number,
                    "was_bar": high.was_bar,
                    "now_bar": high.now_bar,
                    "customer": item.customer,
                    "machine": item.machine,
                    **t.as_json(high.message),
                }
            )
            lines.append(t("cli-overrated", number=number, message=high.message))
    return {"overrated": rows}, "\n".join(lines) or t("cli-overrated-none")


def templates(_: argparse.Namespace, t: Translator) -> Answer:
    """The label templates."""
    from tagger.printing import template

    rows = template.catalogue(shop_settings().label_template_dirs, t.language)
    lines = []
    for row in rows:
        size = t.decimal(f"{row['width_mm']:g} x {row['height_mm']:g} mm")
        lines.append(f"{row['name']:<22} {size}  {row['title']}")
    return {"templates": rows}, "\n".join(lines)


# --- the web, and copies ------------------------------------------------------------------------


def serve(a: argparse.Namespace, t: Translator) -> Answer:
    """Runs the web application until it is stopped."""
    from tagger.cli import serving
    from tagger.settings import ShopSettings

    shop = ShopSettings.from_env(host=a.host, port=a.port)
    base = shop.base_url if shop.has_set("base_url") else f"http://127.0.0.1:{shop.port}"
    # the application reads its settings from the environment
    os.environ |= {"TAGGER_HOST": shop.host, "TAGGER_PORT": str(shop.port), "TAGGER_BASE_URL": base}
    print(t("cli-serving", base=base, host=shop.host, port=str(shop.port)), file=sys.stderr)
    serving.run(shop.host, shop.port)
    return {}, t("cli-stopped")


def demo(a: argparse.Namespace, t: Translator) -> Answer:
    """Loads the invented shop's week and serves it until it is stopped.

    It is given by name, so that the library needs nothing of the web application.
    """
    import_module("examples.run").main(a.folder)
    return {}, t("cli-stopped")


# --- shared by the commands ---------------------------------------------------------------------


def _read_spec(file: Path) -> AssemblySpec:
    return _read_spec_with_fittings(file)[0]


def _spec_asked(a: argparse.Namespace) -> tuple[AssemblySpec, Fittings]:
    """The spec of the command with what its options confirm, and the shop's fittings that it names.

    Raises SpecError where a pressure is confirmed that the spec does not have.
    """
    spec, fittings = _read_spec_with_fittings(a.spec)
    change: dict[str, Any] = {"length_confirmed": True} if a.length_confirmed else {}
    if a.pressure_confirmed:
        if spec.working_pressure is None:
            raise SpecError(Problem("working_pressure", None, Message("cli-no-pressure-to-confirm")))
        change["working_pressure"] = spec.working_pressure.model_copy(update={"confirmed": True})
    return spec.model_copy(update=change), fittings


def _read_spec_with_fittings(file: Path) -> tuple[AssemblySpec, Fittings]:
    """A spec, and the shop's fittings that it names: the database is opened only where it names one."""
    from tagger.trade.fittings import numbers_in

    try:
        data = json_value(sys.stdin.buffer.read() if str(file) == "-" else file.read_bytes())
    except OSError as error:
        raise SpecError(Problem("spec", str(file), unusable(error))) from None
    if not numbers_in(data):
        return AssemblySpec.read(data), {}
    with open_store() as store:
        spec = store.read_spec(data)
        return spec, store.fittings_of(spec)


def _crimp_cards(spec: AssemblySpec, fittings: Fittings) -> Sequence[EndCard]:
    """The crimp card of each end; none where the spec names no fitting, and the database stays shut."""
    if not fittings:
        return ()
    with open_store() as store:
        return store.crimp_cards(spec, fittings)


def _spec_or_tag(what: str) -> AssemblySpec:
    """The spec in a file, on a tag, or in the record of a tag number."""
    from tagger.code import payload

    if Path(what).suffix.lower() == ".json" or what == "-":
        return _read_spec(Path(what))
    found = _link_of(what)
    if found.digits:
        return payload.decode(found.digits).spec
    with open_store() as store:
        return store.assembly(found.number).spec


def _signature_on(what: str) -> Signed | None:
    """How a tag stands to the shop's keys; None of a spec's file or of a number alone."""
    from tagger import signing
    from tagger.code import payload

    if Path(what).suffix.lower() == ".json" or what == "-":
        return None
    found = _link_of(what)
    built_on = payload.decode(found.digits).built_on if found.digits else None
    return signing.state_of(shop_settings().keys(), found.number, found.digits, built_on)


def _link_of(what: str) -> Link:
    """The tag in a picture's file, or in a scanned or typed string."""
    from tagger.code import link, photo
    from tagger.errors import LinkError

    path = Path(what)
    if "://" in what or not path.is_file():
        if path.suffix.lower() in (".png", ".jpg", ".jpeg", ".gif", ".webp", ".bmp", ".tif", ".tiff"):
            raise LinkError(Problem("image", what, Message("cli-not-a-file")))
        return link.parse(what)
    return photo.read(path)


def open_store() -> Store:
    """The store of TAGGER_DATABASE_URL."""
    from tagger.store import Store

    opened = Store.open()
    opened.proof_first = shop_settings().proof_first
    return opened


def shop_tables(store: Store | None = None) -> Tables:
    """The trade's tables with the shop's own rows: those of its folder and those it keeps in its database."""
    from tagger.store import exists

    if store is None and exists():
        with open_store() as opened:
            return shop_settings().tables(opened.held_rows())
    return shop_settings().tables(store.held_rows() if store else ())


def shop_settings() -> ShopSettings:
    """The settings of the shop; options on the command line take precedence."""
    from tagger.settings import ShopSettings

    return ShopSettings.from_env()


def tags_here(store: Store, assemblies: Sequence[Assembly], shop: ShopSettings, t: Translator) -> list[Tag]:
    """The tags of these assemblies; warns on the screen where their QR code opens only this computer."""
    from tagger.record_tag import tags_of

    warn_of_address(shop, t)
    return tags_of(store, assemblies, shop)


def warn_of_address(shop: ShopSettings, t: Translator) -> None:
    """Warns on the screen where the QR codes of tags open only this computer."""
    if not shop.has_set("base_url"):
        print(t("cli-base-url-not-set", base=shop.base_url), file=sys.stderr)


def _content_text(content: TagContent, t: Translator) -> str:
    from tagger.words import Words

    words, spec = Words(t.language), content.spec
    clocking = words.clocking(spec)
    lines = [
        t("cli-pressure", pressure=rated.message(content)),
        t("cli-hose", hose=words.hose(spec.hose)),
        t("cli-end", end="A", fitting=words.end(spec.end_a)),
        t("cli-end", end="B", fitting=words.end(spec.end_b)),
        t("cli-length", length=words.length(spec)),
        *([t("cli-clocking", clocking=clocking)] if clocking else []),
        *_tightening_text(content, t),
    ]
    lines += words.dangers(content)
    lines.append(t("cli-fluid", fluid=phrases.fluid_of(spec)))
    if spec.max_temperature_c is not None:
        lines.append(t("cli-maximum-temperature", temperature=temperature(spec.max_temperature_c)))
    if spec.vacuum_bar is not None:
        lines.append(t("cli-vacuum", vacuum=phrases.vacuum(spec.vacuum_bar)))
    if content.built_on:
        lines.append(t("cli-built-on", day=content.built_on))
    return "\n".join(lines)


def _tightening_text(content: TagContent, t: Translator) -> Iterator[str]:
    from tagger.trade import tightened

    tables = shop_settings().tables()
    for name, end, values in (
        ("A", content.spec.end_a, content.tighten_a),
        ("B", content.spec.end_b, content.tighten_b),
    ):
        how = "; ".join(t(line) for line in tightened.lines(values, end, tables))
        yield t("cli-tightening", end=name, how=how)
