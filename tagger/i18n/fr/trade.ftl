# What the trade says of an assembly: rating, temperature, lengths, tightening, and parts that do not go together.

## Working pressure: not known. In LIST($parts) the parts stand with their article, without a case

trade-pressure-not-known = La pression de service est inconnue car la pression admissible n'est pas connue pour { LIST($parts) }. Utilisez la valeur du fabricant.
trade-pressure-at-most = La pression de service est inconnue car la pression admissible n'est pas connue pour { LIST($parts) }. Elle ne peut pas dépasser { $pressure }, la pression admissible { SAY($part, case: "of") }. Utilisez la valeur du fabricant.
trade-pressure-unfit = La pression de service est inconnue. { $why }
trade-pressure-unconfirmed = La pression de service saisie, { $entered } (source : { $source }), n'est pas utilisée. Elle dépasse toutes les valeurs des tables pour ce type de pièce : { $part }, { $highest }. Vérifiez l'unité (3000 psi valent 207 bar). Si elle est juste, confirmez-la.
trade-rating-not-known = La pression admissible { SAY($part, case: "of") } est inconnue. { $why }
trade-unfit-hot = Aucune source ne donne de pression pour { $standard } au-dessus de { $limit } ({ $source }).
trade-unfit-fluid = Aucune source ne donne de pression pour { $standard } avec ce fluide : { $fluid } ({ $source }).
trade-unfit-hot-fluid = Aucune source ne donne de pression pour { $standard } au-dessus de { $limit } avec ce fluide : { $fluid } ({ $source }).
trade-why-standard = { $standard } ne figure pas dans les tables.
trade-why-hose = Aucune pression admissible n'est publiée pour { $standard } -{ $dash }.
trade-why-end = Aucune pression admissible n'est publiée pour : { $end }, en { $material }.
trade-why-end-steel = Aucune pression admissible n'est publiée pour : { $end }, en { $material }. Les pressions publiées des embouts ne valent que pour l'acier à bas carbone.
trade-why-end-ceiling = Aucune pression admissible n'est publiée pour : { $end }, en { $material }. La plus haute pression publiée de la famille est { $ceiling } ({ $source }).
trade-why-end-steel-ceiling = Aucune pression admissible n'est publiée pour : { $end }, en { $material }. Les pressions publiées des embouts ne valent que pour l'acier à bas carbone. La plus haute pression publiée de la famille est { $ceiling } ({ $source }).
trade-why-end-condition = La source de la pression pour { $end }, matière { $material }, ne vaut que jusqu'à { $limit }. Saisissez la température maximale, ou utilisez la valeur du fabricant.
trade-why-part-condition = La pression admissible du tuyau { $part } ne vaut que jusqu'à { $limit }. Saisissez la température maximale, ou utilisez la valeur du fabricant.

## Working pressure: known, with something to be said of it

trade-same-thread = { SAY($part, case: "start") } : aucun calibre ne distingue { LIST($families) }. La plus basse des deux pressions admissibles s'applique.
trade-rating-unverified = La pression admissible { SAY($part, case: "of") }, { $pressure }, n'est pas vérifiée (source : { $source }). Confirmez-la avec les données du fabricant.
trade-graded = { $source } ; { $grade }
trade-grade-standard = norme consultée
trade-grade-document = document d'un fabricant ou d'une administration consulté
trade-grade-secondary = tableau de seconde main
trade-grade-practice = usage courant
trade-grade-unverified = valeur non vérifiée, aucune source publiée disponible
trade-grade-shop = valeur propre à l'atelier
trade-grade-given = valeur saisie avec sa source
trade-burst-not-known = { SAY($part, case: "start") } : pour les coupleurs rapides et les raccords à agrafe, on trouve des pressions d'éclatement à partir de 3 fois la pression de service. La pression d'éclatement minimale du flexible n'est pas connue : utilisez la valeur du fabricant.
trade-outside-standard = -{ $dash } n'est pas un module de { $standard } : la pression admissible est celle d'un seul fabricant. Confirmez-la avec les données du fabricant du tuyau.
trade-edition-not-entered = { $standard } -{ $dash } a des pressions admissibles différentes selon l'édition ({ LIST($ratings) }), et aucune édition n'est indiquée. La valeur la plus basse, { $pressure }, s'applique. L'édition figure sur la ligne de marquage.
trade-edition-rating = { $edition } : { $pressure }
trade-pressure-entered = La pression de service est la valeur saisie (source : { $source }).
trade-pressure-entered-for = La pression de service est la valeur saisie (source : { $source }). Elle remplace la pression admissible manquante pour { LIST($parts) }.
trade-pressure-too-high = La pression saisie, { $entered } (source : { $source }), dépasse la pression admissible { SAY($part, case: "of") }, { $pressure }. La valeur la plus basse s'applique.
trade-pressure-too-high-for = La pression saisie, { $entered } (source : { $source }), dépasse la pression admissible { SAY($part, case: "of") }, { $pressure }. La valeur la plus basse s'applique. Elle remplace la pression admissible manquante pour { LIST($parts) }.
trade-pressure-beyond-hose = La pression saisie, { $entered }, dépasse la pression admissible du tuyau dans ses limites, { $pressure } (source : { $source }). La valeur la plus basse s'applique.

