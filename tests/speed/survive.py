"""The survival bench: what a printed tag stands, read by three independent readers.

``python -m tests.speed.survive`` prints the tables; ``--write`` puts them into
label_templates/README.md and draws the hang tag's as label_templates/survival.png. Whole labels go into
label_templates/survival.csv, and the README tells all that stands there (``--tell``: without measuring).
"Read" means: by at least two of the three readers. The same seed gives the same trials.
"""

from __future__ import annotations

import argparse
import csv
import math
import sys
from collections.abc import Callable, Iterable, Iterator
from dataclasses import dataclass
from datetime import date
from pathlib import Path

import numpy as np
from PIL import Image, ImageDraw, ImageFont

from tagger.code.symbol import Symbol, codeword_blocks, codeword_of_module, qr
from tagger.printing import around, layout, raster, survival, template
from tagger.printing.boxes import Placed
from tagger.printing.content import Tag
from tagger.printing.curvature import distance_mm, widest_mm
from tagger.printing.fonts import FILES
from tagger.printing.grade import grades
from tagger.printing.layout import Page
from tagger.printing.readers import grey, qr_readers
from tagger.printing.sample import sample
from tagger.printing.sizing import qr_size
from tests.speed import damage, wounds
from tests.speed.damage import Chance, Picture, Shot
from tests.speed.samples import signed, two_elbows
from tests.speed.seen import Seen, bars, seen
from tests.speed.table import Row

README = Path(__file__).parents[2] / "label_templates" / "README.md"
PICTURE = README.with_name("survival.png")
SURVIVAL = README.with_name("survival.csv")
READERS = qr_readers(frames=1)
Blow = Callable[[Shot, Chance], Shot]
RECOVERS = {"L": 0.07, "M": 0.15, "Q": 0.25, "H": 0.30}  # share of codewords, ISO/IEC 18004

BLOWS: dict[str, Blow] = {
    "blobs, 5 %": lambda shot, chance: damage.blobs(shot, chance, 0.05),
    "blobs, 10 %": lambda shot, chance: damage.blobs(shot, chance, 0.10),
    "one stain, 10 %": lambda shot, chance: damage.stain(shot, chance, 0.10),
}


@dataclass(frozen=True)
class Table:
    title: str
    head: tuple[str, ...]
    rows: tuple[tuple[str, ...], ...]
    note: str = ""

    def markdown(self) -> str:
        lines = ["| " + " | ".join(row) + " |" for row in (self.head, ("---",) * len(self.head), *self.rows)]
        return f"**{self.title}**\n\n" + "\n".join(lines) + (f"\n\n{self.note}" if self.note else "")


def reads(picture: Picture, text: str) -> int:
    """How many of the readers read it."""
    return sum(text in read(picture) for read in READERS.values())


def share(trials: Iterable[bool]) -> str:
    results = list(trials)
    return f"{100 * sum(results) / len(results):.1f} %".replace(".0 %", " %")


def on_label(
    name: str, dpi: int, folders: tuple[str, ...] = (), tag: Tag | None = None
) -> tuple[Picture, Page, list[Placed], str]:
    """A label's dots, its page, its QR symbols from the largest module down, and the text."""
    tag = tag or two_elbows()
    page = layout.lay_out(tag, template.load(name, folders), dpi)
    codes = [placed for placed in page.symbols if placed.symbol.kind == "qr"]
    codes.sort(key=lambda placed: -placed.module_mm)
    return grey(raster.draw(page.drawing, dpi)), page, codes, tag.link


