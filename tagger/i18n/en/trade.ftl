# What the trade says of an assembly: rating, temperature, lengths, tightening, and parts that do not go together.

## Working pressure: not known. In LIST($parts) the parts stand with their article, without a case

trade-pressure-not-known = The working pressure is not known because the rating of { LIST($parts) } is not known. Use the manufacturer's value.
trade-pressure-at-most = The working pressure is not known because the rating of { LIST($parts) } is not known. It cannot exceed { $pressure }, the rating of { SAY($part, case: "of") }. Use the manufacturer's value.
trade-pressure-unfit = The working pressure is not known. { $why }
trade-pressure-unconfirmed = The working pressure entered, { $entered } (source: { $source }), is not used. It is above every rating in the tables for this kind of part: { $part }, { $highest }. Check the unit (3000 psi is 207 bar). If it is right, confirm it.
trade-rating-not-known = The rating of { SAY($part, case: "of") } is not known. { $why }
trade-unfit-hot = No source rates { $standard } above { $limit } ({ $source }).
trade-unfit-fluid = No source rates { $standard } for { $fluid } ({ $source }).
trade-unfit-hot-fluid = No source rates { $standard } with { $fluid } above { $limit } ({ $source }).
trade-why-standard = { $standard } is not in the tables.
trade-why-hose = There is no published rating for { $standard } -{ $dash }.
trade-why-end = There is no published rating for { $end }, in { $material }.
trade-why-end-steel = There is no published rating for { $end }, in { $material }. Published fitting ratings apply to low-carbon steel only.
trade-why-end-ceiling = There is no published rating for { $end }, in { $material }. The highest published rating of the family is { $ceiling } ({ $source }).
trade-why-end-steel-ceiling = There is no published rating for { $end }, in { $material }. Published fitting ratings apply to low-carbon steel only. The highest published rating of the family is { $ceiling } ({ $source }).
trade-why-end-condition = The source of the rating for { $end }, in { $material }, applies only up to { $limit }. Enter the maximum temperature, or use the manufacturer's value.
trade-why-part-condition = The rating of hose { $part } applies only up to { $limit }. Enter the maximum temperature, or use the manufacturer's value.

## Working pressure: known, with something to be said of it

trade-same-thread = { SAY($part, case: "start") }: no thread gauge distinguishes { LIST($families) }. The lower of the two ratings applies.
trade-rating-unverified = The rating of { SAY($part, case: "of") }, { $pressure }, is unverified (source: { $source }). Confirm it with the manufacturer's data.
trade-graded = { $source }; { $grade }
trade-grade-standard = standard seen
trade-grade-document = document of a manufacturer or authority seen
trade-grade-secondary = secondary table
trade-grade-practice = common practice
trade-grade-unverified = unverified: no published source at hand
trade-grade-shop = the shop's own value
trade-grade-given = value entered with its source
trade-burst-not-known = { SAY($part, case: "start") }: quick couplers and staple connections are listed with burst pressures from 3 times the working pressure. The minimum burst pressure of the assembly is not known: use the manufacturer's value.
trade-outside-standard = -{ $dash } is not a size of { $standard }: the rating is from one manufacturer. Confirm it with the hose manufacturer's data.
trade-edition-not-entered = { $standard } -{ $dash } has different ratings by edition ({ LIST($ratings) }), and no edition is entered. The lower value, { $pressure }, applies. The edition is printed on the lay line.
trade-edition-rating = { $edition }: { $pressure }
trade-pressure-entered = The working pressure is the value entered (source: { $source }).
trade-pressure-entered-for = The working pressure is the value entered (source: { $source }). It replaces the missing rating of { LIST($parts) }.
trade-pressure-too-high = The pressure entered, { $entered } (source: { $source }), is above the rating of { SAY($part, case: "of") }, { $pressure }. The lower value applies.
trade-pressure-too-high-for = The pressure entered, { $entered } (source: { $source }), is above the rating of { SAY($part, case: "of") }, { $pressure }. The lower value applies. It replaces the missing rating of { LIST($parts) }.
trade-pressure-beyond-hose = The pressure entered, { $entered }, is above the hose rating within its limits, { $pressure } (source: { $source }). The lower value applies.

