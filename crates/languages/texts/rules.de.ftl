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
    .proposes =
        Der billigste Weg, den Akzent auf den anderen Strich zu nehmen: die Stelle anders beginnen, davor anbinden oder
        absetzen (Sache der Spieler), mit seinem Preis.
    .limits =
        Dass manche Akzente leicht gewollt sind. Weiche bleiben unbeachtet, und das liegende Akzentzeichen, das schon die
        Geschwindigkeit machen kann: mit ihm hatten neun Quartette zwei Befunde auf 100 Takte, bei denen kein Spieler
        angehalten hätte; ebenso Tremolo und Striche, die kürzer sind als ein Absetzen, wo man in der Mitte des Bogens bleibt.
        Die Stellen im Bogen sind die der Rechnung, auf ein Zehntel seiner Länge.

bar-comes-out-odd = Ein Takt, der nicht aufgeht
    .finds =
        Derselbe Takt, gleich in Rhythmus und Bögen, viermal oder öfter hintereinander mit einer ungeraden Zahl von Strichen:
        wie es kommt, beginnt er jedes Mal auf dem anderen Strich, und auch im besten Strich, den es gibt, ist das so, oder es
        wird jedes Mal angebunden oder neu angesetzt. Wie es kommt, geht, was keine Gestalt zu zeigen hat (fünf gleiche Striche
        oder mehr, drei gleiche Bögen, ein Ton, der sich durch den Takt wiederholt), was sein Gewicht nicht auf dem ersten
        Strich will (eine Synkope über die Taktmitte, ein Akzent an anderer Stelle), und Takte unter einer Sekunde.
    .why =
        Die Figur klingt vom Abstrich so und vom Aufstrich anders; was gleich dasteht, kommt abwechselnd auf zweierlei Art heraus.
    .proposes =
        Die letzten zwei Striche jedes Takts anbinden (Sache der Spieler); zwei Noten binden, oder zwei trennen (Sache der
        Schreibenden).
    .limits =
        Ob das Abwechseln gewollt ist, wie in einem schnellen Walzer oder einem Lauf. Zeichen, die die Striche festlegen,
        gelten als gemeint.

beat-on-up-bow = Ein schwerer Schlag kommt auf den Aufstrich
    .finds =
        Ein Schlag mit Akzent, Akkord oder plötzlichem Anschwellen, der selbst im besten Plan auf einen Aufstrich fällt, obwohl
        kein Aufstrich dasteht.
    .why =
        Die Hand hat ihr Gewicht am Frosch und gibt es auf dem Weg nach unten her. Ein Akzent im Aufstrich lässt sich spielen,
        aber leichter und später, als der Schreibende ihn hört; die Gruppe wird nach dem anderen Strich fragen.
    .proposes =
        Was anders zu tun wäre, damit der Schlag im Abstrich kommt, mit seinem Preis: mit dem anderen Strich beginnen,
        anbinden oder neu ansetzen (Sache der Spieler). In der Datei sind es Strichzeichen: auf dem Schlag, und wo der Arm
        anders geht, ein Zeichen auf beiden Strichen eines Anbindens oder Neuansetzens; keines, wo zum Neuansetzen die Zeit
        fehlte. Und wo eine einzige Änderung der Bindebögen in den Takten davor es von selbst bringt, billiger, als es den Arm
        käme, diese Änderung (Sache der Schreibenden): ein Bindebogen geteilt, verbunden, eine Note früher oder später
        begonnen oder beendet, oder ein Anbinden.
    .limits =
        Ob ein leichterer Akzent gewollt ist, oder die Linie davor mehr zählt als der Schlag. Weiche Akzente, und solche auf
        einem langen Strich, macht die Geschwindigkeit des Bogens, sie bleiben unbeachtet; ebenso, was für einen Punkt oder
        weniger im Abstrich zu haben ist: das wählen die Spieler; und was nach einem punktierten Auftakt kommt, der angebunden
        wird. Von Akzenten hintereinander ist jeder zweite ein Aufstrich: gesagt wird, wo der erste steht. In einer Reihe
        gleicher Striche macht der Arm die Akzente in beiden Richtungen. Wo ein Abstrich auf einer schwächeren Note gleich
        nach dem Akzent gedruckt ist, ist auch der Akzent ein Abstrich: niemand druckt, was das Abwechseln nicht gäbe, außer
        für „noch einmal Abstrich“.

bow-drift = Eine Figur trägt den Bogen an ein Ende
    .finds =
        Eine Folge von Strichen, die mindestens dreimal ohne Pause hintereinander kommt und deren Ab- und Aufstriche so ungleich
        sind, dass sie, gespielt wie es kommt und so schnell, wie die Dynamik es will, den Bogen um mehr als seine halbe Länge
        zu einem Ende trägt.
    .why =
        Drei Noten gebunden und eine einzeln, immer wieder: jeder Bindebogen nimmt mehr Bogen, als die einzelne Note zurückgibt.
        Der Arm landet an einem Ende, wo die Stelle nicht klingt, oder jede einzelne Note sticht heraus, weil sie eilt.
    .proposes =
        Die einzelne Note an den Bindebogen anbinden, mit einem Halt (Sache der Spieler; in der Datei als ein Zeichen auf
        beiden, wo die Figur zwei Striche hat); den Bindebogen teilen, so dass beide Richtungen gleich wiegen (Sache der
        Schreibenden). Eine Figur, deren gedruckte Zeichen zwei Striche anbinden, bleibt, wie sie ist.
    .limits =
        Ob der Spieler ausgleicht, indem er die gebundenen Noten nahe am Steg mit wenig Bogen spielt.

broken-slur = Ein Bindebogen mit nur einem Ende
    .finds =
        Ein Bindebogen, der anfängt und nie endet, endet und nie angefangen hat, oder auf einer einzigen Note steht. Ein Bogen,
        der über ein Wiederholungszeichen oder in eine Klammer hängt, ist für Spieler vollständig und zählt nicht. Einer in einer
        Stimme ist ein Versehen (A); mehrere gingen zwischen zwei Programmen verloren, und die Stimme ist durchzusehen (B).
    .why =
        Der Spieler sieht eine Linie ins Nichts und weiß nicht, wo der Strich wechselt. Solche Enden bleiben meist von einer
        Änderung übrig, und der Weg von einem Programm ins andere vermehrt sie.
    .proposes =
        Das lose Ende entfernen (Sache der Schreibenden): der Bogen wechselt dort dann auf jeder Note.
    .limits =
        Wo das andere Ende sein sollte.

chord-or-divisi = Ein Akkord für eine Gruppe: ganz oder geteilt?
    .finds =
        In der Stimme einer Gruppe ein Akkord oder zwei Stimmen zugleich, wo weder div. noch non div. noch unis. gesagt ist:
        einmal je Stimme gemeldet, beim ersten, mit der Zahl der übrigen.
    .why =
        Die halbe Gruppe teilt, die andere spielt Doppelgriffe, und die falschen Noten klingen doppelt so laut; die erste Frage
        der Probe ist immer dieselbe.
    .proposes =
        Div. beim ersten Akkord schreiben, oder non div. (Sache der Schreibenden).
    .limits =
        Akkorde über drei und vier Saiten brechen alle, sie bleiben unbeachtet; ebenso Akkorde, die keine Hand greifen kann
        und die von selbst sagen, dass sich die Stimme teilt.

chords-too-close = Akkorde im Abstrich zu dicht hintereinander
    .finds =
        Zwei Akkorde über drei oder vier Saiten hintereinander, beide durch Zeichen oder Worte im Abstrich, mit weniger Zeit vom
        ersten zum zweiten, als man braucht, um den ersten zu brechen, klingen zu lassen und den Bogen zurückzuholen (B).
    .why =
        Ein Akkord wird von den tiefen Saiten zu den hohen gebrochen, und auch das braucht Zeit, ehe der Bogen weg kann. Fehlt
        sie, so fehlen dem ersten Akkord die oberen Noten, oder der zweite kommt zu spät.
    .proposes =
        Das zweite Zeichen entfernen und abwechseln (Sache der Spieler). Weniger Noten in die Akkorde schreiben, die zwei
        Saiten halten können, von der Hand der Schreibenden.
    .limits =
        Wie schnell dieser Spieler einen Akkord bricht. Akkorde, die nichts Gedrucktes im Abstrich verlangt, werden
        abgewechselt, wo sie zu rasch kommen, und nicht gemeldet. Wo selbst zum Absetzen zwischen einzelnen Noten die Zeit
        fehlte, sagt es `no-time-to-retake`.

