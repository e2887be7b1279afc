"""A copy is whole, is checked, and goes back into either database."""

from __future__ import annotations

from pathlib import Path

import pytest

from tagger.errors import StoreError
from tagger.store import Kind, Store
from tests.store.samples import assessment, spec


def _filled(store: Store) -> str:
    [old] = store.register(spec(), assessment(), customer="Quarry Nørd")
    store.request_order(number=old.number, quantity=1, contact={"phone": "1"})
    store.withdraw("cover blisters", hose_lot="H-2291")
    return old.number


def test_a_copy_goes_back_into_the_other_database(
    sqlite_url: str, postgresql_url: str, tmp_path: Path
) -> None:
    with Store.open(sqlite_url) as first, Store.open(postgresql_url) as second:
        number = _filled(first)
        copied = first.backup(tmp_path / "a.copy")
        assert second.restore(tmp_path / "a.copy") == copied
        assert second.assembly(number) == first.assembly(number)
        assert second.history(number) == first.history(number)
        second.record(number, Kind.SCANNED, {})  # ids go on after those restored
        again = second.backup(tmp_path / "b.copy")
    with Store.open(f"sqlite:///{tmp_path}/third.sqlite3") as third:
        assert third.restore(tmp_path / "b.copy") == again
        assert third.history(number)[-1].kind is Kind.SCANNED


def test_a_copy_is_one_file(store: Store, tmp_path: Path) -> None:
    _filled(store)
    folder = tmp_path / "copies"
    folder.mkdir()
    copied = store.backup(folder / "tags.copy")
    assert [path.name for path in folder.iterdir()] == ["tags.copy"]
    assert copied.rows["assembly"] == 1


@pytest.mark.parametrize("name", ["", "-wal", "-shm", "-journal", "link", "hard link", "part"])
def test_a_copy_never_goes_onto_the_database_itself(tmp_path: Path, name: str) -> None:
    file = tmp_path / ("tags.sqlite3.part" if name == "part" else "tags.sqlite3")
    target = Path(f"{file}{name}")
    if name == "part":  # what the copy of "tags.sqlite3" is called until it is whole
        target = tmp_path / "tags.sqlite3"
    elif "link" in name:
        target = tmp_path / "other.sqlite3"
    with Store.open(f"sqlite:///{file}") as store:
        number = _filled(store)
        if name == "link":
            target.symlink_to(file)
        elif name == "hard link":
            target.hardlink_to(file)
        for act in (store.backup, store.restore) if name != "part" else (store.backup,):
            with pytest.raises(StoreError, match="is a file of the database itself"):
                act(target)
        store.record(number, Kind.SCANNED, {})
    with Store.open(f"sqlite:///{file}") as store:
        assert store.history(number)[-1].kind is Kind.SCANNED


def test_a_copy_is_never_written_over_another_file(store: Store, tmp_path: Path) -> None:
    _filled(store)
    held = tmp_path / "letter.txt"
    held.write_text("keep me")
    with pytest.raises(StoreError, match=r"already exists.*Choose a new file"):
        store.backup(held)
    assert held.read_text() == "keep me"
    (tmp_path / "dangling").symlink_to(tmp_path / "nowhere")
    with pytest.raises(StoreError, match="already exists"):
        store.backup(tmp_path / "dangling")
    with pytest.raises(StoreError, match=r"does not exist.*Create the folder"):
        store.backup(tmp_path / "no" / "such" / "copy")
    assert not (tmp_path / "no").exists()


def test_restore_refuses_a_database_in_use(store: Store, tmp_path: Path) -> None:
    _filled(store)
    store.backup(tmp_path / "tags.copy")
    with pytest.raises(StoreError, match="into an empty database only"):
        store.restore(tmp_path / "tags.copy")


@pytest.mark.parametrize("content", [b"", b"not a database at all", None])
def test_restore_refuses_what_is_no_whole_copy(store: Store, tmp_path: Path, content: bytes | None) -> None:
    path = tmp_path / "tags.copy"
    if content is None:
        with Store.open(f"sqlite:///{tmp_path}/other.sqlite3") as other:
            other.register(spec(), assessment(), count=200)
            other.backup(path)
        content = path.read_bytes()[: path.stat().st_size // 2]
    path.write_bytes(content)
    with pytest.raises(StoreError, match="not a complete backup"):
        store.restore(path)
    assert store.count() == 0
