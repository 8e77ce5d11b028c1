# Was die prüfende Person antworten kann, und der Name jeder Beobachtung in Listen.

answer-cant_tell = Lässt sich nicht sagen

## Antworten, von außen

answer-plug-two_equal_blades = Zwei Stifte, beide gleich
answer-plug-two_polarised_blades = Zwei, einer breiter: passt nur auf eine Art
answer-plug-three_pins = Schutzkontakt da: passt nur auf eine Art
answer-plug-earth_pin_missing = Schutzkontakt abgeschnitten oder abgebrochen
answer-plug-three_pins_reversible = Mit Schutzkontakt, passt aber auf beide Arten
answer-plug-battery_only = Kein Kabel, kein Netzeingang: nur Batterie
answer-plug-outside_supply = Ein externes Netzteil speist es
answer-plug-no_plug = Kabel oder Stecker abgeschnitten oder fehlt

answer-bare_metal-none_anywhere = Nirgends
answer-bare_metal-screws_or_shafts = Schrauben, Madenschrauben oder Achsen
answer-bare_metal-panel_or_cabinet = Frontplatte, Zierleiste, Gitter, Plattenteller, Gehäuse
answer-bare_metal-instrument_jack = Klinke für Instrument oder Mikrofon, oder bei Gebrauch gehaltenes Metall
answer-bare_metal-socket_or_pickup = Andere Buchse, Tonabnehmer oder Tonarm

answer-back-fitted = An ihrem Platz und unversehrt
answer-back-missing = Fehlt, gebrochen oder lose

answer-terminals-none = Keine
answer-terminals-aerial_or_earth = Für eine Antenne oder Erde
answer-terminals-pickup_or_speaker = Für Tonabnehmer oder Lautsprecher

answer-selector-absent = Nein
answer-selector-present = Ja

answer-earth_lift-present = Ja
answer-earth_lift-absent = Nein

answer-kind-table_radio = Tischradio
answer-kind-console_radio = Standradio, steht am Boden
answer-kind-portable_radio = Kofferradio
answer-kind-record_player = Plattenspieler
answer-kind-instrument_amplifier = Instrumenten-Verstärker
answer-kind-other = Etwas anderes

answer-rating_plate-ac_dc = AC/DC, Allstrom oder „universal“
answer-rating_plate-ac_only = Nur AC (Wechselstrom)
answer-rating_plate-ac_dc_battery = AC/DC und Batterie
answer-rating_plate-battery = Nur Batterie
answer-rating_plate-none = Kein Schild, Etikett oder Stempel

answer-iron_seen-none_visible = Keines, das ich sehen kann
answer-iron_seen-small = Klein, wie eine Streichholzschachtel
answer-iron_seen-large = Groß, wie eine Faust oder mehr

answer-tingle-reported = Ja, jemand hat es gespürt
answer-tingle-not_reported = Nachgefragt: niemand

answer-rewired-looks_original = Sieht ursprünglich aus
answer-rewired-reworked = Umgebaut

answer-cord-sound = Unbeschädigt, moderner Kunststoff
answer-cord-cracked = Rissig, blank, klebrig oder hart
answer-cord-spliced = Geflickt oder umklebt
answer-cord-cloth_or_rubber = Altes Gewebe oder Gummi, kein Schaden gesehen

answer-cord_wires-ordinary = So viele Adern wie Stifte
answer-cord_wires-three_wires_two_pins = Drei Adern, aber zwei Stifte

answer-accessory_outlet-present = Ja
answer-accessory_outlet-absent = Nein

## Antworten, Deckel ab oder mit Messgerät

answer-metal_joined-chassis = Mit dem Chassis
answer-metal_joined-common = Mit der Schaltungsmasse
answer-metal_joined-no = Mit keinem: verfolgt oder gemessen

answer-transformer-none = Kein Netztransformator
answer-transformer-heaters_only_traced = Speist nur die Heizungen: verfolgt
answer-transformer-separate_traced = Getrennte Wicklungen: beide Anschlüsse verfolgt
answer-transformer-shared_lead = Teilt einen Anschluss mit Netz und Gerät
answer-transformer-motor_winding = Gespeist aus einer Wicklung am Motor
answer-transformer-not_traced = Vorhanden, ließ sich aber nicht verfolgen

answer-common_to_chassis-direct = Direkt, mit Draht oder Lötzinn
answer-common_to_chassis-through_network = Über Widerstand und Kondensator
answer-common_to_chassis-not_joined = Nicht verbunden

answer-common_leg-pin_a = Stift A
answer-common_leg-pin_b = Stift B
answer-common_leg-neither = Keiner: Wicklung oder Gleichrichter dazwischen

