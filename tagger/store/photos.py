"""Photos that came with an order request or a report; only the shop sees them."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from datetime import datetime

from sqlalchemy import delete, select
from sqlalchemy.orm import Session

from tagger.errors import Problem, StoreError
from tagger.messages import Message
from tagger.store.base import Part
from tagger.store.models import PhotoRow


@dataclass(frozen=True)
class Photo:
    """One photo without its picture. ``what``: what it shows, such as ``hose``."""

    id: int
    what: str
    order_reference: str | None
    fitted_report_id: int | None
    at: datetime


class Photos(Part):
    """The part of the store that keeps photos."""

    def order_photos(self, reference: str) -> list[Photo]:
        """The photos of an order request, in the order in which they came."""
        with self.reading() as session:
            found = select(*_ALL_BUT_THE_IMAGE).where(PhotoRow.order_reference == reference)
            return [Photo(*row) for row in session.execute(found.order_by(PhotoRow.id))]

    def photo(self, id: int) -> bytes:
        """One photo as a JPEG file. Raises StoreError where there is none."""
        with self.reading() as session:
            image = session.scalar(select(PhotoRow.image).where(PhotoRow.id == id))
        if image is None:
            raise StoreError(Problem("photo", str(id), Message("store-photo-not-found", id=id)))
        return image

    def every_photo(self) -> Iterator[Photo]:
        """All photos, oldest first."""
        with self.reading() as session:
            rows = session.execute(select(*_ALL_BUT_THE_IMAGE).order_by(PhotoRow.id)).all()
        yield from (Photo(*row) for row in rows)


_ALL_BUT_THE_IMAGE = (
    PhotoRow.id,
    PhotoRow.what,
    PhotoRow.order_reference,
    PhotoRow.fitted_report_id,
    PhotoRow.at,
)


def add_photos(
    session: Session,
    photos: Mapping[str, bytes],
    at: datetime,
    *,
    order_reference: str | None = None,
    fitted_report_id: int | None = None,
) -> None:
    """Keeps photos by what they show, in a transaction already open."""
    for what, image in photos.items():
        session.add(
            PhotoRow(
                order_reference=order_reference,
                fitted_report_id=fitted_report_id,
                what=what,
                image=image,
                at=at,
            )
        )


def erase_photos(session: Session, reference: str) -> None:
    """Deletes the photos of an order request."""
    session.execute(delete(PhotoRow).where(PhotoRow.order_reference == reference))
