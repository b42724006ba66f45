# Phrases de la revue : ce qui est trouvé (say-), les nombres sur lesquels cela repose (evidence-, unit-), ce qui est supposé (assume-).

# Mots et endroits

and = et
the-score = la partition
place-bar = mesure
place-bars = mesures
place-in-bar = à la mesure
place-the-bar = la mesure
place-beat = temps
place-in-beat = au temps
place-the-beat = le temps

number-0 = aucune
number-1 = une
number-2 = deux
number-3 = trois
number-4 = quatre
number-5 = cinq
number-6 = six
number-7 = sept
number-8 = huit
number-9 = neuf
number-10 = dix
number-11 = onze
number-12 = douze

pitch-0 = do
pitch-1 = do♯
pitch-2 = ré
pitch-3 = mi♭
pitch-4 = mi
pitch-5 = fa
pitch-6 = fa♯
pitch-7 = sol
pitch-8 = la♭
pitch-9 = la
pitch-10 = si♭
pitch-11 = si
pitch-in-octave = { $name }{ $below }

a-bow = { $bow ->
    [down] un tiré
   *[up] un poussé
}
bow-name = { $bow ->
    [down] tiré
   *[up] poussé
}
bow-way = { $bow ->
    [down] tiré
   *[up] poussé
}
bars-counted = { $count ->
    [one] { $count } mesure
   *[other] { $count } mesures
}
and-more-places = { $more ->
    [0] { "" }
    [1] { " " }et à 1 autre endroit
   *[other] { " " }et à { $more } autres endroits
}
dynamics-steady = { $from }
dynamics-changing = de { $from } à { $to }
stroke-named = { $stroke ->
    [sautille] sautillé
    [martele] martelé
    [detache] détaché
    [a-thrown-stroke] jeté
    [on-the-string] à la corde
    [off-the-string] hors la corde
    [another] un autre coup d'archet
   *[other] { $stroke }
}

# La longueur de l'archet

say-nothing = Rien n'est dit encore.
say-bow-drift = À partir de { $at-the }, le même motif vient { $times } fois et, comme ça vient, emporte l'archet vers { $end ->
    [tip] la pointe
   *[frog] le talon
} : pour le ramener, les coups légers doivent ressortir de { $decibels } dB.
say-note-outlasts-bow = La note { $at-in } dure { $lasts } ; un archet, { $dynamics }, dure au plus { $longest }.
say-rushed-return = La note brève { $at-in } doit ramener un long coup d'archet et, { $dynamic }, ressortira d'environ { $decibels } dB.
say-slur-outlasts-bow = La liaison qui commence { $at-in } dure { $lasts } ; un archet, { $dynamics }, dure au plus { $longest }.

# Le temps

say-bar-comes-out-odd = À partir de { $at-the }, la même mesure vient { $times } fois avec { $bows } coups d'archet : comme ça vient, elle commence chaque fois dans l'autre sens{ $bowed ->
    [evened] , à moins qu'on n'accroche ou ne lève l'archet
   *[turning] { "" }
}.
say-beat-on-up-bow = L'accent { $at-in } tombe en poussé même dans les meilleurs coups d'archet du passage.
say-repeat-comes-back-reversed = { $road ->
    [da-capo] Le da capo vers { $beginning-the } part sur
    [dal-segno] Le dal segno vers { $beginning-the } part sur
   *[repeat] La reprise depuis { $beginning-the } finit sur
} { a-bow } { $end-in }, si bien que la seconde fois commence dans l'autre sens : il y a { $there } s pour lever l'archet, et il en faut { $needed }.
say-silent-downbeat = { $at-first }, { $why ->
    [tempo] un nouveau tempo commence
    [metre] une nouvelle mesure est chiffrée
    [mark] un repère est placé
   *[winds] les vents entrent
}, et aucun pupitre de cordes n'y commence un coup d'archet : tous tiennent, lient par-dessus la barre ou se taisent.
say-silent-downbeats = À partir de { $at-the }, aucun pupitre de cordes ne commence un coup d'archet sur le premier temps pendant { bars-counted }.
say-slur-covers-beat = { $at-first }, { $why ->
    [tempo] un nouveau tempo commence
   *[accent] un accent subit est écrit
} au milieu d'une liaison : aucun coup d'archet n'y commence.

# Sens de l'archet et nuances

