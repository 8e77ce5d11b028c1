# Messen auf einem Foto, das eine Bankkarte zeigt.

measure-unplugged = Stecker ziehen, bevor Sie etwas neben ihn legen.
measure-hint = Ein Hinweis, kein Nachweis. Die Flachkontakte selbst ansehen, bevor Sie antworten.
measure-counts = An die Kanten neben Ihren Punkten gezogen. Eingerechnet ist, was ein Finger danebentrifft, die Größe der Karte selbst, und dass bis zu 15 mm über der Karte liegen kann, was Sie messen.

measure-third-pin = Zählt nur, wo es keinen dritten Stift gibt, keinen Stummel und kein Loch an dessen Stelle.

blades-equal = Laut Messung sind die beiden Flachkontakte gleich breit, wie an einem Stecker, der auf beide Arten passt.
blades-first-wider = Laut Messung ist Kontakt 1 breiter als Kontakt 2, wie an einem Stecker, der nur auf eine Art passt.
blades-second-wider = Laut Messung ist Kontakt 2 breiter als Kontakt 1, wie an einem Stecker, der nur auf eine Art passt.
blades-too-rough = Es lässt sich nicht sagen: Die Breiten sind zu ungenau bekannt. Ein Foto aus größerer Nähe, schärfer und gerader von oben, kann es vielleicht zeigen. Bis dahin die Flachkontakte als gleich nehmen.
blades-neither = Es lässt sich nicht sagen: Die Breiten gehören zu keiner der beiden Arten von Steckern. Nachsehen, ob jeder Punkt auf der Kante eines Flachkontakts liegt. Bis dahin die Flachkontakte als gleich nehmen.
blades-other-widths = Es lässt sich nicht sagen: Flachkontakte dieser Art sind 6,35 oder 7,92 mm breit, und diese sind es nicht. Nachsehen, ob die Ecken der Karte stimmen und ob der Stecker von anderer Art ist.
blades-other-places = Es lässt sich nicht sagen: Flachkontakte dieser Art stehen nebeneinander, 12,7 mm voneinander entfernt, und diese tun es nicht. Nachsehen, ob jeder Punkt auf seinem eigenen Flachkontakt liegt.

measure-trouble-photo = Auf diesem Foto lässt sich nicht messen.
measure-trouble-outside = Eine Ecke liegt außerhalb des Fotos. Alle vier Ecken der Karte müssen zu sehen sein.
measure-trouble-crossed = Die Ecken überkreuzen sich. Der Reihe nach um die Karte herum auf sie setzen.
measure-trouble-small = Die Karte ist auf diesem Foto zu klein. Eines aus größerer Nähe aufnehmen.
measure-trouble-card = So würde eine Bankkarte nicht aussehen. Jeden Punkt auf eine Ecke der Karte setzen, wo sich ihre beiden Seiten treffen würden.
measure-trouble-long = So flach gesehen könnte jede Seite der Karte die lange sein. Ein Foto von weiter oben aufnehmen.
measure-trouble-end = Ein Punkt liegt zu weit von der Karte entfernt, um dort zu messen.
measure-trouble-close = Die beiden Punkte liegen zu nahe beieinander.
measure-trouble-near = Die Kamera war dafür zu nahe. Ein Foto aus etwas größerer Entfernung aufnehmen.
