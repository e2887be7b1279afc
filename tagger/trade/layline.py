"""The line that is printed along a hose, read: standards, size, edition, working pressure.

    >>> from tagger.trade.tables import tables
    >>> read("SAE 100R2AT / EN 853 2SN -12 WP 215 BAR", tables()).standards
    ('SAE 100R2', 'EN 853 2SN')

Nothing is guessed: what cannot be read stays empty. Of two pressures printed the lower holds. A model number
that looks like a type is no type: a short name (2SN, R2) is read only where no full name stands in the line.
"""

from __future__ import annotations

import re
from dataclasses import dataclass
from difflib import SequenceMatcher
from typing import Any

from tagger.messages import Message, pressure
from tagger.spec import Hose
from tagger.trade import given
from tagger.trade import rows as row
from tagger.trade.rating import hose_rating
from tagger.trade.row_checks import SLIP_BAR
from tagger.trade.tables import Tables, compact_name

PRINTED = "printed on the hose"
NEAREST = 3
ALIKE = 0.7  # of their letters: a name less like it is not proposed
LONGEST = 6  # words of a standard's name
_PSI, _MPA = 0.0689476, 10.0
_PRESSURE = re.compile(r"(?<![\d.])(\d+(?:\.\d+)?)\s*(BAR|MPA|PSI)\b")
_OTHER_PRESSURE = re.compile(r"(?:BURST|PROOF|TEST|\bB\.?P\.?|\bT\.?P\.?)[^0-9|/]{0,14}$")
_INCHES = re.compile(r"(?<![\d/.])(?:(\d)\s+)?(\d{1,2})/(2|4|8|16)(?![\d/])\s*(?:\"|''|INCH|IN\b)?")
_METRIC = re.compile(r"\bDN\s*-?\s*(\d+(?:\.\d)?)\b|(?<![\d.])(\d+(?:\.\d)?)\s*MM\b")
_DEGREES = r"(?!\s*(?:[°º]|DEG\b|[CF]\b|TO\b|\.\.|/\s*\+))"  # -40 °C, -40/+100 is no size
_DASH = re.compile(r"(?:\b(?:SIZE|DASH)\s*-?\s*|(?:^|[\s|/#])-)0?(\d{1,2})\b" + _DEGREES)
_DATE = re.compile(r"\b(?:[1-4]Q(?:\d{4}|\d{2})|\d{1,2}/\d{1,2}/\d{2,4}|\d{1,2}/(?!16\b)\d{2})\b(?!\s*\")")
_YEAR = re.compile(r"(?<=\d):\s*((?:19|20)\d\d)\b")
_WORD = re.compile(r"[A-Z0-9]+(?:\.\d+)?")
_FULL = re.compile(r"sae|100r|iso|en|\d{3}")
_TYPED = re.compile(r"((?:sae)?(?:j517)?(?:sae)?(?:100)?r\d+)(at|bt|a|b|s)")
_TYPES_18752 = "AS|AC|BS|BC|CS|CC|DC"
_TYPE_LAST = re.compile(rf"(?<=18752)(?:{_TYPES_18752})$", re.IGNORECASE)


@dataclass(frozen=True)
class LayLine:
    """What a line says. ``named``: hoses that are no hydraulic ones of the tables.

    ``dn`` is the nominal bore in mm as it is printed; ``edition`` the type letters or the year of the standard;
    ``nearest`` are standards of nearly that name, where none was read. ``offered``: the printed pressure may be
    used as the hose manufacturer's; ``notes`` say why it may not, or what else is doubtful.
    """

    standards: tuple[str, ...] = ()
    named: tuple[str, ...] = ()
    dash: int | None = None
    dn: float | None = None
    edition: str | None = None
    printed_bar: float | None = None
    date_code: str | None = None
    nearest: tuple[str, ...] = ()
    notes: tuple[Message, ...] = ()
    offered: bool = False


def read(text: str, tables: Tables) -> LayLine:
    """Reads a lay line, printed, scanned or typed; a standard's name alone is one too."""
    line = re.sub(r"(?<=\d),(?=\d)", ".", text.upper().replace("–", "-").replace(" ", " "))
    pressures, line = _pressures(line)
    year, line = _taken(_YEAR, line)
    code, line = _taken(_DATE, line)
    standards, letters, rest = _standards(line, pressures, tables)
    named = tuple(dict.fromkeys(other.names for other in others(line, tables)))
    if not standards and not named:
        standards, letters, rest = _standards(line, pressures, tables, short=True)
    dash, dn, notes = _size(rest, standards, tables)
    if len({round(p) for p in pressures}) > 1:
        notes = (*notes, Message("trade-layline-pressures"))
    jets, printed = jetting(named, tables), min(pressures, default=None)
    doubt = _doubt(printed, standards, dash, tables)
    return LayLine(
        standards=standards,
        named=named,
        dash=dash,
        dn=dn,
        edition=letters or year,
        printed_bar=printed,
        date_code=code,
        nearest=() if standards or named else nearest(line, tables),
        notes=(*notes, *jets, *doubt),
        offered=printed is not None and bool(standards or named) and not (jets or doubt),
    )


