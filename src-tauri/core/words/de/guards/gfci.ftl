# Wo der Schutz an der Steckdose, der einen Stromschlag beendet, GFCI heißt.

-a-guard = einem FI-Schutzschalter (GFCI)
-a-guard-short = einem FI-Schutzschalter (GFCI)
-guard = FI-Schutzschalter (GFCI)
