"""What the lines of a tag say: each field a template can name, as messages.

Every line is a view of the tag; none adds a fact of its own.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator
from dataclasses import dataclass
from functools import lru_cache
from typing import Literal, NamedTuple, get_args

from tagger import phrases, rated, units
from tagger.messages import (
    Figure,
    Message,
    Value,
    as_is,
    least_pressure,
    length,
    temperature,
    torque,
)
from tagger.messages import angle as degrees
from tagger.printing import rating
from tagger.printing.content import Tag
from tagger.printing.fonts import missing
from tagger.printing.words import once, voices
from tagger.record import RECORD_FIELDS
from tagger.spec import End, Hose, LengthBasis, Material, Tightening
from tagger.trade import joints, tightened
from tagger.trade.rows import UNVERIFIED
from tagger.trade.screws import screw_for
from tagger.trade.tables import tables


@dataclass(frozen=True)
class Field:
    """``caption`` is shown before it where a template asks for captions.

    ``first_only``: figures with their source and sentences for the bench, too long to stand twice; a tag in
    two languages has them in its first. ``shorter``: the same where there is little room, and where there is least.
    """

    caption: Message
    lines: Callable[[Tag], list[Message]]
    first_only: bool = False
    shorter: tuple[Callable[[Tag], list[Message]], ...] = ()

    def said(self, tag: Tag, brevity: int) -> list[Message]:
        """What it says of a tag; the briefest there is where that many are not."""
        return (self.lines, *self.shorter)[min(brevity, len(self.shorter))](tag)


def _typed(text: str | None) -> list[Message]:
    """Somebody's own text, as it is."""
    return [as_is(text)] if text else []


def _value(figure: Figure | None) -> list[Message]:
    return [] if figure is None else [Message("printing-value", value=figure)]


def _optional(message: Message | None) -> list[Message]:
    return [] if message is None else [message]


def _short_end(end: End) -> list[Message]:
    """What has to match when it is screwed on: size, family, form and bend. The QR code holds the rest."""
    bend = (
        Message("words-shape-elbow", angle=degrees(end.angle_deg))
        if end.is_elbow
        else Message("words-shape-straight")
    )
    return [
        Message(
            "words-end",
            size=end.size_text,
            connection=phrases.family_of(end),
            form=phrases.form(end.form),
            shape=bend,
        )
    ]


def _size(tag: Tag) -> list[Message]:
    dash = tag.spec.hose.dash
    return [Message("printing-size", dash=dash, inches=units.inch_text(dash * units.MM_PER_INCH / 16))]


def _clocking_short(tag: Tag) -> list[Message]:
    """The angle and which way it is counted, in as few words as there are: an angle alone is set either way."""
    angle = tag.spec.clocking_deg
    return [] if angle is None else [Message("printing-clocking-short", angle=degrees(angle))]


def _clocking_shortest(tag: Tag) -> list[Message]:
    """The same without the word for it, where there is no room for that."""
    angle = tag.spec.clocking_deg
    return [] if angle is None else [Message("printing-clocking-shortest", angle=degrees(angle))]


def _covers(tag: Tag) -> list[Message]:
    covers = tuple(phrases.cover(cover) for cover in tag.spec.covers)
    return [Message("printing-covers", covers=covers)] if covers else []


def _dangers(tag: Tag) -> list[Message]:
    return list(rated.dangers(tag.content))


def _duty(tag: Tag) -> list[Message]:
    """Fluid and temperature in one line."""
    fluid, hottest = phrases.fluid_of(tag.spec), _hottest(tag)
    if hottest is None:
        return [fluid]
    return [Message("printing-duty", fluid=fluid, temperature=temperature(hottest))]


def _fluid(tag: Tag) -> list[Message]:
    return [phrases.fluid_of(tag.spec)]


def _temperature(tag: Tag) -> list[Message]:
    celsius = _hottest(tag)
    return [] if celsius is None else _value(temperature(celsius))


