using System.Globalization;

using LaunchSim.Passes.Fitting;

using Xunit;
using Xunit.Abstractions;

namespace LaunchSim.Passes.Tests.Fitting;

/// <summary>The solver as it is used, from both certified starts of each set.</summary>
public sealed class NistTests(ITestOutputHelper output)
{
    // Three far starts of NIST's "higher difficulty" do not lead there: the step out of BoxBOD's and MGH17's overshoots onto a
    // plateau where exponentials have vanished, and MGH10's valley is followed too slowly.
    private static readonly HashSet<(string Name, int Start)> Lost = [("BoxBOD", 0), ("MGH10", 0), ("MGH17", 0)];

    public static TheoryData<string, int> Sets()
    {
        var sets = new TheoryData<string, int>();
        foreach (var set in NistSet.All)
        {
            Assert.Equal(set.X.Length, set.Y.Length);
            for (int start = 0; start < 2; start++)
            {
                if (!Lost.Contains((set.Name, start)))
                {
                    sets.Add(set.Name, start);
                }
            }
        }

        return sets;
    }

    [Theory]
    [MemberData(nameof(Sets))]
    public void Solve_CertifiedSet_SixDigits(string name, int start)
    {
        NistSet set = NistSet.All.Single(one => one.Name == name);
        var options = new LeastSquaresOptions { InStandardDeviations = false, Tolerance = 1e-7, MostIterations = 5000 };
        var result = LeastSquares.Solve(set.Residuals, set.Y.Length, set.Starts[start], options, default);
        double parameters = Digits(result.Parameters, set.Certified);
        double deviations = Digits(result.ScaledStandardErrors(), set.Deviations);
        double sum = Digits([result.SumOfSquares], [set.Sum]);
        string said = string.Create(
            CultureInfo.InvariantCulture,
            $"{name} start {start + 1}: parameters {parameters:F1} digits, deviations {deviations:F1}, sum {sum:F1}; {result.Iterations} iterations, {result.Evaluations} evaluations, {result.Reason}");
        output.WriteLine(said);
        Assert.True(result.Converged, said);
        Assert.True(Math.Min(parameters, Math.Min(deviations, sum)) >= 6, said);
    }

    [Fact]
    public void Solve_FarStart_SaysThatItIsNoMinimum()
    {
        foreach (var (name, start) in Lost)
        {
            NistSet set = NistSet.All.Single(one => one.Name == name);
            var options = new LeastSquaresOptions { InStandardDeviations = false };
            var result = LeastSquares.Solve(set.Residuals, set.Y.Length, set.Starts[start], options, default);
            output.WriteLine($"{name}: {result.Reason}");
            Assert.True(!result.Converged || result.StandardErrors().Any(double.IsInfinity), name);

            // And the other start beside it, in either order, is what several starts are for.
            var both = LeastSquares.Solve(set.Residuals, set.Y.Length, set.Starts[start], options with { Starts = [set.Starts[1 - start]] }, default);
            Assert.True(both.Converged, both.Reason);
            Assert.Equal(set.Sum, both.SumOfSquares, 1e-8 * set.Sum);
            Assert.True(both.SumsOfStarts[0] > 2 * both.SumsOfStarts[1]);
        }
    }

    // Digits that agree: −log₁₀ of the relative error, as NIST counts them, at most the 11 that are certified.
    private static double Digits(double[] found, double[] certified) =>
        found.Zip(certified, (one, right) => Math.Min(11, -Math.Log10(Math.Abs((one - right) / right)))).Min();
}
