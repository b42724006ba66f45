# Was die Crates darunter auf Englisch sagen.

# Wo im Text

told-why-line-column = Zeile { $line }, Spalte { $column }: { $why }
told-why-line = Zeile { $line }: { $why }
told-why-note = Hinweis: { $why }
told-why-of = { $of }: { $why }

# Getippte Stellen

told-why-expected-meant = erwartet: { $expected }; gefunden: { $found }. Vielleicht „{ $meant }“?
told-why-expected-place = erwartet: { $expected }; gefunden: { $found }. Eine Stelle schreibt man 12, 12/3½, „Takt 12, Schlag 3½“, 41-42 oder II: 12.
told-why-expected = erwartet: { $expected }; gefunden: { $found }.
told-expected-bar = ein Takt wie 37, 37/3 oder 41-42
told-expected-beat = ein Schlag wie 3, 3½, 3.5, 7/2 oder 3+1/3
told-expected-note-value = ein Notenwert wie 1/4 oder 3/8
told-expected-fraction = ein Bruch unter 1, wie 3+1/3
told-expected-end-of-stretch = der letzte Takt oder Schlag der Strecke
told-expected-number-of-bar = die Zahl eines Takts
told-expected-slash = ein Schrägstrich zwischen Takt und Schlag
told-expected-which-bar = welcher der Takte mit dieser Zahl, wie (2)
told-expected-bracket = eine schließende Klammer
told-expected-number-of-note = die Nummer einer Note, ab 1
told-expected-nothing-more = nichts weiter
told-expected-bar-before-beat = ein Takt vor dem Schlag
told-expected-place = eine Stelle der Partitur
told-expected-place-alone = eine Stelle ohne Bemerkungen
told-expected-section = der Name einer Gruppe
told-expected-mark = ein Zeichen wie Abstrich, Aufstrich, angebunden, neu ansetzen, absetzen, am Frosch, Bindebogen, wie es kommt oder "Text"
told-expected-another-mark = ein weiteres Zeichen oder ein Trennzeichen
told-expected-name-of-voice = der Name der Stimme, wie 2
told-expected-pitch = eine Tonhöhe wie F#5
told-expected-pitch-or-flat = eine Tonhöhe wie F#5 oder Bb3
told-expected-voice = eine Stimme dieses Parts
told-found-nothing = nichts
told-found-end = das Zeilenende
told-found-quotation-mark = ein Anführungszeichen, das nie geschlossen wird
told-found-page = ein Text so lang wie eine Seite
told-found-text = „{ $text }“
told-why-no-movement = es gibt keinen Satz „{ $asked }“; die Datei hat { $there }
told-why-no-bar-there = { $whose } hat keinen { $bar }; { $last }
told-why-no-bar-there-ended = { $whose } hat keinen { $bar }; { $last }.
told-why-second-bar-first = der zweite Takt kommt vor dem ersten
told-whose-score = die Partitur
told-last-none = sie hat keine Takte
told-last-one = der letzte ist { $label }
told-last-several = die letzten sind { $labels }
told-bar-said = Takt { $label }
told-beat-said = Schlag { $at }
told-beats-one = 1 Schlag
told-beats-many = { $at } Schläge
told-place-beat = Takt { $label }, Schlag { $at } in { $part }
told-place-after = Takt { $label }, nach { $at } in { $part }
told-place-note = Takt { $label }, Note { $at } in { $part }
told-place-first = Takt { $label }, erste Note in { $part }
told-place-typed = { $at } in { $part }

# Kurzschrift

