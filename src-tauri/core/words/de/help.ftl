# Was die Hilfe der Kommandozeile über ihre Befehle und Optionen sagt.

help-usage = Aufruf
help-commands = Befehle
help-arguments = Angaben
help-options = Optionen
help-default = [sonst: { $value }]

help-coldchassis = Alte netzbetriebene Geräte beurteilen, bevor sie eingesteckt werden.
help-assess = Eine Datei mit Beobachtungen beurteilen: als was das Gerät zu behandeln ist, und warum.
help-exposure = Berechnen, was ein Mensch von einer Anordnung bekäme.
help-readings = Vorhersagen, was ein Ohmmeter an einer Anordnung zeigt, ausgesteckt und kalt.
help-remedies = Zeigen, was jede Reparatur eines Geräts ändern würde, bevor sie getan wird, und den kürzesten Weg zu „Zwei Fehler“.
help-heaters = Die Heizungen einer Röhrenliste zusammenzählen: worauf sie hindeutet, was nie ein Nachweis ist.
help-simulate = Künstliche Geräte in mehreren Fragefolgen prüfen: Sekunden und Schritte bis zum endgültigen Befund.
help-demo = Eine geführte Prüfung eines erfundenen Radios zeigen; nichts wird aufbewahrt.
help-inspect = Ein Gerät prüfen: Frage für Frage am Terminal antworten.
help-list = Die Geräte eines Bestands auflisten.
help-help = Diese Hilfe ausgeben, oder die eines Befehls.

help-any-lang = Die Sprache: en oder de. Sonst die des Systems.
help-any-json = JSON für ein Skript ausgeben.
help-any-help = Diese Hilfe ausgeben.
help-any-version = Die Version ausgeben.
help-assess-file = Die Beobachtungen, JSON; auch aus einer Pipe.
help-remedies-file = Die Beobachtungen, JSON; auch aus einer Pipe.
help-exposure-file = Die Anordnung, JSON; auch aus einer Pipe.
help-readings-file = Die Anordnung, JSON; auch aus einer Pipe.
help-exposure-skin = Die Haut eines anderen Menschen: dry (trocken), wet (nass) oder saltwater (Salzwasser).
help-exposure-percentile = Der Anteil der Menschen mit weniger Körperwiderstand, in Prozent: 5, 50 oder 95.
help-exposure-path = Ein anderer Weg als der schlimmste zu erwartende, etwa hand_to_hand.
help-heaters-types = Die Typen, jeder so oft, wie er da ist.
help-heaters-volts = Die Netzspannung in V.
help-heaters-hertz = Ihre Frequenz in Hz; für einen Kondensator in Reihe.
help-simulate-units = Geräte je Zugang, Art und Folge.
help-simulate-seed = Der Startwert: Derselbe zieht dieselben Geräte.
help-inspect-record = Wo der Bestand aufbewahrt wird; ohne das wird nichts aufbewahrt.
help-inspect-supply = Woran das Gerät angeschlossen werden soll, nach Kennung.
help-inspect-access = Wie weit Sie gehen dürfen, außer von außen nachzusehen: cover_off (Deckel ab), meter (Messgerät).
help-inspect-name = Wie das Gerät genannt wird.
help-list-record = Der Bestand.
