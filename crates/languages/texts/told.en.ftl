# What crates below say in English: each message is matched with what they say, and says it again. Parts with the name of a kind are clauses.

# Where in a text

told-why-line-column = line { $line }, column { $column }: { $why }
told-why-line = line { $line }: { $why }
told-why-note = note: { $why }
told-why-of = { $of }: { $why }

# Typed places

told-why-expected-meant = expected { $expected }, found { $found }. Did you mean "{ $meant }"?
told-why-expected-place = expected { $expected }, found { $found }. Places are written 12, 12/3½, "bar 12, beat 3½", 41-42 or II: 12.
told-why-expected = expected { $expected }, found { $found }.
told-expected-bar = a bar such as 37, 37/3 or 41-42
told-expected-beat = a beat such as 3, 3½, 3.5, 7/2 or 3+1/3
told-expected-note-value = a note value such as 1/4 or 3/8
told-expected-fraction = a fraction below 1, such as 3+1/3
told-expected-end-of-stretch = the last bar or beat of the stretch
told-expected-number-of-bar = a bar's number
told-expected-slash = a slash between bar and beat
told-expected-which-bar = which of the bars with this number, such as (2)
told-expected-bracket = a closing bracket
told-expected-number-of-note = the number of a note, from 1
told-expected-nothing-more = nothing more
told-expected-bar-before-beat = a bar before the beat
told-expected-place = a place
told-expected-place-alone = a place without remarks
told-expected-section = the name of a section
told-expected-mark = a mark such as down, up, hook, retake, lift, at the frog, slur, as it comes or "text"
told-expected-another-mark = another mark or a separator
told-expected-name-of-voice = the voice's name, such as 2
told-expected-pitch = a pitch such as F#5
told-expected-pitch-or-flat = a pitch such as F#5 or Bb3
told-expected-voice = a voice of this part
told-found-nothing = nothing
told-found-end = the end of the line
told-found-quotation-mark = a quotation mark that is never closed
told-found-page = a text as long as a page
told-found-text = "{ $text }"
told-why-no-movement = there is no movement "{ $asked }"; the file has { $there }
told-why-no-bar-there = { $whose } has no { $bar }; { $last }
told-why-no-bar-there-ended = { $whose } has no { $bar }; { $last }.
told-why-second-bar-first = the second bar comes before the first
told-whose-score = the score
told-last-none = it has no bars
told-last-one = the last one is { $label }
told-last-several = the last ones are { $labels }
told-bar-said = bar { $label }
told-beat-said = beat { $at }
told-beats-one = 1 beat
told-beats-many = { $at } beats
told-place-beat = bar { $label }, beat { $at } in { $part }
told-place-after = bar { $label }, after { $at } in { $part }
told-place-note = bar { $label }, note { $at } in { $part }
told-place-first = bar { $label }, its first note in { $part }
told-place-typed = { $at } in { $part }

# Shorthand