told-why-text-too-large = mehr als { $count } Zeichen; auf mehrere Texte oder Zeilen verteilen.
told-why-text-of-too-many-notes = ein Text darf im Ganzen von { $count } Noten sprechen, und bis hierher sind es mehr. In mehreren Texten eingeben, oder kürzere Strecken nennen.
told-why-no-section-yet = zuerst wird eine Gruppe erwartet, wie "Vn1" oder "alle": bisher ist keine genannt.
told-why-unknown-section-meant = „{ $name }“ ist keine Gruppe dieser Partitur. Vielleicht „{ $meant }“? Die Gruppen: { $known }.
told-why-unknown-section = „{ $name }“ ist keine Gruppe dieser Partitur. Die Gruppen: { $known }.
told-why-several-sections = eine einzige Gruppe wird erwartet, aber „{ $name }“ kann { $first } oder { $second } sein. Die Nummer dazuschreiben, oder die Mehrzahl für alle.
told-why-no-bar-before = vor dem Schlag wird ein Takt erwartet, wie 37/3: bisher ist keiner genannt.
told-why-unknown-movement = „{ $name }“ ist kein Satz dieser Partitur. Sie hat { $known }.
told-why-bar-of-several-movements = ein einziger Takt wird erwartet, aber { $bar } steht in den Sätzen { $movements }. Einen davon darüber nennen, auf einer eigenen Zeile: { $first }:
told-why-several-bars-numbered = ein einziger Takt wird erwartet, aber { $count } Takte haben die Zahl { $label }. Für den ersten { $one } schreiben, für den zweiten { $two }.
told-why-unknown-beat = { $bar } hat keinen { $beat }. Der Takt hat { $beats }.
told-why-bar-without-notes = eine Note wird erwartet, aber der Takt hat keine: { $place }.
told-why-no-note-begins = { $place }: dort beginnt keine Note. Noten beginnen auf Schlag { $there }.
told-why-rest-there = eine Note wird erwartet, und dort steht eine Pause: { $place }.
told-why-one-of-the-notes = eine der Noten von { $place } wird erwartet: { $there }.
told-why-stretch-backwards = eine Strecke geht vorwärts, aber { $bar-to } kommt vor { $bar-from }.
told-why-stretch-backwards-meant = eine Strecke geht vorwärts, aber { $bar-to } kommt vor { $bar-from }. Für Schläge eines Taktes { $meant } schreiben.
told-why-too-few-strokes = { $count } Striche werden erwartet, { $number } sind da: { $place }.
told-why-no-such-slur = über dieser Strecke wird ein gedruckter Bindebogen erwartet, und da ist keiner: { $place }.
told-why-no-such-slur-but = über dieser Strecke wird ein gedruckter Bindebogen erwartet, und da ist keiner: { $place }. Bindebögen dort: { $there }.
told-why-inside-slur = hier beginnt kein Strich: { $place } liegt unter einem Binde- oder Haltebogen ab { $place-begins }. Jene Note bezeichnen, oder den Bindebogen entfernen.
told-why-said-otherwise = jede Note hat einen Strich, aber Zeile { $line } sagt { $mark } für { $place }.
told-mark-down = Abstrich
told-mark-up = Aufstrich
told-mark-hooked = angebunden
told-mark-retake = neu angesetzt
told-mark-as-it-comes = wie es kommt
told-mark-lift = absetzen
told-why-strokes-in-a-row = mehrere Striche hintereinander können keine weiteren Zeichen tragen; dem Strich, der eines hat, eine eigene Stelle geben, wie 37/3 Abstrich neu ansetzen.
told-why-anchor-without-direction = ein Fixpunkt braucht eine Richtung; anchor 60/1 Abstrich oder Aufstrich schreiben.
told-why-dots-or-dashes = ein Anbinden schreibt man mit Punkten oder mit Tenutostrichen, eines von beiden.
told-why-dots-without-hook = Punkte und Tenutostriche sagen, wie ein Anbinden geschrieben wird; das Anbinden davor schreiben, wie in 41/3 angebunden punkte.
told-why-hook-or-retake = eine Note ist angebunden, neu angesetzt oder kommt, wie es kommt, nur eines davon; jedem seine eigene Stelle geben.
told-why-too-many-strokes-in-a-row = zu viele Striche hintereinander; mit einem Takt neu beginnen.
told-why-two-bows-at-most = eine Note hat höchstens zwei Striche; dem nächsten eine eigene Stelle geben.
told-why-as-it-comes-no-direction = was kommt, wie es kommt, hat keine eigene Richtung.
told-why-one-way = ein Anbinden oder Neuansetzen geht in eine Richtung; dem nächsten Strich eine eigene Stelle geben.
told-why-slur-needs-ends = ein Bindebogen braucht seine erste und seine letzte Note; 41/1-41/3 Bindebogen schreiben.

# Dateien

