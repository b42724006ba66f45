# Ce que les crates du dessous disent en anglais.

# Où dans le texte

told-why-line-column = ligne { $line }, colonne { $column } : { $why }
told-why-line = ligne { $line } : { $why }
told-why-note = à noter : { $why }
told-why-of = { $of } : { $why }

# Endroits saisis

told-why-expected-meant = attendu : { $expected } ; trouvé : { $found }. Peut-être « { $meant } » ?
told-why-expected-place = attendu : { $expected } ; trouvé : { $found }. Un endroit s'écrit 12, 12/3½, « mesure 12, temps 3½ », 41-42 ou II: 12.
told-why-expected = attendu : { $expected } ; trouvé : { $found }.
told-expected-bar = une mesure comme 37, 37/3 ou 41-42
told-expected-beat = un temps comme 3, 3½, 3.5, 7/2 ou 3+1/3
told-expected-note-value = une valeur de note comme 1/4 ou 3/8
told-expected-fraction = une fraction plus petite que 1, comme 3+1/3
told-expected-end-of-stretch = la dernière mesure ou le dernier temps du passage
told-expected-number-of-bar = le numéro d'une mesure
told-expected-slash = une barre oblique entre mesure et temps
told-expected-which-bar = laquelle des mesures de ce numéro, comme (2)
told-expected-bracket = une parenthèse fermante
told-expected-number-of-note = le numéro d'une note, à partir de 1
told-expected-nothing-more = rien de plus
told-expected-bar-before-beat = une mesure avant le temps
told-expected-place = un endroit de la partition
told-expected-place-alone = un endroit sans commentaire
told-expected-section = le nom d'un pupitre
told-expected-mark = un signe comme tiré, poussé, accroché, reprise, lever, au talon, liaison, comme ça vient ou "texte"
told-expected-another-mark = un autre signe ou un séparateur
told-expected-name-of-voice = le nom de la voix, comme 2
told-expected-pitch = une hauteur comme F#5
told-expected-pitch-or-flat = une hauteur comme F#5 ou Bb3
told-expected-voice = une voix de cette partie
told-found-nothing = rien
told-found-end = la fin de la ligne
told-found-quotation-mark = un guillemet jamais fermé
told-found-page = un texte long comme une page
told-found-text = « { $text } »
told-why-no-movement = il n'y a pas de mouvement « { $asked } » ; le fichier a { $there }
told-why-no-bar-there = { $whose } n'a pas de { $bar } ; { $last }
told-why-no-bar-there-ended = { $whose } n'a pas de { $bar } ; { $last }.
told-why-second-bar-first = la seconde mesure vient avant la première
told-whose-score = la partition
told-last-none = elle n'a pas de mesures
told-last-one = la dernière est { $label }
told-last-several = les dernières sont { $labels }
told-bar-said = mesure { $label }
told-beat-said = temps { $at }
told-beats-one = 1 temps
told-beats-many = { $at } temps
told-place-beat = mesure { $label }, temps { $at } ({ $part })
told-place-after = mesure { $label }, après { $at } ({ $part })
told-place-note = mesure { $label }, note { $at } ({ $part })
told-place-first = mesure { $label }, première note ({ $part })
told-place-typed = { $at } ({ $part })

# Saisie abrégée

