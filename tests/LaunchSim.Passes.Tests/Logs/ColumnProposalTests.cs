using LaunchSim.Passes.Logs;
using LaunchSim.Passes.Logs.Proposing;
using LaunchSim.Passes.Measured;
using LaunchSim.Scenarios.Recorded;

namespace LaunchSim.Passes.Tests.Logs;

[Collection("door launch")]
public class ColumnProposalTests
{
    private const string Tail = "0.00,0,118.2,0.01\n0.01,10,118.9,0.5\n0.02,400,130.1,1.2\n0.03,1900,141.0,0.9\n";

    [Theory]
    [InlineData("Driveshaft RPM", "driveshaft_speed", "rpm")]
    [InlineData("DS_rpm", "driveshaft_speed", "rpm")]
    [InlineData("Engine Speed [1/min]", "engine_speed", "rpm")]
    [InlineData("Rear Wheel Speed (mph)", "wheel_speed", "mph")]
    [InlineData("WheelSpeedFront (km/h)", "front_wheel_speed", "km/h")]
    [InlineData("Shock LR [mm]", "rear_damper_travel", "mm")]
    [InlineData("Damper_Pos_FL(mm)", "front_damper_travel", "mm")]
    [InlineData("Rear Ride Height [in]", "rear_ride_height", "in")]
    [InlineData("Long Accel (G)", "acceleration", "g")]
    [InlineData("Pitch Rate [deg/s]", "pitch_rate", "deg/s")]
    [InlineData("GPS Speed (mph)", "speed", "mph")]
    public void Of_UsualNames_AreProposedAndSure(string name, string quantity, string unit)
    {
        ProposedColumn column = Propose($"Time (s),{name},x,y\n" + Tail).Columns[1];

        Assert.Equal((quantity, unit), (column.Quantity, column.Unit));
        Assert.Equal(Certainty.Sure, column.Certainty);
    }

