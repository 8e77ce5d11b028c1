# Was Reparaturen ändern: Änderungen, warum eine nicht angeboten wird, wie ein Gerät vorher und nachher dasteht, die Folge.
# Grenzwerte: 0,5 mA (UL 101) und 5 mA (Untersuchungen zum Loslassen), wie in classes.ftl. Auslösezeiten: UL 943, IEC 61008-1.

## Änderungen: wie jede heißt, was sie ändert und was sie nicht tut

remedy-polarised_plug = Gepolter Stecker
remedy-polarised_plug-does = Ein Stecker, der nur auf eine Art passt, sein Außenleiterkontakt zum chassisfernen Leiter, sodass die Schaltungsmasse am Neutralleiter liegt.
remedy-polarised_plug-not = Er hilft nur in einer Steckdose, die nur eine Steckerlage zulässt und richtig verdrahtet ist. Liegt der Schalter im chassisnahen Leiter, steht das Chassis im ausgeschalteten Zustand wieder unter Spannung.
remedy-switch_to_hot_leg = Schalter in den Außenleiter verlegt
remedy-switch_to_hot_leg-does = Der Netzschalter öffnet den chassisfernen Leiter statt des chassisnahen.
remedy-switch_to_hot_leg-not = Das bringt nichts, solange der Stecker auf beide Arten passt.
remedy-line_capacitor_removed = Netzkondensator entfernt
remedy-line_capacitor_removed-does = Kein Bauteil verbindet mehr einen Netzleiter mit dem Chassis.
remedy-line_capacitor_removed-not = Das gibt keine Erde und keine Trennung: Ein Durchschlag der Isolation oder ein loser Draht setzt das Metall weiterhin unter Spannung.
remedy-line_capacitor_class_y = Netzkondensator durch Klasse Y ersetzt
remedy-line_capacitor_class_y-does = Ein Kondensator, der für Netz gegen Metall gebaut ist, mit einem Wert, der weniger Ableitstrom gibt als der Grenzwert; ein Kurzschluss von sich aus wird nicht gezählt.
remedy-line_capacitor_class_y-not = Er gibt weiterhin Ableitstrom, und er gibt keine Erde.
remedy-three_wire_cord = Dreiadriges Netzkabel, Schutzleiter am Chassis
remedy-three_wire_cord-does = Das Chassis ist mit der Erde des Netzes verbunden: Ein Durchschlag zu ihm sollte die Sicherung oder den Leitungsschutzschalter auslösen, statt auf eine Hand zu warten.
remedy-three_wire_cord-not = Es hilft nur, solange der Schutzleiter unversehrt ist und die Steckdose eine nachgewiesene Erde hat. Nie an einem Chassis, das mit dem Netz verbunden ist.
remedy-fuse_in_hot_leg = Sicherung im Außenleiter
remedy-fuse_in_hot_leg-does = Eine Sicherung in der Leitung vor dem Schalter, gegen Brand.
remedy-fuse_in_hot_leg-not = Sie ändert keinen Berührungsstrom: Was durch einen Menschen fließt, löst sie nie aus. Bei einem Stecker, der auf beide Arten passt, kann sie den Neutralleiter öffnen und das Gerät unter Spannung lassen.
remedy-isolating_transformer_inside = Trenntransformator eingebaut
remedy-isolating_transformer_inside-does = Getrennte Wicklungen zwischen Netz und Schaltung. Das Chassis ist dann die Schaltungsmasse des Geräts selbst.
remedy-isolating_transformer_inside-not = Er erdet das Chassis nicht, und zwei Punkte der Schaltung zu berühren gibt weiterhin einen Stromschlag. Kondensatoren und RC-Glieder von der alten Netzseite zum Chassis müssen mit heraus: Bleiben sie, gilt nicht, was hier gezeigt ist. Er braucht Platz, Lüftung und eine eigene Sicherung.
remedy-isolating_transformer_in_front = Trenntransformator davor
remedy-isolating_transformer_in_front-does = Nichts kommt zur Erde zurück, solange dieses Gerät allein daran ist.
remedy-isolating_transformer_in_front-not = Zwei Punkte der Schaltung zu berühren gibt weiterhin einen Stromschlag. Er ist kein Teil des Geräts: Anderswo eingesteckt ist das Gerät, was es war. Ein zweites Gerät daran oder geerdete Messgeräte heben die Trennung auf, und ein { -guard } davor sieht nichts. Ein Stelltransformator oder ein Abwärtstransformator ist meist ein Spartransformator und trennt nichts.
remedy-reach_closed = Metall unerreichbar gemacht
remedy-reach_closed-does = Isolierte Schrauben und Knöpfe, Hülsen über Achsen, eine vollständige Rückwand; eine Antennen- oder Erdklemme ist abgeklemmt und abgedeckt.
remedy-reach_closed-not = Was dahinter liegt, bleibt, wie es war: Ein verlorener Knopf, und es lässt sich berühren.
remedy-selector_disconnected = Masseschalter abgeklemmt
remedy-selector_disconnected-does = Der Masseschalter bleibt als Attrappe; sein Kondensator ist aus der Schaltung.
remedy-selector_disconnected-not = Das gibt keine Erde und keine Trennung.
remedy-network_class_y = Chassiskondensator durch Klasse Y ersetzt
remedy-network_class_y-does = Der Kondensator zwischen Schaltungsmasse und Chassis ist einer, bei dem ein Kurzschluss von sich aus nicht gezählt wird, und gibt weniger Ableitstrom.
remedy-network_class_y-not = Der Widerstand daneben bleibt, und die Schaltungsmasse bleibt am Netz. Das Gerät brummt vielleicht mehr.
remedy-gfci_outlet = Steckdose mit FI-Schutzschalter (GFCI)
remedy-gfci_outlet-does = Er beendet eine Berührung nach einer Zeit; er macht den Strom nicht kleiner und ändert keine Klasse.
remedy-gfci_outlet-not = Eine Berührung zwischen Außenleiter und Neutralleiter sieht er nicht, und hinter einem Trenntransformator gar nichts.
remedy-rcd_outlet = Steckdose hinter FI-Schutzschalter (RCD), Typ A
remedy-rcd_outlet-does = Er beendet eine Berührung nach einer Zeit; er macht den Strom nicht kleiner und ändert keine Klasse.
remedy-rcd_outlet-not = Eine Berührung zwischen Außenleiter und Neutralleiter sieht er nicht, und hinter einem Trenntransformator gar nichts. Unter 30 mA muss er nicht auslösen.
remedy-rcd_ac_outlet = Steckdose hinter FI-Schutzschalter (RCD), Typ AC
remedy-rcd_ac_outlet-does = Ein FI-Schutzschalter, der schon da ist. Er beendet eine Berührung nach einer Zeit, wo mit ihm gerechnet wird.
remedy-rcd_ac_outlet-not = Der Gleichstrom, den ein Gerät mit Einweggleichrichter zieht, kann ihn blind machen (aus dem Gedächtnis). Eine Berührung zwischen Außenleiter und Neutralleiter sieht er nicht.

