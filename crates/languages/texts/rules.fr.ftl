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

bar-comes-out-odd = Une mesure qui tombe à l'envers
    .finds =
        La même mesure, rythme et liaisons pareils, quatre fois ou plus de suite avec un nombre impair de coups d'archet : comme
        ça vient, elle commence chaque fois sur l'autre sens, et même dans les meilleurs coups d'archet c'est ainsi, ou bien il
        faut chaque fois accrocher ou reprendre. Va comme ça vient ce qui n'a pas de forme à montrer (cinq coups égaux ou plus,
        trois liaisons égales, une note répétée dans toute la mesure), ce qui ne veut pas son poids sur le premier coup (une
        syncope par-dessus le milieu de la mesure, un accent ailleurs), et les mesures de moins d'une seconde.
    .why =
        Le motif sonne d'une façon en tirant et d'une autre en poussant ; ce qui est écrit pareil sort tour à tour de deux façons.

beat-on-up-bow = Un temps fort vient en poussé
    .finds =
        Un temps avec accent, accord ou montée subite qui tombe en poussé même dans le meilleur plan possible, sans que le poussé
        soit imprimé.
    .why =
        La main a son poids au talon et le donne en descendant. Un accent en poussé se joue, mais plus léger et plus tard que
        l'auteur ne l'entend ; le pupitre demandera l'autre sens.

bow-drift = Un motif emporte l'archet vers un bout
    .finds =
        Un motif de coups d'archet qui vient au moins trois fois de suite sans silence, et dont les tirés et les poussés sont si
        inégaux que, joué comme ça vient à la vitesse que veut la nuance, il emporte l'archet de plus de la moitié de sa longueur
        vers un bout.
    .why =
        Trois notes liées et une seule, encore et encore : chaque liaison prend plus d'archet que la note seule n'en rend. Le bras
        finit à un bout où le passage ne sonne pas, ou chaque note seule ressort parce qu'elle court.

broken-slur = Une liaison à un seul bout
    .finds =
        Une liaison qui commence et ne finit jamais, qui finit sans avoir commencé, ou posée sur une seule note. Une liaison
        suspendue à une barre de reprise ou dans une fin est complète pour qui joue, et ne compte pas. Une seule dans une partie
        est une faute (A) ; plusieurs se sont perdues entre deux logiciels, et la partie est à relire (B).
    .why =
        Le musicien voit une ligne vers rien et ne sait pas où l'archet change. Ces bouts restent le plus souvent d'une correction,
        et chaque passage d'un logiciel à l'autre les multiplie.

chord-or-divisi = Un accord pour un pupitre : entier, ou divisé ?
    .finds =
        Dans la partie d'un pupitre, un accord ou deux voix à la fois sans que div., non div. ou unis. soit dit : signalé une fois
        par partie, au premier, avec le nombre des autres.
    .why =
        La moitié divisera et l'autre jouera des doubles cordes, deux fois plus fort sur les fausses notes ; la première question
        de la répétition est toujours la même.

chords-too-close = Accords en tirant trop rapprochés
    .finds =
        Deux accords de trois ou quatre cordes l'un après l'autre, tous deux en tirant par signe ou par mot, avec moins de temps du
        premier au second qu'il n'en faut pour briser le premier, le laisser parler et ramener l'archet (B).
    .why =
        Un accord se brise des cordes graves vers les aiguës, et cela aussi prend du temps avant que l'archet puisse partir. Sans
        lui, il manque au premier accord ses notes hautes, ou le second arrive tard.

countable-tremolo = Un trémolo assez lent pour être compté
    .finds =
        Trémolo écrit avec trois barres ou plus, auquel le tempo donne si peu de coups par seconde qu'on les comptera comme des
        notes (B), sans aucun mot qui dise trémolo. Une remarque par partie. Là où un autre pupitre a en même temps un trémolo à
        trois barres, c'est une couleur de l'accord, et personne ne compte.
    .why =
        Trois barres sont des triples croches dans un tempo lent et un frémissement dans un tempo vif. Où les triples sont lentes,
        la moitié du pupitre les joue et l'autre frémit.

crossing-slurs = Des liaisons qui se croisent
    .finds =
        Deux liaisons d'une voix, dont la seconde commence sous la première et finit après elle.
    .why =
        Un archet ne peut être dans deux coups à la fois : personne ne peut dire où il change. Chacun décide autrement, et le
        pupitre demande.

