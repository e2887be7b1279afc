# What a phone says by itself, without a signal.

## Refusals

offline-no-signal = Kein Netz
offline-scan-a-tag = Scannen Sie den QR-Code auf einem Schild. Er lässt sich auch ohne Netz lesen.
offline-number-alone = Eine Schildnummer allein enthält die Spezifikation nicht, und es gibt kein Netz.
    .mend = Scannen Sie stattdessen den QR-Code: Er lässt sich auch ohne Netz lesen.
offline-not_digits = Diese Ziffern sind nicht der Code eines Schilds.
    .mend = Scannen Sie das Schild noch einmal. Hilft das nicht, geben Sie die Schildnummer ein.
offline-damaged = Der Code des Schilds ist beschädigt (Prüfsummenfehler).
    .mend = Scannen Sie das Schild noch einmal. Hilft das nicht, geben Sie die Schildnummer ein.
offline-incomplete = Der Code des Schilds ist unvollständig.
    .mend = Scannen Sie das Schild noch einmal. Hilft das nicht, geben Sie die Schildnummer ein.
offline-number-check = Das Kontrollzeichen stimmt nicht: Mindestens ein Zeichen ist falsch.
    .mend = Vergleichen Sie die Nummer Zeichen für Zeichen mit dem Schild.
offline-newer-tag = Dieses Schild ist neuer als die Daten auf diesem Telefon.
    .mend = Öffnen Sie einmal eine Schildseite mit Netz, um dieses Telefon zu aktualisieren.
offline-newer-part = Dieses Schild nennt ein Bauteil, das dieses Telefon noch nicht kennt.
    .mend = Öffnen Sie einmal eine Schildseite mit Netz, um dieses Telefon zu aktualisieren.

## Above a tag that was read without a signal

offline-tag-only = Kein Netz: nur die Angaben vom Schild
offline-withdrawn-unknown = Die Angaben stammen nur vom Schild. Ob die Schlauchleitung gesperrt wurde, sehen Sie hier wieder mit Netz; oder fragen Sie die Werkstatt.
