# The shop's signing keys: their file, and the page on which they are printed.

## The key file

keys-not-set = Es ist keine Schlüsseldatei angegeben.
    .mend = In TAGGER_SIGNING_KEY den Pfad der Schlüsseldatei angeben.
keys-file-missing = Hier liegt keine Schlüsseldatei.
    .mend = Mit „tagger signing-key new“ eine anlegen oder die eigene Kopie zurückholen.
keys-file-there = Es gibt schon eine Schlüsseldatei: { $file }.
    .mend = --published weglassen; die Schlüssel der Datei werden weitergezählt.
keys-published-broken = Das ist nicht die Liste der öffentlichen Schlüssel, die die Werkstatt veröffentlicht hat.
    .mend = Speichern, was die Adresse der Werkstatt mit { $at } zeigt: aus einer Kopie oder wie auf der Schlüsselseite.
keys-file-open = Andere Benutzer dieses Rechners können die Schlüsseldatei lesen.
    .mend = Nur dem Eigentümer das Lesen erlauben: chmod 600.
keys-file-broken = Das ist keine vollständige Schlüsseldatei.
    .mend = Die eigene Kopie zurückholen.
keys-file-busy = Ein anderer Befehl ändert gerade die Schlüssel.
    .mend = Noch einmal versuchen. Läuft kein Befehl, diese Datei löschen.
keys-file-folder = Die Schlüsseldatei lässt sich hier nicht schreiben.
    .mend = Einen vorhandenen Ordner mit Schreibrecht nehmen.
keys-full = Eine Werkstatt hat höchstens 255 Schlüssel.
    .mend = Den letzten Schlüssel verwenden.
keys-unknown = Es gibt keinen Schlüssel mit dieser Nummer.
    .mend = Eine Nummer von 1 bis { $count } angeben.

## The key page

keys-page-title = Öffentliche Schlüssel der Schilder
keys-page-why = Die Werkstatt signiert den QR-Code ihrer Schilder. Mit diesen Schlüsseln kann jeder prüfen, ob ein Schild von dieser Werkstatt ist und ob seine Werte unverändert sind.
keys-page-how = Diese Seite bei den Datensätzen aufbewahren. Ein Telefon, das einmal eine Schildseite der Werkstatt geöffnet hat, prüft Schilder selbst, auch ohne Netz. Die Schlüssel stehen auch unter { $address }.
keys-page-format = Ed25519 (RFC 8032), 32 Byte hexadezimal. Signierter Text: { $text }, in ASCII.
keys-page-key = Schlüssel
keys-page-days = Gültig
keys-page-public = Öffentlicher Schlüssel
keys-valid-now = Signiert seit { $since }
keys-valid-ended = Hat von { $since } bis { $until } signiert; diese Schilder bleiben gültig
keys-valid-withdrawn = ZURÜCKGEZOGEN am { $day }: Verlassen Sie sich nicht auf damit signierte Schilder
