# Why a ruling is what it is: ruling/because.rs.
because-judged = The scorer judged it so.
because-strikeout = Three strikes.
because-strikeout-reached = Three strikes; safe at first because the ball was not held. It is a strikeout all the same.
because-walk = Four balls.
because-intentional-walk = Walked on purpose.
because-hit-by-pitch = Hit by a pitch.
because-catcher-interference = The catcher hindered the batter: first base, and no time at bat.
because-obstruction = A fielder obstructed the batter before first base: no time at bat.
because-own-interference = The batter hindered a fielder and is out.
because-out-of-turn = Somebody else batted, and the defence appealed: the proper batter is out, and the catcher has the putout.
because-put-out = Put out on the batted ball.
because-runner-hit-by-ball = A runner was hit by the batted ball and is out; the batter has a hit.
because-runner-forced = A runner was forced out on the batted ball: no hit.
because-runner-put-out = The infield put out a runner ahead on the batted ball: a fielder's choice, no hit.
because-choice = The fielder chose to try for another runner.
because-sacrifice = A bunt with fewer than two outs: the batter was put out (or would have been), and a runner moved up.
because-sacrifice-all-safe = A bunt with fewer than two outs, and a runner moved up; they tried for a runner and put out nobody.
because-sacrifice-fly = A runner scored after the catch with fewer than two outs.
because-sacrifice-fly-dropped = The fly was dropped, but the runner would have scored after a catch, with fewer than two outs.
because-batted-in = The run scored on the batted ball.
because-forced-in = The bases were full and the batter was given first: the run was forced in.
because-double-play = It came in on a ground-ball double play: no run batted in.
because-muffed-double-play = A muffed throw at first would have completed a double play: no run batted in.
because-on-error = The run scored on an error.
because-error-but-scores-anyway = There were fewer than two outs, and the runner from third would ordinarily have scored without the error.
because-not-batted = The run scored without a batted ball.
because-stole = The base was gained unaided by a hit, an out, an error, a force, a wild pitch or a passed ball.
because-other-runner-out = Another runner was put out in the same attempt: no stolen base for anyone.
because-undisputed = The defence did not try to stop it: no stolen base.
because-caught-stealing = Put out trying to steal.
because-overslid = Put out oversliding the base: caught stealing, no stolen base.
because-broke-from-pickoff = Picked off, and broke for the next base: caught stealing.
because-picked-off = Picked off going back to the base: not caught stealing.
because-muffed-throw = The throw was in time, but it was muffed: caught stealing, an error, and no stolen base.
because-grounded = Two outs on a ground ball: both runners forced, or the batter at first and a runner he had forced to run.
because-pitched-wild = Ordinary effort by the catcher could not have stopped the pitch, and somebody gained a base on it.
because-let-pass = Ordinary effort by the catcher would have stopped the pitch, and somebody gained a base on it.
because-balked = The umpire called a balk, and the runners were given a base.
because-caught-fly = Caught the ball in the air.
because-infield-fly = The umpire called an infield fly: the batter is out, caught or not, and the putout goes to the fielder under it.
because-held-throw = Held the throw in time, at the base or on the runner.
because-touched-base = Had the ball and reached the base, or the runner, alone.
because-tagged = Tagged the runner off the base.
because-appealed = Had the ball when the defence appealed.
because-caught-third-strike = Three strikes: the rules give the putout to the catcher.
because-catcher-by-rule = Out by rule, not by a play: the rules give the putout to the catcher.
because-nearest-the-ball = The runner was hit by the batted ball: the rules give the putout to the fielder nearest the ball.
because-was-hindered = The runner hindered this fielder, to whom the rules give the putout.
because-nearest-the-passing = One runner passed another: the rules give the putout to the fielder nearest to where it happened.
because-was-avoided = The runner left the base path, or gave up: the rules give the putout to the fielder being avoided.
because-nearest-by-rule = Out by rule, not by a play: the putout goes to the fielder nearest to it.
because-threw = Threw the ball, or turned its way, before the putout.
because-threw-to-rule-out = Threw the ball in a play on which the runner was then out for interference or for leaving the base path.
because-threw-in-vain = The throw would have made the out, but for the error that followed.
because-at-his-post = Made while at that post. Three outs are an inning.
because-pitched = Every ball thrown to this batter. A ball hit into play is a strike.
because-left-standing = On base when the play was over: neither in nor out.
because-safe-at-first = Safe at first on the batted ball.
because-safe-hit = Safe at { $base } on the batted ball alone.
because-game-ending = { $bases ->
    [1] The game ended when the winning run scored: the hit counts for 1 base, as many as that runner needed.
   *[other] The game ended when the winning run scored: the hit counts for { $bases } bases, as many as that runner needed.
}
because-error = Reached on an error by the { $position }.
because-took-part = { $outs ->
    [3] Had a putout or an assist in it: three outs on one play, and no error between them.
   *[other] Had a putout or an assist in it: two outs on one play, and no error between them.
}
because-misplayed-dropped-foul = A foul fly that ordinary effort would have caught fell, and the batter's turn went on.
because-misplayed-obstruction = { $life ->
    [yes] A runner was obstructed, and somebody was safe who would have been out.
   *[no] A runner was obstructed, and somebody gained a base by it.
}
because-misplayed-fielding = { $life ->
    [yes] Ordinary effort would have fielded the ball, and somebody was safe who would have been out.
   *[no] Ordinary effort would have fielded the ball, and somebody gained a base by it.
}
because-misplayed-throwing = { $life ->
    [yes] The throw was wild, and somebody was safe who would have been out.
   *[no] The throw was wild, and somebody gained a base by it.
}
because-misplayed-muff = { $life ->
    [yes] A good throw was not held, and somebody was safe who would have been out.
   *[no] A good throw was not held, and somebody gained a base by it.
}
because-misplayed-dropped-fly = { $life ->
    [yes] Ordinary effort would have caught the fly, and somebody was safe who would have been out.
   *[no] Ordinary effort would have caught the fly, and somebody gained a base by it.
}
