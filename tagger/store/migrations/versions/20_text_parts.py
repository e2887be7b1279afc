"""On SQLite the parts of three letters of each text that records are found by: a name is looked for among those that have
its rarest part, without reading each. The database keeps them itself, whoever writes the texts. PostgreSQL has had an
index for it since 19.
"""

from alembic import op

revision = "20"
down_revision = "19"

_PARTS = (
    "SELECT DISTINCT named.field, substr(named.folded, place.at, 3), named.id FROM ({texts}) AS named "
    "JOIN (WITH RECURSIVE letter(at) AS (SELECT 1 UNION ALL SELECT at + 1 FROM letter WHERE at < {most}) "
    "SELECT at FROM letter) AS place ON place.at <= length(named.folded) - 2 "
    "WHERE named.field NOT IN ('hose_lot', 'fitting_lot')"
)
_NEW = _PARTS.format(
    texts="SELECT NEW.field AS field, NEW.folded AS folded, NEW.id AS id", most="length(NEW.folded)"
)
_GONE = "DELETE FROM recorded_part WHERE field = OLD.field AND text_id = OLD.id"


def upgrade() -> None:
    if op.get_bind().dialect.name != "sqlite":
        return
    op.execute(
        "CREATE TABLE recorded_part (field VARCHAR(24) NOT NULL, part VARCHAR(3) NOT NULL, text_id INTEGER NOT NULL, "
        "PRIMARY KEY (field, part, text_id)) WITHOUT ROWID"
    )
    longest = "(SELECT max(length(folded)) FROM recorded_text)"
    op.execute(
        "INSERT INTO recorded_part "
        + _PARTS.format(texts="SELECT field, folded, id FROM recorded_text", most=longest)
    )
    for name, after, act in (
        ("written", "INSERT", f"INSERT INTO recorded_part {_NEW}"),
        ("changed", "UPDATE", f"{_GONE}; INSERT INTO recorded_part {_NEW}"),
        ("gone", "DELETE", _GONE),
    ):
        op.execute(f"CREATE TRIGGER recorded_text_{name} AFTER {after} ON recorded_text BEGIN {act}; END")


def downgrade() -> None:
    if op.get_bind().dialect.name != "sqlite":
        return
    for name in ("written", "changed", "gone"):
        op.execute(f"DROP TRIGGER recorded_text_{name}")
    op.execute("DROP TABLE recorded_part")
