# Tags and printing: what stands on a tag, templates, preflight, printers.

## Lines of a tag. Ranges and signs are short; a tag has one decimal sign (label_templates/README.md)

printing-value = { $value }
printing-duty = { $fluid }, max. { $temperature }
printing-unverified = { SAY($parts, case: "short") } : non vérifié
printing-at_most = { SAY($parts, case: "short") } : ≤ { $pressure }
printing-at_most-all = ≤ { $pressure }
printing-dangers = DANGER, hors des limites publiées : { LIST($dangers) }
printing-not-known-least = valeur inconnue (voir le fabricant)
printing-dangers-least = DANGER : { $dangers }
printing-danger-fluid = fluide
printing-danger-heat = chaleur
printing-danger-cold = froid
printing-danger-pressure = pression
printing-danger-vacuum = dépression
printing-write = { SAY($parts, case: "short") } : __________ bar
printing-write-unverified = { SAY($parts, case: "short") } : __________ bar ; { SAY($doubtful, case: "short") } : non vérifié
printing-write-hose = Tuyau, { $what } : __________ bar (fabricant du tuyau)
printing-write-end_a = Extrémité A, { $what } : __________ bar (fabricant d'embouts)
printing-write-end_b = Extrémité B, { $what } : __________ bar (fabricant d'embouts)
printing-caption = { $caption } :
printing-size = -{ $dash } ({ $inches })
printing-serial = { $place } sur { $of }
printing-clocking-short = orientation { $angle } dans le sens antihoraire, vue de l'extrémité A
printing-clocking-shortest = { $angle } antihoraire, vue de l'extrémité A
printing-covers = { LIST($covers) }
printing-tolerance = −{ $minus } / +{ $plus } ; { $source }
printing-bend-radius = ≥ { $radius } ; { $source }
printing-limited-by = { $part } ({ $source })
printing-warning = ! { $warning }
printing-source = { $ends } : { $source }
printing-source-basis = { $ends } : { $basis } ; { $source }
printing-source-unverified = { $source } (non vérifié)
printing-lots = { LIST($lots) }
printing-lot-end_a = A : { $lot }
printing-lot-hose = tuyau : { $lot }
printing-lot-end_b = B : { $lot }
printing-tighten = Serrage { $end } : { $torque } ; ou { $count }
printing-tighten-torque = Serrage { $end } : { $torque }
printing-tighten-count = Serrage { $end } : { $count }
printing-tighten-unknown = Serrage { $end } : { $unknown }
printing-end-title = { $size } { SAY($connection, case: "short") }
printing-end-described = { $description } (autre raccord)
printing-end-form = { $form }, { $shape }
printing-end-jump = embout réduit ou augmenté : tétine pour tuyau -{ $dash }
printing-flats = { $many ->
    [one] { $count } pan
    [below_two] { $count } pan
   *[other] { $count } pans
 }
printing-turns = { $many ->
    [one] { $count } tour
    [below_two] { $count } tour
   *[other] { $count } tours
 }
printing-basis-finger_tight = à partir du serrage aux doigts
printing-basis-wrench_resistance = à partir de la résistance à la clé
printing-basis-not_stated = à partir d'un point non indiqué
printing-basis-torque = par couple de serrage
printing-per-screw = par vis { $screw }
printing-per-any-screw = par vis (type de vis : voir le fabricant)
printing-per-any-screw-short = par vis ; vis selon le fabricant
printing-stud = élément mâle avec rondelle ou joint torique ; trop élevé pour un écrou
printing-stud-short = trop élevé pour un écrou
printing-torque-stud = { $torque } (trop élevé pour un écrou)
printing-tightening-not-known = serrage inconnu (utilisez la valeur du fabricant d'embouts)
printing-clocking-counted = dans le sens antihoraire, extrémité A côté observateur
printing-clocking-seen = vu côté A
printing-between-sealing_face = entre faces d'étanchéité
printing-between-thread_end = entre bouts de filetage
printing-between-elbow_centreline = entre axes des coudes
printing-made = { $shop }, { $day }
printing-caution = Une pression, un filetage ou un serrage erroné peut causer des blessures graves. Relâchez toute la pression avant de desserrer. Respectez les instructions du fabricant d'embouts et la réglementation locale.
printing-caution-short = Relâchez la pression avant de desserrer. Respectez les instructions du fabricant d'embouts.
printing-caution-least = Relâchez la pression avant de desserrer.

## Captions of the fields, before a colon

printing-field-number = Étiquette
printing-field-serial = Pièce
printing-field-built_on = Fabriqué le
printing-field-made = Assemblé par
printing-field-hose = Tuyau
printing-field-dash = Module
printing-field-end_a = Extrémité A
printing-field-end_b = Extrémité B
printing-field-length = Longueur
printing-field-length_basis = Mesurée
printing-field-clocking = Angle d'orientation
printing-field-working_pressure = Pression de service max.
printing-field-dangers = Danger
printing-field-duty = Fluide, température
printing-field-vacuum = Dépression max.
printing-field-fluid = Fluide
printing-field-temperature = Température max.
printing-field-covers = Protections du tuyau
printing-field-tolerance = Tolérance de longueur
printing-field-bend_radius = Rayon de courbure min.
printing-field-test_pressure = Pression d'épreuve
printing-field-limited_by = Limitée par
printing-field-warnings = Avertissements
printing-field-tightening_sources = Sources des valeurs de serrage
printing-field-lots = Lots
printing-field-shop = Fabriqué par
printing-field-order = Commande
printing-field-note = Remarque
printing-field-stop_why = Motif
printing-field-stop_on = Date
printing-field-stop_by = Enregistré par

## Work steps on the job card, each before a box to sign

printing-done-cut = Tuyau coupé, longueur contrôlée
printing-done-crimped = Serti, diamètre mesuré
printing-done-proof-tested = Éprouvé, pression et durée
printing-done-taken = Travail pris par, date
printing-done-handed-out = Flexible remis à, date

## Titles of the templates that come with the program

printing-title-hang_tag = Étiquette à suspendre, 100 x 60 mm, avec un trou
printing-title-hang_tag_two = Étiquette à suspendre en deux langues, 120 x 90 mm, avec un trou
printing-title-wrap_label = Étiquette autoprotégée à enrouler, impression 102 x 186 mm, film transparent 64 mm
printing-title-flag_label = Étiquette drapeau, 150 x 50 mm, pliée autour du tuyau
printing-title-sleeve_tag = Étiquette sous gaine, 190 x 34 mm, lisible des deux côtés
printing-title-thin_wrap = Bande à petit code QR répété autour d'un tuyau mince
printing-title-end_tag_a = Étiquette de l'extrémité A, 70 x 56 mm, avec les valeurs de serrage
printing-title-end_tag_b = Étiquette de l'extrémité B, 70 x 56 mm, avec les valeurs de serrage
printing-title-roll_2x1 = Étiquette en rouleau, 2 x 1 in
printing-title-roll_4x2 = Étiquette en rouleau, 4 x 2 in
printing-title-roll_4x6 = Étiquette en rouleau, 4 x 6 in, avec les sources
printing-title-roll_continuous = Rouleau continu, largeur 58 mm, coupe tous les 132 mm
printing-title-sheet_a4 = Huit étiquettes à suspendre sur une feuille A4
printing-title-sheet_letter = Huit étiquettes à suspendre sur une feuille Letter
printing-title-traveller_a5 = Fiche suiveuse, A5
printing-title-traveller_half_letter = Fiche suiveuse, demi-Letter
printing-title-traveller_stub = Fiche suiveuse A5 avec talon détachable, sur A4
printing-title-metal_plate = Plaque à graver, 4 x 2 in, SVG ou DXF
printing-title-shrink_sleeve = Gaine thermorétractable, 240 x 76 mm, imprimée à plat, pour tuyaux de 30 à 49 mm
printing-title-do_not_use = Étiquette « Ne pas utiliser » pour un flexible retiré ou refusé, 100 x 60 mm
## The tag on a hose that must not be used

printing-stop-words = NE PAS UTILISER
printing-stop-act = Ne montez pas ce flexible. N'enlevez pas cette étiquette. Rapportez les deux à l'atelier.
printing-stop-example = Le motif, la date et le nom sont imprimés ici.

## Template files: every problem names the file, the box and the key before the sentence

printing-template-unknown = Le modèle { $name } n'existe pas.
    .mend = Utilisez l'un des modèles suivants : { LIST($names, style: "or") }, ou indiquez le chemin d'un fichier .toml.
printing-plate-not-engraved = Les formats SVG et DXF sont réservés aux plaques, et cette étiquette est destinée à une imprimante.
    .mend = Choisissez l'étiquette pour plaque métallique, ou le PDF ou le PNG.
printing-template-not-here = Le modèle { $name } n'existe pas.
    .mend = Utilisez l'un des modèles suivants : { LIST($names, style: "or") }.
printing-template-folder = { $folder } n'est pas un dossier.
    .mend = Indiquez un dossier qui contient des fichiers .toml.
printing-template-unreadable = Le fichier de modèle { $file } est illisible.
    .mend = Vérifiez le chemin du modèle.
printing-template-not-toml = Le fichier n'est pas du TOML valide ({ $told }).
    .mend = Corrigez cette ligne.
printing-template-name = Un modèle porte le nom de son fichier : { $name }.
    .mend = Supprimez cette ligne ou renommez le fichier.
printing-template-own-base = Un modèle ne peut pas être sa propre base.
    .mend = Utilisez un autre modèle de base ou définissez toutes les clés ici.
printing-template-circle = La base renvoie à ce même modèle : { $way }.
    .mend = Utilisez un autre modèle de base ou définissez toutes les clés ici.
printing-template-kind = { $kind } n'est pas un type de zone.
    .mend = Donnez à kind l'une de ces valeurs : { LIST($kinds, style: "or") }.
printing-template-kind-missing = La zone n'a pas de type.
    .mend = Donnez à kind l'une de ces valeurs : { LIST($kinds, style: "or") }.
printing-template-field = { $field } n'est pas une donnée d'étiquette.
    .mend = Utilisez l'une de ces données : { LIST($fields, style: "or") }.
printing-template-language = { $language } n'est pas une langue disponible.
    .mend = Utilisez l'une de ces langues : { LIST($languages, style: "or") }.
printing-template-languages = Une étiquette demande une ou deux langues disponibles.
    .mend = Indiquez une ou deux de ces langues : { LIST($languages, style: "or") }.
printing-template-boxes = Chaque zone commence par { "[[" }box]], entre doubles crochets.
    .mend = Écrivez { "[[" }box]] avant ses clés.
