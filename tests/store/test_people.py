"""Who may sign in; secrets are kept as hashes."""

from __future__ import annotations

from datetime import UTC, datetime, timedelta

import pytest
from sqlalchemy import text

from tagger.errors import StoreError
from tagger.store import Role, Store


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
