# The fit guide: its steps, what is taken for what, and where the practice comes from.

## Titles of the screens

fit-screen-safe = Mettez la machine en sécurité
fit-screen-injection = Protégez-vous
fit-screen-old = Déposez l'ancien flexible
fit-screen-new = Contrôlez le nouveau flexible
fit-screen-match = Contrôlez le raccord
fit-screen-route = Posez le tuyau
fit-screen-clocking = Orientez les coudes
fit-screen-order = Quelle extrémité en premier
fit-screen-join = Raccordez
fit-screen-tighten = Serrez
fit-screen-leaks = Contrôlez l'étanchéité
fit-screen-after = Contrôlez encore une fois

## Before you start

fit-defer = Suivez le manuel du constructeur de la machine, les données du fabricant d'embouts et la réglementation locale. Ils priment sur ce guide. Ce travail est réservé à une personne formée, et habilitée là où la loi l'exige.
fit-stop_lock = Arrêtez la machine, retirez la clé de contact et consignez la machine. Abaissez ou calez toute charge qui pourrait tomber ou bouger.
fit-depressurise = Relâchez toute la pression comme l'indique le manuel de la machine : moteur arrêté, actionnez toutes les commandes et déchargez les accumulateurs. Ne desserrez jamais un raccord sous pression.
fit-zero = Prouvez que la pression est nulle : lisez un manomètre sur une prise de pression de cette ligne avant de desserrer un raccord. Sans manomètre, considérez la ligne comme sous pression.
fit-cool = Laissez refroidir l'huile. Portez une protection des yeux et des gants étanches à l'huile. Placez un bac sous le raccord.
fit-injection = Ne cherchez jamais une fuite à la main. L'huile sous pression traverse les gants et la peau. Toute injection d'huile sous la peau est une urgence chirurgicale, même si la plaie paraît bénigne.
fit-photo = Photographiez l'ancien flexible avant de le desserrer : son cheminement, ses colliers et l'orientation de chaque extrémité.
fit-cap = Déposez l'ancien flexible. Bouchez aussitôt chaque orifice et chaque ligne ouverts : la saleté abîme pompes et distributeurs.
fit-why = Cherchez pourquoi l'ancien a lâché : frotté, plié, trop court, vrillé, surchauffé, robe cloquée ? Supprimez la cause avant de remonter le même.

## Check the parts