## A manufacturer's value of one part: entered, kept by the shop, or asked for

trade-rating-too-high = La valeur du fabricant saisie pour { SAY($part) }, { $entered } (source : { $source }), dépasse la valeur publiée, { $pressure }. La valeur la plus basse s'applique.
trade-rating-not-lifted = { SAY($part, case: "start") } : la valeur du fabricant saisie, { $entered } (source : { $source }), ne s'applique pas. Au-delà d'une limite de fluide ou de chaleur, elle ne compte que si sa source nomme le fluide et la température maximale de ce flexible : saisissez les deux avec elle, ainsi que la température maximale du flexible.
trade-rating-other-fluid = { SAY($part, case: "start") } : la valeur du fabricant saisie, { $entered } (source : { $source }), ne s'applique pas : sa source nomme un autre fluide que celui de ce flexible ({ $fluid }).
trade-rating-too-hot = { SAY($part, case: "start") } : la valeur du fabricant saisie, { $entered } (source : { $source }), ne s'applique pas : sa source ne la donne que jusqu'à { $limit }. Saisissez la température maximale du flexible, ou une valeur valable à cette température.
trade-rating-unconfirmed = { SAY($part, case: "start") } : la valeur du fabricant saisie, { $entered } (source : { $source }), n'est pas utilisée. Elle dépasse toutes les valeurs des tables pour ce type de pièce, { $highest }. Vérifiez l'unité (3000 psi valent 207 bar). Si elle est juste, confirmez-la.
trade-rating-unpublished = { SAY($part, case: "start") } : la valeur du fabricant saisie, { $entered } (source : { $source }), n'est pas utilisée. Elle dépasse toutes les valeurs publiées pour cette pièce, { $highest }. Vérifiez l'unité (3000 psi valent 207 bar). Si la source la donne bien pour cette pièce, confirmez-la.
trade-rating-impossible = Aucune pièce de ce type ne travaille au-dessus de { $limit }.
    .mend = Vérifiez l'unité : 3000 psi valent 207 bar.
trade-rating-confirm = { $entered } dépasse toutes les valeurs des tables pour ce type de pièce : { $part }, { $highest }.
    .mend = Vérifiez l'unité : 3000 psi valent 207 bar. Si la valeur est juste, confirmez-la.
trade-rating-confirm-unpublished = { $entered } dépasse toutes les valeurs publiées pour cette pièce : { $part }, { $highest }.
    .mend = Vérifiez l'unité : 3000 psi valent 207 bar. Si la source donne bien cette valeur pour cette pièce, confirmez-la.
trade-rating-by-shop = { SAY($part, case: "start") } : { $pressure } est la valeur de votre atelier (source : { $source }).
trade-rating-by-given = { SAY($part, case: "start") } : { $pressure } est la valeur du fabricant qui a été saisie (source : { $source }).
trade-rating-above-published = { SAY($part, case: "start") } : { $pressure } (source : { $source }) dépasse toutes les valeurs publiées pour cette pièce ; la plus haute est { $highest }. Assurez-vous que c'est bien la pièce dont parle la source.
trade-ask-rating-hose = Saisissez la pression de service du fabricant du tuyau avec sa source. Votre atelier peut la conserver pour tous les flexibles suivants.
trade-ask-rating-end = { SAY($part, case: "start") } : saisissez la pression de service du fabricant de l'embout avec sa source. Votre atelier peut la conserver pour tous les flexibles suivants.
trade-ask-approval = Saisissez l'autorisation du fabricant du tuyau pour ce fluide ({ $fluid }), avec sa température maximale et sa source. Votre atelier peut la conserver pour tous les flexibles suivants.
trade-keep-not-used = Cette valeur ne détermine pas la pièce ici ; elle n'est donc pas conservée.
    .mend = Vérifiez la valeur, l'unité et ce que nomme sa source ; l'avertissement à côté en dit la raison.
trade-keep-series = La série de cette extrémité n'est pas indiquée : une valeur de la série lourde ne doit pas valoir pour la légère.
    .mend = Saisissez la série, S ou L, avant de conserver la valeur.
trade-keep-part = La référence du tuyau chez son fabricant manque : une autorisation ne vaut que pour ce tuyau.
    .mend = Saisissez la référence du tuyau.
trade-keep-nothing = Il n'y a aucune valeur de fabricant à conserver.
    .mend = Saisissez une valeur avec sa source pour le tuyau ou une extrémité.

## Temperature and fluid