say-accent-at-tip = L'accent { $at-in }, { $dynamic }, s'attaque près de la pointe par { a-bow }, là où l'archet a peu de poids.
say-chords-too-close = L'accord { $at-in } doit venir en tirant { $time } s après un autre ; briser le premier et ramener l'archet prend environ { $needed } s.
say-ending-on-up-bow = La phrase qui se conclut { $at-in } finit en poussé, { $dynamic }.
say-lift-in-soft-line = Avec ces liaisons, le { bow-name } { $at-in } oblige à lever l'archet dans une ligne { $dynamic } : un trou d'environ { $needed } s.
say-no-time-to-retake = Une reprise d'archet pour { a-bow } { $at-in } prend environ { $needed } s, et il y en a { $there }.
say-soft-entry-at-frog = L'entrée { $dynamic } { $at-in } commence près du talon par { a-bow }, là où l'archet est lourd.
say-swell-against-bow = Le { $swell } de { $from } à { $to } { $at-in } tombe sur { a-bow }, qui de lui-même { $swell ->
    [crescendo] s'éteint
   *[diminuendo] croît
}.

# Genres de coups d'archet

say-countable-tremolo = Le trémolo { $at-in } donne { $rate } coups d'archet par seconde, assez lent pour être compté, et aucun mot ne dit s'il est mesuré.
say-dots-on-pizzicato = { $count ->
    [one] La note qui commence { $at-in } est pincée et porte un point : elle est brève de toute façon.
   *[other] Les { $count-word } notes à partir de { $at-the } sont pincées et portent des points : elles sont brèves de toute façon.
}
say-dots-under-slur = { $count-first } notes avec points sous une liaison { $at-in }, { $rate } par seconde, et aucun mot ne dit comment : { $slower ->
    [portato] portato
    [staccato] staccato lié
   *[thrown] jeté
} ou { $faster ->
    [portato] portato
    [staccato] staccato lié
   *[thrown] jeté
} ? À cette vitesse, le { $likely ->
    [portato] portato
    [staccato] staccato lié
   *[thrown] jeté
} est plus probable.
say-signs-contradict = La note { $at-in } a un { $first ->
    [dot] point
   *[dash] tiret
} et un { $second ->
    [spiccato] signe de spiccato
   *[wedge] coin
} : { $first ->
    [dot] un peu brève, ou aussi brève que possible.
   *[dash] { $second ->
        [spiccato] l'un la tient, l'autre la sort de la corde.
       *[wedge] l'un la tient, l'autre la fait aussi brève que possible.
    }
}
say-words-contradict = « { $first } » et « { $second } » sont ensemble { $at-in } ; un archet fait l'un des deux.
say-legato-over-dots = « { $word } » est au-dessus d'un point { $at-in }, où il n'y a pas de liaison : l'un joint les notes, l'autre les sépare.
say-on-or-off-string = À partir de { $at-the }{ $parts ->
    [1] { "" }
   *[other] { " " }dans { $parts-word } parties
}, { $count-word } notes avec points de staccato viennent à { $rate } par seconde : à la corde ou hors la corde ? Aucun mot dans le morceau ne le dit.
say-slurred-tremolo = La liaison { $at-in } couvre un trémolo de notes comptées : sont-elles toutes dans un archet, ou chaque note a-t-elle le sien ?
say-stroke-too-fast = Les notes à partir de { $at-the } portent « { stroke-named } » et viennent à { $rate } par seconde ; ce coup d'archet va jusqu'à { $limit }.
say-stroke-too-slow = Les notes à partir de { $at-the } portent « { stroke-named } » et viennent à { $rate } par seconde ; l'archet rebondit de lui-même à partir de { $limit }.
say-thrown-too-many = { $count-first } notes sont à jeter dans un seul archet { $at-in } ; un jet en donne jusqu'à { $most }.
say-thrown-out-of-speed = Les notes jetées { $at-in } viennent à { $rate } par seconde, { $pace ->
    [slower] plus lentes
   *[faster] plus vives
} que les { $limit } d'un archet qui rebondit de lui-même.

# Signes d'archet

