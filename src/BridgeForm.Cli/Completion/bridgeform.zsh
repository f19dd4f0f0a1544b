#compdef bridgeform
# Completion for zsh: copy as _bridgeform into a folder of $fpath, or source it after compinit.
_bridgeform() {
  local -a fits
  fits=("${(@f)$("${words[1]}" "[suggest:$CURSOR]" "$BUFFER" 2>/dev/null)}")
  compadd -- ${fits:#} || _files
}
# Taken from $fpath, this file is itself the function that the first completion calls.
if [ "${funcstack[1]}" = _bridgeform ]; then _bridgeform "$@"; else compdef _bridgeform bridgeform; fi
