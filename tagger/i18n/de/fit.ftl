# The fit guide: its steps, what is taken for what, and where the practice comes from.

## Titles of the screens

fit-screen-safe = Maschine sichern
fit-screen-injection = Sich schützen
fit-screen-old = Alte Schlauchleitung ausbauen
fit-screen-new = Neue Schlauchleitung prüfen
fit-screen-match = Verbindung prüfen
fit-screen-route = Schlauch verlegen
fit-screen-clocking = Bogen ausrichten
fit-screen-order = Welches Ende zuerst
fit-screen-join = Anschließen
fit-screen-tighten = Anziehen
fit-screen-leaks = Auf Dichtheit prüfen
fit-screen-after = Noch einmal prüfen

## Before you start

fit-defer = Betriebsanleitung des Maschinenherstellers, Angaben des Armaturenherstellers und örtliche Vorschriften befolgen. Sie gehen dieser Anleitung vor. Nur ausgebildete und, wo vorgeschrieben, befähigte Personen dürfen diese Arbeit ausführen.
fit-stop_lock = Maschine abstellen, Zündschlüssel abziehen und die Maschine gegen Wiedereinschalten sichern. Jede Last, die fallen oder sich bewegen kann, absenken oder abstützen.
fit-depressurise = Den ganzen Druck nach der Betriebsanleitung der Maschine ablassen: bei stehendem Motor jeden Steuerhebel bewegen, Druckspeicher entladen. Nie eine Verbindung unter Druck lösen.
fit-zero = Nachweisen, dass der Druck null ist: an einer Messstelle dieser Leitung ein Manometer ablesen, bevor eine Verbindung gelöst wird. Ohne Manometer gilt die Leitung als unter Druck.
fit-cool = Das Öl abkühlen lassen. Augenschutz und ölbeständige Handschuhe tragen. Eine Auffangwanne unter die Verbindung stellen.
fit-injection = Nie mit der Hand nach einem Leck tasten. Öl unter Druck dringt durch Handschuhe und Haut. Ist Öl unter die Haut gedrungen, sofort in chirurgische Notfallbehandlung, auch wenn die Wunde harmlos aussieht.
fit-photo = Die alte Schlauchleitung vor dem Lösen fotografieren: Verlegung, Schellen und wohin jedes Ende zeigt.
fit-cap = Die alte Schlauchleitung ausbauen. Jeden offenen Anschluss und jede offene Leitung sofort verschließen: Schmutz beschädigt Pumpen und Ventile.
fit-why = Feststellen, warum die alte ausgefallen ist: gescheuert, geknickt, zu kurz, verdreht, überhitzt, Decke mit Blasen? Die Ursache beseitigen, bevor die gleiche wieder eingebaut wird.

## Check the parts

