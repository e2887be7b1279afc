"""The command over the people who sign in, for whoever has the server: the way in when the only manager has lost both
phone and recovery codes."""

from __future__ import annotations

import argparse
from typing import Final

from tagger import security_log
from tagger.cli.commands import Answer, open_store
from tagger.errors import Problem, StoreError
from tagger.i18n import Translator
from tagger.messages import Message

BY: Final = "tagger people"
"""Who did it, as the security log and the person's own page name it."""


def people(a: argparse.Namespace, t: Translator) -> Answer:
    """Lists everybody; takes the phone's codes away from one, and ends their sessions."""
    with open_store() as store:
        if a.codes_off is not None:
            person = store.person(a.codes_off)
            if person is None or not person.asks_code:
                why = "cli-person-not-found" if person is None else "cli-person-no-codes"
                raise StoreError(Problem("--codes-off", a.codes_off, Message(why, name=a.codes_off)))
            store.ask_no_codes(person.id, by=BY)
            security_log.to_stderr()
            security_log.write("person-changed", person=person.name, by=BY, change="codes")
        everybody = store.people()
    found = [
        {"name": one.name, "role": str(one.role), "active": one.active, "asks_code": one.asks_code}
        for one in everybody
    ]
    said = [
        t(
            "cli-person",
            name=one.name,
            role=str(one.role),
            active="yes" if one.active else "no",
            codes="yes" if one.asks_code else "no",
        )
        for one in everybody
    ]
    if a.codes_off is not None:
        said.insert(0, t("cli-person-codes-off", name=a.codes_off))
    return {"people": found}, "\n".join(said or [t("cli-people-none")])
