# Erklärungen der Regeln auf Deutsch.

accent-at-tip = Ein Akzent, wo der Bogen kein Gewicht hat
    .finds =
        Ein schwerer Akzent (sf, fz, das aufrechte Zeichen), mezzoforte oder lauter, der im besten Strich der Stelle nahe der
        Spitze beginnt (C). Akzente auf schweren Schlägen, die auf einen Aufstrich kommen, meldet `beat-on-up-bow`; sie zählen
        hier nicht, und auch nicht die, deren Strich gedruckt ist. Ebenso wenig die nach einer Pause, in der sich der Bogen zum
        Frosch tragen lässt.
    .why =
        Am Frosch liegt der Bogen mit seinem eigenen Gewicht auf der Saite; an der Spitze bleibt ein Sechstel davon, und die Hand
        muss den Akzent allein machen. Er kommt dünn oder zu spät.

bar-comes-out-odd = Ein Takt, der nicht aufgeht
    .finds =
        Derselbe Takt, gleich in Rhythmus und Bögen, viermal oder öfter hintereinander mit einer ungeraden Zahl von Strichen:
        wie es kommt, beginnt er jedes Mal auf dem anderen Strich, und auch im besten Strich, den es gibt, ist das so, oder es
        wird jedes Mal angebunden oder neu angesetzt. Wie es kommt, geht, was keine Gestalt zu zeigen hat (fünf gleiche Striche
        oder mehr, drei gleiche Bögen, ein Ton, der sich durch den Takt wiederholt), was sein Gewicht nicht auf dem ersten
        Strich will (eine Synkope über die Taktmitte, ein Akzent an anderer Stelle), und Takte unter einer Sekunde.
    .why =
        Die Figur klingt vom Abstrich so und vom Aufstrich anders; was gleich dasteht, kommt abwechselnd auf zweierlei Art heraus.

beat-on-up-bow = Ein schwerer Schlag kommt auf den Aufstrich
    .finds =
        Ein Schlag mit Akzent, Akkord oder plötzlichem Anschwellen, der selbst im besten Plan auf einen Aufstrich fällt, obwohl
        kein Aufstrich dasteht.
    .why =
        Die Hand hat ihr Gewicht am Frosch und gibt es auf dem Weg nach unten her. Ein Akzent im Aufstrich lässt sich spielen,
        aber leichter und später, als der Schreibende ihn hört; die Gruppe wird nach dem anderen Strich fragen.

bow-drift = Eine Figur trägt den Bogen an ein Ende
    .finds =
        Eine Folge von Strichen, die mindestens dreimal ohne Pause hintereinander kommt und deren Ab- und Aufstriche so ungleich
        sind, dass sie, gespielt wie es kommt und so schnell, wie die Dynamik es will, den Bogen um mehr als seine halbe Länge
        zu einem Ende trägt.
    .why =
        Drei Noten gebunden und eine einzeln, immer wieder: jeder Bindebogen nimmt mehr Bogen, als die einzelne Note zurückgibt.
        Der Arm landet an einem Ende, wo die Stelle nicht klingt, oder jede einzelne Note sticht heraus, weil sie eilt.

broken-slur = Ein Bindebogen mit nur einem Ende
    .finds =
        Ein Bindebogen, der anfängt und nie endet, endet und nie angefangen hat, oder auf einer einzigen Note steht. Ein Bogen,
        der über ein Wiederholungszeichen oder in eine Klammer hängt, ist für Spieler vollständig und zählt nicht. Einer in einer
        Stimme ist ein Versehen (A); mehrere gingen zwischen zwei Programmen verloren, und die Stimme ist durchzusehen (B).
    .why =
        Der Spieler sieht eine Linie ins Nichts und weiß nicht, wo der Strich wechselt. Solche Enden bleiben meist von einer
        Änderung übrig, und der Weg von einem Programm ins andere vermehrt sie.

chord-or-divisi = Ein Akkord für eine Gruppe: ganz oder geteilt?
    .finds =
        In der Stimme einer Gruppe ein Akkord oder zwei Stimmen zugleich, wo weder div. noch non div. noch unis. gesagt ist:
        einmal je Stimme gemeldet, beim ersten, mit der Zahl der übrigen.
    .why =
        Die halbe Gruppe teilt, die andere spielt Doppelgriffe, und die falschen Noten klingen doppelt so laut; die erste Frage
        der Probe ist immer dieselbe.

chords-too-close = Akkorde im Abstrich zu dicht hintereinander
    .finds =
        Zwei Akkorde über drei oder vier Saiten hintereinander, beide durch Zeichen oder Worte im Abstrich, mit weniger Zeit vom
        ersten zum zweiten, als man braucht, um den ersten zu brechen, klingen zu lassen und den Bogen zurückzuholen (B).
    .why =
        Ein Akkord wird von den tiefen Saiten zu den hohen gebrochen, und auch das braucht Zeit, ehe der Bogen weg kann. Fehlt
        sie, so fehlen dem ersten Akkord die oberen Noten, oder der zweite kommt zu spät.

