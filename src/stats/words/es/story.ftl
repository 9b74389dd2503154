# The story of a game: account/story.
story-top = la alta de la { $inning }.ª
story-bottom = la baja de la { $inning }.ª
story-won =
    Victoria de { $winner } sobre { $loser }, { $ours }–{ $theirs }{ $ended ->
        [extra] {" "}en { $innings } entradas.
        [mercy] {" "}en { $innings } entradas, por la diferencia que fijan las reglas del juego.
        [early] ; el juego terminó en { $half }.
        [called] ; el umpire dio por terminado el juego en { $half }.
       *[played] .
    }
story-tied =
    Empate entre { $visitors } y { $home }, { $runs }–{ $runs }{ $ended ->
        [extra] {" "}en { $innings } entradas.
        [early] ; el juego terminó en { $half }.
        [called] ; el umpire dio por terminado el juego en { $half }.
       *[played] .
    }
story-called-too-early = El umpire dio por terminado el juego en { $half }, antes de que valiera como juego. El marcador era { $visitors } { $first }, { $home } { $second }.
story-suspended = El juego está suspendido en { $half } y se debe continuar: { $visitors } { $first }, { $home } { $second }.
story-forfeited = Victoria por forfeit de { $winner } sobre { $loser }. El marcador era { $ours }–{ $theirs } cuando se detuvo el juego.
story-was-level = Iban empatados { $runs }–{ $runs }.
story-was-behind = { $team } perdía { $ours }–{ $theirs }.
story-ahead =
    En { $half } { $batter } puso al frente para siempre a { $team } { $deed ->
        [single] con un sencillo
        [double] con un doble
        [triple] con un triple
        [homer] con un jonrón
        [walk] con una base por bolas
        [plunked] al recibir un pelotazo con la casa llena
        [fly] con un elevado de sacrificio
        [bunt] con un squeeze play
        [choice] en una jugada de selección
        [error] por un error
        [award] por una concesión del umpire
       *[out] con una carrera en un out
    }, { $ours }–{ $theirs }.
story-won-it =
    En { $half } { $batter } dejó en el terreno al rival y ganó para { $team } { $deed ->
        [single] con un sencillo
        [double] con un doble
        [triple] con un triple
        [homer] con un jonrón
        [walk] con una base por bolas
        [plunked] al recibir un pelotazo con la casa llena
        [fly] con un elevado de sacrificio
        [bunt] con un squeeze play
        [choice] en una jugada de selección
        [error] por un error
        [award] por una concesión del umpire
       *[out] con una carrera en un out
    }, { $ours }–{ $theirs }.
story-ahead-otherwise =
    En { $half } { $runner } anotó { $cause ->
        [error] por un error
        [wild] en un lanzamiento descontrolado
        [passed] en un passed ball
        [balk] en un balk
        [illegal] en un lanzamiento ilegal
        [steal] con un robo del plato
        [throw] en un tiro
        [award] por concesión del umpire
       *[other] desde tercera
    } y puso al frente para siempre a { $team }, { $ours }–{ $theirs }.
story-won-it-otherwise =
    En { $half } { $runner } anotó { $cause ->
        [error] por un error
        [wild] en un lanzamiento descontrolado
        [passed] en un passed ball
        [balk] en un balk
        [illegal] en un lanzamiento ilegal
        [steal] con un robo del plato
        [throw] en un tiro
        [award] por concesión del umpire
       *[other] desde tercera
    } y dejó en el terreno al rival: ganó { $team }, { $ours }–{ $theirs }.
story-pitcher =
    { $part ->
        [complete-win] { $name } lanzó todo el juego y lo ganó
        [win] { $name } se llevó la victoria en el montículo
        [complete-loss] { $name } lanzó todo el juego y lo perdió
        [loss] { $name } cargó con la derrota
       *[save] { $name } salvó el juego
    }: { $innings }, { $hits ->
        [0] ningún hit
        [one] { $hits } hit
       *[other] { $hits } hits
    }, { $runs ->
        [0] ninguna carrera
        [one] { $runs } carrera
       *[other] { $runs } carreras
    }{ $runs ->
        [0] {""}
        [one] {" "}({ $earned ->
            [0] sucia
           *[other] limpia
        })
       *[other] {" "}({ $earned ->
            [0] ninguna limpia
            [one] { $earned } limpia
           *[other] { $earned } limpias
        })
    }, { $walks ->
        [0] ninguna base por bolas
        [one] { $walks } base por bolas
       *[other] { $walks } bases por bolas
    }, { $strikeouts ->
        [0] ningún ponche
        [one] { $strikeouts } ponche
       *[other] { $strikeouts } ponches
    }.
story-no-out = sin sacar outs
story-part-inning = { $part } de entrada
story-one-inning = 1 entrada
story-innings = { $whole }{ $part } entradas
story-shutout = Blanqueada de { $pitcher }: { $team } no anotó.
story-no-runs = { $team } no anotó.
story-no-hits = { $team } no conectó hit.
story-batter =
    { $name } { $atbats ->
        [0] no tuvo turno oficial
       *[other] se fue de { $atbats }-{ $hits }
    }{ $doubles ->
        [0] {""}
        [one] , { $doubles } doble
       *[other] , { $doubles } dobles
    }{ $triples ->
        [0] {""}
        [one] , { $triples } triple
       *[other] , { $triples } triples
    }{ $homers ->
        [0] {""}
        [one] , { $homers } jonrón
       *[other] , { $homers } jonrones
    }{ $rbi ->
        [0] {""}
        [one] , { $rbi } impulsada
       *[other] , { $rbi } impulsadas
    }{ $runs ->
        [0] {""}
        [one] , { $runs } anotada
       *[other] , { $runs } anotadas
    }.
story-no-errors = { $team } no cometió errores.
story-nobody-erred = Ninguno de los dos equipos cometió errores.
