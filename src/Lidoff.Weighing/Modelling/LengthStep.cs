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

/// <summary>
/// Every line of evidence about one length: those clicked in pictures are measured with their picture's scale, or by the board it lies
/// on where it has none; those from instruments stand as they are.
/// </summary>
/// <param name="tables">The dossier.</param>
/// <param name="pictures">Which file a picture reference means.</param>
/// <param name="fitted">The fitted cameras of a picture.</param>
/// <param name="boards">The board of a picture.</param>
/// <param name="shapes">Shapes clicked in pictures: a circle is a length too, its diameter.</param>
/// <param name="frame">
/// Size and mirroring of a stored picture by its hash, null where it is no picture. Content is named by its hash and never
/// changes, so this is as pure as an input.
/// </param>
public sealed class LengthStep(DossierTables tables, PictureStep pictures, FittedPictureStep fitted, PictureBoardStep boards, ShapeStep shapes, Func<string, PictureFrame?> frame) : Step<LengthKey, LengthBelief>
{
    /// <inheritdoc/>
    public override string Name => "length";

    /// <inheritdoc/>
    public override LengthBelief Compute(LengthKey key, IReads reads)
    {
        var readings = new List<LengthReading>();
        var problems = new List<string>();
        foreach (var sighting in tables.Lengths.About(key.Spot, reads).Where(each => each.Value.What == key.What))
        {
            if (sighting.Value.ByInstrument is { } instrument) readings.Add(Instrument(sighting, instrument));
            else if (sighting.Value.InPicture is { } clicked) Measure(sighting, clicked, reads, readings, problems);
        }

        if (tables.Shapes.About(key.Spot, reads).Any(each => each.Value.Shape == ShapeKind.Circle && each.Value.What == key.What))
        {
            var circles = reads.Read(shapes, new ShapeKey(key.Spot, ShapeKind.Circle, key.What));
            readings.AddRange(circles.Readings.Select(circle => circle.AsLength()));
            problems.AddRange(circles.Problems);
        }

        return new(key.Spot, key.What, [.. readings], [.. problems]);
    }

    private void Measure(Sighting<LengthSighting> sighting, PictureLength clicked, IReads reads, List<LengthReading> readings, List<string> problems)
    {
        var picture = reads.Read(pictures, clicked.Picture);
        if (!picture.Found)
        {
            problems.Add(picture.Missing!);
            return;
        }

        var fit = reads.Read(fitted, picture.Sha256);
        var board = reads.Read(boards, picture.Sha256);
        var laid = board?.Laid.Picture(picture.Sha256);
        if (frame(picture.Sha256) is not { } size)
        {
            problems.Add(WeighingSentences.NotAPicture(picture.Name));
            return;
        }

        if (fit is null && laid is null)
        {
            problems.Add(WeighingSentences.NoScale(picture.Name));
            if (board?.Laid.LeftOut.FirstOrDefault(left => left.Sha256 == picture.Sha256) is { } left) problems.Add(left.Says);
            return;
        }

        // Where all it has was carried over from one picture, both are one line of evidence: they share that scale.
        var carried = fit is { Scale.CarriedFrom: { Length: > 0 } one } && reads.Read(pictures, one) is { Found: true } from ? from.Sha256 : "";
        var target = new TargetLength(sighting.Value.What, clicked.From, clicked.To, clicked.HeightMm, clicked.EachPx) { OnEdges = clicked.EndsUPx is not null };
        if (fit is null)
        {
            if (!board!.Laid.ScaleKnown) problems.Add(WeighingSentences.NoBoardScale(picture.Name));
            else Take(BoardMeasurement.Length(board.Laid, picture.Sha256, target, clicked.EachPx, size), board.RestsOn, WeighingSentences.ByTheBoard("clicked in " + picture.Name, laid!.Used));
            return;
        }

        var scale = fit.Scale;
        Take(
            fit.Measuring.Then((ScaledPicture measuring) => measuring.Length(target)),
            [.. scale.References.Select(reference => reference.Id), picture.Added, .. fit.RestsOn],
            carried.Length > 0
                ? string.Create(CultureInfo.InvariantCulture, $"{Placed(clicked)} in {picture.Name}, scale carried over from {reads.Read(pictures, carried).Name}")
                : string.Create(CultureInfo.InvariantCulture, $"{Placed(clicked)} in {picture.Name}, scale from {scale.References.Count} known length{(scale.References.Count == 1 ? "" : "s")}{(scale.From.Length == 0 ? "" : " of the picture it was made of")}"));

        void Take(Outcome<MeasuredLength> measured, ValueList<EntryId> leansOn, string how)
        {
            if (!measured.TryValue(out var length)) problems.AddRange(measured.Faults.Select(fault => fault.Say));
            else readings.Add(new(
                length.ValueMm, length.UMm, length.ScaleShare, length.LowMm, length.HighMm, picture.Sha256, picture.Name, sighting.Id, leansOn, how,
                [.. length.Warnings, .. laid?.Warnings ?? []], length.Snap, laid is null ? "" : board!.Laid.Pictures[0].Sha256, fit is null, fit is { Scale.From: { Length: > 0 } made } ? made : carried,
                fit is not null ? fit.Scale.IsPackageOf(sighting.Value.Spot) : board!.Packages.Contains(sighting.Value.Spot)));
        }
    }

    private static string Placed(PictureLength clicked) => clicked.EndsBy.Length > 0 ? "clicked and moved onto edges" : "clicked";

    private static LengthReading Instrument(Sighting<LengthSighting> sighting, InstrumentLength instrument)
    {
        // 1.645: the normal's 5 % and 95 % points.
        var half = 1.6448536269514722 * instrument.UMm;
        var by = instrument.Instrument.Length > 0 ? instrument.Instrument : "an instrument";
        return new(
            instrument.Mm, instrument.UMm, 0, instrument.Mm - half, instrument.Mm + half, "", "", sighting.Id, [],
            $"read from {by}", [], null);
    }
}
