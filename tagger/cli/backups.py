"""Commands over the records as a whole: copies of them, the chain that shows a change, the move to another database."""

from __future__ import annotations

import argparse
from pathlib import Path
from typing import TYPE_CHECKING, Any

from tagger.cli.commands import Answer, open_store
from tagger.errors import Problem, StoreError
from tagger.i18n import Translator
from tagger.messages import Message

if TYPE_CHECKING:
    from tagger.store.backup import Copied


def backup(a: argparse.Namespace, t: Translator) -> Answer:
    """Writes a verified copy of the records; with ``--keep``, a dated one into a folder."""
    with open_store() as store:
        if a.keep is None:
            copied = store.backup(a.file)
            answer, rows = _copied(a.file, copied)
            said = t(
                "cli-backed-up", file=str(a.file), rows=rows, digest=copied.digest, head=str(copied.head)
            )
            return answer, said
        if a.keep < 1:
            raise StoreError(Problem("--keep", a.keep, Message("cli-usage-keep")))
        file, copied, removed = store.backup_and_keep(a.file, a.keep)
    answer, rows = _copied(file, copied)
    answer |= {"removed": [str(one) for one in removed]}
    said = t(
        "cli-backed-up-kept",
        file=str(file),
        rows=rows,
        kept=a.keep,
        removed=len(removed),
        digest=copied.digest,
        head=str(copied.head),
    )
    return answer, said


def restore(a: argparse.Namespace, t: Translator) -> Answer:
    """Restores a verified copy into an empty database."""
    with open_store() as store:
        copied = store.restore(a.file, unsealed=a.unsealed)
    answer, rows = _copied(a.file, copied)
    return answer, t("cli-restored", file=str(a.file), rows=rows, digest=copied.digest)


def drill(a: argparse.Namespace, t: Translator) -> Answer:
    """Restores a copy into a scratch database and compares; the records themselves are not touched."""
    from tagger.store.backup import drill

    copied = drill(a.file, a.into)
    answer, rows = _copied(a.file, copied)
    return answer, t("cli-drilled", file=str(a.file), rows=rows, digest=copied.digest)


def move(a: argparse.Namespace, t: Translator) -> Answer:
    """Moves all records into another, empty database."""
    from tagger.store.database import Unopened
    from tagger.store.move import move

    with open_store() as store:
        moved = move(store.database, a.to)
    target = Unopened(a.to).shown
    answer = {"to": target, "rows": moved.rows, "digests": moved.digests, "sha256": moved.digest}
    rows = Message("cli-rows", count=sum(moved.rows.values()))
    said = t("cli-moved", rows=rows, tables=len(moved.rows), digest=moved.digest, target=target)
    return answer | {"head": str(moved.head)}, said


def audit(a: argparse.Namespace, t: Translator) -> Answer:
    """Follows the chain over everything recorded: its first broken link, or its head."""
    from tagger.store import Head
    from tagger.store.backup import head_in

    known = None
    if a.backup is not None:
        known = head_in(a.backup)
    elif a.head is not None and (known := Head.read(a.head)) is None:
        raise StoreError(Problem("--head", a.head, Message("cli-usage-head")))
    with open_store() as store:
        found = store.audit(known)
    answer = {"ok": found.broken is None, "head": str(found.head), "links": found.head.links}
    answer |= {"rows": found.rows, "broken": None}
    rows, head = Message("cli-rows", count=sum(found.rows.values())), str(found.head)
    if (broken := found.broken) is None:
        return answer, t("cli-audited", rows=rows, links=found.head.links, head=head)
    answer["broken"] = {"link": broken.link, "table": broken.table, "key": broken.key, "why": t(broken.why)}
    return answer, t("cli-audit-broken", why=broken.why, head=head)


def _copied(file: Path, copied: Copied) -> tuple[dict[str, Any], Message]:
    answer = {"file": str(file), "rows": copied.rows, "sha256": copied.digest, "head": str(copied.head)}
    return answer, Message("cli-rows", count=sum(copied.rows.values()))
