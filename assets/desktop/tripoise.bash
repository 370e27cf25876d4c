# SPDX-License-Identifier: MIT
# Completion of commands, options and files, for bash.

_tripoise_files() { # folders, and the files that match one of the patterns
    local pattern word
    compopt -o filenames 2>/dev/null
    while IFS= read -r word; do
        COMPREPLY+=("$word")
    done < <(compgen -d -- "$current"; for pattern; do compgen -f -X "!$pattern" -- "$current"; done)
}

_tripoise_words() {
    local word
    while IFS= read -r word; do
        COMPREPLY+=("$word")
    done < <(compgen -W "$*" -- "$current")
}

_tripoise() {
    local current=${COMP_WORDS[COMP_CWORD]} before=${COMP_WORDS[COMP_CWORD - 1]} command=${COMP_WORDS[1]}
    COMPREPLY=()
    # Where bash breaks words at "=", that is a word of its own.
    if [[ $current == = ]]; then
        current=
    elif [[ $before == = ]]; then
        before=${COMP_WORDS[COMP_CWORD - 2]}
    fi
    if ((COMP_CWORD == 1)); then
        case $current in
        -*) _tripoise_words -h --help --version ;;
        *)
            _tripoise_words advise draw sheet table schema
            _tripoise_files '*.json'
            ;;
        esac
        return
    fi
    case $command,$before,$current in
    advise,--format,*) _tripoise_words text json ;;
    draw,-o,*) _tripoise_files '*.svg' '*.png' ;;
    sheet,-o,*) _tripoise_files '*.pdf' ;;
    sheet,--page,*) _tripoise_words mechanic rider both ;;
    sheet,--paper,*) _tripoise_words a4 letter ;;
    table,--format,*) _tripoise_words text json csv ;;
    advise,*,-*) _tripoise_words --format --all -h --help ;;
    draw,*,-*) _tripoise_words -o -h --help ;;
    sheet,*,-*) _tripoise_words -o --page --paper -h --help ;;
    table,*,-*) _tripoise_words - --format -h --help ;;
    schema,*,-*) _tripoise_words -h --help ;;
    advise,* | draw,* | sheet,*) _tripoise_files '*.json' ;;
    table,*) _tripoise_files '*' ;;
    schema,*) _tripoise_words fitting frame ;;
    esac
}

complete -F _tripoise tripoise
