"""A photo of an end beside the scale card, on both sites: what was sent, and what the page shows of it.

Nothing is kept: what the next request needs of the photo travels in the page's own form.
"""

from __future__ import annotations

import base64
import io
import math
from collections.abc import Mapping
from dataclasses import asdict, dataclass, replace
from typing import Any, Final
from urllib.parse import urlencode

from PIL import Image
from starlette.datastructures import FormData, UploadFile

from api.shared.photos import DECODING, MAX_BYTES
from tagger import units
from tagger.code import photo
from tagger.errors import LinkError, Problem, SpecError, TaggerError, UnitError
from tagger.i18n import Translator
from tagger.measuring import card, profile, reading, rectify, view
from tagger.measuring.reading import Lines, Reading
from tagger.measuring.rectify import Camera
from tagger.messages import Message, diameter, length
from tagger.papers.scale_card import LIMITS, PAPERS, STEPS

START: Final = {"edge_1": 95.0, "edge_2": 121.0, "crest_1": 45.0, "crest_2": 65.0, "tilt": 0.0}
"""Where the lines lie before anybody has moved them: the end lies 10 to 15 mm below the card. How many pitches lie
between two of them nobody can say before: an unread default would be a wrong thread."""
MOST_STRIP_BYTES: Final = 4_000_000
_ABOUT = 2.0  # mm: a pitch to begin with; the search takes none of it
_NEAR, _FAR = 0.6, 1.6  # shares of the distance worked out, within which one that was typed is believed
_TYPED = 0.04  # share by which a distance that somebody measured may be off


@dataclass(frozen=True)
class Look:
    """What the page needs of a photo once it is gone. ``told``: whether the photo named its focal length."""

    x: float
    y: float
    z: float
    z_sd: float
    residual: float
    told: bool

    @property
    def camera(self) -> Camera:
        return Camera(self.x, self.y, self.z, self.z_sd)


def sent_with(form: FormData) -> tuple[bytes, dict[str, str]]:
    """The photo that a form brought, empty where it brought none, and the form's texts."""
    file = form.get("photo")
    data = file.file.read(MAX_BYTES + 1) if isinstance(file, UploadFile) else b""
    return data, {name: value for name, value in form.items() if isinstance(value, str)}


def take(data: bytes) -> tuple[str, Look]:
    """The strip below the card as the address of a picture, and the look. Raises LinkError with what to do."""
    if not data:
        raise LinkError(Problem("photo", None, Message("measure-no-file")))
    if len(data) > MAX_BYTES:
        raise LinkError(Problem("photo", None, Message("scan-photo-too_large")))
    with DECODING:
        grey = _opened(data)
        sight = rectify.find(grey)
        strip = view.of(grey, sight)
    out = io.BytesIO()
    strip.save(out, "JPEG", quality=88)
    camera = sight.camera
    look = Look(camera.x, camera.y, camera.z, camera.z_sd, sight.residual, sight.focal_told)
    return f"data:image/jpeg;base64,{base64.b64encode(out.getvalue()).decode()}", look


def _opened(data: bytes) -> Image.Image:
    try:
        return photo.in_grey(io.BytesIO(data))
    except LinkError as error:
        raise LinkError([Problem("photo", p.value, p.message) for p in error.problems]) from None


def find(data: bytes, asked: Mapping[str, str]) -> dict[str, float]:
    """The lines of the form moved onto edges and crests of the strip. Raises TaggerError."""
    edge_1, edge_2, crest_1, crest_2, tilt = (_number(asked, name) for name in START)
    about = max(1, round(abs(crest_2 - crest_1) / _ABOUT))
    lines = Lines(edge_1, edge_2, crest_1, crest_2, about, tilt=tilt)
    if len(data) > MOST_STRIP_BYTES:
        raise LinkError(Problem("photo", None, Message("scan-photo-too_large")))
    with DECODING:
        strip = _opened(data)
        if strip.size != (round(view.WIDTH * view.PX), round(view.HEIGHT * view.PX)):
            raise LinkError(Problem("photo", None, Message("measure-no-card")))
        found = asdict(profile.find(strip, lines))
    return {name: round(found[name], 2) for name in (*START, "threads")}


def read(asked: Mapping[str, str], unit: str) -> tuple[Reading, Look]:
    """What the lines of the form say. Raises TaggerError naming the field."""
    scale = card.read_scale(units.with_unit(asked.get("check", ""), unit))
    look = _look(asked)
    lines = _lines(asked, unit)
    camera = _with_distance(look.camera, asked.get("distance", ""), scale, unit)
    look = replace(look, z=camera.z, z_sd=camera.z_sd)
    return reading.read(
        lines, camera, look.residual, scale, checked=bool(asked.get("check", "").strip())
    ), look


def _number(asked: Mapping[str, str], name: str) -> float:
    """A number of the form; a decimal comma is one too. Raises SpecError."""
    text = asked.get(name, "").strip()
    if not text:
        raise SpecError(Problem("lines", None, Message("measure-lines-missing")))
    try:
        value = float(text.replace(",", "."))
    except ValueError:
        value = math.nan
    if not abs(value) < 10_000:
        raise SpecError(Problem(name, text[:40], Message("measure-not-a-number", value=text[:40])))
    return value


def _look(asked: Mapping[str, str]) -> Look:
    x, y, z, z_sd, residual = (_number(asked, name) for name in ("x", "y", "z", "z_sd", "residual"))
    if z < 20 or not 0 <= z_sd < z or residual < 0:
        raise SpecError(Problem("lines", None, Message("measure-lines-missing")))
    return Look(x, y, z, z_sd, residual, bool(asked.get("told")))


