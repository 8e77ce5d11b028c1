# Das Bild einer Anordnung, der Weg des Stroms hindurch, und der Gang durch ihre Lagen.

# $parts ist eine Liste von Meldungen part, von der Steckdose an.
circuit-way = Der Weg des Stroms: { $parts }.
circuit-behind = Dahinter liegt das Chassis an { $volts }.
circuit-behind-live = Dahinter liegt das Chassis an { $volts }: Nur was es abdeckt, hält Sie von Metall unter Spannung fern.

## Die Teile, wie der Weg des Stroms sie nennt

part-hot_contact = Außenleiterkontakt
part-neutral_contact = Neutralleiterkontakt
part-neutral_pull = andere Lasten am Netz
part-far_conductor = Draht des chassisfernen Leiters
part-near_conductor = Draht des chassisnahen Leiters
part-far_switch = chassisferner Leiter
part-near_switch = chassisnaher Leiter
part-load = Heizungen oder Primärwicklung
part-near_chassis = Verbindung des chassisnahen Leiters zum Chassis
part-far_chassis = Verbindung des chassisfernen Leiters zum Chassis
part-near_capacitor = Kondensator vom chassisnahen Leiter zum Chassis
part-far_capacitor = Kondensator vom chassisfernen Leiter zum Chassis
part-stray_near = loser Draht des chassisnahen Leiters
part-stray_far = loser Draht des chassisfernen Leiters
part-chassis = Chassis
part-common = Schaltungsmasse
part-aerial_capacitor = Antennenkondensator
part-aerial_terminal = Antennenklemme
part-earth_wire = Schutzleiter
part-person = Sie bis zur Erde

## Der Gang

walk-kindest = Das Geringste bei dieser einen Anordnung
walk-worst = Die schlimmste Lage
walk-off = Ausgeschaltet
walk-on-earth = Das Netz am Schutzleiter
walk-fault = Eines versagt
walk-pair = Zwei versagen
