"""Withdrawn, void, held, forged, not for its fluid: said first, the guide left out or behind a deliberate act."""

from __future__ import annotations

from datetime import date

from fastapi.testclient import TestClient

from tagger.code import payload
from tagger.spec import AssemblySpec, TagContent
from tagger.store import Assembly, ProofAllowance, ProofTest, Store
from tagger.trade import assess
from tests.scan.conftest import OTHER_SHOP, PARTLY_RATED, SPEC, path, register, text


def test_withdrawn_comes_first_and_there_is_no_guide(
    client: TestClient, store: Store, assembly: Assembly
) -> None:
    store.withdraw("The fitting lot cracked in the crimp", fitting_lot=None, tag=assembly.number)
    html = client.get(path(assembly)).text
    main = html[html.index('<main id="main">') :]
    shown = text(main)
    assert shown.startswith("Withdrawn: do not use The fitting lot cracked in the crimp")
    assert 'class="step' not in main
    assert "Do not install it" in shown


def test_a_withdrawn_hose_lot_withdraws_the_tag_and_lifting_it_ends_that(
    client: TestClient, store: Store, assembly: Assembly
) -> None:
    withdrawal = store.withdraw("Burst below four times", hose_lot="h-2291")
    assert "Withdrawn: do not use" in text(client.get(path(assembly)).text)
    store.lift(withdrawal.id, "retested")
    assert "Withdrawn: do not use" not in text(client.get(path(assembly)).text)


def test_what_a_proof_test_loaded_too_high_says_do_not_install_and_has_no_fitting_guide(
    client: TestClient, store: Store
) -> None:
    made, other = register(store), register(store)
    called = made.assessment.test_pressure_bar
    assert called is not None
    test = ProofTest(
        pressure_bar=called * 1.5,
        hold_s=60,
        medium="water",
        passed=True,
        tester="Bela",
        rating_bar=called / 2,
        rating_source="invented for a test",
    )
    store.record_proof_test(made.number, test)
    page = client.get(path(made)).text
    assert "Held by the shop: do not install" in text(page) and 'id="step-1"' not in page
    assert client.get(path(made), headers={"accept": "application/json"}).json()["held"] is True
    assert "Held by the shop" not in text(client.get(path(other)).text)
    assert 'id="step-1"' in client.get(path(other)).text
    letter = ProofAllowance(
        allowed_by="both manufacturers", allowed_on=date(2026, 1, 5), document="letter 12"
    )
    store.allow_proof_test(made.number, letter)
    assert "Held by the shop" not in text(client.get(path(made)).text)


def test_a_void_record_says_do_not_fit_and_has_no_fitting_guide(client: TestClient, store: Store) -> None:
    made = register(store)
    other = register(store)
    store.void(made.number, "customer Smith, wrong reel")
    page = text(client.get(path(made)).text)
    assert "VOID: do not fit" in page and "there is no fitting guide" in page
    assert "Smith" not in page and 'id="step-1"' not in client.get(path(made)).text
    assert client.get(path(made), headers={"accept": "application/json"}).json()["void"] is True
    assert "VOID" not in text(client.get(path(other)).text)


GATE = '<details class="gate">'


def forged(bar: float = 420.0) -> str:
    """The digits of a true tag, but for its pressure."""
    spec = AssemblySpec.read(SPEC)
    return payload.encode(assess(spec).content_of(spec).model_copy(update={"working_pressure_bar": bar}))


