# What the trade says of an assembly: rating, temperature, lengths, tightening, and parts that do not go together.

## Working pressure: not known. In LIST($parts) the parts stand with their article, without a case

trade-pressure-not-known = Der Betriebsdruck ist nicht bekannt, weil der zulässige Druck folgender Teile nicht bekannt ist: { LIST($parts) }. Den Wert des Herstellers verwenden.
trade-pressure-at-most = Der Betriebsdruck ist nicht bekannt, weil der zulässige Druck folgender Teile nicht bekannt ist: { LIST($parts) }. Er kann nicht höher sein als { $pressure }, der zulässige Druck { SAY($part, case: "gen") }. Den Wert des Herstellers verwenden.
trade-pressure-unfit = Der Betriebsdruck ist nicht bekannt. { $why }
trade-pressure-unconfirmed = Der eingegebene Betriebsdruck { $entered } (Quelle: { $source }) wird nicht verwendet. Er liegt über jedem Wert der Tabellen für diese Art von Teil: { $part }, { $highest }. Prüfen Sie die Einheit (3000 psi sind 207 bar). Wenn er stimmt, bestätigen Sie ihn.
trade-rating-not-known = Der zulässige Druck { SAY($part, case: "gen") } ist nicht bekannt. { $why }
trade-unfit-hot = Keine Quelle nennt für { $standard } einen Druck über { $limit } ({ $source }).
trade-unfit-fluid = Keine Quelle nennt für { $standard } einen Druck mit { SAY($fluid, case: "dat") } ({ $source }).
trade-unfit-hot-fluid = Keine Quelle nennt für { $standard } mit { SAY($fluid, case: "dat") } einen Druck über { $limit } ({ $source }).
trade-why-standard = { $standard } steht nicht in den Tabellen.
trade-why-hose = Für { $standard } -{ $dash } ist kein zulässiger Druck veröffentlicht.
trade-why-end = Kein zulässiger Druck ist veröffentlicht für { $end }, Werkstoff { $material }.
trade-why-end-steel = Kein zulässiger Druck ist veröffentlicht für { $end }, Werkstoff { $material }. Veröffentlichte Drücke von Armaturen gelten nur für kohlenstoffarmen Stahl.
trade-why-end-ceiling = Kein zulässiger Druck ist veröffentlicht für { $end }, Werkstoff { $material }. Der höchste veröffentlichte Druck der Anschlussart ist { $ceiling } ({ $source }).
trade-why-end-steel-ceiling = Kein zulässiger Druck ist veröffentlicht für { $end }, Werkstoff { $material }. Veröffentlichte Drücke von Armaturen gelten nur für kohlenstoffarmen Stahl. Der höchste veröffentlichte Druck der Anschlussart ist { $ceiling } ({ $source }).
trade-why-end-condition = Die Quelle des zulässigen Drucks für { $end }, Werkstoff { $material }, gilt nur bis { $limit }. Die Höchsttemperatur eingeben oder den Wert des Herstellers verwenden.
trade-why-part-condition = Der zulässige Druck des Schlauchs { $part } gilt nur bis { $limit }. Die Höchsttemperatur eingeben oder den Wert des Herstellers verwenden.

## Working pressure: known, with something to be said of it

trade-same-thread = { SAY($part, case: "start") }: Keine Gewindelehre unterscheidet { LIST($families) }. Es gilt der niedrigere der beiden zulässigen Drücke.
trade-rating-unverified = Der zulässige Druck { SAY($part, case: "gen") }, { $pressure }, ist ungeprüft (Quelle: { $source }). Mit den Angaben des Herstellers abgleichen.
trade-graded = { $source }; { $grade }
trade-grade-standard = Norm eingesehen
trade-grade-document = Unterlage eines Herstellers oder einer Behörde eingesehen
trade-grade-secondary = Tabelle aus zweiter Hand
trade-grade-practice = übliche Praxis
trade-grade-unverified = ungeprüft: keine veröffentlichte Quelle zur Hand
trade-grade-shop = eigener Wert der Werkstatt
trade-grade-given = mit Quelle eingegebener Wert
trade-burst-not-known = { SAY($part, case: "start") }: Schnellkupplungen und Steckanschlüsse werden mit Berstdrücken ab dem 3-fachen Betriebsdruck angeboten. Der Mindestberstdruck der Schlauchleitung ist nicht bekannt: Angaben des Herstellers verwenden.
trade-outside-standard = -{ $dash } ist keine Größe von { $standard }: der zulässige Druck stammt von einem einzelnen Hersteller. Mit den Angaben des Schlauchherstellers abgleichen.
trade-edition-not-entered = { $standard } -{ $dash } hat je nach Ausgabe der Norm verschiedene zulässige Drücke ({ LIST($ratings) }), und es ist keine Ausgabe angegeben. Es gilt der niedrigere Wert, { $pressure }. Die Ausgabe steht im Schlauchaufdruck.
trade-edition-rating = { $edition }: { $pressure }
trade-pressure-entered = Der Betriebsdruck ist der eingegebene Wert (Quelle: { $source }).
trade-pressure-entered-for = Der Betriebsdruck ist der eingegebene Wert (Quelle: { $source }). Er ersetzt den fehlenden zulässigen Druck folgender Teile: { LIST($parts) }.
trade-pressure-too-high = Der eingegebene Druck, { $entered } (Quelle: { $source }), liegt über dem zulässigen Druck { SAY($part, case: "gen") }, { $pressure }. Es gilt der niedrigere Wert.
trade-pressure-too-high-for = Der eingegebene Druck, { $entered } (Quelle: { $source }), liegt über dem zulässigen Druck { SAY($part, case: "gen") }, { $pressure }. Es gilt der niedrigere Wert. Er ersetzt den fehlenden zulässigen Druck folgender Teile: { LIST($parts) }.
trade-pressure-beyond-hose = Der eingegebene Druck, { $entered }, liegt über dem zulässigen Druck des Schlauchs innerhalb seiner Grenzen, { $pressure } (Quelle: { $source }). Es gilt der niedrigere Wert.

