# Explications des règles en français.

accent-at-tip = Un accent là où l'archet n'a pas de poids
    .finds =
        Un accent lourd (sf, fz, l'accent vertical), mezzo-forte ou plus fort, qui commence près de la pointe dans le meilleur
        coup d'archet du passage (C). Les accents sur temps forts qui viennent en poussé sont signalés par `beat-on-up-bow` et
        ne comptent pas ici, ni ceux dont le coup d'archet est imprimé. Ni ceux qui suivent un silence où l'archet peut être
        porté au talon.
    .why =
        Au talon, l'archet repose sur la corde de son propre poids ; à la pointe il en reste un sixième, et la main doit faire
        l'accent seule. Il sort mince, ou en retard.
    .proposes =
        La façon la moins chère de prendre l'accent sur l'autre coup d'archet : commencer le passage autrement, accrocher ou
        lever l'archet avant (au choix du musicien), avec son prix.
    .limits =
        Que certains accents se veulent légers. On laisse les accents doux et l'accent couché, que la vitesse seule peut faire
        : avec lui, neuf quatuors avaient deux remarques en 100 mesures pour lesquelles personne ne se serait arrêté ; de même
        le tremolo et les coups d'archet plus brefs qu'un levé, où l'on reste au milieu de l'archet. Les endroits de l'archet
        sont ceux du calcul, à un dixième de sa longueur.

bar-comes-out-odd = Une mesure qui tombe à l'envers
    .finds =
        La même mesure, rythme et liaisons pareils, quatre fois ou plus de suite avec un nombre impair de coups d'archet : comme
        ça vient, elle commence chaque fois sur l'autre sens, et même dans les meilleurs coups d'archet c'est ainsi, ou bien il
        faut chaque fois accrocher ou reprendre. Va comme ça vient ce qui n'a pas de forme à montrer (cinq coups égaux ou plus,
        trois liaisons égales, une note répétée dans toute la mesure), ce qui ne veut pas son poids sur le premier coup (une
        syncope par-dessus le milieu de la mesure, un accent ailleurs), et les mesures de moins d'une seconde.
    .why =
        Le motif sonne d'une façon en tirant et d'une autre en poussant ; ce qui est écrit pareil sort tour à tour de deux façons.
    .proposes =
        Accrocher les deux derniers coups d'archet de chaque mesure (au choix du musicien) ; lier deux notes, ou en séparer
        deux (au choix de l'auteur).
    .limits =
        Si l'alternance est voulue, comme dans une valse rapide ou un trait. Les signes qui fixent les coups d'archet sont
        pris pour voulus.

beat-on-up-bow = Un temps fort vient en poussé
    .finds =
        Un temps avec accent, accord ou montée subite qui tombe en poussé même dans le meilleur plan possible, sans que le poussé
        soit imprimé.
    .why =
        La main a son poids au talon et le donne en descendant. Un accent en poussé se joue, mais plus léger et plus tard que
        l'auteur ne l'entend ; le pupitre demandera l'autre sens.
    .proposes =
        Ce qu'il faudrait faire autrement pour avoir le temps en tirant, avec son prix : commencer par l'autre coup d'archet,
        accrocher ou reprendre (au choix du musicien). Dans le fichier, ce sont des signes d'archet : sur le temps, et là où
        le bras fait autrement, un signe sur les deux coups d'archet d'un accroché ou d'une reprise ; aucun là où une reprise
        manquerait de temps. Et là où un seul changement des liaisons dans les mesures d'avant l'amène de lui-même, à moindre
        prix, ce changement (au choix de l'auteur) : une liaison divisée, jointe, commencée ou finie une note plus tôt ou plus
        tard, ou un accroché.
    .limits =
        Si l'on veut un accent plus léger, ou si la ligne d'avant compte plus que le temps. Les accents doux, et ceux d'un
        long coup d'archet, sont faits par la vitesse et laissés de côté ; de même ce que l'on peut avoir en tirant pour un
        point ou moins, qui est l'affaire du musicien, et ce qui suit une levée pointée, qui s'accroche. D'accents qui se
        suivent, un sur deux est poussé : il est dit où se trouve le premier. Dans une suite de coups d'archet égaux, le bras
        fait les accents dans les deux sens. Là où un tiré est imprimé sur une note plus faible juste après l'accent, l'accent
        est tiré lui aussi : personne n'imprime ce que l'alternance ne donnerait pas, sinon pour « encore tiré ».

bow-drift = Un motif emporte l'archet vers un bout
    .finds =
        Un motif de coups d'archet qui vient au moins trois fois de suite sans silence, et dont les tirés et les poussés sont si
        inégaux que, joué comme ça vient à la vitesse que veut la nuance, il emporte l'archet de plus de la moitié de sa longueur
        vers un bout.
    .why =
        Trois notes liées et une seule, encore et encore : chaque liaison prend plus d'archet que la note seule n'en rend. Le bras
        finit à un bout où le passage ne sonne pas, ou chaque note seule ressort parce qu'elle court.
    .proposes =
        Accrocher la note seule à la liaison, avec un arrêt (au choix du musicien ; dans le fichier, un signe sur les deux
        quand la figure est de deux coups d'archet) ; diviser la liaison pour que les deux sens pèsent autant (au choix de
        l'auteur). Une figure dont les signes imprimés accrochent deux coups d'archet est laissée telle quelle.
    .limits =
        Si le musicien égalise en jouant les liaisons près du chevalet avec peu d'archet.

broken-slur = Une liaison à un seul bout
    .finds =
        Une liaison qui commence et ne finit jamais, qui finit sans avoir commencé, ou posée sur une seule note. Une liaison
        suspendue à une barre de reprise ou dans une fin est complète pour qui joue, et ne compte pas. Une seule dans une partie
        est une faute (A) ; plusieurs se sont perdues entre deux logiciels, et la partie est à relire (B).
    .why =
        Le musicien voit une ligne vers rien et ne sait pas où l'archet change. Ces bouts restent le plus souvent d'une correction,
        et chaque passage d'un logiciel à l'autre les multiplie.
    .proposes =
        Enlever le bout libre (au choix de l'auteur) : l'archet change alors à chaque note.
    .limits =
        Où devait se trouver l'autre bout.

chord-or-divisi = Un accord pour un pupitre : entier, ou divisé ?
    .finds =
        Dans la partie d'un pupitre, un accord ou deux voix à la fois sans que div., non div. ou unis. soit dit : signalé une fois
        par partie, au premier, avec le nombre des autres.
    .why =
        La moitié divisera et l'autre jouera des doubles cordes, deux fois plus fort sur les fausses notes ; la première question
        de la répétition est toujours la même.
    .proposes =
        Écrire div. au premier accord, ou non div. (au choix de l'auteur).
    .limits =
        Les accords de trois et quatre cordes sont brisés par tous et laissés de côté ; de même ceux qu'aucune main ne peut
        prendre, qui disent d'eux-mêmes que la partie se divise.

chords-too-close = Accords en tirant trop rapprochés
    .finds =
        Deux accords de trois ou quatre cordes l'un après l'autre, tous deux en tirant par signe ou par mot, avec moins de temps du
        premier au second qu'il n'en faut pour briser le premier, le laisser parler et ramener l'archet (B).
    .why =
        Un accord se brise des cordes graves vers les aiguës, et cela aussi prend du temps avant que l'archet puisse partir. Sans
        lui, il manque au premier accord ses notes hautes, ou le second arrive tard.
    .proposes =
        Enlever le second signe et alterner (au choix du musicien). Écrire moins de notes dans les accords, que deux cordes
        puissent tenir, de la main de l'auteur.
    .limits =
        À quelle vitesse ce musicien brise un accord. Les accords que rien d'imprimé ne demande en tirant sont alternés là où
        ils viennent trop vite, et ne sont pas signalés. Là où même un levé entre notes simples manquerait de temps,
        `no-time-to-retake` le dit.

countable-tremolo = Un trémolo assez lent pour être compté
    .finds =
        Trémolo écrit avec trois barres ou plus, auquel le tempo donne si peu de coups par seconde qu'on les comptera comme des
        notes (B), sans aucun mot qui dise trémolo. Une remarque par partie. Là où un autre pupitre a en même temps un trémolo à
        trois barres, c'est une couleur de l'accord, et personne ne compte.
    .why =
        Trois barres sont des triples croches dans un tempo lent et un frémissement dans un tempo vif. Où les triples sont lentes,
        la moitié du pupitre les joue et l'autre frémit.
    .proposes =
        Écrire trem. là où il commence, si l'on veut un frémissement (au choix de l'auteur). Écrire les notes en entier, ou
        moins de barres, si elles doivent être comptées (au choix de l'auteur), de sa main.
    .limits =
        Lequel des deux est voulu. Une et deux barres sont prises pour mesurées, un tremolo que le fichier dit non mesuré pour
        un frémissement, et celui qui a été dit trem. une fois dans une partie le reste. Le tremolo entre deux notes est
        laissé de côté.

crossing-slurs = Des liaisons qui se croisent
    .finds =
        Deux liaisons d'une voix, dont la seconde commence sous la première et finit après elle.
    .why =
        Un archet ne peut être dans deux coups à la fois : personne ne peut dire où il change. Chacun décide autrement, et le
        pupitre demande.
    .proposes =
        Finir la première liaison où commence la seconde (au choix de l'auteur).
    .limits =
        Laquelle des deux était pensée comme un coup d'archet. Une ligne de tirets ou de points vaut liaison de phrase et est
        laissée de côté.

dots-on-pizzicato = Des points sur des notes pincées
    .finds =
        Points, coins ou signes de spiccato sur des notes pincées qui se suivent sans silence (D), une remarque par partie.
    .why =
        Une note pincée est brève de toute façon. Des points restés d'une version à l'archet font chercher l'arco qu'on aurait
        manqué.
    .proposes =
        Enlever les points (au choix de l'auteur).
    .limits =
        Si l'auteur veut les notes aussitôt étouffées, pour quoi il y a des mots (« étouffé », « secco »). Sur une note ou un
        accord avant un silence, un point est lu ainsi, et laissé : la corde sonnerait dans le silence. Les notes pincées de
        la main gauche ou claquées sur la touche pendant que l'archet joue sont laissées de côté.

dots-under-slur = Des points sous une liaison, lisibles de deux façons
    .finds =
        Trois notes ou plus, de hauteur changeante, avec des points sous une liaison, à une vitesse où deux coups d'archet répondent
        au signe, sans un mot qui dise lequel (B) : portato ou staccato lié, où les notes ne sont ni lentes ni vives ; staccato lié
        ou jeté, où elles sont vives et assez peu pour un jet. La phrase dit lequel est plus probable à cette vitesse. Une remarque
        par partie et par paire de lectures.
    .why =
        Les trois coups partagent un signe. Dans l'un l'archet s'arrête à peine, dans l'autre après chaque note, dans le troisième
        il quitte la corde ; un pupitre à qui l'on n'a rien dit en joue deux à la fois.
    .proposes =
        Le dire d'un mot là où commencent de telles liaisons (au choix de l'auteur) : « staccato » pour l'archet arrêté, «
        gettato » pour le jeté. Mettre des tirets à la place des points si l'on veut un portato (au choix de l'auteur).
    .limits =
        Ce qu'un style tient pour acquis. Notes lentes, notes répétées (l'ancien signe d'un archet qui palpite), traits
        verticaux, points avec tirets et groupes de deux ne se lisent que d'une façon et sont laissés ; de même ce qui suit un
        mot sur le coup d'archet jusqu'au prochain arco, pizz. ou ord.

doubling-bowed-apart = Une ligne doublée avec deux coups d'archet
    .finds =
        Deux parties de cordes qui jouent une même ligne, à l'unisson ou à l'octave, deux mesures ou plus, où certaines notes sont
        liées dans l'une et pas dans l'autre, ou portent des signes d'archet opposés. Les contrebasses peuvent changer plus souvent
        que ceux qu'elles doublent.
    .why =
        Qui joue une même ligne regarde l'archet de l'autre. Où presque tout est lié pareil et quelques endroits non, l'une des
        parties a une faute, et la question coûte du temps.
    .proposes =
        Donner à la partie inférieure les liaisons de la partie supérieure (au choix de l'auteur).
    .limits =
        Laquelle des deux est voulue. Un coup d'archet qui commence autrement parce qu'une partie joue une note entre deux,
        une levée par exemple, que l'autre n'a pas, est laissé de côté. Là où un cinquième des coups d'archet ou plus
        diffèrent, l'auteur veut deux articulations d'une même ligne, et rien n'est dit ; ni là où l'une des deux est pincée
        ou joue un tremolo, dont l'archet n'est pas un legato. Des coups d'archet opposés sans signes ne sont pas une
        différence aux violoncelles et contrebasses, où ils vont comme ça vient.

doubling-marked-apart = Une ligne doublée avec deux sortes de signes
    .finds =
        Deux parties de cordes qui jouent une même ligne, à l'unisson ou à l'octave, deux mesures ou plus, où des
        points, des accents, des tirets ou des sforzati ne sont que dans l'une sur certaines notes, bien que les deux
        en portent à cet endroit ; ou dont la nuance, la sourdine, le pizz. ou la place sur la corde diffèrent pour la
        moindre part. Les liaisons et les signes d'archet relèvent d'une autre règle.
    .why =
        Qui joue une même ligne écoute l'autre. Où presque tout est marqué pareil et quelques notes non, une partie
        joue court ce que l'autre tient, ou doux ce que l'autre a fort, et quelqu'un demandera ce qui est voulu.
    .proposes =
        Donner à la partie inférieure les signes de la partie supérieure (au choix de l'auteur) : dans le fichier, là où seuls
        des signes sur des notes diffèrent.
    .limits =
        Laquelle des deux est voulue. Là où la plupart des signes sont dans une seule partie, ou qu'une partie n'en a aucun
        d'une sorte, l'auteur veut deux articulations d'une ligne, ou marque ce qu'il n'est pas besoin de dire à l'autre, et
        rien n'est dit. Les signes sur des notes pincées et des tremolos sont laissés de côté.

effect-marked-again = Un effet marqué encore et encore
    .finds =
        Un motif qui vient cinq fois ou plus de suite avec les mêmes signes d'archet, dont certains font effet : des poussés
        vers un fort tiré, une reprise d'archet, un coup contre l'alternance. Les signes à partir de la troisième fois sont de
        trop (D).
    .why =
        Deux fois apprennent le motif ; on le continue. Ce qui reste marqué semble chaque fois un changement, et encombre la partie.
    .proposes =
        Enlever les signes des fois suivantes et écrire sim. là où elles commencent (au choix du musicien).
    .limits =
        Si l'endroit est si difficile que quelqu'un veut chaque coup d'archet écrit, ou si les signes viennent d'une édition
        d'étude.

ending-on-up-bow = Une phrase finit en poussé
    .finds =
        La dernière note ou le dernier accord d'une phrase, sur un temps, attaqués à part, forte ou plus et pas trop brefs, qui
        ne croissent ni ne s'éteignent, et qui finissent en poussé dans le meilleur plan possible. Une phrase finit avant un
        long silence, à une double barre avec un nouveau tempo qui ne commence pas aussitôt en tirant, et à la fin ; non là où une respiration avant la note libère
        l'archet.
    .why =
        Un tiré conclut : il peut résonner et s'éteindre. Un poussé finit au talon, où le son s'arrête net ou enfle.
    .proposes =
        Ce que l'on ferait autrement pour finir en tirant, avec son prix : commencer par l'autre coup d'archet, accrocher ou
        reprendre (au choix du musicien). Dans le fichier, ce sont des signes d'archet, comme pour un accent en poussant. Ou
        le seul changement des liaisons d'avant qui amène le tiré de lui-même à moindre prix (au choix de l'auteur).
    .limits =
        Si la fin est pensée comme une question. Une dernière note qui enfle est laissée de côté : le poussé lui va. De même
        une après une levée pointée, qui s'accroche, une plus douce que forte, ou qui s'éteint sous morendo, un soufflet ou
        dim. : l'archet y quitte la corde de toute façon. Une dernière liaison est laissée aussi : on l'entend comme une
        ligne, non par le début de son coup d'archet ; et de même ce qu'un signe de reprise renvoie, puisque la musique
        continue.

entry-without-dynamic = Une entrée sans nuance
    .finds =
        Une partie dont la première entrée n'a aucune nuance, ni sur sa première note ni avant. Si aucune partie n'en a dans toute
        la partition, une seule remarque le dit.
    .why =
        On ne sait pas avec quelle force commencer, et la nuance décide aussi de l'archet qu'une note reçoit. C'est la première
        question de toute première répétition.
    .proposes =
        Écrire la nuance que les autres parties ont à ce moment, quand elles s'accordent (au choix de l'auteur).
    .limits =
        La musique qui par usage ne porte pas de nuances. Une nuance qui vient dans la noire suivant l'entrée compte : les
        programmes les placent un peu tard.

landmarks-too-far = Des repères trop éloignés
    .finds =
        Dans la musique pour pupitres : d'une lettre à l'autre, jusqu'à la première, ou de la dernière à la fin, plus de mesures
        qu'on n'aime compter (C, une remarque pour la partition). Le début d'un mouvement est aussi un repère. En musique de
        chambre, où l'on dit le numéro de la mesure, seulement s'il y a des lettres et qu'une partie compte entre-temps plus
        de huit mesures de silence. Mesures sans numéros (C).
    .why =
        « Quarante et un avant D » coûte une minute chaque fois qu'on le dit, et la moitié du pupitre part ailleurs.
    .proposes =
        Une place pour un repère entre les deux : une double barre, un changement de mesure, de tonalité ou de tempo, sinon le
        milieu (au choix de l'auteur). Seul l'auteur sait où la musique tourne.
    .limits =
        La musique de chambre se règle sur les numéros de mesure ; sans un seul repère, ces partitions sont laissées telles
        quelles.

legato-without-slurs = Legato sans liaison
    .finds =
        Le mot legato sur huit notes mobiles ou plus, jusqu'au prochain mot sur le coup d'archet, sans une liaison
        parmi elles ni peu avant. Et un mouvement où aucune partie de cordes n'a de liaison, de signe d'archet, de
        signe sur une note ni de mot sur le coup d'archet, bien que l'une d'elles chante : seize notes ou plus,
        surtout par degrés, et assez lentes pour être liées (dit une seule fois).
    .why =
        Le legato des cordes s'écrit par des liaisons : sans elles chaque note a son archet, et chaque pupitre liera
        comme il veut. Une musique sans liaison a l'air sans faute de liaison, et laisse le travail à faire.
    .proposes =
        Écrire les liaisons, ou dire que chaque note a son coup d'archet (au choix de l'auteur) : de sa main.
    .limits =
        Si des coups d'archet séparés sont voulus, comme dans beaucoup de musique ancienne : un mot ou un signe n'importe où
        dans le mouvement qui parle du coup d'archet vaut réponse. Les liaisons des quatre mesures avant le mot comptent comme
        un modèle qui se poursuit.

lift-in-soft-line = Une levée d'archet qui troue une ligne douce
    .finds =
        Deux liaisons, piano ou plus doux et sans silence entre elles, dont la seconde doit,
        dans le meilleur plan, reprendre le sens de la première en levant l'archet : les signes d'avant et d'après ne
        tombent pas juste par alternance, ou les liaisons n'amènent pas le coup que l'endroit demande, et s'en passer
        coûte bien plus. Une remarque par partie.
    .why =
        Dans une ligne douce et liée la levée s'entend : le son s'arrête, et le suivant recommence. La plupart jouent
        plutôt un tel endroit comme il vient, ou font finir une liaison ailleurs.
    .proposes =
        Ce que l'on ferait pour continuer sans lever l'archet, avec son prix, ou enlever le signe qui ne réussit pas (au choix
        du musicien) ; et le seul changement des liaisons d'avant qui amène le coup d'archet de lui-même à moindre prix (au
        choix de l'auteur).
    .limits =
        Si l'on veut là une respiration. Deux signes pareils côte à côte en demandent une et sont laissés de côté, comme les
        joints entre les phrases.

mark-cannot-be = Un signe d'archet impossible
    .finds =
        Un signe d'archet sur une note où aucun coup ne commence : dans une liaison, sur une note tenue d'avant, en pizzicato, sur
        un silence, sur une note qui n'est pas jouée à l'archet. Aussi deux signes différents au début d'un coup, sauf
        sur une seule note tenue assez longtemps pour changer d'archet. Ce sont les signes que `arcata marks` compte comme contradictoires.
    .why =
        Le signe contredit la liaison ou l'état voisin. Chacun croit l'un des deux.
    .proposes =
        Enlever le signe (sûre, là où rien d'autre ne commence) ; de deux signes, celui qui ne vient pas (au choix du
        musicien).
    .limits =
        Si le signe est juste et la liaison fausse. Plusieurs signes d'un même sens sur une liaison avec points ne font
        qu'expliquer le coup d'archet et sont laissés tels quels.

mark-on-every-note = Un signe d'archet presque à chaque coup
    .finds =
        Des mesures de suite où presque chaque coup porte un signe de tiré ou de poussé, sur une douzaine de coups et plus (D).
        Les signes qui répètent le sens du précédent ne comptent pas : rangées de tirés et paires de poussés sont des effets. Un
        passage dont le premier temps marqué est un poussé va à rebours : les signes disent que c'est voulu, et rien n'est dit.
    .why =
        On lit un signe comme une exception. Où chaque note en a un, l'œil cesse de les lire, celui qui compte échappe, et un autre
        chef de pupitre doit d'abord effacer.
    .proposes =
        Enlever les signes qui viendraient de toute façon (sûre), quand il y en a assez. Sinon ne garder que ceux qui disent
        quelque chose (au choix du musicien), que l'auteur doit choisir.
    .limits =
        Si c'est une étude ou une édition d'étude qui veut chaque coup d'archet montré.

mark-states-the-obvious = Un signe d'archet qui dit l'évidence
    .finds =
        Un tiré ou un poussé imprimé qu'on prendrait de toute façon : il suit sans coupure, l'alternance le donne, aucune rangée
        dans un sens n'y commence ni n'y finit, il ne garantit aucun coup inhabituel (accent, soufflet ou fin contre la règle),
        il n'appartient à aucun effet (une rangée de forts tirés, des poussés vers un fort tiré, les premières fois d'un motif
        répété), et sans lui le meilleur plan est le même. Ce sont les signes que `arcata marks` compte comme évidents, sauf les
        poussés sur le premier temps : ils viennent d'eux-mêmes, mais contre la règle, et le signe dit que c'est voulu.
    .why =
        On lit les signes comme des exceptions. Où une note sur deux en porte un, les rares qui comptent se noient, et un chef de
        pupitre doit ôter les autres avant de préparer la partie.
    .proposes =
        Enlever les signes (sûre : chaque coup d'archet reste tel qu'il est).
    .limits =
        Si une édition d'étude veut chaque coup d'archet marqué. Les signes après des silences, au début et à côté d'un autre
        signe du même sens sont laissés : les musiciens y font vraiment différemment.

marks-contradict = Des signes qui se contredisent
    .finds =
        Deux signes sur une note qui demandent le contraire : tiret avec coin, tiret avec signe de spiccato, point avec coin. Deux
        mots au même endroit qui le font : à la corde avec hors la corde, spiccato ou jeté ; legato avec spiccato, martelé ou
        staccato ; au talon avec à la pointe ; sul ponticello avec sul tasto ; tout tiré avec tout poussé. Le mot legato sur des
        notes avec points et sans liaison (B).
    .why =
        Chacun obéit à l'un des deux, et le pupitre joue les deux jusqu'à ce que quelqu'un demande.
    .proposes =
        Enlever l'un des deux (au choix de l'auteur).
    .limits =
        Lequel des deux était voulu. Un tiret avec un point est un signe à lui seul et est laissé ; de même des points sous
        une liaison avec legato (ils palpitent), deux mots dans un seul texte, qui mènent souvent de l'un à l'autre, et des
        mots pour deux voix d'une portée.

missing-arco = Il manque arco
    .finds =
        Après pizz., sans arco depuis : un trémolo à l'archet ou un signe d'archet (A), ou une liaison sur trois notes
        ou plus : après un silence où l'on pourrait reprendre l'archet (B), ou dans une mesure suivante (C). Aussi
        pizz. redit alors qu'il vaut encore (C).
    .why =
        Ces signes n'ont de sens qu'à l'archet. La moitié du pupitre pincera encore, l'autre prendra l'archet, et la répétition
        s'arrête.
    .proposes =
        Écrire arco à la première note qui montre l'archet (au choix de l'auteur) ; enlever le second pizz. (au choix de
        l'auteur).
    .limits =
        Si c'est le signe qui est l'erreur, et non le mot qui manque. Une liaison peut bien couvrir des notes pincées : elle
        laisse sonner la corde, montre une phrase, ou fait poser la seconde note par la main gauche. C'est pourquoi les
        liaisons de deux notes sont laissées, et toutes celles d'un passage lié dès le mot. De même les notes marquées pour la
        main gauche, et un pizz. entre parenthèses, qui ne fait que rappeler.

mute-change-too-quick = Sourdine mise ou ôtée trop vite
    .finds =
        con sordino ou senza sordino avec moins des trois quarts du silence qu'il faut à la main : 4,5 s pour mettre la sourdine,
        2,5 s pour l'ôter (B) ; pour un musicien seul, sans aucun silence ou moins d'un dixième (A).
    .why =
        Il faut trouver la sourdine, la poser et la presser pendant que l'autre main tient l'archet. Qui n'y arrive pas continue
        sans, ou perd des notes.
    .proposes =
        Faire changer l'un après l'autre les musiciens de chaque lutrin (au choix du musicien) ; donner un silence plus long
        (au choix de l'auteur).
    .limits =
        Les sourdines qui restent sur l'instrument et glissent : il leur faut environ une demi-seconde, et qui écrit pour
        elles règle ainsi le profil. Que le mot soit plus tôt ou plus tard dans le silence n'importe pas : tout le silence
        compte.

nested-slurs = Une liaison dans une autre
    .finds =
        Une liaison pleine qui en contient une ou plusieurs plus courtes, pleines, de sa voix, chacune d'une de ses notes à une
        autre. Les liaisons des petites notes sont des ornements et ne comptent pas, ni une liaison sur deux notes qui partage
        avec une liaison de tenue le bout de celle du dehors, ni une liaison qui joint deux notes de même hauteur : elle est
        mise pour une liaison de tenue.
    .why =
        L'une des deux doit être de phrase, mais elles se ressemblent : on n'apprend qu'en essayant laquelle est l'archet, et dans
        un pupitre plusieurs essaient.
    .proposes =
        Faire de la liaison extérieure une liaison en tirets, de phrase (au choix de l'auteur).
    .limits =
        Si c'est la ligne intérieure qui est l'erreur. L'archet est calculé d'après les liaisons intérieures.

no-tempo = Pas de tempo
    .finds =
        Une partition dont la première note n'a pas de tempo : ni métronome ni mot de tempo, là ou avant (B). Si seule la
        restitution a un tempo que personne ne peut lire, C.
    .why =
        Combien dure un archet, si une note rebondit, si une reprise tient dans un silence : tout ce que fait l'archet dépend du
        tempo. Chaque chiffre de cette revue qui en dépend est alors une supposition.
    .proposes =
        Écrire un tempo (au choix de l'auteur) ; lui seul sait lequel.
    .limits =
        Le tempo. Là où il n'y en a pas, celui qui est supposé est nommé à côté de chaque nombre qui en dépend.

no-time-to-retake = Pas le temps de reprendre l'archet
    .finds =
        Des coups imprimés dans un même sens avec une reprise entre eux, où le silence et ce que la note d'avant peut prêter sont
        plus courts que la reprise. Dans une rangée de trois ou plus chaque note cède la moitié de sa durée ; une paire ne compte
        que là où le meilleur plan reprend et où les deux ne peuvent être accrochées : elles veulent plus d'un archet aux vitesses
        de leur nuance, et la seconde n'est pas une note seule moitié moins longue que la première. La reprise est prise aussi
        courte que possible, d'un coup qui n'a pas pris plus d'archet que sa nuance n'exige.
    .why =
        Pour deux tirés de suite l'archet doit quitter la corde, revenir et se poser. Sans le temps, la première note est écourtée,
        ou la seconde vient tard, ou le pupitre glisse en arrière sur la corde et gratte.
    .proposes =
        Accrocher les deux (au choix du musicien) : rien à écrire, puisque deux signes pareils demandent un accroché aussi
        bien qu'un levé. Alterner (au choix du musicien, là où une suite est imprimée).
    .limits =
        À quelle vitesse ce musicien lève l'archet : 0,15 s sur place et 0,3 s de plus pour un archet entier sont supposés. Un
        levé que rien d'imprimé ne demande n'est pas signalé, même quand le meilleur coup d'archet le fait : neuf quatuors des
        XIXe et XXe siècles avaient 18 endroits pareils en 100 mesures, et un musicien trouve une autre voie. Des accents à la
        suite ne sont pas pris non plus pour des tirés à la suite : on les alterne, sauf si des signes disent autre chose.

note-outlasts-bow = Une note plus longue qu'un archet
    .finds =
        Une note, avec ses liaisons de prolongation, qui dure 1,2 fois l'archet le plus lent de sa nuance ou plus : B pour un
        musicien seul (C jusqu'à 1,3 archet, où elle est seulement étirée), D pour un pupitre. Les pédales ne comptent pas : une
        note de deux mesures ou plus pendant que d'autres parties bougent. Ne compte pas non plus une note seulement étirée,
        sous un point d'orgue, qu'on tient autant qu'on veut, ou avec un diminuendo d'un degré ou plus, où la main épargne
        l'archet.
    .why =
        Un musicien seul doit changer dans la note, et l'on peut entendre où. Un pupitre cache le changement si chacun le fait à un
        autre moment ; rien n'est à écrire, mais il faut le savoir.
    .proposes =
        Dans un pupitre : les musiciens changent à des moments différents (au choix du musicien). Cela n'écrit rien : ils le
        font d'eux-mêmes, et un mot vaudrait jusqu'à ce qu'un autre l'arrête. Pour un seul : couper la note là où le
        changement s'entend le moins (au choix de l'auteur).
    .limits =
        Si un point d'orgue sera tenu plus ou moins du double de la note, et si un soliste veut que le changement s'entende.

on-or-off-string = À la corde ou hors la corde ?
    .finds =
        Le premier endroit d'un morceau où huit coups séparés égaux ou plus, avec points, viennent si vite, et pas plus forts que
        forte, qu'on peut les faire rebondir ou les tenir courts à la corde, quand aucun mot dans aucune partie de cordes ne dit
        lequel (C). Signalé une fois pour tout le morceau.
    .why =
        C'est la première question de la première répétition. Les deux sonnent autrement, se font à d'autres endroits de l'archet,
        et un pupitre ne peut pas faire les deux.
    .proposes =
        Écrire spicc., ou à la corde, au premier de ces endroits, dans chaque partie qui l'a là (au choix de l'auteur). Les
        musiciens suivent à partir de là.
    .limits =
        Ce qui va de soi dans un style, et ce que décidera le premier violon. Un soliste décide seul et n'est pas interrogé.
        Dès qu'un mot à ce sujet se trouve dans la pièce, on tient que l'auteur y a pensé.

out-of-range = Une note hors de l'instrument
    .finds =
        Des notes sous la corde la plus grave (A) ; sous le mi de la contrebasse, où il faut une cinquième corde ou une extension
        (C) ; au-delà du bout de la touche (B).
    .why =
        Elle ne peut se jouer, ou par une partie du pupitre seulement, et l'on demandera que jouer à la place.
    .proposes =
        Rien : une autre note ou un autre instrument, c'est à l'auteur de choisir.
    .limits =
        Une corde accordée plus bas pour la pièce, et jusqu'où monte un soliste. Les harmoniques sont laissés de côté.

page-turn-too-quick = Une tourne sans silence
    .finds =
        Dans une partie séparée (un fichier d'une seule partie) aux pages fixées : une page à tourner qui finit, et la suivante qui
        commence, avec moins de silence qu'il n'en faut pour tourner (3 s). On tourne les pages 1, 3, 5 …, d'après les
        numéros du fichier s'il en a ; les autres sont ouvertes à côté de la suivante. Une note à vide laisse la main gauche libre et
        compte pour moitié ; entre les mouvements on s'arrête, sauf « attacca ».
    .why =
        Un musicien de chaque pupitre s'arrête pour tourner, et la moitié se tait ; un musicien seul s'arrête tout à fait.
    .proposes =
        Finir la page à un silence (au choix de l'auteur) : `arcata parts` cherche les meilleurs endroits.
    .limits =
        Comment les pages sont reliées : une page de titre retourne tout.

parallel-bowed-apart = La même mesure liée autrement
    .finds =
        Une mesure dont les notes reviennent exactement, trois fois ou plus avec les mêmes liaisons et une fois avec d'autres, dans
        une partie : c'est la différente qui est signalée.
    .why =
        On attend que ce qui revient revienne pareil. Une seule liaison différente est presque toujours une faute de copie, et qui a
        appris la mesure la joue comme avant ou trébuche.
    .proposes =
        Donner à la mesure les liaisons des autres (au choix de l'auteur).
    .limits =
        Si le changement est voulu : la dernière fois avant quelque chose de nouveau est souvent liée autrement, et est
        laissée de côté.

part-differs-from-score = Une partie qui diffère de la partition
    .finds =
        Seulement où les parties sont données à côté de la partition (`arcata review SCORE --beside PART...`) : des mesures où une
        partie a d'autres notes, silences ou prolongations que la partition (A), ou d'autres liaisons, signes d'archet, signes,
        nuances ou mots (B), chaque genre dit une fois par partie avec ses endroits ; un autre nombre de mesures, et une partie que
        la partition n'a pas (A).
    .why =
        Le chef dit ce que dit la partition, et le musicien a autre chose devant lui. Chaque endroit arrête une répétition, et
        personne dans la salle ne voit les deux.
    .proposes =
        Rien : lequel des deux est juste, seul l'auteur peut le dire.
    .limits =
        Les répliques, les doigtés et les changements de page appartiennent à la partie et ne sont pas regardés. Les mesures
        sont prises dans l'ordre : là où il en manque une au milieu, tout ce qui suit diffère, et le nombre de mesures est dit
        d'abord. Dans l'exemple, une portée nommée « beside » tient lieu du fichier de la partie.

phrase-mark-as-slur = Un signe de phrase dessiné comme une liaison
    .finds =
        Une liaison pleine que plusieurs indices montrent être de phrase : elle dure bien plus que l'archet le plus lent, contient
        d'autres liaisons, des silences ou des signes d'archet (indices forts), répète une hauteur sans points, ou couvre exactement
        deux, quatre ou huit mesures (indices faibles). Deux indices forts suffisent, ou un fort et deux faibles ; un vent qui
        double la ligne avec la même liaison est signalé aussi.
    .why =
        Une liaison dit aux cordes « un seul archet ». Une ligne de phrase qui ressemble à une liaison est jouée telle quelle, ou
        discutée ; et tout jugement sur l'archet qui s'y appuie est faux.
    .proposes =
        En faire une liaison en tirets, de phrase, qui laisse l'archet libre (au choix de l'auteur).
    .limits =
        Ce qui était voulu : les indices sont pesés, non prouvés. Qui le sait le dit dans le fichier à côté de la partition
        (`arcata aside` avec `--slur phrase` ou `--slur bow`), et l'archet est calculé en conséquence.

pizz-change-too-quick = De l'archet au doigt et retour, trop vite
    .finds =
        pizz. ou arco avec si peu de temps entre la dernière note d'un genre et la première de l'autre que la main ne peut tourner
        l'archet (moins de deux cinquièmes de ce que le profil lui donne : 0,5 s vers le pizzicato, 1 s pour revenir).
    .why =
        On lâchera la dernière note ou l'on entrera tard avec la première. Un pupitre s'en tire en faisant cesser la moitié plus tôt,
        et quelqu'un doit l'ordonner.
    .proposes =
        Faire changer les lutrins à des moments différents (au choix du musicien) ; donner au changement un silence, ou la
        dernière note pincée à la main gauche (au choix de l'auteur).
    .limits =
        Si l'archet reste tout le temps en main, comme beaucoup le tiennent pour une seule note pincée : après une ou deux
        notes pincées, l'archet revient aussi vite que le doigt, et elles sont laissées de côté.

pizz-too-fast = Pizzicato trop rapide
    .finds =
        Six notes pincées ou plus de suite, plus vite qu'un pupitre ne pince : 6 par seconde au violon et à l'alto, 5 au violoncelle,
        4 à la contrebasse.
    .why =
        Le doigt se fatigue et les notes se séparent ; au-delà de sa vitesse, chacun simplifie le passage à sa façon.
    .proposes =
        Partager les notes entre les musiciens d'un lutrin (au choix de l'auteur).
    .limits =
        Deux doigts à tour de rôle, à la façon de la guitare, vont plus vite ; de même un seul musicien qui en a l'habitude.

reentry-without-dynamic = Une entrée sans nuance après un long silence
    .finds =
        Une note d'une partie de cordes après huit mesures entières de silence ou plus dans son mouvement, sans
        nuance, soufflet ni sforzato sur elle, peu après elle ou dans la dernière mesure du silence.
    .why =
        La nuance de la dernière entrée est peut-être une page plus haut, et la musique a continué sans elle. Qui a
        compté si longtemps prend la force de ce qu'il entend, et chacun entend autre chose ; une partie la répète.
    .proposes =
        Écrire la nuance que les autres parties ont à ce moment, quand elles s'accordent (au choix de l'auteur).
    .limits =
        Si une réplique dit la force. Combien de mesures comptent, c'est au musicien de le dire. Les premières entrées
        relèvent de `entry-without-dynamic`.

repeat-comes-back-reversed = Une reprise revient dans l'autre sens
    .finds =
        Une section répétée, ou à laquelle renvoie da capo ou dal segno, dont la fin laisse le musicien, comme ça vient, dans l'autre
        sens qu'au début, sans temps de reprendre l'archet avant le retour (30 ms de trop peu, ou plus). Chaque fin qui ramène est
        regardée à part ; s'il y a sur sa dernière note un point d'orgue ou une respiration, on a tout le temps.
    .why =
        La même impression doit servir aux deux passages. On joue tout le second à l'envers, contre chaque signe de la partie, ou
        l'on invente un coup à la couture, chacun à sa façon.
    .proposes =
        Accrocher la dernière note avant le signe de reprise à la précédente, avec un signe sur les deux (au choix du
        musicien), ou marquer le premier coup d'archet de la section pour que tous recommencent de même (au choix du
        musicien). Le second reste au crayon : il dit aux musiciens que faire, et le temps manque toujours.
    .limits =
        Si la reprise sera faite.

rushed-return = Une note brève doit rattraper un long archet
    .finds =
        Une note seule et brève qui, dans le meilleur plan possible, va tant plus vite que sa nuance ne le veut qu'elle ressort de
        6 dB ou plus, parce que le coup d'avant ou d'après est long.
    .why =
        C'est l'accent non voulu des partitions d'élèves : une levée douce entre deux longues liaisons aboie. Personne n'en veut, et
        aucun signe de nuance ne l'enlève.
    .proposes =
        Accrocher la note brève au coup d'archet d'avant, avec un signe sur les deux (au choix du musicien) ; diviser la
        longue liaison pour que la note brève n'ait pas à tout ramener (au choix de l'auteur).
    .limits =
        Combien le musicien regagne en s'éloignant du chevalet. Le chemin qui peut ne venir que de la grille du calcul n'est
        pas compté à la note. Avec un point, forte ou plus, la note est jetée hors de la corde et doit mordre : elle est
        laissée de côté.

silent-downbeat = Un premier temps qu'aucun pupitre de cordes n'attaque
    .finds =
        Une mesure où commence du nouveau (tempo, mètre, lettre, ou l'entrée de plusieurs vents après un silence) et où aucun
        pupitre de cordes ne commence un coup sur le premier temps, bien qu'un au moins y tienne une note. À un nouveau tempo B,
        sinon C. Aussi quatre mesures ou plus de suite dont personne n'attaque le premier temps (C) ; une mesure où un pupitre,
        en silence sur le premier temps, entre sur un autre donne le pouls et rompt la série. De même un coup qui tombe au même
        endroit de chaque mesure, ou d'une sur deux : une syncope qui continue s'entend comme telle. Une liaison qui commence
        moins d'un temps avant le premier temps et y finit y conduit. Un chiffre de métronome qui ne vaut qu'une mesure est un
        élargissement en chiffres, non un nouveau tempo ; de même celui où mène un accelerando ou un ritardando : il dit jusqu'où
        l'on est arrivé.
    .why =
        Les cordes montrent le temps en changeant d'archet. Si chaque pupitre est lié par-dessus la barre, le nouveau tempo n'est à
        personne, et l'ensemble glisse jusqu'au coup suivant.
    .proposes =
        Faire changer d'archet un pupitre sur le premier temps : couper là la liaison, d'archet ou de tenue, dans la partie où
        cela coûte le moins, celle d'archet avant celle de tenue, une partie intérieure avant une extérieure (au choix de
        l'auteur).
    .limits =
        Si l'effet est voulu (un tempo qui se glisse, un sommet sans temps frappé), et ce que donnera le chef. L'harmonie
        n'est pas lue.

slur-covers-beat = Une liaison sur un temps qui veut être dit
    .finds =
        Une liaison, de prolongation ou non, qui passe une barre où commence un nouveau tempo ou mètre pendant qu'une autre partie y
        commence un coup ; et un sforzato ou un accent vertical, sur un temps fort, sous une liaison qui continue : s'ils ne sont pas
        sur la première note d'un archet.
    .why =
        Ce qu'un archet dit de plus fort est son début. Où la liaison continue, le nouveau tempo ou l'accent reste une impulsion au
        milieu d'un coup, plus faible que le début des autres.
    .proposes =
        Diviser là la liaison (au choix de l'auteur) ; en mots seulement quand cela amène l'accent en poussant, ou un autre
        ennui dans les mesures autour : il faut alors repenser aussi les liaisons d'avant.
    .limits =
        Si l'impulsion à l'intérieur de l'archet est l'effet voulu : là où la même partie le fait en plusieurs endroits, c'est
        dit une fois, avec leur nombre. Une liaison qui finit sur la note y mène, comme un trait vers son but, et est laissée
        de côté. De même les liaisons sur les temps d'une syncope lente, les notes précédées d'un souffle de silence, et les
        ornements.

slur-misses-tie = Une liaison qui manque le bout d'une prolongation
    .finds =
        Une liaison qui finit sur une note prolongée ensuite, ou commence sur une note prolongée d'avant, où aucune autre ne
        commence ou ne finit : la ligne ne couvre qu'un morceau de la note qui sonne. Une remarque par partie, avec tous ses
        endroits (D). Si trois sont dessinées ainsi dans un mouvement, c'est la manière de la page et rien n'est dit. Où deux
        liaisons se rencontrent sur une note prolongée, on demande si un coup d'archet est voulu ou deux : on change sur la note
        prolongée, et le plan aussi (D).
    .why =
        L'archet prend la note entière ; une liaison tracée au mauvais bout fait chercher un changement que personne ne peut faire.
        On la trace jusqu'à la dernière note prolongée, et depuis la première.
    .proposes =
        Mener la fin de la liaison à la dernière note tenue, ou son début à la première (au choix de l'auteur). Là où deux
        liaisons se rejoignent, une seule sur les deux si un seul coup d'archet est voulu (au choix de l'auteur) ; un signe
        d'archet sur la note tenue en dit deux. Dans une chaîne de telles liaisons, c'est dit en mots seulement.
    .limits =
        Rien n'en dépend pour l'archet : le son est le même. Là où deux liaisons se rejoignent, elle ne sait pas ce qui est
        voulu.

slur-outlasts-bow = Une liaison plus longue qu'un archet
    .finds =
        Des notes sous une liaison qui durent ensemble plus que l'archet le plus lent de leur nuance : au moins 1,1 fois, car
        les archets les plus lents sont des chiffres ronds. Jusqu'à 1,3 archet la liaison est étirée (C ; rien si elle décroît
        d'un degré de nuance ou plus, car la main épargne l'archet), jusqu'à 2,5 on changera quelque part (B), au-delà elle n'a
        pu être pensée comme un archet (A).
    .why =
        Le son s'amincit, ou chacun change où son bras s'arrête, et le pupitre en discute. Une liaison dit aux cordes « un seul
        archet » : qui pense une phrase le dise autrement.
    .proposes =
        Diviser la liaison sur les temps les plus forts qui laissent chaque morceau dans un archet (au choix de l'auteur).
        Dans un pupitre, aussi faire changer les musiciens à des moments différents (au choix du musicien) : cela n'écrit
        rien, puisqu'ils le font d'eux-mêmes, et un mot vaudrait jusqu'à ce qu'un autre l'arrête.
    .limits =
        Salle, archet et musicien ; si un pupitre cachera ses changements. Le temps vient du tempo de la partition : s'il n'y
        en a pas, celui qui est supposé est à côté du nombre.

slur-over-change = Un changement de mode de jeu sous une liaison
    .finds =
        pizz., arco, con sordino ou senza sordino après la première note d'une liaison et pas après la dernière.
    .why =
        Une liaison est un archet. On ne peut quitter l'archet pour un pizzicato, ni mettre la sourdine, sans lâcher la corde : la
        liaison ou le mot est mal placé, et il faut deviner lequel.
    .proposes =
        Finir la liaison avant pizz., la commencer à arco, la diviser à un changement de sourdine (au choix de l'auteur).
    .limits =
        Si le mot est seulement trop tôt. Un pizzicato de la main gauche sous une liaison n'est pas un tel changement et est
        laissé de côté.

slur-over-rest = Un silence sous une liaison
    .finds =
        Un silence de la voix même entre la première et la dernière note d'une liaison.
    .why =
        Une liaison est un archet, un silence ôte l'archet de la corde ou l'arrête. Si l'on lève et continue dans le même sens, si
        l'on s'arrête sur la corde ou si l'on change, chacun le devine ; comme signe de phrase, la ligne ne dit rien de l'archet.
    .proposes =
        Finir la liaison avant le silence et en commencer une autre après (au choix de l'auteur) ; en faire une liaison en
        tirets, de phrase (au choix de l'auteur).
    .limits =
        Si un arrêt à l'intérieur d'un coup d'archet est voulu : à côté d'un silence bref (pas plus long que la plus longue de
        ses voisines), un point, un trait vertical ou un tiret le dit, et de tels coups d'archet accrochés sont laissés de
        côté.

slur-skips-string = Une corde sautée dans une liaison
    .finds =
        Deux notes voisines sous une liaison qu'aucun doigté ne met sur la même corde ou sur des cordes voisines, où la première est
        trop brève pour passer une corde sans qu'on l'entende (B). Toute la liaison est doigtée : positions, démanchés pour lesquels
        il y a le temps, cordes à vide.
    .why =
        En chemin l'archet touche la corde du milieu, ou doit être levé au milieu de la liaison.
    .proposes =
        Diviser la liaison entre les deux notes, là où cela arrive une fois ; sinon ne lier que ce qui est sur des cordes
        voisines (au choix de l'auteur).
    .limits =
        Quel doigté prend le musicien. De tels sauts sont possibles : sur 490 dans trente pièces jouées, un cinquième étaient
        en un seul coup d'archet, c'est pourquoi les lents sont laissés de côté.

slurred-stops = Des doubles cordes liées qu'on ne peut joindre
    .finds =
        Deux doubles cordes qui se suivent sous une liaison, où aucun doigté atteignable à temps ne laisse l'archet sur une corde
        commune (B).
    .why =
        L'archet devrait quitter deux cordes et en prendre deux autres : on ne peut que le lever, ou balayer une corde qui n'est pas
        voulue.
    .proposes =
        Diviser la liaison entre les deux (au choix de l'auteur).
    .limits =
        Quel doigté prend le musicien ; elle en cherche un qui les joigne et n'en trouve pas.

slurred-tremolo = Un trémolo lié qui se lit de deux façons
    .finds =
        Un trémolo à une ou deux barres sous une liaison : des notes répétées en abrégé, deux au moins, ou deux notes
        qui alternent avec une liaison qui dépasse leur groupe. Une remarque par partie.
    .why =
        Une ou deux barres sont des notes comptées. Une liaison sur elles peut dire que toutes vont sur un archet, ou
        seulement qu'elles sont une phrase et que chacune a le sien ; dans un pupitre on jouera les deux, et cela se
        verra et s'entendra comme une faute.
    .proposes =
        Écrire le premier groupe en entier avec ses liaisons, et simile ensuite (au choix de l'auteur). Enlever les liaisons,
        si chaque note doit avoir son coup d'archet (au choix de l'auteur). Les deux de la main de l'auteur.
    .limits =
        Lequel est voulu. Trois barres et plus sont un frémissement, où une liaison ne fait que joindre la ligne, et une
        liaison sur deux notes qui alternent est le signe qu'elles vont dans un seul coup d'archet : on les laisse de côté, et
        de même ce qu'explique un mot sur le coup d'archet.

soft-entry-at-frog = Une entrée douce là où l'archet est lourd
    .finds =
        Une entrée sortie du silence, pianissimo ou plus douce, au coup d'archet imprimé, qui commence près du talon dans le
        meilleur coup d'archet du passage (D).
    .why =
        Au talon tout le poids de l'archet et du bras est sur la corde, et un pianissimo commence par un choc. On met les entrées
        douces dans la moitié supérieure, où la baguette se porte seule.
    .proposes =
        La façon la moins chère de prendre l'entrée sur l'autre coup d'archet (au choix du musicien), avec son prix.
    .limits =
        Qu'un musicien d'expérience pose l'archet sans bruit partout. Les entrées avec un accent sont laissées de côté, et
        celles sans signe d'archet : après un silence, les musiciens choisissent d'eux-mêmes, et commencent en poussant.

stands-contradict = Des lutrins d'un même pupitre aux signes opposés
    .finds =
        Deux voix d'une partie, ou deux parties d'un pupitre (premier et deuxième lutrin, a et b), qui jouent le même rythme et
        portent des signes d'archet opposés sur la même note.
    .why =
        Les archets du pupitre se croisent en l'air, et chacun cherche l'erreur dans sa partie.
    .proposes =
        Enlever le signe dans la voix inférieure (au choix de l'auteur).
    .limits =
        Si l'image en miroir est voulue pour son égalité : elle est alors marquée partout, et là où plus de la moitié des
        signes sont opposés, rien n'est dit.

state-never-ends = Une indication (sourdine, sul pont.) jamais levée, ou donnée deux fois
    .finds =
        con sordino, sul ponticello, sul tasto ou col legno redit alors qu'il vaut, avec de la musique entre (C ; B
        pour la sourdine) ; senza sordino redit quand la sourdine est déjà ôtée (B) ; unis. sur deux voix aux notes
        différentes (B) ; sul ponticello ou sul tasto qui n'est pas repris jusqu'à la fin du mouvement, bien que la
        musique continue après un nouveau tempo, après pizz. ou pendant seize mesures jouées (C).
    .why =
        Chaque état doit être repris par quelqu'un. Où il est dit deux fois il manque un mot entre les deux, et qui croit le premier
        joue autrement que qui croit le second.
    .proposes =
        Enlever le second mot (au choix de l'auteur). Écrire ord. là où finit un endroit de la corde, ou sempre (au choix de
        l'auteur, de sa main).
    .limits =
        Lequel des deux mots est l'erreur. Un mot entre parenthèses rappelle et est laissé de côté. Chaque mouvement commence
        ordinaire : une sourdine qui reste jusqu'à la fin n'a besoin d'aucun mot et n'est pas signalée ; ni un endroit de la
        corde pour un dernier passage. Les divisions sont souvent redites à chaque endroit, et laissées de côté.

stop-held-too-long = Trois ou quatre cordes à tenir ensemble
    .finds =
        Un accord sur trois ou quatre cordes écrit plus long que les cordes ne peuvent sonner ensemble, au-dessous de forte, où
        l'archet ne peut presser trois cordes (B) ; sans signe qu'il faille le briser.
    .why =
        Un archet repose sur deux cordes. Trois sonnent ensemble un instant, et seulement fort ; chacun choisit ensuite les deux
        qu'il tient.
    .proposes =
        Écrire quelles deux cordes sont tenues, les plus graves en petites notes ou l'accord brisé (au choix de l'auteur) : en
        mots seulement, puisque cela change les notes.
    .limits =
        Que l'accord se veut brisé et que tous le savent, comme dans la musique ancienne : y mettre la règle de côté.

stop-unplayable = Des notes qu'aucune main n'arrête ensemble
    .finds =
        Deux à quatre notes sur une hampe, ou de deux voix pour un seul musicien, qui ne tiennent pas sur des cordes voisines dans
        une main : dans une partie soliste (A) ; dans un pupitre, qui peut diviser de lui-même (B). Aussi cinq notes et plus.
    .why =
        Il faut laisser une note ou briser l'accord, et chacun choisit seul ; un pupitre demandera qui joue quoi.
    .proposes =
        Dans un pupitre, écrire div. (au choix de l'auteur). Dans une partie de soliste, rien : quelle note peut tomber, c'est
        à l'auteur de le dire.
    .limits =
        La grandeur de la main, qui est un réglage du profil, et une corde accordée autrement. Les harmoniques sont laissés de
        côté, et les accords qui en ont. Qu'un accord puisse être pris ne le fait pas sonner.

stroke-out-of-speed = Un coup d'archet nommé à une vitesse qu'il n'a pas
    .finds =
        Quatre coups séparés égaux ou plus sous un mot qui dit comment les faire, nettement plus vite ou plus lentement que ce coup
        ne le peut (B) : martelé trop vite pour que l'archet s'arrête et morde ; spiccato, ou hors la corde, plus vite qu'aucun archet
        ne rebondit ; détaché, ou à la corde, plus vite que l'instrument ne parle ; sautillé trop lent pour que l'archet rebondisse
        de lui-même.
    .why =
        Il faut renoncer au mot ou au tempo, et un pupitre renonce aux deux.
    .proposes =
        Pour un sautillé trop lent, écrire plutôt spiccato ; pour un martelé trop rapide, enlever le mot (au choix de
        l'auteur). Pour ce qu'aucun archet ne fait, moins de coups d'archet : des liaisons par deux (au choix de l'auteur).
    .limits =
        Où, entre spiccato et sautillé, un archet commence à rebondir de lui-même : spiccato se dit des deux, et est pris
        ainsi. Un spiccato lent est un coup d'archet levé et un détaché lent est large ; ni l'un ni l'autre n'est signalé. Un
        mot vaut jusqu'à un autre sur le coup d'archet, arco, pizz. ou ord. Un dixième de plus que la limite est admis.

swell-against-bow = Un soufflet contre l'archet
    .finds =
        Un long coup, sur presque tout l'archet, qui croît en tirant ou décroît en poussant, d'un degré de nuance ou plus, dans
        le meilleur plan possible. Le soufflet est celui du coup : s'il commence avant ou continue après, plusieurs coups le
        font, et si le contraire lui répond dans le même coup, c'est la main.
    .why =
        Le poids de l'archet sur la corde diminue du talon à la pointe : laissé à lui-même, un tiré décroît et un poussé croît. Là
        contre la main doit presser, et un long soufflet manque d'archet ou de son.
    .proposes =
        Prendre le coup d'archet dans l'autre sens par un début, un accroché ou une reprise (au choix du musicien), avec son
        prix, dans le fichier en signes d'archet ; changer d'archet à l'intérieur du soufflet (au choix de l'auteur) ; ou le
        seul changement des liaisons d'avant qui amène l'autre sens de lui-même à moindre prix (au choix de l'auteur).
    .limits =
        Point de contact et pression : les bons musiciens font tout soufflet sur tout coup d'archet, jusqu'à un certain point.
        C'est pourquoi les soufflets brefs sont laissés de côté.

thrown-count = Trop pour un seul jet
    .finds =
        Un groupe de notes sous une liaison qu'un mot veut jetées (gettato, jeté, ricochet), et qui a plus de notes qu'un jet n'en
        tient, ou vient plus lentement ou plus vite qu'un archet jeté ne rebondit (B).
    .why =
        On laisse tomber l'archet une fois et il compte seul. Après quelques rebonds il reste sur la corde ; plus lentement, chaque
        note doit être posée, ce qui est un autre coup et s'entend.
    .proposes =
        Diviser un groupe trop long (au choix de l'auteur). Demander un autre coup d'archet quand la vitesse ne va pas (au
        choix de l'auteur) : lui seul sait quel son il voulait.
    .limits =
        Ce que peut un soliste : on jette des groupes de dix et plus dans des pièces brillantes. Un groupe sans points sous sa
        liaison n'est pas regardé ; un mot vaut jusqu'à un autre sur le coup d'archet, arco, pizz. ou ord.

tie-or-slur = Une liaison au lieu d'une prolongation, ou l'inverse
    .finds =
        Une liaison de tenue vers une autre hauteur (A) ; une liaison sur deux notes voisines d'une seule hauteur et rien
        d'autre, sans points, tirets ou accents (B, toutes celles d'une partie ensemble : beaucoup y pensent un pouls, et ne le
        disent nulle part).
    .why =
        Les deux lignes se ressemblent sur la page. Une liaison sur une hauteur sans points peut être une note tenue ou deux notes
        pulsées dans un archet ; une prolongation vers une autre hauteur est sûrement une liaison. Chacun décide seul, et le pupitre
        n'est pas ensemble.
    .proposes =
        Pour une même hauteur : joindre les notes par une liaison de tenue, ou mettre des tirets sur les deux pour une
        pulsation dans un coup d'archet (au choix de l'auteur). Pour deux hauteurs : écrire une liaison (au choix de
        l'auteur).
    .limits =
        Laquelle des deux était voulue. Les liaisons sur une même hauteur avec un changement de corde ou de doigt écrit dessus
        disent ce changement, et sont laissées de côté ; de même les notes avec un tremolo ou un ornement, et les petites
        notes. De même deux notes inégales qui remplissent un temps, ou une valeur simple, dès son début : une note tenue
        s'écrirait en une, et les deux sont un rythme.

winds-phrase-apart = Des vents qui phrasent autrement que les cordes qu'ils doublent
    .finds =
        Une partie qui n'est pas à archet et une partie de cordes sur une même ligne, à l'unisson ou à l'octave,
        quatre mesures ou plus, liées pareil sauf une liaison (C) ou quelques-unes (D) : signalé une fois par paire de
        parties, et une fois où plusieurs paires diffèrent au même endroit.
    .why =
        La liaison d'un vent est de langue et de souffle, celle d'une corde est un archet ; elles n'ont pas à
        s'accorder, et souvent ne le doivent pas. Où presque toutes s'accordent, les deux disent une seule phrase, et
        une liaison autre est le plus souvent une faute de copie.
    .proposes =
        Rien : c'est dit pour être regardé.
    .limits =
        Laquelle des deux est voulue. Là où un cinquième des liaisons ou plus diffèrent, les deux parties respirent et mènent
        l'archet chacune à sa façon, et rien n'est dit ; ni là où les cordes pincent ou jouent un tremolo, ou quand l'une des
        parties n'a pas de liaisons.
