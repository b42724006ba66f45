# Sätze der Durchsicht: was gefunden ist (say-), die Zahlen dazu (evidence-, unit-), was angenommen ist (assume-).

# Wörter und Stellen

and = und
the-score = die Partitur
place-bar = Takt
place-bars = Takte
place-in-bar = in Takt
place-the-bar = Takt
place-beat = Schlag
place-in-beat = auf Schlag
place-the-beat = Schlag

number-0 = keine
number-1 = eine
number-2 = zwei
number-3 = drei
number-4 = vier
number-5 = fünf
number-6 = sechs
number-7 = sieben
number-8 = acht
number-9 = neun
number-10 = zehn
number-11 = elf
number-12 = zwölf

pitch-0 = c
pitch-1 = cis
pitch-2 = d
pitch-3 = es
pitch-4 = e
pitch-5 = f
pitch-6 = fis
pitch-7 = g
pitch-8 = as
pitch-9 = a
pitch-10 = b
pitch-11 = h
pitch-in-octave = { $octave ->
    [0] Subkontra-{ $capital }
    [1] Kontra-{ $capital }
    [2] großes { $capital }
    [3] kleines { $name }
    [4] eingestrichenes { $name }
    [5] zweigestrichenes { $name }
    [6] dreigestrichenes { $name }
    [7] viergestrichenes { $name }
    [8] fünfgestrichenes { $name }
   *[other] { $name } ({ $octave })
}

a-bow = { $bow ->
    [down] einen Abstrich
   *[up] einen Aufstrich
}
bow-name = { $bow ->
    [down] Abstrich
   *[up] Aufstrich
}
bow-way = { $bow ->
    [down] Abstrich
   *[up] Aufstrich
}
bars-counted = { $count ->
    [one] 1 Takt
   *[other] { $count } Takte
}
and-more-places = { $more ->
    [0] { "" }
    [one] { " " }und an 1 weiteren Stelle
   *[other] { " " }und an { $more } weiteren Stellen
}
dynamics-steady = im { $from }
dynamics-changing = von { $from } bis { $to }
stroke-named = { $stroke ->
    [sautille] Sautillé
    [martele] Martelé
    [detache] Détaché
    [spiccato] Spiccato
    [a-thrown-stroke] geworfen
    [on-the-string] auf der Saite
    [off-the-string] abseits der Saite
    [another] ein anderer Strich
   *[other] { $stroke }
}

# Die Länge des Bogens

say-nothing = Noch ist nichts gesagt.
say-bow-drift = Von { $at } an kommt dieselbe Figur { $times }-mal und trägt den Bogen, wie es kommt, { $end ->
    [tip] zur Spitze
   *[frog] zum Frosch
}: um ihn zurückzuholen, müssen die leichten Striche um { $decibels } dB herausstechen.
say-note-outlasts-bow = Die Note { $at-in } dauert { $lasts }; ein Bogen { $dynamics } reicht höchstens { $longest }.
say-rushed-return = Die kurze Note { $at-in } muss einen langen Strich zurückholen und wird im { $dynamic } um etwa { $decibels } dB herausstechen.
say-slur-outlasts-bow = Der Bindebogen ab { $at } dauert { $lasts }; ein Bogen { $dynamics } reicht höchstens { $longest }.

# Der Schlag

