using Lidoff.Seeing.Measuring.Edges;

namespace Lidoff.Seeing.Measuring.Bodies;

/// <summary>Measures bodies by a picture's scale.</summary>
internal static class BodyMeasurement
{
    /// <summary>The body with its doubt.</summary>
    /// <param name="target">What to find, checked.</param>
    /// <param name="job">The job it belongs to.</param>
    /// <param name="measure">Measures a length in it.</param>
    public static MeasuredBody Run(TargetBody target, MeasureJob job, Func<TargetLength, MeasuredLength> measure)
    {
        var fit = target.Fitted ?? FittedBody.AsClicked(target.Corners, target.ClickPx ?? job.ClickPx);
        MeasuredLength[] sides = [Side(fit.First), Side(fit.Second)];
        var (length, width) = sides[0].ValueMm >= sides[1].ValueMm ? (sides[0], sides[1]) : (sides[1], sides[0]);
        var warnings = length.Warnings.Concat(width.Warnings).DistinctBy(warning => warning.Code).OrderBy(warning => WarningCodes.All.ToList().IndexOf(warning.Code));
        return new MeasuredBody(target.Id, length, width, [.. warnings]);

        MeasuredLength Side(FittedLength side) => measure(new(target.Id, side.From.Point, side.To.Point, target.HeightMm, side.EachPx) { OnEdges = true });
    }
}