told-why-no-file = es gibt keine solche Datei; Namen und Ordner prüfen
told-why-may-not-read = diese Datei darf nicht gelesen werden; ihre Rechte prüfen
told-why-folder-not-file = das ist ein Ordner, keine Datei
told-why-file-too-large = die Datei ist größer als die Grenze von { $limit } Byte
told-why-input-too-large = mehr als die Grenze von { $limit } Byte
told-why-larger-than-limit = es ist größer als die Grenze von { $limit } Byte
told-why-not-utf8 = es ist kein Text in UTF-8
told-why-line-not-utf8 = Zeile { $line } ist kein Text in UTF-8; den Text als UTF-8 speichern und noch einmal versuchen
told-why-changed = jemand anders hat es seit dem Lesen geändert
told-why-locked = ein anderes Programm schreibt gerade daran
told-why-not-written = { $path } ließ sich nicht schreiben: { $why }.
told-why-not-written-but-there = { $path } ließ sich nicht schreiben: { $why }. Was vorher da war, ist noch da.
told-why-file-changed = { $path } wurde seit dem Lesen von jemand anderem geändert. Nichts ist überschrieben; noch einmal ausführen.
told-why-file-locked = { $path }: ein anderes Programm schreibt seit zehn Sekunden daran. Nichts ist geschrieben; noch einmal versuchen.
told-why-disk-full = die Platte ist voll; Platz schaffen und noch einmal ausführen
told-why-may-not-write = in diesem Ordner darf nicht geschrieben werden; seine Rechte prüfen, oder einen anderen Ort nennen
told-why-read-only = die Platte lässt sich nur lesen; einen anderen Ort nennen
told-why-no-folder = es gibt keinen solchen Ordner; ihn anlegen, oder einen anderen nennen
told-why-link-in-circle = es ist eine Verknüpfung, die im Kreis führt; die Datei selbst nennen
told-why-not-read-back = was geschrieben wurde, ließ sich nicht zurücklesen, und vorher war nichts da
told-why-not-read-back-kept = was geschrieben wurde, ließ sich nicht zurücklesen; was vorher da war, liegt in { $backup } ({ $why })
told-why-thousand-backups = tausend Sicherungen liegen daneben; sie durchsehen und entfernen
told-why-no-file-to-keep = es gibt keine Datei aufzuheben
told-why-no-such-folder = es gibt keinen solchen Ordner; den Namen prüfen
told-why-file-not-folder = das ist eine Datei, kein Ordner; den Ordner nennen, in dem sie liegt
told-why-too-many-files = mehr als { $count } Partituren und Fassungen; die Ordner darin einzeln auflisten
told-why-name-not-utf8 = der Name ist nicht in UTF-8; umbenennen
told-why-link-not-followed = eine Verknüpfung, der nicht gefolgt wird: sie kann aus dem Ordner führen; die Datei selbst hierher legen
told-why-too-deep = mehr als { $count } Ordner tief; für sich auflisten
told-why-index = das Verzeichnis des Ordners ist nicht brauchbar ({ $detail }); noch einmal mit --rebuild ausführen

# XML

told-why-xml-empty = die Datei ist leer; die Partitur neu exportieren
told-why-xml-not = das ist keine XML-Datei; eine MusicXML-Datei wählen (.musicxml, .xml oder .mxl)
told-why-xml-encoding = die Kodierung „{ $name }“ wird nicht gelesen; als UTF-8 speichern (UTF-16, ISO-8859-1 und windows-1252 werden auch gelesen)
told-why-xml-contradicted = die Datei gibt sich als { $claimed } aus, aber { $bytes }; die Kodierung in der ersten Zeile berichtigen, oder die Datei als UTF-8 speichern
told-claimed-utf8 = UTF-8 (was gilt, wo die erste Zeile keine Kodierung nennt)
told-bytes-not-utf8 = das Byte { $byte } hier ist kein UTF-8
told-bytes-not = das Byte { $byte } hier ist es nicht
told-bytes-half = hier steht ein halbes Zeichen ({ $byte })
told-bytes-are = ihre Bytes sind { $encoding }
told-bytes-single = ihre Zeichen haben einzelne Bytes
told-bytes-order-mark = sie beginnt mit dem Byte-Reihenfolge-Zeichen von UTF-8
told-why-xml-control = das Steuerzeichen { $code } ist in XML verboten; das Zeichen löschen, oder die Datei neu exportieren
told-why-xml-unfinished = die Datei endet mitten in dem, was hier beginnt ({ $what }); sie ist abgeschnitten: sie neu kopieren oder exportieren
told-why-xml-ends-inside = die Datei endet mitten in <{ $name }>, das in Zeile { $opened } begann; sie ist abgeschnitten: sie neu kopieren oder exportieren
told-why-xml-mismatched = </{ $name }> steht, wo </{ $open }> stehen muss, denn <{ $open }> begann in Zeile { $opened }; <{ $open }> schließen, oder die Datei neu exportieren
told-why-xml-stray = </{ $name }> schließt ein Element, das nicht begann; </{ $name }> löschen, oder die Datei neu exportieren
told-why-xml-no-root = die Datei enthält kein Element; die Partitur neu exportieren
told-why-xml-second-root = <{ $name }> steht nach dem Ende des äußersten Elements; nur eine Partitur in einer Datei lassen
told-why-xml-text-outside = außerhalb des äußersten Elements steht Text; löschen, was außerhalb steht
told-why-xml-misplaced = das darf hier nicht stehen ({ $what }); es an seinen Platz setzen, oder die Datei neu exportieren
told-what-comment = Kommentar
told-what-cdata = CDATA-Abschnitt
told-what-doctype = Dokumenttyp-Deklaration
told-what-instruction = Verarbeitungsanweisung
told-what-declaration = XML-Deklaration
told-what-tag = Tag
told-what-character = Zeichen
told-why-xml-not-a-name = „{ $name }“ ist kein Name; < als &lt; schreiben, wenn es Text ist
told-why-xml-attribute-twice = das Attribut { $name } ist zweimal angegeben; eines von beiden löschen
told-why-xml-attribute = { $fault }; name="value" schreiben
told-fault-blank = vor einem Attribut fehlt ein Leerzeichen
told-fault-name = das ist kein Name eines Attributs
told-fault-value = ein Attribut hat keinen Wert
told-fault-quotes = der Wert eines Attributs hat keine Anführungszeichen
told-fault-less-than = der Wert eines Attributs enthält ein <
told-fault-closing-quote = dem Wert eines Attributs fehlt das schließende Anführungszeichen
told-why-xml-ampersand = & beginnt einen Verweis, der nicht endet; & als &amp; schreiben
told-why-xml-reference = { $reference } steht für kein Zeichen von XML; das Zeichen selbst schreiben
told-why-xml-markup = das ist keine Auszeichnung von XML; < als &lt; schreiben, wenn es Text ist
told-why-xml-bytes = das Dokument ist länger als { $limit } Byte; ist die Datei wirklich eine Partitur, die Grenze erhöhen
told-why-xml-depth = Elemente sind tiefer als { $limit } verschachtelt; ist die Datei wirklich eine Partitur, die Grenze erhöhen
told-why-xml-attributes = ein Element hat mehr als { $limit } Attribute; ist die Datei wirklich eine Partitur, die Grenze erhöhen
told-why-xml-elements = es gibt mehr als { $limit } Elemente; ist die Datei wirklich eine Partitur, die Grenze erhöhen
told-why-xml-names = es gibt mehr als { $limit } Elementnamen, die MusicXML fremd sind; ist die Datei wirklich eine Partitur, die Grenze erhöhen
told-why-xml-entity = &{ $name }; bleibt, wie es geschrieben ist, und wird nicht aufgelöst; das Zeichen selbst schreiben
told-why-xml-entity-often = &{ $name }; bleibt, wie es geschrieben ist, und wird nicht aufgelöst ({ $count }-mal in der Datei); das Zeichen selbst schreiben

