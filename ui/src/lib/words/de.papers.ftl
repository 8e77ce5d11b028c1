# Bericht, Anhänger und Nachricht.

papers-title = Bericht und Anhänger
papers-see = Bericht, Anhänger, Nachricht
papers-report = Bericht
papers-report-what = Alles auf Papier: zuerst der Befund, dann was gefunden wurde, Fotos, Werte, Reparatur und Nachweis.
papers-paper = Papier
papers-a4 = A4
papers-letter = Letter
papers-report-give = Bericht machen
papers-tag = Anhänger für das Netzkabel
papers-tag-what = Auf Armlänge lesbar, mit einem Code, der ohne Netzwerk gelesen werden kann.
papers-label = Gedruckt auf
papers-label62 = Etikett, 62 × 100 mm
papers-four_by_six = Etikett, 4 × 6 Zoll
papers-sheet_of_eight = A4, Platz für acht
papers-tag-give = Anhänger machen
papers-message = Nachricht
papers-copy = Kopieren
papers-copied = Kopiert.
papers-share = Teilen
papers-made = Erstellt: { $name }
