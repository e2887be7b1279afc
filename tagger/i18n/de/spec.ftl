# What is said of a spec that does not describe an assembly, of values with units, and of files that cannot be read.
# Each reads alone and after a caption: "Length: This value is missing."

## Fields of an input

spec-missing = Dieser Wert fehlt.
    .mend = Geben Sie ihn ein.
spec-unknown-field = Dieses Feld ist nicht bekannt.
    .mend = Entfernen Sie es oder prüfen Sie die Schreibweise.
spec-not-one-of = Dieser Wert ist nicht bekannt.
    .mend = Möglich sind: { LIST($choices, style: "or") }.
spec-bar = { $number } bar
spec-not-more-than = Dieser Wert ist nicht größer als { $limit }.
    .mend = Geben Sie mehr als { $limit } ein.
spec-below-minimum = Dieser Wert liegt unter dem Mindestwert { $minimum }.
    .mend = Geben Sie { $minimum } oder mehr ein.
spec-above-maximum = Dieser Wert liegt über dem Höchstwert { $maximum }.
    .mend = Geben Sie { $maximum } oder weniger ein.
spec-too-long = Dieser Text ist länger als { $maximum } Zeichen.
    .mend = Kürzen Sie ihn auf { $maximum } Zeichen.
spec-cleanliness-code = Das ist kein Reinheitscode nach ISO 4406.
    .mend = Drei Ordnungszahlen eingeben, keine größer als die vorige und keine größer als 28, zum Beispiel 18/16/13.
spec-empty = Dieses Feld ist leer.
    .mend = Geben Sie einen Wert ein.
spec-not-text = Das ist kein Text.
    .mend = Setzen Sie den Wert in Anführungszeichen ("...").
spec-not-a-whole-number = Das ist keine ganze Zahl.
    .mend = Geben Sie eine ganze Zahl ein, zum Beispiel 12.
spec-not-a-number = Das ist keine Zahl.
    .mend = Geben Sie eine Zahl ein, zum Beispiel 1.5.
spec-not-yes-or-no = Das ist weder true noch false.
    .mend = Geben Sie true oder false ein.
spec-not-a-list = Das ist keine Liste.
    .mend = Verwenden Sie eine JSON-Liste, zum Beispiel ["eins", "zwei"].
spec-not-an-object = Das ist kein JSON-Objekt.
    .mend = Verwenden Sie ein JSON-Objekt, zum Beispiel { $example }.
spec-not-a-date = Das ist kein Datum.
    .mend = Geben Sie das Datum als JJJJ-MM-TT ein, zum Beispiel 2027-03-31.
spec-not-the-pattern = Dieser Wert hat nicht die verlangte Form.
    .mend = Er muss dem Muster { $pattern } entsprechen.

## An end, the whole assembly, its tightening

spec-enter-size = { $sizing ->
    [pipe] Geben Sie die Nenngröße des Rohrgewindes ein („{ $key }“), zum Beispiel 3/4.
    [tube] Geben Sie den Rohraußendurchmesser in mm ein („{ $key }“), zum Beispiel 12.
    [thread] Geben Sie das Gewinde ein („{ $key }“), zum Beispiel M22x1.5.
   *[dash] Geben Sie die Dash-Größe ein („{ $key }“), zum Beispiel 12.
 }
spec-dash-and-size = Dash-Größe und Größe schließen einander aus.
    .mend = { $enter }
spec-sized-by-dash = Dieser Anschluss wird nach Dash-Größe bezeichnet: { $connection }.
    .mend = { $enter }
spec-not-sized-by-dash = Dieser Anschluss wird nicht nach Dash-Größe bezeichnet: { $connection }.
    .mend = { $enter }
spec-size-of-another-series = Diese Größe nennt eine andere Baureihe als das Ende: { $connection }, Baureihe { $series }.
    .mend = Größe, Anschluss oder Baureihe korrigieren. Gewinde und Druck hängen von der Baureihe ab.
spec-form = Diese Bauform gibt es nicht für den Anschluss { $connection }.
    .mend = Möglich sind: { LIST($forms, style: "or") }.
spec-description = Eine Beschreibung gibt es nur bei einem sonstigen Anschluss („other“).
    .mend = Leeren.
spec-description-missing = Der Anschluss ist nicht beschrieben.
    .mend = Eingeben, was es ist, mit Gewinde, in höchstens 24 einfachen Zeichen („description“), zum Beispiel Block M20x1.5.
spec-description-only = Ein sonstiger Anschluss hat keine Größe.
    .mend = Leeren: Die Beschreibung genügt.
spec-drop-of-straight = Die Bogenhöhe gilt nicht für ein gerades Ende.
    .mend = Löschen Sie sie oder wählen Sie einen Bogen.
