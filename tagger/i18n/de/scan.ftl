# The public pages: a tag, finding it, ordering again, identifying a hose without a tag.

## Around every page

scan-skip = Zum Inhalt springen
scan-choose = Sprache und Einheiten
scan-units-metric = bar und mm zuerst
scan-units-inch = psi und Zoll zuerst
scan-call = Anrufen
scan-call_shop = { $shop } anrufen
scan-share-tag = Schild teilen oder sichern
scan-more = Mehr
scan-find_another = Anderes Schild suchen
scan-no_tag = Kein Schild? Schlauchleitung bestimmen
scan-disclaimer = Die Werte stammen aus den genannten Quellen. Sie ersetzen weder die Angaben des Armaturenherstellers noch die Betriebsanleitung der Maschine, örtliche Vorschriften oder eine befähigte Fachkraft.
scan-tag = Schild
scan-tag-title = Schild { $number }
scan-line = { $label }: { $text }
scan-source = Quelle: { $source }
scan-source-basis = Quelle: { $source } ({ $basis })
scan-source-label = Quelle
scan-app-name = Leser für Schlauchschilder
scan-app-short_name = Schlauchschilder

## Finding a tag

scan-find-title = Schild suchen
scan-typed-hint = XXXXX-XXXXXX, unter dem QR-Code gedruckt; oder eine Bestellnummer, R-XXXXXXX
scan-typed-show = Schild anzeigen
scan-camera-title = Mit der Kamera scannen
scan-camera-start = Kamera starten
scan-camera-picture = Kamerabild
scan-camera-not_a_tag = Das ist nicht der Code eines Schlauchschilds.
scan-camera-missing = Kamera nicht verfügbar. Erlauben Sie den Zugriff auf die Kamera oder verwenden Sie ein Foto.
scan-photo-title = Foto des Schilds verwenden
scan-photo-label = Foto des QR-Codes oder des Strichcodes
scan-photo-read = Schild lesen
scan-photo-reading = Foto wird gelesen ...
scan-photo-none_offline = Auf dem Foto wurde kein Schild gefunden, und es gibt kein Netz. Näher und gerade aufnehmen oder die Nummer eingeben.
scan-seen-title = Auf diesem Gerät gesehene Schilder
scan-sent-title = Von diesem Gerät gesendete Bestellungen
scan-seen-forget = Alles auf diesem Gerät vergessen
scan-meant = Meinten Sie
scan-meant-number = { $number } ({ LIST($slips) })
scan-meant-slip = Stelle { $place }: { $right }, nicht { $wrong }

## Refusals

scan-refused-title = Dieses Schild ist nicht lesbar
scan-refused-line = { $field }: { $why } { $mend }
scan-not_there-title = Seite nicht gefunden
scan-not_there = Unter dieser Adresse gibt es keine Seite.
    .mend = Scannen Sie den QR-Code auf dem Schild noch einmal oder geben Sie die Schildnummer ein.
scan-unknown_tag = { $number } ist nicht im Bestand dieser Werkstatt.
    .mend = Scannen Sie den QR-Code auf dem Schild: Er enthält die ganze Spezifikation.
scan-photo-too_large = Das Foto ist zu groß.
    .mend = Verwenden Sie ein kleineres Foto.
scan-order-nothing = Die Bestellung nennt keine Schlauchleitung.
    .mend = Scannen Sie das Schild oder geben Sie die Schildnummer ein.
scan-order-quantity = { $given } ist keine ganze Zahl.
    .mend = Geben Sie eine ganze Zahl ein, zum Beispiel 2.
scan-order-day = { $given } ist kein Datum.
    .mend = Geben Sie das Datum so ein: 2027-03-31.
scan-order-unknown = Es gibt keine Bestellung { $number }.
    .mend = Prüfen Sie die Bestellnummer.
scan-picked-wrong = { $given } ist keine gültige Auswahl.
    .mend = Messen Sie das Ende noch einmal.