told-why-text-too-large = plus de { $count } caractères ; le partager en plusieurs textes ou lignes.
told-why-text-of-too-many-notes = un texte peut parler de { $count } notes en tout, et il y en a déjà davantage. Le saisir en plusieurs textes, ou nommer des passages plus courts.
told-why-no-section-yet = il faut d'abord un pupitre, comme "Vn1" ou "tous" : aucun n'est nommé jusqu'ici.
told-why-unknown-section-meant = « { $name } » n'est pas un pupitre de cette partition. Peut-être « { $meant } » ? Les pupitres : { $known }.
told-why-unknown-section = « { $name } » n'est pas un pupitre de cette partition. Les pupitres : { $known }.
told-why-several-sections = il faut un seul pupitre, mais « { $name } » peut être { $first } ou { $second }. Ajouter le numéro, ou écrire le pluriel pour tous.
told-why-no-bar-before = il faut une mesure avant le temps, comme 37/3 : aucune n'est nommée jusqu'ici.
told-why-unknown-movement = « { $name } » n'est pas un mouvement de cette partition. Elle a { $known }.
told-why-bar-of-several-movements = il faut une seule mesure, mais { $bar } se trouve dans les mouvements { $movements }. En nommer un au-dessus, sur sa propre ligne : { $first }:
told-why-several-bars-numbered = il faut une seule mesure, mais { $count } mesures ont le numéro { $label }. Écrire { $one } pour la première, { $two } pour la seconde.
told-why-unknown-beat = la { $bar } n'a pas de { $beat }. La mesure a { $beats }.
told-why-bar-without-notes = il faut une note, mais la mesure n'en a pas : { $place }.
told-why-no-note-begins = { $place } : aucune note ne commence là. Des notes commencent aux temps { $there }.
told-why-rest-there = il faut une note, et il y a un silence : { $place }.
told-why-one-of-the-notes = il faut une des notes de { $place } : { $there }.
told-why-stretch-backwards = un passage va en avant, mais la { $bar-to } vient avant la { $bar-from }.
told-why-stretch-backwards-meant = un passage va en avant, mais la { $bar-to } vient avant la { $bar-from }. Pour des temps d'une même mesure, écrire { $meant }.
told-why-too-few-strokes = il faut { $count } coups d'archet, et il y en a { $number } : { $place }.
told-why-no-such-slur = il faut une liaison imprimée sur ce passage, et il n'y en a pas : { $place }.
told-why-no-such-slur-but = il faut une liaison imprimée sur ce passage, et il n'y en a pas : { $place }. Liaisons à cet endroit : { $there }.
told-why-inside-slur = aucun coup d'archet ne commence ici : { $place } est sous une liaison qui commence à { $place-begins }. Marquer cette note-là, ou enlever la liaison.
told-why-said-otherwise = chaque note a un seul coup d'archet, mais la ligne { $line } dit { $mark } pour { $place }.
told-mark-down = tiré
told-mark-up = poussé
told-mark-hooked = accroché
told-mark-retake = reprise d'archet
told-mark-as-it-comes = comme ça vient
told-mark-lift = lever l'archet
told-why-strokes-in-a-row = plusieurs coups d'archet à la suite ne peuvent porter d'autres signes ; donner son propre endroit à celui qui en a un, comme 37/3 tiré reprise.
told-why-anchor-without-direction = un point fixe veut un sens ; écrire anchor 60/1 tiré ou poussé.
told-why-dots-or-dashes = une note accrochée s'écrit avec des points ou avec des tirets, l'un des deux.
told-why-dots-without-hook = points et tirets disent comment s'écrit une note accrochée ; écrire d'abord l'accroché, comme dans 41/3 accroché points.
told-why-hook-or-retake = une note est accrochée, reprise ou comme ça vient, une seule des trois ; donner à chacune son endroit.
told-why-too-many-strokes-in-a-row = trop de coups d'archet à la suite ; recommencer par une mesure.
told-why-two-bows-at-most = une note a deux coups d'archet au plus ; donner au suivant son endroit.
told-why-as-it-comes-no-direction = ce qui va comme ça vient n'a pas de sens propre.
told-why-one-way = une note accrochée ou une reprise va dans un seul sens ; donner au coup d'archet suivant son endroit.
told-why-slur-needs-ends = une liaison veut sa première et sa dernière note ; écrire 41/1-41/3 liaison.

# Fichiers

