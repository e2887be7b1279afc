"""Printing by IPP to a real endpoint; what it received is read by independent decoders."""

from __future__ import annotations

import socket
import threading
from collections.abc import Callable, Iterator
from contextlib import suppress
from pathlib import Path

import pypdfium2
import pytest
from PIL import Image

from tagger.code import link, payload, reading
from tagger.errors import Problem, SymbolError
from tagger.messages import Message
from tagger.printing import printer as printers
from tagger.printing import readers, template
from tagger.printing.content import Tag as PrintedTag
from tagger.printing.ipp import client
from tagger.printing.ipp.encoding import Broken, Resolution, Tag, decode, encode
from tagger.printing.kinds import Kinds
from tagger.printing.printer import printer_at
from tests.ports import free_port
from tests.printing.ipp.endpoint import Endpoint, cut_line, serving
from tests.printing.ipp.test_pwg import read_by_cups

PDF, PWG = "application/pdf", "image/pwg-raster"
MakeTag = Callable[..., PrintedTag]


@pytest.fixture(scope="module")
def endpoint(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Endpoint]:
    """It takes both formats, 300 and 600 dots."""
    with serving(tmp_path_factory.mktemp("both") / "spool", f"{PDF},{PWG}") as printer:
        yield printer


def pages_of(file: Path) -> list[Image.Image]:
    """What the printer received, as its own decoder sees it."""
    if file.suffix == ".pdf":
        document = pypdfium2.PdfDocument(file.read_bytes())
        return [page.render(scale=300 / 72, grayscale=True).to_pil() for page in document]
    return read_by_cups(file)


def assert_it_says(page: Image.Image, tag: PrintedTag) -> None:
    """Every decoder that reads the page at all reads the very spec; two of the three must."""
    grey, read = readers.grey(page), []
    for name, reader in readers.qr_readers().items():
        for text in reader(grey):
            found = reading.content_of(link.parse(str(text)))
            assert found == payload.carried(tag.content), name
            read.append(name)
    assert len(set(read)) >= 2, f"read by {read} only"


def test_a_printer_tells_its_formats_dots_and_media(endpoint: Endpoint) -> None:
    told, status = client.printer(endpoint.uri), printer_at(endpoint.uri).status()
    assert {PDF, PWG} <= set(told.formats)
    assert set(told.raster_kinds) >= {"black_1", "sgray_8"}
    assert status.dots == (300, 600) and status.takes == ("PWG Raster", "PDF")
    assert (status.dpi(), status.dpi(600), status.dpi(1200)) == (300, 600, 600)
    assert status.model and status.state is printers.PrinterState.IDLE
    assert status.accepts_jobs and not status.words
    assert "8.5 x 11 in" in status.media
    assert told.takes_media(210, 297) and not told.takes_media(57, 32)


@pytest.mark.parametrize("formats", [PDF, PWG, f"{PDF},{PWG}"], ids=["pdf only", "raster only", "both"])
@pytest.mark.parametrize("name", ["hang_tag", "sheet_a4"])
def test_what_the_printer_received_reads_back_as_the_same_specs(
    formats: str, name: str, tmp_path: Path, make_tag: MakeTag
) -> None:
    tags, wanted = [make_tag(seed=1), make_tag(seed=2)], template.load(name)
    with serving(tmp_path / "spool", formats) as printer:
        taken = printer_at(printer.uri).send(tags, wanted, dpi=600)
        assert printers.wait(printer_at(printer.uri), taken).state is printers.JobState.COMPLETED
        (file,) = printer.received()
    as_raster = formats == PWG or (PWG in formats and not wanted.sheet)
    assert file.suffix == (".pwg" if as_raster else ".pdf")
    pages = pages_of(file)
    if wanted.sheet is None:
        for page, tag in zip(pages, tags, strict=True):
            assert_it_says(page, tag)
    else:
        assert len(pages) == 1
        seen = {str(text) for text in readers.qr_readers()["zxing-cpp"](readers.grey(pages[0]))}
        assert {tag.link for tag in tags} <= seen


