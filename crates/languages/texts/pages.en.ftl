# Pages and reports: headings, labels, ways to bow, what is gained and lost.

# Labels

label = { $label }:
assumed = assumed
not-read = not read
also = also
set-aside = set aside
better = Better
worse = Worse
weighed = { $what }: { $list }.
in-the-file = in the file
in-the-file-more = in the file: { $count } more (all of them with --format json)
nothing-found = Nothing found.
bars-and-strokes = { $bars ->
    [one] 1 { $bar-word }
   *[other] { $bars } { $bar-word }s
}, { $strokes ->
    [one] 1 stroke
   *[other] { $strokes } strokes
} in { $count ->
    [0] no bowed part
   *[other] { $names }
}
times-in-all = { $count } times in all; also in { $places }
beats-of-a-bar = { $count ->
    [one] beat
   *[other] beats
}{ $kept }{ $beats }
bars-named = { $count ->
    [one] { $bar-word }
   *[other] { $bar-word }s
} { $bars }{ $left ->
    [0] { "" }
   *[other] { " " }and { $left } more
}
places-in-file = { $count ->
    [one] 1 place
   *[other] { $count } places
} in { $file }
aside-nothing-found = set aside, but nothing is found
aside-entry = entry { $number } of { $file } ({ $asks }): { $reason }
movement-numbered = movement { $number }
place-of-bar = { $bar }, { place-beat } { $beat }
file = file
bars-column = { $bar-word }s
strokes-column = strokes
in-all = in all

# Tables of strokes

column-bar = { $bar-word }
column-beat = beat
column-bow = bow
column-how = how
column-frog-tip = frog … tip
column-penalty = penalty
column-sure = sure
row-bow = { $bow ->
    [down] down
   *[up] up
}
row-link = { $link ->
    [hooked] hooked
    [retake] retake
    [reset] placed
   *[change] { "" }
}
row-penalty = { $points } { $term }
term = { $term ->
    [beat] beat
    [upbeat] upbeat
    [entry] entry
    [swell] swell
    [accent] accent
    [ending] ending
    [hook] hook
    [retake] retake
    [reset] lift
    [retake-time] retake time
    [speed] speed
    [speed-limit] speed limit
    [place] place
    [mark] mark
    [repeat] repeat
    [unity] unity
    [likeness] likeness
   *[notation] notation
}
printed-in-the-score = printed in the score
sure-means = sure: how many players in a hundred would take this bow
sure-and-open = sure: how many players in a hundred would take this bow; ? two ways are nearly equal, --alternatives 3 with these --bars shows them
turn-link = { $link ->
    [hooked] hooked
    [retake] retake
    [reset] reset
   *[change] change
}
turn = { $road ->
    [repeat] repeat from { $bar-word } { $bar } to { $from }
    [da-capo] da capo from { $bar-word } { $from } to { $bar }
    [dal-segno] dal segno from { $bar-word } { $from } to { $bar }
   *[onward] onward from { $bar-word } { $from } to { $bar }
}: { $comes ->
    [unknown] by { turn-link }, on the { bow-name }
    [by-itself] second pass on the { bow-name } again, by itself
    [free] second pass on the { bow-name } again: the bow is free
    [lifted] lift in the rest for the { bow-name } again ({ $there } s there, { $needed } s needed)
    [retaken] retake for the { bow-name } again ({ $there } s there, { $needed } s needed)
   *[reversed] no time to lift ({ $there } s there, { $needed } s needed): as it comes, the second pass begins on the other bow
}{ $weighed ->
    [afterwards] ; crosses another repeat: not weighed
   *[search] { "" }
}

# Penalties

yardstick = Penalty: an up-bow on a downbeat counts { $points }.
share = { $what } ({ $points })
better-beat = bows with the beat
better-upbeat = up-bow right before the downbeat
better-entry = entry on the bow that suits the beat
better-swell = crescendo or diminuendo with the bow
better-accent = accents or chords on the bow that suits them
better-ending = phrase ends on a down-bow
better-hook = less hooking
better-retake = less retaking
better-reset = less lifting in rests
better-retake-time = time enough to lift
better-speed = bow speed nearer to what the dynamic wants
better-speed-limit = bow speed within what the dynamic allows
better-place = strokes nearer to their place in the bow
better-mark = printed bow marks kept
better-repeat = second time begins on the same bow
better-unity = bowed like the players with the same rhythm
better-likeness = bowed like the same figure elsewhere
better-notation = less change to the notation
worse-beat = bows against the beat
worse-upbeat = down-bow right before the downbeat
worse-entry = entry on the bow against the beat
worse-swell = crescendo or diminuendo against the bow
worse-accent = accents or chords on the bow against them
worse-ending = phrase ends on an up-bow
worse-hook = more hooking
worse-retake = more retaking
worse-reset = more lifting in rests
worse-retake-time = not time enough to lift
worse-speed = bow speed farther from what the dynamic wants
worse-speed-limit = bow speed beyond what the dynamic allows
worse-place = strokes farther from their place in the bow
worse-mark = printed bow marks not kept
worse-repeat = second time begins on the other bow
worse-unity = bowed unlike the players with the same rhythm
worse-likeness = bowed unlike the same figure elsewhere
worse-notation = more change to the notation