# Pakete

told-why-in-package = { $member } im Paket: { $why }
told-why-no-package = das ist kein Paket (.mxl); eine Datei .mxl, .musicxml oder .xml wählen
told-why-package-too-long = das Paket ist länger als { $limit } Byte; ist es wirklich eine Partitur, die Grenze erhöhen
told-why-package-damaged = das Paket ist beschädigt ({ $damage }); es neu kopieren oder exportieren
told-damage-same-name = zwei Teile haben denselben Namen
told-why-package-members = das Paket hat { $count } Teile, mehr als die Grenze von { $limit }; ist es wirklich eine Partitur, die Grenze erhöhen
told-why-member-too-large = { $member } im Paket ist ausgepackt größer als die Grenze von { $limit } Byte; ist es wirklich eine Partitur, die Grenze erhöhen
told-why-member-too-dense = { $member } im Paket ist ausgepackt mehr als { $limit }-mal so groß, und das ist die Grenze; ist es wirklich eine Partitur, die Grenze erhöhen
told-why-member-locked = { $member } im Paket ist mit einem Kennwort verschlossen; es ohne speichern
told-why-member-packing = { $member } im Paket ist mit dem Verfahren { $method } gepackt, das nicht gelesen wird; die Partitur neu exportieren, oder auspacken und die Datei .musicxml darin öffnen
told-why-package-without-score = das Paket enthält keine Partitur; sie neu exportieren, oder auspacken und die Datei .musicxml darin öffnen
told-why-package-several = das Paket hat keine META-INF/container.xml und enthält mehrere Partituren ({ $names }); es auspacken und eine davon öffnen
told-why-container-bad = META-INF/container.xml im Paket ist nicht lesbar: { $why }
told-why-container-names-none = META-INF/container.xml im Paket nennt keine Partitur; sie neu exportieren, oder auspacken und die Datei .musicxml darin öffnen
told-why-container-nowhere = META-INF/container.xml nennt „{ $path }“, was nicht im Paket ist; die Partitur neu exportieren, oder auspacken und die Datei .musicxml darin öffnen
told-why-container-nowhere-but = META-INF/container.xml nennt „{ $path }“, was nicht im Paket ist (es enthält { $scores }); die Partitur neu exportieren, oder auspacken und die Datei .musicxml darin öffnen
told-why-container-outside = META-INF/container.xml nennt „{ $path }“, was außerhalb des Pakets liegt; die Partitur neu exportieren, oder auspacken und die Datei .musicxml darin öffnen
told-why-container-missing = das Paket hat keine META-INF/container.xml; { $score }, die einzige Partitur darin, wurde gelesen
told-why-container-type = META-INF/container.xml nennt die Partitur „{ $type }“ und nicht „{ $usual }“; sie wurde trotzdem gelesen

# Wo eine Partitur sich widerspricht

