# Completion of ifccourser for bash; in ~/.bashrc: eval "$(ifccourser completion bash)"
_ifccourser() {
    local word=$2 suggestions
    suggestions=$("$1" "[suggest:$COMP_POINT]" "$COMP_LINE" 2>/dev/null)
    # Options only where one was begun: else the names of files would not be offered.
    [[ $word == -* ]] || suggestions=$(grep -v '^-' <<<"$suggestions")
    COMPREPLY=($(compgen -W "$suggestions" -- "$word"))
}
complete -o default -F _ifccourser ifccourser