fit-pressure = Maximaler Betriebsdruck: { $pressure }. Prüfen, dass das Druckbegrenzungsventil der Maschine nicht höher eingestellt ist.
fit-at_most = Der Druck ist nur zum Teil bekannt: Die bekannten Teile lassen höchstens { $at_most } zu. Prüfen, dass das Druckbegrenzungsventil nicht höher eingestellt ist und dass auch der Hersteller des anderen Teils den Druck zulässt.
fit-no_pressure = Der Betriebsdruck dieser Schlauchleitung ist nicht bekannt. Nicht einbauen, bevor die Angaben des Schlauchherstellers und des Armaturenherstellers ihn bestätigt haben.
fit-compare = Die neue Schlauchleitung mit der alten vergleichen: Enden, Dichtsitze, Länge und Bogenwinkel müssen übereinstimmen. Weicht etwas ab, nicht einbauen.
fit-damage_flare = Beide Dichtsitze und beide Gewinde reinigen und prüfen. Kein Teil mit Riss, Kerbe quer über den Sitz oder beschädigtem Gewinde verwenden.
fit-damage = Gewinde und Dichtflächen reinigen und prüfen. Kein Teil mit Riss, Kratzer quer über die Dichtfläche oder beschädigtem Gewinde verwenden.
fit-seat_37_45 = Den Dichtsitz mit einer Winkellehre prüfen. In dieser Größe haben 37°- und 45°-Bördel dasselbe Gewinde. Sie lassen sich verschrauben, dichten aber nicht verlässlich.
fit-cone_bspp_jis = Den Konus prüfen. In dieser Größe haben BSPP- und JIS-60°-Enden dasselbe Gewinde, aber entgegengesetzte Konen. Sie lassen sich verschrauben, dichten aber nicht.
fit-cone_metric = Den Konus mit einer Lehre prüfen: In dieser Größe haben metrische 60°-Konen, 24°-Konen und 30°-Bördel gemeinsame Gewinde. Sie lassen sich verschrauben, dichten aber nicht.
fit-flare_inverted = Den Dichtsitz prüfen: Der umgekehrte Bördel hat den Konus im Einschraubloch. In dieser Größe hat er das Gewinde der 37°- und 45°-Bördel, dichtet auf ihnen aber nicht.
fit-npt_bspt = Das Gewinde mit einer Gewindelehre prüfen. In dieser Größe haben NPT und BSP beide 14 Gänge je Zoll und lassen sich ein Stück weit ineinanderschrauben, aber 60°- und 55°-Gewinde dichten nicht aufeinander.
fit-flange_code61 = Dies ist ein Flansch Code 61: Anschluss, Flanschhälften und Schrauben müssen auch Code 61 sein. Ein Bund Code 62 ist dicker und breiter, und sein Lochabstand ist größer.
fit-flange_code62 = Dies ist ein Flansch Code 62: Anschluss, Flanschhälften und Schrauben müssen auch Code 62 sein. Ein Bund Code 61 ist dünner und schmaler, und sein Lochabstand ist kleiner.
fit-screw_length = Die Länge der Schrauben prüfen: Eine zu kurze reißt das Gewinde aus, eine zu lange sitzt auf, bevor sie klemmt. Die Länge verwenden, die der Flanschhersteller angibt.
fit-oring = Einen neuen O-Ring verwenden, der für das Medium geeignet ist, und mit sauberem Systemöl einölen. Er muss in seiner Nut liegen und darf nicht eingeschnitten, plattgedrückt oder verhärtet sein.
fit-oring_cone = Hat der Konus einen O-Ring, ihn prüfen: Er darf nicht eingeschnitten, abgeflacht oder hart sein. Im Zweifel erneuern, und mit sauberem Systemöl ölen.
fit-clean_inside = Die Schutzkappen erst unmittelbar vor dem Anschließen abnehmen. Innen muss alles sauber und trocken sein.

## Route the hose