def _hottest(tag: Tag) -> float | None:
    """As entered, else what the hose bears with the fluid; a tag read without its record has what it carries."""
    celsius = tag.spec.max_temperature_c
    if celsius is None and tag.assessment is not None:
        celsius = tag.assessment.max_temperature_c
    return celsius


def _vacuum(tag: Tag) -> list[Message]:
    bar = tag.spec.vacuum_bar
    return [] if bar is None else [phrases.vacuum(bar)]


def _built_on(tag: Tag) -> list[Message]:
    """ISO 8601, which is read the same in every language and country."""
    day = tag.content.built_on
    return [] if day is None else _typed(day.isoformat())


def _made(tag: Tag) -> list[Message]:
    """Who assembled it and when, as EN 853 has assemblies marked; with the telephone."""
    return _made_by(tag.shop, tag)


def _made_short(tag: Tag) -> list[Message]:
    """The same without the telephone, which the page shows, where a long name leaves it no room."""
    return _made_by(tag.shop_name or tag.shop, tag)


def _made_begun(most: int) -> Callable[[Tag], list[Message]]:
    """The name's beginning, where not even the whole name has room: no label is refused for it."""
    return lambda tag: _made_by(_beginning(tag.shop_name or tag.shop, most), tag)


def _beginning(name: str, most: int) -> str:
    """Its first words in at most so many letters; of a word that is longer its first letters.

    >>> [_beginning(name, 15) for name in ("Hose Shop", "Harbour and Quarry Hose", "Schlauchleitungskonfektion Ost")]
    ['Hose Shop', 'Harbour and…', 'Schlauchleitung…']
    """
    if len(name) <= most:
        return name
    start = name[: most + 1]
    cut = start.rpartition(" ")[0] or start[:most]
    return f"{cut.rstrip(' ,;&-')}…"


def _shop_short(tag: Tag) -> list[Message]:
    return _typed(tag.shop_name or tag.shop)


def _shop_begun(most: int) -> Callable[[Tag], list[Message]]:
    return lambda tag: _typed(_beginning(tag.shop_name or tag.shop, most))


def _made_by(shop: str, tag: Tag) -> list[Message]:
    day = tag.content.built_on
    if not shop:
        return _built_on(tag)
    return _typed(shop) if day is None else [Message("printing-made", shop=shop, day=day.isoformat())]


def _cited(source: str) -> Message:
    """A source in at most forty characters; one that no published page gave is called unverified."""
    known = tables().sources.get(source)
    if known is None:
        return as_is(source)
    if known.grade in UNVERIFIED:
        return Message("printing-source-unverified", source=known.short)
    return as_is(known.short)


def _tolerance(tag: Tag) -> list[Message]:
    allowed = tag.assessment.length_tolerance if tag.assessment else None
    if allowed is None:
        return []
    minus, plus = length(allowed.minus), length(allowed.plus)
    return [Message("printing-tolerance", minus=minus, plus=plus, source=_cited(allowed.source))]


def _bend_radius(tag: Tag) -> list[Message]:
    if tag.assessment is None or tag.assessment.bend_radius_mm is None:
        return []
    radius = length(tag.assessment.bend_radius_mm)
    return [
        Message("printing-bend-radius", radius=radius, source=_cited(tag.assessment.bend_radius_source or ""))
    ]


def _test_pressure(tag: Tag) -> list[Message]:
    bar = tag.assessment.test_pressure_bar if tag.assessment else None
    return [] if bar is None else _value(least_pressure(bar))


def _limited_by(tag: Tag) -> list[Message]:
    if tag.assessment is None:
        return []
    rating = tag.assessment.working_pressure
    if rating.limited_by is None:
        return _optional(rating.why) or [_cited(rating.source)]
    part = phrases.part(rating.limited_by)
    return [Message("printing-limited-by", part=part, source=_cited(rating.source))]


