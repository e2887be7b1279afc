"""The field at the top of every page: a tag, an order, a customer, a machine, a stock number or a lot."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from urllib.parse import quote, urlencode

from fastapi import APIRouter, Request
from starlette.responses import Response

from api.bench.page import go, render
from api.shared.scan_look_up import look_up
from api.web.identity import Builder
from api.web.state import keys_of, store_of
from tagger.code import link
from tagger.code import number as tag_number
from tagger.errors import LinkError, NumberError, TaggerError
from tagger.messages import Message
from tagger.store import Filter, Store

router = APIRouter()


@dataclass(frozen=True)
class Found:
    """One thing that the text names: its kind and its name as a message, and where it is."""

    said: Message
    address: str


@router.get("/go")
def go_to(request: Request, me: Builder, text: str = "") -> Response:
    """A tag opens its record, unless it says something else: then that is said first.

    Else the one thing found is opened, and of several each is told by its kind.
    """
    store, text = store_of(request), text.strip()
    slip: NumberError | None = None
    number: str | None = None
    try:
        number = link.parse(text).number
    except NumberError as error:
        slip = error
    except LinkError:
        pass
    if number and store.known(number):
        tag = look_up(store, text, keys_of(request))
        if not tag.doubtful:
            scanned = f"?digits={link.parse(text).digits}" if tag.signed else ""
            return go(f"/bench/tag/{number}{scanned}")
        found = [Found(tag.say, f"/bench/tag/{number}")]
    else:
        found = list(_found(store, text)) if text else []
        if len(found) == 1:
            return go(found[0].address)
    if number and not found:  # a tag of another shop says its spec by itself
        return go(f"/bench/build?tag={quote(text, safe='')}")
    mistyped = slip if not found and looks_like_a_tag(text) else None
    return render(
        request,
        "top.html",
        title=Message("bench-top-title", text=text),
        here="find",
        status=200 if found else 404,
        problems=mistyped.problems if mistyped else (),
        found=found,
        mistyped=mistyped is not None,
    )


def looks_like_a_tag(text: str) -> bool:
    """Whether somebody meant a tag number: its length, and nothing but its characters.

    >>> looks_like_a_tag("7k3mq-9xw2r2"), looks_like_a_tag("boom hose")
    (True, False)
    """
    number = tag_number.compact(link_end(text))
    return len(number) == tag_number.LENGTH and all(char in tag_number.ALPHABET for char in number)


def link_end(text: str) -> str:
    """The number in a link that was typed, or the text itself."""
    parts = [part for part in text.split("/") if part]
    return next((part for part in reversed(parts) if not part.isdecimal()), text)


def _found(store: Store, text: str) -> Iterator[Found]:
    """Everything the text names: an order by its reference, then by whole or partial names, then a lot."""
    try:
        order = store.order(text)
        yield Found(Message("bench-top-order", order=order.reference), f"/bench/orders/{order.reference}")
    except TaggerError:
        pass
    for name, *_ in store.named("customer", text):
        address = f"/bench/find?{urlencode({'customer': name})}"
        yield Found(Message("bench-top-customer", name=name), address)
    for customer, machine in store.named("machine", text):
        address = f"/bench/machine?{urlencode({'customer': customer, 'machine': machine})}"
        yield Found(Message("bench-top-machine", name=machine, customer=customer or "-"), address)
    label = look_up(store, text)
    if label.kind == "fitting":
        yield Found(label.say, f"/bench/stock?{urlencode({'text': text})}")
    lot = Filter(lot=text)
    if count := store.count(lot):
        address = f"/bench/find?{urlencode({'lot': text})}"
        yield Found(Message("bench-top-lot", lot=text, count=count), address)
    elif store.withdrawn_lots(text):
        yield Found(label.say, "/bench/withdrawn")
