# L'établi : les pages d'un atelier, après connexion.

## Every page

bench-skip = Aller au contenu
bench-navigation = Établi
bench-demo = Ceci est une démonstration avec des données inventées. Ne l'utilisez pas pour un vrai travail. Connectez-vous avec le nom { $name } et le mot de passe { $password }.
bench-nav-build = Fabrication
bench-nav-prints = Impressions
bench-nav-find = Rechercher
bench-nav-orders = Commandes
bench-nav-withdrawn = Retraits
bench-nav-lists = Import et export
bench-nav-figures = Statistiques
bench-nav-shop = Réglages
bench-nav-waiting = en attente
bench-tag = Étiquette
bench-go-hint = Étiquette, commande, lot ...
bench-top-title = « { $text } »
bench-top-order = Commande { $order }
bench-top-customer = Client { $name }
bench-top-machine = Machine { $name } (client : { $customer })
bench-top-lot = Lot { $lot } : { $count } { $count ->
    [one] flexible
   *[other] flexibles
 }
bench-top-mistyped = Ce numéro d'étiquette comporte une faute de frappe.
bench-top-nothing = Aucune étiquette, commande, machine ou référence, aucun client ni lot ne porte ce nom.
bench-sign-out = Se déconnecter
bench-sign-out-name = Déconnecter { $name }
bench-language = Langue
bench-note-saved = Enregistré.
bench-note-recorded = Consigné dans l'historique.
bench-note-withdrawn = Retrait enregistré. Les pages des étiquettes affichent maintenant un avertissement.
bench-note-lifted = Retrait levé et consigné.
bench-note-sent = Demandes de commande envoyées.
bench-key-ctrl = Ctrl
bench-key-enter = Entrée
bench-key-escape = Échap

## Words used on several pages

bench-hose = Tuyau
bench-end_a = Extrémité A
bench-end_b = Extrémité B
bench-length = Longueur
bench-clocking = Angle d'orientation
bench-pressure = Pression
bench-working-pressure = Pression de service
bench-built-on = Fabriqué le
bench-place = Client, machine, position
bench-for = Pour
bench-position = Position
bench-by = Par
bench-when = Quand (UTC)
bench-note = Remarque
bench-reason = Motif
bench-status = État
bench-quantity = Quantité
bench-qty = Qté
bench-name = Nom
bench-role = Rôle
bench-since = Depuis
bench-source = Source
bench-printer = Imprimante
bench-label = Étiquette vierge
bench-tags = Étiquettes
bench-row = Ligne
bench-details = Détails
bench-print = Imprimer
bench-printed = Imprimée
bench-not-printed = pas encore imprimée
bench-not-recorded = non renseigné
bench-not-specified = non précisé
bench-not-reported = non communiqué
bench-withdrawn = retirée du service
bench-replaced = remplacé
bench-void = annulé
bench-replacement-built = remplaçant fabriqué
bench-danger = Danger
bench-caution = Attention
bench-record = Consigner
bench-add = Ajouter
bench-save = Enregistrer
bench-delete = Supprimer
bench-fitting-lot = lot d'embouts { $lot }
bench-reel-lot = lot de touret { $lot }
bench-assemblies = { $count } { $count ->
    [one] flexible
   *[other] flexibles
 }
bench-first-shown = Les { $shown } premières sur { $all } sont affichées.
bench-first-shown-all-printed = Les { $shown } premières sur { $all } sont affichées ; toutes sont imprimées.

## Roles, orders, events, print jobs, withdrawals: one name for each value

bench-role-device = appareil : lit et imprime
bench-role-builder = monteur-sertisseur
bench-role-counter = comptoir
bench-role-manager = responsable d'atelier
bench-order-received = reçue
bench-order-asked = question au client
bench-order-accepted = acceptée
bench-order-building = en fabrication
bench-order-done = terminée
bench-order-declined = refusée
bench-event-registered = enregistrement
bench-event-crimped = sertissage mesuré
bench-event-flushed = rincé
bench-event-proof_tested = épreuve
bench-event-proof_allowed = pression d'essai acceptée
bench-event-printed = étiquette imprimée
bench-event-fitted = montage
bench-event-inspected = contrôle
bench-event-scanned = scan
bench-event-ordered = commande
bench-event-replaced = remplacement
bench-event-corrected = corrigé
bench-event-voided = annulé
bench-event-replacement_built = remplaçant fabriqué
bench-event-removed = dépose de la machine
bench-event-withdrawn = retrait du service
bench-event-withdrawal_lifted = retrait levé
bench-medium-mineral-oil = huile minérale
bench-medium-water = eau
bench-medium-water-with-inhibitor = eau avec inhibiteur de corrosion
bench-medium-air = air
bench-medium-nitrogen = azote
bench-job-waiting = en attente
bench-job-sending = envoi en cours
bench-job-printing = impression en cours
bench-job-done = imprimée
bench-job-failed = échec
bench-job-unknown = peut-être imprimée
bench-job-dropped = annulée
bench-scope-tag = étiquette
bench-scope-hose_lot = lot de tuyau
bench-scope-fitting_lot = lot d'embouts
bench-withdrawn-what = { $scope ->
    [tag] Étiquette { $value }
    [hose_lot] Lot de tuyau { $value }
   *[fitting_lot] Lot d'embouts { $value }
 }
bench-confidence-published = publié
bench-confidence-memory = non vérifié
bench-confidence-shop = propre à l'atelier
bench-reprint-paper-jam = bourrage papier
bench-reprint-damaged = étiquette abîmée
bench-reprint-lost = étiquette perdue
bench-reprint-second = deuxième étiquette nécessaire

## Captions of fields, one for each

