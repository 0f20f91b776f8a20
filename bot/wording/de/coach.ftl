# Für Coaches.
coach-joined = Hallo { $name }, dieser Bot gehört jetzt dir. „liste“ zeigt deine Athleten, „einladung NAME“ macht einen Code, „hilfe“ zeigt den Rest.
coach-help =
    In Worten, mit dem Namen eines Athleten:
    · „mira“ – die Karte · „liste“ · „stufen“ – wie lange jede dauert · „übersicht“ – die Woche · „mira woche“ · „mira warum“
    · „mira 4x3 mit 17,5 am donnerstag“ · „mira sperre 17,5 bis 1. märz“ · „mira halte stufe 3 wochen“ · „mira entsperre“, „mira entsperre stufe“
    · „mira +1,25“, „mira +1,25 jeden montag“, „mira ein Satz mehr“, „mira 4x3 mit 10 jeden Montag“ – auch mit mehreren Namen: mira und jon …
    · „alle pausieren diese woche“, „keine archers für alle außer mira“, „alle -10% am sonntag“ · nach einer Anweisung: „nein, 12,5“, „das gleiche für jon“, „und freitag auch“
    · „mira deload“, „mira deload ab montag“ · „mira rückgängig“ – nimmt deine letzte Anweisung zurück
    · „mira stufe archer_shoulder“ · „mira ohne muscle-ups“, „mira wieder mit muscle-ups“ · „mira regel block.loading_weeks 5“, „regel …“ für alle
    · „bestätige mira“, „ablehnen mira“ · „gesehen mira“ für Videos, „mira neustart“ nach einem Stopp · „mira pause“, „mira weiter“
    · „mira verschiebe donnerstag auf freitag“ · „wer hat sich nicht gemeldet“ · „wer hat test“ · „sag allen: …“
    · „sag mira: …“ · „mira notiz: …“ · „einladung mira“ · „nenne archer auf ellbogenhöhe ALR“
    · „was wenn mira drei tage trainiert“, „was wenn mira die stufe 5 wochen hält“ – vom Fragen ändert sich nichts