trade-too-hot = { $given } dépasse la température maximale de { $standard }, { $limit } ({ $source }). Aucune réduction de pression n'est publiée : utilisez un tuyau prévu pour cette température.
trade-too-cold = { $given } est en dessous de la température minimale de { $standard }, { $limit } ({ $source }). Utilisez un tuyau prévu pour cette température.
trade-cold-limit-of-fluid = Avec ce fluide ({ $fluid }), { $standard } a une température minimale de { $limit } ({ $source }). Ne l'utilisez pas en dessous.
trade-fluid-not-suited = { $standard } ne convient pas à ce fluide : { $fluid } ({ $source }). Utilisez un tuyau prévu pour ce fluide.
trade-too-hot-for-fluid = Avec ce fluide ({ $fluid }), { $standard } a une température maximale de { $limit } ({ $source }), mais la spécification indique { $given }.
trade-unfit-fluid-unnamed = Aucune source ne dit que { $standard } convient pour le fluide suivant : { $fluid }.
trade-fluid-unnamed = Aucune source ne dit que { $standard } convient pour le fluide suivant : { $fluid }. Aucune pression n'est donc valable. Demandez au fabricant du tuyau, et saisissez la pression admise avec le fluide et la température maximale que nomme la source.
trade-fluid-approved = { $standard } peut transporter ce fluide ({ $fluid }) jusqu'à { $limit } selon l'autorisation de son fabricant ({ $source }). Elle ne vaut que pour le tuyau de ce fabricant : assurez-vous que c'est bien lui.
trade-fluid-approved-beyond = { $standard } peut transporter ce fluide ({ $fluid }) jusqu'à { $limit } selon l'autorisation de son fabricant ({ $source }), qui va au-delà de ce que permettent les sources publiées. Elle ne vaut que pour le tuyau de ce fabricant : assurez-vous que c'est bien lui.
trade-fluid-as-oil = Aucune source ne nomme le fluide suivant pour { $standard } : { $fluid }. Il est traité comme une huile minérale : faites-le confirmer par le fabricant du tuyau.
trade-pressure-not-lifted = La pression saisie, { $entered } (source : { $source }), n'est pas valable. Elle ne compte au-delà d'une limite de fluide ou de température que si sa source nomme le fluide et la température maximale de ce flexible : saisissez les deux avec elle.
trade-overrated = Ce flexible a été enregistré pour { $was }. D'après les valeurs actuelles, il admet { $now } au plus. Utilisez la valeur la plus basse.
trade-overrated-at_most = Ce flexible a été enregistré pour { $was } au plus. D'après les valeurs actuelles, c'est { $now } au plus. Utilisez la valeur la plus basse.
trade-overrated-no-longer = Ce flexible a été enregistré pour { $was }. D'après les valeurs actuelles, aucune pression n'est valable. { $why } Ne l'utilisez pas avant que l'atelier vous ait indiqué sa pression de service.

## Lengths and bends

trade-vacuum-not-known = Aucune source ne dit quelle dépression supporte { $standard } -{ $dash }. Demandez au fabricant du tuyau.
trade-vacuum-too-deep = { $standard } -{ $dash } supporte { $rated } ({ $source }), mais la spécification demande { $asked } : le tuyau peut s'écraser. Utilisez un tuyau d'aspiration prévu pour cette dépression.
trade-vacuum-unverified = La dépression admissible de { $standard } -{ $dash }, { $rated }, n'est pas vérifiée (source : { $source }). Confirmez-la par les données du fabricant du tuyau.
trade-length-tolerance-unverified = La tolérance de longueur n'est pas vérifiée (source : { $source }). Confirmez-la avec les données du fabricant du tuyau.
trade-length-tolerance-not-known = La tolérance de longueur est inconnue : aucune tolérance n'est publiée pour cette longueur et ce diamètre. Utilisez la valeur du fabricant du tuyau.
trade-bend-not-known = Le rayon de courbure minimal est inconnu. Utilisez la valeur du fabricant du tuyau.
trade-bend-unverified = Le rayon de courbure minimal, { $radius }, n'est pas vérifié (source : { $source }). Confirmez-le avec les données du fabricant du tuyau.
trade-too-short-to-bend = Une courbe à 90° au rayon de courbure minimal demande { $needed } de tuyau, mais le flexible ne mesure que { $length }. Montez-le presque droit ({ $source }).
trade-length-under-ends = Les deux embouts sertis sont à eux seuls plus longs : au moins { $ends } ({ $source }).
    .mend = Vérifiez la longueur et son unité.
trade-length-unconfirmed = { $length } dépasse { $most }.
    .mend = Vérifiez l'unité. Si la longueur est juste, confirmez-la.
trade-little-free-hose = Il reste au plus { $free } de tuyau libre entre les embouts sertis. Le tuyau droit aux deux extrémités demande { $needed } ({ $source }).
trade-median = Médiane de { $count } valeurs de fabricants, { $low } à { $high }
trade-length-too-short = Le flexible n'est pas plus long que ses deux extrémités ensemble, { $ends }.
    .mend = Contrôlez la longueur et les cotes des extrémités.
trade-dimension-missing = Cette cote est nécessaire pour convertir la longueur.
    .mend = Saisissez-la en mm, d'après le plan du fabricant d'embouts.

## Parts that do not exist or do not go together

trade-standard-read-as = { $given } est lu comme { $standard }.
trade-standard-not-known = { $given } ne figure pas dans les tables : seules les valeurs saisies s'appliquent.
trade-not-a-standard = { $standard } n'est pas une norme de tuyau des tables.
    .mend = Utilisez l'une de celles-ci : { LIST($standards, style: "or") }. Pour tout autre tuyau, saisissez la pression de service et sa source.
