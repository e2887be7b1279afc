"""The way in for a manager who has lost phone and recovery codes: a command on the server."""

from __future__ import annotations

import json
from pathlib import Path

import pytest

from tagger.store import Role, Store
from tests.cli.test_cli import Shell


@pytest.fixture
def tagger(tmp_path: Path) -> Shell:
    return Shell(tmp_path)


def test_the_only_manager_without_phone_and_codes_gets_in_by_a_command_which_is_logged(tagger: Shell) -> None:
    assert tagger.json("people")["people"] == []
    with Store.open(tagger.env["TAGGER_DATABASE_URL"]) as store:
        anna = store.add_person("Anna", "hash", Role.MANAGER)
        bela = store.add_person("Bela", "hash", Role.BUILDER)
        store.ask_codes(anna.id, "SECRET", step=7, recovery=["aaaa"])
        store.told(anna.id)
        cookie, other = store.sign_in(anna.id, 12), store.sign_in(bela.id, 12)
        for wrong in ("Cora", "Bela"):
            assert wrong in tagger("people", "--codes-off", wrong, code=1).stderr
        done = tagger("people", "--codes-off", "anna")
        line = json.loads(done.stderr)
        assert (
            line | {"event": "person-changed", "person": "Anna", "by": "tagger people", "change": "codes"}
            == line
        )
        assert "Anna" in done.stdout and "no longer asked for codes" in done.stdout
        found = store.person("Anna")
        assert found is not None and not found.asks_code and found.untold, "Anna is told when she signs in"
        assert store.code_secret(anna.id) is None and not store.use_recovery_code(anna.id, "aaaa")
        assert store.signed_in(cookie) is None and store.signed_in(other) is not None
        latest = store.account_notes(anna.id)[0]
        assert (latest.what, latest.by) == ("codes-off", "tagger people")
    assert [(one["name"], one["asks_code"]) for one in tagger.json("people")["people"]] == [
        ("Anna", False),
        ("Bela", False),
    ]
