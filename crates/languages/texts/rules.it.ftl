# Spiegazioni delle regole in italiano.

accent-at-tip = Un accento dove l'arco non ha peso
    .finds =
        Un accento forte (sf, fz, l'accento verticale), dal mezzoforte in su, che nella migliore arcata del passo comincia
        vicino alla punta (C). Gli accenti sui tempi forti che capitano in su sono detti da `beat-on-up-bow` e qui non contano,
        e nemmeno quelli la cui arcata è scritta. Nemmeno quelli dopo una pausa in cui l'arco si può portare al tallone.
    .why =
        Al tallone l'arco sta sulla corda con il proprio peso; alla punta ne resta un sesto, e l'accento lo deve fare la mano
        da sola. Viene sottile, o in ritardo.
    .proposes =
        Il modo meno caro di prendere l'accento con l'altra arcata: cominciare altrimenti il passo, agganciare o alzare l'arco
        prima (scelta di chi suona), con il suo prezzo.
    .limits =
        Che certi accenti si vogliono leggeri. Si lasciano stare quelli lievi e l'accento orizzontale, che la sola velocità
        può fare: con quello, in nove quartetti c'erano due osservazioni ogni 100 battute per cui nessuno si sarebbe fermato;
        e anche il tremolo e le arcate più brevi di uno stacco, dove si resta a metà dell'arco. I punti dell'arco sono quelli
        del calcolo, a un decimo della sua lunghezza.

bar-comes-out-odd = Una battuta che non torna
    .finds =
        La stessa battuta, uguale per ritmo e legature, quattro o più volte di seguito con un numero dispari di arcate: come
        viene, comincia ogni volta con l'altra arcata, e anche nella migliore arcata possibile è così, oppure ogni volta bisogna
        agganciare o riprendere. Si lascia andare come viene ciò che non ha una forma da mostrare (cinque o più arcate uguali,
        tre legature uguali, una nota ripetuta per tutta la battuta), ciò che non vuole il peso sulla prima arcata (una sincope
        sopra la metà della battuta, un accento altrove), e le battute più corte di un secondo.
    .why =
        La figura suona in un modo in giù e in un altro in su; ciò che è scritto uguale esce, a turno, in due modi diversi.
    .proposes =
        Agganciare le ultime due arcate di ogni battuta (scelta di chi suona); legare due note, o separarne due (scelta di chi
        scrive).
    .limits =
        Se l'alternanza è voluta, come in un valzer veloce o in una volata. I segni che fissano le arcate si prendono per
        voluti.

beat-on-up-bow = Un tempo forte capita in su
    .finds =
        Un tempo con accento, accordo o crescita improvvisa che cade in su anche nel miglior piano possibile, senza che l'arcata
        in su sia scritta.
    .why =
        La mano ha il suo peso al tallone e lo dà scendendo. Un accento in su si suona, ma più leggero e più tardi di come lo
        sente chi scrive; la fila chiederà l'altra arcata.
    .proposes =
        Ciò che si dovrebbe fare altrimenti per avere il tempo in giù, con il suo prezzo: cominciare con l'altra arcata,
        agganciare o riprendere (scelta di chi suona). Nel file sono segni d'arco: sul tempo, e dove il braccio fa altrimenti
        un segno su entrambe le arcate di un aggancio o di una ripresa; nessuno dove a una ripresa mancherebbe il tempo. E
        dove un solo cambiamento delle legature nelle battute prima lo porta da sé, a minor prezzo, quel cambiamento (scelta
        di chi scrive): una legatura divisa, unita, cominciata o finita una nota prima o dopo, o un aggancio.
    .limits =
        Se si vuole un accento più leggero, o se la linea prima conta più del tempo. Gli accenti lievi, e quelli su un'arcata
        lunga, li fa la velocità dell'arco e si tralasciano; così ciò che si può avere in giù per un punto o meno, che è
        affare di chi suona, e ciò che segue un levare puntato, che si aggancia. Di accenti uno dopo l'altro ogni secondo è in
        su: si dice dove sta il primo. In una fila di arcate uguali il braccio fa gli accenti in entrambe le direzioni. Dove
        un'arcata in giù è stampata su una nota più debole subito dopo l'accento, anche l'accento è in giù: nessuno stampa ciò
        che l'alternanza non darebbe, se non per «di nuovo in giù».

bow-drift = Una figura che porta l'arco a un'estremità
    .finds =
        Una figura di arcate che torna almeno tre volte di seguito senza pause, con arcate in giù e in su così disuguali che,
        suonata come viene alla velocità che la dinamica richiede, porta l'arco oltre metà della sua lunghezza verso un lato.
    .why =
        Legature di tre note e una nota sola, ancora e ancora: ogni legatura consuma più arco di quanto la nota sola ne
        restituisca. Il braccio finisce a un capo dell'arco dove il passo non suona, oppure ogni nota sola spicca perché corre.
    .proposes =
        Agganciare la nota sola alla legatura, con un arresto (scelta di chi suona; nel file come un segno su entrambe dove la
        figura è di due arcate); dividere la legatura perché le due direzioni pesino uguale (scelta di chi scrive). Una figura
        i cui segni stampati agganciano due arcate si lascia stare.
    .limits =
        Se chi suona compensa le arcate suonando le legature vicino al ponticello con poco arco.

broken-slur = Una legatura con un capo solo
    .finds =
        Una legatura che comincia e non finisce, che finisce senza essere cominciata, o che sta su una nota sola. Una legatura
        sospesa su un ritornello o dentro un finale è completa per chi suona, e non conta. Una sola in una parte è una svista
        (A); molte si sono perse da un programma all'altro, e la parte va riguardata (B).
    .why =
        Chi suona vede una linea verso il nulla e non sa dove cambia l'arco. Questi capi restano per lo più da una correzione,
        e ogni passaggio da un programma all'altro li moltiplica.
    .proposes =
        Togliere il capo sciolto (scelta di chi scrive): l'arco allora cambia lì a ogni nota.
    .limits =
        Dove doveva stare l'altro capo.

chord-or-divisi = Un accordo per la fila: intero, o diviso?
    .finds =
        Nella parte di una fila, un accordo o due voci insieme dove non è stato detto né div. né non div. né unis.: segnalato
        una volta per parte, al primo, con il numero degli altri.
    .why =
        Metà dei leggii dividerà e l'altra metà suonerà corde doppie, e si sentiranno il doppio le note sbagliate; la prima
        domanda della prova è sempre questa.
    .proposes =
        Scrivere div. al primo accordo, o non div. (scelta di chi scrive).
    .limits =
        Gli accordi di tre e quattro corde li spezzano tutti, e si tralasciano; così gli accordi che nessuna mano può
        prendere, che dicono da sé che la parte si divide.

chords-too-close = Accordi in giù troppo vicini
    .finds =
        Due accordi di tre o quattro corde uno dopo l'altro, entrambi in giù per segni o parole, con meno tempo dal primo al
        secondo di quanto ne serva per spezzare il primo, lasciarlo parlare e riportare l'arco (B).
    .why =
        Un accordo si spezza dalle corde basse alle alte, e anche questo prende tempo prima che l'arco possa partire. Dove non
        c'è, al primo accordo mancano le note alte, oppure il secondo arriva tardi.
    .proposes =
        Togliere il secondo segno e alternare (scelta di chi suona). Scrivere meno note negli accordi, che due corde possano
        tenere, per mano di chi scrive.
    .limits =
        Quanto in fretta questo esecutore spezza un accordo. Gli accordi che nulla di stampato vuole in giù, dove vengono
        troppo fitti, si alternano e non sono detti. Dove anche a uno stacco fra note sole mancherebbe il tempo, lo dice
        `no-time-to-retake`.

countable-tremolo = Un tremolo così lento che si conta
    .finds =
        Tremolo scritto con tre o più tagli, a un tempo che dà così poche arcate al secondo che si conteranno come note (B), e
        nessuna parola che dica tremolo. Un'osservazione per parte. Dove un'altra fila ha nello stesso momento un tremolo di tre
        tagli, è un colore dell'accordo, e non si conta.
    .why =
        Tre tagli sono biscrome in un tempo lento e un fremito in uno veloce. Dove le biscrome sono lente, metà della fila le
        suona e l'altra metà freme.
    .proposes =
        Scrivere trem. dove comincia, se si vuole un fremito (scelta di chi scrive). Scrivere le note per esteso, o meno
        tagli, se si vogliono contate (scelta di chi scrive), per mano di chi scrive.
    .limits =
        Quale delle due si intende. Uno e due tagli si prendono per misurati, un tremolo che il file chiama non misurato per
        un fremito, e uno chiamato trem. una volta in una parte resta tale. Il tremolo fra due note si tralascia.

crossing-slurs = Legature che si incrociano
    .finds =
        Due legature di una voce, di cui la seconda comincia sotto la prima e finisce dopo.
    .why =
        L'arco non può essere in due arcate insieme: nessuno sa dire dove cambia. Ogni leggio decide da sé, e la fila chiede.
    .proposes =
        Finire la prima legatura dove comincia la seconda (scelta di chi scrive).
    .limits =
        Quale delle due era pensata come arcata. Una linea tratteggiata o punteggiata vale come legatura di frase e si
        tralascia.

dots-on-pizzicato = Punti su note pizzicate
    .finds =
        Punti, cunei o segni di spiccato su note pizzicate che si seguono senza pausa (D), un'osservazione per parte.
    .why =
        Una nota pizzicata è breve comunque. I punti rimasti da una versione con l'arco fanno cercare l'arco che forse è
        sfuggito.
    .proposes =
        Togliere i punti (scelta di chi scrive).
    .limits =
        Se chi scrive vuole le note subito smorzate, per cui ci sono parole («smorzare», «secco»). Su una nota o un accordo
        prima di una pausa un punto si legge così, e si tralascia: la corda risuonerebbe nel silenzio. Le note pizzicate con
        la sinistra o strappate contro la tastiera mentre l'arco suona si tralasciano.

dots-under-slur = Punti sotto legatura che si leggono in due modi
    .finds =
        Tre o più note di altezza diversa, con punti sotto una legatura, a una velocità a cui il segno vale per due colpi
        d'arco, e nessuna parola che dica quale (B): portato o staccato legato, dove le note non sono né lente né veloci;
        staccato legato o gettato, dove sono veloci e bastano per un solo getto. La frase dice qual è più probabile a questa
        velocità. Un'osservazione per parte e coppia di letture.
    .why =
        I tre colpi hanno lo stesso segno. In uno l'arco quasi non si ferma, nell'altro si ferma dopo ogni nota, nel terzo
        lascia la corda; una fila a cui non è stato detto ne suona due insieme.
    .proposes =
        Dirlo con una parola dove tali legature cominciano (scelta di chi scrive): «staccato» per l'arco fermato, «gettato»
        per il getto. Mettere trattini al posto dei punti dove si vuole un portato (scelta di chi scrive).
    .limits =
        Ciò che uno stile dà per inteso. Note lente, note ripetute (l'antico segno di un arco che pulsa), cunei, punti con
        trattini e gruppi di due si leggono in un modo solo e si lasciano stare; così ciò che segue una parola sul colpo
        d'arco fino al prossimo arco, pizz. o ord.

doubling-bowed-apart = Una linea raddoppiata con due arcate
    .finds =
        Due parti di archi che suonano la stessa linea, all'unisono o all'ottava, per due battute o più, in cui alcune note sono
        legate in una e non nell'altra, o hanno segni d'arco opposti. I contrabbassi possono cambiare più spesso di chi raddoppiano.
    .why =
        Chi suona la stessa linea si guarda l'arco. Dove quasi tutto è legato uguale e pochi punti no, in una delle due parti c'è
        una svista, e chiedere costa tempo.
    .proposes =
        Dare alla parte inferiore le legature di quella superiore (scelta di chi scrive).
    .limits =
        Quale delle due si intende. Un'arcata che comincia altrimenti perché una parte ha in mezzo una nota, per esempio un
        levare, che l'altra non ha, si tralascia. Dove un quinto delle arcate o più è diverso, chi scrive vuole due
        articolazioni di una linea, e non si dice nulla; né dove una delle due è pizzicata o ha un tremolo, le cui arcate non
        sono un legato. Arcate opposte senza segni non sono una differenza in violoncelli e contrabbassi, le cui arcate vanno
        come vengono.

doubling-marked-apart = Una linea raddoppiata con due sorte di segni
    .finds =
        Due parti di archi che suonano la stessa linea, all'unisono o all'ottava, per due battute o più, in cui punti,
        accenti, trattini o sforzati stanno su alcune note in una sola, benché in quel punto tutte e due ne abbiano; o
        in cui la dinamica, la sordina, il pizz. o il punto sulla corda sono diversi per la parte minore. Legature e
        segni d'arco li guarda un'altra regola.
    .why =
        Chi suona la stessa linea ascolta l'altro. Dove quasi tutto è segnato uguale e poche note no, una parte suona
        corto ciò che l'altra tiene, o piano ciò che l'altra ha forte, e qualcuno chiederà che cosa si vuole.
    .proposes =
        Dare alla parte inferiore i segni di quella superiore (scelta di chi scrive): nel file dove sono diversi solo segni su
        note.
    .limits =
        Quale delle due si intende. Dove la maggior parte dei segni sta in una parte sola, o una parte non ne ha nessuno di
        una specie, chi scrive vuole due articolazioni di una linea, o segna ciò che all'altra parte non occorre dire, e non
        si dice nulla. I segni su note pizzicate e tremoli si tralasciano.

effect-marked-again = Un effetto segnato ancora e ancora
    .finds =
        Una figura che torna cinque o più volte di seguito con gli stessi segni d'arco, alcuni dei quali fanno effetto: arcate
        in su verso una forte in giù, una ripresa, un'arcata contro l'alternanza. I segni dalla terza volta in poi sono di
        troppo (D).
    .why =
        Due volte insegnano la figura; chi suona la continua. Ciò che resta segnato sembra ogni volta un cambiamento, e affolla
        la parte.
    .proposes =
        Togliere i segni dalle volte successive e scrivere sim. dove cominciano (scelta di chi suona).
    .limits =
        Se il punto è così difficile che qualcuno vuole ogni arcata scritta, o se i segni vengono da un'edizione didattica.

ending-on-up-bow = Una frase finisce in su
    .finds =
        L'ultima nota o l'ultimo accordo di una frase, su un tempo, attaccati da soli, dal forte in su e non troppo brevi, che
        non crescono né si spengono, e che nel piano migliore finiscono in su. Una frase finisce prima di una lunga pausa, a una
        doppia stanghetta con un nuovo tempo che non comincia subito in giù, e alla fine; non dove un respiro prima della nota libera l'arco.
    .why =
        L'arcata in giù chiude: può risuonare e spegnersi. L'arcata in su finisce al tallone, dove il suono si ferma di colpo o
        si gonfia.
    .proposes =
        Ciò che si farebbe altrimenti per finire in giù, con il suo prezzo: cominciare con l'altra arcata, agganciare o
        riprendere (scelta di chi suona). Nel file sono segni d'arco, come per un accento in su. O il solo cambiamento delle
        legature prima che porta l'arcata in giù da sé a minor prezzo (scelta di chi scrive).
    .limits =
        Se il finale è pensato come una domanda. Un'ultima nota che cresce si tralascia: le si addice l'arcata in su. Così una
        dopo un levare puntato, che si aggancia, una più piano del forte, o che si spegne con un morendo, una forcella o dim.:
        lì l'arco lascia la corda comunque. Anche un'ultima legatura si tralascia: si sente come una linea, non da come è
        cominciata la sua arcata; e così ciò che un segno di ritornello rimanda indietro, perché la musica prosegue.

entry-without-dynamic = Un attacco senza dinamica
    .finds =
        Una parte al cui primo attacco non c'è nessuna dinamica, né sulla prima nota né prima. Se in tutta la partitura nessuna
        parte ne ha, lo dice una sola osservazione.
    .why =
        Chi suona non sa con che forza cominciare, e la dinamica decide anche quanto arco tocca a una nota. È la prima domanda
        di ogni prima prova.
    .proposes =
        Scrivere la dinamica che le altre parti hanno in quel momento, se sono d'accordo (scelta di chi scrive).
    .limits =
        La musica che per uso non porta dinamiche. Conta anche una dinamica che viene entro una semiminima dall'attacco: i
        programmi le mettono un po' in ritardo.

landmarks-too-far = Lettere di prova troppo lontane
    .finds =
        Nella musica per file: da una lettera all'altra, fino alla prima, o dall'ultima alla fine, più battute di quante se ne
        contino volentieri (C, un'osservazione per la partitura). Anche l'inizio di un movimento è un punto di riferimento.
        Nella musica da camera, dove si dice il numero della battuta, solo se si usano lettere e una parte conta frattanto più
        di otto battute di pausa. Battute senza numero (C).
    .why =
        «Quarantuno prima di D» costa un minuto ogni volta che lo si dice, e metà della fila attacca altrove.
    .proposes =
        Un posto per una lettera fra le due: una doppia stanghetta, un cambio di metro, tonalità o tempo, altrimenti la metà
        (scelta di chi scrive). Solo chi scrive sa dove la musica svolta.
    .limits =
        In musica da camera ci si regola con i numeri di battuta; se non hanno nessuna lettera, quelle partiture si lasciano
        stare.

legato-without-slurs = Legato senza legature
    .finds =
        La parola legato sopra otto note mosse o più, fino alla prossima parola sull'arcata, senza una legatura fra
        esse o poco prima. E un movimento in cui nessuna parte d'archi ha una legatura, un segno d'arco, un segno su
        una nota o una parola sull'arcata, benché una canti: sedici note o più, per lo più di grado, e lente
        abbastanza da legarsi (detto una volta).
    .why =
        Il legato degli archi si scrive con le legature: senza, ogni nota ha la sua arcata, e ogni leggio lega come
        vuole. Una musica senza legature pare non avere difetti di legature, e lascia il lavoro da fare.
    .proposes =
        Scrivere le legature, o dire che ogni nota ha la sua arcata (scelta di chi scrive): per mano di chi scrive.
    .limits =
        Se si vogliono arcate separate, come in molta musica antica: una parola o un segno ovunque nel movimento che parli del
        colpo d'arco vale come risposta. Le legature nelle quattro battute prima della parola contano come un modello che
        continua.

lift-in-soft-line = Un'alzata d'arco che buca una linea piano
    .finds =
        Due legature, piano o meno e senza pausa in mezzo, di cui la seconda nel
        piano migliore deve riprendere il verso della prima alzando l'arco: i segni prima e dopo non tornano
        alternando, o le legature non portano l'arcata che il punto vuole, e farne a meno costa molto di più. Un
        rilievo per parte.
    .why =
        In una linea piano e legata l'alzata si sente: il suono si ferma, e il seguente ricomincia. I più suonano un
        punto così come viene, o fanno finire altrove una legatura.
    .proposes =
        Ciò che si farebbe per proseguire senza alzare l'arco, con il suo prezzo, o togliere il segno che non riesce (scelta
        di chi suona); e il solo cambiamento delle legature prima che porta l'arcata da sé a minor prezzo (scelta di chi
        scrive).
    .limits =
        Se lì si vuole un respiro. Due segni uguali uno accanto all'altro ne chiedono uno e si tralasciano, come le giunture
        fra le frasi.

mark-cannot-be = Un segno d'arco impossibile
    .finds =
        Un segno d'arco su una nota dove non comincia nessuna arcata: dentro una legatura, su una nota legata dalla precedente,
        in pizzicato, su una pausa, su una nota che non si suona con l'arco. Anche due segni diversi all'inizio di un'arcata,
        se non stanno su una sola nota tenuta abbastanza da cambiare arcata. Sono i segni che `arcata marks` conta come contraddittori.
    .why =
        Il segno contraddice la legatura o lo stato accanto. Ciascuno crede a uno dei due.
    .proposes =
        Togliere il segno (sicura, dove null'altro comincia lì); di due segni, quello che non viene (scelta di chi suona).
    .limits =
        Se il segno è giusto e la legatura sbagliata. Più segni di una direzione su una legatura con punti spiegano soltanto
        l'arcata e si lasciano stare.

mark-on-every-note = Un segno d'arco quasi a ogni nota
    .finds =
        Battute di seguito in cui quasi ogni arcata porta il segno in giù o in su, per una dozzina di arcate e più (D). I segni
        che ripetono la direzione del precedente non contano: file di arcate in giù e coppie di arcate in su sono effetti. Un
        passo il cui primo battere segnato è in su va alla rovescia: i segni dicono che è voluto, e non si dice nulla.
    .why =
        Chi suona legge il segno come eccezione. Dove ogni nota ne ha uno, l'occhio smette di leggerli, quello che conta sfugge,
        e un'altra spalla non può segnare la parte senza prima cancellare.
    .proposes =
        Togliere i segni che verrebbero comunque (sicura), dove sono abbastanza. Altrimenti tenere solo quelli che dicono
        qualcosa (scelta di chi suona), che deve scegliere chi scrive.
    .limits =
        Se è uno studio o un'edizione didattica che vuole ogni arcata indicata.

mark-states-the-obvious = Un segno d'arco che dice l'ovvio
    .finds =
        Un'arcata in giù o in su scritta che si farebbe comunque: segue senza stacco, la dà l'alternanza, non vi comincia né
        finisce una fila di arcate uguali, non garantisce un'arcata insolita (un accento, una forcella o una fine contro la
        regola), non fa parte di un effetto (una fila di arcate in giù forti, arcate in su verso una forte in giù, le prime
        volte di una figura ripetuta), e senza di essa il miglior piano è lo stesso. Sono i segni che `arcata marks` conta come
        ovvi, tranne le arcate in su sul battere: vengono da sole, ma contro la regola, e il segno dice che è voluto.
    .why =
        Chi suona legge i segni come eccezioni. Dove ne porta uno ogni seconda nota, i pochi che contano affogano, e la spalla
        deve togliere gli altri prima di segnare la parte.
    .proposes =
        Togliere i segni (sicura: ogni arcata resta com'è).
    .limits =
        Se un'edizione didattica vuole ogni arcata segnata. I segni dopo pause, al principio e accanto a un altro segno della
        stessa direzione si lasciano stare: lì gli esecutori fanno davvero in modi diversi.

marks-contradict = Segni che si contraddicono
    .finds =
        Due segni su una nota che chiedono il contrario: trattino con cuneo, trattino con segno di spiccato, punto con cuneo.
        Due parole nello stesso punto che fanno lo stesso: alla corda con fuori corda, spiccato o gettato; legato con spiccato,
        martellato o staccato; al tallone con alla punta; sul ponticello con sul tasto; tutto in giù con tutto in su. La parola
        legato sopra note con punti e senza legatura (B).
    .why =
        Ciascuno ubbidisce a uno dei due, e la fila suona entrambi finché qualcuno chiede.
    .proposes =
        Togliere uno dei due (scelta di chi scrive).
    .limits =
        Quale dei due si intendeva. Un trattino con un punto è un segno a sé e si lascia stare; così i punti sotto una
        legatura con legato (pulsano), due parole in un solo testo, che spesso portano dall'una all'altra, e parole per due
        voci di un rigo.

missing-arco = Manca arco
    .finds =
        Dopo pizz., senza arco da allora: un tremolo d'arco o un segno d'arco (A), o una legatura su tre note o più:
        dopo una pausa in cui si potrebbe riprendere l'arco (B), o in una battuta seguente (C). Anche pizz. ridetto
        mentre vale ancora (C).
    .why =
        Questi segni hanno senso solo con l'arco. Metà della fila lascia il dito e metà riprende l'arco, e la prova si ferma.
    .proposes =
        Scrivere arco alla prima nota che mostra l'arco (scelta di chi scrive); togliere il secondo pizz. (scelta di chi
        scrive).
    .limits =
        Se lo sbaglio è il segno e non la parola mancante. Una legatura può ben stare su note pizzicate: lascia risuonare la
        corda, mostra una frase, o fa premere la seconda nota alla sinistra. Per questo si tralasciano le legature di due
        note, e tutte quelle di un passo che è legato fin dalla parola. Così le note segnate per la sinistra, e un pizz. fra
        parentesi, che solo ricorda.

mute-change-too-quick = Sordina messa o tolta troppo in fretta
    .finds =
        con sordino o senza sordino con meno di tre quarti della pausa che serve alla mano: 4,5 s per mettere la sordina, 2,5 s
        per toglierla (B); per chi suona da solo, senza alcuna pausa o con meno di un decimo (A).
    .why =
        La sordina va trovata, messa e premuta mentre l'altra mano tiene l'arco. Chi non ce la fa continua senza, o perde note.
    .proposes =
        Far cambiare uno dopo l'altro gli esecutori di ogni leggio (scelta di chi suona); dare una pausa più lunga (scelta di
        chi scrive).
    .limits =
        Le sordine che restano sullo strumento e scorrono: richiedono circa mezzo secondo, e chi scrive per quelle imposta
        così il profilo. Non importa se la parola sta prima o dopo nella pausa: conta tutta la pausa.

