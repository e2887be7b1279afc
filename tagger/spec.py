"""AssemblySpec: one finished hose assembly as a value. Everything else is a view of it.

Figures are SI and rounded to what the tag carries, so that a spec read back from its tag
equals the spec registered: lengths to 0.1 mm, pressures to 0.1 bar, temperatures to 1 °C.
"""

from __future__ import annotations

import re
from collections.abc import Callable
from datetime import date
from enum import StrEnum
from fractions import Fraction
from functools import cache
from typing import Annotated, Any, Literal, TypeVar

from pydantic import (
    AfterValidator,
    BaseModel,
    BeforeValidator,
    ConfigDict,
    Field,
    ValidationError,
    WithJsonSchema,
    field_validator,
    model_validator,
)

from tagger.connection import Connection as Connection
from tagger.connection import Joint as Joint
from tagger.connection import Sizing as Sizing
from tagger.errors import Problem, SpecError, problems_of
from tagger.intake import json_value
from tagger.messages import Message
from tagger.units import read_length_mm, read_pressure_bar, read_temperature_c, read_torque_nm


class Form(StrEnum):
    MALE = "male"
    FEMALE_SWIVEL = "female_swivel"
    FEMALE_FIXED = "female_fixed"
    FLANGE_HEAD = "flange_head"
    MALE_SWIVEL = "male_swivel"
    EYE = "eye"  # a ring that a banjo bolt goes through
    COUPLER_MALE = "coupler_male"
    COUPLER_FEMALE = "coupler_female"
    STAPLE_MALE = "staple_male"
    STAPLE_FEMALE = "staple_female"
    STANDPIPE = "standpipe"  # plain tube that takes a nut and a cutting ring

    @property
    def is_male_thread(self) -> bool:
        """Whether the end shows a thread on its outside."""
        return self in (Form.MALE, Form.MALE_SWIVEL)

    @property
    def is_female_thread(self) -> bool:
        """Whether the end shows a thread on its inside."""
        return self in (Form.FEMALE_SWIVEL, Form.FEMALE_FIXED)

    @property
    def swivels(self) -> bool:
        """Whether the end has a nut of its own that turns on it."""
        return self in (Form.FEMALE_SWIVEL, Form.MALE_SWIVEL)


class Material(StrEnum):
    CARBON_STEEL = "carbon_steel"
    STAINLESS_STEEL = "stainless_steel"
    BRASS = "brass"
    ALUMINIUM = "aluminium"


class Series(StrEnum):
    """The duty of studs and tubes that share a thread: ISO 6149-2 and -3, SAE J1926-2 and -3."""

    HEAVY = "S"
    LIGHT = "L"


class LengthBasis(StrEnum):
    SEALING_FACE = "sealing_face"
    THREAD_END = "thread_end"
    ELBOW_CENTRELINE = "elbow_centreline"


class Fluid(StrEnum):
    """What flows through it; the symbols are those of ISO 6743-4 where it has one."""

    MINERAL_OIL = "mineral_oil"  # HL, HM, HV
    WATER_OIL_EMULSION = "water_oil_emulsion"  # HFA, HFB
    WATER_GLYCOL = "water_glycol"  # HFC
    PHOSPHATE_ESTER = "phosphate_ester"  # HFD-R
    SYNTHETIC_ESTER = "synthetic_ester"  # HEES, HFD-U
    VEGETABLE_OIL = "vegetable_oil"  # HETG
    POLYGLYCOL = "polyglycol"  # HEPG
    WATER = "water"
    DIESEL = "diesel"
    PETROL = "petrol"
    AIR = "air"
    REFRIGERANT = "refrigerant"
    ENGINE_OIL = "engine_oil"
    TRANSMISSION_FLUID = "transmission_fluid"
    BIODIESEL = "biodiesel"
    LPG = "lpg"
    NITROGEN = "nitrogen"
    OXYGEN = "oxygen"
    STEAM = "steam"
    BRAKE_FLUID = "brake_fluid"  # glycol ether


class Cover(StrEnum):
    """What goes over the hose."""

    ABRASION_SLEEVE = "abrasion_sleeve"
    SPRING_GUARD = "spring_guard"
    SPIRAL_GUARD = "spiral_guard"
    FIRE_SLEEVE = "fire_sleeve"
    HEAT_SLEEVE = "heat_sleeve"
    BURST_SLEEVE = "burst_sleeve"
    ARMOUR = "armour"
    BEND_RESTRICTOR = "bend_restrictor"


