using Lidoff.Numbers.Failing;

namespace Lidoff.Seeing.Measuring;

/// <summary>Runs a measuring job: the scale once, then each target with its spread, its standard size and its warnings.</summary>
public static class Measurement
{
    /// <summary>Measures. Faults of the whole job (a reference that cannot be one) come back together; a bad target carries its own.</summary>
    /// <param name="job">What to measure.</param>
    /// <param name="frame">The picture's size and what its file says of it.</param>
    /// <param name="look">What the picture itself says, where anybody looked.</param>
    public static Outcome<IReadOnlyList<MeasuredTarget>> Run(MeasureJob job, PictureFrame frame, PictureLook? look = null)
    {
        var scaled = ScaledPicture.Of(job, frame, look);
        if (!scaled.TryValue(out var picture)) return Outcome<IReadOnlyList<MeasuredTarget>>.Failed(scaled.Faults);
        MeasuredTarget[] measured = [.. job.Targets.Select(target => Measure(target, picture))];
        return measured;
    }

    private static MeasuredTarget Measure(AskedTarget target, ScaledPicture picture)
    {
        if (target.Body is { } asked)
        {
            var body = picture.Body(asked);
            return body.Ok ? MeasuredTarget.OfBody(body.Value) : new(target.Id, Outcome<MeasuredLength>.Failed(body.Faults));
        }

        if (target.Shape is null) return new(target.Id, target.Length.Then<MeasuredLength>(picture.Length));
        var measured = picture.Shape(target.Shape);
        return measured.Ok ? MeasuredTarget.Of(measured.Value) : new(target.Id, Outcome<MeasuredLength>.Failed(measured.Faults));
    }
}
