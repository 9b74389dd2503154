# Por qué una decisión es la que es: ruling/because.rs.
because-judged = Así lo decidió el anotador.
because-strikeout = Tres strikes.
because-strikeout-reached = Tres strikes; quieto en primera porque la bola no fue retenida. De todos modos es ponche.
because-walk = Cuatro bolas.
because-intentional-walk = Base por bolas a propósito.
because-hit-by-pitch = Le pegó el lanzamiento.
because-catcher-interference = El receptor estorbó a quien bateaba: primera base, y no cuenta como vez al bate.
because-obstruction = La defensa obstruyó a quien bateó antes de primera: no cuenta como vez al bate.
because-own-interference = Quien bateó estorbó a la defensa y es out.
because-out-of-turn = Bateó otra persona y la defensa apeló: es out quien debía batear, y el receptor tiene el out realizado.
because-put-out = Out con la bola bateada.
because-runner-hit-by-ball = La bola bateada le pegó a un corredor, que es out; quien bateó tiene hit.
because-runner-forced = Un corredor fue out forzado con la bola bateada: no hay hit.
because-runner-put-out = El cuadro sacó a quien corría delante con la bola bateada: jugada de selección, no hay hit.
because-choice = La defensa prefirió buscar a otro corredor.
because-sacrifice = Un toque con menos de dos outs: quien bateó fue out (o debió serlo) y un corredor avanzó.
because-sacrifice-all-safe = Un toque con menos de dos outs y un corredor avanzó; buscaron a un corredor y no sacaron a nadie.
because-sacrifice-fly = Un corredor anotó tras la atrapada con menos de dos outs.
because-sacrifice-fly-dropped = El elevado se cayó, pero el corredor habría anotado tras la atrapada, con menos de dos outs.
because-batted-in = La carrera entró con la bola bateada.
because-forced-in = Con las bases llenas se dio primera a quien bateaba: la carrera entró forzada.
because-double-play = Entró en una doble matanza de roletazo: no es carrera impulsada.
because-muffed-double-play = Un tiro que se cayó en primera habría completado la doble matanza: no es carrera impulsada.
because-on-error = La carrera entró por un error.
because-error-but-scores-anyway = Había menos de dos outs, y el corredor de tercera normalmente habría anotado sin el error.
because-not-batted = La carrera entró sin bola bateada.
because-stole = La base se ganó sin ayuda de hit, out, error, jugada forzada, lanzamiento descontrolado ni passed ball.
because-other-runner-out = Otro corredor fue out en el mismo intento: nadie tiene base robada.
because-undisputed = La defensa no intentó impedirlo: no hay base robada.
because-caught-stealing = Out al intentar el robo.
because-overslid = Out por pasarse de la base: out robando, no hay base robada.
because-broke-from-pickoff = Cayó en revirada y salió hacia la base siguiente: out robando.
because-picked-off = Cayó en revirada al volver a la base: no es out robando.
because-muffed-throw = El tiro llegó a tiempo pero se cayó: out robando, un error, y no hay base robada.
because-grounded = Dos outs en un roletazo: ambos forzados, o quien bateó en primera y un corredor que debía correr.
because-pitched-wild = Con esfuerzo ordinario el receptor no podía detener el lanzamiento, y alguien ganó una base con él.
because-let-pass = Con esfuerzo ordinario el receptor habría detenido el lanzamiento, y alguien ganó una base con él.
because-balked = El árbitro cantó balk y los corredores recibieron una base.
because-caught-fly = Atrapó la bola en el aire.
because-infield-fly = El árbitro cantó infield fly: es out, la atrapen o no, y el out realizado es de quien estaba debajo.
because-held-throw = Retuvo el tiro a tiempo, en la base o sobre el corredor.
because-touched-base = Tenía la bola y llegó sin ayuda a la base o al corredor.
because-tagged = Tocó al corredor fuera de la base.
because-appealed = Tenía la bola cuando la defensa apeló.
because-caught-third-strike = Tres strikes: las reglas dan el out realizado al receptor.
because-catcher-by-rule = Out por regla, no por jugada: las reglas dan el out realizado al receptor.
because-nearest-the-ball = La bola bateada le pegó al corredor: las reglas dan el out realizado a quien estaba más cerca de la bola.
because-was-hindered = El corredor estorbó a este fildeador: las reglas le dan el out realizado.
because-nearest-the-passing = Un corredor rebasó a otro: las reglas dan el out realizado a quien estaba más cerca.
because-was-avoided = El corredor salió de la línea o se rindió: las reglas dan el out realizado al fildeador del que huía.
because-nearest-by-rule = Out por regla, no por jugada: el out realizado es de quien estaba más cerca.
because-threw = Tiró la bola, o la desvió hacia allí, antes del out.
because-threw-to-rule-out = Tiró la bola en una jugada en la que el corredor fue out por interferencia o por salir de la línea.
because-threw-in-vain = El tiro habría hecho el out, de no ser por el error que siguió.
because-at-his-post = Hechos mientras estaba ahí. Tres outs son una entrada.
because-pitched = Cada lanzamiento a este turno. Una bola puesta en juego cuenta como strike.
because-left-standing = En base cuando terminó la jugada: ni anotó ni fue out.
because-safe-at-first = Quieto en primera con la bola bateada.
because-safe-hit = Quieto en { $base } solo con la bola bateada.
because-game-ending = { $bases ->
    [1] El juego terminó al entrar la carrera ganadora: el hit vale 1 base, las que necesitaba ese corredor.
   *[other] El juego terminó al entrar la carrera ganadora: el hit vale { $bases } bases, las que necesitaba ese corredor.
}
because-error = Se embasó por error del { $position }.
because-took-part = { $outs ->
    [3] Hizo un out o una asistencia: tres outs en una jugada y ningún error entre ellos.
   *[other] Hizo un out o una asistencia: dos outs en una jugada y ningún error entre ellos.
}
because-misplayed-dropped-foul = Se cayó un elevado de foul que se atrapaba con esfuerzo ordinario, y el turno al bate siguió.
because-misplayed-obstruction = { $life ->
    [yes] Un corredor fue obstruido, y alguien quedó quieto cuando debió ser out.
   *[no] Un corredor fue obstruido, y alguien ganó una base con ello.
}
because-misplayed-fielding = { $life ->
    [yes] La bola se fildeaba con esfuerzo ordinario, y alguien quedó quieto cuando debió ser out.
   *[no] La bola se fildeaba con esfuerzo ordinario, y alguien ganó una base con ello.
}
because-misplayed-throwing = { $life ->
    [yes] El tiro fue malo, y alguien quedó quieto cuando debió ser out.
   *[no] El tiro fue malo, y alguien ganó una base con ello.
}
because-misplayed-muff = { $life ->
    [yes] Un buen tiro no fue retenido, y alguien quedó quieto cuando debió ser out.
   *[no] Un buen tiro no fue retenido, y alguien ganó una base con ello.
}
because-misplayed-dropped-fly = { $life ->
    [yes] El elevado se atrapaba con esfuerzo ordinario, y alguien quedó quieto cuando debió ser out.
   *[no] El elevado se atrapaba con esfuerzo ordinario, y alguien ganó una base con ello.
}
