# Die JSON-Schnittstelle: warum die Anfrage eines Programms abgelehnt wird.

rest-no-token = Die Anfrage enthält kein gültiges Geräte-Token.
    .mend = Im Kopf senden: Authorization: Bearer ...
rest-role-too-low = Diese Anfrage braucht ein Token mit der Rolle { $role } oder höher.
    .mend = Ein Token dieser Rolle verwenden oder von der Werkstattleitung anlegen lassen.
rest-no-such-address = Unter dieser Adresse gibt es nichts.
    .mend = Die Adresse in der Beschreibung der Schnittstelle prüfen.
rest-no-such-method = Diese Adresse nimmt diese Methode nicht an.
    .mend = Die Methode in der Beschreibung der Schnittstelle prüfen.
rest-too-large = Die Anfrage ist größer als { $megabytes } MB.
    .mend = Weniger senden.
rest-cannot-be-read = Die Anfrage ist nicht lesbar.
    .mend = Jedes unter problems genannte Feld berichtigen.
rest-cannot-be-stored = Die Anfrage enthält ein Zeichen oder eine Zahl, die sich nicht speichern lässt.
    .mend = Texte und Zahlen prüfen.
rest-database-away = Die Datenbank ist nicht verfügbar.
    .mend = Die Anfrage mit demselben Idempotency-Key wiederholen.
rest-failed = Fehler im Server.
    .mend = Einzelheiten stehen im Protokoll des Servers.

rest-built-in-future = Das Herstelldatum { $date } liegt in der Zukunft.
    .mend = Das Herstelldatum berichtigen oder weglassen.
rest-crimp-twice = Dieses Ende ist zweimal genannt.
    .mend = Für jedes Ende einen Durchmesser senden.
rest-one-of-text-and-digits = Genau eines von text und digits wird gebraucht.
    .mend = Eines der beiden senden.
rest-not-a-column = { $name } ist keine bekannte Spalte.
    .mend = Eine von diesen verwenden: { LIST($columns, style: "or") }.
rest-columns-do-not-match = match nennt { $given ->
        [one] { $given } Spalte
       *[other] { $given } Spalten
    }, die Datei hat { $columns }.
    .mend = Für jede Spalte der Datei eine nennen; ein leerer Name lässt die Spalte aus.
rest-machine-without-hoses = Für { $machine } sind keine Schlauchleitungen erfasst.
    .mend = Namen der Maschine und des Kunden prüfen.
rest-nothing-to-change = Die Anfrage ändert nichts.
    .mend = role, active oder password senden.
rest-nobody-affected = Die Sperre betrifft keine erfasste Schlauchleitung.
    .mend = Es sind keine Kunden betroffen.
rest-words-not-read = Die Wörter sind kein JSON-Objekt.
    .mend = Ein Objekt senden: die Wörter der Datei als Namen, unsere Werte als Werte.
rest-words-not-a-value = Keine zugeordnete Spalte nimmt { $value } für { $word } an.
    .mend = Einen Wert verwenden, den der Probelauf für dieses Wort nennt, oder die Spalte zuordnen.
rest-form-one-tag = Nur eine PDF-Datei enthält mehrere Schilder.
    .mend = pdf verwenden oder die Schilder einzeln anfordern.
rest-printed-already = Schon gedruckt oder an einen Drucker geschickt: { LIST($numbers) }. Ein zweites Schild mit derselben Nummer kann an einer anderen Schlauchleitung landen.
    .mend = Soll erneut gedruckt werden, again: true mit dem Grund senden.
