"""Signed tags: what is signed reads as before, and nothing else passes for it, in Python and on a phone."""

from __future__ import annotations

import binascii
import json
from datetime import date
from pathlib import Path

from hypothesis import given, settings
from hypothesis import strategies as st

from api.scan.kit import shared_tables
from tagger.code import link, payload, signature, symbol
from tagger.errors import PayloadError
from tagger.signing import NONE, Keys, Signed, state_of
from tagger.trade.tables import tables
from tests.code.payload_examples import EXAMPLES
from tests.code.phone import Phone
from tests.code.signed_examples import ANOTHER, KEYS, NUMBER, SECRETS, signed, vectors
from tests.code.test_payload import EVERY

GOLDEN = json.loads((Path(__file__).parents[1] / "golden" / "signed_1.json").read_text(encoding="utf-8"))
PLAIN = payload.encode(EXAMPLES["contract_example"])
SIGNED = signed("contract_example")
CHANCE = (  # of no seal, and the check fits 520 bits before the end all the same: found by trying names
    "27946301997921894441197943095982164923655698608134676190831843601146265703656947939208305072654662509562020573933"
    "037075047250994530947032907519687115382223654023257501910423720269071326776355537658937794827269544597845685367386"
    "353523"
)
ORDER = 2**252 + 27742317777372353535851937790883648493


def _state(digits: str, number: str = NUMBER) -> Signed | None:
    return state_of(KEYS, number, digits, EXAMPLES["contract_example"].built_on)


def test_golden_signed_tags_read_for_ever() -> None:
    assert vectors() == GOLDEN["vectors"] and KEYS.as_published() == GOLDEN["keys"]
    for vector in GOLDEN["vectors"]:
        assert payload.decode(vector["digits"]) == payload.decode(vector["payload"]), vector["name"]
        built_on = vector["built_on"] and date.fromisoformat(vector["built_on"])
        state = KEYS.state(vector["number"], vector["digits"], built_on)
        assert state and state.as_dict() == vector["state"], vector["name"]


def test_a_phone_says_the_same_of_them_by_its_browser_and_by_the_library(tmp_path: Path) -> None:
    script = """
import { decode } from "./scripts/payload.js";
import { stateOf } from "./scripts/seal.js";
const [tables, keys, vectors] = asked, answers = [];
for (const able of [true, false]) {
  if (!able) crypto.subtle.importKey = () => Promise.reject(new Error("NotSupportedError"));
  for (const known of [keys, []]) for (const { number, digits, payload } of vectors) {
    const content = decode(digits, tables), same = JSON.stringify(content) === JSON.stringify(decode(payload, tables));
    answers.push([same, await stateOf(number, digits, content.built_on, { ...tables, keys: known })]);
  }
}
console.log(JSON.stringify(answers));
"""
    asked = [shared_tables(tables()), GOLDEN["keys"], GOLDEN["vectors"]]
    answers = Phone(tmp_path).run(script, asked)
    none = [
        [True, state.as_dict() if (state := NONE.state(NUMBER, vector["digits"])) else None]
        for vector in GOLDEN["vectors"]
    ]
    newer = {"state": "unchecked", "key_id": 4, "why": None}  # for the shop itself there is no such key
    told = [newer if v["name"] == "an_unknown_key" else v["state"] for v in GOLDEN["vectors"]]
    assert answers == 2 * [*([True, state] for state in told), *none]


def test_every_golden_payload_can_be_signed_and_says_what_it_said() -> None:
    for vector in EVERY:
        digits = signature.sealed(NUMBER, str(vector["digits"]), 3, SECRETS[2])
        alone, seal = signature.opened(digits)
        assert alone == vector["digits"] and seal is not None and seal.key_id == 3
        assert payload.decode(digits) == payload.decode(alone)
        assert payload.unsealed(alone) == (alone, None)


def test_a_signature_serves_for_no_other_number_and_no_other_values() -> None:
    other = payload.encode(EXAMPLES["contract_example"].model_copy(update={"working_pressure_bar": 420.0}))
    value, seal = int(SIGNED), int(SIGNED) & (1 << payload.SEAL_BITS) - 1
    assert _state(SIGNED) == Signed("signed", 3)
    assert _state(SIGNED, ANOTHER) == Signed("broken", 3, "altered")
    moved = str(int(other) << payload.SEAL_BITS | seal)
    assert payload.decode(moved).working_pressure_bar == 420
    assert _state(moved) == Signed("broken", 3, "altered")
    for key_id in (0, 1, 2, 4, 255):
        named = value & ~(0xFF << 512) | key_id << 512
        told = _state(str(named))
        assert told and told.broken, key_id


