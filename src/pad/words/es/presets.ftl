# Las reglas de juego de las que se puede partir.
presets-baseball-9 = Béisbol, 9 entradas
presets-baseball-7 = Béisbol, 7 entradas
presets-youth-6 = Béisbol infantil, 6 entradas
presets-fastpitch-7 = Sóftbol de lanzamiento rápido, 7 entradas
presets-slow-pitch-7 = Sóftbol de lanzamiento lento, 7 entradas
presets-coach-pitch = Lanza la máquina o el entrenador, 6 entradas
presets-source-baseball = Official Baseball Rules 2024, de memoria
presets-source-school = Práctica común de escuelas y clubes, sin fuente
presets-source-youth = Práctica común infantil, sin fuente: las reglas de tu liga van primero
presets-source-fastpitch = Práctica común de lanzamiento rápido, sin fuente: las reglas de tu liga van primero
presets-source-slow-pitch = Práctica común de lanzamiento lento, sin fuente: las reglas de tu liga van primero
