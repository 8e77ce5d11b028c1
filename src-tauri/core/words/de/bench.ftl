# Prüfungen an der Werkbank: gespeicherte Ladung, Isolation, Berührungsstromprüfung unter Spannung.

## Gespeicherte Ladung

charge-energy = Energie
charge-charge = Ladung
charge-first = Anfangsstrom
charge-electrolytic-note = Wie aufgedruckt, bis um die Hälfte mehr: Ein alter Elektrolytkondensator kann so viel mehr haben, als darauf steht.
charge-marked-note = Wie aufgedruckt, bis um ein Fünftel mehr.
charge-charge-note = Was durch den geht, der beide Enden berührt.
charge-first-note = Bei der ersten Berührung, Hand zu Hand, durch { $body } (Schätzung, 5 % der Menschen). Er fällt, während sich der Kondensator leert.
charge-level-low = { $volts }: ein Grenzwert für berührbare Gleichspannung, kein Versprechen
charge-level-plug = { $volts }: an den Stiften eines Steckers eine Sekunde nach dem Ziehen erlaubt
charge-level-empty = { $volts }: ein Zwanzigstel dessen, was er hatte
charge-never = Nichts entlädt ihn. Er kann tagelang so bleiben.
charge-below = von Anfang an dort oder darunter
charge-limit-fibrillation = 60 V und 100 mC in einem Stoß: Das Herz kann stillstehen
charge-limit-shock = 100 V und 10 J: für sich allein eine Gefahr durch Stromschlag
charge-limit-burn = 100 J: Ein Kurzschluss durch Metall gibt Verbrennungen
charge-limit-act = 100 V und 1 J: nur wie an einem Teil unter Spannung daran arbeiten
charge-limit-reflex = 400 V und 0,25 J: ein Zucken, das Sie umwirft
charge-limit-touchable = 60 V und 45 µC: zu viel für ein Teil, das jeder berühren darf
charge-not-ruled-out = Ein nicht erreichter Grenzwert ist kein Versprechen. Eine kleinere Ladung durch die Brust oder ein Zucken in etwas hinein, das heiß ist oder unter Spannung steht, ist nicht ausgeschlossen.
charge-unplug = Stecker ziehen und im Blick behalten.
charge-timer = Die Zeit gilt für einen intakten Entladewiderstand, der höchstens ein Fünftel von seinem Aufdruck abweicht, und für diesen Kondensator. Ein offener Widerstand, ein aufgeblähter Kondensator oder eine zurückkriechende Ladung verlängern sie: sich nie auf die Zeit allein verlassen.
charge-no-bleed = Nichts leert ihn von selbst. Nicht darauf warten.
charge-measure = An ihm messen, in einem Gleichspannungsbereich, der mehr zeigt, als er halten kann.
charge-discharge = Über einen Widerstand von einigen Kiloohm entladen, der das aushält, mit isolierten Klemmen und einer Hand. Dann nochmals messen, und eine Minute später noch einmal.

## Isolation

