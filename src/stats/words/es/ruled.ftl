# Lo que se decidió, y los números del box score: account/sentences/ruled.rs.
grounds-both = Para el lanzador: { $pitcher } Para el equipo: { $team } { $answers }
ruled-nobody-known = alguien desconocido
ruled = { $whom }: { $what }
ruled-batted-in = Carrera de { $runner }: impulsada por { $batter }
ruled-not-batted-in = Carrera de { $runner }: no impulsada
ruled-charged = Carrera de { $runner }: a cargo de { $pitcher }, { $verdict }
ruled-charged-so-far = Carrera de { $runner }: a cargo de { $pitcher }, { $verdict }, por ahora
ruled-earned = limpia
ruled-unearned = sucia
ruled-earned-pitcher-only = limpia para el lanzador, no para el equipo
ruled-earned-team-only = limpia para el equipo, no para el lanzador
ruled-fielder = { $fielder }, { $position }: { $what }
ruled-some-fielder = El { $position }: { $what }
credit-putout = out realizado
credit-assist = asistencia
credit-error = error
credit-double-play = parte de una doble matanza
credit-triple-play = parte de una triple matanza
ruled-wild-pitch = lanzamiento descontrolado
ruled-passed-ball = passed ball
ruled-balk = balk
ruled-double-play = bateó para doble matanza
ruled-outs = { $outs ->
    [1] { $fielder }, { $position }: 1 out
   *[other] { $fielder }, { $position }: { $outs } outs
}
ruled-pitches = { $pitcher } a { $batter }: { $balls }, { $strikes }
ruled-balls = { $balls ->
    [1] 1 bola
   *[other] { $balls } bolas
}
ruled-strikes = { $strikes ->
    [1] 1 strike
   *[other] { $strikes } strikes
}
ruled-left-on-base = { $batter }: { $runners } dejados en base
ruled-team-left-on-base = { $runners } dejados en base
ruled-win = lanzador ganador
ruled-loss = lanzador perdedor
ruled-save = salvamento
ruled-shutout = blanqueada
ruled-complete-game = juego completo
ruled-hold = hold, por costumbre
ruled-blown-save = salvamento desperdiciado, por costumbre
result-two-base-hit = doble
result-three-base-hit = triple
result-home-run = jonrón
result-single = sencillo
result-walk = base por bolas
result-intentional-walk = base por bolas intencional
result-hit-by-pitch = pelotazo
result-strikeout = ponche
result-out = out
result-fielders-choice = jugada de selección
result-on-error = embasado por error, sin hit
result-sacrifice-hit = toque de sacrificio
result-sacrifice-fly = elevado de sacrificio
result-interference = primera por interferencia
result-obstruction = primera por obstrucción
theft-stolen = { $bases ->
    [1] base robada
   *[other] { $bases } bases robadas
}
theft-caught = out robando { $base }
theft-caught-saved = out robando { $base }, se salvó por error
theft-picked-off = cayó en revirada, no es out robando
theft-not-stolen = sin base robada
number-of = { $what }: { $whom }
number-plate-appearances = Apariciones al plato
number-at-bats = Veces al bate
number-runs = Carreras
number-hits = Hits
number-doubles = Dobles
number-triples = Triples
number-home-runs = Jonrones
number-runs-batted-in = Carreras impulsadas
number-walks = Bases por bolas
number-intentional-walks = Bases por bolas intencionales
number-strikeouts = Ponches
number-hit-by-pitch = Pelotazos
number-sacrifice-hits = Toques de sacrificio
number-sacrifice-flies = Elevados de sacrificio
number-interference = Primera por interferencia
number-reached-on-error = Embasados por error
number-fielders-choices = Jugadas de selección
number-stolen-bases = Bases robadas
number-caught-stealing = Outs robando
number-grounded-into-double-plays = Bateó para doble matanza
number-left-on-base = Dejados en base
number-pitcher-outs = Entradas lanzadas
number-pitcher-batters-faced = Bateadores enfrentados
number-pitcher-hits = Hits permitidos
number-pitcher-home-runs = Jonrones permitidos
number-pitcher-runs = Carreras permitidas
number-pitcher-earned-runs = Carreras limpias
number-pitcher-walks = Bases por bolas otorgadas
number-pitcher-intentional-walks = Bases por bolas intencionales otorgadas
number-pitcher-strikeouts = Ponches propinados
number-pitcher-hit-batters = Bateadores golpeados
number-pitcher-wild-pitches = Lanzamientos descontrolados
number-pitcher-balks = Balks
number-pitcher-pitches = Lanzamientos
number-pitcher-balls = Bolas
number-pitcher-strikes = Strikes
number-fielder-putout = Outs realizados
number-fielder-assist = Asistencias
number-fielder-error = Errores
number-fielder-double-play = Dobles matanzas
number-fielder-triple-play = Triples matanzas
number-catcher-passed-balls = Passed balls
number-catcher-stolen-bases = Bases robadas al receptor
number-catcher-caught-stealing = Corredores sorprendidos por el receptor
number-in-field = Entradas a la defensiva
number-decision = Decisión
number-earned-against = Carreras limpias contra { $whom }, como equipo
pitch-in-play = en juego
pitch-ball = bola
pitch-called-strike = strike cantado
pitch-swinging-strike = strike tirándole
pitch-foul = foul
pitch-foul-tip = foul tip
pitch-foul-bunt = toque de foul
pitch-missed-bunt = toque fallado
pitch-pitchout = pitchout
pitch-intentional-ball = bola intencional
pitch-automatic-ball = bola automática, sin lanzamiento
pitch-automatic-strike = strike automático, sin lanzamiento
pitch-illegal-pitch = lanzamiento ilegal
pitch-hit-by-pitch = pelotazo
pitch-catcher-interference = interferencia del receptor
pitch-batter-interference = interferencia del bateador
