# Pagine e resoconti: titoli, etichette, modi di portare l'arco, che cosa si guadagna e si perde.

# Etichette

label = { $label }:
assumed = supposto
not-read = non letto
also = inoltre
set-aside = messe da parte
better = Meglio
worse = Peggio
weighed = { $what }: { $list }.
in-the-file = nel file
in-the-file-more = nel file: altre { $count } (tutte con --format json)
nothing-found = Non si è trovato nulla.
bars-and-strokes = { $bars ->
    [one] 1 battuta
   *[other] { $bars } battute
}, { $strokes ->
    [one] 1 arcata
   *[other] { $strokes } arcate
}; { $count ->
    [0] nessuna parte d'archi
   *[other] { $names }
}
times-in-all = { $count } volte in tutto; anche: { $places }
beats-of-a-bar = { $count ->
    [one] tempo
   *[other] tempi
}{ $kept }{ $beats }
bars-named = { $count ->
    [one] battuta
   *[other] battute
} { $bars }{ $left ->
    [0] { "" }
   *[other] { " " }e altre { $left }
}
places-in-file = { $count ->
    [one] 1 punto
   *[other] { $count } punti
} in { $file }
aside-nothing-found = messo da parte, ma non si trova nulla
aside-entry = voce { $number } di { $file } ({ $asks }): { $reason }
movement-numbered = movimento { $number }
place-of-bar = { $bar }, { place-beat } { $beat }
file = file
bars-column = battute
strokes-column = arcate
in-all = in tutto

# Tabelle delle arcate

column-bar = batt.
column-beat = tempo
column-bow = arco
column-how = come
column-frog-tip = tall. … punta
column-penalty = penalità
column-sure = sic.
row-bow = { $bow ->
    [down] giù
   *[up] su
}
row-link = { $link ->
    [hooked] agganc.
    [retake] ripresa
    [reset] appogg.
   *[change] { "" }
}
row-penalty = { $points } { $term }
term = { $term ->
    [beat] tempo
    [upbeat] levare
    [entry] attacco
    [swell] forcella
    [accent] accento
    [ending] fine
    [hook] aggancio
    [retake] ripresa
    [reset] alzata
    [retake-time] tempo ripr.
    [speed] velocità
    [speed-limit] limite vel.
    [place] punto
    [mark] segno
    [repeat] ritornello
    [unity] unità
    [likeness] somiglianza
   *[notation] scrittura
}
printed-in-the-score = stampato nella partitura
sure-means = sic.: quanti esecutori su cento prenderebbero questa arcata
sure-and-open = sic.: quanti esecutori su cento prenderebbero questa arcata; ? due modi quasi si equivalgono, --alternatives 3 con queste --bars li mostra
turn-link = { $link ->
    [hooked] agganciando
    [retake] riprendendo
    [reset] appoggiando
   *[change] cambiando
}
turn = { $road ->
    [repeat] ritornello da battuta { $bar } a { $from }
    [da-capo] da capo da battuta { $from } a { $bar }
    [dal-segno] dal segno da battuta { $from } a { $bar }
   *[onward] avanti da battuta { $from } a { $bar }
}: { $comes ->
    [unknown] { turn-link }, { bow-way }
    [by-itself] la seconda volta di nuovo { bow-way }, da sé
    [free] la seconda volta di nuovo { bow-way }: l'arco è libero
    [lifted] si alza l'arco nella pausa per tornare { bow-way } (ci sono { $there } s, ne servono { $needed })
    [retaken] si riprende per tornare { bow-way } (ci sono { $there } s, ne servono { $needed })
   *[reversed] non c'è tempo per alzare l'arco (ci sono { $there } s, ne servono { $needed }): come viene, la seconda volta comincia con l'altra arcata
}{ $weighed ->
    [afterwards] ; attraversa un altro ritornello: non pesato
   *[search] { "" }
}

# Penalità

