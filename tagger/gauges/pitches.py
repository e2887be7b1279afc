"""Pitch combs: one for every pitch of the tables, to be read over as many threads as the part has."""

from __future__ import annotations

from collections.abc import Sequence

from tagger import phrases
from tagger.gauges import rowed
from tagger.gauges.board import DARK, LIGHT, Board
from tagger.gauges.frame import Book, Head
from tagger.gauges.rowed import Row, having
from tagger.messages import Message
from tagger.trade.identifying.marks import mark
from tagger.trade.rows import ThreadRow
from tagger.trade.tables import Tables
from tagger.units import MM_PER_INCH

LONG = 66.0  # mm: a comb has as many threads as are whole on it
ROW = 11.3  # mm from comb to comb
DEPTH = 0.6  # of the pitch: a tooth that a thread's flanks, 55 or 60 degrees, both take
_BACK = 4.0  # mm, what the teeth stand on
SAME = 0.002  # mm: pitches nearer than that are one, rounded in two ways (14 per inch: 1.814 and 1.8143)


def combs(tables: Tables) -> list[tuple[float, list[ThreadRow]]]:
    """Each pitch in mm with the threads that have it, the finest first."""
    found: list[tuple[float, list[ThreadRow]]] = []
    for row in sorted(tables.threads.values(), key=lambda r: r.pitch_mm):
        if found and row.pitch_mm - found[-1][0] < SAME:
            found[-1][1].append(row)
        else:
            found.append((row.pitch_mm, [row]))
    return [(_exact(pitch, rows), rows) for pitch, rows in found]


def _exact(pitch: float, rows: Sequence[ThreadRow]) -> float:
    """Of a pitch that is named by threads per inch what they come to, without the rounding."""
    per_inch = next((row.tpi for row in rows if row.tpi), None)
    return MM_PER_INCH / per_inch if per_inch else pitch


def draw(book: Book) -> None:
    """All combs."""
    rows = [_row(book, pitch, threads) for pitch, threads in combs(book.tables)]
    head = Head(Message("gauges-title-pitches"), Message("gauges-use-pitches"), "sheet=pitches")
    rowed.draw(book, rows, head, ROW, words_at=LONG + 3)


def _row(book: Book, pitch: float, threads: Sequence[ThreadRow]) -> Row:
    per_inch = next((row.tpi for row in threads if row.tpi), None)

    def words() -> tuple[str, list[str]]:
        if per_inch:
            said = Message("gauges-pitch-inch", tpi=per_inch, pitch=round(pitch, 3))
        else:
            said = Message("gauges-pitch-metric", pitch=pitch)
        return book.t(said), having(book, [(phrases.connection(row.family), row) for row in threads])

    return Row(LONG, mark("P", pitch), words, lambda x, y: comb(book.board, pitch, x, y))


def comb(board: Board, pitch: float, x: float, y: float) -> None:
    """Teeth that point down, their tips a pitch apart; every tenth gap is numbered on the back."""
    count = int(LONG / pitch)
    board.rectangle(x, y, count * pitch, _BACK, LIGHT)
    base, tip = y + _BACK, y + _BACK + DEPTH * pitch
    points = [(x, base)]
    for tooth in range(count):
        points += [(x + (tooth + 0.5) * pitch, tip), (x + (tooth + 1) * pitch, base)]
    board.fill(points, DARK)
    for tens in range(10, count + 1, 10):
        board.line(((x + tens * pitch, y + 2.4), (x + tens * pitch, base)))
        board.text(x + tens * pitch - 0.4, y + 2.6, str(tens), 2.0, anchor="end")
