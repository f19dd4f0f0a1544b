#compdef bridgeform
# Completion for zsh: copy as _bridgeform into a folder of $fpath, or source it after compinit.
_bridgeform() {
  local -a fits
  fits=("${(@f)$("${words[1]}" "[suggest:$CURSOR]" "$BUFFER" 2>/dev/null)}")
  compadd -- ${fits:#} || _files
}
compdef _bridgeform bridgeform