countable-tremolo = Ein Tremolo, das sich zählen lässt
    .finds =
        Tremolo mit drei Balken oder mehr, bei dem das Tempo so wenige Striche in der Sekunde ergibt, dass man sie als Noten
        zählt (B), und kein Wort sagt Tremolo. Ein Befund je Stimme. Wo eine andere Gruppe zugleich ein Tremolo mit drei Balken
        hat, ist es eine Farbe des Akkords, und niemand zählt.
    .why =
        Drei Balken sind im langsamen Tempo Zweiunddreißigstel und im schnellen ein Flirren. Wo die Zweiunddreißigstel langsam
        sind, spielt die halbe Gruppe sie aus, und die andere flirrt.
    .proposes =
        Trem. schreiben, wo es beginnt, wenn ein Flirren gemeint ist (Sache der Schreibenden). Die Noten ausschreiben, oder
        weniger Balken, wenn sie gezählt sein sollen (Sache der Schreibenden), von ihrer Hand.
    .limits =
        Welches von beiden gemeint ist. Ein und zwei Balken gelten als gemessen, ein Tremolo, das die Datei ungemessen nennt,
        als Flirren, und eines, das in einer Stimme einmal trem. hieß, bleibt es. Das Tremolo zwischen zwei Noten bleibt
        unbeachtet.

crossing-slurs = Bindebögen, die sich kreuzen
    .finds =
        Zwei Bindebögen einer Stimme, von denen der zweite unter dem ersten anfängt und nach ihm endet.
    .why =
        Ein Bogen kann nicht in zwei Strichen zugleich sein: niemand kann sagen, wo er wechselt. Jedes Pult entscheidet anders,
        und die Gruppe fragt.
    .proposes =
        Den ersten Bindebogen dort enden lassen, wo der zweite beginnt (Sache der Schreibenden).
    .limits =
        Welcher von beiden als Strich gemeint war. Eine gestrichelte oder gepunktete Linie gilt als Phrasierungsbogen und
        bleibt unbeachtet.

dots-on-pizzicato = Punkte auf gezupften Noten
    .finds =
        Punkte, Keile oder Spiccatozeichen auf gezupften Noten, die ohne Pause aufeinander folgen (D), ein Befund je Stimme.
    .why =
        Eine gezupfte Note ist ohnehin kurz. Punkte, die von einer gestrichenen Fassung übrig sind, lassen die Spieler das arco
        suchen, das sie übersehen haben könnten.
    .proposes =
        Die Punkte entfernen (Sache der Schreibenden).
    .limits =
        Ob die Noten sofort gedämpft sein sollen, wofür es Worte gibt („dämpfen“, „secco“). Auf einer Note oder einem Akkord
        vor einer Pause wird ein Punkt so gelesen und bleibt: die Saite klänge in die Stille. Noten, die die linke Hand zupft
        oder die aufs Griffbrett schnappen, während der Bogen spielt, bleiben unbeachtet.

dots-under-slur = Punkte unter einem Bogen, die man auf zwei Arten lesen kann
    .finds =
        Drei oder mehr Noten wechselnder Höhe mit Punkten unter einem Bindebogen, in einem Tempo, in dem zwei Stricharten dem
        Zeichen entsprechen, und kein Wort sagt, welche (B): Portato oder gebundenes Staccato, wo die Noten weder langsam noch
        schnell kommen; gebundenes Staccato oder Wurf, wo sie schnell kommen und für einen Wurf wenige genug sind. Der Satz sagt,
        was in diesem Tempo wahrscheinlicher ist. Ein Befund je Stimme und Paar von Lesarten.
    .why =
        Die drei Stricharten teilen ein Zeichen. In der einen hält der Bogen kaum an, in der nächsten nach jeder Note, in der
        dritten verlässt er die Saite; eine Gruppe, der es niemand gesagt hat, spielt zwei zugleich.
    .proposes =
        Es mit einem Wort sagen, wo solche Bindebögen beginnen (Sache der Schreibenden): „staccato“ für den angehaltenen
        Bogen, „gettato“ für den Wurf. Tenutostriche statt der Punkte setzen, wo ein Portato gemeint ist (Sache der
        Schreibenden).
    .limits =
        Was ein Stil voraussetzt. Langsame Noten, wiederholte Noten (das alte Zeichen für einen pulsierenden Bogen), Keile,
        Punkte mit Strichen und Gruppen zu zweien liest man nur auf eine Weise, sie bleiben; ebenso, was auf ein Wort über die
        Strichart folgt, bis zum nächsten arco, pizz. oder ord.

doubling-bowed-apart = Eine verdoppelte Linie mit zweierlei Strich
    .finds =
        Zwei Streicherstimmen, die zwei Takte oder länger dieselbe Linie im Einklang oder in Oktaven spielen, wobei einige Noten
        nur in einer gebunden sind oder entgegengesetzte Strichzeichen tragen. Bässe dürfen öfter wechseln als die, die sie
        verdoppeln.
    .why =
        Wer dieselbe Linie spielt, schaut auf den Bogen des anderen. Wo fast alles gleich gebunden ist und wenige Stellen nicht,
        steckt in einer der Stimmen ein Versehen, und das Fragen kostet Zeit.
    .proposes =
        Der unteren Stimme die Bindebögen der oberen geben (Sache der Schreibenden).
    .limits =
        Welche von beiden gemeint ist. Ein Strich, der anders beginnt, weil eine Stimme dazwischen eine Note spielt, etwa
        einen Auftakt, die die andere nicht hat, bleibt unbeachtet. Wo ein Fünftel der Striche oder mehr verschieden ist, sind
        zwei Artikulationen einer Linie gewollt, und nichts wird gesagt; auch nicht, wo eine der beiden gezupft ist oder ein
        Tremolo spielt, dessen Striche kein Legato sind. Gegenläufige Striche ohne Zeichen sind bei Celli und Bässen kein
        Unterschied: dort kommt es, wie es kommt.

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
    .proposes =
        Der unteren Stimme die Zeichen der oberen geben (Sache der Schreibenden): in der Datei, wo nur Zeichen an Noten
        verschieden sind.
    .limits =
        Welche von beiden gemeint ist. Wo die meisten Zeichen in einer Stimme allein stehen, oder eine Stimme von einer Art
        keines hat, sind zwei Artikulationen einer Linie gewollt, oder bezeichnet ist, was die andere nicht gesagt bekommen
        muss, und nichts wird gesagt. Zeichen über gezupften Noten und Tremoli bleiben unbeachtet.

effect-marked-again = Eine Wirkung, die immer wieder bezeichnet wird
    .finds =
        Eine Figur, die fünfmal oder öfter hintereinander mit denselben Strichzeichen kommt, von denen einige eine Wirkung
        machen: Aufstriche in einen starken Abstrich, ein Absetzen, ein Strich gegen das Abwechseln. Vom dritten Mal an sind die
        Zeichen überflüssig (D).
    .why =
        Zweimal lehrt die Figur; die Spieler führen sie fort. Was immer weiter bezeichnet wird, sieht jedes Mal wie eine Änderung
        aus und drängt sich in der Stimme.
    .proposes =
        Die Zeichen der späteren Male entfernen und sim. schreiben, wo sie beginnen (Sache der Spieler).
    .limits =
        Ob die Stelle so schwer ist, dass jemand jeden Strich geschrieben haben will, oder ob die Zeichen aus einer
        Unterrichtsausgabe stammen.

