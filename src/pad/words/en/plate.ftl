# The Plate.
plate-place = Plate
plate-board = Scoreboard
plate-field = The field: touch who fielded the ball, or where it came down
plate-undo = Undo
plate-redo = Redo
plate-players = Players
plate-umpire = Umpire
plate-cancel = Cancel
plate-back = Back
plate-record = Record
plate-more = More
plate-adjust = Adjust
plate-adjust-this = Adjust: { $headline }
plate-over-the-fence = HR
plate-list = { $before }, { $next }

# The board.
plate-outs = Outs
plate-at-bat = At bat
plate-on-deck = On deck
plate-pitching = Pitching
plate-nobody = nobody
plate-machine = the machine
plate-inning-top = Top of the { $inning ->
    [1] 1st
    [2] 2nd
    [3] 3rd
    [21] 21st
    [22] 22nd
    [23] 23rd
   *[other] { $inning }th
}
plate-inning-bottom = Bottom of the { $inning ->
    [1] 1st
    [2] 2nd
    [3] 3rd
    [21] 21st
    [22] 22nd
    [23] 23rd
   *[other] { $inning }th
}
plate-middle-of = Middle of the { $inning ->
    [1] 1st
    [2] 2nd
    [3] 3rd
    [21] 21st
    [22] 22nd
    [23] 23rd
   *[other] { $inning }th
}: { $score }
plate-end-of = End of the { $inning ->
    [1] 1st
    [2] 2nd
    [3] 3rd
    [21] 21st
    [22] 22nd
    [23] 23rd
   *[other] { $inning }th
}: { $score }
plate-outs-said = { $outs ->
    [0] No outs
    [one] { $outs } out
   *[other] { $outs } outs
}
plate-count-said = { $balls } balls, { $strikes } strikes
plate-score-said = { $visitors } { $away }, { $home } { $at_home }
plate-order-place = { $place }. { $name }
plate-pitch-count = { $pitches ->
    [one] { $pitches } pitch
   *[other] { $pitches } pitches
}
plate-first-time-up = first time up
plate-today = { $hits } for { $at_bats }{ $walks ->
    [0] { "" }
    [one] , walk
   *[other] , walks
}{ $runs ->
    [0] { "" }
   *[other] , { $runs } RBI
}
plate-coming-up = Coming up: { $names }
plate-stands = { $outs ->
    [0] no outs
    [one] { $outs } out
   *[other] { $outs } outs
}, { $balls }-{ $strikes }

# While play is not on.
plate-not-begun = The game has not begun.
plate-to-the-card = To the Card
plate-to-the-book = To the Book
plate-play-ball = Play ball
plate-no-player = No player in this batting place.
plate-empty-place-out = Record the out
plate-suspended = The game is suspended.
plate-stopped = Play is stopped.
plate-over-played = Final: { $score }
plate-over-mercy = Final by the lead: { $score }
plate-over-declared = Final as declared: { $score }
plate-over-called = Called: { $score }

# The pitches: on their buttons a large word and a small one, and in a sentence.
plate-pitches = Pitches
plate-in-play-hint = Hit? Touch the field: who had it, or where it came down.
plate-got-away = Strike three got away
plate-ball = Ball
plate-called = Called
plate-swinging = Swinging
plate-foul = Foul
plate-foul-tip = Foul tip
plate-foul-bunt = Foul bunt
plate-missed-bunt = Missed bunt
plate-pitchout = Pitchout
plate-wide-on-purpose = Wide on purpose
plate-automatic-ball = Ball
plate-automatic-strike = Strike
plate-illegal-pitch = Illegal pitch
plate-hit-by-pitch = Hit by pitch
plate-catcher-hindered = Catcher hindered
plate-batter-hindered = Batter hindered
plate-intentional-walk = Intentional walk
plate-small-strike = strike
plate-small-ball = ball
plate-small-held = held
plate-small-no-pitch = no pitch
plate-small-takes-first = takes first
plate-small-is-out = is out
plate-said-ball = Ball
plate-said-called-strike = Called strike
plate-said-swinging-strike = Swinging strike
plate-said-intentional-ball = Intentional ball
plate-said-automatic-ball = Automatic ball
plate-said-automatic-strike = Automatic strike
plate-catcher-interference = Catcher's interference
plate-batter-interference = Batter's interference
plate-then-walk = { $said }: walk
plate-then-intentional-walk = { $said }: intentional walk
plate-then-struck-out = { $said }: struck out
plate-then-side-out = { $said }. Side out

# How the ball came off the bat, and where everybody is.
plate-off-the-bat = How it came off the bat
plate-ground = Ground
plate-line = Line
plate-fly = Fly
plate-pop = Pop
plate-bunt = Bunt
plate-foul-ball = Foul
plate-pitcher = pitcher
plate-catcher = catcher
plate-first = first
plate-second = second
plate-third = third
plate-short = short
plate-left = left
plate-center = center
plate-right = right
plate-short-field = short field
plate-fielder-label = { $number } { $position }, { $name }
plate-runner-label = Runner on { $base }: { $name }
plate-batter-label = Batter: { $name }
plate-runner-title = { $name }, on { $base }
plate-batter-title = { $name }, batting
plate-the-runner = the runner

