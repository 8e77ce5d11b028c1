# Einzelne Fehler als Nennungen (sie füllen $fault), was jeder bewirkt, und die Merkmale einer Anordnung für die Fachkraft.

-near-leg = der Leiter, an dem die Schaltungsmasse liegt

## Fehler

fault-lost_barrier = Verlust von Knopf, Rückwand oder Abdeckung
fault-lost_barrier-what = Das Chassis dahinter lässt sich berühren.
fault-stray_far = loser Draht des chassisfernen Leiters am Chassis
fault-stray_far-what = Der Draht, der den chassisfernen Leiter speist, liegt vor dem Schalter am Chassis; Ausschalten hilft also nicht.
fault-stray_near = loser Draht des chassisnahen Leiters am Chassis
fault-stray_near-what = Der Draht, der den chassisnahen Leiter speist, liegt vor dem Schalter am Chassis; Ausschalten hilft also nicht.
fault-near_capacitor_shorted = Kurzschluss im Kondensator vom chassisnahen Leiter zum Chassis
fault-near_capacitor_shorted-what = Der chassisnahe Leiter ist dann direkt mit dem Chassis verbunden.
fault-far_capacitor_shorted = Kurzschluss im Kondensator vom chassisfernen Leiter zum Chassis
fault-far_capacitor_shorted-what = Der chassisferne Leiter ist dann direkt mit dem Chassis verbunden.
fault-selector_capacitor_shorted = Kurzschluss im Kondensator am Masseschalter
fault-selector_capacitor_shorted-what = Der Leiter, auf den der Schalter zeigt, ist dann direkt mit dem Chassis verbunden.
fault-network_capacitor_shorted = Kurzschluss im Kondensator von der Schaltungsmasse zum Chassis
fault-network_capacitor_shorted-what = Das Chassis ist dann direkt mit der Schaltungsmasse verbunden, die am Netz liegt.
fault-aerial_capacitor_shorted = Kurzschluss im Antennenkondensator
fault-aerial_capacitor_shorted-what = Die Antennen- oder Erdklemme ist dann direkt mit der Schaltungsmasse verbunden.
fault-insulation_breakdown = Durchschlag der Isolation im Inneren
fault-insulation_breakdown-what = Was das Netz vom Chassis fernhielt, lässt es durch.
fault-earth_open = Unterbrechung des Schutzleiters
fault-earth_open-what = Strom, den der Schutzleiter abführte, fließt durch die Person, die das Metall berührt.
fault-outlet_reversed = falsch gepolte Steckdose
fault-outlet_reversed-what = Außenleiter und Neutralleiter sind vertauscht; ein Stecker, der nur auf eine Art passt, legt den Außenleiter also an den falschen Leiter.
fault-neutral_open = Unterbrechung des Neutralleiters im Netz
fault-neutral_open-what = Das Gerät kann tot sein, aber andere Lasten ziehen seine Neutralleiterseite in Richtung der Außenleiterspannung.

fault-feed_earthed = Verbindung der galvanisch getrennten Speisung mit Erde
fault-feed_earthed-what = Die Isolation des Trenntransformators davor hat versagt, oder ein zweites Gerät daran verbindet einen seiner Leiter mit Erde. Der andere Leiter liegt dann an der ganzen Netzspannung.

# Verbindet zwei Fehler zu einer Nennung; das Ergebnis füllt $fault.
fault-two = { $first } und { $second }

## Die zwei Leiter der Netzseite

leg-near = Chassisnaher Leiter: { -near-leg }. In einem Gerät mit Trenntransformator der Leiter von Stift B.
leg-far = Chassisferner Leiter: der andere.

## Trennung