told-why-no-file = ce fichier n'existe pas ; vérifier le nom et le dossier
told-why-may-not-read = ce fichier ne peut pas être lu ; vérifier ses droits d'accès
told-why-folder-not-file = c'est un dossier, pas un fichier
told-why-file-too-large = le fichier dépasse la limite de { $limit } octets
told-why-input-too-large = plus que la limite de { $limit } octets
told-why-larger-than-limit = il dépasse la limite de { $limit } octets
told-why-not-utf8 = ce n'est pas du texte en UTF-8
told-why-line-not-utf8 = la ligne { $line } n'est pas du texte en UTF-8 ; enregistrer le texte en UTF-8 et réessayer
told-why-changed = quelqu'un d'autre l'a modifié depuis la lecture
told-why-locked = un autre programme est en train de l'écrire
told-why-not-written = { $path } n'a pas pu être écrit : { $why }.
told-why-not-written-but-there = { $path } n'a pas pu être écrit : { $why }. Ce qui y était y est encore.
told-why-file-changed = { $path } a été modifié par quelqu'un d'autre depuis la lecture. Rien n'a été écrasé ; recommencer.
told-why-file-locked = { $path } : un autre programme l'écrit depuis dix secondes. Rien n'a été écrit ; réessayer.
told-why-disk-full = le disque est plein ; faire de la place et recommencer
told-why-may-not-write = on ne peut pas écrire dans ce dossier ; vérifier ses droits d'accès, ou nommer un autre endroit
told-why-read-only = le disque est en lecture seule ; nommer un autre endroit
told-why-no-folder = ce dossier n'existe pas ; le créer, ou en nommer un autre
told-why-link-in-circle = c'est un lien qui tourne en rond ; nommer le fichier lui-même
told-why-not-read-back = ce qui a été écrit n'a pas pu être relu, et il n'y avait rien avant
told-why-not-read-back-kept = ce qui a été écrit n'a pas pu être relu ; ce qui y était est gardé sous { $backup } ({ $why })
told-why-thousand-backups = mille copies de secours se trouvent à côté ; les regarder et les enlever
told-why-no-file-to-keep = il n'y a pas de fichier à garder
told-why-no-such-folder = ce dossier n'existe pas ; vérifier le nom
told-why-file-not-folder = c'est un fichier, pas un dossier ; nommer le dossier qui le contient
told-why-too-many-files = plus de { $count } partitions et calques ; lister un à un les dossiers contenus
told-why-name-not-utf8 = son nom n'est pas en UTF-8 ; le renommer
told-why-link-not-followed = un lien, non suivi : il peut mener hors du dossier ; mettre ici le fichier lui-même
told-why-too-deep = à plus de { $count } dossiers de profondeur ; le lister à part
told-why-index = l'index du dossier ne peut pas servir ({ $detail }) ; recommencer avec --rebuild

# XML

