"""The commands that put tags on paper: print, run, preflight."""

from __future__ import annotations

import argparse
import hashlib
import os
import sys
from collections.abc import Callable, Iterable, Sequence
from dataclasses import replace
from typing import TYPE_CHECKING

from tagger.cli.commands import Answer, open_store, shop_settings, tags_here
from tagger.errors import Problem, SpecError

if TYPE_CHECKING:  # each command loads only what it needs
    from tagger.printing.content import Tag
    from tagger.printing.preflight import Preflight
    from tagger.printing.template import Template
    from tagger.settings import ShopSettings
    from tagger.store import Assembly, Registration, Store


def print_tags(a: argparse.Namespace) -> Answer:
    shop = shop_settings()
    template = _template(a, shop)
    dpi = a.dpi or (_dpi_of(a.printer) if a.printer else shop.printer_dpi)
    with open_store() as store:
        assemblies = store.assemblies(a.numbers)
        numbers = [assembly.number for assembly in assemblies]
        store.refuse_blocked(numbers)
        tags = tags_here(store, assemblies, shop)
        _refuse_what_would_not_scan(tags, template, dpi, a)

        def printed(**data: str) -> None:
            store.record_many(numbers, "printed", {"template": template.name, **data})

        if a.printer:
            answer, text = _send(tags, template, dpi, a, printed)
        else:
            files = _write(tags, template, dpi, a)
            answer, text = {"files": files}, "\n".join(files)
            printed()
    return {**answer, "tags": len(tags)}, text


def run(a: argparse.Namespace) -> Answer:
    """A list is registered once and printed whole; after a crash the same numbers are printed.

    What could be refused on the way to paper is refused before anything is registered.
    """
    from tagger import lists, record_tag
    from tagger.code import number
    from tagger.errors import TradeError
    from tagger.store import Registration
    from tagger.trade import assess

    shop = shop_settings()
    template, dpi, tables = _template(a, shop), _dpi(a, shop), shop.tables()
    rows: list[Registration] = []
    problems: list[Problem] = []
    for listed in lists.read_list(a.list):
        try:
            found = assess(listed.spec, tables)
        except TradeError as error:
            problems += error.within(f"row {listed.row}").problems
            continue
        rows.append(
            Registration(listed.spec, found, listed.quantity, a.built_on, listed.customer, listed.machine, listed.position)
        )  # fmt: skip
    if problems:
        raise SpecError(problems)
    trials = record_tag.trials(rows, shop)
    _refuse_what_cannot_be_written(trials, template, a)
    _refuse_what_would_not_scan(trials, template, dpi, a)
    mark = hashlib.sha256(a.list.read_bytes()).hexdigest()
    with open_store() as store:
        assemblies = _registered_but_not_printed(store, rows, mark)
        store.refuse_blocked([one.number for one in assemblies])
        files = _write(tags_here(store, assemblies, shop), template, dpi, a, progress=not a.json)
        store.record_many(
            [one.number for one in assemblies], "printed", {"template": template.name, "list": a.list.name}
        )
    numbers = [number.format(one.number) for one in assemblies]
    text = f"{len(numbers)} assemblies registered and printed: {', '.join(files)}"
    return {"numbers": numbers, "files": files}, text


def _registered_but_not_printed(store: Store, rows: Sequence[Registration], mark: str) -> list[Assembly]:
    """Registers the list, unless an earlier run did and never came to print it.

    The same list run again after it was printed is a new batch, with numbers of its own.
    """
    from tagger.store import Kind

    for batch in range(1, 10_000):
        assemblies = store.register_many(rows, key=f"list {mark} batch {batch}")
        if not store.last([one.number for one in assemblies], Kind.PRINTED):
            return assemblies
    raise SpecError(Problem("list", None, "was run ten thousand times", "Change the list."))


def preflight(a: argparse.Namespace) -> Answer:
    from tagger.printing import preflight

    shop = shop_settings()
    with open_store() as store:
        (tag,) = tags_here(store, [store.assembly(a.number)], shop)
    found = preflight.preflight(tag, shop.template(a.template or ""), a.hose_od, _dpi(a, shop))
    return found.as_dict(), _preflight_text(found)


def _template(a: argparse.Namespace, shop: ShopSettings) -> Template:
    return shop.template(a.template or "", a.languages.split(",") if a.languages else ())