told-why-not-a-score = Das ist XML, aber keine Partitur: es beginnt mit <{ $name }>.
told-why-part-not-listed = Die Stimme „{ $name }“ steht nicht im Verzeichnis der Stimmen, also hat sie keinen Namen.
told-why-part-without-music = Die Stimme „{ $name }“ steht im Verzeichnis der Stimmen, hat aber keine Musik.
told-why-divisions = „{ $text }“ Teile auf eine Viertelnote ergeben keinen Sinn; die Zahl davor gilt weiter.
told-why-time-signature = Eine Taktangabe ist nicht lesbar; die vorige gilt weiter.
told-why-bar-too-long = Die Noten des Takts ergeben zusammen { $told } ganze Noten; die Taktangabe verlangt { $asked }.
told-why-bar-too-short = Die Noten des Takts ergeben zusammen nur { $told } ganze Noten; die Taktangabe verlangt { $asked }.
told-why-repeat-in-repeat = Hier beginnt eine Wiederholung, bevor eine andere zu Ende ist.
told-why-ending-in-ending = Hier beginnt eine Klammer, bevor eine andere zu Ende ist.
told-why-ending-never-began = Hier endet eine Klammer, die nie begann.
told-why-repeat-never-ends = Hier beginnt eine Wiederholung, die nie endet.
told-why-ending-never-ends = Hier beginnt eine Klammer, die nie endet.
told-why-metronome = Eine Metronomangabe ist nicht lesbar; sie wird übergangen.
told-why-no-pitch = Eine Note hat keine lesbare Tonhöhe; sie zählt nur in der Zeit.
told-why-duration-missing-value = Die Dauer einer Note fehlt; ihr Notenwert gilt.
told-why-duration-missing-none = Die Dauer einer Note fehlt; sie nimmt keine Zeit ein.
told-why-duration-senseless-value = Die Dauer einer Note ergibt keinen Sinn; ihr Notenwert gilt.
told-why-duration-senseless-none = Die Dauer einer Note ergibt keinen Sinn; sie nimmt keine Zeit ein.
told-why-duration-drawn = Eine Note ist als { $drawn } einer ganzen Note geschrieben, dauert aber { $told }; die Dauer gilt.
told-why-backup = Ein <backup> geht { $by } einer ganzen Note zu weit zurück, vor den Anfang des Takts; was folgt, wird vom Taktanfang an gelesen.
told-why-no-duration = Ein <{ $name }> hat keine Dauer, oder eine, die keinen Sinn ergibt; es wird übergangen.
told-why-duration-before-divisions = Eine Dauer kommt, bevor ein <divisions> sagt, was sie zählt; sie wird vom ersten Notenwert genommen, oder als Viertelnote.
told-why-slur-begins-again = Der Bindebogen Nummer { $number } beginnt wieder, bevor er zu Ende ist.
told-why-slur-never-ends-in-file = Hier beginnt ein Bindebogen, der nie endet.
told-why-slur-never-began-in-file = Hier endet ein Bindebogen, der nie begann.
told-why-slurs-cross = Ein Bindebogen beginnt unter einem anderen und endet nach ihm: die beiden kreuzen sich.
told-why-tempo = Ein Tempo von „{ $text }“ Viertelnoten in der Minute ergibt keinen Sinn; es wird übergangen.
told-why-hairpin-never-ends = Hier beginnt eine Gabel, die nie endet.
told-why-hairpin-never-began = Hier endet eine Gabel, die nie begann.
told-why-dashes-never-end = Hier beginnt eine Strichlinie, die nie endet.
told-why-dashes-never-began = Hier endet eine Strichlinie, die nie begann.
told-why-tie-without-note = Hier beginnt ein Haltebogen, aber keine Note derselben Tonhöhe folgt.
told-why-tie-from-nothing = Hier endet ein Haltebogen, aber keine Note derselben Tonhöhe, die ihn beginnt, kommt davor.
told-damage-no-zip = kein Zip-Archiv

# Dateien der Fassungen

told-why-layer-too-large = die Datei ist größer als { $limit } Byte; keine Strichfassung ist es
told-why-not-a-layer = das ist keine Strichfassung: eine Fassung ist JSON mit "format": "arcata-layer"
told-why-layer-cut-short = die Datei endet in der Mitte, wie wenn das Schreiben abgebrochen wurde; daneben nach der Sicherung sehen, oder sie aus der Versionsverwaltung holen
told-why-layer-later-version = die Fassung ist in Version { $version } des Formats geschrieben; dieses Programm liest Version { $number }. Ein neueres Programm nehmen, oder die Fassung in Version { $number } schreiben lassen
told-why-layer-unsound = die Fassung ist nicht lesbar: { $why }
told-why-layer-entry = Eintrag { $number } ({ $at }): { $why }
told-why-layer-version = "version" fehlt oder ist keine Version, die es gibt; { $number } schreiben
told-why-layer-offset = "offset": "{ $text }" ist keine Dauer; ganze Noten als Bruch schreiben, wie 3/8
told-why-layer-pitch = "pitch": "{ $text }" ist keine Tonhöhe; eine wie F#5, Bb3 oder x schreiben
told-why-layer-counts = "bar_ordinal", "grace" und "copy" zählen ab 1
told-why-layer-sign = "sign" sagt, wie ein Anbinden geschrieben wird; es herausnehmen, oder aus dem Zeichen ein Anbinden machen
told-why-layer-slur-end = ein Bindebogen braucht "to", seine letzte Note
told-why-layer-in-bow = ein Zeichen "in bow" braucht "place"; frog, lower-half, middle, upper-half, tip oder whole schreiben
told-why-layer-text = ein Zeichen "text" braucht "text", die Worte zum Drucken
told-why-layer-slur-moved = ein verlegter Bindebogen braucht "new_from" oder "new_to"