dots-on-pizzicato = Des points sur des notes pincées
    .finds =
        Points, coins ou signes de spiccato sur des notes pincées qui se suivent sans silence (D), une remarque par partie.
    .why =
        Une note pincée est brève de toute façon. Des points restés d'une version à l'archet font chercher l'arco qu'on aurait
        manqué.

dots-under-slur = Des points sous une liaison, lisibles de deux façons
    .finds =
        Trois notes ou plus, de hauteur changeante, avec des points sous une liaison, à une vitesse où deux coups d'archet répondent
        au signe, sans un mot qui dise lequel (B) : portato ou staccato lié, où les notes ne sont ni lentes ni vives ; staccato lié
        ou jeté, où elles sont vives et assez peu pour un jet. La phrase dit lequel est plus probable à cette vitesse. Une remarque
        par partie et par paire de lectures.
    .why =
        Les trois coups partagent un signe. Dans l'un l'archet s'arrête à peine, dans l'autre après chaque note, dans le troisième
        il quitte la corde ; un pupitre à qui l'on n'a rien dit en joue deux à la fois.

doubling-bowed-apart = Une ligne doublée avec deux coups d'archet
    .finds =
        Deux parties de cordes qui jouent une même ligne, à l'unisson ou à l'octave, deux mesures ou plus, où certaines notes sont
        liées dans l'une et pas dans l'autre, ou portent des signes d'archet opposés. Les contrebasses peuvent changer plus souvent
        que ceux qu'elles doublent.
    .why =
        Qui joue une même ligne regarde l'archet de l'autre. Où presque tout est lié pareil et quelques endroits non, l'une des
        parties a une faute, et la question coûte du temps.

doubling-marked-apart = Une ligne doublée avec deux sortes de signes
    .finds =
        Deux parties de cordes qui jouent une même ligne, à l'unisson ou à l'octave, deux mesures ou plus, où des
        points, des accents, des tirets ou des sforzati ne sont que dans l'une sur certaines notes, bien que les deux
        en portent à cet endroit ; ou dont la nuance, la sourdine, le pizz. ou la place sur la corde diffèrent pour la
        moindre part. Les liaisons et les signes d'archet relèvent d'une autre règle.
    .why =
        Qui joue une même ligne écoute l'autre. Où presque tout est marqué pareil et quelques notes non, une partie
        joue court ce que l'autre tient, ou doux ce que l'autre a fort, et quelqu'un demandera ce qui est voulu.

effect-marked-again = Un effet marqué encore et encore
    .finds =
        Un motif qui vient cinq fois ou plus de suite avec les mêmes signes d'archet, dont certains font effet : des poussés
        vers un fort tiré, une reprise d'archet, un coup contre l'alternance. Les signes à partir de la troisième fois sont de
        trop (D).
    .why =
        Deux fois apprennent le motif ; on le continue. Ce qui reste marqué semble chaque fois un changement, et encombre la partie.

ending-on-up-bow = Une phrase finit en poussé
    .finds =
        La dernière note ou le dernier accord d'une phrase, sur un temps, attaqués à part, forte ou plus et pas trop brefs, qui
        ne croissent ni ne s'éteignent, et qui finissent en poussé dans le meilleur plan possible. Une phrase finit avant un
        long silence, à une double barre avec un nouveau tempo qui ne commence pas aussitôt en tirant, et à la fin ; non là où une respiration avant la note libère
        l'archet.
    .why =
        Un tiré conclut : il peut résonner et s'éteindre. Un poussé finit au talon, où le son s'arrête net ou enfle.

entry-without-dynamic = Une entrée sans nuance
    .finds =
        Une partie dont la première entrée n'a aucune nuance, ni sur sa première note ni avant. Si aucune partie n'en a dans toute
        la partition, une seule remarque le dit.
    .why =
        On ne sait pas avec quelle force commencer, et la nuance décide aussi de l'archet qu'une note reçoit. C'est la première
        question de toute première répétition.

landmarks-too-far = Des repères trop éloignés
    .finds =
        Dans la musique pour pupitres : d'une lettre à l'autre, jusqu'à la première, ou de la dernière à la fin, plus de mesures
        qu'on n'aime compter (C, une remarque pour la partition). Le début d'un mouvement est aussi un repère. En musique de
        chambre, où l'on dit le numéro de la mesure, seulement s'il y a des lettres et qu'une partie compte entre-temps plus
        de huit mesures de silence. Mesures sans numéros (C).
    .why =
        « Quarante et un avant D » coûte une minute chaque fois qu'on le dit, et la moitié du pupitre part ailleurs.