fit-pressure = Pression de service maximale : { $pressure }. Vérifiez que le limiteur de pression de la machine n'est pas taré plus haut.
fit-at_most = La pression n'est connue qu'en partie : les éléments connus admettent au maximum { $at_most }. Vérifiez que le limiteur de pression n'est pas taré plus haut et que le fabricant de l'autre élément admet aussi la pression.
fit-no_pressure = La pression de service de ce flexible n'est pas connue. Ne le montez pas avant que les données du fabricant du tuyau et du fabricant d'embouts l'aient confirmée.
fit-compare = Comparez le nouveau flexible à l'ancien : extrémités, sièges, longueur et angles des coudes doivent être identiques. Si quelque chose diffère, ne le montez pas.
fit-damage_flare = Nettoyez et contrôlez les deux sièges et les deux filetages. N'utilisez pas une pièce fissurée, entaillée en travers du siège ou au filetage abîmé.
fit-damage = Nettoyez et contrôlez les filetages et les faces d'étanchéité. N'utilisez pas une pièce fissurée, rayée en travers de la face ou au filetage abîmé.
fit-seat_37_45 = Contrôlez le siège au calibre de siège. Dans cette taille, les évasements 37° et 45° ont le même filetage. Ils se vissent l'un dans l'autre, mais l'étanchéité n'est pas fiable.
fit-cone_bspp_jis = Contrôlez le cône. Dans cette taille, les extrémités BSPP et JIS 60° ont le même filetage, mais des cônes inversés. Elles se vissent, mais ne font pas étanchéité.
fit-cone_metric = Contrôlez le cône avec un calibre : dans cette taille, les cônes métriques à 60°, les cônes à 24° et les évasements à 30° ont des filetages communs. Ils se vissent ensemble mais n'étanchent pas.
fit-flare_inverted = Contrôlez le siège : l'évasement inversé a son cône au fond de l'orifice femelle. Dans cette taille, son filetage est celui des évasements 37° et 45°, mais l'étanchéité ne se fait pas sur eux.
fit-npt_bspt = Contrôlez le filetage au peigne à filets. Dans cette taille, NPT et BSP ont tous deux 14 filets par pouce et commencent à se visser, mais des filets à 60° et à 55° ne font pas étanchéité entre eux.
fit-flange_code61 = C'est une bride Code 61 : orifice, demi-brides et vis doivent être Code 61 aussi. Une collerette Code 62 est plus épaisse et plus large, et son entraxe de vis est plus grand.
fit-flange_code62 = C'est une bride Code 62 : orifice, demi-brides et vis doivent être Code 62 aussi. Une collerette Code 61 est plus mince et plus étroite, et son entraxe de vis est plus petit.
fit-screw_length = Contrôlez la longueur des vis : trop courte, une vis arrache le filetage ; trop longue, elle touche le fond avant de serrer. Utilisez la longueur indiquée par le fabricant de la bride.
fit-oring = Mettez un joint torique neuf adapté au fluide et huilez-le avec de l'huile propre du circuit. Il doit être dans sa gorge, ni coupé, ni écrasé, ni durci.
fit-oring_cone = Si le cône porte un joint torique, contrôlez-le : ni coupé, ni écrasé, ni durci. Dans le doute, remplacez-le, et huilez-le avec de l'huile propre du circuit.
fit-clean_inside = Ne retirez les bouchons qu'au moment de raccorder. L'intérieur doit être propre et sec.

## Route the hose

fit-lay_line = Posez le tuyau sans le vriller : la ligne de marquage doit rester droite, et le tuyau ne doit se courber que dans un seul plan.
fit-bend = Respectez un rayon de courbure d'au moins { $bend_radius }, mesuré à l'intérieur de la courbe. À la sortie de chaque embout, gardez le tuyau droit sur au moins 1,5 fois son diamètre extérieur.
fit-no_bend = Le rayon de courbure minimal n'est pas connu : utilisez la valeur du fabricant du tuyau.
fit-slack = Laissez du mou : sous pression, le tuyau peut s'allonger de 2 % ou se raccourcir de 4 %.
fit-rub = Tenez le tuyau à l'écart des pièces chaudes, des arêtes vives et des pièces mobiles, sur toute la course de la machine.
fit-elbow = Orientez le coude avant de serrer, et maintenez-le en position.
fit-clocking = Angle d'orientation { $clocking } : tenez l'extrémité A de votre côté, coude A vers le bas. Vu dans l'axe du tuyau, le coude B est tourné de { $clocking } dans le sens antihoraire à partir du coude A.
fit-clocking_clockwise = Angle d'orientation { $clocking }, sens horaire : tenez l'extrémité A de votre côté, coude A vers le haut. Vu dans l'axe du tuyau, le coude B est tourné de { $clocking } dans le sens horaire à partir du coude A.
fit-clocking_nut = Réglez cet angle avant que l'écrou de l'extrémité raccordée en dernier soit serré. Maintenez le coude avec une clé et ne tournez que l'écrou. Ne vrillez jamais le tuyau.
fit-clocking_screws = Réglez cet angle tant que les vis, ou la vis, de l'extrémité raccordée en dernier ne sont serrées qu'aux doigts. Ne serrez ensuite que celles-ci. Ne vrillez jamais le tuyau.
fit-clocking_locknut = Réglez cet angle avant que le contre-écrou de l'extrémité raccordée en dernier soit serré. Maintenez le coude et ne tournez que le contre-écrou. Ne vrillez jamais le tuyau.
fit-rigid_first = Raccordez d'abord cette extrémité, tant que l'autre est libre. Tournez l'embout par son propre hexagone, maintenez avec une seconde clé l'adaptateur dans lequel il se visse et laissez tout le tuyau tourner avec lui.
fit-rigid_second = Cette extrémité n'est pas tournante. Ne la vissez pas quand l'autre extrémité est raccordée : le tuyau serait vrillé. Tuyau libre, montez-y un raccord union ou un adaptateur tournant, puis raccordez celui-ci par son écrou seulement.
fit-rigid_pair = Aucune des deux extrémités n'est tournante. Avant de raccorder celle-ci, montez un raccord union ou un adaptateur tournant sur l'autre : ensuite, elle ne peut plus être vissée sans vriller le tuyau.
fit-mating_first = Raccordez d'abord cette extrémité. Si la pièce opposée n'a pas d'écrou, tournez l'embout par son hexagone tant que l'autre extrémité est libre.
fit-mating_second = Cette extrémité n'a pas d'écrou : tournez seulement celui de la pièce opposée. Si elle n'en a pas, ne tournez pas l'embout quand l'autre extrémité est raccordée : le tuyau serait vrillé. Utilisez un raccord union ou un adaptateur tournant.
fit-swivel_last = Raccordez cette extrémité en dernier, une fois l'autre raccordée. Utilisez deux clés : une sur l'écrou, une sur l'hexagone de l'embout. Seul l'écrou tourne, le tuyau ne se vrille donc pas.
fit-free_last = Raccordez cette extrémité en dernier, une fois l'autre serrée. Elle s'oriente librement : le tuyau n'est pas vrillé.
fit-anti_galling = Les filetages en inox peuvent gripper. Avant d'engager le filetage, enduisez le filetage mâle d'une pâte anti-grippage adaptée au fluide. N'en mettez pas sur les portées d'étanchéité.