    [Theory]
    [InlineData("Shock [mm]", "front or rear")]
    [InlineData("Oil Pressure [psi]", "nothing that the prediction has")]
    [InlineData("Lateral G", "nothing that the prediction has")]
    [InlineData("Rear Shock [V]", "volts")]
    [InlineData("Accel", "no unit in its name")]
    [InlineData("RPM", "whose turning it is")]
    [InlineData("Wheel Speed Rear", "mph")]
    public void Of_NamesThatDoNotTell_AreLeftOpenWithTheReason(string name, string why)
    {
        LogProposal proposal = Propose($"Time (s),a,{name},y\n0.00,1,0.1,1\n0.01,2,1.9,2\n0.02,3,70,2\n0.03,4,80,2\n");
        ProposedColumn column = proposal.Columns[2];

        Assert.NotEqual(Certainty.Sure, column.Certainty);
        Assert.Contains(why, column.Why, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("Time (s)", 0.01, "s", Certainty.Sure)]
    [InlineData("Time", 0.01, "s", Certainty.Sure)]
    [InlineData("Time", 10, "ms", Certainty.Sure)]
    [InlineData("Time", 0.1, "s", Certainty.Likely)]
    [InlineData("timestamp [ms]", 5, "ms", Certainty.Sure)]
    public void Of_Times_AreToldByTheRateThatLoggersHave(string name, double spacing, string unit, Certainty certainty)
    {
        string rows = string.Concat(Enumerable.Range(0, 30).Select(i => FormattableString.Invariant($"{i * spacing},{i}\n")));
        ProposedColumn time = Propose($"{name},RPM\n{rows}").Time!;

        Assert.Equal((unit, certainty), (time.Unit, time.Certainty));
    }

    /// <summary>In a language that is not known here units, rates and the look of a time still tell something.</summary>
    [Fact]
    public void Of_NamesInAnotherLanguage_SaysWhatUnitsTell()
    {
        LogProposal proposal = Propose("Zeit;Drehzahl;Geschw.;Hoehe\n[h:mm:ss];[1/min];[km/h];[mm]\n14:03:11,000;2612;0,2;96\n14:03:11,010;2700;30;97\n14:03:11,020;2900;40,5;99\n");

        Assert.Equal([("time", "clock"), ("engine_speed", "rpm"), ("speed", "km/h"), (null, null)], proposal.Columns.Select(column => (column.Quantity, column.Unit)));
        Assert.Equal("14:03:11,000 to 14:03:11,020", proposal.Columns[0].Range);
        Assert.Contains("0.02 s, a row every 10 ms", proposal.Rows, StringComparison.Ordinal);
        Assert.All(proposal.Columns.Skip(1), column => Assert.Equal(Certainty.Open, column.Certainty));
        Assert.Contains("of which end?", proposal.Columns[3].Why, StringComparison.Ordinal);

        // What is open is there to be looked at, not taken.
        Assert.Contains("#    quantity: engine_speed\n#    unit: rpm\n", proposal.Text(), StringComparison.Ordinal);
        Assert.Empty(new MappingReader(MeasuredQuantities.Recorded).ReadText(proposal.Text().Replace("columns: []", "columns: [{column: Hoehe, quantity: rear_ride_height, unit: mm}]", StringComparison.Ordinal), "mapping.yaml").Errors);
    }

    [Theory]
    [InlineData("Zeit [s],a\n0.00,5\n0.01,3\n0.02,4\n", "its unit is one of time")]
    [InlineData("Zeit,a\n0.00,5\n0.01,3\n0.02,4\n", "it never falls")]
    public void Of_TimesInAnotherLanguage_AreLikely(string log, string why)
    {
        ProposedColumn time = Propose(log).Time!;

        Assert.Equal(("time", Certainty.Likely), (time.Quantity, time.Certainty));
        Assert.Contains(why, time.Why, StringComparison.Ordinal);
    }

    [Fact]
    public void Text_OfAnyProposal_ReadsBackAsAMapping()
    {
        LogProposal proposal = Propose("Time (s);DS: rpm;\"Rear, RH [mm]\";# odd [mm]\n" + Tail.Replace(',', ';'));
        MappingResult read = new MappingReader(MeasuredQuantities.Recorded).ReadText(proposal.Text(), "mapping.yaml");

        Assert.Empty(read.Errors);
        Assert.Equal(["DS: rpm", "Rear, RH [mm]"], read.Mapping!.Columns.Select(column => column.Column));
    }

    [Fact]
    public void Of_UnitsInALineBelow_AreRead()
    {
        ProposedColumn column = Propose("Time,DS,Rear RH,acc x\ns,rpm,mm,g\n" + Tail).Columns[2];

        Assert.Equal(("rear_ride_height", "mm", Certainty.Sure), (column.Quantity, column.Unit, column.Certainty));
    }

    [Fact]
    public void Of_NoNames_LeavesAllOpenButTheTime()
    {
        LogProposal proposal = Propose(Tail);

        Assert.Equal("time", proposal.Columns[0].Quantity);
        Assert.All(proposal.Columns.Skip(1), column => Assert.Equal(Certainty.Open, column.Certainty));
        Assert.Null(proposal.SureMapping());
    }

    [Fact]
    public void Read_PlainLogWithoutAMapping_TakesWhatIsSure()
    {
        var writer = new LogWriter
        {
            Columns = [("Rear RH [mm]", "rear_ride_height", value => 118 + (1e3 * value)), ("Rear Wheel [rpm]", "wheel_speed", value => value * 60 / (2 * Math.PI)), ("Front RH", "front_ride_height", value => 1e3 * value)],
        };
        using var folder = new Folder();
        LogResult read = LogReader.Read(folder.Write("log.csv", writer.Text(LogWriter.DoorLaunch)), null, LogWriter.DoorLaunch);

        Assert.Empty(read.Errors);
        Assert.Equal(["rear_ride_height", "wheel_speed"], read.Log!.Series.Select(series => series.Quantity.Key));
        Assert.Contains("taken as proposed", read.Log.Remarks[0], StringComparison.Ordinal);
    }

    private static LogProposal Propose(string log)
    {
        using var folder = new Folder();
        ProposalResult result = ColumnProposal.Of(folder.Write("log.csv", log));
        Assert.Empty(result.Errors);
        return result.Proposal!;
    }
}
