"""The shop's signing keys: one file, for its owner alone, with the private key and every public one there ever was.

Keys take turns. A new one signs from its day on; the one before it has an end, and what it signed until
then stays signed. A key that somebody else may have is withdrawn: nothing that it signed counts any longer.
"""

from __future__ import annotations

import json
import os
import secrets
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from datetime import date
from functools import lru_cache
from pathlib import Path
from typing import Any, Final, Literal

from pydantic import BaseModel, ConfigDict, Field, ValidationError, field_validator, model_validator

from tagger.code import signature
from tagger.errors import PayloadError, Problem, TaggerError
from tagger.messages import Message

MOST_KEYS: Final = 255  # one byte names them, and 0 is none
WELL_KNOWN: Final = "/.well-known/hose-tag-keys.json"  # where the web application tells the public keys

State = Literal["signed", "unsigned", "broken", "unchecked"]
Why = Literal["altered", "unknown_key", "withdrawn_key", "ended_key"]


class SigningError(TaggerError):
    """A key file that cannot be used."""


@dataclass(frozen=True)
class Signed:
    """How a tag stands to the shop's keys.

    ``unchecked``: it carries a signature, and no key is known here. ``why`` is that of a broken one.
    """

    state: State
    key_id: int | None = None
    why: Why | None = None

    @property
    def broken(self) -> bool:
        return self.state == "broken"

    def message(self) -> Message:
        """What is said of it in a sentence."""
        return Message(f"words-sealed-{self.state}")

    def lines(self) -> tuple[Message, ...]:
        """The sentence, and why a broken one is broken."""
        return (self.message(), Message(f"words-sealed-why-{self.why}")) if self.why else (self.message(),)

    def as_dict(self) -> dict[str, Any]:
        """Plain JSON values."""
        return {"state": self.state, "key_id": self.key_id, "why": self.why}


class PublicKey(BaseModel):
    """One key as the shop makes it known: days are whole days, both ends included."""

    model_config = ConfigDict(frozen=True, extra="forbid", populate_by_name=True)

    id: int = Field(ge=1, le=MOST_KEYS)
    public: str = Field(pattern=r"^[0-9a-f]{64}$")
    since: date = Field(alias="from")
    until: date | None = None
    withdrawn: date | None = None

    @field_validator("public")
    @classmethod
    def _sound(cls, value: str) -> str:
        if not signature.is_sound(bytes.fromhex(value)):
            raise ValueError("no key of Ed25519")
        return value

    @property
    def raw(self) -> bytes:
        return bytes.fromhex(self.public)

    def validity(self) -> Message:
        """Since when it signs, until when it did, or that it was withdrawn."""
        if self.withdrawn:
            return Message("keys-valid-withdrawn", day=self.withdrawn)
        if self.until:
            return Message("keys-valid-ended", since=self.since, until=self.until)
        return Message("keys-valid-now", since=self.since)

    def as_dict(self) -> dict[str, Any]:
        """Plain JSON values."""
        return self.model_dump(mode="json", by_alias=True)


class Keys(BaseModel):
    """All keys of a shop, oldest first; ``private`` is that of the last. Without keys it signs nothing."""

    model_config = ConfigDict(frozen=True, extra="forbid")

    keys: tuple[PublicKey, ...] = ()
    private: str | None = Field(default=None, pattern=r"^[0-9a-f]{64}$", repr=False)

    @model_validator(mode="after")
    def _whole(self) -> Keys:
        if [key.id for key in self.keys] != list(range(1, len(self.keys) + 1)):
            raise ValueError("keys are numbered 1, 2, 3, ...")
        if self.private is None:
            return self
        if not self.keys or signature.public_of(bytes.fromhex(self.private)) != self.keys[-1].raw:
            raise ValueError("the private key belongs to the last key")
        return self

    def sign(self, number: str, digits: str) -> str:
        """The digits of the signed tag; as they are where the shop does not sign. ``number`` without dash."""
        if self.private is None:
            return digits
        return signature.sealed(number, digits, self.keys[-1].id, bytes.fromhex(self.private))

    def state(self, number: str, digits: str, built_on: date | None = None) -> Signed | None:
        """Whether the shop signed these digits for this number; None where nothing is to be said of it.

        ``built_on``: what the digits say. Before a key's first day it says nothing (an older tag printed
        again is signed by the key of today); after its last the key had no right to sign. Raises PayloadError.
        """
        alone, seal = signature.opened(digits)
        if seal is None:
            return Signed("unsigned") if self.keys else None
        if not self.keys:
            return Signed("unchecked", seal.key_id)
        if not 1 <= seal.key_id <= len(self.keys):
            return Signed("broken", seal.key_id, "unknown_key")
        key = self.keys[seal.key_id - 1]
        if not signature.fits(number, alone, seal, key.raw):
            return Signed("broken", key.id, "altered")
        if key.withdrawn is not None:
            return Signed("broken", key.id, "withdrawn_key")
        if key.until is not None and built_on is not None and built_on > key.until:
            return Signed("broken", key.id, "ended_key")
        return Signed("signed", key.id)

    def as_published(self) -> list[dict[str, Any]]:
        """The public keys, as the web, phones and paper have them."""
        return [key.as_dict() for key in self.keys]


