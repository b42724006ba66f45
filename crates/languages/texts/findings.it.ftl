# Frasi della revisione: ciò che si trova (say-), i numeri su cui poggia (evidence-, unit-), ciò che si suppone (assume-).

# Parole e punti

and = e
the-score = la partitura
place-bar = battuta
place-bars = battute
place-in-bar = a battuta
place-the-bar = battuta
place-beat = tempo
place-in-beat = al tempo
place-the-beat = il tempo

number-0 = nessuna
number-1 = una
number-2 = due
number-3 = tre
number-4 = quattro
number-5 = cinque
number-6 = sei
number-7 = sette
number-8 = otto
number-9 = nove
number-10 = dieci
number-11 = undici
number-12 = dodici

pitch-0 = do
pitch-1 = do♯
pitch-2 = re
pitch-3 = mi♭
pitch-4 = mi
pitch-5 = fa
pitch-6 = fa♯
pitch-7 = sol
pitch-8 = la♭
pitch-9 = la
pitch-10 = si♭
pitch-11 = si
pitch-in-octave = { $name }{ $below }

a-bow = { $bow ->
    [down] un'arcata in giù
   *[up] un'arcata in su
}
bow-name = { $bow ->
    [down] arcata in giù
   *[up] arcata in su
}
bow-way = { $bow ->
    [down] in giù
   *[up] in su
}
bars-counted = { $count ->
    [one] 1 battuta
   *[other] { $count } battute
}
and-more-places = { $more ->
    [0] { "" }
    [one] { " " }e in un altro punto
   *[other] { " " }e in altri { $more } punti
}
dynamics-steady = in { $from }
dynamics-changing = da { $from } a { $to }
stroke-named = { $stroke ->
    [sautille] sautillé
    [martele] martellato
    [detache] détaché
    [a-thrown-stroke] gettato
    [on-the-string] alla corda
    [off-the-string] fuori corda
    [another] un altro colpo d'arco
   *[other] { $stroke }
}

# La lunghezza dell'arco

say-nothing = Non è ancora detto nulla.
say-bow-drift = Da { $at } la stessa figura torna { $times } volte e, come viene, porta l'arco verso { $end ->
    [tip] la punta
   *[frog] il tallone
}: per riportarlo indietro le arcate leggere devono spiccare di { $decibels } dB.
say-note-outlasts-bow = La nota { $at-in } dura { $lasts }; un'arcata { $dynamics } dura al massimo { $longest }.
say-rushed-return = La nota breve { $at-in } deve ricuperare un'arcata lunga e, in { $dynamic }, spiccherà di circa { $decibels } dB.
say-slur-outlasts-bow = La legatura da { $at } dura { $lasts }; un'arcata { $dynamics } dura al massimo { $longest }.

# Il tempo

say-bar-comes-out-odd = Da { $at } la stessa battuta torna { $times } volte con { $bows } arcate: come viene, comincia ogni volta con l'altra arcata{ $bowed ->
    [evened] , se non si aggancia o non si alza l'arco
   *[turning] { "" }
}.
say-beat-on-up-bow = L'accento { $at-in } cade in su anche nella migliore arcata del passo.
say-repeat-comes-back-reversed = { $road ->
    [da-capo] Il da capo a { $beginning } lascia con
    [dal-segno] Il dal segno a { $beginning } lascia con
   *[repeat] Il ritornello da { $beginning } finisce con
} { a-bow } { $end-in }, così la seconda volta comincia con l'altra arcata: per alzare l'arco ci sono { $there } s e ne occorrono { $needed }.
say-silent-downbeat = { $at-first } { $why ->
    [tempo] comincia un nuovo tempo
    [metre] comincia un nuovo metro
    [mark] c'è una lettera di prova
   *[winds] entrano i fiati
}, e nessuna fila di archi vi comincia un'arcata: tutti tengono, legano oltre la stanghetta o sono in pausa.
say-silent-downbeats = Da { $at } nessuna fila di archi comincia un'arcata sul battere per { bars-counted }.
say-slur-covers-beat = { $at-first } { $why ->
    [tempo] comincia un nuovo tempo
   *[accent] c'è un accento improvviso
}, nel mezzo di una legatura: lì non comincia nessuna arcata.

# Direzione e dinamica

