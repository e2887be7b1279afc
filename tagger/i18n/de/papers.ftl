# Papers: the certificate of a proof test, letters about a withdrawal, the call list.

## Captions that several papers share

papers-tag-number = Schildnummer
papers-hose = Schlauch
papers-hose-assembly = Schlauchleitung
papers-machine-position = Maschine, Einbauort
papers-built-on = Hergestellt am
papers-customer = Kunde
papers-with-lot = { $part }, Charge { $lot }

## The certificate

papers-no-proof-test = Für das Schild { $number } ist keine Druckprüfung eingetragen.
    .mend = Zuerst eine Druckprüfung eintragen.
papers-issued-anew = Neu ausgestellt am { $day } nach Berichtigung des Eintrags; ersetzt die vorher ausgestellte Bescheinigung. { LIST($fields) }.
papers-corrected = { $field }: { $new } statt { $old }
papers-field-hose-lot = Schlauchcharge
papers-field-end_a-lot = Armaturencharge, Ende A
papers-field-end_b-lot = Armaturencharge, Ende B
papers-field-note = Notiz
papers-proof-title = Prüfzeugnis der Druckprüfung - Schlauchleitung
papers-proof-file-title = Druckprüfung von { $number }
papers-proof-result-line = { $result ->
        [passed] Schild { $number }: bestanden
        [tested] Schild { $number }: geprüft mit { $pressure }
        [held] Schild { $number }: ZURÜCKGEHALTEN - nicht verwenden
        [outdated] Schild { $number }: VOR DEM VERPRESSEN GEPRÜFT - erneut prüfen
       *[failed] Schild { $number }: NICHT BESTANDEN - nicht verwenden
     }
papers-proof-withdrawn-line = Schild { $number }: GESPERRT - nicht verwenden ({ LIST($reasons) })
papers-proof-crimp-line = Schild { $number }: PRESSMASS AUSSERHALB DER TOLERANZ - nicht verwenden
papers-tested-title = Bescheinigung eines Drucktests - Schlauchleitung
papers-end-a = Ende A
papers-end-b = Ende B
papers-length = Länge
papers-clocking = Verdrehwinkel
papers-working-pressure = Höchster Betriebsdruck
papers-working-pressure-source = Quelle des Betriebsdrucks
papers-tighten-a = Anziehen, Ende A
papers-tighten-b = Anziehen, Ende B
papers-torque = { $torque }, { $basis } ({ $source })
papers-fluid = Medium
papers-temperature = Höchste Temperatur
papers-danger = Achtung
papers-test = Die Prüfung
papers-result = Ergebnis
papers-result-said = { $result ->
        [passed] bestanden
        [tested] geprüft mit { $pressure }
        [held] zurückgehalten
        [outdated] vor dem Verpressen geprüft: Die Prüfung zählt nicht
       *[failed] nicht bestanden
     }
papers-result-why = Bedeutung
papers-rating-given = Betriebsdruck für die Prüfung
papers-rating-given-said = { $pressure }, Quelle: { $source }
papers-allowed = Schriftlich erlaubt von
papers-allowed-said = { $who }, { $day }, { $document }
papers-flushing = Spülung
papers-flushed = { $method }; { $who }, { $day }
papers-pressure = Druck
papers-pressure-required = Gefordert
papers-not-recorded = nicht eingetragen
papers-hold-time = Haltezeit
papers-hold = { $held } s
papers-hold-least = { $held } s (gefordert: mindestens { $least } s)
papers-hold-range = { $held } s (gefordert: { $least } bis { $most } s)
papers-hold-longer = { $held } s (gefordert: { $least } bis { $most } s; länger als gefordert)
papers-medium = Prüfmedium
papers-tested-by = Geprüft von
papers-recorded = Eingetragen am
papers-recorded-at = { $day } { $time } UTC
papers-note = Bemerkung
papers-crimps = Pressmaße
papers-crimp = { $holds ->
        [in] { $measured } mm, gefordert { $low } bis { $high } mm ({ $shell }; { $source }): in der Toleranz
       *[out] { $measured } mm, gefordert { $low } bis { $high } mm ({ $shell }; { $source }): AUSSERHALB DER TOLERANZ
     }
papers-proof-limits = Diese Bescheinigung gibt eine einzige Prüfung dieser Schlauchleitung zum genannten Datum wieder. Über den späteren Zustand sagt sie nichts aus: Prüfen Sie die Schlauchleitung vor dem Gebrauch. Die Angaben der Schlauch- und Armaturenhersteller haben Vorrang.
papers-own-statement = Dies ist die eigene Erklärung von { $shop } über Arbeit und Prüfungen des Betriebs. Es ist kein Abnahmeprüfzeugnis einer unabhängigen Stelle.
papers-chain = Datensätze bis Glied { $head } der Kette. Damit zeigt „tagger audit --head“, ob seitdem einer verändert wurde.
## The fitter's card, in the bag with the hose assembly

