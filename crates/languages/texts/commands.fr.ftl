# Ce que les commandes disent quand elles ont fini : arcata aside, habits, layer.

# Mettre de côté

aside-done = { $count ->
    [one] { $count } endroit est mis
   *[other] { $count } endroits sont mis
} de côté désormais, dans { $file }
aside-slurs-done = { $told ->
    [phrase] { $count ->
        [one] { $count } liaison est prise pour une liaison de phrase
       *[other] { $count } liaisons sont prises pour des liaisons de phrase
    }
   *[bow] { $count ->
        [one] { $count } liaison est prise pour un coup d'archet
       *[other] { $count } liaisons sont prises pour des coups d'archet
    }
} désormais, selon { $file }

# Les habitudes d'un premier violon

habits-account = Apprises de { $strokes } coups d'archet marqués, dans le style { $style }. Sur { $tested } coups d'archet de mesures laissées de côté, ces pénalités en prévoient { $after }, le style seul { $before } : { $gain } points de plus, erreur type { $error }, { $sure ->
    [sure] ce n'est guère un hasard
    [likely] plus que l'erreur, mais ce n'est pas sûr
   *[chance] ce peut bien être un hasard
}.
habits-no-price-moved = Aucune pénalité n'a bougé d'un dixième.
habits-more-moved = { $count ->
    [one] Une autre pénalité a moins bougé.
   *[other] { $count } autres pénalités ont moins bougé.
}
habits-written = Écrites dans { $file }. Pour s'en servir : --habits.
habits-not-learned-from = Rien n'en a été appris :
habits-price = { $what } compte { $price } au lieu de { $before } : { $way ->
    [avoided] on l'évite davantage
   *[minded] on s'en soucie moins
}.
price-downbeat = Un poussé sur le premier temps, une seule note,
price-downbeat-slurred = Un poussé sur le premier temps, des notes liées,
price-downbeat-bar = Un poussé sur le premier temps, long d'environ une mesure,
price-downbeat-bars = Un poussé sur le premier temps, long de plusieurs mesures,
price-downbeat-even = Un poussé sur le premier temps là où les mesures vont par deux, en plus,
price-mid-bar = Un poussé au milieu d'une mesure à deux ou quatre temps, une seule note,
price-mid-bar-slurred = Un poussé au milieu d'une mesure à deux ou quatre temps, des notes liées,
price-half-bar = Une liaison commencée en tirant au milieu d'une mesure à deux ou quatre temps
price-beat = Un tiré sur un temps faible
price-offbeat = Un tiré entre deux temps
price-upbeat = Un tiré sur la dernière note brève avant le premier temps
price-upbeat-slurred = Un tiré sur la dernière liaison brève avant le premier temps
price-upbeat-long = Un tiré sur le dernier long coup d'archet avant le premier temps
price-flow-slurred = Un poussé sur une liaison brève qui mène au premier temps
price-flow-long = Un poussé sur un long coup d'archet qui mène au premier temps
price-upbeat-mid-bar = Un tiré juste avant le milieu de la mesure
price-entry = Une entrée dans le sens contraire au premier temps
price-entry-elsewhere = Une entrée en poussant hors du premier temps
price-before-rest = Un tiré sur le dernier coup d'archet avant un silence bref
price-ending = Un poussé sur la dernière note d'une phrase
price-hook = Une note accrochée
price-hook-last-two = Accrocher les deux dernières de plusieurs notes égales de la mesure
price-hook-by-slur = Une note accrochée à côté d'une liaison, en plus,
price-hook-slurs = Un accrochage entre deux liaisons, en plus,
price-retake = Une reprise d'archet dans une ligne qui continue de sonner
price-retake-apart = Une reprise d'archet là où les coups d'archet sont séparés
price-retake-up = Une reprise d'archet en poussant, en plus,
price-reset = Continuer dans le même sens par-dessus un silence
price-swell = Un soufflet contraire à l'archet

# Calques de coups d'archet

bowings-counted = { $count ->
    [one] { $count } coup d'archet
   *[other] { $count } coups d'archet
}
layer-lifted = { $count ->
    [one] { $count } signe relevé
   *[other] { $count } signes relevés
} dans { $layer } ; la partition sans signes est { $score }
layer-staying = Signes qui restent dans la partition :
layer-applied = { $layer } : { $written } écrits, { $standing } déjà là
layer-overruled = Cèdent à un calque posé au-dessus :
layer-not-applied = Non écrits :
layer-wiped = { $count ->
    [one] { $count } coup d'archet enlevé
   *[other] { $count } coups d'archet enlevés
} ; la partition est { $score }
layer-not-found = Introuvables dans la partition :
layer-nothing = rien
layer-differences = { $count ->
    [one] { $count } différence
   *[other] { $count } différences
}
layer-merged = { bowings-counted }, { $conflicts ->
    [one] { $conflicts } désaccord
   *[other] { $conflicts } désaccords
}, { $settled } réglés d'office
layer-settled = Réglés d'office :
layer-to-settle = À régler, les deux sont gardés :
layer-conflict = { $first } veut { $one }, { $second } veut { $other }
layer-checked = { bowings-counted }, { $remarks ->
    [one] { $remarks } remarque
   *[other] { $remarks } remarques
}
layer-proposed = Proposés :
layer-as = comme { $from }, { $by ->
    [unison] à l'unisson
    [octave] à l'octave
    [parallel] mêmes intervalles
    [rhythm] même rythme et mêmes liaisons
   *[mostly] même rythme et mêmes liaisons à quelques notes près
}
layer-not-spread = Non étendus :
layer-added = { $count ->
    [one] { $count } coup d'archet ajouté
   *[other] { $count } coups d'archet ajoutés
} ; le calque est { $layer }
layer-carried = { $count ->
    [one] { $count } coup d'archet reporté
   *[other] { $count } coups d'archet reportés
} avec certitude, { $doubtful } avec un doute, { $orphaned } sans leur note
layer-look-at = À regarder :
layer-without-note = Gardés dans le calque sans note :
layer-entered = { $count ->
    [one] { $count } coup d'archet saisi
   *[other] { $count } coups d'archet saisis
} ; { $all } dans { $layer }
layer-nothing-wrong = { bowings-counted } ; aucune erreur.
layer-troubles = { $count ->
    [one] { $count } erreur
   *[other] { $count } erreurs
} dans le texte ; rien n'a été écrit.
layer-more-troubles = et { $count } autres ; corriger d'abord celles-ci.

# Un dossier de calques

library-work = œuvre
library-layer = calque
library-owner = de qui
library-ensemble = formation
library-date = date
library-entries = coups
library-file = fichier
library-to-settle = { $count } à régler
library-scores = partitions
library-untitled = sans titre
library-not-listed = non listés
library-nothing = Il n'y a ici ni partition ni calque de coups d'archet.
