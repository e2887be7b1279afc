"""A copy is whole, is checked, and goes back into either database."""

from __future__ import annotations

import random
import sqlite3
import subprocess
from pathlib import Path

import pytest

from tagger.errors import StoreError
from tagger.store import Kind, Store
from tagger.store.backup import drill
from tests import processes
from tests.store.samples import assessment, spec
from tests.volume import volume


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


def test_a_copy_is_one_file_and_its_checksum(store: Store, tmp_path: Path) -> None:
    _filled(store)
    folder = tmp_path / "copies"
    folder.mkdir()
    copied = store.backup(folder / "tags.copy")
    assert sorted(path.name for path in folder.iterdir()) == ["tags.copy", "tags.copy.sha256"]
    subprocess.run(["sha256sum", "--check", "--strict", "tags.copy.sha256"], cwd=folder, check=True)
    assert sqlite3.connect(folder / "tags.copy").execute("SELECT count(*) FROM assembly").fetchone() == (1,)
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
    with pytest.raises(StoreError, match=r"not a complete backup|changed after the backup was written"):
        store.restore(path)
    assert store.count() == 0


def _slip(content: bytes, chance: random.Random) -> bytes:
    """The content with one bit flipped, or cut off somewhere."""
    if chance.random() < 0.1:
        return content[: chance.randrange(len(content))]
    at = chance.choice([chance.randrange(len(content)), chance.randrange(100), -1 - chance.randrange(100)])
    changed = bytearray(content)
    changed[at] ^= 1 << chance.randrange(8)
    return bytes(changed)


@pytest.mark.parametrize("beside", [True, False])
def test_a_copy_of_which_one_bit_changed_is_refused(store: Store, tmp_path: Path, beside: bool) -> None:
    """Flips and truncations anywhere, with and without the checksum beside the file."""
    path = tmp_path / "tags.copy"
    with Store.open(f"sqlite:///{tmp_path}/other.sqlite3") as other:
        other.register(spec(), assessment(), count=20)
        other.backup(path)
    if not beside:
        path.with_name("tags.copy.sha256").unlink()
    whole, chance = path.read_bytes(), random.Random(5)
    for _ in range(volume(250, 2500)):
        path.write_bytes(_slip(whole, chance))
        with pytest.raises(StoreError, match=r"not a complete backup|changed after the backup"):
            store.restore(path)
    assert store.count() == 0
    path.write_bytes(whole)
    assert store.restore(path).rows["assembly"] == 20


def test_a_checksum_beside_the_file_that_changed_is_refused(store: Store, tmp_path: Path) -> None:
    path, digest = tmp_path / "tags.copy", tmp_path / "tags.copy.sha256"
    with Store.open(f"sqlite:///{tmp_path}/other.sqlite3") as other:
        other.backup(path)
    whole = digest.read_bytes()
    for bit in range(0, 64 * 8, 7):
        changed = bytearray(whole)
        changed[bit // 8] ^= 1 << bit % 8
        digest.write_bytes(changed)
        with pytest.raises(StoreError, match="checksum does not match"):
            store.restore(path)


def test_a_copy_without_a_checksum_is_restored_only_when_asked(store: Store, tmp_path: Path) -> None:
    """As versions before the seal wrote them: the SQLite file alone."""
    with Store.open(f"sqlite:///{tmp_path}/other.sqlite3") as other:
        other.register(spec(), assessment())
    bare = tmp_path / "bare.copy"
    with sqlite3.connect(tmp_path / "other.sqlite3") as held, sqlite3.connect(bare) as copy:
        held.backup(copy)
    with pytest.raises(StoreError, match=r"carries no checksum.*--unsealed"):
        store.restore(bare)
    assert store.restore(bare, unsealed=True).rows["assembly"] == 1


def test_only_the_latest_dated_copies_are_kept(store: Store, tmp_path: Path) -> None:
    _filled(store)
    old = [tmp_path / f"tags-2020010{day}-120000.copy" for day in range(1, 5)]
    for one in [*old, tmp_path / "letter.txt", tmp_path / "tags-mine.copy"]:
        one.write_text("kept?")
        one.with_name(one.name + ".sha256").write_text("kept?")
    path, copied, removed = store.backup_and_keep(tmp_path, keep=3)
    assert removed == old[:2]
    assert sorted(p.name for p in tmp_path.glob("tags-2*")) == sorted(
        name for p in (*old[2:], path) for name in (p.name, p.name + ".sha256")
    )
    assert (tmp_path / "letter.txt").exists() and (tmp_path / "tags-mine.copy").exists()
    assert drill(path) == copied


def test_a_drill_proves_a_copy_and_leaves_nothing(
    sqlite_url: str, postgresql_url: str, tmp_path: Path
) -> None:
    path = tmp_path / "tags.copy"
    with Store.open(sqlite_url) as store:
        _filled(store)
        copied = store.backup(path)
    before = sorted(tmp_path.iterdir())
    assert drill(path) == drill(path, postgresql_url) == copied
    assert sorted(tmp_path.iterdir()) == before
    path.write_bytes(path.read_bytes().replace(b"155.1", b"955.1") + b" ")
    with pytest.raises(StoreError, match="changed after the backup"):
        drill(path)


def test_database_and_copies_are_private_to_their_owner(tmp_path: Path) -> None:
    file = tmp_path / "tags.sqlite3"
    file.touch(mode=0o644)  # as an older version left it
    with Store.open(f"sqlite:///{file}") as store:
        _filled(store)
        store.backup(tmp_path / "tags.copy")
        for one in tmp_path.iterdir():
            assert one.stat().st_mode & 0o777 == 0o600, one


def test_a_backup_holds_no_table_in_memory(tmp_path: Path) -> None:
    """Rows beyond those read at a time take no memory: less than 100 bytes each, where one kept takes a thousand."""
    few = volume(1_000, 9_000)
    less, more = (_peak(rows, tmp_path) for rows in (few, 2 * few))
    assert (more - less) / few < 100


def _peak(rows: int, folder: Path) -> int:
    """In a process of its own, where nothing that other tests left is counted."""
    done = processes.run(["-m", "tests.store.backup_memory", str(rows), str(folder)])
    assert done.returncode == 0, done.stderr
    return int(done.stdout)
