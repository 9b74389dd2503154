# What is left to the scorer: ruling/question.rs.
asked-bunted-for-hit = ¿{ $batter } tocó la bola buscando el hit?
asked-would-have-scored = ¿{ $runner } habría anotado sin el error?
asked-would-have-scored-after-catch = ¿Habría entrado la carrera si atrapan el elevado?
asked-kept-going = ¿{ $runner } siguió corriendo sin detenerse?
asked-earned = ¿{ $runner } habría anotado sin esa ayuda?
asked-winning-pitcher = ¿Qué relevista fue el más efectivo?
asked-effective-finish = ¿{ $pitcher } terminó con efectividad?