def _warnings(tag: Tag) -> list[Message]:
    found = tag.assessment.warnings if tag.assessment else ()
    return [Message("printing-warning", warning=warning.message) for warning in found]


def _sources(tag: Tag) -> list[Message]:
    """Where the tightening values come from; what both ends share stands once: "A, B: ..." in any language."""
    if tag.assessment is None:
        return []
    said: dict[tuple[Message | None, str], list[str]] = {}
    for name, advice in (("A", tag.assessment.end_a), ("B", tag.assessment.end_b)):
        if advice.torque is not None:
            said.setdefault((advice.torque.basis, advice.torque.source), []).append(name)
        if advice.flats is not None and (
            advice.torque is None or advice.flats.source != advice.torque.source
        ):
            said.setdefault((None, advice.flats.source), []).append(name)
    return [_source(", ".join(ends), basis, source) for (basis, source), ends in said.items()]


def _source(ends: str, basis: Message | None, source: str) -> Message:
    if basis is not None:
        return Message("printing-source-basis", ends=ends, basis=basis, source=_cited(source))
    return Message("printing-source", ends=ends, source=_cited(source))


def _lots(tag: Tag) -> list[Message]:
    lots: tuple[Value, ...] = tuple(
        Message(f"printing-lot-{part}", lot=tag.lots[part])
        for part in ("end_a", "hose", "end_b")
        if part in tag.lots
    )
    return [Message("printing-lots", lots=lots)] if lots else []


def _stop_why(tag: Tag) -> list[Message]:
    """The causes; where one has letters that the fonts do not, what can be printed."""
    if tag.stop is None:
        return []
    return _stop_brief(tag) if missing("".join(map(str, tag.stop.why))) else list(tag.stop.why)


def _stop_brief(tag: Tag) -> list[Message]:
    return [tag.stop.brief] if tag.stop else []


def _stop_on(tag: Tag) -> list[Message]:
    return _typed(tag.stop.on.isoformat()) if tag.stop else []


def _stop_by(tag: Tag) -> list[Message]:
    return [] if tag.stop is None or missing(tag.stop.by or "") else _typed(tag.stop.by)


def _extra(key: str) -> Callable[[Tag], list[Message]]:
    return lambda tag: _typed(tag.extra.get(key))


_END_A, _END_B = Message("printing-field-end_a"), Message("printing-field-end_b")
_CLOCKING = Message("printing-field-clocking")

