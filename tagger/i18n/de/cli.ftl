# The command line: commands, options, refusals and answers.

## Commands

cli-description = Schilder für Hydraulik-Schlauchleitungen: die ganze Spezifikation an der Schlauchleitung.
cli-about-identify = Bestimmt einen Anschluss aus dem, was Sie von ihm wissen.
cli-about-hose-by-layers = Schließt Schlauchnormen nach Lagen, Durchmessern und Kennzeichnung aus; gibt keinen Druck an.
cli-about-check = Zeigt zulässigen Druck, Grenzwerte, Toleranzen, Anziehwerte und Warnungen. Registriert nichts.
cli-about-compare = Vergleicht zwei Schlauchleitungen: Ersetzt B die Schlauchleitung A? Jede ist eine Spezifikationsdatei, der Link eines Schilds, ein Foto oder eine Schildnummer.
cli-about-tables = Die Tabellen prüfen oder berichten, wie viel sie wissen.
cli-about-schema = Gibt das JSON-Schema einer Spezifikation aus.
cli-about-register = Gibt Schlauchleitungen ihre Schildnummern.
cli-about-print = Druckt die Schilder registrierter Schlauchleitungen aus.
cli-about-run = Registriert eine ganze Liste und druckt sie aus, alles oder nichts.
cli-about-read = Zeigt, was auf einem Schild steht, ohne Datenbank.
cli-about-show = Zeigt den Datensatz eines Schilds und seinen Verlauf.
cli-about-lay-line = Den Aufdruck eines Schlauchs lesen: Norm, Größe, Druck.
cli-about-void = Einen Eintrag für ungültig erklären, bevor das Schild gescannt oder die Schlauchleitung eingebaut, geprüft oder übergeben ist.
cli-about-correct = Kunde, Maschine, Einbauort, Reinheit, Chargen oder Bemerkung eines Eintrags berichtigen.
cli-about-proof = Eine Druckprüfung einer oder mehrerer Schlauchleitungen eintragen oder sagen, wie sie sein muss.
cli-about-allow = Die schriftliche Erlaubnis der Hersteller für eine zurückgehaltene Schlauchleitung eintragen.
cli-about-overrated = Schlauchleitungen auflisten, die über den heutigen Werten registriert sind.
cli-about-values = Die eigenen Herstellerwerte der Werkstatt: auflisten, einen zurückziehen.
cli-about-templates = Listet die Etikettvorlagen auf.
cli-about-preflight = Prüft, ob sich ein Schild scannen lässt.
cli-about-serve = Startet die Web-Anwendung.
cli-about-demo = Die Woche einer erfundenen Werkstatt laden und auf diesem Rechner zeigen, zum Ausprobieren.
cli-about-backup = Schreibt eine einheitliche, geprüfte Kopie der Datensätze.
cli-about-restore = Stellt eine geprüfte Kopie in einer leeren Datenbank wieder her.
cli-about-drill = Stellt eine Sicherung in einer Wegwerf-Datenbank wieder her und vergleicht: Würde sie heute genügen?
cli-about-audit = Prüft die Kette über Datensätze und Verlauf: erster Bruch oder letztes Glied.
cli-about-move = Überträgt alle Datensätze in eine andere, leere Datenbank und vergleicht jede Zeile.

## Options

