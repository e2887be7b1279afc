"""The commands that put tags on paper: print, run, preflight."""

from __future__ import annotations

import argparse
import gc
import hashlib
import os
import sys
from collections.abc import Callable, Iterable, Iterator, Sequence
from contextlib import contextmanager
from typing import TYPE_CHECKING

from tagger import whole_files
from tagger.cli.commands import Answer, open_store, shop_settings, shop_tables, tags_here, warn_of_address
from tagger.errors import Problem, SpecError, StoreError, TaggerError, TemplateError
from tagger.i18n import Translator
from tagger.messages import Message, Value
from tagger.record import recorded
from tagger.spec import AssemblySpec

if TYPE_CHECKING:  # each command loads only what it needs
    from tagger.printing.content import Tag
    from tagger.printing.kinds import Kinds
    from tagger.printing.preflight import Finding, Preflight
    from tagger.printing.template import Template
    from tagger.settings import ShopSettings
    from tagger.store import Registration, Store
    from tagger.store.prepared import Drawn, Prepared
    from tagger.trade.results import Assessment


def print_tags(a: argparse.Namespace, t: Translator) -> Answer:
    """Prints the tags of registered assemblies, to a file or on a network printer."""
    from tagger.code import number as tag_number

    shop = shop_settings()
    template = _template(a, shop)
    dpi = a.dpi or (_dpi_of(a.printer) if a.printer else shop.printer_dpi)
    with open_store() as store:
        assemblies = store.assemblies(a.numbers)
        numbers = [assembly.number for assembly in assemblies]
        store.refuse_print(numbers, template.purpose)
        tags = tags_here(store, assemblies, shop, t)

        def printed(**data: str) -> None:
            store.record_many(numbers, "printed", {"template": template.name, **data})

        try:
            if a.printer:
                answer, text = _send(tags, template, dpi, a, printed, t)
            else:
                _refuse_what_cannot_be_written(template, a)
                files = _write(tags, template, dpi, a, t)
                answer, text = {"files": files}, "\n".join(files)
                printed()
        except TemplateError as error:
            if error.number and len(numbers) > 1:
                raise error.within(tag_number.format(error.number)) from None
            raise
    return {**answer, "tags": len(tags)}, text


def run(a: argparse.Namespace, t: Translator) -> Answer:
    """Registers a list and prints it whole; after a crash the same numbers are printed.

    Tag numbers are drawn, the labels of those very numbers are laid out, proved and written beside the file,
    then the numbers are registered, and then the file takes its name. So what could be refused on the way
    to paper is refused before anything is registered.
    """
    shop = shop_settings()
    template, dpi = _template(a, shop), _dpi(a, shop)
    if shop.proof_first and not template.traveller:
        raise SpecError(Problem("--template", template.name, Message("cli-run-proof-first")))
    if template.purpose == "do_not_use":
        raise SpecError(
            Problem("--template", template.name, Message("cli-run-do-not-use", template=template.name))
        )
    _refuse_what_cannot_be_written(template, a)
    with _few_collections():
        return _run(a, t, shop, template, dpi)


@contextmanager
def _few_collections() -> Iterator[None]:
    """A long run makes many values and hardly a cycle: those that stay are looked through again and again."""
    before = gc.get_threshold()
    gc.freeze()
    gc.set_threshold(50_000, 20, 100)
    try:
        yield
    finally:
        gc.set_threshold(*before)
        gc.unfreeze()


def _run(a: argparse.Namespace, t: Translator, shop: ShopSettings, template: Template, dpi: int) -> Answer:
    from tagger import record_tag
    from tagger.code import number

    mark = hashlib.sha256(a.list.read_bytes()).hexdigest()
    with open_store() as store:
        prepared = store.prepare(_listed(a, store))
        key, numbers = _batch(store, prepared, mark)
        if numbers:  # a run before this one registered them and never came to print them
            store.refuse_print(numbers, template.purpose)
            tags = tags_here(store, store.assemblies(numbers), shop, t)
            files = _write(tags, template, dpi, a, t, progress=not a.json)
        else:
            drawn = store.draw(prepared)
            numbers = drawn.numbers
            warn_of_address(shop, t)

            def register(kinds: Kinds) -> None:
                _refuse_kinds_that_would_not_scan(kinds, template, dpi, a, t)
                try:
                    store.register_drawn(drawn, key=key)
                except StoreError:
                    if store.registered(prepared, key):
                        raise SpecError(Problem("list", a.list.name, Message("cli-run-meanwhile"))) from None
                    raise

            coming, count = record_tag.tags_to_be(drawn, shop), len(numbers)
            try:
                files = _write(coming, template, dpi, a, t, progress=not a.json, count=count, accept=register)
            except TemplateError as error:
                raise _of_its_row(error, drawn) from None
        store.record_many(numbers, "printed", {"template": template.name, "list": a.list.name})
    shown = [number.format(one) for one in numbers]
    return {"numbers": shown, "files": files}, t("cli-run-done", count=len(shown), files=tuple(files))


