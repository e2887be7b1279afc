"""A tag as the pages show it: one plain dictionary that fills ``tag.mustache``.

The phone fills the same template with the same dictionary when there is no signal
(``static/reader/view.js``); a browser test compares the two, line by line.
"""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date
from typing import Any, Final
from urllib.parse import quote

from api.scan import fit, picture
from api.scan.fitted_form import fitted_form
from api.scan.order_form import order_form
from api.scan.visitor import Reader
from api.shared.known_tag import DAMAGED, Tag, doubts
from tagger import phrases, rated, units
from tagger.code import number as tag_number
from tagger.i18n import Translator
from tagger.messages import Message, angle, as_is, length, temperature
from tagger.signing import Signed
from tagger.spec import AssemblySpec, End, LengthBasis, TagContent, Tightening
from tagger.store import Assembly
from tagger.trade import grades, servicelife, tightened
from tagger.trade.present import Overrated
from tagger.trade.results import Assessment

View = dict[str, Any]

FOR_THE_FITTER: Final = frozenset(
    (
        "two_rigid_ends",
        "mating_nut_needed",
        "too_short_to_bend",
        "little_free_hose",
        "vacuum_not_known",
        "cold_limit_of_fluid",
        "screw_class_needed",
        "rating_above_published",  # he has the hose in hand: is it the part which the source rates?
    )
)
"""Warnings that whoever installs the hose can act on. The others (which edition, whose figure, what is unverified)
are settled at the bench; dangers are told to everybody."""


@dataclass(frozen=True)
class Shop:
    """Whose pages these are; empty where the settings do not say."""

    base_url: str
    name: str = ""
    phone: str = ""
    email: str = ""
    clockwise: bool = False  # the shop's own way of counting the clocking angle


def build(tag: Tag, assessed: Assessment | None, reader: Reader, shop: Shop) -> View:
    """Everything the template shows. ``assessed``: the record's, or today's tables for the spec."""
    t = reader.t
    content, spec = tag.content, tag.content.spec
    own = assessed if tag.record else None
    order_lines = _order_lines(tag, t, shop)
    warnings = [w for w in _warnings(assessed, t) if w["severity"] == "danger" or w["code"] in FOR_THE_FITTER]
    radius = assessed.bend_radius_mm if assessed else None
    advice = (own.end_a, own.end_b) if own else None
    guide = (
        None
        if tag.withdrawn or tag.void or tag.held
        else fit.guide(content, radius, advice, reader, clockwise=shop.clockwise)
    )
    why = [t(doubt) for doubt in doubts(tag)] if guide else []
    return {
        "number": tag_number.format(tag.number),
        "withdrawn": _withdrawn(tag, t),
        "void": tag.void,
        "held": tag.held,
        "notices": _notices(tag, reader),
        "dangers": [w for w in warnings if w["severity"] == "danger"],
        "warnings": [w for w in warnings if w["severity"] != "danger"],
        "line": t.html(one_line(content)),
        "end_a_short": t.html(short_end(spec.end_a)),
        "end_b_short": t.html(short_end(spec.end_b)),
        "pressure": _pressure(content, own, reader),
        "partly_rated": _partly_rated(content, t),
        "carried_dangers": [t(line) for line in rated.dangers(content)],
        "overview": picture.assembly(spec, reader),
        "ends": [_end(tag, "end_a", reader, assessed), _end(tag, "end_b", reader, assessed)],
        "length": _length(content, reader, own),
        "clocking": _clocking(content, reader, shop, own),
        "facts": _facts(tag, reader, shop, assessed),
        "order_form": order_form(spec, t, number=tag.number, digits=tag.digits or ""),
        "fitted_form": fitted_form(t, tag.number, page=f"/fitted/{tag.number}")
        if tag.record and not tag.void
        else "",
        "shop_name": shop.name,
        "shop_phone": shop.phone,
        "order_lines": order_lines,
        "mailto": _mailto(tag, order_lines, t, shop),
        "doubted": bool(why),
        "doubts": why,
        "shut": guide is None or bool(why),
        "forged": bool(tag.signed and tag.signed.broken and tag.record is None),
        "fit": guide,
    }