printing-template-list = Il faut ici plusieurs valeurs, entre crochets.
    .mend = Saisissez-les sous forme de liste, par exemple ["number"].
printing-template-pair = Il faut ici deux valeurs, entre crochets.
    .mend = Saisissez-les ainsi : [100, 60].
printing-template-text-min = Le plus petit texte est plus grand que le plus grand, qui est de { $text } mm.
    .mend = Saisissez un { "text_min" } plus petit ou un { "text" } plus grand.
printing-template-off-label = La zone dépasse de l'étiquette, qui mesure { $width } x { $height } mm.
    .mend = Déplacez-la ou réduisez-la.
printing-template-flag = La partie d'une étiquette drapeau qui entoure le tuyau a une aile de chaque côté.
    .mend = Indiquez où elle commence et où elle finit, entre 0 et { $width } mm, la plus petite valeur d'abord.
printing-template-sleeve-sizes = Rétreinte, une gaine thermorétractable est plus petite que ses { $supplied } mm à la livraison.
    .mend = Saisissez le diamètre intérieur après rétreint complet, d'après les données de la gaine.
printing-template-sleeve-flat = Une gaine de { $supplied } mm a { $flat } mm de large à plat, et l'étiquette est plus large.
    .mend = Réduisez ce côté de l'étiquette à { $flat } mm ou moins.
