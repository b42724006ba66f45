# Fogli degli studenti e pagine della classe.

part-violin = Violino
part-viola = Viola
part-cello = Violoncello
part-bass = Contrabbasso
part-other-bowed = Strumento ad arco
part-other = Parte

sheet-due = consegna { $due }
sheet-works = Che cosa funziona
sheet-works-nothing = L'arco non viene ancora da sé per quattro battute di fila senza osservazioni; i passi qui sotto sono il punto da cui cominciare.
sheet-passages = Da guardare
sheet-passages-nothing = Non si è trovato nulla di ciò che riguarda il compito.
sheet-bar = Battuta { $bar }
sheet-bar-beat = Battuta { $bar }, tempo { $beat }
sheet-whole-score = tutte le parti
sheet-also = Lo stesso nelle battute { $bars }.
sheet-what = Che cosa succede
sheet-why = Perché conta
sheet-try = Da provare
sheet-hint = Può aiutare un cambiamento di questo tipo: { $kind }.
sheet-question = Per pensarci
sheet-own = Scrive chi insegna
sheet-now = Com'è scritto
sheet-repaired = Un modo di rimediare
sheet-no-picture = Queste battute non si possono incidere.
sheet-rest = Trovato inoltre
sheet-rest-more = e altri { $count } tipi di osservazione
sheet-given = Ciò che era dato
sheet-criteria = Che cosa chiede il compito
sheet-criterion-met = vedi { $rules }
sheet-criterion-free = nulla da osservare
sheet-criterion-hand = lo guarda chi insegna
sheet-calculated = Come si è calcolato
sheet-calculated-for = Le arcate sono calcolate per { $player } nello stile { $style }, da ciò che sta nella partitura.
sheet-lane = Sotto il rigo: l'arco, tallone in alto, punta in basso, grosso vicino al tallone.
sheet-advice = Il programma calcola e consiglia; decide chi suona. Non dà voti.
sheet-caution = Se un modo di suonare affatica mano, braccio o schiena, riposare, e in caso di dolore chiedere a un insegnante o a un medico.
sheet-player-professional = professionisti
sheet-player-amateur = dilettanti
sheet-player-student = studenti
sheet-player-own = gli esecutori che descrive chi ti insegna
sheet-since = Da { $task }
sheet-since-gone = non si trova più: { $rules }
sheet-since-new = nuovo: { $rules }
sheet-since-back = di nuovo: { $rules }

works-comes-out = Battute da { $from } a { $to }, { $part }: l'arco viene da sé. Tutti i { $downbeats } primi tempi su cui comincia un'arcata sono in giù, e nessuna delle { $strokes } arcate chiede una ripresa o va agganciata.
works-comes-out-plain = Battute da { $from } a { $to }, { $part }: l'arco viene da sé; nessuna delle { $strokes } arcate chiede una ripresa o va agganciata.
works-swell-up = Battuta { $bar }, { $part }: il crescendo sta su un'arcata in su, che cresce da sé.
works-swell-down = Battuta { $bar }, { $part }: il diminuendo sta su un'arcata in giù, che cala da sé.
works-long-slur = Battuta { $bar }, { $part }: la legatura su { $notes } note dura { $lasts } s, e a questa dinamica un'arcata dura fino a { $longest } s. Resta arco per suonarla bene.
works-mark = Battuta { $bars }, { $part }: l'unico segno d'arco dice qualcosa che non si farebbe da sé.
works-marks = Battute { $bars }, { $part }: ognuno dei { $count } segni d'arco dice qualcosa che non si farebbe da sé; nessuno è di troppo.

given-melody-stays = La melodia data sta immutata in { $part }.
given-melody-changed = La melodia data è cambiata in { $part }, battute { $bars }.
given-melody-missing = La melodia data non si trova in nessuna parte.
given-model-same = Legature e segni d'arco sono come in { $model }.
given-model-other = Accanto a { $model }: uguale in { $same } di { $all } battute con legature o segni d'arco; altrimenti nelle battute { $bars }. Un altro modo non è un errore.

