# Fittings, crimp cards and hoses of the shop; the cut length


## Fittings of the shop

stock-not-of-a-row = This belongs to an assembly, not to the list of fittings.
    .mend = Delete it here.
stock-cut-off-incomplete = A cut-off needs its length and where it ends.
    .mend = Enter both. It ends at one of: { LIST($kinds, style: "or") }.
stock-source-missing = The source of these dimensions is missing.
    .mend = Enter the manufacturer's document.
stock-rating-incomplete = A rating needs its value and its source.
    .mend = Enter both.
stock-cut-off-inside = A cut-off to the shell's mouth is longer than the insertion depth, { $insertion }.
    .mend = Check both dimensions and where the cut-off ends.
stock-reach-too-small = Stock number { $number } reaches { $reach } from its seat to the mouth of its shell; a crimped end of this hose takes at least { $least } ({ $source }).
    .mend = Check its cut-off and insertion depth in the list of fittings and their unit: they are read as mm.
stock-cut-off-too-small = Stock number { $number } has { $cut_off } from its seat to where the hose butts; no end has less than { $least } ({ $source }).
    .mend = Check its cut-off in the list of fittings and its unit: it is read as mm.
stock-not-kept = Stock number { $number } is not in the list of fittings.
    .mend = Check the number, or add the fitting to the list.
stock-not-kept-nearest = Stock number { $number } is not in the list of fittings.
    .mend = Use one of the nearest: { LIST($nearest, style: "or") }. Or add the fitting to the list.
stock-another-end = Stock number { $number } is another fitting: { $kept }. The spec has: { $given }.
    .mend = Check the fitting in your hand, then correct the stock number or the end.
stock-twice = Stock number { $number } appears twice.
    .mend = Delete one of the rows.

## Cut length

stock-cut-arithmetic = { $overall } mm − { $a } − { $b } = { $cut } mm
stock-cut-term-butt = { $cutoff } mm ({ $end })
stock-cut-term-mouth = ({ $cutoff } mm − { $insertion } mm insertion) ({ $end })
stock-cut-no-fitting = The cut-off of { SAY($end, case: "of") } is not known: enter the stock number of its fitting.
stock-cut-no-cut-off = The cut-off of { SAY($end, case: "of") } is not known: { $number } has none in the list of fittings. Enter the manufacturer's value there.
stock-cut-no-insertion = The cut-off of { SAY($end, case: "of") } ends at the shell's mouth, and the insertion depth of { $number } is not known. Enter the manufacturer's value in the list of fittings.
stock-cut-thread-end = The overall length goes to the thread end of { SAY($end, case: "of") }, but the cut-off of { $number } starts at the seat. Enter the length to the sealing face.
stock-cut-length = Cut length: { $length }
stock-cut-unknown = Cut length: not known. { $why }
stock-insertion-mark = Insertion mark of { SAY($end, case: "of") }: { $depth } from the hose end
stock-cut-title = Cut length
stock-cut-hint = Enter the stock numbers of both fittings.
## Crimp card

stock-card-length = A length on a crimp card must be 0 to { $most } mm.
    .mend = Check the value and its unit.
stock-card-not-approved = { SAY($end, case: "start") }: hose { $hose } and fitting series { $series } have no crimp card of their own. They are not approved together. Use parts that have a crimp card, or add the manufacturer's card for this pair.
stock-card-no-fitting = { SAY($end, case: "start") }: enter the stock number of the fitting to see its crimp card.
stock-card-no-series = { SAY($end, case: "start") }: { $number } has no fitting series in the list, so its crimp card is not known. Enter the series there.
stock-card-no-part = { SAY($end, case: "start") }: enter the part number of the hose to see its crimp card.
stock-insertion-differs = { SAY($end, case: "start") }: the insertion depth of { $number } is { $fitting } in the list of fittings, but { $card } on the crimp card. Check both with the manufacturer's data before you cut.
stock-card-crimp = { SAY($end, case: "start") }: crimp diameter { $diameter } mm +{ $plus } −{ $minus } mm ({ $series }; source: { $source })
stock-card-die = Die: { $die }
stock-card-skive-outside = Skive outside: { $length } mm
stock-card-skive-inside = Skive inside: { $length } mm
stock-card-insertion = Insertion depth: { $length } mm
stock-card-setting = Machine setting: { $setting }
stock-card-title = Crimp card
stock-rating-below = Fitting { $number } is rated { $rating } (source: { $source }), below the working pressure of this assembly, { $pressure }.
    .mend = Enter the fitting's rating for that end, so that the lower value applies.
## Traveller: the sheet that goes with the parts through the workshop

stock-traveller-title = Traveller
stock-traveller-count = Quantity: { $count }
stock-traveller-order = Order
stock-traveller-due = Due date
stock-traveller-hose = Hose
stock-traveller-part = Hose part number, reel lot
stock-traveller-end = End { $end }
stock-traveller-overall = Overall length
stock-traveller-arithmetic = Arithmetic
stock-traveller-marks = Insertion marks
stock-traveller-clocking = Clocking angle
stock-traveller-proof = Proof test
stock-traveller-proof-value = { $pressure }, hold at least { $hold } s, with liquid
stock-traveller-proof-unknown = not known: use the hose manufacturer's value
stock-traveller-clean = Clean the inside after cutting and after crimping. Cap both ends until the hose is installed.
stock-traveller-tag = Tag
stock-traveller-cut = Cut
stock-traveller-crimped = Crimp { $end } (mm)
stock-traveller-proved = Proof test passed
stock-traveller-cleaned = Cleaned, capped
stock-card-standard-unknown = { $name } is not a known hose standard.
    .mend = Enter one that the tables have, such as SAE 100R2.
stock-card-not-a-dash = { $value } is not a dash size.
    .mend = Enter the dash size, for example 12 (3/4 in).
stock-card-no-dash = The dash size is missing.
    .mend = Enter the dash size, for example 12 (3/4 in).