nested-slurs = Una legatura dentro l'altra
    .finds =
        Una legatura continua che ne contiene una o più brevi, continue, della stessa voce, ciascuna da una sua nota a un'altra.
        Le legature delle acciaccature sono ornamenti e non contano, e nemmeno una legatura su due note che condivide con una
        legatura di valore il capo di quella esterna, e nemmeno una che unisce due note della stessa altezza: sta per una legatura di
        valore.
    .why =
        Una delle due dev'essere di frase, ma sono uguali alla vista: solo provando si scopre quale è l'arco, e in una fila più
        d'uno prova.
    .proposes =
        Fare della legatura esterna una legatura tratteggiata, di frase (scelta di chi scrive).
    .limits =
        Se lo sbaglio è la linea interna. L'arco si calcola con le legature interne.

no-tempo = Nessun tempo
    .finds =
        Una partitura la cui prima nota non ha tempo: né un'indicazione di metronomo né una parola, lì o prima (B). Se solo la
        riproduzione ha un tempo che nessuno può leggere, C.
    .why =
        Quanto dura un'arcata, se una nota rimbalza, se una ripresa entra in una pausa: tutto ciò che fa l'arco dipende dal
        tempo. Ogni numero di questa revisione che ne dipende è allora un'ipotesi.
    .proposes =
        Scrivere un tempo (scelta di chi scrive); solo chi scrive sa quale.
    .limits =
        Il tempo. Dove non ne è scritto nessuno, quello supposto è indicato accanto a ogni numero che vi poggia.

