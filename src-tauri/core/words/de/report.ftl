# Der gedruckte Bericht, der Anhänger, der Text für eine Nachricht und die Liste aller Geräte.

report-title = { $label } { $name }: Prüfung vor dem Einstecken
report-running = { $label } { $name }
report-foot = Örtliche Vorschriften und befugte Fachleute gehen vor. Hier steht, was gefunden und berechnet wurde, nicht, dass nichts geschehen kann.
report-page-before = Seite{" "}
report-page-between = {" "}von{" "}
report-creator = Cold Chassis { $version }
report-demo = Ein erfundenes Gerät der Vorführung.

report-now = Was jetzt getan werden darf
report-current-of = durch die Person, die es berührt. { $state } { $supply }
report-found = Was gefunden wurde
report-found-question = Frage
report-found-answer = Gefunden
report-found-by = Von
report-found-when = Wann (UTC)
report-photos = Fotos
report-photo-unnamed = Foto { $number }
report-grid = Lage um Lage
report-grid-fault = Jeweils eines
report-grid-cell = { $figure } { $word }
report-circuit = Der Weg des Stroms
report-chart = Strom und Zeit
report-repair = Was die gewählte Reparatur ändert
report-repair-step = Schritt
report-repair-after = Danach
report-repair-worse = Schlechter
report-before = Vorher: { $line }
report-remaining = Was es noch unter Spannung setzt
report-no-repair = Es wurde keine Reparatur gewählt.
report-shortest = Der kürzeste Weg: { $line }
report-parts = Teile
report-parts-what = Teil
report-parts-size = Größe
report-parts-notes = Zu beachten
report-proof = Nachweis der Reparatur
report-proof-line = Nachzuweisen
report-proof-limit = Grenzwert
report-proof-entered = Eingegeben
report-proof-mark = Ergibt
report-compared = Vergleich mit der ersten Prüfung
report-could-be = Was es noch sein könnte
report-rests-on = Worauf der Befund beruht
report-conflicts = Was nicht alles zutreffen kann
report-next = Weiter
report-not-checked = Was nicht geprüft wurde
report-basis = Woher die Werte kommen
report-engine = Berechnet von Version { $version }. { $count ->
    [one] Eine Anordnung ist
   *[other] { $count } Anordnungen sind
 } noch möglich.
report-when = Geprüft { $began } UTC. Geschrieben { $made } UTC.
report-later = Eine spätere Prüfung vom { $when } UTC findet: { $class }. Diese hier gilt vielleicht nicht mehr.
report-made = { $date } UTC. { $creator }
report-signature = Geprüft von
report-none = nichts

report-list-label = Gerät
report-list-name = Name
report-list-place = Ort
report-list-kind = Art
report-list-class = Klasse
report-list-basis = Grundlage
report-basis-shown = nachgewiesen
report-basis-not_ruled_out = nicht ausgeschlossen
report-list-changed = Zuletzt geändert (UTC)
report-list-state = Stand
report-list-since = Seit (UTC)
report-list-by = Gesetzt von

report-file = { $label } { $what }
report-file-report = Bericht
report-file-tag = Anhänger
report-file-tags = Anhänger
report-file-list = Geräte

takes-drawing = verlangt eine Zeichnung als SVG mit höchstens { $most } Zeichen
takes-units = verlangt 1 bis { $most } Geräte, die geprüft wurden
takes-inspected = verlangt Geräte, die geprüft wurden; { $unit } wurde nie geprüft. Auslassen oder zuerst prüfen
error-report = Das Dokument ließ sich nicht erstellen: { $why }
report-repair-unfit = Die gewählte Reparatur passt nicht zu dem, was seither gefunden wurde. { $why } Neu wählen.
