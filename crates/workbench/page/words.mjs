// What the page says, in four languages. English is what everything falls back to.

const ENGLISH = {
  writtenAs: "Written as", hook_marks: "the same sign twice", hook_dots: "a slur with dots", hook_dashes: "a slur with dashes", goesFor: "What I ask for goes for", reach_here: "this stroke", reach_places: "its # places in this part", reach_players: "all # who play it here", reach_all: "all who play it, everywhere (#)", nobodyElse: "Nobody else plays as this stroke does.", widen: "this stroke, its places, all who play it", ofHundred: "of 100 players would", showSure: "show where the plan is not sure", sureShown: "Hollow: two ways are nearly equal.", sureHidden: "Sureness is not shown.",
  movement: "Movement", nextMovement: "to the next movement", previousMovement: "to the movement before", oneMovement: "The file holds one movement.",
  layers: "Layers", intoLayer: "Take it into the layer", layerNew: "New layer…", layerNewName: "Another", layerName: "Name", layerFromFile: "Layer from a file…", layersCompare: "Two layers side by side", layerBowings: "bowings",
  layerShown: "shown", layerWritten: "written in", layerTakeUp: "Take up", layerTakeUpHelp: "Puts its bowings into the layer that is written in, over what stands there.", layerTakeAway: "Take away",
  layerOnlyOne: "One layer lies on the desk; lay another beside it first.", layerOne: "The one layer", layerOther: "The other layer",
  louder: "Dynamics", asWritten: "as written", louderHelp: "Everything louder or softer than written, in steps: p to mp is one.",
  turned: "strokes turn", elsewhere: "begin or end elsewhere in the bow",
  keepParts: "The parts with the bowings (a folder)", keepSheet: "What to write into printed parts (PDF)", keepPicture: "This line of music as a picture (SVG)",
  filesBeside: "Beside the score", filesPrint: "To print", sheet: "What to write into printed parts", filesScore: "The score itself",
  scoreWrite: "Write the changes into the score", scoreWriteHelp: "Slurs and signs that were changed here go into the file; the file as it was is kept beside it. The bowings stay in their layer.", scoreWritten: "Written. The file as it was is kept as",
  alone: "alone", pace: "How fast it is played", untilBar: "Up to bar", hearing: "Hearing", hearingHelp: "A sketch of how the strokes join, not of the tone.",
  skip: "To the music",
  musicHelp: "Arrow keys go from stroke to stroke and from line to line. d, u, h, r ask for down, up, hook, retake; Backspace leaves it as it comes. ? shows all keys.",
  music: "The score with the bow under each staff",
  overview: "The whole piece",
  overviewHelp: "a column a bar, a row a line: tall, a down-bow on the downbeat; low, an up-bow; a line, a bow that goes on; below them the findings.",
  bar: "bar", beat: "beat", bars: "bars",
  down: "down-bow", up: "up-bow", hook: "hook", retake: "retake", free: "as it comes",
  askDown: "Down", askUp: "Up", askHook: "Hook", askRetake: "Retake", askFree: "As it comes",
  nextStroke: "to the next stroke", previousStroke: "to the stroke before", lineBelow: "to the line below", lineAbove: "to the line above", change: "follows on", reset: "out of a rest",
  from: "from", to: "to", ofBow: "% of the bow", asked: "asked for here", printed: "printed",
  undo: "Undo", redo: "Do again", nothingToUndo: "Nothing to undo.", nothingToRedo: "Nothing to do again.",
  undone: "Undone.", redone: "Done again.",
  stroke: "This stroke", noStroke: "Choose a stroke: click under the music, or use the arrow keys.",
  ways: "Other ways", waysFor: "Other ways from here", takeWay: "Bow it so", planNow: "as planned",
  slurs: "Other slurs here", noSlurs: "No slur can be changed here.", costsLess: "less than the slurs as they stand", noWays: "There is no other way worth showing.", costsMore: "more than the plan",
  findings: "Findings", noFindings: "Nothing is found.", setAside: "set aside", inView: "What the review says",
  why: "Why?", write: "Write it into the score", pencilOnly: "for the pencil", asideButton: "Set aside…", asideReason: "Why is it set aside?",
  keep: "Keep", cancel: "Leave it", changed: "The score was changed. Undo takes it back.",
  pencil: "Type bowings", pencilHelp: "One line a place, such as: 12/1 down, 13-14 as it comes, Viola 20/3 hook. Names and words in four languages.",
  enter: "Enter them", decisions: "bowings", textSound: "nothing wrong", layerNow: "What has been decided so far",
  downbeats: "Downbeats", downbeatsTitle: "Who begins on the downbeat", goesOn: "goes on", rests: "rests", nobody: "nobody begins",
  play: "Play", stop: "Stop", loop: "Again and again", silent: "silent",
  tempo: "Quarters a minute", player: "Player", style: "Style", concert: "concert music", dance: "dances (1883)", early: "rule of the down-bow",
  professional: "professional", amateur: "amateur", student: "student",
  files: "Files", keepScore: "Score with the bowings", keepLayer: "The bowings alone", keepPdf: "All of it on paper (PDF)", keepAside: "What is set aside, for the review elsewhere",
  keptAs: "Written beside the score:",
  same: "They say the same.", silentThere: "nothing",
  phrase: "This slur is a phrase mark", isBow: "This slur is a bow", slurTold: "Noted. Every plan goes by it.",
  keys: "Keys", doWhat: "Do…", nothingFits: "Nothing is called so.",
  sections: "Sections", language: "Language", size: "Size", smaller: "smaller", larger: "larger",
  late: "Something was done meanwhile; look again.", fileChanged: "The file was changed by another program.",
  fileUnreadable: "The file was changed and cannot be read now; the old state stays here.",
  lost: "Some of what was done earlier does not fit the score any more:",
  close: "Close", caution: "Arcata reckons and advises; players decide. Where a bowing strains hand or arm, rest, and ask a teacher or a physician.",
  next: "next finding", previous: "finding before", bowings: "decided", gone: "The program has stopped. What was done is kept; start it again.",
};

