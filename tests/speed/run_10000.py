"""Speed of ``tagger run``, whole, as ratios in one run on one machine.

``python -m tests.speed.run_10000`` lists different hose assemblies, and has ``tagger run`` read, assess,
prove, register and write them, in a process of its own on one core. Beside it stands the plain script a user
would write for the same pages (``qrcode`` images pasted by ``reportlab``), which neither assesses, proves nor
registers, and is told where everything stands. Measured is the processor's time of a tag: what N tags take,
less what one takes, shared by N - 1. Then the whole run on all cores: time, bytes a tag and peak memory.
"""

from __future__ import annotations

import argparse
import io
import json
import os
import resource
import subprocess
import sys
import tempfile
import time
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from pathlib import Path

import barcode
import qrcode
from barcode.writer import ImageWriter
from reportlab.lib.utils import ImageReader
from reportlab.pdfbase import pdfmetrics
from reportlab.pdfbase.ttfonts import TTFont
from reportlab.pdfgen.canvas import Canvas

from tagger.drawing import Circle, Grid, Line, Shape, Text
from tagger.printing import template
from tagger.printing.content import Tag
from tagger.printing.fonts import FILES
from tagger.printing.layout import Page, lay_out
from tagger.printing.pdf.operators import POINTS_PER_MM
from tests.speed.samples import ADDRESS, tags, write_list
from tests.speed.table import Row

TEMPLATE = "hang_tag"
WANTED = {400: 4, 1_000: 4, 10_000: 6}  # times as fast as the plain script


@dataclass(frozen=True)
class Taken:
    """What one run took: seconds of processor and of the clock, bytes of the file, peak memory in MB."""

    cpu: float
    clock: float
    size: int
    own_mb: float


@dataclass(frozen=True)
class Compared:
    """A run of ``count`` tags beside the plain script: ms of processor and bytes a tag.

    The script's: before the run, after it.
    """

    count: int
    taken: Taken
    cpu: float
    size: float
    script: tuple[float, float]
    script_size: float

    @property
    def times(self) -> float:
        """How many times as fast as the script, by the mean of its two times."""
        return sum(self.script) / 2 / self.cpu


def plain(sample: list[Tag], pages: list[Page]) -> tuple[float, int]:
    """The same content the usual way: images pasted, strings and lines drawn one by one.

    Where everything stands is given to it ready; it fits no text and sizes no symbol.
    """
    for bold, file in FILES.items():
        pdfmetrics.registerFont(TTFont(f"plain-{bold}", str(file)))
    out, start = io.BytesIO(), time.process_time()
    canvas = Canvas(out, pageCompression=1)
    for tag, page in zip(sample, pages, strict=True):
        _plain_page(canvas, tag, page)
    canvas.save()
    return time.process_time() - start, len(out.getvalue())


def _plain_page(canvas: Canvas, tag: Tag, page: Page) -> None:
    height = page.drawing.height
    canvas.setPageSize((page.drawing.width * POINTS_PER_MM, height * POINTS_PER_MM))
    canvas.scale(POINTS_PER_MM, POINTS_PER_MM)
    code = qrcode.QRCode(error_correction=qrcode.ERROR_CORRECT_H)
    code.add_data(tag.link)
    symbol = ImageReader(code.make_image().get_image().convert("RGB"))
    bars = barcode.Code128(tag.number, writer=ImageWriter()).render({"write_text": False})
    for placed in page.symbols:
        side = placed.symbol.full_size * placed.module_mm
        quiet = placed.symbol.quiet * placed.module_mm
        if placed.symbol.kind == "qr":
            canvas.drawImage(symbol, placed.x - quiet, height - placed.y + quiet - side, side, side)
        else:
            canvas.drawImage(ImageReader(bars), placed.x - quiet, height - placed.y - 8, side, 8)
    for item in page.drawing.items:
        _plain_item(canvas, item, height)
    canvas.showPage()


def _plain_item(canvas: Canvas, item: Line | Shape | Circle | Text | Grid, height: float) -> None:
    if isinstance(item, Text):
        canvas.setFillGray(0 if item.ink == "black" else 1)
        canvas.setFont(f"plain-{item.bold}", item.size)
        draw = {"start": canvas.drawString, "middle": canvas.drawCentredString, "end": canvas.drawRightString}
        draw[item.anchor](item.x, height - item.y, item.text)
    elif isinstance(item, Line):
        canvas.setLineWidth(item.width)
        canvas.setDash([item.dash] if item.dash else [])
        canvas.line(item.x1, height - item.y1, item.x2, height - item.y2)
    elif isinstance(item, Shape):
        canvas.setLineWidth(item.width)
        path = canvas.beginPath()
        path.moveTo(item.points[0][0], height - item.points[0][1])
        for x, y in item.points[1:]:
            path.lineTo(x, height - y)
        if item.closed:
            path.close()
        canvas.setFillGray(1 if item.fill == "white" else 0)
        canvas.drawPath(path, stroke=int(item.width > 0), fill=int(item.fill is not None))
    elif isinstance(item, Circle):
        canvas.setLineWidth(item.width)
        canvas.circle(
            item.x, height - item.y, item.radius, stroke=int(item.width > 0), fill=int(item.fill is not None)
        )


