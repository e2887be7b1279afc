# Die Werkbank: die Seiten einer Werkstatt nach der Anmeldung.

## Every page

bench-skip = Zum Inhalt springen
bench-navigation = Werkbank
bench-demo = Dies ist eine Vorführung mit erfundenen Daten. Nicht für echte Arbeit verwenden. Anmelden mit dem Namen { $name } und dem Kennwort { $password }.
bench-nav-build = Fertigen
bench-nav-prints = Druckaufträge
bench-nav-find = Suchen
bench-nav-orders = Bestellungen
bench-nav-withdrawn = Gesperrt
bench-nav-lists = Import und Export
bench-nav-figures = Statistik
bench-nav-shop = Einstellungen
bench-nav-waiting = wartend
bench-tag = Schild
bench-go-hint = Schild, Bestellung, Charge ...
bench-top-title = „{ $text }“
bench-top-order = Bestellung { $order }
bench-top-customer = Kunde { $name }
bench-top-machine = Maschine { $name } (Kunde: { $customer })
bench-top-lot = Charge { $lot }: { $count } { $count ->
    [one] Schlauchleitung
   *[other] Schlauchleitungen
 }
bench-top-mistyped = Das ist eine Schildnummer mit einem Tippfehler.
bench-top-nothing = Kein Schild, keine Bestellung, Maschine, Artikelnummer oder Charge und kein Kunde heißt so.
bench-sign-out = Abmelden
bench-sign-out-name = { $name } abmelden
bench-language = Sprache
bench-note-saved = Gespeichert.
bench-note-recorded = Im Verlauf eingetragen.
bench-note-withdrawn = Gesperrt. Die Seiten der Schilder zeigen jetzt eine Warnung.
bench-note-lifted = Sperre aufgehoben und eingetragen.
bench-note-sent = Bestellungen gesendet.
bench-key-ctrl = Strg
bench-key-enter = Eingabe
bench-key-escape = Esc

## Words used on several pages

bench-hose = Schlauch
bench-end_a = Ende A
bench-end_b = Ende B
bench-length = Länge
bench-clocking = Verdrehwinkel
bench-pressure = Druck
bench-working-pressure = Betriebsdruck
bench-built-on = Hergestellt am
bench-place = Kunde, Maschine, Einbauort
bench-for = Für
bench-position = Einbauort
bench-by = Von
bench-when = Wann (UTC)
bench-note = Bemerkung
bench-reason = Grund
bench-status = Status
bench-quantity = Anzahl
bench-qty = Anz.
bench-name = Name
bench-role = Rolle
bench-since = Seit
bench-source = Quelle
bench-printer = Drucker
bench-label = Etikett
bench-tags = Schilder
bench-row = Zeile
bench-details = Einzelheiten
bench-print = Ausdrucken
bench-printed = Gedruckt
bench-not-printed = noch nicht gedruckt
bench-not-recorded = nicht eingetragen
bench-not-specified = nicht angegeben
bench-not-reported = nicht gemeldet
bench-withdrawn = gesperrt
bench-replaced = ersetzt
bench-void = ungültig
bench-replacement-built = Ersatz gefertigt
bench-danger = Gefahr
bench-caution = Vorsicht
bench-record = Eintragen
bench-add = Hinzufügen
bench-save = Speichern
bench-delete = Löschen
bench-fitting-lot = Armaturencharge { $lot }
bench-reel-lot = Schlauchcharge { $lot }
bench-assemblies = { $count } { $count ->
    [one] Schlauchleitung
   *[other] Schlauchleitungen
 }
bench-first-shown = Angezeigt werden die ersten { $shown } von { $all }.
bench-first-shown-all-printed = Angezeigt werden die ersten { $shown } von { $all }; gedruckt werden alle.

## Roles, orders, events, print jobs, withdrawals: one name for each value

bench-role-device = Gerät: liest und druckt
bench-role-builder = Konfektionierer
bench-role-counter = Theke
bench-role-manager = Werkstattleitung
bench-order-received = eingegangen
bench-order-asked = Rückfrage beim Kunden
bench-order-accepted = angenommen
bench-order-building = in Arbeit
bench-order-done = fertig
bench-order-declined = abgelehnt
bench-event-registered = registriert
bench-event-crimped = Pressmaß gemessen
bench-event-flushed = gespült
bench-event-proof_tested = Druckprüfung
bench-event-proof_allowed = Prüfdruck erlaubt
bench-event-printed = Schild gedruckt
bench-event-fitted = eingebaut
bench-event-inspected = geprüft
bench-event-scanned = gescannt
bench-event-ordered = bestellt
bench-event-replaced = ersetzt
bench-event-corrected = berichtigt
bench-event-voided = für ungültig erklärt
bench-event-replacement_built = Ersatz gefertigt
bench-event-removed = von der Maschine abgebaut
bench-event-withdrawn = gesperrt
bench-event-withdrawal_lifted = Sperre aufgehoben
bench-medium-mineral-oil = Mineralöl
bench-medium-water = Wasser
bench-medium-water-with-inhibitor = Wasser mit Korrosionsschutz
bench-medium-air = Luft
bench-medium-nitrogen = Stickstoff
bench-job-waiting = wartet
bench-job-sending = wird gesendet
bench-job-printing = wird gedruckt
bench-job-done = gedruckt
bench-job-failed = fehlgeschlagen
bench-job-unknown = vielleicht gedruckt
bench-job-dropped = abgebrochen
bench-scope-tag = Schild
bench-scope-hose_lot = Schlauchcharge
bench-scope-fitting_lot = Armaturencharge
bench-withdrawn-what = { $scope ->
    [tag] Schild { $value }
    [hose_lot] Schlauchcharge { $value }
   *[fitting_lot] Armaturencharge { $value }
 }
bench-confidence-published = veröffentlicht
bench-confidence-memory = ungeprüft
bench-confidence-shop = von der Werkstatt
bench-reprint-paper-jam = Papierstau
bench-reprint-damaged = Schild beschädigt
bench-reprint-lost = Schild verloren
bench-reprint-second = zweites Schild nötig

## Captions of fields, one for each

