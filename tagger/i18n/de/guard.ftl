# What the web refuses before a page is reached, and what a scanned text is.
guard-not-your-role = Dafür ist die Rolle „{ $role }“ nötig.
    .mend = Die Werkstattleitung fragen.
guard-not-your-role-title = Zugriff verweigert
guard-form-expired = Dieses Formular ist abgelaufen.
    .mend = Zurückgehen, die Seite neu laden und erneut senden.
guard-form-expired-title = Formular abgelaufen
guard-form-elsewhere = Dieses Formular wurde von einer anderen Website gesendet.
    .mend = Die Seite des Schilds öffnen und von dort senden.
guard-no-page = Diese Seite gibt es nicht.
    .mend = Eine aus dem Menü wählen oder ein Schild scannen.
guard-no-page-title = Nicht gefunden
guard-database-title = Problem mit dem Server
guard-too-many-requests = Zu viele Anfragen. Warten Sie eine Minute und versuchen Sie es erneut.
guard-busy = Der Server bearbeitet bereits so viele Anfragen, wie er kann.
    .mend = In einigen Sekunden erneut versuchen. Von dieser Anfrage wurde nichts ausgeführt.
guard-metrics-listen = Messwerte gibt es nur auf diesem Rechner.
    .mend = Eine Adresse wie 127.0.0.1:9464 angeben.
guard-orders-too-many = Zu viele Bestellungen von diesem Anschluss oder für dieses Schild innerhalb einer Stunde.
    .mend = Bei der Werkstatt anrufen oder in einer Stunde erneut senden.
guard-reports-too-many = Zu viele Meldungen von diesem Anschluss oder für dieses Schild innerhalb einer Stunde.
    .mend = Bei der Werkstatt anrufen oder in einer Stunde erneut senden.
guard-pin-wrong = Die PIN gehört nicht zu diesem Schild.
    .mend = Die Werkstatt nach der PIN dieses Schilds fragen.
guard-pin-tries = Zu viele falsche PINs.
    .mend = Zehn Minuten warten.
guard-pictures-too-many = Zu viele Fotos von diesem Anschluss innerhalb einer Stunde.
    .mend = Ohne Fotos senden.
guard-pictures-full = Die Werkstatt nimmt heute keine Fotos mehr an.
    .mend = Ohne Fotos senden oder sie der Werkstatt auf anderem Weg zeigen.
guard-picture-too-large = Das Foto ist größer als { $megabytes } MB.
    .mend = Ein kleineres Foto verwenden oder ohne Foto senden.
guard-picture-unreadable = Die Datei ist kein lesbares Foto.
    .mend = Ein Foto als JPEG, PNG oder WebP verwenden.
guard-password-short = Das Kennwort ist zu kurz.
    .mend = Mindestens { $least } Zeichen verwenden.
guard-password-long = Das Kennwort ist zu lang.
    .mend = Höchstens { $most } Zeichen verwenden.
guard-password-common = Das Kennwort gehört zu denen, die zuerst versucht werden.
    .mend = Einen Satz aus mehreren Wörtern verwenden, den niemand mit Ihnen oder der Werkstatt verbindet.

## Tags and lots that were scanned

guard-tag-without-spec = Das Schild { $number } ist bei uns nicht erfasst, und eine Nummer allein enthält keine Spezifikation.
    .mend = Den QR-Code auf dem Schild scannen: Er enthält die ganze Spezifikation.
guard-too-large-title = Zu groß
guard-too-large = Die Anfrage ist größer als { $megabytes } MB. Senden Sie weniger.
