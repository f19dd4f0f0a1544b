# Completion for fish: copy into ~/.config/fish/completions/.
complete -c bridgeform -a '(bridgeform "[suggest:"(commandline -C)"]" (commandline -cp) 2>/dev/null)'
