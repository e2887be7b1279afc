"""The language of an answer: the one chosen, else the browser's, else the shop's."""

from __future__ import annotations

import pytest
from fastapi import FastAPI
from starlette.requests import Request

from api.settings import Settings
from api.web.language import language_of, translator_of


def _request(*, query: str = "", cookie: str = "", accept: str = "", shop: str = "fr") -> Request:
    headers = [(b"cookie", cookie.encode()), (b"accept-language", accept.encode())]
    app = FastAPI()
    app.state.settings = Settings(language=shop)
    return Request({"type": "http", "headers": headers, "query_string": query.encode(), "app": app})


@pytest.mark.parametrize(
    ("asked", "language"),
    [
        ({"query": "lang=es", "cookie": "lang=de", "accept": "en"}, "es"),
        ({"query": "lang=xx", "cookie": "lang=de", "accept": "en"}, "de"),
        ({"cookie": "lang=xx", "accept": "de-AT, en;q=0.5"}, "de"),
        ({"accept": "EN"}, "en"),
        ({"accept": "xx, *;q=0.1"}, "fr"),
        ({}, "fr"),
    ],
)
def test_what_was_chosen_goes_before_the_browser_and_the_browser_before_the_shop(
    asked: dict[str, str], language: str
) -> None:
    assert language_of(_request(**asked)) == language
    assert translator_of(_request(**asked)).language == language
