# The Plate.
plate-place = Plato
plate-board = Pizarra
plate-field = El campo: toca a quien fildeó la bola, o el lugar donde cayó
plate-undo = Anula
plate-redo = Rehaz
plate-players = Cambio
plate-umpire = Umpire
plate-cancel = Cancelar
plate-back = Volver
plate-record = Anotar
plate-more = Más
plate-adjust = Ajustar
plate-adjust-this = Ajustar: { $headline }
plate-over-the-fence = HR
plate-list = { $before }, { $next }

# The board.
plate-outs = Outs
plate-at-bat = Al bate
plate-on-deck = Sigue
plate-pitching = Lanza
plate-nobody = nadie
plate-machine = máquina
plate-inning-top = Alta de la entrada { $inning }
plate-inning-bottom = Baja de la entrada { $inning }
plate-middle-of = Mitad de la entrada { $inning }: { $score }
plate-end-of = Fin de la entrada { $inning }: { $score }
plate-outs-said = { $outs ->
    [0] Sin outs
    [one] { $outs } out
   *[other] { $outs } outs
}
plate-count-said = { $balls ->
    [one] { $balls } bola
   *[other] { $balls } bolas
}, { $strikes ->
    [one] { $strikes } strike
   *[other] { $strikes } strikes
}
plate-score-said = { $visitors } { $away }, { $home } { $at_home }
plate-order-place = { $place }. { $name }
plate-pitch-count = { $pitches ->
    [one] { $pitches } pitcheo
   *[other] { $pitches } pitcheos
}
plate-first-time-up = primer turno
plate-today = { $hits } de { $at_bats }{ $walks ->
    [0] { "" }
   *[other] , { $walks } BB
}{ $runs ->
    [0] { "" }
   *[other] , { $runs } CI
}
plate-coming-up = Vienen: { $names }
plate-stands = { $outs ->
    [0] sin outs
    [one] { $outs } out
   *[other] { $outs } outs
}, { $balls }-{ $strikes }

# While play is not on.
plate-not-begun = El juego no ha empezado.
plate-to-the-card = Al lineup
plate-to-the-book = Al libro
plate-play-ball = ¡A jugar!
plate-no-player = Este turno al bate no tiene a nadie.
plate-empty-place-out = Anotar el out
plate-suspended = El juego está suspendido.
plate-stopped = El juego está detenido.
plate-over-played = Final: { $score }
plate-over-mercy = Final por diferencia de carreras: { $score }
plate-over-declared = Final según lo declarado: { $score }
plate-over-called = Terminado antes de tiempo: { $score }

# The pitches: on their buttons a large word and a small one, and in a sentence.
plate-pitches = Lanzamientos
plate-in-play-hint = ¿Bateó? Toca el campo: quién la agarró o dónde cayó.
plate-got-away = Se escapó el tercer strike
plate-ball = Bola
plate-called = Cantado
plate-swinging = Tirándole
plate-foul = Foul
plate-foul-tip = Foul tip
plate-foul-bunt = Toque de foul
plate-missed-bunt = Toque fallido
plate-pitchout = Pitchout
plate-wide-on-purpose = Intencional
plate-automatic-ball = Bola
plate-automatic-strike = Strike
plate-illegal-pitch = Lanz. ilegal
plate-hit-by-pitch = Pelotazo
plate-catcher-hindered = Interf. del receptor
plate-batter-hindered = Interf. al batear
plate-intentional-walk = Base intencional
plate-small-strike = strike
plate-small-ball = bola
plate-small-held = retenido
plate-small-no-pitch = sin lanzar
plate-small-takes-first = a primera
plate-small-is-out = es out
plate-said-ball = Bola
plate-said-called-strike = Strike cantado
plate-said-swinging-strike = Strike tirándole
plate-said-intentional-ball = Bola intencional
plate-said-automatic-ball = Bola automática
plate-said-automatic-strike = Strike automático
plate-catcher-interference = Interferencia del receptor
plate-batter-interference = Interferencia al batear
plate-then-walk = { $said }: base por bolas
plate-then-intentional-walk = { $said }: base por bolas intencional
plate-then-struck-out = { $said }: ponche
plate-then-side-out = { $said }. Tres outs, cambio

