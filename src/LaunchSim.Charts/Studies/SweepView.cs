namespace LaunchSim.Charts.Studies;

/// <summary>One setting of a sweep, as an axis.</summary>
public sealed record SweepAxis
{
    /// <summary>The setting's name.</summary>
    public required string Name { get; init; }

    /// <summary>The unit of its numbers; empty when they have none, or when it has names in their place.</summary>
    public required string Unit { get; init; }

    /// <summary>Its values as they are written, without the unit.</summary>
    public required IReadOnlyList<string> Names { get; init; }

    /// <summary>The values as numbers of <see cref="Unit"/>; null when they are names.</summary>
    public required IReadOnlyList<double>? Numbers { get; init; }

    /// <summary>The present value as a number of <see cref="Unit"/>, or the place of the present name; null when there is none on this axis.</summary>
    public required double? Present { get; init; }

    /// <summary>Where a value stands along the axis: its number, or the place of its name.</summary>
    /// <param name="place">Which value, from 0.</param>
    public double At(int place) => Numbers?[place] ?? place;
}

/// <summary>What a sweep shows of every launch.</summary>
public sealed record SweepMeasure
{
    /// <summary>Its name.</summary>
    public required string Name { get; init; }

    /// <summary>Its unit; empty when it has none.</summary>
    public required string Unit { get; init; }

    /// <summary>Digits after the point that make sense in this unit.</summary>
    public required int Decimals { get; init; }

    /// <summary>Its value in every set-up, in <see cref="Unit"/>; not a number where there is none. The last setting's values follow one another.</summary>
    public required IReadOnlyList<double> Values { get; init; }

    /// <summary>Its value in the present set-up; not a number when there is none.</summary>
    public required double Present { get; init; }

    /// <summary>The lower end of what is wanted; −∞ for none, not a number when nothing is wanted of it.</summary>
    public double From { get; init; } = double.NaN;

    /// <summary>The upper end of what is wanted; +∞ for none, not a number when nothing is wanted of it.</summary>
    public double To { get; init; } = double.NaN;
}

/// <summary>A sweep over one or two settings, ready to be drawn: plain numbers in the reader's units.</summary>
public sealed record SweepView
{
    /// <summary>What is seen, in one sentence.</summary>
    public required string Title { get; init; }

    /// <summary>What it is of, and by what it was made.</summary>
    public required string Imprint { get; init; }

    /// <summary>The settings, one or two; the last one's values follow one another in the measures.</summary>
    public required IReadOnlyList<SweepAxis> Axes { get; init; }

    /// <summary>What is shown.</summary>
    public required IReadOnlyList<SweepMeasure> Measures { get; init; }

    /// <summary>Whether the launch of a set-up failed, for every set-up.</summary>
    public required IReadOnlyList<bool> Failed { get; init; }

    /// <summary>Whether a set-up is beyond a limit, for every set-up.</summary>
    public required IReadOnlyList<bool> BeyondLimits { get; init; }

    /// <summary>The set-up with the best score; null when there is none.</summary>
    public required int? Best { get; init; }
}