ending-on-up-bow = Eine Phrase endet im Aufstrich
    .finds =
        Die letzte Note einer Phrase oder ihr letzter Akkord, auf einem Schlag, für sich angestrichen, forte oder lauter und
        nicht zu kurz, weder anschwellend noch verlöschend, die im besten Plan auf einem Aufstrich enden. Eine Phrase endet vor
        einer langen Pause, am Doppelstrich mit neuem Tempo, das nicht sogleich im Abstrich beginnt, und am Schluss; nicht, wo ein Atemzeichen vor der Note den Bogen
        frei macht.
    .why =
        Ein Abstrich schließt: er kann ausklingen und verlöschen. Ein Aufstrich endet am Frosch, wo der Ton abreißt oder schwillt.
    .proposes =
        Was anders zu tun wäre, um im Abstrich zu enden, mit seinem Preis: mit dem anderen Strich beginnen, anbinden oder neu
        ansetzen (Sache der Spieler). In der Datei sind es Strichzeichen, wie bei einem Akzent im Aufstrich. Oder die eine
        Änderung der Bindebögen davor, die den Abstrich von selbst billiger bringt (Sache der Schreibenden).
    .limits =
        Ob der Schluss als Frage gemeint ist. Eine letzte Note, die anschwillt, bleibt unbeachtet: ein Aufstrich passt zu ihr.
        Ebenso eine nach einem punktierten Auftakt, der angebunden wird, eine leiser als forte, oder eine, die unter morendo,
        einer Gabel oder dim. verklingt: dort verlässt der Bogen die Saite so oder so. Auch ein letzter Bindebogen bleibt
        unbeachtet: man hört ihn als Linie, nicht danach, wie sein Strich begann; und ebenso, was ein Wiederholungszeichen
        zurückschickt, denn die Musik geht weiter.

entry-without-dynamic = Ein Einsatz ohne Dynamik
    .finds =
        Eine Stimme, bei deren erstem Einsatz keine Dynamik steht, weder auf der ersten Note noch davor. Hat in der ganzen
        Partitur keine Stimme eine, so sagt es ein einziger Befund.
    .why =
        Der Spieler weiß nicht, wie laut er beginnen soll, und die Dynamik bestimmt auch, wie viel Bogen eine Note bekommt. Es ist
        die erste Frage jeder ersten Probe.
    .proposes =
        Die Dynamik schreiben, die die anderen Stimmen in dem Augenblick haben, wenn sie übereinstimmen (Sache der
        Schreibenden).
    .limits =
        Musik, die nach Brauch keine Dynamik trägt. Eine Dynamik, die innerhalb eines Viertels nach dem Einsatz kommt, zählt:
        Programme setzen sie ein wenig spät.

landmarks-too-far = Studierzeichen zu weit auseinander
    .finds =
        In Musik für Gruppen: von einem Zeichen zum nächsten, bis zum ersten oder vom letzten bis zum Schluss mehr Takte, als
        man gern zählt (C, ein Befund für die Partitur). Auch der Anfang eines Satzes ist ein Wegzeichen. In Kammermusik, wo man
        die Taktzahl nennt, nur wenn überhaupt Studierzeichen gebraucht werden und eine Stimme dazwischen mehr
        als acht Takte Pause zählt. Takte ohne Zahlen (C).
    .why =
        „Einundvierzig vor D“ kostet jedes Mal eine Minute, und die halbe Gruppe setzt anderswo ein.
    .proposes =
        Ein Platz für ein Studierzeichen dazwischen: ein Doppelstrich, ein Wechsel von Takt, Tonart oder Tempo, sonst die
        Mitte (Sache der Schreibenden). Nur wer schreibt, weiß, wo die Musik sich wendet.
    .limits =
        In der Kammermusik geht man nach Taktzahlen; ohne ein einziges Zeichen bleiben solche Partituren, wie sie sind.

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
    .proposes =
        Die Bindebögen schreiben, oder sagen, dass jede Note ihren Strich hat (Sache der Schreibenden): von ihrer Hand.
    .limits =
        Ob getrennte Striche gemeint sind, wie in viel alter Musik: ein Wort oder Zeichen irgendwo im Satz, das vom Strich
        spricht, gilt als Antwort. Bindebögen in den vier Takten vor dem Wort zählen als Muster, das weitergeht.

lift-in-soft-line = Ein Absetzen, das ein Loch in eine leise Linie reißt
    .finds =
        Zwei Bindebögen, piano oder leiser und ohne Pause dazwischen,
        von denen der zweite im besten Plan durch Absetzen die Richtung des ersten wieder nehmen muss: die Zeichen
        davor und danach gehen im Abwechseln nicht auf, oder die Bindebögen bringen den Strich nicht, den die Stelle
        verlangt, und ohne ihn auszukommen kostet weit mehr. Ein Befund je Stimme.
    .why =
        In einer leisen gebundenen Linie hört man das Absetzen: der Ton hört auf, und der nächste fängt neu an. Die
        meisten spielen so eine Stelle lieber, wie es kommt, oder lassen einen Bogen anderswo enden.
    .proposes =
        Was zu tun wäre, um ohne das Absetzen weiterzugehen, mit seinem Preis, oder das Zeichen entfernen, das nicht aufgeht
        (Sache der Spieler); und die eine Änderung der Bindebögen davor, die den Strich von selbst billiger bringt (Sache der
        Schreibenden).
    .limits =
        Ob dort ein Atem gemeint ist. Zwei gleiche Zeichen nebeneinander verlangen einen und bleiben unbeachtet, wie die Fugen
        zwischen Phrasen.

mark-cannot-be = Ein Strichzeichen, das nicht sein kann
    .finds =
        Ein Strichzeichen auf einer Note, wo kein Strich beginnt: in einem Bindebogen, auf einer herübergebundenen Note, im
        Pizzicato, auf einer Pause, auf einer nicht gestrichenen Note. Auch zwei verschiedene Zeichen am Anfang eines Strichs,
        außer auf einer einzigen Note, die lang genug für einen Bogenwechsel gehalten wird. Es sind die Zeichen, die `arcata marks` als widersprüchlich zählt.
    .why =
        Das Zeichen widerspricht dem Bogen oder der Spielweise daneben. Jeder Spieler glaubt einem von beiden.
    .proposes =
        Das Zeichen entfernen (sicher, wo sonst dort nichts beginnt); von zwei Zeichen das, das nicht kommt (Sache der
        Spieler).
    .limits =
        Ob das Zeichen richtig und der Bindebogen falsch ist. Mehrere Zeichen einer Richtung über einem Bindebogen mit Punkten
        erklären nur den Strich und bleiben.

mark-on-every-note = Ein Strichzeichen auf fast jedem Strich
    .finds =
        Takte hintereinander, in denen fast jeder Strich ein Ab- oder Aufstrichzeichen trägt, ein Dutzend Striche lang und mehr
        (D). Zeichen, die die Richtung des vorigen wiederholen, zählen nicht: Reihen von Abstrichen und Paare von Aufstrichen
        sind Wirkungen. Eine Stelle, deren erste bezeichnete Eins ein Aufstrich ist, geht andersherum: die Zeichen sagen, dass
        es so gemeint ist, und nichts wird gesagt.
    .why =
        Spieler lesen ein Zeichen als Ausnahme. Hat jede Note eines, so liest das Auge keines mehr, das wichtige geht unter, und
        ein anderer Stimmführer muss erst radieren, ehe er die Stimme einrichten kann.
    .proposes =
        Die Zeichen entfernen, die ohnehin kämen (sicher), wo es genug sind. Sonst nur die behalten, die etwas sagen (Sache
        der Spieler), und die muss wählen, wer schreibt.
    .limits =
        Ob dies eine Etüde oder Unterrichtsausgabe ist, die jeden Strich gezeigt haben will.

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
    .proposes =
        Die Zeichen entfernen (sicher: jeder Strich bleibt, wie er ist).
    .limits =
        Ob eine Unterrichtsausgabe jeden Strich bezeichnet haben will. Zeichen nach Pausen, am Anfang und neben einem anderen
        Zeichen derselben Richtung bleiben: dort machen Spieler es wirklich verschieden.