scan-picked-missing = Ein Ende fehlt.
    .mend = Messen Sie zuerst beide Enden.
scan-form-missing = Die Ausführung fehlt.
    .mend = Wählen Sie Außen- oder Innengewinde.

## Captions of fields

scan-field-spec = Schlauchleitung
scan-field-number = Schildnummer
scan-field-digits = Schildcode
scan-field-link = Link
scan-field-database = Server
scan-field-address = Adresse
scan-field-image = Foto
scan-field-quantity = Stückzahl
scan-field-needed_by = Benötigt bis
scan-field-order = Bestellnummer
scan-field-reference = Ihre Referenz
scan-field-contact_phone = Telefon
scan-field-contact_email = E-Mail
scan-field-contact_name = Name
scan-field-contact_company = Firma
scan-field-changes = Gewünschte Änderungen
scan-field-fitted_on = Einbaudatum
scan-field-machine = Maschine
scan-field-machine_hours = Betriebsstunden
scan-field-fitted_by = Eingebaut von
scan-field-pin = PIN
scan-field-photo_fitted = Foto
scan-field-photo_hose = Foto der ausgefallenen Schlauchleitung
scan-field-photo_routing = Foto der Verlegung
scan-field-form = Ausführung
scan-field-thread_od = Gewindedurchmesser
scan-field-thread_id = Gewindedurchmesser
scan-field-tpi = Gänge je Zoll
scan-field-pitch = Oder Steigung in mm
scan-field-side = Lage des Gewindes
scan-field-swivels = Drehbarkeit des Gewindeteils
scan-field-shape = Gewindeform
scan-field-seals = Art der Dichtung
scan-field-od = Außendurchmesser
scan-field-bore = Innendurchmesser
scan-field-kind = Art der Verstärkung
scan-field-layers = Anzahl der Lagen
scan-field-lay_line = Kennzeichnung
scan-field-seat = Dichtsitz
scan-field-cone = Konus
scan-field-tube_od = Außendurchmesser des Rohrs
scan-field-flank = Flankenwinkel des Gewindes
scan-field-cannot = Nicht messbar
scan-field-nose = Durchmesser der Nase oder Aufnahme
scan-field-series = Baureihe
scan-field-origin = Herkunft der Maschine
scan-field-hex = Schlüsselweite des Sechskants
scan-field-flange_od = Durchmesser des Flanschbunds
scan-field-bolt_spacing = Schraubenabstand, lange Seite, Mitte zu Mitte
scan-field-measurements = Maße
scan-field-end = Enden
scan-field-hose_standard = Schlauchnorm
scan-field-hose_dash = Dash-Größe des Schlauchs
scan-field-length_mm = Gesamtlänge
scan-field-clocking_deg = Verdrehwinkel
scan-field-end_a = Ende A
scan-field-end_b = Ende B
scan-field-covers = Schlauchschutz

## A tag: what stands first

