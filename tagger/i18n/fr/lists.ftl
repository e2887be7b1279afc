# What is said of a list of specs, from CSV or a spreadsheet.

lists-not-csv = Ce n'est pas un fichier CSV.
    .mend = Dans le tableur, enregistrez-le en .csv ou .xlsx.
lists-not-a-spreadsheet = Ce n'est pas un classeur.
    .mend = Enregistrez-le en .xlsx ou .csv.
lists-empty = Le fichier est vide.
    .mend = Ajoutez une ligne d'en-tête et une ligne par spécification.
lists-no-rows = Le fichier a une ligne d'en-tête, mais pas de données.
    .mend = Ajoutez une ligne par spécification.
lists-outside-header = Cette cellule est en dehors de la ligne d'en-tête.
    .mend = Ajoutez un en-tête de colonne ou effacez la cellule.
lists-unknown-column = Cette colonne est inconnue.
    .mend = Les colonnes sont : { LIST($columns) }.
lists-cut-length = La colonne « { $heading } » contient la longueur de coupe du tuyau, pas la longueur totale du flexible.
    .mend = Saisissez la longueur totale dans une colonne à part : la longueur de coupe plus la cote de chaque embout.
lists-unit-not-plain = L’en-tête « { $heading } » ne nomme pas une seule unité qui soit lue ici.
    .mend = Écrivez une seule unité dans l’en-tête : mm, cm, m, in ou ft pour une longueur, bar, psi, MPa ou kPa pour une pression, °C ou °F pour une température.
lists-column-twice = Cette colonne apparaît deux fois.
    .mend = Supprimez-en une.
lists-became-a-date = Le tableur a transformé cette valeur en date (une taille telle que 3/4).
    .mend = Mettez la colonne au format texte et saisissez à nouveau la valeur.
lists-quantity = Cette quantité n'est pas valable.
    .mend = Saisissez un nombre de 1 à { $maximum }.
lists-formula = Cette cellule contient une formule sans valeur enregistrée.
    .mend = Ouvrez le fichier dans un tableur, enregistrez-le et réessayez.
lists-too-large = Cette liste est trop grande : plus de { $cells } cellules, ou plus de { $megabytes } Mo une fois décompressée.
    .mend = Supprimez les lignes et colonnes vides, ou divisez la liste.