def spec_only(spec: AssemblySpec, assessed: Assessment, reader: Reader) -> View:
    """A spec that has no tag: its sections, what the tables rate it at, and warnings."""
    t = reader.t
    content = assessed.content_of(spec)
    return {
        "sections": [(label, text) for key, label, text in sections(content, t) if key != "pressure"],
        "pressure": _pressure(content, assessed, reader),
        "partly_rated": _partly_rated(content, t),
        "warnings": _warnings(assessed, t),
    }


def one_line(content: TagContent) -> Message:
    """What the assembly is, in one line."""
    spec = content.spec
    return Message("scan-one_line", hose=phrases.hose(spec.hose), length=length(spec.length_mm))


def short_end(end: End) -> Message:
    """An end without what the page says further down."""
    return Message("scan-short_end", title=phrases.end_title(end), shape=phrases.shape(end))


def _temperature(celsius: float) -> Message:
    return Message("scan-temperature", temperature=temperature(celsius))


def _covers(spec: AssemblySpec) -> Message:
    return Message("scan-cover_list", covers=tuple(phrases.cover(cover) for cover in spec.covers))


def _rows(content: TagContent) -> list[tuple[str, str, Message | None]]:
    """The whole content as (key, id of its label, what it says), in the order in which a shop asks for it."""
    spec = content.spec
    hottest = spec.max_temperature_c
    return [
        *_parts(spec),
        ("pressure", "scan-pressure", rated.message(content)),
        ("temperature", "scan-max_temperature", None if hottest is None else _temperature(hottest)),
        ("vacuum", "scan-vacuum", None if spec.vacuum_bar is None else phrases.vacuum(spec.vacuum_bar)),
        ("fluid", "scan-fluid", phrases.fluid_of(spec)),
        ("covers", "scan-covers", _covers(spec) if spec.covers else None),
    ]


def _parts(spec: AssemblySpec) -> list[tuple[str, str, Message | None]]:
    return [
        ("hose", "scan-hose", phrases.hose(spec.hose)),
        ("end_a", "scan-end_a", phrases.end(spec.end_a)),
        ("end_b", "scan-end_b", phrases.end(spec.end_b)),
        ("length", "scan-length", phrases.overall_length(spec)),
        ("clocking", "scan-clocking", phrases.clocking(spec)),
    ]


def spec_rows(spec: AssemblySpec, t: Translator) -> list[tuple[str, str, str]]:
    """Hose, ends, length and clocking as (key, label, text)."""
    return [(key, t(label), t(said)) for key, label, said in _parts(spec) if said is not None]


def sections(content: TagContent, t: Translator) -> list[tuple[str, str, str]]:
    """The whole content as (key, label, text)."""
    return [(key, t(label), t(said)) for key, label, said in _rows(content) if said is not None]


def differences(record: TagContent, printed: TagContent, reader: Reader) -> list[View]:
    """Where the digits on the tag say something else than the record."""
    t = reader.t
    nothing = t("scan-differ-nothing")
    ours = {key: (label, text) for key, label, text in _compared(record, reader)}
    theirs = {key: (label, text) for key, label, text in _compared(printed, reader)}
    return [
        {
            "field": (ours.get(key) or theirs[key])[0],
            "record": ours.get(key, ("", nothing))[1],
            "tag": theirs.get(key, ("", nothing))[1],
        }
        for key in dict.fromkeys([*ours, *theirs])
        if ours.get(key) != theirs.get(key)
    ]


def _compared(content: TagContent, reader: Reader) -> list[tuple[str, str, str]]:
    t, spec = reader.t, content.spec
    found = sections(content, t)
    for key, label, tightening, end in (
        ("tighten_a", "scan-tighten-a", content.tighten_a, spec.end_a),
        ("tighten_b", "scan-tighten-b", content.tighten_b, spec.end_b),
    ):
        said = tightened.lines(tightening, end, reader.tables)
        found.append((key, t(label), "; ".join(t(line) for line in said)))
    if content.built_on:
        found.append(("built_on", t("scan-built_on"), t("scan-day", day=content.built_on)))
    return found


def _withdrawn(tag: Tag, t: Translator) -> View | None:
    if not tag.record or not tag.record.withdrawals:
        return None
    held = tag.record.withdrawals
    reason = "; ".join(w.reason for w in held)
    return {"reason": reason, "since": t("scan-withdrawn-since", day=held[0].at.date())}


