"""What the trade says of a spec: the answer of ``check``, as values.

A figure that is not known is None, never a guess; a figure that is known carries its source.
"""

from __future__ import annotations

from collections.abc import Mapping
from datetime import date
from functools import lru_cache
from typing import Annotated, Any, Literal

from pydantic import BaseModel, BeforeValidator, ConfigDict, computed_field, model_validator

from tagger import phrases
from tagger.messages import TO_WRITE, Message, Value, as_is, english
from tagger.spec import AssemblySpec, Basis, Danger, Part, PressureOverride, TagContent, Tightening
from tagger.trade.rows import UNVERIFIED


def _kept_text(value: Any) -> Any:
    """A text that was stored before messages had ids, read as it is."""
    return as_is(value) if isinstance(value, str) else value


Said = Annotated[Message, BeforeValidator(_kept_text)]
"""A message; a text from an older record is read as it is."""


class _Value(BaseModel):
    model_config = ConfigDict(frozen=True)


Grade = Literal["standard", "document", "secondary", "practice", "unverified", "shop", "given"]
"""How good a source is: ``data/sources.csv``; nothing published; a shop's own or an entered value."""


class PartRating(_Value):
    """Working pressure of one part, in bar; None where no table gives it, and ``why`` says so."""

    part: str  # "hose", "end_a", "end_b", "override"
    value_bar: float | None
    source: str  # the citation alone; empty where nothing is known
    confidence: Literal["published", "memory", "judgement", "shop", "given", "none"]
    note: str = ""  # what the source says beside its figure, in its own words
    printed: str = ""  # the figure and unit as the source prints them
    why: Message | None = None
    grade: Grade | None = None  # None where nothing is known, and in older records
    above_published_bar: float | None = (
        None  # the highest published figure, where a shop's or a given one is above
    )

    @property
    def standing(self) -> Literal["verified", "unverified", "unknown"]:
        """Whether a source rates the part, only memory or judgement does, or nothing."""
        if self.value_bar is None:
            return "unknown"
        return "unverified" if self.confidence in UNVERIFIED else "verified"


class WorkingPressure(_Value):
    """The least of the parts. None when any part's rating is not known and none is given: ``why`` says so."""

    value_bar: float | None
    limited_by: str | None  # a part's name
    source: str  # the limiting part's; empty where the pressure is not known
    printed: str = ""
    why: Message | None = None
    parts: tuple[PartRating, ...] = ()
    at_most_bar: float | None = None  # the least of the parts known, where value_bar is None
    margin_bar: float | None = None  # how far the limiting part lies below the next


class LengthTolerance(_Value):
    """Both figures positive, in mm: the length may be ``minus`` shorter and ``plus`` longer."""

    minus: float
    plus: float
    source: str
    confidence: str = "published"


class Torque(_Value):
    """N·m; ``min`` is None where the source gives a ceiling only."""

    min: float | None
    max: float
    basis: Said  # joint and lubrication
    source: str
    part: Literal["nut", "cap_screw"] = "nut"


class Flats(_Value):
    """Sixths of a turn of the nut, counted from ``basis``."""

    min: float
    max: float
    basis: Basis
    source: str


class Turns(_Value):
    """Whole turns past finger-tight, for taper threads, which are never turned by flats."""

    min: float
    max: float
    basis: Basis
    source: str


class EndAdvice(_Value):
    """How to tighten one end. ``spread`` names the sources that disagree with those shown.

    ``steps`` names rows of data/fit_steps.csv in order; ``figures`` fills their placeholders.
    """

    torque: Torque | None
    flats: Flats | None
    turns: Turns | None = None
    spread: tuple[Said, ...] = ()
    steps: tuple[str, ...] = ()
    figures: dict[str, str] = {}


class Warning_(_Value):
    """Something the reader must know; ``code`` is stable, ``text`` is the message in English."""

    code: str
    field: str
    message: Message
    severity: Literal["danger", "care", "note"] = "care"

    @computed_field  # type: ignore[prop-decorator]
    @property
    def text(self) -> str:
        """The message in English, for logs, tests and programs."""
        return english(self.message)

    @property
    def danger(self) -> Danger | None:
        """The danger that a tag carries for it."""
        return _DANGERS.get(self.code)

    @model_validator(mode="before")
    @classmethod
    def _kept_as_text(cls, data: Any) -> Any:
        """A warning that was stored as English text, before messages: said anew from its code."""
        if isinstance(data, dict) and "message" not in data:
            return {**data, "message": _kept_warning(data["code"], data["field"], data["text"])}
        return data