printing-template-sleeve-alone = Un modèle pour gaine thermorétractable ne peut pas avoir cette clé.
    .mend = Supprimez-la, ou supprimez { "sleeve" }.
printing-template-sleeve-picture = Cette zone contient un dessin. Comprimé par la gaine, il montrerait des angles et des formes faux.
    .mend = Utilisez des zones de texte : des champs tels que end_a, length et clocking, et le type tightening.
printing-template-sleeve-bars = La gaine comprimerait les barres.
    .mend = Tournez la zone de 90 degrés, pour que le code-barres suive la longueur du tuyau.
printing-template-overlap = La zone recouvre la zone { $box } ({ $kind }).
    .mend = Déplacez l'une des deux.
printing-template-off-page = Les étiquettes vont jusqu'à { $last } mm sur une page de { $page } mm.
    .mend = Mettez-en moins, ou réduisez pitch ou first.
printing-template-pitch = Le pas de { $pitch } mm est inférieur aux { $size } mm de l'étiquette : les étiquettes se recouvriraient.
    .mend = Indiquez au moins { $size } mm.

## What does not fit on a label

printing-box-letters = Le texte contient des caractères que la police de l'étiquette ne peut pas imprimer : { $letters }
    .mend = Utilisez des lettres latines, grecques ou cyrilliques.
