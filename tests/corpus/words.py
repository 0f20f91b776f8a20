"""Words of three languages for the generator: movements, frames, fillers. All are plain usage of the trade."""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True)
class Words:
    """What a voice of one language draws from. Frames take n, r, s (seconds), load, left, right, mv, rpe."""

    loaded: dict[str, tuple[str, ...]]  # two-sided work in repetitions that takes added load
    plain: dict[str, tuple[str, ...]]  # repetitions, seldom loaded
    holds: dict[str, tuple[str, ...]]
    sided: dict[str, tuple[str, ...]]
    with_load: tuple[str, ...]
    sets_of: tuple[str, ...]
    last_effort: tuple[str, ...]
    all_effort: tuple[str, ...]
    per_side: tuple[str, ...]
    left_right: tuple[str, ...]
    seconds: tuple[str, ...]
    session: tuple[str, ...]
    minutes: tuple[str, ...]
    sleep: tuple[str, ...]
    weight: tuple[str, ...]
    places: dict[str, tuple[str, ...]]
    sides: dict[str, str]
    when: dict[str, str]
    no_pain: tuple[str, ...]
    questions: dict[str, tuple[str, ...]]
    days: dict[int, tuple[str, ...]]  # days back
    openings: tuple[str, ...]
    closings: tuple[str, ...]
    numbers: tuple[str, ...]  # zero to twenty
    kilos: tuple[str, ...]
    spoken: tuple[str, ...]  # frames of dictation: n, r, mv, load in words


ENGLISH = Words(
    loaded={
        "pull_up": ("pull-ups", "pull ups", "pullups", "weighted pull-ups", "weighted pullups"),
        "chin_up": ("chin-ups", "chin ups", "chins", "chinups"),
        "dip": ("dips", "weighted dips"),
        "neutral_grip_pull_up": ("neutral grip pull-ups", "neutral grip pullups"),
        "ring_pull_up": ("ring pull-ups", "ring pull ups"),
        "ring_dip": ("ring dips",),
    },
    plain={
        "push_up": ("push-ups", "pushups", "push ups"),
        "ring_row": ("ring rows",),
        "muscle_up": ("muscle-ups", "muscle ups"),
        "handstand_push_up": ("handstand push-ups", "hspu"),
        "hanging_leg_raise": ("hanging leg raises",),
        "scapular_pull_up": ("scap pull-ups", "scapular pull-ups"),
    },
    holds={
        "tuck_front_lever": ("tuck front lever", "tuck FL"),
        "advanced_tuck_front_lever": ("advanced tuck front lever", "adv tuck front lever"),
        "dead_hang": ("dead hang", "dead hangs"),
        "l_sit": ("L-sit", "l-sit"),
        "hollow_hold": ("hollow hold", "hollow holds"),
        "planche_lean": ("planche lean", "planche leans"),
        "back_lever": ("back lever",),
    },
    sided={
        "archer_pull_up": ("archer pull-ups", "archer pull ups"),
        "one_arm_pull_up": ("one-arm pull-ups", "one arm pull ups"),
        "one_arm_chin_up": ("one-arm chin-ups", "one arm chins"),
    },
    with_load=(
        " +{load}",
        " +{load}kg",
        " @ {load}kg",
        " with {load} kg",
        " w/ {load}kg",
        " at +{load}",
        " plus {load} kg",
    ),
    sets_of=("{n} sets of {r} {mv}{load}", "{n} sets x {r} reps {mv}{load}", "{r} reps x {n} sets {mv}{load}"),
    last_effort=(", last set rpe {rpe}", ", last one @{rpe}", ", last set was rpe {rpe}", " (last set RPE {rpe})"),
    all_effort=(", all rpe {rpe}", ", every set rpe {rpe}", ", all sets @{rpe}"),
    per_side=("per arm", "each side", "per side", "e/s", "each arm"),
    left_right=("L {left} R {right}", "{left} left {right} right", "left {left}, right {right}"),
    seconds=("s", " sec", " seconds"),
    session=("session rpe {rpe}", "overall rpe {rpe}", "session was a {rpe}"),
    minutes=("took {min} min", "{min} minutes in total", "{min} min"),
    sleep=("slept {h}h", "slept {h} hours", "{h}h sleep"),
    weight=("bw {kg}", "bodyweight {kg} kg", "weighed {kg}kg this morning"),
    places={
        "elbow": ("elbow",),
        "elbow_inner": ("inner elbow",),
        "shoulder": ("shoulder",),
        "wrist": ("wrist",),
        "knee": ("knee",),
        "forearm": ("forearm",),
    },
    sides={"left": "left", "right": "right"},
    when={"during": "during", "after": "after"},
    no_pain=("no pain", "pain free", "zero pain"),
    questions={
        "plan_week": ("what does the rest of the week look like?", "show me the week please"),
        "why": ("why so little weight?", "why the lighter load?"),
        "progress": ("how am I progressing?", "show my progress"),
        "for_coach": ("please tell the coach I said hi", "tell coach the video comes later"),
    },
    days={0: ("today",), 1: ("yesterday",), 2: ("day before yesterday", "two days ago")},
    openings=("hey coach", "ok so", "hi", "finally", "phew"),
    closings=("felt good", "tough one", "happy with that", "cheers", "time for food", "see you"),
    numbers=tuple(
        "zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen "
        "seventeen eighteen nineteen twenty".split()
    ),
    kilos=("kilos", "kilograms"),
    spoken=(
        "{n} sets of {r} {mv} with {load}",
        "{mv} {n} sets of {r} with {load}",
        "i did {mv} {n} by {r} with {load}",
    ),
)