bench-field-of-end = { SAY($end, case: "start") }, { $field }
bench-field-hose = Schlauch
bench-field-hose-standard = Schlauchnorm (Aufdruck)
bench-field-hose-dash = Dash-Größe
bench-field-hose-edition = Ausgabe (Aufdruck)
bench-field-hose-part = Artikelnummer des Herstellers (Schlauch)
bench-field-hose-lot = Schlauchcharge
bench-field-lot_reason = Grund für diese Charge
bench-field-correct_reason = Grund der Berichtigung
bench-field-void_reason = Grund der Ungültigkeit
bench-field-changes_considered = Änderung oder Abweichung bedacht
bench-field-end-connection = Anschluss
bench-field-end-size = Größe
bench-field-end-series = Baureihe des Zapfens (S schwer, L leicht)
bench-field-end-form = Bauform
bench-field-end-shape = Ausführung
bench-field-end-angle = Bogenwinkel (°)
bench-field-end-drop_mm = Bogenhöhe
bench-field-end-material = Werkstoff
bench-field-end-hose_dash = Sprunggröße: Nippel für Dash
bench-field-end-lot = Armaturencharge
bench-field-length_mm = Gesamtlänge
bench-field-length_basis = Gemessen
bench-field-length_confirmed = Die Länge stimmt, obwohl sie über 100 m liegt
bench-field-clocking_deg = Verdrehwinkel (°)
bench-field-max_temperature_c = Höchste Temperatur
bench-field-vacuum_bar = Höchster Unterdruck
bench-field-fluid = Medium
bench-field-covers = Schlauchschutz
bench-field-working_pressure = Betriebsdruck
bench-field-working_pressure-value_bar = Betriebsdruck aus anderer Quelle
bench-field-working_pressure-source = Quelle des Betriebsdrucks
bench-field-working_pressure-confirmed = Dieser Druck stimmt, obwohl er über den Tabellen liegt
bench-field-hose-rating-value_bar = Betriebsdruck des Schlauchherstellers
bench-field-hose-rating-source = Quelle des Schlauchwerts
bench-field-hose-rating-fluid = In der Quelle genanntes Medium
bench-field-hose-rating-max_temperature_c = In der Quelle genannte Höchsttemperatur
bench-field-hose-approval-max_temperature_c = Höchsttemperatur der Freigabe
bench-field-hose-approval-source = Quelle der Freigabe
bench-field-end-rating-value_bar = Betriebsdruck des Armaturenherstellers
bench-field-end-rating-source = Quelle des Werts
bench-field-end-rating-fluid = In der Quelle genanntes Medium
bench-field-end-rating-max_temperature_c = In der Quelle genannte Höchsttemperatur
bench-field-keep = Als Wert Ihrer Werkstatt für jede weitere Schlauchleitung behalten
bench-build-asks = Herstellerwerte
bench-field-bend_radius_mm = Mindestbiegeradius
bench-field-note = Bemerkung (öffentlich: sichtbar für alle, die das Schild scannen)
bench-field-count = Anzahl
bench-field-position = Einbauort
bench-field-replaces = Ersetzt Schild
bench-field-order_reference = Bestellnummer
bench-field-built_on = Hergestellt am
bench-field-template = Etikett
bench-field-recipe = Name der Spezifikation
bench-field-number = Schildnummer
bench-field-tag = Schild
bench-field-lot = Schlauch- oder Armaturencharge
bench-field-connection = Anschluss an einem der Enden
bench-field-hose_standard = Schlauchnorm
bench-field-hose_dash = Dash-Größe des Schlauchs
bench-field-dash = Dash-Größe des Schlauchs
bench-field-pressure_min_bar = Druck mindestens
bench-field-pressure_max_bar = Druck höchstens
bench-field-built_from = Hergestellt ab
bench-field-built_to = Hergestellt bis
bench-field-hoses = Schlauchleitungen
bench-field-thread_od = Außengewinde, Außendurchmesser
bench-field-thread_id = Innengewinde, Innendurchmesser
bench-field-tpi = Gänge je Zoll
bench-field-pitch = Oder Steigung in mm
bench-field-hex = Sechskant, Schlüsselweite
bench-field-flank = Flankenwinkel des Gewindes
bench-field-cannot = Nicht messbar
bench-field-nose = Durchmesser der Nase oder Aufnahme
bench-field-series = Baureihe
bench-field-origin = Herkunft der Maschine
bench-field-tube_od = Außendurchmesser des Rohrs
bench-field-flange_od = Durchmesser des Flanschbunds
bench-field-bolt_spacing = Schraubenabstand, lange Seite, Mitte zu Mitte
bench-field-form = Bauform
bench-field-side = Lage des Gewindes
bench-field-swivels = Drehbarkeit des Gewindeteils
bench-field-shape = Gewindeform
bench-field-seals = Art der Dichtung
bench-field-od = Außendurchmesser
bench-field-bore = Innendurchmesser
bench-field-layers = Anzahl der Lagen
bench-field-lay_line = Kennzeichnung
bench-field-seat = Dichtsitz
bench-field-cone = Konus
bench-field-crimp_a = Pressmaß Ende A (mm)
bench-field-crimp_b = Pressmaß Ende B (mm)
bench-field-rating_bar = Betriebsdruck des Herstellers
bench-field-rating_source = Quelle dieses Betriebsdrucks
bench-field-rating_confirmed = Dieser Betriebsdruck stimmt, obwohl er über den Tabellen liegt
bench-field-lower_source = Prüfung mit weniger Druck verlangt von (Kunde oder Norm)
bench-field-allowed_by = Erlaubt von (Hersteller)
bench-field-allowed_on = Datum des Schreibens
bench-field-document = Schreiben
bench-field-shell_a = Presshülse Ende A
bench-field-shell_b = Presshülse Ende B
bench-field-pressure_bar = Druck
bench-field-hold_s = Haltezeit (s)
bench-field-medium = Prüfmedium
bench-field-tester = Geprüft von
bench-field-gauge = Manometer (Nummer)
bench-field-gauge_valid_until = Kalibrierung gültig bis
bench-field-method = Verfahren (Arbeitsanweisung)
bench-field-numbers = Ausgewählte Schlauchleitungen
bench-field-result = Ergebnis
bench-field-kind = Ereignis
bench-field-name = Name
bench-field-password = Kennwort
bench-field-old = Bisheriges Kennwort
bench-field-code = Code aus der Konsole
bench-field-phone_code = Code vom Telefon
bench-field-sign_in = Anmeldung
bench-field-role = Rolle
bench-field-uri = Adresse
bench-field-dpi = Auflösung (dpi)
bench-field-shell = Presshülse
bench-field-diameter_mm = Durchmesser (mm)
bench-field-minus_mm = Minus (mm)
bench-field-plus_mm = Plus (mm)
bench-field-source = Quelle
bench-field-state = Status
bench-field-quantity = Anzahl
bench-field-needed_by = Benötigt bis
bench-field-contact = Kontakt
bench-field-company = Firma
bench-field-phone = Telefon
bench-field-email = E-Mail
bench-field-reference = Kundenreferenz
bench-field-reason = Grund
bench-field-scope = Sperren
bench-field-value = Schild- oder Chargennummer
bench-field-file = Datei
bench-field-list = Liste
bench-field-as = Drucken auf
bench-field-do = Aktion

## A caption before what is wrong with its field

bench-caption = { $field }:

## Problems and refusals

bench-not-found = Nicht gefunden
bench-form-of-files = Listen gibt es als .csv oder .xlsx.
bench-search-refused = Suche nicht möglich
bench-nothing-ordered = Nichts bestellt
bench-not-withdrawn = Nicht gesperrt
bench-no-letters = Keine Schreiben
bench-no-certificate = Kein Prüfzeugnis
bench-event-refused = Nicht eingetragen
bench-go-to-bench = Zur Werkbank
bench-not-a-date = { $value } ist kein gültiges Datum.
    .mend = Datum als JJJJ-MM-TT eingeben, zum Beispiel 2026-03-02.
bench-not-a-dash = { $value } ist keine Dash-Größe.
    .mend = Dash-Größe eingeben, zum Beispiel 12 (3/4 in).
bench-no-hoses = Es ist keine Schlauchleitung ausgewählt.
    .mend = Zu bestellende Schlauchleitungen auswählen.
bench-not-a-quantity = { $value } ist keine gültige Anzahl.
    .mend = 1 bis { $most } eingeben.
bench-future = { $day } liegt in der Zukunft.
    .mend = Herstellungsdatum eingeben oder das Feld leeren.
bench-no-file = Es ist keine Datei ausgewählt.
    .mend = Eine .csv- oder .xlsx-Datei auswählen.
bench-list-damaged = Die Liste wurde bei der Übertragung beschädigt.
    .mend = Datei noch einmal hochladen.
bench-not-an-action = { $value } ist keine Aktion dieser Seite.
    .mend = Seite neu laden.
bench-not-a-role = { $value } ist keine Rolle.
    .mend = Eine von diesen wählen: { LIST($roles, style: "or") }.
