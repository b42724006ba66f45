# Sheets of students and the pages of a class.

part-violin = Violin
part-viola = Viola
part-cello = Violoncello
part-bass = Double bass
part-other-bowed = Bowed string
part-other = Part

sheet-due = due { $due }
sheet-works = What works
sheet-works-nothing = No stretch of four bars comes out by itself yet without a remark; the passages below are the place to begin.
sheet-passages = To look at
sheet-passages-nothing = Nothing was found that the task looks at.
sheet-bar = Bar { $bar }
sheet-bar-beat = Bar { $bar }, beat { $beat }
sheet-whole-score = all parts
sheet-also = The same in bars { $bars }.
sheet-what = What happens
sheet-why = Why it matters
sheet-try = To try
sheet-hint = Look for a change of this kind: { $kind }.
sheet-question = To think about
sheet-own = Your teacher writes
sheet-now = As it stands
sheet-repaired = One way to repair it
sheet-no-picture = These bars cannot be engraved.
sheet-rest = Also found
sheet-rest-more = and { $count } more kinds of remark
sheet-given = What was given
sheet-criteria = What the task asks
sheet-criterion-met = see { $rules }
sheet-criterion-free = nothing found
sheet-criterion-hand = your teacher looks at this
sheet-calculated = How this was calculated
sheet-calculated-for = Bows are calculated for { $player } in the style { $style }, from what stands in the score.
sheet-lane = Under the staff: the bow, frog on top, tip at the bottom, thick near the frog.
sheet-advice = The program calculates and advises; players decide. It gives no grades.
sheet-caution = If a way of playing strains hand, arm or back, rest, and ask a teacher or a physician about pain.
sheet-player-professional = professional players
sheet-player-amateur = amateur players
sheet-player-student = student players
sheet-player-own = the players whom your teacher describes
sheet-since = Since { $task }
sheet-since-gone = not found any more: { $rules }
sheet-since-new = new: { $rules }
sheet-since-back = back again: { $rules }

works-comes-out = Bars { $from } to { $to }, { $part }: the bow comes out by itself. All { $downbeats } downbeats that begin a stroke fall on a down-bow, and none of the { $strokes } strokes needs a lift or a hook.
works-comes-out-plain = Bars { $from } to { $to }, { $part }: the bow comes out by itself; none of the { $strokes } strokes needs a lift or a hook.
works-swell-up = Bar { $bar }, { $part }: the crescendo lies on an up-bow, which grows by itself.
works-swell-down = Bar { $bar }, { $part }: the diminuendo lies on a down-bow, which fades by itself.
works-long-slur = Bar { $bar }, { $part }: the slur over { $notes } notes lasts { $lasts } s, and one bow lasts up to { $longest } s at this dynamic. There is bow left to play it well.
works-mark = Bar { $bars }, { $part }: the one printed bow mark says something that players would not do by themselves.
works-marks = Bars { $bars }, { $part }: each of the { $count } printed bow marks says something that players would not do by themselves; none is there that is not needed.

given-melody-stays = The given melody stands unchanged in { $part }.
given-melody-changed = The given melody is changed in { $part }, bars { $bars }.
given-melody-missing = The given melody was not found in any part.
given-model-same = Slurs and bow marks are as in { $model }.
given-model-other = Beside { $model }: alike in { $same } of { $all } bars with slurs or bow marks; another way in bars { $bars }. Another way is not a fault.

lacks-slurs = Slurs are missing
    .finds =
        The task is about slurs, and a part has none, or none over eight bars or more of moving notes.
    .why =
        Without slurs every note has its own bow, and each stand will join notes as it likes. A page without slurs shows no fault in its slurs because it leaves the choice to others.
lacks-dynamics = Dynamics are missing
    .finds =
        The task asks for dynamics, and a part has none.
    .why =
        How fast the bow moves and how long it lasts depends on how loud it plays. Without a dynamic nobody can tell how much fits on one bow.
lacks-hairpins = Hairpins are missing
    .finds =
        The task asks for swells, and a part has neither hairpins nor words for them.
    .why =
        A bow grows by itself on the way up and fades on the way down. Where the music is to do so must be written before players can choose a bow for it.
lacks-articulations = Dots, lines and accents are missing
    .finds =
        The task asks for signs on notes, and a part has none.
    .why =
        Whether a note is short, leans or is struck decides where in the bow it is played. Without signs each player chooses alone.
lacks-bow-marks = Bow marks are missing
    .finds =
        The task asks for down- and up-bows where they carry an effect, and a part has none.
    .why =
        Most bows come by themselves; the few that do not have to be written, or the effect is lost.
lacks-tempo = A tempo is missing
    .finds =
        The task asks for a tempo, and the score has none.
    .why =
        Seconds decide how much music one bow holds. Without a tempo every number on this page rests on a guess.

