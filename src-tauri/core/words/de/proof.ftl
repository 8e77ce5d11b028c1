# Was nach einer Reparatur zu zeigen ist. Grenzwerte: data/proof.csv, jeder mit Quelle und Marke.

proof-caution-live = Prüfpunkte, für die das Gerät eingesteckt sein muss, kommen zuletzt, durch eine Elektrofachkraft, hinter { -a-guard }, mit einer Hand, und nur, wenn kein Prüfpunkt davor durchgefallen ist.
proof-nothing-chosen = Noch ist keine Reparatur gewählt, also gibt es nichts nachzuweisen.
proof-all-passed = Jeder Prüfpunkt ist bestanden.
proof-still-live = Lässt sich nicht als bereit markieren: Auch mit dieser Reparatur steht es, wie vorgefunden, noch unter Spannung, oder es legt das Netz auf den Schutzleiter.
proof-never-live = Nicht für eine Prüfung einstecken: Direkt an einer Steckdose steht es auch nach dieser Reparatur unter Spannung. Die Prüfpunkte, für die es eingesteckt sein müsste, entfallen.
proof-progress = { $open } offen, { $passed } bestanden, { $failed } nicht bestanden.
proof-found-worse = Lässt sich nicht als bereit markieren: Eine spätere Prüfung findet „{ $found }“, und nach der Reparatur sollte gelten: „{ $left }“.
proof-held-back = Lässt sich nicht als bereit markieren. Seit der Reparatur: { $why }
proof-not-ready = Lässt sich nicht als bereit markieren. Offen oder nicht bestanden: { $lines }.

proof-mark-open = Offen
proof-mark-passed = Bestanden
proof-mark-failed = Nicht bestanden
proof-holds = trifft zu
proof-holds-not = trifft nicht zu
proof-position = { $position }: { $read }

proof-limit-yes = Es muss zutreffen.
proof-limit-least = Mindestens { $limit }; über dem Bereich des Messgeräts genügt.
proof-limit-most = Höchstens { $limit }.
proof-limit-lead = Höchstens { $limit }, der Widerstand des Schutzleiters selbst eingerechnet.
proof-source = { $source } ({ $mark }).
source-appliance_testing = Wiederholungsprüfung von Geräten
source-ul_101 = UL 101, Ableitstrom von Geräten
source-typical_values = Praxis des Handwerks
source-class_y_limit = Der für Klasse Y gewählte Grenzwert, strenger als der der Norm
source-mark-verified = wie im Druck zitiert
source-mark-memory = aus dem Gedächtnis
source-mark-common = übliche Praxis, ohne Quelle
source-mark-computed = berechnet
source-mark-assumption = eigene Festlegung

proof-who-anyone = Jeder, bei gezogenem Stecker
proof-who-qualified = Eine Elektrofachkraft, bei gezogenem Stecker
proof-who-qualified_live = Nur eine Elektrofachkraft: Das Gerät ist eingesteckt
proof-who-electrician = Wer an der Gebäudeinstallation arbeiten darf

## Prüfpunkte: was zu zeigen ist, wie, und worauf zu achten ist

