# The command line: commands, options, refusals and answers.

## Commands

cli-description = Étiquettes de flexibles hydrauliques : toute la spécification sur le flexible.
cli-about-identify = Identifie un raccordement d'après ce que vous en savez.
cli-about-hose-by-layers = Exclut des normes de tuyau d'après les couches, les diamètres et le marquage ; ne donne aucune pression.
cli-about-check = Affiche la pression admissible, les limites, les tolérances, le serrage et les avertissements. N'enregistre rien.
cli-about-compare = Compare deux flexibles : B remplace-t-il A ? Chacun est un fichier de spécification, le lien d'une étiquette, une photo ou un numéro d'étiquette.
cli-about-tables = Vérifier les tables du métier ou indiquer ce qu'elles savent.
cli-about-schema = Affiche le schéma JSON d'une spécification.
cli-about-register = Donne aux flexibles leurs numéros d'étiquette.
cli-about-print = Imprime les étiquettes de flexibles enregistrés.
cli-about-run = Enregistre et imprime une liste entière, tout ou rien.
cli-about-read = Affiche ce que dit une étiquette, sans base de données.
cli-about-show = Affiche le dossier d'une étiquette et son historique.
cli-about-lay-line = Lire la ligne imprimée sur un tuyau : norme, taille, pression.
cli-about-void = Annuler un enregistrement avant que l'étiquette soit scannée ou le flexible monté, éprouvé ou remis.
cli-about-correct = Corriger le client, la machine, l'emplacement, la propreté, les lots ou la remarque d'une fiche.
cli-about-proof = Enregistrer l'épreuve d'un ou de plusieurs flexibles, ou dire ce qu'elle doit être.
cli-about-allow = Enregistrer l'accord écrit des fabricants pour un flexible bloqué.
cli-about-overrated = Lister les flexibles enregistrés au-dessus des valeurs actuelles.
cli-about-values = Les valeurs de fabricants propres à l'atelier : les afficher, en retirer une.
cli-about-templates = Liste les modèles d'étiquette.
cli-about-preflight = Vérifie si une étiquette sera lisible.
cli-about-serve = Lance l'application web.
cli-about-demo = Charger la semaine d'un atelier inventé et l'afficher sur cette machine, pour tout essayer.
cli-about-backup = Écrit une copie cohérente et vérifiée des dossiers.
cli-about-restore = Restaure une copie vérifiée dans une base de données vide.
cli-about-drill = Restaure une sauvegarde dans une base de données d'essai et compare : servirait-elle aujourd'hui ?
cli-about-audit = Contrôle la chaîne des dossiers et de leur historique : première rupture ou dernier maillon.
cli-about-move = Déplace tous les dossiers dans une autre base de données, vide, et compare chaque ligne.

## Options

