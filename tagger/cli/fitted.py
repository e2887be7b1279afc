"""The commands over reports of fitting, and over what is kept of people for so long and no longer."""

from __future__ import annotations

import argparse
from dataclasses import asdict
from datetime import date
from typing import TYPE_CHECKING, Any

from tagger.cli.commands import Answer, open_store, shop_settings
from tagger.errors import Problem, StoreError
from tagger.i18n import Translator
from tagger.messages import Message

if TYPE_CHECKING:
    from tagger.store import FittedReport


def fitted(a: argparse.Namespace, t: Translator) -> Answer:
    """The reports, newest first; confirms, rejects or erases one."""
    from tagger.store import FittedState

    with open_store() as store:
        if a.erase is not None:
            erased = store.erase_fitted(a.erase)
            said = Message("cli-fitted-erased", id=a.erase, erased="yes" if erased else "no")
            return {"erased": erased}, t(said)
        if a.agree is not None:
            found = [store.decide_fitted(a.agree, agree=True)]
        elif a.refuse is not None:
            found = [store.decide_fitted(a.refuse, agree=False, why=a.reason)]
        else:
            state = FittedState(a.state) if a.state else None
            found = store.fitted_reports(state, number=a.number)
    lines = [line for report in found for line in _lines(report, t)]
    return {"reports": [_plain(report) for report in found]}, "\n".join(lines) or t("cli-fitted-none")


def _lines(report: FittedReport, t: Translator) -> list[str]:
    """A report on a line, and below it what is wrong with it."""
    from tagger.code import number as tag_number

    named = report.machine is not None
    machine = Message("cli-fitted-machine", machine=report.machine or "") if named else None
    line = Message(
        "cli-fitted-line",
        id=report.id,
        number=tag_number.format(report.number),
        day=report.fitted_on,
        machine=machine or Message("cli-fitted-no-machine"),
        state=str(report.state),
    )
    said = [t(line)]
    if report.withdrawn:
        said.append(t("fitted-withdrawn", reasons=report.withdrawn))
    if report.void is not None:
        said.append(t("fitted-void", reason=report.void))
    if report.elsewhere:
        said.append(t("fitted-elsewhere", machines=report.elsewhere))
    if report.before_built:
        said.append(t("fitted-before-built"))
    return said


def _plain(report: FittedReport) -> dict[str, Any]:
    from tagger.code import number as tag_number

    said = asdict(report) | {"number": tag_number.format(report.number), "photo": report.photo is not None}
    return {name: value.isoformat() if isinstance(value, date) else value for name, value in said.items()}


def erase_old(a: argparse.Namespace, t: Translator) -> Answer:
    """Erases what was kept as long as the settings say; with ``--dry-run`` tells how much that is."""
    from tagger.store import Keep

    keep = Keep.of(shop_settings())
    if not (keep.contacts or keep.photos or keep.reports):
        names = tuple(f"TAGGER_KEEP_{name}_DAYS" for name in ("CONTACTS", "PHOTOS", "REPORTS"))
        raise StoreError(Problem("retention", None, Message("cli-erase-old-unset", names=names)))
    with open_store() as store:
        old = store.old(keep) if a.dry_run else store.erase_old(keep)
    id = "cli-old" if a.dry_run else "cli-erased-old"
    return {**asdict(old), "erased": not a.dry_run}, t(Message(id, **asdict(old)))
