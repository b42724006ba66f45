# Titres et mots isolés des pages.

finds = Ce qui est trouvé
why = Pourquoi cela compte
example = Exemple
proposes = Ce qu'elle propose
limits = Ce qu'elle ne peut pas savoir
english-only = Les sources sont sur la page en anglais de chaque règle.

severity-a = injouable, ou non défini
severity-b = coûte du temps de répétition
severity-c = sans doute pas voulu
severity-d = superflu

family-length = Longueur de l'archet
family-slurs = Les liaisons telles qu'écrites
family-beat = Le temps fort
family-direction = Sens de l'archet et nuances
family-kinds = Coups d'archet
family-states = Modes de jeu et temps pour en changer
family-hand = La main gauche, là où l'archet en dépend
family-between = Entre les parties
family-marks = Signes d'archet
family-parts = Parties séparées
