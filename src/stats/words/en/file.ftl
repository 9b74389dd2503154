# What can be wrong with a game file: file/error.rs.
file-empty = the file is empty: it may not have been copied to its end; copy it again from where the game was kept
file-too-large = the file is too large to be a game ({ $bytes } bytes; the limit is { $limit })
file-not-text = line { $line } holds bytes that are no UTF-8 text: the file was damaged, or is no Benchbook game file
file-utf-16 = the file is saved as UTF-16: an editor may have done that; open it there and save it as UTF-8
file-not-json = this is no Benchbook game file (line { $line }, column { $column }: { $what })
file-other-format = this is no Benchbook game file: it says it is "{ $found }", not "{ $format }"
file-no-format = this is no Benchbook game file: it doesn't say that it is "{ $format }"
file-newer = made by a newer Benchbook (file version { $found }, this one reads up to { $version }): update, then open it again; the file is unchanged
file-truncated = the file breaks off in line { $line }: it wasn't saved or copied to its end; { $whole }
file-damaged = line { $line }, column { $column } is damaged ({ $what }); { $whole }
file-head = line { $line }: { $what }
file-entry = line { $line }: entry { $number } of the log can't be read: { $what }
file-order = line { $line }: entry { $number } of the log has the id { $id }, but the one before it has { $after }: ids must rise, each used once
file-whole-before = { $whole ->
    [0] no entry before that is whole
    [1] the 1 entry before that is whole
   *[other] the { $whole } entries before that are whole
}