fit-lay_line = Den Schlauch ohne Verdrehen verlegen: Der Schlauchaufdruck muss gerade laufen, und der Schlauch darf sich nur in einer Ebene biegen.
fit-bend = Den Schlauch mit einem Biegeradius von mindestens { $bend_radius } verlegen, innen am Bogen gemessen. Hinter jeder Armatur zuerst ein gerades Stück von mindestens dem 1,5-Fachen des Schlauch-Außendurchmessers lassen.
fit-no_bend = Der Mindestbiegeradius ist nicht bekannt: Wert des Schlauchherstellers verwenden.
fit-slack = Den Schlauch mit Durchhang verlegen, nie straff: Unter Druck kann er um 2 % länger oder um 4 % kürzer werden.
fit-rub = Den Schlauch im gesamten Bewegungsbereich der Maschine von heißen Teilen, scharfen Kanten und bewegten Teilen fernhalten.
fit-elbow = Den Bogen vor dem Anziehen ausrichten und in dieser Stellung halten.
fit-clocking = Verdrehwinkel { $clocking }: Ende A zu sich halten, Bogen A zeigt nach unten. In Richtung des Schlauchs gesehen zeigt Bogen B um { $clocking } gegen den Uhrzeigersinn von Bogen A aus.
fit-clocking_clockwise = Verdrehwinkel { $clocking }, im Uhrzeigersinn: Ende A zu sich halten, Bogen A zeigt nach oben. In Richtung des Schlauchs gesehen zeigt Bogen B um { $clocking } im Uhrzeigersinn von Bogen A aus.
fit-clocking_nut = Diesen Winkel einstellen, bevor die Mutter des zuletzt angeschlossenen Endes fest ist. Den Bogen dort mit einem Schraubenschlüssel halten und nur die Mutter drehen. Den Schlauch nie verdrehen.
fit-clocking_screws = Diesen Winkel einstellen, solange die Schrauben oder die Hohlschraube des zuletzt angeschlossenen Endes nur handfest sind. Dann nur diese anziehen. Den Schlauch nie verdrehen.
fit-clocking_locknut = Diesen Winkel einstellen, bevor die Kontermutter des zuletzt angeschlossenen Endes fest ist. Den Bogen dort halten und nur die Kontermutter drehen. Den Schlauch nie verdrehen.
fit-rigid_first = Dieses Ende zuerst anschließen, solange das andere noch frei ist. Die Armatur an ihrem eigenen Sechskant drehen, am Adapter, in den sie kommt, mit einem zweiten Schraubenschlüssel gegenhalten und den ganzen Schlauch mitdrehen lassen.
fit-rigid_second = Dieses Ende hat keine Überwurfmutter. Nicht einschrauben, wenn das andere Ende angeschlossen ist: Der Schlauch würde verdreht. Bei freiem Schlauch eine Verschraubung oder einen drehbaren Adapter anbringen und nur an dessen Mutter anschließen.
fit-rigid_pair = Keines der Enden hat eine Überwurfmutter. Bevor dieses Ende angeschlossen wird, am anderen eine Verschraubung oder einen drehbaren Adapter anbringen: Danach lässt es sich nicht mehr einschrauben, ohne den Schlauch zu verdrehen.
fit-mating_first = Dieses Ende zuerst anschließen. Hat das Gegenstück keine eigene Mutter, die Armatur an ihrem Sechskant drehen, solange das andere Ende noch frei ist.
fit-mating_second = Dieses Ende hat keine Mutter: nur die Mutter des Gegenstücks drehen. Hat es keine, die Armatur nicht drehen, wenn das andere Ende angeschlossen ist: Der Schlauch würde verdreht. Eine Verschraubung oder einen drehbaren Adapter verwenden.
fit-swivel_last = Dieses Ende zuletzt anschließen, wenn das andere angeschlossen ist. Zwei Schraubenschlüssel verwenden: einen an der Mutter, einen am Sechskant der Armatur. Nur die Mutter dreht sich, der Schlauch bleibt unverdreht.
fit-free_last = Dieses Ende zuletzt anschließen, wenn das andere angezogen ist. Es lässt sich in jedem Winkel stellen, so bleibt der Schlauch ohne Drall.
fit-anti_galling = Gewinde aus nichtrostendem Stahl können fressen. Vor dem Ansetzen das Außengewinde mit einer für das Medium geeigneten Montagepaste bestreichen. Die Dichtflächen frei halten.

## Tighten

