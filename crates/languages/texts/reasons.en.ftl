# Why layers pass something over, and what they remark: the end of a sentence that begins with a place.

as-it-is = { $text }

# A note that is not there

why-no-part = the score has no such part; it has { $parts }
why-no-bar = the score has no such bar
why-several-bars = several bars bear this number; say which with "bar_ordinal": { $ordinals }
why-other-bar = the bar at this position is { $bar } now; carry the layer over to the revised score
why-no-note = no note begins there
why-rest = a rest stands there
why-other-note = not this note begins there, but { $pitches }
why-other-end = its other end, { $at }: { $why }

# Other layers, and the layer itself

why-score-titled = "{ $title }"
why-score-untitled = a score without a title
why-layer-of-other-score = the layer was made for { $layer }, this is { $score }, and their notes are not the same; if this is a revision, carry the layer over first
why-taken-off-above = the score has it printed, and a layer above has taken it off; it comes back when that layer goes
why-two-owners = two owners want different things here; keep one first
why-slur-taken-off-above = a layer above takes this slur off, and the upper layer holds
why-slur-drawn-above = a layer above draws a slur between these notes, and the upper layer holds
why-other-bow-above = a layer above asks for another bow here, and the upper layer holds
why-several-answers = the layer says { $count } different things about it; keep one
why-slur-said-otherwise = the layer says another thing of a slur between the same two notes ({ $other }); keep one of the two

# Bows

why-no-place = the markup of the note leaves no place for it
why-no-direction = neither it nor the note before says which way the bow goes; write "bow": "down" or "up"
why-other-way-before = the stroke before it is asked to go the other way, and it cannot go on in both
why-no-address-before = the stroke before it begins on a note that has no address of its own
why-no-stroke = no stroke begins on this note: it lies under a slur, is tied over, or is not bowed
why-two-directions = it and what is asked of the stroke before name two directions, and it cannot go on in both

# Slurs

why-slur-moves-nowhere = it moves the slur to where it is
why-slur-backwards = its last note does not come after its first
why-slur-in-two-voices = its ends are in two voices, the later one written first; no reader would join them
why-slur-printed-there = a slur is printed there already; remove this one instead
why-slur-ends-not-in-file = the printed slur cannot be taken off; its two ends are not both in the file
why-no-slur-to-take-off = the score has no such slur to take off
why-too-many-slurs = more than sixteen slurs are open there; no number is left for another

# Hooks under a slur

why-chord-bowed-twice = the layer gives another note of this chord a bow of its own; keep one of the two
why-hooked-with-other-sign = the stroke before it is hooked with the other sign; write both with dots or both with dashes
why-hook-draws-slur-again = the layer takes a slur off between these very notes, and a hook would draw it again; leave the slur, and write the dots or dashes into the score
why-no-address-under-slur = a note under its slur has no address of its own
why-hook-on-grace-note = a grace note has no stroke that a slur with dots or dashes could join; write the hook as marks
why-hook-tied-over = no stroke begins on this note: it is tied over; hook the note after the tie
why-hook-on-first-note = no note comes before it that a slur could join to it; take the hook out
why-hook-after-gap = a rest or another voice stands between it and the note before, and a slur would hide the stop; write the hook as marks
why-hook-over-grace-note = a grace note stands between the two strokes; write the hook as marks
why-hook-written-backwards = its two notes are written in the file the later one first; write the hook as marks
why-hook-under-slur = the slur from { $from } to { $to } covers or touches its notes; take that slur off first, or write the hook as marks
why-hook-begins-as-it-comes = the layer leaves the note that its slur begins on as it comes, where its direction would stand; take one of the two out
why-hook-begins-unnamed = the note that its slur begins on takes its direction from the stroke before; name the direction there, not here
why-hooks-both-ways = the hook before it goes the other way under the same slur; name one direction for both

# Marks that are not lifted

stays-unlike-one-mark = its markup is not that of a single mark
stays-without-address = no note that can be addressed carries it
stays-slur-end-without-address = the slur ends on no note that can be addressed
stays-slur-never-ends = a slur begins here and never ends; end it, or take it out
stays-slur-never-began = a slur ends here that never began; begin it, or take it out
stays-slur-middle = a slur's element that is neither its beginning nor its end
stays-slur-on-hidden-note = a slur's end on a hidden note, which no layer can name
stays-bow-mark-twice = the note has one bow mark more than once; take the surplus ones out
stays-words-twice = the same words stand there twice

# Remarks

check-other-score = the layer was made for other notes than these: another score, or this one before a revision; carry it over
check-conflict = { $first } wants { $one }, { $second } wants { $other }; keep one
check-mark = { $mark }: { $why }
check-twice = { $mark } stands there twice; keep one
check-doubt = { $mark }, carried with doubt: { $doubt }
check-on-rest = { $mark } on a rest; move it to a note or take it out
check-several-answers = { $mark }, and { $count } answers in all; keep one
check-tied-over = the note is tied over: no new stroke begins on it
check-inside-slur = { $mark } inside a slur, where the bow goes on; take the slur off there
check-nothing-before = { $mark }, but no note comes before it
check-slur-backwards = the slur's last note does not come after its first

# Carrying over

doubt-other-bars = the same music stands in other bars as well{ $count ->
    [0] { "" }
   *[other] : { $bars }
}
doubt-bar-rewritten = most of the bar was rewritten
doubt-other-pitch = the note has another pitch
doubt-other-length = the note has another length
doubt-moved = the note stands elsewhere in the bar
doubt-other-chord = other notes stand together with it
doubt-written-out = the repeat was written out, this is its second pass
doubtful-said = { $from } → { $to }, { $mark }: { $why }
lost-conflict-wants-nothing = it wants nothing on either side
lost-other-end = the other end of its slur: { $why }
lost-part = the old score has no such part
lost-in-old-score = in the old score { $why }
lost-bar = its bar is not in the new score
lost-note = its note is not in the new bar
lost-note-is-rest = its note is a rest now

# Spreading

not-spread = { $from }, { $mark }: not to { $part }, { $why }
spread-other-passage = another passage proposes something else
spread-nothing-played = nothing is played there
spread-other-slurs = different slurs
spread-other-rhythm = different rhythm
spread-no-stroke = no stroke begins on that note
spread-said-otherwise = the layer says something else there
spread-slur-end-lost = the other end of its slur has no match there
