"""Runs a command at a terminal of its own and types as told: arguments are a JSON document with `args`, `steps` (what to wait
for on the screen, and what to type then). Prints a JSON document: exit code, what stood on the screen, steps done."""
import fcntl
import json
import os
import pty
import re
import select
import struct
import sys
import termios
import time

patience = 50
controls = re.compile(rb"\x1b\[[0-9;?]*[A-Za-z]")

given = json.loads(sys.argv[1])
steps = given["steps"]
pid, terminal = pty.fork()
if pid == 0:
    os.execvp(given["args"][0], given["args"])
fcntl.ioctl(terminal, termios.TIOCSWINSZ, struct.pack("HHHH", 60, 200, 0, 0))

shown, since, done = b"", 0, 0
end = time.time() + patience
while time.time() < end:
    ready, _, _ = select.select([terminal], [], [], 0.1)
    if ready:
        try:
            piece = os.read(terminal, 65536)
        except OSError:
            break
        if not piece:
            break
        shown += piece
    elif done < len(steps) and steps[done][0].encode() in controls.sub(b"", shown[since:]):
        # All that was to be shown is shown: nothing came for a while.
        since = len(shown)
        os.write(terminal, steps[done][1].encode())
        done += 1
else:
    os.kill(pid, 9)
_, status = os.waitpid(pid, 0)
code = os.waitstatus_to_exitcode(status)
print(json.dumps({"code": code, "shown": controls.sub(b"", shown).decode("utf8", "replace"), "done": done}))
