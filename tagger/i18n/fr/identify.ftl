# Which connection an end can be by what was measured, why, and what to measure next.

identify-named = { $size } { $connection }

## In one sentence

identify-nothing = Aucun raccordement des tables ne correspond à ces mesures.
identify-other-seat = Le filetage correspond à { $name }, mais pas le siège. Des sièges différents ne font pas une étanchéité fiable. Aucun raccordement des tables n'a les deux : mesurez à nouveau.
identify-closest = Aucun raccordement ne correspond à toutes les mesures ; le plus proche est { $name }. Mesurez à nouveau.
identify-many = { $count } raccordements sont encore possibles. Les plus probables : { LIST($names) }.
identify-some = Ce peut être { LIST($names, style: "or") }.
identify-only = Seul { $name } correspond.
identify-tie-there = Les mesures ne distinguent pas { LIST($names) }. Ordre choisi pour une seule raison : { LIST($first, style: "or") } est plus courant sur les machines d'origine { $origin }.
identify-tie-elsewhere = Les mesures ne distinguent pas { LIST($names) }. Ordre choisi pour une seule raison : en dehors des machines d'origine { $origin }, seul { LIST($first, style: "or") } est courant.
identify-origin-europe = européenne
identify-origin-north_america = nord-américaine
identify-origin-asia = asiatique
identify-lacks = Seuls les raccordements des tables sont comparés. N'y figurent pas, par exemple : { LIST($names) }. Un raccordement qui correspond peut être malgré tout l'un de ceux-là.
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
identify-ask-flank = angle des flancs du filetage : essayez un peigne de 55° et un peigne de 60° à contre-jour
identify-ask-nose = diamètre du nez qui entre dans la pièce opposée, à son extrémité, du logement qui le reçoit, ou du trou d'un raccord banjo
identify-ask-series = série, lourde (S) ou légère (L) : d'après le marquage, le plan de l'orifice ou le fabricant de l'embout
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
identify-reading-pitch = Pas : { $measured } mm mesuré, { $nominal } mm nominal, { $fits ->
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
identify-reading-nose = Nez ou logement : { $measured } mesuré, { $nominal } nominal, { $fits ->
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
identify-flank-fits = Flancs du filetage : { $flank }°, correspond.
identify-flank-differs = Flancs du filetage : { $flank }° mesuré, mais ce raccordement a l'autre angle. Il ne correspond pas : les filetages ne font pas étanchéité ensemble.
identify-seat-none = Siège : { $seat } mesuré, mais ce raccordement n'en a pas. Il ne correspond pas.
identify-seat-face = face à joint torique
identify-seat-boss = bossage à joint torique
identify-seat-flat = plat
identify-seat-taper = filetage conique

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
    .mend = Utilisez l'un de ceux-ci : { LIST($known, style: "or") }.
identify-not-a-series = { $value } n'est pas une série.
    .mend = Utilisez l'une de celles-ci : { LIST($known, style: "or") }.
identify-not-a-origin = { $value } n'est pas une origine de machine.
    .mend = Utilisez l'une de celles-ci : { LIST($known, style: "or") }.
identify-not-asked = { $value } n'est pas une mesure demandée.
    .mend = Utilisez l'une de celles-ci : { LIST($known, style: "or") }.