told-why-text-too-large = more than { $count } characters; split it into several texts or lines.
told-why-text-of-too-many-notes = expected a text that speaks of at most { $count } notes in all, found more up to here. Enter it in several texts, or name shorter stretches.
told-why-no-section-yet = expected a section first, such as "Vn1" or "all": none has been named so far.
told-why-unknown-section-meant = expected a section of this score, found "{ $name }". Did you mean "{ $meant }"? The sections: { $known }.
told-why-unknown-section = expected a section of this score, found "{ $name }". The sections: { $known }.
told-why-several-sections = expected one section, but "{ $name }" can be { $first } or { $second }. Add the number, or write the plural for all of them.
told-why-no-bar-before = expected a bar before the beat, such as 37/3: none has been named so far.
told-why-unknown-movement = expected a movement of this score, found "{ $name }". It has { $known }.
told-why-bar-of-several-movements = expected one bar, but { $bar } stands in the movements { $movements }. Name one above, on a line of its own: { $first }:
told-why-several-bars-numbered = expected one bar, but { $count } bars are numbered { $label }. Write { $one } for the first of them, { $two } for the second.
told-why-unknown-beat = expected a beat of { $bar }, found { $beat }. The bar has { $beats }.
told-why-bar-without-notes = expected a note, but the bar has none: { $place }.
told-why-no-note-begins = expected a place where a note begins, found { $place }. Notes begin at { $there }.
told-why-rest-there = expected a note, found a rest: { $place }.
told-why-one-of-the-notes = expected one of the notes of { $place }: { $there }.
told-why-stretch-backwards = expected a stretch forwards, but { $bar-to } comes before { $bar-from }.
told-why-stretch-backwards-meant = expected a stretch forwards, but { $bar-to } comes before { $bar-from }. For beats of one bar write { $meant }.
told-why-too-few-strokes = expected { $count } strokes, found { $number }: { $place }.
told-why-no-such-slur = expected a printed slur over this stretch, found none: { $place }.
told-why-no-such-slur-but = expected a printed slur over this stretch, found none: { $place }. Slurs there: { $there }.
told-why-inside-slur = no stroke begins here: { $place } lies inside a slur or tie from { $place-begins }. Mark that note, or take the slur off.
told-why-said-otherwise = expected one bowing a note, but line { $line } says { $mark } for { $place }.
told-mark-down = down-bow
told-mark-up = up-bow
told-mark-hooked = hooked
told-mark-retake = retake
told-mark-as-it-comes = as it comes
told-mark-lift = lift
told-why-strokes-in-a-row = several strokes in a row cannot carry other marks; give the stroke that has one a place of its own, such as 37/3 down retake.
told-why-anchor-without-direction = an anchor needs a direction; write anchor 60/1 down or up.
told-why-dots-or-dashes = a hook is written with dots or with dashes, one of them.
told-why-dots-without-hook = dots and dashes say how a hook is written; write the hook before them, as in 41/3 hook dots.
told-why-hook-or-retake = a note is hooked, retaken or bowed as it comes, one of them; give each its own place.
told-why-too-many-strokes-in-a-row = too many strokes in a row; begin anew with a bar.
told-why-two-bows-at-most = a note has two bows at most; give the next one its own place.
told-why-as-it-comes-no-direction = what is bowed as it comes has no direction of its own.
told-why-one-way = one hook or retake goes one way; give the next stroke its own place.
told-why-slur-needs-ends = a slur needs its first and its last note; write 41/1-41/3 slur.

# Files

told-why-no-file = no such file; check the name and the folder
told-why-may-not-read = you may not read this file; check its permissions
told-why-folder-not-file = this is a folder, not a file
told-why-file-too-large = the file is larger than the limit of { $limit } bytes
told-why-input-too-large = more than the limit of { $limit } bytes
told-why-larger-than-limit = it is larger than the limit of { $limit } bytes
told-why-not-utf8 = it is not UTF-8 text
told-why-line-not-utf8 = line { $line } is not UTF-8 text; save the notes as UTF-8 and try again
told-why-changed = it was changed by somebody else since it was read
told-why-locked = it is being written by another program
told-why-not-written = { $path } could not be written: { $why }.
told-why-not-written-but-there = { $path } could not be written: { $why }. What was there before is still there.
told-why-file-changed = { $path } was changed by somebody else since it was read. Nothing was written over; do it again.
told-why-file-locked = { $path } is being written by another program, for ten seconds now. Nothing was written; try again.
told-why-disk-full = the disk is full; make room and do it again
told-why-may-not-write = you may not write in this folder; check its permissions, or name another place
told-why-read-only = the disk can only be read; name another place
told-why-no-folder = there is no such folder; make it, or name another
told-why-link-in-circle = it is a link that leads in a circle; name the file itself
told-why-not-read-back = what was written could not be read back, and nothing was there before
told-why-not-read-back-kept = what was written could not be read back; what was there before is kept as { $backup } ({ $why })
told-why-thousand-backups = a thousand backups lie beside it; look through them and remove them
told-why-no-file-to-keep = there is no file to keep
told-why-no-such-folder = there is no such folder; check the name
told-why-file-not-folder = this is a file, not a folder; name the folder that holds it
told-why-too-many-files = more than { $count } scores and layers; list the folders inside one by one
told-why-name-not-utf8 = its name is not UTF-8; rename it
told-why-link-not-followed = a link, not followed: it may lead out of the folder; put the file itself here
told-why-too-deep = more than { $count } folders deep; list it by itself
told-why-index = the index of the folder cannot be used ({ $detail }); run again with --rebuild

