# Pages et comptes rendus : titres, étiquettes, façons de mener l'archet, ce qui est gagné et perdu.

# Étiquettes

label = { $label } :
assumed = supposé
not-read = non lu
also = aussi
set-aside = mises de côté
better = Mieux
worse = Moins bien
weighed = { $what } : { $list }.
in-the-file = dans le fichier
in-the-file-more = dans le fichier : { $count } de plus (toutes avec --format json)
nothing-found = Rien n'a été trouvé.
bars-and-strokes = { $bars ->
    [one] { $bars } mesure
   *[other] { $bars } mesures
}, { $strokes ->
    [one] { $strokes } coup d'archet
   *[other] { $strokes } coups d'archet
} ; { $count ->
    [0] aucune partie d'archets
   *[other] { $names }
}
times-in-all = { $count } fois en tout ; aussi : { $places }
beats-of-a-bar = temps{ $kept }{ $beats }
bars-named = { $count ->
    [one] mesure
   *[other] mesures
} { $bars }{ $left ->
    [0] { "" }
   *[other] { " " }et { $left } autres
}
places-in-file = { $count ->
    [one] { $count } endroit
   *[other] { $count } endroits
} dans { $file }
aside-nothing-found = mis de côté, mais rien n'est trouvé
aside-entry = entrée { $number } de { $file } ({ $asks }) : { $reason }
movement-numbered = mouvement { $number }
place-of-bar = { $bar }, { place-beat } { $beat }
file = fichier
bars-column = mesures
strokes-column = coups
in-all = en tout

# Tableaux des coups d'archet

column-bar = mes.
column-beat = temps
column-bow = sens
column-how = comment
column-frog-tip = talon … pointe
column-penalty = pénalité
column-sure = sûr
row-bow = { $bow ->
    [down] tiré
   *[up] pous.
}
row-link = { $link ->
    [hooked] accroc.
    [retake] reprise
    [reset] posé
   *[change] { "" }
}
row-penalty = { $points } { $term }
term = { $term ->
    [beat] temps
    [upbeat] levée
    [entry] entrée
    [swell] soufflet
    [accent] accent
    [ending] fin
    [hook] accroché
    [retake] reprise
    [reset] lever
    [retake-time] temps repr.
    [speed] vitesse
    [speed-limit] lim. vitesse
    [place] endroit
    [mark] signe
    [repeat] répétition
    [unity] ensemble
    [likeness] ressemblance
   *[notation] écriture
}
printed-in-the-score = imprimé dans la partition
sure-means = sûr : combien de musiciens sur cent prendraient ce coup d'archet
sure-and-open = sûr : combien de musiciens sur cent prendraient ce coup d'archet ; ? deux façons se valent presque, --alternatives 3 avec ces --bars les montre
turn-link = { $link ->
    [hooked] en accrochant
    [retake] en reprenant
    [reset] en posant
   *[change] en changeant
}
turn = { $road ->
    [repeat] reprise de la mesure { $bar } à la mesure { $from }
    [da-capo] da capo de la mesure { $from } à la mesure { $bar }
    [dal-segno] dal segno de la mesure { $from } à la mesure { $bar }
   *[onward] suite de la mesure { $from } à la mesure { $bar }
} : { $comes ->
    [unknown] { turn-link }, en { bow-name }
    [by-itself] second passage de nouveau en { bow-name }, de lui-même
    [free] second passage de nouveau en { bow-name }: l'archet est libre
    [lifted] on lève dans le silence pour revenir en { bow-name } ({ $there } s disponibles, { $needed } s nécessaires)
    [retaken] on reprend pour revenir en { bow-name } ({ $there } s disponibles, { $needed } s nécessaires)
   *[reversed] pas le temps de lever ({ $there } s disponibles, { $needed } s nécessaires): comme ça vient, le second passage commence dans l'autre sens
}{ $weighed ->
    [afterwards] { " " }; traverse une autre reprise: non pesé
   *[search] { "" }
}

# Pénalités