say-bar-comes-out-odd = Von { $at } an kommt derselbe Takt { $times }-mal mit { $bows } Strichen: wie es kommt, beginnt er jedes Mal mit dem anderen Strich{ $bowed ->
    [evened] , wenn nicht angebunden oder abgesetzt wird
   *[turning] { "" }
}.
say-beat-on-up-bow = Der Akzent { $at-in } fällt auch beim besten Strich der Stelle auf einen Aufstrich.
say-repeat-comes-back-reversed = { $road ->
    [da-capo] Das Da capo zu { $beginning } verlässt die Stelle { $end-in } mit
    [dal-segno] Das Dal segno zu { $beginning } verlässt die Stelle { $end-in } mit
   *[repeat] Die Wiederholung ab { $beginning } endet { $end-in } mit
} { $bow ->
    [down] einem Abstrich
   *[up] einem Aufstrich
}, also beginnt das zweite Mal mit dem anderen Strich: zum Absetzen sind { $there } s da, und es dauert { $needed } s.
say-silent-downbeat = { $at-first } { $why ->
    [tempo] beginnt ein neues Tempo
    [metre] beginnt eine neue Taktart
    [mark] steht ein Studierzeichen
   *[winds] setzen die Bläser ein
}, und keine Streichergruppe beginnt dort einen Strich: alle halten, binden über den Taktstrich oder pausieren.
say-silent-downbeats = Von { $at } an beginnt { $count ->
    [one] 1 Takt
   *[other] { $count } Takte
} lang keine Streichergruppe auf der Eins einen Strich.
say-slur-covers-beat = { $at-first } { $why ->
    [tempo] beginnt ein neues Tempo
   *[accent] steht ein plötzlicher Akzent
}, mitten in einem Bindebogen: dort beginnt kein Strich.

# Richtung und Dynamik

say-accent-at-tip = Der Akzent { $at-in }, im { $dynamic }, beginnt nahe der Spitze mit { $bow ->
    [down] einem Abstrich
   *[up] einem Aufstrich
}, wo der Bogen wenig Gewicht hat.
say-chords-too-close = Der Akkord { $at-in } soll { $time } s nach einem anderen im Abstrich kommen; den ersten zu brechen und den Bogen zurückzuholen dauert etwa { $needed } s.
say-ending-on-up-bow = Die Phrase, die { $at-in } schließt, endet im Aufstrich, { $dynamic }.
say-lift-in-soft-line = Bei diesen Bindebögen verlangt der { bow-name } { $at-in } ein Absetzen in einer Linie im { $dynamic }: ein Loch von etwa { $needed } s.
say-no-time-to-retake = Neuansetzen für { a-bow } { $at-in } dauert etwa { $needed } s, und es sind { $there } s da.
say-soft-entry-at-frog = Der Einsatz im { $dynamic } { $at-in } beginnt nahe dem Frosch mit { $bow ->
    [down] einem Abstrich
   *[up] einem Aufstrich
}, wo der Bogen schwer ist.
say-swell-against-bow = Das { $swell ->
    [crescendo] Crescendo
   *[diminuendo] Diminuendo
} von { $from } bis { $to } { $at-in } fällt auf { a-bow }, der von selbst { $swell ->
    [crescendo] abnimmt
   *[diminuendo] zunimmt
}.

# Stricharten

