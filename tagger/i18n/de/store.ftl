# What the store refuses, what became of a print job, and the states of orders and prints.

## Assemblies and registering

store-not-registered = Das Schild { $number } ist nicht registriert.
    .mend = Nummer prüfen oder das Schild scannen: Sein QR-Code enthält die ganze Spezifikation.
store-run-not-found = Das Fertigungslos { $run } gibt es nicht.
    .mend = Stattdessen nach seinen Schildern suchen.
store-rows-none = Es gibt keine Zeile zu registrieren.
    .mend = Mindestens eine Zeile eingeben.
store-rows-too-many = { $count } Schlauchleitungen sind mehr, als ein Fertigungslos haben darf ({ $most }).
    .mend = In mehreren Fertigungslosen registrieren.
store-danger-reason = { $danger } Ohne schriftlichen Grund wird die Schlauchleitung nicht erfasst.
    .mend = Einen anderen Schlauch oder ein anderes Medium wählen oder den Grund eintragen, sie so zu bauen.
store-quantity-not-valid = { $count } ist keine gültige Menge.
    .mend = Eine Menge von 1 bis { $most } eingeben.
store-read-back = Der QR-Code hat die Gegenprobe beim Lesen nicht bestanden. Nichts wurde registriert.
    .mend = Dem Support melden.
store-numbers-used-up = Es wurde keine freie Schildnummer gefunden.
    .mend = Dem Support melden.
store-number-taken = Die für diese Liste gezogene Schildnummer { $number } wurde inzwischen an eine andere Schlauchleitung vergeben.
    .mend = Die Liste noch einmal ausführen.
store-key-of-other = Dieser Schlüssel wurde schon für { $what ->
        [registration] eine andere Registrierung
        [order] eine andere Bestellung
        [print] einen anderen Druckauftrag
       *[request] eine andere Anfrage
     } verwendet.
    .mend = Einen neuen Schlüssel verwenden.
store-key-length = Der Schlüssel ist leer oder länger als { $most } Zeichen.
    .mend = 1 bis { $most } Zeichen verwenden.
store-not-a-page-mark = { $mark } ist keine Seitenmarke.
    .mend = Die zuletzt erhaltene verwenden.
store-not-an-event = { $kind } ist keine Art von Ereignis.
    .mend = Eines von diesen verwenden: { LIST($kinds, style: "or") }.

## Texts

store-too-long = Der Text ist länger als { $most } Zeichen.
    .mend = Höchstens { $most } Zeichen verwenden.
store-control-character = Der Text enthält ein Steuerzeichen.
    .mend = Das Zeichen löschen und den Text neu eingeben.
store-hidden-character = Der Text enthält einen Zeilenumbruch oder ein unsichtbares Zeichen.
    .mend = In einer Zeile neu eingeben.
store-name-length = Der Name muss 1 bis { $most } Zeichen haben.
    .mend = 1 bis { $most } Zeichen eingeben.
store-name-used = Der Name { $name } ist schon vergeben.
    .mend = Einen anderen Namen wählen.

## Orders

store-order-not-found = Die Bestellung { $reference } ist nicht vorhanden.
    .mend = Bestellnummer prüfen.
store-order-tag-unknown = Das Schild { $number } ist nicht registriert, seine Spezifikation ist nicht bekannt.
    .mend = Die Spezifikation mitsenden: Sie steht im QR-Code.
store-order-tag-void = Der Eintrag von Schild { $number } ist ungültig: Danach kann nichts bestellt werden.
    .mend = Nach dem Schild bestellen, das es ersetzt, oder in der Werkstatt nachfragen.
store-order-of-nothing = Die Bestellung hat weder eine Schildnummer noch eine Spezifikation.
    .mend = Schildnummer eingeben oder die Spezifikation senden.
store-order-not-after = Der Status „{ $wanted }“ ist nach „{ $now }“ nicht erlaubt.
    .mend = Erlaubt: { LIST($next, style: "or") }.
store-order-finished = Die Bestellung hat den Status „{ $now }“, der sich nicht mehr ändern lässt.
    .mend = Eine neue Bestellung eingeben.
store-order-untested = Die Bestellung lässt sich nicht übergeben: Die Druckprüfung ist nicht bestanden für { LIST($numbers) }.
    .mend = Zuerst die Druckprüfungen erfassen.