bench-old-password-wrong = Das bisherige Kennwort stimmt nicht.
    .mend = Noch einmal versuchen.
bench-sign-in-wrong = Name und Kennwort passen nicht zusammen.
    .mend = Noch einmal versuchen.
bench-too-many-tries = Es gab zu viele Fehlversuche.
    .mend = In { $seconds } s noch einmal versuchen.
bench-too-many-tries-min = Es gab zu viele Fehlversuche.
    .mend = In { $minutes } min noch einmal versuchen.
bench-not-a-resolution = { $value } ist keine gültige Auflösung.
    .mend = 100 bis 1200 dpi eingeben oder leer lassen.
bench-file-one-tag = Eine { $form }-Datei zeigt nur ein Schild.
    .mend = Für mehrere Schilder PDF verwenden.
bench-not-a-printer = { $value } ist kein Drucker dieser Werkstatt.
    .mend = Seite neu laden.
bench-no-result = Das Ergebnis der Prüfung fehlt.
    .mend = Bestanden oder Nicht bestanden wählen.
bench-no-crimp = Es ist kein Durchmesser eingegeben.
    .mend = Mindestens einen gemessenen Durchmesser eingeben.
bench-not-by-hand = { $value } kann nicht von Hand eingetragen werden. Ein Ereignis aus der Liste wählen.
bench-not-a-scope = { $value } kann nicht gesperrt werden. Eines von diesen wählen: { LIST($scopes, style: "or") }.
bench-nothing-affected = Von dieser Sperre ist keine registrierte Schlauchleitung betroffen.

## Sign-in and first start

bench-sign-in = Anmelden
bench-sign-in-first = Erster Start: Konto der Werkstattleitung mit dem Code aus der Konsole anlegen
bench-sign-in-not-needed = Die Seiten der Schilder brauchen keine Anmeldung.
bench-find-tag = Schild suchen
bench-first = Erster Start
bench-first-hint = Noch keine Benutzer. Die Konsole, in der der Server gestartet wurde, zeigt einen Einmalcode.
bench-first-name = Ihr Name
bench-first-password = Kennwort (mindestens 12 Zeichen)
bench-first-create = Konto der Werkstattleitung anlegen

## Build

bench-build = Fertigen
bench-build-for-order = Fertigen für Bestellung { $order }
bench-build-changes = Änderungen: { $changes }
bench-build-no-changes = Wie bisher, keine Änderungen.
bench-build-customer = Kunde: { $customer }.
bench-build-reference = Kundenreferenz: { $reference }.
bench-build-wanted = Anzahl: { $count }.
bench-build-needed = Benötigt bis: { $day }.
bench-build-show-order = Bestellung zeigen
bench-build-nearest-tag = (am Schild)
bench-build-standard-hint = R2, 2SN ...
bench-build-edition-hint = S oder Jahr
bench-build-as-hose = wie Schlauch
bench-build-drop-hint = mm oder 2 1/4 in
bench-build-length-hint = 1250; 49 1/4 in
bench-build-clocking-hint = 0 bis 359
bench-build-temperature-hint = 100; 212 F
bench-build-pressure-hint = 172 oder 2500 psi
bench-build-source-hint = Datenblatt, Zeichnung ...
bench-build-identify = Durch Messen bestimmen
bench-build-straight = gerade
bench-build-elbow = { $angle }-Bogen
bench-build-other-angle = anderer Winkel
bench-build-same = Wie Ende A
bench-build-connection = { SAY($connection, case: "short") }
bench-build-choose = Auswählen
bench-build-missing = Nicht registriert. Es fehlt noch:
bench-build-lot-no-reason = Grund wählen
bench-build-length-and-clocking = Länge und Verdrehwinkel
bench-build-dial = Verdrehwinkel von Ende B
bench-build-dial-unset = nicht eingestellt
bench-build-clockwise = Ihre Werkstatt zählt den Winkel im Uhrzeigersinn ab 12 Uhr. Schild und Datensatz zeigen den genormten Winkel (360° minus Ihrem).
bench-build-counter-clockwise = Die Schlauchleitung so halten, dass Ende A Ihnen am nächsten ist und Bogen A nach unten zeigt. Am Schlauch entlang zum Ende B blicken und gegen den Uhrzeigersinn messen.
bench-build-turn-drawing = Die Zeichnung ziehen oder die Pfeiltasten benutzen.
bench-build-customer-and-quantity = Kunde und Anzahl
bench-build-more = Mehr: Schlauchschutz, Medium, Temperatur, Werkstoff, Sprunggröße, Bemerkung
bench-build-register = Registrieren und drucken
bench-build-clear = Formular leeren
bench-build-recipes = Gespeicherte Spezifikationen: diese speichern oder mit einer beginnen
bench-build-save-recipe = Speichern
bench-build-recipe-replace = Gespeicherte Spezifikation ersetzen
bench-build-updating = Wird aktualisiert ...
bench-build-out-of-date = Nicht aktuell.
bench-build-unanswered = Keine Antwort vom Server: Die Werte unten gehören zu den vorherigen Eingaben. Neuer Versuch alle paar Sekunden.
bench-close = Schließen

## What the build page shows of a spec

bench-view-ends = Die Schlauchleitung von der Seite, Ende A links
bench-view-tag-picture = Das Schild, wie es gedruckt wird; die Nummer wird beim Registrieren vergeben
bench-view-rating = Zulässige Werte
bench-view-limited = Begrenzt durch { SAY($part, case: "acc") }.
bench-view-sources = Woher kommt das
bench-view-tolerance = Toleranz: +{ $plus } / -{ $minus } mm
bench-view-no-tolerance = Toleranz unbekannt
bench-view-bend = Mindestbiegeradius
bench-view-ask-hose-manufacturer = nicht bekannt: Wert des Schlauchherstellers verwenden
bench-view-cold = Niedrigste Temperatur
bench-view-proof = Prüfdruck
bench-view-clocking-tolerance = Toleranz: ± { $angle }
bench-view-ordered = Vergleich mit der Bestellung
bench-view-instead = Vergleich mit dem ersetzten Schild
bench-view-notes = { $count } { $count ->
    [one] Hinweis
   *[other] Hinweise
 }
bench-view-tag = Das Schild
bench-view-sample = Musternummer. Die echte Nummer wird beim Registrieren vergeben.
bench-view-needed = Noch nötig
bench-build-jump = { $size } { $connection } ist für Schlauch { LIST($usual, style: "or") } gemacht, der Schlauch ist aber -{ $hose }.
    .mend = Bei einer Sprunggröße { $hose } unter „{ bench-field-end-hose_dash }“ eingeben. Sonst die Größe berichtigen.
bench-build-jump-use = Es ist eine Sprunggröße: { $dash } verwenden

## Identify

bench-identify = Ende bestimmen
bench-look-keys = Tasten: 1 bis 9 wählen ein Bild, 0 ist „nicht erkennbar“.
bench-identify-button = Bestimmen
bench-identify-not-sure = Weiß nicht
bench-identify-seat = { $seat ->
    [face] Stirnfläche mit O-Ring
    [boss] O-Ring unter dem Sechskant
    [flat] flacher Dichtsitz
    [taper] kein Dichtsitz, kegeliges Gewinde
   *[degrees] { $seat }°
 }
bench-identify-cone-outside = steht vor wie eine Nase
bench-identify-cone-inside = liegt innen wie ein Trichter
bench-identify-flank = { $angle }°
bench-identify-series = { $series ->
    [S] schwer (S)
   *[L] leicht (L)
 }
