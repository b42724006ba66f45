# Ciò che la revisione propone (offer-), le riparazioni (repair-) e che cosa se ne guadagna (gain-).

offer-and-further = { $offer } Gli altri punti si cambiano allo stesso modo.
offer-repair = { $repair }.
offer-repair-and-gain = { $repair }: { $gain }.
offer-repair-for = { $repair }: { $what ->
    [accent] l'accento
    [bar] la battuta
    [ending] la fine
    [entry] l'attacco
   *[swell] la forcella
} viene allora con { a-bow }.

repair-split = Dividere la legatura { $at-in }
repair-split-tie = Cambiare arco sulla nota tenuta { $at-in }
repair-end-earlier = Finire la legatura una nota prima, avanti { $at }
repair-begin-later = Cominciare la legatura una nota dopo, { $at-in }
repair-join-notes = Legare la nota { $at-in } a quella prima
repair-join-slurs = Unire le legature che si incontrano { $at-in }
repair-end-later = Finire la legatura una nota dopo, { $at-in }
repair-begin-earlier = Cominciare una nota prima la legatura di { $at }
repair-hand-over-later = Far finire la legatura una nota dopo e cominciare la seguente { $at-in }
repair-hand-over-earlier = Far finire la legatura una nota prima e cominciare la seguente { $at-in }
repair-hook = Agganciare la nota { $at-in } a quella prima

gain-bars-begin-down = { $count ->
    [one] battuta { $bars } comincia allora in giù
   *[other] le battute { $bars } cominciano allora in giù
}
gain-stretch-begins-down = { $count } battute da { $first } a { $last } cominciano allora in giù
gain-more-time = arcate di { $short } invece di { $long }
gain-no-hook = { $at-in } non serve agganciare
gain-no-retake = { $at-in } non serve riprendere l'arco
stroke-shown = { $at }{ $hooked ->
    [hooked] { " " }agganciata
   *[plain] { "" }
} { bow-way }, { $lasts }, { $used } % dell'arco

# Ciò che può il braccio

offer-start = Cominciare con { a-bow } { $at-in }.
offer-hook = Agganciare la nota { $at-in } a quella prima.
offer-retake = Riprendere l'arco per { a-bow } { $at-in }.
offer-begin = Far cominciare { $at } { bow-way }.
offer-stagger-unheard = Far cambiare arco ai due di ogni leggio in momenti diversi, senza che si senta.
offer-hook-short-to-long = Agganciare l'arcata breve alla lunga prima, fermando l'arco, e di lì alternare.
offer-hook-short-note = Agganciare la nota breve all'arcata prima, fermando l'arco.
offer-hook-last-two-bows = Agganciare le ultime due arcate di ogni battuta, così che ciascuna cominci in giù.
offer-hook-so-section-comes-back = Agganciare la nota { $at-in } a quella prima, così che la sezione torni come è cominciata.
offer-hook-instead-of-lifting = Agganciare le due arcate sulla corda, fermando l'arco, invece di alzarlo.
offer-mark-first-note-every-pass = Segnare { a-bow } sulla prima nota della sezione, per ogni volta.
offer-mark-out-and-alternate = Togliere il segno { $at-in } e alternare.
offer-row-out = Togliere dopo il primo i segni { bow-way } della serie e alternare.
offer-chords-as-they-come = Prendere gli accordi come vengono.
offer-second-down-out = Togliere il secondo segno in giù e alternare.
offer-change-one-after-the-other = Far cambiare i due di ogni leggio uno dopo l'altro.
offer-one-player-earlier = Far passare uno dei due di ogni leggio qualche nota prima.
offer-divide-between-players = Dividere le note fra i due di ogni leggio.
offer-out-and-sim = Toglierli e scrivere sim. sopra la prima.
offer-mark-out = Togliere il segno.
offer-keep-one-bow = { $bow ->
    [down] Tenere il segno in giù e togliere quello in su.
   *[up] Tenere il segno in su e togliere quello in giù.
}
offer-marks-not-needed-out = { $count ->
    [one] Togliere quello che non serve.
   *[other] Togliere i { $count } che non servono.
}
offer-keep-what-alternation-would-not = Tenere i segni che l'alternanza non darebbe e togliere gli altri.

# Ciò che può chi scrive

