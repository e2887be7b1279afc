# Fittings, crimp cards and hoses of the shop; the cut length


## Fittings of the shop

stock-not-of-a-row = Diese Angabe gehört zu einer Schlauchleitung, nicht in die Liste der Armaturen.
    .mend = Hier löschen.
stock-cut-off-incomplete = Ein Abzugsmaß besteht aus der Länge und der Angabe, wo es endet.
    .mend = Beides eingeben. Es endet bei: { LIST($kinds, style: "or") }.
stock-source-missing = Die Quelle dieser Maße fehlt.
    .mend = Das Dokument des Herstellers eingeben.
stock-rating-incomplete = Ein Nenndruck braucht Wert und Quelle.
    .mend = Beides eingeben.
stock-cut-off-inside = Ein Abzugsmaß bis zum Rand der Presshülse ist größer als die Einstecktiefe, { $insertion }.
    .mend = Beide Maße prüfen und wo das Abzugsmaß endet.
stock-reach-too-small = Artikelnummer { $number } reicht vom Sitz bis zum Rand der Presshülse { $reach }; ein verpresstes Ende dieses Schlauchs braucht mindestens { $least } ({ $source }).
    .mend = Abzugsmaß und Einstecktiefe in der Liste der Armaturen und ihre Einheit prüfen: Sie werden in mm gelesen.
stock-cut-off-too-small = Artikelnummer { $number } hat vom Sitz bis zum Anschlag des Schlauchs { $cut_off }; kein Ende hat weniger als { $least } ({ $source }).
    .mend = Das Abzugsmaß in der Liste der Armaturen und seine Einheit prüfen: Es wird in mm gelesen.
stock-not-kept = Die Artikelnummer { $number } steht nicht in der Liste der Armaturen.
    .mend = Nummer prüfen oder die Armatur in die Liste aufnehmen.
stock-not-kept-nearest = Die Artikelnummer { $number } steht nicht in der Liste der Armaturen.
    .mend = Eine der ähnlichsten verwenden: { LIST($nearest, style: "or") }. Oder die Armatur in die Liste aufnehmen.
stock-another-end = Artikelnummer { $number } ist eine andere Armatur: { $kept }. Die Spezifikation hat: { $given }.
    .mend = Die vorliegende Armatur prüfen, dann Artikelnummer oder Ende korrigieren.
stock-twice = Artikelnummer { $number } kommt zweimal vor.
    .mend = Eine der Zeilen löschen.

## Cut length

stock-cut-arithmetic = { $overall } mm − { $a } − { $b } = { $cut } mm
stock-cut-term-butt = { $cutoff } mm ({ $end })
stock-cut-term-mouth = ({ $cutoff } mm − { $insertion } mm Einstecktiefe) ({ $end })
stock-cut-no-fitting = Das Abzugsmaß { SAY($end, case: "gen") } ist nicht bekannt: Geben Sie die Artikelnummer der Armatur ein.
stock-cut-no-cut-off = Das Abzugsmaß { SAY($end, case: "gen") } ist nicht bekannt: { $number } hat keines in der Liste der Armaturen. Tragen Sie dort den Wert des Herstellers ein.
stock-cut-no-insertion = Das Abzugsmaß { SAY($end, case: "gen") } endet am Rand der Presshülse, und die Einstecktiefe von { $number } ist nicht bekannt. Tragen Sie den Wert des Herstellers in die Liste der Armaturen ein.
stock-cut-thread-end = Die Gesamtlänge reicht bis zum Gewindeende { SAY($end, case: "gen") }, aber das Abzugsmaß von { $number } beginnt am Dichtsitz. Geben Sie die Länge bis zur Dichtfläche ein.
stock-cut-length = Zuschnittlänge: { $length }
stock-cut-unknown = Zuschnittlänge: nicht bekannt. { $why }
stock-insertion-mark = Einsteckmarke { SAY($end, case: "gen") }: { $depth } ab Schlauchende
stock-cut-title = Zuschnittlänge
stock-cut-hint = Geben Sie die Artikelnummern beider Armaturen ein.
## Crimp card

