"""The rows of the data files: one frozen dataclass a file, one line a row.

A dataclass names its columns; the type of a field says how its cell is read (``row_reading``).
"""

from __future__ import annotations

from dataclasses import dataclass, field
from typing import Literal

from tagger.spec import Connection

CONFIDENCE = ("published", "practice", "memory", "judgement", "shop")
UNVERIFIED = ("memory", "judgement")
"""What no published source rates: remembered, or taken over from a part that is like it."""


@dataclass(frozen=True, slots=True)
class Family:
    """A connection family: its forms, and what is turned to tighten it.

    ``tighten_by``: nut, stud, screws or the bolt of a banjo; both nut and stud where an end without a
    swivel is made either way; empty for a taper thread, which is turned itself (``Connection.is_taper``),
    and where nothing is tightened (``Connection.is_latched``).
    ``method``: how its joints are tightened; where both flats and torque are known, the first or only one.
    ``tube_od``: what a size says of the tube's outside diameter: ``mm``, or ``dash`` for
    sixteenths of an inch; empty where it says nothing.
    ``series``: where one thread is made for two duties, which ones (spec.Series).
    ``swivel_family``: the family of the swivel female that takes this family's male, where
    this family has no swivel of its own.
    ``same_thread``: a family that no gauge tells from this one.
    """

    family: Connection
    forms: tuple[str, ...]
    tighten_by: tuple[Literal["nut", "stud", "screws", "bolt"], ...]
    tube_od: Literal["mm", "dash"] | None
    swivel_family: Connection | None
    source: str
    confidence: str
    method: Literal["flats", "torque", "turns"] = field(default="torque", kw_only=True)
    series: tuple[str, ...] = field(default=(), kw_only=True)
    same_thread: Connection | None = field(default=None, kw_only=True)


@dataclass(frozen=True, slots=True)
class ThreadRow:
    """A size of a threaded family. Diameters are nominal (basic), in mm."""

    family: Connection
    size: str
    hose_dashes: tuple[int, ...]
    thread: str
    thread_form: str
    thread_od_mm: float
    tpi: float | None
    pitch_mm: float
    female_minor_mm: float
    source: str
    confidence: str
    note: str


@dataclass(frozen=True, slots=True)
class PlainEnd:
    """What a caliper reads on an end that has no thread of its own, in mm: its least and greatest sound figure.

    ``what``: the nose of a coupler's male half (``probe_nose``, ``flat_nose``), a staple's ``spigot``, a plain
    ``tube``, or the ``ring_hole`` of a banjo eye. ``hose_dashes`` are empty where connections.csv has them.
    """

    family: Connection
    size: str
    series: str
    what: Literal["probe_nose", "flat_nose", "spigot", "tube", "ring_hole"]
    hose_dashes: tuple[int, ...]
    diameter_min_mm: float | None
    diameter_max_mm: float | None
    source: str
    confidence: str
    note: str


@dataclass(frozen=True, slots=True)
class SeatRow:
    """What a seat gauge or the eye says of a form, and how often."""

    family: Connection
    form: str
    seat: str
    share: float
    source: str
    confidence: str


@dataclass(frozen=True, slots=True)
class ConeRow:
    """Whether a form's cone stands out like a nose or lies inside like a funnel."""

    family: Connection
    form: str
    cone: Literal["outside", "inside"]
    source: str
    confidence: str


@dataclass(frozen=True, slots=True)
class OriginRow:
    """A family that is usual on machines of an origin.

    ``behind``: the family that it is taken for, and stands behind where the origin is not known.
    """

    origin: str
    family: Connection
    behind: Connection | None
    source: str
    confidence: str


@dataclass(frozen=True, slots=True)
class LayLineSize:
    """A bore as lay lines print it, in mm, with the dash and the nominal bore that it stands for."""

    printed: str
    dash: int
    nominal_mm: float
    source: str
    confidence: str


@dataclass(frozen=True, slots=True)
class OtherHose:
    """A hose that is no hydraulic one, by a mark of its name or lay line (without case, spaces and punctuation).

    ``carries`` is the id of what it is for; ``fluids`` those that it may carry, empty where none is known here.
    """

    mark: str
    names: str
    carries: str
    fluids: tuple[str, ...]
    source: str
    confidence: str


@dataclass(frozen=True, slots=True)
class MotionRow:
    """What turns while an end is screwed in: the whole hose (``turns_hose``), or its own nut (``swivel``).

    ``mating``: the nut is the mating part's, and without one the whole hose turns. ``flange``: nothing
    turns, and the head or the eye can be set at any angle until its screws or bolt are tight. ``free``: nothing
    turns and nothing is tightened.
    """

    family: Connection
    form: str
    motion: Literal["turns_hose", "mating", "flange", "swivel", "free"]
    source: str
    confidence: str