yardstick = Pénalité : un poussé sur un premier temps compte { $points }.
share = { $what } ({ $points })
better-beat = coups d'archet avec le temps
better-upbeat = poussé juste avant le premier temps
better-entry = entrée dans le sens du temps
better-swell = crescendo ou diminuendo avec l'archet
better-accent = accents ou accords dans le sens qui leur va
better-ending = la phrase finit en tiré
better-hook = moins d'accrochés
better-retake = moins de reprises d'archet
better-reset = moins de levées dans les silences
better-retake-time = assez de temps pour lever l'archet
better-speed = vitesse d'archet plus près de ce que veut la nuance
better-speed-limit = vitesse d'archet dans ce que la nuance permet
better-place = coups d'archet plus près de leur endroit
better-mark = signes imprimés respectés
better-repeat = la seconde fois commence dans le même sens
better-unity = comme ceux qui ont le même rythme
better-likeness = comme le même motif ailleurs
better-notation = moins de changements dans l'écriture
worse-beat = coups d'archet contre le temps
worse-upbeat = tiré juste avant le premier temps
worse-entry = entrée contre le sens du temps
worse-swell = crescendo ou diminuendo contre l'archet
worse-accent = accents ou accords dans le sens contraire
worse-ending = la phrase finit en poussé
worse-hook = plus d'accrochés
worse-retake = plus de reprises d'archet
worse-reset = plus de levées dans les silences
worse-retake-time = pas assez de temps pour lever l'archet
worse-speed = vitesse d'archet plus loin de ce que veut la nuance
worse-speed-limit = vitesse d'archet au-delà de ce que la nuance permet
worse-place = coups d'archet plus loin de leur endroit
worse-mark = signes imprimés non respectés
worse-repeat = la seconde fois commence dans l'autre sens
worse-unity = autrement que ceux qui ont le même rythme
worse-likeness = autrement que le même motif ailleurs
worse-notation = plus de changements dans l'écriture

# Façons de mener l'archet

way-best = la meilleure façon
way-best-standing = la meilleure façon ({ $standing })
way-best-does = { $best } : { $does }
way-does = { $does }
way-standing = { $standing } : { $name }
way-begins = en { bow-name }
way-hook-at = accrocher { $at-in }
way-retake-at = reprendre l'archet { $at-in }
way-start = commencer en { bow-name } { $at-in }
way-hook = accrocher le { bow-name } { $at-in }
way-retake = reprendre pour { a-bow } { $at-in }
way-as-it-comes = { bow-name } { $at-in } sans accrocher ni reprendre
way-as-it-is = tel quel : la meilleure façon finit ainsi
standing-plain-alternation = simple alternance
standing-other-bow-first = l'autre sens d'abord
standing-last-two-hooked = les deux derniers accrochés là où une mesure tombe à l'envers
ways-to-bow = façons de mener l'archet dans ces mesures
lane-letters = D tiré, U poussé ; h accroché au précédent, r repris
way-penalty = (pénalité +{ $points })
way-penalty-and-changes = (pénalité { $points }{ $changes ->
    [0] { "" }
    [1] , un changement dans l'écriture
   *[other] , { $changes } changements dans l'écriture
})
no-other-way = Les signes imprimés et les points fixes ne laissent pas d'autre façon.
ways-to = façons de { $asked }
asked-ending = finir { $at-the } en { bow-name }
no-way = Il n'y en a aucune.
assume-played-once = les passages répétés sont pesés comme joués une fois
demand-printed = le { bow-name } imprimé { $at-in }
demand-anchor = { $at }{ $bow ->
    [down] { " " }tiré
    [up] { " " }poussé
   *[any] { "" }
}{ $link ->
    [change] { " " }en changeant
    [hooked] { " " }accroché
    [retake] { " " }repris
    [reset] { " " }posé
   *[any] { "" }
}
conflict-same-stroke = { $one } et { $other } demandent à un coup d'archet d'aller dans les deux sens ; le second est gardé.
conflict-pays = { $one } et { $other } ne vont pas ensemble comme ça vient ; garder les deux augmente la pénalité de { $points }{ $how-known ->
    [yes] { " " }: { $how }
   *[no] { "" }
}.
anchors = points fixes : { $anchors }
anchors-cost-nothing = Aucune pénalité : le meilleur plan le fait de toute façon.
anchors-cost = Pénalité : { $points } de plus que le meilleur plan sans eux.
otherwise = autrement : { $what }
repairs = réparations : la ligne entière telle qu'imprimée a une pénalité de { $points }
no-repair = Aucun changement de liaison ne vaut son prix.
repair-step = avec { $count ->
    [one] un changement
   *[other] { $count } changements
} : pénalité { $points } de moins{ $step ->
    [further] , dont { $more } par ce pas
   *[first] { "" }
}
before = avant
after = après
lane-frog = talon
lane-tip = pointe

