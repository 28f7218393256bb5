using LaunchSim.Charts.Drawing;
using OxyPlot;

namespace LaunchSim.Charts.Studies;

/// <summary>
/// A sweep over two settings: a map for each figure. Between numbers the map is a relief with lines of equal value; where a
/// setting has names each set-up is a cell.
/// </summary>
internal static class MapChart
{
    private const EdgeRenderingMode Exact = EdgeRenderingMode.PreferGeometricAccuracy, Sharp = EdgeRenderingMode.PreferSharpness;
    private const double HeadAndFoot = 160, OneHeight = 470, SomeHeight = 330;
    private const double NamesLeft = 66, NamesBelow = 48, Above = 32, Legend = 76, Gutter = 18;

    // A relief of more points than this is drawn through some of them; cells of less than this size get no value.
    private const int MostPoints = 64;
    private const double LeastCell = 16;

    public static Picture Of(SweepView view)
    {
        int columns = view.Measures.Count == 1 ? 1 : 2, rows = (view.Measures.Count + columns - 1) / columns;
        double height = HeadAndFoot + (rows * (columns == 1 ? OneHeight : SomeHeight));
        return new Picture(view.Title, SweepChart.Width, height, canvas => Draw(canvas, view, height, columns, rows));
    }

    private static bool IsRelief(SweepView view) => view.Axes.All(axis => axis.Numbers is { Count: > 1 });

    private static void Draw(IRenderContext canvas, SweepView view, double height, int columns, int rows)
    {
        bool isRelief = IsRelief(view);
        string small = view.Failed.Any(failed => failed) ? " Hatched: no launch to its end." : "";
        string none = view.Measures.Any(measure => Enumerable.Range(0, view.Failed.Count).Any(i => !view.Failed[i] && !double.IsFinite(measure.Values[i]))) ? " White: no value." : "";
        string beyond = view.BeyondLimits.Any(one => one) ? " Small rings: beyond a limit." : "";
        string manner = isRelief ? "Lines join equal values; darker is more." : "A cell is a launch; darker is more.";
        OxyRect room = SweepChart.Page(canvas, view, manner + small + none + beyond, height);
        double wide = (room.Width - ((columns - 1) * Gutter)) / columns, tall = room.Height / rows;
        for (int i = 0; i < view.Measures.Count; i++)
        {
            double left = room.Left + (i % columns * (wide + Gutter)), top = room.Top + (i / columns * tall);
            new Map(canvas, view, view.Measures[i], new OxyRect(left, top, wide, tall), isRelief).Draw();
        }
    }

    private sealed class Map
    {
        private readonly IRenderContext _canvas;
        private readonly SweepView _view;
        private readonly SweepMeasure _measure;
        private readonly OxyRect _room, _area;
        private readonly SettingScale _across, _up;
        private readonly bool _isRelief;
        private readonly Levels _levels;
        private readonly Labels _labels;

        public Map(IRenderContext canvas, SweepView view, SweepMeasure measure, OxyRect room, bool isRelief)
        {
            (_canvas, _view, _measure, _room, _isRelief) = (canvas, view, measure, room, isRelief);
            _area = new OxyRect(room.Left + NamesLeft, room.Top + Above, room.Width - NamesLeft - Legend, room.Height - Above - NamesBelow);
            _across = new SettingScale(Across, _area.Left, _area.Right, isRelief ? SettingEnds.Tight : SettingEnds.Cells);
            _up = new SettingScale(Up, _area.Bottom, _area.Top, isRelief ? SettingEnds.Tight : SettingEnds.Cells);
            _levels = new Levels(measure.Values, measure.Decimals + 1);
            _labels = new Labels(canvas, _area);
        }

        private SweepAxis Across => _view.Axes[0];

        private SweepAxis Up => _view.Axes[1];

