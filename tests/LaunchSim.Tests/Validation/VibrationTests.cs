using System.Numerics;
using LaunchSim.Dynamics;
using LaunchSim.Tests.Cars;
using LaunchSim.Tests.Dynamics;
using LaunchSim.Vehicle;
using MathNet.Numerics.LinearAlgebra;

namespace LaunchSim.Tests.Validation;

/// <summary>
/// Rows 14 to 16: modes of textbook cars from the product's own rates, linearised about the standing car. All wheel centres
/// stand as high as the sprung CG, where the weight adds nothing to the springs' stiffness; equal parallel level bars guide
/// the axle straight up to second order, its housing turning with the body; the tyres have no grip to speak of, so that
/// nothing holds the wheels along the track.
/// </summary>
public class VibrationTests
{
    private const double Radius = 0.3, Housing = 0.01;

    private static readonly int[] Upright =
    [
        StateLayout.Z, StateLayout.Pitch, StateLayout.Linkage, StateLayout.FrontTravel,
        StateLayout.ZRate, StateLayout.PitchRate, StateLayout.LinkageRate, StateLayout.FrontTravelRate,
    ];

    private static PlainCar TextbookCar() => new()
    {
        Sprung = 1000,
        FrontUnsprung = 1,
        RearUnsprung = 1,
        Wheelbase = 2.5,
        Centre = new Point(1.5, Radius),
        Inertia = 810 - Housing,
        HousingInertia = Housing,
        Linkage = new FourLink
        {
            LowerAxle = new Point(0, 0.2),
            LowerBody = new Point(0.5, 0.2),
            UpperAxle = new Point(0, 0.4),
            UpperBody = new Point(0.5, 0.4),
        },
        FrontRate = 18000,
        RearRate = 22000,
        FrontDamping = 0,
        RearDamping = 0,
        TireRate = 1e9,
        Radius = Radius,
        Grip = 1e-9,
        SlipStiffness = 1e-8,
    };

    [Fact]
    public void HeavePitchCar_TowardsMasslessAxlesAndStiffTires_HasTheTextbooksModes()
    {
        // Row 14: Rao, Mechanical Vibrations, Ex. 5.7 (from memory, recomputed): m = 1000, k = 0.9, a = 1 to the front.
        // 1e-9 asked of the numbers; the model cannot do without unsprung mass and tyre rate, whose errors go in
        // proportion: Richardson over members of the sequence leaves rounding of a stiff matrix, 1e-7.
        double[] first = [5.859291841901385, 9.434088850798533];
        double[][] members = [.. Enumerable.Range(0, 3).Select(n => Frequencies(TextbookCar(), n))];
        for (int k = 0; k < 2; k++)
        {
            double[] errors = [.. members.Select(m => m[k] - first[k])];
            Assert.InRange(errors[1] / errors[0], 0.45, 0.55);
            Assert.InRange(errors[2] / errors[1], 0.45, 0.55);
            double extrapolated = Extrapolated(members, k);
            Assert.Equal(1, extrapolated / first[k], 1e-7);
        }

        // Bounce over pitch in the two modes, m per rad at the CG, by the same way; the book's pitch is nose down.
        double[][] ratios = [.. Enumerable.Range(0, 3).Select(n => Ratios(TextbookCar(), n))];
        Assert.Equal(-2.64610975, -Extrapolated(ratios, 0), 1e-6);
        Assert.Equal(0.30610975, -Extrapolated(ratios, 1), 1e-6);
    }

