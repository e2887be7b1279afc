# What the store refuses, what became of a print job, and the states of orders and prints.

## Assemblies and registering

store-not-registered = L'étiquette { $number } n'est pas enregistrée.
    .mend = Vérifiez le numéro ou scannez l'étiquette : son code QR contient toute la spécification.
store-run-not-found = La série { $run } n'existe pas.
    .mend = Recherchez plutôt ses étiquettes.
store-rows-none = Il n'y a aucune ligne à enregistrer.
    .mend = Saisissez au moins une ligne.
store-rows-too-many = { $count } flexibles dépassent la limite d'une série ({ $most }).
    .mend = Enregistrez-les en plusieurs séries.
store-danger-reason = { $danger } Le flexible n'est enregistré qu'avec une raison écrite.
    .mend = Choisissez un autre tuyau ou un autre fluide, ou saisissez la raison de le fabriquer ainsi.
store-quantity-not-valid = { $count } n'est pas une quantité valable.
    .mend = Saisissez une quantité de 1 à { $most }.
store-read-back = Le code QR relu ne correspond pas à la spécification. Rien n'a été enregistré.
    .mend = Signalez-le à l'assistance.
store-numbers-used-up = Aucun numéro d'étiquette libre n'a été trouvé.
    .mend = Signalez-le à l'assistance.
store-number-taken = Le numéro d'étiquette { $number }, tiré pour cette liste, a été attribué entre-temps à un autre flexible.
    .mend = Relancez la liste.
store-key-of-other = Cette clé a déjà servi pour { $what ->
        [registration] un autre enregistrement
        [order] une autre commande
        [print] une autre tâche d'impression
       *[request] une autre demande
     }.
    .mend = Utilisez une nouvelle clé.
store-key-length = La clé est vide ou dépasse { $most } caractères.
    .mend = Utilisez de 1 à { $most } caractères.
store-not-a-page-mark = { $mark } n'est pas un repère de page.
    .mend = Utilisez le dernier repère reçu.
store-not-an-event = { $kind } n'est pas un type d'événement.
    .mend = Utilisez l'un des suivants : { LIST($kinds, style: "or") }.

## Texts

store-too-long = Le texte dépasse { $most } caractères.
    .mend = Utilisez { $most } caractères au plus.
store-control-character = Le texte contient un caractère de commande.
    .mend = Supprimez ce caractère et ressaisissez le texte.
store-hidden-character = Le texte contient un saut de ligne ou un caractère invisible.
    .mend = Ressaisissez-le sur une seule ligne.
store-name-length = Le nom doit avoir de 1 à { $most } caractères.
    .mend = Saisissez de 1 à { $most } caractères.
store-name-used = Le nom { $name } est déjà utilisé.
    .mend = Choisissez un autre nom.

## Orders

store-order-not-found = La commande { $reference } n'existe pas.
    .mend = Vérifiez le numéro de commande.
store-order-tag-unknown = L'étiquette { $number } n'est pas enregistrée : sa spécification est inconnue.
    .mend = Envoyez aussi la spécification : elle est dans le code QR.
store-order-tag-void = L'enregistrement de l'étiquette { $number } est annulé : on ne peut rien commander d'après elle.
    .mend = Commandez d'après l'étiquette qui la remplace, ou demandez à l'atelier.
store-order-of-nothing = La commande n'a ni numéro d'étiquette ni spécification.
    .mend = Saisissez le numéro d'étiquette ou envoyez la spécification.
store-order-not-after = L'état « { $wanted } » n'est pas permis après « { $now } ».
    .mend = États permis : { LIST($next, style: "or") }.
store-order-finished = L'état de la commande est « { $now } » et ne peut plus changer.
    .mend = Saisissez une nouvelle commande.
store-order-untested = La commande ne peut pas être remise : l'épreuve n'est pas réussie pour { LIST($numbers) }.
    .mend = Enregistrez d'abord les épreuves.