# Profile

told-why-no-player = es gibt keinen Spieler „{ $name }“: { $known }
told-why-no-such-profile = kein solches Profil; erlaubt sind { $names }
told-why-text-expected = Text in Anführungszeichen wird erwartet
told-why-no-such-style = kein solcher Stil; erlaubt sind { $names }
told-why-no-such-section = kein solcher Abschnitt; erlaubt sind { $names }
told-why-section-expected = ein Abschnitt wird erwartet: [{ $name }]
told-why-no-such-setting = keine solche Einstellung; erlaubt sind { $names }
told-why-no-such-setting-alone = keine solche Einstellung
told-why-unit = die Einheit ist { $unit }
told-why-allowed = erlaubt sind { $names }
told-why-word-expected = ein Wort in Anführungszeichen wird erwartet
told-why-numbers-expected = { $count } ganze Zahlen von klein nach groß werden erwartet, von { $low } bis { $high } ({ $unit })
told-why-number-expected = eine ganze Zahl von { $low } bis { $high } wird erwartet ({ $unit })

# Dateien mit Einstellungen

told-why-format = das Format ist nicht "{ $format }"
told-why-format-task = das Format ist nicht "{ $format }": das ist keine Aufgabe
told-why-format-key = das Format ist nicht "{ $format }": das ist kein Schlüssel einer Klasse; mit --key einen anderen nennen
told-why-format-habits = das Format ist nicht "{ $format }": das ist keine Datei von arcata habits learn
told-why-format-hand = das Format ist nicht "{ $format }": die Datei nennen, die die Seite gegeben hat
told-why-version = Version { $version } ist nicht bekannt, nur Version { $number }
told-why-version-habits = Version { $version } ist nicht bekannt, nur Version { $number }: neu lernen
told-why-line-missing = eine Zeile mit { $name } fehlt
told-why-missing-field = `{ $name }` fehlt
told-why-unknown-field = `{ $name }` gibt es nicht; erlaubt sind { $names }
told-why-unknown-field-quoted = "{ $name }" gibt es nicht; erlaubt sind { $names }
told-why-unknown-rule = keine Regel heißt "{ $name }": "arcata rules" führt sie auf
told-why-unknown-rule-meant = keine Regel heißt "{ $name }": vielleicht ist "{ $meant }" gemeint
told-why-unknown-rule-aside = keine Regel heißt "{ $name }"; `arcata rules` führt sie auf
told-why-no-style = es gibt keinen Stil "{ $name }": { $known }

# Gewohnheiten

told-why-no-price = es gibt keinen Aufschlag "{ $name }", der gelernt wird
told-why-price-out-of-measure = { $name } = { $price } ist über alles Maß: der Stil { $style } hat { $by-style }, und gelesen wird { $low } bis { $high }
told-why-habits-of-other-style = diese Gewohnheiten wurden im Stil { $style } gelernt, und hier ist { $other } verlangt: --style { $style } schreiben, oder sie in { $other } lernen
told-why-too-many-strokes-to-learn = eine Zahl, und keine große
told-why-search-found-nothing = die Suche hat nichts gefunden

# Beiseitegelegte Befunde

told-why-aside-all-bars = was beiseitegelegt ist, gilt für alle Takte einer Zahl; (1), (2) weglassen
told-why-aside-everything = der Eintrag nennt weder Regel noch Stimme, Takte oder Satz: er würde alles beiseitelegen
told-why-aside-slur = ein Bindebogen ist = "phrase" oder "bow"
told-why-aside-bars = Takte sind nur gedruckte Zahlen; Stimme, Satz und Schlag haben eigene Zeilen
told-why-aside-no-reason = der Eintrag hat keinen Grund: sagen, warum, für den, der ihn nächstes Jahr liest

# Klassen