coach-edit-not-read = Änderungen an Nachrichten lese ich nicht: Es gilt, was zuerst dastand. Schreib die Anweisung neu.
coach-unknown = Das habe ich nicht verstanden. „hilfe“ zeigt, was ich kenne.
order-too-many = { $sets }×{ $reps } für { $name }: Das kann nicht gemeint sein, also ist nichts gesetzt.
order-beyond = { $name } hat ein Maximum von etwa { $most }: { $load } liegt weit darüber, also ist nichts gesetzt.
order-one-arm = { $name } steht bei { $rung }, und von { $movement } wurde nie eine saubere Wiederholung gemeldet{ $gate }. Noch ist nichts gesetzt.
button-all-the-same = Trotzdem setzen
button-set-it = So setzen
load-alone = { $name }, { $day }: { $sets }×{ $reps } mit { $load }?
order-replaced = Das tritt an die Stelle deiner Anweisung vom { $day }: { $what }.
order-aside = Für diesen Tag geht es deiner Anweisung vom { $day } vor: { $what }.
order-stands = Achtung: Daneben gilt weiter deine Anweisung vom { $day }: { $what }.
step-how = { $name }, { $day }: Da ist nichts geplant, worauf so ein Schritt passt. „NAME 4x3 mit 17,5 am Donnerstag“ sagt es ganz.
step-every = Zu „jeden“ gehört ein Wochentag: „NAME +1,25 jeden montag“. Nichts wurde gesetzt.
sets-every = Dasselbe am { $days }.
sets-every-block = Dasselbe am { $days }: so weit die Belastungswochen des Blocks reichen. „bis 1. März“ nennt ein anderes Ende.
sets-step = { $name }: { $step } auf das Geplante, am { $days }.
sets-step-block = { $name }: { $step } auf das Geplante, am { $days }: so weit die Belastungswochen des Blocks gehen. „bis 1. März“ nennt ein anderes Ende, „NAME entsperre“ beendet es.
sets-step-now = Wie es jetzt steht: { $work }.
sets-step-held = Die Regeln lassen das am { $days } nicht zu, wie es jetzt steht.
sets-step-none = Am { $days } ist kein Ziehen geplant, wie es jetzt steht.
sets-step-caps = Die Regeln gelten an jedem Tag: höchstens { $percent } % über dem besten vergleichbaren Satz von vier Wochen; nicht mehr in einem Deload, bei Schmerz, nach einer Pause oder nach zu schweren Sätzen.
step-main-only = Ein Schritt für jede Woche geht nur bei der Hauptübung von { $name }: Die Arbeit einer Stufe wächst nach eigenen Regeln. Nichts wurde gesetzt.
step-no-session = { $name }: Dann ist keine Einheit geplant. Nichts wurde gesetzt.
step-sets = { $count ->
    [one] ein Satz
   *[other] { $count } Sätze
}
step-reps = { $count ->
    [one] eine Wdh.
   *[other] { $count } Wdh.
}
order-before-step = An diesen Tagen geht deine Anweisung vom { $day } vor: { $what }.
order-hard = Achtung: { $reps } Wiederholungen sind mehr als die { $possible }, von denen die Meldungen von { $name } bei dieser Last sprechen.
coach-not-done = Nichts ist geändert: „{ $words }“ gehört zu keiner Anweisung, die ich kenne. Bitte nur die Anweisung; Worte an { $name } gehen mit „sag { $handle }: …“.
coach-only = Das war für mich nur eine Frage; von „{ $words }“ habe ich nichts verstanden, und nichts ist geändert.
order-for-all = Nichts ist geändert: „{ $words }“ gehört zu keiner Anweisung für alle, die ich kenne. „alle pausieren diese woche“, „keine archers für alle bis freitag“, „alle außer mira -10% am sonntag“; Worte an alle gehen mit „sag allen: …“.
order-by-name = Das geht nur beim Namen: Last, Stufe, Videos und das Ende eines Stopps richten sich nach dem, was einer gezeigt hat. Nichts wurde getan. „alle -10%“ macht es leichter, für jeden vom eigenen Plan aus.
order-all-sure = „{ $order }“ für { $count }: Das verlangt von allen zugleich mehr oder gibt ihnen zurück, was ihnen genommen war. Noch ist nichts getan.
button-for-all = Für alle { $count } tun
order-instead = Statt: { $what }.
order-of-day = was du am { $day } gesagt hast
together-done = Getan für { $count } von { $of }:
together-nobody = Für niemanden getan:
together-not = Nicht getan:
moved = { $name }: Die Einheit von { $since } ist jetzt { $until }.
moved-no-room = { $name }: Die Einheit von { $since } passt nicht auf { $until } – eine Einheit am Tag, 48 Stunden zwischen Zugtagen. Nichts wurde verschoben.
moved-done = { $name } hat die Einheit vom { $since } schon gemacht; nichts wurde verschoben.
moved-too = Damit rückt die Einheit von { $since } auf { $until }.
moved-gone = Damit fällt die Einheit von { $since } aus.
moved-how = Welche Einheit von { $name } wohin soll, habe ich nicht verstanden. „NAME verschiebe donnerstag auf freitag“
told-moved = { $coach } hat deine Einheit von { $since } auf { $until } verschoben.
tell-all-what = Was soll ich allen sagen? „sag allen: Worte“
told-all = { $count ->
    [0] Niemand hat einen offenen Chat mit diesem Bot.
    [one] { $names } hat es.
   *[other] { $count } haben es: { $names }.
}
unheard = Noch kein Wort zur heutigen Einheit: { $names }
unheard-nobody = Zur heutigen Einheit fehlt von niemandem ein Wort.
who-tests = Tests in den nächsten zwei Wochen: { $told }.
who-tests-one = { $name } { $day }
who-tests-nobody = In den nächsten zwei Wochen hat niemand einen Test.
who-deloads = In der Deload-Woche: { $names }.
coach-whom = Wen meinst du?
coach-meant = Meinst du { $name }?
coach-whom-typed = Wen meinst du? Schreib den Namen.
coach-not-wanted = Nichts ist getan.
coach-who = Wen meinst du? { $names }
button-approve = Bestätigen
button-hold = Halten
button-train-on = Rückschritt aufheben
button-settle = Keine Antwort nötig
button-ask = Fragen, wie es läuft
button-for = { $label }: { $name }
not-screened = { $name } ist durch die Gesundheitsfragen noch nicht freigegeben. Kein Training, bevor du bestätigst.
started = { $name } darf anfangen; der erste Block ist bestätigt.
started-already = { $name } hat schon angefangen.
trained-on = { $name }: Der Rückschritt wegen { $place } ist aufgehoben.
restarted = { $name } darf wieder trainieren.
told-restart = { $coach } hat dich freigegeben: Es geht weiter.
proposal-promotion = { $name }: bereit für { $rung }. { $reasons }
proposal-step_back = { $name }: eine Stufe zurück auf { $rung }? { $reasons }
decided-approve = { $name }: { $rung } bestätigt.
decided-decline = { $name }: { $rung } noch nicht.
settled = { $name }: { $count ->
    [one] eine Nachricht braucht keine Antwort.
   *[other] { $count } Nachrichten brauchen keine Antwort.
}
asked = { $name } ist gefragt, wie es läuft.
asked-already = { $name } wurde heute schon gefragt oder hat keinen offenen Chat mit diesem Bot.
asked-by-coach = { $coach } fragt, wie es läuft: Von dir kam zuletzt nichts. Eine Zeile genügt – was du gemacht hast oder was dich abhält.
decided-nothing = { $name }: Es gibt nichts mehr zu entscheiden.
told-promotion = { $coach } hat deine nächste Stufe bestätigt: { $rung }. Sie kommt mit deinem nächsten Block.
told-step_back = { $coach } nimmt dich für jetzt eine Stufe zurück, auf { $rung }.
alert = { $name }: { $what }
of-athlete = { $name }: { $what }
passed-to-coach = { $name } schreibt: „{ $text }“ – Antwort mit „sag { $handle }: …“
clip-for-coach = { $name } schickt ein Video: „{ $text }“
clip-for-coach-silent = { $name } schickt ein Video.
clip-kept-as = Zählt als: { $shown }
clip-side = { $movement }, { $side }
button-seen = Gesehen
clips-seen = { $name }: { $count ->
    [0] Kein Video wartet.
    [one] Ein Video als gesehen markiert.
   *[other] { $count } Videos als gesehen markiert.
}
set-aside-for-coach = Eine Nachricht von { $name } ließ sich nicht bearbeiten. Sie ist aufgehoben und zur Seite gelegt.
unreachable = { $name } ist nicht mehr erreichbar: Der Chat nimmt keine Nachrichten an.
joined-for-coach = { $name } ist dabei.
ask-expired = { $name } hat nicht beantwortet, was mit „{ $span }“ gemeint war in: „{ $text }“. Der Rest zählt.
told = An { $name } weitergegeben.
told-nobody = { $name } hat keinen offenen Chat mit diesem Bot, deshalb kam nichts an. „einladung NAME“ macht einen Code.
tell-what = Was soll ich { $name } sagen? „sag NAME: Worte“
note-kept = Notiz zu { $name }. Angezeigt wird sie { $name } nicht, aber sie liegt der Kopie der Daten bei, falls { $name } danach fragt.
invited = Für { $name }, einmalig, 30 Tage gültig: /start { $code }
sets-how = Die Sätze für { $name } habe ich nicht verstanden. „NAME 4x3 mit 17,5 am donnerstag“
sets-set = { $name }, { $day }: { $work }
sets-past = { $name }: { $day } ist vorbei; daran ändert das nichts.
sets-not-sent = { $name }, { $day }: So wie es steht, werden diese Sätze nicht geschickt. { $why } Sie bleiben vorgemerkt, falls sich das vorher ändert.
sets-instead = Sie ersetzen die Einheit am { $day }, die ausfällt: 48 Stunden zwischen Zugtagen.
sets-near = Beachte: { $days } liegt näher als 48 Stunden und bleibt wie geplant.
load-rounded = { $given } sind { $load } mit den Scheiben von { $name }.
load-between = Achtung: { $given } geben die Scheiben von { $name } nicht her; das Nächste darunter ist { $load }.
lock-how = Die Last für { $name } habe ich nicht verstanden. „NAME sperre 17,5 bis 1. märz“
locked = { $name }: Last gesperrt auf { $load } { $until }.
held = { $name }: Stufe gehalten { $until }.
held-ladder = { $name }: { $ladder } gehalten { $until }.
rung-set = { $name }: jetzt auf { $rung }.
rung-gate-unmet = (verlangt wird { $want } des Körpergewichts, gezeigt sind { $have })
rung-unknown = Die Stufe „{ $rung }“ gibt es nicht. Es gibt: { $rungs }
movement-unknown = Die Übung „{ $movement }“ kenne ich nicht.
excluded = { $name }: ohne { $movement }, { $until }.
deload-ordered = { $name }: Der Deload beginnt am { $day }.
deload-none = { $name }: Ab { $day } lässt sich derzeit kein Deload planen; es bleibt, wie es ist.
deload-stands = { $name }: Das ist schon die Deload-Woche; es bleibt, wie es ist.
taken-back = { $name }, zurückgenommen: { $what }.
taken-back-other = { $name }: Was du am { $day } gesagt hast, ist zurückgenommen.
taken-back-again = Was sie ersetzt hatte, gilt wieder: { $what }.
taken-back-for-all = Für alle zurückgenommen: { $what }.
nickname-again = „{ $nickname }“ ist wieder { $movement }
nickname-gone = „{ $nickname }“ ist kein Spitzname mehr
rule-again = { $rule } ist wieder { $value }
taken-back-nothing = Es gibt keine Anweisung von dir zurückzunehmen.
told-taken-back = { $coach } hat zurückgenommen, was am { $day } entschieden wurde. „heute“ zeigt, was gilt.
unlocked = { $name }, aufgehoben: { $what }.
unlocked-nothing = { $name }: Nichts davon ist gesperrt, gehalten oder ausgelassen; nichts wurde geändert.
paused = { $name }: Pause { $until }.
pause-replaced = Sie tritt an die Stelle deiner Pause { $until }.
rested = { $name }: kein Training am { $day }.
until-day = bis { $day }
until-lifted = bis auf Weiteres
effect = Als Nächstes, { $day }: { $work }
effect-none = Kein Training in Sicht.
resumed = { $name }: Das Training geht weiter.
nickname-set = „{ $nickname }“ heißt ab jetzt { $movement }.
nickname-too-long = Ein Spitzname kann höchstens { $most } Zeichen haben. Dieser gilt nicht.
nickname-unclear = Welche Übung soll das sein? „nenne ÜBUNG SPITZNAME“
rule-how = „regel NAME WERT“, zum Beispiel „regel block.loading_weeks 5“
rule-unknown = Die Regel „{ $rule }“ gibt es nicht.
rule-set = { $name }: { $rule } ist jetzt { $value }.
rule-set-all = { $rule } ist jetzt { $value }, für alle.
roster-loaded = { $count ->
    [one] Ein Athlet ist geladen, { $added } neu.
   *[other] { $count } Athleten sind geladen, { $added } davon neu.
}
roster-erased = Nicht aufgenommen, weil sie alle ihre Daten löschen ließen: { $names }. Nimm sie aus der Datei; oder lade sie, wenn sie selbst zurückkommen wollen, mit { $how }
roster-absent = Nicht in der Datei, unverändert gelassen: { $names }
roster-own = Von den Athleten selbst eingestellt; bleibt, bis die Datei etwas anderes sagt: { $settings }
roster-own-plan-at = { $handle } (Plan um { $at })
roster-own-unit = { $handle } (Lasten in { $unit })
roster-code = Code für { $name }, einmalig, 30 Tage gültig: /start { $code }

