# Bases, positions and sides inside a sentence: field.rs.
base-first = first
base-second = second
base-third = third
base-home = home
position-pitcher = pitcher
position-catcher = catcher
position-first-base = first baseman
position-second-base = second baseman
position-third-base = third baseman
position-shortstop = shortstop
position-left-field = left fielder
position-center-field = center fielder
position-right-field = right fielder
position-short-field = short fielder
side-visitors = visitors
side-home = home
