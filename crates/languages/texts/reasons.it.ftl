# Perché le versioni tralasciano qualcosa, e che cosa osservano: la fine di una frase che comincia con un punto della partitura.

as-it-is = { $text }

# Una nota che non c'è

why-no-part = la partitura non ha questa parte; ha { $parts }
why-no-bar = la partitura non ha questa battuta
why-several-bars = più battute portano questo numero; precisare quale con "bar_ordinal": { $ordinals }
why-other-bar = a questo posto ora c'è la { $bar }; riportare la versione sulla partitura riveduta
why-no-note = lì non comincia nessuna nota
why-rest = lì c'è una pausa
why-other-note = lì non comincia questa nota, ma { $pitches }
why-other-end = l'altro capo, { $at }: { $why }

# Altre versioni, e la versione stessa

why-score-titled = «{ $title }»
why-score-untitled = una partitura senza titolo
why-layer-of-other-score = la versione è stata fatta per { $layer }, questa è { $score }, e le note non sono le stesse; se è una revisione, prima riportare la versione
why-taken-off-above = è stampato in partitura, e una versione sovrapposta l'ha tolto; torna quando si toglie quella versione
why-two-owners = qui due persone vogliono cose diverse; prima tenerne una
why-slur-taken-off-above = una versione sovrapposta toglie questa legatura, e vale quella
why-slur-drawn-above = una versione sovrapposta mette una legatura fra queste note, e vale quella
why-other-bow-above = una versione sovrapposta chiede qui un'altra arcata, e vale quella
why-several-answers = la versione ne dice { $count } cose diverse; tenerne una
why-slur-said-otherwise = la versione dice un'altra cosa di una legatura fra le stesse due note ({ $other }); tenere una delle due

# Arcate

why-no-place = il modo in cui la nota è scritta nel file non lascia posto al segno
why-no-direction = né il segno né la nota precedente dicono in che direzione va l'arco; scrivere "bow": "down" o "up"
why-other-way-before = all'arcata precedente si chiede l'altra direzione, e non può proseguire in entrambe
why-no-address-before = l'arcata precedente comincia su una nota che non si può indicare da sola
why-no-stroke = su questa nota non comincia nessuna arcata: è sotto una legatura, è legata alla precedente o non è suonata con l'arco
why-two-directions = il segno e ciò che si chiede all'arcata precedente indicano due direzioni, e non può proseguire in entrambe

# Legature

why-slur-moves-nowhere = sposta la legatura dove già si trova
why-slur-backwards = la sua ultima nota non viene dopo la prima
why-slur-in-two-voices = i suoi capi sono in due voci, e la più tarda è scritta per prima: nessun programma li unirebbe
why-slur-printed-there = lì è già stampata una legatura; togliere piuttosto questa
why-slur-ends-not-in-file = la legatura stampata non si può togliere: i suoi due capi non sono entrambi nel file
why-no-slur-to-take-off = la partitura non ha una tale legatura da togliere
why-too-many-slurs = lì sono aperte più di sedici legature; non resta un numero per un'altra

# Arcate agganciate sotto una legatura

why-chord-bowed-twice = la versione dà un'arcata propria a un'altra nota di questo accordo; tenere una delle due
why-hooked-with-other-sign = l'arcata precedente è agganciata con l'altro segno; scriverle entrambe con punti o entrambe con trattini
why-hook-draws-slur-again = la versione toglie una legatura proprio fra queste note, e l'aggancio la rimetterebbe; lasciare la legatura e scrivere i punti o i trattini in partitura
why-no-address-under-slur = una nota sotto la sua legatura non si può indicare da sola
why-hook-on-grace-note = un abbellimento non ha un'arcata che una legatura con punti o trattini possa unire; scrivere l'aggancio con segni d'arco
why-hook-tied-over = su questa nota non comincia nessuna arcata: è legata alla precedente; agganciare la nota dopo la legatura di valore
why-hook-on-first-note = prima non viene nessuna nota che una legatura possa unirle; togliere l'aggancio
why-hook-after-gap = fra questa nota e la precedente c'è una pausa o un'altra voce, e una legatura nasconderebbe l'arresto; scrivere l'aggancio con segni d'arco
why-hook-over-grace-note = fra le due arcate c'è un abbellimento; scrivere l'aggancio con segni d'arco
why-hook-written-backwards = nel file la più tarda delle due note è scritta per prima; scrivere l'aggancio con segni d'arco
why-hook-under-slur = la legatura da { $from } a { $to } copre o tocca le sue note; prima togliere quella legatura, o scrivere l'aggancio con segni d'arco
why-hook-begins-as-it-comes = la versione lascia come viene la nota su cui comincia la sua legatura, dove starebbe la direzione; togliere uno dei due
why-hook-begins-unnamed = la nota su cui comincia la sua legatura prende la direzione dall'arcata precedente; indicare la direzione lì, non qui
why-hooks-both-ways = l'aggancio precedente va nell'altra direzione sotto la stessa legatura; indicare una sola direzione per entrambi

