"""Label templates: TOML files that say where on a label what is printed. See label_templates/README.md.

Every error names the file, the key and the mend.
"""

from __future__ import annotations

import math
import tomllib
from collections.abc import Iterable, Iterator, Mapping
from functools import lru_cache
from importlib import resources
from importlib.resources.abc import Traversable
from pathlib import Path
from typing import Annotated, Any, Literal, get_args

from pydantic import BaseModel, BeforeValidator, ConfigDict, Field, ValidationError

from tagger.errors import Problem, TemplateError, problems_from
from tagger.i18n import LANGUAGES, SOURCE, Translator
from tagger.messages import Message, as_is
from tagger.printing.fields import FIELDS
from tagger.units import read_length_mm

PACKAGE = "label_templates"
LARGEST_MM = (
    500.0  # of a label or page, on either side: more dots than a printer or this machine has room for
)
SMALLEST_TEXT_MM = 2.2  # em of the smallest text allowed: capitals of 1.6 mm


Purpose = Literal["tag", "traveller", "do_not_use"]
"""A traveller stays in the shop; "do_not_use" goes on hoses that must not be used, and on no other."""
Mm = Annotated[float, BeforeValidator(read_length_mm)]
Side = Annotated[Mm, Field(ge=0.1, le=LARGEST_MM)]


class _Strict(BaseModel):
    model_config = ConfigDict(frozen=True, extra="forbid")


class _Box(_Strict):
    """What every box has: its place (left, top) and size (width, height) on the label."""

    at: tuple[Mm, Mm]
    size: tuple[Side, Side]
    turn: Literal[0, 90, 180, 270] = 0  # clockwise, of what is in the box
    frame: bool = False

    @property
    def inner(self) -> tuple[float, float]:
        """Width and height as seen by what is in the box."""
        width, height = self.size
        return (height, width) if self.turn in (90, 270) else (width, height)


class TextBox(_Box):
    """Text that fits itself between ``text`` (the largest em, mm) and ``text_min``."""

    text: Annotated[Mm, Field(ge=SMALLEST_TEXT_MM, le=60)] = 3.0
    text_min: Annotated[Mm, Field(ge=SMALLEST_TEXT_MM)] = SMALLEST_TEXT_MM
    bold: bool = False
    align: Literal["left", "centre", "right"] = "left"
    middle: bool = False  # centred from top to bottom
    caption: bool = False  # the field's name before it
    inverse: bool = False  # white on black


class FieldBox(TextBox):
    kind: Literal["text"]
    fields: tuple[str, ...] = Field(min_length=1)
    keep: Annotated[int, Field(ge=1)] | None = (
        None  # of the fields; the others are left out where there is no room
    )


class WordsBox(TextBox):
    kind: Literal["words"]
    say: str | dict[str, str]  # the shop's own words, one text or one a language


class PressureBox(TextBox):
    kind: Literal["pressure"]
    text: Annotated[Mm, Field(ge=SMALLEST_TEXT_MM, le=60)] = 8.0
    text_min: Annotated[Mm, Field(ge=SMALLEST_TEXT_MM)] = SMALLEST_TEXT_MM
    bold: bool = True
    stacked: bool = True  # bar above psi, else side by side
    duty: bool = False  # dangers, fluid and temperature under it


class TighteningBox(TextBox):
    kind: Literal["tightening"]
    ends: Literal["both", "a", "b"] = "both"


class CautionBox(TextBox):
    kind: Literal["caution"]
    short: bool = False  # for small labels


class QrBox(_Box):
    """The QR code. With ``repeat`` as many as fit, side by side along that direction."""

    kind: Literal["qr"]
    holds: Literal["all", "spec", "number"] = (
        "all"  # "spec": never the signature; "number": the number's link alone, a small symbol
    )
    levels: tuple[Literal["H", "Q", "M"], ...] = Field(default=("H", "Q", "M"), min_length=1)
    least_module: Annotated[Mm, Field(ge=0.25, le=2)] = 0.37
    largest: Mm | None = None  # side of the symbol with its quiet zone, at most
    repeat: Literal["across", "down"] | None = None