def _notices(tag: Tag, reader: Reader) -> list[View]:
    t = reader.t
    found: list[View] = []
    if tag.signed and tag.signed.broken:
        found.append(_forged(tag.signed, t))
    if tag.record is None:
        found.append(_notice("care", t("scan-notice-tag_only-title"), t("scan-notice-tag_only")))
    elif tag.digits_state == DAMAGED:
        found.append(_notice("care", t("scan-notice-damaged-title"), t("scan-notice-damaged")))
    elif tag.digits_state == "differ" and tag.printed:
        off = differences(tag.record.content, tag.printed, reader)
        notice = _notice("danger", t("scan-notice-differ-title"), t("scan-notice-differ"), differences=off)
        found.append(notice)
    if tag.overrated and tag.record is None:
        found.append(_claims(tag.overrated, t))
    elif tag.overrated:
        found.append(_notice("danger", t("scan-notice-overrated-title"), t(tag.overrated.message)))
    if tag.record:
        found += _lineage(tag.record, t)
    return found + _age(tag.content, date.today(), reader)


def _forged(signed: Signed, t: Translator) -> View:
    *_, why = signed.lines()
    return _notice("danger", t(signed.message()), t("scan-sealed-act"), more=t(why))


def _claims(high: Overrated, t: Translator) -> View:
    """Digits without a record that claim more than the tables allow: nobody here registered that."""
    why = high.now.working_pressure.why if high.now_bar is None else None
    return _notice("danger", t("scan-claims-title"), t(high.claim), more=t(why) if why else None)


def _lineage(record: Assembly, t: Translator) -> list[View]:
    """What took its place, or is built to take it; or whose place it is to take."""

    def notice(heading: str, text: str, other: str) -> View:
        return _notice("care", heading, text, href=f"/T/{other}", href_words=tag_number.format(other))

    if newer := record.replaced_by:
        return [notice(t("scan-notice-replaced-title"), t("scan-notice-replaced"), newer)]
    if newer := record.replacement_built:
        return [notice(t("scan-notice-replacement-title"), t("scan-notice-replacement"), newer)]
    if record.replaces and not record.fitted:
        text = t("scan-notice-to-be-fitted")
        return [notice(t("scan-notice-replacement-title"), text, record.replaces)]
    return []


def _warnings(assessed: Assessment | None, t: Translator) -> list[View]:
    return [
        {"code": w.code, "severity": w.severity, "words": t.html(w.message)}
        for w in (assessed.warnings if assessed else ())
    ]


def _notice(severity: str, heading: str, text: str, **more: object) -> View:
    empty: View = {"more": None, "href": None, "href_words": None, "differences": []}
    return {"severity": severity, "heading": heading, "words": text, **empty, **more}


def _age(content: TagContent, today: date, reader: Reader) -> list[View]:
    """What the storage guidance says of an assembly of this age."""
    t, tables = reader.t, reader.tables
    if content.built_on is None:
        return []
    years = (today - content.built_on).days / 365.25
    life, shelf = servicelife.cautious(tables)
    built = content.built_on
    if years > life.value:
        text = t(
            "scan-notice-life", day=built, years=_whole(life.value), source=tables.where_from(life.source)
        )
    elif years > shelf.value:
        text = t(
            "scan-notice-shelf", day=built, years=_whole(shelf.value), source=tables.where_from(shelf.source)
        )
    else:
        return []
    return [_notice("care", t("scan-notice-old-title"), text)]


def _whole(years: float) -> float:
    """A whole number as an int, so that it is "1 year" and not "1 years"."""
    return int(years) if years == int(years) else years


def _pressure(content: TagContent, assessed: Assessment | None, reader: Reader) -> View | None:
    """``assessed``: what the figure was derived by; None where it was read from the tag."""
    bar = content.working_pressure_bar
    if bar is None:
        return None
    t = reader.t
    mark = t(rated.unverified(content)) if content.unverified_parts else None
    basis = _pressure_basis(content, assessed, t)
    shown = {"si": str(round(bar)), "us": str(units.psi_of(bar)), "mark": mark, "basis": basis}
    return shown | {
        "origin": _origin(assessed, reader) if assessed and not content.spec.working_pressure else None
    }