        public void Draw()
        {
            Hatch();
            if (_isRelief)
            {
                Relief();
            }
            else
            {
                Cells();
            }

            _canvas.DrawRectangle(_area, OxyColors.Undefined, Theme.Line, 1, Exact);
            Marks();
            Values();
            Names();
            Shades();
            string caption = SweepChart.Caption(char.ToUpperInvariant(_measure.Name[0]) + _measure.Name[1..], _measure.Unit);
            _canvas.Text(SweepChart.Fitted(_canvas, caption, _room.Width - 10, Theme.Body), new ScreenPoint(_area.Left, _room.Top + 4), Theme.Body, Theme.Ink, Theme.Bold);
        }

        private int Index(int across, int up) => (across * Up.Names.Count) + up;

        private void Relief()
        {
            int[] columns = Some(Across), rows = Some(Up);
            var relief = new Relief([.. columns.Select(_across.At)], [.. rows.Select(_up.At)], (i, j) => _measure.Values[Index(columns[i], rows[j])]);
            for (int band = 0; band < _levels.Bands; band++)
            {
                double low = band == 0 ? double.MinValue : _levels.Low(band), high = band == _levels.Bands - 1 ? double.MaxValue : _levels.Low(band + 1);
                foreach (ScreenPoint[] piece in relief.Between(low, high))
                {
                    _canvas.DrawPolygon(piece, _levels.Color(band), OxyColors.Undefined, 0, EdgeRenderingMode.PreferSpeed, null, LineJoin.Miter);
                }
            }

            for (int band = 1; band < _levels.Bands; band++)
            {
                foreach (IReadOnlyList<ScreenPoint> line in relief.Lines(_levels.Low(band)))
                {
                    _canvas.Path(line, _levels.IsDark(band) ? Theme.Paper : Theme.Ink, 1);
                    _lines.Add((_levels.Low(band), line));
                }
            }
        }

        private readonly List<(double Level, IReadOnlyList<ScreenPoint> Line)> _lines = [];

        private void Cells()
        {
            Each((rect, index, _) =>
            {
                if (double.IsFinite(_measure.Values[index]))
                {
                    _canvas.DrawRectangle(rect, _levels.Color(_levels.Of(_measure.Values[index])), Theme.Paper, 1, Sharp);
                }
            });
        }

        private void Hatch() => Each((rect, index, _) =>
        {
            if (!_view.Failed[index])
            {
                return;
            }

            for (double offset = -rect.Height; offset < rect.Width; offset += 6)
            {
                ScreenPoint from = new(rect.Left + offset, rect.Bottom), to = new(rect.Left + offset + rect.Height, rect.Top);
                if (Clip.Line(rect, ref from, ref to))
                {
                    _canvas.DrawLine([from, to], Theme.Line, 1, Exact);
                }
            }
        });

        // What must be read is named first; the levels go where there is room.
        private void Marks()
        {
            if (Across.Names.Count * Up.Names.Count <= 900)
            {
                Each((rect, index, at) =>
                {
                    if (_view.BeyondLimits[index] && !_view.Failed[index])
                    {
                        _canvas.DrawEllipse(new OxyRect(at.X - 2.5, at.Y - 2.5, 5, 5), OxyColors.Undefined, double.IsFinite(_measure.Values[index]) && _levels.IsDark(_levels.Of(_measure.Values[index])) ? Theme.Paper : Theme.Ink, 1, Exact);
                    }
                });
            }

            if (_view.Best is { } best)
            {
                Mark(new ScreenPoint(_across.At(best / Up.Names.Count), _up.At(best % Up.Names.Count)), $"best{(double.IsFinite(_measure.Values[best]) ? ": " + SweepChart.Number(_measure, _measure.Values[best]) : "")}", Theme.Ink, Theme.Paper);
            }

            if (Across.Present is { } across && Up.Present is { } up)
            {
                var at = new ScreenPoint(_across.At(across), _up.At(up));
                if (at.X >= _area.Left - 0.5 && at.X <= _area.Right + 0.5 && at.Y >= _area.Top - 0.5 && at.Y <= _area.Bottom + 0.5)
                {
                    Mark(at, $"now{(double.IsFinite(_measure.Present) ? ": " + SweepChart.Number(_measure, _measure.Present) : "")}", Theme.Paper, Theme.Fourth);
                }
            }
        }