KEPT_CODES = frozenset(
    (
        "bend_from_memory",
        "bend_not_known",
        "cold_limit_of_fluid",
        "edition_not_given",
        "fluid_not_known",
        "fluid_not_suited",
        "jump_size",
        "length_tolerance_from_memory",
        "length_tolerance_not_known",
        "outside_standard",
        "pressure_given",
        "pressure_given_too_high",
        "pressure_not_known",
        "rating_from_memory",
        "rating_not_known",
        "soft_material",
        "standard_not_known",
        "standard_spelling",
        "tightening_not_known",
        "too_cold",
        "too_hot",
        "too_hot_for_fluid",
        "too_short_to_bend",
        "torque_from_memory",
    )
)
"""The codes of warnings that were stored as text; there will be no more of them."""


def _kept_warning(code: str, field: str, text: str) -> Message:
    """The message of a stored warning by its code and the part its field names; an unknown code's text as it is."""
    if code not in KEPT_CODES:
        return as_is(text)
    part = field.partition(".")[0]
    named = {"part": phrases.part(part)} if part in ("hose", "end_a", "end_b", "override") else {}
    return Message(f"trade-kept-{code}", **named)


_TEXTS: Any = {"__all__": {"text"}}
IN_COMMON = ("warnings", "working_pressure")
"""Fields of an assessment that many have alike: one object wherever they come from ``assess``."""


class Assessment(_Value):
    """Everything the trade derives from a spec."""

    working_pressure: WorkingPressure
    test_pressure_bar: float | None
    burst_pressure_bar: float | None
    length_tolerance: LengthTolerance | None
    clocking_tolerance_deg: float | None
    clocking_tolerance_source: str = ""
    bend_radius_mm: float | None
    bend_radius_source: str  # empty where it is not known
    bend_radius_printed: str = ""
    hose_od_mm: float | None  # nominal outside diameter, for what goes round the hose
    hose_od_source: str  # empty where it is not known
    hose_od_basis: Message | None = None  # how it was taken from several sources
    hose_mass_kg: float | None = None  # the hose over the length, without fittings and oil
    max_temperature_c: float | None = None  # as entered, else the hose's limit with the spec's fluid
    max_temperature_source: str = ""  # empty where it was entered
    min_temperature_c: float | None = None  # the hose's lowest with the spec's fluid
    min_temperature_source: str = ""
    content_l: float | None = None  # what it holds, by its nominal bore
    end_a: EndAdvice
    end_b: EndAdvice
    warnings: tuple[Warning_, ...] = ()

    def kept(self) -> dict[str, Any]:
        """As it is stored: messages as ids and values, no text in any language."""
        return self.model_dump(mode="json", exclude={"warnings": _TEXTS})

    def kept_by_itself(self) -> dict[str, Any]:
        """The same but for both ends and what is ``IN_COMMON``, for who writes it out at once, and changes nothing
        in it."""
        return self.model_dump(mode="json", exclude={"end_a", "end_b", *IN_COMMON}, context=TO_WRITE)

    def kept_of(self, name: str) -> dict[str, Any]:
        """One of its fields by its name, as it is stored."""
        return self.model_dump(mode="json", include={name}, exclude={"warnings": _TEXTS})

    @property
    def above_published(self) -> tuple[Message, ...]:
        """What is said of parts that a shop's or an entered value rates above every published one."""
        return tuple(w.message for w in self.warnings if w.code == "rating_above_published")

    @property
    def dangers(self) -> tuple[Danger, ...]:
        """What is asked of the assembly beyond a source, as its tag says it."""
        found = {warning.danger for warning in self.warnings}
        return tuple(danger for danger in Danger if danger in found)

    def _carried(self, spec: AssemblySpec) -> AssemblySpec:
        """What a tag carries of the spec; with the temperature that a pressure entered holds up to, where none is asked."""
        carried, given, why = spec.carried(), spec.working_pressure, self.working_pressure.why
        if why is not None and why.id == "trade-pressure-unconfirmed":  # no tag says what does not count
            return carried.model_copy(update={"working_pressure": None})
        if given is None or given.max_temperature_c is None or spec.max_temperature_c is not None:
            return carried
        return carried.model_copy(update={"max_temperature_c": self.max_temperature_c})

    def content_of(self, spec: AssemblySpec, built_on: date | None = None) -> TagContent:
        """What a tag for this spec carries."""
        rated = self.working_pressure
        known = rated.value_bar is not None
        parts = {part.part: part for part in rated.parts}
        of = [(name, parts[name]) for name in _PARTS if name in parts]
        unknown = tuple(name for name, part in of if part.value_bar is None and not known)
        unverified = tuple(name for name, part in of if part.standing == "unverified")
        return TagContent(
            spec=_with_word_of_parts(self._carried(spec), spec, rated),
            working_pressure_bar=rated.value_bar,
            at_most_bar=None if known else rated.at_most_bar,
            unknown_parts=unknown,
            unverified_parts=unverified,
            dangers=self.dangers,
            tighten_a=carried_tightening(self.end_a),
            tighten_b=carried_tightening(self.end_b),
            built_on=built_on,
        )