insulation-qualified = Für eine Elektrofachkraft. Örtliche Vorschriften gehen vor.
insulation-unplug = Stecker ziehen. Das Prüfgerät legt eine hohe Spannung an alles, was Sie damit verbinden: nichts berühren, solange es läuft.
insulation-refused-conflict = Ihre Beobachtungen widersprechen einander. Das zuerst klären: Bis dahin weiß niemand, wohin die Prüfspannung ginge.
insulation-refused-no_line = Es hat keine Netzseite. Es gibt nichts zu prüfen.
insulation-refused-ways = Hier nicht anwenden. Noch möglich: { $ways }. Dort gehört das Metall zur Netzseite, oder wenig hält es davon fern. Die Prüfung würde das messen und sonst nichts, und ihre Spannung ginge durch Röhren und Kondensatoren, die nicht dafür gebaut sind.
insulation-refused-no_metal = Es wurde kein blankes Metall gefunden, an dem sich prüfen ließe.
insulation-lift-capacitor = Ein gewöhnlicher Kondensator vom Netz zum Metall ist noch möglich. Ein alter Papierkondensator kann bei der Prüfspannung durchschlagen, und bis dahin verdeckt er, was die Isolation tut. Zuerst einen seiner Anschlussdrähte ablöten, oder nicht prüfen.
insulation-step-join = Beide Netzstifte des Steckers verbinden, Netzschalter auf EIN. Ein dritter Stift bleibt frei. Eine Leitung des Prüfgeräts kommt an die verbundenen Stifte, die andere an das blanke Metall.
insulation-step-test = Eine Minute mit { $volts } Gleichspannung prüfen, oder mit weniger, wo die örtliche Praxis das verlangt, und eingeben, wobei sich der Wert einstellt.
insulation-step-discharge = Warten, bis das Prüfgerät das Gerät entladen hat, messen, dass nichts mehr da ist, dann die Leitungen abnehmen.
insulation-means-rejected = Unter 1 MΩ. Nicht in Betrieb nehmen: Etwas lässt das Netz durch.
insulation-means-earthed_only = Über 1 MΩ: genug, wo ein Schutzleiter am Metall nachgewiesen ist. Unter den 2 MΩ, die ein Gerät ohne Schutzleiter erreichen muss.
insulation-means-enough = Es erreicht 2 MΩ, das Mindeste für ein Gerät ohne Schutzleiter.
insulation-over-range = Über dem Bereich des Prüfgeräts. Das ist nur genug, wo sein Bereich über 2 MΩ hinausgeht und es mit voller Spannung prüft: Ein Ohmmeter tut das nicht.
insulation-says-nothing = Dieser Wert besagt nichts über dieses Gerät: siehe unten.
insulation-capacitor-apart = Mit abgelötetem Kondensator gemessen, besagt er nichts über den Kondensator. Diesen für sich beurteilen und ersetzen.
insulation-leak = Als eigener Ableitweg sind das { $current } bei { $volts }.
insulation-not-class = Das besagt, wie gut die Isolation heute ist. Die Klasse ändert es nicht: Ein Kondensator, eine Wicklung oder ein loser Draht kann morgen versagen.

## Die Berührungsstromprüfung unter Spannung

touch-qualified = Eine Prüfung unter Spannung, nur für eine Elektrofachkraft. Örtliche Vorschriften gehen vor. Für alle anderen ist hier Schluss.
touch-energised = Solange der Stecker steckt, nichts berühren. Alles wird vorher angeklemmt.

touch-refused-no_line = Es hat keine Netzseite. Es gibt nichts zu messen.
touch-refused-conflict = Ihre Beobachtungen widersprechen einander. Das zuerst klären: Ein Gerät, das niemand kennt, wird nicht eingesteckt.
touch-refused-live = Es steht, wie vorgefunden, unter Spannung. Diese Prüfung würde nur das Netz an das Metall legen. Nicht einstecken.
touch-refused-may_be_live = Es kann, wie vorgefunden, unter Spannung stehen. Das zuerst mit dem Stecker in der Hand ausschließen: weiter nachsehen oder mit dem Messgerät messen.
touch-refused-isolated = Hinter einem Trenntransformator kommt nichts zur Erde zurück, also zeigt die Prüfung so gut wie nichts, was auch immer das Gerät ist. Sie wird direkt an der Steckdose gemacht, hinter { -a-guard }.
touch-refused-no_plug = Es ist kein Stecker daran.
touch-refused-outside_supply = Ein externes Netzteil speist es. Dieses als eigenes Gerät prüfen.
touch-refused-no_metal = Es wurde kein blankes Metall gefunden, an dem sich prüfen ließe.
touch-refused-no_meter = Sie braucht ein Messgerät und jemanden, der damit umgehen kann.

