# Sentences of the review: what is found (say-), the numbers behind it (evidence-, unit-), what is assumed (assume-).

# Words and places

and = and
the-score = the score
place-bar = { $bar-word }
place-bars = { $bar-word }s
place-in-bar = { $bar-word }
place-the-bar = { $bar-word }
place-beat = beat
place-in-beat = beat
place-the-beat = beat

number-0 = no
number-1 = one
number-2 = two
number-3 = three
number-4 = four
number-5 = five
number-6 = six
number-7 = seven
number-8 = eight
number-9 = nine
number-10 = ten
number-11 = eleven
number-12 = twelve

pitch-0 = C
pitch-1 = C#
pitch-2 = D
pitch-3 = E flat
pitch-4 = E
pitch-5 = F
pitch-6 = F#
pitch-7 = G
pitch-8 = A flat
pitch-9 = A
pitch-10 = B flat
pitch-11 = B
pitch-in-octave = { $name }{ $octave }

a-bow = { $bow ->
    [down] a down-bow
   *[up] an up-bow
}
bow-name = { $bow ->
    [down] down-bow
   *[up] up-bow
}
bow-way = { $bow ->
    [down] down
   *[up] up
}
bars-counted = { $count ->
    [one] 1 { $bar-word }
   *[other] { $count } { $bar-word }s
}
and-more-places = { $more ->
    [0] { "" }
    [one] { " " }and 1 more place
   *[other] { " " }and { $more } more places
}
dynamics-steady = at { $from }
dynamics-changing = from { $from } to { $to }
stroke-named = { $stroke ->
    [sautille] sautillé
    [martele] martelé
    [detache] détaché
    [a-thrown-stroke] a thrown stroke
    [on-the-string] on the string
    [off-the-string] off the string
    [another] another stroke
   *[other] { $stroke }
}

# The bow's length

say-nothing = Nothing is said yet.
say-bow-drift = From { $at } the same pattern is played { $times } times, and as it comes, it carries the bow towards the { $end ->
    [tip] { $tip-word }
   *[frog] { $frog-word }
}: the light strokes must stick out by { $decibels } dB to bring it back.
say-note-outlasts-bow = The note at { $at } lasts { $lasts }; one bow { $dynamics } lasts at most { $longest }.
say-rushed-return = The short note at { $at } must bring back a long bow and will stick out by about { $decibels } dB at { $dynamic }.
say-slur-outlasts-bow = The slur from { $at } lasts { $lasts }; one bow { $dynamics } lasts at most { $longest }.

# The beat

say-bar-comes-out-odd = From { $at } the same { $bar-word } is played { $times } times with { $bows } bows: as it comes, it begins on the other bow each time{ $bowed ->
    [evened] , unless it is hooked or lifted
   *[turning] { "" }
}.
say-beat-on-up-bow = The accent at { $at } falls on an up-bow in the best bowing of the passage.
say-repeat-comes-back-reversed = { $road ->
    [da-capo] The da capo to { $beginning } leaves
    [dal-segno] The dal segno to { $beginning } leaves
   *[repeat] The repeat from { $beginning } ends
} on { a-bow } at { $end }, so the second time begins on the other bow: there are { $there } s to lift, and it takes { $needed } s.
say-silent-downbeat = { $why ->
    [tempo] A new tempo begins
    [metre] A new metre begins
    [mark] A rehearsal mark stands
   *[winds] The winds enter
} at { $at }, and no string section takes a new bow there: all hold, slur over the barline or rest.
say-silent-downbeats = From { $at } no string section takes a new bow on the downbeat for { bars-counted }.
say-slur-covers-beat = At { $at } { $why ->
    [tempo] a new tempo begins
   *[accent] a sudden accent stands
}, in the middle of a slur: no bow begins there.

# Direction and dynamics

say-accent-at-tip = The accent at { $at }, in { $dynamic }, is begun near the { $tip-word } on { a-bow }, where the bow has little weight.
say-chords-too-close = The chord at { $at } is to come down-bow { $time } s after another; breaking the first one and bringing the bow back takes about { $needed } s.
say-ending-on-up-bow = The phrase that closes with { $at } ends on an up-bow, { $dynamic }.
say-lift-in-soft-line = With these slurs the { bow-name } at { $at } needs a lift, within a line in { $dynamic }: a gap of about { $needed } s.
say-no-time-to-retake = A retake for { a-bow } at { $at } takes about { $needed } s, and there are { $there } s.
say-soft-entry-at-frog = The { $dynamic } entry at { $at } is begun near the { $frog-word } on { a-bow }, where the bow is heavy.
say-swell-against-bow = The { $swell } from { $from } to { $to } at { $at } falls on { a-bow }, which { $swell ->
    [crescendo] fades
   *[diminuendo] grows
} by itself.

