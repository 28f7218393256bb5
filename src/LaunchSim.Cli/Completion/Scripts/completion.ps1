# Completes launchsim in PowerShell: the program itself says what may stand at the cursor. One line in the file $PROFILE:
#   launchsim completion powershell | Out-String | Invoke-Expression
Register-ArgumentCompleter -Native -CommandName launchsim -ScriptBlock {
    param($word, $line, $cursor)
    $program = $line.CommandElements[0].Extent.Text.Trim('"', "'")
    $said = @($line.CommandElements | Select-Object -Skip 1 | Where-Object { $_.Extent.EndOffset -le $cursor } | ForEach-Object {
        if ($_ -is [System.Management.Automation.Language.StringConstantExpressionAst]) { $_.Value } else { $_.Extent.Text }
    })

    # The word at the cursor is one of them, unless nothing of it is typed yet. An open quote comes closed.
    if ($word -and $said) { $said = @($said | Select-Object -SkipLast 1) }
    $quote = if ($word -match '^["'']') { $word[0] }
    & $program complete --at $said.Count -- @said $word.Trim('"', "'") 2>$null | ForEach-Object {
        $text, $kind, $about = $_ -split "`t"
        $put = if ($quote) { "$quote$text$quote" } elseif ($text -match '[^\w./\\:=~+-]') { "'" + $text.Replace("'", "''") + "'" } else { $text }
        if (-not $about) { $about = $text }
        [System.Management.Automation.CompletionResult]::new($put, $text, 'ParameterValue', $about)
    }
}
