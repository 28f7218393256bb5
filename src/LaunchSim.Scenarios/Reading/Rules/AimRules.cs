using LaunchSim.Scenarios.Schema;

namespace LaunchSim.Scenarios.Reading.Rules;

/// <summary>Aims that contradict themselves.</summary>
internal static class AimRules
{
    public static void Check(BoundValues values, Findings findings)
    {
        if (!values.HasSection("aims"))
        {
            return;
        }

        foreach (Bound bound in values.All)
        {
            if (bound.Path.StartsWith("aims.", StringComparison.Ordinal) && bound.Quantity?.SiDoubt() is not null)
            {
                findings.Error(bound.Place, bound.Path, "a ± at an aim", "what is wanted, exactly", "take the ± away");
            }
        }

        foreach (string name in AimKeys.Names)
        {
            string at = $"aims.{name}";
            if (values.Find($"{at}.weight") is { } weight && values.Find($"{at}.limit")?.Text == "yes")
            {
                findings.Error(weight.Place, at, "a weight and `limit: yes` together", "one of them: a limit is not weighed", "take one away");
            }
        }

        if (values.Find("aims.separation.from") is { Quantity: { } from } first && values.FindNumber("aims.separation.to") is { } to && from.Si() > to)
        {
            findings.Error(first.Place, "aims.separation", $"a band from {Shown.Quoted(from.ToString())} to less than that", "from the lower to the higher", "swap the two");
        }
    }
}