cli-option-json = als JSON antworten
cli-option-lang = Sprache: { LIST($languages, style: "or") } (TAGGER_LANGUAGE)
cli-option-choices = eines von: { LIST($choices, style: "or") }
cli-option-cone = wo der Dichtkonus liegt: { LIST($choices, style: "or") }
cli-option-thread-od = Außendurchmesser eines Außengewindes
cli-option-thread-id = Innendurchmesser eines Innengewindes
cli-option-pitch = Gewindesteigung in mm
cli-option-hex = Schlüsselweite des Sechskants
cli-option-tube-od = Rohraußendurchmesser
cli-option-side = wo das Gewinde sitzt: { LIST($choices, style: "or") }
cli-option-swivels = ob sich der Gewindeteil auf der Armatur dreht: { LIST($choices, style: "or") }
cli-option-shape = ob das Gewinde zylindrisch oder kegelig ist: { LIST($choices, style: "or") }
cli-option-seals = was dichtet: { LIST($choices, style: "or") }
cli-option-flank = Flankenwinkel des Gewindes: { LIST($choices, style: "or") }
cli-option-nose = Durchmesser der Nase oder der Aufnahme, in die sie greift
cli-option-series = Baureihe eines Einschraubzapfens: { LIST($choices, style: "or") }
cli-option-origin = Herkunft der Maschine, entscheidet nur bei Gleichstand: { LIST($choices, style: "or") }
cli-option-cannot = was sich nicht messen lässt, mehrfach möglich: { LIST($choices, style: "or") }
cli-option-flange-od = Durchmesser des Flanschbunds
cli-option-bolt-spacing = größter Abstand der Flanschschrauben, Mitte zu Mitte
cli-option-tpi = Gänge je Zoll
cli-option-length-example = { $what }: 27, "27 mm" oder "1 1/16 in"
cli-option-spec = eine Spezifikationsdatei, oder - für die Standardeingabe
cli-option-lay-line = der Text des Aufdrucks, wie gedruckt
cli-option-length-bands = Toleranzstufen (Vorgabe: TAGGER_LENGTH_BANDS, sonst die der Schlauchnorm)
cli-option-keep = Die Herstellerwerte dieser Spezifikation als eigene Werte der Werkstatt behalten, für jede weitere Schlauchleitung.
cli-option-all = Auch ersetzte und zurückgezogene Werte auflisten.
cli-option-withdraw = Den Wert mit dieser Nummer zurückziehen; den Grund mit --reason angeben.
cli-option-reason = Der Grund für das Zurückziehen.
cli-option-count = Anzahl der Schlauchleitungen (Vorgabe 1)
cli-option-keep-backups = Die letzten N Sicherungen im Ordner FILE behalten und ältere löschen.
cli-option-into = Eine leere Datenbank für die Probe; ohne sie eine temporäre Datei.
cli-option-unsealed = Die Sicherung einer älteren Version ohne Prüfsumme wiederherstellen.
cli-option-head = ein früher notiertes letztes Glied, aus einer Sicherung oder einem Prüfzeugnis: Es muss noch in der Kette stehen
cli-option-audit-backup = eine Sicherung: Ihr letztes Glied muss noch in der Kette stehen
cli-option-move-to = Adresse der leeren Datenbank, etwa postgresql://name@host/data; ein Passwort steht besser in der Passwortdatei von PostgreSQL
cli-option-built-on = Herstellungsdatum (Vorgabe: heute)
cli-option-record = kommt in den Datensatz, nie in den QR-Code
cli-option-replaces = das Schild der Schlauchleitung, die ersetzt wird
cli-option-why = der Grund; er bleibt im Verlauf
cli-option-correct = der richtige Wert; ein leerer Text entfernt ihn
cli-option-proof-result = das Ergebnis; ohne es wird nichts eingetragen
cli-option-proof-pressure = der Prüfdruck: in bar oder mit Einheit
cli-option-proof-hold = die Haltezeit in Sekunden
cli-option-proof-medium = das Prüfmedium: { LIST($media) }
cli-option-proof-tester = wer geprüft hat
cli-option-proof-note = eine Bemerkung
cli-option-proof-lower = Kunde oder Norm, die eine Prüfung mit weniger Druck verlangen
cli-option-proof-rating = der Betriebsdruck des Herstellers für unbekannte oder ungeprüfte Teile
cli-option-proof-rating-source = die Quelle dieses Betriebsdrucks
cli-option-proof-rating-confirmed = dieser Betriebsdruck stimmt, obwohl er über den Tabellen liegt
cli-option-proof-confirmed = dieser Prüfdruck wurde angelegt, obwohl er die Schlauchleitung zurückhält
cli-option-allow-by = die Hersteller, die es erlauben
cli-option-allow-on = das Datum des Dokuments
cli-option-allow-document = das Dokument
cli-option-length-confirmed = die Länge stimmt, obwohl sie über 100 m liegt
cli-option-pressure-confirmed = der Betriebsdruck der Spezifikation stimmt, obwohl er über den Tabellen liegt
cli-option-order = der Auftrag, für den gefertigt wird
cli-option-changes-considered = die vom Auftrag gewünschte Änderung ist berücksichtigt; die Spezifikation bleibt wie bestellt
cli-option-lot-reason = Grund, eine Schlauchcharge zu verwenden, die als anderer Schlauch bekannt ist: { LIST($reasons) }
cli-option-key = derselbe Schlüsselwert registriert nur einmal, auch bei mehrfachem Senden
cli-option-printer = ein Netzwerkdrucker: ipp://HOST/ipp/print oder ipps://
cli-option-list = eine .csv- oder .xlsx-Datei, je Spezifikation eine Zeile
cli-option-what = ein Foto oder ein gescannter Text
cli-option-hose-od = Außendurchmesser des Schlauchs (Vorgabe: der aus den Tabellen)
cli-option-host = Adresse, auf der gehört wird (Vorgabe: TAGGER_HOST, sonst 127.0.0.1)
cli-option-port = Port, auf dem gehört wird (Vorgabe: TAGGER_PORT, sonst 8000)
cli-demo-other-week = Die Datensätze in { $folder } sind nicht die erfundene Woche dieser Version.
    .mend = Diesen Ordner löschen oder einen anderen nennen: tagger demo ORDNER.
