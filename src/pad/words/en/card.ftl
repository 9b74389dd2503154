# The Card.
card-title = The Card
card-visitors-bat-first = Visitors (bat first)
card-home = Home
card-no-lineup = No lineup yet.
card-fill-in-numbered = Fill in numbered batters
card-fill-in-later = Names, numbers and positions can be changed at any time before play; names and numbers also during it.
card-add-batter = Add a batter
card-reorder = Change the order
card-reorder-done = Done
card-drag = Drag to another place
card-fields-only = Fields, does not bat
card-no-designated-hitter = No designated hitter
card-bench = Bench
card-add-to-bench = Add a player to the bench
card-into-the-order = Into the order
card-game = The game
card-date = Date
card-begins-at = Begins at
card-where = Place
card-competition = Competition
card-scorer = Who keeps this book
card-game-unknown = Date, place and competition
card-rules = Rules of play
card-every-rule = Every rule, to be changed
card-league-first = Your league's rules come first.
card-rules-fixed = The game has begun: rules and cards are fixed. Changes are recorded at the Plate.
card-start-from = Start from
card-rules-name = What these rules are called
card-rules-source = Where they come from
card-mercy = The game ends by a lead
card-mercy-lead = Runs ahead
card-mercy-after = after inning
card-add = Add
card-remove = Remove
card-reentry = A player who has left may come back
card-before = Before the first pitch
card-nothing-missing = Nothing is missing.
card-usual-checks = Balls, bats and field: the usual checks
card-needed = Needed:
card-good-to-know = Good to know:
card-play-ball = Play ball
card-to-the-plate = To the Plate
card-changes = Changes during the game
card-no-changes = None so far. They are recorded at the Plate.
card-rule-innings = Innings
card-rule-fielders = Fielders (9, or 10 with a short fielder)
card-rule-players-pitch = Players pitch (not a machine or a coach)
card-rule-balls-for-walk = Balls for a walk (empty: nobody walks)
card-rule-strikes-for-out = Strikes for an out
card-rule-starting-balls = Balls each batter starts with
card-rule-starting-strikes = Strikes each batter starts with
card-rule-foul-third-strike = A foul with one strike to go is an out
card-rule-dropped-third = The batter may run when strike three is not caught
card-rule-stealing = Runners may steal
card-rule-run-limit = Runs that end a half-inning (empty: no limit)
card-rule-run-limit-open = No run limit in the last inning
card-rule-tie-break = Runners placed from inning (empty: never)
card-rule-placed-first = Runner placed on first
card-rule-placed-second = Runner placed on second
card-rule-placed-third = Runner placed on third
card-rule-courtesy-runner = Courtesy runner for pitcher and catcher
card-rule-continuous = Everyone present bats (continuous order)
card-rule-designated-hitter = Designated hitter
card-rule-extra-hitters = Batters beyond the fielders
card-rule-empty-place = A place left empty is an out
card-rule-time-limit = No new inning after so many minutes
card-rule-pitch-limit = Most pitches a pitcher may throw in a day
card-rule-base-paths = Feet between bases
card-rule-pitching-distance = Feet from the pitcher's plate to home
card-rule-mandatory-outs = Outs in the field for everyone present
card-rule-mandatory-at-bats = Times at bat for everyone present
card-rule-ball = Inches round the ball
card-rule-bat-length = Longest bat, in inches
card-rule-bat-barrel = Thickest barrel, in hundredths of an inch
card-rule-wooden-bats = Wooden bats only
card-rule-arc-from = Lowest arc of a pitch, in feet
card-rule-arc-to = Highest arc of a pitch, in feet
card-post-extra-hitter = Bats only
card-reentry-never = Never
card-reentry-starters-once = Starters, once
card-reentry-free = Anyone, any time
card-shirt = No.
card-shirt-of = No., { $whom }
card-name-of = Name, { $whom }
card-plays-of = Plays, { $whom }
card-team-name-of = Team name, { $side }
card-move-up = { $whom }: up
card-move-down = { $whom }: down
card-move-to-bench = { $whom }: to the bench
card-move-into-order = { $whom }: Into the order
card-most-batters = The rules of play take { $most } batters.
card-differs = { $n ->
    [one] 1 rule differs from it.
   *[other] { $n } rules differ from it.
}
card-usual-hint = These are reminders from common practice, without a source.
card-missing-card = { $team }: no lineup yet.
card-missing-pitcher = { $team }: no pitcher.
card-missing-fielders = { $team }: nobody is { $positions }.
card-missing-too-many = { $team }: { $has } batters; the rules of play take { $most }.
card-missing-same-number = { $team }: two players wear { $number }.
card-missing-unknown = { $n ->
    [one] { $team }: one player has neither name nor number yet.
   *[other] { $team }: { $n } players have neither name nor number yet.
}
card-missing-no-designated-hitter = { $team }: the rules of play have no designated hitter.
card-missing-nobody-bats-for = { $team }: somebody only fields, and there is no designated hitter.
card-missing-date = No date: pitch counts and rest go by the day.
card-top-of = Top of { $inning }
card-bottom-of = Bottom of { $inning }
card-usual-done = { $done } of { $all }
card-usual-caution = Your league's rules come first, and the umpire decides. What is cracked, dented or loose can hurt somebody: leave it out.
card-check-balls = Game balls ready: about { $pitches } pitches are to be expected, so { $from } to { $to } balls where a new one comes in every 5 or 6 pitches. For practice, or where balls are thrown back in, as in youth games, 3 or so do. To professional games 15 to 18 dozen are brought by custom.
card-check-rubbed = New balls rubbed, so that the gloss is off.
card-check-ball-size = The ball { $inches } inches round.
card-check-bat-length = Bats at most { $inches } inches long, by the rules of play.
card-check-bat-barrel = Bats at most { $inches } inches thick, by the rules of play.
card-check-wooden-bats = Wooden bats only, by the rules of play: no metal.
card-check-small-bats = Bats on a small field are usually under 2.25 inches thick and under 33 inches long.
card-check-metal-bats = Metal bats only where your league allows them: some ban them.
card-check-childrens-weights = Bat weights for children: 16 to 17 ounces at 8 to 10 years under 50 inches tall, up to 20 ounces above 60 inches; 18 to 23 ounces at 11 and 12 years.
card-check-grown-weights = Bat weights from high school on: 27 to 31 ounces.
card-check-mitts = Mitts only where the rules allow one, usually the catcher and first base; gloves everywhere else.
card-check-base-paths = Bases { $feet } feet apart.
card-check-pitching-distance = { $inches ->
    [0] The pitcher's plate { $feet } feet from home.
   *[other] The pitcher's plate { $feet } feet { $inches } inches from home.
}
card-check-arc-from = The arc of the pitch at least { $feet } feet high.
card-check-arc-to = The arc of the pitch at most { $feet } feet high.
card-check-arc-between = The arc of the pitch at least { $from } and at most { $to } feet high.
card-check-slow-pitch = Slow-pitch rules differ: the pitcher's plate is from 46 to 50 feet from home, and some have an arc of about 10 to 13 feet.
card-check-outs = { $outs ->
    [one] Everyone present is to get 1 out in the field.
   *[other] Everyone present is to get { $outs } outs in the field.
}
card-check-at-bats = { $turns ->
    [one] Everyone present is to get 1 time at bat.
   *[other] Everyone present is to get { $turns } times at bat.
}
card-check-umpire = The umpire has approved field and equipment.
card-rules-come-from = Where they come from: { $source }
card-known-team = A team from earlier games
card-copy = Copy the last card
card-copy-of = Copy the last card ({ $date })
card-copy-sure = Tap again: it replaces this card
card-roster = Players from earlier games
card-roster-left = { $n } not on this card
card-roster-hint = A tap puts the player into the first place without a name, else at the end of the order.
card-roster-hint-begun = A tap puts the player into the first place without a name, else on the bench.
card-joins = { $whom }: joins at the end of the order
card-joins-order = Joins at the end of the order
card-about = Bats, throws, age
card-about-hint = Age in years on your league's cut-off day: the Mound looks up pitch limits by it. Your league's rules and medical advice come first.
card-bats = Bats
card-throws = Throws
card-age = Age
card-bats-of = Bats, { $whom }
card-throws-of = Throws, { $whom }
card-age-of = Age, { $whom }
card-hand-right = Right
card-hand-left = Left
card-hand-both = Both