countable-tremolo = Ein Tremolo, das sich zählen lässt
    .finds =
        Tremolo mit drei Balken oder mehr, bei dem das Tempo so wenige Striche in der Sekunde ergibt, dass man sie als Noten
        zählt (B), und kein Wort sagt Tremolo. Ein Befund je Stimme. Wo eine andere Gruppe zugleich ein Tremolo mit drei Balken
        hat, ist es eine Farbe des Akkords, und niemand zählt.
    .why =
        Drei Balken sind im langsamen Tempo Zweiunddreißigstel und im schnellen ein Flirren. Wo die Zweiunddreißigstel langsam
        sind, spielt die halbe Gruppe sie aus, und die andere flirrt.

crossing-slurs = Bindebögen, die sich kreuzen
    .finds =
        Zwei Bindebögen einer Stimme, von denen der zweite unter dem ersten anfängt und nach ihm endet.
    .why =
        Ein Bogen kann nicht in zwei Strichen zugleich sein: niemand kann sagen, wo er wechselt. Jedes Pult entscheidet anders,
        und die Gruppe fragt.

dots-on-pizzicato = Punkte auf gezupften Noten
    .finds =
        Punkte, Keile oder Spiccatozeichen auf gezupften Noten, die ohne Pause aufeinander folgen (D), ein Befund je Stimme.
    .why =
        Eine gezupfte Note ist ohnehin kurz. Punkte, die von einer gestrichenen Fassung übrig sind, lassen die Spieler das arco
        suchen, das sie übersehen haben könnten.

dots-under-slur = Punkte unter einem Bogen, die man auf zwei Arten lesen kann
    .finds =
        Drei oder mehr Noten wechselnder Höhe mit Punkten unter einem Bindebogen, in einem Tempo, in dem zwei Stricharten dem
        Zeichen entsprechen, und kein Wort sagt, welche (B): Portato oder gebundenes Staccato, wo die Noten weder langsam noch
        schnell kommen; gebundenes Staccato oder Wurf, wo sie schnell kommen und für einen Wurf wenige genug sind. Der Satz sagt,
        was in diesem Tempo wahrscheinlicher ist. Ein Befund je Stimme und Paar von Lesarten.
    .why =
        Die drei Stricharten teilen ein Zeichen. In der einen hält der Bogen kaum an, in der nächsten nach jeder Note, in der
        dritten verlässt er die Saite; eine Gruppe, der es niemand gesagt hat, spielt zwei zugleich.

doubling-bowed-apart = Eine verdoppelte Linie mit zweierlei Strich
    .finds =
        Zwei Streicherstimmen, die zwei Takte oder länger dieselbe Linie im Einklang oder in Oktaven spielen, wobei einige Noten
        nur in einer gebunden sind oder entgegengesetzte Strichzeichen tragen. Bässe dürfen öfter wechseln als die, die sie
        verdoppeln.
    .why =
        Wer dieselbe Linie spielt, schaut auf den Bogen des anderen. Wo fast alles gleich gebunden ist und wenige Stellen nicht,
        steckt in einer der Stimmen ein Versehen, und das Fragen kostet Zeit.

doubling-marked-apart = Eine verdoppelte Linie mit zweierlei Zeichen
    .finds =
        Zwei Streicherstimmen, die zwei Takte oder länger dieselbe Linie im Einklang oder in Oktaven spielen, wobei
        Punkte, Akzente, Striche oder sforzati auf einigen Noten nur in einer stehen, obwohl beide an der Stelle
        solche Zeichen haben; oder in denen Dynamik, Dämpfer, pizz. oder der Ort auf der Saite für den kleineren Teil
        davon verschieden sind. Bindebögen und Strichzeichen sieht eine andere Regel an.
    .why =
        Wer dieselbe Linie spielt, hört auf den anderen. Wo fast alles gleich bezeichnet ist und wenige Noten nicht,
        spielt die eine Stimme kurz, was die andere hält, oder leise, was die andere laut hat, und jemand wird fragen,
        was gemeint ist.

effect-marked-again = Eine Wirkung, die immer wieder bezeichnet wird
    .finds =
        Eine Figur, die fünfmal oder öfter hintereinander mit denselben Strichzeichen kommt, von denen einige eine Wirkung
        machen: Aufstriche in einen starken Abstrich, ein Absetzen, ein Strich gegen das Abwechseln. Vom dritten Mal an sind die
        Zeichen überflüssig (D).
    .why =
        Zweimal lehrt die Figur; die Spieler führen sie fort. Was immer weiter bezeichnet wird, sieht jedes Mal wie eine Änderung
        aus und drängt sich in der Stimme.

ending-on-up-bow = Eine Phrase endet im Aufstrich
    .finds =
        Die letzte Note einer Phrase oder ihr letzter Akkord, auf einem Schlag, für sich angestrichen, forte oder lauter und
        nicht zu kurz, weder anschwellend noch verlöschend, die im besten Plan auf einem Aufstrich enden. Eine Phrase endet vor
        einer langen Pause, am Doppelstrich mit neuem Tempo, das nicht sogleich im Abstrich beginnt, und am Schluss; nicht, wo ein Atemzeichen vor der Note den Bogen
        frei macht.
    .why =
        Ein Abstrich schließt: er kann ausklingen und verlöschen. Ein Aufstrich endet am Frosch, wo der Ton abreißt oder schwillt.

