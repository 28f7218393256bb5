namespace LaunchSim.Web.Lesson.Prose;

/// <summary>A piece of a chapter.</summary>
internal abstract record Block
{
    /// <summary>All its passages.</summary>
    public abstract IEnumerable<Passage> Passages { get; }

    /// <summary>All its numbers.</summary>
    public IEnumerable<Shown> Numbers => Passages.SelectMany(passage => passage.Numbers);
}

/// <summary>A paragraph.</summary>
/// <param name="Text">Its text.</param>
internal sealed record Paragraph(Passage Text) : Block
{
    /// <inheritdoc/>
    public override IEnumerable<Passage> Passages => [Text];
}

/// <summary>A heading within a chapter.</summary>
/// <param name="Text">Its text.</param>
internal sealed record Heading(string Text) : Block
{
    /// <inheritdoc/>
    public override IEnumerable<Passage> Passages => [];
}

/// <summary>Points of a list.</summary>
/// <param name="Texts">The points.</param>
internal sealed record Points(IReadOnlyList<Passage> Texts) : Block
{
    /// <inheritdoc/>
    public override IEnumerable<Passage> Passages => Texts;
}

/// <summary>What stands apart from the text: what holds when, what the trade says, more for engineers.</summary>
/// <param name="Title">What it is about.</param>
/// <param name="Texts">Its paragraphs.</param>
internal sealed record Note(string Title, IReadOnlyList<Passage> Texts) : Block
{
    /// <inheritdoc/>
    public override IEnumerable<Passage> Passages => Texts;
}

/// <summary>Something that the front end draws.</summary>
/// <param name="Name">Which, as its modules call it.</param>
internal sealed record Drawing(string Name) : Block
{
    /// <inheritdoc/>
    public override IEnumerable<Passage> Passages => [];
}

/// <summary>Text with something drawn, or a table, beside it where there is room.</summary>
/// <param name="Text">The text.</param>
/// <param name="Beside">What stands beside it.</param>
internal sealed record Spread(IReadOnlyList<Block> Text, Block Beside) : Block
{
    /// <inheritdoc/>
    public override IEnumerable<Passage> Passages => Text.Append(Beside).SelectMany(block => block.Passages);
}

/// <summary>A table of numbers.</summary>
/// <param name="Caption">What is in it.</param>
/// <param name="Columns">Its columns, the first for the rows' names.</param>
/// <param name="Rows">Its rows.</param>
internal sealed record Table(Passage Caption, IReadOnlyList<Passage> Columns, IReadOnlyList<Row> Rows) : Block
{
    /// <inheritdoc/>
    public override IEnumerable<Passage> Passages => Columns.Prepend(Caption).Concat(Rows.SelectMany(row => row.Cells.Prepend(row.Name)));
}

/// <summary>A row of a table.</summary>
/// <param name="Name">What it is.</param>
/// <param name="Cells">Its cells: numbers, or why there is none.</param>
/// <param name="IsMarked">Whether it is the one that is spoken of.</param>
internal sealed record Row(Passage Name, IReadOnlyList<Passage> Cells, bool IsMarked = false);

/// <summary>A question whose answer is shown when the reader asks for it.</summary>
/// <param name="Asked">The question.</param>
/// <param name="Answer">The answer.</param>
/// <param name="Choices">What may be said before looking; empty when one is only to think.</param>
/// <param name="Right">Which choice is right, from 0.</param>
internal sealed record Question(Passage Asked, IReadOnlyList<Passage> Answer, IReadOnlyList<Passage> Choices, int Right = -1) : Block
{
    /// <inheritdoc/>
    public override IEnumerable<Passage> Passages => Answer.Prepend(Asked).Concat(Choices);
}

/// <summary>A chapter.</summary>
/// <param name="Id">Its place in the page's address.</param>
/// <param name="Title">Its title.</param>
/// <param name="Blocks">Its pieces.</param>
internal sealed record Chapter(string Id, string Title, IReadOnlyList<Block> Blocks);
