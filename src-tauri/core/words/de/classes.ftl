# Der Befund in Worten: Klassen, Grundlage, Gründe, Schwere, was jetzt getan werden darf, und in welchen Lagen es gilt.
# Variablen kommen fertig geschrieben, mit Einheit: $current, $leak.
# 0,5 mA (UL 101, wie im Druck zitiert) und 5 mA (Untersuchungen zum Loslassen, wie im Druck wiedergegeben) sind die
# Grenzen der Klassen; sie stehen in limits.csv, und die Worte müssen sich mit ihnen ändern.

## Namen der Klassen

class-live = Unter Spannung wie vorgefunden
class-leaky = Ableitstrom wie vorgefunden, ein Fehler bis zur Spannung
class-one_fault = Ein Fehler bis zur Spannung
class-two_faults = Zwei Fehler bis zur Spannung
class-no_line = Keine Netzspannung im Inneren

## Ein oder zwei Wörter für eine Liste

class-live-short = Unter Spannung
class-leaky-short = Ableit{ "\u00AD" }strom
class-one_fault-short = Ein Fehler
class-two_faults-short = Zwei Fehler
class-no_line-short = Kein Netz

## Dasselbe in einem Satz, meist nach einem Doppelpunkt: Das füllt unten $class

class-live-inline = unter Spannung wie vorgefunden
class-leaky-inline = Ableitstrom wie vorgefunden, ein Fehler bis zur Spannung
class-one_fault-inline = ein Fehler bis zur Spannung
class-two_faults-inline = zwei Fehler bis zur Spannung
class-no_line-inline = ohne Netzspannung

## Signalwörter (ANSI Z535.4, ISO 3864)

signal-danger = GEFAHR
signal-warning = WARNUNG
signal-notice = HINWEIS

## Grundlage, wie der Anhänger sie druckt

tag-live-shown = Unter Spannung: nachgewiesen
tag-live-not_ruled_out = Behandeln als „unter Spannung“: nicht ausgeschlossen
tag-leaky-shown = Ableitstrom, ein Fehler bis zur Spannung: nachgewiesen
tag-leaky-not_ruled_out = Behandeln als „Ableitstrom, ein Fehler bis zur Spannung“: nicht ausgeschlossen
tag-one_fault-shown = Ein Fehler bis zur Spannung: nachgewiesen
tag-one_fault-not_ruled_out = Behandeln als „ein Fehler bis zur Spannung“: nicht ausgeschlossen
tag-two_faults-shown = Zwei Fehler bis zur Spannung: nachgewiesen
tag-two_faults-not_ruled_out = Behandeln als „zwei Fehler bis zur Spannung“: nicht ausgeschlossen
tag-no_line-shown = Keine Netzspannung im Inneren: nachgewiesen
tag-no_line-not_ruled_out = Keine Netzspannung im Inneren: nicht nachgewiesen

## Warum. „Bekäme“ und „würde“, wo die Klasse nachgewiesen ist; „könnte“, wo sie nicht ausgeschlossen ist.
## $plug ist eine Meldung state-plug, $switch eine state-switch, $fault eine fault.

