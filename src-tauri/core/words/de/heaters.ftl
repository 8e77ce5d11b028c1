# Heizungen: was eine Liste von Röhren zusammen ergibt, und worauf das hinweist. Nie ein Nachweis.
# Werte kommen fertig geschrieben, mit Einheit.

## Als was sich die Liste liest

heaters-nothing = Noch keine Röhren
heaters-series_on_line = Der Liste nach ein Heizkreis direkt am Netz
heaters-series_with_dropper = Der Liste nach ein Heizkreis mit Vorwiderstand
heaters-parallel_transformer = Der Liste nach Heizungen an einer Transformatorwicklung
heaters-battery = Der Liste nach Batterieröhren
heaters-undecided = Die Liste allein lässt es nicht erkennen
heaters-string_tubes = Röhren für Heizkreise, aber zusammen ergeben sie keinen

# In einer Zeile neben dem Befund. $heading ist eine der Überschriften oben, $suggests eine von unten.
heaters-hint = Röhren: { $heading }. { $suggests } Nie ein Nachweis.

## Wie sich die Volt zusammenzählen
# $sum Heizspannung, $line Netzspannung, $share ein Prozentsatz, $path Volt entlang eines Zweigs.

heaters-sum-nothing = Die Röhren eingeben, dann steht ihre Heizspannung neben der Netzspannung.
heaters-sum-over = { $sum } Heizspannung an { $line }: { $share } darüber. Eine Summe von 25 % unter bis 8 % über dem Netz zählt als direkt am Netz: Angaben sind gerundet, und Heizungen vertragen rund 10 %.
heaters-sum-under = { $sum } Heizspannung an { $line }: { $share } darunter. Eine Summe von 25 % unter bis 8 % über dem Netz zählt als direkt am Netz: Angaben sind gerundet, und Heizungen vertragen rund 10 %.
heaters-sum-even = { $sum } Heizspannung an { $line }: Sie treffen die Netzspannung.
heaters-sum-dropper = { $sum } Heizspannung an { $line }. { $left } bleiben übrig: Etwas in Reihe muss sie aufnehmen.
heaters-sum-barretter = { $sum } Heizspannung an { $line }. Der Eisenwasserstoffwiderstand nimmt den Rest auf und hält den Strom.
heaters-sum-branches = { $sum } Heizspannung, aber der Heizkreis verzweigt sich: { $path } entlang eines Zweigs, an { $line }.
heaters-sum-rectified = { $sum } an Batterieheizfäden, gespeist vom Gleichrichter über einen Widerstand (üblich sind etwa 2 kΩ, 5 W). Die Heizung des Gleichrichters selbst liegt am Netz.
heaters-sum-parallel = Jede Heizung braucht für sich eine niedrige Spannung. Parallel brauchen sie eine oder mehrere Wicklungen, und die Summe von { $sum } bedeutet nichts.
heaters-sum-battery = Batterieheizfäden, 5 V oder weniger. Die Summe von { $sum } bedeutet nichts, solange sie parallel liegen.
heaters-sum-undecided = { $sum } zusammen, wenn sie in einem Heizkreis lägen, an { $line }.
heaters-sum-missing = Nicht gezählt, weil über die Heizung nichts bekannt ist: { $tubes }.

## Worauf es hinweist

heaters-suggests-nothing = Eine Liste kann auf ein Gerät ohne Transformator hinweisen. Ein Nachweis ist sie nie.
heaters-suggests-series_on_line = Ein Hinweis auf ein Gerät ohne Transformator, dessen Metall am Netz liegen kann. So behandeln, bis etwas anderes nachgewiesen ist.
heaters-suggests-series_with_dropper = Ein Hinweis auf ein Gerät ohne Transformator: Ein Widerstand, ein Ballastwiderstand, ein Netzkabel aus Widerstandsdraht oder eine Anzapfung nimmt den Rest auf. Sein Metall kann am Netz liegen. Ein solches Kabel nie kürzen.
heaters-suggests-parallel_transformer = Ein Hinweis auf einen Transformator für die Heizungen. Über den Rest besagt er nichts: Die Anodenversorgung kann trotzdem direkt vom Netz kommen.
heaters-suggests-battery = Ein Hinweis auf Batterieröhren. Geräte für Netz und Batterie haben dieselben, mit einem Gleichrichter, der keine Röhre ist: Das ist kein Zeichen, dass kein Netz im Inneren ist.
heaters-suggests-undecided = Kein Hinweis in die eine oder andere Richtung. Mehr Röhren oder das ganze Schild können es vielleicht zeigen.
heaters-suggests-string_tubes = Einige davon wurden für Geräte ohne Transformator gebaut, deren Metall am Netz liegen kann. So behandeln, bis etwas anderes nachgewiesen ist. Eine getauschte oder fehlende Röhre oder eine andere Netzspannung kann die Summe verfälschen.

