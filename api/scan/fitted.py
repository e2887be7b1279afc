"""Saying that a hose was fitted; when its life ends by the sources; the day as a calendar file."""

from __future__ import annotations

import re
from collections.abc import Callable, Mapping
from datetime import UTC, date, datetime, timedelta
from typing import Any, Final, NamedTuple

from fastapi import APIRouter, Request
from fastapi.responses import JSONResponse, RedirectResponse, Response
from markupsafe import Markup

from api.scan import tag_page
from api.scan.fitted_form import fitted_form
from api.scan.pages import held_off, page, refused, wants
from api.scan.received import Received, ReceivedForm
from api.shared.known_tag import Tag, find
from api.web.language import translator_of
from api.web.limits import TooMany, admit
from api.web.state import settings_of, store_of, tables_of
from tagger.code import number as tag_number
from tagger.errors import Problem, StoreError, TaggerError
from tagger.i18n import Translator
from tagger.messages import Message
from tagger.store import FittedState
from tagger.trade.servicelife import ReplaceBy, replace_by

router = APIRouter()
AN_HOUR: Final = 30
"""How many reports one address may send in an hour, and how many may be sent of one tag."""


@router.post("/fitted", include_in_schema=False)
def report(request: Request, form: ReceivedForm) -> Response:
    """Keeps the report, once; the shop decides whether it counts."""
    as_json = wants(request, "text/html", "application/json") == "application/json"
    typed = form.texts.get("number", "")
    try:
        number = tag_number.validate(typed)
        admit(request, "report", number, AN_HOUR, form.texts)
        store_of(request).report_fitted(number, **_said(form), key=form.texts.get("key") or None)
    except TooMany as error:
        return held_off(request, error, translator_of(request)("fitted-not_sent"))
    except TaggerError as error:
        if not as_json and tag_number.is_valid(typed) and store_of(request).known(tag_number.compact(typed)):
            tag = find(store_of(request), typed, None, tables_of(request))
            return _page(request, tag, form.texts, error)
        title = translator_of(request)("fitted-not_sent")
        return refused(request, error, status=422, typed=typed, title=title)
    if as_json:
        answer = {"reference": tag_number.format(number), "page": f"/fitted/{number}"}
        if stop := _stop(find(store_of(request), number, None, tables_of(request))):
            answer["stop"] = translator_of(request)(stop.act)  # read by a phone that sends it a day later
        return JSONResponse(answer, status_code=201)
    return RedirectResponse(f"/fitted/{number}", status_code=303)


class _Stop(NamedTuple):
    """What is told of a hose that is said to be on a machine and must not be used."""

    title: Message
    act: Message


def _stop(tag: Tag) -> _Stop | None:
    if tag.void:
        return _Stop(Message("scan-void-title"), Message("fitted-void-act"))
    if tag.withdrawn:
        return _Stop(Message("scan-withdrawn-title"), Message("scan-withdrawn-act"))
    return _Stop(Message("scan-held-title"), Message("scan-held-act")) if tag.held else None


def _said(form: Received) -> dict[str, Any]:
    """The form as the store takes it. Raises StoreError naming the field."""
    given = form.texts
    return {
        "fitted_on": _day(given.get("fitted_on", "")),
        "machine": given.get("machine"),
        "machine_hours": hours(given.get("machine_hours", "")),
        "fitted_by": given.get("fitted_by"),
        "photos": form.photos(photo_fitted="fitted"),
    }


def _day(text: str) -> date:
    try:
        return date.fromisoformat(text.strip())
    except ValueError:
        raise StoreError(Problem("fitted_on", text, Message("scan-order-day", given=text))) from None


def hours(text: str) -> float | None:
    """Machine hours as typed, with a decimal point or comma. Raises StoreError.

    A mark before exactly three digits may be one of thousands or of decimals: it is refused.

    >>> hours("12345"), hours("1 234,5"), hours("")
    (12345.0, 1234.5, None)
    """
    plain = re.sub(r"[\s\u00a0\u202f']", "", text)
    if not plain:
        return None
    if not re.fullmatch(r"\d{1,7}([.,]\d{1,2})?", plain):
        raise StoreError(Problem("machine_hours", text, Message("fitted-hours-not-read", given=text)))
    return float(plain.replace(",", "."))


@router.get("/fitted/{number}", include_in_schema=False)
def fitted_page(request: Request, number: str) -> Response:
    """When it was reported fitted, and until when the sources would have it replaced."""
    return _with_tag(request, number, None, lambda tag: _page(request, tag))


