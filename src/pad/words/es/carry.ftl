# Archivos que entran y salen.
carry-too-large = el archivo es demasiado grande para ser un juego: { $size } MB, y un juego con todos sus lanzamientos ocupa 0.1 MB
carry-not-handed-over = el dispositivo no entregó el archivo; intenta elegirlo otra vez
carry-file-name = { $visitors }-en-{ $home }