no-time-to-retake = Manca il tempo per la ripresa d'arco
    .finds =
        Arcate scritte nella stessa direzione con una ripresa in mezzo, dove il silenzio e quanto la nota prima può cedere sono
        più brevi della ripresa. In una fila di tre o più ogni nota cede metà della durata; una coppia conta solo dove il
        miglior piano riprende e le due non si possono agganciare: chiedono più di un arco alle velocità della loro dinamica, e
        la seconda non è una nota sola lunga metà della prima. La ripresa è presa breve quanto può essere, da un'arcata che non
        ha usato più arco del necessario.
    .why =
        Per due arcate in giù di seguito l'arco deve lasciare la corda, tornare indietro e posarsi. Dove non c'è tempo, la prima
        nota è tagliata, o la seconda tarda, o la fila scivola indietro sulla corda e gratta.
    .proposes =
        Agganciare le due (scelta di chi suona): non c'è nulla da scrivere, perché due segni uguali chiedono un aggancio come
        una ripresa. Alternare (scelta di chi suona, dove è stampata una fila).
    .limits =
        Quanto in fretta questo esecutore alza l'arco: si suppongono 0,15 s sul posto e altri 0,3 s per un arco intero. Uno
        stacco che nulla di stampato chiede non è detto, anche se lo fa la migliore arcata: in nove quartetti dell'Ottocento e
        del Novecento c'erano 18 punti simili ogni 100 battute, e chi suona trova un'altra via. Né si prendono accenti di fila
        per arcate in giù di fila: si alternano se i segni non dicono altro.

