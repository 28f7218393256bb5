namespace LaunchSim.Scenarios.Schema;

/// <summary>The parts of the reference page that are not about one key.</summary>
internal static class ReferenceText
{
    public const string Opening = """
        # The scenario file

        One YAML file holds one set-up and one launch. It is meant to be filled in beside the car, with the numbers as the
        tape, the scales, the spring rater and the dyno sheets give them. `scenarios/door-car.yaml` shows every key in its
        place; `launchsim check FILE` says what is wrong or still missing, all at once; an editor that knows JSON Schema
        completes and checks a file whose first line names [`scenario.schema.json`](scenario.schema.json), as those in
        `scenarios/` do. It knows keys, structure and the usual units, but not what holds between values: that `check` tells.

        ## How values are written

        **Numbers come first, then one unit**: `105.5 in`, `2.68 m`, `0 2 5 10 20 in/s`. The space before the unit may be
        left out. Several numbers are parted by spaces; outside braces a comma followed by a space does as well. Inside
        braces YAML itself splits at every comma, so use spaces there. Decimals follow a point, in every country: `1,5` is an
        error. Fractions of an inch may be written as they are read: `5/8 in`, `13-5/8 in` (thirteen and five eighths),
        `-2-1/2 in`. Plain ratios are bare numbers.

        **Units** are joined by `·`, `*`, `-` or `/` and read from left to right; powers are `²`, `³` or `^2`; `√(…)` is a
        root; `°` is `deg`. Units of length: in, ft, yd, mi, mm, cm, m. Mass: lb, lbm, slug, oz, kg. Force: lb, lbf, N, kN,
        kgf. Pressure: psi, bar, kPa, Pa. Speed also mph and km/h, turning speed rpm and rad/s. Whether `lb` is a force or a
        mass follows from the key: on the scales it is a force, at `unsprung` a mass; `lb/in` is a spring rate, `lb-ft` and
        `ft-lb` are torques. A value of the wrong kind is an error, and so is a missing unit. A rate in torsion needs its
        angle: `kN·m/rad` or `lb-ft/deg`.

        **A point** is two lengths and one unit, `21.0 9.0 in`: how far ahead of the rear axle's centreline (behind it is
        negative), then how far above the floor, with the car at rest at ride height and the driver aboard.

        **A bracket with holes** may stand in place of the point at a link's end, a ladder bar's pivot, or a spring's or
        damper's mount: `{holes: {1: 14.0 15.4 in, 2: 14.0 14.6 in}, use: 2}`. Holes have any names without spaces.

        **Doubt.** A number that was guessed or read roughly says so: `21 ±1 in`, `1.0 ±0.05 7.6 ±0.05 in` (`+-` is as good
        as ±). It means that the truth lies within that much nineteen times in twenty. A run takes the number as it stands;
        studies look at what the doubt does. The numbers of a table have no doubt of their own; the whole row may have one,
        in percent, at its end: `0 50 90 135 200 lb ±10 %`. A ± directly before a % is always the whole row's.

        Springs, dampers, tyres and bars are given **for one side**; masses and inertias that are named for an axle hold both
        sides. Every value is read as the text that is there: YAML's own ideas of numbers, dates, `on` and `no` play no part.
        Tags, anchors and aliases are not used, a file holds one document and is at most 1 MB.

        ## Part files

        For percent, instant centre and bars alone, `car.wheelbase`, `car.scales`, `car.cg_height` and `rear.linkage` are
        enough. What a run needs besides is listed by `launchsim check` as needed for a run.

        ## Variants

        A file may begin from another one and change some values by their paths:

        ```yaml
        name: Upper bar one hole down
        base: door-car.yaml
        change:
          rear.linkage.upper.body.use: 3
          rear.damper.extension.set: 8
          car.ride_height.rear: +0.5 in
        ```

        A path is the names of the sections and the key, joined by points. A list's items are counted from 0:
        `car.ballast[0].mass`. A point's parts are `.ahead` and `.up`; a bracket has `.use` and `.holes.NAME`, a damper
        `.clicks.N`. The value is the new one, never an amount to add: `+0.5 in` is half an inch. A whole point, row or
        section may be put in place of the old one. The base is looked up from the variant's own folder, and may be a variant
        itself. A variant has only `name`, `notes`, `base`, `change` and `choices`; what it leaves out of `name`, `notes` and
        `choices` is the base's.

        ## Choices

        What can be changed at the track, how far, and how long that takes in minutes. Studies propose nothing else.

        ```yaml
        choices:
          rear.linkage.upper.body.use: {values: all, minutes: 12}
          rear.damper.extension.set: {values: 0 to 12 by 1, minutes: 1}
          rear.spring.rate: {values: 130 150 175 lb/in, minutes: 40}
        ```

        `values` is `all` (every hole of a bracket), names of holes, numbers and one unit, or `A to B by C unit`. A choice is
        of one number: for a point choose its `.ahead` or `.up`.

        ## What is refused

        Besides what cannot be read: unknown, doubled and missing keys; numbers outside what their key allows; rows of a
        table that differ in length, or whose first row does not rise from each number to the next; damper tables that do not
        begin at 0 and 0, or whose force falls with speed; a click outside those entered; an unsprung mass that weighs as
        much as its axle's scales read; a tyre whose slip stiffness, peak slip and sliding ratio give a curve that folds back
        (lower the stiffness or raise the sliding ratio; a stiffness below 1.8 · grip / peak slip is a warning, since the
        curve then bows upward before its peak); a set pressure that leaves no rate or grip; a converter that gives out more
        power than it takes; a linkage that does not close or locks within
        the dampers' travel; a car that cannot stand.

        ## The file


        """;

    public const string Closing = """

        ## Units and their factors

        Factors are exact by definition (NIST SP 811, Appendix B): the inch is 0.0254 m, the pound 0.45359237 kg, standard
        gravity 9.80665 m/s²; all others are products of these. `kgf` is what a scale in kilograms shows. `g` is standard
        gravity where an acceleration is due and a gram where a mass is.
        """ + "\n";
}