legato-without-slurs = Legato sans liaison
    .finds =
        Le mot legato sur huit notes mobiles ou plus, jusqu'au prochain mot sur le coup d'archet, sans une liaison
        parmi elles ni peu avant. Et un mouvement où aucune partie de cordes n'a de liaison, de signe d'archet, de
        signe sur une note ni de mot sur le coup d'archet, bien que l'une d'elles chante : seize notes ou plus,
        surtout par degrés, et assez lentes pour être liées (dit une seule fois).
    .why =
        Le legato des cordes s'écrit par des liaisons : sans elles chaque note a son archet, et chaque pupitre liera
        comme il veut. Une musique sans liaison a l'air sans faute de liaison, et laisse le travail à faire.

lift-in-soft-line = Une levée d'archet qui troue une ligne douce
    .finds =
        Deux liaisons, piano ou plus doux et sans silence entre elles, dont la seconde doit,
        dans le meilleur plan, reprendre le sens de la première en levant l'archet : les signes d'avant et d'après ne
        tombent pas juste par alternance, ou les liaisons n'amènent pas le coup que l'endroit demande, et s'en passer
        coûte bien plus. Une remarque par partie.
    .why =
        Dans une ligne douce et liée la levée s'entend : le son s'arrête, et le suivant recommence. La plupart jouent
        plutôt un tel endroit comme il vient, ou font finir une liaison ailleurs.

mark-cannot-be = Un signe d'archet impossible
    .finds =
        Un signe d'archet sur une note où aucun coup ne commence : dans une liaison, sur une note tenue d'avant, en pizzicato, sur
        un silence, sur une note qui n'est pas jouée à l'archet. Aussi deux signes différents au début d'un coup, sauf
        sur une seule note tenue assez longtemps pour changer d'archet. Ce sont les signes que `arcata marks` compte comme contradictoires.
    .why =
        Le signe contredit la liaison ou l'état voisin. Chacun croit l'un des deux.

mark-on-every-note = Un signe d'archet presque à chaque coup
    .finds =
        Des mesures de suite où presque chaque coup porte un signe de tiré ou de poussé, sur une douzaine de coups et plus (D).
        Les signes qui répètent le sens du précédent ne comptent pas : rangées de tirés et paires de poussés sont des effets. Un
        passage dont le premier temps marqué est un poussé va à rebours : les signes disent que c'est voulu, et rien n'est dit.
    .why =
        On lit un signe comme une exception. Où chaque note en a un, l'œil cesse de les lire, celui qui compte échappe, et un autre
        chef de pupitre doit d'abord effacer.

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

marks-contradict = Des signes qui se contredisent
    .finds =
        Deux signes sur une note qui demandent le contraire : tiret avec coin, tiret avec signe de spiccato, point avec coin. Deux
        mots au même endroit qui le font : à la corde avec hors la corde, spiccato ou jeté ; legato avec spiccato, martelé ou
        staccato ; au talon avec à la pointe ; sul ponticello avec sul tasto ; tout tiré avec tout poussé. Le mot legato sur des
        notes avec points et sans liaison (B).
    .why =
        Chacun obéit à l'un des deux, et le pupitre joue les deux jusqu'à ce que quelqu'un demande.

missing-arco = Il manque arco
    .finds =
        Après pizz., sans arco depuis : un trémolo à l'archet ou un signe d'archet (A), ou une liaison sur trois notes
        ou plus : après un silence où l'on pourrait reprendre l'archet (B), ou dans une mesure suivante (C). Aussi
        pizz. redit alors qu'il vaut encore (C).
    .why =
        Ces signes n'ont de sens qu'à l'archet. La moitié du pupitre pincera encore, l'autre prendra l'archet, et la répétition
        s'arrête.

mute-change-too-quick = Sourdine mise ou ôtée trop vite
    .finds =
        con sordino ou senza sordino avec moins des trois quarts du silence qu'il faut à la main : 4,5 s pour mettre la sourdine,
        2,5 s pour l'ôter (B) ; pour un musicien seul, sans aucun silence ou moins d'un dixième (A).
    .why =
        Il faut trouver la sourdine, la poser et la presser pendant que l'autre main tient l'archet. Qui n'y arrive pas continue
        sans, ou perd des notes.

