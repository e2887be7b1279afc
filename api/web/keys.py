"""The shop's signing keys as they are now: their file may change while the server runs."""

from __future__ import annotations

import logging
from typing import Final

from tagger.settings import ShopSettings
from tagger.signing import Keys, SigningError

_LOG: Final = logging.getLogger(__name__)


class ShopKeys:
    """Looks at the key file whenever it is asked. Where that cannot be used any longer, the last keys stay.

    Raises SigningError at the start: no tag is to be printed unsigned for want of a file.
    """

    def __init__(self, settings: ShopSettings) -> None:
        self._settings = settings
        self._last = settings.keys()
        self._told = ""

    def now(self) -> Keys:
        """The keys; the same object for as long as they are the same."""
        try:
            self._last = self._settings.keys()
        except SigningError as error:
            if str(error) != self._told:
                self._told = str(error)
                _LOG.error("the signing keys stay as they were: %s", error)
        return self._last