marks-contradict = Zeichen, die einander widersprechen
    .finds =
        Zwei Zeichen auf einer Note, die Gegenteiliges verlangen: Strich mit Keil, Strich mit Spiccatozeichen, Punkt mit Keil.
        Zwei Worte an einer Stelle, die es tun: auf der Saite mit abseits der Saite, Spiccato oder Wurf; legato mit Spiccato,
        Martelé oder staccato; am Frosch mit an der Spitze; sul ponticello mit sul tasto; alles Abstrich mit alles Aufstrich. Das
        Wort legato über Noten mit Punkten und ohne Bogen (B).
    .why =
        Jeder gehorcht einem von beiden, und die Gruppe spielt beides, bis jemand fragt.
    .proposes =
        Eines von beiden entfernen (Sache der Schreibenden).
    .limits =
        Welches von beiden gemeint war. Ein Tenutostrich mit Punkt ist ein eigenes Zeichen und bleibt; ebenso Punkte unter
        einem Bindebogen mit legato (sie pulsieren), zwei Worte in einem Text, die oft vom einen zum anderen führen, und Worte
        für zwei Stimmen eines Systems.

missing-arco = Es fehlt arco
    .finds =
        Nach pizz., ohne arco seither: ein gestrichenes Tremolo oder ein Strichzeichen (A), oder ein Bindebogen über
        drei oder mehr Noten: nach einer Pause, in der man den Bogen nehmen könnte (B), oder in einem späteren Takt
        (C). Auch pizz. noch einmal, obwohl es noch gilt (C).
    .why =
        Diese Zeichen haben nur mit dem Bogen Sinn. Die halbe Gruppe zupft weiter, die andere nimmt den Bogen, und die Probe hält.
    .proposes =
        Arco an die erste Note schreiben, die den Bogen zeigt (Sache der Schreibenden); das zweite pizz. entfernen (Sache der
        Schreibenden).
    .limits =
        Ob das Zeichen der Fehler ist und nicht das fehlende Wort. Ein Bindebogen kann gut über gezupften Noten stehen: er
        lässt die Saite klingen, zeigt eine Phrase, oder lässt die linke Hand die zweite Note greifen. Deshalb bleiben
        Bindebögen über zwei Noten unbeachtet, und alle einer Stelle, die vom Wort an gebunden ist. Ebenso Noten für die linke
        Hand, und ein pizz. in Klammern, das nur erinnert.

mute-change-too-quick = Den Dämpfer zu schnell auf- oder absetzen
    .finds =
        con sordino oder senza sordino mit weniger als drei Vierteln der Pause, die die Hand braucht: 4,5 s zum Aufsetzen, 2,5 s
        zum Abnehmen (B); beim einzelnen Spieler ganz ohne Pause oder mit weniger als einem Zehntel davon (A).
    .why =
        Der Dämpfer muss gefunden, aufgesetzt und angedrückt werden, während die andere Hand den Bogen hält. Wer es nicht schafft,
        spielt ohne ihn weiter oder lässt Noten aus.
    .proposes =
        Die Spieler jedes Pults nacheinander wechseln lassen (Sache der Spieler); eine längere Pause geben (Sache der
        Schreibenden).
    .limits =
        Dämpfer, die am Instrument bleiben und gleiten: sie brauchen etwa eine halbe Sekunde, und wer für sie schreibt, stellt
        das Profil so ein. Ob das Wort früher oder später in der Pause steht, ist gleich: die ganze Pause zählt.

nested-slurs = Ein Bindebogen im anderen
    .finds =
        Ein durchgezogener Bogen, der einen oder mehrere kürzere durchgezogene Bögen seiner Stimme enthält, jeden von einer
        ihrer Noten zu einer anderen. Bögen von Vorschlagsnoten sind Verzierungen und zählen nicht, ebenso wenig ein Bogen über
        zwei Noten, der mit einem Haltebogen das Ende des äußeren teilt, und einer, der zwei Noten einer Tonhöhe verbindet: er ist
        als Haltebogen gemeint.
    .why =
        Eine der beiden Linien muss ein Phrasierungsbogen sein, aber sie sehen gleich aus: erst beim Probieren zeigt sich, welche
        der Strich ist, und in einer Gruppe probieren mehrere.
    .proposes =
        Aus dem äußeren einen gestrichelten Bogen machen, einen Phrasierungsbogen (Sache der Schreibenden).
    .limits =
        Ob die innere Linie der Fehler ist. Der Strich wird nach den inneren Bindebögen berechnet.

no-tempo = Kein Tempo
    .finds =
        Eine Partitur, deren erste Note kein Tempo hat: weder Metronomzahl noch Tempowort steht bei ihr oder davor (B). Hat nur
        die Wiedergabe ein Tempo, das niemand lesen kann, C.
    .why =
        Wie lange ein Strich reicht, ob eine Note springt, ob ein Absetzen in eine Pause passt: alles, was der Bogen tut, hängt am
        Tempo. Jede Zahl dieser Durchsicht, die daran hängt, ist dann eine Annahme.
    .proposes =
        Ein Tempo schreiben (Sache der Schreibenden); nur sie wissen, welches.
    .limits =
        Das Tempo. Wo keines geschrieben ist, steht das angenommene neben jeder Zahl, die darauf beruht.

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
    .proposes =
        Die beiden anbinden (Sache der Spieler): nichts zu schreiben, denn zwei gleiche Zeichen verlangen ein Anbinden so gut
        wie ein Absetzen. Abwechseln (Sache der Spieler, wo eine Reihe gedruckt ist).
    .limits =
        Wie schnell dieser Spieler absetzt: 0,15 s auf der Stelle und 0,3 s mehr für einen ganzen Bogen sind angenommen. Ein
        Absetzen, das nichts Gedrucktes verlangt, wird nicht gemeldet, auch wo die beste Einrichtung eines nimmt: in neun
        Quartetten des neunzehnten und zwanzigsten Jahrhunderts gab es 18 solche Stellen auf 100 Takte, und ein Spieler findet
        einen anderen Weg. Auch Akzente in einer Reihe gelten nicht als Abstriche in einer Reihe: man wechselt ab, wenn
        Zeichen nichts anderes sagen.

note-outlasts-bow = Eine Note dauert länger als ein Bogen
    .finds =
        Eine Note samt Haltebögen, die 1,2 mal so lang wie der langsamste Bogen ihrer Dynamik dauert oder länger: B beim
        einzelnen Spieler (C bis 1,3 Bögen, wo sie nur gedehnt ist), D bei einer Gruppe. Orgelpunkte zählen nicht: eine Note
        über zwei Takte oder mehr, während andere Stimmen sich bewegen. Auch nicht eine nur gedehnte Note unter einer Fermate,
        die man hält, solange man will, oder mit einem Diminuendo um eine Stufe oder mehr, bei dem die Hand Bogen spart.
    .why =
        Ein einzelner Spieler muss in der Note wechseln, und man kann hören, wo. Eine Gruppe verbirgt den Wechsel, wenn jeder zu
        einer anderen Zeit wechselt; schreiben muss man es nicht, aber wissen sollte man es.
    .proposes =
        In einer Gruppe: die Spieler wechseln zu verschiedenen Zeiten (Sache der Spieler). Das schreibt nichts: sie tun es
        ungefragt, und ein Wort gälte, bis ein anderes es beendet. Für einen Spieler: die Note dort brechen, wo ein Wechsel am
        wenigsten zu hören ist (Sache der Schreibenden).
    .limits =
        Ob eine Fermate länger oder kürzer als das Doppelte der Note gehalten wird, und ob ein Solist den Wechsel hören lassen
        will.

on-or-off-string = Auf der Saite oder abseits?
    .finds =
        Die erste Stelle eines Stücks, wo acht oder mehr gleichmäßige Einzelstriche mit Punkten so schnell und nicht lauter als
        forte kommen, dass man sie springen lassen oder kurz auf der Saite halten kann, und kein Wort in einer der
        Streicherstimmen sagt, was (C). Einmal für das ganze Stück gemeldet.
    .why =
        Es ist die erste Frage der ersten Probe. Beides klingt anders, liegt in anderen Teilen des Bogens, und eine Gruppe kann
        nicht beides.
    .proposes =
        Spicc., oder auf der Saite, über die erste solche Stelle schreiben, in jeder Stimme, die sie dort hat (Sache der
        Schreibenden). Die Spieler folgen von da an.
    .limits =
        Was sich in einem Stil von selbst versteht, und was der Konzertmeister entscheiden wird. Ein Solist entscheidet allein
        und wird nicht gefragt. Sobald irgendein Wort darüber im Stück steht, gilt, dass daran gedacht wurde.