summary-heading = Woche bis { $day }: { $count ->
    [one] ein Athlet
   *[other] { $count } Athleten
}
summary-needing = Brauchen dich ({ $count }):
summary-nobody = Diese Woche braucht dich niemand.
summary-away = Nicht da ({ $count }):
summary-away-away = weg { $until }
summary-away-ill = krank { $until }
summary-away-pause = pausiert { $until }
summary-fine = Läuft ({ $count }) – Einheiten getan von geplant in vier Wochen, Stufe und Dosis, Maximum:
summary-line = · { $name }: { $what }
summary-unanswered = { $count ->
    [one] schrieb am { $day }: { $words }
   *[other] { $count } Nachrichten warten seit { $day } auf deine Antwort, zuletzt: { $words }
}
summary-clips = { $count ->
    [one] ein Video vom { $day } wartet darauf, gesehen zu werden.
   *[other] { $count } Videos warten darauf, gesehen zu werden, das älteste vom { $day }.
}
summary-stopped = Möchte keine Nachrichten mehr.
summary-open-set = das Ergebnis eines offenen Satzes fehlt: { $span }.
fine-sessions = { $done }/{ $planned }
fine-rung = { $rung }, { $dose }
fine-strength = +{ $added }
fine-pain = Schmerz, { $place } { $score }/10 am { $day }
fine-deload = Deload und Test

