using Lidoff.Evidence.Pictures;
using Lidoff.Numbers.Failing;
using Lidoff.Seeing.Measuring.Shapes;
using Lidoff.Seeing.Pictures;

namespace Lidoff.Seeing.Measuring.Edges;

/// <summary>Moves what a job asks for onto the edges near it: the sides of bodies always, ends of lengths and circles where the job says so. Other shapes, and known lengths, stay as they are.</summary>
public static class EdgeSnap
{
    /// <summary>The job with its targets on their edges, and what was done to each, in the order of the targets; null where nothing was. A picture that breaks off fails with a sentence.</summary>
    /// <param name="job">The job.</param>
    /// <param name="path">The picture's file.</param>
    /// <param name="header">Its header.</param>
    public static Outcome<(MeasureJob Job, IReadOnlyList<SnappedTarget?> Snapped)> Run(MeasureJob job, string path, PictureHeader header)
    {
        Guard.NotNull(job);
        Guard.NotNull(header);
        PicturePoint[] around = [.. job.Targets.SelectMany(Near)];
        if (around.Length == 0) return (job, [.. job.Targets.Select(_ => (SnappedTarget?)null)]);
        return PictureEdges.Read(path, job.Image, header, around, job.Targets.Max(target => target.Body?.ClickPx ?? job.ClickPx)).Then<(MeasureJob, IReadOnlyList<SnappedTarget?>)>(edges =>
        {
            var each = job.Targets.Select<AskedTarget, (AskedTarget Target, SnappedTarget? Snapped)>(target => Near(target).Any() ? Snap(target, edges, job.ClickPx) : (Target: target, Snapped: null)).ToList();
            return (job with { Targets = [.. each.Select(one => one.Target)] }, [.. each.Select(one => one.Snapped)]);
        });

        IEnumerable<PicturePoint> Near(AskedTarget target) => target.Body is { } body ? JobChecks.Body(body, job, header.Frame).Count == 0 ? body.Corners : [] : job.SnapEdges ? Places(target, header.Frame) : [];
    }

    private static IEnumerable<PicturePoint> Places(AskedTarget target, PictureFrame frame)
    {
        if (target.Shape is { Kind: ShapeKind.Circle } circle) return circle.Points.All(frame.Holds) ? circle.Points : [];
        return target.Shape is null && target.Length.TryValue(out var length) && length.From != length.To && frame.Holds(length.From) && frame.Holds(length.To) ? [length.From, length.To] : [];
    }

    private static (AskedTarget Target, SnappedTarget? Snapped) Snap(AskedTarget target, PictureEdges edges, double jobClickPx)
    {
        if (target.Body is { } body)
        {
            var sides = edges.Body(body.Corners, body.ClickPx ?? jobClickPx);
            return (AskedTarget.OfBody(body with { Fitted = sides }), new(null, null, sides));
        }

        if (target.Shape is { } shape)
        {
            var circle = edges.Circle(shape.Points, shape.ClickPx ?? jobClickPx);
            return (AskedTarget.Of(shape with { Points = circle.Points, ClickPx = circle.EachPx }), new(null, circle));
        }

        var length = target.Length.Value;
        var fit = edges.Length(length.From, length.To, length.ClickPx ?? jobClickPx);
        return (target with { Length = length with { From = fit.From.Point, To = fit.To.Point, ClickPx = fit.EachPx, OnEdges = true } }, new(fit, null));
    }
}
