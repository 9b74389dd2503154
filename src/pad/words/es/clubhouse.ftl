# The Clubhouse.
clubhouse-language = Idioma
