# Headings and single words of the pages.

finds = What it finds
why = Why it matters
example = Example
proposes = What it proposes
limits = What it cannot know
english-only = The sources are on each rule's page in English.

severity-a = cannot be played, or is not defined
severity-b = costs rehearsal time
severity-c = probably not meant
severity-d = clutter

family-length = Length of the bow
family-slurs = Slurs as written
family-beat = The beat
family-direction = Direction and dynamics
family-kinds = Kinds of stroke
family-states = Ways of playing, and time to change them
family-hand = The left hand, where the bow needs it
family-between = Between parts
family-marks = Bow marks
family-parts = Parts