# Ways to bow

way-best = the best way
way-best-standing = the best way ({ $standing })
way-best-does = { $best }: { $does }
way-does = { $does }
way-standing = { $standing }: { $name }
way-begins = { $bow ->
    [down] on a down-bow
   *[up] on an up-bow
}
way-hook-at = hook at { $at }
way-retake-at = retake at { $at }
way-start = start { $bow ->
    [down] on a down-bow
   *[up] on an up-bow
} at { $at }
way-hook = hook the { bow-name } at { $at }
way-retake = retake for { a-bow } at { $at }
way-as-it-comes = { bow-name } without a hook or retake at { $at }
way-as-it-is = as it is: the best way ends so
standing-plain-alternation = plain alternation
standing-other-bow-first = the other bow first
standing-last-two-hooked = the last two hooked where a { $bar-word } comes out odd
ways-to-bow = ways to bow these { $bar-word }s
lane-letters = D down, U up; h hooked to the stroke before, r retaken
way-penalty = (penalty +{ $points })
way-penalty-and-changes = (penalty { $points }{ $changes ->
    [0] { "" }
    [1] , one change to the notation
   *[other] , { $changes } changes to the notation
})
no-other-way = The printed marks and anchors leave no other way.
ways-to = ways to { $asked }
asked-ending = end { $at } on { a-bow }
no-way = There is none.
assume-played-once = repeated stretches are weighed as played once
demand-printed = the printed { bow-name } at { $at }
demand-anchor = { $at }{ $bow ->
    [down] { " " }down
    [up] { " " }up
   *[any] { "" }
}{ $link ->
    [change] { " " }change
    [hooked] { " " }hooked
    [retake] { " " }retake
    [reset] { " " }reset
   *[any] { "" }
}
conflict-same-stroke = { $one } and { $other } ask one stroke to go both ways; the second is kept.
conflict-pays = { $one } and { $other } do not go together as it comes; keeping both raises the penalty by { $points }{ $how-known ->
    [yes] : { $how }
   *[no] { "" }
}.
anchors = anchors: { $anchors }
anchors-cost-nothing = No penalty: the best plan does so anyway.
anchors-cost = Penalty: { $points } higher than the best plan without them.
otherwise = otherwise: { $what }
repairs = repairs: the whole line as printed has a penalty of { $points }
no-repair = No change to the slurs is worth its price.
repair-step = with { $count ->
    [one] one change
   *[other] { $count } changes
}: penalty { $points } lower{ $step ->
    [further] , { $more } of it by this step
   *[first] { "" }
}
before = before
after = after
lane-frog = frog
lane-tip = tip

# Players together

no-bow-begins = no bow begins
who-does = { $does }: { $names }
does-down = down
does-up = up
does-go-on = goes on
does-rest = rests
all-of-them = all
bowed-alike = bowed alike
bowed-differently = bowed differently, and why
groups-more = and { $count } groups more (all of them with --format json)
places-more = and { $count } places more (all of them with --format json)
group = { $bars }: { $lines } { $relation ->
    [unison] in unison
    [octaves] in octaves
    [parallel] in parallel
   *[rhythm] in one rhythm
}, { $strokes ->
    [one] 1 stroke
   *[other] { $strokes } strokes
}
departure = { $at }, { $line }: { $strokes ->
    [one] 1 stroke
   *[other] { $strokes } strokes
} { $from ->
    [section] bowed unlike those who play the same rhythm
   *[figure] bowed unlike the same figure elsewhere
}; { $why }
departs-by-mark = the printed mark says so
departs-by-anchor = an anchor says so
departs-evenly = going along would cost the same
departs-for = going along would raise the penalty by { $points }, above all: { $reason }

# Printed bow marks

