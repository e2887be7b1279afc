"""The chain over what is recorded; what was recorded before is linked as it stands."""

from collections.abc import Iterator

import sqlalchemy as sa
from alembic import op

from tagger.store.chain import CHAINED, START, Head, key_column, links_after, salted
from tagger.store.migrations.append_only import fix, guard, unguard
from tagger.store.models import Table
from tagger.store.texts import unchecked

revision = "16"
down_revision = "15"

_NO_EVENT = sa.text("table_name <> 'event'")
_FIXED = ("id", "table_name", "row_key", "digest", "link")


def upgrade() -> None:
    op.create_table(
        "chain",
        sa.Column(
            "id", sa.BigInteger().with_variant(sa.Integer(), "sqlite"), autoincrement=False, nullable=False
        ),
        sa.Column("table_name", sa.String(length=24), nullable=False),
        sa.Column("row_key", sa.String(length=64), nullable=False),
        sa.Column("salt", sa.String(length=32), nullable=True),
        sa.Column("digest", sa.String(length=64), nullable=False),
        sa.Column("link", sa.String(length=64), nullable=False),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_chain")),
    )
    op.create_index(
        "ix_chain_table_name_row_key",
        "chain",
        ["table_name", "row_key"],
        postgresql_where=_NO_EVENT,
        sqlite_where=_NO_EVENT,
    )
    _link_all(op.get_bind())
    guard("chain")
    fix("chain", _FIXED)


def downgrade() -> None:
    unguard("chain")
    op.drop_table("chain")


def _link_all(connection: sa.Connection) -> None:
    names = ("id", "table_name", "row_key", "salt", "digest", "link")
    chain = sa.table("chain", *(sa.column(name) for name in names))
    head = Head(0, START)
    there = sa.inspect(connection)
    for model in CHAINED:
        if not there.has_table(model.__tablename__):
            continue
        columns = {column["name"] for column in there.get_columns(model.__tablename__)}
        for rows in _rows(connection, model, columns):
            links = list(links_after(head, rows))
            head = Head(links[-1]["id"], links[-1]["link"])
            connection.execute(sa.insert(chain), links)


def _rows(
    connection: sa.Connection, model: type[Table], there: set[str]
) -> Iterator[list[tuple[str, str, bytes]]]:
    """The rows of a table by key, with the digests of the columns that it has by now, a thousand at a time."""
    columns = [sa.column(c.name, unchecked(c.type)) for c in model.__table__.columns if c.name in there]
    table, key = model.__tablename__, key_column(model).name
    light = sa.table(table, *columns)
    query = sa.select(light).order_by(light.c[key])
    result = connection.execute(query, execution_options={"yield_per": 1000})
    for chunk in result.mappings().partitions(1000):
        yield [(table, str(row[key]), salted(table, dict(row))) for row in chunk]
