"""Runs inside the transaction that Database opened; all steps are applied, or none."""

from alembic import context

from tagger.store.models import Table

context.configure(
    connection=context.config.attributes["connection"],
    target_metadata=Table.metadata,
    transactional_ddl=True,
    render_as_batch=True,
)
with context.begin_transaction():
    context.run_migrations()
