namespace LaunchSim.Integration.Tests;

/// <summary>Closed loops and moving constraints, solved for the accelerations at each evaluation.</summary>
public class MechanismTests
{
    /// <summary>
    /// Andrews' squeezing mechanism after the IVP test set (as in the R package deTestSet): accelerations and multipliers
    /// from one linear system of 13 rows at each evaluation.
    /// </summary>
    private sealed class Andrews
    {
        private const double M1 = .04325, M2 = .00365, M3 = .02373, M4 = .00706, M5 = .07050, M6 = .00706, M7 = .05498;
        private const double I1 = 2.194e-6, I2 = 4.410e-7, I3 = 5.255e-6, I4 = 5.667e-7, I5 = 1.169e-5, I6 = 5.667e-7, I7 = 1.912e-5;
        private const double Xa = -.06934, Ya = -.00227, Xb = -.03635, Yb = .03273, Xc = .014, Yc = .072, C0 = 4530, L0 = .07785;
        private const double Mom = .033, D = .028, Da = .0115, E = .02, Ea = .01421, Rr = .007, Ra = .00092, Ss = .035;
        private const double Sa = .01874, Sb = .01043, Sc = .018, Sd = .02, Ta = .02308, Tb = .00916, U = .04, Ua = .01228;
        private const double Ub = .00449, Zf = .02, Zt = .04, Fa = .01421, Ee = E - Ea, Z = Zf - Fa;

        private readonly double[,] _matrix = new double[13, 14];

        public static double[] Start =>
        [
            -.0617138900142764496358948458001, 0, .455279819163070380255912382449, .222668390165885884674473185609,
            .487364979543842550225598953530, -.222668390165885884674473185609, 1.23054744454982119249735015568,
            0, 0, 0, 0, 0, 0, 0,
        ];

        /// <summary>Accelerations and multipliers of the latest evaluation.</summary>
        public double[] Solution { get; } = new double[13];

        public void Rate(double t, ReadOnlySpan<double> y, Span<double> dy)
        {
            double be = y[0], th = y[1], ga = y[2], ph = y[3], de = y[4], om = y[5], ep = y[6];
            double dbe = y[7], dth = y[8], dga = y[9], dph = y[10], dde = y[11], dom = y[12], dep = y[13];
            double[,] a = _matrix;
            Array.Clear(a);
            Mass(y, a);

            double bt = be + th, pd = ph + de, oe = om + ep;
            (double sbt, double cbt) = Math.SinCos(bt);
            double xBe = (-Rr * Math.Sin(be)) + (D * sbt), xTh = D * sbt, yBe = (Rr * Math.Cos(be)) - (D * cbt), yTh = -D * cbt;
            (double s, double c) = Math.SinCos(ga);
            for (int row = 0; row < 3; row++)
            {
                a[7 + (2 * row), 0] = xBe;
                a[7 + (2 * row), 1] = xTh;
                a[8 + (2 * row), 0] = yBe;
                a[8 + (2 * row), 1] = yTh;
            }

            a[7, 2] = -Ss * c;
            a[8, 2] = -Ss * s;
            a[9, 3] = -E * Math.Cos(pd);
            a[9, 4] = (-E * Math.Cos(pd)) + (Zt * Math.Sin(de));
            a[10, 3] = -E * Math.Sin(pd);
            a[10, 4] = (-E * Math.Sin(pd)) - (Zt * Math.Cos(de));
            a[11, 5] = Zf * Math.Sin(oe);
            a[11, 6] = (Zf * Math.Sin(oe)) - (U * Math.Cos(ep));
            a[12, 5] = -Zf * Math.Cos(oe);
            a[12, 6] = (-Zf * Math.Cos(oe)) - (U * Math.Sin(ep));
            for (int i = 7; i < 13; i++)
            {
                for (int j = 0; j < 7; j++)
                {
                    a[j, i] = a[i, j];
                }
            }

            double xd = (Sd * c) + (Sc * s) + Xb, yd = (Sd * s) - (Sc * c) + Yb;
            double length = Length(ga), pull = -C0 * (1 - (L0 / length)), fx = pull * (xd - Xc), fy = pull * (yd - Yc);
            a[0, 13] = Mom - (M2 * Da * Rr * dth * (dth + (2 * dbe)) * Math.Sin(th));
            a[1, 13] = M2 * Da * Rr * dbe * dbe * Math.Sin(th);
            a[2, 13] = (fx * ((Sc * c) - (Sd * s))) + (fy * ((Sd * c) + (Sc * s)));
            a[3, 13] = M4 * Zt * Ee * dde * dde * Math.Cos(ph);
            a[4, 13] = -M4 * Zt * Ee * dph * (dph + (2 * dde)) * Math.Cos(ph);
            a[5, 13] = -M6 * U * Z * dep * dep * Math.Cos(om);
            a[6, 13] = M6 * U * Z * dom * (dom + (2 * dep)) * Math.Cos(om);

            double bt2 = (dbe + dth) * (dbe + dth), pd2 = (dph + dde) * (dph + dde), oe2 = (dom + dep) * (dom + dep);
            double xx = (-Rr * Math.Cos(be) * dbe * dbe) + (D * cbt * bt2), yy = (-Rr * Math.Sin(be) * dbe * dbe) + (D * sbt * bt2);
            a[7, 13] = -(xx + (Ss * s * dga * dga));
            a[8, 13] = -(yy - (Ss * c * dga * dga));
            a[9, 13] = -(xx + (E * Math.Sin(pd) * pd2) + (Zt * Math.Cos(de) * dde * dde));
            a[10, 13] = -(yy - (E * Math.Cos(pd) * pd2) + (Zt * Math.Sin(de) * dde * dde));
            a[11, 13] = -(xx + (Zf * Math.Cos(oe) * oe2) + (U * Math.Sin(ep) * dep * dep));
            a[12, 13] = -(yy + (Zf * Math.Sin(oe) * oe2) - (U * Math.Cos(ep) * dep * dep));

            Linear.Solve(a, Solution);
            for (int i = 0; i < 7; i++)
            {
                dy[i] = y[7 + i];
                dy[7 + i] = Solution[i];
            }
        }

