using Advance.Paper.Setting;
using Advance.Paper.Tree;

namespace Advance.Paper.Pictures.Placing;

/// <summary>Lays scenes out for boxes on the paper: finds the scale at which the drawing and its labels fit.</summary>
internal sealed class PictureSetter(Composer composer, Faults faults, string atPaper, KnownPictures known)
{
    private const int MostTries = 24;
    private const int MostFitting = 4;
    private const int KeyGap = 4000;

    /// <summary>Each scene as it came out last.</summary>
    public Dictionary<Scene, SetPicture> Done { get; } = new(ReferenceEqualityComparer.Instance);

    /// <summary>Lays a scene out; null when there is nothing to draw.</summary>
    /// <param name="scene">What is drawn.</param>
    /// <param name="width">Width of the box in 1/1000 pt.</param>
    /// <param name="height">Height of the box in 1/1000 pt; the picture may be lower.</param>
    public SetPicture? Set(Scene scene, int width, int height)
    {
        if (Extent.Of(scene) is not { } extent)
        {
            faults.Add(FaultKind.EmptyPicture, $"The picture \"{scene.Title}\" has nothing in it that can be drawn.");
            return null;
        }

        var picture = known.Get(scene, composer.Scale.Body, width, height, () => LayOut(scene, extent, width, height));
        if (picture.Labels.Any(label => label.Number > 0))
        {
            faults.Add(FaultKind.LabelsInKey, $"In the picture \"{scene.Title}\" some labels found no room; they are listed under it.");
        }

        return Done[scene] = picture;
    }

    private SetPicture LayOut(Scene scene, Extent extent, int width, int height)
    {
        var isScaled = scene.Scaling == Scaling.Ratio;
        var bar = isScaled ? ScaleBar.Height(composer) + composer.Scale.Body : 0;
        return Finish(scene, Best(scene, extent, width, height - bar), width);
    }

    /// <summary>The largest scale at which all fits and each label stands for itself; where there is none, that with the fewest numbers.</summary>
    private Trial Best(Scene scene, Extent extent, int width, int height)
    {
        int roomWidth = Frame.Tenths(Mil.ToMm(width)), roomHeight = Frame.Tenths(Mil.ToMm(height));
        Trial? best = null;
        var last = default(Trial);
        var tries = 0;
        foreach (var (scale, ratio) in Scales(scene, extent, Mil.ToMm(width), Mil.ToMm(height)))
        {
            var drawing = new Drawing(scene, new Frame(extent.Left, extent.Top, scale), composer);
            var slack = (X: (roomWidth - drawing.Covered.Width) / 2, Y: (roomHeight - drawing.Covered.Height) / 2);
            drawing.PlaceLabels(drawing.Covered.Grown(Math.Max(0, slack.X), Math.Max(0, slack.Y)));
            var key = KeyLines(drawing.Labels, width);
            last = new Trial(drawing, ratio, key, drawing.Labels.Count(l => l.Number > 0));
            if (slack.X < 0 || slack.Y < 0 || drawing.Covered.Height + Frame.UpToTenths(key.Height) > roomHeight)
            {
                continue;
            }

            if (best is null || last.Numbers < best.Value.Numbers)
            {
                best = last;
            }

            if (best.Value.Numbers == 0 || ++tries == MostFitting)
            {
                break;
            }
        }

        return best ?? last;
    }

    /// <summary>The scales to be tried, from large to small.</summary>
    private static IEnumerable<(double Scale, int Ratio)> Scales(Scene scene, Extent extent, double widthMm, double heightMm)
    {
        if (scene.Scaling == Scaling.Ratio)
        {
            foreach (var ratio in Ratios.That(extent, widthMm, heightMm))
            {
                yield return (1.0 / ratio, ratio);
            }

            yield break;
        }

        var fit = Math.Min(widthMm / Math.Max(extent.Width, 1e-6), heightMm / Math.Max(extent.Height, 1e-6));
        var scale = scene.Scaling == Scaling.Diagram ? Math.Min(1, fit) : fit;
        for (var i = 0; i < MostTries; i++, scale *= 0.93)
        {
            yield return (scale, 0);
        }
    }

    private SetPicture Finish(Scene scene, Trial trial, int width)
    {
        var (drawing, ratio, key, _) = trial;
        var covered = drawing.Covered;
        var inkWidth = Frame.ToMils(covered.Right) - Frame.ToMils(covered.Left);
        var x = Math.Max(0, (width - inkWidth) / 2) - Frame.ToMils(covered.Left);
        var y = -Frame.ToMils(covered.Top);
        var marks = drawing.Marks().ConvertAll(m => m.Moved(x, y));
        var height = Frame.ToMils(covered.Bottom) + y;
        if (ratio > 0)
        {
            ScaleBar.Draw(ratio, scene.BarUnit, atPaper, composer, height + composer.Scale.Body, width, marks);
            height += composer.Scale.Body + ScaleBar.Height(composer);
        }

        if (key.Count > 0)
        {
            key.Draw(marks, 0, height + KeyGap, width, Align.Left);
            height += KeyGap + key.Height;
        }

        return new SetPicture(width, height, marks, scene.Title)
        {
            Frame = drawing.Frame,
            Origin = (x, y),
            Labels = drawing.Labels,
        };
    }

    private SetLines KeyLines(IReadOnlyList<PlacedLabel> labels, int width)
    {
        var key = new List<Inline>();
        foreach (var label in labels.Where(l => l.Number > 0).OrderBy(l => l.Number))
        {
            key.Add(new Text($"{(key.Count > 0 ? " · " : "")}{label.Number}", TextStyle.Strong | TextStyle.Quiet));
            key.Add(new Text($" {string.Join(' ', label.Label.Lines.Select(l => l.Text))}", TextStyle.Quiet));
        }

        return composer.Compose(key, composer.Body).Fit(width);
    }

    /// <param name="Drawing">The scene at the scale.</param>
    /// <param name="Ratio">How many times smaller than life; 0 when that is not told.</param>
    /// <param name="Key">What the numbers stand for.</param>
    /// <param name="Numbers">How many labels are numbers.</param>
    private readonly record struct Trial(Drawing Drawing, int Ratio, SetLines Key, int Numbers);
}