class Code128Box(_Box):
    kind: Literal["code128"]
    least_module: Annotated[Mm, Field(ge=0.19, le=1)] = 0.24


class EndsBox(_Box):
    kind: Literal["ends_drawing"]
    length: bool = True  # the length on its arrow


class ClockingBox(_Box):
    kind: Literal["clocking_drawing"]


class FlatsBox(_Box):
    kind: Literal["flats_drawing"]
    end: Literal["a", "b"] = "a"


class EndBox(_Box):
    """One end in one place: its letter, picture, connection, shape and tightening with its basis.

    ``text``: the largest em of the tightening values in mm; what is beside them is smaller.
    """

    kind: Literal["end"]
    end: Literal["a", "b"]
    text: Annotated[Mm, Field(ge=SMALLEST_TEXT_MM, le=60)] = 4.8
    small: Annotated[Mm, Field(ge=SMALLEST_TEXT_MM, le=60)] = 2.6
    picture: bool = True


class BetweenBox(_Box):
    """What lies between the ends: hose and length, and of two elbows the clocking angle with its picture.

    ``text``: the largest em of length and angle in mm.
    """

    kind: Literal["between"]
    text: Annotated[Mm, Field(ge=SMALLEST_TEXT_MM, le=60)] = 4.8
    small: Annotated[Mm, Field(ge=SMALLEST_TEXT_MM, le=60)] = 2.6


class SignBox(_Box):
    kind: Literal["sign"]  # a ring with a bar over a hose: do not use


class HoleBox(_Box):
    kind: Literal["hole"]  # drawn as a thin circle: punch here


class RuleBox(_Box):
    kind: Literal["line", "fold", "cut"]


class ClearBox(_Box):
    kind: Literal["clear"]  # a clear tail or a part that must stay free of print


Box = Annotated[
    FieldBox
    | WordsBox
    | PressureBox
    | TighteningBox
    | CautionBox
    | QrBox
    | Code128Box
    | EndsBox
    | ClockingBox
    | FlatsBox
    | EndBox
    | BetweenBox
    | SignBox
    | HoleBox
    | RuleBox
    | ClearBox,
    Field(discriminator="kind"),
]


class Sheet(_Strict):
    """Many labels on one page: ``page`` is A4, Letter or a width and height."""

    page: Literal["A4", "Letter"] | tuple[Side, Side] = "A4"
    columns: int = Field(ge=1, le=40)
    rows: int = Field(ge=1, le=80)
    first: tuple[Mm, Mm]  # left and top of the first label
    pitch: tuple[Mm, Mm]  # from one label's left and top to the next one's
    cut_marks: bool = False

    @property
    def page_size(self) -> tuple[float, float]:
        named = {"A4": (210.0, 297.0), "Letter": (215.9, 279.4)}
        return named[self.page] if isinstance(self.page, str) else self.page

    @property
    def per_page(self) -> int:
        return self.columns * self.rows


class Sleeve(_Strict):
    """A heat-shrink sleeve: printed flat as supplied, slid over the hose, shrunk round it; its length stays.

    ``supplied_mm`` and ``recovered_mm``: inside diameters as supplied and shrunk with nothing in it, by the
    sleeve's own data, which ``source`` names.
    """

    round_hose: Literal["across", "down"]  # which side of the label goes round the hose, and shrinks
    supplied_mm: Side
    recovered_mm: Side
    source: str = Field(min_length=1)

    @property
    def flat_mm(self) -> float:
        """How wide the sleeve lies when it is pressed flat to be printed."""
        return math.pi * self.supplied_mm / 2

    @property
    def named(self) -> Message:
        """The source: a message for the template that comes with the program, else the shop's own words."""
        return own_text(self.source)

    @property
    def assumed(self) -> bool:
        """Whether the diameters are of no sleeve: those of the template that comes with the program."""
        return self.source.startswith("printing-sleeve-")