store-order-nothing-built = Die Bestellung lässt sich nicht übergeben: Für sie ist keine Schlauchleitung registriert, also hat keine die Druckprüfung bestanden.
    .mend = Die Schlauchleitung aus dieser Bestellung bauen und prüfen oder die Bestellung ablehnen.
store-order-question-missing = Die Frage an den Kunden fehlt.
    .mend = Die Frage an den Kunden eingeben.
store-order-past = Der { $day } ist vergangen.
    .mend = Das heutige oder ein späteres Datum eingeben.
store-order-otherwise = Die Bestellung { $reference } wünscht keine Änderung, aber dies weicht davon ab: { LIST($fields) }.
    .mend = Berichtigen oder bestätigen, dass die Abweichung bedacht wurde.
store-order-change-not-made = Auftrag { $reference } wünscht eine Änderung: „{ $changes }“. Die Schlauchleitung ist unverändert.
    .mend = Die Änderung im zugehörigen Feld eingeben oder ankreuzen, dass sie berücksichtigt ist.
store-order-not-a-state = { $state } ist kein Status einer Bestellung.
    .mend = Einen von diesen verwenden: { LIST($states, style: "or") }.
store-contact-missing = Eine Telefonnummer oder eine E-Mail-Adresse ist erforderlich.
    .mend = Eine von beiden eingeben.
store-phone-not-valid = { $phone } ist keine Telefonnummer.
    .mend = Eine Nummer wie +44 1632 960 111 verwenden.
store-email-not-valid = { $email } ist keine E-Mail-Adresse.
    .mend = Eine Adresse wie anna@example.com verwenden.
store-photo-not-found = Es gibt kein Foto { $id }.
    .mend = Die Bestellung oder die Meldung neu öffnen.
store-fitted-not-found = Es gibt keine Meldung { $id }.
    .mend = Die Liste neu öffnen.
store-fitted-many = Für dieses Schild liegen der Werkstatt schon { $most } Meldungen vor.
    .mend = Die Werkstatt anrufen.
store-fitted-no-photo = Die Meldung { $id } hat kein Foto.
    .mend = Es wurde möglicherweise gelöscht.
store-fitted-decided = Über die Meldung { $id } ist schon entschieden.
    .mend = Die Liste neu öffnen.
store-fitted-void = Der Eintrag von Schild { $number } ist ungültig: Die Meldung kann nicht bestätigt werden.
    .mend = Den Absender der Meldung anrufen: Die Schlauchleitung muss ausgebaut werden. Dann die Meldung mit Grund ablehnen.
store-fitted-reason-missing = Eine abgelehnte Meldung braucht einen Grund.
    .mend = Den Grund eingeben.
store-fitted-to-come = Der { $day } liegt in der Zukunft.
    .mend = Das Datum des Einbaus eingeben.
store-fitted-hours = { $given } ist keine Zahl von Betriebsstunden zwischen 0 und { $most }.
    .mend = Den Betriebsstundenzähler noch einmal ablesen.
store-order-state-received = eingegangen
store-order-state-asked = Rückfrage gestellt
store-order-state-accepted = angenommen
store-order-state-building = in Arbeit
store-order-state-done = fertig
store-order-state-declined = abgelehnt

## Withdrawals

store-withdraw-which = Eine Sperrung muss genau ein Schild, eine Schlauchcharge oder eine Armaturencharge nennen.
    .mend = Genau eines davon eingeben.
store-withdraw-reason-missing = Der Grund der Sperrung fehlt.
    .mend = Den Grund der Sperrung eingeben.
store-lift-reason-missing = Der Grund für die Aufhebung der Sperrung fehlt.
    .mend = Den Grund der Aufhebung eingeben.
store-withdrawn-already = { $scope ->
        [hose_lot] Die Schlauchcharge { $value } ist schon gesperrt.
        [fitting_lot] Die Armaturencharge { $value } ist schon gesperrt.
       *[tag] Das Schild { $value } ist schon gesperrt.
     }
    .mend = Um den Grund zu ändern, zuerst die Sperrung aufheben.
store-withdrawal-not-found = Die Sperrung { $withdrawal } ist nicht vorhanden.
    .mend = Die Liste der Sperrungen prüfen.
store-withdrawal-lifted = Die Sperrung { $withdrawal } ist schon aufgehoben.
    .mend = Die Liste der Sperrungen prüfen.
