using LaunchSim.Passes.Aligning;

namespace LaunchSim.Passes.Tests.Aligning;

/// <summary>Shifts of closed-form signals: the truth is known without any of our own code.</summary>
public class ShiftFitTests
{
    // A pulse exp(-((t - 0.2)/0.05)²) and a ramp log(1 + e^{(t - 0.1)/0.02}): smooth, and with their slopes in closed form.
    private static readonly PredictedCourse Pulse = new(
        t => Math.Exp(-Math.Pow((t - 0.2) / 0.05, 2)), t => -2 * (t - 0.2) / 0.0025 * Math.Exp(-Math.Pow((t - 0.2) / 0.05, 2)), 1);

    private static readonly PredictedCourse Ramp = new(
        t => Math.Log(1 + Math.Exp((t - 0.1) / 0.02)), t => 1 / (0.02 * (1 + Math.Exp(-(t - 0.1) / 0.02))), 1);

    [Theory]
    [InlineData(3.2107)]
    [InlineData(3.2142)]
    [InlineData(-17.0049)]
    public void Find_ShiftedPulseWithoutNoise_GivesTheShift(double shift)
    {
        foreach (PredictedCourse course in new[] { Pulse, Ramp })
        {
            ShiftSignal signal = Sampled(course, shift, 100, gain: 1.15, offset: 0.3, noise: 0, seed: 1) with { Noise = 1e-3, OffsetSd = double.PositiveInfinity, GainSd = 0.3 };
            ShiftEstimate found = ShiftFit.Find([signal], shift + 0.017, 0.05, (-0.3, 0.8));

            Assert.Equal(shift, found.Shift, 1e-6);
            Assert.Equal(1.15, found.Gains[0], 1e-3);
        }
    }

    [Theory]
    [InlineData(1000)]
    [InlineData(200)]
    [InlineData(100)]
    public void Find_ShiftedSignalsWithNoise_AreRecoveredToATenthOfASample(double rate)
    {
        var off = new List<double>();
        for (int seed = 0; seed < 40; seed++)
        {
            double shift = 10 + (seed * 0.00137);
            ShiftSignal[] signals =
            [
                Sampled(Pulse, shift, rate, 1, 0, 0.005, seed) with { OffsetSd = double.PositiveInfinity, GainSd = 0.3 },
                Sampled(Ramp, shift, rate, 1.1, 0, 0.05, 1000 + seed) with { GainSd = 0.3 },
            ];
            off.Add((ShiftFit.Find(signals, shift + 0.02, 0.05, (-0.3, 0.8)).Shift - shift) * rate);
        }

        // A tenth of a sample, as a standard deviation over forty draws, and no bias beyond three standard errors of the mean.
        double mean = off.Average(), sd = Math.Sqrt(off.Sum(x => (x - mean) * (x - mean)) / (off.Count - 1));
        Assert.InRange(sd, 0, 0.1);
        Assert.InRange(Math.Abs(mean), 0, 3 * sd / Math.Sqrt(off.Count));
    }

    [Fact]
    public void Find_ManyDraws_ScatterAsMuchAsIsSaidAndAsTheoryHasIt()
    {
        const double Noise = 0.02, Rate = 500;
        var shifts = new List<double>();
        var said = new List<double>();
        for (int seed = 0; seed < 300; seed++)
        {
            ShiftSignal signal = Sampled(Pulse, 5, Rate, 1, 0, Noise, seed) with { OffsetSd = 0, GainSd = 0 };
            ShiftEstimate found = ShiftFit.Find([signal], 5.01, 0.03, (-0.3, 0.8));
            shifts.Add(found.Shift);
            said.Add(found.Sd);
        }

        // Cramér and Rao's bound of a delay in white noise: σ² / (rate ∫ p'² dt), the integral being √(π/2)/w for a pulse exp(-(t/w)²).
        double bound = Noise / Math.Sqrt(Rate * Math.Sqrt(Math.PI / 2) / 0.05);
        double mean = shifts.Average(), sd = Math.Sqrt(shifts.Sum(x => (x - mean) * (x - mean)) / (shifts.Count - 1));

        // The standard deviation of 300 draws is itself known to 4 %; three of these, and what is said includes chance correlation.
        Assert.InRange(sd / bound, 0.88, 1.12);
        Assert.InRange(said.Average() / bound, 0.95, 1.15);
    }

    [Fact]
    public void Find_Spikes_DoNotMoveTheShift()
    {
        ShiftSignal clean = Sampled(Ramp, 2, 200, 1, 0, 0.02, 5) with { GainSd = 0.3 };
        double[] spoilt = [.. clean.Values];
        for (int i = 3; i < spoilt.Length; i += 17)
        {
            spoilt[i] += 40;
        }

        ShiftEstimate found = ShiftFit.Find([clean with { Values = spoilt }], 2.01, 0.05, (-0.3, 0.8));

        Assert.InRange(Math.Abs(found.Shift - 2), 0, 0.001);
    }

    private static ShiftSignal Sampled(PredictedCourse course, double shift, double rate, double gain, double offset, double noise, int seed)
    {
        var random = new Random(seed);
        int count = (int)(1.3 * rate);
        double phase = random.NextDouble() / rate;
        double[] times = [.. Enumerable.Range(0, count).Select(i => Math.Floor(shift) - 0.4 + phase + (i / rate) + (shift - Math.Floor(shift)))];
        return new ShiftSignal(times, [.. times.Select(t => offset + (gain * course.At(t - shift)) + (noise * Normal(random)))], course, Math.Max(noise, 1e-9), 0, 0);
    }

    private static double Normal(Random random) => Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
}