def acceptance(trials: int) -> Table:
    """The hang tag as it is printed, symbol by symbol and as a whole."""
    dots, page, codes, text = on_label("hang_tag", 203)
    first, second = (damage.aim(dots, page, placed) for placed in codes)
    rows = []
    for name in ("blobs, 5 %", "blobs, 10 %", "one stain, 10 %"):
        blow, chance = BLOWS[name], np.random.default_rng(1)
        results = []
        for _ in range(trials):
            ones = [damage.camera(blow(shot, chance), chance) for shot in (first, second)]
            read = [{key for key, reader in READERS.items() if text in reader(one)} for one in ones]
            limit = _restorable(blow(first, chance), codes[0].symbol)
            results.append((len(read[0]) >= 2, len(read[1]) >= 2, len(read[0] | read[1]) >= 2, limit))
        rows.append((name, *(share(column) for column in zip(*results, strict=True))))
    sizes = [f"{p.symbol.level}, version {p.symbol.version}, {p.dots} dots" for p in codes]
    head = (
        "hit",
        f"large symbol ({sizes[0]})",
        f"small symbol ({sizes[1]})",
        "the tag: either",
        "restorable",
    )
    note = (
        "Both symbols are wounded alike and apart. *Restorable*: share of other such wounds of the large symbol "
        "that error correction can restore at all, whoever reads."
    )
    return Table(f"Hang tag at 203 dpi, {trials} trials a row, read by two of three", head, tuple(rows), note)


def _restorable(shot: Shot, symbol: Symbol) -> bool:
    """Whether the wrong codewords stay within what every block restores."""
    size, side = symbol.size, shot.module
    centres = (np.arange(size) + 0.5) * side
    rows = np.round(shot.top + centres).astype(int)
    columns = np.round(shot.left + centres).astype(int)
    around = range(-1, 2)
    seen = np.mean([shot.picture[np.ix_(rows + dy, columns + dx)] for dy in around for dx in around], axis=0)
    wrong = (seen < (damage.PAPER + damage.INK) / 2) != symbol.modules
    codewords = codeword_of_module(symbol.version)
    blocks, restores = codeword_blocks(symbol.version, symbol.level)
    hit = np.unique(codewords[wrong & (codewords >= 0)])
    return bool(np.all(np.bincount(blocks[hit[hit < len(blocks)]], minlength=len(restores)) <= restores))


def levels(trials: int) -> Table:
    """What the level and the version change: the same link, blobs of 5 and 10 %."""
    text = two_elbows().link
    rows = []
    for level, version in (("M", None), ("Q", None), ("H", None), ("H", 10), ("H", 12), ("H", 13)):
        symbol = qr(text, level, version=version)
        shot = _bare(symbol)
        row = [f"{level}, version {symbol.version}", f"{RECOVERS[level]:.0%}"]
        for hit in (0.05, 0.10):
            chance = np.random.default_rng(2)
            wounded = [damage.blobs(shot, chance, hit) for _ in range(trials)]
            row.append(share(reads(damage.camera(one, chance), text) >= 2 for one in wounded))
            row.append(share(_restorable(one, symbol) for one in wounded))
        rows.append(tuple(row))
    head = ("symbol", "restores", "blobs 5 %: read", "restorable", "blobs 10 %: read", "restorable")
    return Table(f"Level and version, {trials} trials a cell", head, tuple(rows))


def _bare(symbol: Symbol, pixels: int = 6) -> Shot:
    margin = symbol.size // 3
    dark = np.pad(symbol.modules, margin)
    levels = np.where(dark, damage.INK, damage.PAPER).astype(np.uint8)
    picture = np.kron(levels, np.ones((pixels, pixels), dtype=np.uint8))
    return Shot(picture, margin * pixels, margin * pixels, symbol.size * pixels, symbol.size)


def whole(
    trials: int, folders: tuple[str, ...] = (), names: tuple[str, ...] = (), tag: Tag | None = None
) -> Table:
    """Whole labels, wounded: the share from which the specification is had, beside a plain symbol alone."""
    rows = []
    done: dict[bytes, tuple[str, ...]] = {}
    for name in names or template.names(folders):
        one = template.load(name, folders)
        if one.traveller:  # paper that stays in the shop
            continue
        label = seen(tag or sample(), one, survival.DPI)
        if label.dots not in done:
            cells, alone = [], []
            for wound in wounds.WOUNDS.values():
                results = [
                    (_read(label, wound, trial), _read(label, wound, trial, plain=True))
                    for trial in range(trials)
                ]
                cells.append(share(full for full, _ in results))
                alone += [bare for _, bare in results]
            every = sum(float(cell.removesuffix(" %")) for cell in cells) / len(cells)
            done[label.dots] = (*cells, f"{every:.0f} %", share(alone))
        rows.append((name, *(cell.removesuffix(" %") for cell in done[label.dots])))
        print(".", end="", file=sys.stderr, flush=True)
    head = ("template", *wounds.WOUNDS, "all", "plain H alone, all")
    note = (
        "*Read*: a symbol by two of three readers; or the number from its Code 128, by both readers that know "
        "it, with the record. *Plain H alone*: the same label with nothing but a symbol as `qrcode` makes it, level "
        "H, as large as the template's largest and in its place."
    )
    return Table(
        f"Whole labels at {survival.DPI} dpi, share read in %, {trials} trials a cell",
        head,
        tuple(rows),
        note,
    )


