# Wo der Schutz an der Steckdose, der einen Stromschlag beendet, RCD heißt.

-a-guard = einem FI-Schutzschalter (RCD)
-a-guard-short = einem FI-Schutzschalter (RCD)
-guard = FI-Schutzschalter (RCD)
