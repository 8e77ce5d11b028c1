# Was nur das Terminal zeigt: Überschriften des Anhängers und der Tabelle der Lagen.

tag-worst = Schlimmste Berührung
tag-permission = Was jetzt getan werden darf
tag-cautions = Warnhinweise
tag-next = Was als Nächstes zu tun ist
tag-rests-on = Worauf der Befund beruht
tag-figures = Wessen Körper

exposure-summary = { $class }. Fehler bis zur Spannung: { $margin } (3 heißt drei oder mehr), { $current } wie vorgefunden.
exposure-as-found = wie vorgefunden
outcome-breaker_trips = Leitungsschutzschalter löst aus
outcome-behind_barrier = hinter einer Abdeckung

error-cannot-print = Das Ergebnis ließ sich nicht ausgeben.

exposure-state = { $plug }, { $switch }{ $selector }
exposure-first = Stift A am Außenleiter
exposure-second = Stift B am Außenleiter
exposure-no-selector = { "" }
exposure-selector-near = , zum chassisnahen Leiter
exposure-selector-far = , zum chassisfernen Leiter

readings-no-pins = Es hat kein Netz im Inneren und keine Stifte, von denen aus zu messen wäre.

list-empty = Noch keine Geräte in diesem Bestand.
list-not-judged = nicht beurteilt

guide-keys = Die Nummer der Antwort tippen (mehrere mit Kommas, wo mehrere zutreffen können), ? wenn es sich nicht sagen lässt, u zum Zurücknehmen, q zum Beenden.
guide-prompt = >
guide-not-understood = Das ist keine der Antworten. Eine Nummer aus der Liste tippen, ?, u oder q.
guide-figure = Den Wert tippen wie aufgedruckt, etwa 0,047u, 47n oder 220k; "m " davor, wenn er gemessen ist; ? um ihn offenzulassen.
guide-reading = Tippen, was das Messgerät in Ohm zeigt, etwa 0,4, 270k oder 2M2, oder OL über seinem Bereich; ? wenn die Messung nicht möglich ist.
guide-rated = Volt, Hertz und Watt in dieser Reihenfolge tippen, mit - für das, was das Typenschild nicht angibt, etwa 117 60 -; ? wenn es keines gibt.
guide-still-possible = Noch möglich: { $classes } ({ $count } Anordnungen)
guide-also = Diese Antworten fügen eigene Warnhinweise hinzu.

demo-intro = Eine Vorführung: ein erfundenes Radio auf einem Flohmarkt, Frage für Frage geprüft. Nichts wird aufbewahrt.
demo-cover-off = Zu Hause, mit abgenommenem Deckel:
demo-also = Nichts weiter kann die Klasse verbessern. Diese Antworten fügen eigene Warnhinweise hinzu:
demo-end = Das war die Vorführung. Ein eigenes Gerät prüfen: coldchassis inspect --access cover_off --record my.coldchassis

## Simulierte Prüfungen

simulate-intro = Künstliche Geräte, { $units } je Zeile, Startwert { $seed }. Sekunden sind Schätzungen; gestoppt wurde bei niemandem.
simulate-row = { $access }, { $kind }, { $order }: { $seconds } s ± { $error } s, { $steps } Schritte
reach-by-outside = von außen
reach-by-cover_off = Deckel ab
reach-by-meter = mit Messgerät
order-engine = dieses Verfahren
order-edges_only = nur sein Abschneiden von Kanten
order-bank = die Reihenfolge des Fragenkatalogs
order-information = die meiste Information
order-information_per_second = die meiste Information je Sekunde
order-random = beliebige Reihenfolge