# What came of it.
plate-what-happened = What came of it
plate-unassisted = { $number }, unassisted
plate-headline-and-running = { $headline }: { $running }
plate-ground-out = Ground-out { $by }
plate-bunt-out = Bunt, out at first { $by }
plate-caught-line = Line drive caught by { $fielder } ({ $number })
plate-caught-pop = Pop caught by { $fielder } ({ $number })
plate-caught-foul-pop = Foul pop caught by { $fielder } ({ $number })
plate-caught-bunt = Bunt caught by { $fielder } ({ $number })
plate-caught-fly = Fly caught by { $fielder } ({ $number })
plate-caught-foul-fly = Foul fly caught by { $fielder } ({ $number })
plate-infield-fly = { $caught } (infield fly)
plate-double-play = Double play { $by }
plate-caught-double-play = Caught, double play { $by }
plate-triple-play = Triple play { $by }
plate-runner-out = { $runner } out at { $base }, { $by }; batter safe
plate-rundown = { $runner } caught in a rundown { $by }
plate-all-safe = Fielder's choice, everybody safe
plate-infield-single = Infield single
plate-single = Single
plate-double = Double
plate-triple = Triple
plate-inside-the-park = Home run inside the park
plate-home-run = Home run
plate-ground-rule-double = Bounced out: two bases
plate-hit-and-out = { $hit }; { $runner } out at { $base } { $by }
plate-hit-and-error = { $hit } and error by { $fielder } ({ $number })
plate-error-by-fielder = Error by { $fielder } ({ $number })
plate-bad-throw-by-fielder = Bad throw by { $fielder } ({ $number })
plate-bad-throw-batter-to = Bad throw by { $fielder } ({ $number }), batter to { $base }
plate-throw-dropped-by = Throw dropped by { $fielder } ({ $number })
plate-fly-dropped-by-fielder = Fly dropped by { $fielder } ({ $number })
plate-foul-fly-dropped-by = Foul fly dropped by { $fielder } ({ $number })
plate-batter-interfered = Batter out: interference
plate-runner-hit = { $runner } hit by the ball, out
plate-steals = Steals { $base }
plate-steals-home = Steals home
plate-steal-together = All steal together
plate-caught-stealing-at = Caught stealing at { $base } { $by }
plate-picked-off-at = Picked off at { $base } { $by }
plate-out-advancing-at = Out advancing at { $base } { $by }
plate-safe-on-bad-throw = Safe at { $base }: bad throw by { $fielder } ({ $number })
plate-safe-on-drop = Safe at { $base }: dropped by { $fielder } ({ $number })
plate-wild-pitch = Wild pitch
plate-passed-ball = Passed ball
plate-balk = Balk
plate-illegal-pitch-all = Illegal pitch: all move up
plate-unopposed-to = Takes { $base } unopposed
plate-wild-pitch-safe = Wild pitch, batter safe
plate-passed-ball-safe = Passed ball, batter safe
plate-catcher-throws-badly = Bad throw by catcher (2), batter safe
plate-first-drops = Throw dropped by first (3), batter safe
plate-thrown-out = Thrown out { $by }
plate-forced-at = { $runner } forced at { $base } { $by }
plate-way-out = { $runner } out at { $base }
plate-way-scores = { $runner } scores
plate-way-to = { $runner } to { $base }
plate-way-stays = { $runner } stays

# A runner.
plate-on-the-pitch = On that pitch
plate-between = Between pitches
plate-caught-stealing-ask = Caught stealing …
plate-picked-off-ask = Picked off …
plate-out-advancing-ask = Out advancing …
plate-chase-steal = { $runner } going: who threw, who tagged?
plate-chase-pickoff = { $runner } picked off: who threw, who tagged?
plate-chase-advance = { $runner } advancing: who threw, who tagged?