note-outlasts-bow = Una nota più lunga di un'arcata
    .finds =
        Una nota, con le sue legature di valore, che dura 1,2 volte l'arcata più lenta alla sua dinamica o di più: B per chi
        suona da solo (C fino a 1,3 arcate, dove è solo tirata), D per una fila. I pedali non contano: una nota di due o più
        battute mentre altre parti si muovono. Non conta nemmeno una nota solo tirata, sotto una corona, che si tiene quanto si
        vuole, o con un diminuendo di un grado o più, dove la mano risparmia arco.
    .why =
        Chi suona da solo deve cambiare arco dentro la nota, e si può sentire dove. Una fila nasconde il cambio se ciascuno lo
        fa in un momento diverso; non occorre scriverlo, ma bisogna saperlo.
    .proposes =
        In una fila: gli esecutori cambiano in momenti diversi (scelta di chi suona). Questo non scrive nulla: lo fanno da sé,
        e una parola varrebbe finché un'altra non la toglie. Per uno solo: spezzare la nota dove il cambio si sente meno
        (scelta di chi scrive).
    .limits =
        Se una corona sarà tenuta più o meno del doppio della nota, e se un solista vuole che il cambio si senta.

on-or-off-string = Alla corda o fuori corda?
    .finds =
        Il primo punto di un brano in cui otto o più arcate singole uguali con punti vengono così veloci, e non più forti del
        forte, che si possono balzare oppure tenere brevi alla corda, quando in nessuna parte di archi una parola dice quale
        (C). Detto una volta per tutto il brano.
    .why =
        È la prima domanda della prima prova. I due modi suonano diversi, stanno in zone diverse dell'arco, e una fila non può
        farli insieme.
    .proposes =
        Scrivere spicc., o alla corda, sul primo di tali punti, in ogni parte che lo ha lì (scelta di chi scrive). Da lì gli
        esecutori lo seguono.
    .limits =
        Ciò che in uno stile va da sé, e ciò che deciderà la spalla. Un solista decide da solo e non gli si chiede. Quando nel
        pezzo c'è una parola in proposito, si ritiene che chi scrive ci abbia pensato.