stock-card-length = Eine Länge im Pressblatt liegt zwischen 0 und { $most } mm.
    .mend = Wert und Einheit prüfen.
stock-card-not-approved = { $end }: Schlauch { $hose } und Armaturenserie { $series } haben kein eigenes Pressblatt. Sie sind nicht zusammen freigegeben. Teile mit Pressblatt verwenden oder das Pressblatt des Herstellers für dieses Paar eintragen.
stock-card-no-fitting = { $end }: Geben Sie die Artikelnummer der Armatur ein, um ihr Pressblatt zu sehen.
stock-card-no-series = { $end }: { $number } hat in der Liste keine Armaturenserie, daher ist das Pressblatt nicht bekannt. Tragen Sie dort die Serie ein.
stock-card-no-part = { $end }: Geben Sie die Artikelnummer des Schlauchs ein, um das Pressblatt zu sehen.
stock-insertion-differs = { $end }: Die Einstecktiefe von { $number } ist { $fitting } in der Liste der Armaturen, aber { $card } im Pressblatt. Vor dem Zuschneiden beide mit den Herstellerdaten abgleichen.
stock-card-crimp = { $end }: Pressmaß { $diameter } mm +{ $plus } −{ $minus } mm ({ $series }; Quelle: { $source })
stock-card-die = Pressbacke: { $die }
stock-card-skive-outside = Außen schälen: { $length } mm
stock-card-skive-inside = Innen schälen: { $length } mm
stock-card-insertion = Einstecktiefe: { $length } mm
stock-card-setting = Einstellung der Presse: { $setting }
stock-card-title = Pressblatt
stock-rating-below = Armatur { $number } ist nur für { $rating } zugelassen (Quelle: { $source }), weniger als der Betriebsdruck dieser Schlauchleitung, { $pressure }.
    .mend = Den zulässigen Druck der Armatur für dieses Ende eingeben, damit der niedrigere Wert gilt.
## Traveller: the sheet that goes with the parts through the workshop

stock-traveller-title = Laufkarte
stock-traveller-count = Anzahl: { $count }
stock-traveller-order = Auftrag
stock-traveller-due = Liefertermin
stock-traveller-hose = Schlauch
stock-traveller-part = Artikelnummer des Schlauchs, Schlauchcharge
stock-traveller-end = Ende { $end }
stock-traveller-overall = Gesamtlänge
stock-traveller-arithmetic = Rechnung
stock-traveller-marks = Einsteckmarken
stock-traveller-clocking = Verdrehwinkel
stock-traveller-proof = Druckprüfung
stock-traveller-proof-value = { $pressure }, mindestens { $hold } s halten, mit Flüssigkeit
stock-traveller-proof-unknown = nicht bekannt: Wert des Schlauchherstellers verwenden
stock-traveller-clean = Innen nach dem Zuschneiden und nach dem Verpressen reinigen. Beide Enden bis zur Montage verschließen.
stock-traveller-tag = Schild
stock-traveller-cut = Schnitt
stock-traveller-crimped = Pressmaß { $end } (mm)
stock-traveller-proved = Prüfung bestanden
stock-traveller-cleaned = Gereinigt, verschlossen
stock-card-standard-unknown = { $name } ist keine bekannte Schlauchnorm.
    .mend = Eine Norm aus den Tabellen eingeben, zum Beispiel SAE 100R2.
stock-card-not-a-dash = { $value } ist keine Dash-Größe.
    .mend = Dash-Größe eingeben, zum Beispiel 12 (3/4 in).
stock-card-no-dash = Die Dash-Größe fehlt.
    .mend = Dash-Größe eingeben, zum Beispiel 12 (3/4 in).
