# Ce que la revue propose (offer-), les réparations (repair-) et ce qu'on y gagne (gain-).

offer-and-further = { $offer } Les autres endroits sont changés de la même façon.
offer-repair = { $repair }.
offer-repair-and-gain = { $repair } : { $gain }.
offer-repair-for = { $repair } : { $what ->
    [accent] l'accent
    [bar] la mesure
    [ending] la fin
    [entry] l'entrée
   *[swell] le soufflet
} vient alors sur { a-bow }.

repair-split = Couper la liaison { $at-in }
repair-split-tie = Changer d'archet sur la note tenue { $at-in }
repair-end-earlier = Finir la liaison une note plus tôt, avant { $at-the }
repair-begin-later = Commencer la liaison une note plus tard, { $at-in }
repair-join-notes = Lier la note { $at-in } à la précédente
repair-join-slurs = Réunir les liaisons qui se rejoignent { $at-in }
repair-end-later = Finir la liaison une note plus tard, { $at-in }
repair-begin-earlier = Commencer une note plus tôt la liaison de { $at-the }
repair-hand-over-later = Finir la liaison une note plus tard et commencer la suivante { $at-in }
repair-hand-over-earlier = Finir la liaison une note plus tôt et commencer la suivante { $at-in }
repair-hook = Accrocher la note { $at-in } à la précédente

gain-bars-begin-down = { $count ->
    [one] la mesure { $bars } commence alors en tirant
   *[other] les mesures { $bars } commencent alors en tirant
}
gain-stretch-begins-down = { $count } mesures, de { $first } à { $last }, commencent alors en tirant
gain-more-time = des archets de { $short } au lieu de { $long }
gain-no-hook = il n'y a plus à accrocher { $at-in }
gain-no-retake = il n'y a plus à reprendre l'archet { $at-in }
stroke-shown = { $at }{ $hooked ->
    [hooked] { " " }accroché
   *[plain] { "" }
} { bow-way }, { $lasts }, { $used } % de l'archet

# Ce que peut le bras

offer-start = Commencer par { a-bow } { $at-in }.
offer-hook = Accrocher la note { $at-in } à la précédente.
offer-retake = Reprendre l'archet pour { a-bow } { $at-in }.
offer-begin = Faire commencer { $at-the } en { bow-name }.
offer-stagger-unheard = Faire changer d'archet à des moments différents les deux musiciens de chaque lutrin, sans qu'on l'entende.
offer-hook-short-to-long = Accrocher le coup bref au long qui précède, en arrêtant l'archet, et alterner à partir de là.
offer-hook-short-note = Accrocher la note brève au coup d'archet qui précède, en arrêtant l'archet.
offer-hook-last-two-bows = Accrocher les deux derniers coups d'archet de chaque mesure, pour que chacune commence en tirant.
offer-hook-so-section-comes-back = Accrocher la note { $at-in } à la précédente, pour que la section revienne comme elle a commencé.
offer-hook-instead-of-lifting = Accrocher les deux coups à la corde, en arrêtant l'archet, au lieu de le lever.
offer-mark-first-note-every-pass = Marquer { a-bow } sur la première note de la section, pour chaque passage.
offer-mark-out-and-alternate = Enlever le signe { $at-in } et alterner.
offer-row-out = Enlever après le premier les signes de { bow-name } de la rangée et alterner.
offer-chords-as-they-come = Prendre les accords comme ça vient.
offer-second-down-out = Enlever le second tiré et alterner.
offer-change-one-after-the-other = Faire changer l'un après l'autre les deux musiciens de chaque lutrin.
offer-one-player-earlier = Faire changer un musicien de chaque lutrin quelques notes plus tôt.
offer-divide-between-players = Partager les notes entre les deux musiciens de chaque lutrin.
offer-out-and-sim = Les enlever et écrire sim. au-dessus de la première.
offer-mark-out = Enlever le signe.
offer-keep-one-bow = { $bow ->
    [down] Garder le tiré et enlever le poussé.
   *[up] Garder le poussé et enlever le tiré.
}
offer-marks-not-needed-out = { $count ->
    [one] Enlever celui qui n'est pas nécessaire.
   *[other] Enlever les { $count } qui ne sont pas nécessaires.
}
offer-keep-what-alternation-would-not = Garder les signes que l'alternance ne donnerait pas et enlever les autres.

# Ce que peut l'auteur