say-effect-marked-again = { $count-first } signes, de { $at-the } à { $last-the }, montrent un motif déjà marqué { $times ->
    [1] une fois
    [2] deux fois
   *[other] { $times-word } fois
} : les musiciens le continuent.
say-mark-cannot-be = Le signe de { bow-name } { $at-in } est { $where ->
    [on-rest] sur un silence
    [plucked] dans un pizzicato
    [not-bowed] sur une note qui ne se joue pas à l'archet
    [inside-slur] dans une liaison
   *[tied-from-before] sur une note tenue d'avant
}, où aucun coup d'archet ne commence.
say-both-bows = La note { $at-in } est marquée à la fois tiré et poussé.
say-mark-on-every-note = De { $at-the } à la fin de { $last-the }, { $marked } coups d'archet sur { $strokes } portent un signe.
say-mark-not-needed = Le signe de { bow-name } { $at-in } n'est pas nécessaire : sans lui, le coup d'archet est le même.

# La main gauche

say-below-e-string = La note { $at-in } est sous la corde de mi : pour { $pitch }, il faut une cinquième corde ou une extension.
say-below-lowest-string = { $pitch } { $at-in } : sous la corde la plus grave, { $limit }.
say-above-fingerboard = { $pitch } { $at-in } : au-delà du bout de la touche, environ { $limit }.
say-stop-held-too-long = { $strings-first } cordes doivent sonner ensemble pendant { $lasts } { $at-in } ; au-dessous de forte, un archet en tient deux.
say-stop-unplayable = { $pitches } { $at-in } : ces notes ne se jouent pas ensemble { $instrument ->
    [violin] au violon
    [viola] à l'alto
    [cello] au violoncelle
    [bass] à la contrebasse
   *[instrument] sur cet instrument
}.

# Entre les parties

say-doubling-bowed-apart = { $upper } et { $lower } jouent une même ligne de la mesure { $first } à la mesure { $last }, et ont d'autres coups d'archet { $at-in }{ and-more-places }.
say-doubling-marked-apart = { $upper } et { $lower } jouent une même ligne de la mesure { $first } à la mesure { $last }, et ne s'accordent pas { $at-in }{ and-more-places } : { $signs }.
sign-dots = points
sign-accents = accents
sign-dashes = tirets
sign-sforzati = sforzati
sign-dynamics = nuances
sign-way-of-playing = façon de jouer
say-parallel-bowed-apart = Jouées déjà { $model-in }, les mêmes notes sont liées autrement { $at-in } ; { $others ->
    [one] { $others } autre mesure s'accorde
   *[other] { $others } autres mesures s'accordent
} avec la mesure { $number }.
say-stands-contradict = { $at-first }, les deux moitiés du pupitre jouent le même rythme, l'une marquée tiré et l'autre poussé.
say-winds-phrase-apart = { $strings } et { $wind } jouent une même ligne pendant { $bars ->
    [one] { $bars } mesure
   *[other] { $bars } mesures
} et la lient pareil, sauf { $at-in }{ and-more-places }.

# Façons de jouer

say-chord-or-divisi = L'accord { $at-in } est dans la partie d'un pupitre, et ni div. ni non div. n'est dit.
say-missing-arco = { $sign ->
    [bow-mark] Un signe d'archet est écrit
    [tremolo] Un trémolo est écrit
   *[slur] Une liaison est écrite
} { $at-in }, et la dernière indication était pizz. { $since-in }.
say-pizz-again = pizz. est écrit { $at-in } alors qu'il vaut depuis { $since-the } : ou il manque arco entre les deux, ou le second est de trop.
say-mute-change-too-quick = { $change ->
    [on] con sordino
   *[off] senza sordino
} { $at-in } { $rest ->
    [none] n'a aucun silence avant
   *[some] a { $there } s de silence
} ; il faut environ { $needed } s pour { $change ->
    [on] mettre
   *[off] ôter
} la sourdine.
say-pizz-change-too-quick = { $word ->
    [pizz] pizz.
   *[arco] arco
} { $at-in } vient { $there } s après la dernière note ; il faut environ { $needed } s pour passer { $word ->
    [pizz] au pizzicato
   *[arco] à l'archet
}.
say-pizz-too-fast = { $count } notes pincées de suite à partir de { $at-the } viennent à { $rate } par seconde ; un pupitre en pince au plus { $most }.
say-state-again = { $word } est écrit { $at-in } alors qu'il vaut depuis { $since-the } : ou il manque une indication entre les deux, ou la seconde est de trop.
say-state-never-ends = { $word } est écrit { $at-in } et jamais annulé : { $bars ->
    [one] { $bars } mesure de plus est jouée
   *[other] { $bars } mesures de plus sont jouées
} ainsi, jusqu'à la fin du mouvement.
say-unison-of-two = unis. est écrit { $at-in } au-dessus de deux voix aux notes différentes : tous jouent-ils les deux, ou la partie est-elle encore divisée ?

