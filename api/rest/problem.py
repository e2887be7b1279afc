"""Errors as application/problem+json (RFC 9457), with the problems of every field."""

from __future__ import annotations

import logging
from collections.abc import Iterable
from http import HTTPStatus
from typing import Any

from fastapi import FastAPI, Request
from fastapi.exception_handlers import request_validation_exception_handler
from fastapi.exceptions import RequestValidationError
from pydantic import BaseModel
from sqlalchemy.exc import DataError, OperationalError
from starlette.exceptions import HTTPException
from starlette.responses import JSONResponse, PlainTextResponse, Response

from tagger.errors import NumberError, Problem, TaggerError, problems_from
from tagger.store import KeyUsed

BASE = "/api/v1"
_LOG = logging.getLogger("tagger.api")


class FieldProblem(BaseModel):
    """One thing wrong: the field, what was given, why it is wrong, and what to do."""

    field: str
    value: Any = None
    why: str
    mend: str = ""


class ProblemDetails(BaseModel):
    """RFC 9457, with ``problems`` beside its members."""

    type: str = "about:blank"
    title: str
    status: int
    detail: str
    problems: list[FieldProblem] = []


class NotThere(TaggerError):
    """Something asked for by its address is not there."""


class NoToken(Exception):
    """No token, or one that is not known or revoked."""


class RoleTooLow(Exception):
    """The token's role does not reach."""


PROBLEM_JSON = "application/problem+json"
RESPONSES: dict[int | str, dict[str, Any]] = {
    code: {"model": ProblemDetails, "description": words}
    for code, words in {
        401: "No token, or one that is not known here.",
        403: "The token's role may not do this.",
        404: "Not there.",
        422: "Refused, with every problem named.",
    }.items()
}


def problem(status: int, detail: str, problems: Iterable[Problem] = ()) -> dict[str, Any]:
    """The body of an error."""
    return ProblemDetails(
        title=HTTPStatus(status).phrase, status=status, detail=detail,
        problems=[FieldProblem.model_validate(item.as_dict()) for item in problems],
    ).model_dump()  # fmt: skip


def answer(
    status: int, detail: str, problems: Iterable[Problem] = (), headers: dict[str, str] | None = None
) -> JSONResponse:
    return JSONResponse(problem(status, detail, problems), status, headers, PROBLEM_JSON)


def install(app: FastAPI) -> None:
    """From now on everything under /api/v1 answers errors in this form."""
    app.add_exception_handler(TaggerError, _refused)
    app.add_exception_handler(NoToken, _no_token)
    app.add_exception_handler(RoleTooLow, _role_too_low)
    app.add_exception_handler(RequestValidationError, _not_valid)
    app.add_exception_handler(DataError, _not_kept)
    app.add_exception_handler(OperationalError, _database_away)
    app.add_exception_handler(Exception, _failed)


def _refused(request: Request, error: Exception) -> Response:
    if not isinstance(error, TaggerError):
        raise error
    status = 404 if isinstance(error, NotThere) else 409 if isinstance(error, KeyUsed) else 422
    return answer(status, str(error), error.problems)


def _no_token(request: Request, error: Exception) -> Response:
    return answer(
        401, "Send a device's token: Authorization: Bearer ...", headers={"WWW-Authenticate": "Bearer"}
    )


def _role_too_low(request: Request, error: Exception) -> Response:
    return answer(403, f"This needs a token of the role {error}.")


async def _not_valid(request: Request, error: Exception) -> Response:
    if not isinstance(error, RequestValidationError):
        raise error
    if not request.url.path.startswith(BASE):
        return await request_validation_exception_handler(request, error)
    items = [{**item, "loc": item["loc"][1:] or ("body",)} for item in error.errors()]
    problems = [_without_password(item) for item in problems_from(items)]
    return answer(422, "The request cannot be read.", problems)


def _not_kept(request: Request, error: Exception) -> Response:
    return _other(
        request, 422, "Something in the request cannot be kept in the database: a character or a figure."
    )


def _database_away(request: Request, error: Exception) -> Response:
    _LOG.error("the database did not answer", exc_info=error)
    return _other(
        request, 503, "The database is busy or away. Send the request again, with its Idempotency-Key."
    )


def _failed(request: Request, error: Exception) -> Response:
    return _other(request, 500, "Something is wrong on our side; it is written in the server's log.")


def _other(request: Request, status: int, words: str) -> Response:
    if request.url.path.startswith(BASE):
        return answer(status, words)
    return PlainTextResponse(words, status)


def _without_password(item: Problem) -> Problem:
    return Problem(item.field, None, item.message) if item.field == "password" else item


def http(error: HTTPException) -> Response:
    """What the framework itself refuses: an address that is not there, a method it has not."""
    return answer(error.status_code, str(error.detail), headers=dict(error.headers or {}))


def there(error: TaggerError) -> TaggerError:
    """The error of something looked up by its address: not there, unless its number has a slip in it."""
    return error if isinstance(error, NumberError) else NotThere(error.problems)
