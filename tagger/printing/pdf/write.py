"""Tags to one PDF file: streamed, in as many processes as pay."""

from __future__ import annotations

import multiprocessing
import os
import zlib
from collections import deque
from collections.abc import Callable, Iterable, Iterator
from concurrent.futures import Future, ProcessPoolExecutor
from contextlib import contextmanager
from dataclasses import dataclass
from itertools import islice
from pathlib import Path
from typing import BinaryIO

from tagger.errors import Problem, TemplateError
from tagger.messages import Message
from tagger.printing.content import Tag
from tagger.printing.kinds import Kinds
from tagger.printing.pdf.file import StreamedDocument
from tagger.printing.pdf.fonts import FontCodes
from tagger.printing.pdf.forms import Forms
from tagger.printing.pdf.operators import page_code
from tagger.printing.sheets import Slot, laid_out, page_size, sheets
from tagger.printing.template import Template
from tagger.printing.words import voices
from tagger.whole_files import whole

_CHUNK = 64  # tags handed to a process at a time
_PAYS_FROM = 1_500  # tags from which starting processes pays

Progress = Callable[[int], object]


@dataclass(frozen=True, slots=True)
class _Made:
    """Pages of one chunk: their deflated operators and those of the forms that they name, the tags on them, the letters they use."""

    pages: list[bytes]
    forms: dict[str, bytes]
    tags: int
    used: dict[bool, set[int]]
    kinds: Kinds


def write(
    tags: Iterable[Tag],
    template: Template,
    out: str | Path | BinaryIO,
    *,
    dpi: int = 203,
    start: int = 1,
    progress: Progress | None = None,
    processes: int | None = None,
    forced: bool = False,
    accept: Callable[[Kinds], object] | None = None,
) -> int:
    """Writes the tags as one PDF, one label a page or as the template's sheet says; how many pages.

    ``start`` is the first free label of a part-used sheet, counted from 1 row by row.
    ``progress`` is called with the number of tags written since the last call. ``processes``:
    None takes all cores for long runs. Memory stays flat: pages go to the file as they come.

    Every label is proved (``proof``; ``forced`` as there). ``accept`` is asked with the kinds of labels once
    all are written, before a file named by path takes its name. Where it raises, or a tag does not fit
    (TemplateError) or is not proved (SymbolError), no such file is left behind.
    """
    chunks = _chunks(sheets(tags, template, start), template)
    with _opened(out) as file:
        title = voices(template.languages)[0](template.named)
        document = StreamedDocument(file, title, page_size(template))
        count, kinds = 0, Kinds()
        for made in _made(chunks, template, dpi, processes, forced):
            document.use(made.used)
            kinds.merge(made.kinds)
            document.use_forms(made.forms)
            for packed in made.pages:
                document.add_page(packed)
                count += 1
            if progress:
                progress(made.tags)
        if not count:
            raise TemplateError(Problem("tags", 0, Message("printing-no-tags")))
        document.close()
        file.flush()  # a full disk shows before anything is accepted
        if accept:
            accept(kinds)
    return count


@contextmanager
def _opened(out: str | Path | BinaryIO) -> Iterator[BinaryIO]:
    """The file to write; a path is written beside itself first, so that it is whole or not there."""
    if not isinstance(out, str | Path):
        yield out
        return
    with whole(Path(out)) as part, part.open("wb") as file:
        yield file


def _chunks(pages: Iterable[list[Slot]], template: Template) -> Iterator[list[list[Slot]]]:
    source = iter(pages)
    each = max(1, _CHUNK // (template.sheet.per_page if template.sheet else 1))
    while chunk := list(islice(source, each)):
        yield chunk


def _made(
    chunks: Iterator[list[list[Slot]]], template: Template, dpi: int, processes: int | None, forced: bool
) -> Iterator[_Made]:
    """The chunks' pages in order; in this process while few, else in several."""
    first = list(islice(chunks, _PAYS_FROM // _CHUNK + 1)) if processes is None else []
    wanted = processes or (_cores() if len(first) * _CHUNK > _PAYS_FROM else 1)
    everything = _chained(first, chunks)
    if wanted == 1:
        for chunk in everything:
            yield _make(chunk, template, dpi, forced)
        return
    # Not forked: the caller may have threads.
    context = multiprocessing.get_context("spawn")
    with ProcessPoolExecutor(wanted, mp_context=context) as pool:
        waiting: deque[Future[_Made]] = deque()
        for chunk in everything:
            waiting.append(pool.submit(_make, chunk, template, dpi, forced))
            if len(waiting) > 3 * wanted:
                yield waiting.popleft().result()
        while waiting:
            yield waiting.popleft().result()


def _cores() -> int:
    """The cores that this process may use."""
    if hasattr(os, "sched_getaffinity"):
        return len(os.sched_getaffinity(0))
    return os.cpu_count() or 1


def _chained(first: list[list[list[Slot]]], rest: Iterator[list[list[Slot]]]) -> Iterator[list[list[Slot]]]:
    while first:
        yield first.pop(0)
    yield from rest


def _make(chunk: list[list[Slot]], template: Template, dpi: int, forced: bool) -> _Made:
    fonts, kinds = FontCodes(), Kinds()
    height = page_size(template)[1]
    drawn = [laid_out(page, template, dpi, forced=forced, seen=kinds.add) for page in chunk]
    # Labels of one page share what they repeat by themselves: deflate finds it.
    forms = Forms([page[0][0] for page in drawn] if template.sheet is None else (), fonts)
    pages = [zlib.compress(page_code(page, height, fonts, forms.cut).encode("latin-1"), 9) for page in drawn]
    return _Made(pages, forms.packed, sum(map(len, chunk)), fonts.used, kinds)
