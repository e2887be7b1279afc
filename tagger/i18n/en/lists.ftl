# What is said of a list of specs, from CSV or a spreadsheet.

lists-not-csv = This is not a CSV file.
    .mend = In the spreadsheet, save it as .csv or .xlsx.
lists-not-a-spreadsheet = This is not a spreadsheet.
    .mend = Save it as .xlsx or .csv.
lists-empty = The file is empty.
    .mend = Add a header row and one row per spec.
lists-no-rows = The file has a header row but no data.
    .mend = Add one row per spec.
lists-outside-header = This cell is outside the header row.
    .mend = Add a column header or clear the cell.
lists-unknown-column = This is not a known column.
    .mend = Columns are: { LIST($columns) }.
lists-cut-length = The column “{ $heading }” holds the length the hose is cut to, not the overall length of the assembly.
    .mend = Enter the overall length in a column of its own: the cut length plus the cut-offs of both fittings.
lists-unit-not-plain = The heading “{ $heading }” does not name one unit that is read here.
    .mend = Write one unit in the heading: mm, cm, m, in or ft for a length, bar, psi, MPa or kPa for a pressure, °C or °F for a temperature.
lists-column-twice = This column appears twice.
    .mend = Delete one.
lists-became-a-date = The spreadsheet turned this into a date (a size such as 3/4).
    .mend = Format the column as text and enter the value again.
lists-quantity = This is not a valid quantity.
    .mend = Enter 1 to { $maximum }.
lists-formula = This cell contains a formula with no saved value.
    .mend = Open the file in a spreadsheet program, save it and try again.
lists-too-large = This list is too large: more than { $cells } cells, or more than { $megabytes } MB when unpacked.
    .mend = Delete empty rows and columns, or split the list.
