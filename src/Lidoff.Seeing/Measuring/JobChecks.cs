using Lidoff.Evidence.Pictures;
using Lidoff.Numbers.Failing;
using Lidoff.Seeing.Measuring.Bodies;
using Lidoff.Seeing.Measuring.Edges;
using Lidoff.Seeing.Measuring.Shapes;

namespace Lidoff.Seeing.Measuring;

/// <summary>What geometry demands of a job once the picture's size is known.</summary>
internal static class JobChecks
{
    // Sine of 45°.
    private const double LeastTurn = 0.707;

    // A known length that is no longer than what both its clicks may be off together has no scale in it; a hundredth of a pixel is none at all.
    private const double LeastClicks = 2;
    private const double LeastPx = 0.01;

    /// <summary>Every fault of what the whole job says of click and camera, and of its references, in order.</summary>
    public static List<Fault> References(MeasureJob job, PictureFrame frame)
    {
        var faults = new List<Fault>();
        BenchNumbers.Click(faults, "click_u_px", job.ClickPx, frame);
        BenchNumbers.Distance(faults, "camera_distance_mm", job.CameraDistanceMm);
        for (var i = 0; i < job.References.Count; i++) faults.AddRange(Reference(job.References[i], $"reference[{i}]", job, frame));
        return faults;
    }

    /// <summary>Every fault of one reference.</summary>
    public static List<Fault> Reference(ReferenceLength reference, string where, MeasureJob job, PictureFrame frame)
    {
        var faults = new List<Fault>();
        var (px, click) = (reference.From.DistanceTo(reference.To), reference.ClickPx ?? job.ClickPx);
        Chord(faults, where + ".", reference.From, reference.To, reference.HeightMm, job, frame);
        if (px > 0 && px < Math.Max(LeastPx, LeastClicks * click)) faults.Add(new(where, "two ends farther apart than their clicks may be off", SeeingSentences.WithinItsClicks(where, px, click)));
        BenchNumbers.Length(faults, where + ".length_mm", reference.LengthMm);
        BenchNumbers.Doubt(faults, where + ".u_mm", reference.UMm);
        if (faults.Count == 0 && reference.Target?.Tiles.FirstOrDefault(tile => !frame.Holds(tile.At)) is { } off) Chord(faults, where + ".", off.At, reference.To, reference.HeightMm, job, frame);
        return faults;
    }

    /// <summary>The target, or every fault of it.</summary>
    public static Outcome<TargetLength> Target(TargetLength target, MeasureJob job, PictureFrame frame)
    {
        var faults = new List<Fault>();
        if (target.ClickPx is { } click) BenchNumbers.Click(faults, "click_u_px", click, frame);
        Chord(faults, "", target.From, target.To, target.HeightMm, job, frame);
        return faults.Count == 0 ? target : Outcome<TargetLength>.Failed(faults);
    }

    /// <summary>Every fault of a body's corners.</summary>
    public static List<Fault> Body(TargetBody body, MeasureJob job, PictureFrame frame)
    {
        var faults = new List<Fault>();
        var corners = body.Corners;
        for (var i = 0; i < corners.Count; i++)
        {
            var where = body.Where(i);
            if (!frame.Holds(corners[i])) faults.Add(new(where, $"a place within {frame.Width} × {frame.Height} pixels", SeeingSentences.OutsideFrame(where, corners[i].X, corners[i].Y, frame.Width, frame.Height)));
            if (i > 0 && corners[i] == corners[i - 1]) faults.Add(new(where, "another place than the one before", SeeingSentences.SamePlaceTwice(where)));
        }

        // A box that reaches out on one side does so with two corners, and is told once.
        if (body.Boxed) faults = [.. faults.DistinctBy(fault => fault.Where)];
        if (body.ClickPx is { } click) BenchNumbers.Click(faults, "u_px", click, frame);
        BenchNumbers.Place(faults, "height_mm", body.HeightMm);
        if (faults.Count == 0 && !Round(corners)) faults.Add(new("points", "corners of a rectangle, one after the other around it", SeeingSentences.NoBody()));
        if (job.CameraDistanceMm is { } camera && body.HeightMm >= camera) faults.Add(new("height_mm", "a height below the camera", SeeingSentences.AboveCamera("height_mm", body.HeightMm, camera)));
        return faults;
    }

    // Turning the same way at every corner, and by 45° at least: a slant of 60° shows no rectangle worse.
    private static bool Round(IReadOnlyList<PicturePoint> corners)
    {
        var at = FittedBody.Around(corners, 0).At;
        var turns = Enumerable.Range(0, 4).Select(i =>
        {
            var (a, b, c) = (at[i], at[(i + 1) % 4], at[(i + 2) % 4]);
            return (((b.X - a.X) * (c.Y - b.Y)) - ((b.Y - a.Y) * (c.X - b.X))) / (a.DistanceTo(b) * b.DistanceTo(c));
        }).ToList();
        return turns.All(turn => turn > LeastTurn) || turns.All(turn => turn < -LeastTurn);
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

        BenchNumbers.Place(faults, "height_mm", shape.HeightMm);
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

        BenchNumbers.Place(faults, where + "height_mm", heightMm);
        if (from == to) faults.Add(new(where + "to", "another place than from", SeeingSentences.ZeroLength(where + "from")));
        if (job.CameraDistanceMm is { } camera && heightMm >= camera)
        {
            faults.Add(new(where + "height_mm", "a height below the camera", SeeingSentences.AboveCamera(where + "height_mm", heightMm, camera)));
        }
    }
}
