# Ciò che dicono in inglese i crate sottostanti.

# Dove nel testo

told-why-line-column = riga { $line }, colonna { $column }: { $why }
told-why-line = riga { $line }: { $why }
told-why-note = nota: { $why }
told-why-of = { $of }: { $why }

# Punti scritti

told-why-expected-meant = atteso: { $expected }; trovato: { $found }. Forse «{ $meant }»?
told-why-expected-place = atteso: { $expected }; trovato: { $found }. Un punto si scrive 12, 12/3½, «battuta 12, tempo 3½», 41-42 o II: 12.
told-why-expected = atteso: { $expected }; trovato: { $found }.
told-expected-bar = una battuta come 37, 37/3 o 41-42
told-expected-beat = un tempo come 3, 3½, 3.5, 7/2 o 3+1/3
told-expected-note-value = un valore di nota come 1/4 o 3/8
told-expected-fraction = una frazione minore di 1, come 3+1/3
told-expected-end-of-stretch = l'ultima battuta o l'ultimo tempo del tratto
told-expected-number-of-bar = il numero di una battuta
told-expected-slash = una barra obliqua fra battuta e tempo
told-expected-which-bar = quale delle battute con questo numero, come (2)
told-expected-bracket = una parentesi chiusa
told-expected-number-of-note = il numero di una nota, da 1
told-expected-nothing-more = nient'altro
told-expected-bar-before-beat = una battuta prima del tempo
told-expected-place = un punto della partitura
told-expected-place-alone = un punto senza commenti
told-expected-section = il nome di una fila
told-expected-mark = un segno come giù, su, agganciare, ripresa, alzare, al tallone, legatura, come viene o "testo"
told-expected-another-mark = un altro segno o un separatore
told-expected-name-of-voice = il nome della voce, come 2
told-expected-pitch = un'altezza come F#5
told-expected-pitch-or-flat = un'altezza come F#5 o Bb3
told-expected-voice = una voce di questa parte
told-found-nothing = niente
told-found-end = la fine della riga
told-found-quotation-mark = virgolette che non si chiudono
told-found-page = un testo lungo quanto una pagina
told-found-text = «{ $text }»
told-why-no-movement = non c'è un movimento «{ $asked }»; il file ha { $there }
told-why-no-bar-there = { $whose } non ha la { $bar }; { $last }
told-why-no-bar-there-ended = { $whose } non ha la { $bar }; { $last }.
told-why-second-bar-first = la seconda battuta viene prima della prima
told-whose-score = la partitura
told-last-none = non ha battute
told-last-one = l'ultima è { $label }
told-last-several = le ultime sono { $labels }
told-bar-said = battuta { $label }
told-beat-said = tempo { $at }
told-beats-one = 1 tempo
told-beats-many = { $at } tempi
told-place-beat = battuta { $label }, tempo { $at } in { $part }
told-place-after = battuta { $label }, dopo { $at } in { $part }
told-place-note = battuta { $label }, nota { $at } in { $part }
told-place-first = battuta { $label }, prima nota in { $part }
told-place-typed = { $at } in { $part }

# Scrittura abbreviata

