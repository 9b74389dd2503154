# The frame around the places.
frame-places = Lugares
frame-clubhouse = Casa club
frame-card = Lineup
frame-plate = Plato
frame-mound = Lomita
frame-book = Libro
frame-kept = ✓ listo
frame-keeping = espera…
frame-following = sigue
frame-other-tab-keeps = Otra pestaña lleva este libro. Esta lo sigue, y toma su lugar cuando se cierre la otra.
frame-only-follows = Otra pestaña lleva este libro; esta solo lo sigue. Anota en la otra.
frame-take-home-now = Llevarse el archivo ahora
frame-browser-took-no-file = El navegador no aceptó el archivo.
frame-visitors = Visitantes
frame-home = Locales
frame-batter = Bateador { $place }
frame-pitcher = Lanzador
frame-player = Jugador { $number }

# A game that can't be opened.
frame-not-here = Este juego no está en este dispositivo
frame-not-here-why = Se tiró aquí, o la dirección viene de otro dispositivo: trae su archivo en la casa club.
frame-unreadable = Este juego no se puede leer
frame-unreadable-why = Quedó aparte tal como está, y desde la casa club te lo puedes llevar. Qué tiene: { $why }.
frame-to-the-clubhouse = A la casa club