say-accent-at-tip = L'accento { $at-in }, in { $dynamic }, si attacca vicino alla punta con { a-bow }, dove l'arco ha poco peso.
say-chords-too-close = L'accordo { $at-in } va in giù { $time } s dopo un altro; spezzare il primo e riportare l'arco richiede circa { $needed } s.
say-ending-on-up-bow = La frase che si chiude { $at-in } finisce in su, in { $dynamic }.
say-lift-in-soft-line = Con queste legature l'{ bow-name } { $at-in } chiede di alzare l'arco dentro una linea in { $dynamic }: un vuoto di circa { $needed } s.
say-no-time-to-retake = Una ripresa per { a-bow } { $at-in } richiede circa { $needed } s, e ce ne sono { $there }.
say-soft-entry-at-frog = L'attacco in { $dynamic } { $at-in } comincia vicino al tallone con { a-bow }, dove l'arco è pesante.
say-swell-against-bow = Il { $swell } da { $from } a { $to } { $at-in } cade su { a-bow }, che da sé { $swell ->
    [crescendo] cala
   *[diminuendo] cresce
}.

# Colpi d'arco

say-countable-tremolo = Il tremolo { $at-in } dà { $rate } arcate al secondo, così poche che si contano, e nessuna parola dice se è misurato.
say-dots-on-pizzicato = { $count ->
    [one] La nota da { $at } è pizzicata e porta il punto: è breve comunque.
   *[other] Le { $count-word } note da { $at } sono pizzicate e portano punti: sono brevi comunque.
}
say-dots-under-slur = { $count-first } note con punti sotto legatura { $at-in }, { $rate } al secondo, e nessuna parola dice come: { $slower ->
    [portato] portato
    [staccato] staccato legato
   *[thrown] gettato
} o { $faster ->
    [portato] portato
    [staccato] staccato legato
   *[thrown] gettato
}? A questa velocità è più probabile { $likely ->
    [portato] il portato
    [staccato] lo staccato legato
   *[thrown] il gettato
}.
say-signs-contradict = La nota { $at-in } ha { $first ->
    [dot] un punto
   *[dash] un trattino
} e { $second ->
    [spiccato] un segno di spiccato
   *[wedge] un cuneo
}: { $first ->
    [dot] un po' breve, o breve quanto si può.
   *[dash] { $second ->
        [spiccato] l'uno la tiene, l'altro la toglie dalla corda.
       *[wedge] l'uno la tiene, l'altro la fa breve quanto si può.
    }
}
say-words-contradict = «{ $first }» e «{ $second }» stanno insieme { $at-in }; un arco fa l'una o l'altra cosa.
say-legato-over-dots = «{ $word }» sta sopra un punto { $at-in }, dove non c'è legatura: l'uno unisce le note, l'altro le separa.
say-on-or-off-string = Da { $at }{ $parts ->
    [1] { "" }
   *[other] { " " }in { $parts-word } parti
}, { $count-word } note con punti di staccato vengono { $rate } al secondo: alla corda o fuori corda? Nel brano nessuna parola dice quale.
say-slurred-tremolo = La legatura { $at-in } sta sopra un tremolo di note contate: sono tutte in un'arcata, o ogni nota ha la sua?
say-stroke-too-fast = Le note da { $at } portano «{ stroke-named }» e vengono { $rate } al secondo; questo colpo d'arco arriva a { $limit }.
say-stroke-too-slow = Le note da { $at } portano «{ stroke-named }» e vengono { $rate } al secondo; l'arco rimbalza da sé da { $limit } in su.
say-thrown-too-many = { $count-first } note vanno gettate in un'arcata { $at-in }; un getto ne dà fino a { $most }.
say-thrown-out-of-speed = Le note gettate { $at-in } vengono { $rate } al secondo, { $pace ->
    [slower] più lente
   *[faster] più veloci
} delle { $limit } di un arco che rimbalza da sé.

# Segni d'arco