## A manufacturer's value of one part: entered, kept by the shop, or asked for

trade-rating-too-high = Der eingegebene Herstellerwert { SAY($part, case: "gen") }, { $entered } (Quelle: { $source }), liegt über dem veröffentlichten Wert, { $pressure }. Es gilt der niedrigere Wert.
trade-rating-not-lifted = { SAY($part, case: "start") }: Der eingegebene Herstellerwert { $entered } (Quelle: { $source }) gilt nicht. Über eine Grenze von Medium oder Wärme hinaus zählt er nur, wenn seine Quelle das Medium und die Höchsttemperatur dieser Schlauchleitung nennt: Geben Sie beides mit ihm ein, dazu die Höchsttemperatur der Schlauchleitung.
trade-rating-other-fluid = { SAY($part, case: "start") }: Der eingegebene Herstellerwert { $entered } (Quelle: { $source }) gilt nicht: Seine Quelle nennt ein anderes Medium als das dieser Schlauchleitung ({ $fluid }).
trade-rating-too-hot = { SAY($part, case: "start") }: Der eingegebene Herstellerwert { $entered } (Quelle: { $source }) gilt nicht: Seine Quelle nennt ihn nur bis { $limit }. Geben Sie die Höchsttemperatur der Schlauchleitung ein oder einen Wert für diese Temperatur.
trade-rating-unconfirmed = { SAY($part, case: "start") }: Der eingegebene Herstellerwert { $entered } (Quelle: { $source }) wird nicht verwendet. Er liegt über jedem Wert der Tabellen für diese Art von Teil, { $highest }. Prüfen Sie die Einheit (3000 psi sind 207 bar). Wenn er stimmt, bestätigen Sie ihn.
trade-rating-unpublished = { SAY($part, case: "start") }: Der eingegebene Herstellerwert { $entered } (Quelle: { $source }) wird nicht verwendet. Er liegt über jedem veröffentlichten Wert für dieses Teil, { $highest }. Prüfen Sie die Einheit (3000 psi sind 207 bar). Wenn die Quelle ihn für genau dieses Teil nennt, bestätigen Sie ihn.
trade-rating-impossible = Kein solches Teil arbeitet über { $limit }.
    .mend = Die Einheit prüfen: 3000 psi sind 207 bar.
trade-rating-confirm = { $entered } liegen über jedem Wert der Tabellen für diese Art von Teil: { $part }, { $highest }.
    .mend = Einheit prüfen: 3000 psi sind 207 bar. Stimmt der Wert, diesen bestätigen.
trade-rating-confirm-unpublished = { $entered } liegen über jedem veröffentlichten Wert für dieses Teil: { $part }, { $highest }.
    .mend = Einheit prüfen: 3000 psi sind 207 bar. Nennt die Quelle den Wert für genau dieses Teil, diesen bestätigen.
trade-rating-by-shop = { SAY($part, case: "start") }: { $pressure } ist der Wert Ihrer Werkstatt (Quelle: { $source }).
trade-rating-by-given = { SAY($part, case: "start") }: { $pressure } ist der eingegebene Herstellerwert (Quelle: { $source }).
trade-rating-above-published = { SAY($part, case: "start") }: { $pressure } (Quelle: { $source }) liegt über jedem veröffentlichten Wert für dieses Teil; der höchste ist { $highest }. Stellen Sie sicher, dass es das Teil ist, von dem die Quelle spricht.
trade-ask-rating-hose = Den Betriebsdruck des Schlauchherstellers mit seiner Quelle eingeben. Ihre Werkstatt kann ihn für jede weitere Schlauchleitung behalten.
trade-ask-rating-end = { SAY($part, case: "start") }: den Betriebsdruck des Armaturenherstellers mit seiner Quelle eingeben. Ihre Werkstatt kann ihn für jede weitere Schlauchleitung behalten.
trade-ask-approval = Die Freigabe des Schlauchherstellers für dieses Medium ({ $fluid }) mit Höchsttemperatur und Quelle eingeben. Ihre Werkstatt kann sie für jede weitere Schlauchleitung behalten.
trade-keep-not-used = Dieser Wert bestimmt das Teil hier nicht und wird deshalb nicht behalten.
    .mend = Wert, Einheit und die Angaben seiner Quelle prüfen; der Hinweis daneben nennt den Grund.
trade-keep-series = Die Baureihe dieses Endes ist nicht angegeben: Ein Wert der schweren Reihe darf nicht für die leichte gelten.
    .mend = Die Baureihe, S oder L, eingeben, bevor der Wert behalten wird.
trade-keep-part = Die Teilenummer des Schlauchherstellers fehlt: Eine Freigabe gilt nur für diesen Schlauch.
    .mend = Die Teilenummer des Schlauchs eingeben.
trade-keep-nothing = Es gibt keinen Herstellerwert, den man behalten könnte.
    .mend = Einen Wert mit seiner Quelle für den Schlauch oder ein Ende eingeben.

## Temperature and fluid