cli-option-json = répondre en JSON
cli-option-lang = langue : { LIST($languages, style: "or") } (TAGGER_LANGUAGE)
cli-option-choices = au choix : { LIST($choices, style: "or") }
cli-option-cone = où se trouve le cône d'étanchéité : { LIST($choices, style: "or") }
cli-option-thread-od = diamètre extérieur d'un filetage mâle
cli-option-thread-id = diamètre intérieur d'un filetage femelle
cli-option-pitch = pas du filetage en mm
cli-option-hex = surplat de l'hexagone
cli-option-tube-od = diamètre extérieur du tube
cli-option-side = où se trouve le filetage : { LIST($choices, style: "or") }
cli-option-swivels = si la partie filetée tourne sur l'embout : { LIST($choices, style: "or") }
cli-option-shape = si le filetage est cylindrique ou conique : { LIST($choices, style: "or") }
cli-option-seals = ce qui assure l'étanchéité : { LIST($choices, style: "or") }
cli-option-flank = angle des flancs du filetage : { LIST($choices, style: "or") }
cli-option-nose = diamètre du nez, ou du logement qui le reçoit
cli-option-series = série d'un embout à visser : { LIST($choices, style: "or") }
cli-option-origin = origine de la machine, seulement pour départager : { LIST($choices, style: "or") }
cli-option-cannot = ce qui ne peut pas être mesuré, répétable : { LIST($choices, style: "or") }
cli-option-flange-od = diamètre de la collerette
cli-option-bolt-spacing = plus grand entraxe des vis de la bride
cli-option-tpi = filets par pouce
cli-option-length-example = { $what } : 27, "27 mm" ou "1 1/16 in"
cli-option-spec = un fichier de spécification, ou - pour l'entrée standard
cli-option-lay-line = le texte de la ligne, tel qu'imprimé
cli-option-length-bands = plages de tolérance (par défaut : TAGGER_LENGTH_BANDS, sinon celles de la norme du tuyau)
cli-option-keep = Conserve les valeurs du fabricant de cette spécification comme valeurs de l'atelier, pour tous les flexibles suivants.
cli-option-all = Affiche aussi les valeurs remplacées ou retirées.
cli-option-withdraw = Retire la valeur de ce numéro ; indiquez le motif avec --reason.
cli-option-reason = Le motif du retrait.
cli-option-count = nombre de flexibles (par défaut 1)
cli-option-keep-backups = Garde les N dernières sauvegardes du dossier FILE et supprime les plus anciennes.
cli-option-into = Une base de données vide pour l'essai ; sinon, un fichier temporaire.
cli-option-unsealed = Restaure la sauvegarde d'une version antérieure, sans somme de contrôle.
cli-option-head = un dernier maillon relevé auparavant, d'une sauvegarde ou d'un certificat : il doit encore être dans la chaîne
cli-option-audit-backup = une sauvegarde : son dernier maillon doit encore être dans la chaîne
cli-option-move-to = adresse de la base de données vide, telle que postgresql://name@host/data ; un mot de passe se garde de préférence dans le fichier de mots de passe de PostgreSQL
cli-option-built-on = date d'assemblage (par défaut : aujourd'hui)
cli-option-record = va dans le dossier, jamais dans le code QR
cli-option-replaces = l'étiquette du flexible que celui-ci remplace
cli-option-why = le motif ; il reste dans l'historique
cli-option-correct = la valeur correcte ; un texte vide la supprime
cli-option-proof-result = le résultat ; sans lui, rien n'est enregistré
cli-option-proof-pressure = la pression d'épreuve : en bar, ou avec une unité
cli-option-proof-hold = la durée de maintien en secondes
cli-option-proof-medium = le fluide d'épreuve : { LIST($media) }
cli-option-proof-tester = qui a fait l'épreuve
cli-option-proof-note = une remarque
cli-option-proof-lower = le client ou la norme qui demande un essai à pression moindre
cli-option-proof-rating = la pression de service du fabricant pour les pièces inconnues ou non vérifiées
cli-option-proof-rating-source = la source de cette pression de service
cli-option-proof-rating-confirmed = cette pression de service est juste bien qu'elle dépasse les tables
cli-option-proof-confirmed = cette pression d'épreuve a été appliquée bien qu'elle bloque le flexible
cli-option-allow-by = les fabricants qui l'autorisent
cli-option-allow-on = la date du document
cli-option-allow-document = le document
cli-option-length-confirmed = la longueur est juste bien qu'elle dépasse 100 m
cli-option-pressure-confirmed = la pression de service du fichier est juste bien qu'elle dépasse les tables
cli-option-order = la commande pour laquelle il est fabriqué
cli-option-changes-considered = la modification demandée par la commande a été prise en compte ; la spécification reste telle que commandée
cli-option-lot-reason = motif d'utilisation d'un lot de touret connu comme un autre tuyau : { LIST($reasons) }
cli-option-key = une même clé n'enregistre qu'une fois, quel que soit le nombre d'envois
cli-option-printer = une imprimante réseau : ipp://HOST/ipp/print ou ipps://
cli-option-list = un fichier .csv ou .xlsx, une ligne par spécification
cli-option-what = une photo ou un texte scanné
cli-option-hose-od = diamètre extérieur du tuyau (par défaut : celui des tables)
cli-option-host = adresse d'écoute (par défaut : TAGGER_HOST, sinon 127.0.0.1)
cli-option-port = port d'écoute (par défaut : TAGGER_PORT, sinon 8000)
cli-demo-other-week = Les enregistrements dans { $folder } ne sont pas la semaine inventée de cette version.
    .mend = Supprimez ce dossier, ou nommez-en un autre : tagger demo DOSSIER.