store-order-nothing-built = La commande ne peut pas être remise : aucun flexible n'est enregistré pour elle, donc aucun n'a réussi l'épreuve.
    .mend = Fabriquez et éprouvez le flexible à partir de cette commande, ou refusez la commande.
store-order-question-missing = La question au client manque.
    .mend = Saisissez votre question au client.
store-order-past = Le { $day } est passé.
    .mend = Saisissez la date du jour ou une date ultérieure.
store-order-otherwise = La commande { $reference } ne demande aucune modification, mais ceci en diffère : { LIST($fields) }.
    .mend = Corrigez, ou confirmez que l'écart a été pris en compte.
store-order-change-not-made = La commande { $reference } demande une modification : « { $changes } ». Le flexible est tel que commandé.
    .mend = Saisissez la modification dans son champ ou cochez qu'elle a été prise en compte.
store-order-not-a-state = { $state } n'est pas un état de commande.
    .mend = Utilisez l'un des suivants : { LIST($states, style: "or") }.
store-contact-missing = Un numéro de téléphone ou une adresse e-mail est nécessaire.
    .mend = Saisissez l'un des deux.
store-phone-not-valid = { $phone } n'est pas un numéro de téléphone.
    .mend = Utilisez un numéro tel que +44 1632 960 111.
store-email-not-valid = { $email } n'est pas une adresse e-mail.
    .mend = Utilisez une adresse telle que anna@example.com.
store-photo-not-found = Il n'y a pas de photo { $id }.
    .mend = Rouvrez la commande ou le signalement.
store-fitted-not-found = Il n'y a pas de signalement { $id }.
    .mend = Rouvrez la liste.
store-fitted-many = { $most } signalements de cette étiquette attendent déjà l'atelier.
    .mend = Appelez l'atelier.
store-fitted-no-photo = Le signalement { $id } n'a pas de photo.
    .mend = Elle a peut-être été effacée.
store-fitted-decided = Le signalement { $id } a déjà été traité.
    .mend = Rouvrez la liste.
store-fitted-void = L'enregistrement de l'étiquette { $number } est annulé : le signalement ne peut pas être confirmé.
    .mend = Appelez la personne qui l'a envoyé : le flexible doit être démonté. Rejetez ensuite le signalement en indiquant le motif.
store-fitted-reason-missing = Un signalement rejeté exige un motif.
    .mend = Saisissez le motif.
store-fitted-to-come = Le { $day } n'est pas encore passé.
    .mend = Saisissez le jour de la pose.
store-fitted-hours = { $given } n'est pas un nombre d'heures entre 0 et { $most }.
    .mend = Relisez le compteur horaire.
store-order-state-received = reçue
store-order-state-asked = question envoyée
store-order-state-accepted = acceptée
store-order-state-building = en fabrication
store-order-state-done = terminée
store-order-state-declined = refusée

## Withdrawals

store-withdraw-which = Un retrait du service doit indiquer une étiquette, un lot du tuyau ou un lot d'embouts.
    .mend = Saisissez exactement l'un des trois.
store-withdraw-reason-missing = Le motif du retrait du service manque.
    .mend = Saisissez le motif du retrait du service.
store-lift-reason-missing = Le motif de la levée du retrait manque.
    .mend = Saisissez le motif de la levée.
store-withdrawn-already = { $scope ->
        [hose_lot] Le lot du tuyau { $value } est déjà retiré du service.
        [fitting_lot] Le lot d'embouts { $value } est déjà retiré du service.
       *[tag] L'étiquette { $value } est déjà retirée du service.
     }
    .mend = Pour changer le motif, levez d'abord le retrait.
store-withdrawal-not-found = Le retrait du service { $withdrawal } n'existe pas.
    .mend = Vérifiez la liste des retraits.
store-withdrawal-lifted = Le retrait du service { $withdrawal } est déjà levé.
    .mend = Vérifiez la liste des retraits.