say-effect-marked-again = { $count-first } segni da { $at } a { $last } mostrano una figura già segnata { $times ->
    [1] una volta
    [2] due volte
   *[other] { $times-word } volte
}: chi suona continua così.
say-mark-cannot-be = Il segno d'arco { bow-way } { $at-in } sta { $where ->
    [on-rest] su una pausa
    [plucked] in un pizzicato
    [not-bowed] su una nota che non si suona con l'arco
    [inside-slur] dentro una legatura
   *[tied-from-before] su una nota tenuta da prima
}, dove non comincia nessuna arcata.
say-both-bows = La nota { $at-in } è segnata sia in giù sia in su.
say-mark-on-every-note = Da { $at } alla fine di { $last }, { $marked } arcate su { $strokes } portano un segno d'arco.
say-mark-not-needed = Il segno d'arco { bow-way } { $at-in } non serve: senza il segno l'arcata è la stessa.

# La mano sinistra

say-below-e-string = La nota { $at-in } sta sotto la corda di mi: per il { $pitch } serve la quinta corda o l'estensione.
say-below-lowest-string = Il { $pitch } { $at-in } sta sotto la corda più bassa, { $limit }.
say-above-fingerboard = Il { $pitch } { $at-in } sta oltre la fine della tastiera, circa { $limit }.
say-stop-held-too-long = { $strings-first } corde devono suonare insieme per { $lasts } { $at-in }; sotto il forte un arco ne tiene due.
say-stop-unplayable = { $pitches } { $at-in } non si possono premere insieme { $instrument ->
    [violin] sul violino
    [viola] sulla viola
    [cello] sul violoncello
    [bass] sul contrabbasso
   *[instrument] su questo strumento
}.

# Fra le parti

say-doubling-bowed-apart = { $upper } e { $lower } suonano una stessa linea da battuta { $first } a { $last }, e hanno arcate diverse { $at-in }{ and-more-places }.
say-doubling-marked-apart = { $upper } e { $lower } suonano una stessa linea da battuta { $first } a { $last }, e non concordano { $at-in }{ and-more-places }: { $signs }.
sign-dots = punti
sign-accents = accenti
sign-dashes = trattini
sign-sforzati = sforzati
sign-dynamics = dinamica
sign-way-of-playing = modo di suonare
say-parallel-bowed-apart = Le stesse note che { $model-in } sono legate in altro modo { $at-in }; { $others ->
    [one] un'altra battuta concorda
   *[other] altre { $others } battute concordano
} con { $number }.
say-stands-contradict = { $at-first } le due metà della fila suonano lo stesso ritmo, l'una segnata in giù e l'altra in su.
say-winds-phrase-apart = { $strings } e { $wind } suonano una stessa linea per { $bars ->
    [one] 1 battuta
   *[other] { $bars } battute
} e la legano uguale, tranne { $at-in }{ and-more-places }.

# Modi di suonare

say-chord-or-divisi = L'accordo { $at-in } sta nella parte di una fila, e non è stato detto né div. né non div.
say-missing-arco = { $at-first } c'è { $sign ->
    [bow-mark] un segno d'arco
    [tremolo] un tremolo
   *[slur] una legatura
}, e l'ultima indicazione era pizz. { $since-in }.
say-pizz-again = pizz. è scritto { $at-in } benché valga già { $since-in }: o manca arco in mezzo, o il secondo è di troppo.
say-mute-change-too-quick = { $change ->
    [on] con sordino
   *[off] senza sordino
} { $at-in } ha { $rest ->
    [none] nessuna pausa prima
   *[some] { $there } s di pausa
}; per { $change ->
    [on] mettere
   *[off] togliere
} la sordina occorrono circa { $needed } s.
say-pizz-change-too-quick = { $word ->
    [pizz] pizz.
   *[arco] arco
} { $at-in } viene { $there } s dopo l'ultima nota; per passare { $word ->
    [pizz] al pizzicato
   *[arco] all'arco
} occorrono circa { $needed } s.
say-pizz-too-fast = { $count } note pizzicate di seguito da { $at } vengono { $rate } al secondo; una fila ne pizzica al massimo { $most }.
say-state-again = { $word } è scritto { $at-in } benché valga già { $since-in }: o manca un'indicazione in mezzo, o la seconda è di troppo.
say-state-never-ends = { $word } è scritto { $at-in } e mai annullato: { $bars ->
    [one] un'altra battuta si suona
   *[other] altre { $bars } battute si suonano
} così, fino alla fine del movimento.
say-unison-of-two = unis. sta { $at-in } sopra due voci con note diverse: tutti suonano tutt'e due, o la parte è ancora divisa?

# Legature come sono scritte