yardstick = Penalità: un'arcata in su su un battere conta { $points }.
share = { $what } ({ $points })
better-beat = arcate con il tempo
better-upbeat = in su proprio prima del battere
better-entry = attacco con l'arcata che va con il tempo
better-swell = crescendo o diminuendo con l'arco
better-accent = accenti o accordi con l'arcata adatta
better-ending = la frase finisce in giù
better-hook = meno agganci
better-retake = meno riprese d'arco
better-reset = meno alzate nelle pause
better-retake-time = tempo sufficiente per alzare l'arco
better-speed = velocità dell'arco più vicina a ciò che vuole la dinamica
better-speed-limit = velocità dell'arco entro ciò che la dinamica consente
better-place = arcate più vicine al loro punto dell'arco
better-mark = segni stampati rispettati
better-repeat = la seconda volta comincia con la stessa arcata
better-unity = come chi ha lo stesso ritmo
better-likeness = come la stessa figura altrove
better-notation = meno cambiamenti nella scrittura
worse-beat = arcate contro il tempo
worse-upbeat = in giù proprio prima del battere
worse-entry = attacco con l'arcata contro il tempo
worse-swell = crescendo o diminuendo contro l'arco
worse-accent = accenti o accordi con l'arcata contraria
worse-ending = la frase finisce in su
worse-hook = più agganci
worse-retake = più riprese d'arco
worse-reset = più alzate nelle pause
worse-retake-time = troppo poco tempo per alzare l'arco
worse-speed = velocità dell'arco più lontana da ciò che vuole la dinamica
worse-speed-limit = velocità dell'arco oltre ciò che la dinamica consente
worse-place = arcate più lontane dal loro punto dell'arco
worse-mark = segni stampati non rispettati
worse-repeat = la seconda volta comincia con l'altra arcata
worse-unity = diversamente da chi ha lo stesso ritmo
worse-likeness = diversamente dalla stessa figura altrove
worse-notation = più cambiamenti nella scrittura

# Modi di portare l'arco

way-best = il modo migliore
way-best-standing = il modo migliore ({ $standing })
way-best-does = { $best }: { $does }
way-does = { $does }
way-standing = { $standing }: { $name }
way-begins = { bow-way }
way-hook-at = agganciare { $at-in }
way-retake-at = riprendere l'arco { $at-in }
way-start = cominciare { bow-way } { $at-in }
way-hook = agganciare l'{ bow-name } { $at-in }
way-retake = riprendere per { a-bow } { $at-in }
way-as-it-comes = { bow-name } { $at-in } senza aggancio né ripresa
way-as-it-is = com'è: il modo migliore finisce così
standing-plain-alternation = semplice alternanza
standing-other-bow-first = prima l'altra arcata
standing-last-two-hooked = le ultime due agganciate dove una battuta non torna
ways-to-bow = modi di portare l'arco in queste battute
lane-letters = D giù, U su; h agganciata a quella prima, r ripresa
way-penalty = (penalità +{ $points })
way-penalty-and-changes = (penalità { $points }{ $changes ->
    [0] { "" }
    [1] , un cambiamento nella scrittura
   *[other] , { $changes } cambiamenti nella scrittura
})
no-other-way = I segni stampati e i punti fissi non lasciano altro modo.
ways-to = modi per { $asked }
asked-ending = finire { $at } { bow-way }
no-way = Non ce n'è nessuno.
assume-played-once = i tratti ripetuti sono pesati come suonati una volta
demand-printed = l'{ bow-name } stampata { $at-in }
demand-anchor = { $at }{ $bow ->
    [down] { " " }in giù
    [up] { " " }in su
   *[any] { "" }
}{ $link ->
    [change] { " " }cambiando
    [hooked] { " " }agganciata
    [retake] { " " }ripresa
    [reset] { " " }appoggiata
   *[any] { "" }
}
conflict-same-stroke = { $one } e { $other } chiedono a un'arcata di andare nei due versi; vale il secondo.
conflict-pays = { $one } e { $other } come viene non vanno insieme; tenerli entrambi alza la penalità di { $points }{ $how-known ->
    [yes] : { $how }
   *[no] { "" }
}.
anchors = punti fissi: { $anchors }
anchors-cost-nothing = Nessuna penalità: il piano migliore fa già così.
anchors-cost = Penalità: { $points } in più del piano migliore senza di essi.
otherwise = diversamente: { $what }
repairs = riparazioni: l'intero rigo come stampato ha una penalità di { $points }
no-repair = Nessun cambiamento delle legature vale il suo prezzo.
repair-step = con { $count ->
    [one] un cambiamento
   *[other] { $count } cambiamenti
}: penalità { $points } in meno{ $step ->
    [further] , { $more } con questo passo
   *[first] { "" }
}
before = prima
after = dopo
lane-frog = tallone
lane-tip = punta

