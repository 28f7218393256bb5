namespace LaunchSim.Figures.Families;

/// <summary>A signal at 0.1, 0.2 and 0.3 s, so that a frame of video can be laid beside it.</summary>
internal sealed class InstantFigures
{
    private static readonly int[] Milliseconds = [100, 200, 300];

    private readonly Signal _signal;

    /// <summary>Declares the figures.</summary>
    /// <param name="key">Beginning of the keys.</param>
    /// <param name="name">Beginning of the names.</param>
    /// <param name="signal">The signal, a length.</param>
    /// <param name="description">What the signal is.</param>
    public InstantFigures(string key, string name, Signal signal, string description)
    {
        _signal = signal;
        Definitions = Array.ConvertAll(Milliseconds, ms => new FigureDefinition(
            $"{key}_at_{ms}ms_m", $"{name} at 0.{ms / 100} s", FigureUnit.Length, $"{description}, 0.{ms / 100} s after release"));
    }

    public FigureDefinition[] Definitions { get; }

    public void Read(LaunchReading launch, FigureWriter figures)
    {
        for (int i = 0; i < Milliseconds.Length; i++)
        {
            if (figures.Wants(Definitions[i]))
            {
                figures.Set(Definitions[i], launch.At(_signal, 1e-3 * Milliseconds[i]), NoFigure.TooShort);
            }
        }
    }
}