## A manufacturer's value of one part: entered, kept by the shop, or asked for

trade-rating-too-high = The manufacturer's value entered for { SAY($part) }, { $entered } (source: { $source }), is above its published rating, { $pressure }. The lower value applies.
trade-rating-not-lifted = { SAY($part, case: "start") }: the manufacturer's value entered, { $entered } (source: { $source }), does not apply. It counts beyond a limit of fluid or heat only if its source names the fluid and the maximum temperature of this assembly: enter both with it, and the maximum temperature of the assembly.
trade-rating-other-fluid = { SAY($part, case: "start") }: the manufacturer's value entered, { $entered } (source: { $source }), does not apply: its source names { $fluid }, which is not the fluid of this assembly.
trade-rating-too-hot = { SAY($part, case: "start") }: the manufacturer's value entered, { $entered } (source: { $source }), does not apply: its source gives it up to { $limit } only. Enter the maximum temperature of the assembly, or a value for its heat.
trade-rating-unconfirmed = { SAY($part, case: "start") }: the manufacturer's value entered, { $entered } (source: { $source }), is not used. It is above every rating of this kind of part in the tables, { $highest }. Check the unit (3000 psi is 207 bar). If it is right, confirm it.
trade-rating-unpublished = { SAY($part, case: "start") }: the manufacturer's value entered, { $entered } (source: { $source }), is not used. It is above every published rating of this part, { $highest }. Check the unit (3000 psi is 207 bar). If the source gives it for this very part, confirm it.
trade-rating-impossible = No such part works above { $limit }.
    .mend = Check the unit: 3000 psi is 207 bar.
trade-rating-confirm = { $entered } is above every rating in the tables for this kind of part: { $part }, { $highest }.
    .mend = Check the unit: 3000 psi is 207 bar. If the value is right, confirm it.
trade-rating-confirm-unpublished = { $entered } is above every published rating of this part: { $part }, { $highest }.
    .mend = Check the unit: 3000 psi is 207 bar. If the source gives the value for this very part, confirm it.
trade-rating-by-shop = { SAY($part, case: "start") }: { $pressure } is your shop's value (source: { $source }).
trade-rating-by-given = { SAY($part, case: "start") }: { $pressure } is the manufacturer's value entered (source: { $source }).
trade-rating-above-published = { SAY($part, case: "start") }: { $pressure } (source: { $source }) is above every published rating of this part; the highest is { $highest }. Make sure that this is the part which the source rates.
trade-ask-rating-hose = Enter the hose manufacturer's working pressure with its source. Your shop can keep it for every later assembly.
trade-ask-rating-end = { SAY($part, case: "start") }: enter the fitting manufacturer's working pressure with its source. Your shop can keep it for every later assembly.
trade-ask-approval = Enter the hose manufacturer's approval of { $fluid } with its maximum temperature and its source. Your shop can keep it for every later assembly.
trade-keep-not-used = This value does not rate the part here, so it is not kept.
    .mend = Check the value, the unit, and what its source names; the caution beside it says why.
trade-keep-series = The series of this end is not given: a value of the heavy series must not hold for the light one.
    .mend = Enter the series, S or L, before the value is kept.
trade-keep-part = The hose manufacturer's part number is missing: an approval holds for that hose only.
    .mend = Enter the part number of the hose.
trade-keep-nothing = There is no manufacturer's value to keep.
    .mend = Enter a rating with its source for the hose or an end.

## Temperature and fluid