FIELDS: dict[str, Field] = {
    "number": Field(Message("printing-field-number"), lambda tag: _typed(tag.shown_number)),
    "serial": Field(Message("printing-field-serial"), lambda tag: _optional(tag.serial)),
    "built_on": Field(Message("printing-field-built_on"), _built_on),
    "made": Field(
        Message("printing-field-made"), _made, shorter=(_made_short, _made_begun(24), _made_begun(15))
    ),
    "hose": Field(Message("printing-field-hose"), lambda tag: [phrases.hose(tag.spec.hose)]),
    "dash": Field(Message("printing-field-dash"), _size),
    "end_a": Field(_END_A, lambda tag: [phrases.end(tag.spec.end_a)]),
    "end_b": Field(_END_B, lambda tag: [phrases.end(tag.spec.end_b)]),
    "end_a_short": Field(_END_A, lambda tag: _short_end(tag.spec.end_a)),
    "end_b_short": Field(_END_B, lambda tag: _short_end(tag.spec.end_b)),
    "length": Field(Message("printing-field-length"), lambda tag: [phrases.overall_length(tag.spec)]),
    "length_short": Field(Message("printing-field-length"), lambda tag: _value(length(tag.spec.length_mm))),
    "length_basis": Field(
        Message("printing-field-length_basis"), lambda tag: [phrases.length_basis(tag.spec.length_basis)]
    ),
    "clocking": Field(_CLOCKING, lambda tag: _optional(phrases.clocking(tag.spec))),
    "clocking_short": Field(_CLOCKING, _clocking_short, shorter=(_clocking_shortest,)),
    "working_pressure": Field(
        rating.CAPTION, rating.short_lines, shorter=(rating.shortest_lines, rating.lines_in_one)
    ),
    "dangers": Field(Message("printing-field-dangers"), _dangers, shorter=(rating.shortest_dangers,)),
    "duty": Field(Message("printing-field-duty"), _duty),
    "fluid": Field(Message("printing-field-fluid"), _fluid),
    "temperature": Field(Message("printing-field-temperature"), _temperature),
    "vacuum": Field(Message("printing-field-vacuum"), _vacuum),
    "covers": Field(Message("printing-field-covers"), _covers),
    "tolerance": Field(Message("printing-field-tolerance"), _tolerance, first_only=True),
    "bend_radius": Field(Message("printing-field-bend_radius"), _bend_radius, first_only=True),
    "test_pressure": Field(Message("printing-field-test_pressure"), _test_pressure),
    "limited_by": Field(Message("printing-field-limited_by"), _limited_by, first_only=True),
    "warnings": Field(Message("printing-field-warnings"), _warnings, first_only=True),
    "tightening_sources": Field(Message("printing-field-tightening_sources"), _sources, first_only=True),
    "lots": Field(Message("printing-field-lots"), _lots),
    "shop": Field(
        Message("printing-field-shop"),
        lambda tag: _typed(tag.shop),
        shorter=(_shop_short, _shop_begun(24), _shop_begun(15)),
    ),
    **{name: Field(Message(f"words-record-{name}"), _extra(name)) for name in RECORD_FIELDS},
    "order": Field(Message("printing-field-order"), _extra("order")),
    "note": Field(Message("printing-field-note"), _extra("note")),
    "stop_why": Field(Message("printing-field-stop_why"), _stop_why, shorter=(_stop_brief,)),
    "stop_on": Field(Message("printing-field-stop_on"), _stop_on),
    "stop_by": Field(Message("printing-field-stop_by"), _stop_by),
}


def forms_of(
    names: tuple[str, ...], tag: Tag, languages: tuple[str, ...], caption: bool, keep: int | None = None
) -> Iterator[tuple[str, ...]]:
    """The lines of the named fields, the fuller form first; after all of them as many as must be kept.

    A danger is kept wherever it stands.
    """
    fewest = len(names) if keep is None else min(keep, len(names))
    if "dangers" in names and tag.content.dangers:
        fewest = max(fewest, names.index("dangers") + 1)
    brevities = 1 + max((len(FIELDS[name].shorter) for name in names), default=0)
    for count in range(len(names), fewest - 1, -1):
        for brevity in range(brevities):
            yield lines_of(names[:count], tag, languages, caption, brevity=brevity)


def lines_of(
    names: tuple[str, ...], tag: Tag, languages: tuple[str, ...], caption: bool, *, brevity: int = 0
) -> tuple[str, ...]:
    """The lines of the named fields, one language after the other; a line both share stands once."""
    lines: list[str] = []
    for name in names:
        field = FIELDS[name]
        messages = field.said(tag, brevity)
        said: dict[tuple[str, ...], list[str]] = {}  # what is said -> its captions, one a language
        for voice in voices(languages)[: 1 if field.first_only else None]:
            said.setdefault(tuple(map(voice, messages)), []).append(voice(field.caption))
        for shown, captions in said.items():
            lines += _captioned(" / ".join(once(captions)), shown, languages) if caption else shown
    return once(lines)


def _captioned(caption: str, shown: tuple[str, ...], languages: tuple[str, ...]) -> tuple[str, ...]:
    """The lines with the caption before the first."""
    if not shown:
        return ()
    lead = voices(languages)[0](Message("printing-caption", caption=caption))
    return (f"{lead} {shown[0]}", *shown[1:])


