# Wandtafel und Taschenheft: Anschlüsse, Gewinde, Dichtsitze, Verwechslungen, Schlüsselflächen.

charts-wall-title = Anschlüsse von Hydraulik-Schlauchleitungen
charts-wall-stock-title = Anschlüsse von Hydraulik-Schlauchleitungen in unserem Lager
charts-how = Jede Verbindung ist längs der Achse aufgeschnitten, nicht maßstäblich. Schwarz: wo sie dichtet.
charts-alike-means = { $sign } und eine Nummer: gleiches oder fast gleiches Gewinde, oder gleiche Flanschgröße, wie der Anschluss mit dieser Nummer. Die Teile können zusammengehen und trotzdem nicht dichten oder nicht halten. Nie nach dem Gewinde allein verbinden: zuerst Dichtsitz, Konus und Rohr vergleichen.
charts-care = Vor dem Lösen einer Verbindung allen Druck ablassen. Die Angaben des Armaturenherstellers gehen diesem Blatt vor. Ein Gewinde sagt nichts über den zulässigen Druck.
charts-unverified = { $sign } ungeprüft: den Wert mit dem Armaturenhersteller abgleichen.
charts-sources = Quellen
charts-source = { $number } { $source }
charts-numbered = { $number } { $family }
charts-alike = { $sign } Nicht verwechseln mit: { LIST($families) }
charts-stock = Unser Lager:
charts-stock-item = { $size } { $number }

## Spalten

charts-column-size = Größe
charts-column-thread = Gewinde
charts-column-male = ⌀ außen
charts-column-male-mm = ⌀ mm
charts-not-known = nicht bekannt
charts-column-female = ⌀ innen
charts-column-pitch = Steigung
charts-column-tpi = Gänge/in
charts-column-dash = Schlauch
charts-column-head = Bund
charts-column-bolts = Lochabstand
charts-column-screws = Schrauben
charts-column-alike = { $sign } wie

## Was an einem Ende ohne eigenes Gewinde gemessen wird

charts-measured = Gemessen wird: { $what }.
charts-what-probe_nose = Nase des Steckers
charts-what-flat_nose = flache Nase des Steckers
charts-what-spigot = Stecknippel
charts-what-tube = Rohr
charts-what-ring_hole = Bohrung der Ringöse

## Wie die Verbindung dichtet

charts-seals-cone = Dichtet auf einem Konus, { $half } zur Achse ({ $included } insgesamt).
charts-where-outside = Nase, steht vor: { LIST($forms) }.
charts-where-inside = Trichter, liegt innen: { LIST($forms) }.
charts-seals-face = Dichtet mit einem O-Ring in der ebenen Stirnfläche.
charts-seals-boss = Dichtet mit einem O-Ring unter dem Sechskant, in der Fase des Einschraublochs.
charts-seals-flat = Dichtet mit einem Ring auf ebener Fläche.
charts-seals-or-flat = Oder mit einem Ring auf ebener Fläche.
charts-seals-taper = Dichtet im kegeligen Gewinde.
charts-seals-head = Dichtet mit einem O-Ring in der Stirnfläche des Flanschbunds, gespannt von vier Schrauben.
charts-seals-coupler = Wird gesteckt und verriegelt. Nichts wird angezogen.
charts-seals-staple = Wird gesteckt, dichtet mit einem O-Ring und wird von einer Klammer gehalten. Nichts wird angezogen.
charts-seals-standpipe = Glattes Rohr: Mutter und Schneidring pressen es in einen 24°-Konus.

## Das Heft

