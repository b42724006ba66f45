# Parts on paper: how their pages end, what would mend it, what their players should know, what goes with them.

# Made

part-made = { $name }: { pages-counted }, { $lines ->
    [one] 1 line
   *[other] { $lines } lines
} ({ $seconds } s)
part-kept = { $name }: as it was made before, { pages-counted }
pages-counted = { $pages ->
    [one] 1 page
   *[other] { $pages } pages
}
part-files = { $pdf } and .musicxml
part-sheets = { $count ->
    [one] 1 sheet
   *[other] { $count } sheets
}, { $width } x { $height } mm, both sides, turned on the short edge: fold, stitch
part-glued = behind them, to be glued in: { $pages }
part-entered = { $count ->
    [one] 1 mark that stands once for all players
   *[other] { $count } marks that stand once for all players
} added
part-cues = { $count ->
    [one] 1 cue
   *[other] { $count } cues
} added
part-not-in-any = Not in any part: { $what }
part-changed = { $count ->
    [one] 1 { $bar-word } changed
   *[other] { $count } { $bar-word }s changed
} since, marked in the margin: { $bars }
part-changed-and-more = { $bars } and { $more } more
part-not-changed = nothing changed since
part-new = not there before, so nothing is marked

# Ends of pages

page-end-facing = page { $page } ends before { $bar }: no turn, the next page faces it
page-end-fold = page { $page } ends before { $bar }: no turn, page { $page }a folds out, glued to its edge
page-end-turned = page { $page } ends before { $bar }: { turn-time } to turn{ $returns ->
    [yes] ; the music goes back over it (repeat, da capo or dal segno) with { $back } s of rest
   *[no] { "" }
}
page-end-rushed = page { $page } ends before { $bar }: only { turn-time } to turn{ $returns ->
    [yes] ; the music goes back over it (repeat, da capo or dal segno) with { $back } s of rest
   *[no] { "" }
}; { $needed } s are wanted
turn-time = { $rest } s of rest{ $strings ->
    [some] { " and" } { $open } s on an open string
   *[none] { "" }
}

# Quick turns

quick-turns = { $count ->
    [0] no quick turn
    [one] one quick turn
   *[other] { $count } quick turns
}
quick-turns-cost = { quick-turns }: this is the cheapest layout, { $cost } points; without what the turns cost it has { $without }
quick-turns-dearer = a layout without any is allowed, but dearer
quick-turns-least = { quick-turns } in every layout that the house allows
quick-turns-one-stays = no layout that the house allows avoids it
quick-turns-stay = no layout that the house allows has fewer
quick-turns-mend = would mend it: { $what ->
    [emptier] emptier pages, ended at rests whatever that costs
    [side] the first page on the other side ([pages] first)
    [blank] left pages that may stay blank ([pages] blank = "left pages")
    [smaller] a staff of 7.0 mm ([staff] smallest = 70)
    [folds] pages that fold out ([pages] fold_outs = "for turns")
   *[all] all of these together: either side first, left pages blank, fold-outs, a staff of 7.0 mm
}: { quick-turns } on { pages-counted }, { $cost } points
quick-turns-partner = would mend it: a stand partner who turns, or the first lines of the next page copied small onto this one

# What a player or librarian should know

part-tacet = nothing to play: tacet
part-notes-missing = { $count ->
    [one] 1 note is
   *[other] { $count } notes are
} not printed, the first in { $bar }: the engraver leaves them out; compare with the score
part-no-cue = { $first } to { $last }: { $count } { $bar-word }s of rest without a cue: nobody plays a line before it ends that could be shown
part-rests-written-out = on several staves: rests over several { $bar-word }s are written out { $bar-word } by { $bar-word }
part-smaller-staff = a staff of { $height } mm for the turns: the house allows it ([staff] smallest)
part-too-high = the line that begins with { $bar } is higher than the page

# What goes with the parts

handover-title = What is in here
handover-part = part
handover-pages = pages
handover-copies = copies
handover-printed = pages to print
handover-paper = Paper: { $width } x { $height } mm.
handover-in-all = In all
handover-files = Files
handover-is-part = part to print
handover-is-part-file = the same part as MusicXML
handover-is-booklet = the same part as sheets to be folded and stitched
handover-is-score = the score with these bowings
handover-is-layer = bowing layer
handover-is-changes = change sheet: what is written into parts that are on the stands already
handover-is-contents = this list, to print
handover-is-sums = sums of all files (SHA-256), to see whether they arrived whole
handover-look-at = Look at these before they go out
handover-made = Everything for the stands is in { $folder } and, in one file, in { $archive }

# House profiles

house-good = { $name }: everything that this house profile asks for can be had together.
house-lines = { $count } lines are asked for on { $page ->
    [first] the first page ([pages] systems_first)
   *[other] a page ([pages] systems)
}; with staves of { $staff } mm and { $apart } mm of white between them { $fit } fit.
house-smallest = The smallest staff is higher than the staff, so that no staff ever shrinks ([staff] smallest).
house-cue = A cue of { $bars } { $bar-word }s does not fit into a rest of { $rest } ([rests] cue, cue_bars).
house-indent = { $indent } mm of white in front of a first line leave { $left } mm for the music ([movements] indent).
house-margin = A margin of { $margin } mm: at 5 mm from the edge most printers end ([paper]).

# Breaks that somebody has asked for

page-left-blank = This page is left blank for the turn.
part-breaks = { $count ->
    [one] 1 page or line begins
   *[other] { $count } pages or lines begin
} where { $file } asks for it
break-moved = a new { break-begins } asked for at { $bar } begins at { $now } now: the music around it has moved there
break-first = a new { break-begins } asked for at { $bar } is not made: its music is the beginning of the part now; it is kept in the file
break-other-music = a new { break-begins } asked for at { $bar } is not made: the music around it is not in the part any more; it is kept in the file
break-no-part = a new { break-begins } asked for at { $bar } is not made: no part is called { $part }; it is kept in the file
break-begins = { $begins ->
    [page] page
   *[line] line
}