say-countable-tremolo = Das Tremolo { $at-in } ergibt { $rate } Striche in der Sekunde, langsam genug zum Mitzählen, und kein Wort sagt, ob es gemessen ist.
say-dots-on-pizzicato = { $count ->
    [one] Die Note { $at-in } ist gezupft und trägt einen Punkt: sie ist ohnehin kurz.
   *[other] Die { $count-word } Noten ab { $at } sind gezupft und tragen Punkte: sie sind ohnehin kurz.
}
say-dots-under-slur = { $count-first } Noten mit Punkten unter einem Bindebogen { $at-in }, { $rate } in der Sekunde, und kein Wort sagt wie: { $slower ->
    [portato] Portato
    [staccato] gebundenes Staccato
   *[thrown] Wurf
} oder { $faster ->
    [portato] Portato
    [staccato] gebundenes Staccato
   *[thrown] Wurf
}? In diesem Tempo ist { $likely ->
    [portato] Portato
    [staccato] gebundenes Staccato
   *[thrown] ein Wurf
} wahrscheinlicher.
say-signs-contradict = Die Note { $at-in } hat einen { $first ->
    [dot] Punkt
   *[dash] Tenutostrich
} und { $second ->
    [spiccato] ein Spiccatozeichen
   *[wedge] einen Keil
}: { $first ->
    [dot] ein wenig kurz oder so kurz wie möglich.
   *[dash] { $second ->
        [spiccato] das eine hält sie, das andere nimmt sie von der Saite.
       *[wedge] das eine hält sie, das andere macht sie so kurz wie möglich.
    }
}
say-words-contradict = „{ $first }“ und „{ $second }“ stehen { $at-in } beisammen; ein Bogen tut eines von beiden.
say-legato-over-dots = „{ $word }“ steht { $at-in } über einem Punkt, wo kein Bindebogen ist: das eine bindet die Noten, das andere trennt sie.
say-on-or-off-string = Von { $at } an kommen{ $parts ->
    [1] { "" }
   *[other] { " " }in { $parts-word } Stimmen
} { $count-word } Noten mit Staccatopunkten, { $rate } in der Sekunde: auf der Saite oder abseits? Kein Wort im Stück sagt es.
say-slurred-tremolo = Der Bindebogen { $at-in } steht über einem Tremolo aus gezählten Noten: sind alle auf einem Bogen, oder hat jede Note ihren eigenen?
say-stroke-too-fast = Die Noten ab { $at } sind mit „{ stroke-named }“ bezeichnet und kommen { $rate } in der Sekunde; diese Strichart geht bis { $limit }.
say-stroke-too-slow = Die Noten ab { $at } sind mit „{ stroke-named }“ bezeichnet und kommen { $rate } in der Sekunde; von selbst springt der Bogen ab { $limit }.
say-thrown-too-many = { $count-first } Noten sollen { $at-in } auf einem Bogen geworfen werden; ein Wurf gibt bis zu { $most }.
say-thrown-out-of-speed = Die geworfenen Noten { $at-in } kommen { $rate } in der Sekunde, { $pace ->
    [slower] langsamer
   *[faster] schneller
} als die { $limit } eines Bogens, der von selbst springt.

# Strichzeichen

say-effect-marked-again = { $count-first } Zeichen von { $at } bis { $last } zeigen eine Figur, die schon { $times ->
    [1] einmal
    [2] zweimal
   *[other] { $times-word }mal
} bezeichnet war: die Spieler machen so weiter.
say-mark-cannot-be = Das Zeichen für { a-bow } { $at-in } steht { $where ->
    [on-rest] auf einer Pause
    [plucked] im Pizzicato
    [not-bowed] auf einer Note, die nicht gestrichen wird
    [inside-slur] in einem Bindebogen
   *[tied-from-before] auf einer herübergebundenen Note
}, wo kein Strich beginnt.
say-both-bows = Die Note { $at-in } ist als Abstrich und als Aufstrich bezeichnet.
say-mark-on-every-note = Von { $at } bis zum Ende von { $last } tragen { $marked } von { $strokes } Strichen ein Strichzeichen.
say-mark-not-needed = Das Zeichen für { a-bow } { $at-in } ist nicht nötig: ohne das Zeichen ist der Strich derselbe.

# Die linke Hand

say-below-e-string = Die Note { $at-in } liegt unter der E-Saite: für { $pitch } braucht es eine fünfte Saite oder eine Verlängerung.
say-below-lowest-string = { $pitch } { $at-in } liegt unter der tiefsten Saite ({ $limit }).
say-above-fingerboard = { $pitch } { $at-in } liegt über dem Ende des Griffbretts (etwa { $limit }).
say-stop-held-too-long = { $strings-first } Saiten sollen { $at-in } { $lasts } lang zusammen klingen; unter forte hält ein Bogen zwei.
say-stop-unplayable = { $pitches } { $at-in } lassen sich { $instrument ->
    [violin] auf der Geige
    [viola] auf der Bratsche
    [cello] auf dem Cello
    [bass] auf dem Kontrabass
   *[instrument] auf diesem Instrument
} nicht zusammen greifen.

# Zwischen den Stimmen

