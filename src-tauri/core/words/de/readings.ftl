# Messungen mit dem Ohmmeter: wie jede gemacht wird, was sie besagt, und was das Messgerät getäuscht haben kann.

readings-unplugged = Stecker ziehen und im Blick behalten. Nie ein Ohmmeter an ein eingestecktes Gerät halten.
readings-discharge = Kondensatoren bleiben auch nach dem Steckerziehen geladen. Bei abgenommenem Deckel über einen Widerstand entladen und messen, dass nichts mehr da ist, bevor eine Prüfspitze hineinkommt.

readings-first-plug = Zuerst angeben, welchen Stecker es hat: Nach ihm heißen die Stifte.
readings-first-kind = Zuerst angeben, was für ein Gerät es ist. Ein Motor am Netz lässt die Messung von Stift zu Stift unauffällig aussehen, während das Gerät selbst abgeschnitten ist.
readings-first-earth_lift = Zuerst angeben, ob es einen Erdtrennschalter gibt. Mit einem solchen kann die Messung am Schutzkontakt so oder so ausfallen.

## Stellen

probe-chassis = das Chassis selbst
probe-part = das blanke Metall, das Sie gefunden haben
probe-earth_pin = der Schutzkontakt

pin-a-wide = der schmale Flachkontakt (Stift A)
pin-b-wide = der breite Flachkontakt (Stift B)
pin-a-neutral = der Stift, der nicht der Neutralleiter ist (Stift A)
pin-b-neutral = der Stift des Neutralleiters (Stift B)
pin-a-taped = der Stift ohne Klebeband (Stift A)
pin-b-taped = der Stift mit Klebeband (Stift B)
pin-a-ends = der Draht ohne Klebeband (Stift A)
pin-b-ends = der Draht mit Klebeband (Stift B)

## Titel

reading-title-ohms_a_chassis_on = Stift A zum Chassis, Schalter ein
reading-title-ohms_a_chassis_off = Stift A zum Chassis, Schalter aus
reading-title-ohms_b_chassis_on = Stift B zum Chassis, Schalter ein
reading-title-ohms_b_chassis_off = Stift B zum Chassis, Schalter aus
reading-title-ohms_earth_chassis = Schutzkontakt zum Chassis
reading-title-ohms_a_part_on = Stift A zum blanken Metall, Schalter ein
reading-title-ohms_a_part_off = Stift A zum blanken Metall, Schalter aus
reading-title-ohms_b_part_on = Stift B zum blanken Metall, Schalter ein
reading-title-ohms_b_part_off = Stift B zum blanken Metall, Schalter aus
reading-title-ohms_earth_part = Schutzkontakt zum blanken Metall
reading-title-ohms_a_b_on = Stift zu Stift, Schalter ein
reading-title-ohms_a_b_off = Stift zu Stift, Schalter aus

## Wie

reading-how-switch-on = Bei gezogenem Stecker den Netzschalter auf EIN stellen. Das Gerät muss seinen Durchgang zeigen können.
reading-how-switch-off = Bei gezogenem Stecker den Netzschalter auf AUS stellen.
reading-how-pins = Je eine Prüfspitze an jeden Netzstift. Wie herum, ist gleich.
reading-how-chassis = Eine Prüfspitze an den Stift, die andere an blankes Metall des Chassis selbst: durch Lack oder Rost kratzen.
reading-how-part-lowest = Eine Prüfspitze an den Stift. Mit der anderen jedes blanke Teil der Reihe nach berühren, auch Klinken, Schrauben und Klemmen, und den niedrigsten Wert eingeben, den Sie sehen.
reading-how-part-highest = Eine Prüfspitze an den Schutzkontakt. Mit der anderen jedes blanke Teil der Reihe nach berühren und den höchsten Wert eingeben, den Sie sehen.
reading-how-steady = Den automatischen oder den höchsten Bereich benutzen. Warten, bis der Wert stillsteht. Das Metall der Prüfspitzen nicht mit den Fingern berühren.

## Was gemessen wurde

reading-over-range = OL
reading-range = { $low } bis { $high }

