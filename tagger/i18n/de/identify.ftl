# Which connection an end can be by what was measured, why, and what to measure next.

identify-named = { $size } { $connection }

## In one sentence

identify-nothing = Kein Anschluss in den Tabellen passt zu diesen Maßen.
identify-other-seat = Das Gewinde passt zu { $name }, der Dichtsitz aber nicht. Verschiedene Dichtsitze dichten nicht zuverlässig. Kein Anschluss in den Tabellen hat beides: erneut messen.
identify-closest = Kein Anschluss passt zu allen Maßen; am nächsten liegt { $name }. Erneut messen.
identify-many = { $count } Anschlüsse sind noch möglich. Am wahrscheinlichsten: { LIST($names) }.
identify-some = Möglich ist { LIST($names, style: "or") }.
identify-only = Nur { $name } passt.
identify-tie-there = Die Maße unterscheiden nicht zwischen { LIST($names) }. { LIST($first, style: "or") } steht nur deshalb vorn, weil dieser Anschluss an Maschinen aus { $origin } häufiger ist.
identify-tie-elsewhere = Die Maße unterscheiden nicht zwischen { LIST($names) }. { LIST($first, style: "or") } steht nur deshalb vorn, weil die anderen nur an Maschinen aus { $origin } häufig vorkommen.
identify-origin-europe = Europa
identify-origin-north_america = Nordamerika
identify-origin-asia = Asien
identify-lacks = Verglichen werden nur Anschlüsse aus den Tabellen. Nicht darin sind zum Beispiel: { LIST($names) }. Auch wenn ein Anschluss passt, kann es einer von diesen sein.
identify-lacking-french_millimetric = französischer millimetrischer 24°-Konus
identify-lacking-metric_taper = metrisches kegeliges Gewinde
identify-lacking-screw_couplers = Schraubkupplungen (ISO 14541)
identify-lacking-one_manufacturer = Anschlüsse eines einzelnen Herstellers

## What to measure next; each follows a heading such as "Measure next:"

identify-ask-seat = Dichtsitz: sein Winkel mit einer Winkellehre, oder ob es eine O-Ring-Stirnfläche, ein O-Ring-Einschraubanschluss, ein flacher Dichtsitz oder ein kegeliges Gewinde ohne Dichtsitz ist
identify-ask-cone = Konus: ob er außen vorsteht oder innen liegt wie ein Trichter
identify-ask-thread = Gewindedurchmesser mit dem Messschieber: beim Außengewinde außen, beim Innengewinde innen
identify-ask-tpi = Steigung mit der Gewindelehre: Gänge je Zoll oder Millimeter
identify-ask-hex = Schlüsselweite der Mutter
identify-ask-flange_od = Durchmesser des Flanschbunds
identify-ask-bolt_spacing = Abstand der Schrauben, Mitte zu Mitte, an der längeren Seite
identify-ask-flank = Flankenwinkel des Gewindes: eine Gewindelehre mit 55° und eine mit 60° gegen das Licht anlegen
identify-ask-nose = Durchmesser der Nase, die in das Gegenstück greift, an ihrer Stirnkante, der Aufnahme, in die sie greift, oder der Bohrung eines Ringstücks
identify-ask-series = Baureihe, schwer (S) oder leicht (L): nach der Kennzeichnung, der Zeichnung des Einschraublochs oder dem Hersteller der Armatur
identify-ask-series-why = Beide Baureihen messen sich gleich, Druck und Anzug sind verschieden. Ohne die Baureihe gilt der niedrigere Druck, und es wird kein Drehmoment angegeben.
identify-ask-why = Das unterscheidet am besten: { LIST($names) }.

## Why a reading speaks for or against a connection

identify-reading-thread = Gewinde { $measured } gemessen, Nennmaß { $nominal }: { $fits ->
    [yes] passt
   *[no] passt nicht
 }.
identify-reading-tpi = { $measured } Gänge je Zoll gemessen, Nennmaß { $nominal }: { $fits ->
    [yes] passt
   *[no] passt nicht
 }.
identify-reading-pitch = Steigung { $measured } mm gemessen, Nennmaß { $nominal } mm: { $fits ->
    [yes] passt
   *[no] passt nicht
 }.
identify-reading-hex = Sechskant { $measured } gemessen, Nennmaß { $nominal }: { $fits ->
    [yes] passt
   *[no] passt nicht
 }.
