using LaunchSim.Figures;
using LaunchSim.Reports.Numbers;
using LaunchSim.Reports.Words;
using LaunchSim.Scenarios;
using LaunchSim.Scenarios.Units;

namespace LaunchSim.Reports.Tests.Words;

/// <summary>The sentences held against the figures that they tell.</summary>
public class SummaryTests
{
    public static TheoryData<string> Cars => [.. Files.TestCars];

    private static FigureSet Figures(string file, params (string, string)[] set)
    {
        Scenario scenario = StandingCheck.Reader(ReadPurpose.Run).Read(file, set).Scenario!;
        return LaunchOutcome.Of(scenario, CancellationToken.None).Figures;
    }

    private static string One(Action<FigureSet, Readout, List<Sentence>> subject, FigureSet figures)
    {
        var said = new List<Sentence>();
        subject(figures, new Readout(UnitSystem.Si), said);
        return string.Join(' ', said.Select(sentence => sentence.Text));
    }

    [Theory]
    [MemberData(nameof(Cars))]
    public void Say_AnyCar_AgreesWithItsFigures(string name)
    {
        FigureSet figures = Figures(Files.Test(name));
        string gaps = One(GapWords.Say, figures), rise = One(RiseWords.Say, figures), load = One(RearLoadWords.Say, figures);

        Assert.Equal(figures["gap_lag_s"] > 0.002, gaps.StartsWith("The rear gap moves first", StringComparison.Ordinal));
        Assert.Equal(figures["gap_lag_s"] < -0.002, gaps.StartsWith("The front gap moves first", StringComparison.Ordinal));
        Assert.Equal(figures["rise_lag_s"] >= 0.005, rise.StartsWith("The rear comes up first", StringComparison.Ordinal));
        Assert.Equal(figures["rise_lag_s"] <= -0.005, rise.StartsWith("The front comes up first", StringComparison.Ordinal));
        Assert.Equal(figures["hit_n"] > figures["rear_tire_load_static_n"], load.Contains("above the standing car's", StringComparison.Ordinal));
        Assert.Equal(figures["slip_beyond_peak_time_s"] > 0, One(GripWords.Say, figures).StartsWith("The rear tyres spin", StringComparison.Ordinal));
        Assert.Equal(figures["front_tire_zero_load_time_s"] > 0, One(TireWords.Front, figures).Contains("leave the ground", StringComparison.Ordinal));
        Assert.Equal(figures["rear_top_stop_count"] > 0, One(StopWords.Say, figures).Contains("rear dampers top out", StringComparison.Ordinal));
        Assert.Equal(figures["separation_peak_m"] >= 0.0005, One(SeparationWords.Say, figures).Contains("separates by", StringComparison.Ordinal));
        Assert.Equal(figures["squat_peak_m"] <= -0.0005, One(SeparationWords.Say, figures).Contains("squats by", StringComparison.Ordinal));
    }

    [Fact]
    public void Say_CarThatGoesOver_SaysFirstThatTheModelNoLongerHolds()
    {
        (string, string)[] over = [("car.cg_height", "48 in"), ("rear.wheelie_bar.rate", "1 lb/in"), ("rear.tire.grip", "3.5")];
        FigureSet figures = Figures(Files.DoorCar, over);

        Assert.True(figures["pitch_nose_up_largest_rad"] > 0.6);
        Assert.StartsWith("The car goes over", Summary.Of(figures, new Readout(UnitSystem.Shop))[0].Text, StringComparison.Ordinal);
        Assert.Empty(One(PitchWords.Say, Figures(Files.DoorCar)));
    }

    [Fact]
    public void Say_NoTorque_SaysThatNothingMoves()
    {
        FigureSet figures = Figures(Files.DoorCar, ("driveline.torque", "0 0 0 0 0 lb-ft"));

        Assert.Equal("Neither end rises over the ground in the first 0.4 s.", One(RiseWords.Say, figures));
        Assert.Equal("Neither gap ever opens by 6.35 mm.", One(GapWords.Say, figures));
        Assert.Equal("The rear neither separates nor squats.", One(SeparationWords.Say, figures));
        Assert.Equal("No damper reaches a stop.", One(StopWords.Say, figures));
        Assert.Contains("there is none", One(RearLoadWords.Say, figures), StringComparison.Ordinal);
    }

    [Fact]
    public void Say_RunShorterThanTheWindows_NamesTheRun()
    {
        FigureSet figures = Figures(Files.DoorCar, ("run.duration", "0.1 s"));

        Assert.EndsWith("in the 0.100 s of this run.", One(RiseWords.Say, figures), StringComparison.Ordinal);
        Assert.Contains("at most in the 0.100 s of this run, at", One(RearLoadWords.Say, figures), StringComparison.Ordinal);
    }

