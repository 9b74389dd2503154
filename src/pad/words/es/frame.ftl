# The frame around the places.
frame-clubhouse = Casa club
frame-browser-took-no-file = El navegador no aceptó el archivo.