touch-protection-gfci = FI-Schutzschalter (GFCI)
touch-protection-gfci-says = Jetzt die Prüftaste drücken: Er muss auslösen. Er begrenzt, wie lange ein Strom fließt, nicht wie viel.
touch-protection-rcd = FI-Schutzschalter (RCD), 30 mA oder weniger
touch-protection-rcd-says = Jetzt die Prüftaste drücken: Er muss auslösen. Er begrenzt, wie lange ein Strom fließt, nicht wie viel.
touch-protection-isolating = Geprüfter Trenntransformator
touch-protection-isolating-says = Er nimmt den Weg zur Erde weg, und damit das, was diese Prüfung misst.
touch-isolated = Hinter einem Trenntransformator weist diese Prüfung nichts nach. Mit { $farads } von seiner Wicklung zur Erde würde Metall, das direkt mit dem Netz verbunden ist, { $volts } zeigen, unter dem Grenzwert von { $limit }. Hinter { -a-guard } messen.
touch-earthed = Der Schutzleiter führt den Ableitstrom ab. Ein niedriger Messwert zeigt diese Verbindung, nicht, wie viel abfließt.
touch-may_be_earthed = Am Metall kann ein Schutzleiter liegen und den Ableitstrom abführen. Dann zeigt ein niedriger Messwert diese Verbindung, nicht, wie viel abfließt.

touch-tool-earth = Eine nachgewiesene Erde, unabhängig vom Gerät.
touch-tool-network = Ein Widerstand von 1500 Ω, 10 W oder mehr, und ein Kondensator von 0,15 µF parallel dazu, für Netzspannung ausgelegt, mit isolierten Klemmen. Ist das Metall direkt mit dem Netz verbunden, nimmt der Widerstand { $watts } auf: eine Sekunde daran lassen, nicht länger.
touch-tool-meter = Ein Messgerät im Wechselspannungsbereich mit 10 MΩ oder mehr, dazu ein niederohmiger Bereich oder ein zweipoliger Spannungsprüfer; Leitungen und Messkategorie für das Netz geeignet.
touch-ghost = Allein zeigt ein gewöhnliches Messgerät (10 MΩ) hier bis zu { $most } an Metall, das den Grenzwert einhält: Streukapazität genügt dafür, und dahinter steht kaum Strom. Das ist eine Geisterspannung, und das Messnetzwerk nimmt sie weg. Über { $stop } kann das Messgerät allein es nicht unterscheiden, also hält die Prüfung dort an, bis niederohmig gemessen ist.
touch-ghost-none = Eine nennenswerte Geisterspannung ist hier nicht zu erwarten: Was ein Messgerät allein an diesem Metall zeigt, hat Strom hinter sich oder fließt über einen Schutzleiter ab. Über { $stop } hält die Prüfung an.
touch-ghost-stops = Allein zeigt ein gewöhnliches Messgerät (10 MΩ) hier bis zu { $most } an Metall, das den Grenzwert einhält: Streukapazität genügt dafür, und dahinter steht kaum Strom. Das ist eine Geisterspannung, und das Messnetzwerk nimmt sie weg. Aber das Messgerät allein kann sie nicht vom Netz unterscheiden, also hält die Prüfung über { $stop } auch bei Metall an, das den Grenzwert einhält. In einem niederohmigen Bereich schrumpft eine Geisterspannung auf so gut wie nichts, das Netz nicht.
touch-stopped = Halt. Stecker ziehen. Über { $stop } am Messgerät allein kann das das Netz selbst sein: Das Messnetzwerk wird nicht angeklemmt. Mit gezogenem Stecker mit dem Ohmmeter messen. Ein niederohmiger Bereich kann eine Geisterspannung vom Netz unterscheiden: Eine Geisterspannung verschwindet darin fast.
touch-stopped-low = Halt. Auch niederohmig bleibt es über { $stop }. Das ist keine Geisterspannung: als Netzspannung behandeln.
touch-stopped-tripped = Halt. Der Schutz hat ausgelöst. Den Stecker des Geräts ziehen, bevor Sie den Schutz zurückstellen, und nicht noch einmal versuchen.
touch-stopped-above = Halt. Stecker ziehen. Das liegt über dem Grenzwert: Mehr muss nicht gemessen werden.
touch-tripped = er hat ausgelöst
touch-tripped-says = Der Schutz hat ausgelöst: Zur Erde floss mehr, als eine Berührung bekommen darf. Nicht benutzen, bis der Grund gefunden ist.
touch-look-first = Zuerst mit gezogenem Stecker ansehen: { $what }. Das kann verbieten, es mit Strom zu versorgen.