cli-option-demo = der Ordner für ihre Datenbank und ihre Schilder (Vorgabe: out)
cli-option-out = eine .pdf- oder .png-Datei; für eine Gravurplatte .svg oder .dxf
cli-option-template = Name einer Vorlage oder ihre .toml-Datei (Vorgabe: TAGGER_LABEL_TEMPLATE, sonst hang_tag)
cli-option-dpi = Auflösung in dpi (Vorgabe: TAGGER_PRINTER_DPI, sonst 203)
cli-option-dpi-printer = Auflösung in dpi (Vorgabe: die des Netzwerkdruckers, sonst TAGGER_PRINTER_DPI, sonst 203)
cli-option-start = erstes freies Etikett eines angebrochenen Bogens (Vorgabe 1)
cli-option-languages = eine oder zwei Sprachen des Schilds: { LIST($languages, style: "or") } (Vorgabe: die der Vorlage, oder TAGGER_LANGUAGE)
cli-option-force = auch ausdrucken, wenn die Prüfung ablehnt

## Wrong usage: what argparse says. The %(...)s are its own places

cli-usage-start = Aufruf:
cli-usage-argument = Argument %(argument_name)s: %(message)s
cli-usage-positional = Positionsargumente
cli-usage-options = Optionen
cli-usage-help = diese Hilfe anzeigen und beenden
cli-usage-version = die Version anzeigen und beenden
cli-usage-unrecognized = unbekannte Argumente: %s
cli-usage-not-allowed = nicht zusammen mit Argument %s möglich
cli-usage-ignored = unerwarteter Wert %r
cli-usage-required = fehlende Argumente: %s
cli-usage-one-required = eines dieser Argumente wird benötigt: %s
cli-usage-expects-one = ein Wert erwartet
cli-usage-expects-some = mindestens ein Wert erwartet
cli-usage-ambiguous = mehrdeutige Option: %(option)s kann %(matches)s sein
cli-usage-invalid-value = ungültiger Wert: %(value)r
cli-usage-invalid-choice = ungültige Auswahl: %(value)r (möglich: %(choices)s)
cli-usage-error = %(prog)s: Fehler: %(message)s
cli-usage-date = { $value } ist kein Datum. Geben Sie das Datum als JJJJ-MM-TT ein, zum Beispiel 2027-03-31.
cli-usage-future = { $value } liegt in der Zukunft. Geben Sie das Herstellungsdatum an oder lassen Sie es weg.
cli-usage-keep = Mindestens eine Sicherung wird behalten.
    .mend = Mindestens 1 eingeben.
cli-usage-head = Das ist kein Glied der Kette.
    .mend = Seine Nummer, einen Doppelpunkt und mindestens 16 Ziffern angeben, etwa 120:9f86d081884c7d65.
cli-usage-dpi = { $value } ist keine Druckerauflösung. Geben Sie 100 bis 1200 dpi ein.
cli-usage-diameter = { $value } ist kein Schlauchdurchmesser. Geben Sie 1 bis 1000 mm ein.

## Refusals

cli-row = Zeile { $row }
cli-row-field = Zeile { $row }, { $field }
cli-column = Spalte { $column }
cli-cell = Zelle { $cell }
cli-row-cell = Zeile { $row }, Zelle { $cell }
cli-file = Datei
cli-heading = Kopfzeile
cli-number = Schildnummer
cli-spec = Spezifikation
cli-link = Link
cli-digits = Code des Schilds
cli-image = Bild
cli-template = Vorlage
cli-printer = Drucker
cli-tag = Schild
cli-list = Liste
cli-problem = { $place }: { $said }
cli-problem-value = { $place }: { $said } (Wert: { $value })
cli-not-a-file = Diese Bilddatei gibt es nicht.
    .mend = Prüfen Sie den Dateinamen.
cli-out-not-pdf-or-png = Der Dateiname endet weder auf .pdf noch auf .png.
    .mend = Verwenden Sie einen Namen mit der Endung .pdf oder .png.
