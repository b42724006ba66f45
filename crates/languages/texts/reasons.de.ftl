# Warum Fassungen etwas übergehen und was sie bemerken: das Ende eines Satzes, der mit einer Stelle beginnt.

as-it-is = { $text }

# Eine Note, die nicht da ist

why-no-part = die Partitur hat keine solche Stimme; sie hat { $parts }
why-no-bar = die Partitur hat keinen solchen Takt
why-several-bars = mehrere Takte tragen diese Zahl; mit "bar_ordinal" sagen, welcher: { $ordinals }
why-other-bar = an dieser Stelle steht jetzt { $bar }; die Fassung auf die überarbeitete Partitur übertragen
why-no-note = dort beginnt keine Note
why-rest = dort steht eine Pause
why-other-note = nicht diese Note beginnt dort, sondern { $pitches }
why-other-end = das andere Ende, { $at }: { $why }

# Andere Fassungen, und die Fassung selbst

why-score-titled = „{ $title }“
why-score-untitled = eine Partitur ohne Titel
why-layer-of-other-score = die Fassung wurde für { $layer } gemacht, dies ist { $score }, und die Noten sind nicht dieselben; ist es eine Überarbeitung, die Fassung zuerst übertragen
why-taken-off-above = es ist in der Partitur gedruckt, und eine Fassung darüber hat es entfernt; es kommt wieder, wenn jene Fassung geht
why-two-owners = zwei wollen hier Verschiedenes; zuerst eines davon behalten
why-slur-taken-off-above = eine Fassung darüber entfernt diesen Bindebogen, und die obere gilt
why-slur-drawn-above = eine Fassung darüber setzt einen Bindebogen zwischen diese Noten, und die obere gilt
why-other-bow-above = eine Fassung darüber verlangt hier einen anderen Strich, und die obere gilt
why-several-answers = die Fassung sagt { $count } verschiedene Dinge darüber; eines behalten
why-slur-said-otherwise = die Fassung sagt von einem Bindebogen zwischen denselben zwei Noten noch anderes ({ $other }); eines von beiden behalten

# Striche

why-no-place = so, wie die Note in der Datei steht, ist für das Zeichen kein Platz
why-no-direction = weder das Zeichen noch die Note davor sagt, wohin der Bogen geht; "bow": "down" oder "up" schreiben
why-other-way-before = der Strich davor soll in die andere Richtung gehen, und der Bogen kann nicht in beiden weitergehen
why-no-address-before = der Strich davor beginnt auf einer Note, die sich nicht einzeln nennen lässt
why-no-stroke = auf dieser Note beginnt kein Strich: sie liegt unter einem Bindebogen, ist übergebunden oder wird nicht gestrichen
why-two-directions = das Zeichen und das, was vom Strich davor verlangt ist, nennen zwei Richtungen, und der Bogen kann nicht in beiden weitergehen

# Bindebögen

why-slur-moves-nowhere = der Bindebogen soll dorthin, wo er schon ist
why-slur-backwards = die letzte Note kommt nicht nach der ersten
why-slur-in-two-voices = die Enden stehen in zwei Stimmen, und die spätere ist zuerst geschrieben; kein Programm würde sie verbinden
why-slur-printed-there = dort ist schon ein Bindebogen gedruckt; lieber diesen entfernen
why-slur-ends-not-in-file = der gedruckte Bindebogen lässt sich nicht entfernen; seine beiden Enden stehen nicht beide in der Datei
why-no-slur-to-take-off = die Partitur hat keinen solchen Bindebogen zu entfernen
why-too-many-slurs = dort sind mehr als sechzehn Bindebögen offen; für einen weiteren ist keine Nummer übrig

# Angebundene Striche unter einem Bindebogen

