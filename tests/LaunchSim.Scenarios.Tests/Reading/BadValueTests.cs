namespace LaunchSim.Scenarios.Tests.Reading;

/// <summary>One thing wrong in the door car: exactly one error, at its place, with what to do.</summary>
public class BadValueTests
{
    [Theory]
    [InlineData("wheelbase: 105.5 in", "wheelbase: 105.5", "without a unit", "105.5 in")]
    [InlineData("wheelbase: 105.5 in", "wheelbase: 105,5 in", "a comma between digits", "105.5 in")]
    [InlineData("wheelbase: 105.5 in", "wheelbase: 105.5 inn", "`inn`", "`in`")]
    [InlineData("wheelbase: 105.5 in", "wheelbase: 105.5 lb", "a mass", "in, ft, mm")]
    [InlineData("wheelbase: 105.5 in", "wheelbase: .nan", "finite", "measured number")]
    [InlineData("wheelbase: 105.5 in", "wheelbase: NaN in", "finite", "measured number")]
    [InlineData("wheelbase: 105.5 in", "wheelbase: -.inf in", "finite", "measured number")]
    [InlineData("wheelbase: 105.5 in", "wheelbase: 1e400 in", "too large", "measured number")]
    [InlineData("wheelbase: 105.5 in", "wheelbase: ١٠٥ in", "digits other than 0 to 9", "105 in")]
    [InlineData("wheelbase: 105.5 in", "wheelbase: 105 106 in", "2 numbers", "keep one")]
    [InlineData("wheelbase: 105.5 in", "wheelbase: -105 in", "`-105 in`", "sign")]
    [InlineData("wheelbase: 105.5 in", "wheelbase: 0 in", "`0 in`", "")]
    [InlineData("wheelbase: 105.5 in", "wheelbase:", "nothing after", "wheelbase: 105.5 in")]
    [InlineData("wheelbase: 105.5 in", "wheelbase: null", "does not begin with a number", "")]
    [InlineData("wheelbase: 105.5 in", "wheelbase: on", "does not begin with a number", "")]
    [InlineData("wheelbase: 105.5 in", "wheelbase: 1:30", "unit", "")]
    [InlineData("wheelbase: 105.5 in", "wheelbase: [105.5 in]", "a list", "on one line")]
    [InlineData("wheelbase: 105.5 in", "wheelbase: {a: 1 in}", "a section", "wheelbase: 105.5 in")]
    [InlineData("wheelbase: 105.5 in", "wheelbase: 105.5 in ±1", "± after the unit", "21 ±1 in")]
    [InlineData("wheelbase: 105.5 in", "wheelbase: 105.5 in ±1 %", "percent at one number", "105.5 ±1.055 in")]
    [InlineData("wheelbase: 105.5 in", "wheelbase: ± 1 in", "without a number before", "21 ±1 in")]
    [InlineData("wheelbase: 105.5 in", "wheelbase: 105.5 in\n  wheelbase: 106 in", "a second time", "line 8")]
    [InlineData("wheelbase: 105.5 in", "wheelbse: 105.5 in", "unknown key `wheelbse`", "`wheelbase`")]
    [InlineData("wheelbase: 105.5 in", "wheelbase: 105.5 in\n  grip: 1", "unknown key `grip`", "known as")]
    [InlineData("front: 1560 lb", "front: 707 kg", "a mass", "kgf")]
    [InlineData("  cg_height: 21 in\n", "", "no `cg_height`", "cg_height: 21 in")]
    [InlineData("grip: 2.3", "grip: 2.3 ±5 %", "percent at one number", "2.3 ±0.115")]
    [InlineData("grip: 2.3", "grip: 2.3 lb", "a mass", "bare number")]
    [InlineData("sliding_ratio: 0.65", "sliding_ratio: 1", "`1`", "")]
    [InlineData("sliding_ratio: 0.65", "sliding_ratio: 0", "`0`", "")]
    [InlineData("set: 6", "set: 13", "outside the entered ones", "")]
    [InlineData("set: 6", "set: -1", "outside the entered ones", "")]
    [InlineData("6: 0 35 60 105 155 225 lb", "0.0: 0 35 60 105 155 225 lb", "a second time", "")]
    [InlineData("6: 0 35 60 105 155 225 lb", "six: 0 35 60 105 155 225 lb", "not a number", "")]
    [InlineData("6: 0 35 60 105 155 225 lb", "6: 0 35 60 105 155 lb", "5 numbers", "")]
    [InlineData("6: 0 35 60 105 155 225 lb", "6: 0 35 60 55 155 225 lb", "falls from 60 to 55", "")]
    [InlineData("use: 2}", "use: 4}", "hole `4`", "")]
    [InlineData("use: 2}", "used: 2, use: 2}", "unknown key `used`", "`use`")]
    [InlineData(", use: 2}", "}", "no `use`", "")]
    [InlineData("1: 14.0 15.4 in", "3: 14.0 15.4 in", "a second time", "")]
    [InlineData("0 40 70 130 190 280 lb", "0 40 70 60 190 280 lb", "falls from 70 to 60", "")]
    [InlineData("0 40 70 130 190 280 lb", "0 40 70 130 190 lb", "5 numbers", "")]
    [InlineData("0 40 70 130 190 280 lb", "0 40 70 130 190 280", "without a unit", "lb")]
    [InlineData("0 40 70 130 190 280 lb", "5 40 70 130 190 280 lb", "start at 5", "")]
    [InlineData("0 40 70 130 190 280 lb", "0 40 ±5 70 130 190 280 lb", "± at a number of a row", "±10 %")]
    [InlineData("0 40 70 130 190 280 lb", "0 40 70 130 190 280 lb, clicks: {0: 0 1 2 3 4 5 lb}", "`force` and `clicks`", "")]
    [InlineData("speed: 0 1 2 5 10 20 in/s, force: 0 40", "speed: 0 1 2 2 10 20 in/s, force: 0 40", "`2` after `2`", "rising")]
    [InlineData("speed: 0 1 2 5 10 20 in/s, force: 0 40", "speed: 1 1.5 2 5 10 20 in/s, force: 0 40", "start at 1", "")]
    [InlineData("unsprung: 340 lb", "unsprung: 1500 lb", "weighs as much", "")]
    [InlineData("type: four-link", "type: fourlink", "`fourlink`", "`four-link`")]
    [InlineData("axle: 1.0 7.6 in, body: 21.0 9.0 in", "axle: 1.0 7.6 in, body: 1.0 7.6 in", "no length", "")]
    [InlineData("axle: 1.0 7.6 in", "axle: 1.0 -7.6 in", "below the floor", "")]
    [InlineData("duration: 1.8 s", "duration: 0.5 ms", "longer than the run of 0.5 ms", "more finely")]
    [InlineData("wheelbase: 105.5 in", "wheelbase: 8 ft 9.5 in", "a number after a unit", "one unit once")]
    [InlineData("marks: 60 ft", "marks: 60 ft 330 ft", "a number after a unit", "one unit once")]
    [InlineData("axle: 1.0 7.6 in", "axle: 1.0 7.6 in 2", "a number after a unit", "one unit once")]
    [InlineData("axle: 1.0 7.6 in", "axle: 1.0 in", "1 number", "")]
    [InlineData("axle: 1.0 7.6 in", "axle: 1.0 7.6 in ±5 %", "percent at a point", "")]
    [InlineData("wheel: -58 4 in", "wheel: {holes: {1: -58 4 in}, use: 1}", "a section", "")]
    [InlineData("torsional_rate: 14 kN·m/rad", "torsional_rate: 14 kN·m", "a torque", "kN·m/rad")]
    [InlineData("set: 16 psi", "set: 40 psi, torsionl: 3 psi", "unknown key `torsionl`", "")]
    [InlineData("measured: 16 psi, set: 16 psi, vertical: 40", "measured: 16 psi, set: 12 psi, vertical: 400", "vertical rate is not above 0", "")]
    [InlineData("time: 0 0.05 0.25 0.60 1.0 s", "time: 0 0.05 0.25 0.25 1.0 s", "`0.25` after `0.25`", "")]
    [InlineData("share: 0.9 1.0", "share: -0.9 1.0", "`-0.9`", "")]
    [InlineData("sample: 1 ms", "sample: 3 s", "`3 s`", "")]
    [InlineData("sample: 1 ms", "sample: 0.5 µs", "`0.5 µs`", "")]
    [InlineData("tolerance: 1e-8", "tolerance: 1", "`1`", "")]
    [InlineData("marks: 60 ft", "marks: 330 60 ft", "`60` after `330`", "")]
    [InlineData("mass: 40 lb", "mass: -1 lb", "`-1 lb`", "")]
    [InlineData("    - {mass: 40 lb, at: -25 18 in}", "    - 40 lb", "where a section is due", "")]
    [InlineData("rear.spring.rate: {values: 130 150 175 lb/in", "rear.spring.rat: {values: 130 150 175 lb/in", "which no scenario has", "rear.spring.rate")]
    [InlineData("values: 130 150 175 lb/in", "values: 130 150 175", "without a unit", "")]
    [InlineData("values: 130 150 175 lb/in", "values: 130 0 lb/in", "the choice `0 lb/in`", "")]
    [InlineData("values: 0 to 12 by 1", "values: 0 to 13 by 1", "the choice `13`", "")]
    [InlineData("values: 0 to 12 by 1", "values: 0 to 12 by 0", "`0 to 12 by 0`", "")]
    [InlineData("values: 0 to 12 by 1", "values: 12 to 0 by 1", "`12 to 0 by 1`", "")]
    [InlineData("values: 0 to 12 by 1", "values: 0 to 12", "`0 to 12`", "by")]
    [InlineData("values: all, minutes: 12", "values: 1 2 4, minutes: 12", "`4` among the values", "")]
    [InlineData("values: all, minutes: 12", "values: all", "no `minutes`", "")]
    [InlineData("values: all, minutes: 12", "values: all, minutes: -1", "`-1` for `minutes`", "")]
    public void ReadText_OneThingWrong_GivesOneErrorAtItsPlace(string part, string replacement, string found, string mend)
    {
        string text = Files.DoorCarWith(part, replacement);
        ReadResult result = new ScenarioReader().ReadText(text, "x.yaml");
        Diagnostic error = Assert.Single(result.Errors);
        Assert.Null(result.Scenario);
        Assert.Contains(found, error.Message, StringComparison.Ordinal);
        Assert.Contains(mend, error.Mend, StringComparison.Ordinal);
        Assert.StartsWith($"x.yaml:{error.Line}:{error.Column}: error: ", error.ToString(), StringComparison.Ordinal);
        int at = Enumerable.Range(0, text.Length).First(i => text[i] != Files.DoorCarText[i]);
        int line = text[..at].Count(c => c == '\n') + 1;

        // A missing key is placed at its section's name; a doubled key at the second.
        Assert.InRange(error.Line, line - (error.Message.StartsWith("no `", StringComparison.Ordinal) ? 4 : 0), line + 1);
    }