isolation-line_tied = Direkt am Netz: Die Schaltungsmasse liegt an einem Netzleiter, und das Chassis ist die Schaltungsmasse.
isolation-line_rectified = Über Gleichrichter am Netz: eine Brücke oder ein Vollweg-Verdoppler zwischen Netz und Schaltungsmasse. Das Chassis steht unter Spannung, egal wie herum der Stecker steckt.
isolation-line_floated = Über RC-Glied am Netz: Die Schaltungsmasse liegt an einem Netzleiter, und ein Widerstand und ein Kondensator verbinden sie mit dem Chassis.
isolation-line_insulated = Am Netz, Chassis isoliert: Die Schaltungsmasse liegt an einem Netzleiter, und kein Bauteil verbindet sie mit dem Chassis.
isolation-heater_transformer = Heiztransformator: Ein Transformator oder eine Motorwicklung speist nur die Heizungen. Der Rest liegt direkt am Netz.
isolation-autotransformer = Spartransformator: Eisen ohne Trennung. Das Chassis liegt an seinem gemeinsamen Ende.
isolation-isolating = Trenntransformator: getrennte Wicklungen. Das Chassis ist die Schaltungsmasse des Geräts selbst.
isolation-no_line = Kein Netz im Inneren: nur Batterien.

## Netzkabel

cord-two_pin_reversible = Zwei Stifte; verpolbar, passt auf beide Arten.
cord-two_pin_polarised = Zwei Stifte, gepolt; passt nur auf eine Art.
cord-three_pin_earthed = Schutzkontakt, mit dem Chassis verbunden; passt nur auf eine Art.
cord-three_pin_unearthed = Schutzkontakt, aber kein Schutzleiter am Chassis; passt nur auf eine Art.
cord-three_pin_cut = Schutzkontakt abgeschnitten; passt auf beide Arten, ohne Erde.
cord-three_pin_reversible_earthed = Stecker mit Schutzkontakt, der auf beide Arten passt; Chassis am Schutzleiter.
cord-three_pin_reversible_unearthed = Stecker mit Schutzkontakt, der auf beide Arten passt; kein Schutzleiter am Chassis.

## Welcher Stift den chassisnahen Leiter speist

near_pin-a = Stift A speist den chassisnahen Leiter.
near_pin-b = Stift B speist den chassisnahen Leiter.

## Netzkondensator

line_capacitor-none = Kein Kondensator vom Netz zum Chassis.
line_capacitor-near_leg = Kondensator vom chassisnahen Leiter zum Chassis.
line_capacitor-far_leg = Kondensator vom chassisfernen Leiter zum Chassis.
line_capacitor-both_legs = Kondensatoren von beiden Leitern zum Chassis.
line_capacitor-selector = Kondensator zum Chassis von dem Leiter, den ein Schalter am Gerät wählt.

line_capacitor_class-ordinary = Gewöhnlicher Kondensator: Er kann mit Kurzschluss versagen.
line_capacitor_class-class_y = Kondensator der Klasse Y: gebaut für Netz gegen Metall; ein Kurzschluss von sich aus wird nicht gezählt.

## Schalter

switch_leg-near = Der Schalter öffnet den chassisnahen Leiter; der chassisferne bleibt mit der Steckdose verbunden.
switch_leg-far = Der Schalter öffnet den chassisfernen Leiter; der chassisnahe bleibt mit der Steckdose verbunden.
switch_leg-both = Der Schalter öffnet beide Leiter.
switch_leg-none = Kein Schalter in der Zuleitung: ein, sobald der Stecker steckt.

## Erreichbarkeit

reach-closed = Geschlossen: Mit Knöpfen, Rückwand und Abdeckungen lässt sich nichts berühren, was mit der Schaltung verbunden ist.
reach-aerial_terminal = Geschlossen, aber eine Antennen- oder Erdklemme geht über einen Kondensator zur Schaltungsmasse.
reach-exposed = Metall am Chassis lässt sich berühren.
reach-handheld = Metall am Chassis wird bei Gebrauch gehalten: Saiten, Mikrofon, Bedienfeld.
reach-common_exposed = Metall an der Schaltungsmasse lässt sich berühren: Schirm des Tonabnehmers, Hülse der Klinkenbuchse, Kabel des Fußschalters.
