# Was der prüfenden Person gestellt wird: die Frage, warum sie zählt, wie nachzusehen ist, und ein Warnhinweis, wo es einen gibt.
# Stift A und B werden überall erklärt, wo eine Antwort sie nennt: Jeder Bildschirm und jedes gedruckte Blatt steht für sich.

-pins-a-and-b = Stift B ist der breite Flachkontakt oder der Stift des Neutralleiters, wo der Stecker es erkennen lässt; Stift A ist der andere. Bei gleichen Stiften einen mit Klebeband markieren und B nennen.
-cover-off-caution = Zuerst den Stecker ziehen. Kondensatoren behalten ihre Ladung: über einen Widerstand entladen, dann messen, dass die Ladung weg ist, bevor Sie im Inneren etwas berühren.
-look-only-caution = Nur ansehen. Die Rückwand dranlassen und die Finger draußen: Teile im Inneren können auch nach dem Steckerziehen geladen sein.

## Von außen

question-plug = Was ist am Ende des Netzkabels?
question-plug-why = Bei zwei gleichen Stiften kann jeder der beiden Leiter der Steckdose ans Metall gelangen. Ein breiter Flachkontakt oder ein Schutzkontakt hilft nur, wenn die Drähte dahinter stimmen.
question-plug-how = Den Stecker des Netzkabels selbst ansehen, nicht einen Adapter. Die Stifte nebeneinander vergleichen: Ist einer breiter? Nach einem dritten Stift sehen, nach einem Stummel oder einem Loch an dessen Stelle, oder nach Schutzkontakten an den Seiten (solche Stecker passen auf beide Arten). Speist ein eigener Kasten das Gerät, ist dieser Kasten als eigenes Gerät zu prüfen.

question-bare_metal = Wo lässt sich blankes Metall berühren?
question-bare_metal-why = Ein Stromschlag braucht Metall zum Berühren. Eine einzige blanke Madenschraube an einem Knopf kann mit dem Netz verbunden sein.
question-bare_metal-how = Um das ganze Gerät herumgehen und jede Stelle ankreuzen: Madenschrauben und Achsen; Schrauben unten und hinten; Zierleisten, Gitter und Lautsprecherrahmen; Klinken und Buchsen; Tonarm und Plattenteller; Metallgehäuse. Blankes Metall von Buchsen, Klinken und Klemmen zählt. Lackiertes Metall zählt auch. Metall, das bei Gebrauch gehalten wird oder an dem man lehnt, etwa ein Bedienfeld unter der Hand, zählt zu den Klinkenbuchsen; ein Tonarm zählt zu den Tonabnehmern. „Nirgends“ nur antworten, wenn jede Stelle angekreuzt ist.
question-bare_metal-caution = Stecker ziehen, bevor Sie irgendwo einen Finger anlegen.

place-shafts = Madenschrauben und Achsen der Knöpfe
place-screws = Schrauben unten und hinten
place-trim = Zierleisten, Gitter und Lautsprecherrahmen
place-sockets = Klinken, Buchsen und Klemmen
place-tonearm = Tonarm und Plattenteller
place-cabinet = Metallgehäuse oder Metallfrontplatte

question-back = Ist die Rückwand an ihrem Platz?
question-back-why = Bei vielen Geräten ist die Rückwand die Isolation. Ohne sie kann eine Hand das Chassis erreichen.
question-back-how = Nach vollständiger Rückwand und vollständigem Boden sehen, mit allen Schrauben oder Klammern. Eine Platte mit fingergroßen Löchern zählt als fehlend.
question-back-caution = Fehlt die Rückwand, die Finger draußen lassen: Teile im Inneren können auch nach dem Steckerziehen geladen sein.

