"""A tag as a value: everything that may stand on it."""

from __future__ import annotations

from dataclasses import dataclass, field

from tagger.code import number as numbers
from tagger.messages import Message
from tagger.record import Stop
from tagger.spec import AssemblySpec, TagContent
from tagger.trade.results import Assessment


@dataclass(frozen=True)
class Tag:
    """One tag to print.

    ``number`` is the tag number without its dash, ``link`` the text of the QR code, ``signed_link``
    the same with the shop's signature (empty where it does not sign), ``content`` what the link carries.
    ``assessment`` adds tolerance, bend radius and sources where a template asks for them. ``extra`` holds lines for paper that stays in the shop
    (the texts of the record, order, note), ``lots`` the record's lots (end_a, hose, end_b),
    which no symbol carries; ``shop`` is a line such as name and telephone, ``shop_name`` what of it must stay. ``specimen``: a
    picture of a tag to be, with the word across it. ``stop``: why its hose must not be used.
    """

    number: str
    link: str
    content: TagContent
    assessment: Assessment | None = field(default=None, hash=False)
    serial: Message | None = None  # which of how many: "3 of 20"
    shop: str = ""
    shop_name: str = ""
    specimen: bool = False
    extra: dict[str, str] = field(default_factory=dict, hash=False)
    lots: dict[str, str] = field(default_factory=dict, hash=False)
    stop: Stop | None = None
    signed_link: str = ""

    @property
    def spec(self) -> AssemblySpec:
        return self.content.spec

    @property
    def shown_number(self) -> str:
        """The number as people read it, with its dash."""
        return numbers.format(self.number)
