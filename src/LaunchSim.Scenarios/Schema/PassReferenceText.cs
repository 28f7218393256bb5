namespace LaunchSim.Scenarios.Schema;

/// <summary>The parts of the pass file's reference page that are not about one key.</summary>
internal static class PassReferenceText
{
    public const string Opening = """
        # The pass file

        One YAML file holds one pass: which car, how it was set, and what was seen or logged. It is short enough to be typed
        on a telephone between two passes; only `car` has to be there.

        ```yaml
        name: Second pass, one hole down
        when: 2026-09-12 14:10
        car: ../door-car.yaml
        changed:
          rear.linkage.upper.body.use: 3
          rear.tire.pressure.set: 15 psi
        track: left lane, sprayed, cool
        weather: 18 °C, dry, head wind
        seen:
          frames_per_second: 240
          release_frame: 118
          first_up: rear
          rear_moves: frame 131
          front_moves: frame 147 ±2
          rear_open: frame 170
          front_tires_leave: never
          spin_starts: never
          shake: light
          marks: 60 ft
          times: 1.52 s
        notes: Shook a little at 60 ft.
        ```

        Numbers and units are written as in [the scenario file](scenario.md). Errors are told all at once, each with file, line
        and column, what is allowed and how to mend it. An editor that knows JSON Schema checks a file whose first line names
        [`pass.schema.json`](pass.schema.json).

        ## When something was seen

        | written | means | standard deviation |
        |---|---|---|
        | `0.12 s` | that long after the release | 11.5 ms: equally likely anywhere within ±20 ms, one frame of a 50 Hz video (common practice, no source) |
        | `0.12 ±0.02 s` | the same, within 0.02 s nineteen times in twenty | half of what stands after the ±, to be exact 1/1.96 |
        | `frame 147` | that frame, counted from `release_frame` | 0.58 frames: equally likely anywhere within ±1 frame, since it and the release are each seen up to a frame late |
        | `frame 147 ±2` | the same, within 2 frames nineteen times in twenty | half of what stands after the ± |
        | `before 0.3 s`, `before frame 150` | it had happened by then; nothing is said of when | as without ± |
        | `after 0.3 s`, `after frame 150` | it had not happened by then | as without ± |
        | `never` | it did not happen, as long as anybody looked | |

        A key that is left out means that nobody looked, which is something else than `never`.

        An end is seen to move when it has opened by `visible`, 1/4 in unless the file says otherwise; the prediction is read at
        the same opening. `rear_open` is when the rear wheel opening first stands still: one frame of a 50 Hz video later, 20 ms, it
        is not a twentieth wider. That is where the hit ends; later the rear often opens further, and slowly, which does not count.

        Times at beams without ± are taken to be right within 2 ms nineteen times in twenty (common practice, no source): the
        slip shows thousandths, and how the car is staged makes the rest. That is no small matter: a rollout of 12 in that
        really was 9 in moves a 60 ft time by some hundredths of a second. Put `run.rollout` right under `changed` when you know it.

        `shake` is kept and shown beside the others, and nothing is fitted to it: the model has no tyre shake.

        ## A closed pass

        A pass with `closed` is a record. It changes only by a correction that says what was, what is, why and when;
        `launchsim season correct` writes one. `seal` is a digest of the values, name and notes aside: when it no longer fits,
        somebody changed the file by hand, and a warning says so. It is a reminder and no proof.

        ## What is refused

        Besides what cannot be read: a frame without `frames_per_second`, or before `release_frame`; a time below 0 or beyond
        60 s, the longest run; tyres that land before they leave, or a rear that is open before it moves; `first_up` that the
        times contradict beyond their doubt; times that do not rise, or not one for each mark; marks without times; `closed`
        before `when`; corrections of a pass that is not closed; a path in `changed` that no scenario has, and whatever makes
        the car one that cannot be read or stand. A log that is not there is a warning: all else can still be read.

        ## The keys


        """;
}
