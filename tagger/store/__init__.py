"""What must never be lost: assemblies and their history, order requests, withdrawals, print jobs.

>>> import tempfile
>>> with tempfile.TemporaryDirectory() as folder, Store.open(f"sqlite:///{folder}/tags.sqlite3") as store:
...     store.count()
0
"""

from __future__ import annotations

from tagger.store.audit import Audit, Audited
from tagger.store.backup import Backup, Copied
from tagger.store.base import Clock, utc_now
from tagger.store.batches import MOST_OF_A_BATCH, Batch, Batches, Flushing
from tagger.store.chain import Head
from tagger.store.changes import Changes
from tagger.store.correcting import CORRECTABLE, Correcting
from tagger.store.crimps import Crimps, CrimpValue
from tagger.store.customers import Customers, KnownContact
from tagger.store.database import Database, default_url, exists
from tagger.store.figures import Figures, Totals
from tagger.store.finding import Filter, Finding, Page
from tagger.store.fitted import FittedReport, FittedReports, FittedState
from tagger.store.fittings import Fittings
from tagger.store.lots import Lots
from tagger.store.once import KeyUsed, Once
from tagger.store.orders import refuse_past
from tagger.store.outbox import Message, Target
from tagger.store.own_account import OwnAccount
from tagger.store.people import People, Person, Role, SignedIn, Token
from tagger.store.photos import Photo
from tagger.store.pins import Pins
from tagger.store.print_jobs import Prints
from tagger.store.printers import Printers
from tagger.store.proof_tests import MEDIA, ProofAllowance, ProofTest, Result, Verdict, verdict
from tagger.store.proving import CrimpMeasured, Proving, proof_required
from tagger.store.recipes import Recipe, RecipeKept, Recipes
from tagger.store.retention import Keep, Old, Retention
from tagger.store.scans import Scans
from tagger.store.second_factor import SecondFactor
from tagger.store.shop_rows import KeptRow, ShopRows
from tagger.store.stops import Stops
from tagger.store.tries import Allowance, Tries
from tagger.store.values import (
    Assembly,
    Contact,
    Event,
    Kind,
    LotReason,
    OrderRequest,
    OrderState,
    OrderStep,
    Printer,
    PrintJob,
    PrintState,
    Registration,
    Scope,
    Void,
    Withdrawal,
)
from tagger.store.withdrawals import Withdrawals


class Store(
    Retention,
    FittedReports,
    Customers,
    Pins,
    Batches,
    Stops,
    Proving,
    Finding,
    Figures,
    Withdrawals,
    Lots,
    Changes,
    Correcting,
    People,
    Recipes,
    Crimps,
    Fittings,
    Printers,
    Prints,
    Once,
    Scans,
    Backup,
    Audit,
    ShopRows,
    Tries,
    SecondFactor,
    OwnAccount,
):
    """Everything that is kept, in one database; safe to use from several threads and processes."""

    @classmethod
    def open(cls, url: str | None = None, *, now: Clock = utc_now) -> Store:
        """Opens the database at ``url``, and brings its tables up to date.

        ``url``: SQLite or PostgreSQL; by default TAGGER_DATABASE_URL, else a SQLite file in the
        user's data folder. Raises StoreError when it cannot be opened.
        """
        return cls(Database(url), now)

    def close(self) -> None:
        """Gives the connections back."""
        self.database.close()

    def __enter__(self) -> Store:
        return self

    def __exit__(self, *_: object) -> None:
        self.close()


__all__ = [
    "CORRECTABLE",
    "MEDIA",
    "MOST_OF_A_BATCH",
    "Allowance",
    "Assembly",
    "Audited",
    "Batch",
    "Contact",
    "Copied",
    "CrimpMeasured",
    "CrimpValue",
    "Event",
    "Filter",
    "FittedReport",
    "FittedState",
    "Flushing",
    "Head",
    "Keep",
    "KeptRow",
    "KeyUsed",
    "Kind",
    "KnownContact",
    "LotReason",
    "Message",
    "Old",
    "OrderRequest",
    "OrderState",
    "OrderStep",
    "Page",
    "Person",
    "Photo",
    "PrintJob",
    "PrintState",
    "Printer",
    "ProofAllowance",
    "ProofTest",
    "Recipe",
    "RecipeKept",
    "Registration",
    "Result",
    "Role",
    "Scope",
    "SignedIn",
    "Store",
    "Target",
    "Token",
    "Totals",
    "Verdict",
    "Void",
    "Withdrawal",
    "default_url",
    "exists",
    "proof_required",
    "refuse_past",
    "verdict",
]