def test_nothing_is_sent_of_labels_that_are_not_accepted_once_they_are_made(
    endpoint: Endpoint, make_tag: MakeTag
) -> None:
    """Asked once, with every kind of the labels, as dots and as PDF."""
    before, asked = endpoint.received(), []

    def refuse(kinds: Kinds) -> None:
        asked.append(len(kinds.met))
        raise SymbolError(Problem("number", None, Message("printing-proof-text", kind="qr")))

    for name in ("hang_tag", "sheet_a4"):
        with pytest.raises(SymbolError):
            printer_at(endpoint.uri).send([make_tag(seed=1)] * 3, template.load(name), dpi=300, accept=refuse)
    assert (endpoint.received(), asked) == (before, [1, 1])


def test_the_media_size_goes_with_the_job_where_the_printer_has_it(
    endpoint: Endpoint, make_tag: MakeTag, monkeypatch: pytest.MonkeyPatch
) -> None:
    sent: list[bytes] = []
    post = client.post
    monkeypatch.setattr(
        client, "post", lambda uri, body, **more: sent.append(body) or post(uri, body, **more)
    )
    printers.wait(
        printer_at(endpoint.uri),
        printer_at(endpoint.uri).send([make_tag()], template.load("sheet_a4"), dpi=600),
    )
    asked = decode(next(body for body in sent if body[3] == client.PRINT_JOB))[1]
    assert asked["media-col"] == [{"media-size": [{"x-dimension": [21000], "y-dimension": [29700]}]}]
    printers.wait(
        printer_at(endpoint.uri),
        printer_at(endpoint.uri).send([make_tag()], template.load("hang_tag"), dpi=600),
    )
    asked = decode([body for body in sent if body[3] == client.PRINT_JOB][-1])[1]
    assert "media-col" not in asked
    assert "copies" not in asked


def test_a_job_the_printer_gives_up_is_an_error(tmp_path: Path, make_tag: MakeTag) -> None:
    with serving(tmp_path / "spool", PDF, "-c", "/bin/false") as printer:
        taken = printer_at(printer.uri).send([make_tag()], template.load("hang_tag"), dpi=600)
        with pytest.raises(printers.PrinterError, match="then cancelled it"):
            printers.wait(printer_at(printer.uri), taken)


def test_what_a_printer_cannot_print_is_refused_before_anything_is_sent(
    tmp_path: Path, endpoint: Endpoint, make_tag: MakeTag
) -> None:
    with serving(tmp_path / "spool", "image/jpeg") as printer:
        with pytest.raises(printers.PrinterError, match="neither PDF nor PWG Raster"):
            printer_at(printer.uri).send([make_tag()], template.load("hang_tag"))
        with pytest.raises(
            printers.PrinterError, match=r"does not support this type of job.*document-format"
        ):
            client.print_job(printer.uri, b"%PDF-1.7", PDF, name="a tag")
        assert not printer.received()
    before = endpoint.received()
    with pytest.raises(printers.PrinterError, match=r"dpi: .*Use 300 or 600 dpi"):
        printer_at(endpoint.uri).send([make_tag()], template.load("hang_tag"), dpi=203)
    assert endpoint.received() == before


def test_a_wrong_path_and_a_job_that_is_not_there_are_refused_in_words(endpoint: Endpoint) -> None:
    with pytest.raises(printers.PrinterError, match="printer: "):
        client.printer(endpoint.uri.replace("/ipp/print", "/nowhere"))
    with pytest.raises(printers.NotKnown, match="was not found at this address"):
        client.job(endpoint.uri, 4711)


@pytest.mark.parametrize(
    "uri",
    ["http://localhost/ipp", "labels", "ipp://", "ipp://host:port/ipp", "ipp://a:b@host/ipp", "file:///etc/passwd",
     "ipp://host/\r\nX: y"],
)  # fmt: skip
def test_an_address_that_is_no_printers_is_refused_in_words(uri: str) -> None:
    with pytest.raises(printers.PrinterError, match="is not the address of a printer"):
        printer_at(uri).status()
    with pytest.raises(printers.PrinterError, match="is not the address of a printer"):
        client.printer(uri)


@pytest.mark.parametrize(
    "host", ["169.254.169.254", "[fe80::1]", "[::ffff:169.254.1.1]", "0.0.0.0", "224.0.0.1"]
)
def test_an_address_outside_a_shops_network_is_never_asked(host: str) -> None:
    with pytest.raises(printers.PrinterError, match="not a local network address"):
        client.printer(f"ipp://{host}/ipp/print", timeout=0.2)