# Chi suona insieme

no-bow-begins = nessuna arcata comincia
who-does = { $does }: { $names }
does-down = in giù
does-up = in su
does-go-on = continua
does-rest = pausa
all-of-them = tutti
bowed-alike = arcate uguali
bowed-differently = arcate diverse, e perché
groups-more = e altri { $count } gruppi (tutti con --format json)
places-more = e altri { $count } punti (tutti con --format json)
group = { $bars }: { $lines } { $relation ->
    [unison] all'unisono
    [octaves] all'ottava
    [parallel] in parallelo
   *[rhythm] con lo stesso ritmo
}, { $strokes ->
    [one] 1 arcata
   *[other] { $strokes } arcate
}
departure = { $at }, { $line }: { $strokes ->
    [one] 1 arcata
   *[other] { $strokes } arcate
} { $from ->
    [section] diversamente da chi suona lo stesso ritmo
   *[figure] diversamente dalla stessa figura altrove
}; { $why }
departs-by-mark = lo dice il segno stampato
departs-by-anchor = lo dice un punto fisso
departs-evenly = andare con gli altri costerebbe lo stesso
departs-for = andare con gli altri alzerebbe la penalità di { $points }, soprattutto: { $reason }

# Segni d'arco stampati

part = parte
marks-column = segni
least-column = minimo
in-total = totale
class-needed = serve
class-effect = effetto
class-obvious = ovvio
class-contradictory = contraddittorio
bar-of-marks = battuta { $bars }{ $left ->
    [0] { "" }
   *[other] { " " }e altre { $left }
}
mark-reason = { $reason ->
    [alternation] l'alternanza dà l'altra arcata
    [later-instance] l'alternanza dà l'altra arcata; la figura era già segnata
    [free-bow] qui l'arco è libero
    [after-rest] dopo una pausa ognuno fa a modo suo
    [beside-row] qui comincia o finisce una serie nello stesso verso
    [unusual] dice che si vuole un'arcata insolita
    [holds-plan] senza di esso andrebbero meglio altre arcate
    [row-of-downs] serie di arcate forti in giù
    [ups-into-down] arcate in su verso una forte in giù
    [first-instances] prime volte di una figura ripetuta
    [spelt-out] scrive per esteso una legatura con punti o trattini
    [comes-anyway] viene comunque
    [both-bows] in giù e in su sulla stessa arcata
    [on-rest] su una pausa
    [plucked] in un pizzicato
    [not-bowed] su una nota che non si suona con l'arco
    [inside-slur] dentro una legatura
   *[tied-from-before] su una nota tenuta da prima
}

# La pagina di una revisione