trade-too-hot = { $given } liegt über der Höchsttemperatur von { $standard }, { $limit } ({ $source }). Eine Druckminderung dafür ist nicht veröffentlicht: einen Schlauch verwenden, der für diese Temperatur zugelassen ist.
trade-too-cold = { $given } liegt unter der Mindesttemperatur von { $standard }, { $limit } ({ $source }). Einen Schlauch verwenden, der für diese Temperatur zugelassen ist.
trade-cold-limit-of-fluid = Mit { SAY($fluid, case: "dat") } hat { $standard } eine Mindesttemperatur von { $limit } ({ $source }). Darunter nicht verwenden.
trade-fluid-not-suited = { $standard } ist nicht für { SAY($fluid, case: "acc") } geeignet ({ $source }). Einen Schlauch verwenden, der für dieses Medium gemacht ist.
trade-too-hot-for-fluid = Mit { SAY($fluid, case: "dat") } hat { $standard } eine Höchsttemperatur von { $limit } ({ $source }), die Spezifikation nennt aber { $given }.
trade-unfit-fluid-unnamed = Keine Quelle sagt, dass { $standard } für { SAY($fluid, case: "acc") } geeignet ist.
trade-fluid-unnamed = Keine Quelle sagt, dass { $standard } für { SAY($fluid, case: "acc") } geeignet ist; deshalb gilt kein Druck. Den Schlauchhersteller fragen und den zulässigen Druck mit dem Medium und der Höchsttemperatur eingeben, die die Quelle nennt.
trade-fluid-approved = { $standard } darf dieses Medium ({ $fluid }) bis { $limit } führen, laut Freigabe des Herstellers ({ $source }). Sie gilt nur für den Schlauch dieses Herstellers: Stellen Sie sicher, dass er es ist.
trade-fluid-approved-beyond = { $standard } darf dieses Medium ({ $fluid }) bis { $limit } führen, laut Freigabe des Herstellers ({ $source }), die über das hinausgeht, was veröffentlichte Quellen erlauben. Sie gilt nur für den Schlauch dieses Herstellers: Stellen Sie sicher, dass er es ist.
trade-fluid-as-oil = Keine Quelle nennt { SAY($fluid, case: "acc") } für { $standard }. Das Medium wird wie ein Öl auf Mineralölbasis behandelt: beim Schlauchhersteller bestätigen lassen.
trade-pressure-not-lifted = Der eingegebene Druck, { $entered } (Quelle: { $source }), gilt nicht. Jenseits einer Grenze für Medium oder Temperatur zählt er nur, wenn seine Quelle das Medium und die Höchsttemperatur dieser Schlauchleitung nennt: beide dazu eingeben.
trade-overrated = Diese Schlauchleitung wurde für { $was } registriert. Nach den heutigen Werten ist sie für höchstens { $now } zulässig. Den niedrigeren Wert verwenden.
trade-overrated-at_most = Diese Schlauchleitung wurde für höchstens { $was } registriert. Nach den heutigen Werten sind es höchstens { $now }. Den niedrigeren Wert verwenden.
trade-overrated-no-longer = Diese Schlauchleitung wurde für { $was } registriert. Nach den heutigen Werten gilt kein Druck. { $why } Nicht verwenden, bevor die Werkstatt den Betriebsdruck genannt hat.

## Lengths and bends

trade-vacuum-not-known = Keine Quelle nennt, welchen Unterdruck { $standard } -{ $dash } aushält. Beim Schlauchhersteller nachfragen.
trade-vacuum-too-deep = { $standard } -{ $dash } hält { $rated } aus ({ $source }), die Spezifikation verlangt { $asked }: Der Schlauch kann zusammenfallen. Einen dafür ausgelegten Saugschlauch verwenden.
trade-vacuum-unverified = Der zulässige Unterdruck von { $standard } -{ $dash }, { $rated }, ist nicht geprüft (Quelle: { $source }). Mit den Angaben des Schlauchherstellers bestätigen.
trade-length-tolerance-unverified = Die Längentoleranz ist ungeprüft (Quelle: { $source }). Mit den Angaben des Schlauchherstellers abgleichen.
trade-length-tolerance-not-known = Die Längentoleranz ist nicht bekannt: Für diese Länge und Nennweite ist keine Toleranz veröffentlicht. Den Wert des Schlauchherstellers verwenden.
trade-bend-not-known = Der Mindestbiegeradius ist nicht bekannt. Den Wert des Schlauchherstellers verwenden.
trade-bend-unverified = Der Mindestbiegeradius, { $radius }, ist ungeprüft (Quelle: { $source }). Mit den Angaben des Schlauchherstellers abgleichen.
trade-too-short-to-bend = Eine Biegung um 90° mit dem Mindestbiegeradius braucht { $needed } Schlauch, die Schlauchleitung ist aber nur { $length } lang. Nahezu gerade einbauen ({ $source }).
trade-length-under-ends = Schon die beiden verpressten Enden sind länger: mindestens { $ends } ({ $source }).
    .mend = Länge und Einheit prüfen.
trade-length-unconfirmed = { $length } ist mehr als { $most }.
    .mend = Die Einheit prüfen. Wenn die Länge stimmt, sie bestätigen.
trade-little-free-hose = Zwischen den verpressten Enden bleiben höchstens { $free } freier Schlauch. Gerader Schlauch an beiden Enden braucht { $needed } ({ $source }).
trade-median = Median von { $count } Herstellerwerten, { $low } bis { $high }
trade-length-too-short = Die Schlauchleitung ist nicht länger als ihre beiden Enden zusammen, { $ends }.
    .mend = Die Länge und die Maße der Enden prüfen.
trade-dimension-missing = Dieses Maß wird gebraucht, um die Länge umzurechnen.
    .mend = In mm eingeben, nach der Zeichnung des Armaturenherstellers.

## Parts that do not exist or do not go together

trade-standard-read-as = { $given } wird als { $standard } gelesen.
trade-standard-not-known = { $given } steht nicht in den Tabellen: Es gelten nur die eingegebenen Werte.
trade-not-a-standard = { $standard } ist keine Schlauchnorm in den Tabellen.
    .mend = Eine davon verwenden: { LIST($standards, style: "or") }. Für jeden anderen Schlauch den Betriebsdruck und seine Quelle eingeben.