def tightening_lines(tag: Tag, ends: str, languages: tuple[str, ...]) -> tuple[tuple[str, ...], ...]:
    """How to tighten each end, in one line an end and language; the basis always beside the count.

    The fullest form first; the last leaves the lubrication to the page, where the tag has no room for it.
    """
    both = (
        ("a", tag.spec.end_a, tag.content.tighten_a),
        ("b", tag.spec.end_b, tag.content.tighten_b),
    )
    wanted = [(name.upper(), end, values) for name, end, values in both if ends in ("both", name)]
    forms = [[tighten(*one, lubrication) for one in wanted] for lubrication in LUBRICATION]
    return once(once(voice(message) for message in form for voice in voices(languages)) for form in forms)


Lubrication = Literal["in full", "briefly", "left out"]
LUBRICATION: tuple[Lubrication, ...] = get_args(Lubrication)


def tighten(name: str, end: End, values: Tightening | None, lubrication: Lubrication = "in full") -> Message:
    """How to tighten one end: torque first, then the turn with its basis; never a guess."""
    if end.connection.is_latched:
        return Message("printing-tighten-unknown", end=name, unknown=phrases.NOTHING_TO_TIGHTEN)
    counted = phrases.counted(values, end) if values else None
    if values is None or not _has_torque(values, end):
        if counted is None:
            return Message("printing-tighten-unknown", end=name, unknown=phrases.NOT_KNOWN)
        return Message("printing-tighten-count", end=name, count=counted)
    turning = _torque(end, values)
    if lubrication != "left out":
        turning = phrases.lubricated(turning, values, briefly=lubrication == "briefly") or turning
    if counted is None:
        return Message("printing-tighten-torque", end=name, torque=turning)
    return Message("printing-tighten", end=name, torque=turning, count=counted)


def _has_torque(values: Tightening, end: End) -> bool:
    """Whether it carries a torque of this end; on older tags some studs carry that of a nut."""
    return values.torque_max_nm is not None and not joints.is_of_nut(values, end)


def _torque(end: End, values: Tightening) -> Value:
    """The torque in N·m; of a flange it is that of each screw, of some studs too much for a nut."""
    assert values.torque_max_nm is not None
    figure = torque(values.torque_min_nm, values.torque_max_nm)
    if joints.is_stud_of_two(end, tables()):
        return Message("printing-torque-stud", torque=figure)
    return tightened.of_screw(values, end) if end.connection.is_flange else figure


class Said(NamedTuple):
    """A text of a block: ``main`` is what is read at arm's length, ``head`` what a block is named by.

    ``follows``: it belongs to the text before it, and stands on its line where there is room.
    """

    text: str
    main: bool = False
    head: bool = False
    follows: bool = False


@lru_cache(maxsize=1024)
def end_said(end: End, values: Tightening | None, languages: tuple[str, ...]) -> tuple[tuple[Said, ...], ...]:
    """One end as texts below one another: what it is, its tightening, and what that is counted from.

    The fullest form first; the shorter ones leave material, drop, the shape and at last the lubrication to the
    picture and the symbol; the last says in fewer words who knows the screw.
    """
    return tuple(dict.fromkeys(_forms([*_what(end), *_how(end, values)], _FULLNESSES, languages)))


_FULLNESSES = (3, 2, 1, 0)  # of what is said of an end
_Line = tuple[Message | Figure, str, tuple[int, ...]]  # a line, its style, and in which forms it stands


def _forms(
    lines: Iterable[_Line], forms: Iterable[int], languages: tuple[str, ...]
) -> tuple[tuple[Said, ...], ...]:
    """Each form's texts once, in every language; of a figure the SI value is main, the US value below it, ``beside`` it
    or in one text with it.
    """
    return _merged(_spoken(lines, languages), forms)


_Spoken = tuple[tuple[tuple[Said, ...], tuple[int, ...]], ...]
"""Each line's texts, and in which forms they stand."""


def _spoken(lines: Iterable[_Line], languages: tuple[str, ...]) -> _Spoken:
    return tuple([(tuple(_said(line, style, languages)), told) for line, style, told in lines])


