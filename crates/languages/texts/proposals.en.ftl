# What the review offers (offer-), repairs (repair-) and what is gained by them (gain-).

offer-and-further = { $offer } The further places are changed in the same way.
offer-repair = { $repair }.
offer-repair-and-gain = { $repair }: { $gain }.
offer-repair-for = { $repair }: { $what ->
    [accent] the accent
    [bar] the { $bar-word }
    [ending] the ending
    [entry] the entry
   *[swell] the swell
} then comes on { a-bow }.

repair-split = Split the slur at { $at }
repair-split-tie = Change the bow on the tied note at { $at }
repair-end-earlier = End the slur one note earlier, before { $at }
repair-begin-later = Begin the slur one note later, at { $at }
repair-join-notes = Slur the note at { $at } to the one before it
repair-join-slurs = Join the slurs that meet at { $at }
repair-end-later = End the slur one note later, at { $at }
repair-begin-earlier = Begin the slur of { $at } one note earlier
repair-hand-over-later = Let the slur end one note later and the next begin at { $at }
repair-hand-over-earlier = Let the slur end one note earlier and the next begin at { $at }
repair-hook = Hook the note at { $at } to the one before it

gain-bars-begin-down = { $count ->
    [one] { $bar-word } { $bars } then begins down
   *[other] { $bar-word }s { $bars } then begin down
}
gain-stretch-begins-down = { $count } { $bar-word }s from { $first } to { $last } then begin down
gain-more-time = bows of { $short } instead of { $long }
gain-no-hook = no hook is needed at { $at }
gain-no-retake = no retake is needed at { $at }
stroke-shown = { $at }{ $hooked ->
    [hooked] { " " }hooked
   *[plain] { "" }
} { bow-way }, { $lasts }, { $used } % of the bow

# What the arm can do

offer-start = Start on { a-bow } at { $at }.
offer-hook = Hook the note at { $at } to the one before it.
offer-retake = Retake for { a-bow } at { $at }.
offer-begin = Let { $at } begin { bow-name }.
offer-stagger-unheard = Let the players of each { $stand-word } change bow at different times, unheard.
offer-hook-short-to-long = Hook the short stroke to the long one before it, with a stop, and alternate from there.
offer-hook-short-note = Hook the short note to the stroke before it, with a stop.
offer-hook-last-two-bows = Hook the last two bows of each { $bar-word }, so that each begins down.
offer-hook-so-section-comes-back = Hook the note at { $at } to the one before it, so that the section comes back as it began.
offer-hook-instead-of-lifting = Hook the two strokes on the string, with a stop, instead of lifting.
offer-mark-first-note-every-pass = Mark { a-bow } on the section's first note for every pass.
offer-mark-out-and-alternate = Take the mark at { $at } out and alternate.
offer-row-out = Take the row's { bow-name }s out after the first and alternate.
offer-chords-as-they-come = Take the chords as they come.
offer-second-down-out = Take the second down-bow out and alternate.
offer-change-one-after-the-other = Let the two players of each { $stand-word } change one after the other.
offer-one-player-earlier = Let one player of each { $stand-word } change over a few notes earlier.
offer-divide-between-players = Divide the notes between the players of each { $stand-word }.
offer-out-and-sim = Take them out and write sim. over the first.
offer-mark-out = Take the mark out.
offer-keep-one-bow = { $bow ->
    [down] Keep the down-bow and take the up-bow out.
   *[up] Keep the up-bow and take the down-bow out.
}
offer-marks-not-needed-out = Take out the { $count } that are not needed.
offer-keep-what-alternation-would-not = Keep the marks that alternation would not give, and take the others out.

# What the writer can do