# Adjusting.
plate-touch-a-runner = Touch a runner, or drag them, to change where they ended
plate-run-too-late = Third out came before the run
plate-safe = Safe
plate-out = Out
plate-stays = Stays
plate-scores = Scores
plate-safe-at-first = Safe at first
plate-safe-at-second = Safe at second
plate-safe-at-third = Safe at third
plate-out-at-first = Out at first
plate-out-at-second = Out at second
plate-out-at-third = Out at third
plate-out-at-home = Out at home
plate-because = How so
plate-out-by = Out by { $by } · touch the fielders
plate-touch-who-erred = Touch the fielder who erred
plate-another-error = Error by …
plate-draft-and-errors = { $moves }; { $errors }
plate-misplay-by = { $misplay } by { $fielder }
plate-misplay-fielding = error
plate-misplay-throwing = bad throw
plate-misplay-muff = dropped throw
plate-misplay-dropped-fly = dropped fly
plate-misplay-dropped-foul = dropped foul fly
plate-misplay-obstruction = obstruction
plate-misplay-interference = interference
plate-error-by = Error by { $number }
plate-bad-throw-by = Bad throw by { $number }
plate-dropped-by = Dropped by { $number }
plate-fly-dropped-by = Fly dropped by { $number }
plate-obstruction-by = Obstruction by { $number }
plate-interference-by = Interference by { $number }
plate-cause-play = On the ball hit
plate-cause-throw = On the throw
plate-cause-choice = Fielder's choice
plate-cause-error = On the error
plate-cause-obstruction = Obstruction
plate-cause-interference = Interference
plate-cause-award = Awarded
plate-cause-forced = Forced along
plate-cause-steal = Stole it
plate-cause-illegal-pitch = Illegal pitch
plate-cause-indifference = Unopposed
plate-how-fly = Caught in the air
plate-how-force = Forced
plate-how-tag = Tagged
plate-how-strikeout = Struck out
plate-how-appeal = On appeal
plate-how-interference = Interfered
plate-how-hit-by-ball = Hit by the ball
plate-how-passing = Passed a runner
plate-how-left-path = Left the path
plate-how-out-of-turn = Out of turn
plate-how-other = Another rule

# People.
plate-who-changes = Who changes? Touch a fielder, a runner or the batter.
plate-drag-hint = Drag a fielder onto another: the two change places.
plate-fielding-side = In the field
plate-batting-side = At bat
plate-player-row = { $place }. { $name } { $post }
plate-pinch-hitter-for = Pinch hitter for { $name } ({ $post })
plate-pinch-runner-for = Pinch runner for { $name } ({ $post })
plate-takes-over-from = Takes over from { $name } ({ $post })
plate-came-in = { $incoming } takes over from { $outgoing }
plate-nobody-on-bench = Nobody is on the bench list.
plate-bench-row = #{ $shirt } { $name }
plate-bench-row-was-in = { $row } (was in)
plate-new-player = Somebody not on the list
plate-number = No.
plate-name = Name
plate-come-in = Comes in
plate-swap-hint = Or touch another fielder: the two change places.
plate-leaves = Leaves; nobody takes the place
plate-as-courtesy = Courtesy runner
plate-bats-for-dh = Bats from now on; the designated hitter leaves
plate-joins = Joins the end of the order: { $team }

# The umpire.
plate-result-only = Missed the pitches? The result alone
plate-result-walk = Walk
plate-result-struck-out-swinging = Struck out swinging
plate-result-struck-out-looking = Struck out looking
plate-the-count = The count as the umpire gives it
plate-out-of-turn = Another batter is up
plate-appeal = Appeal: batted out of turn
plate-place-runner = Put a runner on by rule
plate-the-game = The game
plate-why = In your words (may stay empty)
plate-end-half = End the half-inning
plate-delay = Play stops
plate-resume = Play goes on
plate-suspend = Suspended to another day
plate-call-game = Called: the game ends here
plate-final = Final
plate-forfeit-to = Forfeited to { $team }
plate-protest = Protest
plate-note = Note

# Questions.
plate-later = Later: it waits in the Book
plate-yes = Yes
plate-no = No
plate-hit = Hit
plate-error = Error

# What was recorded, said.
plate-undone = Took back the last entry
plate-redone = Put it back
plate-nothing-to-undo = There is nothing to take back.
plate-nothing-to-redo = There is nothing to put back.
plate-recorded-in-play = In play
plate-recorded-running = On the bases
plate-recorded-unseen = Result recorded; its pitches count as missed
plate-recorded-count = Count set to { $balls }-{ $strikes }
plate-recorded-change = Change recorded
plate-recorded-player = { $name } is on the roster
plate-recorded-batter-up = { $name } is at the plate
plate-recorded-empty-place = Out: nobody in this batting place
plate-recorded-appeal = Appeal recorded
plate-recorded-place-runner = { $name } placed on { $base }
plate-recorded-end-half = Half-inning ended
plate-recorded-status = Noted as the umpire declared it
plate-recorded-protest = Protest noted with the situation
plate-recorded-note = Noted
plate-recorded-ruling = Ruling noted
plate-recorded = Recorded

# Kind and speed of a pitch, for whoever notes them.
plate-note-pitches = Note kind and speed
plate-notes = The last pitch: kind and speed
plate-speed = Speed
plate-mph = mph
plate-kmh = km/h
plate-fastball = Fastball
plate-curveball = Curve
plate-slider = Slider
plate-change-up = Change-up
plate-knuckleball = Knuckleball
plate-drop = Drop ball
plate-rise = Rise ball
plate-other-pitch = Other
plate-speed-said = { $speed } { $unit }
plate-noted = Noted: { $what }
plate-noted-both = Noted: { $kind }, { $speed }
plate-noted-nothing = Taken off the pitch
