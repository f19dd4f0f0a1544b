# Completion for fish: copy into ~/.config/fish/completions/.
function __bridgeform_fits
    set -l line (commandline -cp)
    bridgeform "[suggest:"(string length -- "$line")"]" "$line" 2>/dev/null
end
complete -c bridgeform -a '(__bridgeform_fits)'
