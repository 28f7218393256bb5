using CsCheck;

namespace LaunchSim.Integration.Tests;

/// <summary>Random sets of events, breaks and tolerances against the list of crossings known beforehand.</summary>
public class EventModelTests
{
    private const double End = 7;

    private sealed record Wave(EventDirection Direction, double Frequency, double Phase)
    {
        public double Value(double t) => Math.Sin((Frequency * t) + Phase);

        /// <summary>Zeros of the sine within the run, those that cross in the event's direction.</summary>
        public IEnumerable<double> Crossings()
        {
            for (int k = (int)Math.Ceiling(Phase / Math.PI); ; k++)
            {
                double t = ((k * Math.PI) - Phase) / Frequency;
                if (t > End)
                {
                    yield break;
                }

                bool rises = k % 2 == 0;
                if (Direction is EventDirection.Either or EventDirection.Guard || rises == (Direction == EventDirection.Rising))
                {
                    yield return t;
                }
            }
        }
    }

    // Zeros at least π/6 apart, steps of at most 0.2: none can hide. Twins share a wave, so that instants coincide.
    private static readonly Gen<Wave[]> Waves = Gen.Select(
        Gen.Enum<EventDirection>(), Gen.Double[0.5, 6], Gen.Double[0.1, 3], (d, f, p) => new Wave(d, f, p)).Array[1, 5];

    [Fact]
    public void Events_OfRandomWaves_AreAllFoundInOrderAndNoOther()
    {
        Gen.Select(Waves, Gen.Bool, Gen.Double[0, End].Array[0, 5], Gen.Double[1e-12, 1e-3]).Sample((waves, twins, breaks, tolerance) =>
        {
            if (twins)
            {
                waves = [.. waves, .. waves];
            }

            var script = new Script(2, (_, y, dy) => (dy[0], dy[1]) = (y[1], -y[0]));
            foreach (Wave wave in waves)
            {
                // A guard's mode is the sign of its wave: it hands over at each zero. Phases are such that it starts above.
                int sign = 1;
                script.On(wave.Direction, (t, _) => (wave.Direction == EventDirection.Guard ? sign : 1) * wave.Value(t), (_, _) =>
                {
                    sign = -sign;
                    return EventAction.Restart;
                });
            }

            script.Breaks.AddRange(breaks.Order().Distinct().Where(b => b > 0));
            Solve.Scripted(script, 0, [1.0, 0], End, new() { Tolerance = tolerance, MaximumStep = 0.2 });

            Assert.Equal(script.Breaks, script.BreaksSeen);
            Assert.Equal(script.Fired.Select(f => f.T).Order(), script.Fired.Select(f => f.T));
            for (int i = 0; i < waves.Length; i++)
            {
                double[] found = script.Fired.Where(f => f.Index == i).Select(f => f.T).ToArray();
                // Behind the crossing by up to the event tolerance of 1e-13, and the sine's own rounding.
                Assert.Equal(waves[i].Crossings(), found, (a, b) => b - a is > -2e-14 and < 1.2e-13);
            }
        }, iter: 1000);
    }
}
