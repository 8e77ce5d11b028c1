# Die Warteschlange am Eingang. Stände und Klassen sind Wörter des Kerns.

queue = Warteschlange
# In der Liste der Geräte: wie viele in welchem Stand, das Dringendste zuerst.
queue-of-state = { $state } { $units }
queue-and = { $before } · { $after }
queue-title = Warteschlange
queue-here = Im Haus
queue-by-state = Nach Stand
queue-by-class = Nach Klasse
queue-by-class-why = Nach Klasse, ohne die zurückgegebenen
queue-search = Warteschlange durchsuchen
queue-search-hint = Name, Notiz, Röhre, Beobachtung
queue-search-more = Mindestens zwei Buchstaben.
queue-order = Reihenfolge
queue-worst = Schlimmste
queue-newest = Neueste
queue-reading = Die Warteschlange wird gelesen…
queue-reading-more = Weitere werden gelesen…
queue-again = Erneut versuchen
queue-found =
    { $count ->
        [one] Ein Gerät
       *[other] { $count } Geräte
    }
queue-found-more = { $count } oder mehr
# Unter der Suche zu lesen: Sie sieht weiter als die Liste.
queue-everywhere = Gesucht in allen Geräten, auch den zurückgegebenen.
queue-unit = { $label } { $name }
queue-when-by = { $when }, { $who }
queue-nobody-said = Noch hat niemand gesagt, wie weit es ist.

queue-filters = Filter
queue-select = Auswählen
queue-list = Liste als CSV
queue-filter-off = Entfernen: { $filter }
queue-filters-clear = Filter entfernen

## Leer

queue-empty-title = Noch nichts einzureihen
queue-empty-text = Ein Gerät, das hereinkommt, steht hier, bis es zurückgegeben ist, das schlimmste zuoberst.
# Nimmt Filter und Text weg.
queue-clear = Suche und Filter leeren
queue-none-here = Nichts ist im Haus. Alle Geräte wurden zurückgegeben.
queue-none-state = Nichts ist in diesem Stand: { $state }.
queue-none-fits = Kein Gerät passt zu diesen Filtern.
queue-none-found-filters = Nichts passt mit diesen Filtern zu „{ $text }“.

## Filter

queue-filters-title = Filter
queue-filters-why = Von jeder Art genügt eines der angekreuzten.
queue-filter-states = Stand
queue-filter-states-why = Nichts angekreuzt: alle, die im Haus sind.
queue-filter-classes = Klasse
queue-filter-bases = Wie es bekannt ist
queue-filter-overlays = Warnhinweise
queue-filter-overlays-why = Nur Geräte mit allen angekreuzten.
queue-filter-places = Ort
queue-filter-places-find = Ort suchen
queue-filter-places-none = Noch ist kein Ort aufgeschrieben.
queue-filter-places-more =
    { $count ->
        [one] Noch ein Ort: einen Teil seines Namens eingeben.
       *[other] Noch { $count } Orte: einen Teil eines Namens eingeben.
    }
queue-filter-kinds = Art
queue-filter-came = Annahme
queue-filter-from = Von
queue-filter-to = Bis
queue-filter-turned = Der erste Tag liegt nach dem letzten.
queue-since = Von { $day }
queue-until = Bis { $day }
queue-basis-shown = Nachgewiesen
queue-basis-not_ruled_out = Nicht ausgeschlossen
queue-show =
    { $count ->
        [0] Nichts passt
        [one] Ein Gerät zeigen
       *[other] { $count } Geräte zeigen
    }
queue-show-more = { $count } oder mehr Geräte zeigen

## Warnhinweise, in zwei oder drei Wörtern

