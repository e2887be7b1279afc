# The public pages: a tag, finding it, ordering again, identifying a hose without a tag.

## Around every page

scan-skip = Aller au contenu
scan-choose = Langue et unités
scan-units-metric = bar, mm d'abord
scan-units-inch = psi, pouces d'abord
scan-call = Appeler
scan-call_shop = Appeler { $shop }
scan-share-tag = Partager ou enregistrer
scan-more = Plus
scan-find_another = Autre étiquette
scan-no_tag = Sans étiquette : identifier le flexible
scan-disclaimer = Les valeurs viennent des sources indiquées. Elles ne remplacent ni les données du fabricant d'embouts, ni le manuel de la machine, ni la réglementation locale, ni un monteur qualifié.
scan-tag = Étiquette
scan-tag-title = Étiquette { $number }
scan-line = { $label } : { $text }
scan-source = Source : { $source }
scan-source-basis = Source : { $source } ({ $basis })
scan-source-label = Source
scan-app-name = Lecteur d'étiquettes de flexibles
scan-app-short_name = Étiquettes

## Finding a tag

scan-find-title = Trouver une étiquette
scan-typed-hint = XXXXX-XXXXXX, imprimé sous le code QR ; ou un numéro de commande, R-XXXXXXX
scan-typed-show = Afficher l'étiquette
scan-camera-title = Scanner avec la caméra
scan-camera-start = Démarrer la caméra
scan-camera-picture = Image de la caméra
scan-camera-not_a_tag = Ce n'est pas le code d'une étiquette de flexible.
scan-camera-missing = Caméra indisponible. Autorisez l'accès à la caméra ou utilisez une photo.
scan-photo-title = Utiliser une photo de l'étiquette
scan-photo-label = Photo du code QR ou du code à barres
scan-photo-read = Lire l'étiquette
scan-photo-reading = Lecture de la photo ...
scan-photo-none_offline = Aucune étiquette trouvée sur la photo, et il n'y a pas de réseau. Prenez-la de plus près et de face, ou saisissez le numéro.
scan-seen-title = Étiquettes vues sur cet appareil
scan-sent-title = Commandes envoyées depuis cet appareil
scan-seen-forget = Tout effacer de cet appareil
scan-meant = Vous vouliez peut-être dire
scan-meant-number = { $number } ({ LIST($slips) })
scan-meant-slip = position { $place } : { $right }, pas { $wrong }

## Refusals

scan-refused-title = Cette étiquette est illisible
scan-refused-line = { $field } : { $why } { $mend }
scan-not_there-title = Page introuvable
scan-not_there = Il n'y a pas de page à cette adresse.
    .mend = Scannez à nouveau le code QR de l'étiquette, ou tapez son numéro.
scan-unknown_tag = { $number } n'est pas dans les dossiers de cet atelier.
    .mend = Scannez le code QR de l'étiquette : il contient toute la spécification.
scan-photo-too_large = La photo est trop grande.
    .mend = Utilisez une photo plus petite.
scan-order-nothing = La commande n'indique aucun flexible.
    .mend = Scannez l'étiquette, ou tapez son numéro.
scan-order-quantity = { $given } n'est pas un nombre entier.
    .mend = Saisissez un nombre entier, par exemple 2.
scan-order-day = { $given } n'est pas une date.
    .mend = Saisissez l'année, le mois et le jour, par exemple 2027-03-31.
scan-order-unknown = Il n'y a pas de commande { $number }.
    .mend = Vérifiez le numéro de commande.
scan-picked-wrong = { $given } n'est pas un choix valable.
    .mend = Mesurez à nouveau l'extrémité.
scan-picked-missing = Il manque une extrémité.
    .mend = Mesurez d'abord les deux extrémités.
scan-form-missing = La forme manque.
    .mend = Choisissez mâle ou femelle.

## Captions of fields

