# Das Bild der Schaltung.

circuit-see = Den Weg des Stroms sehen
circuit-title = Der Weg des Stroms
circuit-no-line = Nichts darin wird aus der Steckdose gespeist, also gibt es von dort keinen Weg für einen Strom.

## Namen im Bild. Es ist wenig Platz: ein Wort oder zwei.

circuit-supply = Netz
circuit-hot = L
circuit-neutral = N
circuit-earth = Erde
# Zwei Wörter: Sie stehen untereinander.
circuit-wired-backwards = falsch gepolt
circuit-other-loads = andere Last
# Vor der Steckdose: ein Transformator mit zwei Wicklungen, oder eine Wicklung mit Abgriff.
circuit-two-windings = zwei Wicklungen
circuit-one-winding = eine Wicklung
# Die Kontakte dahinter: nur über Streukapazität verbunden, am Eingang oder am Abgriff.
circuit-floats = erdfrei
circuit-input = Eingang
circuit-tap = Abgriff
circuit-stray = kapazitiv
circuit-earthed = geerdet
# Ein Fehler: ein Ausgang, der mit Erde verbunden ist.
circuit-to-earth = an Erde
circuit-switch = Schalter
circuit-ground-switch = Masseschalter
# Der Buchstabe der Klasse, in einem Kasten.
circuit-class-y = Y
circuit-chassis = Chassis
circuit-far-leg = Leiter fern
circuit-near-leg = Leiter nah
# $isolation ist, was zwischen Netz und Schaltungsmasse steht.
circuit-load =
    { $isolation ->
        [isolating] Trafo
        [heater_transformer] Trafo
        [autotransformer] eine Wicklung
       *[other] Heizung
    }

## Neben der Hand

circuit-through-body = durch den Körper
# Folgt auf die Spannung. $level ist, was aus ihr wird.
circuit-volts =
    { $level ->
        [behind_barrier] dahinter
        [breaker_trips] am Metall
       *[other] unberührt
    }
# $way ist first oder second.
circuit-for-plug =
    { $way ->
        [first] 1. Lage
       *[second] 2. Lage
    }
# $way ist on oder off.
circuit-for-switch =
    { $way ->
        [on] Schalter ein
       *[off] Schalter aus
    }
# $way ist near oder far.
circuit-for-selector =
    { $way ->
        [near] Leiter nah
       *[far] Leiter fern
    }
circuit-for-faults =
    { $count ->
        [0] vorgefunden
        [one] ein Fehler
       *[other] { $count } Fehler
    }

## Umdrehen und Unterbrechen

circuit-turn-plug = Stecker umdrehen
circuit-turn-contacts = Den Stecker die Kontakte andersherum treffen lassen
circuit-turn-switch = Schalter umlegen
circuit-turn-selector = Masseschalter umlegen
# $way ist first oder second.
circuit-plug-now =
    { $way ->
        [first] Stecker: 1. Lage
       *[second] Stecker: 2. Lage
    }
# $way ist first oder second; der Stecker passt nur auf eine Art, aber hinter einem Transformator ist kein Kontakt der Neutralleiter.
circuit-contacts-now =
    { $way ->
        [first] Kontakte: 1. Lage
       *[second] Kontakte: 2. Lage
    }
# $way ist on oder off.
circuit-switch-now =
    { $way ->
        [on] Schalter: ein
       *[off] Schalter: aus
    }
# $way ist near oder far.
circuit-selector-now =
    { $way ->
        [near] Masseschalter: Leiter nah
       *[far] Masseschalter: Leiter fern
    }
# Ohne einen der gezeigten Fehler.
circuit-class = So gebaut: { $class }.
# $count Fehler sind gezeigt.
circuit-class-with =
    { $count ->
        [one] Sobald es diesen Fehler hätte: { $class }.
       *[other] Sobald es diese Fehler hätte: { $class }.
    }
# $count Lagen; eine davon wird angetippt.
circuit-walk = { $count } Lagen durchgehen, die zeigen, warum
circuit-walk-step = { $number } von { $count }: { $title }
circuit-faults = Eines versagen lassen
circuit-quoted = Zurück zu dem, was der Befund nennt

## Unter dem Bild

circuit-legend = Die dicke Linie ist der Weg des Stroms. Er ist Wechselstrom und kehrt viele Male in der Sekunde um: Die Pfeile zeigen die eine Hälfte davon.
circuit-legend-thin = Die dünne Linie ist der Weg des Stroms, so wenig, dass Sie ihn kaum spüren würden. Er ist Wechselstrom: Die Pfeile zeigen die eine Hälfte davon.
circuit-legend-earth = Die Linie ist der Weg des Stroms über den Schutzleiter, vorbei an jeder Person, die dort steht. Er ist Wechselstrom: Die Pfeile zeigen die eine Hälfte davon.
circuit-legend-trips = Die Linie ist der Weg des Stroms über den Schutzleiter, bis der Leitungsschutzschalter auslöst. Bis dahin steht das Metall unter Spannung, und wer es berührt, ist auch im Stromkreis: die gestrichelte Linie.
circuit-legend-none = Es ist kein Weg gezeichnet: In dieser Lage ist niemand im Stromkreis.
circuit-legend-tape = Die Stifte sind gleich: B ist der mit Klebeband markierte.
circuit-legend-contacts = Der Stecker passt nur auf eine Art. Aber kein Kontakt dieser Steckdose ist der Neutralleiter, also kann jeder von beiden auf die höhere Spannung kommen.
circuit-legend-isolated = Davor steht ein Trenntransformator: zwei Wicklungen, die sich nicht berühren. Nur Streukapazität, gepunktet gezeichnet, führt von der Erde zu ihm zurück.
circuit-legend-auto = Davor steht ein Spartransformator: eine Wicklung mit Abgriff. Nichts darin trennt vom Netz, und beide Kontakte stehen gegen Erde unter Spannung.
circuit-legend-y = Y ist ein Kondensator der Klasse Y.