store-lot-withdrawn = { $scope ->
        [hose_lot] Die Schlauchcharge { $lot } ist gesperrt („{ $reason }“).
       *[fitting_lot] Die Armaturencharge { $lot } ist gesperrt („{ $reason }“).
     }
    .mend = Eine andere Charge verwenden oder die Werkstattleitung bitten, die Sperrung aufzuheben.
store-lot-of-another-hose = Schlauchcharge { $lot } ist bekannt als { LIST($known) }.
    .mend = Die Rolle prüfen. Ist die Charge richtig, den Grund wählen: Datumscode, anderer Hersteller oder falscher früherer Eintrag.
store-hose-with-part = { $hose }, Artikelnummer { $part }
store-lot-reason-not-known = „{ $value }“ ist kein Grund für die Charge.
    .mend = Einen dieser Gründe verwenden: { LIST($reasons) }.
store-lot-reason-date_code = Die Charge ist nur ein Datumscode
store-lot-reason-other_manufacturer = Anderer Hersteller mit gleicher Chargennummer
store-lot-reason-earlier_record_wrong = Der frühere Eintrag ist falsch

## Crimps and proof tests

store-crimp-not-valid = Durchmesser und Toleranzen ergeben kein gültiges Pressmaß.
    .mend = Einen Durchmesser von 1 bis 300 mm und Toleranzen von 0 bis 5 mm eingeben.
store-crimp-below-bore = Ein Pressmaß von { $diameter } ist nicht größer als der Innendurchmesser des Schlauchs, { $bore }. Das kann nicht stimmen.
    .mend = Wert und Einheit prüfen: Er wird in mm gelesen.
store-crimp-source-missing = Die Quelle des Pressmaßes fehlt.
    .mend = Die Quelle eingeben: Sie ist für jedes Pressmaß erforderlich.
store-crimp-shell-missing = Die Presshülse zum Pressmaß fehlt.
    .mend = Die Presshülse eingeben: Sie ist für jedes Pressmaß erforderlich.
store-crimp-not-found = Das Pressmaß { $crimp } ist nicht vorhanden.
    .mend = Die zuletzt erhaltene Kennung verwenden.
store-crimp-none = Für diesen Schlauch mit der Presshülse { $shell } gibt es kein Pressmaß.
    .mend = Die Werkstattleitung kann es unter „Werkstatt“ eintragen, nach der Tabelle des Armaturenherstellers.
store-crimp-twice = Zweimal gemessen: { LIST($ends) }. Welcher der beiden Werte gilt, ist nicht klar.
    .mend = Für jedes Ende ein Pressmaß eingeben.
store-shop-row-reason-missing = Der Grund für das Zurückziehen des Werts fehlt.
    .mend = Den Grund eingeben.
store-shop-row-not-found = Einen Werkstattwert { $id } gibt es nicht.
    .mend = Die Nummer in der Liste der Werkstattwerte prüfen.
store-shop-row-ended = Der Wert { $id } ist bereits ersetzt oder zurückgezogen.
    .mend = In der Liste der Werkstattwerte nachsehen.
store-value-end ={ $series ->
        [none] { $size }
       *[other] { $size } { $series }
    } { $connection }, { $form }, { $shape ->
        [elbow] Bogen
       *[straight] gerade
    }, { $material }: { $pressure } (Quelle: { $source })
store-value-hose ={ $standard } -{ $dash }, { $edition ->
        [none] ohne Ausgabe
       *[other] Ausgabe { $edition }
    }, { $part ->
        [none] jede Teilenummer
       *[other] Teilenummer { $part }
    }: { $pressure } (Quelle: { $source })
store-value-fluid ={ $standard }, { $part ->
        [none] jede Teilenummer
       *[other] Teilenummer { $part }
    }: freigegeben für dieses Medium: { $fluid }, bis { $limit } (Quelle: { $source })
store-value-with = { $value }, nur mit diesem Medium: { $fluid }
store-value-up-to = { $value }, bis { $limit }
store-proof-pressure-low = { $given } ist weniger als der geforderte Prüfdruck von { $called }.
    .mend = Mit diesem Druck neu prüfen oder die Prüfung als nicht bestanden eintragen.
store-proof-hold-short = { $given } s sind weniger als die geforderten { $called } s.
    .mend = Den Druck die volle Zeit halten oder die Prüfung als nicht bestanden eintragen.