out-of-range = Eine Note außerhalb des Instruments
    .finds =
        Noten unter der tiefsten Saite (A); unter der E-Saite des Basses, wo eine fünfte Saite oder eine Verlängerung nötig ist
        (C); über dem Ende des Griffbretts (B).
    .why =
        Sie lässt sich nicht spielen, oder nur von einem Teil der Gruppe, und man wird fragen, was stattdessen zu spielen ist.
    .proposes =
        Nichts: eine andere Note oder ein anderes Instrument zu wählen ist Sache der Schreibenden.
    .limits =
        Eine für das Stück tiefer gestimmte Saite, und wie hoch ein Solist geht. Flageoletts bleiben unbeachtet.

page-turn-too-quick = Umblättern ohne Pause
    .finds =
        In einer einzelnen Stimme (einer Datei mit nur einer Stimme) mit festen Seiten: eine Seite, die umzublättern ist, endet,
        und die nächste beginnt, mit weniger Pause, als ein Spieler zum Blättern braucht (3 s). Geblättert werden die Seiten 1, 3,
        5 …, nach den Nummern der Datei, wo sie welche hat; die anderen liegen offen neben der nächsten. Eine leere Saite lässt die
        linke Hand frei und zählt halb; zwischen Sätzen hält man inne, wenn nicht „attacca“ dasteht.
    .why =
        Einer je Pult hört auf, um zu blättern, und die halbe Gruppe schweigt; ein einzelner Spieler hält ganz an.
    .proposes =
        Die Seite bei einer Pause enden lassen (Sache der Schreibenden): `arcata parts` sucht die besten Stellen.
    .limits =
        Wie die Seiten gebunden sind: ein Titelblatt davor kehrt alles um.

parallel-bowed-apart = Derselbe Takt anders gebunden
    .finds =
        Ein Takt, dessen Noten genau wiederkommen, dreimal oder öfter mit denselben Bögen und einmal mit anderen, in einer Stimme:
        gemeldet wird der abweichende.
    .why =
        Was wiederkommt, soll gleich wiederkommen. Ein einziger anderer Bogen ist meist ein Versehen der Abschrift, und wer den
        Takt gelernt hat, spielt ihn wie zuvor oder stolpert.
    .proposes =
        Dem Takt die Bindebögen der anderen geben (Sache der Schreibenden).
    .limits =
        Ob die Änderung gemeint ist: das letzte Mal vor etwas Neuem ist oft anders gebunden und bleibt unbeachtet.

part-differs-from-score = Eine Stimme, die von der Partitur abweicht
    .finds =
        Nur wo die Stimmen neben der Partitur gegeben sind (`arcata review SCORE --beside PART...`): Takte, in denen eine Stimme
        andere Noten, Pausen oder Haltebögen hat als die Partitur (A), oder andere Bindebögen, Strichzeichen, Zeichen, Dynamik oder
        Worte (B), jede Art einmal je Stimme mit ihren Stellen; eine andere Zahl von Takten, und eine Stimme, die die Partitur nicht
        hat (A).
    .why =
        Wer dirigiert, sagt, was in der Partitur steht, und der Spieler hat etwas anderes vor sich. Jede solche Stelle hält eine
        Probe auf, und niemand im Raum sieht beides.
    .proposes =
        Nichts: welche der beiden richtig ist, kann nur sagen, wer schreibt.
    .limits =
        Stichnoten, Fingersätze und Seitenwechsel gehören zur Stimme und werden nicht angesehen. Takte werden der Reihe nach
        genommen: wo in der Mitte einer fehlt, ist alles Folgende verschieden, und zuerst wird die Zahl der Takte gesagt. Im
        Beispiel steht ein System namens „beside“ für die Datei der Stimme.

phrase-mark-as-slur = Ein Phrasierungsbogen, gezeichnet wie ein Bindebogen
    .finds =
        Ein durchgezogener Bogen, den mehrere Anzeichen als Phrasierungsbogen ausweisen: er dauert weit länger als der langsamste
        Strich, enthält andere Bögen, Pausen oder Strichzeichen (je ein starkes Anzeichen), wiederholt eine Tonhöhe ohne Punkte
        oder umfasst genau zwei, vier oder acht Takte (je ein schwaches). Zwei starke genügen, oder ein starkes und zwei schwache;
        auch ein Bläser, der die Linie mit demselben Bogen verdoppelt, wird genannt.
    .why =
        Ein Bindebogen sagt Streichern „ein Strich“. Eine Phrasenlinie, die so aussieht, wird so gestrichen oder besprochen; und
        jedes Urteil über den Bogen, das darauf beruht, ist falsch.
    .proposes =
        Daraus einen gestrichelten Bogen machen, einen Phrasierungsbogen, der den Strich frei lässt (Sache der Schreibenden).
    .limits =
        Was gemeint war: die Anzeichen werden gewogen, nicht bewiesen. Wer es weiß, sagt es in der Datei neben der Partitur
        (`arcata aside` mit `--slur phrase` oder `--slur bow`), und der Strich wird danach berechnet.

pizz-change-too-quick = Vom Bogen zum Finger und zurück zu schnell
    .finds =
        pizz. oder arco mit so wenig Zeit zwischen der letzten Note der einen und der ersten der anderen Art, dass die Hand den
        Bogen nicht umgreifen kann (weniger als zwei Fünftel dessen, was das Profil ihr gibt: 0,5 s zum Pizzicato, 1 s zurück).
    .why =
        Man wird die letzte Note fallen lassen oder mit der ersten zu spät kommen. Eine Gruppe hilft sich, indem die Hälfte früher
        aufhört, und das muss jemand anordnen.
    .proposes =
        Die Pulte zu verschiedenen Zeiten wechseln lassen (Sache der Spieler); dem Wechsel eine Pause geben, oder die letzte
        gezupfte Note der linken Hand (Sache der Schreibenden).
    .limits =
        Ob der Bogen die ganze Zeit in der Hand ist, wie viele ihn für eine einzelne gezupfte Note halten: nach einer oder
        zwei gezupften Noten kommt der Bogen so schnell zurück, wie der Finger geht, sie bleiben unbeachtet.

pizz-too-fast = Zu schnell gezupft
    .finds =
        Sechs oder mehr gezupfte Noten hintereinander, schneller, als eine Gruppe zupft: 6 in der Sekunde auf Geige und Bratsche,
        5 auf dem Cello, 4 auf dem Kontrabass.
    .why =
        Der Finger ermüdet, und die Noten fallen auseinander; über seiner Geschwindigkeit vereinfacht jeder die Stelle selbst.
    .proposes =
        Die Noten unter den Spielern eines Pults aufteilen (Sache der Schreibenden).
    .limits =
        Zwei Finger abwechselnd, nach Art der Gitarre, sind schneller; ebenso ein einzelner Spieler, der es gewohnt ist.

reentry-without-dynamic = Ein Einsatz nach langer Pause ohne Dynamik
    .finds =
        Eine Note einer Streicherstimme nach acht oder mehr ganzen Takten Pause in ihrem Satz, ohne Dynamik, Gabel
        oder sforzato auf ihr, kurz nach ihr oder im letzten Takt der Pause.
    .why =
        Die Dynamik des letzten Einsatzes steht vielleicht eine Seite weiter vorn, und die Musik ist ohne sie
        weitergegangen. Wer so lange gezählt hat, nimmt die Lautstärke von dem, was er hört, und jeder hört etwas
        anderes; eine Stimme wiederholt sie.
    .proposes =
        Die Dynamik schreiben, die die anderen Stimmen in dem Augenblick haben, wenn sie übereinstimmen (Sache der
        Schreibenden).
    .limits =
        Ob Stichnoten sagen, wie laut es ist. Wie viele Takte zählen, sagt der Spieler. Erste Einsätze gehören zu
        `entry-without-dynamic`.