store-lot-withdrawn = { $scope ->
        [hose_lot] Le lot du tuyau { $lot } est retiré du service (« { $reason } »).
       *[fitting_lot] Le lot d'embouts { $lot } est retiré du service (« { $reason } »).
     }
    .mend = Utilisez un autre lot ou demandez à un responsable d'atelier de lever le retrait.
store-lot-of-another-hose = Le lot de touret { $lot } est connu comme { LIST($known) }.
    .mend = Vérifiez le touret. Si le lot est exact, choisissez le motif : code de date, autre fabricant ou enregistrement antérieur erroné.
store-hose-with-part = { $hose }, référence { $part }
store-lot-reason-not-known = « { $value } » n'est pas un motif pour le lot.
    .mend = Utilisez l'un de ces motifs : { LIST($reasons) }.
store-lot-reason-date_code = Le lot n'est qu'un code de date
store-lot-reason-other_manufacturer = Autre fabricant avec le même numéro de lot
store-lot-reason-earlier_record_wrong = L'enregistrement antérieur est erroné

## Crimps and proof tests

store-crimp-not-valid = Le diamètre et ses tolérances ne forment pas un diamètre de sertissage valable.
    .mend = Saisissez un diamètre de 1 à 300 mm et des tolérances de 0 à 5 mm.
store-crimp-below-bore = Un diamètre de sertissage de { $diameter } ne dépasse pas le diamètre intérieur du tuyau, { $bore }. C'est impossible.
    .mend = Vérifiez la valeur et son unité : elle est lue en mm.
store-crimp-source-missing = La source du diamètre de sertissage manque.
    .mend = Saisissez la source : elle est obligatoire pour tout diamètre de sertissage.
store-crimp-shell-missing = La jupe du diamètre de sertissage manque.
    .mend = Saisissez la jupe : elle est obligatoire pour tout diamètre de sertissage.
store-crimp-not-found = Le diamètre de sertissage { $crimp } n'existe pas.
    .mend = Utilisez le dernier identifiant reçu.
store-crimp-none = Il n'y a pas de diamètre de sertissage pour ce tuyau avec la jupe { $shell }.
    .mend = Un responsable d'atelier peut en ajouter un sous Atelier, d'après le tableau du fabricant d'embouts.
store-crimp-twice = Mesure en double : { LIST($ends) }. On ne sait pas laquelle des deux valeurs retenir.
    .mend = Saisissez un seul diamètre de sertissage par extrémité.
store-shop-row-reason-missing = Le motif du retrait de la valeur manque.
    .mend = Saisissez le motif.
store-shop-row-not-found = L'atelier n'a pas de valeur { $id }.
    .mend = Vérifiez le numéro dans la liste des valeurs de l'atelier.
store-shop-row-ended = La valeur { $id } a déjà été remplacée ou retirée.
    .mend = Consultez la liste des valeurs de l'atelier.
store-value-end ={ $series ->
        [none] { $size }
       *[other] { $size } { $series }
    } { $connection }, { $form }, { $shape ->
        [elbow] coudé
       *[straight] droit
    }, { $material } : { $pressure } (source : { $source })
store-value-hose ={ $standard } -{ $dash }, { $edition ->
        [none] sans édition
       *[other] édition { $edition }
    }, { $part ->
        [none] toute référence
       *[other] référence { $part }
    } : { $pressure } (source : { $source })
store-value-fluid ={ $standard }, { $part ->
        [none] toute référence
       *[other] référence { $part }
    } : autorisé pour ce fluide : { $fluid }, jusqu'à { $limit } (source : { $source })
store-value-with = { $value }, avec ce fluide seulement : { $fluid }
store-value-up-to = { $value }, jusqu'à { $limit }
store-proof-pressure-low = { $given } est inférieur à la pression d'épreuve exigée, { $called }.
    .mend = Recommencez l'épreuve à cette pression, ou enregistrez l'épreuve comme échouée.
store-proof-hold-short = { $given } s est inférieur aux { $called } s exigées.
    .mend = Maintenez la pression pendant toute la durée, ou enregistrez l'épreuve comme échouée.
