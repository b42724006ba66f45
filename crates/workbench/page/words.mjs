// What the page says, in four languages. English is what everything falls back to.

const ENGLISH = {
  partPages: "Pages of a part", part: "Part", page: "Page", front: "Front", pagesMaking: "The pages are being made…", pageCounted: "page", pagesCounted: "pages", turnQuick: "turn is too quick", turnsQuick: "turns are too quick", noTurnQuick: "every turn has time",
  pagesHelp: "The pages as they are printed, with the time there is to turn. Arrow keys go from bar to bar; x asks for a new page at the chosen bar, X for a new line; once more takes it back.",
  breakPage: "New page here", breakLine: "New line here", breakPageHere: "new page of the part at this bar, or no more", breakLineHere: "new line of the part at this bar, or no more", didPage: "a new page begins here", didLine: "a new line begins here", didNoBreak: "nothing is asked to begin here any more", signPage: "page", signLine: "line", keepBreaks: "Where pages and lines begin",
  writtenAs: "Written as", hook_marks: "the same sign twice", hook_dots: "a slur with dots", hook_dashes: "a slur with dashes", goesFor: "What I ask for goes for", reach_here: "this stroke", reach_places: "its # places in this part", reach_players: "all # who play it here", reach_all: "all who play it, everywhere (#)", nobodyElse: "Nobody else plays as this stroke does.", widen: "this stroke, its places, all who play it", ofHundred: "of 100 players would", showSure: "show where the plan is not sure", sureShown: "Hollow: two ways are nearly equal.", sureHidden: "Sureness is not shown.",
  movement: "Movement", nextMovement: "to the next movement", previousMovement: "to the movement before", oneMovement: "The file holds one movement.",
  layers: "Bowing layers", intoLayer: "Take it into the layer", layerNew: "New layer…", layerNewName: "Another", layerName: "Name", layerFromFile: "Layer from a file…", layersCompare: "Two layers side by side", layerBowings: "bowings",
  layerShown: "shown", layerWritten: "being edited", layerTakeUp: "Copy into the edited layer", layerTakeUpHelp: "Puts its bowings into the layer that is being edited, over what stands there.", layerTakeAway: "Close layer",
  layerOnlyOne: "Open a second layer first.", layerOne: "The one layer", layerOther: "The other layer",
  louder: "Dynamics", asWritten: "as written", louderHelp: "Everything louder or softer than written, in steps: p to mp is one.",
  turned: "strokes change direction", elsewhere: "use another part of the bow",
  keepParts: "The parts with the bowings (a folder)", keepSheet: "What to write into printed parts (PDF)", keepPicture: "This line of music as a picture (SVG)",
  filesBeside: "Beside the score", filesPrint: "To print", sheet: "What to write into printed parts", filesScore: "The score itself",
  scoreWrite: "Save into the score file", layerHidden: "hidden", didLayer: "The layer is open; what you ask for goes into it.", didCopied: "copied into the edited layer", didClosed: "closed", didEntered: "The bowings are in the layer that is being edited.", didAside: "Set aside, with the reason, in the file beside the score.", didSlurs: "The slurs are in the layer that is being edited.", severity: "Severity", severityA: "cannot be played, or is not defined", severityB: "costs rehearsal time", severityC: "probably not meant", severityD: "clutter", scoreWriteHelp: "Slurs and signs that were changed here go into the file; the file as it was is kept beside it. The bowings stay in their layer.", scoreWritten: "Written. The file as it was is kept as",
  alone: "alone", pace: "How fast it is played", untilBar: "Up to bar", hearing: "Hearing", hearingHelp: "A sketch of how the strokes join, not of the tone.",
  skip: "To the music",
  musicHelp: "Arrow keys go from stroke to stroke and from line to line. d, u, h, r ask for down, up, hook, retake; Backspace leaves it as it comes. ? shows all keys.",
  music: "The score with the bow under each staff",
  overview: "The whole piece",
  overviewHelp: "a column a bar, a row a line: tall, a down-bow on the downbeat; low, an up-bow; a line, a bow that goes on; below them the findings.",
  bar: "bar", beat: "beat", bars: "bars",
  down: "down-bow", up: "up-bow", hook: "hook", retake: "retake", free: "as it comes",
  askDown: "Down", askUp: "Up", askHook: "Hook", askRetake: "Retake", askFree: "As it comes",
  nextStroke: "to the next stroke", previousStroke: "to the stroke before", lineBelow: "to the line below", lineAbove: "to the line above", change: "follows on", reset: "placed after a rest",
  from: "from", to: "to", ofBow: "% of the bow", asked: "asked for here", printed: "printed",
  undo: "Undo", redo: "Redo", nothingToUndo: "Nothing to undo.", nothingToRedo: "Nothing to redo.",
  undone: "Undone.", redone: "Redone.",
  stroke: "This stroke", noStroke: "Choose a stroke: click under the music, or use the arrow keys.",
  ways: "Other ways", waysFor: "Other ways from here", takeWay: "Use this bowing", planNow: "as planned",
  slurs: "Other slurs here", noSlurs: "No slur can be changed here.", noWays: "There is no other way worth showing.", better: "Better", worse: "Worse", penaltyMore: "Penalty # higher than the plan", slursMore: "Penalty # higher than with the slurs as they stand", slursLess: "Penalty # lower than with the slurs as they stand", yardstick: "Penalty: an up-bow on a downbeat counts #.",
  oneFinding: "1 finding", findings: "findings", noFindings: "Nothing is found.", setAside: "set aside", inView: "What the review says",
  why: "Why?", write: "Change it here", asideButton: "Set aside…", asideReason: "Why is it set aside?",
  keep: "OK", cancel: "Cancel", changed: "The score was changed. Undo takes it back.",
  pencil: "Type bowings", pencilHelp: "One line a place, such as: 12/1 down, 13-14 as it comes, Viola 20/3 hook. Names and words in four languages.",
  enter: "Enter them", textSound: "nothing wrong", layerNow: "Bowings entered so far",
  downbeats: "Downbeats", downbeatsTitle: "Who begins on the downbeat", goesOn: "goes on", rests: "rests", nobody: "nobody begins",
  play: "Play", stop: "Stop", loop: "Loop", silent: "silent",
  tempo: "Tempo (♩ a minute)", player: "Players’ level", style: "Style", concert: "concert music", dance: "dances (1883)", early: "rule of the down-bow",
  professional: "professional", amateur: "amateur", student: "student",
  files: "Files", keepScore: "Score with the bowings", keepLayer: "The bowings alone", keepPdf: "Whole score with bow lanes (PDF)", keepAside: "Findings set aside",
  keptAs: "Written beside the score:",
  same: "They say the same.", silentThere: "nothing",
  phrase: "This is a phrase mark", isBow: "This is a bowing slur", slurTold: "Noted. Every plan goes by it.",
  keys: "Keys", doWhat: "Find a command or a bar…", nothingFits: "No such command.", goTo: "Go to",
  sections: "Sections", language: "Language", size: "Size", smaller: "smaller", larger: "larger",
  late: "Something was done meanwhile; look again.", fileChanged: "The file was changed by another program.",
  fileUnreadable: "The file was changed and cannot be read now; the old state stays here.",
  lost: "Some of what was done earlier does not fit the score any more:",
  close: "Close", caution: "Arcata calculates and advises; players decide. Where a bowing strains hand or arm, rest, and ask a teacher or a physician.",
  next: "next finding", previous: "finding before", oneBowing: "1 bowing entered", noBowings: "no bowings entered", bowings: "bowings entered", gone: "The program has stopped. What was done is kept; start it again.",
  keepReview: "What the review finds, as a page with pictures (HTML)", siteIntroduction: "Bowings for string parts, worked out in this browser: open a score (MusicXML) and see what it makes the bow do. Nothing you open leaves this machine.",
  siteChoose: "Choose a score…", siteDrop: "or drop a file here (.musicxml, .mxl, .xml)", siteDemos: "Or try one of these", siteDemoStudy: "A study for violin", siteDemoQuartet: "A string quartet", siteDemoOrchestra: "A string orchestra",
  siteNewer: "A score of this name was worked on here before, and this file is not the same. Is it a newer version of that score?", siteCarry: "A newer version: carry the bowings over", siteApart: "Another score: open it by itself", siteCarried: "The bowings are carried over", siteCarriedNote: "The older version stays as it was, in the list of what was worked on before.",
  siteKept: "Worked on before", siteForget: "Remove", siteForgetAll: "Remove everything kept here", siteForgetSure: "What the browser keeps of it goes for good, the bowings too. Files that you saved stay.",
  siteHere: "Kept in this browser",
  startIntroduction: "Bowings for string parts: open a score (MusicXML) and see what it makes the bow do. Everything is worked out by the program on this machine, and nothing leaves it.", startLast: "Opened last", startForget: "Forget this list", startHere: "Scores on this machine", startFolder: "Folder", startShow: "Show", startUp: "the folder above", startNone: "No score lies in this folder itself (.musicxml, .mxl, .xml).", startMore: "There is more in this folder than is shown: type the name of a folder below it.",
  siteWhere: "Your work is kept in this browser's own storage, on this machine alone, act by act. It goes when you remove it here or clear the browser's data for this page: save as files what you want to keep.", siteUnkept: "This browser lets the page keep nothing (a private window, or storage is switched off). You can work; save your work as files before you close the page.", siteCannot: "The page works on one core and makes no parts, class sheets or PDF but by printing, and it watches no file: the installed program does. How to get it stands in its README.",
  siteAnother: "Another score…", siteSave: "Save as files", sitePrint: "Print this page, or make a PDF of it", siteOpening: "Opening…", siteNotice: "Whose work is in this page",
  siteFull: "The browser has no room left. What was done before is kept. Save your work as files, then make room.", siteTooLarge: "This score is too large for this browser's memory. The installed program can open it.", siteBroke: "The page's worker had stopped and was started again. What was done is kept.", siteElsewhere: "This score is open in another tab. Close it there first.",
};

