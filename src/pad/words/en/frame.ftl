# The frame around the places.
frame-places = Places
frame-clubhouse = Clubhouse
frame-card = Card
frame-plate = Plate
frame-mound = Mound
frame-book = Book
frame-kept = ✓ kept
frame-keeping = keeping…
frame-following = following
frame-other-tab-keeps = Another tab keeps this book. This one follows it, and takes over when that tab is closed.
frame-only-follows = Another tab keeps this book; this one only follows. Record there.
frame-take-home-now = Take the file home now
frame-browser-took-no-file = The browser did not take the file.
frame-visitors = Visitors
frame-home = Home
frame-batter = Batter { $place }
frame-pitcher = Pitcher
frame-player = Player { $number }

# A game that can't be opened.
frame-not-here = This game isn't on this device
frame-not-here-why = It was thrown away here, or the address comes from another device: bring its file in the Clubhouse.
frame-unreadable = This game can't be read
frame-unreadable-why = It is set aside as it is, and can be taken home from the Clubhouse. What is wrong: { $why }.
frame-to-the-clubhouse = To the Clubhouse
