# The Book.
book-title = El libro
book-pages = Páginas del libro
book-page-box = Box score
book-page-plays = Jugada por jugada
book-page-sheet = Hoja de anotación
book-close = Cerrar
book-agree = De acuerdo
book-leave = Dejarlo como está

## The scoreboard.
book-line-score = Carreras por entrada
book-team = Equipo
book-runs = C
book-runs-long = Carreras
book-hits = H
book-hits-long = Hits
book-errors = E
book-errors-long = Errores
book-half-top = Alta de la { $inning }.ª
book-half-bottom = Baja de la { $inning }.ª
book-outs =
    { $outs ->
        [one] { $outs } out
       *[other] { $outs } outs
    }
book-state-before = Antes del primer lanzamiento
book-state-delayed = Detenido
book-state-suspended = Suspendido
book-state-final = Final
book-state-mercy = Final, por la diferencia
book-state-declared = Terminado antes de tiempo
book-state-called = Terminado por el umpire
book-state-forfeited-visitors = Forfeit a favor de la visita
book-state-forfeited-home = Forfeit a favor del local

## The box score.
book-batting = Al bate
book-pitching = Lanzando
book-fielding = A la defensa
book-totals = Totales
book-table-of = { $table }: { $team }
book-at-bats = VB
book-at-bats-long = Veces al bate
book-runs-batted-in = CI
book-runs-batted-in-long = Carreras impulsadas
book-walks = BB
book-walks-long = Bases por bolas
book-strikeouts = K
book-strikeouts-long = Ponches
book-left-on-base = DB
book-left-on-base-long = Dejados en base en los outs de un bateador, por costumbre; en el total, por el equipo
book-innings-pitched = EL
book-innings-pitched-long = Entradas lanzadas
book-earned-runs = CL
book-earned-runs-long = Carreras limpias
book-batters-faced = BE
book-batters-faced-long = Bateadores enfrentados
book-pitch-count = L
book-pitch-count-long = Lanzamientos
book-strikes = S
book-strikes-long = Strikes, con las bolas puestas en juego
book-average = EFE
book-average-long = Efectividad de este juego
book-putouts = O
book-putouts-long = Outs realizados
book-assists = A
book-assists-long = Asistencias
book-double-plays = DP
book-double-plays-long = Participación en dobles matanzas
book-passed-balls = PB
book-passed-balls-long = Passed balls
book-team-earned = Las carreras limpias del equipo pueden ser menos que la suma de sus lanzadores (OBR 9.16(i)).
book-pitches-missed = Al menos estos: algunos lanzamientos no se vieron.
book-average-reckoned = EFE: carreras limpias por cada { $innings } entradas lanzadas. Práctica común, sin fuente: entre profesionales, alrededor de 4 es lo normal y 2 o menos es excelente.
book-win = G
book-loss = P
book-save = S
book-win-of = Lanzador ganador: { $name }. ¿Por qué?
book-loss-of = Lanzador perdedor: { $name }. ¿Por qué?
book-save-of = Juego salvado: { $name }. ¿Por qué?
book-note-doubles = Dobles
book-note-triples = Triples
book-note-home-runs = Jonrones
book-note-sacrifice-hits = Toques de sacrificio
book-note-sacrifice-flies = Elevados de sacrificio
book-note-hit-by-pitch = Pelotazos recibidos
book-note-walked-intentionally = Bases por bolas intencionales
book-note-stolen-bases = Bases robadas
book-note-caught-stealing = Atrapados robando
book-note-double-plays = Rodados para doble matanza
book-note-on-errors = En base por error
book-note-interference = Primera base por interferencia
book-note-on-choices = En base por jugada de selección
book-note-home-runs-allowed = Jonrones permitidos
book-note-wild-pitches = Lanzamientos descontrolados
book-note-balks = Balks
book-note-batters-hit = Bateadores golpeados

## The proof.
book-proof = Prueba del box score
book-proof-rule = OBR 9.03(c)
book-proof-hit-by-pitch = GL
book-proof-sacrifices = TS+ES
book-proof-interference = interferencia
book-proof-placed = corredores colocados
book-proof-putouts = O del rival
book-balances = Cuadra: { $batters } turnos, { $batters } explicados.
book-missing-right =
    { $cameup } turnos, pero solo { $accounted } explicados: { $off ->
        [one] falta { $off } turno
       *[other] faltan { $off } turnos
    } a la derecha.
book-missing-left =
    { $accounted } explicados, pero solo { $cameup } turnos: { $off ->
        [one] falta { $off } turno
       *[other] faltan { $off } turnos
    } a la izquierda.

