"""A value is withdrawn in the shop's page, and the hoses that stood on it are listed."""

from __future__ import annotations

from tagger.code import number
from tagger.store import Store
from tests.bench.served import Bench
from tests.bench.test_build import UNRATED


def test_hoses_rated_by_a_withdrawn_value_are_listed_on_the_page(bench: Bench, store: Store) -> None:
    told = {"end_a.rating.value_bar": "210", "end_a.rating.source": "catalogue, page 7", "keep": "1"}
    bench.submit("/bench/build", UNRATED | told)
    bench.submit("/bench/build", {**UNRATED, "key": "another", "customer": "Quarry North"})
    made = store.find(limit=1).assemblies[0]
    assert made.content.working_pressure_bar == 210
    assert number.format(made.number) not in bench.get("/bench/overrated").text
    [kept] = store.shop_rows()
    bench.submit(f"/bench/shop/values/{kept.id}/withdraw", {"reason": "read from the wrong column"})
    assert store.shop_rows() == []
    assert "read from the wrong column" in bench.get("/bench/shop").text
    page = bench.get("/bench/overrated").text
    assert number.format(made.number) in page and "Quarry North" in page and "210 bar" in page
