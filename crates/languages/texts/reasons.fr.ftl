# Pourquoi les calques laissent quelque chose de côté, et ce qu'ils remarquent : la fin d'une phrase qui commence par un endroit.

as-it-is = { $text }

# Une note qui n'est pas là

why-no-part = la partition n'a pas cette partie ; elle a { $parts }
why-no-bar = la partition n'a pas cette mesure
why-several-bars = plusieurs mesures portent ce numéro ; préciser laquelle par "bar_ordinal" : { $ordinals }
why-other-bar = à cet endroit se trouve maintenant la { $bar } ; reporter le calque sur la partition révisée
why-no-note = aucune note ne commence là
why-rest = il y a là un silence
why-other-note = ce n'est pas cette note qui commence là, mais { $pitches }
why-other-end = son autre bout, { $at } : { $why }

# D'autres calques, et le calque lui-même

why-score-titled = « { $title } »
why-score-untitled = une partition sans titre
why-layer-of-other-score = le calque a été fait pour { $layer }, celle-ci est { $score }, et les notes ne sont pas les mêmes ; si c'est une révision, reporter d'abord le calque
why-taken-off-above = c'est imprimé dans la partition, et un calque posé au-dessus l'a enlevé ; cela revient quand on enlève ce calque
why-two-owners = deux personnes veulent ici des choses différentes ; en garder d'abord une
why-slur-taken-off-above = un calque posé au-dessus enlève cette liaison, et c'est lui qui vaut
why-slur-drawn-above = un calque posé au-dessus met une liaison entre ces notes, et c'est lui qui vaut
why-other-bow-above = un calque posé au-dessus demande ici un autre coup d'archet, et c'est lui qui vaut
why-several-answers = le calque en dit { $count } choses différentes ; en garder une
why-slur-said-otherwise = le calque dit autre chose d'une liaison entre les deux mêmes notes ({ $other }) ; garder l'une des deux

# Coups d'archet

why-no-place = la façon dont la note est écrite dans le fichier ne laisse pas de place au signe
why-no-direction = ni le signe ni la note d'avant ne disent dans quel sens va l'archet ; écrire "bow": "down" ou "up"
why-other-way-before = on demande l'autre sens au coup d'archet précédent, et l'archet ne peut continuer dans les deux
why-no-address-before = le coup d'archet précédent commence sur une note qu'on ne peut pas désigner seule
why-no-stroke = aucun coup d'archet ne commence sur cette note : elle est sous une liaison, tenue depuis la note d'avant, ou jouée sans archet
why-two-directions = le signe et ce qu'on demande au coup d'archet précédent donnent deux sens, et l'archet ne peut continuer dans les deux

# Liaisons

why-slur-moves-nowhere = il déplace la liaison là où elle est déjà
why-slur-backwards = sa dernière note ne vient pas après la première
why-slur-in-two-voices = ses deux bouts sont dans deux voix, et la plus tardive est écrite d'abord ; aucun programme ne les joindrait
why-slur-printed-there = une liaison y est déjà imprimée ; enlever plutôt celle-ci
why-slur-ends-not-in-file = la liaison imprimée ne peut pas être enlevée ; ses deux bouts ne sont pas tous deux dans le fichier
why-no-slur-to-take-off = la partition n'a pas cette liaison à enlever
why-too-many-slurs = plus de seize liaisons sont ouvertes à cet endroit ; il ne reste pas de numéro pour une autre

# Notes accrochées sous une liaison

