using System.Globalization;
using System.Reflection;
using LaunchSim.Geometry;
using LaunchSim.Launch;
using LaunchSim.Scenarios;
using LaunchSim.Vehicle;
using MathNet.Numerics.RootFinding;

namespace LaunchSim.Web.Lesson;

/// <summary>The invented car of the lesson, and the ways in which the lesson changes it.</summary>
public sealed class LessonCar
{
    /// <summary>The place of the upper bar's bracket that the lesson moves.</summary>
    private const string Bracket = "rear.linkage.upper.body.up";

    private const string Extension = "rear.damper.extension.set", Torque = "driveline.torque", File = "lesson-car.yaml";

    // Of the bracket's height, m: some hundred times what a double can tell apart there.
    private const double Accuracy = 1e-14;

    private LessonCar(Scenario scenario) => Scenario = scenario;

    /// <summary>The scenario.</summary>
    public Scenario Scenario { get; }

    /// <summary>Reads the car that is in this assembly.</summary>
    public static LessonCar Load()
    {
        using Stream stream = Assembly.GetExecutingAssembly().GetManifestResourceStream("lesson/" + File) ?? throw new InvalidOperationException($"There is no `{File}` in the assembly.");
        using var reader = new StreamReader(stream);
        return new LessonCar(Whole(StandingCheck.Reader(ReadPurpose.Run).ReadText(reader.ReadToEnd(), File)));
    }

    /// <summary>The clicks of the rear extension that were entered: from the softest to the stiffest.</summary>
    public (int First, int Last) Clicks
    {
        get
        {
            IReadOnlyList<double> entered = Scenario.Clicks[Extension[..^".set".Length]].Entered;
            return ((int)entered[0], (int)entered[^1]);
        }
    }

    /// <summary>The car with the upper bar's bracket at the height that gives a percent, the standing car's, to the last digit.</summary>
    /// <param name="percent">Percent anti-squat.</param>
    public LessonCar WithPercent(double percent) => With(Bracket, Metres(HeightFor(percent)));

    /// <summary>The car with another click of the rear extension.</summary>
    /// <param name="click">The click, as the file counts.</param>
    public LessonCar WithExtension(int click) => With(Extension, click.ToString(CultureInfo.InvariantCulture));

    /// <summary>The car with another torque at the axle once it is up.</summary>
    /// <param name="torque">Torque of both axle shafts together, N·m.</param>
    public LessonCar WithTorque(double torque) => With(Torque, $"0 {torque.ToString("R", CultureInfo.InvariantCulture)} N·m");

    /// <summary>Height of the upper bar's bracket over the ground that gives a percent, m.</summary>
    /// <param name="percent">Percent anti-squat, above 0.</param>
    public double HeightFor(double percent)
    {
        Car car = Scenario.Car!;
        var link = (FourLink)car.Rear.Linkage;
        double slope = (link.LowerBody.Up - link.LowerAxle.Up) / (link.LowerBody.Ahead - link.LowerAxle.Ahead);

        // From a bar that points at the lower one right there to one that never meets it.
        double meets = link.LowerAxle.Up + (slope * (link.UpperBody.Ahead - link.LowerAxle.Ahead));
        double parallel = link.UpperAxle.Up + (slope * (link.UpperBody.Ahead - link.UpperAxle.Ahead));
        return Brent.FindRoot(height => Percent(car, link, height) - percent, meets, parallel, Accuracy);
    }

    private static double Percent(Car car, FourLink link, double height) =>
        car.WithLinkage(link with { UpperBody = link.UpperBody with { Up = height } })?.Line.Percent ?? throw new InvalidOperationException($"The lesson's car does not stand with its bracket at {Metres(height)}.");

    private LessonCar With(string path, string value) => new(Whole(Scenario.With([(path, value)])));

    private static Scenario Whole(ReadResult read) => read.Scenario ?? throw new InvalidOperationException(string.Join('\n', read.Errors));

    private static string Metres(double value) => value.ToString("R", CultureInfo.InvariantCulture) + " m";
}