offer-split-slur-before = Split the slur before { $places }.
offer-split-slur-there = Split the slur there.
offer-split-between-two-notes = Split the slur between the two notes.
offer-split-between-the-two = Split the slur between the two.
offer-split-long-weigh-alike = Split the long slur, so that the down-bows and the up-bows of the pattern weigh alike.
offer-split-long-beside = Split the long slur beside it, so that less bow has to be won back.
offer-break-note-at-barline = Break the note with a new attack at a barline, where a change is least heard.
offer-slur-two-notes = Slur two of the notes, so that the { $bar-word } has an even number of bows.
offer-change-on-downbeat = Let { $part } change bow on the downbeat: split the slur there.
offer-inner-attacks-afresh = Let one inner section attack the held note afresh on the downbeat.
offer-inner-changes-on-some = Let one inner section change bow on some of these downbeats.
offer-change-inside-swell = Let the players change bow inside the swell.
offer-chords-on-two-strings = Write the chords on two strings, or give them more time.
offer-write-trem = Write trem. over the first, if it is unmeasured.
offer-write-out-or-measured = Write the notes out, or write “measured”, if they are to be counted.
offer-dots-out = Take the dots out.
offer-dashes-for-portato = Put dashes in place of the dots, for a portato.
offer-write-staccato = Write staccato over the first, for a bow that stops.
offer-write-gettato = Write gettato over the first, for a thrown bow.
offer-sign-out = Take the { $sign ->
    [spiccato] spiccato sign
   *[other] { $sign }
} out.
offer-word-out = Take “{ $word }” out.
offer-write-spicc = Write spicc. over the first.
offer-write-on-the-string = Write on the string over the first.
offer-write-group-out = Write the first group out with its slurs, and simile after it, if they share a bow.
offer-slurs-out-own-bow = Take the slurs out, if every note has its own bow.
offer-write-spiccato-instead = Write spiccato instead.
offer-slur-in-twos = Slur the notes in twos, or write half as many.
offer-divide-into-throws = Divide the slur into throws of up to { $most } notes.
offer-slurred-staccato = Ask for slurred staccato or slurred spiccato instead of a throw.
offer-slur-without-dots = Slur the notes without dots, or give them more time.
offer-write-which-strings-held = Write which two strings are held, and the others short before them.
offer-write-div-and-unis = Write div. here, and unis. where all play together again.
offer-give-slurs = Give { $lower } the slurs of { $upper } there.
offer-give-marks = Give { $lower } the marks of { $upper } there.
offer-slurs-of-the-others = Give the { $bar-word } the slurs of the others.
offer-lower-mark-out = Take the mark of the lower one out, so that both follow the upper.
offer-write-div = Write div. here.
offer-write-non-div = Write non div. here.
offer-write-arco = Write arco here.
offer-second-pizz-out = Take the second pizz. out.
offer-longer-rest = Give it a longer rest, or change at another place.
offer-give-change-a-rest = Give the change a rest.
offer-second-word-out = Take the second word out.
offer-write-ord-or-sempre = Write ord. where it ends, or sempre where it does not.
offer-unis-out = Take unis. out where the part is divided.
offer-slur-out = Take the slur out.
offer-loose-end-out = Take the loose end out.
offer-first-slur-out = Take the first slur out and keep the second.
offer-end-first-slur = End the first slur at { $at }, before the second begins.
offer-write-slurs = Write the slurs that the line is to have.
offer-write-non-legato = Write non legato or détaché, if every note has its own bow.
offer-outer-dashed = Make the outer one a dashed slur: a phrase mark.
offer-dashed-slur = Make it a dashed slur: a phrase mark that leaves the bow free.
offer-slur-over-tied-note = Draw the slur over the whole of the tied note.
offer-one-slur-over-both = If one bow is meant, draw one slur over both; if two, a bow mark on the tied note says so.
offer-end-slur-before-word = End the slur before "{ $word }".
offer-begin-slur-at-word = Begin the slur at "{ $word }".
offer-split-slur-at-word = Split the slur at "{ $word }".
offer-slurs-beside-rest = End the slur before the rest and begin another after it.
offer-slur-neighbouring-strings = Slur only the notes that lie on one string or on neighbouring ones.
offer-tie-two-notes = Tie the two notes.
offer-dashes-on-both = Put dashes on both, for a pulse in one bow.
offer-slur-for-tie = Write a slur in place of the tie.
offer-write-dynamic = Write { $dynamic }, as in the parts that play with it.
offer-rehearsal-mark = Put a rehearsal mark at { $at }{ $why ->
    [double-bar] , after the double bar
    [tempo] , with the new tempo
    [metre] , with the new metre
    [key] , with the new key
   *[middle] { "" }
}.
offer-number-the-bars = Number the { $bar-word }s, and print the numbers in the parts.
offer-write-tempo = Write a tempo word or a metronome mark over the first note.
offer-break-page-at-rest = Break the page at a rest.

# Who may do it

grade-safe = safe
grade-player = player's choice
grade-writer = writer's choice