## Was keine Liste nachweisen kann

heaters-unproved = Was die Liste nicht nachweisen kann:
heaters-unproved-metal = Womit das Metall verbunden ist, und an welchem Stift der Heizkreis endet.
heaters-unproved-isolated = Ein Transformator eins zu eins kann genau denselben Heizkreis speisen. Nur der Transformator selbst lässt es erkennen.
heaters-unproved-plate = Eine Wicklung für die Heizungen trennt die Anodenversorgung nicht vom Netz. Nur Verfolgen lässt es erkennen.
heaters-unproved-both = Ein Gerät für Netz und Batterie kann genau diese Liste haben.
heaters-unproved-label = Schilder nennen, was einmal darin war. Röhren werden getauscht und Heizkreise umverdrahtet.

## Was so nicht stimmen kann

clash-current = { $tube } zieht { $amperes } und kann nicht in einem Heizkreis von { $others } liegen.
clash-over = { $sum } Heizspannung an { $line }: zu viel für einen einzigen Heizkreis an diesem Netz.
clash-branches = Sie könnten in { $count } gleichen Zweigen liegen, in Reihe mit den anderen.

## Werte, jeder mit Namen und Anmerkung

figure-current = Strom des Heizkreises
figure-current-parallel = Strom aller Heizungen
figure-current-parallel-note = Gleichrichter mit eigener Wicklung sind mitgezählt.
figure-dropper = Vorwiderstand, wenn das die ganze Liste ist
figure-dropper-value = { $ohms }, { $watts }
figure-dropper-note = Für { $volts }. Einen für { $choose } oder mehr wählen: Er wird heiß. Der Einbau ist Sache einer Elektrofachkraft.
figure-own-dropper = Vorwiderstand für { $tube } allein
figure-capacitor = Oder ein Kondensator in Reihe
figure-capacitor-note = Nur an Wechselstrom von { $hertz }, mit { $volts } daran. Er zeigt von Stift zu Stift keinen Gleichstromweg.
figure-diode = Oder eine Diode
figure-diode-value = etwa das 0,71-Fache der Netzspannung
figure-diode-note = Eine Diode in Reihe lässt den Heizungen etwa { $volts }, was nahe ihrer Summe liegt.
figure-cold = Ohmmeter, Stift zu Stift, kalt
figure-range = etwa { $usual } ({ $low } bis { $high })
figure-cold-note = Stecker gezogen, Schalter ein, alle Röhren gesteckt, seit zehn Minuten kalt, sonst nichts am Netz. Ist eine Heizung, eine Lampe oder das Netzkabel offen, zeigt es OL.
figure-cold-note-dropper = Ein Vorwiderstand von { $ohms } ist mitgezählt. Stecker gezogen, Schalter ein, alle Röhren gesteckt, seit zehn Minuten kalt, sonst nichts am Netz. Ist eine Heizung, eine Lampe oder das Netzkabel offen, zeigt es OL.
figure-cold-note-rectified = Stecker gezogen, Schalter ein, seit zehn Minuten kalt. Nur die Heizung des Gleichrichters selbst liegt am Netz. In der Stellung für Batterie zeigt es OL.
figure-hot = Derselbe Heizkreis, heiß
figure-hot-note = Aus den Nennwerten berechnet. Kalt misst man etwa ein Siebtel davon.
figure-primary = Ohmmeter, Stift zu Stift
figure-primary-low = 4 bis 15 Ω
figure-primary-high = 20 bis 60 Ω
figure-primary-note = Stecker gezogen, Schalter ein. Die Primärwicklung des Transformators eines kleinen Radios. Die eines großen Verstärkers misst weniger. Aus dem Gedächtnis, mit wenig Gewissheit.
figure-other = An einer anderen Netzspannung
figure-other-value = { $amperes } an { $volts }
figure-other-note = Die Spannung einer Heizung geht mit dem Quadrat ihres Stroms.

