"""Thread diameter and pitch from a photo of an end beside a printed scale card."""