# Liaisons telles qu'écrites

say-slur-on-one-note = La liaison { $at-in } commence et finit sur la même note.
say-slur-never-ends = Une liaison commence { $at-in } et ne finit jamais.
say-slur-never-began = Une liaison finit { $at-in } sans avoir commencé.
say-crossing-slurs = Sous la liaison qui commence { $at-in }, une autre commence { $start-in } et finit après elle : un archet ne peut faire les deux.
say-legato-without-slurs = legato est écrit { $at-in } au-dessus de { $count } notes, et aucune liaison ne dit lesquelles partagent un archet.
say-singing-line-without-slurs = À partir de { $at-the }, { $part } a { $count } notes d'une ligne chantante, et ni liaisons, ni signes, ni mots ne disent avec quels coups d'archet.
say-nested-slurs = La liaison qui commence { $at-in } contient { $inside ->
    [1] une autre liaison
   *[other] { $inside } autres liaisons
} : l'une des lignes est une liaison de phrase, et elles se ressemblent.
say-phrase-mark-as-slur = La liaison qui commence { $at-in } ressemble à une liaison de phrase : { $signs }{ $same-line ->
    [wind] { " " }; { $wind } a la même ligne
   *[none] { "" }
}.
sign-slowest-bows = longue de { $bows } archets les plus lents
sign-slurs-inside = { $count ->
    [one] { $count } liaison
   *[other] { $count } liaisons
} au-dessous
sign-rest = un silence au-dessous
sign-bow-marks = { $count ->
    [one] { $count } signe d'archet
   *[other] { $count } signes d'archet
} au-dessous
sign-repeated-pitch = une hauteur répétée sans points
sign-whole-bars = exactement { bars-counted }
say-slur-misses-tie = La liaison { $end ->
    [begins] commence
   *[ends] finit
} { $at-in } au milieu d'une note tenue.
say-slurs-meet-on-tie = Deux liaisons se rejoignent { $at-in } sur une note tenue : deux archets, changés là, ou un seul ?
say-slur-over-change = « { $word } » { $at-in } est au milieu d'une liaison.
say-slur-over-rest = La liaison { $at-in } couvre un silence.
say-slur-skips-string = De la note { $at-in } à la suivante, la liaison saute { $strings ->
    [1] une corde
   *[other] deux cordes
} en { $within }{ $more ->
    [0] { "" }
    [1] { " " }; la même liaison le fait encore une fois
   *[other] { " " }; la même liaison le fait encore { $more } fois
}.
say-slurred-stops = La double corde { $at-in } et la suivante n'ont aucune corde en commun : sous une liaison, on ne peut les joindre.
say-tie-or-slur = La liaison { $at-in } joint deux notes de même hauteur, sans points ni tirets : ce peut être une note tenue, ou deux dans un archet.
say-tie-to-another-pitch = La liaison de tenue { $at-in } mène à une autre hauteur : c'est une liaison d'archet qui est voulue.

# Parties

say-no-dynamic-anywhere = Aucune nuance n'est écrite dans toute la partition.
say-entry-without-dynamic = Aucune nuance n'est écrite pour l'entrée de { $part } { $at-in }.
say-reentry-without-dynamic = Aucune nuance n'est écrite pour l'entrée de { $part } { $at-in }, après { $bars ->
    [one] { $bars } mesure
   *[other] { $bars } mesures
} de silence.
say-landmarks-too-far = De { $from } à { $to } : { $bars ->
    [one] { $bars } mesure
   *[other] { $bars } mesures
} sans repère.
mark-in-bar = { $mark } ({ $at })
mark-bar-alone = { $at-the }
mark-the-next = { $mark }, le repère suivant
mark-end-of-movement = la fin du mouvement
mark-end = la fin
say-bars-without-number = { $count-first } { $count ->
    [one] mesure n'a pas
   *[other] mesures n'ont pas
} de numéro.
say-no-tempo = Aucun tempo n'est écrit au début.
say-tempo-for-playback-alone = Le fichier a un tempo pour la restitution, mais aucun n'est imprimé au début : les musiciens ne peuvent pas le lire.
say-page-turn-too-quick = La page se tourne avant { $at-the }, { $rest ->
    [none] sans aucun silence
   *[some] avec { $there } s de silence
} ; tourner prend environ { $needed } s.
say-part-not-in-score = { $file } a une partie { $part } que la partition n'a pas.
say-part-has-other-bars = { $file } a { $in-part ->
    [one] { $in-part } mesure
   *[other] { $in-part } mesures
}, la partition { $in-score }.
say-part-differs = { $file } et la partition n'ont pas { $what ->
    [notes] les mêmes notes
    [slurs] les mêmes liaisons
    [bow-marks] les mêmes signes d'archet
    [signs] les mêmes signes sur les notes
   *[words] les mêmes nuances ou mots
} { $at-in }.