scan-field-spec = Flexible
scan-field-number = Numéro d'étiquette
scan-field-digits = Code de l'étiquette
scan-field-link = Lien
scan-field-database = Serveur
scan-field-address = Adresse
scan-field-image = Photo
scan-field-quantity = Quantité
scan-field-needed_by = Date souhaitée
scan-field-order = Numéro de commande
scan-field-reference = Votre référence
scan-field-contact_phone = Téléphone
scan-field-contact_email = E-mail
scan-field-contact_name = Nom
scan-field-contact_company = Entreprise
scan-field-changes = Modifications souhaitées
scan-field-fitted_on = Date de pose
scan-field-machine = Machine
scan-field-machine_hours = Heures machine
scan-field-fitted_by = Posé par
scan-field-pin = Code PIN
scan-field-photo_fitted = Photo
scan-field-photo_hose = Photo du flexible défaillant
scan-field-photo_routing = Photo du cheminement
scan-field-form = Forme
scan-field-thread_od = Diamètre du filetage
scan-field-thread_id = Diamètre du filetage
scan-field-tpi = Filets par pouce
scan-field-pitch = Ou le pas, en mm
scan-field-side = Place du filetage
scan-field-swivels = Rotation de la partie filetée
scan-field-shape = Forme du filetage
scan-field-seals = Ce qui assure l'étanchéité
scan-field-od = Diamètre extérieur
scan-field-bore = Alésage
scan-field-kind = Type de renforcement
scan-field-layers = Nombre de couches
scan-field-lay_line = Marquage
scan-field-seat = Siège
scan-field-cone = Cône
scan-field-tube_od = Diamètre extérieur du tube
scan-field-flank = Angle des flancs du filetage
scan-field-cannot = Ne peut pas être mesuré
scan-field-nose = Diamètre du nez ou du logement
scan-field-series = Série
scan-field-origin = Origine de la machine
scan-field-hex = Hexagone, cote sur plats
scan-field-flange_od = Diamètre de la collerette
scan-field-bolt_spacing = Entraxe des vis, grand côté
scan-field-measurements = Mesures
scan-field-end = Extrémités
scan-field-hose_standard = Norme du tuyau
scan-field-hose_dash = Module du tuyau (dash)
scan-field-length_mm = Longueur totale
scan-field-clocking_deg = Angle d'orientation
scan-field-end_a = Extrémité A
scan-field-end_b = Extrémité B
scan-field-covers = Protections du tuyau

## A tag: what stands first

scan-withdrawn-title = Retiré du service : ne pas utiliser
scan-withdrawn-act = N'utilisez pas ce flexible. S'il est monté, arrêtez la machine, relâchez la pression et démontez-le. Contactez ensuite l'atelier.
scan-withdrawn-order = Cette étiquette est celle d'un flexible retiré du service. La commande porte sur un flexible neuf réalisé selon sa spécification ; les lots du flexible retiré ne sont pas repris.
scan-withdrawn-since = Retiré du service le { $day }
scan-withdrawn-no_guide = Ce flexible est retiré du service. Ne le montez pas.
scan-notice-tag_only-title = Données de l'étiquette seule
scan-notice-tag_only = Cet atelier n'a pas de dossier pour ce numéro. Les données affichées viennent de l'étiquette seule. Demandez à l'atelier qui a fabriqué le flexible s'il a été retiré du service.
scan-notice-damaged-title = Code de l'étiquette abîmé
scan-notice-damaged = Les données de ce code sont illisibles. Le dossier de l'atelier est affiché à la place : comparez-le au texte imprimé sur l'étiquette.
scan-notice-differ-title = L'étiquette et le dossier diffèrent
scan-notice-differ = Le dossier de l'atelier est affiché. Ne montez pas le flexible avant que l'atelier ait confirmé lequel est juste.
scan-differ-record = Dossier :
scan-differ-tag = Étiquette :
scan-differ-nothing = rien
scan-notice-overrated-title = Pression inférieure à celle enregistrée
scan-claims-title = L'étiquette annonce plus de pression que les tables n'en admettent
scan-claims-more = L'étiquette annonce { $was }. Les tables admettent { $now } : n'allez pas au-delà et demandez à l'atelier.
scan-claims-none = L'étiquette annonce { $was }. Les tables n'admettent aucune pression pour ce flexible tel qu'il est décrit : ne le montez pas avant que l'atelier ait confirmé une pression.
scan-notice-replaced-title = Flexible remplacé
scan-notice-replaced = Un flexible plus récent l'a remplacé.
scan-void-title = ANNULÉ : ne pas monter
scan-void-act = L'enregistrement de cette étiquette a été saisi par erreur. Ne montez pas ce flexible. Demandez à l'atelier.
scan-void-no-guide = L'enregistrement est annulé : il n'y a pas de guide de montage.
scan-held-title = Retenu par l'atelier : ne pas monter
scan-held-act = L'atelier n'a pas libéré ce flexible. Ne le montez pas. S'il est monté, arrêtez la machine, relâchez la pression et démontez-le. Contactez ensuite l'atelier.
scan-held-no-guide = L'atelier n'a pas libéré ce flexible : il n'y a pas de guide de montage.
scan-notice-replacement-title = Un remplaçant est fabriqué
scan-notice-replacement = Un nouveau flexible est fabriqué pour remplacer celui-ci. Son montage n'est pas enregistré.
scan-notice-to-be-fitted = Ce flexible est fabriqué pour en remplacer un autre. Son montage n'est pas enregistré.
scan-notice-old-title = Durée de stockage ou de vie dépassée
scan-notice-life = Fabriqué le { $day }, il y a plus de { $years } { $years ->
    [one] an
   *[other] ans
 }. Durée de vie maximale : { $years } { $years ->
    [one] an
   *[other] ans
 }, stockage compris ({ $source }). Faites-le remplacer, ou contrôler par une personne compétente, avant de le réutiliser.