bench-identify-cannot = Kann ich nicht messen
bench-identify-hint = { $example } oder 1 1/16 in
bench-identify-advice = Den Messschieber schräg zum Gewinde halten. Dichtsitze mit 37° und 45° haben in mehreren Größen das gleiche Gewinde, dichten aber nicht miteinander: eine Winkellehre verwenden.
bench-identify-measure-next = Als Nächstes messen:
bench-identify-possible = Mögliche Anschlüsse, der wahrscheinlichste zuerst
bench-identify-likelihood = Wahrscheinlichkeit
bench-identify-percent = { $percent } %
bench-identify-why = Warum
bench-identify-use-for = Verwenden für
bench-identify-differs = Abweichungen:
bench-identify-look-alike = Verwechslungsgefahr:

## Printing

bench-run-registered = { $count } { $count ->
    [one] Schild
   *[other] Schilder
 } registriert
bench-run-blocked = Dieses Schild nicht drucken.
bench-run-untested = Druckprüfung noch nicht bestanden: { $count }. Dafür lässt sich nur die Laufkarte drucken; die Schilder nach bestandener Druckprüfung drucken.
bench-batch-title = Pressmaße und Druckprüfung
bench-batch-heading = Pressmaße und Druckprüfung von { $count } { $count ->
        [one] Schlauchleitung
       *[other] Schlauchleitungen
     }
bench-batch-test = Prüfen
bench-batch-crimp-save = Pressmaße speichern
bench-batch-pass = Auswahl: bestanden
bench-batch-fail = Auswahl: nicht bestanden
bench-batch-required = Erforderlicher Prüfdruck: { $pressure }, Haltezeit { $low } bis { $high } s ({ $count } der Serie).
bench-batch-unknown = Erforderlicher Prüfdruck für { $count } der Serie nicht bekannt: getrennt erfassen oder den Betriebsdruck des Herstellers mit Quelle eingeben.
bench-batch-certificate = Prüfzeugnis der Serie { $batch }
bench-batch-each = Einzelne Prüfzeugnisse
bench-batch-hint = Die Prüfung wird für alle ausgewählten Schlauchleitungen erfasst oder für keine. Bei einer undichten das Häkchen entfernen und sie als nicht bestanden erfassen.
bench-batch-untested = nicht geprüft
bench-batch-same-hose = Die Serie hat mehrere Schläuche: die Pressmaße im Eintrag jeder Schlauchleitung erfassen.
bench-batch-not-of-run = Das Schild { $number } gehört nicht zu dieser Serie.
    .mend = Die Prüfung in seinem eigenen Eintrag erfassen.
bench-customer-none = Keine Schlauchleitung und keine Bestellung nennt den Kunden „{ $name }“.
    .mend = Die Schreibweise prüfen oder die Suche verwenden.
bench-customer-contacts = Ansprechpartner
bench-customer-no-contacts = Kein Ansprechpartner erfasst. Sie kommen mit den Bestellungen.
bench-customer-machines = Maschinen
bench-customer-export = Kundendaten ausgeben
bench-customer-erase = Kontakt löschen
bench-customer-erase-ask = Diesen Kontakt aus allen Bestellungen löschen? Bestellungen, Schlauchleitungen und Schilder bleiben. Das lässt sich nicht rückgängig machen.
bench-run-job = Druckauftrag { $job } auf { $printer }: { $state }.
bench-run-check-job = Vor dem erneuten Drucken dieser Schilder prüfen.
bench-run-show-job = Druckauftrag zeigen
bench-run-sent-before =
    { $count ->
        [one] Dieses Schild wurde schon gedruckt oder an einen Drucker gesendet. Noch einmal drucken?
       *[other] { $count } dieser Schilder wurden schon gedruckt oder an einen Drucker gesendet. Noch einmal drucken?
    }
bench-run-reason = Grund für den Nachdruck
bench-run-only-new = Nur ungedruckte Schilder ({ $count })
bench-run-print-on = Drucken auf { $printer }
bench-run-reprint-on = Nachdrucken auf { $printer }
bench-run-print-pdf = Drucken (PDF)
bench-run-reprint-pdf = Nachdrucken (PDF)
bench-run-png = Als PNG speichern
bench-run-svg = Platte als SVG
bench-run-dxf = Platte als DXF
bench-run-next = Neue Fertigung
bench-run-counted = Drucke und Nachdrucke werden im Verlauf jedes Schilds eingetragen.
bench-run-last-first = Der zuletzt benutzte Drucker steht zuerst.
bench-run-loaded = Etiketten in { $printer }: { $label }.
bench-run-assemblies = Registrierte Schlauchleitungen
bench-prints-job = Auftrag
bench-prints-job-number = Auftrag { $job }
bench-prints-no-printer = Keine Drucker eingerichtet. Schilder werden als PDF oder PNG gedruckt. Die Werkstattleitung kann in den Einstellungen Netzwerkdrucker hinzufügen.
bench-prints-active = Aktive Aufträge und solche, die eine Entscheidung brauchen
bench-prints-none = Keine aktiven Druckaufträge.
bench-prints-finished = Abgeschlossen
bench-prints-title = Druckauftrag { $job }
bench-prints-heading = Druckauftrag { $job } auf { $printer }: { $count } { $count ->
    [one] Schild
   *[other] Schilder
 }
bench-prints-state = Status des Druckauftrags
bench-prints-back = Zurück zu den Schildern
bench-prints-refresh = Aktualisieren
bench-prints-label = Etikett: { $label }.
bench-prints-reason = Grund für den Nachdruck: { $reason }.
bench-prints-requested = Angefordert { $moment } UTC.
bench-prints-requested-by = Angefordert { $moment } UTC von { $name }.
bench-prints-counts = Ein Schild gilt als gedruckt, sobald der Drucker es annimmt, auch wenn das Ergebnis nicht bekannt ist.
bench-prints-tags = Schilder in diesem Auftrag
bench-state-waiting = Wartet auf { $printer }.
bench-state-sending = Wird an { $printer } gesendet.
bench-state-printing = Von { $printer } als Auftrag { $job } angenommen.
bench-state-done = { $printer } hat den Auftrag gedruckt.
bench-state-done-by = { $printer } hat den Auftrag gedruckt (bestätigt von { $name }).
bench-state-failed = { $printer } hat diesen Auftrag nicht gedruckt.
bench-state-failed-partly = { $printer } hat nicht alle Schilder gedruckt.
bench-state-unknown = Vielleicht wurde er gedruckt. { $printer } prüfen, dann erneut senden oder als gedruckt markieren.
bench-state-dropped = Abgebrochen.
bench-state-dropped-by = Abgebrochen von { $name }.
bench-state-attempts = { $count }-mal gesendet.
bench-state-send-again = Erneut senden
bench-state-mark-printed = Als gedruckt markieren
bench-state-cancel = Auftrag abbrechen
bench-state-cancel-ask = Diesen Druckauftrag abbrechen? Die Schilder können später gedruckt werden.

## A tag's record

bench-record-title = Schild { $number }
bench-record-withdrawn = Gesperrt: nicht verwenden.
bench-record-signature = Signatur des gescannten Schilds: { $said }
bench-record-blocked = Blockiert: dieses Schild nicht drucken.
bench-record-replaced-by = Ersetzt durch
bench-record-replacement-built = Ein Ersatz ist gefertigt. Sein Einbau ist nicht erfasst:
bench-record-to-be-fitted = Dieser Ersatz ist gefertigt. „Eingebaut“ erfassen, sobald er an der Maschine ist. Bis dahin bleibt in Gebrauch:
bench-record-assembly = Schlauchleitung
bench-record-replaces = Ersetzt
bench-record-order = Bestellung
bench-record-reprint = { $count ->
    [one] Nachdrucken (bisher { $count } Druck)
   *[other] Nachdrucken (bisher { $count } Drucke)
 }