reason-live-found = Wer das Metall berührt, bekäme { $current } durch den Körper. Stecker: { $plug }; Schalter: { $switch }.
reason-live-not_ruled_out = Noch möglich: Wer das Metall berührt, könnte { $current } durch den Körper bekommen. Stecker: { $plug }; Schalter: { $switch }.
reason-leaky = Wer das Metall berührt, bekäme { $leak }, so wie es jetzt ist. Ein Fehler erhöht das auf { $current }: { $fault }.
reason-leaky-not_ruled_out = Noch möglich: Wer das Metall berührt, könnte { $leak } bekommen, so wie es jetzt ist, und { $current } nach einem Fehler: { $fault }.
reason-one_fault = Ein Fehler würde { $current } durch eine Person schicken, die das Metall berührt: { $fault }.
reason-one_fault-not_ruled_out = Noch möglich: Ein Fehler könnte { $current } durch eine Person schicken, die das Metall berührt: { $fault }.
reason-two_faults = Kein hier gezählter einzelner Fehler bringt 5 mA an eine Person. Zwei zusammen brächten { $current }: { $fault }.
reason-two_faults-not_ruled_out = Ihre Beobachtungen lassen keinen einzelnen Fehler übrig, der 5 mA an eine Person bringt. Zwei zusammen könnten noch { $current } bringen: { $fault }.
reason-three_faults = Kein hier gezählter einzelner Fehler und keine zwei zusammen bringen 5 mA an eine Person. Die zwei schlimmsten brächten { $current }: { $fault }.
reason-three_faults-not_ruled_out = Ihre Beobachtungen lassen keinen einzelnen Fehler und keine zwei zusammen übrig, die 5 mA an eine Person bringen. Die zwei schlimmsten könnten { $current } bringen: { $fault }.
reason-line_on_earth = Im Inneren ist ein Netzleiter mit dem Schutzleiter verbunden. Das zählt als unter Spannung, wie groß der Berührungsstrom auch ist: Eingesteckt löst es den Leitungsschutzschalter aus oder schickt Strom über den Schutzleiter, und geht die Erde verloren, kann das Metall unter Spannung stehen.
reason-line_on_earth-not_ruled_out = Noch möglich: Im Inneren ist ein Netzleiter mit dem Schutzleiter verbunden. Das zählt als unter Spannung, wie groß der Berührungsstrom auch ist: Eingesteckt könnte es den Leitungsschutzschalter auslösen oder Strom über den Schutzleiter schicken, und geht die Erde verloren, kann das Metall unter Spannung stehen.
reason-no_line = Es gibt kein Netzkabel und keinen Netzeingang: Nichts im Inneren wird aus der Steckdose gespeist. Eine Anodenbatterie kann trotzdem einen Stromschlag geben.
reason-no_line-outside = Es wird von einem externen Netzteil gespeist und hat daher keine eigene Netzseite. Was dieses Netzteil vom Netz durchlässt, wurde hier nicht beurteilt: Es ist ein eigenes Gerät.
reason-no_line-found = Kein Kabel zur Steckdose und kein Netzeingang wurden gesehen, aber etwas, das gefunden wurde, gehört zu einem Gerät mit Netzkabel: Eine der Beobachtungen ist falsch.
reason-no_line-plate = Kein Netzkabel und kein Netzeingang wurden gesehen, aber das Typenschild nennt eine Speisung aus der Steckdose: Eines von beiden ist falsch, oder das Gerät wurde umgebaut.
reason-no_line-plate-unread = Kein Netzkabel und kein Netzeingang wurden gesehen, aber niemand hat das Typenschild gelesen: Diese eine Antwort ist alles, was es gibt.
reason-no_line-cord = Was im Inneren gefunden wurde, passt nur zu einem Gerät, das nichts aus der Steckdose speist. Aber niemand hat gesehen, dass es nie ein Netzkabel oder einen Netzeingang hatte; eine falsche Antwort kann also ausgeschlossen haben, was es wirklich ist.
reason-behind-barrier = Nichts, was mit der Schaltung verbunden ist, lässt sich jetzt berühren. Nur Knöpfe, Rückwand und Abdeckungen halten { $current } von Ihnen fern.
reason-breaker-trips = In dieser Lage fließt so viel Strom zur Erde, dass der Leitungsschutzschalter auslöst.
reason-nothing-answered = Noch ist nichts beantwortet, also ist das Schlimmste noch möglich.

## Was ein Berührungsstrom einem Menschen antut

severity-below = Unter 0,5 mA: für die meisten Menschen höchstens ein schwaches Kribbeln.
severity-startle = 0,5 bis 5 mA: Sie spüren es und zucken zusammen. Dabei können Sie etwas fallen lassen oder stürzen.
severity-let_go = 5 mA oder mehr: Es schmerzt, und Ihre Hände lassen vielleicht nicht los.
severity-fibrillation = Es kann das Herz zum Stillstand bringen, und Ihre Hände lassen vielleicht nicht los.

## Was jetzt getan werden darf

