"""What the JSON API's routes share: who asks, the store, and the shapes of the answers."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from datetime import date, datetime
from typing import Annotated, Any, Literal, TypeVar, get_args

from fastapi import Depends, Path, Request
from pydantic import BaseModel, ConfigDict, Field, ValidationInfo, field_validator
from pydantic_core import PydanticKnownError
from starlette.responses import Response

from api.rest.problem import NoToken, RoleTooLow, there
from api.web.identity import device
from api.web.language import translator_of
from api.web.state import settings_of, store_of, tables_of
from tagger import rated
from tagger.code import link
from tagger.code import number as tag_number
from tagger.errors import TaggerError
from tagger.i18n import Translator
from tagger.messages import Message
from tagger.record import RECORD_FIELDS, Record
from tagger.signing import State as SignatureState
from tagger.signing import Why
from tagger.spec import AssemblySpec
from tagger.store import (
    Assembly,
    Event,
    Kind,
    OrderRequest,
    Result,
    Role,
    Store,
    Token,
    Withdrawal,
    verdict,
)
from tagger.store.overrated import as_of_today
from tagger.trade import assess, present
from tagger.trade.results import Assessment
from tagger.trimmed import Trimmed

EXAMPLE_SPEC = {
    "hose": {"standard": "SAE 100R2", "dash": 12, "lot": "H-2291"},
    "end_a": {"connection": "sae_37_flare", "dash": 12, "form": "female_swivel"},
    "end_b": {
        "connection": "sae_37_flare",
        "dash": 12,
        "form": "female_swivel",
        "shape": "elbow_90",
        "drop_mm": 56,
    },
    "length_mm": 1250,
    "length_basis": "sealing_face",
    "note": "boom cylinder, rod side",
}


def _needs(role: Role) -> Callable[[Request], Token]:
    def needed(request: Request) -> Token:
        token = device(request)
        if token is None:
            raise NoToken
        if not token.role.may(role):
            raise RoleTooLow(role)
        return token

    return needed


AsDevice = Annotated[Token, Depends(_needs(Role.DEVICE))]
AsBuilder = Annotated[Token, Depends(_needs(Role.BUILDER))]
AsCounter = Annotated[Token, Depends(_needs(Role.COUNTER))]
AsManager = Annotated[Token, Depends(_needs(Role.MANAGER))]
TheStore = Annotated[Store, Depends(store_of)]
MOST_ID = 2**31 - 1  # what both databases hold
Id = Annotated[int, Path(ge=0, le=MOST_ID)]


class Answer(BaseModel):
    model_config = ConfigDict(frozen=True)


class RegisterOut(Answer):
    """``run`` names what was registered together."""

    run: int
    numbers: list[str]

    @classmethod
    def of(cls, made: Sequence[Assembly]) -> RegisterOut:
        return cls(run=made[0].run, numbers=[tag_number.format(item.number) for item in made])


class WithdrawalOut(Answer):
    id: int
    scope: str
    value: str
    reason: str
    at: datetime
    by: str | None
    lifted_at: datetime | None
    lifted_by: str | None
    lifted_why: str | None

    @classmethod
    def of(cls, item: Withdrawal) -> WithdrawalOut:
        return cls(**vars(item))

    def without_people(self) -> WithdrawalOut:
        """The same without who withdrew it and who lifted it."""
        return self.model_copy(update={"by": None, "lifted_by": None})


def with_texts(data: Any, t: Translator) -> Any:
    """JSON values in which each message (``id`` and ``values``) has its ``text`` beside them.

    What holds one as ``message``, such as a warning, has these three members itself.
    """
    if isinstance(data, list):
        return [with_texts(item, t) for item in data]
    if not isinstance(data, dict):
        return data
    if data.keys() == {"id", "values"}:
        return t.as_json(Message.from_json(data))
    said = {name: with_texts(value, t) for name, value in data.items()}
    return said | said.pop("message") if "message" in said else said


class VoidOut(Answer):
    """Why the record is void: its hose must not be fitted."""

    reason: str
    at: datetime
    by: str | None


class AssemblyOut(Answer, Record):  # type: ignore[misc]  # pydantic takes the fields of Record alone
    """One registered assembly. ``number`` as it is shown; ``link`` is what its QR code holds.

    ``assessment``: what the trade said when it was registered; each warning has its message as
    ``id`` and ``values``, and its ``text`` in the language of ``Accept-Language``; and so has
    ``working_pressure_message``, the pressure or as much of it as is known. Both are the lower of the pressure
    registered and that of today's tables; ``overrated`` says so where today's is lower, else it is null.
    ``proof_test``: what the last proof test proves today; outdated: a crimp was recorded after it, so test again; null: none.
    """

    model_config = ConfigDict(json_schema_serialization_defaults_required=True)

    number: str
    link: str
    spec: dict[str, Any]
    working_pressure_bar: float | None
    working_pressure_message: dict[str, Any]
    overrated: dict[str, Any] | None
    assessment: dict[str, Any]
    built_on: date | None
    replaces: str | None
    replaced_by: str | None
    replacement_built: str | None
    fitted: bool
    order_reference: str | None
    withdrawals: list[WithdrawalOut]
    void: VoidOut | None
    registered_by: str | None
    created_at: datetime
    run: int
    place: int
    proof_test: Stands | None

    def without_customer(self) -> AssemblyOut:
        """What a scanner needs of it: nothing of who has it, nor what was written for people."""
        hidden = dict.fromkeys((*RECORD_FIELDS, "order_reference", "registered_by"))
        plain = {name: value for name, value in self.spec.items() if name != "note"}
        held = [item.without_people() for item in self.withdrawals]
        return self.model_copy(update={**hidden, "spec": plain, "withdrawals": held})

    @classmethod
    def each(cls, items: Sequence[Assembly], request: Request) -> list[AssemblyOut]:
        """Several, in their order."""
        proved = store_of(request).proof_states([item.number for item in items])
        today = as_of_today(items, tables_of(request))
        return [
            cls._of(item, now, request, proved.get(item.number))
            for item, now in zip(items, today, strict=True)
        ]

    @classmethod
    def of(cls, item: Assembly, request: Request) -> AssemblyOut:
        return cls.each([item], request)[0]

    @classmethod
    def _of(cls, item: Assembly, now: Assembly, request: Request, proof_test: str | None) -> AssemblyOut:
        """``now``: the record as it may be told today."""
        settings, t = settings_of(request), translator_of(request)
        same = (
            *RECORD_FIELDS,
            "built_on",
            "fitted",
            "order_reference",
            "registered_by",
            "created_at",
            "run",
            "place",
        )
        values: dict[str, Any] = {name: getattr(item, name) for name in same} | {"proof_test": proof_test}
        for name in ("number", "replaces", "replaced_by", "replacement_built"):
            values[name] = tag_number.format(number) if (number := getattr(item, name)) else None
        values["link"] = link.build(
            settings.base_url, item.number, item.digits, gs1_prefix=settings.gs1_prefix or None
        )
        values["spec"], values["working_pressure_bar"] = (
            item.spec.as_dict(),
            now.content.working_pressure_bar,
        )
        values["working_pressure_message"] = t.as_json(rated.message(now.content))
        high = present.overrated(item.content, tables_of(request), item.spec) if now is not item else None
        values["overrated"] = t.as_json(high.message) if high else None
        values["assessment"] = with_texts(item.assessment.kept(), t)
        values["void"] = VoidOut(**vars(item.void)) if item.void else None
        values["withdrawals"] = [WithdrawalOut.of(withdrawal) for withdrawal in item.withdrawals]
        return cls(**values)


Stands = Literal["passed", "tested", "held", "failed", "outdated"]


class EventOut(Answer):
    """One line of history. A proof test has a ``result``, whenever it was recorded."""

    id: int
    number: str
    kind: str
    at: datetime
    by: str | None
    data: dict[str, Any]

    @classmethod
    def of(cls, item: Event) -> EventOut:
        said = {**vars(item), "number": tag_number.format(item.number)}
        if item.kind is Kind.PROOF_TESTED:
            result = verdict(item.data).result
            said["data"] = item.data | {"result": str(result), "passed": result is Result.PASSED}
        return cls(**said)


class TestedOut(EventOut):
    """A proof test as it was made. ``stands``: what the assembly stands at with it: passed, tested (not a proof test),
    held (do not use: a good test does not release an assembly that an earlier one loaded too high), failed.
    """

    stands: Stands

    @classmethod
    def of_test(cls, item: Event, stands: str) -> TestedOut:
        return cls.model_validate({**EventOut.of(item).model_dump(), "stands": stands})


class StepOut(Answer):
    state: str
    at: datetime
    by: str | None
    note: str | None


class OrderOut(Answer):
    reference: str
    number: str | None
    spec: dict[str, Any]
    quantity: int
    needed_by: date | None
    customer_reference: str | None
    contact: dict[str, str]
    changes: str | None
    state: str
    created_at: datetime
    steps: list[StepOut]
    built: list[str]

    @classmethod
    def of(cls, item: OrderRequest) -> OrderOut:
        return cls(
            **{
                k: v
                for k, v in vars(item).items()
                if k not in ("number", "spec", "contact", "steps", "built")
            },
            number=tag_number.format(item.number) if item.number else None,
            spec=item.spec.as_dict(),
            contact=item.contact.model_dump(),
            steps=[StepOut(**vars(step)) for step in item.steps],
            built=[tag_number.format(number) for number in item.built],
        )


class Request_(Trimmed):
    """What a caller sends; unknown fields are refused by name."""

    @field_validator("*", mode="before")
    @classmethod
    def _yes_or_no_alone(cls, value: object, info: ValidationInfo) -> object:
        """``true`` is no number and 1 is no ``true``: pydantic would take each for the other."""
        annotation = cls.model_fields[str(info.field_name)].annotation
        takes = {annotation, *get_args(annotation)}
        if isinstance(value, bool) and bool not in takes and takes & {int, float}:
            raise PydanticKnownError("int_type" if int in takes else "float_type")
        if bool in takes and not isinstance(value, bool | None):
            raise PydanticKnownError("bool_type")
        return value


SpecIn = Annotated[
    dict[str, Any],
    Field(
        description="A spec: `tagger schema` prints its JSON Schema; lengths, pressures and temperatures "
        "also take a text with a unit.",
        examples=[EXAMPLE_SPEC],
    ),
]


def spec_of(store: Store, given: dict[str, Any]) -> AssemblySpec:
    """The spec that was sent, filled in from the shop's stock numbers that it names.

    Raises SpecError naming every field that is wrong.
    """
    return store.read_spec(given)


def assess_of(request: Request, spec: dict[str, Any]) -> Assessment:
    """What the trade says, with the shop's own tables and length bands."""
    return assess(spec_of(store_of(request), spec), tables_of(request))