GERMAN = Words(
    loaded={
        "pull_up": ("Klimmzüge", "Klimmis", "Klimmzüge im Obergriff"),
        "chin_up": ("Chin-ups", "Klimmzüge im Untergriff"),
        "dip": ("Dips", "Dips mit Gewicht"),
        "neutral_grip_pull_up": ("Klimmzüge im Neutralgriff",),
        "ring_pull_up": ("Ringklimmzüge",),
        "ring_dip": ("Ringdips",),
    },
    plain={
        "push_up": ("Liegestütze", "Liegestütz"),
        "ring_row": ("Ringrudern",),
        "muscle_up": ("Muscle-ups",),
        "handstand_push_up": ("Handstandliegestütze",),
        "hanging_leg_raise": ("Beinheben im Hang",),
        "squat": ("Kniebeugen",),
    },
    holds={
        "tuck_front_lever": ("Tuck Front Lever",),
        "advanced_tuck_front_lever": ("Advanced Tuck Front Lever",),
        "l_sit": ("L-Sitz", "L-Sit"),
        "hollow_hold": ("Hollow Hold",),
        "back_lever": ("Back Lever",),
        "handstand_hold": ("Handstand",),
    },
    sided={
        "archer_pull_up": ("Archer-Klimmzüge",),
        "one_arm_pull_up": ("einarmige Klimmzüge",),
    },
    with_load=(" +{load}", " +{load}kg", " @ {load}kg", " mit {load} kg", " mit {load} Kilo", " plus {load} kg"),
    sets_of=("{n} Sätze zu je {r} {mv}{load}", "{n} Sätze à {r} {mv}{load}", "{mv} {n} Sätze mit je {r} Wdh{load}"),
    last_effort=(", letzter Satz RPE {rpe}", ", letzter Satz @{rpe}", ", beim letzten RPE {rpe}"),
    all_effort=(", alle RPE {rpe}", ", jeder Satz RPE {rpe}", ", alle Sätze @{rpe}"),
    per_side=("pro Arm", "je Seite", "pro Seite"),
    left_right=("links {left} rechts {right}", "links {left}, rechts {right}", "li {left} re {right}"),
    seconds=("s", " Sek", " Sekunden"),
    session=("Einheit RPE {rpe}", "insgesamt RPE {rpe}", "Session RPE {rpe}"),
    minutes=("{min} Minuten gesamt", "hat {min} min gedauert", "{min} min"),
    sleep=("{h} h geschlafen", "{h} Stunden Schlaf", "Schlaf {h}h"),
    weight=("Gewicht heute früh {kg}", "Körpergewicht {kg} kg", "wiege {kg} kg"),
    places={
        "elbow": ("Ellbogen", "Ellenbogen"),
        "shoulder": ("Schulter",),
        "wrist": ("Handgelenk",),
        "knee": ("Knie",),
        "forearm": ("Unterarm",),
    },
    sides={"left": "links", "right": "rechts"},
    when={"during": "beim Ziehen", "after": "danach"},
    no_pain=("keine Schmerzen", "schmerzfrei", "tut nix weh"),
    questions={
        "plan_week": ("wie schaut der Rest der Woche aus?", "zeig mir bitte die Woche"),
        "why": ("warum so wenig Gewicht?", "wieso weniger Gewicht?"),
        "progress": ("wie ist mein Fortschritt?", "wie steh ich da?"),
        "for_coach": ("sag dem Coach schöne Grüße", "sag dem Trainer bitte, das Video kommt später"),
    },
    days={0: ("heute", "heut"), 1: ("gestern",), 2: ("vorgestern",)},
    openings=("Servus", "Hallo Coach", "so", "puh", "Moin"),
    closings=("lief gut", "war zäh", "passt", "bis dann", "jetzt Essen"),
    numbers=tuple(
        "null ein zwei drei vier fünf sechs sieben acht neun zehn elf zwölf dreizehn vierzehn fünfzehn sechzehn "
        "siebzehn achtzehn neunzehn zwanzig".split()
    ),
    kilos=("Kilo", "Kilogramm"),
    spoken=(
        "{n} Sätze mit je {r} {mv} mit {load}",
        "{mv} {n} Sätze zu {r} mit {load}",
        "ich hab {n} mal {r} {mv} mit {load} gemacht",
    ),
)

