"""The wall chart and the pocket booklet, made for the shop's wall and its customers' pockets."""

from __future__ import annotations

from typing import Literal

from fastapi import APIRouter, Request
from starlette.responses import Response

from api.bench.page import pdf, refused, render
from api.web.identity import Builder
from api.web.language import paper_language
from api.web.state import settings_of, store_of, tables_of
from tagger.errors import TaggerError
from tagger.i18n import LANGUAGES
from tagger.messages import Message
from tagger.papers import booklet, wall_chart

router = APIRouter()
CONNECTIONS = ("all", "stock", "numbers")


@router.get("/papers")
def papers_page(request: Request, me: Builder) -> Response:
    """What can be made, on which paper, in which language."""
    return render(
        request,
        "papers.html",
        title=Message("charts-page-title"),
        here="shop",
        charts=tuple(wall_chart.PAPERS),
        booklets=tuple(booklet.PAPERS),
        connections=CONNECTIONS,
        paper_languages=LANGUAGES,
        paper_language=settings_of(request).language,
    )


@router.get("/papers/chart.pdf")
def chart(
    request: Request,
    me: Builder,
    paper: str = "A3",
    connections: Literal["all", "stock", "numbers"] = "all",
) -> Response:
    """The chart; refused where the stock has no connection of the tables, or its letters would be too small."""
    stock = None if connections == "all" else store_of(request).fittings()
    try:
        body = wall_chart.of_shop(
            settings_of(request),
            tables_of(request),
            paper_language(request),
            paper=paper,
            stock=stock,
            numbers=connections == "numbers",
        )
    except TaggerError as error:
        return refused(request, 422, Message("charts-page-chart"), error)
    return pdf(body, "wall-chart")


@router.get("/papers/booklet.pdf")
def pocket_booklet(request: Request, me: Builder, paper: str = "A4", form: str = "sheets") -> Response:
    """The booklet on sheets to be folded, or page by page."""
    try:
        body = booklet.of_shop(
            settings_of(request),
            tables_of(request),
            paper_language(request),
            paper=paper,
            page_by_page=form == "pages",
        )
    except TaggerError as error:
        return refused(request, 422, Message("charts-page-booklet"), error)
    return pdf(body, "booklet")
