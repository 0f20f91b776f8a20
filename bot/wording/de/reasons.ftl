# Warum der Plan so ist: ein Satz für jeden Grund, in Zahlen.

reason-load_up = { $movement }: von { $before_kg } auf { $load_kg }; deine Meldungen ergeben ein Maximum von { $e1rm_kg } mit Körpergewicht.
reason-load_down = { $movement }: von { $before_kg } herunter auf { $load_kg }; deine Meldungen ergeben ein Maximum von { $e1rm_kg } mit Körpergewicht, für { $reps } Wiederholungen bei RPE { $rpe }.
reason-load_same = { $movement }: { $load_kg } bleibt; deine Meldungen ergeben ein Maximum von { $e1rm_kg } mit Körpergewicht, die nächste Scheibe ist noch nicht verdient.
reason-load_first = { $movement }: { $load_kg } zum Anfang, aus einem Maximum von { $e1rm_kg } mit Körpergewicht, für { $reps } Wiederholungen bei RPE { $rpe }.
reason-load_block = { $movement }: { $load_kg } für { $reps } Wiederholungen bei RPE { $rpe }, wie es diese Woche im Block vorgesehen ist; { $before_when }: { $before_reps } Wiederholungen mit { $before_kg }. Maximum { $e1rm_kg } mit Körpergewicht.
reason-load_test = { $movement }: { $load_kg } für { $reps } bei RPE { $rpe }, um zu messen, wo du stehst.
reason-load_capped = { $movement }: { $load_kg }, auch wenn vielleicht mehr drin wäre: nie mehr als { $percent } % der Gesamtlast über deinem besten Satz der letzten vier Wochen.
reason-load_fewer_reps = { $movement }: { $reps } statt { $wanted_reps } Wiederholungen, denn das Körpergewicht allein ist schwer genug.
reason-load_absence = { $movement }: { $load_kg }, { $percent } % der Gesamtlast weniger nach deiner Abwesenheit.
reason-load_pain_cut = { $movement }: { $load_kg }, { $percent } % der Gesamtlast weniger wegen des Schmerzes; das fühlt sich leicht an.
reason-load_deload = { $movement }: { $load_kg }, mit Absicht leicht: Ein Deload bleibt unter Woche 1 und den letzten zwei Wochen.
reason-load_cut_effort = { $movement }: { $load_kg } nach { $before_kg }, weil { $before_when } zwei Punkte oder mehr über der geplanten RPE lag.
reason-load_hold_effort = { $movement }: { $load_kg }, gehalten, weil { $before_when } einen Punkt über der geplanten RPE lag.
compared-with = die letzte Einheit dieser Art (am { $day })
compared-with-last = das letzte Mal
reason-load_hold_short = { $movement }: { $load_kg }, gehalten, weil { $before_when } weniger Wiederholungen hatte als geplant und nichts dazu, wie schwer sie waren.
reason-load_hold_pain = { $movement }: { $load_kg }, gehalten, solange es weh tut.
reason-load_after_gap = { $movement }: { $load_kg }, nicht mehr als zuletzt, denn aus den letzten vier Wochen gibt es nichts zum Vergleichen.
reason-load_unknown = { $movement }: noch keine Sätze von dir, also so viele, wie bei RPE { $rpe } gehen; daraus mache ich den nächsten Plan.
reason-load_pulldown = Vorerst noch unter Körpergewicht, deshalb am Gerät: { $movement } mit { $load_kg }.
reason-load_assisted = Vorerst noch unter Körpergewicht, deshalb mit { $assist_kg } Unterstützung: { $movement }.
reason-bodyweight_only = { $movement }: nichts, um Gewicht anzuhängen, also { $reps } Wiederholungen mit Körpergewicht, RPE bis { $rpe }.
reason-bodyweight_changed = Du wiegst { $now_kg }, letztes Mal { $was_kg }: Mit derselben Last am Gürtel ({ $before_kg }) würdest du insgesamt { $change ->
    [less] weniger
   *[more] mehr
} ziehen.
reason-nothing_to_pull_on = Kein Ziehen: Hier gibt es nichts für { $movement }.
reason-movement_left_out = { $movement } statt { $before }; das lässt dein Coach weg.
reason-movement_substituted = { $movement } statt { $before }, weil deine Ausrüstung das nicht hergibt.
reason-movement_swapped = { $movement } statt { $before }, auf Anweisung deines Coachs.
reason-grip_of_block = { $movement } statt { $before } in diesem Block, um dasselbe Gewebe zu schonen.
reason-grip_for_pain = { $movement } statt { $before }: Dieser Griff hat nicht weh getan.

