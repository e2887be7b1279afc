"""Passwords hashed by the same algorithm as a shop's, a thousand times as cheaply.

A shop's hash takes a fifth of a second of CPU at each sign-in, on purpose, and nearly every test of the
bench signs in. ``tests/bench/test_sign_in.py`` proves the cost that a shop has.
"""

from __future__ import annotations

import pytest
from argon2 import PasswordHasher

from api.web import identity

AS_INSTALLED = identity._HASHER
NOBODY_AS_INSTALLED = identity._NOBODY
QUICK = PasswordHasher(time_cost=1, memory_cost=8, parallelism=1)


@pytest.fixture(autouse=True)
def quick_passwords(monkeypatch: pytest.MonkeyPatch) -> None:
    """Whatever is hashed in a test is hashed quickly; the folders' conftest.py ask for it."""
    monkeypatch.setattr(identity, "_HASHER", QUICK)
    monkeypatch.setattr(identity, "_NOBODY", _NOBODY)


_NOBODY = QUICK.hash("nobody's")