trade-layline-pressures = Auf dem Schlauch sind mehrere Betriebsdrücke aufgedruckt: der niedrigste gilt.
trade-layline-sizes = Die aufgedruckten Größen stimmen nicht überein: { LIST($sizes) }. Die Größe eingeben.
trade-layline-pressure-above = Der aufgedruckte Druck { $pressure } liegt über jedem veröffentlichten Wert für diesen Schlauch in dieser Größe ({ LIST($standards) }); der höchste ist { $highest }. Prüfen Sie die aufgedruckte Größe und Einheit (3000 psi sind 207 bar).
trade-layline-pressure-impossible = Der aufgedruckte Druck { $pressure } wird nicht verwendet: Kein solcher Schlauch arbeitet über { $limit }. Prüfen Sie die aufgedruckte Einheit (3000 psi sind 207 bar).
trade-carries-air_brake = Druckluft für Bremsen
trade-carries-fuel = Benzin, Diesel und Biodiesel
trade-carries-marine_fuel = Kraftstoff auf kleinen Booten
trade-carries-lpg = Flüssiggas
trade-carries-military = was ihre Spezifikation nennt
trade-carries-power_steering = Servolenkungsöl
trade-carries-refrigerant = Kältemittel; die Schlauchleitung wird als Ganzes zugelassen
trade-carries-steam = Sattdampf
trade-other-hose = { $standard } ist kein Hydraulikschlauch. Vorgesehen für: { $carries }.
    .mend = Den Betriebsdruck des Schlauchherstellers mit seiner Quelle und das Medium eingeben.
trade-other-hose-fluid = { $standard } ist nicht für dieses Medium. Vorgesehen für: { $carries }.
    .mend = Das Medium eingeben, das fließt, oder einen anderen Schlauch verwenden.
trade-jetting-hose = { $standard } ist ein Schlauch für Hochdruckwasserstrahlen: sein Druck lässt weniger Abstand zum Bersten und gilt nicht für Hydraulik.
    .mend = Einen Hydraulikschlauch verwenden.
trade-not-a-standard-nearest = { $standard } ist keine Schlauchnorm in den Tabellen.
    .mend = Schreibweise prüfen: { LIST($nearest, style: "or") }? Für jeden anderen Schlauch den Betriebsdruck und seine Quelle eingeben.
trade-not-a-hose-size = { $dash } ist keine Größe von { $standard }.
    .mend = Eine davon verwenden: { LIST($sizes, style: "or") }.
trade-not-a-size = { $size } ist keine Größe dieses Anschlusses: { $connection }.
    .mend = Eine davon verwenden: { LIST($sizes, style: "or") }.
trade-not-a-form = Diesen Anschluss gibt es nicht in dieser Form ({ $form }): { $connection }.
    .mend = Eine davon verwenden: { LIST($forms, style: "or") }.
trade-not-a-form-instead = Diesen Anschluss gibt es nicht in dieser Form ({ $form }): { $connection }.
    .mend = Für eine Überwurfmutter, die zum Außengewinde passt, { $instead } wählen.
trade-not-a-series = Dieser Anschluss hat keine Baureihe: { $connection }.
    .mend = Baureihe leeren.
trade-not-this-series = Diese Baureihe gibt es bei diesem Anschluss nicht: { $connection }.
    .mend = Möglich: { LIST($series, style: "or") }.
trade-dash-names-tube = Die Dash-Größe von { $standard } nennt das Rohr, nicht die Nennweite: -{ $dash } hat einen Innendurchmesser von { $bore }. Die Armaturen für diesen Schlauch verwenden; ein Nippel für einen anderen Schlauch -{ $dash } passt nicht.
trade-tail-for-another-hose = Der Nippel der Armatur ist für Schlauch -{ $tail }, der Schlauch ist aber -{ $hose }.
    .mend = Eine Armatur mit Nippel -{ $hose } oder Schlauch -{ $tail } verwenden.
trade-end-for-another-hose = { $size } { $connection } ist für Schlauch { LIST($usual, style: "or") } gemacht, der Schlauch ist aber -{ $hose }.
    .mend = Bei einer Sprunggröße den Schlauchnippel dieses Endes (hose_dash) auf { $hose } setzen. Sonst die Größe berichtigen.
trade-jump-size = { SAY($part, case: "start") } ist eine Sprunggröße: { $size } { $connection } an Schlauch -{ $hose } (üblich: { LIST($usual, style: "or") }).
trade-edition-too-new = { $year } ist neuer als { $newest }, die neueste Ausgabe in den Tabellen.
    .mend = Leeren, damit der niedrigere Wert gilt, oder die auf dem Schlauch aufgedruckte Ausgabe eingeben.
trade-edition-not-known = { $edition } ist keine Ausgabe von { $standard } in den Tabellen.
    .mend = Eine davon verwenden: { LIST($editions, style: "or") }.
trade-edition-none = { $edition } ist keine Ausgabe von { $standard } in den Tabellen.
    .mend = Leeren: Diese Norm hat nur einen Satz von Werten.

## Tightening. $joint is what the source calls the joint; lubrication follows it in lower case

