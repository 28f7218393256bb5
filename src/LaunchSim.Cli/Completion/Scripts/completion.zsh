#compdef launchsim
# Completes launchsim in zsh: the program itself says what may stand at the cursor. One line in ~/.zshrc:
#   eval "$(launchsim completion zsh)"
_launchsim() {
    local text kind about
    local -a whole wholeShown part partShown files folders
    while IFS=$'\t' read -r text kind about; do
        # Of files the last part is shown and put in; what is typed before it stays as it is.
        [[ $kind == (file|folder) && $PREFIX == --*=* ]] && text="${text#--*=}"
        case $kind in
            word) whole+=("$text") wholeShown+=("$text${about:+  -- $about}") ;;
            part) part+=("$text") partShown+=("$text${about:+  -- $about}") ;;
            file) files+=("${text##*/}") ;;
            folder) folders+=("${${text%/}##*/}/") ;;
        esac
    done < <("${${(Q)words[1]}/#\~/$HOME}" complete --at $((CURRENT - 2)) -- "${(@Q)words[2,CURRENT-1]}" "${(Q)PREFIX}" 2>/dev/null)

    ((${#whole})) && compadd -l -d wholeShown -a whole
    ((${#part})) && compadd -l -S '' -d partShown -a part
    if ((${#files} + ${#folders})); then
        compset -P '--*='
        compset -P '*/'
        ((${#files})) && compadd -a files
        ((${#folders})) && compadd -S '' -a folders
    fi
}

if ((!$+functions[compdef])); then
    autoload -Uz compinit && compinit
fi
compdef _launchsim launchsim
