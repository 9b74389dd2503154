# The Book.
book-title = The Book
book-pages = Pages of the Book
book-page-box = Box score
book-page-plays = Play by play
book-page-sheet = Scoresheet
book-close = Close
book-agree = Agree
book-leave = Leave it as it is

## The scoreboard.
book-line-score = Line score
book-team = Team
book-runs = R
book-runs-long = Runs
book-hits = H
book-hits-long = Hits
book-errors = E
book-errors-long = Errors
book-half-top =
    Top of the { $inning ->
        [1] 1st
        [2] 2nd
        [3] 3rd
        [21] 21st
        [22] 22nd
        [23] 23rd
       *[other] { $inning }th
    }
book-half-bottom =
    Bottom of the { $inning ->
        [1] 1st
        [2] 2nd
        [3] 3rd
        [21] 21st
        [22] 22nd
        [23] 23rd
       *[other] { $inning }th
    }
book-outs =
    { $outs ->
        [one] { $outs } out
       *[other] { $outs } outs
    }
book-state-before = Before the first pitch
book-state-delayed = Delayed
book-state-suspended = Suspended
book-state-final = Final
book-state-mercy = Final, by the lead
book-state-declared = Ended early
book-state-called = Called
book-state-forfeited-visitors = Forfeited to the visitors
book-state-forfeited-home = Forfeited to the home side

## The box score.
book-batting = At bat
book-pitching = Pitching
book-fielding = In the field
book-totals = Totals
book-table-of = { $table }: { $team }
book-at-bats = AB
book-at-bats-long = At bats
book-runs-batted-in = RBI
book-runs-batted-in-long = Runs batted in
book-walks = BB
book-walks-long = Bases on balls
book-strikeouts = K
book-strikeouts-long = Strikeouts
book-left-on-base = LOB
book-left-on-base-long = Left on base at a batter's outs, by custom; in the total, by the side
book-innings-pitched = IP
book-innings-pitched-long = Innings pitched
book-earned-runs = ER
book-earned-runs-long = Earned runs
book-batters-faced = BF
book-batters-faced-long = Batters faced
book-pitch-count = P
book-pitch-count-long = Pitches
book-strikes = S
book-strikes-long = Strikes, balls in play among them
book-average = ERA
book-average-long = Earned run average of this game
book-putouts = PO
book-putouts-long = Putouts
book-assists = A
book-assists-long = Assists
book-double-plays = DP
book-double-plays-long = Double plays taken part in
book-passed-balls = PB
book-passed-balls-long = Passed balls
book-team-earned = Earned runs of the team can be fewer than its pitchers' sum (OBR 9.16(i)).
book-pitches-missed = At least this many: some pitches were not seen.
book-average-reckoned = ERA: earned runs for every { $innings } innings pitched. Common practice, no source: among professionals about 4 is average and 2 or less excellent.
book-win = W
book-loss = L
book-save = S
book-win-of = Winning pitcher: { $name }. Why?
book-loss-of = Losing pitcher: { $name }. Why?
book-save-of = Save: { $name }. Why?
book-note-doubles = Two-base hits
book-note-triples = Three-base hits
book-note-home-runs = Home runs
book-note-sacrifice-hits = Sacrifice hits
book-note-sacrifice-flies = Sacrifice flies
book-note-hit-by-pitch = Hit by a pitch
book-note-walked-intentionally = Walked intentionally
book-note-stolen-bases = Stolen bases
book-note-caught-stealing = Caught stealing
book-note-double-plays = Grounded into double plays
book-note-on-errors = Reached on errors
book-note-interference = First base on interference
book-note-on-choices = Reached on fielder's choices
book-note-home-runs-allowed = Home runs allowed
book-note-wild-pitches = Wild pitches
book-note-balks = Balks
book-note-batters-hit = Batters hit

## The proof.
book-proof = Proof of the box score
book-proof-rule = OBR 9.03(c)
book-proof-hit-by-pitch = HBP
book-proof-sacrifices = SH+SF
book-proof-interference = interference
book-proof-placed = placed runners
book-proof-putouts = opponents' PO
book-balances = It balances: { $batters } came up, { $batters } are accounted for.
book-missing-right =
    { $cameup } came up, but only { $accounted } are accounted for: { $off ->
        [one] { $off } batter
       *[other] { $off } batters
    } missing on the right.
