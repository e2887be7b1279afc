# What a phone says by itself, without a signal.

## Refusals

offline-no-signal = Kein Netz
offline-scan-a-tag = Scannen Sie den QR-Code auf einem Schild. Er lässt sich auch ohne Netz lesen.
offline-order = Ohne Netz lässt sich der Stand einer Bestellung nicht sehen.
    .mend = Mit Netz noch einmal versuchen oder die Werkstatt anrufen.
offline-identify = Ohne Netz lässt sich nicht bestimmen, welchen Anschluss ein Ende hat.
    .mend = Für jedes Ende notieren: Ausführung, Gewindedurchmesser, Steigung und Dichtsitz. Mit Netz hier eingeben oder die Werkstatt anrufen.
offline-identified = Der Schlauch zwischen den Enden lässt sich nur mit Netz bestellen.
    .mend = Beide Enden notieren oder diese Seite behalten und mit Netz fortfahren. Oder die Werkstatt anrufen.
offline-number-alone = Eine Schildnummer allein enthält die Spezifikation nicht, und es gibt kein Netz.
    .mend = Scannen Sie stattdessen den QR-Code: Er lässt sich auch ohne Netz lesen.
offline-number-withdrawn = Diese Werkstatt hat die Schlauchleitung gesperrt. Nicht verwenden.
    .mend = Nicht einbauen. Ist sie eingebaut: Maschine anhalten, Druck ablassen, Schlauchleitung ausbauen. Die Werkstatt fragen.
offline-number-void = UNGÜLTIG: Diese Schlauchleitung darf nicht eingebaut werden. Ihr Eintrag ist ein Versehen.
    .mend = Nicht einbauen. Die Werkstatt fragen.
offline-number-held = Die Werkstatt hat diese Schlauchleitung nicht freigegeben. Nicht einbauen.
    .mend = In der Werkstatt nachfragen. Ist sie eingebaut: Maschine abstellen, Druck ablassen, Schlauchleitung ausbauen.
offline-newer-tag = Dieses Schild ist neuer als die Daten auf diesem Telefon.
    .mend = Öffnen Sie einmal eine Schildseite mit Netz, um dieses Telefon zu aktualisieren.
offline-newer-part = Dieses Schild nennt ein Bauteil, das dieses Telefon noch nicht kennt.
    .mend = Öffnen Sie einmal eine Schildseite mit Netz, um dieses Telefon zu aktualisieren.

## Above a tag that was read without a signal

offline-tag-only = Kein Netz: nur die Angaben vom Schild
offline-withdrawn-unknown = Die Angaben stammen nur vom Schild. Ob die Schlauchleitung gesperrt wurde, sehen Sie hier wieder mit Netz; oder fragen Sie die Werkstatt.
offline-withdrawn-as-of = Die Angaben stammen nur vom Schild. Die Sperrliste der Werkstatt vom { $day }, { $time }, nennt diese Schlauchleitung nicht; was danach kam, ist nicht bekannt. Mit Netz erneut prüfen oder die Werkstatt fragen.
offline-barred = Die Angaben stammen nur vom Schild. Diese Schlauchleitung aus dem oben genannten Grund nicht einbauen. In der Werkstatt nachfragen.
offline-withdrawn-reason = Die Werkstatt hat die Schlauchleitung gesperrt. Dort nach dem Grund fragen.
offline-withdrawn-listed = Laut Sperrliste der Werkstatt vom { $day }, { $time }