say-doubling-bowed-apart = { $upper } und { $lower } spielen von Takt { $first } bis { $last } dieselbe Linie und streichen sie verschieden: { $at-in }{ and-more-places }.
say-doubling-marked-apart = { $upper } und { $lower } spielen von Takt { $first } bis { $last } dieselbe Linie und stimmen { $at-in }{ and-more-places } nicht überein: { $signs }.
sign-dots = Punkte
sign-accents = Akzente
sign-dashes = Tenutostriche
sign-sforzati = Sforzati
sign-dynamics = Dynamik
sign-way-of-playing = Spielweise
say-parallel-bowed-apart = Dieselben Noten wie { $model-in } sind { $at-in } anders gebunden; { $others ->
    [one] 1 weiterer Takt stimmt
   *[other] { $others } weitere Takte stimmen
} mit { $number } überein.
say-stands-contradict = { $at-first } spielen die zwei Hälften der Gruppe denselben Rhythmus, die eine mit Abstrich und die andere mit Aufstrich bezeichnet.
say-winds-phrase-apart = { $strings } und { $wind } spielen { $bars ->
    [one] 1 Takt
   *[other] { $bars } Takte
} lang dieselbe Linie und binden sie gleich, außer { $at-in }{ and-more-places }.

# Spielweisen

say-chord-or-divisi = Der Akkord { $at-in } steht in der Stimme einer Gruppe, und weder div. noch non div. ist gesagt.
say-missing-arco = { $at-first } steht { $sign ->
    [bow-mark] ein Strichzeichen
    [tremolo] ein Tremolo
   *[slur] ein Bindebogen
}, und das letzte Wort war pizz. { $since-in }.
say-pizz-again = pizz. steht { $at-in }, obwohl es seit { $since } gilt: entweder fehlt arco dazwischen, oder das zweite ist zu viel.
say-mute-change-too-quick = { $change ->
    [on] con sordino
   *[off] senza sordino
} { $at-in } hat { $rest ->
    [none] keine Pause davor
   *[some] { $there } s Pause
}; um den Dämpfer { $change ->
    [on] aufzusetzen
   *[off] abzunehmen
}, brauchen Spieler etwa { $needed } s.
say-pizz-change-too-quick = { $word ->
    [pizz] pizz.
   *[arco] arco
} { $at-in } kommt { $there } s nach der letzten Note; für den Wechsel { $word ->
    [pizz] zum Pizzicato
   *[arco] zum Bogen
} brauchen Spieler etwa { $needed } s.
say-pizz-too-fast = { $count } gezupfte Noten hintereinander ab { $at } kommen { $rate } in der Sekunde; eine Gruppe zupft höchstens { $most }.
say-state-again = { $word } steht { $at-in }, obwohl es seit { $since } gilt: entweder fehlt ein Wort dazwischen, oder das zweite ist zu viel.
say-state-never-ends = { $word } steht { $at-in } und wird nie aufgehoben: { $bars ->
    [one] 1 weiterer Takt wird
   *[other] { $bars } weitere Takte werden
} so gespielt, bis zum Ende des Satzes.
say-unison-of-two = unis. steht { $at-in } über zwei Stimmen mit verschiedenen Noten: spielen alle beides, oder ist die Stimme noch geteilt?

# Bindebögen, wie sie dastehen

