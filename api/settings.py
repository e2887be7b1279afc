"""All settings, in one place: those that tagger/settings.py shares with the command line, and the web's own.

Each is read from the environment as TAGGER_<NAME>.
"""

from __future__ import annotations

from ipaddress import ip_address
from typing import Annotated, Literal
from urllib.parse import urlsplit

from pydantic import AfterValidator, BeforeValidator, ConfigDict, Field

from tagger.errors import Problem
from tagger.messages import Message
from tagger.settings import PREFIX, ClockingSense, SettingsError, ShopSettings

__all__ = ["PREFIX", "ClockingSense", "Settings", "SettingsError"]


def _words(value: object) -> object:
    return [part.strip() for part in value.split(",") if part.strip()] if isinstance(value, str) else value


def _is_this_machine(host: str) -> bool:
    if host == "localhost":
        return True
    try:
        return ip_address(host).is_loopback
    except ValueError:
        return False


def _here(listen: str) -> str:
    """A host of this machine and a port, or nothing."""
    host, _, port = listen.rpartition(":")
    if listen and not (_is_this_machine(host.strip("[]")) and port.isdecimal() and 0 < int(port) < 65536):
        raise SettingsError(Problem("TAGGER_METRICS_LISTEN", listen, Message("guard-metrics-listen")))
    return listen


class Settings(ShopSettings):
    """The settings of one running shop; see README.md beside this file for each. An unknown one is refused."""

    model_config = ConfigDict(extra="forbid")

    trusted_proxies: Annotated[tuple[str, ...], BeforeValidator(_words)] = ()

    length_unit: Literal["mm", "in"] = "mm"

    # telling others about order requests
    webhook_url: str = ""
    webhook_secret: str = ""
    smtp_url: str = ""
    mail_from: str = ""
    mail_to: str = ""

    answer_days: Annotated[int, Field(ge=0, le=30)] = 0  # working days to an answer; 0: the pages do not say

    # who sees the other hoses of a tag's machine: nobody, who has the tag's PIN, or who has its number
    machine_hoses: Literal["off", "pin", "open"] = "off"

    # guards
    session_hours: Annotated[int, Field(ge=1, le=720)] = 12
    session_idle_minutes: Annotated[int, Field(ge=1, le=1440)] = 60
    public_requests_per_minute: Annotated[int, Field(ge=1)] = 120
    signed_in_requests_per_minute: Annotated[int, Field(ge=60)] = 6000
    requests_at_once: Annotated[int, Field(ge=1, le=10_000)] = 100  # of each room
    page_cache_seconds: Annotated[int, Field(ge=0, le=3600)] = 60
    demo: bool = False

    # for whoever watches the server
    metrics_listen: Annotated[str, AfterValidator(_here)] = ""
    log: Literal["warnings", "text", "json"] = "warnings"

    @property
    def secure(self) -> bool:
        """Whether the shop is reached by https, so that cookies need never travel in clear."""
        return self.base_url.startswith("https:")

    @property
    def only_here(self) -> bool:
        """Whether only this machine is served: by the address listened on and by that of the tags."""
        return _is_this_machine(self.host) and _is_this_machine(urlsplit(self.base_url).hostname or "")
