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