out-of-range = Una nota fuori dallo strumento
    .finds =
        Note sotto la corda più bassa (A); sotto il Mi del contrabbasso, dove serve la quinta corda o l'estensione (C); oltre la
        fine della tastiera (B).
    .why =
        Non si può suonare, o lo può solo una parte della fila, e a qualcuno si chiederà che cosa suonare al suo posto.
    .proposes =
        Nulla: un'altra nota o un altro strumento sta a chi scrive sceglierli.
    .limits =
        Una corda accordata più bassa per il pezzo, e fin dove sale un solista. Gli armonici si tralasciano.

page-turn-too-quick = Una voltata senza pausa
    .finds =
        In una parte staccata (un file con una sola parte) con pagine fissate: una pagina da voltare che finisce, e la seguente
        che comincia, con meno pausa di quanta ne serva per voltare (3 s). Si voltano le pagine 1, 3, 5 …, secondo i numeri
        del file dove ci sono; le altre stanno aperte accanto alla seguente. Una nota a corda vuota lascia libera la sinistra e vale
        la metà; fra i movimenti ci si ferma, se non c'è scritto "attacca".
    .why =
        Uno per leggio smette per voltare, e metà della fila tace; chi suona da solo si ferma del tutto.
    .proposes =
        Finire la pagina a una pausa (scelta di chi scrive): `arcata parts` cerca i posti migliori.
    .limits =
        Come sono rilegate le pagine: un frontespizio rovescia tutto.

parallel-bowed-apart = La stessa battuta legata in altro modo
    .finds =
        Una battuta le cui note tornano identiche, tre o più volte con le stesse legature e una volta con altre, in una parte:
        si segnala quella diversa.
    .why =
        Ciò che torna ci si aspetta che torni uguale. Una sola legatura diversa è quasi sempre una svista della copia, e chi ha
        imparato la battuta la suona come prima o inciampa.
    .proposes =
        Dare alla battuta le legature delle altre (scelta di chi scrive).
    .limits =
        Se il cambiamento è voluto: l'ultima volta prima di qualcosa di nuovo è spesso legata altrimenti, e si tralascia.

part-differs-from-score = Una parte diversa dalla partitura
    .finds =
        Solo dove le parti sono date accanto alla partitura (`arcata review SCORE --beside PART...`): battute in cui una parte ha
        altre note, pause o legature di valore (A), oppure altre legature, segni d'arco, segni, dinamiche o parole (B), ogni tipo
        detto una volta per parte con i suoi punti; un altro numero di battute, e una parte che la partitura non ha (A).
    .why =
        Chi dirige dice quello che dice la partitura, e chi suona ha davanti altro. Ogni punto così ferma una prova, e nessuno in
        sala vede tutti e due.
    .proposes =
        Nulla: quale delle due sia giusta può dirlo solo chi scrive.
    .limits =
        Guide, diteggiature e cambi di pagina appartengono alla parte e non si guardano. Le battute si prendono in ordine:
        dove ne manca una nel mezzo, tutto ciò che segue è diverso, e per primo si dice il numero delle battute. Nell'esempio
        un rigo chiamato «beside» sta per il file della parte.

phrase-mark-as-slur = Un segno di frase disegnato come legatura
    .finds =
        Una legatura continua che più indizi mostrano essere di frase: dura molto più dell'arcata più lenta, contiene altre
        legature, pause o segni d'arco (indizi forti), ripete un'altezza senza punti, o copre esattamente due, quattro o otto
        battute (indizi deboli). Bastano due indizi forti, o uno forte e due deboli; si segnala anche un fiato che raddoppia la
        linea con la stessa legatura.
    .why =
        A chi suona un arco, una legatura dice «una sola arcata». Una linea di frase che sembra una legatura viene suonata così,
        o discussa; e ogni giudizio sull'arco che vi si appoggia è sbagliato.
    .proposes =
        Farne una legatura tratteggiata, di frase, che lascia libero l'arco (scelta di chi scrive).
    .limits =
        Ciò che si intendeva: gli indizi si pesano, non provano. Chi lo sa lo dice nel file accanto alla partitura
        (`arcata aside` con `--slur phrase` o `--slur bow`), e l'arco si calcola di conseguenza.

pizz-change-too-quick = Dall'arco al dito e ritorno troppo in fretta
    .finds =
        pizz. o arco con così poco tempo tra l'ultima nota di un modo e la prima dell'altro che la mano non riesce a girare
        l'arco (meno di due quinti di quanto il profilo le dà: 0,5 s per il pizzicato, 1 s per tornare all'arco).
    .why =
        Si perderà l'ultima nota o si entrerà tardi con la prima. Una fila rimedia facendo smettere prima metà dei suoi, e
        qualcuno deve ordinarlo.
    .proposes =
        Far cambiare i leggii in momenti diversi (scelta di chi suona); dare al cambio una pausa, o l'ultima nota pizzicata
        alla sinistra (scelta di chi scrive).
    .limits =
        Se l'arco resta sempre in mano, come fanno molti per una sola nota pizzicata: dopo una o due note pizzicate l'arco
        torna in fretta quanto il dito, e si tralasciano.

pizz-too-fast = Pizzicato troppo veloce
    .finds =
        Sei o più note pizzicate di seguito, più veloci di quanto pizzichi una fila: 6 al secondo su violino e viola, 5 sul
        violoncello, 4 sul contrabbasso.
    .why =
        Il dito si stanca e le note non sono più insieme; oltre la sua velocità chi suona semplifica il passo da sé.
    .proposes =
        Dividere le note fra gli esecutori di un leggio (scelta di chi scrive).
    .limits =
        Due dita a turno, alla maniera della chitarra, vanno più in fretta; così un solo esecutore che vi è abituato.