bench-record-build-replacement = Ersatz fertigen
bench-record-build-copy = Gleiche fertigen
bench-record-phone-page = Seite fürs Telefon zeigen
bench-record-do-not-use = Schild „Nicht verwenden“ drucken
bench-record-history = Verlauf
bench-record-event = Ereignis
bench-record-proof-line = { $pressure }, { $hold } s, { $medium }, { $tester }
bench-record-crimp-in = Ende { $end }: { $measured } mm, innerhalb { $low } bis { $high } mm
bench-record-crimp-out = Ende { $end }: { $measured } mm, außerhalb { $low } bis { $high } mm
bench-record-printed-on = Etikett: { $label }. Drucker: { $printer }.
bench-record-printed-as = Etikett: { $label }. Datei: { $form }.
bench-record-printed-label = Etikett: { $label }.
bench-record-crimp = Pressmaß
bench-record-crimp-end = Ende { $end } (mm)
bench-record-crimp-shell = Presshülse, Ende { $end }
bench-record-crimp-choice = { $shell }: { $diameter } +{ $plus } -{ $minus } mm ({ $source })
bench-record-crimp-save = Pressmaß eintragen
bench-record-crimp-none = Kein Pressmaß für { $hose } hinterlegt. Die Werkstattleitung kann es in den Einstellungen hinzufügen, nach der Tabelle des Armaturenherstellers.
bench-record-proof = Druckprüfung
bench-record-proof-danger = Gespeicherter Druck kann töten oder verletzen.
bench-record-proof-care = Vor der Prüfung vollständig entlüften, hinter der Schutzvorrichtung bleiben und die Anleitung des Prüfstandherstellers sowie die örtlichen Vorschriften befolgen.
bench-record-proof-required = Geforderter Prüfdruck: { $pressure }, Haltezeit { $low } bis { $high } s.
bench-record-proof-unknown = Geforderter Prüfdruck nicht bekannt: Zuerst wird der Betriebsdruck des Herstellers gebraucht. Haltezeit { $low } bis { $high } s.
bench-record-proof-ask-rating = Nicht bekannt oder ungeprüft: { LIST($parts) }. Mit der Prüfung den Betriebsdruck des Herstellers und seine Quelle eingeben.
bench-record-proof-result = { $result ->
        [passed] Druckprüfung bestanden
        [tested] Geprüft, keine vollständige Druckprüfung
        [held] Zurückgehalten: nicht verwenden
        [outdated] Vor dem Verpressen geprüft: erneut prüfen
       *[failed] Nicht bestanden
     }
bench-record-proof-slip = Über dem Mindestberstdruck von { $burst }: Wert und Einheit prüfen.
bench-record-proof-over = Über { $most }: Die Schlauchleitung wird zurückgehalten, bis die Hersteller es schriftlich erlauben.
bench-record-proof-no-rating = Bevor eine Prüfung bestanden werden kann, wird der Betriebsdruck des Herstellers gebraucht.
bench-record-proof-low = Weniger als die geforderten { $called }: keine vollständige Druckprüfung.
bench-record-proof-enough = Genug für die Druckprüfung.
bench-record-lower-hint = Beispiel: Kundenzeichnung 4711
bench-record-allow = Schriftliche Erlaubnis der Hersteller
bench-record-allow-save = Erlaubnis eintragen
bench-record-allow-who = Die Werkstattleitung kann die schriftliche Erlaubnis der Hersteller eintragen.
bench-record-allowed-line = { $who }, { $day }, { $document }
bench-record-source = Quelle: { $source }
bench-record-pressure-hint = bar oder psi
bench-record-pass = Bestanden
bench-record-fail = Nicht bestanden
bench-record-fail-ask = Prüfung als nicht bestanden eintragen? Das Schild wird dann blockiert.
bench-record-certificate = Prüfzeugnis (PDF)
bench-record-card = Einbaukarte (PDF)
bench-record-no-card = Keine Einbaukarte für diese Schlauchleitung
bench-record-lot-reason = Die Schlauchcharge ist als anderer Schlauch bekannt. Grund: { $reason }
bench-record-void = UNGÜLTIG, nicht einbauen.
bench-record-slips = Eintrag berichtigen oder für ungültig erklären
bench-record-correct = Eintrag berichtigen
bench-record-correct-save = Berichtigung speichern
bench-record-corrected = { $field }: { $old } → { $new }.
bench-record-void-title = Eintrag für ungültig erklären
bench-record-void-hint = Nur solange das Schild nie gescannt und die Schlauchleitung weder eingebaut noch druckgeprüft noch übergeben wurde. Danach sperren.
bench-record-void-ask = Diesen Eintrag für ungültig erklären? Die Schlauchleitung darf nicht eingebaut werden.
bench-record-void-save = Für ungültig erklären
bench-record-change-made = Gewünschte Änderung: „{ $changes }“. Geändert:
bench-record-change-considered = Gewünschte Änderung: „{ $changes }“. Berücksichtigt, nichts eingegeben.
bench-record-add-event = Zum Verlauf hinzufügen
bench-record-withdraw = Sperren ...

## Find, machines

bench-find = Suchen
bench-find-number-hint = oder ein Teil
bench-find-pressure-hint = bar oder psi
bench-find-any = beliebig
bench-find-printed-yes = gedruckt
bench-find-printed-no = nicht gedruckt
bench-find-withdrawn-yes = gesperrt
bench-find-withdrawn-no = nicht gesperrt
bench-find-clear = Leeren
bench-find-older = Ältere
bench-machine-title = Maschine { $machine }
bench-machine-none = Keine Maschine
bench-machine-installed = Eingebaute Schlauchleitungen: { $count }, nach Einbauort
bench-machine-order = Bestellen
bench-machine-order-one = { $number } bestellen
bench-machine-order-selected = Ausgewählte Schlauchleitungen bestellen
bench-machine-order-button = Auswahl bestellen
bench-machine-empty = Für diese Maschine sind keine Schlauchleitungen eingetragen.

## Orders

bench-orders-title = Bestellungen
bench-orders-open-only = Nur offene
bench-orders-all = Alle zeigen
bench-orders-order = Bestellung
bench-orders-received = Eingegangen
bench-orders-needed = Benötigt bis
bench-orders-from = Von
bench-orders-action = Aktion
bench-orders-reference = Kundenreferenz: { $reference }
bench-orders-no-name = ohne Namen
bench-orders-what = { $hose }, { $length }
bench-orders-build = Fertigen
bench-orders-none = Keine offenen Bestellungen. Kunden senden sie von den Seiten der Schilder.
bench-order-title = Bestellung { $order }
bench-order-heading = Bestellung
bench-order-details = Angaben zur Bestellung
bench-order-withdrawn = Schild einer gesperrten Schlauchleitung ({ LIST($reasons) }): nach ihrer Spezifikation neu fertigen. Ihre Chargen werden nicht übernommen. Zuerst klären, ob dieselben Teile wieder verwendet werden dürfen.
bench-order-from-tag = Von Schild
bench-order-foreign-tag = { $number } (nicht in unseren Datensätzen; Spezifikation vom Schild gelesen)
bench-order-no-tag = keines
bench-order-reference = Kundenreferenz
bench-order-contact = Kontakt
bench-order-built = Für diese Bestellung gefertigt:
bench-order-answer = Antworten
bench-order-message = Nachricht an den Kunden (bei Rückfragen nötig)
bench-order-verb-accepted = Bestellung annehmen
bench-order-verb-asked = Kunden fragen
bench-order-verb-declined = Bestellung ablehnen
bench-order-verb-done = Als fertig markieren
bench-order-hint = Der Kunde sieht Status und Nachricht auf der Seite der Bestellung.

