# Measuring a thread by a photo beside the scale card: the card, the page, the readings.

## What to do, on the card's sheet and on the page

measure-title = Measure a thread by photo
measure-step-print = Print the card at 100 % (actual size) on matt paper and cut it out. Do not laminate it: a shiny surface hides the codes.
measure-step-check = Measure the check line with a steel rule or a caliper, and enter the value on the page.
measure-step-lay = Release the pressure before you open a joint. Clean the thread. Lay the end on a flat, plain surface of a different brightness: white paper for bare steel.
measure-step-beside = Lay the card flat. Lay the thread along the lower edge of the card, 10 to 15 mm below it. Do not cover a code.
measure-step-photo = Hold the phone level, about 300 mm above. Card and end fill the photo. No flash, no zoom.
measure-limits = What a photo cannot tell
measure-limit-flank = Flanks of 55° or 60°: threads of both stay possible.
measure-limit-inside = Inside threads: nuts, swivels, ports.
measure-limit-worn = How much a thread is worn: a worn or damaged thread measures smaller, a dirty or painted one larger.
measure-limit-seat = The seat, and whether the thread is tapered.
measure-limit-pressure = A working pressure.
measure-defer = Never choose a hose assembly by a photo alone: the fitting manufacturer's data come first.

## The card

measure-card-title = Scale card
measure-card-check = Check line: { $length }
measure-card-lay = Thread here, 10 to 15 mm below this edge
measure-card-cut = Cut here

## The page

measure-photo-title = Photo of the end beside the scale card
measure-print-a4 = Print the card (A4)
measure-print-letter = Print the card (Letter)
measure-field-photo = Photo
measure-field-check = Check line, as measured
measure-check-hint = Example: 98.5 mm. It is drawn { $length } long. Without this value the reading is less certain.
measure-read-photo = Read the photo
measure-reading = Reading the photo …
measure-another = Take another photo
measure-by-hand = Enter measured values instead

## The lines

measure-lines-title = Put the lines on the thread
measure-lines-how = Move lines 1 and 2 onto the crests at both sides of the thread, and lines 3 and 4 onto two crests. Count the pitches from line 3 to line 4.
measure-lines-marks = A short pink mark stands at each pitch: each must stand on a crest, or the count is wrong.
measure-lines-keys = Arrow keys move a line by 0.1 mm, Page Up and Page Down by 1 mm.
measure-lines-picture = The end below the card, seen from above. The grid is 10 mm wide.
measure-magnifier = Magnifier
measure-field-edge_1 = Line 1: one side of the thread
measure-field-edge_2 = Line 2: the other side
measure-field-crest_1 = Line 3: first crest
measure-field-crest_2 = Line 4: last crest
measure-field-threads = Pitches from line 3 to line 4
measure-field-tilt = Turn all lines (degrees)
measure-field-rest = Width of the part that touches the table, if it is not the thread
measure-rest-hint = Example: 32 mm across the flats of the hex. Empty: the thread itself touches the table.
measure-field-distance = Distance from the phone to the table, if you know it
measure-distance-hint = Example: 300 mm. Worked out from the photo: { $distance }.
measure-find = Find edges and crests
measure-finding = Looking for edges and crests …
measure-found = Found by the program. Check each line with the magnifier before you use the values.
measure-field-confirmed = I have checked all lines in the picture
measure-read-off = Read off
measure-save-nothing = The photo is not kept.

## The readings

measure-result-title = Readings
measure-diameter = Outside diameter of the thread: { $value }, ± { $band }
measure-pitch = Pitch: { $value }, ± { $band } mm
measure-tpi = That is { $tpi } threads per inch.
measure-corrected = Corrected for height: the axis of the thread is { $height } above the table, the phone was { $distance } above it.
measure-distance-unsure = Without the focal length in the photo the distance is uncertain. Enter the distance, or take the photo from farther away.
measure-not-checked = The check line was not measured: the print may be larger or smaller than drawn.
measure-confirm-first = Check the lines in the picture first, and confirm it below.
measure-identify = Identify with these values
measure-not-usable = These lines do not tell threads apart: the diameter is uncertain by { $band }.
    .mend = Enter the distance from the phone to the table, take the photo from straight above, or use a caliper.

## What is wrong, and what to do

measure-field-lines = Lines
measure-field-edges = Lines 1 and 2
measure-field-crests = Lines 3 and 4
measure-not-a-number = { $value } is not a number.
    .mend = Enter a number such as 12.5.
measure-lines-missing = A line has no place.
    .mend = Place all four lines, then read off.
measure-threads-missing = The pitches between lines 3 and 4 are not counted.
    .mend = Count them in the picture and enter the number.
measure-no-file = No photo was chosen.
    .mend = Choose a photo.
measure-check-line = The check line cannot measure { $value }: only { $least } to { $most } can be corrected.
    .mend = Print the card at 100 % (actual size), without fitting it to the page, and measure again.
measure-no-card = There is no scale card in the photo, or it cannot be read.
    .mend = Lay the printed card beside the end, all four codes in the photo, in even light and without glare. Choose a photo as the phone took it, not a small copy.
measure-other-code = The code in the photo is not one of the scale card.
    .mend = Lay the printed scale card beside the end.
measure-few-symbols = Only { $found } of the 4 codes on the card can be read; { $least } are needed.
    .mend = Uncover the codes, avoid glare and shadows on them, and print a damaged card again.
measure-two-cards = There is more than one scale card in the photo.
    .mend = Take the photo with one card.
measure-mirrored = The photo is mirrored.
    .mend = Switch off mirroring, or use the camera on the back of the phone.
measure-not-flat = The card is not flat, or the photo is blurred.
    .mend = Press the card flat, hold the phone still, and take the photo again.
measure-too-far = The photo is too coarse: { $found } pixels for a millimetre; at least { $least } are needed.
    .mend = Take the photo from nearer, so that card and end fill it, and choose it as the phone took it.
measure-slanted = The photo is taken at a slant of { $degrees }°; at most { $most }° can be corrected.
    .mend = Hold the phone level, straight above card and end.
measure-edges-wrong = Lines 1 and 2 are less than 3 mm or more than 90 mm apart.
    .mend = Put them on both sides of the thread.
measure-crests-wrong = Lines 3 and 4 with this number of pitches give no pitch of a thread.
    .mend = Put both lines onto crests and count the pitches between them.
measure-rest-wrong = The part that touches the table cannot be as wide as this.
    .mend = Measure the part on which the end lies: from 3 to 120 mm, and at least the thread itself.
measure-distance-wrong = This distance does not go with the photo, which was taken from about { $expected }.
    .mend = Measure from the phone to the table, or leave the field empty.
measure-not-found = No edges are seen near lines 1 and 2.
    .mend = Move the lines nearer to the edges of the thread, or place all lines by hand.
measure-no-crests = No evenly spaced crests are seen between lines 3 and 4.
    .mend = Put lines 3 and 4 at the two ends of the thread, or place all lines by hand.