def hose_of(line: LayLine, tables: Tables) -> dict[str, Any] | None:
    """The hose of a spec that the line says, with the printed pressure as its manufacturer's figure.

    Of two standards the one whose rating the printed pressure needs; without one the lower of the two. A printed
    pressure that no hose can have is left out.
    None where the line names no standard of the tables, or no size, or a water-jetting hose.
    """
    if not line.standards or line.dash is None or jetting(line.named, tables):
        return None
    standard = _standard_for(line, line.dash, tables)
    known = {item.edition for item in tables.editions.get(standard, ())}
    hose: dict[str, Any] = {"standard": standard, "dash": line.dash}
    if line.edition in known:
        hose["edition"] = line.edition
    if line.printed_bar is not None and line.printed_bar <= SLIP_BAR:
        hose["rating"] = {"value_bar": line.printed_bar, "source": PRINTED}
    return hose


def jetting(named: tuple[str, ...], tables: Tables) -> tuple[Message, ...]:
    """That a hose is for water jetting: its rating is none for hydraulics, whatever else is printed on it."""
    jets = {r.names for r in tables.other_hoses if r.carries == "jetting"}
    return tuple(Message("trade-jetting-hose", standard=name) for name in named if name in jets)


def _doubt(
    printed: float | None, standards: tuple[str, ...], dash: int | None, tables: Tables
) -> tuple[Message, ...]:
    """Why a printed pressure is likely to be in another unit, or of another hose."""
    if printed is None or not standards:
        return ()
    if printed > SLIP_BAR:
        limit = pressure(SLIP_BAR)
        return (Message("trade-layline-pressure-impossible", pressure=pressure(printed), limit=limit),)
    highest = max(filter(None, (_highest(s, dash, tables) for s in standards)), default=None)
    if highest is None or printed <= highest * 1.003:
        return ()
    said = Message(
        "trade-layline-pressure-above",
        pressure=pressure(printed),
        standards=standards,
        highest=pressure(highest),
    )
    return (said,)


def _highest(standard: str, dash: int | None, tables: Tables) -> float | None:
    """The highest rating in bar of the standard in that size; in any, where no source rates the size."""
    hose = Hose(standard=standard, dash=dash or 1)
    return given.highest_published_of_hose(hose, tables) or given.highest_of_hose(hose, tables)


def nearest(text: str, tables: Tables) -> tuple[str, ...]:
    """The standards whose names are most like what was written, best first; at most three."""
    words = _WORD.findall(text.upper())[: 2 * LONGEST]
    spans = {
        compact_name("".join(words[n : n + size]))
        for n in range(len(words))
        for size in range(1, LONGEST + 1)
    }
    spans = {span for span in spans if re.search("[a-z]", span) and re.search(r"\d", span)}
    found: dict[str, float] = {}
    for spelling, standard in tables.spellings.items():
        if len(spelling) < 3:
            continue
        matcher = SequenceMatcher(b=spelling)
        for span in spans:
            if abs(len(span) - len(spelling)) > 2:
                continue
            matcher.set_seq1(span)
            found[standard] = max(found.get(standard, 0.0), matcher.ratio())
    best = sorted((s for s in found if found[s] >= ALIKE), key=lambda s: -found[s])
    return tuple(best[:NEAREST])


def without_class(text: str, tables: Tables) -> tuple[str, ...]:
    """The standards whose names begin with what was written, where those are many: "ISO 18752 CS" lacks its class."""
    written = _TYPE_LAST.sub("", compact_name(text))
    found = tuple(name for name in tables.standards if compact_name(name).startswith(written))
    return found if len(written) > 4 and len(found) > NEAREST else ()


def _standard_for(line: LayLine, dash: int, tables: Tables) -> str:
    rated = {s: hose_rating(Hose(standard=s, dash=dash), tables)[0].value_bar for s in line.standards}
    known = {s: value for s, value in rated.items() if value is not None}
    if not known:
        return line.standards[0]
    enough = {s: v for s, v in known.items() if line.printed_bar is not None and v >= line.printed_bar - 0.5}
    if enough or line.printed_bar is None:
        return min(enough or known, key=lambda s: (enough or known)[s])
    return max(known, key=lambda s: known[s])


def _pressures(line: str) -> tuple[list[float], str]:
    """The working pressures printed, in bar, and the line without any pressure."""
    found = []
    for match in _PRESSURE.finditer(line):
        if _OTHER_PRESSURE.search(line[: match.start()]):
            continue
        unit = {"BAR": 1.0, "MPA": _MPA, "PSI": _PSI}[match[2]]
        found.append(round(float(match[1]) * unit, 1))
    return found, _PRESSURE.sub(" | ", line)


def _taken(pattern: re.Pattern[str], line: str) -> tuple[str | None, str]:
    """The first thing of a kind, and the line without those."""
    found = pattern.search(line)
    return (found[found.lastindex or 0] if found else None), pattern.sub(" ", line)