heaters-caution = Vor jeder Messung den Stecker ziehen, und nichts messen, was eingesteckt ist. Kondensatoren behalten ihre Ladung: bei abgenommenem Deckel zuerst über einen Widerstand entladen und messen, dass sie weg ist.

## Die Heizung einer Röhre

tube-heater = { $volts }, { $amperes }
tube-heater-volts = { $volts }
tube-heater-amperes = { $amperes }, Spannung nicht bekannt
tube-heater-ohms = { $ohms }
tube-heater-ohms-taken = { $ohms }, { $volts } hier
tube-heater-other = { $heater }, anders geschaltet
tube-heater-cold = keine Heizung
tube-heater-barretter = hält { $amperes }
tube-heater-unknown = Heizung nicht bekannt
tube-same = = { $names }

## Was eine Röhre ist

tube-role-converter = Mischröhre
tube-role-rf = HF-Verstärkerröhre
tube-role-detector = Demodulatorröhre
tube-role-triode = Triode
tube-role-pentode = Pentode
tube-role-triode_pentode = Triode und Pentode
tube-role-output = Endröhre
tube-role-rectifier = Gleichrichter
tube-role-rectifier_output = Gleichrichter und Endröhre
tube-role-eye = Abstimmanzeigeröhre
tube-role-diode = Diode
tube-role-damper = Dämpferdiode
tube-role-regulator = Stabilisatorröhre
tube-role-ballast = Ballastwiderstand oder Netzkabel
tube-role-barretter = Eisenwasserstoffwiderstand
tube-role-lamp = Skalenlampe
tube-role-unknown = Typ nicht in der Liste

## Woher ihre Werte kommen, und wie weit sie nachgeprüft wurden

tube-source = { $mark }: { $sources }
tube-source-by-rule = Nach Regel, nicht aus einer Liste
tube-source-none = Nichts ist darüber bekannt
tube-mark-verified = Im Druck gesehen
tube-mark-memory_high = Aus dem Gedächtnis
tube-mark-memory_medium = Aus dem Gedächtnis, nicht im Druck nachgeprüft
tube-mark-memory_low = Aus dem Gedächtnis, mit wenig Gewissheit
tube-source-manuals = Röhrenhandbücher der Zeit
tube-source-list_1989 = eine als Text verbreitete Liste von Röhrentypen, 1989
tube-source-soviet_handbook = ein sowjetisches Handbuch der Elektronenröhren, 1981
tube-source-design_data = Daten einer öffentlichen Bibliothek für Verstärkerentwurf
tube-source-japanese_line_ups = eine Tabelle japanischer Bestückungen; Volt aus der Typennummer
tube-source-battery_sets = Seiten über Batteriegeräte
tube-source-soviet_battery = eine Notiz über sowjetische Batterieröhren
tube-source-tube_journal = eine Röhrenzeitschrift, Juli 2000
tube-source-data_sheet = aktuelle Datenblätter
tube-source-heater_page = Seiten über einzelne Heizungen
tube-source-repair_page = ein Reparaturbericht
tube-source-line_cord_page = eine Seite über Widerstandskabel
tube-source-string_page = Seiten über Verstärker mit Heizkreis
tube-source-restored_set = die Heiztabelle eines restaurierten Geräts
tube-source-measured_set = ein gemessenes Gerät
tube-source-measured_tube = veröffentlichte Messungen
tube-source-amplifier_page = Unterlagen zu einem Verstärker
tube-source-history_page = Seiten zur Geschichte der Röhren
tube-source-tap_page = eine Seite über Gleichrichter mit Anzapfung
tube-source-rule = die Regel der Typennummern
tube-source-lamps = Listen von Skalenlampen

doubt-low_certainty = Mit wenig Gewissheit erinnert.
doubt-from_number = Die Spannung ist der Typennummer entnommen.
doubt-volts_between = Listen widersprechen sich: { $low } bis { $high }.
doubt-amperes_between = Listen widersprechen sich: { $low } bis { $high }.
doubt-odd_current = Zieht einen anderen Strom als die Typen, mit denen sie oft verwechselt wird.
doubt-two_names = Wurde unter zwei Nummern verkauft; manche Listen geben eine andere Spannung an.
doubt-tap = Die Anzapfung für die Lampe ist zweifelhaft.
doubt-span = Nimmt alles von { $low } bis { $high } auf.
doubt-suffix = Die Liste führt sie ohne den letzten Buchstaben; einige verbesserte Ausführungen ziehen einen anderen Strom.
doubt-by_rule = Nach Regel, nicht aus einer Liste.