entry-without-dynamic = Ein Einsatz ohne Dynamik
    .finds =
        Eine Stimme, bei deren erstem Einsatz keine Dynamik steht, weder auf der ersten Note noch davor. Hat in der ganzen
        Partitur keine Stimme eine, so sagt es ein einziger Befund.
    .why =
        Der Spieler weiß nicht, wie laut er beginnen soll, und die Dynamik bestimmt auch, wie viel Bogen eine Note bekommt. Es ist
        die erste Frage jeder ersten Probe.

landmarks-too-far = Studierzeichen zu weit auseinander
    .finds =
        In Musik für Gruppen: von einem Zeichen zum nächsten, bis zum ersten oder vom letzten bis zum Schluss mehr Takte, als
        man gern zählt (C, ein Befund für die Partitur). Auch der Anfang eines Satzes ist ein Wegzeichen. In Kammermusik, wo man
        die Taktzahl nennt, nur wenn überhaupt Studierzeichen gebraucht werden und eine Stimme dazwischen mehr
        als acht Takte Pause zählt. Takte ohne Zahlen (C).
    .why =
        „Einundvierzig vor D“ kostet jedes Mal eine Minute, und die halbe Gruppe setzt anderswo ein.

legato-without-slurs = Legato ohne Bindebogen
    .finds =
        Das Wort legato über acht oder mehr bewegten Noten, bis zum nächsten Wort über den Strich, ohne einen
        Bindebogen unter ihnen oder kurz davor. Und ein Satz, in dem keine Streicherstimme einen Bindebogen, ein
        Strichzeichen, ein Zeichen auf einer Note oder ein Wort über den Strich hat, obwohl eine von ihnen singt:
        sechzehn Noten oder mehr, meist in Schritten, und langsam genug zum Binden (einmal gesagt).
    .why =
        Legato wird auf Streichinstrumenten mit Bindebögen geschrieben: ohne sie hat jede Note ihren Strich, und jedes
        Pult bindet, was es will. Musik ganz ohne Bögen sieht aus, als wäre mit ihren Bögen alles gut, und lässt die
        Arbeit liegen.

lift-in-soft-line = Ein Absetzen, das ein Loch in eine leise Linie reißt
    .finds =
        Zwei Bindebögen, piano oder leiser und ohne Pause dazwischen,
        von denen der zweite im besten Plan durch Absetzen die Richtung des ersten wieder nehmen muss: die Zeichen
        davor und danach gehen im Abwechseln nicht auf, oder die Bindebögen bringen den Strich nicht, den die Stelle
        verlangt, und ohne ihn auszukommen kostet weit mehr. Ein Befund je Stimme.
    .why =
        In einer leisen gebundenen Linie hört man das Absetzen: der Ton hört auf, und der nächste fängt neu an. Die
        meisten spielen so eine Stelle lieber, wie es kommt, oder lassen einen Bogen anderswo enden.

mark-cannot-be = Ein Strichzeichen, das nicht sein kann
    .finds =
        Ein Strichzeichen auf einer Note, wo kein Strich beginnt: in einem Bindebogen, auf einer herübergebundenen Note, im
        Pizzicato, auf einer Pause, auf einer nicht gestrichenen Note. Auch zwei verschiedene Zeichen am Anfang eines Strichs,
        außer auf einer einzigen Note, die lang genug für einen Bogenwechsel gehalten wird. Es sind die Zeichen, die `arcata marks` als widersprüchlich zählt.
    .why =
        Das Zeichen widerspricht dem Bogen oder der Spielweise daneben. Jeder Spieler glaubt einem von beiden.

mark-on-every-note = Ein Strichzeichen auf fast jedem Strich
    .finds =
        Takte hintereinander, in denen fast jeder Strich ein Ab- oder Aufstrichzeichen trägt, ein Dutzend Striche lang und mehr
        (D). Zeichen, die die Richtung des vorigen wiederholen, zählen nicht: Reihen von Abstrichen und Paare von Aufstrichen
        sind Wirkungen. Eine Stelle, deren erste bezeichnete Eins ein Aufstrich ist, geht andersherum: die Zeichen sagen, dass
        es so gemeint ist, und nichts wird gesagt.
    .why =
        Spieler lesen ein Zeichen als Ausnahme. Hat jede Note eines, so liest das Auge keines mehr, das wichtige geht unter, und
        ein anderer Stimmführer muss erst radieren, ehe er die Stimme einrichten kann.

mark-states-the-obvious = Ein Strichzeichen, das Selbstverständliches sagt
    .finds =
        Ein gedruckter Ab- oder Aufstrich, den man ohnehin nähme: er schließt unmittelbar an, das Abwechseln ergibt ihn, keine
        Reihe in einer Richtung beginnt oder endet dort, er steht für keinen ungewöhnlichen Strich ein (Akzent, Schweller oder
        Schluss gegen die Regel), er gehört zu keiner Wirkung (eine Reihe lauter Abstriche, Aufstriche in einen starken
        Abstrich, die ersten Male einer wiederholten Figur), und ohne ihn ist der beste Plan derselbe. Es sind die Zeichen, die
        `arcata marks` als selbstverständlich zählt, außer Aufstrichen auf der Eins: sie kommen von selbst, aber gegen die
        Regel, und das Zeichen sagt, dass es so gemeint ist.
    .why =
        Spieler lesen Zeichen als Ausnahmen. Trägt jede zweite Note eines, so gehen die wenigen wichtigen unter, und der
        Stimmführer muss die übrigen entfernen, ehe er die Stimme einrichtet.