question-terminals = Gibt es Klemmen oder herausgeführte Drähte für andere Geräte?
question-terminals-why = Eine Antennen- oder Erdklemme ist oft nur einen Kondensator vom Netz entfernt. Klemmen für Lautsprecher und Tonabnehmer können Anodenspannung führen.
question-terminals-how = Hinten und unten nach Schrauben, Federklemmen, kleinen Buchsen und losen Drähten sehen. Die Aufschriften daneben lesen: Antenne, Erde, Masse, Tonabnehmer, Phono, Lautsprecher, auf Englisch „aerial“, „antenna“, „earth“, „ground“, „pickup“, „speaker“. Alles ankreuzen, was Sie finden.
question-terminals-caution = Stecker ziehen, bevor Sie eine Klemme oder einen losen Draht berühren, und nichts anklemmen, um es herauszufinden.

question-selector = Gibt es einen Masse- oder Brummschalter?
question-selector-why = Ein solcher Schalter verbindet das Chassis über einen Kondensator mit dem einen oder dem anderen Netzleiter. Einer der beiden ist der Außenleiter.
question-selector-how = In der Nähe des Netzschalters nach einem zweiten Schalter sehen, beschriftet mit „ground“, „polarity“ oder „hum“, also Masse, Polung oder Brumm. Auch ein Netzschalter mit zwei Stellungen für „ein“ kann einer sein. Ein Schalter oder Umstecker für die Netzspannung ist keiner.
question-selector-caution = Stecker ziehen, bevor Sie diesen Schalter bewegen.

question-earth_lift = Gibt es einen Erdtrennschalter (Ground-Lift)?
question-earth_lift-why = Er kann das Chassis vom Schutzleiter trennen. Ein Gerät mit einem solchen zählt als nicht geerdet, denn es kann vom Schutzleiter getrennt sein. Hat das Gerät keinen Transformator mit getrennten Wicklungen, legt die geerdete Stellung das Netz auf den Schutzleiter, und das zählt: nicht in Betrieb nehmen.
question-earth_lift-how = Hinten, nahe dem Netzkabel und den Buchsen, nach einem Schalter sehen, der mit „lift“, „earth lift“ oder „ground lift“ beschriftet ist.
question-earth_lift-caution = Stecker ziehen, bevor Sie diesen Schalter bewegen.

question-kind = Was für ein Gerät ist es?
question-kind-why = Manche Arten wurden meist ohne Transformator gebaut. Das ist ein Hinweis und weist nichts nach.
question-kind-how = Das Nächstliegende wählen. Ein Radio mit Plattenspieler in einem Gehäuse zählt als Standradio.

question-rating_plate = Welche Speisung nennt das Typenschild?
question-rating_plate-why = Ein Gerät mit der Angabe AC/DC hat selten einen Transformator. Das ist ein Hinweis und weist nichts nach: Schilder überdauern Umbauten.
question-rating_plate-how = Hinten, unten und im Deckel nach einem Schild, einem Papieretikett oder einem Stempel sehen. Nach AC, DC, AC/DC, Allstrom, „universal“, einem Wellenzeichen oder Batteriespannungen suchen.

question-iron_seen = Wie viel Eisen ist zu sehen?
question-iron_seen-why = Ein Netztransformator ist groß und schwer. Eisen allein weist keine Trennung nach: Es kann ein Motor, ein Ausgangstransformator oder ein Spartransformator sein.
question-iron_seen-how = Mit einer Lampe durch die Schlitze der Rückwand leuchten. Nach geschichteten Blechen mit einer Spule in der Mitte sehen. Motoren und Ausgangstransformatoren zählen. Eine Ecke anheben: Ein schweres Ende ist ein Hinweis.
question-iron_seen-caution = { -look-only-caution }

question-tube_list = Welche Röhren sind darin?
question-tube_list-why = Heizungen, die zusammen die Netzspannung brauchen, weisen auf einen Heizkreis direkt am Netz hin, ohne Transformator.
question-tube_list-how = Die Typen von den Röhren oder von einem Bestückungsplan im Inneren ablesen. Jede eingeben wie gedruckt, und denselben Typ zweimal, wenn er zweimal da ist.
question-tube_list-caution = { -look-only-caution } Keine Röhren ziehen, um sie zu lesen.