cli-out-not-engraved = SVG und DXF sind für Gravurplatten, dieses Schild ist für einen Drucker.
    .mend = --template metal_plate verwenden oder eine Datei mit der Endung .pdf oder .png.
cli-out-one-plate = Eine Gravurdatei enthält eine einzige Platte.
    .mend = Für jede Datei eine Schildnummer angeben.
cli-out-no-folder = Diesen Ordner gibt es nicht.
    .mend = Legen Sie den Ordner an oder prüfen Sie den Pfad.
cli-out-not-writable = In diesen Ordner kann nicht geschrieben werden.
    .mend = Wählen Sie einen anderen Ordner.
cli-too-many-batches = Diese Liste wurde zehntausendmal verarbeitet.
    .mend = Ändern Sie die Liste.
cli-run-meanwhile = Diese Liste wurde zur selben Zeit von einem anderen Lauf gedruckt, und der hat sie registriert.
    .mend = Sehen Sie in dessen Datei nach; um die Liste ein zweites Mal zu drucken, starten Sie sie erneut.
cli-run-proof-first = Dieser Betrieb druckt kein Schild vor der bestandenen Druckprüfung.
    .mend = Eine Laufkarte verwenden, zum Beispiel --template traveller_a5, und die Schilder nach den Druckprüfungen drucken.
cli-run-do-not-use = „{ $template }“ ist für Schlauchleitungen, die nicht verwendet werden dürfen; dieser Befehl registriert neue.
    .mend = Den Befehl „tagger print“ mit der Schildnummer verwenden.

## Answers

cli-tables-ok = Die Tabellen sind widerspruchsfrei. Werte: { $count } (veröffentlicht: { $published }, übliche Praxis: { $practice }, ungeprüft: { $memory }, aus der Werkstatt: { $shop }).
cli-withdrawn = GESPERRT, nicht verwenden: { $reason }
cli-void = UNGÜLTIG, nicht einbauen: { $reason }
cli-void-done = Der Eintrag von Schild { $number } ist ungültig.
cli-correct-done = Der Eintrag von Schild { $number } ist berichtigt.
cli-proof-required = Druckprüfung: { $pressure }, { $low } bis { $high } s gehalten, mit Flüssigkeit
cli-proof-unknown = Druckprüfung: Der Druck ist nicht bekannt; { $low } bis { $high } s gehalten, mit Flüssigkeit
cli-proof-ask-rating = Den Betriebsdruck des Herstellers eingeben: { LIST($parts) }
cli-allow-done = Die Erlaubnis für Schild { $number } ist eingetragen.
cli-proof-no-result = Das Ergebnis der Prüfung fehlt: Es wurde nichts eingetragen.
    .mend = --result passed oder --result failed verwenden.
cli-no-pressure-to-confirm = Die Spezifikation hat keinen Betriebsdruck, der zu bestätigen wäre.
    .mend = Einen in der Spezifikation eingeben oder die Option weglassen.