reentry-without-dynamic = Un attacco senza dinamica dopo una lunga pausa
    .finds =
        Una nota di una parte d'archi dopo otto battute intere di pausa o più nel suo movimento, senza dinamica,
        forcella o sforzato su di essa, poco dopo o nell'ultima battuta della pausa.
    .why =
        La dinamica dell'ultimo attacco sta forse una pagina indietro, e la musica è andata avanti senza. Chi ha
        contato tanto prende la forza da ciò che sente, e ognuno sente altro; una parte la ripete.
    .proposes =
        Scrivere la dinamica che le altre parti hanno in quel momento, se sono d'accordo (scelta di chi scrive).
    .limits =
        Se una guida dice quanto è forte. Quante battute contino lo dice chi suona. I primi attacchi spettano a
        `entry-without-dynamic`.

repeat-comes-back-reversed = Un ritornello torna con l'altra arcata
    .finds =
        Una sezione ripetuta, o a cui rimandano da capo o dal segno, la cui fine lascia chi suona, come viene, con l'arcata
        opposta a quella dell'inizio, e non dà tempo di riprendere prima del ritorno (30 ms in meno o più). Ogni finale che
        riporta indietro è guardato per sé; se sulla sua ultima nota c'è una corona o un respiro, di tempo ce n'è quanto si vuole.
    .why =
        La stessa stampa deve servire a tutte e due le volte. O si suona tutta la seconda volta con l'arco rovesciato, contro
        ogni segno della parte, o ci si inventa un'arcata alla giuntura, ogni leggio a modo suo.
    .proposes =
        Agganciare l'ultima nota prima del segno di ritornello alla precedente, con un segno su entrambe (scelta di chi
        suona), o segnare la prima arcata della sezione perché tutti ricomincino uguale (scelta di chi suona). La seconda
        resta alla matita: dice agli esecutori che cosa fare, e il tempo manca ancora.
    .limits =
        Se il ritornello si farà.

rushed-return = Una nota breve che deve ricuperare un'arcata lunga
    .finds =
        Una nota sola e breve che, nel miglior piano possibile, corre tanto più di quanto la sua dinamica voglia da spiccare di
        6 dB o più, perché l'arcata prima o dopo è lunga.
    .why =
        È l'accento non voluto delle partiture degli studenti: un levare piano fra due legature lunghe che abbaia. Nessuno lo
        vuole, e nessun segno di dinamica lo toglie.
    .proposes =
        Agganciare la nota breve all'arcata prima, con un segno su entrambe (scelta di chi suona); dividere la legatura lunga
        perché la nota breve non debba riportare tutto (scelta di chi scrive).
    .limits =
        Quanto l'esecutore ricupera allontanandosi dal ponticello. Alla nota non si imputa il cammino che può venire solo
        dalla griglia del calcolo. Con un punto, in forte o più, la nota è gettata via dalla corda e deve graffiare: si
        tralascia.

silent-downbeat = Un battere che nessuna fila di archi attacca
    .finds =
        Una battuta in cui comincia qualcosa di nuovo (tempo, metro, lettera, o l'entrata di più fiati dopo una pausa) e nessuna
        fila di archi comincia un'arcata sul battere, benché almeno una vi tenga una nota. A un nuovo tempo B, altrimenti C.
        Anche quattro o più battute di seguito il cui battere non lo attacca nessuno (C); una battuta in cui una fila, in pausa
        sul battere, entra su un altro tempo dà il polso e interrompe la serie. Lo stesso fa un'arcata che cade sullo stesso
        punto di ogni battuta, o di una su due: una sincope che continua si sente come tale. Una legatura che comincia meno di
        un tempo prima del battere e vi finisce vi conduce. Una cifra di metronomo che vale una sola battuta è un allargando in
        cifre, non un nuovo tempo; neppure quella a cui ha condotto un accelerando o un ritardando: dice fin dove si è arrivati.
    .why =
        Gli archi mostrano il tempo cambiando arco. Se ogni fila è legata oltre la stanghetta, il nuovo tempo non è di nessuno,
        e l'insieme scivola fino alla prossima arcata.
    .proposes =
        Far cambiare arco a una fila sul battere: spezzare lì la legatura, d'arco o di valore, nella parte in cui costa meno,
        quella d'arco prima di quella di valore, una parte interna prima di una esterna (scelta di chi scrive).
    .limits =
        Se l'effetto è voluto (un tempo che si insinua, un culmine senza battere), e che cosa darà il direttore. L'armonia non
        si legge.

slur-covers-beat = Una legatura sopra un tempo che vuole essere detto
    .finds =
        Una legatura, di portamento o di valore, che passa una stanghetta dove comincia un nuovo tempo o metro mentre un'altra
        parte vi comincia un'arcata; e uno sforzato o un accento verticale, su un tempo forte, sotto una legatura che continua:
        sempre che non stiano sulla prima nota di un'arcata.
    .why =
        La cosa più forte che un arco sa dire è il suo inizio. Dove la legatura continua, il nuovo tempo o l'accento restano un
        impulso a metà arcata, più debole di come gli altri cominciano.
    .proposes =
        Dividere lì la legatura (scelta di chi scrive); solo a parole dove ciò porta l'accento in su, o un altro guaio nelle
        battute intorno: allora bisogna ripensare anche le legature prima.
    .limits =
        Se l'impulso dentro l'arcata è l'effetto voluto: dove la stessa parte lo fa in più punti è detto una volta, con il
        loro numero. Una legatura che finisce sulla nota vi conduce, come una volata alla meta, e si tralascia. Così le
        legature sopra i tempi di una sincope lenta, le note con un soffio di silenzio prima, e gli abbellimenti.

slur-misses-tie = Una legatura che manca la fine di una legatura di valore
    .finds =
        Una legatura che finisce su una nota poi tenuta, o comincia su una nota tenuta da prima, dove nessun'altra comincia o
        finisce: la linea copre solo un pezzo della nota che suona. Un rilievo per parte, con tutti i suoi punti (D). Se in un
        movimento tre sono disegnate così è la maniera della pagina e non si dice nulla. Dove due legature si incontrano su una
        nota tenuta si chiede se è intesa un'arcata o due: si cambia sulla nota tenuta, e così fa il piano (D).
    .why =
        L'arco prende la nota intera; una linea tirata al capo sbagliato fa cercare un cambio d'arco che nessuno può fare. Si
        disegna fino all'ultima nota prolungata, e dalla prima.
    .proposes =
        Portare la fine della legatura all'ultima nota della legatura di valore, o il suo principio alla prima (scelta di chi
        scrive). Dove due legature si incontrano, una sola su entrambe se si intende un'arcata (scelta di chi scrive); un
        segno d'arco sulla nota tenuta ne dice due. In una catena di tali legature è detto solo a parole.
    .limits =
        Per l'arco non ne dipende nulla: il suono è lo stesso. Dove due legature si incontrano, non sa che cosa si intenda.