trade-layline-pressures = Plusieurs pressions de service sont imprimées sur le tuyau : la plus basse s'applique.
trade-layline-sizes = Les tailles imprimées sur le tuyau ne concordent pas : { LIST($sizes) }. Saisissez la taille.
trade-layline-pressure-above = La pression imprimée, { $pressure }, dépasse toutes les valeurs publiées pour ce tuyau dans cette taille ({ LIST($standards) }) ; la plus haute est { $highest }. Vérifiez la taille et l'unité imprimées sur le tuyau (3000 psi valent 207 bar).
trade-layline-pressure-impossible = La pression imprimée, { $pressure }, n'est pas utilisée : aucun tuyau de ce type ne travaille au-dessus de { $limit }. Vérifiez l'unité imprimée sur le tuyau (3000 psi valent 207 bar).
trade-carries-air_brake = air comprimé pour freins
trade-carries-fuel = essence, gazole et biodiesel
trade-carries-marine_fuel = carburant de petits bateaux
trade-carries-lpg = GPL
trade-carries-military = ce que nomme sa spécification
trade-carries-power_steering = fluide de direction assistée
trade-carries-refrigerant = fluide frigorigène ; le flexible est certifié dans son ensemble
trade-carries-steam = vapeur saturée
trade-other-hose = { $standard } n'est pas un tuyau hydraulique. Il transporte : { $carries }.
    .mend = Saisissez la pression de service du fabricant du tuyau avec sa source, et le fluide.
trade-other-hose-fluid = { $standard } n'est pas prévu pour ce fluide. Il transporte : { $carries }.
    .mend = Saisissez le fluide transporté, ou utilisez un autre tuyau.
trade-jetting-hose = { $standard } est un tuyau de nettoyage à haute pression : sa pression laisse moins de marge avant l'éclatement et ne vaut pas pour l'hydraulique.
    .mend = Utilisez un tuyau hydraulique.
trade-not-a-standard-nearest = { $standard } n'est pas une norme de tuyau des tables.
    .mend = Vérifiez l'orthographe : { LIST($nearest, style: "or") } ? Pour tout autre tuyau, saisissez la pression de service et sa source.
trade-not-a-hose-size = { $dash } n'est pas un module de { $standard }.
    .mend = Utilisez l'un de ceux-ci : { LIST($sizes, style: "or") }.
trade-not-a-size = { $size } n'est pas une taille de ce raccordement : { $connection }.
    .mend = Utilisez l'une de celles-ci : { LIST($sizes, style: "or") }.
trade-not-a-form = Ce raccordement n'existe pas sous cette forme ({ $form }) : { $connection }.
    .mend = Utilisez l'une de celles-ci : { LIST($forms, style: "or") }.
trade-not-a-form-instead = Ce raccordement n'existe pas sous cette forme ({ $form }) : { $connection }.
    .mend = Pour une femelle tournante qui reçoit son mâle, choisissez { $instead }.
trade-not-a-series = Ce raccord n'a pas de série : { $connection }.
    .mend = Effacez la série.
trade-not-this-series = Cette série n'existe pas pour le raccord { $connection }.
    .mend = Utilisez : { LIST($series, style: "or") }.
trade-dash-names-tube = Le module (dash) de { $standard } désigne le tube, non le diamètre intérieur : -{ $dash } a un diamètre intérieur de { $bore }. Utilisez les raccords prévus pour ce tuyau ; une tétine pour un autre tuyau -{ $dash } ne convient pas.
trade-tail-for-another-hose = La tétine de l'embout est pour tuyau -{ $tail }, mais le tuyau est -{ $hose }.
    .mend = Utilisez un embout à tétine -{ $hose }, ou du tuyau -{ $tail }.
trade-end-for-another-hose = { $size } { $connection } est fait pour du tuyau { LIST($usual, style: "or") }, mais le tuyau est -{ $hose }.
    .mend = Si l'embout est réduit ou augmenté, réglez la tétine de cette extrémité (hose_dash) sur { $hose }. Sinon, corrigez la taille.
trade-jump-size = { SAY($part, case: "start") } a un embout réduit ou augmenté : { $size } { $connection } sur tuyau -{ $hose } (habituel : { LIST($usual, style: "or") }).
trade-edition-too-new = { $year } est postérieur à { $newest }, la dernière édition des tables.
    .mend = Effacez-la pour appliquer la valeur la plus basse, ou saisissez l'édition imprimée sur le tuyau.
trade-edition-not-known = { $edition } n'est pas une édition de { $standard } dans les tables.
    .mend = Utilisez l'une de celles-ci : { LIST($editions, style: "or") }.
trade-edition-none = { $edition } n'est pas une édition de { $standard } dans les tables.
    .mend = Effacez-la : cette norme n'a qu'un seul jeu de valeurs.

## Tightening. $joint is what the source calls the joint; lubrication follows it in lower case