part = part
marks-column = marks
least-column = least
in-total = total
class-needed = needed
class-effect = effect
class-obvious = obvious
class-contradictory = contradictory
bar-of-marks = { $bar-word } { $bars }{ $left ->
    [0] { "" }
   *[other] { " " }and { $left } more
}
mark-reason = { $reason ->
    [alternation] alternation gives the other bow
    [later-instance] alternation gives the other bow; the figure was marked before
    [free-bow] the bow is free here
    [after-rest] after a rest players differ
    [beside-row] a row in one direction begins or ends here
    [unusual] it says that an unusual bow is meant
    [holds-plan] without it another bowing would be better
    [row-of-downs] row of loud down-bows
    [ups-into-down] up-bows into a strong down-bow
    [first-instances] first instances of a repeated figure
    [spelt-out] spells out a slur with dots or dashes
    [comes-anyway] it comes anyway
    [both-bows] down-bow and up-bow on one stroke
    [on-rest] on a rest
    [plucked] in pizzicato
    [not-bowed] on a note that is not bowed
    [inside-slur] inside a slur
   *[tied-from-before] on a note that is tied from before
}

# The page of a review

page-title = what the bows do
page-skip = Skip to the findings
page-glance = At a glance
page-findings = Findings
page-brackets = A number in brackets is a share of a penalty.
page-rules = The rules, and why they matter
page-advice = Arcata calculates and advises; players decide. Strain in hand, arm or back is a reason to rest and to ask a teacher or physician.
page-bars = { $bar-word ->
    [measure] Measures
   *[bar] Bars
}
page-bowed-parts = Bowed parts
strokes-counted = { $count } strokes
page-calculated-for = Calculated for
page-contradicts = The file contradicts itself at { $count ->
    [one] 1 place
   *[other] { $count } places
}
page-set-aside = { $count ->
    [one] 1 place is
   *[other] { $count } places are
} set aside
page-reasons-in = In { $file }, with the reasons given there.
page-held-for = Set aside: { $reason }
page-entry-unused = Entry { $number } of { $file } ({ $asks }) sets aside what is not found any more: { $reason }
page-which = Which findings to show
page-shown = # of # shown.
page-severity = Severity
page-section = Section
page-rule = Rule
page-show-all = Show all
page-strip-key = A column a { $bar-word }. Tall block: the section begins a down-bow on the downbeat; low block: an up-bow; line: a stroke goes on over it; nothing: it rests or plucks. Block in the row “All”: on this downbeat bows go on and none begins. Discs: findings,
picture-frog = { $frog-word }
picture-tip = { $tip-word }
picture-key = Time runs with the notes; up and down is the place in the bow, thick at the { $frog-word } and thin at the { $tip-word }. Ring: placed after a rest. Dashed arc: lifted. Short bar: stop, same direction. Beads: pulses. Zigzag: tremolo. Arrowheads: more bow than the dynamic wants. Dashed line: less bow than the tone needs; dots show where the usual speed would lead, a bar on the rail where the bow would be used up. Signs in outline were worked out, solid ones are printed.
picture-key-open = Hollow: the other bow is nearly as good.
page-lane-key = Under the music, time runs with the notes and the height is the place in the bow, the frog on top: thick at the frog, thin at the tip. Ring: placed after a rest. Dashed arc: lifted. Short bar: stop, same direction. Beads: pulses. Zigzag: tremolo. Arrowheads: more bow than the dynamic wants. Dashed line: less bow than the tone needs; dots show where the usual speed would lead. Signs in outline were worked out, solid ones are printed.
as-it-stands = As it stands
no-picture = No picture: these { $bar-word }s cannot be engraved.
also-at = Also at { $places }{ $rest ->
    [0] { "" }
   *[other] { " " }and { $rest } more places
}.
proposal-numbered = Proposal { $number }
strip-bars = { page-bars } { $first } to { $last }
strip-downbeats = Downbeats of { $bar-word }s { $first } to { $last }: { $told }
strip-row = { $name } begins { $down } on a down-bow and { $up } on an up-bow, goes on over { $on }
strip-nobody = nobody begins on { $count }.
strip-all = All
folder-title = Scores reviewed
folder-scores = { $count ->
    [one] 1 score
   *[other] { $count } scores
}
folder-region = Scores
folder-score = Score
folder-title-of-work = Title
folder-strokes = Strokes
folder-contradictions = Contradictions in the file
calculated-professional = professionals
calculated-amateur = amateurs
calculated-student = students
calculated-file = players as in { $file }
calculated-style = style { $style }
calculated-apart = each part for itself
with-engraved-music = With engraved music: { $file }
told-bars = { page-bars } { $first } to { $last }
told-stroke = { $at } { bow-name }{ $link ->
    [hooked] , hooked
    [retake] , retaken
    [reset] , placed
   *[change] { "" }
}
told-line = { $name }: { $strokes }
told-none = No stroke begins in them

# What a plan takes for given

