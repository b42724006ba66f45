# Seiten und Berichte: Überschriften, Beschriftungen, Striche zur Wahl, was gewonnen und verloren ist.

# Beschriftungen

label = { $label }:
assumed = angenommen
not-read = nicht gelesen
also = auch
set-aside = beiseitegelegt
better = Besser
worse = Schlechter
weighed = { $what }: { $list }.
in-the-file = in der Datei
in-the-file-more = in der Datei: { $count } weitere (alle mit --format json)
nothing-found = Nichts gefunden.
bars-and-strokes = { $bars ->
    [one] 1 Takt
   *[other] { $bars } Takte
}, { $strokes ->
    [one] 1 Strich
   *[other] { $strokes } Striche
}; { $count ->
    [0] keine Streicherstimme
   *[other] { $names }
}
times-in-all = { $count }-mal insgesamt; auch: { $places }
beats-of-a-bar = { $count ->
    [one] Schlag
   *[other] Schläge
}{ $kept }{ $beats }
bars-named = { $count ->
    [one] Takt
   *[other] Takte
} { $bars }{ $left ->
    [0] { "" }
   *[other] { " " }und { $left } weitere
}
places-in-file = { $count ->
    [one] 1 Stelle
   *[other] { $count } Stellen
} in { $file }
aside-nothing-found = beiseitegelegt, aber nichts ist gefunden
aside-entry = Eintrag { $number } von { $file } ({ $asks }): { $reason }
movement-numbered = Satz { $number }
place-of-bar = { $bar }, { place-beat } { $beat }
file = Datei
bars-column = Takte
strokes-column = Striche
in-all = insgesamt

# Tabellen der Striche

column-bar = Takt
column-beat = Schlag
column-bow = Strich
column-how = wie
column-frog-tip = Frosch … Spitze
column-penalty = Aufschlag
column-sure = sich.
row-bow = { $bow ->
    [down] ab
   *[up] auf
}
row-link = { $link ->
    [hooked] angeb.
    [retake] neu an.
    [reset] aufges.
   *[change] { "" }
}
row-penalty = { $points } { $term }
term = { $term ->
    [beat] Schlag
    [upbeat] Auftakt
    [entry] Einsatz
    [swell] Schweller
    [accent] Akzent
    [ending] Schluss
    [hook] Anbinden
    [retake] Neuansetzen
    [reset] Absetzen
    [retake-time] Ansetzzeit
    [speed] Bogentempo
    [speed-limit] Tempogrenze
    [place] Ort im Bogen
    [mark] Zeichen
    [repeat] Wiederholung
    [unity] Einigkeit
    [likeness] Ähnlichkeit
   *[notation] Schrift
}
printed-in-the-score = in der Partitur gedruckt
sure-means = sich.: wie viele von hundert Spielern diesen Strich nähmen
sure-and-open = sich.: wie viele von hundert Spielern diesen Strich nähmen; ? zwei Weisen sind fast gleich, --alternatives 3 mit diesen --bars zeigt sie
turn-link = { $link ->
    [hooked] angebunden
    [retake] neu angesetzt
    [reset] aufgesetzt
   *[change] gewechselt
}
turn = { $road ->
    [repeat] Wiederholung von Takt { $bar } bis { $from }
    [da-capo] Da capo von Takt { $from } zu { $bar }
    [dal-segno] Dal segno von Takt { $from } zu { $bar }
   *[onward] weiter von Takt { $from } zu { $bar }
}: { $comes ->
    [unknown] { turn-link }, im { bow-name }
    [by-itself] zweites Mal wieder im { bow-name }, von selbst
    [free] zweites Mal wieder im { bow-name }: der Bogen ist frei
    [lifted] in der Pause absetzen, wieder im { bow-name } ({ $there } s da, { $needed } s nötig)
    [retaken] neu ansetzen, wieder im { bow-name } ({ $there } s da, { $needed } s nötig)
   *[reversed] keine Zeit zum Absetzen ({ $there } s da, { $needed } s nötig): wie es kommt, beginnt das zweite Mal mit dem anderen Strich
}{ $weighed ->
    [afterwards] ; kreuzt eine andere Wiederholung: nicht gewogen
   *[search] { "" }
}

# Aufschläge