@router.get("/calendar/{number}.ics", include_in_schema=False)
@router.get("/calendar/{number}/{digits}.ics", include_in_schema=False)
def calendar(request: Request, number: str, digits: str | None = None) -> Response:
    """The day by which to replace a hose, as an iCalendar file (RFC 5545)."""

    def answer(tag: Tag) -> Response:
        life = replace_by(tag.content.built_on, tag.fitted_on, tables_of(request))
        if life is None:
            raise StoreError(Problem("number", tag_number.format(tag.number), Message("fitted-no-date")))
        shop = tag_page.shop_of(request)
        text = calendar_of(
            tag.number, life, shop.base_url + tag.path, translator_of(request), _source(life, request)
        )
        return Response(
            text,
            media_type="text/calendar; charset=utf-8",
            headers={
                "Content-Disposition": f'attachment; filename="{tag.number}.ics"',
                "Cache-Control": "no-store",
            },
        )

    return _with_tag(request, number, digits, answer)


def _with_tag(
    request: Request, number: str, digits: str | None, answer: Callable[[Tag], Response]
) -> Response:
    try:
        return answer(find(store_of(request), number, digits, tables_of(request)))
    except TaggerError as error:
        return refused(request, error, status=404, typed=number)


def _page(
    request: Request,
    tag: Tag,
    typed: Mapping[str, str] | None = None,
    error: TaggerError | None = None,
) -> Response:
    """The reports without who made them, the life by the sources, and the form."""
    t = translator_of(request)
    stop = _stop(tag)
    life = None if stop else replace_by(tag.content.built_on, tag.fitted_on, tables_of(request))
    reports = store_of(request).fitted_reports(number=tag.number) if tag.record else []
    return page(
        request,
        "fitted.html",
        status=422 if error else 200,
        title=t("fitted-page", number=tag_number.format(tag.number)),
        number=tag_number.format(tag.number),
        problems=error.problems if error else (),
        reports=[report for report in reports if report.state is not FittedState.REFUSED],
        stop=stop,
        life=life,
        source=_source(life, request) if life else "",
        calendar=f"/calendar/{tag.number}.ics",
        back=f"/T/{tag.number}",
        form=Markup(fitted_form(t, tag.number, typed)),
        machine=f"/machine/{tag.number}" if _has_machine(request, tag) else None,
        shop=tag_page.shop_of(request),
    )


def _has_machine(request: Request, tag: Tag) -> bool:
    """Whether the shop shows the other hoses of the tag's machine, and knows the machine."""
    return settings_of(request).machine_hoses != "off" and bool(tag.record and tag.record.machine)


def _source(life: ReplaceBy, request: Request) -> str:
    return tables_of(request).where_from(life.source)


def calendar_of(number: str, life: ReplaceBy, address: str, t: Translator, source: str) -> str:
    """One all-day event on the day, with a reminder 30 days before; the same event each time (UID)."""
    shown = tag_number.format(number)
    said = t("fitted-event-description", source=source, address=address)
    lines = [
        "BEGIN:VCALENDAR",
        "VERSION:2.0",
        "PRODID:-//hose assembly tags//EN",
        "BEGIN:VEVENT",
        f"UID:replace-{number}@{address.split('/')[2]}",
        f"DTSTAMP:{datetime.now(UTC):%Y%m%dT%H%M%SZ}",
        f"DTSTART;VALUE=DATE:{life.until:%Y%m%d}",
        f"DTEND;VALUE=DATE:{life.until + timedelta(days=1):%Y%m%d}",
        f"SUMMARY:{_escaped(t('fitted-event', number=shown))}",
        f"DESCRIPTION:{_escaped(said)}",
        f"URL:{address}",
        "TRANSP:TRANSPARENT",
        "BEGIN:VALARM",
        "ACTION:DISPLAY",
        "TRIGGER:-P30D",
        f"DESCRIPTION:{_escaped(t('fitted-event', number=shown))}",
        "END:VALARM",
        "END:VEVENT",
        "END:VCALENDAR",
    ]
    return "".join(f"{folded}\r\n" for line in lines for folded in _folded(line))


def _escaped(text: str) -> str:
    return re.sub(r"([\\,;])", r"\\\1", text).replace("\n", "\\n")


def _folded(line: str) -> list[str]:
    """A line in pieces of at most 75 octets, each but the first begun by a blank (RFC 5545, 3.1)."""
    pieces, piece = [], ""
    for sign in line:
        if len((piece + sign).encode()) > 74:
            pieces.append(piece)
            piece = " "
        piece += sign
    return [*pieces, piece]
