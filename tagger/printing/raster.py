"""Labels as printer dots: what a thermal printer gets, and what a PNG file holds."""

from __future__ import annotations

import io
from collections.abc import Callable, Iterable, Iterator
from pathlib import Path
from typing import BinaryIO

from PIL import Image

from tagger.printing.content import Tag
from tagger.printing.kinds import Kinds
from tagger.printing.layout import lay_out
from tagger.printing.painter import draw, draw_all
from tagger.printing.proof import prove
from tagger.printing.sheets import Seen, laid_out, page_size, sheets
from tagger.printing.template import Template
from tagger.whole_files import beside

__all__ = ["draw", "image", "pages", "png", "write"]


def image(tag: Tag, template: Template, dpi: int = 203) -> Image.Image:
    """One label as a 1-bit image of the printer's dots; raises TemplateError where a text does not fit."""
    return draw(lay_out(tag, template, dpi).drawing, dpi)


def png(tag: Tag, template: Template, dpi: int = 203, *, seen: Seen | None = None) -> bytes:
    """One label as the bytes of a PNG file that knows its own resolution.

    ``seen``: told of the label once it is proved; without it nothing is, for a picture to look at.
    """
    page, out = lay_out(tag, template, dpi), io.BytesIO()
    if seen:
        prove(tag, page)
        seen(tag, page)
    _save(draw(page.drawing, dpi), out, dpi)
    return out.getvalue()


def pages(
    tags: Iterable[Tag],
    template: Template,
    dpi: int = 203,
    start: int = 1,
    *,
    forced: bool = False,
    seen: Seen | None = None,
) -> Iterator[Image.Image]:
    """The same pages as the PDF has, as 1-bit images; each label is proved. ``forced``: see ``proof.prove``."""
    for page in sheets(tags, template, start):
        yield draw_all(laid_out(page, template, dpi, forced=forced, seen=seen), page_size(template), dpi)


def write(
    tags: Iterable[Tag],
    template: Template,
    out: str | Path,
    *,
    dpi: int = 203,
    start: int = 1,
    forced: bool = False,
    accept: Callable[[Kinds], object] | None = None,
) -> list[Path]:
    """Writes PNG files, one a page: ``out`` itself, and for more pages out-2.png, out-3.png and so on.

    ``accept``: asked with the kinds of labels once all are written, before the files take their names. Where
    it raises, or a tag does not fit or is not proved, no file is left behind, nor one there before written over.
    """
    first, kinds = Path(out), Kinds()
    files: dict[Path, Path] = {}  # each beside itself first, so that all are whole or not there
    try:
        drawn = pages(tags, template, dpi, start, forced=forced, seen=kinds.add)
        for number, page in enumerate(drawn, 1):
            file = first if number == 1 else first.with_stem(f"{first.stem}-{number}")
            part = files[file] = beside(file)
            _save(page, part, dpi)
        if accept:
            accept(kinds)
        for file, part in files.items():
            part.replace(file)
    finally:
        for part in files.values():
            part.unlink(missing_ok=True)
    return list(files)


def _save(image: Image.Image, out: Path | BinaryIO, dpi: int) -> None:
    image.save(out, format="PNG", dpi=(dpi, dpi), optimize=True)
