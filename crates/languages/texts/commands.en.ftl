# What commands tell when they are done: arcata aside, habits, layer.

# Setting aside

aside-done = { $count ->
    [one] 1 place is
   *[other] { $count } places are
} set aside from now on, in { $file }
aside-slurs-done = { $told ->
    [phrase] { $count ->
        [one] 1 slur is taken as a phrase mark
       *[other] { $count } slurs are taken as phrase marks
    }
   *[bow] { $count ->
        [one] 1 slur is taken as a bow
       *[other] { $count } slurs are taken as bows
    }
} from now on, by { $file }

# A leader's habits

habits-account = Learned from { $strokes } marked strokes, in the style { $style }. Of { $tested } strokes in bars that were left out these prices foresee { $after }, the style alone { $before }: { $gain } points more, standard error { $error }, { $sure ->
    [sure] hardly chance
    [likely] more than its error, but not sure
   *[chance] it may well be chance
}.
habits-no-price-moved = No price moved by a tenth.
habits-more-moved = { $count ->
    [one] One more price moved by less.
   *[other] { $count } more prices moved by less.
}
habits-written = Written to { $file }. Bow with --habits.
habits-not-learned-from = Not learned from:
habits-price = { $what } counts { $price } instead of { $before }: { $way ->
    [avoided] avoided more
   *[minded] minded less
}.
price-downbeat = An up-bow on a downbeat, one note,
price-downbeat-slurred = An up-bow on a downbeat, a slur,
price-downbeat-bar = An up-bow on a downbeat, a stroke of about a { $bar-word },
price-downbeat-bars = An up-bow on a downbeat, a stroke of several { $bar-word }s,
price-downbeat-even = An up-bow on a downbeat where { $bar-word }s count in twos, besides,
price-mid-bar = An up-bow in the middle of an even { $bar-word }, one note,
price-mid-bar-slurred = An up-bow in the middle of an even { $bar-word }, a slur,
price-half-bar = A slur begun in the middle of an even { $bar-word } on a down-bow
price-beat = A down-bow on a weak beat
price-offbeat = A down-bow between beats
price-upbeat = A down-bow on the last short note before a downbeat
price-upbeat-slurred = A down-bow on the last short slur before a downbeat
price-upbeat-long = A down-bow on the last long stroke before a downbeat
price-flow-slurred = An up-bow on a short slur that flows into a downbeat
price-flow-long = An up-bow on a long stroke that flows into a downbeat
price-upbeat-mid-bar = A down-bow right before the middle of a { $bar-word }
price-entry = An entry on the bow against the downbeat
price-entry-elsewhere = An up-bow on an entry away from the downbeat
price-before-rest = A down-bow on the last stroke before a short rest
price-ending = An up-bow on a phrase's last note
price-hook = A hook
price-hook-last-two = Hooking the last two of a { $bar-word }'s equal notes
price-hook-by-slur = A hook next to a slur, besides,
price-hook-slurs = A hook between two slurs, besides,
price-retake = A retake in a line that sounds on
price-retake-apart = A retake where the strokes are apart
price-retake-up = A retake on the up-bow, besides,
price-reset = Going on in one direction over a rest
price-swell = A swell against the bow

# Layers

bowings-counted = { $count ->
    [one] 1 bowing
   *[other] { $count } bowings
}
layer-lifted = { $count ->
    [one] 1 mark
   *[other] { $count } marks
} lifted into { $layer }; the clean score is { $score }
layer-staying = Marks that stay in the score:
layer-applied = { $layer }: { $written } applied, { $standing } there already
layer-overruled = Overruled by a layer above:
layer-not-applied = Not applied:
layer-wiped = { bowings-counted } taken off; the score is { $score }
layer-not-found = Not found in the score:
layer-nothing = nothing
layer-differences = { $count ->
    [one] 1 difference
   *[other] { $count } differences
}
layer-merged = { bowings-counted }, { $conflicts ->
    [one] 1 conflict
   *[other] { $conflicts } conflicts
}, { $settled } settled by rule
layer-settled = Settled by rule:
layer-to-settle = To settle, both kept:
layer-conflict = { $first } wants { $one }, { $second } wants { $other }
layer-checked = { bowings-counted }, { $remarks ->
    [one] 1 remark
   *[other] { $remarks } remarks
}
layer-proposed = Proposed:
layer-as = as { $from }, { $by ->
    [unison] unison
    [octave] octave
    [parallel] same steps
    [rhythm] same rhythm and slurs
   *[mostly] same rhythm and slurs but for some notes
}
layer-not-spread = Not spread:
layer-added = { bowings-counted } added; the layer is { $layer }
layer-carried = { bowings-counted } carried exactly, { $doubtful } with doubt, { $orphaned } found no note
layer-look-at = Look at these:
layer-without-note = Kept in the layer without a note:
layer-entered = { bowings-counted } entered; { $all } in { $layer }
layer-nothing-wrong = { bowings-counted }; nothing wrong.
layer-troubles = { $count ->
    [one] 1 trouble
   *[other] { $count } troubles
} in the text; nothing was written.
layer-more-troubles = and { $count } more; put these right first.

# A folder of layers

library-work = work
library-layer = layer
library-owner = owner
library-ensemble = ensemble
library-date = date
library-entries = entries
library-file = file
library-to-settle = { $count } to settle
library-scores = scores
library-untitled = untitled
library-not-listed = not listed
library-nothing = No score and no bowing layer here.
