# Titoli e parole singole delle pagine.

finds = Che cosa trova
why = Perché conta
english-only = Il resto della pagina di ogni regola è in inglese.

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