def run(count: int, *, cores: int) -> Taken:
    """``tagger run`` of ``count`` different assemblies, with a database of its own, on so many cores."""
    with tempfile.TemporaryDirectory() as name:
        folder = Path(name)
        write_list(folder / "list.csv", count)
        own = {key: value for key, value in os.environ.items() if not key.startswith("TAGGER_")}
        own |= {"TAGGER_DATABASE_URL": f"sqlite:///{folder}/tags.sqlite3", "TAGGER_BASE_URL": ADDRESS}
        pinned = ["taskset", "-c", ",".join(map(str, sorted(os.sched_getaffinity(0))[:cores]))]
        command = [sys.executable, "-m", "tagger.cli", "run", "list.csv", "--out", "run.pdf", "--json"]
        start = time.perf_counter()
        process = subprocess.Popen([*pinned, *command], cwd=folder, env=own, stdout=subprocess.PIPE)
        assert process.stdout is not None
        answer = process.stdout.read()
        _, status, used = os.wait4(process.pid, 0)
        clock = time.perf_counter() - start
        assert status == 0
        assert len(json.loads(answer)["numbers"]) == count
        size = (folder / "run.pdf").stat().st_size
    return Taken(used.ru_utime + used.ru_stime, clock, size, used.ru_maxrss / 1024)


def each(many: Taken, one: Taken, count: int) -> tuple[float, float]:
    """Milliseconds of processor and bytes that each tag takes beside the first."""
    return 1e3 * (many.cpu - one.cpu) / (count - 1), (many.size - one.size) / (count - 1)


def plain_each(count: int) -> tuple[float, float]:
    """The same of the plain script, on the core that ``run`` has: where others work too, cores are not alike."""
    cores = os.sched_getaffinity(0)
    os.sched_setaffinity(0, sorted(cores)[:1])
    try:
        return _plain_each(count)
    finally:
        os.sched_setaffinity(0, cores)


def _plain_each(count: int) -> tuple[float, float]:
    sample = list(tags(count))
    pages = [lay_out(tag, template.load(TEMPLATE)) for tag in sample]
    plain(sample[:5], pages[:5])
    seconds, size = plain(sample, pages)
    first, least = plain(sample[:1], pages[:1])
    return 1e3 * (seconds - first) / (count - 1), (size - least) / (count - 1)


def compared(counts: Sequence[int], plain_count: int, one: Taken) -> Iterator[Compared]:
    """Runs of so many tags on one core, and the plain script between them."""
    before, _ = plain_each(plain_count)
    for count in counts:
        taken = run(count, cores=1)
        after, script_size = plain_each(plain_count)
        yield Compared(count, taken, *each(taken, one, count), (before, after), script_size)
        before = after


def rows(small: bool) -> Iterator[Row]:
    """For the table of all benchmarks."""
    counts = [40, 100] if small else sorted(WANTED)
    found = list(compared(counts, 40 if small else 300, run(1, cores=1)))
    for one in found:
        goal = f">= {WANTED[one.count]}" if one.count in WANTED else ">="
        yield Row(
            f"tagger run, {one.count} tags, beside the plain script", one.cpu, "ms a tag", one.times, goal
        )
    yield Row("PDF of tagger run", found[-1].size / 1e3, "kB a tag", goal="<= 2.0")
    first, last = found[-2].taken.own_mb, found[-1].taken.own_mb
    yield Row(f"peak memory of tagger run, {counts[-1]} beside {counts[-2]} tags", last, "MB", last / first)


def main() -> None:
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument(
        "--counts", type=int, nargs="+", default=[400, 1_000, 10_000], help="tags of each run"
    )
    parser.add_argument("--plain", type=int, default=300, help="tags of the plain script, before and after")
    asked = parser.parse_args()
    one = run(1, cores=1)
    print(f"template {TEMPLATE}, every tag different, one core; the first tag takes {one.cpu:.1f} s")
    for found in compared(asked.counts, asked.plain, one):
        wanted = f" (wanted: at least {WANTED[found.count]})" if found.count in WANTED else ""
        before, after = found.script
        print(
            f"  run of {found.count:6} {found.cpu:6.2f} ms a tag, plain script {(before + after) / 2:.2f} "
            f"({before:.2f} before, {after:.2f} after): {found.times:.1f} times as fast{wanted}, {found.size:.0f} and "
            f"{found.script_size:.0f} bytes a tag, peak memory {found.taken.own_mb:.0f} MB",
            flush=True,
        )
    cores = len(os.sched_getaffinity(0))
    if cores > 1:
        count = max(asked.counts)
        taken = run(count, cores=cores)
        workers = resource.getrusage(resource.RUSAGE_CHILDREN).ru_maxrss / 1024
        print(
            f"  {count} tags on {cores} cores: {taken.clock:.0f} s by the clock; the largest process has "
            f"{max(workers, taken.own_mb):.0f} MB"
        )


if __name__ == "__main__":
    main()