# XML

told-why-xml-empty = the file is empty; export the score again
told-why-xml-not = this is not an XML file; choose a MusicXML file (.musicxml, .xml or .mxl)
told-why-xml-encoding = the encoding "{ $name }" is not read; save it as UTF-8 (UTF-16, ISO-8859-1 and windows-1252 are read too)
told-why-xml-contradicted = the file claims to be { $claimed }, but { $bytes }; correct the encoding in the first line, or save the file as UTF-8
told-claimed-utf8 = UTF-8 (which holds where the first line names no encoding)
told-bytes-not-utf8 = the byte { $byte } here is not UTF-8
told-bytes-not = the byte { $byte } here is not
told-bytes-half = half a character ({ $byte }) stands here
told-bytes-are = its bytes are { $encoding }
told-bytes-single = its characters have single bytes
told-bytes-order-mark = it begins with the byte order mark of UTF-8
told-why-xml-control = the control character { $code } is forbidden in XML; delete the character, or export the file again
told-why-xml-unfinished = the file ends inside the { $what } that begins here; the file was cut short: copy or export it again
told-why-xml-ends-inside = the file ends inside <{ $name }>, which was opened on line { $opened }; the file was cut short: copy or export it again
told-why-xml-mismatched = </{ $name }> stands where </{ $open }> must stand, for <{ $open }> was opened on line { $opened }; close <{ $open }>, or export the file again
told-why-xml-stray = </{ $name }> closes an element that was not opened; delete </{ $name }>, or export the file again
told-why-xml-no-root = the file holds no element; export the score again
told-why-xml-second-root = <{ $name }> stands after the end of the outermost element; keep one score in a file
told-why-xml-text-outside = there is text outside the outermost element; delete what stands outside the outermost element
told-why-xml-misplaced = the { $what } may not stand here; move the { $what } to its place, or export the file again
told-what-comment = comment
told-what-cdata = CDATA section
told-what-doctype = document type declaration
told-what-instruction = processing instruction
told-what-declaration = XML declaration
told-what-tag = tag
told-what-character = character
told-why-xml-not-a-name = "{ $name }" is not a name; write < as &lt; if it is text
told-why-xml-attribute-twice = the attribute { $name } is given twice; delete one of the two
told-why-xml-attribute = { $fault }; write name="value"
told-fault-blank = a blank is missing before an attribute
told-fault-name = this is not the name of an attribute
told-fault-value = an attribute has no value
told-fault-quotes = the value of an attribute has no quotes
told-fault-less-than = the value of an attribute holds a <
told-fault-closing-quote = the value of an attribute has no closing quote
told-why-xml-ampersand = & begins a reference that is not finished; write & as &amp;
told-why-xml-reference = { $reference } stands for no character of XML; write the character itself
told-why-xml-markup = this is not mark-up of XML; write < as &lt; if it is text
told-why-xml-bytes = the document is longer than { $limit } bytes; if the file is a real score, raise the limit
told-why-xml-depth = elements are nested deeper than { $limit }; if the file is a real score, raise the limit
told-why-xml-attributes = an element has more than { $limit } attributes; if the file is a real score, raise the limit
told-why-xml-elements = there are more than { $limit } elements; if the file is a real score, raise the limit
told-why-xml-names = there are more than { $limit } element names foreign to MusicXML; if the file is a real score, raise the limit
told-why-xml-entity = &{ $name }; is kept as it is written, not resolved; write the character itself
told-why-xml-entity-often = &{ $name }; is kept as it is written, not resolved (it stands { $count } times in the file); write the character itself

# Packages