printing-box-text = Le texte ne tient pas dans { $width } x { $height } mm à la taille de texte minimale de { $text } mm.
    .mend = Donnez-lui au moins { $need_width } x { $need_height } mm, ou réduisez { "text_min" } (minimum { $least } mm).
printing-box-qr = La zone de { $side } mm est trop petite pour le code QR : à { $dpi } dpi, les modules feraient moins de { $dots } points ou de { $module } mm.
    .mend = Prévoyez au moins { $need } x { $need } mm, ou raccourcissez l'adresse web.
printing-box-bars = La zone de { $width } mm est trop étroite pour les barres du Code 128 à { $dpi } dpi.
    .mend = Prévoyez au moins { $need } mm de largeur.
printing-start = { $start } n'est pas une place de la planche.
    .mend = Indiquez une place de 1 à { $places }.
printing-start-one = { $start } n'est pas une place de la planche : ce modèle imprime une étiquette par page.
    .mend = N'indiquez pas de place.
printing-no-tags = Il n'y a aucune étiquette à imprimer.
    .mend = Indiquez-en au moins une.
printing-grade-none = Aucun code QR de l'image n'est lisible : note F.
    .mend = Imprimez-le plus grand ou plus net, ou prenez la photo de face et bien nette.

## Preflight: will it scan?

printing-dangers-untold = Ce flexible présente un danger lié au fluide, à la chaleur, au froid, à la pression ou à la dépression, et aucune zone du modèle ne le dit.
    .mend = Ajoutez une zone avec kind = "caution".
printing-flight-no-code = L'étiquette n'a pas de code QR et ne peut donc pas être scannée.
    .mend = Ajoutez une zone avec kind = "qr".
printing-flight-dots = Un module fait { $dots } points d'imprimante de large. En dessous de { $least } points, l'encre ou la chaleur qui s'étale ferme les intervalles.
    .mend = Donnez une zone plus grande au code QR, ou imprimez avec une résolution (dpi) plus élevée.
printing-flight-module = Un module fait { $module } mm de large. La DIN SPEC 91406 demande au moins { $least } mm.
    .mend = Donnez une zone plus grande au code QR.
printing-flight-grid = { $kind ->
    [code128] Le code-barres n'est pas aligné sur des points entiers de l'imprimante.
   *[qr] Le code QR n'est pas aligné sur des points entiers de l'imprimante.
 }
    .mend = Erreur du programme : veuillez la signaler.
printing-flight-level = La correction d'erreurs est au niveau { $level }. La DIN SPEC 91406 préfère Q, et H supporte plus de saleté.
    .mend = Donnez une zone plus grande au code QR.
printing-flight-quiet-zone = La marge de { $modules } modules autour du code QR n'est pas libre.
    .mend = Libérez cette zone, ou éloignez le code QR du bord de l'étiquette.
printing-proof-quiet = { $kind ->
    [code128] La marge autour du code-barres n'est pas libre, ou l'étiquette s'arrête avant.
   *[qr] La marge autour d'un code QR n'est pas libre, ou l'étiquette s'arrête avant.
 }
    .mend = Libérez cette zone, ou éloignez le code du bord de l'étiquette.
