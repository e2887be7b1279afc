"""PWG Raster: read back by CUPS's own reader, and printed at a real endpoint."""

from __future__ import annotations

import ctypes
import ctypes.util
import os
import random
import struct
from collections.abc import Callable
from pathlib import Path

import pytest
from PIL import Image, ImageOps

from tagger.printing import raster, template
from tagger.printing.content import Tag
from tagger.printing.ipp import pwg
from tests.volume import volume

KINDS: list[pwg.Kind] = ["black_1", "sgray_8"]


def read_by_cups(file: Path) -> list[Image.Image]:
    """The pages of a raster file, by libcups."""
    name = ctypes.util.find_library("cups")
    if name is None:
        pytest.fail("libcups is not installed: run `make test`, or `apt-get install cups-ipp-utils`")
    cups = ctypes.CDLL(name)
    cups.cupsRasterOpen.restype = ctypes.c_void_p
    header, pages = ctypes.create_string_buffer(1796), []
    handle = os.open(file, os.O_RDONLY)
    stream = ctypes.c_void_p(cups.cupsRasterOpen(handle, 0))
    while cups.cupsRasterReadHeader2(stream, header):
        width, height = struct.unpack_from("=2I", header, 372)
        bits, _, stride = struct.unpack_from("=3I", header, 384)
        data = ctypes.create_string_buffer(stride * height)
        assert cups.cupsRasterReadPixels(stream, data, len(data)) == len(data)
        page = Image.frombytes("1" if bits == 1 else "L", (width, height), data.raw)
        pages.append(ImageOps.invert(page.convert("L")) if bits == 1 else page)
    cups.cupsRasterClose(stream)
    os.close(handle)
    return pages


@pytest.mark.parametrize("kind", KINDS)
def test_cups_reads_back_every_dot(kind: pwg.Kind, tmp_path: Path, make_tag: Callable[..., Tag]) -> None:
    tags, wanted = [make_tag(seed=1), make_tag(seed=2)], template.load("hang_tag")
    drawn = list(raster.pages(tags, wanted, 203))
    file = tmp_path / "tags.pwg"
    file.write_bytes(b"".join(pwg.stream(drawn, 203, kind)))
    read = read_by_cups(file)
    assert [page.tobytes() for page in read] == [page.convert("L").tobytes() for page in drawn]


@pytest.mark.parametrize("kind", KINDS)
def test_long_runs_short_runs_and_odd_widths_come_back(kind: pwg.Kind, tmp_path: Path) -> None:
    page = Image.new("1", (2609, 600), 1)
    for x in range(0, 2609, 7):
        for y in range(300, 303):
            page.putpixel((x, y), 0)
    for x in range(0, 2609, 2):
        page.putpixel((x, 400), 0)
    file = tmp_path / "page.pwg"
    file.write_bytes(b"".join(pwg.stream([page], 300, kind)))
    assert [one.tobytes() for one in read_by_cups(file)] == [page.convert("L").tobytes()]


def _of_any_dots(chance: random.Random) -> Image.Image:
    """Lines of stretches as they come: white, black and mixed ones, some lines the same again and again."""
    width, lines = chance.choice((1, 8, 9, 40, 1031, 2100)), list[list[int]]()
    while len(lines) < chance.choice((1, 40, 700)):
        line: list[int] = []
        while len(line) < width:
            count = chance.choice((1, 3, 8, 24, 1024, 1032, 1100))
            ink = chance.choice(((0,), (255,), (0, 255)))
            line += chance.choices(ink, k=count)
        lines += [line[:width]] * chance.choice((1, 1, 2, 255, 256, 257, 520))
    page = Image.new("L", (width, len(lines)))
    page.putdata([dot for line in lines for dot in line])
    return page.convert("1", dither=Image.Dither.NONE)


@pytest.mark.parametrize("kind", KINDS)
def test_pages_of_any_dots_come_back(kind: pwg.Kind, tmp_path: Path) -> None:
    chance = random.Random(7)
    drawn = [_of_any_dots(chance) for _ in range(volume(25, 300))]
    file = tmp_path / "pages.pwg"
    file.write_bytes(b"".join(pwg.stream(drawn, 300, kind)))
    for page, read in zip(drawn, read_by_cups(file), strict=True):
        assert read.tobytes() == page.convert("L").tobytes()