# Kinds of stroke

say-countable-tremolo = The tremolo at { $at } comes to { $rate } strokes a second, slow enough to be counted, and no word says whether it is measured.
say-dots-on-pizzicato = The { $count-word } notes from { $at } are plucked and carry dots: they are short anyway.
say-dots-under-slur = { $count-first } notes with dots under a slur at { $at }, { $rate } a second, and no word says how: { $slower ->
    [portato] portato
    [staccato] slurred staccato
   *[thrown] a throw
} or { $faster ->
    [portato] portato
    [staccato] slurred staccato
   *[thrown] a throw
}? At this speed { $likely ->
    [portato] portato
    [staccato] slurred staccato
   *[thrown] a throw
} is likelier.
say-signs-contradict = The note at { $at } has a { $first } and a { $second ->
    [spiccato] spiccato sign
   *[other] { $second }
}: { $first ->
    [dot] a little short, or as short as can be.
   *[dash] { $second ->
        [spiccato] one holds it, the other takes it off the string.
       *[wedge] one holds it, the other makes it as short as can be.
    }
}
say-words-contradict = “{ $first }” and “{ $second }” stand together at { $at }; a bow does one of the two.
say-legato-over-dots = “{ $word }” stands over a dot at { $at }, where no slur is: one joins the notes, the other parts them.
say-on-or-off-string = From { $at }{ $parts ->
    [1] { "" }
   *[other] { " " }in { $parts-word } parts
}, { $count-word } notes with staccato dots come { $rate } a second: on the string or off it? No word in the piece says which.
say-slurred-tremolo = The slur at { $at } stands over a tremolo of counted notes: are all of them in one bow, or has every note its own?
say-stroke-too-fast = The notes from { $at } are marked { stroke-named } and come { $rate } a second; { stroke-named } goes up to { $limit }.
say-stroke-too-slow = The notes from { $at } are marked { stroke-named } and come { $rate } a second; a bow bounces by itself from { $limit } on.
say-thrown-too-many = { $count-first } notes are to be thrown in one bow at { $at }; one throw gives up to { $most }.
say-thrown-out-of-speed = The thrown notes at { $at } come { $rate } a second, { $pace ->
    [slower] slower
   *[faster] faster
} than the { $limit } of a bow that rebounds by itself.

# Bow marks

say-effect-marked-again = { $count-first } marks from { $at } to { $last } show a pattern that was marked { $times ->
    [1] once
    [2] twice
   *[other] { $times-word } times
} before: players go on with it.
say-mark-cannot-be = The { bow-name } at { $at } stands { $where ->
    [on-rest] on a rest
    [plucked] in pizzicato
    [not-bowed] on a note that is not bowed
    [inside-slur] inside a slur
   *[tied-from-before] on a note that is tied from before
}, where no stroke begins.
say-both-bows = The note at { $at } is marked both down-bow and up-bow.
say-mark-on-every-note = From { $at } to the end of { $last }, { $marked } of { $strokes } strokes carry a bow mark.
say-mark-not-needed = The { bow-name } at { $at } is not needed: without the sign the bow is the same.

# The left hand

say-below-e-string = The note at { $at } lies below the E string: a fifth string or an extension is needed for { $pitch }.
say-below-lowest-string = { $pitch } at { $at } lies below the lowest string, { $limit }.
say-above-fingerboard = { $pitch } at { $at } lies above the end of the fingerboard, about { $limit }.
say-stop-held-too-long = { $strings-first } strings are to sound together for { $lasts } at { $at }; below forte a bow can hold two.
say-stop-unplayable = { $pitches } at { $at } cannot be stopped together on a { $instrument ->
    [violin] violin
    [viola] viola
    [cello] cello
    [bass] bass
   *[instrument] instrument
}.

# Between parts

say-doubling-bowed-apart = { $upper } and { $lower } play one line from { $bar-word } { $first } to { $last }, and are bowed differently at { $at }{ $more ->
    [0] { "" }
    [one] { " " }and 1 place more
   *[other] { " " }and { $more } places more
}.
say-doubling-marked-apart = { $upper } and { $lower } play one line from { $bar-word } { $first } to { $last }, and differ in { $signs } at { $at }{ and-more-places }.
sign-dots = dots
sign-accents = accents
sign-dashes = dashes
sign-sforzati = sforzati
sign-dynamics = dynamics
sign-way-of-playing = the way of playing
say-parallel-bowed-apart = The same notes as in { $model } are slurred differently at { $at }; { $others ->
    [one] 1 other { $bar-word } agrees
   *[other] { $others } other { $bar-word }s agree
} with { $number }.
say-stands-contradict = At { $at } the two halves of the section play one rhythm, one marked down-bow and the other up-bow.
say-winds-phrase-apart = { $strings } and { $wind } play one line in { $bars ->
    [one] 1 { $bar-word }
   *[other] { $bars } { $bar-word }s
} and slur it alike, except at { $at }{ and-more-places }.