cli-option-demo = le dossier de sa base de données et de ses étiquettes (par défaut : out)
cli-option-out = un fichier .pdf ou .png ; pour une plaque, .svg ou .dxf
cli-option-template = nom d'un modèle, ou son fichier .toml (par défaut : TAGGER_LABEL_TEMPLATE, sinon hang_tag)
cli-option-dpi = résolution en dpi (par défaut : TAGGER_PRINTER_DPI, sinon 203)
cli-option-dpi-printer = résolution en dpi (par défaut : celle de l'imprimante réseau, sinon TAGGER_PRINTER_DPI, sinon 203)
cli-option-start = première étiquette libre d'une feuille entamée (par défaut 1)
cli-option-languages = une ou deux langues de l'étiquette : { LIST($languages, style: "or") } (par défaut : celles du modèle, ou TAGGER_LANGUAGE)
cli-option-force = imprimer même si le contrôle refuse

## Wrong usage: what argparse says. The %(...)s are its own places

cli-usage-start = utilisation :
cli-usage-argument = argument %(argument_name)s : %(message)s
cli-usage-positional = arguments positionnels
cli-usage-options = options
cli-usage-help = afficher cette aide et quitter
cli-usage-version = afficher la version et quitter
cli-usage-unrecognized = arguments inconnus : %s
cli-usage-not-allowed = incompatible avec l'argument %s
cli-usage-ignored = valeur inattendue %r
cli-usage-required = arguments manquants : %s
cli-usage-one-required = un de ces arguments est obligatoire : %s
cli-usage-expects-one = une valeur attendue
cli-usage-expects-some = au moins une valeur attendue
cli-usage-ambiguous = option ambiguë : %(option)s peut être %(matches)s
cli-usage-invalid-value = valeur incorrecte : %(value)r
cli-usage-invalid-choice = choix incorrect : %(value)r (possibles : %(choices)s)
cli-usage-error = %(prog)s : erreur : %(message)s
cli-usage-date = { $value } n'est pas une date. Saisissez la date sous la forme AAAA-MM-JJ, par exemple 2027-03-31.
cli-usage-future = { $value } est dans le futur. Saisissez la date d'assemblage ou omettez-la.
cli-usage-keep = Au moins une sauvegarde est gardée.
    .mend = Saisissez au moins 1.
cli-usage-head = Ce n'est pas un maillon de la chaîne.
    .mend = Saisissez son numéro, deux-points et au moins 16 chiffres, par exemple 120:9f86d081884c7d65.
cli-usage-dpi = { $value } n'est pas une résolution d'imprimante. Saisissez de 100 à 1200 dpi.
cli-usage-diameter = { $value } n'est pas un diamètre de tuyau. Saisissez de 1 à 1000 mm.

## Refusals

cli-row = ligne { $row }
cli-row-field = ligne { $row }, { $field }
cli-column = colonne { $column }
cli-cell = cellule { $cell }
cli-row-cell = ligne { $row }, cellule { $cell }
cli-file = fichier
cli-heading = ligne d'en-tête
cli-number = numéro d'étiquette
cli-spec = spécification
cli-link = lien
cli-digits = code de l'étiquette
cli-image = image
cli-template = modèle
cli-printer = imprimante
cli-tag = étiquette
cli-list = liste
cli-problem = { $place } : { $said }
cli-problem-value = { $place } : { $said } (valeur : { $value })
cli-not-a-file = Ce fichier image n'existe pas.
    .mend = Vérifiez le nom du fichier.
cli-out-not-pdf-or-png = Le nom du fichier ne se termine ni par .pdf ni par .png.
    .mend = Utilisez un nom qui se termine par .pdf ou .png.
cli-out-not-engraved = Les formats SVG et DXF sont réservés aux plaques, et cette étiquette est destinée à une imprimante.
    .mend = Utilisez --template metal_plate, ou un fichier en .pdf ou .png.
cli-out-one-plate = Un fichier de gravure contient une seule plaque.
    .mend = Indiquez un seul numéro d'étiquette par fichier.
cli-out-no-folder = Ce dossier n'existe pas.
    .mend = Créez le dossier ou vérifiez le chemin.
cli-out-not-writable = Impossible d'écrire dans ce dossier.
    .mend = Choisissez un autre dossier.
cli-too-many-batches = Cette liste a été traitée dix mille fois.
    .mend = Modifiez la liste.
cli-run-meanwhile = Cette liste était en cours d'impression par une autre commande, qui l'a enregistrée.
    .mend = Voyez le fichier qu'elle a écrit ; pour imprimer la liste une seconde fois, relancez-la.
cli-run-proof-first = Cet atelier n'imprime aucune étiquette avant que l'épreuve soit réussie.
    .mend = Utilisez une fiche suiveuse, par exemple --template traveller_a5, et imprimez les étiquettes après les épreuves.
cli-run-do-not-use = « { $template } » est réservé aux flexibles à ne pas utiliser ; cette commande en enregistre de nouveaux.
    .mend = Utilisez « tagger print » avec le numéro de l'étiquette.

## Answers

cli-tables-ok = Les tables sont cohérentes. Valeurs : { $count } (publiées : { $published }, pratique courante : { $practice }, non vérifiées : { $memory }, de l'atelier : { $shop }).
cli-withdrawn = RETIRÉ, ne pas utiliser : { $reason }
cli-void = ANNULÉ, ne pas monter : { $reason }
cli-void-done = L'enregistrement de l'étiquette { $number } est annulé.
cli-correct-done = L'enregistrement de l'étiquette { $number } est corrigé.
cli-proof-required = Épreuve : { $pressure }, maintien de { $low } à { $high } s, avec un liquide
cli-proof-unknown = Épreuve : la pression n'est pas connue ; maintien de { $low } à { $high } s, avec un liquide
cli-proof-ask-rating = Saisissez la pression de service du fabricant : { LIST($parts) }
cli-allow-done = L'accord pour l'étiquette { $number } est enregistré.
cli-proof-no-result = Le résultat de l'épreuve manque : rien n'a été enregistré.
    .mend = Utilisez --result passed ou --result failed.
cli-no-pressure-to-confirm = La spécification n'a pas de pression de service à confirmer.
    .mend = Saisissez-en une dans la spécification, ou omettez l'option.
cli-pressure = Pression de service maximale : { $pressure }
cli-hose = Tuyau : { $hose }
cli-end = Extrémité { $end } : { $fitting }
cli-length = Longueur : { $length }
cli-clocking = Angle d'orientation : { $clocking }
cli-tightening = Serrer l'extrémité { $end } : { $how }
cli-fluid = Fluide : { $fluid }
cli-maximum-temperature = Température maximale : { $temperature }
cli-vacuum = Dépression maximale : { $vacuum }
cli-built-on = Fabriqué le : { $day }
cli-recorded = { $caption } : { $value }
cli-replaces = Remplace : { $value }
cli-replaced_by = Remplacé par : { $value }
cli-replacement_built = Un remplaçant est fabriqué, pas encore monté : { $value }
cli-serving = { $base } est servi sur { $host }:{ $port }. L'atelier est à l'adresse { $base }/bench.
cli-stopped = Arrêté.
cli-backed-up = { $file } : écrit et vérifié. { $rows }. SHA-256 { $digest }. Dernier maillon de la chaîne : { $head }
cli-restored = { $file } : restauré et comparé. { $rows }. SHA-256 { $digest }
cli-backed-up-kept = { $file } : écrit et vérifié. { $rows }. Gardées : { $kept }. Supprimées : { $removed }. SHA-256 { $digest }. Dernier maillon de la chaîne : { $head }
cli-drilled = Restauré dans une base de données d'essai et comparé : { $file } est intact. { $rows }. SHA-256 { $digest }
cli-audited = La chaîne tient. Maillons : { $links }. { $rows }. Dernier maillon de la chaîne : { $head }
cli-audit-broken = La chaîne est rompue. { $why } Rien de ce qui a été enregistré après cet endroit n'est prouvé. Comparez avec la dernière sauvegarde intacte. Dernier maillon de la chaîne : { $head }
cli-moved = Déplacé et comparé : { $rows } dans { $tables } tables. SHA-256 { $digest } Réglez maintenant TAGGER_DATABASE_URL sur { $target }. Personne ne doit plus utiliser l'ancienne base de données. Chacun se reconnecte.
cli-rows = Lignes : { $count }
cli-base-url-not-set = Remarque : TAGGER_BASE_URL n'est pas défini. Le code QR ouvre { $base }, accessible seulement depuis cet ordinateur.
cli-run-done = Flexibles enregistrés et imprimés : { $count }. Fichiers : { LIST($files) }.
cli-scans = Lisible : version QR { $version }, niveau { $level }, modules { $module } mm = { $dots } points, symboles sur l'étiquette : { $symbols }, grade { $grade }, données { $bytes } octets
cli-scans-badly = LECTURE NON FIABLE : version QR { $version }, niveau { $level }, modules { $module } mm = { $dots } points, symboles sur l'étiquette : { $symbols }, grade { $grade }, données { $bytes } octets
cli-finding-refuse = Refusé : { $text } { $mend }
cli-finding-warn = Attention : { $text } { $mend }
cli-finding-note = Remarque : { $text } { $mend }
cli-maybe-printed = Elle a peut-être été imprimée ; cela n'a pas pu être établi.
cli-job = { $printer } : tâche { $job }, { $state }
cli-job-said = { $printer } : tâche { $job }, { $state } ({ $said })
cli-progress-unit = étiquette

## What happened to a tag

cli-event-registered = enregistré
cli-event-crimped = sertissage mesuré
cli-event-flushed = rincé
cli-event-proof_tested = éprouvé
cli-event-proof_allowed = pression d'essai acceptée par les fabricants
cli-proof-line = épreuve { $result ->
        [passed] conforme
        [tested] non complète, essai
        [held] BLOQUÉ, ne pas utiliser
        [outdated] non valable, essai avant sertissage
       *[failed] NON CONFORME
     } : { $pressure }, { $hold } s
cli-event-printed = étiquette imprimée
cli-event-fitted = monté
cli-event-inspected = inspecté
cli-event-scanned = scanné
cli-event-ordered = commandé à nouveau
cli-event-replaced = remplacé
cli-event-corrected = corrigé
cli-event-voided = annulé
cli-event-replacement_built = remplaçant fabriqué
cli-event-removed = déposé définitivement
cli-event-withdrawn = retiré
cli-event-withdrawal_lifted = retrait levé

## How far a printer is with a job

cli-state-pending = en attente
cli-state-held = suspendue
cli-state-processing = en cours
cli-state-stopped = arrêtée
cli-state-canceled = annulée
cli-state-aborted = abandonnée
cli-state-completed = imprimée

## Assemblies rated above today's tables

cli-overrated = { $number } : { $message }
cli-overrated-none = Aucun flexible n'est évalué au-dessus des tables actuelles.
cli-about-fittings = Lister les embouts de l'atelier, en importer une liste ou en supprimer un
cli-option-fitting-text = partie de la référence, de la série ou de l'extrémité
cli-option-fittings-import = un fichier .csv ou .xlsx ; toutes les lignes ou aucune
cli-option-fitting-drop = supprimer cette référence de la liste
cli-fitting = { $number } : { $end }
cli-fittings-none = Aucun embout trouvé.
cli-values-none = L'atelier n'a conservé aucune valeur.
cli-kept = Conservé pour tous les flexibles suivants : { $value }
cli-value ={ $id }  { $value }, { $by ->
        [none] conservée le { $day }
       *[other] conservée le { $day } par { $by }
    }
cli-value-withdrawn ={ $id }  { $value }, { $by ->
        [none] conservée le { $day }
       *[other] conservée le { $day } par { $by }
    }, retirée le { $ended } : { $why }
cli-value-replaced ={ $id }  { $value }, { $by ->
        [none] conservée le { $day }
       *[other] conservée le { $day } par { $by }
    }, remplacée le { $ended } par { $other }

## How much the tables know

cli-known-material = { $material } : chaque taille de tuyau avec deux de ses embouts naturels. Tuyaux : { $hoses }
cli-known-all_families = toutes les familles
cli-known-first_sixteen_families = les seize familles de la version 0.1.0
cli-known-now = Flexibles, { $families }
cli-known-usual_form = Une valeur conservée par famille et taille qui n'en a pas, forme usuelle seulement, { $families }
cli-known-every_form = De même pour chaque forme, { $families }
cli-known-shares = { $what } : vérifié { $verified } %, non vérifié { $unverified } %, inconnu { $unknown } % (sur { $count })
cli-known-by-family = Embouts par famille, chacun sur tous ses tuyaux :
cli-known-by-grade = Sources des embouts dont la pression est connue :
cli-known-grade = { $grade } : { $share } %
cli-known-identify = Fiabilité de l'identification (mesures simulées, tous les raccordements) :
cli-known-measured = { $measured } : en première place { $first } %, parmi les trois premières { $three } %, questions { $questions }
cli-grade-standard = norme consultée
cli-grade-document = document d'un fabricant ou d'une administration consulté
cli-grade-secondary = table secondaire
cli-grade-memory = de mémoire (non vérifié)
cli-grade-judgement = par jugement (non vérifié)
cli-grade-practice = pratique courante
cli-grade-shop = valeur de l'atelier
cli-measured-diameter = diamètre
cli-measured-diameter-pitch = diamètre et pas
cli-measured-diameter-seat = diamètre et siège
cli-measured-diameter-pitch-seat = diamètre, pas et siège
cli-measured-diameter-pitch-seat-cone = diamètre, pas, siège et cône
cli-measured-diameter-pitch-seat-cone-nose = diamètre, pas, siège, cône et nez
cli-measured-asked = diamètre, pas, siège et ce qui est demandé ensuite
cli-about-hoses = Lister les tuyaux de l'atelier, en importer une liste ou en retirer un
cli-option-hoses-import = un fichier .csv ou .xlsx dont les colonnes portent les noms de la sortie JSON de cette commande ; toutes les lignes ou aucune
cli-option-hose-drop = retirer le tuyau de cette référence ; demande --dash et --reason
cli-option-hose-dash = dash du tuyau à retirer
cli-option-hose-reason = motif du retrait
cli-hoses-none = L'atelier n'a pas de tuyaux à lui.
cli-own-hose = { $part } : { $standard } -{ $dash }, { $rating }

## Papers, crimps and customers

cli-about-crimp = Enregistrer des diamètres de sertissage mesurés, comparés chacun à la fiche de sertissage.
cli-about-crimp-cards = Afficher les fiches de sertissage de l'atelier, en importer une liste ou en supprimer une.
cli-about-flush = Enregistrer que des flexibles ont été rincés, comment et par qui.
cli-about-certificate = Écrire le certificat de la dernière épreuve, pour chaque flexible ou pour tout un lot d'épreuve.
cli-about-card = Écrire la fiche de montage à joindre au flexible dans son sachet : le guide des deux extrémités, en A6.
cli-about-scale-card = Écrire la carte d'échelle à poser à côté d'un embout pour en mesurer le filetage en photo : une feuille à imprimer à 100 %.
cli-about-customer = Exporter tout ce qui est conservé d'un client.
cli-about-people = Lister les personnes qui se connectent ; retirer à l'une d'elles les codes d'un téléphone.
cli-option-codes-off = ne plus demander à cette personne les codes d'un téléphone, et terminer ses sessions
cli-person = { $name } : { $role ->
        [manager] responsable d'atelier
        [counter] comptoir
       *[builder] monteur-sertisseur
    }{ $active ->
        [no] {""}, ne peut pas se connecter
       *[yes] {""}
    }{ $codes ->
        [yes] {""}, saisit un code de téléphone
       *[no] {""}
    }
cli-person-codes-off = Les codes ne sont plus demandés à { $name } ; toutes ses sessions sont terminées.
cli-people-none = Personne ne peut encore se connecter.
cli-person-not-found = Personne ne porte ici le nom { $name }.
    .mend = Listez les noms avec : tagger people
cli-person-no-codes = Les codes d'un téléphone ne sont pas demandés à { $name }.
    .mend = Vérifiez le nom avec : tagger people
cli-about-erase-contact = Effacer le contact d'une demande de commande partout où il figure ; commandes et étiquettes restent.
cli-about-fitted = Signalements de pose d'un flexible : lister, confirmer, rejeter.
cli-about-erase-old = Effacer les contacts, photos et noms conservés aussi longtemps que les réglages le prévoient.
cli-option-fitted-state = seulement ceux en état { LIST($states, style: "or") }
cli-option-fitted-number = seulement ceux de cette étiquette
cli-option-fitted-agree = confirmer ce signalement ; l'historique de l'étiquette le dit ensuite
cli-option-fitted-refuse = rejeter ce signalement ; exige --reason
cli-option-fitted-erase = effacer l'auteur de ce signalement et sa photo ; date, machine et heures restent
cli-option-dry-run = dire seulement combien serait effacé
cli-fitted-line = { $id } : étiquette { $number }, posé le { $day }, { $machine }, { $state ->
        [agreed] confirmé
        [refused] rejeté
       *[waiting] à confirmer
     }
cli-fitted-machine = machine { $machine }
cli-fitted-no-machine = sans machine indiquée
cli-fitted-erased = { $erased ->
        [yes] Le nom et la photo du signalement { $id } sont effacés. Les copies faites avant les contiennent encore.
       *[no] Le signalement { $id } ne contenait ni nom ni photo.
     }
cli-fitted-none = Aucune pose n'a été signalée.
cli-erase-old-unset = Rien n'est réglé : tout est conservé.
    .mend = Donnez à { LIST($names, style: "or") } un nombre de jours.
cli-erased-old = Effacés : contacts { $contacts }, photos { $photos }, noms dans les signalements de pose { $reports }. Les copies faites avant les contiennent encore : supprimez-les (tagger backup --keep).
cli-old = À effacer : contacts { $contacts }, photos { $photos }, noms dans les signalements de pose { $reports }.
cli-option-whole-run = aussi tous les flexibles enregistrés avec ceux-ci
cli-option-proof-gauge = le manomètre, par son numéro ou son nom
cli-option-proof-gauge-until = le dernier jour de validité de l'étalonnage du manomètre
cli-option-proof-method = la procédure suivie
cli-option-flush-method = comment et avec quoi l'intérieur a été nettoyé
cli-option-flush-by = qui les a rincés
cli-option-pdf = un fichier .pdf
cli-option-card-paper = format du papier (a4 par défaut)
cli-option-certificate-batch = un seul certificat pour tout le lot avec lequel le flexible a été éprouvé en dernier
cli-option-crimp = diamètre de sertissage mesuré à l'extrémité { $end } : en mm, ou avec une unité
cli-option-crimp-shell = la série d'embouts (par défaut : celle de la référence de l'extrémité)
cli-option-crimp-import = un fichier .csv ou .xlsx avec les colonnes { LIST($columns) } ; toutes les lignes ou aucune
cli-option-crimp-cards-import = un fichier .csv ou .xlsx dont les colonnes portent les noms de la sortie JSON de cette commande ; toutes les lignes ou aucune
cli-option-crimp-card-drop = supprimer la fiche de sertissage qui porte ce numéro
cli-option-customer-name = le nom entier, majuscules ou minuscules
cli-option-customer-out = l'écrire aussi dans ce fichier JSON
cli-option-erase-reference = la référence de la demande de commande
cli-of-tag = { $number } : { $what }
cli-proof-batch = Lot d'épreuve { $batch } : { $count ->
        [one] { $count } flexible
       *[other] { $count } flexibles
     }