answer-switch_leg-pin_a = Den Leiter von Stift A
answer-switch_leg-pin_b = Den Leiter von Stift B
answer-switch_leg-both = Beide Leiter
answer-switch_leg-none = Kein Schalter in der Zuleitung

answer-line_capacitor-none = Keiner
answer-line_capacitor-pin_a_leg = Vom Leiter von Stift A
answer-line_capacitor-pin_b_leg = Vom Leiter von Stift B
answer-line_capacitor-both_legs = Einer von jedem Leiter
answer-line_capacitor-on_selector = Am Masse- oder Brummschalter

answer-line_capacitor_class-ordinary = Gewöhnlich: kein Y-Zeichen
answer-line_capacitor_class-class_y = Klasse Y: Zeichen fotografiert

answer-earth_wire-on_chassis = Ja, angeschraubt oder angelötet
answer-earth_wire-not_on_chassis = Nein, oder es gibt keinen Schutzleiter

answer-fuse-pin_a_leg = Im Leiter von Stift A
answer-fuse-pin_b_leg = Im Leiter von Stift B
answer-fuse-none = Keine Sicherung

answer-filter_capacitors-sound = Sie sehen unbeschädigt aus
answer-filter_capacitors-swollen_or_leaking = Aufgebläht oder ausgelaufen

answer-materials-none = Keines davon
answer-materials-asbestos = Faserplatte oder Filz: könnte Asbest sein
answer-materials-selenium = Stapel von Kühlplatten: Selen
answer-materials-pcb = Ölgefüllter Becher: könnte PCB enthalten
answer-materials-radium = Leuchtende oder braune Skalenfarbe: Radium?

## Namen der Beobachtungen in Listen: Sie folgen auf einen Doppelpunkt

finding-plug = Stecker
finding-bare_metal = berührbares blankes Metall
finding-back = Rückwand
finding-terminals = Klemmen
finding-selector = Masse- oder Brummschalter
finding-earth_lift = Erdtrennschalter
finding-metal_joined = Verbindung des blanken Metalls
finding-transformer = Netztransformator
finding-common_to_chassis = Verbindung der Schaltungsmasse zum Chassis
finding-common_leg = Stift der Schaltungsmasse
finding-switch_leg = geschalteter Leiter
finding-line_capacitor = Kondensator vom Netz zum Chassis
finding-line_capacitor_class = Art des Netzkondensators
finding-earth_wire = Schutzleiter
finding-kind = Art des Geräts
finding-rating_plate = Typenschild
finding-iron_seen = gesehenes Eisen
finding-tube_list = Liste der Röhren
finding-tube_count = Zahl der Röhren
finding-tubes = Röhren
finding-meter = benutztes Messgerät
finding-tingle = Frage nach einem Kribbeln
finding-rewired = Zeichen eines Umbaus
finding-cord = Zustand des Netzkabels
finding-cord_wires = Adern im Netzkabel
finding-accessory_outlet = Steckdose am Gerät
finding-fuse = Sicherung
finding-filter_capacitors = Siebkondensatoren
finding-materials = alte Materialien

finding-value-line_capacitor = Wert des Netzkondensators
finding-value-network_capacitor = Wert des Kondensators von der Schaltungsmasse zum Chassis
finding-value-aerial_capacitor = Wert des Antennenkondensators
finding-value-network_resistor = Wert des Widerstands von der Schaltungsmasse zum Chassis
finding-value-rated = Netz, für das es ausgelegt ist

finding-ohms_a_chassis_on = Messung von Stift A zum Chassis bei Schalter ein
finding-ohms_a_chassis_off = Messung von Stift A zum Chassis bei Schalter aus
finding-ohms_b_chassis_on = Messung von Stift B zum Chassis bei Schalter ein
finding-ohms_b_chassis_off = Messung von Stift B zum Chassis bei Schalter aus
finding-ohms_earth_chassis = Messung vom Schutzkontakt zum Chassis
finding-ohms_a_part_on = Messung von Stift A zum blanken Metall bei Schalter ein
finding-ohms_a_part_off = Messung von Stift A zum blanken Metall bei Schalter aus
finding-ohms_b_part_on = Messung von Stift B zum blanken Metall bei Schalter ein
finding-ohms_b_part_off = Messung von Stift B zum blanken Metall bei Schalter aus
finding-ohms_earth_part = Messung vom Schutzkontakt zum blanken Metall
finding-ohms_a_b_on = Messung von Stift zu Stift bei Schalter ein
finding-ohms_a_b_off = Messung von Stift zu Stift bei Schalter aus
finding-insulation_megohms = Isolationsprüfung
finding-touch_test_volts = Berührungsstromprüfung