reason-load_locked = Dein Coach hat die Last auf { $load_kg } gesperrt, { $until }.
reason-sets_ordered = Dein Coach hat das so vorgegeben: { $sets }×{ $reps } { $movement }, { $load_kg }.
reason-step_ordered = Dein Coach will einen Schritt über den Plan hinaus oder darunter: { $sets }×{ $reps } { $movement } { $load_kg } statt { $was_sets }×{ $was_reps } { $planned_kg }.
reason-step_held = Der Schritt deines Coachs bei { $movement } wartet: Die Regeln lassen an dem Tag nicht mehr zu.
reason-rung_set_by_coach = Dein Coach hat dich auf diese Stufe gesetzt: { $rung }.
reason-rung_approved = { $rung }, von deinem Coach bestätigt.
reason-rung_after_absence = Eine Stufe zurück auf { $rung }, nach { $days } Tagen ohne Training.
reason-rung_test = Test für { $rung }: { $reps ->
    [0] der längste saubere Halt
    [one] eine saubere Wiederholung je Seite
   *[other] { $reps } saubere Wiederholungen
} zum Festhalten. Was ein Test zeigt, wird deshalb noch nicht trainiert.
reason-no_test_pain = Kein Test für { $rung }, solange etwas weh tut.
reason-no_test_exposures = Diesmal kein Test für { $rung }: Es wären zu viele einarmige Wiederholungen für eine Woche.

reason-dose_volume = { $rung }: { $sets }×{ $reps } bei RPE bis { $rpe }.
reason-dose_of_rung = { $rung }: Dosis { $dose }, heute { $sets ->
    [one] ein Satz
   *[other] { $sets } Sätze
} je Seite.
reason-dose_grows = { $rung }: von { $before } auf { $dose }, weil der letzte Block im Rahmen der RPE blieb.
reason-dose_shrinks = { $rung }: von { $before } zurück auf { $dose }, weil es in { $sessions } Einheiten hintereinander zu schwer war.
reason-third_set = { $rung }: ein dritter Satz, weil dieselbe Arbeit um einen Punkt leichter geworden ist.
reason-exposures_capped = { $rung }: { $reps } statt { $wanted_reps } Wiederholungen je Seite, weil einarmige Wiederholungen um höchstens 30 % oder 4 je Woche zunehmen.
reason-joints_shared = { $rung }: heute weniger Sätze, weil deine Leitern dieselben Ellbogen und Schultern belasten ({ $sets } Sätze am Tag).
reason-hold_unknown = { $rung }: noch kein Halt von dir, also so lange er sauber ist.
reason-hold_test = { $rung }: ein Halt, so lange er sauber ist, um deinen besten zu messen.
reason-hold_of_best = { $rung }: { $seconds } s halten, etwa 60 % von deinen besten { $best_s } s.
reason-skill_out_pain = { $rung }: fällt wegen des Schmerzes aus.
reason-step_back_pain = Zurück auf { $rung } (statt { $before }), bis zwei Wochen ruhig sind.
reason-skill_left_out = { $rung }: fällt aus, so hat es dein Coach gesagt.
reason-skill_not_possible = { $rung }: fällt aus, deine Ausrüstung gibt das heute nicht her.
reason-proof_shown = Gezeigt am { $on_day }: { $shown }.
reason-clips_missing = Noch kein Video, das du gesehen hast: { $sides }.
reason-reps_missed = In { $sessions } Einheiten hintereinander fehlten Wiederholungen: { $rung }.