class Template(_Strict):
    """One kind of label."""

    name: str
    title: str = Field(min_length=1)
    size: tuple[Side, Side]
    languages: tuple[str, ...] = Field(default=("en",), min_length=1, max_length=2)
    media: str = ""  # what to print it on, for people
    purpose: Purpose = "tag"
    wraps: Literal["across", "down"] | None = None  # which of its sides goes round the hose
    flag: tuple[Mm, Mm] | None = None  # from where to where across it goes round the hose, wings beside it
    on_hose: Literal["always", "sometimes"] | None = None  # lies on the hose, and bends with it
    engraved: Annotated[Mm, Field(ge=0.02, le=0.3)] | None = None  # width of the line that a tool cuts
    sleeve: Sleeve | None = None  # printed on a sleeve that is shrunk round the hose
    sheet: Sheet | None = None
    box: tuple[Box, ...] = Field(min_length=1)

    @property
    def named(self) -> Message:
        """The title: a message for the templates that come with the program, else the shop's own words."""
        return own_text(self.title)

    @property
    def file(self) -> str:
        return f"{self.name}.toml"

    def where(self, index: int) -> str:
        """How a message names a box: "hang_tag.toml: box 3 (qr)"."""
        return f"{self.file}: box {index + 1} ({self.box[index].kind})"

    @property
    def bends(self) -> bool:
        """Whether the hose's diameter decides how it reads."""
        return bool(self.wraps or self.flag or self.on_hose or self.sleeve)

    @property
    def traveller(self) -> bool:
        """Whether it stays in the shop: paper that goes with the job, no tag for a hose."""
        return self.purpose == "traveller"

    @property
    def is_tag(self) -> bool:
        """Whether it goes out on a hose as its tag: a print of it counts as a tag printed."""
        return self.purpose == "tag"

    def in_languages(self, languages: Iterable[str]) -> Template:
        """The same template in one or two other languages; raises TemplateError for unknown ones."""
        wanted = tuple(dict.fromkeys(languages))
        if not 1 <= len(wanted) <= 2 or any(language not in LANGUAGES for language in wanted):
            message = Message("printing-template-languages", languages=tuple(LANGUAGES))
            raise TemplateError(Problem(f"{self.file}: languages", ", ".join(wanted), message))
        return self.model_copy(update={"languages": wanted})


def names(extra_dirs: Iterable[str | Path] = ()) -> list[str]:
    """Names of all templates: those of ``extra_dirs`` and those that come with the program."""
    return sorted({file.name.removesuffix(".toml") for file in _files(extra_dirs)})


def catalogue(extra_dirs: Iterable[str | Path] = (), language: str = SOURCE) -> list[dict[str, Any]]:
    """What there is, for a list to choose from: sizes in mm, titles in ``language``."""
    dirs, t = tuple(extra_dirs), Translator(language)
    return [
        {
            "name": one.name,
            "title": t(one.named),
            "width_mm": one.size[0],
            "height_mm": one.size[1],
            "languages": list(one.languages),
            "purpose": one.purpose,
        }
        for one in (load(name, dirs) for name in names(dirs))
    ]


def load(name: str | Path, extra_dirs: Iterable[str | Path] = (), above: tuple[str, ...] = ()) -> Template:
    """A template by its name, or by the path of its file; own folders come before ours.

    ``above``: the files that took it as their base. Raises TemplateError naming the file, the key
    and the mend.
    """
    extra = tuple(str(folder) for folder in extra_dirs)
    if str(name).endswith(".toml"):
        return read(Path(name), extra, above)
    for file in _files(extra):
        if file.name == f"{name}.toml":
            return (
                _shipped(str(name)) if not isinstance(file, Path) or not extra else read(file, extra, above)
            )
    message = Message("printing-template-unknown", name=str(name), names=tuple(names(extra)))
    raise TemplateError(Problem("template", str(name), message))


