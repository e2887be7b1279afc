# Tags and printing: what stands on a tag, templates, preflight, printers.

## Lines of a tag. Ranges and signs are short; a tag has one decimal sign (label_templates/README.md)

printing-value = { $value }
printing-duty = { $fluid }, max. { $temperature }
printing-unverified = { SAY($parts, case: "short") } ungeprüft
printing-at_most = { SAY($parts, case: "short") }: ≤ { $pressure }
printing-at_most-all = ≤ { $pressure }
printing-dangers = GEFAHR, Grenzen überschritten: { LIST($dangers) }
printing-not-known-least = nicht bekannt: Hersteller fragen
printing-dangers-least = GEFAHR: { $dangers }
printing-danger-fluid = Medium
printing-danger-heat = Hitze
printing-danger-cold = Kälte
printing-danger-pressure = Druck
printing-danger-vacuum = Unterdruck
printing-write = { SAY($parts, case: "short") }: __________ bar
printing-write-unverified = { SAY($parts, case: "short") }: __________ bar; { SAY($doubtful, case: "short") } ungeprüft
printing-write-hose = Schlauch, { $what }: __________ bar (Schlauchhersteller)
printing-write-end_a = Ende A, { $what }: __________ bar (Armaturenhersteller)
printing-write-end_b = Ende B, { $what }: __________ bar (Armaturenhersteller)
printing-caption = { $caption }:
printing-size = -{ $dash } ({ $inches })
printing-serial = { $place } von { $of }
printing-clocking-short = Verdrehwinkel { $angle } linksherum, von Ende A gesehen
printing-clocking-shortest = { $angle } linksherum, von Ende A gesehen
printing-covers = { LIST($covers) }
printing-tolerance = −{ $minus } / +{ $plus }; { $source }
printing-bend-radius = ≥ { $radius }; { $source }
printing-limited-by = { $part } ({ $source })
printing-warning = ! { $warning }
printing-source = { $ends }: { $source }
printing-source-basis = { $ends }: { $basis }; { $source }
printing-source-unverified = { $source } (ungeprüft)
printing-lots = { LIST($lots) }
printing-lot-end_a = A: { $lot }
printing-lot-hose = Schlauch: { $lot }
printing-lot-end_b = B: { $lot }
printing-tighten = Anziehen { $end }: { $torque }; oder { $count }
printing-tighten-torque = Anziehen { $end }: { $torque }
printing-tighten-count = Anziehen { $end }: { $count }
printing-tighten-unknown = Anziehen { $end }: { $unknown }
printing-end-title = { $size } { SAY($connection, case: "short") }
printing-end-described = { $description } (sonstiger Anschluss)
printing-end-form = { $form }, { $shape }
printing-end-jump = Sprunggröße: Nippel für Schlauch -{ $dash }
printing-flats = { $many ->
    [one] { $count } Fläche
   *[other] { $count } Flächen
 }
printing-turns = { $many ->
    [one] { $count } Umdrehung
   *[other] { $count } Umdrehungen
 }
printing-basis-finger_tight = ab handfest
printing-basis-wrench_resistance = ab spürbarem Kraftanstieg
printing-basis-not_stated = ab nicht genanntem Punkt
printing-basis-torque = nach Anziehdrehmoment
printing-per-screw = je Schraube { $screw }
printing-per-any-screw = je Schraube; Größe und Festigkeitsklasse nennt der Hersteller
printing-per-any-screw-short = je Schraube; Schraube laut Hersteller
printing-stud = Einschraubzapfen mit Dichtscheibe oder O-Ring; zu hoch für eine Mutter
printing-stud-short = zu hoch für eine Mutter
printing-torque-stud = { $torque } (zu hoch für eine Mutter)
printing-tightening-not-known = Anziehen nicht bekannt: Wert des Armaturen-Herstellers verwenden
printing-clocking-counted = linksherum, von Ende A gesehen
printing-clocking-seen = von A aus
printing-between-sealing_face = zwischen Dichtflächen
printing-between-thread_end = zwischen Gewindeenden
printing-between-elbow_centreline = zwischen Bogen-Mittellinien
printing-made = { $shop }, { $day }
printing-caution = Falscher Druck, falsches Gewinde oder falsches Anziehen kann schwere Verletzungen verursachen. Vor dem Lösen den gesamten Druck ablassen. Angaben des Armaturenherstellers und örtliche Vorschriften beachten.
printing-caution-short = Vor dem Lösen Druck ablassen. Angaben des Armaturenherstellers beachten.
printing-caution-least = Vor dem Lösen Druck ablassen.