printing-proof-drawn = { $kind ->
    [code128] Le code-barres n'est pas imprimé tel qu'il a été créé.
   *[qr] Un code QR n'est pas imprimé tel qu'il a été créé.
 }
    .mend = Éloignez du code les autres zones du modèle. Si aucune ne le recouvre : erreur du programme, veuillez la signaler.
printing-proof-text = { $kind ->
    [code128] Le code-barres ne dit pas ce que dit l'étiquette.
   *[qr] Un code QR ne dit pas ce que dit l'étiquette.
 }
    .mend = Erreur du programme : veuillez la signaler.
printing-flight-link = L'adresse web du code QR compte { $length } caractères. Les liens d'identification en ont au plus { $most }.
    .mend = Utilisez une adresse web plus courte.
printing-flight-reach = Le code QR se lit jusqu'à environ { $cm } cm (dix fois son côté ; usage courant, sans source).
printing-flight-reach-short = Le code QR se lit jusqu'à environ { $cm } cm (dix fois son côté ; usage courant, sans source).
    .mend = Utilisez un code QR plus grand, ou tenez le téléphone très près.
printing-flight-text = Le plus petit texte mesure { $size } mm de haut. En dessous de { $least } mm, il est difficile à lire.
    .mend = Agrandissez sa zone.
printing-flight-readers = Sur { $count } décodeurs d'essai, ceux-ci ne lisent pas le code QR à partir des points imprimés : { LIST($failed) }.
    .mend = Donnez une zone plus grande au code QR.
printing-flight-codes = Codes QR lisibles sur l'étiquette : { $read } sur { $count }.
    .mend = Écartez davantage les codes QR ou agrandissez-les.
printing-flight-grade = Les points imprimés obtiennent la note { $grade } selon les paramètres de l'ISO/IEC 15415.
    .mend = Utilisez des modules plus grands.
printing-flight-contrast = Le contraste dépend du support : imprimez en noir sur blanc ou jaune. Un support sombre ou transparent demande un fond blanc.
printing-flight-wrap-unknown = Sur un tuyau, cette étiquette se courbe avec lui, mais le diamètre extérieur du tuyau n'est pas connu.
    .mend = Mesurez-le et indiquez-le ({ "--hose-od" }), ou utilisez une étiquette à suspendre.
printing-flight-wrap = Autour d'un tuyau de { $od } mm, le code QR de { $side } mm montre ses modules extérieurs à { $share } % de leur largeur. La lecture est possible jusqu'à { $widest } mm.
printing-flight-wrap-near = Autour d'un tuyau de { $od } mm, le code QR de { $side } mm montre ses modules extérieurs à { $share } % de leur largeur. La lecture est possible jusqu'à { $widest } mm.
    .mend = C'est proche de la limite : une étiquette drapeau ou à suspendre est plus sûre.
printing-flight-wrap-thin = Autour d'un tuyau de { $od } mm, le code QR de { $side } mm montre ses modules extérieurs à { $share } % de leur largeur. La lecture est possible jusqu'à { $widest } mm.
    .mend = Utilisez une étiquette drapeau ou à suspendre. Cette étiquette convient aux tuyaux à partir de { $thinnest } mm.
printing-flight-facing = Autour d'un tuyau de { $od } mm, un code QR est lisible de tout côté.
printing-flight-facing-end = Autour d'un tuyau de { $od } mm, un code QR est lisible depuis { $share } % des côtés. Aucun n'est lisible sur les { $gap } au bout de l'étiquette.
    .mend = Posez à côté une deuxième étiquette dont le bout est du côté opposé, ou le drapeau d'une étiquette drapeau à un quart de tour de ce bout. Ou utilisez une étiquette à suspendre.
printing-flight-facing-away = Autour d'un tuyau de { $od } mm, un code QR n'est lisible que depuis { $share } % des côtés. Le plus grand angle mort est de { $gap }.
    .mend = { $label ->
            [thin_wrap] Utilisez une étiquette drapeau ou à suspendre.
           *[other] Utilisez un modèle prévu pour ce diamètre (thin_wrap répète un petit code QR), une étiquette drapeau ou à suspendre.
        }