# Segni che restano in partitura

stays-unlike-one-mark = nel file non è scritto come un segno solo
stays-without-address = non è su una nota che si possa indicare
stays-slur-end-without-address = la legatura non finisce su una nota che si possa indicare
stays-slur-never-ends = qui comincia una legatura che non finisce; finirla, o toglierla
stays-slur-never-began = qui finisce una legatura che non è cominciata; cominciarla, o toglierla
stays-slur-middle = un elemento di legatura che non ne è né il principio né la fine
stays-slur-on-hidden-note = la fine di una legatura su una nota nascosta, che nessuna versione può indicare
stays-bow-mark-twice = la nota ha più volte lo stesso segno d'arco; togliere quelli di troppo
stays-words-twice = le stesse parole ci sono due volte

# Osservazioni

check-other-score = la versione è stata fatta per altre note: un'altra partitura, o questa prima di una revisione; riportarla
check-conflict = { $first } vuole { $one }, { $second } vuole { $other }; tenere uno dei due
check-mark = { $mark }: { $why }
check-twice = { $mark }: c'è due volte; tenerne una
check-doubt = { $mark }, con un dubbio: { $doubt }
check-on-rest = { $mark }, ma su una pausa; spostare il segno su una nota o toglierlo
check-several-answers = { $mark }, e in tutto { $count } risposte; tenerne una
check-tied-over = la nota è legata alla precedente: non vi comincia una nuova arcata
check-inside-slur = { $mark }, ma sotto una legatura, dove l'arco prosegue; togliere lì la legatura
check-nothing-before = { $mark }, ma prima non viene nessuna nota
check-slur-backwards = l'ultima nota della legatura non viene dopo la prima

# Riportare su una revisione

doubt-other-bars = la stessa musica sta anche in altre battute{ $count ->
    [0] { "" }
   *[other] : { $bars }
}
doubt-bar-rewritten = la battuta è in gran parte riscritta
doubt-other-pitch = la nota ha un'altra altezza
doubt-other-length = la nota ha un'altra durata
doubt-moved = la nota è in un altro punto della battuta
doubt-other-chord = insieme con essa ci sono altre note
doubt-written-out = il ritornello è scritto per esteso, questa è la seconda volta
doubtful-said = { $from } → { $to }, { $mark }: { $why }
lost-conflict-wants-nothing = non vuole niente da nessuna delle due parti
lost-other-end = l'altro capo della sua legatura: { $why }
lost-part = la partitura vecchia non ha questa parte
lost-in-old-score = nella partitura vecchia { $why }
lost-bar = la sua battuta non c'è nella partitura nuova
lost-note = la sua nota non c'è nella battuta nuova
lost-note-is-rest = la sua nota ora è una pausa

# Estendere

not-spread = { $from }, { $mark }: non a { $part }, { $why }
spread-other-passage = un altro passo propone un'altra cosa
spread-nothing-played = lì non si suona niente
spread-other-slurs = legature diverse
spread-other-rhythm = ritmo diverso
spread-no-stroke = su quella nota non comincia nessuna arcata
spread-said-otherwise = lì la versione dice un'altra cosa
spread-slur-end-lost = l'altro capo della sua legatura non ha lì un corrispondente