@lru_cache(maxsize=64)
def _shipped(name: str) -> Template:
    return read(resources.files(PACKAGE) / f"{name}.toml", ())


def _files(extra_dirs: Iterable[str | Path]) -> Iterator[Traversable]:
    for folder in extra_dirs:
        if not Path(folder).is_dir():
            message = Message("printing-template-folder", folder=str(folder))
            raise TemplateError(Problem("templates folder", str(folder), message))
        yield from sorted(Path(folder).glob("*.toml"))
    for file in resources.files(PACKAGE).iterdir():
        if file.name.endswith(".toml"):
            yield file


def read(file: Traversable | Path, extra_dirs: tuple[str, ...] = (), above: tuple[str, ...] = ()) -> Template:
    """A template from its file; raises TemplateError."""
    try:
        data = tomllib.loads(file.read_text(encoding="utf-8"))
    except OSError:
        message = Message("printing-template-unreadable", file=str(file))
        raise TemplateError(Problem(str(file), None, message)) from None
    except (tomllib.TOMLDecodeError, UnicodeDecodeError, RecursionError) as error:
        message = Message("printing-template-not-toml", told=str(error))
        raise TemplateError(Problem(file.name, None, message)) from None
    name = file.name.removesuffix(".toml")
    if data.get("name", name) != name:  # a queue loads it anew by its name: another one prints another label
        message = Message("printing-template-name", name=name)
        raise TemplateError(Problem(f"{file.name}: name", str(data["name"]), message))
    data = _based(data, file, extra_dirs, (*above, file.name))
    boxes = data.get("box", [])
    if not isinstance(boxes, list) or not all(isinstance(box, dict) for box in boxes):
        raise TemplateError(Problem(f"{file.name}: box", None, Message("printing-template-boxes")))
    try:
        template = Template.model_validate({**data, "name": name})
    except ValidationError as error:
        raise TemplateError(_problems(error, file.name, data)) from None
    problems = [*_names(template), *_geometry(template)]
    if problems:
        raise TemplateError(problems)
    return template


def _based(
    data: dict[str, Any], file: Traversable | Path, extra_dirs: tuple[str, ...], above: tuple[str, ...]
) -> dict[str, Any]:
    """``base = "hang_tag"`` takes everything from that template but what is said here; ``more`` boxes are added.

    ``above`` are this file and those that took it as their base.
    """
    base = data.pop("base", None)
    if base is None:
        return data
    if f"{base}.toml" in above or str(base) in above:
        message = (
            Message("printing-template-own-base")
            if len(above) == 1
            else Message("printing-template-circle", way=" -> ".join((*above, str(base))))
        )
        raise TemplateError(Problem(f"{file.name}: base", base, message))
    if not isinstance(base, str) or not (base.endswith(".toml") or base in names(extra_dirs)):
        message = Message("printing-template-unknown", name=str(_typed(base)), names=tuple(names(extra_dirs)))
        raise TemplateError(Problem(f"{file.name}: base", _typed(base), message))
    whole = load(base, extra_dirs, above).model_dump(
        mode="json", exclude={"name"}, exclude_none=True, exclude_defaults=True
    )
    boxes, more = data.pop("box", whole.get("box", [])), data.pop("more", [])
    if not isinstance(boxes, list) or not isinstance(more, list):
        raise TemplateError(Problem(f"{file.name}: more", None, Message("printing-template-boxes")))
    return {**whole, **data, "box": [*boxes, *more]}


def kinds() -> list[str]:
    """The kinds of box there are."""
    boxes = get_args(get_args(Box)[0])
    return [kind for box in boxes for kind in get_args(box.model_fields["kind"].annotation)]


