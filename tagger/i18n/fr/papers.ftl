# Papers: the certificate of a proof test, letters about a withdrawal, the call list.

## Captions that several papers share

papers-tag-number = Numéro d'étiquette
papers-hose = Tuyau
papers-hose-assembly = Flexible
papers-machine-position = Machine, position
papers-built-on = Fabriqué le
papers-customer = Client
papers-with-lot = { $part }, lot { $lot }

## The certificate

papers-no-proof-test = Aucune épreuve n'est enregistrée pour l'étiquette { $number }.
    .mend = Enregistrez d'abord une épreuve.
papers-issued-anew = Établi à nouveau le { $day } après correction de l'enregistrement ; remplace le certificat établi auparavant. { LIST($fields) }.
papers-corrected = { $field } : { $new } au lieu de { $old }
papers-field-hose-lot = Lot du tuyau
papers-field-end_a-lot = Lot d'embouts, extrémité A
papers-field-end_b-lot = Lot d'embouts, extrémité B
papers-field-note = Note
papers-proof-title = Certificat d'épreuve - flexible
papers-proof-file-title = Épreuve de { $number }
papers-proof-result-line = { $result ->
        [passed] Étiquette { $number } : conforme
        [tested] Étiquette { $number } : essayé à { $pressure }
        [held] Étiquette { $number } : BLOQUÉ - ne pas utiliser
        [outdated] Étiquette { $number } : ESSAI FAIT AVANT LE SERTISSAGE - à refaire
       *[failed] Étiquette { $number } : NON CONFORME - ne pas utiliser
     }
papers-proof-withdrawn-line = Étiquette { $number } : RETIRÉE - ne pas utiliser ({ LIST($reasons) })
papers-proof-crimp-line = Étiquette { $number } : SERTISSAGE HORS TOLÉRANCE - ne pas utiliser
papers-tested-title = Certificat d'essai de pression - flexible
papers-end-a = Extrémité A
papers-end-b = Extrémité B
papers-length = Longueur
papers-clocking = Angle d'orientation
papers-working-pressure = Pression maximale de service
papers-working-pressure-source = Source de la pression de service
papers-tighten-a = Serrage, extrémité A
papers-tighten-b = Serrage, extrémité B
papers-torque = { $torque }, { $basis } ({ $source })
papers-fluid = Fluide
papers-temperature = Température maximale
papers-danger = Attention
papers-test = L'épreuve
papers-result = Résultat
papers-result-said = { $result ->
        [passed] conforme
        [tested] essayé à { $pressure }
        [held] bloqué
        [outdated] essai fait avant le sertissage : il ne compte pas
       *[failed] non conforme
     }
papers-result-why = Portée
papers-rating-given = Pression de service pour l'épreuve
papers-rating-given-said = { $pressure }, source : { $source }
papers-allowed = Accord écrit de
papers-allowed-said = { $who }, { $day }, { $document }
papers-flushing = Rinçage
papers-flushed = { $method } ; { $who }, { $day }
papers-pressure = Pression
papers-pressure-required = Exigée
papers-not-recorded = non enregistrée
papers-hold-time = Durée de maintien
papers-hold = { $held } s
papers-hold-least = { $held } s (exigée : au moins { $least } s)
papers-hold-range = { $held } s (exigée : { $least } à { $most } s)
papers-hold-longer = { $held } s (exigée : { $least } à { $most } s ; plus longue que la durée exigée)
papers-medium = Fluide d'épreuve
papers-tested-by = Épreuve faite par
papers-recorded = Enregistrée le
papers-recorded-at = { $day } { $time } UTC
papers-note = Remarque
papers-crimps = Diamètres de sertissage
papers-crimp = { $holds ->
        [in] { $measured } mm, exigé { $low } à { $high } mm ({ $shell } ; { $source }) : dans la tolérance
       *[out] { $measured } mm, exigé { $low } à { $high } mm ({ $shell } ; { $source }) : HORS TOLÉRANCE
     }
papers-proof-limits = Ce certificat rend compte d'une seule épreuve de ce flexible, à la date indiquée. Il ne dit rien de son état ultérieur : contrôlez le flexible avant emploi. Les données des fabricants du tuyau et des embouts prévalent.
papers-own-statement = Ceci est la déclaration propre de { $shop } sur son travail et ses essais. Ce n'est pas un certificat de réception d'un organisme indépendant.
papers-chain = Dossiers jusqu'au maillon { $head } de la chaîne. Avec lui, « tagger audit --head » montre si l'un d'eux a été modifié depuis.
## The fitter's card, in the bag with the hose assembly

