"""The commands that put tags on paper: print, run, preflight."""

from __future__ import annotations

import argparse
import hashlib
import os
import sys
from collections.abc import Callable, Iterable, Sequence
from dataclasses import replace
from typing import TYPE_CHECKING

from tagger.cli.commands import Answer, open_store, shop_settings, shop_tables, tags_here
from tagger.errors import Problem, SpecError
from tagger.i18n import Translator
from tagger.messages import Message, Value
from tagger.record import recorded

if TYPE_CHECKING:  # each command loads only what it needs
    from tagger.printing.content import Tag
    from tagger.printing.preflight import Finding, Preflight
    from tagger.printing.template import Template
    from tagger.settings import ShopSettings
    from tagger.store import Assembly, Registration, Store


def print_tags(a: argparse.Namespace, t: Translator) -> Answer:
    """Prints the tags of registered assemblies, to a file or on a network printer."""
    shop = shop_settings()
    template = _template(a, shop)
    dpi = a.dpi or (_dpi_of(a.printer) if a.printer else shop.printer_dpi)
    with open_store() as store:
        assemblies = store.assemblies(a.numbers)
        numbers = [assembly.number for assembly in assemblies]
        store.refuse_blocked(numbers, traveller=template.traveller)
        tags = tags_here(store, assemblies, shop, t)
        _refuse_what_would_not_scan(tags, template, dpi, a, t)

        def printed(**data: str) -> None:
            store.record_many(numbers, "printed", {"template": template.name, **data})

        if a.printer:
            answer, text = _send(tags, template, dpi, a, printed, t)
        else:
            files = _write(tags, template, dpi, a, t)
            answer, text = {"files": files}, "\n".join(files)
            printed()
    return {**answer, "tags": len(tags)}, text


def run(a: argparse.Namespace, t: Translator) -> Answer:
    """Registers a list and prints it whole; after a crash the same numbers are printed.

    What could be refused on the way to paper is refused before anything is registered.
    """
    from tagger import list_columns, lists, record_tag
    from tagger.code import number
    from tagger.errors import TradeError
    from tagger.store import Registration
    from tagger.trade import assess

    shop = shop_settings()
    template, dpi, tables = _template(a, shop), _dpi(a, shop), shop_tables()
    if shop.proof_first and not template.traveller:
        raise SpecError(Problem("--template", template.name, Message("cli-run-proof-first")))
    rows: list[Registration] = []
    problems: list[Problem] = []
    with open_store() as store:
        listed_rows = lists.read_rows(list_columns.in_ours(lists.read_table(a.list)), store.read_spec)
    for listed in listed_rows:
        try:
            found = assess(listed.spec, tables)
        except TradeError as error:
            problems += error.within(f"row {listed.row}").problems
            continue
        rows.append(
            Registration(
                listed.spec,
                found,
                listed.quantity,
                a.built_on,
                lot_reason=listed.lot_reason,
                changes_considered=False,
                **recorded(listed),
            )
        )
    if problems:
        raise SpecError(problems)
    trials = record_tag.trials(rows, shop)
    _refuse_what_cannot_be_written(trials, template, a)
    _refuse_what_would_not_scan(trials, template, dpi, a, t)
    mark = hashlib.sha256(a.list.read_bytes()).hexdigest()
    with open_store() as store:
        assemblies = _registered_but_not_printed(store, rows, mark)
        store.refuse_blocked([one.number for one in assemblies], traveller=template.traveller)
        files = _write(tags_here(store, assemblies, shop, t), template, dpi, a, t, progress=not a.json)
        store.record_many(
            [one.number for one in assemblies], "printed", {"template": template.name, "list": a.list.name}
        )
    numbers = [number.format(one.number) for one in assemblies]
    return {"numbers": numbers, "files": files}, t("cli-run-done", count=len(numbers), files=tuple(files))


def _registered_but_not_printed(store: Store, rows: Sequence[Registration], mark: str) -> list[Assembly]:
    """Registers the list, unless an earlier run did and never came to print it.

    The same list run again after it was printed is a new batch, with numbers of its own.
    """
    from tagger.store import Kind

    for batch in range(1, 10_000):
        assemblies = store.register_many(rows, key=f"list {mark} batch {batch}")
        if not store.last([one.number for one in assemblies], Kind.PRINTED):
            return assemblies
    raise SpecError(Problem("list", None, Message("cli-too-many-batches")))


def preflight(a: argparse.Namespace, t: Translator) -> Answer:
    """Checks whether a tag will scan."""
    from tagger.printing import preflight

    shop = shop_settings()
    with open_store() as store:
        (tag,) = tags_here(store, [store.assembly(a.number)], shop, t)
    found = preflight.preflight(tag, shop.template(a.template or ""), a.hose_od, _dpi(a, shop))
    return found.as_dict(t), _preflight_text(found, t)