nested-slurs = Une liaison dans une autre
    .finds =
        Une liaison pleine qui en contient une ou plusieurs plus courtes, pleines, de sa voix, chacune d'une de ses notes à une
        autre. Les liaisons des petites notes sont des ornements et ne comptent pas, ni une liaison sur deux notes qui partage
        avec une liaison de tenue le bout de celle du dehors, ni une liaison qui joint deux notes de même hauteur : elle est
        mise pour une liaison de tenue.
    .why =
        L'une des deux doit être de phrase, mais elles se ressemblent : on n'apprend qu'en essayant laquelle est l'archet, et dans
        un pupitre plusieurs essaient.

no-tempo = Pas de tempo
    .finds =
        Une partition dont la première note n'a pas de tempo : ni métronome ni mot de tempo, là ou avant (B). Si seule la
        restitution a un tempo que personne ne peut lire, C.
    .why =
        Combien dure un archet, si une note rebondit, si une reprise tient dans un silence : tout ce que fait l'archet dépend du
        tempo. Chaque chiffre de cette revue qui en dépend est alors une supposition.

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

on-or-off-string = À la corde ou hors la corde ?
    .finds =
        Le premier endroit d'un morceau où huit coups séparés égaux ou plus, avec points, viennent si vite, et pas plus forts que
        forte, qu'on peut les faire rebondir ou les tenir courts à la corde, quand aucun mot dans aucune partie de cordes ne dit
        lequel (C). Signalé une fois pour tout le morceau.
    .why =
        C'est la première question de la première répétition. Les deux sonnent autrement, se font à d'autres endroits de l'archet,
        et un pupitre ne peut pas faire les deux.

out-of-range = Une note hors de l'instrument
    .finds =
        Des notes sous la corde la plus grave (A) ; sous le mi de la contrebasse, où il faut une cinquième corde ou une extension
        (C) ; au-delà du bout de la touche (B).
    .why =
        Elle ne peut se jouer, ou par une partie du pupitre seulement, et l'on demandera que jouer à la place.

