"""Identifying by looking, and a hose by its layers, on the bench."""

from __future__ import annotations

import re
from html import unescape
from urllib.parse import parse_qs, urlsplit

from tests.bench.served import Bench


def test_pictures_lead_to_the_measurement_and_from_it_back_with_the_end_and_every_reading(
    bench: Bench,
) -> None:
    address = "/bench/identify/look?end=end_b&side=female&swivels=yes&seals=cone&cone=inside&seat=37&thread_id=25 mm"
    page = bench.get(address).text
    assert "37° flare (JIC), female swivel" in page
    link = unescape(re.search(r'href="(/bench/identify\?[^"]*)"', page)[1])  # type: ignore[index]
    asked = parse_qs(urlsplit(link).query)
    assert asked == {
        "end": ["end_b"],
        "thread_id": ["25 mm"],
        "form": ["female_swivel"],
        "cone": ["inside"],
        "seat": ["37"],
    }
    measured = bench.get(link).text
    assert "-12 37° flare (JIC)" in measured and "end_b.connection=sae_37_flare" in unescape(measured)
    open_ = bench.get("/bench/identify?side=male&shape=taper&thread_od=21&tpi=14").text
    assert "Thread shape: taper" in open_ and 'name="shape" value="taper"' in open_
    back = unescape(re.search(r'href="(/bench/identify/look[^"]*)"', open_)[1])  # type: ignore[index]
    assert parse_qs(urlsplit(back).query)["thread_od"] == ["21"]
    assert bench.get("/bench/identify/look?side=both").status_code == 422
    assert 'target="_blank"' in bench.get("/bench/build").text, "what was typed on the build page stays"


def test_a_hose_by_its_layers_names_what_it_cannot_be_and_refuses_what_is_none(bench: Bench) -> None:
    page = bench.get("/bench/identify/layers?od=22&kind=wire_braid&layers=2&lay_line=EN 856 4SP -8").text
    assert "It never rates a hose" in page and "EN 853 2SN" in page.split("Excluded")[0]
    assert "The lay line names EN 856 4SP, but the measurements exclude it." in page
    refused = bench.get("/bench/identify/layers?od=300")
    assert refused.status_code == 422 and "is not a diameter of a hydraulic hose" in refused.text