bench-field-of-end = { SAY($end, case: "start") }, { $field }
bench-field-hose = Tuyau
bench-field-hose-standard = Norme du tuyau (ligne de marquage)
bench-field-hose-dash = Module
bench-field-hose-edition = Édition (marquage)
bench-field-hose-part = Référence du fabricant (tuyau)
bench-field-hose-lot = Lot de touret
bench-field-lot_reason = Motif d'utilisation de ce lot
bench-field-correct_reason = Motif de la correction
bench-field-void_reason = Motif de l'annulation
bench-field-changes_considered = Modification ou écart pris en compte
bench-field-end-connection = Raccordement
bench-field-end-size = Taille
bench-field-end-series = Série de l'embout (S lourde, L légère)
bench-field-end-form = Type d'embout
bench-field-end-shape = Forme
bench-field-end-angle = Angle du coude (°)
bench-field-end-drop_mm = Déport
bench-field-end-material = Matière
bench-field-end-hose_dash = Embout réduit ou augmenté : tétine pour module
bench-field-end-lot = Lot d'embouts
bench-field-length_mm = Longueur totale
bench-field-length_basis = Mesurée
bench-field-length_confirmed = La longueur est juste bien qu'elle dépasse 100 m
bench-field-clocking_deg = Angle d'orientation (°)
bench-field-max_temperature_c = Température maximale
bench-field-vacuum_bar = Dépression maximale
bench-field-fluid = Fluide
bench-field-covers = Gaines et protections
bench-field-working_pressure = Pression de service
bench-field-working_pressure-value_bar = Pression de service d'une autre source
bench-field-working_pressure-source = Source de la pression de service
bench-field-working_pressure-confirmed = Cette pression est juste bien qu'elle dépasse les tables
bench-field-hose-rating-value_bar = Pression de service du fabricant du tuyau
bench-field-hose-rating-source = Source de la valeur du tuyau
bench-field-hose-rating-fluid = Fluide nommé par la source
bench-field-hose-rating-max_temperature_c = Température maximale nommée par la source
bench-field-hose-approval-max_temperature_c = Température maximale de l'autorisation
bench-field-hose-approval-source = Source de l'autorisation
bench-field-end-rating-value_bar = Pression de service du fabricant de l'embout
bench-field-end-rating-source = Source de la valeur
bench-field-end-rating-fluid = Fluide nommé par la source
bench-field-end-rating-max_temperature_c = Température maximale nommée par la source
bench-field-keep = Conserver comme valeur de votre atelier pour tous les flexibles suivants
bench-build-asks = Valeurs du fabricant
bench-field-bend_radius_mm = Rayon de courbure minimal
bench-field-note = Remarque (publique : visible par quiconque scanne l'étiquette)
bench-field-count = Quantité
bench-field-position = Position sur la machine
bench-field-replaces = Remplace l'étiquette
bench-field-order_reference = Numéro de commande
bench-field-built_on = Fabriqué le
bench-field-template = Étiquette vierge
bench-field-recipe = Nom de la spécification
bench-field-number = Numéro d'étiquette
bench-field-tag = Étiquette
bench-field-lot = Lot de tuyau ou d'embouts
bench-field-connection = Raccordement à l'une des extrémités
bench-field-hose_standard = Norme du tuyau
bench-field-hose_dash = Module du tuyau
bench-field-dash = Module du tuyau
bench-field-pressure_min_bar = Pression min.
bench-field-pressure_max_bar = Pression max.
bench-field-built_from = Fabriqué à partir du
bench-field-built_to = Fabriqué jusqu'au
bench-field-hoses = Flexibles
bench-field-thread_od = Filetage mâle, diamètre extérieur
bench-field-thread_id = Filetage femelle, diamètre intérieur
bench-field-tpi = Filets par pouce
bench-field-pitch = Ou bien pas en mm
bench-field-hex = Hexagone, cote sur plats
bench-field-flank = Angle des flancs du filetage
bench-field-cannot = Ne peut pas être mesuré
bench-field-nose = Diamètre du nez ou du logement
bench-field-series = Série
bench-field-origin = Origine de la machine
bench-field-tube_od = Diamètre extérieur du tube
bench-field-flange_od = Diamètre de la collerette
bench-field-bolt_spacing = Entraxe des vis, grand côté
bench-field-form = Type d'embout
bench-field-side = Place du filetage
bench-field-swivels = Rotation de la partie filetée
bench-field-shape = Forme du filetage
bench-field-seals = Ce qui assure l'étanchéité
bench-field-od = Diamètre extérieur
bench-field-bore = Alésage
bench-field-layers = Nombre de couches
bench-field-lay_line = Marquage
bench-field-seat = Siège
bench-field-cone = Cône
bench-field-crimp_a = Diamètre de sertissage, extrémité A (mm)
bench-field-crimp_b = Diamètre de sertissage, extrémité B (mm)
bench-field-rating_bar = Pression de service du fabricant
bench-field-rating_source = Source de cette pression de service
bench-field-rating_confirmed = Cette pression de service est juste bien qu'elle dépasse les tables
bench-field-lower_source = Essai à pression moindre demandé par (client ou norme)
bench-field-allowed_by = Accepté par (fabricants)
bench-field-allowed_on = Date du document
bench-field-document = Document
bench-field-shell_a = Jupe, extrémité A
bench-field-shell_b = Jupe, extrémité B
bench-field-pressure_bar = Pression
bench-field-hold_s = Durée de maintien (s)
bench-field-medium = Fluide d'épreuve
bench-field-tester = Éprouvé par
bench-field-gauge = Manomètre (numéro)
bench-field-gauge_valid_until = Étalonnage valable jusqu'au
bench-field-method = Méthode (instruction de travail)
bench-field-numbers = Flexibles sélectionnés
bench-field-result = Résultat
bench-field-kind = Événement
bench-field-name = Nom
bench-field-password = Mot de passe
bench-field-old = Mot de passe actuel
bench-field-code = Code de la console
bench-field-phone_code = Code de votre téléphone
bench-field-sign_in = Connexion
bench-field-role = Rôle
bench-field-uri = Adresse
bench-field-dpi = Résolution (dpi)
bench-field-shell = Jupe
bench-field-diameter_mm = Diamètre (mm)
bench-field-minus_mm = Moins (mm)
bench-field-plus_mm = Plus (mm)
bench-field-source = Source
bench-field-state = État
bench-field-quantity = Quantité
bench-field-needed_by = Date souhaitée
bench-field-contact = Contact
bench-field-company = Entreprise
bench-field-phone = Téléphone
bench-field-email = E-mail
bench-field-reference = Référence client
bench-field-reason = Motif
bench-field-scope = À retirer
bench-field-value = Numéro d'étiquette ou de lot
bench-field-file = Fichier
bench-field-list = Liste
bench-field-as = Impression sur
bench-field-do = Action

## A caption before what is wrong with its field

bench-caption = { $field } :

## Problems and refusals

bench-not-found = Introuvable
bench-form-of-files = Les listes existent en .csv ou en .xlsx.
bench-search-refused = Recherche impossible
bench-nothing-ordered = Rien n'a été commandé
bench-not-withdrawn = Retrait non enregistré
bench-no-letters = Aucune lettre
bench-no-certificate = Pas de certificat
bench-event-refused = Non consigné
bench-go-to-bench = Aller à l'établi
bench-not-a-date = { $value } n'est pas une date valable.
    .mend = Saisissez la date sous la forme AAAA-MM-JJ, par exemple 2026-03-02.
bench-not-a-dash = { $value } n'est pas un module.
    .mend = Saisissez le module, par exemple 12 (3/4 in).
bench-no-hoses = Aucun flexible n'est sélectionné.
    .mend = Sélectionnez les flexibles à commander.
bench-not-a-quantity = { $value } n'est pas une quantité valable.
    .mend = Saisissez un nombre de 1 à { $most }.
bench-future = La date { $day } est dans le futur.
    .mend = Saisissez la date de fabrication ou videz le champ.
bench-no-file = Aucun fichier n'est choisi.
    .mend = Choisissez un fichier .csv ou .xlsx.
bench-list-damaged = La liste a été endommagée pendant le transfert.
    .mend = Envoyez le fichier de nouveau.
bench-not-an-action = { $value } n'est pas une action de cette page.
    .mend = Rechargez la page.
bench-not-a-role = { $value } n'est pas un rôle.
    .mend = Choisissez : { LIST($roles, style: "or") }.
bench-old-password-wrong = Le mot de passe actuel n'est pas exact.
    .mend = Réessayez.
bench-sign-in-wrong = Le nom et le mot de passe ne correspondent pas.
    .mend = Réessayez.
bench-too-many-tries = Il y a eu trop d'essais manqués.
    .mend = Réessayez dans { $seconds } s.
bench-too-many-tries-min = Il y a eu trop d'essais manqués.
    .mend = Réessayez dans { $minutes } min.
bench-not-a-resolution = { $value } n'est pas une résolution valable.
    .mend = Saisissez 100 à 1200 dpi ou laissez vide.
bench-file-one-tag = Un fichier { $form } ne montre qu'une étiquette.
    .mend = Utilisez le PDF pour plusieurs étiquettes.
bench-not-a-printer = { $value } n'est pas une imprimante de cet atelier.
    .mend = Rechargez la page.
bench-no-result = Le résultat de l'épreuve manque.
    .mend = Choisissez Réussie ou Échouée.
bench-no-crimp = Aucun diamètre n'est saisi.
    .mend = Saisissez au moins un diamètre mesuré.
bench-not-by-hand = { $value } ne peut pas être consigné à la main. Choisissez un événement dans la liste.
bench-not-a-scope = { $value } ne peut pas être retiré. Choisissez : { LIST($scopes, style: "or") }.
bench-nothing-affected = Aucun flexible enregistré n'est concerné par ce retrait.

## Sign-in and first start

bench-sign-in = Se connecter
bench-sign-in-first = Premier démarrage : créer le compte du responsable avec le code de la console
bench-sign-in-not-needed = Les pages des étiquettes se lisent sans connexion.
bench-find-tag = Trouver une étiquette
bench-first = Premier démarrage
bench-first-hint = Aucun utilisateur pour l'instant. La console où le serveur a été démarré affiche un code à usage unique.
bench-first-name = Votre nom
bench-first-password = Mot de passe (12 caractères au moins)
bench-first-create = Créer le compte du responsable

## Build

bench-build = Fabrication
bench-build-for-order = Fabrication pour la commande { $order }
bench-build-changes = Modifications : { $changes }
bench-build-no-changes = Comme avant, sans modification.
bench-build-customer = Client : { $customer }.
bench-build-reference = Référence client : { $reference }.
bench-build-wanted = Quantité : { $count }.
bench-build-needed = Date souhaitée : { $day }.
bench-build-show-order = Voir la commande
bench-build-nearest-tag = (côté étiquette)
bench-build-standard-hint = R2, 2SN ...
bench-build-edition-hint = S ou année
bench-build-as-hose = comme le tuyau
bench-build-drop-hint = mm ou 2 1/4 in
bench-build-length-hint = 1250 ; 49 1/4 in
bench-build-clocking-hint = 0 à 359
bench-build-temperature-hint = 100 ; 212 F
bench-build-pressure-hint = 172 ou 2500 psi
bench-build-source-hint = fiche technique, plan ...
bench-build-identify = Identifier en mesurant
bench-build-straight = droit
bench-build-elbow = coude { $angle }
bench-build-other-angle = autre angle
bench-build-same = Comme l'extrémité A
bench-build-connection = { SAY($connection, case: "short") }
bench-build-choose = Choisir
bench-build-missing = Non enregistré. Il manque encore :
bench-build-lot-no-reason = Choisir un motif
bench-build-length-and-clocking = Longueur et angle d'orientation
bench-build-dial = Angle d'orientation de l'extrémité B
bench-build-dial-unset = non réglé
bench-build-clockwise = Votre atelier compte l'angle en sens horaire à partir de 12 heures. L'étiquette et le dossier montrent l'angle normalisé (360° moins le vôtre).
bench-build-counter-clockwise = Tenez le flexible avec l'extrémité A la plus proche de vous, le coude A pointant vers le bas. Regardez le long du flexible vers l'extrémité B et mesurez en sens antihoraire.
bench-build-turn-drawing = Faites tourner le dessin ou utilisez les flèches du clavier.
bench-build-customer-and-quantity = Client et quantité
bench-build-more = Autres : gaines et protections, fluide, température, matière, embout réduit ou augmenté, remarque
bench-build-register = Enregistrer et imprimer
bench-build-clear = Vider le formulaire
bench-build-recipes = Spécifications enregistrées : enregistrer celle-ci ou partir d'une autre
bench-build-save-recipe = Enregistrer
bench-build-recipe-replace = Remplacer la spécification enregistrée
bench-build-updating = Mise à jour ...
bench-build-out-of-date = Pas à jour.
bench-build-unanswered = Le serveur ne répond pas : les valeurs ci-dessous correspondent aux saisies précédentes. Nouvel essai toutes les quelques secondes.
bench-close = Fermer

## What the build page shows of a spec

bench-view-ends = Le flexible vu de côté, extrémité A à gauche
bench-view-tag-picture = L'étiquette telle qu'elle sera imprimée ; son numéro est attribué à l'enregistrement
bench-view-rating = Valeurs admissibles
bench-view-limited = Limitée par { SAY($part) }.
bench-view-sources = D'où vient cette valeur
bench-view-tolerance = Tolérance : +{ $plus } / -{ $minus } mm
bench-view-no-tolerance = Tolérance inconnue
bench-view-bend = Rayon de courbure minimal
bench-view-ask-hose-manufacturer = inconnu : utilisez la valeur du fabricant du tuyau
bench-view-cold = Température minimale
bench-view-proof = Pression d'épreuve
bench-view-clocking-tolerance = Tolérance : ± { $angle }
bench-view-ordered = Comparaison avec la commande
bench-view-instead = Comparaison avec l'étiquette remplacée
bench-view-notes = { $count } { $count ->
    [one] remarque
   *[other] remarques
 }
bench-view-tag = L'étiquette
bench-view-sample = Numéro d'exemple. Le vrai numéro est attribué à l'enregistrement.
bench-view-needed = À compléter
bench-build-jump = { $size } { $connection } est fait pour du tuyau { LIST($usual, style: "or") }, mais le tuyau est -{ $hose }.
    .mend = Si l'embout est réduit ou augmenté, saisissez { $hose } dans « { bench-field-end-hose_dash } ». Sinon, corrigez la taille.
bench-build-jump-use = L'embout est réduit ou augmenté : utiliser { $dash }

## Identify

bench-identify = Identifier une extrémité
bench-look-keys = Touches : 1 à 9 choisissent une image, 0 répond « impossible à dire ».
bench-identify-button = Identifier
bench-identify-not-sure = Je ne sais pas
bench-identify-seat = { $seat ->
    [face] face plane à joint torique
    [boss] joint torique sous l'hexagone
    [flat] siège plat
    [taper] sans siège, filetage conique
   *[degrees] { $seat }°
 }
bench-identify-cone-outside = en saillie, comme un nez
bench-identify-cone-inside = en creux, comme un entonnoir
bench-identify-flank = { $angle }°
bench-identify-series = { $series ->
    [S] lourde (S)
   *[L] légère (L)
 }
bench-identify-cannot = Je ne peux pas le mesurer
bench-identify-hint = { $example } ou 1 1/16 in
bench-identify-advice = Tenez le pied à coulisse en biais par rapport au filetage. Les sièges de 37° et de 45° ont le même filetage dans plusieurs tailles, mais ne font pas étanchéité ensemble : utilisez un calibre de siège.
bench-identify-measure-next = À mesurer ensuite :
bench-identify-possible = Raccordements possibles, le plus probable d'abord
bench-identify-likelihood = Probabilité
bench-identify-percent = { $percent } %
bench-identify-why = Pourquoi
bench-identify-use-for = Utiliser pour
bench-identify-differs = Différences :
bench-identify-look-alike = À ne pas confondre :

## Printing

bench-run-registered = { $count ->
    [one] { $count } étiquette enregistrée
   *[other] { $count } étiquettes enregistrées
 }
bench-run-blocked = N'imprimez pas cette étiquette.
bench-run-untested = Épreuve non encore réussie : { $count }. Seule la fiche suiveuse peut être imprimée ; imprimez les étiquettes une fois les épreuves réussies.
bench-batch-title = Sertissage et épreuve
bench-batch-heading = Sertissage et épreuve de { $count } { $count ->
        [one] flexible
       *[other] flexibles
     }
bench-batch-test = Éprouver
bench-batch-crimp-save = Enregistrer les sertissages
bench-batch-pass = Sélection : réussie
bench-batch-fail = Sélection : échouée
bench-batch-required = Pression d'épreuve requise : { $pressure }, maintien de { $low } à { $high } s ({ $count } de la série).
bench-batch-unknown = Pression d'épreuve requise inconnue pour { $count } de la série : enregistrez-les séparément, ou entrez la pression de service du fabricant et sa source.
bench-batch-certificate = Certificat du lot { $batch }
bench-batch-each = Un certificat chacun
bench-batch-hint = L'épreuve est enregistrée pour tous les flexibles sélectionnés, ou pour aucun. Décochez le flexible qui a fui et enregistrez-le comme échoué.
bench-batch-untested = non éprouvé
bench-batch-same-hose = La série a plusieurs tuyaux : enregistrez les sertissages sur la fiche de chaque flexible.
bench-batch-not-of-run = L'étiquette { $number } n'est pas de cette série.
    .mend = Enregistrez son épreuve sur sa propre fiche.
bench-customer-none = Aucun flexible ni aucune commande ne nomme le client « { $name } ».
    .mend = Vérifiez l'orthographe, ou utilisez la recherche.
bench-customer-contacts = Contacts
bench-customer-no-contacts = Aucun contact n'est enregistré. Les contacts viennent avec les demandes de commande.
bench-customer-machines = Machines
bench-customer-export = Exporter les données
bench-customer-erase = Effacer le contact
bench-customer-erase-ask = Effacer ce contact de toutes les demandes de commande ? Les commandes, les flexibles et les étiquettes restent. Cette action est irréversible.
bench-run-job = Tâche d'impression { $job } sur { $printer } : { $state }.
bench-run-check-job = Vérifiez-la avant de réimprimer ces étiquettes.
bench-run-show-job = Voir la tâche
bench-run-sent-before =
    { $count ->
        [one] Cette étiquette a déjà été imprimée ou envoyée à une imprimante. L'imprimer de nouveau ?
       *[other] { $count } de ces étiquettes ont déjà été imprimées ou envoyées à une imprimante. Les imprimer de nouveau ?
    }
bench-run-reason = Motif de la réimpression
bench-run-only-new = Étiquettes non imprimées seulement ({ $count })
bench-run-print-on = Imprimer sur { $printer }
bench-run-reprint-on = Réimprimer sur { $printer }
bench-run-print-pdf = Imprimer (PDF)
bench-run-reprint-pdf = Réimprimer (PDF)
bench-run-png = Enregistrer en PNG
bench-run-svg = Plaque en SVG
bench-run-dxf = Plaque en DXF
bench-run-next = Nouvelle fabrication
bench-run-counted = Impressions et réimpressions sont consignées dans l'historique de chaque étiquette.
bench-run-last-first = L'imprimante utilisée en dernier est listée en premier.
bench-run-loaded = Étiquettes dans { $printer } : { $label }.
bench-run-assemblies = Flexibles enregistrés
bench-prints-job = Tâche
bench-prints-job-number = Tâche { $job }
bench-prints-no-printer = Aucune imprimante configurée. Les étiquettes s'impriment en PDF ou en PNG. Un responsable peut ajouter des imprimantes réseau dans les réglages.
bench-prints-active = Tâches actives et tâches bloquées
bench-prints-none = Aucune tâche d'impression active.
bench-prints-finished = Terminées
bench-prints-title = Tâche d'impression { $job }
bench-prints-heading = Tâche d'impression { $job } sur { $printer } : { $count } { $count ->
    [one] étiquette
   *[other] étiquettes
 }