@dataclass(frozen=True, slots=True)
class LookAlike:
    """Two families that are taken for each other; ``message`` is the id of how they differ."""

    family: Connection
    other: Connection
    message: str
    source: str
    confidence: str


@dataclass(frozen=True, slots=True)
class HexRow:
    """Width across flats of the nut (or of the body, where there is no nut), in mm."""

    family: Connection
    size: str
    hex_mm: float
    source: str
    confidence: str
    note: str


@dataclass(frozen=True, slots=True)
class FlangeRow:
    """One figure of a flange: ``head_mm``, ``bolt_long_mm``, ``bolt_short_mm``, or a screw."""

    family: Connection
    size: str
    what: str
    value: str
    source: str
    confidence: str
    note: str


@dataclass(frozen=True, slots=True)
class PressureRow:
    """A working pressure of an end, in bar; ``printed`` is the source's own figure.

    ``use``: ``rating`` may rate a hose end; ``ceiling`` bounds the family, not a size;
    ``other`` belongs to another part; ``note`` is said beside the figure and decides nothing.
    ``max_temperature_c``: the source's figure holds up to there only; empty where it states no limit.
    ``series`` is empty where the figure holds for any, and so is ``fluid``.
    """

    family: Connection
    size: str
    forms: tuple[str, ...]
    shapes: tuple[str, ...]
    material: str
    max_working_bar: float
    printed: str
    max_temperature_c: float | None
    use: Literal["rating", "ceiling", "other", "note"]
    applies_to: str
    source: str
    confidence: str
    note: str
    series: str = field(default="", kw_only=True)
    fluid: str = field(default="", kw_only=True)


@dataclass(frozen=True, slots=True)
class HoseStandard:
    """A hose standard under its one name here, with the other spellings of it.

    ``duty``: whether its hose is made to be sucked at, or for pressure only.
    """

    standard: str
    aliases: tuple[str, ...]
    construction: str
    duty: Literal["pressure", "suction"]
    bands: Literal["sae", "din"]
    min_temperature_c: float
    max_temperature_c: float
    source: str
    confidence: str
    note: str


@dataclass(frozen=True, slots=True)
class HoseEdition:
    """An edition as printed on the hose, and the edition of hose_pressure.csv it is rated by.

    ``from_year`` is empty where no source dates it.
    """

    standard: str
    edition: str
    figures: str
    from_year: int | None
    meaning: str
    source: str
    confidence: str


@dataclass(frozen=True, slots=True)
class HosePressureRow:
    """A working pressure of a hose, in bar; ``dash`` is ``all`` where one figure serves all.

    ``in_standard`` is ``no`` for a size that a maker sells and the standard does not have.
    ``fluid`` and ``max_temperature_c``: what the figure holds for alone; empty where the source names
    neither. A figure that names both holds beyond the limits of the standard. ``part``: the manufacturer's
    part number of the one hose it holds for; empty for any of the standard.
    """

    standard: str
    edition: str
    dash: str
    max_working_bar: float
    printed: str
    in_standard: Literal["yes", "no"]
    source: str
    confidence: str
    note: str
    fluid: str = field(default="", kw_only=True)
    max_temperature_c: float | None = field(default=None, kw_only=True)
    part: str = field(default="", kw_only=True)


@dataclass(frozen=True, slots=True)
class HoseBendRow:
    """A minimum bend radius in mm, to the inside of the bend (EN 853:2015).

    ``part``: the manufacturer's part number of the one hose it holds for; empty for any of the standard.
    """

    standard: str
    dash: str
    bend_radius_mm: float
    printed: str
    source: str
    confidence: str
    note: str
    part: str = field(default="", kw_only=True)


@dataclass(frozen=True, slots=True)
class HoseSizeRow:
    """Bore and outside diameter in mm, mass in kg/m, as one maker or supplier prints them.

    ``part``: the manufacturer's part number of the one hose it holds for; empty for any of the standard.
    """

    standard: str
    dash: str
    bore_mm: float | None
    outside_diameter_mm: float
    mass_kg_m: float | None
    source: str
    confidence: str
    note: str
    part: str = field(default="", kw_only=True)


@dataclass(frozen=True, slots=True)
class HoseFluidRow:
    """A fluid and the temperatures a source allows it at; no temperatures: not to be used.

    ``part``: the manufacturer's part number of the one hose it holds for; empty for any of the standard.
    """

    standard: str
    fluid: str
    min_temperature_c: float | None
    max_temperature_c: float | None
    source: str
    confidence: str
    note: str
    part: str = field(default="", kw_only=True)


@dataclass(frozen=True, slots=True)
class FluidRow:
    """A fluid by its kind. Only ``oil`` may flow where no source names it for the hose's standard.

    ``other_oil`` is treated as a petroleum-based oil, and said so; every other kind has no rating
    without a row of hose_fluids.csv that allows it.
    """

    fluid: str
    kind: Literal[
        "oil",
        "other_oil",
        "water_based",
        "water",
        "ester",
        "polyglycol",
        "fuel",
        "gas",
        "steam",
        "glycol_ether",
    ]
    symbol: str
    source: str
    confidence: str
    note: str


