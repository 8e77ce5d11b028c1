# Die wenigen Beschriftungen, die der Oberfläche selbst gehören. Fragen, Klassen, Warnhinweise und Befunde kommen aus dem Kern.

app-name = Cold Chassis

back = Zurück
next = Weiter
undo = Rück{ "\u00AD" }gängig
change = Ändern
withdraw = Zurücknehmen
units = Geräte
found = Gefunden
verdict = Befund
settings = Einstellungen
continue = Fortfahren

trouble-field = { $name }: { $what }
to-units = Zu den Geräten
inspection-gone = Diese Prüfung ist nicht hier
trouble-unreachable = Das ging nicht, und nichts wurde geändert. Noch einmal versuchen.

## Liste der Geräte

list-search = Suchen
list-search-hint = Name, Ort oder Nummer
list-new = Neues Gerät
list-empty-title = Noch keine Geräte
list-empty-text = Das erste ansehen, bevor es eingesteckt wird.
list-none-found = Nichts passt zu „{ $text }“.
list-clear = Suche leeren
list-choose = Ein Gerät wählen oder ein neues beginnen.
list-unnamed = Ohne Namen
list-no-verdict = Neu ansehen
list-not_ruled_out = nicht ausgeschlossen
list-shown = nachgewiesen
list-demo = Demo
list-demo-load = Zehn erfundene Geräte zeigen
list-demo-why = Eine Vorführung zum Umsehen. Sie lässt sich in einem Schritt entfernen.
list-demo-there =
    { $count ->
        [one] Ein erfundenes Gerät steht in der Liste.
       *[other] { $count } erfundene Geräte stehen in der Liste.
    }
list-demo-remove = Entfernen

## Neues Gerät

new-title = Neues Gerät
new-name = Name
new-name-hint = Regalradio, braunes Gehäuse
new-place = Ort
new-place-hint = Stand 14
new-place-before = Schon benutzt
new-optional = optional
new-kind = Art
new-kind-none = Keine Angabe
supply-choose = Wählen
supply-missing = Wählen, woran es angeschlossen werden soll: Davon hängen die Werte ab.
new-supply = Netz
new-supply-why = Woran es angeschlossen werden soll. Dafür wird der schlimmste Fall berechnet.
new-access = Wie weit dürfen Sie gehen?
new-access-why = Gefragt wird nur, was Sie hier zulassen.
access-outside = Von außen ansehen
access-outside-note = immer
access-cover_off = Deckel abnehmen
access-cover_off-note = Stecker gezogen, entladen
access-meter = Mit Messgerät
access-meter-note = wer damit umgehen kann
new-start = Ansehen beginnen

## Eine Frage

torch-on = Licht an
torch-off = Licht aus
torch-missing = Das Licht dieses Endgeräts lässt sich von hier nicht einschalten.
question-how-to-look = Wie nachsehen
question-how-and-why = Wie nachsehen, und warum gefragt wird
question-several = Alles ankreuzen, was Sie finden.
question-figure = Wert
question-figure-farads = Wie 0,047u, 47n oder 470p
question-figure-ohms = Wie 220k, 1M oder 470
question-count = Wie viele
question-count-hint = Als Zahl, etwa 5
question-read-marked = Vom Bauteil abgelesen
question-read-measured = Gemessen
question-read-how = Woher wissen Sie es?
question-understood = Verstanden als { $value }
question-figure-empty = Einen Wert eingeben.
question-figure-unreadable = Nicht als Wert lesbar. Zu schreiben als 47n, 0,05 MFD, 220k oder 1M.
question-figure-ambiguous = Nicht eindeutig: 1.000 ist für die einen tausend, für die anderen eins. 1000 schreiben oder 1,0.
question-figure-prefix_missing = p, n oder u anfügen, wie in 0,047u.
question-count-wrong = Eine ganze Zahl eingeben.
question-tubes-empty = Mindestens einen Typ eingeben.
question-keep = Speichern
question-places = Jede Stelle ankreuzen, an der Sie nachgesehen haben
question-places-left =
    { $count ->
        [0] An allen Stellen nachgesehen.
        [one] Eine Stelle fehlt noch. „Nirgends“ zählt nur, wenn an jeder Stelle nachgesehen wurde.
       *[other] { $count } Stellen fehlen noch. „Nirgends“ zählt nur, wenn an jeder Stelle nachgesehen wurde.
    }
question-rated-volts = Volt
question-rated-hertz = Hertz oder Perioden
question-rated-watts = Watt
question-rated-empty = Mindestens einen Wert eingeben.
question-rated-wrong = Einen Wert eingeben, etwa 117. Bei mehreren Spannungen die jetzt eingestellte.

## Eine Liste von Röhren

