# Completion for PowerShell: run this file from your profile.
Register-ArgumentCompleter -Native -CommandName bridgeform -ScriptBlock {
    param($word, $line, $position)
    bridgeform "[suggest:$position]" "$line" 2>$null |
        Where-Object { $_ -like "$word*" } |
        ForEach-Object { [System.Management.Automation.CompletionResult]::new($_, $_, 'ParameterValue', $_) }
}