cli-pressure = Max. Betriebsdruck: { $pressure }
cli-hose = Schlauch: { $hose }
cli-end = Ende { $end }: { $fitting }
cli-length = Länge: { $length }
cli-clocking = Verdrehwinkel: { $clocking }
cli-tightening = Ende { $end } anziehen: { $how }
cli-fluid = Medium: { $fluid }
cli-maximum-temperature = Höchste Temperatur: { $temperature }
cli-vacuum = Höchster Unterdruck: { $vacuum }
cli-built-on = Hergestellt am: { $day }
cli-recorded = { $caption }: { $value }
cli-replaces = Ersetzt: { $value }
cli-replaced_by = Ersetzt durch: { $value }
cli-replacement_built = Ein Ersatz ist gefertigt, noch nicht eingebaut: { $value }
cli-serving = { $base } läuft auf { $host }:{ $port }. Die Werkbank finden Sie unter { $base }/bench.
cli-stopped = Beendet.
cli-backed-up = { $file }: geschrieben und geprüft. { $rows }. SHA-256 { $digest }. Letztes Glied der Kette: { $head }
cli-restored = { $file }: wiederhergestellt und verglichen. { $rows }. SHA-256 { $digest }
cli-backed-up-kept = { $file }: geschrieben und geprüft. { $rows }. Behalten: { $kept }. Gelöscht: { $removed }. SHA-256 { $digest }. Letztes Glied der Kette: { $head }
cli-drilled = In einer Wegwerf-Datenbank wiederhergestellt und verglichen: { $file } ist in Ordnung. { $rows }. SHA-256 { $digest }
cli-audited = Die Kette ist unversehrt. Glieder: { $links }. { $rows }. Letztes Glied der Kette: { $head }
cli-audit-broken = Die Kette ist unterbrochen. { $why } Was nach dieser Stelle aufgezeichnet wurde, ist nicht bewiesen. Mit der letzten unversehrten Sicherung vergleichen. Letztes Glied der Kette: { $head }
cli-moved = Übertragen und verglichen: { $rows } in { $tables } Tabellen. SHA-256 { $digest } Jetzt TAGGER_DATABASE_URL auf { $target } setzen. Die alte Datenbank darf ab jetzt niemand mehr benutzen. Alle melden sich neu an.
cli-rows = Zeilen: { $count }
cli-base-url-not-set = Hinweis: TAGGER_BASE_URL ist nicht gesetzt. Der QR-Code öffnet { $base }; das erreicht nur dieser Rechner.
cli-run-done = Schlauchleitungen registriert und ausgedruckt: { $count }. Dateien: { LIST($files) }.
cli-scans = Scanbar: QR-Version { $version }, Stufe { $level }, Module { $module } mm = { $dots } Punkte, Symbole auf dem Etikett: { $symbols }, Güte { $grade }, Daten { $bytes } Byte
cli-scans-badly = NICHT ZUVERLÄSSIG SCANBAR: QR-Version { $version }, Stufe { $level }, Module { $module } mm = { $dots } Punkte, Symbole auf dem Etikett: { $symbols }, Güte { $grade }, Daten { $bytes } Byte
cli-finding-refuse = Abgelehnt: { $text } { $mend }
cli-finding-warn = Vorsicht: { $text } { $mend }
cli-finding-note = Hinweis: { $text } { $mend }
cli-maybe-printed = Möglicherweise ausgedruckt; das ließ sich nicht feststellen.
cli-job = { $printer }: Auftrag { $job }, { $state }
cli-job-said = { $printer }: Auftrag { $job }, { $state } ({ $said })
cli-progress-unit = Schild

## What happened to a tag

cli-event-registered = registriert
cli-event-crimped = Pressmaß gemessen
cli-event-flushed = gespült
cli-event-proof_tested = druckgeprüft
cli-event-proof_allowed = Prüfdruck von den Herstellern erlaubt
cli-proof-line = Druckprüfung { $result ->
        [passed] bestanden
        [tested] unvollständig, Drucktest
        [held] ZURÜCKGEHALTEN, nicht verwenden
        [outdated] ungültig, vor dem Verpressen geprüft
       *[failed] NICHT BESTANDEN
     }: { $pressure }, { $hold } s
cli-event-printed = Schild ausgedruckt
cli-event-fitted = eingebaut
cli-event-inspected = geprüft
cli-event-scanned = gescannt
cli-event-ordered = nachbestellt
cli-event-replaced = ersetzt
cli-event-corrected = berichtigt
cli-event-voided = für ungültig erklärt
cli-event-replacement_built = Ersatz gefertigt
cli-event-removed = endgültig ausgebaut
cli-event-withdrawn = gesperrt
cli-event-withdrawal_lifted = Sperrung aufgehoben

## How far a printer is with a job

cli-state-pending = wartet
cli-state-held = angehalten
cli-state-processing = läuft
cli-state-stopped = gestoppt
cli-state-canceled = storniert
cli-state-aborted = abgebrochen
cli-state-completed = ausgedruckt

## Assemblies rated above today's tables

cli-overrated = { $number }: { $message }
cli-overrated-none = Keine Schlauchleitung hat einen höheren Druck als nach heutigen Tabellen.
cli-about-fittings = Armaturen der Werkstatt auflisten, eine Liste importieren oder eine löschen
cli-option-fitting-text = Teil der Artikelnummer, der Serie oder des Anschlusses
cli-option-fittings-import = eine .csv- oder .xlsx-Datei; alle Zeilen oder keine
cli-option-fitting-drop = diese Artikelnummer aus der Liste löschen
cli-fitting = { $number }: { $end }
cli-fittings-none = Keine Armaturen gefunden.
cli-values-none = Die Werkstatt hat keine eigenen Werte.
cli-kept = Für jede weitere Schlauchleitung behalten: { $value }
cli-value ={ $id }  { $value }, { $by ->
        [none] behalten am { $day }
       *[other] behalten am { $day } von { $by }
    }
cli-value-withdrawn ={ $id }  { $value }, { $by ->
        [none] behalten am { $day }
       *[other] behalten am { $day } von { $by }
    }, zurückgezogen am { $ended }: { $why }