## Why?
book-asked = { $value }, { $what }. ¿Por qué?
book-no-evidence = No hay ninguna jugada detrás de este número.
book-counts = cuenta
book-does-not-count = no cuenta
book-rests-on = Se apoya en:
book-rule = OBR { $rule }
book-by-custom = Por costumbre, no por regla

## Play by play.
book-before-the-first-pitch = Antes del primer lanzamiento
book-nothing-yet = Todavía no ha pasado nada. Lo que se anota en el plato se cuenta aquí.
book-sums = { $runs } C · { $hits } H · { $errors } E
book-sums-left = { $runs } C · { $hits } H · { $errors } E · { $left } DB
book-undo = Deshacer lo último
book-redo = Rehacer
book-newest-first = Lo último primero
book-oldest-first = Desde el primer lanzamiento
book-struck-out = Tachado
book-put-back = Devolver
book-entry = Anotación { $number }
book-pitches = Lanzamientos
book-pitches-thrown = { $pitches } ({ $balls }–{ $strikes }): { $names }.
book-rulings = Por qué se anota así

## Corrections.
book-strike-out = Tachar esto…
book-strike-out-pitch = Tachar este lanzamiento…
book-amend-pitch = Corregir un lanzamiento
book-it-was = Fue más bien:
book-forgotten-before = Faltó anotar justo antes:
book-score-as = Anotarlo como
book-single = Sencillo
book-double = Doble
book-triple = Triple
book-home-run = Jonrón
book-hit = Hit
book-error = Error
book-error-by = Error, { $position }
book-choice = Jugada de selección
book-wild-pitch = Lanzamiento descontrolado
book-passed-ball = Passed ball
book-preview = Qué cambiaría
book-no-change = No cambiaría ningún número.
book-stays-in-log = La historia de las correcciones queda en el registro, y cada una se puede deshacer.
book-would-strike-out = Se tacha.
book-would-be-pitch = El lanzamiento fue más bien: { $pitch }.
book-would-insert-pitch = Un lanzamiento más antes: { $pitch }.
book-would-insert = Algo más antes:
book-would-score-as = Se anota como: { $verdict }.
book-more-numbers =
    { $count ->
        [one] Cambiaría { $count } número de jugadores
       *[other] Cambiarían { $count } números de jugadores
    }
book-would-stand = El juego quedaría { $score }, { $half }, { $outs }.
book-would-stand-over = El juego quedaría { $score }: { $state }.

## What is to settle.
book-conflicts = Por resolver: esto ya no encaja
book-conflicts-hint = Tras una corrección anterior en el juego, no cuentan. Arregle lo primero: lo que sigue puede volver a encajar. O tache cada cosa, o deshaga la corrección.
book-no-longer-fits = Ya no encaja.
book-mend-missing-runners = Quitar a los corredores que no están
book-mend-make-room = Mover una base a los corredores que estorban
book-mend-late-outs = Quitar los outs después del tercero
book-mend-strike-out = Tachar esto
book-mend-settles-all = { $mend } (resuelve todo)
book-mend-leaves = { $mend } (deja { $left })
book-settle = Por resolver: { $open }
book-all-settled = Decisiones, todas resueltas
book-settle-hint = Las reglas se lo dejan a quien anota. Mientras no conteste, vale la respuesta usual; se puede cambiar en cualquier momento.
book-usual = usual
book-yes = Sí
book-no = No

## The scoresheet.
book-print = Imprimir, una página por equipo
book-batters = Bateadores
book-sum-row = Sumas
book-unfinished = Un turno al bate que sigue, o que quedó cortado.
book-sheet-of = Hoja de anotación de { $team }
book-pitchers-of = Lanzadores de { $team }
book-sheet-at = en casa de { $team }
book-sheet-against = contra { $team }
book-sheet-sums = { $runs } C { $hits } H { $errors } E
book-sheet-sums-left = { $runs } C { $hits } H { $errors } E { $left } DB
book-legend = Lanzamientos arriba: ○ bola, | strike cantado, × swing fallado, ⁄ foul; + algunos no se vieron. Una K volteada es tercer strike cantado. Un diamante relleno es carrera, UE si es sucia; los puntos son carreras impulsadas; (4) quiere decir que avanzó por el bateador del turno 4. Una línea a la izquierda es otro bateador, arriba otro lanzador; un trazo en la esquina cierra la media entrada.

## The story.
book-story = El juego en breve

## Charts.
book-page-charts = Gráficas
book-print-charts = Imprimir estas gráficas
book-spray = Adónde fueron los batazos
book-spray-of = Batazos de { $name }
book-nobody-batted = Todavía no hay nadie en la alineación.
book-batter-before = Anterior
book-batter-after = Siguiente
book-batter-shown = Bateador que se muestra
book-batter-of-order =
    { $place }. { $name }: { $balls ->
        [0] sin bolas en juego
        [one] { $balls } bola en juego
       *[other] { $balls } bolas en juego
    }
