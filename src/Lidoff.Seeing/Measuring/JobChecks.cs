using Lidoff.Evidence.Pictures;
using Lidoff.Numbers.Failing;
using Lidoff.Seeing.Measuring.Shapes;

namespace Lidoff.Seeing.Measuring;

/// <summary>What geometry demands of a job once the picture's size is known.</summary>
internal static class JobChecks
{
    /// <summary>Every fault of the references, in order.</summary>
    public static List<Fault> References(MeasureJob job, PictureFrame frame)
    {
        var faults = new List<Fault>();
        for (var i = 0; i < job.References.Count; i++)
        {
            var reference = job.References[i];
            Chord(faults, $"reference[{i}].", reference.From, reference.To, reference.HeightMm, job, frame);
            if (faults.Count == 0 && reference.Target?.Tiles.FirstOrDefault(tile => !frame.Holds(tile.At)) is { } off) Chord(faults, $"reference[{i}].", off.At, reference.To, reference.HeightMm, job, frame);
        }

        return faults;
    }

    /// <summary>The target, or every fault of it.</summary>
    public static Outcome<TargetLength> Target(TargetLength target, MeasureJob job, PictureFrame frame)
    {
        var faults = new List<Fault>();
        Chord(faults, "", target.From, target.To, target.HeightMm, job, frame);
        return faults.Count == 0 ? target : Outcome<TargetLength>.Failed(faults);
    }

    /// <summary>Every fault of a shape's places.</summary>
    public static List<Fault> Shape(TargetShape shape, MeasureJob job, PictureFrame frame)
    {
        var faults = new List<Fault>();
        for (var i = 0; i < shape.Points.Count; i++)
        {
            var where = $"points[{i}]";
            var point = shape.Points[i];
            if (!frame.Holds(point)) faults.Add(new(where, $"a place within {frame.Width} × {frame.Height} pixels", SeeingSentences.OutsideFrame(where, point.X, point.Y, frame.Width, frame.Height)));
            if (i > 0 && point == shape.Points[i - 1]) faults.Add(new(where, "another place than the one before", SeeingSentences.SamePlaceTwice(where)));
        }

        if (shape.Kind == ShapeKind.Area && faults.Count == 0)
        {
            if (shape.Points[0] == shape.Points[^1]) faults.Add(new("points", "an outline that closes by itself", SeeingSentences.OutlineClosedTwice()));
            else if (ShapeOutline.Meeting(shape.Points) is var (one, other)) faults.Add(new("points", "an outline whose sides meet at its corners only", SeeingSentences.OutlineCrosses(one + 1, other + 1)));
        }

        if (job.CameraDistanceMm is { } camera && shape.HeightMm >= camera) faults.Add(new("height_mm", "a height below the camera", SeeingSentences.AboveCamera("height_mm", shape.HeightMm, camera)));
        return faults;
    }

    private static void Chord(List<Fault> faults, string where, PicturePoint from, PicturePoint to, double heightMm, MeasureJob job, PictureFrame frame)
    {
        foreach (var (name, point) in new[] { ("from", from), ("to", to) })
        {
            if (frame.Holds(point)) continue;
            faults.Add(new(
                where + name,
                $"a place within {frame.Width} × {frame.Height} pixels",
                SeeingSentences.OutsideFrame(where + name, point.X, point.Y, frame.Width, frame.Height)));
        }

        if (from == to) faults.Add(new(where + "to", "another place than from", SeeingSentences.ZeroLength(where + "from")));
        if (job.CameraDistanceMm is { } camera && heightMm >= camera)
        {
            faults.Add(new(where + "height_mm", "a height below the camera", SeeingSentences.AboveCamera(where + "height_mm", heightMm, camera)));
        }
    }
}
