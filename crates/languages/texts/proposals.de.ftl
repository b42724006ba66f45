# Was die Durchsicht vorschlägt (offer-), Ausbesserungen (repair-) und was damit gewonnen ist (gain-).

offer-and-further = { $offer } Die weiteren Stellen werden ebenso geändert.
offer-repair = { $repair }.
offer-repair-and-gain = { $repair }: { $gain }.
offer-repair-for = { $repair }: { $what ->
    [accent] der Akzent
    [bar] der Takt
    [ending] der Schluss
    [entry] der Einsatz
   *[swell] der Schweller
} kommt dann auf { a-bow }.

repair-split = Den Bindebogen { $at-in } teilen
repair-split-tie = Auf der gehaltenen Note { $at-in } den Strich wechseln
repair-end-earlier = Den Bindebogen eine Note früher enden lassen, vor { $at }
repair-begin-later = Den Bindebogen eine Note später beginnen, { $at-in }
repair-join-notes = Die Note { $at-in } an die vorige binden
repair-join-slurs = Die Bindebögen verbinden, die sich { $at-in } treffen
repair-end-later = Den Bindebogen eine Note später enden lassen, { $at-in }
repair-begin-earlier = Den Bindebogen von { $at } eine Note früher beginnen
repair-hand-over-later = Den Bindebogen eine Note später enden und den nächsten { $at-in } beginnen lassen
repair-hand-over-earlier = Den Bindebogen eine Note früher enden und den nächsten { $at-in } beginnen lassen
repair-hook = Die Note { $at-in } an die vorige anbinden, mit Halt

gain-bars-begin-down = { $count ->
    [one] Takt { $bars } beginnt dann im Abstrich
   *[other] die Takte { $bars } beginnen dann im Abstrich
}
gain-stretch-begins-down = { $count } Takte von { $first } bis { $last } beginnen dann im Abstrich
gain-more-time = Striche von { $short } statt { $long }
gain-no-hook = { $at-in } braucht es kein Anbinden
gain-no-retake = { $at-in } braucht es kein Neuansetzen
stroke-shown = { $at }{ $hooked ->
    [hooked] { " " }angebunden
   *[plain] { "" }
} { bow-way }, { $lasts }, { $used } % des Bogens

# Was der Arm tun kann

offer-start = { $at-first } mit { $bow ->
    [down] einem Abstrich
   *[up] einem Aufstrich
} beginnen.
offer-hook = Die Note { $at-in } an die vorige anbinden.
offer-retake = { $at-first } für { a-bow } neu ansetzen.
offer-begin = { $at } im { bow-name } beginnen lassen.
offer-stagger-unheard = Die Spieler jedes Pults unhörbar zu verschiedenen Zeiten wechseln lassen.
offer-hook-short-to-long = Den kurzen Strich an den langen davor anbinden, mit Halt, und von da an abwechseln.
offer-hook-short-note = Die kurze Note an den Strich davor anbinden, mit Halt.
offer-hook-last-two-bows = Die letzten zwei Striche jedes Taktes anbinden, damit jeder im Abstrich beginnt.
offer-hook-so-section-comes-back = Die Note { $at-in } an die vorige anbinden, damit der Teil wiederkommt, wie er begann.
offer-hook-instead-of-lifting = Die zwei Striche auf der Saite anbinden, mit Halt, statt abzusetzen.
offer-mark-first-note-every-pass = Für jeden Durchgang { a-bow } auf die erste Note des Teils schreiben.
offer-mark-out-and-alternate = Das Zeichen { $at-in } entfernen und abwechseln.
offer-row-out = Die Zeichen der Reihe nach dem ersten { bow-name } entfernen und abwechseln.
offer-chords-as-they-come = Die Akkorde nehmen, wie es kommt.
offer-second-down-out = Den zweiten Abstrich entfernen und abwechseln.
offer-change-one-after-the-other = Die zwei Spieler jedes Pults nacheinander wechseln lassen.
offer-one-player-earlier = Einen Spieler jedes Pults einige Noten früher wechseln lassen.
offer-divide-between-players = Die Noten unter den Spielern jedes Pults aufteilen.
offer-out-and-sim = Sie entfernen und sim. über die erste schreiben.
offer-mark-out = Das Zeichen entfernen.
offer-keep-one-bow = { $bow ->
    [down] Den Abstrich behalten und den Aufstrich entfernen.
   *[up] Den Aufstrich behalten und den Abstrich entfernen.
}
offer-marks-not-needed-out = { $count ->
    [one] Das eine entfernen, das nicht nötig ist.
   *[other] Die { $count } entfernen, die nicht nötig sind.
}
offer-keep-what-alternation-would-not = Die Zeichen behalten, die sich beim Abwechseln nicht ergäben, und die anderen entfernen.

