# Stimmen auf Papier: wie ihre Seiten enden, was hülfe, was man von ihnen wissen sollte, was mit ihnen geht.

# Gemacht

part-made = { $name }: { pages-counted }, { $lines ->
    [one] 1 Zeile
   *[other] { $lines } Zeilen
} ({ $seconds } s)
part-kept = { $name }: wie sie schon gemacht war, { pages-counted }
pages-counted = { $pages ->
    [one] 1 Seite
   *[other] { $pages } Seiten
}
part-files = { $pdf } und .musicxml
part-sheets = { $count ->
    [one] 1 Bogen Papier
   *[other] { $count } Bogen Papier
}, { $width } x { $height } mm, beidseitig, über die kurze Kante gewendet: falten, heften
part-glued = dahinter, zum Einkleben: { $pages }
part-entered = { $count ->
    [one] 1 Angabe, die einmal für alle steht,
   *[other] { $count } Angaben, die einmal für alle stehen,
} ergänzt
part-cues = { $count ->
    [one] 1 Stichnote
   *[other] { $count } Stichnoten
} ergänzt
part-not-in-any = In keiner Stimme: { $what }
part-changed = seither { $count ->
    [one] 1 Takt
   *[other] { $count } Takte
} geändert, am Rand angestrichen: { $bars }
part-changed-and-more = { $bars } und { $more } weitere
part-not-changed = seither nichts geändert
part-new = vorher nicht da, also ist nichts angestrichen

# Seitenenden

page-end-facing = Seite { $page } endet vor { $bar }: kein Wenden, die nächste Seite liegt daneben
page-end-fold = Seite { $page } endet vor { $bar }: kein Wenden, Seite { $page }a klappt heraus, an ihren Rand geklebt
page-end-turned = Seite { $page } endet vor { $bar }: { turn-time } zum Wenden{ $returns ->
    [yes] ; die Musik springt darüber zurück (Wiederholung, da capo oder dal segno), mit { $back } s Pause
   *[no] { "" }
}
page-end-rushed = Seite { $page } endet vor { $bar }: nur { turn-time } zum Wenden{ $returns ->
    [yes] ; die Musik springt darüber zurück (Wiederholung, da capo oder dal segno), mit { $back } s Pause
   *[no] { "" }
}; { $needed } s sollten es sein
turn-time = { $rest } s Pause{ $strings ->
    [some] { " und" } { $open } s auf leerer Saite
   *[none] { "" }
}

# Zu schnelles Wenden

quick-turns = { $count ->
    [0] keine zu schnelle Wendestelle
    [one] eine zu schnelle Wendestelle
   *[other] { $count } zu schnelle Wendestellen
}
quick-turns-cost = { quick-turns }: das ist die günstigste Einteilung, { $cost } Punkte; ohne die Kosten des Wendens hat sie { $without }
quick-turns-dearer = eine Einteilung ohne sie ist erlaubt, aber teurer
quick-turns-least = { quick-turns } in jeder Einteilung, die das Haus erlaubt
quick-turns-one-stays = keine Einteilung, die das Haus erlaubt, vermeidet sie
quick-turns-stay = keine Einteilung, die das Haus erlaubt, hat weniger
quick-turns-mend = es hülfe: { $what ->
    [emptier] leerere Seiten, die um jeden Preis bei Pausen enden
    [side] die erste Seite auf der anderen Seite ([pages] first)
    [blank] linke Seiten, die leer bleiben dürfen ([pages] blank = "left pages")
    [smaller] ein Notensystem von 7,0 mm ([staff] smallest = 70)
    [folds] Seiten, die herausklappen ([pages] fold_outs = "for turns")
   *[all] all das zusammen: erste Seite links oder rechts, leere linke Seiten, Klappseiten, ein Notensystem von 7,0 mm
}: { quick-turns } auf { $pages ->
    [one] 1 Seite
   *[other] { $pages } Seiten
}, { $cost } Punkte
quick-turns-partner = es hülfe: ein Pultnachbar, der wendet, oder die ersten Zeilen der nächsten Seite klein auf diese kopiert