tubes-first = Erster Typ
tubes-next = Nächster Typ
tubes-hint = Wie auf die Röhre gedruckt. Eine ganze Liste lässt sich einfügen.
tubes-done = Fertig
tubes-digits = Ziffern
tubes-hits = Passende Typen
# $written ist, was getippt oder eingefügt wurde.
tubes-for = statt { $written }
tubes-by-rule = Nach Regel, nicht aus einer Liste.
# Zwischen den anderen Namen einer Type und dem, was sie ist.
tubes-same-and-role = { $same } · { $role }
tubes-as-written = Wie geschrieben
tubes-nobody-knows = Nicht in der Liste. Wie geschrieben hinzugefügt.
tubes-added = { $type } hinzugefügt.
tubes-added-for = { $type } hinzugefügt, statt { $written }.
tubes-pasted =
    { $count ->
        [one] Eine Röhre hinzugefügt.
       *[other] { $count } Röhren hinzugefügt.
    }
tubes-read-as = { $type }, statt { $written }.
tubes-pasted-unknown = Nicht bekannt, wie geschrieben behalten: { $types }.
tubes-full = Mehr als { $most } Röhren passen nicht.
tubes-all =
    { $count ->
        [one] Eine Röhre
       *[other] { $count } Röhren
    }
tubes-removed = { $type } entfernt.
tubes-remove = { $type } entfernen
tubes-fewer = Eine { $type } weniger
tubes-more = Eine { $type } mehr
tubes-count =
    { $count ->
        [one] einmal
       *[other] { $count }-mal
    }
tubes-arrange = Reihenfolge ändern
tubes-arranged = Reihenfolge fertig
tubes-up = { $type } nach oben
tubes-down = { $type } nach unten

## Was die Heizungen sagen

heaters = Röhren
heaters-title = Was sagen die Röhren?
heaters-from-list = Nur eine Röhrenliste? Sehen, was sie sagt
heaters-does = Die Typen der Röhren eingeben. Ihre Heizungen ergeben zusammen einen Hinweis: ein Heizkreis direkt am Netz oder ein Transformator.
heaters-unplug = Zuerst den Stecker ziehen. Abkühlen lassen, keine heißen Röhren ziehen.
heaters-where-label = Ein Schild im Gehäuse, an der Rückwand oder unter dem Deckel zeigt, welche Röhre wohin gehört.
heaters-where-chassis = Oft sind die Typen neben den Fassungen ins Chassis gestempelt.
heaters-where-tops = Sonst Glas oder Sockel jeder Röhre lesen. Das Licht drehen, nicht die Röhre.
heaters-start = Röhren eingeben
heaters-add = Röhre hinzufügen
heaters-example-show = Ein Beispiel zeigen
heaters-example = Ein Beispiel, nicht Ihr Gerät.
heaters-example-remove = Entfernen
heaters-clear = Liste leeren
heaters-cleared = Die Liste ist geleert.
heaters-supply = Netzspannung
heaters-supply-why = Die Heizspannungen besagen nur etwas im Vergleich mit dem Netz, das sie speist.
heaters-hint-at = Worauf die Röhren hinweisen
heaters-see = Sehen, was diese Heizungen sagen
heaters-never-proof = Ein Hinweis, nie ein Nachweis.
heaters-figures = Zu erwartende Werte
heaters-cannot-prove = Was die Liste nicht nachweisen kann
heaters-sources = Jede Röhre, und woher ihre Werte kommen
heaters-of-line = von { $line } V
# In der Zeichnung: wenige Buchstaben.
heaters-band = Heizkreis am Netz endet hier
heaters-line = Netz
heaters-string = im Heizkreis
heaters-rectifier = Gleichrichter
heaters-resistor = Widerstand
heaters-times-higher = Das Netz: { $times }-mal so hoch
heaters-volts = { $volts } V
heaters-amperes = { $amperes } A
heaters-left = { $volts } V für Vorwiderstand übrig
# Wo für das Ganze kein Platz ist.
heaters-left-short = { $volts } V übrig
heaters-over = { $volts } V mehr als das Netz
heaters-unknown-volts = nicht bekannt
heaters-times = { $type } ×{ $count }
# Statt der Zeichnung vorgelesen.
heaters-drawn-stack = Zeichnung: Die Heizungen von { $types }, aufeinandergestapelt, ergeben { $sum } V, daneben ein Netz von { $line } V.
heaters-drawn-rectified = Zeichnung: Die Heizung von { $own } liegt allein am Netz von { $line } V; hinter Gleichrichter und Widerstand die Heizfäden von { $types } im Heizkreis, zusammen { $sum } V.
heaters-drawn-side = Zeichnung: Die Heizungen von { $types } nebeneinander an wenigen Volt, daneben ein Netz von { $line } V.
heaters-place-string = Im Heizkreis.
heaters-place-branch = In einem der Zweige des Heizkreises.
heaters-place-own_branch = Allein am Netz.
heaters-place-winding = Parallel zu den anderen.
heaters-place-no_heater = Hat keine Heizung.
heaters-place-aside = Zählt nicht in der Summe.
heaters-place-clash = Passt nicht zu den anderen.
heaters-place-unknown = Nicht bekannt, nicht gezählt.

