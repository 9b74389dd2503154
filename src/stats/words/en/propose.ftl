# A point of the field.
propose-behind-plate = behind the plate
propose-before-plate = in front of the plate
propose-foul-left = foul, on the left side
propose-foul-right = foul, on the right side
propose-infield = by the { $fielder }
propose-outfield = { $depth ->
    [shallow] shallow { $direction }
    [deep] deep { $direction }
   *[other] { $direction }
}
propose-over-fence = over the fence in { $direction }
