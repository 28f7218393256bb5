using LaunchSim.Reports.Numbers;

namespace LaunchSim.Web.Lesson.Prose;

/// <summary>A number that the lesson tells: where it is from, what it is, its value, and how it is read.</summary>
/// <param name="Key">Where it is from: a launch and a figure of it, such as <c>above.hit_n</c>.</param>
/// <param name="Meaning">What it is, in words.</param>
/// <param name="Value">Its value in SI.</param>
/// <param name="Scale">Its unit.</param>
internal sealed record Shown(string Key, string Meaning, double Value, Scale Scale)
{
    /// <summary>As it is read.</summary>
    public string Text => Scale.Unit.Length == 0 ? Scale.Number(Value) : Scale.Text(Value);

    /// <summary>How far two numbers are apart, without a sign.</summary>
    /// <param name="other">The other one, in the same unit.</param>
    public Shown Apart(Shown other) =>
        new($"|{Key} − {other.Key}|", $"difference of: {Meaning}; {other.Meaning}", Math.Abs(Value - other.Value), Scale);

    /// <summary>The same as it reads without a sign.</summary>
    public Shown Size => Value < 0 ? this with { Key = $"|{Key}|", Value = -Value } : this;

    /// <summary>The share of another number that this one is, in percent.</summary>
    /// <param name="whole">The other one, in the same unit.</param>
    public Shown ShareOf(Shown whole) =>
        new($"{Key} ÷ {whole.Key}", $"share of: {Meaning}; in: {whole.Meaning}", 100 * Value / whole.Value, Readout.Percent);

    /// <summary>The same with more or fewer digits.</summary>
    /// <param name="decimals">Digits after the point.</param>
    public Shown With(int decimals) => this with { Scale = Scale.With(decimals) };
}

/// <summary>A word that depends on how a launch went.</summary>
/// <param name="Text">The word; it holds no digit.</param>
internal readonly record struct Word(string Text)
{
    /// <summary>One of three words by how two numbers read beside each other: equal is what reads the same.</summary>
    /// <param name="one">The number that is spoken of.</param>
    /// <param name="other">What it is compared with.</param>
    /// <param name="less">When it is less.</param>
    /// <param name="more">When it is more.</param>
    /// <param name="same">When both read the same.</param>
    public static Word Of(Shown one, Shown other, string less, string more, string same) =>
        new(one.Text == other.Text ? same : one.Value < other.Value ? less : more);
}

/// <summary>A word of the trade where it is explained.</summary>
/// <param name="Text">The word.</param>
internal readonly record struct Term(string Text);

/// <summary>Where something stands that is relied on.</summary>
/// <param name="Text">Such as <c>docs/model.md, section 5</c>.</param>
internal readonly record struct Source(string Text);

/// <summary>What is typed at a terminal.</summary>
/// <param name="Text">Such as <c>launchsim run</c>.</param>
internal readonly record struct Typed(string Text);
