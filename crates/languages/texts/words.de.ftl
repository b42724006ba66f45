# Überschriften und einzelne Wörter der Seiten.

finds = Was gefunden wird
why = Warum es zählt
example = Beispiel
proposes = Was sie vorschlägt
limits = Was sie nicht wissen kann
english-only = Die Quellen stehen auf der englischen Seite jeder Regel.

severity-a = nicht spielbar, oder nicht bestimmt
severity-b = kostet Probenzeit
severity-c = wohl nicht gemeint
severity-d = überflüssig

family-length = Länge des Bogens
family-slurs = Bindebögen, wie sie dastehen
family-beat = Der Schlag
family-direction = Strichrichtung und Dynamik
family-kinds = Stricharten
family-states = Spielweisen und die Zeit, sie zu wechseln
family-hand = Die linke Hand, wo der Bogen sie braucht
family-between = Zwischen den Stimmen
family-marks = Strichzeichen
family-parts = Stimmen
