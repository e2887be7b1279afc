"""Print jobs in every state in which one stays, made by real printing, for the pages that show them."""

from __future__ import annotations

from tagger.store import PrintState, Store
from tests.ports import free_port
from tests.printing.ipp.endpoint import Endpoint, cut_line, until

NAME = "Anna"


def _printer(store: Store, name: str, uri: str, template: str | None = None) -> int:
    """A printer of this name at this address, whatever was there before."""
    for known in store.printers():
        if known.name == name:
            store.retire_printer(known.id)
    return store.add_printer(name, uri, 300, template=template, by=NAME).id


def jobs_in_each_state(store: Store, number: str, endpoint: Endpoint) -> dict[PrintState, int]:
    """A print job in each state in which one stays."""
    reason = "the tag was damaged"
    off = f"ipp://localhost:{free_port()}/ipp/print"
    with cut_line(endpoint, after=3000) as broken:
        places = {
            PrintState.DONE: _printer(store, "Bench 1", endpoint.uri, "hang_tag"),
            PrintState.UNKNOWN: _printer(store, "Stores", broken),
            PrintState.FAILED: _printer(store, "Counter, by the door", off),
        }
        jobs = {
            state: store.ask_print(place, [number], "hang_tag", reason=reason, by=NAME).id
            for state, place in places.items()
        }
        dropped = store.ask_print(places[PrintState.FAILED], [number], "roll_4x2", by=NAME).id
        for job in (*jobs.values(), dropped):
            until(lambda job=job: store.print_job(job).state in (*jobs, PrintState.DROPPED))
    store.print_dropped(dropped, by=NAME)
    assert {state: store.print_job(job).state for state, job in jobs.items()} == {
        state: state for state in jobs
    }
    return jobs | {PrintState.DROPPED: dropped}
