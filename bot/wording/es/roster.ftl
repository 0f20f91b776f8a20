# La lista con una línea por atleta, los escalones y lo que puede ser una regla.
roster-heading = { $count ->
    [one] Un atleta:
   *[other] { $count } atletas:
}
roster-line = · { $handle }: { $rungs }; última { $last }, próxima { $next }
roster-none = ninguna
rungs-heading = Semanas en un escalón entre todos tus atletas; quienes siguen ahí cuentan con lo que llevan:
rungs-line = · { $rung }: la mitad ya pasó a las { $median }, la mitad central entre { $early } y { $late } ({ $left } pasaron, { $still } todavía no)
rungs-open = · { $rung }: han pasado muy pocos para decirlo ({ $left } pasaron, { $still } todavía no, quien más lleva, { $weeks } semanas)
rungs-unknown = aún sin saber
rungs-none = Nadie lleva todavía bastante tiempo en un escalón.
rule-wants-switch = { $rule } debe ser true o false.
rule-wants-choice = { $rule } debe ser uno de estos: { $choices }.
rule-wants-number = { $rule } debe ser un número.
rule-wants-range = { $rule } debe estar entre { $low } y { $high } (unidad: { $unit }).
rule-wants-whole = { $rule } debe ser un número entero entre { $low } y { $high } (unidad: { $unit }).