## Withdrawals

bench-withdrawn-title = Gesperrt: nicht verwenden
bench-withdrawn-state = Gesperrt
bench-withdrawn-lifted = Aufgehoben
bench-withdrawn-lifted-because = Grund der Aufhebung: { $reason }
bench-withdrawn-lifted-on = Aufgehoben am { $day }.
bench-withdrawn-lifted-on-by = Aufgehoben am { $day } von { $name }.
bench-withdrawn-affected = Betroffene Leitungen und Kunden
bench-withdrawn-lift-this = Diese Sperre aufheben ...
bench-withdrawn-lift-reason = Grund der Aufhebung
bench-withdrawn-lift = Sperre aufheben
bench-withdrawn-none = Nichts ist gesperrt.
bench-withdrawn-new = Sperren
bench-withdrawn-show = Betroffene zeigen
bench-withdrawn-count = { $count ->
    [one] { $count } registrierte Schlauchleitung ist betroffen.
   *[other] { $count } registrierte Schlauchleitungen sind betroffen.
 }
bench-withdrawn-customers = Kunden: { $count }.
bench-withdrawn-reason = Grund (steht bei jedem Scan zuerst)
bench-withdrawn-seconds = Auf Telefonen geöffnete Seiten zeigen es nach höchstens { $count } Sekunden.
bench-withdrawn-lot-closed = Aus dieser Charge können keine weiteren Schlauchleitungen registriert werden.
bench-withdrawn-call-list = Kundenliste (CSV)
bench-withdrawn-call = Wen anrufen
bench-withdrawn-letters = Schreiben (PDF)

## Import and export

bench-lists-import = Liste importieren
bench-lists-how = CSV oder XLSX, eine Zeile je Spezifikation. Spalten zuordnen, die Probleme in den Zellen prüfen, dann die ganze Liste registrieren. Wenn eine Zeile fehlerhaft ist, wird nichts registriert.
bench-lists-file = Datei, höchstens 5 MB
bench-lists-read = Importieren
bench-lists-template = Vorlage ({ $form })
bench-lists-columns = Zulässige Spalten
bench-lists-export = Export
bench-lists-all = Alle Schlauchleitungen ({ $form })
bench-lists-everything = Alles (ZIP)
bench-lists-epcis = Verlauf als EPCIS 2.0
bench-lists-formats = Die ZIP-Datei enthält JSON Lines und CSV. EPCIS ist eine offene GS1-Norm, die Großkunden verwenden.
bench-lists-unprinted = Registriert, noch nicht gedruckt
bench-lists-tags = { $count } { $count ->
    [one] Schild
   *[other] Schilder
 }
bench-match-title = Spalten zuordnen
bench-match-rows = { $name }: { $count } { $count ->
    [one] Zeile
   *[other] Zeilen
 }
bench-match-problems = { $count } { $count ->
    [one] Problem
   *[other] Probleme
 }
bench-match-nothing = Es wurde nichts registriert. Liste korrigieren und erneut importieren, oder die Spalten anders zuordnen.
bench-match-by-cell = Probleme nach Zelle
bench-match-also = { $count ->
    [one] Auch in { $first }.
   *[other] Auch in { $count } anderen Zellen, { $first } bis { $last }.
 }
bench-match-cell = Zelle
bench-match-column = Spalte
bench-match-value = Wert
bench-match-problem = Problem
bench-match-fix = Abhilfe
bench-match-first-problems = Die ersten { $count } werden gezeigt.
bench-match-good = Die Prüfung hat kein Problem gefunden.
bench-match-found = Zeilen: { $rows }. Schlauchleitungen: { $count }. Noch ist nichts registriert.
bench-match-register = { $count } registrieren und drucken
bench-match-preview = Vorschau
bench-match-cautions = { $count } { $count ->
    [one] Vorsichtshinweis
   *[other] Vorsichtshinweise
 }
bench-match-matched = Zugeordnete Spalten
bench-match-theirs = Spalte der Datei
bench-match-sample = Beispielzeilen
bench-match-ours = Feld
bench-match-unit = Einheit aus der Überschrift: { $unit }
bench-match-words = Begriffe der Liste
bench-match-words-hint = So wird jeder Begriff gelesen. Bei anderer Bedeutung ändern und die Liste erneut prüfen.
bench-match-word-for = Bedeutung von „{ $word }“
bench-match-word-none = Bedeutung wählen
bench-match-word-means = Gelesen als
bench-match-no-heading = (ohne Überschrift)
bench-match-field-for = Feld für { $column }
bench-match-field-for-number = Feld für Spalte { $number }
bench-match-leave-out = nicht importieren
bench-match-left-out-columns = Nicht gelesen: { LIST($columns) }. Aus diesen Spalten wird nichts eingetragen.
bench-match-check = Prüfen
bench-match-another = Andere Datei

## Statistics

bench-figures = Statistik
bench-figures-title = Statistik der letzten { $days } Tage
bench-figures-period = Zeitraum
bench-figures-days = { $days } Tage
bench-figures-year = 1 Jahr
bench-figures-registered = Registrierte Schlauchleitungen
bench-figures-printed = Gedruckte Schilder
bench-figures-reprints = { $count } { $count ->
    [one] Nachdruck
   *[other] Nachdrucke
 }
bench-figures-scanned = Scans
bench-figures-orders = Bestellungen
bench-figures-ordered = Bestellungen nach Scan
bench-figures-from-tags = { $count } von einem gescannten Schild
bench-figures-plot = { $title }: { $count } vom { $from } bis { $to }, höchstens { $top } { $span ->
    [week] je Woche
   *[day] täglich
 }
bench-figures-bar = { $day }: { $count }
bench-figures-oldest = Älteste Schlauchleitungen im Einsatz (laut Datensätzen)
bench-figures-guidance = Richtwert.
bench-figures-next = Nächster empfohlener Termin
bench-figures-next-date = { $day }: { $rule }
bench-figures-past = alle Termine überschritten
bench-figures-sources = Quellen der Termine
bench-figures-rule = { $rule } Quelle: { $source } ({ $confidence })

## Settings