book-missing-left =
    { $accounted } are accounted for, but only { $cameup } came up: { $off ->
        [one] { $off } batter
       *[other] { $off } batters
    } missing on the left.

## Why?
book-asked = { $value }, { $what }. Why?
book-no-evidence = No play stands behind this number.
book-counts = counts
book-does-not-count = does not count
book-rests-on = It rests on:
book-rule = OBR { $rule }
book-by-custom = By custom, not by rule

## Play by play.
book-before-the-first-pitch = Before the first pitch
book-nothing-yet = Nothing has happened yet. What is scored at the Plate is told here.
book-sums = { $runs } R · { $hits } H · { $errors } E
book-sums-left = { $runs } R · { $hits } H · { $errors } E · { $left } LOB
book-undo = Undo last entry
book-redo = Put it back
book-newest-first = Newest first
book-oldest-first = From the first pitch on
book-struck-out = Struck out
book-put-back = Put back
book-entry = Entry { $number }
book-pitches = Pitches
book-pitches-thrown = { $pitches } ({ $balls }–{ $strikes }): { $names }.
book-rulings = Why it is scored so

## Corrections.
book-strike-out = Strike this out…
book-strike-out-pitch = Strike this pitch out…
book-amend-pitch = Amend a pitch
book-it-was = It was instead:
book-forgotten-before = Forgotten just before it:
book-score-as = Score it as
book-single = Single
book-double = Two-base hit
book-triple = Three-base hit
book-home-run = Home run
book-hit = Hit
book-error = Error
book-error-by = Error, { $position }
book-choice = Fielder's choice
book-wild-pitch = Wild pitch
book-passed-ball = Passed ball
book-preview = What would change
book-no-change = No number would change.
book-stays-in-log = The history of corrections stays in the log, and each can be undone.
book-would-strike-out = Struck out.
book-would-be-pitch = The pitch was instead: { $pitch }.
book-would-insert-pitch = One pitch more before it: { $pitch }.
book-would-insert = Something more before it:
book-would-score-as = Scored as: { $verdict }.
book-more-numbers =
    { $count ->
        [one] { $count } number of players would change
       *[other] { $count } numbers of players would change
    }
book-would-stand = The game would stand at { $score }, { $half }, { $outs }.
book-would-stand-over = The game would stand at { $score }: { $state }.

## What is to settle.
book-conflicts = To settle: these entries no longer fit
book-conflicts-hint = After a correction earlier in the game they count for nothing. Mend the first: those after it may fit again. Or strike each one out, or undo the correction.
book-no-longer-fits = No longer fits.
book-mend-missing-runners = Leave out runners who are not there
book-mend-make-room = Move the runners in the way up one base
book-mend-late-outs = Leave out the outs after the third
book-mend-strike-out = Strike this entry out
book-mend-settles-all = { $mend } (settles all)
book-mend-leaves = { $mend } (leaves { $left })
book-settle = To settle: { $open }
book-all-settled = Judgments, all settled
book-settle-hint = The rules leave these to the scorer. Until you answer, the usual answer stands; an answer can be changed at any time.
book-usual = usual
book-yes = Yes
book-no = No

## The scoresheet.
book-print = Print, one page a side
book-batters = Batters
book-sum-row = Sums
book-unfinished = A turn at bat that goes on, or was cut short.
book-sheet-of = Scoresheet of { $team }
book-pitchers-of = Pitchers of { $team }
book-sheet-at = at { $team }
book-sheet-against = against { $team }
book-sheet-sums = { $runs } R { $hits } H { $errors } E
book-sheet-sums-left = { $runs } R { $hits } H { $errors } E { $left } LOB
book-legend = Pitches along the top: ○ ball, | called strike, × swing and a miss, ⁄ foul; + some not seen. A turned K is a called third strike. A filled diamond is a run, UE an unearned one; dots are runs batted in; (4) means moved up by the batter in place 4. A line at the left is a new batter, at the top a new pitcher; a stroke in the corner ends the half-inning.

## The story.
book-story = The game in short

