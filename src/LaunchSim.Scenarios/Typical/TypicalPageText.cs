using System.Globalization;
using LaunchSim.Scenarios.Typical.Groups;

namespace LaunchSim.Scenarios.Typical;

/// <summary>The parts of the page of typical values that are not about one value.</summary>
internal static class TypicalPageText
{
    public static string Opening { get; } = string.Create(CultureInfo.InvariantCulture, $"""
        # Typical values

        A launch needs some eighty numbers, and no shop measures them all. For each this page says what to begin with, how far
        off that may be, what is usual, where it comes from, and how to get the car's own at home. `launchsim check` uses the
        same numbers: it warns of what is not usual, and it moves each number by its doubt to see which of them matter for your
        car.

        **What a typical value is good for:** to have a whole car from tape and scales alone, to see in what order of size things
        happen, and above all to learn which numbers are worth an afternoon. **What it is not:** your car. A launch made of typical
        values has loads and times that belong to nobody; do not compare two cars by it, and do not buy a part because of it. Every
        typical value carries its doubt (±, nineteen times in twenty within that much). When you know better, write your number in its
        place, with your own ±.

        ## Where they come from

        - **[R]** Vertical rate of a 255/40R17 at 3560 N and 24, 27, 30, 33 and 36 psi: published open data (kktse.github.io, 2021-07-12).
          A straight line against pressure fits it within 3 %, with 30 lb/in for each psi.
        - **[M]** Vertical rate by size and pressure: regression of T. B. Rhyne, *Tire Science and Technology* 33(3), 136–155, from memory:
          K[kg/mm] = 0.00028·P[kPa]·√((1.03 − 0.004·AR)·S·(S·AR/50 + D)) + 3.45, with S the width and D the rim in mm, AR the aspect ratio
          in percent. For the tyre above it is within 12 % of what was measured, and makes a third more of pressure. Both are about road tyres at
          road pressures. A drag tyre is used at half of them and has softer sidewalls; nothing open was found on it. At the rear nine
          tenths of the regression are taken, which is a guess, and the doubt says so.
        - **[C]** Pitch inertia: open inertia measurements behind SAE 1999-01-1336, refitted for this project: a car's whole inertia is
          {WholeCarInertia.Factor} ± {WholeCarInertia.FactorDeviation} (one standard deviation) × mass × a × b, with a and b the distances of the centre of gravity from the axles. The file asks
          for the *sprung body about its own centre of gravity*: both axles' masses and inertias are taken out by parallel axes.
        - **Common practice, no source**: what people who set cars up hold for usual, as it was known to those who wrote this. Nobody has
          checked it against a sample of cars.
        - **No source**: an order of size with which launches come out sensibly. These have the widest doubts.

        ## Dampers without a sheet

        A damper is told by the share ζ of its corner's critical damping that it gives at a shaft speed of 5 in/s (0.127 m/s). With the
        spring's rate at the wheel k_w = k·n² (n: travel of the spring over travel of the wheel) and the corner's sprung mass m, the critical
        damping is c = 2·√(k_w·m). A damper that moves d times as fast as the wheel then pushes with F₀ = ζ·c/d² · 0.127 m/s, and
        at any other shaft speed v with F = F₀·(v/0.127 m/s)^{DamperCurve.Power}: steep at first, flatter when the valve is open. At the rear n and d are
        what the lean of spring and damper leaves of the axle's travel.

        | | soft | medium | firm |
        |---|---|---|---|
        {string.Join('\n', DamperValues.Families.Select(row => string.Create(CultureInfo.InvariantCulture, $"| {row.End}, {row.Direction} | {row.Shares.Soft:0.00} | {row.Shares.Medium:0.00} | {row.Shares.Firm:0.00} |")))}

        The shares and the power {DamperCurve.Power} are common practice without a source. Each family has ±30 %, so that neighbours touch.

        ## How to read the tables

        *Typical* is what comes out for the car of `scenarios/door-car.yaml` when only its tape and scale readings, the height of its centre of
        gravity and its rear pressure are known (for engine, clutch and converter with the engine sheet of `scenarios/clutch-car.yaml`), in shop
        and in SI units, ready to be copied; how it is worked out stands below the table. *Usual* is what `check` does not
        warn of; where it goes with the car, marked †, it is that of the door car. *Source*: [R], [M] and [C] as above, practice for common practice without a source, none for no source. *Without ±* is the doubt that is taken for a number
        that stands in a file without one. Values are for one side or one tyre unless they say otherwise, as in [scenario.md](scenario.md).

        """);
}
