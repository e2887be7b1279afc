"""Figures as people read them: SI first, US beside it, decimals as the language writes them.

Rounding is that of ``tagger.units``: a rating never grows, and a least pressure never shrinks, by being shown.
"""

from __future__ import annotations

from collections.abc import Callable
from datetime import date
from typing import TYPE_CHECKING, Final

from tagger import units
from tagger.messages import Figure, Unit

if TYPE_CHECKING:
    from tagger.i18n.translator import Translator


def _pressure(bar: float) -> tuple[str, str]:
    return units.pressure_pair(bar)


def _least_pressure(bar: float) -> tuple[str, str]:
    return units.least_pressure_pair(bar)


def _length(mm: float) -> tuple[str, str]:
    return f"{units.number_text(mm)} mm", units.inch_text(mm)


def _diameter(mm: float) -> tuple[str, str]:
    return f"{units.number_text(mm, 2)} mm", units.inch_text(mm)


def _temperature(celsius: float) -> tuple[str, str]:
    return f"{units.number_text(celsius)} °C", f"{round(celsius * 1.8 + 32)} °F"


_PAIRS: Final[dict[Unit, Callable[[float], tuple[str, str]]]] = {
    Unit.PRESSURE: _pressure,
    Unit.LEAST_PRESSURE: _least_pressure,
    Unit.LENGTH: _length,
    Unit.DIAMETER: _diameter,
    Unit.TEMPERATURE: _temperature,
}


def shown(figure: Figure, t: Translator) -> tuple[str, str | None]:
    """The figure in SI and in US units; None where there is one system only (a count, an angle)."""
    if figure.unit is Unit.ANGLE:
        return t.decimal(f"{units.number_text(figure.value)}°"), None
    if figure.unit is Unit.COUNT:
        low = figure.value if figure.low is None else figure.low
        return _range(t, units.mixed_text(low), units.mixed_text(figure.value), figure.at_most), None
    if figure.unit is Unit.TORQUE:
        return _torque(figure, t)
    si, us = _PAIRS[figure.unit](figure.value)
    return t.decimal(si), t.decimal(us)


def _torque(figure: Figure, t: Translator) -> tuple[str, str]:
    low, high = figure.value if figure.low is None else figure.low, figure.value
    feet = units.lbf_ft_of(low), units.lbf_ft_of(high)
    return _torque_in(" N·m", low, high, figure.at_most, t), _torque_in(" lbf·ft", *feet, figure.at_most, t)


def _torque_in(unit: str, low: float, high: float, at_most: bool, t: Translator) -> str:
    first, last = units.number_text(low), units.number_text(high)
    shown = t.decimal(f"{last}{unit}")
    if at_most:
        return t.torque_limit(shown)
    return shown if first == last else t.torque_range(t.decimal(first), shown)


def _range(t: Translator, low: str, high: str, at_most: bool) -> str:
    if at_most:
        return t("words-at-most", high=high)
    return high if low == high else t("words-range", low=low, high=high)


def show_date(day: date, t: Translator) -> str:
    """A day as the language writes it; the order of its parts is the language's ``words-date``."""
    return t("words-date", year=f"{day.year:04}", month=f"{day.month:02}", day=f"{day.day:02}")