def _figure(read: Callable[[object], float], unit: str, places: int = 1) -> tuple[Any, ...]:
    def rounded(value: object) -> float:
        return round(read(value), places)

    schema = {
        "anyOf": [{"type": "number"}, {"type": "string"}],
        "description": f"{unit}, or a string with a unit",
    }
    return (
        BeforeValidator(rounded),
        WithJsonSchema(schema, mode="validation"),
        WithJsonSchema({"type": "number", "description": unit}, mode="serialization"),
    )


_LENGTH, _PRESSURE = _figure(read_length_mm, "mm"), _figure(read_pressure_bar, "bar")
_VACUUM = _figure(read_pressure_bar, "bar below the atmosphere", 2)
_TEMPERATURE, _TORQUE = _figure(read_temperature_c, "°C", 0), _figure(read_torque_nm, "N·m")
PressureBar = Annotated[float, *_PRESSURE]
# Flats to twelfths (5 degrees of turn), the finest step a tag carries.
Flats = Annotated[float, Field(ge=0, le=21), AfterValidator(lambda flats: round(round(flats * 12) / 12, 4))]


def _bounded(low: float, high: float) -> Any:
    return Field(ge=low, le=high)


def _read_dash(value: object) -> object:
    """The trade writes a dash size with its dash, -12; as a number it stands without."""
    if isinstance(value, str) and (match := _WRITTEN_DASH.match(value)):
        return int(match[1])
    return value


_WRITTEN_DASH = re.compile(r"^\s*[-\u2010\u2011\u2012\u2013\u2212]?\s*(\d{1,2})\s*$", re.ASCII)
Dash = Annotated[int, _bounded(1, 63), BeforeValidator(_read_dash)]


MAX_LENGTH_MM = 104_857  # what a tag has room for
# Something unlikely that whoever enters it says is right; absent where nobody does.
Tick = Annotated[bool | None, AfterValidator(lambda ticked: ticked or None)]


class _Value(BaseModel):
    model_config = ConfigDict(frozen=True, extra="forbid", str_strip_whitespace=True)


class GivenRating(_Value):
    """The manufacturer's working pressure of one part, with its source.

    It stands for a rating that is not known or unverified, and raises no other. ``fluid`` and
    ``max_temperature_c`` are what the source names: the figure then holds for that fluid, and up to that
    temperature; without both it lifts no limit of fluid or heat. ``confirmed``: it is right although it is
    above every figure of the tables for that kind of part.
    """

    value_bar: Annotated[float, *_PRESSURE, _bounded(0.1, 3000)]
    source: str = Field(min_length=1, max_length=80)
    fluid: Fluid | None = None
    max_temperature_c: Annotated[float, *_TEMPERATURE, _bounded(-100, 400)] | None = None
    confirmed: bool = False


class FluidApproval(_Value):
    """The hose manufacturer's approval of a fluid, up to the temperature that its source names."""

    fluid: Fluid
    max_temperature_c: Annotated[float, *_TEMPERATURE, _bounded(-100, 400)]
    source: str = Field(min_length=1, max_length=80)


class Hose(_Value):
    """The hose between the ends: ``standard`` as printed on the lay line, bore by ``dash``.

    ``part`` is its manufacturer's part number; with the ``lot`` it names the reel. ``rating`` and
    ``approval`` are its manufacturer's; no tag carries them.
    """

    standard: str = Field(min_length=1, max_length=40)
    dash: Dash
    edition: str | None = Field(default=None, min_length=1, max_length=12)
    part: str | None = Field(default=None, min_length=1, max_length=40)
    lot: str | None = Field(default=None, max_length=40)
    rating: GivenRating | None = None
    approval: FluidApproval | None = None

    @field_validator("standard", mode="after")
    @classmethod
    def _one_spacing(cls, value: str) -> str:
        return re.sub(r"\s+", " ", value)