permission-live-shown = Nicht einstecken. Von einer Elektrofachkraft reparieren lassen oder stehen lassen.
permission-live-not_ruled_out = Nicht einstecken. Zuerst nachsehen oder messen.
permission-leaky = Nicht mit der Hand berühren, solange es eingesteckt ist. Nur an der Werkbank, hinter { -a-guard-short } oder einem geprüften Trenntransformator, durch eine Elektrofachkraft.
permission-one_fault = Nur solange jemand dabeibleibt, hinter { -a-guard-short } und ohne geerdetes Gerät in der anderen Hand. Nach Gebrauch den Stecker ziehen.
permission-two_faults = Eine geprüfte Steckdose benutzen. Netzkabel, Stecker, Schutzleiter und Abdeckungen jedes Jahr neu prüfen.
permission-no_line = Nichts darin wird aus der Steckdose gespeist. Die Batterie prüfen, oder das Netzteil als eigenes Gerät.
permission-cautions-first = Nicht in Betrieb nehmen, bis dies erledigt ist: { $cautions }.
permission-conflict = Nicht einstecken, bis die Beobachtungen, die nicht alle zutreffen können, geklärt sind.
permission-tingle = Nicht in Betrieb nehmen, bis gefunden ist, warum jemand ein Kribbeln gespürt hat: Durch einen Menschen ist schon Strom geflossen.
permission-leak = Nicht in Betrieb nehmen, bis die Ursache gefunden ist: Der niedrigste Messwert von einem Netzstift zum Metall lässt allein schon { $current } durch.
permission-leak-wire = Nicht in Betrieb nehmen, bis die Ursache gefunden ist: Von einem Netzstift zum Metall zeigt das Messgerät so gut wie eine Drahtverbindung.
permission-touch_test = Nicht benutzen: Die Berührungsstromprüfung liegt über ihrem Grenzwert von 0,75 V. Eine Elektrofachkraft muss herausfinden, warum.
permission-touch_tripped = Nicht benutzen: Beim Einstecken hat der Schutz ausgelöst. Eine Elektrofachkraft muss herausfinden, warum.
permission-touch_stopped = Nicht benutzen: Ein Messgerät hat an seinem Metall mehr als 30 V gezeigt, und nichts hat das entkräftet.
permission-insulation_unearthed = Nicht in Betrieb nehmen: Die Isolation liegt unter den 2 MΩ, die ein Gerät ohne Schutzleiter erreichen muss. Eine Elektrofachkraft muss herausfinden, warum.
permission-insulation = Nicht in Betrieb nehmen: Die Isolation liegt unter 1 MΩ. Eine Elektrofachkraft muss herausfinden, warum.
permission-doubt-untraced = Nicht einstecken, bis geklärt ist, womit das blanke Metall verbunden ist: Ist es die Schaltung selbst, ist dieses Gerät schlimmer, als es aussieht.
permission-doubt-cord = Nicht einstecken: Eine falsche Antwort kann eine Netzseite verbergen. Nochmals ansehen, was im Inneren gefunden wurde.
permission-doubt-line = Nicht einstecken und an nichts anschließen: Etwas, das gefunden wurde, gehört zu einem Netzkabel, also ist eine der Beobachtungen falsch.
permission-doubt-plate = Nicht einstecken und an nichts anschließen: Das Typenschild nennt eine Speisung aus der Steckdose, also kann ein Netzkabel oder ein Netzeingang übersehen oder entfernt worden sein.
permission-doubt-plate-unread = Nicht einstecken und an nichts anschließen, bis jemand das Typenschild gelesen hat: Ein Netzkabel oder ein Netzeingang kann übersehen worden sein.
permission-doubt-pin = Nicht einstecken: Niemand hat den Schutzkontakt gesehen, an den der Schutzleiter geht. Wer den Stecker anbringt, entscheidet, ob das Metall geerdet ist; dann muss es angesehen und gemessen werden.
permission-doubt-aerial = Nicht einstecken: Die Antennen- oder Erdklemme gibt mehr ab als das Metall, das gefunden wurde, und die Klasse ist die des Metalls.
permission-doubt-aerial-unseen = Nicht einstecken, bis jemand nachgesehen hat, ob es eine Antennen- oder Erdklemme hat: Eine solche könnte mehr abgeben als das Metall, das gefunden wurde.
permission-doubt-lift = Nicht einstecken, bis Sie wissen, ob ein Schalter daran die Erde trennt: Eine Stellung eines solchen Schalters könnte das Netz auf den Schutzleiter legen.
# $findings ist eine Liste von Meldungen finding.
permission-look-first = Vor allem anderen ansehen: { $findings }.
permission-limiters = Vorschaltlampen und Stelltransformatoren begrenzen den Strom im Fehlerfall. Einen Stromschlag verhindern sie nicht.
permission-codes = Örtliche Vorschriften gehen vor, wo immer sie mehr verlangen.

