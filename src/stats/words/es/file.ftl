# Lo que puede fallar en un archivo de juego: file/error.rs.
file-empty = el archivo está vacío: quizá no se copió hasta el final; cópialo de nuevo desde donde se llevó el juego
file-too-large = el archivo es demasiado grande para ser un juego ({ $bytes } bytes; el límite es { $limit })
file-not-text = la línea { $line } tiene bytes que no son texto UTF-8: el archivo se dañó o no es un juego de Benchbook
file-utf-16 = el archivo está guardado en UTF-16: quizá lo hizo un editor; ábrelo allí y guárdalo en UTF-8
file-not-json = no es un archivo de juego de Benchbook (línea { $line }, columna { $column }: { $what })
file-other-format = no es un archivo de juego de Benchbook: dice ser «{ $found }», no «{ $format }»
file-no-format = no es un archivo de juego de Benchbook: no dice ser «{ $format }»
file-newer = hecho por un Benchbook más nuevo (versión { $found } del archivo; este lee hasta la { $version }): actualiza y ábrelo de nuevo; el archivo no cambia
file-truncated = el archivo se corta en la línea { $line }: no se guardó o no se copió hasta el final; { $whole }
file-damaged = la línea { $line }, columna { $column }, está dañada ({ $what }); { $whole }
file-head = línea { $line }: { $what }
file-entry = línea { $line }: la anotación { $number } del registro no se puede leer: { $what }
file-order = línea { $line }: la anotación { $number } del registro tiene el número { $id }, pero la anterior tiene { $after }: los números deben subir, cada uno una sola vez
file-whole-before = { $whole ->
    [0] ninguna anotación anterior está entera
    [1] 1 anotación anterior está entera
   *[other] { $whole } anotaciones anteriores están enteras
}