told-why-in-package = { $member } in the package: { $why }
told-why-no-package = this is not a package (.mxl); choose a .mxl, .musicxml or .xml file
told-why-package-too-long = the package is longer than { $limit } bytes; if it is a real score, raise the limit
told-why-package-damaged = the package is damaged ({ $damage }); copy or export it again
told-damage-same-name = two members have the same name
told-why-package-members = the package has { $count } members, more than the limit of { $limit }; if it is a real score, raise the limit
told-why-member-too-large = { $member } in the package unpacks to more than the limit of { $limit } bytes; if it is a real score, raise the limit
told-why-member-too-dense = { $member } in the package unpacks to more than { $limit } times its packed size, which is the limit; if it is a real score, raise the limit
told-why-member-locked = { $member } in the package is locked with a password; save it without one
told-why-member-packing = { $member } in the package is packed by the method { $method }, which is not read; export the score again, or unpack it and open the .musicxml file inside
told-why-package-without-score = the package holds no score; export the score again, or unpack it and open the .musicxml file inside
told-why-package-several = the package has no META-INF/container.xml and holds several scores ({ $names }); unpack it and open one of them
told-why-container-bad = META-INF/container.xml in the package cannot be read: { $why }
told-why-container-names-none = META-INF/container.xml in the package names no score; export the score again, or unpack it and open the .musicxml file inside
told-why-container-nowhere = META-INF/container.xml names "{ $path }", which is not in the package; export the score again, or unpack it and open the .musicxml file inside
told-why-container-nowhere-but = META-INF/container.xml names "{ $path }", which is not in the package (it holds { $scores }); export the score again, or unpack it and open the .musicxml file inside
told-why-container-outside = META-INF/container.xml names "{ $path }", which lies outside the package; export the score again, or unpack it and open the .musicxml file inside
told-why-container-missing = the package has no META-INF/container.xml; { $score }, the only score inside, was read
told-why-container-type = META-INF/container.xml calls the score "{ $type }", not "{ $usual }"; it was read all the same

# What a score says against itself

told-why-not-a-score = This is XML, but not a score: it begins with <{ $name }>.
told-why-part-not-listed = The part "{ $name }" is not in the list of parts, so it has no name.
told-why-part-without-music = The part "{ $name }" is in the list of parts, but has no music.
told-why-divisions = "{ $text }" divisions to a quarter note make no sense; the count before is kept.
told-why-time-signature = A time signature cannot be read; the one before stays in force.
told-why-bar-too-long = The notes of the bar add up to { $told } whole notes; the time signature asks for { $asked }.
told-why-bar-too-short = The notes of the bar add up to only { $told } whole notes; the time signature asks for { $asked }.
told-why-repeat-in-repeat = A repeat begins here, and another one before it has ended.
told-why-ending-in-ending = An ending begins here, and another one before it has ended.
told-why-ending-never-began = An ending ends here that never began.
told-why-repeat-never-ends = A repeat begins here and never ends.
told-why-ending-never-ends = An ending begins here and never ends.
told-why-metronome = A metronome mark cannot be read; it is passed over.
told-why-no-pitch = A note has no pitch that can be read; it counts in time only.
told-why-duration-missing-value = The duration of a note is missing; its note value is taken.
told-why-duration-missing-none = The duration of a note is missing; it takes no time.
told-why-duration-senseless-value = The duration of a note makes no sense; its note value is taken.
told-why-duration-senseless-none = The duration of a note makes no sense; it takes no time.
told-why-duration-drawn = A note is drawn as { $drawn } of a whole note, but its duration is { $told }; the duration is taken.
told-why-backup = A <backup> goes back { $by } of a whole note too far, before the bar begins; what follows is read from the beginning of the bar.
told-why-no-duration = A <{ $name }> has no duration, or one that makes no sense; it is passed over.
told-why-duration-before-divisions = A duration comes before any <divisions> says what it counts; it is taken from the first note value, or as a quarter note.
told-why-slur-begins-again = Slur number { $number } begins again before it has ended.
told-why-slur-never-ends-in-file = A slur begins here and never ends.
told-why-slur-never-began-in-file = A slur ends here that never began.
told-why-slurs-cross = A slur begins under another one and ends after it: the two cross.
told-why-tempo = A tempo of "{ $text }" quarter notes a minute makes no sense; it is passed over.
told-why-hairpin-never-ends = A hairpin begins here and never ends.
told-why-hairpin-never-began = A hairpin ends here that never began.
told-why-dashes-never-end = A line of dashes begins here and never ends.
told-why-dashes-never-began = A line of dashes ends here that never began.
told-why-tie-without-note = A tie begins here, but no note of its pitch follows.
told-why-tie-from-nothing = A tie ends here, but no note of its pitch that is tied on comes before.
told-damage-no-zip = invalid Zip archive: { $detail }