# Was der Schreibende tun kann

offer-split-slur-before = Den Bindebogen teilen vor { $places }.
offer-split-slur-there = Den Bindebogen dort teilen.
offer-split-between-two-notes = Den Bindebogen zwischen den zwei Noten teilen.
offer-split-between-the-two = Den Bindebogen zwischen den beiden teilen.
offer-split-long-weigh-alike = Den langen Bindebogen teilen, damit sich Ab- und Aufstriche der Figur die Waage halten.
offer-split-long-beside = Den langen Bindebogen daneben teilen, damit weniger Bogen zurückzuholen ist.
offer-break-note-at-barline = Die Note an einem Taktstrich neu anstreichen lassen, wo man einen Wechsel am wenigsten hört.
offer-slur-two-notes = Zwei der Noten binden, damit der Takt eine gerade Zahl von Strichen hat.
offer-change-on-downbeat = { $part } auf der Eins den Strich wechseln lassen: den Bindebogen dort teilen.
offer-inner-attacks-afresh = Eine Mittelgruppe die gehaltene Note auf der Eins neu anstreichen lassen.
offer-inner-changes-on-some = Eine Mittelgruppe auf einigen dieser Einsen den Strich wechseln lassen.
offer-change-inside-swell = Die Spieler im Schweller den Strich wechseln lassen.
offer-chords-on-two-strings = Die Akkorde auf zwei Saiten schreiben oder ihnen mehr Zeit geben.
offer-write-trem = trem. über das erste schreiben, wenn es nicht gemessen ist.
offer-write-out-or-measured = Die Noten ausschreiben oder „gemessen“ dazuschreiben, wenn sie zu zählen sind.
offer-dots-out = Die Punkte entfernen.
offer-dashes-for-portato = Tenutostriche statt der Punkte setzen, für ein Portato.
offer-write-staccato = staccato über die erste schreiben, für einen Bogen, der anhält.
offer-write-gettato = gettato über die erste schreiben, für einen geworfenen Bogen.
offer-sign-out = { $sign ->
    [dash] Den Tenutostrich
    [wedge] Den Keil
    [spiccato] Das Spiccatozeichen
   *[dot] Den Punkt
} entfernen.
offer-word-out = „{ $word }“ entfernen.
offer-write-spicc = spicc. über die erste schreiben.
offer-write-on-the-string = „auf der Saite“ über die erste schreiben.
offer-write-group-out = Die erste Gruppe mit ihren Bindebögen ausschreiben und danach simile, wenn die Noten auf einem Bogen sind.
offer-slurs-out-own-bow = Die Bindebögen entfernen, wenn jede Note ihren eigenen Strich hat.
offer-write-spiccato-instead = Stattdessen spiccato schreiben.
offer-slur-in-twos = Die Noten zu zweien binden oder halb so viele schreiben.
offer-divide-into-throws = Den Bindebogen in Würfe von höchstens { $most } Noten teilen.
offer-slurred-staccato = Gebundenes Staccato oder gebundenes Spiccato statt eines Wurfs verlangen.
offer-slur-without-dots = Die Noten ohne Punkte binden oder ihnen mehr Zeit geben.
offer-write-which-strings-held = Schreiben, welche zwei Saiten gehalten werden, und die anderen kurz davor.
offer-write-div-and-unis = Hier div. schreiben, und unis., wo alle wieder zusammen spielen.
offer-give-slurs = Dort { $lower } die Bindebögen von { $upper } geben.
offer-give-marks = Dort { $lower } die Zeichen von { $upper } geben.
offer-slurs-of-the-others = Dem Takt die Bindebögen der anderen geben.
offer-lower-mark-out = Das Zeichen der unteren entfernen, damit beide der oberen folgen.
offer-write-div = Hier div. schreiben.
offer-write-non-div = Hier non div. schreiben.
offer-write-arco = Hier arco schreiben.
offer-second-pizz-out = Das zweite pizz. entfernen.
offer-longer-rest = Eine längere Pause geben oder an anderer Stelle wechseln.
offer-give-change-a-rest = Dem Wechsel eine Pause geben.
offer-second-word-out = Das zweite Wort entfernen.
offer-write-ord-or-sempre = ord. schreiben, wo es endet, oder sempre, wo es nicht endet.
offer-unis-out = unis. entfernen, wo die Stimme geteilt ist.
offer-slur-out = Den Bindebogen entfernen.
offer-loose-end-out = Das lose Ende entfernen.
offer-first-slur-out = Den ersten Bindebogen entfernen und den zweiten behalten.
offer-end-first-slur = Den ersten Bindebogen { $at-in } enden lassen, bevor der zweite beginnt.
offer-write-slurs = Die Bindebögen schreiben, die die Linie haben soll.
offer-write-non-legato = non legato oder détaché schreiben, wenn jede Note ihren eigenen Strich hat.
offer-outer-dashed = Den äußeren stricheln: ein Phrasierungsbogen.
offer-dashed-slur = Ihn stricheln: ein Phrasierungsbogen, der den Bogen frei lässt.
offer-slur-over-tied-note = Den Bindebogen über die ganze gehaltene Note ziehen.
offer-one-slur-over-both = Ist ein Strich gemeint, einen Bindebogen über beide ziehen; sind es zwei, so sagt es ein Strichzeichen auf der gehaltenen Note.
offer-end-slur-before-word = Den Bindebogen vor „{ $word }“ enden lassen.
offer-begin-slur-at-word = Den Bindebogen bei „{ $word }“ beginnen.
offer-split-slur-at-word = Den Bindebogen bei „{ $word }“ teilen.
offer-slurs-beside-rest = Den Bindebogen vor der Pause enden lassen und nach ihr einen neuen beginnen.
offer-slur-neighbouring-strings = Nur die Noten binden, die auf einer Saite oder auf benachbarten liegen.
offer-tie-two-notes = Die zwei Noten durch einen Haltebogen verbinden.
offer-dashes-on-both = Tenutostriche auf beide setzen, für einen Puls auf einem Strich.
offer-slur-for-tie = Einen Bindebogen statt des Haltebogens schreiben.
offer-write-dynamic = { $dynamic } schreiben, wie in den Stimmen, die mitspielen.
offer-rehearsal-mark = { $at-first } ein Studierzeichen setzen{ $why ->
    [double-bar] , nach dem Doppelstrich
    [tempo] , mit dem neuen Tempo
    [metre] , mit der neuen Taktart
    [key] , mit der neuen Tonart
   *[middle] { "" }
}.
offer-number-the-bars = Die Takte zählen und die Zahlen in die Stimmen drucken.
offer-write-tempo = Ein Tempowort oder eine Metronomzahl über die erste Note schreiben.
offer-break-page-at-rest = Die Seite bei einer Pause enden lassen.

# Wer es tun kann

grade-safe = sicher
grade-player = Sache der Spieler
grade-writer = Sache der Schreibenden
