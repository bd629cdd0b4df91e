#compdef ifccourser
# Completion of ifccourser for zsh; in ~/.zshrc, behind compinit: eval "$(ifccourser completion zsh)"
_ifccourser() {
    local -a suggestions
    suggestions=(${(f)"$($words[1] "[suggest:$CURSOR]" "$BUFFER" 2>/dev/null)"})
    # Options only where one was begun: else the names of files would not be offered.
    [[ $PREFIX == -* ]] || suggestions=(${suggestions:#-*})
    compadd -a suggestions || _files
}
compdef _ifccourser ifccourser