say-slur-on-one-note = Der Bindebogen { $at-in } beginnt und endet auf derselben Note.
say-slur-never-ends = Ein Bindebogen beginnt { $at-in } und endet nie.
say-slur-never-began = Ein Bindebogen endet { $at-in } und hat nie begonnen.
say-crossing-slurs = Unter dem Bindebogen ab { $at } beginnt { $start-in } ein anderer und endet nach ihm: ein Strich kann nicht beides.
say-legato-without-slurs = legato steht { $at-in } über { $count } Noten, und kein Bindebogen sagt, welche auf einem Bogen sind.
say-singing-line-without-slurs = Von { $at } an hat { $part } { $count } Noten einer singenden Linie, und weder Bindebögen noch Zeichen noch ein Wort sagen, wie sie gestrichen werden.
say-nested-slurs = Der Bindebogen ab { $at } enthält { $inside ->
    [1] einen anderen Bindebogen
   *[other] { $inside } andere Bindebögen
}: eine der Linien ist ein Phrasierungsbogen, und sie sehen gleich aus.
say-phrase-mark-as-slur = Der Bindebogen ab { $at } sieht wie ein Phrasierungsbogen aus: { $signs }{ $same-line ->
    [wind] ; { $wind } hat dieselbe Linie
   *[none] { "" }
}.
sign-slowest-bows = so lang wie { $bows } langsamste Striche
sign-slurs-inside = { $count ->
    [one] 1 Bindebogen
   *[other] { $count } Bindebögen
} darunter
sign-rest = eine Pause darunter
sign-bow-marks = { $count } Strichzeichen darunter
sign-repeated-pitch = eine Tonhöhe ohne Punkte wiederholt
sign-whole-bars = genau { bars-counted }
say-slur-misses-tie = Der Bindebogen { $end ->
    [begins] beginnt
   *[ends] endet
} { $at-in } mitten in einer gehaltenen Note.
say-slurs-meet-on-tie = Zwei Bindebögen treffen sich { $at-in } auf einer gehaltenen Note: zwei Striche, dort gewechselt, oder einer?
say-slur-over-change = „{ $word }“ { $at-in } steht mitten in einem Bindebogen.
say-slur-over-rest = Der Bindebogen { $at-in } umfasst eine Pause.
say-slur-skips-string = Von der Note { $at-in } zur nächsten springt der Bindebogen über { $strings ->
    [1] eine Saite
   *[other] zwei Saiten
}, in { $within }{ $more ->
    [0] { "" }
    [1] ; derselbe Bindebogen tut es noch einmal
   *[other] ; derselbe Bindebogen tut es noch { $more }-mal
}.
say-slurred-stops = Der Doppelgriff { $at-in } und der nächste haben keine Saite gemeinsam: unter einem Bindebogen lassen sie sich nicht verbinden.
say-tie-or-slur = Der Bogen { $at-in } verbindet zwei Noten einer Tonhöhe, ohne Punkte oder Tenutostriche: das kann eine gehaltene Note sein, oder zwei auf einem Strich.
say-tie-to-another-pitch = Der Haltebogen { $at-in } führt zu einer anderen Tonhöhe: gemeint ist ein Bindebogen.

# Stimmen

say-no-dynamic-anywhere = In der ganzen Partitur steht keine Dynamik.
say-entry-without-dynamic = Für den Einsatz von { $part } { $at-in } steht keine Dynamik.
say-reentry-without-dynamic = Für den Einsatz von { $part } { $at-in }, nach { $bars ->
    [one] 1 Takt
   *[other] { $bars } Takten
} Pause, steht keine Dynamik.
say-landmarks-too-far = Von { $from } bis { $to }: { $bars ->
    [one] 1 Takt
   *[other] { $bars } Takte
} ohne Studierzeichen.
mark-in-bar = { $mark } ({ $at })
mark-bar-alone = { $at }
mark-the-next = { $mark }, dem nächsten
mark-end-of-movement = zum Ende des Satzes
mark-end = zum Ende
say-bars-without-number = { $count ->
    [one] Ein Takt hat
   *[other] { $count-first } Takte haben
} keine Zahl.
say-no-tempo = Am Anfang steht kein Tempo.
say-tempo-for-playback-alone = Die Datei hat ein Tempo für die Wiedergabe, aber am Anfang ist keines gedruckt: Spieler können es nicht lesen.
say-page-turn-too-quick = Umgeblättert wird vor { $at }, { $rest ->
    [none] ganz ohne Pause
   *[some] mit { $there } s Pause
}; Blättern dauert etwa { $needed } s.
say-part-not-in-score = { $file } hat eine Stimme { $part }, die die Partitur nicht hat.
say-part-has-other-bars = { $file } hat { $in-part ->
    [one] 1 Takt
   *[other] { $in-part } Takte
}, die Partitur { $in-score }.
say-part-differs = { $file } und die Partitur haben { $at-in } verschiedene { $what ->
    [notes] Noten
    [slurs] Bindebögen
    [bow-marks] Strichzeichen
    [signs] Zeichen auf den Noten
   *[words] Dynamik oder Worte
}.

# Was eine Aufgabe erwartet

