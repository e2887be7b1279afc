"""How often something was tried lately: counts that all servers on one database share.

For what is rare and must hold everywhere, such as signing in and orders. Kept as hashes, for a day at most, and not
in backups.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from datetime import datetime, timedelta

from sqlalchemy import delete, select
from sqlalchemy.orm import Session

from tagger.store.base import Part, hashed
from tagger.store.locks import Turn, take
from tagger.store.models import TryRow

KEPT = timedelta(days=1)
"""How long a try is remembered; no allowance looks further back."""


@dataclass(frozen=True)
class Allowance:
    """How often something may be tried: ``free`` times within ``window_s`` seconds.

    Then not until the first of them is that old; or, where ``longest_s`` is given, once more after a pause of 1 s,
    which doubles with each try up to ``longest_s``: whoever guesses is slowed down, and nobody is shut out.
    """

    free: int
    window_s: int
    longest_s: int = 0

    def wait_s(self, tries: Sequence[datetime], now: datetime) -> float:
        """Seconds until the next try; 0 for now. ``tries``: the earlier ones, oldest first.

        >>> from datetime import UTC
        >>> now = datetime(2026, 3, 2, tzinfo=UTC)
        >>> Allowance(2, 60).wait_s([now - timedelta(seconds=50)] * 2, now)
        10.0
        >>> [Allowance(2, 60, longest_s=9).wait_s([now] * tried, now) for tried in (1, 2, 3, 4, 5, 99)]
        [0.0, 1.0, 2.0, 4.0, 8.0, 9.0]
        """
        recent = [at for at in tries if at > now - timedelta(seconds=self.window_s)]
        beyond = len(recent) - self.free
        if beyond < 0:
            return 0.0
        if self.longest_s:
            until = recent[-1] + timedelta(seconds=min(2.0 ** min(beyond, 30), self.longest_s))
        else:
            until = recent[-self.free] + timedelta(seconds=self.window_s)
        return max(0.0, (until - now).total_seconds())


class Tries(Part):
    """The part of the store that counts tries."""

    def try_now(self, wanted: Mapping[str, Allowance]) -> float:
        """Counts one try under every key; or, where one of them has to wait, under none.

        Returns the seconds to wait, 0 where it may go on. Two at once are counted one after the other; one that has
        to wait writes nothing.
        """
        with self.reading() as session:
            if wait := self._wait_s(session, wanted):
                return wait
        with self.writing() as session:
            take(session, Turn.TRIES)
            if wait := self._wait_s(session, wanted):
                return wait
            session.execute(delete(TryRow).where(TryRow.at < self.now() - KEPT))
            session.add_all(TryRow(key=hashed(key), at=self.now()) for key in wanted)
            return 0.0

    def give_back(self, *keys: str) -> None:
        """The last try under each key was none after all."""
        with self.writing() as session:
            for key in keys:
                last = select(TryRow.id).where(TryRow.key == hashed(key)).order_by(TryRow.id.desc()).limit(1)
                session.execute(delete(TryRow).where(TryRow.id.in_(last.scalar_subquery())))

    def _wait_s(self, session: Session, wanted: Mapping[str, Allowance]) -> float:
        now = self.now()
        return max(
            allowance.wait_s(
                session.scalars(
                    select(TryRow.at).where(TryRow.key == hashed(key)).order_by(TryRow.at, TryRow.id)
                ).all(),
                now,
            )
            for key, allowance in wanted.items()
        )
