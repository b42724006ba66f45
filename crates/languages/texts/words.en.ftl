# Headings and single words of the pages.

finds = What it finds
why = Why it matters
english-only = The rest of each rule's page is in English.

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
