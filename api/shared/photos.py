"""A tag in a photo that somebody sent."""

from __future__ import annotations

import io
from collections.abc import Iterator
from contextlib import contextmanager
from threading import BoundedSemaphore, Lock
from typing import Final

from api.web.load import Full
from tagger.code import link as tag_link
from tagger.code import photo
from tagger.errors import LinkError, Problem
from tagger.messages import Message

MAX_BYTES: Final = 15_000_000
DECODING: Final = Lock()  # one picture at a time in a process, whoever sent it: each may take 200 MB

MOST_STRANGERS: Final = 8
_STRANGERS = BoundedSemaphore(MOST_STRANGERS)


@contextmanager
def strangers_photo() -> Iterator[None]:
    """Around what is done with a photo that somebody sent who has not signed in. Raises Full where MOST_STRANGERS are
    being looked at or wait for it: a flood of photos would hold every thread that makes pages, and their memory.
    """
    if not _STRANGERS.acquire(blocking=False):
        raise Full
    try:
        yield
    finally:
        _STRANGERS.release()


def read_photo(data: bytes) -> tag_link.Link:
    """The tag in an image file. Raises LinkError when there is none in it, or it is no image."""
    if len(data) > MAX_BYTES:
        raise LinkError(Problem("image", None, Message("scan-photo-too_large")))
    with DECODING:
        return photo.read(io.BytesIO(data))
