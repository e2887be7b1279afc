"""Reading figures with units ("1 1/16 in", "3000 psi", "1.25 m"), and showing both systems.

Everything inside is SI: mm, bar, N·m, °C. Conversion factors are the exact definitions
of the inch (25.4 mm) and the pound-force (4.4482216152605 N): NIST SP 811, appendix B.
"""

from __future__ import annotations

import math
import re
from fractions import Fraction
from functools import lru_cache

from tagger.errors import Problem, UnitError
from tagger.messages import Message

MM_PER_INCH = 25.4
BAR_PER_PSI = 0.0689475729
NM_PER_LBF_FT = 1.3558179483
NM_PER_LBF_IN = NM_PER_LBF_FT / 12

_LENGTH = {
    "mm": 1.0, "cm": 10.0, "m": 1000.0,
    "in": MM_PER_INCH, "inch": MM_PER_INCH, "inches": MM_PER_INCH, '"': MM_PER_INCH,
    "″": MM_PER_INCH, "ft": 12 * MM_PER_INCH, "'": 12 * MM_PER_INCH,
}  # fmt: skip
_PRESSURE = {"bar": 1.0, "mpa": 10.0, "kpa": 0.01, "psi": BAR_PER_PSI, "kgf/cm2": 0.980665}
_TORQUE = {
    "nm": 1.0, "n·m": 1.0, "n.m": 1.0, "lbf·ft": NM_PER_LBF_FT, "lbf.ft": NM_PER_LBF_FT,
    "lbfft": NM_PER_LBF_FT, "lbft": NM_PER_LBF_FT, "ft-lb": NM_PER_LBF_FT, "ftlb": NM_PER_LBF_FT,
    "lbf·in": NM_PER_LBF_IN, "lbf.in": NM_PER_LBF_IN, "lbfin": NM_PER_LBF_IN,
    "lbin": NM_PER_LBF_IN, "in-lb": NM_PER_LBF_IN,
}  # fmt: skip

_FIGURE = re.compile(
    r"^\s*(?P<sign>[-+])?\s*"
    r"(?:(?P<whole>\d+)(?:\s+|-))?(?P<top>\d+)\s*/\s*(?P<bottom>\d+)\s*(?P<unit>[^\d\s].*)?$"
    r"|^\s*(?P<decimal>[-+]?(?:\d+(?:[.,]\d*)?|[.,]\d+))\s*(?P<unit2>[^\d\s].*)?$"
)

_BAND = re.compile(r"\u00b1|\+\s*/\s*[-\u2212]|\+[-\u2212]")


_SCALES = {"c": 1.0, "°c": 1.0, "f": 1.0, "°f": 1.0}
_ENTER_LENGTH, _ENTER_PRESSURE = Message("spec-enter-length"), Message("spec-enter-pressure")
_ENTER_TORQUE, _ENTER_TEMPERATURE = Message("spec-enter-torque"), Message("spec-enter-temperature")
_LONGEST = 60  # characters of a value with its unit; more digits than Python counts with are no value


def read_length_mm(value: object) -> float:
    """A length in mm; a bare number is mm, and a bare fraction is refused: nobody writes 49 1/4 mm.

    >>> read_length_mm("1 1/16 in")
    26.9875
    >>> read_length_mm("1.25 m"), read_length_mm(12)
    (1250.0, 12.0)
    """
    return _read(value, _LENGTH, "mm", _ENTER_LENGTH, bare_fractions=False)


def with_unit(text: str, unit: str) -> str:
    """A typed length with the unit that it stands in where none is typed; any other text as it is.

    A fraction never stands in mm. What a reading may be off by (``banded``) stays beside it.

    >>> with_unit("49 1/4", "in"), with_unit("1250 mm", "in"), with_unit("49 1/4", "mm"), with_unit("40", "mm")
    ('49 1/4 in', '1250 mm', '49 1/4', '40 mm')
    >>> with_unit("1.06 \u00b1 0.02", "in"), with_unit("26.9 \u00b1 0.4 mm", "in")
    ('1.06 in \u00b1 0.02 in', '26.9 mm \u00b1 0.4 mm')
    """
    read, band = banded(text)
    if band:
        return f"{with_unit(read, unit)} \N{PLUS-MINUS SIGN} {with_unit(band, unit)}"
    if unit == "mm" and "/" in text:
        return text
    match = _FIGURE.match(text.replace("\u00a0", " "))
    return f"{text} {unit}" if match and not (match["unit"] or match["unit2"]) else text


