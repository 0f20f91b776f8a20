# Qué pasa si: dos caminos lado a lado.
what-if-heading = { $name }, { $weeks } semanas, ahora → entonces (modelo: ningún día perdido, sin dolor, cada paso aprobado):
what-if-main = · Ejercicio principal al final: { $both }
what-if-rung = · Escalón al final: { $both }
what-if-sessions = · Sesiones: { $both }
what-if-exposures = · Repeticiones a un brazo por lado: { $both }
what-if-dates = · { $both }
what-if-days = descarga desde { $deload }, test { $test }
what-if-both = { $now } → { $then }
what-if-none = –
what-if-how = «qué pasa si mira entrena tres días», «qué pasa si mira mantiene escalón 5 semanas», «qué pasa si mira bloquea 17,5», «qué pasa si mira pausa 2 semanas», «qué pasa si mira regla block.loading_weeks 5»