trade-tightening-not-known = { SAY($part, case: "start") } : le serrage est inconnu. Utilisez la valeur du fabricant d'embouts.
trade-torque-by-ring = { SAY($part, case: "start") } : le serrage dépend de la bague d'étanchéité et de la vis ou de l'élément mâle, qui diffèrent : { LIST($torques) }. Utilisez la valeur du fabricant du raccord pour sa bague.
trade-two-rigid-ends = Aucune extrémité n'est tournante : toutes deux font tourner le tuyau entier quand on les visse. Le montage est possible avec un raccord union ou un adaptateur tournant à une extrémité.
trade-no-nut-at-either-end = Aucune extrémité n'a d'écrou. L'une au moins des pièces opposées doit en avoir un ; sinon, utilisez un raccord union ou un adaptateur tournant.
trade-mating-nut-needed = { SAY($part, case: "start") } n'a pas d'écrou et l'autre extrémité n'est pas tournante. La pièce opposée doit avoir un écrou ; sinon, utilisez un raccord union ou un adaptateur tournant.
trade-torque-series = { SAY($part, case: "start") } : aucun couple ni nombre de pans n'est indiqué, car la série n'est pas précisée. Un embout de la série lourde (S) demande plus que la série légère (L) : au couple de la série légère, il se desserre. Indiquez la série, ou utilisez la valeur du fabricant du raccord.
trade-stud-not-nut = { SAY($part, case: "start") } : ce couple est celui d'un élément mâle étanché par une rondelle ou un joint torique dans un orifice. Un écrou sur cône à 60° supporte moins : pour un écrou, utilisez la valeur du fabricant du raccord.
trade-tightening-soft-flange = { SAY($part, case: "start") } : le serrage est inconnu. Les vis d'une bride restent en acier, aucun effort de serrage n'est publié pour les collerettes en { $material }, et la moitié du couple de l'acier pourrait fuir. Utilisez la valeur du fabricant d'embouts.
trade-torque-unverified = { SAY($part, case: "start") } : le couple de serrage n'est pas vérifié (source : { $source }). Confirmez-le avec les données du fabricant d'embouts.
trade-soft-material = { SAY($part, case: "start") } : { $material }, couple de serrage plus faible que pour l'acier ; aucun nombre de pans n'est publié pour cette matière.
trade-torque-basis = { $joint }, { $lubrication }
trade-torque-basis-screw = { $joint }, { $lubrication }, par vis { $screw }, { $grade ->
    [none] classe de qualité non précisée
   *[other] classe { $grade }
 }
trade-screw-class-not-stated = { SAY($part, case: "start") } : la source de ce couple ({ $source }) ne précise pas la classe de qualité des vis { $screw }. Lisez la classe sur les têtes et demandez son couple au fabricant de la bride.
trade-screw-class-tables = { SAY($part, case: "start") } : la source de ce couple ({ $source }) ne précise pas la classe de qualité des vis { $screw }. Les tables générales de visserie, qui ne sont pas des tables de brides, donnent par classe { LIST($torques) }. Lisez la classe sur les têtes et demandez son couple au fabricant de la bride.
trade-torque-of-class = { $grade } : { $torque }
trade-screw-class-needed = { SAY($part, case: "start") } : les vis doivent être de classe { LIST($classes, style: "or") } (non vérifié, source : { $source }). N'utilisez jamais de vis plus faibles.
trade-other-screws = { SAY($part, case: "start") } : le couple indiqué vaut pour des vis { $screw }. La même bride existe avec des vis d'une autre taille ou classe : { LIST($torques) }. Regardez lesquelles sont montées.
trade-torque-of-screw = { $screw } ({ $grade ->
    [none] classe non précisée
   *[other] classe { $grade }
 }) : { $torque } ({ $source })
trade-torque-basis-reduced = { $joint }, { $lubrication }, { $percent } % de la valeur de l'acier pour { $material } ({ $source })
trade-torque-basis-shared = { $basis }, plage commune à { $count } sources
trade-torque-basis-others = { $basis }, autres sources { $others }
trade-torque-of-source = { $torque } ({ $joint } : { $source })
trade-torque-sources-disagree = { SAY($part, case: "start") } : les sources du couple ne concordent pas : { LIST($torques) }. Utilisez la valeur du fabricant du raccord.
trade-flats-of-source = { $flats } ({ $source })
trade-flats-sources-disagree = { SAY($part, case: "start") } : les sources du nombre de pans ne concordent pas : { LIST($flats) }. Utilisez la valeur du fabricant du raccord.
trade-flats-two-bases = { SAY($part, case: "start") } : comptez les pans { $basis } (source : { $source }) ; une autre source ({ $contrary }) donne le même nombre { $other }.
trade-spread = { LIST($values) } ({ $joint }{ $screw ->
    [none] { "" }
   *[other] , vis { $screw }
 }{ $sizes ->
    [all] , toutes tailles
   *[one] { "" }
 }) : { $source }
trade-spread-material = { LIST($values) } ({ $joint }{ $screw ->
    [none] { "" }
   *[other] , vis { $screw }
 }, { $material }{ $sizes ->
    [all] , toutes tailles
   *[one] { "" }
 }) : { $source }
trade-aluminium-port = dans un orifice en aluminium
trade-lubrication-not_stated = lubrification non indiquée
trade-lubrication-lightly_oiled = légèrement huilé
trade-lubrication-lubricated = lubrifié
trade-lubrication-run_on_dry = couple pour assemblage lubrifié, écrou vissé à sec jusqu'au contact
trade-lubrication-dry = à sec
trade-lubrication-threads = filetages lubrifiés
trade-lubrication-threads_fluid_or_grease = filetages lubrifiés (fluide hydraulique, pâte antigrippage ou vaseline)
trade-lubrication-threads_engine_oil = filetages huilés à l'huile moteur
trade-lubrication-sealant_two_threads_bare = produit d'étanchéité, les deux premiers filets laissés nus
trade-lubrication-sealed = filetage avec produit d'étanchéité
trade-lubrication-lubricated_or_sealed = lubrifié ou avec produit d'étanchéité
trade-lubrication-o_ring_oiled = joint torique huilé
trade-lubrication-o_ring_system_oil = lubrifié (huile du circuit sur le joint torique)
trade-lubrication-o_ring_hydraulic_fluid = lubrifié (fluide hydraulique propre sur le joint torique)
trade-lubrication-o_ring_and_threads = joint torique et filetages lubrifiés

