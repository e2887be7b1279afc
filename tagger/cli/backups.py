"""Commands over copies of the records: write, read back, and try whether one would serve."""

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
            return answer, t("cli-backed-up", file=str(a.file), rows=rows, digest=copied.digest)
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


def _copied(file: Path, copied: Copied) -> tuple[dict[str, Any], Message]:
    answer = {"file": str(file), "rows": copied.rows, "sha256": copied.digest}
    return answer, Message("cli-rows", count=sum(copied.rows.values()))
