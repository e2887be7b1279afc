# What is said of a spec that does not describe an assembly, of values with units, and of files that cannot be read.
# Each reads alone and after a caption: "Length: This value is missing."

## Fields of an input

spec-missing = Cette valeur manque.
    .mend = Saisissez-la.
spec-unknown-field = Ce champ est inconnu.
    .mend = Supprimez-le ou vérifiez son orthographe.
spec-not-one-of = Cette valeur est inconnue.
    .mend = Utilisez l'une des suivantes : { LIST($choices, style: "or") }.
spec-bar = { $number } bar
spec-not-more-than = Cette valeur n'est pas supérieure à { $limit }.
    .mend = Saisissez plus de { $limit }.
spec-below-minimum = Cette valeur est inférieure au minimum de { $minimum }.
    .mend = Saisissez { $minimum } ou plus.
spec-above-maximum = Cette valeur est supérieure au maximum de { $maximum }.
    .mend = Saisissez { $maximum } ou moins.
spec-too-long = Ce texte dépasse { $maximum } caractères.
    .mend = Raccourcissez-le à { $maximum } caractères.
spec-cleanliness-code = Ce n'est pas un code de propreté ISO 4406.
    .mend = Saisissez trois numéros d'échelle, aucun supérieur au précédent ni à 28, par exemple 18/16/13.
spec-empty = Cette valeur est vide.
    .mend = Saisissez une valeur.
spec-not-text = Ce n'est pas du texte.
    .mend = Mettez-le entre guillemets droits ("...").
spec-not-a-whole-number = Ce n'est pas un nombre entier.
    .mend = Saisissez un nombre entier, par exemple 12.
spec-not-a-number = Ce n'est pas un nombre.
    .mend = Saisissez un nombre, par exemple 1.5.
spec-not-yes-or-no = Ce n'est ni true ni false.
    .mend = Saisissez true ou false.
spec-not-a-list = Ce n'est pas une liste.
    .mend = Utilisez une liste JSON, par exemple ["un", "deux"].
spec-not-an-object = Ce n'est pas un objet JSON.
    .mend = Utilisez un objet JSON, par exemple { $example }.
spec-not-a-date = Ce n'est pas une date.
    .mend = Saisissez la date sous la forme AAAA-MM-JJ, par exemple 2027-03-31.
spec-not-the-pattern = Cette valeur n'a pas la forme exigée.
    .mend = Elle doit correspondre au motif { $pattern }.

## An end, the whole assembly, its tightening

spec-enter-size = { $sizing ->
    [pipe] Saisissez la taille nominale du filetage (« { $key } »), par exemple 3/4.
    [tube] Saisissez le diamètre extérieur du tube en mm (« { $key } »), par exemple 12.
    [thread] Saisissez le filetage (« { $key } »), par exemple M22x1.5.
   *[dash] Saisissez le module (« { $key } »), par exemple 12.
 }
spec-dash-and-size = Saisissez soit le module, soit la taille, mais pas les deux.
    .mend = { $enter }
spec-sized-by-dash = Ce raccordement se désigne par un module : { $connection }.
    .mend = { $enter }
spec-not-sized-by-dash = Ce raccordement ne se désigne pas par un module : { $connection }.
    .mend = { $enter }
spec-size-of-another-series = Cette taille désigne une autre série que celle de l'embout : { $connection }, série { $series }.
    .mend = Corrigez la taille, le raccordement ou la série : filetages et pression en dépendent.
spec-form = Cette forme n'existe pas pour le raccordement { $connection }.
    .mend = Utilisez l'une des suivantes : { LIST($forms, style: "or") }.
spec-description = Une description ne sert qu'à un raccord d'un autre type (« other »).
    .mend = Effacez-la.
spec-description-missing = Le raccord n'est pas décrit.
    .mend = Indiquez ce que c'est, filetage compris, en 24 caractères simples au plus (« description »), par exemple Bloc M20x1.5.
spec-description-only = Un raccord d'un autre type n'a pas de taille.
    .mend = Effacez-la : la description suffit.
spec-drop-of-straight = Le déport ne s'applique pas à une extrémité droite.
    .mend = Effacez-le ou choisissez un coude.
