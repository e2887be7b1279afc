"""The shop's key file: for its owner alone, whole or not at all, and keys take turns in it."""

from __future__ import annotations

import json
import threading
from datetime import date
from pathlib import Path

import pypdfium2
import pytest

from tagger import signing
from tagger.cli import main
from tagger.code import link, payload
from tagger.papers import key_page
from tagger.record_tag import preview, tags_of
from tagger.settings import ShopSettings
from tagger.signing import Keys, Signed, SigningError
from tagger.spec import AssemblySpec
from tagger.store import Registration, Store
from tagger.trade import assess
from tests.code.payload_examples import EXAMPLES
from tests.code.signed_examples import NUMBER, PUBLIC, SECRETS
from tests.test_spec import EXAMPLE

DIGITS = payload.encode(EXAMPLES["contract_example"])
TODAY, LATER, LAST = date(2026, 11, 25), date(2027, 3, 1), date(2027, 3, 2)


@pytest.fixture
def file(tmp_path: Path) -> Path:
    return tmp_path / "keys.json"


def _state(file: Path, digits: str, built_on: date | None = TODAY) -> Signed | None:
    return signing.load(file).state(NUMBER, digits, built_on)


def test_a_new_file_in_place_of_a_lost_one_refuses_its_tags_and_no_file_at_all_leaves_them_unchecked(
    file: Path,
) -> None:
    """What the guide of a shop's server (``api/deploy/README.md``) warns of."""
    signing.renew(file, TODAY)
    signed = signing.load(file).sign(NUMBER, DIGITS)
    file.unlink()
    assert signing.NONE.state(NUMBER, signed, TODAY) == Signed("unchecked", 1)
    signing.renew(file, LATER)
    assert _state(file, signed) == Signed("broken", 1, "altered")


def test_with_the_published_keys_a_lost_file_goes_on_and_its_tags_stay_signed(file: Path) -> None:
    signing.renew(file, TODAY)
    old, published = signing.load(file), file.with_name("hose-tag-keys.json")
    signed = old.sign(NUMBER, DIGITS)
    published.write_text(json.dumps({"about": "", "keys": old.as_published()}), encoding="utf-8")
    with pytest.raises(SigningError, match="a key file already"):
        signing.renew(file, LATER, published)
    file.unlink()
    assert signing.renew(file, LATER, published).id == 2
    assert _state(file, signed) == Signed("signed", 1)
    assert _state(file, signed, LAST) == Signed("broken", 1, "ended_key")
    assert _state(file, signing.load(file).sign(NUMBER, DIGITS)) == Signed("signed", 2)
    file.unlink()
    for text in ("", "[]", "7", '{"keys": []}', '{"keys": 7}', '{"keys": [{"id": 1}]}', "\udcff"):
        published.write_text(text, encoding="utf-8", errors="surrogatepass")
        with pytest.raises(SigningError, match="not the list of public keys"):
            signing.renew(file, LATER, published)
    assert not file.exists()


def test_keys_take_turns_and_what_an_old_one_signed_stays_signed(file: Path) -> None:
    assert signing.renew(file, TODAY).id == 1
    first = signing.load(file).sign(NUMBER, DIGITS)
    assert _state(file, first) == Signed("signed", 1)
    assert signing.renew(file, LATER).id == 2
    second = signing.load(file).sign(NUMBER, DIGITS)
    assert [key.until for key in signing.load(file).keys] == [LATER, None]
    assert _state(file, first) == Signed("signed", 1)
    assert _state(file, second) == Signed("signed", 2)  # an older tag, printed again
    assert _state(file, first, LATER) == Signed("signed", 1)
    assert _state(file, first, LAST) == Signed("broken", 1, "ended_key")