scan-notice-shelf = Fabriqué le { $day }, il y a plus de { $years } { $years ->
    [one] an
   *[other] ans
 }. Durée de stockage maximale d'un flexible : { $years } { $years ->
    [one] an
   *[other] ans
 } ({ $source }). S'il n'a pas servi depuis, faites-le contrôler avant de le monter.

## A tag: figures and parts by themselves

scan-one_line = { $hose }, { $length }
scan-short_end = { $title }, { $shape }
scan-temperature = { $temperature }
scan-length-figure = { $length }
scan-cover_list = { LIST($covers) }
scan-day = { $day }

## A tag: the hose

scan-pressure = Pression de service max.
scan-pressure-not_known = La pression de service de ce flexible n'est pas connue. Ne le montez pas avant que les données du fabricant du tuyau et du fabricant d'embouts l'aient confirmée.
scan-pressure-given = Valeur fixée par l'atelier. Source : { $source }
scan-pressure-as_tagged = Valeur inscrite sur l'étiquette par l'atelier
scan-pressure-least = La plus faible pression admissible du tuyau et des deux extrémités ; la limite vient { SAY($part, case: "of") }. Source : { $source }
scan-origin = D'où vient cette valeur
scan-origin-graded = Qualité de la source : { $grade }. { $source }
scan-hose = Tuyau
scan-the_hose = Le flexible
scan-end_a = Extrémité A
scan-end_b = Extrémité B
scan-length = Longueur
scan-length-tolerance = Tolérance : { $minus } en moins, { $plus } en plus
scan-clocking = Angle d'orientation
scan-clocking-tolerance = Tolérance : ± { $angle }
scan-clocking-shop = Dans le sens horaire à partir du coude A : { $angle }. Tenez l'extrémité A de votre côté, coude A vers le haut (convention de cet atelier).
scan-clocking-convention = Convention : MIL-DTL-83796-5 figure 3 (qui cite SAE J517) ; côté d'observation : usage courant.
scan-max_temperature = Température maximale
scan-min_temperature = Température minimale du tuyau
scan-vacuum = Dépression maximale
scan-fluid = Fluide
scan-covers = Protections du tuyau
scan-bend_radius = Rayon de courbure minimal
scan-built_on = Fabriqué le
scan-note = Note
scan-state = État
scan-tightening = Serrage
scan-tighten-a = Serrage, extrémité A
scan-tighten-b = Serrage, extrémité B
scan-sources = Sources
scan-thread = Filetage { $thread }, diamètre extérieur du mâle { $diameter }
scan-thread-flange = Diamètre de la collerette { $diameter }
scan-thread-plain = Diamètre extérieur de l'embout ou du tube { $diameter }
scan-thread-not_known = Filetage absent des tables : utilisez les données du fabricant d'embouts.
scan-scale = Le diamètre d'assemblage est à l'échelle, le reste est schématique. Source : { $source }
scan-scale-none = Dessin non à l'échelle.
scan-link = Lien