store-proof-above-burst = { $given } liegt über dem Mindestberstdruck von { $burst } (begrenzt durch: { $part }). Der Wert kann nicht stimmen.
    .mend = Wert und Einheit prüfen. Eine Zahl ohne Einheit wird als bar gelesen.
store-proof-over-unconfirmed = { $given } sind mehr als { $most }, womit eine Druckprüfung die Teile höchstens belasten darf. So eingetragen wird die Schlauchleitung zurückgehalten, bis die Hersteller es schriftlich erlauben.
    .mend = Wert und Einheit prüfen. Wurde dieser Druck angelegt, ihn bestätigen.
store-proof-rating-unknown = Der zulässige Druck ist nicht bekannt: { LIST($parts) }. Ohne ihn kann keine Druckprüfung bestanden werden.
    .mend = Mit der Prüfung den Betriebsdruck des Herstellers und seine Quelle eingeben.
store-proof-rating-unverified = Der zulässige Druck ist ungeprüft: { LIST($parts) }. Auf ihm kann keine Druckprüfung bestanden werden.
    .mend = Mit der Prüfung den Betriebsdruck des Herstellers und seine Quelle eingeben.
store-proof-no-rating-applies = Für diese Schlauchleitung gilt kein Betriebsdruck. Keine Druckprüfung kann bestanden werden.
    .mend = Die Warnungen zur Schlauchleitung lesen. Schlauch und Armaturen verwenden, die für ihr Medium und ihre Temperatur zugelassen sind.
store-proof-rating-not-asked = Der zulässige Druck aller Teile ist bekannt.
    .mend = Diesen Wert löschen.
store-proof-rating-source = Die Quelle des Betriebsdrucks des Herstellers fehlt.
    .mend = Das Datenblatt oder den Brief eingeben, aus dem er stammt.
store-proof-rating-below-tag = Der Betriebsdruck des Herstellers, { $given }, liegt unter dem des Schilds, { $told }. Damit kann keine Druckprüfung bestanden sein.
    .mend = Wert und Einheit prüfen. Stimmt der Wert, das Schild sperren und die Schlauchleitung mit diesem Wert neu eintragen.
store-proof-gas = Eine Druckprüfung wird mit Flüssigkeit gemacht, nie mit Gas.
    .mend = Mit Flüssigkeit neu prüfen oder die Prüfung als nicht bestanden eintragen.
store-proof-why-held = Angelegt wurden { $given }. Mehr als { $most } belastet die Teile stärker als eine Druckprüfung: Die Schlauchleitung zurückhalten, bis die Hersteller es schriftlich erlauben.
store-proof-why-slip = Der eingetragene Druck von { $given } liegt über dem Mindestberstdruck von { $burst }. Er kann nicht stimmen, dieser Eintrag beweist nichts.
store-proof-why-lower = Keine vollständige Druckprüfung. Eine Prüfung mit weniger Druck verlangt: { $source }
store-proof-why-gas = Keine vollständige Druckprüfung: Es wurde mit Gas geprüft.
store-proof-why-unknown = Keine vollständige Druckprüfung: Der zulässige Druck der Schlauchleitung war nicht bekannt.
store-proof-why-short = Keine vollständige Druckprüfung: Druck oder Haltezeit waren geringer als gefordert.
store-proof-why-allowed = Keine vollständige Druckprüfung: Der Druck lag über der Grenze. Die Hersteller haben ihn schriftlich erlaubt.
store-proof-why-crimped = Keine gültige Druckprüfung: Am { $day } wurde nach dieser Prüfung eine Verpressung erfasst. Die Schlauchleitung erneut prüfen.
store-proof-after-failure = { LIST($numbers) }: Die letzte Druckprüfung wurde nicht bestanden.
    .mend = In der Notiz eintragen, was behoben wurde, dann die Prüfung als bestanden eintragen.
store-proof-not-held = Die Schlauchleitung ist nicht zurückgehalten: Keine Prüfung hat sie zu hoch belastet.
    .mend = Die Schildnummer prüfen.
store-proof-allowed-future = { $day } liegt in der Zukunft.
    .mend = Das Datum des Schreibens der Hersteller eingeben.
