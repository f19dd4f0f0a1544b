# Completion for bash: source this file, or copy it into the folder where your bash-completion looks.
# The program itself says what fits: `bridgeform "[suggest:POSITION]" "LINE"`. Where nothing fits, files do.
_bridgeform() {
  local IFS=$'\n'
  COMPREPLY=($(compgen -W "$("${COMP_WORDS[0]}" "[suggest:$COMP_POINT]" "$COMP_LINE" 2>/dev/null)" -- "${COMP_WORDS[COMP_CWORD]}"))
}
complete -o default -F _bridgeform bridgeform
