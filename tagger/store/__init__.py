"""What must never be lost."""