queue-forbids = Nicht in Betrieb nehmen: { $cautions }
queue-overlay-live_inside = Spannung unter Knopf, Rückwand
queue-overlay-line_on_earth = Netz am Schutzleiter
queue-overlay-prove_outlet = Steckdose prüfen lassen
queue-overlay-earth_carries_leakage = Ableitstrom im Schutzleiter
queue-overlay-aerial_terminal = Antennenklemme
queue-overlay-b_plus_on_terminals = Anodenspannung an Klemmen
queue-overlay-resistance_cord = Widerstandskabel
queue-overlay-damaged_cord = Kabel schadhaft
queue-overlay-aged_cord = Altes Kabel
queue-overlay-no_fuse = Keine Sicherung
queue-overlay-fuse_in_common_leg = Sicherung auf Masseseite
queue-overlay-accessory_outlet = Steckdose am Gerät
queue-overlay-filter_capacitors = Siebkondensator defekt
queue-overlay-stored_charge = Gespeicherte Ladung
queue-overlay-asbestos = Asbest
queue-overlay-selenium = Selengleichrichter
queue-overlay-pcb = PCB
queue-overlay-radium = Radiumskala
queue-overlay-wrong_supply = Anderes Netz

## Der Stand eines Geräts oder mehrerer

queue-state-title = Wie weit ist es?
queue-state = Stand
queue-look = Ansehen
queue-look-verdict = Befund und Beobachtungen
queue-look-new = Prüfen
unit-delete = Dieses Gerät löschen
unit-delete-what = Alles, was daran gefunden wurde, verschwindet endgültig, mit den Fotos und den älteren Sicherungskopien. Auch wo Ihr nächstes Bündel eingelesen wird, ist es weg. Das lässt sich nicht rückgängig machen.
unit-delete-now = { $label } endgültig löschen
queue-gone = Dieses Gerät ist nicht in der Warteschlange
queue-to-queue = Zur Warteschlange
queue-who = Noch steht kein Name neben den Änderungen.
queue-who-add = Ihren angeben
queue-who-why = Ihr Name steht von jetzt an neben jeder Änderung. Gefragt wird nur einmal; er steht auch in den Einstellungen.
queue-who-later = Ohne weitermachen
queue-was-set = { $unit }: { $state }.
queue-were-set = { $count } Geräte: { $state }.
queue-was-undone = { $unit } steht wieder wie vorher: { $state }.
queue-were-undone = { $count } Geräte stehen wieder wie vorher.
queue-doing = { $done } von { $of }
queue-refused-one = Nicht gesetzt: { $state }
queue-refused =
    { $count ->
        [one] Bei einem Gerät nicht gesetzt: { $state }
       *[other] Bei { $count } Geräten nicht gesetzt: { $state }
    }
queue-to-proof = Zum Nachweis von { $label }

## Mehrere auf einmal

queue-picked =
    { $count ->
        [0] Nichts ausgewählt
        [one] Eines ausgewählt
       *[other] { $count } ausgewählt
    }
queue-pick-hint = Geräte ankreuzen, um mit allen zugleich etwas zu tun.
queue-pick-all = Alle { $count } der Liste
queue-pick-none = Keine
queue-pick-done = Fertig
queue-pick-stop = Auswahl beenden
queue-pick-go = Weiter
queue-picked-title =
    { $count ->
        [one] Ein Gerät
       *[other] { $count } Geräte
    }
queue-picked-nothing = Nichts ist ausgewählt.
queue-picked-which = Welche
queue-picked-state = Stand aller
queue-picked-tags = Anhänger für die Netzkabel
queue-picked-tags-give = Anhänger machen
queue-picked-bundle = Bündel
queue-picked-bundle-what = Alles, was über sie bekannt ist, mit Fotos, in einer Datei für ein anderes Endgerät.
queue-picked-bundle-give = Bündel speichern
queue-filter-places-many = Mehr als { $count } weitere Orte: einen Teil des Namens eingeben.
queue-were-set-stopped =
    { $count ->
        [one] Ein Gerät: { $state }. Wie zuvor gelassen: { $left }.
       *[other] { $count } Geräte: { $state }. Wie zuvor gelassen: { $left }.
    }
queue-stop = Anhalten