repeat-comes-back-reversed = Eine Wiederholung kommt auf dem anderen Strich zurück
    .finds =
        Ein wiederholter Abschnitt, oder einer, zu dem da capo oder dal segno zurückführt, dessen Ende den Spieler, wie es kommt,
        auf dem anderen Strich lässt als am Anfang und vor der Rückkehr keine Zeit zum Neuansetzen gibt (30 ms zu wenig oder
        mehr). Jede Klammer, die zurückführt, wird für sich angesehen; steht auf ihrer letzten Note eine Fermate oder ein
        Atemzeichen, ist Zeit genug.
    .why =
        Derselbe Druck muss beiden Durchgängen dienen. Entweder spielt man den ganzen zweiten Durchgang mit umgekehrtem Strich,
        gegen jedes Zeichen der Stimme, oder jedes Pult erfindet an der Naht seinen eigenen.
    .proposes =
        Die letzte Note vor dem Wiederholungszeichen an die davor anbinden, mit einem Zeichen auf beiden (Sache der Spieler),
        oder den ersten Strich des Abschnitts bezeichnen, damit alle gleich neu beginnen (Sache der Spieler). Das zweite
        bleibt dem Bleistift: es sagt den Spielern, was zu tun ist, und die Zeit fehlt weiterhin.
    .limits =
        Ob die Wiederholung gespielt wird.

rushed-return = Eine kurze Note muss einen langen Bogen zurückholen
    .finds =
        Eine kurze einzelne Note, die im besten Plan so viel schneller gestrichen wird, als ihre Dynamik es will, dass sie um 6 dB
        oder mehr heraussticht, weil der Strich davor oder danach lang ist.
    .why =
        Es ist der ungewollte Akzent in Partituren von Studierenden: ein leiser Auftakt zwischen zwei langen Bögen bellt. Niemand
        will ihn, und keine dynamische Bezeichnung nimmt ihn weg.
    .proposes =
        Die kurze Note an den Strich davor anbinden, mit einem Zeichen auf beiden (Sache der Spieler); den langen Bindebogen
        teilen, damit die kurze Note nicht alles zurückholen muss (Sache der Schreibenden).
    .limits =
        Wie viel der Spieler zurückgewinnt, indem er vom Steg weggeht. Weg, der nur vom Raster der Rechnung kommen kann, wird
        der Note nicht angelastet. Mit einem Punkt, im Forte oder lauter, ist die Note von der Saite geworfen und soll bellen:
        sie bleibt unbeachtet.

silent-downbeat = Ein Taktanfang, den keine Streichergruppe beginnt
    .finds =
        Ein Takt, in dem etwas Neues beginnt (Tempo, Taktart, Studierzeichen oder der Einsatz mehrerer Bläser nach einer Pause)
        und keine Streichergruppe auf der Eins einen Strich beginnt, obwohl mindestens eine darüber hinweg hält. Bei neuem Tempo
        B, sonst C. Auch vier oder mehr Takte hintereinander, deren Eins niemand beginnt (C); ein Takt, in dem eine Gruppe, die
        auf der Eins pausiert, auf einem anderen Schlag einsetzt, gibt den Puls und unterbricht die Reihe. Ebenso ein Strich,
        der in jedem Takt oder in jedem zweiten auf dieselbe Stelle fällt: eine Synkope, die weitergeht, hört man als solche.
        Ein Bogen, der weniger als einen Schlag vor der Eins beginnt und auf ihr endet, führt hin. Eine Metronomzahl, die nur
        einen Takt lang gilt, ist ein Breiterwerden in Zahlen und kein neues Tempo; auch eine nicht, zu der ein accelerando oder
        ritardando geführt hat: sie sagt, wie weit man gekommen ist.
    .why =
        Streicher zeigen einander den Schlag, indem sie darauf wechseln. Ist jede Gruppe über den Taktstrich gebunden, so gehört
        das neue Tempo niemandem, und das Ensemble rutscht bis zum nächsten Strich.
    .proposes =
        Eine Gruppe auf der Eins den Bogen wechseln lassen: dort den Binde- oder Haltebogen in der Stimme brechen, die es am
        wenigsten kostet, einen Bindebogen vor einem Haltebogen, eine Mittelstimme vor einer Außenstimme (Sache der
        Schreibenden).
    .limits =
        Ob die Wirkung gewollt ist (ein Tempo, das sich einschleicht, ein Höhepunkt ohne Schlag), und was ein Dirigent geben
        wird. Harmonie wird nicht gelesen.

slur-covers-beat = Ein Bindebogen über einem Schlag, der gesprochen sein will
    .finds =
        Ein Binde- oder Haltebogen über einen Taktstrich, an dem ein neues Tempo oder eine neue Taktart beginnt, während eine
        andere Stimme dort einen Strich beginnt; und ein Sforzato oder aufrechter Akzent, auf schwerem Schlag, unter einem
        weitergehenden Bogen: beides nicht auf der ersten Note eines Strichs.
    .why =
        Das Stärkste, was ein Bogen sagen kann, ist sein Anfang. Wo der Bogen weitergeht, bleibt das neue Tempo oder der Akzent
        ein Impuls mitten im Strich, schwächer, als die anderen beginnen.
    .proposes =
        Den Bindebogen dort teilen (Sache der Schreibenden); nur in Worten, wo das den Akzent auf einen Aufstrich bringt, oder
        einen anderen Ärger in die Takte ringsum: dann sind auch die Bindebögen davor neu zu bedenken.
    .limits =
        Ob der Impuls im Strich die gewollte Wirkung ist: wo dieselbe Stimme es an mehreren Stellen tut, wird es einmal
        gesagt, mit ihrer Zahl. Ein Bindebogen, der auf der Note endet, führt in sie, wie ein Lauf in sein Ziel, und bleibt
        unbeachtet. Ebenso Bindebögen über die Schläge einer langsamen Synkope, Noten mit einem Hauch Stille davor, und
        Verzierungen.

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
    .proposes =
        Das Ende des Bindebogens zur letzten gehaltenen Note führen, oder seinen Anfang zur ersten (Sache der Schreibenden).
        Wo zwei Bindebögen sich treffen, einer über beide, wenn ein Strich gemeint ist (Sache der Schreibenden); ein
        Strichzeichen auf der gehaltenen Note sagt zwei. In einer Kette solcher Bindebögen wird es nur in Worten gesagt.
    .limits =
        Für den Strich hängt nichts daran: der Klang ist derselbe. Wo zwei Bindebögen sich treffen, weiß sie nicht, was
        gemeint ist.

slur-outlasts-bow = Ein Bindebogen dauert länger als ein Bogen
    .finds =
        Noten unter einem Bindebogen, die zusammen länger dauern als der langsamste Bogen ihrer Dynamik: mindestens 1,1 mal,
        denn die langsamsten Bögen sind runde Zahlen. Bis 1,3 Bögen ist er gedehnt (C; nichts, wo er um eine dynamische Stufe
        oder mehr abnimmt, denn dann spart die Hand Bogen), bis 2,5 wird irgendwo gewechselt (B), darüber kann er nicht als ein
        Strich gemeint sein (A).
    .why =
        Der Ton wird dünn, oder jeder wechselt, wo ihm der Arm ausgeht, und die Gruppe bespricht es in der Probe. Ein Bindebogen
        sagt Streichern „ein Strich“: wer eine Phrase meint, sage es auf andere Art.
    .proposes =
        Den Bindebogen auf den stärksten Schlägen teilen, die jedes Stück in einem Bogen lassen (Sache der Schreibenden). In
        einer Gruppe auch die Spieler zu verschiedenen Zeiten wechseln lassen (Sache der Spieler): das schreibt nichts, denn
        sie tun es ungefragt, und ein Wort gälte, bis ein anderes es beendet.
    .limits =
        Saal, Bogen und Spieler; ob eine Gruppe ihre Wechsel verbergen wird. Die Zeit kommt vom Tempo der Partitur: ist keines
        geschrieben, steht das angenommene neben der Zahl.

slur-over-change = Ein Wechsel der Spielweise unter einem Bindebogen
    .finds =
        pizz., arco, con sordino oder senza sordino nach der ersten Note eines Bindebogens und nicht nach seiner letzten.
    .why =
        Ein Bindebogen ist ein Strich. Man kann den Bogen nicht zum Pizzicato weglegen oder den Dämpfer aufsetzen, ohne die Saite
        zu verlassen; Bogen oder Wort steht also falsch, und man muss raten, welches.
    .proposes =
        Den Bindebogen vor pizz. enden lassen, ihn bei arco beginnen, ihn an einem Dämpferwechsel teilen (Sache der
        Schreibenden).
    .limits =
        Ob das Wort nur zu früh steht. Pizzicato der linken Hand unter einem Bindebogen ist kein solcher Wechsel und bleibt
        unbeachtet.