# Ensemble

no-bow-begins = aucun archet ne commence
who-does = { $does } : { $names }
does-down = tiré
does-up = poussé
does-go-on = continue
does-rest = silence
all-of-them = tous
bowed-alike = mêmes coups d'archet
bowed-differently = coups d'archet différents, et pourquoi
groups-more = et { $count } groupes de plus (tous avec --format json)
places-more = et { $count } endroits de plus (tous avec --format json)
group = { $bars } : { $lines } { $relation ->
    [unison] à l'unisson
    [octaves] à l'octave
    [parallel] en parallèle
   *[rhythm] au même rythme
}, { $strokes ->
    [one] { $strokes } coup d'archet
   *[other] { $strokes } coups d'archet
}
departure = { $at }, { $line } : { $strokes ->
    [one] { $strokes } coup d'archet
   *[other] { $strokes } coups d'archet
} { $from ->
    [section] autrement que ceux qui jouent le même rythme
   *[figure] autrement que le même motif ailleurs
} ; { $why }
departs-by-mark = le signe imprimé le dit
departs-by-anchor = un point fixe le dit
departs-evenly = suivre coûterait autant
departs-for = suivre augmenterait la pénalité de { $points }, surtout : { $reason }

# Signes d'archet imprimés

part = partie
marks-column = signes
least-column = moins
in-total = total
class-needed = utile
class-effect = effet
class-obvious = évident
class-contradictory = contradictoire
bar-of-marks = mesure { $bars }{ $left ->
    [0] { "" }
   *[other] { " " }et { $left } autres
}
mark-reason = { $reason ->
    [alternation] l'alternance donne l'autre sens
    [later-instance] l'alternance donne l'autre sens ; le motif a déjà été marqué
    [free-bow] l'archet est libre ici
    [after-rest] après un silence, chacun fait à sa façon
    [beside-row] une rangée dans un même sens commence ou finit ici
    [unusual] il dit qu'un sens inhabituel est voulu
    [holds-plan] sans lui, d'autres coups d'archet iraient mieux
    [row-of-downs] rangée de tirés forts
    [ups-into-down] poussés vers un fort tiré
    [first-instances] premières fois d'un motif répété
    [spelt-out] détaille une liaison avec points ou tirets
    [comes-anyway] il vient de toute façon
    [both-bows] tiré et poussé sur un même coup d'archet
    [on-rest] sur un silence
    [plucked] dans un pizzicato
    [not-bowed] sur une note qui ne se joue pas à l'archet
    [inside-slur] dans une liaison
   *[tied-from-before] sur une note tenue d'avant
}

# La page d'une revue