identify-reading-tube_od = Rohr { $measured } gemessen, Nennmaß { $nominal }: { $fits ->
    [yes] passt
   *[no] passt nicht
 }.
identify-reading-nose = Nase oder Aufnahme { $measured } gemessen, Nennmaß { $nominal }: { $fits ->
    [yes] passt
   *[no] passt nicht
 }.
identify-reading-flange_od = Flanschbund { $measured } gemessen, Nennmaß { $nominal }: { $fits ->
    [yes] passt
   *[no] passt nicht
 }.
identify-reading-bolt_spacing = Schraubenabstand { $measured } gemessen, Nennmaß { $nominal }: { $fits ->
    [yes] passt
   *[no] passt nicht
 }.
identify-no-value = { $feature ->
    [thread] Gewinde
    [tpi] Steigung
    [hex] Sechskant
    [tube_od] Rohr
    [nose] Nase oder Aufnahme
    [flank] Flankenwinkel
    [flange_od] Flanschbund
    [bolt_spacing] Schraubenabstand
    [side] Lage des Gewindes
    [swivels] Gewindeteil
    [shape] Gewindeform
    [seals] Dichtung
   *[cone] Konus
 }: kein Wert in den Tabellen.
identify-seat-fits = Dichtsitz { $seat }: passt.
identify-seat-differs = Dichtsitz { $seat } gemessen, dieser Anschluss hat aber { LIST($own, style: "or") }: passt nicht. Verschiedene Dichtsitze dichten nicht zuverlässig.
identify-cone-fits = { $cone ->
    [outside] Der Konus steht außen vor: passt.
   *[inside] Der Konus liegt innen: passt.
 }
identify-cone-differs = { $cone ->
    [outside] Der Konus steht außen vor, der dieses Anschlusses liegt aber innen: passt nicht. Sie dichten nicht.
   *[inside] Der Konus liegt innen, der dieses Anschlusses steht aber außen vor: passt nicht. Sie dichten nicht.
 }
identify-flank-fits = Flankenwinkel { $flank }°: passt.
identify-flank-differs = Flankenwinkel { $flank }° gemessen, dieser Anschluss hat aber den anderen: passt nicht. Die Gewinde dichten nicht miteinander.
identify-seat-none = Dichtsitz { $seat } gemessen, dieser Anschluss hat aber keinen: passt nicht.
identify-seat-face = O-Ring-Stirnfläche
identify-seat-boss = O-Ring-Einschraubanschluss
identify-seat-flat = flach
identify-seat-taper = kegeliges Gewinde

## Identifying by looking: a question, its answers, and what is said of them

