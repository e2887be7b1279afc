# Which connection an end can be by what was measured, why, and what to measure next.

identify-named = { $size } { $connection }

## In one sentence

identify-nothing = Aucun raccordement des tables ne correspond à ces mesures.
identify-other-seat = Le filetage correspond à { $name }, mais pas le siège. Des sièges différents ne font pas une étanchéité fiable. Aucun raccordement des tables n'a les deux : mesurez à nouveau.
identify-closest = Aucun raccordement ne correspond à toutes les mesures ; le plus proche est { $name }. Mesurez à nouveau.
identify-many = { $count } raccordements sont encore possibles. Les plus probables : { LIST($names) }.
identify-some = Ce peut être { LIST($names, style: "or") }.
identify-only = Seul { $name } correspond.
identify-tie-there = Les mesures ne distinguent pas { LIST($names) }. Ordre choisi pour une seule raison : { LIST($first, style: "or") } est plus courant sur les machines d'origine { $origin }.
identify-tie-elsewhere = Les mesures ne distinguent pas { LIST($names) }. Ordre choisi pour une seule raison : en dehors des machines d'origine { $origin }, seul { LIST($first, style: "or") } est courant.
identify-origin-europe = européenne
identify-origin-north_america = nord-américaine
identify-origin-asia = asiatique
identify-lacks = Seuls les raccordements des tables sont comparés. N'y figurent pas, par exemple : { LIST($names) }. Un raccordement qui correspond peut être malgré tout l'un de ceux-là.
identify-lacking-french_millimetric = cône 24° millimétrique français
identify-lacking-metric_taper = filetage métrique conique
identify-lacking-screw_couplers = coupleurs à visser (ISO 14541)
identify-lacking-one_manufacturer = raccordements propres à un seul fabricant

## What to measure next; each follows a heading such as "Measure next:"

identify-ask-seat = siège : son angle avec un calibre de siège, ou s'il s'agit d'une face à joint torique, d'un bossage à joint torique, d'un siège plat ou d'un filetage conique sans siège
identify-ask-cone = cône : s'il est en saillie comme un nez ou en creux comme un entonnoir
identify-ask-thread = diamètre du filetage au pied à coulisse : extérieur pour un mâle, intérieur pour une femelle
identify-ask-tpi = pas avec un peigne à filets : filets par pouce, ou millimètres
identify-ask-hex = cote sur plats de l'écrou
identify-ask-flange_od = diamètre de la collerette
identify-ask-bolt_spacing = entraxe des vis, sur le plus grand côté
identify-ask-flank = angle des flancs du filetage : essayez un peigne de 55° et un peigne de 60° à contre-jour
identify-ask-nose = diamètre du nez qui entre dans la pièce opposée, à son extrémité, du logement qui le reçoit, ou du trou d'un raccord banjo
identify-ask-series = série, lourde (S) ou légère (L) : d'après le marquage, le plan de l'orifice ou le fabricant de l'embout
identify-ask-series-why = Les deux séries ont les mêmes cotes, mais ni la même pression ni le même serrage. Sans la série, la pression la plus basse s'applique et aucun couple n'est donné.
identify-ask-why = C'est ce qui distingue le mieux { LIST($names) }.

## Why a reading speaks for or against a connection

identify-reading-thread = Filetage : { $measured } mesuré, { $nominal } nominal, { $fits ->
    [yes] correspond
   *[no] ne correspond pas
 }.
identify-reading-tpi = Pas : { $measured } filets par pouce mesurés, { $nominal } nominal, { $fits ->
    [yes] correspond
   *[no] ne correspond pas
 }.
identify-reading-pitch = Pas : { $measured } mm mesuré, { $nominal } mm nominal, { $fits ->
    [yes] correspond
   *[no] ne correspond pas
 }.
identify-reading-hex = Hexagone : { $measured } mesuré, { $nominal } nominal, { $fits ->
    [yes] correspond
   *[no] ne correspond pas
 }.
identify-reading-tube_od = Tube : { $measured } mesuré, { $nominal } nominal, { $fits ->
    [yes] correspond
   *[no] ne correspond pas
 }.