reason-pain_no_score = Schmerz, { $place }: Lasten bleiben, bis eine Zahl da ist.
reason-pain_hold = Schmerz, { $place } { $score }/10: Lasten bleiben, nichts Neues.
reason-pain_fine = Schmerz, { $place } { $score }/10: weiter nach Plan.
reason-pain_next_morning = Schmerz, { $place } { $score }/10, am nächsten Morgen noch da: eine Woche keine Skill-Sätze, Hauptübung leichter.
reason-pain_rising = Schmerz, { $place } { $score }/10, seit zwei Wochen steigend: eine Woche keine Skill-Sätze, Hauptübung leichter.
reason-pain_three_sessions = Schmerz, { $place } { $score }/10, drei Einheiten in Folge: eine Stufe zurück, bis zwei Wochen ruhig sind.
reason-pain_over = Schmerz, { $place } { $score }/10: nichts, was die Stelle belastet, bis dein Coach es freigibt.
reason-pain_at_rest = Schmerz in Ruhe, { $place } { $score }/10: nichts, was die Stelle belastet, bis dein Coach es freigibt.

reason-deload_effort = Früher Deload: zwei Einheiten in Folge mindestens { $over_rpe } Punkte über der geplanten RPE.
reason-deload_strength_down = Früher Deload: Die Kraft liegt im Trend { $percent } % tiefer.
reason-deload_pain = Früher Deload wegen Schmerz, { $place } { $score }/10.
reason-deload_ordered = Deload ab jetzt, von deinem Coach am { $day } angeordnet.
reason-comeback = Erste Woche nach { $days } Tagen Pause: { $percent } % der Gesamtlast weniger, RPE bis { $rpe }. Das ist Vorsicht; wirklich verloren hast du weniger.
reason-session_moved = Von { $from_day } hierher verschoben.
reason-session_slid = Von { $from_day } hierher gerückt: dort ausgefallen, und 48 Stunden Abstand passen.
reason-session_gone = Die Einheit von { $from_day } ist jetzt { $to_day }.
reason-session_dropped = Die Einheit vom { $day } fällt aus; verdoppelt wird nichts.
reason-session_done_early = Die Einheit vom { $day } hast du schon am { $done_on } gemacht.
reason-away_away = Weg seit { $since } { $until }.
reason-away_ill = Krank seit { $since } { $until }; nach Fieber erst zwei Tage ohne.
reason-away_pause = Pause seit { $since } { $until }.
reason-paused = Pause seit { $since } { $until }.
reason-not_screened = Die Gesundheitsfragen sind noch nicht freigegeben; dein Coach startet den Plan.
reason-warning_sign = Das Training ruht seit { $since }. Grund: { $sign }. Dein Coach startet es wieder, sobald das ärztlich angesehen ist.

# Was der Coach hört.
alert-stopped_by_sign = gestoppt seit { $since }, Grund: { $sign }. Nur du kannst den Plan wieder starten.
alert-screening_open = die Gesundheitsfragen sind nicht freigegeben; kein Training, bis du bestätigst.
alert-pain_stop = Schmerz, { $place } { $score }/10 seit { $since }: Was die Stelle belastet, ist gestoppt, bis du „neustart“ sagst.
alert-pain_step_down = Schmerz, { $place } { $score }/10 seit { $since }: eine Woche keine Skill-Sätze, Hauptübung 10 % leichter.
alert-pain_step_back = Schmerz, { $place } { $score }/10, drei Einheiten in Folge: eine Stufe zurück, bis zwei Wochen ruhig sind.
alert-proposal_waiting = ein Schritt wartet auf deine Entscheidung: { $rung }.
alert-silent = seit { $sessions ->
    [one] einer Einheit
   *[other] { $sessions } Einheiten
} keine Meldung.
alert-strength_down = Kraft im Trend { $percent } % tiefer, früher Deload.

shown-reps = { $reps ->
    [one] eine Wiederholung
   *[other] { $reps } Wiederholungen
}
shown-sides = links { $left }, rechts { $right } Wiederholungen
shown-seconds = { $seconds } s gehalten

gate-relative_added = maximale Zusatzlast in Körpergewichten
gate-shown_either = Wiederholungen je Seite mit der freien Hand an der Schulter oder wenig Gegengewicht
gate-held = { $dose } im Rahmen der RPE
gate-hold_of = { $movement }, Sekunden
gate-reps_of = { $movement } in einem Satz
gate-sets_of = { $movement } in jedem Satz