identify-step-side = Wo sitzt das Gewinde an diesem Ende?
identify-step-form = Das Ende hat kein Gewinde. Was ist es?
identify-step-swivels = Den Schlauch festhalten. Dreht sich der Gewindeteil auf der Armatur?
identify-step-shape = Ein Lineal längs an das Gewinde legen. Ist das Gewinde zylindrisch oder kegelig?
identify-step-seals = Was dichtet an diesem Ende?
identify-step-cone = Steht der Konus vor wie eine Nase, oder liegt er innen wie ein Trichter?
identify-step-seat = Welchen Winkel hat der Konus? Eine Winkellehre anlegen.
identify-answer-side-male = außen (Außengewinde)
identify-answer-side-female = innen, in einer Mutter oder einem Körper (Innengewinde)
identify-answer-side-none = kein Gewinde: Flansch, Kupplung, Steckanschluss, glattes Rohr oder Ringstück
identify-answer-form-flange_head = Flanschbund, von Flansch und Schrauben gehalten
identify-answer-form-eye = Ring, durch den eine Hohlschraube geht
identify-answer-form-coupler_male = Stecker einer Schnellkupplung
identify-answer-form-coupler_female = Muffe einer Schnellkupplung
identify-answer-form-staple_male = Stecknippel, den eine Klammer hält
identify-answer-form-staple_female = Steckmuffe mit Löchern für eine Klammer
identify-answer-form-standpipe = glattes Rohr, mit oder ohne lose Mutter
identify-answer-swivels-yes = dreht sich auf der Armatur
identify-answer-swivels-no = ist mit der Armatur aus einem Stück
identify-answer-shape-parallel = zylindrisch: überall gleicher Durchmesser
identify-answer-shape-taper = kegelig: der Durchmesser ändert sich
identify-answer-seals-cone = Metallkonus, mit oder ohne O-Ring darauf
identify-answer-seals-face = O-Ring in einer ebenen Stirnfläche, oder die ebene Fläche, auf die er drückt
identify-answer-seals-boss = O-Ring am Gewindegrund unter dem Sechskant, oder die Fase, die ihn aufnimmt
identify-answer-seals-flat = Dichtscheibe auf ebener Fläche
identify-answer-seals-thread = das Gewinde selbst, mit Dichtmittel
identify-answer-cone-outside = Nase: steht vor
identify-answer-cone-inside = Trichter: liegt innen
identify-answer-seat-37 = 37° zur Achse (74° insgesamt)
identify-answer-seat-45 = 45° zur Achse (90° insgesamt)
identify-answer-seat-60 = 60° insgesamt (30° zur Achse)
identify-answer-seat-24 = 24° insgesamt (12° zur Achse)
identify-answer-unknown = nicht erkennbar
identify-told-side = Gewinde: { LIST($answers, style: "or") }
identify-told-form = Ende: { LIST($answers, style: "or") }
identify-told-swivels = Gewindeteil: { LIST($answers, style: "or") }
identify-told-shape = Gewindeform: { LIST($answers, style: "or") }
identify-told-seals = Dichtung: { LIST($answers, style: "or") }
identify-told-cone = Konus: { LIST($answers, style: "or") }
identify-told-seat = Konuswinkel: { LIST($answers, style: "or") }
identify-looking-kind = { $connection }, { $form }
identify-looking-title = Nach Augenschein bestimmen
identify-looking-lead = Das Ende reinigen, dann beantworten, was zu sehen ist. Jede Antwort kürzt die Liste; zurück geht es jederzeit.
identify-looking-care = Diese Seite nennt nur Anschlüsse. Sie sagt nie, welchen Druck ein Ende oder ein Schlauch aushält.
identify-looking-open = Nach Augenschein bestimmen, ohne Lehren
identify-looking-answers = Ihre Antworten
identify-looking-change = Ändern
identify-looking-change_one = Ändern: { $answer }
identify-looking-again = Neu beginnen
identify-looking-unsure = Nicht erkennbar
identify-looking-other = Passt kein Bild? Dann kann eine frühere Antwort falsch sein: ändern Sie sie.
identify-looking-done = Der Augenschein kürzt die Liste nicht weiter. Das Ende messen.
identify-looking-measure = Ende messen
identify-looking-remaining = Noch möglich
identify-looking-count = { $count ->
    [one] Noch eine Anschlussart ist möglich.
   *[other] Noch { $count } Anschlussarten sind möglich.
}
identify-looking-none = Kein Anschluss in den Tabellen hat all das. Eine Antwort ändern.
identify-looking-sizes = { $count ->
    [one] Eine Größe: { $first }
   *[other] { $count } Größen, { $first } bis { $last }
}
identify-looking-ruled_out = Nur durch eine Antwort ausgeschlossen
identify-looking-if_wrong = Ist diese Antwort falsch, kann das Ende einer von diesen sein.
identify-looking-known = Aus den Fragen
identify-looks-fits = Gesehen: { $answer }. Passt.
identify-looks-differs = Gesehen: { $answer }. Passt nicht zu diesem Anschluss.

## A hose by its layers and diameters

