"""What a tag takes on its way to a network printer as dots: laid out, proved, drawn, packed and sent.

``python -m tests.speed.ipp`` sends different tags in one job to a real IPP endpoint, CUPS's ``ippeveprinter``,
which keeps what it was given, and takes each step by itself beside it: milliseconds of this process's processor
and of the clock.
"""

from __future__ import annotations

import argparse
import tempfile
import time
from collections.abc import Callable, Iterator
from dataclasses import dataclass, field
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
from tests.speed.table import Row

T = TypeVar("T")


@dataclass
class Steps:
    """What each step took of a tag: ms of the processor, and by the clock."""

    count: int
    took: dict[str, tuple[float, float]] = field(default_factory=dict)

    def time(self, what: str, work: Callable[[], T]) -> T:
        """What the work answers, its time noted."""
        clock, processor = time.perf_counter(), time.process_time()
        answer = work()
        spent = time.process_time() - processor, time.perf_counter() - clock
        self.took[what] = (1e3 * spent[0] / self.count, 1e3 * spent[1] / self.count)
        return answer


def prove_all(given: list[Tag], pages: list[Page]) -> None:
    for tag, page in zip(given, pages, strict=True):
        prove(tag, page)


def measure(count: int, dpi: int) -> tuple[Steps, float]:
    """The steps of so many tags in one job, and the kB that the printer kept of each."""
    label, steps = template.load("hang_tag"), Steps(count)
    given = list(tags(count + 20))
    for tag in given[count:]:
        prove(tag, lay_out(tag, label, dpi))
    given = given[:count]
    with tempfile.TemporaryDirectory() as name, serving(Path(name) / "spool", PWG) as endpoint:
        pages = steps.time("laid out", lambda: [lay_out(tag, label, dpi) for tag in given])
        steps.time("proved", lambda: prove_all(given, pages))
        drawn = steps.time("drawn", lambda: [draw(page.drawing, dpi) for page in pages])
        packed = steps.time("packed", lambda: b"".join(pwg.stream(drawn, dpi)))
        steps.time("sent", lambda: client.print_job(endpoint.uri, packed, PWG, name="alone"))
        steps.time("the whole job", lambda: printer_at(endpoint.uri).send(given, label, dpi=dpi))
        sizes = [file.stat().st_size for file in endpoint.received()]
    return steps, sizes[-1] / count / 1000


def rows(small: bool) -> Iterator[Row]:
    """For the table of all benchmarks: the whole job beside what the wire alone takes of it."""
    count = 40 if small else 400
    steps, _ = measure(count, 300)
    (processor, clock), (_, wire) = steps.took["the whole job"], steps.took["sent"]
    yield Row(f"{count} tags to a network printer as dots", processor, "ms a tag")
    yield Row("the same by the clock, beside sending alone", clock, "ms a tag", clock / wire)


def main() -> None:
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--count", type=int, default=400)
    parser.add_argument("--dpi", type=int, default=300, help="the endpoint takes 300 and 600")
    asked = parser.parse_args()
    steps, kilobytes = measure(asked.count, asked.dpi)
    print("| step | ms of the processor a tag | ms by the clock |\n|---|---|---|")
    for what, (processor, clock) in steps.took.items():
        print(f"| {what} | {processor:.2f} | {clock:.2f} |")
    print(f"{asked.count} tags at {asked.dpi} dpi in one job; {kilobytes:.1f} kB a tag kept by the printer")


if __name__ == "__main__":
    main()
