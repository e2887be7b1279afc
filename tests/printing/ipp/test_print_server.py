"""A printer that speaks no IPP, behind a print server: a queue of CUPS takes tags like any network printer."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

from tagger.printing import printer as printers
from tagger.printing import template
from tagger.printing.content import Tag
from tagger.printing.printer import printer_at
from tests.printing.ipp.endpoint import print_server, until
from tests.printing.ipp.test_client import assert_it_says, pages_of


def test_tags_sent_to_a_queue_of_a_print_server_come_out_of_its_device(
    tmp_path: Path, make_tag: Callable[..., Tag]
) -> None:
    tags = [make_tag(seed=1), make_tag(seed=2)]
    with print_server(tmp_path / "cups") as server:
        printer = printer_at(server.uri)
        status = printer.status()
        assert status.accepts_jobs and status.unfit is None and "PDF" in status.takes
        taken = printer.send(tags, template.load("hang_tag"), dpi=300, name="Tags, job 1.1 7K3MQ9XW2R1")
        assert printers.wait(printer, taken).state is printers.JobState.COMPLETED
        assert ("Tags, job 1.1 7K3MQ9XW2R1", taken.id) in [(one.name, one.id) for one in printer.jobs()]
        until(server.received)
        (file,) = server.received()
        for page, tag in zip(pages_of(file), tags, strict=True):
            assert_it_says(page, tag)
