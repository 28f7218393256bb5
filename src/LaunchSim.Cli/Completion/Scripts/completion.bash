# Completes launchsim in bash: the program itself says what may stand at the cursor. One line in ~/.bashrc:
#   eval "$(launchsim completion bash)"
_launchsim() {
    local rest="${COMP_LINE:0:COMP_POINT}" piece space word prefix="" quote="" text kind last="" i
    local -a words=()

    # bash parts words at = and :, the program does not. Pieces that touch in the line are one word.
    for ((i = 0; i <= COMP_CWORD; i++)); do
        space="${rest%%[![:space:]]*}"
        rest="${rest#"$space"}"
        piece="${COMP_WORDS[i]}"
        ((i < COMP_CWORD)) || piece="$rest"
        if ((i == 0)) || [[ -n $space ]]; then
            words+=("$piece")
        else
            words[${#words[@]} - 1]+="$piece"
        fi
        rest="${rest#"$piece"}"
    done

    word="${words[${#words[@]} - 1]}"
    if [[ $word == [\"\']* ]]; then
        quote="${word:0:1}"
        word="${word:1}"
    else
        # What stands before such a mark stays in the line, and is not wanted back.
        word="${word//\\/}"
        [[ $COMP_WORDBREAKS == *=* && $word == *=* ]] && prefix="${word%"${word##*=}"}"
        [[ $COMP_WORDBREAKS == *:* && ${word#"$prefix"} == *:* ]] && prefix="${word%"${word##*:}"}"
    fi
    words[${#words[@]} - 1]="$word"

    COMPREPLY=()
    while IFS=$'\t' read -r text kind _; do
        case "$kind" in file | folder) compopt -o filenames ;; esac 2>/dev/null
        case "$kind" in part | folder) compopt -o nospace ;; esac 2>/dev/null
        last="$kind"
        COMPREPLY+=("${text#"$prefix"}")
    done < <("${1/#\~/$HOME}" complete --at $((${#words[@]} - 2)) -- "${words[@]:1}" 2>/dev/null)

    # bash closes the quote behind an only candidate. One that is not finished gets company.
    if [[ -n $quote && ($last == part || $last == folder) && ${#COMPREPLY[@]} == 1 ]]; then
        COMPREPLY+=("${COMPREPLY[0]}...")
    fi
}

complete -F _launchsim launchsim