page-title = che cosa fanno gli archi
page-skip = Vai alle osservazioni
page-glance = A colpo d'occhio
page-findings = Osservazioni
page-brackets = Un numero fra parentesi è una quota di una penalità.
page-rules = Le regole, e perché contano
page-advice = Arcata calcola e consiglia; decide chi suona. Se mano, braccio o schiena si affaticano, è bene riposare e chiedere a un insegnante o a un medico.
page-bars = Battute
page-bowed-parts = Parti d'archi
strokes-counted = { $count ->
    [one] 1 arcata
   *[other] { $count } arcate
}
page-calculated-for = Calcolato per
page-contradicts = Il file si contraddice in { $count ->
    [one] 1 punto
   *[other] { $count } punti
}
page-set-aside = { $count ->
    [one] 1 punto è messo
   *[other] { $count } punti sono messi
} da parte
page-reasons-in = In { $file }, con le ragioni che vi sono date.
page-held-for = Messo da parte: { $reason }
page-entry-unused = La voce { $number } di { $file } ({ $asks }) mette da parte ciò che non si trova più: { $reason }
page-which = Quali osservazioni mostrare
page-shown = # di # mostrate.
page-severity = Gravità
page-section = Fila
page-rule = Regola
page-show-all = Mostra tutte
page-strip-key = Una colonna per battuta. Blocco alto: la fila comincia sul battere un'arcata in giù; blocco basso: in su; linea: un'arcata continua oltre; niente: pausa o pizzicato. Blocco nella riga «Tutti»: su questo battere le arcate continuano e nessuna comincia. Dischi: osservazioni,
picture-frog = tallone
picture-tip = punta
picture-key = Il tempo scorre con le note; su e giù è il punto dell'arco, grosso al tallone e sottile alla punta. Anello: appoggiata dopo una pausa. Arco tratteggiato: arco alzato. Stanghetta: fermata, stessa direzione. Perle: pulsazioni. Zigzag: tremolo. Punte di freccia: più arco di quanto la dinamica voglia. Linea tratteggiata: meno arco di quanto il suono chieda; i punti mostrano dove porterebbe la velocità usuale, una stanghetta sul margine dove l'arco sarebbe finito. I segni in contorno sono calcolati, quelli pieni sono stampati.
picture-key-open = Vuoto: l'altra arcata è quasi altrettanto buona.
page-lane-key = Sotto la musica il tempo scorre con le note e l'altezza è il punto dell'arco, tallone in alto: grosso al tallone, sottile alla punta. Anello: appoggiata dopo una pausa. Arco tratteggiato: arco alzato. Stanghetta: fermata, stessa direzione. Perle: pulsazioni. Zigzag: tremolo. Punte di freccia: più arco di quanto la dinamica voglia. Linea tratteggiata: meno arco di quanto il suono chieda; i punti mostrano dove porterebbe la velocità usuale. I segni in contorno sono calcolati, quelli pieni sono stampati.
as-it-stands = Com'è
no-picture = Nessuna immagine: queste battute non si possono incidere.
also-at = Anche: { $places }{ $rest ->
    [0] { "" }
   *[other] { " " }e altri { $rest } punti
}.
proposal-numbered = Proposta { $number }
strip-bars = Battute da { $first } a { $last }
strip-downbeats = Battere delle battute da { $first } a { $last }: { $told }
strip-row = { $name } ne comincia { $down } in giù e { $up } in su, continua oltre { $on }
strip-nobody = su { $count } non comincia nessuno.
strip-all = Tutti
folder-title = Partiture rivedute
folder-scores = { $count ->
    [one] 1 partitura
   *[other] { $count } partiture
}
folder-region = Partiture
folder-score = Partitura
folder-title-of-work = Titolo
folder-strokes = Arcate
folder-contradictions = Contraddizioni nel file
calculated-professional = professionisti
calculated-amateur = dilettanti
calculated-student = studenti
calculated-file = chi suona come in { $file }
calculated-style = stile { $style }
calculated-apart = ogni parte per sé
with-engraved-music = Con la musica incisa: { $file }
told-bars = Battute da { $first } a { $last }
told-stroke = { $at } { bow-way }{ $link ->
    [hooked] , agganciata
    [retake] , ripresa
    [reset] , appoggiata
   *[change] { "" }
}
told-line = { $name }: { $strokes }
told-none = Non vi comincia nessuna arcata

# Ciò che il piano dà per dato

assume-opening-tempo = { $quarters } semiminime al minuto all'inizio, come richiesto
assume-quarters = { $quarters } semiminime al minuto dove la partitura non dà un tempo
assume-louder = { $count ->
    [one] 1 grado
   *[other] { $count } gradi
} più { $way ->
    [louder] forte
   *[softer] piano
} di quanto scritto

# Immagini di un piano

picture-the-plan = il piano.
picture-other-way = { $what } (penalità { $points } in più)
picture-from-to = da { $from } a { $to }
picture-bars = battute da { $first } a { $last }
assume-habits = le abitudini di una spalla, apprese da { $count } arcate segnate
assume-habits-rest = le abitudini della spalla tacciono: sono state apprese nello stile { $style }
picture-bow-plan = Arcate previste
rules-foot = 
    La pagina di una regola: arcata rules RULE. Tralasciarne una: arcata review SCORE --without RULE,
    o in una sola partitura, con una ragione: arcata aside SCORE --rule RULE --reason TEXT.

# Fogli delle modifiche