## A tag: installing it

scan-fit = Monter
scan-fit-first = Suivez d'abord le manuel de la machine, puis les données du fabricant d'embouts et la réglementation locale. Ne commencez pas si vous n'êtes pas formé au travail sur des circuits hydrauliques.
scan-fit-doubt-title = Ne montez pas encore ce flexible
scan-fit-doubt-differ = L'étiquette indique autre chose que le dossier de l'atelier. Demandez à l'atelier lequel est juste.
scan-fit-doubt-damaged = Le code de l'étiquette est illisible : l'étiquette ne peut pas être comparée au dossier de l'atelier. Comparez le tuyau, les deux extrémités et la longueur avec cette page. Si quelque chose diffère, demandez à l'atelier.
scan-fit-doubt-claims = L'étiquette annonce plus de pression que les tables n'en admettent ; ses autres valeurs peuvent être fausses aussi. Demandez d'abord à l'atelier.
scan-fit-anyway = Afficher le guide malgré tout
scan-tightening-anyway = Afficher les valeurs de serrage malgré tout
scan-fit-start = Commencer
scan-fit-step = Étape { $n } sur { $total }
scan-fit-back = Retour
scan-fit-next = Suivant
scan-fit-done = Terminé
scan-fit-resume = Reprendre où vous en étiez
scan-fit-read = Lire cette étape à voix haute
scan-tabs = Que voulez-vous faire ?
scan-tab-hose = Le flexible
scan-tab-order = Commander
scan-tab-fit = Monter

## Ordering

scan-order-again = Commander
scan-order-by_phone = Commander par téléphone ou e-mail
scan-order-lines = Données de commande pour tout atelier de flexibles :
scan-order-please = Merci de fabriquer un autre flexible identique :
scan-order-subject = Nouvelle commande : étiquette { $number }
scan-order-copy = Copier
scan-order-share = Partager
scan-order-reference-hint = Votre numéro de commande ou d'ordre de travail, ou la machine
scan-order-contact = Vos coordonnées
scan-order-contact-hint = Saisissez un numéro de téléphone ou une adresse e-mail.
scan-order-changes = Commander avec des modifications
scan-order-changes-hint = Laissez vide ce qui ne change pas.
scan-order-new_length = Nouvelle longueur (étiquette : { $length })
scan-order-new_end_a = Nouvelle extrémité A (étiquette : { $end })
scan-order-new_end_b = Nouvelle extrémité B (étiquette : { $end })
scan-order-other = Autres modifications
scan-order-send = Envoyer la commande
scan-order-photos = Photos (facultatif)
scan-order-photos-hint = Seul l'atelier les voit. Elles sont réduites avant l'envoi.
scan-order-remember = Mémoriser mes coordonnées sur cet appareil
scan-order-sending = Envoi de votre demande ...
scan-order-not_kept = Non envoyée : pas de connexion, et ce téléphone ne peut pas enregistrer la demande. Réessayez ou appelez l'atelier.
scan-order-already = Vous avez déjà commandé ce flexible depuis ce téléphone. Numéro de commande :
scan-order-once_more = Commander encore une fois
scan-order-corrected = Rien n'a encore été envoyé. Votre saisie se trouve toujours dans le formulaire ci-dessous.
scan-order-checked = L'atelier vérifie chaque commande et vous contacte avant de fabriquer.
scan-order-waiting = Pas de réseau. Votre commande est enregistrée sur ce téléphone et partira automatiquement. Ne la renvoyez pas.
scan-order-not_sent = Commande non envoyée
scan-order-not_found = Commande introuvable
scan-outbox-sent = Votre commande est partie. Numéro de commande :
scan-outbox-waiting = Votre commande est enregistrée sur ce téléphone. Elle partira quand il y aura du réseau et que cette page sera ouverte.
scan-outbox-refused = Cette demande n'a pas été acceptée. Corrigez-la et renvoyez-la.
scan-outbox-correct = Corriger
scan-outbox-delete = Supprimer
scan-ordered-title = Commande { $reference }
scan-ordered-received = Nous avons reçu votre demande
scan-ordered-number = Numéro de commande
scan-ordered-keep = Notez ce numéro ou gardez cette page. Indiquez-le quand vous appelez.
scan-ordered-what = Votre commande
scan-ordered-answer = { $days ->
    [one] L'atelier répond sous un jour ouvré.
   *[other] L'atelier répond sous { $days } jours ouvrés.
 }