offer-split-slur-before = Couper la liaison avant { $places-the }.
offer-split-slur-there = Couper la liaison à cet endroit.
offer-split-between-two-notes = Couper la liaison entre les deux notes.
offer-split-between-the-two = Couper la liaison entre les deux.
offer-split-long-weigh-alike = Couper la longue liaison, pour que tirés et poussés du motif se valent.
offer-split-long-beside = Couper la longue liaison voisine, pour qu'il y ait moins d'archet à regagner.
offer-break-note-at-barline = Reprendre la note par une nouvelle attaque à une barre de mesure, où un changement s'entend le moins.
offer-slur-two-notes = Lier deux des notes, pour que la mesure ait un nombre pair de coups d'archet.
offer-change-on-downbeat = Faire changer d'archet { $part } sur le premier temps : y couper la liaison.
offer-inner-attacks-afresh = Faire attaquer de nouveau la note tenue par un pupitre intérieur sur le premier temps.
offer-inner-changes-on-some = Faire changer d'archet un pupitre intérieur sur quelques-uns de ces premiers temps.
offer-change-inside-swell = Laisser les musiciens changer d'archet dans le soufflet.
offer-chords-on-two-strings = Écrire les accords sur deux cordes, ou leur donner plus de temps.
offer-write-trem = Écrire trem. au-dessus du premier, s'il n'est pas mesuré.
offer-write-out-or-measured = Écrire les notes en entier, ou écrire « mesuré », si elles sont à compter.
offer-dots-out = Enlever les points.
offer-dashes-for-portato = Mettre des tirets à la place des points, pour un portato.
offer-write-staccato = Écrire staccato au-dessus de la première, pour un archet qui s'arrête.
offer-write-gettato = Écrire gettato au-dessus de la première, pour un archet jeté.
offer-sign-out = Enlever le { $sign ->
    [dash] tiret
    [wedge] coin
    [spiccato] signe de spiccato
   *[dot] point
}.
offer-word-out = Enlever « { $word } ».
offer-write-spicc = Écrire spicc. au-dessus de la première.
offer-write-on-the-string = Écrire à la corde au-dessus de la première.
offer-write-group-out = Écrire le premier groupe en entier avec ses liaisons, puis simile, si les notes partagent un archet.
offer-slurs-out-own-bow = Enlever les liaisons, si chaque note a son archet.
offer-write-spiccato-instead = Écrire plutôt spiccato.
offer-slur-in-twos = Lier les notes par deux, ou en écrire la moitié.
offer-divide-into-throws = Partager la liaison en jets de { $most } notes au plus.
offer-slurred-staccato = Demander un staccato lié ou un spiccato lié au lieu d'un jet.
offer-slur-without-dots = Lier les notes sans points, ou leur donner plus de temps.
offer-write-which-strings-held = Écrire quelles deux cordes sont tenues, et les autres brèves avant elles.
offer-write-div-and-unis = Écrire div. ici, et unis. là où tous jouent de nouveau ensemble.
offer-give-slurs = Donner à { $lower } les liaisons de { $upper } à cet endroit.
offer-give-marks = Donner à { $lower } les signes de { $upper } à cet endroit.
offer-slurs-of-the-others = Donner à la mesure les liaisons des autres.
offer-lower-mark-out = Enlever le signe de la voix inférieure, pour que les deux suivent la supérieure.
offer-write-div = Écrire div. ici.
offer-write-non-div = Écrire non div. ici.
offer-write-arco = Écrire arco ici.
offer-second-pizz-out = Enlever le second pizz.
offer-longer-rest = Donner un silence plus long, ou changer à un autre endroit.
offer-give-change-a-rest = Donner un silence au changement.
offer-second-word-out = Enlever la seconde indication.
offer-write-ord-or-sempre = Écrire ord. là où cela finit, ou sempre là où cela continue.
offer-unis-out = Enlever unis. là où la partie est divisée.
offer-slur-out = Enlever la liaison.
offer-loose-end-out = Enlever le bout resté seul.
offer-first-slur-out = Enlever la première liaison et garder la seconde.
offer-end-first-slur = Finir la première liaison { $at-in }, avant que la seconde commence.
offer-write-slurs = Écrire les liaisons que la ligne doit avoir.
offer-write-non-legato = Écrire non legato ou détaché, si chaque note a son archet.
offer-outer-dashed = Faire de celle du dehors une liaison en pointillé : une liaison de phrase.
offer-dashed-slur = En faire une liaison en pointillé : une liaison de phrase, qui laisse l'archet libre.
offer-slur-over-tied-note = Tirer la liaison sur toute la note tenue.
offer-one-slur-over-both = Si un seul archet est voulu, tirer une liaison sur les deux ; si deux, un signe d'archet sur la note tenue le dit.
offer-end-slur-before-word = Finir la liaison avant « { $word } ».
offer-begin-slur-at-word = Commencer la liaison à « { $word } ».
offer-split-slur-at-word = Couper la liaison à « { $word } ».
offer-slurs-beside-rest = Finir la liaison avant le silence et en commencer une autre après.
offer-slur-neighbouring-strings = Ne lier que les notes qui sont sur une corde ou sur des cordes voisines.
offer-tie-two-notes = Joindre les deux notes par une liaison de tenue.
offer-dashes-on-both = Mettre des tirets sur les deux, pour une pulsation dans un archet.
offer-slur-for-tie = Écrire une liaison d'archet à la place de la liaison de tenue.
offer-write-dynamic = Écrire { $dynamic }, comme dans les parties qui jouent en même temps.
offer-rehearsal-mark = Mettre un repère { $at-in }{ $why ->
    [double-bar] , après la double barre
    [tempo] , avec le nouveau tempo
    [metre] , avec la nouvelle mesure chiffrée
    [key] , avec la nouvelle armure
   *[middle] { "" }
}.
offer-number-the-bars = Numéroter les mesures et imprimer les numéros dans les parties.
offer-write-tempo = Écrire un mot de tempo ou une indication de métronome au-dessus de la première note.
offer-break-page-at-rest = Tourner la page à un silence.

# Qui peut le faire

grade-safe = sûre
grade-player = au choix du musicien
grade-writer = au choix de l'auteur
