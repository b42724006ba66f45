# Perché un comando non ha potuto fare ciò che gli si è chiesto, e ciò che dice accanto al risultato.

# Ciò che si è chiesto a un comando

failure-no-scores = Nessuna partitura trovata in { $where }. Indicare un file .musicxml, .xml o .mxl, o una cartella che ne contenga.
failure-of = { $of }: { $why }
failure-of-ended = { $of }: { $why }.
failure-in = { $of }, { $why }
failure-standard-input = l'ingresso standard
failure-profile = Profilo { $name }: { $why }
failure-profiles = Profili forniti: professional, amateur, student; oppure indicare un file di profilo.
failure-bars = --bars { $text }: { $why }. Scrivere un numero di battuta stampato, o due con un trattino, come 12 o 5-8.
failure-names-part-for-bars = indica { $part }, e qui servono solo battute; dirlo con --part
failure-bars-of-other-movement = è di un altro movimento da --movement { $asked }
failure-typed = { $option } "{ $text }": { $why }
failure-movement = --movement { $asked }: questo movimento non c'è. Il file ha: { $there }.
failure-part = Nessuna parte si chiama «{ $asked }». Le parti ad arco della partitura: { $known }.
failure-rule = Nessuna regola si chiama «{ $asked }». Le regole: { $known }.
failure-one-score = Si può scrivere una sola partitura, ma ne sono indicate { $count }. Indicarne una per volta.
failure-same-file = { $path } è letto da questo comando. Indicare un altro file: questo non viene sovrascritto.
failure-score-name = { $path }: il nome non dice che tipo di partitura dev'essere. Farlo finire in .musicxml o .xml per una partitura semplice, in .mxl per un pacchetto. Non è stato scritto nulla.
failure-two-in-one = Il rapporto e la partitura andrebbero entrambi in { $path }. Indicare due file con --out e --write.
failure-exists = { $path } c'è già. Non è stato scritto nulla; indicare un'altra cartella con --out, o scrivere --replace.
failure-exist = { $path } e altri { $more } ci sono già. Non è stato scritto nulla; indicare un'altra cartella con --out, o scrivere --replace.
failure-house = Profilo della casa { $name }: { $why }
failure-part-not-made = La parte { $part } non si è potuta fare: { $why }.
failure-marks = I segni non si sono potuti cambiare: { $why }
failure-not-a-review = c'è un file con quel nome che non è una revisione; indicarne un altro con --out
failure-workbench = Il banco di lavoro non si apre: { $why }.
failure-go-through = La pagina non si apre: { $why }
failure-no-browser = non si è potuto aprire un browser; aprire l'indirizzo qui sopra in uno di questo computer
open-by-another = Questa partitura è già aperta in un banco di lavoro; se ne mostra la pagina.
open-is-kept = Ciò che si fa è conservato man mano accanto alla partitura. Ctrl+C per finire.
open-is-kept-in = Ciò che si fa è conservato man mano in { $path }. Ctrl+C per finire.
class-hand-set-beside = { $journal } non si capisce dalla riga { $line } in poi: vale ciò che sta prima, e tutto è conservato in { $kept }.

# Figure

failure-picture = Nessuna figura: { $why }.
failure-picture-no-file = dire con --out FILE dove va
failure-picture-nothing = non c'è nulla da disegnare
failure-picture-no-bow = in queste battute di queste parti non si muove nessun arco

# Partiture scritte

score-alone = { $path } è la sola partitura, come dice il nome; il pacchetto da cui viene resta com'è.{ $also ->
    [yes] { " " }Il resto del pacchetto non è copiato ({ $left }); un nome in .mxl lo conserva.
   *[no] { "" }
}
score-package = { $path } è un nuovo pacchetto, come dice il nome, con dentro { $member }.
names-and-more = { $names } e altri { $more }
marks-taken-out = { $count ->
    [one] 1 segno tolto
   *[other] { $count } segni tolti
}, il resto scritto in { $path }
marks-written = { $count ->
    [one] 1 segno scritto
   *[other] { $count } segni scritti
} in { $path }

# Punti fissi e finali