lacks-slurs = Mancano le legature
    .finds =
        Il compito riguarda le legature, e una parte non ne ha, o non ne ha per otto battute o più di note mosse.
    .why =
        Senza legature ogni nota ha la sua arcata, e ogni leggio unirà le note a piacere. Una pagina senza legature non mostra errori nelle legature, perché lascia ad altri la scelta.
lacks-dynamics = Mancano le dinamiche
    .finds =
        Il compito chiede le dinamiche, e una parte non ne ha.
    .why =
        La velocità dell'arco e quanto dura dipendono da quanto forte suona. Senza dinamica nessuno può dire quanto stia in un'arcata.
lacks-hairpins = Mancano le forcelle
    .finds =
        Il compito chiede crescendo e diminuendo, e una parte non ha né forcelle né parole.
    .why =
        L'arco cresce da sé in su e cala in giù. Dove la musica deve farlo va scritto, prima che si possa scegliere un'arcata.
lacks-articulations = Mancano punti, lineette e accenti
    .finds =
        Il compito chiede segni sulle note, e una parte non ne ha.
    .why =
        Se una nota è corta, si appoggia o si stacca con forza decide in che punto dell'arco si suona. Senza segni ciascuno sceglie da solo.
lacks-bow-marks = Mancano i segni d'arco
    .finds =
        Il compito chiede arcate in giù e in su dove portano un effetto, e una parte non ne ha.
    .why =
        Quasi tutte le arcate vengono da sé; le poche altre vanno scritte, o l'effetto si perde.
lacks-tempo = Manca un tempo
    .finds =
        Il compito chiede un tempo, e la partitura non ne ha.
    .why =
        I secondi decidono quanta musica sta in un'arcata. Senza tempo ogni numero di questo foglio poggia su un'ipotesi.

question-family-length = Quanto arco resta qui all'ultima nota, e come suonerà?
question-family-slurs = Dove respirerebbe una voce in questo passo, e dove la legatura lascia cambiare l'arco?
question-family-beat = Quale nota di questa battuta deve sentirsi forte, e quale arcata vi cade?
question-family-direction = In che punto dell'arco dovrebbe stare questa nota, e come ci si arriva?
question-family-kinds = Va suonato alla corda o fuori corda, e che cosa nella pagina lo dice?
question-family-states = Che cosa devono fare le mani tra queste due note, e quanto tempo ci vuole?
question-family-hand = Su quali corde stanno queste note, e una mano può tenerle insieme?
question-family-between = Chi altro suona questo, e i due devono suonare come uno?
question-family-marks = Che cosa si farebbe qui se questo segno non ci fosse?
question-family-parts = Che cosa sa chi ha davanti soltanto questa parte?
question-lacks-slurs = Cantare il passo: quali note stanno in un respiro?
question-lacks-dynamics = Quanto è forte la prima nota, e che cosa cambierebbe se fosse il contrario?
question-lacks-hairpins = Dove questa linea si tende in avanti, e dove si distende?
question-lacks-articulations = Quali note vanno corte, quali si appoggiano, e quali non chiedono né l'uno né l'altro?
question-lacks-bow-marks = In quale punto solo l'arco andrebbe diversamente da come lo si sente?
question-lacks-tempo = Quanto deve durare una battuta? Contarla con l'orologio.

kind-split = una legatura in due
kind-join = due arcate in una
kind-shift = una legatura che comincia o finisce su un'altra nota
kind-hook = due arcate nella stessa direzione, fermate sulla corda
kind-retake = alzare l'arco e riprendere nella stessa direzione
kind-start = l'altra arcata all'inizio
kind-mark = un segno d'arco in più
kind-unmark = un segno d'arco in meno
kind-word = una parola a chi suona
kind-state = una dinamica, un tempo o un modo di suonare detto
kind-stagger = chi suona cambia arco in momenti diversi
kind-phrase = la legatura scritta come legatura di frase
kind-copy = le legature o i segni di un altro punto

