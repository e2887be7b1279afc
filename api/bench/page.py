"""What every page of the bench shares: rendering, language, navigation, problems under their captions."""

from __future__ import annotations

from collections.abc import Iterable
from typing import Any

from fastapi import Request
from starlette.responses import RedirectResponse, Response

from api.bench.captions import caption
from api.web.identity import who
from api.web.page_words import page_words, remember_language
from api.web.state import store_of, templates_of
from tagger.errors import Problem, TaggerError
from tagger.messages import Message
from tagger.record import recorded
from tagger.store import OrderState, Role

NAV = (
    ("build", Role.BUILDER),
    ("prints", Role.BUILDER),
    ("find", Role.BUILDER),
    ("orders", Role.BUILDER),
    ("withdrawn", Role.BUILDER),
    ("lists", Role.COUNTER),
    ("figures", Role.MANAGER),
    ("shop", Role.MANAGER),
)
"""The pages in the head of every page; each has its address and its message by this name."""
NOTES = ("saved", "recorded", "withdrawn", "lifted", "sent")
"""What a page may say after a form; named in its address, so that nobody can put words there."""
NOT_FOUND = Message("bench-not-found")


def render(
    request: Request,
    page: str,
    *,
    title: Message | str,
    status: int = 200,
    problems: Iterable[Problem] = (),
    here: str = "",
    **values: Any,
) -> Response:
    """One page, never kept by browsers or proxies. ``title``: a message, or a name as it is."""
    me = who(request)
    store = store_of(request)
    waiting: dict[str, int] = {}
    if me:
        waiting["orders"] = store.count_orders(OrderState.RECEIVED)
        waiting["prints"] = store.count_stuck_prints()
    speech = spoken(request)
    note = request.query_params.get("note", "")
    common: dict[str, Any] = {
        "title": speech["said"](title),
        "problems": list(problems),
        "here": here,
        "me": me,
        "nav": [(name, f"bench-nav-{name}", role) for name, role in NAV],
        "waiting": waiting,
        "note": speech["t"](f"bench-note-{note}") if note in NOTES else "",
        "proof_states": lambda items: store.proof_states([item.number for item in items]),
    }
    response: Response = templates_of(request).TemplateResponse(
        request, f"bench/{page}", speech | common | values, status_code=status
    )
    response.headers["Cache-Control"] = "no-store"
    remember_language(request, response)
    return response


def spoken(request: Request) -> dict[str, Any]:
    """What a template of the bench needs to speak: see ``page_words``; and fields by their captions."""
    elsewhere = "/bench/build" if who(request) else "/bench/sign-in"
    speech = page_words(request, elsewhere)
    t = speech["t"]
    return speech | {
        "recorded": recorded,
        "caption": lambda field: t(caption(field)),
        "captioned": lambda field: t("bench-caption", field=caption(field)),
    }


def go(address: str) -> Response:
    """On to another page after a form."""
    return RedirectResponse(address, 303)


def pdf(body: bytes, name: str) -> Response:
    """A paper to look at or print, under a name of its own; never kept."""
    headers = {"Content-Disposition": f'inline; filename="{name}.pdf"', "Cache-Control": "no-store"}
    return Response(body, media_type="application/pdf", headers=headers)


def refused(
    request: Request,
    status: int,
    title: Message | str,
    why: Message | str | TaggerError,
) -> Response:
    """A page that says why something was not done."""
    problems = why.problems if isinstance(why, TaggerError) else ()
    text = "" if isinstance(why, TaggerError) else why
    return render(
        request, "refused.html", title=title, status=status, problems=problems, text=text, narrow=True
    )
