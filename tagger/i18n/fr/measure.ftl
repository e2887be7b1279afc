# Measuring a thread by a photo beside the scale card: the card, the page, the readings.

## What to do, on the card's sheet and on the page

measure-title = Mesurer un filetage en photo
measure-step-print = Imprimez la carte à 100 % (taille réelle) sur du papier mat et découpez-la. Ne la plastifiez pas : les reflets cachent les codes.
measure-step-check = Mesurez le trait de contrôle avec un réglet ou un pied à coulisse, et saisissez la valeur sur la page.
measure-step-lay = Dépressurisez avant d'ouvrir un raccord. Nettoyez le filetage. Posez l'embout sur une surface plane, unie et d'une autre clarté : du papier blanc pour de l'acier nu.
measure-step-beside = Posez la carte à plat. Posez le filetage le long du bord inférieur de la carte, 10 à 15 mm plus bas. Ne couvrez aucun code.
measure-step-photo = Tenez le téléphone bien à plat, à 300 mm environ au-dessus. La carte et l'embout remplissent la photo. Ni flash, ni zoom.
measure-limits = Ce qu'une photo ne dit pas
measure-limit-flank = L'angle des flancs, 55° ou 60° : les filetages des deux sortes restent possibles.
measure-limit-inside = Les filetages intérieurs : écrous, tournants, orifices.
measure-limit-worn = L'usure d'un filetage : usé ou abîmé, il se mesure plus petit ; sale ou peint, plus grand.
measure-limit-seat = Le siège d'étanchéité, et si le filetage est conique.
measure-limit-pressure = Une pression de service.
measure-defer = Ne choisissez jamais un flexible d'après une photo seule : les données du fabricant du raccord priment.

## The card

measure-card-title = Carte d'échelle
measure-card-check = Trait de contrôle : { $length }
measure-card-lay = Filetage ici, 10 à 15 mm sous ce bord
measure-card-cut = Découper ici

## The page

measure-photo-title = Photo de l'embout à côté de la carte d'échelle
measure-print-a4 = Imprimer la carte (A4)
measure-print-letter = Imprimer la carte (Letter)
measure-field-photo = Photo
measure-field-check = Trait de contrôle mesuré
measure-check-hint = Exemple : 98,5 mm. Il est dessiné long de { $length }. Sans cette valeur, le résultat est moins sûr.
measure-read-photo = Lire la photo
measure-reading = Lecture de la photo …
measure-another = Prendre une autre photo
measure-by-hand = Saisir plutôt des valeurs mesurées

## The lines

measure-lines-title = Placez les traits sur le filetage
measure-lines-how = Amenez les traits 1 et 2 sur les sommets des deux côtés du filetage, et les traits 3 et 4 sur deux sommets. Comptez les pas du trait 3 au trait 4.
measure-lines-marks = Une marque rose se place à chaque pas : toutes doivent tomber sur un sommet, sinon le compte est faux.
measure-lines-keys = Les flèches déplacent un trait de 0,1 mm, Page précédente et Page suivante de 1 mm.
measure-lines-picture = L'embout sous la carte, vu de dessus. La grille est au pas de 10 mm.
measure-magnifier = Loupe
measure-field-edge_1 = Trait 1 : un côté du filetage
measure-field-edge_2 = Trait 2 : l'autre côté
measure-field-crest_1 = Trait 3 : premier sommet
measure-field-crest_2 = Trait 4 : dernier sommet
measure-field-threads = Pas du trait 3 au trait 4
measure-field-tilt = Tourner tous les traits (degrés)
measure-field-rest = Largeur de la partie posée sur la table, si ce n'est pas le filetage
measure-rest-hint = Exemple : 32 mm sur plats de l'hexagone. Vide : le filetage lui-même touche la table.
measure-field-distance = Distance du téléphone à la table, si vous la connaissez
measure-distance-hint = Exemple : 300 mm. Calculée d'après la photo : { $distance }.
measure-find = Trouver bords et sommets
measure-finding = Recherche des bords et des sommets …
measure-found = Trouvé par le programme. Vérifiez chaque trait à la loupe avant d'utiliser les valeurs.
measure-field-confirmed = J'ai vérifié tous les traits sur l'image
measure-read-off = Relever
measure-save-nothing = La photo n'est pas conservée.

## The readings

