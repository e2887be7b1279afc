"""The other hoses of a tag's machine: for whoever has the tag's PIN, or for everybody, as the shop chooses."""

from __future__ import annotations

from typing import Annotated, Any, Final

from fastapi import APIRouter, Form, Request
from fastapi.responses import Response

from api.scan.pages import not_there, page, refused
from api.scan.view import one_line
from api.shared.known_tag import Tag, find
from api.web.language import translator_of
from api.web.limits import asker
from api.web.state import settings_of, store_of, tables_of
from tagger.code import number as tag_number
from tagger.errors import Problem, StoreError, TaggerError
from tagger.i18n import Translator
from tagger.messages import Message
from tagger.store import Allowance, Assembly
from tagger.trade.servicelife import replace_by

router = APIRouter()
TRIES: Final = Allowance(5, 600)
"""How many PINs may be tried for a tag, and by an address, in ten minutes."""


@router.get("/machine/{number}", include_in_schema=False)
def machine(request: Request, number: str) -> Response:
    """The list where it is open to all, else the question for the PIN."""
    if settings_of(request).machine_hoses == "off":
        return not_there(request)
    return _answer(request, number, pin=None)


@router.post("/machine/{number}", include_in_schema=False)
def machine_by_pin(request: Request, number: str, pin: Annotated[str, Form()] = "") -> Response:
    """The list, for the right PIN."""
    if settings_of(request).machine_hoses != "pin":
        return not_there(request)
    return _answer(request, number, pin=pin)


def _answer(request: Request, number: str, pin: str | None) -> Response:
    try:
        tag = find(store_of(request), number, None, tables_of(request))
    except TaggerError as error:
        return refused(request, error, status=404, typed=number)
    if settings_of(request).machine_hoses == "open":
        return _page(request, tag, _others(request, tag))
    if pin is None:
        return _page(request, tag, None)
    of_tag = f"pin tag {tag.number}"
    if store_of(request).try_now({of_tag: TRIES, f"pin from {asker(request)}": TRIES}):
        return _page(request, tag, None, Message("guard-pin-tries"), 429)
    if not store_of(request).is_tag_pin(tag.number, pin):
        return _page(request, tag, None, Message("guard-pin-wrong"), 422)
    store_of(request).give_back(of_tag)
    return _page(request, tag, _others(request, tag))


def _others(request: Request, tag: Tag) -> list[dict[str, Any]]:
    """The machine's other hoses by position, each with what stands against it."""
    record, store, tables = tag.record, store_of(request), tables_of(request)
    if record is None or not record.machine:
        return []
    others = [
        one for one in store.on_machine(record.customer or "", record.machine) if one.number != tag.number
    ]
    numbers = [one.number for one in others]
    held = {*store.unreleased(numbers), *store.kept_back(numbers)}
    fitted = store.fitted_on(numbers)
    t = translator_of(request)
    return [
        {
            "number": one.number,
            "position": one.position,
            "line": t(one_line(one.content)),
            "bad": _bad(one, held, t),
            "life": replace_by(one.built_on, fitted.get(one.number), tables),
        }
        for one in others
    ]


def _bad(one: Assembly, held: set[str], t: Translator) -> str:
    if one.withdrawn:
        return t("scan-withdrawn-title")
    if one.void:
        return t("scan-void-title")
    return t("scan-held-title") if one.number in held else ""


def _page(
    request: Request,
    tag: Tag,
    hoses: list[dict[str, Any]] | None,
    wrong: Message | None = None,
    status: int = 200,
) -> Response:
    t, shown = translator_of(request), tag_number.format(tag.number)
    error = StoreError(Problem("pin", None, wrong)) if wrong else None
    return page(
        request,
        "machine.html",
        status=status,
        title=t("fitted-machine-title", number=shown),
        number=shown,
        problems=error.problems if error else (),
        hoses=hoses,
        back=f"/T/{tag.number}",
    )
