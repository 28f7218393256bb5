using LaunchSim.Figures;
using LaunchSim.Reports.Decisive;
using LaunchSim.Reports.Numbers;
using LaunchSim.Reports.Words;
using LaunchSim.Scenarios;
using LaunchSim.Scenarios.Doubtful;
using LaunchSim.Scenarios.Typical;
using LaunchSim.Scenarios.Units;

namespace LaunchSim.Reports.Tests.Decisive;

public class DecisiveNumbersTests
{
    private static readonly Readout Shop = new(UnitSystem.Shop);
    private static readonly LaunchOutcome Door = Launch(Files.DoorCar);
    private static readonly DecisiveNumbers OfDoor = DecisiveNumbers.Of(Door, Shop, CancellationToken.None);

    public static TheoryData<string> Cars => ["clutch", "ladder", "spins"];

    private static LaunchOutcome Launch(string file, params (string, string)[] set) =>
        LaunchOutcome.Of(StandingCheck.Reader(ReadPurpose.Run).Read(file, set).Scenario!, CancellationToken.None);

    [Fact]
    public void Effects_OfTheDoorCar_HoldEveryDoubtfulNumberMostDecisiveFirst()
    {
        Assert.Equal(DoubtfulNumbers.Of(Door.Scenario).Select(number => number.Path).Order(), OfDoor.Effects.Select(effect => effect.Number.Path).Order());
        Assert.Equal(OfDoor.Effects.Select(effect => effect.Score).OrderDescending(), OfDoor.Effects.Select(effect => effect.Score));
        Assert.All(OfDoor.Effects, effect => Assert.True(double.IsFinite(effect.Score) && effect.Score >= 0));

        // Whatever else: a tyre that may have a sixth less grip, and the torque, decide a launch.
        Assert.Equal(["driveline.torque", "rear.tire.grip"], OfDoor.Effects.Take(2).Select(effect => effect.Number.Path).Order());
    }

    [Fact]
    public void Effect_OfANumber_IsThatOfTheChangedFileRunByItself()
    {
        NumberEffect height = OfDoor.Effects.Single(effect => effect.Number.Path == "car.cg_height");
        FigureSet lower = Launch(Files.DoorCar, ("car.cg_height", "20 in")).Figures;
        Assert.Equal(lower["hit_n"], height.Moved[0].Figures!["hit_n"]);
        Assert.Equal(lower["rise_lag_s"], height.Moved[0].Figures!["rise_lag_s"]);

        // The score once more by hand.
        double Score(FigureSet after) => Math.Sqrt(AnswerFigures.All.Sum(figure => Math.Pow((after[figure.Key]!.Value - Door.Figures[figure.Key]!.Value) / figure.Scale(Door.Figures), 2)));
        Assert.Equal(Math.Max(Score(lower), Score(Launch(Files.DoorCar, ("car.cg_height", "22 in")).Figures)), height.Score, 1e-12);
        Assert.Equal("standing_anti_squat_percent", height.Largest!.Value.Figure.Key);
    }

    [Fact]
    public void Effects_FoundAgain_AreTheSame()
    {
        DecisiveNumbers again = DecisiveNumbers.Of(Launch(Files.DoorCar), Shop, CancellationToken.None);
        Assert.Equal(OfDoor.Effects.Select(effect => (effect.Number.Path, effect.Score)), again.Effects.Select(effect => (effect.Number.Path, effect.Score)));
    }

