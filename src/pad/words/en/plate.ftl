# The Plate.