trade-tightening-not-known = { SAY($part, case: "start") }: Wie weit anzuziehen ist, ist nicht bekannt. Den Wert des Armaturenherstellers verwenden.
trade-torque-by-ring = { SAY($part, case: "start") }: Das Anziehen hängt vom Dichtring und von der Schraube oder dem Zapfen ab, die verschieden sind: { LIST($torques) }. Den Wert des Armaturenherstellers für dessen Dichtring verwenden.
trade-two-rigid-ends = Kein Ende ist drehbar: Beide drehen beim Einschrauben den ganzen Schlauch mit. Der Einbau gelingt mit einer Verschraubung oder einem drehbaren Adapter an einem Ende.
trade-no-nut-at-either-end = Kein Ende hat eine eigene Mutter. Mindestens ein Gegenstück muss eine haben; sonst eine Verschraubung oder einen drehbaren Adapter verwenden.
trade-mating-nut-needed = { SAY($part, case: "start") } hat keine eigene Mutter, und das andere Ende ist nicht drehbar. Das Gegenstück muss eine Mutter haben; sonst eine Verschraubung oder einen drehbaren Adapter verwenden.
trade-torque-series = { SAY($part, case: "start") }: Es werden weder Drehmoment noch Schlüsselflächen angegeben, weil die Baureihe nicht bekannt ist. Ein Einschraubzapfen der schweren Baureihe (S) braucht mehr als einer der leichten (L) und löst sich bei dessen Drehmoment. Die Baureihe eingeben oder den Wert des Armaturenherstellers verwenden.
trade-stud-not-nut = { SAY($part, case: "start") }: Das Anziehdrehmoment gilt für einen Einschraubzapfen, der mit Dichtscheibe oder O-Ring im Einschraubloch dichtet. Eine Mutter auf 60°-Konus verträgt weniger: dafür den Wert des Armaturenherstellers verwenden.
trade-tightening-soft-flange = { SAY($part, case: "start") }: Wie weit anzuziehen ist, ist nicht bekannt. Die Schrauben eines Flansches bleiben aus Stahl, für Flanschbünde aus { $material } ist keine Klemmkraft veröffentlicht, und mit dem halben Wert für Stahl könnte die Verbindung lecken. Den Wert des Armaturenherstellers verwenden.
trade-torque-unverified = { SAY($part, case: "start") }: Das Anziehdrehmoment ist ungeprüft (Quelle: { $source }). Mit den Angaben des Armaturenherstellers abgleichen.
trade-soft-material = { SAY($part, case: "start") }: { $material } verträgt ein kleineres Anziehdrehmoment als Stahl, und eine Zahl von Schlüsselflächen ist dafür nicht veröffentlicht.
trade-torque-basis = { $joint }, { $lubrication }
trade-torque-basis-screw = { $joint }, { $lubrication }, je Schraube { $screw }, { $grade ->
    [none] Festigkeitsklasse nicht angegeben
   *[other] Festigkeitsklasse { $grade }
 }
trade-screw-class-not-stated = { SAY($part, case: "start") }: Die Quelle dieses Anziehdrehmoments ({ $source }) nennt die Festigkeitsklasse der Schrauben { $screw } nicht. Die Klasse auf den Schraubenköpfen ablesen und den Flanschhersteller nach dem Wert dafür fragen.
trade-screw-class-tables = { SAY($part, case: "start") }: Die Quelle dieses Anziehdrehmoments ({ $source }) nennt die Festigkeitsklasse der Schrauben { $screw } nicht. Allgemeine Schraubentabellen, die keine Flanschtabellen sind, nennen je Klasse { LIST($torques) }. Die Klasse auf den Schraubenköpfen ablesen und den Flanschhersteller nach dem Wert dafür fragen.
trade-torque-of-class = { $grade }: { $torque }
trade-screw-class-needed = { SAY($part, case: "start") }: Die Schrauben müssen der Festigkeitsklasse { LIST($classes, style: "or") } entsprechen (ungeprüft, Quelle: { $source }). Nie schwächere verwenden.
trade-other-screws = { SAY($part, case: "start") }: Das Anziehdrehmoment gilt für Schrauben { $screw }. Derselbe Flansch wird auch mit Schrauben anderer Größe oder Klasse gebaut: { LIST($torques) }. Nachsehen, welche er hat.
trade-torque-of-screw = { $screw } ({ $grade ->
    [none] Klasse nicht angegeben
   *[other] Klasse { $grade }
 }): { $torque } ({ $source })
trade-torque-basis-reduced = { $joint }, { $lubrication }, { $percent } % des Werts für Stahl bei { $material } ({ $source })
trade-torque-basis-shared = { $basis }, gemeinsamer Bereich von { $count } Quellen
trade-torque-basis-others = { $basis }, andere Quellen { $others }
trade-torque-of-source = { $torque } ({ $joint }: { $source })
trade-torque-sources-disagree = { SAY($part, case: "start") }: Die Quellen für das Anziehdrehmoment widersprechen sich: { LIST($torques) }. Den Wert des Armaturenherstellers verwenden.
trade-flats-of-source = { $flats } ({ $source })
trade-flats-sources-disagree = { SAY($part, case: "start") }: Die Quellen für die Schlüsselflächen widersprechen sich: { LIST($flats) }. Den Wert des Armaturenherstellers verwenden.
trade-flats-two-bases = { SAY($part, case: "start") }: Schlüsselflächen { $basis } zählen (Quelle: { $source }); eine andere Quelle ({ $contrary }) nennt dieselbe Zahl { $other }.
trade-spread = { LIST($values) } ({ $joint }{ $screw ->
    [none] { "" }
   *[other] , Schraube { $screw }
 }{ $sizes ->
    [all] , alle Größen
   *[one] { "" }
 }): { $source }
trade-spread-material = { LIST($values) } ({ $joint }{ $screw ->
    [none] { "" }
   *[other] , Schraube { $screw }
 }, { $material }{ $sizes ->
    [all] , alle Größen
   *[one] { "" }
 }): { $source }
trade-aluminium-port = in ein Einschraubloch aus Aluminium
trade-lubrication-not_stated = Schmierung nicht angegeben
trade-lubrication-lightly_oiled = leicht geölt
trade-lubrication-lubricated = geölt
trade-lubrication-run_on_dry = Drehmoment für geölte Verbindung, Mutter trocken bis zum Anliegen aufgeschraubt
trade-lubrication-dry = trocken
trade-lubrication-threads = Gewinde geölt
trade-lubrication-threads_fluid_or_grease = Gewinde geschmiert (Hydrauliköl, Montagepaste oder Vaseline)
trade-lubrication-threads_engine_oil = Gewinde mit Motoröl geölt
trade-lubrication-sealant_two_threads_bare = Gewindedichtmittel, die ersten zwei Gänge frei
trade-lubrication-sealed = Gewinde mit Dichtmittel
trade-lubrication-lubricated_or_sealed = geölt oder mit Dichtmittel
trade-lubrication-o_ring_oiled = O-Ring geölt
trade-lubrication-o_ring_system_oil = geölt (Systemöl auf dem O-Ring)
trade-lubrication-o_ring_hydraulic_fluid = geölt (saubere Hydraulikflüssigkeit auf dem O-Ring)
trade-lubrication-o_ring_and_threads = O-Ring und Gewinde geölt

