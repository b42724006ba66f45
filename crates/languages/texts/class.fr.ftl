# Feuilles des élèves et pages de la classe.

part-violin = Violon
part-viola = Alto
part-cello = Violoncelle
part-bass = Contrebasse
part-other-bowed = Instrument à archet
part-other = Partie

sheet-due = à rendre { $due }
sheet-works = Ce qui marche
sheet-works-nothing = L'archet ne vient pas encore de lui-même pendant quatre mesures sans remarque ; les passages ci-dessous sont l'endroit où commencer.
sheet-passages = À regarder
sheet-passages-nothing = Rien de ce que regarde le devoir n'a été trouvé.
sheet-bar = Mesure { $bar }
sheet-bar-beat = Mesure { $bar }, temps { $beat }
sheet-whole-score = toutes les parties
sheet-also = De même aux mesures { $bars }.
sheet-what = Ce qui se passe
sheet-why = Pourquoi
sheet-try = À essayer
sheet-hint = Un changement de ce genre peut aider : { $kind }.
sheet-question = À méditer
sheet-own = Mot de l'enseignant
sheet-now = Comme c'est écrit
sheet-repaired = Une façon d'y remédier
sheet-no-picture = Ces mesures ne peuvent être gravées.
sheet-rest = Trouvé aussi
sheet-rest-more = et { $count } autres sortes de remarques
sheet-given = Ce qui était donné
sheet-criteria = Ce que demande le devoir
sheet-criterion-met = voir { $rules }
sheet-criterion-free = rien trouvé
sheet-criterion-hand = l'enseignant regarde cela
sheet-calculated = Comment cela a été calculé
sheet-calculated-for = Les coups d'archet sont calculés pour { $player } dans le style { $style }, d'après ce qui est dans la partition.
sheet-lane = Sous la portée : l'archet, talon en haut, pointe en bas, épais près du talon.
sheet-advice = Le programme calcule et conseille ; les musiciens décident. Il ne donne pas de notes.
sheet-caution = Si une façon de jouer fatigue la main, le bras ou le dos, se reposer, et en cas de douleur demander à un professeur ou à un médecin.
sheet-player-professional = des professionnels
sheet-player-amateur = des amateurs
sheet-player-student = des élèves
sheet-player-own = les musiciens que décrit la personne qui enseigne
sheet-since = Depuis { $task }
sheet-since-gone = ne se trouve plus : { $rules }
sheet-since-new = nouveau : { $rules }
sheet-since-back = de nouveau : { $rules }

works-comes-out = Mesures { $from } à { $to }, { $part } : l'archet vient de lui-même. Les { $downbeats } premiers temps où commence un coup d'archet sont tous tirés, et aucun des { $strokes } coups d'archet ne demande de reprise ni n'est accroché.
works-comes-out-plain = Mesures { $from } à { $to }, { $part } : l'archet vient de lui-même ; aucun des { $strokes } coups d'archet ne demande de reprise ni n'est accroché.
works-swell-up = Mesure { $bar }, { $part } : le crescendo est sur un poussé, qui croît de lui-même.
works-swell-down = Mesure { $bar }, { $part } : le diminuendo est sur un tiré, qui décroît de lui-même.
works-long-slur = Mesure { $bar }, { $part } : la liaison sur { $notes } notes dure { $lasts } s, et un coup d'archet dure jusqu'à { $longest } s à cette nuance. Il reste de l'archet pour bien la jouer.
works-mark = Mesure { $bars }, { $part } : le seul signe d'archet dit ce que les musiciens ne feraient pas d'eux-mêmes.
works-marks = Mesures { $bars }, { $part } : chacun des { $count } signes d'archet dit ce que les musiciens ne feraient pas d'eux-mêmes ; aucun n'est de trop.

given-melody-stays = La mélodie donnée est inchangée : { $part }.
given-melody-changed = La mélodie donnée est changée ({ $part }), mesures { $bars }.
given-melody-missing = La mélodie donnée ne se trouve dans aucune partie.
given-model-same = Liaisons et signes d'archet sont comme dans { $model }.
given-model-other = À côté de { $model } : pareil dans { $same } des { $all } mesures à liaisons ou signes d'archet ; autrement aux mesures { $bars }. Autrement n'est pas une faute.