def _read(label: Seen, wound: wounds.Wound, trial: int, *, plain: bool = False) -> bool:
    """Whether the specification is had from the label with this wound; the same trial is the same wound."""
    chance = np.random.default_rng(trial)
    hurt = wound(label.plain if plain else label.whole, chance)
    return any(_had(picture, label.page) for picture in label.photos(hurt, chance))


def rows(small: bool) -> Iterator[Row]:
    """For the table of all benchmarks: of all wounds together, the share of whole labels that is read."""
    for name, *cells, _, _ in whole(1 if small else 10, names=("roll_4x2",) if small else ()).rows:
        read = sum(map(float, cells)) / len(cells)
        yield Row(f"damaged labels read: {name}", read, "%", read / 100, ">= 0.95")


def keep(table: Table, trials: int, *, signed: bool) -> None:
    """What ``whole`` measured, in label_templates/survival.csv: each layout's row is written anew, others stay."""
    kept = {(row["layout"], row["signed"]): row for row in survival.rows()}
    for name, *cells in table.rows:
        key = (survival.digest(template.load(name)), "yes" if signed else "no")
        measured = {"template": name, "measured_on": date.today().isoformat(), "trials": str(trials)}
        wounds_of = dict(zip(survival.WOUNDS, cells, strict=False))
        kept[key] = {**measured, "layout": key[0], "signed": key[1], **wounds_of}
    now = _layouts()
    rows = sorted(
        (row for key, row in kept.items() if key[0] in now), key=lambda row: (row["signed"], row["template"])
    )
    with SURVIVAL.open("w", encoding="utf-8", newline="") as out:
        writer = csv.DictWriter(out, survival.COLUMNS, lineterminator="\n")
        writer.writeheader()
        writer.writerows(rows)
    survival.rows.cache_clear()


def kept(*, signed: bool) -> Table:
    """The rows of label_templates/survival.csv; templates of one layout stand in one row."""
    layouts = _layouts()
    rows = tuple(
        (
            ", ".join(layouts[row["layout"]]),
            *(row[name] for name in ("measured_on", "trials", *survival.WOUNDS)),
        )
        for row in survival.rows()
        if row["signed"] == ("yes" if signed else "no")
    )
    head = ("template", "measured on", "trials", *wounds.WOUNDS, "all")
    whose = " of a shop that signs" if signed else ""
    return Table(f"Whole labels{whose} at {survival.DPI} dpi, share read in %, trials a wound", head, rows)


def _layouts() -> dict[str, list[str]]:
    """The templates by their layout."""
    found: dict[str, list[str]] = {}
    for name in template.names():
        found.setdefault(survival.digest(template.load(name)), []).append(name)
    return found


def _had(picture: Picture, page: Page) -> bool:
    """Whether the specification is had from this picture: see ``whole``."""
    texts = {placed.symbol.text for placed in page.symbols if placed.symbol.kind == "qr"}
    number = {placed.symbol.text for placed in page.symbols if placed.symbol.kind == "code128"}
    read = [bool(texts & READERS[name](picture)) for name in ("zxing-cpp", "zbar")]
    if all(read) or (any(read) and texts & READERS["OpenCV"](picture)):
        return True
    return bool(number & bars(picture))


def letters() -> Table:
    """The grade of every template's symbols: of the dots, and as printed and photographed."""
    rows = []
    for name in template.names():
        row = [name]
        for dpi in (203, 300, 600):
            dots, _, codes, _ = on_label(name, dpi)
            spread = np.kron(dots, np.ones((4, 4), dtype=np.uint8)) if dpi < 600 else dots
            for picture in (dots, damage.printed(spread, dpi * (4 if dpi < 600 else 1))):
                found = grades(picture)
                assert len(found) == len(codes), f"{name}: {len(found)} of {len(codes)} symbols read"
                row.append("".join(sorted({one.letter for one in found})))
        rows.append(tuple(row))
    head = ("template", "203 dpi: dots", "printed", "300 dpi: dots", "printed", "600 dpi: dots", "printed")
    return Table("Grade of every symbol, by template and resolution", head, tuple(rows))


