# Por qué un lanzador tiene la decisión: ruling/decision/why.rs.
decision-ahead-for-good = Era el lanzador en turno cuando su equipo tomó la ventaja definitiva.
decision-only-reliever = El abridor no terminó { $needed } entradas, y este es el único relevista.
decision-most-effective = El abridor no terminó { $needed } entradas; de los relevistas, el más efectivo.
decision-after-ineffective = El lanzador en turno fue breve e inefectivo; el más efectivo de los que mantuvieron la ventaja.
decision-judged = Así lo decidió el anotador.
decision-gave-up-the-lead = Responde por la carrera que dio la ventaja definitiva al otro equipo.
decision-small-lead = Terminó el juego: entró con ventaja de { $lead } y lanzó al menos una entrada.
decision-tying-run-near = Terminó el juego: entró con ventaja de { $lead } y la carrera del empate en base, al bate o en espera.
decision-three-innings = Terminó el juego: lanzó las últimas { $innings } entradas.
decision-whole-game = El único lanzador del equipo.
decision-from-the-first-out = Entró antes de un out o una carrera, y lanzó el resto sin permitir carreras.
decision-kept-the-lead = Por costumbre, no por regla: entró con ventaja de { $lead } que cuidar, y salió con ella.
decision-lost-the-lead = Por costumbre, no por regla: entró con ventaja de { $lead } que cuidar, y se perdió.