store-crimp-of-end = { $end } ({ $measured } mm)
store-blocked-withdrawn = Das Schild { $number } lässt sich nicht drucken: Es ist gesperrt („{ $reason }“).
    .mend = Die Schlauchleitung verschrotten oder die Werkstattleitung bitten, die Sperrung aufzuheben.
store-blocked-void = Schild { $number } kann nicht gedruckt werden: Der Eintrag ist ungültig („{ $reason }“).
    .mend = Die Schlauchleitung mit den richtigen Werten neu registrieren.
store-proof-withdrawn = Die Schlauchleitung ist gesperrt: { LIST($reasons) }. Eine bestandene Druckprüfung wird für sie nicht eingetragen.
    .mend = Zuerst die Werkstattleitung bitten, die Sperrung aufzuheben. Eine nicht bestandene Druckprüfung lässt sich eintragen.
store-void-reason-missing = Der Grund für die Ungültigkeit fehlt.
    .mend = Den Grund eingeben: Er bleibt im Verlauf.
store-void-already = Der Eintrag von Schild { $number } ist ungültig.
    .mend = Die Schlauchleitung mit den richtigen Werten neu registrieren.
store-void-not-used = Der Eintrag von Schild { $number } ist ungültig: Diese Schlauchleitung nicht einbauen.
    .mend = Die Schlauchleitung mit den richtigen Werten neu registrieren.
store-void-too-late = Der Eintrag von Schild { $number } kann nicht für ungültig erklärt werden: { $kind ->
        [scanned] Das Schild wurde am { $day } gescannt.
        [fitted] Die Schlauchleitung wurde am { $day } eingebaut.
        [proof_tested] Sie wurde am { $day } druckgeprüft und kann bescheinigt sein.
        [ordered] Sie wurde am { $day } nachbestellt.
       *[other] Seit { $day } ist mehr erfasst.
     }
    .mend = Den Eintrag berichtigen oder das Schild sperren.
store-void-handed-over = Der Eintrag von Schild { $number } kann nicht für ungültig erklärt werden: Auftrag { $reference } wurde übergeben.
    .mend = Den Eintrag berichtigen oder das Schild sperren.
store-not-correctable = Dieser Wert kann nicht berichtigt werden.
    .mend = Verwenden: { LIST($fields) }. Bei jedem anderen Fehler den Eintrag für ungültig erklären oder das Schild sperren.
store-correct-reason-missing = Der Grund der Berichtigung fehlt.
    .mend = Den Grund eingeben: Er bleibt im Verlauf.
store-nothing-corrected = Nichts weicht vom Eintrag von Schild { $number } ab.
    .mend = Den richtigen Wert eingeben.
store-blocked-crimp = Das Schild { $number } lässt sich nicht drucken: Das Pressmaß liegt außerhalb der Toleranz, { LIST($ends) }.
    .mend = Die Schlauchleitung neu fertigen und die Pressmaße neu eintragen oder die Schlauchleitung verschrotten.
store-blocked-proof = Das Schild { $number } lässt sich nicht drucken: Die Druckprüfung vom { $day } wurde nicht bestanden.
    .mend = Die Schlauchleitung neu fertigen und eine neue Druckprüfung eintragen oder die Schlauchleitung verschrotten.
store-blocked-proof-held = Das Schild { $number } lässt sich nicht drucken: Die Schlauchleitung ist zurückgehalten. { $why }
    .mend = Die schriftliche Erlaubnis der Hersteller eintragen oder die Schlauchleitung sperren.
store-blocked-proof-slip = Das Schild { $number } lässt sich nicht drucken: Der Druck der Druckprüfung vom { $day } liegt über dem Mindestberstdruck. Er kann nicht stimmen.
    .mend = Eine neue Druckprüfung eintragen oder die Schlauchleitung sperren.
store-blocked-untested = Das Schild { $number } lässt sich noch nicht drucken: Dieser Betrieb druckt kein Schild vor der bestandenen Druckprüfung.
    .mend = Die Laufkarte drucken, auf der die Schildnummer steht, und dann die Druckprüfung erfassen.
store-stop-none = Schild { $number }: Die Schlauchleitung ist weder gesperrt noch ungültig, und keine Prüfung ist durchgefallen. Das Schild „Nicht verwenden“ ist nur dafür da.
    .mend = Die Schlauchleitung zuerst mit dem Grund sperren.