printing-flight-hidden = Autour d'un tuyau de { $od } mm, le bout de l'étiquette recouvre du texte qui ne figure nulle part ailleurs : zone { LIST($boxes) }.
    .mend = Utilisez ce modèle sur des tuyaux à partir de { $thinnest } mm, ou une étiquette drapeau ou à suspendre.
printing-flight-flag = Le drapeau reste dégagé jusqu'à un diamètre extérieur de tuyau de { $thickest } mm.
printing-flight-flag-thick = Autour d'un tuyau de { $od } mm, le milieu de cette étiquette drapeau est trop court : un code QR du drapeau repose sur le tuyau.
    .mend = Utilisez-la sur des tuyaux jusqu'à { $thickest } mm, ou utilisez une étiquette à suspendre.
printing-flight-lying = À plat sur un tuyau de { $od } mm, le code QR est lisible à la verticale.
printing-flight-sleeve-thin = Dans une gaine sur un tuyau de { $od } mm, le code QR de { $side } mm se courbe trop pour être lu. La lecture est possible jusqu'à { $widest } mm.
    .mend = Utilisez une étiquette à suspendre ou une étiquette drapeau. Ce modèle convient aux tuyaux à partir de { $thinnest } mm.
printing-flight-stuck-thin = Collé sur un tuyau de { $od } mm, le code QR de { $side } mm est illisible. La lecture est possible jusqu'à { $widest } mm.
    .mend = Suspendez l'étiquette à un lien ou collez-la sur une surface plane. Sur les tuyaux à partir de { $thinnest } mm, elle est lisible.
printing-flight-shrink-unknown = La gaine se rétreint avec son impression, de { $supplied } mm jusqu'à { $recovered } mm au minimum, et le diamètre extérieur du tuyau n'est pas connu.
    .mend = Mesurez-le et indiquez-le ({ "--hose-od" }), ou utilisez une étiquette à suspendre.
printing-flight-shrink-fit = La gaine convient aux tuyaux entre { $recovered } et { $supplied } mm. { $fit ->
    [loose] Sur un tuyau de { $od } mm, elle reste lâche.
   *[tight] Elle ne passe pas sur un tuyau de { $od } mm.
 }
    .mend = Utilisez une gaine d'une autre taille avec son propre modèle, ou une étiquette à suspendre.
printing-flight-shrink = Sur un tuyau de { $od } mm, l'impression se réduit à { $share } % autour du tuyau. Gaine : { $supplied } mm à la livraison, { $recovered } mm après rétreint complet ; source : { $source }.
    .mend = Comparez les deux diamètres aux données de votre gaine. Enfilez-la avant de sertir l'embout.
printing-flight-shrink-module = Sur un tuyau de { $od } mm, l'impression se réduit à { $share } % et un module à { $module } mm. La DIN SPEC 91406 demande au moins { $least } mm.
    .mend = Utilisez une gaine de plus petit diamètre à la livraison, ou une étiquette à suspendre.
printing-flight-shrink-near = Sur un tuyau de { $od } mm, un code QR est proche de la plus grande largeur lisible.
    .mend = Utilisez un code QR plus petit dans un modèle à vous, ou une étiquette à suspendre.
printing-flight-shrink-unread = Rétreint et courbé autour d'un tuyau de { $od } mm, un code QR a { $side } mm de large, et la géométrie permet la lecture jusqu'à { $widest } mm. { $unread ->
    [0] Les décodeurs d'essai le lisent.
   *[other] Décodeurs d'essai qui ne l'y lisent pas : { LIST($failed) }.
 }
    .mend = Utilisez un code QR plus petit dans un modèle à vous, ou une étiquette à suspendre.
printing-sleeve-assumed = supposé par ce modèle, aucune donnée d'une gaine

## Network printers

printing-printer-address = { $address } n'est pas l'adresse d'une imprimante.
    .mend = Indiquez par exemple ipp://192.0.2.7/ipp/print ou ipps://labels.example.com/ipp/print.
printing-printer-dpi = L'imprimante { $address } n'imprime pas à { $dpi } dpi.
    .mend = Utilisez { LIST($dots, style: "or") } dpi.
printing-printer-formats = L'imprimante ne prend en charge ni PDF ni PWG Raster, seulement { LIST($formats) }.
    .mend = Utilisez le PDF et imprimez-le depuis un ordinateur où cette imprimante est installée.