class-title = La classe
class-stays = Questa pagina mostra singole consegne. Resta a chi insegna.
class-to-show = Questa pagina non nomina nessuna consegna; si può mostrare.
class-counts = Consegne lette: { $read }. Nulla qui è un voto, e l'ordine degli elenchi non dice nulla di nessuno.
class-small = Meno di { $least } consegne: qui non si dice chi ha incontrato che cosa.
class-rules = Che cosa si è trovato, e in quante consegne
class-of = { $met } di { $read }
class-examples = Esempi da guardare insieme
class-middles = Misure
class-middle = Centro della classe
class-half = Metà della classe
class-outliers = Lontano dagli altri
class-lowest = basso
class-highest = alto
class-table = Consegne e regole
class-table-how = Un numero dice in quanti punti. Le colonne sono regole incontrate da qualcuno; il nome sta sopra la colonna.
class-student = Consegna
class-none = Nulla da leggere
class-nothing-from = Nessun file: { $names }
class-sheet = foglio
class-replaced = è arrivato un nuovo file, finora { $count } volte; il foglio è dell'ultimo
class-course = Lungo i compiti
class-course-how = Per ogni regola la quota delle consegne che l'hanno incontrata, compito per compito.
class-since = Dal compito precedente
class-gone = sparito
class-new = nuovo
class-back = di nuovo

measure-bars = Battute
measure-notes = Note delle parti d'arco
measure-slurs = Legature su cento note
measure-bow-marks = Segni d'arco su cento note
measure-dynamics = Dinamiche e forcelle in dieci battute
measure-articulations = Segni su cento note
measure-longest-slur = Legatura più lunga
measure-downbeats-down = Primi tempi in giù

alike-title = Consegne che si somigliano
alike-no-proof = Questa è una domanda, e non prova nulla. La tenga per sé finché non ha chiesto.
alike-how = Si mostrano coppie le cui note concordano più di quanto spieghi il compito: la melodia data non conta, e neppure ciò che ha scritto un quarto della classe. Trasporre non lo nasconde, e neppure scambiare le parti, ripetere note o cambiarne i valori. Chi studia insieme, o sullo stesso libro, scrive in modo simile.
alike-share = Di cento sequenze di otto note della più piccola, { $share } stanno anche nell'altra; una nota ripetuta conta una volta.
class-not-met = Nessuno ha incontrato: { $rules }.

hand-title = Passare in rassegna la classe
hand-how = Ciò che si fa resta in questo browser, passo per passo, anche quando si chiude la pagina, e non va da nessuna parte. Lo si salva come file (w) e si ripete il comando con --hand FILE: i fogli si fanno da lì.
hand-how-beside = Ciò che si fa resta passo per passo in un file accanto al compito, e non va da nessuna parte. Si ripete il comando, e i fogli si fanno da lì.
hand-keys = Tasti: j, k consegna seguente e precedente · frecce: passo · x mostrare o togliere · s frase · 1–9 spuntare un criterio · n frase sul tutto · m valutazione propria · u annullare · o aprire il foglio · w salvare il file
hand-shown = mostrato
hand-not-shown = non mostrato
hand-sentence = Una frase su questo passo
hand-note = Una frase sul tutto
hand-marks = La propria valutazione
hand-kept = # passi in questo browser, # di essi non ancora in un file salvato
hand-not-kept = Questo browser non conserva nulla: salvare il file (w) prima di chiudere la pagina.
hand-beside = # passi nel file accanto al compito
hand-lost = Il programma è stato fermato: gli ultimi passi sono solo in questa pagina. Salvare il file (w), o riavviare il programma e continuare.
hand-save = salvato: class-hand.json
hand-of = (# di #)
hand-sheet-note = Scrive chi insegna
hand-sheet-marks = Annotato da chi insegna
