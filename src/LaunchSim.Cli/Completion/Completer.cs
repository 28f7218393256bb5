using System.CommandLine;
using System.CommandLine.Completions;
using System.CommandLine.Parsing;

namespace LaunchSim.Cli.Completion;

/// <summary>
/// What may stand at the cursor. The parser tells what the words before mean, each option and argument what may stand
/// for its value (<see cref="Option.CompletionSources"/>); between the two stand the rules here.
/// </summary>
internal static class Completer
{
    /// <summary>All that may stand in the place of a word and begins as it does.</summary>
    /// <param name="root">The program.</param>
    /// <param name="parser">How it is parsed.</param>
    /// <param name="before">The words before, without the program's name.</param>
    /// <param name="word">The word at the cursor, up to it; empty when nothing is typed yet.</param>
    public static IEnumerable<CompletionItem> Complete(RootCommand root, ParserConfiguration parser, IReadOnlyList<string> before, string word)
    {
        ParseResult said = root.Parse(before, parser);
        CompletionContext context = root.Parse([.. before, word], parser).GetCompletionContext();
        Command command = said.CommandResult.Command;
        bool isPastOptions = said.Tokens.Any(token => token.Type == TokenType.DoubleDash);
        if (!isPastOptions && said.Tokens is [.., { Type: TokenType.Option } last] && OptionNamed(last.Value, said) is { } awaiting && TakesValue(awaiting))
        {
            return Fitting(awaiting.GetCompletions(context), word);
        }

        if (!isPastOptions && word.StartsWith('-'))
        {
            int equals = word.IndexOf('=', StringComparison.Ordinal);
            return equals < 0 ? Options(said, word)
                : OptionNamed(word[..equals], said) is { } named && TakesValue(named) ? Joined(word[..(equals + 1)], Fitting(named.GetCompletions(context), word[(equals + 1)..]))
                : [];
        }

        IEnumerable<CompletionItem> commands = isPastOptions || said.CommandResult.Tokens.Count + said.UnmatchedTokens.Count > 0 ? []
            : command.Subcommands.Where(sub => !sub.Hidden).Select(sub => Offer.Word(sub.Name, sub.Description));
        Argument? argument = command.Arguments.FirstOrDefault(argument => (said.GetResult(argument)?.Tokens.Count ?? 0) < argument.Arity.MaximumNumberOfValues);
        return Fitting(commands.Concat(argument?.GetCompletions(context) ?? []), word);
    }

    private static bool TakesValue(Option option) => option.ValueType != typeof(bool) && option.Arity.MaximumNumberOfValues > 0;

    private static Option? OptionNamed(string name, ParseResult said) =>
        Known(said).FirstOrDefault(option => option.Name == name || option.Aliases.Contains(name));

    /// <summary>The command's own options, and those of the commands above that hold below them too.</summary>
    private static IEnumerable<Option> Known(ParseResult said) =>
        said.CommandResult.Command.Options.Concat(Above(said.CommandResult).SelectMany(command => command.Options.Where(option => option.Recursive)));

    private static IEnumerable<Command> Above(CommandResult result)
    {
        for (SymbolResult? above = result.Parent; above is not null; above = above.Parent)
        {
            if (above is CommandResult { Command: var command })
            {
                yield return command;
            }
        }
    }

    // By their long names; what was given already only if it may be given again.
    private static IEnumerable<CompletionItem> Options(ParseResult said, string word) => Fitting(
        Known(said)
            .Where(option => !option.Hidden && (option.Arity.MaximumNumberOfValues > 1 || said.GetResult(option) is null or { Implicit: true }))
            .Select(option => Offer.Word(option.Name, option.Description)),
        word);

    private static IEnumerable<CompletionItem> Fitting(IEnumerable<CompletionItem> items, string word) =>
        items.Where(item => item.Label.StartsWith(word, StringComparison.Ordinal));

    private static IEnumerable<CompletionItem> Joined(string option, IEnumerable<CompletionItem> values) =>
        values.Select(value => new CompletionItem(option + value.Label, value.Kind!, detail: value.Detail));
}
