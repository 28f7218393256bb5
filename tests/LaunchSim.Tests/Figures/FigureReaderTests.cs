using LaunchSim.Dynamics;
using LaunchSim.Figures;
using LaunchSim.Launch;
using LaunchSim.Tests.Cars;
using LaunchSim.Vehicle;
using Xunit;

namespace LaunchSim.Tests.Figures;

public sealed class FigureReaderTests(DoorCarLaunch launch) : IClassFixture<DoorCarLaunch>
{
    /// <summary>What studies ask of every launch.</summary>
    private static readonly string[] StudyKeys =
    [
        "standing_anti_squat_percent", "rear_tire_load_static_n", "rise_lag_s", "front_rise_peak_m", "rear_rise_peak_m", "gap_lag_s",
        "separation_peak_m", "separation_peak_time_s", "separation_peak_travel_left_m", "squat_peak_m", "squat_peak_travel_left_m",
        "hit_n", "hit_time_s", "lowest_rear_load_after_hit_n", "load_unrest_n", "grip_margin_lowest_ratio", "grip_margin_lowest_time_s",
        "slip_beyond_peak_time_s", "front_tire_leaves_s",
        "front_top_stop_first_s", "front_top_stop_force_n", "front_bottom_stop_first_s", "front_bottom_stop_force_n",
        "rear_top_stop_first_s", "rear_top_stop_force_n", "rear_bottom_stop_first_s", "rear_bottom_stop_force_n",
        "acceleration_largest_mps2", "acceleration_largest_time_s", "pitch_nose_up_largest_rad", "mark_1_time_s", "mark_1_beam_time_s", "run_end_s",
    ];

    private static readonly RunSettings Settings = new() { Duration = 0.8, Marks = [0.5], Rollout = 0.2 };