yardstick = Aufschlag: ein Aufstrich auf einer Eins zählt { $points }.
share = { $what } ({ $points })
better-beat = Striche mit dem Schlag
better-upbeat = Aufstrich gleich vor der Eins
better-entry = Einsatz mit dem Strich, der zum Schlag passt
better-swell = Crescendo oder Diminuendo mit dem Bogen
better-accent = Akzente oder Akkorde mit dem passenden Strich
better-ending = Phrase endet im Abstrich
better-hook = weniger Anbinden
better-retake = weniger Neuansetzen
better-reset = weniger Absetzen in Pausen
better-retake-time = Zeit genug zum Absetzen
better-speed = Bogen näher an dem Tempo, das die Dynamik will
better-speed-limit = Bogen so schnell, wie die Dynamik erlaubt
better-place = Striche näher an ihrem Ort im Bogen
better-mark = gedruckte Strichzeichen befolgt
better-repeat = zweites Mal beginnt mit demselben Strich
better-unity = gestrichen wie die mit demselben Rhythmus
better-likeness = gestrichen wie dieselbe Figur anderswo
better-notation = weniger Änderungen an der Schrift
worse-beat = Striche gegen den Schlag
worse-upbeat = Abstrich gleich vor der Eins
worse-entry = Einsatz mit dem Strich gegen den Schlag
worse-swell = Crescendo oder Diminuendo gegen den Bogen
worse-accent = Akzente oder Akkorde mit dem falschen Strich
worse-ending = Phrase endet im Aufstrich
worse-hook = mehr Anbinden
worse-retake = mehr Neuansetzen
worse-reset = mehr Absetzen in Pausen
worse-retake-time = nicht Zeit genug zum Absetzen
worse-speed = Bogen weiter von dem Tempo, das die Dynamik will
worse-speed-limit = Bogen schneller oder langsamer, als die Dynamik erlaubt
worse-place = Striche weiter von ihrem Ort im Bogen
worse-mark = gedruckte Strichzeichen nicht befolgt
worse-repeat = zweites Mal beginnt mit dem anderen Strich
worse-unity = anders gestrichen als die mit demselben Rhythmus
worse-likeness = anders gestrichen als dieselbe Figur anderswo
worse-notation = mehr Änderungen an der Schrift

# Striche zur Wahl

way-best = die beste Weise
way-best-standing = die beste Weise ({ $standing })
way-best-does = { $best }: { $does }
way-does = { $does }
way-standing = { $standing }: { $name }
way-begins = im { bow-name }
way-hook-at = { $at-in } anbinden
way-retake-at = { $at-in } neu ansetzen
way-start = { $at-in } im { bow-name } beginnen
way-hook = den { bow-name } { $at-in } anbinden
way-retake = für { a-bow } { $at-in } neu ansetzen
way-as-it-comes = { bow-name } { $at-in } ohne Anbinden oder Neuansetzen
way-as-it-is = wie es ist: die beste Weise endet so
standing-plain-alternation = schlichtes Abwechseln
standing-other-bow-first = der andere Strich zuerst
standing-last-two-hooked = die letzten zwei angebunden, wo ein Takt nicht aufgeht
ways-to-bow = Striche zur Wahl für diese Takte
lane-letters = D Abstrich, U Aufstrich; h an den vorigen angebunden, r neu angesetzt
way-penalty = (Aufschlag +{ $points })
way-penalty-and-changes = (Aufschlag { $points }{ $changes ->
    [0] { "" }
    [1] , eine Änderung an der Schrift
   *[other] , { $changes } Änderungen an der Schrift
})
no-other-way = Die gedruckten Zeichen und die Fixpunkte lassen keine andere Weise.
ways-to = Weisen: { $asked }
asked-ending = { $at } im { bow-name } beenden
no-way = Es gibt keine.
assume-played-once = wiederholte Strecken sind gewogen, als würden sie einmal gespielt
demand-printed = der gedruckte { bow-name } { $at-in }
demand-anchor = { $at }{ $bow ->
    [down] { " " }Abstrich
    [up] { " " }Aufstrich
   *[any] { "" }
}{ $link ->
    [change] { " " }gewechselt
    [hooked] { " " }angebunden
    [retake] { " " }neu angesetzt
    [reset] { " " }aufgesetzt
   *[any] { "" }
}
conflict-same-stroke = { $one } und { $other } verlangen von einem Strich beide Richtungen; das Zweite gilt.
conflict-pays = { $one } und { $other } gehen nicht zusammen, wie es kommt; beide zu behalten erhöht den Aufschlag um { $points }{ $how-known ->
    [yes] : { $how }
   *[no] { "" }
}.
anchors = Fixpunkte: { $anchors }
anchors-cost-nothing = Kein Aufschlag: der beste Plan tut es ohnehin.
anchors-cost = Aufschlag: { $points } höher als der beste Plan ohne sie.
otherwise = anders: { $what }
repairs = Ausbesserungen: die ganze Zeile, wie gedruckt, hat einen Aufschlag von { $points }
no-repair = Keine Änderung der Bindebögen ist ihren Preis wert.
repair-step = mit { $count ->
    [one] einer Änderung
   *[other] { $count } Änderungen
}: Aufschlag um { $points } niedriger{ $step ->
    [further] , davon { $more } durch diesen Schritt
   *[first] { "" }
}
before = vorher
after = nachher
lane-frog = Frosch
lane-tip = Spitze