identify-hose-title = Schlauch nach seinen Lagen
identify-hose-open = Schlauch ohne lesbare Kennzeichnung
identify-hose-lead = Den Außendurchmesser messen, wo die Decke nicht abgenutzt ist, den Innendurchmesser an einem sauberen Schnitt, und dort die Lagen der Verstärkung zählen. Leer lassen, was sich nicht messen lässt.
identify-hose-never_rates = Hier werden nur Normen ausgeschlossen. Über den Druck eines Schlauchs sagt das nie etwas: Schläuche mit gleichen Lagen und Durchmessern haben verschiedene Druckwerte. Den Druck der Kennzeichnung entnehmen oder beim Schlauchhersteller erfragen.
identify-hose-field-od = Außendurchmesser
identify-hose-field-bore = Innendurchmesser
identify-hose-field-kind = Art der Verstärkung
identify-hose-field-layers = Anzahl dieser Lagen
identify-hose-field-lay_line = Kennzeichnung, soweit lesbar
identify-hose-kind-unknown = nicht erkennbar
identify-hose-kind-wire_braid = Drahtgeflecht: die Drähte kreuzen sich
identify-hose-kind-wire_spiral = Drahtspirale: die Drähte liegen nebeneinander und kreuzen sich nicht
identify-hose-kind-wire_helix = eine Drahtwendel im Gummi (Saugschlauch)
identify-hose-kind-fibre = Textil oder Faser, kein Draht
identify-hose-go = Normen ausschließen
identify-hose-remaining = Nicht ausgeschlossen
identify-hose-count = { $count ->
    [0] Alle Normen der Tabellen sind ausgeschlossen. Erneut messen.
    [one] Eine Norm ist nicht ausgeschlossen.
   *[other] { $count } Normen sind nicht ausgeschlossen.
}
identify-hose-excluded = Ausgeschlossen
identify-hose-sizes = Größen: { LIST($sizes) }
identify-hose-size = -{ $dash }
identify-hose-size_od = -{ $dash } (Außendurchmesser { $least } bis { $most })
identify-hose-unverified = { $source } (ungeprüft)
identify-hose-sources = Quelle: { LIST($sources) }
identify-hose-unchecked-layers = Lagen nicht geprüft: kein Wert in den Tabellen.
identify-hose-unchecked-od = Außendurchmesser bei manchen Größen nicht geprüft: kein Wert in den Tabellen.
identify-hose-layers-wire_braid = { $count ->
    [one] ein Drahtgeflecht
   *[other] { $count } Drahtgeflechte
}
identify-hose-layers_range-wire_braid = { $least } bis { $most } Drahtgeflechte
identify-hose-layers-wire_spiral = { $count ->
    [one] eine Drahtspirale
   *[other] { $count } Drahtspiralen
}
identify-hose-layers_range-wire_spiral = { $least } bis { $most } Drahtspiralen
identify-hose-layers-wire_helix = { $count ->
    [one] eine Drahtwendel
   *[other] { $count } Drahtwendeln
}
identify-hose-layers_range-wire_helix = { $least } bis { $most } Drahtwendeln
identify-hose-layers-fibre = { $count ->
    [one] eine Faserlage
   *[other] { $count } Faserlagen
}
identify-hose-layers_range-fibre = { $least } bis { $most } Faserlagen
identify-hose-other_layers = Verstärkung nach den Tabellen: { LIST($own, style: "or") }. Quelle: { LIST($sources) }.
identify-hose-other_bore = Innendurchmesser { $measured } gemessen. Die nächste Größe, -{ $dash }, hat { $nearest }. Quelle: { LIST($sources) }.
identify-hose-other_od = Außendurchmesser { $measured } gemessen. Die nächste Größe, -{ $dash }, hat { $nearest }. Quelle: { LIST($sources) }.
identify-hose-line_names = Die Kennzeichnung nennt { LIST($standards) }.
identify-hose-line_unread = Die Kennzeichnung nennt keine Norm der Tabellen.
identify-hose-line_excluded = Die Kennzeichnung nennt { $standard }, die Messung schließt diese Norm aber aus. Den Schlauch nicht verwenden, bis das geklärt ist: erneut messen oder in die Werkstatt bringen.
identify-hose-line_size = Die Kennzeichnung nennt Größe -{ $dash }, die Messung schließt diese Größe aber aus. Erneut messen.
identify-hose-none = Mindestens ein Wert ist nötig.
    .mend = Mindestens einen eingeben, zum Beispiel den Außendurchmesser.
identify-hose-kind-missing = Zu einer Anzahl von Lagen gehört ihre Art.
    .mend = Die Art der Verstärkung wählen.
identify-hose-bore-too-large = Der Innendurchmesser muss kleiner sein als der Außendurchmesser.
    .mend = Beide prüfen.
identify-hose-not-a-diameter = { $value } ist kein Durchmesser eines Hydraulikschlauchs.
    .mend = Einen Wert von 1 bis 250 mm eingeben; die Einheit prüfen.
identify-hose-not-a-count = { $value } ist keine Anzahl von Lagen.
    .mend = Eine ganze Zahl von 1 bis { $most } eingeben.

## Measurements that cannot be read

identify-two-diameters = Innendurchmesser und Außendurchmesser können nicht zusammen angegeben werden.
    .mend = Nur das gemessene Maß eingeben.
