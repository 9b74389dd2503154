# The Mound.
mound-place = The Mound
mound-whose = Whose pitchers
mound-in-the-field = in the field
mound-at-bat = at bat
mound-nobody-pitches = Under these rules of play a machine or a coach pitches: there is nothing to count.
mound-not-begun = The count begins with the first pitch.
mound-no-pitcher = Nobody is on the mound.
mound-pitches-today = pitches today
mound-strikes = Strikes
mound-balls = Balls
mound-this-batter = This batter
mound-before-batter = Before this batter
mound-by-inning = Pitches by inning
mound-incomplete = + At least: some pitches were not seen.
mound-limit = The league's limit: { $limit }
mound-to-limit = { $left ->
    [one] { $left } pitch left to the league's limit
   *[other] { $left } left to the league's limit
}
mound-limit-reached = The league's limit is reached
mound-over-limit = { $over } over the league's limit

# Every pitcher of the day.
mound-today = Pitchers of today
mound-pitcher = Pitcher
mound-p = P
mound-p-long = Pitches
mound-s = S
mound-s-long = Strikes, balls in play among them
mound-b = B
mound-b-long = Balls, hit batters among them
mound-bf = BF
mound-bf-long = Batters faced
mound-ip = IP
mound-ip-long = Innings pitched
mound-this-game-only = Counted in this game only. Pitches in other games of the day come on top.

# Rest.
mound-rest = Rest
mound-caution = Your league's rules and medical advice come first. A guideline is a limit, not a promise: an arm that hurts stops pitching at any count.
mound-age = Age on the league's cut-off day
mound-no-age = With the age, the guideline's row shows here.
mound-no-row = The guideline has no row for this age.
mound-row = Ages { $from } to { $to }: at most { $most } in a day
mound-rest-days = { $pitches } pitches: { $days ->
    [0] no day of rest asked for
    [one] { $days } day of rest asked for
   *[other] { $days } days of rest asked for
}
mound-beyond-table = { $pitches } pitches: more than the guideline allows in a day
mound-count = Pitches in a day
mound-days = Days of rest
mound-now = now
mound-finish-the-batter = Some leagues let a pitcher who reaches the limit finish the batter, and reckon the rest from the count before that batter.

# Kinds and speeds, where somebody noted them.
mound-kind = { $kind } { $times }
mound-kinds-list = { $before }, { $next }
mound-speeds = fastest { $top }, on average { $mean } { $unit } (of { $measured } measured)
mound-notes = Noted: { $notes }