measure-result-title = Relevé
measure-diameter = Diamètre extérieur du filetage : { $value }, ± { $band }
measure-pitch = Pas : { $value }, ± { $band } mm
measure-tpi = Soit { $tpi } filets par pouce.
measure-corrected = Corrigé de la hauteur : l'axe du filetage est à { $height } au-dessus de la table, le téléphone était à { $distance }.
measure-distance-unsure = Sans la focale dans la photo, la distance est incertaine. Saisissez la distance, ou prenez la photo de plus loin.
measure-not-checked = Le trait de contrôle n'a pas été mesuré : l'impression peut être plus grande ou plus petite que le dessin.
measure-confirm-first = Vérifiez d'abord les traits sur l'image, et confirmez-le plus bas.
measure-identify = Identifier avec ces valeurs
measure-not-usable = Ces traits ne distinguent pas les filetages : l'incertitude sur le diamètre est de { $band }.
    .mend = Saisissez la distance du téléphone à la table, photographiez bien à la verticale, ou utilisez un pied à coulisse.

## What is wrong, and what to do

measure-field-lines = Traits
measure-field-edges = Traits 1 et 2
measure-field-crests = Traits 3 et 4
measure-not-a-number = { $value } n'est pas un nombre.
    .mend = Saisissez un nombre, par exemple 12,5.
measure-lines-missing = Un trait n'est pas placé.
    .mend = Placez les quatre traits, puis relevez.
measure-threads-missing = Les pas entre les traits 3 et 4 ne sont pas comptés.
    .mend = Comptez-les sur l'image et saisissez leur nombre.
measure-no-file = Aucune photo n'a été choisie.
    .mend = Choisissez une photo.
measure-check-line = Le trait de contrôle ne peut pas mesurer { $value } : seul un écart de { $least } à { $most } se corrige.
    .mend = Imprimez la carte à 100 % (taille réelle), sans l'adapter à la page, et mesurez de nouveau.
measure-no-card = Il n'y a pas de carte d'échelle sur la photo, ou elle est illisible.
    .mend = Posez la carte imprimée à côté de l'embout, les quatre codes dans la photo, sous une lumière égale et sans reflets. Choisissez la photo telle que le téléphone l'a prise, pas une copie réduite.
measure-other-code = Le code sur la photo n'est pas celui de la carte d'échelle.
    .mend = Posez la carte d'échelle imprimée à côté de l'embout.
measure-few-symbols = Seuls { $found } des 4 codes de la carte se lisent ; il en faut { $least }.
    .mend = Découvrez les codes, évitez les reflets et les ombres, et réimprimez une carte abîmée.
measure-two-cards = Il y a plus d'une carte d'échelle sur la photo.
    .mend = Prenez la photo avec une seule carte.
measure-mirrored = La photo est inversée comme dans un miroir.
    .mend = Désactivez l'effet miroir, ou utilisez l'appareil au dos du téléphone.
measure-not-flat = La carte n'est pas à plat, ou la photo est floue.
    .mend = Aplatissez la carte, tenez le téléphone immobile, et reprenez la photo.
measure-too-far = La photo est trop grossière : { $found } pixels par millimètre ; il en faut au moins { $least }.
    .mend = Prenez la photo de plus près, pour que la carte et l'embout la remplissent, et choisissez-la telle que le téléphone l'a prise.
measure-slanted = La photo est prise de biais, à { $degrees }° ; au plus { $most }° se corrigent.
    .mend = Tenez le téléphone bien à plat, à la verticale de la carte et de l'embout.
measure-edges-wrong = Les traits 1 et 2 sont à moins de 3 mm ou à plus de 90 mm l'un de l'autre.
    .mend = Placez-les de part et d'autre du filetage.
measure-crests-wrong = Les traits 3 et 4 avec ce nombre de pas ne donnent pas le pas d'un filetage.
    .mend = Placez les deux traits sur des sommets et comptez les pas entre eux.
measure-rest-wrong = La partie posée sur la table ne peut pas avoir cette largeur.
    .mend = Mesurez la partie sur laquelle repose l'embout : de 3 à 120 mm, et au moins le filetage.
measure-distance-wrong = Cette distance ne correspond pas à la photo, prise à { $expected } environ.
    .mend = Mesurez du téléphone à la table, ou laissez le champ vide.
measure-not-found = Aucun bord n'est visible près des traits 1 et 2.
    .mend = Rapprochez les traits des bords du filetage, ou placez tous les traits à la main.
measure-no-crests = Aucun sommet régulier n'est visible entre les traits 3 et 4.
    .mend = Placez les traits 3 et 4 aux deux bouts du filetage, ou placez tous les traits à la main.