lacks-slurs = Il manque des liaisons
    .finds =
        Le devoir porte sur les liaisons, et une partie n'en a pas, ou n'en a pas pendant huit mesures ou plus de notes mouvantes.
    .why =
        Sans liaisons chaque note a son coup d'archet, et chaque pupitre liera à son gré. Une page sans liaisons ne montre pas de faute dans ses liaisons, parce qu'elle laisse le choix à d'autres.
lacks-dynamics = Il manque des nuances
    .finds =
        Le devoir demande des nuances, et une partie n'en a pas.
    .why =
        La vitesse de l'archet et sa durée dépendent de la force du son. Sans nuance personne ne peut dire ce qui tient dans un coup d'archet.
lacks-hairpins = Il manque des soufflets
    .finds =
        Le devoir demande des crescendos et diminuendos, et une partie n'a ni soufflets ni mots.
    .why =
        L'archet croît de lui-même en poussant et décroît en tirant. Là où la musique doit le faire, il faut l'écrire avant qu'on puisse choisir un coup d'archet.
lacks-articulations = Il manque des points, tirets et accents
    .finds =
        Le devoir demande des signes sur les notes, et une partie n'en a pas.
    .why =
        Qu'une note soit brève, appuyée ou frappée décide de l'endroit de l'archet où elle se joue. Sans signes chacun choisit seul.
lacks-bow-marks = Il manque des signes d'archet
    .finds =
        Le devoir demande des tirés et poussés là où ils portent un effet, et une partie n'en a pas.
    .why =
        La plupart des coups d'archet viennent d'eux-mêmes ; les quelques autres doivent être écrits, sinon l'effet se perd.
lacks-tempo = Il manque un tempo
    .finds =
        Le devoir demande un tempo, et la partition n'en a pas.
    .why =
        Les secondes décident combien de musique tient dans un coup d'archet. Sans tempo chaque nombre de cette feuille repose sur une supposition.

question-family-length = Combien d'archet reste-t-il ici à la dernière note, et comment sonnera-t-elle ?
question-family-slurs = Où une voix respirerait-elle dans ce passage, et où la liaison laisse-t-elle changer l'archet ?
question-family-beat = Quelle note de cette mesure doit s'entendre forte, et quel coup d'archet y tombe ?
question-family-direction = Dans quelle partie de l'archet cette note devrait-elle être, et comment y arrive-t-on ?
question-family-kinds = Est-ce à la corde ou hors la corde, et qu'est-ce qui le dit sur la page ?
question-family-states = Que doivent faire les mains entre ces deux notes, et combien de temps faut-il ?
question-family-hand = Sur quelles cordes sont ces notes, et une main peut-elle les tenir ensemble ?
question-family-between = Qui d'autre joue cela, et les deux doivent-ils sonner comme un seul ?
question-family-marks = Que ferait-on ici si ce signe n'y était pas ?
question-family-parts = Que sait un musicien qui n'a que cette partie devant lui ?
question-lacks-slurs = Chanter le passage : quelles notes vont dans un souffle ?
question-lacks-dynamics = De quelle force est la première note, et que changerait le contraire ?
question-lacks-hairpins = Où cette ligne va-t-elle de l'avant, et où se détend-elle ?
question-lacks-articulations = Quelles notes doivent être brèves, lesquelles s'appuient, et lesquelles ni l'un ni l'autre ?
question-lacks-bow-marks = À quel endroit unique jouerait-on autrement qu'on ne l'entend ?
question-lacks-tempo = Combien de temps une mesure doit-elle durer ? La compter avec une montre.

kind-split = une liaison en deux
kind-join = deux coups d'archet en un
kind-shift = une liaison qui commence ou finit sur une autre note
kind-hook = deux coups d'archet dans le même sens, arrêtés sur la corde
kind-retake = lever l'archet et reprendre dans le même sens
kind-start = l'autre coup d'archet au début
kind-mark = un signe d'archet de plus
kind-unmark = un signe d'archet de moins
kind-word = un mot aux musiciens
kind-state = une nuance, un tempo ou une façon de jouer dite
kind-stagger = les musiciens changent d'archet à des moments différents
kind-phrase = la liaison dessinée comme liaison de phrase
kind-copy = les liaisons ou signes d'un autre endroit