question-tube_count = Wie viele Röhren sind darin?
question-tube_count-why = Die Zahl der Röhren gibt einen Hinweis, wie die Heizungen gespeist werden. Sie weist nichts nach.
question-tube_count-how = Durch die Schlitze der Rückwand zählen. Leere Röhrenfassungen mitzählen. Skalenlampen zählen nicht.
question-tube_count-caution = { -look-only-caution }

question-tingle = Hat jemand ein Kribbeln oder einen Stromschlag davon gespürt?
question-tingle-why = Ein Kribbeln bedeutet, dass schon Strom durch einen Menschen geflossen ist. Kein Kribbeln weist nichts nach.
question-tingle-how = Wer es besitzt oder darauf spielt, fragen: je ein Kribbeln, ein Zwicken oder ein Schlag, vom Gerät, von den Saiten oder einem Mikrofon?
question-tingle-caution = Nicht einstecken und berühren, um es herauszufinden.

question-rewired = Hat jemand daran etwas umgebaut?
question-rewired-why = Nach einem Umbau stimmen Schilder und Schaltpläne vielleicht nicht mehr.
question-rewired-how = Nach neuerem Netzkabel oder Stecker sehen, nach Klebeband, frischen Schrauben, zusätzlichen Löchern oder Buchsen und Teilen, die neuer sind als der Rest. Die Person fragen, der es gehört.

question-cord = In welchem Zustand ist das Netzkabel?
question-cord-why = Ein schlechtes Netzkabel kann von sich aus einen Stromschlag geben oder einen Brand auslösen, was auch immer im Inneren ist.
question-cord-how = Die ganze Länge ansehen, vor allem am Stecker und an der Einführung. Nach Rissen, blankem Kupfer, Klebeband, Verbindungsstellen, klebrigem oder hartem Gummi und ausgefranstem Gewebe suchen. Das Schlimmste wählen, das Sie finden.
question-cord-caution = Stecker ziehen, bevor Sie das Netzkabel anfassen oder biegen.

question-cord_wires = Wie viele Adern hat das Netzkabel?
question-cord_wires-why = Drei Adern zu einem Stecker mit zwei Stiften bedeuten ein Widerstandskabel. Die dritte Ader ist kein Schutzleiter, und sie wird heiß.
question-cord_wires-how = An der Einführung und am Stecker nachsehen. Die Adern im Netzkabel zählen, dann die Stifte des Steckers. Bei einem dicken Gewebekabel mit zwei Stiften lohnt ein zweiter Blick.
question-cord_wires-caution = Zuerst den Stecker ziehen. Das Kabel zum Zählen nicht schneiden oder abisolieren: Alte Gewebekabel können Asbest enthalten.

question-accessory_outlet = Gibt es daran eine Steckdose für andere Geräte?
question-accessory_outlet-why = Was dort eingesteckt ist, teilt Netzkabel, Schalter und Fehler dieses Geräts.
question-accessory_outlet-how = Hinten nach einer Netzsteckdose sehen, in die ein anderer Stecker passt, vielleicht beschriftet mit „phono motor“ oder „AC outlet“.
question-accessory_outlet-caution = Zuerst den Stecker ziehen und nichts hineinstecken, um es herauszufinden.

## Mit abgenommenem Deckel oder mit Messgerät

question-metal_joined = Womit ist das blanke Metall verbunden?
question-metal_joined-why = Blankes Metall, das im Inneren mit nichts verbunden ist, kann das Netz nicht an Ihre Hand bringen.
question-metal_joined-how = Jedes blanke Teil mit abgenommenem Deckel verfolgen, oder im kleinsten Ohmbereich vom Teil zum Chassis und zur Schaltungsmasse messen (dem Draht, an den das Minus der Siebkondensatoren geht). Die Prüfspitze durch den Lack drücken. Verbindet sie ein Widerstand oder Kondensator, zählt das als verbunden. Bei mehreren Teilen für das schlimmste antworten: Schaltungsmasse, dann Chassis, dann keines von beiden.
question-metal_joined-caution = { -cover-off-caution }