# Was wissen sollte, wer spielt oder die Stimmen richtet

part-tacet = nichts zu spielen: tacet
part-notes-missing = { $count ->
    [one] 1 Note ist nicht gedruckt, in { $bar }
   *[other] { $count } Noten sind nicht gedruckt, die erste in { $bar }
}: der Notenstich lässt sie aus; mit der Partitur vergleichen
part-no-cue = { $first } bis { $last }: { $count } Takte Pause ohne Stichnoten: vor ihrem Ende spielt niemand eine Linie, die man zeigen könnte
part-rests-written-out = auf mehreren Notensystemen: Pausen über mehrere Takte sind Takt für Takt ausgeschrieben
part-smaller-staff = ein Notensystem von { $height } mm für die Wendestellen: das Haus erlaubt es ([staff] smallest)
part-too-high = die Zeile, die mit { $bar } beginnt, ist höher als die Seite

# Was mit den Stimmen geht

handover-title = Was hier liegt
handover-part = Stimme
handover-pages = Seiten
handover-copies = Exemplare
handover-printed = Seiten zu drucken
handover-paper = Papier: { $width } x { $height } mm.
handover-in-all = Zusammen
handover-files = Dateien
handover-is-part = Stimme zum Drucken
handover-is-part-file = dieselbe Stimme als MusicXML
handover-is-booklet = dieselbe Stimme auf Papierbogen zum Falten und Heften
handover-is-score = die Partitur mit diesen Strichen
handover-is-layer = Strichfassung
handover-is-changes = Änderungsblatt: was in Stimmen geschrieben wird, die schon auf den Pulten liegen
handover-is-contents = diese Liste, zum Drucken
handover-is-sums = Prüfsummen aller Dateien (SHA-256), ob sie heil angekommen sind
handover-look-at = Ansehen, bevor es hinausgeht
handover-made = Alles für die Pulte liegt in { $folder } und, in einer Datei, in { $archive }

# Hausprofile

house-good = { $name }: alles, was dieses Hausprofil verlangt, geht zusammen.
house-lines = { $count } Zeilen werden verlangt { $page ->
    [first] auf der ersten Seite ([pages] systems_first)
   *[other] auf einer Seite ([pages] systems)
}; mit Notensystemen von { $staff } mm und { $apart } mm Weiß dazwischen haben { $fit } Platz.
house-smallest = Das kleinste Notensystem ist höher als das Notensystem selbst: so wird nie eines kleiner ([staff] smallest).
house-cue = Stichnoten von { $bars } Takten passen nicht in eine Pause von { $rest } ([rests] cue, cue_bars).
house-indent = { $indent } mm Weiß vor einer ersten Zeile lassen { $left } mm für die Noten ([movements] indent).
house-margin = Ein Rand von { $margin } mm: die meisten Drucker enden 5 mm vor der Kante ([paper]).

# Gewünschte Seiten und Zeilen

page-left-blank = Diese Seite bleibt zum Wenden leer.
part-breaks = { $count ->
    [one] 1 Seite oder Zeile beginnt
   *[other] { $count } Seiten oder Zeilen beginnen
}, wo { $file } es wünscht
break-moved = { break-begins }, für { $bar } gewünscht, beginnt jetzt bei { $now }: dort steht jetzt die Musik darum
break-first = { break-begins }, für { $bar } gewünscht, wird nicht gemacht: ihre Musik ist jetzt der Anfang der Stimme; der Wunsch bleibt in der Datei
break-other-music = { break-begins }, für { $bar } gewünscht, wird nicht gemacht: die Musik darum steht nicht mehr in der Stimme; der Wunsch bleibt in der Datei
break-no-part = { break-begins }, für { $bar } gewünscht, wird nicht gemacht: keine Stimme heißt { $part }; der Wunsch bleibt in der Datei
break-begins = { $begins ->
    [page] eine neue Seite
   *[line] eine neue Zeile
}