marks-contradict = Zeichen, die einander widersprechen
    .finds =
        Zwei Zeichen auf einer Note, die Gegenteiliges verlangen: Strich mit Keil, Strich mit Spiccatozeichen, Punkt mit Keil.
        Zwei Worte an einer Stelle, die es tun: auf der Saite mit abseits der Saite, Spiccato oder Wurf; legato mit Spiccato,
        Martelé oder staccato; am Frosch mit an der Spitze; sul ponticello mit sul tasto; alles Abstrich mit alles Aufstrich. Das
        Wort legato über Noten mit Punkten und ohne Bogen (B).
    .why =
        Jeder gehorcht einem von beiden, und die Gruppe spielt beides, bis jemand fragt.

missing-arco = Es fehlt arco
    .finds =
        Nach pizz., ohne arco seither: ein gestrichenes Tremolo oder ein Strichzeichen (A), oder ein Bindebogen über
        drei oder mehr Noten: nach einer Pause, in der man den Bogen nehmen könnte (B), oder in einem späteren Takt
        (C). Auch pizz. noch einmal, obwohl es noch gilt (C).
    .why =
        Diese Zeichen haben nur mit dem Bogen Sinn. Die halbe Gruppe zupft weiter, die andere nimmt den Bogen, und die Probe hält.

mute-change-too-quick = Den Dämpfer zu schnell auf- oder absetzen
    .finds =
        con sordino oder senza sordino mit weniger als drei Vierteln der Pause, die die Hand braucht: 4,5 s zum Aufsetzen, 2,5 s
        zum Abnehmen (B); beim einzelnen Spieler ganz ohne Pause oder mit weniger als einem Zehntel davon (A).
    .why =
        Der Dämpfer muss gefunden, aufgesetzt und angedrückt werden, während die andere Hand den Bogen hält. Wer es nicht schafft,
        spielt ohne ihn weiter oder lässt Noten aus.

nested-slurs = Ein Bindebogen im anderen
    .finds =
        Ein durchgezogener Bogen, der einen oder mehrere kürzere durchgezogene Bögen seiner Stimme enthält, jeden von einer
        ihrer Noten zu einer anderen. Bögen von Vorschlagsnoten sind Verzierungen und zählen nicht, ebenso wenig ein Bogen über
        zwei Noten, der mit einem Haltebogen das Ende des äußeren teilt, und einer, der zwei Noten einer Tonhöhe verbindet: er ist
        als Haltebogen gemeint.
    .why =
        Eine der beiden Linien muss ein Phrasierungsbogen sein, aber sie sehen gleich aus: erst beim Probieren zeigt sich, welche
        der Strich ist, und in einer Gruppe probieren mehrere.

no-tempo = Kein Tempo
    .finds =
        Eine Partitur, deren erste Note kein Tempo hat: weder Metronomzahl noch Tempowort steht bei ihr oder davor (B). Hat nur
        die Wiedergabe ein Tempo, das niemand lesen kann, C.
    .why =
        Wie lange ein Strich reicht, ob eine Note springt, ob ein Absetzen in eine Pause passt: alles, was der Bogen tut, hängt am
        Tempo. Jede Zahl dieser Durchsicht, die daran hängt, ist dann eine Annahme.

no-time-to-retake = Keine Zeit zum Neuansetzen
    .finds =
        Striche, in einer Richtung bezeichnet, mit einem Absetzen dazwischen, wo die Stille und das, was die Note davor abgeben
        kann, kürzer sind als das Absetzen. In einer Reihe von drei oder mehr gibt jede Note die Hälfte ihrer Dauer ab; ein Paar
        zählt nur, wo der beste Plan absetzt und die beiden sich nicht anbinden lassen: sie brauchen bei den Geschwindigkeiten
        ihrer Dynamik mehr als einen Bogen, und der zweite ist keine einzelne Note, die halb so lang ist wie der erste. Das
        Absetzen wird so kurz genommen, wie es sein kann, nach einem Strich, der nicht mehr Bogen nahm als nötig.
    .why =
        Für zwei Abstriche hintereinander muss der Bogen die Saite verlassen, zurück und wieder aufgesetzt werden. Wo die Zeit
        fehlt, wird die erste Note abgerissen, oder die zweite kommt zu spät, oder die Gruppe rutscht auf der Saite zurück und
        kratzt.

note-outlasts-bow = Eine Note dauert länger als ein Bogen
    .finds =
        Eine Note samt Haltebögen, die 1,2 mal so lang wie der langsamste Bogen ihrer Dynamik dauert oder länger: B beim
        einzelnen Spieler (C bis 1,3 Bögen, wo sie nur gedehnt ist), D bei einer Gruppe. Orgelpunkte zählen nicht: eine Note
        über zwei Takte oder mehr, während andere Stimmen sich bewegen. Auch nicht eine nur gedehnte Note unter einer Fermate,
        die man hält, solange man will, oder mit einem Diminuendo um eine Stufe oder mehr, bei dem die Hand Bogen spart.
    .why =
        Ein einzelner Spieler muss in der Note wechseln, und man kann hören, wo. Eine Gruppe verbirgt den Wechsel, wenn jeder zu
        einer anderen Zeit wechselt; schreiben muss man es nicht, aber wissen sollte man es.