bench-shop-token = Token für { $device }.
bench-shop-token-once = Jetzt in das Gerät kopieren. Er wird nicht noch einmal angezeigt.
bench-shop-proxy = Anfragen kommen über { $address } im Namen anderer Adressen, und TAGGER_TRUSTED_PROXIES nennt sie nicht.
bench-shop-proxy-mend = Ist es Ihr Proxy, dann TAGGER_TRUSTED_PROXIES={ $address } setzen: Bis dahin zählen alle Besucher als einer, und einer von ihnen kann die Grenzen aller aufbrauchen. Haben Sie keinen Proxy, dann sendet jemand eine falsche Adresse; ihr wird nicht geglaubt.
bench-shop-undelivered = Nicht zugestellte Nachrichten
bench-shop-undelivered-hint = Benachrichtigungen zu Bestellungen. Der Versand wird in Abständen von höchstens sechs Stunden wiederholt. Die gezeigte Ursache beheben.
bench-shop-to = An
bench-shop-tries = Versuche
bench-shop-people = Personen
bench-shop-sign-in = Anmeldung
bench-shop-blocked = Anmeldung deaktiviert
bench-shop-role-of = Rolle von { $name }
bench-shop-set-role = Rolle setzen
bench-shop-everywhere = Überall abmelden
bench-shop-disable = Anmeldung deaktivieren
bench-shop-disable-ask = Anmeldung von { $name } deaktivieren?
bench-shop-enable = Anmeldung aktivieren
bench-shop-new-password = Neues Kennwort ...
bench-shop-new-password-for = Neues Kennwort für { $name }
bench-shop-set-password = Kennwort setzen
bench-shop-add-person = Person hinzufügen
bench-shop-initial-password = Anfangskennwort
bench-shop-roles = Konfektionierer: fertigt, prüft und druckt. Theke: beantwortet auch Bestellungen, sperrt und importiert Listen. Werkstattleitung: hebt auch Sperren auf, sieht die Statistik und ändert die Einstellungen.
bench-shop-devices = Geräte und Programme
bench-shop-device = Gerät
bench-shop-device-role = Rolle des Geräts
bench-shop-token-head = Token
bench-shop-revoked = widerrufen
bench-shop-revoke = Widerrufen
bench-shop-create-token = Token anlegen
bench-shop-api = JSON-API für Geräte und Programme
bench-shop-values = Herstellerwerte
bench-shop-values-hint = Beim Bauen behalten, für jede weitere Schlauchleitung. Ein zurückgezogener Wert wird nicht mehr verwendet und bleibt in dieser Liste.
bench-shop-value-withdraw = Zurückziehen
bench-overrated = Über den heutigen Werten
bench-overrated-hint = Der Druck auf diesen Schildern liegt über dem, was die heutigen Tabellen zulassen. Es gilt der niedrigere Wert: Sagen Sie es dem, der die Schlauchleitung benutzt.
bench-overrated-none = Keine registrierte Schlauchleitung liegt über den heutigen Werten.
bench-shop-crimp-diameter = Durchmesser
bench-shop-crimp-band = { $diameter } +{ $plus } -{ $minus } mm
bench-shop-recipes = Gespeicherte Spezifikationen
bench-shop-recipe-delete-ask = Gespeicherte Spezifikation { $name } löschen?
bench-shop-keep = Daten von Personen
bench-shop-keep-hint = Kontakte erledigter Bestellungen, Fotos und Namen in entschiedenen Einbaumeldungen werden nach diesen Tagen gelöscht; wer wegen einer Sperrung anzurufen ist, bleibt. Die Einträge und die Historie der Schlauchleitungen bleiben. Die Tage sind Einstellungen des Servers. Kopien von vorher enthalten das Gelöschte noch.
bench-shop-keep-contacts = Kontakte
bench-shop-keep-photos = Fotos
bench-shop-keep-reports = Namen in Einbaumeldungen
bench-shop-keep-days = { $days ->
        [0] für immer aufbewahrt
       *[other] { $days } Tage; jetzt zu löschen: { $due }
     }
bench-shop-keep-erase = Jetzt löschen
bench-shop-keep-ask = Löschen, was lange genug aufbewahrt wurde? Das lässt sich nicht rückgängig machen.
bench-shop-no-recipes = Keine gespeicherten Spezifikationen. Auf der Seite zum Fertigen eine speichern.
bench-shop-me = Mein Kennwort und meine Sitzungen
bench-shop-printers = Drucker
bench-shop-no-printers = Keine Drucker. Schilder werden als PDF oder PNG gedruckt.
bench-shop-label-loaded = Eingelegtes Etikett
bench-shop-label-varies = wechselt
bench-shop-add-printer = Netzwerkdrucker hinzufügen
bench-shop-printer-default = wie Drucker
bench-shop-check-printer = Prüfen und hinzufügen
bench-shop-printer-hint = Jeder Drucker, der IPP mit PDF oder PWG Raster unterstützt. Der Server verbindet sich mit dieser Adresse, daher kann nur die Werkstattleitung Drucker hinzufügen.
bench-printer-title = Drucker { $name }
bench-printer-status = Aktueller Status des Druckers
bench-printer-model = Modell
bench-printer-state-idle = bereit
bench-printer-state-processing = beschäftigt
bench-printer-state-stopped = angehalten
bench-printer-refuses = Nimmt keine Aufträge an.
bench-printer-formats = Formate
bench-printer-no-format = weder PDF noch PWG Raster
bench-printer-media = Eingelegtes Material
bench-printer-settings = Einstellungen des Druckers
bench-printer-added = Hinzugefügt
bench-printer-check = Erneut prüfen
bench-printer-back = Zurück zu den Einstellungen
bench-printer-remove = Entfernen
bench-printer-remove-ask = { $name } entfernen? Wartende Aufträge werden nicht gedruckt.
bench-printer-change = Um Adresse, Auflösung oder Etikett zu ändern, den Drucker entfernen und unter demselben Namen wieder hinzufügen.
bench-me-new-password = Neues Kennwort
bench-me-new-password-long = Neues Kennwort (mindestens 12 Zeichen)
bench-me-change = Kennwort ändern und überall abmelden
bench-me-sign-out-this = Auf diesem Gerät abmelden

## JSON API

bench-api-title = JSON-API
bench-api-openapi = Maschinenlesbare Beschreibung (OpenAPI)
bench-api-token = Ein Geräte-Token (in den Einstellungen angelegt) im Header senden:
bench-api-errors = Fehler kommen als application/problem+json (RFC 9457) mit dem Problem jedes Felds. Ein POST mit dem Header Idempotency-Key kann gefahrlos wiederholt werden.
bench-api-verb = Verb
bench-api-address = Adresse
bench-api-purpose = Zweck
bench-api-parameters = Parameter
## The shop's fittings

bench-field-end-fitting = Artikelnummer
bench-build-fitting-hint = scannen ...
bench-field-stock_number = Artikelnummer
bench-field-fitting_series = Armaturenserie (Presshülse)
bench-field-swivel = Nach dem Verpressen drehbar
bench-field-cut_off_mm = Abzugsmaß
bench-field-cut_off_kind = Abzugsmaß endet bei
bench-field-insertion_depth_mm = Einstecktiefe
bench-stock-title = Armaturen
bench-stock-hint = Die Maße sind die des Armaturenherstellers. Dieses Programm liefert keine mit.
bench-stock-find = Armaturen suchen
bench-stock-none = Keine Armaturen gefunden.
bench-stock-keep = Armatur hinzufügen oder ändern
bench-stock-edit = Bearbeiten
bench-stock-delete-ask = { $number } aus der Liste löschen? Schilder, die sie nennen, behalten sie.
bench-stock-import = Liste importieren
bench-stock-import-hint = Alle Zeilen werden importiert oder keine. Eine vorhandene Artikelnummer wird ersetzt.
bench-stock-kind-seat_to_hose_butt = Dichtsitz bis Schlauchanschlag (wo der Schlauch endet)
bench-stock-kind-seat_to_shell_mouth = Dichtsitz bis Rand der Presshülse
bench-stock-yes = ja
bench-stock-no = nein
bench-field-hose_part = Artikelnummer des Schlauchs
bench-field-die = Pressbacke
bench-field-skive_outside_mm = Außen schälen (Länge)
bench-field-skive_inside_mm = Innen schälen (Länge)
bench-field-machine_setting = Einstellung der Presse

## Hoses of the shop