class End(_Value):
    """One end fitting.

    ``dash`` or ``size``: exactly one, whichever the family uses. ``hose_dash`` states a jump
    size: the hose this fitting's tail is made for, where that is not the natural one.
    ``description``: with the connection ``other``, what the end is, its thread included.
    ``series``: heavy or light, in families where one thread is made in both; None is not known.
    ``shape``: straight, elbow_45, elbow_90, or the bend in whole degrees.
    ``fitting``: the stock number under which the shop keeps this fitting.
    ``rating``: the fitting manufacturer's; no tag carries it.
    """

    connection: Connection
    dash: Dash | None = None
    size: str | None = Field(default=None, max_length=12)
    series: Series | None = None
    description: str | None = Field(default=None, min_length=1, max_length=24, pattern="^[ -~]+$")
    form: Form
    shape: Literal["straight", "elbow_45", "elbow_90"] | Annotated[int, _bounded(1, 180)] = "straight"
    drop_mm: Annotated[float, *_LENGTH, _bounded(1, 400)] | None = None
    material: Material = Material.CARBON_STEEL
    hose_dash: Dash | None = None
    fitting: str | None = Field(default=None, min_length=1, max_length=40)
    lot: str | None = Field(default=None, max_length=40)
    rating: GivenRating | None = None

    @field_validator("shape", mode="after")
    @classmethod
    def _named_angle(cls, value: str | int) -> str | int:
        return {45: "elbow_45", 90: "elbow_90"}.get(value, value) if isinstance(value, int) else value

    @model_validator(mode="before")
    @classmethod
    def _size_in_family_terms(cls, data: Any) -> Any:
        """Pipe and tube sizes arrive in many spellings, and pipe sizes by dash too."""
        if not isinstance(data, dict):
            return data
        try:
            family = Connection(data.get("connection", ""))
        except ValueError:
            return data
        dash, size = _read_dash(data.get("dash")), data.get("size")
        data = dict(data)
        if size is not None and family.sized_by is not Sizing.DASH:
            data["size"] = compact_size(family, size)
        if written := _series_in(family, size, data.get("series")):
            data["series"] = written
        if family.sized_by is Sizing.PIPE and size is None and isinstance(dash, int):
            data["size"], data["dash"] = pipe_of_dash(dash), None
        return data

    @model_validator(mode="after")
    def _consistent(self) -> End:
        wanted = self.connection.sized_by
        if self.description is not None and wanted is not Sizing.WORDS:
            raise SpecValueError("description", self.description, Message("spec-description"))
        if wanted is Sizing.WORDS:
            self._described()
        elif self.dash is None and self.size is None:
            raise SpecValueError("dash" if wanted is Sizing.DASH else "size", None, Message("spec-missing"))
        if self.dash is not None and self.size is not None:
            wrong = Message("spec-dash-and-size", enter=_enter_size(wanted))
            raise SpecValueError("dash", None, wrong)
        if wanted is Sizing.DASH and self.dash is None:
            wrong = Message("spec-sized-by-dash", connection=self._family, enter=_enter_size(wanted))
            raise SpecValueError("size", self.size, wrong)
        if wanted not in (Sizing.DASH, Sizing.WORDS) and self.size is None:
            wrong = Message("spec-not-sized-by-dash", connection=self._family, enter=_enter_size(wanted))
            raise SpecValueError("dash", self.dash, wrong)
        if self.form not in _forms_for(self.connection):
            wrong = Message("spec-form", connection=self._family, forms=_forms_of(self.connection))
            raise SpecValueError("form", str(self.form), wrong)
        if self.shape == "straight" and self.drop_mm is not None:
            raise SpecValueError("drop_mm", self.drop_mm, Message("spec-drop-of-straight"))
        return self

    @property
    def _family(self) -> Message:
        return Message(f"words-connection-{self.connection}")

    def _described(self) -> None:
        """An end of no family has words for its size, and nothing else."""
        if self.description is None:
            raise SpecValueError("description", None, Message("spec-description-missing"))
        if self.dash is not None or self.size is not None:
            field = "dash" if self.size is None else "size"
            raise SpecValueError(field, getattr(self, field), Message("spec-description-only"))

    @property
    def is_elbow(self) -> bool:
        return self.shape != "straight"

    @property
    def angle_deg(self) -> int:
        """The bend in degrees; 0 when straight."""
        if isinstance(self.shape, int):
            return self.shape
        return {"straight": 0, "elbow_45": 45, "elbow_90": 90}[self.shape]

    @property
    def size_text(self) -> str:
        """The size as the trade says it: "-12", "3/4", "12 mm" or "M22x1.5", with the series ("M22x1.5 S").

        Of an end of no family its description.
        """
        if self.description is not None:
            return self.description
        size = f"-{self.dash}" if self.dash is not None else str(self.size)
        if self.connection.sized_by is Sizing.TUBE:
            size += " mm"
        return f"{size} {self.series}" if self.series else size

    @property
    def size_key(self) -> str:
        """The size as the tables key it: "12", "3/4", "M22x1.5"."""
        return self.description or str(self.dash if self.dash is not None else self.size)