# names of pressure_source in code_points.csv
_DATA_SHEET = "maker's data sheet"
_OWN_RULE = "shop's own rule"


def _with_word_of_parts(carried: AssemblySpec, spec: AssemblySpec, rated: WorkingPressure) -> AssemblySpec:
    """What the tag carries of the spec: a pressure that rests on somebody's word for a part says so.

    The word itself is not carried: who reads the tag with other tables would find no rating for the part.
    """
    bar = rated.value_bar
    words = {part.confidence for part in rated.parts} & {"given", "shop"}
    if spec.working_pressure is not None or bar is None or not words:
        return carried
    named = next(
        (one for one in (spec.hose.rating, spec.end_a.rating, spec.end_b.rating) if one and one.fluid), None
    )
    given = PressureOverride(
        value_bar=bar,
        source=_DATA_SHEET if "given" in words else _OWN_RULE,
        fluid=named.fluid if named else None,
        max_temperature_c=named.max_temperature_c if named else None,
    )
    return carried.model_copy(update={"working_pressure": given})


def carried_tightening(advice: EndAdvice) -> Tightening | None:
    """The figures of one end as the tag carries them; None where none is known.

    Whole turns of a taper thread are carried as sixths, six to the turn; who reads them
    knows by the family that they are said as turns.
    """
    return _carried(advice.torque, advice.flats, advice.turns)


@lru_cache(maxsize=1024)  # ends of a kind have the same
def _carried(torque: Torque | None, flats: Flats | None, turns: Turns | None) -> Tightening | None:
    if torque is None and flats is None and turns is None:
        return None
    turned, sixths = (turns, 6) if flats is None else (flats, 1)
    return Tightening(
        torque_min_nm=torque.min if torque else None,
        torque_max_nm=torque.max if torque else None,
        flats_min=turned.min * sixths if turned else None,
        flats_max=turned.max * sixths if turned else None,
        flats_basis=turned.basis if turned else None,
        lubrication=_lubrication(torque) if torque else None,
        screw=_screw(torque) if torque else None,
    )


def _joint(torque: Torque) -> Mapping[str, Value]:
    """What the basis says of the joint; more may be said round it, such as how many sources share the range."""
    said = torque.basis
    while isinstance(inner := said.values.get("basis"), Message):
        said = inner
    return said.values


def _lubrication(torque: Torque) -> str | None:
    """The word of the tables for how the joint is lubricated; None for a shop's own text."""
    said = _joint(torque).get("lubrication")
    word = said.id.removeprefix(_LUBRICATION) if isinstance(said, Message) else ""
    return word if isinstance(said, Message) and word != said.id else None


def _screw(torque: Torque) -> str | None:
    """The screw's thread, with its property class where the source names it: "M10 10.9"."""
    joint = _joint(torque)
    screw, named = joint.get("screw"), joint.get("grade")
    if not screw or screw == "none":
        return None
    return f"{screw} {named}" if named and named != "none" else str(screw)


_PARTS: tuple[Part, ...] = ("hose", "end_a", "end_b")
_LUBRICATION = "trade-lubrication-"
_DANGERS = {
    "fluid_not_named": Danger.FLUID,
    "fluid_not_suited": Danger.FLUID,
    "too_hot": Danger.HEAT,
    "too_hot_for_fluid": Danger.HEAT,
    "too_cold": Danger.COLD,
    "pressure_given_too_high": Danger.PRESSURE,
    "vacuum_too_deep": Danger.VACUUM,
    "vacuum_not_known": Danger.VACUUM,
}
"""What a warning's code says on the tag."""
