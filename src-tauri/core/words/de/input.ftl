# Was ein Feld einer Eingabedatei verlangt, wenn das Angegebene nicht passt. Jede Meldung steht nach dem
# Namen des Felds: „answers.plug: verlangt eines von …“.

error-field = { $field }: { $takes }

takes-an-object = verlangt ein Objekt mit benannten Feldern
takes-required = fehlt und muss angegeben werden
takes-known-keys = ist hier kein Feld; die Felder sind { $keys }
takes-one-of = verlangt eines von { $ids }
takes-marks = verlangt eine Liste von höchstens { $most } Markierungen
takes-two-places = verlangt zwei verschiedene Stellen
takes-points = verlangt { $count } Punkte, jeder ein Paar von Zahlen von 0 bis 1
takes-other-photo = verlangt ein anderes Foto dieser Prüfung oder nichts
takes-each-photo-once = verlangt jedes Foto dieser Prüfung, jedes einmal
takes-state-of-arrangement = verlangt eine Lage von Stecker, Schalter und Masseschalter, die dieses Gerät haben kann
takes-list-of = verlangt eine Liste von { $ids }
takes-some-of = verlangt eine Liste von einem oder mehreren von { $ids }, oder "cant_tell"
takes-alone = erlaubt { $id } nur, wenn sonst nichts in der Liste steht
takes-number-from-to = verlangt eine Zahl von { $low } bis { $high }
takes-positive-below = verlangt eine Zahl über 0 und unter { $bound }
takes-whole-number = verlangt eine ganze Zahl von 0 bis { $high }
takes-true-or-false = verlangt true oder false
takes-true = verlangt true oder wird weggelassen
takes-tubes-elsewhere = erlaubt nur "cant_tell"; eine Liste von Röhren kommt in das Feld tubes
takes-tube-types = verlangt eine Liste von höchstens { $high } Röhrentypen, jeder ein Text von 1 bis 40 Zeichen
takes-ohms-or-ol = verlangt eine Zahl in Ohm, 0 oder mehr, oder "OL" über dem Bereich des Messgeräts
takes-no-direct-current = Gleichstrom ist nicht vorgesehen: Ein Netz hat 15 bis 400 Hertz
takes-only-with-step-down = gehört nur zu einer Speisung step_down_auto
takes-possible-near_pin = verlangt b, wo isolation isolating ist
takes-possible-line_capacitor = verlangt none, wo isolation keinen Netzkondensator hat
takes-possible-line_capacitor_class = verlangt ordinary, wo es keinen Netzkondensator gibt
takes-possible-reach = erlaubt common_exposed nur mit line_floated oder line_insulated
takes-utf8 = verlangt Text in UTF-8
takes-json-object = ist leer; verlangt ein JSON-Objekt
takes-valid-json = verlangt gültiges JSON; es bricht ab in Zeile { $line }, Spalte { $column }
takes-once = ist zweimal angegeben; ein Feld nimmt einen Wert
takes-readable-file = verlangt eine lesbare Datei
takes-regular-file = verlangt eine Datei oder eine Pipe, kein Verzeichnis
takes-at-most-bytes = verlangt höchstens { $high } Bytes

list-pair = { $list }, { $next }
list-last = { $list } und { $next }
fault-none = kein Fehler
not-checked-metal = ob das blanke Metall am Chassis liegt oder an etwas Schlimmerem
takes-offered-step = wird dort nicht angeboten: { $why }
takes-holds = verlangt, ob es zutrifft: true oder false
takes-reading-of-line = verlangt, was das Messgerät zeigt, oder dass es über seinem Bereich ist
takes-positions-of-line = verlangt einen Messwert für jede Lage von Stecker und Schalter