const ITALIAN = {
  writtenAs: "Scritta come", hook_marks: "lo stesso segno due volte", hook_dots: "legatura con punti", hook_dashes: "legatura con trattini", goesFor: "Ciò che chiedo vale per", reach_here: "questa arcata", reach_places: "i suoi # luoghi in questa parte", reach_players: "tutti i # che la suonano qui", reach_all: "tutti, dappertutto (#)", nobodyElse: "Nessun altro suona come questa arcata.", widen: "questa arcata, i suoi luoghi, tutti", ofHundred: "esecutori su 100 farebbero così", showSure: "mostra dove il piano non è sicuro", sureShown: "Vuote: due modi sono quasi pari.", sureHidden: "La sicurezza non è mostrata.",
  movement: "Movimento", nextMovement: "al movimento seguente", previousMovement: "al movimento precedente", oneMovement: "Nel file c'è un solo movimento.",
  layers: "Versioni", intoLayer: "Nella versione", layerNew: "Nuova versione…", layerNewName: "Altra", layerName: "Nome", layerFromFile: "Versione da un file…", layersCompare: "Due versioni a confronto", layerBowings: "arcate",
  layerShown: "mostrata", layerWritten: "si scrive qui", layerTakeUp: "Prendi", layerTakeUpHelp: "Mette le sue arcate nella versione in cui si scrive, sopra ciò che c'è.", layerTakeAway: "Togli",
  layerOnlyOne: "Sul tavolo c'è una sola versione; mettine prima un'altra.", layerOne: "La prima versione", layerOther: "L'altra versione",
  louder: "Dinamica", asWritten: "come scritta", louderHelp: "Tutto più forte o più piano di quanto è scritto, in gradi: da p a mp è uno.",
  turned: "arcate si girano", elsewhere: "cominciano o finiscono altrove nell'arco",
  keepParts: "Le parti con le arcate (una cartella)", keepSheet: "Che cosa scrivere nelle parti stampate (PDF)", keepPicture: "Questo rigo come immagine (SVG)",
  filesBeside: "Accanto alla partitura", filesPrint: "Da stampare", sheet: "Che cosa scrivere nelle parti stampate", filesScore: "La partitura stessa",
  scoreWrite: "Scrivi i cambiamenti nella partitura", scoreWriteHelp: "Legature e segni cambiati qui vanno nel file; il file com'era resta accanto. Le arcate restano nella loro versione.", scoreWritten: "Scritto. Il file com'era si chiama",
  alone: "sola", pace: "Quanto veloce si suona", untilBar: "Fino alla battuta", hearing: "Ascolto", hearingHelp: "Uno schizzo di come si uniscono le arcate, non del suono.",
  skip: "Alla musica", music: "La partitura con l'arco sotto ogni rigo", overview: "Il brano intero",
  musicHelp: "Le frecce vanno da un'arcata all'altra e da un rigo all'altro. d, u, h, r chiedono giù, su, agganciata, ripresa; Backspace lascia come viene. ? mostra tutti i tasti.",
  overviewHelp: "una colonna per battuta, una riga per parte: alto, in giù sul battere; basso, in su; linea, l'arco continua; sotto, le osservazioni.",
  bar: "battuta", beat: "tempo", bars: "battute", down: "in giù", up: "in su", hook: "agganciata", retake: "ripresa d'arco", free: "come viene",
  askDown: "Giù", askUp: "Su", askHook: "Aggancia", askRetake: "Riprendi", askFree: "Come viene", nextStroke: "all'arcata seguente", previousStroke: "all'arcata precedente", lineBelow: "al rigo sotto", lineAbove: "al rigo sopra", change: "segue", reset: "dopo una pausa",
  from: "da", to: "a", ofBow: "% dell'arco", asked: "chiesta qui", printed: "scritta", undo: "Annulla", redo: "Rifai",
  nothingToUndo: "Niente da annullare.", nothingToRedo: "Niente da rifare.", undone: "Annullato.", redone: "Rifatto.",
  stroke: "Questa arcata", noStroke: "Scegli un'arcata: clicca sotto la musica, o usa le frecce.", ways: "Altri modi", waysFor: "Altri modi da qui",
  takeWay: "Fai così", planNow: "come previsto", slurs: "Altre legature qui", noSlurs: "Qui nessuna legatura si può cambiare.", costsLess: "meno delle legature come stanno", noWays: "Non c'è altro modo da mostrare.", costsMore: "più del piano",
  findings: "Osservazioni", noFindings: "Nessuna osservazione.", setAside: "messe da parte", inView: "Che cosa dice la revisione", why: "Perché?",
  write: "Scrivi nella partitura", pencilOnly: "per la matita", asideButton: "Metti da parte…", asideReason: "Perché la metti da parte?", keep: "Tieni", cancel: "Lascia stare",
  changed: "La partitura è cambiata. Annulla la riporta.", pencil: "Scrivi le arcate", enter: "Inseriscile", decisions: "arcate", textSound: "tutto in ordine",
  layerNow: "Deciso finora", downbeats: "Battere", downbeatsTitle: "Chi attacca sul battere", goesOn: "continua", rests: "pausa", nobody: "nessuno attacca", play: "Suona", stop: "Ferma",
  loop: "Da capo", silent: "muta", tempo: "Semiminime al minuto",
  player: "Chi suona", style: "Stile", concert: "musica da concerto", dance: "danze (1883)", early: "regola dell'arcata in giù", professional: "professionista", amateur: "dilettante", student: "studente", files: "File",
  keepScore: "Partitura con le arcate", keepLayer: "Solo le arcate", keepPdf: "Tutto su carta (PDF)", keepAside: "Ciò che è messo da parte, per la revisione altrove", keptAs: "Scritto accanto alla partitura:",
  same: "Dicono lo stesso.", silentThere: "niente",
  phrase: "È una legatura di frase", isBow: "È un'arcata", slurTold: "Annotato.", keys: "Tasti", doWhat: "Fai…", nothingFits: "Niente si chiama così.",
  sections: "File", language: "Lingua", size: "Grandezza", smaller: "più piccolo", larger: "più grande",
  late: "Intanto è cambiato qualcosa; guarda di nuovo.", fileChanged: "Il file è stato cambiato da un altro programma.", close: "Chiudi",
  caution: "Arcata calcola e consiglia; decide chi suona. Dove un'arcata affatica mano o braccio, riposa, e chiedi a un insegnante o a un medico.",
  next: "osservazione seguente", previous: "osservazione precedente", bowings: "decise",
};

