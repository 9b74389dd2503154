# The frame around the places.
frame-clubhouse = Clubhouse
frame-browser-took-no-file = The browser did not take the file.
