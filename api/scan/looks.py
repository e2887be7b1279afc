"""Small pictures beside the questions of identify: each form, each seat, a nose and a funnel.

Schematic, in a measure of their own (a thread's diameter is one); the angle of a cone is true. They say
nothing that the words beside them do not, so screen readers pass over them.
"""

from __future__ import annotations

import math
from functools import cache

from api.scan.fill import fill
from api.scan.picture import PLUGS, SOCKETS
from tagger.spec import Form
from tagger.trade.cones import HALF_ANGLES

_RINGS = {
    "face": "M.98-.36h.14v.12H.98zM.98 .24h.14v.12H.98z",
    "boss": "M.4-.64h.14v.14H.4zM.4 .5h.14v.14H.4z",
}
_WASHER = "M1.2-.5h.12V.5h-.12z"
_TAIL = '<path class="metal" d="M-.5-.38H0v.76h-.5z"/>'
_NECK = '<path class="metal" d="M-.5-.38h.3v.76h-.3z"/><path class="metal" d="M-.2-.2H0v.4h-.2z"/>'
"""What a nut turns on: a neck between it and the rest."""


@cache
def form(value: str) -> str:
    """One form from the side, its sealing face to the right; empty for no form."""
    if value not in set(Form):
        return ""
    one = Form(value)
    if one is Form.STANDPIPE:
        return _framed(_TAIL + '<path class="metal" d="M0-.28h1.2v.56H0z"/>')
    return _framed(
        _fitting(
            _NECK if one.swivels else _TAIL,
            male=one.is_male_thread,
            nut=one.is_female_thread,
            flange=one is Form.FLANGE_HEAD,
            eye=one is Form.EYE,
            plug=one in PLUGS,
            socket=one in SOCKETS,
        )
    )


@cache
def seat(value: str) -> str:
    """What seals: an angle as a nose and the funnel it goes into, else a male with its O-ring, washer or taper."""
    if value in HALF_ANGLES:
        return _framed(_nose(HALF_ANGLES[value]) + _funnel(HALF_ANGLES[value]), wide=True)
    if value == "taper":
        return _framed(_fitting(male=True, taper=True))
    if value == "flat":
        return _framed(_fitting(male=True, solid=_WASHER))
    return _framed(_fitting(male=True, rings=_RINGS[value])) if value in _RINGS else ""


@cache
def cone(value: str) -> str:
    """A nose for an outside cone, a funnel for an inside one; empty where it is not said."""
    drawn = {"outside": _nose, "inside": _funnel}.get(value)
    return _framed(drawn(37), wide=True) if drawn else ""


def _fitting(tail: str = _TAIL, **parts: object) -> str:
    shown = fill("fitting", {"port": "0 0", "matrix": "1 0 0 1 0 0", "d": 1, **parts})
    return tail + shown.strip()


def _nose(half_angle: int) -> str:
    """Its slope falls by a fifth of the diameter, at the true angle to the axis."""
    tip = round(0.4 + _deep(half_angle), 2)
    return f'<path class="metal" d="M-.5-.5H.4L{tip}-.3V.3L.4 .5h-.9z"/>'


def _funnel(half_angle: int) -> str:
    mouth, end = 1.5, round(1.5 + _deep(half_angle), 2)
    return (
        f'<path class="metal" d="M{mouth}-.68h1.1V.68h-1.1z"/>'
        f'<path class="hole" d="M{mouth}-.5L{end}-.3H2.6V.3H{end}L{mouth} .5"/>'
    )


def _deep(half_angle: int) -> float:
    return 0.2 / math.tan(math.radians(half_angle))


def _framed(shapes: str, *, wide: bool = False) -> str:
    width = 3.2 if wide else 2.1
    size = f'viewBox="-.55-.75 {width} 1.5" width="{round(width * 40)}"'
    return f'<svg class="drawing" aria-hidden="true" {size}>{shapes}</svg>'