scan-ordered-said = Message de l'atelier
scan-ordered-back = Retour à l'étiquette
scan-order_state-received = reçue
scan-order_state-asked = question de l'atelier
scan-order_state-accepted = acceptée
scan-order_state-building = en fabrication
scan-order_state-done = terminée
scan-order_state-declined = refusée

## Identifying a hose without a tag

scan-identify-careful = Arrêtez la machine et relâchez la pression avant de toucher un raccord. Ne cherchez jamais une fuite à la main.
scan-identify-next_hose = Suite : le tuyau
scan-identify-same = B identique à A
scan-identify-possible_a = Raccords possibles, extrémité A
scan-identify-possible_b = Raccords possibles, extrémité B
scan-identify-measure_next = À mesurer ensuite
scan-identify-enter_below = À saisir plus bas
scan-identify-no_match = Aucune correspondance. Mesurez à nouveau ou apportez le flexible à l'atelier.
scan-identify-likelihood = probabilité { $percent }
scan-identify-contradicts = Ne correspond pas. Diffère par : { LIST($features) }.
scan-identify-use_a = Choisir pour l'extrémité A
scan-identify-use_b = Choisir pour l'extrémité B
scan-identify-measure_a = Mesurer l'extrémité A
scan-identify-measure_b = Mesurer l'extrémité B
scan-identify-diameter-hint = Mâle : diamètre extérieur. Femelle : diamètre intérieur. Exemple : 1 1/16 in ou 26,9 mm
scan-identify-more = Autres mesures
scan-identify-go = Identifier
scan-identify-ends = Mesurer les extrémités
scan-identify-cannot = Je ne peux pas le mesurer
scan-identify-kept = Pas de réseau : déterminé sur ce téléphone, d'après les mêmes tables qu'avec du réseau.
scan-flank-not_sure = je ne sais pas
scan-flank-60 = 60°
scan-flank-55 = 55°
scan-series-not_sure = je ne sais pas
scan-series-S = lourde (S)
scan-series-L = légère (L)
scan-origin-not_sure = je ne sais pas
scan-origin-europe = Europe
scan-origin-north_america = Amérique du Nord
scan-origin-asia = Asie
scan-seat-not_sure = je ne sais pas
scan-seat-37 = évasement 37°
scan-seat-45 = évasement 45°
scan-seat-30 = évasement ou cône 30°
scan-seat-60 = cône 60°
scan-seat-24 = cône 24°
scan-seat-face = face plane à joint torique (ORFS)
scan-seat-boss = joint torique sous l'hexagone
scan-seat-flat = face plane, pour une rondelle ou une bride
scan-seat-taper = sans siège : filetage conique
scan-cone-not_sure = je ne sais pas
scan-cone-outside = cône en saillie, comme un nez
scan-cone-inside = cône en creux, comme un entonnoir
scan-feature-thread = diamètre du filetage
scan-feature-tpi = pas
scan-feature-seat = siège
scan-feature-cone = cône
scan-feature-side = place du filetage
scan-feature-swivels = rotation de la partie filetée
scan-feature-shape = forme du filetage
scan-feature-seals = ce qui assure l'étanchéité
scan-feature-flank = angle des flancs
scan-feature-nose = diamètre du nez ou du logement
scan-feature-hex = hexagone
scan-feature-tube_od = diamètre du tube
scan-feature-flange_od = diamètre de la collerette
scan-feature-bolt_spacing = entraxe des vis
scan-ask-thread = Mesurez le diamètre du filetage au pied à coulisse : à l'extérieur pour un mâle, à l'intérieur pour une femelle. Tenez le pied à coulisse en biais par rapport au filetage.
scan-ask-tpi = Relevez le pas avec un peigne à filets : filets par pouce ou millimètres.
scan-ask-seat = Contrôlez le siège : mesurez son angle au calibre de siège, ou voyez s'il s'agit d'une face plane à joint torique, d'un joint torique sous l'hexagone, d'une face plane nue ou d'un filetage conique sans siège.
scan-ask-cone = Contrôlez le cône : est-il en saillie comme un nez, ou en creux comme un entonnoir ?
scan-ask-flank = Contrôlez l'angle des flancs du filetage : essayez un peigne de 55° et un peigne de 60° à contre-jour.
scan-ask-nose = Mesurez le diamètre du nez qui entre dans la pièce opposée, à son extrémité, du logement qui le reçoit, ou du trou d'un raccord banjo.
scan-ask-series = Cherchez la série, lourde (S) ou légère (L) : d'après le marquage, le plan de l'orifice ou le fabricant de l'embout.
scan-ask-hex = Mesurez l'hexagone, cote sur plats.
scan-ask-flange_od = Mesurez le diamètre de la collerette.
scan-ask-bolt_spacing = Mesurez l'entraxe des vis, sur le grand côté.
scan-hose-title = Le tuyau entre les extrémités
scan-hose-order = Commander ce flexible
scan-hose-checked = Ce sont vos mesures. L'atelier les vérifie avec vous avant de fabriquer.
scan-hose-correct = Corriger les mesures
scan-hose-lay_line = La ligne de marquage imprimée sur le tuyau donne sa norme et son module.
scan-hose-dash-hint = Diamètre intérieur nominal en 1/16 in : 12 = 3/4 in
scan-hose-shape = Forme
scan-hose-drop = Déport du coude
scan-hose-jump = Embout réduit ou augmenté : une taille au-dessus ou au-dessous du tuyau
scan-hose-clocking = Angle d'orientation (deux coudes seulement)
scan-hose-clocking-hint = Extrémité A de votre côté, coude A vers le bas : degrés dans le sens antihoraire jusqu'au coude B
scan-hose-length-hint = Exemple : 1250 mm ou 49 1/4 in.
scan-hose-read = Lu comme { $length }
scan-hose-bare = { $unit ->
    [in] Un nombre sans unité est en pouces.
   *[mm] Un nombre sans unité est en mm.
 }
