"""Shared by every room of the web: identity, language, limits, headers, static files, errors."""
