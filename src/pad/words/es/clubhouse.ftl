# La Casa club.
clubhouse-language = Idioma
clubhouse-motto = El libro del juego, según las reglas, sin señal.
clubhouse-night = Noche
clubhouse-left-handed = Mano izquierda
clubhouse-put-it-back = Recuperarlo
clubhouse-dismiss = Cerrar
clubhouse-new-version = Hay una nueva versión de Benchbook lista en este dispositivo. Los juegos quedan como están.
clubhouse-start-new-version = Iniciar la nueva versión
clubhouse-set-aside = Apartado
clubhouse-set-aside-why = Copias guardadas que no se pudieron leer o que contaban otro curso de un juego. No se escribe nada encima de ellas.
clubhouse-no-download = El navegador no aceptó el archivo.
clubhouse-whole-entries-listed = { $n ->
    [one] En la lista hay un juego con la única anotación íntegra.
   *[other] En la lista hay un juego con las { $n } anotaciones íntegras.
}
clubhouse-make-of-whole = { $n ->
    [one] Hacer un juego con la única anotación íntegra
   *[other] Hacer un juego con las { $n } anotaciones íntegras
}
clubhouse-aside-game = Juego { $id }
clubhouse-take-home-as-is = Llevárselo como está
clubhouse-throw-away = Desechar
clubhouse-throw-away-sure = Toca otra vez: se borra para siempre
clubhouse-title = { $visitors } en casa de { $home }
clubhouse-before = Antes del primer lanzamiento
clubhouse-underway = { $half ->
    [top] Alta de la { $inning }, { $outs ->
        [0] sin outs
        [one] 1 out
       *[other] { $outs } outs
    }
   *[bottom] Baja de la { $inning }, { $outs ->
        [0] sin outs
        [one] 1 out
       *[other] { $outs } outs
    }
}
clubhouse-delayed = { $half ->
    [top] Demorado en la alta de la { $inning }, { $outs ->
        [0] sin outs
        [one] 1 out
       *[other] { $outs } outs
    }
   *[bottom] Demorado en la baja de la { $inning }, { $outs ->
        [0] sin outs
        [one] 1 out
       *[other] { $outs } outs
    }
}
clubhouse-suspended = { $half ->
    [top] Suspendido en la alta de la { $inning }, { $outs ->
        [0] sin outs
        [one] 1 out
       *[other] { $outs } outs
    }
   *[bottom] Suspendido en la baja de la { $inning }, { $outs ->
        [0] sin outs
        [one] 1 out
       *[other] { $outs } outs
    }
}
clubhouse-final = Final
clubhouse-final-in = Final en { $innings }
clubhouse-final-by-lead = Final en { $innings }, por ventaja
clubhouse-called = Terminado por el árbitro en { $innings }
clubhouse-forfeited = Ganado por forfeit: { $team }
clubhouse-day = { $day } { $month ->
    [1] ene
    [2] feb
    [3] mar
    [4] abr
    [5] may
    [6] jun
    [7] jul
    [8] ago
    [9] sep
    [10] oct
    [11] nov
   *[12] dic
} { $year }
clubhouse-bring = Traer el archivo de un juego
clubhouse-pick-file = Elegir un archivo
clubhouse-bring-hint = Un archivo .benchbook.json de otro dispositivo. También se puede soltar en cualquier parte de aquí.
clubhouse-no-file = Eso no era un archivo.
clubhouse-not-brought = No se trajo { $file }: { $why }
clubhouse-is-here = { $title } ya está aquí.
clubhouse-unreadable-here = aquí hay un juego con ese nombre que no se puede leer ({ $why }); no se escribe encima
clubhouse-same-here = { $title } ya estaba aquí, anotación por anotación.
clubhouse-more-here = { $n ->
    [one] { $title } ya está aquí, con 1 anotación más que el archivo.
   *[other] { $title } ya está aquí, con { $n } anotaciones más que el archivo.
}
clubhouse-goes-on = { $n ->
    [one] { $title } sigue con 1 anotación del archivo.
   *[other] { $title } sigue con { $n } anotaciones del archivo.
}
clubhouse-parts-ways = { $title } ya estaba aquí, pero el archivo cuenta otro curso del juego. Se guardan los dos; el del archivo es el de arriba.
clubhouse-games = Juegos en este dispositivo
clubhouse-reading = Leyendo…
clubhouse-empty-field = Un campo sin nadie
clubhouse-no-games = Todavía no hay juegos. Empieza uno o trae el archivo de un juego de otro dispositivo.
clubhouse-downloaded = { $file } está en las descargas de este dispositivo.
clubhouse-not-shared = No se pudo compartir el archivo desde aquí: llévatelo en su lugar.
clubhouse-open-game = Abrir { $title }
clubhouse-take-home-game = Llevarse { $title }
clubhouse-take-home = Llevarse
clubhouse-share = Compartir
clubhouse-throw-away-game = Desechar { $title }
clubhouse-to-settle = { $n ->
    [one] { $state } · 1 anotación por resolver
   *[other] { $state } · { $n } anotaciones por resolver
}
clubhouse-thrown-away = Desechados ({ $n })
clubhouse-put-back = Recuperar
clubhouse-throw-away-for-good = Borrar para siempre
clubhouse-safety = Qué tan seguro está aquí
clubhouse-safety-hint = Un dispositivo se puede perder o borrar. Después del juego, llévate el archivo: contiene todo, y cualquier Benchbook lo lee.
clubhouse-promise = Promesa
clubhouse-ask-promise = Pedirle que lo prometa
clubhouse-room = Espacio
clubhouse-home-screen = Pantalla de inicio
clubhouse-installed = Benchbook está instalado en este dispositivo.
clubhouse-not-installed = Sin instalar. En el menú del navegador, o tras su botón de compartir, elige «Agregar a inicio»: así abre como cualquier otra aplicación, también sin señal.
clubhouse-install = Instalar en este dispositivo
clubhouse-promised = El navegador prometió no borrar por su cuenta lo que se guarda aquí.
clubhouse-not-promised = El navegador puede borrar lo que se guarda aquí cuando al dispositivo le falta espacio.
clubhouse-promise-unknown = El navegador no dice si borra lo que se guarda aquí.
clubhouse-room-of = { $used } en uso de { $quota }.
clubhouse-room-used = { $used } en uso.
clubhouse-room-unknown = El navegador no lo dice.
clubhouse-warn-week = Este navegador borra lo que guarda un sitio tras siete días sin visitarlo, salvo que esté agregado a la pantalla de inicio. Agrégalo, y llévate el archivo de cada juego.
clubhouse-warn-nothing = Este navegador no guarda nada aquí (una ventana privada, o el almacenamiento apagado): un juego dura hasta que se cierra la página. Llévate antes su archivo.
clubhouse-warn-no-database = Este navegador no tiene aquí base de datos (¿una ventana privada?): si falla, pueden perderse los últimos segundos. Llévate el archivo de cada juego.
clubhouse-warn-tabs = Este navegador no distingue dos pestañas: abre cada juego en una sola.
clubhouse-was-thrown-away = Se desechó { $title }.
clubhouse-gone = Se borró para siempre.
clubhouse-other-tab = Otra pestaña tiene abierto este juego: ciérralo allá primero.
clubhouse-no-room = Al dispositivo no le queda espacio. Llévate los juegos viejos, deséchalos aquí e intenta de nuevo.
clubhouse-season = Temporada
clubhouse-adding-up = Sumando…
clubhouse-team = Equipo
clubhouse-season-counted = Cuenta cada juego de la lista que haya empezado, una vez por cada vez que está en la lista. Un juego terminado por el árbitro o por forfeit antes de ser oficial solo cuenta en ganados y perdidos (OBR 9.03(e)).
clubhouse-season-caution = Contado solo en los juegos de este dispositivo. Los límites de tu liga y el consejo médico van primero.
clubhouse-season-incomplete = + Al menos: algunos de sus lanzamientos no se vieron.
clubhouse-record = { $undecided ->
    [0] { $won } ganados, { $lost } perdidos; { $runs } carreras a { $allowed }
   *[other] { $won } ganados, { $lost } perdidos, { $undecided } empatados o sin terminar; { $runs } carreras a { $allowed }
}
clubhouse-table = { $title }: { $team }
clubhouse-batting = Bateo
clubhouse-pitching = Lanzamiento
clubhouse-fielding = Fildeo
clubhouse-by-day = Lanzamientos por día
clubhouse-no-date = Sin fecha
clubhouse-column-games = J
clubhouse-column-games-long = Juegos
clubhouse-column-appearances = AP
clubhouse-column-appearances-long = Apariciones al plato
clubhouse-column-at-bats = VB
clubhouse-column-at-bats-long = Veces al bate
clubhouse-column-runs = C
clubhouse-column-runs-long = Carreras
clubhouse-column-hits = H
clubhouse-column-hits-long = Hits
clubhouse-column-batted-in = CI
clubhouse-column-batted-in-long = Carreras impulsadas
clubhouse-column-walks = BB
clubhouse-column-walks-long = Bases por bolas
clubhouse-column-strikeouts = K
clubhouse-column-strikeouts-long = Ponches
clubhouse-column-average = PRO
clubhouse-column-average-long = Promedio de bateo
clubhouse-column-on-base = OBP
clubhouse-column-on-base-long = Porcentaje de embasado
clubhouse-column-slugging = SLG
clubhouse-column-slugging-long = Porcentaje de slugging
clubhouse-column-innings = IL
clubhouse-column-innings-long = Entradas lanzadas
clubhouse-column-earned = CL
clubhouse-column-earned-long = Carreras limpias
clubhouse-column-earned-average = EFE
clubhouse-column-earned-average-long = Efectividad: carreras limpias, según las entradas de las reglas de cada juego
clubhouse-column-wins = G
clubhouse-column-wins-long = Juegos ganados
clubhouse-column-losses = P
clubhouse-column-losses-long = Juegos perdidos
clubhouse-column-saves = S
clubhouse-column-saves-long = Juegos salvados
clubhouse-column-putouts = O
clubhouse-column-putouts-long = Outs realizados
clubhouse-column-assists = A
clubhouse-column-assists-long = Asistencias
clubhouse-column-errors = E
clubhouse-column-errors-long = Errores
clubhouse-column-fielding-average = PRO
clubhouse-column-fielding-average-long = Promedio de fildeo
clubhouse-column-pitches = Lanz.
clubhouse-column-pitches-long = Lanzamientos de ese día
clubhouse-start = Empezar un juego
clubhouse-visitors = Visitantes (batean primero)
clubhouse-home = Locales
clubhouse-rules = Reglas de juego, se cambian en la tarjeta
clubhouse-score-now = Anotar ya, con Bateador 1 a { $last }
clubhouse-cards-first = Llenar primero las tarjetas
clubhouse-start-hint = Nombres y números se pueden llenar en cualquier momento, también durante el juego.
clubhouse-score-known = Anotar ya
clubhouse-from-earlier = Un equipo de juegos anteriores …
clubhouse-with-card = Con su última tarjeta
clubhouse-with-card-of = Con su tarjeta del { $date }
clubhouse-known-visitors = Equipo conocido, batea primero
clubhouse-known-home = Equipo conocido, de local