cli-flush-done = { $count ->
        [one] Le rinçage de { $count } flexible est enregistré.
       *[other] Le rinçage de { $count } flexibles est enregistré.
     }
cli-crimp-of-end = extrémité { $end }, { $crimp }
cli-crimp-nothing = Aucun sertissage mesuré n'est indiqué : rien n'a été enregistré.
    .mend = Indiquez un numéro d'étiquette avec --a ou --b, ou une liste avec --import.
cli-crimp-end = Ce n'est pas une extrémité.
    .mend = Saisissez a ou b.
cli-crimp-no-shell = La série d'embouts de l'extrémité { $end } n'est pas connue.
    .mend = Indiquez-la sous { $field }.
cli-crimp-card = { $id } : { $hose }, { $series } : { $diameter } mm +{ $plus } −{ $minus } mm (source : { $source })
cli-crimp-cards-none = L'atelier n'a aucune fiche de sertissage.
cli-out-not-pdf = Ce n'est pas un fichier .pdf.
    .mend = Utilisez un nom qui se termine par .pdf.
cli-customer = { $name } : { $assemblies ->
        [one] { $assemblies } flexible
       *[other] { $assemblies } flexibles
     }, { $orders ->
        [one] { $orders } demande de commande
       *[other] { $orders } demandes de commande
     }
