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

# As a box score and a lineup card abbreviate them.
short-pitcher = P
short-catcher = C
short-first-base = 1B
short-second-base = 2B
short-third-base = 3B
short-shortstop = SS
short-left-field = LF
short-center-field = CF
short-right-field = RF
short-short-field = 10
short-designated-hitter = DH
short-extra-hitter = EH
short-pinch-hitter = PH
short-pinch-runner = PR
