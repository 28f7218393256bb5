using System.Runtime.CompilerServices;

namespace LaunchSim.Web.Lesson.Prose;

/// <summary>
/// Text whose numbers are not typed: it is written as an interpolated string that takes numbers of launches, words that depend
/// on them, terms and sources, and nothing else.
/// </summary>
internal sealed class Passage
{
    private Passage(IReadOnlyList<object> parts) => Parts = parts;

    /// <summary>Its parts in order: <see cref="string"/>, <see cref="Shown"/>, <see cref="Term"/>, <see cref="Source"/>, <see cref="Typed"/>.</summary>
    public IReadOnlyList<object> Parts { get; }

    /// <summary>The numbers in it.</summary>
    public IEnumerable<Shown> Numbers => Parts.OfType<Shown>();

    /// <summary>A passage.</summary>
    /// <param name="text">Its text.</param>
    public static Passage Of(Writer text) => new(text.Parts);

    /// <summary>As plain text.</summary>
    public override string ToString() => string.Concat(Parts.Select(part => part switch
    {
        Shown number => number.Text,
        Term term => term.Text,
        Source source => source.Text,
        Typed typed => typed.Text,
        _ => part,
    }));

    /// <summary>Takes an interpolated string apart.</summary>
    [InterpolatedStringHandler]
    internal readonly struct Writer
    {
        private readonly List<object> _parts;

        /// <summary>Begins.</summary>
        /// <param name="literalLength">Characters of the text between.</param>
        /// <param name="formattedCount">How many values.</param>
        public Writer(int literalLength, int formattedCount) => _parts = new List<object>((2 * formattedCount) + Math.Min(literalLength, 1));

        internal IReadOnlyList<object> Parts => _parts;

        /// <summary>Text between.</summary>
        /// <param name="text">The text.</param>
        public void AppendLiteral(string text) => Add(text);

        /// <summary>A number.</summary>
        /// <param name="number">The number.</param>
        public void AppendFormatted(Shown number) => _parts.Add(number);

        /// <summary>A word.</summary>
        /// <param name="word">The word.</param>
        public void AppendFormatted(Word word) => Add(word.Text);

        /// <summary>A term.</summary>
        /// <param name="term">The term.</param>
        public void AppendFormatted(Term term) => _parts.Add(term);

        /// <summary>A source.</summary>
        /// <param name="source">The source.</param>
        public void AppendFormatted(Source source) => _parts.Add(source);

        /// <summary>What is typed.</summary>
        /// <param name="typed">The command.</param>
        public void AppendFormatted(Typed typed) => _parts.Add(typed);

        private void Add(string text)
        {
            if (_parts.Count > 0 && _parts[^1] is string before)
            {
                _parts[^1] = before + text;
            }
            else
            {
                _parts.Add(text);
            }
        }
    }
}