store-proof-above-burst = { $given } dépasse la pression minimale d'éclatement, { $burst } (limite : { $part }). La valeur ne peut pas être juste.
    .mend = Vérifiez la valeur et son unité. Un nombre sans unité est lu en bar.
store-proof-over-unconfirmed = { $given } dépassent { $most }, la charge maximale des pièces lors d'une épreuve. Enregistrée ainsi, cette épreuve bloque le flexible jusqu'à l'accord écrit des fabricants.
    .mend = Vérifiez la valeur et son unité. Si cette pression a été appliquée, confirmez-la.
store-proof-rating-unknown = La pression admissible est inconnue : { LIST($parts) }. Sans elle, aucune épreuve ne peut être conforme.
    .mend = Saisissez avec l'épreuve la pression de service du fabricant et sa source.
store-proof-rating-unverified = La pression admissible n'est pas vérifiée : { LIST($parts) }. Aucune épreuve ne peut s'appuyer sur elle.
    .mend = Saisissez avec l'épreuve la pression de service du fabricant et sa source.
store-proof-no-rating-applies = Aucune pression de service ne vaut pour ce flexible. Aucune épreuve ne peut être conforme.
    .mend = Lisez les avertissements du flexible. Utilisez un tuyau et des embouts prévus pour son fluide et sa température.
store-proof-rating-not-asked = La pression admissible de chaque pièce est connue.
    .mend = Supprimez cette valeur.
store-proof-rating-source = La source de la pression de service du fabricant manque.
    .mend = Saisissez la fiche technique ou la lettre dont elle est tirée.
store-proof-rating-below-tag = La pression de service du fabricant, { $given }, est inférieure à celle de l'étiquette, { $told }. Aucune épreuve ne peut être réussie dans ces conditions.
    .mend = Vérifiez la valeur et son unité. Si elle est juste, retirez l'étiquette et enregistrez de nouveau le flexible avec cette valeur.
store-proof-gas = Une épreuve se fait avec un liquide, jamais avec un gaz.
    .mend = Recommencez l'épreuve avec un liquide, ou enregistrez l'épreuve comme échouée.
store-proof-why-held = { $given } ont été appliqués. Au-delà de { $most }, les pièces sont chargées plus que par une épreuve : gardez le flexible bloqué jusqu'à l'accord écrit des fabricants.
store-proof-why-slip = La pression enregistrée, { $given }, dépasse la pression minimale d'éclatement de { $burst }. Elle ne peut pas être juste : cet enregistrement ne prouve rien.
store-proof-why-lower = Ce n'est pas une épreuve. Un essai à une pression moindre a été demandé par : { $source }
store-proof-why-gas = Ce n'est pas une épreuve : l'essai a été fait avec un gaz.
store-proof-why-unknown = Ce n'est pas une épreuve : la pression admissible du flexible n'était pas connue.
store-proof-why-short = Ce n'est pas une épreuve : la pression ou la durée de maintien était inférieure à la valeur exigée.
store-proof-why-allowed = Ce n'est pas une épreuve : la pression dépassait la limite. Les fabricants l'ont acceptée par écrit.
store-proof-why-crimped = Ce n'est pas une épreuve : un sertissage a été enregistré le { $day }, après cet essai. Refaites l'épreuve du flexible.
store-proof-after-failure = { LIST($numbers) } : la dernière épreuve a échoué.
    .mend = Saisissez dans la note ce qui a été réparé, puis enregistrez l'épreuve comme réussie.
store-proof-not-held = Le flexible n'est pas bloqué : aucun essai ne l'a chargé plus qu'une épreuve.
    .mend = Vérifiez le numéro d'étiquette.
store-proof-allowed-future = { $day } est dans le futur.
    .mend = Saisissez la date du document des fabricants.
store-crimp-of-end = { SAY($end, case: "of") } ({ $measured } mm)
store-blocked-withdrawn = L'étiquette { $number } ne peut pas être imprimée : elle est retirée du service (« { $reason } »).
    .mend = Mettez le flexible au rebut, ou demandez à un responsable d'atelier de lever le retrait.