told-why-key-empty = ein Name oder ein Pseudonym ist leer
told-why-key-twice = "{ $name }" steht dort zweimal: eines herausnehmen
told-why-key-shared = das Pseudonym "{ $name }" gehört zwei Studierenden: eines ändern
told-why-hand-journal = das ist kein "{ $journal }" der Version { $version }
told-why-hand-act = das ist keine Handlung; die Zeile herausnehmen
told-why-task-profile = die Profildatei { $name } wurde nicht gelesen
told-why-task-title = der Titel ist leer: der Aufgabe einen Namen geben
told-why-task-unknown = { $setting } "{ $given }" ist nicht bekannt: { $names } schreiben
told-why-task-range = { $setting } ist { $given }: { $low } bis { $high } schreiben
told-setting-severity = das Gewicht
told-setting-style = der Stil
told-setting-tempo = das Tempo, in Viertelnoten in der Minute,
told-setting-source = die Quelle
told-setting-expected = was erwartet wird,
told-setting-repairs = was aus Verbesserungen wird,
told-setting-paper = das Papier
told-why-task-language = keine Sprache ist genannt: eine schreiben, wie ["en"]
told-why-task-parts = Stimmen werden ab 1 gezählt
told-why-task-player = der Spieler "{ $name }" ist nicht bekannt: { $names } schreiben, oder eine Profildatei, deren Name auf { $ending } endet
told-why-task-passages = { $number } Stellen passen nicht auf eine Seite: 0 bis { $limit } schreiben
told-why-given-without-notes = { "[" }given]: die Melodie { $name } hat keine Noten
told-why-neither-folder-nor-zip = das ist weder ein Ordner noch ein .zip-Archiv ({ $detail })
told-why-archive-too-many = in diesem Archiv sind mehr als { $count } Dateien
told-why-no-random = das System gibt keine Zufallszahlen: { $why }
told-why-program-failed = das Programm ist gescheitert
told-why-program-failed-here = das Programm ist an dieser Datei gescheitert; bitte melden
told-why-no-bowed-part = keine Stimme darin ist für ein Streichinstrument
told-why-too-long = es dauerte länger als { $count } Sekunden; --limit gibt mehr Zeit
told-why-too-much-memory = es brauchte mehr als { $count } MB Speicher; --memory gibt mehr
told-why-order = ein Auftrag, der keiner ist

# Notenstich

told-why-engraver-fonts = der Notenstich kann seine Schriften, 12 MB, nicht in den Ordner für vorläufige Dateien schreiben; dort Platz schaffen oder mit TMPDIR einen anderen nennen
told-why-engraver-refused = { $bars }: lässt sich nicht stechen; der Rest der Partitur schon
told-why-engraver-slow = { $bars }: in { $count } s nicht gestochen; der Rest der Partitur schon
told-bars-one = Takt { $number } (vom Anfang der Datei gezählt)
told-bars-many = Takte { $from } bis { $to } (vom Anfang der Datei gezählt)
told-why-engraver-no-start = der Prozess für den Notenstich startet nicht; nachsehen, ob das Programm hier Programme starten darf
told-why-engraved-unreadable = die gestochene Musik ist nicht lesbar: { $why }
told-why-nothing-to-draw = es gibt nichts zu zeichnen
told-why-no-size = es hat keine Größe
told-why-no-drawing = es hat keine Zeichnung
told-why-no-staff = es hat kein System
told-why-picture-not-made = das Bild lässt sich nicht machen: { $why }
told-why-too-many-dots = { $width } mal { $height } Punkte sind zu viele; weniger Takte oder Stimmen verlangen, oder weniger Punkte je Zoll
told-why-pdf-refuses = das PDF nimmt die Zeichnung nicht
told-why-pdf-not-made = das PDF ließ sich nicht machen: { $why }; stattdessen .html oder .txt schreiben
told-why-font = eine Schrift ist nicht lesbar
told-why-paper-size = das Papier hat keine Größe
told-why-sheet-words-only = { $number } Takte ändern sich: mehr als { $limit }, also hat das Blatt nur Worte.
told-why-engraver-refuses-part = der Notenstich hat die Stimme abgelehnt
told-why-engraver-gave-up = die Stimme war in { $count } s nicht gestochen und wurde aufgegeben

# The workbench

