# Warnhinweise, die am Kopf eines Bildschirms, eines Berichts oder eines Anhängers stehen.

caution-unplug-first = Zuerst den Stecker ziehen. Den Stecker aus der Steckdose ziehen; der Schalter genügt nicht.
caution-stored-charge = Kondensatoren behalten ihre Ladung, auch wenn der Stecker gezogen ist. Über einen Widerstand entladen, dann messen, dass die Ladung weg ist, bevor Sie im Inneren etwas berühren.
caution-qualified = Arbeiten an der Netzseite und jede Prüfung am eingesteckten Gerät: nur durch eine Elektrofachkraft.
caution-codes = Örtliche Vorschriften gehen vor. Verlangen sie mehr als hier steht, gilt, was sie verlangen.
caution-not-checked = Geprüft wird hier nur die Netzseite. Brand, heiße Teile, Anodenspannung im Inneren und unsichtbare Fehler wurden nicht geprüft.
# Die 5 % und die Berührung sind die der Tabelle der Körperimpedanz (body_impedance_ac.csv).
caution-body-figures = Die Ströme sind für die 5 % der Menschen mit der niedrigsten Körperimpedanz berechnet, bei trockener Haut und großer Berührungsfläche. Nasse Haut ist schlimmer.
caution-series-lamp = Eine Vorschaltlampe oder ein Stelltransformator begrenzt den Strom im Fehlerfall. Einen Stromschlag verhindern sie nicht.

## Was einen Stromschlag an der Steckdose beendet: beide Namen, sofern die Region nicht sagt, welcher dort üblich ist (guards/*.ftl). Die ersten beiden im Dativ.

-a-guard = einem FI-Schutz (GFCI oder RCD)
-a-guard-short = einem FI-Schutz (GFCI/RCD)
-guard = FI-Schutz (GFCI oder RCD)