# Files of layers

told-why-layer-too-large = the file is larger than { $limit } bytes; no bowing layer is
told-why-not-a-layer = this is not a bowing layer: a layer is JSON with "format": "arcata-layer"
told-why-layer-cut-short = the file ends in the middle, as when writing was broken off; look beside it for its backup, or take it from version control
told-why-layer-later-version = the layer is written in version { $version } of the format; this program reads version { $number }. Take a newer program, or have the layer written in version { $number }
told-why-layer-unsound = the layer cannot be read: { $why }
told-why-layer-entry = entry { $number } ({ $at }): { $why }
told-why-layer-version = "version" is missing or no version there is; write { $number }
told-why-layer-offset = "offset": "{ $text }" is no length; write whole notes as a fraction, such as 3/8
told-why-layer-pitch = "pitch": "{ $text }" is no pitch; write one like F#5, Bb3 or x
told-why-layer-counts = "bar_ordinal", "grace" and "copy" count from 1
told-why-layer-sign = "sign" says how a hook is written; take it out, or make the mark a hook
told-why-layer-slur-end = a slur needs "to", its last note
told-why-layer-in-bow = a mark "in bow" needs "place"; write frog, lower-half, middle, upper-half, tip or whole
told-why-layer-text = a mark "text" needs "text", the words to print
told-why-layer-slur-moved = a slur moved needs "new_from" or "new_to"

# Profiles

told-why-no-player = there is no player called "{ $name }": { $known }
told-why-no-such-profile = no such profile; allowed are { $names }
told-why-text-expected = text in quotation marks is expected
told-why-no-such-style = no such style; allowed are { $names }
told-why-no-such-section = no such section; allowed are { $names }
told-why-section-expected = a section is expected: [{ $name }]
told-why-no-such-setting = no such setting; allowed are { $names }
told-why-no-such-setting-alone = no such setting
told-why-unit = the unit is { $unit }
told-why-allowed = allowed are { $names }
told-why-word-expected = a word in quotation marks is expected
told-why-numbers-expected = { $count } whole numbers from small to large are expected, from { $low } to { $high } ({ $unit })
told-why-number-expected = a whole number from { $low } to { $high } is expected ({ $unit })

# Files of settings

told-why-format = the format is not "{ $format }"
told-why-format-task = the format is not "{ $format }": this is no task
told-why-format-key = the format is not "{ $format }": this is no key of a class; name another with --key
told-why-format-habits = the format is not "{ $format }": this is no file of arcata habits learn
told-why-format-hand = the format is not "{ $format }": name the file that the page of the hand gave
told-why-version = version { $version } is not known, only version { $number }
told-why-version-habits = version { $version } is not known, only version { $number }: learn it anew
told-why-line-missing = a line with { $name } is missing
told-why-missing-field = missing field `{ $name }`
told-why-unknown-field = unknown field `{ $name }`, expected one of { $names }
told-why-unknown-field-quoted = unknown field "{ $name }", expected one of { $names }
told-why-unknown-rule = no rule is called "{ $name }": "arcata rules" lists them
told-why-unknown-rule-meant = no rule is called "{ $name }": perhaps "{ $meant }" is meant
told-why-unknown-rule-aside = no rule is called "{ $name }"; `arcata rules` lists them
told-why-no-style = there is no style "{ $name }": { $known }

# Habits

told-why-no-price = there is no price "{ $name }" that is learned
told-why-price-out-of-measure = { $name } = { $price } is out of all measure: the style { $style } has { $by-style }, and { $low } to { $high } is read
told-why-habits-of-other-style = these habits were learned in the style { $style }, and this is to be bowed in { $other }: say --style { $style }, or learn them in { $other }
told-why-too-many-strokes-to-learn = a count, and not a large one
told-why-search-found-nothing = the search found nothing

