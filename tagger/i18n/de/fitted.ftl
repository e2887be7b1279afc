# A hose assembly that was fitted: the report from the machine, and the shop's answer.

## The report

fitted-report = Einbau melden
fitted-hint = Die Werkstatt bestätigt die Meldung. Bis dahin zählt sie nicht.
fitted-hours-hint = Betriebsstundenzähler, ohne Tausendertrennzeichen. Beispiel: 1234,5
fitted-hours-not-read = { $given } lässt sich nicht als Betriebsstunden lesen.
    .mend = Stunden ohne Tausendertrennzeichen eingeben, mit höchstens zwei Dezimalstellen.
fitted-photo = Foto der eingebauten Schlauchleitung
fitted-send = Meldung senden
fitted-sending = Meldung wird gesendet ...
fitted-not_sent = Meldung nicht gesendet
fitted-not_kept = Nicht gesendet: keine Verbindung, und dieses Telefon kann die Meldung nicht speichern. Versuchen Sie es noch einmal oder rufen Sie die Werkstatt an.
fitted-waiting = Kein Netz. Die Meldung ist auf diesem Telefon gespeichert und wird automatisch gesendet. Senden Sie sie nicht noch einmal.
fitted-waiting-open = Die Meldung ist auf diesem Telefon gespeichert. Sie wird gesendet, sobald es Netz gibt und diese Seite offen ist.
fitted-outbox-sent = Ihre Meldung wurde gesendet. Schild:
fitted-outbox-refused = Diese Meldung wurde nicht angenommen. Korrigieren Sie sie und senden Sie sie noch einmal.

## What became of it

fitted-page = Einbau von Schild { $number }
fitted-title = Als eingebaut gemeldet
fitted-waiting-day = Eingebaut am { $day }: gemeldet, von der Werkstatt noch nicht bestätigt
fitted-agreed-day = Eingebaut am { $day }: von der Werkstatt bestätigt
fitted-void-act = Der Eintrag dieses Schilds ist ungültig. Verwenden Sie diese Schlauchleitung nicht. Ist sie eingebaut, Maschine abstellen, Druck ablassen und die Schlauchleitung ausbauen. Rufen Sie dann die Werkstatt an.
fitted-on = Eingebaut am
fitted-replace_by = Zu ersetzen bis (Richtwert)
fitted-guidance = Spätestens, Lagerung eingeschlossen. Starke Beanspruchung, Hitze oder Schäden verkürzen die Zeit. Das Datum ist keine Erlaubnis, die Schlauchleitung bis dahin zu verwenden.
fitted-stored = { $years ->
    [one] Sie wurde länger gelagert als das eine Jahr, das die Quelle zulässt: vor weiterer Verwendung prüfen lassen.
   *[other] Sie wurde länger gelagert als die { $years } Jahre, die die Quelle zulässt: vor weiterer Verwendung prüfen lassen.
 }
fitted-calendar = Datum in den Kalender eintragen
fitted-open = Einbau und Ersatztermin
fitted-machine-title = Maschine von Schild { $number }
fitted-machine-hoses = Weitere Schlauchleitungen dieser Maschine
fitted-machine-show = Schlauchleitungen anzeigen
fitted-machine-none = Für diese Maschine ist keine weitere Schlauchleitung erfasst.
fitted-pin-hint = Sechs Ziffern. Die Werkstatt nennt Ihnen die PIN dieses Schilds.
fitted-pin = PIN für die Schlauchleitungen der Maschine
fitted-pin-told = Dem Kunden nennen. Sie steht nicht auf dem Schild.
fitted-no-date = Weder Fertigungsdatum noch Einbaudatum ist bekannt.
    .mend = Die Werkstatt nach dem Fertigungsdatum fragen.
fitted-event = Schlauchleitung { $number } ersetzen
fitted-event-description = Richtwert. Quelle: { $source }. Schild: { $address }

## The shop

fitted-bench-title = Als eingebaut gemeldet
fitted-bench-count = Einbaumeldungen zu bestätigen: { $count }
fitted-bench-hint = Eine bestätigte Meldung kommt in die Historie. Das früheste Datum zählt.
fitted-state-waiting = zu bestätigen
fitted-state-agreed = bestätigt
fitted-state-refused = abgelehnt
fitted-elsewhere = Diese Nummer soll auch an einer anderen Maschine sein: { LIST($machines) }. Das Schild wurde vielleicht kopiert oder umgehängt: beide Maschinen prüfen.
fitted-withdrawn = Diese Schlauchleitung ist gesperrt ({ LIST($reasons) }) und soll an einer Maschine sein. Anrufen: Sie muss ausgebaut werden.
fitted-void = Der Eintrag dieser Schlauchleitung ist ungültig („{ $reason }“), und sie soll an einer Maschine sein. Anrufen: Sie muss ausgebaut werden.
fitted-erase = Name und Foto löschen
fitted-erase-ask = Löschen, wer diese Meldung gemacht hat, und ihr Foto? Datum, Maschine und Stunden bleiben. Das lässt sich nicht rückgängig machen.
fitted-before-built = Das Einbaudatum liegt vor dem Fertigungsdatum: eines von beiden ist falsch.
fitted-hours = { $hours } h
fitted-why = Grund, falls Sie ablehnen
fitted-agree = Bestätigen
fitted-refuse = Ablehnen
fitted-none = Es wurde kein Einbau gemeldet.
fitted-line = Eingebaut am { $day }
fitted-line-machine = Eingebaut am { $day }, Maschine { $machine }