scan-withdrawn-title = Gesperrt: nicht verwenden
scan-withdrawn-act = Verwenden Sie diese Schlauchleitung nicht. Ist sie eingebaut, Maschine abstellen, Druck ablassen und die Schlauchleitung ausbauen. Wenden Sie sich dann an die Werkstatt.
scan-withdrawn-order = Dies ist das Schild einer gesperrten Schlauchleitung. Bestellt wird eine neue Schlauchleitung nach deren Spezifikation; die Chargen der gesperrten werden nicht übernommen.
scan-withdrawn-since = Gesperrt am { $day }
scan-withdrawn-no_guide = Diese Schlauchleitung ist gesperrt. Nicht einbauen.
scan-notice-tag_only-title = Nur Angaben vom Schild
scan-notice-tag_only = Diese Werkstatt hat zu dieser Nummer keinen Datensatz. Die gezeigten Daten stammen nur vom Schild. Fragen Sie die Werkstatt, die die Schlauchleitung hergestellt hat, ob sie gesperrt ist.
scan-notice-damaged-title = Schildcode beschädigt
scan-notice-damaged = Die Daten in diesem Code sind nicht lesbar. Stattdessen wird der Datensatz der Werkstatt gezeigt: Vergleichen Sie ihn mit dem Text auf dem Schild.
scan-notice-differ-title = Schild und Datensatz weichen voneinander ab
scan-notice-differ = Gezeigt wird der Datensatz der Werkstatt. Bauen Sie die Schlauchleitung erst ein, wenn die Werkstatt bestätigt hat, was richtig ist.
scan-differ-record = Datensatz:
scan-differ-tag = Schild:
scan-differ-nothing = nichts
scan-notice-overrated-title = Niedrigerer Druck als registriert
scan-claims-title = Das Schild nennt mehr Druck, als die Tabellen zulassen
scan-claims-more = Das Schild nennt { $was }. Die Tabellen lassen { $now } zu: nicht mehr verwenden und die Werkstatt fragen.
scan-claims-none = Das Schild nennt { $was }. Die Tabellen lassen für diese Schlauchleitung, wie sie beschrieben ist, keinen Druck zu: nicht einbauen, bevor die Werkstatt einen Druck bestätigt hat.
scan-notice-replaced-title = Schlauchleitung ersetzt
scan-notice-replaced = Eine neuere Schlauchleitung hat sie ersetzt.
scan-void-title = UNGÜLTIG: nicht einbauen
scan-void-act = Der Eintrag dieses Schilds ist ein Versehen. Diese Schlauchleitung nicht einbauen. In der Werkstatt nachfragen.
scan-void-no-guide = Der Eintrag ist ungültig: Es gibt keine Einbauanleitung.
scan-held-title = Von der Werkstatt zurückgehalten: nicht einbauen
scan-held-act = Die Werkstatt hat diese Schlauchleitung nicht freigegeben. Nicht einbauen. Ist sie eingebaut, Maschine abstellen, Druck ablassen und die Schlauchleitung ausbauen. Wenden Sie sich dann an die Werkstatt.
scan-held-no-guide = Die Werkstatt hat diese Schlauchleitung nicht freigegeben: Es gibt keine Einbauanleitung.
scan-notice-replacement-title = Ein Ersatz ist gefertigt
scan-notice-replacement = Eine neue Schlauchleitung ist als Ersatz gefertigt. Ihr Einbau ist nicht erfasst.
scan-notice-to-be-fitted = Diese Schlauchleitung ist als Ersatz für eine andere gefertigt. Ihr Einbau ist nicht erfasst.
scan-notice-old-title = Lager- oder Verwendungsdauer überschritten
scan-notice-life = Hergestellt am { $day }, vor mehr als { $years } { $years ->
    [one] Jahr
   *[other] Jahren
 }. Maximale Verwendungsdauer: { $years } { $years ->
    [one] Jahr
   *[other] Jahre
 } einschließlich Lagerung ({ $source }). Lassen Sie die Schlauchleitung ersetzen oder von einer befähigten Person prüfen, bevor sie weiter verwendet wird.
scan-notice-shelf = Hergestellt am { $day }, vor mehr als { $years } { $years ->
    [one] Jahr
   *[other] Jahren
 }. Maximale Lagerdauer einer Schlauchleitung: { $years } { $years ->
    [one] Jahr
   *[other] Jahre
 } ({ $source }). War sie seither nicht in Gebrauch, lassen Sie sie vor dem Einbau prüfen.

## A tag: figures and parts by themselves

scan-one_line = { $hose }, { $length }
scan-short_end = { $title }, { $shape }
scan-temperature = { $temperature }
scan-length-figure = { $length }
scan-cover_list = { LIST($covers) }
scan-day = { $day }

## A tag: the hose