def _merged(said: _Spoken, forms: Iterable[int]) -> tuple[tuple[Said, ...], ...]:
    found: list[tuple[Said, ...]] = []
    for form in forms:
        shown: dict[str, Said] = {}
        for texts, told in said:
            if form in told:
                for one in texts:
                    shown.setdefault(one.text, one)
        found.append(tuple(shown.values()))
    return tuple(found)


def _said(line: Message | Figure, style: str, languages: tuple[str, ...]) -> Iterator[Said]:
    for voice in voices(languages):
        if isinstance(line, Figure) and style == "in one":
            yield Said(voice.figure(line), main=True)
        elif isinstance(line, Figure):
            si, us = voice.pair(line)
            yield Said(si, main=True)
            if us is not None:
                yield Said(us, head=True, follows=style == "beside")
        else:
            yield Said(voice(line), style == "main", style == "head", style == "follows")


def _what(end: End) -> Iterator[_Line]:
    yield _title(end), "head", _FULLNESSES
    form, shape = phrases.form(end.form), phrases.shape(end)
    yield Message("printing-end-form", form=form, shape=shape), "small", (3,)
    if end.is_elbow and end.drop_mm is not None:
        shape = Message("words-shape-elbow", angle=degrees(end.angle_deg))
    yield Message("printing-end-form", form=form, shape=shape), "small", (2,)
    if end.material is not Material.CARBON_STEEL:
        yield phrases.material(end.material), "small", (3,)
    if end.hose_dash is not None:
        yield Message("printing-end-jump", dash=end.hose_dash), "small", (3,)


def _title(end: End) -> Message:
    """Size and family; of an end of no family its description."""
    if end.description is not None:
        return Message("printing-end-described", description=end.description)
    return Message("printing-end-title", size=end.size_text, connection=phrases.connection(end.connection))


def _how(end: End, values: Tightening | None) -> Iterator[_Line]:
    """Torque, then the turn with its basis: never one without what it is counted from."""
    if end.connection.is_latched:
        yield phrases.NOTHING_TO_TIGHTEN, "head", _FULLNESSES
        return
    counted = phrases.turned(values, end) if values else None
    turned = counted is not None and values is not None and values.flats_basis is not None
    by_torque = values is not None and _has_torque(values, end)
    if values is None or not (by_torque or turned):
        yield Message("printing-tightening-not-known"), "head", _FULLNESSES
        return
    if by_torque and values.torque_max_nm is not None:
        yield torque(values.torque_min_nm, values.torque_max_nm), "main", _FULLNESSES
        if joints.is_stud_of_two(end, tables()):
            yield Message("printing-stud"), "small", (3, 2, 1)
            yield Message("printing-stud-short"), "small", (0,)
        if end.connection.is_flange:
            yield from _per_screw(end, values)
        oiled = phrases.lubrication(values)
        if oiled is not None:
            yield oiled, "follows", (3,) if values.lubrication == "not_stated" else (3, 2, 1)
    if turned and counted is not None:
        name = "printing-turns" if end.connection.is_taper else "printing-flats"
        yield Message(name, **counted.values), "main", _FULLNESSES
        yield Message(f"printing-basis-{values.flats_basis}"), "small", _FULLNESSES


def _per_screw(end: End, values: Tightening) -> Iterator[_Line]:
    """Whose torque it is; the last form says in fewer words who knows the screw."""
    screw = screw_for(values, end)
    if screw is not None:
        yield Message("printing-per-screw", screw=screw), "head", _FULLNESSES
    else:
        yield Message("printing-per-any-screw"), "head", (3, 2, 1)
        yield Message("printing-per-any-screw-short"), "head", (0,)


