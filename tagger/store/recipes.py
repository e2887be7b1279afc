"""Recipes: specs that the shop keeps under a name, to start from."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime

from sqlalchemy import delete, select

from tagger.errors import Problem, StoreError
from tagger.messages import Message
from tagger.spec import AssemblySpec
from tagger.store.base import Part
from tagger.store.models import RecipeRow
from tagger.store.people import Role


@dataclass(frozen=True)
class Recipe:
    """A spec under a name."""

    name: str
    spec: AssemblySpec
    saved_at: datetime
    saved_by: str | None


class RecipeKept(StoreError):
    """Another spec is kept under the name, and may not be replaced by this act."""


class Recipes(Part):
    """The part of the store for recipes."""

    def save_recipe(
        self,
        name: str,
        spec: AssemblySpec,
        *,
        by: str | None = None,
        role: Role = Role.MANAGER,
        replace: bool = True,
    ) -> Recipe:
        """Keeps a spec, without its lots, under a name.

        ``role``: that of whoever saves it. Where another spec has the name, it is replaced if ``replace`` says so;
        one that a manager saved, or nobody knows who, is replaced by a manager alone. Raises RecipeKept, for hoses
        are built from it.
        """
        name = " ".join(name.split())
        if not 1 <= len(name) <= 80:
            raise StoreError(Problem("recipe", name, Message("store-name-length", most=80)))
        without_lots = spec.to_build_again()
        with self.writing() as session:
            row = session.get(RecipeRow, name, with_for_update=True)
            if row is not None:
                if AssemblySpec.read(row.spec) == without_lots:
                    return _recipe(row)
                _refuse_another(row, role, replace)
            row = row or RecipeRow(name=name)
            row.spec, row.saved_at = without_lots.as_dict(), self.now()
            row.saved_by, row.saved_role = by, str(role)
            session.add(row)
            session.flush()
            return _recipe(row)

    def recipes(self, *, limit: int | None = None, after: str | None = None) -> list[Recipe]:
        """Recipes by name: all, or ``limit`` of them from the one that follows the name ``after``."""
        query = select(RecipeRow).order_by(RecipeRow.name).limit(limit)
        if after is not None:
            query = query.where(RecipeRow.name > after)
        with self.reading() as session:
            return [_recipe(row) for row in session.scalars(query)]

    def recipe(self, name: str) -> Recipe:
        with self.reading() as session:
            row = session.get(RecipeRow, name)
            if row is None:
                raise StoreError(Problem("recipe", name, Message("store-recipe-not-found", name=name)))
            return _recipe(row)

    def drop_recipe(self, name: str) -> None:
        with self.writing() as session:
            session.execute(delete(RecipeRow).where(RecipeRow.name == name))


def _refuse_another(row: RecipeRow, role: Role, replace: bool) -> None:
    if row.saved_role in (None, Role.MANAGER) and not role.may(Role.MANAGER):
        raise RecipeKept(Problem("recipe", row.name, Message("store-recipe-of-manager", name=row.name)))
    if not replace:
        raise RecipeKept(Problem("recipe", row.name, Message("store-recipe-used", name=row.name)))


def _recipe(row: RecipeRow) -> Recipe:
    return Recipe(row.name, AssemblySpec.read(row.spec), row.saved_at, row.saved_by)