charts-booklet-title = Gewinde und Anschlüsse
charts-booklet-sub = Taschenheft für Hydraulik-Schlauchleitungen
charts-booklet-cautions = Bevor Sie beginnen
charts-booklet-measure = So wird gemessen
charts-booklet-tables = Gewindetabellen
charts-booklet-flats = Schlüsselflächen nach Dash-Größe
charts-sources-of = Quellen: { LIST($sources) }
charts-measure-clean = Das Ende reinigen. Ein beschädigtes oder verschlissenes Gewinde misst sich falsch: an mehreren Stellen messen.
charts-measure-outside = Außengewinde: Außendurchmesser über die Spitzen. Ein kegeliges Gewinde wird zum Schlauch hin dicker: an mehreren Stellen messen.
charts-measure-inside = Innengewinde: Innendurchmesser über die Spitzen, mit den Innenschenkeln.
charts-measure-pitch = Steigung: eine Gewindelehre gegen das Licht anlegen. Sie muss auf ganzer Länge ohne Spalt anliegen. Ohne Lehre von Spitze zu Spitze über zehn Gänge messen und durch zehn teilen.
charts-measure-seat = Dichtsitz: eine Winkellehre nehmen und hinsehen: Steht ein Konus vor wie eine Nase, liegt er innen wie ein Trichter, oder ist da ein O-Ring? 37° und 45° zählen ab der Achse, 24° und 60° von Seite zu Seite.
charts-measure-nose = 24°-Konus: auch die Nase oder die Aufnahme messen. Baureihen und Rohrgrößen haben gleiche Gewinde.
charts-measure-compare = Alle Werte mit den Tabellen vergleichen. Bleiben zwei Anschlüsse, nicht raten: nachfragen oder noch einmal messen.
charts-tables-about = Durchmesser sind Nennmaße. Ein Außengewinde misst so viel oder etwas weniger, ein Innengewinde so viel oder etwas mehr.
charts-flats-about = Fett: die Zahl der Schlüsselflächen, die unsere Schilder tragen. Darunter: was andere Quellen für eine Stahlmutter an einer Schlauchleitung angeben. Eine Zahl gilt nur ab dem daneben genannten Beginn. Von einem anderen Beginn gezählt kann die Verbindung lecken oder ihr Dichtsitz reißen.
charts-flats-method = An einer Verbindung entweder Schlüsselflächen oder Drehmoment anwenden, nie beides.
charts-flats-dash = Dash
charts-flats-count = Flächen
charts-flats-start = Gezählt
charts-flats-none = Für Anschlüsse, die hier fehlen, wird keine Zahl genannt: das Drehmoment des Schildes oder des Armaturenherstellers nehmen.
charts-any-size = alle
charts-fold-title = So wird dieses Heft gefaltet
charts-fold = In Originalgröße beidseitig drucken, Blätter über die lange Kante wenden. Jedes Blatt entlang der Mittellinie schneiden. Den Stapel der oberen Hälften auf den Stapel der unteren Hälften legen, das Deckblatt oben. An der punktierten Linie nach hinten falten, sodass das Deckblatt außen bleibt, und im Falz heften.

## Abgelehnt

charts-no-stock = Keine Armatur in der Liste der Werkstatt hat einen Anschluss der Tabellen.
    .mend = Zuerst die Armaturen der Werkstatt aufnehmen oder die Tafel aller Anschlüsse machen.
charts-too-full = Die Tafel passt nicht auf { $paper }: Ihre Buchstaben wären { $cap } mm hoch, { $least } mm sind das Mindeste.
    .mend = A2 wählen oder die Lagernummern weglassen.
charts-not-a-paper = { $paper } ist kein Papierformat dieses Blatts.
    .mend = Eines davon verwenden: { LIST($papers, style: "or") }.

## Die Seite, die sie erstellt

charts-page-title = Wandtafel und Taschenheft
charts-page-chart = Wandtafel
charts-page-booklet = Taschenheft
charts-page-paper = Papier
charts-page-connections = Anschlüsse
charts-page-all = alle
charts-page-stock = unserer Armaturen
charts-page-numbers = unserer Armaturen, mit Lagernummern
charts-page-make = PDF erstellen
charts-page-chart-hint = Jeder Anschluss im Schnitt, mit Gewinden, Dichtung und Verwechslungen, auf einer Seite.
charts-page-booklet-hint = Gewindetabellen, Schlüsselflächen, Messanleitung. Vier Seiten je Blattseite, zum Schneiden und Falten.
charts-page-form = Form
charts-page-sheets = Bögen zum Falten
charts-page-pages = Seite für Seite