## Tighten

fit-by_hand = Engagez l'écrou à la main. Il doit tourner librement. S'il force, arrêtez : le filetage est engagé de travers ou ne correspond pas.
fit-by_hand_fixed = Engagez le filetage à la main. Il doit tourner librement. S'il force, arrêtez : il est engagé de travers ou ne correspond pas.
fit-two_wrenches = Utilisez deux clés : maintenez l'embout avec l'une et tournez seulement l'écrou avec l'autre. Le tuyau ne doit pas tourner.
fit-two_wrenches_fixed = Si la pièce opposée a un écrou, utilisez deux clés : maintenez l'embout avec l'une et tournez seulement cet écrou avec l'autre. Le tuyau ne doit pas tourner.
fit-mark_finger = Avant de compter les pans : vissez l'écrou avec les doigts jusqu'en butée (serrage aux doigts). Le comptage commence là : tracez un trait à cheval sur l'écrou et le corps.
fit-mark_wrench = Avant de compter les pans : vissez l'écrou à la clé jusqu'à sentir une résistance franche (environ 3,4 N·m, 30 lbf·in). Le comptage commence là : tracez un trait à cheval sur l'écrou et le corps.
fit-mark_fixed_finger = Avant de compter les pans : vissez l'embout à la main jusqu'en butée (serrage aux doigts). Le comptage commence là : tracez un trait à cheval sur son hexagone et la pièce opposée.
fit-mark_fixed_wrench = Avant de compter les pans : vissez l'embout à la clé jusqu'à une résistance franche (environ 3,4 N·m, 30 lbf·in). Le comptage commence là : tracez un trait à cheval sur son hexagone et la pièce opposée.
fit-flats = Vissez encore l'écrou de { $flats }, { $flats_basis }. 1 pan = 1/6 de tour (60°) : comptez des pans, pas des tours.
fit-flats_fixed = Tournez l'embout par son propre hexagone de { $flats }, comptés { $flats_basis }. 1 pan = 1/6 de tour (60°) : comptez les pans, pas les tours.
fit-flats_instead = Par les pans, à la place du couple et jamais en plus : vissez encore l'écrou de { $flats }, { $flats_basis }. 1 pan = 1/6 de tour (60°) : comptez des pans, pas des tours.
fit-flats_fixed_instead = Par les pans, à la place du couple et jamais en plus : tournez l'embout par son propre hexagone de { $flats }, comptés { $flats_basis }. 1 pan = 1/6 de tour (60°) : comptez les pans, pas les tours.
fit-torque_nut = Serrez l'écrou à { $torque }.
fit-lubrication = Ce couple vaut pour : { $lubrication }.
fit-lubrication_unknown = La source de ce couple ne dit pas si le raccord est à sec ou lubrifié. Dans le doute, utilisez la valeur du fabricant d'embouts.
fit-lubrication_not_carried = Cette étiquette n'indique pas si le raccord est à sec ou lubrifié à ce couple. Demandez à l'atelier.
fit-torque_fixed = Tournez l'embout par son propre hexagone et serrez-le à { $torque }. Maintenez la pièce opposée avec une seconde clé.
fit-torque_bspp_stud = Élément mâle étanché sur face plane par une rondelle d'étanchéité ou un joint torique : serrez-le, ou son contre-écrou, à { $torque }. Ce couple est trop élevé pour un écrou sur cône à 60° : pour un écrou, utilisez la valeur du fabricant du raccord.
fit-torque_bspp_of_nut = Le couple indiqué sur cette étiquette, { $torque }, est celui d'un écrou sur cône à 60°. Ne l'utilisez pas pour un élément mâle vissé dans un orifice, qui demande plus et se desserrerait : utilisez la valeur du fabricant du raccord.
fit-over_flare = Ne serrez pas davantage pour arrêter une fuite : l'évasement pourrait se fissurer. Démontez le raccord et contrôlez les deux sièges.
fit-choose_method = Deux méthodes : les pans ou le couple. N'en suivez qu'une. Dans le doute, comptez les pans : si le frottement est élevé, le couple est atteint sur un raccord encore lâche.
fit-torque_counts = Si le couple et le nombre de pans sont donnés, seul le couple fait foi.
fit-stud_in = Vissez l'élément mâle aux doigts jusqu'en butée. N'abîmez pas le joint torique sur le filetage.
fit-stud_into = Vissez aux doigts l'élément mâle de la pièce opposée jusqu'en butée. N'abîmez pas le joint torique sur le filetage.
fit-stud_mark = Avant de serrer, tracez un trait à cheval sur la pièce que vous tournez et l'orifice : il montre de combien elle a tourné.
fit-locknut_back = Dévissez le contre-écrou jusqu'au bout et poussez la rondelle contre lui. Vissez l'élément mâle aux doigts jusqu'à ce que la rondelle touche la face de l'orifice.
fit-locknut_align = Pour orienter le coude, dévissez l'élément mâle d'un tour au plus. Maintenez le coude avec une clé et serrez seulement le contre-écrou avec l'autre.
fit-flat_stud_in = Placez sous l'épaulement de l'élément mâle une bague d'étanchéité neuve, du type prévu. Vissez-le à la main jusqu'à ce que la bague touche la face.
fit-torque_stud = Serrez l'élément mâle, l'écrou ou le contre-écrou à { $torque }. Un orifice en aluminium supporte moins : demandez la valeur au constructeur de la machine.
fit-flats_stud = Vissez encore l'élément mâle, l'écrou ou le contre-écrou de { $flats }, { $flats_basis }. 1 pan = 1/6 de tour (60°) : comptez des pans, pas des tours.
fit-flats_stud_instead = Par les pans, à la place du couple et jamais en plus : vissez encore l'élément mâle, l'écrou ou le contre-écrou de { $flats }, { $flats_basis }. 1 pan = 1/6 de tour (60°) : comptez des pans, pas des tours.
fit-sealant = Mettez un produit d'étanchéité adapté au fluide sur le filetage mâle. Laissez nus les deux premiers filets.
fit-sealant_stainless = Les filetages coniques en inox peuvent gripper. Utilisez un produit d'étanchéité qui évite aussi le grippage.
fit-turns = Vissez aux doigts, puis serrez encore à la clé de { $turns }. Ne comptez jamais en pans sur un filetage conique.
fit-turns_disputed = Les sources diffèrent : { LIST($turn_choices, style: "or") }. Dans le doute, demandez d'abord au fabricant d'embouts.
fit-turns_of_source = { $turns } ({ $source })
fit-never_back = Ne dévissez jamais un filetage conique pour l'orienter : il fuirait. Démontez-le, nettoyez-le et étanchez-le à nouveau.
fit-screw_class = Lisez la classe de qualité sur la tête des vis ; elle doit être la même pour les quatre. Un couple ne vaut que pour une seule classe : une vis de classe 10.9 demande plus qu'une vis de classe 8.8 de même taille.
fit-screw_class_62 = Lisez la classe de qualité sur la tête des vis ; elle doit être la même pour les quatre. Le code 62 exige la classe 10.9 en métrique ou le grade 8 en pouces. Un couple ne vaut que pour une seule classe.
fit-flange_seat = Posez la collerette bien à plat sur la face de l'orifice, joint torique dans sa gorge. Engagez les quatre vis à la main. L'écart doit être égal aux deux demi-brides.
fit-flange_loose = Laissez les vis serrées aux doigts jusqu'à ce que l'autre extrémité soit raccordée, ou engagée à la main, et que le tuyau soit sans vrillage et bien orienté.
fit-banjo_rings = Utilisez une bague d'étanchéité neuve de chaque côté de l'œil : une sous la tête de la vis, une entre l'œil et l'orifice. Les deux doivent être du type prévu pour la vis.
fit-banjo_loose = Engagez la vis à la main et laissez-la desserrée tant que l'autre extrémité n'est pas raccordée, ou engagée à la main, et que le tuyau n'est pas posé sans vrillage à la bonne orientation.
fit-banjo_hold = Maintenez l'œil dans son orientation pendant que vous serrez la vis. Ni l'œil ni le tuyau ne doivent tourner avec elle.
fit-torque_bolt = Serrez la vis banjo à { $torque }. Ce couple ne vaut que pour un type de vis et de bague d'étanchéité : vérifiez que c'est le vôtre.
fit-standpipe_in = Enfilez l'écrou et la bague coupante sur le tube, puis enfoncez le tube dans le corps jusqu'à la butée. Maintenez-le et engagez l'écrou à la main.
fit-standpipe_nut = Bague coupante neuve : serrez l'écrou de 1 1/2 tour à partir du serrage aux doigts. Le tube ne doit pas tourner. Bague déjà sertie sur le tube : serrez jusqu'à sentir nettement une résistance, puis selon les indications de son fabricant.
fit-latch_clean = Ne raccordez que si les deux lignes sont sans pression. Essuyez les deux parties et contrôlez les joints.
fit-coupler_lock = Emboîtez les deux parties jusqu'au verrouillage, puis tirez pour vérifier. Si la bague a un verrou de sécurité, enclenchez-le.
fit-staple_in = Montez un joint torique et une bague anti-extrusion neufs sur l'embout, et enfoncez-le à fond. Poussez l'agrafe à la main jusqu'en butée. N'utilisez qu'une agrafe intacte, prévue pour la pression. Tirez sur le tuyau pour vérifier.
fit-flange_cross = Serrez les vis progressivement et en croix, en deux ou trois passes : une vis, celle en diagonale, puis les deux autres. N'utilisez pas de clé à chocs.
fit-torque_screw = { $screw ->
    [none] À la dernière passe, serrez chaque vis à { $torque }. Ce couple ne vaut que pour une taille et une classe de vis : demandez lesquelles au fabricant avant de serrer.
   *[other] À la dernière passe, serrez chaque vis { $screw } à { $torque }. Une autre taille ou une autre classe de vis demande un autre couple. Si aucune classe n'est indiquée ici, demandez-la au fabricant.
 }
