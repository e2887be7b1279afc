"""Who may sign in; secrets are kept as hashes."""

from __future__ import annotations

from concurrent.futures import ThreadPoolExecutor
from datetime import UTC, datetime, timedelta

import pytest
from sqlalchemy import text

from tagger.errors import StoreError
from tagger.store import Role, Store
from tagger.store.own_account import Noted


def test_the_first_code_makes_one_manager_and_is_used_up(store: Store) -> None:
    code = store.make_first_code()
    assert code is not None
    with pytest.raises(StoreError, match="code"):
        store.make_first_manager("0000000000", "Anna", "hash")
    anna = store.make_first_manager(code.lower(), " Anna ", "hash")
    assert (anna.name, anna.role) == ("Anna", Role.MANAGER)
    with pytest.raises(StoreError, match="code"):
        store.make_first_manager(code, "Bela", "hash")
    assert store.make_first_code() is None


def test_the_first_code_is_good_for_a_day_and_another_start_makes_another(url: str) -> None:
    moment = datetime(2026, 3, 2, tzinfo=UTC)
    with Store.open(url, now=lambda: moment) as store:
        old = store.make_first_code() or ""
        moment += timedelta(days=1, seconds=1)
        new = store.make_first_code() or ""
        with pytest.raises(StoreError, match="code"):
            store.make_first_manager(old, "Anna", "hash")
        assert store.make_first_manager(new, "Anna", "hash").role is Role.MANAGER


def test_names_are_one_in_any_case(store: Store) -> None:
    store.add_person("Anna", "hash", Role.BUILDER)
    with pytest.raises(StoreError, match="already in use"):
        store.add_person("ANNA", "hash", Role.BUILDER)
    found = store.person("anna")
    assert found is not None and found.name == "Anna"


def test_a_session_ends_by_time_and_by_signing_out_everywhere(url: str) -> None:
    moment = datetime(2026, 3, 2, tzinfo=UTC)
    with Store.open(url, now=lambda: moment) as store:
        anna = store.add_person("Anna", "hash", Role.BUILDER)
        first, second = store.sign_in(anna.id, 12), store.sign_in(anna.id, 12)
        seen = store.signed_in(first)
        assert seen is not None and seen.person == anna
        store.sign_out(first)
        assert store.signed_in(first) is None
        assert store.signed_in(second) is not None
        moment += timedelta(hours=12)
        assert store.signed_in(second) is None
        third = store.sign_in(anna.id, 12)
        store.sign_out_everywhere(anna.id)
        assert store.signed_in(third) is None


def test_a_changed_password_ends_the_sessions(store: Store) -> None:
    anna = store.add_person("Anna", "hash", Role.MANAGER)
    cookie = store.sign_in(anna.id, 12)
    assert store.change_person(anna.id, password_hash="other").password_hash == "other"
    assert store.signed_in(cookie) is None


def test_the_last_manager_stays_one(store: Store) -> None:
    anna = store.add_person("Anna", "hash", Role.MANAGER)
    for change in ({"role": Role.BUILDER}, {"active": False}):
        with pytest.raises(StoreError, match="last manager"):
            store.change_person(anna.id, **change)  # type: ignore[arg-type]
    found = store.person("anna")
    assert found is not None and found.role is Role.MANAGER and found.active


def test_cookies_and_tokens_are_kept_as_hashes_only(store: Store) -> None:
    anna = store.add_person("Anna", "hash", Role.MANAGER)
    cookie = store.sign_in(anna.id, 12)
    token, secret = store.make_token("scanner 2", Role.BUILDER, by="Anna")
    assert store.token(secret) == token
    with store.reading() as session:
        kept = [
            *session.scalars(text("SELECT id FROM session")),
            *session.scalars(text("SELECT hash FROM token")),
        ]
    assert cookie not in kept and secret not in kept
    store.revoke_token(token.id)
    assert store.token(secret) is None


def test_a_name_outside_ascii_is_one_in_any_case(store: Store) -> None:
    emile = store.add_person("Émile Groß", "hash", Role.BUILDER)
    for typed in ("Émile Groß", "émile groß", "ÉMILE GROSS"):
        assert store.person(typed) == emile
        with pytest.raises(StoreError, match="already in use"):
            store.add_person(typed, "hash", Role.BUILDER)


def test_a_session_ends_when_idle_and_one_that_awaits_a_code_opens_nothing(url: str) -> None:
    moment = datetime(2026, 3, 2, tzinfo=UTC)
    hour = timedelta(hours=1)
    with Store.open(url, now=lambda: moment) as store:
        anna = store.add_person("Anna", "hash", Role.MANAGER)
        cookie, waiting = store.sign_in(anna.id, 12), store.sign_in(anna.id, 12, awaits_code=True)
        assert store.signed_in(waiting) is None and store.signed_in(cookie, awaits_code=True) is None
        assert store.signed_in(waiting, awaits_code=True) is not None
        moment += timedelta(minutes=59)
        assert store.signed_in(cookie, idle=hour) is not None
        store.seen(cookie)
        moment += timedelta(minutes=59)
        assert store.signed_in(cookie, idle=hour) is not None
        moment += timedelta(minutes=1)
        assert store.signed_in(cookie, idle=hour) is None