# Findings set aside

told-why-aside-all-bars = what is set aside holds for all bars of one number; leave (1), (2) out
told-why-aside-everything = the entry names no rule, part, bars or movement: it would set everything aside
told-why-aside-slur = a slur is = "phrase" or "bow"
told-why-aside-bars = bars are printed numbers alone; the part, the movement and the beat have lines of their own
told-why-aside-no-reason = the entry has no reason: say why, for whoever reads it next year

# Classes

told-why-key-empty = a name or a pseudonym is empty
told-why-key-twice = "{ $name }" stands there twice: take one out
told-why-key-shared = the pseudonym "{ $name }" belongs to two students: change one
told-why-hand-journal = this is no "{ $journal }" of version { $version }
told-why-hand-act = this is no act; take the line out
told-why-task-profile = the profile file { $name } was not read
told-why-task-title = the title is empty: give the task a name
told-why-task-unknown = { $setting } "{ $given }" is not known: write { $names }
told-why-task-range = { $setting } is { $given }: write { $low } to { $high }
told-setting-severity = the severity
told-setting-style = the style
told-setting-tempo = the tempo, in quarter notes a minute,
told-setting-source = the source
told-setting-expected = what is expected,
told-setting-repairs = what becomes of repairs,
told-setting-paper = the paper
told-why-task-language = no language is named: write one, such as ["en"]
told-why-task-parts = parts are counted from 1
told-why-task-player = the player "{ $name }" is not known: write { $names }, or a profile file whose name ends in { $ending }
told-why-task-passages = { $number } passages do not fit on one page: write 0 to { $limit }
told-why-given-without-notes = { "[" }given]: the melody { $name } has no notes
told-why-neither-folder-nor-zip = this is neither a folder nor a .zip archive ({ $detail })
told-why-archive-too-many = more than { $count } files are in this archive
told-why-no-random = the system gives no random numbers: { $why }
told-why-program-failed = the program failed
told-why-program-failed-here = the program failed over this file; please report it
told-why-no-bowed-part = no part of it is for a bowed string instrument
told-why-too-long = it took longer than { $count } seconds; a longer time is given by --limit
told-why-too-much-memory = it took more than { $count } MB of memory; more is given by --memory
told-why-order = an order that is none

# Engraving

told-why-engraver-fonts = the engraver cannot write its fonts, 12 MB, into the folder for temporary files; make room there or name another with TMPDIR
told-why-engraver-refused = { $bars } cannot be engraved; the rest of the score can
told-why-engraver-slow = { $bars } could not be engraved within { $count } s; the rest of the score can
told-bars-one = bar { $number } (counted from the beginning of the file)
told-bars-many = bars { $from } to { $to } (counted from the beginning of the file)
told-why-engraver-no-start = the engraver's process does not start; see that the program may start programs here
told-why-engraved-unreadable = the engraved music cannot be read: { $why }
told-why-nothing-to-draw = there is nothing to draw
told-why-no-size = it has no size
told-why-no-drawing = it has no drawing
told-why-no-staff = it has no staff
told-why-picture-not-made = the picture cannot be made: { $why }
told-why-too-many-dots = { $width } by { $height } dots are too many; ask for fewer bars or parts, or for fewer dots an inch
told-why-pdf-refuses = the PDF does not take the drawing
told-why-pdf-not-made = the PDF could not be made: { $why }; write .html or .txt instead
told-why-font = a font cannot be read
told-why-paper-size = the paper has no size
told-why-sheet-words-only = { $number } bars change: more than { $limit }, so the sheet has words only.
told-why-engraver-refuses-part = the engraver refused the part
told-why-engraver-gave-up = the part was not engraved within { $count } s and given up

# The workbench