def between_said(tag: Tag, languages: tuple[str, ...]) -> tuple[tuple[Said, ...], ...]:
    """Hose and length with the length's basis, that in fewer words, without it, and in two lines.

    The standard's edition gives way before the basis: a length between other points is another hose. The angle of two
    elbows stands beside its picture.
    """
    hose, basis = _hose_and_basis(tag.spec.hose, tag.spec.length_basis, languages)
    long = length(tag.spec.length_mm)
    lines: list[_Line] = [(long, "beside", (4, 3, 2, 1)), (long, "in one", (0,))]
    said = (*hose, *_spoken(lines, languages), *basis)
    return tuple(dict.fromkeys(_merged(said, (4, 3, 2, 1, 0))))


@lru_cache(maxsize=512)  # runs are built of few hoses
def _hose_and_basis(hose: Hose, basis: LengthBasis, languages: tuple[str, ...]) -> tuple[_Spoken, _Spoken]:
    plain = hose.model_copy(update={"edition": None})
    of_hose: list[_Line] = [
        (phrases.hose(hose), "head", (4, 1, 0)),
        (phrases.hose(plain), "head", (3, 2)),
    ]
    of_basis: list[_Line] = [
        (phrases.length_basis(basis), "small", (4, 3)),
        (Message(f"printing-between-{basis}"), "small", (2,)),
    ]
    return _spoken(of_hose, languages), _spoken(of_basis, languages)


def clocking_said(tag: Tag, languages: tuple[str, ...]) -> tuple[tuple[Said, ...], ...]:
    """The angle with how it is counted, with where it is seen from, and alone; empty unless both ends are elbows.

    Which way it is counted is in the picture beside it, too.
    """
    return () if tag.spec.clocking_deg is None else _clocking_said(tag.spec.clocking_deg, languages)


@lru_cache(maxsize=512)
def _clocking_said(angle: int, languages: tuple[str, ...]) -> tuple[tuple[Said, ...], ...]:
    lines: list[_Line] = [
        (degrees(angle), "main", (2, 1, 0)),
        (Message("printing-clocking-counted"), "small", (2,)),
        (Message("printing-clocking-seen"), "small", (1,)),
    ]
    return _forms(lines, (2, 1, 0), languages)


def length_text(tag: Tag, languages: tuple[str, ...]) -> str:
    """The overall length in both systems, for the arrow of the drawing."""
    return voices(languages)[0].figure(length(tag.spec.length_mm))


Duty = tuple[tuple[tuple[str, ...], ...], tuple[str, ...]]


def duty_forms(tag: Tag, languages: tuple[str, ...]) -> Duty:
    """The dangers, the fuller form first; and fluid and temperature."""
    spoken = voices(languages)
    dangers = once(
        once(voice(message) for voice in spoken for message in form)
        for form in (_dangers(tag), rating.short_dangers(tag), rating.shortest_dangers(tag))
    )
    return dangers, once(voice(message) for voice in spoken for message in _duty(tag))


def told_dangers(tag: Tag, languages: tuple[str, ...]) -> tuple[str, ...]:
    """The dangers in every form that a field has of them."""
    said = (*_dangers(tag), *rating.shortest_dangers(tag))
    return once(voice(message) for voice in voices(languages) for message in said)


def caution_lines(
    tag: Tag, languages: tuple[str, ...], *, short: bool, dangers: bool
) -> Iterator[tuple[str, ...]]:
    """The dangers that the tag carries, then the caution, in each language: the fullest form first.

    Where there is no room for both, the danger of this very assembly comes before what holds for all. Without
    ``dangers`` another box of the label tells them.
    """
    caution = Message("printing-caution-short") if short else Message("printing-caution")
    least = [Message("printing-caution-least")]
    full, brief = (_dangers(tag), rating.short_dangers(tag)) if dangers else ([], [])
    forms = ([*full, caution], [*full, *least], [*brief, caution], [*brief, *least])
    if full:
        forms = (*forms, full, brief, rating.shortest_dangers(tag))  # type: ignore[assignment]
    return (once(voice(message) for voice in voices(languages) for message in form) for form in forms)