GRADES = ("standard", "document", "secondary", "practice", "memory", "judgement")
"""How good a source is, the best first."""


@dataclass(frozen=True, slots=True)
class Source:
    """Where figures come from: what the tables call it, how good it is, and what people read.

    ``short`` has at most 40 characters, for tags and lists, and is no other source's; ``full`` says
    what was seen of it and what was not.
    """

    source: str
    grade: Literal["standard", "document", "secondary", "memory", "judgement", "practice"]
    short: str
    full: str


@dataclass(frozen=True, slots=True)
class HoseVacuumRow:
    """How far below the atmosphere, in bar, the inside of a hose may go without it collapsing."""

    standard: str
    dash: str
    vacuum_bar: float
    source: str
    confidence: str
    note: str


LAYERS = ("wire_braid", "wire_spiral", "wire_helix", "fibre")
"""Kinds of a hose's layers; a helix is the one coil of a suction hose."""


@dataclass(frozen=True, slots=True)
class HoseLayersRow:
    """A kind of layer that a hose of the standard has, and how many of them at least and at most."""

    standard: str
    kind: Literal["wire_braid", "wire_spiral", "wire_helix", "fibre"]
    layers_min: int
    layers_max: int
    source: str
    confidence: str
    note: str


@dataclass(frozen=True, slots=True)
class SameHose:
    """Two standards that are printed on one hose, so that either names it; ``note`` as it was printed."""

    standard: str
    other: str
    source: str
    confidence: str
    note: str


@dataclass(frozen=True, slots=True)
class Bore:
    """The nominal bore by dash size, where none is printed for the hose's standard.

    ``names``: what the dash names, ``bore`` or, as in SAE 100R5 and 100R14, the ``tube``.
    """

    dash: int
    bore_mm: float
    source: str
    confidence: str
    names: Literal["bore", "tube"] = field(default="bore", kw_only=True)


@dataclass(frozen=True, slots=True)
class TighteningRow:
    """How one source tightens a size: N·m, flats (sixths of a turn) or whole turns.

    ``use``: ``hose`` may be shown for a hose end; ``ring`` depends on a sealing ring or bolt that the end
    does not tell, so all are named and none is shown; the others stand beside it and are never
    shown first (``tube``, ``aviation``, ``plug``, ``other``, ``doubtful``). ``scope``: whether
    the source speaks of the family or of one machine. ``series``: the one the source names.
    ``screw_class``: the property class of a flange's screws, as far as the source names it.
    """

    family: Connection
    size: str
    part: tuple[str, ...]
    end_type: str
    material: str
    screw: str
    torque_min_nm: float | None
    torque_max_nm: float | None
    flats_min: float | None
    flats_max: float | None
    turns_min: float | None
    turns_max: float | None
    basis: str
    lubrication: str
    use: str
    scope: Literal["family", "machine"]
    source: str
    confidence: str
    note: str
    series: str = field(default="", kw_only=True)
    screw_class: str = field(default="", kw_only=True)


@dataclass(frozen=True, slots=True)
class ScrewClass:
    """A property class that a flange asks of its screws: "10.9" of metric ones, "Gr. 8" of inch ones."""

    family: Connection
    screw_class: str
    source: str
    confidence: str


@dataclass(frozen=True, slots=True)
class ScrewTorque:
    """What a general bolt table gives a screw of one class, in N·m: never the torque of a flange.

    ``condition``: plating and oil in the source's words, empty where it says nothing.
    """

    screw: str
    screw_class: str
    torque_min_nm: float
    torque_max_nm: float
    condition: str
    source: str
    confidence: str
    note: str


@dataclass(frozen=True, slots=True)
class LengthBand:
    """A length tolerance: over ``over_mm`` up to ``to_mm``, bores ``from_bore_mm`` to ``to_bore_mm``."""

    bands: Literal["sae", "din"]
    over_mm: float
    to_mm: float | None
    from_bore_mm: float
    to_bore_mm: float
    minus: float
    plus: float
    unit: Literal["mm", "in", "percent"]
    source: str
    confidence: str
    note: str


@dataclass(frozen=True, slots=True)
class Rule:
    """A single figure of the trade by its key."""

    key: str
    value: float
    unit: str
    text: str
    source: str
    confidence: str


@dataclass(frozen=True, slots=True)
class FitStep:
    """A step of the fit guide; see README.md for the words of each column."""

    step_id: str
    phase: str
    order: int
    families: tuple[str, ...]
    forms: tuple[str, ...]
    condition: str
    message: str
    figures: tuple[str, ...]
    picture: str
    caution: str
    source: str
    screen: str = ""
    sizes: tuple[str, ...] = ("all",)
