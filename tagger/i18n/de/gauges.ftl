# Lehrenbogen: die Tabellen im wahren Maßstab auf Papier.

gauges-name-threads = Lehrenbogen: Gewindedurchmesser
gauges-name-pitches = Lehrenbogen: Gewindesteigungen
gauges-name-seats = Lehrenbogen: Winkel von Dichtsitzen
gauges-name-flanges = Lehrenbogen: Flanschbunde
gauges-name-hexes = Lehrenbogen: Schlüsselweiten
gauges-name-hoses = Lehrenbogen: Außendurchmesser von Schläuchen

## What was asked for and is not there

gauges-paper = Die Bogen gibt es in { LIST($known) }.
    .mend = Eines davon wählen.
gauges-not-a-sheet = Einen Lehrenbogen dieses Namens gibt es nicht.
    .mend = Wählen: { LIST($known) }.
gauges-not-a-family = Kein Lehrenbogen zeigt diese Familie: Sie hat kein messbares Gewinde oder steht nicht in den Tabellen.
    .mend = Wählen: { LIST($known) }.

## At the head: what it is, and how to hold it to the part

gauges-title-threads = Gewindedurchmesser: { $family }
gauges-title-pitches = Gewindesteigungen
gauges-title-seats = Winkel von Dichtsitzen
gauges-title-flanges = Flanschbunde: { $code }
gauges-title-hexes = Schlüsselweiten
gauges-title-hoses = Außendurchmesser von Schläuchen
gauges-use-males = Außengewinde. Das Gewinde auf einen Balken legen, linke Kante auf linke Kante, und mit einem Auge senkrecht daraufsehen. Die rechte Kante des Gewindes muss auf dem dunklen Streifen liegen: Dort endet ein gesundes Gewinde, vom kleinsten bis zum größten Maß (Formeln der ISO 965-1, Grad 6). Ein abgenutztes Gewinde kann kleiner sein. Besser: den Balken ausschneiden und die Kerbe über das Gewinde schieben. Sind zwei Balken fast gleich, beide Marken nacheinander eingeben. Endet es auf keinem Streifen, mit dem Messschieber messen.
gauges-use-males-taper = Kegelige Außengewinde (1 zu 16). Das Gewinde mit dem kleinen Ende oben auf einen Balken legen und mit einem Auge senkrecht daraufsehen: Beide Kanten des Gewindes laufen an denen des Balkens entlang. An der Querlinie hat das Gewinde seinen Nenndurchmesser: bei BSPT in der Messebene, bei NPT und NPTF am Ende des nutzbaren Gewindes. Ein kegeliges Gewinde kann überall auf seinem Balken liegen: Sind zwei Balken fast gleich, beide Marken nacheinander eingeben und auf die Steigung achten.
gauges-use-females = Innengewinde. Auf Karton drucken, den Keil ausschneiden und gerade in die Bohrung schieben, bis er an den Gewindespitzen ansteht. Der Rand der Bohrung muss auf einem dunklen Band stehen: So weit ist eine gesunde Bohrung, vom kleinsten bis zum größten Maß (Formeln der ISO 965-1, Grad 6; bei einer kegeligen Bohrung 0,3 mm nach beiden Seiten vom Nennmaß). Eine abgenutzte Bohrung kann weiter sein. Die Größe steht am Band, ihre Marke darauf oder daneben.
gauges-use-pitches = Einen Kamm gegen das Licht an das Gewinde legen, einen Zahn in der ersten Lücke, und über alle Gänge verfolgen: Ein falscher Kamm passt über drei Gänge und liegt beim zehnten einen halben Gang daneben. Jede zehnte Lücke ist nummeriert. Papier unterscheidet Flanken von 55° und 60° nicht: 14 je Zoll haben BSP und amerikanische Gewinde. Es bleibt unentschieden, bis der Flankenwinkel mit einer Gewindelehre geprüft ist.
gauges-use-seats = Eine Kerbe ausschneiden und über einen vorstehenden Konus halten; eine Spitze ausschneiden und in einen innen liegenden halten. Gegen das Licht sehen: Auf keiner Seite darf ein Spalt sein. 37° und 45° sind halbe Winkel, 24° und 60° ganze. Was Papier nicht unterscheiden kann: einen vorstehenden Konus so klein wie Größe -4, einen Trichter, in den man nicht hineinsieht, 30° (halb) und 60° (ganz), denn das ist derselbe Konus, und einen bearbeiteten Sitz von 42° und einen von 45°. Das bleibt unentschieden.
gauges-use-flanges = Den Flanschbund auf eine Scheibe stellen: Er muss sie ringsum gerade bedecken. Dann den Bogen auf den Anschluss legen: Die Mitten der vier Schraubenlöcher müssen unter den vier Kreuzen liegen. Manche Bunde von Code 61 und Code 62 unterscheiden sich nur um ein bis zwei Millimeter: Der Schraubenabstand unterscheidet sie. Ein Bund ohne Scheibe steht nicht in den Tabellen.
gauges-use-hexes = Eine Mutter oder einen Körper mit einer Fläche an die linke Kante eines Balkens legen: Die Fläche gegenüber muss auf dem dunklen Streifen liegen, der 0,3 mm breit ist. Besser: den Balken ausschneiden und die Kerbe über den Sechskant schieben. Hersteller verwenden auch andere Schlüsselweiten: Eine Schlüsselweite entscheidet nie allein, und eine, die hier fehlt, schließt nichts aus.
gauges-use-hoses = Einen Streifen ausschneiden, seine Stücke zusammenkleben und straff um eine saubere Stelle des Schlauchs legen: Die Linie am Anfang zeigt auf den Außendurchmesser in mm. Die dunklen Bänder zeigen, was unsere Quellen für jede Dash-Größe drucken; der helle Bereich neben einem Band ist so breit, wie die Quellen auseinanderliegen, mindestens 1 mm. Ein Schlauch außerhalb aller hellen Bereiche ist nach diesen Quellen keine dieser Größen dieser Norm. Ein Schlauch auf einem Band kann trotzdem ein anderer sein: Viele Normen liegen weniger als 1 mm auseinander. Der Streifen schließt nur aus. Einen Druck nennt er nie.