        private void Mark(ScreenPoint at, string text, OxyColor fill, OxyColor rim)
        {
            bool isBest = rim == Theme.Paper;
            _canvas.DrawEllipse(new OxyRect(at.X - 7, at.Y - 7, 14, 14), isBest ? OxyColors.Undefined : fill, Theme.Paper, 3.5, Exact);
            _canvas.DrawEllipse(new OxyRect(at.X - (isBest ? 7 : 5), at.Y - (isBest ? 7 : 5), isBest ? 14 : 10, isBest ? 14 : 10), isBest ? OxyColors.Undefined : rim, isBest ? fill : rim, 1.8, Exact);
            _labels.Keep(new OxyRect(at.X - 8, at.Y - 8, 16, 16));
            _ = _labels.Place(text, at, new LabelStyle { Weight = Theme.Bold, Color = isBest ? Theme.Ink : Theme.Fourth, Gap = 11 });
        }

        private void Values()
        {
            if (_isRelief)
            {
                foreach ((double level, IReadOnlyList<ScreenPoint> line) in _lines.OrderByDescending(one => Length(one.Line)))
                {
                    if (Length(line) < 40)
                    {
                        continue;
                    }

                    foreach (double share in (double[])[0.5, 0.35, 0.65, 0.2, 0.8])
                    {
                        if (_labels.TryPut(_levels.Name(level), Along(line, share), null, new LabelStyle { Size = 11 }))
                        {
                            break;
                        }
                    }
                }

                return;
            }

            // All of them or none: a value that is left out would look like none.
            double widest = _measure.Values.Where(double.IsFinite).Select(value => Wide(SweepChart.Number(_measure, value))).DefaultIfEmpty(0).Max();
            bool hasRoom = true;
            Each((rect, _, _) => hasRoom &= rect.Width >= widest + 2 && rect.Height >= LeastCell);
            Each((rect, index, at) =>
            {
                double value = _measure.Values[index];
                string text = SweepChart.Number(_measure, value);
                if (double.IsFinite(value) && hasRoom)
                {
                    OxySize size = _canvas.MeasureText(text, Theme.FontFamily, Theme.Small, Theme.Normal);
                    bool isFree = !_labels.Placed.Any(label => Clip.Overlap(label.Area, new OxyRect(at.X - (size.Width / 2), at.Y - (size.Height / 2), size.Width, size.Height))) && index != _view.Best && !IsPresent(at);
                    if (isFree)
                    {
                        _canvas.Text(text, at, Theme.Small, _levels.IsDark(_levels.Of(value)) ? Theme.Paper : Theme.Ink, Theme.Normal, HorizontalAlignment.Center, VerticalAlignment.Middle);
                    }
                }
            });
        }

        private bool IsPresent(ScreenPoint at) =>
            Across.Present is { } across && Up.Present is { } up && at.DistanceTo(new ScreenPoint(_across.At(across), _up.At(up))) < 12;

