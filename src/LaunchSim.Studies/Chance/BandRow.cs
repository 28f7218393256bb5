namespace LaunchSim.Studies.Chance;

/// <summary>What many cars do at one row of their traces: quantiles in the column's unit, not numbers where no car is left.</summary>
/// <param name="Low">The low quantile.</param>
/// <param name="Median">Half of the cars lie below.</param>
/// <param name="High">The high quantile.</param>
/// <param name="Cars">How many cars have a value here; the quantiles are theirs alone.</param>
public readonly record struct BandRow(double Low, double Median, double High, int Cars);