told-why-xml-empty = le fichier est vide ; exporter la partition de nouveau
told-why-xml-not = ce n'est pas un fichier XML ; choisir un fichier MusicXML (.musicxml, .xml ou .mxl)
told-why-xml-encoding = l'encodage « { $name } » n'est pas lu ; enregistrer en UTF-8 (UTF-16, ISO-8859-1 et windows-1252 sont lus aussi)
told-why-xml-contradicted = le fichier se dit { $claimed }, mais { $bytes } ; corriger l'encodage dans la première ligne, ou enregistrer le fichier en UTF-8
told-claimed-utf8 = UTF-8 (ce qui vaut quand la première ligne n'en nomme pas)
told-bytes-not-utf8 = l'octet { $byte } à cet endroit n'est pas de l'UTF-8
told-bytes-not = l'octet { $byte } à cet endroit n'en est pas
told-bytes-half = il y a ici la moitié d'un caractère ({ $byte })
told-bytes-are = ses octets sont { $encoding }
told-bytes-single = ses caractères n'ont qu'un octet
told-bytes-order-mark = il commence par la marque d'ordre des octets d'UTF-8
told-why-xml-control = le caractère de contrôle { $code } est interdit en XML ; effacer le caractère, ou exporter le fichier de nouveau
told-why-xml-unfinished = le fichier finit à l'intérieur de ce qui commence ici ({ $what }) ; il a été coupé : le copier ou l'exporter de nouveau
told-why-xml-ends-inside = le fichier finit à l'intérieur de <{ $name }>, ouvert à la ligne { $opened } ; il a été coupé : le copier ou l'exporter de nouveau
told-why-xml-mismatched = </{ $name }> se trouve où il faut </{ $open }>, car <{ $open }> a été ouvert à la ligne { $opened } ; fermer <{ $open }>, ou exporter le fichier de nouveau
told-why-xml-stray = </{ $name }> ferme un élément qui n'est pas ouvert ; effacer </{ $name }>, ou exporter le fichier de nouveau
told-why-xml-no-root = le fichier ne contient aucun élément ; exporter la partition de nouveau
told-why-xml-second-root = <{ $name }> se trouve après la fin de l'élément le plus extérieur ; ne garder qu'une partition par fichier
told-why-xml-text-outside = il y a du texte hors de l'élément le plus extérieur ; effacer ce qui se trouve dehors
told-why-xml-misplaced = ceci ne peut pas se trouver ici ({ $what }) ; le mettre à sa place, ou exporter le fichier de nouveau
told-what-comment = un commentaire
told-what-cdata = une section CDATA
told-what-doctype = la déclaration du type de document
told-what-instruction = une instruction de traitement
told-what-declaration = la déclaration XML
told-what-tag = une balise
told-what-character = un caractère
told-why-xml-not-a-name = « { $name } » n'est pas un nom ; écrire < comme &lt; si c'est du texte
told-why-xml-attribute-twice = l'attribut { $name } est donné deux fois ; effacer l'un des deux
told-why-xml-attribute = { $fault } ; écrire name="value"
told-fault-blank = il manque une espace avant un attribut
told-fault-name = ce n'est pas le nom d'un attribut
told-fault-value = un attribut n'a pas de valeur
told-fault-quotes = la valeur d'un attribut n'a pas de guillemets
told-fault-less-than = la valeur d'un attribut contient un <
told-fault-closing-quote = il manque le guillemet fermant à la valeur d'un attribut
told-why-xml-ampersand = & commence un renvoi qui n'est pas fini ; écrire & comme &amp;
told-why-xml-reference = { $reference } ne vaut aucun caractère de XML ; écrire le caractère lui-même
told-why-xml-markup = ce n'est pas du balisage XML ; écrire < comme &lt; si c'est du texte
told-why-xml-bytes = le document est plus long que { $limit } octets ; si le fichier est une vraie partition, relever la limite
told-why-xml-depth = les éléments sont emboîtés à plus de { $limit } niveaux ; si le fichier est une vraie partition, relever la limite
told-why-xml-attributes = un élément a plus de { $limit } attributs ; si le fichier est une vraie partition, relever la limite
told-why-xml-elements = il y a plus de { $limit } éléments ; si le fichier est une vraie partition, relever la limite
told-why-xml-names = il y a plus de { $limit } noms d'éléments étrangers à MusicXML ; si le fichier est une vraie partition, relever la limite
told-why-xml-entity = &{ $name }; reste tel qu'il est écrit, sans être résolu ; écrire le caractère lui-même
told-why-xml-entity-often = &{ $name }; reste tel qu'il est écrit, sans être résolu ({ $count } fois dans le fichier) ; écrire le caractère lui-même

# Paquets

told-why-in-package = { $member } dans le paquet : { $why }
told-why-no-package = ce n'est pas un paquet (.mxl) ; choisir un fichier .mxl, .musicxml ou .xml
told-why-package-too-long = le paquet est plus long que { $limit } octets ; si c'est une vraie partition, relever la limite
told-why-package-damaged = le paquet est abîmé ({ $damage }) ; le copier ou l'exporter de nouveau
told-damage-same-name = deux membres ont le même nom
told-why-package-members = le paquet a { $count } membres, plus que la limite de { $limit } ; si c'est une vraie partition, relever la limite
told-why-member-too-large = { $member } dans le paquet, ouvert, dépasse la limite de { $limit } octets ; si c'est une vraie partition, relever la limite
told-why-member-too-dense = { $member } dans le paquet, ouvert, est plus de { $limit } fois plus grand, ce qui est la limite ; si c'est une vraie partition, relever la limite
told-why-member-locked = { $member } dans le paquet est protégé par un mot de passe ; l'enregistrer sans
told-why-member-packing = { $member } dans le paquet est comprimé par la méthode { $method }, qui n'est pas lue ; exporter la partition de nouveau, ou défaire le paquet et ouvrir le fichier .musicxml
told-why-package-without-score = le paquet ne contient pas de partition ; l'exporter de nouveau, ou défaire le paquet et ouvrir le fichier .musicxml
told-why-package-several = le paquet n'a pas de META-INF/container.xml et contient plusieurs partitions ({ $names }) ; le défaire et en ouvrir une
told-why-container-bad = META-INF/container.xml dans le paquet ne peut pas être lu : { $why }
told-why-container-names-none = META-INF/container.xml dans le paquet ne nomme pas de partition ; l'exporter de nouveau, ou défaire le paquet et ouvrir le fichier .musicxml
told-why-container-nowhere = META-INF/container.xml nomme « { $path } », qui n'est pas dans le paquet ; exporter la partition de nouveau, ou défaire le paquet et ouvrir le fichier .musicxml
told-why-container-nowhere-but = META-INF/container.xml nomme « { $path } », qui n'est pas dans le paquet (il contient { $scores }) ; exporter la partition de nouveau, ou défaire le paquet et ouvrir le fichier .musicxml
told-why-container-outside = META-INF/container.xml nomme « { $path } », qui est hors du paquet ; exporter la partition de nouveau, ou défaire le paquet et ouvrir le fichier .musicxml
told-why-container-missing = le paquet n'a pas de META-INF/container.xml ; { $score }, la seule partition qu'il contient, a été lue
told-why-container-type = META-INF/container.xml appelle la partition « { $type } » et non « { $usual } » ; elle a été lue quand même

# Où une partition se contredit

told-why-not-a-score = C'est du XML, mais pas une partition : cela commence par <{ $name }>.
told-why-part-not-listed = La partie « { $name } » n'est pas dans la liste des parties, elle n'a donc pas de nom.
told-why-part-without-music = La partie « { $name } » est dans la liste des parties, mais n'a pas de musique.
told-why-divisions = « { $text } » divisions par noire n'ont pas de sens ; le nombre d'avant est gardé.
told-why-time-signature = Un chiffrage de mesure ne peut pas être lu ; le précédent reste valable.
told-why-bar-too-long = Les notes de la mesure font en tout { $told } de ronde ; le chiffrage en demande { $asked }.
told-why-bar-too-short = Les notes de la mesure ne font en tout que { $told } de ronde ; le chiffrage en demande { $asked }.
told-why-repeat-in-repeat = Une reprise commence ici avant qu'une autre soit finie.
told-why-ending-in-ending = Une fin de reprise commence ici avant qu'une autre soit finie.
told-why-ending-never-began = Une fin de reprise finit ici sans avoir commencé.
told-why-repeat-never-ends = Une reprise commence ici et ne finit jamais.
told-why-ending-never-ends = Une fin de reprise commence ici et ne finit jamais.
told-why-metronome = Une indication métronomique ne peut pas être lue ; elle est passée.
told-why-no-pitch = Une note n'a pas de hauteur lisible ; elle ne compte que dans le temps.
told-why-duration-missing-value = La durée d'une note manque ; sa valeur de note est prise.
told-why-duration-missing-none = La durée d'une note manque ; elle ne prend pas de temps.
told-why-duration-senseless-value = La durée d'une note n'a pas de sens ; sa valeur de note est prise.
told-why-duration-senseless-none = La durée d'une note n'a pas de sens ; elle ne prend pas de temps.
told-why-duration-drawn = Une note est écrite comme { $drawn } de ronde, mais dure { $told } ; c'est la durée qui vaut.
told-why-backup = Un <backup> recule de { $by } de ronde de trop, avant le début de la mesure ; la suite est lue depuis le début de la mesure.
told-why-no-duration = Un <{ $name }> n'a pas de durée, ou une qui n'a pas de sens ; il est passé.
told-why-duration-before-divisions = Une durée vient avant qu'un <divisions> dise ce qu'elle compte ; elle est prise de la première valeur de note, ou comme noire.
told-why-slur-begins-again = La liaison numéro { $number } recommence avant d'être finie.
told-why-slur-never-ends-in-file = Une liaison commence ici et ne finit jamais.
told-why-slur-never-began-in-file = Une liaison finit ici sans avoir commencé.
told-why-slurs-cross = Une liaison commence sous une autre et finit après elle : les deux se croisent.
told-why-tempo = Un tempo de « { $text } » noires à la minute n'a pas de sens ; il est passé.
told-why-hairpin-never-ends = Un soufflet commence ici et ne finit jamais.
told-why-hairpin-never-began = Un soufflet finit ici sans avoir commencé.
told-why-dashes-never-end = Une ligne de tirets commence ici et ne finit jamais.
told-why-dashes-never-began = Une ligne de tirets finit ici sans avoir commencé.
told-why-tie-without-note = Une liaison de tenue commence ici, mais aucune note de même hauteur ne suit.
told-why-tie-from-nothing = Une liaison de tenue finit ici, mais aucune note de même hauteur qui y soit liée ne vient avant.
told-damage-no-zip = ce n'est pas une archive Zip

# Fichiers des calques

told-why-layer-too-large = le fichier dépasse { $limit } octets ; aucun calque de coups d'archet n'est si grand
told-why-not-a-layer = ce n'est pas un calque de coups d'archet : un calque est du JSON avec "format": "arcata-layer"
told-why-layer-cut-short = le fichier finit au milieu, comme quand l'écriture a été interrompue ; chercher à côté sa copie de secours, ou le prendre dans la gestion de versions
told-why-layer-later-version = le calque est écrit dans la version { $version } du format ; ce programme lit la version { $number }. Prendre un programme plus récent, ou faire écrire le calque dans la version { $number }
told-why-layer-unsound = le calque ne peut pas être lu : { $why }
told-why-layer-entry = entrée { $number } ({ $at }) : { $why }
told-why-layer-version = "version" manque ou n'est pas une version qui existe ; écrire { $number }
told-why-layer-offset = "offset": "{ $text }" n'est pas une durée ; écrire les rondes en fraction, comme 3/8
told-why-layer-pitch = "pitch": "{ $text }" n'est pas une hauteur ; en écrire une comme F#5, Bb3 ou x
told-why-layer-counts = "bar_ordinal", "grace" et "copy" comptent à partir de 1
told-why-layer-sign = "sign" dit comment s'écrit une note accrochée ; l'enlever, ou faire du signe un accroché
told-why-layer-slur-end = une liaison veut "to", sa dernière note
told-why-layer-in-bow = un signe "in bow" veut "place" ; écrire frog, lower-half, middle, upper-half, tip ou whole
told-why-layer-text = un signe "text" veut "text", les mots à imprimer
told-why-layer-slur-moved = une liaison déplacée veut "new_from" ou "new_to"

# Profils

told-why-no-player = il n'y a pas de musicien « { $name } » : { $known }
told-why-no-such-profile = ce profil n'existe pas ; on peut écrire { $names }
told-why-text-expected = il faut un texte entre guillemets
told-why-no-such-style = ce style n'existe pas ; on peut écrire { $names }
told-why-no-such-section = cette section n'existe pas ; on peut écrire { $names }
told-why-section-expected = il faut une section : [{ $name }]
told-why-no-such-setting = ce réglage n'existe pas ; on peut écrire { $names }
told-why-no-such-setting-alone = ce réglage n'existe pas
told-why-unit = l'unité est { $unit }
told-why-allowed = on peut écrire { $names }
told-why-word-expected = il faut un mot entre guillemets
told-why-numbers-expected = il faut { $count } nombres entiers croissants, de { $low } à { $high } ({ $unit })
told-why-number-expected = il faut un nombre entier de { $low } à { $high } ({ $unit })

# Fichiers de réglages

told-why-format = le format n'est pas "{ $format }"
told-why-format-task = le format n'est pas "{ $format }" : ce n'est pas un devoir
told-why-format-key = le format n'est pas "{ $format }" : ce n'est pas la clé d'une classe ; en nommer une autre par --key
told-why-format-habits = le format n'est pas "{ $format }" : ce n'est pas un fichier d'arcata habits learn
told-why-format-hand = le format n'est pas "{ $format }" : nommer le fichier que la page a donné
told-why-version = la version { $version } n'est pas connue, seulement la version { $number }
told-why-version-habits = la version { $version } n'est pas connue, seulement la version { $number } : apprendre de nouveau
told-why-line-missing = il manque une ligne avec { $name }
told-why-missing-field = il manque `{ $name }`
told-why-unknown-field = `{ $name }` n'existe pas ; on peut écrire { $names }
told-why-unknown-field-quoted = "{ $name }" n'existe pas ; on peut écrire { $names }
told-why-unknown-rule = aucune règle ne s'appelle "{ $name }" : "arcata rules" les donne
told-why-unknown-rule-meant = aucune règle ne s'appelle "{ $name }" : peut-être "{ $meant }"
told-why-unknown-rule-aside = aucune règle ne s'appelle "{ $name }" ; `arcata rules` les donne
told-why-no-style = il n'y a pas de style "{ $name }" : { $known }

# Habitudes

told-why-no-price = il n'y a pas de pénalité "{ $name }" qui s'apprenne
told-why-price-out-of-measure = { $name } = { $price } est hors de mesure : le style { $style } a { $by-style }, et on lit de { $low } à { $high }
told-why-habits-of-other-style = ces habitudes ont été apprises dans le style { $style }, et ici on veut { $other } : écrire --style { $style }, ou les apprendre en { $other }
told-why-too-many-strokes-to-learn = un nombre, et pas grand
told-why-search-found-nothing = la recherche n'a rien trouvé

# Remarques mises de côté

told-why-aside-all-bars = ce qui est mis de côté vaut pour toutes les mesures d'un numéro ; laisser (1), (2)
told-why-aside-everything = l'entrée ne nomme ni règle, ni partie, ni mesures, ni mouvement : elle mettrait tout de côté
told-why-aside-slur = une liaison est = "phrase" ou "bow"
told-why-aside-bars = les mesures ne sont que des numéros imprimés ; la partie, le mouvement et le temps ont leurs propres lignes
told-why-aside-no-reason = l'entrée n'a pas de raison : dire pourquoi, pour qui la lira l'an prochain

# Classes

told-why-key-empty = un nom ou un pseudonyme est vide
told-why-key-twice = "{ $name }" y est deux fois : en enlever un
told-why-key-shared = le pseudonyme "{ $name }" est à deux élèves : en changer un
told-why-hand-journal = ce n'est pas un "{ $journal }" de la version { $version }
told-why-hand-act = ce n'est pas une action ; enlever la ligne
told-why-task-profile = le fichier de profil { $name } n'a pas été lu
told-why-task-title = le titre est vide : donner un nom au devoir
told-why-task-unknown = { $setting } "{ $given }" n'est pas connu : écrire { $names }
told-why-task-range = { $setting } est { $given } : écrire de { $low } à { $high }
told-setting-severity = la gravité
told-setting-style = le style
told-setting-tempo = le tempo, en noires à la minute,
told-setting-source = la source
told-setting-expected = ce qui est attendu,
told-setting-repairs = ce qu'on fait des corrections,
told-setting-paper = le papier
told-why-task-language = aucune langue n'est nommée : en écrire une, comme ["en"]
told-why-task-parts = les parties se comptent à partir de 1
told-why-task-player = le musicien "{ $name }" n'est pas connu : écrire { $names }, ou un fichier de profil dont le nom finit par { $ending }
told-why-task-passages = { $number } passages ne tiennent pas sur une page : écrire de 0 à { $limit }
told-why-given-without-notes = { "[" }given] : la mélodie { $name } n'a pas de notes
told-why-neither-folder-nor-zip = ce n'est ni un dossier ni une archive .zip ({ $detail })
told-why-archive-too-many = il y a plus de { $count } fichiers dans cette archive
told-why-no-random = le système ne donne pas de nombres aléatoires : { $why }
told-why-program-failed = le programme a échoué
told-why-program-failed-here = le programme a échoué sur ce fichier ; merci de le signaler
told-why-no-bowed-part = aucune de ses parties n'est pour un instrument à archet
told-why-too-long = il a fallu plus de { $count } secondes ; --limit donne plus de temps
told-why-too-much-memory = il a fallu plus de { $count } Mo de mémoire ; --memory en donne plus
told-why-order = un ordre qui n'en est pas un

