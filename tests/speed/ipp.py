"""What a tag takes on its way to a network printer as dots: laid out, proved, drawn, packed and sent.

``python -m tests.speed.ipp`` sends different tags in one job to a real IPP endpoint, CUPS's ``ippeveprinter``,
which keeps what it was given, and takes each step by itself beside it: milliseconds of this process's processor
and of the clock.
"""

from __future__ import annotations

import argparse
import tempfile
import time
from collections.abc import Callable
from pathlib import Path
from typing import TypeVar

from tagger.printing import template
from tagger.printing.content import Tag
from tagger.printing.ipp import client, pwg
from tagger.printing.ipp.printer import PWG
from tagger.printing.layout import Page, lay_out
from tagger.printing.painter import draw
from tagger.printing.printer import printer_at
from tagger.printing.proof import prove
from tests.printing.ipp.endpoint import serving
from tests.speed.samples import tags

T = TypeVar("T")


def took(what: str, count: int, work: Callable[[], T]) -> T:
    """What the work answers; a line of the table with what it took of each tag."""
    clock, processor = time.perf_counter(), time.process_time()
    answer = work()
    spent = time.process_time() - processor, time.perf_counter() - clock
    print(f"| {what} | {1e3 * spent[0] / count:.2f} | {1e3 * spent[1] / count:.2f} |")
    return answer


def prove_all(given: list[Tag], pages: list[Page]) -> None:
    for tag, page in zip(given, pages, strict=True):
        prove(tag, page)


def main() -> None:
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--count", type=int, default=400)
    parser.add_argument("--dpi", type=int, default=300, help="the endpoint takes 300 and 600")
    asked = parser.parse_args()
    count, dpi, label = asked.count, asked.dpi, template.load("hang_tag")
    given = list(tags(count + 20))
    for tag in given[count:]:
        prove(tag, lay_out(tag, label, dpi))
    given = given[:count]
    with tempfile.TemporaryDirectory() as name, serving(Path(name) / "spool", PWG) as endpoint:
        print("| step | ms of the processor a tag | ms by the clock |\n|---|---|---|")
        pages = took("laid out", count, lambda: [lay_out(tag, label, dpi) for tag in given])
        took("proved", count, lambda: prove_all(given, pages))
        drawn = took("drawn", count, lambda: [draw(page.drawing, dpi) for page in pages])
        packed = took("packed", count, lambda: b"".join(pwg.stream(drawn, dpi)))
        took("sent", count, lambda: client.print_job(endpoint.uri, packed, PWG, name="alone"))
        took("the whole job", count, lambda: printer_at(endpoint.uri).send(given, label, dpi=dpi))
        sizes = [file.stat().st_size for file in endpoint.received()]
    print(
        f"{count} tags at {dpi} dpi in one job; {sizes[-1] / count / 1000:.1f} kB a tag kept by the printer"
    )


if __name__ == "__main__":
    main()