const ITALIAN = {
  partPages: "Pagine di una parte", part: "Parte", page: "Pagina", front: "Frontespizio", pagesMaking: "Le pagine si stanno facendo…", pageCounted: "pagina", pagesCounted: "pagine", turnQuick: "voltata è troppo rapida", turnsQuick: "voltate sono troppo rapide", noTurnQuick: "c'è tempo per ogni voltata",
  pagesHelp: "Le pagine come si stampano, con il tempo che c'è per voltare. Le frecce vanno da una battuta all'altra; x chiede una nuova pagina alla battuta scelta, X un nuovo rigo; un'altra volta lo toglie.",
  breakPage: "Nuova pagina qui", breakLine: "Nuovo rigo qui", breakPageHere: "nuova pagina della parte a questa battuta, o non più", breakLineHere: "nuovo rigo della parte a questa battuta, o non più", didPage: "qui comincia una nuova pagina", didLine: "qui comincia un nuovo rigo", didNoBreak: "qui non è più chiesto nulla", signPage: "pagina", signLine: "rigo", keepBreaks: "Dove cominciano pagine e righi",
  writtenAs: "Scritta come", hook_marks: "lo stesso segno due volte", hook_dots: "legatura con punti", hook_dashes: "legatura con trattini", goesFor: "Ciò che chiedo vale per", reach_here: "questa arcata", reach_places: "i suoi # luoghi in questa parte", reach_players: "tutti i # che la suonano qui", reach_all: "tutti, dappertutto (#)", nobodyElse: "Nessun altro suona come questa arcata.", widen: "questa arcata, i suoi luoghi, tutti", ofHundred: "esecutori su 100 farebbero così", showSure: "mostra dove le arcate previste non sono sicure", sureShown: "Vuote: due modi sono quasi pari.", sureHidden: "La sicurezza non è mostrata.",
  movement: "Movimento", nextMovement: "al movimento seguente", previousMovement: "al movimento precedente", oneMovement: "Nel file c'è un solo movimento.",
  layers: "Versioni delle arcate", intoLayer: "Nella versione", layerNew: "Nuova versione…", layerNewName: "Altra", layerName: "Nome", layerFromFile: "Versione da un file…", layersCompare: "Due versioni a confronto", layerBowings: "arcate",
  layerShown: "mostrata", layerWritten: "in modifica", layerTakeUp: "Copia nella versione in modifica", layerTakeUpHelp: "Mette le sue arcate nella versione in modifica, sopra ciò che c'è.", layerTakeAway: "Chiudi la versione",
  layerOnlyOne: "Apri prima una seconda versione.", layerOne: "La prima versione", layerOther: "L'altra versione",
  louder: "Dinamica", asWritten: "come scritta", louderHelp: "Tutto più forte o più piano di quanto è scritto, in gradi: da p a mp è uno.",
  turned: "arcate cambiano verso", elsewhere: "usano un'altra parte dell'arco",
  keepParts: "Le parti con le arcate (una cartella)", keepSheet: "Che cosa scrivere nelle parti stampate (PDF)", keepPicture: "Questo rigo come immagine (SVG)",
  filesBeside: "Accanto alla partitura", filesPrint: "Da stampare", sheet: "Che cosa scrivere nelle parti stampate", filesScore: "La partitura stessa",
  scoreWrite: "Salva nel file della partitura", layerHidden: "nascosta", didLayer: "La versione è aperta; ciò che chiedi va lì.", didCopied: "copiata nella versione in modifica", didClosed: "chiusa", didEntered: "Le arcate sono nella versione in modifica.", didAside: "Messa da parte, con la ragione, nel file accanto alla partitura.", didSlurs: "Le legature sono nella versione in modifica.", severity: "Gravità", severityA: "non si può suonare, o non è definito", severityB: "costa tempo di prova", severityC: "probabilmente non voluto", severityD: "superfluo", scoreWriteHelp: "Legature e segni cambiati qui vanno nel file; il file com'era resta accanto. Le arcate restano nella loro versione.", scoreWritten: "Scritto. Il file com'era si chiama",
  alone: "sola", pace: "Quanto veloce si suona", untilBar: "Fino alla battuta", hearing: "Ascolto", hearingHelp: "Uno schizzo di come si uniscono le arcate, non del suono.",
  skip: "Alla musica", music: "La partitura con l'arco sotto ogni rigo", overview: "Il brano intero",
  musicHelp: "Le frecce vanno da un'arcata all'altra e da un rigo all'altro. d, u, h, r chiedono giù, su, agganciata, ripresa; Backspace lascia come viene. ? mostra tutti i tasti.",
  overviewHelp: "una colonna per battuta, una riga per parte: alto, in giù sul battere; basso, in su; linea, l'arco continua; sotto, le osservazioni.",
  bar: "battuta", beat: "tempo", bars: "battute", down: "in giù", up: "in su", hook: "agganciata", retake: "ripresa d'arco", free: "come viene",
  askDown: "Giù", askUp: "Su", askHook: "Aggancia", askRetake: "Riprendi", askFree: "Come viene", nextStroke: "all'arcata seguente", previousStroke: "all'arcata precedente", lineBelow: "al rigo sotto", lineAbove: "al rigo sopra", change: "segue", reset: "appoggiata dopo una pausa",
  from: "da", to: "a", ofBow: "% dell'arco", asked: "chiesta qui", printed: "scritta", undo: "Annulla", redo: "Rifai",
  nothingToUndo: "Niente da annullare.", nothingToRedo: "Niente da rifare.", undone: "Annullato.", redone: "Rifatto.",
  stroke: "Questa arcata", noStroke: "Scegli un'arcata: clicca sotto la musica, o usa le frecce.", ways: "Altri modi", waysFor: "Altri modi da qui",
  takeWay: "Usa queste arcate", planNow: "come previsto", slurs: "Altre legature qui", noSlurs: "Qui nessuna legatura si può cambiare.", noWays: "Non c'è altro modo da mostrare.", better: "Meglio", worse: "Peggio", penaltyMore: "Penalità # in più del previsto", slursMore: "Penalità # in più che con le legature come stanno", slursLess: "Penalità # in meno che con le legature come stanno", yardstick: "Penalità: un'arcata in su sul battere conta #.",
  oneFinding: "1 osservazione", findings: "osservazioni", noFindings: "Nessuna osservazione.", setAside: "messe da parte", inView: "Che cosa dice la revisione", why: "Perché?",
  write: "Cambia qui", asideButton: "Metti da parte…", asideReason: "Perché la metti da parte?", keep: "OK", cancel: "Annulla",
  changed: "La partitura è cambiata. Annulla la riporta com'era.", pencil: "Scrivi le arcate", enter: "Inseriscile", textSound: "tutto in ordine",
  layerNow: "Arcate inserite finora", downbeats: "Battere", downbeatsTitle: "Chi attacca sul battere", goesOn: "continua", rests: "pausa", nobody: "nessuno attacca", play: "Suona", stop: "Ferma",
  loop: "Ripeti", silent: "muta", tempo: "Tempo (♩ al minuto)",
  player: "Livello degli esecutori", style: "Stile", concert: "musica da concerto", dance: "danze (1883)", early: "regola dell'arcata in giù", professional: "professionista", amateur: "dilettante", student: "studente", files: "File",
  keepScore: "Partitura con le arcate", keepLayer: "Solo le arcate", keepPdf: "Partitura intera con il percorso dell'arco (PDF)", keepAside: "Osservazioni messe da parte", keptAs: "Scritto accanto alla partitura:",
  same: "Dicono lo stesso.", silentThere: "niente",
  phrase: "È una legatura di frase", isBow: "È una legatura d'arco", slurTold: "Annotato.", keys: "Tasti", doWhat: "Trova un comando o una battuta…", nothingFits: "Nessun comando così.", goTo: "Vai a",
  sections: "Sezioni", language: "Lingua", size: "Grandezza", smaller: "più piccolo", larger: "più grande",
  late: "Intanto è cambiato qualcosa; guarda di nuovo.", fileChanged: "Il file è stato cambiato da un altro programma.", close: "Chiudi",
  caution: "Arcata calcola e consiglia; decide chi suona. Dove un'arcata affatica mano o braccio, riposa, e chiedi a un insegnante o a un medico.",
  next: "osservazione seguente", previous: "osservazione precedente", oneBowing: "1 arcata inserita", noBowings: "nessuna arcata inserita", bowings: "arcate inserite",
  keepReview: "Che cosa osserva la revisione, come pagina con figure (HTML)", siteIntroduction: "Arcate per parti d'archi, calcolate in questo browser: apri una partitura (MusicXML) e vedi che cosa fa fare all'arco. Niente di ciò che apri lascia questa macchina.",
  siteChoose: "Scegli una partitura…", siteDrop: "o trascina qui un file (.musicxml, .mxl, .xml)", siteDemos: "Oppure prova una di queste", siteDemoStudy: "Uno studio per violino", siteDemoQuartet: "Un quartetto d'archi", siteDemoOrchestra: "Un'orchestra d'archi",
  siteNewer: "Qui è già stata aperta una partitura con questo nome, e questo file è diverso. È una versione più recente di quella partitura?", siteCarry: "Una versione più recente: riporta le arcate", siteApart: "Un'altra partitura: aprila da sola", siteCarried: "Le arcate sono riportate", siteCarriedNote: "La versione precedente resta com'era, nell'elenco delle partiture aperte in precedenza.",
  siteKept: "Aperte in precedenza", siteForget: "Togli", siteForgetAll: "Togli tutto ciò che è conservato qui", siteForgetSure: "Ciò che il browser ne conserva se ne va per sempre, anche le arcate. I file che hai salvato restano.",
  siteHere: "Conservato in questo browser",
  startIntroduction: "Arcate per parti d'archi: apri una partitura (MusicXML) e vedi che cosa fa fare all'arco. Tutto è calcolato dal programma su questa macchina, e nulla la lascia.", startLast: "Aperte per ultime", startForget: "Dimentica questo elenco", startHere: "Partiture su questa macchina", startFolder: "Cartella", startShow: "Mostra", startUp: "la cartella sopra", startNone: "In questa cartella non c'è alcuna partitura (.musicxml, .mxl, .xml).", startMore: "In questa cartella c'è più di quanto si mostra: scrivi il nome di una cartella che contiene.",
  siteWhere: "Il lavoro è conservato nella memoria propria di questo browser, solo su questa macchina, un passo alla volta. Se ne va quando lo togli qui o cancelli i dati del browser per questa pagina: salva come file ciò che vuoi conservare.", siteUnkept: "Questo browser non lascia conservare nulla alla pagina (una finestra privata, o la memoria è disattivata). Puoi lavorare; salva il lavoro come file prima di chiudere la pagina.", siteCannot: "La pagina lavora su un solo nucleo, non fa parti, fogli per una classe né PDF se non con la stampa, e non sorveglia file: lo fa il programma installato. Come averlo sta nel suo README.",
  siteAnother: "Un'altra partitura…", siteSave: "Salva come file", sitePrint: "Stampa questa pagina, o fanne un PDF", siteOpening: "Si apre…", siteNotice: "Di chi è il lavoro in questa pagina",
  siteFull: "Il browser non ha più spazio. Ciò che è stato fatto prima è conservato. Salva il lavoro come file, poi fai spazio.", siteTooLarge: "Questa partitura è troppo grande per la memoria di questo browser. Il programma installato può aprirla.", siteBroke: "Una parte della pagina si era fermata ed è stata riavviata. Ciò che è stato fatto è conservato.", siteElsewhere: "Questa partitura è aperta in un'altra scheda. Chiudila prima là.",
};