## Files of the tables

trade-not-a-folder = { $folder } ist kein Ordner.
    .mend = Den Ordner mit den CSV-Dateien eingeben.
trade-not-a-table = { $file } ist keine der Tabellen.
    .mend = Eine davon verwenden: { LIST($tables, style: "or") }.
trade-wrong-columns = { $file } hat falsche Spalten: { LIST($columns) }.
    .mend = Die Kopfzeile berichtigen.
trade-cell-not-read = Diese Zelle ist nicht lesbar.
    .mend = Die Zelle berichtigen.
trade-row-not-above-zero = Der Wert muss größer als 0 sein.
    .mend = Die Zelle berichtigen.
trade-row-negative = Der Wert darf nicht negativ sein.
    .mend = Die Zelle berichtigen.
trade-row-range = Der Mindestwert { $low } liegt über dem Höchstwert { $high }.
    .mend = Einen der beiden berichtigen.
trade-row-above-possible = Der Wert liegt über { $limit }, mehr ist hier nicht möglich.
    .mend = Die Einheit der Spalte prüfen: 3000 psi sind 207 bar.
trade-row-no-source = Die Zeile nennt keine Quelle.
    .mend = Eintragen, woher der Wert stammt. Beispiel: Datenblatt 7 des Herstellers.
trade-row-no-maximum = Zu einem Mindestdrehmoment gehört das Höchstdrehmoment.
    .mend = Das Höchstdrehmoment eintragen.
trade-row-taper-flats = Kegelige Gewinde werden nicht nach Schlüsselflächen angezogen.
    .mend = Stattdessen ganze Umdrehungen eintragen.
trade-row-unknown-word = Dieses Wort ist hier nicht bekannt.
    .mend = Eines davon verwenden: { LIST($words, style: "or") }.
trade-row-printed-not-read = Der gedruckte Wert ist nicht lesbar.
    .mend = Mit seiner Einheit eintragen, wie die Quelle ihn druckt, oder die Zelle leer lassen. Beispiel: 3000 psi.
trade-row-printed = Die Zeile widerspricht sich: { $column } ist { $given }, aber { $printed } entspricht { $found }.
    .mend = Den Wert oder den gedruckten Wert berichtigen.


## Whether one assembly may take the place of another: "old" is the one to be replaced, "new" the one to replace it

trade-verdict-replaces = Die neue Schlauchleitung ersetzt die alte.
trade-verdict-with-care = Die neue Schlauchleitung kann die alte ersetzen, mit Unterschieden.
trade-verdict-does-not-replace = Die neue Schlauchleitung ersetzt die alte nicht.
trade-compare-values = Alt: { $old }, neu: { $new }.
trade-compare-both = Beide { $both }.
trade-compare-not-specified = nicht angegeben
trade-compare-none = keiner
trade-compare-pressure-same-parts = Gleiche Teile; Betriebsdruck nicht bekannt.
trade-compare-pressure-by-part = Der Betriebsdruck der alten Schlauchleitung ist nicht bekannt, aber kein Teil der neuen ist schwächer.
trade-compare-alike = Alt: { $old }, neu: { $new }. { $how }
trade-compare-turned = Die neue Schlauchleitung andersherum einbauen: Ihr Ende A kommt an die Stelle von Ende B. Der Verdrehwinkel bleibt gleich.
trade-compare-pressure-not-known = { $which ->
    [old] Der Betriebsdruck der alten Schlauchleitung ist nicht bekannt. In der Spezifikation mit seiner Quelle eingeben.
    [new] Der Betriebsdruck der neuen Schlauchleitung ist nicht bekannt. In der Spezifikation mit seiner Quelle eingeben.
   *[both] Der Betriebsdruck beider Schlauchleitungen ist nicht bekannt. In den Spezifikationen mit seiner Quelle eingeben.
 }