touch-position-first_on = Marke an Marke, Schalter EIN
touch-position-first_off = Marke an Marke, Schalter AUS
touch-position-second_on = Umgedreht, Schalter EIN
touch-position-second_off = Umgedreht, Schalter AUS
touch-position-only_on = Schalter EIN
touch-position-only_off = Schalter AUS


touch-more = Mehr, als intakte Bauteile hier erklären. Es gibt einen Ableitweg, der nicht gefunden wurde.
touch-together-above = { $most } liegt über dem Grenzwert von { $limit }. Stecker ziehen und nicht benutzen. Die Klasse zählt weiterhin für das, was ein Fehler mehr bewirken würde.
touch-together-below = Nichts bisher Gemessenes liegt über dem Grenzwert von { $limit }; das Höchste war { $most }. So ist es heute, eingesteckt wie es war. Die Klasse ändert das nicht: Sie ist, was ein Fehler mehr bewirken würde.

touch-earth-direct = Im niederohmigen Bereich oder mit einem zweipoligen Spannungsprüfer, an einer Wandsteckdose ohne { -guard }, den es auslösen würde: zuerst die Erdleitung mit ihrer Klemme, dann eine berührgeschützte Prüfspitze in den Außenleiterkontakt, mit einer Hand. Von dieser Erde zum Neutralleiterkontakt muss es so gut wie nichts zeigen. Nichts vom Gerät ist daran beteiligt.
touch-earth-isolated = Nicht hinter einem Trenntransformator: Dort zeigt die Prüfung nichts.
touch-earth-step_down_auto = Im niederohmigen Bereich oder mit einem zweipoligen Spannungsprüfer, am Ausgang des Spartransformators: zuerst die Erdleitung mit ihrer Klemme, dann eine berührgeschützte Prüfspitze in einen der Kontakte, mit einer Hand. Einer davon kann alles zeigen, was in den Spartransformator hineingeht. Nichts vom Gerät ist daran beteiligt.
touch-earth-both_hot = Im niederohmigen Bereich oder mit einem zweipoligen Spannungsprüfer, an einer Wandsteckdose ohne { -guard }, den es auslösen würde: zuerst die Erdleitung mit ihrer Klemme, dann eine berührgeschützte Prüfspitze in einen der Kontakte, mit einer Hand. Beide müssen die halbe Netzspannung zeigen. Nichts vom Gerät ist daran beteiligt.
touch-earth-enter = Eingeben, was es vom Außenleiterkontakt zur Erde zeigt. Ein hochohmiges Messgerät weist hier nichts nach: An jedem großen Stück Metall zeigt es dasselbe. Am Ende wiederholen.
touch-earth-unproven = Das sind nicht ungefähr { $volts }. Entweder ist das keine Erde, oder das Messgerät steht nicht auf Wechselspannung. Bis das nachgewiesen ist, zählt kein niedriger Messwert.

touch-check-mark = Einmal: eine Seite des Steckers und die Seite der Steckdose, zu der sie kommt, markieren. Marke an Marke und umgedreht sind dann jedes Mal dasselbe.
touch-check-unplugged = Bei gezogenem Stecker: Steckerlage und Schalter wie oben vorbereiten und das Messgerät zwischen blankes Metall und nachgewiesene Erde klemmen. Sonst ist nichts mit dem Gerät verbunden.
touch-check-terminals = Eine Antennen- oder Erdklemme zählt hier als blankes Metall und kommt auch an die Reihe.
touch-check-selector = Der Masseschalter ist eine Lage für sich: jede Messung in beiden Stellungen machen und den höheren Wert eingeben.
touch-check-hands = Hinter dem Schutz einstecken. Hände weg, niemand in der Nähe.
touch-check-read = Ablesen, Stecker ziehen, dann eingeben.
touch-low-unplugged = Mit gezogenem Stecker das Messgerät auf den niederohmigen Bereich stellen. Dasselbe Metall, dieselbe Erde, dieselbe Steckerlage. Einstecken, Hände weg.
touch-check-both = { $high }, niederohmig { $low }
touch-network-unplug = Mit gezogenem Stecker das Messnetzwerk parallel zum Messgerät klemmen: dasselbe Metall, dieselbe Erde, dieselbe Steckerlage.
touch-network-read = Eine Sekunde einstecken, ablesen, Stecker ziehen, dann eingeben. Am Netz würde der Widerstand { $watts } aufnehmen. Löst der Schutz aus oder wird der Widerstand heiß, sofort den Stecker ziehen.
touch-network-turns = Ein anderes blankes Metallteil beginnt wieder mit dem Messgerät allein. Der höchste Messwert einer Lage wird behalten.

