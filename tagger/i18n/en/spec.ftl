# What is said of a spec that does not describe an assembly, of values with units, and of files that cannot be read.
# Each reads alone and after a caption: "Length: This value is missing."

## Fields of an input

spec-missing = This value is missing.
    .mend = Enter it.
spec-unknown-field = This is not a known field.
    .mend = Remove it or check the spelling.
spec-not-one-of = This is not a known value.
    .mend = Use one of: { LIST($choices, style: "or") }.
spec-bar = { $number } bar
spec-not-more-than = This is not more than { $limit }.
    .mend = Enter more than { $limit }.
spec-below-minimum = This is below the minimum of { $minimum }.
    .mend = Enter { $minimum } or more.
spec-above-maximum = This is above the maximum of { $maximum }.
    .mend = Enter { $maximum } or less.
spec-too-long = This is longer than { $maximum } characters.
    .mend = Shorten it to { $maximum } characters.
spec-cleanliness-code = This is not a cleanliness code of ISO 4406.
    .mend = Enter three scale numbers, none above the one before and none above 28, for example 18/16/13.
spec-empty = This is empty.
    .mend = Enter a value.
spec-not-text = This is not text.
    .mend = Put it in quotes.
spec-not-a-whole-number = This is not a whole number.
    .mend = Enter a whole number, for example 12.
spec-not-a-number = This is not a number.
    .mend = Enter a number, for example 1.5.
spec-not-yes-or-no = This is neither true nor false.
    .mend = Enter true or false.
spec-not-a-list = This is not a list.
    .mend = Use a JSON list, for example ["one", "two"].
spec-not-an-object = This is not a JSON object.
    .mend = Use a JSON object, for example { $example }.
spec-not-a-date = This is not a date.
    .mend = Enter the date as YYYY-MM-DD, for example 2027-03-31.
spec-not-the-pattern = This does not have the required form.
    .mend = It must match the pattern { $pattern }.

## An end, the whole assembly, its tightening

spec-enter-size = { $sizing ->
    [pipe] Enter the nominal pipe size ("{ $key }"), for example 3/4.
    [tube] Enter the outside diameter of the tube in mm ("{ $key }"), for example 12.
    [thread] Enter the thread ("{ $key }"), for example M22x1.5.
   *[dash] Enter the dash size ("{ $key }"), for example 12.
 }
spec-dash-and-size = Only one of dash size and size can be entered.
    .mend = { $enter }
spec-sized-by-dash = This connection has dash sizes: { $connection }.
    .mend = { $enter }
spec-not-sized-by-dash = This connection has no dash sizes: { $connection }.
    .mend = { $enter }
spec-size-of-another-series = This size names another series than the end: { $connection }, series { $series }.
    .mend = Correct the size, the connection or the series. The series has other threads and another pressure.
spec-form = This form does not exist for the connection { $connection }.
    .mend = Use one of: { LIST($forms, style: "or") }.
spec-description = A description is only for an end of another connection ("other").
    .mend = Clear it.
spec-description-missing = The connection is not described.
    .mend = Enter what it is, thread included, in at most 24 plain characters ("description"), for example Valve block M20x1.5.
spec-description-only = An end of another connection has no size.
    .mend = Clear it: the description says it all.
spec-drop-of-straight = Drop does not apply to a straight end.
    .mend = Clear it, or choose an elbow.
spec-clocking-missing = Both ends are elbows, and the clocking angle is missing.
    .mend = Hold the assembly with end A nearest you and elbow A pointing down, and look along the hose towards end B. Enter the counter-clockwise angle from elbow A to elbow B, 0 to 359°.
spec-clocking-without-elbows = A clocking angle only applies when both ends are elbows.
    .mend = Clear it.
spec-flats-incomplete = A count of flats needs a minimum, a maximum and a basis.
    .mend = Enter all three.
spec-torque-without-maximum = There is a minimum torque but no maximum.
    .mend = Enter the maximum torque.

## Values with a unit

spec-enter-length = Enter a length, for example 1250, "1250 mm" or "49 1/4 in".
spec-enter-pressure = Enter a pressure, for example 207, "207 bar" or "3000 psi".
spec-enter-torque = Enter a torque, for example 102, "102 Nm" or "75 lbf·ft".
spec-enter-temperature = Enter a temperature, for example 100, "100 C" or "212 F".
spec-unit-no-number = This is not a number.
    .mend = { $enter }
spec-unit-not-finite = This is not a finite number.
    .mend = { $enter }
spec-unit-unreadable = This is not a number with a unit.
    .mend = { $enter }
spec-unit-over-zero = This divides by zero.
    .mend = { $enter }
spec-unit-bare-fraction = The fraction { $fraction } has no unit.
    .mend = Enter the unit, for example "49 1/4 in".
spec-unit-comma = This has an ambiguous comma (thousands or decimal).
    .mend = Write 1250 or 1.25.
spec-unit-unknown = Unknown unit: { $unit }.
    .mend = { $enter }

## Text from a file

spec-not-utf8 = This is not UTF-8 text. It may have been saved as Latin-1 or Windows-1252.
    .mend = Save the file as UTF-8.
spec-encoding-damaged = This begins as { $encoding } text but is corrupted.
    .mend = Save the file as UTF-8.
spec-not-json = This is not valid JSON at line { $line }, column { $column }.
    .mend = Check the quotes, commas and brackets at that position.
spec-json-unreadable = This is not valid JSON.
    .mend = Check the quotes, commas and brackets.
spec-too-deep = This has too many nested levels.
    .mend = Send only the fields of the spec.
spec-number-too-long = This contains a number with too many digits.
    .mend = Enter a realistic value.
spec-half-character = This contains half of a character, which cannot be stored.
    .mend = Enter the text again.
spec-twice = This appears twice.
    .mend = Delete one.

## Files

spec-file-missing = There is no such file.
    .mend = Check the file name.
spec-file-folder = This is a folder, not a file.
    .mend = Enter the name of a file.
spec-file-denied = Access is denied.
    .mend = Check the permissions of the file and of its folder.
spec-file-disk-full = The disk is full.
    .mend = Free some disk space.
spec-file-unusable = The file cannot be used ({ $reason }).
    .mend = Check the path and the disk.

## Settings

spec-setting-address = This is not the address of a host.
    .mend = Use one such as { $example }.
spec-setting-days = Fewer than { $least } days are not accepted: a slip would erase whom to call.
    .mend = Enter { $least } or more, or 0 to keep it for ever.
spec-setting-language = This language is not available.
    .mend = Use one of: { LIST($languages, style: "or") }.
