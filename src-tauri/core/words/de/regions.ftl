# Teile der Welt. Stecker: data/plugs.csv. Aderfarben: data/wire_colours.csv. Wie der Schutz dort heißt: übliche Praxis.

region-name-north_america = USA und Kanada
region-name-europe = Europa (Festland)
region-name-britain = Großbritannien und Irland
region-name-japan = Japan
region-name-australia = Australien und Neuseeland
region-supply = Steckdosen: { $supplies }.
region-one-supply = { $volts } { $hertz }
region-plugs-north_america = Stecker: NEMA 1-15 mit zwei Flachkontakten, bei gepolten Steckern der breitere am Neutralleiter; NEMA 5-15 mit Schutzkontakt (im Druck gesehen).
region-plugs-europe = Stecker: zwei runde Stifte, CEE 7/16 (Eurostecker) oder CEE 7/4 (Schutzkontaktstecker) mit Schutzkontakten, passen auf beide Arten; CEE 7/6 mit dem Schutzkontakt in der Steckdose passt nur auf eine Art, und trotzdem ist nicht gesagt, welcher Stift am Neutralleiter liegt (im Druck gesehen).
region-plugs-britain = Stecker: BS 1363 mit drei flachen Stiften und einer Sicherung im Stecker, 3 oder 13 A; passt nur auf eine Art (im Druck gesehen). Alte runde Stifte sind andere Stecker.
region-plugs-japan = Stecker: JIS C 8303 mit zwei Flachkontakten, meist gleich, passen also auf beide Arten; Erde über einen eigenen Draht (über die Stifte sind sich die Quellen uneins).
region-plugs-australia = Stecker: AS/NZS 3112 mit zwei schrägen Stiften und einem senkrechten Schutzkontakt; passt nur auf eine Art (im Druck gesehen).
region-wires = Adern neuer Netzkabel: Außenleiter { $line }; Neutralleiter { $neutral }; Schutzleiter { $earth }. Alte Netzkabel haben andere Farben, und in manchen war Rot oder Schwarz der Schutzleiter: messen.
region-protection-north_america = Schutz an der Steckdose: ein FI-Schutzschalter (GFCI), der bei 4 bis 6 mA auslöst (UL 943, wie zitiert).
region-protection-europe = Schutz an der Steckdose: ein FI-Schutzschalter (RCD) mit 30 mA. Er löst zwischen 15 und 30 mA aus (IEC 61008-1, im Druck gesehen).
region-protection-britain = Schutz an der Steckdose: ein FI-Schutzschalter (RCD) mit 30 mA. Er löst zwischen 15 und 30 mA aus (IEC 61008-1, im Druck gesehen).
region-protection-japan = Schutz an der Steckdose: ein FI-Schutzschalter (RCD), meist mit 30 oder 15 mA (aus dem Gedächtnis).
region-protection-australia = Schutz an der Steckdose: ein FI-Schutzschalter (RCD) mit 30 mA. Er löst zwischen 15 und 30 mA aus (IEC 61008-1, im Druck gesehen).
