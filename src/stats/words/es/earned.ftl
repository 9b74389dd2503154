# Por qué una carrera es limpia o no, y quién responde por ella: ruling/earned/reason.rs.
help-error = un error
help-passed-ball = un passed ball
help-interference = interferencia de la defensa
help-obstruction = obstrucción
help-foul-fly = la bola de alguien que debió ser out en un elevado de foul
help-throw = un tiro tras alguien que no debía estar en base
help-judged = una mala jugada, según el anotador

earned-unaided = Ningún error ni passed ball ayudó a dar la vuelta a las bases.
earned-would-have-scored = Hubo ayuda de { $help }, pero la carrera habría entrado sin ella con lo que siguió.
earned-judged = El anotador decidió que la carrera habría entrado de todos modos.
unearned-judged = El anotador decidió que la carrera no habría entrado.
unearned-reached-on-error = Se embasó por error del { $position }.
unearned-reached-on-some-error = Se embasó por un error.
unearned-reached-on-passed-ball = Se había ponchado y llegó a primera por un passed ball.
unearned-reached-on-interference = Llegó a primera por interferencia del receptor.
unearned-reached-on-obstruction = Llegó a primera por obstrucción.
unearned-foul-fly = Debió ser out al bate, en un elevado de foul que se cayó.
unearned-spared = Debió ser out en las bases y se salvó por un error.
unearned-placed = Fue puesto en base por regla, que cuenta como embasarse por error.
unearned-took-place = Se embasó en una jugada de selección que sacó a alguien que no debía estar ahí; si no, el out habría sido en primera.
unearned-inning-over = { $missed ->
    [1] Sin una oportunidad perdida, la entrada habría terminado.
   *[other] Sin { $missed } oportunidades perdidas, la entrada habría terminado.
}
unearned-helped = Hubo ayuda de { $help }; sin ella no habría pasado de { $base }.

answers-faced = Este lanzador enfrentó a quien se embasó.
answers-left-in-mid-count = Este lanzador salió con la cuenta a favor del bateador, que recibió la base por bolas.
answers-passed-on = Este lanzador dejó en base a alguien que fue out en una jugada de selección, y responde por quien tomó su lugar.
answers-placed = Este lanzador lanzaba cuando se puso en base por regla.