    public static TheoryData<Bars, Power> Kinds
    {
        get
        {
            var kinds = new TheoryData<Bars, Power>();
            foreach (Bars bars in Enum.GetValues<Bars>())
            {
                foreach (Power power in Enum.GetValues<Power>())
                {
                    kinds.Add(bars, power);
                }
            }

            return kinds;
        }
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Read_RandomCars_GivesWhatTheWholeReadingGives(Bars bars, Power power)
    {
        using var reader = new FigureReader(FigureSelection.Of(1, StudyKeys));
        var values = new double[StudyKeys.Length];
        foreach (Car car in RandomCar.Series(bars, power, 40))
        {
            LaunchSolution solution = LaunchRunner.Create(StandingCar.Find(car), 1e-6).Solve(Settings);
            reader.Read(solution, Settings, values);
            Assert.False(reader.ObservedWhole);
            FigureSet whole = LaunchFigures.Read(solution, Settings);
            for (int i = 0; i < values.Length; i++)
            {
                Figure figure = whole.Get(StudyKeys[i]);
                Assert.Equal(figure.Reason, reader.Reason(i));
                Assert.Equal(figure.Value ?? double.NaN, values[i]);
            }
        }
    }

    [Fact]
    public void Solve_MemoryOfAnotherCar_GivesTheSameLaunch()
    {
        LaunchSolution? kept = null;
        foreach (Car car in RandomCar.Series(Bars.FourLink, Power.Torque, 3).Concat(RandomCar.Series(Bars.Ladder, Power.Clutch, 3)))
        {
            StandingCar standing = StandingCar.Find(car);
            kept = LaunchRunner.Create(standing, 1e-6).Solve(Settings, kept);
            LaunchSolution fresh = LaunchRunner.Create(standing, 1e-6).Solve(Settings);
            Assert.Same(standing, kept.Car);
            Assert.Equal(LaunchFigures.Read(fresh, Settings).AsEnumerable(), LaunchFigures.Read(kept, Settings));
        }
    }

    [Fact]
    public void Read_EachFigureAlone_GivesWhatTheWholeReadingGives()
    {
        FigureSet whole = launch.Read();
        var value = new double[1];
        foreach (Figure figure in whole)
        {
            using var reader = new FigureReader(FigureSelection.Of(DoorCarLaunch.Settings.Marks.Count, [figure.Key]));
            reader.Read(launch.Solution, DoorCarLaunch.Settings, value);
            Assert.Equal(figure.Value ?? double.NaN, value[0]);
            Assert.Equal(figure.Reason, reader.Reason(0));
        }
    }

    [Fact]
    public void Read_SecondLaunch_AllocatesNothing()
    {
        RunSettings settings = DoorCarLaunch.Settings;
        using var reader = new FigureReader(FigureSelection.Of(settings.Marks.Count, [.. StudyKeys]));
        var values = new double[StudyKeys.Length];
        for (int i = 0; i < 3; i++)
        {
            reader.Read(launch.Solution, settings, values);
        }

        long before = GC.GetAllocatedBytesForCurrentThread();
        for (int i = 0; i < 100; i++)
        {
            reader.Read(launch.Solution, settings, values);
        }

        Assert.Equal(0, GC.GetAllocatedBytesForCurrentThread() - before);
    }

    [Fact]
    public void Read_LaunchThatDidNotBegin_SaysSo()
    {
        using var reader = new FigureReader(FigureSelection.Of(1, StudyKeys));
        LaunchSolution solution = LaunchSimulation.Solve(DoorCar.Create(), Settings, new CancellationToken(canceled: true));
        var values = new double[StudyKeys.Length];
        reader.Read(solution, Settings, values);
        FigureSet whole = LaunchFigures.Read(solution, Settings);
        for (int i = 0; i < values.Length; i++)
        {
            Assert.Equal(whole.Get(StudyKeys[i]).Value ?? double.NaN, values[i]);
            Assert.Equal(whole.Get(StudyKeys[i]).Reason, reader.Reason(i));
        }
    }

    [Fact]
    public void Of_WrongKeys_NamesThemAll()
    {
        ArgumentException wrong = Assert.Throws<ArgumentException>(() => FigureSelection.Of(0, ["hit_n", "hit_kn", "mark_1_time_s", "hit_n"]));
        Assert.Contains("'hit_kn'", wrong.Message, StringComparison.Ordinal);
        Assert.Contains("'mark_1_time_s'", wrong.Message, StringComparison.Ordinal);
        Assert.Contains("'hit_n' is asked for twice", wrong.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Read_OtherNumberOfMarks_IsRefused()
    {
        using var reader = new FigureReader(FigureSelection.Of(1, ["hit_n"]));
        Assert.Throws<ArgumentException>(() => reader.Read(launch.Solution, new RunSettings { Duration = 1 }, new double[1]));
    }

    [Fact]
    public void Follow_DoorCar_IsTheObservationToTheBit()
    {
        LaunchSolution solution = launch.Solution;
        Span<Motion> seen = stackalloc Motion[1];
        for (int step = 0; step < solution.Steps; step++)
        {
            (double start, double end) = solution.Step(step);
            double time = start + (0.37 * (end - start));
            solution.Follow(step, [time], seen);
            solution.At(step, time, out Observation whole);
            Assert.Equal(whole.RearWheelPlace, seen[0].RearWheelPlace);
            Assert.Equal(whole.Pitch, seen[0].Pitch);
            Assert.Equal(whole.FrontRise, seen[0].FrontRise);
            Assert.Equal(whole.RearRise, seen[0].RearRise);
            Assert.Equal(whole.Separation, seen[0].Separation);
            Assert.Equal(whole.FrontTravel, seen[0].FrontTravel);
            Assert.Equal(whole.RearLoad, seen[0].RearLoad);
            Assert.Equal(whole.RearLimit, seen[0].RearLimit);
            Assert.Equal(whole.RearSlipRatio, seen[0].RearSlipRatio);
            Assert.Equal(whole.RearTopForce, seen[0].RearTopForce);
            Assert.Equal(whole.RearBottomForce, seen[0].RearBottomForce);
            Assert.Equal(whole.FrontTopForce, seen[0].FrontTopForce);
            Assert.Equal(whole.FrontBottomForce, seen[0].FrontBottomForce);
            Assert.Equal(whole.Acceleration, solution.AccelerationAt(step, time));
        }
    }
}