scan-pressure = Max. Betriebsdruck
scan-pressure-not_known = Der Betriebsdruck dieser Schlauchleitung ist nicht bekannt. Bauen Sie sie erst ein, wenn die Angaben des Schlauchherstellers und des Armaturenherstellers ihn bestätigt haben.
scan-pressure-given = Von der Werkstatt festgelegter Wert. Quelle: { $source }
scan-pressure-as_tagged = Angabe der Werkstatt auf dem Schild
scan-pressure-least = Kleinster zulässiger Druck von Schlauch und beiden Enden; begrenzt durch { SAY($part, case: "acc") }. Quelle: { $source }
scan-origin = Woher kommt das
scan-origin-graded = Güte der Quelle: { $grade }. { $source }
scan-hose = Schlauch
scan-the_hose = Die Schlauchleitung
scan-end_a = Ende A
scan-end_b = Ende B
scan-length = Länge
scan-length-tolerance = Toleranz: { $minus } kürzer, { $plus } länger
scan-clocking = Verdrehwinkel
scan-clocking-tolerance = Toleranz: ±{ $angle }
scan-clocking-shop = Im Uhrzeigersinn von Bogen A aus: { $angle }. Halten Sie Ende A zu sich, Bogen A zeigt nach oben (Zählweise dieser Werkstatt).
scan-clocking-convention = Vereinbarung: MIL-DTL-83796-5 Bild 3 (nach SAE J517); Blickrichtung: allgemeine Praxis.
scan-max_temperature = Höchsttemperatur
scan-min_temperature = Niedrigste Temperatur des Schlauchs
scan-vacuum = Höchster Unterdruck
scan-fluid = Medium
scan-covers = Schlauchschutz
scan-bend_radius = Mindestbiegeradius
scan-built_on = Hergestellt am
scan-note = Bemerkung
scan-state = Status
scan-tightening = Anziehen
scan-tighten-a = Ende A anziehen
scan-tighten-b = Ende B anziehen
scan-sources = Quellen
scan-thread = Gewinde { $thread }, Außengewinde Ø { $diameter }
scan-thread-flange = Flanschbund Ø { $diameter }
scan-thread-plain = Außendurchmesser von Stecker oder Rohr { $diameter }
scan-thread-not_known = Gewinde nicht in den Tabellen: Angaben des Armaturenherstellers verwenden.
scan-scale = Der Anschlussdurchmesser ist maßstäblich gezeichnet, der Rest schematisch. Quelle: { $source }
scan-scale-none = Nicht maßstäblich gezeichnet.
scan-link = Link

## A tag: installing it

scan-fit = Einbauen
scan-fit-first = Zuerst gilt die Betriebsanleitung der Maschine, dann gelten die Angaben des Armaturenherstellers und örtliche Vorschriften. Fangen Sie nur an, wenn Sie für Arbeiten an Hydraulikanlagen ausgebildet sind.
scan-fit-doubt-title = Diese Schlauchleitung noch nicht einbauen
scan-fit-doubt-differ = Das Schild sagt etwas anderes als der Datensatz der Werkstatt. Fragen Sie die Werkstatt, was richtig ist.
scan-fit-doubt-damaged = Der Code des Schildes ist nicht lesbar: Das Schild lässt sich nicht mit dem Datensatz der Werkstatt vergleichen. Vergleichen Sie Schlauch, beide Enden und Länge mit dieser Seite. Weicht etwas ab, fragen Sie die Werkstatt.
scan-fit-doubt-claims = Das Schild nennt mehr Druck, als die Tabellen zulassen; auch seine übrigen Werte können falsch sein. Fragen Sie zuerst die Werkstatt.
scan-fit-anyway = Anleitung trotzdem zeigen
scan-tightening-anyway = Anzugswerte trotzdem zeigen
scan-fit-start = Anfangen
scan-fit-step = Schritt { $n } von { $total }
scan-fit-back = Zurück
scan-fit-next = Weiter
scan-fit-done = Fertig
scan-fit-resume = Dort weitermachen, wo Sie aufgehört haben
scan-fit-read = Diesen Schritt vorlesen
scan-tabs = Was möchten Sie tun?
scan-tab-hose = Daten
scan-tab-order = Bestellen
scan-tab-fit = Einbauen

