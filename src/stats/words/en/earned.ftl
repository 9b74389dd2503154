# Why a run is earned or not, and who answers for it: ruling/earned/reason.rs.
help-error = an error
help-passed-ball = a passed ball
help-interference = interference by a fielder
help-obstruction = obstruction
help-foul-fly = the ball of a batter who should have been out on a foul fly
help-throw = a throw after a runner who should not have been on base
help-judged = a misplay, by the scorer's judgment

earned-unaided = No error and no passed ball helped the runner round the bases.
earned-would-have-scored = The runner was helped by { $help }, but would have come in without it on what followed.
earned-judged = The scorer judged that the run would have scored anyway.
unearned-judged = The scorer judged that the run would not have scored.
unearned-reached-on-error = The runner reached base on an error by the { $position }.
unearned-reached-on-some-error = The runner reached base on an error.
unearned-reached-on-passed-ball = The runner had struck out and reached first on a passed ball.
unearned-reached-on-interference = The runner reached first on the catcher's interference.
unearned-reached-on-obstruction = The runner reached first on obstruction.
unearned-foul-fly = The runner should have been out at bat, on a foul fly that was dropped.
unearned-spared = The runner should have been put out on the bases, and was spared by an error.
unearned-placed = The runner was put on base by rule, which counts like reaching on an error.
unearned-took-place = The runner reached on a fielder's choice that put out somebody who should not have been there; otherwise the out would have been made at first.
unearned-inning-over = { $missed ->
    [1] Without one missed chance the inning would have been over.
   *[other] Without { $missed } missed chances the inning would have been over.
}
unearned-helped = The runner was helped by { $help }, and without it would have come no further than { $base }.

answers-faced = This pitcher faced the batter who reached base.
answers-left-in-mid-count = This pitcher left with the count in the batter's favor, and the batter walked.
answers-passed-on = This pitcher left a runner on base who was put out on a fielder's choice, and answers for another instead.
answers-placed = This pitcher was pitching when the runner was put on base by rule.