trade-too-hot = { $given } is above the maximum temperature of { $standard }, { $limit } ({ $source }). No published derating exists: use a hose rated for that temperature.
trade-too-cold = { $given } is below the minimum temperature of { $standard }, { $limit } ({ $source }). Use a hose rated for that temperature.
trade-cold-limit-of-fluid = With { $fluid }, { $standard } has a minimum temperature of { $limit } ({ $source }). Do not use it below that.
trade-fluid-not-suited = { $standard } is not suitable for { $fluid } ({ $source }). Use a hose made for this fluid.
trade-too-hot-for-fluid = With { $fluid }, { $standard } has a maximum temperature of { $limit } ({ $source }), but the spec has { $given }.
trade-unfit-fluid-unnamed = No source says that { $standard } may carry { $fluid }.
trade-fluid-unnamed = No source says that { $standard } may carry { $fluid }, so no pressure applies. Ask the hose manufacturer, and enter the approved pressure with the fluid and the maximum temperature that the source names.
trade-fluid-approved = { $standard } may carry { $fluid } up to { $limit } by its manufacturer's approval ({ $source }). It holds for that manufacturer's hose only: make sure that this is it.
trade-fluid-approved-beyond = { $standard } may carry { $fluid } up to { $limit } by its manufacturer's approval ({ $source }), which goes beyond what published sources allow. It holds for that manufacturer's hose only: make sure that this is it.
trade-fluid-as-oil = No source names { $fluid } for { $standard }. It is treated as a petroleum-based oil: confirm it with the hose manufacturer.
trade-pressure-not-lifted = The pressure entered, { $entered } (source: { $source }), does not apply. It counts beyond a limit of fluid or heat only if its source names the fluid and the maximum temperature of this assembly: enter both with it.
trade-overrated = This hose was registered for { $was }. By the values of today it may work at { $now } at most. Use the lower value.
trade-overrated-at_most = This hose was registered for { $was } at most. By the values of today it is { $now } at most. Use the lower value.
trade-overrated-no-longer = This hose was registered for { $was }. By the values of today no pressure applies. { $why } Do not use it until the shop has told you its working pressure.

## Lengths and bends

trade-vacuum-not-known = No source says what vacuum { $standard } -{ $dash } withstands. Ask the hose manufacturer.
trade-vacuum-too-deep = { $standard } -{ $dash } withstands { $rated } ({ $source }), but the spec has { $asked }: the hose can collapse. Use a suction hose rated for it.
trade-vacuum-unverified = The vacuum rating of { $standard } -{ $dash }, { $rated }, is unverified (source: { $source }). Confirm it with the hose manufacturer's data.
trade-length-tolerance-unverified = The length tolerance is unverified (source: { $source }). Confirm it with the hose manufacturer's data.
trade-length-tolerance-not-known = The length tolerance is not known: there is no published tolerance for this length and bore. Use the hose manufacturer's value.
trade-bend-not-known = The minimum bend radius is not known. Use the hose manufacturer's value.
trade-bend-unverified = The minimum bend radius, { $radius }, is unverified (source: { $source }). Confirm it with the hose manufacturer's data.
trade-too-short-to-bend = A 90° bend at the minimum bend radius needs { $needed } of hose, but the assembly is only { $length } long. Install it nearly straight ({ $source }).
trade-length-under-ends = The two crimped ends alone are longer: at least { $ends } ({ $source }).
    .mend = Check the length and its unit.
trade-length-unconfirmed = { $length } is over { $most }.
    .mend = Check the unit. If the length is right, confirm it.
trade-little-free-hose = At most { $free } of free hose is left between the crimped ends. Straight hose at both ends needs { $needed } ({ $source }).
trade-median = Median of { $count } manufacturers' values, { $low } to { $high }
trade-length-too-short = The assembly is not longer than its two ends together, { $ends }.
    .mend = Check the length and the dimensions of the ends.
trade-dimension-missing = This dimension is needed to convert the length.
    .mend = Enter it in mm, from the fitting manufacturer's drawing.

## Parts that do not exist or do not go together

trade-standard-read-as = { $given } is treated as { $standard }.
trade-standard-not-known = { $given } is not in the tables: only the values entered apply.
trade-not-a-standard = { $standard } is not a hose standard in the tables.
    .mend = Use one of: { LIST($standards, style: "or") }. For any other hose, enter the working pressure and its source.
trade-layline-pressures = Several working pressures are printed on the hose: the lowest applies.
trade-layline-sizes = The sizes printed on the hose do not agree: { LIST($sizes) }. Enter the size.
trade-layline-pressure-above = The printed pressure, { $pressure }, is above every published rating of this hose in this size ({ LIST($standards) }); the highest is { $highest }. Check the size and the unit printed on the hose (3000 psi is 207 bar).
trade-layline-pressure-impossible = The printed pressure, { $pressure }, is not used: no such hose works above { $limit }. Check the unit printed on the hose (3000 psi is 207 bar).
trade-carries-air_brake = compressed air for brakes
trade-carries-fuel = petrol, diesel and biodiesel
trade-carries-marine_fuel = fuel on small craft
trade-carries-lpg = LPG
trade-carries-military = what its specification names
trade-carries-power_steering = power steering fluid
trade-carries-refrigerant = refrigerant; the assembly is certified as a whole
trade-carries-steam = saturated steam
trade-other-hose = { $standard } is not a hydraulic hose. It carries: { $carries }.
    .mend = Enter the hose manufacturer's working pressure with its source, and the fluid.
