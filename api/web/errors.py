"""What is answered when something goes wrong, in the manner of the room that was asked."""

from __future__ import annotations

import logging
from collections.abc import Callable
from dataclasses import dataclass

from fastapi import FastAPI, Request
from fastapi.exception_handlers import http_exception_handler
from sqlalchemy.exc import DBAPIError
from sqlalchemy.exc import TimeoutError as NoConnectionFree
from starlette.exceptions import HTTPException
from starlette.requests import ClientDisconnect
from starlette.responses import PlainTextResponse, RedirectResponse, Response

from api.web.identity import BadForm, NotAllowed, SignInNeeded, sign_in_address, who
from api.web.language import translator_of
from api.web.limits import MOST_BYTES
from api.web.security_log import tell
from tagger.messages import Message
from tagger.store.trouble import Trouble, trouble_of

_LOG = logging.getLogger("tagger.api")


@dataclass(frozen=True)
class Manners:
    """How each room says that something went wrong.

    ``refused``: a page of the bench, of a status, a title and a text. ``not_there``: the public page
    for an address that leads nowhere, ``foreign`` for a form that another site's page sent. ``program``: the
    answer to a program that asked under ``program_base``. ``trouble`` and ``program_trouble``: the same of
    what is wrong with the database.
    """

    refused: Callable[[Request, int, Message, Message], Response]
    not_there: Callable[[Request], Response]
    foreign: Callable[[Request], Response]
    program: Callable[[Request, HTTPException], Response]
    program_base: str
    trouble: Callable[[Request, Trouble, Message], Response]
    program_trouble: Callable[[Request, Trouble], Response]


def install(app: FastAPI, manners: Manners) -> None:
    """From now on the application answers in these manners what no route has answered itself."""

    def not_allowed(request: Request, error: Exception) -> Response:
        assert isinstance(error, NotAllowed)
        _told_log(request, "not-allowed")
        text = Message("guard-not-your-role", role=Message(f"bench-role-{error.needed}"))
        return manners.refused(request, 403, Message("guard-not-your-role-title"), text)

    def bad_form(request: Request, error: Exception) -> Response:
        _told_log(request, "form-refused")
        if not request.url.path.startswith("/bench"):
            return manners.foreign(request)
        return manners.refused(
            request, 403, Message("guard-form-expired-title"), Message("guard-form-expired")
        )

    def too_large(request: Request) -> Response:
        text = Message("guard-too-large", megabytes=MOST_BYTES // 1_000_000)
        if request.url.path.startswith("/bench"):
            return manners.refused(request, 413, Message("guard-too-large-title"), text)
        return PlainTextResponse(translator_of(request)(text) + "\n", 413)

    async def not_there(request: Request, error: Exception) -> Response:
        """Render an error of the framework as a page."""
        if not isinstance(error, HTTPException):
            raise error
        path = request.url.path
        if path.startswith(manners.program_base):
            return manners.program(request, error)
        if error.status_code == 413:
            return too_large(request)
        if error.status_code != 404 or path.startswith(("/static/", "/scan/")):
            return await http_exception_handler(request, error)
        if path.startswith("/bench"):
            return manners.refused(request, 404, Message("guard-no-page-title"), Message("guard-no-page"))
        return manners.not_there(request)

    def database(request: Request, error: Exception) -> Response:
        """503 and when to ask again, where the database is at fault and not the request."""
        trouble = trouble_of(error)
        if trouble is None:
            raise error
        _LOG.error("the database is %s", trouble, exc_info=error)
        response = _told(manners, request, trouble)
        response.headers["Retry-After"] = str(trouble.retry_after_s)
        return response

    app.add_exception_handler(DBAPIError, database)
    app.add_exception_handler(NoConnectionFree, database)
    app.add_exception_handler(HTTPException, not_there)
    app.add_exception_handler(SignInNeeded, _sign_in_needed)
    app.add_exception_handler(NotAllowed, not_allowed)
    app.add_exception_handler(BadForm, bad_form)
    app.add_exception_handler(ClientDisconnect, _gone)


def _told(manners: Manners, request: Request, trouble: Trouble) -> Response:
    path, title = request.url.path, Message("guard-database-title")
    if path.startswith(manners.program_base):
        return manners.program_trouble(request, trouble)
    try:
        if path.startswith("/bench"):
            return manners.refused(request, 503, title, trouble.message)
        return manners.trouble(request, trouble, title)
    except (DBAPIError, NoConnectionFree):  # the page needs the database too
        t = translator_of(request)
        return PlainTextResponse(f"{t(trouble.message)} {t.mend(trouble.message)}\n", 503)


def _told_log(request: Request, event: str) -> None:
    me = who(request)
    tell(request, event, person=me.person.name if me else None, method=request.method, path=request.url.path)


def _gone(request: Request, error: Exception) -> Response:
    """Nobody reads it: whoever asked hung up in the middle, or was dropped. No fault to log."""
    return Response(status_code=400)


def _sign_in_needed(request: Request, error: Exception) -> Response:
    if request.headers.get("x-csrf"):  # asked by a page's script, which cannot follow to a form
        return Response(status_code=401)
    return RedirectResponse(sign_in_address(request), 303)
