# Why a command could not do what it was asked, and what else it tells beside its result.

# What a command was asked

failure-no-scores = No score found in { $where }. Name a .musicxml, .xml or .mxl file, or a folder that holds some.
failure-of = { $of }: { $why }
failure-of-ended = { $of }: { $why }.
failure-in = { $of }, { $why }
failure-standard-input = standard input
failure-profile = Profile { $name }: { $why }
failure-profiles = Shipped profiles: professional, amateur, student; or name a profile file.
failure-bars = --bars { $text }: { $why }. Write one printed bar number or two with a hyphen, such as 12 or 5-8.
failure-names-part-for-bars = it names { $part }, where only bars are asked for; say it with --part
failure-bars-of-other-movement = it is of another movement than --movement { $asked }
failure-typed = { $option } "{ $text }": { $why }
failure-movement = --movement { $asked }: there is no such movement. The file has: { $there }.
failure-part = No part is called "{ $asked }". The score's bowed parts: { $known }.
failure-rule = No rule is called "{ $asked }". The rules: { $known }.
failure-one-score = One score can be written, but { $count } were named. Name one score at a time.
failure-same-file = { $path } is read by this command. Name another file: it is not written over.
failure-score-name = { $path }: the name does not say what kind of score file it shall be. End it in .musicxml or .xml for a plain score, in .mxl for a package. Nothing was written.
failure-two-in-one = The report and the score would both go to { $path }. Name two files with --out and --write.
failure-exists = { $path } is there already. Nothing was written; name another folder with --out, or say --replace.
failure-exist = { $path } and { $more } more are there already. Nothing was written; name another folder with --out, or say --replace.
failure-house = House profile { $name }: { $why }
failure-part-not-made = The part { $part } could not be made: { $why }.
failure-marks = The marks could not be changed: { $why }
failure-not-a-review = there is a file of that name that is no review; name another with --out
failure-workbench = The workbench does not open: { $why }.
failure-go-through = The page does not open: { $why }
failure-no-browser = no browser could be opened; open the address above in one on this machine
open-by-another = This score is open in a workbench already; its page comes up.
open-is-kept = What you do is kept beside the score as you do it. Stop with Ctrl+C.
open-is-kept-in = What you do is kept in { $path } as you do it. Stop with Ctrl+C.
class-hand-set-beside = { $journal } is not understood from line { $line } on: what stands before it counts, and all of it is kept as { $kept }.

# Pictures

failure-picture = No picture: { $why }.
failure-picture-no-file = say with --out FILE where it goes
failure-picture-nothing = there is nothing to draw
failure-picture-no-bow = no bow moves in these bars of these parts

# Scores that are written

score-alone = { $path } is the score alone, as its name says; the package that it came from is left as it is.{ $also ->
    [yes] { " " }What else was in the package is not copied ({ $left }); a name in .mxl keeps it.
   *[no] { "" }
}
score-package = { $path } is a new package, as its name says, with { $member } in it.
names-and-more = { $names } and { $more } more
marks-taken-out = { $count } marks taken out, the rest written to { $path }
marks-written = { $count } marks written to { $path }

# Anchors and endings

failure-anchor = --anchor "{ $text }": { $why } Write the part if there are several, bar/beat, and down, up, hook or retake, such as "60/1 down" or "Viola 12/2½ up".
failure-ending = --end "{ $text }": { $why } Write a printed bar number and down or up, such as "8 down".
wish-of-several-movements = { $bar } stands in the movements { $movements }: write one before it, such as "{ $such }"
wish-stretch = it names a stretch, where one stroke is fixed
wish-no-beat = no beat is named
wish-by-note = strokes are named by their beats, not by notes
wish-none-of = "{ $word }" is none of down, up, hook, retake
wish-says-nothing = it does not say what the stroke should do
wish-no-line = there is no bowed line
wish-several-parts = several parts are shown; name one before the bar: { $names }
wish-no-such-line = no line is called "{ $part }": { $names }
wish-no-stroke-in-bar = no stroke begins in { $bar }
wish-no-stroke-at = no stroke begins at { $place }; strokes begin there at beat { $beats }
wish-bar-after = { $bar } after { $length }
ending-names-part = it names { $part }, where only a bar is asked for; say it with --part
ending-stretch = it names a stretch, where one bar is ended
ending-expects = a bar and a bow are expected
ending-neither = "{ $word }" is neither down nor up

# Setting aside

failure-aside-file = { $of }, { $why } Mend it, or review with --tell-all.
failure-aside = Nothing was set aside: { $text }: { $why }
failure-aside-bars-of-several = Nothing was set aside: { $movements } have { $many ->
    [yes] { $bar-word }s
   *[no] { $bar-word }
} { $bars }. Say which, such as --movement { $such }.
failure-nothing-aside = Nothing was noted: no { $what ->
    [slur] slur begins
   *[finding] finding is reported
} there in { $score }.
aside-needs-reason = a reason in a few words is kept with the entry
aside-other-beat = --bars names another beat
aside-whole-review = that would be the whole review
aside-name-something = name a rule, a part, bars or a movement
aside-no-movement = there is no movement "{ $asked }"
aside-other-movement = --movement names another movement
aside-stretch = a stretch is set aside by whole bars
aside-by-note = findings are named by their beats, not by notes

# Habits

failure-no-habits = Nothing was learned, and nothing written: { $why }.
habits-no-marks = there is no bow mark to learn from
habits-too-few = { $strokes ->
    [one] 1 marked stroke is
   *[other] { $strokes } marked strokes are
} too few; { $more } more strokes would tell. A few lines with every stroke marked do most
habits-sparse = the { $strokes } marks stand far apart, each where the leader departs from what comes anyway; of such marks { $wanted } are wanted, { $more } more. Or mark every stroke of a few lines: { $least } strokes do
habits-foreseen = of { $strokes } strokes in bars that were left out, prices learned from the other bars foresee { $after }, the style alone { $before }
habits-no-gain = what is marked here is foreseen as well without: { $foreseen }
habits-unsure = it may be chance: { $foreseen }; { $more } more strokes would tell

# Change sheets

failure-sheet = No change sheet was written: { $why }
failure-stands = --stands { $text }: { $why }. Write sections with their numbers, such as "Vn1=7, Vn2=6, Va=5".
sheet-of-other-music = the layer "{ $title }" was made for other music than this score's; what finds no note is listed on the librarian's page. Carry the layer over to this score first.
sheet-pdf-on-terminal = a PDF is no text for a terminal; name a file with --out
stands-no-equals = there is no = between section and number
stands-number = the number of stands must be a whole number up to { $limit }

# Classes

failure-key = The key { $of }, { $why }
failure-no-hand-ins = Nothing was handed in: { $path } holds no file. Name the folder or the .zip archive with the scores.
class-done = { $read } of { $all } hand-ins have a sheet{ $kept ->
    [0] .
   *[other] ; { $kept } were as they had been.
}
class-not-read = Not read: { $file } ({ $pseudonym }): { $why }
class-new-file = New file: { $file } ({ $pseudonym }); its sheet has replaced the one before.
class-alike-told = { $pairs ->
    [one] 1 pair of hand-ins is
   *[other] { $pairs } pairs of hand-ins are
} alike beyond the task; that is a question, no proof: { $path }
class-for-you = For you: { $path }
class-shown = To show: { $path }{ $small ->
    [yes] { " " }(fewer than ten: nothing is broken down)
   *[no] { "" }
}
