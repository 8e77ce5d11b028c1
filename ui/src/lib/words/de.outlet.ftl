# Wo ein Gerät eingesteckt wird. Die Frage, die Steckdosen und woran man sie erkennt, gehören dem Kern.

outlet-title = Wo wird es eingesteckt?
outlet-see = Wo wird es eingesteckt?
outlet-tell = Woran zu erkennen
# $found ist das Höchste ohne Fehler, $worst das Höchste überhaupt.
outlet-current = { $found } wie vorgefunden
outlet-currents = { $found } wie vorgefunden, { $worst } schlimmstenfalls
# $class ist die Klasse in Worten.
outlet-here = Dort eingesteckt: { $class }.
outlet-isolated-doubt = Allein am Gehäuse kann es niemand erkennen. Ein Stelltransformator oder ein Abwärtstransformator sieht gleich aus, und fast alle davon haben nur eine Wicklung, die nichts trennt. Bis es gemessen ist, mit einer gewöhnlichen Steckdose rechnen.
outlet-test-behind = Was hier steht, ist aus dem berechnet, was am Gerät gefunden wurde. Es ist keine Prüfung der Steckdose und keine des Transformators.
outlet-input-unreadable = Verlangt eine Zahl
field-input_volts = Volt, die hineingehen