    [Fact]
    public void Say_LowPointInAShift_SaysThatItIsTheShifts()
    {
        FigureSet figures = Figures(System.IO.Path.Combine(Files.Root, "scenarios", "converter-car.yaml"));

        Assert.Contains(", in the middle of a shift, which is", One(RearLoadWords.Say, figures), StringComparison.Ordinal);
        Assert.DoesNotContain("shift", One(RearLoadWords.Say, Figures(Files.DoorCar)), StringComparison.Ordinal);
    }

    [Fact]
    public void Say_TorqueBackwards_WritesNoZeros()
    {
        FigureSet figures = Figures(Files.DoorCar, ("driveline.torque", "0 -3900 -4400 -4800 -4800 lb-ft"));

        Assert.DoesNotContain(" 0.0 ", One(SeparationWords.Say, figures) + One(GripWords.Say, figures), StringComparison.Ordinal);
    }

    [Fact]
    public void Limits_ByDriveline_NameTheTorqueThatIsKnown()
    {
        var said = new List<string>();
        LimitWords.Say(Figures(Files.Test("clutch")), false, new Readout(UnitSystem.Shop), said);
        LimitWords.Say(Figures(Files.DoorCar), true, new Readout(UnitSystem.Shop), said);

        Assert.Matches(@"the driveshaft carries \d+ lb-ft at its largest", said[1]);
        Assert.Contains("the axle shafts together carry 4800 lb-ft", said[6], StringComparison.Ordinal);
        Assert.StartsWith("Grip is that of the table", said[3], StringComparison.Ordinal);
        Assert.StartsWith("One grip", said[8], StringComparison.Ordinal);
    }

    private static IReadOnlyList<string> Foremost(string file, params (string, string)[] set)
    {
        Scenario scenario = StandingCheck.Reader(ReadPurpose.Run).Read(file, set).Scenario!;
        return [.. Summary.Foremost(LaunchOutcome.Of(scenario, CancellationToken.None), new Readout(UnitSystem.Shop)).Select(sentence => sentence.Text)];
    }

    [Theory]
    [MemberData(nameof(Cars))]
    public void Foremost_AnyCar_IsThreeSentencesOfTheSummary(string name)
    {
        IReadOnlyList<string> foremost = Foremost(Files.Test(name));
        List<string> all = [.. Summary.Of(Figures(Files.Test(name)), new Readout(UnitSystem.Shop)).Select(sentence => sentence.Text)];

        Assert.Equal(3, foremost.Count);
        Assert.All(foremost, sentence => Assert.Contains(all, whole => whole.StartsWith(sentence[..^1], StringComparison.Ordinal)));
        Assert.All(foremost, sentence => Assert.True(sentence.EndsWith('.') && !sentence.Contains(';', StringComparison.Ordinal)));
    }

    [Fact]
    public void Foremost_CalmCar_SaysWhoComesUpTheTravelLeftAndTheGripToSpare()
    {
        IReadOnlyList<string> said = Foremost(Files.DoorCar);

        Assert.StartsWith("The front comes up first", said[0], StringComparison.Ordinal);
        Assert.StartsWith("The rear separates by", said[1], StringComparison.Ordinal);
        Assert.StartsWith("The rear tyres hold", said[2], StringComparison.Ordinal);
    }

    [Fact]
    public void Foremost_WhatIsAlarming_ComesFirst()
    {
        Assert.StartsWith("The rear tyres spin", Foremost(Files.Test("spins"))[0], StringComparison.Ordinal);

        IReadOnlyList<string> topsOut = Foremost(Files.Test("tops-out"));
        Assert.StartsWith("The rear dampers top out", topsOut[0], StringComparison.Ordinal);
        Assert.DoesNotContain(topsOut, sentence => sentence.StartsWith("The rear separates", StringComparison.Ordinal));

        IReadOnlyList<string> over = Foremost(Files.DoorCar, ("car.cg_height", "48 in"), ("rear.wheelie_bar.rate", "1 lb/in"), ("rear.tire.grip", "3.5"));
        Assert.StartsWith("The car goes over", over[0], StringComparison.Ordinal);
        Assert.StartsWith("The rear tyres leave the ground", over[1], StringComparison.Ordinal);

        Assert.StartsWith("The run stopped at", Foremost(Files.Test("stalls"))[0], StringComparison.Ordinal);
    }
}