card-heading = { $name }, { $day }
card-block = Block { $block }, Woche { $week } von { $weeks }
card-bodyweight = Körpergewicht { $weight }
card-pain = Schmerz: { $place } { $score }/10 am { $day }
card-session = { $day }: { $work }
card-order = Deine Anweisung vom { $day }: { $what }
order-start = darf anfangen
order-approve = { $rung } bestätigt
order-decline = { $rung } noch nicht
order-set_rung = Stufe { $rung }
order-hold_rung = Stufe gehalten { $until }
order-hold_rung-of = { $ladder } gehalten { $until }
order-set_sets = { $sets }×{ $reps } { $load } am { $for_date }
order-set_sets-of = { $sets }×{ $reps } { $movement } { $load } am { $for_date }
order-step_sets = { $step } auf das Geplante am { $for_date }
load-as-planned = mit der geplanten Last
order-lock_load = Last gesperrt auf { $load } { $until }
order-unlock = Sperren aufgehoben
order-unlock-hold_rung = Stufe wieder frei
order-unlock-lock_load = Last wieder frei
order-unlock-step_sets = Schritte jeder Woche beendet
order-unlock-exclude = wieder mit { $movement }
order-exclude = ohne { $movement } { $until }
order-deload = Deload ab { $for_date }
order-restart = darf wieder trainieren
order-train_on = Rückschritt wegen { $value } aufgehoben
order-set_rule = { $rule } { $value }
order-swap = { $movement } als { $value } { $until }
card-doubt = Offene Frage: was „{ $span }“ bedeutet in „{ $text }“
card-note = Notiz: { $text }
