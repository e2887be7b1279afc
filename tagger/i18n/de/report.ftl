# The answers of the trade as lines of text: check, identify, compare.

## check

report-cited = { $source }, gedruckter Wert: { $printed }
report-unknown = nicht bekannt
report-pressure = Max. Betriebsdruck: { $pressure }
report-pressure-unknown = Max. Betriebsdruck: { $why }
report-pressure-partly = Max. Betriebsdruck: nicht bekannt. { $known }
report-pressure-limited = Max. Betriebsdruck: { $pressure }, begrenzt durch { SAY($part, case: "acc") } ({ $source })
report-pressure-limited-margin = Max. Betriebsdruck: { $pressure }, begrenzt durch { SAY($part, case: "acc") } ({ $source }), { $margin } bar unter dem nächsten Teil
report-doubt = { $doubt }
report-rating-hose = Schlauch: { $pressure } ({ $source })
report-unrated-hose = Schlauch: { $why }
report-rating-end_a = Ende A: { $pressure } ({ $source })
report-unrated-end_a = Ende A: { $why }
report-rating-end_b = Ende B: { $pressure } ({ $source })
report-unrated-end_b = Ende B: { $why }
report-rating-override = Angegebener Wert: { $pressure } ({ $source })
report-unrated-override = Angegebener Wert: { $why }
report-proof-pressure = Prüfdruck: { $pressure }
report-burst-pressure = Mindestberstdruck: { $pressure }
report-length = Länge: { $length }, { $basis }, +{ $plus } / -{ $minus } mm ({ $source })
report-length-without-tolerance = Länge: { $length }, { $basis } (Toleranz nicht bekannt)
report-clocking = Verdrehwinkel: { $angle } ±{ $tolerance } ({ $source })
report-bend-radius = Mindestbiegeradius (Innenseite des Bogens): { $radius } ({ $source })
report-bend-radius-unknown = Mindestbiegeradius (Innenseite des Bogens): nicht bekannt: Wert des Schlauchherstellers verwenden
report-minimum-temperature = Niedrigste zulässige Temperatur des Schlauchs: { $temperature } ({ $source })
report-torque = Ende { $end }: { $torque }, { $basis } ({ $source })
report-torque-screw = Ende { $end }: { $torque } je Schraube, { $basis } ({ $source })
report-counted = Ende { $end }: { $counted } ({ $source })
report-tightening-unknown = Ende { $end }: Anziehdrehmoment nicht bekannt: Wert des Armaturenherstellers verwenden
report-nothing-to-tighten = Ende { $end }: zusammenstecken, bis es einrastet; nichts anzuziehen
report-danger = GEFAHR: { $text }
report-care = VORSICHT: { $text }
report-note = Hinweis: { $text }

## identify

report-percent = { $percent } %
report-candidate = { $size } { $connection }, { $form }, { $thread }
report-look-alikes = Verwechselbare Anschlüsse:
report-measure-next = Als Nächstes messen: { $what }

## lay line

report-lay-line-standards = Norm: { LIST($standards) }
report-lay-line-named = Kein Hydraulikschlauch: { LIST($names) }
report-lay-line-none = Keine Schlauchnorm gelesen.
report-lay-line-nearest = Ähnliche Namen: { LIST($standards) }
report-lay-line-dash = Größe: -{ $dash }
report-lay-line-dn = Nennweite: DN { $dn }
report-lay-line-edition = Ausgabe oder Typ: { $edition }
report-lay-line-pressure = Aufgedruckter Betriebsdruck: { $pressure }. Als Wert des Schlauchherstellers verwenden.
report-lay-line-pressure-only = Aufgedruckter Betriebsdruck: { $pressure }.
report-lay-line-date = Datumsangabe: { $date }

## compare

report-field-same = gleich
report-field-better = besser
report-field-differs = anders
report-field-dangerous = GEFAHR
report-about-working_pressure = Betriebsdruck
report-about-hose-dash = Dash-Größe des Schlauchs
report-about-hose-standard = Norm des Schlauchs
report-about-end_a = Ende A
report-about-end_a-shape = Ende A, Bogen
report-about-end_a-material = Ende A, Werkstoff
report-about-end_b = Ende B
report-about-end_b-shape = Ende B, Bogen
report-about-end_b-material = Ende B, Werkstoff
report-about-length_mm = Länge
report-about-clocking_deg = Verdrehwinkel
report-about-bend_radius_mm = Mindestbiegeradius
report-about-max_temperature_c = Höchste Temperatur
report-about-fluid = Medium
report-about-vacuum_bar = Unterdruck
report-about-covers = Schlauchschutz
report-about-ends = Enden
report-compared = { $field } ({ $verdict }): { $reason }