store-blocked-void = L'étiquette { $number } ne peut pas être imprimée : son enregistrement est annulé (« { $reason } »).
    .mend = Enregistrez à nouveau le flexible avec les valeurs correctes.
store-proof-withdrawn = Le flexible est retiré du service : { LIST($reasons) }. Aucune épreuve réussie n'est enregistrée pour lui.
    .mend = Demandez d'abord à un responsable d'atelier de lever le retrait. Une épreuve qui a échoué peut être enregistrée.
store-void-reason-missing = Le motif de l'annulation manque.
    .mend = Saisissez le motif : il reste dans l'historique.
store-void-already = L'enregistrement de l'étiquette { $number } est annulé.
    .mend = Enregistrez à nouveau le flexible avec les valeurs correctes.
store-void-not-used = L'enregistrement de l'étiquette { $number } est annulé : ne montez pas ce flexible.
    .mend = Enregistrez à nouveau le flexible avec les valeurs correctes.
store-void-too-late = L'enregistrement de l'étiquette { $number } ne peut pas être annulé : { $kind ->
        [scanned] son étiquette a été scannée le { $day }.
        [fitted] le flexible a été posé le { $day }.
        [proof_tested] il a été éprouvé le { $day } et peut être certifié.
        [ordered] il a été recommandé le { $day }.
       *[other] d'autres opérations sont enregistrées depuis le { $day }.
     }
    .mend = Corrigez l'enregistrement ou retirez l'étiquette du service.
store-void-handed-over = L'enregistrement de l'étiquette { $number } ne peut pas être annulé : la commande { $reference } a été remise.
    .mend = Corrigez l'enregistrement ou retirez l'étiquette du service.
store-not-correctable = Cette valeur ne peut pas être corrigée.
    .mend = Utilisez : { LIST($fields) }. Pour toute autre erreur, annulez l'enregistrement ou retirez l'étiquette du service.
store-correct-reason-missing = Le motif de la correction manque.
    .mend = Saisissez le motif : il reste dans l'historique.
store-nothing-corrected = Rien ne diffère de l'enregistrement de l'étiquette { $number }.
    .mend = Saisissez la valeur correcte.
store-blocked-crimp = L'étiquette { $number } ne peut pas être imprimée : hors tolérance, le diamètre de sertissage { LIST($ends) }.
    .mend = Refabriquez le flexible et enregistrez de nouveau ses diamètres de sertissage, ou mettez-le au rebut.
store-blocked-proof = L'étiquette { $number } ne peut pas être imprimée : son épreuve du { $day } a échoué.
    .mend = Refabriquez le flexible et enregistrez une nouvelle épreuve, ou mettez-le au rebut.
store-blocked-proof-held = L'étiquette { $number } ne peut pas être imprimée : le flexible est bloqué. { $why }
    .mend = Enregistrez l'accord écrit des fabricants, ou retirez le flexible du service.
store-blocked-proof-slip = L'étiquette { $number } ne peut pas être imprimée : la pression de son épreuve du { $day } dépasse la pression minimale d'éclatement. Elle ne peut pas être juste.
    .mend = Enregistrez une nouvelle épreuve, ou retirez le flexible du service.
store-blocked-untested = L'étiquette { $number } ne peut pas encore être imprimée : cet atelier n'imprime aucune étiquette avant que l'épreuve soit réussie.
    .mend = Imprimez la fiche suiveuse, qui porte le numéro de l'étiquette, puis enregistrez l'épreuve.
store-stop-none = Étiquette { $number } : le flexible n'est ni retiré du service ni annulé, et aucune épreuve n'a échoué. L'étiquette « Ne pas utiliser » est réservée à ces cas.
    .mend = Retirez d'abord le flexible du service, avec le motif.