way-line_tied = Direkt am Netz
way-line_rectified = Über Gleichrichter am Netz
way-line_floated = Über RC-Glied am Netz
way-line_insulated = Am Netz, Chassis isoliert
way-heater_transformer = Heiztransformator
way-autotransformer = Spartransformator
way-isolating = Trenntransformator
way-no_line = Kein Netz im Inneren
way-on-pin-a = { $way }, Schaltungsmasse an Stift A
way-on-pin-b = { $way }, Schaltungsmasse an Stift B

reading-means-nothing = Für sich allein schließt diese Messung nichts aus.
reading-means-fewer = Diese Messung lässt { $left } von { $all } Bauweisen der Netzseite übrig. Jede Art ist in irgendeiner Form noch möglich.
reading-means-gone = Diese Messung schließt aus: { $ways }. Sie lässt { $left } von { $all } Bauweisen der Netzseite übrig.
reading-means-conflict = Diese Messung gehört zu Beobachtungen, die einander widersprechen. Bis das geklärt ist, zählt die schlimmste davon.

readings-path-proven = Stift zu Stift ändert sich mit diesem Schalter: Netzkabel, Schalter und Last sind durchverbunden. OL zum Chassis heißt jetzt, dass es nicht an einem Netzleiter liegt.
readings-path-not_read = Stift zu Stift ist bei Schalter ein und aus noch nicht gemessen. Bis dahin kann OL zum Metall auch nur einen gebrochenen Draht bedeuten.
readings-path-open = Stift zu Stift zeigt bei Schalter ein keine Verbindung: Irgendwo ist eine Röhre, eine Sicherung, das Netzkabel oder ein Schalter offen. OL zum Metall besagt nichts, bis das gefunden ist.
readings-path-unchanged = Stift zu Stift ändert sich mit diesem Schalter nicht. Ein anderer Schalter kann offen sein, also besagt OL zum Metall nichts.
readings-path-motor = Vielleicht liegt ein Motor am Netz, oder in der Steckdose am Gerät steckt etwas. Dann weist Stift zu Stift nichts über das Gerät nach, und OL zum Metall besagt nichts.
readings-conflict = Diese Messungen und Ihre anderen Beobachtungen können nicht alle zutreffen. Die im Befund genannten nochmals ansehen.

## Fallen

trap-warm_string = Mehr, als diese Röhren kalt zeigen. War es in den letzten zehn Minuten ein? An warmen Heizungen ist der Messwert zwei- bis viermal zu hoch: warten und neu messen.
trap-charging = Steigt der Wert? Das Messgerät lädt einen Kondensator: warten, bis er stillsteht. Beginnt er unter null oder springt er, hält ein Kondensator noch Ladung: entladen, messen, dass sie weg ist, dann neu messen.
trap-diode = Die beiden Prüfspitzen tauschen. Zeigt es nun etwas anderes, liegt ein Gleichrichter im Weg, und der niedrigere Wert zählt.
trap-thin_filaments = Diese Röhren haben Heizfäden von 50 mA oder weniger. Der Strom des Messgeräts erwärmt sie, also wandert der Wert nach oben; ein niedriger Bereich eines alten Messgeräts kann sie durchbrennen. Einen hohen Bereich benutzen und kurz messen.
trap-fingers = Finger an beiden Prüfspitzen ergeben ungefähr so viel. An der Isolation halten und neu messen.
trap-leads = Die Prüfspitzen aneinanderhalten: Was Sie dann messen, sind die Leitungen. Das von diesem Wert abziehen.
trap-low_range = OL in einem niedrigen Bereich heißt nicht offen. Zum automatischen oder zum höchsten Bereich wechseln, bevor Sie es eingeben.
trap-broken_path = Eine tote Röhre, eine durchgebrannte Sicherung, ein abgeschnittenes Netzkabel oder ein Umschalter auf „Batterie“ unterbricht den ganzen Weg. Das zeigt nicht, dass kein Netz im Inneren ist.

## Messgerät

meter-line = ±({ $percent } % + { $digits } Digits), OL über { $most }
reading-asked-why = Ein Wert kann ausschließen, was niemand von außen sehen kann.
reading-asked-how = Mit gezogenem Stecker. Zuerst die beiden Prüfspitzen aneinanderhalten. Dann je eine an jede Stelle halten und warten, bis der Wert stillsteht.
reading-asked-caution = Zuerst den Stecker ziehen. Kondensatoren können noch geladen sein: entladen und an ihnen messen, bevor Sie im Inneren etwas berühren.