on-or-off-string = Auf der Saite oder abseits?
    .finds =
        Die erste Stelle eines Stücks, wo acht oder mehr gleichmäßige Einzelstriche mit Punkten so schnell und nicht lauter als
        forte kommen, dass man sie springen lassen oder kurz auf der Saite halten kann, und kein Wort in einer der
        Streicherstimmen sagt, was (C). Einmal für das ganze Stück gemeldet.
    .why =
        Es ist die erste Frage der ersten Probe. Beides klingt anders, liegt in anderen Teilen des Bogens, und eine Gruppe kann
        nicht beides.

out-of-range = Eine Note außerhalb des Instruments
    .finds =
        Noten unter der tiefsten Saite (A); unter der E-Saite des Basses, wo eine fünfte Saite oder eine Verlängerung nötig ist
        (C); über dem Ende des Griffbretts (B).
    .why =
        Sie lässt sich nicht spielen, oder nur von einem Teil der Gruppe, und man wird fragen, was stattdessen zu spielen ist.

page-turn-too-quick = Umblättern ohne Pause
    .finds =
        In einer einzelnen Stimme (einer Datei mit nur einer Stimme) mit festen Seiten: eine Seite, die umzublättern ist, endet,
        und die nächste beginnt, mit weniger Pause, als ein Spieler zum Blättern braucht (3 s). Geblättert werden die Seiten 1, 3,
        5 …, nach den Nummern der Datei, wo sie welche hat; die anderen liegen offen neben der nächsten. Eine leere Saite lässt die
        linke Hand frei und zählt halb; zwischen Sätzen hält man inne, wenn nicht „attacca“ dasteht.
    .why =
        Einer je Pult hört auf, um zu blättern, und die halbe Gruppe schweigt; ein einzelner Spieler hält ganz an.

parallel-bowed-apart = Derselbe Takt anders gebunden
    .finds =
        Ein Takt, dessen Noten genau wiederkommen, dreimal oder öfter mit denselben Bögen und einmal mit anderen, in einer Stimme:
        gemeldet wird der abweichende.
    .why =
        Was wiederkommt, soll gleich wiederkommen. Ein einziger anderer Bogen ist meist ein Versehen der Abschrift, und wer den
        Takt gelernt hat, spielt ihn wie zuvor oder stolpert.

part-differs-from-score = Eine Stimme, die von der Partitur abweicht
    .finds =
        Nur wo die Stimmen neben der Partitur gegeben sind (`arcata review SCORE --beside PART...`): Takte, in denen eine Stimme
        andere Noten, Pausen oder Haltebögen hat als die Partitur (A), oder andere Bindebögen, Strichzeichen, Zeichen, Dynamik oder
        Worte (B), jede Art einmal je Stimme mit ihren Stellen; eine andere Zahl von Takten, und eine Stimme, die die Partitur nicht
        hat (A).
    .why =
        Wer dirigiert, sagt, was in der Partitur steht, und der Spieler hat etwas anderes vor sich. Jede solche Stelle hält eine
        Probe auf, und niemand im Raum sieht beides.

phrase-mark-as-slur = Ein Phrasierungsbogen, gezeichnet wie ein Bindebogen
    .finds =
        Ein durchgezogener Bogen, den mehrere Anzeichen als Phrasierungsbogen ausweisen: er dauert weit länger als der langsamste
        Strich, enthält andere Bögen, Pausen oder Strichzeichen (je ein starkes Anzeichen), wiederholt eine Tonhöhe ohne Punkte
        oder umfasst genau zwei, vier oder acht Takte (je ein schwaches). Zwei starke genügen, oder ein starkes und zwei schwache;
        auch ein Bläser, der die Linie mit demselben Bogen verdoppelt, wird genannt.
    .why =
        Ein Bindebogen sagt Streichern „ein Strich“. Eine Phrasenlinie, die so aussieht, wird so gestrichen oder besprochen; und
        jedes Urteil über den Bogen, das darauf beruht, ist falsch.

pizz-change-too-quick = Vom Bogen zum Finger und zurück zu schnell
    .finds =
        pizz. oder arco mit so wenig Zeit zwischen der letzten Note der einen und der ersten der anderen Art, dass die Hand den
        Bogen nicht umgreifen kann (weniger als zwei Fünftel dessen, was das Profil ihr gibt: 0,5 s zum Pizzicato, 1 s zurück).
    .why =
        Man wird die letzte Note fallen lassen oder mit der ersten zu spät kommen. Eine Gruppe hilft sich, indem die Hälfte früher
        aufhört, und das muss jemand anordnen.