    [Theory]
    [MemberData(nameof(Cars))]
    public void WithoutEffectOnSentences_OfAnyCar_SayWhatIsSaidNow(string name)
    {
        LaunchOutcome launch = Launch(Files.Test(name));
        DecisiveNumbers decisive = DecisiveNumbers.Of(launch, Shop, CancellationToken.None);
        string[] keys = [.. Summary.Of(launch.Figures, Shop).Select(sentence => sentence.Key)];
        Assert.NotEmpty(decisive.WithoutEffectOnSentences);
        foreach (NumberEffect effect in decisive.Effects)
        {
            bool same = effect.Moved.All(moved => moved.Trouble is null && moved.Sentences.Select(sentence => sentence.Key).SequenceEqual(keys));
            Assert.Equal(same && effect.Number.Entry is TypicalValue, decisive.WithoutEffectOnSentences.Contains(effect));
            Assert.Equal(!same, effect.ChangesSentences);
            Assert.True(effect.Changed is null || effect.ChangesSentences);
            Assert.NotEmpty(EffectWords.Of(effect, Shop));
        }
    }

    [Fact]
    public void Grip_OfTheDoorCarMovedDown_SaysThatTheTyresSpin()
    {
        NumberEffect grip = OfDoor.Effects.Single(effect => effect.Number.Path == "rear.tire.grip");
        Assert.True(grip.Changed is { IsNew: true, Sentence.Key: "grip.spin", By.Share: -1 });
        Assert.StartsWith("moves the time of slip beyond the peak by ", EffectWords.Of(grip, Shop), StringComparison.Ordinal);
        Assert.EndsWith(" (moved down)", EffectWords.Of(grip, Shop), StringComparison.Ordinal);
    }

    [Fact]
    public void NumberMovedOutOfWhatIsAllowed_IsRefusedInWordsAndCountsByTheOtherMove()
    {
        LaunchOutcome launch = Launch(Files.Test("clutch"), ("driveline.efficiency", "0.99"));
        NumberEffect efficiency = DecisiveNumbers.Of(launch, Shop, CancellationToken.None).Effects.Single(effect => effect.Number.Path == "driveline.efficiency");
        Assert.True(efficiency.Moved[1].IsRefused);
        Assert.Contains("1.0", efficiency.Moved[1].Trouble, StringComparison.Ordinal);
        Assert.True(efficiency.Moved[0].Figures is not null && efficiency.Score > 0);
        Assert.True(efficiency.ChangesSentences);
    }

    [Fact]
    public void FigureThatGoes_CountsAsOneScale()
    {
        // Barely a rise at the rear: a little less of it and there is no lag to tell.
        LaunchOutcome launch = Launch(Path.Combine(Files.Root, "scenarios", "converter-car.yaml"));
        FigureMove gone = DecisiveNumbers.Of(launch, Shop, CancellationToken.None).Effects.Select(effect => effect.Largest).OfType<FigureMove>().First(move => move.After is null);
        Assert.Equal(1, gone.Scaled);
        Assert.Equal("rise_lag_s", gone.Figure.Key);
    }

    [Fact]
    public void NoTorque_NothingMovesButThePercent()
    {
        LaunchOutcome launch = Launch(Files.DoorCar, ("driveline.torque", "0 0 0 0 0 lb-ft"), ("run.duration", "0.5 s"));
        DecisiveNumbers decisive = DecisiveNumbers.Of(launch, Shop, CancellationToken.None);
        Assert.Equal("car.cg_height", decisive.Effects[0].Number.Path);
        NumberEffect torque = decisive.Effects.Single(effect => effect.Number.Path == "driveline.torque");
        Assert.Equal(0, torque.Score);
        Assert.Null(torque.Largest);
        Assert.Equal("moves none of these figures", EffectWords.Of(torque, Shop));
    }

    [Fact]
    public void Cancelled_IsThrown()
    {
        using var source = new CancellationTokenSource();
        source.Cancel();
        Assert.ThrowsAny<OperationCanceledException>(() => DecisiveNumbers.Of(Door, Shop, source.Token));
    }

    [Fact]
    public void AnswerFigures_AreKnownWithScalesAboveZero() => Assert.All(AnswerFigures.All, figure =>
    {
        Assert.True(Door.Figures.TryGet(figure.Key, out _));
        Assert.True(figure.Scale(Door.Figures) > 0);
        Assert.StartsWith("the ", figure.Words, StringComparison.Ordinal);
    });
}