trade-other-hose-fluid = { $standard } is not for this fluid. It carries: { $carries }.
    .mend = Enter the fluid that flows, or use another hose.
trade-jetting-hose = { $standard } is a water-jetting hose: its rating leaves less to burst and is no rating for hydraulics.
    .mend = Use a hydraulic hose.
trade-not-a-standard-nearest = { $standard } is not a hose standard in the tables.
    .mend = Check the spelling: { LIST($nearest, style: "or") }? For any other hose, enter the working pressure and its source.
trade-not-a-hose-size = { $dash } is not a size of { $standard }.
    .mend = Use one of: { LIST($sizes, style: "or") }.
trade-not-a-size = { $size } is not a size of this connection: { $connection }.
    .mend = Use one of: { LIST($sizes, style: "or") }.
trade-not-a-form = This connection does not come as { $form }: { $connection }.
    .mend = Use one of: { LIST($forms, style: "or") }.
trade-not-a-form-instead = This connection does not come as { $form }: { $connection }.
    .mend = For a female swivel that takes its male, choose { $instead }.
trade-not-a-series = This connection has no series: { $connection }.
    .mend = Clear the series.
trade-not-this-series = This series does not exist for the connection { $connection }.
    .mend = Use one of: { LIST($series, style: "or") }.
trade-dash-names-tube = The dash of { $standard } names the tube, not the bore: -{ $dash } has a bore of { $bore }. Use the fittings made for this hose; a tail for another -{ $dash } hose does not fit.
trade-tail-for-another-hose = The fitting tail is for -{ $tail } hose, but the hose is -{ $hose }.
    .mend = Use a fitting with a -{ $hose } tail, or -{ $tail } hose.
trade-end-for-another-hose = { $size } { $connection } is made for { LIST($usual, style: "or") } hose, but the hose is -{ $hose }.
    .mend = If this is a jump size, set the hose tail of this end (hose_dash) to { $hose }. Otherwise correct the size.
trade-jump-size = { SAY($part, case: "start") } is a jump size: { $size } { $connection } on -{ $hose } hose (usual: { LIST($usual, style: "or") }).
trade-edition-too-new = { $year } is newer than { $newest }, the latest edition in the tables.
    .mend = Clear it to use the lower value, or enter the edition printed on the hose.
trade-edition-not-known = { $edition } is not an edition of { $standard } in the tables.
    .mend = Use one of: { LIST($editions, style: "or") }.
trade-edition-none = { $edition } is not an edition of { $standard } in the tables.
    .mend = Clear it: this standard has one set of values only.

## Tightening. $joint is what the source calls the joint; lubrication follows it in lower case

trade-tightening-not-known = { SAY($part, case: "start") }: how far to tighten is not known. Use the fitting manufacturer's value.
trade-torque-by-ring = { SAY($part, case: "start") }: how far to tighten depends on the sealing ring and the bolt or stud, which differ: { LIST($torques) }. Use the value of the manufacturer of the fitting for its ring.
trade-two-rigid-ends = Neither end swivels: both turn the whole hose as they are screwed in. It can be installed with a union or a swivel adapter at one end.
trade-no-nut-at-either-end = Neither end has a nut of its own. At least one of the parts they connect to must have one; otherwise use a union or a swivel adapter.
trade-mating-nut-needed = { SAY($part, case: "start") } has no nut of its own, and the other end does not swivel. The part it connects to must have a nut; otherwise use a union or a swivel adapter.
trade-torque-series = { SAY($part, case: "start") }: no torque and no flats are shown because the series is not given. A heavy (S) stud takes more than a light (L) one: at the torque for the light one it comes loose. Enter the series, or use the fitting manufacturer's value.
trade-stud-not-nut = { SAY($part, case: "start") }: the torque is that of a stud sealed by a washer or an O-ring in a port. A nut on a 60° cone takes less: for one, use the fitting manufacturer's value.
trade-tightening-soft-flange = { SAY($part, case: "start") }: how far to tighten is not known. The screws of a flange stay steel, there is no published clamp load for flange heads of { $material }, and half the steel torque could leak. Use the fitting manufacturer's value.
trade-torque-unverified = { SAY($part, case: "start") }: the torque is unverified (source: { $source }). Confirm it with the fitting manufacturer's data.
trade-soft-material = { SAY($part, case: "start") }: { $material } takes less torque than steel, and no number of flats is published for it.
trade-torque-basis = { $joint }, { $lubrication }
trade-torque-basis-screw = { $joint }, { $lubrication }, each { $screw } screw, { $grade ->
    [none] property class not stated
   *[other] class { $grade }
 }