cli-value-replaced ={ $id }  { $value }, { $by ->
        [none] behalten am { $day }
       *[other] behalten am { $day } von { $by }
    }, ersetzt am { $ended } durch { $other }

## How much the tables know

cli-known-material = { $material }: jede Schlauchgröße mit zwei ihrer natürlichen Enden. Schläuche: { $hoses }
cli-known-all_families = alle Anschlussarten
cli-known-first_sixteen_families = die sechzehn Anschlussarten der Version 0.1.0
cli-known-now = Schlauchleitungen, { $families }
cli-known-usual_form = Mit einem eigenen Wert je Anschlussart und Größe, die keinen hat, nur übliche Bauform, { $families }
cli-known-every_form = Ebenso für jede Bauform, { $families }
cli-known-shares = { $what }: geprüft { $verified } %, ungeprüft { $unverified } %, unbekannt { $unknown } % (von { $count })
cli-known-by-family = Enden nach Anschlussart, jedes an allen seinen Schläuchen:
cli-known-by-grade = Quellen der Enden mit zulässigem Druck:
cli-known-grade = { $grade }: { $share } %
cli-known-identify = Trefferquote der Bestimmung (simulierte Messungen, alle Anschlüsse):
cli-known-measured = { $measured }: an erster Stelle { $first } %, unter den ersten drei { $three } %, Fragen { $questions }
cli-grade-standard = Norm eingesehen
cli-grade-document = Unterlage eines Herstellers oder einer Behörde eingesehen
cli-grade-secondary = Sekundärtabelle
cli-grade-memory = aus dem Gedächtnis (ungeprüft)
cli-grade-judgement = nach eigener Einschätzung (ungeprüft)
cli-grade-practice = übliche Praxis
cli-grade-shop = Wert der Werkstatt
cli-measured-diameter = Durchmesser
cli-measured-diameter-pitch = Durchmesser und Steigung
cli-measured-diameter-seat = Durchmesser und Sitz
cli-measured-diameter-pitch-seat = Durchmesser, Steigung und Sitz
cli-measured-diameter-pitch-seat-cone = Durchmesser, Steigung, Sitz und Konus
cli-measured-diameter-pitch-seat-cone-nose = Durchmesser, Steigung, Sitz, Konus und Zapfen
cli-measured-asked = Durchmesser, Steigung, Sitz und was danach gefragt wird
cli-about-hoses = Eigene Schläuche der Werkstatt anzeigen, eine Liste importieren oder einen zurückziehen
cli-option-hoses-import = eine .csv- oder .xlsx-Datei mit den Spalten, die die JSON-Ausgabe dieses Befehls nennt; alle Zeilen oder keine
cli-option-hose-drop = den Schlauch mit dieser Teilenummer zurückziehen; braucht --dash und --reason
cli-option-hose-dash = Dash des Schlauchs, der zurückgezogen wird
cli-option-hose-reason = Grund der Rücknahme
cli-hoses-none = Die Werkstatt führt keine eigenen Schläuche.
cli-own-hose = { $part }: { $standard } -{ $dash }, { $rating }

## Papers, crimps and customers

cli-about-crimp = Gemessene Pressmaße eintragen, jedes gegen sein Pressblatt gehalten.
cli-about-crimp-cards = Die Pressblätter der Werkstatt auflisten, eine Liste importieren oder eine löschen.
cli-about-flush = Eintragen, dass Schlauchleitungen gespült wurden, wie und von wem.
cli-about-certificate = Das Prüfzeugnis der letzten Druckprüfung schreiben, je Schlauchleitung oder für eine ganze Serie.
cli-about-card = Die Einbaukarte schreiben, die mit der Schlauchleitung in den Beutel kommt: die Anleitung für beide Enden, auf A6.
cli-about-scale-card = Die Maßstabskarte schreiben, die im Foto neben einem Ende liegt, um sein Gewinde zu messen: ein Blatt, mit 100 % zu drucken.
cli-about-customer = Alles exportieren, was von einem Kunden gespeichert ist.
cli-about-people = Personen auflisten, die sich anmelden; einer die Codes vom Telefon wegnehmen.
cli-option-codes-off = von dieser Person keine Codes vom Telefon mehr verlangen und ihre Sitzungen beenden
cli-person = { $name }: { $role ->
        [manager] Werkstattleitung
        [counter] Theke
       *[builder] Konfektionierer
    }{ $active ->
        [no] {""}, darf sich nicht anmelden
       *[yes] {""}
    }{ $codes ->
        [yes] {""}, gibt einen Code vom Telefon ein
       *[no] {""}
    }