## Captions of the fields, before a colon

printing-field-number = Schild
printing-field-serial = Stück
printing-field-built_on = Hergestellt am
printing-field-made = Konfektioniert von
printing-field-hose = Schlauch
printing-field-dash = Größe
printing-field-end_a = Ende A
printing-field-end_b = Ende B
printing-field-length = Länge
printing-field-length_basis = Gemessen
printing-field-clocking = Verdrehwinkel
printing-field-working_pressure = Max. Betriebsdruck
printing-field-dangers = Gefahr
printing-field-duty = Medium, Temperatur
printing-field-vacuum = Max. Unterdruck
printing-field-fluid = Medium
printing-field-temperature = Höchsttemperatur
printing-field-covers = Schlauchschutz
printing-field-tolerance = Längentoleranz
printing-field-bend_radius = Mindestbiegeradius
printing-field-test_pressure = Prüfdruck
printing-field-limited_by = Begrenzt durch
printing-field-warnings = Warnungen
printing-field-tightening_sources = Quellen der Anziehwerte
printing-field-lots = Chargen
printing-field-shop = Hersteller
printing-field-order = Auftrag
printing-field-note = Bemerkung
printing-field-stop_why = Grund
printing-field-stop_on = Datum
printing-field-stop_by = Eingetragen von

## Work steps on the job card, each before a box to sign

printing-done-cut = Schlauch geschnitten, Länge geprüft
printing-done-crimped = Verpresst, Durchmesser gemessen
printing-done-proof-tested = Druckgeprüft, Druck und Zeit
printing-done-taken = Auftrag übernommen von, am
printing-done-handed-out = Schlauchleitung ausgegeben an, am

## Titles of the templates that come with the program

printing-title-hang_tag = Anhängeschild, 100 x 60 mm, mit Loch
printing-title-hang_tag_two = Anhängeschild in zwei Sprachen, 120 x 90 mm, mit Loch
printing-title-wrap_label = Selbstlaminierendes Wickeletikett, Druck 102 x 186 mm, klare Fahne 64 mm
printing-title-flag_label = Fahnenetikett, 150 x 50 mm, um den Schlauch gefaltet
printing-title-sleeve_tag = Einschubschild, 190 x 34 mm, von beiden Seiten lesbar
printing-title-thin_wrap = Band mit kleinem QR-Code, wiederholt um einen dünnen Schlauch
printing-title-end_tag_a = Schild für Ende A, 70 x 56 mm, mit Anziehwerten
printing-title-end_tag_b = Schild für Ende B, 70 x 56 mm, mit Anziehwerten
printing-title-roll_2x1 = Rollenetikett, 2 x 1 in
printing-title-roll_4x2 = Rollenetikett, 4 x 2 in
printing-title-roll_4x6 = Rollenetikett, 4 x 6 in, mit Quellen
printing-title-roll_continuous = Endlosrolle, 58 mm breit, Schnitt alle 132 mm
printing-title-sheet_a4 = Acht Anhängeschilder auf einem A4-Bogen
printing-title-sheet_letter = Acht Anhängeschilder auf einem Letter-Bogen
printing-title-traveller_a5 = Laufkarte, A5
printing-title-traveller_half_letter = Laufkarte, halbes Letter-Format
printing-title-traveller_stub = Laufkarte A5 mit Abreißabschnitt, auf A4
printing-title-metal_plate = Gravurplatte, 4 x 2 in, SVG oder DXF
printing-title-shrink_sleeve = Schrumpfschlauch, 240 x 76 mm, flach bedruckt, für Schläuche von 30 bis 49 mm
printing-title-do_not_use = Schild „Nicht verwenden“ für eine gesperrte oder durchgefallene Schlauchleitung, 100 x 60 mm
## The tag on a hose that must not be used

printing-stop-words = NICHT VERWENDEN
printing-stop-act = Diese Schlauchleitung nicht einbauen. Dieses Schild nicht entfernen. Beides an die Werkstatt zurückgeben.
printing-stop-example = Hier stehen Grund, Datum und Name.

## Template files: every problem names the file, the box and the key before the sentence

printing-template-unknown = Die Vorlage { $name } gibt es nicht.
    .mend = Eine dieser Vorlagen verwenden: { LIST($names, style: "or") }, oder den Pfad einer .toml-Datei eingeben.