why-chord-bowed-twice = die Fassung gibt einer anderen Note dieses Akkords einen eigenen Strich; einen von beiden behalten
why-hooked-with-other-sign = der Strich davor ist mit dem anderen Zeichen angebunden; beide mit Punkten oder beide mit Tenutostrichen schreiben
why-hook-draws-slur-again = die Fassung entfernt gerade zwischen diesen Noten einen Bindebogen, und das Anbinden würde ihn wieder setzen; den Bindebogen lassen und Punkte oder Tenutostriche in die Partitur schreiben
why-no-address-under-slur = eine Note unter dem Bindebogen lässt sich nicht einzeln nennen
why-hook-on-grace-note = eine Vorschlagsnote hat keinen Strich, den ein Bindebogen mit Punkten oder Tenutostrichen anbinden könnte; das Anbinden mit Strichzeichen schreiben
why-hook-tied-over = auf dieser Note beginnt kein Strich: sie ist übergebunden; die Note nach dem Haltebogen anbinden
why-hook-on-first-note = davor kommt keine Note, mit der ein Bindebogen sie verbinden könnte; das Anbinden herausnehmen
why-hook-after-gap = zwischen ihr und der Note davor steht eine Pause oder eine andere Stimme, und ein Bindebogen würde das Anhalten verbergen; das Anbinden mit Strichzeichen schreiben
why-hook-over-grace-note = zwischen den beiden Strichen steht eine Vorschlagsnote; das Anbinden mit Strichzeichen schreiben
why-hook-written-backwards = in der Datei steht die spätere der beiden Noten zuerst; das Anbinden mit Strichzeichen schreiben
why-hook-under-slur = der Bindebogen von { $from } bis { $to } liegt über diesen Noten oder berührt sie; zuerst jenen Bindebogen entfernen, oder das Anbinden mit Strichzeichen schreiben
why-hook-begins-as-it-comes = die Fassung lässt die Note, auf der der Bindebogen beginnt, wie sie kommt, und gerade dort stünde die Richtung; eines von beiden herausnehmen
why-hook-begins-unnamed = die Note, auf der der Bindebogen beginnt, nimmt ihre Richtung vom Strich davor; die Richtung dort nennen, nicht hier
why-hooks-both-ways = der angebundene Strich davor geht unter demselben Bindebogen in die andere Richtung; für beide eine Richtung nennen

# Zeichen, die in der Partitur bleiben

stays-unlike-one-mark = in der Datei ist es nicht wie ein einzelnes Zeichen geschrieben
stays-without-address = es steht auf keiner Note, die sich nennen lässt
stays-slur-end-without-address = der Bindebogen endet auf keiner Note, die sich nennen lässt
stays-slur-never-ends = hier beginnt ein Bindebogen, der nie endet; ihn beenden oder herausnehmen
stays-slur-never-began = hier endet ein Bindebogen, der nie begann; ihn beginnen oder herausnehmen
stays-slur-middle = ein Element eines Bindebogens, das weder sein Anfang noch sein Ende ist
stays-slur-on-hidden-note = das Ende eines Bindebogens auf einer verborgenen Note, die keine Fassung nennen kann
stays-bow-mark-twice = die Note hat dasselbe Strichzeichen mehr als einmal; die überzähligen herausnehmen
stays-words-twice = dieselben Worte stehen dort zweimal

# Bemerkungen

check-other-score = die Fassung wurde für andere Noten gemacht: für eine andere Partitur, oder für diese vor einer Überarbeitung; sie übertragen
check-conflict = { $first } will { $one }, { $second } will { $other }; eines davon behalten
check-mark = { $mark }: { $why }
check-twice = { $mark } steht dort zweimal; eines davon behalten
check-doubt = { $mark }, mit Zweifel übertragen: { $doubt }
check-on-rest = { $mark } auf einer Pause; auf eine Note setzen oder herausnehmen
check-several-answers = { $mark }, und im Ganzen { $count } Antworten; eine behalten
check-tied-over = die Note ist übergebunden: auf ihr beginnt kein neuer Strich
check-inside-slur = { $mark } unter einem Bindebogen, wo der Bogen weitergeht; dort den Bindebogen entfernen
check-nothing-before = { $mark }, aber davor kommt keine Note
check-slur-backwards = die letzte Note des Bindebogens kommt nicht nach der ersten

# Auf eine Überarbeitung übertragen

doubt-other-bars = dieselbe Musik steht auch in anderen Takten{ $count ->
    [0] { "" }
   *[other] : { $bars }
}
doubt-bar-rewritten = der Takt ist größtenteils neu geschrieben
doubt-other-pitch = die Note hat eine andere Tonhöhe
doubt-other-length = die Note hat eine andere Dauer
doubt-moved = die Note steht anderswo im Takt
doubt-other-chord = andere Noten stehen mit ihr zusammen
doubt-written-out = die Wiederholung ist ausgeschrieben, dies ist das zweite Mal
doubtful-said = { $from } → { $to }, { $mark }: { $why }
lost-conflict-wants-nothing = auf keiner Seite ist etwas gewollt
lost-other-end = das andere Ende des Bindebogens: { $why }
lost-part = die alte Partitur hat keine solche Stimme
lost-in-old-score = in der alten Partitur: { $why }
lost-bar = der Takt ist nicht in der neuen Partitur
lost-note = die Note ist nicht im neuen Takt
lost-note-is-rest = die Note ist jetzt eine Pause

# Auf andere Stimmen übertragen

not-spread = { $from }, { $mark }: nicht auf { $part }, { $why }
spread-other-passage = eine andere Stelle schlägt etwas anderes vor
spread-nothing-played = dort wird nichts gespielt
spread-other-slurs = andere Bindebögen
spread-other-rhythm = anderer Rhythmus
spread-no-stroke = auf dieser Note beginnt kein Strich
spread-said-otherwise = die Fassung sagt dort etwas anderes
spread-slur-end-lost = das andere Ende des Bindebogens hat dort keine Entsprechung