remedy-cost = etwa { $minutes } min, Teile etwa { $price }

remedy-caution-reversible = Wo Steckdosen einen Stecker auf beide Arten aufnehmen, oder wo das Gerät an einem solchen Ort benutzt werden kann, hilft es nichts, wie herum er steckt: mit beiden Lagen rechnen.
remedy-caution-resistance_cord = Das alte Netzkabel setzt die Spannung für die Heizungen herab: Ein gewöhnliches Kabel legt die volle Netzspannung an sie. Zuerst einen Vorwiderstand bemessen und dort einbauen, wo er seine Wärme los wird.
remedy-caution-insulate = Was abgetrennt wird, an beiden Enden isolieren, und auf das Chassis schreiben, was geändert wurde.

## Warum eine nicht angeboten wird

refusal-no_line_side = Nichts darin wird aus der Steckdose gespeist.
refusal-already = Es ist schon so.
refusal-not_there = Was sie ändern würde, ist nicht da.
refusal-held_in_use = Das Metall wird bei Gebrauch gehalten, oder es wird etwas hineingesteckt: Es lässt sich nicht unerreichbar machen.
refusal-line_on_earth = Nicht an diesem Gerät: Solange das Chassis mit dem Netz verbunden sein kann, legt ein Schutzleiter das Netz auf die Erde.
refusal-network_ordinary = Noch nicht: Was das Chassis vom Netz fernhält, kann ein Kondensator sein, der einen Kurzschluss bekommen kann, oder Isolation, die niemand bemessen hat. Klasse Y kommt zuerst.
refusal-loses_earth = Sie würde eine Erde wegnehmen, die ihren Dienst tut.
refusal-goes_in_both_ways = Bei dieser Spannung nehmen die meisten Steckdosen einen Stecker auf beide Arten auf: Sie brächte nichts.
refusal-sees_nothing = Hinter einem Trenntransformator sieht ein solcher Schutz nichts.

## Wie ein Gerät dasteht. $state nennt Stecker, Schalter und Fehler.

standing-line = { $class }: schlimmstenfalls { $worst }, wie vorgefunden { $found }
standing-worst = { $state } Schlimmstenfalls { $current } durch die Person, die es berührt.
standing-remaining = Für sich allein noch genug: { $faults }.
standing-remaining-pairs = Zusammen noch genug: { $faults }.
standing-before = Jetzt
standing-after = Nachher
standing-over = Über alles, was es sein kann
standing-of-worst = Das Schlimmste davon für sich