told-why-text-too-large = più di { $count } caratteri; dividerlo in più testi o righe.
told-why-text-of-too-many-notes = un testo può parlare in tutto di { $count } note, e fin qui sono di più. Inserirlo in più testi, o indicare tratti più brevi.
told-why-no-section-yet = ci vuole prima una fila, come "Vn1" o "tutti": finora non ne è indicata nessuna.
told-why-unknown-section-meant = «{ $name }» non è una fila di questa partitura. Forse «{ $meant }»? Le file: { $known }.
told-why-unknown-section = «{ $name }» non è una fila di questa partitura. Le file: { $known }.
told-why-several-sections = ci vuole una fila sola, ma «{ $name }» può essere { $first } o { $second }. Aggiungere il numero, o scrivere il plurale per tutte.
told-why-no-bar-before = prima del tempo ci vuole una battuta, come 37/3: finora non ne è indicata nessuna.
told-why-unknown-movement = «{ $name }» non è un movimento di questa partitura. Ha { $known }.
told-why-bar-of-several-movements = ci vuole una battuta sola, ma la { $bar } c'è nei movimenti { $movements }. Indicarne uno prima, su una riga a sé: { $first }:
told-why-several-bars-numbered = ci vuole una battuta sola, ma { $count } battute hanno il numero { $label }. Scrivere { $one } per la prima, { $two } per la seconda.
told-why-unknown-beat = nella { $bar } non c'è il { $beat }. La battuta ha { $beats }.
told-why-bar-without-notes = ci vuole una nota, ma la battuta non ne ha: { $place }.
told-why-no-note-begins = { $place }: lì non comincia nessuna nota. Le note cominciano ai tempi { $there }.
told-why-rest-there = ci vuole una nota, e c'è una pausa: { $place }.
told-why-one-of-the-notes = ci vuole una delle note di { $place }: { $there }.
told-why-stretch-backwards = un tratto va in avanti, ma la { $bar-to } viene prima della { $bar-from }.
told-why-stretch-backwards-meant = un tratto va in avanti, ma la { $bar-to } viene prima della { $bar-from }. Per tempi di una stessa battuta scrivere { $meant }.
told-why-too-few-strokes = ci vogliono { $count } arcate, e ce ne sono { $number }: { $place }.
told-why-no-such-slur = su questo tratto ci vuole una legatura stampata, e non c'è: { $place }.
told-why-no-such-slur-but = su questo tratto ci vuole una legatura stampata, e non c'è: { $place }. Legature lì: { $there }.
told-why-inside-slur = qui non comincia nessuna arcata: { $place } è dentro una legatura che comincia a { $place-begins }. Segnare quella nota, o togliere la legatura.
told-why-said-otherwise = ogni nota ha una sola arcata, ma la riga { $line } dice { $mark } per { $place }.
told-mark-down = in giù
told-mark-up = in su
told-mark-hooked = agganciata
told-mark-retake = ripresa d'arco
told-mark-as-it-comes = come viene
told-mark-lift = alzare l'arco
told-why-strokes-in-a-row = più arcate di seguito non possono portare altri segni; dare un posto proprio a quella che ne ha uno, come 37/3 giù ripresa.
told-why-anchor-without-direction = un punto fisso vuole una direzione; scrivere anchor 60/1 giù o su.
told-why-dots-or-dashes = un aggancio si scrive con punti o con trattini, uno dei due.
told-why-dots-without-hook = punti e trattini dicono come si scrive un aggancio; scrivere prima l'aggancio, come in 41/3 agganciare punti.
told-why-hook-or-retake = una nota è agganciata, ripresa o come viene, una sola delle tre; dare a ciascuna il suo posto.
told-why-too-many-strokes-in-a-row = troppe arcate di seguito; ricominciare con una battuta.
told-why-two-bows-at-most = una nota ha al massimo due arcate; dare alla successiva il suo posto.
told-why-as-it-comes-no-direction = ciò che va come viene non ha una direzione propria.
told-why-one-way = un aggancio o una ripresa va in una sola direzione; dare all'arcata successiva il suo posto.
told-why-slur-needs-ends = una legatura vuole la prima e l'ultima nota; scrivere 41/1-41/3 legatura.

# File