say-slur-on-one-note = La legatura { $at-in } comincia e finisce sulla stessa nota.
say-slur-never-ends = Una legatura comincia { $at-in } e non finisce mai.
say-slur-never-began = Una legatura finisce { $at-in } senza essere cominciata.
say-crossing-slurs = Sotto la legatura da { $at } ne comincia un'altra { $start-in } e finisce dopo di essa: un'arcata non può fare tutt'e due le cose.
say-legato-without-slurs = legato sta { $at-in } sopra { $count } note, e nessuna legatura dice quali vanno in un'arcata.
say-singing-line-without-slurs = Da { $at } in poi { $part } ha { $count } note di una linea cantabile, e né legature né segni né parole dicono con quali arcate.
say-nested-slurs = La legatura da { $at } contiene { $inside ->
    [1] un'altra legatura
   *[other] altre { $inside } legature
}: una delle linee è una legatura di frase, e si somigliano.
say-phrase-mark-as-slur = La legatura da { $at } sembra una legatura di frase: { $signs }{ $same-line ->
    [wind] ; { $wind } ha la stessa linea
   *[none] { "" }
}.
sign-slowest-bows = lunga come { $bows } delle arcate più lente
sign-slurs-inside = { $count ->
    [one] 1 legatura
   *[other] { $count } legature
} sotto di essa
sign-rest = una pausa sotto di essa
sign-bow-marks = { $count ->
    [one] 1 segno d'arco
   *[other] { $count } segni d'arco
} sotto di essa
sign-repeated-pitch = un'altezza ripetuta senza punti
sign-whole-bars = esattamente { bars-counted }
say-slur-misses-tie = La legatura { $end ->
    [begins] comincia
   *[ends] finisce
} { $at-in } a metà di una nota tenuta.
say-slurs-meet-on-tie = Due legature si incontrano { $at-in } su una nota tenuta: due arcate, e il cambio è lì, o una sola?
say-slur-over-change = «{ $word }» { $at-in } sta nel mezzo di una legatura.
say-slur-over-rest = La legatura { $at-in } copre una pausa.
say-slur-skips-string = Dalla nota { $at-in } alla seguente la legatura salta { $strings ->
    [1] una corda
   *[other] due corde
}, in { $within }{ $more ->
    [0] { "" }
    [1] ; la stessa legatura lo fa un'altra volta
   *[other] ; la stessa legatura lo fa altre { $more } volte
}.
say-slurred-stops = La corda doppia { $at-in } e la seguente non hanno corde in comune: sotto una legatura non si possono unire.
say-tie-or-slur = La legatura { $at-in } unisce due note della stessa altezza, senza punti né trattini: può essere una nota tenuta, o due in un'arcata.
say-tie-to-another-pitch = La legatura di valore { $at-in } porta a un'altra altezza: si intende una legatura d'arco.

# Parti

say-no-dynamic-anywhere = In tutta la partitura non è scritta nessuna dinamica.
say-entry-without-dynamic = Per l'attacco di { $part } { $at-in } non è scritta nessuna dinamica.
say-reentry-without-dynamic = Per l'attacco di { $part } { $at-in }, dopo { $bars ->
    [one] 1 battuta
   *[other] { $bars } battute
} di pausa, non è scritta nessuna dinamica.
say-landmarks-too-far = Da { $from } a { $to }: { $bars ->
    [one] 1 battuta
   *[other] { $bars } battute
} senza una lettera di prova.
mark-in-bar = { $mark } ({ $at })
mark-bar-alone = { $at }
mark-the-next = { $mark }, la lettera seguente
mark-end-of-movement = fine del movimento
mark-end = fine del brano
say-bars-without-number = { $count-first } { $count ->
    [one] battuta non ha
   *[other] battute non hanno
} numero.
say-no-tempo = All'inizio non è scritto nessun tempo.
say-tempo-for-playback-alone = Il file ha un tempo per la riproduzione, ma all'inizio non ne è stampato nessuno: chi suona non può leggerlo.
say-page-turn-too-quick = Si volta pagina prima di { $at }, { $rest ->
    [none] senza alcuna pausa
   *[some] con { $there } s di pausa
}; per voltare occorrono circa { $needed } s.
say-part-not-in-score = { $file } ha una parte { $part } che la partitura non ha.
say-part-has-other-bars = { $file } ha { $in-part ->
    [one] 1 battuta
   *[other] { $in-part } battute
}, la partitura { $in-score }.
say-part-differs = { $file } e la partitura hanno { $what ->
    [notes] note diverse
    [slurs] legature diverse
    [bow-marks] segni d'arco diversi
    [signs] segni diversi sulle note
   *[words] dinamiche o parole diverse
} { $at-in }.

