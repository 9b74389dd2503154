# The Clubhouse.
clubhouse-language = Language
clubhouse-motto = The book of the game, by the rules, with no signal.
clubhouse-night = Night
clubhouse-left-handed = Left-handed
clubhouse-put-it-back = Put it back
clubhouse-dismiss = Dismiss
clubhouse-new-version = A new version of Benchbook is ready on this device. The games stay as they are.
clubhouse-start-new-version = Start the new version
clubhouse-set-aside = Set aside
clubhouse-set-aside-why = Stored copies that could not be read, or that told another course of a game. Nothing is written over them.
clubhouse-no-download = The browser did not take the file.
clubhouse-whole-entries-listed = { $n ->
    [one] A game with the 1 entry that is whole is on the list.
   *[other] A game with the { $n } entries that are whole is on the list.
}
clubhouse-make-of-whole = { $n ->
    [one] Make a game of the 1 whole entry
   *[other] Make a game of the { $n } whole entries
}
clubhouse-aside-game = Game { $id }
clubhouse-take-home-as-is = Take home as it is
clubhouse-throw-away = Throw away
clubhouse-throw-away-sure = Tap again: gone for good
clubhouse-title = { $visitors } at { $home }
clubhouse-before = Before the first pitch
clubhouse-underway = { $half ->
    [top] Top { $inning }, { $outs ->
        [0] no outs
        [one] 1 out
       *[other] { $outs } outs
    }
   *[bottom] Bottom { $inning }, { $outs ->
        [0] no outs
        [one] 1 out
       *[other] { $outs } outs
    }
}
clubhouse-delayed = { $half ->
    [top] Delayed in the top { $inning }, { $outs ->
        [0] no outs
        [one] 1 out
       *[other] { $outs } outs
    }
   *[bottom] Delayed in the bottom { $inning }, { $outs ->
        [0] no outs
        [one] 1 out
       *[other] { $outs } outs
    }
}
clubhouse-suspended = { $half ->
    [top] Suspended in the top { $inning }, { $outs ->
        [0] no outs
        [one] 1 out
       *[other] { $outs } outs
    }
   *[bottom] Suspended in the bottom { $inning }, { $outs ->
        [0] no outs
        [one] 1 out
       *[other] { $outs } outs
    }
}
clubhouse-final = Final
clubhouse-final-in = Final in { $innings }
clubhouse-final-by-lead = Final in { $innings }, by the lead
clubhouse-called = Called in { $innings }
clubhouse-forfeited = Forfeited to { $team }
clubhouse-day = { $day } { $month ->
    [1] Jan
    [2] Feb
    [3] Mar
    [4] Apr
    [5] May
    [6] Jun
    [7] Jul
    [8] Aug
    [9] Sep
    [10] Oct
    [11] Nov
   *[12] Dec
} { $year }
clubhouse-bring = Bring a game file
clubhouse-pick-file = Pick a file
clubhouse-bring-hint = A .benchbook.json file from another device. It can also be dropped anywhere here.
clubhouse-no-file = That was no file.
clubhouse-not-brought = { $file } was not brought in: { $why }
clubhouse-is-here = { $title } is here.
clubhouse-unreadable-here = a game of that name is here but can't be read ({ $why }); it is not written over
clubhouse-same-here = { $title } was here already, entry for entry.
clubhouse-more-here = { $n ->
    [one] { $title } is here already, with 1 entry more than the file.
   *[other] { $title } is here already, with { $n } entries more than the file.
}
clubhouse-goes-on = { $n ->
    [one] { $title } goes on with 1 entry from the file.
   *[other] { $title } goes on with { $n } entries from the file.
}
clubhouse-parts-ways = { $title } was here already, but the file tells another course of it. Both are kept; the file's is the upper one.
clubhouse-games = Games on this device
clubhouse-reading = Reading…
clubhouse-empty-field = A field with nobody on it
clubhouse-no-games = No game yet. Start one, or bring a game file from another device.
clubhouse-downloaded = { $file } went to this device's downloads.
clubhouse-not-shared = The file could not be shared from here: take it home instead.
clubhouse-open-game = Open { $title }
clubhouse-take-home-game = Take home { $title }
clubhouse-take-home = Take home
clubhouse-share = Share
clubhouse-throw-away-game = Throw away { $title }
clubhouse-to-settle = { $n ->
    [one] { $state } · 1 entry to settle
   *[other] { $state } · { $n } entries to settle
}
clubhouse-thrown-away = Thrown away ({ $n })
clubhouse-put-back = Put back
clubhouse-throw-away-for-good = Throw away for good
clubhouse-safety = How safe it is here
clubhouse-safety-hint = A device can be lost or cleared. After the game, take the file home: it holds everything, and any Benchbook reads it.
clubhouse-promise = Promise
clubhouse-ask-promise = Ask it to promise
clubhouse-room = Room
clubhouse-home-screen = Home screen
clubhouse-installed = Benchbook is installed on this device.
clubhouse-not-installed = Not installed. In the browser's menu, or behind its share button, choose “Add to home screen”: then it starts like any other app, also with no signal.
clubhouse-install = Install on this device
clubhouse-promised = The browser has promised not to clear what is kept here by itself.
clubhouse-not-promised = The browser may clear what is kept here when the device runs short of room.
clubhouse-promise-unknown = The browser doesn't say whether it clears what is kept here.
clubhouse-room-of = { $used } used of { $quota }.
clubhouse-room-used = { $used } used.
clubhouse-room-unknown = The browser doesn't say.
clubhouse-warn-week = This browser clears what a site keeps after seven days without a visit, unless it is added to the home screen. Add it, and take each game's file home.
clubhouse-warn-nothing = This browser keeps nothing here (a private window, or storage switched off): a game lasts until the page is closed. Take its file home before.
clubhouse-warn-no-database = This browser has no database here (a private window?): the last seconds before a crash may be lost. Take each game's file home.
clubhouse-warn-tabs = This browser can't tell two tabs apart: open each game in one tab only.
clubhouse-was-thrown-away = { $title } was thrown away.
clubhouse-gone = It is gone for good.
clubhouse-other-tab = Another tab has this game open: close it there first.
clubhouse-no-room = The device has no room left for it. Take old games home, throw them away here, and try again.
clubhouse-season = Season
clubhouse-adding-up = Adding up…
clubhouse-team = Team
clubhouse-season-counted = Every game on the list that has begun counts, once for each time it is on the list. A game called or forfeited before it was official counts in the record alone (OBR 9.03(e)).
clubhouse-season-caution = Counted in the games on this device only. Your league's limits and medical advice come first.
clubhouse-season-incomplete = + At least: some of this pitcher's pitches were not seen.
clubhouse-record = { $undecided ->
    [0] { $won } won, { $lost } lost; { $runs } runs to { $allowed }
   *[other] { $won } won, { $lost } lost, { $undecided } tied or not finished; { $runs } runs to { $allowed }
}
clubhouse-table = { $title }: { $team }
clubhouse-batting = Batting
clubhouse-pitching = Pitching
clubhouse-fielding = Fielding
clubhouse-by-day = Pitches by day
clubhouse-no-date = No date
clubhouse-column-games = G
clubhouse-column-games-long = Games
clubhouse-column-appearances = PA
clubhouse-column-appearances-long = Plate appearances
clubhouse-column-at-bats = AB
clubhouse-column-at-bats-long = At bats
clubhouse-column-runs = R
clubhouse-column-runs-long = Runs
clubhouse-column-hits = H
clubhouse-column-hits-long = Hits
clubhouse-column-batted-in = RBI
clubhouse-column-batted-in-long = Runs batted in
clubhouse-column-walks = BB
clubhouse-column-walks-long = Bases on balls
clubhouse-column-strikeouts = SO
clubhouse-column-strikeouts-long = Strikeouts
clubhouse-column-average = AVG
clubhouse-column-average-long = Batting average
clubhouse-column-on-base = OBP
clubhouse-column-on-base-long = On-base percentage
clubhouse-column-slugging = SLG
clubhouse-column-slugging-long = Slugging percentage
clubhouse-column-innings = IP
clubhouse-column-innings-long = Innings pitched
clubhouse-column-earned = ER
clubhouse-column-earned-long = Earned runs
clubhouse-column-earned-average = ERA
clubhouse-column-earned-average-long = Earned run average, by the innings of each game's rules
clubhouse-column-wins = W
clubhouse-column-wins-long = Games won
clubhouse-column-losses = L
clubhouse-column-losses-long = Games lost
clubhouse-column-saves = S
clubhouse-column-saves-long = Games saved
clubhouse-column-putouts = PO
clubhouse-column-putouts-long = Putouts
clubhouse-column-assists = A
clubhouse-column-assists-long = Assists
clubhouse-column-errors = E
clubhouse-column-errors-long = Errors
clubhouse-column-fielding-average = AVG
clubhouse-column-fielding-average-long = Fielding average
clubhouse-column-pitches = Pitches
clubhouse-column-pitches-long = Pitches thrown that day
clubhouse-start = Start a game
clubhouse-visitors = Visitors (bat first)
clubhouse-home = Home
clubhouse-rules = Rules of play, to be changed on the Card
clubhouse-score-now = Score now, with Batter 1 to { $last }
clubhouse-cards-first = Fill in the cards first
clubhouse-start-hint = Names and numbers can be filled in at any time, also during the game.
clubhouse-score-known = Score now
clubhouse-from-earlier = A team from earlier games …
clubhouse-with-card = With its last card
clubhouse-with-card-of = With its card of { $date }
clubhouse-known-visitors = Known team, batting first
clubhouse-known-home = Known team, at home
