using System.Globalization;
using LaunchSim.Charts;
using LaunchSim.Charts.Fits;
using LaunchSim.Reports.Numbers;
using LaunchSim.Scenarios;

namespace LaunchSim.Passes.Fitting;

/// <summary>Pictures of a fit: every channel with both predictions and what is left of it.</summary>
public static class FitPictures
{
    /// <summary>The pages; none without a log.</summary>
    /// <param name="result">What came of the fit.</param>
    /// <param name="file">The scenario that was fitted.</param>
    /// <param name="readout">The units.</param>
    /// <param name="program">The program and its version.</param>
    public static IReadOnlyList<Picture> Of(FitResult result, Scenario file, Readout readout, string program)
    {
        ArgumentNullException.ThrowIfNull(result);
        ArgumentNullException.ThrowIfNull(file);
        return FitSheet.Pictures(new FitSheetData
        {
            Title = FitWords.Conclusion(result),
            Explanation = "Dots are what was measured, the line is the fit, the dotted line the file. Below: measured less fit; the band is twice the noise.",
            Imprint = string.Create(CultureInfo.InvariantCulture, $"{file.Name} · {file.SourceFile} · {file.ContentHash[..8]} · {program}"),
            Channels = [.. result.Channels.Select(channel => Channel(channel, readout))],
        });
    }

    private static DrawnChannel Channel(ChannelFit channel, Readout readout) => new(
        $"{channel.Series.Quantity.Words}, {channel.Pass}",
        channel.Series.Quantity.Words,
        FitWords.FineScale(channel.Series.Quantity, readout),
        channel.Series.Quantity.Key.StartsWith("front", StringComparison.Ordinal),
        channel.Noise,
        [.. channel.Course.Select(point => point.Time)],
        [.. channel.Course.Select(point => point.Measured)],
        [.. channel.Course.Select(point => point.Before)],
        [.. channel.Course.Select(point => point.After)]);
}
