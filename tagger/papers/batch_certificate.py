"""One certificate for several assemblies that were proof-tested together: the shop's own statement."""

from __future__ import annotations

from typing import Any

from reportlab.lib import colors
from reportlab.platypus import TableStyle

from tagger.code import number as tag_number
from tagger.errors import Problem, StoreError
from tagger.i18n import Translator
from tagger.messages import Message, pressure
from tagger.papers import document
from tagger.papers.certificate import chain_line, corrections, flushing, of_the_act, of_the_assembly, table
from tagger.settings import ShopSettings
from tagger.store import Assembly, Batch, Kind, Result, Store
from tagger.store.overrated import as_of_today
from tagger.trade.tables import Tables

_MEMBERS = (32, 46, 26, 26, 40)


def of_batch(
    store: Store, number: str, settings: ShopSettings, tables: Tables, language: str | None = None
) -> bytes:
    """The certificate of the batch in which a tag was last tested, in ``language`` (default: the shop's).

    Raises StoreError where there is no record, or that test was the assembly's alone.
    """
    batch = store.proof_batch(store.assembly(number).number)
    if batch is None:
        shown = tag_number.format(tag_number.compact(number))
        raise StoreError(Problem("number", number, Message("papers-no-batch", number=shown)))
    t = Translator(language or settings.language)
    title = t("papers-batch-file-title", batch=batch.reference)
    story = _Paper(store, batch, tables, t).story(settings)
    return document.to_pdf(story, title=title, settings=settings, numbered=True)


class _Paper:
    """The certificate of one batch, part by part."""

    def __init__(self, store: Store, batch: Batch, tables: Tables, t: Translator) -> None:
        self.batch, self.t, self.chain = batch, t, chain_line(store, t)
        numbers = batch.numbers
        self.known = {one.number: one for one in as_of_today(store.assemblies(numbers), tables)}
        self.tests = {test.number: test for test in batch.tests}
        self.proved = store.proved_of(numbers)
        self.crimps, self.flushed = store.crimped(numbers), store.flushed(numbers)
        self.corrected = [
            event for event in store.each(numbers, Kind.CORRECTED) if event.id > self.tests[event.number].id
        ]

    def story(self, settings: ShopSettings) -> list[Any]:
        t, text = self.t, document.text
        count, passed = len(self.tests), sum(self._passed(number) for number in self.tests)
        found = [
            *document.head(settings),
            text(t("papers-batch-title" if passed == count else "papers-batch-tested-title"), 18, bold=True),
            text(t("papers-batch-number", batch=self.batch.reference), 12, bold=True),
            text(t("papers-batch-result", passed=passed, count=count), 14, bold=True),
        ]
        if passed < count:
            found.append(text(t("papers-batch-not-all"), 10, bold=True))
        for members in self._alike():
            found += self._group(members)
        for event in self.corrected:
            number, day = tag_number.format(event.number), event.at.date()
            anew = Message("papers-issued-anew", day=day, fields=corrections(event))
            found += [document.gap(3), text(f"{number}: {t(anew)}", 9, bold=True)]
        own = t("papers-own-statement", shop=settings.shop_name)
        return [*found, document.gap(5), text(t("papers-batch-limits"), 9), text(own, 9), self.chain]

    def _alike(self) -> list[list[Assembly]]:
        """The members by what they have in common: spec with its lots, ratings, place, and what was asked."""
        groups: dict[str, list[Assembly]] = {}
        for number, test in self.tests.items():
            known = self.known[number]
            alike = (known.spec, known.content, known.order_reference, known.customer, known.machine,
                     known.built_on, known.cleanliness, flushing(self.flushed.get(number)), test.data.get("called_for_bar"), self.proved[number][1].why)  # fmt: skip
            groups.setdefault(str(alike), []).append(known)
        return list(groups.values())

    def _group(self, members: list[Assembly]) -> list[Any]:
        t = self.t
        heading = ("tag-number", "position", "end-a", "end-b", "result")
        captions = [
            t("words-record-position") if name == "position" else t(f"papers-{name}") for name in heading
        ]
        rows = document.table([captions, *(self._member(one) for one in members)], _MEMBERS, heading=True)
        rows.setStyle(TableStyle([("GRID", (0, 0), (-1, -1), 0.4, colors.grey)]))
        one = members[0]
        return [
            document.gap(5),
            table([row for row in of_the_assembly(one, self.flushed.get(one.number)) if row[0].id != "papers-machine-position"]
                  + [(Message("words-record-machine"), one.machine)], t),
            document.gap(3),
            document.text(t("papers-test"), 12, bold=True),
            table([*of_the_act(self.tests[one.number]), (Message("papers-result-why"), self.proved[one.number][1].why)], t),
            document.gap(3),
            document.text(t("papers-batch-members", count=len(members)), 12, bold=True),
            rows,
        ]  # fmt: skip

    def _member(self, known: Assembly) -> list[str]:
        return [
            tag_number.format(known.number),
            known.position or "",
            self._crimp(known.number, "a"),
            self._crimp(known.number, "b"),
            self.t(self._result(known)),
        ]

    def _crimp(self, number: str, end: str) -> str:
        for crimp in self.crimps.get(number, ()):
            if crimp["end"] == end:
                holds = "in" if crimp["holds"] else "out"
                band = {name: float(crimp[f"{name}_mm"]) for name in ("measured", "low", "high")}
                return self.t("papers-batch-crimp", holds=holds, **band)
        return self.t("papers-not-recorded")

    def _passed(self, number: str) -> bool:
        """Whether the test of this batch is the last one, passed, and nothing has ended the assembly since."""
        event, verdict = self.proved[number]
        known = self.known[number]
        ended = known.withdrawn or known.void is not None or self._crimp_out(number)
        return event.id == self.tests[number].id and verdict.result is Result.PASSED and not ended

    def _crimp_out(self, number: str) -> bool:
        return not all(crimp["holds"] for crimp in self.crimps.get(number, ()))

    def _result(self, known: Assembly) -> Message:
        event, verdict = self.proved[known.number]
        if known.withdrawn:
            return Message("papers-batch-withdrawn")
        if known.void is not None:
            return Message("papers-batch-void")
        if self._crimp_out(known.number):
            return Message("papers-proof-crimp-line", number=tag_number.format(known.number))
        if event.id != self.tests[known.number].id:
            return Message("papers-batch-tested-again", day=event.at.date())
        given = pressure(event.data["pressure_bar"])
        return Message("papers-result-said", result=str(verdict.result), pressure=given)