told-why-no-part-called = keine Stimme heißt „{ $name }“
told-why-no-place-in-bar = „{ $text }“ ist keine Stelle in einem Takt
told-why-no-such-part = eine solche Stimme gibt es nicht
told-why-no-such-bar = einen solchen Takt gibt es nicht
told-why-no-such-bars = solche Takte gibt es nicht
told-why-no-small-picture = diese Takte gibt es nicht, oder es sind zu viele für ein kleines Bild
told-why-no-such-line = eine solche Zeile gibt es nicht
told-why-no-rule-so = keine Regel heißt so
told-why-no-rule-called = keine Regel heißt „{ $name }“
told-why-carried-by-file = eine Strichfassung wird übertragen, wenn sich die Datei ändert, nicht vorher
told-why-no-such-stroke = einen solchen Strich gibt es nicht
told-why-no-slur-begins = dort beginnt kein Bindebogen
told-why-no-such-proposal = einen solchen Vorschlag gibt es nicht
told-why-proposal-changes-nothing = dieser Vorschlag ändert nichts in der Datei: Machen Sie die Änderung in der Partitur selbst
told-why-no-bow-then = dann bewegt sich in dieser Zeile kein Bogen
told-why-no-bow-in-parts = in diesen Stimmen bewegt sich kein Bogen
told-why-no-bow-in-bars = in diesen Takten bewegt sich kein Bogen
told-why-slur-entry-unanswered = Eintrag { $number } zu Bindebögen neben der Partitur: Kein Bindebogen entspricht ihm
told-why-slur-of-entry = { $part }, { $at }: dort beginnt kein Bindebogen
told-why-paper-by-program = Seiten für Papier macht das installierte Programm; hier drucken Sie die Seite selbst
told-why-no-such-act = einen solchen Schritt gibt es nicht
told-why-was-for-old-file = „{ $sentence }“ galt für die Datei, wie sie war
told-why-no-layer-on-desk = keine offene Strichfassung heißt „{ $name }“
told-why-no-such-layer = eine solche Strichfassung ist nicht offen
told-why-layer-name-length = eine Strichfassung hat einen Namen von 1 bis { $limit } Buchstaben
told-why-layer-name-taken = eine Strichfassung namens „{ $name }“ ist schon offen
told-why-layers-many = { $count } Strichfassungen sind offen: Schließen Sie erst eine
told-why-layer-edited = das ist die Strichfassung, die gerade bearbeitet wird
told-why-layer-one-stays = eine Strichfassung muss offen bleiben
told-why-layers-counts-differ = { $count } Strichfassungen sind offen, hier sind es { $number }
told-why-layer-of-other-music = keiner seiner Striche findet in dieser Partitur seine Note
told-why-late = die Partitur hat sich inzwischen geändert; sehen Sie noch einmal hin
told-why-slur-doubled = die Partitur hat diesen Bindebogen schon, und eine Strichfassung nimmt ihn weg: Nehmen Sie die Änderung in die Strichfassung
told-why-changes-gone = die Änderungen an der Partitur selbst galten für die alte Datei und sind weg
told-why-score-unchanged = an der Partitur selbst ist nichts geändert
told-why-kept-one = 1 Strich ist geblieben, wie er war
told-why-kept-many = { $count } Striche sind geblieben, wie sie waren
told-why-is-now = { $place } ist jetzt { $place-now }: bitte nachsehen
told-why-score-on-no-disk = die Partitur liegt auf keinem Datenträger
told-why-score-in-no-folder = die Partitur liegt in keinem Ordner
told-why-nothing-asked = es ist nichts verlangt
told-why-change-empty = die Änderung ist leer
told-why-reason-wanted = dazu gehört der Grund, in wenigen Worten
told-why-tempo-range = ein Tempo hat 10 bis 400 Viertel in der Minute
told-why-louder-range = alles wird bis zu { $limit } Stufen leiser oder lauter gespielt
told-why-no-style-called = kein Stil heißt „{ $name }“: { $known }
told-why-note-no-address = die Note hat keine Adresse
told-why-note-no-layer-address = eine Note hat keine Adresse, die eine Strichfassung nennen könnte
told-why-nothing-was-asked = dort war nichts verlangt
told-why-text-no-bowings = der Text enthält keine Striche
told-why-hide-layer-first = dort hat eine Strichfassung etwas gesetzt oder weggenommen: Blenden Sie sie erst aus, oder nehmen Sie die Änderung in die Strichfassung
told-why-more-than-slurs = diese Änderung betrifft nicht nur Bindebögen: Sie kann nur in die Partitur
told-why-journal-format = es heißt darin { $format }, und das ist kein Journal
told-why-journal-version = es ist in Version { $version } geschrieben, und dieses Programm liest Version { $number }
told-why-journal-act = Zeile { $line } enthält einen Schritt, den dieses Programm nicht kennt
told-why-journal-broken = Zeile { $line } ist beschädigt
told-why-journal-not-read = das Journal ließ sich nicht bis zum Ende lesen ({ $why }): { $steps } daraus gelten, und alles ist als { $name } aufbewahrt
told-why-browser-full = der Browser hat dafür keinen Platz mehr; sichern Sie Ihre Arbeit als Dateien und schaffen Sie dann Platz
told-why-browser-journal = der Browser lässt das Journal nicht ändern
told-why-browser-second-journal = der Browser hat keinen Platz für eine zweite Kopie des Journals
told-why-page-of-other-version = die Seite und ihr Modul sind von verschiedenen Versionen: Laden Sie die Seite neu
told-why-page-writes-no-score = eine Seite kann die Datei der Partitur nicht schreiben: Sichern Sie die Partitur mit den Strichen als neue Datei
told-why-page-no-folder = eine Seite hat keinen Ordner, in den sie schreiben könnte: Sichern Sie die Datei
told-steps-one = 1 Schritt
told-steps-many = { $count } Schritte
told-why-held-open = ein anderes Programm hat die Datei offen; schließen Sie sie dort und versuchen Sie es noch einmal
told-why-held-open-or-forbidden = dort dürfen Sie nicht schreiben, oder ein anderes Programm hat die Datei offen; schließen Sie sie dort, oder nennen Sie einen anderen Ort
