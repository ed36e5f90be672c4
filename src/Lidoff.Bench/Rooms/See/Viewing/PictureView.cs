using Lidoff.Bench.Rooms.See.Reading;
using Lidoff.Bench.Rooms.See.Video;
using Lidoff.Bench.Showing;
using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Folding;
using Lidoff.Evidence.Pictures;
using Lidoff.Numbers.Failing;
using Lidoff.Seeing.Boards;
using Lidoff.Seeing.Kinds;
using Lidoff.Seeing.Measuring;
using Lidoff.Seeing.Measuring.Shapes;
using Lidoff.Seeing.Pictures;
using Lidoff.Telling.Dossiers;
using Lidoff.Telling.Drawing.Labelling;

namespace Lidoff.Bench.Rooms.See.Viewing;

/// <summary>One picture with everything that was pointed at and measured in it.</summary>
/// <param name="Sha256">Its hash.</param>
/// <param name="FileName">Name it came under; hostile text.</param>
/// <param name="Width">Upright width, px; 0 where it cannot be opened.</param>
/// <param name="Height">Upright height, px; 0 likewise.</param>
/// <param name="Trouble">Why it cannot be opened, one sentence; empty when it can.</param>
/// <param name="Tags">What was said of it as a whole.</param>
/// <param name="Scale">"12.4 px/mm ± 0.4 %"; empty where none is set.</param>
/// <param name="Along">The same as numbers: px per mm and their relative standard uncertainty; null where none is set.</param>
/// <param name="Bar">The scale along its middle, where a bar lies; the same as in the picture taken home. Null where none is set.</param>
/// <param name="Scales">Its known lengths.</param>
/// <param name="Spots">What was pointed at in it, in natural order.</param>
/// <param name="Lengths">Lengths clicked in it.</param>
/// <param name="Shapes">Circles, pitches, angles and areas clicked in it.</param>
/// <param name="Taken">Every designator of the dossier.</param>
/// <param name="Previous">Hash of the picture before it; empty for the first.</param>
/// <param name="Next">Hash of the picture after it; empty for the last.</param>
/// <param name="Board">How it lies on its board.</param>
/// <param name="Odd">Sentences about its file: print colours, more than one frame, a size that the camera did not write.</param>
/// <param name="Origin">The video it was taken out of: its hash, its name (hostile text), and the second; null for a picture of its own.</param>
/// <param name="Look">The machine's look at it that counts; null where there is none.</param>
/// <param name="Read">Lines of text that the machine read in it.</param>
/// <param name="Offer">A scale that could be carried over to it; null where there is none, or no need.</param>
public sealed record PictureView(
    string Sha256, string FileName, int Width, int Height, string Trouble, PictureTags Tags, string Scale, (double PxPerMm, double Relative)? Along, BarScale? Bar, ValueList<ScaleRow> Scales, ValueList<PointedRow> Spots, ValueList<LengthRow> Lengths, ValueList<ShapeRow> Shapes,
    ValueList<string> Taken, string Previous, string Next, BoardLook Board, ValueList<string> Odd, (string Sha256, string Name, double Second)? Origin, EntryId? Look, ValueList<ReadOver> Read, CarriedScale? Offer)
{
    /// <summary>Spots whose body was outlined in it and which nobody pointed at there, at the middle of the body, in natural order; their entry is that of the newest length.</summary>
    public ValueList<PointedRow> Outlined { get; init; } = [];

    /// <summary>Every spot that is seen in it.</summary>
    public IEnumerable<PointedRow> Seen => Spots.Concat(Outlined);

    /// <summary>The picture as the dossier stands; nameless and empty where the dossier has none of that hash.</summary>
    public static PictureView Of(OpenDossier dossier, string sha256)
    {
        var view = dossier.Session.View;
        var pictures = view.Live<FileAdded>().Where(file => file.Value.Type.StartsWith("image/", StringComparison.Ordinal)).Select(file => file.Value).DistinctBy(file => file.Sha256).ToList();
        var at = pictures.FindIndex(file => file.Sha256 == sha256);
        if (at < 0) return new(sha256, "", 0, 0, SeeSentences.NoPicture, PictureTags.None, "", null, null, [], [], [], [], [], "", "", BoardLook.None, [], null, null, [], null);
        var header = dossier.Picture(sha256, pictures[at].Name);
        bool Here(string reference) => reference.Length > 0 && dossier.Model.Picture(reference) is { Found: true } found && found.Sha256 == sha256;
        var tags = view.Live<PictureSighting>().Where(each => Here(each.Value.File)).Select(PictureTags.Of).LastOrDefault() ?? PictureTags.None;
        var marks = Marks(view);
        List<PointedRow> spots = [.. Pointed(view, Here, marks).OrderBy(spot => spot.Value.Spot, NaturalOrder.Instance)];
        return new(
            sha256,
            pictures[at].Name,
            header.Ok ? header.Value.Width : 0,
            header.Ok ? header.Value.Height : 0,
            header.Ok ? "" : header.Faults[0].Say,
            tags,
            header.Ok ? PictureScaleText.Of(dossier, sha256, header.Value.Frame) : "",
            header.Ok ? PictureScaleText.Along(dossier, sha256, header.Value.Frame) : null,
            header.Ok ? DossierPicture.Scale(dossier.Model, sha256, header.Value.Frame) : null,
            [.. Own(dossier.Model.Scale(sha256)).Select(each => new ScaleRow(each.Id, each.Specimen, each.Value, each.Value.Reference.Target is { } target ? SeeSentences.TargetSays(target) : Plain.With(each.Value.Reference.LengthMm, each.Value.Reference.UMm, "mm") + (each.Value.Package.Length > 0 ? ", package of " + Shown.Of(each.Value.Package) : "")))],
            [.. spots],
            [.. view.Live<LengthSighting>().Where(each => each.Value.InPicture is { } clicked && Here(clicked.Picture)).Select(each => new LengthRow(each.Id, each.Specimen, each.Value, Found(dossier, each)))],
            [.. view.Live<ClickedShape>().Where(each => Here(each.Value.Picture)).Select(each => new ShapeRow(each.Id, each.Specimen, each.Value, Found(dossier, each)))],
            [.. SpotNames.Of(view)],
            at > 0 ? pictures[at - 1].Sha256 : "",
            at + 1 < pictures.Count ? pictures[at + 1].Sha256 : "",
            header.Ok ? BoardLook.Of(dossier, sha256, header.Value.Frame, spots.ConvertAll(spot => spot.Value.Spot)) : BoardLook.None,
            header.Ok ? [.. header.Value.Remarks] : [],
            VideoFiles.Origin(dossier, sha256),
            dossier.Model.Fitted(sha256)?.LookedAt,
            [.. ReadOver.Of(view, sha256)],
            header.Ok ? CarriedScale.For(dossier, sha256, header.Value.Width, header.Value.Height, tags) : null)
        {
            Outlined = [.. OutlinedOnly(view, Here, marks, spots).OrderBy(spot => spot.Value.Spot, NaturalOrder.Instance)],
        };
    }

    /// <summary>Hash of the dossier's first picture; empty where it has none.</summary>
    public static string First(OpenDossier dossier) =>
        dossier.Session.View.Live<FileAdded>().FirstOrDefault(file => file.Value.Type.StartsWith("image/", StringComparison.Ordinal))?.Value.Sha256 ?? "";

    /// <summary>What two places of the picture are apart, each clicked to within <paramref name="clickPx"/> px, before anything is stored; null where neither it nor its board has a scale.</summary>
    public static LengthFound? Measure(OpenDossier dossier, string sha256, PicturePoint from, PicturePoint to, double clickPx)
    {
        if (!dossier.Model.Measures(sha256) || dossier.Picture(sha256, sha256) is not { Ok: true } header) return null;
        if (dossier.Model.Fitted(sha256) is not { } fitted) return Told(BoardMeasurement.Length(dossier.Model.Board(sha256)!.Laid, sha256, new("length", from, to), clickPx, header.Value.Frame));
        return Told(fitted.Measuring.Then<MeasuredLength>(measuring => measuring.Length(new("length", from, to, ClickPx: clickPx))));
    }

    // Lengths of the picture it was made of are moved and taken back there.
    private static ValueList<Sighting<ScaleSighting>> Own(Weighing.Modelling.PictureScale scale) => scale.From.Length == 0 ? scale.References : [];

    private static LengthFound Told(Outcome<MeasuredLength> measured) => measured.TryValue(out var found)
        ? LengthFound.Of(found.ValueMm, found.UMm, found.LowMm, found.HighMm, found.Snap, found.Warnings)
        : LengthFound.Not(measured.Faults.Select(fault => fault.Say));

    private static Dictionary<string, string> Marks(IDossierView view)
    {
        var marks = view.Live<MarkSighting>().GroupBy(mark => mark.Value.Spot, StringComparer.Ordinal).ToDictionary(group => group.Key, group => group.Last().Value.Written, StringComparer.Ordinal);
        // What a machine read shows where no person read anything.
        foreach (var read in view.Live<ReadingSighting>().GroupBy(read => read.Value.Spot, StringComparer.Ordinal)) if (read.Last().Value.Mark is { } mark) marks.TryAdd(read.Key, mark.Written);
        return marks;
    }

    private static IEnumerable<PointedRow> Pointed(IDossierView view, Func<string, bool> here, Dictionary<string, string> marks)
    {
        foreach (var spot in view.Live<SpotSighting>().Where(each => here(each.Value.Picture)))
        {
            var value = spot.Value;
            if (value.Middle is { } place) yield return new(spot.Id, spot.Specimen, place, value, marks.GetValueOrDefault(value.Spot, ""));
        }
    }

    private static IEnumerable<PointedRow> OutlinedOnly(IDossierView view, Func<string, bool> here, Dictionary<string, string> marks, List<PointedRow> pointed)
    {
        var lengths = view.Live<LengthSighting>().Where(each => each.Value.InPicture is { } clicked && here(clicked.Picture)).ToList();
        foreach (var group in lengths.GroupBy(each => each.Value.Spot, StringComparer.Ordinal).Where(group => !pointed.Exists(row => row.Value.Spot == group.Key)))
        {
            if (SpotsToRead.Outline([.. group.Select(each => each.Value)]) is not { } body) continue;
            var said = view.Live<SpotSighting>().Where(each => each.Value.Spot == group.Key).Select(each => each.Value).ToList();
            string Last(Func<SpotSighting, string> of) => said.Select(of).LastOrDefault(text => text.Length > 0) ?? "";
            var at = new PicturePoint(Math.Round(body.Middle.X, 2), Math.Round(body.Middle.Y, 2));
            yield return new(group.Last().Id, group.Last().Specimen, at, new(group.Key, Last(each => each.Role), Last(each => each.Why), Last(each => each.Class), "", at, null), marks.GetValueOrDefault(group.Key, ""));
        }
    }

    private const double MostDoubt = 0.1;

    /// <summary>What clicked places would make, before anything is stored: the word of each shape that they can be, and what it comes to; empty where neither it nor its board has a scale.</summary>
    public static ValueList<(string Word, LengthFound Found)> Measure(OpenDossier dossier, string sha256, IReadOnlyList<PicturePoint> points, double clickPx)
    {
        if (!dossier.Model.Measures(sha256) || dossier.Picture(sha256, sha256) is not { Ok: true } header) return [];
        var fitted = dossier.Model.Fitted(sha256);
        Outcome<MeasuredShape> Find(TargetShape target) => fitted is not null
            ? fitted.Measuring.Then((ScaledPicture measuring) => measuring.Shape(target))
            : BoardMeasurement.Shape(dossier.Model.Board(sha256)!.Laid, sha256, target, clickPx, header.Value.Frame);
        return
        [
            .. ClickedShapeKind.Shapes.Where(each => each.Shape != ShapeKind.Angle || points.Count == 3)
                .Select(each => (each.Word, Find(new(each.Word, each.Shape, points, ClickPx: clickPx))))
                // Places that are no row have a pitch as well, but none that anybody would want.
                .Where(each => each.Item2.Ok && each.Item2.Value.U < MostDoubt * each.Item2.Value.Value).Select(each => (each.Word, LengthFound.Of(each.Item2.Value))),
        ];
    }

    private static LengthFound Found(OpenDossier dossier, Sighting<ClickedShape> each)
    {
        var belief = dossier.Model.Shape(each.Value.Spot, each.Value.Shape, each.Value.What);
        var reading = belief.Readings.FirstOrDefault(found => found.Sighting == each.Id);
        return reading is null ? LengthFound.Not(belief.Problems) : LengthFound.Of(reading.Value, reading.U, reading.Low, reading.High, reading.Snap, reading.Warnings, LengthFound.Unit(each.Value.Shape));
    }

    private static LengthFound Found(OpenDossier dossier, Sighting<LengthSighting> each)
    {
        var belief = dossier.Model.Length(each.Value.Spot, each.Value.What);
        var reading = belief.Readings.FirstOrDefault(found => found.Sighting == each.Id);
        return reading is null ? LengthFound.Not(belief.Problems) : LengthFound.Of(reading.Mm, reading.UMm, reading.Low, reading.High, reading.Snap, reading.Warnings);
    }
}