def test_a_hose_that_must_not_be_installed_yet_has_its_guide_behind_a_deliberate_act_that_says_why(
    client: TestClient, store: Store, assembly: Assembly
) -> None:
    """Digits that differ or cannot be read, a fluid the hose is not for, a pressure wholly unknown or too high."""
    other = register(store, length_mm=900.0)
    water = SPEC | {"fluid": "phosphate_ester", "max_temperature_c": None}
    [wrong] = store.register(AssemblySpec.read(water), assess(AssemblySpec.read(water)), reason="test stand")
    unknown = payload.encode(TagContent(spec=AssemblySpec.read(SPEC)))
    for address, why in (
        (f"/T/{assembly.number}/{other.digits}", "The tag says something else than the shop's record"),
        (path(assembly)[:-1], "the tag cannot be compared with the shop's record"),
        (path(wrong), "only with the hose manufacturer's approval"),
        (f"/T/{OTHER_SHOP}/{unknown}", "The working pressure of this assembly is not known"),
        (f"/T/{OTHER_SHOP}/{forged()}", "The tag claims more pressure than the tables allow"),
    ):
        page = client.get(address).text
        before, behind = page[page.index('id="fit"') :].split(GATE)
        assert "Do not install this hose assembly yet" in before and why in text(before), address
        assert "#step-1" not in before and 'id="step-1"' in behind, address


def test_where_there_is_no_guide_or_it_is_shut_the_tightening_values_are_shut_too(
    client: TestClient, store: Store, assembly: Assembly
) -> None:
    """Withdrawn, void, held, digits that differ, cannot be read or claim too much, not for its fluid: a value read in
    passing is used."""
    withdrawn, void, other = register(store), register(store), register(store, length_mm=900.0)
    failed = register(store)
    store.withdraw("The fitting lot cracked in the crimp", tag=withdrawn.number)
    store.void(void.number, "wrong reel")
    store.record_proof_test(failed.number, FAILED)
    water = SPEC | {"fluid": "phosphate_ester", "max_temperature_c": None}
    [wrong] = store.register(AssemblySpec.read(water), assess(AssemblySpec.read(water)), reason="test stand")
    differ = f"/T/{assembly.number}/{other.digits}"
    claims = f"/T/{OTHER_SHOP}/{forged()}"
    for address in (
        path(withdrawn),
        path(void),
        path(failed),
        path(wrong),
        differ,
        path(assembly)[:-1],
        claims,
    ):
        for shown, behind in _tightening(client.get(address).text):
            assert "N·m" not in shown and "flat" not in shown, address
            assert "Show the tightening values all the same" in behind and "N·m" in behind, address
    for shown, behind in _tightening(client.get(path(assembly)).text):
        assert "N·m" in shown and not behind


FAILED = ProofTest(pressure_bar=300, hold_s=60, medium="water", passed=False, tester="Bela")


def _tightening(page: str) -> list[tuple[str, str]]:
    """Of each end what stands open after the heading of its tightening, and what is folded away by a gate."""
    spec = page[page.index('id="spec"') : page.index('class="facts"')]
    ends = [end.partition("<strong>Tightening</strong>")[2] for end in spec.split('class="end"')[1:]]
    assert len(ends) == 2 and all(ends)
    found = []
    for end in ends:
        shown, gate, rest = end.partition(GATE)
        behind, closed, after = rest.partition("</details>")
        assert bool(gate) == bool(closed)
        found.append((text(shown + after.partition("<details")[0]), text(behind)))
    return found


def test_a_record_whose_rating_was_lowered_since_keeps_its_guide_and_a_tag_within_the_tables_too(
    client: TestClient, store: Store
) -> None:
    """The shop's own record tells the lower pressure; digits that claim no more than the tables are no forgery."""
    spec = AssemblySpec.read(SPEC)
    now = assess(spec)
    rated = now.working_pressure.model_copy(update={"value_bar": 420.0})
    [older] = store.register(spec, now.model_copy(update={"working_pressure": rated}))
    allowed = now.working_pressure.value_bar
    assert allowed is not None
    for address in (
        path(older),
        f"/T/{OTHER_SHOP}/{forged(allowed)}",
        f"/T/{OTHER_SHOP}/{forged(allowed - 60)}",
    ):
        page = client.get(address).text
        assert GATE not in page and 'href="#step-1"' in page, address


def test_a_pressure_known_in_part_is_no_reason_to_hide_the_guide(client: TestClient, store: Store) -> None:
    made = register(store, **PARTLY_RATED)
    for address in (path(made), f"/T/{OTHER_SHOP}/{made.digits}", path(register(store))):
        page = client.get(address).text
        assert GATE not in page and 'href="#step-1"' in page
