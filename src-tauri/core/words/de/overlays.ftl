# Warnhinweise, die neben der Klasse gelten. Jeder ist eines, was zu tun oder zu lassen ist; -why sagt, was dahintersteht.
# Ein Warnhinweis gilt, sobald eine noch mögliche Anordnung ihn hat, daher „könnte“.

overlay-live_inside = Nie Knopf, Rückwand oder Abdeckung abnehmen und nie Erde, Antenne oder Messgeräte anklemmen, solange es eingesteckt ist.
overlay-live_inside-why = Knöpfe, Rückwand und Abdeckungen könnten alles sein, was die Netzspannung von Ihrer Hand fernhält.

overlay-line_on_earth = Nicht in Betrieb nehmen: Im Inneren könnte ein Netzleiter mit dem Schutzleiter verbunden sein.
overlay-line_on_earth-why = Eingesteckt könnte es den Leitungsschutzschalter auslösen oder Strom über den Schutzleiter schicken. Geht die Erde verloren, könnte das Metall unter Spannung stehen.
overlay-line_on_earth-name = ein Leiter am Schutzleiter

overlay-prove_outlet = Vor dem Einstecken nachweisen lassen, dass die Steckdose und jeder Adapter stimmen.
overlay-prove_outlet-why = Eine Steckdose oder ein Adapter mit dem Außenleiter am Schutzkontakt setzt dieses Gerät unter Spannung. Ein Steckdosenprüfer mit drei Lampen kann das nicht sehen; ein berührungsloser Spannungsdetektor oder ein Messgerät gegen eine bekannte Erde kann es. Das ist eine Prüfung unter Spannung, durch eine Elektrofachkraft.

overlay-earth_carries_leakage = Der Schutzleiter könnte { $current } Ableitstrom führen. Die Erde nie abtrennen oder abschneiden.
overlay-earth_carries_fault = Am Schutzleiter könnte ein Netzleiter liegen. Die Erde nie abtrennen oder abschneiden, und nicht in Betrieb nehmen.
overlay-earth_carries_leakage-why = Geht die Erde verloren, fließt dieser Strom stattdessen durch die Person, die das Metall berührt.

overlay-aerial_terminal = Die Antennen- oder Erdklemme nie mit einer Erde verbinden.
overlay-aerial_terminal-why = Die Klemme könnte über einen einzigen alten Kondensator mit dem Netz verbunden sein. Hat er einen Kurzschluss, können die Erdleitung und alles, was daran hängt, unter Spannung stehen.

overlay-b_plus_on_terminals = Klemmen für Tonabnehmer oder Lautsprecher nicht berühren und nichts daran anschließen, solange es eingesteckt ist.
overlay-b_plus_on_terminals-why = Sie führen vielleicht Anodenspannung und können auch nach dem Steckerziehen geladen sein.

overlay-resistance_cord = Die dritte Ader im Netzkabel ist kein Schutzleiter. Sie wird heiß: das Kabel nie kürzen, aufwickeln oder abdecken.
overlay-resistance_cord-why = Sie ist ein Widerstand, der einen Teil der Netzspannung aufnimmt. Gekürzt überlastet sie die Röhren; aufgewickelt oder abgedeckt kann sie brennen. Alte Gewebekabel können Asbest enthalten.

overlay-damaged_cord = Das Netzkabel ersetzen, bevor irgendeine Spannung anliegt.
overlay-damaged_cord-why = Risse und Flickstellen können jedem, der das Kabel anfasst, einen Stromschlag geben und einen Brand auslösen.
overlay-damaged_cord-name = das beschädigte Netzkabel

overlay-aged_cord = Das alte Netzkabel genau ansehen, am Stecker und an der Einführung. Ersetzen, wenn es rissig, klebrig oder hart ist.
overlay-aged_cord-why = Alter Gummi wird hart und bröckelt, oft unter dem Gewebe, wo man es nicht sieht.

