# Completion of ifccourser for fish; in ~/.config/fish/config.fish: ifccourser completion fish | source
function __ifccourser_suggestions
    set -l line (commandline -cp)
    set -l suggestions (ifccourser "[suggest:"(string length -- "$line")"]" "$line" 2>/dev/null)
    # Options only where one was begun: else the names of files would not be offered.
    if string match -q -- '-*' (commandline -ct)
        string match -- '-*' $suggestions
    else
        string match -v -- '-*' $suggestions
    end
end
complete -c ifccourser -a '(__ifccourser_suggestions)'