        /// <summary>Kinetic energy, the spring's, and what the torque has done: a constant.</summary>
        public static double Energy(ReadOnlySpan<double> y)
        {
            var mass = new double[13, 14];
            Mass(y, mass);
            double sum = 0;
            for (int i = 0; i < 7; i++)
            {
                for (int j = 0; j < 7; j++)
                {
                    sum += 0.5 * mass[i, j] * y[7 + i] * y[7 + j];
                }
            }

            double stretch = Length(y[2]) - L0;
            return sum + (0.5 * C0 * stretch * stretch) - (Mom * y[0]);
        }

        private static double Length(double ga)
        {
            (double s, double c) = Math.SinCos(ga);
            double x = (Sd * c) + (Sc * s) + Xb - Xc, y = (Sd * s) - (Sc * c) + Yb - Yc;
            return Math.Sqrt((x * x) + (y * y));
        }

        private static void Mass(ReadOnlySpan<double> y, double[,] m)
        {
            double ct = Math.Cos(y[1]), sp = Math.Sin(y[3]), so = Math.Sin(y[5]);
            m[0, 0] = (M1 * Ra * Ra) + (M2 * ((Rr * Rr) - (2 * Da * Rr * ct) + (Da * Da))) + I1 + I2;
            m[0, 1] = m[1, 0] = (M2 * ((Da * Da) - (Da * Rr * ct))) + I2;
            m[1, 1] = (M2 * Da * Da) + I2;
            m[2, 2] = (M3 * ((Sa * Sa) + (Sb * Sb))) + I3;
            m[3, 3] = (M4 * Ee * Ee) + I4;
            m[3, 4] = m[4, 3] = (M4 * ((Ee * Ee) + (Zt * Ee * sp))) + I4;
            m[4, 4] = (M4 * ((Zt * Zt) + (2 * Zt * Ee * sp) + (Ee * Ee))) + (M5 * ((Ta * Ta) + (Tb * Tb))) + I4 + I5;
            m[5, 5] = (M6 * Z * Z) + I6;
            m[5, 6] = m[6, 5] = (M6 * ((Z * Z) - (U * Z * so))) + I6;
            m[6, 6] = (M6 * ((Z * Z) - (2 * U * Z * so) + (U * U))) + (M7 * ((Ua * Ua) + (Ub * Ub))) + I6 + I7;
        }
    }

    /// <summary>Car axis after the same test set: the two constraints differentiated twice.</summary>
    private sealed class CarAxis
    {
        private const double K = 5e-4, L = 1, L0 = 0.5, R = 0.1, W = 10, G = 1;