def test_a_printer_that_is_off_is_told_with_its_mend() -> None:
    with pytest.raises(
        printers.PrinterError, match=r"cannot be reached \(Connection refused\).*printer is on"
    ) as refused:
        client.print_job(f"ipp://127.0.0.1:{free_port()}/ipp/print", b"", PDF, name="a tag")
    assert not isinstance(refused.value, printers.Unsure), "nothing has left this machine"


def test_a_printer_by_tls_is_asked_only_when_its_certificate_is_trusted(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    keys = tmp_path / "keys"
    keys.mkdir()
    with serving(tmp_path / "spool", PDF, "-K", str(keys)) as printer:
        uri = printer.uri.replace("ipp://", "ipps://")
        with pytest.raises(printers.PrinterError, match="certificate is not trusted"):
            client.printer(uri)
        monkeypatch.setenv("SSL_CERT_FILE", str(keys / "localhost.crt"))
        assert client.printer(uri).model


def test_a_printer_that_never_answers_is_not_waited_for_long() -> None:
    with socket.create_server(("127.0.0.1", 0)) as silent:
        uri = f"ipp://127.0.0.1:{silent.getsockname()[1]}/ipp/print"
        with pytest.raises(printers.PrinterError, match=r"did not answer within 0\.2 s"):
            client.printer(uri, timeout=0.2)
        with pytest.raises(printers.Unsure):  # the same silence after a job went out says nothing
            client.print_job(uri, b"%PDF-1.7", PDF, name="a tag", timeout=0.2)


@pytest.mark.parametrize(
    ("answer", "told"),
    [
        (
            b"HTTP/1.1 302 Found\r\nLocation: http://127.0.0.1:%d/secret\r\nContent-Length: 0\r\n\r\n",
            "HTTP 302",
        ),
        (b"HTTP/1.1 200 OK\r\n\r\n" + bytes(1_100_000), "longer than 1000000 bytes"),
        (b"HTTP/1.1 200 OK\r\n\r\nno printer", "did not return a valid IPP response"),
    ],
    ids=["redirect", "endless", "nonsense"],
)
def test_an_answer_that_is_no_printers_is_refused(answer: bytes, told: str) -> None:
    asked: list[bytes] = []
    with socket.create_server(("127.0.0.1", 0)) as odd:

        def reply() -> None:
            for _ in range(2):
                try:
                    caller, _ = odd.accept()
                except OSError:
                    return
                with caller:
                    asked.append(caller.recv(65_536))
                    with suppress(OSError):
                        caller.sendall(answer.replace(b"%d", str(odd.getsockname()[1]).encode()))
                        caller.shutdown(socket.SHUT_WR)
                        while caller.recv(65_536):
                            pass

        threading.Thread(target=reply, daemon=True).start()
        with pytest.raises(printers.PrinterError, match=told):
            client.printer(f"ipp://127.0.0.1:{odd.getsockname()[1]}/ipp/print", timeout=60)
    assert len(asked) == 1, "a redirect is never followed"


def test_a_line_that_breaks_in_the_middle_of_a_job_leaves_it_unsure(
    endpoint: Endpoint, make_tag: MakeTag
) -> None:
    with (
        cut_line(endpoint, after=3000) as uri,
        pytest.raises(printers.Unsure, match=r"was lost.*Check whether the tags were printed"),
    ):
        printer_at(uri).send([make_tag()], template.load("hang_tag"), dpi=600)


def test_octets_are_read_as_they_were_written_and_no_others() -> None:
    size = [("x-dimension", Tag.INTEGER, 5700)]
    body = encode(2, [(Tag.JOB, [("media-col", Tag.COLLECTION, [("media-size", Tag.COLLECTION, size)])])])
    assert decode(body) == (2, {"media-col": [{"media-size": [{"x-dimension": [5700]}]}]})
    for end in range(len(body)):
        with pytest.raises(Broken):
            decode(body[:end])
    centimetres = b"\x02\0\0\0\0\0\0\1\4" + b"\x32\0\1r\0\x09\0\0\0\x50\0\0\0\x50\4" + b"\3"
    assert decode(centimetres)[1] == {"r": [Resolution(203, 203)]}  # 80 dots a centimetre