def _standards(
    line: str, pressures: list[float], tables: Tables, *, short: bool = False
) -> tuple[tuple[str, ...], str | None, str]:
    """The standards named, the type letters printed with one, and the line without those names."""
    words = list(_WORD.finditer(line))
    found: list[str] = []
    letters: str | None = None
    rest, n = line, 0
    while n < len(words):
        for count in range(min(LONGEST, len(words) - n), 0, -1):
            span = words[n : n + count]
            name = compact_name("".join(word[0] for word in span))
            standard, typed = _named_so(name, tables, span, line, short)
            if standard is None:
                continue
            if standard not in found:
                found.append(standard)
            letters = letters or typed
            start, end = span[0].start(), span[-1].end()
            rest = rest[:start] + "#" * (end - start) + rest[end:]
            n += count - 1
            break
        n += 1
    standard, rest = _iso_18752(rest, pressures, tables)
    return tuple(dict.fromkeys([*found, *([standard] if standard else [])])), letters, rest


def _named_so(
    name: str, tables: Tables, span: list[re.Match[str]], line: str, short: bool
) -> tuple[str | None, str | None]:
    """The standard of that name and the type letters in it; a short name only where it stands by itself."""
    if "18752" in name:
        return None, None  # its class is read with the printed pressure
    typed = _TYPED.fullmatch(name)
    standard = tables.spellings.get(name) or (tables.spellings.get(typed[1]) if typed else None)
    if standard is None:
        return None, None
    full = bool(_FULL.search(name))
    before, after = line[: span[0].start()][-1:], line[span[-1].end() :][:1]
    by_itself = before != "-" and (after != "-" or line[span[-1].end() + 1 :][:1].isdigit())
    if full != (not short) or (not full and not by_itself):
        return None, None
    letters = typed[2].upper() if typed else None
    known = {item.edition for item in tables.editions.get(standard, ())}
    return standard, letters if letters in known else None


def _iso_18752(line: str, pressures: list[float], tables: Tables) -> tuple[str | None, str]:
    """The class of an ISO 18752 hose, and the line without it. A class is printed in bar or in MPa: the printed
    pressure tells which; without one it is taken for bar, the lower."""
    name = re.search(r"(?:\bISO\s*)?18752", line)
    if name is None:
        return None, line
    classes = {s.rsplit(" ", 1)[1]: s for s in tables.standards if s.startswith("ISO 18752 ")}
    after = name.end()
    for word in list(re.finditer(rf"(?:{_TYPES_18752})?(\d{{2,3}})\b", line[after : after + 24])):
        bar, as_mpa = word[1], f"{float(word[1]) * _MPA:.0f}"
        meant = as_mpa if any(abs(float(as_mpa) - p) < 1 for p in pressures) else bar
        found = classes.get(meant) or classes.get(as_mpa)
        if found:
            return found, line[: name.start()] + "#" + line[after + word.end() :]
    return None, line


def others(text: str, tables: Tables) -> tuple[row.OtherHose, ...]:
    """The hoses named in a text that are no hydraulic ones: air brake, fuel, gas, steam and the like."""
    compact = compact_name(text)
    found = [r for r in tables.other_hoses if r.mark in compact]
    return tuple(r for r in found if not any(r.mark != o.mark and r.mark in o.mark for o in found))


def _size(
    rest: str, standards: tuple[str, ...], tables: Tables
) -> tuple[int | None, float | None, tuple[Message, ...]]:
    """Dash and nominal bore, whichever is printed and the one that follows from it; neither where they differ."""
    tube = any(tables.names_tube(Hose(standard=s, dash=1)) for s in standards)
    dashes = [int(match[1]) for match in _DASH.finditer(rest)]
    by_bore = {r.printed: r for r in tables.lay_line_sizes}
    bores = [by_bore[b] for b in _bores(rest) if b in by_bore]
    inches = [] if tube else [_sixteenths(m) for m in _INCHES.finditer(rest)]
    meant = {*dashes, *([] if tube else [b.dash for b in bores]), *inches}
    if len(meant) > 1:
        sizes = tuple(f"-{one}" for one in sorted(meant))
        return None, None, (Message("trade-layline-sizes", sizes=sizes),)
    dash = next(iter(meant), None)
    if tube:
        bore = tables.bores.get(("tube", dash or 0))
        return dash, bore.bore_mm if bore else None, ()
    dn = bores[0].nominal_mm if bores else None
    if dash is not None and dn is None and standards:
        dn = next((r.nominal_mm for r in tables.lay_line_sizes if r.dash == dash), None)
    return dash, dn, ()


def _bores(rest: str) -> list[str]:
    """Bores in mm: after DN, before mm, or alone in a field of the line. A whole number behind a standard
    may be a dash as well as a bore, and is neither."""
    found = [first or second for first, second in _METRIC.findall(rest)]
    if not found:
        fields = [field.strip() for field in re.split(r"[|/]", rest)]
        found = [field for field in fields if re.fullmatch(r"\d{1,2}(?:\.\d)?", field)]
        found += re.findall(r"#\s+(\d{1,2}\.\d)(?![\d.])", rest)
    return [f"{float(one):g}" for one in found]


def _sixteenths(match: re.Match[str]) -> int:
    whole, above, below = int(match[1] or 0), int(match[2]), int(match[3])
    return whole * 16 + above * 16 // below
