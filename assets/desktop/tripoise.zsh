#compdef tripoise
# SPDX-License-Identifier: MIT
# Completion of commands, options and files, for zsh.

local fitting='1:fitting:_files -g "*.json"'
local -a help=('(- *)'{-h,--help}'[what the command takes]')

if (( CURRENT == 2 )); then
    local -a commands=(
        'advise:the decision'
        'draw:the side view'
        'sheet:the set-up sheet'
        'table:a geometry table'
        'schema:the JSON Schema of a document'
    )
    if [[ $PREFIX == -* ]]; then
        _arguments $help '(- *)--version[which Tripoise this is]'
    else
        _describe command commands
        _files -g '*.json'
    fi
    return
fi

local command=$words[2]
shift words
(( CURRENT-- ))
case $command in
advise) _arguments $help $fitting '--format=[how it is written]:format:(text json)' '--all[the rest as well]' ;;
draw) _arguments $help $fitting '-o[the picture to write]:picture:_files -g "*.(svg|png)"' ;;
sheet)
    _arguments $help $fitting '-o[the sheet to write]:sheet:_files -g "*.pdf"' \
        '--page=[whose page]:page:(mechanic rider both)' '--paper=[its size]:paper:(a4 letter)'
    ;;
table) _arguments $help '1:table:_files' '--format=[how it is written]:format:(text json csv)' ;;
schema) _arguments $help '1:document:(fitting frame)' ;;
esac