sheet-title = foglio delle modifiche
sheet-untitled = Senza titolo
sheet-untitled-layer = versione senza titolo
sheet-as-printed = le parti come stampate
sheet-label-write = da scrivere:
sheet-label-so-far = finora:
sheet-head-write = Da scrivere:
sheet-head-so-far = Finora:
sheet-count = { $write } da scrivere, { $off } da togliere
sheet-key = In grassetto le battute, poi il tempo.
sheet-key-with-music = In grassetto le battute, poi il tempo. La musica mostra la battuta come dovrà essere, le note cambiate su grigio.
sheet-continued = { $name } (segue)
sheet-was = (prima: { $was })
sheet-take-off = togliere: { $mark }
sheet-nothing = niente
sheet-librarian = Per l'archivio
sheet-section = fila
sheet-write = scriv.
sheet-off = togliere
sheet-stands = leggii
sheet-marks = segni
sheet-time = tempo
sheet-all = tutti
sheet-as-it-shall-look = battuta { $bar } come dovrà essere
sheet-copying = { $marks ->
    [one] 1 segno
   *[other] { $marks } segni
} su tutti i leggii: circa { $time } di copiatura.
sheet-estimate-reason = trovare la battuta sulla pagina, scrivere un segno a matita o cancellarlo
sheet-estimate-source = a memoria; misurare il proprio tempo di copiatura e indicarlo
sheet-estimate-set-by-user = indicato da chi usa il programma
sheet-estimate = La stima conta { $value } { $unit } per segno ({ $reason }; { $source }; { $status ->
    [seen] visto
    [counted] contato
    [derived] derivato
    [yours] vostro
   *[default] valore predefinito
}).
sheet-spared = { $marks ->
    [one] 1 segno
   *[other] { $marks } segni
} della versione non scritti: chi suona come viene fa lo stesso senza.
sheet-all-found = Ogni arcata della versione ha la sua nota in questa partitura.
sheet-to-settle = Da decidere: in nessuna parte, o senza un segno da scrivere
sheet-doubtful = Riportati con dubbio: da guardare
sheet-not-spread-heading = Non estesi alle altre parti
sheet-not-to = { $from } non a { $part }
sheet-not-spread = { $marks ->
    [one] 1 segno
   *[other] { $marks } segni
} { $bars-are ->
    [many] alle battute
   *[one] a battuta
} { $bars }; { $why }
sheet-not-settled = da decidere: { $first } vuole { $wants }, { $second } vuole { $other }
sheet-several = qui la versione dice più cose: { $marks }
sheet-contradicts = non applicato con la versione, perché contraddice la partitura o un'altra voce; arcata layer check dice quale
sheet-found-no-note = non ha trovato una nota quando la versione è stata riportata su questa partitura
mark-bow = { bow-way }
mark-both-bows = { $bow ->
    [up] in su e in giù
   *[down] in giù e in su
} su una nota
mark-hook = agganciata{ $sign ->
    [dots] { " " }con una legatura con punti
    [dashes] { " " }con una legatura con trattini
   *[marks] { "" }
}{ $bow ->
    [down] { " " }(in giù)
    [up] { " " }(in su)
   *[any] { "" }
}
mark-retake = ripresa d'arco{ $bow ->
    [down] { " " }(in giù)
    [up] { " " }(in su)
   *[any] { "" }
}
mark-as-it-comes = come viene
mark-lift = alzare l'arco
mark-in-bow = { $place ->
    [frog] al tallone
    [lower-half] metà inferiore
    [middle] metà dell'arco
    [upper-half] metà superiore
    [tip] alla punta
   *[whole] tutto l'arco
}
mark-text = «{ $text }»
mark-slur = legatura fino { $to-in }
mark-no-slur = nessuna legatura fino { $to-in }
mark-slur-moved = legatura fino { $end-in }, ora{ $moves-from ->
    [yes] { " " }da { $from }
   *[no] { "" }
}{ $moves-to ->
    [yes] { " " }fino { $to-in }
   *[no] { "" }
}
slur-from-to = legatura da { $from } fino { $to-in }
printed-slur = la legatura stampata
printed-slur-to = la legatura stampata fino { $to-in }
which-grace = acciaccatura { $number }
which-voice = voce { $voice }
which-pitch = su { $pitch }