touch-above = { $current } und { $watts } im Widerstand: über dem Grenzwert von { $limit }, { $limit_current }.
touch-below = { $current } und { $watts } im Widerstand. Der Grenzwert ist { $limit }, { $limit_current }.
touch-apart = Das Messnetzwerk zeigt mehr als das Messgerät allein. Das kann nicht sein: ein anderes Metallteil, eine andere Lage oder eine lose Klemme. Den Messwert unter „Gefunden“ zurücknehmen und diese Lage neu beginnen.
touch-unchecked = Gemessen ohne das Messgerät allein davor. Zählt nur, wenn es über dem Grenzwert liegt.
touch-less = Weniger, als zu erwarten war. Ist diese Erde eine Erde, ist das Messnetzwerk intakt, greifen die Klemmen auf blankem Metall? Erde neu nachweisen, Messgerät neu prüfen.
touch-implied = Der höchste Messwert ist so viel, wie { $farads } vom Außenleiter allein durchließen.
touch-implied-known = Der höchste Messwert ist so viel, wie { $farads } vom Außenleiter allein durchließen. Der Netzkondensator darin ist mit { $known } angegeben; in der anderen Lage von Stecker oder Schalter zeigt er weniger.
touch-alone-says = Das Messgerät allein zeigt mehr als { $stop }. Nichts lässt sich schließen, bevor das erklärt ist. Nicht benutzen.
touch-told-says = Genannt wurden { $most }, ohne Erde, Schutz oder Gegenprobe dazu. Das zählt nur, wenn es über dem Grenzwert von { $limit } liegt.
touch-together-doubt = Einige Messwerte können nicht stimmen, oder die Erde ist nicht nachgewiesen. Nichts lässt sich schließen, bis das behoben ist.
touch-not-read = Nicht gemessen: { $position }

finding-live_test-qualified = wer die Berührungsstromprüfung macht
finding-live_test-protection = Schutz bei der Berührungsstromprüfung
finding-live_test-earth_volts = Nachweis der Erde
finding-live_test-check_first_on = Messgerät allein: Marke an Marke, Schalter ein
finding-live_test-check_first_off = Messgerät allein: Marke an Marke, Schalter aus
finding-live_test-check_second_on = Messgerät allein: umgedreht, Schalter ein
finding-live_test-check_second_off = Messgerät allein: umgedreht, Schalter aus
finding-live_test-low_first_on = niederohmig: Marke an Marke, Schalter ein
finding-live_test-low_first_off = niederohmig: Marke an Marke, Schalter aus
finding-live_test-low_second_on = niederohmig: umgedreht, Schalter ein
finding-live_test-low_second_off = niederohmig: umgedreht, Schalter aus
finding-live_test-tripped_first_on = Schutz: Marke an Marke, Schalter ein
finding-live_test-first_on = Berührungsstromprüfung: Marke an Marke, Schalter ein
finding-live_test-tripped_first_off = Schutz: Marke an Marke, Schalter aus
finding-live_test-first_off = Berührungsstromprüfung: Marke an Marke, Schalter aus
finding-live_test-tripped_second_on = Schutz: umgedreht, Schalter ein
finding-live_test-second_on = Berührungsstromprüfung: umgedreht, Schalter ein
finding-live_test-tripped_second_off = Schutz: umgedreht, Schalter aus
finding-live_test-second_off = Berührungsstromprüfung: umgedreht, Schalter aus
answer-live_test-qualified = eine Elektrofachkraft