assume-opening-tempo = { $quarters } quarter notes a minute at the opening, as asked for
assume-quarters = { $quarters } quarter notes a minute where the score gives no tempo
assume-louder = { $count ->
    [one] 1 step
   *[other] { $count } steps
} { $way ->
    [louder] louder
   *[softer] softer
} than written

# Pictures of a plan

picture-the-plan = the plan.
picture-other-way = { $what } (penalty { $points } higher)
picture-from-to = { $from } to { $to }
picture-bars = { $bar-word }s { $first } to { $last }
assume-habits = a leader's habits, learned from { $count } marked strokes
assume-habits-rest = the leader's habits rest: they were learned in the style { $style }
picture-bow-plan = Bow plan
rules-foot = 
    A rule's page: arcata rules RULE. Leave one out: arcata review SCORE --without RULE,
    or in one score, with a reason: arcata aside SCORE --rule RULE --reason TEXT.

# Change sheets

sheet-title = change sheet
sheet-untitled = Untitled
sheet-untitled-layer = untitled layer
sheet-as-printed = the parts as printed
sheet-label-write = to write:
sheet-label-so-far = so far:
sheet-head-write = To write:
sheet-head-so-far = So far:
sheet-count = { $write } to write, { $off } to take off
sheet-key = Bars in bold, then the beat.
sheet-key-with-music = Bars in bold, then the beat. The music shows the bar as it shall look, changed notes on grey.
sheet-continued = { $name } (continued)
sheet-was = (was: { $was })
sheet-take-off = take off: { $mark }
sheet-nothing = nothing
sheet-librarian = For the librarian
sheet-section = section
sheet-write = write
sheet-off = take off
sheet-stands = stands
sheet-marks = marks
sheet-time = time
sheet-all = all
sheet-as-it-shall-look = { $bar-word } { $bar } as it shall look
sheet-copying = { $marks ->
    [one] 1 mark
   *[other] { $marks } marks
} on all stands: about { $time } of copying.
sheet-estimate-reason = finding the bar on the page, writing one sign in pencil, or rubbing one out
sheet-estimate-source = from memory; time your own copying and set it
sheet-estimate-set-by-user = set by the user
sheet-estimate = The estimate takes { $value } { $unit } for a mark ({ $reason }; { $source }; { $status ->
    [seen] seen
    [counted] counted
    [derived] derived
    [yours] yours
   *[default] a default
}).
sheet-spared = { $marks ->
    [one] 1 mark
   *[other] { $marks } marks
} of the layer not written: players who bow as it comes do the same without them.
sheet-all-found = Every bowing of the layer has its note in this score.
sheet-to-settle = To settle: in no part, or without a sign to write
sheet-doubtful = Carried over with doubt: look at these
sheet-not-spread-heading = Not spread to the other parts
sheet-not-to = { $from } not to { $part }
sheet-not-spread = { $marks ->
    [one] 1 mark
   *[other] { $marks } marks
} in { $bars-are ->
    [many] { $bar-word }s
   *[one] { $bar-word }
} { $bars }; { $why }
sheet-not-settled = not settled: { $first } wants { $wants }, { $second } wants { $other }
sheet-several = the layer says several things here: { $marks }
sheet-contradicts = not applied with the layer, because it contradicts the score or another entry; arcata layer check says which
sheet-found-no-note = it found no note when the layer was carried over to this score
mark-bow = { bow-name }
mark-both-bows = { $bow ->
    [up] up-bow and down-bow
   *[down] down-bow and up-bow
} on one note
mark-hook = hooked{ $sign ->
    [dots] { " " }by a slur with dots
    [dashes] { " " }by a slur with dashes
   *[marks] { "" }
}{ $bow ->
    [down] { " " }(down)
    [up] { " " }(up)
   *[any] { "" }
}
mark-retake = retake{ $bow ->
    [down] { " " }(down)
    [up] { " " }(up)
   *[any] { "" }
}
mark-as-it-comes = as it comes
mark-lift = lift
mark-in-bow = { $place ->
    [frog] at the frog
    [lower-half] lower half
    [middle] middle of the bow
    [upper-half] upper half
    [tip] at the tip
   *[whole] whole bow
}
mark-text = "{ $text }"
mark-slur = slur to { $to }
mark-no-slur = no slur to { $to }
mark-slur-moved = slur to { $end } now{ $moves-from ->
    [yes] { " " }from { $from }
   *[no] { "" }
}{ $moves-to ->
    [yes] { " " }to { $to }
   *[no] { "" }
}
slur-from-to = slur from { $from } to { $to }
printed-slur = the printed slur
printed-slur-to = the printed slur to { $to }
which-grace = grace note { $number }
which-voice = voice { $voice }
which-pitch = on { $pitch }