papers-card-title = Einbau dieser Schlauchleitung
papers-card-file-title = Einbaukarte { $number }
papers-card-scan = Vor dem Einbau den Code scannen: Die Seite zeigt, ob die Schlauchleitung gesperrt ist oder ein Wert sich seit dem Druck dieser Karte geändert hat.
papers-card-end = { $end }: { $what }
papers-card-screen = { $n }. { $title }
papers-card-screen-end = { $n }. { $title }: Ende { $end }
papers-card-sources = Quellen: { LIST($sources) }
papers-order = Bestellnummer
papers-method = Verfahren
papers-gauge = Manometer
papers-gauge-valid-until = Kalibrierung des Manometers gültig bis
papers-no-batch = Schild { $number } wurde nicht in einer Serie geprüft.
    .mend = Das Prüfzeugnis dieser Schlauchleitung verwenden.
papers-batch-file-title = Druckprüfung, Serie { $batch }
papers-batch-title = Prüfzeugnis der Druckprüfung - Serie von Schlauchleitungen
papers-batch-tested-title = Protokoll eines Drucktests - Serie von Schlauchleitungen
papers-batch-number = Prüfzeugnis { $batch }
papers-batch-result = Druckprüfung bestanden: { $passed } von { $count }
papers-batch-not-all = Nicht alle Schlauchleitungen haben die Druckprüfung bestanden: Lesen Sie unten das Ergebnis jeder einzelnen.
papers-batch-members = Geprüfte Schlauchleitungen: { $count }
papers-batch-crimp = { $holds ->
        [in] { $measured } mm ({ $low } bis { $high })
       *[out] { $measured } mm ({ $low } bis { $high }): AUSSERHALB DER TOLERANZ
     }
papers-batch-withdrawn = GESPERRT - nicht verwenden
papers-batch-void = UNGÜLTIG - nicht verwenden
papers-batch-tested-again = am { $day } erneut geprüft: siehe eigenes Prüfzeugnis
papers-batch-limits = Dieses Zeugnis hält eine Prüfung dieser Schlauchleitungen zum genannten Datum fest. Es beschreibt nicht ihren späteren Zustand: Prüfen Sie jede Schlauchleitung vor dem Einsatz. Die Angaben der Schlauch- und Armaturenhersteller haben Vorrang.

## Letters about a withdrawal

papers-letter-title = Sperrung { $withdrawal }
papers-letter-owner = An den Besitzer dieser Schlauchleitungen
papers-letter-heading = Verwenden Sie die hier aufgeführten Schlauchleitungen nicht
papers-letter-made-from = Sie wurden aus der Schlauchcharge { $lot } gefertigt.
papers-letter-fittings = Sie haben Armaturen der Charge { $lot }.
papers-letter-reason = Sie sind gesperrt. Grund: { $reason }
papers-letter-steps = Setzen Sie die Maschine still und sichern Sie sie gegen Wiedereinschalten. Bauen Sie allen gespeicherten Druck ab, wie es die Betriebsanleitung der Maschine beschreibt. Vergleichen Sie die Schildnummer an jeder Schlauchleitung, nehmen Sie die hier aufgeführten außer Betrieb und rufen Sie uns an: Wir ersetzen sie.
papers-letter-injury = Öl, das unter Druck in die Haut eindringt, ist ein Notfall, auch wenn die Wunde klein ist: Sofort ins Krankenhaus.

## The call list

papers-call-customer = Kunde
papers-call-number = Schildnummer
papers-call-machine = Maschine
papers-call-position = Einbauort
papers-call-hose = Schlauch
papers-call-lots = Chargen
papers-call-built_on = Hergestellt am
papers-call-replaced_by = Ersetzt durch
papers-call-contact = Ansprechpartner
papers-call-phone = Telefon
papers-call-email = E-Mail

## A customer's list read in

papers-list-too-large = Die Datei { $name } ist größer als { $most } MB.
    .mend = In mehrere Listen aufteilen.
papers-list-no-rows = Die Datei { $name } hat keine Datenzeilen.
    .mend = Für jede Spezifikation eine Zeile eintragen.
papers-list-column-not-read = Zur Überschrift „{ $heading }“ ist kein Feld bekannt, und die Spalte enthält Werte.
    .mend = Die Spalte einem Feld zuordnen, auslassen oder aus der Liste löschen.
papers-list-word-not-known = „{ $word }“ ist kein bekannter Begriff.
    .mend = Die Bedeutung wählen. Am ähnlichsten: { LIST($nearest) }.