NONE: Final = Keys()


def state_of(keys: Keys, number: str, digits: str | None, built_on: date | None) -> Signed | None:
    """As ``Keys.state``; None for a tag without digits, or with damaged ones, which are told as such."""
    if digits is None:
        return None
    try:
        return keys.state(number, digits, built_on)
    except PayloadError:
        return None


def load(path: Path) -> Keys:
    """The keys of a file, as it is at this moment. Raises SigningError."""
    try:
        stat = path.stat()
    except OSError:
        raise _refused(path, "keys-file-missing") from None
    return _load(path, (stat.st_mtime_ns, stat.st_size, stat.st_ino, stat.st_mode))


@lru_cache(maxsize=8)
def _load(path: Path, stamp: tuple[int, ...]) -> Keys:
    if os.name == "posix" and stamp[3] & 0o077:
        raise _refused(path, "keys-file-open")
    try:
        return Keys.model_validate(json.loads(path.read_text(encoding="utf-8")))
    except (OSError, ValueError, ValidationError):
        raise _refused(path, "keys-file-broken") from None


def renew(path: Path, today: date, published: Path | None = None) -> PublicKey:
    """A new key, which signs from today on; makes the file where there is none. Raises SigningError.

    ``published``: where the file is lost, what WELL_KNOWN told of its keys, saved before: the new one is counted
    after them, and what they signed stays signed.
    """
    with _alone(path):
        before = _before(path, published)
        last = [_ended(before.keys[-1], today)] if before.keys else []
        return _add(path, [*before.keys[:-1], *last], today)


def _before(path: Path, published: Path | None) -> Keys:
    if published is None:
        return load(path) if path.exists() else NONE
    if path.exists():
        raise SigningError(Problem("published", str(published), Message("keys-file-there", file=str(path))))
    try:
        known = Keys.model_validate({"keys": json.loads(published.read_text(encoding="utf-8"))["keys"]})
    except (OSError, ValueError, LookupError, TypeError):  # pydantic's and JSON's errors are ValueErrors
        known = NONE
    if not known.keys:
        raise SigningError(
            Problem("published", str(published), Message("keys-published-broken", at=WELL_KNOWN))
        )
    return known


def withdraw(path: Path, key_id: int, today: date) -> PublicKey:
    """Nothing that this key signed counts any longer; returns the key that signs from now on.

    Where it was the one that signs, a new one takes its place at once. Raises SigningError.
    """
    with _alone(path):
        before = load(path)
        if not 1 <= key_id <= len(before.keys):
            raise SigningError(Problem("key", key_id, Message("keys-unknown", count=len(before.keys))))
        keys = list(before.keys)
        keys[key_id - 1] = _ended(keys[key_id - 1], today).model_copy(update={"withdrawn": today})
        if key_id == len(keys):
            return _add(path, keys, today)
        _write(path, Keys(keys=tuple(keys), private=before.private))
        return keys[-1]


def _ended(key: PublicKey, today: date) -> PublicKey:
    return key if key.until else key.model_copy(update={"until": today})


def _add(path: Path, before: list[PublicKey], today: date) -> PublicKey:
    if len(before) == MOST_KEYS:
        raise _refused(path, "keys-full")
    private = secrets.token_bytes(32)
    public = signature.public_of(private).hex()
    key = PublicKey.model_validate({"id": len(before) + 1, "public": public, "from": today})
    _write(path, Keys(keys=(*before, key), private=private.hex()))
    return key


@contextmanager
def _alone(path: Path) -> Iterator[None]:
    """Two commands at once would each lose the other's key. Raises SigningError."""
    lock = path.with_name(path.name + ".lock")
    try:
        os.close(os.open(lock, os.O_CREAT | os.O_EXCL | os.O_WRONLY, 0o600))
    except FileExistsError:
        raise _refused(lock, "keys-file-busy") from None
    except OSError:
        raise _refused(path, "keys-file-folder") from None
    try:
        yield
    finally:
        lock.unlink()


def _write(path: Path, keys: Keys) -> None:
    """The whole file or none of it; nobody but its owner may read it at any moment."""
    values = {"keys": keys.as_published(), "private": keys.private}
    new = path.with_name(path.name + ".new")
    new.unlink(missing_ok=True)
    with os.fdopen(os.open(new, os.O_CREAT | os.O_EXCL | os.O_WRONLY, 0o600), "w", encoding="utf-8") as file:
        file.write(json.dumps(values, indent=1) + "\n")
        file.flush()
        os.fsync(file.fileno())
    new.replace(path)


def _refused(path: Path, id: str) -> SigningError:
    return SigningError(Problem("TAGGER_SIGNING_KEY", str(path), Message(id)))