page-turn-too-quick = Une tourne sans silence
    .finds =
        Dans une partie séparée (un fichier d'une seule partie) aux pages fixées : une page à tourner qui finit, et la suivante qui
        commence, avec moins de silence qu'il n'en faut pour tourner (3 s). On tourne les pages 1, 3, 5 …, d'après les
        numéros du fichier s'il en a ; les autres sont ouvertes à côté de la suivante. Une note à vide laisse la main gauche libre et
        compte pour moitié ; entre les mouvements on s'arrête, sauf « attacca ».
    .why =
        Un musicien de chaque pupitre s'arrête pour tourner, et la moitié se tait ; un musicien seul s'arrête tout à fait.

parallel-bowed-apart = La même mesure liée autrement
    .finds =
        Une mesure dont les notes reviennent exactement, trois fois ou plus avec les mêmes liaisons et une fois avec d'autres, dans
        une partie : c'est la différente qui est signalée.
    .why =
        On attend que ce qui revient revienne pareil. Une seule liaison différente est presque toujours une faute de copie, et qui a
        appris la mesure la joue comme avant ou trébuche.

part-differs-from-score = Une partie qui diffère de la partition
    .finds =
        Seulement où les parties sont données à côté de la partition (`arcata review SCORE --beside PART...`) : des mesures où une
        partie a d'autres notes, silences ou prolongations que la partition (A), ou d'autres liaisons, signes d'archet, signes,
        nuances ou mots (B), chaque genre dit une fois par partie avec ses endroits ; un autre nombre de mesures, et une partie que
        la partition n'a pas (A).
    .why =
        Le chef dit ce que dit la partition, et le musicien a autre chose devant lui. Chaque endroit arrête une répétition, et
        personne dans la salle ne voit les deux.

phrase-mark-as-slur = Un signe de phrase dessiné comme une liaison
    .finds =
        Une liaison pleine que plusieurs indices montrent être de phrase : elle dure bien plus que l'archet le plus lent, contient
        d'autres liaisons, des silences ou des signes d'archet (indices forts), répète une hauteur sans points, ou couvre exactement
        deux, quatre ou huit mesures (indices faibles). Deux indices forts suffisent, ou un fort et deux faibles ; un vent qui
        double la ligne avec la même liaison est signalé aussi.
    .why =
        Une liaison dit aux cordes « un seul archet ». Une ligne de phrase qui ressemble à une liaison est jouée telle quelle, ou
        discutée ; et tout jugement sur l'archet qui s'y appuie est faux.

pizz-change-too-quick = De l'archet au doigt et retour, trop vite
    .finds =
        pizz. ou arco avec si peu de temps entre la dernière note d'un genre et la première de l'autre que la main ne peut tourner
        l'archet (moins de deux cinquièmes de ce que le profil lui donne : 0,5 s vers le pizzicato, 1 s pour revenir).
    .why =
        On lâchera la dernière note ou l'on entrera tard avec la première. Un pupitre s'en tire en faisant cesser la moitié plus tôt,
        et quelqu'un doit l'ordonner.

pizz-too-fast = Pizzicato trop rapide
    .finds =
        Six notes pincées ou plus de suite, plus vite qu'un pupitre ne pince : 6 par seconde au violon et à l'alto, 5 au violoncelle,
        4 à la contrebasse.
    .why =
        Le doigt se fatigue et les notes se séparent ; au-delà de sa vitesse, chacun simplifie le passage à sa façon.

reentry-without-dynamic = Une entrée sans nuance après un long silence
    .finds =
        Une note d'une partie de cordes après huit mesures entières de silence ou plus dans son mouvement, sans
        nuance, soufflet ni sforzato sur elle, peu après elle ou dans la dernière mesure du silence.
    .why =
        La nuance de la dernière entrée est peut-être une page plus haut, et la musique a continué sans elle. Qui a
        compté si longtemps prend la force de ce qu'il entend, et chacun entend autre chose ; une partie la répète.

repeat-comes-back-reversed = Une reprise revient dans l'autre sens
    .finds =
        Une section répétée, ou à laquelle renvoie da capo ou dal segno, dont la fin laisse le musicien, comme ça vient, dans l'autre
        sens qu'au début, sans temps de reprendre l'archet avant le retour (30 ms de trop peu, ou plus). Chaque fin qui ramène est
        regardée à part ; s'il y a sur sa dernière note un point d'orgue ou une respiration, on a tout le temps.
    .why =
        La même impression doit servir aux deux passages. On joue tout le second à l'envers, contre chaque signe de la partie, ou
        l'on invente un coup à la couture, chacun à sa façon.

rushed-return = Une note brève doit rattraper un long archet
    .finds =
        Une note seule et brève qui, dans le meilleur plan possible, va tant plus vite que sa nuance ne le veut qu'elle ressort de
        6 dB ou plus, parce que le coup d'avant ou d'après est long.
    .why =
        C'est l'accent non voulu des partitions d'élèves : une levée douce entre deux longues liaisons aboie. Personne n'en veut, et
        aucun signe de nuance ne l'enlève.

silent-downbeat = Un premier temps qu'aucun pupitre de cordes n'attaque
    .finds =
        Une mesure où commence du nouveau (tempo, mètre, lettre, ou l'entrée de plusieurs vents après un silence) et où aucun
        pupitre de cordes ne commence un coup sur le premier temps, bien qu'un au moins y tienne une note. À un nouveau tempo B,
        sinon C. Aussi quatre mesures ou plus de suite dont personne n'attaque le premier temps (C) ; une mesure où un pupitre,
        en silence sur le premier temps, entre sur un autre donne le pouls et rompt la série. De même un coup qui tombe au même
        endroit de chaque mesure, ou d'une sur deux : une syncope qui continue s'entend comme telle. Une liaison qui commence
        moins d'un temps avant le premier temps et y finit y conduit. Un chiffre de métronome qui ne vaut qu'une mesure est un
        élargissement en chiffres, non un nouveau tempo.
    .why =
        Les cordes montrent le temps en changeant d'archet. Si chaque pupitre est lié par-dessus la barre, le nouveau tempo n'est à
        personne, et l'ensemble glisse jusqu'au coup suivant.

slur-covers-beat = Une liaison sur un temps qui veut être dit
    .finds =
        Une liaison, de prolongation ou non, qui passe une barre où commence un nouveau tempo ou mètre pendant qu'une autre partie y
        commence un coup ; et un sforzato ou un accent vertical, sur un temps fort, sous une liaison qui continue : s'ils ne sont pas
        sur la première note d'un archet.
    .why =
        Ce qu'un archet dit de plus fort est son début. Où la liaison continue, le nouveau tempo ou l'accent reste une impulsion au
        milieu d'un coup, plus faible que le début des autres.

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

slur-outlasts-bow = Une liaison plus longue qu'un archet
    .finds =
        Des notes sous une liaison qui durent ensemble plus que l'archet le plus lent de leur nuance : au moins 1,1 fois, car
        les archets les plus lents sont des chiffres ronds. Jusqu'à 1,3 archet la liaison est étirée (C ; rien si elle décroît
        d'un degré de nuance ou plus, car la main épargne l'archet), jusqu'à 2,5 on changera quelque part (B), au-delà elle n'a
        pu être pensée comme un archet (A).
    .why =
        Le son s'amincit, ou chacun change où son bras s'arrête, et le pupitre en discute. Une liaison dit aux cordes « un seul
        archet » : qui pense une phrase le dise autrement.

slur-over-change = Un changement de mode de jeu sous une liaison
    .finds =
        pizz., arco, con sordino ou senza sordino après la première note d'une liaison et pas après la dernière.
    .why =
        Une liaison est un archet. On ne peut quitter l'archet pour un pizzicato, ni mettre la sourdine, sans lâcher la corde : la
        liaison ou le mot est mal placé, et il faut deviner lequel.

slur-over-rest = Un silence sous une liaison
    .finds =
        Un silence de la voix même entre la première et la dernière note d'une liaison.
    .why =
        Une liaison est un archet, un silence ôte l'archet de la corde ou l'arrête. Si l'on lève et continue dans le même sens, si
        l'on s'arrête sur la corde ou si l'on change, chacun le devine ; comme signe de phrase, la ligne ne dit rien de l'archet.

slur-skips-string = Une corde sautée dans une liaison
    .finds =
        Deux notes voisines sous une liaison qu'aucun doigté ne met sur la même corde ou sur des cordes voisines, où la première est
        trop brève pour passer une corde sans qu'on l'entende (B). Toute la liaison est doigtée : positions, démanchés pour lesquels
        il y a le temps, cordes à vide.
    .why =
        En chemin l'archet touche la corde du milieu, ou doit être levé au milieu de la liaison.

slurred-stops = Des doubles cordes liées qu'on ne peut joindre
    .finds =
        Deux doubles cordes qui se suivent sous une liaison, où aucun doigté atteignable à temps ne laisse l'archet sur une corde
        commune (B).
    .why =
        L'archet devrait quitter deux cordes et en prendre deux autres : on ne peut que le lever, ou balayer une corde qui n'est pas
        voulue.

slurred-tremolo = Un trémolo lié qui se lit de deux façons
    .finds =
        Un trémolo à une ou deux barres sous une liaison : des notes répétées en abrégé, deux au moins, ou deux notes
        qui alternent avec une liaison qui dépasse leur groupe. Une remarque par partie.
    .why =
        Une ou deux barres sont des notes comptées. Une liaison sur elles peut dire que toutes vont sur un archet, ou
        seulement qu'elles sont une phrase et que chacune a le sien ; dans un pupitre on jouera les deux, et cela se
        verra et s'entendra comme une faute.

soft-entry-at-frog = Une entrée douce là où l'archet est lourd
    .finds =
        Une entrée sortie du silence, pianissimo ou plus douce, au coup d'archet imprimé, qui commence près du talon dans le
        meilleur coup d'archet du passage (D).
    .why =
        Au talon tout le poids de l'archet et du bras est sur la corde, et un pianissimo commence par un choc. On met les entrées
        douces dans la moitié supérieure, où la baguette se porte seule.

stands-contradict = Des lutrins d'un même pupitre aux signes opposés
    .finds =
        Deux voix d'une partie, ou deux parties d'un pupitre (premier et deuxième lutrin, a et b), qui jouent le même rythme et
        portent des signes d'archet opposés sur la même note.
    .why =
        Les archets du pupitre se croisent en l'air, et chacun cherche l'erreur dans sa partie.

state-never-ends = Une indication (sourdine, sul pont.) jamais levée, ou donnée deux fois
    .finds =
        con sordino, sul ponticello, sul tasto ou col legno redit alors qu'il vaut, avec de la musique entre (C ; B
        pour la sourdine) ; senza sordino redit quand la sourdine est déjà ôtée (B) ; unis. sur deux voix aux notes
        différentes (B) ; sul ponticello ou sul tasto qui n'est pas repris jusqu'à la fin du mouvement, bien que la
        musique continue après un nouveau tempo, après pizz. ou pendant seize mesures jouées (C).
    .why =
        Chaque état doit être repris par quelqu'un. Où il est dit deux fois il manque un mot entre les deux, et qui croit le premier
        joue autrement que qui croit le second.

