# The frame around the places.
frame-clubhouse = Casa club
frame-browser-took-no-file = El navegador no aceptó el archivo.
frame-visitors = Visitantes
frame-home = Locales
frame-batter = Bateador { $place }
frame-pitcher = Lanzador
frame-player = Jugador { $number }
