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
