using LaunchSim.DemoSeason;
using LaunchSim.Figures;
using LaunchSim.Launch;
using LaunchSim.Passes.Fitting;
using LaunchSim.Passes.Measured;
using LaunchSim.Passes.Seen;
using LaunchSim.Scenarios;
using LaunchSim.Scenarios.Recorded;
using LaunchSim.Scenarios.Varying;
using LaunchSim.Studies.Next;
using LaunchSim.Vehicle;

namespace LaunchSim.Passes.Tests.Fitting;

/// <summary>A car drawn from the doubts of a shipped scenario, and passes of it with one thing changed at a time.</summary>
internal sealed class RandomSeason
{
    private static readonly string[] Cars =
        ["door-car", "door-car-hole-lower", "door-car-dampers-soft", "door-car-dampers-stiff", "door-car-rear-raised", "ladder-bar", "clutch-car", "converter-car", "sixty-percent", "wheelstand"];

    private static readonly string[] Channels = ["front_ride_height", "rear_ride_height", "wheel_speed", "acceleration"];

    private const double Duration = 1.3, LogEnd = 1.0, ClockSd = 2e-3, BeamSd = 1e-3, Frame = 1.0 / 240;

    private RandomSeason(Scenario file, TrueCar car, IReadOnlyList<FitPass> passes, Scenario unseen) => (File, Car, Passes, Unseen) = (file, car, passes, unseen);

    public Scenario File { get; }

    public TrueCar Car { get; }

    public IReadOnlyList<FitPass> Passes { get; }

    /// <summary>A set-up that was not driven.</summary>
    public Scenario Unseen { get; }

    /// <summary>A season of three passes; null where the drawn car cannot be or does not come to the end of its launches.</summary>
    /// <param name="seed">Which one.</param>
    /// <param name="isLogged">Whether there was a logger; otherwise only a video and the time slip.</param>
    public static RandomSeason? Of(ulong seed, bool isLogged)
    {
        var dice = new Dice(seed);
        Scenario file = StandingCheck.Reader(ReadPurpose.Run).Read(Files.Shipped($"{Cars[dice.Below(Cars.Length)]}.yaml")).Scenario!;
        TrueCar car = TrueCar.Drawn(FitParameters.Default(file), dice);
        List<Scenario> setUps = [file];
        IReadOnlyList<Variation> choices = VariationReader.OfChoices(file) is { Count: > 0 } own ? own : OfferedChoices.Of(file);
        SingleChange[] changes = [.. NextStudy.Changes(choices, file)];
        while (setUps.Count < 4)
        {
            if (file.With([changes[dice.Below(changes.Length)].Edit]).Scenario is { } changed)
            {
                setUps.Add(changed);
            }
        }

        var passes = new List<FitPass>();
        foreach (Scenario setUp in setUps.Take(3))
        {
            if (Pass(setUp, car, dice, isLogged, passes.Count + 1) is not { } pass)
            {
                return null;
            }

            passes.Add(pass);
        }

        return new RandomSeason(file, car, passes, setUps[3]);
    }

    /// <summary>The rise lag of the unseen set-up; not a number where there is none.</summary>
    /// <param name="deviations">By how much the car's numbers are off.</param>
    public double Lag(IReadOnlyList<double> deviations)
    {
        RunSettings settings = File.Run with { Duration = Duration, Marks = [] };
        if (new TrueCar(Car.Parameters, deviations).Launch(Unseen, settings) is not { } launch)
        {
            return double.NaN;
        }

        using var reader = new FigureReader(FigureSelection.Of(0, ["rise_lag_s"]));
        double[] figures = new double[1];
        reader.Read(launch, settings, figures);
        return figures[0];
    }

    private static FitPass? Pass(Scenario setUp, TrueCar car, Dice dice, bool isLogged, int number)
    {
        double mark = 30 * 0.3048;
        RunSettings settings = setUp.Run with { Duration = isLogged ? Duration : 2.5, Marks = [mark] };
        if (car.Launch(setUp, settings) is not { } launch)
        {
            return null;
        }

        RunSettings run = setUp.Run with { Duration = null, Marks = isLogged ? [] : [mark] };
        if (isLogged)
        {
            double late = ClockSd * dice.Normal();
            Sensor[] sensors = [.. Channels.Select(key => MeasuredQuantities.Find(key)!).Select(quantity => new Sensor(quantity, quantity.Noise, quantity.HasFreeZero ? 0.02 * dice.Normal() : 0))];
            return new FitPass($"pass {number}", setUp, run, [new FitLog("log", [.. sensors.Select(sensor => sensor.Series(launch, 200, LogEnd, late, dice))], ClockSd)], SeenFacts.None);
        }

        using var reading = new LaunchReading(launch, settings);
        PredictedFacts facts = SeenPrediction.Read(reading, SeenDoubt.UsualVisible, [mark]);
        double release = Frame * (dice.Uniform() - 0.5);
        SeenMoment See(double time) => double.IsNaN(time) ? SeenMoment.Never()
            : new SeenMoment(time - release + (Frame * (dice.Uniform() - 0.5)), SeenDoubt.OfUniform(Frame), "frame");
        return new FitPass($"pass {number}", setUp, run, [], new SeenFacts
        {
            FramesPerSecond = 1 / Frame,
            FrontMoves = See(facts.FrontMoves),
            RearMoves = See(facts.RearMoves),
            RearOpen = See(facts.RearOpen),
            FrontTiresLeave = See(facts.FrontTiresLeave),
            SpinStarts = See(facts.SpinStarts),
            Marks = double.IsFinite(facts.BeamTimes[0]) ? [new SeenMark(mark, facts.BeamTimes[0] + (BeamSd * dice.Normal()), BeamSd, "")] : [],
        });
    }
}