## Ordering

scan-order-again = Nachbestellen
scan-order-by_phone = Telefonisch oder per E-Mail bestellen
scan-order-lines = Bestellangaben für jede Schlauchwerkstatt:
scan-order-please = Bitte fertigen Sie noch eine Schlauchleitung wie diese:
scan-order-subject = Nachbestellung: Schild { $number }
scan-order-copy = Kopieren
scan-order-share = Teilen
scan-order-reference-hint = Ihre Bestell- oder Auftragsnummer oder die Maschine
scan-order-contact = Ihre Kontaktdaten
scan-order-contact-hint = Geben Sie eine Telefonnummer oder eine E-Mail-Adresse ein.
scan-order-changes = Mit Änderungen bestellen
scan-order-changes-hint = Leer lassen, was gleich bleibt.
scan-order-new_length = Neue Länge (Schild: { $length })
scan-order-new_end_a = Neues Ende A (Schild: { $end })
scan-order-new_end_b = Neues Ende B (Schild: { $end })
scan-order-other = Sonstige Änderungen
scan-order-send = Bestellung senden
scan-order-photos = Fotos (freiwillig)
scan-order-photos-hint = Nur die Werkstatt sieht sie. Sie werden vor dem Senden verkleinert.
scan-order-remember = Meine Kontaktdaten auf diesem Gerät merken
scan-order-sending = Bestellanfrage wird gesendet ...
scan-order-not_kept = Nicht gesendet: keine Verbindung, und dieses Telefon kann die Bestellanfrage nicht speichern. Versuchen Sie es noch einmal oder rufen Sie die Werkstatt an.
scan-order-already = Sie haben diese Schlauchleitung von diesem Telefon aus schon bestellt. Bestellnummer:
scan-order-once_more = Noch einmal bestellen
scan-order-corrected = Es wurde noch nichts gesendet. Ihre Eingaben stehen weiterhin im Formular unten.
scan-order-checked = Die Werkstatt prüft jede Bestellung und meldet sich, bevor sie fertigt.
scan-order-waiting = Kein Netz. Ihre Bestellung ist auf diesem Telefon gespeichert und wird automatisch gesendet. Senden Sie sie nicht noch einmal.
scan-order-not_sent = Bestellung nicht gesendet
scan-order-not_found = Bestellung nicht gefunden
scan-outbox-sent = Ihre Bestellung wurde gesendet. Bestellnummer:
scan-outbox-waiting = Ihre Bestellung ist auf diesem Telefon gespeichert. Sie wird gesendet, sobald es Netz gibt und diese Seite offen ist.
scan-outbox-refused = Diese Bestellanfrage wurde nicht angenommen. Korrigieren Sie sie und senden Sie sie noch einmal.
scan-outbox-correct = Korrigieren
scan-outbox-delete = Löschen
scan-ordered-title = Bestellung { $reference }
scan-ordered-received = Wir haben Ihre Bestellanfrage erhalten
scan-ordered-number = Bestellnummer
scan-ordered-keep = Notieren Sie diese Nummer oder behalten Sie diese Seite. Nennen Sie sie, wenn Sie anrufen.
scan-ordered-what = Das haben Sie bestellt
scan-ordered-answer = { $days ->
    [one] Die Werkstatt antwortet innerhalb eines Werktags.
   *[other] Die Werkstatt antwortet innerhalb von { $days } Werktagen.
 }
scan-ordered-said = Nachricht der Werkstatt
scan-ordered-back = Zurück zum Schild
scan-order_state-received = eingegangen
scan-order_state-asked = Rückfrage der Werkstatt
scan-order_state-accepted = angenommen
scan-order_state-building = in Arbeit
scan-order_state-done = fertig
scan-order_state-declined = abgelehnt

