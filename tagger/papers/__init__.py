"""Papers of running text, on A4: the certificates of proof tests."""