SPANISH = Words(
    loaded={
        "pull_up": ("dominadas", "dominadas lastradas", "dominadas pronas"),
        "chin_up": ("dominadas supinas", "supinas"),
        "dip": ("fondos", "fondos lastrados"),
        "neutral_grip_pull_up": ("dominadas neutras", "dominadas agarre neutro"),
        "ring_pull_up": ("dominadas en anillas",),
        "ring_dip": ("fondos en anillas",),
    },
    plain={
        "push_up": ("flexiones", "lagartijas"),
        "ring_row": ("remo en anillas",),
        "muscle_up": ("muscle ups",),
        "hanging_leg_raise": ("elevaciones de piernas colgado",),
        "squat": ("sentadillas",),
    },
    holds={
        "tuck_front_lever": ("tuck front lever", "front lever tuck"),
        "advanced_tuck_front_lever": ("advanced tuck front lever",),
        "l_sit": ("L-sit",),
        "hollow_hold": ("hollow hold",),
        "back_lever": ("back lever",),
        "handstand_hold": ("pino",),
    },
    sided={
        "archer_pull_up": ("dominadas arqueras",),
        "one_arm_pull_up": ("dominadas a un brazo", "dominadas a una mano"),
    },
    with_load=(" +{load}", " +{load}kg", " @ {load}kg", " con {load} kg", " con {load} kilos"),
    sets_of=("{n} series de {r} {mv}{load}", "{mv} {n} series de {r}{load}", "{n} series x {r} reps {mv}{load}"),
    last_effort=(", última serie rpe {rpe}", ", la última @{rpe}", ", la última rpe {rpe}"),
    all_effort=(", todas rpe {rpe}", ", cada serie rpe {rpe}", ", todas @{rpe}"),
    per_side=("por brazo", "por lado", "cada lado"),
    left_right=("izq {left} der {right}", "izquierda {left}, derecha {right}", "{left} izq {right} der"),
    seconds=("s", " seg", " segundos"),
    session=("sesión rpe {rpe}", "en general rpe {rpe}", "sesión {rpe}/10"),
    minutes=("{min} minutos en total", "{min} min"),
    sleep=("dormí {h}h", "dormí {h} horas", "{h} h de sueño"),
    weight=("peso {kg} kg esta mañana", "peso corporal {kg} kg", "pesé {kg} kg"),
    places={
        "elbow": ("codo",),
        "shoulder": ("hombro",),
        "wrist": ("muñeca",),
        "knee": ("rodilla",),
        "forearm": ("antebrazo",),
    },
    sides={"left": "izquierd_", "right": "derech_"},
    when={"during": "durante", "after": "después"},
    no_pain=("sin dolor", "cero dolor", "no me duele nada"),
    questions={
        "plan_week": ("¿cómo es el resto de la semana?", "pásame la semana porfa"),
        "why": ("¿por qué tan poco peso?", "¿por qué menos peso?"),
        "progress": ("¿cómo voy de progreso?", "muéstrame mi progreso"),
        "for_coach": ("dile al coach que saludos", "dile al entrenador que el vídeo va luego"),
    },
    days={0: ("hoy",), 1: ("ayer",), 2: ("anteayer", "antes de ayer")},
    openings=("hola coach", "buenas", "bueno", "uf", "por fin"),
    closings=("bien", "duro", "contento", "saludos", "ahora a comer"),
    numbers=tuple(
        "cero una dos tres cuatro cinco seis siete ocho nueve diez once doce trece catorce quince dieciséis "
        "diecisiete dieciocho diecinueve veinte".split()
    ),
    kilos=("kilos",),
    spoken=(
        "{n} series de {r} {mv} con {load}",
        "{mv} {n} series de {r} con {load}",
        "hice {mv} {n} por {r} con {load}",
    ),
)

BY_CODE = {"en": ENGLISH, "de": GERMAN, "es": SPANISH}