proof-earth_bond = Schutzleiterverbindung
proof-earth_bond-how = Stecker gezogen. Ohm vom Schutzkontakt zum blanken Metall des Chassis, während das Netzkabel der Länge nach und an beiden Enden gebogen wird; den höchsten Wert eingeben.
proof-earth_bond-caution = Zuerst die Messleitungen auf null abgleichen. Lack unter der Lötöse oder dem Kabelschuh ist der übliche Fehler.
proof-cord_pull = Zug am Netzkabel
proof-cord_pull-how = Stecker gezogen. Kräftig ziehen und an der Zugentlastung drehen: Kein Leiter und keine Verbindung bewegt sich im Inneren.
proof-cord_pull-caution = Ein Knoten ist keine Zugentlastung.
proof-wide_blade_near_leg = Breiter Kontakt zum Leiter der Schaltungsmasse
proof-wide_blade_near_leg-how = Stecker gezogen. Ohm vom breiten Kontakt oder Neutralleiterstift zur Schaltungsmasse, bei Schalter ein, und auch bei Schalter aus, wo er diesen Leiter nicht öffnet; den höheren Wert eingeben.
proof-wide_blade_near_leg-caution = Auch den anderen Kontakt messen: Über die Heizungen zeigt er mehr.
proof-hot_blade_open_off = Außenleiterkontakt offen bei Schalter aus
proof-hot_blade_open_off-how = Stecker gezogen, Schalter aus. Ohm über den Schalter, vom Außenleiterkontakt zum Leiter dahinter; erwünscht ist ein Wert über dem Bereich des Messgeräts.
proof-hot_blade_open_off-caution = Ein Kondensator über dem Schalter lässt den Wert steigen: warten, bis er steht.
proof-chassis_volts_loaded = Spannung am Chassis unter Last
proof-chassis_volts_loaded-how = Direkt an einer geschützten Steckdose: Volt vom Metall zu einer nachgewiesenen Erde an 1500 Ω parallel zu 0,15 µF, in jeder Lage von Stecker und Schalter.
proof-chassis_volts_loaded-caution = Mit Schutzleiter: in einer Prüfleitung, deren Erde geöffnet ist, denn über die Schutzleiterverbindung zeigt es immer wenig; niemand sonst berührt das Gerät. Nicht hinter einem Trenntransformator, wo ein niedriger Messwert nichts zeigt. Beim ersten Messwert über dem Grenzwert aufhören.
proof-leakage_first = Ableitstrom, Stecker in der ersten Lage
proof-leakage_first-how = Mit einem Ableitstrommessgerät, oder die Volt unter Last geteilt durch 1495 Ω bei 60 Hz; der schlimmere Wert von Schalter ein und aus. Mit Schutzleiter: dessen Erde in der Prüfleitung geöffnet, oder der Strom in ihm gemessen.
proof-leakage_first-caution = Das Gerät muss auf etwas Isolierendem stehen, ohne Antenne und ohne Kabel daran.
proof-leakage_second = Ableitstrom, Stecker in der anderen Lage
proof-leakage_second-how = Dasselbe mit umgedrehtem Stecker, oder über eine umpolende Leitung, wo er nur auf eine Art passt.
proof-leakage_second-caution = Nie umpolen bei einem Gerät, dessen Chassis am Netz liegt und dessen Stecker nur auf eine Art passt.
proof-fuse_leg = Sicherung im Außenleiter
proof-fuse_leg-how = Stecker gezogen. Bei entnommener Sicherung Ohm vom Außenleiterkontakt zum Schalter: OL, über dem Bereich. Mit eingesetzter Sicherung: so gut wie nichts.
proof-fuse_leg-caution = Bei einem Stecker, der auf beide Arten passt, kann die Sicherung im Neutralleiter liegen: Dann öffnet sie und lässt das Gerät unter Spannung.
proof-front_transformer = Der Transformator davor trennt
proof-front_transformer-how = Stecker des Transformators gezogen. Ohm von jedem Ausgangskontakt zu jedem Eingangsstift und zu seiner Erde; den niedrigsten Wert eingeben. Erwünscht ist OL, über dem Bereich.
proof-front_transformer-caution = Wenige Ohm oder überhaupt ein Messwert: Es ist ein Spartransformator, oder sein Ausgang ist geerdet, und er trennt nichts. Dieses Gerät allein daran, und immer nur dahinter.
proof-device_test = Der Schutz löst aus
proof-device_test-how = Das Gerät ist nicht eingesteckt. Die Prüftaste am { -guard } drücken, mit einer Lampe an der Steckdose: Er löst aus, und die Lampe erlischt.
proof-device_test-caution = Einer, der nicht auslöst, schützt niemanden, was auch immer sonst nachgewiesen ist.
proof-lost_barrier = Nichts geht von Hand ab
proof-lost_barrier-how = Stecker gezogen. An jedem Knopf ziehen, an jeder Hülse drücken, die Rückwand anheben: Nichts, was Metall unter Spannung abdeckt, geht ohne Werkzeug ab.
proof-lost_barrier-caution = Madenschrauben sitzen tief oder sind versiegelt.
proof-outlet_proven = Die Steckdose, an die es kommt
proof-outlet_proven-how = Mit dem Messgerät gegen eine bekannte Erde: welcher Kontakt der Außenleiter ist, dass der andere es nicht ist, dass die Erde eine ist.
proof-outlet_proven-caution = Ein Steckdosenprüfer mit drei Lampen kann eine Erde nicht sehen, die zusammen mit dem Neutralleiter unter Spannung steht.
proof-insulation = Isolation
proof-insulation-how = Stecker gezogen, Schalter ein, alles abgeklemmt, was Schaden nehmen könnte: 500 V Gleichspannung von beiden Stiften gemeinsam zum Chassis.
proof-insulation-caution = Nur, wo das Chassis an eigenen Wicklungen liegt. Danach entladen.

## Die neue Prüfung neben der ersten

proof-compared = Anfangs: { $before }, schlimmstenfalls { $before_current }. Jetzt: { $now }, schlimmstenfalls { $now_current }.
proof-compared-better = Das ist besser.
proof-compared-worse = Das ist schlechter: herausfinden, was geändert wurde, und nicht einstecken.
proof-compared-same = Die Klasse ist dieselbe.
