# What is left to the scorer: ruling/question.rs.
asked-bunted-for-hit = Was { $batter } bunting for a hit?
asked-would-have-scored = Would { $runner } have scored without the error?
asked-would-have-scored-after-catch = Would the run have scored had the fly been caught?
asked-kept-going = Did { $runner } keep going all the way?
asked-earned = Would { $runner } have come in without that help?
asked-winning-pitcher = Which relief pitcher was the most effective?
asked-effective-finish = Did { $pitcher } finish effectively?
