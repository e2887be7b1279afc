"""One IPP request over HTTP (RFC 8010, 4), to an address that somebody typed.

The server itself makes this request, so it is guarded: only ipp:// and ipps://, no link-local
address (where hosted machines keep their own secrets), no redirect is followed, and neither the
time nor the size of an answer is without bound.
"""

from __future__ import annotations

import errno
import http.client
import ipaddress
import os
import socket
import ssl
import time
from urllib.parse import SplitResult, urlsplit

from tagger.errors import Problem
from tagger.messages import Message
from tagger.printing.printer import PrinterError, Unsure, no_address

MOST_OCTETS = 1_000_000  # of an answer; a printer's description takes some 20,000
PORT = 631  # RFC 8010, 4 and RFC 7472, 4


class _TooLong(Exception):
    """An answer of more than ``MOST_OCTETS``."""


def read_uri(uri: str) -> SplitResult:
    """The parts of a printer's address. Raises PrinterError for one that is none."""
    try:
        where = urlsplit(uri)
        named = bool(where.hostname) and where.port != 0
    except ValueError:
        named = False
    if (
        not named
        or where.scheme not in ("ipp", "ipps")
        or where.username
        or not uri.isprintable()
        or len(uri) > 255
    ):
        raise no_address(uri)
    return where


def post(uri: str, body: bytes, *, timeout: float, prints: bool = False) -> bytes:
    """Sends ``body`` and returns the answer. Raises PrinterError.

    ``timeout``: seconds for connecting, for each piece sent or received, and for the whole answer.
    ``prints``: the body makes something print; a failure after its first octet has left is Unsure.
    """
    where = read_uri(uri)
    connection = http.client.HTTPConnection(where.hostname or "", where.port or PORT, timeout=timeout)
    kind: type[PrinterError] = PrinterError
    try:
        connection.sock = _connected(uri, where, timeout)
        kind = Unsure if prints else PrinterError
        path = (where.path or "/") + (f"?{where.query}" if where.query else "")
        connection.request(
            "POST", path, body, {"Content-Type": "application/ipp", "Accept-Encoding": "identity"}
        )
        answer = connection.getresponse()
        content = _read(answer, timeout)
    except ssl.SSLCertVerificationError as error:
        message = Message("printing-printer-untrusted", told=error.verify_message)
        raise kind(Problem("printer", uri, message)) from error
    except TimeoutError as error:
        message = Message("printing-printer-silent", seconds=timeout, sent=_sent(kind))
        raise kind(Problem("printer", uri, message)) from error
    except (OSError, http.client.HTTPException, ValueError, _TooLong) as error:
        raise kind(Problem("printer", uri, _broken_off(error, kind))) from error
    finally:
        connection.close()
    if answer.status != 200:
        kind = Unsure if prints and answer.status >= 500 else PrinterError
        status = f"{answer.status} {answer.reason[:80]}"
        raise kind(Problem("printer", uri, Message("printing-printer-http", status=status, sent=_sent(kind))))
    return content


def _sent(kind: type[PrinterError]) -> str:
    """Whether the printer may have the job: the key that chooses what to do about it."""
    return "perhaps" if kind is Unsure else "no"


def _broken_off(error: Exception, kind: type[PrinterError]) -> Message:
    if isinstance(error, _TooLong):
        return Message("printing-printer-too-long", octets=MOST_OCTETS, sent=_sent(kind))
    told = (error.strerror if isinstance(error, OSError) else None) or str(error) or type(error).__name__
    if kind is Unsure:
        return Message("printing-printer-lost", told=told)
    return Message("printing-printer-unreachable", told=told)


def _connected(uri: str, where: SplitResult, timeout: float) -> socket.socket:
    """A socket to the very address that was looked at, so that no second look-up can change it."""
    host, port = where.hostname or "", where.port or PORT
    found = socket.getaddrinfo(host, port, type=socket.SOCK_STREAM)
    for *_, address in found:
        _refuse_address(uri, str(address[0]))
    error = OSError(errno.EADDRNOTAVAIL, os.strerror(errno.EADDRNOTAVAIL))
    for *_, address in found:
        try:
            plain = socket.create_connection((str(address[0]), port), timeout)
        except OSError as failed:
            error = failed
            continue
        if where.scheme == "ipp":
            return plain
        try:
            return ssl.create_default_context().wrap_socket(plain, server_hostname=host)
        except BaseException:
            plain.close()
            raise
    raise error


def _refuse_address(uri: str, address: str) -> None:
    found = ipaddress.ip_address(address.partition("%")[0])
    if isinstance(found, ipaddress.IPv6Address) and found.ipv4_mapped:
        found = found.ipv4_mapped
    if found.is_link_local or found.is_multicast or found.is_unspecified:
        raise PrinterError(Problem("printer", uri, Message("printing-printer-elsewhere", address=address)))


def _read(answer: http.client.HTTPResponse, timeout: float) -> bytes:
    end, content = time.monotonic() + timeout, b""
    while piece := answer.read(65_536):
        content += piece
        if len(content) > MOST_OCTETS:
            raise _TooLong
        if time.monotonic() > end:
            raise TimeoutError
    return content