trade-screw-class-not-stated = { SAY($part, case: "start") }: the source of this torque ({ $source }) does not state the property class of the { $screw } screws. Read the class on the heads and ask the flange manufacturer for its torque.
trade-screw-class-tables = { SAY($part, case: "start") }: the source of this torque ({ $source }) does not state the property class of the { $screw } screws. General bolt tables, which are not flange tables, give by class { LIST($torques) }. Read the class on the heads and ask the flange manufacturer for its torque.
trade-torque-of-class = { $grade }: { $torque }
trade-screw-class-needed = { SAY($part, case: "start") }: the screws must be of class { LIST($classes, style: "or") } (unverified, source: { $source }). Never use weaker ones.
trade-other-screws = { SAY($part, case: "start") }: the torque shown is for { $screw } screws. The same flange is also made with screws of another size or class: { LIST($torques) }. Look which screws it has.
trade-torque-of-screw = { $screw } ({ $grade ->
    [none] class not stated
   *[other] class { $grade }
 }): { $torque } ({ $source })
trade-torque-basis-reduced = { $joint }, { $lubrication }, { $percent } % of the steel value for { $material } ({ $source })
trade-torque-basis-shared = { $basis }, the range that { $count } sources share
trade-torque-basis-others = { $basis }, other sources { $others }
trade-torque-of-source = { $torque } ({ $joint }: { $source })
trade-torque-sources-disagree = { SAY($part, case: "start") }: sources of the torque disagree: { LIST($torques) }. Use the fitting manufacturer's value.
trade-flats-of-source = { $flats } ({ $source })
trade-flats-sources-disagree = { SAY($part, case: "start") }: sources of the flats disagree: { LIST($flats) }. Use the fitting manufacturer's value.
trade-flats-two-bases = { SAY($part, case: "start") }: count the flats { $basis } (source: { $source }); another source ({ $contrary }) gives the same number { $other }.
trade-spread = { LIST($values) } ({ $joint }{ $screw ->
    [none] { "" }
   *[other] , { $screw } screw
 }{ $sizes ->
    [all] , all sizes
   *[one] { "" }
 }): { $source }
trade-spread-material = { LIST($values) } ({ $joint }{ $screw ->
    [none] { "" }
   *[other] , { $screw } screw
 }, { $material }{ $sizes ->
    [all] , all sizes
   *[one] { "" }
 }): { $source }
trade-aluminium-port = into an aluminium port
trade-lubrication-not_stated = lubrication not stated
trade-lubrication-lightly_oiled = lightly oiled
trade-lubrication-lubricated = lubricated
trade-lubrication-run_on_dry = torque for a lubricated joint, nut run on dry until it makes contact
trade-lubrication-dry = dry
trade-lubrication-threads = threads lubricated
trade-lubrication-threads_fluid_or_grease = threads lubricated (hydraulic fluid, anti-seize or petroleum jelly)
trade-lubrication-threads_engine_oil = threads oiled with engine oil
trade-lubrication-sealant_two_threads_bare = thread sealant, first two threads left bare
trade-lubrication-sealed = thread sealed
trade-lubrication-lubricated_or_sealed = thread lubricated or sealed
trade-lubrication-o_ring_oiled = O-ring oiled
trade-lubrication-o_ring_system_oil = lubricated (system oil on the O-ring)
trade-lubrication-o_ring_hydraulic_fluid = lubricated (clean hydraulic fluid on the O-ring)
trade-lubrication-o_ring_and_threads = O-ring and threads lubricated