def _template(a: argparse.Namespace, shop: ShopSettings) -> Template:
    return shop.template(a.template or "", a.languages.split(",") if a.languages else ())


def _dpi(a: argparse.Namespace, shop: ShopSettings) -> int:
    return int(a.dpi or shop.printer_dpi)


def _refuse_what_would_not_scan(
    tags: Iterable[Tag], template: Template, dpi: int, a: argparse.Namespace, t: Translator
) -> None:
    """Preflight of every different tag, before anything is printed; warnings go to the screen."""
    from tagger.printing import preflight

    seen: set[Tag] = set()
    told: set[Message] = set()
    for tag in tags:
        but_for_the_number = replace(tag, number="", link="", serial=None)
        if but_for_the_number in seen:
            continue
        seen.add(but_for_the_number)
        found = preflight.preflight(tag, template, dpi=dpi)
        if (refusal := preflight.refused(found, template.name)) and not a.force:
            raise refusal
        for finding in found.findings:
            if finding.severity == "warn" and finding.message not in told:
                told.add(finding.message)
                print(_finding_line(finding, t), file=sys.stderr)


def _preflight_text(found: Preflight, t: Translator) -> str:
    measured: dict[str, Value] = {
        "version": found.version,
        "level": found.level,
        "module": round(found.module_mm, 3),
        "dots": found.dots_per_module,
        "symbols": found.symbols,
        "grade": str(found.grade),
        "bytes": found.payload_bytes,
    }
    first = Message("cli-scans", **measured) if found.ok else Message("cli-scans-badly", **measured)
    return "\n".join([t(first), *(_finding_line(finding, t) for finding in found.findings)])


def _finding_line(finding: Finding, t: Translator) -> str:
    mend = t.mend(finding.message)
    line = Message(f"cli-finding-{finding.severity}", text=finding.message, mend=mend)
    return t(line).rstrip()


def _refuse_what_cannot_be_written(tags: Sequence[Tag], template: Template, a: argparse.Namespace) -> None:
    from tagger.printing.sheets import sheets

    if a.out.suffix.lower() not in (".pdf", ".png"):
        raise SpecError(Problem("--out", str(a.out), Message("cli-out-not-pdf-or-png")))
    if not a.out.parent.is_dir():
        raise SpecError(Problem("--out", str(a.out.parent), Message("cli-out-no-folder")))
    if not os.access(a.out.parent, os.W_OK):
        raise SpecError(Problem("--out", str(a.out), Message("cli-out-not-writable")))
    next(sheets(tags, template, a.start))  # refuses a place that the sheet has not


def _dpi_of(uri: str) -> int:
    """The resolution of the printer in dpi; 203 where it supports that or reports none."""
    from tagger.printing.printer import printer_at

    return printer_at(uri).status().dpi()


def _send(
    tags: Sequence[Tag],
    template: Template,
    dpi: int,
    a: argparse.Namespace,
    printed: Callable[..., None],
    t: Translator,
) -> Answer:
    """Sends the tags to a network printer, and waits a while for the end of the job.

    They are logged as printed once the printer has accepted them, or may have. Raises PrinterError
    for a job that the printer gave up, or whose state is not known.
    """
    from tagger.printing.printer import JobState, Unsure, printer_at, wait

    printer = printer_at(a.printer)
    try:
        taken = printer.send(tags, template, dpi=dpi, start=a.start)
    except Unsure:
        printed(printer=a.printer, note=t("cli-maybe-printed"))
        raise
    printed(printer=a.printer)
    job = wait(printer, taken)
    answer = {"printer": a.printer, "job": job.id, "state": str(job.state), "reasons": list(job.reasons)}
    state = Message(f"cli-state-{job.state}")
    if job.remarks and job.state is not JobState.COMPLETED:
        said = "; ".join(map(t, job.remarks))
        return answer, t("cli-job-said", printer=a.printer, job=str(job.id), state=state, said=said)
    return answer, t("cli-job", printer=a.printer, job=str(job.id), state=state)


def _write(
    tags: Sequence[Tag],
    template: Template,
    dpi: int,
    a: argparse.Namespace,
    t: Translator,
    *,
    progress: bool = False,
) -> list[str]:
    from tqdm import tqdm

    from tagger.printing import pdf, raster

    _refuse_what_cannot_be_written(tags, template, a)
    if a.out.suffix.lower() == ".png":
        return [str(file) for file in raster.write(tags, template, a.out, dpi=dpi, start=a.start)]
    quiet = not progress or len(tags) < 20
    with tqdm(total=len(tags), unit=t("cli-progress-unit"), disable=quiet, file=sys.stderr) as bar:
        pdf.write(tags, template, a.out, dpi=dpi, start=a.start, progress=bar.update)
    return [str(a.out)]