told-why-no-file = non c'è questo file; controllare il nome e la cartella
told-why-may-not-read = questo file non si può leggere; controllarne i permessi
told-why-folder-not-file = questa è una cartella, non un file
told-why-file-too-large = il file supera il limite di { $limit } byte
told-why-input-too-large = più del limite di { $limit } byte
told-why-larger-than-limit = supera il limite di { $limit } byte
told-why-not-utf8 = non è testo in UTF-8
told-why-line-not-utf8 = la riga { $line } non è testo in UTF-8; salvare il testo in UTF-8 e riprovare
told-why-changed = qualcun altro l'ha cambiato dopo che è stato letto
told-why-locked = un altro programma lo sta scrivendo
told-why-not-written = { $path } non si è potuto scrivere: { $why }.
told-why-not-written-but-there = { $path } non si è potuto scrivere: { $why }. Ciò che c'era prima c'è ancora.
told-why-file-changed = { $path } è stato cambiato da qualcun altro dopo la lettura. Non è stato sovrascritto nulla; ripetere.
told-why-file-locked = { $path }: un altro programma lo sta scrivendo da dieci secondi. Non è stato scritto nulla; riprovare.
told-why-disk-full = il disco è pieno; fare spazio e ripetere
told-why-may-not-write = in questa cartella non si può scrivere; controllarne i permessi, o indicare un altro posto
told-why-read-only = il disco è di sola lettura; indicare un altro posto
told-why-no-folder = non c'è questa cartella; crearla, o indicarne un'altra
told-why-link-in-circle = è un collegamento che gira in tondo; indicare il file stesso
told-why-not-read-back = ciò che è stato scritto non si è potuto rileggere, e prima non c'era nulla
told-why-not-read-back-kept = ciò che è stato scritto non si è potuto rileggere; ciò che c'era prima è conservato in { $backup } ({ $why })
told-why-thousand-backups = accanto ci sono mille copie di riserva; guardarle e toglierle
told-why-no-file-to-keep = non c'è un file da conservare
told-why-no-such-folder = non c'è questa cartella; controllare il nome
told-why-file-not-folder = questo è un file, non una cartella; indicare la cartella che lo contiene
told-why-too-many-files = più di { $count } partiture e versioni; elencare a una a una le cartelle contenute
told-why-name-not-utf8 = il suo nome non è in UTF-8; rinominarlo
told-why-link-not-followed = un collegamento, non seguito: potrebbe portare fuori dalla cartella; mettere qui il file stesso
told-why-too-deep = a più di { $count } cartelle di profondità; elencarla da sola
told-why-index = l'indice della cartella non si può usare ({ $detail }); ripetere con --rebuild

# XML