class-title = La classe
class-stays = Cette page montre des copies une à une. Elle reste chez l'enseignant.
class-to-show = Cette page ne nomme aucune copie ; elle peut être montrée.
class-counts = Copies lues : { $read }. Rien ici n'est une note, et l'ordre des listes ne dit rien de personne.
class-small = Moins de { $least } copies : qui a rencontré quoi n'est pas dit ici.
class-rules = Ce qui a été trouvé, et dans combien de copies
class-of = { $met } sur { $read }
class-examples = Exemples à regarder ensemble
class-middles = Mesures prises
class-middle = Milieu de la classe
class-half = La moitié de la classe
class-outliers = Loin des autres
class-lowest = bas
class-highest = haut
class-table = Copies et règles
class-table-how = Un nombre dit à combien d'endroits. Les colonnes sont les règles que quelqu'un a rencontrées ; le nom est au-dessus de la colonne.
class-student = Copie
class-none = Rien à lire
class-nothing-from = Pas de fichier : { $names }
class-sheet = feuille
class-replaced = un nouveau fichier est venu, { $count } fois jusqu'ici ; la feuille est celle du dernier
class-course = Au fil des devoirs
class-course-how = Pour chaque règle la part des copies qui l'ont rencontrée, devoir par devoir.
class-since = Depuis le devoir précédent
class-gone = parti
class-new = nouveau
class-back = de nouveau

measure-bars = Mesures
measure-notes = Notes des parties d'archet
measure-slurs = Liaisons pour cent notes
measure-bow-marks = Signes d'archet pour cent notes
measure-dynamics = Nuances et soufflets pour dix mesures
measure-articulations = Signes pour cent notes
measure-longest-slur = Liaison la plus longue
measure-downbeats-down = Premiers temps tirés

alike-title = Copies qui se ressemblent
alike-no-proof = C'est une question, et cela ne prouve rien. Gardez-la pour vous jusqu'à ce que vous ayez demandé.
alike-how = On montre des paires dont les notes s'accordent plus que le devoir ne l'explique : la mélodie donnée ne compte pas, ni ce qu'un quart de la classe a écrit. Transposer ne le cache pas, ni échanger des voix, répéter des notes ou changer les valeurs. Qui apprend ensemble, ou dans le même livre, écrit de même.
alike-share = De cent suites de huit notes de la plus petite, { $share } sont aussi dans l'autre ; une note répétée compte une fois.
class-not-met = Personne n'a rencontré : { $rules }.

hand-title = Passer la classe en revue
hand-how = Ce que vous faites reste dans ce navigateur, pas à pas, même quand vous fermez la page, et ne va nulle part. Enregistrez-le comme fichier (w) et répétez la commande avec --hand FICHIER : les feuilles en sont faites.
hand-how-beside = Ce que vous faites reste pas à pas dans un fichier à côté du devoir, et ne va nulle part. Répétez la commande, et les feuilles en sont faites.
hand-keys = Touches : j, k copie suivante et précédente · flèches : passage · x montrer ou ôter · s phrase · 1–9 cocher un critère · n phrase sur le tout · m évaluation propre · u annuler · o ouvrir la feuille · w enregistrer
hand-shown = montré
hand-not-shown = pas montré
hand-sentence = Une phrase sur ce passage
hand-note = Une phrase sur le tout
hand-marks = Votre propre évaluation
hand-kept = # pas dans ce navigateur, dont # pas encore dans un fichier enregistré
hand-not-kept = Ce navigateur ne garde rien : enregistrez le fichier (w) avant de fermer la page.
hand-beside = # pas dans le fichier à côté du devoir
hand-lost = Le programme a été arrêté : les derniers pas ne sont que dans cette page. Enregistrez le fichier (w), ou relancez le programme et continuez.
hand-save = enregistré : class-hand.json
hand-of = (# sur #)
hand-sheet-note = Mot de l'enseignant
hand-sheet-marks = Noté par l'enseignant
