"""Completion as shells do it: the scripts of `ifccourser completion SHELL`, loaded into a bash, a zsh and a fish, which are asked what they would complete.

    completion.py -- COMMAND ...        COMMAND is the program, such as: dotnet ifccourser.dll
"""
import os
import shlex
import shutil
import subprocess
import sys
import tempfile
from pathlib import Path

# What is typed, and what must be among the completions; None: the shell's own names of files.
CASES = [
    ("ifccourser lay", "layout"), ("ifccourser layout house.ifc --catalog aac-m", "aac-mm"), ("ifccourser check house.ifc --rules u", "us"),
    ("ifccourser layout house.ifc --formats json,xl", "json,xlsx"), ("ifccourser layout house.ifc --sheet ARCH-", "ARCH-D"), ("ifccourser catalog sh", "show"),
    ("ifccourser catalog show octa", "octametric"), ("ifccourser layout --cat", "--catalog"), ("ifccourser layout ho", "house.ifc"), ("ifccourser layout --nonesuch", None),
]
# Presses the key as readline does: the function of the script, with the words of the line.
BASH = r'''
eval "$(ifccourser completion bash)"
line=$1
COMP_LINE=$line; COMP_POINT=${#line}
read -ra COMP_WORDS <<<"$line"
COMP_CWORD=$(( ${#COMP_WORDS[@]} - 1 ))
_ifccourser "${COMP_WORDS[0]}" "${COMP_WORDS[COMP_CWORD]}" "${COMP_WORDS[COMP_CWORD-1]}"
[ "${#COMPREPLY[@]}" -gt 0 ] && printf '%s\n' "${COMPREPLY[@]}" || { complete -p ifccourser | grep -q -- '-o default' && compgen -f -- "${COMP_WORDS[COMP_CWORD]}"; }
exit 0
'''
# What zsh's completion does with what the function offers: of the suggestions those that begin as the last word does, else files.
ZSH = r'''
compdef() { :; }
compadd() { local -a fit; fit=(${(M)${(P)2}:#${PREFIX}*}); (( $#fit )) && print -rl -- $fit; }
_files() { local -a fit; fit=(${PREFIX}*(N)); (( $#fit )) && print -rl -- $fit; }
eval "$(ifccourser completion zsh)"
BUFFER=$1; CURSOR=${#BUFFER}; words=(${=BUFFER}); PREFIX=$words[-1]
_ifccourser
exit 0
'''
FISH = "ifccourser completion fish | source; complete -C $argv[1]"


def problems(command):
    """Yields what a shell does not complete; each shell that is not here is named."""
    with tempfile.TemporaryDirectory() as folder:
        work = Path(folder)
        (work / "house.ifc").touch()
        program = work / "bin" / "ifccourser"
        program.parent.mkdir()
        program.write_text(f'#!/bin/sh\nexec {shlex.join(command)} "$@"\n')
        program.chmod(0o755)
        environment = os.environ | {"PATH": f"{program.parent}:{os.environ['PATH']}", "HOME": folder}
        counts = {}
        for shell, arguments in (("bash", ["-c", BASH, "bash"]), ("zsh", ["-f", "-c", ZSH, "zsh"]), ("fish", ["-c", FISH])):
            if shutil.which(shell) is None:
                yield f"completion: {shell} is not here"
                continue
            for line, expected in CASES:
                run = subprocess.run([shell, *arguments, line], cwd=work, env=environment, capture_output=True, text=True, timeout=120)
                given = [text.split("\t")[0] for text in run.stdout.splitlines()]
                counts[shell] = counts.get(shell, 0) + 1
                if (expected not in given) if expected else given:
                    yield f"completion: {shell} completes {line!r} to {given}, not {expected}: {run.stderr.strip()[:200]}"
        print("completion: " + ", ".join(f"{shell} pressed {n} times" for shell, n in counts.items()))


def main():
    found = list(problems(sys.argv[2:]))
    for problem in found:
        print(problem)
    return 1 if found else 0


if __name__ == "__main__":
    sys.exit(main())
