# Warum ein Befehl nicht tun konnte, was verlangt war, und was er neben dem Ergebnis sagt.

# Was von einem Befehl verlangt war

failure-no-scores = Keine Partitur gefunden in { $where }. Eine Datei .musicxml, .xml oder .mxl nennen, oder einen Ordner, der welche enthält.
failure-of = { $of }: { $why }
failure-of-ended = { $of }: { $why }.
failure-in = { $of }, { $why }
failure-standard-input = Standardeingabe
failure-profile = Profil { $name }: { $why }
failure-profiles = Mitgelieferte Profile: professional, amateur, student; oder eine Profildatei nennen.
failure-bars = --bars { $text }: { $why }. Eine gedruckte Taktzahl schreiben oder zwei mit Bindestrich, wie 12 oder 5-8.
failure-names-part-for-bars = es nennt { $part }, wo nur Takte gefragt sind; es mit --part sagen
failure-bars-of-other-movement = es ist aus einem anderen Satz als --movement { $asked }
failure-typed = { $option } "{ $text }": { $why }
failure-movement = --movement { $asked }: einen solchen Satz gibt es nicht. Die Datei hat: { $there }.
failure-part = Keine Stimme heißt „{ $asked }“. Die Streicherstimmen der Partitur: { $known }.
failure-rule = Keine Regel heißt „{ $asked }“. Die Regeln: { $known }.
failure-one-score = Eine Partitur lässt sich schreiben, aber { $count } sind genannt. Eine auf einmal nennen.
failure-same-file = { $path } wird von diesem Befehl gelesen. Eine andere Datei nennen: diese wird nicht überschrieben.
failure-score-name = { $path }: der Name sagt nicht, was für eine Partiturdatei es sein soll. Ihn auf .musicxml oder .xml enden lassen für eine einfache Partitur, auf .mxl für ein Paket. Nichts ist geschrieben.
failure-two-in-one = Bericht und Partitur gingen beide nach { $path }. Mit --out und --write zwei Dateien nennen.
failure-exists = { $path } ist schon da. Nichts ist geschrieben; mit --out einen anderen Ordner nennen, oder --replace sagen.
failure-exist = { $path } und { $more } weitere sind schon da. Nichts ist geschrieben; mit --out einen anderen Ordner nennen, oder --replace sagen.
failure-house = Hausprofil { $name }: { $why }
failure-part-not-made = Die Stimme { $part } ließ sich nicht machen: { $why }.
failure-marks = Die Zeichen ließen sich nicht ändern: { $why }
failure-not-a-review = es gibt eine Datei dieses Namens, die keine Durchsicht ist; mit --out eine andere nennen
failure-workbench = Die Werkbank öffnet nicht: { $why }.
failure-go-through = Die Seite öffnet nicht: { $why }
failure-no-browser = es ließ sich kein Browser öffnen; die Adresse oben in einem auf diesem Rechner öffnen
open-by-another = Diese Partitur ist schon in einer Werkbank offen; deren Seite wird gezeigt.
open-is-kept = Was geschieht, wird gleich neben der Partitur aufgehoben. Beenden mit Strg+C.
open-is-kept-in = Was geschieht, wird gleich in { $path } aufgehoben. Beenden mit Strg+C.
class-hand-set-beside = { $journal } ist ab Zeile { $line } nicht zu verstehen: Was davor steht, gilt, und alles ist als { $kept } aufgehoben.

# Bilder

failure-picture = Kein Bild: { $why }.
failure-picture-no-file = mit --out FILE sagen, wohin es geht
failure-picture-nothing = es gibt nichts zu zeichnen
failure-picture-no-bow = in diesen Takten dieser Stimmen bewegt sich kein Bogen

# Geschriebene Partituren

score-alone = { $path } ist die Partitur allein, wie ihr Name sagt; das Paket, aus dem sie kommt, bleibt, wie es ist.{ $also ->
    [yes] { " " }Was sonst im Paket war, ist nicht kopiert ({ $left }); ein Name auf .mxl behält es.
   *[no] { "" }
}
score-package = { $path } ist ein neues Paket, wie sein Name sagt, mit { $member } darin.
names-and-more = { $names } und { $more } weitere
marks-taken-out = { $count } Zeichen herausgenommen, der Rest geschrieben nach { $path }
marks-written = { $count } Zeichen geschrieben nach { $path }

# Fixpunkte und Enden

