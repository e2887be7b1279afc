"""Who signed in, who failed to, and who changed what somebody may: one line of JSON each, without secrets.

On the logger ``tagger.security``; on standard error where nothing else was arranged. What was typed as a name
stands there only if somebody has it: it may be a password in the wrong field.
"""

from __future__ import annotations

import json
import logging
from datetime import UTC, datetime

from starlette.requests import Request

from api.web.limits import asker

_LOG = logging.getLogger("tagger.security")


def to_stderr() -> None:
    """Lets the lines be seen where nobody has said what becomes of logs."""
    _LOG.setLevel(logging.INFO)
    if not _LOG.hasHandlers():
        _LOG.addHandler(logging.StreamHandler())


def tell(
    request: Request, event: str, *, person: str | None = None, by: str | None = None, **more: str
) -> None:
    """``person``: whom it is about. ``by``: who did it, where that is somebody else or a device."""
    said = {"at": datetime.now(UTC).isoformat(timespec="seconds"), "event": event, "from": asker(request)}
    named = {name: value for name, value in {"person": person, "by": by, **more}.items() if value is not None}
    _LOG.info(json.dumps(said | named, ensure_ascii=True))
