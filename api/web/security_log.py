"""What a request did that the security log must hold. What was typed as a name stands there only if somebody has it:
it may be a password in the wrong field.
"""

from __future__ import annotations

from starlette.requests import Request

from api.web.limits import asker
from tagger import security_log


def tell(
    request: Request, event: str, *, person: str | None = None, by: str | None = None, **more: str
) -> None:
    """``person``: whom it is about. ``by``: who did it, where that is somebody else or a device."""
    security_log.write(event, **{"from": asker(request)}, person=person, by=by, **more)
