# Gabarits : les tables à l'échelle réelle, sur papier.

gauges-name-threads = Gabarit : diamètres de filetage
gauges-name-pitches = Gabarit : pas de filetage
gauges-name-seats = Gabarit : angles de siège
gauges-name-flanges = Gabarit : collerettes de bride
gauges-name-hexes = Gabarit : hexagones
gauges-name-hoses = Gabarit : diamètres extérieurs de tuyau

## What was asked for and is not there

gauges-paper = Les gabarits existent en { LIST($known) }.
    .mend = Choisissez l'un de ces formats.
gauges-not-a-sheet = Aucun gabarit ne porte ce nom.
    .mend = Choisissez parmi { LIST($known) }.
gauges-not-a-family = Aucun gabarit ne montre cette famille : elle n'a pas de filetage à mesurer, ou ne figure pas dans les tables.
    .mend = Choisissez parmi { LIST($known) }.

## At the head: what it is, and how to hold it to the part

gauges-title-threads = Diamètres de filetage : { $family }
gauges-title-pitches = Pas de filetage
gauges-title-seats = Angles de siège
gauges-title-flanges = Collerettes : { $code }
gauges-title-hexes = Hexagones, cote sur plats
gauges-title-hoses = Diamètres extérieurs de tuyau
gauges-use-males = Filetages mâles. Posez le filetage sur une barre, bord gauche sur bord gauche, et regardez bien à la verticale, d'un seul œil. Le bord droit du filetage doit tomber sur la bande foncée : c'est là que finit un filetage sain, de sa plus petite à sa plus grande cote (formules ISO 965-1, degré 6). Un filetage usé peut mesurer moins. Mieux : découpez la barre et enfilez l'encoche sur le filetage. Si deux barres sont presque pareilles, essayez leurs deux repères l'un après l'autre. S'il ne finit sur aucune bande, mesurez au pied à coulisse.
gauges-use-males-taper = Mâles coniques (1 sur 16). Posez le filetage sur une barre, petite extrémité en haut, et regardez bien à la verticale, d'un seul œil : ses deux bords suivent ceux de la barre. Au trait transversal, le filetage a son diamètre nominal : au plan de jauge pour le BSPT, au bout du filetage utile pour le NPT et le NPTF. Un filetage conique peut tomber n'importe où sur sa barre : si deux barres sont presque pareilles, essayez leurs deux repères l'un après l'autre, et regardez le pas.
gauges-use-females = Filetages femelles. Imprimez sur du carton, découpez le coin et enfoncez-le bien droit dans l'alésage jusqu'à ce qu'il bute sur les sommets des filets. Le bord de l'alésage doit tomber sur une bande foncée : c'est la cote d'un alésage sain, de la plus petite à la plus grande (formules ISO 965-1, degré 6 ; pour un alésage conique, 0,3 mm de part et d'autre du nominal). Un alésage usé peut être plus large. La taille figure sur la bande, son repère dessus ou à côté.
gauges-use-pitches = Appliquez un peigne le long du filetage, à contre-jour, une dent dans le premier creux, et suivez-le sur tous les filets : un mauvais peigne va sur trois filets et se décale d'un demi-filet au dixième. Un creux sur dix est numéroté. Le papier ne distingue pas les flancs à 55° de ceux à 60° : 14 filets par pouce, c'est aussi bien BSP qu'américain. Le doute demeure jusqu'à l'essai de l'angle avec un vrai peigne à filets.
gauges-use-seats = Découpez une encoche et présentez-la sur un cône en saillie ; découpez une pointe et présentez-la dans un cône en creux. Regardez à contre-jour : aucun jour ne doit paraître d'un côté ni de l'autre. 37° et 45° sont des demi-angles, 24° et 60° des angles au sommet. Ce que le papier ne peut pas dire : un nez aussi petit que la taille -4, un entonnoir trop profond pour y voir, 30° (demi-angle) et 60° (au sommet), qui sont le même cône, et un siège usiné à 42° face à un siège à 45°. Le doute demeure.
gauges-use-flanges = Posez la collerette debout sur un disque : elle doit le couvrir juste, sur tout le tour. Posez ensuite la feuille sur l'orifice : les centres des quatre trous de vis doivent tomber sous les quatre croix. Les codes 61 et 62 ont des collerettes à un ou deux millimètres près : c'est l'entraxe des vis qui les distingue. Une collerette sans disque ne figure pas dans les tables.
gauges-use-hexes = Posez un écrou ou un corps sur une barre, un pan le long du bord gauche : le pan opposé doit tomber sur la bande foncée, large de 0,3 mm. Mieux : découpez la barre et enfilez l'encoche sur l'hexagone. Les fabricants emploient d'autres hexagones que ceux-ci : un hexagone ne décide jamais seul, et celui qui manque ici n'exclut rien.
gauges-use-hoses = Découpez une bande, collez ses morceaux et enroulez-la bien serrée sur une partie propre du tuyau : le trait du début indique le diamètre extérieur du tuyau en mm. Les plages foncées montrent ce que nos sources impriment pour chaque taille ; la zone claire autour d'une plage est aussi large que l'écart entre les sources, au moins 1 mm. Un tuyau hors de toute zone claire n'est aucune de ces tailles de cette norme, selon ces sources. Un tuyau sur une plage peut en être un autre : bien des normes sont à moins de 1 mm l'une de l'autre. La bande ne fait qu'exclure. Elle ne donne jamais de pression.

## Beside a gauge

gauges-male = Extérieur { $low } à { $high }
gauges-pitch-inch = { $tpi } filets par pouce, { $pitch } mm
gauges-pitch-metric = { $pitch } mm
gauges-seat-angles = { $half } demi-angle, { $whole } au sommet
gauges-flange = Collerette { $head } ; entraxe { $long } sur { $short }
gauges-flange-no-head = Collerette absente des tables ; entraxe { $long } sur { $short }
gauges-strip = { $standard }, morceau { $piece }

## At the foot of every page

gauges-check-mm = 100 mm
gauges-check-in = 4 in
gauges-check = Imprimez à 100 % (taille réelle). Mesurez l'une de ces lignes et saisissez sa mesure avec le repère : de 97 à 103 mm, ou de 3,88 à 4,12 in, la lecture est corrigée. Sinon, imprimez de nouveau.
gauges-card = Pas de règle ? Une carte bancaire (ISO/IEC 7810 ID-1, 85,60 x 53,98 mm) doit couvrir juste ce cadre, dans les deux sens. Si oui, saisissez 100 mm. Si elle ne le couvre que dans un sens, n'utilisez pas la feuille.
gauges-scan = Scannez pour identifier le raccord : choisissez le repère trouvé ici, par exemple D26.99, et saisissez la mesure de la ligne de contrôle.
gauges-cautions = ATTENTION : Relâchez toute la pression avant de mesurer ou de desserrer quoi que ce soit. Nettoyez le filetage ; n'en mesurez pas un abîmé. Ne choisissez jamais un raccord sur une seule mesure : diamètre, pas et siège doivent tous correspondre. Des filetages qui se vissent ne font pas des sièges étanches. La feuille ne dit rien de la pression. Ce qu'indique le fabricant du raccord ou du tuyau passe avant cette feuille.

## The page that lists the sheets

gauges-page-title = Gabarits
gauges-page-about = Les tables à l'échelle réelle sur papier, pour qui n'a ni pied à coulisse ni peigne à filets sous la main. Présentez la pièce sur la feuille et saisissez le repère qui correspond.
gauges-page-family = Famille
gauges-page-paper = Papier
gauges-page-kind = Gabarit
gauges-page-others = Autres gabarits
gauges-page-open = Ouvrir le PDF
gauges-paper-a4 = A4
gauges-paper-letter = Letter (US)

## The page for an outside diameter of a hose

gauges-scan-hoses = Scannez pour voir quelles normes un diamètre extérieur exclut : saisissez ce qu'indique la bande et ce que mesure la ligne de contrôle.
gauges-hose-title = Tuyau d'après son diamètre extérieur
gauges-hose-only = Un diamètre extérieur ne fait qu'exclure. Bien des normes sont à moins de 1 mm l'une de l'autre, et il ne donne aucune pression : lisez le marquage, ou demandez au fabricant du tuyau.
gauges-hose-left = Parmi les tuyaux dont nos sources impriment le diamètre extérieur, { $od } laisse ceux-ci ; les autres sont exclus :
gauges-hose-none = Aucun des tuyaux dont nos sources impriment le diamètre extérieur ne mesure { $od }.
gauges-hose-go = Voir ce qui reste
gauges-hose-unknown = Non exclus, car aucune source d'ici n'imprime leur diamètre extérieur : { LIST($names) }.