spec-clocking-missing = Beide Enden sind Bögen, und der Verdrehwinkel fehlt.
    .mend = Halten Sie die Schlauchleitung so, dass Ende A vorn liegt (Ihnen am nächsten) und Bogen A nach unten zeigt, und blicken Sie längs des Schlauchs in Richtung Ende B. Geben Sie den Winkel gegen den Uhrzeigersinn von Bogen A bis Bogen B ein, 0 bis 359°.
spec-clocking-without-elbows = Ein Verdrehwinkel gilt nur, wenn beide Enden Bögen sind.
    .mend = Löschen Sie ihn.
spec-flats-incomplete = Eine Zahl von Schlüsselflächen braucht Mindestwert, Höchstwert und Ausgangspunkt.
    .mend = Geben Sie alle drei ein.
spec-torque-without-maximum = Das kleinste Anziehdrehmoment ist angegeben, das größte fehlt.
    .mend = Geben Sie das größte Anziehdrehmoment ein.

## Values with a unit

spec-enter-length = Geben Sie eine Länge ein, zum Beispiel 1250, „1250 mm“ oder „49 1/4 in“.
spec-enter-pressure = Geben Sie einen Druck ein, zum Beispiel 207, „207 bar“ oder „3000 psi“.
spec-enter-torque = Geben Sie ein Anziehdrehmoment ein, zum Beispiel 102, „102 Nm“ oder „75 lbf·ft“.
spec-enter-temperature = Geben Sie eine Temperatur ein, zum Beispiel 100, „100 C“ oder „212 F“.
spec-unit-no-number = Das ist keine Zahl.
    .mend = { $enter }
spec-unit-not-finite = Das ist keine endliche Zahl.
    .mend = { $enter }
spec-unit-unreadable = Das ist keine Zahl mit Einheit.
    .mend = { $enter }
spec-unit-over-zero = Hier wird durch null geteilt.
    .mend = { $enter }
spec-unit-bare-fraction = Der Bruch { $fraction } hat keine Einheit.
    .mend = Die Einheit eingeben, zum Beispiel „49 1/4 in“.
spec-unit-comma = Das Komma ist mehrdeutig (Tausender oder Dezimalstellen).
    .mend = Schreiben Sie 1250 oder 1.25.
spec-unit-unknown = Unbekannte Einheit: { $unit }.
    .mend = { $enter }

## Text from a file

spec-not-utf8 = Dieser Text ist nicht in UTF-8. Vielleicht wurde er als Latin-1 oder Windows-1252 gespeichert.
    .mend = Speichern Sie die Datei als UTF-8.
spec-encoding-damaged = Dieser Text beginnt als { $encoding }, ist aber beschädigt.
    .mend = Speichern Sie die Datei als UTF-8.
spec-not-json = In Zeile { $line }, Spalte { $column } ist das JSON ungültig.
    .mend = Prüfen Sie Anführungszeichen, Kommas und Klammern an dieser Stelle.
spec-json-unreadable = Das JSON ist ungültig.
    .mend = Prüfen Sie Anführungszeichen, Kommas und Klammern.
spec-too-deep = Die Daten sind zu tief verschachtelt.
    .mend = Senden Sie nur die Felder der Spezifikation.
spec-number-too-long = Eine Zahl hat zu viele Ziffern.
    .mend = Geben Sie einen realistischen Wert ein.
spec-half-character = Der Text enthält ein halbes Zeichen, das nicht gespeichert werden kann.
    .mend = Geben Sie den Text noch einmal ein.
spec-twice = Dieser Eintrag kommt zweimal vor.
    .mend = Löschen Sie einen davon.

## Files

spec-file-missing = Diese Datei gibt es nicht.
    .mend = Prüfen Sie den Dateinamen.
spec-file-folder = Das ist ein Ordner, keine Datei.
    .mend = Geben Sie den Namen einer Datei an.
spec-file-denied = Der Zugriff wird verweigert.
    .mend = Prüfen Sie die Rechte an der Datei und an ihrem Ordner.
spec-file-disk-full = Die Festplatte ist voll.
    .mend = Schaffen Sie Platz auf der Festplatte.
spec-file-unusable = Die Datei kann nicht verwendet werden ({ $reason }).
    .mend = Prüfen Sie den Pfad und die Festplatte.

## Settings

spec-setting-address = Das ist nicht die Adresse eines Rechners.
    .mend = Verwenden Sie eine wie { $example }.
spec-setting-days = Weniger als { $least } Tage werden nicht angenommen: Ein Tippfehler würde löschen, wer anzurufen ist.
    .mend = { $least } oder mehr eingeben, oder 0, um alles zu behalten.
spec-setting-language = Diese Sprache gibt es nicht.
    .mend = Möglich sind: { LIST($languages, style: "or") }.
