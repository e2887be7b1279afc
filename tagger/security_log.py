"""The security log: who signed in, who failed to, who changed what somebody may. A line of JSON each, without secrets.

On the logger ``tagger.security``; on standard error where nothing else was arranged.
"""

from __future__ import annotations

import json
import logging
from datetime import UTC, datetime

_LOG = logging.getLogger("tagger.security")


def to_stderr() -> None:
    """Lets the lines be seen where nobody has said what becomes of logs."""
    _LOG.setLevel(logging.INFO)
    if not _LOG.hasHandlers():
        _LOG.addHandler(logging.StreamHandler())


def write(event: str, **named: str | None) -> None:
    """One line; what is None is left out."""
    said = {"at": datetime.now(UTC).isoformat(timespec="seconds"), "event": event}
    said |= {name: value for name, value in named.items() if value is not None}
    _LOG.info(json.dumps(said, ensure_ascii=True))
