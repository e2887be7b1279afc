"""What is answered when something goes wrong, in the manner of the page that asked."""

from __future__ import annotations

from fastapi import FastAPI, Request
from fastapi.exception_handlers import http_exception_handler
from starlette.exceptions import HTTPException
from starlette.responses import RedirectResponse, Response

from api.bench.page import refused
from api.identity import BadForm, NotAllowed, SignInNeeded, sign_in_address
from api.rest import problem
from api.scan import pages


def sign_in_needed(request: Request, error: Exception) -> Response:
    if request.headers.get("x-csrf"):  # asked by a page's script, which cannot follow to a form
        return Response(status_code=401)
    return RedirectResponse(sign_in_address(request), 303)


def not_allowed(request: Request, error: Exception) -> Response:
    needed = error.needed if isinstance(error, NotAllowed) else "another role"
    return refused(
        request, 403, "Not for your role", f"This needs the role {needed}. Ask whoever manages this shop."
    )


def bad_form(request: Request, error: Exception) -> Response:
    text = "The form did not come from this page, or you have signed in again since. Go back, load the page again, and send it again."
    return refused(request, 403, "Form refused", text)


async def not_there(request: Request, error: Exception) -> Response:
    """What the framework itself refuses, as a page for whoever reads pages."""
    if not isinstance(error, HTTPException):
        raise error
    path = request.url.path
    if path.startswith(problem.BASE):
        return problem.http(error)
    if error.status_code != 404 or path.startswith(("/static/", "/scan/")):
        return await http_exception_handler(request, error)
    if path.startswith("/bench"):
        return refused(request, 404, "Not found", "There is no such page. Choose one above, or scan a tag.")
    return pages.not_there(request)


def install(app: FastAPI) -> None:
    problem.install(app)
    app.add_exception_handler(HTTPException, not_there)
    app.add_exception_handler(SignInNeeded, sign_in_needed)
    app.add_exception_handler(NotAllowed, not_allowed)
    app.add_exception_handler(BadForm, bad_form)