fit-by_hand = Die Mutter von Hand ansetzen. Sie muss leicht laufen. Klemmt sie, aufhören: Das Gewinde ist schief angesetzt oder passt nicht.
fit-by_hand_fixed = Das Gewinde von Hand ansetzen. Es muss leicht laufen. Klemmt es, aufhören: Es ist schief angesetzt oder passt nicht.
fit-two_wrenches = Zwei Schraubenschlüssel verwenden: mit einem an der Schlaucharmatur gegenhalten, mit dem anderen nur die Überwurfmutter drehen. Der Schlauch darf sich nicht mitdrehen.
fit-two_wrenches_fixed = Hat das Gegenstück eine Mutter, zwei Schraubenschlüssel verwenden: mit einem an der Schlaucharmatur gegenhalten, mit dem anderen nur diese Mutter drehen. Der Schlauch darf sich nicht mitdrehen.
fit-mark_finger = Vor dem Zählen von Schlüsselflächen: die Mutter mit den Fingern bis zum Anschlag drehen (handfest). Ab dort wird gezählt: einen Strich über Mutter und Stutzen ziehen.
fit-mark_wrench = Vor dem Zählen von Schlüsselflächen: die Mutter bis zum deutlich spürbaren Kraftanstieg am Schraubenschlüssel drehen (etwa 3,4 N·m, 30 lbf·in). Ab dort wird gezählt: einen Strich über Mutter und Stutzen ziehen.
fit-mark_fixed_finger = Vor dem Zählen von Schlüsselflächen: die Armatur von Hand bis zum Anschlag drehen (handfest). Ab dort wird gezählt: einen Strich über ihren Sechskant und das Gegenstück ziehen.
fit-mark_fixed_wrench = Vor dem Zählen von Schlüsselflächen: die Armatur bis zum deutlich spürbaren Kraftanstieg am Schraubenschlüssel drehen (etwa 3,4 N·m, 30 lbf·in). Ab dort wird gezählt: einen Strich über ihren Sechskant und das Gegenstück ziehen.
fit-flats = Die Mutter um { $flats } weiterdrehen, gezählt { $flats_basis }. 1 Schlüsselfläche = 1/6 Umdrehung (60°): Schlüsselflächen zählen, nicht Umdrehungen.
fit-flats_fixed = Die Armatur an ihrem eigenen Sechskant um { $flats } drehen, gezählt { $flats_basis }. 1 Schlüsselfläche = 1/6 Umdrehung (60°): Flächen zählen, nicht Umdrehungen.
fit-flats_instead = Nach Schlüsselflächen anstelle des Anziehdrehmoments, nie zusätzlich: die Mutter um { $flats } weiterdrehen, gezählt { $flats_basis }. 1 Schlüsselfläche = 1/6 Umdrehung (60°): Schlüsselflächen zählen, nicht Umdrehungen.
fit-flats_fixed_instead = Nach Schlüsselflächen anstelle des Anziehdrehmoments, nie zusätzlich: die Armatur an ihrem eigenen Sechskant um { $flats } drehen, gezählt { $flats_basis }. 1 Schlüsselfläche = 1/6 Umdrehung (60°): Flächen zählen, nicht Umdrehungen.
fit-torque_nut = Die Mutter mit { $torque } anziehen.
fit-lubrication = Dieses Anziehdrehmoment gilt für: { $lubrication }.
fit-lubrication_unknown = Die Quelle dieses Anziehdrehmoments sagt nicht, ob die Verbindung trocken oder geschmiert ist. Im Zweifel den Wert des Armaturenherstellers verwenden.
fit-lubrication_not_carried = Ob die Verbindung bei diesem Anziehdrehmoment trocken oder geschmiert ist, steht nicht auf diesem Schild. Die Werkstatt fragen.
fit-torque_fixed = Die Armatur an ihrem eigenen Sechskant drehen und mit { $torque } anziehen. Am Gegenstück mit einem zweiten Schraubenschlüssel gegenhalten.
fit-torque_bspp_stud = Einschraubzapfen, der mit Dichtscheibe oder O-Ring auf einer ebenen Fläche dichtet: ihn oder seine Kontermutter mit { $torque } anziehen. Für eine Mutter auf 60°-Konus ist dieses Drehmoment zu hoch: dafür den Wert des Armaturenherstellers verwenden.
fit-torque_bspp_of_nut = Das Anziehdrehmoment auf diesem Schild, { $torque }, ist das einer Mutter auf 60°-Konus. Nicht für einen Einschraubzapfen verwenden: Er braucht mehr und würde sich lösen. Dafür den Wert des Armaturenherstellers verwenden.
fit-over_flare = Nicht weiter anziehen, um ein Leck zu schließen: Der Bördel kann reißen. Die Verbindung lösen und beide Dichtsitze prüfen.
fit-choose_method = Zwei Verfahren: Schlüsselflächen oder Anziehdrehmoment. Nur eines anwenden. Im Zweifel Schlüsselflächen zählen: Bei hoher Reibung ist das Anziehdrehmoment erreicht, bevor die Verbindung fest ist.
fit-torque_counts = Sind Anziehdrehmoment und Schlüsselflächen beide angegeben, gilt nur das Anziehdrehmoment.
fit-stud_in = Den Einschraubzapfen von Hand bis zum Anschlag eindrehen. Den O-Ring dabei nicht am Gewinde beschädigen.
fit-stud_into = Den Einschraubzapfen des Gegenstücks von Hand bis zum Anschlag eindrehen. Den O-Ring dabei nicht am Gewinde beschädigen.
fit-stud_mark = Vor dem Anziehen einen Strich über das Teil, das gedreht wird, und den Anschluss ziehen: Er zeigt, wie weit es gedreht ist.
fit-locknut_back = Die Kontermutter ganz zurückdrehen und die Scheibe an sie anlegen. Den Einschraubzapfen von Hand eindrehen, bis die Scheibe am Einschraubloch anliegt.
fit-locknut_align = Zum Ausrichten des Bogens den Einschraubzapfen höchstens eine Umdrehung zurückdrehen. Den Bogen mit einem Schraubenschlüssel halten und mit dem anderen nur die Kontermutter anziehen.
fit-flat_stud_in = Unter den Bund des Einschraubzapfens einen neuen Dichtring der vorgesehenen Art legen. Den Zapfen von Hand einschrauben, bis der Ring die Fläche berührt.
fit-torque_stud = Einschraubzapfen, Mutter oder Kontermutter mit { $torque } anziehen. Ein Einschraubloch aus Aluminium verträgt weniger: den Maschinenhersteller nach dem Wert fragen.
fit-flats_stud = Den Einschraubzapfen, die Mutter oder die Kontermutter um { $flats } weiterdrehen, gezählt { $flats_basis }. 1 Schlüsselfläche = 1/6 Umdrehung (60°): Schlüsselflächen zählen, nicht Umdrehungen.
fit-flats_stud_instead = Nach Schlüsselflächen anstelle des Anziehdrehmoments, nie zusätzlich: den Einschraubzapfen, die Mutter oder die Kontermutter um { $flats } weiterdrehen, gezählt { $flats_basis }. 1 Schlüsselfläche = 1/6 Umdrehung (60°): Schlüsselflächen zählen, nicht Umdrehungen.
fit-sealant = Für das Medium geeignetes Dichtmittel auf das Außengewinde geben. Die ersten zwei Gänge frei lassen.
fit-sealant_stainless = Kegelige Gewinde aus nichtrostendem Stahl können fressen. Ein Dichtmittel verwenden, das auch das Fressen verhindert.
fit-turns = Handfest einschrauben, dann mit dem Schraubenschlüssel noch um { $turns } weiterdrehen. Bei kegeligem Gewinde nie Schlüsselflächen zählen.
fit-turns_disputed = Die Quellen weichen ab: { LIST($turn_choices, style: "or") }. Im Zweifel zuerst den Armaturenhersteller fragen.
fit-turns_of_source = { $turns } ({ $source })
fit-never_back = Ein kegeliges Gewinde nie zum Ausrichten zurückdrehen: Es wird undicht. Herausdrehen, reinigen und neu abdichten.
fit-screw_class = Die Festigkeitsklasse auf den Schraubenköpfen ablesen; alle vier müssen dieselbe haben. Ein Anziehdrehmoment gilt nur für eine Klasse: Eine Schraube der Klasse 10.9 braucht mehr als eine gleich große der Klasse 8.8.
fit-screw_class_62 = Die Festigkeitsklasse auf den Schraubenköpfen ablesen; alle vier müssen dieselbe haben. Code 62 verlangt Klasse 10.9 bei metrischen oder Grade 8 bei Zollschrauben. Ein Anziehdrehmoment gilt nur für eine Klasse.
fit-flange_seat = Den Flanschbund mit O-Ring in der Nut plan auf die Anschlussfläche setzen. Alle vier Schrauben von Hand ansetzen. Der Spalt muss an beiden Flanschhälften gleich sein.
fit-flange_loose = Die Schrauben nur handfest lassen, bis das andere Ende angeschlossen oder von Hand angesetzt ist und der Schlauch unverdreht im richtigen Winkel liegt.
fit-banjo_rings = Auf jeder Seite des Ringstücks einen neuen Dichtring verwenden: einen unter dem Schraubenkopf, einen zwischen Ringstück und Einschraubloch. Beide müssen von der Art sein, für die die Schraube gemacht ist.
fit-banjo_loose = Die Hohlschraube von Hand ansetzen und lose lassen, bis das andere Ende angeschlossen oder von Hand angesetzt ist und der Schlauch ohne Drall im richtigen Winkel liegt.
fit-banjo_hold = Das Ringstück beim Anziehen der Schraube im Winkel halten. Weder Ringstück noch Schlauch dürfen sich mitdrehen.
fit-torque_bolt = Die Hohlschraube mit { $torque } anziehen. Dieses Anziehdrehmoment gilt nur für eine Art von Schraube und Dichtring: prüfen, ob es die eigene ist.
fit-standpipe_in = Mutter und Schneidring auf das Rohr schieben, dann das Rohr bis zum Anschlag in den Stutzen drücken. Dort halten und die Mutter von Hand ansetzen.
fit-standpipe_nut = Neuer Schneidring: die Mutter ab handfest 1 1/2 Umdrehungen anziehen. Das Rohr darf sich nicht mitdrehen. Ring bereits auf dem Rohr montiert: bis zu einem deutlich spürbaren Widerstand anziehen, dann so weit, wie sein Hersteller angibt.
fit-latch_clean = Nur verbinden, wenn beide Leitungen drucklos sind. Beide Hälften sauber wischen und die Dichtungen prüfen.
fit-coupler_lock = Die Hälften zusammenschieben, bis sie einrasten, dann zur Probe ziehen. Hat die Hülse eine Sicherung, diese einlegen.
fit-staple_in = Einen neuen O-Ring und einen neuen Stützring auf den Steckzapfen setzen und ihn ganz einschieben. Die Klammer von Hand bis zum Anschlag durchstecken. Nur eine unbeschädigte, für den Druck zugelassene Klammer verwenden. Zur Probe am Schlauch ziehen.
fit-flange_cross = Die Schrauben über Kreuz in zwei oder drei Durchgängen gleichmäßig anziehen: eine, dann die diagonal gegenüberliegende, dann die anderen zwei. Keinen Schlagschrauber verwenden.
fit-torque_screw = { $screw ->
    [none] Im letzten Durchgang jede Schraube mit { $torque } anziehen. Dieses Anziehdrehmoment gilt nur für eine Schraubengröße und Festigkeitsklasse: vor dem Anziehen den Hersteller fragen, für welche.
   *[other] Im letzten Durchgang jede Schraube { $screw } mit { $torque } anziehen. Für eine andere Schraubengröße oder Festigkeitsklasse gilt ein anderes Anziehdrehmoment. Ist hier keine Klasse genannt, den Hersteller fragen.
 }
