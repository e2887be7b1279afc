"""The language a command speaks, and argparse's own words in it."""

from __future__ import annotations

import argparse
import os
from collections.abc import Sequence
from typing import Final

from tagger.i18n import LANGUAGES, SOURCE, Translator
from tagger.messages import Message

OPTION: Final = "--lang"
_VARIABLE: Final = "TAGGER_LANGUAGE"

_OF_ARGPARSE: Final = {
    "argument %(argument_name)s: %(message)s": Message("cli-usage-argument"),
    "positional arguments": Message("cli-usage-positional"),
    "options": Message("cli-usage-options"),
    "show this help message and exit": Message("cli-usage-help"),
    "show program's version number and exit": Message("cli-usage-version"),
    "unrecognized arguments: %s": Message("cli-usage-unrecognized"),
    "not allowed with argument %s": Message("cli-usage-not-allowed"),
    "ignored explicit argument %r": Message("cli-usage-ignored"),
    "the following arguments are required: %s": Message("cli-usage-required"),
    "one of the arguments %s is required": Message("cli-usage-one-required"),
    "expected one argument": Message("cli-usage-expects-one"),
    "expected at least one argument": Message("cli-usage-expects-some"),
    "ambiguous option: %(option)s could match %(matches)s": Message("cli-usage-ambiguous"),
    "invalid %(type)s value: %(value)r": Message("cli-usage-invalid-value"),
    "invalid choice: %(value)r (choose from %(choices)s)": Message("cli-usage-invalid-choice"),
}
"""What argparse asks gettext for, and the message that is shown instead."""


def language_of(arguments: Sequence[str]) -> str:
    """The language that ``--lang`` names, else TAGGER_LANGUAGE, else English.

    A language that is not available is refused later, by the parser or by the settings.

    >>> language_of(["--lang", "de", "check"]), language_of(["check", "--lang=fr"])
    ('de', 'fr')
    """
    early = argparse.ArgumentParser(add_help=False, allow_abbrev=False, exit_on_error=False)
    early.add_argument(OPTION, dest="lang")
    try:
        asked = early.parse_known_args(arguments)[0].lang
    except argparse.ArgumentError:  # --lang without a value
        asked = None
    found = asked or os.environ.get(_VARIABLE, SOURCE)
    return found if found in LANGUAGES else SOURCE


def translate_argparse(t: Translator) -> None:
    """Makes argparse speak the language of ``t``, in place of what gettext would give it."""

    def translated(words: str) -> str:
        if words == "usage: ":
            return f"{t('cli-usage-start')} "
        if words == "%(prog)s: error: %(message)s\n":
            return f"{t('cli-usage-error')}\n"
        known = _OF_ARGPARSE.get(words)
        return words if known is None else t(known)

    argparse._ = translated  # type: ignore[attr-defined]
