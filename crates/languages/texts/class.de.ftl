# Blätter der Studierenden und die Seiten einer Klasse.

part-violin = Violine
part-viola = Viola
part-cello = Violoncello
part-bass = Kontrabass
part-other-bowed = Streichinstrument
part-other = Stimme

sheet-due = fällig { $due }
sheet-works = Was gelingt
sheet-works-nothing = Noch geht der Bogen keine vier Takte lang ohne Befund von selbst auf; die Stellen unten sind der Ort, um anzufangen.
sheet-passages = Zum Ansehen
sheet-passages-nothing = Nichts gefunden, worauf die Aufgabe achtet.
sheet-bar = Takt { $bar }
sheet-bar-beat = Takt { $bar }, Schlag { $beat }
sheet-whole-score = alle Stimmen
sheet-also = Ebenso in Takt { $bars }.
sheet-what = Was geschieht
sheet-why = Warum es zählt
sheet-try = Zum Probieren
sheet-hint = Eine Änderung dieser Art hilft: { $kind }.
sheet-question = Zum Nachdenken
sheet-own = Aus dem Unterricht
sheet-now = So steht es da
sheet-repaired = Eine Art, es zu beheben
sheet-no-picture = Diese Takte lassen sich nicht stechen.
sheet-rest = Außerdem gefunden
sheet-rest-more = und { $count } weitere Arten von Befunden
sheet-given = Was gegeben war
sheet-criteria = Was die Aufgabe verlangt
sheet-criterion-met = siehe { $rules }
sheet-criterion-free = nichts gefunden
sheet-criterion-hand = das sieht sich die Lehrkraft an
sheet-calculated = Wie gerechnet wurde
sheet-calculated-for = Die Striche sind für { $player } im Stil { $style } berechnet, aus dem, was in der Partitur steht.
sheet-lane = Unter dem System: der Bogen, Frosch oben, Spitze unten, dick nahe am Frosch.
sheet-advice = Das Programm rechnet und rät; die Spieler entscheiden. Es gibt keine Noten.
sheet-caution = Wenn eine Spielweise Hand, Arm oder Rücken belastet: ausruhen und bei Schmerzen Lehrkraft oder Arzt fragen.
sheet-player-professional = Berufsmusiker
sheet-player-amateur = Liebhaber
sheet-player-student = Schüler
sheet-player-own = die Spieler, die deine Lehrperson beschreibt
sheet-since = Seit { $task }
sheet-since-gone = nicht mehr gefunden: { $rules }
sheet-since-new = neu: { $rules }
sheet-since-back = wieder da: { $rules }

works-comes-out = Takt { $from } bis { $to }, { $part }: der Bogen geht von selbst auf. Alle { $downbeats } Taktanfänge, auf denen ein Strich beginnt, sind Abstriche, und keiner der { $strokes } Striche muss neu angesetzt oder angebunden werden.
works-comes-out-plain = Takt { $from } bis { $to }, { $part }: der Bogen geht von selbst auf; keiner der { $strokes } Striche muss neu angesetzt oder angebunden werden.
works-swell-up = Takt { $bar }, { $part }: das Crescendo liegt auf einem Aufstrich, der von selbst wächst.
works-swell-down = Takt { $bar }, { $part }: das Diminuendo liegt auf einem Abstrich, der von selbst abnimmt.
works-long-slur = Takt { $bar }, { $part }: der Bindebogen über { $notes } Noten dauert { $lasts } s, und ein Bogen reicht bei dieser Dynamik bis zu { $longest } s. Es bleibt Bogen, um gut zu spielen.
works-mark = Takt { $bars }, { $part }: das eine Strichzeichen sagt etwas, was die Spieler nicht von selbst täten.
works-marks = Takt { $bars }, { $part }: jedes der { $count } Strichzeichen sagt etwas, was die Spieler nicht von selbst täten; keines steht unnötig da.

given-melody-stays = Die gegebene Melodie steht unverändert in { $part }.
given-melody-changed = Die gegebene Melodie ist in { $part } geändert, Takt { $bars }.
given-melody-missing = Die gegebene Melodie findet sich in keiner Stimme.
given-model-same = Bindebögen und Strichzeichen sind wie in { $model }.
given-model-other = Neben { $model }: gleich in { $same } von { $all } Takten mit Bindebögen oder Strichzeichen; anders in Takt { $bars }. Anders ist kein Fehler.