class PressureOverride(_Value):
    """A working pressure from elsewhere than the tables; never without its source.

    ``fluid`` and ``max_temperature_c`` are what the source names. Without both it lifts no limit of
    fluid or heat. ``confirmed``: it is right although it is above every figure of the tables for a part
    of that kind.
    """

    value_bar: Annotated[float, *_PRESSURE, _bounded(0.1, 3000)]
    source: str = Field(min_length=1, max_length=80)
    fluid: Fluid | None = None
    max_temperature_c: Annotated[float, *_TEMPERATURE, _bounded(-100, 400)] | None = None
    confirmed: Tick = None


class AssemblySpec(_Value):
    """The whole spec of one finished assembly.

    ``vacuum_bar`` is how far below the atmosphere the inside may go: a suction line's rating, 0 to 1 bar.
    ``length_confirmed``: the length is right although it is over 100 m.
    """

    hose: Hose
    end_a: End
    end_b: End
    length_mm: Annotated[float, *_LENGTH, _bounded(10, MAX_LENGTH_MM)]
    length_confirmed: Tick = None
    length_basis: LengthBasis = LengthBasis.SEALING_FACE
    clocking_deg: int | None = Field(default=None, ge=0, le=359)
    max_temperature_c: Annotated[float, *_TEMPERATURE, _bounded(-100, 400)] | None = None
    fluid: Fluid | None = None
    covers: tuple[Cover, ...] = ()
    vacuum_bar: Annotated[float, *_VACUUM, _bounded(0.01, 1)] | None = None
    working_pressure: PressureOverride | None = None
    note: str | None = Field(default=None, max_length=200)

    @field_validator("covers", mode="after")
    @classmethod
    def _each_once_in_order(cls, value: tuple[Cover, ...]) -> tuple[Cover, ...]:
        return tuple(cover for cover in Cover if cover in value)

    @model_validator(mode="after")
    def _clocking_where_it_means_something(self) -> AssemblySpec:
        both = self.end_a.is_elbow and self.end_b.is_elbow
        if both and self.clocking_deg is None:
            raise SpecValueError("clocking_deg", None, Message("spec-clocking-missing"))
        if not both and self.clocking_deg is not None:
            raise SpecValueError("clocking_deg", self.clocking_deg, Message("spec-clocking-without-elbows"))
        return self

    @classmethod
    def read(cls, data: object) -> AssemblySpec:
        """A spec from a JSON text or from plain values.

        Raises SpecError naming every field that is wrong.
        """
        if isinstance(data, str | bytes | bytearray):
            data = json_value(bytes(data) if isinstance(data, bytearray) else data)
        try:
            return cls.model_validate(data)
        except ValidationError as error:
            raise SpecError(problems_of(error)) from None

    def as_dict(self) -> dict[str, Any]:
        """Plain JSON values, absent figures left out (but ``clocking_deg`` always there)."""
        data = self.model_dump(mode="json", exclude_none=True)
        data.setdefault("clocking_deg", None)
        return data

    def to_build_again(self) -> AssemblySpec:
        """The spec that the next hose is begun from: its lots are other ones, and must be given again."""
        gone: dict[str, Any] = {"lot": None}
        parts = {name: getattr(self, name).model_copy(update=gone) for name in ("hose", "end_a", "end_b")}
        return self.model_copy(update=parts).without_ratings()

    def without_lots(self) -> AssemblySpec:
        """The spec as strangers may see it: a part number, a stock number or a lot names who delivered
        what, and when."""
        return self._without_of_parts(("part", "lot"), ("lot", "fitting"))

    def without_ratings(self) -> AssemblySpec:
        """The spec without what manufacturers say of its parts: that is kept apart, and is theirs for today."""
        return self._without_of_parts(("rating", "approval"), ("rating",))

    def _without_of_parts(self, of_hose: tuple[str, ...], of_ends: tuple[str, ...]) -> AssemblySpec:
        """The spec without these fields of its hose, and of its ends."""
        wanted = (("hose", of_hose), ("end_a", of_ends), ("end_b", of_ends))
        return updated(self, {name: _without(getattr(self, name), names) for name, names in wanted})

    def carried(self) -> AssemblySpec:
        """The part of the spec that a tag carries: without lots, note, ticks and what manufacturers say of its
        parts."""
        pressure = self.working_pressure
        if pressure is not None:
            pressure = pressure.model_copy(update={"confirmed": None})
        plain = self._without_of_parts(("part", "lot", "rating", "approval"), ("lot", "fitting", "rating"))
        return updated(plain, {"note": None, "working_pressure": pressure, "length_confirmed": None})


