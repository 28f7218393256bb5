using System.Globalization;
using LaunchSim.Scenarios.Units;

namespace LaunchSim.Scenarios.Typical.Mistakes;

/// <summary>The register of mistakes that people make when they write a number down: one line a mistake.</summary>
internal static class UsualMistakes
{
    private const int Most = 2;

    private static readonly Func<Suspicion, IEnumerable<Guess>>[] All = [Swapped, WrongSign, OtherUnit, UpsideDown, OtherSides, PointOutOfPlace];

    /// <summary>What may have been meant, the likeliest first, two at the most.</summary>
    public static IReadOnlyList<Guess> Of(Suspicion suspicion) =>
    [
        .. All.SelectMany(mistake => mistake(suspicion)).OrderBy(guess => suspicion.Distance(guess.Value)).Take(Most),
    ];

    private static IEnumerable<Guess> Swapped(Suspicion found)
    {
        if (!found.Entry.IsPoint || found.Quantity.Count != 2)
        {
            yield break;
        }

        double ahead = found.Quantity.Si(1), up = found.Quantity.Si(0);
        if (found.Both.All(span => span.Holds(span.Part == ".up" ? up : ahead)))
        {
            yield return new($"{Text(found.Quantity.Numbers[1])} {Text(found.Quantity.Numbers[0])} {found.Quantity.Unit.Text}", "ahead comes first, then up", found.Span.Part == ".up" ? up : ahead);
        }
    }

    private static IEnumerable<Guess> WrongSign(Suspicion found)
    {
        if (found.Fits(-found.Value) && !found.Entry.IsRow)
        {
            yield return new(With(found, -1), found.Entry.IsPoint ? "behind the axle is negative" : "the other sign", -found.Value);
        }
    }

    private static IEnumerable<Guess> OtherUnit(Suspicion found)
    {
        Unit written = found.Quantity.Unit;
        foreach (string name in found.Entry.Kind.Units)
        {
            if (UnitReader.TryRead(name, found.Entry.Kind.Dimension, out Unit unit, out _) && Math.Abs(unit.Factor - written.Factor) > 1e-9 * unit.Factor)
            {
                double value = found.Value / written.Factor * unit.Factor;
                if (found.Fits(value))
                {
                    yield return new(found.Quantity.Count > 1 ? $"the same numbers in {name}" : $"{Text(found.Quantity.Numbers[0])} {name}", "another unit", value);
                }
            }
        }
    }

    private static IEnumerable<Guess> UpsideDown(Suspicion found)
    {
        if (found.Entry.Path.EndsWith("motion_ratio", StringComparison.Ordinal) && found.Value > 0 && found.Fits(1 / found.Value))
        {
            yield return new(Text(1 / found.Value), "travel of the spring or damper over travel of the wheel, not the other way round", 1 / found.Value);
        }
    }

    private static IEnumerable<Guess> OtherSides(Suspicion found)
    {
        if (IsPerSide(found.Entry) && found.Fits(found.Value / 2))
        {
            yield return new(With(found, 0.5), "it is entered for one side", found.Value / 2);
        }
        else if (IsPerAxle(found.Entry) && found.Fits(found.Value * 2))
        {
            yield return new(With(found, 2), "it is entered for both sides together", found.Value * 2);
        }
    }

    private static IEnumerable<Guess> PointOutOfPlace(Suspicion found) =>
        from factor in new[] { 10.0, 0.1, 100, 0.01 }
        where found.Fits(factor * found.Value)
        select new Guess(With(found, factor), "a decimal point out of place", factor * found.Value);

    private static bool IsPerSide(RegisterEntry entry) => IsEnd(entry) && (entry.Kind == QuantityKind.Rate || entry.Kind == QuantityKind.Damping || entry.Kind == QuantityKind.Force
        || entry.Kind == QuantityKind.TorsionalRate || entry.Kind == QuantityKind.TorsionalDamping);

    private static bool IsPerAxle(RegisterEntry entry) => entry.Path.StartsWith("car.scales.", StringComparison.Ordinal) || (IsEnd(entry) && (entry.Kind == QuantityKind.Mass || entry.Kind == QuantityKind.Inertia));

    private static bool IsEnd(RegisterEntry entry) =>
        (entry.Path.StartsWith("front.", StringComparison.Ordinal) || entry.Path.StartsWith("rear.", StringComparison.Ordinal)) && !entry.Path.Contains("wheelie", StringComparison.Ordinal);

    // Of a row what is judged is named; of a point both numbers stand.
    private static string With(Suspicion found, double factor)
    {
        Quantity quantity = found.Quantity;
        if (found.Entry.IsPoint)
        {
            bool up = found.Span.Part == ".up";
            return $"{Text(quantity.Numbers[0] * (up ? 1 : factor))} {Text(quantity.Numbers[1] * (up ? factor : 1))} {quantity.Unit.Text}";
        }

        return $"{Text(found.Value / quantity.Unit.Factor * factor)} {quantity.Unit.Text} {found.Span.Where}".TrimEnd();
    }

    private static string Text(double number) => number.ToString("G4", CultureInfo.InvariantCulture);
}
