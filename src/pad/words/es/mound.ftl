# The Mound.
mound-place = La lomita
mound-whose = De qué equipo
mound-in-the-field = en el campo
mound-at-bat = al bate
mound-nobody-pitches = Con estas reglas lanza una máquina o el entrenador: no hay nada que contar.
mound-not-begun = El conteo empieza con el primer lanzamiento.
mound-no-pitcher = No hay nadie en la lomita.
mound-pitches-today = lanzamientos hoy
mound-strikes = Strikes
mound-balls = Bolas
mound-this-batter = En este turno
mound-before-batter = Antes de este turno
mound-by-inning = Lanzamientos por entrada
mound-incomplete = + Como mínimo: algunos lanzamientos no se vieron.
mound-limit = Límite de la liga: { $limit }
mound-to-limit = { $left ->
    [one] Falta { $left } lanzamiento para el límite de la liga
   *[other] Faltan { $left } para el límite de la liga
}
mound-limit-reached = Se alcanzó el límite de la liga
mound-over-limit = { $over } más que el límite de la liga

# Every pitcher of the day.
mound-today = Quienes lanzaron hoy
mound-pitcher = Nombre
mound-p = L
mound-p-long = Lanzamientos
mound-s = S
mound-s-long = Strikes, con las bolas en juego
mound-b = B
mound-b-long = Bolas, con los pelotazos
mound-bf = BE
mound-bf-long = Bateadores enfrentados
mound-ip = EL
mound-ip-long = Entradas lanzadas
mound-this-game-only = Contado solo en este juego. Los lanzamientos de otros juegos del día se suman aparte.

# Rest.
mound-rest = Descanso
mound-caution = Las reglas de tu liga y el consejo médico van primero. La guía es un límite, no una promesa: un brazo que duele deja de lanzar con cualquier conteo.
mound-age = Edad en la fecha de corte de la liga
mound-no-age = Con la edad, aquí aparece la fila de la guía.
mound-no-row = La guía no tiene fila para esta edad.
mound-row = De { $from } a { $to } años: como máximo { $most } por día
mound-rest-days = { $pitches } lanzamientos: { $days ->
    [0] no se pide ningún día de descanso
    [one] se pide { $days } día de descanso
   *[other] se piden { $days } días de descanso
}
mound-beyond-table = { $pitches } lanzamientos: más de lo que la guía permite en un día
mound-count = Lanzamientos en un día
mound-days = Días de descanso
mound-now = ahora
mound-finish-the-batter = Algunas ligas permiten que quien llega al límite termine con quien está al bate, y calculan el descanso con el conteo anterior a ese turno.

# Kinds and speeds, where somebody noted them.
mound-kind = { $kind } { $times }
mound-kinds-list = { $before }, { $next }
mound-speeds = máxima { $top }, promedio { $mean } { $unit } (de { $measured } medidas)
mound-notes = Anotado: { $notes }
