"""The web application: public pages behind the QR code, the bench, the JSON API."""