fit-no_figures = Le serrage de ce raccord n'est pas connu : utilisez la valeur du fabricant d'embouts.

## Test for leaks

fit-nobody_near = Éloignez les personnes. Faites tourner la machine à vide jusqu'à ce que l'air soit purgé et le niveau d'huile correct.
fit-leak_look = Montez la pression lentement. Cherchez les fuites avec un morceau de carton, jamais avec la main.
fit-leak_stop = Si un raccord fuit, arrêtez la machine, relâchez la pression et démontez le raccord. Ne serrez jamais un raccord sous pression.
fit-full_travel = Faites parcourir à la machine toute sa course. Le tuyau ne doit nulle part être tendu, plié ou vrillé, ni frotter.
fit-look_again = Contrôlez à nouveau les raccords après les premières heures de travail.

## Families that are taken for each other; the sizes are those of the second

fit-alike-flares = { $family } et { $other } ({ LIST($sizes) }) : même filetage dans les tailles -2, -3, -4, -5, -8 et -10. Les pièces se vissent, mais des sièges à 37° et à 45° n'assurent pas une étanchéité fiable.
fit-alike-cone_oring-each = { $family } et { $other } ({ LIST($sizes) }) : même filetage dans chaque taille. L'un fait étanchéité par un cône, l'autre par un joint torique sous un épaulement.
fit-alike-cone_oring = { $family } et { $other } ({ LIST($sizes) }) : mêmes filetages. L'un fait étanchéité par un cône, l'autre par un joint torique sous un épaulement.
fit-alike-face_cone = { $family } et { $other } ({ LIST($sizes) }) : même filetage à des modules (dash) différents. L'un fait étanchéité par un joint torique dans une face plane, l'autre par un cône.
fit-alike-face_boss = { $family } et { $other } ({ LIST($sizes) }) : même filetage à des modules (dash) différents. Seule la place du joint torique les distingue.
fit-alike-tapers = { $family } et { $other } ({ LIST($sizes) }) commencent à se visser. Tous deux sont coniques, mais des filets à 60° et à 55° ne font pas étanchéité entre eux. Les tailles 1/2 et 3/4 ont 14 filets par pouce dans les deux.
fit-alike-taper_parallel-14 = { $family } et { $other } ({ LIST($sizes) }) commencent à se visser en tailles 1/2 et 3/4, toutes deux à 14 filets par pouce. L'un est conique, l'autre cylindrique, et l'angle des filets diffère.
fit-alike-npt_nptf = { $family } et { $other } ({ LIST($sizes) }) : même taille et même pas. NPTF fait étanchéité à sec par ses sommets de filet, NPT demande un produit d'étanchéité. La mesure ne les distingue pas.
fit-alike-taper_parallel = { $family } et { $other } ({ LIST($sizes) }) : même pas et presque le même diamètre. L'un est conique, l'autre cylindrique.
fit-alike-npsm_bspp = { $family } et { $other } ({ LIST($sizes) }) : presque le même filetage en tailles 1/2 et 3/4, et des sièges d'angle total 60°. L'angle des filets diffère.
fit-alike-bspp_jis = { $family } et { $other } ({ LIST($sizes) }) : même filetage, mais des cônes inversés. Les pièces se vissent, mais ne font pas étanchéité.
fit-alike-taper_cone = { $family } et { $other } ({ LIST($sizes) }) : même pas et presque le même diamètre. L'un est conique, l'autre fait étanchéité par un cône.
fit-alike-tube_sizes = { $family } et { $other } ({ LIST($sizes) }) : même filetage à des tailles de tube différentes. Mesurez le diamètre extérieur du tube pour les distinguer.
fit-alike-metric_cone_flare = { $family } et { $other } ({ LIST($sizes) }) : mêmes filetages métriques. L'un fait étanchéité par un cône 24°, l'autre par un évasement 30°.
fit-alike-metric_cone_oring = { $family } et { $other } ({ LIST($sizes) }) : mêmes filetages métriques. L'un fait étanchéité par un cône, l'autre par un joint torique sous un épaulement.
fit-alike-flanges = { $family } et { $other } ({ LIST($sizes) }) se ressemblent. La collerette code 62 est plus épaisse et plus large, et ses vis sont plus écartées.
fit-alike-thread = { $family } et { $other } ({ LIST($sizes) }) ont le même filetage ou presque. Ils peuvent se visser ensemble, mais ils ne font pas étanchéité l'un sur l'autre : contrôlez le siège.
fit-alike-reversed_cone = { $family } et { $other } ({ LIST($sizes) }) ont le même filetage métrique mais des cônes inversés. Ils se vissent ensemble mais n'étanchent pas.
fit-alike-cones_60_24 = { $family } et { $other } ({ LIST($sizes) }) ont les mêmes filetages métriques. L'un a un cône à 60°, l'autre un cône à 24° : ils n'étanchent pas l'un sur l'autre.
fit-alike-tube_bore = { $family } et { $other } ({ LIST($sizes) }) ont le même filetage et le même cône. Seul le tube diffère : mesurez son diamètre extérieur.
fit-alike-flareless = { $family } et { $other } ({ LIST($sizes) }) ont les mêmes filetages. L'un étanche par une bague dans un cône à 24°, l'autre sur un évasement.
fit-alike-inverted = { $family } et { $other } ({ LIST($sizes) }) ont des filetages communs. L'évasement inversé a son cône au fond de l'orifice femelle : ils n'étanchent pas l'un sur l'autre.
fit-alike-flat_oring = { $family } et { $other } ({ LIST($sizes) }) ont les mêmes filetages métriques. L'un étanche par une bague sur une face plane, l'autre par un joint torique dans un chanfrein de l'orifice.
fit-alike-flat_cone = { $family } et { $other } ({ LIST($sizes) }) ont les mêmes filetages métriques. L'un étanche par une bague sur une face plane, l'autre sur un cône.

