# Completes launchsim in fish: the program itself says what may stand at the cursor. One line in ~/.config/fish/config.fish:
#   launchsim completion fish | source
function __launchsim_complete
    set -l before (commandline -opc)
    set -l word (string unescape -- (commandline -ct); or string trim --left --chars "\"'" -- (commandline -ct))
    $before[1] complete --at (math (count $before) - 1) -- $before[2..] "$word" 2>/dev/null | string replace --regex '\t[a-z]*\t' '\t'
end

complete --command launchsim --no-files --keep-order --arguments '(__launchsim_complete)'