def _origin(assessed: Assessment, reader: Reader) -> str | None:
    """How good the limiting part's source is, and what was seen of it."""
    rating = assessed.working_pressure
    for part in rating.parts:
        if part.part == rating.limited_by and part.grade:
            told = as_is(reader.tables.where_from(part.source))
            return reader.t("scan-origin-graded", grade=grades.said(part.grade), source=told)
    return None


def _partly_rated(content: TagContent, t: Translator) -> list[str]:
    """Where the pressure is not known: what the known parts allow, and whose figure to use for the others."""
    return [t.html(line) for line in rated.lines(content)] if content.unknown_parts else []


def _pressure_basis(content: TagContent, assessed: Assessment | None, t: Translator) -> str:
    given = content.spec.working_pressure
    if given:
        return t("scan-pressure-given", source=given.source)
    if assessed is None:
        return t("scan-pressure-as_tagged")
    rating = assessed.working_pressure
    if not rating.limited_by:
        return t("scan-source", source=rating.source)
    return t("scan-pressure-least", part=phrases.part(rating.limited_by), source=rating.source)


def _end_source(tag: Tag, assessed: Assessment | None, name: str, reader: Reader) -> str:
    t, tables = reader.t, reader.tables
    if tag.record is None or assessed is None:
        return t("scan-pressure-as_tagged")
    advice = getattr(assessed, name)
    sources = dict.fromkeys(figure.source for figure in (advice.torque, advice.flats) if figure)
    if not sources:
        return ""
    source = "; ".join(map(tables.where_from, sources))
    if advice.torque is None:
        return t("scan-source", source=source)
    return t("scan-source-basis", basis=advice.torque.basis, source=source)


def _end(tag: Tag, which: str, reader: Reader, assessed: Assessment | None) -> View:
    t, spec = reader.t, tag.content.spec
    shown: End = getattr(spec, which)
    tightening: Tightening | None = getattr(tag.content, f"tighten_{which[-1]}")
    return {
        "letter": which[-1].upper(),
        "title": t(phrases.end_title(shown)),
        "words": t.html(phrases.end(shown)),
        "picture": picture.end(spec, which, reader),
        "thread": t.html(picture.thread(shown, reader)),
        "size_note": t(picture.scale(shown, reader)),
        "tighten": [t.html(line) for line in tightened.lines(tightening, shown, reader.tables)],
        "tighten_source": _end_source(tag, assessed, which, reader),
    }


def _length(content: TagContent, reader: Reader, assessed: Assessment | None) -> View:
    t = reader.t
    spec = content.spec
    tolerance = assessed.length_tolerance if assessed else None
    shown: View = {
        "figure": t.html("scan-length-figure", length=length(spec.length_mm)),
        "basis": t(phrases.length_basis(LengthBasis(spec.length_basis))),
        "tolerance": None,
        "source": None,
    }
    if tolerance:
        minus, plus = length(tolerance.minus), length(tolerance.plus)
        shown["tolerance"] = t.html("scan-length-tolerance", minus=minus, plus=plus)
        shown["source"] = t("scan-source", source=reader.tables.where_from(tolerance.source))
    return shown


def _clocking(content: TagContent, reader: Reader, shop: Shop, assessed: Assessment | None) -> View | None:
    t, said = reader.t, phrases.clocking(content.spec)
    if said is None:
        return None
    turned = angle((360 - (content.spec.clocking_deg or 0)) % 360)
    sources = [t("scan-clocking-convention")]
    tolerance = None
    if assessed and assessed.clocking_tolerance_deg is not None:
        tolerance = t("scan-clocking-tolerance", angle=angle(assessed.clocking_tolerance_deg))
        sources.append(t("scan-source", source=reader.tables.where_from(assessed.clocking_tolerance_source)))
    return {
        "words": t(said),
        "own": t("scan-clocking-shop", angle=turned) if shop.clockwise else None,
        "tolerance": tolerance,
        "source": " ".join(sources),
        "picture": picture.clocking(content.spec, reader, clockwise=shop.clockwise),
    }


