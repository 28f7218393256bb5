namespace LaunchSim.Web.Desk;

/// <summary>How something is moved.</summary>
public enum ControlKind
{
    /// <summary>One of a bracket's holes, picked on the drawing.</summary>
    Holes,

    /// <summary>One of some values, in their order.</summary>
    Steps,

    /// <summary>A number within a range.</summary>
    Number,
}

/// <summary>Something of a set-up that can be moved on the desk.</summary>
public sealed record Control
{
    /// <summary>The path of an edit, such as <c>rear.damper.extension.set</c> or <c>rear.linkage.upper.body.use</c>.</summary>
    public required string Path { get; init; }

    /// <summary>What it is, in plain words.</summary>
    public required string Label { get; init; }

    /// <summary>How it is moved.</summary>
    public required ControlKind Kind { get; init; }

    /// <summary>The present value in the notation of the file, without its doubt; of a bracket the hole in use.</summary>
    public required string Value { get; init; }

    /// <summary>The unit of the value, as the file writes it; empty for holes, words and plain numbers.</summary>
    public required string Unit { get; init; }

    /// <summary>The values that it may take in the notation of the file, in their order; empty for a number within a range.</summary>
    public IReadOnlyList<string> Values { get; init; } = [];

    /// <summary>From where to where, by which step; null unless it is a number within a range.</summary>
    public ControlRange? Range { get; init; }

    /// <summary>How long a change takes, minutes; null when the file does not say.</summary>
    public double? Minutes { get; init; }

    /// <summary>Whether the file's <c>choices</c> name it.</summary>
    public bool IsChoice { get; init; }
}

/// <summary>The range of a number on the desk, in the unit of the file. It says how far a handle goes, not what the scenario allows.</summary>
/// <param name="From">The lower end.</param>
/// <param name="To">The upper end.</param>
/// <param name="Step">The step, above 0.</param>
/// <param name="ForWhat">What the range is usual for, as in <c>for a rear tyre</c>.</param>
public sealed record ControlRange(double From, double To, double Step, string ForWhat);