cli-person-codes-off = Von { $name } werden keine Codes mehr verlangt; alle Sitzungen dieser Person sind beendet.
cli-people-none = Noch kann sich niemand anmelden.
cli-person-not-found = Niemand heißt hier { $name }.
    .mend = Namen auflisten mit: tagger people
cli-person-no-codes = Von { $name } werden keine Codes vom Telefon verlangt.
    .mend = Namen prüfen mit: tagger people
cli-about-erase-contact = Den Kontakt einer Bestellanfrage überall löschen; Bestellungen und Schilder bleiben.
cli-about-fitted = Einbaumeldungen: auflisten, bestätigen, ablehnen.
cli-about-erase-old = Kontakte, Fotos und Namen löschen, die so lange aufbewahrt wurden, wie die Einstellungen es sagen.
cli-option-fitted-state = nur solche im Zustand { LIST($states, style: "or") }
cli-option-fitted-number = nur solche dieses Schilds
cli-option-fitted-agree = diese Meldung bestätigen; danach steht sie in der Historie des Schilds
cli-option-fitted-refuse = diese Meldung ablehnen; braucht --reason
cli-option-fitted-erase = löschen, wer diese Meldung gemacht hat, und ihr Foto; Datum, Maschine und Stunden bleiben
cli-option-dry-run = nur sagen, wie viel gelöscht würde
cli-fitted-line = { $id }: Schild { $number }, eingebaut am { $day }, { $machine }, { $state ->
        [agreed] bestätigt
        [refused] abgelehnt
       *[waiting] zu bestätigen
     }
cli-fitted-machine = Maschine { $machine }
cli-fitted-no-machine = ohne Angabe einer Maschine
cli-fitted-erased = { $erased ->
        [yes] Name und Foto der Meldung { $id } sind gelöscht. Kopien von vorher enthalten sie noch.
       *[no] Die Meldung { $id } enthielt weder Namen noch Foto.
     }
cli-fitted-none = Es wurde kein Einbau gemeldet.
cli-erase-old-unset = Nichts ist eingestellt: Alles wird für immer aufbewahrt.
    .mend = { LIST($names, style: "or") } auf eine Zahl von Tagen setzen.
cli-erased-old = Gelöscht: Kontakte { $contacts }, Fotos { $photos }, Namen in Einbaumeldungen { $reports }. Kopien von vorher enthalten sie noch: diese entfernen (tagger backup --keep).
cli-old = Zu löschen: Kontakte { $contacts }, Fotos { $photos }, Namen in Einbaumeldungen { $reports }.
cli-option-whole-run = auch alle, die zusammen mit diesen registriert wurden
cli-option-proof-gauge = das Manometer mit Nummer oder Namen
cli-option-proof-gauge-until = bis wann die Kalibrierung des Manometers gilt
cli-option-proof-method = das angewandte Verfahren
cli-option-flush-method = wie und womit sie innen gereinigt wurden
cli-option-flush-by = wer sie gespült hat
cli-option-pdf = eine .pdf-Datei
cli-option-card-paper = Papierformat (Vorgabe a4)
cli-option-certificate-batch = ein Prüfzeugnis für die ganze Serie, in der die Schlauchleitung zuletzt geprüft wurde
cli-option-crimp = an Ende { $end } gemessenes Pressmaß: mm oder mit Einheit
cli-option-crimp-shell = die Armaturenreihe (sonst die der Artikelnummer des Endes)
cli-option-crimp-import = eine .csv- oder .xlsx-Datei mit den Spalten { LIST($columns) }; alle Zeilen oder keine
cli-option-crimp-cards-import = eine .csv- oder .xlsx-Datei mit den Spalten, die die JSON-Ausgabe dieses Befehls nennt; alle Zeilen oder keine
cli-option-crimp-card-drop = das Pressblatt mit dieser Nummer löschen
cli-option-customer-name = der ganze Name, groß oder klein geschrieben
cli-option-customer-out = auch in diese JSON-Datei schreiben
cli-option-erase-reference = die Nummer der Bestellanfrage
cli-of-tag = { $number }: { $what }
cli-proof-batch = Serie { $batch }: { $count ->
        [one] { $count } Schlauchleitung
       *[other] { $count } Schlauchleitungen
     }
cli-flush-done = { $count ->
        [one] Die Spülung von { $count } Schlauchleitung ist eingetragen.
       *[other] Die Spülung von { $count } Schlauchleitungen ist eingetragen.
     }