def test_a_signature_is_spelled_in_one_way_only() -> None:
    """S + order is the same number to whoever does not look: RFC 8032 5.1.7 refuses it."""
    _, seal = signature.opened(SIGNED)
    assert seal is not None
    s = int.from_bytes(seal.signature[32:], "little")
    again = seal.signature[:32] + (s + ORDER).to_bytes(32, "little")
    digits = str(int(PLAIN) << payload.SEAL_BITS | 3 << 512 | int.from_bytes(again, "big"))
    assert _state(digits) == Signed("broken", 3, "altered")


@settings(deadline=None)
@given(bit=st.integers(0, int(SIGNED).bit_length() - 2))
def test_no_changed_bit_leaves_a_signed_tag_signed(bit: int) -> None:
    digits = str(int(SIGNED) ^ 1 << bit)
    told = _state(digits)
    assert told is None or told.broken
    if told is None:  # the payload's own check has noticed
        try:
            payload.decode(digits)
        except PayloadError:
            return
        raise AssertionError(f"bit {bit} read as sound digits")


@settings(deadline=None)
@given(cut=st.integers(1, 150), more=st.text("0123456789", min_size=0, max_size=40))
def test_a_cut_or_lengthened_signature_is_damage_and_never_an_unsigned_tag(cut: int, more: str) -> None:
    for digits in (SIGNED[:-cut] + more, SIGNED + more + "7" * cut, SIGNED[cut:]):
        if digits in (SIGNED, PLAIN):
            continue
        told = _state(digits)
        assert told is None or told.broken, digits


def test_a_check_that_fits_by_chance_at_both_places_is_told_apart_by_the_fields(tmp_path: Path) -> None:
    """Once in 65,536 signed tags the check fits behind the seal too; what it leaves over is no field."""
    before = int(PLAIN) << payload.SEAL_BITS - 16 | 3 << 496 | 123456789
    body = before.to_bytes((before.bit_length() + 7) // 8, "big")
    digits = str(before << 16 | binascii.crc_hqx(body, 0))
    assert payload.unsealed(digits)[0] == PLAIN
    assert payload.decode(digits) == payload.decode(PLAIN)
    assert _state(digits) == Signed("broken", 3, "altered")
    script = """
import { decode } from "./scripts/payload.js";
console.log(JSON.stringify(decode(asked[1], asked[0]).spec.length_mm));
"""
    assert Phone(tmp_path).run(script, [shared_tables(tables()), digits]) == 1250
    assert payload.unsealed(CHANCE) == (CHANCE, None)
    assert payload.decode(CHANCE).spec.hose.standard == "MWFKQNPW1KZLZ2MPXAD9"


def test_what_is_signed_has_one_text_and_names_its_purpose() -> None:
    assert signature.text(NUMBER, PLAIN, 3) == f"hose-tag-1:{NUMBER}:3:{PLAIN}".encode()
    assert (
        len({signature.text(n, d, k) for n in (NUMBER, ANOTHER) for d in ("12", "123") for k in (1, 11)}) == 8
    )


def test_without_keys_nothing_is_said_of_unsigned_tags_and_signed_ones_are_unchecked() -> None:
    assert state_of(NONE, NUMBER, PLAIN, None) is None
    assert state_of(NONE, NUMBER, SIGNED, None) == Signed("unchecked", 3)
    assert state_of(KEYS, NUMBER, None, None) is None
    assert state_of(KEYS, NUMBER, "123", None) is None
    assert Keys().sign(NUMBER, PLAIN) == PLAIN


def test_the_signature_stands_in_the_digits_where_the_symbol_stays_smallest() -> None:
    """Joined to the payload as one number; a second group of digits behind a slash takes a larger symbol."""
    address = "https://tags.example.com"
    joined = {
        level: [
            symbol.version_for(
                link.build(address, NUMBER, signature.sealed(NUMBER, str(v["digits"]), 1, SECRETS[0])), level
            )
            for v in EVERY
        ]
        for level in "MQH"
    }
    apart = [
        symbol.version_for(f"{link.build(address, NUMBER, str(v['digits']))}/{'1' * 157}", "Q") for v in EVERY
    ]
    assert all(one <= other for one, other in zip(joined["Q"], apart, strict=True))
    assert sum(joined["Q"]) < sum(apart)
    assert (max(joined["M"]), max(joined["Q"]), max(joined["H"])) <= (9, 11, 13)