def banded(text: str) -> tuple[str, str]:
    """A reading and what it may be off by to either side, from "26.9 mm \u00b1 0.4 mm" or "26.9 +/- 0.4"; "" where
    that is not said. A unit that only one of them has is that of both.

    >>> banded("26.9 \u00b1 0.4 mm"), banded("1.06 in +/- 0.02"), banded("26.9 mm")
    (('26.9 mm', '0.4 mm'), ('1.06 in', '0.02 in'), ('26.9 mm', ''))
    """
    parts = [part.strip() for part in _BAND.split(text.strip(), maxsplit=1)]
    if len(parts) == 1:
        return text, ""
    own = [_unit(part) for part in parts]
    read, band = (
        part if mine else f"{part} {other}".strip()
        for part, mine, other in zip(parts, own, own[::-1], strict=True)
    )
    return read, band or "?"


def _unit(text: str) -> str:
    match = _FIGURE.match(text.replace("\u00a0", " "))
    return (match["unit"] or match["unit2"] or "") if match else ""


def read_pressure_bar(value: object) -> float:
    """A pressure in bar; a bare number is bar.

    >>> round(read_pressure_bar("3000 psi"), 1)
    206.8
    """
    return _read(value, _PRESSURE, "bar", _ENTER_PRESSURE)


def read_torque_nm(value: object) -> float:
    """A torque in N·m; a bare number is N·m.

    >>> round(read_torque_nm("75 lbf·ft"), 1)
    101.7
    """
    return _read(value, _TORQUE, "nm", _ENTER_TORQUE)


def read_temperature_c(value: object) -> float:
    """A temperature in °C; a bare number is °C.

    >>> read_temperature_c("212 F"), read_temperature_c("100 °C")
    (100.0, 100.0)
    """
    figure = _read(value, _SCALES, "c", _ENTER_TEMPERATURE)
    if isinstance(value, str) and value.strip().lower().endswith("f"):
        figure = (figure - 32) / 1.8
    return figure


def _read(
    value: object, factors: dict[str, float], bare: str, enter: Message, *, bare_fractions: bool = True
) -> float:
    if type(value) is float and math.isfinite(value):  # as most come: read before
        return value

    def refuse(wrong: Message) -> UnitError:
        return UnitError(Problem("", value, wrong))

    if isinstance(value, bool) or not isinstance(value, int | float | str):
        raise refuse(Message("spec-unit-no-number", enter=enter))
    if isinstance(value, int | float):
        try:
            figure = float(value)
        except OverflowError:  # a whole number of more than 308 digits
            figure = math.inf
        if not math.isfinite(figure):
            raise refuse(Message("spec-unit-not-finite", enter=enter))
        return figure
    match = _FIGURE.match(value.replace("\u00a0", " ")) if len(value) <= _LONGEST else None
    if match is None:
        raise refuse(Message("spec-unit-unreadable", enter=enter))
    if match["top"]:
        if int(match["bottom"]) == 0:
            raise refuse(Message("spec-unit-over-zero", enter=enter))
        if not match["unit"] and not bare_fractions:
            raise refuse(Message("spec-unit-bare-fraction", fraction=value.strip()[:40]))
        figure = float(int(match["whole"] or 0) + Fraction(int(match["top"]), int(match["bottom"])))
        figure = -figure if match["sign"] == "-" else figure
    else:
        text = match["decimal"]
        if re.search(r"\d,\d{3}$", text):
            raise refuse(Message("spec-unit-comma"))
        figure = float(text.replace(",", "."))
    unit = (match["unit"] or match["unit2"] or bare).strip().lower().rstrip(".")
    unit = unit.replace(" ", "") if unit not in factors else unit
    if unit not in factors:
        raise refuse(Message("spec-unit-unknown", unit=unit[:40], enter=enter))
    return round(figure * factors[unit], 9)