spec-clocking-missing = Les deux extrémités sont coudées et l'angle d'orientation manque.
    .mend = Tenez le flexible avec l'extrémité A de votre côté, coude A dirigé vers le bas, et regardez le long du tuyau en direction de l'extrémité B. Saisissez l'angle, dans le sens antihoraire, du coude A au coude B, de 0 à 359°.
spec-clocking-without-elbows = L'angle d'orientation ne s'applique que si les deux extrémités sont coudées.
    .mend = Effacez-le.
spec-flats-incomplete = Un nombre de pans exige un minimum, un maximum et un point de départ.
    .mend = Saisissez les trois.
spec-torque-without-maximum = Un couple minimal est indiqué, mais pas de couple maximal.
    .mend = Saisissez le couple maximal.

## Values with a unit

spec-enter-length = Saisissez une longueur, par exemple 1250, « 1250 mm » ou « 49 1/4 in ».
spec-enter-pressure = Saisissez une pression, par exemple 207, « 207 bar » ou « 3000 psi ».
spec-enter-torque = Saisissez un couple, par exemple 102, « 102 Nm » ou « 75 lbf·ft ».
spec-enter-temperature = Saisissez une température, par exemple 100, « 100 C » ou « 212 F ».
spec-unit-no-number = Ce n'est pas un nombre.
    .mend = { $enter }
spec-unit-not-finite = Ce n'est pas un nombre fini.
    .mend = { $enter }
spec-unit-unreadable = Ce n'est pas un nombre suivi d'une unité.
    .mend = { $enter }
spec-unit-over-zero = Cette valeur contient une division par zéro.
    .mend = { $enter }
spec-unit-bare-fraction = La fraction { $fraction } n'a pas d'unité.
    .mend = Saisissez l'unité, par exemple « 49 1/4 in ».
spec-unit-comma = La virgule est ambiguë (milliers ou décimales).
    .mend = Écrivez 1250 ou 1.25.
spec-unit-unknown = Unité inconnue : { $unit }.
    .mend = { $enter }

## Text from a file

spec-not-utf8 = Ce texte n'est pas en UTF-8. Il a peut-être été enregistré en Latin-1 ou en Windows-1252.
    .mend = Enregistrez le fichier en UTF-8.
spec-encoding-damaged = Ce texte commence en { $encoding } mais il est endommagé.
    .mend = Enregistrez le fichier en UTF-8.
spec-not-json = Le JSON n'est pas valide à la ligne { $line }, colonne { $column }.
    .mend = Vérifiez les guillemets, les virgules et les crochets à cet endroit.
spec-json-unreadable = Le JSON n'est pas valide.
    .mend = Vérifiez les guillemets, les virgules et les crochets.
spec-too-deep = Les données ont trop de niveaux imbriqués.
    .mend = Envoyez uniquement les champs de la spécification.
spec-number-too-long = Un nombre a trop de chiffres.
    .mend = Saisissez une valeur réaliste.
spec-half-character = Le texte contient une moitié de caractère, qui ne peut pas être enregistrée.
    .mend = Saisissez le texte à nouveau.
spec-twice = Cette entrée apparaît deux fois.
    .mend = Supprimez-en une.

## Files

spec-file-missing = Ce fichier n'existe pas.
    .mend = Vérifiez le nom du fichier.
spec-file-folder = C'est un dossier, pas un fichier.
    .mend = Indiquez le nom d'un fichier.
spec-file-denied = L'accès est refusé.
    .mend = Vérifiez les droits d'accès au fichier et à son dossier.
spec-file-disk-full = Le disque est plein.
    .mend = Libérez de l'espace sur le disque.
spec-file-unusable = Le fichier est inutilisable ({ $reason }).
    .mend = Vérifiez le chemin et le disque.

## Settings

spec-setting-address = Ce n'est pas l'adresse d'un hôte.
    .mend = Utilisez une adresse telle que { $example }.
spec-setting-days = Moins de { $least } jours sont refusés : une erreur de saisie effacerait les personnes à appeler.
    .mend = Saisissez { $least } ou plus, ou 0 pour tout conserver.
spec-setting-language = Cette langue n'est pas disponible.
    .mend = Utilisez l'une des suivantes : { LIST($languages, style: "or") }.
