# Completion of siphonwright's command line for bash. shellcheck shell=bash
# What each command takes is held against the program's own help by tests/headless/test_command_words.cpp.

_siphonwright_files() # PATTERN: folders, and the files whose name ends so
{
    compopt -o filenames 2>/dev/null
    mapfile -t COMPREPLY < <(compgen -d -- "$word"; compgen -f -X "!@($1)" -- "$word")
}

_siphonwright_words() # WORDS
{
    mapfile -t COMPREPLY < <(compgen -W "$1" -- "$word")
}

_siphonwright()
{
    local -A options=(
        [check]='--json --bands'
        [warm-up]='--hours --ambient --csv'
        [fill]='--json --frames'
        [parts]='--prices --csv'
        [diagnose]='--json'
        [sheet]='--output --paper --portrait --colour --parts --photo --student --third-angle --pages
            --scale --dpi --logo --output-dir'
        [survey-form]='--paper --inch'
    )
    local word=${COMP_WORDS[COMP_CWORD]} before=${COMP_WORDS[COMP_CWORD - 1]} command='' i
    local extglob_was
    extglob_was=$(shopt -p extglob)
    shopt -s extglob
    COMPREPLY=()

    # bash takes "--paper=A4" apart: "--paper", "=", "A4".
    [[ $word == '=' ]] && word=
    [[ $before == '=' ]] && ((COMP_CWORD >= 2)) && before=${COMP_WORDS[COMP_CWORD - 2]}
    for ((i = 1; i < COMP_CWORD; ++i)); do
        [[ -n ${COMP_WORDS[i]} && -n ${options[${COMP_WORDS[i]}]-} ]] && command=${COMP_WORDS[i]} && break
    done

    case $before in
        --language) _siphonwright_words 'en es fr de' ;;
        --paper)
            if [[ $command == survey-form ]]; then
                _siphonwright_words 'A4 Letter'
            else
                _siphonwright_words 'A4 A3 Letter Tabloid'
            fi
            ;;
        --hours | --ambient | --scale | --dpi) ;;
        --pages) _siphonwright_words 'all drawing fitting checklist parts estimate assumptions' ;;
        --logo) _siphonwright_files '*.png|*.jpg|*.jpeg|*.svg' ;;
        --prices | --csv) _siphonwright_files '*.csv' ;;
        --output) _siphonwright_files '*.pdf|*.svg|*.png' ;;
        --frames | --output-dir)
            compopt -o filenames 2>/dev/null
            mapfile -t COMPREPLY < <(compgen -d -- "$word")
            ;;
        *)
            if [[ $word == -* && -n $command ]]; then
                _siphonwright_words "${options[$command]} --language"
            elif [[ $word == -* ]]; then
                _siphonwright_words '--help --version --language'
            elif [[ $command == survey-form ]]; then
                _siphonwright_files '*.pdf'
            else
                _siphonwright_files '*.siphon'
                if [[ -z $command ]]; then
                    mapfile -t -O "${#COMPREPLY[@]}" COMPREPLY < <(compgen -W "${!options[*]}" -- "$word")
                fi
            fi
            ;;
    esac
    eval "$extglob_was"
} && complete -F _siphonwright siphonwright