## Files of the tables

trade-not-a-folder = { $folder } n'est pas un dossier.
    .mend = Saisissez le dossier qui contient les fichiers CSV.
trade-not-a-table = { $file } n'est pas l'une des tables.
    .mend = Utilisez l'une de celles-ci : { LIST($tables, style: "or") }.
trade-wrong-columns = { $file } n'a pas les bonnes colonnes : { LIST($columns) }.
    .mend = Corrigez la ligne d'en-tête.
trade-cell-not-read = Cette cellule est illisible.
    .mend = Corrigez la cellule.
trade-row-not-above-zero = La valeur doit être supérieure à 0.
    .mend = Corrigez la cellule.
trade-row-negative = La valeur ne peut pas être négative.
    .mend = Corrigez la cellule.
trade-row-range = Le minimum, { $low }, est supérieur au maximum, { $high }.
    .mend = Corrigez l'un des deux.
trade-row-above-possible = La valeur dépasse { $limit }, le maximum plausible ici.
    .mend = Vérifiez l'unité de la colonne : 3000 psi valent 207 bar.
trade-row-no-source = La ligne n'indique pas de source.
    .mend = Saisissez l'origine de la valeur. Exemple : fiche technique 7 du fabricant.
trade-row-no-maximum = Un couple minimal exige son maximum.
    .mend = Saisissez le couple maximal.
trade-row-taper-flats = Les filetages coniques ne se serrent pas par pans.
    .mend = Saisissez plutôt des tours entiers.
trade-row-unknown-word = Ce mot n'est pas connu ici.
    .mend = Utilisez l'un de ceux-ci : { LIST($words, style: "or") }.
trade-row-printed-not-read = La valeur imprimée est illisible.
    .mend = Saisissez-la avec son unité, telle que la source l'imprime, ou laissez la cellule vide. Exemple : 3000 psi.
trade-row-printed = La ligne se contredit : { $column } vaut { $given }, mais { $printed } correspond à { $found }.
    .mend = Corrigez la valeur ou la valeur imprimée.


## Whether one assembly may take the place of another: "old" is the one to be replaced, "new" the one to replace it

trade-verdict-replaces = Le nouveau flexible remplace l'ancien.
trade-verdict-with-care = Le nouveau flexible peut remplacer l'ancien, avec des différences.
trade-verdict-does-not-replace = Le nouveau flexible ne remplace pas l'ancien.
trade-compare-values = Ancien : { $old }, nouveau : { $new }.
trade-compare-both = Les deux : { $both }.
trade-compare-not-specified = non indiqué
trade-compare-none = aucun
trade-compare-pressure-same-parts = Mêmes pièces ; pression de service inconnue.
trade-compare-pressure-by-part = La pression de service de l'ancien flexible est inconnue, mais aucune pièce du nouveau n'est plus faible.
trade-compare-alike = Ancien : { $old }, nouveau : { $new }. { $how }
trade-compare-turned = Montez le nouveau flexible dans l'autre sens : son extrémité A prend la place de l'extrémité B. L'angle d'orientation reste le même.
trade-compare-pressure-not-known = { $which ->
    [old] La pression de service de l'ancien flexible est inconnue. Saisissez-la dans la spécification avec sa source.
    [new] La pression de service du nouveau flexible est inconnue. Saisissez-la dans la spécification avec sa source.
   *[both] La pression de service des deux flexibles est inconnue. Saisissez-la dans leurs spécifications avec sa source.
 }