_Model = TypeVar("_Model", bound=BaseModel)


def _without(model: _Model, names: tuple[str, ...]) -> _Model:
    """The model without these fields: itself where it has none of them."""
    return updated(model, dict.fromkeys(names))


def updated(model: _Model, values: dict[str, Any]) -> _Model:
    """The model with these values: itself where it has the very same ones."""
    if all(getattr(model, name) is value for name, value in values.items()):
        return model
    return model.model_copy(update=values)


class Basis(StrEnum):
    """Where a count of flats starts, or that the figure is a torque only."""

    FINGER_TIGHT = "finger_tight"
    WRENCH_RESISTANCE = "wrench_resistance"
    NOT_STATED = "not_stated"
    TORQUE = "torque"


STATED = frozenset((Basis.FINGER_TIGHT, Basis.WRENCH_RESISTANCE))  # a count that can be worked to
MAX_COUNT = 10_000  # assemblies to one spec, registered or ordered in one act


class Danger(StrEnum):
    """A danger that a tag carries with it: what is asked of the assembly is more than a source allows."""

    FLUID = "fluid"
    HEAT = "heat"
    COLD = "cold"
    PRESSURE = "pressure"
    VACUUM = "vacuum"


class Tightening(_Value):
    """How to tighten one end, as the tag carries it. Flats are sixths of a turn of the nut.

    The torque is that of the nut or, on a flange, of each cap screw (``screw``). ``lubrication`` is
    the word of the tables for how the joint is lubricated at that torque.
    """

    torque_min_nm: Annotated[float, *_TORQUE, _bounded(0.1, 1600)] | None = None
    torque_max_nm: Annotated[float, *_TORQUE, _bounded(0.1, 1600)] | None = None
    flats_min: Flats | None = None
    flats_max: Flats | None = None
    flats_basis: Basis | None = None
    lubrication: str | None = Field(default=None, max_length=40)
    screw: str | None = Field(default=None, max_length=20)

    @model_validator(mode="after")
    def _whole_figures(self) -> Tightening:
        flats = (self.flats_min, self.flats_max, self.flats_basis)
        if any(part is None for part in flats) and any(part is not None for part in flats):
            raise SpecValueError("flats_min", self.flats_min, Message("spec-flats-incomplete"))
        if self.torque_min_nm is not None and self.torque_max_nm is None:
            raise SpecValueError("torque_max_nm", None, Message("spec-torque-without-maximum"))
        return self


Part = Literal["hose", "end_a", "end_b"]


class TagContent(_Value):
    """Everything the symbol on a tag says, beside the tag number.

    ``at_most_bar`` is the least of the parts whose rating is known, where the assembly's is not, and
    ``unknown_parts`` are the others. ``unverified_parts`` have a rating that no published source gives.
    ``key_id`` names the key of a signature over number and digits.
    """

    spec: AssemblySpec
    working_pressure_bar: Annotated[float, *_PRESSURE, _bounded(0.1, 3000)] | None = None
    at_most_bar: Annotated[float, *_PRESSURE, _bounded(0.1, 3000)] | None = None
    unknown_parts: tuple[Part, ...] = ()
    unverified_parts: tuple[Part, ...] = ()
    dangers: tuple[Danger, ...] = ()
    tighten_a: Tightening | None = None
    tighten_b: Tightening | None = None
    built_on: date | None = None
    key_id: int | None = Field(default=None, ge=0, le=255)