        private void Names()
        {
            double most = Across.Numbers is null ? Math.Max(40, (_area.Width / Across.Names.Count) - 8) : 80;
            foreach (int place in _across.Named(name => Math.Min(most, Wide(name))))
            {
                _canvas.DrawLine([new(_across.At(place), _area.Bottom), new(_across.At(place), _area.Bottom + 3)], Theme.Line, 1, Exact);
                _canvas.Text(SweepChart.Fitted(_canvas, Across.Names[place], most, Theme.Small), new ScreenPoint(_across.At(place), _area.Bottom + 9), Theme.Small, Theme.Muted, Theme.Normal, HorizontalAlignment.Center);
            }

            foreach (int place in _up.Named(_ => 14))
            {
                _canvas.DrawLine([new(_area.Left - 3, _up.At(place)), new(_area.Left, _up.At(place))], Theme.Line, 1, Exact);
                _canvas.Text(SweepChart.Fitted(_canvas, Up.Names[place], NamesLeft - 30, Theme.Small), new ScreenPoint(_area.Left - 10, _up.At(place)), Theme.Small, Theme.Muted, Theme.Normal, HorizontalAlignment.Right, VerticalAlignment.Middle);
            }

            _canvas.Text(SweepChart.FittedEnd(_canvas, SweepChart.Caption(Across.Name, Across.Unit), _area.Width, Theme.Small), new ScreenPoint(_area.Right, _area.Bottom + 26), Theme.Small, Theme.Ink, Theme.Normal, HorizontalAlignment.Right);
            _canvas.Text(SweepChart.FittedEnd(_canvas, SweepChart.Caption(Up.Name, Up.Unit), _area.Height, Theme.Small), new ScreenPoint(_room.Left, _area.Top), Theme.Small, Theme.Ink, Theme.Normal, HorizontalAlignment.Right, VerticalAlignment.Top, -90);
        }

        private void Shades()
        {
            if (_levels.Bands == 0)
            {
                _ = _labels.Place("no value anywhere", new ScreenPoint(_area.Center.X, _area.Center.Y), new LabelStyle { On = true });
                return;
            }

            double left = _area.Right + 10, tall = Math.Min(22, _area.Height / _levels.Bands);
            for (int band = 0; band < _levels.Bands; band++)
            {
                double bottom = _area.Bottom - (band * tall);
                _canvas.DrawRectangle(new OxyRect(left, bottom - tall, 14, tall), _levels.Color(band), OxyColors.Undefined, 0, Sharp);
                if (band > 0)
                {
                    _canvas.Text(_levels.Name(_levels.Low(band)), new ScreenPoint(left + 19, bottom), Theme.Small, Theme.Muted, Theme.Normal, HorizontalAlignment.Left, VerticalAlignment.Middle);
                }
            }

            _canvas.DrawRectangle(new OxyRect(left, _area.Bottom - (_levels.Bands * tall), 14, _levels.Bands * tall), OxyColors.Undefined, Theme.Line, 1, Exact);
        }

        private double Wide(string text) => _canvas.MeasureText(text, Theme.FontFamily, Theme.Small, Theme.Normal).Width;

        private void Each(Action<OxyRect, int, ScreenPoint> draw)
        {
            for (int i = 0; i < Across.Names.Count; i++)
            {
                (double left, double right) = _across.Reach(i);
                for (int j = 0; j < Up.Names.Count; j++)
                {
                    (double bottom, double top) = _up.Reach(j);
                    draw(new OxyRect(left, top, right - left, bottom - top), Index(i, j), new ScreenPoint(_across.At(i), _up.At(j)));
                }
            }
        }

        private static int[] Some(SweepAxis axis)
        {
            int[] order = [.. Enumerable.Range(0, axis.Names.Count).OrderBy(axis.At)];
            int every = (order.Length + MostPoints - 1) / MostPoints;
            return every == 1 ? order : [.. order.Where((_, i) => i % every == 0 || i == order.Length - 1)];
        }

        private static double Length(IReadOnlyList<ScreenPoint> line)
        {
            double length = 0;
            for (int i = 1; i < line.Count; i++)
            {
                length += line[i].DistanceTo(line[i - 1]);
            }

            return length;
        }

        private static ScreenPoint Along(IReadOnlyList<ScreenPoint> line, double share)
        {
            double left = share * Length(line);
            for (int i = 1; i < line.Count; i++)
            {
                double way = line[i].DistanceTo(line[i - 1]);
                if (way >= left && way > 0)
                {
                    double part = left / way;
                    return new ScreenPoint(line[i - 1].X + (part * (line[i].X - line[i - 1].X)), line[i - 1].Y + (part * (line[i].Y - line[i - 1].Y)));
                }

                left -= way;
            }

            return line[^1];
        }
    }
}