slur-over-rest = Eine Pause unter einem Bindebogen
    .finds =
        Eine Pause der eigenen Stimme zwischen der ersten und der letzten Note eines Bindebogens.
    .why =
        Ein Bindebogen ist ein Strich, eine Pause nimmt den Bogen von der Saite oder hält ihn an. Ob man abhebt und in derselben
        Richtung weiterspielt, auf der Saite anhält oder neu streicht, muss man raten; als Phrasierungsbogen sagt die Linie über
        den Strich gar nichts.
    .proposes =
        Den Bindebogen vor der Pause enden lassen und danach einen anderen beginnen (Sache der Schreibenden); daraus einen
        gestrichelten Bogen machen, einen Phrasierungsbogen (Sache der Schreibenden).
    .limits =
        Ob ein Halt innerhalb eines Strichs gewollt ist: neben einer kurzen Pause (nicht länger als die längere ihrer
        Nachbarinnen) sagt es ein Punkt, ein Keil oder ein Tenutostrich, und solche angebundenen Striche bleiben unbeachtet.

slur-skips-string = Eine übersprungene Saite in einem Bindebogen
    .finds =
        Zwei benachbarte Noten unter einem Bogen, die kein Fingersatz auf dieselbe Saite oder auf Nachbarsaiten bringt, wobei die
        erste zu kurz ist, um ungehört über eine Saite zu kommen (B). Der ganze Bogen wird mit Fingersatz versehen: Lagen, Wechsel,
        für die Zeit ist, leere Saiten.
    .why =
        Unterwegs streift der Bogen die Saite dazwischen, oder er muss mitten im Bindebogen gehoben werden.
    .proposes =
        Den Bindebogen zwischen den beiden Noten teilen, wo es einmal vorkommt; sonst nur binden, was auf benachbarten Saiten
        liegt (Sache der Schreibenden).
    .limits =
        Welchen Fingersatz der Spieler nimmt. Solche Sprünge sind möglich: von 490 in dreißig gespielten Stücken war ein
        Fünftel auf einem Strich, deshalb bleiben langsame unbeachtet.

slurred-stops = Gebundene Doppelgriffe, die sich nicht verbinden lassen
    .finds =
        Zwei Doppelgriffe hintereinander unter einem Bogen, wo kein rechtzeitig erreichbarer Fingersatz den Bogen auf einer
        gemeinsamen Saite lässt (B).
    .why =
        Der Bogen müsste zwei Saiten verlassen und zwei andere nehmen: man kann ihn nur heben oder über eine Saite wischen, die
        nicht gemeint ist.
    .proposes =
        Den Bindebogen zwischen den beiden teilen (Sache der Schreibenden).
    .limits =
        Welchen Fingersatz der Spieler nimmt; sie sucht einen, der sie verbindet, und findet keinen.

slurred-tremolo = Ein gebundenes Tremolo, das man zweifach lesen kann
    .finds =
        Tremolo mit einem oder zwei Balken unter einem Bindebogen: abgekürzte Tonwiederholungen, mindestens zwei, oder
        zwei Noten im Wechsel, deren Bogen über ihre Gruppe hinausgeht. Ein Befund je Stimme.
    .why =
        Ein oder zwei Balken sind gezählte Noten. Ein Bogen darüber kann heißen, dass alle auf einen Strich kommen,
        oder nur, dass sie eine Phrase sind und jede ihren Strich hat; in einer Gruppe wird beides gespielt und sieht
        und klingt wie ein Fehler.
    .proposes =
        Die erste Gruppe mit ihren Bindebögen ausschreiben, und danach simile (Sache der Schreibenden). Die Bindebögen
        entfernen, wo jede Note ihren Strich haben soll (Sache der Schreibenden). Beides von der Hand der Schreibenden.
    .limits =
        Welches gemeint ist. Drei Balken und mehr sind ein Flirren, in dem ein Bindebogen nur die Linie verbindet, und ein
        Bindebogen über zwei abwechselnden Noten ist das Zeichen dafür, dass beide auf einen Strich gehen: sie bleiben
        unbeachtet, und ebenso, was ein Wort über die Strichart erklärt.

soft-entry-at-frog = Ein leiser Einsatz, wo der Bogen schwer ist
    .finds =
        Ein Einsatz aus der Stille, pianissimo oder leiser, mit gedrucktem Strich, der im besten Strich der Stelle nahe dem
        Frosch beginnt (D).
    .why =
        Am Frosch steht das ganze Gewicht von Bogen und Arm auf der Saite, und ein Pianissimo beginnt mit einem Stoß. Leise
        Einsätze legt man in die obere Hälfte, wo die Stange sich selbst trägt.
    .proposes =
        Der billigste Weg, den Einsatz auf den anderen Strich zu nehmen (Sache der Spieler), mit seinem Preis.
    .limits =
        Dass ein erfahrener Spieler den Bogen überall lautlos aufsetzt. Einsätze mit Akzent bleiben unbeachtet, und solche
        ohne Strichzeichen: aus der Stille wählen Spieler den Strich von selbst und beginnen im Aufstrich.

stands-contradict = Pulte einer Gruppe mit entgegengesetzten Zeichen
    .finds =
        Zwei Stimmen einer Partie oder zwei Stimmen einer Gruppe (erstes und zweites Pult, a und b), die denselben Rhythmus
        spielen und auf derselben Note entgegengesetzte Strichzeichen tragen.
    .why =
        Die Bögen der Gruppe kreuzen sich in der Luft, und jeder sucht den Fehler in seiner eigenen Stimme.
    .proposes =
        Das Zeichen in der unteren Stimme entfernen (Sache der Schreibenden).
    .limits =
        Ob das Spiegelbild wegen seines gleichmäßigen Klangs gewollt ist: dann ist es durchweg bezeichnet, und wo mehr als die
        Hälfte der Zeichen gegenläufig ist, wird nichts gesagt.

state-never-ends = Eine Anweisung (Dämpfer, sul pont.), die nie aufgehoben oder zweimal gegeben wird
    .finds =
        con sordino, sul ponticello, sul tasto oder col legno noch einmal, obwohl es gilt, mit Musik dazwischen (C; B
        beim Dämpfer); senza sordino noch einmal, nachdem der Dämpfer schon ab ist (B); unis. über zwei Stimmen mit
        verschiedenen Noten (B); sul ponticello oder sul tasto, das bis zum Ende des Satzes nicht zurückgenommen wird,
        obwohl die Musik nach einem neuen Tempo, nach pizz. oder sechzehn gespielte Takte lang weitergeht (C).
    .why =
        Jede Spielweise muss jemand zurücknehmen. Wo sie zweimal dasteht, fehlt dazwischen ein Wort, und wer dem ersten glaubt,
        spielt anders als wer dem zweiten glaubt.
    .proposes =
        Das zweite Wort entfernen (Sache der Schreibenden). Ord. schreiben, wo eine Stelle auf der Saite endet, oder sempre
        (Sache der Schreibenden, von ihrer Hand).
    .limits =
        Welches der beiden Worte der Fehler ist. Ein Wort in Klammern erinnert und bleibt unbeachtet. Jeder Satz beginnt
        gewöhnlich: ein Dämpfer, der bis zum Ende eines Satzes bleibt, braucht kein Wort und wird nicht gemeldet; auch nicht
        eine Stelle auf der Saite für eine letzte Passage. Teilungen werden oft an jeder Stelle neu gesagt und bleiben
        unbeachtet.