printing-plate-not-engraved = SVG und DXF sind für Gravurplatten, dieses Schild ist für einen Drucker.
    .mend = Das Schild für Metallplatten wählen oder PDF oder PNG verwenden.
printing-template-not-here = Die Vorlage { $name } gibt es nicht.
    .mend = Eine dieser Vorlagen verwenden: { LIST($names, style: "or") }.
printing-template-folder = { $folder } ist kein Ordner.
    .mend = Einen Ordner mit .toml-Dateien angeben.
printing-template-unreadable = Die Vorlagendatei { $file } kann nicht gelesen werden.
    .mend = Den Pfad der Vorlage prüfen.
printing-template-not-toml = Die Datei ist kein gültiges TOML ({ $told }).
    .mend = Diese Zeile berichtigen.
printing-template-name = Eine Vorlage heißt wie ihre Datei: { $name }.
    .mend = Diese Zeile entfernen oder die Datei umbenennen.
printing-template-own-base = Eine Vorlage kann nicht ihre eigene Basis sein.
    .mend = Eine andere Basisvorlage verwenden oder alle Schlüssel hier festlegen.
printing-template-circle = Die Basis führt zu dieser Vorlage zurück: { $way }.
    .mend = Eine andere Basisvorlage verwenden oder alle Schlüssel hier festlegen.
printing-template-kind = { $kind } ist keine Art von Feld.
    .mend = kind auf einen dieser Werte setzen: { LIST($kinds, style: "or") }.
printing-template-kind-missing = Dem Feld fehlt die Art.
    .mend = kind auf einen dieser Werte setzen: { LIST($kinds, style: "or") }.
printing-template-field = { $field } ist keine Angabe eines Schilds.
    .mend = Eine dieser Angaben verwenden: { LIST($fields, style: "or") }.
printing-template-language = { $language } ist keine verfügbare Sprache.
    .mend = Eine dieser Sprachen verwenden: { LIST($languages, style: "or") }.
printing-template-languages = Ein Schild braucht eine oder zwei verfügbare Sprachen.
    .mend = Eine oder zwei dieser Sprachen angeben: { LIST($languages, style: "or") }.
printing-template-boxes = Jedes Feld beginnt mit { "[[" }box]], in doppelten Klammern.
    .mend = { "[[" }box]] vor seine Schlüssel schreiben.
printing-template-list = Hier sind mehrere Werte nötig, in Klammern.
    .mend = Als Liste eingeben, zum Beispiel ["number"].
printing-template-pair = Hier sind zwei Werte nötig, in Klammern.
    .mend = So eingeben: [100, 60].
printing-template-text-min = Der kleinste Text ist größer als der größte, der { $text } mm hat.
    .mend = Einen kleineren Wert für { "text_min" } oder einen größeren für { "text" } eingeben.
printing-template-off-label = Das Feld ragt über das Etikett hinaus, das { $width } x { $height } mm misst.
    .mend = Das Feld verschieben oder verkleinern.
printing-template-flag = Der Teil eines Fahnenetiketts, der um den Schlauch geht, hat auf beiden Seiten einen Flügel.
    .mend = Anfang und Ende zwischen 0 und { $width } mm angeben, den kleineren Wert zuerst.
printing-template-sleeve-sizes = Geschrumpft ist ein Schrumpfschlauch kleiner als die { $supplied } mm, mit denen er geliefert wird.
    .mend = Den Innendurchmesser nach vollem Schrumpfen eingeben, nach den Angaben zum Schrumpfschlauch.
printing-template-sleeve-flat = Ein Schrumpfschlauch von { $supplied } mm ist flach { $flat } mm breit, das Etikett ist breiter.
    .mend = Diese Seite des Etiketts auf höchstens { $flat } mm verkleinern.
printing-template-sleeve-alone = Eine Vorlage für einen Schrumpfschlauch kann diesen Schlüssel nicht haben.
    .mend = Ihn entfernen oder { "sleeve" } entfernen.
printing-template-sleeve-picture = Dieses Feld enthält ein Bild. Vom Schrumpfschlauch gestaucht wären Winkel und Formen falsch.
    .mend = Textfelder verwenden: Angaben wie end_a, length und clocking und die Art tightening.
printing-template-sleeve-bars = Der Schrumpfschlauch würde die Striche stauchen.
    .mend = Das Feld um 90 Grad drehen, so dass der Strichcode längs des Schlauchs läuft.
