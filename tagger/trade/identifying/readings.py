"""What a builder measured, read from what people type."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, replace
from typing import Literal

from tagger.errors import Problem, SpecError, UnitError
from tagger.messages import Message
from tagger.spec import Form, Series
from tagger.units import MM_PER_INCH, banded, read_length_mm

SEATS = ("24", "30", "37", "45", "60", "face", "boss", "flat", "taper")
CONES = ("outside", "inside")
FLANKS = ("60", "55")
SIDES = ("male", "female", "none")
SWIVELS = ("yes", "no")
SHAPES = ("parallel", "taper")
SEALS = ("cone", "face", "boss", "flat", "thread")
SAID = {"side": SIDES, "swivels": SWIVELS, "shape": SHAPES, "seals": SEALS}
"""What the eye says of an end before anything is measured: where its thread is, whether that turns on the hose,
whether it tapers, and what seals."""
ORIGINS = ("europe", "north_america", "asia")
ASKED = ("seat", "cone", "flank", "thread", "tpi", "hex", "nose", "flange_od", "bolt_spacing", "series")
"""What may be asked for; ``cannot`` names what of it nobody can measure. A hose end has no tube to ask for."""
_SAME_QUESTION = {"thread_od": "thread", "thread_id": "thread", "pitch": "tpi"}
DOES_NOT_KNOW = {"", "?", "unknown", "don't know", "dont know", "not known"}


@dataclass(frozen=True)
class Measurements:
    """What is known; None where nothing is. Lengths in mm, pitch as threads per inch.

    ``form`` may be left out; ``thread_od_mm`` means a male and ``thread_id_mm`` a female.
    ``pitch_mm`` or ``tpi``: whichever was read, so that it is answered in its own unit.
    ``nose_mm``: across the nose that goes into the mating part, or across the socket that takes it.
    ``flank``: the angle of the thread's flanks, 55 or 60 degrees. ``series`` is told, not measured.
    ``cannot``: what nobody can measure here, of ASKED. ``origin``: where the machine was made, of ORIGINS;
    it breaks ties and nothing else. ``side``, ``swivels``, ``shape``, ``seals``: what the eye says, of SAID;
    a ``form`` says more than the first two, a ``seat`` more than the last.
    ``slips``: by feature, the standard deviation of a reading whose band was said, in mm or threads per inch.
    """

    form: Form | None = None
    thread_od_mm: float | None = None
    thread_id_mm: float | None = None
    tpi: float | None = None
    seat: str | None = None
    cone: str | None = None
    hex_mm: float | None = None
    tube_od_mm: float | None = None
    flange_od_mm: float | None = None
    bolt_spacing_mm: float | None = None
    pitch_mm: float | None = None
    flank: str | None = None
    nose_mm: float | None = None
    series: Series | None = None
    origin: str | None = None
    cannot: frozenset[str] = frozenset()
    side: str | None = None
    swivels: str | None = None
    shape: str | None = None
    seals: str | None = None
    slips: tuple[tuple[str, float], ...] = ()

    @classmethod
    def read(
        cls,
        *,
        form: object = None,
        thread_od: object = None,
        thread_id: object = None,
        tpi: object = None,
        pitch: object = None,
        seat: object = None,
        cone: object = None,
        hex: object = None,
        tube_od: object = None,
        flange_od: object = None,
        bolt_spacing: object = None,
        flank: object = None,
        nose: object = None,
        series: object = None,
        origin: object = None,
        cannot: str | Iterable[str] | None = None,
        side: object = None,
        swivels: object = None,
        shape: object = None,
        seals: object = None,
    ) -> Measurements:
        """From what people type: "1 1/16 in", "26.9", "12", "don't know"; "26.9 \u00b1 0.4 mm" of a reading that
        19 times of 20 is off by no more.

        Raises SpecError naming every field that cannot be read.
        """
        problems: list[Problem] = []
        slips: dict[str, float] = {}

        def length(field: str, value: object) -> float | None:
            read, slip = _apart(field, value, problems)
            if slip:
                slips["thread" if field.startswith("thread_") else field] = slip
            return _read_length(field, read, problems)

        mm, pitch_slip = _apart("pitch", pitch, problems)
        turns, tpi_slip = _apart("tpi", tpi, problems)
        read_pitch = _read_pitch(mm, problems)
        if pitch_slip and read_pitch:
            tpi_slip = MM_PER_INCH / read_pitch**2 * pitch_slip
        if tpi_slip:
            slips["tpi"] = tpi_slip

        found = cls(
            form=_read_form(form, problems),
            thread_od_mm=length("thread_od", thread_od),
            thread_id_mm=length("thread_id", thread_id),
            tpi=_read_tpi(turns, mm, problems),
            pitch_mm=read_pitch,
            seat=_read_word("seat", seat, SEATS, problems),
            cone=_read_word("cone", cone, CONES, problems),
            flank=_read_word("flank", flank, FLANKS, problems),
            nose_mm=length("nose", nose),
            series=_read_series(series, problems),
            origin=_read_word("origin", origin, ORIGINS, problems),
            cannot=_read_cannot(cannot, problems),
            side=_read_word("side", side, SIDES, problems),
            swivels=_read_word("swivels", swivels, SWIVELS, problems),
            shape=_read_word("shape", shape, SHAPES, problems),
            seals=_read_word("seals", seals, SEALS, problems),
            hex_mm=length("hex", hex),
            tube_od_mm=length("tube_od", tube_od),
            flange_od_mm=length("flange_od", flange_od),
            bolt_spacing_mm=length("bolt_spacing", bolt_spacing),
        )
        found = replace(found, slips=tuple(sorted(slips.items())))
        if not problems:
            problems = found._contradictions()
        if problems:
            raise SpecError(problems)
        return found

    def _contradictions(self) -> list[Problem]:
        if self.thread_od_mm is not None and self.thread_id_mm is not None:
            return [Problem("thread_id", self.thread_id_mm, Message("identify-two-diameters"))]
        if self.form is not None and self.form.is_male_thread and self.thread_id_mm is not None:
            return [Problem("thread_id", self.thread_id_mm, Message("identify-male-inside"))]
        if self.form is not None and self.form.is_female_thread and self.thread_od_mm is not None:
            return [Problem("thread_od", self.thread_od_mm, Message("identify-female-outside"))]
        if self.form is None and not self.readings():
            return [Problem("measurements", None, Message("identify-none-entered"))]
        return []

    def forms(self) -> set[Form]:
        """The forms it can have."""
        if self.form is not None:
            return {self.form}
        if self.thread_od_mm is not None:
            return {form for form in Form if form.is_male_thread}
        if self.thread_id_mm is not None:
            return {form for form in Form if form.is_female_thread}
        return set(Form)

    def readings(self) -> dict[str, float]:
        """The readings by feature; a seat, a cone and a flank as their place in SEATS, CONES and FLANKS."""
        thread = self.thread_od_mm if self.thread_od_mm is not None else self.thread_id_mm
        found = {
            "thread": thread,
            "tpi": self.tpi if self.pitch_mm is None else MM_PER_INCH / self.pitch_mm,
            "hex": self.hex_mm,
            "nose": self.nose_mm,
            "tube_od": self.tube_od_mm,
            "flange_od": self.flange_od_mm,
            "bolt_spacing": self.bolt_spacing_mm,
            "seat": None if self.seat is None else float(SEATS.index(self.seat)),
            "cone": None if self.cone is None else float(CONES.index(self.cone)),
            "flank": None if self.flank is None else float(FLANKS.index(self.flank)),
            **self._said(),
        }
        return {name: value for name, value in found.items() if value is not None}

    def _said(self) -> dict[str, float | None]:
        """What the eye said, as its place in SAID, of what nothing else says better."""
        better = {"side": self.form, "swivels": self.form, "seals": self.seat}
        given = {"side": self.side, "swivels": self.swivels, "shape": self.shape, "seals": self.seals}
        return {
            name: None if word is None or better.get(name) is not None else float(SAID[name].index(word))
            for name, word in given.items()
        }


def unknown(value: object) -> bool:
    """Whether what was typed says nothing: empty, "unknown", "don't know".

    >>> unknown("Unknown "), unknown("37")
    (True, False)
    """
    return value is None or (isinstance(value, str) and value.strip().casefold() in DOES_NOT_KNOW)


def _apart(field: str, value: object, problems: list[Problem]) -> tuple[object, float]:
    """A reading without what it may be off by, and half of that: the standard deviation; 0 where it is not said."""
    read, band = banded(value) if isinstance(value, str) else ("", "")
    if not band:
        return value, 0.0
    try:
        widest, off = read_length_mm(read) / 2, read_length_mm(band)
    except UnitError:
        widest = off = 0.0
    if not 0 < off < widest:
        problems.append(Problem(field, value, Message("identify-not-a-band", value=str(value))))
        return None, 0.0
    return read, off / 2


def _read_length(field: str, value: object, problems: list[Problem]) -> float | None:
    if unknown(value):
        return None
    try:
        found = read_length_mm(value)
    except UnitError as error:
        problems += [Problem(field, p.value, p.message) for p in error.problems]
        return None
    if not 0 < found < 1000:
        problems.append(Problem(field, value, Message("identify-not-a-fitting-size", value=str(value))))
    return found


def _read_pitch(pitch: object, problems: list[Problem]) -> float | None:
    mm = None if unknown(pitch) else _read_length("pitch", pitch, problems)
    if mm is not None and not 0.3 <= mm <= 6:
        problems.append(Problem("pitch", pitch, Message("identify-not-a-pitch", value=str(pitch))))
    return mm


def _read_tpi(tpi: object, pitch: object, problems: list[Problem]) -> float | None:
    if unknown(tpi):
        return None
    if not unknown(pitch):
        problems.append(Problem("pitch", pitch, Message("identify-two-pitches")))
        return None
    try:
        found = read_length_mm(tpi if isinstance(tpi, int | float) else f"{tpi} mm")
    except UnitError:
        found = 0.0
    if not 4 <= found <= 80:
        problems.append(Problem("tpi", tpi, Message("identify-not-tpi", value=str(tpi))))
        return None
    return found


def _read_series(value: object, problems: list[Problem]) -> Series | None:
    if unknown(value):
        return None
    text = str(value).strip().upper()
    if text not in set(Series):
        known = tuple(map(str, Series))
        problems.append(
            Problem("series", value, Message("identify-not-a-series", value=str(value), known=known))
        )
        return None
    return Series(text)


def _read_cannot(value: str | Iterable[str] | None, problems: list[Problem]) -> frozenset[str]:
    """From "seat, cone" or the words themselves."""
    words = (value or "").split(",") if value is None or isinstance(value, str) else value
    given = [word.strip().lower().replace("-", "_") for word in words if word.strip()]
    found = [_SAME_QUESTION.get(word, word) for word in given]
    for word in found:
        if word not in ASKED:
            problems.append(Problem("cannot", word, Message("identify-not-asked", value=word, known=ASKED)))
    return frozenset(found)


def _read_form(value: object, problems: list[Problem]) -> Form | None:
    if unknown(value):
        return None
    try:
        return Form(str(value).strip().lower())
    except ValueError:
        forms = tuple(str(form) for form in Form)
        problems.append(Problem("form", value, Message("identify-not-a-form", value=str(value), known=forms)))
        return None


def _read_word(
    field: Literal["seat", "cone", "flank", "origin", "side", "swivels", "shape", "seals"],
    value: object,
    known: tuple[str, ...],
    problems: list[Problem],
) -> str | None:
    if unknown(value):
        return None
    text = str(value).strip().lower().removesuffix("°").removesuffix("deg").strip()
    if field == "origin":
        text = text.replace(" ", "_").replace("-", "_")
    if text not in known:
        problems.append(
            Problem(
                field,
                value,
                Message("identify-not-an-answer", value=str(value), known=known)
                if field in SAID
                else Message(f"identify-not-a-{field}", value=str(value), known=known),
            )
        )
        return None
    return text
