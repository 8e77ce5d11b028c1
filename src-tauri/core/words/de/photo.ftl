# Was ein Foto sein muss, und was beim Aufbewahren misslingen kann. Die mit „takes“ stehen nach „photo:“.

takes-photo-picture = verlangt ein Bild als JPEG, PNG oder WebP; diese Datei ist kein Bild, wie sie auch heißt
takes-photo-whole = verlangt ein vollständiges Bild; diese Datei bricht ab oder ist beschädigt. Das Foto neu aufnehmen oder neu kopieren
takes-photo-pixels = verlangt höchstens { $megapixels } Megapixel und { $side } Pixel je Seite; dieses Bild hat { $width } × { $height }. Die Kamera auf eine kleinere Größe stellen
takes-photo-bytes = verlangt eine Datei von höchstens { $megabytes } MB
takes-photo-kind = verlangt JPEG, PNG oder WebP; das ist { $kind }. Als JPEG speichern oder aufnehmen
takes-photo-still = verlangt ein stehendes Bild; das ist eine Animation
takes-photo-screen-colours = verlangt ein Bild in Bildschirmfarben; dieses ist in Druckfarben (CMYK)
takes-photo-usual-coding = verlangt ein üblich kodiertes Bild; dieses ist hier nicht lesbar. Als einfaches JPEG speichern oder aufnehmen
takes-finding-path = verlangt den Pfad einer Beobachtung, etwa answers.plug

error-no-photo-folder = Hier lassen sich keine Fotos aufbewahren: Es gibt keinen Ordner dafür. Sonst wurde nichts geändert.
error-photo-storage = Das Foto ließ sich nicht schreiben oder lesen: { $detail }. Sonst wurde nichts geändert.
error-no-photo = Ein solches Foto gibt es nicht.

# Was dafür spricht, ein Foto neu aufzunehmen.
photo-hint-blurred = Es wirkt unscharf: ruhig halten, das Telefon auflegen, auf das Wichtige tippen.
photo-hint-dark = Es wirkt zu dunkel: das Licht einschalten oder das Gerät zum Licht drehen.
photo-hint-glare = Ein Teil ist vom Licht überstrahlt: das Telefon kippen, damit sich keine Lampe spiegelt.