store-stop-withdrawn = gesperrt, { $reason }
store-stop-withdrawn-short = gesperrt (Einzelheiten: Code scannen)
store-stop-void = Eintrag ungültig, { $reason }
store-stop-void-short = Eintrag ungültig (Einzelheiten: Code scannen)
store-stop-held = nach einer Druckprüfung zurückgehalten. { $why }
store-stop-held-short = zurückgehalten (Druckprüfung über der Grenze)
store-stop-proof = Druckprüfung vom { $day } nicht bestanden
store-stop-slip = der eingetragene Druck der Druckprüfung vom { $day } kann nicht stimmen
store-stop-crimp = Pressmaß außerhalb der Toleranz, { LIST($ends) }
store-fitted-untested = Das Schild { $number } lässt sich nicht als eingebaut erfassen: Dieser Betrieb gibt keine Schlauchleitung vor der bestandenen Druckprüfung heraus.
    .mend = Die Schlauchleitung nicht einbauen. Zuerst ihre Druckprüfung erfassen.
store-proof-gauge-missing = Zu diesem Kalibrierdatum fehlt das Manometer.
    .mend = Die Nummer des Manometers eingeben.
store-proof-gauge-expired = Die Kalibrierung des Manometers endete am { $day }: Damit kann keine Prüfung bestanden werden.
    .mend = Mit einem gültig kalibrierten Manometer prüfen oder das Datum korrigieren.
store-batch-empty = Es ist keine Schlauchleitung ausgewählt.
    .mend = Mindestens eine auswählen.
store-batch-too-large = { $count } Schlauchleitungen sind mehr als die { $most } einer Serie.
    .mend = In mehreren Serien erfassen.
store-batch-of = { LIST($numbers) }: { $why }
    .mend = Den Wert korrigieren oder diese Schlauchleitungen getrennt erfassen.
store-batch-held = { $given } liegt über einer Druckprüfung für { LIST($numbers) }: Von der Serie wird nichts erfasst.
    .mend = Wert und Einheit prüfen. Wurde dieser Druck an allen angelegt, ihn bestätigen: Sie werden zurückgehalten. Sonst eine wirklich so belastete Schlauchleitung im eigenen Eintrag erfassen.

## Print jobs and printers

store-printer-not-found = { $printer } ist kein Drucker in Gebrauch.
    .mend = Einen aus der Liste wählen. Die Werkstattleitung trägt Drucker unter „Werkstatt“ ein.
store-printer-name-used = Ein Drucker hat schon den Namen { $name }.
    .mend = Einen anderen Namen wählen oder jenen Drucker entfernen.
store-print-job-not-found = Der Druckauftrag { $job } ist nicht vorhanden.
    .mend = Unter „Drucke“ nachsehen.
store-print-job-moved = Der Druckauftrag { $job } hat jetzt den Status „{ $state }“.
    .mend = Zuerst die Seite neu laden.
store-print-state-waiting = wartet
store-print-state-sending = wird gesendet
store-print-state-printing = wird gedruckt
store-print-state-done = gedruckt
store-print-state-failed = fehlgeschlagen
store-print-state-unknown = Druck unbestätigt
store-print-state-dropped = abgebrochen
store-print-interrupted = Das Programm wurde beim Senden des Auftrags angehalten. Er wurde vielleicht gedruckt.
    .mend = Prüfen, ob die Schilder gedruckt wurden.
store-print-restored = Der Auftrag stammt aus einer wiederhergestellten Sicherung. Er wurde vielleicht schon gedruckt.
    .mend = Prüfen, ob die Schilder gedruckt wurden, bevor Sie ihn neu senden.
store-print-retired = Der Drucker wurde entfernt, bevor der Auftrag gesendet wurde.
    .mend = Die Schilder an einen anderen Drucker senden.
store-print-not-taken = Das Programm wurde beim Senden des Auftrags angehalten, und der Drucker führt ihn nicht: Er wurde nicht gedruckt.
    .mend = Erneut senden.
store-print-forgotten = Der Drucker führt diesen Auftrag nicht mehr. Er wurde vielleicht ausgeschaltet.
    .mend = Prüfen, ob die Schilder gedruckt wurden.
store-print-crashed = Das Programm ist beim Senden des Auftrags gescheitert ({ $error }).
    .mend = Prüfen, ob die Schilder gedruckt wurden, und dem Support melden.
store-print-unconfirmed = Es wurde vielleicht gedruckt.
store-print-status = Druckerstatus: { LIST($said) }.

