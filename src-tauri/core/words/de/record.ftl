# Störungen des Bestands, Netze zur Auswahl, die Vorführung.

error-no-unit = Ein solches Gerät gibt es nicht. Vielleicht wurde es gelöscht.
error-no-inspection = Eine solche Prüfung gibt es nicht. Vielleicht wurde sie rückgängig gemacht.
error-newer-file = Dieser Bestand wurde von einer neueren Version geschrieben (Format { $found }; diese Version kennt { $known }). Er wurde gelassen, wie er war. Zum Öffnen das Programm aktualisieren.
error-not-our-file = Diese Datei ist kein Bestand dieses Programms. Sie wurde gelassen, wie sie war.
error-damaged = Der Bestand ist beschädigt: { $detail }. Er bleibt, wie er ist, bis gewählt wird, was an seine Stelle tritt: eine frühere Sicherungskopie, wo es eine unbeschädigte gibt, oder was noch lesbar ist.
error-damaged-beginning = Der Bestand ist beschädigt: Sein Anfang fehlt. Er bleibt, wie er ist, bis gewählt wird, was an seine Stelle tritt: eine frühere Sicherungskopie, wo es eine unbeschädigte gibt, oder ein neuer Bestand.
error-no-snapshot = Diese Sicherungskopie des Bestands gibt es nicht mehr.
error-only-in-memory = Dieser Bestand ist nur im Arbeitsspeicher; es gibt keine Datei zum Kopieren.
error-no-room = Auf diesem Endgerät ist kein Platz mehr. Was vorher gespeichert war, ist erhalten; das hier wurde nicht gespeichert. Platz schaffen und wiederholen.
error-read-only = Der Bestand, seine Fotos oder ihr Ordner dürfen nur gelesen werden. Was vorher gespeichert war, ist erhalten; das hier wurde nicht gespeichert.
error-storage = Der Bestand ließ sich nicht lesen oder schreiben: { $detail }. Nochmals versuchen. Wurde gerade etwas eingegeben, nachsehen, ob es da ist.

# Eine Datei, die jemand irgendwo speichert.
file-no-room = Am Ziel ist kein Platz mehr, also wurde dort nichts geschrieben. Platz schaffen oder einen anderen Ort wählen.
file-barred = Dort darf nichts geschrieben werden. Einen anderen Ort wählen.
file-no-folder = Diesen Ordner gibt es nicht. Einen anderen Ort wählen.
file-failed = Die Datei ließ sich nicht schreiben: { $detail }. Einen anderen Ort wählen.
# $line ist eine Meldung proof-.
takes-line-in-turn = verlangt die Prüfpunkte der Reihe nach. An Teilen unter Spannung geschieht nichts, bevor dieser bestanden ist: { $line }
takes-base64 = verlangt eine Datei als Base64-Text

takes-kept-finding = verlangt den Pfad einer vorhandenen Beobachtung
takes-short-text = verlangt einen Text von höchstens { $high } Zeichen

takes-page-end = verlangt das Ende einer Seite, wie es ausgegeben wurde

# Wie weit die Arbeit an einem Gerät gekommen ist.
work-to_inspect = Zu prüfen
work-do_not_power = Nicht ans Netz
work-awaiting_parts = Wartet auf Teile
work-in_repair = In Reparatur
work-proof_open = Nachweis offen
work-ready = Bereit
work-handed_back = Zurückgegeben
queue-unknown = Neu ansehen

# Ein Bestand, der neu zusammengesetzt wurde.
recovered-from-copy = Die Sicherungskopie ist jetzt der Bestand. Die Datei, die dort stand, bleibt daneben erhalten.
recovered-from-nothing = Ein neuer Bestand steht an seiner Stelle. Die Datei, die dort stand, bleibt daneben erhalten.
recovered-added = { $events ->
    [0] Nichts, was von dieser Datei lesbar war, musste hinzugefügt werden.
    [one] Ein Ereignis, das in der Sicherungskopie fehlte, wurde aus dieser Datei gelesen und hinzugefügt.
   *[other] { $events } Ereignisse, die in der Sicherungskopie fehlten, wurden aus dieser Datei gelesen und hinzugefügt.
 }
recovered-gone = { $places ->
    [one] Ein Ereignis der Datei ließ sich nicht lesen; es ist verloren, sofern die Sicherungskopie es nicht hatte.
   *[other] { $places } Ereignisse der Datei ließen sich nicht lesen; sie sind verloren, sofern die Sicherungskopie sie nicht hatte.
 }

list = { $items }
# Was zwischen dem Ganzen und seinen Teilen in einer Zahl steht.
decimal-mark = ,

preset-120v_60hz = 120 V, 60 Hz: Nordamerika
preset-230v_50hz = 230 V, 50 Hz: Europa und der größte Teil der Welt
preset-240v_50hz = 240 V, 50 Hz: älteres britisches und australisches Netz
preset-100v_50hz = 100 V, 50 Hz: Ostjapan
preset-100v_60hz = 100 V, 60 Hz: Westjapan
preset-110v_60hz = 110 V, 60 Hz: Typenschilder der 1930er-Jahre
preset-115v_60hz = 115 V, 60 Hz: Typenschilder der 1930er- bis 1950er-Jahre
preset-117v_60hz = 117 V, 60 Hz: Typenschilder der 1940er- bis 1960er-Jahre

demo-radio-name = Regalradio, braunes Gehäuse
demo-radio-place = Stand 14

value-measured = { $value }, gemessen
value-marked = { $value }, wie aufgedruckt
error-nothing-readable = Es gibt nichts zu speichern: Von der vorhandenen Datei ist nichts lesbar, und keine unbeschädigte Sicherungskopie enthält etwas. Es wurde kein Bündel geschrieben.
recovered-read = { $events ->
    [0] Nichts, was von dieser Datei lesbar war, musste hinzugefügt werden.
    [one] Ein Ereignis wurde aus dieser Datei gelesen und hinzugefügt.
   *[other] { $events } Ereignisse wurden aus dieser Datei gelesen und hinzugefügt.
 }
recovered-nothing-read = In dieser Datei war nichts lesbar.
recovered-gone-for-good = { $places ->
    [one] Ein Ereignis der Datei ließ sich nicht lesen; es ist verloren.
   *[other] { $places } Ereignisse der Datei ließen sich nicht lesen; sie sind verloren.
 }
recovered-doubtful = { $places ->
    [one] Eine Stelle der Datei ist leer, und es lässt sich nicht sagen, warum: Dort kann ein Ereignis verloren gegangen oder früher gelöscht worden sein.
   *[other] Bis zu { $places } weitere Ereignisse können verloren sein: So viele Stellen der Datei sind leer, und es lässt sich nicht sagen, was dort verloren ging und was früher gelöscht wurde.
 }
recovered-uncounted = Wo die Datei aufhörte, lässt sich nicht sagen; es kann also mehr verloren sein, als sich zählen lässt.
bundle-rests-on-copy = Es enthält die Sicherungskopie vom { $time } UTC und was sonst von der vorhandenen Datei lesbar war.
bundle-rests-on-file = Es enthält nur, was von der vorhandenen Datei lesbar war: Eine unbeschädigte Sicherungskopie wurde nicht gefunden.
