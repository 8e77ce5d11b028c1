# Messen auf einem Foto mit einer Karte neben dem Stecker: Ecken, Punkte, was dabei herauskam, und wie man so ein Foto macht.

measuring-open = Auf diesem Foto messen
measuring-step = Schritt { $step } von 3
measuring-board = Das Foto, mit Punkten zum Ziehen
measuring-help = Wie das Foto aufnehmen
measuring-to-photo = Zurück zum Foto
measuring-larger = Größer
measuring-smaller = Kleiner
measuring-nudges = Den Punkt um ein Pixel verschieben
measuring-nudge-left = Ein Pixel nach links
measuring-nudge-right = Ein Pixel nach rechts
measuring-nudge-up = Ein Pixel nach oben
measuring-nudge-down = Ein Pixel nach unten
measuring-moved = { $point }: { $x }, { $y } px
measuring-wait = Es wird gemessen …

measuring-corners = Die vier Ecken auf die Ecken der Karte setzen
measuring-corners-note = Die nummerierten Griffe ziehen. Jeden Punkt dorthin setzen, wo sich zwei Seiten der Karte treffen würden.
measuring-corner = Ecke { $sign }
measuring-corner-open = Ecke { $sign } liegt noch am Anfang. Auf die Karte setzen.
measuring-corners-next = Weiter: was zu messen ist

measuring-what = Was messen Sie?
measuring-what-blades = Die beiden Flachkontakte des Steckers
measuring-what-blades-note = Gleich breit, oder ist einer breiter?
measuring-what-length = Eine Länge
measuring-what-length-note = Zwischen zwei Punkten, in Millimetern

measuring-blades = Die Punkte auf beide Kanten jedes Kontakts setzen
measuring-blades-bring = Zwischen die Kontakte tippen: Die Punkte kommen dorthin.
measuring-blades-note = 1 und 1 gehören auf die Kanten des einen Kontakts, 2 und 2 auf die des anderen.
measuring-blades-point = Kontakt { $sign }, { $edge ->
    [first] erste Kante
   *[second] zweite Kante
 }
measuring-blades-open = { $point }: Punkt liegt noch am Anfang. Auf seine Kante setzen.
measuring-length = Die Punkte auf beide Enden der Länge setzen
measuring-length-bring = Auf die Mitte der Länge tippen: Die Punkte kommen dorthin.
measuring-length-note = Zwei Finger vergrößern das Foto und verschieben es.
measuring-length-point = Ende { $sign }
measuring-length-open = { $point } liegt noch am Anfang. Dorthin setzen, wo die Länge endet.
measuring-measure = Messen

measuring-picture = Was gemessen wurde
measuring-ratio = Der breitere Kontakt im Verhältnis zum schmaleren
measuring-ratio-note = Gleiche Kontakte: 1. Einer breiter: etwa 1,25, das sind 7,92 zu 6,35 mm (NEMA WD 6, aus dem Gedächtnis).
measuring-width = Breite von Kontakt { $sign }
measuring-from-to = Von A nach B
measuring-no-length = Es lässt sich keine Länge angeben
measuring-answer = Die Frage zum Stecker beantworten: { $answer }
measuring-answer-note = Die Antwort geben Sie dort, mit eigenem Antippen. Das Messen beantwortet nichts.
measuring-answered = So haben Sie die Frage zum Stecker schon beantwortet.
measuring-move-points = Punkte verschieben
measuring-move-corners = Ecken verschieben
measuring-again = Nochmals messen
measuring-done = Fertig
measuring-offered = wie auf dem Foto gemessen, falls kein dritter Stift, Stummel oder Loch da ist

measuring-how = Kontakte auf einem Foto messen
measuring-how-why = Ist ein Kontakt breiter? Ein Foto mit einer Karte neben dem Stecker kann es zeigen.
measuring-how-unplug = Zuerst den Stecker ziehen. Neben einen Stecker, der in einer Steckdose steckt, wird nichts gelegt.
measuring-how-stand = Den Stecker aufstellen, die Kontakte zu Ihnen.
measuring-how-card = Eine Karte, so groß wie eine Bankkarte, flach daneben legen, auf ein Buch oder eine Schachtel, sodass die Spitzen der Kontakte 5 bis 15 mm über der Karte stehen: höchstens eine Fingerbreite.
measuring-how-number = Jede solche Karte genügt, etwa eine Kundenkarte. Die Nummer einer Bankkarte abdecken.
measuring-how-above = Die Kamera senkrecht über beide halten, so nahe, dass die Karte etwa die Hälfte des Fotos einnimmt und alle vier Ecken zu sehen sind.
measuring-how-light = Licht von der Seite und kein Blitz: Spiegelungen verdecken die Kanten.
measuring-how-last = Auf dem letzten Foto des Steckers messen