question-family-length = How much of the bow is left at the last note here, and what will it sound like?
question-family-slurs = Where would a singer breathe in this passage, and where does your slur let the bow change?
question-family-beat = Which note of this bar should the listener feel as the strong one, and which bow falls on it?
question-family-direction = Where in the bow would you like to be for this note, and how does the player get there?
question-family-kinds = Should this be on the string or off it, and what on the page tells the player so?
question-family-states = What do the player's hands have to do between these two notes, and how long does that take?
question-family-hand = On which strings do these notes lie, and can one hand hold them at once?
question-family-between = Who else plays this, and should both sound as one?
question-family-marks = What would players do here if this mark were not there?
question-family-parts = What does a player know who has only this part in front of them?
question-lacks-slurs = Sing the passage: which notes belong in one breath?
question-lacks-dynamics = How loud is the first note, and what would change if it were the opposite?
question-lacks-hairpins = Where does this line lean forward, and where does it relax?
question-lacks-articulations = Which notes should be short, which should lean, and which need neither?
question-lacks-bow-marks = Which one place would players bow otherwise than you hear it?
question-lacks-tempo = How long should one bar last? Count it with a watch.

kind-split = a slur in two
kind-join = two strokes in one
kind-shift = a slur that begins or ends on another note
kind-hook = two strokes in one direction, stopped on the string
kind-retake = a lift, and the same direction again
kind-start = the other bow at the beginning
kind-mark = a bow mark added
kind-unmark = a bow mark taken out
kind-word = a word to the player
kind-state = a dynamic, a tempo or a way of playing said
kind-stagger = players changing bow at different times
kind-phrase = a slur drawn as a phrase mark
kind-copy = the slurs or marks of another place

class-title = The class
class-stays = This page shows single hand-ins. It stays with you.
class-to-show = This page names no hand-in; it may be shown.
class-counts = { $read } hand-ins were read. Nothing here is a grade, and the order of the lists says nothing about anybody.
class-small = Fewer than { $least } hand-ins: who met what is not told here.
class-rules = What was found, and in how many hand-ins
class-of = { $met } of { $read }
class-examples = Examples to look at together
class-middles = Measures
class-middle = Middle of the class
class-half = Half of the class
class-outliers = Far from the others
class-lowest = low
class-highest = high
class-table = Hand-ins and rules
class-table-how = A number says at how many places. Columns are rules that somebody met; the rule's name stands above the column.
class-student = Hand-in
class-none = Nothing to read
class-nothing-from = No file: { $names }
class-sheet = sheet
class-replaced = a new file came, { $count } times so far; the sheet is of the last one
class-course = Through the tasks
class-course-how = For each rule the share of hand-ins that met it, task by task.
class-since = Since the task before
class-gone = gone
class-new = new
class-back = back again

measure-bars = Bars
measure-notes = Notes of bowed parts
measure-slurs = Slurs in a hundred notes
measure-bow-marks = Printed bow marks in a hundred notes
measure-dynamics = Dynamics and hairpins in ten bars
measure-articulations = Signs on a hundred notes
measure-longest-slur = Longest slur
measure-downbeats-down = Downbeats on a down-bow

alike-title = Hand-ins that are alike
alike-no-proof = This is a question, and no proof of anything. Keep it to yourself until you have asked.
alike-how = Shown are pairs whose notes agree more than the task explains: the given melody is left out, and so is what a quarter of the class wrote. Transposing does not hide it, nor do exchanged parts, repeated notes or other note values. People who learn together, or from one book, write alike.
alike-share = Of a hundred runs of eight notes of the smaller one, { $share } stand in the other one too; a repeated note counts once.
class-not-met = Nobody met: { $rules }.

hand-title = Going through the class
hand-how = What you do is kept in this browser, act by act, also when you close the page, and goes nowhere. Save it as a file (w) and run the command again with --hand FILE: the sheets are made from it.
hand-how-beside = What you do is kept act by act in a file beside the task, and goes nowhere. Run the command again, and the sheets are made from it.
hand-keys = Keys: j, k next and previous hand-in · arrows: passage · x show it or strike it · s sentence to it · 1–9 tick a criterion · n sentence to the whole · m your own marks · u undo · o open the sheet · w save the file
hand-shown = shown
hand-not-shown = not shown
hand-sentence = A sentence to this passage
hand-note = A sentence to the whole
hand-marks = Your own marks
hand-kept = # acts kept in this browser, # of them in no saved file yet
hand-not-kept = This browser keeps nothing: save the file (w) before you close the page.
hand-beside = # acts kept in the file beside the task
hand-lost = The program has been stopped: the last acts are in this page alone. Save the file (w), or start the program again and go on.
hand-save = saved: class-hand.json
hand-of = (# of #)
hand-sheet-note = Your teacher writes
hand-sheet-marks = Your teacher enters