bench-prints-state = État de la tâche d'impression
bench-prints-back = Retour aux étiquettes
bench-prints-refresh = Actualiser
bench-prints-label = Étiquette vierge : { $label }.
bench-prints-reason = Motif de la réimpression : { $reason }.
bench-prints-requested = Demandée le { $moment } UTC.
bench-prints-requested-by = Demandée le { $moment } UTC par { $name }.
bench-prints-counts = Une étiquette compte comme imprimée dès que l'imprimante l'accepte, même si le résultat n'est pas connu.
bench-prints-tags = Étiquettes de cette tâche
bench-state-waiting = En attente de { $printer }.
bench-state-sending = Envoi à { $printer }.
bench-state-printing = Acceptée par { $printer } comme tâche { $job }.
bench-state-done = { $printer } a imprimé cette tâche.
bench-state-done-by = { $printer } a imprimé cette tâche (confirmé par { $name }).
bench-state-failed = { $printer } n'a pas imprimé cette tâche.
bench-state-failed-partly = { $printer } n'a pas imprimé toutes les étiquettes.
bench-state-unknown = Elle a peut-être été imprimée. Vérifiez { $printer }, puis renvoyez-la ou marquez-la comme imprimée.
bench-state-dropped = Annulée.
bench-state-dropped-by = Annulée par { $name }.
bench-state-attempts = Envoyée { $count } fois.
bench-state-send-again = Renvoyer
bench-state-mark-printed = Marquer comme imprimée
bench-state-cancel = Annuler la tâche
bench-state-cancel-ask = Annuler cette tâche d'impression ? Vous pourrez imprimer les étiquettes plus tard.