lacks-slurs = Bindebögen fehlen
    .finds =
        Die Aufgabe handelt von Bindebögen, und eine Stimme hat keine, oder über acht Takte oder mehr bewegter Noten keine.
    .why =
        Ohne Bindebögen hat jede Note ihren eigenen Strich, und jedes Pult wird nach Belieben binden. Eine Seite ohne Bindebögen zeigt an ihnen keinen Fehler, weil sie die Wahl anderen lässt.
lacks-dynamics = Dynamik fehlt
    .finds =
        Die Aufgabe verlangt Dynamik, und eine Stimme hat keine.
    .why =
        Wie schnell der Bogen geht und wie lange er reicht, hängt davon ab, wie laut er spielt. Ohne Dynamik kann niemand sagen, wie viel auf einen Bogen passt.
lacks-hairpins = Gabeln fehlen
    .finds =
        Die Aufgabe verlangt Crescendo und Diminuendo, und eine Stimme hat weder Gabeln noch Worte dafür.
    .why =
        Der Bogen wächst von selbst im Aufstrich und nimmt im Abstrich ab. Wo die Musik das soll, muss dastehen, bevor die Spieler einen Strich dafür wählen können.
lacks-articulations = Punkte, Striche und Akzente fehlen
    .finds =
        Die Aufgabe verlangt Zeichen an Noten, und eine Stimme hat keine.
    .why =
        Ob eine Note kurz ist, sich lehnt oder angeschlagen wird, entscheidet, wo im Bogen sie gespielt wird. Ohne Zeichen wählt jeder für sich.
lacks-bow-marks = Strichzeichen fehlen
    .finds =
        Die Aufgabe verlangt Ab- und Aufstriche, wo sie eine Wirkung tragen, und eine Stimme hat keine.
    .why =
        Die meisten Striche kommen von selbst; die wenigen anderen müssen dastehen, sonst geht die Wirkung verloren.
lacks-tempo = Ein Tempo fehlt
    .finds =
        Die Aufgabe verlangt ein Tempo, und die Partitur hat keines.
    .why =
        Sekunden entscheiden, wie viel Musik ein Bogen fasst. Ohne Tempo beruht jede Zahl auf diesem Blatt auf einer Vermutung.

question-family-length = Wie viel Bogen ist bei der letzten Note hier noch da, und wie wird sie klingen?
question-family-slurs = Wo würde eine Sängerin hier atmen, und wo lässt der Bindebogen den Strich wechseln?
question-family-beat = Welche Note dieses Taktes soll man als die starke hören, und welcher Strich fällt auf sie?
question-family-direction = Wo im Bogen soll diese Note liegen, und wie kommt man dorthin?
question-family-kinds = Soll das auf oder abseits der Saite sein, und woran sieht man es der Seite an?
question-family-states = Was müssen die Hände zwischen diesen beiden Noten tun, und wie lange dauert das?
question-family-hand = Auf welchen Saiten liegen diese Töne, und kann eine Hand sie zugleich halten?
question-family-between = Wer spielt das noch, und sollen beide wie eins klingen?
question-family-marks = Was täten die Spieler hier, wenn dieses Zeichen nicht da wäre?
question-family-parts = Was weiß jemand, der nur diese Stimme vor sich hat?
question-lacks-slurs = Die Stelle singen: welche Noten gehören in einen Atem?
question-lacks-dynamics = Wie laut ist die erste Note, und was wäre anders, wenn sie das Gegenteil wäre?
question-lacks-hairpins = Wo drängt diese Linie vorwärts, und wo lässt sie nach?
question-lacks-articulations = Welche Noten sollen kurz sein, welche sich lehnen, und welche brauchen beides nicht?
question-lacks-bow-marks = An welcher einen Stelle würden die Spieler anders streichen, als man es hört?
question-lacks-tempo = Wie lange soll ein Takt dauern? Mit der Uhr zählen.

kind-split = ein Bindebogen in zwei
kind-join = zwei Striche in einem
kind-shift = ein Bindebogen, der auf einer anderen Note beginnt oder endet
kind-hook = zwei Striche in einer Richtung, auf der Saite angehalten
kind-retake = abheben und in derselben Richtung neu ansetzen
kind-start = der andere Strich am Anfang
kind-mark = ein Strichzeichen mehr
kind-unmark = ein Strichzeichen weniger
kind-word = ein Wort an die Spieler
kind-state = Dynamik, Tempo oder Spielweise genannt
kind-stagger = die Spieler wechseln zu verschiedenen Zeiten
kind-phrase = der Bindebogen als Phrasierungsbogen gezeichnet
kind-copy = die Bindebögen oder Zeichen einer anderen Stelle

