"""The link on the tag, in every form it may be scanned or typed."""

from __future__ import annotations

import pytest

from tagger.code import link
from tagger.errors import LinkError, NumberError

NUMBER = "7K3MQ9XW2R1"


@pytest.mark.parametrize(
    ("text", "digits", "kind"),
    [
        (f"HTTPS://TAGS.EXAMPLE.COM/T/{NUMBER}/12345", "12345", "own"),
        (f"https://tags.example.com/t/{NUMBER.lower()}", None, "own"),
        ("https://tags.example.com/t/7K3MQ-9XW2R1/9?from=mail", "9", "own"),
        (f"HTTPS://TAGS.EXAMPLE.COM/T/987/8004/9521234{NUMBER}", "987", "gs1"),
        (f"https://tags.example.com/8004/9521234{NUMBER}", None, "gs1"),
        ("https://id.example.com/7K3MQ-9XW2R1", None, "number"),
        ("7k3mq-9xw2r1", None, "number"),
    ],
)
def test_every_form_is_read(text: str, digits: str | None, kind: str) -> None:
    assert link.parse(text) == link.Link(NUMBER, digits, kind)  # type: ignore[arg-type]


def test_built_links_read_back() -> None:
    own = link.build("https://tags.example.com", NUMBER, "123")
    assert link.parse(own) == link.Link(NUMBER, "123", "own")
    gs1 = link.build("https://tags.example.com", NUMBER, "123", gs1_prefix="9521234")
    assert link.parse(gs1) == link.Link(NUMBER, "123", "gs1")


@pytest.mark.parametrize(
    "base", ["tags.example.com", "https://tags.example.com/shop?x=1", "https://tags_.example"]
)
def test_a_base_address_that_would_not_fit_is_refused(base: str) -> None:
    with pytest.raises(LinkError, match="base_url"):
        link.build(base, NUMBER)


def test_a_strange_link_is_refused_with_words() -> None:
    with pytest.raises(LinkError, match="not the link of a tag"):
        link.parse("https://example.com/about/us")


def test_a_strange_link_is_told_as_far_as_a_hundred_and_twenty_letters() -> None:
    for text in ("https://example.com/" + "a" * 100, "https://example.com/" + "a" * 101):
        with pytest.raises(LinkError) as refused:
            link.parse(text)
        assert refused.value.problems[0].value == text[:120]


@pytest.mark.parametrize(
    "text", ["http://[x/", "//[", f"https://[1.2]/T/{NUMBER}", f"http://a\u2100b/t/{NUMBER}"]
)
def test_a_broken_address_is_refused_with_words(text: str) -> None:
    with pytest.raises(LinkError, match="not the link of a tag"):
        link.parse(text)
    assert not link.is_valid(text)
    with pytest.raises(LinkError, match="base_url"):
        link.build(text, NUMBER)


def test_a_slip_in_the_number_is_told_apart_from_a_strange_link() -> None:
    with pytest.raises(NumberError, match="check character"):
        link.parse("https://tags.example.com/t/7K3MQ-9XW2R2")