## Where a step's practice comes from

fit-source-tag = valeur inscrite sur l'étiquette par l'atelier
fit-source-turns = { LIST($turn_sources) }
fit-source-practice = usage courant (aucune source publiée)
fit-source-iso4413_j1273 = ISO 4413 et SAE J1273 (non vérifié)
fit-source-j1273 = SAE J1273 (non vérifié)
fit-source-previews = extraits des SAE J517 et J516 : un flexible vaut ce que vaut sa pièce la plus faible
fit-source-flare_pages = deux pages publiques : l'évasement 45° a le même filetage que l'évasement 37° en -2 -3 -4 -5 -8 -10
fit-source-hose_page = page technique publique d'un fabricant de tuyaux, raccords japonais
fit-source-thread_page = page publique de référence sur les filetages
fit-source-oring_manuals = manuels de l'opérateur de constructeurs (joint torique huilé)
fit-source-no_twist = SAE J1273 et manuels de constructeurs : deux clés, pas de vrillage
fit-source-bend = extrait de l'EN 853:2015 ; texte public de référence en hydraulique (non relu)
fit-source-two_wrenches = plusieurs manuels de constructeurs demandent deux clés
fit-source-finger = manuels de l'opérateur de constructeurs, pans à partir du serrage aux doigts
fit-source-wrench = US Army TM 9-2320-364-20-4 ; manuel d'un constructeur de tracteurs compacts
fit-source-cutting_ring = deux pages publiques sur le montage des raccords à 24°
fit-source-farm_manual = manuel de l'opérateur d'un constructeur de machines agricoles
fit-source-manuals = plusieurs manuels de constructeurs
fit-source-torque_page = page publique de calcul de couples pour raccords hydrauliques
fit-source-pipe_pages = deux pages publiques sur la tuyauterie
fit-source-telehandler = manuel d'atelier d'un constructeur de chariots télescopiques (1994)
fit-source-bolt_tables = tableaux généraux de serrage de manuels OEM (valeurs SAE J1701 et autres)
fit-source-iso6162 = ISO 6162-2 et usage courant (non vérifié)
