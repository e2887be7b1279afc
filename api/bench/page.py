"""What every page of the bench shares: rendering, navigation, problems shown where they belong."""

from __future__ import annotations

from collections.abc import Iterable
from typing import Any

from fastapi import Request
from starlette.responses import RedirectResponse, Response

from api.web.identity import who
from api.web.state import store_of, templates_of, words_of
from tagger.errors import Problem
from tagger.store import OrderState, Role

NAV = (
    ("/bench/build", "Build", Role.BUILDER),
    ("/bench/prints", "Prints", Role.BUILDER),
    ("/bench/find", "Find", Role.BUILDER),
    ("/bench/orders", "Orders", Role.BUILDER),
    ("/bench/withdrawn", "Withdrawn", Role.BUILDER),
    ("/bench/lists", "Lists", Role.COUNTER),
    ("/bench/figures", "Figures", Role.MANAGER),
    ("/bench/shop", "Shop", Role.MANAGER),
)
NOTES = {
    "saved": "Saved.",
    "recorded": "Recorded.",
    "withdrawn": "Withdrawn. Every page of these tags now says so first.",
    "lifted": "The withdrawal is lifted; that is in the record.",
    "sent": "The order requests are in the inbox.",
}
"""What a page may say after a form; named in its address, so that nobody can put words there."""


def render(
    request: Request,
    page: str,
    *,
    title: str,
    status: int = 200,
    problems: Iterable[Problem] = (),
    here: str = "",
    **values: Any,
) -> Response:
    """One page. Nothing of the bench is kept by browsers or proxies."""
    me = who(request)
    store = store_of(request)
    waiting: dict[str, int] = {}
    if me:
        waiting["/bench/orders"] = store.count_orders(OrderState.RECEIVED)
        waiting["/bench/prints"] = store.count_stuck_prints()
    common: dict[str, Any] = {
        "title": title, "problems": list(problems), "here": here, "me": me, "nav": NAV, "waiting": waiting,
        "note": NOTES.get(request.query_params.get("note", ""), ""), "words": words_of(request),
    }  # fmt: skip
    response: Response = templates_of(request).TemplateResponse(
        request, f"bench/{page}", common | values, status_code=status
    )
    response.headers["Cache-Control"] = "no-store"
    return response


def go(address: str) -> Response:
    """On to another page after a form."""
    return RedirectResponse(address, 303)


def refused(request: Request, status: int, title: str, text: str) -> Response:
    return render(request, "refused.html", title=title, status=status, text=text, narrow=True)
