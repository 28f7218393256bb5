using System.Globalization;
using LaunchSim.Studies.Grids;
using LaunchSim.Studies.Running;

namespace LaunchSim.Studies.Tests.Sweeps;

/// <summary>
/// A sweep over the height e of the instant centre of a car near the linear limit (stiff springs and tyres, little torque)
/// against the closed form: the rear springs' load changes by the transferred load less what the bars carry, which is
/// proportional to e over the bars' length d.
/// </summary>
public class AntiSquatSweepTests
{
    private const double Wheelbase = 2.7, Height = 0.55, Length = 1.2, Radius = 0.35, Torque = 600, Rate = 2e6, Mass = 15000 / 9.80665;

    [Theory]
    [InlineData(130, 1.5, 2.5)]
    [InlineData(3, 0.01, 0.02)]
    public void Sweep_OfTheInstantCentresHeight_FollowsTheClosedForm(double axle, double rim, double belt)
    {
        using var folder = new Folder();
        string car = folder.Path("car.yaml");
        File.WriteAllText(car, Scenario(axle, rim, belt));
        GridPlan plan = Plans.Of(car, [], ["rear_gap_at_300ms_m", "standing_anti_squat_percent"], 1e-9, "rear.linkage.pivot.up=0.05 to 0.45 by 0.05 m");
        var rows = new List<GridRow>();
        using GridStudyRun run = GridStudyRun.Open(plan, "sweep", "test", Shard.Whole, null, resume: false);
        run.Run(2, rows.Add, _ => { }, CancellationToken.None);
        int gap = plan.Figures.ToList().IndexOf("rear_gap_at_300ms_m"), percent = plan.Figures.ToList().IndexOf("standing_anti_squat_percent");

        const double frontSpin = 1;
        double spin = rim + belt, acceleration = Torque / Radius / (Mass + ((spin + frontSpin) / (Radius * Radius)));
        double transferred = ((Mass * Height * acceleration) + ((spin + frontSpin) * acceleration / Radius)) / Wheelbase;
        foreach (GridRow row in rows)
        {
            double up = 0.05 * (row.SetUp + 1);
            double pushed = ((Mass - axle) * acceleration) + (frontSpin * acceleration / (Radius * Radius));
            double springs = transferred - (((up * pushed) + (Radius * axle * acceleration) + (spin * acceleration / Radius)) / Length);

            // The springs give by some 0.05 mm, so that arms and heights are off by 1e-4 of themselves; what is left of the
            // settling at 0.3 s and of the tyres' give is of that size too. 0.2 % of the transferred load holds all of it.
            Assert.Null(row.Trouble);
            Assert.InRange((-2 * Rate * row.Figures[gap]) - springs, -0.002 * transferred, 0.002 * transferred);
            Assert.Equal(100 * up / Length * Wheelbase / Height, row.Figures[percent], 1e-6);
        }

        if (axle < 10)
        {
            // With next to no axle the springs change by 1 − percent/100 of the transferred load: none at 100 %.
            double zero = Zero([.. rows.Select(row => row.Figures[percent])], [.. rows.Select(row => row.Figures[gap])]);
            // What is left of the axle moves that by 0.3 %.
            Assert.InRange(zero, 99.5, 100.2);
        }
    }

    // Where the gap changes its sign.
    private static double Zero(double[] percents, double[] gaps)
    {
        int i = Array.FindIndex(gaps, gap => gap > 0);
        return percents[i - 1] + ((percents[i] - percents[i - 1]) * gaps[i - 1] / (gaps[i - 1] - gaps[i]));
    }

    private static string Scenario(double axle, double rim, double belt)
    {
        string end = $"extension: {{speed: 0 1 m/s, force: 0 60000 N}}, compression: {{speed: 0 1 m/s, force: 0 60000 N}}, travel: {{extend: 0.1 m, compress: 0.1 m, stop_rate: 1e6 N/m, stop_damping: 1000 N·s/m}}";
        return string.Create(CultureInfo.InvariantCulture, $$"""
            name: Small launch of a stiff car on ladder bars
            base: {{Path.Combine(Files.Root, "scenarios", "ladder-bar.yaml")}}
            choices: {}
            change:
              car.wheelbase: {{Wheelbase}} m
              car.scales: {front: 7500 N, rear: 7500 N}
              car.cg_height: {{Height}} m
              car.pitch_inertia: 1800 kg·m²
              car.aero: {drag_area: 0 m², height: 0.5 m, air_density: 1.2 kg/m³}
              front.unsprung: 40 kg
              front.spring: {rate: {{Rate}} N/m, motion_ratio: 1}
              front.damper: {motion_ratio: 1, {{end}}}
              front.tire.loaded_radius: {{Radius}} m
              front.tire.vertical_rate: 2e7 N/m
              front.tire.vertical_damping: 20000 N·s/m
              front.tire.rolling_resistance: 0
              front.tire.spin_inertia: 1 kg·m²
              rear.unsprung: {{axle}} kg
              rear.housing_inertia: 0.001 kg·m²
              rear.linkage: {type: ladder-bar, pivot: {{Length}} 0.25 m}
              rear.spring: {rate: {{Rate}} N/m, axle: 0 0.35 m, body: 0 0.75 m}
              rear.damper: { {{end}}}
              rear.tire.loaded_radius: {{Radius}} m
              rear.tire.vertical_rate: 2e7 N/m
              rear.tire.vertical_damping: 20000 N·s/m
              rear.tire.rolling_resistance: 0
              rear.tire.pressure: {measured: 14 psi, set: 14 psi, vertical: 0.1 lb/in/psi, torsional: 0.001 kN·m/rad/psi, grip: 0 /psi}
              rear.tire.carcass: {torsional_rate: 100 kN·m/rad, torsional_damping: 200 N·m·s/rad, rim_inertia: {{rim}} kg·m², belt_inertia: {{belt}} kg·m²}
              driveline: {type: axle-torque, time: 0 0.1 1 s, torque: 0 {{Torque}} {{Torque}} N·m}
              run: {duration: 0.35 s}
            """);
    }
}