why-chord-bowed-twice = le calque donne un coup d'archet à une autre note de cet accord ; garder l'un des deux
why-hooked-with-other-sign = le coup d'archet précédent est accroché avec l'autre signe ; écrire les deux avec des points ou les deux avec des tirets
why-hook-draws-slur-again = le calque enlève une liaison justement entre ces notes, et la note accrochée la remettrait ; laisser la liaison et écrire les points ou les tirets dans la partition
why-no-address-under-slur = une note sous sa liaison ne peut pas être désignée seule
why-hook-on-grace-note = une petite note n'a pas de coup d'archet qu'une liaison avec points ou tirets puisse joindre ; écrire la note accrochée par des signes d'archet
why-hook-tied-over = aucun coup d'archet ne commence sur cette note : elle est tenue ; accrocher la note qui suit la tenue
why-hook-on-first-note = aucune note ne vient avant, à laquelle une liaison puisse la joindre ; enlever l'accroché
why-hook-after-gap = un silence ou une autre voix la sépare de la note d'avant, et une liaison cacherait l'arrêt ; écrire la note accrochée par des signes d'archet
why-hook-over-grace-note = une petite note se trouve entre les deux coups d'archet ; écrire la note accrochée par des signes d'archet
why-hook-written-backwards = dans le fichier, la plus tardive des deux notes est écrite d'abord ; écrire la note accrochée par des signes d'archet
why-hook-under-slur = la liaison de { $from } à { $to } couvre ou touche ses notes ; enlever d'abord cette liaison, ou écrire la note accrochée par des signes d'archet
why-hook-begins-as-it-comes = le calque laisse comme elle vient la note où commence sa liaison, là où serait le sens ; enlever l'un des deux
why-hook-begins-unnamed = la note où commence sa liaison prend son sens du coup d'archet précédent ; donner le sens là-bas, pas ici
why-hooks-both-ways = la note accrochée précédente va dans l'autre sens sous la même liaison ; donner un seul sens aux deux

# Signes qui restent dans la partition

stays-unlike-one-mark = dans le fichier, il n'est pas écrit comme un seul signe
stays-without-address = il n'est pas sur une note qu'on puisse désigner
stays-slur-end-without-address = la liaison ne finit pas sur une note qu'on puisse désigner
stays-slur-never-ends = une liaison commence ici et ne finit jamais ; la finir, ou l'enlever
stays-slur-never-began = une liaison finit ici sans avoir commencé ; la commencer, ou l'enlever
stays-slur-middle = un élément de liaison qui n'en est ni le début ni la fin
stays-slur-on-hidden-note = la fin d'une liaison sur une note cachée, qu'aucun calque ne peut désigner
stays-bow-mark-twice = la note porte plusieurs fois le même signe d'archet ; enlever ceux qui sont de trop
stays-words-twice = les mêmes mots y sont deux fois

# Remarques

check-other-score = le calque a été fait pour d'autres notes : une autre partition, ou celle-ci avant une révision ; le reporter
check-conflict = { $first } veut { $one }, { $second } veut { $other } ; garder l'un des deux
check-mark = { $mark } : { $why }
check-twice = { $mark } : deux fois au même endroit ; en garder un
check-doubt = { $mark }, avec un doute : { $doubt }
check-on-rest = { $mark }, mais sur un silence ; mettre le signe sur une note ou l'enlever
check-several-answers = { $mark }, et { $count } réponses en tout ; en garder une
check-tied-over = la note est tenue : aucun nouveau coup d'archet n'y commence
check-inside-slur = { $mark }, mais sous une liaison, où l'archet continue ; enlever là la liaison
check-nothing-before = { $mark }, mais aucune note ne vient avant
check-slur-backwards = la dernière note de la liaison ne vient pas après la première

# Reporter sur une révision

doubt-other-bars = la même musique se trouve aussi dans d'autres mesures{ $count ->
    [0] { "" }
   *[other] { " " }: { $bars }
}
doubt-bar-rewritten = la mesure a été en grande partie récrite
doubt-other-pitch = la note a une autre hauteur
doubt-other-length = la note a une autre durée
doubt-moved = la note est ailleurs dans la mesure
doubt-other-chord = d'autres notes l'accompagnent
doubt-written-out = la reprise a été écrite en toutes notes, ceci en est la seconde fois
doubtful-said = { $from } → { $to }, { $mark } : { $why }
lost-conflict-wants-nothing = il ne veut rien ni d'un côté ni de l'autre
lost-other-end = l'autre bout de sa liaison : { $why }
lost-part = l'ancienne partition n'a pas cette partie
lost-in-old-score = dans l'ancienne partition, { $why }
lost-bar = sa mesure n'est pas dans la nouvelle partition
lost-note = sa note n'est pas dans la nouvelle mesure
lost-note-is-rest = sa note est maintenant un silence

# Étendre

not-spread = { $from }, { $mark } : pas à { $part }, { $why }
spread-other-passage = un autre passage propose autre chose
spread-nothing-played = on n'y joue rien
spread-other-slurs = liaisons différentes
spread-other-rhythm = rythme différent
spread-no-stroke = aucun coup d'archet ne commence sur cette note
spread-said-otherwise = le calque y dit autre chose
spread-slur-end-lost = l'autre bout de sa liaison n'y a pas d'équivalent