# Zusammen

no-bow-begins = kein Strich beginnt
who-does = { $does }: { $names }
does-down = Abstrich
does-up = Aufstrich
does-go-on = geht weiter
does-rest = Pause
all-of-them = alle
bowed-alike = gleich gestrichen
bowed-differently = verschieden gestrichen, und warum
groups-more = und { $count } weitere Gruppen (alle mit --format json)
places-more = und { $count } weitere Stellen (alle mit --format json)
group = { $bars }: { $lines } { $relation ->
    [unison] im Einklang
    [octaves] in Oktaven
    [parallel] parallel
   *[rhythm] in einem Rhythmus
}, { $strokes ->
    [one] 1 Strich
   *[other] { $strokes } Striche
}
departure = { $at }, { $line }: { $strokes ->
    [one] 1 Strich
   *[other] { $strokes } Striche
} { $from ->
    [section] anders als die mit demselben Rhythmus
   *[figure] anders als dieselbe Figur anderswo
}; { $why }
departs-by-mark = das gedruckte Zeichen will es so
departs-by-anchor = ein Fixpunkt will es so
departs-evenly = mitzugehen würde dasselbe kosten
departs-for = mitzugehen würde den Aufschlag um { $points } erhöhen, vor allem: { $reason }

# Gedruckte Strichzeichen

part = Stimme
marks-column = Zeich.
least-column = wenig.
in-total = gesamt
class-needed = nötig
class-effect = Wirkung
class-obvious = unnötig
class-contradictory = widersprüchl.
bar-of-marks = Takt { $bars }{ $left ->
    [0] { "" }
   *[other] { " " }und { $left } weitere
}
mark-reason = { $reason ->
    [alternation] Abwechseln ergibt den anderen Strich
    [later-instance] Abwechseln ergibt den anderen Strich; die Figur war schon bezeichnet
    [free-bow] hier ist der Bogen frei
    [after-rest] nach einer Pause macht es jeder anders
    [beside-row] hier beginnt oder endet eine Reihe in einer Richtung
    [unusual] es sagt, dass ein ungewöhnlicher Strich gemeint ist
    [holds-plan] ohne es wäre ein anderer Strich besser
    [row-of-downs] Reihe lauter Abstriche
    [ups-into-down] Aufstriche in einen starken Abstrich
    [first-instances] die ersten Male einer wiederholten Figur
    [spelt-out] schreibt einen Bindebogen mit Punkten oder Tenutostrichen aus
    [comes-anyway] er kommt ohnehin
    [both-bows] Abstrich und Aufstrich auf einem Strich
    [on-rest] auf einer Pause
    [plucked] im Pizzicato
    [not-bowed] auf einer Note, die nicht gestrichen wird
    [inside-slur] in einem Bindebogen
   *[tied-from-before] auf einer herübergebundenen Note
}

# Die Seite einer Durchsicht

