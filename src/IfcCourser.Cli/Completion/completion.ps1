# Completion of ifccourser for PowerShell; in $PROFILE: ifccourser completion powershell | Out-String | Invoke-Expression
Register-ArgumentCompleter -Native -CommandName ifccourser -ScriptBlock {
    param($word, $command, $cursor)
    $line = $command.ToString().PadRight($cursor - $command.Extent.StartOffset)
    # Options only where one was begun: else the names of files would not be offered.
    ifccourser "[suggest:$($line.Length)]" "$line" |
        Where-Object { $_.StartsWith($word, [StringComparison]::OrdinalIgnoreCase) -and ($word.StartsWith('-') -or -not $_.StartsWith('-')) } |
        ForEach-Object { [System.Management.Automation.CompletionResult]::new($_, $_, 'ParameterValue', $_) }
}