overlay-no_fuse = Es hat keine Sicherung. Nur der Leitungsschutzschalter der Installation begrenzt einen Kurzschluss im Inneren.
overlay-no_fuse-why = Ein Leitungsschutzschalter lässt weit mehr Strom durch, als dieses Gerät aushält. Bevor er auslöst, könnte ein Kurzschluss einen Brand verursachen.

overlay-fuse_in_common_leg = Die Sicherung könnte im falschen Leiter sein: Durchgebrannt lässt sie das Gerät tot, aber noch mit dem anderen Leiter verbunden. Stecker ziehen, bevor Sie nachsehen.
overlay-fuse_in_common_leg-why = Die Sicherung könnte im Leiter der Schaltungsmasse sein oder in dem von Stift B. Ist sie durchgebrannt, speist der andere Leiter die Schaltungsmasse noch über Heizungen oder Wicklungen.

overlay-accessory_outlet = Alles, was in seiner Steckdose steckt, teilt die Fehler dieses Geräts. Leer lassen, bis der Nachweis für das Gerät erbracht ist.
overlay-accessory_outlet-why = Die Steckdose hängt am selben Netzkabel und vielleicht am selben Schalter und hat selten einen Schutzkontakt.

overlay-filter_capacitors = Nicht in Betrieb nehmen: Ein Siebkondensator ist aufgebläht oder läuft aus.
overlay-filter_capacitors-why = Er kann platzen, oder mit Kurzschluss Gleichrichter und Transformator durchbrennen lassen. Zuerst ersetzen.
overlay-filter_capacitors-name = der schadhafte Siebkondensator

overlay-stored_charge = Stecker ziehen, die Kondensatoren über einen Widerstand entladen und messen, dass die Ladung weg ist, bevor Sie im Inneren etwas berühren.
overlay-stored_charge-why = Siebkondensatoren können noch lange nach dem Steckerziehen Anodenspannung halten.

# Asbest, Selen, Radium: Seiten von US EPA, UK HSE und NIOSH (im Druck gesehen).

overlay-asbestos = Faserplatte, Filz oder altes Gewebekabel als Asbest behandeln. In Ruhe lassen, wenn es unbeschädigt ist.
overlay-asbestos-why = Mit dem Auge lässt es sich nicht erkennen, und der Staub schadet der Lunge. Nicht abstauben, schleifen oder mit Druckluft ausblasen. Entfernen ist Sache geschulter Leute.

overlay-selenium = Aufhören und lüften, wenn der Gleichrichter mit Kühlplatten faulig riecht oder raucht. Nicht daran riechen.
overlay-selenium-why = Ein versagender Selengleichrichter gibt giftige Dämpfe ab. Besser wird er ersetzt, mit einem Reihenwiderstand, der die Spannung niedrig hält.

overlay-pcb = Das Öl im alten Metallbecher als PCB behandeln. Nicht öffnen; Handschuhe tragen und in einen Beutel packen.
# 1979 und „meist“: US EPA 530-F-20-005 (im Druck gesehen).
overlay-pcb-why = Ölgefüllte Kondensatoren von vor 1979 enthalten es meist, wenn nicht „No PCBs“ darauf steht. Wohin damit, sagen die örtlichen Vorschriften für gefährliche Abfälle.

overlay-radium = Die Skalenfarbe als Radium behandeln. Das Glas darauf lassen; nicht öffnen, schaben oder ablecken. Hände waschen.
overlay-radium-why = Die Farbe bleibt radioaktiv, auch wenn sie nicht mehr leuchtet. Schädlich ist verschluckter oder eingeatmeter Staub.

overlay-wrong_supply = Hier nicht in Betrieb nehmen: Es ist für ein anderes Netz ausgelegt.
overlay-wrong_supply-why = Falsche Volt oder Hertz können Heizungen, Transformator und Motor überhitzen und einen Brand auslösen.
overlay-wrong_supply-name = eine andere Netzspannung