cli-customer-none = Rien n'est conservé du client { $name }.
    .mend = Vérifiez l'orthographe ; le nom doit être entier.
cli-contact-erased = { $count ->
        [0] Ce contact était déjà effacé.
        [one] Le contact est effacé dans { $count } demande de commande.
       *[other] Le contact est effacé dans { $count } demandes de commande.
     }

## Signing keys

cli-about-signing-key = Crée, liste, retire et imprime les clés qui signent les étiquettes de l'atelier.
cli-option-signing-what = new : une clé qui signe dès aujourd'hui ; la précédente reste valable pour ses étiquettes. withdraw : plus rien de ce que --key a signé ne compte. page : les clés publiques en PDF.
cli-option-signing-number = Numéro de la clé à retirer.
cli-option-signing-published = Pour new, si le fichier de clés est perdu : la liste enregistrée des clés publiques. Les étiquettes signées avec elles restent valables.
cli-signing-now = La clé { $key } signe les étiquettes dès aujourd'hui.
cli-signing-keep = Gardez une copie de { $file } à l'abri de tout autre lecteur, imprimez la page des clés et donnez le même fichier à chaque serveur et à chaque poste.
cli-signing-line = { $key }  { $public }  { $valid }
cli-signing-page = Page des clés écrite : { $file }
cli-signing-needs = Il manque --{ $option }.
    .mend = Utilisez --{ $option }.
