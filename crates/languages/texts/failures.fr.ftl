# Pourquoi une commande n'a pas pu faire ce qu'on lui demandait, et ce qu'elle dit à côté du résultat.

# Ce qu'on a demandé à une commande

failure-no-scores = Aucune partition trouvée dans { $where }. Nommer un fichier .musicxml, .xml ou .mxl, ou un dossier qui en contient.
failure-of = { $of } : { $why }
failure-of-ended = { $of } : { $why }.
failure-in = { $of }, { $why }
failure-standard-input = l'entrée standard
failure-profile = Profil { $name } : { $why }
failure-profiles = Profils fournis : professional, amateur, student ; ou nommer un fichier de profil.
failure-bars = --bars { $text } : { $why }. Écrire un numéro de mesure imprimé, ou deux avec un trait d'union, comme 12 ou 5-8.
failure-names-part-for-bars = il nomme { $part }, et il ne faut ici que des mesures ; le dire par --part
failure-bars-of-other-movement = il est d'un autre mouvement que --movement { $asked }
failure-typed = { $option } "{ $text }" : { $why }
failure-movement = --movement { $asked } : ce mouvement n'existe pas. Le fichier a : { $there }.
failure-part = Aucune partie ne s'appelle « { $asked } ». Les parties à archet de la partition : { $known }.
failure-rule = Aucune règle ne s'appelle « { $asked } ». Les règles : { $known }.
failure-one-score = Une seule partition peut être écrite, mais { $count } sont nommées. En nommer une à la fois.
failure-same-file = { $path } est lu par cette commande. Nommer un autre fichier : celui-ci n'est pas écrasé.
failure-score-name = { $path } : le nom ne dit pas quel genre de fichier de partition ce doit être. Le finir en .musicxml ou .xml pour une partition simple, en .mxl pour un paquet. Rien n'a été écrit.
failure-two-in-one = Le rapport et la partition iraient tous deux dans { $path }. Nommer deux fichiers par --out et --write.
failure-exists = { $path } existe déjà. Rien n'a été écrit ; nommer un autre dossier par --out, ou écrire --replace.
failure-exist = { $path } et { $more } autres existent déjà. Rien n'a été écrit ; nommer un autre dossier par --out, ou écrire --replace.
failure-house = Profil de maison { $name } : { $why }
failure-part-not-made = La partie { $part } n'a pas pu être faite : { $why }.
failure-marks = Les signes n'ont pas pu être changés : { $why }
failure-not-a-review = il y a un fichier de ce nom qui n'est pas un examen de partition ; en nommer un autre par --out
failure-workbench = L'atelier ne s'ouvre pas : { $why }.
failure-go-through = La page ne s'ouvre pas : { $why }
failure-no-browser = aucun navigateur n'a pu être ouvert ; ouvrir l'adresse ci-dessus dans un navigateur de cette machine
open-by-another = Cette partition est déjà ouverte dans un atelier ; sa page s'affiche.
open-is-kept = Ce que l'on fait est gardé au fur et à mesure à côté de la partition. Ctrl+C pour finir.
open-is-kept-in = Ce que l'on fait est gardé au fur et à mesure dans { $path }. Ctrl+C pour finir.
class-hand-set-beside = { $journal } n'est pas compris à partir de la ligne { $line } : ce qui précède compte, et tout est gardé dans { $kept }.

# Images

failure-picture = Pas d'image : { $why }.
failure-picture-no-file = dire par --out FILE où elle va
failure-picture-nothing = il n'y a rien à dessiner
failure-picture-no-bow = aucun archet ne bouge dans ces mesures de ces parties

# Partitions écrites

score-alone = { $path } est la partition seule, comme le dit son nom ; le paquet d'où elle vient reste tel quel.{ $also ->
    [yes] { " " }Le reste du paquet n'est pas copié ({ $left }) ; un nom en .mxl le garde.
   *[no] { "" }
}
score-package = { $path } est un nouveau paquet, comme le dit son nom, qui contient { $member }.
names-and-more = { $names } et { $more } autres
marks-taken-out = { $count ->
    [one] { $count } signe enlevé
   *[other] { $count } signes enlevés
}, le reste écrit dans { $path }
marks-written = { $count ->
    [one] { $count } signe écrit
   *[other] { $count } signes écrits
} dans { $path }

# Points fixes et fins