page-title = ce que font les archets
page-skip = Aller aux remarques
page-glance = En un coup d'œil
page-findings = Remarques
page-brackets = Un nombre entre parenthèses est une part d'une pénalité.
page-rules = Les règles, et pourquoi elles comptent
page-advice = Arcata calcule et conseille ; les musiciens décident. Une fatigue de la main, du bras ou du dos est une raison de se reposer et de demander à un professeur ou à un médecin.
page-bars = Mesures
page-bowed-parts = Parties d'archets
strokes-counted = { $count ->
    [one] { $count } coup d'archet
   *[other] { $count } coups d'archet
}
page-calculated-for = Calculé pour
page-contradicts = Le fichier se contredit à { $count ->
    [one] { $count } endroit
   *[other] { $count } endroits
}
page-set-aside = { $count ->
    [one] { $count } endroit est mis
   *[other] { $count } endroits sont mis
} de côté
page-reasons-in = Dans { $file }, avec les raisons qui y sont données.
page-held-for = Mis de côté : { $reason }
page-entry-unused = L'entrée { $number } de { $file } ({ $asks }) met de côté ce qui n'est plus trouvé : { $reason }
page-which = Quelles remarques montrer
page-shown = # sur # montrées.
page-severity = Gravité
page-section = Pupitre
page-rule = Règle
page-show-all = Tout montrer
page-strip-key = Une colonne par mesure. Bloc haut : le pupitre commence un tiré sur le premier temps ; bloc bas : un poussé ; trait : un coup d'archet passe par-dessus ; rien : silence ou pizzicato. Bloc dans la rangée « Tous » : sur ce premier temps les archets continuent et aucun ne commence. Disques : remarques,
picture-frog = talon
picture-tip = pointe
picture-key = Le temps court avec les notes ; la hauteur est l'endroit de l'archet, épais au talon et mince à la pointe. Anneau : posé après un silence. Arc en pointillé : archet levé. Petite barre : arrêt, même sens. Perles : pulsations. Zigzag : trémolo. Pointes de flèche : plus d'archet que la nuance ne veut. Ligne en pointillé : moins d'archet que le son n'en demande ; les points montrent où mènerait la vitesse usuelle, une barre au bord où l'archet serait épuisé. Les signes évidés sont calculés, les pleins sont imprimés.
picture-key-open = Évidé : l'autre sens est presque aussi bon.
page-lane-key = Sous la musique, le temps court avec les notes et la hauteur est l'endroit de l'archet, le talon en haut : épais au talon, mince à la pointe. Anneau : posé après un silence. Arc en pointillé : archet levé. Petite barre : arrêt, même sens. Perles : pulsations. Zigzag : trémolo. Pointes de flèche : plus d'archet que la nuance ne veut. Ligne en pointillé : moins d'archet que le son n'en demande ; les points montrent où mènerait la vitesse usuelle. Les signes évidés sont calculés, les pleins sont imprimés.
as-it-stands = Tel quel
no-picture = Pas d'image : ces mesures ne peuvent être gravées.
also-at = Aussi : { $places }{ $rest ->
    [0] { "" }
   *[other] { " " }et { $rest } autres endroits
}.
proposal-numbered = Proposition { $number }
strip-bars = Mesures { $first } à { $last }
strip-downbeats = Premiers temps des mesures { $first } à { $last } : { $told }
strip-row = { $name } en commence { $down } en tiré et { $up } en poussé, passe par-dessus { $on }
strip-nobody = sur { $count }, personne ne commence.
strip-all = Tous
folder-title = Partitions revues
folder-scores = { $count ->
    [one] { $count } partition
   *[other] { $count } partitions
}
folder-region = Partitions
folder-score = Partition
folder-title-of-work = Titre
folder-strokes = Coups d'archet
folder-contradictions = Contradictions dans le fichier
calculated-professional = professionnels
calculated-amateur = amateurs
calculated-student = étudiants
calculated-file = des musiciens comme dans { $file }
calculated-style = style { $style }
calculated-apart = chaque partie pour elle-même
with-engraved-music = Avec la musique gravée : { $file }
told-bars = Mesures { $first } à { $last }
told-stroke = { $at } { bow-way }{ $link ->
    [hooked] , accroché
    [retake] , repris
    [reset] , posé
   *[change] { "" }
}
told-line = { $name } : { $strokes }
told-none = Aucun coup d'archet n'y commence

# Ce que le plan tient pour donné

assume-opening-tempo = { $quarters } noires à la minute au début, comme demandé
assume-quarters = { $quarters } noires à la minute là où la partition ne donne pas de tempo
assume-louder = { $count ->
    [one] { $count } degré
   *[other] { $count } degrés
} plus { $way ->
    [louder] fort
   *[softer] doux
} qu'écrit

# Images d'un plan

picture-the-plan = le plan.
picture-other-way = { $what } (pénalité { $points } de plus)
picture-from-to = de { $from } à { $to }
picture-bars = mesures { $first } à { $last }
assume-habits = les habitudes d'un premier violon, apprises de { $count } coups d'archet marqués
assume-habits-rest = les habitudes du premier violon se taisent : elles ont été apprises dans le style { $style }
picture-bow-plan = Plan d'archet
rules-foot = 
    La page d'une règle : arcata rules RULE. En laisser une : arcata review SCORE --without RULE,
    ou dans une seule partition, avec une raison : arcata aside SCORE --rule RULE --reason TEXT.

# Feuilles de changements