told-why-no-part-called = no part is called "{ $name }"
told-why-no-place-in-bar = "{ $text }" is no place in a bar
told-why-no-such-part = there is no such part
told-why-no-such-bar = there is no such bar
told-why-no-such-bars = there are no such bars
told-why-no-small-picture = there are no such bars, or too many for a small picture
told-why-no-such-line = there is no such line
told-why-no-rule-so = no rule is called so
told-why-no-rule-called = no rule is called "{ $name }"
told-why-carried-by-file = a layer is carried over when the file changes, not before
told-why-no-such-stroke = there is no such stroke
told-why-no-slur-begins = no slur begins there
told-why-no-such-proposal = there is no such proposal
told-why-proposal-changes-nothing = this proposal changes nothing in the file: make the change in the score itself
told-why-no-bow-then = no bow moves in this line then
told-why-no-bow-in-parts = no bow moves in these parts
told-why-no-bow-in-bars = no bow moves in these bars
told-why-slur-entry-unanswered = entry { $number } on slurs beside the score: no slur answers to it
told-why-slur-of-entry = { $part }, { $at }: no slur begins there
told-why-paper-by-program = pages for paper are made by the installed program; here print the page itself
told-why-no-such-act = there is no such act
told-why-was-for-old-file = "{ $sentence }" was for the file as it was
told-why-no-layer-on-desk = no layer on the desk is called "{ $name }"
told-why-no-such-layer = there is no such layer on the desk
told-why-layer-name-length = a layer has a name of 1 to { $limit } letters
told-why-layer-name-taken = a layer called "{ $name }" is on the desk
told-why-layers-many = { $count } layers are on the desk: take one away first
told-why-layer-edited = this is the layer that is being edited
told-why-layer-one-stays = one layer has to stay on the desk
told-why-layers-counts-differ = { $count } layers are on the desk, { $number } are there
told-why-layer-of-other-music = none of its bowings finds its note in this score
told-why-late = the score has changed meanwhile; look again
told-why-slur-doubled = the score has this slur already, and a layer takes it away: take the change into the layer
told-why-changes-gone = the changes to the score itself were for the old file, and are gone
told-why-score-unchanged = nothing in the score itself is changed
told-why-kept-one = 1 bowing is kept as it was
told-why-kept-many = { $count } bowings are kept as they were
told-why-is-now = { $place } is now { $place-now }: have a look
told-why-score-on-no-disk = the score lies on no disk
told-why-score-in-no-folder = the score lies in no folder
told-why-nothing-asked = nothing is asked for
told-why-change-empty = the change holds nothing
told-why-reason-wanted = a reason in a few words is kept with it
told-why-tempo-range = a tempo is 10 to 400 quarter notes a minute
told-why-louder-range = everything is played up to { $limit } steps softer or louder
told-why-no-style-called = no style is called "{ $name }": { $known }
told-why-note-no-address = the note has no address
told-why-note-no-layer-address = a note has no address that a layer can name
told-why-nothing-was-asked = nothing was asked for there
told-why-text-no-bowings = the text holds no bowings
told-why-hide-layer-first = a layer has put or taken something there: hide the layer first, or take the change into the layer
told-why-more-than-slurs = this change is more than one of slurs: it can only go into the score
told-why-journal-format = it says that it is { $format }, which is no journal
told-why-journal-version = it is written in version { $version }, and this program reads version { $number }
told-why-journal-act = line { $line } holds an act that this program does not know
told-why-journal-broken = line { $line } is broken
told-why-journal-not-read = the journal could not be read to its end ({ $why }): { $steps } of it count, and all of it is kept as { $name }
told-why-browser-full = the browser has no room left for this; save your work as files, then make room
told-why-browser-journal = the browser does not let the journal be changed
told-why-browser-second-journal = the browser has no room for a second copy of the journal
told-why-page-of-other-version = the page and its module are of different versions: load the page anew
told-why-page-writes-no-score = a page cannot write the score's own file: save the score with the bowings as a new one
told-why-page-no-folder = a page has no folder to write into: save the file
told-steps-one = 1 step
told-steps-many = { $count } steps
told-why-held-open = another program has the file open; close it there and do it again
told-why-held-open-or-forbidden = you may not write there, or another program has the file open; close it there, or name another place