## A tag's record

bench-record-title = Étiquette { $number }
bench-record-withdrawn = Retiré du service : ne pas utiliser.
bench-record-signature = Signature de l'étiquette lue : { $said }
bench-record-blocked = Bloqué : n'imprimez pas cette étiquette.
bench-record-replaced-by = Remplacé par
bench-record-replacement-built = Un remplaçant est fabriqué. Son montage n'est pas enregistré :
bench-record-to-be-fitted = Ce remplaçant est fabriqué. Enregistrez « montage » une fois qu'il est sur la machine. D'ici là, celui-ci reste en service :
bench-record-assembly = Flexible
bench-record-replaces = Remplace
bench-record-order = Commande
bench-record-reprint = { $count ->
    [one] Réimprimer ({ $count } impression)
   *[other] Réimprimer ({ $count } impressions)
 }
bench-record-build-replacement = Fabriquer le remplaçant
bench-record-build-copy = Fabriquer une copie
bench-record-phone-page = Voir la page mobile
bench-record-do-not-use = Imprimer l'étiquette « Ne pas utiliser »
bench-record-history = Historique
bench-record-event = Événement
bench-record-proof-line = { $pressure }, { $hold } s, { $medium }, { $tester }
bench-record-crimp-in = Extrémité { $end } : { $measured } mm, dans la bande de { $low } à { $high } mm
bench-record-crimp-out = Extrémité { $end } : { $measured } mm, hors de la bande de { $low } à { $high } mm
bench-record-printed-on = Étiquette vierge : { $label }. Imprimante : { $printer }.
bench-record-printed-as = Étiquette vierge : { $label }. Fichier : { $form }.
bench-record-printed-label = Étiquette vierge : { $label }.
bench-record-crimp = Diamètre de sertissage
bench-record-crimp-end = Extrémité { $end } (mm)
bench-record-crimp-shell = Jupe, extrémité { $end }
bench-record-crimp-choice = { $shell } : { $diameter } +{ $plus } -{ $minus } mm ({ $source })
bench-record-crimp-save = Consigner le diamètre
bench-record-crimp-none = Aucun diamètre de sertissage pour { $hose }. Un responsable peut en ajouter un dans les réglages, d'après le tableau du fabricant d'embouts.
bench-record-proof = Épreuve de pression
bench-record-proof-danger = La pression accumulée peut tuer ou blesser.
bench-record-proof-care = Purgez tout l'air avant l'épreuve, restez derrière la protection et suivez les instructions du fabricant du banc d'épreuve et la réglementation locale.
bench-record-proof-required = Pression d'épreuve requise : { $pressure }, durée de maintien { $low } à { $high } s.
bench-record-proof-unknown = Pression d'épreuve requise inconnue : il faut d'abord la pression de service du fabricant. Durée de maintien { $low } à { $high } s.
bench-record-proof-ask-rating = Inconnu ou non vérifié : { LIST($parts) }. Saisissez avec l'épreuve la pression de service du fabricant et sa source.
bench-record-proof-result = { $result ->
        [passed] Épreuve conforme
        [tested] Essai, pas une épreuve
        [held] Bloqué : ne pas utiliser
        [outdated] Essai avant sertissage : à refaire
       *[failed] Échouée
     }
