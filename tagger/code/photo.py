"""Tags in a photo: the links and numbers that zxing-cpp finds in a picture."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path
from typing import BinaryIO

import zxingcpp
from PIL import Image, ImageOps, UnidentifiedImageError

from tagger.code import link
from tagger.code import number as tag_number
from tagger.errors import LinkError, Problem
from tagger.messages import Message

_FORMATS = zxingcpp.BarcodeFormats((zxingcpp.BarcodeFormat.QRCode, zxingcpp.BarcodeFormat.Code128))
MAX_PIXELS = 60_000_000
_LONG_SIDE = 1600  # px; phones take larger photos than a symbol needs


def read(source: Path | BinaryIO) -> link.Link:
    """The tag in an image file. Raises LinkError when there is none in it, or it is no image.

    A picture of more than MAX_PIXELS is not unpacked: a small file can hold one that fills the memory.
    """
    try:
        with Image.open(source) as image:
            if image.width * image.height > MAX_PIXELS:
                raise Image.DecompressionBombError
            return find_link(image)
    except Image.DecompressionBombError:
        too_large = Message("code-photo-too-large", megapixels=MAX_PIXELS // 1_000_000)
        raise LinkError(Problem("image", None, too_large)) from None
    except (UnidentifiedImageError, OSError, SyntaxError):  # what Pillow says of damaged files
        raise LinkError(Problem("image", None, Message("code-photo-unreadable"))) from None


def texts(photo: Image.Image) -> list[str]:
    """The texts of all QR and Code 128 symbols in a photo, the first seen first; [] for none.

    A photo that does not read as it is gets a second look with its contrast stretched, then a
    third and a fourth smaller and larger.
    """
    upright = ImageOps.exif_transpose(photo).convert("L")
    for view in _views(upright):
        found = [symbol.text for symbol in zxingcpp.read_barcodes(view, formats=_FORMATS) if symbol.text]
        if found:
            return list(dict.fromkeys(found))
    return []


def find_link(photo: Image.Image) -> link.Link:
    """The tag in a photo; its symbol with the whole spec before one with the number alone.

    Raises LinkError when there is none, with what was read instead; and when there are several,
    with the numbers of all: nobody could say which of them was meant.
    """
    seen = texts(photo)
    links = [link.parse(text) for text in seen if link.is_valid(text)]
    links.sort(key=lambda found: found.digits is None)
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
