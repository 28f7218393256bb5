using System.Globalization;
using LaunchSim.Passes.Comparing;
using LaunchSim.Reports.Numbers;

namespace LaunchSim.Passes.Fitting;

/// <summary>What is said of a fit.</summary>
public static class FitWords
{
    /// <summary>Correlations from here on are worth telling: the data hardly tell the two numbers apart.</summary>
    public const double Together = 0.7;

    /// <summary>How intervals are to be read.</summary>
    public const string Intervals = "A ± holds nineteen times in twenty, if the car behaves as the model does and what is not fitted is as the file has it.";

    /// <summary>What comes of the passes in one or two sentences.</summary>
    /// <param name="result">What came of the fit.</param>
    public static string Conclusion(FitResult result)
    {
        ArgumentNullException.ThrowIfNull(result);
        FittedValue[] told = [.. result.Values.Where(value => value.IsTold).OrderBy(value => value.Sd)];
        if (told.Length == 0)
        {
            return "These passes tell none of the numbers better than the file does.";
        }

        string most = string.Join(", ", told.Take(3).Select(value => $"{value.Parameter.Path} {value.After}"));
        string rest = told.Length > 3 ? $" and {told.Length - 3} more" : "";
        return $"These passes tell {told.Length} of {result.Values.Count} numbers better than the file does, best known now: {most}{rest}.";
    }

    /// <summary>Whether several starts came to one place.</summary>
    /// <param name="result">What came of the fit.</param>
    public static string Starts(FitResult result)
    {
        ArgumentNullException.ThrowIfNull(result);
        int count = result.SumsOfStarts.Count;
        if (count < 2)
        {
            return "One start.";
        }

        double best = result.SumsOfStarts[0];
        int same = result.SumsOfStarts.Count(sum => sum - best < 0.5);
        return same == count
            ? $"All {count} starts came to the same place."
            : string.Create(CultureInfo.InvariantCulture, $"Of {count} starts {same} came to the best place; the others ended {result.SumsOfStarts.First(sum => sum - best >= 0.5) - best:0.#} or more above it in the weighted sum of squares.");
    }

    /// <summary>Pairs of numbers that the data hardly tell apart, the worst first.</summary>
    /// <param name="result">What came of the fit.</param>
    public static IReadOnlyList<(FittedValue One, FittedValue Other, double Correlation)> Pairs(FitResult result)
    {
        ArgumentNullException.ThrowIfNull(result);
        var pairs = new List<(FittedValue One, FittedValue Other, double Correlation)>();
        for (int i = 0; i < result.Values.Count; i++)
        {
            for (int j = 0; j < i; j++)
            {
                if (result.Values[i].IsTold && result.Values[j].IsTold && Math.Abs(result.Correlations[i, j]) >= Together)
                {
                    pairs.Add((result.Values[j], result.Values[i], result.Correlations[i, j]));
                }
            }
        }

        return [.. pairs.OrderByDescending(pair => Math.Abs(pair.Correlation))];
    }

    /// <summary>How many times better a number is known than before.</summary>
    /// <param name="value">The number.</param>
    public static string Better(FittedValue value)
    {
        ArgumentNullException.ThrowIfNull(value);
        return string.Create(CultureInfo.InvariantCulture, $"{1 / value.Sd:0.#} times");
    }

    /// <summary>The unit in which a measured quantity is read, with one figure more than a single value has: what is left of a channel is small.</summary>
    /// <param name="quantity">What was measured.</param>
    /// <param name="readout">The units.</param>
    public static Scale FineScale(Measured.MeasuredQuantity quantity, Readout readout)
    {
        Scale scale = ChannelScale.Of(quantity, readout);
        return scale.With(scale.Decimals + 1);
    }
}