still-possible = Noch möglich
# Vorgelesen, wenn eine Antwort einengt. $classes ist eine Liste kurzer Klassennamen.
still-possible-all = Noch möglich: { $classes }
still-possible-none = Widerspruch
still-possible-count = { $count } von { $all }

## Was gefunden wurde

found-title = Was Sie gefunden haben
found-empty = Noch ist nichts beantwortet.
found-go-on = Weiter
found-by = von { $author }
found-withdraw-what = Zurücknehmen: { $name }
found-change-what = Ändern: { $name }
found-add-reading = Messwert hinzufügen
# Namen von Feldern, die der Kern mit ihrem Pfad meldet.
field-name = Name
field-place = Ort
field-author = Ihr Name
field-caption = Bildtext
field-volts = Volt
field-hertz = Hertz
field-watts = Watt
field-farads = Wert
field-ohms = Wert
found-unit = Dieses Gerät
found-access = Wie weit Sie gehen dürfen
found-supply = Netz

## Fotos

photo = Foto
photos = Fotos
photo-from-file = Fotos aus Dateien hinzufügen
photo-open = Foto öffnen: { $of }
photo-whole = das Gerät
photo-storing = Ein Foto wird gespeichert.
photo-added =
    { $count ->
        [one] Ein Foto hinzugefügt.
       *[other] { $count } Fotos hinzugefügt.
    }
photo-caption = Bildtext
photo-remove = Dieses Foto entfernen
photo-gone = Dieses Foto ist nicht mehr hier.
photo-gone-back = Zurück zur Prüfung
photo-unreadable = Dieses Foto ist nicht lesbar.

## Der Befund

verdict-current = durch den Körper
verdict-now = Was jetzt getan werden darf
verdict-next = Nächster Schritt
verdict-possible = Was es sonst noch sein kann
verdict-closer = Genauer ansehen
verdict-doing = Was sich tun lässt
verdict-cautions = Warnhinweise
verdict-conflicts = Beobachtungen im Widerspruch
verdict-again = Neu ansehen
verdict-also = Noch nicht angesehen
verdict-rests-on = Worauf er beruht
verdict-rests-on-one = Eine Beobachtung trägt den Befund
verdict-not-checked = Nicht geprüft
grid-see = Jede Lage von Stecker und Schalter, Fehler um Fehler
grid-title = Lage um Lage
grid-caption = Was eine Person bekäme, die das Metall berührt. Auf einen Wert tippen.
grid-arrangement = Die gezeigte Anordnung
grid-quoted = diesen nennt der Befund
chart-see = Was ein solcher Strom bewirkt, und wie bald ein { -guard } ihn abschaltet
chart-title = Strom und Zeit
# Am Kopf des gedruckten Diagramms. $feed ist, wovon die Steckdose gespeist wird.
paper-supply =
    { $feed ->
        [both_hot] Netz: { $volts } V, { $hertz } Hz, bis { $most } V, beide Kontakte Außenleiter
        [isolated] Netz: { $volts } V, { $hertz } Hz, bis { $most } V, hinter einem Trenntransformator
        [step_down_auto] Netz: { $volts } V, { $hertz } Hz, bis { $most } V, hinter einem Abwärtstransformator
       *[other] Netz: { $volts } V, { $hertz } Hz, bis { $most } V
    }
paper-date = Gedruckt { $date }
chart-device = Angeschlossen hinter
chart-no-device = Keinem davon
chart-picture = Diagramm: Berührungsstrom über der Zeit. Die Tabelle darunter sagt dasselbe in Worten.
chart-axis-current = Durch den Körper, mA
chart-axis-time = Wie lange er andauert
chart-table = Schlimmster Strom zuerst
chart-table-behind = Schlimmster Strom zuerst, hinter { $device }
chart-current = Strom
chart-lasting = Dauer { $time }
chart-behind = Hinter { $device }
chart-zones = Was die Bereiche bedeuten
chart-device-does = Angaben zu: { $device }
chart-basis = Worauf das Diagramm beruht
verdict-whose-body = Wessen Körper
verdict-hints = Hinweise
verdict-to-hints = Zu den Hinweisen
verdict-hints-why = Sie weisen nichts nach und schließen nichts aus. Sie verschieben, was wahrscheinlich ist.
verdict-others = Andere Prüfungen dieses Geräts
verdict-new-inspection = Noch einmal prüfen

## Einstellungen