## Warum er so fließt. Das Chassis ist der Metallrahmen; von der Schaltungsmasse aus zählt die Schaltung ihre Spannungen.

circuit-why-open = Der Schalter ist im Weg des Stroms offen, also kommt so gut wie nichts durch.
circuit-why-stray = Ein blanker Draht liegt am Chassis, dem Metallrahmen. Das Netz gelangt ans Metall, ohne Schalter oder irgendein Bauteil zu passieren.
circuit-why-stray-holds = Ein blanker Draht liegt am Chassis, dem Metallrahmen, und hält es auf der Spannung des Drahts. Die ist nur gerade hier niedrig; sobald der Draht am Außenleiter ist, steht das Metall unter Spannung.
circuit-why-short = Der blanke Draht und der Leiter, mit dem das Chassis, der Metallrahmen, verbunden ist, bilden einen Kurzschluss. Eine Sicherung oder ein Leitungsschutzschalter kann ihn beenden; bis dahin steht das Metall unter Spannung.
circuit-why-shorted = Ein Kondensator, der das Netz zurückhielt, hat versagt und ist jetzt so gut wie ein Draht.
circuit-why-capacitor = Ein Kondensator verbindet das Netz mit dem Chassis, dem Metallrahmen. Er lässt ständig Wechselstrom durch.
circuit-why-aerial = Die Antennenklemme hängt über einen Kondensator an der Schaltung. Er lässt ständig Wechselstrom durch.
circuit-why-common = Dieses Metall ist Teil der Schaltung selbst, und die Schaltung liegt am Netz.
circuit-why-network = Ein Widerstand und ein Kondensator verbinden die Schaltung mit dem Chassis, dem Metallrahmen. Sie halten das Netz zurück, aber nicht ganz.
circuit-why-trace = Das Netz liegt nur nahe am Chassis, dem Metallrahmen. Eine Spur Wechselstrom geht trotzdem hinüber.
circuit-why-broken-down = Die Isolation, die das Netz vom Chassis, dem Metallrahmen, fernhielt, lässt es durch.
circuit-why-rectified = Der Gleichrichter verbindet das Chassis, den Metallrahmen, abwechselnd mit dem einen und dem anderen Leiter. Also steht das Metall unter Spannung, egal wie herum der Stecker steckt.
circuit-why-pulled-earthed = Der Neutralleiter ist im Netz unterbrochen. Der Strom der anderen Lasten fließt über dieses Chassis und dessen Schutzleiter zurück, der das Metall nahe an Erde hält, solange er hält.
circuit-why-pulled = Der Neutralleiter ist im Netz unterbrochen. Andere Lasten ziehen, was hinter der Unterbrechung liegt, auf die Spannung des Außenleiters, und das Metall mit.
circuit-why-hot = Der Außenleiter (L) liegt an dem Leiter, mit dem das Chassis, der Metallrahmen, verbunden ist. Nichts steht zwischen Steckdose und Hand.
circuit-why-neutral = Das Chassis, der Metallrahmen, ist mit dem Leiter verbunden, der am Neutralleiter liegt. Der Neutralleiter liegt nahe an Erde, also fließt nur eine Spur.
circuit-why-isolated = Kein Draht führt zum Transformator davor zurück. Nur die Streukapazität seiner Wicklungen tut es, also kommt wenig durch.
circuit-why-feed-earthed = Ein Ausgang des Transformators davor ist mit Erde verbunden. Also steht der andere so unter Spannung wie der Außenleiter einer Steckdose, und die Trennung ist dahin.
circuit-why-feed-earthed-low = Das Chassis, der Metallrahmen, liegt am Ausgang, der mit Erde verbunden ist, also fließt nur eine Spur. Andersherum steht es unter Spannung.
circuit-why-input = Das Chassis, der Metallrahmen, liegt an dem Kontakt, der mit dem Eingang des Abwärtstransformators verbunden ist. Es liegt gegen Erde an dessen voller Spannung.
circuit-why-tap = Das Chassis, der Metallrahmen, liegt am Abgriff des Abwärtstransformators. Der Abgriff liegt nicht an Erde: Er steht mit der übrigen Wicklung unter Spannung.
circuit-why-load = Das Chassis ist vom Neutralleiter abgeschnitten, und die Spannung des Außenleiters erreicht es vom anderen Leiter her über das, was zwischen beiden liegt.