papers-card-title = Montage de ce flexible
papers-card-file-title = Fiche de montage { $number }
papers-card-scan = Scannez le code avant le montage : la page indique si le flexible a été retiré du service ou si une valeur a changé depuis l'impression de cette fiche.
papers-card-end = { $end } : { $what }
papers-card-screen = { $n }. { $title }
papers-card-screen-end = { $n }. { $title } : extrémité { $end }
papers-card-sources = Sources : { LIST($sources) }
papers-order = Référence de commande
papers-method = Méthode
papers-gauge = Manomètre
papers-gauge-valid-until = Étalonnage du manomètre valable jusqu'au
papers-no-batch = L'étiquette { $number } n'a pas été éprouvée dans un lot.
    .mend = Utilisez le certificat de ce flexible.
papers-batch-file-title = Épreuve, lot { $batch }
papers-batch-title = Certificat d'épreuve - lot de flexibles
papers-batch-tested-title = Relevé d'essai de pression - lot de flexibles
papers-batch-number = Certificat { $batch }
papers-batch-result = Épreuve réussie : { $passed } sur { $count }
papers-batch-not-all = Tous les flexibles n'ont pas réussi l'épreuve : lisez le résultat de chacun ci-dessous.
papers-batch-members = Flexibles éprouvés : { $count }
papers-batch-crimp = { $holds ->
        [in] { $measured } mm ({ $low } à { $high })
       *[out] { $measured } mm ({ $low } à { $high }) : HORS TOLÉRANCE
     }
papers-batch-withdrawn = RETIRÉ DU SERVICE - ne pas utiliser
papers-batch-void = ANNULÉ - ne pas utiliser
papers-batch-tested-again = éprouvé de nouveau le { $day } : voir son propre certificat
papers-batch-limits = Ce certificat consigne une épreuve de ces flexibles à la date indiquée. Il ne décrit pas leur état ultérieur : contrôlez chaque flexible avant l'emploi. Les données des fabricants du tuyau et des embouts prévalent.

## Letters about a withdrawal

papers-letter-title = Retrait du service { $withdrawal }
papers-letter-owner = Au propriétaire de ces flexibles
papers-letter-heading = N'utilisez pas les flexibles indiqués ici
papers-letter-made-from = Ils ont été fabriqués avec le lot du tuyau { $lot }.
papers-letter-fittings = Ils ont des embouts du lot { $lot }.
papers-letter-reason = Ils sont retirés du service. Motif : { $reason }
papers-letter-steps = Arrêtez la machine et consignez-la. Relâchez toute la pression accumulée comme l'indique le manuel de la machine. Vérifiez le numéro d'étiquette de chaque flexible, mettez hors service les flexibles indiqués ici et appelez-nous : nous les remplacerons.
papers-letter-injury = L'huile sous pression qui pénètre sous la peau est une urgence, si petite que soit la plaie : allez immédiatement à l'hôpital.

## The call list

papers-call-customer = Client
papers-call-number = Numéro d'étiquette
papers-call-machine = Machine
papers-call-position = Position
papers-call-hose = Tuyau
papers-call-lots = Lots
papers-call-built_on = Fabriqué le
papers-call-replaced_by = Remplacé par
papers-call-contact = Contact
papers-call-phone = Téléphone
papers-call-email = E-mail

## A customer's list read in

papers-list-too-large = Le fichier { $name } dépasse la limite de { $most } Mo.
    .mend = Divisez-le en plusieurs listes.
papers-list-no-rows = Le fichier { $name } n'a aucune ligne de données.
    .mend = Ajoutez une ligne par spécification.
papers-list-column-not-read = Aucun champ ne correspond à l'en-tête « { $heading } », et la colonne est remplie.
    .mend = Associez la colonne à un champ, ignorez-la ou supprimez-la de la liste.
papers-list-word-not-known = « { $word } » n'est pas un terme connu.
    .mend = Choisissez sa signification. Les plus proches : { LIST($nearest) }.
papers-list-cell-outside = Cette cellule se trouve à droite de la ligne d'en-tête. Une virgule décimale a pu couper une valeur en deux.
    .mend = Vérifiez la ligne : écrivez 49.25 ou mettez "49,25" entre guillemets, puis supprimez le reste.
