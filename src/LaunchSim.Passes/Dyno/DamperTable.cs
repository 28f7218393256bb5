namespace LaunchSim.Passes.Dyno;

/// <summary>The row of one click of one side.</summary>
/// <param name="Click">The click; null for a damper without one.</param>
/// <param name="Forces">Resistance at each speed of the side, N, from 0, never falling.</param>
/// <param name="Hysteresis">Half of what speeding up and slowing down differ at each speed, N, positive where it resists more while it speeds up; not a number where they cannot be told apart.</param>
/// <param name="DoubtPercent">How far off the row may be as a whole by its scatter, percent, nineteen times in twenty; null where there is too little to tell.</param>
/// <param name="Evened">By how much the most a force was changed so that none falls, N.</param>
/// <param name="EvenedAt">At which speed, m/s.</param>
/// <param name="Points">How many rows of sheets it is made of.</param>
public sealed record DamperRow(
    double? Click, IReadOnlyList<double> Forces, IReadOnlyList<double> Hysteresis, double? DoubtPercent, double Evened, double EvenedAt, int Points);

/// <summary>One side of a damper: extension or compression.</summary>
/// <param name="Name"><c>extension</c> or <c>compression</c>.</param>
/// <param name="Speeds">Shaft speeds, m/s, from 0, rising.</param>
/// <param name="Rows">One row, or one a click, rising.</param>
/// <param name="FastestMeasured">How fast the fastest of its runs went, m/s.</param>
/// <param name="IsSameForAllClicks">Whether several clicks were measured and they differ by no more than the scatter, so that one row stands for all.</param>
public sealed record DamperSide(string Name, IReadOnlyList<double> Speeds, IReadOnlyList<DamperRow> Rows, double FastestMeasured, bool IsSameForAllClicks);

/// <summary>A damper as it goes into a scenario, per side of the car: one unit's forces, the gas taken out.</summary>
/// <param name="Extension">Forces while it gets longer.</param>
/// <param name="Compression">Forces while it gets shorter.</param>
/// <param name="Measurements">What it was made of.</param>
/// <param name="Notes">What a person should look at.</param>
public sealed record DamperTable(DamperSide Extension, DamperSide Compression, IReadOnlyList<DamperMeasurement> Measurements, IReadOnlyList<string> Notes);
