# The story of a game: account/story.
story-top =
    the top of the { $inning ->
        [1] 1st
        [2] 2nd
        [3] 3rd
        [21] 21st
        [22] 22nd
        [23] 23rd
       *[other] { $inning }th
    }
story-bottom =
    the bottom of the { $inning ->
        [1] 1st
        [2] 2nd
        [3] 3rd
        [21] 21st
        [22] 22nd
        [23] 23rd
       *[other] { $inning }th
    }
story-won =
    { $winner } beat { $loser } { $ours }–{ $theirs }{ $ended ->
        [extra] {" "}in { $innings } innings.
        [mercy] {" "}in { $innings } innings, by the lead the rules of play set.
        [early] ; the game ended in { $half }.
        [called] ; the umpire called the game in { $half }.
       *[played] .
    }
story-tied =
    { $visitors } and { $home } tied { $runs }–{ $runs }{ $ended ->
        [extra] {" "}in { $innings } innings.
        [early] ; the game ended in { $half }.
        [called] ; the umpire called the game in { $half }.
       *[played] .
    }
story-called-too-early = The umpire called the game in { $half }, before it was long enough to count. The score was { $visitors } { $first }, { $home } { $second }.
story-suspended = The game is suspended in { $half } and is to be continued: { $visitors } { $first }, { $home } { $second }.
story-forfeited = { $winner } won by forfeit over { $loser }. The score was { $ours }–{ $theirs } when play stopped.
story-was-level = The teams were tied { $runs }–{ $runs }.
story-was-behind = { $team } trailed { $ours }–{ $theirs }.
story-ahead =
    In { $half } { $batter } put { $team } ahead for good { $deed ->
        [single] with a single
        [double] with a two-base hit
        [triple] with a three-base hit
        [homer] with a home run
        [walk] with a base on balls
        [plunked] when hit by a pitch with the bases full
        [fly] with a sacrifice fly
        [bunt] with a squeeze bunt
        [choice] on a fielder's choice
        [error] on an error
        [award] on an award
       *[out] with a run on an out
    }, { $ours }–{ $theirs }.
story-won-it =
    In { $half } { $batter } won it for { $team } { $deed ->
        [single] with a single
        [double] with a two-base hit
        [triple] with a three-base hit
        [homer] with a home run
        [walk] with a base on balls
        [plunked] when hit by a pitch with the bases full
        [fly] with a sacrifice fly
        [bunt] with a squeeze bunt
        [choice] on a fielder's choice
        [error] on an error
        [award] on an award
       *[out] with a run on an out
    }, { $ours }–{ $theirs }.
story-ahead-otherwise =
    In { $half } { $runner } scored { $cause ->
        [error] on an error
        [wild] on a wild pitch
        [passed] on a passed ball
        [balk] on a balk
        [illegal] on an illegal pitch
        [steal] with a steal of home
        [throw] on a throw
        [award] by the umpire's award
       *[other] from third
    } and put { $team } ahead for good, { $ours }–{ $theirs }.
story-won-it-otherwise =
    In { $half } { $runner } scored { $cause ->
        [error] on an error
        [wild] on a wild pitch
        [passed] on a passed ball
        [balk] on a balk
        [illegal] on an illegal pitch
        [steal] with a steal of home
        [throw] on a throw
        [award] by the umpire's award
       *[other] from third
    } and won it for { $team }, { $ours }–{ $theirs }.
story-pitcher =
    { $part ->
        [complete-win] { $name } pitched the whole game and won it
        [win] { $name } was the winning pitcher
        [complete-loss] { $name } pitched the whole game and lost it
        [loss] { $name } was the losing pitcher
       *[save] { $name } had the save
    }: { $innings }, { $hits ->
        [0] no hits
        [one] { $hits } hit
       *[other] { $hits } hits
    }, { $runs ->
        [0] no runs
        [one] { $runs } run
       *[other] { $runs } runs
    }{ $runs ->
        [0] {""}
       *[other] {" "}({ $earned } earned)
    }, { $walks ->
        [0] no walks
        [one] { $walks } walk
       *[other] { $walks } walks
    }, { $strikeouts ->
        [0] no strikeouts
        [one] { $strikeouts } strikeout
       *[other] { $strikeouts } strikeouts
    }.
story-no-out = nobody put out
story-part-inning = { $part } of an inning
story-one-inning = 1 inning
story-innings = { $whole }{ $part } innings
story-shutout = A shutout for { $pitcher }: { $team } did not score.
story-no-runs = { $team } did not score.
story-no-hits = { $team } did not get a hit.
story-batter =
    { $name } { $atbats ->
        [0] had no official time at bat
       *[other] went { $hits } for { $atbats }
    }{ $doubles ->
        [0] {""}
        [one] , { $doubles } two-base hit
       *[other] , { $doubles } two-base hits
    }{ $triples ->
        [0] {""}
        [one] , { $triples } three-base hit
       *[other] , { $triples } three-base hits
    }{ $homers ->
        [0] {""}
        [one] , { $homers } home run
       *[other] , { $homers } home runs
    }{ $rbi ->
        [0] {""}
        [one] , { $rbi } run batted in
       *[other] , { $rbi } runs batted in
    }{ $runs ->
        [0] {""}
        [one] , { $runs } run scored
       *[other] , { $runs } runs scored
    }.
story-no-errors = { $team } made no error.
story-nobody-erred = Neither side made an error.