class SpecValueError(SpecError, ValueError):
    """A SpecError that pydantic collects with its own."""

    def __init__(self, field: str, value: object, wrong: Message) -> None:
        super().__init__(Problem(field, value, wrong))


_PIPE = re.compile(r"^[GR]?[cp]?\s*(\d+(?:[ -]\d+/\d+)?|\d+/\d+)\s*(?:in|inch|\")?$", re.IGNORECASE)
_TUBE = re.compile(r"^(\d+)\s*(?:mm)?\s*(LL|L|S)?$", re.IGNORECASE)
_THREAD = re.compile(r"^M\s*(\d+)\s*[xX×*]\s*(\d+(?:[.,]\d+)?)$", re.IGNORECASE)


def compact_size(family: Connection, size: object) -> object:
    """The one spelling of a size that everything else uses.

    >>> compact_size(Connection.BSPP, "G1-1/4"), compact_size(Connection.DIN24_LIGHT, "12 mm")
    ('1 1/4', '12')
    >>> compact_size(Connection.METRIC_ORB, "m22 x 1,5")
    'M22x1.5'
    """
    text = str(size).strip()
    if family.sized_by is Sizing.PIPE and (match := _PIPE.match(text)):
        return match[1].replace("-", " ")
    if family.sized_by is Sizing.TUBE and (match := _TUBE.match(text)):
        return match[1]
    if family.sized_by is Sizing.THREAD and (match := _THREAD.match(text)):
        return f"M{int(match[1])}x{float(match[2].replace(',', '.')):g}"
    return text


_TUBE_SERIES = {"din24_very_light": "LL", "din24_light": "L", "din24_heavy": "S"}
"""The series that a family of 24 degree cones is, by the letters written behind its tube sizes."""


def _series_in(family: Connection, size: object, given: object) -> str | None:
    """The series written behind a tube size ("12L"), where the family has both; else None.

    Raises SpecValueError for another series than the family's, or than the one given: another thread,
    and another pressure.
    """
    match = _TUBE.match(str(size).strip()) if family.sized_by is Sizing.TUBE else None
    written = match[2].upper() if match and match[2] else None
    own = _TUBE_SERIES.get(family, given)
    if written and own and written != own:
        connection = Message(f"words-connection-{family}")
        wrong = Message("spec-size-of-another-series", connection=connection, series=str(own))
        raise SpecValueError("size", str(size), wrong)
    return None if family in _TUBE_SERIES else written


def dash_of_pipe(size: str) -> int:
    """The dash of a nominal pipe size: its sixteenths of an inch. Raises ValueError for none.

    >>> dash_of_pipe("1 1/4")
    20
    """
    sixteenths = sum(Fraction(part) for part in size.split()) * 16
    if sixteenths.denominator != 1 or sixteenths < 1:
        raise ValueError(f"{size!r} is not a nominal pipe size")
    return int(sixteenths)


def pipe_of_dash(dash: int) -> str:
    """The nominal pipe size of a dash.

    >>> pipe_of_dash(20)
    '1 1/4'
    """
    whole, part = divmod(Fraction(dash, 16), 1)
    return " ".join(([str(whole)] if whole else []) + ([str(part)] if part else []))


def _enter_size(wanted: Sizing) -> Message:
    """That a size is entered as the family names it."""
    return Message("spec-enter-size", sizing=str(wanted), key="dash" if wanted is Sizing.DASH else "size")


def _forms_of(family: Connection) -> tuple[Message, ...]:
    """The names of the forms that a family has."""
    return tuple(Message(f"words-form-{form}") for form in _forms_for(family))


_FORMS = {
    Joint.FLANGE: (Form.FLANGE_HEAD,),
    Joint.LATCH: (Form.COUPLER_MALE, Form.COUPLER_FEMALE, Form.STAPLE_MALE, Form.STAPLE_FEMALE),
}


@cache
def _forms_for(family: Connection) -> tuple[Form, ...]:
    """The forms that a family's joint allows; which of them it has, the tables say."""
    others = {form for forms in _FORMS.values() for form in forms}
    return _FORMS.get(family.joint, tuple(form for form in Form if form not in others))