book-no-balls = No puso ninguna bola en juego.
book-ball = { $fate }, entrada { $inning }: { $told }
book-ball-by-fielder = { $fate }, entrada { $inning }, dibujado donde juega el fildeador: { $told }
book-placed-by-fielder = Con círculo: no se tocó el punto, se dibuja donde juega el fildeador
book-out = Out
book-safe-otherwise = Quieto por otra causa
book-strips-of = Lanzamientos por entrada: { $team }
book-strip-of = Lanzamientos de { $name } por entrada
book-strip-total = Todo
book-strip-strikes = Strikes
book-strip-balls = Bolas
book-strip-first = Primer lanzamiento en strike
book-first-pitch-note = Los strikes incluyen las bolas puestas en juego. Primer lanzamiento en strike: de tantos turnos cuyo primer lanzamiento se vio. Es costumbre, no está en las reglas.

## A play amended whole.
book-amend-this = Corregir esta jugada…
book-amend-play = Corregir la jugada
book-amend-ball = El batazo
book-amend-trajectory = Cómo salió
book-amend-handled = La jugaron
book-amend-chain = { $what }: { $by }
book-amend-nobody = nadie
book-amend-chain-hint = Toca a los fildeadores en orden. Borrar empieza de nuevo.
book-amend-clear = Borrar
book-amend-where = Adónde fue
book-amend-where-hint = Toca el punto donde cayó o donde la tomaron primero. O muévelo con las flechas; con Mayús, más lejos.
book-amend-usual = O tomar lo que suele pasar
book-amend-everyone = Dónde terminó cada quien
book-amend-batter = { $name }, al bate
book-amend-on-first = { $name }, en primera
book-amend-on-second = { $name }, en segunda
book-amend-on-third = { $name }, en tercera
book-amend-end = Terminó
book-end-stays = Se quedó
book-end-first = Quieto en primera
book-end-second = Quieto en segunda
book-end-third = Quieto en tercera
book-end-scores = Anotó
book-end-out-first = Out en primera
book-end-out-second = Out en segunda
book-end-out-third = Out en tercera
book-end-out-home = Out en el plato
book-reaches-first = Primera, por
book-reaches-second = Segunda, por
book-reaches-third = Tercera, por
book-reaches-home = El plato, por
book-amend-on-error = Por un error
book-amend-error-by = Error de
book-amend-error-kind = Tipo de error
book-amend-how = Cómo fue out
book-amend-out-by = El out lo hicieron
book-amend-attempt = Al
book-attempt-steal = robar
book-attempt-pickoff = ser sorprendido fuera de base
book-attempt-advance = intentar avanzar
book-amend-late = El tercer out fue antes de la carrera
book-amend-look = Ver qué cambia
book-amend-start-over = Empezar de nuevo

## Something else than what was put in, or something forgotten.
book-instead = ¿Qué fue en realidad?
book-instead-ask = Fue otra cosa…
book-instead-now = Ahora dice:
book-instead-pitch = Un lanzamiento
book-instead-rare = Otros lanzamientos
book-instead-hit = Se bateó la bola: ¿quién la tuvo primero?
book-instead-turn = Todo el turno al bate
book-instead-turn-hint = Solo cómo terminó: los lanzamientos anteriores cuentan como no vistos.
book-instead-bases = En las bases
book-instead-everybody = Todos los que están en base
book-instead-players = Un cambio de jugadores
book-instead-umpire = Lo que declaró el umpire
book-instead-placed = Corredor puesto por regla en { $base }
book-missing = ¿Qué se olvidó?
book-missing-ask = Aquí falta algo…
book-missing-other = Se olvidó otra cosa…
book-missing-when = Cuándo
book-missing-before-pitch = Antes del lanzamiento { $number }: { $pitch }
book-missing-before = Justo antes de esto
book-missing-after = Justo después de esto
book-change-who = A quién se cambia
book-change-nobody = Elige a alguien
book-change-player = { $team }: { $name }, { $post }
book-change-comes-in = Entra { $name }
book-change-pinch-hits = { $name } batea de emergente
book-change-pinch-runs = { $name } corre de emergente
book-change-courtesy = { $name } corre por cortesía
book-change-swaps = Intercambia puesto con { $name }
book-would-add = Algo más después de la última anotación:
book-would-shift =
    Los turnos se corren: desde ahí batearía { $now }, no { $was } ({ $plays ->
        [one] { $plays } lanzamiento o jugada
       *[other] { $plays } lanzamientos y jugadas
    }).
book-amend-where-is = Adónde fue: { $place }