# How the ball came off the bat, and where everybody is.
plate-off-the-bat = Cómo salió el batazo
plate-ground = Rodado
plate-line = Línea
plate-fly = Elevado
plate-pop = Globo
plate-bunt = Toque
plate-foul-ball = Foul
plate-pitcher = lanzador
plate-catcher = receptor
plate-first = primera
plate-second = segunda
plate-third = tercera
plate-short = parador en corto
plate-left = izquierdo
plate-center = central
plate-right = derecho
plate-short-field = jardinero corto
plate-fielder-label = { $number } { $position }, { $name }
plate-runner-label = En { $base }: { $name }
plate-batter-label = Al bate: { $name }
plate-runner-title = { $name }, en { $base }
plate-batter-title = { $name }, al bate
plate-the-runner = quien corre

# What came of it.
plate-what-happened = Qué resultó
plate-unassisted = { $number }, sin asistencia
plate-headline-and-running = { $headline }: { $running }
plate-ground-out = Out por rodado { $by }
plate-bunt-out = Toque, out en primera { $by }
plate-caught-line = Línea, out del { $number } ({ $fielder })
plate-caught-pop = Globo, out del { $number } ({ $fielder })
plate-caught-foul-pop = Globo de foul, out del { $number } ({ $fielder })
plate-caught-bunt = Toque atrapado, out del { $number } ({ $fielder })
plate-caught-fly = Elevado, out del { $number } ({ $fielder })
plate-caught-foul-fly = Elevado de foul, out del { $number } ({ $fielder })
plate-infield-fly = { $caught } (infield fly)
plate-double-play = Doble matanza { $by }
plate-caught-double-play = Atrapada y doble matanza { $by }
plate-triple-play = Triple matanza { $by }
plate-runner-out = { $runner } out en { $base }, { $by }; quien batea, safe
plate-rundown = { $runner } out en un corre-corre { $by }
plate-all-safe = Jugada de selección, todos safe
plate-infield-single = Sencillo dentro del cuadro
plate-single = Sencillo
plate-double = Doble
plate-triple = Triple
plate-inside-the-park = Jonrón dentro del parque
plate-home-run = Jonrón
plate-ground-rule-double = Doble por regla, de bote
plate-hit-and-out = { $hit }; { $runner } out en { $base } { $by }
plate-hit-and-error = { $hit } y error del { $number } ({ $fielder })
plate-error-by-fielder = Error del { $number } ({ $fielder })
plate-bad-throw-by-fielder = Mal tiro del { $number } ({ $fielder })
plate-bad-throw-batter-to = Mal tiro del { $number } ({ $fielder }), quien batea a { $base }
plate-throw-dropped-by = Se le cae el tiro al { $number } ({ $fielder })
plate-fly-dropped-by-fielder = Se le cae el elevado al { $number } ({ $fielder })
plate-foul-fly-dropped-by = Se le cae el elevado de foul al { $number } ({ $fielder })
plate-batter-interfered = Out por interferencia de quien batea
plate-runner-hit = La bola le pega a { $runner }, out
plate-steals = Roba { $base }
plate-steals-home = Roba home
plate-steal-together = Robo simultáneo
plate-caught-stealing-at = Out robando en { $base } { $by }
plate-picked-off-at = Out por revire en { $base } { $by }
plate-out-advancing-at = Out avanzando a { $base } { $by }
plate-safe-on-bad-throw = Safe en { $base }: mal tiro del { $number } ({ $fielder })
plate-safe-on-drop = Safe en { $base }: se le cae al { $number } ({ $fielder })
plate-wild-pitch = Lanzamiento descontrolado
plate-passed-ball = Passed ball
plate-balk = Balk
plate-illegal-pitch-all = Lanzamiento ilegal: todos avanzan
plate-unopposed-to = Toma { $base } sin oposición
plate-wild-pitch-safe = Lanzamiento descontrolado, safe en primera
plate-passed-ball-safe = Passed ball, safe en primera
plate-catcher-throws-badly = Mal tiro del 2 (receptor), safe en primera
plate-first-drops = Se le cae el tiro al 3 (primera), safe en primera
plate-thrown-out = Out en primera { $by }
plate-forced-at = { $runner }, out forzado en { $base } { $by }
plate-way-out = { $runner } out en { $base }
plate-way-scores = { $runner } anota
plate-way-to = { $runner } a { $base }
plate-way-stays = { $runner } se queda

