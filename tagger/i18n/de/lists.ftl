# What is said of a list of specs, from CSV or a spreadsheet.

lists-not-csv = Das ist keine CSV-Datei.
    .mend = Speichern Sie sie in der Tabellenkalkulation als .csv oder .xlsx.
lists-not-a-spreadsheet = Das ist keine Tabellendatei.
    .mend = Speichern Sie sie als .xlsx oder .csv.
lists-empty = Die Datei ist leer.
    .mend = Fügen Sie eine Kopfzeile und je Spezifikation eine Zeile ein.
lists-no-rows = Die Datei hat eine Kopfzeile, aber keine Daten.
    .mend = Fügen Sie je Spezifikation eine Zeile ein.
lists-outside-header = Diese Zelle liegt außerhalb der Kopfzeile.
    .mend = Geben Sie der Spalte eine Überschrift oder leeren Sie die Zelle.
lists-unknown-column = Diese Spalte ist nicht bekannt.
    .mend = Es gibt die Spalten: { LIST($columns) }.
lists-cut-length = Die Spalte „{ $heading }“ enthält die Zuschnittlänge des Schlauchs, nicht die Gesamtlänge der Schlauchleitung.
    .mend = Die Gesamtlänge in einer eigenen Spalte eingeben: Zuschnittlänge plus Abzugsmaß beider Armaturen.
lists-unit-not-plain = Die Überschrift „{ $heading }“ nennt nicht genau eine Einheit, die hier gelesen wird.
    .mend = Eine Einheit in die Überschrift schreiben: mm, cm, m, in oder ft für eine Länge, bar, psi, MPa oder kPa für einen Druck, °C oder °F für eine Temperatur.
lists-column-twice = Diese Spalte kommt zweimal vor.
    .mend = Löschen Sie eine davon.
lists-became-a-date = Die Tabellenkalkulation hat daraus ein Datum gemacht (aus einer Größe wie 3/4).
    .mend = Formatieren Sie die Spalte als Text und geben Sie den Wert noch einmal ein.
lists-quantity = Das ist keine gültige Anzahl.
    .mend = Geben Sie 1 bis { $maximum } ein.
lists-formula = Diese Zelle enthält eine Formel ohne gespeicherten Wert.
    .mend = Öffnen Sie die Datei in einer Tabellenkalkulation, speichern Sie sie und versuchen Sie es noch einmal.
lists-too-large = Diese Liste ist zu groß: mehr als { $cells } Zellen oder entpackt mehr als { $megabytes } MB.
    .mend = Löschen Sie leere Zeilen und Spalten, oder teilen Sie die Liste.
