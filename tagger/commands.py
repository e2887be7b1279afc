"""What each command of the command line does: a namespace of arguments in, an answer out."""

from __future__ import annotations

import argparse
import hashlib
import json
import os
import sys
from collections.abc import Iterable, Sequence
from pathlib import Path
from typing import TYPE_CHECKING, Any

from tagger.errors import Problem, SpecError
from tagger.spec import AssemblySpec, TagContent
from tagger.words import Words

if TYPE_CHECKING:  # each command loads only what it needs: `tagger schema` opens no database
    from tagger.code.link import Link
    from tagger.printing.preflight import Preflight
    from tagger.printing.tag import Tag
    from tagger.printing.template import Template
    from tagger.store import Assembly, Registration, Store
    from tagger.trade.tables import Tables

Answer = tuple[dict[str, Any], str]  # the --json answer, and the same for people
LOCAL_ADDRESS = "http://127.0.0.1:8000"


# --- what the trade says ------------------------------------------------------------------------


def identify(a: argparse.Namespace) -> Answer:
    from tagger.trade import identify, report

    found = identify.identify(
        identify.Measurements.read(
            form=a.form,
            thread_od=a.thread_od,
            thread_id=a.thread_id,
            tpi=a.tpi,
            pitch=a.pitch,
            seat=a.seat,
            cone=a.cone,
            hex=a.hex,
            tube_od=a.tube_od,
            flange_od=a.flange_od,
            bolt_spacing=a.bolt_spacing,
        ),
        _shop_tables(),
    )
    return report.identification(found), report.identification_text(found)


def check(a: argparse.Namespace) -> Answer:
    from tagger.trade import assess, report

    spec = _read_spec(a.spec)
    found = assess(spec, _shop_tables(), length_bands=a.length_bands)
    return report.assessment(found), report.assessment_text(spec, found)


def compare(a: argparse.Namespace) -> Answer:
    from tagger.trade import likeforlike, report

    found = likeforlike.compare(_spec_or_tag(a.a), _spec_or_tag(a.b), _shop_tables())
    return report.comparison(found), report.comparison_text(found)


def tables(_: argparse.Namespace) -> Answer:
    from tagger.trade import validate

    tables = _shop_tables()
    findings = validate.findings(tables)
    text = "\n".join(findings) or f"The tables hold together: {validate.summary(tables)}."
    return {"ok": not findings, "findings": findings}, text


def schema(_: argparse.Namespace) -> Answer:
    schema = AssemblySpec.model_json_schema()
    return schema, json.dumps(schema, indent=2, ensure_ascii=False)


# --- tags ---------------------------------------------------------------------------------------


def register(a: argparse.Namespace) -> Answer:
    from tagger.code import number
    from tagger.trade import assess

    spec = _read_spec(a.spec)
    found = assess(spec, _shop_tables())
    with _store() as store:
        made = store.register(
            spec,
            found,
            count=a.count,
            built_on=a.built_on,
            customer=a.customer,
            machine=a.machine,
            position=a.position,
            replaces=a.replaces,
            key=a.key,
        )
    for warning in found.warnings:
        if warning.severity != "note":
            print(f"{warning.severity}: {warning.text}", file=sys.stderr)
    numbers = [number.format(assembly.number) for assembly in made]
    return {"numbers": numbers}, "\n".join(numbers)


def print_tags(a: argparse.Namespace) -> Answer:
    _check_out(a.out)
    template = _template(a.template, a.languages)
    with _store() as store:
        assemblies = store.assemblies(a.numbers)
        store.refuse_blocked([assembly.number for assembly in assemblies])
        tags = _tags(assemblies)
        _refuse_what_would_not_scan(tags, template, a)
        files = _write(tags, template, a)
        store.record_many(
            [assembly.number for assembly in assemblies], "printed", {"template": template.name}
        )
    return {"files": files, "tags": len(tags)}, "\n".join(files)


def run(a: argparse.Namespace) -> Answer:
    """A list is registered once and printed whole; after a crash the same numbers are printed."""
    from tagger import lists
    from tagger.code import number
    from tagger.errors import TradeError
    from tagger.store import Registration
    from tagger.trade import assess

    _check_out(a.out)
    template = _template(a.template, a.languages)
    tables = _shop_tables()
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
    _refuse_what_would_not_scan(
        [_trial_tag(row.assessment.content_of(row.spec, row.built_on)) for row in rows], template, a
    )
    mark = hashlib.sha256(a.list.read_bytes()).hexdigest()
    with _store() as store:
        assemblies = _registered_but_not_printed(store, rows, mark)
        store.refuse_blocked([one.number for one in assemblies])
        files = _write(_tags(assemblies), template, a, progress=not a.json)
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


def read(a: argparse.Namespace) -> Answer:
    from tagger.code import number, reading

    found = _link_of(a.what)
    content = reading.content_of(found)
    return reading.as_dict(content, found), f"{number.format(found.number)}\n{_content_text(content)}"