def _listed(a: argparse.Namespace, store: Store) -> Iterator[Registration]:
    """The rows of the list as they are read, assessed. Raises SpecError at its end with the problems of all rows."""
    from tagger import list_columns, lists
    from tagger.errors import TradeError
    from tagger.store import Registration
    from tagger.trade import assess

    tables = shop_tables()
    assessed: dict[AssemblySpec, Assessment] = {}  # equal specs once; they mostly follow one another
    problems: list[Problem] = []
    rows = list_columns.each_in_ours(lists.each_of_table(a.list))
    for listed in lists.each_row(rows, store.read_spec):
        spec = listed.spec
        try:
            if spec not in assessed:
                if len(assessed) >= _MOST_ASSESSED:
                    assessed.clear()
                assessed[spec] = assess(spec, tables)
        except TradeError as error:
            problems += error.within(f"row {listed.row}").problems
            continue
        yield Registration(
            spec,
            assessed[spec],
            listed.quantity,
            a.built_on,
            lot_reason=listed.lot_reason,
            changes_considered=False,
            listed_row=listed.row,
            **recorded(listed),
        )
    if problems:
        raise SpecError(problems)


_MOST_ASSESSED = 200


def _of_its_row(error: TemplateError, drawn: Drawn) -> TaggerError:
    """The error with the row of the list whose label it is of, where it is of one."""
    rows = (row.listed_row for number, _, _, row in drawn.each() if number == error.number)
    return next((error.within(f"row {row}") for row in rows), error)


def _batch(store: Store, prepared: Prepared, mark: str) -> tuple[str, list[str]]:
    """The key of the batch to print, and the numbers registered with it by a run that never printed them.

    The same list run again after it was printed is a new batch, with numbers of its own.
    """
    from tagger.store import Kind

    for batch in range(1, 10_000):
        key = f"list {mark} batch {batch}"
        numbers = store.registered(prepared, key)
        if not store.last(numbers, Kind.PRINTED):
            return key, numbers
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


def _refuse_kinds_that_would_not_scan(
    kinds: Kinds, template: Template, dpi: int, a: argparse.Namespace, t: Translator
) -> None:
    """Preflight of the worst label of each kind; warnings go to the screen."""
    from tagger.printing import preflight

    told: set[Message] = set()
    for tag in kinds.worst(bends=template.bends):
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


def _refuse_what_cannot_be_written(template: Template, a: argparse.Namespace) -> None:
    from tagger.printing.sheets import refuse_place

    if a.out.suffix.lower() in _PLATE:
        if template.engraved is None:
            raise SpecError(Problem("--template", template.name, Message("cli-out-not-engraved")))
        if len(getattr(a, "numbers", ())) != 1:
            raise SpecError(Problem("--out", str(a.out), Message("cli-out-one-plate")))
    elif a.out.suffix.lower() not in (".pdf", ".png"):
        raise SpecError(Problem("--out", str(a.out), Message("cli-out-not-pdf-or-png")))
    if not a.out.parent.is_dir():
        raise SpecError(Problem("--out", str(a.out.parent), Message("cli-out-no-folder")))
    if not os.access(a.out.parent, os.W_OK):
        raise SpecError(Problem("--out", str(a.out), Message("cli-out-not-writable")))
    refuse_place(template, a.start)


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

    Every label is proved and each kind of label simulated before anything is sent.
    They are logged as printed once the printer has accepted them, or may have. Raises PrinterError
    for a job that the printer gave up, or whose state is not known.
    """
    from tagger.printing.printer import JobState, Unsure, printer_at, wait

    def scans(kinds: Kinds) -> None:
        _refuse_kinds_that_would_not_scan(kinds, template, dpi, a, t)

    printer = printer_at(a.printer)
    try:
        taken = printer.send(tags, template, dpi=dpi, start=a.start, forced=a.force, accept=scans)
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


_PLATE = (".svg", ".dxf")


def _write_plate(tag: Tag, template: Template, a: argparse.Namespace) -> list[str]:
    """One tag's plate as lines for an engraver, its symbols proved as the tool cuts them."""
    from tagger.printing import plate

    made = plate.file(tag, template, "svg" if a.out.suffix.lower() == ".svg" else "dxf")
    whole_files.write(a.out, made.encode())
    return [str(a.out)]


def _write(
    tags: Iterable[Tag],
    template: Template,
    dpi: int,
    a: argparse.Namespace,
    t: Translator,
    *,
    count: int | None = None,
    progress: bool = False,
    accept: Callable[[Kinds], None] | None = None,
) -> list[str]:
    """The files written, each label in them proved; ``accept``: what is asked before they take their names.

    Without it that is whether each kind of label would scan.
    """
    from tqdm import tqdm

    from tagger.printing import pdf, raster

    def scans(kinds: Kinds) -> None:
        _refuse_kinds_that_would_not_scan(kinds, template, dpi, a, t)

    asked = accept or scans
    if a.out.suffix.lower() in _PLATE:
        return _write_plate(next(iter(tags)), template, a)
    if a.out.suffix.lower() == ".png":
        files = raster.write(tags, template, a.out, dpi=dpi, start=a.start, forced=a.force, accept=asked)
        return [str(file) for file in files]
    quiet = not progress or (count is not None and count < 20)
    with tqdm(total=count, unit=t("cli-progress-unit"), disable=quiet, file=sys.stderr) as bar:
        pdf.write(
            tags, template, a.out, dpi=dpi, start=a.start, progress=bar.update, forced=a.force, accept=asked
        )
    return [str(a.out)]
