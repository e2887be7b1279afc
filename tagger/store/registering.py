"""Registering what was built: one way for the command line, the bench and the JSON API."""

from __future__ import annotations

from collections.abc import Sequence
from typing import TYPE_CHECKING

from tagger.store.values import Assembly, OrderState, Registration

if TYPE_CHECKING:
    from tagger.store import Store


def register(
    store: Store, rows: Sequence[Registration], *, by: str | None, key: str | None = None
) -> list[Assembly]:
    """Registers the rows, and moves the order requests they are built for on to "building": all, or nothing."""

    def registered(_: object) -> list[Assembly]:
        made = store.register_many(rows, by=by, key=key)
        for reference in dict.fromkeys(row.order_reference for row in rows if row.order_reference):
            if OrderState.BUILDING in store.order(reference).state.next:
                store.set_order_state(reference, OrderState.BUILDING, by=by)
        return made

    return store.act(registered)