# A runner.
plate-on-the-pitch = En ese pitcheo
plate-between = Entre pitcheos
plate-caught-stealing-ask = Out robando …
plate-picked-off-ask = Revire …
plate-out-advancing-ask = Out avanzando …
plate-chase-steal = { $runner } sale al robo: ¿quién tiró, quién tocó?
plate-chase-pickoff = Revire a { $runner }: ¿quién tiró, quién tocó?
plate-chase-advance = { $runner } avanza: ¿quién tiró, quién tocó?

# Adjusting.
plate-touch-a-runner = Toca a quien corre, o arrastra su ficha, para cambiar dónde terminó
plate-run-too-late = El tercer out fue antes que la carrera
plate-safe = Safe
plate-out = Out
plate-stays = Queda
plate-scores = Anota
plate-safe-at-first = Safe en primera
plate-safe-at-second = Safe en segunda
plate-safe-at-third = Safe en tercera
plate-out-at-first = Out en primera
plate-out-at-second = Out en segunda
plate-out-at-third = Out en tercera
plate-out-at-home = Out en home
plate-because = Cómo fue
plate-out-by = Out { $by } · toca a quienes lo hicieron
plate-touch-who-erred = Toca a quien cometió el error
plate-another-error = Error de …
plate-draft-and-errors = { $moves }; { $errors }
plate-misplay-by = { $misplay } ({ $fielder })
plate-misplay-fielding = error
plate-misplay-throwing = mal tiro
plate-misplay-muff = tiro que se cae
plate-misplay-dropped-fly = elevado que se cae
plate-misplay-dropped-foul = elevado de foul que se cae
plate-misplay-obstruction = obstrucción
plate-misplay-interference = interferencia
plate-error-by = Error del { $number }
plate-bad-throw-by = Mal tiro del { $number }
plate-dropped-by = Se le cae al { $number }
plate-fly-dropped-by = Elevado, se le cae al { $number }
plate-obstruction-by = Obstrucción del { $number }
plate-interference-by = Interferencia del { $number }
plate-cause-play = Con el batazo
plate-cause-throw = Con el tiro
plate-cause-choice = Jugada de selección
plate-cause-error = Por el error
plate-cause-obstruction = Obstrucción
plate-cause-interference = Interferencia
plate-cause-award = Base concedida
plate-cause-forced = Avance forzado
plate-cause-steal = Robo de base
plate-cause-illegal-pitch = Lanzamiento ilegal
plate-cause-indifference = Sin oposición
plate-how-fly = Bola atrapada
plate-how-force = Forzado
plate-how-tag = Tocado
plate-how-strikeout = Ponche
plate-how-appeal = Por apelación
plate-how-interference = Interferencia
plate-how-hit-by-ball = Le pegó la bola
plate-how-passing = Rebasó a otro
plate-how-left-path = Salió de la línea
plate-how-out-of-turn = Fuera de turno
plate-how-other = Otra regla

