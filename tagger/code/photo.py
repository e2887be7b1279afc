"""Tags in a photo: the links and numbers that zxing-cpp finds in a picture."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path
from typing import BinaryIO, Final

import zxingcpp
from PIL import Image, ImageOps

from tagger.code import link
from tagger.code import number as tag_number
from tagger.errors import LinkError, Problem
from tagger.messages import Message

_FORMATS = zxingcpp.BarcodeFormats((zxingcpp.BarcodeFormat.QRCode, zxingcpp.BarcodeFormat.Code128))
# The only decoders that strangers' files reach; JPEG is those of several pictures too.
KINDS: Final = ("JPEG", "PNG", "WEBP", "GIF", "BMP", "TIFF")
MAX_PIXELS: Final = 60_000_000
MAX_PIXELS_WHOLE: Final = 20_000_000  # of what must be unpacked whole: all but the JPEG that cameras write
_LONG_SIDE = 1600  # px; phones take larger photos than a symbol needs
_AT_ONCE = 16_000_000  # px that are looked at; a larger photo is unpacked at a part of its size


def read(source: Path | BinaryIO) -> link.Link:
    """The tag in an image file. Raises LinkError when there is none in it, or it is no image."""
    return find_link(in_grey(source))


def in_grey(source: Path | BinaryIO) -> Image.Image:
    """An image file in shades of grey, of 16 million pixels at most. Raises LinkError where it is none.

    A picture of more pixels than ``refuse_large`` allows is not unpacked: a small file can hold one that fills
    the memory. The decoders say what is wrong with a damaged file in many ways; here it is one.
    """
    try:
        return _grey(source)
    except Image.DecompressionBombError as error:
        most = (
            error.args[0] if isinstance(error.args[0], int) else MAX_PIXELS_WHOLE
        )  # Pillow's own says a sentence
        too_large = Message("code-photo-too-large", megapixels=most // 1_000_000)
        raise LinkError(Problem("image", None, too_large)) from None
    except Exception:
        raise LinkError(Problem("image", None, Message("code-photo-unreadable"))) from None


def _grey(source: Path | BinaryIO) -> Image.Image:
    """The picture in shades of grey; when this returns, its colours take no memory any more."""
    with Image.open(source, formats=KINDS) as image:
        refuse_large(image)
        shrink = 2 if image.width * image.height > _AT_ONCE else 1  # of MAX_PIXELS a quarter is few enough
        image.draft("L", (image.width // shrink, image.height // shrink))
        return image.convert("L")


def refuse_large(image: Image.Image) -> None:
    """Raises DecompressionBombError, with the pixels that may be, before a large picture is unpacked."""
    in_parts = image.format in ("JPEG", "MPO") and not image.info.get("progressive")
    most = MAX_PIXELS if in_parts else MAX_PIXELS_WHOLE
    if image.width * image.height > most:
        raise Image.DecompressionBombError(most)


def texts(photo: Image.Image) -> list[str]:
    """The texts of all QR and Code 128 symbols in a photo, the first seen first; [] for none.

    However it is turned: the reader looks at it from all sides. A photo that does not read as it is gets a
    second look with its contrast stretched, then a third and a fourth smaller and larger.
    """
    for view in _views(photo if photo.mode == "L" else photo.convert("L")):
        found = [symbol.text for symbol in zxingcpp.read_barcodes(view, formats=_FORMATS) if symbol.text]
        if found:
            return list(dict.fromkeys(found))
    return []


def find_link(photo: Image.Image) -> link.Link:
    """The tag in a photo; its signed symbol before one with the spec alone, and that before the number.

    Raises LinkError when there is none, with what was read instead; and when there are several,
    with the numbers of all: nobody could say which of them was meant.
    """
    seen = texts(photo)
    links = [link.parse(text) for text in seen if link.is_valid(text)]
    links.sort(key=lambda found: -len(found.digits or ""))
    numbers = tuple(dict.fromkeys(tag_number.format(found.number) for found in links))
    if len(numbers) > 1:
        raise LinkError(Problem("image", None, Message("code-photo-several", numbers=numbers)))
    if links:
        return links[0]
    if seen:
        raise LinkError(Problem("image", seen[0][:120], Message("code-photo-other")))
    raise LinkError(Problem("image", None, Message("code-photo-none")))


def _views(photo: Image.Image) -> Iterator[Image.Image]:
    yield photo
    yield ImageOps.autocontrast(photo, cutoff=2)
    side = max(photo.size)
    if side > _LONG_SIDE:
        scale = _LONG_SIDE / side
        yield photo.resize((round(photo.width * scale), round(photo.height * scale)))
    elif side < _LONG_SIDE // 2:
        yield photo.resize((photo.width * 2, photo.height * 2), Image.Resampling.BICUBIC)