printing-template-overlap = Das Feld überlappt Feld { $box } ({ $kind }).
    .mend = Eines der beiden verschieben.
printing-template-off-page = Die Etiketten reichen bis { $last } mm auf einer Seite von { $page } mm.
    .mend = Weniger Etiketten verwenden oder pitch oder first verkleinern.
printing-template-pitch = Der Abstand von { $pitch } mm ist kleiner als die { $size } mm des Etiketts: Die Etiketten würden sich überlappen.
    .mend = Mindestens { $size } mm eingeben.

## What does not fit on a label

printing-box-letters = Der Text enthält Zeichen, die die Schrift des Schilds nicht drucken kann: { $letters }
    .mend = Lateinische, griechische oder kyrillische Buchstaben verwenden.
printing-box-text = Der Text passt bei der kleinsten Schriftgröße von { $text } mm nicht in { $width } x { $height } mm.
    .mend = Mindestens { $need_width } x { $need_height } mm groß machen oder { "text_min" } verkleinern (mindestens { $least } mm).
printing-box-qr = Das Feld von { $side } mm ist zu klein für den QR-Code: Bei { $dpi } dpi wären die Module kleiner als { $dots } Punkte oder { $module } mm.
    .mend = Mindestens { $need } x { $need } mm vorsehen oder die Webadresse kürzen.
printing-box-bars = Das Feld von { $width } mm ist zu schmal für die Striche von Code 128 bei { $dpi } dpi.
    .mend = Mindestens { $need } mm Breite vorsehen.
printing-start = { $start } ist kein Platz auf dem Bogen.
    .mend = Einen Platz von 1 bis { $places } eingeben.
printing-start-one = { $start } ist kein Platz auf dem Bogen: Diese Vorlage druckt ein Etikett je Seite.
    .mend = Den Platz weglassen.
printing-no-tags = Es gibt kein Schild zu drucken.
    .mend = Mindestens eines angeben.
printing-grade-none = Kein QR-Code im Bild ist lesbar: Güte F.
    .mend = Größer oder sauberer drucken oder gerade und scharf fotografieren.

## Preflight: will it scan?

printing-dangers-untold = Diese Schlauchleitung hat eine Gefahr durch Medium, Hitze, Kälte, Druck oder Unterdruck, und kein Feld der Vorlage nennt sie.
    .mend = Ein Feld mit kind = "caution" hinzufügen.
printing-flight-no-code = Das Etikett hat keinen QR-Code und kann daher nicht gescannt werden.
    .mend = Ein Feld mit kind = "qr" hinzufügen.
printing-flight-dots = Ein Modul ist { $dots } Druckerpunkte breit. Unter { $least } Punkten schließen sich die Lücken, weil Farbe oder Wärme verläuft.
    .mend = Dem QR-Code ein größeres Feld geben oder mit höherer Auflösung (dpi) drucken.
printing-flight-module = Ein Modul ist { $module } mm breit. DIN SPEC 91406 verlangt mindestens { $least } mm.
    .mend = Dem QR-Code ein größeres Feld geben.
printing-flight-grid = { $kind ->
    [code128] Der Strichcode ist nicht an ganzen Druckerpunkten ausgerichtet.
   *[qr] Der QR-Code ist nicht an ganzen Druckerpunkten ausgerichtet.
 }
    .mend = Programmfehler: bitte melden.
printing-flight-level = Die Fehlerkorrektur hat Stufe { $level }. DIN SPEC 91406 bevorzugt Q, und H verträgt mehr Schmutz.
    .mend = Dem QR-Code ein größeres Feld geben.
printing-flight-quiet-zone = Die Ruhezone von { $modules } Modulen um den QR-Code ist nicht frei.
    .mend = Diesen Bereich frei machen oder den QR-Code vom Etikettenrand wegrücken.
printing-proof-quiet = { $kind ->
    [code128] Die Ruhezone des Strichcodes ist nicht frei, oder das Etikett endet dort.
   *[qr] Die Ruhezone eines QR-Codes ist nicht frei, oder das Etikett endet dort.
 }
    .mend = Diesen Bereich frei machen oder den Code vom Etikettenrand wegrücken.