pizz-too-fast = Zu schnell gezupft
    .finds =
        Sechs oder mehr gezupfte Noten hintereinander, schneller, als eine Gruppe zupft: 6 in der Sekunde auf Geige und Bratsche,
        5 auf dem Cello, 4 auf dem Kontrabass.
    .why =
        Der Finger ermüdet, und die Noten fallen auseinander; über seiner Geschwindigkeit vereinfacht jeder die Stelle selbst.

reentry-without-dynamic = Ein Einsatz nach langer Pause ohne Dynamik
    .finds =
        Eine Note einer Streicherstimme nach acht oder mehr ganzen Takten Pause in ihrem Satz, ohne Dynamik, Gabel
        oder sforzato auf ihr, kurz nach ihr oder im letzten Takt der Pause.
    .why =
        Die Dynamik des letzten Einsatzes steht vielleicht eine Seite weiter vorn, und die Musik ist ohne sie
        weitergegangen. Wer so lange gezählt hat, nimmt die Lautstärke von dem, was er hört, und jeder hört etwas
        anderes; eine Stimme wiederholt sie.

repeat-comes-back-reversed = Eine Wiederholung kommt auf dem anderen Strich zurück
    .finds =
        Ein wiederholter Abschnitt, oder einer, zu dem da capo oder dal segno zurückführt, dessen Ende den Spieler, wie es kommt,
        auf dem anderen Strich lässt als am Anfang und vor der Rückkehr keine Zeit zum Neuansetzen gibt (30 ms zu wenig oder
        mehr). Jede Klammer, die zurückführt, wird für sich angesehen; steht auf ihrer letzten Note eine Fermate oder ein
        Atemzeichen, ist Zeit genug.
    .why =
        Derselbe Druck muss beiden Durchgängen dienen. Entweder spielt man den ganzen zweiten Durchgang mit umgekehrtem Strich,
        gegen jedes Zeichen der Stimme, oder jedes Pult erfindet an der Naht seinen eigenen.

rushed-return = Eine kurze Note muss einen langen Bogen zurückholen
    .finds =
        Eine kurze einzelne Note, die im besten Plan so viel schneller gestrichen wird, als ihre Dynamik es will, dass sie um 6 dB
        oder mehr heraussticht, weil der Strich davor oder danach lang ist.
    .why =
        Es ist der ungewollte Akzent in Partituren von Studierenden: ein leiser Auftakt zwischen zwei langen Bögen bellt. Niemand
        will ihn, und keine dynamische Bezeichnung nimmt ihn weg.

silent-downbeat = Ein Taktanfang, den keine Streichergruppe beginnt
    .finds =
        Ein Takt, in dem etwas Neues beginnt (Tempo, Taktart, Studierzeichen oder der Einsatz mehrerer Bläser nach einer Pause)
        und keine Streichergruppe auf der Eins einen Strich beginnt, obwohl mindestens eine darüber hinweg hält. Bei neuem Tempo
        B, sonst C. Auch vier oder mehr Takte hintereinander, deren Eins niemand beginnt (C); ein Takt, in dem eine Gruppe, die
        auf der Eins pausiert, auf einem anderen Schlag einsetzt, gibt den Puls und unterbricht die Reihe. Ebenso ein Strich,
        der in jedem Takt oder in jedem zweiten auf dieselbe Stelle fällt: eine Synkope, die weitergeht, hört man als solche.
        Ein Bogen, der weniger als einen Schlag vor der Eins beginnt und auf ihr endet, führt hin. Eine Metronomzahl, die nur
        einen Takt lang gilt, ist ein Breiterwerden in Zahlen und kein neues Tempo.
    .why =
        Streicher zeigen einander den Schlag, indem sie darauf wechseln. Ist jede Gruppe über den Taktstrich gebunden, so gehört
        das neue Tempo niemandem, und das Ensemble rutscht bis zum nächsten Strich.

slur-covers-beat = Ein Bindebogen über einem Schlag, der gesprochen sein will
    .finds =
        Ein Binde- oder Haltebogen über einen Taktstrich, an dem ein neues Tempo oder eine neue Taktart beginnt, während eine
        andere Stimme dort einen Strich beginnt; und ein Sforzato oder aufrechter Akzent, auf schwerem Schlag, unter einem
        weitergehenden Bogen: beides nicht auf der ersten Note eines Strichs.
    .why =
        Das Stärkste, was ein Bogen sagen kann, ist sein Anfang. Wo der Bogen weitergeht, bleibt das neue Tempo oder der Akzent
        ein Impuls mitten im Strich, schwächer, als die anderen beginnen.

slur-misses-tie = Ein Bindebogen, der das Ende eines Haltebogens verfehlt
    .finds =
        Ein Bindebogen, der auf einer Note endet, die weitergehalten wird, oder auf einer herübergehaltenen beginnt, wo kein
        anderer beginnt oder endet: die Linie deckt nur ein Stück der klingenden Note. Ein Befund je Stimme mit allen Stellen
        (D). Sind in einem Satz drei so gezeichnet, so ist es die Art der Ausgabe, und nichts wird gesagt. Wo sich zwei
        Bindebögen auf einer gehaltenen Note treffen, wird gefragt, ob ein Strich gemeint ist oder zwei: gespielt und geplant
        wird der Wechsel auf der gehaltenen Note (D).
    .why =
        Der Strich nimmt die gehaltene Note ganz; ein Bogen zum falschen Ende lässt einen Wechsel suchen, den niemand machen kann.
        Gezeichnet wird bis zur letzten gehaltenen Note und von der ersten an.

