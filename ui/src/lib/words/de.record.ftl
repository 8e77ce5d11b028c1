# Der Bestand als Ganzes: weitergegeben, übernommen, gesichert, zurückgespielt, und was geschieht, wo er beschädigt ist.

record-title = Der Bestand
record-see-note = An ein anderes Endgerät geben, übernehmen, Sicherungskopien
record-what-to-do = Was zu tun ist
record-what = Alle Geräte mit ihren Prüfungen und Fotos, aufbewahrt auf diesem Endgerät.
record-busy = Das kann eine Weile dauern. Bitte die App offen lassen.
record-file = { $name }, { $megabytes } MB
record-choose-inspections =
    { $count ->
        [0] Keine Prüfungen
        [one] Eine Prüfung
       *[other] { $count } Prüfungen
    }

## An ein anderes Endgerät

record-give = An ein anderes Endgerät geben
record-give-what = Eine Datei, ein Bündel, enthält alle Geräte mit ihren Beobachtungen und Fotos. Jedes Endgerät mit diesem Programm kann es übernehmen.
record-give-nothing = Noch gibt es keine eigenen Geräte, also ist nichts weiterzugeben.
record-give-now = Bündel speichern
record-giving = Das Bündel wird geschrieben…
record-given = Gespeichert
record-take = Von anderem Endgerät übernehmen
record-take-what = Was ein Bündel enthält, wird mit dem vereint, was hier ist. Von zwei Beobachtungen derselben Sache zählt die spätere, und ein Gerät, das dort gelöscht wurde, verschwindet auch hier.
record-take-now = Bündel wählen
record-taking = Das Bündel wird geprüft und übernommen…
record-changed = Geänderte Geräte
record-changed-more =
    { $count ->
        [one] Eines mehr steht in der Liste der Geräte.
       *[other] { $count } weitere stehen in der Liste der Geräte.
    }
record-list = Liste für die Tabellenkalkulation
record-list-what = Eine Zeile je Gerät, als CSV. Sie hat keine Fotos und kann nicht wieder übernommen werden.
record-list-now = Liste speichern
record-listing = Die Liste wird geschrieben…
record-listed = Gespeichert

## Sicherungskopien. Die Zahlen sind die von core/src/store/snapshot.rs; eine Prüfung vergleicht sie.

record-copies = Sicherungskopien
record-copies-when = Die App macht von selbst nach je 20 Prüfungen eine Sicherungskopie, und bevor eine Aktualisierung den Bestand ändert. Die letzten 5 werden behalten, und 2 von vor Aktualisierungen; sobald ein Gerät gelöscht ist, verschwinden auch ältere Sicherungskopien.
record-copies-failed = Eine Sicherungskopie steht an und konnte nicht gemacht werden. Die App versucht es von selbst wieder.
record-copies-none = Noch gibt es keine Sicherungskopie. Bis es eine gibt, ein Bündel anderswo speichern.
record-copies-loading = Sicherungskopien werden gesucht…
record-copy = { $inspections }, { $megabytes } MB
record-copy-before-update = { $inspections }, { $megabytes } MB, vor einer Aktualisierung

## Eine Sicherungskopie an die Stelle eines heilen Bestands

record-back-title = Diese Sicherungskopie zurückspielen?
record-back-of = Sicherungskopie von { $when }
record-back-gone = Diese Sicherungskopie ist nicht mehr da.
record-back-to-record = Zum Bestand
record-back-would = Was geschehen würde
record-back-replaces =
    { $units ->
        [0] Die Kopie tritt an die Stelle des Bestands. In ihm sind jetzt keine Geräte.
        [one] Die Kopie tritt an die Stelle des Bestands, der jetzt ein Gerät hat.
       *[other] Die Kopie tritt an die Stelle des Bestands, der jetzt { $units } Geräte hat.
    }
record-back-since = Was eingegeben oder geändert wurde, nachdem die Kopie gemacht war, steht dann nicht mehr im Bestand.
record-back-kept = Der jetzige Bestand bleibt als Datei im Ordner „damaged“ daneben erhalten. Die letzten 3 bleiben dort, ebenso die Datei des ersten von mehreren Versuchen, die höchstens 7 Tage auseinanderliegen. Die App selbst kann diese Datei nicht zurückspielen.
record-back-photos = Fotos, die die Kopie nicht kennt, bleiben auf diesem Endgerät, solange in diesem Ordner eine Datei liegt.
record-back-first = Damit nichts verloren geht
record-back-first-what = Zuerst ein Bündel speichern. Danach übernommen, bringt es alle Geräte zurück, wie sie jetzt sind, mit ihren Fotos.
record-back-now = Kopie zurückspielen
record-back-doing = Die Kopie wird zurückgespielt…
record-back-leave = Bestand lassen, wie er ist
record-back-done = Die Kopie ist zurückgespielt
record-back-done-what = Die Kopie von { $when } ist jetzt der Bestand. Der vorherige Bestand bleibt als Datei im Ordner „damaged“ daneben erhalten.
record-copy-damaged = Diese Kopie ist selbst beschädigt. Der Bestand blieb, wie er war. Eine andere Kopie wählen.