## Schutzgeräte

device-gfci = Ein FI-Schutzschalter (GFCI)
device-rcd_a = Ein FI-Schutzschalter (RCD, Typ A, 30 mA)
device-rcd_ac = Ein FI-Schutzschalter (RCD, Typ AC, 30 mA)
device-trips = { $device } beendet das innerhalb von { $time }.
device-does-not-trip = { $device } zählt hier nicht: { $why }
blind-isolated = Hinter einem Trenntransformator kommt nichts über das Schutzgerät zurück.
blind-rectified = Was ein Gleichrichter am Netz durchlässt, ist kein reiner Wechselstrom.
blind-half_wave = Der Gleichstrom eines Geräts mit Einweggleichrichter kann Typ AC blind machen (aus dem Gedächtnis).
blind-neutral_open = Seine Elektronik wird aus dem Neutralleiter gespeist, der unterbrochen ist.
blind-too_little = Der Strom ist kleiner als der, bei dem er auslösen muss.

## Folgen

stack-none = Es braucht schon jetzt mindestens zwei Fehler.
stack-line = { $steps }: { $cost }
stack-worse = Unterwegs, nach „{ $step }“, ist es schlimmer als vorher: dazwischen nicht einstecken.
stack-shortest = Kürzester Weg zu „Zwei Fehler“
stack-in-unit = Der kürzeste, der am Gerät bleibt
stack-no-way = Kein Weg mit bis zu fünf Schritten erreicht „Zwei Fehler“ mit dem, was bekannt ist. Zuerst mehr herausfinden.

remedies-now = Jetzt: { $standing }
remedies-over = Beurteilt über alles, was es noch sein kann ({ $count }), jeder Wert der schlimmste davon.
remedies-after = nachher: { $standing }
remedies-after-worst = die Anordnung, die jetzt die schlimmste ist, für sich: { $standing }
remedies-not-offered = nicht angeboten: { $why }
remedies-worse = Das macht etwas schlechter.
remedies-no-change = Das ändert keinen Berührungsstrom.

## Warnhinweise am Kopf jeder Reparatur

repair-caution-codes = Örtliche Vorschriften und befugte Fachleute gehen vor. Verlangen sie mehr als hier steht oder jemanden mit Befugnis, gilt, was sie verlangen.
repair-caution-who = Arbeit an der Netzseite ist Sache einer Elektrofachkraft. Arbeit an den Steckdosen des Gebäudes ist Sache derer, die das an Ihrem Ort dürfen.
repair-caution-unplug = Zuerst den Stecker ziehen, die Kondensatoren über einen Widerstand entladen und messen, dass die Ladung weg ist.
repair-caution-when-not = Nicht reparieren, sondern stehen lassen oder einer Werkstatt überlassen, wenn die Isolation von Drähten bröckelt, der Transformator verbrannt riecht, Holz oder Gehäuse angekohlt ist oder sich die Netzseite nicht von Ende zu Ende verfolgen lässt.
repair-caution-original = Ein geändertes Netzkabel, ein anderer Stecker oder Schalter kann mindern, was Sammler zahlen; es lässt sich rückgängig machen, wenn die alten Teile in einem Beutel beim Gerät bleiben. Ein Gerät, das nur gezeigt wird, kann bleiben, wie es ist: mit abgenommenem Netzkabel und einem Anhänger, der sagt, warum.

## Wo es eingesteckt wird

feed-question = Wo wird es eingesteckt?
feed-why = Dasselbe Gerät steht hinter einem Transformator anders da, und nicht alles, was so heißt, trennt vom Netz.
feed-direct = Direkt an einer Steckdose
feed-direct-tell = Ein Kontakt ist der Neutralleiter, der andere der Außenleiter. Damit ist zu rechnen, wo es niemand weiß.
feed-both_hot = Eine Steckdose mit zwei Außenleitern
feed-both_hot-tell = Jeder Kontakt zeigt gegen Erde etwa die halbe Spannung und hält sie unter Last. Am Messgerät allein kann ein galvanisch getrennter Ausgang dasselbe zeigen.
feed-isolated = Hinter einem Trenntransformator, allein daran
feed-isolated-tell = Zwischen jedem Ausgangskontakt und den Eingangsstiften und zwischen Ausgang und Erde zeigt ein Ohmmeter OL, über seinem Bereich, bei gezogenem Stecker. Nur ein Gerät: Ein zweites oder geerdete Messgeräte heben die Trennung auf, und die App zählt das als Fehler.
feed-step_down_auto = Hinter einem Abwärtstransformator oder einem Stelltransformator
feed-step_down_auto-tell = Fast alle davon sind Spartransformatoren: Ein Ausgangskontakt zeigt wenige Ohm zu einem Eingangsstift, bei gezogenem Stecker. Nichts ist getrennt, und jeder Kontakt kann an der vollen Eingangsspannung liegen.
feed-input = { $volts } gehen hinein.
feed-input-assumed = Angenommen sind { $volts } am Eingang, das Doppelte von dem, was herauskommt, weil niemand etwas anderes gesagt hat.

