# Bases, posiciones y equipos dentro de una oración: field.rs.
base-first = primera
base-second = segunda
base-third = tercera
base-home = home
position-pitcher = lanzador
position-catcher = receptor
position-first-base = primera base
position-second-base = segunda base
position-third-base = tercera base
position-shortstop = parador en corto
position-left-field = jardinero izquierdo
position-center-field = jardinero central
position-right-field = jardinero derecho
position-short-field = jardinero corto
side-visitors = visitantes
side-home = la casa

# Como se abrevian en el box score y en el lineup.
short-pitcher = L
short-catcher = R
short-first-base = 1B
short-second-base = 2B
short-third-base = 3B
short-shortstop = SS
short-left-field = JI
short-center-field = JC
short-right-field = JD
short-short-field = 10
short-designated-hitter = BD
short-extra-hitter = BX
short-pinch-hitter = BE
short-pinch-runner = CE
