# Geräte der Vorführung, und wo sie stehen. Hersteller, Besitzer und Orte sind erfunden.

demo-stall-radio-name = Tischradio Wexelby, braunes Gehäuse
demo-stall-radio-place = Flohmarkt, Stand 14, für 20 angeboten
demo-picnic-radio-name = Picknick-Kofferradio Plimmerose
demo-picnic-radio-place = Flohmarkt, Stand 31, Kiste unter dem Tisch
demo-aerial-radio-name = Regalradio Zwellin, mit Antennenbuchse
demo-aerial-radio-place = Flohmarkt am Kanal, Decke von Herrn Hobbinet
demo-borrowed-amplifier-name = Combo Abbersnell, zwei Kanäle
demo-borrowed-amplifier-place = Hinter der Bühne, Laternensaal, geliehen von der Vorband
demo-house-amplifier-name = Hausverstärker Drumhollow
demo-house-amplifier-place = Hinter der Bühne, Laternensaal, linke Seitenbühne
demo-ground-switch-amplifier-name = Übungsverstärker Nockersend
demo-ground-switch-amplifier-place = Hinter der Bühne, Ersatz von Odo Trinket
demo-kitchen-radio-name = Küchenradio Quorvane, weiß
demo-kitchen-radio-place = Werkstatt, Eingangsregal 2, gehört Frau Tibbaloo
demo-record-player-name = Schulplattenspieler Ostrelle
demo-record-player-place = Werkstatt, Werkbank 1, gehört der Schule Brindle Lane
demo-console-name = Standradio Orrumby, Nussholz
demo-console-place = Werkstatt, am Boden bei der Tür, gehört Herrn Yarrowick
demo-repaired-radio-name = Tischradio Wexelby, grünes Gehäuse
demo-repaired-radio-place = Werkstatt, Regal 5, bereit zur Abholung