# Gravure

told-why-engraver-fonts = la gravure ne peut pas écrire ses polices, 12 Mo, dans le dossier des fichiers temporaires ; y faire de la place ou en nommer un autre par TMPDIR
told-why-engraver-refused = { $bars } : gravure impossible ; le reste de la partition peut l'être
told-why-engraver-slow = { $bars } : pas gravé en { $count } s ; le reste de la partition peut l'être
told-bars-one = mesure { $number } (comptée depuis le début du fichier)
told-bars-many = mesures { $from } à { $to } (comptées depuis le début du fichier)
told-why-engraver-no-start = le processus de gravure ne démarre pas ; vérifier que le programme peut lancer des programmes ici
told-why-engraved-unreadable = la musique gravée ne peut pas être lue : { $why }
told-why-nothing-to-draw = il n'y a rien à dessiner
told-why-no-size = elle n'a pas de taille
told-why-no-drawing = elle n'a pas de dessin
told-why-no-staff = elle n'a pas de portée
told-why-picture-not-made = l'image ne peut pas être faite : { $why }
told-why-too-many-dots = { $width } sur { $height } points, c'est trop ; demander moins de mesures ou de parties, ou moins de points par pouce
told-why-pdf-refuses = le PDF n'accepte pas le dessin
told-why-pdf-not-made = le PDF n'a pas pu être fait : { $why } ; écrire plutôt en .html ou .txt
told-why-font = une police ne peut pas être lue
told-why-paper-size = le papier n'a pas de taille
told-why-sheet-words-only = { $number } mesures changent : plus de { $limit }, la feuille n'a donc que des mots.
told-why-engraver-refuses-part = la gravure a refusé la partie
told-why-engraver-gave-up = la partie n'a pas été gravée en { $count } s et a été abandonnée