# Ce qu'un devoir attend

say-no-tempo-for-task = La partition n'a pas de tempo.
say-lacks = { $what ->
    [slurs] Les liaisons
    [dynamics] Les nuances
    [hairpins] Les soufflets
    [articulations] Points, tirets et accents
    [bow-marks] Les signes d'archet
   *[tempo] Un tempo
} font partie de ce devoir : { $told }{ $cut ->
    [yes] { " " }…
   *[no] { "" }
}.
lacks-in-bars = { $part } n'en a pas aux mesures { $bars }
lacks-altogether = { $part } n'en a pas sur ses { $count } notes

# Ce qui est supposé

assume-tempo = Aucun tempo n'est écrit ; les secondes reposent sur un tempo supposé.

# Nombres

evidence-a-lift-takes = lever l'archet prend
evidence-a-turn-takes = tourner prend
evidence-above-its-dynamic = au-dessus de sa nuance
evidence-at-most = au plus
evidence-bars-of-rest = mesures de silence
evidence-bars-played-after-it = mesures jouées ensuite
evidence-bars-that-agree = mesures qui s'accordent
evidence-bars-without-a-mark = mesures sans repère
evidence-beams = barres
evidence-begins-at = commence à
evidence-bow-it-travels = archet parcouru
evidence-bowed-differently = autres coups d'archet
evidence-bows = coups d'archet
evidence-bows-needed = archets nécessaires
evidence-change-of-level = changement de nuance
evidence-chord-lasts = durée de l'accord
evidence-chords-without-div-or-non-div = accords sans div. ni non div.
evidence-difference-of-level = différence de niveau
evidence-downbeats-in-a-row = premiers temps de suite
evidence-dynamic = nuance
evidence-each-time-down = chaque fois en tirant
evidence-each-time-up = chaque fois en poussant
evidence-first-note-lasts = durée de la première note
evidence-last-note-lasts = durée de la dernière note
evidence-marks = signes
evidence-note-before = note d'avant
evidence-note-lasts = durée de la note
evidence-notes-a-second = notes par seconde
evidence-notes-in-common = notes communes
evidence-notes-in-one-throw = notes dans un jet
evidence-notes-that-begin-a-slur-in-one-part-only = notes qui ne commencent une liaison que dans une partie
evidence-notes-without-a-slur = notes sans liaison
evidence-rest = silence
evidence-silence-before-it = silence avant
evidence-slowest-bow-lasts = durée de l'archet le plus lent
evidence-slur-lasts = durée de la liaison
evidence-slurs-inside = liaisons à l'intérieur
evidence-strength-of-the-beat = poids du temps
evidence-strings-together-loud = cordes ensemble, forte
evidence-stroke-lasts = durée du coup d'archet
evidence-strokes-a-second = coups d'archet par seconde
evidence-strokes-marked = coups d'archet marqués
evidence-the-first-chord-speaks = le premier accord parle
evidence-the-lift-takes = lever l'archet prend
evidence-the-note-before-can-give-up = la note d'avant peut céder
evidence-time-between-them = temps entre les deux
evidence-time-it-takes = temps nécessaire
evidence-time-there-is = temps disponible
evidence-time-to-lift = temps pour lever l'archet
evidence-time-to-pass-over-a-string = temps pour passer une corde
evidence-times-in-a-row = fois de suite
evidence-dots-in-one-part = points dans une seule partie
evidence-accents-in-one-part = accents dans une seule partie
evidence-dashes-in-one-part = tirets dans une seule partie
evidence-sforzati-in-one-part = sforzati dans une seule partie
evidence-notes-with-another-dynamic = notes avec une autre nuance
evidence-notes-played-differently = notes jouées autrement

unit-seconds = s
unit-bows = archets
unit-decibels = dB
unit-percent = %
unit-percent-of-the-bow = % de l'archet
unit-dynamic-steps = degrés de nuance
unit-times-a-plain-downbeat = fois un premier temps simple
