# Ciò che i comandi dicono quando hanno finito: arcata aside, habits, layer.

# Mettere da parte

aside-done = { $count ->
    [one] 1 punto è messo
   *[other] { $count } punti sono messi
} da parte d'ora in poi, in { $file }
aside-slurs-done = D'ora in poi, per { $file }, { $told ->
    [phrase] { $count ->
        [one] 1 legatura vale come legatura di frase
       *[other] { $count } legature valgono come legature di frase
    }
   *[bow] { $count ->
        [one] 1 legatura vale come arcata
       *[other] { $count } legature valgono come arcate
    }
}

# Le abitudini di una spalla

habits-account = Apprese da { $strokes } arcate segnate, nello stile { $style }. Di { $tested } arcate in battute lasciate fuori queste penalità ne prevedono { $after }, lo stile da solo { $before }: { $gain } punti in più, errore standard { $error }, { $sure ->
    [sure] difficilmente un caso
    [likely] più dell'errore, ma non sicuro
   *[chance] può ben essere un caso
}.
habits-no-price-moved = Nessuna penalità si è spostata di un decimo.
habits-more-moved = { $count ->
    [one] Un'altra penalità si è spostata di meno.
   *[other] Altre { $count } penalità si sono spostate di meno.
}
habits-written = Scritte in { $file }. Per usarle nelle arcate: --habits.
habits-not-learned-from = Non apprese da:
habits-price = { $what } conta { $price } invece di { $before }: { $way ->
    [avoided] si evita di più
   *[minded] disturba di meno
}.
price-downbeat = Un'arcata in su sul battere, una nota sola,
price-downbeat-slurred = Un'arcata in su sul battere, note legate,
price-downbeat-bar = Un'arcata in su sul battere, lunga circa una battuta,
price-downbeat-bars = Un'arcata in su sul battere, lunga più battute,
price-downbeat-even = Un'arcata in su sul battere dove le battute vanno a due a due, in aggiunta,
price-mid-bar = Un'arcata in su a metà di una battuta di due o quattro tempi, una nota sola,
price-mid-bar-slurred = Un'arcata in su a metà di una battuta di due o quattro tempi, note legate,
price-half-bar = Una legatura cominciata in giù a metà di una battuta di due o quattro tempi
price-beat = Un'arcata in giù su un tempo debole
price-offbeat = Un'arcata in giù fra un tempo e l'altro
price-upbeat = Un'arcata in giù sull'ultima nota breve prima del battere
price-upbeat-slurred = Un'arcata in giù sull'ultima legatura breve prima del battere
price-upbeat-long = L'ultima arcata lunga prima del battere, in giù,
price-flow-slurred = Un'arcata in su su una legatura breve che porta al battere
price-flow-long = Un'arcata lunga in su che porta al battere
price-upbeat-mid-bar = Un'arcata in giù subito prima di metà battuta
price-entry = Un attacco con l'arcata contraria al battere
price-entry-elsewhere = Un attacco in su fuori dal battere
price-before-rest = L'ultima arcata prima di una pausa breve, in giù,
price-ending = L'ultima nota di una frase, in su,
price-hook = Un aggancio
price-hook-last-two = Agganciare le ultime due di più note uguali della battuta
price-hook-by-slur = Un aggancio accanto a una legatura, in aggiunta,
price-hook-slurs = Un aggancio fra due legature, in aggiunta,
price-retake = Una ripresa d'arco in una linea che continua a suonare
price-retake-apart = Una ripresa d'arco dove le arcate sono separate
price-retake-up = Una ripresa d'arco in su, in aggiunta,
price-reset = Proseguire nella stessa direzione oltre una pausa
price-swell = Una forcella contraria all'arco

# Versioni delle arcate

bowings-counted = { $count ->
    [one] 1 arcata
   *[other] { $count } arcate
}
layer-lifted = { $count ->
    [one] 1 segno ripreso
   *[other] { $count } segni ripresi
} in { $layer }; la partitura pulita è { $score }
layer-staying = Segni che restano in partitura:
layer-applied = { $layer }: { $written } scritte, { $standing } c'erano già
layer-overruled = Cedono a una versione sovrapposta:
layer-not-applied = Non scritte:
layer-wiped = { $count ->
    [one] 1 arcata tolta
   *[other] { $count } arcate tolte
}; la partitura è { $score }
layer-not-found = Non trovate in partitura:
layer-nothing = niente
layer-differences = { $count ->
    [one] 1 differenza
   *[other] { $count } differenze
}
layer-merged = { bowings-counted }, { $conflicts ->
    [one] 1 contrasto
   *[other] { $conflicts } contrasti
}, { $settled } decisi da una regola
layer-settled = Decisi da una regola:
layer-to-settle = Da decidere, restano entrambe:
layer-conflict = { $first } vuole { $one }, { $second } vuole { $other }
layer-checked = { bowings-counted }, { $remarks ->
    [one] 1 osservazione
   *[other] { $remarks } osservazioni
}
layer-proposed = Proposte:
layer-as = come { $from }, { $by ->
    [unison] all'unisono
    [octave] all'ottava
    [parallel] stessi intervalli
    [rhythm] stesso ritmo e stesse legature
   *[mostly] stesso ritmo e stesse legature salvo alcune note
}
layer-not-spread = Non estese:
layer-added = { $count ->
    [one] 1 arcata aggiunta
   *[other] { $count } arcate aggiunte
}; la versione è { $layer }
layer-carried = { $count ->
    [one] 1 arcata riportata
   *[other] { $count } arcate riportate
} con certezza, { $doubtful } con un dubbio, { $orphaned } senza la loro nota
layer-look-at = Da guardare:
layer-without-note = Restano nella versione senza una nota:
layer-entered = { $count ->
    [one] 1 arcata inserita
   *[other] { $count } arcate inserite
}; { $all } in { $layer }
layer-nothing-wrong = { bowings-counted }; nessun errore.
layer-troubles = { $count ->
    [one] 1 errore
   *[other] { $count } errori
} nel testo; non è stato scritto nulla.
layer-more-troubles = e altri { $count }; correggere prima questi.

# Una cartella di versioni

library-work = opera
library-layer = versione
library-owner = di chi
library-ensemble = complesso
library-date = data
library-entries = arcate
library-file = file
library-to-settle = { $count } da decidere
library-scores = partiture
library-untitled = senza titolo
library-not-listed = non elencati
library-nothing = Qui non ci sono partiture né versioni delle arcate.