scan-hose-measured = Longueur mesurée
scan-hose-show = Afficher le flexible

## On a phone without a signal

scan-shell-title = Étiquette de flexible
scan-shell-no_script = Pas de réseau. Activez JavaScript pour lire l'étiquette hors ligne.

## Signature of the tag

scan-sealed = Signature
scan-sealed-note = Ce que dit cette étiquette a été signé avec la clé { $key } de l'atelier.
scan-unsealed-note = Ce code ne porte pas de signature : c'est le petit code d'une étiquette, ou une étiquette plus ancienne. Seul l'atelier peut confirmer que les valeurs viennent de lui.
scan-sealed-act = Ne montez pas le flexible avant que l'atelier en ait confirmé les valeurs.
scan-unchecked-note = Ouvrez avec du réseau une page d'étiquette de l'atelier, ce qui met à jour les clés sur ce téléphone, ou demandez à l'atelier.
scan-pressure-anyway = Afficher malgré tout la pression indiquée sur l'étiquette

## What was found on a gauge sheet

scan-identify-from_sheet = Trouvé sur un gabarit
scan-identify-from_sheet-hint = Uniquement pour les repères trouvés sur un gabarit imprimé.
scan-identify-scale-hint = Exemple : 99 mm, ou 3,96 in pour la ligne de 4 in. Si une carte bancaire couvre juste son cadre dans les deux sens : 100.
scan-field-found = Repères trouvés sur la feuille
scan-field-scale = Mesure de la ligne de contrôle