printing-printer-no-formats = L'imprimante n'annonce aucun format de fichier pris en charge.
    .mend = Utilisez le PDF et imprimez-le depuis un ordinateur où cette imprimante est installée.
printing-printer-not-ipp = L'imprimante n'a pas renvoyé de réponse IPP valide.
    .mend = Vérifiez le chemin de son adresse, souvent /ipp/print.
printing-printer-untrusted = Le certificat de l'imprimante n'est pas approuvé ({ $told }).
    .mend = Ajoutez le certificat à SSL_CERT_FILE, ou utilisez ipp:// sur le réseau de l'atelier.
printing-printer-silent = L'imprimante n'a pas répondu en { $seconds } s.
    .mend = { $sent ->
        [perhaps] Vérifiez si les étiquettes ont été imprimées avant de les renvoyer.
       *[no] Vérifiez que l'imprimante est allumée et reliée au réseau et que l'adresse est juste, ou utilisez le PDF.
     }
printing-printer-too-long = La réponse de l'imprimante dépasse { $octets } octets.
    .mend = { $sent ->
        [perhaps] Vérifiez si les étiquettes ont été imprimées avant de les renvoyer.
       *[no] Vérifiez que l'imprimante est allumée et reliée au réseau et que l'adresse est juste, ou utilisez le PDF.
     }
printing-printer-http = L'imprimante a répondu HTTP { $status }.
    .mend = { $sent ->
        [perhaps] Vérifiez si les étiquettes ont été imprimées avant de les renvoyer.
       *[no] Vérifiez que l'imprimante est allumée et reliée au réseau et que l'adresse est juste, ou utilisez le PDF.
     }
printing-printer-lost = La connexion à l'imprimante a été perdue ({ $told }).
    .mend = Vérifiez si les étiquettes ont été imprimées avant de les renvoyer.
printing-printer-unreachable = L'imprimante est injoignable ({ $told }).
    .mend = Vérifiez que l'imprimante est allumée et reliée au réseau et que l'adresse est juste, ou utilisez le PDF.
printing-printer-elsewhere = L'adresse de l'imprimante mène à { $address }, qui n'est pas une adresse du réseau local.
    .mend = Donnez à l'imprimante une adresse du réseau de l'atelier.
printing-refused-forbidden = L'imprimante a refusé la demande : ce programme n'a pas le droit d'imprimer.
    .mend = Vérifiez l'imprimante et son adresse, ou utilisez le PDF.
printing-refused-sign-in = L'imprimante demande une connexion que ce programme ne prend pas en charge.
    .mend = Vérifiez l'imprimante et son adresse, ou utilisez le PDF.
printing-refused-not-found = L'imprimante ou le travail est introuvable à cette adresse.
    .mend = Vérifiez l'imprimante et son adresse, ou utilisez le PDF.
printing-refused-too-large = L'imprimante signale que le fichier est trop volumineux.
    .mend = Vérifiez l'imprimante et son adresse, ou utilisez le PDF.
printing-refused-format = L'imprimante ne prend pas en charge ce format de fichier.
    .mend = Vérifiez l'imprimante et son adresse, ou utilisez le PDF.
printing-refused-job = L'imprimante ne prend pas en charge ce type de travail.
    .mend = Vérifiez l'imprimante et son adresse, ou utilisez le PDF.
printing-refused-not-accepting = L'imprimante n'accepte pas de travaux.
    .mend = Vérifiez l'imprimante et son adresse, ou utilisez le PDF.
printing-refused-busy = L'imprimante est occupée.
    .mend = Vérifiez l'imprimante et son adresse, ou utilisez le PDF.
printing-refused-status = L'imprimante a refusé la demande (état IPP { $status }).
    .mend = Vérifiez l'imprimante et son adresse, ou utilisez le PDF.
printing-refused-told = { $why } L'imprimante indique : « { $told } ».
    .mend = Vérifiez l'imprimante et son adresse, ou utilisez le PDF.
printing-job-cancelled = L'imprimante a accepté le travail { $job }, puis l'a annulé. Une partie des étiquettes est peut-être imprimée.
    .mend = Vérifiez l'imprimante, puis imprimez de nouveau ou utilisez le PDF.
