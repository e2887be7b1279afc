# Measuring a thread by a photo beside the scale card: the card, the page, the readings.

## What to do, on the card's sheet and on the page

measure-title = Gewinde mit einem Foto messen
measure-step-print = Die Karte mit 100 % (tatsächliche Größe) auf mattes Papier drucken und ausschneiden. Nicht laminieren: Glanz verdeckt die Codes.
measure-step-check = Die Prüflinie mit einem Stahlmaßstab oder Messschieber messen und den Wert auf der Seite eingeben.
measure-step-lay = Vor dem Öffnen einer Verbindung den Druck ablassen. Das Gewinde reinigen. Das Ende auf eine ebene, einfarbige Fläche anderer Helligkeit legen: weißes Papier bei blankem Stahl.
measure-step-beside = Die Karte flach hinlegen. Das Gewinde längs der unteren Kante der Karte legen, 10 bis 15 mm darunter. Keinen Code verdecken.
measure-step-photo = Das Telefon waagerecht halten, etwa 300 mm darüber. Karte und Ende füllen das Foto. Kein Blitz, kein Zoom.
measure-limits = Was ein Foto nicht zeigt
measure-limit-flank = Ob die Flanken 55° oder 60° haben: Gewinde beider Arten bleiben möglich.
measure-limit-inside = Innengewinde: Muttern, Überwurfmuttern, Einschraublöcher.
measure-limit-worn = Wie weit ein Gewinde verschlissen ist: Verschlissen oder beschädigt misst es kleiner, verschmutzt oder lackiert größer.
measure-limit-seat = Den Dichtsitz, und ob das Gewinde kegelig ist.
measure-limit-pressure = Einen Betriebsdruck.
measure-defer = Nie eine Schlauchleitung nur nach einem Foto wählen: Die Angaben des Armaturenherstellers gehen vor.

## The card

measure-card-title = Maßstabskarte
measure-card-check = Prüflinie: { $length }
measure-card-lay = Gewinde hier, 10 bis 15 mm unter dieser Kante
measure-card-cut = Hier schneiden

## The page

measure-photo-title = Foto des Endes neben der Maßstabskarte
measure-print-a4 = Karte drucken (A4)
measure-print-letter = Karte drucken (Letter)
measure-field-photo = Foto
measure-field-check = Prüflinie, gemessen
measure-check-hint = Beispiel: 98,5 mm. Gezeichnet ist sie { $length } lang. Ohne diesen Wert ist das Ergebnis weniger sicher.
measure-read-photo = Foto auswerten
measure-reading = Das Foto wird ausgewertet …
measure-another = Neues Foto
measure-by-hand = Stattdessen Messwerte eingeben

## The lines

measure-lines-title = Die Linien auf das Gewinde legen
measure-lines-how = Linien 1 und 2 auf die Gewindespitzen an beiden Seiten schieben, Linien 3 und 4 auf zwei Gewindespitzen. Die Gänge von Linie 3 bis Linie 4 zählen.
measure-lines-marks = An jedem Gang steht ein rosa Strich: Jeder muss auf einer Gewindespitze stehen, sonst ist falsch gezählt.
measure-lines-keys = Pfeiltasten verschieben eine Linie um 0,1 mm, Bild auf und Bild ab um 1 mm.
measure-lines-picture = Das Ende unter der Karte, von oben gesehen. Das Raster ist 10 mm weit.
measure-magnifier = Lupe
measure-field-edge_1 = Linie 1: eine Seite des Gewindes
measure-field-edge_2 = Linie 2: die andere Seite
measure-field-crest_1 = Linie 3: erste Gewindespitze
measure-field-crest_2 = Linie 4: letzte Gewindespitze
measure-field-threads = Gänge von Linie 3 bis Linie 4
measure-field-tilt = Alle Linien drehen (Grad)
measure-field-rest = Breite des Teils, das auf dem Tisch liegt, wenn es nicht das Gewinde ist
measure-rest-hint = Beispiel: 32 mm Schlüsselweite des Sechskants. Leer: Das Gewinde selbst liegt auf dem Tisch.
measure-field-distance = Abstand des Telefons vom Tisch, falls bekannt
measure-distance-hint = Beispiel: 300 mm. Aus dem Foto berechnet: { $distance }.
measure-find = Kanten und Spitzen suchen
measure-finding = Kanten und Gewindespitzen werden gesucht …
measure-found = Vom Programm gefunden. Jede Linie mit der Lupe prüfen, bevor Sie die Werte verwenden.
measure-field-confirmed = Ich habe alle Linien im Bild geprüft
measure-read-off = Ablesen
measure-save-nothing = Das Foto wird nicht gespeichert.

## The readings