printing-proof-drawn = { $kind ->
    [code128] Der Strichcode wird nicht so gedruckt, wie er erzeugt wurde.
   *[qr] Ein QR-Code wird nicht so gedruckt, wie er erzeugt wurde.
 }
    .mend = Die anderen Felder der Vorlage vom Code wegrücken. Wenn ihn keines verdeckt: Programmfehler, bitte melden.
printing-proof-text = { $kind ->
    [code128] Der Strichcode sagt nicht, was das Schild sagt.
   *[qr] Ein QR-Code sagt nicht, was das Schild sagt.
 }
    .mend = Programmfehler: bitte melden.
printing-flight-link = Die Webadresse im QR-Code hat { $length } Zeichen. Identifikationslinks haben höchstens { $most }.
    .mend = Eine kürzere Webadresse verwenden.
printing-flight-reach = Der QR-Code ist bis etwa { $cm } cm Abstand lesbar (zehnmal seine Seitenlänge; üblich, ohne Quelle).
printing-flight-reach-short = Der QR-Code ist bis etwa { $cm } cm Abstand lesbar (zehnmal seine Seitenlänge; üblich, ohne Quelle).
    .mend = Einen größeren QR-Code verwenden oder das Telefon sehr nah halten.
printing-flight-text = Der kleinste Text ist { $size } mm hoch. Unter { $least } mm ist er schwer zu lesen.
    .mend = Sein Feld vergrößern.
printing-flight-readers = Von { $count } Test-Decodern können diese den QR-Code aus den gedruckten Punkten nicht lesen: { LIST($failed) }.
    .mend = Dem QR-Code ein größeres Feld geben.
printing-flight-codes = Lesbare QR-Codes auf dem Etikett: { $read } von { $count }.
    .mend = Die QR-Codes weiter auseinanderrücken oder vergrößern.
printing-flight-grade = Die gedruckten Punkte haben Güte { $grade } nach den Parametern von ISO/IEC 15415.
    .mend = Größere Module verwenden.
printing-flight-contrast = Der Kontrast hängt vom Etikettenmaterial ab: schwarz auf Weiß oder Gelb drucken. Dunkles oder klares Material braucht einen weißen Grund.
printing-flight-wrap-unknown = Auf einem Schlauch biegt sich dieses Etikett mit, aber der Schlauch-Außendurchmesser ist nicht bekannt.
    .mend = Messen und angeben ({ "--hose-od" }) oder ein Anhängeschild verwenden.
printing-flight-wrap = Um einen Schlauch von { $od } mm zeigt der QR-Code von { $side } mm seine äußeren Module mit { $share } % ihrer Breite. Bis { $widest } mm ist er lesbar.
printing-flight-wrap-near = Um einen Schlauch von { $od } mm zeigt der QR-Code von { $side } mm seine äußeren Module mit { $share } % ihrer Breite. Bis { $widest } mm ist er lesbar.
    .mend = Das ist nahe an der Grenze: Ein Fahnenetikett oder Anhängeschild ist zuverlässiger.
printing-flight-wrap-thin = Um einen Schlauch von { $od } mm zeigt der QR-Code von { $side } mm seine äußeren Module mit { $share } % ihrer Breite. Bis { $widest } mm ist er lesbar.
    .mend = Ein Fahnenetikett oder Anhängeschild verwenden. Dieses Etikett ist für Schläuche ab { $thinnest } mm.
printing-flight-facing = Um einen Schlauch von { $od } mm ist von jeder Seite ein QR-Code lesbar.
printing-flight-facing-end = Um einen Schlauch von { $od } mm ist von { $share } % aller Seiten ein QR-Code lesbar. Von den { $gap } am Ende des Etiketts ist keiner lesbar.
    .mend = Daneben ein zweites Etikett setzen, dessen Ende auf der Gegenseite liegt, oder die Fahne eines Fahnenetiketts eine Vierteldrehung neben dieses Ende. Oder ein Anhängeschild verwenden.
printing-flight-facing-away = Um einen Schlauch von { $od } mm ist nur von { $share } % aller Seiten ein QR-Code lesbar. Die größte Lücke beträgt { $gap }.
    .mend = { $label ->
            [thin_wrap] Ein Fahnenetikett oder ein Anhängeschild verwenden.
           *[other] Eine Vorlage für diesen Durchmesser (thin_wrap wiederholt einen kleinen QR-Code), ein Fahnenetikett oder ein Anhängeschild verwenden.
        }