def _problems(error: ValidationError, file: str, data: dict[str, Any]) -> list[Problem]:
    """pydantic's findings with the file before each key, and boxes counted from one with their kind."""
    items = error.errors(include_url=False)
    found = []
    for item in items:
        if item["type"] == "too_short" and any(_inside(item["loc"], other["loc"]) for other in items):
            continue  # the list is only too short because an entry of it, named beside this, is wrong
        if item["type"] == "union_tag_invalid":
            kind = str(item["ctx"]["tag"])
            message = Message("printing-template-kind", kind=kind, kinds=tuple(kinds()))
            found.append(Problem(f"{file}: {_key(item['loc'], data)}", kind, message))
            continue
        if item["type"] == "union_tag_not_found":
            message = Message("printing-template-kind-missing", kinds=tuple(kinds()))
            found.append(Problem(f"{file}: {_key(item['loc'], data)}", None, message))
            continue
        if (listed := _in_toml(item)) is not None:
            found.append(Problem(f"{file}: {_key(item['loc'], data)}", None, listed))
            continue
        for problem in problems_from([item]):
            key = _key(tuple(problem.field.split(".")), data)
            found.append(Problem(f"{file}: {key}", _typed(problem.value), problem.message))
    return found


def _in_toml(item: Mapping[str, Any]) -> Message | None:
    """What is wrong with a list, as it is written in TOML."""
    if item["type"] not in ("tuple_type", "list_type", "too_long", "too_short"):
        return None
    if "languages" in item["loc"]:
        return Message("printing-template-languages", languages=tuple(LANGUAGES))
    if {"fields", "levels", "box"} & set(item["loc"][-1:]):
        return Message("printing-template-list")
    return Message("printing-template-pair")


def _typed(value: object) -> object:
    """A value as it stands in the file; of tables and lists the key says enough."""
    if isinstance(value, dict | list):
        return None
    return str(value).lower() if isinstance(value, bool) else value


def _inside(outer: tuple[int | str, ...], inner: tuple[int | str, ...]) -> bool:
    return len(inner) > len(outer) and inner[: len(outer)] == outer


def _key(loc: tuple[int | str, ...], data: dict[str, Any]) -> str:
    """How a message names a key: "box 3 (qr), colour"."""
    parts = [str(part) for part in loc]
    if parts[0] != "box" or len(parts) < 2 or not parts[1].isdigit():
        return ".".join(parts)
    boxes, index = data.get("box", []), int(parts[1])
    kind = boxes[index].get("kind", "?") if index < len(boxes) else "?"
    below = parts[3:] if parts[2:3] == [kind] else parts[2:]  # pydantic names the kind it tried
    return f"box {index + 1} ({kind})" + (f", {'.'.join(below)}" if below else "")


def own_text(text: str) -> Message:
    """What a template says in its own words; those that come with the program name a message instead."""
    return Message(text) if text.startswith(_NAMES_A_MESSAGE) else as_is(text)


_NAMES_A_MESSAGE = ("printing-title-", "printing-done-", "printing-stop-", "printing-sleeve-")


def _names(template: Template) -> Iterator[Problem]:
    """Fields and languages that there are not, and a smallest text above the largest."""
    for language in template.languages:
        if language not in LANGUAGES:
            yield _no_language(f"{template.file}: languages", language)
    for index, box in enumerate(template.box):
        if isinstance(box, FieldBox):
            for name in box.fields:
                if name not in FIELDS:
                    message = Message("printing-template-field", field=name, fields=tuple(sorted(FIELDS)))
                    yield Problem(f"{template.where(index)}, fields", name, message)
        if isinstance(box, TextBox) and box.text_min > box.text:
            message = Message("printing-template-text-min", text=box.text)
            yield Problem(f"{template.where(index)}, text_min", box.text_min, message)
        if isinstance(box, WordsBox) and isinstance(box.say, dict):
            for language in box.say:
                if language not in LANGUAGES:
                    yield _no_language(f"{template.where(index)}, say", language)


def _no_language(field: str, language: str) -> Problem:
    message = Message("printing-template-language", language=language, languages=tuple(LANGUAGES))
    return Problem(field, language, message)