page-title = was die Bögen tun
page-skip = Zu den Befunden
page-glance = Auf einen Blick
page-findings = Befunde
page-brackets = Eine Zahl in Klammern ist ein Anteil an einem Aufschlag.
page-rules = Die Regeln, und warum sie wichtig sind
page-advice = Arcata rechnet und rät; die Spieler entscheiden. Wenn Hand, Arm oder Rücken sich anstrengen, ist das ein Grund zu ruhen und eine Lehrkraft oder Ärztin zu fragen.
page-bars = Takte
page-bowed-parts = Streicherstimmen
strokes-counted = { $count ->
    [one] 1 Strich
   *[other] { $count } Striche
}
page-calculated-for = Gerechnet für
page-contradicts = Die Datei widerspricht sich an { $count ->
    [one] 1 Stelle
   *[other] { $count } Stellen
}
page-set-aside = { $count ->
    [one] 1 Stelle ist
   *[other] { $count } Stellen sind
} beiseitegelegt
page-reasons-in = In { $file }, mit den Gründen, die dort stehen.
page-held-for = Beiseitegelegt: { $reason }
page-entry-unused = Eintrag { $number } von { $file } ({ $asks }) legt beiseite, was nicht mehr gefunden wird: { $reason }
page-which = Welche Befunde zu zeigen sind
page-shown = # von # gezeigt.
page-severity = Gewicht
page-section = Gruppe
page-rule = Regel
page-show-all = Alle zeigen
page-strip-key = Eine Spalte je Takt. Hoher Block: die Gruppe beginnt auf der Eins einen Abstrich; niedriger Block: einen Aufstrich; Linie: ein Strich geht darüber hinweg; nichts: Pause oder gezupft. Block in der Reihe „Alle“: auf dieser Eins gehen Striche weiter und keiner beginnt. Scheiben: Befunde,
picture-frog = Frosch
picture-tip = Spitze
picture-key = Die Zeit läuft mit den Noten; die Höhe ist der Ort im Bogen, dick am Frosch und dünn an der Spitze. Ring: nach der Pause aufgesetzt. Gestrichelter Bogen: abgesetzt. Kurzer Strich: Halt, gleiche Richtung. Perlen: Pulse. Zickzack: Tremolo. Pfeilspitzen: mehr Bogen, als die Dynamik will. Gestrichelte Linie: weniger Bogen, als der Ton braucht; Punkte zeigen, wohin das übliche Tempo führte, ein Strich auf der Schiene, wo der Bogen zu Ende wäre. Zeichen im Umriss sind errechnet, volle sind gedruckt.
picture-key-open = Hohl: der andere Strich ist fast ebenso gut.
page-lane-key = Unter der Musik läuft die Zeit mit den Noten, und die Höhe ist der Ort im Bogen, der Frosch oben: dick am Frosch, dünn an der Spitze. Ring: nach der Pause aufgesetzt. Gestrichelter Bogen: abgesetzt. Kurzer Strich: Halt, gleiche Richtung. Perlen: Pulse. Zickzack: Tremolo. Pfeilspitzen: mehr Bogen, als die Dynamik will. Gestrichelte Linie: weniger Bogen, als der Ton braucht; Punkte zeigen, wohin das übliche Tempo führte. Zeichen im Umriss sind errechnet, volle sind gedruckt.
as-it-stands = Wie es dasteht
no-picture = Kein Bild: diese Takte lassen sich nicht stechen.
also-at = Auch: { $places }{ $rest ->
    [0] { "" }
   *[other] { " " }und { $rest } weitere Stellen
}.
proposal-numbered = Vorschlag { $number }
strip-bars = Takte { $first } bis { $last }
strip-downbeats = Einsen der Takte { $first } bis { $last }: { $told }
strip-row = { $name } beginnt { $down } im Abstrich und { $up } im Aufstrich, geht über { $on } hinweg
strip-nobody = auf { $count } beginnt niemand.
strip-all = Alle
folder-title = Durchgesehene Partituren
folder-scores = { $count ->
    [one] 1 Partitur
   *[other] { $count } Partituren
}
folder-region = Partituren
folder-score = Partitur
folder-title-of-work = Titel
folder-strokes = Striche
folder-contradictions = Widersprüche in der Datei
calculated-professional = Berufsmusiker
calculated-amateur = Laien
calculated-student = Studierende
calculated-file = Spieler wie in { $file }
calculated-style = Stil { $style }
calculated-apart = jede Stimme für sich
with-engraved-music = Mit gestochener Musik: { $file }
told-bars = Takte { $first } bis { $last }
told-stroke = { $at } { bow-way }{ $link ->
    [hooked] , angebunden
    [retake] , neu angesetzt
    [reset] , aufgesetzt
   *[change] { "" }
}
told-line = { $name }: { $strokes }
told-none = Kein Strich beginnt darin

# Was der Plan voraussetzt

assume-opening-tempo = { $quarters } Viertel in der Minute am Anfang, wie verlangt
assume-quarters = { $quarters } Viertel in der Minute, wo die Partitur kein Tempo angibt
assume-louder = { $count ->
    [one] 1 Stufe
   *[other] { $count } Stufen
} { $way ->
    [louder] lauter
   *[softer] leiser
} als geschrieben

# Bilder eines Plans

picture-the-plan = der Plan.
picture-other-way = { $what } (Aufschlag { $points } höher)
picture-from-to = { $from } bis { $to }
picture-bars = Takte { $first } bis { $last }
assume-habits = die Gewohnheiten eines Konzertmeisters, gelernt aus { $count } bezeichneten Strichen
assume-habits-rest = die Gewohnheiten des Konzertmeisters ruhen: sie sind im Stil { $style } gelernt
picture-bow-plan = Bogenplan
rules-foot = 
    Die Seite einer Regel: arcata rules RULE. Eine weglassen: arcata review SCORE --without RULE,
    oder in einer einzigen Partitur, mit Grund: arcata aside SCORE --rule RULE --reason TEXT.

# Änderungsblätter