question-transformer = Gibt es einen Netztransformator, und was speist er?
question-transformer-why = Nur getrennte Wicklungen trennen vom Netz. Ein Transformator, der nur die Heizungen speist, oder ein Spartransformator lässt den Rest am Netz.
question-transformer-how = Beide Primäranschlüsse von Ende zu Ende verfolgen. In einem Gerät mit Netztrennung treffen sie auf Netzkabel, Sicherung und Schalter und sonst nichts. Ausgangstransformatoren und Drosseln sind keine Netztransformatoren. Verlieren Sie einen Anschluss aus den Augen, antworten, dass Sie ihn nicht verfolgen konnten.
question-transformer-caution = { -cover-off-caution }

question-common_to_chassis = Wie ist die Schaltungsmasse mit dem Chassis verbunden?
question-common_to_chassis-why = Liegt die Schaltungsmasse am Netz und am Chassis, liegt auch das Metall am Netz.
question-common_to_chassis-how = Die Schaltungsmasse finden: den Draht, an den das Minus der Siebkondensatoren geht. Bis zum Chassis verfolgen. Nach Lötzinn oder einer Lötöse am Metall sehen, oder nach einem Widerstand und einem Kondensator nebeneinander.
question-common_to_chassis-caution = { -cover-off-caution }

question-common_leg = An welchem Stift liegt die Schaltungsmasse?
question-common_leg-why = Das sagt, welcher Leiter der Steckdose an der Schaltungsmasse endet.
question-common_leg-how = Die Schaltungsmasse (den Draht, an den das Minus der Siebkondensatoren geht) zurück bis zum Stecker verfolgen. Ein Schalter oder eine Sicherung unterwegs ändert nichts. { -pins-a-and-b }
question-common_leg-caution = { -cover-off-caution }

question-switch_leg = Welchen Leiter öffnet der Netzschalter?
question-switch_leg-why = Ein Schalter in einem Leiter lässt den anderen mit der Steckdose verbunden. Ein ausgeschaltetes Gerät kann noch unter Spannung stehen.
question-switch_leg-how = Beide Adern des Netzkabels verfolgen. Sehen, welche durch den Schalter geht; oft sitzt er hinten am Lautstärkeregler. { -pins-a-and-b }
question-switch_leg-caution = { -cover-off-caution }

question-line_capacitor = Gibt es einen Kondensator vom Netz zum Chassis?
question-line_capacitor-why = Er lässt ständig etwas Netzstrom zum Metall durch. Hat er einen Kurzschluss, steht das Metall unter Spannung.
question-line_capacitor-how = An der Einführung des Netzkabels nachsehen: ein Kondensator von einer der Adern, von der Sicherung oder vom Schalter zu einer Lötöse am Chassis. Einer von der Schaltungsmasse zum Chassis, neben einem Widerstand, zählt hier nicht. { -pins-a-and-b }
question-line_capacitor-caution = { -cover-off-caution }

question-line_capacitor_class = Was für ein Kondensator ist es?
question-line_capacitor_class-why = Ein Kondensator der Klasse Y ist für den Einsatz zwischen Netz und Metall gebaut und geprüft. Ein gewöhnlicher kann mit Kurzschluss versagen.
question-line_capacitor_class-how = Die Zeichen auf dem Gehäuse lesen: Y1, Y2 oder Y4. X1/Y2 zählt als Y; X allein nicht. Alte Papier- und Folienkondensatoren, auf denen nur ein Wert und eine Spannung stehen, sind gewöhnliche. Gibt es zwei und ist einer davon gewöhnlich, „gewöhnlich“ antworten. Das Zeichen fotografieren.
question-line_capacitor_class-caution = { -cover-off-caution }