store-stop-withdrawn = retiré du service, { $reason }
store-stop-withdrawn-short = retiré du service (détails : scannez le code)
store-stop-void = enregistrement annulé, { $reason }
store-stop-void-short = enregistrement annulé (détails : scannez le code)
store-stop-held = bloqué après une épreuve. { $why }
store-stop-held-short = bloqué (son épreuve a dépassé la limite)
store-stop-proof = épreuve du { $day } échouée
store-stop-slip = la pression enregistrée pour l'épreuve du { $day } ne peut pas être juste
store-stop-crimp = hors tolérance, le diamètre de sertissage { LIST($ends) }
store-fitted-untested = L'étiquette { $number } ne peut pas être enregistrée comme montée : cet atelier ne laisse sortir aucun flexible avant que l'épreuve soit réussie.
    .mend = Ne montez pas le flexible. Enregistrez d'abord son épreuve.
store-proof-gauge-missing = Le manomètre de cette date d'étalonnage manque.
    .mend = Entrez le numéro du manomètre.
store-proof-gauge-expired = L'étalonnage du manomètre a expiré le { $day } : aucune épreuve ne peut réussir avec lui.
    .mend = Éprouvez avec un manomètre dont l'étalonnage est valable, ou corrigez la date.
store-batch-empty = Aucun flexible n'est sélectionné.
    .mend = Sélectionnez-en au moins un.
store-batch-too-large = { $count } flexibles dépassent les { $most } d'un lot d'épreuve.
    .mend = Enregistrez-les en plusieurs lots.
store-batch-of = { LIST($numbers) } : { $why }
    .mend = Corrigez la valeur, ou enregistrez ces flexibles séparément.
store-batch-held = { $given } dépasse une épreuve pour { LIST($numbers) } : rien du lot n'est enregistré.
    .mend = Vérifiez la valeur et son unité. Si cette pression a été appliquée à tous, confirmez-la : ils seront bloqués. Sinon, enregistrez un flexible réellement chargé ainsi sur sa propre fiche.

## Print jobs and printers

store-printer-not-found = { $printer } n'est pas une imprimante en service.
    .mend = Choisissez-en une dans la liste. Un responsable d'atelier ajoute les imprimantes sous Atelier.
store-printer-name-used = Une imprimante porte déjà le nom { $name }.
    .mend = Choisissez un autre nom ou supprimez cette imprimante.
store-print-job-not-found = La tâche d'impression { $job } n'existe pas.
    .mend = Cherchez sous Impressions.
store-print-job-moved = L'état de la tâche d'impression { $job } est maintenant « { $state } ».
    .mend = Rechargez d'abord la page.
store-print-state-waiting = en attente
store-print-state-sending = envoi en cours
store-print-state-printing = impression en cours
store-print-state-done = imprimée
store-print-state-failed = échouée
store-print-state-unknown = impression non confirmée
store-print-state-dropped = annulée
store-print-interrupted = Le programme s'est arrêté pendant l'envoi de la tâche. Elle a peut-être été imprimée.
    .mend = Vérifiez si les étiquettes ont été imprimées.
store-print-restored = La tâche vient d'une sauvegarde restaurée. Elle a peut-être déjà été imprimée.
    .mend = Vérifiez si les étiquettes ont été imprimées avant de la renvoyer.
store-print-retired = L'imprimante a été supprimée avant l'envoi de la tâche.
    .mend = Envoyez les étiquettes à une autre imprimante.
store-print-not-taken = Le programme s'est arrêté pendant l'envoi de la tâche, et l'imprimante ne la connaît pas : elle n'a pas été imprimée.
    .mend = Envoyez-la de nouveau.
store-print-forgotten = L'imprimante ne connaît plus cette tâche. Elle a peut-être été éteinte.
    .mend = Vérifiez si les étiquettes ont été imprimées.
store-print-crashed = Le programme a échoué pendant l'envoi de la tâche ({ $error }).
    .mend = Vérifiez si les étiquettes ont été imprimées et signalez-le à l'assistance.
store-print-unconfirmed = L'étiquette a peut-être été imprimée.
store-print-status = État de l'imprimante : { LIST($said) }.