sheet-title = feuille de changements
sheet-untitled = Sans titre
sheet-untitled-layer = calque sans titre
sheet-as-printed = les parties telles qu'imprimées
sheet-label-write = à écrire :
sheet-label-so-far = jusqu'ici :
sheet-head-write = À écrire :
sheet-head-so-far = Jusqu'ici :
sheet-count = { $write } à écrire, { $off } à enlever
sheet-key = Les mesures en gras, puis le temps.
sheet-key-with-music = Les mesures en gras, puis le temps. La musique montre la mesure telle qu'elle doit être, les notes changées sur gris.
sheet-continued = { $name } (suite)
sheet-was = (avant : { $was })
sheet-take-off = enlever : { $mark }
sheet-nothing = rien
sheet-librarian = Pour le bibliothécaire
sheet-section = pupitre
sheet-write = écrire
sheet-off = enlever
sheet-stands = lutrins
sheet-marks = signes
sheet-time = durée
sheet-all = tous
sheet-as-it-shall-look = mesure { $bar } telle qu'elle doit être
sheet-copying = { $marks ->
    [one] { $marks } signe
   *[other] { $marks } signes
} sur tous les lutrins : environ { $time } de copie.
sheet-estimate-reason = trouver la mesure sur la page, écrire un signe au crayon ou le gommer
sheet-estimate-source = de mémoire ; chronométrer sa propre copie et l'indiquer
sheet-estimate-set-by-user = indiqué par l'utilisateur
sheet-estimate = L'estimation compte { $value } { $unit } par signe ({ $reason } ; { $source } ; { $status ->
    [seen] vu
    [counted] compté
    [derived] dérivé
    [yours] le vôtre
   *[default] valeur par défaut
}).
sheet-spared = { $marks ->
    [one] { $marks } signe
   *[other] { $marks } signes
} du calque non écrits : qui joue comme ça vient fait de même sans eux.
sheet-all-found = Chaque coup d'archet du calque a sa note dans cette partition.
sheet-to-settle = À régler : dans aucune partie, ou sans signe à écrire
sheet-doubtful = Reportés avec doute : à regarder
sheet-not-spread-heading = Non étendus aux autres parties
sheet-not-to = { $from } pas à { $part }
sheet-not-spread = { $marks ->
    [one] { $marks } signe
   *[other] { $marks } signes
} { $bars-are ->
    [many] aux mesures
   *[one] à la mesure
} { $bars } ; { $why }
sheet-not-settled = à régler : { $first } veut { $wants }, { $second } veut { $other }
sheet-several = le calque dit ici plusieurs choses : { $marks }
sheet-contradicts = non appliqué avec le calque, parce qu'il contredit la partition ou une autre entrée ; arcata layer check dit laquelle
sheet-found-no-note = il n'a pas trouvé de note quand le calque a été reporté sur cette partition
mark-bow = { bow-name }
mark-both-bows = { $bow ->
    [up] poussé et tiré
   *[down] tiré et poussé
} sur une note
mark-hook = accroché{ $sign ->
    [dots] { " " }par une liaison avec points
    [dashes] { " " }par une liaison avec tirets
   *[marks] { "" }
}{ $bow ->
    [down] { " " }(tiré)
    [up] { " " }(poussé)
   *[any] { "" }
}
mark-retake = reprise d'archet{ $bow ->
    [down] { " " }(tiré)
    [up] { " " }(poussé)
   *[any] { "" }
}
mark-as-it-comes = comme ça vient
mark-lift = lever l'archet
mark-in-bow = { $place ->
    [frog] au talon
    [lower-half] moitié inférieure
    [middle] milieu de l'archet
    [upper-half] moitié supérieure
    [tip] à la pointe
   *[whole] tout l'archet
}
mark-text = « { $text } »
mark-slur = liaison jusqu'{ $to-in }
mark-no-slur = pas de liaison jusqu'{ $to-in }
mark-slur-moved = liaison jusqu'{ $end-in }, maintenant{ $moves-from ->
    [yes] { " " }depuis { $from-the }
   *[no] { "" }
}{ $moves-to ->
    [yes] { " " }jusqu'{ $to-in }
   *[no] { "" }
}
slur-from-to = liaison depuis { $from-the } jusqu'{ $to-in }
printed-slur = la liaison imprimée
printed-slur-to = la liaison imprimée jusqu'{ $to-in }
which-grace = petite note { $number }
which-voice = voix { $voice }
which-pitch = sur { $pitch }