bench-record-proof-slip = Au-dessus de la pression minimale d'éclatement de { $burst } : vérifiez la valeur et son unité.
bench-record-proof-over = Au-dessus de { $most } : le flexible sera bloqué jusqu'à l'accord écrit des fabricants.
bench-record-proof-no-rating = Il faut la pression de service du fabricant avant qu'une épreuve puisse être conforme.
bench-record-proof-low = Moins que les { $called } exigés : pas une épreuve.
bench-record-proof-enough = Suffisant pour l'épreuve.
bench-record-lower-hint = Exemple : plan client 4711
bench-record-allow = Accord écrit des fabricants
bench-record-allow-save = Enregistrer l'accord
bench-record-allow-who = Un responsable d'atelier peut enregistrer l'accord écrit des fabricants.
bench-record-allowed-line = { $who }, { $day }, { $document }
bench-record-source = Source : { $source }
bench-record-pressure-hint = bar ou psi
bench-record-pass = Réussie
bench-record-fail = Échouée
bench-record-fail-ask = Consigner l'épreuve comme échouée ? L'étiquette sera bloquée.
bench-record-certificate = Certificat (PDF)
bench-record-card = Fiche de montage (PDF)
bench-record-no-card = Pas de fiche de montage pour ce flexible
bench-record-lot-reason = Le lot de touret est connu comme un autre tuyau. Motif : { $reason }
bench-record-void = ANNULÉ, ne pas monter.
bench-record-slips = Corriger ou annuler l'enregistrement
bench-record-correct = Corriger l'enregistrement
bench-record-correct-save = Enregistrer la correction
bench-record-corrected = { $field } : { $old } → { $new }.
bench-record-void-title = Annuler l'enregistrement
bench-record-void-hint = Uniquement tant que l'étiquette n'a jamais été scannée et que le flexible n'a été ni monté, ni éprouvé, ni remis. Ensuite, retirez-le du service.
bench-record-void-ask = Annuler cet enregistrement ? Le flexible ne doit pas être monté.
bench-record-void-save = Annuler
bench-record-change-made = Modification demandée : « { $changes } ». Modifié :
bench-record-change-considered = Modification demandée : « { $changes } ». Prise en compte, rien de saisi.
bench-record-add-event = Ajouter à l'historique
bench-record-withdraw = Retirer du service ...

## Find, machines

bench-find = Rechercher
bench-find-number-hint = ou une partie
bench-find-pressure-hint = bar ou psi
bench-find-any = indifférent
bench-find-printed-yes = imprimée
bench-find-printed-no = non imprimée
bench-find-withdrawn-yes = retirée du service
bench-find-withdrawn-no = en service
bench-find-clear = Effacer
bench-find-older = Plus anciens
bench-machine-title = Machine { $machine }
bench-machine-none = Sans machine
bench-machine-installed = Flexibles montés : { $count }, par position
bench-machine-order = Commander
bench-machine-order-one = Commander { $number }
bench-machine-order-selected = Commander les flexibles sélectionnés
bench-machine-order-button = Commander la sélection
bench-machine-empty = Aucun flexible n'est enregistré pour cette machine.

## Orders