def wraps(seeds: int) -> Table:
    """Wrapped on each dash size: the widest symbol by geometry and in simulation."""
    text = two_elbows().link
    chosen = qr_size(text, 23.0, ("H", "Q", "M"), 0.37, 203)
    assert chosen is not None
    rows = []
    for dash, od in hose_diameters():
        for level in (chosen.level, "M") if dash in (8, 16, 24) else (chosen.level,):
            symbol = qr(text, level)
            predicted = widest_mm(symbol.version, level, od)
            simulated = _simulated_widest(symbol, text, od, predicted, seeds)
            rows.append(
                (
                    f"-{dash}", f"{od:.1f}", f"{level}, version {symbol.version}",
                    f"{predicted:.1f}", f"{simulated:.1f}", f"{100 * (predicted / simulated - 1):+.0f} %",
                )
            )  # fmt: skip
            print(".", end="", file=sys.stderr, flush=True)
    head = ("dash", "hose OD, mm", "symbol", "predicted widest, mm", "simulated widest, mm", "difference")
    return Table("Wrapped round the hose, symbol facing a phone 150 mm or six sides away", head, tuple(rows))


def sides() -> Table:
    """Whole labels round a hose, from 48 sides: what the geometry says and what readers read in pictures.

    zxing-cpp and zbar, as in phones; OpenCV takes seconds over a picture of fifty codes and reads few.
    """
    rows = []
    readers = {name: read for name, read in READERS.items() if name != "OpenCV"}
    for name, diameters in (("thin_wrap", (21, 22, 25.2, 29.3, 40)), ("wrap_label", (40, 47.3, 53.7, 60))):
        label, (dots, page, codes, _) = template.load(name), on_label(name, 203)
        texts = {placed.symbol.text for placed in codes}
        for od in diameters:
            surface = damage.applied(dots, page.dpi, label, od)
            told = around.sides(codes, od, label)
            seen = [
                damage.from_side(surface, od, math.tau * k / 48, np.random.default_rng(k)) for k in range(48)
            ]
            read = [[bool(texts & reader(one)) for one in seen] for reader in readers.values()]
            said = [told.reads[round(7.5 * k) % around.TURN] for k in range(48)]
            some = [any(each) for each in zip(*read, strict=True)]
            wrong = sum(says and not reads for says, reads in zip(said, some, strict=True))
            gap = max((wide for _, wide in told.gaps), default=0)
            counts = [sum(said), sum(some), *map(sum, read), wrong]
            rows.append((name, f"{od:g}", *map(str, counts), f"{gap}°"))
            print(".", end="", file=sys.stderr, flush=True)
    head = (
        "template", "hose OD, mm", "sides by geometry", "sides read", *readers,
        "promised and not read", "gap at the end",
    )  # fmt: skip
    return Table("Whole labels round a hose, seen from 48 sides by a phone 150 mm away", head, tuple(rows))


def _simulated_widest(symbol: Symbol, text: str, od: float, predicted: float, seeds: int) -> float:
    """The side up to which two of three read: steps of 3 % from far inside to far outside."""
    start, step = 0.7, 0.03
    passed = 0.0
    for k in range(22):
        side = (start + step * (k + 0.5)) * predicted
        chances = [np.random.default_rng(100 * k + seed) for seed in range(seeds)]
        away = distance_mm(side)
        pictures = (damage.wrapped(symbol.modules, side, od, away, one) for one in chances)
        passed += float(np.mean([reads(picture, text) >= 2 for picture in pictures]))
    return (start + step * passed) * predicted