trade-compare-pressure-lower = Die neue Schlauchleitung hat einen niedrigeren Betriebsdruck. Alt: { $old }, neu: { $new }.
trade-compare-bore = Die Dash-Größe eines der Schläuche nennt das Rohr: Die Innendurchmesser sind { $old } und { $new }.
trade-compare-dash-smaller = Der neue Schlauch ist -{ $new }, kleiner als -{ $old }: weniger Durchfluss, mehr Wärme.
trade-compare-dash-larger = Der neue Schlauch ist -{ $new }, größer als -{ $old }. Den verfügbaren Platz prüfen.
trade-compare-suction = Alt: { $old }, ein Saugschlauch; neu: { $new }. Ein Druckschlauch kann unter Unterdruck zusammenfallen.
trade-compare-described = { $old } und { $new } sind in Worten beschrieben. Die Teile selbst vergleichen.
trade-compare-series = { $old } und { $new }: Die schwere (S) und die leichte (L) Baureihe unterscheiden sich in Drehmoment und zulässigem Druck. Feststellen, welche es ist.
trade-compare-material = Alt: { $old }, neu: { $new }. Korrosionsbeständigkeit und zulässigen Druck laut Hersteller prüfen.
trade-compare-shape = Alt: { $old }, neu: { $new }. Die Verlegung des Schlauchs ändert sich.
trade-compare-length-basis = Alt: { $old } gemessen; neu: { $new } gemessen. Die Längen lassen sich nicht vergleichen. Beide zwischen denselben Punkten messen.
trade-compare-length-no-tolerance = Alt: { $old }, neu: { $new }. Für die alte Schlauchleitung ist keine Toleranz bekannt.
trade-compare-length-within = Alt: { $old }, neu: { $new }. Innerhalb der Toleranz, +{ $plus } / -{ $minus }.
trade-compare-length-short = Alt: { $old }, neu: { $new }. Zu kurz: Der Schlauch stünde unter Zug.
trade-compare-length-long = Alt: { $old }, neu: { $new }. Zu lang: Der Schlauch kann scheuern oder abknicken.
trade-compare-clocking-none = Kein Verdrehwinkel: Keine der beiden hat zwei Bögen.
trade-compare-clocking-within = Alt: { $old }, neu: { $new }. Innerhalb der Toleranz, ±{ $allowed }.
trade-compare-clocking-off = Alt: { $old }, neu: { $new }. Unterschied { $off }: Der Schlauch würde verdreht.
trade-compare-bend-not-known = Der Mindestbiegeradius ist nicht für beide bekannt.
trade-compare-bend-same-hose = Der Mindestbiegeradius ist nicht bekannt, aber der Schlauch ist der gleiche.
trade-compare-bend-larger = Alt: { $old }, neu: { $new }. Die neue Schlauchleitung nicht so eng biegen wie die alte.
trade-compare-temperature-none = Für die alte Schlauchleitung ist keine Temperatur angegeben, und die Grenze ihres Schlauchs ist nicht bekannt.
trade-compare-temperature-same-hose = Die Temperaturgrenze ist nicht bekannt, aber der Schlauch ist der gleiche.
trade-compare-temperature-limits = Für die alte Schlauchleitung ist keine Temperatur angegeben: Ihr Schlauch ist bis { $old } zugelassen, der neue bis { $new }.
trade-compare-temperature-not-known = Die alte Schlauchleitung wird bis { $old } verwendet; die Grenze der neuen ist nicht bekannt.
trade-compare-temperature = Die alte Schlauchleitung wird bis { $old } verwendet; der neue Schlauch ist bis { $new } zugelassen.
trade-compare-vacuum = Die alte wird bei { $old } verwendet; die neue ist für { $new } ausgelegt.
trade-compare-fluid-none = Für keine der beiden ist ein Medium angegeben.
trade-compare-fluid-no-source = Beide für { SAY($fluid, case: "acc") }, aber keine Quelle sagt, dass { $standard } dafür geeignet ist. Den Schlauchhersteller fragen.
trade-compare-fluid-ask = Alt: { $old }, neu: { $new }. Den Schlauchhersteller fragen.
trade-compare-fluid-unknown = Alt: { $old }, neu: { $new }. Keine Quelle sagt, dass der neue Schlauch für das Medium der alten Schlauchleitung geeignet ist.
trade-compare-covers-missing = Der neuen Schlauchleitung fehlt: { LIST($covers) }.
trade-compare-covers-added = Die neue Schlauchleitung hat zusätzlich: { LIST($covers) }.
trade-compare-covers-same = Gleicher Schlauchschutz.


## What the check of the tables finds; $row names the table and the row

trade-check-duplicate = { $row }: { $count } Zeilen haben denselben Schlüssel.
trade-check-no-source = { $row }: Die Zeile hat keine Quelle.
trade-check-unknown-word = { $row }: { $given } ist in der Spalte { $column } nicht bekannt.
trade-check-memory-source = { $row }: Eine Zeile aus dem Gedächtnis oder nach eigener Einschätzung muss das am Anfang ihrer Quelle sagen.
trade-check-diameter = { $row }: { $thread } hat einen Durchmesser von { $found } mm, in der Zeile stehen { $given } mm.
trade-check-pitch = { $row }: { $thread } hat eine Steigung von { $found } mm, in der Zeile stehen { $given } mm.
trade-check-tpi = { $row }: { $tpi } Gänge je Zoll und eine Steigung von { $given } mm passen nicht zusammen.
trade-check-minor = { $row }: Der Kerndurchmesser des Innengewindes, { $given } mm, ist nicht D - { $height } P.
trade-check-minor-size = { $row }: Der Kerndurchmesser des Innengewindes, { $given } mm, liegt nicht zwischen 0 und { $od } mm.
trade-check-pressure = { $row }: { $printed } sind { $found } bar, in der Zeile stehen { $given } bar.
trade-check-not-larger = { $row }: nicht größer als { $smaller }.
trade-check-wrong-way = { $row }: Bei Größe { $size } laufen die Werte falsch herum, von { $before } zu { $after }.
trade-check-bend = { $row }: Der Mindestbiegeradius ist { $radius } mm, für das kleinere -{ $small } aber { $before } mm.
trade-check-range = { $row }: { $low } ist größer als { $high }.
trade-check-taper-flats = { $row }: Kegelige Gewinde werden nicht nach Schlüsselflächen angezogen.
trade-check-flats = { $row }: { $flats } ist keine Zahl von Schlüsselflächen zum Anziehen.
trade-check-not-a-size = { $row }: { $size } ist keine Größe dieser Anschlussart.
trade-check-not-a-standard = { $row }: Die Norm steht nicht in hose_standards.
trade-check-no-pressure = { $row }: Die Norm hat keinen Druck.
trade-check-no-family = { $row }: Die Anschlussart fehlt.
trade-check-tighten-by = { $row }: Was gedreht wird, muss genannt sein, außer bei kegeligem Gewinde.
trade-check-shares = { $row }: Die Anteile der Dichtsitze ergeben { $sum }, nicht 1.

## Storage and service dates

