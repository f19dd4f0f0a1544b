# Completion for PowerShell: run this file from your profile.
Register-ArgumentCompleter -Native -CommandName bridgeform -ScriptBlock {
    param($word, $line, $position)
    # As it was typed: .\bridgeform.exe need not be on the path.
    & $line.GetCommandName() "[suggest:$position]" "$line" 2>$null |
        Where-Object { $_ -like "$word*" } |
        ForEach-Object { [System.Management.Automation.CompletionResult]::new($_, $_, 'ParameterValue', $_) }
}
