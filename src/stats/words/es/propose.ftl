# A point of the field.
propose-behind-plate = detrás del plato
propose-before-plate = delante del plato
propose-foul-left = foul, por la izquierda
propose-foul-right = foul, por la derecha
propose-infield = en la zona del { $fielder }
propose-outfield = { $direction ->
    [left] jardín izquierdo
    [left-center] entre jardín izquierdo y central
    [center] jardín central
    [right-center] entre jardín central y derecho
   *[other] jardín derecho
}{ $depth ->
    [shallow] , corto
    [deep] , profundo
   *[other] { "" }
}
propose-over-fence = por encima de la cerca, { $direction ->
    [left] por la izquierda
    [left-center] entre izquierda y centro
    [center] por el centro
    [right-center] entre centro y derecha
   *[other] por la derecha
}