## Files of the tables

trade-not-a-folder = { $folder } is not a folder.
    .mend = Enter the folder that holds the CSV files.
trade-not-a-table = { $file } is not one of the tables.
    .mend = Use one of: { LIST($tables, style: "or") }.
trade-wrong-columns = { $file } has the wrong columns: { LIST($columns) }.
    .mend = Correct the header line.
trade-cell-not-read = This cell cannot be read.
    .mend = Correct the cell.
trade-row-not-above-zero = The value must be above 0.
    .mend = Correct the cell.
trade-row-negative = The value must not be negative.
    .mend = Correct the cell.
trade-row-range = The minimum, { $low }, is above the maximum, { $high }.
    .mend = Correct one of the two.
trade-row-above-possible = The value is above { $limit }, the most that can be meant here.
    .mend = Check the unit of the column: 3000 psi is 207 bar.
trade-row-no-source = The row has no source.
    .mend = Enter where the value comes from. Example: manufacturer's data sheet 7.
trade-row-no-maximum = A minimum torque needs its maximum.
    .mend = Enter the maximum torque.
trade-row-taper-flats = Taper threads are not tightened by flats.
    .mend = Enter whole turns instead.
trade-row-unknown-word = This word is not known here.
    .mend = Use one of: { LIST($words, style: "or") }.
trade-row-printed-not-read = The printed value cannot be read.
    .mend = Enter it with its unit as the source prints it, or leave the cell empty. Example: 3000 psi.
trade-row-printed = The row contradicts itself: { $column } is { $given }, but { $printed } is { $found }.
    .mend = Correct the value or the printed value.


## Whether one assembly may take the place of another: "old" is the one to be replaced, "new" the one to replace it

trade-verdict-replaces = The new assembly replaces the old one.
trade-verdict-with-care = The new assembly can replace the old one, with differences.
trade-verdict-does-not-replace = The new assembly does not replace the old one.
trade-compare-values = Old: { $old }, new: { $new }.
trade-compare-both = Both { $both }.
trade-compare-not-specified = not specified
trade-compare-none = none
trade-compare-pressure-same-parts = Same parts; working pressure not known.
trade-compare-pressure-by-part = The working pressure of the old assembly is not known, but no part of the new one is weaker.
trade-compare-alike = Old: { $old }, new: { $new }. { $how }
trade-compare-turned = Install the new assembly the other way round: its end A takes the place of end B. The clocking angle stays the same.
trade-compare-pressure-not-known = { $which ->
    [old] The working pressure of the old assembly is not known. Enter it in the spec with its source.
    [new] The working pressure of the new assembly is not known. Enter it in the spec with its source.
   *[both] The working pressure of both assemblies is not known. Enter it in their specs with its source.
 }