question-earth_wire = Liegt der Schutzleiter des Netzkabels am Chassis?
question-earth_wire-why = Der Schutzleiter führt Ableitstrom und Fehlerstrom ab, aber nur, wenn er wirklich ans Metall reicht.
question-earth_wire-how = Die grüne oder grün-gelbe Ader vom Netzkabel aus verfolgen. Sie zählt nur, wenn sie von einem unversehrten Schutzkontakt kommt und am blanken Metall des Chassis angeschraubt oder angelötet ist. Kein Schutzleiter, kein unversehrter Schutzkontakt am Stecker, eine Ader, die abgeschnitten ist oder anderswohin geht: nicht am Chassis. Fehlt der Stecker oder geht die Ader durch einen Schalter, lässt es sich nicht sagen.
question-earth_wire-caution = { -cover-off-caution }

question-fuse = In welchem Leiter ist die Sicherung?
question-fuse-why = Brennt eine Sicherung in dem Leiter durch, an dem die Schaltungsmasse liegt, ist das Gerät tot, aber sein Metall kann noch unter Spannung stehen.
question-fuse-how = Beide Adern des Netzkabels bis zur ersten Sicherung verfolgen. Eine Sicherung im Stecker zählt für ihren Stift. Ist in beiden Leitern eine, für den Leiter antworten, an dem die Schaltungsmasse liegt. { -pins-a-and-b }
question-fuse-caution = { -cover-off-caution }

question-filter_capacitors = Wie sehen die Siebkondensatoren aus?
question-filter_capacitors-why = Ein aufgeblähter oder auslaufender kann platzen, oder mit Kurzschluss Gleichrichter und Transformator überhitzen.
question-filter_capacitors-how = Die großen Metallbecher und die Papprohre ansehen. Nach gewölbten Enden, Krusten, nassen oder wachsigen Stellen und offenen Überdruckstellen suchen. Einer, der unbeschädigt aussieht, kann trotzdem schlecht sein.
question-filter_capacitors-caution = { -cover-off-caution }

question-materials = Sehen Sie eines dieser alten Materialien?
question-materials-why = Manche alten Teile schaden durch Staub, Dämpfe oder Hautkontakt, auch ohne Strom.
# 1979: Ende der Herstellung von PCB (US EPA 530-F-20-005, im Druck gesehen).
question-materials-how = Nach grauweißer Faserplatte oder Filz nahe heißen Röhren suchen (könnte Asbest enthalten), nach Stapeln quadratischer Kühlplatten (Selen), nach ölgefüllten Metallbechern von vor 1979 (könnten PCB enthalten) und nach leuchtender oder gebräunter Skalenfarbe (könnte Radium enthalten). Mit dem Auge lässt sich nichts davon nachweisen. Alles ankreuzen, was da sein könnte.
question-materials-caution = Ansehen, nicht berühren. Nicht abstauben, schleifen, schaben oder mit Druckluft ausblasen, und nicht daran riechen. { -cover-off-caution }

## Werte

value-line_capacitor = Welchen Wert hat der Netzkondensator?
value-line_capacitor-why = Er bestimmt, wie viel Ableitstrom ans Metall geht. Ein größerer Wert lässt mehr durch.
# 20 %: so weit darf ein aufgedruckter Wert in der Rechnung danebenliegen (eigene Annahme).
value-line_capacitor-how = Den Wert oder den Farbcode auf dem Gehäuse lesen. Besser: ein Bein ablöten und mit einem Kapazitätsmessgerät messen. Angeben, ob abgelesen oder gemessen; ein abgelesener Wert kann um bis zu 20 % abweichen. Bei zweien den größeren eingeben.
value-line_capacitor-caution = { -cover-off-caution }

