# Parti su carta: come finiscono le pagine, che cosa rimedierebbe, che cosa deve sapere chi suona, che cosa le accompagna.

# Fatto

part-made = { $name }: { pages-counted }, { $lines ->
    [one] 1 rigo
   *[other] { $lines } righi
} ({ $seconds } s)
part-kept = { $name }: come era già stata fatta, { pages-counted }
pages-counted = { $pages ->
    [one] 1 pagina
   *[other] { $pages } pagine
}
part-files = { $pdf } e .musicxml
part-sheets = { $count ->
    [one] 1 foglio
   *[other] { $count } fogli
}, { $width } x { $height } mm, fronte e retro, girati sul lato corto: piegare e cucire
part-glued = dopo questi, da incollare: { $pages }
part-entered = { $count ->
    [one] aggiunta 1 indicazione scritta una volta per tutti
   *[other] aggiunte { $count } indicazioni scritte una volta per tutti
}
part-cues = { $count ->
    [one] aggiunta 1 guida
   *[other] aggiunte { $count } guide
}
part-not-in-any = In nessuna parte: { $what }
part-changed = { $count ->
    [one] 1 battuta cambiata
   *[other] { $count } battute cambiate
} da allora, con un segno a margine: { $bars }
part-changed-and-more = { $bars } e altre { $more }
part-not-changed = da allora non è cambiato nulla
part-new = prima non c'era, quindi non è segnato nulla

# Fini di pagina

page-end-facing = la pagina { $page } finisce prima di { $bar }: niente voltata, la pagina seguente le sta di fronte
page-end-fold = la pagina { $page } finisce prima di { $bar }: niente voltata, la pagina { $page }a si apre verso l'esterno, incollata al suo bordo
page-end-turned = la pagina { $page } finisce prima di { $bar }: { turn-time } per voltare{ $returns ->
    [yes] ; si torna indietro oltre la voltata (ritornello, da capo o dal segno) con { $back } s di pausa
   *[no] { "" }
}
page-end-rushed = la pagina { $page } finisce prima di { $bar }: solo { turn-time } per voltare{ $returns ->
    [yes] ; si torna indietro oltre la voltata (ritornello, da capo o dal segno) con { $back } s di pausa
   *[no] { "" }
}; ne servono { $needed } s
turn-time = { $rest } s di pausa{ $strings ->
    [some] { " e" } { $open } s su corda vuota
   *[none] { "" }
}

# Voltate rapide

quick-turns = { $count ->
    [0] nessuna voltata troppo rapida
    [one] una voltata troppo rapida
   *[other] { $count } voltate troppo rapide
}
quick-turns-cost = { quick-turns }: è l'impaginazione meno cara, { $cost } punti; senza il costo delle voltate ne ha { $without }
quick-turns-dearer = un'impaginazione senza voltate rapide è permessa, ma più cara
quick-turns-least = { quick-turns } in ogni impaginazione che la casa permette
quick-turns-one-stays = nessuna impaginazione che la casa permette la evita
quick-turns-stay = nessuna impaginazione che la casa permette ne ha meno
quick-turns-mend = rimedierebbe: { $what ->
    [emptier] pagine meno piene, finite sulle pause a qualunque costo
    [side] la prima pagina dall'altro lato ([pages] first)
    [blank] pagine sinistre che possono restare bianche ([pages] blank = "left pages")
    [smaller] un pentagramma di 7,0 mm ([staff] smallest = 70)
    [folds] pagine che si aprono verso l'esterno ([pages] fold_outs = "for turns")
   *[all] tutto questo insieme: prima pagina da un lato o dall'altro, pagine sinistre bianche, pagine che si aprono, un pentagramma di 7,0 mm
}: { quick-turns } su { pages-counted }, { $cost } punti
quick-turns-partner = rimedierebbe: un compagno di leggio che volta, o i primi righi della pagina seguente copiati in piccolo su questa

# Che cosa deve sapere chi suona o chi prepara le parti

part-tacet = niente da suonare: tacet
part-notes-missing = { $count ->
    [one] 1 nota non è stampata, a { $bar }
   *[other] { $count } note non sono stampate, la prima a { $bar }
}: l'incisione le tralascia; confrontare con la partitura
part-no-cue = da { $first } a { $last }: { $count } battute di pausa senza guida: prima della fine nessuno suona una linea che si possa mostrare
part-rests-written-out = su più pentagrammi: le pause di più battute sono scritte battuta per battuta
part-smaller-staff = un pentagramma di { $height } mm per le voltate: la casa lo permette ([staff] smallest)
part-too-high = il rigo che comincia con { $bar } è più alto della pagina

# Che cosa accompagna le parti

handover-title = Che cosa c'è qui
handover-part = parte
handover-pages = pagine
handover-copies = copie
handover-printed = pagine da stampare
handover-paper = Carta: { $width } x { $height } mm.
handover-in-all = In tutto
handover-files = File
handover-is-part = parte da stampare
handover-is-part-file = la stessa parte in MusicXML
handover-is-booklet = la stessa parte in fogli da piegare e cucire
handover-is-score = la partitura con queste arcate
handover-is-layer = versione d'arcate
handover-is-changes = foglio delle modifiche: che cosa si scrive nelle parti già sui leggii
handover-is-contents = questo elenco, da stampare
handover-is-sums = somme di tutti i file (SHA-256), per vedere se sono arrivati interi
handover-look-at = Da guardare prima che partano
handover-made = Tutto ciò che va sui leggii è in { $folder } e, in un solo file, in { $archive }

# Profili della casa

house-good = { $name }: tutto ciò che questo profilo chiede si può avere insieme.
house-lines = Si chiedono { $count } righi { $page ->
    [first] sulla prima pagina ([pages] systems_first)
   *[other] per pagina ([pages] systems)
}; con pentagrammi di { $staff } mm e { $apart } mm di bianco fra l'uno e l'altro ce ne stanno { $fit }.
house-smallest = Il pentagramma più piccolo è più alto del pentagramma stesso: così nessuno si rimpicciolisce mai ([staff] smallest).
house-cue = Una guida di { $bars } battute non entra in una pausa di { $rest } ([rests] cue, cue_bars).
house-indent = { $indent } mm di bianco davanti al primo rigo lasciano { $left } mm alla musica ([movements] indent).
house-margin = Un margine di { $margin } mm: quasi tutte le stampanti si fermano a 5 mm dal bordo ([paper]).

# Voltate e righi chiesti

page-left-blank = Questa pagina resta bianca per la voltata.
part-breaks = { $count ->
    [one] 1 pagina o rigo comincia
   *[other] { $count } pagine o righi cominciano
} dove lo chiede { $file }
break-moved = { break-begins } a { $bar } comincia ora a { $now }: la musica intorno si è spostata lì
break-first = { break-begins } a { $bar } non c'è: la sua musica è ora l'inizio della parte; resta nel file
break-other-music = { break-begins } a { $bar } non c'è: la musica intorno non è più nella parte; resta nel file
break-no-part = { break-begins } a { $bar } non c'è: nessuna parte si chiama { $part }; resta nel file
break-begins = { $begins ->
    [page] la nuova pagina chiesta
   *[line] il nuovo rigo chiesto
}
