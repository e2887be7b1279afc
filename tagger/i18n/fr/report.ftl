# The answers of the trade as lines of text: check, identify, compare.

## check

report-cited = { $source }, valeur imprimée : { $printed }
report-unknown = inconnue
report-pressure = Pression de service maximale : { $pressure }
report-pressure-unknown = Pression de service maximale : { $why }
report-pressure-partly = Pression de service maximale : inconnue. { $known }
report-pressure-limited = Pression de service maximale : { $pressure }, limitée par { SAY($part) } ({ $source })
report-pressure-limited-margin = Pression de service maximale : { $pressure }, limitée par { SAY($part) } ({ $source }), { $margin } bar sous l'élément suivant
report-doubt = { $doubt }
report-rating-hose = Tuyau : { $pressure } ({ $source })
report-unrated-hose = Tuyau : { $why }
report-rating-end_a = Extrémité A : { $pressure } ({ $source })
report-unrated-end_a = Extrémité A : { $why }
report-rating-end_b = Extrémité B : { $pressure } ({ $source })
report-unrated-end_b = Extrémité B : { $why }
report-rating-override = Valeur donnée : { $pressure } ({ $source })
report-unrated-override = Valeur donnée : { $why }
report-proof-pressure = Pression d'épreuve : { $pressure }
report-burst-pressure = Pression d'éclatement minimale : { $pressure }
report-length = Longueur : { $length }, { $basis }, +{ $plus } / -{ $minus } mm ({ $source })
report-length-without-tolerance = Longueur : { $length }, { $basis } (tolérance inconnue)
report-clocking = Angle d'orientation : { $angle } ±{ $tolerance } ({ $source })
report-bend-radius = Rayon de courbure minimal (intérieur de la courbe) : { $radius } ({ $source })
report-bend-radius-unknown = Rayon de courbure minimal (intérieur de la courbe) : inconnu (utilisez la valeur du fabricant du tuyau)
report-minimum-temperature = Température minimale du tuyau : { $temperature } ({ $source })
report-torque = Extrémité { $end } : { $torque }, { $basis } ({ $source })
report-torque-screw = Extrémité { $end } : { $torque } par vis, { $basis } ({ $source })
report-counted = Extrémité { $end } : { $counted } ({ $source })
report-tightening-unknown = Extrémité { $end } : couple de serrage inconnu (utilisez la valeur du fabricant d'embouts)
report-nothing-to-tighten = Extrémité { $end } : emboîter jusqu'au verrouillage, rien à serrer
report-danger = DANGER : { $text }
report-care = ATTENTION : { $text }
report-note = Remarque : { $text }

## identify

report-percent = { $percent } %
report-candidate = { $size } { $connection }, { $form }, { $thread }
report-look-alikes = Ressemblances :
report-measure-next = Mesure suivante : { $what }

## lay line

report-lay-line-standards = Norme : { LIST($standards) }
report-lay-line-named = Ce n'est pas un tuyau hydraulique : { LIST($names) }
report-lay-line-none = Aucune norme de tuyau n'a été lue.
report-lay-line-nearest = Noms proches : { LIST($standards) }
report-lay-line-dash = Module : -{ $dash }
report-lay-line-dn = Diamètre nominal : DN { $dn }
report-lay-line-edition = Édition ou type : { $edition }
report-lay-line-pressure = Pression de service imprimée : { $pressure }. Utilisez-la comme valeur du fabricant du tuyau.
report-lay-line-pressure-only = Pression de service imprimée : { $pressure }.
report-lay-line-date = Code de date : { $date }

## compare

report-field-same = identique
report-field-better = meilleur
report-field-differs = différent
report-field-dangerous = DANGER
report-about-working_pressure = Pression de service
report-about-hose-dash = Module du tuyau
report-about-hose-standard = Norme du tuyau
report-about-end_a = Extrémité A
report-about-end_a-shape = Extrémité A, coude
report-about-end_a-material = Extrémité A, matière
report-about-end_b = Extrémité B
report-about-end_b-shape = Extrémité B, coude
report-about-end_b-material = Extrémité B, matière
report-about-length_mm = Longueur
report-about-clocking_deg = Angle d'orientation
report-about-bend_radius_mm = Rayon de courbure minimal
report-about-max_temperature_c = Température maximale
report-about-fluid = Fluide
report-about-vacuum_bar = Dépression
report-about-covers = Gaines et protections
report-about-ends = Extrémités
report-compared = { $field } ({ $verdict }) : { $reason }
