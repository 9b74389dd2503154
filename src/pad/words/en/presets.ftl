# The presets of the rules of play.
presets-baseball-9 = Baseball, 9 innings
presets-baseball-7 = Baseball, 7 innings
presets-youth-6 = Youth baseball, 6 innings
presets-fastpitch-7 = Fastpitch softball, 7 innings
presets-slow-pitch-7 = Slow-pitch softball, 7 innings
presets-coach-pitch = Machine or coach pitch, 6 innings
presets-source-baseball = Official Baseball Rules 2024, from memory
presets-source-school = Common school and club practice, no source
presets-source-youth = Common youth practice, no source: your league's rules come first
presets-source-fastpitch = Common fastpitch practice, no source: your league's rules come first
presets-source-slow-pitch = Common slow-pitch practice, no source: your league's rules come first
