# Was eine Reparatur ändern würde, und die Folge, die zusammengestellt wird. Was jede Reparatur ist und tut, kommt aus dem Kern.

repairs-see = Was eine Reparatur ändern würde
repairs-title = Was eine Reparatur ändern würde
repairs-looking = Es wird berechnet …
repairs-no-line = Nichts darin wird aus der Steckdose gespeist, also gibt es hier nichts gegen Stromschlag zu reparieren.
repairs-disagree = Einige Beobachtungen können nicht alle zutreffen. Das zuerst klären: Was hier steht, ist über alles beurteilt, was irgendeine davon offenlässt.
repairs-to-conflict = Den Widerspruch ansehen
repairs-now = Jetziger Stand
repairs-shortest = Kürzester Weg zu „Zwei Fehler“
repairs-in-unit = Der kürzeste, der am Gerät bleibt
repairs-take = Diesen Weg als Folge nehmen
repairs-take-in-unit = Den Weg nehmen, der am Gerät bleibt
repairs-each = Jede für sich
repairs-each-why = Als wäre sie die einzige, vom jetzigen Stand des Geräts aus. Mehrere zu einer Folge zusammenstellen, um zu sehen, was sie zusammen bewirken.
repairs-idle =
    { $count ->
        [one] Eine, die keinen Berührungsstrom ändert
       *[other] { $count }, die keinen Berührungsstrom ändern
    }
repairs-refused =
    { $count ->
        [one] Eine, die nicht angeboten wird, und warum
       *[other] { $count }, die nicht angeboten werden, und warum
    }
repairs-last = Vor dem Beginn und danach
repairs-costs-are = Minuten und Preise nach üblicher Praxis und nur grob; Preise in US-Dollar oder Euro.

# Die Tabelle von Vorher und Nachher. Die kurzen Klassenwörter kommen aus dem Kern.
repairs-before = Vorher
repairs-after = Nachher
repairs-becomes = wird zu
repairs-class = Klasse
repairs-margin = Fehler bis zur Spannung
repairs-margin-of =
    { $margin ->
        [0] keiner
        [1] einer
        [2] zwei
       *[other] drei oder mehr
    }
repairs-worst = Schlimmstenfalls
repairs-as-found = Wie vorgefunden
repairs-same = bleibt so: schlimmstenfalls { $worst }, wie vorgefunden { $found }.
repairs-worse = Das macht etwas schlechter.
repairs-none = Das ändert keinen Berührungsstrom.
repairs-on-earth = Eine Lage legt das Netz auf den Schutzleiter: Das Gerät steht unter Spannung, wie groß diese Ströme auch sind.
repairs-not = Was sie nicht tut:
repairs-remains = Was danach bleibt
repairs-now-remains = Was dafür genügt
repairs-of-worst = Was jetzt das Schlimmste ist, für sich:
repairs-in-shortest = ein Schritt des kürzesten Wegs
repairs-minutes = etwa { $minutes } min
repairs-price = Teile etwa { $price } Dollar oder Euro
repairs-free = keine Teile

repairs-add = Zur Folge hinzu
repairs-add-what = Zur Folge hinzu: { $what }
repairs-added = In Ihrer Folge
repairs-stack-see =
    { $count ->
        [one] Ihre Folge: ein Schritt
       *[other] Ihre Folge: { $count } Schritte
    }
repairs-chosen-see =
    { $count ->
        [one] Ihre gewählte Reparatur: ein Schritt
       *[other] Ihre gewählte Reparatur: { $count } Schritte
    }

## Die Folge

