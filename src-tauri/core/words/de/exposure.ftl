# Die Tafel der Lagen und einzelnen Fehler, und das Bild einer Anordnung.

grid-of-one = Eine Anordnung ist übrig, und das ist sie. Jeder Wert gilt für die schlimmsten Grenzen ihrer Bauteile, bei { $volts }. Ein niedriger Wert in einer Lage heißt nicht, dass sich das Gerät so benutzen lässt: Ein Fehler oder eine falsch gepolte Steckdose kann ihn ändern.
grid-of-worst = { $count } Anordnungen sind noch möglich. Das ist die schlimmste davon; jeder Wert gilt für die schlimmsten Grenzen ihrer Bauteile, bei { $volts }. In einer anderen davon kann das Metall in einer Lage, die hier einen niedrigen Wert hat, unter Spannung stehen: Keine Lage ist freigegeben.
grid-conflict = Einige Beobachtungen können nicht alle zutreffen. Bis das geklärt ist, ist das hier das Schlimmste, was irgendeine davon offenlässt.
grid-no-line = Nichts darin wird aus der Steckdose gespeist, also gibt es keine Lagen und keine Ströme zu zeigen.
grid-line-on-earth = Bei dieser Anordnung legt eine Lage das Netz auf den Schutzleiter. Das Gerät steht unter Spannung, wie groß diese Ströme auch sind.
grid-two-faults = Hier steht immer nur ein Fehler. Die Klasse zählt auch zwei zugleich.

grid-as-found = Wie vorgefunden
grid-way-first = 1. Lage
grid-way-second = 2. Lage
grid-on = Ein
grid-off = Aus
grid-ground-near = Leiter nah
grid-ground-far = Leiter fern

# Wie ein Feld heißt, neben seinem Wert. Wenig Platz.
cell-below = max. schwach
cell-leaks = Zucken
cell-live = kein Loslassen
cell-breaker_trips = LS löst aus
cell-behind_barrier = unerreichbar

# $state nennt den Fehler, den Stecker und den Schalter.
cell-touch = { $state } Wer das Metall berührt, bekommt { $current }; wenn es niemand berührt, liegt das Metall an { $volts }.
cell-trips-what = { $state } So viel Strom fließt zur Erde, dass der Leitungsschutzschalter auslöst. Bis dahin ist, wer das Metall berührt, im Stromkreis.
cell-barrier-what = { $state } Nichts, was mit der Schaltung verbunden ist, lässt sich berühren.

## Das Diagramm: Berührungsstrom über der Zeit

# Eine Lage wie vorgefunden oder nach $fault.
chart-case = { $fault }: { $position }
chart-after = Fehler „{ $fault }“
chart-position = { $way }, { $switches }
chart-switches = { $switch }, { $selector }
chart-switch-on = Schalter ein
chart-switch-off = Schalter aus
chart-ground-near = Masseschalter zum chassisnahen Leiter
chart-ground-far = Masseschalter zum chassisfernen Leiter

chart-shown = Gezeigt ist jede Lage wie vorgefunden und das Schlimmste, was ein Fehler bewirkt.
chart-shown-pairs = Gezeigt ist jede Lage wie vorgefunden und das Schlimmste, was ein Fehler bewirkt; zwei Fehler zugleich nur, wo der Befund sie nennt.
# Unsere eigene Schätzung, für den schlimmsten Fall: Niemand weiß, wie lange jemand hängen bleibt.
chart-lasts = Eine Berührung gilt als { $time } lang, bis zum Ende des Diagramms: Wer nicht loslassen kann, bleibt daran (unsere eigene Schätzung).

chart-at-most = höchstens { $time }
chart-need-not-trip = muss nicht auslösen

chart-too-little = Zu wenig für das Diagramm, das bei { $least } beginnt.
chart-out-of-reach = Nichts, was mit der Schaltung verbunden ist, lässt sich berühren.
chart-breaker-trips = So viel Strom fließt zur Erde, dass der Leitungsschutzschalter auslöst. Bis dahin ist, wer das Metall berührt, im Stromkreis.

## Bereiche und Linien für Wechselstrom (IEC 60479-1, Bild 20; Namen wie in der Norm, das Übrige in einfachen Worten)