def test_a_code_and_a_recovery_code_are_good_once(url: str) -> None:
    with Store.open(url) as one, Store.open(url) as other:
        anna, bela = (one.add_person(name, "hash", Role.MANAGER).id for name in ("Anna", "Bela"))
        one.ask_codes(anna, "SECRET", step=7, recovery=["aaaa", "bbbb"])
        assert [store.use_step(anna, step) for store, step in ((one, 7), (other, 8), (one, 8), (one, 6))] == [
            False, True, False, False,
        ]  # fmt: skip
        assert not other.use_recovery_code(bela, "aaaa")
        with ThreadPoolExecutor(8) as pool:
            used = list(pool.map(lambda n: (one, other)[n % 2].use_recovery_code(anna, "aaaa"), range(8)))
        assert used.count(True) == 1
        one.ask_codes(anna, "OTHER", step=9, recovery=["cccc"])
        assert not one.use_recovery_code(anna, "bbbb"), "a new phone has new recovery codes"
        assert one.code_secret(anna) == "OTHER"
        one.ask_no_codes(anna)
        assert one.code_secret(anna) is None and not one.use_recovery_code(anna, "cccc")


def test_a_browser_is_known_for_half_a_year(url: str) -> None:
    moment = datetime(2026, 3, 2, tzinfo=UTC)
    with Store.open(url, now=lambda: moment) as store:
        anna, bela = (store.add_person(name, "hash", Role.MANAGER).id for name in ("Anna", "Bela"))
        store.know_browser("cookie", anna)
        store.know_browser("cookie", anna)
        assert store.knows_browser("cookie", anna)
        assert not store.knows_browser("cookie", bela) and not store.knows_browser("other", anna)
        with store.reading() as session:
            assert "cookie" not in session.scalars(text("SELECT hash FROM known_browser")).all()
        moment += timedelta(days=180)
        assert not store.knows_browser("cookie", anna)
        store.know_browser("cookie", bela)
        store.change_person(bela, active=False)
        assert not store.knows_browser("cookie", bela)


def test_ones_own_sessions_are_listed_and_ended_and_nobody_elses(url: str) -> None:
    moment = datetime(2026, 3, 2, tzinfo=UTC)
    idle = timedelta(hours=1)
    with Store.open(url, now=lambda: moment) as store:
        anna, bela = (store.add_person(name, "hash", Role.BUILDER) for name in ("Anna", "Bela"))
        store.sign_in(anna.id, 12, awaits_code=True)
        idle_one = store.sign_in(anna.id, 12)
        moment += timedelta(minutes=59)
        here = store.sign_in(anna.id, 12, address="192.0.2.7", phone=True)
        there, hers = store.sign_in(anna.id, 12), store.sign_in(bela.id, 12)
        moment += timedelta(minutes=2)
        store.seen(here)
        first, second = store.open_sessions(anna.id, idle=idle)
        assert (first.address, first.phone, first.seen_at) == ("192.0.2.7", True, moment)
        [of_bela] = store.open_sessions(bela.id, idle=idle)
        store.end_session(anna.id, of_bela.id)
        assert store.signed_in(hers) is not None, "nobody ends another's"
        store.end_session(anna.id, second.id)
        assert store.signed_in(there) is None and store.signed_in(here) is not None
        store.end_other_sessions(anna.id, here)
        assert store.signed_in(idle_one) is None and store.signed_in(here) is not None
        assert store.signed_in(hers) is not None


def test_what_others_change_of_how_one_signs_in_is_told_until_it_was_seen(url: str) -> None:
    moment = datetime(2026, 3, 2, tzinfo=UTC)
    with Store.open(url, now=lambda: moment) as store:
        anna, bela = (store.add_person(name, "hash", Role.MANAGER) for name in ("Anna", "Bela"))
        assert not store.account_notes(bela.id) and not bela.untold
        for change, what in (
            ({"role": Role.BUILDER}, "role"), ({"role": Role.BUILDER}, None), ({"password_hash": "other"}, "password"),
            ({"active": False}, None),
        ):  # fmt: skip
            store.told(bela.id)
            changed = store.change_person(bela.id, by="Anna", **change)  # type: ignore[arg-type]
            assert changed.untold == (what is not None)
            if what:
                latest = store.account_notes(bela.id)[0]
                assert (latest.what, latest.by, latest.at) == (what, "Anna", moment)
        assert not store.account_notes(anna.id) and not store.person_by_id(anna.id).untold
        store.note(anna.id, Noted.NEW_BROWSER, address="192.0.2.7")
        assert not store.person_by_id(anna.id).untold, "a new browser is listed, and troubles nobody"
        moment += timedelta(days=181)
        store.note(anna.id, Noted.CODE_AGAIN)
        assert [note.what for note in store.account_notes(anna.id)] == ["repeated-code"]
        assert not store.account_notes(bela.id), "kept for half a year"
