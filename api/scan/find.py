"""Finding a tag without scanning it: a typed number, or a photo of the symbol."""

from __future__ import annotations

import re
from typing import Annotated

from fastapi import APIRouter, File, Request, UploadFile
from fastapi.responses import RedirectResponse, Response

from api.scan.pages import page, refused, wants
from api.shared.photos import MAX_BYTES, read_photo, strangers_photo
from api.web.language import translator_of
from tagger.code import link as tag_link
from tagger.code import number as tag_number
from tagger.errors import LinkError, NumberError, TaggerError
from tagger.i18n import Translator
from tagger.messages import Message

router = APIRouter()
ORDER = re.compile(r"R-[0-9A-Z]{7}", re.IGNORECASE)
MOST_TYPED = 600  # characters; the field takes no more


@router.get("/", include_in_schema=False)
def front() -> Response:
    """Who types the shop's address alone is looking for a tag."""
    return RedirectResponse("/find", status_code=303)


@router.get("/find", include_in_schema=False)
def find(request: Request, q: str = "") -> Response:
    """The form; with ``q``, a typed number, an order number or a whole link, what it names."""
    t = translator_of(request)
    if ORDER.fullmatch(typed := q.strip()):
        return RedirectResponse(f"/order/{typed.upper()}", status_code=303)
    if typed:
        try:
            return RedirectResponse(path_of(tag_link.parse(q)), status_code=303)
        except NumberError as error:
            return _not_found(request, error, typed=q, also=meant(q, t))
        except LinkError as error:
            return _not_found(request, error, typed=q)
    return page(request, "find.html", keep=True, title=t("scan-find-title"), typed="", problems=(), also=())


@router.post("/find", include_in_schema=False)
def find_in_photo(request: Request, image: Annotated[UploadFile, File()]) -> Response:
    """The tag in a photo: its QR symbol, or the Code 128 of its number."""
    try:
        with strangers_photo():
            seen = read_photo(image.file.read(MAX_BYTES + 1))
    except TaggerError as error:
        return _not_found(request, error)
    return RedirectResponse(path_of(seen), status_code=303)


def _not_found(
    request: Request, error: TaggerError, typed: str = "", also: tuple[tuple[str, str], ...] = ()
) -> Response:
    """Why nothing was found, above every way to look again."""
    if wants(request, "text/html", "application/json") == "application/json":
        return refused(request, error, status=422)
    title = translator_of(request)("scan-refused-title")
    return page(
        request,
        "find.html",
        status=422,
        title=title,
        typed=typed[:MOST_TYPED],
        problems=error.problems,
        also=also,
    )


def meant(typed: str, t: Translator) -> tuple[tuple[str, str], ...]:
    """Numbers one usual slip away, as (address, words that name the places that differ)."""
    number = tag_number.compact(typed)
    found = []
    for near in tag_number.near(number)[:3]:
        places = [place for place in range(len(near)) if near[place] != number[place]]
        slips = tuple(Message("scan-meant-slip", place=p + 1, right=near[p], wrong=number[p]) for p in places)
        said = t("scan-meant-number", number=tag_number.format(near), slips=slips)
        found.append((f"/T/{near}", said))
    return tuple(found)


def path_of(found: tag_link.Link) -> str:
    """The address of a tag's page."""
    return f"/T/{found.number}" + (f"/{found.digits}" if found.digits else "")
