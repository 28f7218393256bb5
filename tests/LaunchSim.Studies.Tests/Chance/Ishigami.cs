namespace LaunchSim.Studies.Tests.Chance;

/// <summary>
/// sin x₁ + a·sin² x₂ + b·x₃⁴·sin x₁ with each x uniform from −π to π, a = 7, b = 0.1: T. Ishigami, T. Homma, "An importance
/// quantification technique in uncertainty analysis for computer models", 1990. x₃ acts through x₁ alone.
/// </summary>
internal static class Ishigami
{
    private const double A = 7, B = 0.1;

    public static double Value(double[] u)
    {
        double x1 = X(u[0]), x2 = X(u[1]), x3 = X(u[2]);
        return Math.Sin(x1) + (A * Math.Pow(Math.Sin(x2), 2)) + (B * Math.Pow(x3, 4) * Math.Sin(x1));
    }

    /// <summary>From the integrals E[x⁴] = π⁴/5, E[x⁸] = π⁸/9, Var(sin²) = 1/8: 0.3139, 0.4424, 0.</summary>
    public static double[] Shares()
    {
        double pi4 = Math.Pow(Math.PI, 4);
        double first = 0.5 * Math.Pow(1 + (B * pi4 / 5), 2), second = A * A / 8;
        double all = second + (0.5 * (1 + (2 * B * pi4 / 5) + (B * B * pi4 * pi4 / 9)));
        return [first / all, second / all, 0];
    }

    private static double X(double u) => Math.PI * ((2 * u) - 1);
}