failure-anchor = --anchor "{ $text }" : { $why } Écrire la partie s'il y en a plusieurs, mesure/temps, et down, up, hook ou retake, comme "60/1 down" ou "Viola 12/2½ up".
failure-ending = --end "{ $text }" : { $why } Écrire un numéro de mesure imprimé et down ou up, comme "8 down".
wish-of-several-movements = la { $bar } se trouve dans les mouvements { $movements } : en écrire un devant, comme "{ $such }"
wish-stretch = il nomme un passage, et on fixe ici un seul coup d'archet
wish-no-beat = aucun temps n'est nommé
wish-by-note = les coups d'archet se nomment par leurs temps, pas par les notes
wish-none-of = "{ $word }" n'est ni down, ni up, ni hook, ni retake
wish-says-nothing = il ne dit pas ce que doit faire le coup d'archet
wish-no-line = il n'y a pas de ligne à archet
wish-several-parts = plusieurs parties sont montrées ; en nommer une avant la mesure : { $names }
wish-no-such-line = aucune ligne ne s'appelle « { $part } » : { $names }
wish-no-stroke-in-bar = aucun coup d'archet ne commence dans la { $bar }
wish-no-stroke-at = aucun coup d'archet ne commence à cet endroit ({ $place }) ; il en commence aux temps { $beats }
wish-bar-after = { $bar } après { $length }
ending-names-part = il nomme { $part }, et il ne faut ici qu'une mesure ; le dire par --part
ending-stretch = il nomme un passage, et il s'agit de la fin d'une mesure
ending-expects = il faut une mesure et un coup d'archet
ending-neither = "{ $word }" n'est ni down ni up

# Mettre de côté

failure-aside-file = { $of }, { $why } Le corriger, ou examiner avec --tell-all.
failure-aside = Rien n'a été mis de côté : { $text } : { $why }
failure-aside-bars-of-several = Rien n'a été mis de côté : { $movements } ont { $many ->
    [yes] les mesures
   *[no] la mesure
} { $bars }. Dire lequel, par exemple --movement { $such }.
failure-nothing-aside = Rien n'a été noté : { $what ->
    [slur] aucune liaison ne commence
   *[finding] aucune remarque n'est faite
} là dans { $score }.
aside-needs-reason = il faut une raison en quelques mots, gardée avec l'entrée
aside-other-beat = --bars nomme un autre temps
aside-whole-review = ce serait tout l'examen
aside-name-something = nommer une règle, une partie, des mesures ou un mouvement
aside-no-movement = il n'y a pas de mouvement « { $asked } »
aside-other-movement = --movement nomme un autre mouvement
aside-stretch = un passage est mis de côté par mesures entières
aside-by-note = les remarques se nomment par leurs temps, pas par les notes

# Habitudes

failure-no-habits = Rien n'a été appris, et rien n'a été écrit : { $why }.
habits-no-marks = il n'y a aucun signe d'archet dont apprendre
habits-too-few = { $strokes ->
    [one] { $strokes } coup d'archet marqué, c'est trop peu
   *[other] { $strokes } coups d'archet marqués, c'est trop peu
} ; { $more } de plus suffiraient. Quelques lignes où chaque coup d'archet est marqué aident le plus
habits-sparse = les signes ({ $strokes }) sont éloignés les uns des autres, chacun là où le premier violon s'écarte de ce qui vient de soi ; il en faut { $wanted }, soit { $more } de plus. Ou marquer chaque coup d'archet de quelques lignes : { $least } suffisent
habits-foreseen = sur { $strokes } coups d'archet de mesures laissées de côté, les pénalités apprises des autres mesures en prévoient { $after }, le style seul { $before }
habits-no-gain = ce qui est marqué ici se prévoit aussi bien sans : { $foreseen }
habits-unsure = ce peut être un hasard : { $foreseen } ; { $more } coups d'archet de plus le diraient

# Feuilles de changements

failure-sheet = Aucune feuille de changements n'a été écrite : { $why }
failure-stands = --stands { $text } : { $why }. Écrire les pupitres avec leurs nombres, comme "Vn1=7, Vn2=6, Va=5".
sheet-of-other-music = le calque « { $title } » a été fait pour une autre musique que celle de cette partition ; ce qui ne trouve pas de note est listé sur la page du bibliothécaire. Reporter d'abord le calque sur cette partition.
sheet-pdf-on-terminal = un PDF n'est pas du texte pour un terminal ; nommer un fichier par --out
stands-no-equals = il manque = entre le pupitre et le nombre
stands-number = le nombre de lutrins doit être un nombre entier jusqu'à { $limit }

# Classes

failure-key = La clé { $of }, { $why }
failure-no-hand-ins = Rien n'a été rendu : { $path } ne contient aucun fichier. Nommer le dossier ou l'archive .zip avec les partitions.
class-done = { $read } copies sur { $all } ont une feuille{ $kept ->
    [0] .
   *[other] { " " }; { $kept } étaient inchangées.
}
class-not-read = Non lu : { $file } ({ $pseudonym }) : { $why }
class-new-file = Nouveau fichier : { $file } ({ $pseudonym }) ; sa feuille a remplacé la précédente.
class-alike-told = { $pairs ->
    [one] { $pairs } paire de copies se ressemble
   *[other] { $pairs } paires de copies se ressemblent
} au-delà du devoir ; c'est une question, pas une preuve : { $path }
class-for-you = Pour l'enseignant : { $path }
class-shown = À montrer : { $path }{ $small ->
    [yes] { " " }(moins de dix : rien n'est détaillé)
   *[no] { "" }
}