identify-male-inside = Ein Außengewinde braucht einen Außendurchmesser.
    .mend = Den Außendurchmesser eingeben (thread_od).
identify-female-outside = Ein Innengewinde braucht einen Innendurchmesser.
    .mend = Den Innendurchmesser eingeben (thread_id).
identify-none-entered = Mindestens ein Maß ist nötig.
    .mend = Mindestens eines eingeben, zum Beispiel den Außendurchmesser des Gewindes (thread_od).
identify-not-a-fitting-size = { $value } ist keine Größe einer Armatur.
    .mend = Die Einheit prüfen.
identify-not-a-band = { $value } sagt nicht, um wie viel der Messwert falsch sein kann.
    .mend = Nach ± eingeben, weniger als die Hälfte des Messwerts, zum Beispiel 26,9 mm ± 0,4 mm.
identify-two-pitches = Steigung und Gänge je Zoll können nicht zusammen angegeben werden.
    .mend = Nur eines davon eingeben.
identify-not-a-pitch = { $value } ist keine Steigung einer Armatur.
    .mend = In mm eingeben, zum Beispiel 1,5.
identify-not-tpi = { $value } ist keine Anzahl von Gängen je Zoll.
    .mend = Eine Zahl eingeben, zum Beispiel 12 oder 11 1/2.
identify-not-a-form = { $value } ist keine Form eines Anschlusses.
    .mend = Eine davon verwenden: { LIST($known, style: "or") }.
identify-not-a-seat = { $value } ist kein Dichtsitz.
    .mend = Einen davon verwenden: { LIST($known, style: "or") }.
identify-not-a-cone = { $value } ist kein Konus.
    .mend = Einen davon verwenden: { LIST($known, style: "or") }.
identify-not-a-flank = { $value } ist kein Flankenwinkel eines Gewindes.
    .mend = Einen davon verwenden: { LIST($known, style: "or") }.
identify-not-a-series = { $value } ist keine Baureihe.
    .mend = Eine davon verwenden: { LIST($known, style: "or") }.
identify-not-a-origin = { $value } ist keine Herkunft von Maschinen.
    .mend = Eine davon verwenden: { LIST($known, style: "or") }.
identify-not-asked = { $value } ist kein Maß, nach dem gefragt wird.
    .mend = Eines davon verwenden: { LIST($known, style: "or") }.
identify-not-an-answer = { $value } ist keine Antwort auf diese Frage.
    .mend = Einen dieser Werte verwenden: { LIST($known, style: "or") }.

## What was found on a gauge sheet

identify-mark-unreadable = { $given } ist keine Marke eines Lehrenbogens.
    .mend = Die Marke eingeben, wie sie neben der Lehre gedruckt ist, zum Beispiel D26.99 oder P1.814.
identify-mark-twice = { $mark } misst, was schon eingegeben ist.
    .mend = Je Messung einen Wert eingeben.
identify-marks-many = Mehr als { $most } Marken wurden eingegeben.
    .mend = Je Messung eine Marke eingeben.
identify-scale-missing = In welcher Größe der Lehrenbogen gedruckt wurde, ist nicht bekannt.
    .mend = Das Maß der Kontrolllinie von 100 mm eingeben oder das der Linie von 4 in in Zoll. Bedeckt eine Bankkarte ihren Rahmen in beiden Richtungen gerade, 100 mm eingeben.
identify-scale-alone = Die Kontrolllinie korrigiert nur Marken eines Lehrenbogens. Ein mit dem Messschieber gemessener Wert braucht keine Korrektur.
    .mend = Die Marke eingeben oder die Kontrolllinie leer lassen.
identify-scale-beyond = Eine Kontrolllinie von { $given } weicht um mehr als 3 % ab.
    .mend = Den Bogen neu drucken, mit 100 % (tatsächliche Größe).
identify-scale-other-line = 101,6 mm ist die Länge der Linie von 4 in. Hier wird die Linie von 100 mm erwartet.
    .mend = Das Maß der Linie von 100 mm eingeben oder die Länge der Linie von 4 in in Zoll.
identify-mark-other-end = { $thread ->
    [thread_od] Eine Marke mit D gehört zu einem Außengewinde, und dieses Ende ist keines.
   *[thread_id] Eine Marke mit F gehört zu einem Innengewinde, und dieses Ende ist keines.
 }
    .mend = Wählen, was das Ende ist, oder die Marke eines solchen Endes eingeben.
