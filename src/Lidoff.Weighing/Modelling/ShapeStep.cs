using System.Globalization;
using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Folding;
using Lidoff.Evidence.Recomputing;
using Lidoff.Numbers.Failing;
using Lidoff.Seeing.Boards;
using Lidoff.Seeing.Kinds;
using Lidoff.Seeing.Measuring;
using Lidoff.Seeing.Measuring.Shapes;

namespace Lidoff.Weighing.Modelling;

/// <summary>Circles, pitches, angles and areas clicked in pictures, each measured by its picture's fitted cameras, or by the board it lies on where it has no known length.</summary>
/// <param name="tables">The dossier.</param>
/// <param name="pictures">Which file a picture reference means.</param>
/// <param name="fitted">The fitted cameras of a picture.</param>
/// <param name="boards">The board of a picture.</param>
/// <param name="frame">Size and mirroring of a stored picture by its hash, null where it is no picture.</param>
public sealed class ShapeStep(DossierTables tables, PictureStep pictures, FittedPictureStep fitted, PictureBoardStep boards, Func<string, PictureFrame?> frame) : Step<ShapeKey, ShapeBelief>
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

        var fit = reads.Read(fitted, picture.Sha256);
        var board = reads.Read(boards, picture.Sha256);
        var laid = board?.Laid.Picture(picture.Sha256);
        var target = new TargetShape(clicked.What, clicked.Shape, clicked.Points, clicked.HeightMm, clicked.ClickPx);
        if (fit is null)
        {
            if (laid is null) problems.AddRange(board?.Laid.LeftOut.FirstOrDefault(left => left.Sha256 == picture.Sha256) is { } left ? [WeighingSentences.NoScale(picture.Name), left.Says] : [WeighingSentences.NoScale(picture.Name)]);
            else if (!board!.Laid.ScaleKnown && clicked.Shape != ShapeKind.Angle) problems.Add(WeighingSentences.NoBoardScale(picture.Name));
            else if (frame(picture.Sha256) is not { } size) problems.Add(WeighingSentences.NotAPicture(picture.Name));
            else Take(BoardMeasurement.Shape(board.Laid, picture.Sha256, target, clicked.ClickPx, size), board.RestsOn, how => WeighingSentences.ByTheBoard(how, laid.Used), "", board.Packages.Contains(clicked.Spot));
            return;
        }

        var carried = fit.Scale.CarriedFrom.Length > 0 && reads.Read(pictures, fit.Scale.CarriedFrom) is { Found: true } from ? from.Sha256 : "";
        Take(
            fit.Measuring.Then((ScaledPicture measuring) => measuring.Shape(target)),
            [.. fit.Scale.References.Select(reference => reference.Id), picture.Added, .. fit.RestsOn],
            how => how, fit.Scale.From.Length > 0 ? fit.Scale.From : carried, fit.Scale.IsPackageOf(clicked.Spot));

        void Take(Outcome<MeasuredShape> measured, ValueList<EntryId> leansOn, Func<string, string> how, string scaleOf, bool ownPackage)
        {
            if (!measured.TryValue(out var shape)) problems.AddRange(measured.Faults.Select(fault => fault.Say));
            else readings.Add(new(
                shape.Value, shape.U, shape.ScaleShare, shape.Low, shape.High, picture.Sha256, picture.Name, sighting.Id, leansOn,
                how(string.Create(CultureInfo.InvariantCulture, $"{clicked.Points.Count} places {(clicked.EndsBy.Length > 0 ? "of an edge" : "clicked")} in {picture.Name}{(shape.Gaps > 0 ? $", {shape.Gaps} gaps" : "")}")),
                [.. shape.Warnings, .. laid?.Warnings ?? []], shape.Snap, scaleOf, laid is null ? "" : board!.Laid.Pictures[0].Sha256, fit is null, ownPackage));
        }
    }
}
