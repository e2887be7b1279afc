"""A tag as the pages show it: one plain dictionary that fills ``tag.mustache``.

The phone fills the same template with the same dictionary when there is no signal
(``static/reader/view.js``); a browser test compares the two, line by line.
"""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date
from typing import Any
from urllib.parse import quote

from api.scan import fill, fit, picture
from api.scan.i18n import Reader, Translator
from api.shared.known_tag import DAMAGED, Tag
from tagger import units
from tagger.code import number as tag_number
from tagger.spec import AssemblySpec, End, LengthBasis, TagContent, Tightening
from tagger.trade import servicelife
from tagger.trade.results import Assessment
from tagger.words import Words

View = dict[str, Any]


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
    words, t = reader.words, reader.t
    content, spec = tag.content, tag.content.spec
    lines = sections(content, reader)
    order_lines = _order_lines(tag, lines, t, shop)
    warnings = _warnings(assessed, t)
    radius = assessed.bend_radius_mm if assessed else None
    advice = (assessed.end_a, assessed.end_b) if assessed and tag.record else None
    guide = None if tag.withdrawn else fit.guide(content, radius, advice, reader)
    return {
        "number": tag_number.format(tag.number),
        "withdrawn": _withdrawn(tag),
        "notices": _notices(tag, reader),
        "dangers": [w for w in warnings if w["severity"] == "danger"],
        "warnings": [w for w in warnings if w["severity"] != "danger"],
        "line": fill.both(one_line(content, words)),
        "end_a_short": fill.both(short_end(spec.end_a, words)),
        "end_b_short": fill.both(short_end(spec.end_b, words)),
        "pressure": _pressure(content, assessed if tag.record else None, t),
        "overview": picture.assembly(spec, reader),
        "ends": [
            _end(tag, "end_a", reader, assessed),
            _end(tag, "end_b", reader, assessed),
        ],
        "length": _length(content, reader, assessed if tag.record else None),
        "clocking": _clocking(content, reader, shop, assessed if tag.record else None),
        "facts": _facts(tag, reader, assessed),
        "order_form": order_form(spec, words, number=tag.number, digits=tag.digits or ""),
        "shop_name": shop.name,
        "shop_phone": shop.phone,
        "order_lines": order_lines,
        "mailto": _mailto(tag, order_lines, t, shop),
        "fit": guide,
    }


def spec_only(spec: AssemblySpec, assessed: Assessment, reader: Reader) -> View:
    """A spec that has no tag: its sections, what the tables rate it at, and warnings."""
    t = reader.t
    content = assessed.content_of(spec)
    return {
        "sections": [(label, text) for key, label, text in sections(content, reader) if key != "pressure"],
        "pressure": _pressure(content, assessed, t),
        "warnings": _warnings(assessed, t),
    }


def order_form(
    spec: AssemblySpec, words: Words, *, number: str = "", digits: str = "", spec_json: str = ""
) -> str:
    """The order form: for a tag by ``number`` and ``digits``, or for a spec without a tag."""
    values = {
        "number_compact": number,
        "digits": digits,
        "spec_json": spec_json,
        "changes": not spec_json,
        "length_words": units.show_length(spec.length_mm),
        "end_a_words": words.end(spec.end_a),
        "end_b_words": words.end(spec.end_b),
    }
    return fill.fill("order", values, words.language)


def one_line(content: TagContent, words: Words) -> str:
    """What the assembly is, in one line."""
    return f"{words.hose(content.spec.hose)}, {units.show_length(content.spec.length_mm)}"


def short_end(end: End, words: Words) -> str:
    """An end without what the page says further down."""
    return f"{end.size_text} {words.connection(end.connection)}, {words.shape(end)}"


def sections(content: TagContent, reader: Reader) -> list[tuple[str, str, str]]:
    """The whole content as (key, label, words), in the order in which a shop asks for it."""
    words, t = reader.words, reader.t
    spec = content.spec
    found = [
        ("hose", t("Hose"), words.hose(spec.hose)),
        ("end_a", t("End A"), words.end(spec.end_a)),
        ("end_b", t("End B"), words.end(spec.end_b)),
        ("length", t("Length"), words.length(spec)),
        ("clocking", t("Clocking angle"), words.clocking(spec) or ""),
        ("pressure", t("Working pressure"), words.pressure(content.working_pressure_bar)),
        ("temperature", t("Highest temperature"), _temperature(spec.max_temperature_c)),
        ("fluid", t("Fluid"), words.fluid(spec.fluid) if spec.fluid else ""),
        ("covers", t("Over the hose"), ", ".join(words.cover(cover) for cover in spec.covers)),
    ]
    return [(key, label, text) for key, label, text in found if text]


def differences(record: TagContent, printed: TagContent, reader: Reader) -> list[View]:
    """Where the digits on the tag say something else than the record."""
    t = reader.t
    nothing = t("nothing")
    ours = {key: (label, text) for key, label, text in _compared(record, reader)}
    theirs = {key: (label, text) for key, label, text in _compared(printed, reader)}
    return [
        {"field": (ours.get(key) or theirs[key])[0], "record": ours.get(key, ("", nothing))[1], "tag": theirs.get(key, ("", nothing))[1]}
        for key in dict.fromkeys([*ours, *theirs])
        if ours.get(key) != theirs.get(key)
    ]  # fmt: skip