trade-guidance-only = Nur ein Anhalt. Einen Schlauch sofort ersetzen, wenn er leckt, Blasen oder Risse hat oder abgeknickt war.
trade-rule-bulk_hose_years_iso = Schlauch vor dem Konfektionieren (ISO 8331)
trade-rule-assembly_storage_years_iso = Lagerdauer einer Schlauchleitung vor dem Einsatz (ISO 8331)
trade-rule-bulk_hose_years_din = Schlauch vor dem Konfektionieren (DIN 20066)
trade-rule-assembly_storage_years_din = Lagerdauer einer Schlauchleitung vor dem Einsatz (DIN 20066)
trade-rule-assembly_life_years_din = Verwendungsdauer einer Schlauchleitung, Lagerdauer eingeschlossen (DIN 20066)
trade-rule-bulk_hose_years_tr17165 = Schlauch, gelagert nach ISO 2230 (ISO/TR 17165-2)
trade-rule-bulk_hose_years_j1273 = Gummischlauch und Schlauchleitung, 40 Quartale (SAE J1273)


## Warnings of records from before messages: the code and the part are kept, the values are in the record

trade-kept-edition_not_given = Dieser Schlauch hat je nach Ausgabe der Norm verschiedene zulässige Drücke, und es wurde keine Ausgabe angegeben. Es gilt der niedrigere Wert. Die Ausgabe steht im Schlauchaufdruck.
trade-kept-outside_standard = Diese Größe gibt es in der Norm des Schlauchs nicht: der zulässige Druck stammt von einem einzelnen Hersteller. Mit den Angaben des Schlauchherstellers abgleichen.
trade-kept-pressure_not_known = Der Betriebsdruck ist nicht bekannt. Den Wert des Herstellers verwenden.
trade-kept-pressure_given = Der Betriebsdruck ist der eingegebene Wert.
trade-kept-pressure_given_too_high = Der eingegebene Druck liegt über einem zulässigen Druck dieser Schlauchleitung. Es gilt der niedrigere Wert.
trade-kept-rating_not_known = Der zulässige Druck { SAY($part, case: "gen") } ist nicht bekannt. Den Wert des Herstellers verwenden.
trade-kept-rating_from_memory = Der zulässige Druck { SAY($part, case: "gen") } ist ungeprüft. Mit den Angaben des Herstellers abgleichen.
trade-kept-jump_size = { SAY($part, case: "start") } ist eine Sprunggröße.
trade-kept-bend_not_known = Der Mindestbiegeradius ist nicht bekannt. Den Wert des Schlauchherstellers verwenden.
trade-kept-bend_from_memory = Der Mindestbiegeradius ist ungeprüft. Mit den Angaben des Schlauchherstellers abgleichen.
trade-kept-too_short_to_bend = Die Schlauchleitung ist zu kurz für eine Biegung um 90° mit dem Mindestbiegeradius. Nahezu gerade einbauen.
trade-kept-too_hot = Die Temperatur liegt über der Höchsttemperatur der Norm des Schlauchs. Einen Schlauch verwenden, der für diese Temperatur zugelassen ist.
trade-kept-too_cold = Die Temperatur liegt unter der Mindesttemperatur der Norm des Schlauchs. Einen Schlauch verwenden, der für diese Temperatur zugelassen ist.
trade-kept-cold_limit_of_fluid = Mit diesem Medium hat der Schlauch eine höhere Mindesttemperatur. Darunter nicht verwenden.
trade-kept-fluid_not_known = Keine Quelle sagt, ob der Schlauch für dieses Medium geeignet ist. Den Schlauchhersteller fragen.
trade-kept-fluid_not_suited = Der Schlauch ist nicht für dieses Medium geeignet. Einen Schlauch verwenden, der für dieses Medium gemacht ist.
trade-kept-too_hot_for_fluid = Mit diesem Medium liegt die Temperatur über der Höchsttemperatur des Schlauchs. Einen Schlauch verwenden, der für beides zugelassen ist.
trade-kept-tightening_not_known = { SAY($part, case: "start") }: Wie weit anzuziehen ist, ist nicht bekannt. Den Wert des Armaturenherstellers verwenden.
trade-kept-torque_from_memory = { SAY($part, case: "start") }: Das Anziehdrehmoment ist ungeprüft. Mit den Angaben des Armaturenherstellers abgleichen.
trade-kept-soft_material = { SAY($part, case: "start") }: Dieser Werkstoff verträgt ein kleineres Anziehdrehmoment als Stahl, und eine Zahl von Schlüsselflächen ist dafür nicht veröffentlicht.
trade-kept-length_tolerance_from_memory = Die Längentoleranz ist ungeprüft. Mit den Angaben des Schlauchherstellers abgleichen.
trade-kept-length_tolerance_not_known = Die Längentoleranz ist nicht bekannt. Den Wert des Schlauchherstellers verwenden.
trade-kept-standard_spelling = Die Norm des Schlauchs wurde in anderer Schreibweise eingegeben.
trade-kept-standard_not_known = Die Norm des Schlauchs steht nicht in den Tabellen: Es gelten nur die eingegebenen Werte.

## Hoses of the shop's own

trade-own-hose-fluid-heat = Der Hersteller lässt ein Medium nur bis zu einer Temperatur zu, und sie ist nicht angegeben.
    .mend = Die Höchsttemperatur eingeben.
trade-own-hose-part = Die Teilenummer enthält weder Buchstaben noch Ziffern.
    .mend = Die Teilenummer eingeben, die auf dem Schlauch steht.
trade-own-hose-outside = Ein Außendurchmesser von { $outside } ist nicht größer als der Innendurchmesser des Schlauchs, { $bore }. Das kann nicht stimmen.
    .mend = Wert und Einheit prüfen: Er wird in mm gelesen.
trade-own-hose-bend = Ein Biegeradius von { $bend } ist kleiner als die Breite des Schlauchs, { $across }. Das kann nicht stimmen.
    .mend = Wert und Einheit prüfen: Er wird in mm gelesen.
trade-own-hose-rating = bis { $pressure } (Quelle: { $source })
trade-own-hose-above = bis { $pressure } (Quelle: { $source }), über jedem veröffentlichten Wert; der höchste ist { $highest }
trade-own-hose-twice = Die Teilenummer { $part } in Dash { $dash } steht zweimal in der Liste.
    .mend = Eine der beiden Zeilen löschen.