stop-held-too-long = Trois ou quatre cordes à tenir ensemble
    .finds =
        Un accord sur trois ou quatre cordes écrit plus long que les cordes ne peuvent sonner ensemble, au-dessous de forte, où
        l'archet ne peut presser trois cordes (B) ; sans signe qu'il faille le briser.
    .why =
        Un archet repose sur deux cordes. Trois sonnent ensemble un instant, et seulement fort ; chacun choisit ensuite les deux
        qu'il tient.

stop-unplayable = Des notes qu'aucune main n'arrête ensemble
    .finds =
        Deux à quatre notes sur une hampe, ou de deux voix pour un seul musicien, qui ne tiennent pas sur des cordes voisines dans
        une main : dans une partie soliste (A) ; dans un pupitre, qui peut diviser de lui-même (B). Aussi cinq notes et plus.
    .why =
        Il faut laisser une note ou briser l'accord, et chacun choisit seul ; un pupitre demandera qui joue quoi.

stroke-out-of-speed = Un coup d'archet nommé à une vitesse qu'il n'a pas
    .finds =
        Quatre coups séparés égaux ou plus sous un mot qui dit comment les faire, nettement plus vite ou plus lentement que ce coup
        ne le peut (B) : martelé trop vite pour que l'archet s'arrête et morde ; spiccato, ou hors la corde, plus vite qu'aucun archet
        ne rebondit ; détaché, ou à la corde, plus vite que l'instrument ne parle ; sautillé trop lent pour que l'archet rebondisse
        de lui-même.
    .why =
        Il faut renoncer au mot ou au tempo, et un pupitre renonce aux deux.

