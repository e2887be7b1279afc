# What is said of tag numbers, links, tag codes, photos and symbols that cannot be read or made.

## Tag numbers

code-character-at = „{ $character }“ an Stelle { $place }
code-number-characters = Das enthält Zeichen, die in Schildnummern nicht vorkommen: { LIST($characters) }.
    .mend = Vergleichen Sie diese Stellen mit dem Schild.
code-number-length = Das hat { $count } der { $right } Zeichen einer Schildnummer.
    .mend = Vergleichen Sie die Nummer mit dem Schild: XXXXX-XXXXXX.
code-number-check = Das Kontrollzeichen stimmt nicht: Mindestens ein Zeichen ist falsch.
    .mend = Vergleichen Sie die Nummer Zeichen für Zeichen mit dem Schild.
code-number-check-near = Das Kontrollzeichen stimmt nicht: Mindestens ein Zeichen ist falsch.
    .mend = Vergleichen Sie die Nummer Zeichen für Zeichen mit dem Schild. Sie lautet vielleicht { LIST($numbers, style: "or") }.

## Links

code-link-address = Das ist keine Web-Adresse.
    .mend = Verwenden Sie eine wie { $example }.
code-link-host = Die Adresse darf nur ein Rechnername sein: Buchstaben, Ziffern, Punkte und Bindestriche.
    .mend = Verwenden Sie eine wie { $example }.
code-link-unknown = Das ist nicht der Link eines Schilds.
    .mend = Scannen Sie den QR-Code auf dem Schild oder geben Sie die Schildnummer ein.
code-number-alone = Das ist nur eine Schildnummer ohne Spezifikation.
    .mend = Für die Spezifikation scannen Sie den QR-Code oder öffnen Sie den Datensatz des Schilds (tagger show NUMBER).

## Tag codes: the digits in the link

code-version = Der Code des Schilds hat die Formatversion { $version }, die dieses Programm nicht kennt.
    .mend = Aktualisieren Sie das Programm.
code-hose-tail = Die Dash-Größe des Nippels ist nicht die des Schlauchs.
    .mend = Verwenden Sie { $dash }.
code-too-large = Dieser Wert ist zu groß für den Code des Schilds.
    .mend = Prüfen Sie den Wert.
code-not-a-size = Das ist keine Größe.
    .mend = Prüfen Sie die Größe.
code-not-stored = Dieser Name lässt sich nicht auf einem Schild speichern.
    .mend = Wählen Sie einen Namen aus der Liste.
code-text = Dieser Text lässt sich nicht auf einem Schild speichern: höchstens { $maximum } Zeichen, nur Buchstaben ohne Umlaute, Ziffern und einfache Zeichen.
    .mend = Verwenden Sie einen kürzeren oder einfacheren Namen.
code-incomplete = Der Code des Schilds ist unvollständig.
    .mend = Scannen Sie das Schild noch einmal. Hilft das nicht, geben Sie die Schildnummer ein.
code-not-digits = Diese Ziffern sind nicht der Code eines Schilds.
    .mend = Scannen Sie das Schild noch einmal. Hilft das nicht, geben Sie die Schildnummer ein.
code-damaged = Der Code des Schilds ist beschädigt (Prüfsummenfehler).
    .mend = Scannen Sie das Schild noch einmal. Hilft das nicht, geben Sie die Schildnummer ein.
code-surplus = Der Code des Schilds ist um { $bits ->
    [one] { $bits } Bit
   *[other] { $bits } Bit
 } zu lang.
    .mend = Scannen Sie das Schild noch einmal. Hilft das nicht, geben Sie die Schildnummer ein.
code-unknown-point = Der Code des Schilds enthält eine Nummer, die dieses Programm nicht kennt.
    .mend = Aktualisieren Sie das Programm.

## Photos

code-photo-too-large = Das Bild ist zu groß.
    .mend = Verwenden Sie ein Foto mit höchstens { $megapixels } Megapixeln.
code-photo-unreadable = Dieses Bild ist nicht lesbar.
    .mend = Verwenden Sie eine PNG-, JPEG-, GIF- oder WebP-Datei.
code-photo-several = Das Foto zeigt mehr als ein Schild: { LIST($numbers) }.
    .mend = Fotografieren Sie ein Schild nach dem anderen; decken Sie die übrigen ab.
code-photo-other = Das Foto zeigt einen Code, der nicht zu einem Schild gehört.
    .mend = Fotografieren Sie das Schild selbst.
code-photo-none = Das Foto zeigt keinen lesbaren Code.
    .mend = Gehen Sie näher heran, halten Sie still, vermeiden Sie Spiegelungen, oder geben Sie die Schildnummer ein.

## QR code and bar code

code-symbol-version = Diese QR-Version ist zu klein für den Text bei Stufe { $level }.
    .mend = Verwenden Sie Version { $version }.
code-symbol-letters = Dieser Text passt nicht in einen Strichcode (Code 128).
    .mend = Verwenden Sie Buchstaben ohne Umlaute, Ziffern und einfache Zeichen (druckbares ASCII).
code-symbol-level = Das ist keine Fehlerkorrekturstufe von QR-Codes.
    .mend = Verwenden Sie L, M, Q oder H.
code-symbol-too-long = Der Text ist zu lang für einen QR-Code.
    .mend = Kürzen Sie den Link.