fit-no_figures = Wie weit diese Verbindung anzuziehen ist, ist nicht bekannt: Wert des Armaturenherstellers verwenden.

## Test for leaks

fit-nobody_near = Personen fernhalten. Die Maschine ohne Last laufen lassen, bis sie entlüftet ist und der Ölstand stimmt.
fit-leak_look = Den Druck langsam steigern. Lecks mit einem Stück Pappe suchen, nie mit der Hand.
fit-leak_stop = Ist eine Verbindung undicht: Maschine anhalten, Druck ablassen, erst dann die Verbindung lösen. Nie eine Verbindung unter Druck nachziehen.
fit-full_travel = Die Maschine durch ihren gesamten Bewegungsbereich fahren. Der Schlauch darf dabei nirgends spannen, knicken, sich verdrehen oder scheuern.
fit-look_again = Die Verbindungen nach den ersten Arbeitsstunden noch einmal prüfen.

## Families that are taken for each other; the sizes are those of the second

fit-alike-flares = { $family } und { $other } ({ LIST($sizes) }) haben in den Größen -2, -3, -4, -5, -8 und -10 dasselbe Gewinde. Sie lassen sich verschrauben, aber 37°- und 45°-Sitze dichten nicht verlässlich.
fit-alike-cone_oring-each = { $family } und { $other } ({ LIST($sizes) }) haben in jeder Größe dasselbe Gewinde. Das eine dichtet mit einem Konus, das andere mit einem O-Ring unter dem Sechskant.
fit-alike-cone_oring = { $family } und { $other } ({ LIST($sizes) }) haben dieselben Gewinde. Das eine dichtet mit einem Konus, das andere mit einem O-Ring unter dem Sechskant.
fit-alike-face_cone = { $family } und { $other } ({ LIST($sizes) }) haben bei verschiedenen Dash-Größen dasselbe Gewinde. Das eine dichtet mit einem O-Ring in ebener Stirnfläche, das andere mit einem Konus.
fit-alike-face_boss = { $family } und { $other } ({ LIST($sizes) }) haben bei verschiedenen Dash-Größen dasselbe Gewinde. Sie unterscheiden sich nur durch die Lage des O-Rings.
fit-alike-tapers = { $family } und { $other } ({ LIST($sizes) }) lassen sich ein Stück weit ineinanderschrauben. Beide sind kegelig, aber 60°- und 55°-Gewinde dichten nicht aufeinander. Die Größen 1/2 und 3/4 haben bei beiden 14 Gänge je Zoll.
fit-alike-taper_parallel-14 = { $family } und { $other } ({ LIST($sizes) }) lassen sich in den Größen 1/2 und 3/4, beide mit 14 Gängen je Zoll, ein Stück weit ineinanderschrauben. Das eine ist kegelig, das andere zylindrisch, und die Flankenwinkel sind verschieden.
fit-alike-npt_nptf = { $family } und { $other } ({ LIST($sizes) }) haben dieselbe Größe und Steigung. NPTF dichtet trocken über die Gewindespitzen, NPT braucht Dichtmittel. Durch Messen lassen sie sich nicht unterscheiden.
fit-alike-taper_parallel = { $family } und { $other } ({ LIST($sizes) }) haben dieselbe Steigung und fast denselben Durchmesser. Das eine ist kegelig, das andere zylindrisch.
fit-alike-npsm_bspp = { $family } und { $other } ({ LIST($sizes) }) haben in den Größen 1/2 und 3/4 fast dasselbe Gewinde und Sitze mit 60° Gesamtwinkel. Die Flankenwinkel sind verschieden.
fit-alike-bspp_jis = { $family } und { $other } ({ LIST($sizes) }) haben dasselbe Gewinde, aber entgegengesetzte Konen. Sie lassen sich verschrauben, dichten aber nicht.
fit-alike-taper_cone = { $family } und { $other } ({ LIST($sizes) }) haben dieselbe Steigung und fast denselben Durchmesser. Das eine ist kegelig, das andere dichtet mit einem Konus.
fit-alike-tube_sizes = { $family } und { $other } ({ LIST($sizes) }) haben bei verschiedenen Rohrgrößen dasselbe Gewinde. Zum Unterscheiden den Rohraußendurchmesser messen.
fit-alike-metric_cone_flare = { $family } und { $other } ({ LIST($sizes) }) haben dieselben metrischen Gewinde. Das eine dichtet mit einem 24°-Konus, das andere mit einem 30°-Bördel.
fit-alike-metric_cone_oring = { $family } und { $other } ({ LIST($sizes) }) haben dieselben metrischen Gewinde. Das eine dichtet mit einem Konus, das andere mit einem O-Ring unter dem Sechskant.
fit-alike-flanges = { $family } und { $other } ({ LIST($sizes) }) sehen ähnlich aus. Der Flanschbund von Code 62 ist dicker und breiter, und die Schrauben stehen weiter auseinander.
fit-alike-thread = { $family } und { $other } ({ LIST($sizes) }) haben das gleiche oder fast das gleiche Gewinde. Sie lassen sich verschrauben, dichten aber nicht miteinander: den Dichtsitz prüfen.
fit-alike-reversed_cone = { $family } und { $other } ({ LIST($sizes) }) haben das gleiche metrische Gewinde, aber entgegengesetzte Konen. Sie lassen sich zusammenschrauben, dichten aber nicht.
fit-alike-cones_60_24 = { $family } und { $other } ({ LIST($sizes) }) haben gleiche metrische Gewinde. Der eine Konus hat 60°, der andere 24°: Sie dichten nicht aufeinander.
fit-alike-tube_bore = { $family } und { $other } ({ LIST($sizes) }) haben gleiches Gewinde und gleichen Konus. Nur das Rohr ist ein anderes: seinen Außendurchmesser messen.
fit-alike-flareless = { $family } und { $other } ({ LIST($sizes) }) haben gleiche Gewinde. Der eine dichtet mit einem Schneidring im 24°-Konus, der andere auf einem Bördel.
fit-alike-inverted = { $family } und { $other } ({ LIST($sizes) }) haben gemeinsame Gewinde. Beim umgekehrten Bördel sitzt der Konus im Einschraubloch: Sie dichten nicht aufeinander.
fit-alike-flat_oring = { $family } und { $other } ({ LIST($sizes) }) haben gleiche metrische Gewinde. Der eine dichtet mit einem Ring auf ebener Fläche, der andere mit einem O-Ring in der Fase des Einschraublochs.
fit-alike-flat_cone = { $family } und { $other } ({ LIST($sizes) }) haben gleiche metrische Gewinde. Der eine dichtet mit einem Ring auf ebener Fläche, der andere auf einem Konus.

