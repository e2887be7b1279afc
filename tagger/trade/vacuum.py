"""Whether a hose stands the vacuum of a suction line: the least that its sources print.

Wire braid does not say that a hose stands vacuum: without a row for the very hose nothing is known.
"""

from __future__ import annotations

from tagger import phrases
from tagger.messages import Message, Value
from tagger.spec import AssemblySpec
from tagger.trade.results import Warning_
from tagger.trade.tables import Tables


def warnings(spec: AssemblySpec, tables: Tables) -> list[Warning_]:
    """Said of the vacuum that a spec asks of its hose; nothing where it asks none."""
    asked, hose = spec.vacuum_bar, spec.hose
    if asked is None:
        return []
    standard = tables.standard_of(hose.standard)
    found = tables.hose_vacuums.get((standard.standard if standard else "", str(hose.dash)), ())
    values: dict[str, Value] = {"standard": hose.standard, "dash": hose.dash}
    if not found:
        not_known = Message("trade-vacuum-not-known", **values)
        return [Warning_(code="vacuum_not_known", field="vacuum_bar", message=not_known, severity="danger")]
    low = min(found, key=lambda r: r.vacuum_bar)
    rated = phrases.vacuum(low.vacuum_bar)
    if asked > low.vacuum_bar:
        too_deep = Message(
            "trade-vacuum-too-deep", **values, asked=phrases.vacuum(asked), rated=rated, source=low.source
        )
        return [Warning_(code="vacuum_too_deep", field="vacuum_bar", message=too_deep, severity="danger")]
    if low.confidence == "memory":
        source = low.source.removeprefix("memory: ")
        return [
            _warning(
                "vacuum_from_memory", Message("trade-vacuum-unverified", **values, rated=rated, source=source)
            )
        ]
    return []


def _warning(code: str, message: Message) -> Warning_:
    return Warning_(code=code, field="vacuum_bar", message=message)
