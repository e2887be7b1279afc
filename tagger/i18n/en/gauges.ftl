# Gauge sheets: the tables at true scale on paper.

gauges-name-threads = Gauge sheet: thread diameters
gauges-name-pitches = Gauge sheet: thread pitches
gauges-name-seats = Gauge sheet: seat angles
gauges-name-flanges = Gauge sheet: flange heads
gauges-name-hexes = Gauge sheet: hexagons
gauges-name-hoses = Gauge sheet: outside diameters of hose

## What was asked for and is not there

gauges-paper = The sheets are made for { LIST($known) }.
    .mend = Choose one of them.
gauges-not-a-sheet = There is no gauge sheet of this name.
    .mend = Choose one of { LIST($known) }.
gauges-not-a-family = No gauge sheet shows this family: it has no thread to measure, or is not in the tables.
    .mend = Choose one of { LIST($known) }.

## At the head: what it is, and how to hold it to the part

gauges-title-threads = Thread diameters: { $family }
gauges-title-pitches = Thread pitches
gauges-title-seats = Seat angles
gauges-title-flanges = Flange heads: { $code }
gauges-title-hexes = Hexagons, across flats
gauges-title-hoses = Outside diameters of hose
gauges-use-males = Male threads. Lay the thread on a bar, its left edge on the bar's left edge, and look straight down with one eye. The right edge of the thread must lie on the dark strip: there a sound thread ends, from its smallest to its largest size (ISO 965-1, grade 6 formulas). A worn thread may measure less. Better: cut the bar out and push the notch over the thread. Where two bars are nearly alike, take both marks in turn. Where it ends on no strip, measure with a caliper.
gauges-use-males-taper = Taper males (1 in 16). Lay the thread on a bar with its small end at the top and look straight down with one eye: both edges of the thread run along the edges of the bar. At the line across the bar the thread has its nominal diameter: on BSPT at the gauge plane, on NPT and NPTF at the end of the effective thread. A taper thread can sit anywhere along its bar: where two bars are nearly alike, take both marks in turn, and look at the pitch.
gauges-use-females = Female threads. Print on card, cut the wedge out and push it straight into the bore until it stops on the thread crests. The bore's edge must stand on a dark band: a sound bore is as wide as the band, from its smallest to its largest size (ISO 965-1, grade 6 formulas; of a taper bore 0.3 mm to either side of its nominal size). A worn bore may be wider. The size stands on the band, its mark on or beside it.
gauges-use-pitches = Lay a comb along the thread, against the light, with a tooth in the first gap, and follow it over as many threads as there are: a wrong comb fits for three threads and is off by half a thread at ten. Every tenth gap is numbered. Paper does not tell 55° flanks from 60°: 14 per inch is BSP and American alike. Those stay a tie until the thread angle is tried with a thread gauge.
gauges-use-seats = Cut a notch out and hold it over a cone that stands out; cut a point out and hold it in a cone that lies inside. Look against the light: no gap may be seen along either side. 37° and 45° are half angles, 24° and 60° are included angles. What paper cannot tell: a nose as small as size -4, a funnel too deep to look into, 30° (half) from 60° (included), which is the same cone, and a 42° machined seat from one of 45°. Those stay a tie.
gauges-use-flanges = Stand the flange head on a disc: it must just cover it, all round. Then lay the sheet on the port: the middles of its four screw holes must lie under the four crosses. Code 61 and code 62 share some heads to within a millimetre or two: the bolt spacing tells them apart. A head without a disc is not in the tables.
gauges-use-hexes = Lay a nut or body on a bar with a flat along the bar's left edge: the opposite flat must lie on the dark strip, 0.3 mm wide. Better: cut the bar out and push the notch over the hexagon. Manufacturers use other hexagons than these: a hexagon never decides alone, and one that is not here excludes nothing.
gauges-use-hoses = Cut a strip out, glue its pieces, and wrap it tightly round a clean part of the hose: the line at its beginning meets the hose's outside diameter in mm. Dark bands show what our sources print for each dash size; the pale zone round a band is as wide as sources differ there, 1 mm at least. A hose outside every pale zone is none of these sizes of that standard, by these sources. A hose on a band may still be another: many standards lie within 1 mm of one another. The strip only excludes. It never gives a pressure.

## Beside a gauge

gauges-male = Outside { $low } to { $high }
gauges-pitch-inch = { $tpi } threads per inch, { $pitch } mm
gauges-pitch-metric = { $pitch } mm
gauges-seat-angles = { $half } half, { $whole } included
gauges-flange = Head { $head }; bolt spacing { $long } by { $short }
gauges-flange-no-head = Head not in the tables; bolt spacing { $long } by { $short }
gauges-strip = { $standard }, piece { $piece }

## At the foot of every page

gauges-check-mm = 100 mm
gauges-check-in = 4 in
gauges-check = Print at 100 % (actual size). Measure one of these lines and enter what it measures with the mark: 97 to 103 mm, or 3.88 to 4.12 in, is corrected. Anything else: print again.
gauges-card = No ruler? A bank card (ISO/IEC 7810 ID-1, 85.60 x 53.98 mm) must just cover this outline, both ways. If it does, enter 100 mm. If it covers one way only, do not use the sheet.
gauges-scan = Scan to identify the connection: choose the mark found here, for example D26.99, and enter what the check line measures.
gauges-cautions = CAUTION: Release all pressure before you measure or loosen anything. Clean the thread; do not measure a damaged one. Never choose a connection by one measurement: diameter, pitch and seat must all match. Threads that screw together do not make seats that seal. The sheet says nothing of pressure. What the manufacturer of the fitting or hose says comes before this sheet.

## The page that lists the sheets

gauges-page-title = Gauge sheets
gauges-page-about = The tables at true scale on paper, for whoever has no caliper or thread gauge at hand. Hold the part to the sheet and enter the mark that matches.
gauges-page-family = Family
gauges-page-paper = Paper
gauges-page-kind = Sheet
gauges-page-others = Other sheets
gauges-page-open = Open PDF
gauges-paper-a4 = A4
gauges-paper-letter = Letter

## The page for an outside diameter of a hose

gauges-scan-hoses = Scan to see which standards an outside diameter excludes: enter what the strip says, and what the check line measures.
gauges-hose-title = Hose by its outside diameter
gauges-hose-only = An outside diameter only excludes. Many standards lie within 1 mm of one another, and it gives no pressure: read the lay line, or ask the hose manufacturer.
gauges-hose-left = Of the hoses whose outside diameter our sources print, { $od } leaves these; the others are excluded:
gauges-hose-none = None of the hoses whose outside diameter our sources print is { $od } thick.
gauges-hose-go = Show what is left
gauges-hose-unknown = Not excluded, because no source here prints their outside diameter: { LIST($names) }.
