using System.Globalization;
using OxyPlot;
using OxyPlot.Axes;

namespace LaunchSim.Charts.Drawing;

/// <summary>
/// Time since release, s. When the run is long, what comes after the first part is squeezed into the rest of the width, so
/// that the first part stays readable; <see cref="Squeezed"/> tells from when on.
/// </summary>
internal sealed class TimeAxis : LinearAxis
{
    /// <summary>The first part's share of the width when the rest is squeezed.</summary>
    public const double FirstShare = 0.72;

    // How much longer than the first part the run has to be to be worth squeezing.
    private const double WorthIt = 1.3;

    // Room that a tick's number takes.
    private const double Spacing = 58, SqueezedSpacing = 38;

    private readonly double _end, _first;

    /// <summary>An axis from 0.</summary>
    /// <param name="end">The last instant, s, above 0.</param>
    /// <param name="first">How much of it must be readable, s.</param>
    /// <param name="named">Whether its ticks have numbers.</param>
    public TimeAxis(double end, double first, bool named = true)
    {
        (_end, _first) = (end, end > WorthIt * first ? first : end);
        Position = AxisPosition.Bottom;
        Minimum = 0;
        Maximum = end;
        if (!named)
        {
            LabelFormatter = _ => "";
        }
    }

    /// <summary>The last instant, s.</summary>
    public double End => _end;

    /// <summary>From when on time is squeezed, s; null when it is not.</summary>
    public double? Squeezed => _first < _end ? _first : null;

    /// <summary>What stands below it.</summary>
    public string Caption => Squeezed is { } from ? string.Create(CultureInfo.InvariantCulture, $"s from release (squeezed after {from:0.###} s)") : "s from release";

    /// <summary>How much of the width is left of an instant, as a share.</summary>
    /// <param name="x">The instant, s.</param>
    public double Share(double x) => PreTransform(x) / PreTransform(_end);

    /// <inheritdoc/>
    public override double Transform(double x) => (PreTransform(x) - Offset) * Scale;

    /// <inheritdoc/>
    public override double InverseTransform(double sx) => PostInverseTransform((sx / Scale) + Offset);

    /// <inheritdoc/>
    public override void GetTickValues(out IList<double> majorLabelValues, out IList<double> majorTickValues, out IList<double> minorTickValues)
    {
        double width = Math.Abs(ScreenMax.X - ScreenMin.X);
        double share = Squeezed is null ? 1 : FirstShare;
        var ticks = new List<double>();
        double step = Step(_first, width * share, Spacing);
        for (int i = 0; i * step <= _first * (1 + 1e-9); i++)
        {
            ticks.Add(i * step);
        }

        if (Squeezed is not null)
        {
            // In the squeezed part only whole steps, and none whose number would run into the first part's last.
            double coarse = Math.Max(step, Step(_end - _first, width * (1 - share), SqueezedSpacing)), perUnit = width * (1 - share) / (_end - _first);
            for (double i = Math.Ceiling((ticks[^1] + (0.7 * SqueezedSpacing / perUnit)) / coarse); i * coarse <= _end * (1 + 1e-9); i++)
            {
                ticks.Add(i * coarse);
            }
        }

        majorLabelValues = majorTickValues = ticks;
        minorTickValues = [];
    }

    /// <inheritdoc/>
    protected override double PreTransform(double x) =>
        x <= _first || Squeezed is null ? FirstShare * x / _first : FirstShare + ((1 - FirstShare) * (x - _first) / (_end - _first));

    /// <inheritdoc/>
    protected override double PostInverseTransform(double x) =>
        x <= FirstShare || Squeezed is null ? x * _first / FirstShare : _first + ((x - FirstShare) * (_end - _first) / (1 - FirstShare));

    /// <inheritdoc/>
    protected override string FormatValueOverride(double x) => x.ToString("0.######", CultureInfo.InvariantCulture);

    // 1, 2 or 5 times a power of ten, so wide that the numbers have room.
    private static double Step(double length, double width, double spacing)
    {
        double least = length * spacing / Math.Max(width, spacing), power = Math.Pow(10, Math.Floor(Math.Log10(least))), share = least / power;
        return power * (share <= 1 ? 1 : share <= 2 ? 2 : share <= 5 ? 5 : 10);
    }
}