repairs-stack = Reparaturen der Reihe nach
repairs-stack-empty = Noch ist nichts in der Folge. Den ersten Schritt unten hinzufügen.
repairs-steps = Schritte
repairs-step = Schritt { $number }
repairs-out = Entfernen
repairs-out-what = Entfernen: { $what }
repairs-whole = Alles zusammen
repairs-next = Was folgen kann
repairs-first = Womit beginnen
repairs-next-why = Was jede nach den Schritten oben bewirkt.
repairs-next-none = Mehr wird nicht angeboten.
repairs-choose = Als Reparatur wählen
repairs-chosen = Das ist die Reparatur, die Sie gewählt haben.
repairs-unchoose = Wahl zurücknehmen
repairs-another-chosen =
    { $count ->
        [one] Eine andere Folge ist gewählt, mit einem Schritt.
       *[other] Eine andere Folge ist gewählt, mit { $count } Schritten.
    }
repairs-show-chosen = Zeigen
# $why setzt nach dem Namen fort: „wird dort nicht angeboten: …“
repairs-refused-step = „{ $step }“ { $why }
repairs-nothing-done = Noch ist nichts getan und nichts nachgewiesen: Das sind Werte für das Gerät, sobald es so repariert ist.
repairs-see-grid = Vorher und nachher, Fehler um Fehler
repairs-see-circuit = Vorher und nachher in der Schaltung
repairs-see-parts = Teile zu kaufen
repairs-see-proof = Reparatur nachweisen
repairs-see-proof-note = Was danach zu messen ist, Punkt um Punkt
repairs-to-stack = Zur Folge
repairs-to-list = Zu allen Reparaturen
repairs-to-dropper = Vorschaltung für die Heizung bemessen: Widerstand, Kondensator oder Diode

## Teile

repairs-parts = Teile zu kaufen
repairs-parts-none = Diese Folge braucht keine Teile.
repairs-parts-no-stack = Nichts ist in der Folge, also ist nichts zu kaufen.
repairs-parts-how = Wie, und worauf zu achten ist
repairs-parts-for = für: { $step }
repairs-parts-figures = Jede Größe ist aus dem berechnet, was über Gerät und Netz bekannt ist. Die Angabe auf dem alten Teil geht vor, wo es das richtige ist.
repairs-limit = Klasse Y für einen Berührungsstrom von höchstens
repairs-limit-why = Bei der höchsten Netzspannung. Je kleiner der Grenzwert, desto kleiner der Kondensator.
repairs-limit-of = { $limit } mA
repairs-limit-0_25 = ohne Schutzleiter, Schutzklasse II (IEC 60335-1, wie zitiert)
repairs-limit-0_5 = zweiadrig (UL 101, wie zitiert)
repairs-limit-0_75 = ortsveränderlich, mit Schutzleiter (IEC 60335-1, wie zitiert)
repairs-limit-other = wie früher gewählt

## Vorher und nachher

repairs-grid = Vorher und nachher, Fehler um Fehler
repairs-circuit = Vorher und nachher in der Schaltung
repairs-quoted = der schlimmste, der bliebe
repairs-side = Was gezeigt wird
# Vorgelesen, wenn eine andere Lage angesehen wird.
repairs-side-says = { $side }: { $what }.
repairs-not-there = einen solchen Fehler gibt es nicht
repairs-plug-fixed = Nachher passt der Stecker nur auf eine Art, also wird es so gezeigt.
repairs-plug-fixed-before = Vorher passt der Stecker nur auf eine Art, also wird es so gezeigt.
repairs-fault-gone = Was hier versagt, gibt es nachher nicht, also ist Nachher ohne diesen Fehler gezeigt.
repairs-fault-new = Was hier versagt, gibt es vorher nicht, also ist Vorher ohne diesen Fehler gezeigt.
repairs-only-before = nur vorher
repairs-only-after = nur nachher
repairs-worst-before = Schlimmster vorher
repairs-worst-after = Schlimmster nachher
repairs-no-picture = Nichts darin wird aus der Steckdose gespeist, also ist keine Schaltung zu zeigen.
repairs-between = Zwischen beiden: { $steps }
repairs-stack-empty-between = Noch ist nichts in der Folge, also sind Vorher und Nachher gleich.