trade-compare-pressure-lower = The new assembly is rated lower. Old: { $old }, new: { $new }.
trade-compare-bore = The dash of one hose names the tube: the bores are { $old } and { $new }.
trade-compare-dash-smaller = The new hose is -{ $new }, smaller than -{ $old }: less flow, more heat.
trade-compare-dash-larger = The new hose is -{ $new }, larger than -{ $old }. Check the available space.
trade-compare-suction = Old: { $old }, a suction hose; new: { $new }. A pressure hose may collapse under suction.
trade-compare-described = { $old } and { $new } are described in words. Compare the parts themselves.
trade-compare-series = { $old } and { $new }: a heavy (S) and a light (L) stud differ in torque and rating. Find out which one it is.
trade-compare-material = Old: { $old }, new: { $new }. Check corrosion resistance and the manufacturer's rating.
trade-compare-shape = Old: { $old }, new: { $new }. The hose routing changes.
trade-compare-length-basis = Old: measured { $old }; new: measured { $new }. The lengths cannot be compared. Measure both between the same points.
trade-compare-length-no-tolerance = Old: { $old }, new: { $new }. No tolerance is known for the old one.
trade-compare-length-within = Old: { $old }, new: { $new }. Within the tolerance, +{ $plus } / -{ $minus }.
trade-compare-length-short = Old: { $old }, new: { $new }. Too short: the hose would be under tension.
trade-compare-length-long = Old: { $old }, new: { $new }. Too long: it may rub or kink.
trade-compare-clocking-none = No clocking angle: neither has two elbows.
trade-compare-clocking-within = Old: { $old }, new: { $new }. Within the tolerance, ±{ $allowed }.
trade-compare-clocking-off = Old: { $old }, new: { $new }. They are { $off } apart: the hose would be twisted.
trade-compare-bend-not-known = The minimum bend radius is not known for both.
trade-compare-bend-same-hose = The minimum bend radius is not known, but the hose is the same.
trade-compare-bend-larger = Old: { $old }, new: { $new }. Do not bend the new one as tightly as the old one.
trade-compare-temperature-none = No temperature is specified for the old one, and the limit of its hose is not known.
trade-compare-temperature-same-hose = The temperature limit is not known, but the hose is the same.
trade-compare-temperature-limits = No temperature is specified for the old one: its hose is rated to { $old }, the new one to { $new }.
trade-compare-temperature-not-known = The old one is used at up to { $old }; the limit of the new one is not known.
trade-compare-temperature = The old one is used at up to { $old }; the new hose is rated to { $new }.
trade-compare-vacuum = The old one is used at { $old }; the new one is made for { $new }.
trade-compare-fluid-none = No fluid is specified for either.
trade-compare-fluid-no-source = Both for { $fluid }, but no source says that { $standard } is suitable for it. Ask the hose manufacturer.
trade-compare-fluid-ask = Old: { $old }, new: { $new }. Ask the hose manufacturer.
trade-compare-fluid-unknown = Old: { $old }, new: { $new }. No source says that the new hose is suitable for the fluid of the old one.
trade-compare-covers-missing = The new one lacks: { LIST($covers) }.
trade-compare-covers-added = The new one adds: { LIST($covers) }.
trade-compare-covers-same = The same sleeves and guards.


## What the check of the tables finds; $row names the table and the row

trade-check-duplicate = { $row }: there are { $count } rows with the same key.
trade-check-no-source = { $row }: the row has no source.
trade-check-unknown-word = { $row }: { $given } is not known in the column { $column }.
trade-check-memory-source = { $row }: a row from memory or by judgement must say so first in its source.
trade-check-diameter = { $row }: { $thread } has a diameter of { $found } mm, the row has { $given } mm.
trade-check-pitch = { $row }: { $thread } has a pitch of { $found } mm, the row has { $given } mm.
trade-check-tpi = { $row }: { $tpi } threads per inch and a pitch of { $given } mm do not agree.
trade-check-minor = { $row }: the female minor diameter, { $given } mm, is not D - { $height } P.
trade-check-minor-size = { $row }: the female minor diameter, { $given } mm, is not between 0 and { $od } mm.
trade-check-pressure = { $row }: { $printed } is { $found } bar, the row has { $given } bar.
trade-check-not-larger = { $row }: it is not larger than { $smaller }.
trade-check-wrong-way = { $row }: at size { $size } the values go the wrong way, from { $before } to { $after }.
trade-check-bend = { $row }: the minimum bend radius is { $radius } mm, but { $before } mm for the smaller -{ $small }.
trade-check-range = { $row }: { $low } is above { $high }.
trade-check-taper-flats = { $row }: taper threads are not tightened by flats.
trade-check-flats = { $row }: { $flats } is not a number of flats to tighten by.
trade-check-not-a-size = { $row }: { $size } is not a size of the family.
trade-check-not-a-standard = { $row }: the standard is not in hose_standards.
trade-check-no-pressure = { $row }: the standard has no pressure.
trade-check-no-family = { $row }: the family is missing.
trade-check-tighten-by = { $row }: what is turned must be named, unless the thread is a taper.
trade-check-shares = { $row }: the shares of the seats add up to { $sum }, not 1.

## Storage and service dates