const FRENCH = {
  partPages: "Pages d'une partie", part: "Partie", page: "Page", front: "Couverture", pagesMaking: "Les pages se font…", pageCounted: "page", pagesCounted: "pages", turnQuick: "tourne est trop rapide", turnsQuick: "tournes sont trop rapides", noTurnQuick: "il y a le temps pour chaque tourne",
  pagesHelp: "Les pages telles qu'on les imprime, avec le temps qu'il y a pour tourner. Les flèches vont de mesure en mesure ; x demande une nouvelle page à la mesure choisie, X un nouveau système ; une fois de plus l'enlève.",
  breakPage: "Nouvelle page ici", breakLine: "Nouveau système ici", breakPageHere: "nouvelle page de la partie à cette mesure, ou plus", breakLineHere: "nouveau système de la partie à cette mesure, ou plus", didPage: "une nouvelle page commence ici", didLine: "un nouveau système commence ici", didNoBreak: "plus rien n'est demandé ici", signPage: "page", signLine: "système", keepBreaks: "Où commencent pages et systèmes",
  writtenAs: "Écrit comme", hook_marks: "deux fois le même signe", hook_dots: "une liaison avec points", hook_dashes: "une liaison avec tirets", goesFor: "Ma demande vaut pour", reach_here: "ce coup d’archet", reach_places: "ses # endroits dans cette partie", reach_players: "les # qui le jouent ici", reach_all: "tous, partout (#)", nobodyElse: "Personne d’autre ne joue comme ce coup d’archet.", widen: "ce coup, ses endroits, tous", ofHundred: "musiciens sur 100 feraient ainsi", showSure: "montrer où le plan n’est pas sûr", sureShown: "En creux : deux manières se valent presque.", sureHidden: "La sûreté n’est pas montrée.",
  movement: "Mouvement", nextMovement: "au mouvement suivant", previousMovement: "au mouvement précédent", oneMovement: "Le fichier n'a qu'un mouvement.",
  layers: "Calques de coups d’archet", intoLayer: "Dans le calque", layerNew: "Nouveau calque…", layerNewName: "Autre", layerName: "Nom", layerFromFile: "Calque d'un fichier…", layersCompare: "Deux calques côte à côte", layerBowings: "coups d'archet",
  layerShown: "montré", layerWritten: "en cours de modification", layerTakeUp: "Copier dans le calque modifié", layerTakeUpHelp: "Met ses coups d'archet dans le calque modifié, par-dessus ce qui s'y trouve.", layerTakeAway: "Fermer le calque",
  layerOnlyOne: "Ouvrez d'abord un second calque.", layerOne: "Le premier calque", layerOther: "L'autre calque",
  louder: "Nuances", asWritten: "comme écrites", louderHelp: "Tout plus fort ou plus doux qu'écrit, par degrés : de p à mp, un degré.",
  turned: "coups changent de sens", elsewhere: "prennent une autre partie de l'archet",
  keepParts: "Les parties avec les coups d'archet (un dossier)", keepSheet: "Ce qu'il faut écrire dans les parties imprimées (PDF)", keepPicture: "Cette portée en image (SVG)",
  filesBeside: "À côté de la partition", filesPrint: "À imprimer", sheet: "Ce qu'il faut écrire dans les parties imprimées", filesScore: "La partition elle-même",
  scoreWrite: "Enregistrer dans le fichier de la partition", layerHidden: "caché", didLayer: "Le calque est ouvert ; ce que vous demandez y va.", didCopied: "copié dans le calque modifié", didClosed: "fermé", didEntered: "Les coups d'archet sont dans le calque en cours de modification.", didAside: "Mise de côté, avec la raison, dans le fichier à côté de la partition.", didSlurs: "Les liaisons sont dans le calque en cours de modification.", severity: "Gravité", severityA: "injouable, ou non défini", severityB: "coûte du temps de répétition", severityC: "sans doute pas voulu", severityD: "superflu", scoreWriteHelp: "Liaisons et signes changés ici vont dans le fichier ; le fichier tel qu'il était reste à côté. Les coups d'archet restent dans leur calque.", scoreWritten: "Écrit. Le fichier tel qu'il était s'appelle",
  alone: "seul", pace: "À quelle vitesse on joue", untilBar: "Jusqu'à la mesure", hearing: "Écoute", hearingHelp: "Une esquisse de la façon dont les coups s'enchaînent, pas du son.",
  skip: "À la musique", music: "La partition, l'archet sous chaque portée", overview: "La pièce entière",
  musicHelp: "Les flèches vont d'un coup d'archet à l'autre et d'une ligne à l'autre. d, u, h, r demandent tiré, poussé, accroché, reprise ; Retour arrière laisse comme ça vient. ? montre toutes les touches.",
  overviewHelp: "une colonne par mesure, une rangée par ligne : haut, tiré sur le premier temps ; bas, poussé ; trait, l'archet continue ; dessous, les remarques.",
  bar: "mesure", beat: "temps", bars: "mesures", down: "tiré", up: "poussé", hook: "accroché", retake: "reprise d'archet", free: "comme ça vient",
  askDown: "Tiré", askUp: "Poussé", askHook: "Accrocher", askRetake: "Reprendre", askFree: "Comme ça vient", nextStroke: "au coup d'archet suivant", previousStroke: "au coup d'archet précédent", lineBelow: "à la ligne du dessous", lineAbove: "à la ligne du dessus", change: "enchaîne", reset: "posé après un silence",
  from: "de", to: "à", ofBow: "% de l'archet", asked: "demandé ici", printed: "imprimé", undo: "Annuler", redo: "Rétablir",
  nothingToUndo: "Rien à annuler.", nothingToRedo: "Rien à rétablir.", undone: "Annulé.", redone: "Rétabli.",
  stroke: "Ce coup d'archet", noStroke: "Choisissez un coup d'archet : cliquez sous la musique, ou utilisez les flèches.", ways: "Autres façons", waysFor: "Autres façons d'ici",
  takeWay: "Prendre ces coups d'archet", planNow: "comme prévu", slurs: "Autres liaisons ici", noSlurs: "Aucune liaison à changer ici.", noWays: "Pas d'autre façon à montrer.", better: "Mieux", worse: "Moins bien", penaltyMore: "Pénalité # de plus que le plan", slursMore: "Pénalité # de plus qu'avec les liaisons telles quelles", slursLess: "Pénalité # de moins qu'avec les liaisons telles quelles", yardstick: "Pénalité : un poussé sur le premier temps compte #.",
  oneFinding: "1 remarque", findings: "remarques", noFindings: "Aucune remarque.", setAside: "mises de côté", inView: "Ce que dit la revue", why: "Pourquoi ?",
  write: "Changer ici", asideButton: "Mettre de côté…", asideReason: "Pourquoi la mettre de côté ?", keep: "OK", cancel: "Annuler",
  changed: "La partition a changé. Annuler la remet comme elle était.", pencil: "Saisir des coups d'archet", enter: "Les entrer", textSound: "rien à redire",
  layerNow: "Coups d'archet saisis jusqu'ici", downbeats: "Premiers temps", downbeatsTitle: "Qui attaque le premier temps", goesOn: "continue", rests: "silence", nobody: "personne n'attaque", play: "Jouer", stop: "Arrêter",
  loop: "En boucle", silent: "muet", tempo: "Tempo (♩ à la minute)",
  player: "Niveau des musiciens", style: "Style", concert: "musique de concert", dance: "danses (1883)", early: "règle du tiré", professional: "professionnel", amateur: "amateur", student: "élève", files: "Fichiers",
  keepScore: "Partition avec les coups d'archet", keepLayer: "Les coups d'archet seuls", keepPdf: "Partition entière avec le trajet de l'archet (PDF)", keepAside: "Remarques mises de côté", keptAs: "Écrit à côté de la partition :",
  same: "Ils disent la même chose.", silentThere: "rien",
  phrase: "C'est une liaison de phrase", isBow: "C'est une liaison d'archet", slurTold: "Noté.", keys: "Touches", doWhat: "Trouver une commande ou une mesure…", nothingFits: "Aucune commande de ce nom.", goTo: "Aller à",
  sections: "Pupitres", language: "Langue", size: "Taille", smaller: "plus petit", larger: "plus grand",
  late: "Quelque chose a changé entre-temps ; regardez de nouveau.", fileChanged: "Le fichier a été modifié par un autre programme.", close: "Fermer",
  caution: "Arcata calcule et conseille ; les musiciens décident. Si un coup d'archet fatigue la main ou le bras, reposez-vous, et demandez à un professeur ou à un médecin.",
  next: "remarque suivante", previous: "remarque précédente", oneBowing: "1 coup d'archet saisi", noBowings: "aucun coup d'archet saisi", bowings: "coups d'archet saisis",
  keepReview: "Ce que la revue relève, en page avec images (HTML)", siteIntroduction: "Coups d'archet pour parties de cordes, calculés dans ce navigateur : ouvrez une partition (MusicXML) et voyez ce qu'elle fait faire à l'archet. Rien de ce que vous ouvrez ne quitte cette machine.",
  siteChoose: "Choisir une partition…", siteDrop: "ou déposez un fichier ici (.musicxml, .mxl, .xml)", siteDemos: "Ou essayez l'une de celles-ci", siteDemoStudy: "Une étude pour violon", siteDemoQuartet: "Un quatuor à cordes", siteDemoOrchestra: "Un orchestre à cordes",
  siteNewer: "Une partition de ce nom a déjà été ouverte ici, et ce fichier est différent. Est-ce une version plus récente de cette partition ?", siteCarry: "Une version plus récente : reporter les coups d'archet", siteApart: "Une autre partition : l'ouvrir à part", siteCarried: "Les coups d'archet sont reportés", siteCarriedNote: "La version précédente reste telle quelle, dans la liste de ce qui a été ouvert auparavant.",
  siteKept: "Ouvertes auparavant", siteForget: "Retirer", siteForgetAll: "Retirer tout ce qui est gardé ici", siteForgetSure: "Ce que le navigateur en garde s'en va pour toujours, coups d'archet compris. Les fichiers enregistrés restent.",
  siteHere: "Gardé dans ce navigateur",
  startIntroduction: "Coups d'archet pour parties de cordes : ouvrez une partition (MusicXML) et voyez ce qu'elle fait faire à l'archet. Tout est calculé par le programme sur cette machine, et rien ne la quitte.", startLast: "Ouvertes en dernier", startForget: "Oublier cette liste", startHere: "Partitions sur cette machine", startFolder: "Dossier", startShow: "Montrer", startUp: "le dossier du dessus", startNone: "Aucune partition dans ce dossier même (.musicxml, .mxl, .xml).", startMore: "Ce dossier contient plus que ce qui est montré : tapez le nom d'un dossier qu'il contient.",
  siteWhere: "Votre travail est gardé dans la mémoire propre de ce navigateur, sur cette machine seule, pas à pas. Il s'en va quand vous le retirez ici ou effacez les données du navigateur pour cette page : enregistrez en fichiers ce que vous voulez garder.", siteUnkept: "Ce navigateur ne laisse rien garder à la page (une fenêtre privée, ou le stockage est coupé). Vous pouvez travailler ; enregistrez votre travail en fichiers avant de fermer la page.", siteCannot: "La page travaille sur un seul cœur, ne fait ni parties, ni feuilles de classe, ni PDF autrement qu'en imprimant, et ne surveille aucun fichier : le programme installé le fait. Comment l'obtenir est dit dans son README.",
  siteAnother: "Une autre partition…", siteSave: "Enregistrer en fichiers", sitePrint: "Imprimer cette page, ou en faire un PDF", siteOpening: "Ouverture…", siteNotice: "De qui est le travail dans cette page",
  siteFull: "Le navigateur n'a plus de place. Ce qui a été fait avant est gardé. Enregistrez votre travail en fichiers, puis faites de la place.", siteTooLarge: "Cette partition est trop grande pour la mémoire de ce navigateur. Le programme installé peut l'ouvrir.", siteBroke: "Une partie de la page s'était arrêtée et a été relancée. Ce qui a été fait est gardé.", siteElsewhere: "Cette partition est ouverte dans un autre onglet. Fermez-la d'abord là.",
};

