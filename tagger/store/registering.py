"""Registering what was built: one way for the command line, the bench and the JSON API."""

from __future__ import annotations

from collections.abc import Sequence
from typing import TYPE_CHECKING

from tagger.store.values import Assembly, OrderState, Registration

if TYPE_CHECKING:
    from tagger.store import Store
    from tagger.trade.keeping import ShopRow


def register(
    store: Store,
    rows: Sequence[Registration],
    *,
    by: str | None,
    key: str | None = None,
    keep: Sequence[ShopRow] = (),
) -> list[Assembly]:
    """Registers the rows, and moves the order requests they are built for on to "building": all, or nothing.

    ``keep``: what manufacturers said with these specs, as rows of the shop's own for every later assembly.
    """

    def registered(_: object) -> list[Assembly]:
        made = store.register_many(rows, by=by, key=key)
        store.keep_shop_rows(keep, by=by)
        for reference in dict.fromkeys(row.order_reference for row in rows if row.order_reference):
            if OrderState.BUILDING in store.order(reference).state.next:
                store.set_order_state(reference, OrderState.BUILDING, by=by)
        return made

    return store.act(registered)