## Was wahrscheinlich ist, was noch möglich ist, und worauf alles beruht

likely-very = Sehr wahrscheinlich: { $class } ({ $share }). Kein Nachweis.
likely-likely = Wahrscheinlich: { $class } ({ $share }). Kein Nachweis.
could-be = Könnte sein: { $class }.
# $not_checked ist eine Liste von Meldungen not-checked; not-checked-hidden ist immer dabei, also ist sie nie leer.
no-shock-path = Diese Prüfungen haben keinen Weg für einen Stromschlag gefunden. Nicht geprüft: { $not_checked }.
# $findings und $finding sind Meldungen finding.
conflict-intro = Diese Beobachtungen können nicht alle zutreffen. Bis das geklärt ist, gilt als Befund das Schlimmste, was irgendeine davon offenlässt.
conflict-look-again = Nochmals ansehen: { $findings }.
rests-on-one = All das beruht auf einer einzigen Beobachtung: { $finding }. Zweimal hinsehen. Ohne sie ist das Gerät zu behandeln als: { $class }.
rests-on = Das beruht auf: { $finding }. Ohne diese Beobachtung ist das Gerät zu behandeln als: { $class }.
not-checked-intro = Nicht geprüft:
not-checked-inside = das Innere
not-checked-readings = alles, was ein Messgerät braucht
not-checked-switch_wiring = welchen Leiter der Schalter öffnet
not-checked-values = die Werte der Kondensatoren und Widerstände zwischen Netz und Metall
not-checked-tubes = welche Röhren darin sind
not-checked-aerial = was die Antennen- oder Erdklemme selbst führen könnte
not-checked-supply = das externe Netzteil (als eigenes Gerät zu prüfen)
not-checked-hidden = unsichtbare Fehler, die Steckdose und alles, was seither daran getan wurde
next-step = Weiter: { $question }
next-reason-several = { $classes } Klassen sind noch möglich. Die Antwort kann { $out } davon ausschließen.
next-reason-one = { $classes } Klassen sind noch möglich. Die Antwort kann eine davon ausschließen.
next-reason-together = { $classes } Klassen sind noch möglich. Erst diese Antwort zusammen mit anderen kann eine davon ausschließen.
next-reason-likely = Sie schließt nichts aus, sagt aber, was wahrscheinlich ist, und damit, was als Nächstes anzusehen ist.
next-reason-figure = Ein Wert kann den Befund noch verbessern.
next-reason-one-class = Es kann sich noch zeigen, dass das Gerät besser ist als das.
next-reason-traced = Blankes Metall zählt als Chassis, bis geklärt ist, womit es verbunden ist. Ist es mit nichts verbunden, kann das Gerät besser sein als das.
next-reason-lift = Der Schutzleiter kann an einem Schalter enden. Gibt es einen, ist dieses Gerät schlimmer, als es aussieht.
next-reason-pin = Der Schutzleiter zählt nur, wenn der Stecker einen Kontakt dafür hat.
next-reason-cord = Nichts mit einer Netzseite bleibt übrig, aber niemand hat nachgesehen, ob es ein Netzkabel oder einen Netzeingang gibt.
next-reason-plate = Eine einzige Antwort sagt, dass nichts darin aus der Steckdose gespeist wird. Das Typenschild ist der zweite Zeuge.
next-reason-metal = Blankes Metall zählt als Chassis, bis geklärt ist, womit es verbunden ist. Ist es die Schaltung selbst, ist dieses Gerät schlimmer, als es aussieht.
next-reason-aerial = Eine Antennen- oder Erdklemme könnte mehr abgeben als das Metall, das gefunden wurde. Gibt es eine, ist dieses Gerät schlimmer, als es aussieht.
further-cover_off = Nimmt jemand, der das darf, den Deckel ab, könnte sich zeigen: { $class }.
further-meter = Misst jemand nach, der mit einem Messgerät umgehen kann, könnte sich zeigen: { $class }.
further-cover_off-meter = Nimmt jemand, der das darf, den Deckel ab und misst, könnte sich zeigen: { $class }.
further-measured = Misst jemand, der das darf, die Bauteile nach, deren Werte nur abgelesen wurden, könnte sich zeigen: { $class }.
go-on-hints = Weitere Antworten können noch verschieben, was wahrscheinlich ist. Das hilft zu entscheiden, ob Sie es kaufen, nie, ob Sie es einstecken.
nothing-left = Hier enden die Fragen: Keine andere Antwort, die Sie mit diesem Zugang geben können, macht die Klasse besser.
nothing-left-shown = Hier enden die Fragen: Die Klasse ist nachgewiesen, und keine andere Antwort, die Sie mit diesem Zugang geben können, macht sie besser.
nothing-left-untraced = Hier enden die Fragen: Keine andere Antwort, die Sie geben können, macht die Klasse besser, und bis geklärt ist, womit das blanke Metall verbunden ist, kann sie schlechter sein.
nothing-left-lift = Hier enden die Fragen: Keine andere Antwort, die Sie geben können, macht die Klasse besser, und bis Sie wissen, ob ein Schalter die Erde trennt, kann sie schlechter sein.
nothing-left-pin = Hier enden die Fragen: Keine andere Antwort, die Sie geben können, macht die Klasse besser, und sie beruht auf einem Schutzkontakt, den niemand gesehen hat.
nothing-left-aerial = Hier enden die Fragen: Keine andere Antwort, die Sie geben können, macht die Klasse besser, und die Antennen- oder Erdklemme zu berühren ist schlimmer, als die Klasse besagt.
nothing-left-aerial-unseen = Hier enden die Fragen: Keine andere Antwort, die Sie geben können, macht die Klasse besser, und eine Antennen- oder Erdklemme, nach der niemand gesehen hat, zu berühren kann schlimmer sein, als die Klasse besagt.
nothing-left-cord = Hier enden die Fragen: Mehr lässt sich nicht fragen, und was im Inneren gefunden wurde, muss nochmals angesehen werden.
nothing-left-line = Hier enden die Fragen: Kein Kabel zur Steckdose und kein Netzeingang wurden gesehen, aber etwas, das gefunden wurde, gehört dazu. Den Stecker und was gefunden wurde nochmals ansehen und die falsche Antwort zurücknehmen.
nothing-left-plate = Hier enden die Fragen: Das Typenschild nennt eine Speisung aus der Steckdose. Nochmals nach einem Netzkabel oder Netzeingang sehen. Wurde eines davon entfernt, „Kabel oder Stecker abgeschnitten oder fehlt“ antworten. Stimmen beide Antworten, wurde es umgebaut: Eine Elektrofachkraft muss es öffnen.
nothing-left-plate-unread = Hier enden die Fragen: Niemand hat das Typenschild gelesen. Nochmals nach einem Netzkabel, einem Netzeingang oder einem Loch an dessen Stelle sehen und jemanden das Typenschild lesen lassen.
nothing-left-conflict = Zuerst die Beobachtungen klären, die nicht alle zutreffen können.

## Neben dem schlimmsten Strom

after-one-fault = Nach einem Fehler
after-two-faults = Nach zwei Fehlern
tag-supply = Berechnet für { $volts }, { $hertz }, bei bis zu { $highest }.

## Lagen: Das füllt $plug, $switch und $selector

state-plug-first = erste Lage (Stift A am Außenleiter)
state-plug-second = zweite Lage (Stift A am Neutralleiter)
state-plug-one-way = erste Lage
state-plug-other-way = zweite Lage
state-plug-only = die einzige passende Lage
state-switch-on = ein
state-switch-off = aus
state-switch-either = ein oder aus
state-selector-near = zum chassisnahen Leiter
state-selector-far = zum chassisfernen Leiter
state-after-fault = Angenommen: { $fault }. { $state }
state-sentence = Stecker: { $plug }; Schalter: { $switch }.
state-sentence-selector = Stecker: { $plug }; Schalter: { $switch }; Masseschalter: { $selector }.
