# Why a pitcher has a decision: ruling/decision/why.rs.
decision-ahead-for-good = The pitcher of record when the side went ahead for good.
decision-only-reliever = The starter did not finish { $needed } innings, and this is the only relief pitcher.
decision-most-effective = The starter did not finish { $needed } innings; of the relief pitchers the most effective.
decision-after-ineffective = The pitcher of record was brief and ineffective; the most effective of those who kept the lead.
decision-judged = The scorer judged it so.
decision-gave-up-the-lead = Answers for the run that put the other side ahead for good.
decision-small-lead = Finished the game: came in with a lead of { $lead } and pitched at least one inning.
decision-tying-run-near = Finished the game: came in with a lead of { $lead } and the tying run on base, at bat or on deck.
decision-three-innings = Finished the game: pitched its last { $innings } innings.
decision-whole-game = The side's only pitcher.
decision-from-the-first-out = Came in before an out or a run, and pitched the rest without a run.
decision-kept-the-lead = By custom, not by rule: came in with a lead of { $lead } to keep, and left with it.
decision-lost-the-lead = By custom, not by rule: came in with a lead of { $lead } to keep, and it was lost.