def test_a_withdrawn_key_counts_for_nothing_and_another_signs_at_once(file: Path) -> None:
    signing.renew(file, TODAY)
    signing.renew(file, TODAY)
    stolen = signing.load(file).sign(NUMBER, DIGITS)
    assert signing.withdraw(file, 2, LATER).id == 3
    assert _state(file, stolen) == Signed("broken", 2, "withdrawn_key")
    assert _state(file, signing.load(file).sign(NUMBER, DIGITS)) == Signed("signed", 3)
    private = json.loads(file.read_text(encoding="utf-8"))["private"]
    assert signing.withdraw(file, 1, LATER).id == 3  # one that signs no longer: the last stays
    assert json.loads(file.read_text(encoding="utf-8"))["private"] == private
    with pytest.raises(SigningError, match="from 1 to 3"):
        signing.withdraw(file, 4, LATER)


def test_nobody_but_its_owner_reads_the_file_and_a_broken_one_is_refused(file: Path) -> None:
    with pytest.raises(SigningError, match="no key file"):
        signing.load(file)
    signing.renew(file, TODAY)
    assert file.stat().st_mode & 0o777 == 0o600
    for mode in (0o640, 0o604):
        file.chmod(mode)
        with pytest.raises(SigningError, match="chmod 600"):
            signing.load(file)
    file.chmod(0o600)
    whole = file.read_text(encoding="utf-8")
    values = json.loads(whole)
    small = {**values["keys"][0], "public": (1).to_bytes(32, "little").hex()}
    broken = [
        "",
        "[]",
        whole[: len(whole) // 2],
        json.dumps({**values, "private": SECRETS[0].hex()}),  # of another key
        json.dumps({**values, "keys": []}),
        json.dumps({"keys": [small], "private": None}),  # a key for which anybody can sign
        json.dumps({**values, "keys": [{**values["keys"][0], "id": 2}]}),
        json.dumps({**values, "more": 1}),
    ]
    for text in broken:
        file.write_text(text, encoding="utf-8")
        with pytest.raises(SigningError, match="not a complete key file"):
            signing.load(file)
        with pytest.raises(SigningError):
            signing.renew(file, TODAY)
        assert file.read_text(encoding="utf-8") == text
    assert {one.name for one in file.parent.iterdir()} == {file.name}


def test_two_commands_at_once_lose_no_key(file: Path) -> None:
    signing.renew(file, TODAY)
    made: list[int] = []

    def renew() -> None:
        while True:
            try:
                made.append(signing.renew(file, TODAY).id)
                return
            except SigningError:
                continue

    threads = [threading.Thread(target=renew) for _ in range(8)]
    for thread in threads:
        thread.start()
    for thread in threads:
        thread.join()
    assert sorted(made) == list(range(2, 10))
    assert [key.id for key in signing.load(file).keys] == list(range(1, 10))


def test_a_change_of_the_file_is_seen_at_once(file: Path) -> None:
    shop = ShopSettings(signing_key=file)
    signing.renew(file, TODAY)
    one = shop.keys()
    assert shop.keys() is one
    signing.renew(file, TODAY)
    assert [key.id for key in shop.keys().keys] == [1, 2]
    assert ShopSettings().keys() is signing.NONE
    assert SECRETS[0].hex() not in repr(Keys.model_validate({"keys": [], "private": None}))
    assert one.private is not None and one.private not in repr(one)


def test_a_tag_is_printed_signed_and_its_preview_is_as_large(tmp_path: Path, file: Path) -> None:
    signing.renew(file, TODAY)
    shop, spec = ShopSettings(signing_key=file, gs1_prefix="0614141"), AssemblySpec.read(EXAMPLE)
    with Store.open(f"sqlite:///{tmp_path}/tags.sqlite3") as store:
        [tag] = tags_of(store, store.register(spec, assess(spec), built_on=TODAY), shop)
        [plain] = tags_of(store, [store.assembly(tag.number)], ShopSettings(gs1_prefix="0614141"))
    found = link.parse(tag.signed_link)
    assert found.kind == "gs1" and found.number == tag.number and found.digits is not None
    assert payload.unsealed(found.digits)[0] == link.parse(tag.link).digits == link.parse(plain.link).digits
    assert shop.keys().state(tag.number, found.digits, TODAY) == Signed("signed", 1)
    assert link.number_only(tag.signed_link) == link.number_only(tag.link)
    assert plain.signed_link == ""
    specimen = preview(Registration(spec, assess(spec), 1, TODAY), shop)
    assert len(specimen.signed_link) == pytest.approx(len(tag.signed_link), abs=1)


def test_the_key_page_holds_every_key_in_four_languages() -> None:
    keys = Keys.model_validate(
        {
            "keys": [
                {"id": 1, "public": PUBLIC[0], "from": "2020-01-01", "until": "2026-06-30"},
                {"id": 2, "public": PUBLIC[1], "from": "2026-06-30", "until": "2026-07-01", "withdrawn": "2026-07-01"},
                {"id": 3, "public": PUBLIC[2], "from": "2026-07-01"},
            ]
        }
    )  # fmt: skip
    shop = ShopSettings(base_url="https://tags.example.com", shop_name="Ridge Hose")
    withdrawn = {"en": "WITHDRAWN", "fr": "RETIRÉE", "es": "RETIRADA", "de": "ZURÜCKGEZOGEN"}
    for language, word in withdrawn.items():
        text = pypdfium2.PdfDocument(key_page.made(keys, shop, language))[0].get_textpage().get_text_range()
        plain = "".join(text.split())
        assert all(public in plain for public in PUBLIC[:3])
        assert word in text and "https://tags.example.com/.well-known/hose-tag-keys.json" in plain


def test_a_shop_makes_a_key_prints_signed_tags_and_reads_them(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    """Made, printed, read back from the picture; then the key is withdrawn, and the same picture is refused."""

    def said(*arguments: str, code: int = 0) -> str:
        assert main(list(arguments)) == code
        return capsys.readouterr().out

    file = tmp_path / "keys.json"
    monkeypatch.chdir(tmp_path)
    monkeypatch.setenv("TAGGER_DATABASE_URL", f"sqlite:///{tmp_path}/tags.sqlite3")
    monkeypatch.setenv("TAGGER_BASE_URL", "https://tags.example.com")
    Path("spec.json").write_text(json.dumps(EXAMPLE), encoding="utf-8")
    refused = json.loads(said("signing-key", "new", "--json", code=1))["refused"]
    assert [problem["field"] for problem in refused] == ["TAGGER_SIGNING_KEY"]
    monkeypatch.setenv("TAGGER_SIGNING_KEY", str(file))
    made = json.loads(said("signing-key", "new", "--json"))["keys"]
    assert [key["id"] for key in made] == [1]
    [number] = json.loads(said("register", "spec.json", "--json"))["numbers"]
    said("print", number, "--out", "tag.png")
    read = json.loads(said("read", "tag.png", "--json"))
    assert read["signature"] == {"state": "signed", "key_id": 1, "why": None}
    assert "Signature: Signed by this shop" in said("read", read["link"])
    parsed = link.parse(read["link"])
    plain = read["link"].replace(str(parsed.digits), payload.unsealed(str(parsed.digits))[0])
    assert "Signature: Not signed" in said("read", plain)
    forged = said("read", read["link"].replace(parsed.number, NUMBER))
    assert "The signature does not fit: do not trust the values" in forged
    assert "not those that were signed" in forged
    assert "Signature of A: Signed by this shop\nSignature of B: Not signed" in said(
        "compare", read["link"], plain
    )
    compared = json.loads(said("compare", "spec.json", read["link"].replace(parsed.number, NUMBER), "--json"))
    assert compared["signatures"] == {"a": None, "b": {"state": "broken", "key_id": 1, "why": "altered"}}
    said("signing-key", "withdraw", code=1)
    said("signing-key", "withdraw", "--key", "1")
    assert json.loads(said("read", "tag.png", "--json"))["signature"]["why"] == "withdrawn_key"
    listed = said("signing-key", "page", "--out", "keys.pdf") + said("signing-key")
    assert "WITHDRAWN" in listed
    assert Path("keys.pdf").read_bytes().startswith(b"%PDF")
    secret = json.loads(file.read_text(encoding="utf-8"))["private"]
    assert secret not in listed + said("signing-key", "--json")