## Where a step's practice comes from

fit-source-tag = Angabe der Werkstatt auf dem Schild
fit-source-turns = { LIST($turn_sources) }
fit-source-practice = allgemeine Praxis (keine veröffentlichte Quelle)
fit-source-iso4413_j1273 = ISO 4413 und SAE J1273 (nicht überprüft)
fit-source-j1273 = SAE J1273 (nicht überprüft)
fit-source-previews = Auszüge der SAE J517 und J516: Für eine Schlauchleitung gilt der Druck ihres schwächsten Teils
fit-source-flare_pages = zwei öffentliche Seiten: Der 45°-Bördel hat in -2 -3 -4 -5 -8 -10 dasselbe Gewinde wie der 37°-Bördel
fit-source-hose_page = öffentliche technische Seite eines Schlauchherstellers, japanische Anschlüsse
fit-source-thread_page = öffentliche Gewinde-Nachschlageseite
fit-source-oring_manuals = Betriebsanleitungen von Herstellern (O-Ring geölt)
fit-source-no_twist = SAE J1273 und Betriebsanleitungen von Herstellern: zwei Schraubenschlüssel, kein Verdrehen
fit-source-bend = Auszug der EN 853:2015; öffentlicher Hydraulik-Nachschlagetext (ungeprüft)
fit-source-two_wrenches = mehrere Betriebsanleitungen von Herstellern verlangen zwei Schraubenschlüssel
fit-source-finger = Betriebsanleitungen von Herstellern, Schlüsselflächen ab handfest
fit-source-wrench = US Army TM 9-2320-364-20-4; Betriebsanleitung eines Kompakttraktorherstellers
fit-source-cutting_ring = zwei öffentliche Seiten zur Montage von 24°-Rohrverschraubungen
fit-source-farm_manual = Betriebsanleitung eines Landmaschinenherstellers
fit-source-manuals = mehrere Betriebsanleitungen von Herstellern
fit-source-torque_page = öffentliche Drehmoment-Rechnerseite für Hydraulikverschraubungen
fit-source-pipe_pages = zwei öffentliche Seiten über Rohrverschraubungen
fit-source-telehandler = Werkstatthandbuch eines Teleskopladerherstellers (1994)
fit-source-bolt_tables = allgemeine Schraubentabellen aus OEM-Handbüchern (Werte nach SAE J1701 und andere)
fit-source-iso6162 = ISO 6162-2 und übliche Praxis (unbestätigt)
