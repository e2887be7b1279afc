# What is said of tag numbers, links, tag codes, photos and symbols that cannot be read or made.

## Tag numbers

code-character-at = « { $character } » en position { $place }
code-number-characters = Ce numéro contient des caractères qui n'existent pas dans les numéros d'étiquette : { LIST($characters) }.
    .mend = Comparez ces positions avec l'étiquette.
code-number-length = Ce numéro a { $count } des { $right } caractères d'un numéro d'étiquette.
    .mend = Comparez-le avec l'étiquette : XXXXX-XXXXXX.
code-number-check = Le caractère de contrôle ne correspond pas : au moins un caractère est faux.
    .mend = Comparez le numéro avec l'étiquette, caractère par caractère.
code-number-check-near = Le caractère de contrôle ne correspond pas : au moins un caractère est faux.
    .mend = Comparez le numéro avec l'étiquette, caractère par caractère. C'est peut-être { LIST($numbers, style: "or") }.

## Links

code-link-address = Ce n'est pas une adresse web.
    .mend = Utilisez une adresse telle que { $example }.
code-link-host = L'adresse doit être un hôte seul : lettres, chiffres, points et tirets.
    .mend = Utilisez une adresse telle que { $example }.
code-link-unknown = Ce n'est pas le lien d'une étiquette.
    .mend = Scannez le code QR de l'étiquette ou saisissez le numéro d'étiquette.
code-number-alone = C'est un numéro d'étiquette seul, sans la spécification.
    .mend = Pour voir la spécification, scannez le code QR ou ouvrez le dossier de l'étiquette (tagger show NUMBER).

## Tag codes: the digits in the link

code-version = Le code de l'étiquette utilise la version de format { $version }, que ce programme ne connaît pas.
    .mend = Mettez le programme à jour.
code-hose-tail = Le module de la tétine n'est pas celui du tuyau.
    .mend = Utilisez { $dash }.
code-too-large = Cette valeur est trop grande pour le code de l'étiquette.
    .mend = Vérifiez la valeur.
code-not-a-size = Ce n'est pas une taille.
    .mend = Vérifiez la taille.
code-not-stored = Ce nom ne peut pas être enregistré sur une étiquette.
    .mend = Choisissez un nom dans la liste.
code-text = Ce texte ne peut pas être enregistré sur une étiquette : { $maximum } caractères au plus, lettres sans accent, chiffres et signes simples.
    .mend = Utilisez un nom plus court ou plus simple.
code-incomplete = Le code de l'étiquette est incomplet.
    .mend = Scannez à nouveau l'étiquette. Si cela ne suffit pas, saisissez le numéro d'étiquette.
code-not-digits = Ces chiffres ne sont pas un code d'étiquette.
    .mend = Scannez à nouveau l'étiquette. Si cela ne suffit pas, saisissez le numéro d'étiquette.
code-damaged = Le code de l'étiquette est endommagé (erreur de contrôle).
    .mend = Scannez à nouveau l'étiquette. Si cela ne suffit pas, saisissez le numéro d'étiquette.
code-surplus = Le code de l'étiquette est trop long de { $bits ->
    [one] { $bits } bit
   *[other] { $bits } bits
 }.
    .mend = Scannez à nouveau l'étiquette. Si cela ne suffit pas, saisissez le numéro d'étiquette.
code-unknown-point = Le code de l'étiquette contient un numéro que ce programme ne connaît pas.
    .mend = Mettez le programme à jour.

## Photos

code-photo-too-large = L'image est trop grande.
    .mend = Utilisez une photo de { $megapixels } mégapixels au plus.
code-photo-unreadable = Cette image est illisible.
    .mend = Utilisez un fichier PNG, JPEG, GIF ou WebP.
code-photo-several = La photo montre plusieurs étiquettes : { LIST($numbers) }.
    .mend = Photographiez une étiquette à la fois ; couvrez les autres.
code-photo-other = La photo montre un code qui n'est pas celui d'une étiquette.
    .mend = Photographiez l'étiquette elle-même.
code-photo-none = La photo ne montre aucun code lisible.
    .mend = Approchez-vous, ne bougez pas, évitez les reflets, ou saisissez le numéro d'étiquette.

## QR code and bar code

code-symbol-version = Cette version de code QR est trop petite pour le texte au niveau { $level }.
    .mend = Utilisez la version { $version }.
code-symbol-letters = Ce texte ne peut pas être mis en code à barres (Code 128).
    .mend = Utilisez des lettres sans accent, des chiffres et des signes simples (ASCII imprimable).
code-symbol-level = Ce n'est pas un niveau de correction d'erreurs des codes QR.
    .mend = Utilisez L, M, Q ou H.
code-symbol-too-long = Le texte est trop long pour un code QR.
    .mend = Raccourcissez le lien.