slur-outlasts-bow = Una legatura più lunga di un'arcata
    .finds =
        Note sotto una legatura che insieme durano più dell'arcata più lenta alla loro dinamica: almeno 1,1 volte, perché le
        arcate più lente sono cifre tonde. Fino a 1,3 arcate la legatura è tirata (C; nulla dove cala di un grado di dinamica o
        più, perché la mano risparmia arco), fino a 2,5 sarà cambiata da qualche parte (B), oltre non può essere stata pensata
        come una sola arcata (A).
    .why =
        Il suono si assottiglia, o ciascuno cambia dove gli finisce il braccio, e la fila ne discute in prova. A chi suona un
        arco una legatura dice «una sola arcata»: chi intende una frase la dica in un altro modo.
    .proposes =
        Dividere la legatura sui tempi più forti che lascino ogni pezzo dentro un'arcata (scelta di chi scrive). In una fila,
        anche far cambiare gli esecutori in momenti diversi (scelta di chi suona): non scrive nulla, perché lo fanno da sé, e
        una parola varrebbe finché un'altra non la toglie.
    .limits =
        Sala, arco ed esecutore; se una fila nasconderà i suoi cambi. Il tempo viene da quello scritto in partitura: se non ce
        n'è, quello supposto sta accanto al numero.

slur-over-change = Un cambio del modo di suonare sotto una legatura
    .finds =
        pizz., arco, con sordino o senza sordino dopo la prima nota di una legatura e non dopo l'ultima.
    .why =
        Una legatura è un'arcata. Non si può posare l'arco per un pizzicato, o mettere la sordina, senza lasciare la corda: o la
        legatura o la parola è fuori posto, e chi suona deve indovinare quale.
    .proposes =
        Finire la legatura prima di pizz., cominciarla ad arco, dividerla a un cambio di sordina (scelta di chi scrive).
    .limits =
        Se la parola sta solo troppo presto. Il pizzicato della sinistra sotto una legatura non è un tale cambio e si
        tralascia.

slur-over-rest = Una pausa sotto una legatura
    .finds =
        Una pausa della voce stessa tra la prima e l'ultima nota di una legatura.
    .why =
        Una legatura è un'arcata, una pausa toglie l'arco dalla corda o lo ferma. Se si alza e si continua nella stessa
        direzione, se ci si ferma sulla corda o si cambia, lo indovina ciascuno; come segno di frase, la linea non dice nulla
        dell'arco.
    .proposes =
        Finire la legatura prima della pausa e cominciarne un'altra dopo (scelta di chi scrive); farne una legatura
        tratteggiata, di frase (scelta di chi scrive).
    .limits =
        Se si vuole un arresto dentro un'arcata: accanto a una pausa breve (non più lunga della più lunga delle vicine) lo
        dice un punto, un cuneo o un trattino, e tali arcate agganciate si tralasciano.

slur-skips-string = Una corda saltata dentro una legatura
    .finds =
        Due note vicine sotto una legatura che nessuna diteggiatura mette sulla stessa corda o su corde vicine, dove la prima è
        troppo breve per passare una corda senza che si senta (B). Si diteggia tutta la legatura: posizioni, cambi per cui c'è
        tempo, corde vuote.
    .why =
        Passando, l'arco tocca la corda in mezzo, o va alzato a metà della legatura.
    .proposes =
        Dividere la legatura fra le due note, dove capita una volta; altrimenti legare solo ciò che sta su corde vicine
        (scelta di chi scrive).
    .limits =
        Quale diteggiatura prende chi suona. Tali salti sono possibili: di 490 in trenta pezzi suonati un quinto era in una
        sola arcata, perciò quelli lenti si lasciano stare.

slurred-stops = Corde doppie legate che non si possono unire
    .finds =
        Due corde doppie che si seguono sotto una legatura, dove nessuna diteggiatura raggiungibile in tempo lascia l'arco su una
        corda comune (B).
    .why =
        L'arco dovrebbe lasciare due corde e prenderne altre due: si può solo alzarlo, o strisciarlo su una corda che non c'entra.
    .proposes =
        Dividere la legatura fra le due (scelta di chi scrive).
    .limits =
        Quale diteggiatura prende chi suona; ne cerca una che le unisca e non la trova.

slurred-tremolo = Un tremolo legato che si legge in due modi
    .finds =
        Tremolo con uno o due tagli sotto una legatura: note ribattute abbreviate, due o più, o due note che si
        alternano con una legatura che va oltre il loro gruppo. Un rilievo per parte.
    .why =
        Uno o due tagli sono note contate. Una legatura sopra può dire che vanno tutte in un'arcata, o solo che sono
        una frase e ciascuna ha la sua; in una fila si suoneranno tutt'e due le cose, e si vedrà e si sentirà come un
        errore.
    .proposes =
        Scrivere per esteso il primo gruppo con le sue legature, e poi simile (scelta di chi scrive). Togliere le legature, se
        ogni nota deve avere la sua arcata (scelta di chi scrive). Entrambe per mano di chi scrive.
    .limits =
        Quale si intende. Tre tagli e più sono un fremito, in cui una legatura unisce soltanto la linea, e una legatura su due
        note che si alternano è il segno che vanno in una sola arcata: si tralasciano, e così ciò che spiega una parola sul
        colpo d'arco.

soft-entry-at-frog = Un attacco piano dove l'arco è pesante
    .finds =
        Un attacco dal silenzio, pianissimo o meno, con l'arcata scritta, che nella migliore arcata del passo comincia vicino al
        tallone (D).
    .why =
        Al tallone tutto il peso di arco e braccio sta sulla corda, e un pianissimo comincia con un colpo. Gli attacchi piano si
        mettono nella metà superiore, dove la bacchetta si porta da sé.
    .proposes =
        Il modo meno caro di prendere l'attacco con l'altra arcata (scelta di chi suona), con il suo prezzo.
    .limits =
        Che un esecutore esperto posa l'arco in silenzio ovunque. Si tralasciano gli attacchi con un accento, e quelli senza
        segno d'arco: dal silenzio si sceglie l'arcata da sé, e si comincia in su.

stands-contradict = Leggii della stessa fila con segni opposti
    .finds =
        Due voci di una parte, o due parti di una fila (primo e secondo leggio, a e b), che suonano lo stesso ritmo e portano
        segni d'arco opposti sulla stessa nota.
    .why =
        Gli archi della fila si incrociano in aria, e ciascuno cerca l'errore nella propria parte.
    .proposes =
        Togliere il segno nella voce inferiore (scelta di chi scrive).
    .limits =
        Se l'immagine speculare si vuole per il suo suono uguale: allora è segnata dappertutto, e dove più di metà dei segni
        sono opposti non si dice nulla.

state-never-ends = Un'indicazione (sordino, sul pont.) mai annullata, o data due volte
    .finds =
        con sordino, sul ponticello, sul tasto o col legno ridetto mentre vale, con musica in mezzo (C; B per la
        sordina); senza sordino ridetto quando la sordina è già tolta (B); unis. sopra due voci con note diverse (B);
        sul ponticello o sul tasto che non è ripreso fino alla fine del movimento, benché la musica vada avanti dopo
        un nuovo tempo, dopo pizz. o per sedici battute suonate (C).
    .why =
        Ogni stato va revocato da qualcuno. Dove è detto due volte manca una parola fra le due, e chi crede alla prima suona
        diverso da chi crede alla seconda.
    .proposes =
        Togliere la seconda parola (scelta di chi scrive). Scrivere ord. dove finisce un punto della corda, o sempre (scelta
        di chi scrive, per mano sua).
    .limits =
        Quale delle due parole è lo sbaglio. Una parola fra parentesi ricorda e si tralascia. Ogni movimento comincia
        ordinario: una sordina che resta fino alla fine di uno non vuole parole, e non è detta; né un punto della corda per un
        ultimo passo. Le divisioni si dicono spesso di nuovo a ogni punto, e si tralasciano.