printing-job-cancelled-because = L'imprimante a accepté le travail { $job }, puis l'a annulé ({ LIST($remarks) }). Une partie des étiquettes est peut-être imprimée.
    .mend = Vérifiez l'imprimante, puis imprimez de nouveau ou utilisez le PDF.

## What a printer reports of itself or of a job (ipp/reasons.csv): status phrases, shown in a list after a colon

printing-reason-media-needed = attend des étiquettes ou du papier
printing-reason-media-empty = plus d'étiquettes ou de papier
printing-reason-media-low = étiquettes ou papier bientôt épuisés
printing-reason-media-jam = bourrage d'étiquettes ou de papier
printing-reason-pausing = mise en pause en cours
printing-reason-paused = en pause
printing-reason-off = éteinte ou en cours d'arrêt
printing-reason-connecting = la file d'impression se connecte à l'imprimante
printing-reason-timed-out = la file d'impression ne joint pas l'imprimante
printing-reason-stopping = arrêt en cours
printing-reason-stopped-partly = partiellement arrêtée
printing-reason-toner-low = toner bientôt épuisé
printing-reason-toner-empty = plus de toner
printing-reason-memory-full = mémoire de l'imprimante pleine
printing-reason-cover-open = capot ouvert
printing-reason-interlock-open = verrouillage de sécurité ouvert
printing-reason-door-open = porte ouverte
printing-reason-input-tray-missing = bac d'alimentation absent
printing-reason-output-tray-missing = bac de sortie absent
printing-reason-output-almost-full = bac de sortie presque plein
printing-reason-output-full = bac de sortie plein
printing-reason-ribbon-low = ruban ou encre bientôt épuisés
printing-reason-ribbon-empty = plus de ruban ou d'encre
printing-reason-waste-almost-full = récupérateur presque plein
printing-reason-waste-full = récupérateur plein
printing-reason-too-hot = trop chaude
printing-reason-too-cold = encore froide
printing-reason-drum-worn-soon = tambour presque usé
printing-reason-drum-worn = tambour usé
printing-reason-developer-low = révélateur bientôt épuisé
printing-reason-developer-empty = plus de révélateur
printing-reason-resource = ressource d'imprimante manquante pour ce fichier
printing-reason-other = aucune raison indiquée
printing-reason-job-incoming = réception du travail en cours
printing-reason-job-queued = travail dans la file d'impression
printing-reason-job-printing = impression du travail en cours
printing-reason-job-reading = lecture du travail en cours
printing-reason-job-preparing = préparation du travail en cours
printing-reason-job-outgoing = transmission du travail en cours
printing-reason-job-held = travail retenu
printing-reason-job-resources = support ou consommable requis non chargé
printing-reason-printer-stopped = imprimante arrêtée
printing-reason-printer-stopped-partly = imprimante partiellement arrêtée
printing-reason-job-stopping = arrêt du travail en cours
printing-reason-job-aborted = travail arrêté par l'imprimante
printing-reason-compression = fichier impossible à décompresser
printing-reason-unreadable = fichier illisible
printing-reason-format = format de fichier non pris en charge
printing-reason-cancelled-user = travail annulé par un utilisateur
printing-reason-cancelled-operator = travail annulé par l'opérateur de l'imprimante
printing-reason-cancelled-device = travail annulé sur l'imprimante
printing-reason-completed = travail imprimé
printing-reason-completed-warnings = travail imprimé avec un avertissement de l'imprimante
printing-reason-completed-errors = travail terminé avec des erreurs
printing-reason-queued-device = travail dans la file interne de l'imprimante
printing-reason-queue-off = file d'impression désactivée
printing-reason-incomplete = travail reçu incomplet

## Across the picture of a tag that is not registered yet, in large letters

printing-specimen = SPÉCIMEN

## Signature

printing-flight-unsigned = Cette étiquette n'a pas de place pour la signature : ses codes QR portent la spécification sans elle.
    .mend = Utilisez un modèle plus grand si l'étiquette doit être signée.
printing-flight-signed = Le grand code QR est signé.
