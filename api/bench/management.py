"""The settings page: people, devices, saved specs (printers: printers.py)."""

from __future__ import annotations

from typing import Any

from fastapi import APIRouter, Request
from starlette.responses import Response

from api.bench.page import go, render
from api.shared.label_files import template_titles
from api.web.identity import Manager, OwnForm, hash_password
from api.web.language import language_of
from api.web.security_log import tell
from api.web.state import settings_of, store_of
from tagger.errors import Problem, StoreError, TaggerError
from tagger.messages import Message
from tagger.store import Keep, Role

router = APIRouter()


@router.get("/shop")
def shop_page(request: Request, me: Manager) -> Response:
    return shop_with(request)


def shop_with(
    request: Request,
    problems: tuple[Problem, ...] = (),
    *,
    secret: str = "",
    device: str = "",
    printer_given: dict[str, str] | None = None,
) -> Response:
    """The page, with what was wrong, and what was typed for a printer that was refused."""
    store = store_of(request)
    return render(
        request,
        "shop.html",
        title=Message("bench-nav-shop"),
        here="shop",
        status=422 if problems else 200,
        problems=problems,
        people=store.people(),
        tokens=store.tokens(),
        recipes=store.recipes(),
        values=store.shop_rows(ended=True),
        roles=[role for role in Role if role is not Role.DEVICE],
        secret=secret,
        device=device,
        printers=store.printers(),
        printer_given=printer_given or {},
        templates=template_titles(settings_of(request), language_of(request)),
        undelivered=store.undelivered(),
        unnamed_proxy=request.app.state.unnamed_proxy.address,
        keep=Keep.of(settings_of(request)),
        old=store.old(Keep.of(settings_of(request))),
    )


@router.post("/shop/people")
def add_person(request: Request, me: Manager, form: OwnForm) -> Response:
    try:
        name, role = str(form.get("name") or ""), _role(form)
        hashed = hash_password(str(form.get("password") or ""), name, settings_of(request).shop_name)
        made = store_of(request).add_person(name, hashed, role)
        tell(request, "person-added", person=made.name, by=me.person.name, role=str(made.role))
    except TaggerError as error:
        return shop_with(request, error.problems)
    return go("/bench/shop?note=saved")


@router.post("/shop/people/{person}")
def change_person(request: Request, me: Manager, form: OwnForm, person: int) -> Response:
    """Change a person's role or password, or disable sign-in; end that person's sessions."""
    store, by = store_of(request), me.person.name
    try:
        whom, did = store.person_by_id(person), str(form.get("do"))
        match did:
            case "role":
                store.change_person(person, role=_role(form), by=by)
                did = f"role {_role(form)}"
            case "password":
                own = whom.name, settings_of(request).shop_name
                hashed = hash_password(str(form.get("password") or ""), *own)
                store.change_person(person, password_hash=hashed, by=by)
            case "codes":
                store.ask_no_codes(person, by=by)
            case "out":
                store.change_person(person, active=False)
            case "in":
                store.change_person(person, active=True)
            case "everywhere":
                store.sign_out_everywhere(person)
            case other:
                raise StoreError(Problem("do", other, Message("bench-not-an-action", value=other)))
    except TaggerError as error:
        return shop_with(request, error.problems)
    tell(request, "person-changed", person=whom.name, by=by, change=did)
    return go("/bench/shop?note=saved")


def _role(form: Any) -> Role:
    try:
        return Role(str(form.get("role")))
    except ValueError:
        given, roles = str(form.get("role")), tuple(Message(f"bench-role-{role}") for role in Role)
        what = Message("bench-not-a-role", value=given, roles=roles)
        raise StoreError(Problem("role", given, what)) from None


@router.post("/shop/tokens")
def add_token(request: Request, me: Manager, form: OwnForm) -> Response:
    """A token for a device; shown this once."""
    try:
        token, secret = store_of(request).make_token(
            str(form.get("name") or ""), _role(form), by=me.person.name
        )
    except TaggerError as error:
        return shop_with(request, error.problems)
    tell(request, "token-made", by=me.person.name, device=token.name, role=str(token.role))
    return shop_with(request, secret=secret, device=token.name)


@router.post("/shop/tokens/{token}/revoke")
def revoke_token(request: Request, me: Manager, form: OwnForm, token: int) -> Response:
    try:
        ended = store_of(request).revoke_token(token)
    except TaggerError as error:
        return shop_with(request, error.problems)
    tell(request, "token-revoked", by=me.person.name, device=ended.name)
    return go("/bench/shop?note=saved")


@router.post("/shop/values/{value}/withdraw")
def withdraw_value(request: Request, me: Manager, form: OwnForm, value: int) -> Response:
    """A value of the shop's is not to be used any more; it stays in the list with the reason."""
    try:
        store_of(request).withdraw_shop_row(value, str(form.get("reason") or ""), by=me.person.name)
    except TaggerError as error:
        return shop_with(request, error.problems)
    return go("/bench/shop?note=saved")


@router.post("/shop/erase-old")
def erase_old(request: Request, me: Manager, form: OwnForm) -> Response:
    """Erases what was kept as long as the settings say."""
    store_of(request).erase_old(Keep.of(settings_of(request)))
    return go("/bench/shop?note=saved")


@router.post("/shop/recipes/drop")
def drop_recipe(request: Request, me: Manager, form: OwnForm) -> Response:
    store_of(request).drop_recipe(str(form.get("name") or ""))
    return go("/bench/shop?note=saved")