## People and devices

store-code-wrong = Ce n'est pas le code actuel.
    .mend = Vérifiez le code sur la console.
store-last-manager = C'est le dernier responsable d'atelier : la modification est impossible.
    .mend = Ajoutez d'abord un autre responsable d'atelier.
store-person-not-found = La personne { $person } n'existe pas.
    .mend = Vérifiez la liste des personnes.
store-token-not-found = L'appareil { $token } n'existe pas.
    .mend = Vérifiez la liste des appareils.
store-recipe-not-found = La recette { $name } n'existe pas.
    .mend = Choisissez-en une dans la liste.
store-recipe-used = Une autre spécification est enregistrée sous le nom { $name }.
    .mend = Choisissez un autre nom ou cochez « Remplacer la spécification enregistrée ».
store-recipe-of-manager = La spécification enregistrée sous le nom { $name } est celle d'un responsable d'atelier.
    .mend = Choisissez un autre nom ou demandez à un responsable d'atelier de la remplacer.

## The database and its backups

store-demo-reachable = La démonstration serait accessible à d'autres à { $base }, avec un mot de passe que tout le monde connaît.
    .mend = Retirez TAGGER_DEMO, ou réglez TAGGER_HOST et TAGGER_BASE_URL sur 127.0.0.1.
store-demo-only-manager = Le compte de démonstration est le seul responsable, et tout le monde connaît son mot de passe.
    .mend = Redémarrez avec TAGGER_DEMO=1 sur cet ordinateur, ajoutez votre propre responsable, puis démarrez sans ; ou commencez avec une nouvelle base de données.
store-database-cannot-open = Impossible d'ouvrir la base de données : { $why }
    .mend = Vérifiez TAGGER_DATABASE_URL et l'existence du dossier ou du serveur.
store-database-full = Le disque du serveur est plein : rien ne peut être enregistré.
    .mend = Prévenez la personne responsable du serveur. Une fois de la place libérée, vérifiez ce qui a été enregistré avant de le saisir de nouveau.
store-database-read-only = La base de données est en lecture seule : rien ne peut être enregistré.
    .mend = Prévenez la personne responsable du serveur. Une fois l'écriture rétablie, vérifiez ce qui a été enregistré avant de le saisir de nouveau.
store-database-busy = Le serveur est occupé.
    .mend = Attendez quelques secondes. Vérifiez ce qui a été enregistré avant de le saisir de nouveau.
store-database-away = La base de données est indisponible.
    .mend = Réessayez dans une minute et vérifiez ce qui a été enregistré avant de le saisir de nouveau. Si elle reste indisponible, prévenez la personne responsable du serveur.
store-database-newer = La base de données a été écrite par une version plus récente (étape { $step }).
    .mend = Installez cette version, ou restaurez une sauvegarde dans une nouvelle base de données.
store-database-moved = Les dossiers de cette base de données ont été déplacés dans une autre.
    .mend = Réglez TAGGER_DATABASE_URL sur la nouvelle base de données. Pour revenir en arrière, restaurez une sauvegarde de celle-ci dans une nouvelle base.
store-database-address = { $address } n'est pas l'adresse d'une base de données.
    .mend = Utilisez une adresse telle que sqlite:////srv/data.sqlite3 ou postgresql://name@host/data.
store-database-kind = La base de données n'est ni SQLite ni PostgreSQL.
    .mend = Utilisez l'une des deux.
store-database-in-memory = La base de données serait perdue à l'arrêt du programme (base en mémoire).
    .mend = Saisissez un fichier.
store-backup-exists = { $path } existe déjà et ne sera pas remplacé.
    .mend = Choisissez un nouveau nom de fichier ou déplacez le fichier existant.
store-backup-no-folder = Le dossier { $path } n'existe pas.
    .mend = Créez le dossier ou vérifiez le chemin.
store-backup-not-verified = La sauvegarde { $path } n'a pas passé la vérification.
    .mend = Vérifiez le disque.