chart-zone-ac_1 = AC-1
chart-zone-ac_1-brief = kaum zu spüren
chart-zone-ac_1-what = Sie spüren es vielleicht gerade noch. Meist erschrickt niemand.
chart-zone-ac_2 = AC-2
chart-zone-ac_2-brief = zu spüren, Sie zucken
chart-zone-ac_2-what = Sie spüren es, und Ihre Muskeln zucken. Meist schadet es nicht von sich aus; ein Sturz kann es.
chart-zone-ac_3 = AC-3
chart-zone-ac_3-brief = Krampf, Loslassen schwer
chart-zone-ac_3-what = Die Muskeln verkrampfen: Ihre Hände lassen vielleicht nicht los, das Atmen fällt schwer, das Herz kann eine Zeit lang aus dem Takt kommen. Meist kein bleibender Schaden.
chart-zone-ac_4_1 = AC-4.1
chart-zone-ac_4_1-brief = Herzstillstand möglich
chart-zone-ac_4_1-what = Das Herz kann aufhören zu pumpen: bei bis zu etwa 5 von 100 Menschen.
chart-zone-ac_4_2 = AC-4.2
chart-zone-ac_4_2-brief = Herzstillstand möglich, bis zur Hälfte
chart-zone-ac_4_2-what = Das Herz kann aufhören zu pumpen: bei bis zu etwa der Hälfte aller Menschen.
chart-zone-ac_4_3 = AC-4.3
chart-zone-ac_4_3-brief = Herzstillstand bei mehr als der Hälfte
chart-zone-ac_4_3-what = Das Herz hört bei mehr als der Hälfte aller Menschen auf zu pumpen. Auch die Atmung kann aussetzen, und es kommt zu Verbrennungen.

chart-line-a = Linie a, wo das Spüren beginnt: { $mark }.
chart-line-b = Linie b, wo Hände vielleicht nicht loslassen: { $mark }.
chart-line-c1 = Linie c1, wo das Herz stillstehen kann: { $mark }.
chart-line-c2 = Linie c2, etwa 5 von 100: { $mark }.
chart-line-c3 = Linie c3, etwa die Hälfte: { $mark }.
chart-mark-verified = IEC 60479-1, Bild 20, wie im Druck zitiert
chart-mark-memory_high = IEC 60479-1, Bild 20, aus dem Gedächtnis
chart-mark-memory_medium = IEC 60479-1, Bild 20, aus dem Gedächtnis, nicht im Druck nachgeprüft
chart-mark-memory_low = IEC 60479-1, Bild 20, aus dem Gedächtnis, mit wenig Gewissheit

# $factor für Hand zu Hand: IEC 60479-1, wie im Druck zitiert.
chart-path = Die Linien gelten für den Weg von der linken Hand zu beiden Füßen, und die Ströme ebenso; bei Metall, das gehalten wird, von beiden Händen zu beiden Füßen. Beide zählen voll für das Herz (Herzstromfaktor 1). Von Hand zu Hand fließt weniger, und das zählt mit Faktor { $factor }.
chart-other-hertz = Die Linien gelten für { $low } bis { $high }; dieses Netz hat { $hertz }, also stimmen sie nur grob.

## Geräte, die eine Berührung abschalten. UL 943 und IEC 61008-1 wie im Druck zitiert, wo eine Zeile nichts anderes sagt.

chart-gfci = GFCI
chart-gfci-trips = Ab { $must } muss er auslösen, umso früher, je mehr fließt. Unter { $never } darf er nicht; dazwischen darf er.
chart-gfci-neutral = Ist der Neutralleiter im Netz unterbrochen, fehlt ihm vielleicht, womit er auslöst; dort wird nicht mit ihm gerechnet (aus dem Gedächtnis).
chart-gfci-source = Klasse A, UL 943, wie von Herstellern solcher Geräte zitiert: Die Zeit ist (20 mA geteilt durch den Strom) hoch 1,43, in Sekunden.
chart-rcd = RCD 30 mA
chart-rcd-trips = Ab { $rated } muss er innerhalb von { $once } auslösen, ab dem Doppelten innerhalb von { $twice }, ab dem Fünffachen innerhalb von { $five }. Unter { $rated } muss er nicht.
chart-rcd-source = Allgemeine Bauart, IEC 61008-1, wie im Druck zitiert; die Zeit beim doppelten Strom ist aus dem Gedächtnis.
chart-device-blind = Eine Berührung zwischen Außenleiter und Neutralleiter sieht er nicht, nur Strom, der zur Erde abfließt.
# Nachweis: standards.md, aus dem Gedächtnis.
chart-device-direct = Gleichstrom, den ein Einweggleichrichter zieht, kann einen RCD vom Typ AC blind machen; Typ A verträgt 6 mA davon (aus dem Gedächtnis).
chart-device-rectified = Was ein Gleichrichter am Netz durchlässt, ist kein reiner Wechselstrom: Hier wird nicht mit ihm gerechnet.
chart-device-isolated = Hinter einem Trenntransformator sieht er nichts von einer Berührung: Hier wird nicht mit ihm gerechnet.
chart-device-whole = Er macht den Strom nicht kleiner: Bis er auslöst, fließt alles.
