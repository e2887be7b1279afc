"""What a scanner sends: a tag, a number, a reel's or a fitting bin's lot; and what is known of it."""

from __future__ import annotations

from typing import Annotated, Any, Literal

from fastapi import APIRouter, Query, Request
from pydantic import ValidationError

from api.rest.problem import RESPONSES
from api.rest.shared import Answer, AsDevice, AssemblyOut, SignatureOut, TheStore, WithdrawalOut
from api.shared.known_tag import State
from api.shared.scan_look_up import Scanned, look_up
from api.web.language import translator_of
from api.web.state import keys_of
from tagger.code import number as tag_number
from tagger.errors import SpecError, problems_of
from tagger.spec import Hose
from tagger.store import Role
from tagger.trade.one_hose import is_date_code

router = APIRouter(responses=RESPONSES, tags=["tags"])


class ScanOut(Answer):
    """``kind`` says what was scanned, ``say`` the same in words.

    Of a tag: ``number``, the ``spec`` to build again (without lots), and its ``record`` where it is
    registered here; ``digits`` says how those on the tag stand to the record: "same", "differ" or "damaged"
    (null without digits, or without a record), ``signature`` how they stand to the shop's keys (null without digits, or where
    the shop does not sign and the tag is not signed). Of a lot: ``hose`` as the newest assembly built from it has it, or ``end``, which
    carries it there. Of a stock number: the ``end`` that the shop's fitting makes. Of the part number of
    one of the shop's hoses: ``hose``, where it is kept in one size. ``withdrawals`` are those that hold: what they name must not be used.
    """

    kind: Literal["tag", "fitting", "hose", "hose_lot", "fitting_lot", "unknown"]
    text: str
    say: str
    number: str | None
    spec: dict[str, Any] | None
    hose: dict[str, Any] | None
    end: dict[str, Any] | None
    record: AssemblyOut | None
    digits: State | None
    signature: SignatureOut | None
    withdrawals: list[WithdrawalOut]


class LotOut(Answer):
    """``hoses``: what has been built from the lot; ``another_hose``: what is wrong with the hose asked about.

    ``date_code``: the lot is only a date, and spans sizes. ``withdrawals`` are those that hold, of a reel
    or of a fitting bin.
    """

    lot: str
    hoses: list[dict[str, Any]]
    date_code: bool
    another_hose: dict[str, Any] | None
    withdrawals: list[WithdrawalOut]


@router.get("/lots", summary="Look up a lot: which hose it is, and whether it is withdrawn")
def lot(
    request: Request,
    store: TheStore,
    token: AsDevice,
    lot: Annotated[str, Query(min_length=1, max_length=40, description="As it is on the reel or the bin.")],
    standard: Annotated[str | None, Query(max_length=40, description="The hose it is to be used as.")] = None,
    dash: Annotated[int | None, Query(ge=1, le=63)] = None,
    edition: Annotated[str | None, Query(max_length=12)] = None,
    part: Annotated[str | None, Query(max_length=40)] = None,
) -> LotOut:
    """With ``standard`` and ``dash`` it says whether the lot is known as another hose."""
    other = None
    if standard and dash is not None:
        try:
            wanted = Hose(standard=standard, dash=dash, edition=edition, part=part, lot=lot)
        except ValidationError as error:  # blanks alone, or an edition of no year
            raise SpecError(problems_of(error)) from None
        other = store.another_hose(wanted)
    return LotOut(
        lot=lot,
        hoses=[hose.model_dump(mode="json", exclude_none=True) for hose in store.hoses_of_lot(lot)],
        date_code=is_date_code(lot),
        another_hose=translator_of(request).as_json(other) if other else None,
        withdrawals=[
            item if token.role.may(Role.BUILDER) else item.without_people()
            for item in map(WithdrawalOut.of, store.withdrawn_lots(lot))
        ],
    )


@router.get("/scans", summary="Look up a scanned code without recording a scan")
def scan(
    request: Request,
    store: TheStore,
    token: AsDevice,
    text: Annotated[str, Query(max_length=2000, description="As the scanner sends it, or as typed.")],
) -> ScanOut:
    found = look_up(store, text, keys_of(request))
    spec = found.spec.as_dict() if found.spec else {}
    record = AssemblyOut.of(found.record, request) if found.record else None
    held = [WithdrawalOut.of(item) for item in found.withdrawals]
    if not token.role.may(Role.BUILDER):
        held = [item.without_people() for item in held]
        spec.pop("note", None)
        record = record and record.without_customer()
    return ScanOut(
        kind=found.kind,
        text=found.text,
        say=translator_of(request)(found.say),
        number=tag_number.format(found.number) if found.number else None,
        spec=spec if found.kind == "tag" else None,
        hose=spec["hose"] if found.kind == "hose_lot" else _own_hose(found),
        end=found.fitting.spec_end() if found.fitting else spec[found.end] if found.end else None,
        record=record,
        digits=found.digits,
        signature=SignatureOut(**found.signed.as_dict()) if found.signed else None,
        withdrawals=held,
    )


def _own_hose(found: Scanned) -> dict[str, Any] | None:
    return found.hoses[0].as_hose() if found.hoses and not found.several else None
