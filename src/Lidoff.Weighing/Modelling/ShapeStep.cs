using System.Globalization;
using Lidoff.Evidence.Folding;
using Lidoff.Evidence.Recomputing;
using Lidoff.Seeing.Kinds;
using Lidoff.Seeing.Measuring.Shapes;

namespace Lidoff.Weighing.Modelling;

/// <summary>Circles, pitches, angles and areas clicked in pictures, each measured by its picture's fitted cameras. A picture needs a known length of its own, or one taken over.</summary>
/// <param name="tables">The dossier.</param>
/// <param name="pictures">Which file a picture reference means.</param>
/// <param name="fitted">The fitted cameras of a picture.</param>
public sealed class ShapeStep(DossierTables tables, PictureStep pictures, FittedPictureStep fitted) : Step<ShapeKey, ShapeBelief>
{
    /// <inheritdoc/>
    public override string Name => "shape";

    /// <inheritdoc/>
    public override ShapeBelief Compute(ShapeKey key, IReads reads)
    {
        var readings = new List<ShapeReading>();
        var problems = new List<string>();
        foreach (var sighting in tables.Shapes.About(key.Spot, reads).Where(each => each.Value.Shape == key.Shape && each.Value.What == key.What)) Measure(sighting, reads, readings, problems);
        return new([.. readings], [.. problems]);
    }

    private void Measure(Sighting<ClickedShape> sighting, IReads reads, List<ShapeReading> readings, List<string> problems)
    {
        var clicked = sighting.Value;
        var picture = reads.Read(pictures, clicked.Picture);
        if (!picture.Found)
        {
            problems.Add(picture.Missing!);
            return;
        }

        if (reads.Read(fitted, picture.Sha256) is not { } fit)
        {
            problems.Add(WeighingSentences.NoScale(picture.Name));
            return;
        }

        var measured = fit.Measuring.Then((Seeing.Measuring.ScaledPicture measuring) => measuring.Shape(new TargetShape(clicked.What, clicked.Shape, clicked.Points, clicked.HeightMm, clicked.ClickPx)));
        if (!measured.TryValue(out var shape))
        {
            problems.AddRange(measured.Faults.Select(fault => fault.Say));
            return;
        }

        var carried = fit.Scale.CarriedFrom.Length > 0 && reads.Read(pictures, fit.Scale.CarriedFrom) is { Found: true } from ? from.Sha256 : "";
        readings.Add(new(
            shape.Value, shape.U, shape.ScaleShare, shape.Low, shape.High, picture.Sha256, picture.Name, sighting.Id,
            [.. fit.Scale.References.Select(reference => reference.Id), picture.Added, .. fit.LookedAt is { } look ? new[] { look } : []],
            string.Create(CultureInfo.InvariantCulture, $"{clicked.Points.Count} places clicked in {picture.Name}{(shape.Gaps > 0 ? $", {shape.Gaps} gaps" : "")}"),
            [.. shape.Warnings], shape.Snap, fit.Scale.From.Length > 0 ? fit.Scale.From : carried, fit.Scale.IsPackageOf(clicked.Spot)));
    }
}