## People and devices

store-code-wrong = Das ist nicht der aktuelle Code.
    .mend = Den Code auf der Konsole prüfen.
store-last-manager = Das ist die letzte Person mit der Rolle Werkstattleitung; sie lässt sich nicht ändern.
    .mend = Zuerst eine weitere Werkstattleitung anlegen.
store-person-not-found = Die Person { $person } ist nicht vorhanden.
    .mend = Die Liste der Personen prüfen.
store-token-not-found = Das Gerät { $token } ist nicht vorhanden.
    .mend = Die Liste der Geräte prüfen.
store-recipe-not-found = Das Rezept { $name } ist nicht vorhanden.
    .mend = Eines aus der Liste wählen.
store-recipe-used = Unter { $name } ist eine andere Spezifikation gespeichert.
    .mend = Einen anderen Namen wählen oder „Gespeicherte Spezifikation ersetzen“ ankreuzen.
store-recipe-of-manager = Die unter { $name } gespeicherte Spezifikation stammt von der Werkstattleitung.
    .mend = Einen anderen Namen wählen oder die Werkstattleitung bitten, sie zu ersetzen.

## The database and its backups

store-demo-reachable = Die Vorführung wäre unter { $base } für andere erreichbar, mit einem Passwort, das jeder kennt.
    .mend = TAGGER_DEMO weglassen oder TAGGER_HOST und TAGGER_BASE_URL auf 127.0.0.1 setzen.
store-demo-only-manager = Die Anmeldung der Vorführung ist der einzige Manager, und ihr Passwort kennt jeder.
    .mend = Noch einmal mit TAGGER_DEMO=1 auf diesem Rechner starten, einen eigenen Manager anlegen und dann ohne starten; oder mit einer neuen Datenbank beginnen.
store-database-cannot-open = Die Datenbank lässt sich nicht öffnen: { $why }
    .mend = TAGGER_DATABASE_URL prüfen und ob Ordner oder Server vorhanden sind.
store-database-full = Die Festplatte des Servers ist voll: Es kann nichts gespeichert werden.
    .mend = Der Person Bescheid geben, die den Server betreut. Sobald Platz ist, vor dem erneuten Eingeben prüfen, was gespeichert wurde.
store-database-read-only = Die Datenbank ist schreibgeschützt: Es kann nichts gespeichert werden.
    .mend = Der Person Bescheid geben, die den Server betreut. Sobald wieder geschrieben werden kann, vor dem erneuten Eingeben prüfen, was gespeichert wurde.
store-database-busy = Der Server ist ausgelastet.
    .mend = Einige Sekunden warten. Vor dem erneuten Eingeben prüfen, was gespeichert wurde.
store-database-away = Die Datenbank ist nicht verfügbar.
    .mend = In einer Minute erneut versuchen und vor dem erneuten Eingeben prüfen, was gespeichert wurde. Bleibt sie nicht verfügbar, der Person Bescheid geben, die den Server betreut.
store-database-newer = Die Datenbank wurde von einer neueren Version geschrieben (Schritt { $step }).
    .mend = Jene Version installieren oder eine Sicherung in eine neue Datenbank einspielen.
store-database-moved = Die Datensätze dieser Datenbank wurden in eine andere übertragen.
    .mend = TAGGER_DATABASE_URL auf die neue Datenbank setzen. Für den Rückweg eine Sicherung der neuen in eine frische Datenbank einspielen.
store-database-address = { $address } ist keine Adresse einer Datenbank.
    .mend = Eine Adresse wie sqlite:////srv/data.sqlite3 oder postgresql://name@host/data verwenden.
store-database-kind = Die Datenbank ist weder SQLite noch PostgreSQL.
    .mend = Eine von beiden verwenden.
store-database-in-memory = Die Datenbank ginge beim Beenden des Programms verloren (Datenbank im Arbeitsspeicher).
    .mend = Eine Datei angeben.
store-backup-exists = { $path } gibt es schon und wird nicht überschrieben.
    .mend = Einen neuen Dateinamen wählen oder die vorhandene Datei verschieben.
store-backup-no-folder = Den Ordner { $path } gibt es nicht.
    .mend = Den Ordner anlegen oder den Pfad prüfen.
store-backup-not-verified = Die Sicherung { $path } hat die Überprüfung nicht bestanden.
    .mend = Den Datenträger prüfen.
