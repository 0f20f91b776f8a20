"""Scores of pain that stand away from their place, and numbers beside a place that are none."""

from tests.corpus.lines import Theme

THEME = Theme("scores", "en")
say = THEME.say

# A sentence or a clause later
say("Shoulder grumbled today. I'd call it a 4.", pain="shoulder - 4")
say("wrist is sore. It's a 2", pain="wrist - 2")
say("knee hurts, I'd give it a 5, left one", pain="knee L 5")
say("my elbow complained all session. It's a 3, right one", pain="elbow R 3")
say("shoulder R hurts, i'd rate it 3", pain="shoulder R 3")
say("my back is killing me, call it a 6", pain="lower_back - 6")
say("elbow aches. 3 during, 1 after", pain="elbow - 3 during; elbow - 1 after")
say("no swelling, only a dull 3 in the knee", pain="knee - 3")
say("just a mild 1 in the left wrist", pain="wrist L 1")
say("I have a pain of 3 at the back of my knee", pain="knee - 3")
say("it's a 3, left elbow", pain="elbow L 3")
say("can't tell if it's a 2 or a 4, right shoulder", pain="shoulder R -", ask="score: 2 or a 4")
# Several moments, sides, places
say("left elbow 2 in the morning, 0 in training", pain="elbow L 2 morning; elbow L 0 during")
say("lower back 4 after squats, 1 this morning", pain="lower_back - 4 after; lower_back - 1 morning")
say("1 at rest, 3 when pulling", pain="- - 1 rest; - - 3 during")
say("0 in the morning, 2 by evening", pain="- - 0 morning; - - 2 after", pain_or=("- - 0 morning; - - 2",))
say("elbow: 2 left, 1 right", pain="elbow L 2; elbow R 1")
say("elbows 1 left 2 right", pain="elbow L 1; elbow R 2")
say("elbow and knee, both 2", pain="elbow - 2; knee - 2")
say("thumb and wrist both at 3", pain="hand - 3; wrist - 3")
say("both wrists a 2", pain="wrist L 2; wrist R 2")
say("hip nothing, lower back 2/10", pain="hip - 0; lower_back - 2")
say("wrist left 3, right nothing", pain="wrist L 3; wrist R 0")
say("elbow behaving, 0 all week", pain="elbow - 0")
say("shoulder ached at night a year ago. Now 1/10", pain="shoulder - 1")
say("elbow 4 yesterday, 2 today", pain="elbow - 2")
say("elbow was 4 last week, 2 after training", pain="elbow - 2 after")
# Counts of something else
say("knee hurt after 4 floors", pain="knee - - after", pain_or=("knee - -",))
say("my elbow hurts after 3 beers", pain="elbow - - after", pain_or=("elbow - -",))
say("shoulder pinches when I carry 2 bags", pain="shoulder - -", pain_or=("shoulder - - during",))
say("my elbow hurts, 2 sets skipped", pain="elbow - -", does_or=("missed", "report"))
say("Session was great. I'd call it a 7", srpe=7)
say("elbow fine. Last set call it a 9. pull ups 5x3 +20", "pull_up 5x3 +20 last@9", pain="elbow - 0", pain_or=("",))
say("shoulder felt 3 plates heavy", does="smalltalk", does_or=("unknown",))
# Somebody else's
say("my elbow hurts 3/10, my partner's elbow 5/10", pain="elbow - 3")
say("my dad's knee is at 6/10, he is 71. dips 3x8", "dip 3x8")
say("my wife thinks my wrist is swollen, 4/10", pain="wrist - 4", flags="swelling")
say("kid was ill, elbow is swollen", pain="elbow - -", flags="swelling")
