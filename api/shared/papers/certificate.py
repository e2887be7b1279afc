"""The certificate of a proof test, as one A4 page."""

from __future__ import annotations

from typing import Any

from reportlab.graphics.barcode.qr import QrCodeWidget
from reportlab.graphics.shapes import Drawing
from reportlab.lib.units import mm

from api.settings import Settings
from api.shared.papers import document
from tagger import units
from tagger.code import link
from tagger.code import number as tag_number
from tagger.errors import Problem, StoreError
from tagger.store import Assembly, Event, Kind, Store
from tagger.words import Words

_CODE, _WIDTHS = 26 * mm, (42, 128)


def of_last_test(store: Store, number: str, settings: Settings) -> bytes:
    """The certificate of a tag's last proof test. Raises StoreError where there is no record, or no test."""
    known = store.assembly(number)
    test = store.last([known.number], Kind.PROOF_TESTED).get(known.number)
    if test is None:
        raise StoreError(Problem("number", number, "has no proof test in its record", "Record one first."))
    return certificate(known, test, store.last([known.number], Kind.CRIMPED).get(known.number), settings)


def certificate(known: Assembly, test: Event, crimps: Event | None, settings: Settings) -> bytes:
    """The PDF's bytes. Says plainly when the test failed."""
    words, number = Words(settings.language), tag_number.format(known.number)
    passed = bool(test.data["passed"])
    story = [
        *document.head(settings),
        document.text("Proof test of a hose assembly", 18, bold=True),
        document.text(f"Tag {number}: {'passed' if passed else 'FAILED - not to be used'}", 14, bold=True),
        document.gap(4),
        document.table([("Tag number", number), *_of_the_assembly(known, words)], _WIDTHS),
        document.gap(5),
        document.text("The test", 12, bold=True),
        document.table(_of_the_test(test), _WIDTHS),
    ]
    if crimps is not None:
        story += [document.gap(5), document.text("Crimp diameters", 12, bold=True)]
        story += [document.table(_of_the_crimps(crimps), _WIDTHS)]
    story += [
        document.gap(5),
        _code(link.build(settings.base_url, known.number, known.digits)),
        document.text(
            "This page states what was recorded of one test of this assembly on that day. It says nothing of the "
            "assembly's state later: inspect it before use. The fitting maker's and hose maker's data come first.",
            9,
        ),
    ]
    return document.to_pdf(story, title=f"Proof test of {number}", settings=settings)


def _of_the_assembly(known: Assembly, words: Words) -> list[tuple[str, str]]:
    spec = known.spec
    rows = [
        ("Hose", words.hose(spec.hose) + (f", lot {spec.hose.lot}" if spec.hose.lot else "")),
        ("End A", words.end(spec.end_a) + (f", lot {spec.end_a.lot}" if spec.end_a.lot else "")),
        ("End B", words.end(spec.end_b) + (f", lot {spec.end_b.lot}" if spec.end_b.lot else "")),
        ("Length", words.length(spec)),
        ("Clocking", words.clocking(spec) or ""),
        ("Working pressure", words.pressure(known.content.working_pressure_bar)),
        ("Source of it", known.assessment.working_pressure.source),
        ("Built on", known.built_on.isoformat() if known.built_on else ""),
        ("Customer", known.customer or ""),
        ("Machine, position", ", ".join(part for part in (known.machine, known.position) if part)),
    ]
    return [(name, text) for name, text in rows if text]


def _of_the_test(test: Event) -> list[tuple[str, str]]:
    data = test.data
    called = data.get("called_for_bar")
    rows = [
        ("Result", "passed" if data["passed"] else "failed"),
        ("Pressure", units.show_pressure(data["pressure_bar"])),
        (
            "Called for",
            units.show_pressure(called) if called else "not known: no proof pressure in the record",
        ),
        ("Held for", f"{data['hold_s']} s{_called_for_s(data)}"),
        ("Medium", data["medium"]),
        ("Tested by", data["tester"]),
        ("Recorded", f"{test.at:%Y-%m-%d %H:%M} UTC"),
        ("Note", data.get("note", "")),
    ]
    return [(name, text) for name, text in rows if text]


def _called_for_s(data: dict[str, Any]) -> str:
    least, most = data.get("called_for_s"), data.get("called_for_most_s")
    if least is None:
        return ""
    wanted = f"at least {least:g}" if most is None else f"{least:g} to {most:g}"
    longer = "; longer than called for" if most is not None and data["hold_s"] > most else ""
    return f" (called for: {wanted} s{longer})"


def _of_the_crimps(crimps: Event) -> list[tuple[str, str]]:
    return [
        (f"End {c['end'].upper()}", f"{c['measured_mm']:g} mm, band {c['low_mm']:g} to {c['high_mm']:g} mm "
         f"({c['shell']}; {c['source']}): {'in its band' if c['holds'] else 'OUT OF ITS BAND'}")
        for c in crimps.data["crimps"]
    ]  # fmt: skip


def _code(text: str) -> Drawing:
    widget = QrCodeWidget(text, barLevel="M", barWidth=_CODE, barHeight=_CODE, barBorder=4)
    drawing = Drawing(_CODE, _CODE)
    drawing.add(widget)
    return drawing