# People.
plate-who-changes = ¿Quién cambia? Toca a quien fildea, corre o batea.
plate-drag-hint = Arrastra a alguien del campo sobre otra persona: cambian de posición.
plate-fielding-side = En el campo
plate-batting-side = Al bate
plate-player-row = { $place }. { $name } { $post }
plate-pinch-hitter-for = Emergente: batea por { $name } ({ $post })
plate-pinch-runner-for = Emergente: corre por { $name } ({ $post })
plate-takes-over-from = Entra por { $name } ({ $post })
plate-came-in = { $incoming } entra por { $outgoing }
plate-nobody-on-bench = No hay nadie en la lista de la banca.
plate-bench-row = #{ $shirt } { $name }
plate-bench-row-was-in = { $row } (ya jugó)
plate-new-player = Alguien que no está en la lista
plate-number = N.º
plate-name = Nombre
plate-come-in = Entra
plate-swap-hint = O toca a otra persona en el campo: cambian de posición.
plate-leaves = Sale; nadie toma su lugar
plate-as-courtesy = Corre de cortesía
plate-bats-for-dh = Batea desde ahora; sale el bateador designado
plate-joins = Se suma al final del orden: { $team }

# The umpire.
plate-result-only = ¿No viste los lanzamientos? Solo el resultado
plate-result-walk = Base por bolas
plate-result-struck-out-swinging = Ponche tirándole
plate-result-struck-out-looking = Ponche sin tirarle
plate-the-count = La cuenta como la da el umpire
plate-out-of-turn = Hay otra persona al bate
plate-appeal = Apelación: bateó fuera de turno
plate-place-runner = Poner a alguien en base por regla
plate-the-game = El juego
plate-why = Con tus palabras (puede quedar vacío)
plate-end-half = Terminar la media entrada
plate-delay = Se detiene el juego
plate-resume = Sigue el juego
plate-suspend = Suspendido para otro día
plate-call-game = Se termina aquí el juego
plate-final = Final
plate-forfeit-to = Forfeit a favor de { $team }
plate-protest = Protesta
plate-note = Nota

# Questions.
plate-later = Después: espera en el libro
plate-yes = Sí
plate-no = No
plate-hit = Hit
plate-error = Error

# What was recorded, said.
plate-undone = Se quitó lo último anotado
plate-redone = Se volvió a poner
plate-nothing-to-undo = No hay nada que quitar.
plate-nothing-to-redo = No hay nada que volver a poner.
plate-recorded-in-play = Bola en juego
plate-recorded-running = En las bases
plate-recorded-unseen = Resultado anotado; sus lanzamientos cuentan como no vistos
plate-recorded-count = Cuenta puesta en { $balls }-{ $strikes }
plate-recorded-change = Cambio anotado
plate-recorded-player = { $name } está en la lista
plate-recorded-batter-up = { $name } está al bate
plate-recorded-empty-place = Out: este turno no tiene a nadie
plate-recorded-appeal = Apelación anotada
plate-recorded-place-runner = { $name } en { $base }
plate-recorded-end-half = Terminó la media entrada
plate-recorded-status = Anotado como lo declaró el umpire
plate-recorded-protest = Protesta anotada con la situación
plate-recorded-note = Nota guardada
plate-recorded-ruling = Decisión anotada
plate-recorded = Anotado

# Kind and speed of a pitch, for whoever notes them.
plate-note-pitches = Anotar tipo y velocidad
plate-notes = El último lanzamiento: tipo y velocidad
plate-speed = Velocidad
plate-mph = mph
plate-kmh = km/h
plate-fastball = Recta
plate-curveball = Curva
plate-slider = Slider
plate-change-up = Cambio
plate-knuckleball = Nudillos
plate-drop = Drop
plate-rise = Rise
plate-other-pitch = Otro
plate-speed-said = { $speed } { $unit }
plate-noted = Anotado: { $what }
plate-noted-both = Anotado: { $kind }, { $speed }
plate-noted-nothing = Se quitó del lanzamiento
