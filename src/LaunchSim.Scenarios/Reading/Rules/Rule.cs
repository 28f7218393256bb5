using System.Globalization;

namespace LaunchSim.Scenarios.Reading.Rules;

/// <summary>What holds between values: each rule looks at what was bound, and skips what is missing or was refused.</summary>
internal static class Rule
{
    public static void CheckAll(BoundValues values, Findings findings)
    {
        DamperRules.Check(values, findings);
        TireRules.Check(values, "front.tire", findings);
        TireRules.Check(values, "rear.tire", findings);
        DrivelineRules.Check(values, findings);
        WeightRules.Check(values, findings);
        LengthRules.Check(values, findings);
        DirectionRules.Check(values, findings);
        RunRules.Check(values, findings);
        AimRules.Check(values, findings);
    }

    public static string Number(double value) => value.ToString("G4", CultureInfo.InvariantCulture);

    public static string Exactly(double value) => value.ToString("R", CultureInfo.InvariantCulture);
}
