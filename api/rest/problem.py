"""Errors as application/problem+json (RFC 9457), with the problems of every field."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from http import HTTPStatus
from typing import Any

from fastapi import FastAPI, Request
from fastapi.exception_handlers import request_validation_exception_handler
from fastapi.exceptions import RequestValidationError
from pydantic import BaseModel
from sqlalchemy.exc import DataError
from starlette.exceptions import HTTPException
from starlette.responses import JSONResponse, PlainTextResponse, Response

from api.web.identity import bearer, device
from api.web.language import translator_of
from api.web.limits import MOST_BYTES
from api.web.security_log import tell
from tagger.errors import NumberError, Problem, StoreError, TaggerError, problems_from
from tagger.i18n import Translator
from tagger.messages import Message, as_is
from tagger.store import KeyUsed, RecipeKept
from tagger.store.trouble import Trouble

BASE = "/api/v1"


class FieldProblem(BaseModel):
    """One thing wrong: the field, what was given, the id and values of the message, and its text.

    ``why`` says what is wrong and ``mend`` what to do, in the language of ``Accept-Language``;
    ``text`` is both.
    """

    field: str
    value: Any = None
    id: str
    values: dict[str, Any] = {}
    why: str
    mend: str = ""
    text: str

    @classmethod
    def of(cls, item: Problem, t: Translator) -> FieldProblem:
        return cls.model_validate({**item.as_dict(t), "text": _both(t, item.message)})


class ProblemDetails(BaseModel):
    """RFC 9457, with ``problems`` beside its members; ``detail`` is in the language of ``Accept-Language``.

    ``id``: that of the message in ``detail``; null where ``problems`` say everything.
    """

    type: str = "about:blank"
    title: str
    status: int
    id: str | None = None
    values: dict[str, Any] = {}
    detail: str
    problems: list[FieldProblem] = []


class PrintedAlready(StoreError):
    """A tag that was printed before, and nobody said that it is to be printed again."""


class NotThere(TaggerError):
    """Something asked for by its address is not there."""


class NoToken(Exception):
    """No token, or one that is not known or revoked."""


class RoleTooLow(Exception):
    """The token's role is not sufficient."""


PROBLEM_JSON = "application/problem+json"
RESPONSES: dict[int | str, dict[str, Any]] = {
    code: {"model": ProblemDetails, "description": words}
    for code, words in {
        401: "No token, or one that is not known here.",
        403: "The token's role may not do this.",
        404: "Not found.",
        422: "Rejected; all problems are listed.",
    }.items()
}


def answer(
    request: Request,
    status: int,
    message: Message | None,
    problems: Iterable[Problem] = (),
    headers: Mapping[str, str] | None = None,
) -> JSONResponse:
    """The answer to a request that went wrong; without a message the problems say everything."""
    t = translator_of(request)
    told = [FieldProblem.of(item, t) for item in problems]
    body = ProblemDetails(
        title=HTTPStatus(status).phrase,
        status=status,
        **(message.as_json() if message else {}),
        detail=_both(t, message) if message else "\n".join(f"{item.field}: {item.text}" for item in told),
        problems=told,
    )
    language = {"Content-Language": t.language, "Vary": "Accept-Language"}
    return JSONResponse(body.model_dump(mode="json"), status, {**language, **(headers or {})}, PROBLEM_JSON)


def _both(t: Translator, message: Message) -> str:
    """What is wrong and what to do, each a sentence of its own."""
    return f"{t(message)} {t.mend(message)}".strip()


def install(app: FastAPI) -> None:
    """From now on everything under /api/v1 answers errors in this form."""
    app.add_exception_handler(TaggerError, _refused)
    app.add_exception_handler(NoToken, _no_token)
    app.add_exception_handler(RoleTooLow, _role_too_low)
    app.add_exception_handler(RequestValidationError, _not_valid)
    app.add_exception_handler(DataError, _not_kept)
    app.add_exception_handler(Exception, _failed)


def _refused(request: Request, error: Exception) -> Response:
    if not isinstance(error, TaggerError):
        raise error
    against_what_is_kept = isinstance(error, (KeyUsed, PrintedAlready, RecipeKept))
    status = 404 if isinstance(error, NotThere) else 409 if against_what_is_kept else 422
    return answer(request, status, None, error.problems)


def _no_token(request: Request, error: Exception) -> Response:
    if bearer(request):
        tell(request, "token-unknown", method=request.method, path=request.url.path)
    return answer(request, 401, Message("rest-no-token"), headers={"WWW-Authenticate": "Bearer"})


def _role_too_low(request: Request, error: Exception) -> Response:
    asker = device(request)
    named = {"device": asker.name} if asker else {}
    tell(request, "not-allowed", method=request.method, path=request.url.path, **named)
    return answer(request, 403, Message("rest-role-too-low", role=str(error)))


async def _not_valid(request: Request, error: Exception) -> Response:
    if not isinstance(error, RequestValidationError):
        raise error
    if not request.url.path.startswith(BASE):
        return await request_validation_exception_handler(request, error)
    items = [{**item, "loc": item["loc"][1:] or ("body",)} for item in error.errors()]
    problems = [_without_password(item) for item in problems_from(items)]
    return answer(request, 422, Message("rest-cannot-be-read"), problems)


def _not_kept(request: Request, error: Exception) -> Response:
    return _other(request, 422, Message("rest-cannot-be-stored"))


def database(request: Request, trouble: Trouble) -> Response:
    """Something is wrong with the database: what a person mends is said, else to send the request again."""
    lasting = trouble in (Trouble.FULL, Trouble.READ_ONLY)
    return answer(request, 503, trouble.message if lasting else Message("rest-database-away"))


def _failed(request: Request, error: Exception) -> Response:
    return _other(request, 500, Message("rest-failed"))


def _other(request: Request, status: int, message: Message) -> Response:
    if request.url.path.startswith(BASE):
        return answer(request, status, message)
    return PlainTextResponse(_both(translator_of(request), message), status)


def _without_password(item: Problem) -> Problem:
    return Problem(item.field, None, item.message) if item.field == "password" else item


def http(request: Request, error: HTTPException) -> Response:
    """What the framework itself refuses: an address that is not there, a method it has not."""
    if error.status_code == 400:  # a body that is no JSON, or no form
        return answer(request, 422, Message("rest-cannot-be-read"))
    known = {
        404: Message("rest-no-such-address"),
        405: Message("rest-no-such-method"),
        413: Message("rest-too-large", megabytes=MOST_BYTES // 1_000_000),
    }
    message = known.get(error.status_code, as_is(str(error.detail)))
    return answer(request, error.status_code, message, headers=error.headers)


def there(error: TaggerError) -> TaggerError:
    """The error of something looked up by its address: not there, unless its number has a slip in it."""
    return error if isinstance(error, NumberError) else NotThere(error.problems)