    [Theory]
    [InlineData("{front: 1560 lb, rear: 1440 lb}", "{front: 1,5 lb, rear: 1440 lb}", "a comma, or a missing space after the colon", "1.5 lb")]
    [InlineData("{front: 1560 lb, rear: 1440 lb}", "{front:1560 lb, rear: 1440 lb}", "a comma, or a missing space after the colon", "space after each colon")]
    [InlineData("{1: 14.0 15.4 in,", "{1: 14.0, 15.4 in,", "a comma, or a missing space after the colon", "")]
    [InlineData("lower: {axle: 1.0 7.6 in,", "lower: {axle: 1.0, 7.6 in,", "a comma, or a missing space after the colon", "")]
    [InlineData("{0: 0 10 20 40 65 105 lb,", "{0:0 10 20 40 65 105 lb,", "a comma, or a missing space after the colon", "")]
    public void ReadText_CommaOrGluedColonInBraces_IsNamed(string part, string replacement, string found, string mend)
    {
        IReadOnlyList<Diagnostic> errors = new ScenarioReader().ReadText(Files.DoorCarWith(part, replacement), "x.yaml").Errors;
        Assert.Contains(errors, error => error.Message.Contains(found, StringComparison.Ordinal) && error.Mend.Contains(mend, StringComparison.Ordinal));
    }