bench-hoses-title = Schläuche der Werkstatt
bench-hoses-hint = Die Werte sind die des Schlauchherstellers, mit ihrer Quelle. Sie gelten nur für einen Schlauch mit dieser Teilenummer.
bench-hoses-none = Keine Schläuche gespeichert.
bench-hoses-keep = Schlauch hinzufügen oder ändern
bench-field-part = Teilenummer des Herstellers
bench-field-manufacturer = Hersteller
bench-field-standard = Schlauchnorm
bench-field-edition = Ausgabe
bench-field-max_working_bar = Höchster Betriebsdruck
bench-field-outside_diameter_mm = Außendurchmesser
bench-field-fluids = Vom Hersteller zugelassene Medien

bench-crimps-title = Pressblätter
bench-crimps-hint = Nach der Tabelle des Armaturenherstellers für diesen Schlauch und diese Armaturenreihe. Dieses Programm liefert keine mit.
bench-crimps-none = Keine Pressblätter gespeichert.
bench-crimps-keep = Pressblatt hinzufügen oder ändern
bench-crimps-keep-hint = Ein Blatt gilt für einen Schlauch und eine Armaturenreihe; mit denselben ersetzt es das vorhandene. Ohne Artikelnummer des Schlauchs gilt es nur für die Norm und gibt nichts zusammen frei.
bench-crimps-any-part = jeder Schlauch dieser Norm: gibt nichts zusammen frei
bench-crimps-delete-ask = Das Pressblatt für { $series } löschen? Gemessene Pressmaße behalten ihre Werte.
bench-crimps-import-hint = Alle Zeilen werden importiert oder keine. Ein Blatt für denselben Schlauch und dieselbe Armaturenreihe wird ersetzt.
bench-hoses-import-hint = Alle Zeilen werden importiert oder keine. Ein Schlauch mit derselben Artikelnummer und Größe wird ersetzt.
bench-flush-title = Spülung
bench-flush-hint = Wie und womit sie innen gereinigt wurden, und von wem. Verlauf und Prüfzeugnis nennen es. Es ist keine Messung der geforderten Reinheit.
bench-flush-last = Zuletzt gespült
bench-field-flushed_by = Gespült von

## Codes of a phone beside the password

bench-code = Code vom Telefon
bench-code-give = Sechs Ziffern, die die App auf Ihrem Telefon jetzt anzeigt
bench-code-recovery = Telefon verloren? Stattdessen einen Ihrer Ersatzcodes eingeben; jeder gilt einmal.
bench-code-other = Unter anderem Namen anmelden
bench-code-wrong = Der Code ist nicht gültig.
    .mend = Auf den nächsten Code warten und die Uhr des Telefons prüfen.
bench-account-sessions = Wo Sie angemeldet sind
bench-account-this = Dieser Browser
bench-account-phone = Telefon
bench-account-computer = Computer
bench-account-since = seit { $since }, zuletzt benutzt { $seen }
bench-account-end = Beenden
bench-account-end-of = Sitzung vom { $since } beenden
bench-account-end-others = Alle anderen Sitzungen beenden
bench-account-happened = Änderungen an Ihrem Konto
bench-account-password = Das Kennwort wurde geändert.
bench-account-role = Die Rolle wurde geändert.
bench-account-codes-on = Codes vom Telefon wurden eingerichtet.
bench-account-codes-off = Codes vom Telefon werden nicht mehr verlangt.
bench-account-recovery-code = Ein Ersatzcode wurde benutzt.
bench-account-repeated-code = Ein Code vom Telefon wurde ein zweites Mal eingegeben und abgelehnt.
bench-account-new-browser = Anmeldung mit einem neuen Browser.
bench-account-by = Durch: { $name }.
bench-account-from = Von: { $address }.
bench-account-not-you = Wenn Sie das nicht waren: Kennwort ändern, alle anderen Sitzungen beenden und der Werkstattleitung Bescheid geben.
bench-account-seen = Zur Kenntnis genommen
bench-account-untold = An Ihrer Anmeldung wurde etwas geändert.
bench-account-look = Änderungen ansehen
bench-codes = Codes vom Telefon
bench-codes-why = Mit Codes reicht ein Kennwort, das jemand erfahren hat, nicht zum Anmelden. Für die Werkstattleitung empfohlen.
bench-codes-set-up = Codes einrichten
bench-codes-are-asked = Beim Anmelden wird ein Code von Ihrem Telefon verlangt.
bench-codes-off = Keine Codes mehr verlangen
bench-codes-another = Anderes Telefon einrichten
bench-codes-hint = Das Symbol mit einer App für Einmalcodes scannen, dann den angezeigten Code eingeben.
bench-codes-picture = Symbol zum Scannen mit dem Telefon
bench-codes-type = Oder dieses Geheimnis in die App eintippen:
bench-codes-first = Code, den die App anzeigt
bench-codes-ask = Ab jetzt Codes verlangen
bench-codes-on = Ab jetzt wird beim Anmelden ein Code verlangt.
bench-codes-recovery = Ersatzcodes
bench-codes-recovery-hint = Aufschreiben und getrennt vom Telefon aufbewahren: Jeder ersetzt einmal einen Code. Sie werden nur jetzt angezeigt.
bench-shop-codes-off = Keine Codes verlangen
bench-shop-codes-ask = { $name } keine Codes mehr abverlangen? Dann genügt das Kennwort.

## Label templates at true size

bench-templates-title = Schilder in wahrer Größe
bench-templates-hint = Muster mit erfundenen Werten bei { $dpi } dpi. Diese Seite mit 100 % drucken oder den Zoom so einstellen, dass die Linie unten 100 mm misst: Dann hat jedes Schild seine wahre Größe.
bench-templates-language = Sprache der Schilder
bench-templates-ruler = Diese Linie ist 100 mm (3,94 in) lang.
bench-templates-size = { $width } breit, { $height } hoch
bench-templates-holds = Inhalt
bench-templates-codes = QR-Codes
bench-templates-survives = Haltbarkeit
bench-templates-list = { LIST($items) }
bench-templates-symbol = { $count ->
    [one] 1 Code, Stufe { $level }, Module von { $module } mm
   *[other] { $count } Codes, Stufe { $level }, Module von { $module } mm
}
bench-templates-tightening = Anziehwerte mit ihrem Bezug
bench-templates-caution = der Warnhinweis
bench-templates-code-all = QR-Code mit der ganzen Spezifikation
bench-templates-code-number = QR-Code nur mit dem Link der Schildnummer
bench-templates-bars = Schildnummer als Strichcode
bench-templates-sign = ein Zeichen: nicht verwenden
bench-templates-stays = Papier für die Werkstatt: Die Haltbarkeit wird nicht gemessen.
bench-templates-measured = Von { $all } % der beschädigten Schilder war die Spezifikation noch lesbar (gemessen am { $day }, { $trials } Versuche je Schaden, 203 dpi):
bench-templates-not-measured = An dieser Anordnung nicht gemessen.
bench-templates-wound-torn_corner = Ecke abgerissen: { $share } %
bench-templates-wound-torn_edge = Rand abgerissen, 8 mm: { $share } %
bench-templates-wound-rubbed_band = Streifen abgerieben, 8 mm: { $share } %
bench-templates-wound-scratches = 14 Kratzer: { $share } %
bench-templates-wound-faded = verblasst: { $share } %
bench-templates-wound-oil = altes Öl: { $share } %
bench-templates-wound-burnt_half = eine Hälfte verbrannt: { $share } %
bench-templates-show = Alle Schilder in wahrer Größe zeigen

## What was found on a gauge sheet

bench-field-found = Marken auf dem Bogen
bench-field-scale = Maß der Kontrolllinie