def _facts(tag: Tag, reader: Reader, shop: Shop, assessed: Assessment | None) -> list[View]:
    t = reader.t
    content, spec = tag.content, tag.content.spec
    found = [_fact(t("scan-hose"), t.html(phrases.hose(spec.hose)))]
    if assessed and assessed.bend_radius_mm is not None:
        radius = t.html("scan-length-figure", length=length(assessed.bend_radius_mm))
        note = t("scan-source", source=reader.tables.where_from(assessed.bend_radius_source))
        found.append(_fact(t("scan-bend_radius"), radius, note))
    if spec.max_temperature_c is not None:
        found.append(_fact(t("scan-max_temperature"), t.html(_temperature(spec.max_temperature_c))))
    elif assessed and assessed.max_temperature_c is not None:
        hottest = t.html(_temperature(assessed.max_temperature_c))
        note = t("scan-source", source=reader.tables.where_from(assessed.max_temperature_source))
        found.append(_fact(t("scan-max_temperature"), hottest, note))
    if assessed and assessed.min_temperature_c is not None:
        coldest = t.html(_temperature(assessed.min_temperature_c))
        note = t("scan-source", source=reader.tables.where_from(assessed.min_temperature_source))
        found.append(_fact(t("scan-min_temperature"), coldest, note))
    if spec.vacuum_bar is not None:
        found.append(_fact(t("scan-vacuum"), t.html(phrases.vacuum(spec.vacuum_bar))))
    found.append(_fact(t("scan-fluid"), t.html(phrases.fluid_of(spec))))
    if tag.signed:
        found.append(_signature(tag.signed, t))
    if spec.covers:
        found.append(_fact(t("scan-covers"), t.html(_covers(spec))))
    if content.built_on:
        found.append(_fact(t("scan-built_on"), t.html("scan-day", day=content.built_on)))
    if tag.fitted_on:
        found.append(_fact(t("fitted-on"), t.html("scan-day", day=tag.fitted_on)))
    if life := servicelife.replace_by(content.built_on, tag.fitted_on, reader.tables):
        source = reader.tables.where_from(life.source)
        shown = _fact(
            t("fitted-replace_by"), t.html("scan-day", day=life.until), t("scan-source", source=source)
        )
        found.append(shown | {"calendar": _calendar(tag, life.until, source, t, shop)})
    if tag.record and tag.record.spec.note:
        found.append(_fact(t("scan-note"), t.html("words-as-is", text=tag.record.spec.note)))
    return found


def _calendar(tag: Tag, day: date, source: str, t: Translator, shop: Shop) -> View:
    """The link to the day as a calendar file, and what a phone without a signal makes the same file of."""
    url = shop.base_url + tag.path
    return {
        "href": tag.path.replace("/T/", "/calendar/", 1) + ".ics",
        "number": tag.number,
        "day": day.isoformat(),
        "summary": t("fitted-event", number=tag_number.format(tag.number)),
        "said": t("fitted-event-description", source=source, address=url),
        "url": url,
    }


def _signature(signed: Signed, t: Translator) -> View:
    notes = {
        "signed": t("scan-sealed-note", key=signed.key_id or 0),
        "unsigned": t("scan-unsealed-note"),
        "unchecked": t("scan-unchecked-note"),
    }
    return _fact(t("scan-sealed"), t.html(signed.message()), notes.get(signed.state))


def _fact(label: str, html: str, note: str | None = None) -> View:
    return {"label": label, "html": html, "note": note, "calendar": None}


def _order_lines(tag: Tag, t: Translator, shop: Shop) -> str:
    """The order as text: a line for each section."""
    lines = [(t("scan-tag"), tag_number.format(tag.number))]
    lines += [(label, text) for _, label, text in sections(tag.content, t)]
    lines.append((t("scan-link"), shop.base_url + tag.whole_path))
    said = [t("scan-line", label=label, text=text) for label, text in lines]
    return "\n".join([t("scan-order-please"), *said])


def _mailto(tag: Tag, lines: str, t: Translator, shop: Shop) -> str:
    subject = t("scan-order-subject", number=tag_number.format(tag.number))
    return f"mailto:{quote(shop.email, safe='@')}?subject={quote(subject)}&body={quote(lines.replace(chr(10), chr(13) + chr(10)))}"