trade-compare-pressure-lower = La pression de service du nouveau flexible est plus basse. Ancien : { $old }, nouveau : { $new }.
trade-compare-bore = Le module (dash) de l'un des tuyaux désigne le tube : les diamètres intérieurs sont { $old } et { $new }.
trade-compare-dash-smaller = Le nouveau tuyau est -{ $new }, plus petit que -{ $old } : moins de débit, plus de chaleur.
trade-compare-dash-larger = Le nouveau tuyau est -{ $new }, plus grand que -{ $old }. Vérifiez la place disponible.
trade-compare-suction = Ancien : { $old }, un tuyau d'aspiration ; nouveau : { $new }. Un tuyau de pression peut s'écraser sous la dépression.
trade-compare-described = { $old } et { $new } sont décrits par des mots. Comparez les pièces elles-mêmes.
trade-compare-series = { $old } et { $new } : les séries lourde (S) et légère (L) diffèrent par le couple et la pression admissible. Déterminez de laquelle il s'agit.
trade-compare-material = Ancien : { $old }, nouveau : { $new }. Vérifiez la tenue à la corrosion et la pression admissible du fabricant.
trade-compare-shape = Ancien : { $old }, nouveau : { $new }. Le cheminement du tuyau change.
trade-compare-length-basis = Ancien : mesuré { $old } ; nouveau : mesuré { $new }. Les longueurs ne sont pas comparables. Mesurez les deux entre les mêmes points.
trade-compare-length-no-tolerance = Ancien : { $old }, nouveau : { $new }. Aucune tolérance n'est connue pour l'ancien.
trade-compare-length-within = Ancien : { $old }, nouveau : { $new }. Dans la tolérance, +{ $plus } / -{ $minus }.
trade-compare-length-short = Ancien : { $old }, nouveau : { $new }. Trop court : le tuyau serait sous tension.
trade-compare-length-long = Ancien : { $old }, nouveau : { $new }. Trop long : le tuyau peut frotter ou se plier.
trade-compare-clocking-none = Pas d'angle d'orientation : aucun des deux n'a deux coudes.
trade-compare-clocking-within = Ancien : { $old }, nouveau : { $new }. Dans la tolérance, ±{ $allowed }.
trade-compare-clocking-off = Ancien : { $old }, nouveau : { $new }. Écart de { $off } : le tuyau serait vrillé.
trade-compare-bend-not-known = Le rayon de courbure minimal n'est pas connu pour les deux.
trade-compare-bend-same-hose = Le rayon de courbure minimal est inconnu, mais le tuyau est le même.
trade-compare-bend-larger = Ancien : { $old }, nouveau : { $new }. Ne courbez pas le nouveau aussi serré que l'ancien.
trade-compare-temperature-none = Aucune température n'est indiquée pour l'ancien, et la limite de son tuyau est inconnue.
trade-compare-temperature-same-hose = La limite de température est inconnue, mais le tuyau est le même.
trade-compare-temperature-limits = Aucune température n'est indiquée pour l'ancien : son tuyau est prévu jusqu'à { $old }, le nouveau jusqu'à { $new }.
trade-compare-temperature-not-known = L'ancien est utilisé jusqu'à { $old } ; la limite du nouveau est inconnue.
trade-compare-temperature = L'ancien est utilisé jusqu'à { $old } ; le nouveau tuyau est prévu jusqu'à { $new }.
trade-compare-vacuum = L'ancien est utilisé à { $old } ; le nouveau est prévu pour { $new }.
trade-compare-fluid-none = Aucun fluide n'est indiqué pour les deux.
trade-compare-fluid-no-source = Les deux pour ce fluide : { $fluid }. Aucune source ne dit que { $standard } y convient. Consultez le fabricant du tuyau.
trade-compare-fluid-ask = Ancien : { $old }, nouveau : { $new }. Consultez le fabricant du tuyau.
trade-compare-fluid-unknown = Ancien : { $old }, nouveau : { $new }. Aucune source ne dit que le nouveau tuyau convient au fluide de l'ancien.
trade-compare-covers-missing = Il manque au nouveau : { LIST($covers) }.
trade-compare-covers-added = Le nouveau a en plus : { LIST($covers) }.
trade-compare-covers-same = Les mêmes protections du tuyau.


## What the check of the tables finds; $row names the table and the row

trade-check-duplicate = { $row } : { $count } lignes ont la même clé.
trade-check-no-source = { $row } : la ligne n'a pas de source.
trade-check-unknown-word = { $row } : { $given } n'est pas connu dans la colonne { $column }.
trade-check-memory-source = { $row } : une ligne donnée de mémoire ou par jugement doit le dire au début de sa source.
trade-check-diameter = { $row } : { $thread } a un diamètre de { $found } mm, la ligne indique { $given } mm.
trade-check-pitch = { $row } : { $thread } a un pas de { $found } mm, la ligne indique { $given } mm.
trade-check-tpi = { $row } : { $tpi } filets par pouce et un pas de { $given } mm ne concordent pas.
trade-check-minor = { $row } : le diamètre intérieur de la femelle, { $given } mm, n'est pas D - { $height } P.
trade-check-minor-size = { $row } : le diamètre intérieur de la femelle, { $given } mm, n'est pas entre 0 et { $od } mm.
trade-check-pressure = { $row } : { $printed } font { $found } bar, la ligne indique { $given } bar.
trade-check-not-larger = { $row } : cette taille n'est pas plus grande que { $smaller }.
trade-check-wrong-way = { $row } : à la taille { $size }, les valeurs vont dans le mauvais sens, de { $before } à { $after }.
trade-check-bend = { $row } : le rayon de courbure minimal est { $radius } mm, mais { $before } mm pour le -{ $small }, plus petit.
trade-check-range = { $row } : { $low } est supérieur à { $high }.
trade-check-taper-flats = { $row } : un filetage conique ne se serre pas en pans.
trade-check-flats = { $row } : { $flats } n'est pas un nombre de pans de serrage.
trade-check-not-a-size = { $row } : { $size } n'est pas une taille de la famille.
trade-check-not-a-standard = { $row } : la norme ne figure pas dans hose_standards.
trade-check-no-pressure = { $row } : la norme n'a pas de pression.
trade-check-no-family = { $row } : la famille manque.
trade-check-tighten-by = { $row } : il faut nommer ce qui se tourne, sauf pour un filetage conique.
trade-check-shares = { $row } : les parts des sièges font { $sum }, et non 1.

## Storage and service dates