def whole_number(text: str) -> int | None:
    """A whole number of at most nine ordinary digits; None for anything else.

    >>> whole_number("12"), whole_number("²"), whole_number("-1"), whole_number("")
    (12, None, None, None)
    """
    return int(text) if re.fullmatch(r"[0-9]{1,9}", text) else None


@lru_cache(maxsize=2048)  # hoses and fittings have few sizes
def inch_text(mm: float, *, denominator: int = 16) -> str:
    """Inches as the trade writes them: a fraction where the figure is one, else two decimals.

    >>> inch_text(26.9875), inch_text(1250.95), inch_text(1250)
    ('1 1/16 in', '49 1/4 in', '49.21 in')
    """
    inches = mm / MM_PER_INCH
    nearest = Fraction(round(inches * denominator), denominator)
    if abs(float(nearest) * MM_PER_INCH - mm) > 0.051:
        return f"{inches:.2f} in"
    return f"{_mixed(nearest)} in"


def mixed_text(value: float) -> str:
    """A count to the twelfth, as a mixed number.

    >>> mixed_text(1.25), mixed_text(1 / 3), mixed_text(2)
    ('1 1/4', '1/3', '2')
    """
    return _mixed(Fraction(round(value * 12), 12))


def _mixed(value: Fraction) -> str:
    whole, part = divmod(value, 1)
    return " ".join(([str(whole)] if whole or not part else []) + ([str(part)] if part else []))


def number_text(value: float, places: int = 1) -> str:
    """A figure without a useless ".0", and zero without a sign.

    >>> number_text(1250.0), number_text(55.9), number_text(-0.04)
    ('1250', '55.9', '0')
    """
    text = f"{round(value, places) + 0.0:.{places}f}"
    return text.rstrip("0").rstrip(".") if places else text


def show_length(mm: float) -> str:
    """Both systems.

    >>> show_length(1250)
    '1250 mm (49.21 in)'
    """
    return f"{number_text(mm)} mm ({inch_text(mm)})"


def psi_of(bar: float) -> int:
    """psi in steps of 5, never more than 1.5 psi above the exact figure.

    A rating must not grow by being shown; the slack undoes the rounding of bar to 0.1.

    >>> psi_of(206.8), psi_of(77.6), psi_of(172)
    (3000, 1125, 2495)
    """
    return int((bar / BAR_PER_PSI + 1.5) // 5) * 5


def show_pressure(bar: float) -> str:
    """Both systems; bar to the whole, as the standards print it (3000 psi is 207 bar).

    >>> show_pressure(206.8)
    '207 bar (3000 psi)'
    """
    si, us = pressure_pair(bar)
    return f"{si} ({us})"


def pressure_pair(bar: float) -> tuple[str, str]:
    """The same as two texts: bar, psi."""
    return f"{round(bar)} bar", f"{psi_of(bar)} psi"


def show_least_pressure(bar: float) -> str:
    """A pressure that must be reached (proof, minimum burst), in both systems, rounded up.

    Four times a rating rounded to 0.1 bar is up to 3 psi off: within that of the round psi that
    standards print (steps of 25) it is that figure.

    >>> show_least_pressure(620.4), show_least_pressure(413.6), show_least_pressure(344)
    ('621 bar (9000 psi)', '414 bar (6000 psi)', '344 bar (4990 psi)')
    """
    si, us = least_pressure_pair(bar)
    return f"{si} ({us})"


def least_pressure_pair(bar: float) -> tuple[str, str]:
    """The same as two texts: bar, psi."""
    psi = bar / BAR_PER_PSI
    printed = round(psi / 25) * 25
    shown = printed if abs(psi - printed) <= 3 else math.ceil(psi / 5) * 5
    return f"{math.ceil(round(bar, 2))} bar", f"{shown} psi"


def lbf_ft_of(nm: float) -> float:
    """N·m as lbf·ft, whole from 10 up, else one decimal."""
    value = nm / NM_PER_LBF_FT
    return round(value) if value >= 10 else round(value, 1)


def show_temperature(celsius: float) -> str:
    """Both systems.

    >>> show_temperature(100)
    '100 °C (212 °F)'
    """
    return f"{number_text(celsius)} °C ({round(celsius * 1.8 + 32)} °F)"