const FRENCH = {
  writtenAs: "Écrit comme", hook_marks: "deux fois le même signe", hook_dots: "une liaison avec points", hook_dashes: "une liaison avec tirets", goesFor: "Ma demande vaut pour", reach_here: "ce coup d’archet", reach_places: "ses # endroits dans cette partie", reach_players: "les # qui le jouent ici", reach_all: "tous, partout (#)", nobodyElse: "Personne d’autre ne joue comme ce coup d’archet.", widen: "ce coup, ses endroits, tous", ofHundred: "musiciens sur 100 feraient ainsi", showSure: "montrer où le plan n’est pas sûr", sureShown: "En creux : deux manières se valent presque.", sureHidden: "La sûreté n’est pas montrée.",
  movement: "Mouvement", nextMovement: "au mouvement suivant", previousMovement: "au mouvement précédent", oneMovement: "Le fichier n'a qu'un mouvement.",
  layers: "Calques", intoLayer: "Dans le calque", layerNew: "Nouveau calque…", layerNewName: "Autre", layerName: "Nom", layerFromFile: "Calque d'un fichier…", layersCompare: "Deux calques côte à côte", layerBowings: "coups d'archet",
  layerShown: "montré", layerWritten: "on y écrit", layerTakeUp: "Reprendre", layerTakeUpHelp: "Met ses coups d'archet dans le calque où l'on écrit, par-dessus ce qui s'y trouve.", layerTakeAway: "Ôter",
  layerOnlyOne: "Un seul calque est sur la table ; posez-en d'abord un autre.", layerOne: "Le premier calque", layerOther: "L'autre calque",
  louder: "Nuances", asWritten: "comme écrites", louderHelp: "Tout plus fort ou plus doux qu'écrit, par degrés : de p à mp, un degré.",
  turned: "coups se retournent", elsewhere: "commencent ou finissent ailleurs dans l'archet",
  keepParts: "Les parties avec les coups d'archet (un dossier)", keepSheet: "Ce qu'il faut écrire dans les parties imprimées (PDF)", keepPicture: "Cette portée en image (SVG)",
  filesBeside: "À côté de la partition", filesPrint: "À imprimer", sheet: "Ce qu'il faut écrire dans les parties imprimées", filesScore: "La partition elle-même",
  scoreWrite: "Écrire les changements dans la partition", scoreWriteHelp: "Liaisons et signes changés ici vont dans le fichier ; le fichier tel qu'il était reste à côté. Les coups d'archet restent dans leur calque.", scoreWritten: "Écrit. Le fichier tel qu'il était s'appelle",
  alone: "seul", pace: "À quelle vitesse on joue", untilBar: "Jusqu'à la mesure", hearing: "Écoute", hearingHelp: "Une esquisse de la façon dont les coups s'enchaînent, pas du son.",
  skip: "À la musique", music: "La partition, l'archet sous chaque portée", overview: "La pièce entière",
  musicHelp: "Les flèches vont d'un coup d'archet à l'autre et d'une ligne à l'autre. d, u, h, r demandent tiré, poussé, accroché, reprise ; Retour arrière laisse comme ça vient. ? montre toutes les touches.",
  overviewHelp: "une colonne par mesure, une rangée par ligne : haut, tiré sur le premier temps ; bas, poussé ; trait, l'archet continue ; dessous, les remarques.",
  bar: "mesure", beat: "temps", bars: "mesures", down: "tiré", up: "poussé", hook: "accroché", retake: "reprise d'archet", free: "comme ça vient",
  askDown: "Tiré", askUp: "Poussé", askHook: "Accrocher", askRetake: "Reprendre", askFree: "Comme ça vient", nextStroke: "au coup d'archet suivant", previousStroke: "au coup d'archet précédent", lineBelow: "à la ligne du dessous", lineAbove: "à la ligne du dessus", change: "enchaîne", reset: "après un silence",
  from: "de", to: "à", ofBow: "% de l'archet", asked: "demandé ici", printed: "imprimé", undo: "Annuler", redo: "Refaire",
  nothingToUndo: "Rien à annuler.", nothingToRedo: "Rien à refaire.", undone: "Annulé.", redone: "Refait.",
  stroke: "Ce coup d'archet", noStroke: "Choisissez un coup d'archet : cliquez sous la musique, ou utilisez les flèches.", ways: "Autres façons", waysFor: "Autres façons d'ici",
  takeWay: "Jouer ainsi", planNow: "comme prévu", slurs: "Autres liaisons ici", noSlurs: "Aucune liaison à changer ici.", costsLess: "de moins que les liaisons telles quelles", noWays: "Pas d'autre façon à montrer.", costsMore: "de plus que le plan",
  findings: "Remarques", noFindings: "Aucune remarque.", setAside: "mises de côté", inView: "Ce que dit la revue", why: "Pourquoi ?",
  write: "Écrire dans la partition", pencilOnly: "au crayon", asideButton: "Mettre de côté…", asideReason: "Pourquoi la mettre de côté ?", keep: "Garder", cancel: "Laisser",
  changed: "La partition a changé. Annuler la ramène.", pencil: "Saisir des coups d'archet", enter: "Les entrer", decisions: "coups d'archet", textSound: "rien à redire",
  layerNow: "Décidé jusqu'ici", downbeats: "Premiers temps", downbeatsTitle: "Qui attaque le premier temps", goesOn: "continue", rests: "silence", nobody: "personne n'attaque", play: "Jouer", stop: "Arrêter",
  loop: "En boucle", silent: "muet", tempo: "Noires à la minute",
  player: "Musicien", style: "Style", concert: "musique de concert", dance: "danses (1883)", early: "règle du tiré", professional: "professionnel", amateur: "amateur", student: "élève", files: "Fichiers",
  keepScore: "Partition avec les coups d'archet", keepLayer: "Les coups d'archet seuls", keepPdf: "Tout sur papier (PDF)", keepAside: "Ce qui est mis de côté, pour la revue ailleurs", keptAs: "Écrit à côté de la partition :",
  same: "Ils disent la même chose.", silentThere: "rien",
  phrase: "C'est une liaison de phrase", isBow: "C'est un coup d'archet", slurTold: "Noté.", keys: "Touches", doWhat: "Faire…", nothingFits: "Rien ne s'appelle ainsi.",
  sections: "Pupitres", language: "Langue", size: "Taille", smaller: "plus petit", larger: "plus grand",
  late: "Quelque chose a changé entre-temps ; regardez de nouveau.", fileChanged: "Le fichier a été modifié par un autre programme.", close: "Fermer",
  caution: "Arcata calcule et conseille ; les musiciens décident. Si un coup d'archet fatigue la main ou le bras, reposez-vous, et demandez à un professeur ou à un médecin.",
  next: "remarque suivante", previous: "remarque précédente", bowings: "décidés",
};