swell-against-bow = Un soufflet contre l'archet
    .finds =
        Un long coup, sur presque tout l'archet, qui croît en tirant ou décroît en poussant, d'un degré de nuance ou plus, dans
        le meilleur plan possible. Le soufflet est celui du coup : s'il commence avant ou continue après, plusieurs coups le
        font, et si le contraire lui répond dans le même coup, c'est la main.
    .why =
        Le poids de l'archet sur la corde diminue du talon à la pointe : laissé à lui-même, un tiré décroît et un poussé croît. Là
        contre la main doit presser, et un long soufflet manque d'archet ou de son.

thrown-count = Trop pour un seul jet
    .finds =
        Un groupe de notes sous une liaison qu'un mot veut jetées (gettato, jeté, ricochet), et qui a plus de notes qu'un jet n'en
        tient, ou vient plus lentement ou plus vite qu'un archet jeté ne rebondit (B).
    .why =
        On laisse tomber l'archet une fois et il compte seul. Après quelques rebonds il reste sur la corde ; plus lentement, chaque
        note doit être posée, ce qui est un autre coup et s'entend.

tie-or-slur = Une liaison au lieu d'une prolongation, ou l'inverse
    .finds =
        Une liaison de tenue vers une autre hauteur (A) ; une liaison sur deux notes voisines d'une seule hauteur et rien
        d'autre, sans points, tirets ou accents (B, toutes celles d'une partie ensemble : beaucoup y pensent un pouls, et ne le
        disent nulle part).
    .why =
        Les deux lignes se ressemblent sur la page. Une liaison sur une hauteur sans points peut être une note tenue ou deux notes
        pulsées dans un archet ; une prolongation vers une autre hauteur est sûrement une liaison. Chacun décide seul, et le pupitre
        n'est pas ensemble.

winds-phrase-apart = Des vents qui phrasent autrement que les cordes qu'ils doublent
    .finds =
        Une partie qui n'est pas à archet et une partie de cordes sur une même ligne, à l'unisson ou à l'octave,
        quatre mesures ou plus, liées pareil sauf une liaison (C) ou quelques-unes (D) : signalé une fois par paire de
        parties, et une fois où plusieurs paires diffèrent au même endroit.
    .why =
        La liaison d'un vent est de langue et de souffle, celle d'une corde est un archet ; elles n'ont pas à
        s'accorder, et souvent ne le doivent pas. Où presque toutes s'accordent, les deux disent une seule phrase, et
        une liaison autre est le plus souvent une faute de copie.