## Identifying a hose without a tag

scan-identify-careful = Maschine abstellen und Druck ablassen, bevor Sie eine Verbindung anfassen. Nie mit der Hand nach einem Leck tasten.
scan-identify-next_hose = Weiter: Schlauch bestimmen
scan-identify-same = Ende B ist wie Ende A
scan-identify-possible_a = Mögliche Anschlüsse, Ende A
scan-identify-possible_b = Mögliche Anschlüsse, Ende B
scan-identify-measure_next = Als Nächstes messen
scan-identify-enter_below = Unten eingeben
scan-identify-no_match = Keine Übereinstimmung gefunden. Messen Sie noch einmal oder bringen Sie die Schlauchleitung in die Werkstatt.
scan-identify-likelihood = Wahrscheinlichkeit { $percent }
scan-identify-contradicts = Keine Übereinstimmung. Abweichend: { LIST($features) }.
scan-identify-use_a = Für Ende A verwenden
scan-identify-use_b = Für Ende B verwenden
scan-identify-measure_a = Ende A messen
scan-identify-measure_b = Ende B messen
scan-identify-diameter-hint = Außengewinde: Außendurchmesser. Innengewinde: Innendurchmesser. Beispiel: 1 1/16 in oder 26,9 mm
scan-identify-more = Weitere Maße
scan-identify-go = Bestimmen
scan-identify-ends = Enden messen
scan-identify-cannot = Kann ich nicht messen
scan-identify-kept = Kein Netz: auf diesem Telefon bestimmt, nach denselben Tabellen wie mit Netz.
scan-flank-not_sure = weiß nicht
scan-flank-60 = 60°
scan-flank-55 = 55°
scan-series-not_sure = weiß nicht
scan-series-S = schwer (S)
scan-series-L = leicht (L)
scan-origin-not_sure = weiß nicht
scan-origin-europe = Europa
scan-origin-north_america = Nordamerika
scan-origin-asia = Asien
scan-seat-not_sure = weiß nicht
scan-seat-37 = 37°-Bördel
scan-seat-45 = 45°-Bördel
scan-seat-30 = 30°-Bördel oder -Konus
scan-seat-60 = 60°-Konus
scan-seat-24 = 24°-Konus
scan-seat-face = O-Ring in der ebenen Stirnfläche (ORFS)
scan-seat-boss = O-Ring unter dem Sechskant
scan-seat-flat = ebene Fläche, für Dichtscheibe oder Flansch
scan-seat-taper = kein Dichtsitz: kegeliges Gewinde
scan-cone-not_sure = weiß nicht
scan-cone-outside = Außenkonus (steht vor)
scan-cone-inside = Innenkonus (liegt innen wie ein Trichter)
scan-feature-thread = Gewindedurchmesser
scan-feature-tpi = Steigung
scan-feature-seat = Dichtsitz
scan-feature-cone = Konus
scan-feature-side = Lage des Gewindes
scan-feature-swivels = Drehbarkeit des Gewindeteils
scan-feature-shape = Gewindeform
scan-feature-seals = Art der Dichtung
scan-feature-flank = Flankenwinkel
scan-feature-nose = Durchmesser der Nase oder Aufnahme
scan-feature-hex = Sechskant
scan-feature-tube_od = Rohrdurchmesser
scan-feature-flange_od = Durchmesser des Flanschbunds
scan-feature-bolt_spacing = Schraubenabstand
scan-ask-thread = Gewindedurchmesser mit dem Messschieber messen: außen beim Außengewinde, innen beim Innengewinde. Den Messschieber schräg zum Gewinde halten.
scan-ask-tpi = Die Steigung mit einer Gewindelehre messen: Gänge je Zoll oder Millimeter.
scan-ask-seat = Den Dichtsitz prüfen: Winkel mit der Winkellehre messen, oder feststellen, ob ein O-Ring in der Stirnfläche, ein O-Ring unter dem Sechskant, eine ebene Fläche oder ein kegeliges Gewinde ohne Dichtsitz vorliegt.
scan-ask-cone = Den Konus prüfen: Steht er vor (Außenkonus) oder liegt er innen wie ein Trichter (Innenkonus)?
scan-ask-flank = Den Flankenwinkel des Gewindes prüfen: eine Gewindelehre mit 55° und eine mit 60° gegen das Licht anlegen.
scan-ask-nose = Durchmesser der Nase messen, die in das Gegenstück greift, an ihrer Stirnkante, der Aufnahme, in die sie greift, oder der Bohrung eines Ringstücks.
scan-ask-series = Die Baureihe feststellen, schwer (S) oder leicht (L): nach der Kennzeichnung, der Zeichnung des Einschraublochs oder dem Hersteller der Armatur.
scan-ask-hex = Schlüsselweite des Sechskants messen.
scan-ask-flange_od = Durchmesser des Flanschbunds messen.
scan-ask-bolt_spacing = Abstand der Schrauben messen, Mitte zu Mitte, auf der langen Seite.
scan-hose-title = Der Schlauch zwischen den Enden
scan-hose-order = Diese Schlauchleitung bestellen
scan-hose-checked = Das sind Ihre Maße. Die Werkstatt prüft sie mit Ihnen, bevor sie fertigt.
scan-hose-correct = Maße ändern
scan-hose-lay_line = Der Schlauchaufdruck nennt Norm und Größe.
scan-hose-dash-hint = Nennweite in 1/16 in: 12 = 3/4 in
scan-hose-shape = Form
scan-hose-drop = Bogenhöhe
scan-hose-jump = Sprunggröße: Armatur eine Größe über oder unter dem Schlauch
scan-hose-clocking = Verdrehwinkel (nur bei zwei Bögen)
scan-hose-clocking-hint = Ende A vorn (Ihnen am nächsten), Bogen A nach unten: Grad gegen den Uhrzeigersinn bis Bogen B
scan-hose-length-hint = Beispiel: 1250 mm oder 49 1/4 in.
scan-hose-read = Gelesen als { $length }
scan-hose-bare = { $unit ->
    [in] Eine Zahl ohne Einheit sind Zoll.
   *[mm] Eine Zahl ohne Einheit sind mm.
 }