        private readonly double[,] _matrix = new double[6, 7];
        private readonly double[] _solution = new double[6];

        public void Rate(double t, ReadOnlySpan<double> y, Span<double> dy)
        {
            double xl = y[0], yl = y[1], xr = y[2], yr = y[3];
            (double sin, double cos) = Math.SinCos(W * t);
            double yb = R * sin, dyb = R * W * cos, ddyb = -R * W * W * sin;
            double xb = Math.Sqrt((L * L) - (yb * yb)), dxb = -yb * dyb / xb;
            double ddxb = -((dyb * dyb) + (yb * ddyb) + (dxb * dxb)) / xb;
            double ll = Math.Sqrt((xl * xl) + (yl * yl)), lr = Math.Sqrt(((xr - xb) * (xr - xb)) + ((yr - yb) * (yr - yb)));
            double dx = xl - xr, dy12 = yl - yr, vx = y[4] - y[6], vy = y[5] - y[7];
            double[,] a = _matrix;
            Array.Clear(a);
            a[0, 0] = a[1, 1] = a[2, 2] = a[3, 3] = K;
            a[0, 4] = -xb;
            a[1, 4] = -yb;
            a[0, 5] = -2 * dx;
            a[1, 5] = -2 * dy12;
            a[2, 5] = 2 * dx;
            a[3, 5] = 2 * dy12;
            a[0, 6] = (L0 - ll) * xl / ll;
            a[1, 6] = ((L0 - ll) * yl / ll) - (K * G);
            a[2, 6] = (L0 - lr) * (xr - xb) / lr;
            a[3, 6] = ((L0 - lr) * (yr - yb) / lr) - (K * G);
            a[4, 0] = xb;
            a[4, 1] = yb;
            a[4, 6] = -((2 * ((dxb * y[4]) + (dyb * y[5]))) + (ddxb * xl) + (ddyb * yl));
            a[5, 0] = dx;
            a[5, 1] = dy12;
            a[5, 2] = -dx;
            a[5, 3] = -dy12;
            a[5, 6] = -((vx * vx) + (vy * vy));
            Linear.Solve(a, _solution);
            for (int i = 0; i < 4; i++)
            {
                dy[i] = y[4 + i];
                dy[4 + i] = _solution[i];
            }
        }
    }

    [Fact]
    public void Andrews_AtTheStart_HasThePublishedAccelerationsAndMultipliers()
    {
        var mechanism = new Andrews();
        var dy = new double[14];
        mechanism.Rate(0, Andrews.Start, dy);
        double[] expected =
        [
            14222.4439199541138705911625887, -10666.8329399655854029433719415, 0, 0, 0, 0, 0,
            98.5668703962410896057654982170, -6.12268834425566265503114393122, 0, 0, 0, 0,
        ];
        // Conditioning of the 13 rows: 1e-10 of the largest.
        for (int i = 0; i < 13; i++)
        {
            Assert.Equal(expected[i], mechanism.Solution[i], i < 7 ? 1e-6 : 1e-8);
        }
    }

    [Fact]
    public void Andrews_AtTheEnd_IsTheQuadPrecisionSolution()
    {
        // Quad-precision column computed for this project (the published end values are inexact by up to 1e-6). 1e-8 as
        // stated there, relative to each value.
        double[] q =
        [
            15.8107711951537071, -15.7563710584118395, .0408222401196458049, -.534730116342079594, .524409965879954069,
            .534730116342079594, 1.04808074104193787,
        ];
        double[] v =
        [
            1139.92030225910606, -1424.37929517754007, 11.0329119106185937, 19.2933741050320408, .573569914829502454,
            -19.2933741050320408, .323179149249130875,
        ];
        double[] multipliers =
        [
            199.175348104538628, -29.7553099749717633, 23.0665436116221511, 31.4527252757711371, 22.6424947863943786,
            11.6173923526112559,
        ];
        var mechanism = new Andrews();
        double[] scales = [.. Enumerable.Repeat(1.0, 7), .. Enumerable.Repeat(1000.0, 7)];
        var options = new IntegratorOptions { Tolerance = 1e-13, Scales = scales };
        double[] end = Solve.Plainly(14, mechanism.Rate, 0, Andrews.Start, 0.03, options);
        for (int i = 0; i < 7; i++)
        {
            Assert.Equal(q[i], end[i], 1e-8 * Math.Abs(q[i]));
            Assert.Equal(v[i], end[7 + i], 1e-8 * Math.Abs(v[i]));
        }

        mechanism.Rate(0.03, end, new double[14]);
        for (int i = 0; i < 6; i++)
        {
            Assert.Equal(multipliers[i], mechanism.Solution[7 + i], 1e-8 * Math.Abs(multipliers[i]));
        }

        Assert.Equal(1.4378329575321407, Andrews.Energy(end), 1e-8); // constant, computed for this project
        Assert.Equal(1.4378329575321407, Andrews.Energy(Andrews.Start), 1e-12);
    }

