# The answers of the trade as lines of text: check, identify, compare.

## check

report-cited = { $source }, printed: { $printed }
report-unknown = not known
report-pressure = Maximum working pressure: { $pressure }
report-pressure-unknown = Maximum working pressure: { $why }
report-pressure-partly = Maximum working pressure: not known. { $known }
report-pressure-limited = Maximum working pressure: { $pressure }, limited by { SAY($part) } ({ $source })
report-pressure-limited-margin = Maximum working pressure: { $pressure }, limited by { SAY($part) } ({ $source }), { $margin } bar below the next lowest part
report-doubt = { $doubt }
report-rating-hose = Hose: { $pressure } ({ $source })
report-unrated-hose = Hose: { $why }
report-rating-end_a = End A: { $pressure } ({ $source })
report-unrated-end_a = End A: { $why }
report-rating-end_b = End B: { $pressure } ({ $source })
report-unrated-end_b = End B: { $why }
report-rating-override = Value given: { $pressure } ({ $source })
report-unrated-override = Value given: { $why }
report-proof-pressure = Proof pressure: { $pressure }
report-burst-pressure = Minimum burst pressure: { $pressure }
report-length = Length: { $length }, { $basis }, +{ $plus } / -{ $minus } mm ({ $source })
report-length-without-tolerance = Length: { $length }, { $basis } (tolerance not known)
report-clocking = Clocking angle: { $angle } ±{ $tolerance } ({ $source })
report-bend-radius = Minimum bend radius (inside of bend): { $radius } ({ $source })
report-bend-radius-unknown = Minimum bend radius (inside of bend): not known: use the hose manufacturer's value
report-minimum-temperature = Minimum hose temperature: { $temperature } ({ $source })
report-torque = End { $end }: { $torque }, { $basis } ({ $source })
report-torque-screw = End { $end }: { $torque } per screw, { $basis } ({ $source })
report-counted = End { $end }: { $counted } ({ $source })
report-tightening-unknown = End { $end }: tightening torque not known: use the fitting manufacturer's value
report-nothing-to-tighten = End { $end }: pushed together until it locks, nothing to tighten
report-danger = DANGER: { $text }
report-care = CAUTION: { $text }
report-note = Note: { $text }

## identify

report-percent = { $percent } %
report-candidate = { $size } { $connection }, { $form }, { $thread }
report-look-alikes = Look-alikes:
report-measure-next = Measure next: { $what }

## lay line

report-lay-line-standards = Standard: { LIST($standards) }
report-lay-line-named = Not a hydraulic hose: { LIST($names) }
report-lay-line-none = No hose standard was read.
report-lay-line-nearest = Similar names: { LIST($standards) }
report-lay-line-dash = Dash size: -{ $dash }
report-lay-line-dn = Nominal bore: DN { $dn }
report-lay-line-edition = Edition or type: { $edition }
report-lay-line-pressure = Printed working pressure: { $pressure }. Use it as the hose manufacturer's value.
report-lay-line-pressure-only = Printed working pressure: { $pressure }.
report-lay-line-date = Date code: { $date }

## compare

report-field-same = same
report-field-better = better
report-field-differs = different
report-field-dangerous = DANGER
report-about-working_pressure = Working pressure
report-about-hose-dash = Hose dash size
report-about-hose-standard = Hose standard
report-about-end_a = End A
report-about-end_a-shape = End A, shape
report-about-end_a-material = End A, material
report-about-end_b = End B
report-about-end_b-shape = End B, shape
report-about-end_b-material = End B, material
report-about-length_mm = Length
report-about-clocking_deg = Clocking angle
report-about-bend_radius_mm = Minimum bend radius
report-about-max_temperature_c = Maximum temperature
report-about-fluid = Fluid
report-about-vacuum_bar = Vacuum
report-about-covers = Sleeves and guards
report-about-ends = Ends
report-compared = { $field } ({ $verdict }): { $reason }