failure-anchor = --anchor "{ $text }": { $why } Die Stimme schreiben, wenn es mehrere sind, Takt/Schlag, und down, up, hook oder retake, wie "60/1 down" oder "Viola 12/2½ up".
failure-ending = --end "{ $text }": { $why } Eine gedruckte Taktzahl und down oder up schreiben, wie "8 down".
wish-of-several-movements = { $bar } steht in den Sätzen { $movements }: einen davor schreiben, wie "{ $such }"
wish-stretch = es nennt eine Strecke, wo ein einziger Strich festgelegt wird
wish-no-beat = kein Schlag ist genannt
wish-by-note = Striche werden mit ihren Schlägen genannt, nicht mit Noten
wish-none-of = "{ $word }" ist keines von down, up, hook, retake
wish-says-nothing = es sagt nicht, was der Strich tun soll
wish-no-line = es gibt keine gestrichene Zeile
wish-several-parts = mehrere Stimmen sind gezeigt; vor dem Takt eine nennen: { $names }
wish-no-such-line = keine Zeile heißt „{ $part }“: { $names }
wish-no-stroke-in-bar = in { $bar } beginnt kein Strich
wish-no-stroke-at = bei { $place } beginnt kein Strich; dort beginnen welche auf Schlag { $beats }
wish-bar-after = { $bar } nach { $length }
ending-names-part = es nennt { $part }, wo nur ein Takt gefragt ist; es mit --part sagen
ending-stretch = es nennt eine Strecke, wo es um das Ende eines Takts geht
ending-expects = ein Takt und ein Strich werden erwartet
ending-neither = "{ $word }" ist weder down noch up

# Beiseitelegen

failure-aside-file = { $of }, { $why } Berichtigen, oder mit --tell-all durchsehen.
failure-aside = Nichts ist beiseitegelegt: { $text }: { $why }
failure-aside-bars-of-several = Nichts ist beiseitegelegt: { $movements } haben { $many ->
    [yes] die Takte
   *[no] Takt
} { $bars }. Sagen, welcher gemeint ist, etwa --movement { $such }.
failure-nothing-aside = Nichts ist vermerkt: dort in { $score } { $what ->
    [slur] beginnt kein Bindebogen
   *[finding] gibt es keinen Befund
}.
aside-needs-reason = ein Grund in wenigen Worten wird mit dem Eintrag aufgehoben
aside-other-beat = --bars nennt einen anderen Schlag
aside-whole-review = das wäre die ganze Durchsicht
aside-name-something = eine Regel, eine Stimme, Takte oder einen Satz nennen
aside-no-movement = es gibt keinen Satz „{ $asked }“
aside-other-movement = --movement nennt einen anderen Satz
aside-stretch = eine Strecke wird in ganzen Takten beiseitegelegt
aside-by-note = Befunde werden mit ihren Schlägen genannt, nicht mit Noten

# Gewohnheiten

failure-no-habits = Nichts ist gelernt, und nichts ist geschrieben: { $why }.
habits-no-marks = es gibt kein Strichzeichen, aus dem sich lernen ließe
habits-too-few = { $strokes ->
    [one] 1 bezeichneter Strich ist zu wenig
   *[other] { $strokes } bezeichnete Striche sind zu wenig
}; { $more } weitere würden genügen. Einige Zeilen, in denen jeder Strich bezeichnet ist, helfen am meisten
habits-sparse = die Zeichen ({ $strokes }) stehen weit auseinander, jedes dort, wo der Konzertmeister von dem abweicht, was von selbst kommt; von solchen Zeichen sind { $wanted } nötig, noch { $more }. Oder jeden Strich einiger Zeilen bezeichnen: { $least } Striche genügen
habits-foreseen = von { $strokes } Strichen in ausgelassenen Takten sehen Aufschläge, die aus den anderen Takten gelernt sind, { $after } voraus, der Stil allein { $before }
habits-no-gain = was hier bezeichnet ist, lässt sich ohne ebenso gut voraussehen: { $foreseen }
habits-unsure = es kann Zufall sein: { $foreseen }; { $more } weitere Striche würden es zeigen

# Änderungsblätter

failure-sheet = Kein Änderungsblatt ist geschrieben: { $why }
failure-stands = --stands { $text }: { $why }. Gruppen mit ihren Zahlen schreiben, wie "Vn1=7, Vn2=6, Va=5".
sheet-of-other-music = die Fassung „{ $title }“ wurde für andere Musik als die dieser Partitur gemacht; was keine Note findet, steht auf der Seite für die Notenbibliothek. Die Fassung zuerst auf diese Partitur übertragen.
sheet-pdf-on-terminal = ein PDF ist kein Text für ein Terminal; mit --out eine Datei nennen
stands-no-equals = zwischen Gruppe und Zahl steht kein =
stands-number = die Zahl der Pulte muss eine ganze Zahl bis { $limit } sein

# Klassen

failure-key = Der Schlüssel { $of }, { $why }
failure-no-hand-ins = Nichts ist abgegeben: { $path } enthält keine Datei. Den Ordner oder das .zip-Archiv mit den Partituren nennen.
class-done = { $read } von { $all } Abgaben haben ein Blatt{ $kept ->
    [0] .
   *[other] ; { $kept } waren unverändert.
}
class-not-read = Nicht gelesen: { $file } ({ $pseudonym }): { $why }
class-new-file = Neue Datei: { $file } ({ $pseudonym }); ihr Blatt hat das vorige ersetzt.
class-alike-told = { $pairs ->
    [one] 1 Paar von Abgaben gleicht sich
   *[other] { $pairs } Paare von Abgaben gleichen sich
} über die Aufgabe hinaus; das ist eine Frage, kein Beweis: { $path }
class-for-you = Für die Lehrkraft: { $path }
class-shown = Zum Zeigen: { $path }{ $small ->
    [yes] { " " }(weniger als zehn: nichts ist aufgeschlüsselt)
   *[no] { "" }
}