    [Fact]
    public void CarAxis_AtTheEnd_IsThePublishedSolution()
    {
        double[] expected =
        [
            .0493455784275403, .496989460230171, 1.04174252488542, .373911027265361,
            -.0770583684040972, .00744686658723779, .0175568157537232, .770341043779252,
        ];
        var options = new IntegratorOptions { Tolerance = 1e-12 };
        double[] end = Solve.Plainly(8, new CarAxis().Rate, 0, [0, 0.5, 1, 0.5, -0.5, 0, -0.5, 0], 3, options);
        for (int i = 0; i < 8; i++)
        {
            Assert.Equal(expected[i], end[i], 1e-9); // confirmed to 7e-12; the constraints drift by the integration's error
        }
    }

    [Theory]
    [InlineData(2, 1, -0.1950203019494351, -0.9807992056621738)]
    [InlineData(2, 10, 0.3284581115408154, 0.944518538178601)]
    [InlineData(40, 20, 0.4109011537629452, 0.9116799009719807)]
    public void FourBars_ThroughTheirSingularPosition_AreTheSolutionInClosedForm(int n, double end, double x, double y)
    {
        // IFToMM benchmark A02 on its one coordinate; solution computed for this project.
        double[] state = Solve.Plainly(2, FourBars(n), 0, [0.0, 1], end, new IntegratorOptions { Tolerance = 1e-12 });
        Assert.Equal(x, Math.Sin(state[0]), 1e-8);
        Assert.Equal(y, Math.Cos(state[0]), 1e-8);
    }

    [Fact]
    public void FourBars_OneRevolution_TakesTheClosedFormsTime()
    {
        var script = new Script(2, FourBars(2));
        script.On(EventDirection.Rising, (_, s) => s[0] - (2 * Math.PI), (_, _) => EventAction.Stop);
        Solve.Scripted(script, 0, [0.0, 1], 5, new IntegratorOptions { Tolerance = 1e-12 }, RunStatus.StoppedByEvent);
        Assert.Equal(1.9425149226070837, script.Fired[0].T, 1e-9);
    }

    [Fact]
    public void Pendulum_FromTheHorizontal_IsTheEllipticFunction()
    {
        // IFToMM benchmark A01; elliptic functions computed for this project.
        static void Rate(double t, ReadOnlySpan<double> y, Span<double> dy) => (dy[0], dy[1]) = (y[1], -9.81 * Math.Sin(y[0]));
        var options = new IntegratorOptions { Tolerance = 1e-12 };
        var script = new Script(2, Rate).On(EventDirection.Falling, (_, y) => y[0]);
        double[] one = Solve.Scripted(script, 0, [Math.PI / 2, 0], 1, options).State.ToArray();
        Assert.Equal(0.591960486894059, script.Fired[0].T, 1e-9);
        // From x = +1 it has not yet reached the other side after 1 s.
        Assert.Equal(-0.986291751131875, Math.Sin(one[0]), 1e-9);
        Assert.Equal(-0.165010853125541, -Math.Cos(one[0]), 1e-9);
        double[] ten = Solve.Plainly(2, Rate, 0, [Math.PI / 2, 0], 10, options);
        Assert.Equal(0.275087462576117, Math.Sin(ten[0]), 1e-9);
        Assert.Equal(-0.961419205099125, -Math.Cos(ten[0]), 1e-9);
    }

    private static Rate FourBars(int n)
    {
        double kappa = 9.81 * (((n + 1) / 2.0) + n) / (((n + 1) / 3.0) + n);
        return (_, y, dy) => (dy[0], dy[1]) = (y[1], kappa * Math.Sin(y[0]));
    }
}
