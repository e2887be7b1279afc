"""Photos: which tag is in the picture, read by a real decoder."""

from __future__ import annotations

import io
import struct
import zlib

import pytest
from PIL import Image

from tagger.code import link, payload, photo, symbol
from tagger.errors import LinkError
from tests.code.payload_examples import EXAMPLES
from tests.code.signed_examples import signed

ONE, OTHER = "7K3MQ9XW2R1", "00000000001"


def _picture(*texts: str, scale: int = 5) -> Image.Image:
    """QR symbols side by side on white paper."""
    symbols = [symbol.qr(text).modules for text in texts]
    side = max(len(modules) for modules in symbols) + 12
    picture = Image.new("L", (side * len(symbols), side), 255)
    for place, modules in enumerate(symbols):
        for y, row in enumerate(modules):
            for x, dark in enumerate(row):
                if dark:
                    picture.putpixel((place * side + x + 6, y + 6), 0)
    return picture.resize((picture.width * scale, picture.height * scale), Image.Resampling.NEAREST)


def test_two_tags_in_one_photo_are_refused_with_both_numbers() -> None:
    texts = [link.build("https://tags.example.com", number, "123") for number in (ONE, OTHER)]
    with pytest.raises(LinkError, match=r"more than one tag: .*Photograph one tag at a time") as caught:
        photo.find_link(_picture(*texts))
    assert "7K3MQ-9XW2R1" in str(caught.value)
    assert "00000-000001" in str(caught.value)


def test_two_symbols_of_one_tag_are_one_tag() -> None:
    whole = link.build("https://tags.example.com", ONE, "123")
    found = photo.find_link(_picture(ONE, whole))
    assert (found.number, found.digits) == (ONE, "123")


@pytest.mark.parametrize("signed_first", [True, False])
def test_of_two_symbols_of_one_tag_the_signed_one_is_read(signed_first: bool) -> None:
    plain = payload.encode(EXAMPLES["contract_example"])
    both = [
        link.build("https://tags.example.com", ONE, digits) for digits in (signed("contract_example"), plain)
    ]
    found = photo.find_link(_picture(*(both if signed_first else both[::-1])))
    assert found.digits == signed("contract_example")


def _claiming(width: int, height: int) -> io.BytesIO:
    """The head of a PNG that says it is so large, with nothing in it."""

    def chunk(kind: bytes, data: bytes) -> bytes:
        return struct.pack(">I", len(data)) + kind + data + struct.pack(">I", zlib.crc32(kind + data))

    head = chunk(b"IHDR", struct.pack(">IIBBBBB", width, height, 1, 0, 0, 0, 0))
    return io.BytesIO(b"\x89PNG\r\n\x1a\n" + head + chunk(b"IDAT", zlib.compress(b"")) + chunk(b"IEND", b""))


def test_a_picture_that_would_fill_the_memory_is_refused_with_how_large_one_may_be() -> None:
    """20 million px where it must be unpacked whole; 400 million are refused by the library itself."""
    for side in (4473, 20_000):
        with pytest.raises(LinkError) as refused:
            photo.in_grey(_claiming(side, side))
        [problem] = refused.value.problems
        assert (problem.message.id, problem.message.values) == ("code-photo-too-large", {"megapixels": 20})
    with pytest.raises(LinkError) as empty:
        photo.in_grey(_claiming(4472, 4472))
    assert empty.value.problems[0].message.id == "code-photo-unreadable", "small enough, and nothing in it"


def test_a_photo_without_a_tag_says_whether_another_code_is_in_it() -> None:
    for picture, wrong in (
        (Image.new("L", (300, 300), 255), "code-photo-none"),
        (_picture("SHELF 12"), "code-photo-other"),
    ):
        with pytest.raises(LinkError) as refused:
            photo.find_link(picture)
        assert [problem.message.id for problem in refused.value.problems] == [wrong]