failure-anchor = --anchor "{ $text }": { $why } Scrivere la parte se sono più d'una, battuta/tempo, e down, up, hook o retake, come "60/1 down" o "Viola 12/2½ up".
failure-ending = --end "{ $text }": { $why } Scrivere un numero di battuta stampato e down o up, come "8 down".
wish-of-several-movements = la { $bar } c'è nei movimenti { $movements }: scriverne uno prima, come "{ $such }"
wish-stretch = indica un tratto, e qui si fissa una sola arcata
wish-no-beat = non è indicato un tempo
wish-by-note = le arcate si indicano con i loro tempi, non con le note
wish-none-of = "{ $word }" non è né down né up né hook né retake
wish-says-nothing = non dice che cosa deve fare l'arcata
wish-no-line = non c'è nessun rigo per archi
wish-several-parts = sono mostrate più parti; indicarne una prima della battuta: { $names }
wish-no-such-line = nessun rigo si chiama «{ $part }»: { $names }
wish-no-stroke-in-bar = nella { $bar } non comincia nessuna arcata
wish-no-stroke-at = a { $place } non comincia nessuna arcata; lì ne cominciano ai tempi { $beats }
wish-bar-after = { $bar } dopo { $length }
ending-names-part = indica { $part }, e qui serve solo una battuta; dirlo con --part
ending-stretch = indica un tratto, e qui si tratta della fine di una battuta
ending-expects = servono una battuta e un'arcata
ending-neither = "{ $word }" non è né down né up

# Mettere da parte

failure-aside-file = { $of }, { $why } Correggerlo, o rivedere con --tell-all.
failure-aside = Non è stato messo da parte nulla: { $text }: { $why }
failure-aside-bars-of-several = Non è stato messo da parte nulla: { $movements } hanno { $many ->
    [yes] le battute
   *[no] la battuta
} { $bars }. Dire quale, ad esempio --movement { $such }.
failure-nothing-aside = Non è stato annotato nulla: lì in { $score } { $what ->
    [slur] non comincia nessuna legatura
   *[finding] non c'è nessuna osservazione
}.
aside-needs-reason = serve un motivo in poche parole, conservato con la voce
aside-other-beat = --bars indica un altro tempo
aside-whole-review = sarebbe tutta la revisione
aside-name-something = indicare una regola, una parte, delle battute o un movimento
aside-no-movement = non c'è un movimento «{ $asked }»
aside-other-movement = --movement indica un altro movimento
aside-stretch = un tratto si mette da parte per battute intere
aside-by-note = le osservazioni si indicano con i loro tempi, non con le note

# Abitudini

failure-no-habits = Non è stato appreso nulla, e non è stato scritto nulla: { $why }.
habits-no-marks = non c'è nessun segno d'arco da cui apprendere
habits-too-few = { $strokes ->
    [one] 1 arcata segnata è troppo poco
   *[other] { $strokes } arcate segnate sono troppo poche
}; altre { $more } arcate basterebbero. Giovano soprattutto pochi righi con ogni arcata segnata
habits-sparse = i segni ({ $strokes }) sono lontani fra loro, ognuno dove la spalla si scosta da ciò che viene da sé; di tali segni ne occorrono { $wanted }, altri { $more }. Oppure segnare ogni arcata di pochi righi: bastano { $least } arcate
habits-foreseen = di { $strokes } arcate in battute lasciate fuori, le penalità apprese dalle altre battute ne prevedono { $after }, lo stile da solo { $before }
habits-no-gain = ciò che qui è segnato si prevede altrettanto bene senza: { $foreseen }
habits-unsure = può essere un caso: { $foreseen }; altre { $more } arcate lo direbbero

# Fogli delle modifiche

failure-sheet = Nessun foglio delle modifiche è stato scritto: { $why }
failure-stands = --stands { $text }: { $why }. Scrivere le file con i loro numeri, come "Vn1=7, Vn2=6, Va=5".
sheet-of-other-music = la versione «{ $title }» è stata fatta per una musica diversa da quella di questa partitura; ciò che non trova una nota è elencato nella pagina dell'archivista. Prima riportare la versione su questa partitura.
sheet-pdf-on-terminal = un PDF non è testo per un terminale; indicare un file con --out
stands-no-equals = fra la fila e il numero manca =
stands-number = il numero dei leggii dev'essere un numero intero fino a { $limit }

# Classi

failure-key = La chiave { $of }, { $why }
failure-no-hand-ins = Non è stato consegnato nulla: { $path } non contiene file. Indicare la cartella o l'archivio .zip con le partiture.
class-done = { $read } di { $all } consegne hanno un foglio{ $kept ->
    [0] .
   *[other] ; { $kept } erano com'erano.
}
class-not-read = Non letto: { $file } ({ $pseudonym }): { $why }
class-new-file = File nuovo: { $file } ({ $pseudonym }); il suo foglio ha preso il posto di quello di prima.
class-alike-told = { $pairs ->
    [one] 1 coppia di consegne si somiglia
   *[other] { $pairs } coppie di consegne si somigliano
} oltre il compito; è una domanda, non una prova: { $path }
class-for-you = Per chi insegna: { $path }
class-shown = Da mostrare: { $path }{ $small ->
    [yes] { " " }(meno di dieci: nulla è scomposto)
   *[no] { "" }
}
