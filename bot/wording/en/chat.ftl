# The terminal.
chat-hello =
    Say what you did (“pull-ups 5x3 +20, last @8”), then ask “why?” – or “what's today?”, “this week?”, “how far am I?”.
    Write “coach” to be the coach (“roster”, “mira 4x3 at 17.5 on thursday”), “as mira” to be an athlete again: { $names }.
    Buttons: “/1”, “/2” … or their words. “quit” leaves. No medical advice: with a warning sign, stop and see a doctor.
chat-demo = (Invented people; their data is in { $file })
chat-as = — you are { $name } —
chat-nobody = There is no { $name } here. There are: { $names }
chat-no-button = There is no button { $number } on the last message.
chat-elsewhere = (a message for { $name })
chat-first-question = what's today?
