"""What a builder measured, read from what people type."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

from tagger.errors import Problem, SpecError, UnitError
from tagger.messages import Message
from tagger.spec import Form
from tagger.units import read_length_mm

SEATS = ("24", "30", "37", "45", "60", "face", "boss", "flat", "taper")
CONES = ("outside", "inside")
DOES_NOT_KNOW = {"", "?", "unknown", "don't know", "dont know", "not known"}


@dataclass(frozen=True)
class Measurements:
    """What is known; None where nothing is. Lengths in mm, pitch as threads per inch.

    ``form`` may be left out; ``thread_od_mm`` means a male and ``thread_id_mm`` a female.
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
    ) -> Measurements:
        """From what people type: "1 1/16 in", "26.9", "12", "don't know".

        Raises SpecError naming every field that cannot be read.
        """
        problems: list[Problem] = []

        def length(field: str, value: object) -> float | None:
            return _read_length(field, value, problems)

        found = cls(
            form=_read_form(form, problems),
            thread_od_mm=length("thread_od", thread_od),
            thread_id_mm=length("thread_id", thread_id),
            tpi=_read_pitch(tpi, pitch, problems),
            seat=_read_word("seat", seat, SEATS, problems),
            cone=_read_word("cone", cone, CONES, problems),
            hex_mm=length("hex", hex),
            tube_od_mm=length("tube_od", tube_od),
            flange_od_mm=length("flange_od", flange_od),
            bolt_spacing_mm=length("bolt_spacing", bolt_spacing),
        )
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
        if all(value is None for value in vars(self).values()):
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
        """The readings by feature; a seat and a cone as their place in SEATS and CONES."""
        thread = self.thread_od_mm if self.thread_od_mm is not None else self.thread_id_mm
        found = {
            "thread": thread,
            "tpi": self.tpi,
            "hex": self.hex_mm,
            "tube_od": self.tube_od_mm,
            "flange_od": self.flange_od_mm,
            "bolt_spacing": self.bolt_spacing_mm,
            "seat": None if self.seat is None else float(SEATS.index(self.seat)),
            "cone": None if self.cone is None else float(CONES.index(self.cone)),
        }
        return {name: value for name, value in found.items() if value is not None}


def _unknown(value: object) -> bool:
    return value is None or (isinstance(value, str) and value.strip().casefold() in DOES_NOT_KNOW)


def _read_length(field: str, value: object, problems: list[Problem]) -> float | None:
    if _unknown(value):
        return None
    try:
        found = read_length_mm(value)
    except UnitError as error:
        problems += [Problem(field, p.value, p.message) for p in error.problems]
        return None
    if not 0 < found < 1000:
        problems.append(Problem(field, value, Message("identify-not-a-fitting-size", value=str(value))))
    return found


def _read_pitch(tpi: object, pitch: object, problems: list[Problem]) -> float | None:
    if not _unknown(tpi) and not _unknown(pitch):
        problems.append(Problem("pitch", pitch, Message("identify-two-pitches")))
        return None
    if not _unknown(pitch):
        mm = _read_length("pitch", pitch, problems)
        if mm is not None and not 0.3 <= mm <= 6:
            problems.append(Problem("pitch", pitch, Message("identify-not-a-pitch", value=str(pitch))))
            return None
        return None if mm is None else 25.4 / mm
    if _unknown(tpi):
        return None
    try:
        found = read_length_mm(tpi if isinstance(tpi, int | float) else f"{tpi} mm")
    except UnitError:
        found = 0.0
    if not 4 <= found <= 80:
        problems.append(Problem("tpi", tpi, Message("identify-not-tpi", value=str(tpi))))
        return None
    return found


def _read_form(value: object, problems: list[Problem]) -> Form | None:
    if _unknown(value):
        return None
    try:
        return Form(str(value).strip().lower())
    except ValueError:
        forms = tuple(str(form) for form in Form)
        problems.append(Problem("form", value, Message("identify-not-a-form", value=str(value), known=forms)))
        return None


def _read_word(
    field: Literal["seat", "cone"], value: object, known: tuple[str, ...], problems: list[Problem]
) -> str | None:
    if _unknown(value):
        return None
    text = str(value).strip().lower().removesuffix("°").removesuffix("deg").strip()
    if text not in known:
        problems.append(
            Problem(field, value, Message(f"identify-not-a-{field}", value=str(value), known=known))
        )
        return None
    return text
