"""What the lines of a tag say: each field a template can name, in the reader's language.

Every line is a view of the tag; none adds a fact of its own.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from functools import lru_cache

from tagger import units
from tagger.printing.content import Tag
from tagger.printing.words import words_in
from tagger.spec import End, Tightening
from tagger.words import N_, NOT_KNOWN, Words

CAUTION = N_(
    "Wrong pressure, thread or tightening can injure people. Release all pressure before loosening. "
    "The fitting maker's instructions and local rules come first."
)
SHORT_CAUTION = N_("Release pressure before loosening. The fitting maker's instructions come first.")


@dataclass(frozen=True)
class Field:
    """``caption`` is the message shown before it where a template asks for captions."""

    caption: str
    lines: Callable[[Tag, Words], list[str]]


def _optional(text: str | None) -> list[str]:
    return [text] if text else []


def _short_end(end: End, words: Words) -> list[str]:
    """What has to match when it is screwed on: size, family, form and bend. The symbol holds the rest."""
    bend = words.t("{angle}° elbow", angle=end.angle_deg) if end.is_elbow else words.t("straight")
    return [f"{end.size_text} {words.connection(end.connection)}, {words.form(end.form)}, {bend}"]


def _size(tag: Tag, words: Words) -> list[str]:
    return [f"-{tag.spec.hose.dash} ({units.inch_text(tag.spec.hose.dash * 25.4 / 16)})"]


def _clocking_short(tag: Tag, words: Words) -> list[str]:
    """The figure alone, for small labels; which way it is counted stands behind the symbol."""
    angle = tag.spec.clocking_deg
    return [] if angle is None else [words.t(N_("clocking {angle}°"), angle=angle)]


def _covers(tag: Tag, words: Words) -> list[str]:
    return _optional(", ".join(words.cover(cover) for cover in tag.spec.covers))


def _temperature(tag: Tag, words: Words) -> list[str]:
    celsius = tag.spec.max_temperature_c
    return [] if celsius is None else [units.show_temperature(celsius)]


def _fluid(tag: Tag, words: Words) -> list[str]:
    return [] if tag.spec.fluid is None else [words.fluid(tag.spec.fluid)]


def _built_on(tag: Tag, words: Words) -> list[str]:
    return [] if tag.content.built_on is None else [tag.content.built_on.isoformat()]


def _tolerance(tag: Tag, words: Words) -> list[str]:
    allowed = tag.assessment.length_tolerance if tag.assessment else None
    if allowed is None:
        return []
    return [f"−{units.number_text(allowed.minus)} / +{units.number_text(allowed.plus)} mm ({allowed.source})"]


def _bend_radius(tag: Tag, words: Words) -> list[str]:
    if tag.assessment is None or tag.assessment.bend_radius_mm is None:
        return []
    return [f"≥ {units.show_length(tag.assessment.bend_radius_mm)} ({tag.assessment.bend_radius_source})"]


def _test_pressure(tag: Tag, words: Words) -> list[str]:
    bar = tag.assessment.test_pressure_bar if tag.assessment else None
    return [] if bar is None else [units.show_least_pressure(bar)]


def _limited_by(tag: Tag, words: Words) -> list[str]:
    if tag.assessment is None:
        return []
    rating = tag.assessment.working_pressure
    named = {
        "hose": N_("the hose"),
        "end_a": N_("end A"),
        "end_b": N_("end B"),
        "override": N_("a given figure"),
    }
    limit = rating.limited_by
    part = "" if limit is None else words.t(named.get(limit, limit)) + ": "
    return [f"{part}{rating.source}"] if rating.source else []


def _warnings(tag: Tag, words: Words) -> list[str]:
    return [] if tag.assessment is None else [f"! {warning.text}" for warning in tag.assessment.warnings]


def _sources(tag: Tag, words: Words) -> list[str]:
    """Where the tightening figures come from; what both ends share stands once."""
    if tag.assessment is None:
        return []
    said: dict[str, list[str]] = {}
    for name, advice in (("A", tag.assessment.end_a), ("B", tag.assessment.end_b)):
        if advice.torque is not None:
            said.setdefault(f"{advice.torque.basis}; {advice.torque.source}", []).append(name)
        if advice.flats is not None and (
            advice.torque is None or advice.flats.source != advice.torque.source
        ):
            said.setdefault(advice.flats.source, []).append(name)
    return [f"{', '.join(names)}: {text}" for text, names in said.items()]


def _lots(tag: Tag, words: Words) -> list[str]:
    names = {"end_a": "A", "hose": words.t(N_("hose")), "end_b": "B"}
    return _optional(
        ", ".join(f"{name}: {tag.lots[part]}" for part, name in names.items() if part in tag.lots)
    )


def _extra(key: str) -> Callable[[Tag, Words], list[str]]:
    return lambda tag, words: _optional(tag.extra.get(key))


FIELDS: dict[str, Field] = {
    "number": Field(N_("Tag"), lambda tag, words: [tag.shown_number]),
    "serial": Field(N_("Piece"), lambda tag, words: _optional(tag.serial)),
    "built_on": Field(N_("Built on"), _built_on),
    "hose": Field(N_("Hose"), lambda tag, words: [words.hose(tag.spec.hose)]),
    "dash": Field(N_("Size"), _size),
    "end_a": Field(N_("End A"), lambda tag, words: [words.end(tag.spec.end_a)]),
    "end_b": Field(N_("End B"), lambda tag, words: [words.end(tag.spec.end_b)]),
    "end_a_short": Field(N_("End A"), lambda tag, words: _short_end(tag.spec.end_a, words)),
    "end_b_short": Field(N_("End B"), lambda tag, words: _short_end(tag.spec.end_b, words)),
    "length": Field(N_("Length"), lambda tag, words: [words.length(tag.spec)]),
    "clocking": Field(N_("Clocking"), lambda tag, words: _optional(words.clocking(tag.spec))),
    "clocking_short": Field(N_("Clocking"), _clocking_short),
    "working_pressure": Field(
        N_("Working pressure"), lambda tag, words: [words.pressure(tag.content.working_pressure_bar)]
    ),
    "fluid": Field(N_("Fluid"), _fluid),
    "temperature": Field(N_("Up to"), _temperature),
    "covers": Field(N_("Covers"), _covers),
    "tolerance": Field(N_("Length tolerance"), _tolerance),
    "bend_radius": Field(N_("Bend radius"), _bend_radius),
    "test_pressure": Field(N_("Test pressure"), _test_pressure),
    "limited_by": Field(N_("Limited by"), _limited_by),
    "warnings": Field(N_("Warnings"), _warnings),
    "tightening_sources": Field(N_("Sources of the tightening figures"), _sources),
    "lots": Field(N_("Lots"), _lots),
    "shop": Field(N_("Made by"), lambda tag, words: _optional(tag.shop)),
    "customer": Field(N_("Customer"), _extra("customer")),
    "machine": Field(N_("Machine"), _extra("machine")),
    "position": Field(N_("Position"), _extra("position")),
    "order": Field(N_("Order"), _extra("order")),
    "note": Field(N_("Note"), _extra("note")),
}


def lines_of(names: tuple[str, ...], tag: Tag, languages: tuple[str, ...], caption: bool) -> tuple[str, ...]:
    """The lines of the named fields, one language after the other; a line both share stands once."""
    lines: dict[str, None] = {}
    for name in names:
        said: dict[tuple[str, ...], list[str]] = {}  # what is said -> its captions, one a language
        for language in languages:
            words = words_in(language)
            shown = tuple(FIELDS[name].lines(tag, words))
            captions = said.setdefault(shown, [])
            if (text := words.t(FIELDS[name].caption)) not in captions:
                captions.append(text)
        for shown, captions in said.items():
            lead = f"{' / '.join(captions)}: " if caption else ""
            for position, line in enumerate(shown):
                lines[(lead if position == 0 else "") + line] = None
    return tuple(lines)


def tightening_lines(tag: Tag, ends: str, languages: tuple[str, ...]) -> tuple[str, ...]:
    """How to tighten each end, in one line an end and language; the basis always beside the figure."""
    chosen = [name for name in ("a", "b") if ends in ("both", name)]
    lines: dict[str, None] = {}
    for name in chosen:
        end = tag.spec.end_a if name == "a" else tag.spec.end_b
        figures = tag.content.tighten_a if name == "a" else tag.content.tighten_b
        for language in languages:
            lines[_tightening(name.upper(), end, figures, language)] = None
    return tuple(lines)


@lru_cache(maxsize=1024)
def _tightening(name: str, end: End, figures: Tightening | None, language: str) -> str:
    words = words_in(language)
    return words.t(N_("Tighten {end}"), end=name) + ": " + "; ".join(words.tighten(figures, end))


def pressure_lines(tag: Tag, languages: tuple[str, ...]) -> tuple[tuple[str, ...], tuple[str, ...]]:
    """(captions, figures): the words "working pressure" and the figures in bar and in psi."""
    captions = tuple(dict.fromkeys(words_in(language).t(N_("Working pressure")) for language in languages))
    bar = tag.content.working_pressure_bar
    if bar is None:
        unknown = (words_in(language).t(NOT_KNOWN) for language in languages)
        return captions, tuple(dict.fromkeys(unknown))
    return captions, (f"{round(bar)} bar", f"{units.psi_of(bar)} psi")


def caution_lines(languages: tuple[str, ...], short: bool) -> tuple[str, ...]:
    message = SHORT_CAUTION if short else CAUTION
    return tuple(dict.fromkeys(words_in(language).t(message) for language in languages))