# Ways of playing

say-chord-or-divisi = The chord at { $at } stands in the part of a section, and neither div. nor non div. has been said.
say-missing-arco = { $sign ->
    [bow-mark] A bow mark
    [tremolo] A tremolo
   *[slur] A slur
} stands at { $at }, and the last word was pizz. in { $since }.
say-pizz-again = pizz. is written at { $at } though it has held since { $since }: either arco is missing between them, or the second word is one too many.
say-mute-change-too-quick = { $change ->
    [on] con sordino
   *[off] senza sordino
} at { $at } has { $rest ->
    [none] no rest before it
   *[some] { $there } s of rest
}; players need about { $needed } s to { $change ->
    [on] put on
   *[off] take off
} the mute.
say-pizz-change-too-quick = { $word ->
    [pizz] pizz.
   *[arco] arco
} at { $at } comes { $there } s after the last note; players need about { $needed } s to change to { $word ->
    [pizz] pizz.
   *[arco] arco.
}
say-pizz-too-fast = { $count } plucked notes in a row from { $at } come { $rate } a second; a section can pluck { $most } at most.
say-state-again = { $word } is written at { $at } though it has held since { $since }: either a word is missing between them, or the second is one too many.
say-state-never-ends = { $word } is written at { $at } and never cancelled: { $bars ->
    [one] 1 more { $bar-word } is
   *[other] { $bars } more { $bar-word }s are
} played so, to the end of the movement.
say-unison-of-two = unis. stands at { $at } over two voices with different notes: do all play both, or is the part still divided?

# Slurs as written

say-slur-on-one-note = The slur at { $at } begins and ends on the same note.
say-slur-never-ends = A slur begins at { $at } and never ends.
say-slur-never-began = A slur ends at { $at } and never began.
say-crossing-slurs = Under the slur from { $at } another begins at { $start } and ends after it: one bow cannot do both.
say-legato-without-slurs = legato stands at { $at } over { $count } notes and no slur says which of them share a bow.
say-singing-line-without-slurs = From { $at } on { $part } has { $count } notes of a singing line, and neither slurs nor marks nor a word say how they are bowed.
say-nested-slurs = The slur from { $at } holds { $inside ->
    [1] another slur
   *[other] { $inside } other slurs
}: one of the lines is a phrase mark, and they look alike.
say-phrase-mark-as-slur = The slur from { $at } looks like a phrase mark: { $signs }{ $same-line ->
    [wind] ; { $wind } has the same line
   *[none] { "" }
}.
sign-slowest-bows = as long as { $bows } slowest bows
sign-slurs-inside = { $count ->
    [one] 1 slur
   *[other] { $count } slurs
} under it
sign-rest = a rest under it
sign-bow-marks = { $count ->
    [one] 1 bow mark
   *[other] { $count } bow marks
} under it
sign-repeated-pitch = a pitch repeated without dots
sign-whole-bars = exactly { bars-counted }
say-slur-misses-tie = The slur { $end ->
    [begins] begins
   *[ends] ends
} at { $at } in the middle of a tied note.
say-slurs-meet-on-tie = Two slurs meet at { $at } on a tied note: two bows, changed there, or one?
say-slur-over-change = "{ $word }" at { $at } stands in the middle of a slur.
say-slur-over-rest = The slur over { $at } covers a rest.
say-slur-skips-string = From the note at { $at } to the next the slur jumps over { $strings ->
    [1] a string
   *[other] two strings
}, within { $within }{ $more ->
    [0] { "" }
    [1] ; the same slur does it once more
   *[other] ; the same slur does it { $more } more times
}.
say-slurred-stops = The double stop at { $at } and the next one have no string in common: under one slur they cannot be joined.
say-tie-or-slur = The slur at { $at } joins two notes of one pitch, without dots or dashes: it can be one held note, or two in one bow.
say-tie-to-another-pitch = The tie at { $at } leads to another pitch: a slur is meant.

# Parts

