"""The command over the keys that sign the shop's tags: make, list, withdraw, print."""

from __future__ import annotations

import argparse
from datetime import date
from pathlib import Path
from typing import Any

from tagger import signing
from tagger.cli.commands import Answer, shop_settings
from tagger.errors import Problem
from tagger.i18n import Translator
from tagger.messages import Message
from tagger.signing import Keys, PublicKey, SigningError


def signing_key(a: argparse.Namespace, t: Translator) -> Answer:
    """Does what was asked to the key file of TAGGER_SIGNING_KEY, and shows its keys."""
    shop = shop_settings()
    if shop.signing_key is None:
        raise SigningError(Problem("TAGGER_SIGNING_KEY", None, Message("keys-not-set")))
    said = _done(a, shop.signing_key, t)
    keys = shop.keys()
    if a.what == "page":
        from tagger.papers import key_page

        out: Path = _needed(a, "out")
        out.write_bytes(key_page.made(keys, shop, t.language))
        said = [t("cli-signing-page", file=str(out))]
    return _answer(shop.signing_key, keys), "\n".join([*said, *(_line(key, t) for key in keys.keys)])


def _done(a: argparse.Namespace, file: Path, t: Translator) -> list[str]:
    if a.what == "new":
        key = signing.renew(file, date.today(), a.published)
    elif a.what == "withdraw":
        key = signing.withdraw(file, _needed(a, "key"), date.today())
    else:
        return []
    return [t("cli-signing-now", key=key.id), t("cli-signing-keep", file=str(file))]


def _needed(a: argparse.Namespace, option: str) -> Any:
    value = getattr(a, option)
    if value is None:
        raise SigningError(Problem(f"--{option}", None, Message("cli-signing-needs", option=option)))
    return value


def _answer(file: Path, keys: Keys) -> dict[str, object]:
    return {"file": str(file), "keys": keys.as_published()}


def _line(key: PublicKey, t: Translator) -> str:
    return t("cli-signing-line", key=key.id, public=key.public, valid=key.validity())