def _lines(asked: Mapping[str, str], unit: str) -> Lines:
    edge_1, edge_2, crest_1, crest_2, tilt = (_number(asked, name) for name in START)
    if not asked.get("threads", "").strip():
        raise SpecError(Problem("threads", None, Message("measure-threads-missing")))
    threads = _number(asked, "threads")
    if threads != round(threads):
        raise SpecError(Problem("threads", threads, Message("measure-crests-wrong")))
    return Lines(
        *(edge_1, edge_2, crest_1, crest_2, round(threads)),
        tilt=tilt,
        rest_mm=_length(asked, "rest", unit),
        found=bool(asked.get("found")),
    )


def _length(asked: Mapping[str, str], name: str, unit: str) -> float | None:
    text = asked.get(name, "").strip()
    if not text:
        return None
    try:
        return units.read_length_mm(units.with_unit(text, unit))
    except UnitError as error:
        raise SpecError([Problem(name, p.value, p.message) for p in error.problems]) from None


def _with_distance(camera: Camera, typed: str, scale: float, unit: str) -> Camera:
    """The camera as far away as somebody measured. Raises SpecError where the photo says otherwise."""
    distance = _length({"distance": typed}, "distance", unit)
    if distance is None:
        return camera
    z = distance / scale
    if not _NEAR <= z / camera.z <= _FAR:
        expected = length(round(camera.z * scale, -1))
        raise SpecError(Problem("distance", typed, Message("measure-distance-wrong", expected=expected)))
    part = z / camera.z
    x, y = (middle + (at - middle) * part for middle, at in ((60.0, camera.x), (40.0, camera.y)))
    return Camera(x, y, z, _TYPED * z)


def started(look: Look, picture: str, check: str, t: Translator) -> dict[str, Any]:
    """What the page with the lines needs."""
    grid_x = range(0, round(card.WIDTH) + 1, 10)
    grid_y = range(round(card.HEIGHT), round(view.TOP + view.HEIGHT), 10)
    hidden = {name: round(value, 4) for name, value in asdict(look).items() if name != "told"}
    return {
        "picture": picture,
        "hidden": {**hidden, "told": "1" if look.told else "", "check": check},
        "start": {name: t.decimal(str(value)) for name, value in START.items()},
        "box": (view.LEFT, view.TOP, view.WIDTH, view.HEIGHT),
        "grid_x": grid_x,
        "grid_y": grid_y,
        "away": length(round(look.z, -1)),
    }


def answered(
    asked: Mapping[str, str], unit: str, t: Translator, *, identify: str, diameter_field: str
) -> dict[str, Any]:
    """What the page of a reading shows; ``identify``: the page it leads to, which takes the diameter in that field."""
    values: dict[str, Any] = {"problems": (), "field": field, "result": None, "on": ""}
    try:
        found, look = read(asked, unit)
        values["result"] = result = told(found, look, asked, t)
        known = {"form": "male", diameter_field: result["diameter"], "pitch": result["pitch"]}
        values["on"] = f"{identify}?{urlencode(known)}"
    except TaggerError as error:
        values["problems"] = error.problems
    return values


def told(found: Reading, look: Look, asked: Mapping[str, str], t: Translator) -> dict[str, Any]:
    """The readings in words; ``usable`` is whether they may go on to identify."""
    found_by_program = bool(asked.get("found"))
    confirmed = not found_by_program or bool(asked.get("confirmed"))
    band, pitch_band = (
        math.ceil(value * 100) / 100 for value in (found.diameter_band_mm, found.pitch_band_mm)
    )
    warnings = [Message("measure-not-checked")] if not asked.get("check", "").strip() else []
    if not look.told and not asked.get("distance", "").strip():
        warnings.append(Message("measure-distance-unsure"))
    if not confirmed:
        warnings.append(Message("measure-confirm-first"))
    unusable = Message("measure-not-usable", band=diameter(band))
    facts = [
        Message("measure-diameter", value=diameter(found.diameter_mm), band=diameter(band)),
        Message("measure-pitch", value=diameter(found.pitch_mm), band=pitch_band),
        Message("measure-tpi", tpi=round(25.4 / found.pitch_mm, 1)),
        Message(
            "measure-corrected", height=length(round(found.axis_mm, 1)), distance=length(round(look.z, -1))
        ),
    ]
    return {
        "facts": [t(fact) for fact in facts],
        "warnings": [t(warning) for warning in warnings],
        "unusable": "" if found.usable else f"{t(unusable)} {t.mend(unusable)}",
        "usable": found.usable and confirmed,
        "diameter": f"{found.diameter_mm:.2f} mm \N{PLUS-MINUS SIGN} {band:.2f} mm",
        "pitch": f"{found.pitch_mm:.3f} \N{PLUS-MINUS SIGN} {max(found.pitch_band_mm, 0.001):.3f}",
    }


def offered(unit: str) -> dict[str, Any]:
    """What the first page offers beside the form."""
    return {
        "steps": STEPS,
        "limits": LIMITS,
        "papers": tuple(PAPERS),
        "check_line": length(card.CHECK_LINE),
        "unit": unit,
    }


def field(problem: Problem) -> Message:
    """The caption of a field that a problem names."""
    names = (*START, "threads", "photo", "check", "rest", "distance", "edges", "crests", "lines")
    return Message(f"measure-field-{problem.field if problem.field in names else 'lines'}")


def problems_as_json(error: TaggerError, t: Translator) -> dict[str, Any]:
    """What is wrong, for the page's script."""
    return {"problems": [{"text": f"{t(p.message)} {t.mend(p.message)}"} for p in error.problems]}