    [Fact]
    public void ReadText_ManyThingsWrong_AreAllReportedInTheOrderOfTheFile()
    {
        string text = Files.DoorCarWith("wheelbase: 105.5 in", "wheelbase: 105.5")
            .Replace("vertical_rate: 800 lb/in", "vertical_rate: 800 lb/inn", StringComparison.Ordinal)
            .Replace("set: 6", "set: 66", StringComparison.Ordinal)
            .Replace("duration: 1.8 s", "duratoin: 1.8 s", StringComparison.Ordinal);
        IReadOnlyList<Diagnostic> errors = new ScenarioReader().ReadText(text, "x.yaml").Errors;
        Assert.Equal(["car.wheelbase", "rear.damper.extension.set", "rear.tire.vertical_rate", "run.duratoin"], errors.Select(error => error.Path));
    }

    [Fact]
    public void ReadText_CurveThatFoldsBack_IsRefused()
    {
        string text = Files.DoorCarWith("slip_stiffness: 40", "slip_stiffness: 100").Replace("sliding_ratio: 0.65", "sliding_ratio: 0.2", StringComparison.Ordinal);
        Diagnostic error = Assert.Single(new ScenarioReader().ReadText(text, "x").Errors);
        Assert.Contains("folds back", error.Message, StringComparison.Ordinal);
        Assert.Equal("rear.tire.slip_stiffness", error.Path);
        Assert.Contains("raise sliding_ratio", error.Mend, StringComparison.Ordinal);
    }

