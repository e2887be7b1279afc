"""The "do not use" tag: for hoses that must not be used, and for no other, wherever it is asked for; no fitter's card for them."""

from __future__ import annotations

import pypdfium2

from tagger.store import Store
from tests.bench.served import HOSE, Bench

LABEL = {"template": "do_not_use", "as": "pdf"}


def _text(pdf: bytes) -> str:
    page = pypdfium2.PdfDocument(pdf)[0]
    return " ".join(page.get_textpage().get_text_range().split())


def test_it_is_offered_and_printed_for_a_stopped_hose_alone_and_counts_as_no_tag(
    bench: Bench, store: Store
) -> None:
    bench.submit("/bench/build", {**HOSE, "count": "4"})
    sound, withdrawn, void, failed = [item.number for item in store.find().assemblies]
    for number in (sound, withdrawn, void, failed):
        assert "template=do_not_use" not in bench.get(f"/bench/tag/{number}").text
        refused = bench.submit("/bench/print", {**LABEL, "number": number})
        assert refused.status_code == 422 and "neither withdrawn nor void" in refused.text
    page = bench.get(f"/bench/run/{store.assembly(sound).run}?number={sound}").text
    assert 'value="do_not_use"' not in page, "not a label to choose for it"

    bench.submit("/bench/withdrawn", {"scope": "tag", "value": withdrawn, "reason": "cover blisters"})
    bench.submit(f"/bench/tag/{void}/void", {"void_reason": "wrong reel"})
    test = {"pressure_bar": "200 bar", "hold_s": "60", "medium": "water", "result": "failed"}
    bench.submit(f"/bench/tag/{failed}/proof", test)
    reasons = {withdrawn: "cover blisters", void: "wrong reel", failed: "failed"}
    assert f"/bench/tag/{sound}/card.pdf" in bench.get(f"/bench/tag/{sound}").text
    assert sound in _text(bench.get(f"/bench/tag/{sound}/card.pdf").content).replace("-", "")
    for number, reason in reasons.items():
        assert bench.get(f"/bench/tag/{number}/card.pdf").status_code == 422, (
            "nobody is told how to install it"
        )
        record = bench.get(f"/bench/tag/{number}").text
        run = store.assembly(number).run
        address = f"/bench/run/{run}?number={number}&template=do_not_use"
        assert address in record
        choice = bench.get(address).text
        assert (
            'value="do_not_use" selected' in choice and "disabled" not in choice.split('id="print-acts"')[1]
        )
        made = bench.submit("/bench/print", {**LABEL, "number": number})
        text = _text(made.content)
        assert made.status_code == 200 and "DO NOT USE" in text and reason in text
        assert bench.name in text and store.history(number)[-1].data["template"] == "do_not_use"
        refused = bench.submit("/bench/print", {**LABEL, "number": number, "template": "hang_tag"})
        assert refused.status_code == 422, "its own tag stays refused"
    both = bench.post("/bench/print", data={"csrf": bench.csrf, **LABEL, "number": [withdrawn, sound]})
    assert both.status_code == 422, "one sound hose among them prints none"
    bench.submit("/bench/withdrawn/1/lift", {"reason": "mistaken"})
    assert bench.submit("/bench/print", {**LABEL, "number": withdrawn}).status_code == 422
    page = bench.get(f"/bench/run/{store.assembly(withdrawn).run}?number={withdrawn}").text
    assert "Print (PDF)" in page and "Reprint" not in page, "it counted as no tag"