printing-flight-hidden = Um einen Schlauch von { $od } mm verdeckt das Ende des Etiketts Text, der sonst nirgends steht: Feld { LIST($boxes) }.
    .mend = Diese Vorlage für Schläuche ab { $thinnest } mm oder ein Fahnenetikett oder Anhängeschild verwenden.
printing-flight-flag = Bis { $thickest } mm Schlauch-Außendurchmesser bleibt die Fahne frei.
printing-flight-flag-thick = Um einen Schlauch von { $od } mm reicht die Mitte dieses Fahnenetiketts nicht: Ein QR-Code der Fahne liegt auf dem Schlauch.
    .mend = Für Schläuche bis { $thickest } mm verwenden oder ein Anhängeschild nehmen.
printing-flight-lying = Flach auf einem Schlauch von { $od } mm ist der QR-Code senkrecht von oben lesbar.
printing-flight-sleeve-thin = In einer Hülle auf einem Schlauch von { $od } mm biegt sich der QR-Code von { $side } mm zu stark. Bis { $widest } mm ist er lesbar.
    .mend = Ein Anhängeschild oder Fahnenetikett verwenden. Diese Vorlage ist für Schläuche ab { $thinnest } mm.
printing-flight-stuck-thin = Auf einen Schlauch von { $od } mm geklebt ist der QR-Code von { $side } mm nicht lesbar. Bis { $widest } mm ist er lesbar.
    .mend = Das Schild anbinden oder auf etwas Flaches kleben. Auf Schläuchen ab { $thinnest } mm ist es lesbar.
printing-flight-shrink-unknown = Der Schrumpfschlauch schrumpft samt Aufdruck von { $supplied } mm auf bis zu { $recovered } mm, und der Außendurchmesser des Schlauchs ist nicht bekannt.
    .mend = Messen und angeben ({ "--hose-od" }) oder ein Anhängeschild verwenden.
printing-flight-shrink-fit = Der Schrumpfschlauch ist für Schläuche zwischen { $recovered } und { $supplied } mm. { $fit ->
    [loose] Auf einem Schlauch von { $od } mm bleibt er lose.
   *[tight] Über einen Schlauch von { $od } mm passt er nicht.
 }
    .mend = Einen Schrumpfschlauch anderer Größe mit eigener Vorlage oder ein Anhängeschild verwenden.
printing-flight-shrink = Auf einem Schlauch von { $od } mm schrumpft der Aufdruck in Umfangsrichtung auf { $share } %. Schrumpfschlauch: { $supplied } mm im Lieferzustand, { $recovered } mm voll geschrumpft; Quelle: { $source }.
    .mend = Beide Durchmesser mit den Angaben zu Ihrem Schrumpfschlauch vergleichen. Vor dem Verpressen der Armatur aufschieben.
printing-flight-shrink-module = Auf einem Schlauch von { $od } mm schrumpft der Aufdruck auf { $share } % und ein Modul auf { $module } mm. DIN SPEC 91406 verlangt mindestens { $least } mm.
    .mend = Einen Schrumpfschlauch mit kleinerem Durchmesser im Lieferzustand oder ein Anhängeschild verwenden.
printing-flight-shrink-near = Auf einem Schlauch von { $od } mm ist ein QR-Code fast so breit, wie gerade noch lesbar ist.
    .mend = Einen kleineren QR-Code in einer eigenen Vorlage oder ein Anhängeschild verwenden.
printing-flight-shrink-unread = Geschrumpft und um einen Schlauch von { $od } mm gebogen ist ein QR-Code { $side } mm breit, und bis { $widest } mm ist er nach der Geometrie lesbar. { $unread ->
    [0] Die Testdecoder lesen ihn.
   *[other] Testdecoder, die ihn dort nicht lesen: { LIST($failed) }.
 }
    .mend = Einen kleineren QR-Code in einer eigenen Vorlage oder ein Anhängeschild verwenden.
printing-sleeve-assumed = von dieser Vorlage angenommen, keine Angabe zu einem Schrumpfschlauch

## Network printers

printing-printer-address = { $address } ist keine Druckeradresse.
    .mend = Zum Beispiel ipp://192.0.2.7/ipp/print oder ipps://labels.example.com/ipp/print eingeben.
printing-printer-dpi = Der Drucker { $address } druckt nicht mit { $dpi } dpi.
    .mend = { LIST($dots, style: "or") } dpi verwenden.