identify-reading-nose = Nez ou logement : { $measured } mesuré, { $nominal } nominal, { $fits ->
    [yes] correspond
   *[no] ne correspond pas
 }.
identify-reading-flange_od = Collerette : { $measured } mesuré, { $nominal } nominal, { $fits ->
    [yes] correspond
   *[no] ne correspond pas
 }.
identify-reading-bolt_spacing = Entraxe des vis : { $measured } mesuré, { $nominal } nominal, { $fits ->
    [yes] correspond
   *[no] ne correspond pas
 }.
identify-no-value = { $feature ->
    [thread] Filetage
    [tpi] Pas
    [hex] Hexagone
    [tube_od] Tube
    [nose] Nez ou logement
    [flank] Angle des flancs
    [flange_od] Collerette
    [bolt_spacing] Entraxe des vis
    [side] Place du filetage
    [swivels] Partie filetée
    [shape] Forme du filetage
    [seals] Étanchéité
   *[cone] Cône
 } : aucune valeur dans les tables.
identify-seat-fits = Siège : { $seat }, correspond.
identify-seat-differs = Siège : { $seat } mesuré, mais ce raccordement a : { LIST($own, style: "or") }. Il ne correspond pas : des sièges différents ne font pas une étanchéité fiable.
identify-cone-fits = { $cone ->
    [outside] Le cône est en saillie : correspond.
   *[inside] Le cône est en creux : correspond.
 }
identify-cone-differs = { $cone ->
    [outside] Le cône est en saillie, mais celui de ce raccordement est en creux : il ne correspond pas. Ils ne font pas étanchéité.
   *[inside] Le cône est en creux, mais celui de ce raccordement est en saillie : il ne correspond pas. Ils ne font pas étanchéité.
 }
identify-flank-fits = Flancs du filetage : { $flank }°, correspond.
identify-flank-differs = Flancs du filetage : { $flank }° mesuré, mais ce raccordement a l'autre angle. Il ne correspond pas : les filetages ne font pas étanchéité ensemble.
identify-seat-none = Siège : { $seat } mesuré, mais ce raccordement n'en a pas. Il ne correspond pas.
identify-seat-face = face à joint torique
identify-seat-boss = bossage à joint torique
identify-seat-flat = plat
identify-seat-taper = filetage conique

## Identifying by looking: a question, its answers, and what is said of them