# The workbench

told-why-no-part-called = aucune partie ne s'appelle « { $name } »
told-why-no-place-in-bar = « { $text } » n'est pas un endroit de la mesure
told-why-no-such-part = il n'y a pas de telle partie
told-why-no-such-bar = il n'y a pas de telle mesure
told-why-no-such-bars = il n'y a pas de telles mesures
told-why-no-small-picture = ces mesures n'existent pas, ou sont trop nombreuses pour une petite image
told-why-no-such-line = il n'y a pas de telle ligne
told-why-no-rule-so = aucune règle ne s'appelle ainsi
told-why-no-rule-called = aucune règle ne s'appelle « { $name } »
told-why-carried-by-file = un calque est reporté quand le fichier change, pas avant
told-why-no-such-stroke = il n'y a pas de tel coup d'archet
told-why-no-slur-begins = aucune liaison ne commence là
told-why-no-such-proposal = il n'y a pas de telle proposition
told-why-proposal-changes-nothing = cette proposition ne change rien au fichier : faites la modification dans la partition même
told-why-no-bow-then = alors aucun archet ne bouge dans cette ligne
told-why-no-bow-in-parts = aucun archet ne bouge dans ces parties
told-why-no-bow-in-bars = aucun archet ne bouge dans ces mesures
told-why-slur-entry-unanswered = entrée { $number } sur les liaisons à côté de la partition : aucune liaison n'y répond
told-why-slur-of-entry = { $part }, { $at } : aucune liaison ne commence là
told-why-paper-by-program = les pages pour le papier sont faites par le programme installé ; ici, imprimez la page même
told-why-no-such-act = il n'y a pas de telle action
told-why-was-for-old-file = « { $sentence } » valait pour le fichier tel qu'il était
told-why-no-layer-on-desk = aucun calque ouvert ne s'appelle « { $name } »
told-why-no-such-layer = il n'y a pas de tel calque ouvert
told-why-layer-name-length = un calque a un nom de 1 à { $limit } lettres
told-why-layer-name-taken = un calque nommé « { $name } » est déjà ouvert
told-why-layers-many = { $count } calques sont ouverts : fermez-en d'abord un
told-why-layer-edited = c'est le calque en cours de modification
told-why-layer-one-stays = un calque doit rester ouvert
told-why-layers-counts-differ = { $count } calques sont ouverts, il y en a { $number } ici
told-why-layer-of-other-music = aucun de ses coups d'archet ne trouve sa note dans cette partition
told-why-late = la partition a changé entre-temps ; regardez de nouveau
told-why-slur-doubled = la partition a déjà cette liaison, et un calque l'enlève : mettez la modification dans le calque
told-why-changes-gone = les modifications de la partition même valaient pour l'ancien fichier, et ne sont plus là
told-why-score-unchanged = rien n'est changé dans la partition même
told-why-kept-one = 1 coup d'archet est resté tel quel
told-why-kept-many = { $count } coups d'archet sont restés tels quels
told-why-is-now = { $place } est maintenant { $place-now } : à vérifier
told-why-score-on-no-disk = la partition n'est sur aucun disque
told-why-score-in-no-folder = la partition n'est dans aucun dossier
told-why-nothing-asked = rien n'est demandé
told-why-change-empty = la modification est vide
told-why-reason-wanted = il faut aussi la raison, en quelques mots
told-why-tempo-range = un tempo va de 10 à 400 noires à la minute
told-why-louder-range = tout se joue jusqu'à { $limit } degrés plus doux ou plus fort
told-why-no-style-called = aucun style ne s'appelle « { $name } » : { $known }
told-why-note-no-address = la note n'a pas d'adresse
told-why-note-no-layer-address = une note n'a pas d'adresse qu'un calque puisse nommer
told-why-nothing-was-asked = rien n'était demandé là
told-why-text-no-bowings = le texte ne contient pas de coups d'archet
told-why-hide-layer-first = un calque y a mis ou enlevé quelque chose : masquez-le d'abord, ou mettez la modification dans le calque
told-why-more-than-slurs = cette modification ne touche pas que des liaisons : elle ne peut aller que dans la partition
told-why-journal-format = il dit être { $format }, ce qui n'est pas un journal
told-why-journal-version = il est écrit en version { $version }, et ce programme lit la version { $number }
told-why-journal-act = la ligne { $line } contient une action que ce programme ne connaît pas
told-why-journal-broken = la ligne { $line } est abîmée
told-why-journal-not-read = le journal n'a pas pu être lu jusqu'au bout ({ $why }) : { $steps } en comptent, et tout est gardé sous { $name }
told-why-browser-full = le navigateur n'a plus de place pour cela ; enregistrez votre travail en fichiers, puis faites de la place
told-why-browser-journal = le navigateur ne laisse pas changer le journal
told-why-browser-second-journal = le navigateur n'a pas de place pour une seconde copie du journal
told-why-page-of-other-version = la page et son module sont de versions différentes : rechargez la page
told-why-page-writes-no-score = une page ne peut pas écrire le fichier de la partition : enregistrez la partition avec les coups d'archet sous un nouveau fichier
told-why-page-no-folder = une page n'a pas de dossier où écrire : enregistrez le fichier
told-steps-one = 1 pas
told-steps-many = { $count } pas
told-why-held-open = un autre programme tient le fichier ouvert ; fermez-le là et recommencez
told-why-held-open-or-forbidden = vous ne pouvez pas écrire là, ou un autre programme tient le fichier ouvert ; fermez-le là, ou indiquez un autre endroit