## Ein beschädigter Bestand: was an Stelle von allem anderen gezeigt wird

recovery-title = Der Bestand ist beschädigt
recovery-what = Ein Teil seiner Datei ist nicht mehr lesbar. Es wird nichts mehr hineingeschrieben, und nichts tritt an ihre Stelle, bis gewählt ist.
recovery-detail = Was festgestellt wurde
recovery-looking = Sicherungskopien werden gesucht…
recovery-last = Letzte Kopie
recovery-none = Es gibt keine Sicherungskopie des Bestands. Was von der beschädigten Datei noch lesbar ist, kann ein neuer Bestand werden.
recovery-unlisted = Nach Sicherungskopien konnte nicht gesucht werden. Es kann welche geben: nochmals suchen, bevor Sie einen neuen Bestand beginnen. Was noch lesbar ist, lässt sich in jedem Fall speichern.
recovery-again = Kopien nochmals suchen
recovery-main = Letzte Kopie einsetzen
recovery-main-why = Am besten einsetzen: Was von der beschädigten Datei noch lesbar ist, kommt hinzu.
recovery-main-none = Neuen Bestand beginnen
recovery-save = Zuerst Lesbares speichern
recovery-save-what = In ein Bündel, auf einen Stick oder einen anderen Datenträger, zusammen mit der letzten unbeschädigten Sicherungskopie. Die vorhandene Datei wird nur gelesen. Im schlimmsten Fall lässt sich das Bündel später übernehmen.
recovery-save-now = Bündel speichern
recovery-saving = Was lesbar ist, wird geschrieben…
recovery-other = Etwas anderes
recovery-other-copy = Kopie von { $when }
recovery-new = Neuen Bestand beginnen
recovery-new-note = Ohne jede Kopie

recovery-ask-copy = Die Kopie von { $when } einsetzen?
recovery-ask-new = Neuen Bestand beginnen?
recovery-would-copy = Die Kopie tritt an die Stelle der vorhandenen Datei.
recovery-would-new = Ein leerer Bestand tritt an die Stelle der vorhandenen Datei.
recovery-add = Noch Lesbares hinzufügen
recovery-add-note = aus der vorhandenen Datei
recovery-would-add = Was von dieser Datei noch lesbar ist, wird hinzugefügt.
recovery-would-not-add-copy = Was eingegeben wurde, nachdem die Kopie gemacht war, bleibt nur in dieser Datei.
recovery-would-not-add-new = Alles, was eingegeben wurde, bleibt nur in dieser Datei.
recovery-would-keep = Diese Datei bleibt im Ordner „damaged“ neben dem Bestand erhalten. Die letzten 3 bleiben dort, ebenso die Datei des ersten von mehreren Versuchen, die höchstens 7 Tage auseinanderliegen.
recovery-would-photos = Fotos, von denen nichts mehr lesbar ist, bleiben auf diesem Endgerät, solange in diesem Ordner eine Datei liegt.
recovery-do-copy = Einsetzen
recovery-do-new = Neuen Bestand beginnen
recovery-doing = Der Bestand wird zusammengesetzt…
recovery-leave = Noch nicht
recovery-done = Es gibt wieder einen Bestand
recovery-done-look = Die Geräte ansehen, an denen Sie zuletzt gearbeitet haben: Was fehlt, muss neu gefunden werden, bevor Sie sich darauf verlassen.

## Dateien, die unangetastet bleiben

recovery-newer-title = Von einer neueren Version geschrieben
recovery-newer-1 = Die App auf diesem Endgerät aktualisieren.
recovery-newer-2 = Dann wieder öffnen: Alles ist, wie Sie es verlassen haben.
recovery-newer-why = Sicherungskopien werden hier nicht angeboten. Der Bestand ist nicht beschädigt, und einer älteren Kopie an seiner Stelle würde Ihre letzte Arbeit fehlen.
recovery-foreign-title = Das ist kein Bestand
recovery-foreign-what = An der Stelle des Bestands liegt eine Datei von etwas anderem, oder eine, deren Anfang zerstört ist. Daneben wurde keine Sicherungskopie eines Bestands gefunden.
recovery-foreign-1 = Wurde die Datei irrtümlich dorthin gelegt: die App schließen, die Datei anderswohin verschieben und die App wieder öffnen.
recovery-foreign-2 = Liegt der Bestand auf einem Stick oder einem anderen Datenträger: nachsehen, ob er angeschlossen ist.
recovery-foreign-3 = Sonst einen neuen Bestand beginnen. Die Datei bleibt erhalten.
