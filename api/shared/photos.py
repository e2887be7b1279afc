"""A tag in a photo that somebody sent."""

from __future__ import annotations

import io
from threading import Lock
from typing import Final

from tagger.code import link as tag_link
from tagger.code import photo
from tagger.errors import LinkError, Problem
from tagger.messages import Message

MAX_BYTES: Final = 15_000_000
DECODING: Final = Lock()  # one picture at a time in a process, whoever sent it: each may take 200 MB


def read_photo(data: bytes) -> tag_link.Link:
    """The tag in an image file. Raises LinkError when there is none in it, or it is no image."""
    if len(data) > MAX_BYTES:
        raise LinkError(Problem("image", None, Message("scan-photo-too_large")))
    with DECODING:
        return photo.read(io.BytesIO(data))
