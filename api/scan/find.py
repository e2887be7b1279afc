"""Finding a tag without scanning it: a typed number, or a photo of the symbol."""

from __future__ import annotations

import io
from typing import Annotated

import zxingcpp
from fastapi import APIRouter, File, Request, UploadFile
from fastapi.responses import RedirectResponse, Response
from PIL import Image, UnidentifiedImageError

from api.scan.i18n import Translator, choose
from api.scan.pages import page, refused
from tagger.code import link as tag_link
from tagger.code import number as tag_number
from tagger.errors import LinkError, NumberError, Problem, TaggerError

router = APIRouter()
MAX_BYTES = 15_000_000
MAX_PIXELS = 60_000_000
_FORMATS = zxingcpp.BarcodeFormats([zxingcpp.BarcodeFormat.QRCode, zxingcpp.BarcodeFormat.Code128])


@router.get("/find", include_in_schema=False)
def find(request: Request, q: str = "") -> Response:
    """The form; with ``q``, a typed number or a whole link, the tag itself."""
    if q.strip():
        try:
            return RedirectResponse(path_of(q), status_code=303)
        except NumberError as error:
            near = [(f"/T/{n}", tag_number.format(n)) for n in tag_number.near(q)[:3]]
            return refused(request, error, status=422, typed=q, also=tuple(near))
        except LinkError as error:
            return refused(request, error, status=422, typed=q)
    t = Translator(choose(request))
    return page(request, "find.html", keep=True, title=t("Find a tag"), typed="")


@router.post("/find", include_in_schema=False)
def find_in_photo(request: Request, photo: Annotated[UploadFile, File()]) -> Response:
    """The tag in a photo: its QR symbol, or the Code 128 of its number."""
    try:
        return RedirectResponse(read_photo(photo.file.read(MAX_BYTES + 1)), status_code=303)
    except TaggerError as error:
        return refused(request, error, status=422)


def path_of(text: str) -> str:
    """The address of the page for a scanned or typed string. Raises NumberError, LinkError."""
    found = tag_link.parse(text)
    return f"/T/{found.number}" + (f"/{found.digits}" if found.digits else "")


def read_photo(data: bytes) -> str:
    """The address of the tag in an image file; the QR symbol before the bar code.

    Raises LinkError when there is no tag in it, or it is no image.
    """
    nearer = "Go nearer, hold still, and let no light reflect; or type the number."
    if len(data) > MAX_BYTES:
        raise LinkError(Problem("photo", None, "is too large", "Take it with fewer pixels."))
    try:
        image = Image.open(io.BytesIO(data))
        if image.width * image.height > MAX_PIXELS:
            raise LinkError(Problem("photo", None, "is too large", "Take it with fewer pixels."))
        grey = image.convert("L")
    except (UnidentifiedImageError, OSError, Image.DecompressionBombError):
        raise LinkError(
            Problem("photo", None, "is not a picture that can be read", "Send a JPEG or PNG.")
        ) from None
    found = sorted(
        zxingcpp.read_barcodes(grey, formats=_FORMATS),
        key=lambda code: code.format != zxingcpp.BarcodeFormat.QRCode,
    )
    for code in found:
        try:
            return path_of(code.text)
        except (NumberError, LinkError):
            continue
    why = "holds codes, but none of them is a tag's" if found else "shows no code that can be read"
    raise LinkError(Problem("photo", None, why, nearer))