def show(a: argparse.Namespace) -> Answer:
    from tagger.code import number

    with _store() as store:
        assembly = store.assembly(a.number)
        history = store.history(a.number)
    withdrawn = [withdrawal.reason for withdrawal in assembly.withdrawals]
    lineage = {
        name: number.format(other)
        for name, other in (("replaces", assembly.replaces), ("replaced_by", assembly.replaced_by))
        if other
    }
    kept = {
        "customer": assembly.customer,
        "machine": assembly.machine,
        "position": assembly.position,
        **lineage,
    }
    record = {
        "number": number.format(assembly.number),
        "link": _tags([assembly])[0].link,
        "spec": assembly.spec.as_dict(),
        "working_pressure_bar": assembly.content.working_pressure_bar,
        "built_on": assembly.built_on and assembly.built_on.isoformat(),
        **kept,
        "withdrawn": withdrawn,
        "history": [
            {"at": event.at.isoformat(), "kind": str(event.kind), "by": event.by, "data": event.data}
            for event in history
        ],
    }
    lines = [
        number.format(assembly.number),
        *(f"WITHDRAWN, do not use: {reason}" for reason in withdrawn),
        _content_text(assembly.content),
        *(f"{name.replace('_', ' ').capitalize()}: {value}" for name, value in kept.items() if value),
        "",
        *(f"{event.at:%Y-%m-%d %H:%M}  {event.kind}  {event.by or ''}".rstrip() for event in history),
    ]
    return record, "\n".join(lines)


def templates(_: argparse.Namespace) -> Answer:
    from tagger.printing import template

    rows = template.catalogue(_template_dirs())
    lines = [
        f"{row['name']:<22} {row['width_mm']:g} x {row['height_mm']:g} mm  {row['title']}" for row in rows
    ]
    return {"templates": rows}, "\n".join(lines)


def preflight(a: argparse.Namespace) -> Answer:
    from tagger.printing import preflight

    with _store() as store:
        (tag,) = _tags([store.assembly(a.number)])
    found = preflight.preflight(tag, _template(a.template, None), dpi=a.dpi, hose_od_mm=a.hose_od)
    return found.as_dict(), _preflight_text(found)


# --- the web, and copies ------------------------------------------------------------------------


def serve(a: argparse.Namespace) -> Answer:
    import uvicorn

    for name, value in (("TAGGER_HOST", a.host), ("TAGGER_PORT", a.port)):
        if value is not None:
            os.environ[name] = str(value)
    host, port = os.environ.get("TAGGER_HOST", "127.0.0.1"), int(os.environ.get("TAGGER_PORT", "8000"))
    os.environ.setdefault("TAGGER_BASE_URL", f"http://127.0.0.1:{port}")
    print(f"Serving {_base_url()} on {host}:{port}; the bench is at {_base_url()}/bench", file=sys.stderr)
    # by name, so that the library needs nothing of the web application
    uvicorn.run("api.app:create_app", factory=True, host=host, port=port, log_level="warning")
    return {}, "Stopped."


def backup(a: argparse.Namespace) -> Answer:
    with _store() as store:
        copied = store.backup(a.file)
    return _copied(a.file, copied.rows, copied.digest, "written and read back")


def restore(a: argparse.Namespace) -> Answer:
    with _store() as store:
        copied = store.restore(a.file)
    return _copied(a.file, copied.rows, copied.digest, "restored and compared")


def _copied(file: Path, rows: dict[str, int], digest: str, what: str) -> Answer:
    counts = ", ".join(f"{count} {name}" for name, count in rows.items() if count)
    answer = {"file": str(file), "rows": rows, "sha256": digest}
    return answer, f"{file}: {what}: {counts or 'no rows'}; sha256 {digest}"


# --- shared by the commands ---------------------------------------------------------------------


def _read_spec(file: Path) -> AssemblySpec:
    try:
        return AssemblySpec.read(sys.stdin.buffer.read() if str(file) == "-" else file.read_bytes())
    except OSError as error:
        raise SpecError(
            Problem("spec", str(file), f"cannot be read: {error.strerror}", "Check the file's name.")
        ) from None


def _spec_or_tag(what: str) -> AssemblySpec:
    """A spec's file, or what a tag or a tag number here says."""
    from tagger.code import payload

    if Path(what).suffix.lower() == ".json" or what == "-":
        return _read_spec(Path(what))
    found = _link_of(what)
    if found.digits:
        return payload.decode(found.digits).spec
    with _store() as store:
        return store.assembly(found.number).spec