const GERMAN = {
  partPages: "Seiten einer Stimme", part: "Stimme", page: "Seite", front: "Titelblatt", pagesMaking: "Die Seiten werden gemacht…", pageCounted: "Seite", pagesCounted: "Seiten", turnQuick: "Wendestelle ist zu schnell", turnsQuick: "Wendestellen sind zu schnell", noTurnQuick: "zu jedem Wenden ist Zeit",
  pagesHelp: "Die Seiten, wie sie gedruckt werden, mit der Zeit zum Wenden. Pfeiltasten gehen von Takt zu Takt; x wünscht beim gewählten Takt eine neue Seite, X eine neue Zeile; noch einmal nimmt es zurück.",
  breakPage: "Neue Seite hier", breakLine: "Neue Zeile hier", breakPageHere: "neue Seite der Stimme bei diesem Takt, oder nicht mehr", breakLineHere: "neue Zeile der Stimme bei diesem Takt, oder nicht mehr", didPage: "hier beginnt eine neue Seite", didLine: "hier beginnt eine neue Zeile", didNoBreak: "hier ist nichts mehr gewünscht", signPage: "Seite", signLine: "Zeile", keepBreaks: "Wo Seiten und Zeilen beginnen",
  writtenAs: "Geschrieben als", hook_marks: "zweimal dasselbe Zeichen", hook_dots: "Bindebogen mit Punkten", hook_dashes: "Bindebogen mit Strichen", goesFor: "Mein Wunsch gilt für", reach_here: "diesen Strich", reach_places: "seine # Stellen in dieser Stimme", reach_players: "alle #, die ihn hier spielen", reach_all: "alle, überall (#)", nobodyElse: "Niemand sonst spielt wie dieser Strich.", widen: "dieser Strich, seine Stellen, alle", ofHundred: "von 100 Spielern täten es so", showSure: "zeigen, wo der Plan nicht sicher ist", sureShown: "Hohl: zwei Wege sind fast gleich gut.", sureHidden: "Die Sicherheit wird nicht gezeigt.",
  movement: "Satz", nextMovement: "zum nächsten Satz", previousMovement: "zum Satz davor", oneMovement: "Die Datei hat nur einen Satz.",
  layers: "Strichfassungen", intoLayer: "In die Fassung", layerNew: "Neue Fassung…", layerNewName: "Weitere", layerName: "Name", layerFromFile: "Fassung aus einer Datei…", layersCompare: "Zwei Fassungen nebeneinander", layerBowings: "Striche",
  layerShown: "gezeigt", layerWritten: "in Bearbeitung", layerTakeUp: "In die bearbeitete Fassung kopieren", layerTakeUpHelp: "Legt ihre Striche in die bearbeitete Fassung, über das, was dort steht.", layerTakeAway: "Fassung schließen",
  layerOnlyOne: "Erst eine zweite Fassung öffnen.", layerOne: "Die eine Fassung", layerOther: "Die andere Fassung",
  louder: "Dynamik", asWritten: "wie notiert", louderHelp: "Alles lauter oder leiser als notiert, in Stufen: von p zu mp ist eine.",
  turned: "Striche wechseln die Richtung", elsewhere: "nehmen einen anderen Teil des Bogens",
  keepParts: "Die Stimmen mit den Strichen (ein Ordner)", keepSheet: "Was in gedruckte Stimmen zu schreiben ist (PDF)", keepPicture: "Diese Notenzeile als Bild (SVG)",
  filesBeside: "Neben der Partitur", filesPrint: "Zum Drucken", sheet: "Was in gedruckte Stimmen zu schreiben ist", filesScore: "Die Partitur selbst",
  scoreWrite: "In die Partiturdatei speichern", layerHidden: "verborgen", didLayer: "Die Fassung ist offen; was Sie verlangen, kommt hinein.", didCopied: "in die bearbeitete Fassung kopiert", didClosed: "geschlossen", didEntered: "Die Striche sind in der bearbeiteten Fassung.", didAside: "Beiseitegelegt, mit dem Grund, in der Datei neben der Partitur.", didSlurs: "Die Bindebögen sind in der bearbeiteten Fassung.", severity: "Gewicht", severityA: "nicht spielbar, oder nicht bestimmt", severityB: "kostet Probenzeit", severityC: "wohl nicht gemeint", severityD: "überflüssig", scoreWriteHelp: "Hier geänderte Bindebögen und Zeichen kommen in die Datei; die Datei, wie sie war, bleibt daneben. Die Striche bleiben in ihrer Fassung.", scoreWritten: "Geschrieben. Die Datei, wie sie war, heißt",
  alone: "allein", pace: "Wie schnell gespielt wird", untilBar: "Bis Takt", hearing: "Hören", hearingHelp: "Eine Skizze, wie die Striche verbunden sind, nicht des Tons.",
  skip: "Zur Musik", music: "Die Partitur mit dem Bogen unter jedem System", overview: "Das ganze Stück",
  musicHelp: "Pfeiltasten gehen von Strich zu Strich und von Zeile zu Zeile. d, u, h, r verlangen Abstrich, Aufstrich, Anbinden, Neuansetzen; Rücktaste lässt es, wie es kommt. ? zeigt alle Tasten.",
  overviewHelp: "eine Spalte je Takt, eine Zeile je Stimme: hoch, Abstrich auf der Eins; niedrig, Aufstrich; Linie, der Bogen geht weiter; darunter die Befunde.",
  bar: "Takt", beat: "Schlag", bars: "Takte", down: "Abstrich", up: "Aufstrich", hook: "angebunden", retake: "neu angesetzt", free: "wie es kommt",
  askDown: "Abstrich", askUp: "Aufstrich", askHook: "Anbinden", askRetake: "Neu ansetzen", askFree: "Wie es kommt", nextStroke: "zum nächsten Strich", previousStroke: "zum Strich davor", lineBelow: "zur Zeile darunter", lineAbove: "zur Zeile darüber", change: "schließt an", reset: "nach der Pause aufgesetzt",
  from: "von", to: "bis", ofBow: "% des Bogens", asked: "hier verlangt", printed: "gedruckt", undo: "Rückgängig", redo: "Wiederholen",
  nothingToUndo: "Nichts rückgängig zu machen.", nothingToRedo: "Nichts zu wiederholen.", undone: "Rückgängig gemacht.", redone: "Wiederholt.",
  stroke: "Dieser Strich", noStroke: "Einen Strich wählen: unter die Noten klicken oder Pfeiltasten benutzen.", ways: "Andere Striche", waysFor: "Andere Striche von hier",
  takeWay: "Diese Striche nehmen", planNow: "wie geplant", slurs: "Andere Bindebögen hier", noSlurs: "Hier lässt sich kein Bindebogen ändern.", noWays: "Es gibt keinen anderen, der sich lohnt.", better: "Besser", worse: "Schlechter", penaltyMore: "Aufschlag # höher als der Plan", slursMore: "Aufschlag # höher als mit den Bindebögen, wie sie stehen", slursLess: "Aufschlag # niedriger als mit den Bindebögen, wie sie stehen", yardstick: "Aufschlag: ein Aufstrich auf der Eins zählt #.",
  oneFinding: "1 Befund", findings: "Befunde", noFindings: "Nichts gefunden.", setAside: "beiseitegelegt", inView: "Was die Durchsicht sagt", why: "Warum?",
  write: "Hier ändern", asideButton: "Beiseitelegen…", asideReason: "Warum wird es beiseitegelegt?", keep: "OK", cancel: "Abbrechen",
  changed: "Die Partitur ist geändert. „Rückgängig“ nimmt es zurück.", pencil: "Striche eintippen", enter: "Eintragen", textSound: "nichts falsch",
  layerNow: "Bisher eingetragene Striche", downbeats: "Eins", downbeatsTitle: "Wer auf der Eins beginnt", goesOn: "geht weiter", rests: "pausiert", nobody: "niemand beginnt", play: "Spielen", stop: "Halt",
  loop: "Schleife", silent: "stumm", tempo: "Tempo (♩ in der Minute)",
  player: "Können der Spieler", style: "Stil", concert: "Konzertmusik", dance: "Tänze (1883)", early: "Regel vom Abstrich", professional: "Profi", amateur: "Laie", student: "Schüler", files: "Dateien",
  keepScore: "Partitur mit den Strichen", keepLayer: "Die Striche allein", keepPdf: "Ganze Partitur mit Bogenverlauf (PDF)", keepAside: "Beiseitegelegte Befunde", keptAs: "Neben die Partitur geschrieben:",
  same: "Sie sagen dasselbe.", silentThere: "nichts",
  phrase: "Das ist ein Phrasierungsbogen", isBow: "Das ist ein Bindebogen", slurTold: "Vermerkt.", keys: "Tasten", doWhat: "Befehl oder Takt suchen…", nothingFits: "Kein solcher Befehl.", goTo: "Gehe zu",
  sections: "Gruppen", language: "Sprache", size: "Größe", smaller: "kleiner", larger: "größer",
  late: "Inzwischen ist etwas geschehen; bitte noch einmal ansehen.", fileChanged: "Die Datei wurde von einem anderen Programm geändert.", close: "Schließen",
  caution: "Arcata rechnet und rät; die Spieler entscheiden. Wo ein Strich Hand oder Arm anstrengt: ausruhen und Lehrer oder Arzt fragen.",
  next: "nächster Befund", previous: "voriger Befund", oneBowing: "1 Strich eingetragen", noBowings: "keine Striche eingetragen", bowings: "Striche eingetragen",
  keepReview: "Was die Durchsicht sagt, als Seite mit Bildern (HTML)", siteIntroduction: "Striche für Streicherstimmen, in diesem Browser berechnet: eine Partitur (MusicXML) öffnen und sehen, was sie den Bogen tun lässt. Nichts, was Sie öffnen, verlässt diesen Rechner.",
  siteChoose: "Partitur wählen…", siteDrop: "oder eine Datei hierher ziehen (.musicxml, .mxl, .xml)", siteDemos: "Oder eine von diesen ausprobieren", siteDemoStudy: "Eine Etüde für Violine", siteDemoQuartet: "Ein Streichquartett", siteDemoOrchestra: "Ein Streichorchester",
  siteNewer: "Hier wurde schon eine Partitur dieses Namens bearbeitet, und diese Datei ist eine andere. Ist sie eine neuere Fassung jener Partitur?", siteCarry: "Eine neuere Fassung: Striche übertragen", siteApart: "Eine andere Partitur: für sich öffnen", siteCarried: "Die Striche sind übertragen", siteCarriedNote: "Die ältere Fassung bleibt, wie sie war, in der Liste des früher Bearbeiteten.",
  siteKept: "Früher bearbeitet", siteForget: "Entfernen", siteForgetAll: "Alles hier Aufbewahrte entfernen", siteForgetSure: "Was der Browser davon aufbewahrt, ist dann endgültig weg, auch die Striche. Dateien, die Sie gesichert haben, bleiben.",
  siteHere: "In diesem Browser aufbewahrt",
  startIntroduction: "Striche für Streicherstimmen: eine Partitur (MusicXML) öffnen und sehen, was sie den Bogen tun lässt. Alles berechnet das Programm auf diesem Rechner, und nichts verlässt ihn.", startLast: "Zuletzt geöffnet", startForget: "Diese Liste vergessen", startHere: "Partituren auf diesem Rechner", startFolder: "Ordner", startShow: "Zeigen", startUp: "der Ordner darüber", startNone: "In diesem Ordner selbst liegt keine Partitur (.musicxml, .mxl, .xml).", startMore: "In diesem Ordner ist mehr, als gezeigt wird: Schreiben Sie den Namen eines Ordners darin.",
  siteWhere: "Ihre Arbeit liegt im eigenen Speicher dieses Browsers, nur auf diesem Rechner, Schritt für Schritt. Sie geht verloren, wenn Sie sie hier entfernen oder die Browserdaten dieser Seite löschen: Sichern Sie als Dateien, was Sie behalten wollen.", siteUnkept: "Dieser Browser lässt die Seite nichts aufbewahren (ein privates Fenster, oder der Speicher ist abgeschaltet). Sie können arbeiten; sichern Sie Ihre Arbeit als Dateien, bevor Sie die Seite schließen.", siteCannot: "Die Seite arbeitet auf einem Kern, macht keine Stimmen, keine Blätter für eine Klasse und kein PDF außer durch Drucken, und sie beobachtet keine Datei: Das tut das installierte Programm. Wie man es bekommt, steht in seinem README.",
  siteAnother: "Andere Partitur…", siteSave: "Als Dateien sichern", sitePrint: "Diese Seite drucken oder ein PDF daraus machen", siteOpening: "Wird geöffnet…", siteNotice: "Wessen Arbeit in dieser Seite steckt",
  siteFull: "Der Browser hat keinen Platz mehr. Was vorher getan wurde, ist aufbewahrt. Sichern Sie Ihre Arbeit als Dateien und schaffen Sie dann Platz.", siteTooLarge: "Diese Partitur ist zu groß für den Speicher dieses Browsers. Das installierte Programm kann sie öffnen.", siteBroke: "Ein Teil der Seite war stehen geblieben und wurde neu gestartet. Was getan wurde, ist aufbewahrt.", siteElsewhere: "Diese Partitur ist in einem anderen Tab offen. Schließen Sie sie dort zuerst.",
};

/** @type {Record<string, Record<string, string>>} */
export const LANGUAGES = { en: ENGLISH, it: ITALIAN, fr: FRENCH, de: GERMAN };
export const NAMES = { en: "English", it: "Italiano", fr: "Français", de: "Deutsch" };

/** The browser's memory for such wishes; a private window may refuse it. @param {() => any} job */
export const remembered = (job) => {
  try {
    return job();
  } catch {
    return null;
  }
};

const wished = () => {
  const kept = remembered(() => localStorage.getItem("arcata-language"));
  const spoken = (kept ?? navigator.language ?? "en").slice(0, 2);
  return spoken in LANGUAGES ? spoken : "en";
};

let now = wished();
document.documentElement.lang = now;

/** The language that the page speaks. */
export const language = () => now;

/** @param {string} code */
export function speak(code) {
  now = code in LANGUAGES ? code : "en";
  remembered(() => localStorage.setItem("arcata-language", now));
  document.documentElement.lang = now;
}

/** @param {string} key */
export const word = (key) => LANGUAGES[now][key] ?? LANGUAGES.en[key] ?? key;