stop-held-too-long = Drei oder vier Saiten sollen weiterklingen
    .finds =
        Ein Akkord über drei oder vier Saiten, länger geschrieben, als die Saiten zusammen klingen können, unter forte, wo der
        Bogen keine drei Saiten niederdrücken kann (B); ohne Zeichen, dass er zu brechen ist.
    .why =
        Ein Bogen liegt auf zwei Saiten. Drei klingen einen Augenblick zusammen, und nur laut; dann wählt jeder, welche zwei er
        hält.
    .proposes =
        Schreiben, welche zwei Saiten gehalten werden, die tieferen als Vorschlagsnoten oder den Akkord gebrochen (Sache der
        Schreibenden): nur in Worten, da es die Noten ändert.
    .limits =
        Dass der Akkord gebrochen gemeint ist und alle es wissen, wie in alter Musik: dort die Regel beiseitelegen.

stop-unplayable = Noten, die keine Hand zusammen greift
    .finds =
        Zwei bis vier Noten an einem Hals, oder zweier Stimmen für einen Spieler, die nicht in einer Hand auf Nachbarsaiten passen:
        in einer Solostimme (A); in einer Gruppe, die ungefragt teilen kann (B). Auch fünf Noten und mehr.
    .why =
        Man muss eine Note weglassen oder den Akkord brechen und entscheidet allein; eine Gruppe wird fragen, wer was spielt.
    .proposes =
        In einer Gruppe div. schreiben (Sache der Schreibenden). In einer Solostimme nichts: welche Note entfallen kann, sagt,
        wer schreibt.
    .limits =
        Die Größe der Hand, die eine Einstellung des Profils ist, und eine anders gestimmte Saite. Flageoletts bleiben
        unbeachtet, und Akkorde mit ihnen. Dass ein Akkord greifbar ist, lässt ihn noch nicht klingen.

stroke-out-of-speed = Eine genannte Strichart in einem Tempo, das sie nicht hat
    .finds =
        Vier oder mehr gleichmäßige Einzelstriche unter einem Wort, das sagt, wie gestrichen wird, deutlich schneller oder
        langsamer, als diese Strichart kann (B): Martelé zu schnell, als dass der Bogen anhalten und greifen könnte; Spiccato oder
        abseits der Saite, schneller als irgendein Bogen springt; détaché oder auf der Saite, schneller als das Instrument
        anspricht; Sautillé zu langsam, als dass der Bogen von selbst spränge.
    .why =
        Man muss das Wort oder das Tempo aufgeben, und eine Gruppe gibt beide auf.
    .proposes =
        Für ein zu langsames Sautillé stattdessen spiccato schreiben; für ein zu schnelles Martelé das Wort entfernen (Sache
        der Schreibenden). Für das, was kein Bogen tut, weniger Striche: Bindebögen zu zweien (Sache der Schreibenden).
    .limits =
        Wo zwischen Spiccato und Sautillé ein Bogen von selbst zu springen beginnt: Spiccato sagt man für beides, und so gilt
        es. Langsames Spiccato ist ein abgesetzter Strich, und langsames Détaché ist breit; keines von beiden wird gemeldet.
        Ein Wort gilt bis zu einem anderen über die Strichart, arco, pizz. oder ord. Ein Zehntel über der Grenze ist erlaubt.

swell-against-bow = Ein Schweller gegen den Strich
    .finds =
        Ein langer Strich über den größten Teil des Bogens, der im Abstrich wächst oder im Aufstrich abnimmt, um eine dynamische
        Stufe oder mehr, im besten Plan. Der Schweller gehört dem Strich: einen, der früher beginnt oder weitergeht, machen
        mehrere Striche, und einen, dem im selben Strich der umgekehrte antwortet, macht die Hand.
    .why =
        Das Gewicht des Bogens auf der Saite nimmt vom Frosch zur Spitze ab: sich selbst überlassen verklingt ein Abstrich, und ein
        Aufstrich wächst. Dagegen muss die Hand drücken, und einem langen Schweller geht der Bogen oder der Ton aus.
    .proposes =
        Den Strich in der anderen Richtung nehmen durch Anfang, Anbinden oder Neuansetzen (Sache der Spieler), mit seinem
        Preis, in der Datei als Strichzeichen; im Schweller den Bogen wechseln (Sache der Schreibenden); oder die eine
        Änderung der Bindebögen davor, die den anderen Strich von selbst billiger bringt (Sache der Schreibenden).
    .limits =
        Kontaktstelle und Druck: gute Spieler machen jeden Schweller auf jedem Strich, bis zu einem Punkt. Kurze Schweller
        bleiben deshalb unbeachtet.

thrown-count = Zu viel für einen Wurf
    .finds =
        Eine Gruppe von Noten unter einem Bogen, die nach dem Wort geworfen werden soll (gettato, jeté, ricochet) und mehr Noten
        hat, als ein Wurf fasst, oder langsamer oder schneller kommt, als ein geworfener Bogen abprallt (B).
    .why =
        Man lässt den Bogen einmal fallen, und er zählt von selbst. Nach wenigen Sprüngen liegt er auf der Saite; langsamer, als er
        springt, muss jede Note gesetzt werden, und das ist eine andere Strichart und klingt so.
    .proposes =
        Eine zu lange Gruppe teilen (Sache der Schreibenden). Eine andere Strichart verlangen, wo die Geschwindigkeit nicht
        stimmt (Sache der Schreibenden): nur wer schreibt, weiß, welcher Klang gemeint war.
    .limits =
        Was ein Solist kann: in Virtuosenstücken werden Gruppen von zehn und mehr geworfen. Eine Gruppe ohne Punkte unter
        ihrem Bindebogen wird nicht angesehen; ein Wort gilt bis zu einem anderen über die Strichart, arco, pizz. oder ord.

tie-or-slur = Bindebogen, wo ein Haltebogen gemeint ist, oder umgekehrt
    .finds =
        Ein Haltebogen zu einer anderen Tonhöhe (A); ein Bindebogen über zwei benachbarte Noten einer Höhe und sonst nichts, ohne
        Punkte, Striche oder Akzente (B, alle einer Stimme zusammen: viele meinen damit einen Puls und sagen es nirgends).
    .why =
        Auf der Seite sehen beide Linien gleich aus. Ein Bindebogen auf einer Höhe ohne Punkte kann eine gehaltene Note sein oder
        zwei, in einem Strich gepulst; ein Haltebogen zu einer anderen Höhe ist gewiss ein Bindebogen. Jeder entscheidet allein,
        und die Gruppe ist nicht zusammen.
    .proposes =
        Für eine Tonhöhe: die Noten mit einem Haltebogen verbinden, oder Tenutostriche auf beide setzen für einen Puls in
        einem Strich (Sache der Schreibenden). Für zwei Tonhöhen: einen Bindebogen schreiben (Sache der Schreibenden).
    .limits =
        Welches von beiden gemeint war. Bindebögen über einer Tonhöhe, über denen ein Wechsel der Saite oder des Fingers
        steht, meinen diesen Wechsel und bleiben unbeachtet; ebenso Noten mit Tremolo oder Verzierung, und Vorschlagsnoten.
        Ebenso zwei ungleiche Noten, die einen Schlag oder einen einfachen Wert von seinem Anfang an füllen: eine gehaltene
        Note schriebe man als eine, und die beiden sind ein Rhythmus.

winds-phrase-apart = Bläser, die anders phrasieren als die Streicher, die sie verdoppeln
    .finds =
        Eine Stimme, die nicht gestrichen wird, und eine Streicherstimme auf einer Linie, im Einklang oder in Oktaven,
        vier Takte oder länger, gleich gebunden bis auf einen Bogen (C) oder wenige (D): einmal je Stimmenpaar
        gemeldet, und einmal, wo mehrere Paare an einer Stelle abweichen.
    .why =
        Der Bogen eines Bläsers gilt Zunge und Atem, der eines Streichers dem Strich; sie müssen nicht übereinstimmen
        und dürfen es oft nicht. Wo fast alle es tun, ist mit beiden eine Phrase gemeint, und ein einzelner anderer
        Bogen ist meist ein Versehen.
    .proposes =
        Nichts: es wird gesagt, damit jemand hinsieht.
    .limits =
        Welche von beiden gemeint ist. Wo ein Fünftel der Bindebögen oder mehr verschieden ist, atmen und streichen die beiden
        Stimmen jede auf ihre Weise, und nichts wird gesagt; auch nicht, wo die Streicher zupfen oder ein Tremolo spielen,
        oder eine der beiden Stimmen gar nicht gebunden ist.
