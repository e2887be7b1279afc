# The wall chart and the pocket booklet: connections, threads, seats, look-alikes, flats.

charts-wall-title = Hydraulic hose connections
charts-wall-stock-title = Hydraulic hose connections in our stock
charts-how = Each joint is cut open along its axis, not to scale. Drawn black: where it seals.
charts-alike-means = { $sign } and a number: the same or nearly the same thread, or the same flange size, as the connection of that number. The parts may go together and still not seal or not hold. Never connect by the thread alone: compare seat, cone and tube first.
charts-care = Release all pressure before you loosen a joint. The fitting manufacturer's data take precedence over this document. A thread does not tell the working pressure.
charts-unverified = { $sign } unverified: confirm the value with the fitting manufacturer.
charts-sources = Sources
charts-source = { $number } { $source }
charts-numbered = { $number } { $family }
charts-alike = { $sign } Look-alikes: { LIST($families) }
charts-stock = Our stock:
charts-stock-item = { $size } { $number }

## Columns

charts-column-size = Size
charts-column-thread = Thread
charts-column-male = Male OD
charts-column-male-mm = Male mm
charts-not-known = not known
charts-column-female = Female ID
charts-column-pitch = Pitch
charts-column-tpi = TPI
charts-column-dash = Hose dash
charts-column-head = Head
charts-column-bolts = Bolt spacing
charts-column-screws = Screws
charts-column-alike = { $sign } like

## What is measured on an end without a thread of its own

charts-measured = Measured: { $what }.
charts-what-probe_nose = nose of the plug
charts-what-flat_nose = flat nose of the plug
charts-what-spigot = spigot
charts-what-tube = tube
charts-what-ring_hole = hole of the ring

## How a joint seals

charts-seals-cone = Seals on a cone, { $half } to the axis ({ $included } included).
charts-where-outside = Nose, stands out: { LIST($forms) }.
charts-where-inside = Funnel, lies inside: { LIST($forms) }.
charts-seals-face = Seals with an O-ring in the flat face.
charts-seals-boss = Seals with an O-ring under the shoulder, in the chamfer of the port.
charts-seals-flat = Seals with a ring on a flat face.
charts-seals-or-flat = Or with a ring on a flat face.
charts-seals-taper = Seals in its taper thread.
charts-seals-head = Seals with an O-ring in the face of the flange head, clamped by four screws.
charts-seals-coupler = Pushed together and latched. Nothing is tightened.
charts-seals-staple = Pushed together, sealed by an O-ring and held by a staple. Nothing is tightened.
charts-seals-standpipe = Plain tube: a nut and a cutting ring press it into a 24° cone.

## The booklet

charts-booklet-title = Threads and connections
charts-booklet-sub = Pocket booklet for hydraulic hose assemblies
charts-booklet-cautions = Before you start
charts-booklet-measure = How to measure
charts-booklet-tables = Thread tables
charts-booklet-flats = Flats by dash size
charts-sources-of = Sources: { LIST($sources) }
charts-measure-clean = Clean the end. A damaged or worn thread reads wrong: measure in several places.
charts-measure-outside = Male thread: outside diameter, across the crests. A taper thread grows towards the hose: read it at several places.
charts-measure-inside = Female thread: inside diameter, across the crests, with the inner jaws.
charts-measure-pitch = Pitch: hold a thread gauge to the thread against the light. It must fit without a gap over its whole length. Without a gauge, measure from crest to crest over ten turns and divide by ten.
charts-measure-seat = Seat: use a seat gauge, and look: does a cone stand out like a nose, lie inside like a funnel, or is there an O-ring? 37° and 45° are counted from the axis, 24° and 60° from side to side.
charts-measure-nose = 24° cone: measure the nose or socket too. Series and tube sizes share threads.
charts-measure-compare = Compare all values with the tables. If two connections remain, do not guess: ask, or measure once more.
charts-tables-about = Diameters are nominal. A male thread reads this or a little less, a female thread this or a little more.
charts-flats-about = In bold: the count that our tags carry. Below it: what other sources give for a steel nut on a hose. A count holds only from the start named beside it. Counted from another start, the joint may leak or its seat may crack.
charts-flats-method = Use either flats or torque for one joint, never both.
charts-flats-dash = Dash
charts-flats-count = Flats
charts-flats-start = Counted
charts-flats-none = For connections that are not listed, no count is shown here: use the torque of the tag or of the fitting manufacturer.
charts-any-size = any
charts-fold-title = How to fold this booklet
charts-fold = Print at actual size on both sides and turn the sheets over their long edge. Cut every sheet along the middle line. Lay the stack of upper halves on the stack of lower halves, with the cover on top. Fold backwards along the dotted line, so that the cover stays outside, and staple the fold.

## Refused

charts-no-stock = No fitting in the shop's list has a connection of the tables.
    .mend = Add the shop's fittings first, or make the chart of all connections.
charts-too-full = The chart does not fit on { $paper }: its letters would be { $cap } mm high, and { $least } mm is the least.
    .mend = Choose A2, or leave out the stock numbers.
charts-not-a-paper = { $paper } is not a paper size of this sheet.
    .mend = Use one of: { LIST($papers, style: "or") }.

## The page that makes them

charts-page-title = Wall chart and booklet
charts-page-chart = Wall chart
charts-page-booklet = Pocket booklet
charts-page-paper = Paper
charts-page-connections = Connections
charts-page-all = all
charts-page-stock = of our fittings
charts-page-numbers = of our fittings, with stock numbers
charts-page-make = Make PDF
charts-page-chart-hint = Every connection cut open, with its threads, how it seals and what it is taken for, on one page.
charts-page-booklet-hint = Thread tables, flats, how to measure. Four pages a side, to be cut and folded.
charts-page-form = Form
charts-page-sheets = sheets to fold
charts-page-pages = page by page
