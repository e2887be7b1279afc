"""What is wrong with the lots typed or scanned into the build page: said at once, not when registering."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from tagger.errors import Problem, TaggerError
from tagger.messages import Message
from tagger.spec import Hose
from tagger.store import LotReason, Scope, Store

REASONS = tuple(LotReason)
_LOTS = {"hose.lot": Scope.HOSE_LOT, "end_a.lot": Scope.FITTING_LOT, "end_b.lot": Scope.FITTING_LOT}


def problems(store: Store, fields: Mapping[str, Any]) -> tuple[Problem, ...]:
    """A problem for each lot that is withdrawn, and for a reel lot that is known as another hose."""
    found = [
        Problem(name, lot, Message("store-lot-withdrawn", scope=str(scope), lot=lot, reason=held.reason))
        for name, scope in _LOTS.items()
        if (lot := fields[name])
        for held in store.withdrawn_lots(lot)
        if held.scope is scope
    ]
    if (other := another_hose(store, fields)) and not fields["lot_reason"]:
        found.append(Problem("hose.lot", fields["hose.lot"], other))
    return tuple(found)


def another_hose(store: Store, fields: Mapping[str, Any]) -> Message | None:
    """What the reel lot is known as, where the fields name another hose already.

    None for a withdrawn lot: no reason lets anybody use it, so none is asked for.
    """
    lot = fields["hose.lot"]
    if not lot or any(held.scope is Scope.HOSE_LOT for held in store.withdrawn_lots(lot)):
        return None
    names = ("standard", "dash", "edition", "part", "lot")
    try:
        hose = Hose.model_validate({name: fields[f"hose.{name}"] or None for name in names})
        return store.another_hose(hose)
    except (TaggerError, ValueError):  # the hose is not typed yet
        return None
