# La tarjeta de alineación.
card-title = La tarjeta
card-visitors-bat-first = Visitantes (batean primero)
card-home = Locales
card-no-lineup = Todavía sin alineación.
card-fill-in-numbered = Llenar con bateadores numerados
card-fill-in-later = Nombres, números y posiciones se pueden cambiar en cualquier momento antes del juego; nombres y números también durante el juego.
card-add-batter = Agregar bateador
card-reorder = Cambiar el orden
card-reorder-done = Listo
card-drag = Arrastrar a otro turno
card-fields-only = Fildea, no batea
card-no-designated-hitter = Sin bateador designado
card-bench = Banca
card-add-to-bench = Agregar a alguien a la banca
card-into-the-order = Al orden al bate
card-game = El juego
card-date = Fecha
card-begins-at = Empieza a las
card-where = Lugar
card-competition = Competencia
card-scorer = Quién lleva este libro
card-game-unknown = Fecha, lugar y competencia
card-rules = Reglas de juego
card-every-rule = Todas las reglas, para cambiarlas
card-league-first = Las reglas de tu liga van primero.
card-rules-fixed = El juego ya empezó: reglas y tarjetas quedan fijas. Los cambios se anotan en el Plato.
card-start-from = Partir de
card-rules-name = Cómo se llaman estas reglas
card-rules-source = De dónde vienen
card-mercy = El juego termina por ventaja
card-mercy-lead = Carreras de ventaja
card-mercy-after = tras la entrada
card-add = Agregar
card-remove = Quitar
card-reentry = Quien salió puede volver a entrar
card-before = Antes del primer lanzamiento
card-nothing-missing = No falta nada.
card-usual-checks = Pelotas, bates y campo: lo que se suele revisar
card-needed = Hace falta:
card-good-to-know = Conviene saber:
card-play-ball = ¡A jugar!
card-to-the-plate = Al Plato
card-changes = Cambios durante el juego
card-no-changes = Ninguno hasta ahora. Se anotan en el Plato.
card-rule-innings = Entradas
card-rule-fielders = Fildeadores (9, o 10 con jardinero corto)
card-rule-players-pitch = Lanza un jugador (no una máquina ni el entrenador)
card-rule-balls-for-walk = Bolas para la base por bolas (vacío: no hay)
card-rule-strikes-for-out = Strikes para el out
card-rule-starting-balls = Bolas con que empieza cada turno al bate
card-rule-starting-strikes = Strikes con que empieza cada turno al bate
card-rule-foul-third-strike = Un foul cuando falta un strike es out
card-rule-dropped-third = Se puede correr si el tercer strike no es atrapado
card-rule-stealing = Se permite robar bases
card-rule-run-limit = Carreras que cierran la media entrada (vacío: sin límite)
card-rule-run-limit-open = Sin límite de carreras en la última entrada
card-rule-tie-break = Corredores colocados desde la entrada (vacío: nunca)
card-rule-placed-first = Corredor colocado en primera
card-rule-placed-second = Corredor colocado en segunda
card-rule-placed-third = Corredor colocado en tercera
card-rule-courtesy-runner = Corredor de cortesía por lanzador y receptor
card-rule-continuous = Batean todos los presentes (orden continuo)
card-rule-designated-hitter = Bateador designado
card-rule-extra-hitters = Bateadores además de los fildeadores
card-rule-empty-place = Un turno que queda vacío es out
card-rule-time-limit = No hay entrada nueva después de tantos minutos
card-rule-pitch-limit = Máximo de lanzamientos de un lanzador en un día
card-rule-base-paths = Pies entre bases
card-rule-pitching-distance = Pies de la placa de lanzar al plato
card-rule-mandatory-outs = Outs a la defensiva para cada presente
card-rule-mandatory-at-bats = Turnos al bate para cada presente
card-rule-ball = Pulgadas de circunferencia de la pelota
card-rule-bat-length = Bate más largo, en pulgadas
card-rule-bat-barrel = Barril más grueso, en centésimas de pulgada
card-rule-wooden-bats = Solo bates de madera
card-rule-arc-from = Arco más bajo del lanzamiento, en pies
card-rule-arc-to = Arco más alto del lanzamiento, en pies
card-post-extra-hitter = Solo batea
card-reentry-never = Nunca
card-reentry-starters-once = Quien abrió el juego, una vez
card-reentry-free = Cualquiera, cuando sea
card-shirt = N.º
card-shirt-of = N.º, { $whom }
card-name-of = Nombre, { $whom }
card-plays-of = Juega de, { $whom }
card-team-name-of = Nombre del equipo, { $side }
card-move-up = { $whom }: subir
card-move-down = { $whom }: bajar
card-move-to-bench = { $whom }: a la banca
card-move-into-order = { $whom }: al orden al bate
card-most-batters = Las reglas de juego admiten { $most } bateadores.
card-differs = { $n ->
    [one] 1 regla difiere de esto.
   *[other] { $n } reglas difieren de esto.
}
card-usual-hint = Son recordatorios de la práctica común, sin fuente.
card-missing-card = { $team }: todavía sin alineación.
card-missing-pitcher = { $team }: falta quien lance.
card-missing-fielders = { $team }: nadie juega de { $positions }.
card-missing-too-many = { $team }: { $has } bateadores; las reglas de juego admiten { $most }.
card-missing-same-number = { $team }: dos llevan el número { $number }.
card-missing-unknown = { $n ->
    [one] { $team }: a una persona le faltan nombre y número.
   *[other] { $team }: a { $n } personas les faltan nombre y número.
}
card-missing-no-designated-hitter = { $team }: las reglas de juego no tienen bateador designado.
card-missing-nobody-bats-for = { $team }: alguien solo fildea, y no hay bateador designado.
card-missing-date = Sin fecha: los lanzamientos y el descanso se cuentan por día.
card-top-of = Alta de la { $inning }
card-bottom-of = Baja de la { $inning }
card-usual-done = { $done } de { $all }
card-usual-caution = Las reglas de tu liga van primero, y decide el árbitro. Lo que está rajado, abollado o flojo puede lastimar a alguien: déjalo fuera.
card-check-balls = Pelotas listas para el juego: se esperan unos { $pitches } lanzamientos, o sea de { $from } a { $to } pelotas si entra una nueva cada 5 o 6 lanzamientos. Para practicar, o donde las pelotas vuelven al juego, como en las ligas infantiles, bastan unas 3. A los juegos profesionales se acostumbra llevar de 15 a 18 docenas.
card-check-rubbed = Pelotas nuevas frotadas, para quitarles el brillo.
card-check-ball-size = La pelota, de { $inches } pulgadas de circunferencia.
card-check-bat-length = Bates de { $inches } pulgadas de largo como máximo, según las reglas de juego.
card-check-bat-barrel = Bates de { $inches } pulgadas de grueso como máximo, según las reglas de juego.
card-check-wooden-bats = Solo bates de madera, según las reglas de juego: nada de metal.
card-check-small-bats = En un campo chico los bates suelen tener menos de 2.25 pulgadas de grueso y menos de 33 de largo.
card-check-metal-bats = Bates de metal solo donde tu liga los permite: algunas los prohíben.
card-check-childrens-weights = Peso del bate en edad infantil: 16 a 17 onzas de 8 a 10 años con menos de 50 pulgadas de estatura, hasta 20 onzas con más de 60 pulgadas; 18 a 23 onzas a los 11 y 12 años.
card-check-grown-weights = Peso del bate desde la preparatoria: 27 a 31 onzas.
card-check-mitts = Mascotas solo donde las reglas las permiten, por lo común receptor y primera base; en lo demás, guantes.
card-check-base-paths = Bases a { $feet } pies una de otra.
card-check-pitching-distance = { $inches ->
    [0] La placa de lanzar a { $feet } pies del plato.
   *[other] La placa de lanzar a { $feet } pies { $inches } pulgadas del plato.
}
card-check-arc-from = El arco del lanzamiento, de { $feet } pies de alto como mínimo.
card-check-arc-to = El arco del lanzamiento, de { $feet } pies de alto como máximo.
card-check-arc-between = El arco del lanzamiento, de { $from } pies de alto como mínimo y { $to } como máximo.
card-check-slow-pitch = Las reglas de lanzamiento lento varían: la placa de lanzar va de 46 a 50 pies del plato, y algunas piden un arco de unos 10 a 13 pies.
card-check-outs = { $outs ->
    [one] Cada presente juega al menos 1 out a la defensiva.
   *[other] Cada presente juega al menos { $outs } outs a la defensiva.
}
card-check-at-bats = { $turns ->
    [one] Cada presente batea al menos 1 vez.
   *[other] Cada presente batea al menos { $turns } veces.
}
card-check-umpire = El árbitro aprobó el campo y el equipo.
card-rules-come-from = De dónde vienen: { $source }
card-known-team = Un equipo de juegos anteriores
card-copy = Copiar la última tarjeta
card-copy-of = Copiar la última tarjeta ({ $date })
card-copy-sure = Toca otra vez: reemplaza esta tarjeta
card-roster = Jugadores de juegos anteriores
card-roster-left = { $n } fuera de esta tarjeta
card-roster-hint = Un toque pone el nombre en el primer turno que no lo tiene; si no hay, al final del orden al bate.
card-roster-hint-begun = Un toque pone el nombre en el primer turno que no lo tiene; si no hay, en la banca.
card-joins = { $whom }: entra al final del orden
card-joins-order = Entra al final del orden
card-about = Batea, lanza, edad
card-about-hint = Edad en años a la fecha de corte de tu liga: con ella la Lomita busca los límites de lanzamientos. Las reglas de tu liga y el consejo médico van primero.
card-bats = Batea
card-throws = Lanza
card-age = Edad
card-bats-of = Batea, { $whom }
card-throws-of = Lanza, { $whom }
card-age-of = Edad, { $whom }
card-hand-right = Derecha
card-hand-left = Zurda
card-hand-both = Ambas