def hose_diameters() -> list[tuple[int, float]]:
    """Outside diameters of SAE 100R2 by dash, from the trade's tables."""
    from tagger.spec import AssemblySpec
    from tagger.trade import assess

    found = []
    for dash in (4, 6, 8, 10, 12, 16, 20, 24, 32):
        end = {"connection": "sae_37_flare", "dash": dash, "form": "female_swivel"}
        spec = {
            "hose": {"standard": "SAE 100R2", "dash": dash},
            "end_a": end,
            "end_b": end,
            "length_mm": 1000,
        }
        od = assess(AssemblySpec.read(spec)).hose_od_mm
        if od is not None:
            found.append((dash, od))
    return found


def draw(table: Table, file: Path) -> None:
    """The table as a picture."""
    font = {bold: ImageFont.truetype(str(FILES[bold]), 15) for bold in (False, True)}
    lines = [table.head, *table.rows]
    widths = [int(max(font[True].getlength(line[i]) for line in lines)) + 18 for i in range(len(table.head))]
    image = Image.new("L", (sum(widths) + 20, 26 * len(lines) + 50), 255)
    pen = ImageDraw.Draw(image)
    pen.text((10, 10), table.title, 0, font[True])
    for number, line in enumerate(lines):
        x, y = 10, 40 + 26 * number
        for cell, width in zip(line, widths, strict=True):
            if number and (value := _percent(cell)) is not None:
                pen.rectangle((x, y, x + width - 2, y + 24), fill=int(120 + 1.3 * value))
            pen.text((x + 6, y + 3), cell, 0, font[number == 0])
            x += width
    image.save(file, optimize=True)


def _percent(cell: str) -> float | None:
    text = cell.removesuffix(" %")
    return float(text) if text.replace(".", "", 1).isdigit() and cell.endswith("%") else None


def write(name: str, text: str) -> None:
    """Puts a table between its markers in the README."""
    start, end = f"<!-- {name} -->", f"<!-- /{name} -->"
    whole = README.read_text(encoding="utf-8")
    before, rest = whole.split(start, 1)
    _, after = rest.split(end, 1)
    README.write_text(f"{before}{start}\n{text}\n{end}{after}", encoding="utf-8")


def main() -> None:
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--trials", type=int, default=200, help="trials a row for the hang tag")
    parser.add_argument("--quick", action="store_true", help="a tenth of the trials")
    parser.add_argument("--only", choices=("grades", "hang_tag", "levels", "whole", "wrap", "sides"))
    parser.add_argument("--templates", nargs="*", default=(), metavar="DIR", help="whole labels of these too")
    parser.add_argument("--names", nargs="*", default=(), metavar="NAME", help="whole labels of these alone")
    parser.add_argument("--whole-trials", type=int, default=10, help="trials a wound of whole labels")
    parser.add_argument("--keep", action="store_true", help="whole labels into label_templates/survival.csv")
    parser.add_argument(
        "--tell", action="store_true", help="measure nothing: survival.csv into label_templates/README.md"
    )
    parser.add_argument("--write", action="store_true", help="put the tables into label_templates/README.md")
    parser.add_argument("--signed", action="store_true", help="whole labels of a shop that signs")
    asked = parser.parse_args()
    if asked.tell:
        for name, signs in (("whole", False), ("signed", True)):
            write(f"survival {name}", kept(signed=signs).markdown())
        return
    less = 10 if asked.quick else 1
    tables: dict[str, Callable[[], Table]] = {
        "grades": letters,
        "hang_tag": lambda: acceptance(max(10, asked.trials // less)),
        "levels": lambda: levels(max(10, asked.trials // less)),
        "whole": lambda: whole(
            max(2, asked.whole_trials // less),
            tuple(asked.templates),
            tuple(asked.names),
            signed(sample()) if asked.signed else None,
        ),
        "wrap": lambda: wraps(max(1, 4 // less)),
        "sides": sides,
    }
    for name, make in tables.items():
        if asked.only in (None, name):
            table = make()
            print("\n" + table.markdown(), flush=True)
            if name == "whole" and (asked.keep or asked.write):
                keep(table, max(2, asked.whole_trials // less), signed=asked.signed)
                name, table = ("signed" if asked.signed else "whole"), kept(signed=asked.signed)
            if asked.write:
                write(f"survival {name}", table.markdown())
                if name == "hang_tag":
                    draw(table, PICTURE)


if __name__ == "__main__":
    main()