say-no-dynamic-anywhere = No dynamic is written anywhere in the score.
say-entry-without-dynamic = No dynamic is written for the entry of { $part } at { $at }.
say-reentry-without-dynamic = No dynamic is written for the entry of { $part } at { $at }, after { $bars ->
    [one] 1 { $bar-word }
   *[other] { $bars } { $bar-word }s
} of rest.
say-landmarks-too-far = From { $from } to { $to } there are { $bars ->
    [one] 1 { $bar-word }
   *[other] { $bars } { $bar-word }s
} without a rehearsal mark.
mark-in-bar = mark { $mark } ({ $at })
mark-bar-alone = { $at }
mark-the-next = the next, { $mark }
mark-end-of-movement = the end of the movement
mark-end = the end
say-bars-without-number = { $count-first } { $count ->
    [one] { $bar-word } has
   *[other] { $bar-word }s have
} no number.
say-no-tempo = No tempo is written at the beginning.
say-tempo-for-playback-alone = The file has a tempo for playback, but none is printed at the beginning: players cannot read it.
say-page-turn-too-quick = The page is turned before { $at }, with { $rest ->
    [none] nothing
   *[some] { $there } s
} of rest; a turn takes about { $needed } s.
say-part-not-in-score = { $file } has a part { $part } that the score does not have.
say-part-has-other-bars = { $file } has { $in-part ->
    [one] 1 { $bar-word }
   *[other] { $in-part } { $bar-word }s
}, the score { $in-score }.
say-part-differs = { $file } and the score have different { $what ->
    [notes] notes
    [slurs] slurs
    [bow-marks] bow marks
    [signs] signs on notes
   *[words] dynamics or words
} at { $at }.

# What a task expects

say-no-tempo-for-task = No tempo stands in the score.
say-lacks = { $what ->
    [slurs] Slurs
    [dynamics] Dynamics
    [hairpins] Hairpins
    [articulations] Dots, lines and accents
    [bow-marks] Bow marks
   *[tempo] A tempo
} belong to this task: { $told }{ $cut ->
    [yes] { " " }…
   *[no] { "" }
}.
lacks-in-bars = { $part } has none in { $bar-word }s { $bars }
lacks-altogether = { $part } has none on its { $count } notes

# What is assumed

assume-tempo = No tempo is written; the seconds rest on an assumed one.

# Numbers

evidence-a-lift-takes = a lift takes
evidence-a-turn-takes = a turn takes
evidence-above-its-dynamic = above its dynamic
evidence-at-most = at most
evidence-bars-of-rest = bars of rest
evidence-bars-played-after-it = bars played after it
evidence-bars-that-agree = bars that agree
evidence-bars-without-a-mark = bars without a mark
evidence-beams = beams
evidence-begins-at = begins at
evidence-bow-it-travels = bow it travels
evidence-bowed-differently = bowed differently
evidence-bows = bows
evidence-bows-needed = bows needed
evidence-change-of-level = change of level
evidence-chord-lasts = chord lasts
evidence-chords-without-div-or-non-div = chords without div. or non div.
evidence-difference-of-level = difference of level
evidence-downbeats-in-a-row = downbeats in a row
evidence-dynamic = dynamic
evidence-each-time-down = each time down
evidence-each-time-up = each time up
evidence-first-note-lasts = first note lasts
evidence-last-note-lasts = last note lasts
evidence-marks = marks
evidence-note-before = note before
evidence-note-lasts = note lasts
evidence-notes-a-second = notes a second
evidence-notes-in-common = notes in common
evidence-notes-in-one-throw = notes in one throw
evidence-notes-that-begin-a-slur-in-one-part-only = notes that begin a slur in one part only
evidence-notes-without-a-slur = notes without a slur
evidence-rest = rest
evidence-silence-before-it = silence before it
evidence-slowest-bow-lasts = slowest bow lasts
evidence-slur-lasts = slur lasts
evidence-slurs-inside = slurs inside
evidence-strength-of-the-beat = strength of the beat
evidence-strings-together-loud = strings together, loud
evidence-stroke-lasts = stroke lasts
evidence-strokes-a-second = strokes a second
evidence-strokes-marked = strokes marked
evidence-the-first-chord-speaks = the first chord speaks
evidence-the-lift-takes = the lift takes
evidence-the-note-before-can-give-up = the note before can give up
evidence-time-between-them = time between them
evidence-time-it-takes = time it takes
evidence-time-there-is = time there is
evidence-time-to-lift = time to lift
evidence-time-to-pass-over-a-string = time to pass over a string
evidence-times-in-a-row = times in a row
evidence-dots-in-one-part = dots in one part only
evidence-accents-in-one-part = accents in one part only
evidence-dashes-in-one-part = dashes in one part only
evidence-sforzati-in-one-part = sforzati in one part only
evidence-notes-with-another-dynamic = notes with another dynamic
evidence-notes-played-differently = notes played differently

unit-seconds = s
unit-bows = bows
unit-decibels = dB
unit-percent = %
unit-percent-of-the-bow = % of the bow
unit-dynamic-steps = dynamic steps
unit-times-a-plain-downbeat = times a plain downbeat
