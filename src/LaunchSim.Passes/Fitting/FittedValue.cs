using LaunchSim.Scenarios;
using LaunchSim.Scenarios.Units;

namespace LaunchSim.Passes.Fitting;

/// <summary>What a fit says of one number.</summary>
/// <param name="Parameter">The number.</param>
/// <param name="Deviations">By how many standard deviations of the file's doubt it lies off the file's value.</param>
/// <param name="Sd">Its standard deviation after the fit, in those before it: 1 where the data say nothing.</param>
/// <param name="IsTold">Whether these data tell it; otherwise it is held where the file has it.</param>
public sealed record FittedValue(FitParameter Parameter, double Deviations, double Sd, bool IsTold)
{
    // Nineteen times in twenty, as a ± in the file: two standard deviations, of which the file's doubt is as many.
    private const double Share = 0.5;

    /// <summary>The number as the file has it, with its doubt.</summary>
    public string Before => Parameter.Number.Text;

    /// <summary>The same without the numbers of a row.</summary>
    public string BeforeInShort => Parameter.Number.Doubt.IsPercent && !Parameter.IsClicks ? FormattableString.Invariant($"0 ±{Parameter.Number.Doubt.HalfWidth:0.##} %") : Before;

    /// <summary>The number after the fit with the ± that holds nineteen times in twenty; of a row by how much it is scaled, of an adjuster by how many clicks it is off.</summary>
    public string After
    {
        get
        {
            double half = Parameter.Number.Doubt.HalfWidth;
            if (Parameter.IsClicks)
            {
                return $"{DoubtText.Signed(Share * Deviations * half, Sd * half)} ±{DoubtText.Doubt(Sd * half)} clicks off the sheets";
            }

            if (Parameter.Number.Doubt.IsPercent)
            {
                return $"{DoubtText.Signed(Share * Deviations * half, Sd * half)} ±{DoubtText.Doubt(Sd * half)} %";
            }

            Quantity quantity = Parameter.Edits(Deviations)[0].Quantity!;
            double unit = Sd * half / quantity.Unit.Factor;
            return $"{DoubtText.Number(quantity.Numbers[0], unit)} ±{DoubtText.Doubt(unit)} {quantity.Unit.Text}".TrimEnd();
        }
    }

    /// <summary>The value after the fit in SI; of a row the factor on it, of an adjuster the clicks it is off.</summary>
    public double Value => Parameter.IsClicks ? Share * Deviations * Parameter.Number.Doubt.HalfWidth
        : Parameter.Number.Doubt.IsPercent ? 1 + (Share * Deviations * Parameter.Number.Doubt.HalfWidth / 100)
        : Parameter.Edits(Deviations)[0].Quantity!.Si();

    /// <summary>Half-width that holds nineteen times in twenty, in what <see cref="Value"/> is in.</summary>
    public double HalfWidth => Sd * Parameter.Number.Doubt.HalfWidth / (Parameter.Number.Doubt.IsPercent && !Parameter.IsClicks ? 100 : 1);

    /// <summary>The changes that write it into a variant of the file, with its ±.</summary>
    internal IEnumerable<(string Path, string Value)> Written()
    {
        double half = Sd * Parameter.Number.Doubt.HalfWidth;
        foreach (ScenarioEdit edit in Parameter.Edits(Deviations))
        {
            Quantity quantity = edit.Quantity!;
            string unit = quantity.Unit.Text.Length > 0 ? " " + quantity.Unit.Text : "";
            if (Parameter.IsClicks)
            {
                yield return (edit.Path, string.Join(' ', quantity.Numbers.Select(DoubtText.Plain)) + unit);
            }
            else if (Parameter.Number.Doubt.IsPercent)
            {
                double percent = half / (1 + (Share * Deviations * Parameter.Number.Doubt.HalfWidth / 100));
                yield return (edit.Path, $"{string.Join(' ', quantity.Numbers.Select(DoubtText.Plain))}{unit} ±{DoubtText.Doubt(percent)} %");
            }
            else
            {
                double own = half / quantity.Unit.Factor;
                yield return (edit.Path, $"{DoubtText.Number(quantity.Numbers[0], own)} ±{DoubtText.Doubt(own)}{unit}");
            }
        }

        if (Parameter.IsClicks)
        {
            yield return (Parameter.Path, DoubtText.Doubt(half));
        }
    }
}