offer-split-slur-before = Dividere la legatura prima di { $places }.
offer-split-slur-there = Dividere lì la legatura.
offer-split-between-two-notes = Dividere la legatura fra le due note.
offer-split-between-the-two = Dividere la legatura fra le due.
offer-split-long-weigh-alike = Dividere la legatura lunga, così che nella figura le arcate in giù e in su si equivalgano.
offer-split-long-beside = Dividere la legatura lunga accanto, così che ci sia meno arco da ricuperare.
offer-break-note-at-barline = Interrompere la nota con un nuovo attacco a una stanghetta, dove il cambio si sente meno.
offer-slur-two-notes = Legare due delle note, così che la battuta abbia un numero pari di arcate.
offer-change-on-downbeat = Far cambiare arco a { $part } sul battere: dividere lì la legatura.
offer-inner-attacks-afresh = Far riattaccare sul battere la nota tenuta a una fila interna.
offer-inner-changes-on-some = Far cambiare arco a una fila interna su alcuni di questi battere.
offer-change-inside-swell = Far cambiare arco dentro la forcella.
offer-chords-on-two-strings = Scrivere gli accordi su due corde, o dare loro più tempo.
offer-write-trem = Scrivere trem. sopra il primo, se non è misurato.
offer-write-out-or-measured = Scrivere le note per esteso, o scrivere «misurato», se vanno contate.
offer-dots-out = Togliere i punti.
offer-dashes-for-portato = Mettere trattini al posto dei punti, per un portato.
offer-write-staccato = Scrivere staccato sopra la prima, per un arco che si ferma.
offer-write-gettato = Scrivere gettato sopra la prima, per un arco gettato.
offer-sign-out = Togliere { $sign ->
    [dash] il trattino
    [wedge] il cuneo
    [spiccato] il segno di spiccato
   *[dot] il punto
}.
offer-word-out = Togliere «{ $word }».
offer-write-spicc = Scrivere spicc. sopra la prima.
offer-write-on-the-string = Scrivere alla corda sopra la prima.
offer-write-group-out = Scrivere per esteso il primo gruppo con le sue legature, e poi simile, se le note stanno in un'arcata.
offer-slurs-out-own-bow = Togliere le legature, se ogni nota ha la sua arcata.
offer-write-spiccato-instead = Scrivere invece spiccato.
offer-slur-in-twos = Legare le note a due a due, o scriverne la metà.
offer-divide-into-throws = Dividere la legatura in getti di { $most } note al massimo.
offer-slurred-staccato = Chiedere staccato legato o spiccato legato invece di un getto.
offer-slur-without-dots = Legare le note senza punti, o dare loro più tempo.
offer-write-which-strings-held = Scrivere quali due corde si tengono, e le altre brevi prima di esse.
offer-write-div-and-unis = Scrivere qui div., e unis. dove tutti suonano di nuovo insieme.
offer-give-slurs = Dare lì a { $lower } le legature di { $upper }.
offer-give-marks = Dare lì a { $lower } i segni di { $upper }.
offer-slurs-of-the-others = Dare alla battuta le legature delle altre.
offer-lower-mark-out = Togliere il segno della voce inferiore, così che entrambe seguano la superiore.
offer-write-div = Scrivere qui div.
offer-write-non-div = Scrivere qui non div.
offer-write-arco = Scrivere qui arco.
offer-second-pizz-out = Togliere il secondo pizz.
offer-longer-rest = Dare una pausa più lunga, o cambiare in un altro punto.
offer-give-change-a-rest = Dare una pausa al cambio.
offer-second-word-out = Togliere la seconda indicazione.
offer-write-ord-or-sempre = Scrivere ord. dove finisce, o sempre dove non finisce.
offer-unis-out = Togliere unis. dove la parte è divisa.
offer-slur-out = Togliere la legatura.
offer-loose-end-out = Togliere il capo rimasto solo.
offer-first-slur-out = Togliere la prima legatura e tenere la seconda.
offer-end-first-slur = Finire la prima legatura { $at-in }, prima che cominci la seconda.
offer-write-slurs = Scrivere le legature che la linea deve avere.
offer-write-non-legato = Scrivere non legato o détaché, se ogni nota ha la sua arcata.
offer-outer-dashed = Tratteggiare quella esterna: una legatura di frase.
offer-dashed-slur = Tratteggiarla: una legatura di frase, che lascia libero l'arco.
offer-slur-over-tied-note = Tirare la legatura su tutta la nota tenuta.
offer-one-slur-over-both = Se si intende una sola arcata, tirare una legatura su entrambe; se due, lo dice un segno d'arco sulla nota tenuta.
offer-end-slur-before-word = Finire la legatura prima di «{ $word }».
offer-begin-slur-at-word = Cominciare la legatura da «{ $word }».
offer-split-slur-at-word = Dividere la legatura a «{ $word }».
offer-slurs-beside-rest = Finire la legatura prima della pausa e cominciarne un'altra dopo.
offer-slur-neighbouring-strings = Legare solo le note che stanno su una corda o su corde vicine.
offer-tie-two-notes = Unire le due note con una legatura di valore.
offer-dashes-on-both = Mettere trattini su entrambe, per una pulsazione in un'arcata.
offer-slur-for-tie = Scrivere una legatura d'arco al posto di quella di valore.
offer-write-dynamic = Scrivere { $dynamic }, come nelle parti che suonano insieme.
offer-rehearsal-mark = Mettere una lettera di prova { $at-in }{ $why ->
    [double-bar] , dopo la doppia stanghetta
    [tempo] , con il nuovo tempo
    [metre] , con il nuovo metro
    [key] , con la nuova tonalità
   *[middle] { "" }
}.
offer-number-the-bars = Numerare le battute e stampare i numeri nelle parti.
offer-write-tempo = Scrivere sopra la prima nota una parola di tempo o un'indicazione di metronomo.
offer-break-page-at-rest = Voltare pagina a una pausa.

# A chi spetta

grade-safe = sicura
grade-player = scelta di chi suona
grade-writer = scelta di chi scrive
