"""Speed of a long run, as ratios in one run on one machine.

``python -m tests.speed.run_10000`` compares, per core, our PDF of different tags with the plain
script a user would write for the same content (``qrcode`` images pasted by ``reportlab``), and with
the floor (one symbol with its mask given, and a page of the same drawing, nothing else); then it
writes 1,000 and 10,000 tags and prints time, bytes a tag and peak memory.
"""

from __future__ import annotations

import argparse
import io
import json
import multiprocessing
import resource
import subprocess
import sys
import tempfile
import time
import zlib
from pathlib import Path

import barcode
import qrcode
from barcode.writer import ImageWriter
from reportlab.lib.utils import ImageReader
from reportlab.pdfbase import pdfmetrics
from reportlab.pdfbase.ttfonts import TTFont
from reportlab.pdfgen.canvas import Canvas
from tqdm import tqdm

from tagger.code.symbol import qr
from tagger.drawing import Circle, Drawing, Grid, Line, Shape, Text
from tagger.printing import pdf, template
from tagger.printing.content import Tag
from tagger.printing.fonts import FILES
from tagger.printing.layout import Page, lay_out
from tagger.printing.pdf.file import StreamedDocument
from tagger.printing.pdf.fonts import FontCodes
from tagger.printing.pdf.operators import POINTS_PER_MM, page_code
from tests.speed.samples import tags

TEMPLATE = "hang_tag"


def ours(sample: list[Tag]) -> tuple[float, int]:
    """(seconds of one core, bytes) for the sample."""
    out, start = io.BytesIO(), time.process_time()
    pdf.write(sample, template.load(TEMPLATE), out, processes=1)
    return time.process_time() - start, len(out.getvalue())


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


def floor(sample: list[Tag], pages: list[Page]) -> float:
    """Seconds of one core for the least that can be: the symbol, and the page's own drawing."""
    drawings: list[Drawing] = [page.drawing for page in pages]
    versions = [max(p.symbol.version for p in page.symbols) for page in pages]
    start = time.process_time()
    label = template.load(TEMPLATE)
    document, fonts = StreamedDocument(io.BytesIO(), "floor", label.size), FontCodes()
    for tag, drawing, version in zip(sample, drawings, versions, strict=True):
        qr(tag.link, "H", version=version, mask=2)
        code = page_code([(drawing, 0.0, 0.0)], drawing.height, fonts)
        document.add_page(zlib.compress(code.encode("latin-1"), 6))
    document.use(fonts.used)
    document.close()
    return time.process_time() - start


def compare(count: int) -> None:
    sample = list(tags(count))
    label = template.load(TEMPLATE)
    for warm in (ours, lambda s: plain(s, [lay_out(t, label) for t in s])):
        warm(sample[:5])
    seconds, size = ours(sample)
    pages = [lay_out(tag, label) for tag in sample]
    plain_seconds, plain_size = plain(sample, pages)
    least = floor(sample, pages)
    print(f"one core, {count} different tags, template {TEMPLATE}")
    print(f"  ours        {1e3 * seconds / count:7.2f} ms a tag {size / count:9.0f} bytes a tag")
    print(f"  plain       {1e3 * plain_seconds / count:7.2f} ms a tag {plain_size / count:9.0f} bytes a tag")
    print(f"  floor       {1e3 * least / count:7.2f} ms a tag")
    print(
        f"  plain / ours: {plain_seconds / seconds:.1f} (wanted: at least 8)   ours / floor: {seconds / least:.2f}"
    )


def long_run(count: int, processes: int | None) -> None:
    """One run in a process of its own; prints what it took as JSON."""
    with tempfile.TemporaryDirectory() as folder:
        out = Path(folder) / "run.pdf"
        start = time.perf_counter()
        with tqdm(total=count, unit="tag", disable=not sys.stderr.isatty()) as bar:
            pdf.write(tags(count), template.load(TEMPLATE), out, progress=bar.update, processes=processes)
        took = time.perf_counter() - start
        size = out.stat().st_size
    own, workers = (
        resource.getrusage(who).ru_maxrss for who in (resource.RUSAGE_SELF, resource.RUSAGE_CHILDREN)
    )
    scale = 1024 if sys.platform != "darwin" else 1024 * 1024
    used = sum(sum(resource.getrusage(who)[:2]) for who in (resource.RUSAGE_SELF, resource.RUSAGE_CHILDREN))
    told = {"seconds": took, "cpu": used, "bytes": size, "own_mb": own / scale, "worker_mb": workers / scale}
    print(json.dumps(told))


def memory(counts: tuple[int, ...]) -> None:
    cores = multiprocessing.cpu_count()
    for processes in (1, cores):
        for count in counts:
            command = [
                sys.executable,
                "-m",
                "tests.speed.run_10000",
                "--long-run",
                str(count),
                str(processes),
            ]
            told = json.loads(subprocess.run(command, check=True, capture_output=True, text=True).stdout)
            worker = f", largest worker {told['worker_mb']:.0f} MB" if processes > 1 else ""
            print(
                f"{count:6} tags, {processes} process(es): {told['seconds']:6.1f} s ({told['cpu']:.1f} s of processor, "
                f"making the tags' payloads among it), "
                f"{told['bytes'] / count:.0f} bytes a tag, peak memory {told['own_mb']:.0f} MB{worker}"
            )


def main() -> None:
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--sample", type=int, default=300, help="tags in the comparison")
    parser.add_argument("--short", action="store_true", help="the comparison only")
    parser.add_argument(
        "--long-run", type=int, nargs=2, metavar=("TAGS", "PROCESSES"), help=argparse.SUPPRESS
    )
    asked = parser.parse_args()
    if asked.long_run:
        long_run(*asked.long_run)
        return
    compare(asked.sample)
    if not asked.short:
        memory((1_000, 10_000))


if __name__ == "__main__":
    main()
