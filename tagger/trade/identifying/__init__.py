"""Which connection is this? From what was measured to the families and sizes that it can be."""
