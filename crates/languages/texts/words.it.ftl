# Titoli e parole singole delle pagine.

finds = Che cosa trova
why = Perché conta
example = Esempio
proposes = Che cosa propone
limits = Che cosa non può sapere
english-only = Le fonti sono nella pagina in inglese di ogni regola.

severity-a = non si può suonare, o non è definito
severity-b = costa tempo di prova
severity-c = probabilmente non voluto
severity-d = superfluo

family-length = Lunghezza dell'arco
family-slurs = Le legature come sono scritte
family-beat = Il tempo della battuta
family-direction = Direzione e dinamica
family-kinds = Tipi di colpo d'arco
family-states = Modi di suonare e tempo per cambiarli
family-hand = La mano sinistra, dove serve all'arco
family-between = Tra le parti
family-marks = Segni d'arco
family-parts = Parti