## Charts.
book-page-charts = Charts
book-print-charts = Print these charts
book-spray = Where the balls went
book-spray-of = Balls put in play by { $name }
book-nobody-batted = Nobody is in the order yet.
book-batter-before = Batter before
book-batter-after = Next batter
book-batter-shown = Batter shown
book-batter-of-order =
    { $place }. { $name }: { $balls ->
        [0] no ball in play
        [one] { $balls } ball in play
       *[other] { $balls } balls in play
    }
book-no-balls = No ball put in play.
book-ball = { $fate }, inning { $inning }: { $told }
book-ball-by-fielder = { $fate }, inning { $inning }, drawn at the fielder's post: { $told }
book-placed-by-fielder = With a ring: no point was touched, drawn at the fielder's post
book-out = Out
book-safe-otherwise = Safe otherwise
book-strips-of = Pitches by inning: { $team }
book-strip-of = Pitches of { $name } by inning
book-strip-total = All
book-strip-strikes = Strikes
book-strip-balls = Balls
book-strip-first = First-pitch strikes
book-first-pitch-note = Strikes count balls put in play. First-pitch strikes: of so many turns whose first pitch was seen. Custom, not in the rules.

## A play amended whole.
book-amend-this = Amend this play…
book-amend-play = Amend the play
book-amend-ball = The ball
book-amend-trajectory = Off the bat
book-amend-handled = Handled by
book-amend-chain = { $what }: { $by }
book-amend-nobody = nobody
book-amend-chain-hint = Touch the fielders in order. Clear begins anew.
book-amend-clear = Clear
book-amend-where = Where it went
book-amend-where-hint = Touch the point where it came down or was first handled. Or move it with the arrow keys; with Shift, further.
book-amend-usual = Or take what usually follows
book-amend-everyone = Where each one ended
book-amend-batter = { $name }, at bat
book-amend-on-first = { $name }, on first
book-amend-on-second = { $name }, on second
book-amend-on-third = { $name }, on third
book-amend-end = Ended
book-end-stays = Stayed
book-end-first = Safe at first
book-end-second = Safe at second
book-end-third = Safe at third
book-end-scores = Scored
book-end-out-first = Out at first
book-end-out-second = Out at second
book-end-out-third = Out at third
book-end-out-home = Out at home
book-reaches-first = First, because
book-reaches-second = Second, because
book-reaches-third = Third, because
book-reaches-home = Home, because
book-amend-on-error = On an error
book-amend-error-by = Error by
book-amend-error-kind = Kind of error
book-amend-how = How out
book-amend-out-by = Put out by
book-amend-attempt = While
book-attempt-steal = stealing
book-attempt-pickoff = picked off
book-attempt-advance = trying to advance
book-amend-late = The third out came before the run
book-amend-look = See what changes
book-amend-start-over = Start over

## Something else than what was put in, or something forgotten.
book-instead = What was it instead?
book-instead-ask = It was something else…
book-instead-now = It says now:
book-instead-pitch = A pitch
book-instead-rare = Other pitches
book-instead-hit = The ball was hit: who had it first?
book-instead-turn = The whole turn at bat
book-instead-turn-hint = Only its end: the pitches that led to it count as not seen.
book-instead-bases = On the bases
book-instead-everybody = Everybody on base
book-instead-players = A change of players
book-instead-umpire = What the umpire declared
book-instead-placed = Runner put on { $base } by rule
book-missing = What was forgotten?
book-missing-ask = Something is missing here…
book-missing-other = Something else was forgotten…
book-missing-when = When
book-missing-before-pitch = Before pitch { $number }: { $pitch }
book-missing-before = Just before this
book-missing-after = Just after this
book-change-who = Who is changed
book-change-nobody = Choose a player
book-change-player = { $team }: { $name }, { $post }
book-change-comes-in = { $name } comes in
book-change-pinch-hits = { $name } pinch-hits
book-change-pinch-runs = { $name } pinch-runs
book-change-courtesy = { $name } as courtesy runner
book-change-swaps = Changes places with { $name }
book-would-add = Something more after the last entry:
book-would-shift =
    The batters shift: from there on { $now } would be at bat, not { $was } ({ $plays ->
        [one] { $plays } pitch or play
       *[other] { $plays } pitches and plays
    }).
book-amend-where-is = Where it went: { $place }