def _geometry(template: Template) -> Iterator[Problem]:
    """Boxes off the label, or over one another."""
    width, height = template.size
    slack = 0.01
    for index, box in enumerate(template.box):
        (x, y), (w, h) = box.at, box.size
        if x < -slack or y < -slack or x + w > width + slack or y + h > height + slack:
            given = f"at {x:g}, {y:g} size {w:g} x {h:g} mm"
            message = Message("printing-template-off-label", width=width, height=height)
            yield Problem(template.where(index), given, message)
    solid = [(i, box) for i, box in enumerate(template.box) if not isinstance(box, RuleBox)]
    for place, (i, one) in enumerate(solid):
        for j, other in solid[place + 1 :]:
            if _overlap(one, other):
                message = Message("printing-template-overlap", box=i + 1, kind=one.kind)
                yield Problem(template.where(j), None, message)
    if template.flag and not 0 < template.flag[0] < template.flag[1] < width:
        message = Message("printing-template-flag", width=width)
        yield Problem(f"{template.file}: flag", f"{template.flag[0]:g}, {template.flag[1]:g}", message)
    yield from _sheet_geometry(template)
    yield from _sleeve_geometry(template)


_SHRUNK_WRONG = (EndBox, BetweenBox, EndsBox, ClockingBox, FlatsBox, SignBox)
"""Boxes with pictures, whose angles and shapes would be others on the hose."""


def _sleeve_geometry(template: Template) -> Iterator[Problem]:
    """A sleeve that cannot shrink, a label wider than it lies flat, and boxes that shrinking would falsify."""
    sleeve = template.sleeve
    if sleeve is None:
        return
    if sleeve.recovered_mm >= sleeve.supplied_mm:
        message = Message("printing-template-sleeve-sizes", supplied=sleeve.supplied_mm)
        yield Problem(f"{template.file}: sleeve, recovered_mm", sleeve.recovered_mm, message)
    round_hose = template.size[0 if sleeve.round_hose == "across" else 1]
    if round_hose > sleeve.flat_mm:
        flat = math.floor(sleeve.flat_mm * 10) / 10
        message = Message("printing-template-sleeve-flat", supplied=sleeve.supplied_mm, flat=flat)
        yield Problem(f"{template.file}: size", round_hose, message)
    for key in ("wraps", "flag", "on_hose", "engraved", "sheet"):
        if getattr(template, key) is not None:
            yield Problem(f"{template.file}: {key}", None, Message("printing-template-sleeve-alone"))
    for index, box in enumerate(template.box):
        if isinstance(box, _SHRUNK_WRONG):
            yield Problem(template.where(index), None, Message("printing-template-sleeve-picture"))
        bars_round = (box.turn in (0, 180)) is (sleeve.round_hose == "across")
        if isinstance(box, Code128Box) and bars_round:
            yield Problem(
                f"{template.where(index)}, turn", box.turn, Message("printing-template-sleeve-bars")
            )


def _overlap(one: _Box, other: _Box) -> bool:
    slack = 0.05
    return all(
        one.at[axis] + one.size[axis] > other.at[axis] + slack
        and other.at[axis] + other.size[axis] > one.at[axis] + slack
        for axis in (0, 1)
    )


def _sheet_geometry(template: Template) -> Iterator[Problem]:
    sheet = template.sheet
    if sheet is None:
        return
    counts = (sheet.columns, sheet.rows)
    for axis, key in enumerate(("columns", "rows")):
        last = sheet.first[axis] + sheet.pitch[axis] * (counts[axis] - 1) + template.size[axis]
        if last > sheet.page_size[axis] + 0.05:
            message = Message("printing-template-off-page", last=round(last, 2), page=sheet.page_size[axis])
            yield Problem(f"{template.file}: sheet, {key}", counts[axis], message)
        if counts[axis] > 1 and sheet.pitch[axis] < template.size[axis] - 0.01:
            message = Message("printing-template-pitch", pitch=sheet.pitch[axis], size=template.size[axis])
            yield Problem(f"{template.file}: sheet, pitch", sheet.pitch[axis], message)
