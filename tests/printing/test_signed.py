"""Signed tags on paper: which symbol of which template carries the signature, and that every label still says its spec."""

from __future__ import annotations

from dataclasses import replace
from importlib import resources

import pytest

from tagger.code import link, signature
from tagger.printing import layout, proof, template
from tagger.printing.boxes import Placed
from tagger.printing.content import Tag
from tagger.printing.preflight import preflight
from tests.code.signed_examples import SECRETS
from tests.speed.samples import ADDRESS, two_elbows

SIGNED = {
    "flag_label", "hang_tag", "hang_tag_two", "roll_4x2", "roll_4x6", "roll_continuous", "sheet_a4", "sheet_letter",
    "metal_plate", "sleeve_tag", "traveller_a5", "traveller_half_letter",
}  # fmt: skip
UNSIGNED = {"do_not_use", "end_tag_a", "end_tag_b", "roll_2x1", "shrink_sleeve", "thin_wrap", "wrap_label"}


@pytest.fixture(scope="module")
def tag() -> Tag:
    plain = two_elbows()
    digits = signature.sealed(plain.number, str(link.parse(plain.link).digits), 1, SECRETS[0])
    return replace(plain, signed_link=link.build(ADDRESS, plain.number, digits))


def _codes(tag: Tag, name: str, dpi: int) -> list[Placed]:
    page = layout.lay_out(tag, template.load(name), dpi)
    proof.prove(tag, page)
    return [placed for placed in page.symbols if placed.symbol.kind == "qr"]


@pytest.mark.parametrize("dpi", [203, 300, 600])
def test_the_large_symbol_is_signed_and_another_at_level_h_is_not(tag: Tag, dpi: int) -> None:
    for name in sorted(SIGNED):
        first, *others = _codes(tag, name, dpi)
        assert first.symbol.text == tag.signed_link, name
        assert first.symbol.level in ("QH" if name != "sleeve_tag" else "MQH"), (name, first.symbol.level)
        small = [one for one in others if template.load(name).box[one.box].holds == "number"]
        assert all(one.symbol.text == link.number_only(tag.link) for one in small), name
        for other in (one for one in others if one not in small):
            assert (other.symbol.text, other.symbol.level) == (tag.link, "H"), name


def test_labels_without_room_carry_the_link_as_ever_and_preflight_says_so(tag: Tag) -> None:
    for name in sorted(UNSIGNED):
        as_ever = _codes(replace(tag, signed_link=""), name, 203)
        assert [p.symbol.text for p in _codes(tag, name, 203)] == [p.symbol.text for p in as_ever], name
    told = {
        name: [
            (f.severity, f.text)
            for f in preflight(tag, template.load(name)).findings
            if f.code == "signature"
        ]
        for name in ("hang_tag", "roll_2x1")
    }
    assert preflight(tag, template.load("hang_tag")).ok
    assert told["hang_tag"] == [("note", "The large QR code is signed.")]
    [(severity, text)] = told["roll_2x1"]
    assert severity == "warn" and "no room for the signature" in text
    assert not [
        f for f in preflight(two_elbows(), template.load("roll_2x1")).findings if f.code == "signature"
    ]


def test_the_readme_says_of_each_whether_it_is_signed() -> None:
    readme = (resources.files("label_templates") / "README.md").read_text(encoding="utf-8")
    rows = readme.split("## Signed tags")[1].split("\n\n")[2]
    assert all(f"`{name}`" in rows for name in SIGNED | UNSIGNED)


def test_a_shop_without_keys_prints_what_it_printed(tag: Tag) -> None:
    plain = replace(tag, signed_link="")
    for name in ("hang_tag", "sleeve_tag"):
        one, *_, other = _codes(plain, name, 203)
        assert one.symbol.text == other.symbol.text == tag.link
        assert (one.symbol.version, one.symbol.level) == (other.symbol.version, other.symbol.level)
