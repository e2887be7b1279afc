"""What is answered when something goes wrong, in the manner of the room that was asked."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

from fastapi import FastAPI, Request
from fastapi.exception_handlers import http_exception_handler
from starlette.exceptions import HTTPException
from starlette.responses import PlainTextResponse, RedirectResponse, Response

from api.web.identity import BadForm, NotAllowed, SignInNeeded, sign_in_address
from api.web.language import translator_of
from api.web.limits import MOST_BYTES
from tagger.messages import Message


@dataclass(frozen=True)
class Manners:
    """How each room says that something went wrong.

    ``refused``: a page of the bench, of a status, a title and a text. ``not_there``: the public page
    for an address that leads nowhere. ``program``: the answer to a program that asked under
    ``program_base``.
    """

    refused: Callable[[Request, int, Message, Message], Response]
    not_there: Callable[[Request], Response]
    program: Callable[[Request, HTTPException], Response]
    program_base: str


def install(app: FastAPI, manners: Manners) -> None:
    """From now on the application answers in these manners what no route has answered itself."""

    def not_allowed(request: Request, error: Exception) -> Response:
        assert isinstance(error, NotAllowed)
        text = Message("guard-not-your-role", role=Message(f"bench-role-{error.needed}"))
        return manners.refused(request, 403, Message("guard-not-your-role-title"), text)

    def bad_form(request: Request, error: Exception) -> Response:
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

    app.add_exception_handler(HTTPException, not_there)
    app.add_exception_handler(SignInNeeded, _sign_in_needed)
    app.add_exception_handler(NotAllowed, not_allowed)
    app.add_exception_handler(BadForm, bad_form)


def _sign_in_needed(request: Request, error: Exception) -> Response:
    if request.headers.get("x-csrf"):  # asked by a page's script, which cannot follow to a form
        return Response(status_code=401)
    return RedirectResponse(sign_in_address(request), 303)