trade-guidance-only = Guidance only. Replace a hose at once if it leaks, is blistered or cracked, or has been kinked.
trade-rule-bulk_hose_years_iso = Bulk hose before assembly (ISO 8331)
trade-rule-assembly_storage_years_iso = Storage of an assembly before use (ISO 8331)
trade-rule-bulk_hose_years_din = Bulk hose before assembly (DIN 20066)
trade-rule-assembly_storage_years_din = Storage of an assembly before use (DIN 20066)
trade-rule-assembly_life_years_din = Total life of an assembly, storage included (DIN 20066)
trade-rule-bulk_hose_years_tr17165 = Bulk hose, stored to ISO 2230 (ISO/TR 17165-2)
trade-rule-bulk_hose_years_j1273 = Bulk and assembled rubber hose, 40 quarters (SAE J1273)


## Warnings of records from before messages: the code and the part are kept, the values are in the record

trade-kept-edition_not_given = This hose has different ratings by edition, and no edition was entered. The lower value applies. The edition is printed on the lay line.
trade-kept-outside_standard = This size is not in the hose's standard: the rating is from one manufacturer. Confirm it with the hose manufacturer's data.
trade-kept-pressure_not_known = The working pressure is not known. Use the manufacturer's value.
trade-kept-pressure_given = The working pressure is the value entered.
trade-kept-pressure_given_too_high = The pressure entered is above a rating of this assembly. The lower value applies.
trade-kept-rating_not_known = The rating of { SAY($part, case: "of") } is not known. Use the manufacturer's value.
trade-kept-rating_from_memory = The rating of { SAY($part, case: "of") } is unverified. Confirm it with the manufacturer's data.
trade-kept-jump_size = { SAY($part, case: "start") } is a jump size.
trade-kept-bend_not_known = The minimum bend radius is not known. Use the hose manufacturer's value.
trade-kept-bend_from_memory = The minimum bend radius is unverified. Confirm it with the hose manufacturer's data.
trade-kept-too_short_to_bend = The assembly is too short for a 90° bend at the minimum bend radius. Install it nearly straight.
trade-kept-too_hot = The temperature is above the maximum of the hose's standard. Use a hose rated for that temperature.
trade-kept-too_cold = The temperature is below the minimum of the hose's standard. Use a hose rated for that temperature.
trade-kept-cold_limit_of_fluid = With this fluid the hose has a higher minimum temperature. Do not use it below that.
trade-kept-fluid_not_known = No source says whether the hose is suitable for this fluid. Ask the hose manufacturer.
trade-kept-fluid_not_suited = The hose is not suitable for this fluid. Use a hose made for this fluid.
trade-kept-too_hot_for_fluid = With this fluid the temperature is above the maximum of the hose. Use a hose rated for both.
trade-kept-tightening_not_known = { SAY($part, case: "start") }: how far to tighten is not known. Use the fitting manufacturer's value.
trade-kept-torque_from_memory = { SAY($part, case: "start") }: the torque is unverified. Confirm it with the fitting manufacturer's data.
trade-kept-soft_material = { SAY($part, case: "start") }: this material takes less torque than steel, and no number of flats is published for it.
trade-kept-length_tolerance_from_memory = The length tolerance is unverified. Confirm it with the hose manufacturer's data.
trade-kept-length_tolerance_not_known = The length tolerance is not known. Use the hose manufacturer's value.
trade-kept-standard_spelling = The hose's standard was entered in another spelling.
trade-kept-standard_not_known = The hose's standard is not in the tables: only the values entered apply.

## Hoses of the shop's own

trade-own-hose-fluid-heat = The manufacturer allows a fluid only up to a temperature, and none is given.
    .mend = Enter the maximum temperature.
trade-own-hose-part = The part number has no letter and no digit.
    .mend = Enter the part number printed on the hose.
trade-own-hose-outside = An outside diameter of { $outside } is not wider than the bore of the hose, { $bore }. It cannot be right.
    .mend = Check the value and its unit: it is read as mm.
trade-own-hose-bend = A bend radius of { $bend } is less than the hose is wide, { $across }. It cannot be right.
    .mend = Check the value and its unit: it is read as mm.
trade-own-hose-rating = up to { $pressure } (source: { $source })
trade-own-hose-above = up to { $pressure } (source: { $source }), above every published value, the highest of which is { $highest }
trade-own-hose-twice = The part number { $part } in dash { $dash } is in the list twice.
    .mend = Delete one of the two rows.
