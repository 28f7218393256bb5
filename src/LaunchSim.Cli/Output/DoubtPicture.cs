using LaunchSim.Charts;
using LaunchSim.Charts.Doubts;
using LaunchSim.Reports.Numbers;
using LaunchSim.Studies.Chance;
using LaunchSim.Studies.Doubting;

namespace LaunchSim.Cli.Output;

/// <summary>The sheet of a study of doubts.</summary>
internal static class DoubtPicture
{
    // Of what is beyond doubt one wants to know least.
    private const double Certain = 0.995;

    private const double LeastInches = 0.5, LeastMillimetres = 12, LeastPounds = 200, LeastNewtons = 1000;

    /// <summary>The picture.</summary>
    /// <param name="result">What came of it, with bands.</param>
    /// <param name="readout">The units.</param>
    /// <param name="program">Program and version.</param>
    public static Picture Of(DoubtResult result, Readout readout, string program) => DoubtSheet.Picture(Data(result, readout, program));

    /// <summary>What it is drawn from.</summary>
    /// <param name="result">What came of it, with bands.</param>
    /// <param name="readout">The units.</param>
    /// <param name="program">Program and version.</param>
    public static DoubtSheetData Data(DoubtResult result, Readout readout, string program)
    {
        double travel = readout.IsShop ? LeastInches : LeastMillimetres, force = readout.IsShop ? LeastPounds : LeastNewtons;
        return new DoubtSheetData
        {
            Title = DoubtWords.Conclusion(result),
            Explanation = $"Shaded: what nine in ten of {DoubtWords.Count(result.TraceCars)} plausible cars stay within. Line: the file's own car. Bold: said of it. Whiskers: how sure each share is.",
            Imprint = $"{result.Plan.Scenario.Name.ReplaceLineEndings(" ")} · {(readout.IsShop ? "Shop" : "SI")} units · seed {result.Plan.Settings.Seed} · {program} · {result.Plan.Scenario.ContentHash[..8]}",
            Rises =
            [
                Band(result, "rear_rise_m", "Rear rise", "Over the ground", readout.Travel, false, travel),
                Band(result, "front_rise_m", "Front rise", "Over the ground", readout.Travel, true, travel),
            ],
            Separation = Band(result, "separation_m", "Rear separation", "Body from axle", readout.Travel, false, travel),
            RearLoad = Band(result, "rear_tire_load_n", "Rear tyre load", "Both tyres", readout.Force, false, force),
            Statements = Statements(result),
            Numbers =
            [
                .. result.Ranking.Numbers.Where((number, i) => i == 0 || number.StandsOut)
                    .Select(number => new DrawnShare($"{number.Number.Path} {DoubtWords.Doubt(number.Number)}", DoubtWords.Share(number.Share), number.Share.Share, number.Share.Share - number.Share.StandardError, number.Share.Share + number.Share.StandardError, false)),
            ],
            NumbersNote = result.Ranking.Numbers.Count > 0 ? $"Share of the variance of the answer that each decides, ± one standard error. {DoubtWords.Together(result.Ranking)}" : "Nothing of the answer varies among the cars.",
        };
    }

    // In the order in which they are said, those of which one is certain last.
    private static List<DrawnShare> Statements(DoubtResult result) =>
    [
        .. result.Sentences.OrderByDescending(sentence => sentence.Key == result.Foremost)
            .ThenBy(sentence => sentence.Share.Share is > Certain or < 1 - Certain)
            .Select(sentence => new DrawnShare(sentence.Statement, DoubtWords.Share(sentence.Share.Share), sentence.Share.Share, sentence.Share.Low, sentence.Share.High, sentence.IsOwn)),
    ];

    // Where most cars have dropped out, a band turns for that reason alone.
    private static DrawnBand Band(DoubtResult result, string name, string heading, string caption, Scale scale, bool isFront, double least)
    {
        TraceBand trace = result.Traces.First(one => one.Name == name);
        double End(BandRow row, double value) => 2 * row.Cars >= result.TraceCars ? value : double.NaN;
        return new DrawnBand(heading, caption, scale, isFront, least, trace.Step, [.. trace.Rows.Select(row => End(row, row.Low))], [.. trace.Rows.Select(row => End(row, row.High))], trace.Own);
    }
}
