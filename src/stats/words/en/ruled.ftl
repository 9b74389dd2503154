# What was ruled, and the numbers of the box score: account/sentences/ruled.rs.
grounds-both = For the pitcher: { $pitcher } For the team: { $team } { $answers }
ruled-nobody-known = nobody known
ruled = { $whom }: { $what }
ruled-batted-in = Run of { $runner }: batted in by { $batter }
ruled-not-batted-in = Run of { $runner }: batted in by nobody
ruled-charged = Run of { $runner }: charged to { $pitcher }, { $verdict }
ruled-charged-so-far = Run of { $runner }: charged to { $pitcher }, { $verdict }, so far
ruled-earned = earned
ruled-unearned = unearned
ruled-earned-pitcher-only = earned for the pitcher, not for the team
ruled-earned-team-only = earned for the team, not for the pitcher
ruled-fielder = { $fielder }, { $position }: { $what }
ruled-some-fielder = The { $position }: { $what }
credit-putout = putout
credit-assist = assist
credit-error = error
credit-double-play = part in a double play
credit-triple-play = part in a triple play
ruled-wild-pitch = wild pitch
ruled-passed-ball = passed ball
ruled-balk = balk
ruled-double-play = grounded into a double play
ruled-outs = { $outs ->
    [1] { $fielder }, { $position }: 1 out
   *[other] { $fielder }, { $position }: { $outs } outs
}
ruled-pitches = { $pitcher } to { $batter }: { $balls }, { $strikes }
ruled-balls = { $balls ->
    [1] 1 ball
   *[other] { $balls } balls
}
ruled-strikes = { $strikes ->
    [1] 1 strike
   *[other] { $strikes } strikes
}
ruled-left-on-base = { $batter }: { $runners } left on base
ruled-team-left-on-base = { $runners } left on base
ruled-win = winning pitcher
ruled-loss = losing pitcher
ruled-save = save
ruled-shutout = shutout
ruled-complete-game = complete game
ruled-hold = hold, by custom
ruled-blown-save = blown save, by custom
result-two-base-hit = two-base hit
result-three-base-hit = three-base hit
result-home-run = home run
result-single = single
result-walk = base on balls
result-intentional-walk = intentional base on balls
result-hit-by-pitch = hit by a pitch
result-strikeout = strikeout
result-out = out
result-fielders-choice = fielder's choice
result-on-error = reached on an error, no hit
result-sacrifice-hit = sacrifice hit
result-sacrifice-fly = sacrifice fly
result-interference = first base on interference
result-obstruction = first base on obstruction
theft-stolen = { $bases ->
    [1] stolen base
   *[other] { $bases } stolen bases
}
theft-caught = caught stealing { $base }
theft-caught-saved = caught stealing { $base }, saved by an error
theft-picked-off = picked off, not caught stealing
theft-not-stolen = no stolen base
number-of = { $what }: { $whom }
number-plate-appearances = Plate appearances
number-at-bats = At bats
number-runs = Runs
number-hits = Hits
number-doubles = Two-base hits
number-triples = Three-base hits
number-home-runs = Home runs
number-runs-batted-in = Runs batted in
number-walks = Bases on balls
number-intentional-walks = Intentional bases on balls
number-strikeouts = Strikeouts
number-hit-by-pitch = Hit by a pitch
number-sacrifice-hits = Sacrifice hits
number-sacrifice-flies = Sacrifice flies
number-interference = First base on interference
number-reached-on-error = Reached on errors
number-fielders-choices = Fielder's choices
number-stolen-bases = Stolen bases
number-caught-stealing = Caught stealing
number-grounded-into-double-plays = Grounded into double plays
number-left-on-base = Left on base
number-pitcher-outs = Innings pitched
number-pitcher-batters-faced = Batters faced
number-pitcher-hits = Hits allowed
number-pitcher-home-runs = Home runs allowed
number-pitcher-runs = Runs charged
number-pitcher-earned-runs = Earned runs
number-pitcher-walks = Bases on balls given
number-pitcher-intentional-walks = Intentional bases on balls given
number-pitcher-strikeouts = Strikeouts pitched
number-pitcher-hit-batters = Batters hit
number-pitcher-wild-pitches = Wild pitches
number-pitcher-balks = Balks
number-pitcher-pitches = Pitches
number-pitcher-balls = Balls
number-pitcher-strikes = Strikes
number-fielder-putout = Putouts
number-fielder-assist = Assists
number-fielder-error = Errors
number-fielder-double-play = Double plays
number-fielder-triple-play = Triple plays
number-catcher-passed-balls = Passed balls
number-catcher-stolen-bases = Bases stolen while catching
number-catcher-caught-stealing = Runners caught while catching
number-in-field = Innings in the field
number-decision = Decision
number-earned-against = Earned runs against { $whom }, as a team
pitch-in-play = in play
pitch-ball = ball
pitch-called-strike = called strike
pitch-swinging-strike = swing and a miss
pitch-foul = foul
pitch-foul-tip = foul tip
pitch-foul-bunt = foul bunt
pitch-missed-bunt = missed bunt
pitch-pitchout = pitchout
pitch-intentional-ball = intentional ball
pitch-automatic-ball = automatic ball, no pitch
pitch-automatic-strike = automatic strike, no pitch
pitch-illegal-pitch = illegal pitch
pitch-hit-by-pitch = hit the batter
pitch-catcher-interference = catcher's interference
pitch-batter-interference = batter's interference
