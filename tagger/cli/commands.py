"""What each command of the command line does: a namespace of arguments in, an answer out."""

from __future__ import annotations

import argparse
import json
import os
import sys
from collections.abc import Sequence
from pathlib import Path
from typing import TYPE_CHECKING, Any

from tagger.errors import Problem, SpecError
from tagger.spec import AssemblySpec, TagContent
from tagger.words import Words

if TYPE_CHECKING:  # each command loads only what it needs: `tagger schema` opens no database
    from tagger.code.link import Link
    from tagger.printing.content import Tag
    from tagger.settings import ShopSettings
    from tagger.store import Assembly, Store

Answer = tuple[dict[str, Any], str]  # the --json answer, and the same for people


# --- what the trade says ------------------------------------------------------------------------


def identify(a: argparse.Namespace) -> Answer:
    from tagger.trade import report
    from tagger.trade.identifying import identify

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
        shop_settings().tables(),
    )
    return report.identification(found), report.identification_text(found)


def check(a: argparse.Namespace) -> Answer:
    from tagger.trade import assess, report

    spec = _read_spec(a.spec)
    found = assess(spec, shop_settings().tables(), length_bands=a.length_bands)
    return report.assessment(found), report.assessment_text(spec, found)


def compare(a: argparse.Namespace) -> Answer:
    from tagger.trade import likeforlike, report

    found = likeforlike.compare(_spec_or_tag(a.a), _spec_or_tag(a.b), shop_settings().tables())
    return report.comparison(found), report.comparison_text(found)


def tables(_: argparse.Namespace) -> Answer:
    from tagger.trade import validate

    tables = shop_settings().tables()
    findings = validate.findings(tables)
    text = "\n".join(map(str, findings)) or f"The tables hold together: {validate.summary(tables)}."
    answer = [finding.as_json() | {"text": str(finding)} for finding in findings]
    return {"ok": not findings, "findings": answer}, text


def schema(_: argparse.Namespace) -> Answer:
    schema = AssemblySpec.model_json_schema()
    return schema, json.dumps(schema, indent=2, ensure_ascii=False)


# --- tags ---------------------------------------------------------------------------------------


def register(a: argparse.Namespace) -> Answer:
    from tagger.code import number
    from tagger.trade import assess

    spec = _read_spec(a.spec)
    found = assess(spec, shop_settings().tables())
    with open_store() as store:
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


def read(a: argparse.Namespace) -> Answer:
    from tagger.code import number, reading

    found = _link_of(a.what)
    content = reading.content_of(found)
    return reading.as_dict(content, found), f"{number.format(found.number)}\n{_content_text(content)}"


def show(a: argparse.Namespace) -> Answer:
    from tagger.code import number

    with open_store() as store:
        assembly = store.assembly(a.number)
        history = store.history(a.number)
        (tag,) = tags_here(store, [assembly], shop_settings())
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
        "link": tag.link,
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

    rows = template.catalogue(shop_settings().label_template_dirs)
    lines = [
        f"{row['name']:<22} {row['width_mm']:g} x {row['height_mm']:g} mm  {row['title']}" for row in rows
    ]
    return {"templates": rows}, "\n".join(lines)


# --- the web, and copies ------------------------------------------------------------------------


def serve(a: argparse.Namespace) -> Answer:
    import uvicorn

    from tagger.settings import ShopSettings

    shop = ShopSettings.from_env(host=a.host, port=a.port)
    base = shop.base_url if shop.has_set("base_url") else f"http://127.0.0.1:{shop.port}"
    # the application reads its settings from the environment
    os.environ |= {"TAGGER_HOST": shop.host, "TAGGER_PORT": str(shop.port), "TAGGER_BASE_URL": base}
    print(f"Serving {base} on {shop.host}:{shop.port}; the bench is at {base}/bench", file=sys.stderr)
    # By name, so that the library needs nothing of the web application. Whose X-Forwarded-For is
    # believed the application says itself (TAGGER_TRUSTED_PROXIES); uvicorn alone would believe any
    # that comes from this machine.
    uvicorn.run(
        "api.app:create_app", factory=True, host=shop.host, port=shop.port, log_level="warning",
        proxy_headers=False,
    )  # fmt: skip
    return {}, "Stopped."


def backup(a: argparse.Namespace) -> Answer:
    with open_store() as store:
        copied = store.backup(a.file)
    return _copied(a.file, copied.rows, copied.digest, "written and read back")


def restore(a: argparse.Namespace) -> Answer:
    with open_store() as store:
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
    with open_store() as store:
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


def open_store() -> Store:
    from tagger.store import Store

    return Store.open()


def shop_settings() -> ShopSettings:
    """What this shop has set; options on the command line win over it."""
    from tagger.settings import ShopSettings

    return ShopSettings.from_env()


def tags_here(store: Store, assemblies: Sequence[Assembly], shop: ShopSettings) -> list[Tag]:
    from tagger.record_tag import tags_of

    if not shop.has_set("base_url"):
        print(
            f"note: TAGGER_BASE_URL is not set, so the QR opens {shop.base_url}, which only this machine reaches.",
            file=sys.stderr,
        )
    return tags_of(store, assemblies, shop)


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