papers-list-too-many-rows = Le fichier { $name } a plus de { $most } lignes.
    .mend = Divisez-le en plusieurs listes.
papers-list-matched-twice = Le champ { $column } est associé deux fois.
    .mend = Associez chaque champ une seule fois.
papers-list-damaged = La liste a été endommagée pendant le transfert.
    .mend = Envoyez de nouveau le fichier.

## A tag or a lot that was scanned at the bench

papers-scanned-tag = Spécification copiée de l'étiquette { $number }.
papers-scanned-tag-withdrawn = Spécification copiée de l'étiquette { $number }. RETIRÉE DU SERVICE, ne pas utiliser : { $reasons }
papers-scanned-tag-unknown = L'étiquette { $number } ne figure pas dans nos dossiers : la spécification vient de l'étiquette seule. Vérifiez-la sur le flexible avant de fabriquer.
papers-scanned-tag-differ = Étiquette { $number } : l'étiquette et notre dossier diffèrent. La spécification vient du dossier. Cherchez lequel est juste avant de fabriquer.
papers-scanned-tag-differ-withdrawn = Étiquette { $number } : l'étiquette et notre dossier diffèrent. La spécification vient du dossier. Cherchez lequel est juste avant de fabriquer. RETIRÉE DU SERVICE, ne pas utiliser : { $reasons }
papers-scanned-tag-damaged = Étiquette { $number } : le code de l'étiquette est endommagé. La spécification vient de notre dossier. Vérifiez-la sur le flexible.
papers-scanned-tag-damaged-withdrawn = Étiquette { $number } : le code de l'étiquette est endommagé. La spécification vient de notre dossier. Vérifiez-la sur le flexible. RETIRÉE DU SERVICE, ne pas utiliser : { $reasons }
papers-scanned-signature = { $said } Signature : { $signature }.
papers-scanned-signature-broken = { $said } Signature : { $signature }. { $why }
papers-scanned-hose-lot = Lot du tuyau { $lot } : { LIST($hoses) }.
papers-scanned-hose-lot-withdrawn = Lot du tuyau { $lot } : { LIST($hoses) }. RETIRÉ DU SERVICE, ne pas utiliser : { $reasons }
papers-scanned-fitting-lot = Lot d'embouts { $lot }.
papers-scanned-fitting-lot-withdrawn = Lot d'embouts { $lot }. RETIRÉ DU SERVICE, ne pas utiliser : { $reasons }
papers-scanned-unknown = { $text } : première utilisation de ce lot.
papers-scanned-unknown-withdrawn = { $text } : première utilisation de ce lot. RETIRÉ DU SERVICE, ne pas utiliser : { $reasons }
papers-scanned-nothing = Rien n'a été scanné. Scannez le code de nouveau.
papers-scanned-hose = Référence { $part } : { LIST($hoses) }.
papers-scanned-fitting = Référence { $number } : { $end }.

papers-export-everything = Tout ce que conserve le système d'étiquettes, en formats ouverts (UTF-8).
papers-export-assemblies = un flexible par ligne : numéro, spécification, ce que disaient alors les tables, ce que dit l'étiquette
papers-export-table = la même chose en tableau ; ses colonnes de spécification peuvent être relues comme liste
papers-export-events = l'historique, le plus ancien d'abord
papers-export-orders = demandes de commande avec leurs étapes
papers-export-withdrawals = retraits, en vigueur et levés
papers-export-recipes = spécifications gardées sous un nom
papers-export-crimps = fiches de sertissage en vigueur, chacune avec sa tolérance et sa source ; un sertissage mesuré figure dans events.jsonl avec la tolérance à laquelle il a été comparé
papers-export-values = ce que les fabricants disent des pièces, tel que l'atelier le garde ; valeurs remplacées et retirées comprises
papers-export-fittings = les embouts de l'atelier, par référence
papers-export-fitted = signalements qu'un flexible a été monté, avec la décision de l'atelier
papers-export-photos = photos des commandes et des signalements ; chacune est le fichier photos/<id>.jpg
papers-export-left-out = Sont omis : personnes, appareils, mots de passe et sessions, et messages pas encore envoyés.
papers-export-digits = Les chiffres d'une étiquette se lisent sans ce système : son README décrit la structure bit par bit.