say-no-tempo-for-task = In der Partitur steht kein Tempo.
say-lacks = { $what ->
    [slurs] Bindebögen
    [dynamics] Dynamik
    [hairpins] Schweller
    [articulations] Punkte, Striche und Akzente
    [bow-marks] Strichzeichen
   *[tempo] Ein Tempo
} gehören zu dieser Aufgabe: { $told }{ $cut ->
    [yes] { " " }…
   *[no] { "" }
}.
lacks-in-bars = { $part } hat keine in den Takten { $bars }
lacks-altogether = { $part } hat keine auf { $count } Noten

# Was angenommen ist

assume-tempo = Kein Tempo steht da; die Sekunden beruhen auf einem angenommenen.

# Zahlen

evidence-a-lift-takes = ein Absetzen dauert
evidence-a-turn-takes = Blättern dauert
evidence-above-its-dynamic = über seiner Dynamik
evidence-at-most = höchstens
evidence-bars-of-rest = Takte Pause
evidence-bars-played-after-it = danach gespielte Takte
evidence-bars-that-agree = übereinstimmende Takte
evidence-bars-without-a-mark = Takte ohne Zeichen
evidence-beams = Balken
evidence-begins-at = beginnt bei
evidence-bow-it-travels = Weg des Bogens
evidence-bowed-differently = anders gestrichen
evidence-bows = Striche
evidence-bows-needed = nötige Bögen
evidence-change-of-level = Änderung der Lautstärke
evidence-chord-lasts = Dauer des Akkords
evidence-chords-without-div-or-non-div = Akkorde ohne div. oder non div.
evidence-difference-of-level = Unterschied der Lautstärke
evidence-downbeats-in-a-row = Einsen hintereinander
evidence-dynamic = Dynamik
evidence-each-time-down = jedes Mal ab
evidence-each-time-up = jedes Mal auf
evidence-first-note-lasts = Dauer der ersten Note
evidence-last-note-lasts = Dauer der letzten Note
evidence-marks = Zeichen
evidence-note-before = Note davor
evidence-note-lasts = Dauer der Note
evidence-notes-a-second = Noten in der Sekunde
evidence-notes-in-common = gemeinsame Noten
evidence-notes-in-one-throw = Noten in einem Wurf
evidence-notes-that-begin-a-slur-in-one-part-only = Noten, die nur in einer Stimme einen Bindebogen beginnen
evidence-notes-without-a-slur = Noten ohne Bindebogen
evidence-rest = Pause
evidence-silence-before-it = Stille davor
evidence-slowest-bow-lasts = Dauer des langsamsten Strichs
evidence-slur-lasts = Dauer des Bindebogens
evidence-slurs-inside = Bindebögen darin
evidence-strength-of-the-beat = Gewicht des Schlags
evidence-strings-together-loud = Saiten zusammen, laut
evidence-stroke-lasts = Dauer des Strichs
evidence-strokes-a-second = Striche in der Sekunde
evidence-strokes-marked = bezeichnete Striche
evidence-the-first-chord-speaks = der erste Akkord spricht an
evidence-the-lift-takes = das Absetzen dauert
evidence-the-note-before-can-give-up = die Note davor kann abgeben
evidence-time-between-them = Zeit dazwischen
evidence-time-it-takes = nötige Zeit
evidence-time-there-is = vorhandene Zeit
evidence-time-to-lift = Zeit zum Absetzen
evidence-time-to-pass-over-a-string = Zeit, eine Saite zu überspringen
evidence-times-in-a-row = Male hintereinander
evidence-dots-in-one-part = Punkte nur in einer Stimme
evidence-accents-in-one-part = Akzente nur in einer Stimme
evidence-dashes-in-one-part = Tenutostriche nur in einer Stimme
evidence-sforzati-in-one-part = Sforzati nur in einer Stimme
evidence-notes-with-another-dynamic = Noten mit anderer Dynamik
evidence-notes-played-differently = anders gespielte Noten

unit-seconds = s
unit-bows = Bögen
unit-decibels = dB
unit-percent = %
unit-percent-of-the-bow = % des Bogens
unit-dynamic-steps = Stufen der Dynamik
unit-times-a-plain-downbeat = mal eine schlichte Eins