slur-outlasts-bow = Ein Bindebogen dauert länger als ein Bogen
    .finds =
        Noten unter einem Bindebogen, die zusammen länger dauern als der langsamste Bogen ihrer Dynamik: mindestens 1,1 mal,
        denn die langsamsten Bögen sind runde Zahlen. Bis 1,3 Bögen ist er gedehnt (C; nichts, wo er um eine dynamische Stufe
        oder mehr abnimmt, denn dann spart die Hand Bogen), bis 2,5 wird irgendwo gewechselt (B), darüber kann er nicht als ein
        Strich gemeint sein (A).
    .why =
        Der Ton wird dünn, oder jeder wechselt, wo ihm der Arm ausgeht, und die Gruppe bespricht es in der Probe. Ein Bindebogen
        sagt Streichern „ein Strich“: wer eine Phrase meint, sage es auf andere Art.

slur-over-change = Ein Wechsel der Spielweise unter einem Bindebogen
    .finds =
        pizz., arco, con sordino oder senza sordino nach der ersten Note eines Bindebogens und nicht nach seiner letzten.
    .why =
        Ein Bindebogen ist ein Strich. Man kann den Bogen nicht zum Pizzicato weglegen oder den Dämpfer aufsetzen, ohne die Saite
        zu verlassen; Bogen oder Wort steht also falsch, und man muss raten, welches.

slur-over-rest = Eine Pause unter einem Bindebogen
    .finds =
        Eine Pause der eigenen Stimme zwischen der ersten und der letzten Note eines Bindebogens.
    .why =
        Ein Bindebogen ist ein Strich, eine Pause nimmt den Bogen von der Saite oder hält ihn an. Ob man abhebt und in derselben
        Richtung weiterspielt, auf der Saite anhält oder neu streicht, muss man raten; als Phrasierungsbogen sagt die Linie über
        den Strich gar nichts.

slur-skips-string = Eine übersprungene Saite in einem Bindebogen
    .finds =
        Zwei benachbarte Noten unter einem Bogen, die kein Fingersatz auf dieselbe Saite oder auf Nachbarsaiten bringt, wobei die
        erste zu kurz ist, um ungehört über eine Saite zu kommen (B). Der ganze Bogen wird mit Fingersatz versehen: Lagen, Wechsel,
        für die Zeit ist, leere Saiten.
    .why =
        Unterwegs streift der Bogen die Saite dazwischen, oder er muss mitten im Bindebogen gehoben werden.

slurred-stops = Gebundene Doppelgriffe, die sich nicht verbinden lassen
    .finds =
        Zwei Doppelgriffe hintereinander unter einem Bogen, wo kein rechtzeitig erreichbarer Fingersatz den Bogen auf einer
        gemeinsamen Saite lässt (B).
    .why =
        Der Bogen müsste zwei Saiten verlassen und zwei andere nehmen: man kann ihn nur heben oder über eine Saite wischen, die
        nicht gemeint ist.

slurred-tremolo = Ein gebundenes Tremolo, das man zweifach lesen kann
    .finds =
        Tremolo mit einem oder zwei Balken unter einem Bindebogen: abgekürzte Tonwiederholungen, mindestens zwei, oder
        zwei Noten im Wechsel, deren Bogen über ihre Gruppe hinausgeht. Ein Befund je Stimme.
    .why =
        Ein oder zwei Balken sind gezählte Noten. Ein Bogen darüber kann heißen, dass alle auf einen Strich kommen,
        oder nur, dass sie eine Phrase sind und jede ihren Strich hat; in einer Gruppe wird beides gespielt und sieht
        und klingt wie ein Fehler.

soft-entry-at-frog = Ein leiser Einsatz, wo der Bogen schwer ist
    .finds =
        Ein Einsatz aus der Stille, pianissimo oder leiser, mit gedrucktem Strich, der im besten Strich der Stelle nahe dem
        Frosch beginnt (D).
    .why =
        Am Frosch steht das ganze Gewicht von Bogen und Arm auf der Saite, und ein Pianissimo beginnt mit einem Stoß. Leise
        Einsätze legt man in die obere Hälfte, wo die Stange sich selbst trägt.

stands-contradict = Pulte einer Gruppe mit entgegengesetzten Zeichen
    .finds =
        Zwei Stimmen einer Partie oder zwei Stimmen einer Gruppe (erstes und zweites Pult, a und b), die denselben Rhythmus
        spielen und auf derselben Note entgegengesetzte Strichzeichen tragen.
    .why =
        Die Bögen der Gruppe kreuzen sich in der Luft, und jeder sucht den Fehler in seiner eigenen Stimme.