const GERMAN = {
  writtenAs: "Geschrieben als", hook_marks: "zweimal dasselbe Zeichen", hook_dots: "Bogen mit Punkten", hook_dashes: "Bogen mit Strichen", goesFor: "Mein Wunsch gilt für", reach_here: "diesen Strich", reach_places: "seine # Stellen in dieser Stimme", reach_players: "alle #, die ihn hier spielen", reach_all: "alle, überall (#)", nobodyElse: "Niemand sonst spielt wie dieser Strich.", widen: "dieser Strich, seine Stellen, alle", ofHundred: "von 100 Spielern täten es so", showSure: "zeigen, wo der Plan nicht sicher ist", sureShown: "Hohl: zwei Wege sind fast gleich gut.", sureHidden: "Die Sicherheit wird nicht gezeigt.",
  movement: "Satz", nextMovement: "zum nächsten Satz", previousMovement: "zum Satz davor", oneMovement: "Die Datei hat nur einen Satz.",
  layers: "Fassungen", intoLayer: "In die Fassung", layerNew: "Neue Fassung…", layerNewName: "Weitere", layerName: "Name", layerFromFile: "Fassung aus einer Datei…", layersCompare: "Zwei Fassungen nebeneinander", layerBowings: "Striche",
  layerShown: "gezeigt", layerWritten: "hier schreiben", layerTakeUp: "Übernehmen", layerTakeUpHelp: "Legt ihre Striche in die Fassung, in die geschrieben wird, über das, was dort steht.", layerTakeAway: "Wegnehmen",
  layerOnlyOne: "Auf dem Pult liegt eine einzige Fassung; erst eine zweite dazulegen.", layerOne: "Die eine Fassung", layerOther: "Die andere Fassung",
  louder: "Dynamik", asWritten: "wie notiert", louderHelp: "Alles lauter oder leiser als notiert, in Stufen: von p zu mp ist eine.",
  turned: "Striche drehen sich", elsewhere: "beginnen oder enden anderswo im Bogen",
  keepParts: "Die Stimmen mit den Strichen (ein Ordner)", keepSheet: "Was in gedruckte Stimmen zu schreiben ist (PDF)", keepPicture: "Diese Notenzeile als Bild (SVG)",
  filesBeside: "Neben der Partitur", filesPrint: "Zum Drucken", sheet: "Was in gedruckte Stimmen zu schreiben ist", filesScore: "Die Partitur selbst",
  scoreWrite: "Die Änderungen in die Partitur schreiben", scoreWriteHelp: "Hier geänderte Bögen und Zeichen kommen in die Datei; die Datei, wie sie war, bleibt daneben. Die Striche bleiben in ihrer Fassung.", scoreWritten: "Geschrieben. Die Datei, wie sie war, heißt",
  alone: "allein", pace: "Wie schnell gespielt wird", untilBar: "Bis Takt", hearing: "Hören", hearingHelp: "Eine Skizze, wie die Striche verbunden sind, nicht des Tons.",
  skip: "Zur Musik", music: "Die Partitur mit dem Bogen unter jedem System", overview: "Das ganze Stück",
  musicHelp: "Pfeiltasten gehen von Strich zu Strich und von Zeile zu Zeile. d, u, h, r verlangen Abstrich, Aufstrich, Anbinden, Neuansetzen; Rücktaste lässt es, wie es kommt. ? zeigt alle Tasten.",
  overviewHelp: "eine Spalte je Takt, eine Zeile je Stimme: hoch, Abstrich auf der Eins; niedrig, Aufstrich; Linie, der Bogen geht weiter; darunter die Befunde.",
  bar: "Takt", beat: "Schlag", bars: "Takte", down: "Abstrich", up: "Aufstrich", hook: "angebunden", retake: "neu angesetzt", free: "wie es kommt",
  askDown: "Abstrich", askUp: "Aufstrich", askHook: "Anbinden", askRetake: "Neu ansetzen", askFree: "Wie es kommt", nextStroke: "zum nächsten Strich", previousStroke: "zum Strich davor", lineBelow: "zur Zeile darunter", lineAbove: "zur Zeile darüber", change: "schließt an", reset: "aus der Pause",
  from: "von", to: "bis", ofBow: "% des Bogens", asked: "hier verlangt", printed: "gedruckt", undo: "Zurück", redo: "Noch einmal",
  nothingToUndo: "Nichts zurückzunehmen.", nothingToRedo: "Nichts zu wiederholen.", undone: "Zurückgenommen.", redone: "Wieder getan.",
  stroke: "Dieser Strich", noStroke: "Einen Strich wählen: unter die Noten klicken oder Pfeiltasten benutzen.", ways: "Andere Striche", waysFor: "Andere Striche von hier",
  takeWay: "So streichen", planNow: "wie geplant", slurs: "Andere Bögen hier", noSlurs: "Hier lässt sich kein Bogen ändern.", costsLess: "weniger als die Bögen, wie sie stehen", noWays: "Es gibt keinen anderen, der sich lohnt.", costsMore: "mehr als der Plan",
  findings: "Befunde", noFindings: "Nichts gefunden.", setAside: "beiseitegelegt", inView: "Was die Durchsicht sagt", why: "Warum?",
  write: "In die Partitur schreiben", pencilOnly: "für den Bleistift", asideButton: "Beiseitelegen…", asideReason: "Warum wird es beiseitegelegt?", keep: "Behalten", cancel: "Lassen",
  changed: "Die Partitur ist geändert. Zurück nimmt es wieder weg.", pencil: "Striche eintippen", enter: "Eintragen", decisions: "Striche", textSound: "nichts falsch",
  layerNow: "Bisher entschieden", downbeats: "Eins", downbeatsTitle: "Wer auf der Eins beginnt", goesOn: "geht weiter", rests: "pausiert", nobody: "niemand beginnt", play: "Spielen", stop: "Halt",
  loop: "Immer wieder", silent: "stumm", tempo: "Viertel in der Minute",
  player: "Wer spielt", style: "Stil", concert: "Konzertmusik", dance: "Tänze (1883)", early: "Regel vom Abstrich", professional: "Profi", amateur: "Laie", student: "Schüler", files: "Dateien",
  keepScore: "Partitur mit den Strichen", keepLayer: "Die Striche allein", keepPdf: "Alles auf Papier (PDF)", keepAside: "Beiseitegelegtes, für die Durchsicht anderswo", keptAs: "Neben die Partitur geschrieben:",
  same: "Sie sagen dasselbe.", silentThere: "nichts",
  phrase: "Das ist ein Phrasierungsbogen", isBow: "Das ist ein Strich", slurTold: "Vermerkt.", keys: "Tasten", doWhat: "Tun…", nothingFits: "So heißt nichts.",
  sections: "Gruppen", language: "Sprache", size: "Größe", smaller: "kleiner", larger: "größer",
  late: "Inzwischen ist etwas geschehen; bitte noch einmal ansehen.", fileChanged: "Die Datei wurde von einem anderen Programm geändert.", close: "Schließen",
  caution: "Arcata rechnet und rät; die Spieler entscheiden. Wo ein Strich Hand oder Arm anstrengt: ausruhen und Lehrer oder Arzt fragen.",
  next: "nächster Befund", previous: "voriger Befund", bowings: "entschieden",
};

/** @type {Record<string, Record<string, string>>} */
export const LANGUAGES = { en: ENGLISH, it: ITALIAN, fr: FRENCH, de: GERMAN };
export const NAMES = { en: "English", it: "Italiano", fr: "Français", de: "Deutsch" };

const wished = () => {
  const kept = localStorage.getItem("arcata-language");
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
  localStorage.setItem("arcata-language", now);
  document.documentElement.lang = now;
}

/** @param {string} key */
export const word = (key) => LANGUAGES[now][key] ?? LANGUAGES.en[key] ?? key;