bench-orders-title = Demandes de commande
bench-orders-open-only = Seulement en cours
bench-orders-all = Tout afficher
bench-orders-order = Commande
bench-orders-received = Reçue
bench-orders-needed = Date souhaitée
bench-orders-from = De
bench-orders-action = Action
bench-orders-reference = Référence client : { $reference }
bench-orders-no-name = sans nom
bench-orders-what = { $hose }, { $length }
bench-orders-build = Fabriquer
bench-orders-none = Aucune demande de commande en cours. Les clients les envoient depuis les pages des étiquettes.
bench-order-title = Commande { $order }
bench-order-heading = Commande
bench-order-details = Détails de la commande
bench-order-withdrawn = Étiquette d'un flexible retiré du service ({ LIST($reasons) }) : réalisez-le à neuf selon sa spécification. Ses lots ne sont pas repris. Vérifiez d'abord si les mêmes composants peuvent être réutilisés.
bench-order-from-tag = D'après l'étiquette
bench-order-foreign-tag = { $number } (absent de nos dossiers ; spécification lue sur l'étiquette)
bench-order-no-tag = aucune
bench-order-reference = Référence client
bench-order-contact = Contact
bench-order-built = Fabriqué pour cette commande :
bench-order-answer = Répondre
bench-order-message = Message au client (obligatoire pour une question)
bench-order-verb-accepted = Accepter la commande
bench-order-verb-asked = Interroger le client
bench-order-verb-declined = Refuser la commande
bench-order-verb-done = Marquer comme terminée
bench-order-hint = Le client voit l'état et ce message sur la page de la commande.

## Withdrawals

bench-withdrawn-title = Retiré du service : ne pas utiliser
bench-withdrawn-state = Retiré du service
bench-withdrawn-lifted = Levés
bench-withdrawn-lifted-because = Motif de la levée : { $reason }
bench-withdrawn-lifted-on = Levé le { $day }.
bench-withdrawn-lifted-on-by = Levé le { $day } par { $name }.
bench-withdrawn-affected = Flexibles et clients concernés
bench-withdrawn-lift-this = Lever ce retrait ...
bench-withdrawn-lift-reason = Motif de la levée
bench-withdrawn-lift = Lever le retrait
bench-withdrawn-none = Rien n'est retiré du service.
bench-withdrawn-new = Retirer du service
bench-withdrawn-show = Voir les flexibles concernés
bench-withdrawn-count = { $count ->
    [one] { $count } flexible enregistré est concerné.
   *[other] { $count } flexibles enregistrés sont concernés.
 }
bench-withdrawn-customers = Clients : { $count }.
bench-withdrawn-reason = Motif (affiché en premier à chaque scan)
bench-withdrawn-seconds = Les pages ouvertes sur les téléphones l'affichent en { $count } secondes au plus.
bench-withdrawn-lot-closed = Plus aucun flexible de ce lot ne peut être enregistré.
bench-withdrawn-call-list = Liste des clients (CSV)
bench-withdrawn-call = Qui appeler
bench-withdrawn-letters = Lettres (PDF)

## Import and export

bench-lists-import = Importer une liste
bench-lists-how = CSV ou XLSX, une ligne par spécification. Associez les colonnes, vérifiez les problèmes trouvés dans chaque cellule, puis enregistrez toute la liste. Si une ligne échoue, rien n'est enregistré.
bench-lists-file = Fichier, 5 Mo au plus
bench-lists-read = Importer
bench-lists-template = Modèle ({ $form })
bench-lists-columns = Colonnes admises
bench-lists-export = Exporter
bench-lists-all = Tous les flexibles ({ $form })
bench-lists-everything = Tout (ZIP)
bench-lists-epcis = Historique EPCIS 2.0
bench-lists-formats = Le fichier ZIP contient du JSON Lines et du CSV. EPCIS est une norme ouverte de GS1 utilisée par de grands clients.
bench-lists-unprinted = Enregistrées, pas encore imprimées
bench-lists-tags = { $count } { $count ->
    [one] étiquette
   *[other] étiquettes
 }
bench-match-title = Associer les colonnes
bench-match-rows = { $name } : { $count } { $count ->
    [one] ligne
   *[other] lignes
 }
bench-match-problems = { $count } { $count ->
    [one] problème
   *[other] problèmes
 }
bench-match-nothing = Rien n'a été enregistré. Corrigez la liste et importez-la de nouveau, ou associez les colonnes autrement.
bench-match-by-cell = Problèmes par cellule
bench-match-also = { $count ->
    [one] Aussi en { $first }.
   *[other] Aussi dans { $count } autres cellules, de { $first } à { $last }.
 }
bench-match-cell = Cellule
bench-match-column = Colonne
bench-match-value = Valeur
bench-match-problem = Problème
bench-match-fix = Correction
bench-match-first-problems = Les { $count } premiers sont affichés.
bench-match-good = La vérification n'a trouvé aucun problème.
bench-match-found = Lignes : { $rows }. Flexibles : { $count }. Rien n'est encore enregistré.
bench-match-register = Enregistrer { $count } et imprimer
bench-match-preview = Aperçu
bench-match-cautions = { $count } { $count ->
    [one] mise en garde
   *[other] mises en garde
 }
bench-match-matched = Colonnes associées
bench-match-theirs = Colonne du fichier
bench-match-sample = Exemples
bench-match-ours = Champ
bench-match-unit = Unité de l'en-tête : { $unit }
bench-match-words = Termes de la liste
bench-match-words-hint = Lecture de chaque terme. Modifiez-la s'il signifie autre chose, puis vérifiez à nouveau la liste.
bench-match-word-for = Signification de « { $word } »
bench-match-word-none = Choisir une signification
bench-match-word-means = Lu comme
bench-match-no-heading = (sans titre)
bench-match-field-for = Champ pour { $column }
bench-match-field-for-number = Champ pour la colonne { $number }
bench-match-leave-out = ne pas importer
bench-match-left-out-columns = Non lu : { LIST($columns) }. Rien de ces colonnes n'est enregistré.
bench-match-check = Vérifier
bench-match-another = Autre fichier

## Statistics

bench-figures = Statistiques
bench-figures-title = Statistiques des { $days } derniers jours
bench-figures-period = Période
bench-figures-days = { $days } jours
bench-figures-year = 1 an
bench-figures-registered = Flexibles enregistrés
bench-figures-printed = Étiquettes imprimées
bench-figures-reprints = { $count } { $count ->
    [one] réimpression
   *[other] réimpressions
 }
bench-figures-scanned = Scans
bench-figures-orders = Demandes de commande
bench-figures-ordered = Commandes après scan
bench-figures-from-tags = { $count } depuis une étiquette scannée
bench-figures-plot = { $title } : { $count } du { $from } au { $to }, { $top } au plus { $span ->
    [week] par semaine
   *[day] par jour
 }
bench-figures-bar = { $day } : { $count }
bench-figures-oldest = Flexibles les plus anciens encore en service (d'après les dossiers)
bench-figures-guidance = Indication.
bench-figures-next = Prochaine date recommandée
bench-figures-next-date = { $day } : { $rule }
bench-figures-past = toutes les dates sont dépassées
bench-figures-sources = Sources des dates
bench-figures-rule = { $rule } Source : { $source } ({ $confidence })

## Settings

bench-shop-token = Jeton pour { $device }.
bench-shop-token-once = Copiez-le maintenant dans l'appareil. Il ne sera plus affiché.
bench-shop-proxy = Des requêtes arrivent par { $address } au nom d'autres adresses, et TAGGER_TRUSTED_PROXIES ne la nomme pas.
bench-shop-proxy-mend = Si c'est votre proxy, indiquez TAGGER_TRUSTED_PROXIES={ $address } : sans cela, tous les visiteurs comptent pour un seul et l'un d'eux peut épuiser les limites de tous. Si vous n'avez pas de proxy, quelqu'un envoie une fausse adresse ; elle n'est pas crue.
bench-shop-undelivered = Messages non remis
bench-shop-undelivered-hint = Avis de commande. L'envoi est réessayé à des intervalles de six heures au plus. Corrigez la cause indiquée.
bench-shop-to = À
bench-shop-tries = Essais
bench-shop-people = Personnes
bench-shop-sign-in = Connexion
bench-shop-blocked = connexion désactivée
bench-shop-role-of = Rôle de { $name }
bench-shop-set-role = Attribuer
bench-shop-everywhere = Déconnecter partout
bench-shop-disable = Désactiver la connexion
bench-shop-disable-ask = Désactiver la connexion de { $name } ?
bench-shop-enable = Réactiver la connexion
bench-shop-new-password = Nouveau mot de passe ...
bench-shop-new-password-for = Nouveau mot de passe de { $name }
bench-shop-set-password = Définir le mot de passe
bench-shop-add-person = Ajouter une personne
bench-shop-initial-password = Mot de passe initial
bench-shop-roles = Monteur-sertisseur : fabrique, éprouve et imprime. Comptoir : répond aussi aux commandes, retire du service et importe des listes. Responsable : lève aussi les retraits, voit les statistiques et change les réglages.
bench-shop-devices = Appareils et programmes
bench-shop-device = Appareil
bench-shop-device-role = Rôle de l'appareil
bench-shop-token-head = Jeton
bench-shop-revoked = révoqué
bench-shop-revoke = Révoquer
bench-shop-create-token = Créer un jeton
bench-shop-api = API JSON pour appareils et programmes
bench-shop-values = Valeurs des fabricants
bench-shop-values-hint = Conservées lors de la construction, pour tous les flexibles suivants. Une valeur retirée n'est plus utilisée et reste dans cette liste.
bench-shop-value-withdraw = Retirer
bench-overrated = Au-dessus des valeurs actuelles
bench-overrated-hint = La pression inscrite sur ces étiquettes dépasse ce que permettent les tables actuelles. La valeur la plus basse s'applique : prévenez l'utilisateur du flexible.
bench-overrated-none = Aucun flexible enregistré ne dépasse les valeurs actuelles.
bench-shop-crimp-diameter = Diamètre
bench-shop-crimp-band = { $diameter } +{ $plus } -{ $minus } mm
bench-shop-recipes = Spécifications enregistrées
bench-shop-recipe-delete-ask = Supprimer la spécification { $name } ?
bench-shop-keep = Données des personnes
bench-shop-keep-hint = Les contacts des commandes terminées, les photos et les noms des signalements de pose traités sont effacés après ces jours ; les personnes à appeler au sujet d'un retrait restent. Les dossiers et l'historique des flexibles restent. Les jours sont des réglages du serveur. Les copies faites avant contiennent encore ce qui est effacé.
bench-shop-keep-contacts = Contacts
bench-shop-keep-photos = Photos
bench-shop-keep-reports = Noms dans les signalements de pose
bench-shop-keep-days = { $days ->
        [0] toujours conservés
       *[other] { $days } jours ; à effacer maintenant : { $due }
     }
bench-shop-keep-erase = Effacer maintenant
bench-shop-keep-ask = Effacer ce qui a été conservé assez longtemps ? Cette action est irréversible.
bench-shop-no-recipes = Aucune spécification enregistrée. Enregistrez-en une sur la page de fabrication.
bench-shop-me = Mon mot de passe et mes sessions
bench-shop-printers = Imprimantes
bench-shop-no-printers = Aucune imprimante. Les étiquettes s'impriment en PDF ou en PNG.
bench-shop-label-loaded = Étiquettes chargées
bench-shop-label-varies = variable
bench-shop-add-printer = Ajouter une imprimante réseau
bench-shop-printer-default = celle de l'imprimante
bench-shop-check-printer = Vérifier et ajouter
bench-shop-printer-hint = Toute imprimante qui accepte IPP avec PDF ou PWG Raster. Le serveur se connecte à cette adresse : seul un responsable peut donc ajouter des imprimantes.
bench-printer-title = Imprimante { $name }
bench-printer-status = État actuel de l'imprimante
bench-printer-model = Modèle
bench-printer-state-idle = prête
bench-printer-state-processing = occupée
bench-printer-state-stopped = arrêtée
bench-printer-refuses = N'accepte pas de tâches.
bench-printer-formats = Formats
bench-printer-no-format = ni PDF ni PWG Raster
bench-printer-media = Support chargé
bench-printer-settings = Réglages de l'imprimante
bench-printer-added = Ajoutée
bench-printer-check = Vérifier de nouveau
bench-printer-back = Retour aux réglages
bench-printer-remove = Retirer
bench-printer-remove-ask = Retirer { $name } ? Les tâches en attente ne seront pas imprimées.
bench-printer-change = Pour changer l'adresse, la résolution ou l'étiquette vierge, retirez l'imprimante et ajoutez-la de nouveau sous le même nom.
bench-me-new-password = Nouveau mot de passe
bench-me-new-password-long = Nouveau mot de passe (12 caractères au moins)
bench-me-change = Changer le mot de passe et se déconnecter partout
bench-me-sign-out-this = Se déconnecter de cet appareil

## JSON API

bench-api-title = API JSON
bench-api-openapi = Description lisible par machine (OpenAPI)
bench-api-token = Envoyez un jeton d'appareil (créé dans les réglages) dans l'en-tête :
bench-api-errors = Les erreurs arrivent en application/problem+json (RFC 9457), avec le problème de chaque champ. Un POST avec l'en-tête Idempotency-Key peut être répété sans risque.
bench-api-verb = Verbe
bench-api-address = Adresse
bench-api-purpose = Objet
bench-api-parameters = Paramètres
## The shop's fittings

bench-field-end-fitting = Référence article
bench-build-fitting-hint = scanner ...
bench-field-stock_number = Référence article
bench-field-fitting_series = Série d'embout (jupe)
bench-field-swivel = Tournant après sertissage
bench-field-cut_off_mm = Retrait de coupe
bench-field-cut_off_kind = Le retrait finit à
bench-field-insertion_depth_mm = Profondeur d'insertion
bench-stock-title = Embouts
bench-stock-hint = Les cotes sont celles du fabricant d'embouts. Ce programme n'en fournit aucune.
bench-stock-find = Rechercher
bench-stock-none = Aucun embout trouvé.
bench-stock-keep = Ajouter ou modifier un embout
bench-stock-edit = Modifier
bench-stock-delete-ask = Supprimer { $number } de la liste ? Les étiquettes qui l'indiquent la gardent.
bench-stock-import = Importer une liste
bench-stock-import-hint = Toutes les lignes sont importées, ou aucune. Une référence déjà dans la liste est remplacée.
bench-stock-kind-seat_to_hose_butt = siège à butée du tuyau (où le tuyau finit)
bench-stock-kind-seat_to_shell_mouth = siège à l'entrée de la jupe
bench-stock-yes = oui
bench-stock-no = non
bench-field-hose_part = Référence du tuyau
bench-field-die = Mors
bench-field-skive_outside_mm = Dénudage extérieur (longueur)
bench-field-skive_inside_mm = Dénudage intérieur (longueur)
bench-field-machine_setting = Réglage de la presse

## Hoses of the shop

bench-hoses-title = Tuyaux de l'atelier
bench-hoses-hint = Les valeurs sont celles du fabricant du tuyau, avec leur source. Elles ne valent que pour un tuyau de cette référence.
bench-hoses-none = Aucun tuyau enregistré.
bench-hoses-keep = Ajouter ou modifier un tuyau
bench-field-part = Référence du fabricant
bench-field-manufacturer = Fabricant
bench-field-standard = Norme du tuyau
bench-field-edition = Édition
bench-field-max_working_bar = Pression de service maximale
bench-field-outside_diameter_mm = Diamètre extérieur
bench-field-fluids = Fluides admis par le fabricant

bench-crimps-title = Fiches de sertissage
bench-crimps-hint = D'après le tableau du fabricant d'embouts pour ce tuyau et cette série d'embouts. Ce programme n'en fournit aucune.
bench-crimps-none = Aucune fiche de sertissage enregistrée.
bench-crimps-keep = Ajouter ou modifier une fiche de sertissage
bench-crimps-keep-hint = Une fiche vaut pour un tuyau et une série d'embouts ; avec les mêmes, elle remplace la fiche présente. Sans référence du tuyau, elle vaut pour la norme seule et n'approuve rien ensemble.
bench-crimps-any-part = tout tuyau de cette norme : n'approuve rien ensemble
bench-crimps-delete-ask = Supprimer la fiche de sertissage pour { $series } ? Les sertissages mesurés gardent leurs valeurs.
bench-crimps-import-hint = Toutes les lignes sont importées, ou aucune. Une fiche pour le même tuyau et la même série d'embouts est remplacée.
bench-hoses-import-hint = Toutes les lignes sont importées, ou aucune. Un tuyau de même référence et de même module est remplacé.
bench-flush-title = Rinçage
bench-flush-hint = Comment et avec quoi l'intérieur a été nettoyé, et par qui. L'historique et le certificat l'indiquent. Ce n'est pas une mesure de la propreté demandée.
bench-flush-last = Dernier rinçage
bench-field-flushed_by = Rincé par

## Codes of a phone beside the password

bench-code = Code de votre téléphone
bench-code-give = Les six chiffres que l'application de votre téléphone affiche maintenant
bench-code-recovery = Téléphone perdu ? Saisissez à la place un de vos codes de secours ; chacun sert une seule fois.
bench-code-other = Se connecter sous un autre nom
bench-code-wrong = Le code n'est pas valable.
    .mend = Attendez le code suivant et vérifiez l'heure du téléphone.
bench-account-sessions = Où vous êtes connecté
bench-account-this = Ce navigateur
bench-account-phone = Téléphone
bench-account-computer = Ordinateur
bench-account-since = depuis { $since }, dernière utilisation { $seen }
bench-account-end = Terminer
bench-account-end-of = Terminer la session du { $since }
bench-account-end-others = Terminer toutes les autres sessions
bench-account-happened = Modifications de votre compte
bench-account-password = Le mot de passe a été modifié.
bench-account-role = Le rôle a été modifié.
bench-account-codes-on = Les codes d'un téléphone ont été configurés.
bench-account-codes-off = Les codes d'un téléphone ne sont plus demandés.
bench-account-recovery-code = Un code de secours a été utilisé.
bench-account-repeated-code = Un code de votre téléphone a été saisi une seconde fois et refusé.
bench-account-new-browser = Connexion avec un nouveau navigateur.
bench-account-by = Par : { $name }.
bench-account-from = Depuis : { $address }.
bench-account-not-you = Si ce n'était pas vous : changez votre mot de passe, terminez toutes les autres sessions et prévenez le responsable d'atelier.
bench-account-seen = J'en ai pris connaissance
bench-account-untold = Votre mode de connexion a été modifié.
bench-account-look = Voir ce qui a changé
bench-codes = Codes de votre téléphone
bench-codes-why = Avec des codes, un mot de passe découvert par un tiers ne suffit plus pour se connecter. Recommandé aux responsables d'atelier.
bench-codes-set-up = Configurer les codes
bench-codes-are-asked = Un code de votre téléphone vous est demandé à la connexion.
bench-codes-off = Ne plus demander de codes
bench-codes-another = Configurer un autre téléphone
bench-codes-hint = Scannez le symbole avec une application de codes à usage unique, puis saisissez le code affiché.
bench-codes-picture = Symbole à scanner avec le téléphone
bench-codes-type = Ou saisissez ce secret dans l'application :
bench-codes-first = Code affiché par l'application
bench-codes-ask = Demander les codes désormais
bench-codes-on = Un code vous sera désormais demandé à la connexion.
bench-codes-recovery = Codes de secours
bench-codes-recovery-hint = Notez-les et gardez-les à l'écart du téléphone : chacun remplace un code une seule fois. Ils ne sont affichés que maintenant.
bench-shop-codes-off = Ne plus demander de codes
bench-shop-codes-ask = Ne plus demander de codes à { $name } ? Le mot de passe seul suffira alors.

## Label templates at true size

bench-templates-title = Étiquettes en vraie grandeur
bench-templates-hint = Spécimens avec des valeurs inventées, à { $dpi } dpi. Imprimez cette page à 100 %, ou réglez le zoom jusqu'à ce que le trait ci-dessous mesure 100 mm : chaque étiquette a alors sa vraie grandeur.
bench-templates-language = Langue des étiquettes
bench-templates-ruler = Ce trait mesure 100 mm (3,94 in).
bench-templates-size = largeur { $width }, hauteur { $height }
bench-templates-holds = Contenu
bench-templates-codes = Codes QR
bench-templates-survives = Tenue aux dommages
bench-templates-list = { LIST($items) }
bench-templates-symbol = { $count ->
    [one] 1 code, niveau { $level }, modules de { $module } mm
   *[other] { $count } codes, niveau { $level }, modules de { $module } mm
}
bench-templates-tightening = serrage et sa référence
bench-templates-caution = la mise en garde
bench-templates-code-all = code QR avec toute la spécification
bench-templates-code-number = code QR avec le seul lien du numéro d'étiquette
bench-templates-bars = numéro d'étiquette en code à barres
bench-templates-sign = un signe : ne pas utiliser
bench-templates-stays = Papier pour l'atelier : la tenue aux dommages n'est pas mesurée.
bench-templates-measured = La spécification restait lisible sur { $all } % des étiquettes endommagées (mesuré le { $day }, { $trials } essais par type de dommage, 203 dpi) :
bench-templates-not-measured = Non mesuré sur cette disposition.
bench-templates-wound-torn_corner = coin arraché : { $share } %
bench-templates-wound-torn_edge = bord arraché, 8 mm : { $share } %
bench-templates-wound-rubbed_band = bande effacée par frottement, 8 mm : { $share } %
bench-templates-wound-scratches = 14 rayures : { $share } %
bench-templates-wound-faded = impression pâlie : { $share } %
bench-templates-wound-oil = huile usée : { $share } %
bench-templates-wound-burnt_half = une moitié brûlée : { $share } %
bench-templates-show = Voir toutes les étiquettes en vraie grandeur

## What was found on a gauge sheet

bench-field-found = Repères trouvés sur la feuille
bench-field-scale = Mesure de la ligne de contrôle
