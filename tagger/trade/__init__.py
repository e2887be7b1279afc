"""What the trade knows: pure functions over data files."""
