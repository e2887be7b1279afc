# L'affiche murale et le livret de poche : raccordements, filetages, sièges, sosies, pans.

charts-wall-title = Raccordements des flexibles hydrauliques
charts-wall-stock-title = Raccordements des flexibles hydrauliques de notre stock
charts-how = Chaque raccord est coupé selon son axe, sans échelle. En noir : là où il fait étanchéité.
charts-alike-means = { $sign } et un numéro : même filetage, ou presque, ou même taille de bride que le raccordement de ce numéro. Les pièces peuvent s'assembler sans faire étanchéité ou sans tenir. Ne raccordez jamais d'après le seul filetage : comparez d'abord le siège, le cône et le tube.
charts-care = Faites chuter toute pression avant de desserrer un raccord. Les données du fabricant d'embouts priment sur ce document. Un filetage n'indique pas la pression admissible.
charts-unverified = { $sign } valeur non vérifiée : confirmez-la auprès du fabricant d'embouts.
charts-sources = Sources
charts-source = { $number } { $source }
charts-numbered = { $number } { $family }
charts-alike = { $sign } À ne pas confondre : { LIST($families) }
charts-stock = Notre stock :
charts-stock-item = { $size } { $number }

## Colonnes

charts-column-size = Taille
charts-column-thread = Filetage
charts-column-male = ⌀ ext. mâle
charts-column-male-mm = Mâle mm
charts-not-known = inconnu
charts-column-female = ⌀ int. femelle
charts-column-pitch = Pas
charts-column-tpi = filets/in
charts-column-dash = Tuyau
charts-column-head = Collerette
charts-column-bolts = Entraxes
charts-column-screws = Vis
charts-column-alike = { $sign } comme

## Ce qui se mesure sur un embout sans filetage propre

charts-measured = À mesurer : { $what }.
charts-what-probe_nose = nez de l'embout
charts-what-flat_nose = nez plat de l'embout
charts-what-spigot = bout mâle
charts-what-tube = tube
charts-what-ring_hole = trou de l'œillet

## Comment le raccord fait étanchéité

charts-seals-cone = Étanchéité sur un cône à { $half } de l'axe ({ $included } au total).
charts-where-outside = Nez, en saillie : { LIST($forms) }.
charts-where-inside = Entonnoir, en creux : { LIST($forms) }.
charts-seals-face = Étanchéité par un joint torique dans la face plane.
charts-seals-boss = Étanchéité par un joint torique sous l'épaulement, dans le chanfrein de l'orifice.
charts-seals-flat = Étanchéité par une bague sur une face plane.
charts-seals-or-flat = Ou par une bague sur une face plane.
charts-seals-taper = Étanchéité dans le filetage conique.
charts-seals-head = Étanchéité par un joint torique dans la face de la collerette, bridée par quatre vis.
charts-seals-coupler = S'emboîte et se verrouille. Rien ne se serre.
charts-seals-staple = S'emboîte, étanche par un joint torique et tenu par une agrafe. Rien ne se serre.
charts-seals-standpipe = Tube lisse : un écrou et une bague coupante le pressent dans un cône à 24°.

## Le livret

charts-booklet-title = Filetages et raccordements
charts-booklet-sub = Livret de poche pour flexibles hydrauliques
charts-booklet-cautions = Avant de commencer
charts-booklet-measure = Comment mesurer
charts-booklet-tables = Tableaux des filetages
charts-booklet-flats = Pans par module (dash)
charts-sources-of = Sources : { LIST($sources) }
charts-measure-clean = Nettoyez l'embout. Un filetage abîmé ou usé fausse la mesure : mesurez à plusieurs endroits.
charts-measure-outside = Filetage mâle : diamètre extérieur, sur les sommets. Un filetage conique grossit vers le tuyau : relevez-le à plusieurs endroits.
charts-measure-inside = Filetage femelle : diamètre intérieur, sur les sommets, avec les becs intérieurs.
charts-measure-pitch = Pas : présentez un peigne à filets à contre-jour. Il doit porter sans jeu sur toute sa longueur. Sans peigne, mesurez de sommet à sommet sur dix tours et divisez par dix.
charts-measure-seat = Siège : servez-vous d'un calibre de siège, et regardez : un cône en saillie comme un nez, en creux comme un entonnoir, ou un joint torique ? 37° et 45° se comptent depuis l'axe, 24° et 60° d'un côté à l'autre.
charts-measure-nose = Cône à 24° : mesurez aussi le nez ou le logement. Des séries et des tailles de tube ont le même filetage.
charts-measure-compare = Comparez toutes les valeurs aux tableaux. S'il reste deux raccordements, ne devinez pas : demandez, ou mesurez encore une fois.
charts-tables-about = Les diamètres sont nominaux. Un filetage mâle mesure cette valeur ou un peu moins, un filetage femelle cette valeur ou un peu plus.
charts-flats-about = En gras : le nombre de pans que portent nos étiquettes. Dessous : ce que d'autres sources donnent pour un écrou en acier sur un flexible. Un nombre de pans ne vaut qu'à partir du départ indiqué à côté. Compté depuis un autre départ, le raccord peut fuir ou son siège se fendre.
charts-flats-method = Pour un raccord, suivez soit les pans, soit le couple, jamais les deux.
charts-flats-dash = Module
charts-flats-count = Pans
charts-flats-start = Compté
charts-flats-none = Pour les raccordements qui n'y sont pas, aucun nombre de pans n'est donné ici : prenez le couple de l'étiquette ou celui du fabricant d'embouts.
charts-any-size = toutes
charts-fold-title = Comment plier ce livret
charts-fold = Imprimez en taille réelle, recto verso, en retournant les feuilles sur le grand côté. Coupez chaque feuille le long du trait du milieu. Posez la pile des moitiés du haut sur la pile des moitiés du bas, la couverture au-dessus. Pliez vers l'arrière le long du pointillé, pour que la couverture reste dehors, et agrafez le pli.

## Refusé

charts-no-stock = Aucun embout de la liste de l'atelier n'a de raccordement des tableaux.
    .mend = Ajoutez d'abord les embouts de l'atelier, ou faites l'affiche de tous les raccordements.
charts-too-full = L'affiche ne tient pas sur { $paper } : ses lettres auraient { $cap } mm de haut, et { $least } mm est le minimum.
    .mend = Choisissez A2, ou laissez de côté les numéros de stock.
charts-not-a-paper = { $paper } n'est pas un format de papier de cette feuille.
    .mend = Utilisez l'un de ceux-ci : { LIST($papers, style: "or") }.

## La page qui les crée

charts-page-title = Affiche et livret
charts-page-chart = Affiche murale
charts-page-booklet = Livret de poche
charts-page-paper = Papier
charts-page-connections = Raccordements
charts-page-all = tous
charts-page-stock = de nos embouts
charts-page-numbers = de nos embouts, avec numéros de stock
charts-page-make = Créer le PDF
charts-page-chart-hint = Chaque raccordement en coupe, avec ses filetages, son étanchéité et ses sosies, sur une page.
charts-page-booklet-hint = Tableaux des filetages, pans, comment mesurer. Quatre pages par face, à couper et à plier.
charts-page-form = Forme
charts-page-sheets = feuilles à plier
charts-page-pages = page par page