cli-read-signature = Signature : { $said }
cli-compare-signature = Signature de { $which } : { $said }

## L'affiche et le livret

cli-about-chart = Écrire l'affiche murale : chaque raccordement en coupe, ses filetages, son étanchéité et ses sosies, sur une page.
cli-about-booklet = Écrire le livret de poche : tableaux des filetages, pans, comment mesurer, sur des feuilles à plier.
cli-option-chart-paper = papier (par défaut A3) ; A2 se lit à 1 m
cli-option-chart-stock = seulement les raccordements des embouts de l'atelier
cli-option-chart-numbers = seulement ceux-ci, avec leurs numéros de stock
cli-option-booklet-paper = papier à couper et à plier (par défaut A4)
cli-option-booklet-pages = page par page, à lire à l'écran

## Gauge sheets

cli-about-sheet = Écrire un gabarit : les tables à l'échelle réelle sur papier, à présenter sur une pièce.
cli-option-sheet-kind = l'objet du gabarit : diamètres de filetage, pas, angles de siège, hexagones, collerettes ou diamètres extérieurs de tuyau
cli-option-sheet-paper = le papier d'impression
cli-option-sheet-family = les diamètres de filetage de cette seule famille
cli-option-found = repères trouvés sur un gabarit, par exemple « D26.99 P2.117 »
cli-option-scale = ce que mesure la ligne de contrôle du gabarit : celle de 100 mm, ou celle de 4 in en pouces
