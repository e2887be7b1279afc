"""Threads of the server: they send print jobs to printers, and what waits in the outbox."""