## Beside a gauge

gauges-male = Außen { $low } bis { $high }
gauges-pitch-inch = { $tpi } Gänge je Zoll, { $pitch } mm
gauges-pitch-metric = { $pitch } mm
gauges-seat-angles = { $half } halb, { $whole } ganz
gauges-flange = Bund { $head }; Schraubenabstand { $long } x { $short }
gauges-flange-no-head = Bund nicht in den Tabellen; Schraubenabstand { $long } x { $short }
gauges-strip = { $standard }, Stück { $piece }

## At the foot of every page

gauges-check-mm = 100 mm
gauges-check-in = 4 in
gauges-check = Mit 100 % (tatsächliche Größe) drucken. Eine dieser Linien messen und ihr Maß mit der Marke eingeben: 97 bis 103 mm oder 3,88 bis 4,12 in werden korrigiert. Sonst neu drucken.
gauges-card = Kein Lineal? Eine Bankkarte (ISO/IEC 7810 ID-1, 85,60 x 53,98 mm) muss diesen Rahmen in beiden Richtungen gerade bedecken. Dann 100 mm eingeben. Bedeckt sie ihn nur in einer Richtung, den Bogen nicht verwenden.
gauges-scan = Scannen, um den Anschluss zu bestimmen: die hier gefundene Marke wählen, zum Beispiel D26.99, und das Maß der Kontrolllinie eingeben.
gauges-cautions = VORSICHT: Den ganzen Druck ablassen, bevor Sie messen oder etwas lösen. Das Gewinde reinigen; kein beschädigtes messen. Nie einen Anschluss nach einem einzigen Maß wählen: Durchmesser, Steigung und Dichtsitz müssen alle passen. Gewinde, die sich verschrauben lassen, ergeben noch keine dichten Sitze. Der Bogen sagt nichts über den Druck. Was der Hersteller der Armatur oder des Schlauchs angibt, geht diesem Bogen vor.

## The page that lists the sheets

gauges-page-title = Lehrenbogen
gauges-page-about = Die Tabellen im wahren Maßstab auf Papier, wenn weder Messschieber noch Gewindelehre zur Hand ist. Das Teil an den Bogen halten und die passende Marke eingeben.
gauges-page-family = Familie
gauges-page-paper = Papier
gauges-page-kind = Bogen
gauges-page-others = Weitere Bogen
gauges-page-open = PDF öffnen
gauges-paper-a4 = A4
gauges-paper-letter = US Letter

## The page for an outside diameter of a hose

gauges-scan-hoses = Scannen, um zu sehen, welche Normen ein Außendurchmesser ausschließt: eingeben, was der Streifen zeigt und was die Kontrolllinie misst.
gauges-hose-title = Schlauch nach dem Außendurchmesser
gauges-hose-only = Ein Außendurchmesser schließt nur aus. Viele Normen liegen weniger als 1 mm auseinander, und einen Druck nennt er nicht: die Beschriftung lesen oder den Schlauchhersteller fragen.
gauges-hose-left = Von den Schläuchen, deren Außendurchmesser unsere Quellen drucken, lässt { $od } diese übrig; die anderen sind ausgeschlossen:
gauges-hose-none = Keiner der Schläuche, deren Außendurchmesser unsere Quellen drucken, ist { $od } dick.
gauges-hose-go = Zeigen, was übrig bleibt
gauges-hose-unknown = Nicht ausgeschlossen, weil hier keine Quelle ihren Außendurchmesser druckt: { LIST($names) }.