## Teile zu kaufen und ihre Größen. Jeder Wert: data/sizing.csv, preferred.csv, cords.csv.

part-need-polarised_cord = Netzkabel mit gepoltem Stecker
part-need-three_wire_cord = Dreiadriges Netzkabel mit Stecker
part-need-strain_relief = Zugentlastung
part-need-earth_lug = Schutzleiter-Öse mit Sicherungsscheibe, an eigener Schraube
part-need-line_class_y = Kondensator der Klasse Y, Netz zum Chassis
part-need-network_class_y = Kondensator der Klasse Y, Schaltungsmasse zum Chassis
part-need-fuse = Sicherung mit Halter
part-need-isolating_transformer = Trenntransformator
part-need-insulated = Isolierte Schrauben, Knöpfe, Hülsen; eine vollständige Rückwand
part-need-sleeving = Isolierschlauch und Draht für das, was verlegt oder abgetrennt wird
part-need-outlet = Steckdose oder Adapter mit Schutz

part-size-transformer = { $stock }
part-size-transformer-none = größer als jeder, der auf Lager ist: anfragen, wo solche gewickelt werden
part-size-fuse-ul = { $rating }, UL 248-14
part-size-fuse-iec = { $rating }, IEC 60127
part-size-fuse-none = größer als jede in der Tabelle: das Typenschild nochmals ansehen
part-size-class_y = { $value }, Klasse Y1; Y2 nur, wo das Chassis an einem nachgewiesenen Schutzleiter liegt
part-size-class_y-none = keiner der Reihe hält { $limit } ein: stattdessen entfernen
part-size-cord = { $size }, { $count } Leiter, { $current }

part-note-needed = Benötigt: { $needed }; das ist die nächste Größe, die auf Lager ist.
part-note-by-plate = Berechnet als das Doppelte der Watt auf dem Typenschild (übliche Praxis: das 1,5- bis 2-Fache).
part-note-by-parts = Berechnet aus den Heizungen und dem Höchsten, was eine kleine Anodenversorgung mit Einweggleichrichter zieht. Für einen besseren Wert das Typenschild lesen.
part-note-one-unit = Für ein einziges Gerät; sein Gehäuse geerdet, sein Ausgang nicht.
part-note-fuse-ul = Sie führt { $holds } und öffnet ab { $opens } innerhalb einer Stunde. Eine Sicherung mit derselben Zahl nach IEC 60127 hält um die Hälfte mehr.
part-note-fuse-iec = Sie hält { $holds } eine Stunde lang und öffnet ab { $opens } innerhalb einer halben Stunde. Eine Sicherung mit derselben Zahl nach UL 248-14 öffnet früher.
part-note-fuse-fast = Der Einschaltstrom bleibt unter dem Strom, bei dem sie öffnet: Eine flinke genügt.
part-note-fuse-slow = Der Einschaltstrom der kalten Heizungen oder des Eisens ist größer als der Strom, bei dem sie öffnet: eine träge nehmen.
part-note-fuse-other = Aufgerundet vom 1,5-Fachen des Dauerstroms (übliche Praxis), und bei UL 248-14 nie über 75 % belastet.
part-note-class_y = Unter { $limit } bleiben bei der höchsten Netzspannung höchstens { $most }; der nächste Wert der Reihe E6, der das mit seiner Toleranz einhält, gibt höchstens { $leaks } Ableitstrom.
part-note-class_y-voltage = Ausgelegt für die Netzspannung, mit dem Zeichen Y darauf (IEC 60384-14).
part-note-colours-two = Außenleiter { $line }; Neutralleiter { $neutral }. Kein Schutzleiter.
part-note-colours-three = Außenleiter { $line }; Neutralleiter { $neutral }; Schutzleiter { $earth }.
part-note-colours-old = Die Farben alter Netzkabel sind andere, und in manchen war Rot oder Schwarz der Schutzleiter: messen, ihnen nicht trauen.

## Farben der Adern neuer Netzkabel: data/wire_colours.csv.

wire-line-north_america = schwarz, rot, blau …
wire-neutral-north_america = weiß oder grau
wire-earth-north_america = grün, grün-gelb oder blank
wire-line-iec = braun (schwarz, grau)
wire-neutral-iec = blau
wire-earth-iec = grün-gelb
wire-line-japan = schwarz
wire-neutral-japan = weiß
wire-earth-japan = grün
