# Short answers, help, strangers, trouble.
coach-knows = Your coach knows.
coach-not-reached = I could not reach your coach. If it cannot wait, tell them yourself.
passed-on = Passed on to your coach.
from-coach = { $name }: { $text }
clip-passed-on = The clip is with your coach.
smalltalk = 👍
unknown = I did not find anything to note in that. Tell me what you did (“pull-ups 5x3 +20, last @8”), or ask “what's today?”. “Help” shows more.
number-alone = “{ $number }” of what? I asked nothing just now. Tell me what it belongs to: “pull-ups 5x3 +20”, “left elbow 2/10”.
empty = That message had no words. Tell me what you did, or ask “what's today?”.
too-long = That was long: I read the first { $limit } characters. Send the rest as another message.
edit-not-read = I don't read edits: what you wrote first stands. Put it right in a new message, such as “that was 22.5, not 20”.
press-unknown = That button no longer means anything. Write it in words instead.
one-at-a-time = You are writing faster than I can answer. I read and note every message, one after the other; plain answers to some of them are left out. Ask “this week?” to see where you stand.
older-dropped = I could not reach you for a while. Messages that had grown too old in the meantime were dropped; what comes now is current. Ask “what's today?” for today's plan.
set-aside = Sorry, something went wrong with your last message. It is kept.
help =
    Tell me in your own words:
    · what you did – “pull-ups 5x3 +20, last @8”, “done as planned”, “same but 2 on the last”
    · pain – “left elbow 3/10 this morning”
    · bodyweight, sleep, time – “bw 71.2, slept 7h, 65 min”
    · days – “move Thursday to Saturday”, “missed yesterday”, “away 9–16 April”, “ill”
    Ask me: “what's today?”, “this week?”, “why less weight?”, “how far am I?”
    Mend: “that was 22.5 not 20”, “delete that”. “Tell the coach …” passes words on.
    No medical advice here: with a warning sign, stop and see a doctor.
stranger = This bot works by invitation. Ask your coach for a code and send it as /start CODE.
code-unknown = That code does not work. Ask your coach for a new one and send it as /start CODE.
joined = Hello { $name }, you are with { $coach } now. What you write here (training, pain, bodyweight) is stored and seen by your coach only. Ask for all of it or have it erased at any time.

quoted = “{ $text }”
# Patterns of days by CLDR: “Mon 4 Jan”, “Monday 4 January”.
day-pattern = EEE d MMM
long-day-pattern = EEEE d MMMM
swap-passed-on = Which movements are in the plan is { $coach }'s to decide; until you hear, it stands as it is. If you do something else today, tell me what you did.
unit-set-lb = From now on I show your loads in pounds, and read bare numbers as pounds.
unit-set-kg = From now on I show your loads in kilograms, and read bare numbers as kilograms.
plan-at-set = From now on the day's plan comes at { $at }.
plan-at-odd = I can send the day's plan between { $earliest } and { $latest }. Which hour shall it be? “Send the plan at 8”