def _compared(content: TagContent, reader: Reader) -> list[tuple[str, str, str]]:
    words, t = reader.words, reader.t
    spec = content.spec
    more = [
        ("tighten_a", t("Tighten end A"), "; ".join(words.tighten(content.tighten_a, spec.end_a))),
        ("tighten_b", t("Tighten end B"), "; ".join(words.tighten(content.tighten_b, spec.end_b))),
        ("built_on", t("Built on"), content.built_on.isoformat() if content.built_on else ""),
    ]
    return sections(content, reader) + [row for row in more if row[2]]


def _withdrawn(tag: Tag) -> View | None:
    if not tag.record or not tag.record.withdrawals:
        return None
    held = tag.record.withdrawals
    return {"reason": "; ".join(w.reason for w in held), "since": held[0].at.date().isoformat()}


def _notices(tag: Tag, reader: Reader) -> list[View]:
    t = reader.t
    found: list[View] = []
    if tag.record is None:
        found.append(
            _notice(
                "care",
                t("Read from the tag itself"),
                t("This shop has no record of the number. You see what the tag says. Whether the hose has been withdrawn since it was built is not known here: ask the shop that built it."),
            )
        )  # fmt: skip
    elif tag.digits_state == DAMAGED:
        found.append(
            _notice(
                "care",
                t("The link is damaged"),
                t("The digits in this link cannot be read. You see the shop's record of the number; compare it with the words on the tag."),
            )
        )  # fmt: skip
    elif tag.digits_state == "differ" and tag.printed:
        found.append(
            _notice(
                "danger",
                t("The tag does not say what the record says"),
                t("You see the record. Do not fit the hose before the shop has told you which is right."),
                differences=differences(tag.record.content, tag.printed, reader),
            )
        )  # fmt: skip
    if tag.record and tag.record.replaced_by:
        found.append(
            _notice("care", t("This hose has been replaced"), t("A newer hose took its place."),
                    href=f"/T/{tag.record.replaced_by}", href_words=tag_number.format(tag.record.replaced_by))
        )  # fmt: skip
    return found + _age(tag.content, date.today(), reader)


def _warnings(assessed: Assessment | None, t: Translator) -> list[View]:
    return [
        {"severity": w.severity, "words": fill.both(t.said(w.text))}
        for w in (assessed.warnings if assessed else ())
    ]


def _notice(severity: str, heading: str, text: str, **more: object) -> View:
    empty: View = {"href": None, "href_words": None, "differences": []}
    return {"severity": severity, "heading": heading, "words": text, **empty, **more}


def _age(content: TagContent, today: date, reader: Reader) -> list[View]:
    """What the storage guidance says of an assembly of this age."""
    t, tables = reader.t, reader.tables
    if content.built_on is None:
        return []
    years = (today - content.built_on).days / 365.25
    life, shelf = servicelife.cautious(tables)
    if years > life.value:
        text = t("Built on {day}, more than {years} years ago. An assembly is given {years} years in all, storage included ({source}): have it replaced, or inspected by somebody trained, before it works again.", day=content.built_on, years=units.number_text(life.value), source=life.source)  # fmt: skip
        return [_notice("care", t("Over its storage guidance"), text)]
    if years > shelf.value:
        text = t("Built on {day}, more than {years} years ago. An assembly may lie for {years} years before it is used ({source}): if it has not been in use since, have it inspected before you fit it.", day=content.built_on, years=units.number_text(shelf.value), source=shelf.source)  # fmt: skip
        return [_notice("care", t("Over its storage guidance"), text)]
    return []


def _pressure(content: TagContent, rated: Assessment | None, t: Translator) -> View | None:
    """``rated``: what the figure was derived by; None where it was read from the tag."""
    bar = content.working_pressure_bar
    if bar is None:
        return None
    return {"si": str(round(bar)), "us": str(units.psi_of(bar)), "basis": _pressure_basis(content, rated, t)}


def _pressure_basis(content: TagContent, rated: Assessment | None, t: Translator) -> str:
    given = content.spec.working_pressure
    if given:
        return t("Given by the shop. Source: {source}", source=given.source)
    if rated is None:
        return t("As the shop that built it put it on the tag")
    rating = rated.working_pressure
    parts = {"hose": t("the hose"), "end_a": t("end A"), "end_b": t("end B")}
    limit = parts.get(rating.limited_by or "", rating.limited_by or "")
    return t(
        "The least of hose and both ends; here it is {part}. Source: {source}",
        part=limit,
        source=rating.source,
    )


def _end_source(tag: Tag, assessed: Assessment | None, name: str, t: Translator) -> str:
    if tag.record is None or assessed is None:
        return t("As the shop that built it put it on the tag")
    advice = getattr(assessed, name)
    sources = dict.fromkeys(figure.source for figure in (advice.torque, advice.flats) if figure)
    return t("Source: {source}", source="; ".join(sources)) if sources else ""


