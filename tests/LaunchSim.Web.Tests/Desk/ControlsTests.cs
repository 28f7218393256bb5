using LaunchSim.Scenarios;
using LaunchSim.Scenarios.Varying;
using LaunchSim.Web.Desk;

namespace LaunchSim.Web.Tests.Desk;

public class ControlsTests
{
    [Fact]
    public void Controls_OfTheDoorCar_BeginWithItsChoicesAndTheirValues()
    {
        Scenario scenario = Shipped.Read("door-car");
        IReadOnlyList<Control> controls = Controls.Of(scenario);
        Assert.Equal(scenario.Choices.Select(choice => choice.Path), controls.TakeWhile(control => control.IsChoice).Select(control => control.Path));
        foreach ((Choice choice, Control control) in scenario.Choices.Zip(controls))
        {
            Assert.Equal(choice.Values, control.Values);
            Assert.Equal(choice.Minutes, control.Minutes);
            Assert.Contains(control.Value, control.Values.Append("40 lb"));
        }

        Assert.Equal(["car.ride_height.front", "car.ride_height.rear", "front.spring.rate"], controls.SkipWhile(control => control.IsChoice).Select(control => control.Path));
        Assert.Equal("Rear damper, extension clicks, counted from soft", controls[1].Label);
        Assert.Equal("Upper bar, hole on the body", controls[0].Label);
        Assert.Equal("Ballast 25 in behind the rear axle, 18 in up", controls[4].Label);
    }

    [Theory]
    [MemberData(nameof(Shipped.Names), MemberType = typeof(Shipped))]
    public void Controls_OfAShippedScenario_MayBePutToWhatTheyOffer(string name)
    {
        Scenario scenario = Shipped.Read(name);
        IReadOnlyList<Control> controls = Controls.Of(scenario);
        Assert.Equal(controls.Count, controls.Select(control => control.Path).Distinct().Count());
        foreach (Control control in controls)
        {
            Assert.NotEmpty(control.Label);
            Assert.DoesNotContain("[", control.Label, StringComparison.Ordinal);

            // Put to its own value, the car is the same.
            Assert.Equal(scenario.ContentHash, Put(control, control.Value)!.ContentHash);
            if (control.Range is { } range)
            {
                Assert.True(range.Step > 0 && range.From < range.To, $"{control.Path}: {range}");
                double now = double.Parse(control.Value.Split(' ')[0]);
                Assert.InRange(now, range.From, range.To);
                Assert.InRange((range.To - range.From) / range.Step, 5, 500);
                Assert.Equal(Math.Round(range.From / range.Step), range.From / range.Step, 6);
                Assert.NotNull(Read(control, $"{range.From} {control.Unit}"));
                Assert.Empty(control.Values);
            }
            else
            {
                Assert.True(control.Values.Count > 1);
                Assert.All(control.Values, value => Assert.NotNull(Read(control, value)));
            }
        }

        ScenarioEdit? Read(Control control, string value) => EditReader.Read(scenario, [(control.Path, value)]).Edits.SingleOrDefault();
        Scenario? Put(Control control, string value) => scenario.With(EditReader.Read(scenario, [(control.Path, value)]).Edits).Scenario;
    }

    [Fact]
    public void Controls_OfACarWithoutChoices_AreHolesClicksPressuresHeightsSpringsAndBallast()
    {
        string text = File.ReadAllText(Shipped.PathOf("door-car"));
        text = text[..text.IndexOf("choices:", StringComparison.Ordinal)]
            .Replace("lower: {axle: 1.0 7.6 in, body: 21.0 9.0 in}", "lower: {axle: {holes: {a: 1.0 7.6 in, b: 1.0 6.6 in}, use: a}, body: 21.0 9.0 in}", StringComparison.Ordinal)
            .Replace("    axle: -2.0 9.0 in\n", "    axle: {holes: {in: -2.0 9.0 in, out: -2.0 10.0 in}, use: in}\n", StringComparison.Ordinal)
            .Replace("  ride_height: {front: 0 in, rear: 0 in} ", "", StringComparison.Ordinal);
        Scenario scenario = StandingCheck.Reader(ReadPurpose.Run).ReadText(text, "car").Scenario!;
        Assert.Equal(
            [
                ("rear.linkage.lower.axle.use", ControlKind.Holes), ("rear.linkage.upper.body.use", ControlKind.Holes), ("rear.spring.axle.use", ControlKind.Holes), ("rear.damper.extension.set", ControlKind.Steps),
                ("rear.tire.pressure.set", ControlKind.Number), ("car.ride_height.front", ControlKind.Number), ("car.ride_height.rear", ControlKind.Number),
                ("front.spring.rate", ControlKind.Number), ("rear.spring.rate", ControlKind.Number), ("car.ballast[0].mass", ControlKind.Number),
            ],
            Controls.Of(scenario).Select(control => (control.Path, control.Kind)));
        Assert.Equal("0 in", Controls.Of(scenario).First(control => control.Path == "car.ride_height.rear").Value);
        Assert.Equal("Rear spring, hole on the axle", Controls.Of(scenario).First(control => control.Path == "rear.spring.axle.use").Label);
        Assert.All(Controls.Of(scenario), control => Assert.Null(control.Minutes));
    }

    [Theory]
    [InlineData("rear.tire.pressure.set", "16 psi", 0.5)]
    [InlineData("rear.tire.pressure.set", "1.1 bar", 0.05)]
    [InlineData("rear.tire.pressure.set", "110 kPa", 5)]
    [InlineData("rear.spring.rate", "150 lb/in", 5)]
    [InlineData("rear.spring.rate", "30 N/mm", 1)]
    [InlineData("rear.spring.rate", "30 kN/m", 1)]
    [InlineData("car.ride_height.rear", "1 in", 0.125)]
    [InlineData("car.ride_height.rear", "20 mm", 5)]
    [InlineData("car.ballast[0].mass", "40 lb", 5)]
    [InlineData("car.ballast[0].mass", "18 kg", 2)]
    public void Step_OfANumber_IsARoundOneInItsUnit(string path, string value, double step)
    {
        Scenario scenario = Shipped.Read("door-car");
        ScenarioEdit edit = Assert.Single(EditReader.Read(scenario, [(path, value)]).Edits);
        Assert.Equal(step, ControlRanges.Step(path, edit.Quantity!.Unit), 12);
    }
}
