using System.Globalization;
using LaunchSim.Scenarios.Recorded;

namespace LaunchSim.Passes.Seen;

/// <summary>Seen facts and predicted ones → each beside the other.</summary>
internal static class SeenComparing
{
    public static IReadOnlyList<SeenComparison> Of(PredictedFacts predicted, SeenFacts seen)
    {
        double frame = SeenDoubt.OfUniform(seen.Together);
        var all = new List<SeenComparison>();
        if (seen.FirstUp is { } first)
        {
            bool repeated = seen.FrontMoves is { Bound: SeenBound.At or SeenBound.Never } && seen.RearMoves is { Bound: SeenBound.At or SeenBound.Never };
            all.Add(Order(first, predicted, seen.Together, frame) with { IsRepeated = repeated });
        }

        Moment("front_moves", "Front moves", seen.FrontMoves, predicted.FrontMoves, predicted.TimeOpen.Front);
        Moment("rear_moves", "Rear moves", seen.RearMoves, predicted.RearMoves, predicted.TimeOpen.Rear);
        Moment("rear_open", "Rear fully open", seen.RearOpen, predicted.RearOpen, predicted.TimeOpen.Rear);
        Moment("front_tires_leave", "Front tyres leave", seen.FrontTiresLeave, predicted.FrontTiresLeave, predicted.TimeOff);

        // Tyres that stay down in the prediction neither land nor fail to.
        if (seen.FrontTiresLand is { IsNever: false } || double.IsFinite(predicted.FrontTiresLeave))
        {
            Moment("front_tires_land", "Front tyres land", seen.FrontTiresLand, predicted.FrontTiresLand, predicted.End - predicted.FrontTiresLand);
        }

        Moment("spin_starts", "Tyres spin", seen.SpinStarts, predicted.SpinStarts, predicted.TimePastPeak);
        for (int i = 0; i < seen.Marks.Count; i++)
        {
            SeenMark mark = seen.Marks[i];
            double time = predicted.BeamTimes[i], difference = (double.IsNaN(time) ? Math.Max(predicted.End, mark.Time) : time) - mark.Time;
            all.Add(new SeenComparison(string.Create(CultureInfo.InvariantCulture, $"times[{i}]"), "Time at the beam", SeenKind.Time, mark.Written, mark.Time, time, difference, mark.Sd) { Mark = mark.Distance });
        }

        return all;

        void Moment(string key, string words, SeenMoment? moment, double time, double held)
        {
            if (moment is not null)
            {
                all.Add(Of(key, words, moment, time, held, predicted.End, frame));
            }
        }
    }

    private static SeenComparison Of(string key, string words, SeenMoment seen, double time, double held, double end, double frame)
    {
        bool happens = !double.IsNaN(time);
        double late = (happens ? time : Math.Max(end, seen.Time)) - seen.Time;
        (SeenKind kind, double difference) = seen.Bound switch
        {
            SeenBound.Before => (SeenKind.Before, Math.Max(0, late)),
            SeenBound.After => (SeenKind.After, Math.Min(0, late)),
            SeenBound.Never => (SeenKind.Never, happens ? -held : 0),
            _ => (SeenKind.Time, late),
        };
        return new SeenComparison(key, words, kind, seen.Written, seen.Time, time, difference, seen.IsNever ? frame : seen.Sd);
    }

    private static SeenComparison Order(FirstUp first, PredictedFacts predicted, double together, double frame)
    {
        bool front = !double.IsNaN(predicted.FrontMoves), rear = !double.IsNaN(predicted.RearMoves);
        double lag = predicted.FrontMoves - predicted.RearMoves;
        double counted = (front ? predicted.FrontMoves : predicted.End) - (rear ? predicted.RearMoves : predicted.End);
        double difference = first switch
        {
            FirstUp.Front => Math.Max(0, counted),
            FirstUp.Rear => Math.Min(0, counted),
            _ => counted > together ? counted - together : counted < -together ? counted + together : 0,
        };
        string written = first switch { FirstUp.Front => "front", FirstUp.Rear => "rear", _ => "together" };
        return new SeenComparison("first_up", "First to move", SeenKind.Order, written, double.NaN, lag, difference, frame);
    }
}