stop-held-too-long = Tre o quattro corde da tenere insieme
    .finds =
        Un accordo su tre o quattro corde scritto più lungo di quanto le corde possano suonare insieme, sotto il forte, dove
        l'arco non può premerne tre (B); senza un segno che si debba spezzare.
    .why =
        Un arco sta su due corde. Tre suonano insieme un momento, e solo forte; poi ciascuno sceglie quali due tenere.
    .proposes =
        Scrivere quali due corde si tengono, le più basse come abbellimenti o l'accordo spezzato (scelta di chi scrive): solo
        a parole, perché cambia le note.
    .limits =
        Che l'accordo si intende spezzato e tutti lo sanno, come nella musica antica: lì mettere da parte la regola.

stop-unplayable = Note che nessuna mano ferma insieme
    .finds =
        Da due a quattro note sotto un gambo, o di due voci per una persona sola, che non stanno su corde vicine in una mano: in
        una parte solista (A); in una fila, che può dividere da sé (B). Anche cinque note e più.
    .why =
        Bisogna lasciare una nota o spezzare l'accordo, e ciascuno sceglie da sé; la fila chiederà chi suona che cosa.
    .proposes =
        In una fila, scrivere div. (scelta di chi scrive). In una parte di solista nulla: quale nota possa cadere sta a chi
        scrive dirlo.
    .limits =
        La grandezza della mano, che è un'impostazione del profilo, e una corda accordata altrimenti. Gli armonici si
        tralasciano, e così gli accordi che ne contengono. Che un accordo si possa prendere non lo fa risuonare.

stroke-out-of-speed = Un colpo d'arco a una velocità che non ha
    .finds =
        Quattro o più arcate singole uguali sotto una parola che dice come farle, chiaramente più veloci o più lente di quanto
        quel colpo possa (B): martellato troppo veloce perché l'arco si fermi e morda; spiccato, o fuori corda, più veloce di
        qualsiasi rimbalzo; détaché, o alla corda, più veloce di quanto lo strumento parli; sautillé troppo lento perché l'arco
        rimbalzi da solo.
    .why =
        Si deve rinunciare o alla parola o al tempo, e una fila rinuncia a tutti e due.
    .proposes =
        Per un sautillé troppo lento, scrivere invece spiccato; per un martellato troppo veloce, togliere la parola (scelta di
        chi scrive). Per ciò che nessun arco fa, meno arcate: legature a due (scelta di chi scrive).
    .limits =
        Dove fra spiccato e sautillé un arco comincia a rimbalzare da sé: spiccato si usa per entrambi, e così si prende. Uno
        spiccato lento è un'arcata alzata e un détaché lento è largo; nessuno dei due è detto. Una parola vale fino a un'altra
        sul colpo d'arco, arco, pizz. o ord. Si concede un decimo oltre il limite.

swell-against-bow = Una forcella contro l'arco
    .finds =
        Una lunga arcata, su quasi tutto l'arco, che cresce in giù o cala in su, di un grado di dinamica o più, nel miglior
        piano possibile. La forcella è dell'arcata: quella che comincia prima o continua dopo la fanno più arcate, e quella a
        cui risponde la contraria nella stessa arcata la fa la mano.
    .why =
        Il peso dell'arco sulla corda diminuisce dal tallone alla punta: da sola l'arcata in giù cala e quella in su cresce.
        Contro questo la mano deve premere, e una forcella lunga resta senza arco o senza suono.
    .proposes =
        Prendere l'arcata nell'altra direzione con un inizio, un aggancio o una ripresa (scelta di chi suona), con il suo
        prezzo, nel file come segni d'arco; cambiare arco dentro la forcella (scelta di chi scrive); o il solo cambiamento
        delle legature prima che porta l'altra arcata da sé a minor prezzo (scelta di chi scrive).
    .limits =
        Punto di contatto e pressione: i buoni esecutori fanno ogni forcella con ogni arcata, fino a un certo punto. Per
        questo le forcelle brevi si tralasciano.

thrown-count = Troppo per un solo getto
    .finds =
        Un gruppo di note sotto una legatura che una parola vuole gettate (gettato, jeté, ricochet), e che ha più note di quante
        ne stiano in un getto, o viene più lento o più veloce di quanto un arco gettato rimbalzi (B).
    .why =
        L'arco si lascia cadere una volta e conta da sé. Dopo pochi rimbalzi resta sulla corda; più lento di così ogni nota va
        posata, ed è un altro colpo e suona come tale.
    .proposes =
        Dividere un gruppo troppo lungo (scelta di chi scrive). Chiedere un altro colpo d'arco dove la velocità è sbagliata
        (scelta di chi scrive): solo chi scrive sa quale suono intendeva.
    .limits =
        Ciò che sa fare un solista: in pezzi di bravura si gettano gruppi di dieci e più. Un gruppo senza punti sotto la
        legatura non si guarda; una parola vale fino a un'altra sul colpo d'arco, arco, pizz. o ord.

tie-or-slur = Una legatura al posto di una di valore, o viceversa
    .finds =
        Una legatura di valore che porta a un'altra altezza (A); una legatura su due note vicine di una sola altezza e nient'altro,
        senza punti, trattini o accenti (B, tutte quelle di una parte insieme: molti intendono un impulso, e non lo dicono).
    .why =
        Sulla pagina le due linee sono uguali. Una legatura su un'altezza sola senza punti può essere una nota tenuta o due note
        pulsate in un'arcata; una legatura di valore verso un'altra altezza è certo una legatura. Ciascuno decide da sé, e la fila
        non è insieme.
    .proposes =
        Per una stessa altezza: unire le note con una legatura di valore, o mettere trattini su entrambe per una pulsazione in
        un'arcata (scelta di chi scrive). Per due altezze: scrivere una legatura (scelta di chi scrive).
    .limits =
        Quale delle due si intendeva. Le legature su una stessa altezza con un cambio di corda o di dito scritto sopra
        indicano quel cambio, e si tralasciano; così le note con un tremolo o un abbellimento, e gli abbellimenti stessi. Così
        due note disuguali che riempiono un tempo, o un valore semplice, dal suo principio: una nota tenuta si scriverebbe
        come una, e le due sono un ritmo.

winds-phrase-apart = Fiati che fraseggiano diversamente dagli archi che raddoppiano
    .finds =
        Una parte non ad arco e una parte d'archi su una stessa linea, all'unisono o all'ottava, quattro battute o
        più, legate uguale salvo una legatura (C) o poche (D): detto una volta per coppia di parti, e una volta dove
        più coppie differiscono nello stesso punto.
    .why =
        La legatura di un fiato è di lingua e di fiato, quella di un arco è un'arcata; non devono accordarsi, e spesso
        non possono. Dove quasi tutte lo fanno, con tutte e due si intende una frase, e una sola legatura diversa è
        per lo più una svista di copia.
    .proposes =
        Nulla: lo si dice perché lo si guardi.
    .limits =
        Quale delle due si intende. Dove un quinto delle legature o più è diverso, le due parti respirano e usano l'arco
        ciascuna a suo modo, e non si dice nulla; né dove gli archi pizzicano o hanno un tremolo, o una delle due parti non ha
        legature.