def _link_of(what: str) -> Link:
    """The tag in a picture's file, or in a scanned or typed string."""
    from tagger.code import link, photo
    from tagger.errors import LinkError

    path = Path(what)
    if "://" in what or not path.is_file():
        if path.suffix.lower() in (".png", ".jpg", ".jpeg", ".gif", ".webp", ".bmp", ".tif", ".tiff"):
            raise LinkError(Problem("image", what, "is not a file here", "Check the file's name."))
        return link.parse(what)
    return photo.read(path)


def _store() -> Store:
    from tagger.store import Store

    return Store.open()


def _shop_tables() -> Tables | None:
    """The tables with a shop's own rows, where it has any; None for ours alone."""
    from tagger.trade.tables import Tables

    folder = os.environ.get("TAGGER_TABLES_DIR")
    return Tables.load(folder) if folder else None


def _base_url() -> str:
    return os.environ.get("TAGGER_BASE_URL") or LOCAL_ADDRESS


def _template_dirs() -> list[str]:
    return [part for part in os.environ.get("TAGGER_LABEL_TEMPLATE_DIRS", "").split(os.pathsep) if part]


def _template(name: str, languages: str | None) -> Template:
    from tagger.printing import template

    chosen = template.load(name, _template_dirs())
    return chosen.in_languages(languages.split(",")) if languages else chosen


def _tags(assemblies: Sequence[Assembly]) -> list[Tag]:
    from tagger.code import link
    from tagger.printing.tag import Tag

    if not os.environ.get("TAGGER_BASE_URL"):
        print(
            f"note: TAGGER_BASE_URL is not set, so the QR opens {LOCAL_ADDRESS}, which only this machine reaches.",
            file=sys.stderr,
        )
    shop = " ".join(filter(None, (os.environ.get("TAGGER_SHOP_NAME"), os.environ.get("TAGGER_SHOP_PHONE"))))
    prefix = os.environ.get("TAGGER_GS1_PREFIX") or None
    return [
        Tag(
            number=one.number,
            link=link.build(_base_url(), one.number, one.digits, gs1_prefix=prefix),
            content=one.content,
            assessment=one.assessment,
            serial=f"{place} of {len(assemblies)}" if len(assemblies) > 1 else "",
            shop=shop,
            extra={
                name: value for name in ("customer", "machine", "position") if (value := getattr(one, name))
            },
        )
        for place, one in enumerate(assemblies, 1)
    ]


def _refuse_what_would_not_scan(tags: Iterable[Tag], template: Template, a: argparse.Namespace) -> None:
    """Preflight of every different content, before anything is printed; warnings go to the screen."""
    from tagger.printing import preflight

    seen: set[TagContent] = set()
    told: set[str] = set()
    for tag in tags:
        if tag.content in seen:
            continue
        seen.add(tag.content)
        found = preflight.preflight(tag, template, dpi=a.dpi)
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


def _check_out(out: Path) -> None:
    """Refuses a file that cannot be written, before anything is registered for it."""
    if out.suffix.lower() not in (".pdf", ".png"):
        raise SpecError(Problem("--out", str(out), "is neither .pdf nor .png", "Name a .pdf or a .png file."))
    if not out.parent.is_dir():
        mend = "Make the folder, or check the path."
        raise SpecError(Problem("--out", str(out.parent), "is not a folder here", mend))


def _write(
    tags: Sequence[Tag], template: Template, a: argparse.Namespace, *, progress: bool = False
) -> list[str]:
    from tqdm import tqdm

    from tagger.printing import pdf, raster

    if a.out.suffix.lower() == ".png":
        return [str(file) for file in raster.write(tags, template, a.out, dpi=a.dpi, start=a.start)]
    with tqdm(total=len(tags), unit="tag", disable=not progress or len(tags) < 20, file=sys.stderr) as bar:
        pdf.write(tags, template, a.out, dpi=a.dpi, start=a.start, progress=bar.update)
    return [str(a.out)]


def _content_text(content: TagContent) -> str:
    words, spec = Words(), content.spec
    clocking = words.clocking(spec)
    lines = [
        f"Working pressure: {words.pressure(content.working_pressure_bar)}",
        f"Hose: {words.hose(spec.hose)}",
        f"End A: {words.end(spec.end_a)}",
        f"End B: {words.end(spec.end_b)}",
        f"Length: {words.length(spec)}",
        *([f"Clocking: {clocking}"] if clocking else []),
        f"Tighten A: {'; '.join(words.tighten(content.tighten_a, spec.end_a))}",
        f"Tighten B: {'; '.join(words.tighten(content.tighten_b, spec.end_b))}",
    ]
    if content.built_on:
        lines.append(f"Built on: {content.built_on.isoformat()}")
    return "\n".join(lines)


def _trial_tag(content: TagContent) -> Tag:
    """A tag as it will be, but for its number: enough to see whether it fits and scans."""
    from tagger.code import link, payload
    from tagger.printing.tag import Tag

    number = "00000000001"
    return Tag(number, link.build(_base_url(), number, payload.encode(content)), content)