value-network_capacitor = Welchen Wert hat der Kondensator von der Schaltungsmasse zum Chassis?
value-network_capacitor-why = Er bestimmt den größten Teil des Stroms, der vom Netz ans Chassis gelangt. Ein größerer Wert lässt mehr durch.
value-network_capacitor-how = Den Kondensator finden, der die Schaltungsmasse mit dem Chassis verbindet, neben einem Widerstand. Den Wert ablesen, oder ein Bein ablöten und messen. Angeben, ob abgelesen oder gemessen.
value-network_capacitor-caution = { -cover-off-caution }

value-aerial_capacitor = Welchen Wert hat der Antennenkondensator?
value-aerial_capacitor-why = Er ist alles, was zwischen der Antennenklemme und der Schaltungsmasse steht. Ein größerer Wert lässt mehr durch.
value-aerial_capacitor-how = Den Draht von der Antennenklemme nach innen bis zum ersten Kondensator verfolgen. Den Wert ablesen, oder ein Bein ablöten und messen. Angeben, ob abgelesen oder gemessen.
value-aerial_capacitor-caution = { -cover-off-caution }

value-network_resistor = Welchen Wert hat der Widerstand von der Schaltungsmasse zum Chassis?
value-network_resistor-why = Er lässt neben dem Kondensator Netzstrom ans Chassis. Ein kleinerer Wert lässt mehr durch.
value-network_resistor-how = Den Widerstand neben diesem Kondensator finden. Die Farbringe lesen, oder ein Bein ablöten und messen. Alte Widerstände verändern sich, also ist Messen besser. Angeben, ob abgelesen oder gemessen.
value-network_resistor-caution = { -cover-off-caution }

value-rated = Für welches Netz ist es ausgelegt?
value-rated-why = Falsche Volt oder Hertz können es überhitzen und einen Brand auslösen.
value-rated-how = Volt, Hertz (oder Perioden) und Watt vom Typenschild ablesen. Eingeben, was Sie finden, den Rest leer lassen. Hat es einen Spannungsumschalter oder -umstecker, die jetzt eingestellte Spannung eingeben.

## Messwerte

reading-ohms_a_chassis_on = Was messen Sie von Stift A zum Chassis, Schalter ein?
reading-ohms_a_chassis_off = Was messen Sie von Stift A zum Chassis, Schalter aus?
reading-ohms_b_chassis_on = Was messen Sie von Stift B zum Chassis, Schalter ein?
reading-ohms_b_chassis_off = Was messen Sie von Stift B zum Chassis, Schalter aus?
reading-ohms_earth_chassis = Was messen Sie vom Schutzkontakt zum Chassis?
reading-ohms_a_part_on = Was messen Sie von Stift A zum blanken Metall, Schalter ein?
reading-ohms_a_part_off = Was messen Sie von Stift A zum blanken Metall, Schalter aus?
reading-ohms_b_part_on = Was messen Sie von Stift B zum blanken Metall, Schalter ein?
reading-ohms_b_part_off = Was messen Sie von Stift B zum blanken Metall, Schalter aus?
reading-ohms_earth_part = Was messen Sie vom Schutzkontakt zum blanken Metall?
reading-ohms_a_b_on = Was messen Sie von Stift zu Stift, Schalter ein?
reading-ohms_a_b_off = Was messen Sie von Stift zu Stift, Schalter aus?
reading-insulation_megohms = Was zeigt das Isolationsprüfgerät, in Megaohm?
reading-touch_test_volts = Was zeigt die Berührungsstromprüfung, in Volt?

reading-insulation_megohms-caution = Das legt eine hohe Prüfspannung an das Gerät und lädt es auf. Nur durch eine Elektrofachkraft, mit gezogenem Stecker; danach entladen.
reading-touch_test_volts-caution = Das ist eine Prüfung unter Spannung, nur durch eine Elektrofachkraft. Örtliche Vorschriften gehen vor.