cli-crimp-of-end = Ende { $end }, { $crimp }
cli-crimp-nothing = Es ist kein gemessenes Pressmaß angegeben: Nichts wurde eingetragen.
    .mend = Eine Schildnummer mit --a oder --b angeben oder eine Liste mit --import.
cli-crimp-end = Das ist kein Ende.
    .mend = a oder b eingeben.
cli-crimp-no-shell = Die Armaturenreihe von Ende { $end } ist nicht bekannt.
    .mend = Sie unter { $field } angeben.
cli-crimp-card = { $id }: { $hose }, { $series }: { $diameter } mm +{ $plus } −{ $minus } mm (Quelle: { $source })
cli-crimp-cards-none = Die Werkstatt führt keine Pressblätter.
cli-out-not-pdf = Das ist keine .pdf-Datei.
    .mend = Einen Namen verwenden, der auf .pdf endet.
cli-customer = { $name }: { $assemblies ->
        [one] { $assemblies } Schlauchleitung
       *[other] { $assemblies } Schlauchleitungen
     }, { $orders ->
        [one] { $orders } Bestellanfrage
       *[other] { $orders } Bestellanfragen
     }
cli-customer-none = Vom Kunden { $name } ist nichts gespeichert.
    .mend = Die Schreibweise prüfen; der Name muss vollständig sein.
cli-contact-erased = { $count ->
        [0] Dieser Kontakt war schon gelöscht.
        [one] Der Kontakt ist in { $count } Bestellanfrage gelöscht.
       *[other] Der Kontakt ist in { $count } Bestellanfragen gelöscht.
     }

## Signing keys

cli-about-signing-key = Schlüssel, die die Schilder der Werkstatt signieren: anlegen, auflisten, zurückziehen, drucken.
cli-option-signing-what = new: ein Schlüssel, der ab heute signiert; der vorige bleibt für seine Schilder gültig. withdraw: Nichts, was mit --key signiert wurde, zählt mehr. page: die öffentlichen Schlüssel als PDF.
cli-option-signing-number = Nummer des Schlüssels, der zurückgezogen wird.
cli-option-signing-published = Für new, wenn die Schlüsseldatei verloren ist: die gespeicherte Liste der öffentlichen Schlüssel. Damit signierte Schilder bleiben gültig.
cli-signing-now = Schlüssel { $key } signiert die Schilder ab heute.
cli-signing-keep = Eine Kopie von { $file } so aufbewahren, dass sie niemand sonst lesen kann, die Schlüsselseite drucken und jedem Server und jeder Werkbank dieselbe Datei geben.
cli-signing-line = { $key }  { $public }  { $valid }
cli-signing-page = Schlüsselseite geschrieben: { $file }
cli-signing-needs = --{ $option } fehlt.
    .mend = --{ $option } angeben.
cli-read-signature = Signatur: { $said }
cli-compare-signature = Signatur von { $which }: { $said }

## Wandtafel und Taschenheft

cli-about-chart = Die Wandtafel schreiben: jeder Anschluss im Schnitt, mit Gewinden, Dichtung und Verwechslungen, auf einer Seite.
cli-about-booklet = Das Taschenheft schreiben: Gewindetabellen, Schlüsselflächen, Messanleitung, auf Bögen zum Falten.
cli-option-chart-paper = Papier (Vorgabe: A3); A2 ist auf 1 m lesbar
cli-option-chart-stock = nur die Anschlüsse der Armaturen der Werkstatt
cli-option-chart-numbers = nur diese, mit ihren Lagernummern
cli-option-booklet-paper = Papier, das geschnitten und gefaltet wird (Vorgabe: A4)
cli-option-booklet-pages = Seite für Seite, zum Lesen am Bildschirm

## Gauge sheets

cli-about-sheet = Einen Lehrenbogen schreiben: die Tabellen im wahren Maßstab auf Papier, zum Anlegen an ein Teil.
cli-option-sheet-kind = wofür der Bogen ist: Gewindedurchmesser, Steigungen, Winkel von Dichtsitzen, Schlüsselweiten, Flanschbunde oder Außendurchmesser von Schläuchen
cli-option-sheet-paper = das Papier, auf das er gedruckt wird
cli-option-sheet-family = nur die Gewindedurchmesser dieser Familie
cli-option-found = Marken, die auf einem Lehrenbogen gefunden wurden, zum Beispiel „D26.99 P2.117“
cli-option-scale = was die Kontrolllinie des Bogens misst: die von 100 mm, oder die von 4 in in Zoll
