namespace LaunchSim.Figures;

/// <summary>What a figure measures. Values are in SI units; the unit is the last part of the figure's key.</summary>
public enum FigureUnit
{
    /// <summary>Time, s.</summary>
    Time,

    /// <summary>Length, m.</summary>
    Length,

    /// <summary>Speed, m/s.</summary>
    Speed,

    /// <summary>Acceleration, m/s².</summary>
    Acceleration,

    /// <summary>Angle, rad.</summary>
    Angle,

    /// <summary>Force, N.</summary>
    Force,

    /// <summary>Torque, N·m.</summary>
    Torque,

    /// <summary>Energy, J.</summary>
    Energy,

    /// <summary>Percent.</summary>
    Percent,

    /// <summary>A ratio without unit.</summary>
    Ratio,

    /// <summary>How often.</summary>
    Count,
}

/// <summary>The units in the names of keys.</summary>
public static class FigureUnits
{
    /// <summary>How a key of this unit ends, such as <c>_mps</c>.</summary>
    /// <param name="unit">The unit.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is no such unit.</exception>
    public static string Suffix(this FigureUnit unit) => unit switch
    {
        FigureUnit.Time => "_s",
        FigureUnit.Length => "_m",
        FigureUnit.Speed => "_mps",
        FigureUnit.Acceleration => "_mps2",
        FigureUnit.Angle => "_rad",
        FigureUnit.Force => "_n",
        FigureUnit.Torque => "_nm",
        FigureUnit.Energy => "_j",
        FigureUnit.Percent => "_percent",
        FigureUnit.Ratio => "_ratio",
        FigureUnit.Count => "_count",
        _ => throw new ArgumentOutOfRangeException(nameof(unit), unit, "There is no such unit."),
    };
}