    [Fact]
    public void HeavePitchCar_InShopUnits_HasTheTextbooksFrequenciesAndCentres()
    {
        // Row 15: input of Gillespie, ch. 5 (from memory), output computed for this project; 1e-5.
        const double pound = 4.4482216152605, inch = 0.0254, g = 9.80665;
        double front = 2 * 957 * pound / g, rear = 2 * 1047 * pound / g, length = 100.6 * inch;
        double b = length * front / (front + rear), a = length - b;
        PlainCar car = TextbookCar() with
        {
            Sprung = front + rear,
            Wheelbase = length,
            Centre = new Point(b, Radius),
            Inertia = (1.1 * a * b * (front + rear)) - Housing,
            FrontRate = 2 * 127 * pound / inch,
            RearRate = 2 * 92.3 * pound / inch,
        };
        Assert.Equal(1.139225, Math.Sqrt(127 * pound / inch / (957 * pound / g)) / (2 * Math.PI), 1e-5);
        Assert.Equal(0.928520, Math.Sqrt(92.3 * pound / inch / (1047 * pound / g)) / (2 * Math.PI), 1e-5);
        double[][] members = [.. Enumerable.Range(0, 3).Select(n => Frequencies(car, n))];
        Assert.Equal(0.905091, Extrapolated(members, 0) / (2 * Math.PI), 1e-5);
        Assert.Equal(1.114329, Extrapolated(members, 1) / (2 * Math.PI), 1e-5);

        // The point that stands still is −z/θ ahead of the CG.
        double[][] ratios = [.. Enumerable.Range(0, 3).Select(n => Ratios(car, n))];
        double[] centres = [.. Enumerable.Range(0, 2).Select(k => -Extrapolated(ratios, k) / inch)];
        Assert.Equal(63.7569, Math.Abs(centres.MaxBy(Math.Abs)), 63.7569e-4);
        Assert.Equal(43.5637, Math.Abs(centres.MinBy(Math.Abs)), 43.5637e-4);
        Assert.True(centres[0] * centres[1] < 0);
    }

    [Fact]
    public void QuarterCars_AtBothEnds_HaveTheirFourRootsTwice()
    {
        // Row 16, computed for this project: 350/45 kg, k_s = 25e3, c = 1500, k_t = 2e5, c_t = 50. With I = m·a·b the two
        // ends do not feel each other: exact for this model. Central differences leave 1e-8 of a matrix of 1e5.
        PlainCar car = TextbookCar() with
        {
            Sprung = 1400,
            FrontUnsprung = 90,
            RearUnsprung = 90,
            Centre = new Point(1.25, Radius),
            Inertia = (1400 * 1.25 * 1.25) - Housing,
            FrontRate = 50000,
            RearRate = 50000,
            FrontDamping = 3000,
            RearDamping = 3000,
            TireRate = 4e5,
            TireDamping = 100,
        };
        Complex[] roots = Linearised.Roots(Linearised.At(car.Build(), Upright));
        Complex[] expected = [new(-1.721556529923, 7.871442653736), new(-17.643522835156, 67.664436183479)];
        foreach (Complex root in expected)
        {
            foreach (Complex one in new[] { root, Complex.Conjugate(root) })
            {
                Assert.Equal(2, roots.Count(found => (found - one).Magnitude < 1e-7 * one.Magnitude));
            }
        }
    }

    private static PlainCar Member(PlainCar car, int n)
    {
        double small = Math.Pow(0.5, n);
        return car with { FrontUnsprung = small, RearUnsprung = small, TireRate = 2e8 / small };
    }

    /// <summary>The two lowest frequencies, rad/s.</summary>
    private static double[] Frequencies(PlainCar car, int n) =>
        [.. Squared(Member(car, n)).Select(pair => Math.Sqrt(pair.Value))];

    private static double[] Ratios(PlainCar car, int n) => [.. Squared(Member(car, n)).Select(pair => pair.Ratio)];

    /// <summary>The undamped system's two lowest ω² and heave over pitch in each, from the product's accelerations.</summary>
    private static IEnumerable<(double Value, double Ratio)> Squared(PlainCar car)
    {
        Matrix<double> a = Linearised.At(car.Build(), Upright).SubMatrix(4, 4, 0, 4);
        var evd = a.Evd();
        return Enumerable.Range(0, 4)
            .Select(i => (Value: -evd.EigenValues[i].Real, Vector: evd.EigenVectors.Column(i)))
            .OrderBy(pair => pair.Value).Take(2)
            .Select(pair => (pair.Value, pair.Vector[0] / pair.Vector[1]));
    }

    private static double Extrapolated(double[][] members, int k)
    {
        double a = (2 * members[1][k]) - members[0][k], b = (2 * members[2][k]) - members[1][k];
        return ((4 * b) - a) / 3;
    }
}