printing-printer-formats = Der Drucker unterstützt weder PDF noch PWG Raster, nur { LIST($formats) }.
    .mend = PDF verwenden und von einem Computer drucken, auf dem dieser Drucker eingerichtet ist.
printing-printer-no-formats = Der Drucker meldet kein unterstütztes Dateiformat.
    .mend = PDF verwenden und von einem Computer drucken, auf dem dieser Drucker eingerichtet ist.
printing-printer-not-ipp = Der Drucker hat keine gültige IPP-Antwort gegeben.
    .mend = Den Pfad der Adresse prüfen, oft /ipp/print.
printing-printer-untrusted = Dem Zertifikat des Druckers wird nicht vertraut ({ $told }).
    .mend = Das Zertifikat in SSL_CERT_FILE aufnehmen oder ipp:// im Netz der Werkstatt verwenden.
printing-printer-silent = Der Drucker hat nicht innerhalb von { $seconds } s geantwortet.
    .mend = { $sent ->
        [perhaps] Vor dem erneuten Senden prüfen, ob die Schilder gedruckt wurden.
       *[no] Prüfen, ob der Drucker eingeschaltet und im Netz ist und die Adresse stimmt, oder das PDF verwenden.
     }
printing-printer-too-long = Die Antwort des Druckers ist länger als { $octets } Byte.
    .mend = { $sent ->
        [perhaps] Vor dem erneuten Senden prüfen, ob die Schilder gedruckt wurden.
       *[no] Prüfen, ob der Drucker eingeschaltet und im Netz ist und die Adresse stimmt, oder das PDF verwenden.
     }
printing-printer-http = Der Drucker hat mit HTTP { $status } geantwortet.
    .mend = { $sent ->
        [perhaps] Vor dem erneuten Senden prüfen, ob die Schilder gedruckt wurden.
       *[no] Prüfen, ob der Drucker eingeschaltet und im Netz ist und die Adresse stimmt, oder das PDF verwenden.
     }
printing-printer-lost = Die Verbindung zum Drucker ist abgebrochen ({ $told }).
    .mend = Vor dem erneuten Senden prüfen, ob die Schilder gedruckt wurden.
printing-printer-unreachable = Der Drucker ist nicht erreichbar ({ $told }).
    .mend = Prüfen, ob der Drucker eingeschaltet und im Netz ist und die Adresse stimmt, oder das PDF verwenden.
printing-printer-elsewhere = Die Druckeradresse führt zu { $address }, das keine Adresse im lokalen Netz ist.
    .mend = Dem Drucker eine Adresse im Netz der Werkstatt geben.
printing-refused-forbidden = Der Drucker hat die Anfrage abgelehnt: Dieses Programm darf nicht drucken.
    .mend = Drucker und Adresse prüfen oder das PDF verwenden.
printing-refused-sign-in = Der Drucker verlangt eine Anmeldung, die dieses Programm nicht unterstützt.
    .mend = Drucker und Adresse prüfen oder das PDF verwenden.
printing-refused-not-found = Drucker oder Druckauftrag wurde unter dieser Adresse nicht gefunden.
    .mend = Drucker und Adresse prüfen oder das PDF verwenden.
printing-refused-too-large = Der Drucker meldet, dass die Datei zu groß ist.
    .mend = Drucker und Adresse prüfen oder das PDF verwenden.
printing-refused-format = Der Drucker unterstützt dieses Dateiformat nicht.
    .mend = Drucker und Adresse prüfen oder das PDF verwenden.
printing-refused-job = Der Drucker unterstützt diese Art von Druckauftrag nicht.
    .mend = Drucker und Adresse prüfen oder das PDF verwenden.
printing-refused-not-accepting = Der Drucker nimmt keine Druckaufträge an.
    .mend = Drucker und Adresse prüfen oder das PDF verwenden.
printing-refused-busy = Der Drucker ist beschäftigt.
    .mend = Drucker und Adresse prüfen oder das PDF verwenden.
printing-refused-status = Der Drucker hat die Anfrage abgelehnt (IPP-Status { $status }).
    .mend = Drucker und Adresse prüfen oder das PDF verwenden.
printing-refused-told = { $why } Der Drucker meldet: „{ $told }“.
    .mend = Drucker und Adresse prüfen oder das PDF verwenden.
printing-job-cancelled = Der Drucker hat Druckauftrag { $job } angenommen und dann abgebrochen. Einige Schilder sind möglicherweise gedruckt.
    .mend = Drucker prüfen, dann erneut drucken oder das PDF verwenden.