def assembly_at(store: Store, number: str) -> Assembly:
    """The assembly that an address names. Raises NumberError, NotThere."""
    try:
        return store.assembly(number)
    except TaggerError as error:
        raise there(error) from None


T = TypeVar("T")


def paged(
    request: Request, response: Response, found: Sequence[T], limit: int, mark: Callable[[T], object]
) -> Sequence[T]:
    """The first ``limit`` of what was found, which is one more where there is more.

    Then the header Link (RFC 8288) holds the address of the next page. ``mark``: what stands for
    the last one in ``after``.
    """
    if len(found) <= limit:
        return found
    onward = request.url.include_query_params(after=mark(found[limit - 1]))
    response.headers["Link"] = f'<{onward.path}?{onward.query}>; rel="next"'
    return found[:limit]


def pdf(body: bytes, name: str) -> Response:
    """A PDF response that proxies must not cache."""
    headers = {"Content-Disposition": f'inline; filename="{name}.pdf"', "Cache-Control": "no-store"}
    return Response(body, media_type="application/pdf", headers=headers)


def answers_with(*media: str, words: str) -> dict[int | str, dict[str, Any]]:
    """The description of an answer that is a file."""
    return {200: {"content": {name: {} for name in media}, "description": words}}


class SignatureOut(Answer):
    """How a tag stands to the shop's keys.

    ``why`` is that of a broken one: do not trust the values. ``unchecked``: no key is known here.
    """

    state: SignatureState
    key_id: int | None
    why: Why | None
