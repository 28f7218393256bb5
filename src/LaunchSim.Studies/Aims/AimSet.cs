using System.Globalization;
using LaunchSim.Scenarios;

namespace LaunchSim.Studies.Aims;

/// <summary>The aims in force: those of a profile, with what was entered in their place.</summary>
public sealed class AimSet
{
    private readonly int[][] _places;

    private AimSet(AimProfile profile, IReadOnlyList<Aim> aims, bool isEntered)
    {
        (Profile, Aims, IsEntered) = (profile, aims, isEntered);
        Keys = [.. aims.SelectMany(aim => aim.Subject.Keys).Distinct(StringComparer.Ordinal)];
        List<string> keys = [.. Keys];
        _places = [.. aims.Select(aim => aim.Subject.Keys.Select(key => keys.IndexOf(key)).ToArray())];
    }

    /// <summary>The profile that they began from.</summary>
    public AimProfile Profile { get; }

    /// <summary>The aims, in the order of the register; none with weight 0 unless it is a limit.</summary>
    public IReadOnlyList<Aim> Aims { get; }

    /// <summary>Whether any aim was entered; otherwise they are the profile's.</summary>
    public bool IsEntered { get; }

    /// <summary>The figures that are needed to score a launch.</summary>
    public IReadOnlyList<string> Keys { get; }

    /// <summary>The aims in force.</summary>
    /// <param name="entered">What was entered, or null.</param>
    /// <param name="profile">The profile in the place of the entered one, or null.</param>
    /// <param name="problem">What contradicts itself in them, a sentence; null when nothing does.</param>
    /// <returns>The aims; null when they contradict themselves.</returns>
    public static AimSet? Of(EnteredAims? entered, AimProfile? profile, out string? problem)
    {
        profile ??= entered?.Profile is { } named ? AimProfiles.Find(named)! : AimProfiles.All[0];
        var aims = new List<Aim>();
        problem = null;
        foreach (AimSubject subject in AimSubjects.All)
        {
            Aim? aim = profile.Aims.FirstOrDefault(one => one.Subject == subject);
            if (entered?.Aims.FirstOrDefault(one => one.Name == subject.Name) is { } own)
            {
                aim = With(aim ?? Plain(subject), own);
                if (aim.From > aim.To)
                {
                    problem = $"{own.Place}: the aim {subject.Name} asks for at least {aim.From:G4} and at most {aim.To:G4}, in SI units: the one that was not entered is the profile's; enter both";
                    return null;
                }
            }

            if (aim is { Weight: > 0 } or { IsLimit: true })
            {
                aims.Add(aim);
            }
        }

        if (aims.Count == 0)
        {
            problem = "every aim has a weight of 0 and none is a limit: there is nothing to rank by; give one a weight above 0";
            return null;
        }

        return new AimSet(profile, aims, entered is { Aims.Count: > 0 } or { Profile: not null });
    }

    /// <summary>What decides every score: a name and a text an aim, for a table to say what it came from.</summary>
    public IEnumerable<KeyValuePair<string, string>> Facts => Aims.Select(aim => new KeyValuePair<string, string>(
        $"aim {aim.Subject.Name}",
        string.Create(CultureInfo.InvariantCulture, $"{aim.From:R} to {aim.To:R} by {aim.Point:R}, {(aim.IsLimit ? "a limit" : $"weight {aim.Weight:R}")}")));

    /// <summary>Scores a launch.</summary>
    /// <param name="figures">Its figures in the order of <see cref="Keys"/>; not a number where it has none.</param>
    public AimScore Score(ReadOnlySpan<double> figures)
    {
        double points = 0, beyond = 0;
        for (int i = 0; i < Aims.Count; i++)
        {
            Aim aim = Aims[i];
            double own = aim.PointsOf(Value(i, figures));
            points += aim.IsLimit ? 0 : aim.Weight * own;
            beyond += aim.IsLimit ? own : 0;
        }

        return new AimScore(points, beyond);
    }

    /// <summary>The value that one aim looks at.</summary>
    /// <param name="aim">Which, from 0.</param>
    /// <param name="figures">The launch's figures in the order of <see cref="Keys"/>.</param>
    public double Value(int aim, ReadOnlySpan<double> figures)
    {
        int[] places = _places[aim];
        Span<double> own = stackalloc double[places.Length];
        for (int i = 0; i < places.Length; i++)
        {
            own[i] = figures[places[i]];
        }

        return Aims[aim].Subject.Value(own);
    }

    /// <summary>How a launch's score is put together.</summary>
    /// <param name="figures">Its figures in the order of <see cref="Keys"/>.</param>
    public IReadOnlyList<AimPart> Parts(ReadOnlySpan<double> figures)
    {
        var parts = new AimPart[Aims.Count];
        for (int i = 0; i < parts.Length; i++)
        {
            double value = Value(i, figures);
            parts[i] = new AimPart(Aims[i], value, Aims[i].PointsOf(value));
        }

        return parts;
    }

    // What is entered alone wants all that follows from it: one value takes the place of a band.
    private static Aim With(Aim aim, EnteredAim entered) => aim with
    {
        From = entered.Near ?? entered.From ?? aim.From,
        To = entered.Near ?? entered.To ?? aim.To,
        Point = entered.Within ?? entered.Point ?? aim.Point,
        IsLimit = entered.IsLimit ?? (entered.Weight is null && aim.IsLimit),
        Weight = entered.Weight ?? (aim.IsLimit && entered.IsLimit == false ? 1 : aim.Weight),
    };

    // An aim that the profile does not have begins from the one profile that does.
    private static Aim Plain(AimSubject subject) =>
        AimProfiles.All.SelectMany(profile => profile.Aims).First(aim => aim.Subject == subject) with { };
}
