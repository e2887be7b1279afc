"""Photos that strangers send: bounded, decoded one at a time, and written anew without metadata."""

from __future__ import annotations

import io
from typing import Final

from PIL import Image, ImageOps

from api.shared.photos import DECODING
from tagger.code.photo import refuse_large
from tagger.errors import Problem, StoreError
from tagger.messages import Message

MOST_BYTES: Final = 9_000_000
LONG_SIDE: Final = 1280  # px
FORMATS: Final = ("JPEG", "PNG", "WEBP")


def written_anew(data: bytes, field: str) -> bytes:
    """The same picture as a JPEG file of at most LONG_SIDE px, upright, with nothing but its pixels.

    Raises StoreError naming ``field`` for what is too large or no picture.
    """
    if len(data) > MOST_BYTES:
        wrong = Message("guard-picture-too-large", megabytes=MOST_BYTES // 1_000_000)
        raise StoreError(Problem(field, None, wrong))
    try:
        with DECODING, Image.open(io.BytesIO(data), formats=FORMATS) as image:
            refuse_large(image)
            image.draft("RGB", (LONG_SIDE, LONG_SIDE))  # a large JPEG is unpacked at a part of its size
            image.thumbnail((LONG_SIDE, LONG_SIDE))
            upright = ImageOps.exif_transpose(image)
            plain = Image.new("RGB", upright.size, "white")
            plain.paste(upright.convert("RGBA"), mask=upright.convert("RGBA"))
            written = io.BytesIO()
            plain.save(written, "JPEG", quality=75, optimize=True)
            return written.getvalue()
    except Exception:  # decoders say what is wrong with a damaged file in many ways
        raise StoreError(Problem(field, None, Message("guard-picture-unreadable"))) from None