# Ciò che un compito si aspetta

say-no-tempo-for-task = Nella partitura non c'è nessun tempo.
say-lacks = { $what ->
    [slurs] Le legature
    [dynamics] Le dinamiche
    [hairpins] Le forcelle
    [articulations] Punti, trattini e accenti
    [bow-marks] I segni d'arco
   *[tempo] Un tempo
} fanno parte di questo compito: { $told }{ $cut ->
    [yes] { " " }…
   *[no] { "" }
}.
lacks-in-bars = { $part } non ne ha alle battute { $bars }
lacks-altogether = { $part } non ne ha sulle sue { $count } note

# Ciò che si suppone

assume-tempo = Nessun tempo è scritto; i secondi si basano su uno supposto.

# Numeri

evidence-a-lift-takes = alzare l'arco richiede
evidence-a-turn-takes = voltare richiede
evidence-above-its-dynamic = oltre la sua dinamica
evidence-at-most = al massimo
evidence-bars-of-rest = battute di pausa
evidence-bars-played-after-it = battute suonate dopo
evidence-bars-that-agree = battute che concordano
evidence-bars-without-a-mark = battute senza lettera
evidence-beams = tagli
evidence-begins-at = comincia a
evidence-bow-it-travels = arco percorso
evidence-bowed-differently = arcate diverse
evidence-bows = arcate
evidence-bows-needed = arcate necessarie
evidence-change-of-level = cambio di dinamica
evidence-chord-lasts = durata dell'accordo
evidence-chords-without-div-or-non-div = accordi senza div. o non div.
evidence-difference-of-level = differenza di volume
evidence-downbeats-in-a-row = battere di seguito
evidence-dynamic = dinamica
evidence-each-time-down = ogni volta in giù
evidence-each-time-up = ogni volta in su
evidence-first-note-lasts = durata della prima nota
evidence-last-note-lasts = durata dell'ultima nota
evidence-marks = segni
evidence-note-before = nota prima
evidence-note-lasts = durata della nota
evidence-notes-a-second = note al secondo
evidence-notes-in-common = note in comune
evidence-notes-in-one-throw = note in un getto
evidence-notes-that-begin-a-slur-in-one-part-only = note che cominciano una legatura in una sola parte
evidence-notes-without-a-slur = note senza legatura
evidence-rest = pausa
evidence-silence-before-it = silenzio prima
evidence-slowest-bow-lasts = durata dell'arcata più lenta
evidence-slur-lasts = durata della legatura
evidence-slurs-inside = legature all'interno
evidence-strength-of-the-beat = peso del tempo
evidence-strings-together-loud = corde insieme, forte
evidence-stroke-lasts = durata dell'arcata
evidence-strokes-a-second = arcate al secondo
evidence-strokes-marked = arcate segnate
evidence-the-first-chord-speaks = il primo accordo parla
evidence-the-lift-takes = alzare l'arco richiede
evidence-the-note-before-can-give-up = la nota prima può cedere
evidence-time-between-them = tempo fra i due
evidence-time-it-takes = tempo necessario
evidence-time-there-is = tempo disponibile
evidence-time-to-lift = tempo per alzare l'arco
evidence-time-to-pass-over-a-string = tempo per passare una corda
evidence-times-in-a-row = volte di seguito
evidence-dots-in-one-part = punti in una sola parte
evidence-accents-in-one-part = accenti in una sola parte
evidence-dashes-in-one-part = trattini in una sola parte
evidence-sforzati-in-one-part = sforzati in una sola parte
evidence-notes-with-another-dynamic = note con un'altra dinamica
evidence-notes-played-differently = note suonate in altro modo

unit-seconds = s
unit-bows = archi
unit-decibels = dB
unit-percent = %
unit-percent-of-the-bow = % dell'arco
unit-dynamic-steps = gradi di dinamica
unit-times-a-plain-downbeat = volte un battere semplice