measure-result-title = Messwerte
measure-diameter = Außendurchmesser des Gewindes: { $value }, ± { $band }
measure-pitch = Steigung: { $value }, ± { $band } mm
measure-tpi = Das sind { $tpi } Gänge je Zoll.
measure-corrected = Um die Höhe berichtigt: Die Gewindeachse liegt { $height } über dem Tisch, das Telefon war { $distance } darüber.
measure-distance-unsure = Ohne die Brennweite im Foto ist der Abstand unsicher. Den Abstand eingeben oder das Foto von weiter weg aufnehmen.
measure-not-checked = Die Prüflinie wurde nicht gemessen: Der Druck kann größer oder kleiner als gezeichnet sein.
measure-confirm-first = Zuerst die Linien im Bild prüfen und das unten bestätigen.
measure-identify = Mit diesen Werten bestimmen
measure-not-usable = Diese Linien unterscheiden keine Gewinde: Der Durchmesser ist um { $band } unsicher.
    .mend = Den Abstand des Telefons vom Tisch eingeben, das Foto senkrecht von oben aufnehmen oder einen Messschieber verwenden.

## What is wrong, and what to do

measure-field-lines = Linien
measure-field-edges = Linien 1 und 2
measure-field-crests = Linien 3 und 4
measure-not-a-number = { $value } ist keine Zahl.
    .mend = Eine Zahl eingeben, zum Beispiel 12,5.
measure-lines-missing = Eine Linie liegt noch nirgends.
    .mend = Alle vier Linien hinlegen, dann ablesen.
measure-threads-missing = Die Gänge zwischen Linie 3 und 4 sind nicht gezählt.
    .mend = Die Gänge im Bild zählen und die Zahl eingeben.
measure-no-file = Es wurde kein Foto gewählt.
    .mend = Ein Foto wählen.
measure-check-line = Die Prüflinie kann nicht { $value } messen: Nur { $least } bis { $most } lassen sich berichtigen.
    .mend = Die Karte mit 100 % (tatsächliche Größe) drucken, nicht an die Seite angepasst, und erneut messen.
measure-no-card = Im Foto ist keine Maßstabskarte, oder sie ist nicht lesbar.
    .mend = Die gedruckte Karte neben das Ende legen, alle vier Codes im Foto, bei gleichmäßigem Licht und ohne Spiegelungen. Das Foto so wählen, wie das Telefon es aufnahm, keine verkleinerte Kopie.
measure-other-code = Der Code im Foto gehört nicht zur Maßstabskarte.
    .mend = Die gedruckte Maßstabskarte neben das Ende legen.
measure-few-symbols = Nur { $found } der 4 Codes auf der Karte sind lesbar; { $least } sind nötig.
    .mend = Die Codes freilegen, Spiegelungen und Schatten vermeiden, eine beschädigte Karte neu drucken.
measure-two-cards = Im Foto ist mehr als eine Maßstabskarte.
    .mend = Das Foto mit einer Karte aufnehmen.
measure-mirrored = Das Foto ist gespiegelt.
    .mend = Das Spiegeln abschalten oder die Kamera auf der Rückseite des Telefons verwenden.
measure-not-flat = Die Karte liegt nicht flach, oder das Foto ist unscharf.
    .mend = Die Karte flach drücken, das Telefon ruhig halten und das Foto erneut aufnehmen.
measure-too-far = Das Foto ist zu grob: { $found } Pixel je Millimeter; mindestens { $least } sind nötig.
    .mend = Das Foto von näher aufnehmen, sodass Karte und Ende es füllen, und es so wählen, wie das Telefon es aufnahm.
measure-slanted = Das Foto ist um { $degrees }° schräg aufgenommen; höchstens { $most }° lassen sich berichtigen.
    .mend = Das Telefon waagerecht und senkrecht über Karte und Ende halten.
measure-edges-wrong = Linien 1 und 2 liegen weniger als 3 mm oder mehr als 90 mm auseinander.
    .mend = Die Linien auf beide Seiten des Gewindes legen.
measure-crests-wrong = Linien 3 und 4 mit dieser Zahl von Gängen ergeben keine Gewindesteigung.
    .mend = Beide Linien auf Gewindespitzen legen und die Gänge dazwischen zählen.
measure-rest-wrong = Das Teil, das auf dem Tisch liegt, kann nicht so breit sein.
    .mend = Das Teil messen, auf dem das Ende liegt: 3 bis 120 mm, und mindestens das Gewinde selbst.
measure-distance-wrong = Dieser Abstand passt nicht zum Foto, das aus etwa { $expected } aufgenommen ist.
    .mend = Vom Telefon bis zum Tisch messen oder das Feld leer lassen.
measure-not-found = Nahe bei Linien 1 und 2 sind keine Kanten zu sehen.
    .mend = Die Linien näher an die Kanten des Gewindes schieben oder alle Linien von Hand legen.
measure-no-crests = Zwischen Linien 3 und 4 sind keine gleichmäßigen Gewindespitzen zu sehen.
    .mend = Linien 3 und 4 an die beiden Enden des Gewindes legen oder alle Linien von Hand legen.