papers-list-cell-outside = Diese Zelle steht rechts von der Kopfzeile. Ein Dezimalkomma kann einen Wert geteilt haben.
    .mend = Die Zeile prüfen: 49.25 schreiben oder "49,25" in Anführungszeichen setzen und den Rest löschen.
papers-list-too-many-rows = Die Datei { $name } hat mehr als { $most } Zeilen.
    .mend = In mehrere Listen aufteilen.
papers-list-matched-twice = Das Feld { $column } ist zweimal zugeordnet.
    .mend = Jedes Feld einmal zuordnen.
papers-list-damaged = Die Liste wurde bei der Übertragung beschädigt.
    .mend = Die Datei erneut hochladen.

## A tag or a lot that was scanned at the bench

papers-scanned-tag = Spezifikation vom Schild { $number } übernommen.
papers-scanned-tag-withdrawn = Spezifikation vom Schild { $number } übernommen. GESPERRT, nicht verwenden: { $reasons }
papers-scanned-tag-unknown = Das Schild { $number } steht nicht in unseren Datensätzen: Die Spezifikation stammt allein vom Schild. Vor dem Bauen an der Schlauchleitung prüfen.
papers-scanned-tag-differ = Schild { $number }: Schild und Datensatz weichen voneinander ab. Die Spezifikation stammt aus dem Datensatz. Vor dem Bauen klären, was richtig ist.
papers-scanned-tag-differ-withdrawn = Schild { $number }: Schild und Datensatz weichen voneinander ab. Die Spezifikation stammt aus dem Datensatz. Vor dem Bauen klären, was richtig ist. GESPERRT, nicht verwenden: { $reasons }
papers-scanned-tag-damaged = Schild { $number }: Der Code auf dem Schild ist beschädigt. Die Spezifikation stammt aus unserem Datensatz. An der Schlauchleitung prüfen.
papers-scanned-tag-damaged-withdrawn = Schild { $number }: Der Code auf dem Schild ist beschädigt. Die Spezifikation stammt aus unserem Datensatz. An der Schlauchleitung prüfen. GESPERRT, nicht verwenden: { $reasons }
papers-scanned-signature = { $said } Signatur: { $signature }.
papers-scanned-signature-broken = { $said } Signatur: { $signature }. { $why }
papers-scanned-hose-lot = Schlauchcharge { $lot }: { LIST($hoses) }.
papers-scanned-hose-lot-withdrawn = Schlauchcharge { $lot }: { LIST($hoses) }. GESPERRT, nicht verwenden: { $reasons }
papers-scanned-fitting-lot = Armaturencharge { $lot }.
papers-scanned-fitting-lot-withdrawn = Armaturencharge { $lot }. GESPERRT, nicht verwenden: { $reasons }
papers-scanned-unknown = { $text }: erste Verwendung dieser Charge.
papers-scanned-unknown-withdrawn = { $text }: erste Verwendung dieser Charge. GESPERRT, nicht verwenden: { $reasons }
papers-scanned-nothing = Es wurde nichts gescannt. Scannen Sie den Code noch einmal.
papers-scanned-hose = Teilenummer { $part }: { LIST($hoses) }.
papers-scanned-fitting = Artikelnummer { $number }: { $end }.

papers-export-everything = Alles, was das Schildsystem speichert, in offenen Formaten (UTF-8).
papers-export-assemblies = eine Schlauchleitung je Zeile: Nummer, Spezifikation, was die Tabellen damals sagten, was das Schild sagt
papers-export-table = dasselbe als Tabelle; die Spalten der Spezifikation lassen sich als Liste wieder einlesen
papers-export-events = der Verlauf, das Älteste zuerst
papers-export-orders = Bestellanfragen mit ihren Schritten
papers-export-withdrawals = Rückrufe, gültige und aufgehobene
papers-export-recipes = Spezifikationen, die unter einem Namen gespeichert sind
papers-export-crimps = geltende Pressblätter, jedes mit Toleranz und Quelle; ein gemessenes Pressmaß steht in events.jsonl mit der Toleranz, gegen die es gehalten wurde
papers-export-values = was Hersteller über Teile sagen, wie die Werkstatt es führt; auch ersetzte und zurückgezogene Werte
papers-export-fittings = die Armaturen der Werkstatt nach Artikelnummer
papers-export-fitted = Meldungen, dass eine Schlauchleitung eingebaut wurde, mit der Entscheidung der Werkstatt
papers-export-photos = Fotos zu Bestellungen und Meldungen; jedes ist die Datei photos/<id>.jpg
papers-export-left-out = Nicht enthalten: Personen, Geräte, Passwörter und Sitzungen sowie noch nicht gesendete Nachrichten.
papers-export-digits = Die Ziffern eines Schilds sind ohne dieses System lesbar: Sein README beschreibt den Aufbau Bit für Bit.