    [Fact]
    public void ReadText_StiffnessThatBowsUpward_IsAWarning()
    {
        ReadResult result = new ScenarioReader().ReadText(Files.DoorCarWith("slip_stiffness: 40", "slip_stiffness: 30"), "x");
        Assert.NotNull(result.Scenario);
        Assert.Contains("bows upward", Assert.Single(result.Warnings).Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("wheel: -58 4 in", "wheel: 58 4 in", "not behind the rear axle")]
    [InlineData("axle: 1.0 7.6 in, body: 21.0 9.0 in", "axle: 21.0 9.0 in, body: 1.0 7.6 in", "the lower bar runs backward")]
    public void ReadText_PartThatPointsTheOtherWay_IsAWarning(string part, string replacement, string found)
    {
        ReadResult result = new ScenarioReader().ReadText(Files.DoorCarWith(part, replacement), "x");
        Assert.Empty(result.Errors);
        Assert.Contains(found, Assert.Single(result.Warnings).Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("clutch: {time: 0 0.05 0.6 s, capacity: 220 430 800 lb-ft}", "", "no `clutch` (or converter)")]
    [InlineData("shift_at: 6800 rpm", "shift_at: 6800 6800 6800 rpm", "3 shift speeds for 3 gears")]
    [InlineData(", shift_at: 6800 rpm", "", "no `shift_at`")]
    [InlineData("efficiency: 0.95", "efficiency: 1.01", "`1.01`")]
    [InlineData("launch_speed: 4200 rpm", "launch_speed: 4200 mph", "a speed")]
    public void ReadText_WrongEngine_IsRefused(string part, string replacement, string found)
    {
        Assert.Contains(part, Samples.EngineClutch, StringComparison.Ordinal);
        string text = Samples.WithDriveline(Samples.EngineClutch.Replace(part, replacement, StringComparison.Ordinal));
        Assert.Contains(found, Assert.Single(new ScenarioReader().ReadText(text, "x").Errors).Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("torque_ratio: 2.0 1.55 1.2 1.0 1.0", "torque_ratio: 2.0 1.55 1.2 1.0 1.06", "comes to 1.007")]
    [InlineData("speed_ratio: 0 0.4 0.7 0.85 0.95", "speed_ratio: 0 0.4 0.7 0.85 1", "`1` in")]

    // Both ends of the second stretch give 0.96 and 0.6, the parabola between them 1.2.
    [InlineData("speed_ratio: 0 0.4 0.7 0.85 0.95, capacity_factor: 190 196 218 265 410 rpm/√(lb-ft), torque_ratio: 2.0 1.55 1.2 1.0 1.0", "speed_ratio: 0 0.4 0.9, capacity_factor: 190 196 218 rpm/√(lb-ft), torque_ratio: 2.4 2.4 0.6667", "comes to 1.0")]
    public void ReadText_WrongConverter_IsRefused(string part, string replacement, string found)
    {
        Assert.Contains(part, Samples.EngineConverter, StringComparison.Ordinal);
        string text = Samples.WithDriveline(Samples.EngineConverter.Replace(part, replacement, StringComparison.Ordinal));
        Assert.Contains(found, Assert.Single(new ScenarioReader().ReadText(text, "x").Errors).Message, StringComparison.Ordinal);
    }
}