identify-step-side = Où se trouve le filetage de cette extrémité ?
identify-step-form = L'extrémité n'a pas de filetage. Qu'est-ce que c'est ?
identify-step-swivels = Tenez le flexible immobile. La partie filetée tourne-t-elle sur l'embout ?
identify-step-shape = Posez une règle le long du filetage. Est-il cylindrique ou conique ?
identify-step-seals = Qu'est-ce qui assure l'étanchéité ?
identify-step-cone = Le cône est-il en saillie comme un nez, ou en creux comme un entonnoir ?
identify-step-seat = Quel est l'angle du cône ? Appliquez un calibre de siège.
identify-answer-side-male = à l'extérieur (mâle)
identify-answer-side-female = à l'intérieur d'un écrou ou d'un corps (femelle)
identify-answer-side-none = pas de filetage : bride, coupleur, raccord à agrafe, tube lisse ou banjo
identify-answer-form-flange_head = collerette, tenue par une bride et des vis
identify-answer-form-eye = anneau traversé par une vis banjo
identify-answer-form-coupler_male = embout mâle d'un coupleur rapide
identify-answer-form-coupler_female = corps femelle d'un coupleur rapide
identify-answer-form-staple_male = embout mâle tenu par une agrafe
identify-answer-form-staple_female = corps femelle percé pour une agrafe
identify-answer-form-standpipe = tube lisse, avec ou sans écrou libre
identify-answer-swivels-yes = elle tourne sur l'embout
identify-answer-swivels-no = elle est d'une seule pièce avec l'embout
identify-answer-shape-parallel = cylindrique : même diamètre sur toute la longueur
identify-answer-shape-taper = conique : le diamètre varie sur la longueur
identify-answer-seals-cone = cône métallique, avec ou sans joint torique
identify-answer-seals-face = joint torique dans une face plane, ou la face plane sur laquelle il appuie
identify-answer-seals-boss = joint torique au pied du filetage, sous l'hexagone, ou le chanfrein qui le reçoit
identify-answer-seals-flat = rondelle ou bague-joint sur une face plane
identify-answer-seals-thread = le filetage lui-même, avec un produit d'étanchéité
identify-answer-cone-outside = nez : il est en saillie
identify-answer-cone-inside = entonnoir : il est en creux
identify-answer-seat-37 = 37° par rapport à l'axe (74° au total)
identify-answer-seat-45 = 45° par rapport à l'axe (90° au total)
identify-answer-seat-60 = 60° au total (30° par rapport à l'axe)
identify-answer-seat-24 = 24° au total (12° par rapport à l'axe)
identify-answer-unknown = impossible à dire
identify-told-side = Filetage : { LIST($answers, style: "or") }
identify-told-form = Extrémité : { LIST($answers, style: "or") }
identify-told-swivels = Partie filetée : { LIST($answers, style: "or") }
identify-told-shape = Forme du filetage : { LIST($answers, style: "or") }
identify-told-seals = Étanchéité par : { LIST($answers, style: "or") }
identify-told-cone = Cône : { LIST($answers, style: "or") }
identify-told-seat = Angle du cône : { LIST($answers, style: "or") }
identify-looking-kind = { $connection }, { $form }
identify-looking-title = Identifier à l'œil
identify-looking-lead = Nettoyez l'extrémité, puis répondez à ce que vous voyez. Chaque réponse réduit la liste ; vous pouvez revenir à tout moment.
identify-looking-care = Cette page ne nomme que des raccordements. Elle ne dit jamais quelle pression une extrémité ou un flexible supporte.
identify-looking-open = Identifier à l'œil, sans calibre
identify-looking-answers = Vos réponses
identify-looking-change = Modifier
identify-looking-change_one = Modifier : { $answer }
identify-looking-again = Recommencer
identify-looking-unsure = Impossible à dire
identify-looking-other = Aucune image ne correspond ? Une réponse précédente est peut-être fausse : modifiez-la.
identify-looking-done = L'œil ne peut plus réduire la liste. Mesurez l'extrémité.
identify-looking-measure = Mesurer l'extrémité
identify-looking-remaining = Encore possibles
identify-looking-count = { $count ->
    [one] Un seul type de raccordement est encore possible.
   *[other] { $count } types de raccordement sont encore possibles.
}
identify-looking-none = Aucun raccordement des tables ne réunit tout cela. Modifiez une réponse.
identify-looking-sizes = { $count ->
    [one] Une taille : { $first }
   *[other] { $count } tailles, de { $first } à { $last }
}
identify-looking-ruled_out = Exclus par une seule réponse
identify-looking-if_wrong = Si cette réponse est fausse, l'extrémité peut être l'un de ceux-ci.
identify-looking-known = D'après les questions
identify-looks-fits = Vu : { $answer }. Correspond.
identify-looks-differs = Vu : { $answer }. Ce raccordement ne correspond pas.

## A hose by its layers and diameters

identify-hose-title = Tuyau d'après ses couches
identify-hose-open = Tuyau sans marquage lisible
identify-hose-lead = Mesurez le diamètre extérieur là où le revêtement n'est pas usé, l'alésage sur une coupe propre, et comptez-y les couches de renforcement. Laissez vide ce que vous ne pouvez pas mesurer.
identify-hose-never_rates = Cette page exclut seulement des normes. Elle ne donne jamais la pression d'un tuyau : des tuyaux de mêmes couches et de mêmes diamètres ont des pressions différentes. Relevez la pression sur le marquage ou demandez-la au fabricant du tuyau.
identify-hose-field-od = Diamètre extérieur
identify-hose-field-bore = Alésage
identify-hose-field-kind = Type de renforcement
identify-hose-field-layers = Nombre de ces couches
identify-hose-field-lay_line = Marquage, pour autant qu'il se lise
identify-hose-kind-unknown = impossible à dire
identify-hose-kind-wire_braid = tresse métallique : les fils se croisent
identify-hose-kind-wire_spiral = nappe métallique en spirale : les fils sont côte à côte, sans se croiser
identify-hose-kind-wire_helix = une spire de fil dans le caoutchouc (tuyau d'aspiration)
identify-hose-kind-fibre = textile ou fibre, sans fil métallique
identify-hose-go = Exclure des normes
identify-hose-remaining = Non exclues
identify-hose-count = { $count ->
    [0] Toutes les normes des tables sont exclues. Mesurez à nouveau.
    [one] { $count } norme n'est pas exclue.
   *[other] { $count } normes ne sont pas exclues.
}
identify-hose-excluded = Exclues
identify-hose-sizes = Tailles : { LIST($sizes) }
identify-hose-size = -{ $dash }
identify-hose-size_od = -{ $dash } (diamètre extérieur { $least } à { $most })
identify-hose-unverified = { $source } (valeur non vérifiée)
identify-hose-sources = Source : { LIST($sources) }
identify-hose-unchecked-layers = Couches non vérifiées : aucune valeur dans les tables.
identify-hose-unchecked-od = Diamètre extérieur non vérifié pour certaines tailles : aucune valeur dans les tables.
identify-hose-layers-wire_braid = { $count ->
    [one] une tresse métallique
   *[other] { $count } tresses métalliques
}
identify-hose-layers_range-wire_braid = { $least } à { $most } tresses métalliques
identify-hose-layers-wire_spiral = { $count ->
    [one] une nappe métallique en spirale
   *[other] { $count } nappes métalliques en spirale
}
identify-hose-layers_range-wire_spiral = { $least } à { $most } nappes métalliques en spirale
identify-hose-layers-wire_helix = { $count ->
    [one] une spire de fil
   *[other] { $count } spires de fil
}
identify-hose-layers_range-wire_helix = { $least } à { $most } spires de fil
identify-hose-layers-fibre = { $count ->
    [one] une couche de fibre
   *[other] { $count } couches de fibre
}
identify-hose-layers_range-fibre = { $least } à { $most } couches de fibre
identify-hose-other_layers = Renforcement d'après les tables : { LIST($own, style: "or") }. Source : { LIST($sources) }.
identify-hose-other_bore = Alésage mesuré : { $measured }. La taille la plus proche, -{ $dash }, a { $nearest }. Source : { LIST($sources) }.
identify-hose-other_od = Diamètre extérieur mesuré : { $measured }. La taille la plus proche, -{ $dash }, a { $nearest }. Source : { LIST($sources) }.
identify-hose-line_names = Le marquage indique { LIST($standards) }.
identify-hose-line_unread = Le marquage n'indique aucune norme des tables.
identify-hose-line_excluded = Le marquage indique { $standard }, mais les mesures l'excluent. N'utilisez pas le tuyau tant que ce n'est pas expliqué : mesurez à nouveau ou apportez-le à l'atelier.
identify-hose-line_size = Le marquage indique la taille -{ $dash }, mais les mesures l'excluent. Mesurez à nouveau.
identify-hose-none = Il faut au moins une valeur.
    .mend = Indiquez-en au moins une, par exemple le diamètre extérieur.
identify-hose-kind-missing = Un nombre de couches demande leur type.
    .mend = Choisissez le type de renforcement.
identify-hose-bore-too-large = L'alésage doit être plus petit que le diamètre extérieur.
    .mend = Vérifiez les deux.
identify-hose-not-a-diameter = { $value } n'est pas un diamètre de tuyau hydraulique.
    .mend = Indiquez une valeur de 1 à 250 mm ; vérifiez l'unité.
identify-hose-not-a-count = { $value } n'est pas un nombre de couches.
    .mend = Indiquez un nombre entier de 1 à { $most }.

## Measurements that cannot be read

identify-two-diameters = Un diamètre intérieur ne peut pas être combiné à un diamètre extérieur.
    .mend = Saisissez seulement celui que vous avez mesuré.
identify-male-inside = Un filetage mâle demande un diamètre extérieur.
    .mend = Saisissez le diamètre extérieur (thread_od).
identify-female-outside = Un filetage femelle demande un diamètre intérieur.
    .mend = Saisissez le diamètre intérieur (thread_id).
identify-none-entered = Au moins une mesure est nécessaire.
    .mend = Saisissez-en au moins une, par exemple le diamètre extérieur du filetage (thread_od).
identify-not-a-fitting-size = { $value } n'est pas une taille d'embout.
    .mend = Vérifiez l'unité.
identify-not-a-band = { $value } ne dit pas de combien la mesure peut être fausse.
    .mend = Saisissez-le après ±, moins de la moitié de la mesure, par exemple 26,9 mm ± 0,4 mm.
identify-two-pitches = Un pas ne peut pas être combiné à des filets par pouce.
    .mend = Saisissez un seul des deux.
identify-not-a-pitch = { $value } n'est pas un pas d'embout.
    .mend = Saisissez-le en mm, par exemple 1,5.
identify-not-tpi = { $value } n'est pas un nombre de filets par pouce.
    .mend = Saisissez un nombre, par exemple 12 ou 11 1/2.
identify-not-a-form = { $value } n'est pas une forme de raccordement.
    .mend = Utilisez l'une de celles-ci : { LIST($known, style: "or") }.
identify-not-a-seat = { $value } n'est pas un siège.
    .mend = Utilisez l'un de ceux-ci : { LIST($known, style: "or") }.
identify-not-a-cone = { $value } n'est pas un cône.
    .mend = Utilisez l'un de ceux-ci : { LIST($known, style: "or") }.
identify-not-a-flank = { $value } n'est pas un angle de flancs de filetage.
    .mend = Utilisez l'un de ceux-ci : { LIST($known, style: "or") }.
identify-not-a-series = { $value } n'est pas une série.
    .mend = Utilisez l'une de celles-ci : { LIST($known, style: "or") }.
identify-not-a-origin = { $value } n'est pas une origine de machine.
    .mend = Utilisez l'une de celles-ci : { LIST($known, style: "or") }.
identify-not-asked = { $value } n'est pas une mesure demandée.
    .mend = Utilisez l'une de celles-ci : { LIST($known, style: "or") }.
identify-not-an-answer = { $value } n'est pas une réponse à cette question.
    .mend = Utilisez l'une de ces valeurs : { LIST($known, style: "or") }.

## What was found on a gauge sheet

identify-mark-unreadable = { $given } n'est pas un repère de gabarit.
    .mend = Saisissez le repère tel qu'il est imprimé à côté, par exemple D26.99 ou P1.814.
identify-mark-twice = { $mark } mesure ce qui est déjà saisi.
    .mend = Saisissez une seule valeur par mesure.
identify-marks-many = Plus de { $most } repères ont été saisis.
    .mend = Saisissez un seul repère par mesure.
identify-scale-missing = L'échelle à laquelle le gabarit a été imprimé n'est pas connue.
    .mend = Saisissez ce que mesure la ligne de contrôle de 100 mm, ou celle de 4 in en pouces. Si une carte bancaire couvre juste son cadre dans les deux sens, saisissez 100 mm.
identify-scale-alone = La ligne de contrôle ne corrige que les repères d'un gabarit. Une cote prise au pied à coulisse ne demande aucune correction.
    .mend = Saisissez le repère, ou laissez la ligne de contrôle vide.
identify-scale-beyond = Une ligne de contrôle de { $given } s'écarte de plus de 3 %.
    .mend = Imprimez de nouveau le gabarit à 100 % (taille réelle).
identify-scale-other-line = 101,6 mm est la longueur de la ligne de 4 in. On attend ici la ligne de 100 mm.
    .mend = Saisissez ce que mesure la ligne de 100 mm, ou la longueur de la ligne de 4 in en pouces.
identify-mark-other-end = { $thread ->
    [thread_od] Un repère avec D est celui d'un filetage mâle, et cette extrémité n'en est pas un.
   *[thread_id] Un repère avec F est celui d'un filetage femelle, et cette extrémité n'en est pas un.
 }
    .mend = Choisissez ce qu'est l'extrémité, ou saisissez le repère d'une telle extrémité.
