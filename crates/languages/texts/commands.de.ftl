# Was Befehle sagen, wenn sie fertig sind: arcata aside, habits, layer.

# Beiseitelegen

aside-done = { $count ->
    [one] 1 Stelle ist
   *[other] { $count } Stellen sind
} von nun an beiseitegelegt, in { $file }
aside-slurs-done = { $told ->
    [phrase] { $count ->
        [one] 1 Bindebogen gilt
       *[other] { $count } Bindebögen gelten
    } von nun an als Phrasierungsbogen
   *[bow] { $count ->
        [one] 1 Bindebogen gilt
       *[other] { $count } Bindebögen gelten
    } von nun an als ein Strich
}, nach { $file }

# Die Gewohnheiten eines Konzertmeisters

habits-account = Gelernt an { $strokes } bezeichneten Strichen, im Stil { $style }. Von { $tested } Strichen in ausgelassenen Takten sehen diese Aufschläge { $after } voraus, der Stil allein { $before }: { $gain } Punkte mehr, Standardfehler { $error }, { $sure ->
    [sure] kaum Zufall
    [likely] mehr als der Fehler, aber nicht sicher
   *[chance] es kann gut Zufall sein
}.
habits-no-price-moved = Kein Aufschlag hat sich um ein Zehntel verschoben.
habits-more-moved = { $count ->
    [one] Ein weiterer Aufschlag hat sich weniger verschoben.
   *[other] { $count } weitere Aufschläge haben sich weniger verschoben.
}
habits-written = Geschrieben in { $file }. Damit gestrichen wird mit --habits.
habits-not-learned-from = Nicht daraus gelernt:
habits-price = { $what } zählt { $price } statt { $before }: { $way ->
    [avoided] wird eher vermieden
   *[minded] stört weniger
}.
price-downbeat = Ein Aufstrich auf der Eins, eine einzelne Note,
price-downbeat-slurred = Ein Aufstrich auf der Eins, gebundene Noten,
price-downbeat-bar = Ein Aufstrich auf der Eins, etwa einen Takt lang,
price-downbeat-bars = Ein Aufstrich auf der Eins, mehrere Takte lang,
price-downbeat-even = Ein Aufstrich auf der Eins, wo die Takte zu zweien gehen, zusätzlich,
price-mid-bar = Ein Aufstrich in der Mitte eines geraden Taktes, eine einzelne Note,
price-mid-bar-slurred = Ein Aufstrich in der Mitte eines geraden Taktes, gebundene Noten,
price-half-bar = Ein Bindebogen, der in der Mitte eines geraden Taktes im Abstrich beginnt,
price-beat = Ein Abstrich auf einem leichten Schlag
price-offbeat = Ein Abstrich zwischen den Schlägen
price-upbeat = Ein Abstrich auf der letzten kurzen Note vor der Eins
price-upbeat-slurred = Ein Abstrich auf dem letzten kurzen Bindebogen vor der Eins
price-upbeat-long = Ein Abstrich auf dem letzten langen Strich vor der Eins
price-flow-slurred = Ein Aufstrich auf einem kurzen Bindebogen, der in die Eins führt,
price-flow-long = Ein langer Aufstrich, der in die Eins führt,
price-upbeat-mid-bar = Ein Abstrich unmittelbar vor der Taktmitte
price-entry = Ein Einsatz mit dem Strich gegen die Eins
price-entry-elsewhere = Ein Einsatz im Aufstrich abseits der Eins
price-before-rest = Ein Abstrich auf dem letzten Strich vor einer kurzen Pause
price-ending = Ein Aufstrich auf der letzten Note einer Phrase
price-hook = Ein Anbinden
price-hook-last-two = Die letzten zwei von gleichen Noten eines Taktes anzubinden,
price-hook-by-slur = Ein Anbinden neben einem Bindebogen, zusätzlich,
price-hook-slurs = Ein Anbinden zwischen zwei Bindebögen, zusätzlich,
price-retake = Ein Neuansetzen in einer Linie, die weiterklingt,
price-retake-apart = Ein Neuansetzen, wo die Striche getrennt sind,
price-retake-up = Ein Neuansetzen für einen Aufstrich, zusätzlich,
price-reset = Über eine Pause in derselben Richtung weiterzustreichen,
price-swell = Ein Schweller gegen den Bogen

# Strichfassungen

bowings-counted = { $count ->
    [one] 1 Strich
   *[other] { $count } Striche
}
layer-lifted = { $count ->
    [one] 1 Zeichen ist
   *[other] { $count } Zeichen sind
} in { $layer } übernommen; die Partitur ohne sie ist { $score }
layer-staying = Zeichen, die in der Partitur bleiben:
layer-applied = { $layer }: { $written } geschrieben, { $standing } standen schon da
layer-overruled = Eine Fassung darüber gilt:
layer-not-applied = Nicht geschrieben:
layer-wiped = { bowings-counted } entfernt; die Partitur ist { $score }
layer-not-found = In der Partitur nicht gefunden:
layer-nothing = nichts
layer-differences = { $count ->
    [one] 1 Unterschied
   *[other] { $count } Unterschiede
}
layer-merged = { bowings-counted }, { $conflicts ->
    [one] 1 Widerspruch
   *[other] { $conflicts } Widersprüche
}, { $settled } nach Vorgabe entschieden
layer-settled = Nach Vorgabe entschieden:
layer-to-settle = Zu entscheiden, beides bleibt:
layer-conflict = { $first } will { $one }, { $second } will { $other }
layer-checked = { bowings-counted }, { $remarks ->
    [one] 1 Bemerkung
   *[other] { $remarks } Bemerkungen
}
layer-proposed = Vorgeschlagen:
layer-as = wie { $from }, { $by ->
    [unison] Einklang
    [octave] Oktave
    [parallel] gleiche Schritte
    [rhythm] gleicher Rhythmus und gleiche Bindebögen
   *[mostly] gleicher Rhythmus und gleiche Bindebögen bis auf einige Noten
}
layer-not-spread = Nicht übertragen:
layer-added = { bowings-counted } hinzugefügt; die Fassung ist { $layer }
layer-carried = { bowings-counted } sicher übertragen, { $doubtful } mit Zweifel, { $orphaned } ohne ihre Note
layer-look-at = Hier ist nachzusehen:
layer-without-note = In der Fassung behalten, ohne Note:
layer-entered = { bowings-counted } eingetragen; { $all } in { $layer }
layer-nothing-wrong = { bowings-counted }; kein Fehler.
layer-troubles = { $count ->
    [one] 1 Fehler
   *[other] { $count } Fehler
} im Text; nichts ist geschrieben.
layer-more-troubles = und { $count } weitere; zuerst diese berichtigen.

# Ein Ordner mit Fassungen

library-work = Werk
library-layer = Fassung
library-owner = von wem
library-ensemble = Ensemble
library-date = Datum
library-entries = Striche
library-file = Datei
library-to-settle = { $count } zu klären
library-scores = Partituren
library-untitled = ohne Titel
library-not-listed = nicht aufgelistet
library-nothing = Hier ist weder eine Partitur noch eine Strichfassung.