told-why-xml-empty = il file è vuoto; esportare di nuovo la partitura
told-why-xml-not = questo non è un file XML; scegliere un file MusicXML (.musicxml, .xml o .mxl)
told-why-xml-encoding = la codifica «{ $name }» non si legge; salvare in UTF-8 (si leggono anche UTF-16, ISO-8859-1 e windows-1252)
told-why-xml-contradicted = il file si dice { $claimed }, ma { $bytes }; correggere la codifica nella prima riga, o salvare il file in UTF-8
told-claimed-utf8 = UTF-8 (come vale se la prima riga non indica una codifica)
told-bytes-not-utf8 = il byte { $byte } qui non è UTF-8
told-bytes-not = il byte { $byte } qui non lo è
told-bytes-half = qui c'è mezzo carattere ({ $byte })
told-bytes-are = i suoi byte sono { $encoding }
told-bytes-single = i suoi caratteri sono di un byte solo
told-bytes-order-mark = comincia con il segno d'ordine dei byte di UTF-8
told-why-xml-control = il carattere di controllo { $code } è vietato in XML; togliere il carattere, o esportare di nuovo il file
told-why-xml-unfinished = il file finisce dentro { $what }, che comincia qui; il file è stato troncato: copiarlo o esportarlo di nuovo
told-why-xml-ends-inside = il file finisce dentro <{ $name }>, aperto alla riga { $opened }; il file è stato troncato: copiarlo o esportarlo di nuovo
told-why-xml-mismatched = </{ $name }> sta dove deve stare </{ $open }>, perché <{ $open }> è stato aperto alla riga { $opened }; chiudere <{ $open }>, o esportare di nuovo il file
told-why-xml-stray = </{ $name }> chiude un elemento che non è aperto; togliere </{ $name }>, o esportare di nuovo il file
told-why-xml-no-root = il file non contiene elementi; esportare di nuovo la partitura
told-why-xml-second-root = <{ $name }> sta dopo la fine dell'elemento più esterno; tenere una sola partitura in un file
told-why-xml-text-outside = c'è testo fuori dell'elemento più esterno; togliere ciò che ne sta fuori
told-why-xml-misplaced = questo non può stare qui ({ $what }); metterlo al suo posto, o esportare di nuovo il file
told-what-comment = un commento
told-what-cdata = una sezione CDATA
told-what-doctype = la dichiarazione del tipo di documento
told-what-instruction = un'istruzione di elaborazione
told-what-declaration = la dichiarazione XML
told-what-tag = un tag
told-what-character = un carattere
told-why-xml-not-a-name = «{ $name }» non è un nome; scrivere < come &lt; se è testo
told-why-xml-attribute-twice = l'attributo { $name } è dato due volte; togliere uno dei due
told-why-xml-attribute = { $fault }; scrivere name="value"
told-fault-blank = manca uno spazio prima di un attributo
told-fault-name = questo non è il nome di un attributo
told-fault-value = un attributo è senza valore
told-fault-quotes = il valore di un attributo è senza virgolette
told-fault-less-than = il valore di un attributo contiene un <
told-fault-closing-quote = al valore di un attributo mancano le virgolette finali
told-why-xml-ampersand = & comincia un rimando che non finisce; scrivere & come &amp;
told-why-xml-reference = { $reference } non sta per nessun carattere di XML; scrivere il carattere stesso
told-why-xml-markup = questo non è markup di XML; scrivere < come &lt; se è testo
told-why-xml-bytes = il documento è più lungo di { $limit } byte; se il file è davvero una partitura, alzare il limite
told-why-xml-depth = gli elementi sono annidati più a fondo di { $limit }; se il file è davvero una partitura, alzare il limite
told-why-xml-attributes = un elemento ha più di { $limit } attributi; se il file è davvero una partitura, alzare il limite
told-why-xml-elements = ci sono più di { $limit } elementi; se il file è davvero una partitura, alzare il limite
told-why-xml-names = ci sono più di { $limit } nomi di elementi estranei a MusicXML; se il file è davvero una partitura, alzare il limite
told-why-xml-entity = &{ $name }; resta come è scritto, senza essere sciolto; scrivere il carattere stesso
told-why-xml-entity-often = &{ $name }; resta come è scritto, senza essere sciolto (c'è { $count } volte nel file); scrivere il carattere stesso

# Pacchetti

told-why-in-package = { $member } nel pacchetto: { $why }
told-why-no-package = questo non è un pacchetto (.mxl); scegliere un file .mxl, .musicxml o .xml
told-why-package-too-long = il pacchetto è più lungo di { $limit } byte; se è davvero una partitura, alzare il limite
told-why-package-damaged = il pacchetto è danneggiato ({ $damage }); copiarlo o esportarlo di nuovo
told-damage-same-name = due membri hanno lo stesso nome
told-why-package-members = il pacchetto ha { $count } membri, più del limite di { $limit }; se è davvero una partitura, alzare il limite
told-why-member-too-large = { $member } nel pacchetto, aperto, supera il limite di { $limit } byte; se è davvero una partitura, alzare il limite
told-why-member-too-dense = { $member } nel pacchetto, aperto, è più di { $limit } volte più grande, che è il limite; se è davvero una partitura, alzare il limite
told-why-member-locked = { $member } nel pacchetto è chiuso da una password; salvarlo senza
told-why-member-packing = { $member } nel pacchetto è compresso con il metodo { $method }, che non si legge; esportare di nuovo la partitura, o aprire il pacchetto e il file .musicxml che contiene
told-why-package-without-score = il pacchetto non contiene una partitura; esportarla di nuovo, o aprire il pacchetto e il file .musicxml che contiene
told-why-package-several = il pacchetto non ha META-INF/container.xml e contiene più partiture ({ $names }); aprirlo e sceglierne una
told-why-container-bad = META-INF/container.xml nel pacchetto non si può leggere: { $why }
told-why-container-names-none = META-INF/container.xml nel pacchetto non indica una partitura; esportarla di nuovo, o aprire il pacchetto e il file .musicxml che contiene
told-why-container-nowhere = META-INF/container.xml indica «{ $path }», che non è nel pacchetto; esportare di nuovo la partitura, o aprire il pacchetto e il file .musicxml che contiene
told-why-container-nowhere-but = META-INF/container.xml indica «{ $path }», che non è nel pacchetto (che contiene { $scores }); esportare di nuovo la partitura, o aprire il pacchetto e il file .musicxml che contiene
told-why-container-outside = META-INF/container.xml indica «{ $path }», che è fuori dal pacchetto; esportare di nuovo la partitura, o aprire il pacchetto e il file .musicxml che contiene
told-why-container-missing = il pacchetto non ha META-INF/container.xml; si è letta { $score }, la sola partitura che contiene
told-why-container-type = META-INF/container.xml chiama la partitura «{ $type }» e non «{ $usual }»; è stata letta lo stesso

# Dove una partitura si contraddice

told-why-not-a-score = È XML, ma non una partitura: comincia con <{ $name }>.
told-why-part-not-listed = La parte «{ $name }» non è nell'elenco delle parti, perciò non ha un nome.
told-why-part-without-music = La parte «{ $name }» è nell'elenco delle parti, ma non ha musica.
told-why-divisions = «{ $text }» divisioni per semiminima non hanno senso; vale il numero di prima.
told-why-time-signature = Un'indicazione di tempo non si può leggere; resta in vigore quella di prima.
told-why-bar-too-long = Le note della battuta fanno in tutto { $told } di semibreve; l'indicazione di tempo ne vuole { $asked }.
told-why-bar-too-short = Le note della battuta fanno in tutto solo { $told } di semibreve; l'indicazione di tempo ne vuole { $asked }.
told-why-repeat-in-repeat = Qui comincia un ritornello prima che ne sia finito un altro.
told-why-ending-in-ending = Qui comincia un finale di ritornello prima che ne sia finito un altro.
told-why-ending-never-began = Qui finisce un finale di ritornello che non è cominciato.
told-why-repeat-never-ends = Qui comincia un ritornello che non finisce.
told-why-ending-never-ends = Qui comincia un finale di ritornello che non finisce.
told-why-metronome = Un'indicazione di metronomo non si può leggere; si tralascia.
told-why-no-pitch = Una nota non ha un'altezza leggibile; conta solo nel tempo.
told-why-duration-missing-value = La durata di una nota manca; si prende il suo valore.
told-why-duration-missing-none = La durata di una nota manca; non occupa tempo.
told-why-duration-senseless-value = La durata di una nota non ha senso; si prende il suo valore.
told-why-duration-senseless-none = La durata di una nota non ha senso; non occupa tempo.
told-why-duration-drawn = Una nota è scritta come { $drawn } di semibreve, ma dura { $told }; vale la durata.
told-why-backup = Un <backup> torna indietro di { $by } di semibreve di troppo, prima dell'inizio della battuta; ciò che segue si legge dall'inizio della battuta.
told-why-no-duration = Un <{ $name }> non ha una durata, o ne ha una che non ha senso; si tralascia.
told-why-duration-before-divisions = Una durata viene prima che un <divisions> dica che cosa conta; si prende dal primo valore di nota, o come semiminima.
told-why-slur-begins-again = La legatura numero { $number } ricomincia prima di essere finita.
told-why-slur-never-ends-in-file = Qui comincia una legatura che non finisce.
told-why-slur-never-began-in-file = Qui finisce una legatura che non è cominciata.
told-why-slurs-cross = Una legatura comincia sotto un'altra e finisce dopo: le due si incrociano.
told-why-tempo = Un tempo di «{ $text }» semiminime al minuto non ha senso; si tralascia.
told-why-hairpin-never-ends = Qui comincia una forcella che non finisce.
told-why-hairpin-never-began = Qui finisce una forcella che non è cominciata.
told-why-dashes-never-end = Qui comincia una linea tratteggiata che non finisce.
told-why-dashes-never-began = Qui finisce una linea tratteggiata che non è cominciata.
told-why-tie-without-note = Qui comincia una legatura di valore, ma non segue una nota della stessa altezza.
told-why-tie-from-nothing = Qui finisce una legatura di valore, ma prima non viene una nota della stessa altezza che leghi a questa.
told-damage-no-zip = non è un archivio Zip

# File delle versioni

told-why-layer-too-large = il file supera i { $limit } byte; nessuna versione delle arcate è così grande
told-why-not-a-layer = questa non è una versione delle arcate: una versione è JSON con "format": "arcata-layer"
told-why-layer-cut-short = il file finisce a metà, come se la scrittura si fosse interrotta; cercare accanto la copia di riserva, o prenderlo dal controllo di versione
told-why-layer-later-version = la versione delle arcate è scritta nella versione { $version } del formato; questo programma legge la versione { $number }. Prendere un programma più recente, o far scrivere le arcate nella versione { $number }
told-why-layer-unsound = la versione non si può leggere: { $why }
told-why-layer-entry = voce { $number } ({ $at }): { $why }
told-why-layer-version = "version" manca o non è una versione che ci sia; scrivere { $number }
told-why-layer-offset = "offset": "{ $text }" non è una durata; scrivere le semibrevi come frazione, ad esempio 3/8
told-why-layer-pitch = "pitch": "{ $text }" non è un'altezza; scriverne una come F#5, Bb3 o x
told-why-layer-counts = "bar_ordinal", "grace" e "copy" contano da 1
told-why-layer-sign = "sign" dice come si scrive un aggancio; toglierlo, o fare del segno un aggancio
told-why-layer-slur-end = una legatura vuole "to", la sua ultima nota
told-why-layer-in-bow = un segno "in bow" vuole "place"; scrivere frog, lower-half, middle, upper-half, tip o whole
told-why-layer-text = un segno "text" vuole "text", le parole da stampare
told-why-layer-slur-moved = una legatura spostata vuole "new_from" o "new_to"

# Profili

told-why-no-player = non c'è un esecutore «{ $name }»: { $known }
told-why-no-such-profile = non c'è questo profilo; si può scrivere { $names }
told-why-text-expected = ci vuole un testo fra virgolette
told-why-no-such-style = non c'è questo stile; si può scrivere { $names }
told-why-no-such-section = non c'è questa sezione; si può scrivere { $names }
told-why-section-expected = ci vuole una sezione: [{ $name }]
told-why-no-such-setting = non c'è questa impostazione; si può scrivere { $names }
told-why-no-such-setting-alone = non c'è questa impostazione
told-why-unit = l'unità è { $unit }
told-why-allowed = si può scrivere { $names }
told-why-word-expected = ci vuole una parola fra virgolette
told-why-numbers-expected = ci vogliono { $count } numeri interi in ordine crescente, da { $low } a { $high } ({ $unit })
told-why-number-expected = ci vuole un numero intero da { $low } a { $high } ({ $unit })

# File di impostazioni

told-why-format = il formato non è "{ $format }"
told-why-format-task = il formato non è "{ $format }": questo non è un compito
told-why-format-key = il formato non è "{ $format }": questa non è la chiave di una classe; indicarne un'altra con --key
told-why-format-habits = il formato non è "{ $format }": questo non è un file di arcata habits learn
told-why-format-hand = il formato non è "{ $format }": indicare il file dato dalla pagina
told-why-version = la versione { $version } non è nota, solo la versione { $number }
told-why-version-habits = la versione { $version } non è nota, solo la versione { $number }: apprendere di nuovo
told-why-line-missing = manca una riga con { $name }
told-why-missing-field = manca `{ $name }`
told-why-unknown-field = `{ $name }` non esiste; si può scrivere { $names }
told-why-unknown-field-quoted = "{ $name }" non esiste; si può scrivere { $names }
told-why-unknown-rule = nessuna regola si chiama "{ $name }": "arcata rules" le elenca
told-why-unknown-rule-meant = nessuna regola si chiama "{ $name }": forse "{ $meant }"
told-why-unknown-rule-aside = nessuna regola si chiama "{ $name }"; `arcata rules` le elenca
told-why-no-style = non c'è uno stile "{ $name }": { $known }

# Abitudini

told-why-no-price = non c'è una penalità "{ $name }" che si apprenda
told-why-price-out-of-measure = { $name } = { $price } è fuori misura: lo stile { $style } ha { $by-style }, e si legge da { $low } a { $high }
told-why-habits-of-other-style = queste abitudini sono state apprese nello stile { $style }, e qui si vuole { $other }: scrivere --style { $style }, o apprenderle in { $other }
told-why-too-many-strokes-to-learn = un numero, e non grande
told-why-search-found-nothing = la ricerca non ha trovato nulla

# Osservazioni messe da parte

told-why-aside-all-bars = ciò che si mette da parte vale per tutte le battute di un numero; tralasciare (1), (2)
told-why-aside-everything = la voce non indica regola, parte, battute o movimento: metterebbe da parte tutto
told-why-aside-slur = una legatura è = "phrase" o "bow"
told-why-aside-bars = le battute sono solo numeri stampati; la parte, il movimento e il tempo hanno righe proprie
told-why-aside-no-reason = la voce non ha un motivo: dire perché, per chi la leggerà l'anno prossimo

# Classi

told-why-key-empty = un nome o uno pseudonimo è vuoto
told-why-key-twice = "{ $name }" c'è due volte: toglierne uno
told-why-key-shared = lo pseudonimo "{ $name }" è di due studenti: cambiarne uno
told-why-hand-journal = questo non è un "{ $journal }" della versione { $version }
told-why-hand-act = questa non è un'azione; togliere la riga
told-why-task-profile = il file di profilo { $name } non è stato letto
told-why-task-title = il titolo è vuoto: dare un nome al compito
told-why-task-unknown = { $setting } "{ $given }" non si conosce: scrivere { $names }
told-why-task-range = { $setting } è { $given }: scrivere da { $low } a { $high }
told-setting-severity = la gravità
told-setting-style = lo stile
told-setting-tempo = il tempo, in semiminime al minuto,
told-setting-source = la fonte
told-setting-expected = ciò che ci si aspetta,
told-setting-repairs = ciò che si fa delle correzioni,
told-setting-paper = la carta
told-why-task-language = non è indicata una lingua: scriverne una, come ["en"]
told-why-task-parts = le parti si contano da 1
told-why-task-player = l'esecutore "{ $name }" non si conosce: scrivere { $names }, o un file di profilo il cui nome finisca in { $ending }
told-why-task-passages = { $number } passi non stanno in una pagina: scrivere da 0 a { $limit }
told-why-given-without-notes = { "[" }given]: la melodia { $name } non ha note
told-why-neither-folder-nor-zip = non è né una cartella né un archivio .zip ({ $detail })
told-why-archive-too-many = in questo archivio ci sono più di { $count } file
told-why-no-random = il sistema non dà numeri casuali: { $why }
told-why-program-failed = il programma non ce l'ha fatta
told-why-program-failed-here = il programma non ce l'ha fatta con questo file; segnalarlo, per favore
told-why-no-bowed-part = nessuna sua parte è per uno strumento ad arco
told-why-too-long = ci è voluto più di { $count } secondi; --limit concede un tempo più lungo
told-why-too-much-memory = ci sono voluti più di { $count } MB di memoria; --memory ne concede di più
told-why-order = un ordine che non è tale