def _end(tag: Tag, which: str, reader: Reader, assessed: Assessment | None) -> View:
    words, t = reader.words, reader.t
    spec = tag.content.spec
    shown: End = getattr(spec, which)
    letter = which[-1].upper()
    tighten: Tightening | None = getattr(tag.content, f"tighten_{which[-1]}")
    return {
        "letter": letter,
        "title": f"{shown.size_text} {words.connection(shown.connection)}",
        "words": fill.both(words.end(shown)),
        "picture": picture.end(spec, which, reader),
        "thread": fill.both(picture.thread_text(shown, reader)),
        "size_note": picture.size_note(shown, reader),
        "tighten": [fill.both(line) for line in words.tighten(tighten, shown)],
        "tighten_source": _end_source(tag, assessed, which, t),
    }


def _length(content: TagContent, reader: Reader, assessed: Assessment | None) -> View:
    words, t = reader.words, reader.t
    spec = content.spec
    tolerance = assessed.length_tolerance if assessed else None
    return {
        "si": f"{units.number_text(spec.length_mm)} mm",
        "us": units.inch_text(spec.length_mm),
        "basis": words.length_basis(LengthBasis(spec.length_basis)),
        "tolerance": tolerance and t(
            "May be {minus} mm shorter or {plus} mm longer",
            minus=units.number_text(tolerance.minus), plus=units.number_text(tolerance.plus),
        ),
        "source": tolerance and t("Source: {source}", source=tolerance.source),
    }  # fmt: skip


def _clocking(content: TagContent, reader: Reader, shop: Shop, assessed: Assessment | None) -> View | None:
    words, t = reader.words, reader.t
    text = words.clocking(content.spec)
    if text is None:
        return None
    source = t(
        "Convention: MIL-DTL-83796-5 figure 3, citing SAE J517; the viewing side is common practice, no source"
    )
    turned = (360 - (content.spec.clocking_deg or 0)) % 360
    own = (
        t("{angle}° as this shop counts: clockwise from 12 o'clock", angle=turned) if shop.clockwise else None
    )
    degrees = assessed.clocking_tolerance_deg if assessed else None
    tolerance = None
    if assessed and degrees is not None:
        tolerance = t("May be {angle}° off either way", angle=units.number_text(degrees))
        source = f"{source}. {t('Source: {source}', source=assessed.clocking_tolerance_source)}"
    return {
        "words": text, "own": own, "tolerance": tolerance, "source": source,
        "picture": picture.clocking(content.spec, reader),
    }  # fmt: skip


def _facts(tag: Tag, reader: Reader, assessed: Assessment | None) -> list[View]:
    words, t = reader.words, reader.t
    content, spec = tag.content, tag.content.spec
    found = [_fact(t("Hose"), words.hose(spec.hose))]
    if assessed and assessed.bend_radius_mm is not None:
        radius = assessed.bend_radius_mm
        note = t("Source: {source}", source=assessed.bend_radius_source)
        found.append(
            _both(t("Smallest bend radius"), f"{units.number_text(radius)} mm", units.inch_text(radius), note)
        )
    if spec.max_temperature_c is not None:
        found.append(_celsius(t("Highest temperature"), spec.max_temperature_c))
    if assessed and assessed.min_temperature_c is not None:
        note = t("Source: {source}", source=assessed.min_temperature_source)
        found.append(_celsius(t("Lowest temperature of the hose"), assessed.min_temperature_c, note))
    if spec.fluid:
        found.append(_fact(t("Fluid"), words.fluid(spec.fluid)))
    if spec.covers:
        found.append(_fact(t("Over the hose"), ", ".join(words.cover(cover) for cover in spec.covers)))
    if content.built_on:
        found.append(_fact(t("Built on"), content.built_on.isoformat()))
    if tag.record and tag.record.spec.note:
        found.append(_fact(t("Note"), tag.record.spec.note))
    return found


def _fact(label: str, value: str, note: str | None = None) -> View:
    return {"label": label, "si": None, "us": None, "value": value, "note": note}


def _both(label: str, si: str, us: str, note: str | None = None) -> View:
    return {"label": label, "si": si, "us": us, "value": "", "note": note}


def _celsius(label: str, celsius: float, note: str | None = None) -> View:
    return _both(label, f"{units.number_text(celsius)} °C", f"{round(celsius * 1.8 + 32)} °F", note)


def _temperature(celsius: float | None) -> str:
    return "" if celsius is None else units.show_temperature(celsius)


def _order_lines(tag: Tag, lines: list[tuple[str, str, str]], t: Translator, shop: Shop) -> str:
    found = [t("Please make this hose again."), f"{t('Tag')}: {tag_number.format(tag.number)}"]
    found += [f"{label}: {text}" for _, label, text in lines]
    found.append(f"{t('Link')}: {shop.base_url}{tag.path}")
    return "\n".join(found)


def _mailto(tag: Tag, lines: str, t: Translator, shop: Shop) -> str:
    subject = t("Order again: tag {number}", number=tag_number.format(tag.number))
    return f"mailto:{quote(shop.email, safe='@')}?subject={quote(subject)}&body={quote(lines.replace(chr(10), chr(13) + chr(10)))}"
