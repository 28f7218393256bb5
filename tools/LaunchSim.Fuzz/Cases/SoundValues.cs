using LaunchSim.Scenarios.Schema;
using LaunchSim.Scenarios.Units;

namespace LaunchSim.Fuzz.Cases;

/// <summary>Other values for what a scenario has: read without an error, mostly, and often a car that nobody would build.</summary>
internal static class SoundValues
{
    /// <summary>How far a value may be moved, as a factor either way: most a little, some far, a few beyond all sense.</summary>
    private static readonly (int Weight, double Factor, double Inches)[] Reaches =
    [
        (600, 1.3, 1.5),
        (300, 4, 6),
        (95, 100, 30),
        (5, 1e6, 500),
    ];

    private const double Wild = 100;

    /// <summary>Another value for a slot.</summary>
    /// <param name="slot">The slot.</param>
    /// <param name="inBraces">Whether it is to stand in braces.</param>
    /// <param name="draft">The case, whose dice decide.</param>
    public static string For(Slot slot, bool inBraces, Draft draft)
    {
        Dice dice = draft.Dice;
        (_, double factor, double inches) = dice.Pick(Reaches, reach => reach.Weight);
        draft.IsWild |= factor >= Wild;
        double[] numbers = [.. slot.Quantity.Numbers];
        switch (slot.Key.Kind)
        {
            case NumberKind { Limits: { } limits } when double.IsFinite(limits.Least) && double.IsFinite(limits.Most):
                numbers[0] = Within(limits, dice) / slot.Quantity.Unit.Factor;
                break;
            case NumberKind:
                numbers[0] = Moved(numbers[0], factor, dice);
                break;
            case PointKind when numbers.Length == 2:
                double step = inches * 0.0254 / slot.Quantity.Unit.Factor;
                numbers[0] += dice.Between(-step, step);
                numbers[1] = Math.Max(0, numbers[1] + dice.Between(-step, step));
                break;
            case RowKind { Rising: false, Limits.Least: double.NegativeInfinity }:
                numbers = [.. numbers.Select(number => Moved(number, Math.Min(factor, 4), dice))];
                break;
            default:
                // One factor for a whole row keeps it rising, and a damper's table from falling.
                double all = dice.Spread(1 / factor, factor);
                numbers = [.. numbers.Select(number => number * all)];
                break;
        }

        return Spelling.Of(numbers, slot.Quantity.Unit, inBraces, dice);
    }

    private static double Within(Limits limits, Dice dice)
    {
        double from = Math.Max(limits.Least, 1e-9);
        return dice.Chance(0.5) && limits.Most > 0 ? Math.Min(dice.Spread(from, limits.Most), limits.Most) : dice.Between(limits.Least, limits.Most);
    }

    private static double Moved(double number, double factor, Dice dice)
    {
        double moved = number == 0 ? dice.Between(-1, 1) * Math.Log(factor) : number * dice.Spread(1 / factor, factor);
        return dice.Chance(0.02) ? 0 : moved;
    }
}
