# The Clubhouse.
clubhouse-language = Language
