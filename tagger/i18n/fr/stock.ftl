# Fittings, crimp cards and hoses of the shop; the cut length


## Fittings of the shop

stock-not-of-a-row = Cette donnée concerne un flexible, pas la liste des embouts.
    .mend = Supprimez-la ici.
stock-cut-off-incomplete = Un retrait de coupe se compose d'une longueur et du point où il finit.
    .mend = Indiquez les deux. Il finit à : { LIST($kinds, style: "or") }.
stock-source-missing = La source de ces cotes manque.
    .mend = Indiquez le document du fabricant.
stock-rating-incomplete = Une pression nominale exige sa valeur et sa source.
    .mend = Indiquez les deux.
stock-cut-off-inside = Un retrait de coupe mesuré jusqu'à l'entrée de la jupe dépasse la profondeur d'insertion, { $insertion }.
    .mend = Vérifiez les deux cotes et le point où finit le retrait.
stock-reach-too-small = La référence { $number } mesure { $reach } du siège à l'entrée de sa jupe ; une extrémité sertie de ce tuyau prend au moins { $least } ({ $source }).
    .mend = Vérifiez son retrait de coupe et sa profondeur d'insertion dans la liste des embouts, et leur unité : elles sont lues en mm.
stock-cut-off-too-small = La référence { $number } a { $cut_off } du siège à la butée du tuyau ; aucune extrémité n'a moins de { $least } ({ $source }).
    .mend = Vérifiez son retrait de coupe dans la liste des embouts, et son unité : il est lu en mm.
stock-not-kept = La référence { $number } n'est pas dans la liste des embouts.
    .mend = Vérifiez la référence, ou ajoutez l'embout à la liste.
stock-not-kept-nearest = La référence { $number } n'est pas dans la liste des embouts.
    .mend = Utilisez l'une des plus proches : { LIST($nearest, style: "or") }. Ou ajoutez l'embout à la liste.
stock-another-end = La référence { $number } désigne un autre embout : { $kept }. La spécification indique : { $given }.
    .mend = Vérifiez l'embout en main, puis corrigez la référence ou l'extrémité.
stock-twice = La référence { $number } figure deux fois.
    .mend = Supprimez l'une des lignes.

## Cut length

stock-cut-arithmetic = { $overall } mm − { $a } − { $b } = { $cut } mm
stock-cut-term-butt = { $cutoff } mm ({ $end })
stock-cut-term-mouth = ({ $cutoff } mm − { $insertion } mm d'insertion) ({ $end })
stock-cut-no-fitting = Le retrait de coupe { SAY($end, case: "of") } n'est pas connu : indiquez la référence de l'embout.
stock-cut-no-cut-off = Le retrait de coupe { SAY($end, case: "of") } n'est pas connu : { $number } n'en a pas dans la liste des embouts. Indiquez-y la valeur du fabricant.
stock-cut-no-insertion = Le retrait de coupe { SAY($end, case: "of") } finit à l'entrée de la jupe, et la profondeur d'insertion de { $number } n'est pas connue. Indiquez la valeur du fabricant dans la liste des embouts.
stock-cut-thread-end = La longueur totale va jusqu'au bout du filetage { SAY($end, case: "of") }, mais le retrait de coupe de { $number } part du siège. Indiquez la longueur jusqu'à la face d'étanchéité.
stock-cut-length = Longueur de coupe : { $length }
stock-cut-unknown = Longueur de coupe : non connue. { $why }
stock-insertion-mark = Repère d'insertion { SAY($end, case: "of") } : { $depth } depuis le bout du tuyau
stock-cut-title = Longueur de coupe
stock-cut-hint = Indiquez les références des deux embouts.
## Crimp card

stock-card-length = Une longueur de fiche de sertissage va de 0 à { $most } mm.
    .mend = Vérifiez la valeur et son unité.
stock-card-not-approved = { SAY($end, case: "start") } : le tuyau { $hose } et la série d'embout { $series } n'ont pas de fiche de sertissage propre. Ils ne sont pas homologués ensemble. Utilisez des composants qui ont une fiche, ou ajoutez celle du fabricant pour cette paire.
stock-card-no-fitting = { SAY($end, case: "start") } : indiquez la référence de l'embout pour voir sa fiche de sertissage.
stock-card-no-series = { SAY($end, case: "start") } : { $number } n'a pas de série d'embout dans la liste ; sa fiche de sertissage n'est donc pas connue. Indiquez-y la série.
stock-card-no-part = { SAY($end, case: "start") } : indiquez la référence du tuyau pour voir sa fiche de sertissage.
stock-insertion-differs = { SAY($end, case: "start") } : la profondeur d'insertion de { $number } est de { $fitting } dans la liste des embouts, mais de { $card } sur la fiche de sertissage. Vérifiez les deux auprès des données du fabricant avant de couper.
stock-card-crimp = { SAY($end, case: "start") } : diamètre de sertissage { $diameter } mm +{ $plus } −{ $minus } mm ({ $series } ; source : { $source })
stock-card-die = Mors : { $die }
stock-card-skive-outside = Dénudage extérieur : { $length } mm
stock-card-skive-inside = Dénudage intérieur : { $length } mm
stock-card-insertion = Profondeur d'insertion : { $length } mm
stock-card-setting = Réglage de la presse : { $setting }
stock-card-title = Fiche de sertissage
stock-rating-below = L'embout { $number } est donné pour { $rating } (source : { $source }), moins que la pression de service de ce flexible, { $pressure }.
    .mend = Indiquez la pression admissible de l'embout pour cette extrémité, afin que la valeur la plus basse s'applique.
## Traveller: the sheet that goes with the parts through the workshop

stock-traveller-title = Fiche suiveuse
stock-traveller-count = Quantité : { $count }
stock-traveller-order = Commande
stock-traveller-due = À livrer le
stock-traveller-hose = Tuyau
stock-traveller-part = Référence du tuyau, lot du touret
stock-traveller-end = Extrémité { $end }
stock-traveller-overall = Longueur totale
stock-traveller-arithmetic = Calcul
stock-traveller-marks = Repères d'insertion
stock-traveller-clocking = Angle de calage
stock-traveller-proof = Épreuve
stock-traveller-proof-value = { $pressure }, maintien d'au moins { $hold } s, avec un liquide
stock-traveller-proof-unknown = non connue : utilisez la valeur du fabricant du tuyau
stock-traveller-clean = Nettoyez l'intérieur après la coupe et après le sertissage. Bouchonnez les deux extrémités jusqu'au montage.
stock-traveller-tag = Étiquette
stock-traveller-cut = Coupé
stock-traveller-crimped = Sertissage { $end } (mm)
stock-traveller-proved = Épreuve réussie
stock-traveller-cleaned = Nettoyé, bouchonné
stock-card-standard-unknown = { $name } n'est pas une norme de tuyau connue.
    .mend = Saisissez une norme des tables, par exemple SAE 100R2.
stock-card-not-a-dash = { $value } n'est pas un module.
    .mend = Saisissez le module, par exemple 12 (3/4 in).
stock-card-no-dash = Le module manque.
    .mend = Saisissez le module, par exemple 12 (3/4 in).