# Incisione

told-why-engraver-fonts = l'incisione non può scrivere i suoi caratteri, 12 MB, nella cartella dei file temporanei; fare spazio lì o indicarne un'altra con TMPDIR
told-why-engraver-refused = { $bars }: non si può incidere; il resto della partitura sì
told-why-engraver-slow = { $bars }: non inciso entro { $count } s; il resto della partitura sì
told-bars-one = battuta { $number } (contata dall'inizio del file)
told-bars-many = battute da { $from } a { $to } (contate dall'inizio del file)
told-why-engraver-no-start = il processo dell'incisione non parte; controllare che il programma possa avviare programmi qui
told-why-engraved-unreadable = la musica incisa non si può leggere: { $why }
told-why-nothing-to-draw = non c'è nulla da disegnare
told-why-no-size = non ha una dimensione
told-why-no-drawing = non ha un disegno
told-why-no-staff = non ha un rigo
told-why-picture-not-made = la figura non si può fare: { $why }
told-why-too-many-dots = { $width } per { $height } punti sono troppi; chiedere meno battute o parti, o meno punti per pollice
told-why-pdf-refuses = il PDF non accetta il disegno
told-why-pdf-not-made = il PDF non si è potuto fare: { $why }; scrivere invece .html o .txt
told-why-font = un carattere non si può leggere
told-why-paper-size = la carta non ha una dimensione
told-why-sheet-words-only = Cambiano { $number } battute: più di { $limit }, perciò il foglio ha solo parole.
told-why-engraver-refuses-part = la parte non si può incidere
told-why-engraver-gave-up = la parte non è stata incisa entro { $count } s ed è stata lasciata

# The workbench

told-why-no-part-called = nessuna parte si chiama «{ $name }»
told-why-no-place-in-bar = «{ $text }» non è un punto della battuta
told-why-no-such-part = non c'è una parte così
told-why-no-such-bar = non c'è una battuta così
told-why-no-such-bars = non ci sono battute così
told-why-no-small-picture = queste battute non ci sono, o sono troppe per una figura piccola
told-why-no-such-line = non c'è un rigo così
told-why-no-rule-so = nessuna regola si chiama così
told-why-no-rule-called = nessuna regola si chiama «{ $name }»
told-why-carried-by-file = una versione delle arcate si riporta quando il file cambia, non prima
told-why-no-such-stroke = non c'è un'arcata così
told-why-no-slur-begins = lì non comincia nessuna legatura
told-why-no-such-proposal = non c'è una proposta così
told-why-proposal-changes-nothing = questa proposta non cambia nulla nel file: fai la modifica nella partitura stessa
told-why-no-bow-then = allora in questo rigo non si muove nessun arco
told-why-no-bow-in-parts = in queste parti non si muove nessun arco
told-why-no-bow-in-bars = in queste battute non si muove nessun arco
told-why-slur-entry-unanswered = voce { $number } sulle legature accanto alla partitura: nessuna legatura vi corrisponde
told-why-slur-of-entry = { $part }, { $at }: lì non comincia nessuna legatura
told-why-paper-by-program = le pagine per la carta le fa il programma installato; qui stampa la pagina stessa
told-why-no-such-act = non c'è un'azione così
told-why-was-for-old-file = «{ $sentence }» valeva per il file com'era
told-why-no-layer-on-desk = nessuna versione delle arcate aperta si chiama «{ $name }»
told-why-no-such-layer = non è aperta una versione delle arcate così
told-why-layer-name-length = una versione delle arcate ha un nome da 1 a { $limit } lettere
told-why-layer-name-taken = una versione delle arcate di nome «{ $name }» è già aperta
told-why-layers-many = sono aperte { $count } versioni delle arcate: prima chiudine una
told-why-layer-edited = è la versione delle arcate in lavorazione
told-why-layer-one-stays = una versione delle arcate deve restare aperta
told-why-layers-counts-differ = sono aperte { $count } versioni delle arcate, qui ce ne sono { $number }
told-why-layer-of-other-music = nessuna delle sue arcate trova la sua nota in questa partitura
told-why-late = nel frattempo la partitura è cambiata; guarda di nuovo
told-why-slur-doubled = la partitura ha già questa legatura, e una versione delle arcate la toglie: metti la modifica in quella versione
told-why-changes-gone = le modifiche alla partitura stessa valevano per il file vecchio, e non ci sono più
told-why-score-unchanged = nella partitura stessa non è cambiato nulla
told-why-kept-one = 1 arcata è rimasta com'era
told-why-kept-many = { $count } arcate sono rimaste com'erano
told-why-is-now = { $place } ora è { $place-now }: da controllare
told-why-score-on-no-disk = la partitura non sta su nessun disco
told-why-score-in-no-folder = la partitura non sta in nessuna cartella
told-why-nothing-asked = non è chiesto nulla
told-why-change-empty = la modifica è vuota
told-why-reason-wanted = ci vuole anche il motivo, in poche parole
told-why-tempo-range = un tempo va da 10 a 400 semiminime al minuto
told-why-louder-range = tutto si suona fino a { $limit } gradi più piano o più forte
told-why-no-style-called = nessuno stile si chiama «{ $name }»: { $known }
told-why-note-no-address = la nota non ha un indirizzo
told-why-note-no-layer-address = una nota non ha un indirizzo che una versione delle arcate possa nominare
told-why-nothing-was-asked = lì non era chiesto nulla
told-why-text-no-bowings = il testo non contiene arcate
told-why-hide-layer-first = lì una versione delle arcate ha messo o tolto qualcosa: prima nascondila, o metti la modifica in quella versione
told-why-more-than-slurs = questa modifica non riguarda solo legature: può andare soltanto nella partitura
told-why-journal-format = dice di essere { $format }, che non è un diario
told-why-journal-version = è scritto nella versione { $version }, e questo programma legge la versione { $number }
told-why-journal-act = la riga { $line } contiene un'azione che questo programma non conosce
told-why-journal-broken = la riga { $line } è rotta
told-why-journal-not-read = il diario non si è potuto leggere fino in fondo ({ $why }): ne valgono { $steps }, e tutto è conservato come { $name }
told-why-browser-full = il browser non ha più spazio per questo; salva il lavoro come file, poi fai spazio
told-why-browser-journal = il browser non lascia cambiare il diario
told-why-browser-second-journal = il browser non ha spazio per una seconda copia del diario
told-why-page-of-other-version = la pagina e il suo modulo sono di versioni diverse: ricarica la pagina
told-why-page-writes-no-score = una pagina non può scrivere il file della partitura: salva la partitura con le arcate come file nuovo
told-why-page-no-folder = una pagina non ha una cartella in cui scrivere: salva il file
told-steps-one = 1 passo
told-steps-many = { $count } passi
told-why-held-open = un altro programma tiene aperto il file; chiudilo lì e riprova
told-why-held-open-or-forbidden = lì non puoi scrivere, o un altro programma tiene aperto il file; chiudilo lì, o indica un altro posto
