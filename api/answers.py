"""What is answered when something goes wrong, in the manner of the page that asked."""

from __future__ import annotations

from fastapi import FastAPI, Request
from starlette.responses import RedirectResponse, Response

from api.bench.page import refused
from api.identity import BadForm, NotAllowed, SignInNeeded, sign_in_address
from api.rest import problem


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


def install(app: FastAPI) -> None:
    problem.install(app)
    app.add_exception_handler(SignInNeeded, sign_in_needed)
    app.add_exception_handler(NotAllowed, not_allowed)
    app.add_exception_handler(BadForm, bad_form)
