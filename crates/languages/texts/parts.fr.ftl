# Parties sur papier : comment finissent les pages, ce qui y remédierait, ce que doivent savoir ceux qui jouent, ce qui les accompagne.

# Fait

part-made = { $name } : { pages-counted }, { $lines ->
    [one] 1 système
   *[other] { $lines } systèmes
} ({ $seconds } s)
part-kept = { $name } : comme elle était déjà faite, { pages-counted }
pages-counted = { $pages ->
    [one] 1 page
   *[other] { $pages } pages
}
part-files = { $pdf } et .musicxml
part-sheets = { $count ->
    [one] 1 feuille
   *[other] { $count } feuilles
}, { $width } x { $height } mm, recto verso, retournées sur le petit côté : plier, agrafer
part-glued = ensuite, à coller : { $pages }
part-entered = { $count ->
    [one] 1 indication écrite une fois pour tous ajoutée
   *[other] { $count } indications écrites une fois pour tous ajoutées
}
part-cues = { $count ->
    [one] 1 réplique ajoutée
   *[other] { $count } répliques ajoutées
}
part-not-in-any = Dans aucune partie : { $what }
part-changed = { $count ->
    [one] 1 mesure changée
   *[other] { $count } mesures changées
} depuis, avec un trait dans la marge : { $bars }
part-changed-and-more = { $bars } et { $more } autres
part-not-changed = rien n'a changé depuis
part-new = elle n'existait pas, rien n'est donc marqué

# Fins de page

page-end-facing = la page { $page } finit avant { $bar } : on ne tourne pas, la page suivante est en face
page-end-fold = la page { $page } finit avant { $bar } : on ne tourne pas, la page { $page }a se déplie, collée à son bord
page-end-turned = la page { $page } finit avant { $bar } : { turn-time } pour tourner{ $returns ->
    [yes] { " ;" } la musique revient en arrière (reprise, da capo ou dal segno) avec { $back } s de silence
   *[no] { "" }
}
page-end-rushed = la page { $page } finit avant { $bar } : seulement { turn-time } pour tourner{ $returns ->
    [yes] { " ;" } la musique revient en arrière (reprise, da capo ou dal segno) avec { $back } s de silence
   *[no] { "" }
} ; il en faut { $needed } s
turn-time = { $rest } s de silence{ $strings ->
    [some] { " et" } { $open } s sur une corde à vide
   *[none] { "" }
}

# Tournes rapides

quick-turns = { $count ->
    [0] aucune tourne trop rapide
    [one] une tourne trop rapide
   *[other] { $count } tournes trop rapides
}
quick-turns-cost = { quick-turns } : c'est la mise en page la moins chère, { $cost } points ; sans le prix des tournes elle en a { $without }
quick-turns-dearer = une mise en page sans tourne rapide est permise, mais plus chère
quick-turns-least = { quick-turns } dans toute mise en page que la maison permet
quick-turns-one-stays = aucune mise en page que la maison permet ne l'évite
quick-turns-stay = aucune mise en page que la maison permet n'en a moins
quick-turns-mend = y remédierait : { $what ->
    [emptier] des pages moins pleines, finies sur des silences quel qu'en soit le prix
    [side] la première page de l'autre côté ([pages] first)
    [blank] des pages de gauche qui peuvent rester blanches ([pages] blank = "left pages")
    [smaller] une portée de 7,0 mm ([staff] smallest = 70)
    [folds] des pages qui se déplient ([pages] fold_outs = "for turns")
   *[all] tout cela ensemble : première page d'un côté ou de l'autre, pages de gauche blanches, pages qui se déplient, une portée de 7,0 mm
} : { quick-turns } sur { pages-counted }, { $cost } points
quick-turns-partner = y remédierait : un voisin de lutrin qui tourne, ou les premiers systèmes de la page suivante recopiés en petit sur celle-ci

# Ce que doivent savoir ceux qui jouent ou préparent les parties

part-tacet = rien à jouer : tacet
part-notes-missing = { $count ->
    [one] 1 note n'est pas imprimée, { $bar }
   *[other] { $count } notes ne sont pas imprimées, la première { $bar }
} : la gravure les omet ; comparer avec la partition
part-no-cue = de { $first } à { $last } : { $count } mesures de silence sans réplique : personne ne joue avant la fin une ligne que l'on puisse montrer
part-rests-written-out = sur plusieurs portées : les silences de plusieurs mesures sont écrits mesure par mesure
part-smaller-staff = une portée de { $height } mm pour les tournes : la maison le permet ([staff] smallest)
part-too-high = le système qui commence par { $bar } est plus haut que la page

# Ce qui accompagne les parties

handover-title = Ce qu'il y a ici
handover-part = partie
handover-pages = pages
handover-copies = exemplaires
handover-printed = pages à imprimer
handover-paper = Papier : { $width } x { $height } mm.
handover-in-all = En tout
handover-files = Fichiers
handover-is-part = partie à imprimer
handover-is-part-file = la même partie en MusicXML
handover-is-booklet = la même partie en feuilles à plier et agrafer
handover-is-score = la partition avec ces coups d'archet
handover-is-layer = calque de coups d'archet
handover-is-changes = feuille de changements : ce que l'on écrit dans les parties déjà sur les lutrins
handover-is-contents = cette liste, à imprimer
handover-is-sums = sommes de tous les fichiers (SHA-256), pour voir s'ils sont arrivés entiers
handover-look-at = À regarder avant l'envoi
handover-made = Tout ce qui va sur les lutrins est dans { $folder } et, en un seul fichier, dans { $archive }

# Profils de la maison

house-good = { $name } : tout ce que ce profil demande peut s'avoir ensemble.
house-lines = { $count } systèmes sont demandés { $page ->
    [first] sur la première page ([pages] systems_first)
   *[other] par page ([pages] systems)
} ; avec des portées de { $staff } mm et { $apart } mm de blanc entre elles il en tient { $fit }.
house-smallest = La plus petite portée est plus haute que la portée : aucune ne rapetisse donc jamais ([staff] smallest).
house-cue = Une réplique de { $bars } mesures ne tient pas dans un silence de { $rest } ([rests] cue, cue_bars).
house-indent = { $indent } mm de blanc devant un premier système laissent { $left } mm à la musique ([movements] indent).
house-margin = Une marge de { $margin } mm : presque toutes les imprimantes s'arrêtent à 5 mm du bord ([paper]).

# Pages et systèmes demandés

page-left-blank = Cette page reste blanche pour la tourne.
part-breaks = { $count ->
    [one] 1 page ou système commence
   *[other] { $count } pages ou systèmes commencent
} où { $file } le demande
break-moved = { break-begins } à la { $bar } commence maintenant à la { $now } : la musique autour s'y trouve
break-first = { break-begins } à la { $bar } n'est pas fait : sa musique est maintenant le début de la partie ; cela reste dans le fichier
break-other-music = { break-begins } à la { $bar } n'est pas fait : la musique autour n'est plus dans la partie ; cela reste dans le fichier
break-no-part = { break-begins } à la { $bar } n'est pas fait : aucune partie ne s'appelle { $part } ; cela reste dans le fichier
break-begins = { $begins ->
    [page] le début de page demandé
   *[line] le début de système demandé
}
