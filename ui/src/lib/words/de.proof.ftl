# Der Nachweis einer Reparatur. Prüfpunkte, Grenzwerte, Warnhinweise und Marken gehören dem Kern.

proving-title = Reparatur nachweisen
proving-see = Reparatur nachweisen
proving-choose = Wählen, was repariert wird
# $stack sind die Namen der gewählten Schritte.
proving-of = Nachzuweisen ist: { $stack }.
proving-not-here = Diese Reparatur braucht keinen solchen Prüfpunkt.
# $line ist der Name eines Prüfpunkts.
proving-next = Weiter: { $line }
proving-to-plan = Zu allen Prüfpunkten

## Die Gruppen der Prüfpunkte

proving-group-unplugged = Mit gezogenem Stecker
proving-group-outlet = An der Steckdose
proving-group-live = Eingesteckt, durch eine Elektrofachkraft

## Ein Prüfpunkt

proving-limit = Grenzwert
proving-who = Wer
proving-source = Aus
proving-ohms = Ohm
proving-megohms = Megaohm
proving-volts = Volt
proving-milliamps = Milliampere
proving-figure = Wert
# $unit ist Ω, MΩ, V oder mA.
proving-hint = Wie das Messgerät es zeigt, in { $unit }
proving-unreadable = Verlangt eine Zahl in { $unit }
proving-read = { $read } { $unit }
proving-marks = Eine Marke auf den Stecker und eine neben die Steckdose setzen. Marke an Marke ist die eine Lage.
proving-not-read = noch nicht gemessen
proving-holds = Es trifft zu
proving-holds-not = Es trifft nicht zu
proving-i-may-wire = Ich darf an der Gebäudeinstallation arbeiten
# $line ist der Prüfpunkt, der nicht bestanden wurde.
proving-held = „{ $line }“ ist nicht bestanden. Nichts wird eingesteckt, bevor das behoben und neu gemessen ist.

## Was bei einem nicht bestandenen Prüfpunkt zu tun ist

proving-failed = Nicht einstecken. Beheben, dann diesen Prüfpunkt wiederholen.
proving-failed-earth_bond = Der Schutzleiter leitet nicht, wie er muss. Nachsehen: Lack unter der Lötöse oder dem Kabelschuh, eine lose Schraube, gebrochene Litzen an einem der Enden des Netzkabels.
proving-failed-cord_pull = Das Netzkabel bewegt sich. Eine Zugentlastung einbauen, die den Mantel fasst, und den Schutzleiter innen am längsten lassen.
proving-failed-wide_blade_near_leg = Der breite Kontakt führt nicht zur Schaltungsmasse. Die beiden Adern sind vertauscht, oder eine Verbindung ist schlecht: im Stecker oder am Schalter richtigstellen.
proving-failed-hot_blade_open_off = Bei ausgeschaltetem Schalter ist der Außenleiter nicht unterbrochen. Der Schalter sitzt im anderen Leiter, ist verschlissen, oder ein leckender Kondensator liegt über ihm.
proving-failed-lost_barrier = Etwas lässt sich von Hand abnehmen. Kleben, anschrauben oder mit einer Hülse sichern, sodass es Werkzeug braucht.
proving-failed-insulation = Die Isolation ist zu gering. Herausfinden, ob der Transformator, das Netzkabel oder Schmutz an einer Klemme sie durchlässig macht. Ein Transformator mit Ableitstrom wird ersetzt.
proving-failed-outlet_proven = Die Steckdose ist nicht, wie sie sein muss. Eine andere benutzen und diese von jemandem richten lassen, der das darf.
proving-failed-chassis_volts_loaded = Das Metall liegt über dem Grenzwert. Stecker ziehen. Etwas verbindet es noch mit dem Netz: zurück zu dem, was gefunden wurde.
proving-failed-leakage_first = Es fließt mehr Ableitstrom, als der Grenzwert zulässt. Stecker ziehen. Ein Netzkondensator, die Isolation oder ein Entstörfilter lässt ihn durch.
proving-failed-leakage_second = Mit umgedrehtem Stecker fließt mehr Ableitstrom, als der Grenzwert zulässt. Stecker ziehen. Was an dem einen Leiter liegt, zeigt sich nur in dieser Lage.

## Bereit, und die frühere Prüfung

proving-ready = Gerät als bereit markieren
proving-is-ready = Als bereit markiert
proving-is-ready-means = Jeder Prüfpunkt dieses Plans wurde bestanden. Was der Plan nicht verlangt, wurde nicht geprüft. Was hier gefunden wurde, stammt von vor der Reparatur: das Gerät neu prüfen, dann stehen beide Prüfungen nebeneinander.
proving-ready-back = Markierung zurücknehmen
proving-compared = Vergleich mit der ersten Prüfung
proving-first = Anfangs
proving-now = Jetzt
proving-see-first = Erste Prüfung ansehen
field-read = Messwert
field-entry = Was eingegeben wurde
field-positions = Lagen
