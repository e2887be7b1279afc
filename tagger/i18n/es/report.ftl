# The answers of the trade as lines of text: check, identify, compare.

## check

report-cited = { $source }, valor impreso: { $printed }
report-unknown = no se conoce
report-pressure = Presión máxima de trabajo: { $pressure }
report-pressure-unknown = Presión máxima de trabajo: { $why }
report-pressure-partly = Presión máxima de trabajo: no se conoce. { $known }
report-pressure-limited = Presión máxima de trabajo: { $pressure }, limitada por { SAY($part) } ({ $source })
report-pressure-limited-margin = Presión máxima de trabajo: { $pressure }, limitada por { SAY($part) } ({ $source }), { $margin } bar por debajo de la parte siguiente
report-doubt = { $doubt }
report-rating-hose = Manguera: { $pressure } ({ $source })
report-unrated-hose = Manguera: { $why }
report-rating-end_a = Extremo A: { $pressure } ({ $source })
report-unrated-end_a = Extremo A: { $why }
report-rating-end_b = Extremo B: { $pressure } ({ $source })
report-unrated-end_b = Extremo B: { $why }
report-rating-override = Valor indicado: { $pressure } ({ $source })
report-unrated-override = Valor indicado: { $why }
report-proof-pressure = Presión de prueba: { $pressure }
report-burst-pressure = Presión mínima de rotura: { $pressure }
report-length = Longitud: { $length }, { $basis }, +{ $plus } / -{ $minus } mm ({ $source })
report-length-without-tolerance = Longitud: { $length }, { $basis } (no se conoce la tolerancia)
report-clocking = Ángulo de orientación: { $angle } ±{ $tolerance } ({ $source })
report-bend-radius = Radio mínimo de curvatura (interior de la curva): { $radius } ({ $source })
report-bend-radius-unknown = Radio mínimo de curvatura (interior de la curva): no se conoce; use el valor del fabricante de la manguera
report-minimum-temperature = Temperatura mínima de la manguera: { $temperature } ({ $source })
report-torque = Extremo { $end }: { $torque }, { $basis } ({ $source })
report-torque-screw = Extremo { $end }: { $torque } en cada tornillo, { $basis } ({ $source })
report-counted = Extremo { $end }: { $counted } ({ $source })
report-tightening-unknown = Extremo { $end }: no se conoce el par de apriete; use el valor del fabricante del racor
report-nothing-to-tighten = Extremo { $end }: empujar hasta que enclave; no hay nada que apretar
report-danger = PELIGRO: { $text }
report-care = PRECAUCIÓN: { $text }
report-note = Nota: { $text }

## identify

report-percent = { $percent } %
report-candidate = { $size } { $connection }, { $form }, { $thread }
report-look-alikes = Conexiones parecidas:
report-measure-next = Siguiente medida: { $what }

## lay line

report-lay-line-standards = Norma: { LIST($standards) }
report-lay-line-named = No es una manguera hidráulica: { LIST($names) }
report-lay-line-none = No se ha leído ninguna norma de manguera.
report-lay-line-nearest = Nombres parecidos: { LIST($standards) }
report-lay-line-dash = Tamaño: -{ $dash }
report-lay-line-dn = Diámetro nominal: DN { $dn }
report-lay-line-edition = Edición o tipo: { $edition }
report-lay-line-pressure = Presión de trabajo impresa: { $pressure }. Úsela como valor del fabricante de la manguera.
report-lay-line-pressure-only = Presión de trabajo impresa: { $pressure }.
report-lay-line-date = Código de fecha: { $date }

## compare

report-field-same = igual
report-field-better = mejor
report-field-differs = distinto
report-field-dangerous = PELIGRO
report-about-working_pressure = Presión de trabajo
report-about-hose-dash = Tamaño dash de la manguera
report-about-hose-standard = Norma de la manguera
report-about-end_a = Extremo A
report-about-end_a-shape = Extremo A, codo
report-about-end_a-material = Extremo A, material
report-about-end_b = Extremo B
report-about-end_b-shape = Extremo B, codo
report-about-end_b-material = Extremo B, material
report-about-length_mm = Longitud
report-about-clocking_deg = Ángulo de orientación
report-about-bend_radius_mm = Radio mínimo de curvatura
report-about-max_temperature_c = Temperatura máxima
report-about-fluid = Fluido
report-about-vacuum_bar = Vacío
report-about-covers = Fundas y protecciones
report-about-ends = Extremos
report-compared = { $field } ({ $verdict }): { $reason }