store-backup-own-file = { $path } ist eine Datei der Datenbank selbst.
    .mend = Eine andere Datei für die Sicherung wählen.
store-restore-no-file = { $path } gibt es nicht.
    .mend = Den Pfad prüfen.
store-restore-not-a-backup = { $path } ist keine vollständige Sicherung.
    .mend = Eine neue Sicherung anlegen.
store-restore-changed = { $path } wurde nach dem Sichern verändert: Die Prüfsumme stimmt nicht. Nichts wurde wiederhergestellt.
    .mend = Eine andere Sicherung verwenden.
store-restore-unsealed = { $path } trägt keine Prüfsumme: Es lässt sich nicht zeigen, dass die Datei unverändert ist.
    .mend = Eine neuere Sicherung verwenden. Für die Sicherung einer älteren Version mit --unsealed wiederherstellen und die Datensätze prüfen.
store-restore-incomplete = Die wiederhergestellte Datenbank ist unvollständig.
    .mend = Erneut versuchen.
store-restore-not-empty = Eine Sicherung wird nur in eine leere Datenbank eingespielt. Diese enthält { LIST($tables) }.
    .mend = Die Adresse einer neuen Datenbank in TAGGER_DATABASE_URL angeben.
store-audit-link-gone = Glied { $link } der Kette fehlt.
store-audit-link-changed = Glied { $link } der Kette wurde verändert, entfernt oder verschoben (Tabelle { $table }, Zeile { $key }).
store-audit-row-gone = Zeile { $key } der Tabelle { $table } wurde gelöscht (Glied { $link }).
store-audit-row-changed = Zeile { $key } der Tabelle { $table } ist nicht so, wie sie aufgezeichnet wurde (Glied { $link }).
store-audit-salt-gone = Zeile { $key } der Tabelle { $table } lässt sich nicht mehr prüfen: Das Salz von Glied { $link } wurde entfernt, und kein neueres Glied tritt an seine Stelle.
store-audit-row-unlinked = Zeile { $key } der Tabelle { $table } hat dieses Programm nicht geschrieben: Kein Glied weist sie nach.
store-audit-row-twice = Tabelle { $table } hat mehr Glieder als Zeilen.
store-audit-text-gone = „{ $text }“ steht in Tabelle assembly und fehlt in Tabelle recorded_text oder ist dort verändert: Eine Suche oder eine Sperrung kann die Schlauchleitung übersehen.
store-audit-head-gone = { $head } steht nicht in der Kette: Was zuletzt aufgezeichnet wurde, ist entfernt oder verändert worden.
store-audit-no-head = Die Sicherung { $path } stammt von einer älteren Version und trägt keine Kette.
    .mend = Eine neuere Sicherung verwenden.
store-move-itself = Die Datensätze würden in die Datenbank übertragen, in der sie schon stehen.
    .mend = Die Adresse einer anderen, leeren Datenbank angeben.
store-move-not-empty = Datensätze werden nur in eine leere Datenbank übertragen. Diese enthält { LIST($tables) }.
    .mend = Die Adresse einer neuen Datenbank angeben.
store-move-differs = Tabelle { $table } weicht nach der Übertragung ab. In der neuen Datenbank wurde nichts behalten.
    .mend = Datenträger und Arbeitsspeicher beider Rechner prüfen, dann erneut übertragen.
store-move-in-use = Ein anderes Programm hat die Datenbank geöffnet.
    .mend = Den Server und jeden anderen Befehl beenden, dann erneut übertragen.
store-database-older = Eine ältere Version kann nicht behalten, was in Tabelle { $table } steht: Gesperrte Schlauchleitungen würden wieder benutzt.
    .mend = Bei dieser Version bleiben oder eine Sicherung einspielen, die die ältere Version geschrieben hat.
store-own-hose-not-kept = Kein Schlauch der Werkstatt hat die Teilenummer { $part } in Dash { $dash }.
    .mend = Teilenummer und Dash in der Liste der Schläuche prüfen.
store-value-dimension =
    { $which ->
        [hose_bend] Mindestbiegeradius
        *[other] Außendurchmesser
    }, { $part ->
        [none] { $standard }-{ $dash }
        *[other] { $standard }-{ $dash }, Teilenummer { $part }
    }: { $length } ({ $source })