scan-hose-measured = Gemessen
scan-hose-show = Schlauchleitung anzeigen

## On a phone without a signal

scan-shell-title = Schlauchschild
scan-shell-no_script = Kein Netz. Schalten Sie JavaScript ein, um das Schild ohne Netz zu lesen.

## Signature of the tag

scan-sealed = Signatur
scan-sealed-note = Was dieses Schild sagt, wurde mit Schlüssel { $key } der Werkstatt signiert.
scan-unsealed-note = Dieser Code trägt keine Signatur: der kleine Code eines Schilds oder ein älteres Schild. Nur die Werkstatt kann bestätigen, dass die Werte von ihr sind.
scan-sealed-act = Bauen Sie die Schlauchleitung erst ein, wenn die Werkstatt ihre Werte bestätigt hat.
scan-unchecked-note = Öffnen Sie mit Netz eine Schildseite der Werkstatt, das erneuert die Schlüssel auf diesem Telefon, oder fragen Sie die Werkstatt.
scan-pressure-anyway = Den Druck auf dem Schild trotzdem zeigen

## What was found on a gauge sheet

scan-identify-from_sheet = Auf einem Lehrenbogen gefunden
scan-identify-from_sheet-hint = Nur für Marken, die auf einem gedruckten Lehrenbogen gefunden wurden.
scan-identify-scale-hint = Beispiel: 99 mm, oder 3,96 in für die Linie von 4 in. Bedeckt eine Bankkarte ihren Rahmen in beiden Richtungen gerade: 100.
scan-field-found = Marken auf dem Bogen
scan-field-scale = Maß der Kontrolllinie
