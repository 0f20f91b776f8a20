"""The reader: what an athlete writes, as data.

One message followed through it, "Chins 3x5 +20, last @9, elbow 2/10":

1. `text.fold` folds case, accents and odd signs away, with the way back to the original, so that what is asked or left
   unread is quoted verbatim. `tokens.tokenize` cuts numbers, words and signs: chins · 3 · x · 5 · + · 20 · , · last · …
2. `message.read_message` finds the language, mends typing errors (`spelling.spelled`; what `everyday` knows is none)
   and sees numbers said in words (`numbers`). Every reader gets the same frozen `Message`.
3. Readers that each see one kind of thing propose claims over tokens (`readers`): `pain` claims "elbow 2/10"; `dates`,
   `body`, `red_flags`, `corrections`, `intents` claim theirs. `assemble.conflicts` drops what contradicts itself.
4. `movements.find_movements` names the movements from features ("one arm" + "pulley") by words/combine.toml.
5. `items.make_items` and `scan` turn what is left into `facts`: three sets of five, +20 kg, "last", effort 9. Each
   form of words has a file there: schemes, lists, loads, efforts, noise …
   `ties` lets neighbours say what a fact is, one part of the message at a time; `strangers` sends exercises that no
   book knows to `unread`. `unreal` and `prose` take out wishes, tales, questions and talk. `blocks.split` gives each
   movement its facts.
6. `fold` folds a block's facts to rows (`fold.folder` gives each kind to its function): the load goes to the three
   sets, the effort to the last; then `fold.sets` checks what is plausible. Where a message leans on the plan ("all but
   the dips"), `plan` starts from the planned sets and lets each clause change them (`plan.told`).
7. `assemble.whole` makes one `Reading`. Whatever reads two ways is in `ask`, its value None.

All words are data: words/<language>/*.toml, found by `lexicon` (plain), `phrases` (with turns) and `little`.
`answers.complete` puts the answer to a question into the earlier message and reads the whole again.
`command.read_lines` is the reader as a program.
"""

from bot.reading.answers import complete
from bot.reading.assemble import read

__all__ = ["complete", "read"]