class-title = Die Klasse
class-stays = Diese Seite zeigt einzelne Abgaben. Sie bleibt bei Ihnen.
class-to-show = Diese Seite nennt keine Abgabe; sie darf gezeigt werden.
class-counts = { $read } Abgaben wurden gelesen. Nichts hier ist eine Note, und die Reihenfolge der Listen sagt über niemanden etwas.
class-small = Weniger als { $least } Abgaben: wen was betrifft, steht hier nicht.
class-rules = Was gefunden wurde, und in wie vielen Abgaben
class-of = { $met } von { $read }
class-examples = Beispiele zum gemeinsamen Ansehen
class-middles = Maße
class-middle = Mitte der Klasse
class-half = die halbe Klasse
class-outliers = Weit von den anderen
class-lowest = niedrig
class-highest = hoch
class-table = Abgaben und Regeln
class-table-how = Eine Zahl sagt, an wie vielen Stellen. Die Spalten sind Regeln, die jemandem begegnet sind; der Name steht über der Spalte.
class-student = Abgabe
class-none = Nichts zu lesen
class-nothing-from = Keine Datei: { $names }
class-sheet = Blatt
class-replaced = eine neue Datei kam, bisher { $count } Mal; das Blatt ist das der letzten
class-course = Durch die Aufgaben
class-course-how = Für jede Regel der Anteil der Abgaben, denen sie begegnet ist, Aufgabe für Aufgabe.
class-since = Seit der Aufgabe davor
class-gone = weg
class-new = neu
class-back = wieder da

measure-bars = Takte
measure-notes = Noten der Streicherstimmen
measure-slurs = Bindebögen auf hundert Noten
measure-bow-marks = Strichzeichen auf hundert Noten
measure-dynamics = Dynamik und Gabeln auf zehn Takte
measure-articulations = Zeichen auf hundert Noten
measure-longest-slur = Längster Bindebogen
measure-downbeats-down = Taktanfänge im Abstrich

alike-title = Abgaben, die sich gleichen
alike-no-proof = Das ist eine Frage und beweist nichts. Behalten Sie es für sich, bis Sie gefragt haben.
alike-how = Gezeigt werden Paare, deren Noten mehr übereinstimmen, als die Aufgabe erklärt: die gegebene Melodie zählt nicht mit, und ebenso wenig, was ein Viertel der Klasse schrieb. Transponieren verbirgt es nicht, auch nicht getauschte Stimmen, wiederholte Noten oder andere Notenwerte. Wer zusammen lernt, oder aus demselben Buch, schreibt ähnlich.
alike-share = Von hundert Folgen von acht Noten der kleineren stehen { $share } auch in der anderen; wiederholte Noten zählen einmal.
class-not-met = Niemandem begegnet: { $rules }.

hand-title = Die Klasse durchgehen
hand-how = Was Sie tun, bleibt Schritt für Schritt in diesem Browser, auch wenn Sie die Seite schließen, und geht nirgendwohin. Sichern Sie es als Datei (w) und rufen Sie den Befehl mit --hand DATEI noch einmal auf: die Blätter werden daraus gemacht.
hand-how-beside = Was Sie tun, bleibt Schritt für Schritt in einer Datei neben der Aufgabe und geht nirgendwohin. Rufen Sie den Befehl noch einmal auf, und die Blätter werden daraus gemacht.
hand-keys = Tasten: j, k nächste und vorige Abgabe · Pfeile: Stelle · x zeigen oder streichen · s Satz dazu · 1–9 Kriterium abhaken · n Satz zum Ganzen · m eigene Bewertung · u zurück · o Blatt öffnen · w Datei sichern
hand-shown = gezeigt
hand-not-shown = nicht gezeigt
hand-sentence = Ein Satz zu dieser Stelle
hand-note = Ein Satz zum Ganzen
hand-marks = Ihre eigene Bewertung
hand-kept = # Schritte in diesem Browser, davon # noch in keiner gesicherten Datei
hand-not-kept = Dieser Browser bewahrt nichts auf: sichern Sie die Datei (w), bevor Sie die Seite schließen.
hand-beside = # Schritte in der Datei neben der Aufgabe
hand-lost = Das Programm wurde beendet: die letzten Schritte stehen nur auf dieser Seite. Sichern Sie die Datei (w), oder starten Sie das Programm wieder und gehen Sie weiter.
hand-save = gesichert: class-hand.json
hand-of = (# von #)
hand-sheet-note = Aus dem Unterricht
hand-sheet-marks = Eingetragen von der Lehrkraft