settings-title = Einstellungen
settings-region = Region
settings-region-why = Stellt das Netz ein, mit dem ein neues Gerät beginnt, das Papier und wie der Schutz heißt. Vorhandene Geräte bleiben, wie sie sind.
settings-region-none = Keine Angabe
settings-region-facts = Was dort üblich ist
settings-supply = Übliches Netz
settings-theme = Farben
theme-system = Wie das System
theme-light = Hell
theme-dark = Dunkel
theme-contrast = Hoher Kontrast
settings-language = Sprache
# Jede Sprache heißt, wie sie sich selbst nennt.
language-en = English
language-de = Deutsch
settings-author = Ihr Name
settings-author-why = Steht von jetzt an neben dem, was Sie finden.
settings-demo = Vorführung
settings-first = Einführung zeigen

## Erster Start: drei Bildschirme

first-step = { $step } von { $all }
first-start = Beginnen
first-does-title = Vor dem Einstecken Bescheid wissen
first-does-1 = Beantworten, was Sie sehen. Die App berechnet das Schlimmste, was eine Berührung einem Menschen antun könnte.
first-does-2 = Sie bleibt beim schlimmsten Fall, bis Ihre Beobachtungen ihn ausschließen.
first-does-3 = Sie arbeitet ohne Netzwerk. Nichts verlässt dieses Endgerät.
first-cannot-title = Was sie nicht wissen kann
first-cannot-1 = Sie weiß nur, was Sie gefunden haben. Eine falsche Antwort gibt einen falschen Befund.
first-cannot-2 = Sie betrachtet die Netzseite. Brand, heiße Teile, Anodenspannung im Inneren und unsichtbare Fehler sind nicht geprüft.
first-cannot-3 = Sie ersetzt nie eine Elektrofachkraft, und örtliche Vorschriften gehen vor.
first-unplug-title = Zuerst Stecker ziehen
first-unplug-1 = Den Stecker aus der Steckdose ziehen. Der Schalter genügt nicht.
first-unplug-2 = Den Deckel nur abnehmen, wenn Sie die gespeicherte Ladung abbauen und nachmessen können, dass sie weg ist.
first-unplug-3 = Hat jemand einen Stromschlag bekommen? Dieser Knopf ist auf jedem Bildschirm:

## Jemand hat einen Stromschlag bekommen
# Übliche Erste Hilfe (übliche Praxis, aus dem Gedächtnis, nicht im Druck nachgeprüft).

shocked-button = Stromschlag
shocked-button-long = Stromschlag: Jemand hat einen Stromschlag bekommen
shocked-title = Jemand hat einen Stromschlag bekommen
shocked-1 = Die Person nicht berühren, solange sie noch Kontakt haben kann.
shocked-1-more = Der Strom könnte auch durch Sie fließen. Andere fernhalten.
shocked-2 = An der Steckdose oder am Leitungsschutzschalter abschalten, oder den Stecker ziehen.
shocked-2-more = Geht das nicht: Abstand halten und Notruf wählen. Der Schalter am Gerät genügt nicht.
shocked-3 = Notruf wählen.
shocked-3-more = 112 gilt in Europa und auf vielen Mobiltelefonen, 911 in Nordamerika. Das Telefon auf Lautsprecher stellen. Jemanden einen Defibrillator holen lassen.
shocked-4 = Keine Reaktion und keine normale Atmung? Wiederbelebung beginnen.
shocked-4-more = Sobald der Strom weg ist: Handballen auf die Mitte der Brust, fest und schnell drücken, 5 bis 6 cm tief, 100- bis 120-mal in der Minute. Nicht aufhören, bis Hilfe übernimmt. Schnappatmung ist keine normale Atmung.
shocked-5 = Defibrillator da? Einschalten und tun, was er sagt.
shocked-6 = Wach? Ruhig und warm halten, Verbrennungen mit fließendem Wasser kühlen.
shocked-6-more = Wer einen Stromschlag hatte, sollte zum Arzt, auch wer sich wohlfühlt: Das Herz kann später gestört sein.
shocked-note = Das ist übliche Erste Hilfe, kein Kurs. Tun, was die Notrufstelle sagt.
licences-title = Lizenzen
licences-note = Dieser App und dessen, was andere gemacht haben und darin steckt.
licences-own = Diese App darf unter einer der beiden folgenden Lizenzen, nach Wahl, benutzt, geändert und weitergegeben werden.
licences-others = Was andere gemacht haben
licences-others-what = In dieser App stecken { $count } Pakete anderer. Jedes wird unter der Lizenz benutzt, unter der es steht.
licences-source = Ihr Quelltext ist nach Name und Version zu haben: von Rust-Paketen bei crates.io, von denen der Bildschirme bei npmjs.com.
licences-count =
    { $count ->
        [one] 1 Paket
       *[other] { $count } Pakete
    }
