# The frame around the places.
frame-clubhouse = Clubhouse
frame-browser-took-no-file = The browser did not take the file.
frame-visitors = Visitors
frame-home = Home
frame-batter = Batter { $place }
frame-pitcher = Pitcher
frame-player = Player { $number }