sheet-title = Änderungsblatt
sheet-untitled = Ohne Titel
sheet-untitled-layer = Fassung ohne Titel
sheet-as-printed = die Stimmen, wie gedruckt
sheet-label-write = einzutragen:
sheet-label-so-far = bisher:
sheet-head-write = Einzutragen:
sheet-head-so-far = Bisher:
sheet-count = { $write } einzutragen, { $off } zu entfernen
sheet-key = Takte fett, dann der Schlag.
sheet-key-with-music = Takte fett, dann der Schlag. Die Noten zeigen den Takt, wie er aussehen soll, geänderte Noten auf Grau.
sheet-continued = { $name } (Fortsetzung)
sheet-was = (bisher: { $was })
sheet-take-off = entfernen: { $mark }
sheet-nothing = nichts
sheet-librarian = Für die Notenbibliothek
sheet-section = Gruppe
sheet-write = eintr.
sheet-off = entfernen
sheet-stands = Pulte
sheet-marks = Zeichen
sheet-time = Zeit
sheet-all = alle
sheet-as-it-shall-look = Takt { $bar }, wie er aussehen soll
sheet-copying = { $marks } Zeichen auf allen Pulten: etwa { $time } zum Abschreiben.
sheet-estimate-reason = den Takt auf der Seite finden, ein Zeichen mit Bleistift schreiben oder ausradieren
sheet-estimate-source = aus dem Gedächtnis; das eigene Übertragen messen und angeben
sheet-estimate-set-by-user = vom Benutzer angegeben
sheet-estimate = Die Schätzung rechnet { $value } { $unit } für ein Zeichen ({ $reason }; { $source }; { $status ->
    [seen] gesehen
    [counted] gezählt
    [derived] abgeleitet
    [yours] eigener Wert
   *[default] Vorgabe
}).
sheet-spared = { $marks } Zeichen der Fassung nicht eingetragen: wer streicht, wie es kommt, tut dasselbe ohne sie.
sheet-all-found = Jeder Strich der Fassung hat in dieser Partitur seine Note.
sheet-to-settle = Zu klären: in keiner Stimme, oder ohne Zeichen
sheet-doubtful = Mit Zweifel übertragen: bitte ansehen
sheet-not-spread-heading = Nicht auf die anderen Stimmen übertragen
sheet-not-to = { $from } nicht auf { $part }
sheet-not-spread = { $marks } Zeichen in { $bars-are ->
    [many] den Takten
   *[one] Takt
} { $bars }; { $why }
sheet-not-settled = zu klären: { $first } will { $wants }, { $second } will { $other }
sheet-several = die Fassung sagt hier mehreres: { $marks }
sheet-contradicts = nicht mit der Fassung aufgetragen, weil es der Partitur oder einem anderen Eintrag widerspricht; arcata layer check sagt, welchem
sheet-found-no-note = es fand keine Note, als die Fassung auf diese Partitur übertragen wurde
mark-bow = { bow-name }
mark-both-bows = { $bow ->
    [up] Aufstrich und Abstrich
   *[down] Abstrich und Aufstrich
} auf einer Note
mark-hook = angebunden{ $sign ->
    [dots] { " " }durch einen Bindebogen mit Punkten
    [dashes] { " " }durch einen Bindebogen mit Tenutostrichen
   *[marks] { "" }
}{ $bow ->
    [down] { " " }(Abstrich)
    [up] { " " }(Aufstrich)
   *[any] { "" }
}
mark-retake = neu ansetzen{ $bow ->
    [down] { " " }(Abstrich)
    [up] { " " }(Aufstrich)
   *[any] { "" }
}
mark-as-it-comes = wie es kommt
mark-lift = absetzen
mark-in-bow = { $place ->
    [frog] am Frosch
    [lower-half] untere Hälfte
    [middle] Mitte des Bogens
    [upper-half] obere Hälfte
    [tip] an der Spitze
   *[whole] ganzer Bogen
}
mark-text = „{ $text }“
mark-slur = Bindebogen bis { $to }
mark-no-slur = kein Bindebogen bis { $to }
mark-slur-moved = Bindebogen bis { $end }, jetzt{ $moves-from ->
    [yes] { " " }ab { $from }
   *[no] { "" }
}{ $moves-to ->
    [yes] { " " }bis { $to }
   *[no] { "" }
}
slur-from-to = Bindebogen von { $from } bis { $to }
printed-slur = der gedruckte Bindebogen
printed-slur-to = der gedruckte Bindebogen bis { $to }
which-grace = Vorschlagsnote { $number }
which-voice = Stimme { $voice }
which-pitch = auf { $pitch }
