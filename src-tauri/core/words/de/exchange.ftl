# Warum ein Bündel abgelehnt wurde; der Satz, dass es abgelehnt wurde, steht davor.

bundle-refused = Das Bündel wurde abgelehnt; nichts wurde geändert. { $reason }
bundle-failed = Das Bündel ließ sich nicht lesen oder schreiben; nichts wurde geändert. { $reason }

bundle-not-one = Es ist kein Bündel dieses Programms, oder es ist beschädigt oder abgeschnitten. Nochmals schicken lassen.
bundle-newer = Es wurde von einer neueren Version geschrieben (Format { $found }; diese Version kennt { $known }). Zum Übernehmen das Programm aktualisieren.
bundle-manifest = Sein Inhaltsverzeichnis ergibt keinen Sinn: { $detail }.
bundle-name = Es hat einen Teil mit einem Namen, den kein Bündel hat: { $name }.
bundle-link = Es hat einen Teil, der keine einfache Datei ist: { $name }.
bundle-twice = Es hat einen Teil zweimal, oder Teile, die sich überschneiden.
bundle-packing = Ein Teil ist auf eine Weise gepackt oder gesperrt, wie Bündel es nicht sind: { $name }.
bundle-bomb = Ein Teil würde sich auf mehr als das { $times }-Fache seiner Länge entpacken: { $name }.
bundle-too-long = Ein Teil ist länger als jeder solche Teil: { $name }.
bundle-too-many = Es hat mehr als { $events } Ereignisse oder { $photos } Fotos.
bundle-missing = Ein Teil, den sein Verzeichnis nennt, fehlt: { $name }.
bundle-unlisted = Es hat einen Teil, den sein Verzeichnis nicht nennt: { $name }.
bundle-wrong-hash = Ein Teil ist nicht, was das Verzeichnis sagt, wurde also beschädigt oder geändert: { $name }.
bundle-wrong-count = Sein Verzeichnis zählt { $said }, vorhanden sind aber { $found }.
bundle-line = Zeile { $line } seiner Ereignisse ist nicht lesbar: Sie ist kein Ereignis oder länger als { $most } Bytes.
bundle-event = Zeile { $line } seiner Ereignisse passt nicht: { $field }.
bundle-finding = Zeile { $line } seiner Ereignisse passt nicht: { $field } { $takes }.
bundle-future = Zeile { $line } seiner Ereignisse liegt mehr als einen Tag in der Zukunft. Das Datum auf beiden Endgeräten prüfen.
bundle-photo = Ein Foto und die Ereignisse gehören nicht zusammen: { $name }.
bundle-bad-photo = Ein Foto ist keines dieses Programms: { $name } { $takes }.
bundle-dangling = Ein Ereignis nennt etwas, das nicht da ist: { $field } von { $event }.
bundle-bad-event = Ein Ereignis passt nicht: { $field } von { $event }.
bundle-contradicts = Ein Ereignis ist hier mit anderem Inhalt bekannt: { $event }. Eines der beiden wurde geändert.
bundle-io = { $detail }.

# Ein Bündel, das geschrieben oder übernommen wurde.
bundle-made = Im Bündel: { $units ->
    [0] kein Gerät
    [one] ein Gerät
   *[other] { $units } Geräte
 } und { $photos ->
    [0] kein Foto
    [one] ein Foto
   *[other] { $photos } Fotos
 }.
bundle-made-lost = { $photos ->
    [one] Ein Foto ist nicht darin: Seine Datei fehlt auf diesem Endgerät oder ist beschädigt.
   *[other] { $photos } Fotos sind nicht darin: Ihre Dateien fehlen auf diesem Endgerät oder sind beschädigt.
 }
bundle-taken-in = Übernommen: { $units ->
    [0] kein Gerät geändert
    [one] ein Gerät geändert
   *[other] { $units } Geräte geändert
 }, { $photos ->
    [0] keine neuen Fotos
    [one] ein neues Foto
   *[other] { $photos } neue Fotos
 }.
bundle-nothing-new = Nichts wurde geändert: Im Bündel war nichts, was hier fehlte.
bundle-deleted = { $units ->
    [one] Ein Gerät wurde anderswo gelöscht und ist auch hier weg, mit allem, was daran gefunden wurde.
   *[other] { $units } Geräte wurden anderswo gelöscht und sind auch hier weg, mit allem, was daran gefunden wurde.
 }
bundle-late = { $events ->
    [one] Ein Ereignis gehört zu einem Gerät, das hier gelöscht wurde; es wurde beiseitegelassen.
   *[other] { $events } Ereignisse gehören zu Geräten, die hier gelöscht wurden; sie wurden beiseitegelassen.
 }
bundle-without = { $photos ->
    [one] Ein Foto wurde im Bündel ausgelassen und ist nicht hier.
   *[other] { $photos } Fotos wurden im Bündel ausgelassen und sind nicht hier.
 }
bundle-made-deleted = { $units ->
    [one] Es nennt auch ein gelöschtes Gerät, damit es verschwindet, wo das Bündel übernommen wird.
   *[other] Es nennt auch { $units } gelöschte Geräte, damit sie verschwinden, wo das Bündel übernommen wird.
 }