store-backup-own-file = { $path } est un fichier de la base de données elle-même.
    .mend = Choisissez un autre fichier pour la sauvegarde.
store-restore-no-file = { $path } n'existe pas.
    .mend = Vérifiez le chemin.
store-restore-not-a-backup = { $path } n'est pas une sauvegarde complète.
    .mend = Faites une nouvelle sauvegarde.
store-restore-changed = { $path } a été modifié après la sauvegarde : la somme de contrôle ne correspond pas. Rien n'a été restauré.
    .mend = Utilisez une autre sauvegarde.
store-restore-unsealed = { $path } ne porte pas de somme de contrôle : rien ne prouve que le fichier est intact.
    .mend = Utilisez une sauvegarde plus récente. Pour la sauvegarde d'une version antérieure, restaurez avec --unsealed et vérifiez les dossiers.
store-restore-incomplete = La base de données restaurée est incomplète.
    .mend = Réessayez.
store-restore-not-empty = Une sauvegarde ne se restaure que dans une base de données vide. Celle-ci contient { LIST($tables) }.
    .mend = Indiquez l'adresse d'une nouvelle base dans TAGGER_DATABASE_URL.
store-audit-link-gone = Le maillon { $link } de la chaîne manque.
store-audit-link-changed = Le maillon { $link } de la chaîne a été modifié, supprimé ou déplacé (table { $table }, ligne { $key }).
store-audit-row-gone = La ligne { $key } de la table { $table } a été supprimée (maillon { $link }).
store-audit-row-changed = La ligne { $key } de la table { $table } n'est plus telle qu'elle a été enregistrée (maillon { $link }).
store-audit-salt-gone = La ligne { $key } de la table { $table } ne peut plus être contrôlée : le sel du maillon { $link } a été supprimé et aucun maillon plus récent ne le remplace.
store-audit-row-unlinked = La ligne { $key } de la table { $table } n'a pas été écrite par ce programme : aucun maillon n'en fait état.
store-audit-row-twice = La table { $table } a plus de maillons que de lignes.
store-audit-text-gone = « { $text } » figure dans la table assembly, mais manque ou a été modifié dans la table recorded_text : une recherche ou un retrait du service peut ne pas trouver son flexible.
store-audit-head-gone = { $head } n'est pas dans la chaîne : la fin de ce qui a été enregistré a été supprimée ou modifiée.
store-audit-no-head = La sauvegarde { $path } vient d'une version antérieure et ne porte pas de chaîne.
    .mend = Utilisez une sauvegarde plus récente.
store-move-itself = Les dossiers seraient déplacés dans la base de données où ils sont déjà.
    .mend = Indiquez l'adresse d'une autre base de données, vide.
store-move-not-empty = Les dossiers ne se déplacent que dans une base de données vide. Celle-ci contient { LIST($tables) }.
    .mend = Indiquez l'adresse d'une nouvelle base de données.
store-move-differs = La table { $table } diffère après le déplacement. Rien n'a été gardé dans la nouvelle base de données.
    .mend = Contrôlez le disque et la mémoire des deux ordinateurs, puis recommencez.
store-move-in-use = Un autre programme a ouvert la base de données.
    .mend = Arrêtez le serveur et toute autre commande, puis recommencez.
store-database-older = Une version antérieure ne peut pas garder ce que dit la table { $table } : des flexibles retenus seraient de nouveau utilisés.
    .mend = Gardez cette version, ou restaurez une sauvegarde écrite par la version antérieure.
store-own-hose-not-kept = Aucun tuyau de l'atelier n'a la référence { $part } en dash { $dash }.
    .mend = Vérifiez la référence et le dash dans la liste des tuyaux.
store-value-dimension =
    { $which ->
        [hose_bend] Rayon de courbure minimal
        *[other] Diamètre extérieur
    }, { $part ->
        [none] { $standard }-{ $dash }
        *[other] { $standard }-{ $dash }, référence { $part }
    } : { $length } ({ $source })