def _dpi(a: argparse.Namespace, shop: ShopSettings) -> int:
    return int(a.dpi or shop.printer_dpi)


def _refuse_what_would_not_scan(
    tags: Iterable[Tag], template: Template, dpi: int, a: argparse.Namespace
) -> None:
    """Preflight of every different tag, before anything is printed; warnings go to the screen."""
    from tagger.printing import preflight

    seen: set[Tag] = set()
    told: set[str] = set()
    for tag in tags:
        but_for_the_number = replace(tag, number="", link="", serial="")
        if but_for_the_number in seen:
            continue
        seen.add(but_for_the_number)
        found = preflight.preflight(tag, template, dpi=dpi)
        if (refusal := preflight.refused(found, template.name)) and not a.force:
            raise refusal
        for finding in found.findings:
            if finding.severity == "warn" and finding.text not in told:
                told.add(finding.text)
                print(f"{template.name}: {finding.text} {finding.mend}", file=sys.stderr)


def _preflight_text(found: Preflight) -> str:
    lines = [
        f"{'Will scan' if found.ok else 'WILL NOT SCAN RELIABLY'}: QR version {found.version}, level {found.level}, "
        f"modules {found.module_mm:.3f} mm = {found.dots_per_module} dots, {found.symbols} on the label, "
        f"grade {found.grade}, payload {found.payload_bytes} bytes"
    ]
    lines += [f"{finding.severity}: {finding.text} {finding.mend}".rstrip() for finding in found.findings]
    return "\n".join(lines)


def _refuse_what_cannot_be_written(tags: Sequence[Tag], template: Template, a: argparse.Namespace) -> None:
    from tagger.printing.sheets import sheets

    if a.out.suffix.lower() not in (".pdf", ".png"):
        raise SpecError(
            Problem("--out", str(a.out), "is neither .pdf nor .png", "Name a .pdf or a .png file.")
        )
    if not a.out.parent.is_dir():
        mend = "Make the folder, or check the path."
        raise SpecError(Problem("--out", str(a.out.parent), "is not a folder here", mend))
    if not os.access(a.out.parent, os.W_OK):
        raise SpecError(
            Problem("--out", str(a.out), "is in no folder that can be written to", "Name another folder.")
        )
    next(sheets(tags, template, a.start))  # refuses a place that the sheet has not


def _dpi_of(uri: str) -> int:
    """The printer's own dots an inch, 203 where it has them or does not say."""
    from tagger.printing.printer import printer_at

    return printer_at(uri).status().dpi()


def _send(
    tags: Sequence[Tag], template: Template, dpi: int, a: argparse.Namespace, printed: Callable[..., None]
) -> Answer:
    """Hands the tags to a network printer, and waits a while for the end of the job.

    They are logged as printed once the printer took them, or may have; a job that is given up, or
    of which nobody can tell, is an error all the same.
    """
    from tagger.printing.printer import JobState, Unsure, printer_at, wait

    printer = printer_at(a.printer)
    try:
        taken = printer.send(tags, template, dpi=dpi, start=a.start)
    except Unsure:
        printed(printer=a.printer, note="it may have been printed; nobody knows")
        raise
    printed(printer=a.printer)
    job = wait(printer, taken)
    answer = {"printer": a.printer, "job": job.id, "state": str(job.state), "reasons": list(job.reasons)}
    told = f" ({job.words})" if job.words and job.state is not JobState.COMPLETED else ""
    return answer, f"{a.printer}: job {job.id}, {job.state}{told}"


def _write(
    tags: Sequence[Tag], template: Template, dpi: int, a: argparse.Namespace, *, progress: bool = False
) -> list[str]:
    from tqdm import tqdm

    from tagger.printing import pdf, raster

    _refuse_what_cannot_be_written(tags, template, a)
    if a.out.suffix.lower() == ".png":
        return [str(file) for file in raster.write(tags, template, a.out, dpi=dpi, start=a.start)]
    with tqdm(total=len(tags), unit="tag", disable=not progress or len(tags) < 20, file=sys.stderr) as bar:
        pdf.write(tags, template, a.out, dpi=dpi, start=a.start, progress=bar.update)
    return [str(a.out)]