state-never-ends = Eine Anweisung (Dämpfer, sul pont.), die nie aufgehoben oder zweimal gegeben wird
    .finds =
        con sordino, sul ponticello, sul tasto oder col legno noch einmal, obwohl es gilt, mit Musik dazwischen (C; B
        beim Dämpfer); senza sordino noch einmal, nachdem der Dämpfer schon ab ist (B); unis. über zwei Stimmen mit
        verschiedenen Noten (B); sul ponticello oder sul tasto, das bis zum Ende des Satzes nicht zurückgenommen wird,
        obwohl die Musik nach einem neuen Tempo, nach pizz. oder sechzehn gespielte Takte lang weitergeht (C).
    .why =
        Jede Spielweise muss jemand zurücknehmen. Wo sie zweimal dasteht, fehlt dazwischen ein Wort, und wer dem ersten glaubt,
        spielt anders als wer dem zweiten glaubt.

stop-held-too-long = Drei oder vier Saiten sollen weiterklingen
    .finds =
        Ein Akkord über drei oder vier Saiten, länger geschrieben, als die Saiten zusammen klingen können, unter forte, wo der
        Bogen keine drei Saiten niederdrücken kann (B); ohne Zeichen, dass er zu brechen ist.
    .why =
        Ein Bogen liegt auf zwei Saiten. Drei klingen einen Augenblick zusammen, und nur laut; dann wählt jeder, welche zwei er
        hält.

stop-unplayable = Noten, die keine Hand zusammen greift
    .finds =
        Zwei bis vier Noten an einem Hals, oder zweier Stimmen für einen Spieler, die nicht in einer Hand auf Nachbarsaiten passen:
        in einer Solostimme (A); in einer Gruppe, die ungefragt teilen kann (B). Auch fünf Noten und mehr.
    .why =
        Man muss eine Note weglassen oder den Akkord brechen und entscheidet allein; eine Gruppe wird fragen, wer was spielt.

stroke-out-of-speed = Eine genannte Strichart in einem Tempo, das sie nicht hat
    .finds =
        Vier oder mehr gleichmäßige Einzelstriche unter einem Wort, das sagt, wie gestrichen wird, deutlich schneller oder
        langsamer, als diese Strichart kann (B): Martelé zu schnell, als dass der Bogen anhalten und greifen könnte; Spiccato oder
        abseits der Saite, schneller als irgendein Bogen springt; détaché oder auf der Saite, schneller als das Instrument
        anspricht; Sautillé zu langsam, als dass der Bogen von selbst spränge.
    .why =
        Man muss das Wort oder das Tempo aufgeben, und eine Gruppe gibt beide auf.

swell-against-bow = Ein Schweller gegen den Strich
    .finds =
        Ein langer Strich über den größten Teil des Bogens, der im Abstrich wächst oder im Aufstrich abnimmt, um eine dynamische
        Stufe oder mehr, im besten Plan. Der Schweller gehört dem Strich: einen, der früher beginnt oder weitergeht, machen
        mehrere Striche, und einen, dem im selben Strich der umgekehrte antwortet, macht die Hand.
    .why =
        Das Gewicht des Bogens auf der Saite nimmt vom Frosch zur Spitze ab: sich selbst überlassen verklingt ein Abstrich, und ein
        Aufstrich wächst. Dagegen muss die Hand drücken, und einem langen Schweller geht der Bogen oder der Ton aus.

thrown-count = Zu viel für einen Wurf
    .finds =
        Eine Gruppe von Noten unter einem Bogen, die nach dem Wort geworfen werden soll (gettato, jeté, ricochet) und mehr Noten
        hat, als ein Wurf fasst, oder langsamer oder schneller kommt, als ein geworfener Bogen abprallt (B).
    .why =
        Man lässt den Bogen einmal fallen, und er zählt von selbst. Nach wenigen Sprüngen liegt er auf der Saite; langsamer, als er
        springt, muss jede Note gesetzt werden, und das ist eine andere Strichart und klingt so.

tie-or-slur = Bindebogen, wo ein Haltebogen gemeint ist, oder umgekehrt
    .finds =
        Ein Haltebogen zu einer anderen Tonhöhe (A); ein Bindebogen über zwei benachbarte Noten einer Höhe und sonst nichts, ohne
        Punkte, Striche oder Akzente (B, alle einer Stimme zusammen: viele meinen damit einen Puls und sagen es nirgends).
    .why =
        Auf der Seite sehen beide Linien gleich aus. Ein Bindebogen auf einer Höhe ohne Punkte kann eine gehaltene Note sein oder
        zwei, in einem Strich gepulst; ein Haltebogen zu einer anderen Höhe ist gewiss ein Bindebogen. Jeder entscheidet allein,
        und die Gruppe ist nicht zusammen.

winds-phrase-apart = Bläser, die anders phrasieren als die Streicher, die sie verdoppeln
    .finds =
        Eine Stimme, die nicht gestrichen wird, und eine Streicherstimme auf einer Linie, im Einklang oder in Oktaven,
        vier Takte oder länger, gleich gebunden bis auf einen Bogen (C) oder wenige (D): einmal je Stimmenpaar
        gemeldet, und einmal, wo mehrere Paare an einer Stelle abweichen.
    .why =
        Der Bogen eines Bläsers gilt Zunge und Atem, der eines Streichers dem Strich; sie müssen nicht übereinstimmen
        und dürfen es oft nicht. Wo fast alle es tun, ist mit beiden eine Phrase gemeint, und ein einzelner anderer
        Bogen ist meist ein Versehen.
