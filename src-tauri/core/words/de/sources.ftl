# Woher Werte kommen, wie ein Bericht sie aufzählt, und wie jede Quelle gesehen wurde.
figure-source-iec_60479_1 = IEC 60479-1 (TS 2005, 2018): Wirkungen des Stroms auf Menschen, Tabellen 1 bis 12, Bilder 3 und 20. Gesehen: aus dem Gedächtnis und wie in Lehrbüchern und Handbüchern zitiert; die Norm selbst wurde nicht gelesen.
figure-source-iec_60990 = IEC 60990: Verfahren zur Messung des Berührungsstroms, Bilder 3 bis 5. Gesehen: Bauteile der Bilder 3 und 4 wie in Handbüchern zitiert; Bild 5 aus dem Gedächtnis.
figure-source-ieee_80 = IEEE Std 80: Leitfaden zur Erdung von Umspannanlagen, Gleichungen für den erträglichen Körperstrom. Gesehen: aus dem Gedächtnis; Körperwiderstand wie in Lehrbüchern zitiert.
figure-source-ul_943 = UL 943: Fehlerstrom-Schutzeinrichtungen (GFCI), Auslösezeit der Klasse A. Gesehen: Formel wie von Herstellern solcher Geräte zitiert.
figure-source-iec_61008 = IEC 61008-1 und 61009-1: Fehlerstrom-Schutzschalter (RCD), höchste Abschaltzeiten. Gesehen: wie in Handbüchern von Messgeräten zitiert; der Wert beim Doppelten aus dem Gedächtnis.
figure-source-ul_101 = UL 101 (früher ANSI C101.1): Ableitstrom von Geräten. Gesehen: wie in Serviceanleitungen und in UL 8750 zitiert.
figure-source-iec_62368_1 = IEC 62368-1: Grenzen der Energiequellen ES1 und ES2. Gesehen: aus dem Gedächtnis.
figure-source-shock_surveys = Dalziel 1961, Dalziel und Lee 1968 und eine Übersicht von Stromschlagdaten bei 50/60 Hz. Gesehen: Tabellen und Kurzfassungen wie im Druck wiedergegeben.
figure-source-ansi_c84_1 = ANSI C84.1: Nennspannungen von 60-Hz-Netzen. Gesehen: aus dem Gedächtnis.
figure-source-iec_60038 = IEC 60038: Normspannungen. Gesehen: wie im Druck zitiert.
figure-source-stored_energy = Grenzwerte für gespeicherte Energie und Ladung: Gefahrenklassen von Kondensatoren (DOE, NFPA 70E), 45 µC aus IEC 61010-1 und IEC 60335-1, 34 V an Steckerstiften aus IEC 60335-1. Gesehen: Klassen und 45 µC wie im Druck zitiert; NFPA 70E aus dem Gedächtnis.
figure-source-appliance_testing = Wiederholungsprüfung von Geräten: 500 V Gleichspannung, 1 MΩ mit Schutzleiter, 2 MΩ ohne. Gesehen: wie von Prüfstellen veröffentlicht.
figure-source-heater_measurements = Gemessener Kalt- und Heißwiderstand indirekt geheizter Röhren (12AX7 6,8, 6SN7GTB 6,6, 50CA10 7,1). Gesehen: öffentliche Bibliothek zur Schaltungssimulation und veröffentlichte Messungen.
figure-source-fuse_standards = UL 248-14 und IEC 60127: was Sicherungen führen, halten und wobei sie öffnen. Gesehen: Führ- und Öffnungsströme wie im Druck zitiert; Zeiten aus dem Gedächtnis.
figure-source-transformer_guides = Leitfäden von Transformatorherstellern: Gleichstrom eines Gleichrichters im Verhältnis zum Strom seiner Wicklung. Gesehen: aus dem Gedächtnis.
figure-source-typical_values = Übliche Werte in alten Geräten: Netzkondensatoren, RC-Glieder zwischen Schaltungsmasse und Chassis, Wicklungen. Gesehen: veröffentlichte Serviceunterlagen, wo als geprüft gekennzeichnet, sonst übliche Praxis.
figure-source-model = Festlegungen dieses Modells, wo nichts bekannt sein muss, aber etwas stehen muss. Gesehen: eigene Festlegung.
