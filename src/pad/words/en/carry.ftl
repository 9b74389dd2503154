# Files in and out.
carry-too-large = the file is too large to be a game: { $size } MB, and a game with all its pitches has 0.1 MB
carry-not-handed-over = the device didn't hand the file over; try picking it again
carry-file-name = { $visitors }-at-{ $home }
