using LaunchSim.Scenarios.Units;

namespace LaunchSim.Scenarios.Typical.Mistakes;

/// <summary>The register of mistakes that people make when they write a number down: one line a mistake.</summary>
internal static class UsualMistakes
{
    private const int Most = 2;

    // What tells itself apart comes before what might be anything: a wrong unit needs a nearer fit, a point out of place a nearer still.
    private static readonly (Func<Suspicion, IEnumerable<Guess>> Guesses, double Handicap)[] All =
    [
        (Swapped, 0),
        (WrongSign, 0),
        (UpsideDown, 0),
        (Diameter, 0),
        (OtherSides, 0.1),
        (WhatRidesOnTheSprings, 0.3),
        (OtherUnit, 0.2),
        (PointOutOfPlace, 0.25),
    ];

    /// <summary>What may have been meant, the likeliest first: two at the most, and one of a kind.</summary>
    public static IReadOnlyList<Guess> Of(Suspicion suspicion) =>
    [
        .. All.Select(mistake => (Guess: mistake.Guesses(suspicion).MinBy(guess => suspicion.Distance(guess.Value)), mistake.Handicap))
            .Where(one => one.Guess is not null)
            .OrderBy(one => suspicion.Distance(one.Guess!.Value) + one.Handicap)
            .Select(one => one.Guess!).Take(Most),
    ];

    private static IEnumerable<Guess> Swapped(Suspicion found)
    {
        if (found.Entry.IsPoint && FitsAsPoint(found, found.Quantity.Si(1), found.Quantity.Si(0)))
        {
            yield return new($"{Text(found.Quantity.Numbers[1])} {Text(found.Quantity.Numbers[0])} {found.Quantity.Unit.Text}", "ahead comes first, then up", Judged(found, found.Quantity.Si(1), found.Quantity.Si(0)));
        }
    }

    private static IEnumerable<Guess> WrongSign(Suspicion found)
    {
        if (!found.Entry.IsRow && Scaled(found, -1, "the other sign") is { } guess)
        {
            yield return found.Entry.IsPoint ? guess with { Why = "behind the axle is negative" } : guess;
        }
    }

    private static IEnumerable<Guess> UpsideDown(Suspicion found)
    {
        if (found.Entry.Path.EndsWith("motion_ratio", StringComparison.Ordinal) && found.Value > 0 && found.Fits(1 / found.Value))
        {
            yield return new(RoundText.Round(1 / found.Value), "travel of the spring or damper over travel of the wheel, not the other way round", 1 / found.Value);
        }
    }

    private static IEnumerable<Guess> Diameter(Suspicion found) =>
        found.Entry.Path.EndsWith("_radius", StringComparison.Ordinal) && Scaled(found, 0.5, "a radius, half of the diameter") is { } guess ? [guess] : [];

    private static IEnumerable<Guess> OtherSides(Suspicion found)
    {
        Guess? guess = IsPerSide(found.Entry) ? Scaled(found, 0.5, "it is entered for one side")
            : IsPerAxle(found.Entry) ? Scaled(found, 2, "it is entered for both sides together") : null;
        return guess is null ? [] : [guess];
    }

    private static IEnumerable<Guess> WhatRidesOnTheSprings(Suspicion found)
    {
        if (found.Entry.Path.EndsWith("unsprung", StringComparison.Ordinal) && found.Value > 1.5 * found.Span.High)
        {
            yield return new("only what does not ride on the springs", "what does follows from the scales", Math.Sqrt(found.Span.Low * found.Span.High));
        }
    }

    private static IEnumerable<Guess> OtherUnit(Suspicion found)
    {
        Unit written = found.Quantity.Unit;
        foreach (string name in found.Entry.Kind.Units)
        {
            if (UnitReader.TryRead(name, found.Entry.Kind.Dimension, out Unit unit, out _) && Math.Abs(unit.Factor - written.Factor) > 1e-9 * unit.Factor
                && Scaled(found, unit.Factor / written.Factor, "another unit") is { } guess)
            {
                yield return guess with { Text = found.Quantity.Count > 1 ? $"the same numbers in {name}" : $"{Text(found.Quantity.Numbers[0])} {name}" };
            }
        }
    }

    // Of a point only one number would have it out of place.
    private static IEnumerable<Guess> PointOutOfPlace(Suspicion found) => found.Entry.IsPoint ? []
        : new[] { 10.0, 0.1, 100, 0.01 }.Select(factor => Scaled(found, factor, "a decimal point out of place")).OfType<Guess>();

    /// <summary>The number times a factor, if that would be usual; of a point both numbers, or the one ahead where only its sign changes.</summary>
    private static Guess? Scaled(Suspicion found, double factor, string why)
    {
        Quantity quantity = found.Quantity;
        if (!found.Entry.IsPoint)
        {
            return found.Fits(factor * found.Value) ? new($"{Text(found.Value / quantity.Unit.Factor * factor)} {quantity.Unit.Text} {found.Span.Where}".TrimEnd(), why, factor * found.Value) : null;
        }

        double ahead = factor * quantity.Si(0), up = Math.Abs(factor) * quantity.Si(1);
        return FitsAsPoint(found, ahead, up)
            ? new($"{Text(factor * quantity.Numbers[0])} {Text(Math.Abs(factor) * quantity.Numbers[1])} {quantity.Unit.Text}", why, Judged(found, ahead, up))
            : null;
    }

    private static bool FitsAsPoint(Suspicion found, double ahead, double up) => found.Both.All(span => span.Holds(span.Part == ".up" ? up : ahead));

    private static double Judged(Suspicion found, double ahead, double up) => found.Span.Part == ".up" ? up : ahead;

    private static bool IsPerSide(RegisterEntry entry) => IsEnd(entry) && (entry.Kind == QuantityKind.Rate || entry.Kind == QuantityKind.Damping || entry.Kind == QuantityKind.Force
        || entry.Kind == QuantityKind.TorsionalRate || entry.Kind == QuantityKind.TorsionalDamping);

    private static bool IsPerAxle(RegisterEntry entry) => entry.Path.StartsWith("car.scales.", StringComparison.Ordinal) || (IsEnd(entry) && (entry.Kind == QuantityKind.Mass || entry.Kind == QuantityKind.Inertia));

    private static bool IsEnd(RegisterEntry entry) =>
        (entry.Path.StartsWith("front.", StringComparison.Ordinal) || entry.Path.StartsWith("rear.", StringComparison.Ordinal)) && !entry.Path.Contains("wheelie", StringComparison.Ordinal);

    private static string Text(double number) => RoundText.Plain(number);
}
