# Made by `cargo xtask docs` from the rules' own pages: change those. The other languages are translations of this file.

accent-at-tip = An accent where the bow has no weight
    .finds =
        A heavy accent (sf, fz, the upright sign), at mezzo-forte or louder, that begins close to the tip in the best bowing of
        the passage, and in all that cost hardly more (C). Accents on strong beats that come on an up-bow are told by `beat-on-up-bow` and left out here;
        so are those whose bow is printed, and those after a rest in which the bow can be carried to the frog.
    .why =
        At the frog the bow lies on the string with its own weight; at the tip a sixth of that is left, and the
        hand has to make the accent alone. It comes out thin, or late.
    .proposes =
        The cheapest way to take the accent on the other bow: to start the passage otherwise, to hook or to lift
        before it (start, hook, retake, player's choice), with what it costs.
    .limits =
        That some accents are wanted light. Soft ones are left alone, and so is the lying accent sign, which speed alone
        can make: with it, nine quartets had two findings in 100 bars that no player
        would have stopped for; so are tremolo and strokes shorter than a lift, where a player stays in the middle of the bow. The places in the bow are the plan's, to a tenth of its length.

bar-comes-out-odd = A bar that comes out odd
    .finds =
        The same bar, rhythm and slurs alike, four times or more in a row with an odd number of bows: as it comes it begins on
        the other bow each time, and in the best bowing there is it does so too, or is hooked or lifted every time. What has no
        shape that the bow would have to show is left to go on as it comes: five or more equal strokes, three equal slurs, a
        note repeated through each bar; and what does not want its weight on the first stroke: a syncopation over the middle of
        the bar, an accent that stands elsewhere. So are bars shorter than a second, where nobody has the time to set anything
        right.
    .why =
        The pattern sounds one way from the down-bow and another from the up-bow; what is written as the same comes out in two
        kinds by turns.
    .proposes =
        To hook the last two bows of each bar (hook, player's choice); to join two notes, or take one apart (join, writer's
        choice).
    .limits =
        Whether turning about is wanted, as in a fast waltz or a run. Marks that fix the bows are taken as meant.

beat-on-up-bow = A strong beat comes on an up-bow
    .finds =
        A strong beat at mezzo-forte or louder with an accent, on a stroke shorter than a bar, or with a sforzato or the upright
        accent on any, that falls on an up-bow even in the best plan there is, though no up-bow is printed: and no bowing that
        costs hardly more brings it down.
    .why =
        The hand has its weight at the frog and gives it on the way down. An accent on an up-bow is played,
        but lighter and later than the writer hears it; a section will ask for the other bow.
    .proposes =
        What a player would have to do otherwise to have the beat down, with what it costs: start on the other
        bow, hook, or retake (player's choice). In the file it is bow marks: on the beat, and where the arm does
        otherwise, one mark on both strokes of a hook or a retake; none where a retake would lack time. And where
        one change of the slurs in the bars before brings it of itself, for less than the arm would pay, that
        change (writer's choice): a slur split, joined, begun or ended one note earlier or later, or a hook.
    .limits =
        Whether a lighter accent is wanted, or the line before matters more than the beat. Soft accents, and accents on a long
        stroke, are made by the bow's speed and left out; so is what players can have down for a point or less: that is theirs to
        choose, and after a dotted upbeat, which is hooked. Of accents one after the other every second is up: it is told where the first of them is.
        Within a row of equal strokes the arm makes the accents on either bow. Where a down-bow is printed on a weaker note right
        after the accent, the accent is down, too: nobody prints what alternation would not give, but for "down again".

bow-drift = A pattern carries the bow to one end
    .finds =
        A pattern of strokes that comes at least three times in a row without a rest, and whose down-bows and
        up-bows are so unequal that, bowed as it comes at the speeds its dynamic wants, it carries the bow
        more than half its length towards one end.
    .why =
        Slurs of three and a single note, over and over: each slur takes more bow than the single note gives
        back. The arm ends up at an end of the bow where the passage does not sound, or every single note
        sticks out because it rushes.
    .proposes =
        To hook the single note to the slur, with a stop (hook, player's choice; in the file as one mark on both
        where the pattern is two strokes); to split the slur so that both directions weigh alike (split, writer's
        choice). A pattern whose printed marks hook two strokes is left alone.
    .limits =
        Whether the player evens the strokes out by playing the slurs near the bridge with little bow.

broken-slur = A slur with one end
    .finds =
        A slur that begins and never ends, ends and never began, or stands on a single note. A slur that hangs
        over a repeat sign or into an ending is complete for the player and left out. One in a part is a slip (A); several
        were lost between programs, and the part is to be looked through (B).
    .why =
        The player sees a line into nothing and cannot tell where the bow changes. Such ends are mostly left
        over from an edit, and export from one program into another multiplies them.
    .proposes =
        To take the loose end out (split, writer's choice): the bow then changes at every note there.
    .limits =
        Where the other end was meant to be.

chord-or-divisi = A chord for a section: all of it, or divided?
    .finds =
        In the part of a section, a chord or two voices at once where neither div. nor non div. nor unis. has been said: told
        once a part, at the first, with the number of others.
    .why =
        Half the stands will divide and the other half play double stops, with twice the noise on the wrong notes, and the first
        rehearsal question is always the same.
    .proposes =
        To write div. at the first chord, or non div. (state, writer's choice).
    .limits =
        Chords of three and four strings are broken by everybody and are left out; so are chords that no hand can stop, which say
        by themselves that the part divides.

chords-too-close = Chords on down-bows too close to each other
    .finds =
        Two chords of three or four strings one after the other, both to be taken down-bow by marks or by words, with less
        time from the first to the second than it takes to break the first, let it speak and bring the bow back (B).
    .why =
        A chord is rolled from the lower strings to the upper ones, and that takes its own time before the bow can leave.
        Where there is none, the upper notes of the first chord are missing, or the second comes late.
    .proposes =
        To take the second mark out and alternate (unmark, player's choice). To write fewer notes in the chords, which
        two strings can hold (hook or lift as you like), for the writer's hand.
    .limits =
        How quickly this player breaks a chord. Chords that nothing printed asks to take down-bow are alternated where they
        come too fast, and not reported. Where even a lift between single notes would lack the time, `no-time-to-retake`
        tells it.

countable-tremolo = A tremolo slow enough to be counted
    .finds =
        Tremolo written with three beams or more, for which the tempo gives so few strokes a second that players
        will count them as notes (B), and no word that says tremolo. One finding for each part. Where another section has a
        tremolo of three beams at the same time, it is a colour of the whole chord, and everybody shimmers.
    .why =
        Three beams are thirty-seconds in a slow tempo and a shimmer in a quick one. Where the thirty-seconds are slow,
        half of a section plays them and the other half shimmers.
    .proposes =
        To write trem. where it begins, if a shimmer is meant (word, writer's choice). To write the notes out, or
        fewer beams, if they are meant to be counted (word, writer's choice), which is for the writer's hand.
    .limits =
        Which of the two is meant. One and two beams are taken as measured, a tremolo that the file calls unmeasured
        as a shimmer, and one that was called trem. once in a part stays so. Tremolo between two notes is left out.

crossing-slurs = Slurs that cross
    .finds =
        Two slurs of one voice of which the second begins under the first and ends after it.
    .why =
        A bow cannot be in two strokes at once: nobody can say where it changes. Every stand decides
        differently, and the section asks.
    .proposes =
        To end the first slur where the second begins (shift, writer's choice).
    .limits =
        Which of the two was meant as a bow. A dashed or dotted line counts as a phrase mark and is left out.

dots-on-pizzicato = Dots on plucked notes
    .finds =
        Dots, wedges or spiccato signs on plucked notes that follow each other (D), one finding for each part.
    .why =
        A plucked note is short anyway. Dots left over from a bowed version make players look for the arco that
        they may have missed.
    .proposes =
        To take the dots out (unmark, writer's choice).
    .limits =
        Whether the writer wants the notes damped at once, for which there are words ("damp", "secco"). On a note or chord
        before a rest a dot is read so, and left out: the string would ring into the silence.
        Notes plucked by the left hand or snapped against the fingerboard while the bow plays are left out.

dots-under-slur = Dots under a slur that can be read in two ways
    .finds =
        Three or more notes of moving pitch with dots under one slur, at a speed at which two strokes answer to the
        sign, and no word that says which (B): portato or slurred staccato, where the notes come neither slowly nor
        quickly; slurred staccato or a throw, where they come fast and are few enough for one throw. The sentence says
        which is the likelier at this speed. One finding for each part and pair of readings.
    .why =
        The three strokes share one sign. In one the bow hardly stops, in the next it stops after every note, in
        the third it leaves the string; a section that has not been told plays two of them at once.
    .proposes =
        To say it in a word where such slurs begin (word, writer's choice): "staccato" for the stopped bow, "gettato"
        for the throw. To put dashes in place of the dots where a portato is meant (word, writer's choice).
    .limits =
        What a style takes for granted. Slow notes, repeated notes (the old sign of a pulsing bow), wedges, dots with
        dashes and groups of two are read in one way only and left alone; so is what follows a word about the stroke
        until the next arco, pizz. or ord.

doubling-bowed-apart = A doubled line bowed in two ways
    .finds =
        Two string parts that play one line in unison or octaves for two bars or more, of which some notes are slurred in one
        and not in the other, or carry opposite bow marks. Basses may change bow more often than those they double.
    .why =
        Players of one line look at each other's bows. Where most is slurred alike and a few places are not, one of the two parts
        holds a slip, and it costs the time to ask.
    .proposes =
        To give the lower part the slurs of the upper one (copy, writer's choice).
    .limits =
        Which of the two is meant. A bow that begins otherwise because one part plays a note in between, an upbeat say, that the
        other has not, is left out. Where a fifth of the bows or more differ, the writer wants two articulations of one line, and
        nothing is said; nor where one of the two is plucked or plays a tremolo, whose bows are no legato. Opposite bows without marks are no difference in cellos and basses, whose bows go as they come.

doubling-marked-apart = A doubled line marked in two ways
    .finds =
        Two string parts that play one line in unison or octaves for two bars or more, of which some notes carry dots, accents,
        dashes or sforzati in one and not in the other, though both have such marks in the passage; or whose dynamics, mutes,
        pizz. or place on the string differ for the smaller part of it. Slurs and bow marks are looked at by another rule.
    .why =
        Players of one line listen to each other. Where most is marked alike and a few notes are not, one part plays short what
        the other holds, or soft what the other has loud, and somebody will ask which is meant.
    .proposes =
        To give the lower part the marks of the upper one (copy, writer's choice): in the file where only signs on notes differ.
    .limits =
        Which of the two is meant. Where most of the marks stand in one part alone, or one part has none of a kind, the
        writer wants two articulations of one line, or marks what the other part need not be told, and nothing is said. Marks over
        plucked notes and tremolos are left out.

effect-marked-again = An effect that is marked again and again
    .finds =
        A figure that comes five times and more in a row with the same bow marks, some of them an effect: up-bows into
        a strong down-bow, a lift, a bow against alternation. The marks of the third and later instances are surplus (D). As
        many again as teach the pattern are no crowd, and left alone.
    .why =
        Two instances teach the pattern; players go on with it. What is marked on and on looks like a change each time,
        and crowds the part.
    .proposes =
        To take the marks of the later instances out and write sim. where they begin (unmark, player's choice).
    .limits =
        Whether the place is so hard that somebody wants every bow written, or whether the marks come from a teaching
        edition.

ending-on-up-bow = A phrase ends on an up-bow
    .finds =
        A phrase's last note or chord on a beat, struck by itself, in forte or louder and not too short, neither growing nor
        dying away, that ends on an up-bow in the best plan there is, and in all that cost hardly more. A phrase ends before a
        long rest, at a double bar with a new tempo that does not begin down at once, and at the end; not where a breath mark before the
        note frees the bow.
    .why =
        A down-bow closes: it can ring off and fade. An up-bow ends at the frog, where the tone stops dead or
        swells.
    .proposes =
        What a player would do otherwise to end down, with what it costs: start on the other bow, hook or
        retake (player's choice). In the file it is bow marks, as for an accent on an up-bow. Or the one change of
        the slurs before it that brings the down-bow of itself for less (writer's choice).
    .limits =
        Whether the ending is meant as a question. A last note that grows is left out: an up-bow suits it. So is one after a dotted
        upbeat, which is hooked, one softer than forte, or that fades under morendo, a hairpin or dim.: there the bow leaves the
        string either way. A last slur is left out, too: it is heard as a line, not by how its bow began; and so is what a repeat
        sign sends back, as the music goes on.

entry-without-dynamic = An entry without a dynamic
    .finds =
        A part whose first entry has no dynamic at or before its first note. Where no part has any dynamic in
        the whole score, one finding says so.
    .why =
        The player does not know how loud to begin, and the dynamic also decides how much bow a note gets. It
        is the first question of every first rehearsal.
    .proposes =
        To write the dynamic that the other parts have at that moment, when they agree (state, writer's
        choice).
    .limits =
        Music that by custom carries no dynamics. A dynamic that comes within a quarter note after the entry
        counts: programs place them a little late.

landmarks-too-far = Rehearsal marks too far apart
    .finds =
        In music for sections: more bars from one mark to the next, to the first, or from the last to the end, than players
        like to count (C, one finding for the score). A movement's beginning counts as one, too. In chamber music, where players
        name a place by its bar, only if rehearsal marks are used at all, and a player counts a rest of more than eight bars in between, with
        nothing to find the way back by. Bars without numbers (C).
    .why =
        "Forty-one before D" costs a minute each time it is said, and half of the section starts elsewhere.
    .proposes =
        A place for a mark between them: a double bar, a change of metre, key or tempo, else the middle (state, writer's
        choice). Only the writer knows where the music turns.
    .limits =
        Chamber players go by bar numbers; without a single mark their scores are left alone.

legato-without-slurs = Legato without a slur
    .finds =
        The word legato over eight moving notes or more, or over all that comes until another word about the stroke, without one
        slur among them or shortly before. And a movement in which no string part has a slur, a bow mark, a sign on a note or a
        word about the stroke, though one of them sings: sixteen notes or more, mostly by step, and slow enough to be slurred (told
        once).
    .why =
        Legato on strings is written with slurs: without them every note has its own bow, and each stand will join notes as it
        likes. Music that is written without a slur looks as if nothing were wrong with its slurs, and leaves the work undone.
    .proposes =
        To write the slurs, or to say that every note has its own bow (word, writer's choice): for the writer's hand.
    .limits =
        Whether separate bows are meant, as in much old music: a word or a sign anywhere in the movement that speaks of the stroke is
        taken for an answer. Slurs in the four bars before the word count as a model that goes on.

lift-in-soft-line = A lift that leaves a gap in a soft line
    .finds =
        Two slurs, p or softer and without a rest between, of which the second has to take the direction of the first again by a
        lift in the best plan there is: the marks before and after do not come out by alternation, or the slurs do not bring the
        bow that the place asks for, and to do without it costs far more. One finding for each part.
    .why =
        In a soft slurred line a lift is heard: the tone stops, and the next one begins anew. Most leaders rather play such a place
        as it comes, or give one slur another end.
    .proposes =
        What a player would do to go on without the lift, with what it costs, or to take out the mark that does not come out
        (player's choice); and the one change of the slurs before it that brings the bow of itself for less (writer's choice).
    .limits =
        Whether a breath is meant there. Two like marks side by side ask for one and are left out, as are joints between phrases.

mark-cannot-be = A bow mark that cannot be
    .finds =
        A bow mark on a note where no stroke begins: inside a slur, on a note tied from before, in pizzicato, on
        a rest, on a note that is not bowed. Also two different marks at the beginning of one stroke, unless they
        stand on one note that is held long enough for a change of bow. These are the marks that `arcata marks`
        counts as contradictory.
    .why =
        The mark contradicts the slur, or the pizz., beside it. Each player believes one of the two.
    .proposes =
        To take the mark out (unmark, safe where nothing else begins there); of two marks, the one that does
        not come (unmark, player's choice).
    .limits =
        Whether the mark is right and the slur wrong. Several marks of one direction over a slur with dots only
        spell the stroke out and are left alone.

mark-on-every-note = A bow mark on nearly every stroke
    .finds =
        Bars in a row in which nearly every stroke carries a down-bow or an up-bow mark, for a dozen strokes and
        more (D). Marks that repeat the direction of the mark before are not counted: rows of down-bows and pairs of
        up-bows are effects. A passage whose first marked downbeat is up goes the other way about: the signs say that this is
        meant, on and on, and nothing is told of them.
    .why =
        Players read a mark as an exception. Where every note has one, the eye stops reading them, the one that
        matters is missed, and another leader cannot bow the part without erasing it first.
    .proposes =
        To take out the marks that would come anyway (unmark, safe), where enough of them would. Else to keep only
        those that say something (unmark, player's choice), which the writer has to choose.
    .limits =
        Whether this is a study or a teaching edition that wants every bow shown.

mark-states-the-obvious = A bow mark that states the obvious
    .finds =
        A printed down-bow or up-bow that the player would take anyway: it follows straight on, alternation
        gives it, no row in one direction begins or ends there, it vouches for no unusual bow (an accent, a
        swell or an ending against the rule), it belongs to no effect (a row of loud down-bows, up-bows into a
        strong down-bow, the first instances of a repeated figure), and without it the best plan is the same.
        These are the marks that `arcata marks` counts as obvious, but for up-bows on a downbeat: they come anyway, but against
        the rule, and the sign says that this is meant.
    .why =
        Players read marks as exceptions. Where every second note carries one, the few that matter drown, and
        a leader must take the rest out before bowing the part.
    .proposes =
        To take the marks out (unmark, safe: every stroke stays as it is).
    .limits =
        Whether a teaching edition wants every bow marked. Marks after rests, at the beginning and beside
        another mark of the same direction are left alone: there players do differ.

marks-contradict = Marks that contradict each other
    .finds =
        Two signs on one note that ask for opposite things: a dash with a wedge, a dash with a spiccato sign, a dot
        with a wedge. Two words at one place that do: on the string with off the string, spiccato or a throw; legato
        with spiccato, martelé or staccato; at the frog with at the tip; sul ponticello with sul tasto; every note
        down-bow with every note up-bow. Legato in words over notes with dots and no slur (B).
    .why =
        Each player obeys one of the two, and the section plays both until somebody asks.
    .proposes =
        To take either of the two out (unmark for signs, word for words; writer's choice).
    .limits =
        Which of the two was meant. A dash with a dot is a sign of its own and left alone; so are dots under a slur
        with legato (they pulse), two words in one text, which often lead from one to the other, and words for two
        voices of one staff.

missing-arco = arco is missing
    .finds =
        After pizz., with no arco since: a bowed tremolo or a bow mark (A), or a slur over three notes or more: after a rest in
        which the bow could be taken (B), or in a later bar (C). Also pizz. said again though it is still in force (C).
    .why =
        These signs only make sense with the bow. Half the section will put the finger down and half will pick
        the bow up, and the rehearsal stops.
    .proposes =
        To write arco at the first note that shows the bow (state, writer's choice); to take out the second
        pizz. (state, writer's choice).
    .limits =
        Whether the sign is the slip and not the missing word. A slur may well stand over plucked notes: it lets the string
        ring, shows a phrase, or has the left hand stop the second note. Slurs of two notes are left out for that, and all
        slurs of a passage that is slurred from the word on. So are notes marked for the left hand, and a pizz. in brackets,
        which only reminds.

mute-change-too-quick = A mute put on or taken off too quickly
    .finds =
        con sordino or senza sordino with less than three quarters of the rest that the hand takes: 4.5 s to put a mute on,
        2.5 s to take it off (B); a player alone with no rest at all, or less than a tenth of it (A).
    .why =
        The mute has to be found, set and pressed while the other hand holds the bow. Players who do not manage play on without
        it, or drop notes.
    .proposes =
        To let the players of each stand change one after the other (stagger, player's choice); to give it a longer rest (word,
        writer's choice).
    .limits =
        Mutes that stay on the instrument and slide: they take about half a second, and whoever writes for them sets the
        profile so. Where the word stands earlier or later in the rest does not matter: the whole rest counts.

nested-slurs = A slur inside a slur
    .finds =
        A solid slur that holds one or more shorter solid slurs of its voice, each from one note of it to another. Slurs of grace notes are ornaments and are
        left out, and so is a slur over two notes that share the outer one's end with a tie, and one that joins two notes of one pitch:
        it is meant as a tie, which is another rule's matter. Where the outer slur takes in one
        more note, with a dot or a dash, it is the bow: that note is hooked on, and the inner slur says what is legato in it.
    .why =
        One of the two lines must be a phrase mark, but they look alike: the player learns only by trying which of them is
        the bow, and in a section several do.
    .proposes =
        To make the outer one a dashed slur, as a phrase mark (mark as phrase, writer's choice).
    .limits =
        Whether the inner line is the slip. The bow is planned by the inner slurs.

no-tempo = No tempo
    .finds =
        A score whose first note has no tempo: neither a metronome mark nor a tempo word stands at or before it
        (B). Where only the playback has a tempo that nobody can read, C.
    .why =
        How long a bow lasts, whether a note bounces, whether a lift fits into a rest: everything the bow does
        depends on the tempo. Every number of this review that depends on it is then an assumption.
    .proposes =
        To write a tempo (state, writer's choice); only the writer knows which.
    .limits =
        The tempo. Where none is written, an assumed one is named beside every number that rests on it.

no-time-to-retake = No time to lift
    .finds =
        Strokes printed in one direction with a lift between them, where the silence and what the note before can
        lend are shorter than the lift. In a row of three or more each note gives up half its length; a pair counts
        only where the best plan lifts and the two cannot be hooked: they take more than one bow at the speeds their
        dynamic wants, and the second is not a single note half as long as the first. The lift is taken as short as it can
        be, from a stroke that used no more bow than its dynamic must have.
    .why =
        To play two down-bows running the bow must leave the string, travel back and be set down. Where there
        is no time for it, the first note is cut short, or the second comes late, or the section slides back
        on the string and scratches.
    .proposes =
        To hook the two (hook, player's choice): nothing to write, since two like marks ask for a hook as well as
        for a lift. To alternate (unmark, player's choice, where a row is printed).
    .limits =
        How quickly this player lifts: 0.15 s on the spot and 0.3 s more for a whole bow are assumed. A lift that
        nothing printed asks for is not reported, even where the best plan takes one: in nine quartets of the
        nineteenth and twentieth centuries there were 18 such places in 100 bars, and a player finds another way.
        Nor are accents in a row taken for down-bows in a row: players alternate them unless marks say otherwise.

note-outlasts-bow = A note lasts longer than one bow
    .finds =
        One note, with its ties, that lasts 1.2 times the slowest bow at its dynamic or longer: B for a player
        alone (C up to 1.3 bows, where it is only stretched), D for a section. Pedal tones are left out: a note over two bars or more while other parts move.
        So is a note that is only stretched, under a fermata, where the players hold it as long as they like and on as many bows,
        or with a diminuendo of a dynamic step or more, where the hand saves bow.
    .why =
        A player alone must change bow inside the note, and a listener may hear where. A section hides the
        change if the players do it at different times; nothing need be written for that, but it should be
        known.
    .proposes =
        In a section: players change at different times (stagger, player's choice). That writes nothing: they do
        it unasked, and a word for it would hold until another ends it. For one player: break the
        note where a change is least heard (split, writer's choice).
    .limits =
        Whether a fermata will be held longer or shorter than twice the note, and whether a soloist wants the
        change to be heard.

on-or-off-string = On the string or off it?
    .finds =
        The first place of a piece where eight or more even single strokes with dots come so fast, and no louder than
        forte, that they can be bounced or kept short on the string, when no word in any of the string parts says which
        (C). Told once for the whole piece.
    .why =
        It is the first question of the first rehearsal. The two sound different, lie in different parts of the bow,
        and one section cannot do both.
    .proposes =
        To write spicc., or on the string, over the first such place, in every part that has it there (word,
        writer's choice). The players follow it from there.
    .limits =
        What goes without saying in a style, and what the leader will decide. A soloist decides alone and is not asked.
        Once any word about it stands in the piece, the writer is taken to have thought of it.

out-of-range = A note outside the instrument
    .finds =
        Notes below the lowest string (A); below the E string of a bass, where a fifth string or an extension is
        needed (C); above the end of the fingerboard (B).
    .why =
        It cannot be played, or only by some of the section, and somebody will be asked what to play instead.
    .proposes =
        Nothing: another note or another instrument is the writer's to choose.
    .limits =
        A string tuned down for the piece, and how high a soloist goes. Harmonics are left out.

page-turn-too-quick = A page turn without a rest
    .finds =
        In a part of its own (a file with one part) whose pages are fixed: a page to be turned that ends, and a next one that
        begins, with less rest between than a player takes to turn (3 s). Pages 1, 3, 5 … are turned, by the numbers in the file
        where it has them; the others lie open beside the next. A stroke on an open string leaves the left hand free and counts
        half; between movements players stop, unless "attacca" stands there.
    .why =
        One player of each stand stops to turn, so half the section falls silent; a player alone stops altogether.
    .proposes =
        To break the page at a rest (word, writer's choice): `arcata parts` looks for the best places.
    .limits =
        How the pages are bound: a title page in front turns everything about.

parallel-bowed-apart = The same bar slurred differently
    .finds =
        A bar whose notes come back exactly, three times or more with the same slurs and once with others, in one part: the odd
        one is told.
    .why =
        What comes back is expected to come back the same. A single other slur is mostly a slip of the copy, and a player who has
        learnt the bar will play it as before or stumble.
    .proposes =
        To give the bar the slurs of the others (copy, writer's choice).
    .limits =
        Whether the change is meant: the last time before something new is often slurred otherwise, and is left out.

part-differs-from-score = A part that differs from the score
    .finds =
        Only where the parts are given beside the score (`arcata review SCORE --beside PART...`): bars in which a part has other
        notes, rests or ties than the score (A), or other slurs, bow marks, signs, dynamics or words for the player (B), each kind
        told once a part with its places; another number of bars, and a part that the score does not have (A).
    .why =
        The conductor says what the score says, and the player has something else before him. Each such place stops a rehearsal, and
        nobody in the room can see both.
    .proposes =
        Nothing: which of the two is right, only the writer can say.
    .limits =
        Cues, fingerings and page breaks belong to the part and are not looked at. Bars are taken in order: where a bar is missing in
        the middle, all that follows differs, and the number of bars is told first. In the example a staff named "beside" stands for
        the file of the part.

phrase-mark-as-slur = A phrase mark drawn as a slur
    .finds =
        A solid slur that several signs show to be a phrase mark: it lasts far longer than the slowest bow, holds other slurs,
        rests or bow marks (each strong), repeats a pitch without dots, or spans exactly two, four or eight bars (each weak). Two
        strong signs, or a strong one and two weak ones, are enough; a wind part that doubles the line with the same slur is told
        as well.
    .why =
        A slur tells string players "one bow". A phrase line that looks like a slur is bowed as it stands, or discussed; and every
        judgement about the bow that rests on it is wrong.
    .proposes =
        To make it a dashed slur, a phrase mark that leaves the bow free (mark as phrase, writer's choice).
    .limits =
        What was meant: the signs are weighed, not proved. Whoever knows says so in the file beside the score (`arcata aside` with
        `--slur phrase` or `--slur bow`), and the bow is planned accordingly.

pizz-change-too-quick = From bow to finger and back too quickly
    .finds =
        pizz. or arco with so little time between the last note of one kind and the first of the other that the hand cannot
        turn the bow (less than two fifths of what the profile gives it: 0.5 s to pizzicato, 1 s back to the bow).
    .why =
        Players will drop the last note or come in late with the first. A section solves it by letting half of it stop
        earlier, which somebody has to order.
    .proposes =
        To let the stands change over at different times (stagger, player's choice); to give the change a rest, or the last
        plucked note to the left hand (word, writer's choice).
    .limits =
        Whether the bow is in the hand all the while, as many hold it for a single plucked note: from one or two plucked notes
        the bow comes back as quickly as the finger moves, and they are left out.

pizz-too-fast = Plucked too fast
    .finds =
        Six or more plucked notes in a row, faster than a section plucks: 6 a second on violin and viola, 5 on the cello, 4 on
        the double bass.
    .why =
        The plucking finger tires and the notes come apart; above its speed the passage is simplified by whoever plays it.
    .proposes =
        To divide the notes between the players of a stand (state, writer's choice).
    .limits =
        Two fingers in turn, the guitar's way, go faster; so does a single player used to it.

reentry-without-dynamic = An entry after a long rest without a dynamic
    .finds =
        A note of a string part after eight whole bars of rest or more in its movement, with no dynamic, hairpin or sforzato at
        it, shortly after it or in the last bar of the rest.
    .why =
        The dynamic of the last entry may be a page back, and the music has gone on without it. Players who counted that long take
        the dynamic from what they hear, each as he hears it; a part repeats it as a matter of course.
    .proposes =
        To write the dynamic that the other parts have at that moment, when they agree (state, writer's choice).
    .limits =
        Whether a cue tells how loud it is. How many bars count is the player's to say. First entries belong to
        `entry-without-dynamic`.

repeat-comes-back-reversed = A repeat comes back on the other bow
    .finds =
        A repeated section, or one that da capo or dal segno sends back to, whose end leaves the player, as it
        comes, on the other bow than the one it began with, and gives no time to lift before the beginning (30 ms
        too little or more). Every ending that leads back is looked at by itself; one whose last note has a fermata or a breath mark gives
        all the time there is.
    .why =
        The same printing must serve both passes. The player either plays the whole second pass with the bow
        reversed, against every mark in the part, or makes up a bow at the seam, every stand in its own way.
    .proposes =
        To hook the last note before the repeat sign to the one before it, with one mark on both (hook, player's
        choice), or to mark the first stroke of the section so that everyone restarts alike (start, player's
        choice). The second is left to the pencil: it tells the players what to do, and the time is still missing.
    .limits =
        Whether the repeat will be taken.

rushed-return = A short note must win back a long bow
    .finds =
        A short single note that, in the best plan there is, travels so much faster than its dynamic wants
        that it sticks out by 6 dB or more, because the stroke before it is long; and in every plan that costs
        hardly more.
    .why =
        It is the unwanted accent of student scores: a soft upbeat note between two long slurs barks. No
        player wants it, and no marking of the dynamic takes it away.
    .proposes =
        To hook the short note to the stroke before it, with one mark on both (hook, player's choice); to split the long slur so that
        the short note need not carry it all back (split, writer's choice).
    .limits =
        How much the player takes back by moving away from the bridge. Travel that may only come from the
        planner's grid of places is not held against the note. With a dot, in forte or louder, the note is thrown off the string
        and meant to bark: it is left out.

silent-downbeat = A downbeat that no string section begins
    .finds =
        A bar where something new begins (tempo, metre, rehearsal mark, or the entry of several winds after a
        rest) and no string section begins a stroke on the downbeat, though at least two hold a note over it.
        At a new tempo B, else C. Also runs of four or more bars on whose downbeat nobody moves (C); a bar in which
        a section that rests on the downbeat comes in on another beat gives the pulse and breaks a run. So does a
        stroke that falls on the same place of every bar, or of every other: a syncopation that goes on is heard as one, and
        players count from it.
        A slur that begins less than a beat before the downbeat and ends there leads into it, and is no silence. A metronome
        figure that holds for no longer than a bar is a broadening in figures, and no new tempo; nor is one to which an accelerando or
        ritardando has led: it says how far that has come.
    .why =
        Strings show a section the beat by changing bow on it. If every section is tied or slurred over the
        barline, the new tempo is nobody's, and the ensemble slips until the next stroke.
    .proposes =
        To let one section change bow on the downbeat: to break the slur or tie there in the part it costs
        least, a slur before a tie, an inner part before an outer one (split, writer's choice).
    .limits =
        Whether the effect is wanted (a tempo that creeps in, a climax without a beat), and what a conductor will
        give. Harmony is not read.

slur-covers-beat = A slur over a beat that wants to be spoken
    .finds =
        A slur or tie that runs over a barline on which a new tempo or metre begins, while another part begins a stroke there;
        and a sforzato or an upright accent, on a strong beat, under a slur that goes on: none of them on the first note of a bow.
    .why =
        The strongest thing a bow can say is its beginning. Where the slur goes on, the new tempo or the accent is left to an
        impulse in the middle of a stroke, softer than the others begin it.
    .proposes =
        To split the slur there (split, writer's choice); in words only where that brings the accent on an up-bow, or
        another trouble into the bars around it: then the slurs before it must be thought over, too.
    .limits =
        Whether the impulse inside the bow is the effect that is wanted: where the same part does so in several places it is
        told once, with their number. A slur that ends on the note leads into it, as a run into its goal, and is left out. So are
        slurs over the beats of slow syncopation, notes with a breath of silence before them, and ornaments.

slur-misses-tie = A slur that misses the end of a tie
    .finds =
        A slur that ends on a note which is tied on, or begins on a note which is tied from before, where no other
        slur begins or ends there: the line on the page covers only a piece of the sounding note. One finding for each
        part (of a movement), with all its places (D). Where three slurs of a movement are drawn so, it is the page's own
        manner, as in many old editions: players have met it before, and nothing is told of them.

        Where two slurs meet on a tied note, one to it and one from it, the page says two things: one bow, for the note is
        not struck again, or two, for each slur is a bow. Players change on the tied note, and so does the plan. It is asked
        once a part (D). Where no bow lasts as long as both slurs, two are meant, and nothing is asked.
    .why =
        The bow takes the tied note whole; a slur drawn to the wrong end of a tie makes the player look for a bow
        change that nobody can make. Engravers draw it to the last tied note, and from the first.
    .proposes =
        To take the end of the slur to the last tied note, or its beginning to the first (shift, writer's choice). Where two
        slurs meet, one slur over both if one bow is meant (join, writer's choice); a bow mark on the tied note says two. In a chain of such slurs it
        is said in words only.
    .limits =
        Nothing hangs on it for the bow: the sound is the same. Where two slurs meet, it does not know what is meant.

slur-outlasts-bow = A slur lasts longer than one bow
    .finds =
        Notes under one slur that together last longer than the slowest bow at their dynamic: 1.1 times at least,
        since the slowest bows are rounded figures. Up to 1.3 bows the slur is stretched (C; nothing where it fades by a dynamic
        step or more, for then the hand saves bow), up to 2.5 it will be changed somewhere (B), above that it cannot have been
        meant as one bow (A).
    .why =
        The sound thins out, or each player changes where the arm happens to run out, and the section
        discusses it in the rehearsal. A slur tells a string player "one bow": whoever means a phrase should
        say so in another way.
    .proposes =
        To split the slur on the strongest beats that leave every piece within a bow (split, writer's
        choice). In a section, also to let players change at different times (stagger, player's choice): that
        writes nothing, since they do it unasked, and a word for it would hold until another ends it.
    .limits =
        Hall, bow and player; whether a section will hide its changes. The time comes from the tempo in the
        score: if none is written, the assumed one stands beside the number.

slur-over-change = A change of playing (pizz., mute) under a slur
    .finds =
        pizz., arco, con sordino or senza sordino after the first note of a slur and not after its last.
    .why =
        A slur is one bow. The bow cannot be put away for a pizzicato, or the mute set, without leaving the
        string, so either the slur or the word stands in the wrong place and the player must guess which.
    .proposes =
        To end the slur before pizz., to begin it at arco, to split it at a change of mute (split, writer's
        choice).
    .limits =
        Whether the word only stands too early. Left-hand pizzicato under a slur is no such change and is
        left out.

slur-over-rest = A rest under a slur
    .finds =
        A rest of the slur's own voice between its first and its last note.
    .why =
        A slur is one bow, a rest takes the bow off the string or stops it. Whether the player lifts and goes on in the
        same direction, stops on the string, or bows anew is anybody's guess; as a phrase mark the line says nothing
        about the bow at all.
    .proposes =
        To end the slur before the rest and begin another after it (split, writer's choice); to make it a dashed slur,
        as a phrase mark (mark, writer's choice).
    .limits =
        Whether a stop inside one bow is wanted: beside a short rest (no longer than the longer of its neighbours) a dot, wedge
        or dash says so, and such hooked strokes are left out.

slur-skips-string = A slur that jumps over a string
    .finds =
        Two neighbouring notes under one slur that no fingering puts on the same string or on neighbouring ones, where
        the first is too short to pass over a string unheard (B). The whole slur is fingered: positions, shifts
        that there is time for, open strings.
    .why =
        On the way the bow touches the string between, or has to be lifted in the middle of the slur.
    .proposes =
        To split the slur between the two notes, where it happens once; else to slur only what lies on neighbouring
        strings (split, writer's choice).
    .limits =
        Which fingering the player takes. Such leaps are possible: of 490 in thirty played pieces a fifth were
        bowed in one, so slow ones are left alone.

slurred-stops = Double stops under a slur that cannot be joined
    .finds =
        Two double stops that follow each other under one slur, where no fingering that the hand reaches in time leaves
        the bow on a string that both share (B).
    .why =
        The bow would have to leave both strings and take two others: it can only be lifted, or swept over a
        string that is not meant.
    .proposes =
        To split the slur between the two (split, writer's choice).
    .limits =
        Which fingering the player takes; it looks for one that joins them and finds none.

slurred-tremolo = A slurred tremolo that can be read in two ways
    .finds =
        Tremolo of one or two beams under a slur: repeated notes abbreviated, two of them or more. One finding for each part.
    .why =
        One or two beams are counted notes. Over them a slur can mean that all are played in one bow, or only that they are one
        phrase and every note has its own bow; in one section both will be played, and it looks and sounds like a mistake.
    .proposes =
        To write the first group out with its slurs, and simile after it (word, writer's choice). To take the slurs out, where
        every note is to have its bow (word, writer's choice). Both are for the writer's hand.
    .limits =
        Which is meant. Three beams and more are a shimmer, in which a slur only joins the line, and a slur over two notes that
        alternate is the sign for both of them in one bow: these are left out, and so is what a word about the stroke explains.

soft-entry-at-frog = A soft entry where the bow is heavy
    .finds =
        An entry out of silence at pianissimo or softer, on a printed bow, that begins close to the frog in the best bowing of
        the passage, and in all that cost hardly more (D).
    .why =
        At the frog the whole weight of bow and arm stands on the string, and a pianissimo begins with a bump. Players set
        soft entries in the upper half, where the stick carries itself.
    .proposes =
        The cheapest way to take the entry on the other bow (start, player's choice), with what it costs.
    .limits =
        That an experienced player sets the bow down silently anywhere. Entries with an accent are left out, and those without
        a bow mark: out of silence players choose the bow by themselves, and begin up.

stands-contradict = Stands of one section with opposite marks
    .finds =
        Two voices of a part, or two parts of one section (first and second stand, a and b), that play the same rhythm and carry
        opposite bow marks on the same note.
    .why =
        The bows of one section cross in the air, and everybody looks for the mistake in his own part.
    .proposes =
        To take the mark out in the lower voice (unmark, writer's choice).
    .limits =
        Whether the mirror image is wanted for its even sound: then it is marked throughout, and where more than half of the marks
        are opposite nothing is said.

state-never-ends = A mute or sul pont. instruction never cancelled, or given twice
    .finds =
        con sordino, sul ponticello, sul tasto or col legno said again though it is in force, with music between (C; B for
        the mute); senza sordino said again after the mute is off already (B); unis. over two voices with different notes (B);
        sul ponticello or sul tasto that is not cancelled to the end of its movement, though the music goes on after a change of
        tempo, after pizz., or for sixteen bars of playing (C).
    .why =
        Every such instruction must be cancelled by somebody. Where it is said twice, one word too few stands between the two, and the
        players who believe the first word play otherwise than those who believe the second.
    .proposes =
        To take the second word out (state, writer's choice). To write ord. where a place on the string ends, or sempre (state,
        writer's choice, for the writer's hand).
    .limits =
        Which of the two words is the slip. A word in brackets reminds and is left out. Every movement begins plain: a mute
        that stays on to the end of one needs no word, and is not told; nor a place on the string for a last passage. Divisions
        are often said anew at every place, and are left out.

stop-held-too-long = Three or four strings asked to sound on
    .finds =
        A chord over three strings or four that is written longer than the strings can sound together, in a
        dynamic below forte, where the bow cannot press three strings down (B); with no sign that it is to be broken.
    .why =
        A bow lies on two strings. Three sound together for a moment, and only loud; each player then chooses which two
        to hold.
    .proposes =
        To write which two strings are held, the lower ones as grace notes or the chord broken (word, writer's
        choice): in words only, since it changes the notes.
    .limits =
        That the chord is meant broken and everybody knows it, as in old music: set the rule aside there.

stop-unplayable = Notes that no hand can stop together
    .finds =
        Two to four notes under one stem, or of two voices for one player, that do not fit on neighbouring strings
        within one hand: on a solo part (A); in a section, which can divide unasked (B). Also five notes and more.
    .why =
        The player has to leave a note out or break the chord, and chooses alone which; a section will ask who
        plays what.
    .proposes =
        In a section, to write div. (state, writer's choice). On a solo part nothing: which note can go is the writer's
        to say.
    .limits =
        The size of the hand, which is a setting of the player profile, and a string tuned otherwise. Harmonics are
        left out, and so are chords with them. That a chord can be stopped does not make it ring.

stroke-out-of-speed = A named stroke at a speed it does not have
    .finds =
        Four or more even single strokes under a word that names how they are bowed, clearly faster or slower than
        that stroke can go (B): martelé too fast for the bow to stop and bite; spiccato, or off the string, faster than
        any bow bounces; détaché, or on the string, faster than the instrument speaks; sautillé too slow for the
        bow to bounce by itself.
    .why =
        The players have to give up either the word or the tempo, and a section gives up both.
    .proposes =
        For sautillé that is too slow, to write spiccato instead; for martelé that is too fast, to take the word out
        (word, writer's choice). For what no bow does, fewer strokes: slurs in twos (join, writer's choice).
    .limits =
        Where between spiccato and sautillé a bow begins to bounce by itself: spiccato is used for both, and so
        taken for both. Slow spiccato is a lifted stroke and slow détaché is broad; neither is reported. A word
        holds until another about the stroke, arco, pizz. or ord. A tenth more than the limit is allowed.

swell-against-bow = A swell against the bow
    .finds =
        One long stroke, over most of the bow, that grows on a down-bow, or fades on an up-bow, by a dynamic
        step or more, in the best plan there is, and in all that cost hardly more. The swell belongs to the stroke: one that
        begins before it or goes on after it is made by several bows, of which every second goes against it, and one that is
        answered by its reverse under the same bow is made by the hand.
    .why =
        The weight of the bow on the string falls from frog to tip: left alone, a down-bow fades and an up-bow
        grows. Against that the hand must press, and a long swell runs out of bow or of tone.
    .proposes =
        To take the stroke on the other bow by a start, hook or retake (player's choice), with what that costs,
        in the file as bow marks; to change bow inside the swell (split, writer's choice); or the one change of
        the slurs before it that brings the other bow of itself for less (writer's choice).
    .limits =
        Contact point and pressure: good players make any swell on any bow, up to a point. Short swells are
        left out for that reason.

thrown-count = Too much for one throw
    .finds =
        A group of notes under one slur that a word asks to be thrown (gettato, jeté, ricochet), and that has more
        notes than one throw holds, or comes slower or faster than a thrown bow rebounds (B).
    .why =
        The bow is let fall once and counts by itself. After a few rebounds it lies on the string; slower than it
        rebounds, every note has to be placed, which is another stroke and sounds so.
    .proposes =
        To divide a group that is too long (split, writer's choice). To ask for another stroke where the speed is
        wrong (word, writer's choice): only the writer knows which sound was meant.
    .limits =
        What a soloist can do: groups of ten and more are thrown in show pieces. A group without dots under its slur is
        not looked at; a word holds until another word about the stroke, arco, pizz. or ord.

tie-or-slur = A slur where a tie is meant, or a tie where a slur is
    .finds =
        A tie that leads to another pitch (A); a slur over two neighbouring notes of one pitch and nothing else, without
        dots, dashes or accents (B, all of a part gathered: many writers mean a pulse by it, and say so nowhere).
    .why =
        Both lines look alike on the page. A slur on one pitch without dots can be one held note or two notes
        pulsed in one bow; a tie to another pitch is certainly a slur. Each player decides alone, and the section
        is not together.
    .proposes =
        For one pitch: to tie the notes, or to put dashes on both for a pulse in one bow (mark, writer's choice).
        For two pitches: to write a slur (mark, writer's choice).
    .limits =
        Which of the two was meant. Slurs over one pitch with a change of string or finger written on them mean the
        change, and are left out; so are notes with a tremolo or an ornament, and grace notes. So are two unlike notes that
        fill a beat, or a plain value, from its beginning: one held note would be written as one, and the two are a rhythm.

winds-phrase-apart = Winds phrased differently from the strings they double
    .finds =
        A part that is not bowed and a string part on one line, in unison or octaves, four bars or more, that are slurred alike
        but for one slur (C) or a few (D): told once a pair of parts, and once where several pairs differ at one place.
    .why =
        A wind's slur is a breath of the tongue, a string's a bow; they need not agree, and often must not. Where nearly all of
        them do, the writer means one phrase by both, and a single other slur is mostly a slip of the copy.
    .proposes =
        Nothing: it is said to be looked at.
    .limits =
        Which of the two is meant. Where a fifth of the slurs or more differ, the two parts breathe and bow each in its own way, and
        nothing is said; nor where the strings pluck or play a tremolo, or either part is not slurred at all.