printing-job-cancelled-because = Der Drucker hat Druckauftrag { $job } angenommen und dann abgebrochen ({ LIST($remarks) }). Einige Schilder sind möglicherweise gedruckt.
    .mend = Drucker prüfen, dann erneut drucken oder das PDF verwenden.

## What a printer reports of itself or of a job (ipp/reasons.csv): status phrases, shown in a list after a colon

printing-reason-media-needed = wartet auf Etiketten oder Papier
printing-reason-media-empty = Etiketten oder Papier leer
printing-reason-media-low = Etiketten oder Papier fast leer
printing-reason-media-jam = Etiketten- oder Papierstau
printing-reason-pausing = wird angehalten
printing-reason-paused = angehalten
printing-reason-off = ausgeschaltet oder wird heruntergefahren
printing-reason-connecting = Drucker-Warteschlange verbindet sich mit dem Drucker
printing-reason-timed-out = Drucker-Warteschlange erreicht den Drucker nicht
printing-reason-stopping = hält an
printing-reason-stopped-partly = teilweise angehalten
printing-reason-toner-low = Toner fast leer
printing-reason-toner-empty = Toner leer
printing-reason-memory-full = Druckerspeicher voll
printing-reason-cover-open = Abdeckung offen
printing-reason-interlock-open = Sicherheitsverriegelung offen
printing-reason-door-open = Klappe offen
printing-reason-input-tray-missing = Zufuhrfach fehlt
printing-reason-output-tray-missing = Ausgabefach fehlt
printing-reason-output-almost-full = Ausgabefach fast voll
printing-reason-output-full = Ausgabefach voll
printing-reason-ribbon-low = Farbband oder Tinte fast leer
printing-reason-ribbon-empty = Farbband oder Tinte leer
printing-reason-waste-almost-full = Resttonerbehälter fast voll
printing-reason-waste-full = Resttonerbehälter voll
printing-reason-too-hot = zu heiß
printing-reason-too-cold = noch kalt
printing-reason-drum-worn-soon = Trommel fast verschlissen
printing-reason-drum-worn = Trommel verschlissen
printing-reason-developer-low = Entwickler fast leer
printing-reason-developer-empty = Entwickler leer
printing-reason-resource = Druckerressource für diese Datei fehlt
printing-reason-other = kein Grund gemeldet
printing-reason-job-incoming = empfängt den Auftrag noch
printing-reason-job-queued = Auftrag in der Drucker-Warteschlange
printing-reason-job-printing = druckt den Auftrag
printing-reason-job-reading = liest den Auftrag
printing-reason-job-preparing = bereitet den Auftrag vor
printing-reason-job-outgoing = gibt den Auftrag weiter
printing-reason-job-held = Auftrag zurückgehalten
printing-reason-job-resources = benötigtes Material nicht eingelegt
printing-reason-printer-stopped = Drucker angehalten
printing-reason-printer-stopped-partly = Drucker teilweise angehalten
printing-reason-job-stopping = Auftrag wird angehalten
printing-reason-job-aborted = Auftrag vom Drucker abgebrochen
printing-reason-compression = Datei konnte nicht entpackt werden
printing-reason-unreadable = Datei konnte nicht gelesen werden
printing-reason-format = Dateiformat nicht unterstützt
printing-reason-cancelled-user = Auftrag von einem Benutzer abgebrochen
printing-reason-cancelled-operator = Auftrag vom Druckerbetreuer abgebrochen
printing-reason-cancelled-device = Auftrag am Drucker abgebrochen
printing-reason-completed = Auftrag gedruckt
printing-reason-completed-warnings = Auftrag gedruckt, mit einer Warnung des Druckers
printing-reason-completed-errors = Auftrag mit Fehlern beendet
printing-reason-queued-device = Auftrag in der Warteschlange des Druckers selbst
printing-reason-queue-off = Drucker-Warteschlange ausgeschaltet
printing-reason-incomplete = Auftrag unvollständig empfangen

## Across the picture of a tag that is not registered yet, in large letters

printing-specimen = MUSTER

## Signature

printing-flight-unsigned = Auf diesem Schild ist kein Platz für die Signatur: Seine QR-Codes tragen die Spezifikation ohne sie.
    .mend = Eine größere Vorlage nehmen, wenn das Schild signiert sein muss.
printing-flight-signed = Der große QR-Code ist signiert.
