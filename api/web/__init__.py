"""What every room of the web stands on: who asks, limits, headers, static files, answers to errors."""