trade-guidance-only = Simple repère. Remplacez un tuyau immédiatement s'il fuit, s'il est cloqué ou fissuré, ou s'il a été plié.
trade-rule-bulk_hose_years_iso = Tuyau en touret avant assemblage (ISO 8331)
trade-rule-assembly_storage_years_iso = Stockage d'un flexible avant utilisation (ISO 8331)
trade-rule-bulk_hose_years_din = Tuyau en touret avant assemblage (DIN 20066)
trade-rule-assembly_storage_years_din = Stockage d'un flexible avant utilisation (DIN 20066)
trade-rule-assembly_life_years_din = Durée de vie totale d'un flexible, stockage compris (DIN 20066)
trade-rule-bulk_hose_years_tr17165 = Tuyau en touret, stocké selon ISO 2230 (ISO/TR 17165-2)
trade-rule-bulk_hose_years_j1273 = Tuyau en caoutchouc et flexible, 40 trimestres (SAE J1273)


## Warnings of records from before messages: the code and the part are kept, the values are in the record

trade-kept-edition_not_given = Ce tuyau a des pressions admissibles différentes selon l'édition, et aucune édition n'a été indiquée. La valeur la plus basse s'applique. L'édition figure sur la ligne de marquage.
trade-kept-outside_standard = Ce module n'existe pas dans la norme du tuyau : la pression admissible est celle d'un seul fabricant. Confirmez-la avec les données du fabricant du tuyau.
trade-kept-pressure_not_known = La pression de service est inconnue. Utilisez la valeur du fabricant.
trade-kept-pressure_given = La pression de service est la valeur saisie.
trade-kept-pressure_given_too_high = La pression saisie dépasse une pression admissible de ce flexible. La valeur la plus basse s'applique.
trade-kept-rating_not_known = La pression admissible { SAY($part, case: "of") } est inconnue. Utilisez la valeur du fabricant.
trade-kept-rating_from_memory = La pression admissible { SAY($part, case: "of") } n'est pas vérifiée. Confirmez-la avec les données du fabricant.
trade-kept-jump_size = { SAY($part, case: "start") } a un embout réduit ou augmenté.
trade-kept-bend_not_known = Le rayon de courbure minimal est inconnu. Utilisez la valeur du fabricant du tuyau.
trade-kept-bend_from_memory = Le rayon de courbure minimal n'est pas vérifié. Confirmez-le avec les données du fabricant du tuyau.
trade-kept-too_short_to_bend = Le flexible est trop court pour une courbe à 90° au rayon de courbure minimal. Montez-le presque droit.
trade-kept-too_hot = La température dépasse le maximum de la norme du tuyau. Utilisez un tuyau prévu pour cette température.
trade-kept-too_cold = La température est en dessous du minimum de la norme du tuyau. Utilisez un tuyau prévu pour cette température.
trade-kept-cold_limit_of_fluid = Avec ce fluide, la température minimale du tuyau est plus haute. Ne l'utilisez pas en dessous.
trade-kept-fluid_not_known = Aucune source ne dit si le tuyau convient à ce fluide. Consultez le fabricant du tuyau.
trade-kept-fluid_not_suited = Le tuyau ne convient pas à ce fluide. Utilisez un tuyau prévu pour ce fluide.
trade-kept-too_hot_for_fluid = Avec ce fluide, la température dépasse le maximum du tuyau. Utilisez un tuyau prévu pour les deux.
trade-kept-tightening_not_known = { SAY($part, case: "start") } : le serrage est inconnu. Utilisez la valeur du fabricant d'embouts.
trade-kept-torque_from_memory = { SAY($part, case: "start") } : le couple de serrage n'est pas vérifié. Confirmez-le avec les données du fabricant d'embouts.
trade-kept-soft_material = { SAY($part, case: "start") } : le couple de serrage de cette matière est plus faible que celui de l'acier, et aucun nombre de pans n'est publié pour elle.
trade-kept-length_tolerance_from_memory = La tolérance de longueur n'est pas vérifiée. Confirmez-la avec les données du fabricant du tuyau.
trade-kept-length_tolerance_not_known = La tolérance de longueur est inconnue. Utilisez la valeur du fabricant du tuyau.
trade-kept-standard_spelling = La norme du tuyau a été saisie sous une autre écriture.
trade-kept-standard_not_known = La norme du tuyau ne figure pas dans les tables : seules les valeurs saisies s'appliquent.

## Hoses of the shop's own

trade-own-hose-fluid-heat = Le fabricant n'admet un fluide que jusqu'à une température, et elle n'est pas indiquée.
    .mend = Saisissez la température maximale.
trade-own-hose-part = La référence ne contient ni lettre ni chiffre.
    .mend = Saisissez la référence imprimée sur le tuyau.
trade-own-hose-outside = Un diamètre extérieur de { $outside } ne dépasse pas le diamètre intérieur du tuyau, { $bore }. C'est impossible.
    .mend = Vérifiez la valeur et son unité : elle est lue en mm.
trade-own-hose-bend = Un rayon de courbure de { $bend } est inférieur à la largeur du tuyau, { $across }. C'est impossible.
    .mend = Vérifiez la valeur et son unité : elle est lue en mm.
trade-own-hose-rating = jusqu'à { $pressure } (source : { $source })
trade-own-hose-above = jusqu'à { $pressure } (source : { $source }), au-dessus de toutes les valeurs publiées, dont la plus haute est { $highest }
trade-own-hose-twice = La référence { $part } en dash { $dash } figure deux fois dans la liste.
    .mend = Supprimez l'une des deux lignes.
