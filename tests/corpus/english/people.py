"""Warning signs of other people and of everyday speech beside one's own."""

from tests.corpus.lines import Theme

THEME = Theme("people", "en")
say = THEME.say

say(
    "husband has chest pain, no training today",
    does="missed",
    at="2027-03-10 18:42",
    tz="Europe/London",
    dates="2027-03-10",
)
say("patient with chest pain kept me late. pull-ups 3x5", "pull_up 3x5")
say("boyfriend dislocated his shoulder. chins 4x4", "chin_up 4x4")
say("grandma fainted at lunch. dips 3x8", "dip 3x8")
say("my client felt a pop in her shoulder. pull ups 5x3 +10", "pull_up 5x3 +10")
say("colleague has numb fingers from typing. push ups 2x20", "push_up 2x20")
say("my elbow is swollen and my husband is worried", pain="elbow - -", flags="swelling")
say("chest pain, husband drives me to A&E", pain="chest - -", flags="chest_pain")
say("dude, dizzy since the last set", flags="dizziness")
say("mate, chest pain since yesterday", pain="chest - -", flags="chest_pain")
say("fingers since the hangs... they are numb", flags="numbness", pain_or=("hand - -", "hand - - after"))
say("right elbow 4/10 after. it's swollen too", pain="elbow R 4 after", flags="swelling")
say("wrist 4. Now it's turning blue", pain="wrist - 4", flags="bruising")
say("snap in the right biceps and the muscle looks balled up", pain="biceps R -", flags="pop deformity")
say("woken three times by my left shoulder", pain="shoulder L - rest", flags="night_pain")
say("my heart skipped a beat when she said yes", does="smalltalk", does_or=("unknown",))
say("there is a crack in the bar, 3 cm long", does="equipment", does_or=("smalltalk", "unknown", "for_coach"))
say("no power in the gym, lights out", does="equipment", does_or=("smalltalk", "unknown", "missed"))
say("cannot lift my right arm since this afternoon, no power in it", pain="other R -", flags="sudden_weakness")
say("scared the elbow would pop, but nothing happened. dips 3x6", "dip 3x6")
